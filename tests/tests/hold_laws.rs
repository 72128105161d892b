//! Laws of the hold: no blank opens it, no piece of evidence can be spared, and nothing but a
//! whole set of evidence with none detected opens it.

use ledgerboard_core::calculators::hold::{
    Asbestos, Input, Lead, Local, Opened, Who, Window, solve,
};
use ledgerboard_core::catalog::{self, Link};
use ledgerboard_core::edition::{Basis, Electrical};
use ledgerboard_core::fields::{Form, Reader};
use ledgerboard_core::measure::{Area, Day, Length, Units};
use ledgerboard_core::rules::hazards::{Deed, Material};
use ledgerboard_core::wire::Node;
use ledgerboard_tests::from_rows::fitting;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};

/// An invented ceiling in an invented house, with all that opens it.
const WHOLE: &str = r#"{
    "place": "Den ceiling", "material": "texture", "deed": "strip", "area": "200 sq ft",
    "built": 1962,
    "report": {"result": "none-detected", "samples": 7, "lab": "Tamarack Lab",
        "number": "26-1184", "accreditation": "T-17", "dated": "2026-11-03", "sampled": "Den, three corners"},
    "paint": {"painted": "90 sq ft", "window": "no", "result": "no-lead", "tester": "R. Vale",
        "tested": "2026-11-02"},
    "building": {"dwellings": 1},
    "office": {"asks": "nothing-stricter", "says": "County desk, Nov 4"}
}"#;

fn whole() -> Node {
    serde_json::from_str(WHOLE).unwrap()
}

fn read(node: &Node) -> Option<Input> {
    Reader::form(node, Units::Customary).ok().map(|(input, _)| input)
}

fn opened(node: &Node) -> Option<Opened> {
    catalog::find("hold").unwrap().opened(node, Units::Customary, Basis::default())
}

/// The same tree without the leaf at a path.
fn without(node: &Node, path: &str) -> Node {
    let (key, rest) = path.split_once('.').unwrap_or((path, ""));
    let Node::Tree(parts) = node else { return node.clone() };
    let parts = parts.iter().filter(|(name, _)| name != key || !rest.is_empty());
    let parts = parts.map(|(name, part)| {
        let part = if name == key { without(part, rest) } else { part.clone() };
        (name.clone(), part)
    });
    Node::Tree(parts.collect())
}

/// The whole set with some leaves taken from anything that fits: near enough to open that a rule
/// left out would show.
fn near() -> impl Strategy<Value = Node> {
    let picks = vec(prop::bool::weighted(0.12), 40);
    (fitting(Input::ROWS), picks, fitting(Input::ROWS)).prop_map(|(other, picks, third)| {
        let mut node = read(&whole()).unwrap().write_parts();
        let leaves = [other.leaves(), third.leaves()].concat();
        for ((path, leaf), pick) in leaves.into_iter().zip(picks.iter().cycle()) {
            if *pick && let Some(leaf) = leaf {
                node.put(&path, Node::Text(leaf));
            }
        }
        node
    })
}

#[test]
fn any_one_piece_of_evidence_is_needed() {
    assert!(opened(&whole()).is_some());
    let spared: Vec<String> = whole()
        .leaves()
        .into_iter()
        .map(|(path, _)| path)
        .filter(|path| opened(&without(&whole(), path)).is_some())
        .collect();
    // The paint was tested, so that how much of it is broken opens and shuts nothing; and the
    // notice is about asbestos that is there.
    assert_eq!(spared, ["paint.painted", "paint.window", "building.dwellings"]);
}

#[test]
fn no_blank_opens_what_is_shut() {
    let mut runner = TestRunner::new(Config::with_cases(1500));
    let shut = std::cell::Cell::new(0);
    runner
        .run(&near(), |node| {
            if read(&node).is_none() || opened(&node).is_some() {
                return Ok(());
            }
            shut.set(shut.get() + 1);
            // Left blank, a later year says that the material is as old as the house.
            for (path, _) in node.leaves().into_iter().filter(|(path, _)| path != "put_up") {
                let blank = without(&node, &path);
                prop_assert!(opened(&blank).is_none(), "a blank {path} opens {node:?}");
            }
            Ok(())
        })
        .unwrap();
    assert!(shut.get() > 150, "only {} were shut", shut.get());
}

/// What 40 CFR 763.86(a) and 745.83 ask, written out a second time and apart from the rules.
fn may_open(input: &Input) -> bool {
    let report = &input.report;
    let feet = |count: i64| Area::square_feet(count);
    let area = input.area.unwrap_or(feet(99_999));
    let samples = 3 + 2 * i64::from(area > feet(1000)) + 2 * i64::from(area > feet(5000));
    // Marks of other scripts count as words, dashes and signs don't.
    let sign = |sign: char| sign < 'À' || matches!(sign, '\u{2000}'..='\u{2bff}');
    let says = |text: &str| text.chars().any(|it| it.is_ascii_alphanumeric() || !sign(it));
    let minor = feet(if input.paint.outside { 20 } else { 6 });
    let paint = &input.paint;
    let untouched = paint.painted == Some(Area::ZERO) && paint.window == Window::No;
    let small = paint.painted.is_some_and(|painted| painted <= minor)
        && paint.window == Window::No
        && input.deed != Deed::TearOut;
    let since = i64::max(input.built.unwrap_or(0), input.put_up.unwrap_or(0));
    let fits = |day: Day| i64::from(day.year()) >= since;
    let tested =
        paint.result == Lead::NoLead && says(&paint.tester) && paint.tested.is_some_and(fits);
    let is_old = input.built.is_none_or(|year| year < 1978);
    report.result == Asbestos::NoneDetected
        && report.samples.is_some_and(|taken| taken >= samples)
        && says(&report.lab)
        && says(&report.number)
        && says(&report.accreditation)
        && report.dated.is_some_and(fits)
        && says(&report.sampled)
        && says(&input.place)
        && !matches!(input.material, Material::NotSaid | Material::Vermiculite)
        && (input.material != Material::Wrap || input.pipe > Some(Length::ZERO))
        && input.deed != Deed::NotSaid
        && input.area > Some(Area::ZERO)
        && input.built.is_some()
        && (!is_old || tested || paint.who == Who::Certified || small || untouched)
        && says(&input.office.says)
        && match input.office.asks {
            Local::NotAsked => false,
            Local::NothingStricter => true,
            Local::Stricter => input.office.met,
        }
}

#[test]
fn a_hold_opens_on_its_whole_evidence_and_on_nothing_else() {
    let mut runner = TestRunner::new(Config::with_cases(4000));
    let (open, shut) = (std::cell::Cell::new(0), std::cell::Cell::new(0));
    runner
        .run(&near(), |node| {
            let Some(input) = read(&node) else { return Ok(()) };
            let is_open = solve(&input).opened.is_some();
            let count = if is_open { &open } else { &shut };
            count.set(count.get() + 1);
            prop_assert_eq!(is_open, may_open(&input), "{:?}", input);
            Ok(())
        })
        .unwrap();
    assert!(open.get() > 40 && shut.get() > 400, "{} open, {} shut", open.get(), shut.get());
}

#[test]
fn no_address_opens_a_hold() {
    let mut runner = TestRunner::new(Config::with_cases(600));
    runner
        .run(&near(), |node| {
            let link = Link::new("hold", node.clone(), Basis::default(), Units::Customary);
            let back = Link::read(&link.write()).unwrap();
            prop_assert!(opened(&back.input).is_none());
            // One made by hand, evidence and all.
            let mut by_hand = "hold?".to_owned();
            for (path, leaf) in whole().leaves() {
                let leaf = leaf.unwrap_or_default().replace(' ', "%20").replace(',', "%2C");
                by_hand += &format!("{path}={leaf}&");
            }
            let back = Link::read(&by_hand).unwrap();
            prop_assert!(back.left_out && opened(&back.input).is_none());
            Ok(())
        })
        .unwrap();
}

#[test]
fn no_edition_changes_a_hold() {
    let hold = catalog::find("hold").unwrap();
    for node in [Node::EMPTY, whole()] {
        let work = |basis| hold.work(&node, Units::Customary, basis).unwrap();
        let plain = work(Basis::default());
        for edition in Electrical::ALL {
            assert_eq!(work(Basis { electrical: Some(edition) }), plain);
        }
    }
}

#[test]
fn a_length_of_pipe_is_asked_for_on_wraps_alone() {
    let mut node = whole();
    node.put("material", Node::text("wrap"));
    assert!(opened(&node).is_none());
    node.put("pipe", Node::Text(Length::inches(600, 1).exact()));
    assert!(opened(&node).is_some());
}
