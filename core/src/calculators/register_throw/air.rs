//! How much air comes out, and of what: each as an expression, which is both the answer and its
//! working.

use super::input::{Input, Know};
use super::words as w;
use crate::measure::Measure;
use crate::measure::unit::{CFM, FACTOR, NET_IN2, PERCENT};
use crate::rules::air::flow_guess::{
    A_TON, BAG, GUESS, KNOWN, READING, ROUGH_READING, Spread, TONS,
};
use crate::rules::air::jets::{Blows, DYING, LAST, Outlet, Surface, measured, rooted};
use crate::rules::air::register_sizes::OPEN_SHARE;
use crate::sheet::Expr;
use crate::words::Phrase;

/// A quarter of π.
const QUARTER_TURN: Measure = Measure::new(&FACTOR, 785_398);

/// Its core, or its neck.
pub(super) fn core(input: &Input) -> Expr {
    let product = |a, b| Expr::length(a).times(Expr::length(b));
    if input.outlet.has_neck() {
        return Expr::measure(QUARTER_TURN)
            .times(product(input.neck, input.neck))
            .told_in(&NET_IN2);
    }
    let [wide, high] = input.size.sides();
    product(input.wide.unwrap_or(wide), input.high.unwrap_or(high)).told_in(&NET_IN2)
}

/// So much of its core; the maker's area goes first.
fn part(input: &Input, share: Measure) -> Expr {
    match input.maker.area {
        Some(area) => Expr::measure(area),
        None if share == Measure::whole(&PERCENT, 100) => core(input),
        None => core(input).times(Expr::measure(share)).told_in(&NET_IN2),
    }
}

/// The area that K goes with.
pub(super) fn area(input: &Input) -> Expr {
    part(input, input.outlet.open())
}

/// What is open at its face.
pub(super) fn face_area(input: &Input) -> Expr {
    let neck = input.outlet.has_neck();
    part(input, if neck { Measure::whole(&PERCENT, 100) } else { OPEN_SHARE })
}

/// K of its jet as it runs: by its maker's throw, else the table's.
pub(super) fn k(input: &Input) -> Expr {
    let maker = &input.maker;
    let (Some(throw), Some(cfm)) = (maker.throw, maker.cfm) else {
        let (k, root) = input.outlet.k(input.vanes, input.surface());
        let k = Expr::measure(k);
        return if root == 0 { k } else { rooted(k, root).told_in(&FACTOR) };
    };
    let root = Expr::Root(2, Box::new(area(input)));
    let whole = Expr::length(throw).times(Expr::measure(LAST)).times(root);
    let k = whole.over(Expr::measure(DYING).times(Expr::measure(cfm)));
    let root = match (input.outlet.blows(), maker.along, input.surface()) {
        (Blows::Up, ..) => 0,
        (_, Surface::Free, Surface::Attached) => 1,
        (_, Surface::Attached, Surface::Free) => -1,
        _ => 0,
    };
    rooted(k, root).told_in(&FACTOR)
}

/// The middle of its air.
pub(super) fn middle(input: &Input) -> Expr {
    match input.know {
        Know::Guess | Know::Measured => Expr::measure(input.cfm),
        Know::Bag => Expr::measure(input.bag).over(Expr::measure(input.fills)).told_in(&CFM),
        Know::Reading => Expr::measure(input.face).times(face_area(input)).told_in(&CFM),
        Know::Tons => {
            let all = Expr::measure(input.tons).times(Expr::measure(A_TON));
            all.over(Expr::count(input.registers)).told_in(&CFM)
        }
        Know::Duct => Expr::measure(input.duct.carries()[1]),
    }
}

/// Least, middle and most of its air.
pub(super) fn range(input: &Input) -> [Measure; 3] {
    let spread: Spread = match input.know {
        Know::Duct => return input.duct.carries(),
        Know::Measured => KNOWN,
        Know::Guess => GUESS,
        Know::Bag => BAG,
        Know::Reading if input.maker.area.is_some() => READING,
        Know::Reading => ROUGH_READING,
        Know::Tons => TONS,
    };
    let middle = measured(middle(input)).unwrap_or(input.cfm);
    let of = |share: i64| middle.of_same(middle.millionths() / 1000 * share);
    if spread == KNOWN { [middle; 3] } else { [of(spread[0]), middle, of(spread[1])] }
}

/// The field that the air hangs on.
pub(super) fn field(input: &Input) -> (&'static str, &'static Phrase) {
    match input.know {
        Know::Guess | Know::Measured => ("cfm", &w::CFM),
        Know::Bag => ("fills", &w::FILLS),
        Know::Reading => ("face", &w::FACE),
        Know::Tons => ("tons", &w::TONNAGE),
        Know::Duct => ("duct", &w::DUCT_SIZE),
    }
}

/// Room air carried along at 100 fpm, times its own.
pub(super) fn carried(input: &Input, leaves: Measure) -> Expr {
    let two = Expr::count(2);
    let two = if input.outlet == Outlet::Slot { Expr::Root(2, Box::new(two)) } else { two };
    let at = Measure::whole(leaves.unit(), 100);
    two.times(Expr::measure(leaves)).over(Expr::measure(at)).told_in(&FACTOR)
}
