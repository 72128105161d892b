//! A length without a keyboard: feet, inches, and a strip of sixteenths ruled like a rule. It
//! writes the same text that a person would type.

use super::Place;
use crate::drawing::percent;
use crate::elements::{El, el, svg};
use crate::question::Question;
use crate::signal::Memo;
use crate::{speech, words as w};
use ledgerboard_core::measure::{Length, Units};
use ledgerboard_core::say;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::Phrase;
use leptos::prelude::*;

const INCH: i64 = 16;
const FOOT: i64 = 12 * INCH;
/// As far as a tape on a site reaches.
const MOST_FEET: i64 = 999;

/// A text as whole sixteenths of an inch; nothing where it can't be read.
fn sixteenths(text: &str) -> i64 {
    let one = Length::inches(1, 16).nanometres();
    let length = Length::read(text, Units::Customary).unwrap_or_default();
    (length.nanometres().max(0) + one / 2) / one
}

fn as_text(sixteenths: i64) -> String {
    Length::inches(1, 16).times(sixteenths.max(0)).exact()
}

/// `3/8` of three eighths, in its lowest terms.
fn fraction(over: i64) -> String {
    if over == 0 {
        return speech::phrase(&w::NO_SIXTEENTHS);
    }
    let shift = over.trailing_zeros().min(4);
    [(over >> shift).to_string(), (INCH >> shift).to_string()].join("/")
}

/// The three cells under a field.
pub(super) fn ruler(question: Question, place: &Place) -> El {
    let text = question.text(&place.path);
    let now = Memo::new(move |_| text.with(|text| sixteenths(text)));
    let path = StoredValue::new(place.path.clone());
    let set = move |sixteenths: i64| {
        question.put(&path.get_value(), Node::Text(as_text(sixteenths)));
    };
    let feet = |sign: &str, phrase: &'static Phrase, by: i64| {
        el("button")
            .attr("type", "button")
            .class("step")
            .named(&speech::say(&say!(*phrase, &w::FEET)))
            .text(sign)
            .tap(move || set(now.get_untracked() + by))
    };
    // Fourteen feet are typed sooner than tapped.
    let typed_feet = el("input")
        .attr("type", "text")
        .attr("inputmode", "numeric")
        .attr("autocomplete", "off")
        .class("number")
        .named(&speech::phrase(&w::FEET))
        .value_live(move || (now.get() / FOOT).to_string())
        .on("change", move |event| {
            let feet = event_target_value(&event).trim().parse::<i64>();
            let feet = feet.map_or(now.get_untracked() / FOOT, |feet| feet.clamp(0, MOST_FEET));
            set(feet * FOOT + now.get_untracked() % FOOT);
        });
    let stepper = el("span")
        .class("stepper")
        .with(feet("−", &w::FEWER, -FOOT))
        .with(typed_feet)
        .with(feet("+", &w::MORE, FOOT));
    let inches = (0..12).map(|inch| {
        el("button")
            .attr("type", "button")
            .class("chip")
            .flag_live("aria-pressed", move || now.get() % FOOT / INCH == inch)
            .text(&speech::say(&say!(w::FIGURE, inch)))
            .tap(move || {
                let now = now.get_untracked();
                set(now - now % FOOT + inch * INCH + now % INCH);
            })
    });
    el("div")
        .class("ruler")
        .id(&place.ruled())
        .attr("role", "group")
        .named(&speech::say(&say!(w::RULER_OF, &*place.label)))
        .with(cell(&w::FEET).with(stepper))
        .with(cell(&w::INCHES).with(el("span").class("inches").with_all(inches)))
        .with(strip(now, set))
}

fn cell(label: &'static Phrase) -> El {
    el("div").class("ruler-cell").with(el("span").class("label").say(label))
}

fn number(figure: impl Fn() -> String + 'static) -> El {
    el("output").class("number").text_live(move || speech::say(&say!(w::FIGURE, figure())))
}

/// One inch, large: the tick that stands for the length is marked, and a thumb slides it.
fn strip(now: Memo<i64>, set: impl Fn(i64) + 'static) -> El {
    let over = move || now.get() % INCH;
    let ticks = (0..=INCH).map(|at| {
        let high = match at % INCH {
            0 => 30,
            _ => 10 + 5 * i64::from(at.trailing_zeros()),
        };
        let x = percent(at, INCH);
        svg("line")
            .attr("x1", &x)
            .attr("x2", &x)
            .attr("y1", "34")
            .attr("y2", &(34 - high).to_string())
    });
    let at = svg("line")
        .class("at")
        .attr_live("x1", move || percent(over(), INCH))
        .attr_live("x2", move || percent(over(), INCH))
        .attr("y1", "2")
        .attr("y2", "46");
    let slider = el("input")
        .attr("type", "range")
        .attr("min", "0")
        .attr("max", "15")
        .named(&speech::phrase(&w::SIXTEENTHS))
        .attr_live("aria-valuetext", move || fraction(over()))
        .value_live(move || over().to_string())
        .on("input", move |event| {
            let over = event_target_value(&event).parse().unwrap_or(0);
            let now = now.get_untracked();
            set(now - now % INCH + over);
        });
    let rule = svg("svg").attr("aria-hidden", "true").with_all(ticks).with(at);
    cell(&w::SIXTEENTHS)
        .with(number(move || fraction(over())))
        .with(el("span").class("strip").with(rule).with(slider))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_cells_write_what_they_read() {
        for all in 0..(40 * FOOT) {
            assert_eq!(sixteenths(&as_text(all)), all);
        }
        assert_eq!(sixteenths("9' 4 1/2\""), 9 * FOOT + 4 * INCH + 8);
        assert_eq!(sixteenths("what"), 0);
    }

    #[test]
    fn fractions_are_in_their_lowest_terms() {
        let all: Vec<_> = [0, 1, 2, 6, 8, 12, 15].into_iter().map(fraction).collect();
        assert_eq!(all, ["0", "1/16", "1/8", "3/8", "1/2", "3/4", "15/16"]);
    }
}
