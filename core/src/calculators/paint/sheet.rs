//! The answer as it is shown.

use super::Calculator;
use super::words as w;
use super::{Answer, FINISH_NAMES, Input, PRIMER_NAMES, Product};
use crate::say;
use crate::sheet::{Figure, Material, Part, PartRow, Sheet};
use crate::words::Amount;

pub(super) fn sheet(_: &Input, answer: &Answer) -> Sheet {
    let mut figures = Vec::new();
    let mut films = Vec::new();
    let mut materials = Vec::new();
    let mut ranges = Vec::new();
    let mut usuals = Vec::new();
    let mut headline = Figure::plain("net", &w::NET, answer.net.into());
    // Paint is the headline, or primer where there is no paint.
    for (names, name, product) in
        [(PRIMER_NAMES, &w::M_PRIMER, answer.primer), (FINISH_NAMES, &w::M_PAINT, answer.finish)]
    {
        let Some(Product { spread, wet, gallons, usual, cans, quarts }) = product else { continue };
        let values: [Amount; 5] =
            [spread.into(), wet.into(), gallons.into(), cans.into(), quarts.into()];
        for (at, ((key, name), amount)) in names.into_iter().zip(values).enumerate() {
            if amount.raw() > 0 {
                // What is bought stands first.
                let of = if at < 2 { &mut films } else { &mut figures };
                of.push(Figure::plain(key, name, amount));
            }
        }
        let (key, gallons_name) = names[2];
        headline = Figure::new(key, say!(w::FOR_AREA, gallons_name, answer.net), gallons.into());
        if let Some([far, near]) = usual {
            let [low, high] = if names[2].0 == "finish" {
                ["finish-low", "finish-high"]
            } else {
                ["primer-low", "primer-high"]
            };
            usuals.push(Figure::new(low, say!(w::AT_LEAST, gallons_name), far.into()));
            usuals.push(Figure::new(high, say!(w::AT_MOST, gallons_name), near.into()));
            // A can that is used to its last drop leaves none where the roller takes more.
            let whole = (near.millionths() - 1).div_euclid(1_000_000) + 1;
            if whole > cans + i64::from(quarts > 0) {
                let key = if low == "finish-low" { "finish-cans-high" } else { "primer-cans-high" };
                usuals.insert(
                    0,
                    Figure::new(key, say!(w::AT_MOST, names[3].1), Amount::Count(whole)),
                );
            }
            let value = say!(w::RANGE, far, near);
            ranges.push(PartRow { name: name.into(), value, puts: Vec::new() });
        }
        materials.push(Material { key: key.to_owned(), name: name.into(), amount: gallons.into() });
    }
    figures.append(&mut usuals);
    figures.append(&mut films);
    figures.retain(|figure| figure.key != headline.key);
    figures.push(Figure::plain("net", &w::NET, answer.net.into()));
    let mut parts = Vec::new();
    Part::add(&mut parts, "ranges", &w::RANGES, None, ranges);
    Sheet {
        headline,
        lead: None,
        next: Some((&w::NEXT).into()),
        figures,
        checks: Vec::new(),
        working: answer.working.0.clone(),
        parts,
        materials,
        cautions: super::Paint::cautions(None),
        drawing: None,
    }
}
