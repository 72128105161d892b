//! All marks of a job worked once, and how each stands with what it draws on.
//!
//! A mark is fresh when every figure that it took still says the same and each mark it took from
//! is fresh itself. Anything else is named: moved, behind one that moved, lost, or in a circle.

use super::mark::{Kept, Mark, Stale};
use super::site::Job;
use super::stamp::Moment;
use super::tie::Tie;
use super::works::{Outcome, Works};
use crate::calculators::hold::Opened;
use crate::catalog::{self, Worked};
use crate::measure::Units;
use crate::sheet::{Faults, Figure};
use crate::wire::Node;
use crate::words::Amount;
use std::sync::Arc;

/// How a link stands today.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TieState {
    /// The figure says what was taken.
    Fresh,
    /// The figure says something else now.
    Moved(Amount),
    /// The figure says the same, but the mark that it belongs to is not fresh itself.
    Behind,
    /// The mark or its figure is gone, or can't be worked.
    Lost,
}

/// What opens the hold that a mark stands behind, worked from what is on record in the job now.
pub fn opened(job: &Job, mark: &Mark) -> Option<Opened> {
    opened_by(job, mark.behind.as_deref()?)
}

/// What a hold of the job opens, worked from what is on record now.
pub fn opened_by(job: &Job, hold: &str) -> Option<Opened> {
    let hold = job.mark(hold)?;
    let entry = catalog::find(&hold.calculator).filter(|entry| entry.version == hold.version)?;
    let opened = entry.opened(&hold.input, Units::Customary, job.basis)?;
    // What was found out after the day that it was put on record can't have been found out.
    hold.at.day().is_some_and(|day| opened.latest() <= day).then_some(opened)
}

/// Why a value could not be taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotTaken {
    /// There is no such link, or nothing to take at its other end.
    Nothing,
    /// The mark refuses the value.
    Refused(Faults),
    /// The mark can't be worked by this version.
    Stale(Stale),
}

/// A figure that an input could take its value from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Offer<'a> {
    /// The mark that it belongs to.
    pub mark: &'a Mark,
    /// The figure.
    pub figure: Figure,
}

/// A job with every mark worked once, under the job's editions.
#[derive(Debug)]
pub struct Survey<'a> {
    job: &'a Job,
    worked: Vec<Outcome>,
    fresh: Vec<bool>,
}

impl<'a> Survey<'a> {
    /// Works all marks of a job.
    pub fn of(job: &'a Job) -> Self {
        Works::default().survey(job)
    }

    /// `worked` has one for each mark, in their order.
    pub(super) fn with(job: &'a Job, worked: Vec<Outcome>) -> Self {
        let mut survey = Self { job, worked, fresh: Vec::new() };
        survey.fresh = survey.fresh_ones();
        survey
    }

    fn place(&self, id: &str) -> Option<usize> {
        self.job.place_of(id).ok()
    }

    /// A mark worked today.
    pub fn worked(&self, id: &str) -> Option<&Result<Worked, Stale>> {
        self.place(id).and_then(|at| self.worked.get(at)).map(|says| &**says)
    }

    /// The same, to be held for longer.
    pub fn outcome(&self, id: &str) -> Option<Arc<Result<Worked, Stale>>> {
        self.place(id).and_then(|at| self.worked.get(at)).cloned()
    }

    /// What a mark's figure says today.
    pub fn figure(&self, id: &str, key: &str) -> Option<&Figure> {
        let sheet = &self.worked(id)?.as_ref().ok()?.sheet;
        let headline = std::iter::once(&sheet.headline);
        headline.chain(&sheet.figures).find(|figure| figure.key == key)
    }

    /// Whether every figure that a mark took says the same today, all the way back.
    pub fn is_fresh(&self, id: &str) -> bool {
        self.place(id).and_then(|at| self.fresh.get(at)).copied().unwrap_or(false)
    }

    /// How one link stands.
    pub fn standing(&self, tie: &Tie) -> TieState {
        match self.figure(&tie.mark, &tie.key) {
            None => TieState::Lost,
            Some(figure) if figure.amount.exact() != tie.seen => TieState::Moved(figure.amount),
            Some(_) if self.is_fresh(&tie.mark) => TieState::Fresh,
            Some(_) => TieState::Behind,
        }
    }

    /// The marks that take a value from this one, or stand behind it as their hold.
    pub fn users(&self, id: &str) -> impl Iterator<Item = &'a Mark> {
        self.job.marks.iter().filter(move |mark| mark.draws_on().any(|source| source == id))
    }

    /// The figures of other marks that `mark`'s input could take: of the same kind as `like`, and
    /// not from a mark that draws on `mark` itself. `mark` is empty for one that is not kept yet.
    pub fn offers(&self, mark: &str, like: Amount) -> Vec<Offer<'a>> {
        let mut all = self.all_offers(mark);
        all.retain(|offer| offer.figure.amount.is_like(like));
        all
    }

    /// The figures of other marks of any kind that `mark`'s input could take.
    pub fn all_offers(&self, mark: &str) -> Vec<Offer<'a>> {
        let mut all = Vec::new();
        for (at, source) in self.job.marks.iter().enumerate() {
            let Some(Ok(worked)) = self.worked.get(at).map(|says| &**says) else { continue };
            if source.id == mark || self.leads_to(source, mark) {
                continue;
            }
            let sheet = &worked.sheet;
            for figure in std::iter::once(&sheet.headline).chain(&sheet.figures) {
                all.push(Offer { mark: source, figure: figure.clone() });
            }
        }
        all
    }

    /// Whether a mark draws on another, directly or through others.
    fn leads_to(&self, from: &Mark, to: &str) -> bool {
        let mut seen: Vec<&str> = Vec::new();
        let mut next: Vec<&Mark> = vec![from];
        while let Some(mark) = next.pop() {
            for id in mark.draws_on() {
                if id == to {
                    return true;
                }
                if let Some(mark) = self.job.mark(id)
                    && !seen.contains(&&*mark.id)
                {
                    seen.push(&mark.id);
                    next.push(mark);
                }
            }
        }
        false
    }

    /// A mark with the value of one link taken anew: input, answer and link move together.
    ///
    /// # Errors
    /// Why it stays as it is.
    pub fn take(&self, mark: &Mark, path: &str, at: Moment) -> Result<Mark, NotTaken> {
        self.take_all(mark, &[path], at)
    }

    /// The same of several links at once: what fits together need not fit one by one.
    ///
    /// # Errors
    /// Why it stays as it is; then all of it does.
    pub fn take_all(&self, mark: &Mark, paths: &[&str], at: Moment) -> Result<Mark, NotTaken> {
        let entry = catalog::find(&mark.calculator)
            .filter(|entry| entry.version == mark.version)
            .ok_or(NotTaken::Stale(Stale::NoCalculator))?;
        let mut taken = Mark { at, ..mark.clone() };
        for path in paths {
            let tie = taken.ties.iter_mut().find(|tie| tie.path == *path);
            let tie = tie.ok_or(NotTaken::Nothing)?;
            let figure = self.figure(&tie.mark, &tie.key).ok_or(NotTaken::Nothing)?;
            tie.seen = figure.amount.exact();
            taken.input.put(path, Node::text(&tie.seen));
        }
        taken.input = entry.canonical(&taken.input, Units::Customary).map_err(NotTaken::Refused)?;
        let hold = opened(self.job, &taken);
        let worked = taken.work_behind(self.job.basis, hold.as_ref()).map_err(NotTaken::Stale)?;
        taken.kept = Kept::of(&worked);
        Ok(taken)
    }

    /// Which marks are fresh, each looked at once. What stands in a circle never is.
    fn fresh_ones(&self) -> Vec<bool> {
        let mut known: Vec<Option<bool>> = vec![None; self.job.marks.len()];
        for at in 0..known.len() {
            self.look(at, &mut known, &mut Vec::new());
        }
        known.into_iter().map(|fresh| fresh == Some(true)).collect()
    }

    fn look(&self, at: usize, known: &mut Vec<Option<bool>>, above: &mut Vec<usize>) -> bool {
        if let Some(fresh) = known[at] {
            return fresh;
        }
        if above.contains(&at) {
            return false;
        }
        above.push(at);
        let mut fresh = true;
        for tie in &self.job.marks[at].ties {
            let same = self
                .figure(&tie.mark, &tie.key)
                .is_some_and(|figure| figure.amount.exact() == tie.seen);
            // Every source is looked at, so that the answer doesn't depend on the order.
            let source = self.place(&tie.mark).is_some_and(|at| self.look(at, known, above));
            fresh &= same && source;
        }
        above.pop();
        // Inside a circle an answer may rest on one that wasn't known yet; it is false, and so is
        // that of all in the circle.
        known[at] = Some(fresh);
        fresh
    }
}
