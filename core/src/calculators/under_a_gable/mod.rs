//! A ceiling raised into a gable: what stays flat, and what higher ties do to thrust, rafters,
//! heel joints and the depth left for insulation.
//!
//! Numbers for the engineer's talk. It sizes nothing, and says within of no tie that has moved.

mod drawing;
mod input;
mod sheet;
mod words;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::unit::{NUMBER, PERCENT, PLF, POUND, PSF};
use crate::measure::{Length, Measure};
use crate::rules::compare::{is_at_least, is_at_most};
use crate::rules::framing::gable_ties::{
    self as rule, AIR, AIR_SPACE, LEAST_SLOPE, RIDGE_BEAM, Raised, SLOPE_LOAD, THRUST,
};
use crate::say;
use crate::sheet::{Caution, Expr, Fault, Faults, Sheet, Steps};
use crate::words::{Amount, Phrase};
pub use input::{Given, Input, Roof, Stops, Wanted};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct UnderAGable;

/// What the ties do where a ridge board leaves it to them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Tied {
    /// Thrust on a foot of wall with the ties on the plates.
    pub thrust_now: Measure,
    /// The same with the ties raised.
    pub thrust: Measure,
    /// In one tie on the plates.
    pub tie_now: Measure,
    /// In one raised tie.
    pub tie: Measure,
}

/// What a ridge beam takes over.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Carried {
    /// On a foot of ridge.
    pub ridge: Measure,
    /// On a foot of each wall.
    pub wall: Measure,
}

/// The code's rows, where the gable is one that they are for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rows {
    /// Of a rafter's span.
    pub rafters: Raised<Measure>,
    /// Of a heel joint's nails: the row's fraction.
    pub heel: Raised<(i64, i64)>,
    /// The same as a number.
    pub heel_times: Measure,
    /// With the person's own number, rounded up.
    pub nails: Option<i64>,
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// Top of the plates to where the rafters meet, by span and slope.
    pub rise: Length,
    /// Top of the plates to the ridge's underside: measured, else no lower than this.
    pub under_ridge: Length,
    /// Between the rafters at the raised ties, counted to the outside of the walls; nothing of
    /// trusses.
    pub flat: Option<Length>,
    /// How high the ties stand, of the rise; nothing of trusses.
    pub share: Option<Measure>,
    /// On the flat.
    pub load: Measure,
    /// Under a ridge board, or what isn't known.
    pub tied: Option<Tied>,
    /// Under a ridge beam.
    pub carried: Option<Carried>,
    /// Where the code's tables hold.
    pub rows: Option<Rows>,
    /// What takes the gable out of the tables, but for its two limits.
    pub stops: Vec<&'static Phrase>,
    /// Whether anything does, a limit included.
    pub outside: bool,
    /// Left for insulation at the outside of the wall.
    pub eave: Option<Length>,
    /// Left for insulation between the rafters.
    pub slope: Option<Length>,
    /// Of the insulation.
    pub wanted: Option<Length>,
    /// How all that came about.
    pub steps: Steps,
}

impl Calculator for UnderAGable {
    const ID: &'static str = "under-a-gable";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::Framing;
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

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[(&w::SHORE, None), (&w::LATHER, None), (&w::WIND, None), (&w::LOCAL, None)])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

fn fault(path: &str, label: &'static Phrase, given: String, says: crate::words::Text) -> Faults {
    vec![Fault { path: path.to_owned(), label, given, says }]
}

/// Works a gable.
///
/// - Shape: a plain gable, half each way, the load even and on the flat; lengths from the top of
///   the plates and the outside of the walls.
/// - Height of the ridge: its underside, where that was measured; else the rise by span and slope.
/// - Thrust on a foot of wall: `w L² ÷ (8 (height − up))`, from moments about the ridge.
/// - The code's rows as printed, the harsher between two; nails up. Without a measured ridge they
///   are those under the deepest.
///
/// # Errors
/// Ties as high as the ridge, or a ridge over where the rafters meet, at their fields.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let held = |answer: Option<Answer>| {
        answer.ok_or_else(|| fault("span", &w::SPAN, input.span.exact(), say!(w::TOO_MUCH)))
    };
    let mut steps = Steps::default();
    let half = Expr::measure(input.pitch).times(Expr::length(input.span)).over(Expr::count(2));
    let Some(rise) = steps.length("rise", &w::RISE, None, half) else { return held(None) };
    if let Some(ridge) = input.ridge.filter(|ridge| *ridge > rise) {
        return Err(fault("ridge", &w::RIDGE_UNDER, ridge.exact(), say!(w::RIDGE_HIGH, rise)));
    }
    let height = input.height(rise);
    if input.up() >= height {
        let is_low = input.roof != Roof::Beam && !is_at_least(input.pitch, LEAST_SLOPE);
        let says = if is_low { say!(w::TOO_HIGH_LOW, height) } else { say!(w::TOO_HIGH, height) };
        return Err(fault("up", &w::UP, input.up().exact(), says));
    }
    held(worked(input, rise, steps))
}

impl Input {
    /// How far the ties go up; those that stay, not at all.
    fn up(&self) -> Length {
        self.up.unwrap_or_default()
    }

    /// Of the ridge over the plates, as it is known.
    fn height(&self, rise: Length) -> Length {
        self.ridge.unwrap_or(rise)
    }
}

/// What takes the gable out of the code's tables, but for its two limits.
fn stops(input: &Input) -> Vec<&'static Phrase> {
    let Stops { cut, across, purlins, unequal, hips } = input.stops;
    let mut all = Vec::new();
    for (is, reason) in [
        (input.roof == Roof::Trusses, &w::TRUSSES),
        (input.roof == Roof::Unknown, &w::UNKNOWN),
        (cut, &w::CUT),
        (across, &w::ACROSS),
        (purlins, &w::PURLINS),
        (unequal, &w::UNEQUAL),
        (hips, &w::HIPS),
    ] {
        if is {
            all.push(reason);
        }
    }
    all
}

fn worked(input: &Input, rise: Length, mut steps: Steps) -> Option<Answer> {
    let (span, up, pitch) =
        (Expr::length(input.span), Expr::length(input.up()), Expr::measure(input.pitch));
    let stops = stops(input);
    let height = input.height(rise);
    let deepest = rise.minus(rule::DEEPEST_RIDGE).max(Length::ZERO);
    let in_limits = input.roof == Roof::Beam
        || (is_at_most(input.up(), rule::highest(height)) && is_at_least(input.pitch, LEAST_SLOPE));
    let mut answer = Answer {
        rise,
        under_ridge: input.ridge.unwrap_or(deepest),
        flat: None,
        share: None,
        load: input.load,
        tied: None,
        carried: None,
        rows: None,
        outside: !stops.is_empty() || !in_limits,
        stops,
        eave: None,
        slope: None,
        wanted: None,
        steps: Steps::default(),
    };
    if input.roof != Roof::Trusses {
        if input.given == Given::Apart {
            let slope = Expr::Sum(vec![Expr::count(1), pitch.clone().times(pitch.clone())]);
            let dead = Expr::measure(input.dead).times(Expr::Root(2, Box::new(slope)));
            let sum = Expr::Sum(vec![dead, Expr::measure(input.live)]);
            answer.load = steps.measure("load", &w::ON_FLAT, Some(&SLOPE_LOAD), &PSF, sum)?;
        }
        let share = up.clone().over(Expr::length(height));
        answer.share = Some(steps.measure("share", &w::SHARE, None, &PERCENT, share)?);
        let load = Expr::measure(answer.load);
        if input.roof == Roof::Beam {
            answer.carried = Some(carried(&load, &span, &mut steps)?);
        } else {
            answer.tied = Some(tied(input, &load, height, &mut steps)?);
        }
        let flat = span.less(Expr::count(2).times(up).over(pitch));
        answer.flat = Some(steps.length("flat-width", flat_name(input), None, flat)?);
    }
    if input.roof == Roof::Board && !answer.outside {
        answer.rows = rows(input, answer.under_ridge, &mut steps);
    }
    insulation(input, &mut answer, &mut steps)?;
    answer.steps = steps;
    Some(answer)
}

/// Ties that stay leave all of it flat.
fn flat_name(input: &Input) -> &'static Phrase {
    if input.up() > Length::ZERO { &w::FLAT } else { &w::FLAT_ALL }
}

fn tied(input: &Input, load: &Expr, height: Length, steps: &mut Steps) -> Option<Tied> {
    let mut thrust = |key, name, up: Length| {
        let over = Expr::length(height);
        let over = if up > Length::ZERO { over.less(Expr::length(up)) } else { over };
        let span = || Expr::length(input.span);
        let push = load.clone().times(span()).times(span()).over(Expr::count(8).times(over));
        steps.measure(key, name, Some(&THRUST), &PLF, push)
    };
    let raised = thrust("thrust", &w::THRUST, input.up())?;
    let stays = input.up() == Length::ZERO;
    let thrust_now =
        if stays { raised } else { thrust("thrust-now", &w::THRUST_NOW, Length::ZERO)? };
    let mut pull = |key, name, thrust| {
        let pull = Expr::measure(thrust).times(Expr::length(input.spacing));
        steps.measure(key, name, Some(&THRUST), &POUND, pull)
    };
    let tie = pull("tie", &w::TIE, raised)?;
    let tie_now = if stays { tie } else { pull("tie-now", &w::TIE_NOW, thrust_now)? };
    Some(Tied { thrust_now, thrust: raised, tie_now, tie })
}

fn carried(load: &Expr, span: &Expr, steps: &mut Steps) -> Option<Carried> {
    let mut share = |key, name, of| {
        let share = load.clone().times(span.clone()).over(Expr::count(of));
        steps.measure(key, name, Some(&RIDGE_BEAM), &PLF, share)
    };
    Some(Carried { ridge: share("ridge", &w::RIDGE, 2)?, wall: share("wall", &w::WALL, 4)? })
}

fn rows(input: &Input, height: Length, steps: &mut Steps) -> Option<Rows> {
    let (rafters, heel) =
        (rule::rafter_span(input.up(), height)?, rule::heel_nails(input.up(), height)?);
    let span = Expr::measure(rafters.times);
    steps.amount("rafter-factor", &w::RAFTERS, Some(rafters.source), span)?;
    let times = || Expr::count(heel.times.0).over(Expr::count(heel.times.1));
    let source = Some(heel.source);
    let heel_times = steps.measure("nail-factor", &w::NAIL_FACTOR, source, &NUMBER, times())?;
    let nails = match input.nails {
        None => None,
        Some(nails) => {
            let nails = Expr::RoundUp(Box::new(Expr::count(nails).times(times())));
            match steps.amount("nails", &w::NAIL_COUNT, source, nails)? {
                Amount::Count(nails) => Some(nails),
                _ => None,
            }
        }
    };
    Some(Rows { rafters, heel, heel_times, nails })
}

fn insulation(input: &Input, answer: &mut Answer, steps: &mut Steps) -> Option<()> {
    let mut left = |key, name, of: Option<Length>| {
        let Some(of) = of else { return Some(None) };
        let left = Expr::length(of).less(Expr::length(AIR));
        let left = Expr::Most(vec![Expr::length(Length::ZERO), left]);
        steps.length(key, name, Some(&AIR_SPACE), left).map(Some)
    };
    answer.eave = left("eave", &w::EAVE, input.heel)?;
    answer.slope = left("slope", &w::SLOPE, input.rafter)?;
    answer.wanted = match (input.insulation, input.r, input.r_per_inch) {
        (Wanted::R, Some(r), Some(per_inch)) => {
            let depth = Expr::measure(r).over(Expr::measure(per_inch));
            Some(steps.length("wanted", &w::WANTED, None, depth)?)
        }
        (Wanted::Depth, ..) => input.depth,
        _ => None,
    };
    Some(())
}

#[cfg(test)]
mod tests;
