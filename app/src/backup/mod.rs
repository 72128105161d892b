//! Backups on the screen: making one, and restoring from a file. What a backup is, what restoring
//! it would change and how that is undone is the core's.

mod hand_on;
mod last;
mod making;
mod planned;
mod restoring;

pub(crate) use hand_on::{CSV, Handed, hand_on};
pub(crate) use making::{first, named, of_all_jobs, of_one_job, overdue};

use crate::desk::Desk;
use crate::elements::{El, Piece, el, when};
use crate::words as w;

/// The part of the page of jobs that is about backups.
pub(crate) fn section(desk: Desk) -> El {
    el("section")
        .attr("aria-labelledby", "backups")
        .with(el("h2").id("backups").say(&w::BACKUPS))
        .with(making::reminder(desk))
        .with(making::of_all_jobs(desk))
        .with(when(move || !desk.has_all(), || el("p").class("quiet").say(&w::OPENING)))
        .with(when(move || desk.has_all(), move || restoring::restore(desk)))
}

/// Shows this in a place, and nothing that stood there.
fn show(place: &El, piece: impl Into<Piece>) {
    place.node().set_text_content(None);
    let _ = place.clone().with(piece);
}
