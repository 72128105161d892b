//! What is typed in one line and has no unit: a number, a text, a day.

use super::{Place, labelled, link, name_input, names, text_input, undone_beside};
use crate::elements::{El, Piece};
use crate::question::Question;
use ledgerboard_core::fields::{Row, Span};
use ledgerboard_core::measure::Day;

/// A whole number, such as a year. Nothing steps it.
pub(super) fn number(
    question: Question,
    row: &'static Row,
    place: &Place,
    span: Span<i64>,
) -> Piece {
    let longest = span.most.to_string().len().max(span.least.to_string().len());
    let field = text_input(question, place)
        .attr("inputmode", "numeric")
        .attr("size", &(longest + 1).to_string());
    let field = labelled(question, place, "", field.class("number"));
    let link: Piece = link::link(question, row, place).into();
    Piece::all([field.into(), link])
}

/// A line that is kept as typed. It may grow past the most that is kept, and is then at fault: a
/// field that swallows letters looks like one that took them.
pub(super) fn text(question: Question, row: &'static Row, place: &Place) -> Piece {
    let field = labelled(question, place, "stacked", name_input(question, row, place));
    Piece::all([field.into(), names::choices(question, row, place), undone_beside(question, place)])
}

/// The phone's own calendar. What another hand wrote otherwise, `25 Nov 2026`, stays as it is and
/// can be read: a calendar would show nothing in its place.
pub(super) fn day(question: Question, place: &Place) -> El {
    let text = question.text(&place.path);
    let kind = move || {
        let text = text.read();
        if text.is_empty() || Day::is_plain(&text) { "date" } else { "text" }.to_owned()
    };
    // A calendar shows its own words for no day, on paper too.
    let input = text_input(question, place).attr_live("type", kind);
    let input = input.class_when("empty", move || text.read().is_empty());
    labelled(question, place, "", input)
}
