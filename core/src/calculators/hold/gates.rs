//! The gates of a hold: what has to be known before each opens, and what is still missing.

use super::input::{Asbestos, Input, Lead, Local, Who, Window};
use super::words as w;
use crate::measure::Day;
use crate::rules::compare::Limit;
use crate::rules::hazards::asbestos::{self, CONTENT, ONE_IS_ENOUGH, TRACE, VERMICULITE};
use crate::rules::hazards::lead::{self, FIRM, MINOR, TARGET};
use crate::rules::hazards::local::{STRICTER, UNSAID};
use crate::rules::hazards::{Deed, Material};
use crate::say;
use crate::sheet::Source;
use crate::words::{Phrase, Text};

/// Why a gate is shut.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reason {
    /// What is missing, and what to do next.
    pub says: Text,
    /// The rule or the practice behind it.
    pub source: &'static Source,
}

/// One thing that has to be settled. It is shut while fewer pieces are given than needed, and
/// then says why.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Gate {
    /// Stable name.
    pub key: &'static str,
    /// What it settles.
    pub name: &'static Phrase,
    /// Pieces needed.
    pub needed: Limit<i64>,
    /// Pieces given.
    pub given: i64,
    /// Why it is shut; none while it is open.
    pub reasons: Vec<Reason>,
    /// All but what only an authority can say is given: it asks, and stays shut.
    pub asks: Option<&'static Phrase>,
}

impl Gate {
    fn new(key: &'static str, name: &'static Phrase, source: &'static Source) -> Self {
        let needed = Limit { value: 0, source };
        Self { key, name, needed, given: 0, reasons: Vec::new(), asks: None }
    }

    /// A piece that is needed, and the reason where it isn't there.
    fn piece(&mut self, is_given: bool, reason: impl FnOnce() -> Option<Reason>) {
        self.needed.value += 1;
        if is_given {
            self.given += 1;
        } else {
            self.reasons.extend(reason());
        }
    }

    /// A piece that is needed and has no more to it than its own words.
    fn asked(&mut self, is_given: bool, phrase: &'static Phrase) {
        let source = self.needed.source;
        self.piece(is_given, || Some(Reason { says: phrase.into(), source }));
    }

    /// Whether all is given.
    pub fn is_open(&self) -> bool {
        self.given >= self.needed.value
    }
}

/// Whether a line says anything: a dash doesn't, of whatever length. Told by ranges, since a table
/// of all scripts' letters weighs as much as a calculator.
fn said(text: &str) -> bool {
    let foreign = |sign: char| sign >= '\u{c0}' && !('\u{2000}'..='\u{2bff}').contains(&sign);
    text.chars().any(|sign| sign.is_ascii_alphanumeric() || foreign(sign))
}

/// Whether a day lies before there was anything to look at.
fn is_older(day: Day, input: &Input) -> bool {
    let since = input.put_up.max(input.built);
    since.is_some_and(|year| i64::from(day.year()) < year)
}

/// The fewest samples of the area; of one that wasn't measured, the fewest of any.
pub(super) fn samples(input: &Input) -> Limit<i64> {
    asbestos::samples(input.measured().unwrap_or_default())
}

/// No count of samples could open it.
pub(super) fn is_shut_by_nature(input: &Input) -> bool {
    input.material == Material::Vermiculite || input.report.result == Asbestos::Over
}

/// All gates that this area has, in the order in which they are settled.
pub(super) fn gates(input: &Input) -> Vec<Gate> {
    let mut gates = vec![surface(input), report(input)];
    if !is_shut_by_nature(input) {
        gates.push(count(input));
    }
    if lead::reaches(input.built) {
        gates.push(paint(input));
    }
    gates.push(office(input));
    gates
}

fn surface(input: &Input) -> Gate {
    let mut gate = Gate::new("surface", &w::GATE_SURFACE, &UNSAID);
    gate.asked(said(&input.place), &w::NEED_PLACE);
    gate.asked(input.material != Material::NotSaid, &w::NEED_MATERIAL);
    gate.asked(input.deed != Deed::NotSaid, &w::NEED_DEED);
    gate.asked(input.measured().is_some(), &w::NEED_AREA);
    if input.material == Material::Wrap {
        gate.asked(input.measured_pipe().is_some(), &w::NEED_PIPE);
    }
    gate.asked(input.built.is_some(), &w::NEED_BUILT);
    gate
}

fn report(input: &Input) -> Gate {
    let report = &input.report;
    let presumed = asbestos::presumed(input.built, input.material);
    let rule = match (presumed, report.result) {
        _ if input.material == Material::Vermiculite => &VERMICULITE,
        (_, Asbestos::Trace) => &TRACE,
        (_, Asbestos::Over) => &ONE_IS_ENOUGH,
        (Some(presumed), _) => presumed,
        _ if input.built.is_some_and(asbestos::is_later) => &asbestos::AFTER,
        _ => &asbestos::SAMPLES,
    };
    let mut gate = Gate::new("report", &w::GATE_REPORT, rule);
    if input.material == Material::Vermiculite {
        gate.asked(false, &w::HOLD_VERMICULITE);
    }
    let found = report.result == Asbestos::NoneDetected;
    gate.piece(found, || {
        let (says, source): (&'static Phrase, _) = match report.result {
            // What is told of vermiculite stands already.
            Asbestos::NoneYet if input.material == Material::Vermiculite => return None,
            Asbestos::Trace => (&w::HOLD_TRACE, &TRACE),
            Asbestos::Over => (&w::HOLD_OVER, &CONTENT),
            _ => (&w::HOLD_NO_RESULT, rule),
        };
        Some(Reason { says: says.into(), source })
    });
    // Without a report, or with one that shuts it, what is missing is not worth a line each.
    let told = matches!(report.result, Asbestos::NoneDetected | Asbestos::Trace);
    for (is_given, phrase) in [
        (said(&report.lab), &w::NEED_LAB),
        (said(&report.number), &w::NEED_NUMBER),
        (said(&report.accreditation), &w::NEED_ACCREDITATION),
        (report.dated.is_some(), &w::NEED_DATED),
        (said(&report.sampled), &w::NEED_SAMPLED),
    ] {
        let reason = Reason { says: phrase.into(), source: &UNSAID };
        gate.piece(told && is_given, || told.then_some(reason));
    }
    if report.dated.is_some_and(|day| is_older(day, input)) {
        gate.asked(false, &w::HOLD_REPORT_OLD);
    }
    let only_the_result = gate.given + 1 == gate.needed.value;
    gate.asks = (report.result == Asbestos::Trace && only_the_result).then_some(&w::HOLD_TRACE);
    gate
}

fn count(input: &Input) -> Gate {
    let needed = samples(input);
    let told = input.report.result != Asbestos::NoneYet;
    let given = input.report.samples.filter(|_| told).unwrap_or(0);
    let mut gate = Gate { needed, given, ..Gate::new("samples", &w::GATE_SAMPLES, needed.source) };
    if !gate.is_open() {
        let says = say!(w::NEED_SAMPLES, needed.value, given);
        gate.reasons.push(Reason { says, source: needed.source });
    }
    gate
}

/// How the paint is settled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Settled {
    /// The rule doesn't reach it, or it was tested and has no lead.
    NoLead,
    /// A certified firm does it.
    Certified,
    /// It is minor.
    Minor,
}

/// What settles the paint, if anything does.
pub(super) fn settled(input: &Input) -> Option<Settled> {
    let paint = &input.paint;
    let tested = paint.result == Lead::NoLead
        && said(&paint.tester)
        && paint.tested.is_some_and(|day| !is_older(day, input));
    if tested || !lead::reaches(input.built) {
        return Some(Settled::NoLead);
    }
    if paint.who == Who::Certified {
        return Some(Settled::Certified);
    }
    let torn_out = matches!(input.deed, Deed::TearOut | Deed::NotSaid);
    let window = paint.window != Window::No;
    let minor = |painted| lead::is_minor(painted, paint.outside, window, torn_out);
    paint.painted.is_some_and(minor).then_some(Settled::Minor)
}

fn paint(input: &Input) -> Gate {
    let paint = &input.paint;
    let mut gate = Gate::new("paint", &w::GATE_PAINT, &TARGET);
    if settled(input).is_none() && paint.result == Lead::NoLead {
        // The test is there: what is missing is who made it, and when.
        let need = |phrase: &'static Phrase| Some(Reason { says: phrase.into(), source: &UNSAID });
        gate.piece(said(&paint.tester), || need(&w::NEED_TESTER));
        gate.piece(paint.tested.is_some(), || need(&w::NEED_TESTED));
        if paint.tested.is_some_and(|day| is_older(day, input)) {
            gate.asked(false, &w::HOLD_TEST_OLD);
        }
        return gate;
    }
    gate.piece(settled(input).is_some(), || {
        let limit = lead::most_minor(paint.outside);
        let (says, source) = match (paint.painted, paint.window) {
            (None, _) => (say!(w::NEED_PAINTED), &TARGET),
            (_, Window::NotSaid) => (say!(w::NEED_WINDOW), &MINOR),
            (_, Window::Yes) => (say!(w::HOLD_WINDOW), &MINOR),
            _ if input.deed == Deed::NotSaid => (say!(w::NEED_DEED), &UNSAID),
            _ if input.deed == Deed::TearOut => (say!(w::HOLD_PAINT_OUT), &FIRM),
            _ => (say!(w::HOLD_PAINT, limit.value), limit.source),
        };
        Some(Reason { says, source })
    });
    gate
}

fn office(input: &Input) -> Gate {
    let office = &input.office;
    let mut gate = Gate::new("office", &w::GATE_OFFICE, &STRICTER);
    let asked = office.asks != Local::NotAsked;
    gate.asked(asked, &w::NEED_OFFICE);
    let says = Reason { says: (&w::NEED_OFFICE_SAYS).into(), source: &UNSAID };
    gate.piece(asked && said(&office.says), || asked.then_some(says));
    if office.asks == Local::Stricter {
        gate.asked(office.met, &w::HOLD_STRICTER);
    }
    gate
}
