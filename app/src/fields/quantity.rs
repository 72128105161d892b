//! A quantity with a unit: the text is the truth, and what it is understood as stands beside it.

use super::link;
use super::ruler::ruler;
use super::{Place, figure_input, labelled};
use crate::elements::{El, Piece, el, show_soon, when};
use crate::question::{Question, as_typed};
use crate::signal::RwSignal;
use crate::{speech, words as w};
use ledgerboard_core::fields::{Kind, Row, heard};
use ledgerboard_core::measure::{Rounding, Units};
use ledgerboard_core::say;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::Amount;

pub(super) fn quantity(question: Question, row: &'static Row, place: &Place) -> Piece {
    let text = question.text(&place.path);
    let is_length = matches!(row.kind, Kind::Length(_));
    // Feet and inches want letters, marks and slashes; all else is written in decimals.
    let in_feet = move || is_length && question.units.get() == Units::Customary;
    let field = figure_input(question, place)
        .attr("autocapitalize", "off")
        .attr("spellcheck", "false")
        .attr_live("inputmode", move || if in_feet() { "text" } else { "decimal" }.to_owned());
    let beside = move || beside(row, &text.read(), question.units.get());
    let measure =
        el("span").class("measure").with(field).with(el("span").class("beside").text_live(beside));
    let (measure, ruled) = if is_length {
        let open = RwSignal::new(false);
        let named = speech::say(&say!(w::PAIR, &w::RULER, &*place.label));
        let ruled = place.ruled();
        let opener = move || {
            let below = ruled.clone();
            el("button")
                .attr("type", "button")
                .class("opener")
                .named(&named)
                .flag_live("aria-expanded", move || open.get())
                .say(&w::RULER)
                .tap(move || {
                    open.update(|open| *open = !*open);
                    if open.get_untracked() {
                        show_soon(&["[id='", &below, "']"].concat());
                    }
                })
        };
        let place = place.clone();
        (
            measure.with(when(in_feet, opener)),
            when(move || open.get() && in_feet(), move || ruler(question, &place)),
        )
    } else {
        (measure, Piece::NONE)
    };
    let field = labelled(question, place, "", measure);
    Piece::all([
        field.into(),
        link::link(question, row, place).into(),
        common(question, row, place).into(),
        ruled,
    ])
}

/// The unit of a bare figure, or how a text is understood where that differs from it.
fn beside(row: &Row, typed: &str, units: Units) -> String {
    let bare = || row.kind.zero().map_or("", |zero| zero.show(units, Rounding::Nearest).unit);
    let said = |amount: Amount| {
        let shown = amount.show(units, Rounding::Nearest);
        let typed = typed.trim();
        let same = shown.figure == typed || shown.figure.strip_suffix(".0") == Some(typed);
        let exact = units == Units::Customary && !shown.rounded && amount.exact() == typed;
        let whole = shown.text() == typed || exact;
        match (same && !shown.rounded, whole) {
            (true, _) => Some(shown.unit),
            (_, true) => Some(""),
            _ => None,
        }
    };
    match heard(row, typed, units) {
        Ok(Some(amount)) => match said(amount) {
            Some(unit) => speech::say(&say!(w::FIGURE, unit)),
            None if amount.show(units, Rounding::Nearest).rounded => {
                speech::voice(units).say(&say!(w::FIGURE, amount))
            }
            None => speech::voice(units).say(&say!(w::READ_AS, amount)),
        },
        Ok(None) => speech::say(&say!(w::FIGURE, bare())),
        Err(_) => String::new(),
    }
}

/// Values that one tap puts in.
fn common(question: Question, row: &'static Row, place: &Place) -> Option<El> {
    let amounts = row.kind.common();
    if amounts.is_empty() {
        return None;
    }
    let buttons = amounts.into_iter().map(|amount| {
        let path = place.path.clone();
        let label = place.label.clone();
        let shown = move || amount.show_exactly(question.units.get());
        el("button")
            .attr("type", "button")
            .class("chip")
            .attr_live("aria-label", move || {
                speech::say(&say!(w::PICK_COMMON, &*label, shown().text()))
            })
            .text_live(move || speech::say(&say!(w::FIGURE, shown().figure)))
            .tap(move || {
                let text = as_typed(amount, question.units.get_untracked());
                question.put(&path, Node::Text(text));
            })
    });
    Some(el("div").class("chips").with_all(buttons))
}
