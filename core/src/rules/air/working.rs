//! What a duct loses, as an equation with its numbers in.

use super::run::Duct;
use super::standard_air::ONE_INCH;
use crate::measure::unit::{CFM, FACTOR, FPM, IN_WC, NET_IN2, Unit};
use crate::measure::{Length, Measure};
use crate::sheet::Expr;

/// The nearest measure; what is no number is none, so nothing.
pub fn near(unit: &'static Unit, value: f64) -> Measure {
    Measure::nearest(unit, value).unwrap_or(Measure::whole(unit, 0))
}

/// The nearest length to so many inches.
pub fn inches(value: f64) -> Length {
    // A cast keeps to the ends of the scale.
    Length::from_nanometres(libm::round(value * 25_400_000.0) as i64)
}

/// Its velocity in its real area.
pub fn velocity(duct: &Duct, cfm: f64) -> Expr {
    let area = Expr::measure(near(&NET_IN2, duct.area));
    Expr::measure(near(&CFM, cfm)).over(area).told_in(&FPM)
}

fn pressure(fpm: f64) -> Expr {
    let share = || Expr::measure(near(&FPM, fpm)).over(Expr::measure(ONE_INCH));
    share().times(share()).times(Expr::measure(Measure::whole(&IN_WC, 1)))
}

/// What it loses at a flow above zero.
pub fn loss(duct: &Duct, cfm: f64) -> Expr {
    let plain = |value: f64| Expr::measure(near(&FACTOR, value));
    let mut feet = Expr::length(inches(duct.feet * 12.0));
    if duct.correction > 1.0 {
        feet = plain(duct.correction).times(feet);
    }
    if duct.fittings > 0.0 {
        feet = Expr::Sum(vec![feet, Expr::length(inches(duct.fittings * 12.0))]);
    }
    let factor = plain(duct.factor(cfm));
    let friction = factor.times(feet).over(Expr::length(inches(duct.diameter)));
    let friction = friction.times(pressure(duct.round_velocity(cfm)));
    if duct.c <= 0.0 {
        return friction.told_in(&IN_WC);
    }
    let fittings = plain(duct.c).times(pressure(duct.velocity(cfm)));
    Expr::Sum(vec![friction, fittings]).told_in(&IN_WC)
}
