//! Laws that hold for every calculator and every input, made from its rows. A new calculator is
//! under them as soon as it stands in the catalog.

use ledgerboard_core::catalog::{self, Entry, Link, Worked};
use ledgerboard_core::edition::{Basis, Electrical};
use ledgerboard_core::fields::{Kind, without_evidence};
use ledgerboard_core::measure::Units;
use ledgerboard_core::sheet::{Ink, Standing, Surface, Value, Verdict};
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::{Amount, Arg, Language, Text, Voice};
use ledgerboard_tests::from_rows::wild;
use ledgerboard_tests::open_hold::open_for;
use ledgerboard_tests::placed::fitting_of;
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};
use std::cell::Cell;

fn bases() -> impl Iterator<Item = Basis> {
    [None].into_iter().chain(Electrical::ALL.map(Some)).map(|electrical| Basis { electrical })
}

/// A drawing is laid out for a phone of 320 px, less its margins.
const PAGE: f64 = 288.0;

fn nothing(amount: Amount) -> bool {
    amount.raw() == 0
}

fn below(amount: Amount) -> bool {
    amount.raw() < 0
}

fn check_sheet(worked: &Worked) {
    let sheet = &worked.sheet;
    for check in &sheet.checks {
        let margin = check.margin();
        match check.verdict {
            Verdict::Over => assert!(below(margin), "{}: over, with {margin:?} left", check.key),
            Verdict::Within => assert!(!below(margin), "{}: within, with {margin:?}", check.key),
            Verdict::Ask => assert!(check.note.is_some(), "{}: asks without a reason", check.key),
        }
        for units in [Units::Customary, Units::Metric] {
            let shown = margin.show(units, check.margin_rounding());
            let zero = shown.figure.bytes().all(|byte| !byte.is_ascii_digit() || byte == b'0');
            assert!(
                !zero || nothing(margin) || !below(margin),
                "{}: over shows no margin",
                check.key
            );
        }
    }
    for step in &sheet.working {
        assert!(step.expr.value().and_then(Value::amount).is_some(), "{} has no value", step.key);
    }
    let step = sheet.working.iter().rev().find(|step| step.key == sheet.headline.key);
    if let Some(step) = step {
        assert_eq!(step.expr.value().and_then(Value::amount), Some(sheet.headline.amount));
    }
    for source in sheet.sources() {
        for phrase in [&source.clause, source.says, source.seen] {
            assert!(!phrase.en.is_empty(), "{}", source.key);
        }
        let in_spanish = !source.clause.es.is_empty();
        assert!(in_spanish || is_a_publications_name(source.clause.en), "{}", source.clause.en);
    }
    if let Standing::Held(reasons) = &worked.standing {
        assert!(!reasons.is_empty(), "held without a reason");
        assert_ne!(worked.verdict(), Verdict::Within, "held, and called within");
    }
    assert!(!sheet.sources().is_empty(), "a sheet without a source");
    assert!(!sheet.cautions.is_empty(), "a sheet without a caution");
    check_drawing(worked);
    check_words(worked);
}

fn check_drawing(worked: &Worked) {
    let Some(drawing) = &worked.sheet.drawing else { return };
    assert!(!drawing.twin.is_empty(), "a drawing without its words");
    for ink in &drawing.ink {
        match ink {
            Ink::Dimension { from, to } => {
                assert!(from.x == to.x || from.y == to.y, "a dimension off level and plumb");
            }
            Ink::Path { surface: Surface::Hatched, means, .. } => {
                assert!(means.is_some(), "a hatch without its reason");
            }
            _ => {}
        }
    }
    let boxes = drawing.label_boxes(PAGE, Voice::default());
    for (at, one) in boxes.iter().enumerate() {
        let [left, top, right, bottom] = one.edges;
        assert!(left >= -0.5 && right <= PAGE + 0.5 && top >= -0.5, "{one:?} sticks out");
        for other in &boxes[at + 1..] {
            let [l, t, r, b] = other.edges;
            let apart = right <= l + 0.5 || r <= left + 0.5 || bottom <= t + 0.5 || b <= top + 0.5;
            assert!(apart, "{one:?} runs into {other:?}");
        }
    }
}

/// Everything that is said comes through the interpolator with nothing left open.
fn check_words(worked: &Worked) {
    let sheet = &worked.sheet;
    let mut all: Vec<&Text> = vec![&sheet.headline.name];
    all.extend(sheet.next.iter());
    all.extend(sheet.figures.iter().map(|figure| &figure.name));
    all.extend(
        sheet.checks.iter().flat_map(|check| [Some(&check.name), check.note.as_ref()]).flatten(),
    );
    let named =
        sheet.figures.iter().map(|it| &it.name).chain(sheet.checks.iter().map(|it| &it.name));
    for name in named.chain([&sheet.headline.name]) {
        assert!(!has_colon(name), "its value follows a colon: {}", name.phrase.en);
    }
    all.extend(sheet.working.iter().map(|step| &step.name));
    all.extend(
        sheet
            .parts
            .iter()
            .flat_map(|part| part.rows.iter().flat_map(|row| [&row.name, &row.value])),
    );
    for table in sheet.parts.iter().filter_map(|part| part.table.as_ref()) {
        all.extend(&table.heads);
        for row in &table.rows {
            assert_eq!(row.cells.len() + 1, table.heads.len(), "a cell under no head");
            all.push(&row.name);
            all.extend(&row.cells);
        }
    }
    all.extend(sheet.materials.iter().map(|material| &material.name));
    all.extend(sheet.cautions.iter().map(|caution| &caution.text));
    all.extend(sheet.drawing.iter().flat_map(|drawing| &drawing.twin));
    for text in all {
        let wanted = text.phrase.en.matches('{').count();
        assert!(wanted == 0 || !text.args.is_empty(), "{} misses its values", text.phrase.en);
        let said = Voice { language: Language::Pseudo, ..Voice::default() }.say(text);
        assert!(said.starts_with('⟦') && said.ends_with('⟧'), "{said}");
        assert!(!said.contains('{') || has_typed_brace(text), "{said}");
    }
}

/// Whether it begins with what a publication or who published it is called, in letters or numbers,
/// as in every language.
fn is_a_publications_name(clause: &str) -> bool {
    const BY_NAME: [&str; 4] = [
        "Building Science Corp. ",
        "Florida Building Code",
        "Handbook of Hydraulic",
        "Home Energy",
    ];
    let first = clause.split([' ', ',', '-']).next().unwrap_or_default();
    let is_short = first.len() > 1 && !first.contains(|it: char| it.is_ascii_lowercase());
    is_short || BY_NAME.iter().any(|name| clause.starts_with(name))
}

/// A colon of ours, not one that a person typed in a name.
fn has_colon(text: &Text) -> bool {
    let inner = |arg: &Arg| matches!(arg, Arg::Text(text) if has_colon(text));
    [text.phrase.en, text.phrase.es].iter().any(|it| it.contains(':'))
        || text.args.iter().any(inner)
}

/// A brace that a person typed, in a name of theirs, leaves nothing open.
fn has_typed_brace(text: &Text) -> bool {
    text.args.iter().any(|arg| match arg {
        Arg::Raw(raw) => raw.contains('{'),
        Arg::Text(text) => has_typed_brace(text),
        _ => false,
    })
}

/// The plan itself, once a hold for it is open.
fn check_behind_a_hold(entry: &Entry, input: &Node, basis: Basis) -> bool {
    let work = entry.disturbs(input, Units::Customary);
    let Some(hold) = work.and_then(|work| open_for(&work)) else { return false };
    let worked = entry.work_behind(input, Units::Customary, basis, Some(&hold)).unwrap();
    assert!(matches!(worked.standing, Standing::Opened(_)), "{}", entry.id);
    check_sheet(&worked);
    true
}

fn same_question_same_answer(entry: &Entry, input: &Node, basis: Basis, worked: &Worked) {
    let kept = entry.canonical(input, Units::Customary).expect("what works can be kept");
    for units in [Units::Customary, Units::Metric] {
        let again = entry.work(&kept, units, basis).expect("what was kept works");
        assert_eq!(&again, worked, "a kept input gives another answer");
        assert_eq!(entry.canonical(&kept, units).as_ref(), Ok(&kept), "keeping twice moves it");
    }
    let json = serde_json::to_string(&kept).unwrap();
    assert_eq!(serde_json::from_str::<Node>(&json).unwrap(), kept);
    let link = Link::new(entry.id, input.clone(), basis, Units::Customary);
    let back = Link::read(&link.write()).expect("an address of ours reads");
    assert!(!back.left_out, "an address of ours carries evidence");
    // All but the evidence comes back, and answers the same.
    let sent = without_evidence(entry.rows, input);
    let worked = &entry.work(&sent, Units::Customary, basis).expect("evidence may be missing");
    assert_eq!(&entry.work(&back.input, back.units, back.basis).unwrap(), worked);
}

#[test]
fn every_sample_is_answered_under_every_edition() {
    for entry in catalog::ALL {
        for basis in bases() {
            let worked = entry.work(&entry.sample(), Units::Customary, basis).unwrap();
            check_sheet(&worked);
            same_question_same_answer(entry, &entry.sample(), basis, &worked);
        }
    }
}

/// What may hurt is told before there is an answer. What a sample's sheet says first is among it,
/// or the sheet adds to it by its answer: then the second is.
#[test]
fn what_can_hurt_is_told_while_a_needed_field_waits() {
    for entry in catalog::ALL {
        let waiting = (entry.cautions)();
        assert!(!waiting.is_empty(), "{}: nothing told", entry.id);
        for (at, one) in waiting.iter().enumerate() {
            let says = Voice::default().say(&one.text);
            assert!(!says.is_empty() && !says.contains('{'), "{}: {says}", entry.id);
            assert!(!waiting[at + 1..].contains(one), "{}: {says}, twice", entry.id);
        }
        let worked = entry.work(&entry.sample(), Units::Customary, Basis::default()).unwrap();
        let told = worked.sheet.cautions.iter().take(2).any(|one| waiting.contains(one));
        assert!(told, "{}: waits with other words than it answers with", entry.id);
    }
    for id in ["return-path", "register-spots"] {
        let first = &(catalog::find(id).unwrap().cautions)()[0];
        let says = Voice::default().say(&first.text);
        assert!(says.contains("Carbon monoxide kills"), "{id}: {says}");
    }
}

#[test]
fn any_fitting_input_is_answered_or_refused_at_a_field() {
    for entry in catalog::ALL {
        let [tried, answered, behind] = [0_u32; 3].map(Cell::new);
        let mut runner = TestRunner::new(Config::with_cases(ledgerboard_tests::cases(entry, 400)));
        let inputs = (fitting_of(entry), prop::sample::select(bases().collect::<Vec<_>>()));
        runner
            .run(&inputs, |(input, basis)| {
                tried.set(tried.get() + 1);
                match entry.work(&input, Units::Customary, basis) {
                    Ok(worked) => {
                        answered.set(answered.get() + 1);
                        check_sheet(&worked);
                        behind.set(
                            behind.get() + u32::from(check_behind_a_hold(entry, &input, basis)),
                        );
                        same_question_same_answer(entry, &input, basis, &worked);
                    }
                    Err(faults) => {
                        prop_assert!(!faults.is_empty());
                        for fault in faults {
                            let says = Voice::default().say(&fault.says);
                            prop_assert!(!fault.path.is_empty() && !says.is_empty());
                        }
                    }
                }
                Ok(())
            })
            .unwrap();
        let share = f64::from(answered.get()) / f64::from(tried.get());
        println!("{}: {:.0} % of fitting inputs answered", entry.id, share * 100.0);
        assert!(share >= 0.2, "{}: too few inputs get as far as an answer", entry.id);
        let always_held = entry.disturbs(&entry.sample(), Units::Customary).is_some();
        assert!(!always_held || behind.get() > 0, "{}: no plan behind a hold", entry.id);
    }
}

#[test]
fn anything_typed_is_answered_or_refused() {
    for entry in catalog::ALL {
        let mut runner = TestRunner::new(Config::with_cases(ledgerboard_tests::cases(entry, 1000)));
        runner
            .run(&wild(entry.rows), |input| {
                for units in [Units::Customary, Units::Metric] {
                    if let Err(faults) = entry.work(&input, units, Basis::default()) {
                        prop_assert!(!faults.is_empty());
                    }
                }
                Ok(())
            })
            .unwrap();
    }
}

#[test]
fn any_line_at_the_batch_door_gets_one_line_back() {
    let mut runner = TestRunner::new(Config::with_cases(1000));
    let lines = prop_oneof![
        ".{0,60}",
        r#"\{"calculator":"[a-z-]{0,9}","input":\{"[a-z]{0,9}":[0-9"\[\]{}]{0,6}\}\}"#,
    ];
    runner
        .run(&lines, |line| {
            let answer = catalog::answer_line(&line);
            prop_assert!(!answer.contains('\n'));
            prop_assert!(serde_json::from_str::<serde_json::Value>(&answer).is_ok());
            Ok(())
        })
        .unwrap();
    let nested = "[".repeat(100_000);
    assert!(catalog::answer_line(&nested).contains("refused"), "deep nesting is refused");
}

/// A link compares what its figure said with what the input holds: one text for one amount.
#[test]
fn a_figure_that_is_taken_stands_in_the_input_as_it_was_said() {
    let mut seen = 0;
    for entry in catalog::ALL {
        for row in entry.rows {
            let (Some(zero), Some((least, most))) = (row.kind.zero(), bounds(row.kind)) else {
                continue;
            };
            let kept_of = |raw: i128| {
                let said = zero.of_same(raw).exact();
                let mut input = entry.sample();
                input.put(row.key, Node::text(&said));
                let kept = entry.canonical(&input, Units::Customary).ok()?;
                Some((said, kept.at(row.key).and_then(Node::leaf)?))
            };
            let (third, half) = (least + (most - least) / 3, least + (most - least) / 2);
            let (Some((said, kept)), Some((_, other))) = (kept_of(third), kept_of(half)) else {
                continue;
            };
            // What isn't asked as things stand is not kept.
            if kept != other {
                assert_eq!(kept, said, "{}: {}", entry.id, row.key);
                seen += 1;
            }
        }
    }
    assert!(seen > 40, "{seen}");
}

/// A row that takes a figure of a room by one tap names one that a room has, of its own kind.
#[test]
fn what_is_taken_of_a_whole_room_is_a_figure_of_it() {
    let room = catalog::ALL.iter().find(|entry| entry.is_room).unwrap();
    let mut input = room.sample();
    input.put("height_to_be", Node::text("9 ft"));
    input.put("outside", Node::List(vec![Node::Tree(vec![("wall".into(), Node::text("1"))])]));
    // Joists that run either way, and each shape's own sides, each under its own key.
    let shapes: [(&str, &[&str]); 4] = [
        ("rectangle", &[]),
        ("l", &["notch_long", "notch_wide"]),
        ("t", &["leg_long", "leg_wide"]),
        ("u", &["gap_long", "gap_deep"]),
    ];
    let mut rooms = Vec::new();
    for (shape, sides) in shapes {
        let mut input = input.clone();
        input.put("shape", Node::text(shape));
        for side in sides {
            input.put(side, Node::text("4 ft"));
        }
        for way in ["along", "across"] {
            input.put("framing.runs", Node::text(way));
            rooms.push(room.work(&input, Units::Customary, Basis::default()).unwrap().sheet);
        }
    }
    let mut figures = Vec::new();
    for sheet in &rooms {
        figures.push(&sheet.headline);
        figures.extend(&sheet.figures);
    }
    let mut seen = 0;
    for entry in catalog::ALL {
        for row in entry.rows.iter().filter(|row| !row.room.is_empty()) {
            let of = catalog::find(row.of);
            let sheet = of
                .map(|it| it.work(&it.sample(), Units::Customary, Basis::default()).unwrap().sheet);
            let figures = sheet.as_ref().map_or(figures.clone(), |it| it.figures.iter().collect());
            let figure = figures.iter().find(|figure| figure.key == row.room);
            let figure = figure.unwrap_or_else(|| panic!("{}: no {}", entry.id, row.room));
            let like = row.takes().expect("a quantity");
            assert!(figure.amount.is_like(like), "{}: {}", entry.id, row.key);
            seen += 1;
        }
    }
    assert!(seen > 8, "{seen}");
}

fn bounds(kind: Kind) -> Option<(i128, i128)> {
    let of = |least: Amount, most: Amount| Some((least.raw(), most.raw()));
    match kind {
        Kind::Length(span) => of(span.least.into(), span.most.into()),
        Kind::Area(span) => of(span.least.into(), span.most.into()),
        Kind::Volume(span) | Kind::Room(span) => of(span.least.into(), span.most.into()),
        Kind::Measure(span) => of(span.least.into(), span.most.into()),
        _ => None,
    }
}

/// A wall whose openings leave a sliver of board beside many other lengths: found by drawing inputs.
#[test]
fn a_wall_of_many_lengths_and_a_sliver_is_answered() {
    let line = r#"{"calculator":"boards","input":{"of":"wall","wall":"14524.071105 mm","high":"3 ft 6-7/16 in","gap":"10-11/16 in","openings":[{"from":"1048.834613 mm","wide":"4495.275652 mm","sill":"273.548367 mm","high":"187.652215 mm"}],"run":"square","spacing":"16 in","first":"3 ft 3-11/16 in","panel":"1/4","board":"both","stock":{"l8":"yes","l9":"yes","l10":"yes","l12":"yes","l14":"yes"},"least":"1312.029593 mm","spare":15,"want":"light"}}"#;
    let answer: serde_json::Value = serde_json::from_str(&catalog::answer_line(line)).unwrap();
    assert!(answer["sheet"]["answer"]["exact"].is_string(), "{answer}");
}
