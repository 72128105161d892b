//! The three ways side by side.

use super::words as w;
use super::{Answer, Floor, Input};
use crate::calculators::strip::floor_material;
use crate::rules::compare::{Limit, at_least, settle};
use crate::rules::finish::sheeting::SHEETING;
use crate::rules::hazards::HOUSE;
use crate::say;
use crate::sheet::{Caution, Figure, Part, PartRow, Sheet};
use crate::words::{Amount, Arg, Phrase};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let mut figures = Vec::new();
    let mut add = |key, name, amount: Amount| figures.push(Figure::plain(key, name, amount));
    add("floor-roll", answer.plastic.name(), answer.plastic.best().roll.into());
    add("bags", &w::BAGS, answer.bags.into());
    add("falls", &w::FALLS, answer.falls.into());
    add("pans", &w::PANS, answer.pans.into());
    add("laying", &w::LAYING, answer.laying[1].into());
    add("cleaning", &w::CLEANING, answer.cleaning[1].into());
    // Only a bare slab goes without plastic.
    let slab = i64::from(input.floor == Floor::Slab);
    let check =
        at_least("slab", (&w::CHECK_SLAB).into(), slab, Limit { value: 1, source: &SHEETING });
    let check = if slab == 1 { check } else { settle(check, &w::ASK_SLAB) };
    let cautions =
        Caution::all(&[(&w::SLIP, None), (&w::SLURRY, None), (&HOUSE, None), (&w::PAN_ARM, None)]);
    Sheet {
        headline: Figure::plain("plastic", &w::PLASTIC, answer.plastic.area.into()),
        lead: None,
        next: Some((&w::NEXT).into()),
        figures,
        checks: vec![check],
        working: answer.working.0.clone(),
        parts: parts(input, answer),
        materials: vec![floor_material(input.roll, answer.plastic.best().roll)],
        cautions,
        drawing: None,
    }
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let mut rows = Vec::new();
    let on_slab = |arg: Arg| if input.floor == Floor::Slab { arg } else { Arg::from(&w::NOT_HERE) };
    let wet = input.wet.unwrap_or(answer.falls);
    let mut row = |name: &'static Phrase, plastic: Arg, pan: Arg, slab: Arg| {
        let value = say!(w::THREE, plastic, pan, on_slab(slab));
        rows.push(PartRow { name: name.into(), value, puts: Vec::new() });
    };
    let none = || Arg::from(&w::NONE);
    let area = answer.plastic.area;
    row(&w::ROW_PLASTIC, area.into(), area.into(), none());
    row(&w::ROW_FALLS, wet.into(), answer.falls.into(), wet.into());
    row(&w::ROW_LOADS, answer.bags.into(), answer.bags.into(), answer.bags.into());
    row(&w::ROW_PANS, none(), answer.pans.into(), none());
    let [_, laying, _] = answer.laying;
    row(&w::ROW_HOURS, laying.into(), laying.into(), answer.cleaning[1].into());
    let ranges = [(&w::LAYING, answer.laying), (&w::CLEANING, answer.cleaning)]
        .map(|(name, [quick, likely, slow])| PartRow {
            name: name.into(),
            value: say!(w::THREE, quick, likely, slow),
            puts: Vec::new(),
        })
        .into();
    vec![
        Part::plain("ways", &w::SIDE_BY_SIDE, Some(&w::ORDER), rows),
        Part::plain("ranges", &w::RANGES, None, ranges),
    ]
}
