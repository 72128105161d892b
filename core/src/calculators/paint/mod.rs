//! Primer and paint: gallons and cans for a surface less its openings.

mod sheet;
mod words;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::fields::{Form, Kind, Row, Span, When, row};
use crate::measure::unit::{GALLON, MIL, PERCENT, SPREAD};
use crate::measure::{Area, Measure, Unit};
use crate::rules::compare::{Limit, is_at_most};
use crate::rules::finish::old_surface::OldSurface;
use crate::rules::finish::paint::{
    CANS, LABELS, MOST_QUARTS, PAINT, PAINT_USUAL, PRIMER, PRIMER_USUAL, SOLIDS,
};
use crate::rules::hazards::lead::TARGET;
use crate::rules::hazards::{Deed, Disturbs};
use crate::say;
use crate::sheet::{Caution, Expr, Fault, Faults, Sheet, Steps};
use crate::words::{Amount, Phrase};
use crate::{choice, form};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct Paint;

choice! {
    /// How far a gallon goes.
    pub enum By {
        /// As the can says.
        Label = "label", w::BY_LABEL;
        /// By what stays on the wall.
        Solids = "solids", w::BY_SOLIDS;
    }
}

/// In hundredths of a unit.
const fn measure(unit: &'static Unit, [least, most]: [i64; 2], why: &'static Phrase) -> Kind {
    let (least, most) = (Measure::hundredths(unit, least), Measure::hundredths(unit, most));
    Kind::Measure(Span { least, most, why, common: &[], optional: false })
}

const LABEL: When = When::Is("by", &["label"]);
const BY_FILM: When = When::Is("by", &["solids"]);

form! {
    /// A product and its coats.
    pub struct Coats {
        /// How many.
        coats: i64 = 1, row(&w::COATS, &w::NOTHING, Kind::Count { least: 0, most: 6, why: &w::WHY_COATS });
        /// How far a gallon goes.
        by: By, row(&w::BY, &w::NOTHING, Kind::Choice(By::PICKS));
        /// As the can says.
        spread: Measure = PRIMER, row(&w::SPREAD_LABEL, &w::SPREAD_HINT, measure(&SPREAD, [2_000, 100_000], &w::WHY_SPREAD)).when(LABEL);
        /// By volume.
        solids: Measure = Measure::whole(&PERCENT, 40), row(&w::SOLIDS, &w::SOLIDS_HINT, measure(&PERCENT, [500, 10_000], &w::WHY_SOLIDS)).when(BY_FILM);
        /// Dry.
        film: Measure = Measure::hundredths(&MIL, 150), row(&w::FILM, &w::FILM_HINT, measure(&MIL, [30, 4_000], &w::WHY_FILM)).when(BY_FILM);
        /// In the roller and the tray.
        waste: Measure = Measure::whole(&PERCENT, 0), row(&w::WASTE, &w::WASTE_HINT, measure(&PERCENT, [0, 5_000], &w::WHY_WASTE));
    }
}

const fn area(label: &'static Phrase, hint: &'static Phrase, least: i64, optional: bool) -> Row {
    let (least, most) = (Area::square_feet(least), Area::square_feet(20_000));
    row(label, hint, Kind::Area(Span { least, most, why: &w::WHY_AREA, common: &[], optional }))
}

form! {
    /// A surface to prime and paint.
    pub struct Input {
        /// With its openings.
        area: Option<Area>, area(&w::AREA, &w::AREA_HINT, 1, false);
        /// Doors and windows.
        openings: Area, area(&w::OPENINGS, &w::NOTHING, 0, true);
        /// Under it.
        primer: Coats = Coats::blank(), row(&w::PRIMER, &w::NOTHING, Kind::Group(Coats::ROWS));
        /// On it.
        finish: Coats = Coats { coats: 2, spread: PAINT, ..Coats::blank() }, row(&w::FINISH, &w::NOTHING, Kind::Group(Coats::ROWS));
        /// Something is sanded or scraped before.
        sands: bool, row(&w::SANDS, &w::SANDS_HINT, Kind::Flag);
        /// What.
        old: OldSurface, row(&w::OLD, &w::NOTHING, Kind::Choice(OldSurface::PICKS)).when(When::Yes("sands"));
    }
    sample {
        area: Some(Area::square_feet(192)),
        finish: Coats { coats: 2, spread: Measure::whole(&SPREAD, 400), ..Coats::blank() },
    }
}

/// One product.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Product {
    /// How far a gallon goes, losses off.
    pub spread: Measure,
    /// A coat, wet.
    pub wet: Measure,
    /// All coats.
    pub gallons: Measure,
    /// The same at the usual spreads, far and near; none by solids.
    pub usual: Option<[Measure; 2]>,
    /// Gallon cans.
    pub cans: i64,
    /// Quarts beside them.
    pub quarts: i64,
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// Less openings.
    pub net: Area,
    /// Under it.
    pub primer: Option<Product>,
    /// On it.
    pub finish: Option<Product>,
    /// How.
    pub working: Steps,
}

impl Calculator for Paint {
    const ID: &'static str = "paint";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Finish;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    const PACED: &'static [&'static str] = &["primer", "finish"];
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        solve(input)
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[
            (&w::LEAD, Some(&TARGET)),
            (&w::AIR, None),
            (&w::RAGS, None),
            (LABELS.says, Some(&LABELS)),
        ])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }

    fn disturbs(input: &Input) -> Option<Disturbs> {
        let area = Some(input.area?.minus(input.openings).max(Area::ZERO));
        let of = |material| Disturbs { material, deed: Deed::Sand, area, painted: area };
        input.old.material().filter(|_| input.sands).map(of)
    }
}

/// The keys and names of a product's steps and figures: spread, wet film, gallons, cans, quarts.
type Names = [(&'static str, &'static Phrase); 5];

const PRIMER_NAMES: Names = [
    ("primer-spread", &w::PRIMER_SPREAD),
    ("primer-wet", &w::PRIMER_WET),
    ("primer", &w::PRIMER_GALLONS),
    ("primer-cans", &w::PRIMER_CANS),
    ("primer-quarts", &w::PRIMER_QUARTS),
];
const FINISH_NAMES: Names = [
    ("finish-spread", &w::FINISH_SPREAD),
    ("finish-wet", &w::FINISH_WET),
    ("finish", &w::FINISH_GALLONS),
    ("finish-cans", &w::FINISH_CANS),
    ("finish-quarts", &w::FINISH_QUARTS),
];

fn product(
    net: Area,
    coats: &Coats,
    usual: [Measure; 2],
    names: Names,
    steps: &mut Steps,
) -> Option<Product> {
    if coats.coats == 0 {
        return None;
    }
    let [(spread_key, spread_name), (wet_key, wet_name), (key, name), _, _] = names;
    // Before losses: what is on the wall.
    let (ideal, source) = match coats.by {
        By::Label => (Expr::measure(coats.spread), &LABELS),
        By::Solids => {
            let ideal = Expr::measure(coats.solids).over(Expr::measure(coats.film));
            let ideal = steps.measure(
                &[key, "-ideal"].concat(),
                &w::IDEAL,
                Some(&SOLIDS),
                &SPREAD,
                ideal,
            )?;
            (Expr::measure(ideal), &SOLIDS)
        }
    };
    let wet = Expr::count(1).over(ideal.clone());
    let wet = steps.measure(wet_key, wet_name, Some(&SOLIDS), &MIL, wet)?;
    let lossy = ideal.times(Expr::count(1).less(Expr::measure(coats.waste)));
    let spread = steps.measure(spread_key, spread_name, Some(source), &SPREAD, lossy)?;
    let at = |spread| Expr::area(net).times(Expr::count(coats.coats)).over(Expr::measure(spread));
    let gallons = at(spread);
    let mut aside = Steps::default();
    let mut usually = |spread| aside.measure(key, name, None, &GALLON, at(spread));
    let usual = match (coats.by, usually(usual[0]), usually(usual[1])) {
        (By::Label, Some(far), Some(near)) => Some([far, near]),
        _ => None,
    };
    let gallons = steps.measure(key, name, None, &GALLON, gallons)?;
    // All of it in quarts, exactly, and of these as many gallons as are full or nearly so.
    let quarts = Expr::measure(gallons)
        .times(Expr::count(4))
        .over(Expr::measure(Measure::whole(&GALLON, 1)));
    let all_key = [key, "-in-quarts"].concat();
    let up = Expr::RoundUp(Box::new(quarts));
    let Some(Amount::Count(all)) = steps.amount(&all_key, &w::IN_QUARTS, Some(&CANS), up) else {
        return None;
    };
    let few = is_at_most(all % 4, Limit { value: MOST_QUARTS, source: &CANS });
    let (cans, quarts) = if few { (all / 4, all % 4) } else { (all / 4 + 1, 0) };
    Some(Product { spread, wet, gallons, usual, cans, quarts })
}

/// Works primer and paint.
///
/// - Spread: the label's, or solids by volume ÷ dry film; × (1 − lost).
/// - Gallons: (area − openings) × coats ÷ spread, each product by itself.
/// - Cans: to the quart, rounded up; three quarts are a gallon.
///
/// # Errors
/// Openings as large as the surface; no coat at all.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let area = input.area.unwrap_or_default();
    let fault = |path: &str, label, given, says| {
        Err(vec![Fault { path: path.to_owned(), label, given, says }])
    };
    if input.openings >= area {
        let says = say!(w::ALL_OPEN, area);
        return fault("openings", &w::OPENINGS, input.openings.exact(), says);
    }
    if input.primer.coats == 0 && input.finish.coats == 0 {
        return fault("finish.coats", &w::COATS, "0".to_owned(), (&w::NO_COAT).into());
    }
    let mut working = Steps::default();
    let net = area.minus(input.openings);
    working.amount("net", &w::NET, None, Expr::area(area).less(Expr::area(input.openings)));
    let primer = product(net, &input.primer, PRIMER_USUAL, PRIMER_NAMES, &mut working);
    let finish = product(net, &input.finish, PAINT_USUAL, FINISH_NAMES, &mut working);
    Ok(Answer { net, primer, finish, working })
}

#[cfg(test)]
mod tests;
