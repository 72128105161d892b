//! Each step as the equation that it is.

use crate::elements::{El, el};
use crate::words as w;
use ledgerboard_core::catalog::Worked;
use ledgerboard_core::say;
use ledgerboard_core::sheet::Step;
use ledgerboard_core::words::Voice;

pub(super) fn working(worked: &Worked, voice: Voice) -> El {
    el("ol").class("steps").with_all(worked.sheet.working.iter().map(|step| one(step, voice)))
}

fn one(step: &Step, voice: Voice) -> El {
    let equation = voice.say(&say!(w::FIGURE, step.equation(voice)));
    let clause =
        step.source.map(|source| el("p").class("quiet").text(&voice.phrase(&source.clause)));
    el("li")
        .with(el("p").text(&voice.say(&step.name)))
        .with(el("p").class("equation").text(&equation))
        .with(clause)
}
