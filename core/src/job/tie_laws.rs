//! What holds for every web of links: none leads back to itself, nothing stale is called fresh, and
//! taking what moved ends the same whichever link is taken first.

use super::edit::{Edit, apply};
use super::mark::{Kept, Mark};
use super::record::{self, Head};
use super::refusal::Refusal;
use super::samples::stamp;
use super::site::Job;
use super::survey::{NotTaken, Survey, TieState};
use super::tie::Tie;
use crate::catalog;
use crate::edition::Basis;
use crate::measure::Units;
use crate::wire::Node;
use crate::words::{Amount, Voice};
use proptest::collection::vec;
use proptest::prelude::*;

/// A cable run of so many sixteenths of an inch, as the mark of a step.
fn run(step: u64, sixteenths: i64) -> Mark {
    let entry = catalog::find("cable-securing").unwrap();
    let mut input = entry.sample();
    input.put("run", Node::Text([&sixteenths.to_string(), "/16 in"].concat()));
    let mark =
        Mark::new(entry, &input, Units::Customary, Basis::default(), None, &stamp(step)).unwrap();
    Mark { title: ["Run ", &step.to_string()].concat(), ..mark }
}

fn id(step: u64) -> String {
    stamp(step).id()
}

fn job(runs: &[i64]) -> Job {
    let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
    for (step, length) in (0..).zip(runs) {
        apply(&mut job, Edit::Keep(run(step, *length)), &stamp(step)).unwrap();
    }
    job
}

/// A mark with one input taken from a figure of another, as the page makes it.
fn tied(job: &Job, user: &str, path: &str, source: &str, key: &str) -> Option<Mark> {
    let seen = Survey::of(job).figure(source, key)?.amount.exact();
    let tie = Tie { path: path.into(), mark: source.into(), key: key.into(), seen };
    let mut mark = job.mark(user)?.clone();
    let entry = catalog::find(&mark.calculator)?;
    mark.input.put(path, Node::text(&tie.seen));
    mark.input = entry.canonical(&mark.input, Units::Customary).ok()?;
    mark.ties.retain(|other| other.path != path);
    mark.ties.push(tie);
    mark.kept = Kept::of(&mark.work(job.basis).ok()?);
    Some(mark)
}

/// Types over a run's length, and saves it.
fn retyped(mark: &Mark, sixteenths: i64) -> Mark {
    let entry = catalog::find(&mark.calculator).unwrap();
    let mut mark = mark.clone();
    mark.input.put("run", Node::Text([&sixteenths.to_string(), "/16 in"].concat()));
    mark.input = entry.canonical(&mark.input, Units::Customary).unwrap();
    mark.kept = Kept::of(&mark.work(Basis::default()).unwrap());
    mark
}

/// One thing done to a job: a link made, or a run typed over.
#[derive(Clone, Debug)]
enum Act {
    Tie { user: u64, path: &'static str, source: u64, key: &'static str },
    Type { of: u64, sixteenths: i64 },
    Remove(u64),
}

fn acts() -> impl Strategy<Value = Vec<Act>> {
    let tie =
        (0_u64..6, any::<bool>(), 0_u64..6, 0_usize..3).prop_map(|(user, run, source, key)| {
            let path = if run { "run" } else { "spacing" };
            Act::Tie { user, path, source, key: ["gap", "first", "last"][key] }
        });
    let typed = (0_u64..6, 400_i64..4000).prop_map(|(of, sixteenths)| Act::Type { of, sixteenths });
    let act = prop_oneof![6 => tie, 3 => typed, 1 => (0_u64..6).prop_map(Act::Remove)];
    vec(act, 1..14)
}

fn act(job: &mut Job, act: &Act) {
    let before = job.clone();
    let edit = match act {
        Act::Tie { user, path, source, key } => {
            tied(job, &id(*user), path, &id(*source), key).map(Edit::Change)
        }
        Act::Type { of, sixteenths } => {
            job.mark(&id(*of)).map(|mark| Edit::Change(retyped(mark, *sixteenths)))
        }
        Act::Remove(of) => Some(Edit::Remove(id(*of))),
    };
    if let Some(edit) = edit
        && apply(job, edit, &stamp(9)).is_err()
    {
        assert_eq!(*job, before, "a refused edit changes nothing");
    }
}

/// The same question asked without memory: every literal against its source, all the way back.
fn fresh(job: &Job, id: &str, deep: usize) -> bool {
    let Some(mark) = job.mark(id) else { return false };
    assert!(deep < 20, "a circle");
    mark.ties.iter().all(|tie| {
        let source = job.mark(&tie.mark).and_then(|mark| mark.work(job.basis).ok());
        let now = source.and_then(|worked| {
            let sheet = worked.sheet;
            let figure = sheet.figures.into_iter().find(|figure| figure.key == tie.key);
            figure.map(|figure| figure.amount.exact())
        });
        now.as_ref() == Some(&tie.seen)
            && mark.input.at(&tie.path).and_then(Node::leaf) == now
            && fresh(job, &tie.mark, deep + 1)
    })
}

/// Takes what moved, the `pick`th of those that have, until nothing has; none if something is
/// refused.
fn settled(job: &Job, picks: &[usize]) -> Option<Job> {
    let mut job = job.clone();
    for round in 0..400 {
        let survey = Survey::of(&job);
        let moved: Vec<(&Mark, &Tie)> = job
            .marks
            .iter()
            .flat_map(|mark| mark.ties.iter().map(move |tie| (mark, tie)))
            .filter(|(_, tie)| matches!(survey.standing(tie), TieState::Moved(_)))
            .collect();
        if moved.is_empty() {
            return Some(job);
        }
        let (mark, tie) = moved[picks[round % picks.len()] % moved.len()];
        let taken = match survey.take(mark, &tie.path, stamp(3).moment()) {
            Ok(taken) => taken,
            Err(NotTaken::Refused(_)) => return None,
            Err(other) => panic!("{other:?}"),
        };
        apply(&mut job, Edit::Change(taken), &stamp(9)).unwrap();
    }
    panic!("it never settles")
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    #[test]
    fn no_link_leads_back_and_nothing_stale_is_fresh(
        runs in vec(400_i64..4000, 6),
        story in acts(),
    ) {
        let mut job = job(&runs);
        for step in &story {
            act(&mut job, step);
            let survey = Survey::of(&job);
            for mark in &job.marks {
                prop_assert!(mark.ties.iter().all(|tie| tie.holds(&mark.input)));
                prop_assert_eq!(survey.is_fresh(&mark.id), fresh(&job, &mark.id, 0));
                for tie in &mark.ties {
                    let user = survey.users(&tie.mark).any(|user| user.id == mark.id);
                    prop_assert!(user || job.mark(&tie.mark).is_none());
                    if survey.standing(tie) == TieState::Fresh {
                        prop_assert!(fresh(&job, &tie.mark, 0));
                    }
                }
                for offer in survey.offers(&mark.id, Amount::Length(<_>::default())) {
                    let path = "spacing";
                    if let Some(mark) = tied(&job, &mark.id, path, &offer.mark.id, offer.figure.key)
                    {
                        let made = apply(&mut job.clone(), Edit::Change(mark), &stamp(9));
                        prop_assert!(made.is_ok(), "what is offered can be taken: {made:?}");
                    }
                }
            }
        }
        let head = Head::new(1, "a", 0);
        prop_assert_eq!(record::read(&record::write(&job, &head)).unwrap().1, job);
    }

    #[test]
    fn what_moved_is_taken_in_any_order(
        runs in vec(400_i64..4000, 6),
        story in acts(),
        one in vec(0_usize..99, 7),
        other in vec(0_usize..99, 7),
    ) {
        let mut job = job(&runs);
        story.iter().for_each(|step| act(&mut job, step));
        let bare = |job: Job| -> Vec<(Node, Vec<Tie>, Kept)> {
            job.marks.into_iter().map(|mark| (mark.input, mark.ties, mark.kept)).collect()
        };
        if let (Some(one), Some(other)) = (settled(&job, &one), settled(&job, &other)) {
            let survey = Survey::of(&one);
            let lost = |mark: &Mark| mark.ties.iter().any(|tie| one.mark(&tie.mark).is_none());
            if !one.marks.iter().any(lost) {
                prop_assert!(one.marks.iter().all(|mark| survey.is_fresh(&mark.id)));
            }
            prop_assert_eq!(bare(one.clone()), bare(other));
        }
    }
}

#[test]
fn a_circle_is_refused_with_its_path() {
    let mut job = job(&[1600, 1600, 1600]);
    for (user, source) in [(1, 0), (2, 1)] {
        let mark = tied(&job, &id(user), "spacing", &id(source), "gap").unwrap();
        apply(&mut job, Edit::Change(mark), &stamp(9)).unwrap();
    }
    let mark = tied(&job, &id(0), "spacing", &id(2), "gap").unwrap();
    let refused = apply(&mut job, Edit::Change(mark), &stamp(9)).unwrap_err();
    let names = ["Run 0", "Run 2", "Run 1", "Run 0"].map(str::to_owned).to_vec();
    assert_eq!(refused, Refusal::Circle(names));
    assert_eq!(
        Voice::default().say(&refused.says()),
        "This would make a number depend on itself: Run 0 ← Run 2 ← Run 1 ← Run 0. Cut one of these links first."
    );
    let own = tied(&job, &id(0), "spacing", &id(0), "gap").unwrap();
    let refused = apply(&mut job, Edit::Change(own), &stamp(9)).unwrap_err();
    assert_eq!(refused, Refusal::Circle(vec!["Run 0".into(), "Run 0".into()]));
}

/// Two devices can each add a link that is straight by itself; together they may be a circle.
#[test]
fn a_circle_that_came_by_another_way_is_never_fresh_and_never_hangs() {
    let mut job = job(&[1600, 1600, 1600]);
    let user = tied(&job, &id(2), "spacing", &id(1), "gap").unwrap();
    apply(&mut job, Edit::Change(user), &stamp(9)).unwrap();
    let one = tied(&job, &id(0), "spacing", &id(1), "first").unwrap();
    let other = tied(&job, &id(1), "spacing", &id(0), "first").unwrap();
    let places = [0, 1].map(|step| job.marks.iter().position(|mark| mark.id == id(step)).unwrap());
    job.marks[places[0]] = one;
    job.marks[places[1]] = other;
    let survey = Survey::of(&job);
    for step in 0..3 {
        assert!(!survey.is_fresh(&id(step)), "run {step}");
    }
}

#[test]
fn several_links_are_taken_at_once_or_none_of_them() {
    let mut job = job(&[1600, 1600]);
    for path in ["run", "spacing"] {
        let mark = tied(&job, &id(1), path, &id(0), "gap").unwrap();
        apply(&mut job, Edit::Change(mark), &stamp(9)).unwrap();
    }
    let source = retyped(job.mark(&id(0)).unwrap(), 1200);
    apply(&mut job, Edit::Change(source), &stamp(9)).unwrap();
    let survey = Survey::of(&job);
    let mark = job.mark(&id(1)).unwrap();
    assert!(mark.ties.iter().all(|tie| matches!(survey.standing(tie), TieState::Moved(_))));
    let at = stamp(3).moment();
    let all = survey.take_all(mark, &["run", "spacing"], at).unwrap();
    let one = survey.take(mark, "run", at).unwrap();
    assert_ne!(all, one);
    assert_eq!(survey.take(&one, "spacing", at).unwrap(), all, "as one after the other");
    assert_eq!(survey.take_all(mark, &["run", "gap"], at), Err(NotTaken::Nothing));
    apply(&mut job, Edit::Change(all), &stamp(9)).unwrap();
    assert!(Survey::of(&job).is_fresh(&id(1)));
}

#[test]
fn typing_over_cuts_the_link_and_undo_ties_it_again() {
    let mut job = job(&[1600, 1600]);
    let mark = tied(&job, &id(1), "run", &id(0), "gap").unwrap();
    apply(&mut job, Edit::Change(mark.clone()), &stamp(9)).unwrap();
    assert_eq!(Survey::of(&job).standing(&mark.ties[0]), TieState::Fresh);
    let typed = retyped(job.mark(&id(1)).unwrap(), 999);
    let undo = apply(&mut job, Edit::Change(typed), &stamp(9)).unwrap();
    assert_eq!(job.mark(&id(1)).unwrap().ties, []);
    apply(&mut job, undo, &stamp(9)).unwrap();
    assert_eq!(job.mark(&id(1)).unwrap().ties, mark.ties);
    // The source gone, the value stands and the link says so; back again, it is as before.
    let undo = apply(&mut job, Edit::Remove(id(0)), &stamp(9)).unwrap();
    assert_eq!(Survey::of(&job).standing(&mark.ties[0]), TieState::Lost);
    assert!(!Survey::of(&job).is_fresh(&id(1)));
    apply(&mut job, undo, &stamp(9)).unwrap();
    assert!(Survey::of(&job).is_fresh(&id(1)));
}
