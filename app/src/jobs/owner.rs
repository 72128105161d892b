//! What the owner said of a number, wherever that number stands.

use crate::words as w;
use ledgerboard_core::job::turnover::{Said, Who};
use ledgerboard_core::say;
use ledgerboard_core::words::{Arg, Text};

/// `Owner: Change it, 2026-11-24`; and where the number says something else by now, that too.
pub(super) fn owner_says(said: &Said, now: &str) -> Text {
    say!(w::PAIR, Who::Owner.name(), word(said, now, said.at.date().into()))
}

/// The word, and when it was said.
pub(super) fn word(said: &Said, now: &str, when: Arg) -> Text {
    if said.of == now {
        say!(w::OWNER_SAID, said.word.name(), when)
    } else {
        say!(w::OWNER_SAID_OF, said.word.name(), super::shown(&said.of), when)
    }
}
