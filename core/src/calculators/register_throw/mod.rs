//! What a register throws: how far, how its air falls or rises, how loud, and how that fits the way
//! in front of it.
//!
//! `input` holds the fields, `air` how much comes out of what, `fit` the checks, `heads` where it
//! comes down on people,
//! `handed` what the sub gets, `drawing`, `sheet`
//! and `words` how it is shown.

mod air;
mod drawing;
mod fit;
mod handed;
mod heads;
mod input;
mod sheet;
mod words;

use super::{Calculator, Step, Trade, with_blanks};
use crate::edition::Basis;
use crate::measure::{Length, Measure, Rounding, divide};
use crate::rules::air::clearances::{ALARM, HEAT};
use crate::rules::air::jets::{
    BAND, Blows, ENDS, Jet, OCCUPIED, Surface, measured, thrown, velocity,
};
use crate::say;
use crate::sheet::{Caution, Check, Fault, Faults, Sheet};
use crate::words::Phrase;
pub use fit::is_speed;
pub use handed::{handed_over, questions};
pub use heads::at_heads;
pub use input::{Along, Input, Know, Maker, Temperature};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct RegisterThrow;

/// What comes out. Of three, the first is at the least air, the last at the most.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// cfm.
    pub air: [Measure; 3],
    /// K of its jet, area form, as it runs.
    pub k: Measure,
    /// The area that K goes with, in square inches.
    pub area: Measure,
    /// What is open at its face, in square inches.
    pub face_area: Measure,
    /// How fast it leaves that area, in fpm.
    pub leaves: [Measure; 3],
    /// How fast it leaves its face, in fpm.
    pub face: [Measure; 3],
    /// To 50, 100 and 150 fpm; none where it leaves no faster.
    pub throws: [[Option<Length>; 3]; 3],
    /// How much room air it carries along at 100 fpm; none where it leaves no faster.
    pub carried: Option<Measure>,
    /// How it falls or rises, of a level jet that runs free.
    pub bend: Option<Bend>,
    /// Where it leaves the ceiling, cold.
    pub off_ceiling: Option<Length>,
    /// Its speed, its throw by either rule, its sound.
    pub checks: Vec<Check>,
}

/// How a jet leaves its axis: the least, and the most.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bend {
    /// The end velocity whose throw it is told at.
    pub end: Measure,
    /// By how much there.
    pub by: [Length; 2],
    /// Where cold air is down to head height: nearest, farthest. None where it starts there, or the
    /// height isn't known.
    pub down: Option<[Length; 2]>,
}

impl Answer {
    /// The throw to 50 fpm at the middle of the air.
    pub fn throw(&self) -> Length {
        self.throws[0][1].unwrap_or_default()
    }

    /// How fast it leaves the tighter of its two areas, at the least, the middle and the most air:
    /// what is heard, and what a limit is held against.
    pub fn speeds(&self) -> [Measure; 3] {
        [0, 1, 2].map(|at| self.leaves[at].max(self.face[at]))
    }

    /// The same as it is told.
    pub fn told(&self) -> Length {
        to_inch(self.throw())
    }

    /// Whether the air is a range.
    pub fn is_range(&self) -> bool {
        self.air[0] != self.air[2]
    }
}

impl Calculator for RegisterThrow {
    const ID: &'static str = "register-throw";
    const VERSION: u16 = 2;
    // 2: the ceiling over it.
    const STEPS: &'static [Step] = &[with_blanks];
    const TRADE: Trade = Trade::Air;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = false;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, _: Basis) -> Result<Answer, Faults> {
        solve(input)
    }

    fn cautions(input: Option<&Input>) -> Vec<Caution> {
        let mut all = Caution::all(&[
            (&w::ESTIMATE, None),
            (ALARM.says, Some(&ALARM)),
            (&w::SHUT_DOWN, None),
            (&w::OLD, None),
        ]);
        if input.is_some_and(Input::is_warm_from_above) {
            all.push(Caution { text: HEAT.says.into(), source: Some(&HEAT) });
        }
        all
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Works a register.
///
/// - Throw: `K × cfm ÷ (V × √A)`, 70 % of it at 50 fpm; K by area, once times or over √2 where the
///   jet runs along another surface than its K was measured along.
/// - Range: worked at the least, the middle and the most of the air.
/// - Rounding: to the nanometre; told to the inch.
///
/// # Errors
/// Air that leaves at 50 fpm or less, and a maker's throw without its air.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    if let (Some(throw), None) = (input.maker.throw, input.maker.cfm) {
        let given = throw.exact();
        let (path, label) = ("maker.cfm".to_owned(), &w::MAKER_CFM);
        return Err(vec![Fault { path, label, given, says: (&w::NEEDED_TOO).into() }]);
    }
    // Each of these is a quotient or product of quantities within their bounds.
    let of = |expr| measured(expr).unwrap_or(ENDS[0].of_same(0));
    let area = of(air::area(input));
    let face_area = of(air::face_area(input));
    let k = of(air::k(input));
    let flows = air::range(input);
    let leaves = flows.map(|cfm| of(velocity(cfm, area)));
    let face = flows.map(|cfm| of(velocity(cfm, face_area)));
    let throws = ENDS.map(|end| flows.map(|cfm| thrown(k, cfm, area, end)));
    if throws[0][1].is_none() {
        let (path, label) = air::field(input);
        let (given, says) = (flows[1].exact(), say!(w::NO_THROW, leaves[1]));
        return Err(vec![Fault { path: path.to_owned(), label, given, says }]);
    }
    let jet = Jet::new([k, flows[1], area, input.difference, input.room]);
    let cold = input.temperature == Temperature::Cold;
    let attached = input.surface() == Surface::Attached;
    let mut answer = Answer {
        air: flows,
        k,
        area,
        face_area,
        leaves,
        face,
        throws,
        carried: throws[1][1].and_then(|_| measured(air::carried(input, leaves[1]))),
        bend: None,
        off_ceiling: None,
        checks: Vec::new(),
    };
    if input.temperature != Temperature::Same && input.outlet.blows() != Blows::Up && !attached {
        answer.bend = bend(input, &answer, &jet);
    }
    if let Some(pressure) = input.pressure.filter(|_| cold && attached) {
        answer.off_ceiling = Some(feet(jet.leaves(pressure.number())));
    }
    answer.checks = fit::checks(input, &answer);
    Ok(answer)
}

/// Told at the throw to the fastest of the velocities that it reaches.
fn bend(input: &Input, answer: &Answer, jet: &Jet) -> Option<Bend> {
    let ends = ENDS.into_iter().zip(answer.throws).rev();
    let (end, at) = ends.filter_map(|(end, throws)| Some((end, throws[1]?))).next()?;
    let at = at.nanometres() as f64 / FOOT;
    let over = input.height.map(|height| height.minus(OCCUPIED));
    let over = over.filter(|over| *over > Length::ZERO);
    let over = over.map(|over| over.nanometres() as f64 / FOOT);
    let [least, most] = BAND;
    Some(Bend {
        end,
        by: BAND.map(|coefficient| feet(jet.bent(at, coefficient))),
        down: over.map(|over| [feet(jet.reaches(over, most)), feet(jet.reaches(over, least))]),
    })
}

/// Nanometres in a foot.
const FOOT: f64 = 304_800_000.0;

/// To the nearest inch, since none of this is known closer; less than half of one as it is.
/// Past a quarter mile it is told as that.
pub(super) fn feet(feet: f64) -> Length {
    to_inch(Length::from_nanometres((feet.clamp(0.0, 1320.0) * FOOT) as i64))
}

/// To the nearest inch; what is less stays as it is.
pub fn to_inch(length: Length) -> Length {
    let inch = Length::inches(1, 1);
    let count = divide(length.nanometres().into(), inch.nanometres().into(), Rounding::Nearest);
    if count == 0 { length } else { inch.times(count as i64) }
}

#[cfg(test)]
mod tests;
