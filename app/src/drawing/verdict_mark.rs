//! The three verdicts: word, shape and colour together, never a colour alone.

use crate::elements::{El, el, svg};
use ledgerboard_core::sheet::Verdict;
use ledgerboard_core::words::Phrase;

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
