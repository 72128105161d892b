//! Which step waits for which, by their names.

use super::input::Input;
use super::words as w;
use crate::fields::{BETWEEN_NAMES, each_name, known_as, missing};
use crate::say;
use crate::sheet::{Fault, Faults};
use crate::words::{Phrase, Text};

/// A fault at a step's row.
pub(super) fn at(step: usize, key: &str, label: &'static Phrase, given: &str, says: Text) -> Fault {
    let path = ["steps.", &step.to_string(), ".", key].concat();
    Fault { path, label, given: given.to_owned(), says }
}

/// Steps by place in the list.
pub(super) struct Waits {
    /// As they are known.
    pub(super) names: Vec<String>,
    /// What each waits for.
    pub(super) waits: Vec<Vec<usize>>,
    /// None comes before what it waits for.
    pub(super) order: Vec<usize>,
}

/// What people write between two names, as it is known.
const AND: [&str; 2] = ["AND", "Y"];

/// Finds what each step waits for.
///
/// # Errors
/// A name that is missing, has a comma, or is another step's; one that no step has; a circle.
pub(super) fn waits(input: &Input) -> Result<Waits, Faults> {
    let mut faults = Vec::new();
    let mut names: Vec<String> = Vec::new();
    for (step, it) in input.steps.iter().enumerate() {
        let name = known_as(&it.name);
        let words = each_name(&it.name, &[]);
        let mut wrong = |says| faults.push(at(step, "name", &w::STEP, &it.name, says));
        if words.is_empty() {
            let path = ["steps.", &step.to_string(), ".name"].concat();
            faults.push(missing(path, &w::STEP, Some("STRIP")));
        } else if it.name.contains(BETWEEN_NAMES) {
            wrong(say!(w::NO_COMMA, words.join(" ")));
        } else if names.contains(&name) {
            wrong(say!(w::TWICE, it.name.as_str()));
        }
        names.push(name);
    }
    let mut all: Vec<Vec<usize>> = Vec::new();
    for (step, it) in input.steps.iter().enumerate() {
        let mut of = Vec::new();
        let place = |name: &str| names.iter().position(|it| *it == known_as(name));
        let mut unknown = |name: &str| {
            faults.push(at(step, "after", &w::AFTER, name, say!(w::NO_SUCH, name)));
        };
        for part in it.after.split(BETWEEN_NAMES) {
            let (mut found, mut strange) = (Vec::new(), Vec::new());
            for typed in each_name(part, &names) {
                // "WIRES & DUCTS" and "WIRES&DUCTS", unless a step is called so.
                let sign = if place(typed).is_some() { None } else { Some('&') };
                for name in typed.split(|it| Some(it) == sign).filter(|it| !it.is_empty()) {
                    match place(name) {
                        Some(place) => found.push(place),
                        None if AND.contains(&&*known_as(name)) => {}
                        None => strange.push(name),
                    }
                }
            }
            // Words of which none is a step are one name that no step has.
            if found.is_empty() && strange.len() > 1 {
                strange = vec![part.trim()];
            }
            strange.into_iter().for_each(&mut unknown);
            of.append(&mut found);
        }
        all.push(of);
    }
    if !faults.is_empty() {
        return Err(faults);
    }
    let order = order(&all);
    match (0..all.len()).find(|step| !order.contains(step)) {
        Some(stuck) => Err(vec![circle(input, &all, &order, stuck)]),
        None => Ok(Waits { names, waits: all, order }),
    }
}

/// Those whose turn comes, each behind what it waits for.
fn order(all: &[Vec<usize>]) -> Vec<usize> {
    let mut order: Vec<usize> = Vec::new();
    loop {
        let is_next = |step: &usize| {
            !order.contains(step) && all[*step].iter().all(|wait| order.contains(wait))
        };
        match (0..all.len()).find(is_next) {
            Some(step) => order.push(step),
            None => return order,
        }
    }
}

/// From a step that never has its turn back along what is never done, until one comes again.
fn circle(input: &Input, all: &[Vec<usize>], done: &[usize], stuck: usize) -> Fault {
    let mut way = vec![stuck];
    loop {
        let here = way[way.len() - 1];
        let next = all[here].iter().find(|wait| !done.contains(wait)).copied().unwrap_or(here);
        let before = way.iter().position(|step| *step == next);
        way.push(next);
        if let Some(from) = before {
            let names: Vec<&str> =
                way[from..].iter().map(|it| input.steps[*it].name.trim()).collect();
            let after = &input.steps[next].after;
            return at(next, "after", &w::AFTER, after, say!(w::CIRCLE, names.join(" → ")));
        }
    }
}
