//! The working copies in local storage, within the room that there is: those of jobs that were
//! written last. A job whose working copy makes room is in the mirror, in two slots.

use super::book::{TURN, ids, name, with};
use super::{Trouble, Written, local, stay};
use crate::words as w;
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

pub(super) fn drop_one(for_id: &str) -> bool {
    let mut oldest: Option<(u64, String)> = None;
    for id in ids().into_iter().filter(|id| id != for_id) {
        let turn = with(&id, |it| (it.local > 0 && it.mirror == it.revision).then_some(it.turn));
        if let Some(turn) =
            turn.filter(|turn| oldest.as_ref().is_none_or(|(least, _)| turn < least))
        {
            oldest = Some((turn, id));
        }
    }
    let Some((_, id)) = oldest else { return false };
    local::remove(&name(&id));
    with(&id, |entry| (entry.local, entry.size) = (0, 0));
    true
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
