//! Nothing but a hold's own evidence, on record in the job, opens what stands behind it: one test
//! a way round.

use ledgerboard_core::catalog::{self, Link, Worked};
use ledgerboard_core::edition::{Basis, Electrical};
use ledgerboard_core::job::backup::{self, Written};
use ledgerboard_core::job::record::{self, Head};
use ledgerboard_core::job::{Edit, Job, Mark, Stamp, Survey, apply, opened, opened_by};
use ledgerboard_core::measure::Units;
use ledgerboard_core::sheet::Standing;
use ledgerboard_core::wire::Node;

/// An invented wall in an invented house, with all that opens it.
const EVIDENCE: &str = r#"{
    "place": "Den, north wall", "material": "plaster", "deed": "cut", "area": "40 sq ft",
    "built": 1931,
    "report": {"result": "none-detected", "samples": 3, "lab": "Tamarack Lab",
        "accreditation": "T-17", "dated": "2026-11-03", "sampled": "Den, three corners"},
    "paint": {"painted": "2 sq ft", "window": "no", "result": "no-lead", "tester": "R. Vale",
        "tested": "2026-11-02"},
    "building": {"dwellings": 1},
    "office": {"asks": "nothing-stricter", "says": "County desk, Nov 4"}
}"#;

fn stamp(step: u64) -> Stamp {
    // 2026-11-06, three days after the report.
    Stamp { at: 1_794_000_000 + step as i64, zone: 0, device: "phone".into(), random: step }
}

fn mark(calculator: &str, input: &Node, step: u64) -> Mark {
    let entry = catalog::find(calculator).unwrap();
    Mark::new(entry, input, Units::Customary, Basis::default(), None, &stamp(step)).unwrap()
}

fn evidence() -> Node {
    serde_json::from_str(EVIDENCE).unwrap()
}

fn without_result() -> Node {
    let mut input = evidence();
    input.put("report.result", Node::text("none-yet"));
    input
}

/// A box cut into old plaster.
fn cut_box(step: u64) -> Mark {
    let mut input = catalog::find("box-fill").unwrap().sample();
    input.put("cut", Node::text("plaster"));
    mark("box-fill", &input, step)
}

/// A job with a hold of this input and a box behind it.
fn job(hold: &Node) -> (Job, String, String) {
    let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
    let (hold, work) = (mark("hold", hold, 1), cut_box(2));
    let work = Mark { behind: Some(hold.id.clone()), ..work };
    let ids = (hold.id.clone(), work.id.clone());
    apply(&mut job, Edit::Keep(hold), &stamp(3)).unwrap();
    apply(&mut job, Edit::Keep(work), &stamp(4)).unwrap();
    (job, ids.0, ids.1)
}

fn worked(job: &Job, id: &str) -> Worked {
    Survey::of(job).worked(id).unwrap().as_ref().unwrap().clone()
}

fn is_held(job: &Job, id: &str) -> bool {
    worked(job, id).standing.is_held()
}

#[test]
fn whole_evidence_on_record_opens_the_work_behind_it() {
    let (job, hold, work) = job(&evidence());
    assert!(matches!(worked(&job, &work).standing, Standing::Opened(_)));
    assert!(opened_by(&job, &hold).is_some());
    // Of the same job, but not behind it.
    let mut other = job.clone();
    apply(&mut other, Edit::Keep(cut_box(9)), &stamp(9)).unwrap();
    assert!(is_held(&other, &cut_box(9).id));
}

#[test]
fn a_hold_stays_shut_by_link() {
    let link = Link::new("hold", evidence(), Basis::default(), Units::Customary);
    let [own, forged] = [link.write(), ["hold?", &leaves(&evidence())].concat()]
        .map(|address| Link::read(&address).unwrap());
    for link in [own, forged] {
        let (job, hold, work) = job(&link.input);
        assert!(is_held(&job, &hold) && is_held(&job, &work));
    }
    // A link to the work opens nothing either, whatever it claims.
    let forged = Link::read("box-fill?cut=plaster&behind=open&standing=opened").unwrap();
    let entry = catalog::find("box-fill").unwrap();
    assert!(entry.work(&forged.input, Units::Customary, Basis::default()).is_err());
}

fn leaves(node: &Node) -> String {
    let pair = |(path, leaf): (String, Option<String>)| [path, leaf.unwrap_or_default()].join("=");
    node.leaves().into_iter().map(pair).collect::<Vec<_>>().join("&")
}

#[test]
fn a_hold_stays_shut_by_a_record_written_and_read_back() {
    let (job, hold, work) = job(&without_result());
    let text = record::write(&job, &Head::new(1, "phone", 0));
    let (_, back) = record::read(&text).unwrap();
    assert!(is_held(&back, &hold) && is_held(&back, &work));
}

#[test]
fn a_hold_stays_shut_by_edited_storage() {
    let (job, hold, work) = job(&without_result());
    // Every word about how it stands rewritten, in a record whose sum is right again.
    let mut edited = job.clone();
    for mark in &mut edited.marks {
        mark.kept.verdict = "within".into();
        mark.kept.figures.push(("standing".into(), "opened".into()));
        mark.kept.checks = vec![("report".into(), "within".into())];
        mark.title = "Opened".into();
    }
    let text = record::write(&edited, &Head::new(9, "phone", 0));
    let (_, back) = record::read(&text).unwrap();
    assert!(is_held(&back, &hold) && is_held(&back, &work));
    // A word that no shape has is refused, and a changed letter is seen.
    assert!(record::read(&text.replace("\"behind\"", "\"opened\"")).is_err());
    assert!(record::read(&text.replace("none-yet", "none-det")).is_err());
    // Behind what is no hold, nothing opens.
    let mut other = job.clone();
    let mut mark = other.mark(&work).unwrap().clone();
    for behind in [cut_box(7).id, "gone".into()] {
        mark.behind = Some(behind);
        let _ = apply(&mut other, Edit::Keep(cut_box(7)), &stamp(9));
        apply(&mut other, Edit::Change(mark.clone()), &stamp(9)).unwrap();
        assert!(is_held(&other, &work));
    }
}

#[test]
fn a_hold_stays_shut_by_undo() {
    let (mut job, hold, work) = job(&without_result());
    let opened_hold = Mark { id: hold.clone(), ..mark("hold", &evidence(), 5) };
    let undo = apply(&mut job, Edit::Change(opened_hold), &stamp(6)).unwrap();
    assert!(!is_held(&job, &work));
    let redo = apply(&mut job, undo, &stamp(7)).unwrap();
    assert!(is_held(&job, &work), "what was found out is taken back, and so is the opening");
    // The hold removed and brought back shut; opened, removed: shut at once.
    let undo = apply(&mut job, Edit::Remove(hold.clone()), &stamp(8)).unwrap();
    assert!(is_held(&job, &work));
    apply(&mut job, undo, &stamp(9)).unwrap();
    assert!(is_held(&job, &work));
    apply(&mut job, redo, &stamp(10)).unwrap();
    assert!(!is_held(&job, &work));
    apply(&mut job, Edit::Remove(hold), &stamp(11)).unwrap();
    assert!(is_held(&job, &work));
}

#[test]
fn a_hold_stays_shut_by_an_edition_change() {
    let (mut job, hold, work) = job(&without_result());
    for edition in Electrical::ALL.map(Some).into_iter().chain([None]) {
        apply(&mut job, Edit::Basis(Basis { electrical: edition }), &stamp(6)).unwrap();
        assert!(is_held(&job, &hold) && is_held(&job, &work), "{edition:?}");
    }
}

#[test]
fn a_hold_stays_shut_by_batch() {
    let line = |input: &Node, more: &str| {
        let mut asked = serde_json::json!({ "calculator": "box-fill" });
        asked["input"] = serde_json::to_value(input).unwrap();
        asked["opened"] = more.into();
        let answer: serde_json::Value =
            serde_json::from_str(&catalog::answer_line(&asked.to_string())).unwrap();
        answer
    };
    let work = cut_box(1).input;
    let refused = line(&work, "yes");
    assert!(refused.get("sheet").is_none(), "a part that no line has is refused: {refused}");
    let asked = serde_json::json!({ "calculator": "box-fill", "input": work });
    let answer = catalog::answer_line(&asked.to_string());
    assert!(answer.contains("\"held\""), "{answer}");
    // The hold itself answers that it is open, and that opens nothing for the next line.
    let asked = serde_json::json!({ "calculator": "hold", "input": evidence() });
    assert!(catalog::answer_line(&asked.to_string()).contains("\"opened\""));
    let asked = serde_json::json!({ "calculator": "box-fill", "input": cut_box(1).input });
    assert!(catalog::answer_line(&asked.to_string()).contains("\"held\""));
}

#[test]
fn a_hold_of_another_job_or_for_other_work_opens_nothing() {
    let (job_one, hold, _) = job(&evidence());
    let mut elsewhere = Job::new("Invented too", "", &stamp(0)).unwrap();
    let work = Mark { behind: Some(hold), ..cut_box(2) };
    apply(&mut elsewhere, Edit::Keep(work.clone()), &stamp(4)).unwrap();
    assert!(is_held(&elsewhere, &work.id));
    assert!(opened(&elsewhere, &work).is_none());
    assert!(opened(&job_one, &work).is_some());
    for (path, leaf) in [("material", "board"), ("deed", "sand")] {
        let mut other = evidence();
        other.put(path, Node::text(leaf));
        let (job, hold, work) = job(&other);
        assert!(opened_by(&job, &hold).is_some(), "{path} {leaf}");
        assert!(is_held(&job, &work), "{path} {leaf}");
    }
}

/// What was found out after the day that it was put on record can't have been found out.
#[test]
fn a_hold_stays_shut_by_a_date_that_is_yet_to_come() {
    for (path, day, opens) in [
        ("report.dated", "2026-11-06", true),
        ("report.dated", "2026-11-07", false),
        ("paint.tested", "2026-11-06", true),
        ("paint.tested", "2031-01-01", false),
        // Before there was a house.
        ("report.dated", "1930-12-31", false),
    ] {
        let mut input = evidence();
        input.put(path, Node::text(day));
        let (job, hold, work) = job(&input);
        assert_eq!(is_held(&job, &work), !opens, "{path} {day}");
        assert_eq!(is_held(&job, &hold), !opens, "{path} {day}");
        assert_eq!(job.mark(&hold).unwrap().kept.is_held(), !opens, "{path} {day}");
    }
}

#[test]
fn a_hold_stays_shut_by_backup() {
    let (shut, hold, work) = job(&without_result());
    let written =
        Written { by: "Ledgerboard".into(), made: stamp(0).moment(), device: "phone".into() };
    let restored = |there: &Job, here: &[Job]| -> Job {
        let mut jobs = here.to_vec();
        let text = backup::write([there], &written);
        let plan = backup::plan(backup::read(&text).unwrap(), &jobs);
        backup::carry_out(&mut jobs, plan.into_steps(), &stamp(9)).unwrap();
        jobs.remove(0)
    };
    // As it was written, and with every word about how it stands rewritten under a right sum.
    let mut edited = shut.clone();
    for mark in &mut edited.marks {
        mark.kept.verdict = "within".into();
        mark.kept.figures.push(("standing".into(), "opened".into()));
        mark.kept.checks = vec![("report".into(), "within".into())];
        mark.title = "Opened".into();
    }
    for there in [&shut, &edited] {
        let back = restored(there, &[]);
        assert!(is_held(&back, &hold) && is_held(&back, &work));
        let back = restored(there, std::slice::from_ref(&shut));
        assert!(is_held(&back, &hold) && is_held(&back, &work));
    }
    let text = backup::write([&shut], &written);
    for (from, to) in [("\"behind\"", "\"opened\""), ("none-yet", "none-det")] {
        let back = backup::read(&text.replace(from, to)).unwrap();
        assert_eq!((back.jobs.len(), back.damaged.len()), (0, 1), "{to}");
    }
    // Work restored behind a hold that is not in the backup, or is no hold there, is held.
    let mut lone = shut.clone();
    apply(&mut lone, Edit::Remove(hold.clone()), &stamp(9)).unwrap();
    assert!(is_held(&restored(&lone, &[]), &work));
    // Evidence that was taken back since does not come back with an older backup.
    let opened_hold = Mark { id: hold.clone(), ..mark("hold", &evidence(), 5) };
    let mut open = shut.clone();
    let undo = apply(&mut open, Edit::Change(opened_hold), &stamp(6)).unwrap();
    let older = open.clone();
    assert!(!is_held(&restored(&older, &[]), &work), "whole evidence is worked anew, and opens");
    apply(&mut open, undo, &stamp(7)).unwrap();
    let back = restored(&older, std::slice::from_ref(&open));
    assert!(is_held(&back, &hold) && is_held(&back, &work));
}
