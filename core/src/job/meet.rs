//! Two copies of a job that went apart: two tabs of one phone, each of which changed it before it
//! heard of the other.
//!
//! Clocks can't tell these apart, because both count under one phone's name. What can is the job
//! as both knew it. Each part that only one of them changed is as that one has it; where both
//! changed the same part of a mark, both marks are kept.

use super::clock::Clock;
use super::jot::Jot;
use super::mark::Mark;
use super::refusal::{LONGEST_NAME, LONGEST_PLACE, LONGEST_TITLE};
use super::site::{Gone, Job};
use super::stamp::Stamp;

/// One of three: what only one side has changed is as that side has it. None where both changed
/// it, and not alike.
fn one_of<T: PartialEq + Clone>(base: Option<&T>, ours: &T, theirs: &T) -> Option<T> {
    if ours == theirs || base == Some(theirs) {
        Some(ours.clone())
    } else if base == Some(ours) {
        Some(theirs.clone())
    } else {
        None
    }
}

/// What was worked out, as against what a person wrote about it.
fn worked(mark: &Mark) -> impl PartialEq + '_ {
    let Mark { calculator, version, basis, input, ties, behind, kept, .. } = mark;
    (calculator, version, basis, input, ties, behind, kept)
}

/// Whether two marks say the same; how often they were changed, and when worked, is not asked.
fn same(one: &Mark, other: &Mark) -> bool {
    let written = (&one.title, &one.spot, &one.note) == (&other.title, &other.spot, &other.note);
    written && worked(one) == worked(other)
}

/// One mark of two, where no part of it was changed by both.
///
/// `base` is the mark as both knew it. The title, the spot, the note and the answer with all that
/// goes with it count as a part each. None where both changed one part: then both are to be kept.
pub fn meet_marks(base: Option<&Mark>, ours: &Mark, theirs: &Mark) -> Option<Mark> {
    let text = |of: fn(&Mark) -> &String| one_of(base.map(of), of(ours), of(theirs));
    let (title, spot, note) = (text(|it| &it.title)?, text(|it| &it.spot)?, text(|it| &it.note)?);
    let answer = if worked(ours) == worked(theirs)
        || base.is_some_and(|base| worked(base) == worked(theirs))
    {
        ours
    } else if base.is_some_and(|base| worked(base) == worked(ours)) {
        theirs
    } else {
        return None;
    };
    let mut clock = ours.clock.clone();
    clock.join(&theirs.clock);
    Some(Mark { id: ours.id.clone(), title, spot, note, clock, ..answer.clone() })
}

/// One job of two copies.
///
/// - Every mark of either is in it, unless one side removed it and the other left it as it was.
/// - Where both changed the same part of a mark, ours keeps its id, and theirs stands beside it
///   with a new id and the title that `titled` makes of its own.
/// - A name or place that both changed holds both, as far as they fit; else ours.
///
/// `base` is the job as both knew it; without one, whatever differs counts as changed by both.
pub fn meet(
    base: Option<&Job>,
    ours: &Job,
    theirs: &Job,
    stamp: &Stamp,
    titled: &dyn Fn(&str) -> String,
) -> Job {
    let text = |of: fn(&Job) -> &String, most: usize| {
        let (our, their) = (of(ours), of(theirs));
        one_of(base.map(of), our, their).unwrap_or_else(|| {
            let both = [their.as_str(), our].join(" / ");
            if both.chars().count() <= most { both } else { our.clone() }
        })
    };
    let mut job = Job {
        name: text(|job| &job.name, LONGEST_NAME),
        place: text(|job| &job.place, LONGEST_PLACE),
        basis: one_of(base.map(|it| &it.basis), &ours.basis, &theirs.basis).unwrap_or(ours.basis),
        units: one_of(base.map(|it| &it.units), &ours.units, &theirs.units).unwrap_or(ours.units),
        marks: Vec::with_capacity(ours.marks.len()),
        gone: Vec::new(),
        ..ours.clone()
    };
    job.clock.join(&theirs.clock);
    let mut beside = Vec::new();
    let ids = ours.marks.iter().chain(theirs.marks.iter().filter(|it| ours.mark(&it.id).is_none()));
    for id in ids.map(|mark| mark.id.as_str()) {
        let known = base.and_then(|base| base.mark(id));
        let mark = match (ours.mark(id), theirs.mark(id)) {
            (Some(our), Some(their)) => meet_marks(known, our, their).or_else(|| {
                beside.push(their.clone());
                let mut clock = our.clock.clone();
                clock.join(&their.clock);
                Some(Mark { clock, ..our.clone() })
            }),
            (Some(mark), None) | (None, Some(mark)) => {
                // Removed by the other side, and left alone by this one.
                let removed = known.is_some_and(|known| same(known, mark));
                (!removed).then(|| mark.clone())
            }
            (None, None) => None,
        };
        if let Some(mark) = mark {
            put(&mut job, mark);
        }
    }
    for theirs in &theirs.jots {
        let ours = ours.jot(&theirs.key);
        let known = base.and_then(|base| base.jot(&theirs.key)).map(|jot| &jot.says);
        // Both count under one name, so that what was written later is what holds.
        let stays = match ours {
            Some(ours) if ours.says == theirs.says || known == Some(&theirs.says) => ours.clone(),
            Some(ours) if known != Some(&ours.says) && ours.at.at > theirs.at.at => ours.clone(),
            _ => theirs.clone(),
        };
        let mut clock = theirs.clock.clone();
        ours.into_iter().for_each(|ours| clock.join(&ours.clock));
        job.put_jot(Jot { clock, ..stays });
    }
    for trace in ours.gone.iter().chain(&theirs.gone) {
        settle_trace(&mut job, trace, stamp);
    }
    for (their, nth) in beside.into_iter().zip(1_u64..) {
        let mut at = Stamp { random: stamp.random.wrapping_add(nth), ..stamp.clone() };
        // An id that is taken, or was, is another mark's.
        while job.place_of(&at.id()).is_ok() || job.trace_of(&at.id()).is_ok() {
            at.random = at.random.wrapping_add(1);
        }
        let mut clock = Clock::default();
        clock.bump(&stamp.device);
        let longer = titled(&their.title);
        let fits = longer.chars().count() <= LONGEST_TITLE;
        let title = if fits { longer } else { their.title.clone() };
        put(&mut job, Mark { id: at.id(), title, clock, ..their });
    }
    job
}

fn put(job: &mut Job, mark: Mark) {
    if let Err(at) = job.place_of(&mark.id) {
        job.marks.insert(at, mark);
    }
}

/// A trace stays where its mark is gone; a mark that is there has seen its removal.
fn settle_trace(job: &mut Job, trace: &Gone, stamp: &Stamp) {
    match (job.place_of(&trace.id), job.trace_of(&trace.id)) {
        (Ok(at), _) => {
            let clock = &mut job.marks[at].clock;
            clock.join(&trace.clock);
            clock.bump(&stamp.device);
        }
        (_, Ok(at)) => job.gone[at].clock.join(&trace.clock),
        (_, Err(at)) => job.gone.insert(at, trace.clone()),
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples::{self, mark, stamp};
    use super::super::{Edit, apply};
    use super::*;
    use proptest::collection::vec;
    use proptest::prelude::*;

    fn titled(title: &str) -> String {
        title.to_owned() + ", theirs"
    }

    fn base() -> Job {
        let mut job = samples::job();
        for step in [5, 6, 7] {
            apply(&mut job, Edit::Keep(mark(step)), &stamp(step)).unwrap();
        }
        job
    }

    fn changed(job: &Job, change: impl FnOnce(&mut Mark)) -> Job {
        let mut job = job.clone();
        let mut mark = job.mark(&mark(5).id).cloned().unwrap();
        change(&mut mark);
        apply(&mut job, Edit::Change(mark), &stamp(8)).unwrap();
        job
    }

    fn met(base: &Job, ours: &Job, theirs: &Job) -> Job {
        let job = meet(Some(base), ours, theirs, &stamp(90), &titled);
        assert!(job.in_order());
        job
    }

    #[test]
    fn two_parts_of_one_mark_are_both_taken() {
        let base = base();
        let ours = changed(&base, |mark| mark.title = "ours".into());
        let theirs = changed(&base, |mark| mark.note = "theirs".into());
        let both = met(&base, &ours, &theirs);
        let mark = both.mark(&mark(5).id).unwrap();
        assert_eq!((&*mark.title, &*mark.note), ("ours", "theirs"));
        assert_eq!(both.marks.len(), base.marks.len());
    }

    #[test]
    fn one_part_that_both_changed_stands_twice() {
        let base = base();
        let ours = changed(&base, |mark| mark.title = "ours".into());
        let theirs = changed(&base, |mark| mark.title = "other".into());
        let both = met(&base, &ours, &theirs);
        assert_eq!(both.mark(&mark(5).id).unwrap().title, "ours");
        let titles: Vec<&str> = both.marks.iter().map(|mark| &*mark.title).collect();
        assert!(titles.contains(&"other, theirs"), "{titles:?}");
        assert_eq!(both.marks.len(), base.marks.len() + 1);
    }

    #[test]
    fn a_removed_mark_stays_only_where_the_other_changed_it() {
        let base = base();
        let id = mark(5).id;
        let mut without = base.clone();
        apply(&mut without, Edit::Remove(id.clone()), &stamp(8)).unwrap();
        let ours = changed(&base, |mark| mark.title = "ours".into());
        for (ours, theirs, stays) in [
            (&ours, &without, true),
            (&without, &ours, true),
            (&base, &without, false),
            (&without, &base, false),
        ] {
            let both = met(&base, ours, theirs);
            assert_eq!(both.mark(&id).is_some(), stays);
            assert_eq!(both.trace_of(&id).is_ok(), !stays);
        }
    }

    #[test]
    fn a_name_that_both_changed_holds_both() {
        let base = base();
        let named = |name: &str| Job { name: name.into(), ..base.clone() };
        assert_eq!(met(&base, &named("a"), &named("b")).name, "b / a");
        assert_eq!(met(&base, &named("a"), &base).name, "a");
        assert_eq!(met(&base, &base, &named("b")).name, "b");
        let long = "x".repeat(LONGEST_NAME);
        assert_eq!(met(&base, &named(&long), &named("b")).name, long);
    }

    /// A step: which mark, and what is done to it.
    fn steps() -> impl Strategy<Value = Vec<(u64, u8, String)>> {
        vec((5_u64..12, 0_u8..5, "[a-c]{1,3}"), 0..6)
    }

    fn walk(job: &Job, steps: &[(u64, u8, String)]) -> Job {
        let mut job = job.clone();
        for (at, (pick, what, text)) in (20..).zip(steps) {
            let text = text.clone();
            let there = job.mark(&mark(*pick).id).cloned();
            let edit = match (what, there) {
                (0, Some(mark)) => Edit::Remove(mark.id),
                (1, Some(mark)) => Edit::Change(Mark { spot: text, ..mark }),
                (2, Some(mark)) => Edit::Change(Mark { note: text, ..mark }),
                (_, Some(mark)) => Edit::Change(Mark { title: text, ..mark }),
                (_, None) => Edit::Keep(Mark { title: text, ..mark(*pick) }),
            };
            apply(&mut job, edit, &stamp(at)).unwrap();
        }
        job
    }

    proptest! {
        /// Whatever either side wrote since they went apart is there afterwards: under its mark, or
        /// in the one beside it.
        #[test]
        fn nothing_that_either_wrote_is_missing(one in steps(), other in steps()) {
            let base = base();
            let (ours, theirs) = (walk(&base, &one), walk(&base, &other));
            let both = met(&base, &ours, &theirs);
            for side in [&ours, &theirs] {
                for mark in &side.marks {
                    let known = base.mark(&mark.id);
                    let wrote = |of: fn(&Mark) -> &String| known.map(of) != Some(of(mark));
                    let there = |of: fn(&Mark) -> &String| {
                        both.marks.iter().any(|it| {
                            of(it) == of(mark) || *of(it) == titled(of(mark))
                        })
                    };
                    for of in [|it: &Mark| &it.title, |it: &Mark| &it.spot, |it: &Mark| &it.note] as [fn(&Mark) -> &String; 3] {
                        prop_assert!(!wrote(of) || there(of), "{:?}", of(mark));
                    }
                }
            }
        }

        #[test]
        fn what_only_one_side_changed_is_as_that_side_has_it(steps in steps()) {
            let base = base();
            let changed = walk(&base, &steps);
            for both in [met(&base, &changed, &base), met(&base, &base, &changed), met(&base, &changed, &changed)] {
                prop_assert_eq!(both.marks.len(), changed.marks.len());
                for (one, other) in both.marks.iter().zip(&changed.marks) {
                    prop_assert!(same(one, other));
                }
            }
        }
    }
}
