//! Skim coats: blade passes, compound for each coat and in all, hours, and the lanes to scale.

mod drawing;
mod sheet;
mod words;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::fields::{Kind, Row, Span, When, row};
use crate::form;
use crate::measure::unit::{GALLON, HOUR, MIL, PERCENT, WEIGHT};
use crate::measure::{Area, Length, Measure};
use crate::rules::finish::compound::{READY_WEIGHS, WATER, WEIGHTS, pail_for};
use crate::rules::finish::labor::{LABOR, SAND, SKIM as SKIMMED};
use crate::rules::finish::old_surface::OldSurface;
use crate::rules::finish::skim::{BLADES, GEOMETRY, Ground, SKIM};
use crate::rules::hazards::{Deed, Disturbs};
use crate::say;
use crate::sheet::{Caution, Expr, Fault, Faults, Sheet, Steps};
use crate::words::{Amount, Phrase};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct SkimCoat;

/// In inches.
const fn length([least, most]: [i64; 2], why: &'static Phrase, common: &'static [Length]) -> Kind {
    let (least, most) = (Length::inches(least, 1), Length::inches(most, 1));
    Kind::Length(Span { least, most, why, common, optional: false })
}

const fn side(label: &'static Phrase) -> Row {
    row(label, &w::NOTHING, length([12, 1200], &w::WHY_ROOM, &[]))
}

form! {
    /// A surface to skim.
    pub struct Input {
        /// Along one side.
        long: Length, side(&w::LONG).of_room("longest");
        /// Square to it.
        wide: Length, side(&w::WIDE).of_room("widest");
        /// Of another shape.
        area: Option<Area>, row(&w::AREA, &w::AREA_HINT, Kind::Area(Span {
            least: Area::square_feet(1), most: Area::square_feet(10_000), why: &w::WHY_ROOM, common: &[], optional: true,
        })).of_room("ceiling-area");
        /// How even it is.
        ground: Ground, row(&w::GROUND, &w::GROUND_HINT, Kind::Choice(Ground::PICKS));
        /// A coat, wet.
        thick: Length = Length::inches(1, 32), row(&w::THICK, &w::NOTHING, Kind::Length(Span {
            least: Length::inches(1, 256), most: Length::inches(1, 4), why: &w::WHY_THICK,
            common: &[Length::inches(1, 64), Length::inches(1, 32), Length::inches(1, 16)], optional: false,
        })).when(When::Is("ground", &["own"]));
        /// How many.
        coats: i64 = 2, row(&w::COATS, &w::COATS_HINT, Kind::Count { least: 1, most: 5, why: &w::WHY_COATS })
            .when(When::IsNot("ground", &["level-5"]));
        /// How many of a level 5 skim: as its compound has it beside the joints.
        fine_coats: i64 = 1, row(&w::COATS, &w::NOTHING, Kind::Count { least: 1, most: 5, why: &w::WHY_COATS })
            .when(When::Is("ground", &["level-5"]));
        /// Its width.
        blade: Length = Length::inches(12, 1), row(&w::BLADE, &w::BLADE_HINT, length([1, 60], &w::WHY_BLADE, BLADES));
        /// Each lane over the last.
        overlap: Length = Length::inches(2, 1), row(&w::OVERLAP, &w::NOTHING, length([0, 12], &w::WHY_OVERLAP, &[]));
        /// Laid on, then wiped.
        wiped: bool = true, row(&w::WIPED, &w::NOTHING, Kind::Flag);
        /// At the end.
        sand: bool = true, row(&w::SAND, &w::NOTHING, Kind::Flag);
        /// Left in pails and on tools.
        waste: Measure = Measure::whole(&PERCENT, 10), row(&w::WASTE, &w::NOTHING, Kind::Measure(Span {
            least: Measure::whole(&PERCENT, 0), most: Measure::whole(&PERCENT, 50), why: &w::WHY_WASTE, common: &[], optional: false,
        }));
        /// What is under it.
        old: OldSurface, row(&w::OLD, &w::OLD_HINT, Kind::Choice(OldSurface::PICKS));
    }
    sample {
        long: Length::inches(192, 1),
        wide: Length::inches(144, 1),
        old: OldSurface::Texture,
    }
}

impl Input {
    /// How many, of what is skimmed.
    pub const fn coats(&self) -> i64 {
        match self.ground {
            Ground::Level5 => self.fine_coats,
            _ => self.coats,
        }
    }

    /// Whether what is skimmed is the length times the width, so that lanes can be laid out.
    pub fn is_rectangle(&self) -> bool {
        self.area.is_none_or(|area| area == Area::of(self.long, self.wide))
    }
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// All coats, wet, with what is lost.
    pub gallons: Measure,
    /// At least and at most; none of an own thickness.
    pub range: Option<[Measure; 2]>,
    /// One coat, nothing lost.
    pub coat: Measure,
    /// What is skimmed.
    pub area: Area,
    /// A coat's wet thickness.
    pub thick: Measure,
    /// Blade passes over the shorter side, and over the longer; none of another shape than a
    /// rectangle.
    pub passes: [i64; 2],
    /// The blade's way, all coats; nothing where there are no passes.
    pub travel: Length,
    /// Of all the compound.
    pub weight: Measure,
    /// In it, to dry out.
    pub water: Measure,
    /// Of ready-mixed compound.
    pub pails: i64,
    /// The same for the most that it takes.
    pub pails_at_most: i64,
    /// One worker's: quick, likely, slow.
    pub hours: [Measure; 3],
    /// How.
    pub working: Steps,
}

impl Calculator for SkimCoat {
    const ID: &'static str = "skim-coat";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Finish;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    const PACED: &'static [&'static str] = &["hours", "gallons"];
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
            (&w::DUST, None),
            (&w::PRIME, None),
            (&w::WET, None),
            (&w::LADDER, None),
            (LABOR.says, Some(&LABOR)),
        ])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }

    fn disturbs(input: &Input) -> Option<Disturbs> {
        let area = Some(input.area.unwrap_or(Area::of(input.long, input.wide)));
        let of = |material| Disturbs { material, deed: Deed::Sand, area, painted: area };
        input.old.material().map(of)
    }
}

/// All coats, wet, with what is lost.
fn all(area: Area, thick: Measure, input: &Input) -> Expr {
    let coat = Expr::area(area).times(Expr::measure(thick)).told_in(&GALLON);
    let lost = Expr::Sum(vec![Expr::count(1), Expr::measure(input.waste)]);
    coat.times(Expr::count(input.coats())).times(lost).told_in(&GALLON)
}

/// Person-hours at a rate to skim and one to sand.
fn hours(area: Area, input: &Input, rate: usize) -> Expr {
    let skim =
        Expr::area(area).times(Expr::count(input.coats())).over(Expr::measure(SKIMMED[rate]));
    let mut parts = vec![skim.told_in(&HOUR)];
    if input.sand {
        parts.push(Expr::area(area).over(Expr::measure(SAND[rate])).told_in(&HOUR));
    }
    Expr::Sum(parts)
}

fn told(expr: &Expr) -> Option<Measure> {
    match expr.value()?.amount()? {
        Amount::Measure(measure) => Some(measure),
        _ => None,
    }
}

/// Works a skim.
///
/// - Compound: area × wet thickness × coats × (1 + lost).
/// - Passes: 1, or (across − overlap) ÷ (blade − overlap) rounded up exactly; coats take turns along
///   and across.
/// - Hours: area × coats ÷ a rate, and sanding once.
///
/// # Errors
/// An overlap as wide as the blade.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    if input.overlap >= input.blade {
        let says = say!(w::TOO_FAR_OVER, input.blade);
        let (path, given) = ("overlap".to_owned(), input.overlap.exact());
        return Err(vec![Fault { path, label: &w::OVERLAP, given, says }]);
    }
    let area = input.area.unwrap_or(Area::of(input.long, input.wide));
    let own = Expr::length(input.thick).told_in(&MIL);
    let own = told(&own).unwrap_or(Measure::whole(&MIL, 0));
    let [least, thick, most] = input.ground.thickness().unwrap_or([own; 3]);
    let mut steps = Steps::default();
    let none = |unit| Measure::whole(unit, 0);
    let coat = Expr::area(area).times(Expr::measure(thick));
    let coat = steps.measure("coat", &w::COAT, Some(&SKIM), &GALLON, coat).unwrap_or(none(&GALLON));
    let lost = Expr::Sum(vec![Expr::count(1), Expr::measure(input.waste)]);
    let gallons = Expr::measure(coat).times(Expr::count(input.coats())).times(lost);
    let gallons = steps.measure("gallons", &w::GALLONS, Some(&GEOMETRY), &GALLON, gallons);
    let gallons = gallons.unwrap_or(none(&GALLON));
    let range = input.ground.thickness().map(|_| {
        [least, most].map(|thick| told(&all(area, thick, input)).unwrap_or(none(&GALLON)))
    });
    let (short, long) = (input.long.min(input.wide), input.long.max(input.wide));
    let laid = input.is_rectangle();
    let mut passes = |key, name, across: Length| {
        if across <= input.blade {
            return 1;
        }
        let each = Expr::length(input.blade).less(Expr::length(input.overlap));
        let lanes = Expr::length(across).less(Expr::length(input.overlap)).over(each);
        match steps.amount(key, name, Some(&GEOMETRY), Expr::RoundUp(Box::new(lanes))) {
            Some(Amount::Count(count)) => count,
            _ => 1,
        }
    };
    let mut passes_of = [0; 2];
    if laid {
        passes_of[0] = passes("passes", &w::PASSES, short);
    }
    if laid && input.coats() > 1 {
        passes_of[1] = passes("passes-across", &w::PASSES_ACROSS, long);
    }
    let strokes = if input.wiped { 2 } else { 1 };
    let ways =
        [(passes_of[0], long, (input.coats() + 1) / 2), (passes_of[1], short, input.coats() / 2)];
    let mut travel = Vec::new();
    for (count, along, coats) in ways {
        if count > 0 {
            travel.push(
                Expr::length(along).times(Expr::count(count)).times(Expr::count(coats * strokes)),
            );
        }
    }
    let travel = steps.length("travel", &w::TRAVEL, None, Expr::Sum(travel)).unwrap_or_default();
    let weight = Expr::measure(gallons).times(Expr::measure(READY_WEIGHS));
    let weight = steps
        .measure("weight", &w::WEIGHT, Some(&WEIGHTS), &WEIGHT, weight)
        .unwrap_or(none(&WEIGHT));
    let water = Expr::measure(weight).times(Expr::measure(WATER));
    let water =
        steps.measure("water", &w::WATER, Some(&WEIGHTS), &WEIGHT, water).unwrap_or(none(&WEIGHT));
    let in_pails = |gallons: Measure, steps: &mut Steps| {
        let pails = Expr::measure(gallons).over(Expr::measure(pail_for(gallons)));
        let pails = Expr::RoundUp(Box::new(pails));
        match steps.amount("pails", &w::PAILS_STEP, Some(&WEIGHTS), pails) {
            Some(Amount::Count(count)) => count,
            _ => 0,
        }
    };
    let pails = in_pails(gallons, &mut steps);
    let most = range.map_or(gallons, |[_, high]| high);
    let pails_at_most = in_pails(most, &mut Steps::default());
    let likely = hours(area, input, 1);
    let likely =
        steps.measure("hours", &w::HOURS, Some(&LABOR), &HOUR, likely).unwrap_or(none(&HOUR));
    let at = |rate| told(&hours(area, input, rate)).unwrap_or(none(&HOUR));
    let hours = [at(2), likely, at(0)];
    Ok(Answer {
        gallons,
        range,
        coat,
        area,
        thick,
        passes: passes_of,
        travel,
        weight,
        water,
        pails,
        pails_at_most,
        hours,
        working: steps,
    })
}

#[cfg(test)]
mod tests;
