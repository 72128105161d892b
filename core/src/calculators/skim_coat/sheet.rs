//! The answer as it is shown.

use super::Calculator;
use super::words as w;
use super::{Answer, Input, drawing};
use crate::measure::{Length, Measure, Rounding, Units};
use crate::rules::finish::compound::pail_for;
use crate::say;
use crate::sheet::{Figure, Material, Part, PartRow, Sheet};
use crate::words::{Amount, Arg, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let mut figures = Vec::new();
    let mut add =
        |key, name: &'static Phrase, amount: Amount| figures.push(Figure::plain(key, name, amount));
    // First, because that is what dries at a time.
    add("coat", &w::COAT, answer.coat.into());
    if let Some([low, high]) = answer.range {
        add("low", &w::LOW, low.into());
        add("high", &w::HIGH, high.into());
    }
    add("surface", &w::SURFACE, answer.area.into());
    add("film", &w::FILM, film(answer.thick));
    let lanes: [(_, _, Amount); 3] = [
        ("passes", &w::PASSES, answer.passes[0].into()),
        ("passes-across", &w::PASSES_ACROSS, answer.passes[1].into()),
        ("travel", &w::TRAVEL, answer.travel.into()),
    ];
    for (key, name, amount) in lanes {
        if amount.raw() > 0 {
            add(key, name, amount);
        }
    }
    let most = answer.range.map_or(answer.gallons, |[_, high]| high);
    for (key, phrase, gallons, count) in [
        ("pails", &w::PAILS, answer.gallons, answer.pails),
        ("pails-high", &w::PAILS_MOST, most, answer.pails_at_most),
    ] {
        let name = Text { phrase, args: vec![Arg::from(pail_for(gallons))] };
        figures.push(Figure::new(key, name, count.into()));
    }
    let mut add =
        |key, name: &'static Phrase, amount: Amount| figures.push(Figure::plain(key, name, amount));
    add("weight", &w::WEIGHT, answer.weight.into());
    add("water", &w::WATER, answer.water.into());
    let [quick, likely, slow] = answer.hours;
    add("hours", &w::HOURS, likely.into());
    add("hours-low", &w::HOURS_LOW, quick.into());
    add("hours-high", &w::HOURS_HIGH, slow.into());
    Sheet {
        headline: Figure::new(
            "gallons",
            say!(w::GALLONS_ON, input.coats(), answer.area),
            answer.gallons.into(),
        ),
        lead: None,
        next: Some((&w::NEXT).into()),
        figures,
        checks: Vec::new(),
        working: answer.working.0.clone(),
        parts: vec![by_coat(input, answer)],
        materials: vec![Material {
            key: "compound ready".to_owned(),
            name: (&w::M_COMPOUND).into(),
            amount: answer.gallons.into(),
        }],
        cautions: super::SkimCoat::cautions(None),
        drawing: input.is_rectangle().then(|| drawing::drawing(input, answer)),
    }
}

/// A film that a tape measures is told as it tells it, else in mils.
fn film(thick: Measure) -> Amount {
    // A mil is 25 400 nm.
    let length = Length::from_nanometres(thick.millionths() / 1_000 * 254 / 10);
    let told = Amount::Length(length);
    if told.show(Units::Customary, Rounding::Nearest).rounded { thick.into() } else { told }
}

fn by_coat(input: &Input, answer: &Answer) -> Part {
    let mut rows = Vec::new();
    for number in 1..=input.coats() {
        let value = if !input.is_rectangle() {
            say!(w::COAT_ALONE, answer.coat)
        } else if number % 2 == 1 {
            say!(w::COAT_ALONG, answer.coat, answer.passes[0])
        } else {
            say!(w::COAT_ACROSS, answer.coat, answer.passes[1])
        };
        rows.push(PartRow { name: say!(w::COAT_NUMBER, number), value, puts: Vec::new() });
    }
    Part::plain("coats", &w::BY_COAT, None, rows)
}
