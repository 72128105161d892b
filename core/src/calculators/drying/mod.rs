//! How long compound takes to dry, what is left after changing conditions, whether outdoor air is
//! drier, and the water that has to go.

mod input;
mod sheet;
mod words;

pub use input::{Flue, Input, Mud, Spell, Way};

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::unit::{
    BTUH, CFM, DEGREES, HOUR, MIL, PER_HOUR, PERCENT, PINT, PINT_A_DAY, POUND_AN_HOUR, WEIGHT,
};
use crate::measure::{Measure, Unit};
use crate::rules::air::room_heat::SENSIBLE;
use crate::rules::compare::{Limit, is_at_most};
use crate::rules::finish::compound::{READY_WEIGHS, WATER, WEIGHTS};
use crate::rules::finish::drying::{
    AGAINST_MODEL, FREEZING, MODEL, NOMINAL, SETTING, TABLE_SOURCE, WETTEST, done, hours, in_table,
};
use crate::rules::finish::vapor::{self, VAPOR};
use crate::rules::residential::heat::CARRIES;
use crate::say;
use crate::sheet::{Caution, Expr, Faults, Sheet, Steps, Value};
use crate::words::{Amount, Phrase};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct Drying;

/// Outdoor air against the room's.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Outdoors {
    /// Where it begins to condense.
    pub dew: Option<Measure>,
    /// Let in and warmed or cooled to the room; over 100 % it condenses.
    pub humidity: Measure,
    /// Whether it holds less than the room's.
    pub drier: bool,
    /// Hours to dry in it; none where nothing would.
    pub hours: Option<Measure>,
}

/// Water to carry off while a coat dries.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Water {
    /// In all.
    pub weight: Measure,
    /// The same.
    pub pints: Measure,
    /// A dehumidifier's real take.
    pub a_day: Measure,
    /// Outdoor air that would; none where it is no drier.
    pub air: Option<Measure>,
    /// The same against the room.
    pub changes: Option<Measure>,
    /// What that air takes to be warmed to the room; none where it is no colder.
    pub heat: Option<Measure>,
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// A fresh coat, as the room is: by the model.
    pub hours: Measure,
    /// The same in the air that comes in by the way chosen; none where none does, or none is known.
    pub open: Option<Measure>,
    /// Of what is left, as it is now: by the model's error, and thickness squared.
    pub range: [Measure; 2],
    /// The table's own, where the conditions stand in it.
    pub in_table: Option<Measure>,
    /// Each spell's hours to dry from wet to dry; none where nothing dries.
    pub spells: Vec<Option<Measure>>,
    /// What is done after the spells: all at most.
    pub done: Measure,
    /// What is left, as the room is, or in the air that is let in.
    pub left: Measure,
    /// Of the room's air.
    pub dew: Option<Measure>,
    /// Outdoor air.
    pub outdoors: Option<Outdoors>,
    /// To carry off.
    pub water: Option<Water>,
    /// How.
    pub working: Steps,
}

impl Calculator for Drying {
    const ID: &'static str = "drying";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Finish;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        Ok(solve(input))
    }

    fn cautions(input: Option<&Input>) -> Vec<Caution> {
        let frozen = |it: &Input| it.outdoors && is_at_most(it.out_temperature, FREEZING);
        let freezing: (&_, Option<&_>) = (&w::FREEZING, Some(FREEZING.source));
        let mut all = Caution::all(&[
            (&w::HEATER, None),
            (&w::DETECTOR, None),
            (&w::SLOW, None),
            (&w::RATED, None),
            (TABLE_SOURCE.says, Some(&TABLE_SOURCE)),
            (SETTING.says, Some(&SETTING)),
        ]);
        match input {
            Some(input) if frozen(input) => all.insert(0, Caution::all(&[freezing]).remove(0)),
            Some(_) => {}
            // Nobody has said yet how it is outdoors.
            None => all.append(&mut Caution::all(&[freezing])),
        }
        all
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

fn none(unit: &'static Unit) -> Measure {
    Measure::whole(unit, 0)
}

fn told(expr: &Expr) -> Option<Measure> {
    match expr.value().and_then(Value::amount)? {
        Amount::Measure(measure) => Some(measure),
        _ => None,
    }
}

/// Hours for a coat; none where nothing dries.
fn dries(at: Measure, humidity: Measure, mils: Measure) -> Option<Expr> {
    let wettest = Limit { value: Measure::whole(&PERCENT, WETTEST), source: &TABLE_SOURCE };
    let coat = hours(at, humidity).times(Expr::measure(mils)).over(Expr::measure(NOMINAL));
    is_at_most(humidity, wettest).then(|| coat.told_in(&HOUR))
}

/// Works a coat that dries.
///
/// - Hours: the model × thickness ÷ 1/16 in; at most by the table's farthest cell, and thickness
///   squared where it is thicker.
/// - Progress: Σ hours of a spell ÷ what it would take in it; left: (1 − done) × hours now.
/// - Outdoor air keeps its vapor; its humidity is that over what the room's air could hold.
/// - Water: gallons × weight × share; by pints a day, or by air whose vapor is less.
pub fn solve(input: &Input) -> Answer {
    let mut steps = Steps::default();
    let at = input.temperature;
    let mils = told(&Expr::length(input.thick).told_in(&MIL)).unwrap_or(none(&MIL));
    let most = Expr::measure(vapor::saturated(at));
    steps.amount("saturated", &w::SATURATED, Some(&VAPOR), most);
    let fresh = dries(at, input.humidity, mils).unwrap_or(Expr::measure(none(&HOUR)));
    let hours =
        steps.measure("hours", &w::TO_DRY, Some(&MODEL), &HOUR, fresh).unwrap_or(none(&HOUR));
    let inside = vapor::pressure(at, input.humidity);
    let outside = vapor::pressure(input.out_temperature, input.out_humidity);
    let outdoors = input.outdoors.then(|| {
        let humidity = vapor::humidity(outside, at);
        let drier = !is_at_most(inside, Limit { value: outside, source: &VAPOR });
        let hours = dries(at, humidity, mils).and_then(|expr| {
            steps.measure("hours-let-in", &w::WITH_OUT, Some(&MODEL), &HOUR, expr)
        });
        Outdoors { dew: vapor::dew_point(outside), humidity, drier, hours }
    });
    let open = outdoors.filter(|_| input.way != Way::Shut).and_then(|outdoors| outdoors.hours);
    let now = open.unwrap_or(hours);
    let in_table = in_table(at, input.humidity).filter(|_| mils == NOMINAL);

    let mut spells = Vec::new();
    let mut spent = Vec::new();
    for (number, spell) in (1..).zip(&input.spells) {
        let takes = dries(spell.temperature, spell.humidity, mils).and_then(|expr| told(&expr));
        spells.push(takes);
        let (Some(takes), Some(hours)) =
            (takes.filter(|takes| takes.millionths() > 0), spell.hours)
        else {
            continue;
        };
        spent.push((hours, takes));
        let share = Expr::measure(hours).over(Expr::measure(takes));
        let key = ["spell-", &i64::to_string(&number)].concat();
        if steps.measure(&key, &w::SPELL, Some(&MODEL), &PERCENT, share).is_some()
            && let Some(step) = steps.0.last_mut()
        {
            step.name = say!(w::SPELL_DONE, number);
        }
    }
    let share = done(&spent).min(1.0);
    let done = Measure::nearest(&PERCENT, 100.0 * share).unwrap_or(none(&PERCENT));
    let mut left = now;
    if !input.spells.is_empty() {
        let rest = Expr::count(1).less(Expr::measure(done)).times(Expr::measure(now));
        left = steps.measure("left", &w::LEFT, None, &HOUR, rest).unwrap_or(now);
    }
    let thicker = (mils.number() / NOMINAL.number()).max(1.0);
    let [least, most] = AGAINST_MODEL.map(|share| left.number() * share.number() / 100.0);
    let range = [least, most * thicker].map(|it| Measure::nearest(&HOUR, it).unwrap_or(left));
    let differs = outdoors.is_some_and(|outdoors| outdoors.drier).then_some((inside, outside));
    let water = input.gallons.and_then(|gallons| water(input, gallons, hours, differs, &mut steps));
    let dew = vapor::dew_point(inside);
    Answer {
        hours,
        open,
        range,
        in_table,
        spells,
        done,
        left,
        dew,
        outdoors,
        water,
        working: steps,
    }
}

/// Water of so many gallons, carried off while they dry.
fn water(
    input: &Input,
    gallons: Measure,
    hours: Measure,
    differs: Option<(Measure, Measure)>,
    steps: &mut Steps,
) -> Option<Water> {
    let weight =
        Expr::measure(gallons).times(Expr::measure(READY_WEIGHS)).times(Expr::measure(WATER));
    let weight = steps.measure("water", &w::WATER, Some(&WEIGHTS), &WEIGHT, weight)?;
    let pints = Expr::measure(weight).over(Expr::measure(vapor::WATER_WEIGHS));
    let pints = steps.measure("pints", &w::PINTS, Some(&vapor::WATER), &PINT, pints)?;
    let a_day = Expr::measure(pints).over(Expr::measure(hours));
    let a_day = steps.measure("pints-a-day", &w::A_DAY, None, &PINT_A_DAY, a_day)?;
    let mut water = Water { weight, pints, a_day, air: None, changes: None, heat: None };
    let Some((inside, outside)) = differs else { return Some(water) };
    let rate = Expr::measure(weight).over(Expr::measure(hours));
    let rate = steps.measure("rate", &w::RATE, None, &POUND_AN_HOUR, rate)?;
    let at = input.temperature;
    let mut holds = |key, name, vapor| {
        let holds = vapor::weight(vapor, at);
        steps.amount(key, name, Some(&VAPOR), Expr::measure(holds));
        holds
    };
    let inside = holds("inside", &w::INSIDE_HOLDS, inside);
    let outside = holds("outside", &w::OUTSIDE_HOLDS, outside);
    let less = Expr::measure(inside).less(Expr::measure(outside));
    let air = Expr::measure(rate).over(less);
    water.air = steps.measure("air", &w::AIR, Some(&VAPOR), &CFM, air);
    if let (Some(air), Some(room)) = (water.air, input.room) {
        let changes = Expr::measure(air).over(Expr::Is(Amount::Room(room)));
        water.changes = steps.measure("changes", &w::CHANGES, None, &PER_HOUR, changes);
    }
    let colder = Measure::new(&DEGREES, at.minus(input.out_temperature).millionths());
    if let Some(air) = water.air.filter(|_| colder.millionths() > 0) {
        let heat = Expr::measure(CARRIES).times(Expr::measure(air)).times(Expr::measure(colder));
        water.heat = steps.measure("heat", &w::HEAT, Some(&SENSIBLE), &BTUH, heat);
    }
    Some(water)
}

#[cfg(test)]
mod tests;
