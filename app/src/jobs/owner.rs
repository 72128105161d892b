//! What the owner said of a number, wherever that number stands.

use crate::words as w;
use ledgerboard_core::job::turnover::{Said, Seen, Who};
use ledgerboard_core::say;
use ledgerboard_core::words::{Arg, Text};

/// `Owner: Change it, 2026-11-24`; and where the number says something else by now, that too.
pub(super) fn owner_says(said: &Said, now: &Seen) -> Text {
    say!(w::PAIR, Who::Owner.name(), word(said, now, said.at.date().into()))
}

/// The word, and when it was said.
pub(super) fn word(said: &Said, now: &Seen, when: Arg) -> Text {
    let word = said.word.name();
    if said.is_of(now) {
        say!(w::OWNER_SAID, word, when)
    } else if said.of.answer == now.answer {
        say!(w::OWNER_SAID_ELSE, word, when)
    } else {
        say!(w::OWNER_SAID_OF, word, super::shown(&said.of.answer), when)
    }
}
