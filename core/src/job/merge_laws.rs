//! What holds for every two copies of a job, whatever three devices did to it and in whatever
//! order they heard of each other.

use super::edit::{Edit, apply};
use super::laws::{Act, acts, one_act};
use super::mark::Mark;
use super::merge::{Fate, Merged, TermsFate, merge};
use super::record::{self, Head};
use super::samples::{mark, stamp};
use super::site::Job;
use super::stamp::Stamp;
use super::survey::Survey;
use super::tie::Tie;
use crate::wire::Node;
use proptest::collection::vec;
use proptest::prelude::*;

/// Something that happens to one of three devices.
#[derive(Clone, Debug)]
enum Step {
    /// It changes its copy.
    Does(usize, Act),
    /// It hears of another's copy.
    Hears(usize, usize),
    /// Its battery dies, and it starts again from what it had a while ago.
    Forgets(usize),
}

const DEVICES: [&str; 3] = ["p", "q", "r"];

fn steps(forgets: u32) -> impl Strategy<Value = Vec<Step>> {
    let step = prop_oneof![
        12 => (0_usize..3, one_act()).prop_map(|(who, act)| Step::Does(who, act)),
        6 => (0_usize..3, 0_usize..3).prop_map(|(who, whom)| Step::Hears(who, whom)),
        forgets => (0_usize..3).prop_map(Step::Forgets),
    ];
    vec(step, 0..26)
}

fn by(device: usize, stamp: &Stamp) -> Stamp {
    Stamp { device: DEVICES[device].into(), ..stamp.clone() }
}

/// Three copies in the end, and every mark that somebody who saw it changed or removed.
struct Lived {
    copies: [Job; 3],
    settled: Vec<Mark>,
}

fn lived(steps: &[Step]) -> Lived {
    let start = Job::new("Invented", "", &stamp(0)).unwrap();
    let mut copies = [start.clone(), start.clone(), start];
    let mut earlier = copies.clone();
    let mut settled = Vec::new();
    for (at, step) in steps.iter().enumerate() {
        match step {
            Step::Does(who, act) => {
                let before = copies[*who].clone();
                let edit = noted(act.edit(&before), &at.to_string());
                let _ = apply(&mut copies[*who], edit, &by(*who, &act.stamp));
                let now = said(&copies[*who]);
                settled.extend(said(&before).into_iter().filter(|mark| !now.contains(mark)));
                earlier[*who] = before;
            }
            Step::Hears(who, whom) => {
                let other = copies[*whom].clone();
                take(&mut copies[*who], &other);
            }
            Step::Forgets(who) => copies[*who] = earlier[*who].clone(),
        }
    }
    Lived { copies, settled }
}

/// Notes on each mark which step made it what it is.
fn noted(edit: Edit, note: &str) -> Edit {
    let with = |mark: Mark| Mark { note: note.into(), ..mark };
    match edit {
        Edit::Keep(mark) => Edit::Keep(with(mark)),
        Edit::Change(mark) => Edit::Change(with(mark)),
        Edit::Several(edits) => {
            Edit::Several(edits.into_iter().map(|edit| noted(edit, note)).collect())
        }
        other => other,
    }
}

/// Merges, and gives back what undoes it.
fn take(ours: &mut Job, theirs: &Job) -> (Merged, Option<Edit>) {
    let merged = merge(ours, theirs);
    let undo = merged.edit.clone().map(|edit| apply(ours, edit, &stamp(7)).unwrap());
    (merged, undo)
}

fn merged(ours: &Job, theirs: &Job) -> Job {
    let mut job = ours.clone();
    take(&mut job, theirs);
    job
}

/// The job without what "ours stands" is about.
fn without_terms(job: &Job) -> Job {
    let clock = job.clock.clone();
    let jots = job.jots.clone();
    Job { clock, marks: job.marks.clone(), gone: job.gone.clone(), jots, ..told_nothing() }
}

fn told_nothing() -> Job {
    Job::new("", "", &stamp(0)).unwrap()
}

/// What a mark says, whatever it is called by.
fn says(mark: &Mark) -> Mark {
    Mark {
        id: String::new(),
        clock: <_>::default(),
        title: mark.title.replace(" (other version)", "").chars().take(30).collect(),
        ..mark.clone()
    }
}

fn said(job: &Job) -> Vec<Mark> {
    job.marks.iter().map(says).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(600))]

    #[test]
    fn merged_once_nothing_is_left_to_merge(steps in steps(1)) {
        let [one, other, _] = lived(&steps).copies;
        prop_assert_eq!(merge(&one, &one).edit, None, "with itself");
        let both = merged(&one, &other);
        prop_assert!(both.in_order());
        for known in [&one, &other, &both] {
            prop_assert_eq!(merge(&both, known).edit, None);
        }
        let head = Head::new(1, "p", 0);
        prop_assert_eq!(record::read(&record::write(&both, &head)).unwrap().1, both);
    }

    #[test]
    fn merged_either_way_round_it_is_the_same(steps in steps(1)) {
        let [one, other, _] = lived(&steps).copies;
        let (here, there) = (merged(&one, &other), merged(&other, &one));
        prop_assert_eq!(without_terms(&here), without_terms(&there));
        prop_assert_eq!(merge(&here, &there).edit, None);
    }

    #[test]
    fn nothing_is_missing_that_nobody_changed_or_removed(steps in steps(0)) {
        let Lived { copies, settled } = lived(&steps);
        let [one, other, third] = &copies;
        let [two, three] = [merged(one, other), merged(&merged(third, other), one)];
        for (end, from) in [(&two, &copies[..2]), (&three, &copies[..])] {
            let (end, all) = (said(end), from.iter().flat_map(said).collect::<Vec<_>>());
            for mark in &all {
                prop_assert!(end.contains(mark) || settled.contains(mark), "{mark:?}");
            }
            prop_assert!(end.iter().all(|mark| all.contains(mark)), "on no side");
        }
    }

    #[test]
    fn what_was_merged_can_be_taken_back_to_the_last_clock(steps in steps(1), last in acts(2)) {
        let [one, other, _] = lived(&steps).copies;
        let mut job = one.clone();
        if let (_, Some(undo)) = take(&mut job, &other) {
            let both = job.clone();
            let redo = apply(&mut job, undo.clone(), &stamp(8)).unwrap();
            prop_assert_eq!(&job, &one, "as if it had never been heard of");
            apply(&mut job, redo, &stamp(8)).unwrap();
            prop_assert_eq!(&job, &both);
            // With a change in between, undoing is a change like any other.
            for act in &last {
                let edit = act.edit(&job);
                let _ = apply(&mut job, edit, &act.stamp);
            }
            if apply(&mut job, undo, &stamp(8)).is_ok() {
                prop_assert!(job.in_order());
                let touched = |mark: &&Mark| both.mark(&mark.id).map(says) != Some(says(mark));
                for mark in one.marks.iter().filter(touched) {
                    prop_assert_eq!(job.mark(&mark.id).map(says), Some(says(mark)));
                }
            }
        }
    }

    #[test]
    fn what_only_one_side_changes_is_never_taken_for_changed_on_both(steps in steps(1), more in acts(6)) {
        let [mut one, mut other, _] = lived(&steps).copies;
        take(&mut one, &other);
        take(&mut other, &one);
        for act in &more {
            let edit = act.edit(&one);
            let _ = apply(&mut one, edit, &by(0, &act.stamp));
            let (merged, _) = take(&mut other, &one);
            prop_assert_eq!(merged.count(Fate::Both), 0);
            prop_assert!(!matches!(merged.terms, TermsFate::Told(_)) || other.clock == one.clock);
        }
        prop_assert_eq!(&other.marks, &one.marks);
    }
}

fn started() -> (Job, Job) {
    let mut here = Job::new("Invented", "", &stamp(0)).unwrap();
    apply(&mut here, Edit::Keep(mark(1)), &stamp(2)).unwrap();
    let there = here.clone();
    (here, there)
}

fn titled(title: &str) -> Mark {
    Mark { title: title.into(), ..mark(1) }
}

#[test]
fn changed_on_both_sides_both_stay_and_one_says_so() {
    let (mut here, mut there) = started();
    apply(&mut here, Edit::Change(titled("Shelf")), &stamp(4)).unwrap();
    let later = Mark { at: stamp(9).moment(), ..titled("Shelf, 2 in lower") };
    apply(&mut there, Edit::Change(later), &stamp(5)).unwrap();
    let (merged, _) = take(&mut here, &there);
    assert_eq!(merged.count(Fate::Both), 1);
    let mut titles: Vec<&str> = here.marks.iter().map(|mark| &*mark.title).collect();
    titles.sort_unstable();
    assert_eq!(titles, ["Shelf (other version)", "Shelf, 2 in lower"]);
    assert_eq!(here.mark(&mark(1).id).unwrap().title, "Shelf, 2 in lower", "worked out last");
    // A long title leaves room for what is said.
    let (mut here, mut there) = started();
    apply(&mut here, Edit::Change(titled(&"é".repeat(80))), &stamp(4)).unwrap();
    apply(&mut there, Edit::Change(titled(&"e".repeat(80))), &stamp(5)).unwrap();
    take(&mut here, &there);
    assert_eq!(here.marks.len(), 2);
    assert!(here.marks.iter().all(|mark| mark.title.chars().count() == 80));
}

#[test]
fn a_removal_wins_over_what_it_knew_and_over_nothing_else() {
    let (mut here, mut there) = started();
    apply(&mut there, Edit::Remove(mark(1).id), &stamp(5)).unwrap();
    let (merged, undo) = take(&mut here, &there);
    assert_eq!((merged.count(Fate::Removed), here.marks.len()), (1, 0));
    apply(&mut here, undo.unwrap(), &stamp(4)).unwrap();
    assert_eq!(here, started().0);
    // The older copy does not bring it back.
    let (merged, _) = take(&mut there, &here);
    assert_eq!((merged.count(Fate::StaysGone), there.marks.len()), (1, 0));
    // Changed here without word of it: it stays, there too.
    apply(&mut here, Edit::Change(titled("Shelf")), &stamp(4)).unwrap();
    assert_eq!(take(&mut here.clone(), &there).0.count(Fate::Removed), 0);
    let (merged, _) = take(&mut there, &here);
    assert_eq!((merged.count(Fate::New), &*there.marks[0].title), (1, "Shelf"));
}

#[test]
fn the_jobs_own_terms_changed_on_both_sides_are_told() {
    let (mut here, mut there) = started();
    let named = |name: &str| Edit::Describe { name: name.into(), place: String::new() };
    apply(&mut there, named("Quoin 4"), &stamp(5)).unwrap();
    let (merged, _) = take(&mut here, &there);
    assert!(matches!(merged.terms, TermsFate::Replaced(_)));
    assert_eq!(here.name, "Quoin 4");
    apply(&mut here, named("Quoin 4, rear"), &stamp(4)).unwrap();
    apply(&mut there, named("Quoin 4, Ané"), &stamp(5)).unwrap();
    let (merged, _) = take(&mut here, &there);
    let TermsFate::Told(theirs) = merged.terms else { panic!("{:?}", merged.terms) };
    assert_eq!((&*here.name, &*theirs.name), ("Quoin 4, rear", "Quoin 4, Ané"));
}

/// Two devices can each add a link that is straight by itself.
#[test]
fn a_circle_made_by_two_devices_is_told_and_never_hangs() {
    let held = |step: u64, behind: Option<u64>| Mark {
        ties: Vec::new(),
        behind: behind.map(|step| mark(step).id),
        title: ["Run ", &step.to_string()].concat(),
        ..mark(step)
    };
    let mut here = Job::new("Invented", "", &stamp(0)).unwrap();
    for step in 1..=3 {
        apply(&mut here, Edit::Keep(held(step, None)), &stamp(2)).unwrap();
    }
    let mut there = here.clone();
    apply(&mut here, Edit::Change(held(1, Some(2))), &stamp(4)).unwrap();
    apply(&mut here, Edit::Change(held(2, Some(3))), &stamp(4)).unwrap();
    apply(&mut there, Edit::Change(held(3, Some(1))), &stamp(5)).unwrap();
    let (merged, undo) = take(&mut here, &there);
    let way = merged.circle.unwrap();
    assert_eq!((way.len(), way.first()), (4, way.last()));
    assert!((1..=3).all(|step| way.contains(&format!("Run {step}"))), "{way:?}");
    assert!(Survey::of(&here).worked(&mark(1).id).is_some());
    // Told once; what stands in it can be changed once a link is cut.
    assert_eq!(merge(&here, &there).circle, None);
    assert!(apply(&mut here.clone(), Edit::Change(held(1, Some(2))), &stamp(6)).is_err());
    apply(&mut here.clone(), Edit::Change(held(1, None)), &stamp(6)).unwrap();
    apply(&mut here, undo.unwrap(), &stamp(6)).unwrap();
    assert_eq!(merge(&there, &here).circle.map(|way| way.len()), Some(4));
}

#[test]
fn a_long_chain_of_links_is_followed_without_growing_the_stack() {
    let chain: Vec<Mark> = (0..20_000_u64)
        .map(|step| Mark {
            id: format!("{step:05}"),
            behind: Some(format!("{:05}", step + 1)),
            input: Node::EMPTY,
            ties: vec![Tie {
                path: "a".into(),
                mark: format!("{:05}", step + 2),
                key: "b".into(),
                seen: "c".into(),
            }],
            ..mark(1)
        })
        .collect();
    let ours = Job::new("Invented", "", &stamp(0)).unwrap();
    let theirs = Job { marks: chain, ..ours.clone() };
    let merged = merge(&ours, &theirs);
    assert_eq!((merged.count(Fate::New), merged.circle), (20_000, None));
}
