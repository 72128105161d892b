//! A field that feeds only a check of its own never hides the answer: what can't be read in it
//! leaves that check out, and is told.

use ledgerboard_core::catalog::{self, Worked, answer_line};
use ledgerboard_core::edition::{Basis, Electrical};
use ledgerboard_core::fields::{Kind, Row};
use ledgerboard_core::measure::Units;
use ledgerboard_core::sheet::Verdict;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::{Amount, Voice};
use ledgerboard_tests::placed::fitting_of;
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};

/// Nothing that any quantity is read from, and one that no field has room for.
const JUNK: [&str; 4] = ["18..0", "deep", "1e9", "-1"];

/// The places of all rows of `rows` that stand aside and are asked in `root`.
fn aside(rows: &'static [Row], here: &Node, root: &Node, path: &str, out: &mut Vec<String>) {
    for row in rows {
        let place = if path.is_empty() { row.key.to_owned() } else { [path, row.key].join(".") };
        match row.kind {
            Kind::Group(rows) => {
                if let Some(here) = here.get(row.key) {
                    aside(rows, here, root, &place, out);
                }
            }
            Kind::List(item) => {
                for (at, each) in here.items(row.key).iter().enumerate() {
                    aside(item.rows, each, root, &[&place, ".", &at.to_string()].concat(), out);
                }
            }
            _ if row.aside && row.when.holds(rows, here, root) => out.push(place),
            _ => {}
        }
    }
}

#[test]
fn a_faulty_row_that_stands_aside_gives_the_sheet_of_an_empty_one_and_its_fault() {
    let bases = [None, Some(Electrical::E2017), Some(Electrical::E2026)];
    for entry in catalog::ALL {
        let mut runner = TestRunner::new(Config::with_cases(ledgerboard_tests::cases(entry, 300)));
        let cases = (
            fitting_of(entry),
            prop::sample::select(bases.to_vec()),
            any::<prop::sample::Index>(),
            prop::sample::select(JUNK.to_vec()),
        );
        runner
            .run(&cases, |(good, electrical, which, junk)| {
                let mut places = Vec::new();
                aside(entry.rows, &good, &good, "", &mut places);
                if places.is_empty() {
                    return Ok(());
                }
                let place = which.get(&places);
                let with = |text: &str| {
                    let mut changed = good.clone();
                    changed.put(place, Node::text(text));
                    entry.work(&changed, Units::Customary, Basis { electrical })
                };
                let (Ok(empty), Ok(worked)) = (with(""), with(junk)) else {
                    // Another field refuses the whole; then this one is told beside it.
                    let faults = with(junk).unwrap_err();
                    prop_assert!(with("").is_err());
                    prop_assert!(faults.iter().any(|fault| &fault.path == place));
                    return Ok(());
                };
                prop_assert_eq!(&empty.sheet, &worked.sheet);
                prop_assert_eq!((&empty.flips, empty.edition), (&worked.flips, worked.edition));
                // Rows that nobody can count yet are told in both.
                let mut told: Vec<_> =
                    worked.left_out.iter().map(|it| (&it.path, &*it.given)).collect();
                for it in &empty.left_out {
                    let at = told.iter().position(|other| *other == (&it.path, &*it.given));
                    told.remove(at.expect("what can't be counted is told in both"));
                }
                prop_assert_eq!(told, [(place, junk)]);
                // What could not be read never makes a box look emptier.
                let as_typed = entry.work(&good, Units::Customary, Basis { electrical }).unwrap();
                if let (Amount::Volume(fill), Amount::Volume(without)) =
                    (as_typed.sheet.headline.amount, worked.sheet.headline.amount)
                {
                    prop_assert!(without >= fill);
                }
                Ok(())
            })
            .unwrap();
    }
}

#[test]
fn a_slip_in_a_depth_leaves_the_fill_standing_and_one_in_the_volume_does_not() {
    let line =
        |input: &str| answer_line(&format!(r#"{{"calculator":"box-fill","input":{input}}}"#));
    let told = line(r#"{"marked":"18","depth":"2..5","cables":[{}],"devices":[{"behind":"x"}]}"#);
    let answer: serde_json::Value = serde_json::from_str(&told).unwrap();
    assert_eq!(answer["sheet"]["answer"]["exact"], "10.0 in3");
    assert_eq!(answer["left_out"][0]["field"], "devices.0.behind");
    assert_eq!(answer["left_out"][1]["field"], "depth");
    let keys = answer["sheet"]["checks"].as_array().unwrap().iter().map(|check| &check["key"]);
    assert_eq!(keys.collect::<Vec<_>>(), ["fill"]);
    let refused: serde_json::Value =
        serde_json::from_str(&line(r#"{"marked":"18..0","depth":"2..5"}"#)).unwrap();
    assert_eq!(refused["faults"].as_array().unwrap().len(), 2);
    assert!(!line(r#"{"marked":"18"}"#).contains("left_out"));
}

/// A plan stands with a length that can't be read, tells it at its field, keeps it as it was typed, and is
/// never within, kept or not. By hand, the sample: from K1 to K2 a cable rises 58 in to 102, goes 48 along
/// and comes down 58: 164 in by the boxes' places, which are not to be taken for what was measured.
#[test]
fn a_length_that_can_not_be_read_leaves_its_cable_without_one() {
    let entry = catalog::find("rough-in").unwrap();
    let work = |input: &Node| entry.work(input, Units::Customary, Basis::default()).unwrap();
    let check = |worked: &Worked, key: &str| {
        worked.sheet.checks.iter().find(|check| check.key == key).unwrap().clone()
    };
    let sample = entry.sample();
    let whole = work(&sample);
    for typed in ["14 f..", "501 ft", "no idea"] {
        let mut input = sample.clone();
        input.put("cables.1.length", Node::text(typed));
        let worked = work(&input);
        let told: Vec<_> = worked.left_out.iter().map(|it| (&*it.path, &*it.given)).collect();
        assert_eq!(told, [("cables.1.length", typed)]);
        assert_ne!(worked.verdict(), Verdict::Within, "{typed}");
        assert_eq!(check(&worked, "uncounted").value, Amount::Count(1));
        let note = check(&worked, "lengths").note.unwrap();
        assert!(Voice::default().say(&note).contains("K1 → K2"));
        // What it fills is counted all the same.
        assert_eq!(check(&worked, "fill-K1"), check(&whole, "fill-K1"));
        let kept = entry.canonical(&input, Units::Customary).unwrap();
        assert_eq!(kept.at("cables.1.length"), Some(&Node::text(typed)), "kept as typed");
        assert_eq!(work(&kept), worked);
        let metric = entry.work(&input, Units::Metric, Basis::default()).unwrap();
        assert_eq!(metric.sheet, worked.sheet);
    }
    let mut input = sample;
    input.put("cables.1.length", Node::text("164"));
    assert_eq!(work(&input).sheet, whole.sheet, "as by its places");
    assert!(work(&input).left_out.is_empty());
}

/// How a loop counts hangs on where the sheath ends, so that this is no row that stands aside.
#[test]
fn what_the_fill_hangs_on_refuses_the_whole() {
    for field in ["free.emerges", "wires.0.loop_length", "marked"] {
        let mut input = Node::from_json(r#"{"marked":"18","wires":[{"how":"looped"}]}"#).unwrap();
        input.put(field, Node::text("1 stone"));
        let entry = catalog::find("box-fill").unwrap();
        let faults = entry.work(&input, Units::Customary, Basis::default()).unwrap_err();
        assert_eq!(faults[0].path, field);
    }
}
