//! One end of each range: the least, the likely or the most of water, debris and hours.

use super::input::{Input, Painted};
use super::words as w;
use crate::measure::unit::{GALLON, HOUR, PCF, WEIGHT};
use crate::measure::{Area, Length, Measure, Unit, Volume};
use crate::rules::finish::labor::{PROTECT, SCRAPE, SCRAPE_PAINTED, STRIPPING};
use crate::rules::finish::texture::{
    BULKING, DEBRIS, DENSITY, PASS, PASSES, TEXTURE, THICK, WATER, WATER_WEIGHS, WETTED,
};
use crate::sheet::{Expr, Steps};
use crate::words::Amount;

/// What it comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Amounts {
    /// On the ceiling.
    pub volume: Volume,
    /// As it hangs.
    pub dry: Measure,
    /// To spray.
    pub water: Measure,
    /// Of the sprayer.
    pub fills: i64,
    /// As it comes down, all water in it.
    pub wet: Measure,
    /// In bags, heaped.
    pub heaped: Volume,
    /// By weight or by volume.
    pub bags: i64,
    /// Of one worker.
    pub hours: Measure,
    /// With all who work.
    pub crew: Measure,
}

/// What drives an end: thickness, density, water, passes, bulking.
#[derive(Clone, Copy, Debug)]
pub(super) struct Drivers {
    pub thick: Length,
    pub density: Measure,
    pub water: Measure,
    pub passes: i64,
    pub bulking: Measure,
}

pub(super) fn drivers(input: &Input, end: usize) -> Drivers {
    let thick = input.thick.unwrap_or(THICK[end]);
    let weighed = input.patch.and_then(|patch| {
        let density =
            Expr::measure(patch).over(Expr::area(Area::square_feet(1)).times(Expr::length(thick)));
        told(&density.told_in(&PCF))
    });
    Drivers {
        thick,
        density: weighed.or(input.density).unwrap_or(DENSITY[end]),
        water: input.water.unwrap_or(PASS[end]),
        passes: input.passes.unwrap_or(PASSES[end]),
        bulking: input.bulking.unwrap_or(BULKING[end]),
    }
}

fn told(expr: &Expr) -> Option<Measure> {
    match expr.value()?.amount()? {
        Amount::Measure(measure) => Some(measure),
        _ => None,
    }
}

pub(super) fn amounts(input: &Input, end: usize, steps: &mut Steps) -> Amounts {
    let Drivers { thick, density, water, passes, bulking } = drivers(input, end);
    let area = Expr::area(input.scraped());
    let none = |unit: &'static Unit| Measure::whole(unit, 0);
    let room = |amount: Option<Amount>| match amount {
        Some(Amount::Room(volume)) => volume,
        _ => Volume::ZERO,
    };
    let count = |amount: Option<Amount>| match amount {
        Some(Amount::Count(count)) => count,
        _ => 0,
    };
    let texture = Some(&TEXTURE);
    let volume = area.clone().times(Expr::length(thick));
    let volume = room(steps.amount("volume", &w::VOLUME, texture, volume));
    // What was weighed is the density of the whole ceiling, whatever its thickness.
    let dry = match input.patch {
        Some(patch) => {
            area.clone().times(Expr::measure(patch)).over(Expr::area(Area::square_feet(1)))
        }
        None => Expr::Is(Amount::Room(volume)).times(Expr::measure(density)),
    };
    let dry = steps.measure("dry", &w::DRY, texture, &WEIGHT, dry).unwrap_or(none(&WEIGHT));
    let each = area.clone().over(Expr::area(WETTED)).times(Expr::measure(water));
    let water = each.times(Expr::count(passes));
    let water =
        steps.measure("water", &w::SPRAYED, texture, &GALLON, water).unwrap_or(none(&GALLON));
    let fills = Expr::RoundUp(Box::new(Expr::measure(water).over(Expr::measure(input.sprayer))));
    let fills = count(steps.amount("fills", &w::FILLS, None, fills));
    let wet = Expr::Sum(vec![
        Expr::measure(dry),
        Expr::measure(water).times(Expr::measure(WATER_WEIGHS)).told_in(&WEIGHT),
    ]);
    let wet = steps.measure("wet", &w::WET, Some(&WATER), &WEIGHT, wet).unwrap_or(none(&WEIGHT));
    let heaped = Expr::Is(Amount::Room(volume)).times(Expr::measure(bulking));
    let heaped = room(steps.amount("heaped", &w::HEAPED, Some(&DEBRIS), heaped));
    let bags = Expr::Most(vec![
        Expr::RoundUp(Box::new(Expr::Is(Amount::Room(heaped)).over(Expr::measure(input.bag)))),
        Expr::RoundUp(Box::new(Expr::measure(wet).over(Expr::measure(input.carried)))),
    ]);
    let bags = count(steps.amount("bags", &w::BAGS, Some(&DEBRIS), bags));
    let scrape = if input.painted == Painted::Yes { SCRAPE_PAINTED } else { SCRAPE };
    // Most hours at the slowest rate.
    let at = |rates: [Measure; 3]| area.clone().over(Expr::measure(rates[2 - end])).told_in(&HOUR);
    let hours = Expr::Sum(vec![at(PROTECT), at(scrape)]);
    let hours =
        steps.measure("hours", &w::HOURS, Some(&STRIPPING), &HOUR, hours).unwrap_or(none(&HOUR));
    let crew = Expr::measure(hours).over(Expr::count(input.people));
    let crew = steps.measure("crew", &w::CREW, None, &HOUR, crew).unwrap_or(none(&HOUR));
    Amounts { volume, dry, water, fills, wet, heaped, bags, hours, crew }
}
