//! What the marks of a job say today, worked once and kept for as long as they ask the same: a
//! job is looked at by many pages, and most of its marks stay as they are from one look to the
//! next.

use super::mark::{Mark, Stale};
use super::site::Job;
use super::survey::{Survey, opened};
use crate::catalog::Worked;
use crate::edition::Basis;
use crate::measure::Day;
use crate::wire::Node;
use std::sync::Arc;

/// What came of working a mark.
pub(super) type Outcome = Arc<Result<Worked, Stale>>;

/// All that a mark's answer follows from, but for the hold that it stands behind.
#[derive(Debug)]
struct Asked {
    calculator: String,
    version: u16,
    input: Node,
    day: Option<Day>,
}

impl Asked {
    fn of(mark: &Mark) -> Self {
        Self {
            calculator: mark.calculator.clone(),
            version: mark.version,
            input: mark.input.clone(),
            day: mark.at.day(),
        }
    }

    fn is_of(&self, mark: &Mark) -> bool {
        self.version == mark.version
            && self.calculator == mark.calculator
            && self.day == mark.at.day()
            && self.input == mark.input
    }
}

#[derive(Debug)]
struct Known {
    id: String,
    asked: Asked,
    basis: Basis,
    /// Of the hold that the mark stands behind, where there is one.
    hold: Option<Asked>,
    says: Outcome,
}

fn hold_of<'a>(job: &'a Job, mark: &Mark) -> Option<&'a Mark> {
    job.mark(mark.behind.as_deref()?)
}

impl Known {
    fn still_holds(&self, job: &Job, mark: &Mark) -> bool {
        let hold = match (&self.hold, hold_of(job, mark)) {
            (None, None) => true,
            (Some(known), Some(hold)) => known.is_of(hold),
            _ => false,
        };
        hold && self.basis == job.basis && self.asked.is_of(mark)
    }
}

/// The answers of one job's marks, as far as they are known.
#[derive(Debug, Default)]
pub struct Works {
    /// By the marks' ids.
    known: Vec<Known>,
}

impl Works {
    fn place(&self, id: &str) -> Result<usize, usize> {
        self.known.binary_search_by(|known| known.id.as_str().cmp(id))
    }

    /// What is known of a mark as it is now.
    fn of(&self, job: &Job, mark: &Mark) -> Option<&Outcome> {
        let known = self.place(&mark.id).ok().and_then(|at| self.known.get(at))?;
        known.still_holds(job, mark).then_some(&known.says)
    }

    /// How many marks are still to be worked.
    pub fn left(&self, job: &Job) -> usize {
        job.marks.iter().filter(|mark| self.of(job, mark).is_none()).count()
    }

    /// Works marks that aren't known as they are now, for as long as `goes_on` says so before
    /// each. Gives whether all are known then.
    pub fn work_while(&mut self, job: &Job, goes_on: &mut dyn FnMut() -> bool) -> bool {
        for mark in &job.marks {
            if self.of(job, mark).is_none() {
                if !goes_on() {
                    return false;
                }
                self.work(job, mark);
            }
        }
        true
    }

    #[inline(never)]
    fn work(&mut self, job: &Job, mark: &Mark) {
        let says = Arc::new(mark.work_behind(job.basis, opened(job, mark).as_ref()));
        let known = Known {
            id: mark.id.clone(),
            asked: Asked::of(mark),
            basis: job.basis,
            hold: hold_of(job, mark).map(Asked::of),
            says,
        };
        match self.place(&mark.id) {
            Ok(at) => self.known[at] = known,
            Err(at) => self.known.insert(at, known),
        }
    }

    /// All marks of the job, with what is still to be worked worked now. What is known of other
    /// marks is dropped.
    pub fn survey<'a>(&mut self, job: &'a Job) -> Survey<'a> {
        self.known.retain(|known| job.mark(&known.id).is_some());
        self.work_while(job, &mut || true);
        let says = |mark| self.of(job, mark).map(Arc::clone);
        Survey::with(job, job.marks.iter().filter_map(says).collect())
    }
}

#[cfg(test)]
mod tests {
    use super::super::edit::{Edit, apply};
    use super::super::samples::stamp;
    use super::*;
    use crate::catalog;
    use crate::edition::Electrical;
    use crate::measure::Units;
    use proptest::prelude::*;

    fn mark(at: u64) -> Mark {
        let entry = &catalog::ALL[usize::try_from(at).unwrap() % catalog::ALL.len()];
        let stamp = stamp(at);
        Mark::new(entry, &entry.sample(), Units::Customary, Basis::default(), None, &stamp).unwrap()
    }

    /// Everything that an edit can do to what a mark says.
    fn edits() -> impl Strategy<Value = (u8, u64)> {
        (0_u8..7, 0_u64..12)
    }

    fn edit(job: &Job, (what, at): (u8, u64)) -> Option<Edit> {
        let nth = |at: u64| job.marks.get(usize::try_from(at).unwrap() % job.marks.len().max(1));
        // The second of the catalog is the hold.
        let is_hold = |mark: &&Mark| mark.calculator == catalog::ALL[1].id;
        Some(match what {
            0 => Edit::Keep(mark(at)),
            1 => Edit::Remove(nth(at)?.id.clone()),
            2 => Edit::Basis(Basis { electrical: Electrical::ALL.get(at as usize % 4).copied() }),
            3 => Edit::Change(Mark { title: format!("Number {at}"), ..nth(at)?.clone() }),
            4 => Edit::Change(Mark { version: 9, ..nth(at)?.clone() }),
            5 => Edit::Keep(Mark { id: stamp(50 + at).id(), ..mark(1) }),
            _ => Edit::Change(Mark {
                behind: job.marks.iter().find(is_hold).map(|hold| hold.id.clone()),
                ..nth(at)?.clone()
            }),
        })
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(48))]
        /// What is kept from look to look says what a look from the start says.
        #[test]
        fn a_kept_answer_is_the_answer(edits in prop::collection::vec(edits(), 1..16)) {
            let mut job = Job::new("Quoin House", "", &stamp(900)).unwrap();
            let mut works = Works::default();
            for (step, what) in edits.into_iter().enumerate() {
                let stamp = stamp(1_000 + step as u64);
                if let Some(edit) = edit(&job, what) {
                    let _ = apply(&mut job, edit, &stamp);
                }
                let (kept, anew) = (works.survey(&job), Survey::of(&job));
                for mark in &job.marks {
                    prop_assert_eq!(kept.worked(&mark.id), anew.worked(&mark.id));
                    prop_assert_eq!(kept.is_fresh(&mark.id), anew.is_fresh(&mark.id));
                }
                prop_assert_eq!(works.left(&job), 0);
            }
        }
    }

    #[test]
    fn only_what_asks_anew_is_worked_anew() {
        let mut job = Job::new("Quoin House", "", &stamp(900)).unwrap();
        for at in 0..5 {
            apply(&mut job, Edit::Keep(mark(at)), &stamp(at)).unwrap();
        }
        let mut works = Works::default();
        assert_eq!(works.left(&job), 5);
        let mut times = 0;
        let two = &mut || {
            times += 1;
            times <= 2
        };
        assert!(!works.work_while(&job, two));
        assert_eq!(works.left(&job), 3);
        drop(works.survey(&job));
        let named = Mark { title: "By the stair".to_owned(), ..job.marks[2].clone() };
        apply(&mut job, Edit::Change(named), &stamp(20)).unwrap();
        assert_eq!(works.left(&job), 0, "a name asks nothing");
        let (id, input) = (job.marks[2].id.clone(), job.marks[3].input.clone());
        let other = Mark { input, ..job.marks[2].clone() };
        apply(&mut job, Edit::Change(other), &stamp(21)).unwrap();
        assert_eq!(works.left(&job), 1);
        drop(works.survey(&job));
        apply(&mut job, Edit::Remove(id), &stamp(22)).unwrap();
        drop(works.survey(&job));
        assert_eq!((works.left(&job), works.known.len()), (0, 4));
        apply(&mut job, Edit::Basis(Basis { electrical: Some(Electrical::ALL[0]) }), &stamp(23))
            .unwrap();
        assert_eq!(works.left(&job), 4);
    }
}
