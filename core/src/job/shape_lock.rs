//! What is written in people's phones must open for ever: the shapes of the record and of every
//! calculator's input stand in `core/shape.lock`, and a frozen fixture of each version in
//! `core/fixtures`. A shape that changes fails here until number, step and fixture move with it.

use super::mark::Mark;
use super::record::{self, Head, SCHEMA};
use super::samples;
use crate::catalog::{self, Entry};
use crate::edition::Electrical;
use crate::fields;
use crate::measure::Units;
use crate::wire::{Node, Parts};
use crate::words::Voice;
use serde_json::Value;
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

const REWRITE: &str = "LEDGERBOARD_REWRITE_LOCK";

const RECORD_CHANGED: &str = "The shape of a stored job changed and record::SCHEMA did not. Raise \
    SCHEMA, write the step from the shape before it in record.rs, then run the tests once with \
    LEDGERBOARD_REWRITE_LOCK=1: that writes core/shape.lock and the new fixture, and touches no \
    fixture that is there.";

const LOCK_DIFFERS: &str = "core/shape.lock is not what the code says. A stored input may no longer \
    fit: if so, raise the calculator's VERSION and write the step from the version before it. If \
    every old input still fits and means the same, the version may stay. Then run the tests once \
    with LEDGERBOARD_REWRITE_LOCK=1 and commit lock and fixtures with the change.";

const NO_FIXTURE: &str = "A version without a frozen fixture. Run the tests once with \
    LEDGERBOARD_REWRITE_LOCK=1 and commit the file; it is never written again.";

fn core(file: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join(file)
}

fn head() -> Head {
    Head::new(1, "fixture", 1_791_298_800)
}

/// Every leaf of a stored job with its kind, one a line, and the words that a leaf may be: an
/// older reader refuses one that it doesn't know. An input is the calculator's business, and a
/// clock's devices are not part of the shape.
fn record_shape() -> Vec<String> {
    let mut lines = BTreeSet::new();
    let job = serde_json::to_value(samples::job().stored()).unwrap();
    collect(&job, String::new(), &mut lines);
    let editions = Electrical::ALL.map(Electrical::key);
    let units = [Units::Customary, Units::Metric].map(Units::key);
    lines.insert("editions are ".to_owned() + &editions.join(" "));
    lines.insert("units are ".to_owned() + &units.join(" "));
    lines.into_iter().map(|line| ["record ", &SCHEMA.to_string(), " ", &line].concat()).collect()
}

fn collect(value: &Value, path: String, lines: &mut BTreeSet<String>) {
    let kind = match value {
        _ if path.ends_with(".input") => "any tree",
        _ if path.ends_with("clock") => "counts by device",
        Value::Object(parts) => {
            for (key, part) in parts {
                collect(part, [&path, ".", key].concat(), lines);
            }
            return;
        }
        Value::Array(items) => {
            for item in items {
                collect(item, path.clone() + "[]", lines);
            }
            return;
        }
        Value::Null => "nothing",
        Value::Bool(_) => "flag",
        Value::Number(_) => "whole",
        Value::String(_) => "text",
    };
    lines.insert([path.trim_start_matches('.'), " ", kind].concat());
}

/// A calculator's fields without their wording, one field of the form a line.
fn input_shape(entry: &Entry) -> Vec<String> {
    let Node::List(rows) = fields::describe(entry.rows, Voice::default()) else {
        panic!("fields are described as a list")
    };
    let line = |row: &Node| {
        let row = serde_json::to_string(&without_words(row)).unwrap();
        ["input ", entry.id, " ", &entry.version.to_string(), " ", &row].concat()
    };
    rows.iter().map(line).collect()
}

fn without_words(node: &Node) -> Node {
    match node {
        Node::Tree(parts) => Node::Tree(
            parts
                .iter()
                .filter(|(key, _)| !["label", "hint", "why", "aside"].contains(&key.as_str()))
                .map(|(key, part)| (key.clone(), without_words(part)))
                .collect(),
        ),
        Node::List(items) => Node::List(items.iter().map(without_words).collect()),
        leaf => leaf.clone(),
    }
}

fn lock() -> Vec<String> {
    let mut lines = record_shape();
    lines.extend(catalog::ALL.iter().flat_map(input_shape));
    lines
}

/// Writes a fixture that isn't there yet, if that is asked for.
fn fixture(file: &str, rewrite: bool, fresh: impl Fn() -> String) -> String {
    let path = core("fixtures").join(file);
    if rewrite && !path.exists() {
        fs::create_dir_all(core("fixtures")).unwrap();
        fs::write(&path, fresh()).unwrap();
    }
    fs::read_to_string(&path).unwrap_or_else(|_| panic!("{file}: {NO_FIXTURE}"))
}

/// The sample and the invented job's questions, as marks.
fn fresh_marks(entry: &Entry) -> String {
    let stamp = samples::stamp(0);
    let sample =
        Mark::new(entry, &entry.sample(), Units::Customary, <_>::default(), None, &stamp).unwrap();
    let mut marks = vec![sample];
    let demo = super::demo(Voice::default());
    marks.extend(demo.marks.into_iter().filter(|mark| mark.calculator == entry.id));
    let marks: Vec<Node> = marks.iter().map(Mark::stored).collect();
    serde_json::to_string_pretty(&marks).unwrap() + "\n"
}

/// Frozen marks as a job of their schema would give them today. Those of the first have no links.
fn of_this_schema(marks: Vec<Node>) -> Vec<Node> {
    let schema = if marks.iter().all(|mark| mark.get("ties").is_none()) { 1 } else { SCHEMA };
    let mut job = Node::EMPTY;
    job.put("marks", Node::List(marks));
    record::stepped(job, schema).items("marks").to_vec()
}

/// A frozen mark still works, and none of what was put in is lost or read as something else.
/// Its answer may have been corrected since; the answer of its day is in the mark.
fn opens(entry: &Entry, frozen: &Mark) {
    let name = [&frozen.calculator, " ", &frozen.version.to_string(), " ", &frozen.id].concat();
    assert_eq!(frozen.calculator, entry.id, "{name}");
    let worked = frozen.work(frozen.basis);
    assert!(worked.is_ok(), "{name} no longer works: {worked:?}. {LOCK_DIFFERS}");
    let today = entry.canonical(&frozen.input, Units::Customary).unwrap().leaves();
    for leaf in frozen.input.leaves() {
        assert!(today.contains(&leaf), "{name}: {leaf:?} is read as something else");
    }
}

#[test]
fn stored_shapes_move_only_with_their_version_step_and_fixture() {
    let rewrite = std::env::var_os(REWRITE).is_some();
    for schema in 1..=SCHEMA {
        let file = ["record-v", &schema.to_string(), ".txt"].concat();
        let text = fixture(&file, rewrite, || record::write(&samples::job(), &head()));
        let (read, job) = record::read(&text).unwrap_or_else(|problem| {
            panic!("{file} no longer opens: {problem:?}. {RECORD_CHANGED}")
        });
        assert_eq!(read, Head { schema, ..head() }, "{file}");
        // What a step makes of an older record is for the step's own test to say.
        if schema == SCHEMA {
            assert_eq!(job, samples::job(), "{file} holds samples::job as it was first written");
        }
    }
    for entry in catalog::ALL {
        for version in 1..=entry.version {
            let file = [entry.id, "-v", &version.to_string(), ".json"].concat();
            let text = fixture(&file, rewrite, || fresh_marks(entry));
            let frozen = of_this_schema(serde_json::from_str(&text).expect(&file));
            let frozen = frozen.into_iter().map(|mark| Parts::read(mark, Mark::restore));
            let frozen: Vec<Mark> = frozen.collect::<Result<_, _>>().expect(&file);
            assert!(!frozen.is_empty(), "{file} holds nothing");
            frozen.iter().for_each(|mark| opens(entry, mark));
        }
    }
    let path = core("shape.lock");
    let locked = fs::read_to_string(&path).unwrap_or_default();
    let locked: Vec<&str> = locked.lines().collect();
    let now = lock();
    let records = |prefix: &str| locked.iter().filter(|line| line.starts_with(prefix)).count();
    let this_schema = ["record ", &SCHEMA.to_string(), " "].concat();
    let same_record = record_shape().iter().all(|line| locked.contains(&line.as_str()))
        && records(&this_schema) == record_shape().len();
    // A lock that has this schema and another shape is never rewritten: records of that shape
    // may be in somebody's phone.
    assert!(same_record || records(&this_schema) == 0, "{RECORD_CHANGED}");
    if rewrite {
        fs::write(&path, now.join("\n") + "\n").unwrap();
        return;
    }
    assert_eq!(locked, now, "{LOCK_DIFFERS}");
}

/// A mark of an older version is read by the shape of today, as if it had just been kept. One that does
/// not fit stays as it was written.
#[test]
fn an_older_mark_is_read_by_the_shape_of_today_or_stays_as_it_is() {
    let text = fs::read_to_string(core("fixtures/trade-days-v1.json")).unwrap();
    let entry = catalog::find("trade-days").unwrap();
    assert!(entry.version > 1);
    let marks = of_this_schema(serde_json::from_str(&text).unwrap());
    for old in marks {
        let mark = Parts::read(old.clone(), Mark::restore).unwrap();
        assert_eq!(mark.version, entry.version);
        assert_eq!(entry.canonical(&mark.input, Units::Customary).as_ref(), Ok(&mark.input));
        assert_eq!(Parts::read(mark.stored(), Mark::restore).as_ref(), Ok(&mark), "read twice");
        let mut unfit = old;
        unfit.put("input.start", Node::text("some day"));
        let mark = Parts::read(unfit.clone(), Mark::restore).unwrap();
        assert_eq!((mark.version, Some(&mark.input)), (1, unfit.get("input")));
        assert!(mark.work(mark.basis).is_err());
    }
}

#[test]
fn a_kept_box_fill_takes_a_kilobyte_at_most() {
    let entry = catalog::find("box-fill").unwrap();
    let stamp = samples::stamp(0);
    let mark =
        Mark::new(entry, &entry.sample(), Units::Customary, <_>::default(), None, &stamp).unwrap();
    let mark = Mark { title: "Switch by the door".into(), spot: "Den".into(), ..mark };
    let bytes = serde_json::to_string(&mark.stored()).unwrap().len();
    assert!(bytes <= 1_024, "{bytes} bytes");
}
