//! The working copies in local storage, within the room that there is: those of jobs that were
//! written last. A job whose working copy makes room is in the mirror, in two slots.

use super::book::{Entry, READY, TURN, ids, name, with};
use super::{Trouble, Written, local, mirror, news, stay};
use crate::words as w;
use ledgerboard_core::job::revision_of;
use ledgerboard_core::say;
use ledgerboard_core::words::Text;

/// How much of local storage the jobs may take, in bytes: it holds some five million in all, and
/// what is being typed must always find room.
const MOST: usize = 3_500_000;
/// All that local storage holds for one site, in the units that it counts: half of its bytes.
const ALL_OF_LOCAL: usize = 5_242_880;
/// Less than this is no room for anything.
const AS_GOOD_AS_NONE: usize = 65_536;

pub(super) fn write_local(id: &str) {
    let (revision, text, has) =
        with(id, |entry| (entry.revision, entry.text.clone(), entry.local == entry.revision));
    if has || text.is_empty() {
        return;
    }
    let written = make_room(id, text.len()).and_then(|()| {
        loop {
            match local::write(&name(id), &text) {
                Err(Trouble::Full) if drop_one(id) => {}
                written => break written,
            }
        }
    });
    with(id, |entry| match written {
        Ok(()) => {
            entry.turn = TURN.replace(TURN.get() + 1);
            (entry.local, entry.size, entry.trouble) = (revision, text.len(), None);
        }
        Err(trouble) => {
            entry.local = 0;
            entry.trouble = Some(trouble);
        }
    });
    if written.is_ok() {
        super::type_again();
        stay::ask();
    }
}

/// Working copies of other jobs go, the longest unused first, if the mirror has them.
pub(super) fn make_room(id: &str, size: usize) -> Written {
    loop {
        let others = ids().into_iter().filter(|other| other != id);
        let others: usize = others.map(|other| with(&other, |entry| entry.size)).sum();
        if others + size <= MOST {
            return Ok(());
        }
        if !drop_one(id) {
            return Err(Trouble::Full);
        }
    }
}

/// The working copy of one job goes, if the mirror has it: of one that is put away before others,
/// and then of the one worked on longest ago.
pub(super) fn drop_one(for_id: &str) -> bool {
    let mut first: Option<((bool, u64, i64), String)> = None;
    for id in ids().into_iter().filter(|id| id != for_id) {
        let age = with(&id, |it| {
            (it.local > 0 && it.is_in_mirror()).then_some((!it.is_put_away, it.turn, it.last))
        });
        if let Some(age) = age.filter(|age| first.as_ref().is_none_or(|(least, _)| age < least)) {
            first = Some((age, id));
        }
    }
    let Some((_, id)) = first else { return false };
    local::remove(&name(&id));
    with(&id, |entry| (entry.local, entry.size) = (0, 0));
    true
}

/// At the start, what the mirror has and local storage lacks: the working copies of the jobs worked
/// on last, as far as there is room for them. None makes room for another then.
pub(super) fn fill() {
    let lacks = |it: &Entry| {
        let is_told = it.waiting.is_none() && it.shut.is_none() && !it.removed;
        is_told && it.is_in_mirror() && it.local != it.revision && !it.text.is_empty()
    };
    let mut order: Vec<((bool, i64), String)> = Vec::new();
    for id in ids() {
        if let Some(age) = with(&id, |it| lacks(it).then_some((!it.is_put_away, it.last))) {
            let place = order.partition_point(|(other, _)| *other >= age);
            order.insert(place, (age, id));
        }
    }
    for (_, id) in order {
        let (was, will_be) = with(&id, |it| (it.size, it.text.len()));
        if used() - was + will_be <= MOST {
            write_local(&id);
        }
        with(&id, |it| it.text.clear());
    }
}

/// All working copies together.
fn used() -> usize {
    ids().iter().map(|id| with(id, |entry| entry.size)).sum()
}

/// A job that only the mirror has is looked at: its working copy comes back.
pub(super) fn come_back(id: &str) {
    let is_away = |it: &Entry| {
        it.local == 0 && it.is_in_mirror() && it.waiting.is_none() && it.shut.is_none()
    };
    if !READY.get() || !with(id, |it| is_away(it)) {
        return;
    }
    let own = id.to_owned();
    let there = move |slots: Option<mirror::Slots>| {
        let is_latest = |text: &String| revision_of(Some(text)) == with(&own, |it| it.revision);
        let text = slots.into_iter().flatten().flatten().find(is_latest);
        let Some(text) = text.filter(|_| with(&own, |it| is_away(it) && !it.removed)) else {
            return;
        };
        with(&own, |it| it.text = text);
        write_local(&own);
        with(&own, |it| it.text.clear());
        news::changed();
    };
    mirror::read(id, Box::new(there));
}

/// How much room local storage has left, where it is what is full: nothing where there would be
/// room, so that another store is.
pub(crate) fn room_left() -> Text {
    let left = ALL_OF_LOCAL.saturating_sub(local::used());
    let waits = ids().into_iter().map(|id| with(&id, |entry| entry.text.len()));
    let needed = waits.fold(AS_GOOD_AS_NONE, usize::max);
    let thousands = i64::try_from(left / 1024).unwrap_or(0);
    if left < needed { say!(w::ROOM_LEFT, thousands) } else { say!(w::FIGURE, "") }
}
