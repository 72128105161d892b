//! The last restore, or the undoing of it, with the way back: on the page, and in the larger store,
//! so that it outlives the page.

use super::making::written;
use crate::desk::{Desk, Restored};
use crate::{clock, store};
use ledgerboard_core::job::{Moment, backup};
use ledgerboard_core::wire::Node;

/// How long it is offered, in seconds: past two weeks nobody looks for it, and a tap by mistake
/// would cost more.
const OFFERED: i64 = 14 * 86_400;

/// Notes what was done now.
pub(super) fn note(desk: Desk, back: backup::Restored, is_undo: bool, counted: Counted) {
    let made = written(desk);
    let [before, after] = back.write(&made);
    let mut node = Node::EMPTY;
    node.put("before", Node::text(&before));
    node.put("after", Node::text(&after));
    if let Some((now, before)) = counted {
        node.put("counted", Node::Whole(now.unwrap_or(0)));
        node.put("last", Node::Whole(before.unwrap_or(0)));
    }
    let head = Head { at: made.made, is_undo };
    let text = |node: &Node| serde_json::to_string(node).unwrap_or_default();
    store::keep_restored(text(&head.node()), &text(&node));
    desk.restored.set(Some(Restored { back, at: made.made, is_undo, counted }));
}

/// Where it changed what counts as the last backup: when that was made, and the one before it.
pub(super) type Counted = Option<(Option<i64>, Option<i64>)>;

/// What is told of it before anybody asks for the way back, which is as long as the jobs are.
#[derive(Clone, Copy)]
pub(super) struct Head {
    pub(super) at: Moment,
    /// It undid a restore.
    pub(super) is_undo: bool,
}

impl Head {
    fn node(self) -> Node {
        let mut node = Node::EMPTY;
        node.put("at", Node::Whole(self.at.at));
        node.put("zone", Node::Whole(self.at.zone.into()));
        node.put("undo", Node::Flag(self.is_undo));
        node
    }

    fn read(text: &str) -> Option<Self> {
        let node = Node::from_json(text).ok()?;
        let zone = whole(&node, "zone")?.try_into().ok()?;
        let at = Moment { at: whole(&node, "at")?, zone };
        Some(Self { at, is_undo: node.get("undo") == Some(&Node::Flag(true)) })
    }
}

fn whole(node: &Node, key: &str) -> Option<i64> {
    match node.get(key) {
        Some(Node::Whole(whole)) => Some(*whole),
        _ => None,
    }
}

/// Calls `then` where an earlier page, or this one, noted something that is still offered.
pub(super) fn find(desk: Desk, then: impl FnOnce(Head) + 'static) {
    let here = desk.restored.with_untracked(|last| {
        last.as_ref().map(|last| Head { at: last.at, is_undo: last.is_undo })
    });
    if let Some(head) = here {
        return then(head);
    }
    store::kept_restored_head(Box::new(move |text| {
        let Some(head) = text.and_then(|text| Head::read(&text)) else { return };
        if clock::now().at.saturating_sub(head.at.at) < OFFERED {
            then(head);
        } else {
            store::keep_restored(String::new(), "");
        }
    }));
}

/// Reads the way back of what was [`find`]ing told of, unless the page has it, and calls `then`:
/// with none where it can't be read.
pub(super) fn read(desk: Desk, head: Head, then: impl FnOnce(Option<Restored>) + 'static) {
    if let Some(last) = desk.restored.get_untracked() {
        return then(Some(last));
    }
    store::kept_restored(Box::new(move |text| {
        let found = text.and_then(|text| way_back(&text, head));
        if found.is_some() {
            desk.restored.set(found.clone());
        }
        then(found);
    }));
}

fn way_back(text: &str, head: Head) -> Option<Restored> {
    let node = Node::from_json(text).ok()?;
    let text = |key| match node.get(key) {
        Some(Node::Text(text)) => Some(&**text),
        _ => None,
    };
    let (back, at) = backup::Restored::read([text("before")?, text("after")?])?;
    let moment = |at: i64| (at > 0).then_some(at);
    let counted = whole(&node, "counted").zip(whole(&node, "last"));
    let counted = counted.map(|(now, before)| (moment(now), moment(before)));
    // Of another than its head tells of, nobody knows which way it goes.
    (at == head.at).then_some(Restored { back, at, is_undo: head.is_undo, counted })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_head_is_read_as_it_was_written_and_a_part_of_one_is_none() {
        for is_undo in [false, true] {
            let head = Head { at: Moment { at: 1_791_295_200, zone: -420 }, is_undo };
            let text = serde_json::to_string(&head.node()).unwrap();
            let read = Head::read(&text).map(|it| (it.at, it.is_undo));
            assert_eq!(read, Some((head.at, is_undo)));
            for end in 0..text.len() {
                assert!(Head::read(&text[..end]).is_none());
            }
        }
        assert!(Head::read("{\"at\":1}").is_none());
    }
}
