//! The answer as it is shown.

use super::Calculator;
use super::words as w;
use super::{Answer, INCH, Input, Known, Leg, Place, SIXTEENTH};
use crate::measure::Length;
use crate::rules::compare::{Limit, ask, at_least, at_most, unverified};
use crate::rules::electrical::cable_securing::SPACING;
use crate::rules::electrical::free_conductor::{FREE_CONDUCTOR, FROM_SHEATH, PAST_OPENING};
use crate::rules::electrical::splices::{CLOSED_IN, SPLICES};
use crate::say;
use crate::sheet::{Check, Expr, Figure, Material, Sheet, Source, Step, Verdict};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let next = answer.splice.map(|splice| match input.splice {
        Place::Closed => say!(w::NEXT_CLOSED, splice.short),
        _ => say!(w::NEXT, splice.short, splice.piece),
    });
    Sheet {
        headline: Figure::plain("have", &w::HAVE, answer.have.into()),
        lead: Some(0),
        next,
        figures: figures(input, answer),
        checks: checks(input, answer),
        working: working(input, answer),
        parts: Vec::new(),
        materials: materials(input, answer),
        cautions: super::ReroutedCable::cautions(None),
        drawing: None,
    }
}

fn figures(input: &Input, answer: &Answer) -> Vec<Figure> {
    let mut all = Vec::new();
    let mut add = |key, name, amount| all.push(Figure::plain(key, name, amount));
    add("need", &w::NEED, answer.need.into());
    add("run", &w::RUN, answer.run.into());
    add("allowance", &w::OVERAGE, answer.allowance.into());
    add("free", &w::FREE, answer.free.into());
    match answer.splice {
        None => add("spare", &w::SPARE, answer.have.minus(answer.need).into()),
        Some(splice) => {
            add("short", &w::SHORT, splice.short.into());
            add("splice-boxes", &w::BOXES, Amount::Count(input.cables));
            add("piece", &w::BUY, splice.piece.into());
            add("buy", &w::BUY_ALL, splice.all.into());
        }
    }
    add("staples", &w::STAPLES, Amount::Count(answer.secured.staples));
    all
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let known = answer.edition.is_verified();
    let settled = |check: Check| if known { check } else { unverified(check) };
    let need = Limit { value: answer.need, source: &FREE_CONDUCTOR };
    let reach = at_least("reach", (&w::CHECK_REACH).into(), answer.have, need);
    let mut all = vec![settled(reach)];
    if answer.splice.is_some() {
        let closed = if input.splice == Place::Closed { input.cables } else { 0 };
        let closed = at_most("closed-in", (&w::CHECK_CLOSED).into(), closed, CLOSED_IN);
        all.push(match (input.splice, closed.verdict) {
            (Place::NotSaid, Verdict::Within) => ask(closed, &w::ASK_WHERE),
            _ => settled(closed),
        });
    }
    all
}

/// The steps as they come together: one way in, so that the page carries it once.
struct Steps(Vec<Step>);

impl Steps {
    fn add(
        &mut self,
        key: &str,
        name: &'static Phrase,
        source: Option<&'static Source>,
        expr: Expr,
    ) {
        self.0.push(Step { key: key.to_owned(), name: name.into(), expr, source });
    }
}

fn legs(legs: &[Leg]) -> Vec<Expr> {
    legs.iter().map(|leg| some(leg.length)).collect()
}

fn some(length: Option<Length>) -> Expr {
    Expr::length(length.unwrap_or_default())
}

/// With those that are given.
fn with(mut sum: Vec<Expr>, more: &[Option<Length>]) -> Expr {
    sum.extend(more.iter().flatten().filter(|it| **it > Length::ZERO).copied().map(Expr::length));
    Expr::Sum(sum)
}

/// Up to the next of so many marks of a tape.
fn up_to(mark: Length, length: Expr) -> Expr {
    Expr::length(mark).times(Expr::RoundUp(Box::new(length.over(Expr::length(mark)))))
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut all = Steps(Vec::new());
    if input.known == Known::Way {
        all.add("have", &w::HAVE, None, with(legs(&input.old), &[input.slack, input.left]));
    }
    let new = if input.new.is_empty() { &input.old } else { &input.new };
    all.add("run", &w::RUN, None, with(legs(new), &[input.raise]));
    let run = || Expr::length(answer.run);
    let allowance = up_to(SIXTEENTH, run().times(Expr::measure(input.allowance)));
    all.add("allowance", &w::OVERAGE, None, allowance);
    let past = match input.emerges {
        Some(emerges) => {
            let past = Expr::Sum([emerges, PAST_OPENING].map(Expr::length).into());
            Expr::Most(vec![Expr::length(FROM_SHEATH), past])
        }
        None => Expr::length(FROM_SHEATH),
    };
    all.add("free", &w::FREE, Some(&FREE_CONDUCTOR), past);
    let allowed = vec![run(), Expr::length(answer.allowance)];
    let need = with(allowed, &[input.extra, Some(answer.free)]);
    all.add("need", &w::NEED, Some(&FREE_CONDUCTOR), need);
    let (have, need) = (Expr::length(answer.have), Expr::length(answer.need));
    match answer.splice {
        None => all.add("spare", &w::SPARE, None, have.less(need)),
        Some(splice) => {
            all.add("short", &w::SHORT, None, need.less(have));
            let ends = Expr::count(2).times(Expr::length(answer.free));
            let piece = with(vec![Expr::length(splice.short), ends], &[input.back]);
            all.add("piece", &w::BUY, Some(&SPLICES), up_to(INCH, piece));
            let each = Expr::count(input.cables).times(Expr::length(splice.piece));
            all.add("buy", &w::BUY_ALL, None, each);
        }
    }
    let [first, last] = [answer.secured.first, answer.secured.last].map(Expr::length);
    let between = Expr::Most(vec![Expr::length(Length::ZERO), run().less(first).less(last)]);
    let gaps = Expr::RoundUp(Box::new(between.over(Expr::length(answer.apart))));
    all.add("staples", &w::STAPLES, Some(&SPACING), Expr::Sum(vec![Expr::count(1), gaps]));
    all.0
}

fn materials(input: &Input, answer: &Answer) -> Vec<Material> {
    let mut all = Vec::new();
    let mut add = |key: &str, name: &'static Phrase, amount: Amount| {
        all.push(Material { key: key.to_owned(), name: Text::from(name), amount });
    };
    if let Some(splice) = answer.splice {
        add("splice-box", &w::M_BOX, Amount::Count(input.cables));
        add("cable-as-old", &w::M_CABLE, splice.all.into());
    }
    add("staple", &w::M_STAPLE, Amount::Count(answer.secured.staples.saturating_mul(input.cables)));
    all
}
