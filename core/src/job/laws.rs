//! What holds for every job and every edit.

use super::clock::{Clock, Order};
use super::edit::{Edit, apply, hand_over};
use super::mark::Mark;
use super::record::{self, Head};
use super::refusal::{LONGEST_TITLE, Refusal};
use super::samples::{mark, stamp};
use super::site::Job;
use super::stamp::Stamp;
use crate::edition::{Basis, Electrical};
use crate::measure::Units;
use proptest::collection::vec;
use proptest::prelude::*;
use std::collections::BTreeMap;

/// A step of a story: what is done, to which mark, with what text, on which device.
#[derive(Clone, Debug)]
pub(super) struct Act {
    kind: u8,
    pick: u64,
    text: String,
    pub(super) stamp: Stamp,
}

pub(super) fn acts(most: usize) -> impl Strategy<Value = Vec<Act>> {
    vec(one_act(), 0..most)
}

pub(super) fn one_act() -> impl Strategy<Value = Act> {
    let text = prop_oneof![4 => "[a-zé \\n\"]{0,12}", 1 => "[a-z]{70,140}"];
    let act = (0_u8..11, 0_u64..6, text, "[pqr]", -9_i64..9, -840_i32..841, any::<u64>());
    act.prop_map(|(kind, pick, text, device, at, zone, random)| Act {
        kind,
        pick,
        text,
        stamp: Stamp { at, zone, device, random },
    })
}

impl Act {
    /// The edit that it stands for. Marks are picked among six, so that they meet.
    pub(super) fn edit(&self, job: &Job) -> Edit {
        let told = |mark: Mark| Mark {
            title: self.text.clone(),
            spot: self.text.to_uppercase(),
            version: u16::from(self.kind),
            at: self.stamp.moment(),
            ..mark
        };
        let fresh = mark(self.pick);
        match self.kind {
            0 => Edit::Describe { name: self.text.clone(), place: self.text.clone() + "!" },
            1 => {
                Edit::Basis(Basis { electrical: Electrical::ALL.get(self.pick as usize).copied() })
            }
            2 => Edit::Units(if self.pick == 0 { Units::Customary } else { Units::Metric }),
            3 | 4 => Edit::Keep(told(fresh)),
            5 => Edit::Change(told(job.mark(&fresh.id).cloned().unwrap_or(fresh))),
            6 => Edit::Remove(fresh.id),
            7 => Edit::clear(job),
            8 | 9 => Edit::Jot {
                key: ["got ", &self.pick.to_string()].concat(),
                says: self.text.clone(),
            },
            _ => Edit::Several(vec![
                Edit::Remove(fresh.id.clone()),
                // Told apart from the one after it: laws know marks by what they say.
                Edit::Keep(Mark { spot: "beside".into(), ..told(mark(self.pick + 1)) }),
                Edit::Keep(told(fresh)),
            ]),
        }
    }
}

fn told(acts: &[Act]) -> Job {
    let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
    for act in acts {
        let edit = act.edit(&job);
        let _ = apply(&mut job, edit, &act.stamp);
    }
    job
}

/// The job without clocks and traces.
fn bare(job: &Job) -> Job {
    let mut job = Job { clock: Clock::default(), gone: Vec::new(), ..job.clone() };
    job.jots.retain(|jot| !jot.says.is_empty());
    for jot in &mut job.jots {
        (jot.clock, jot.at) = (Clock::default(), stamp(0).moment());
    }
    for mark in &mut job.marks {
        mark.clock = Clock::default();
    }
    job
}

/// Each mark's clock, the removed ones too.
fn clocks(job: &Job) -> BTreeMap<&str, &Clock> {
    let marks = job.marks.iter().map(|mark| (mark.id.as_str(), &mark.clock));
    let gone = job.gone.iter().map(|gone| (gone.id.as_str(), &gone.clock));
    let jots = job.jots.iter().map(|jot| (jot.key.as_str(), &jot.clock));
    marks.chain(gone).chain(jots).collect()
}

/// Whether no clock went down from one job to the next, and none was lost.
fn never_down(before: &Job, after: &Job) -> bool {
    let (old, new) = (clocks(before), clocks(after));
    let rose = |new: &Clock, old: &Clock| matches!(new.versus(old), Order::Same | Order::After);
    rose(&after.clock, &before.clock)
        && old.iter().all(|(id, old)| new.get(id).is_some_and(|new| rose(new, old)))
}

fn only(edit: &Edit) -> Option<&str> {
    match edit {
        Edit::Keep(mark) | Edit::Change(mark) => Some(&mark.id),
        Edit::Remove(id) => Some(id),
        Edit::Jot { key, .. } => Some(key),
        _ => None,
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn done_and_undone_is_as_before_and_no_clock_goes_down(story in acts(14), last in acts(2)) {
        let mut job = told(&story);
        prop_assert!(job.in_order());
        for act in last {
            let before = job.clone();
            let edit = act.edit(&job);
            match apply(&mut job, edit.clone(), &act.stamp) {
                Err(_) => prop_assert_eq!(&job, &before, "a refused edit changes nothing"),
                Ok(inverse) => {
                    let after = job.clone();
                    prop_assert!(after.in_order());
                    prop_assert!(never_down(&before, &after));
                    if let Some(id) = only(&edit) {
                        let clock = clocks(&after)[id].clone();
                        let was = clocks(&before).get(id).copied().cloned().unwrap_or_default();
                        prop_assert_eq!(clock.versus(&was), Order::After);
                        for mark in before.marks.iter().filter(|mark| mark.id != id) {
                            prop_assert_eq!(after.mark(&mark.id), Some(mark), "a neighbour");
                        }
                    }
                    let redo = apply(&mut job, inverse, &stamp(8)).unwrap();
                    prop_assert_eq!(bare(&job), bare(&before));
                    prop_assert!(never_down(&after, &job));
                    apply(&mut job, redo, &stamp(9)).unwrap();
                    prop_assert_eq!(bare(&job), bare(&after));
                }
            }
        }
    }

    #[test]
    fn a_mark_that_moves_is_in_one_job_and_can_go_back(
        here in acts(12), there in acts(12), pick in 0_u64..6,
    ) {
        let (mut from, mut to) = (told(&here), told(&there));
        to.id = "elsewhere".into();
        let id = mark(pick).id;
        let (from_before, to_before) = (from.clone(), to.clone());
        let held = |from: &Job, to: &Job| from.mark(&id).is_some() || to.mark(&id).is_some();
        let was_held = held(&from, &to);
        match hand_over(&mut from, &mut to, &id, &stamp(7)) {
            Err(refusal) => {
                prop_assert_eq!((&from, &to), (&from_before, &to_before));
                let want = if from.mark(&id).is_none() {
                    Refusal::NoSuchMark(id.clone())
                } else {
                    Refusal::Taken(id.clone())
                };
                prop_assert_eq!(refusal, want);
            }
            Ok((undo_from, undo_to)) => {
                prop_assert!(from.mark(&id).is_none());
                let (there, was) = (bare(&to), bare(&from_before));
                prop_assert_eq!(there.mark(&id), was.mark(&id));
                apply(&mut from, undo_from, &stamp(8)).unwrap();
                apply(&mut to, undo_to, &stamp(8)).unwrap();
                prop_assert_eq!(bare(&from), bare(&from_before));
                prop_assert_eq!(bare(&to), bare(&to_before));
            }
        }
        prop_assert_eq!(held(&from, &to), was_held);
    }

    #[test]
    fn every_job_comes_back_from_its_record(
        story in acts(14), revision: u64, saved_at: i64, writer in ".{0,8}",
    ) {
        let job = told(&story);
        let head = Head::new(revision, &writer, saved_at);
        let text = record::write(&job, &head);
        prop_assert_eq!(record::read(&text), Ok((head, job)));
    }
}

#[test]
fn a_mark_is_kept_changed_removed_and_brought_back() {
    let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
    let id = mark(1).id;
    apply(&mut job, Edit::Keep(mark(1)), &stamp(1)).unwrap();
    let seen = job.clone();
    let undo = apply(&mut job, Edit::Remove(id.clone()), &stamp(2)).unwrap();
    assert_eq!(job.mark(&id), None);
    assert_eq!(job.gone[0].at, stamp(2).moment());
    assert_eq!(job.gone[0].clock.versus(&seen.marks[0].clock), Order::After);
    let removed = job.gone[0].clock.clone();
    apply(&mut job, undo, &stamp(3)).unwrap();
    assert_eq!(job.gone, []);
    let back = job.mark(&id).unwrap();
    assert_eq!(back.clock.versus(&removed), Order::After, "it must win over the removal");
    assert_eq!(bare(&job), bare(&seen));
}

#[test]
fn a_mark_changed_on_two_devices_stands_aside_of_itself() {
    let mut here = Job::new("Invented", "", &stamp(0)).unwrap();
    apply(&mut here, Edit::Keep(mark(1)), &stamp(2)).unwrap();
    let mut there = here.clone();
    apply(&mut here, Edit::Change(mark(1)), &stamp(4)).unwrap();
    apply(&mut there, Edit::Change(mark(1)), &stamp(5)).unwrap();
    assert_eq!(here.marks[0].clock.versus(&there.marks[0].clock), Order::Aside);
}

#[test]
fn what_a_job_cannot_hold_is_refused_and_changes_nothing() {
    let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
    apply(&mut job, Edit::Keep(mark(1)), &stamp(1)).unwrap();
    let long = Mark { title: "x".repeat(LONGEST_TITLE + 1), ..mark(2) };
    let nameless = Mark { id: "Box 1".into(), ..mark(2) };
    let name = "x".repeat(81);
    let before = job.clone();
    for (edit, refused) in [
        (Edit::Keep(mark(1)), "Taken"),
        (Edit::Keep(long.clone()), "TooLong"),
        (Edit::Keep(nameless), "BadId"),
        (Edit::Change(mark(2)), "NoSuchMark"),
        (Edit::Change(Mark { id: mark(1).id, ..long }), "TooLong"),
        (Edit::Remove(mark(2).id), "NoSuchMark"),
        (Edit::Describe { name, place: String::new() }, "TooLong"),
        (Edit::Several(vec![Edit::clear(&job), Edit::Remove(mark(1).id)]), "NoSuchMark"),
    ] {
        let refusal = apply(&mut job, edit, &stamp(9)).unwrap_err();
        assert!(format!("{refusal:?}").starts_with(refused), "{refusal:?}");
        assert_eq!(job, before, "{refused}");
    }
    assert!(Job::new("", &"x".repeat(121), &stamp(0)).is_err());
    let mut copy = job.clone();
    let id = mark(1).id;
    assert_eq!(hand_over(&mut copy, &mut job, &id, &stamp(9)), Err(Refusal::SameJob));
}

#[test]
fn a_change_of_edition_leaves_the_answers_of_their_day() {
    let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
    apply(&mut job, Edit::Keep(mark(1)), &stamp(1)).unwrap();
    let marks = job.marks.clone();
    let basis = Basis { electrical: Some(Electrical::E2023) };
    assert_eq!(apply(&mut job, Edit::Basis(basis), &stamp(2)), Ok(Edit::Basis(Basis::default())));
    assert_eq!(job.basis, basis);
    assert_eq!(job.marks, marks);
}

#[test]
fn a_duplicate_is_another_mark_with_the_same_answer() {
    let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
    apply(&mut job, Edit::Keep(mark(1)), &stamp(1)).unwrap();
    let copy = job.marks[0].duplicate(&stamp(2));
    apply(&mut job, Edit::Keep(copy.clone()), &stamp(2)).unwrap();
    let first = job.mark(&mark(1).id).unwrap();
    assert_ne!(copy.id, first.id);
    assert_eq!(Mark { id: first.id.clone(), clock: first.clock.clone(), ..copy }, *first);
}

#[test]
fn marks_stand_newest_first_under_their_spot() {
    let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
    for (step, spot) in [(1, "Attic"), (2, ""), (3, "Bath"), (4, "  attic "), (5, "Bath")] {
        let mark = Mark { spot: spot.into(), ..mark(step) };
        apply(&mut job, Edit::Keep(mark), &stamp(step)).unwrap();
    }
    let ids = |steps: &[u64]| steps.iter().map(|step| mark(*step).id).collect::<Vec<_>>();
    let spots: Vec<_> = job
        .newest_first_by_spot()
        .into_iter()
        .map(|spot| (spot.name, spot.marks.iter().map(|mark| mark.id.clone()).collect::<Vec<_>>()))
        .collect();
    assert_eq!(spots, [("Bath", ids(&[5, 3])), ("attic", ids(&[4, 1])), ("", ids(&[2]))]);
}
