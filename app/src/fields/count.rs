//! A whole number with one fewer and one more beside it.

use super::{Place, figure_input};
use crate::elements::{El, el};
use crate::question::Question;
use crate::{speech, words as w};
use ledgerboard_core::say;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::Phrase;

/// The number, typed or tapped. `named` is what its buttons and field are said to count.
pub(super) fn stepper(question: Question, place: &Place, named: &str, least: i64, most: i64) -> El {
    let text = question.text(&place.path);
    let step = |sign: &str, phrase: &'static Phrase, by: i64, end: i64| {
        let path = place.path.clone();
        el("button")
            .attr("type", "button")
            .class("step")
            .named(&speech::say(&say!(*phrase, named)))
            .flag_live("aria-disabled", move || text.with(|text| text.trim().parse() == Ok(end)))
            .text(sign)
            .tap(move || {
                let now = text.with_untracked(|text| text.trim().parse::<i64>());
                // From what can't be read, the first tap leads back to a number that can.
                let next = now.map_or(least, |now| now.saturating_add(by)).clamp(least, most);
                question.put(&path, Node::Whole(next));
            })
    };
    let number = figure_input(question, place).attr("inputmode", "numeric");
    el("span")
        .class("stepper")
        .with(step("−", &w::FEWER, -1, least))
        .with(number.class("number").named(named))
        .with(step("+", &w::MORE, 1, most))
}
