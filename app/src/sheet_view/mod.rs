//! A worked answer on the screen. It shows what the core worked out and decides nothing; while a
//! fault stands it shows what is needed, never an old figure.

mod answer;
mod checks;
mod editions;
mod headings;
mod pace;
mod parts;
mod standing;
mod working;

pub(crate) use answer::answer;
pub(crate) use editions::{edition_picker, settings, units_picker};
pub(crate) use headings::headings;
pub(crate) use parts::{
    orphaned_undo, table, undo_beside, undo_button, undo_later, undo_line, undo_said,
};

use crate::elements::{El, Piece, el, live};
use crate::question::Question;
use crate::{drawing, speech, words as w};
use ledgerboard_core::catalog::Worked;
use ledgerboard_core::say;
use ledgerboard_core::sheet::Faults;
use ledgerboard_core::words::Voice;

/// The drawing to scale.
pub(crate) fn drawing(question: Question) -> Piece {
    drawing::picture(question)
}

/// A view of the answer, drawn anew with it; while there is none, what it waits for.
fn shown(question: Question, show: impl Fn(&Worked, Voice) -> El + 'static) -> Piece {
    live(move || {
        let voice = question.voice();
        question.at_rest(|worked| match worked {
            Ok(worked) => Some(show(worked, voice)),
            Err(faults) => waits(faults),
        })
    })
}

fn waits(faults: &Faults) -> Option<El> {
    let first = faults.first()?;
    Some(el("p").class("quiet").text(&speech::say(&say!(w::WAITS, first.label))))
}
