//! A person's own pace: what finished work took, beside what was reckoned for it.
//!
//! On a number that is done a person notes the hours, the compound or the bags that it took. It is
//! kept in the job's own words ([`super::Jot`]) with what was reckoned then, so that it stays true
//! when the number is changed later. From two jobs on it is told beside what is reckoned, and never
//! in its place.

use super::edit::Edit;
use super::site::Job;
use super::stamp::Moment;
use crate::sheet::Figure;
use crate::words::Amount;

/// So many jobs make a pace: one may have been an easy one.
const FEWEST: usize = 2;

/// What one piece of work took.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Took {
    /// What was reckoned.
    pub reckoned: Amount,
    /// What it took.
    pub took: Amount,
    /// When that was noted.
    pub at: Moment,
}

/// What a figure comes to at a person's own pace.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pace {
    /// Of how many jobs.
    pub jobs: usize,
    /// As all of them together went.
    pub likely: Amount,
    /// As the best of them went.
    pub least: Amount,
    /// As the worst of them went.
    pub most: Amount,
}

/// The name under which a job keeps what a mark took.
fn took_of(figure: &str, mark: &str) -> String {
    ["took ", figure, " ", mark].concat()
}

/// The edit that notes what a mark took; none clears it.
pub fn note(mark: &str, figure: &Figure, took: Option<Amount>) -> Edit {
    let says = took.map(|took| [&figure.amount.exact(), "|", &*took.exact()].concat());
    Edit::Jot { key: took_of(figure.key, mark), says: says.unwrap_or_default() }
}

/// What was noted of a mark's figure.
pub fn noted(job: &Job, mark: &str, figure: &str) -> Option<Took> {
    let jot = job.written(&took_of(figure, mark))?;
    let (reckoned, took) = jot.says.split_once('|')?;
    let (reckoned, took) = (Amount::from_exact(reckoned)?, Amount::from_exact(took)?);
    let fits = reckoned.is_like(took) && reckoned.raw() > 0 && took.raw() > 0;
    fits.then_some(Took { reckoned, took, at: jot.at })
}

/// All that a job's marks of one calculator took, and what was reckoned for that.
fn sums(job: &Job, calculator: &str, figure: &Figure) -> Option<(i128, i128)> {
    let marks = job.marks.iter().filter(|mark| mark.calculator == calculator);
    let noted = marks.filter_map(|mark| noted(job, &mark.id, figure.key));
    let like = noted.filter(|it| it.took.is_like(figure.amount));
    let add = |(took, reckoned): (i128, i128), it: Took| {
        (took.saturating_add(it.took.raw()), reckoned.saturating_add(it.reckoned.raw()))
    };
    Some(like.fold((0, 0), add)).filter(|(_, reckoned)| *reckoned > 0)
}

/// What a calculator's figure comes to by what was noted in these jobs; none from fewer than two.
pub fn pace<'a>(
    jobs: impl IntoIterator<Item = &'a Job>,
    calculator: &str,
    figure: &Figure,
) -> Option<Pace> {
    let own = jobs.into_iter().filter(|job| !job.invented);
    let all: Vec<(i128, i128)> = own.filter_map(|job| sums(job, calculator, figure)).collect();
    if all.len() < FEWEST {
        return None;
    }
    let at = |(took, reckoned): (i128, i128)| {
        // Half up; what is counted is needed whole.
        let more = match figure.amount {
            Amount::Count(_) => reckoned - 1,
            _ => reckoned / 2,
        };
        figure.amount.raw().checked_mul(took).map(|it| (it + more) / reckoned)
    };
    let together = all.iter().fold((0, 0), |sum: (i128, i128), it| {
        (sum.0.saturating_add(it.0), sum.1.saturating_add(it.1))
    });
    let each: Vec<i128> = all.iter().filter_map(|it| at(*it)).collect();
    let of = |raw: i128| figure.amount.of_same(raw);
    Some(Pace {
        jobs: all.len(),
        likely: of(at(together)?),
        least: of(*each.iter().min()?),
        most: of(*each.iter().max()?),
    })
}

#[cfg(test)]
mod tests {
    use super::super::apply;
    use super::super::samples::{job, stamp};
    use super::*;
    use crate::measure::Measure;
    use crate::measure::unit::HOUR;
    use crate::sheet::Figure;
    use proptest::prelude::*;

    fn hours(tenths: i64) -> Amount {
        Measure::new(&HOUR, tenths * 100_000).into()
    }

    fn reckoned(tenths: i64) -> Figure {
        Figure::plain("hours", &crate::sheet::VALUE, hours(tenths))
    }

    /// A job whose first mark took so much of what was reckoned.
    fn took(of: i64, took: i64) -> Job {
        let mut job = job();
        let mark = job.marks[0].id.clone();
        apply(&mut job, note(&mark, &reckoned(of), Some(hours(took))), &stamp(9)).unwrap();
        job
    }

    fn paced(jobs: &[Job], tenths: i64) -> Option<Pace> {
        pace(jobs, &jobs[0].marks[0].calculator, &reckoned(tenths))
    }

    /// By hand: 8 h took 10 and 4 h took 4; together 12 took 14, so 6 h are 7, between 6 and 7.5.
    #[test]
    fn two_jobs_make_a_pace() {
        let jobs = [took(80, 100), took(40, 40)];
        assert_eq!(paced(&jobs[..1], 60), None);
        let pace = paced(&jobs, 60).unwrap();
        assert_eq!((pace.jobs, pace.likely), (2, hours(70)));
        assert_eq!((pace.least, pace.most), (hours(60), hours(75)));
    }

    #[test]
    fn what_is_cleared_of_another_kind_or_invented_counts_for_nothing() {
        let mut cleared = took(80, 100);
        let mark = cleared.marks[0].id.clone();
        apply(&mut cleared, note(&mark, &reckoned(80), None), &stamp(10)).unwrap();
        assert_eq!(noted(&cleared, &mark, "hours"), None);
        let mut bags = took(80, 100);
        let edit = Edit::Jot { key: took_of("hours", &mark), says: "3|4".into() };
        apply(&mut bags, edit, &stamp(10)).unwrap();
        let invented = Job { invented: true, ..took(80, 100) };
        for other in [cleared, bags, invented] {
            assert_eq!(paced(&[took(80, 100), other], 60), None);
        }
    }

    /// Counted things are bought whole: 5 bags at 6 for 5 are 6, 3 are 4.
    #[test]
    fn what_is_counted_is_rounded_up() {
        let bags = |of| Figure::plain("bags", &crate::sheet::VALUE, Amount::Count(of));
        let one = || {
            let mut job = job();
            let mark = job.marks[0].id.clone();
            let edit = note(&mark, &bags(5), Some(Amount::Count(6)));
            apply(&mut job, edit, &stamp(9)).unwrap();
            job
        };
        let jobs = [one(), one()];
        let at = |of| pace(&jobs, &jobs[0].marks[0].calculator, &bags(of)).unwrap().likely;
        assert_eq!((at(5), at(3)), (Amount::Count(6), Amount::Count(4)));
    }

    proptest! {
        /// Whatever was noted: the likely lies between the ends, more took more, and the order of
        /// jobs says nothing.
        #[test]
        fn a_pace_lies_between_its_ends(
            of in prop::collection::vec((1_i64..10_000, 1_i64..10_000), 2..6), tenths in 0_i64..100_000,
        ) {
            let mut jobs: Vec<Job> = of.iter().map(|(of, it)| took(*of, *it)).collect();
            let pace = paced(&jobs, tenths).unwrap();
            prop_assert!(pace.least.raw() <= pace.likely.raw() && pace.likely.raw() <= pace.most.raw());
            jobs.reverse();
            prop_assert_eq!(paced(&jobs, tenths), Some(pace));
            jobs[0] = took(of[of.len() - 1].0, of[of.len() - 1].1 + 1);
            prop_assert!(paced(&jobs, tenths).unwrap().likely.raw() >= pace.likely.raw());
        }

        #[test]
        fn any_words_are_read_or_passed_over(says in "\\PC{0,40}") {
            let mut job = took(80, 100);
            let mark = job.marks[0].id.clone();
            let _ = apply(&mut job, Edit::Jot { key: took_of("hours", &mark), says }, &stamp(10));
            let _ = paced(&[job, took(1, 1)], 60);
        }
    }
}
