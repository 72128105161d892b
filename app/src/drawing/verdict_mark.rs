//! The three verdicts: word, shape and colour together, never a colour alone.

use crate::elements::{El, el, svg};
use ledgerboard_core::sheet::{Standing, Verdict};
use ledgerboard_core::words::Phrase;

/// What is held by old material: a barred frame, then the word.
pub(crate) fn held() -> El {
    let line = |x: &str| svg("line").attr("x1", x).attr("x2", x).attr("y1", "2").attr("y2", "14");
    let frame = svg("rect").attr("x", "2").attr("y", "2").attr("width", "12").attr("height", "12");
    let mark = svg("svg").class("sign").attr("viewBox", "0 0 16 16").attr("aria-hidden", "true");
    el("span")
        .class("verdict held")
        .with(mark.with(frame).with(line("6")).with(line("10")))
        .say(Standing::held())
}

/// An open ring for within, a solid block for over, a dashed frame for ask; then the word.
pub(crate) fn verdict(verdict: Verdict, word: &'static Phrase) -> El {
    let square = |at: &str, size: &str| {
        svg("rect").attr("x", at).attr("y", at).attr("width", size).attr("height", size)
    };
    let shape = match verdict {
        Verdict::Within => svg("circle").attr("cx", "8").attr("cy", "8").attr("r", "6"),
        Verdict::Over => square("1", "14"),
        Verdict::Ask => square("2", "12").attr("stroke-dasharray", "3 2"),
    };
    let mark = svg("svg").class("sign").attr("viewBox", "0 0 16 16").attr("aria-hidden", "true");
    el("span").class(&["verdict ", verdict.key()].concat()).with(mark.with(shape)).say(word)
}
