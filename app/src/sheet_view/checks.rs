//! Rules with their margins.

use crate::drawing::{margin_rule, spare, verdict};
use crate::elements::{El, el};
use crate::words as w;
use ledgerboard_core::catalog::Worked;
use ledgerboard_core::say;
use ledgerboard_core::sheet::{Check, Verdict};
use ledgerboard_core::words::Voice;

pub(super) fn checks(worked: &Worked, voice: Voice) -> El {
    el("ul").class("checks").with_all(worked.sheet.checks.iter().map(|check| one(check, voice)))
}

fn one(check: &Check, voice: Voice) -> El {
    // What is banned is asked about or not there: nothing of it is to spare.
    let says_spare = check.has_scale() || check.verdict == Verdict::Over;
    let told = check.told();
    let told = if says_spare { say!(w::PAIR, told, spare(check)) } else { told };
    // On paper many checks of one clause say it once, among the sources.
    let [clause, says] = [say!(w::FIGURE, &check.source.clause), say!(w::SAYS, check.source.says)];
    let says = el("span").class("says").text(&voice.say(&says));
    el("li")
        .class("check")
        .with(
            el("p")
                .class("row")
                .with(el("span").text(&voice.say(&check.name)))
                .text(" ")
                .with(verdict(check.verdict, check.word())),
        )
        .with(check.has_scale().then(|| margin_rule(check, voice.units)))
        .with(el("p").text(&voice.say(&told)))
        .with(check.note.as_ref().map(|note| el("p").text(&voice.say(note))))
        .with(el("p").class("quiet").text(&voice.say(&clause)).with(says))
}
