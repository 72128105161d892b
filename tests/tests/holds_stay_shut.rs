//! Nothing but a hold's own evidence, on record in the job, opens what stands behind it: one test
//! a way round.

use ledgerboard_core::catalog::{self, Link, Worked};
use ledgerboard_core::edition::{Basis, Electrical};
use ledgerboard_core::fields::{evidence_in, is_evidence, without_evidence};
use ledgerboard_core::job::backup::{self, Written};
use ledgerboard_core::job::record::{self, Head};
use ledgerboard_core::job::{
    Edit, Job, Mark, Moment, Stamp, Survey, Works, apply, opened, opened_by,
};
use ledgerboard_core::measure::Units;
use ledgerboard_core::sheet::Standing;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::Voice;
use ledgerboard_tests::open_hold::evidence_for;

/// An invented wall in an invented house, with all that opens it.
const EVIDENCE: &str = r#"{
    "place": "Den, north wall", "material": "plaster", "deed": "cut", "area": "40 sq ft",
    "built": 1931,
    "report": {"result": "none-detected", "samples": 3, "lab": "Tamarack Lab",
        "number": "26-1184", "accreditation": "T-17", "dated": "2026-11-03", "sampled": "Den, three corners"},
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

/// Nobody measured what there is nothing of.
#[test]
fn a_hold_stays_shut_by_an_area_of_nothing() {
    for area in ["0", "0 sq ft", "0.0 m2", "", "1 in2"] {
        let mut input = evidence();
        input.put("area", Node::text(area));
        let (job, hold, work) = job(&input);
        assert_eq!(is_held(&job, &hold), area != "1 in2", "{area}");
        assert!(area == "1 in2" || is_held(&job, &work), "{area}");
    }
}

/// The evidence for one material is taken out where it is changed, and goes back only with it.
#[test]
fn a_hold_stays_shut_by_another_material_and_back() {
    let rows = catalog::find("hold").unwrap().rows;
    let mut input = evidence();
    let found = evidence_in(rows, &input);
    assert!(found.iter().all(|(path, _)| is_evidence(rows, path)));
    input = without_evidence(rows, &input);
    for material in ["texture", "board", "plaster"] {
        input.put("material", Node::text(material));
        let (job, hold, work) = job(&input);
        assert!(is_held(&job, &hold) && is_held(&job, &work), "{material}");
    }
    found.into_iter().for_each(|(path, part)| input.put(&path, part));
    let (job, hold, work) = job(&input);
    assert!(!is_held(&job, &hold) && !is_held(&job, &work));
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

/// The calculators whose plan stays out of sight while it is held.
const PLANS: [&str; 3] = ["stripping", "floor-cover", "three-ways"];

/// All that stands in the place of a plan that is held: what a bid needs.
fn has_no_plan(worked: &Worked) {
    assert!(worked.standing.is_held());
    let sheet = &worked.sheet;
    assert_eq!(sheet.headline.key, "area");
    let keys = |keys: Vec<&str>, known: &[&str]| {
        assert!(keys.iter().all(|key| known.contains(key)), "{keys:?}");
    };
    keys(sheet.figures.iter().map(|it| it.key).collect(), &["samples", "lab", "abatement"]);
    keys(sheet.working.iter().map(|it| &*it.key).collect(), &["samples", "lab"]);
    keys(sheet.parts.iter().map(|it| it.key).collect(), &["bid", "holds"]);
    assert!(sheet.checks.is_empty() && sheet.materials.is_empty() && sheet.next.is_none());
    assert!(sheet.drawing.is_none() && worked.flips.is_empty());
    assert!(sheet.parts.iter().any(|part| part.key == "bid"), "what a bid needs is there");
    // Nor in the words.
    let voice = Voice::default();
    let rows = sheet.parts.iter().flat_map(|part| &part.rows);
    let texts = rows.flat_map(|row| [&row.name, &row.value]);
    for text in texts.chain(sheet.cautions.iter().map(|it| &it.text)) {
        let said = voice.say(text).to_lowercase();
        for word in [
            "bag",
            "sprayer",
            "gal",
            "scrape as",
            "dump",
            "an hour",
            "fitted",
            "plastic",
            "vacuum and",
        ] {
            assert!(!said.contains(word), "{said}");
        }
    }
}

/// Its own sample, and a hold's evidence for it.
fn plan(calculator: &str) -> (Node, Node) {
    let entry = catalog::find(calculator).unwrap();
    let mut input = entry.sample();
    // Painted, so that paint is asked about too.
    input.put("painted", Node::text("yes"));
    let work = entry.disturbs(&input, Units::Customary).unwrap();
    (input, evidence_for(&work).unwrap())
}

/// A job with a hold of this input and each plan behind it.
fn planned(calculator: &str, change: &[(&str, &str)]) -> (Job, String, String) {
    let (input, mut evidence) = plan(calculator);
    change.iter().for_each(|(path, leaf)| evidence.put(path, Node::text(leaf)));
    let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
    let (hold, work) = (mark("hold", &evidence, 1), mark(calculator, &input, 2));
    let work = Mark { behind: Some(hold.id.clone()), ..work };
    let ids = (hold.id.clone(), work.id.clone());
    apply(&mut job, Edit::Keep(hold), &stamp(3)).unwrap();
    apply(&mut job, Edit::Keep(work), &stamp(4)).unwrap();
    (job, ids.0, ids.1)
}

/// What leaves each gate shut, one change from whole evidence.
const SHUT: [&[(&str, &str)]; 14] = [
    &[("report.result", "none-yet")],
    &[("report.result", "trace")],
    &[("report.result", "over")],
    &[("report.samples", "2")],
    &[("report.lab", "")],
    &[("report.dated", "")],
    &[("report.dated", "2026-11-07")],
    &[("material", "board")],
    &[("material", "vermiculite")],
    &[("deed", "sand")],
    &[("area", "191 ft2")],
    &[("paint.result", "found")],
    &[("paint.result", "none-yet"), ("paint.who", "owner")],
    &[("office.asks", "not-asked")],
];

#[test]
fn a_plan_is_shown_behind_its_own_open_hold_and_by_no_lesser_evidence() {
    for calculator in PLANS {
        let (job, _, work) = planned(calculator, &[]);
        let open = worked(&job, &work);
        assert!(matches!(open.standing, Standing::Opened(_)), "{calculator}");
        assert_ne!(open.sheet.headline.key, "area", "{calculator}");
        assert!(!open.sheet.checks.is_empty() && open.sheet.figures.len() > 4);
        for change in SHUT {
            let (job, _, work) = planned(calculator, change);
            has_no_plan(&worked(&job, &work));
        }
        // The same hold removed: shut at once.
        let (mut job, hold, work) = planned(calculator, &[]);
        apply(&mut job, Edit::Remove(hold), &stamp(5)).unwrap();
        has_no_plan(&worked(&job, &work));
    }
}

#[test]
fn a_plan_stays_shut_by_link() {
    for calculator in PLANS {
        let (input, _) = plan(calculator);
        let address = Link::new(calculator, input, Basis::default(), Units::Customary).write();
        let entry = catalog::find(calculator).unwrap();
        let link = Link::read(&address).unwrap();
        has_no_plan(&entry.work(&link.input, link.units, link.basis).unwrap());
        for claim in ["&behind=open", "&standing=opened", "&report.result=none-detected"] {
            let forged = Link::read(&[&*address, claim].concat()).unwrap();
            if let Ok(worked) = entry.work(&forged.input, forged.units, forged.basis) {
                has_no_plan(&worked);
            }
        }
    }
}

#[test]
fn a_plan_stays_shut_by_a_stored_record() {
    for calculator in PLANS {
        // Kept while it was open, then the result is taken back.
        let (mut job, hold, work) = planned(calculator, &[]);
        let (_, mut evidence) = plan(calculator);
        evidence.put("report.result", Node::text("none-yet"));
        let shut = Mark { id: hold, ..mark("hold", &evidence, 5) };
        apply(&mut job, Edit::Change(shut), &stamp(6)).unwrap();
        // And every word about how it stands rewritten.
        for mark in &mut job.marks {
            mark.kept.verdict = "within".into();
            mark.kept.figures.push(("standing".into(), "opened".into()));
        }
        let text = record::write(&job, &Head::new(1, "phone", 0));
        let (_, back) = record::read(&text).unwrap();
        has_no_plan(&worked(&back, &work));
        assert!(record::read(&text.replace("none-yet", "none-detected")).is_err());
    }
}

#[test]
fn a_plan_stays_shut_by_backup() {
    let written =
        Written { by: "Ledgerboard".into(), made: stamp(0).moment(), device: "phone".into() };
    for calculator in PLANS {
        let (job, hold, work) = planned(calculator, SHUT[0]);
        let mut lone = job.clone();
        apply(&mut lone, Edit::Remove(hold), &stamp(9)).unwrap();
        for there in [&job, &lone] {
            let mut jobs = Vec::new();
            let plan =
                backup::plan(backup::read(&backup::write([there], &written)).unwrap(), &jobs);
            backup::carry_out(&mut jobs, plan.into_steps(), &stamp(9)).unwrap();
            has_no_plan(&worked(&jobs[0], &work));
        }
    }
}

#[test]
fn a_plan_stays_shut_by_an_edition_change() {
    for calculator in PLANS {
        let (mut job, _, work) = planned(calculator, SHUT[0]);
        for edition in Electrical::ALL.map(Some).into_iter().chain([None]) {
            apply(&mut job, Edit::Basis(Basis { electrical: edition }), &stamp(6)).unwrap();
            has_no_plan(&worked(&job, &work));
        }
    }
}

/// The page and the paper are drawn from what a mark's working gives, and from nothing beside it.
#[test]
fn a_plan_stays_shut_by_print() {
    for calculator in PLANS {
        let (job, _, work) = planned(calculator, SHUT[1]);
        let survey = Survey::of(&job);
        has_no_plan(survey.worked(&work).unwrap().as_ref().unwrap());
        // Kept while it is held, a mark holds no plan either.
        let kept = &job.mark(&work).unwrap().kept;
        let (input, _) = plan(calculator);
        let held = mark(calculator, &input, 8).kept;
        assert!(kept.is_held() && held.is_held());
        assert!(kept.figures.iter().all(|(key, _)| ["samples", "lab"].contains(&&**key)));
    }
}

#[test]
fn a_plan_stays_shut_by_batch() {
    for calculator in PLANS {
        let (input, evidence) = plan(calculator);
        let asked = serde_json::json!({ "calculator": "hold", "input": evidence });
        assert!(catalog::answer_line(&asked.to_string()).contains("\"opened\""));
        let asked = serde_json::json!({ "calculator": calculator, "input": input });
        let entry = catalog::find(calculator).unwrap();
        for answer in [catalog::answer_line(&asked.to_string()), catalog::describe(entry)] {
            let answer: serde_json::Value = serde_json::from_str(&answer).unwrap();
            let sheet = &answer["sheet"];
            assert_eq!(sheet["standing"]["is"], "held", "{calculator}");
            assert_eq!(
                (&sheet["answer"]["key"], &sheet["verdict"]),
                (&"area".into(), &"over".into())
            );
            let count = |key: &str| sheet[key].as_array().unwrap().len();
            assert_eq!((count("checks"), count("materials"), count("drawing")), (0, 0, 0));
        }
    }
}

/// What a held plan would say can't be taken into another mark either.
#[test]
fn a_plan_stays_shut_by_a_link_between_marks() {
    for calculator in PLANS {
        let (job, _, work) = planned(calculator, SHUT[0]);
        let survey = Survey::of(&job);
        let offers = survey.all_offers("");
        let keys: Vec<_> = offers
            .iter()
            .filter(|offer| offer.mark.id == work)
            .map(|offer| offer.figure.key)
            .collect();
        assert!(keys.iter().all(|key| ["area", "samples", "lab"].contains(key)), "{keys:?}");
        for key in ["wet", "bags", "plastic", "fewest", "strip-hours"] {
            assert!(survey.figure(&work, key).is_none(), "{calculator} {key}");
        }
    }
}

/// Answers that a page keeps from one look to the next follow the hold, whatever becomes of it.
#[test]
fn a_kept_answer_shuts_with_its_hold() {
    let (mut job, hold, work) = job(&evidence());
    let mut works = Works::default();
    let is_held = |works: &mut Works, job: &Job| {
        works.survey(job).worked(&work).unwrap().as_ref().unwrap().standing.is_held()
    };
    assert!(!is_held(&mut works, &job));
    let shut = Mark { input: without_result(), ..job.mark(&hold).unwrap().clone() };
    let undo = apply(&mut job, Edit::Change(shut), &stamp(10)).unwrap();
    assert!(is_held(&mut works, &job));
    apply(&mut job, undo, &stamp(11)).unwrap();
    assert!(!is_held(&mut works, &job));
    // Put on record on a day before the evidence.
    let early = Moment { at: 1_793_000_000, zone: 0 };
    let dated = Mark { at: early, ..job.mark(&hold).unwrap().clone() };
    let undo = apply(&mut job, Edit::Change(dated), &stamp(12)).unwrap();
    assert!(is_held(&mut works, &job));
    apply(&mut job, undo, &stamp(13)).unwrap();
    assert!(!is_held(&mut works, &job));
    apply(&mut job, Edit::Remove(hold), &stamp(14)).unwrap();
    assert!(is_held(&mut works, &job));
}

/// What opens stripping opens no comparison: tearing out asks for more.
#[test]
fn a_plan_stays_shut_by_three_ways() {
    for (deed, opens) in [("strip", false), ("cover", false), ("cut", false), ("tear-out", true)] {
        let (job, hold, work) = planned("three-ways", &[("deed", deed)]);
        assert!(opened_by(&job, &hold).is_some(), "{deed}");
        if opens {
            assert!(!worked(&job, &work).standing.is_held());
        } else {
            has_no_plan(&worked(&job, &work));
        }
        // And the comparison's hold opens no stripping.
        let (job, _, work) = planned("stripping", &[("deed", deed)]);
        assert_eq!(worked(&job, &work).standing.is_held(), deed != "strip");
    }
    // Held, it still says which hold each way waits for.
    let (job, _, work) = planned("three-ways", SHUT[0]);
    let worked = worked(&job, &work);
    let holds = worked.sheet.parts.iter().find(|part| part.key == "holds").unwrap();
    assert_eq!(holds.rows.len(), 3);
}

/// A hold for minor paint work opens nothing where more paint may break, or nobody has looked.
#[test]
fn a_plan_stays_shut_by_minor_paint() {
    let minor = [
        ("paint.result", "none-yet"),
        ("paint.painted", "0 ft2"),
        ("paint.window", "no"),
        ("deed", "strip"),
    ];
    let (mut job, hold, work) = planned("stripping", &minor);
    assert!(opened_by(&job, &hold).is_some());
    has_no_plan(&worked(&job, &work));
    for (painted, held) in [("not-said", true), ("yes", true), ("no", false)] {
        let mut input = job.mark(&work).unwrap().input.clone();
        input.put("painted", Node::text(painted));
        let changed = Mark { input, ..job.mark(&work).unwrap().clone() };
        apply(&mut job, Edit::Change(changed), &stamp(9)).unwrap();
        assert_eq!(is_held(&job, &work), held, "{painted}");
    }
}

/// Boards over old plaster: their plan is out of sight until that hold is open.
#[test]
fn a_plan_of_boards_over_an_old_surface_stays_shut() {
    let entry = catalog::find("boards").unwrap();
    let mut input = entry.sample();
    input.put("over", Node::text("yes"));
    input.put("old", Node::text("plaster"));
    has_no_plan(&entry.work(&input, Units::Customary, Basis::default()).unwrap());
    let work = entry.disturbs(&input, Units::Customary).unwrap();
    assert_eq!(work.area, Some(ledgerboard_core::measure::Area::square_feet(192)));
    for (change, held) in [(None, false), (Some(("report.result", "none-yet")), true)] {
        let mut evidence = evidence_for(&work).unwrap();
        change.iter().for_each(|(path, leaf)| evidence.put(path, Node::text(leaf)));
        let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
        let (hold, boards) = (mark("hold", &evidence, 1), mark("boards", &input, 2));
        let boards = Mark { behind: Some(hold.id.clone()), ..boards };
        let id = boards.id.clone();
        apply(&mut job, Edit::Keep(hold), &stamp(3)).unwrap();
        apply(&mut job, Edit::Keep(boards), &stamp(4)).unwrap();
        let worked = worked(&job, &id);
        if held {
            has_no_plan(&worked);
        } else {
            assert!(!worked.standing.is_held());
            assert_eq!(worked.sheet.headline.key, "boards");
        }
    }
    // While it is looked for, too.
    let mut looking = entry.begin(&input, Units::Customary).unwrap();
    has_no_plan(&looking.worked(None).unwrap());
    looking.step();
    has_no_plan(&looking.worked(None).unwrap());
}
