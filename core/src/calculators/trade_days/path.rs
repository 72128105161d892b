//! The critical path, by days of a calendar: forward for the earliest days, back for the latest.
//! Source: [`crate::rules::planning::CRITICAL_PATH`].

use super::input::{Input, Step, Who};
use super::inspections::{Early, early, unasked};
use super::waits::{Waits, at, waits};
use super::words as w;
use crate::fields::missing;
use crate::measure::Day;
use crate::say;
use crate::sheet::{Fault, Faults};

/// Why a step begins no earlier.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Because {
    /// Nothing does.
    First,
    /// Its own day.
    Own,
    /// The step at this place of the list is to be done first; and whether days off come between.
    After(usize, bool),
}

/// A step's days.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Planned {
    /// Its first day, at the earliest.
    pub begins: Day,
    /// Its last.
    pub done: Day,
    /// The last day to give notice; none where none is needed.
    pub call: Option<Day>,
    /// So many of its own days may it begin later, or take longer, before the last day moves.
    pub slack: i64,
    /// Why no earlier.
    pub because: Because,
    /// What begins later if it takes a day longer, in the order of [`Answer::order`].
    pub moves: Vec<usize>,
    /// The last day of all then.
    pub last: Day,
}

/// What comes out. Steps stand as in their list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The steps.
    pub steps: Vec<Planned>,
    /// Their places by first day, last day and name.
    pub order: Vec<usize>,
    /// The chain that the last day hangs on, the first step first.
    pub chain: Vec<usize>,
    /// The first day for work.
    pub first: Day,
    /// The last day of all.
    pub last: Day,
    /// Inspections that nothing waits for, though there is work beside them.
    pub unasked: Vec<usize>,
    /// What the crew begins before an inspection that it doesn't wait for.
    pub early: Vec<Early>,
}

/// So many days are looked at before the first and behind it.
const BACK: i64 = 400;
const AHEAD: i64 = 3_653;

/// Days that count for somebody, in order, by [`Day::number`].
struct Days(Vec<i64>);

impl Days {
    /// The place of the first that isn't before a day.
    fn place(&self, day: i64) -> usize {
        self.0.partition_point(|it| *it < day)
    }

    /// The first and the last of so many from a place on.
    fn span(&self, place: usize, count: i64) -> Option<[i64; 2]> {
        let last = place + usize::try_from(count).ok()?.saturating_sub(1);
        Some([*self.0.get(place)?, *self.0.get(last)?])
    }
}

struct Plan<'a> {
    steps: &'a [Step],
    by: Waits,
    first: i64,
    worked: Days,
    every: Days,
    /// Mondays to Fridays that aren't off.
    office: Days,
}

impl Plan<'_> {
    /// The days of a step.
    fn days(&self, step: usize) -> &Days {
        match self.steps[step] {
            // Whatever the crew works.
            Step { who: Who::Inspector, .. } => &self.office,
            Step { through: true, .. } => &self.every,
            _ => &self.worked,
        }
    }

    /// First and last day of every step, where one of them takes a day longer, if any does.
    fn forward(&self, longer: Option<usize>) -> Result<Vec<[i64; 2]>, Fault> {
        let mut spans = vec![[0; 2]; self.steps.len()];
        for &step in &self.by.order {
            let it = &self.steps[step];
            let mut from = self.first.max(it.from.map_or(0, Day::number));
            for &wait in &self.by.waits[step] {
                from = from.max(spans[wait][1] + 1);
            }
            let days = self.days(step);
            let count = it.days + i64::from(longer == Some(step));
            let span = days.span(days.place(from), count);
            spans[step] = span.ok_or_else(|| too_far(step, "days", &it.days.to_string()))?;
        }
        Ok(spans)
    }

    /// So many days of its own may each step slip, where the last day stays.
    fn slack(&self, spans: &[[i64; 2]], last: i64) -> Vec<i64> {
        let mut latest = vec![last; spans.len()];
        let mut slack = vec![0; spans.len()];
        for &step in self.by.order.iter().rev() {
            let days = self.days(step);
            let ends = days.place(latest[step] + 1);
            let begins = ends.saturating_sub(self.steps[step].days as usize);
            slack[step] = begins as i64 - days.place(spans[step][0]) as i64;
            for &wait in &self.by.waits[step] {
                latest[wait] = latest[wait].min(days.0[begins] - 1);
            }
        }
        slack
    }

    /// What a step waits for that is done last; of several the one that may slip least.
    fn because(&self, step: usize, spans: &[[i64; 2]], slack: &[i64]) -> Because {
        let (days, begins) = (self.days(step), spans[step][0]);
        let mut best: Option<usize> = None;
        for &wait in &self.by.waits[step] {
            let drives = days.0[days.place(spans[wait][1] + 1)] == begins;
            let rank = |it: usize| (slack[it], -spans[it][1], &self.by.names[it]);
            if drives && best.is_none_or(|best| rank(wait) < rank(best)) {
                best = Some(wait);
            }
        }
        match (best, self.steps[step].from) {
            (Some(wait), _) => Because::After(wait, spans[wait][1] + 1 < begins),
            (None, Some(own)) if own.number() > self.first => Because::Own,
            _ => Because::First,
        }
    }
}

fn too_far(step: usize, key: &str, given: &str) -> Fault {
    let label = if key == "call" { &w::CALL } else { &w::DAYS };
    at(step, key, label, given, say!(w::TOO_FAR))
}

/// Days off, from and through, by their numbers.
fn off(input: &Input, faults: &mut Faults) -> Vec<[i64; 2]> {
    let mut all = Vec::new();
    for (at, off) in input.off.iter().enumerate() {
        let path = |key| ["off.", &at.to_string(), key].concat();
        let Some(day) = off.day else {
            faults.push(missing(path(".day"), &w::OFF_DAY, None));
            continue;
        };
        let through = off.through.unwrap_or(day);
        if through < day {
            let (path, given) = (path(".through"), through.exact());
            let says = say!(w::BACKWARDS, day.exact());
            faults.push(Fault { path, label: &w::OFF_THROUGH, given, says });
        }
        all.push([day.number(), through.number()]);
    }
    all
}

/// Works out the days of all steps.
///
/// - Shape: steps of whole days that wait for others; days worked by all alike, or every day. An
///   inspector's are Mondays to Fridays that aren't off.
/// - Method: [`crate::rules::planning::CRITICAL_PATH`]. A step begins on the first of its days past the
///   last day of all that it waits for.
/// - Notice is counted back over Mondays to Fridays that aren't off.
///
/// # Errors
/// No first day or no step; names that don't fit; a circle of waits, with its path; days past ten years.
pub fn solve(input: &Input) -> Result<Answer, Faults> {
    let mut faults = Vec::new();
    let off = off(input, &mut faults);
    if input.start.is_none() {
        faults.push(missing("start".to_owned(), &w::START, None));
    }
    if input.steps.is_empty() {
        let (path, given) = ("steps".to_owned(), String::new());
        faults.push(Fault { path, label: &w::STEPS, given, says: say!(w::NO_STEPS) });
    }
    let by = match waits(input) {
        Ok(found) => found,
        Err(mut more) => {
            faults.append(&mut more);
            return Err(faults);
        }
    };
    let Some(start) = input.start.filter(|_| faults.is_empty()) else { return Err(faults) };
    let (first, monday) = (start.number(), start.number() - start.weekday() as i64);
    let (mut worked, mut every, mut office) = (Vec::new(), Vec::new(), Vec::new());
    for day in first - BACK..first + AHEAD {
        every.push(day);
        if off.iter().any(|[from, through]| (*from..=*through).contains(&day)) {
            continue;
        }
        let is_of_week = match (day - monday).rem_euclid(7) {
            5 => input.saturdays,
            6 => input.sundays,
            _ => {
                office.push(day);
                true
            }
        };
        if is_of_week {
            worked.push(day);
        }
    }
    let (worked, every, office) = (Days(worked), Days(every), Days(office));
    let plan = Plan { steps: &input.steps, by, first, worked, every, office };
    planned(&plan, start).map_err(|fault| vec![fault])
}

fn planned(plan: &Plan<'_>, first: Day) -> Result<Answer, Fault> {
    let spans = plan.forward(None)?;
    let latest = |spans: &[[i64; 2]]| spans.iter().fold(0, |last, span| last.max(span[1]));
    let last = latest(&spans);
    let slack = plan.slack(&spans, last);
    let rank = |step: usize| (spans[step], &plan.by.names[step]);
    let mut order: Vec<usize> = Vec::new();
    for step in 0..spans.len() {
        let place = order.partition_point(|it| rank(*it) < rank(step));
        order.insert(place, step);
    }
    let mut steps = Vec::new();
    for (step, it) in plan.steps.iter().enumerate() {
        let day = |number| Day::of_number(number).ok_or_else(|| too_far(step, "days", ""));
        let call = match it.call {
            0 => None,
            notice => {
                let place = plan.office.place(spans[step][0]).checked_sub(notice as usize);
                let day = place.and_then(|place| Day::of_number(plan.office.0[place]));
                Some(day.ok_or_else(|| too_far(step, "call", &notice.to_string()))?)
            }
        };
        let late = plan.forward(Some(step))?;
        let mut moves = order.clone();
        moves.retain(|other| late[*other][0] != spans[*other][0]);
        steps.push(Planned {
            begins: day(spans[step][0])?,
            done: day(spans[step][1])?,
            call,
            slack: slack[step],
            because: plan.because(step, &spans, &slack),
            moves,
            last: day(latest(&late))?,
        });
    }
    let mut chain = Vec::new();
    let mut next = order.iter().copied().rfind(|step| spans[*step][1] == last);
    while let Some(step) = next {
        chain.insert(0, step);
        next = match steps[step].because {
            Because::After(wait, _) => Some(wait),
            _ => None,
        };
    }
    let last = Day::of_number(last).unwrap_or(first);
    let unasked = unasked(plan.steps, &plan.by);
    let early = early(plan.steps, &plan.by, &spans);
    Ok(Answer { steps, order, chain, first, last, unasked, early })
}
