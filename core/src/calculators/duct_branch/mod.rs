//! A branch made longer, moved or patched with another duct: how much air it still gives, at two
//! ends between which the blower stands, and what gives it back.

mod drawing;
mod input;
mod sheet;
mod shown;
mod words;
mod working;

use super::{Calculator, Trade};
use crate::edition::Basis;
use crate::measure::unit::{CFM, FPM, PERCENT};
use crate::measure::{Length, Measure};
use crate::rules::air::fittings::{Cost, Fitting};
use crate::rules::air::flex;
use crate::rules::air::run::{Duct, DuctKind, Run, flow_at, in_series, inches};
use crate::rules::air::working::near;
use crate::rules::compare::{Limit, is_at_most};
use crate::rules::hazards::{Deed, Disturbs};
use crate::say;
use crate::sheet::{Caution, Fault, Faults, Sheet};
use crate::words::{Phrase, Text};
pub use input::{Fit, Input, OldWrap, Piece};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct DuctBranch;

/// What a change does where the blower moves as much air as before.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Held {
    /// cfm of the branch.
    pub flow: f64,
    /// cfm of each other branch.
    pub other: f64,
    /// In wc across each of them.
    pub loss: f64,
}

/// What comes out. Flows in cfm, losses in inches of water, sizes in inches.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The branch now, its fittings in it.
    pub now: Duct,
    /// The same run after.
    pub run: Duct,
    /// A piece of another kind.
    pub piece: Option<Duct>,
    /// Slack of that piece, in percent.
    pub piece_slack: Measure,
    /// Air now.
    pub flow: f64,
    /// What it loses now.
    pub loss: f64,
    /// Air after, where the pressure across it stays.
    pub after: f64,
    /// Air after, where the system's air stays.
    pub held: Option<Held>,
    /// For the least and the most that the air now may be: what is left of it.
    pub guesses: Vec<(f64, f64)>,
    /// Air after with all slack cut out, where there is any.
    pub tight: Option<f64>,
    /// Round size of the whole run that keeps the air; none where no change loses any.
    pub size: Option<Size>,
}

/// A size that gives the air back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Size {
    /// So many inches.
    Inches(f64),
    /// None that is built: the piece alone loses too much.
    None,
}

impl Calculator for DuctBranch {
    const ID: &'static str = "duct-branch";
    const VERSION: u16 = 1;
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

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[
            (&shown::DOWN, None),
            (&shown::WRAP, None),
            (&shown::BALANCE, None),
            (&shown::STUB, None),
        ])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }

    fn disturbs(input: &Input) -> Option<Disturbs> {
        let of = |material| Disturbs { material, deed: Deed::Cut, area: None, painted: None };
        input.wrap.material().map(of)
    }
}

/// No house duct runs so fast: a size or a flow was mistyped. Common practice.
const FASTEST: Measure = Measure::whole(&FPM, 5000);
/// The largest round size that is looked for.
const LARGEST: f64 = 24.0;
/// The flow at which a search surely ends, in cfm.
const MOST: f64 = 1e6;

/// Works a change of a branch.
///
/// - Loss: straight duct by Colebrook, slack by the flexible duct correction, fittings by C.
/// - Pressure held: the flow at which the changed branch loses what it loses now.
/// - System's air held: the other branches as one lump whose loss goes with its flow as this
///   branch's does now; all share one pressure.
///
/// # Errors
/// What the fields can't see one by one: flows that contradict each other, air that runs faster
/// than in any house, more duct taken out than there is, slack given twice.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let flow = number(input.flow);
    let now = fitted(input.now.duct(), &input.fittings);
    let (run, piece, piece_slack) = changed(input)?;
    check(input, &now)?;
    let loss = now.loss(flow).drop;
    let after = Changed { run, piece };
    let least = after.at(loss);
    let held = input.system.map(|system| {
        let rest = system.number() - flow;
        // All others together, as one branch like this one now.
        let other = |mine: f64| now.loss(flow * (system.number() - mine) / rest).drop;
        let mine = flow_at(0.0, system.number(), &|mine| after.loss(mine) - other(mine));
        let others = (system.number() - mine) / input.others.max(1) as f64;
        Held { flow: mine, other: others, loss: after.loss(mine) }
    });
    let guesses = [input.flow_least, input.flow_most].into_iter().flatten().map(|guess| {
        let guess = guess.number();
        (guess, after.at(now.loss(guess).drop))
    });
    let (tight_run, tight_piece) = (tight(run), piece.map(tight));
    let is_slack = tight_run != run || tight_piece != piece;
    let tight = is_slack.then(|| Changed { run: tight_run, piece: tight_piece }.at(loss));
    let loses = after.loss(flow) > loss * (1.0 + 1e-9);
    let size = loses.then(|| size(input, &after, flow, loss));
    Ok(Answer {
        now,
        run,
        piece,
        piece_slack,
        flow,
        loss,
        after: least,
        held,
        guesses: guesses.collect(),
        tight,
        size,
    })
}

/// The branch after.
#[derive(Clone, Copy)]
struct Changed {
    run: Duct,
    piece: Option<Duct>,
}

impl Changed {
    fn loss(&self, cfm: f64) -> f64 {
        in_series(&[self.run], cfm).drop + self.piece.map_or(0.0, |piece| piece.loss(cfm).drop)
    }

    /// The flow at which it loses so much.
    fn at(&self, loss: f64) -> f64 {
        flow_at(loss, MOST, &|cfm| self.loss(cfm))
    }
}

fn number(of: Option<Measure>) -> f64 {
    of.map_or(0.0, Measure::number)
}

/// What a person's fittings cost, each and in all.
pub(crate) fn cost(fit: &Fit) -> Cost {
    match fit.kind.cost().0 {
        Cost::Said if fit.kind == Fitting::KnownC => Cost::C(number(fit.c)),
        Cost::Said => Cost::Feet(inches(fit.feet.unwrap_or_default()) / 12.0),
        Cost::C(c) if fit.kind.is_elbow() => Cost::C(c * fit.angle.share()),
        cost => cost,
    }
}

fn fitted(duct: Duct, fits: &[Fit]) -> Duct {
    fits.iter().fold(duct, |duct, fit| duct.fitted(cost(fit), fit.count as f64))
}

fn tight(duct: Duct) -> Duct {
    Duct { correction: 1.0, ..duct }
}

/// The run, the new piece and that piece's slack.
fn changed(input: &Input) -> Result<(Duct, Option<Duct>, Measure), Faults> {
    let old = input.now.length.unwrap_or_default();
    let length = old.plus(input.added.unwrap_or_default());
    if length <= Length::ZERO {
        return Err(fault(
            "added",
            &w::ADDED,
            input.added.map(Length::exact),
            say!(w::NOTHING_LEFT, old),
        ));
    }
    let mut run = Run { length: Some(length), ..input.now.clone() };
    if input.cut_slack {
        run.slack = None;
    }
    if let Some(size) = input.new_diameter {
        run = anew(&run, size);
    }
    let run = fitted(fitted(run.duct(), &input.fittings), &input.added_fittings);
    let none = Measure::whole(&PERCENT, 0);
    let kind = match input.piece {
        Piece::None => return Ok((run, None, none)),
        Piece::Flex => DuctKind::Flex,
        Piece::Round => DuctKind::Round,
    };
    let lies = input.piece_length.unwrap_or_default();
    let slack = match (input.piece_slack, input.piece_tight) {
        (Some(_), Some(tight)) => {
            return Err(fault(
                "piece_tight",
                &w::PIECE_TIGHT,
                Some(tight.exact()),
                say!(w::ONE_OF_TWO),
            ));
        }
        (None, Some(tight)) if tight < lies => {
            let says = say!(w::TIGHT_SHORT, lies);
            return Err(fault("piece_tight", &w::PIECE_TIGHT, Some(tight.exact()), says));
        }
        (None, Some(tight)) => {
            let slack = near(&PERCENT, flex::share(lies, tight) * 100.0);
            if slack > MOST_SLACK {
                let says = say!(w::TOO_SLACK, slack);
                return Err(fault("piece_tight", &w::PIECE_TIGHT, Some(tight.exact()), says));
            }
            slack
        }
        (slack, None) => slack.unwrap_or(none),
    };
    let diameter = input.piece_diameter.unwrap_or_default();
    Ok((run, Some(Run::round(kind, diameter, lies, Some(slack)).duct()), slack))
}

/// As much slack as its own row takes.
const MOST_SLACK: Measure = Measure::whole(&PERCENT, 60);

/// The same run round, in another size; a rectangular one in round metal.
fn anew(run: &Run, size: Length) -> Run {
    let kind = if run.kind == DuctKind::Flex { DuctKind::Flex } else { DuctKind::Round };
    Run { kind, diameter: Some(size), ..run.clone() }
}

fn check(input: &Input, now: &Duct) -> Result<(), Faults> {
    let mut faults = Vec::new();
    let flow = input.flow.unwrap_or(Measure::whole(&CFM, 0));
    let mut say = |path, label, given: Option<Measure>, says| {
        faults.extend(fault(path, label, given.map(Measure::exact), says));
    };
    let most = input.flow_most.unwrap_or(flow).max(flow);
    let fastest = near(&FPM, now.velocity(most.number()));
    if !is_at_most(fastest, Limit { value: FASTEST, source: &crate::rules::air::velocity::QUIET }) {
        let at_most = input.flow_most.is_some_and(|it| it > flow);
        let (path, label) = if at_most { ("flow_most", &w::FLOW_MOST) } else { ("flow", &w::FLOW) };
        say(path, label, Some(most), say!(w::TOO_FAST, fastest));
    }
    if input.flow_least.is_some_and(|least| least > flow) {
        say("flow_least", &w::FLOW_LEAST, input.flow_least, say!(w::NOT_LESS, flow));
    }
    if input.flow_most.is_some_and(|most| most < flow) {
        say("flow_most", &w::FLOW_MOST, input.flow_most, say!(w::NOT_MORE, flow));
    }
    if input.system.is_some_and(|system| system <= flow) {
        say("system", &w::SYSTEM, input.system, say!(w::SYSTEM_SMALL, flow));
    }
    if faults.is_empty() { Ok(()) } else { Err(faults) }
}

fn fault(path: &str, label: &'static Phrase, given: Option<String>, says: Text) -> Faults {
    vec![Fault { path: path.to_owned(), label, given: given.unwrap_or_default(), says }]
}

/// The round size of the whole run at which it all loses, with its air of now, what it loses now.
fn size(input: &Input, after: &Changed, flow: f64, loss: f64) -> Size {
    let slack = after.run.correction > 1.0;
    let at = |diameter: f64| {
        let share = input.now.slack.filter(|_| slack).map_or(0.0, |it| it.number() / 100.0);
        let run = Duct {
            diameter,
            area: std::f64::consts::FRAC_PI_4 * diameter * diameter,
            correction: if slack { flex::correction(share, diameter) } else { 1.0 },
            ..after.run
        };
        Changed { run, ..*after }.loss(flow)
    };
    if at(LARGEST) > loss {
        return Size::None;
    }
    // Loss falls as the size grows, so its opposite rises.
    Size::Inches(flow_at(-loss, LARGEST, &|diameter| -at(diameter)))
}

#[cfg(test)]
mod tests;
