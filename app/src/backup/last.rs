//! The last restore, or the undoing of it, with the way back: on the page, and in the larger store,
//! so that it outlives the page.

use super::making::written;
use crate::desk::{Desk, Restored};
use crate::{clock, store};
use ledgerboard_core::job::backup;
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
    node.put("undo", Node::Flag(is_undo));
    if let Some((now, before)) = counted {
        node.put("counted", Node::Whole(now.unwrap_or(0)));
        node.put("last", Node::Whole(before.unwrap_or(0)));
    }
    store::keep_restored(&serde_json::to_string(&node).unwrap_or_default());
    desk.restored.set(Some(Restored { back, at: made.made, is_undo, counted }));
}

/// Where it changed what counts as the last backup: when that was made, and the one before it.
pub(super) type Counted = Option<(Option<i64>, Option<i64>)>;

/// Finds what an earlier page noted, and calls `then` where there is something to offer.
pub(super) fn find(desk: Desk, then: impl FnOnce() + 'static) {
    if desk.restored.with_untracked(Option::is_some) {
        return then();
    }
    store::kept_restored(Box::new(move |text| {
        let found = text.and_then(|text| read(&text));
        let is_new = desk.restored.with_untracked(Option::is_none);
        if let Some(found) = found.filter(|_| is_new) {
            desk.restored.set(Some(found));
            then();
        }
    }));
}

fn read(text: &str) -> Option<Restored> {
    let node = Node::from_json(text).ok()?;
    let text = |key| match node.get(key) {
        Some(Node::Text(text)) => Some(&**text),
        _ => None,
    };
    let whole = |key| match node.get(key) {
        Some(Node::Whole(at)) => Some(*at),
        _ => None,
    };
    let (back, at) = backup::Restored::read([text("before")?, text("after")?])?;
    let moment = |at: i64| (at > 0).then_some(at);
    let counted = whole("counted").zip(whole("last"));
    let counted = counted.map(|(now, before)| (moment(now), moment(before)));
    let is_undo = node.get("undo") == Some(&Node::Flag(true));
    let is_offered = clock::now().at.saturating_sub(at.at) < OFFERED;
    is_offered.then_some(Restored { back, at, is_undo, counted })
}
