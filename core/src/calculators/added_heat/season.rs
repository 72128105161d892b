//! What a difference of temperatures takes through the new wall and ceiling and with the new air.

use super::{Behind, By, Input, told};
use crate::measure::{Area, Measure, unit};
use crate::rules::residential::heat::{OF_AIR, air_for, through, with_air};
use crate::sheet::Expr;

/// Heat in one season, Btu/h.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Season {
    /// The difference that it is worked for.
    pub degrees: Measure,
    /// `area × U × difference`, or `÷ R`, of what isn't beside a heated room.
    pub wall: Measure,
    /// `0.018 × volume × changes × difference`.
    pub air: Measure,
    /// What goes through the new ceiling, less what went through the old.
    pub ceiling: Option<Measure>,
    /// All of it.
    pub total: Measure,
    /// Air from a register that makes up for it: `total ÷ (1.08 × supply)`; none where it asks for
    /// none.
    pub cfm: Option<Measure>,
}

pub(super) fn season(input: &Input, degrees: Measure, supply: Option<Measure>) -> Season {
    let part = |expr: &Expr| told(expr, &unit::BTUH);
    let wall = wall(input, degrees);
    let wall = wall.map_or(Measure::whole(&unit::BTUH, 0), |expr| part(&expr));
    let air = part(&air(input, degrees));
    let ceiling = ceiling(input, degrees).map(|expr| part(&expr));
    let total = part(&total(wall, air, ceiling));
    let supply = supply.filter(|_| total.millionths() > 0);
    let cfm = supply.map(|supply| told(&cfm(total, supply), &unit::CFM));
    Season { degrees, wall, air, ceiling, total, cfm }
}

/// What goes through the wall; none beside a heated room.
pub(super) fn wall(input: &Input, degrees: Measure) -> Option<Expr> {
    let area = Expr::area(input.wall.unwrap_or_default());
    let area = match input.holds.inside {
        Some(inside) if inside > Area::ZERO => area.less(Expr::area(inside)),
        _ => area,
    };
    match (input.holds.behind, input.holds.by) {
        (Behind::Heated, _) => None,
        (_, By::R) => {
            let passes = area.times(Expr::measure(degrees)).over(Expr::measure(input.holds.r?));
            Some(passes.told_in(&unit::BTUH))
        }
        (_, By::U) => Some(through(input.holds.u?, area, degrees)),
    }
}

pub(super) fn air(input: &Input, degrees: Measure) -> Expr {
    let volume = Expr::Is(crate::words::Amount::Room(input.air.unwrap_or_default()));
    with_air(input.changes, volume, OF_AIR, degrees)
}

/// What goes through the new ceiling less what went through the old; none where it doesn't count.
pub(super) fn ceiling(input: &Input, degrees: Measure) -> Option<Expr> {
    let ceiling = &input.ceiling;
    if !ceiling.count {
        return None;
    }
    let through = |area: Option<Area>, r: Option<Measure>| {
        let passes = Expr::area(area?).times(Expr::measure(degrees));
        Some(passes.over(Expr::measure(r?)))
    };
    let new = through(ceiling.area, ceiling.r)?;
    let old = through(ceiling.old_area, ceiling.old_r)?;
    Some(new.less(old).told_in(&unit::BTUH))
}

pub(super) fn total(wall: Measure, air: Measure, ceiling: Option<Measure>) -> Expr {
    let mut parts = vec![Expr::measure(wall), Expr::measure(air)];
    parts.extend(ceiling.map(Expr::measure));
    Expr::Sum(parts).told_in(&unit::BTUH)
}

/// The same where it is less than nothing, told as what is saved.
pub(super) fn saved(it: &Season) -> Option<Expr> {
    let ceiling = it.ceiling.filter(|_| it.total.millionths() < 0)?;
    let saved = Expr::measure(ceiling.of_same(-ceiling.millionths()));
    Some(saved.less(Expr::measure(it.wall)).less(Expr::measure(it.air)).told_in(&unit::BTUH))
}

pub(super) fn cfm(total: Measure, supply: Measure) -> Expr {
    air_for(total, OF_AIR, supply)
}
