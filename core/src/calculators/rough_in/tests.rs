//! An invented kitchen and dining room by hand, what is refused, and laws of the parts.

use super::labels::{Index, known_as, ordered};
use super::rolls::rolls;
use super::*;
use crate::fields::{
    Form, Reader, Rename, Typed, ahead, hanging, names, narrowed, toggled, without_evidence,
};
use crate::measure::{Day, Length, Measure, Units, Volume, unit};
use crate::rules::electrical::cable_sizes::Sheathed;
use crate::say;
use crate::sheet::{Ink, SCREEN_ONLY, Sheet, Value, Verdict};
use crate::wire::Node;
use crate::words::{Amount, Text, Voice};
use proptest::prelude::*;

const E2023: Electrical = Electrical::E2023;

fn inches(count: i64) -> Option<Length> {
    Some(Length::inches(count, 1))
}

fn placed(label: &str, what: What, place: [i64; 2], high: Option<i64>, volume: i64) -> PlacedBox {
    PlacedBox {
        label: label.to_owned(),
        what,
        mount: if high.is_some() { Mount::Wall } else { Mount::Ceiling },
        high: high.and_then(inches),
        x: inches(place[0]),
        y: inches(place[1]),
        marked: (volume > 0).then_some(Volume::hundredths(volume)),
        ..PlacedBox::blank()
    }
}

fn run(from: &str, to: &str, cable: Cable, circuit: &str, tenths: i64) -> Run {
    let load = Measure::hundredths(&unit::AMPERE, tenths * 10);
    Run {
        from: from.to_owned(),
        to: to.to_owned(),
        cable,
        circuit: circuit.to_owned(),
        load: (tenths > 0).then_some(load),
        ..Run::blank()
    }
}

/// Invented: a kitchen that opens into a dining room, 20 by 12 ft, ceiling at 8 ft, cables 6 in over
/// it. Two counter circuits of 20 A and one of lights of 15 A.
fn tollgate_row() -> Input {
    use Cable::{Nm12x2, Nm14x2, Thermostat};
    use What::{Light, Panel, Receptacle, Switch};
    let amperes = |count| Some(Measure::whole(&unit::AMPERE, count));
    let holes = |of: Run, labels: &str| Run { holes: labels.to_owned(), ..of };
    let feeds = |of: Run, what: &str| Run { feeds: what.to_owned(), ..of };
    let coil = |of: Run, at: &str, long: i64| Run {
        coiled: at.to_owned(),
        length: inches(long).into(),
        ..of
    };
    Input {
        boxes: vec![
            placed("PANEL", Panel, [0, 144], Some(60), 0),
            placed("K1", Receptacle, [48, 0], Some(44), 2250),
            placed("K2", Receptacle, [96, 0], Some(44), 2250),
            placed("K3", Receptacle, [144, 0], Some(44), 2250),
            placed("K4", Receptacle, [192, 0], Some(44), 1800),
            placed("K5", Switch, [24, 144], Some(48), 1800),
            placed("K6", Light, [96, 72], None, 1550),
            placed("D1", Receptacle, [240, 60], Some(16), 1400),
            placed("D2", Receptacle, [240, 120], Some(16), 1800),
            placed("D3", Switch, [216, 144], Some(48), 2030),
            placed("D4", Light, [204, 72], None, 1550),
        ],
        cables: vec![
            Run {
                breaker: amperes(20),
                ..feeds(holes(run("PANEL", "K1", Nm12x2, "1", 0), "P1"), "counter, left")
            },
            feeds(run("K1", "K2", Nm12x2, "1", 100), "counter, left"),
            Run {
                breaker: amperes(20),
                ..feeds(holes(run("PANEL", "K3", Nm12x2, "2", 80), "P1"), "counter, right")
            },
            feeds(run("K3", "K4", Nm12x2, "2", 60), "counter, right"),
            feeds(run("K4", "D1", Nm12x2, "2", 30), "dining, wall"),
            feeds(run("D2", "D1", Nm12x2, "2", 10), "dining, wall"),
            Run {
                breaker: amperes(15),
                ..feeds(holes(run("PANEL", "K5", Nm14x2, "3", 0), "P1 P2"), "lights")
            },
            feeds(run("K5", "K6", Nm14x2, "3", 20), "kitchen light"),
            feeds(run("K5", "D3", Nm14x2, "3", 0), "lights, on"),
            feeds(run("D3", "D4", Nm14x2, "3", 15), "dining light"),
            coil(holes(run("PANEL", "", Nm12x2, "4", 0), "P1"), "attic over K6", 240),
            coil(holes(run("D2", "", Thermostat, "", 0), "P2"), "hall", 360),
        ],
        bit: Some(Length::inches(1, 1)),
        ..Input::blank()
    }
}

fn shown(input: &Input) -> (Answer, Sheet) {
    let answer = solve(input, E2023);
    let sheet = RoughIn::sheet(input, &answer, Basis::default());
    (answer, sheet)
}

/// The cells of a cable's row in the schedule.
fn scheduled(sheet: &Sheet, name: &str) -> Vec<String> {
    let voice = Voice::default();
    let part = sheet.parts.iter().find(|part| part.key == "schedule").unwrap();
    let rows = &part.table.as_ref().unwrap().rows;
    let row = rows.iter().find(|row| voice.say(&row.name) == name);
    row.unwrap_or_else(|| panic!("{name}")).cells.iter().map(|cell| voice.say(cell)).collect()
}

fn check<'a>(sheet: &'a Sheet, key: &str) -> &'a crate::sheet::Check {
    sheet.checks.iter().find(|check| check.key == key).unwrap_or_else(|| panic!("{key}"))
}

/// A cable's cut by hand: its way and a tenth of it, up to the next sixteenth, and what is given at
/// its ends.
fn cut(way: i64, ends: i64) -> Length {
    Length::inches((way * 16 * 11 + 9) / 10, 16).plus(Length::inches(ends, 1))
}

/// The same as it is cut: up to the whole inch.
fn to_cut(way: i64, ends: i64) -> i64 {
    (way * 11 + 9) / 10 + ends
}

/// Ways by hand, with cables crossing 102 in up: 42 in from the panel, 58 from a counter, 54 from a
/// switch, 86 from a receptacle at 16 in, 6 from a light.
#[rustfmt::skip]
const WAYS: [(i64, i64); 12] = [
    // way, what is given at both ends
    (42 + 48 + 144 + 58,  72 + 12),
    (58 + 48 + 58,        12 + 12),
    (42 + 144 + 144 + 58, 72 + 12),
    (58 + 48 + 58,        12 + 12),
    (58 + 48 + 60 + 86,   12 + 12),
    (86 + 60 + 86,        12 + 12),
    (42 + 24 + 54,        72 + 12),
    (54 + 72 + 72 + 6,    12 + 24),
    (54 + 192 + 54,       12 + 12),
    (54 + 12 + 72 + 6,    12 + 24),
    (240,                 72),
    (360,                 12),
];

#[test]
fn a_kitchen_comes_out_as_by_hand() {
    let input = tollgate_row();
    let (answer, sheet) = shown(&input);
    for (laid, (way, ends)) in answer.cables.iter().zip(WAYS) {
        assert_eq!((laid.way, laid.cut), (inches(way), Some(cut(way, ends))));
    }
    // Two 12-2 and a device: 9.0 + 4.5 + 2.25. D1 holds 14.0. Three 14-2 and a switch: 12 + 4 + 2.
    for (key, fill, verdict) in [
        ("fill-K1", 1575, Verdict::Within),
        ("fill-K2", 1125, Verdict::Within),
        ("fill-K4", 1575, Verdict::Within),
        ("fill-K5", 1800, Verdict::Within),
        ("fill-K6", 600, Verdict::Within),
        ("fill-D1", 1575, Verdict::Over),
        ("fill-D2", 1125, Verdict::Within),
        ("fill-D3", 1400, Verdict::Within),
    ] {
        let check = check(&sheet, key);
        let fill = Amount::Volume(Volume::hundredths(fill));
        assert_eq!((check.value, check.verdict), (fill, verdict), "{key}");
    }
    assert_eq!(sheet.headline.amount, Amount::Count(1));
    let voice = Voice::default();
    let name = voice.say(&sheet.headline.name);
    assert_eq!(name, "Over their limit, of 11 boxes, 4 circuits and 2 holes");
    let next = voice.say(sheet.next.as_ref().unwrap());
    assert!(next.starts_with("D1 is over by 1.75 in³"), "{next}");
    // 54 in apart, 12 in from the panel and from lights, 8 in from one-gang boxes without clamps,
    // ⌈(way − both) ÷ 54⌉ + 1: 292 − 20 → 7, 164 − 16 → 4, 388 − 20 → 8, 4, 252 − 16 → 6,
    // 232 − 16 → 5, 120 − 20 → 3, 204 − 20 → 5, 300 − 16 → 7, 144 − 20 → 4, 240 − 24 → 5.
    let staples = [7, 4, 8, 4, 6, 5, 3, 5, 7, 4, 5, 0];
    let ours: Vec<i64> = answer.cables.iter().map(|laid| laid.staples).collect();
    assert_eq!(ours, staples);
    assert_eq!(answer.staples, 58);
    for (key, from, source) in
        [("staple-single", 8, "nec-314.17"), ("staple-clamped", 12, "nec-334.30")]
    {
        let step = sheet.working.iter().find(|step| step.key == key).unwrap();
        let told = step.expr.value().and_then(Value::amount);
        assert_eq!(told, Some(Amount::Length(Length::inches(from, 1))));
        assert_eq!(step.source.map(|it| it.key), Some(source));
    }
}

/// What an electrician is handed: every box with its place and fill, every cable with its breaker,
/// every circuit with its load and loss.
#[test]
fn the_lists_tell_places_breakers_and_losses() {
    let (_, sheet) = shown(&tollgate_row());
    let said = |key: &str, name: &str| {
        let part = sheet.parts.iter().find(|part| part.key == key).unwrap();
        let voice = Voice::default();
        let row = part.rows.iter().find(|row| voice.say(&row.name) == name);
        voice.say(&row.unwrap_or_else(|| panic!("{name}")).value)
    };
    assert_eq!(said("boxes", "K1 Receptacle"), "15.75 of 22.5 in³, 2 cables: within");
    assert_eq!(
        said("places", "K1 Receptacle"),
        "3 ft 8 in off the floor | 4 ft from the left, 0 in from the back"
    );
    assert!(said("places", "K6 Light").starts_with("Overhead | 8 ft from the left, 6 ft "));
    // By hand, up to the whole inch: 292 × 1.1 = 321.2, up to 321-1/4, and 84 are 33 ft 9-1/4 in; 360 ×
    // 1.1 and 12 are 34 ft.
    for (name, cells) in [
        ("PANEL → K1: counter, left", ["1, 20 A", "12-2", "33 ft 10 in", "P1"]),
        ("PANEL → K5: lights", ["3, 15 A", "14-2", "18 ft", "P1 P2"]),
        ("D2 → coiled: hall", ["–", "Thermostat", "34 ft", "P2"]),
    ] {
        assert_eq!(scheduled(&sheet, name), cells, "{name}");
    }
    let circuit = said("circuits", "Circuit 2, 20 A");
    assert!(circuit.contains("feeds 18 A, loses "), "{circuit}");
    assert!(circuit.contains("at D2. Past the 3 % that is advised"), "{circuit}");
    assert!(!said("circuits", "Circuit 1, 20 A").contains("advised"));
    // 0.335 × 0.161 in each of 14-2 and 12-2, as `cable_sizes` reads them, is what the hole's row tells.
    let hole = said("holes", "P1");
    let through = "1 in bit | PANEL → K1 (1), PANEL → K3 (2), PANEL → K5 (3), \
        PANEL → coiled: attic over K6 (4) | ";
    assert!(hole.starts_with(through), "{hole}");
    assert!(hole.ends_with(" taken | each carries 70 % of its table value"), "{hole}");
    // The exact cut stays in the working.
    let step = sheet.working.iter().find(|step| step.key == "cut-1").unwrap();
    let cut = step.expr.value().and_then(Value::amount);
    assert_eq!(cut, Some(Amount::Length(Length::inches(405 * 4 + 1, 4))));
}

/// By hand, ends included: 2 × 1.93 ÷ 1000 × ((388 + 84) × 18 + (164 + 24) × 10 + (252 + 24) × 4 +
/// (232 + 24) × 1) ÷ 12 = 3.77508 V, which is 3.1459 % of 120 V, at D2, whose cable was written down
/// the wrong way round. Sources: NEC chapter 9 Table 8, and Ohm's law.
#[test]
fn a_circuit_loses_by_all_that_is_behind_each_cable() {
    let (answer, sheet) = shown(&tollgate_row());
    let two = &answer.circuits[1];
    assert_eq!((two.name.as_str(), two.load.millionths()), ("2", 18_000_000));
    let worst = two.worst.as_ref().unwrap();
    assert_eq!(worst.volts.millionths(), 3_775_080);
    assert_eq!(worst.share.millionths(), 3_145_900);
    let path: Vec<_> = worst.path.iter().map(|(at, i)| (*at, i.millionths())).collect();
    assert_eq!(path, [(2, 18_000_000), (3, 10_000_000), (4, 4_000_000), (5, 1_000_000)]);
    assert_eq!(answer.cables[5].forth, Some(false), "D2 is fed from D1");
    assert!(!sheet.checks.iter().any(|it| it.key.starts_with("drop")), "advice has no verdict");
    for key in ["drop", "share"] {
        let figure = sheet.figures.iter().find(|figure| figure.key == key).unwrap();
        let step = sheet.working.iter().find(|step| step.key == key).unwrap();
        assert_eq!(step.expr.value().and_then(Value::amount), Some(figure.amount), "{key}");
    }
    let labels = sheet.parts.iter().find(|part| part.key == "labels").unwrap();
    let said: Vec<String> =
        labels.rows.iter().map(|row| Voice::default().say(&row.value)).collect();
    assert!(said.contains(&"K1 ← PANEL | 1 | counter, left | 12-2 | feed in".to_owned()));
    assert!(said.contains(&"D2 → D1 | 2 | dining, wall | 12-2 | feed in".to_owned()));
    assert!(said.contains(&"coiled: hall ← D2 | – | – | Thermostat".to_owned()));
    assert_eq!(said.len(), 24);
    // From a switch to its light; between two switches a pair of wires may be fed or not.
    assert!(said.contains(&"K5 → K6 | 3 | kitchen light | 14-2 | switch leg".to_owned()));
    assert!(said.contains(&"D4 ← D3 | 3 | dining light | 14-2 | switch leg".to_owned()));
    assert!(said.contains(&"K5 → D3 | 3 | lights, on | 14-2".to_owned()));
    assert!(said.contains(&"K5 ← PANEL | 3 | lights | 14-2 | feed in".to_owned()));
    let mut input = tollgate_row();
    input.cables[8].cable = Cable::Nm14x3;
    let (_, sheet) = shown(&input);
    let labels = sheet.parts.iter().find(|part| part.key == "labels").unwrap();
    let said = |row: &crate::sheet::PartRow| Voice::default().say(&row.value);
    for label in [
        "K5 → D3 | 3 | lights, on | 14-3 | travelers",
        "D3 ← K5 | 3 | lights, on | 14-3 | travelers",
    ] {
        assert!(labels.rows.iter().any(|row| said(row) == label), "{label}");
    }
}

/// Sources: NEC 334.80 and Tables 310.16 and 310.15(C)(1): four cables of two wires in a sealed hole
/// are 8 conductors, 70 %: 30 × 0.7 = 21, held to 20 A; with one more they are 10, 50 %: 15 A behind
/// 20, which is further short than 12.5 A of 14 AWG behind 15.
#[test]
fn a_hole_knows_what_goes_through_it() {
    let mut input = tollgate_row();
    let (answer, sheet) = shown(&input);
    let hole = &answer.holes[0];
    assert_eq!((hole.label.as_str(), hole.power, hole.carrying), ("P1", 4, 8));
    assert_eq!(check(&sheet, "carries-P1").verdict, Verdict::Within);
    assert_eq!(answer.holes[1].cables, [6, 11], "the thermostat's takes room and warms nothing");
    assert_eq!(answer.holes[1].together, None);
    input.cables[8].holes = " p1 ; P1".to_owned();
    let (answer, sheet) = shown(&input);
    assert_eq!((answer.holes[0].power, answer.holes[0].carrying), (5, 10));
    let carries = check(&sheet, "carries-P1");
    assert_eq!(carries.value, Amount::Measure(Measure::whole(&unit::AMPERE, 15)));
    assert_eq!(carries.verdict, Verdict::Over);
    assert!(!sheet.checks.iter().any(|it| it.key == "bundles"), "two at a box are no bundle");
    input.cables[2].holes.clear();
    input.cables[0].holes.clear();
    assert!(!shown(&input).1.checks.iter().any(|it| it.key == "bundles"));
    input.cables[6].holes.clear();
    let (_, sheet) = shown(&input);
    let bundles = check(&sheet, "bundles");
    assert_eq!((bundles.value, bundles.verdict), (Amount::Count(3), Verdict::Ask));
    input.cables[0].holes = "P1".to_owned();
    input.cables[2].holes = "P1".to_owned();
    input.cables[6].holes = "P1 P2".to_owned();
    let open = Hole { label: "P1".to_owned(), ..Hole::blank() };
    let input = Input { holes: vec![open], ..input };
    assert_eq!(shown(&input).0.holes[0].together, None, "this one stays open");
}

/// Sources: NEC 334.80 and Tables 310.16 and 310.15(C)(1). By hand: 3 × 2 + 3 + 2 × 2 = 13
/// conductors, 50 %: 15 A of 12 AWG behind 20, 12.5 A of 14 AWG behind 15, each named.
#[test]
fn every_size_and_circuit_that_is_short_in_a_hole_is_named() {
    let mut input = tollgate_row();
    let [two, three, thick] = [Cable::Nm14x2, Cable::Nm14x3, Cable::Nm12x2];
    let kinds = [(two, "3"), (two, "3"), (two, "5"), (three, "3"), (thick, "1"), (thick, "1")];
    input.cables = kinds.map(|(kind, circuit)| run("PANEL", "K1", kind, circuit, 0)).to_vec();
    input.cables.iter_mut().for_each(|run| run.holes = "P1".to_owned());
    input.bit = Some(Length::inches(5, 4));
    let (answer, sheet) = shown(&input);
    assert_eq!(answer.holes[0].carrying, 13);
    let asked: Vec<_> = sheet.checks.iter().filter(|it| it.key.contains("-P1")).collect();
    let said: Vec<_> = asked.iter().map(|it| (it.key.as_str(), it.value, it.limit)).collect();
    let amperes = |hundredths| Amount::Measure(Measure::hundredths(&unit::AMPERE, hundredths));
    assert_eq!(
        said[..3],
        [
            ("carries-P1", amperes(1500), amperes(2000)),
            ("carries-P1-3-14", amperes(1250), amperes(1500)),
            ("carries-P1-5-14", amperes(1250), amperes(1500)),
        ]
    );
    assert_eq!(asked[3].key, "taken-P1", "common practice comes after the code");
    let name = Voice::default().say(&asked[0].name);
    assert_eq!(name, "Hole P1, 12 AWG of circuit 1 carries");
}

/// The one edit that a job makes most: the ceiling goes up 14 in, lights with it. Every number that
/// moves is here by hand; all others stay.
#[test]
fn a_ceiling_14_in_higher_moves_these_numbers_and_no_others() {
    let input = tollgate_row();
    let (before, old) = shown(&input);
    let higher = Input { high: Length::inches(110, 1), ..input };
    let (after, new) = shown(&higher);
    // 14 in more at each end on a wall; typed ways stand.
    let more = [28, 28, 28, 28, 28, 28, 28, 14, 28, 14, 0, 0];
    for (at, ((way, ends), more)) in WAYS.into_iter().zip(more).enumerate() {
        let laid = &after.cables[at];
        assert_eq!((laid.way, laid.cut), (inches(way + more), Some(cut(way + more, ends))));
    }
    // Lost: 3.86 ÷ 1000 × (500 × 18 + 216 × 10 + 304 × 4 + 284 × 1) ÷ 12 = 4.0723 V.
    let worst = after.circuits[1].worst.as_ref().unwrap();
    assert_eq!(worst.volts.millionths(), 4_072_300);
    assert_eq!(worst.share.millionths(), 3_393_583);
    // ⌈(way − both) ÷ 54⌉ + 1: 300 → 7, 176 → 5, 396 → 9, 5, 264 → 6, 244 → 6, 128 → 4, 198 → 5,
    // 312 → 7, 138 → 4, 5, none.
    assert_eq!(after.staples, 7 + 5 + 9 + 5 + 6 + 6 + 4 + 5 + 7 + 4 + 5);
    assert_eq!(after.boxes, before.boxes);
    assert_eq!(after.holes, before.holes);
    let moved: Vec<&str> = old
        .figures
        .iter()
        .zip(&new.figures)
        .filter(|(old, new)| old != new)
        .map(|(old, _)| old.key)
        .collect();
    assert_eq!(moved, ["length", "14-2", "12-2", "staples", "drop", "share", "ceiling"]);
    let moved: Vec<&str> = old
        .checks
        .iter()
        .zip(&new.checks)
        .filter(|(old, new)| old != new)
        .map(|(old, _)| old.key.as_str())
        .collect();
    assert_eq!(moved, [""; 0]);
    let sum = |kind: &str, sheet: &Sheet| {
        let figure = sheet.figures.iter().find(|figure| figure.key == kind).unwrap();
        figure.amount.raw()
    };
    let by_hand = |at: &[usize], more: &[i64; 12]| {
        let each = at.iter().map(|at| to_cut(WAYS[*at].0 + more[*at], WAYS[*at].1));
        Amount::Length(Length::inches(each.sum(), 1)).raw()
    };
    assert_eq!(sum("12-2", &new), by_hand(&[0, 1, 2, 3, 4, 5, 10], &more));
    assert_eq!(sum("14-2", &new), by_hand(&[6, 7, 8, 9], &more));
}

/// By hand, each cut up to the whole inch as its line says: 406 + 205 + 511 + 205 + 302 + 280 + 336 of
/// 12-2, 216 + 261 + 354 + 195 of 14-2, 408 for the thermostat: 306 ft 7 in. The exact cuts come to
/// 4-11/16 in less.
#[test]
fn what_is_cut_in_all_is_the_sum_of_the_lines() {
    let (answer, sheet) = shown(&tollgate_row());
    let figure = |key: &str| sheet.figures.iter().find(|it| it.key == key).unwrap();
    for (key, inches) in [("12-2", 2245), ("14-2", 1026), ("thermostat", 408), ("length", 3679)] {
        assert_eq!(figure(key).amount, Amount::Length(Length::inches(inches, 1)), "{key}");
    }
    assert_eq!(Voice::default().say(&figure("length").value()), "306 ft 7 in");
    let part = sheet.parts.iter().find(|part| part.key == "schedule").unwrap();
    let cuts = part.table.as_ref().unwrap().rows.iter().map(|row| match row.cells[2].args[..] {
        [crate::words::Arg::Amount(Amount::Length(cut), _)] => cut,
        _ => panic!("{:?}", row.cells[2]),
    });
    let sum = cuts.fold(Length::ZERO, Length::plus);
    assert_eq!(figure("length").amount, Amount::Length(sum));
    let exact = answer.cables.iter().filter_map(|laid| laid.cut);
    let less = sum.minus(exact.fold(Length::ZERO, Length::plus));
    assert_eq!(less, Length::inches(4 * 16 + 11, 16));
    for buy in &answer.buys {
        let bought = buy.rolls.iter().map(|(long, count)| long.times(*count));
        let bought = bought.fold(Length::ZERO, Length::plus);
        assert_eq!(buy.left().plus(buy.cut), bought);
    }
}

#[test]
fn nothing_over_reads_as_none_and_holes_are_told_where_there_are_some() {
    let voice = Voice::default();
    let mut input = tollgate_row();
    input.boxes.retain(|of| matches!(&*of.label, "PANEL" | "K1"));
    input.cables.truncate(1);
    input.holes.clear();
    input.cables[0].holes.clear();
    let (_, sheet) = shown(&input);
    assert_eq!(voice.say(&sheet.headline.name), "Over their limit, of 2 boxes and 1 circuit");
    let says = (voice.say(&sheet.headline.value()), sheet.headline.amount, sheet.headline.key);
    assert_eq!(says, ("none".to_owned(), Amount::Count(0), "over"));
    input.boxes[1].marked = Some(Volume::hundredths(100));
    let (_, sheet) = shown(&input);
    assert_eq!(voice.say(&sheet.headline.value()), "1");
}

#[test]
fn what_names_nothing_is_told_at_its_field_with_what_there_is() {
    let faults = |change: &dyn Fn(&mut Input)| {
        let mut input = tollgate_row();
        change(&mut input);
        let faults = RoughIn::left_out(&input);
        let said =
            |fault: &crate::sheet::Fault| (fault.path.clone(), Voice::default().say(&fault.says));
        faults.iter().map(said).collect::<Vec<_>>()
    };
    let said = faults(&|input| input.cables[3].to = "K9".to_owned());
    assert_eq!(said.len(), 1);
    assert_eq!(said[0].0, "cables.3.to");
    assert_eq!(
        said[0].1,
        "No box is called “K9”. There are PANEL, K1, K2, K3, K4, K5, K6, D1, D2, D3, D4."
    );
    let said = faults(&|input| input.cables[0].from = "  ".to_owned());
    assert_eq!(said[0].0, "cables.0.from");
    let said = faults(&|input| input.boxes[2].label = " k1".to_owned());
    let paths: Vec<&str> = said.iter().map(|(path, _)| path.as_str()).collect();
    let two = ["boxes.1.label", "boxes.2.label", "cables.1.to"];
    assert_eq!(paths, two, "each of the two is told, and K2 is gone");
    let said = faults(&|input| input.boxes[4].label = String::new());
    let paths: Vec<&str> = said.iter().map(|(path, _)| path.as_str()).collect();
    let gone = ["boxes.4.label", "cables.3.to", "cables.4.from"];
    assert_eq!(paths, gone, "what named K4 names nothing now");
    // On the ceiling is on the wall still; above it no cable is cut.
    let said =
        faults(&|input| (input.high, input.boxes[1].high) = (Length::inches(60, 1), inches(61)));
    assert_eq!(said.len(), 1);
    assert_eq!(said[0].0, "boxes.1.high");
    assert!(said[0].1.starts_with("The ceiling is at 5 ft."), "{said:?}");
}

/// A box, a cable and a hole that were just added take nothing away: the rest is as before, says
/// what it is without, and isn't within. A fault behind them is told where its row stands.
#[test]
fn a_row_just_added_leaves_the_rest_standing() {
    let full = tollgate_row();
    let (answer, plain) = shown(&full);
    let mut input = full.clone();
    input.boxes.insert(0, PlacedBox::blank());
    input.cables.insert(2, Run { cable: Cable::Nm12x2, ..Run::blank() });
    input.cables.insert(0, Run::blank());
    input.holes.push(Hole { label: " ".to_owned(), ..Hole::blank() });
    let (same, sheet) = shown(&input);
    assert_eq!(same, answer);
    assert_eq!((&sheet.figures, &sheet.parts), (&plain.figures, &plain.parts));
    let told = check(&sheet, "uncounted");
    assert_eq!((told.value, told.verdict), (Amount::Count(4), Verdict::Ask));
    let said = |text: &Text| Voice::default().say(text);
    assert_eq!(
        said(told.note.as_ref().unwrap()),
        "1 box without a label of its own, 2 cables without an end, 1 hole without a label of its own: all here is without."
    );
    let left_out = RoughIn::left_out(&input);
    let left_out: Vec<&str> = left_out.iter().map(|fault| fault.path.as_str()).collect();
    assert_eq!(left_out, ["boxes.0.label", "cables.0.from", "cables.3.from", "holes.0.label"]);
    assert!(RoughIn::left_out(&full).is_empty());
    assert!(!plain.checks.iter().any(|it| it.key == "uncounted"));
    // Nothing else is over or asks: then it stands under the answer.
    let mut alone = Input::sample();
    alone.cables.push(Run::blank());
    let (_, sheet) = shown(&alone);
    assert_eq!(said(sheet.next.as_ref().unwrap()), "Not counted yet: 1 cable without an end.");
}

/// One slip in a plan of eleven boxes leaves the rest standing: a box over the ceiling is as one of unknown height, and of two
/// boxes by one name the first is the one that cables reach. None of it is ever within.
#[test]
fn a_slip_leaves_the_rest_standing() {
    let full = tollgate_row();
    let slipped = |change: &dyn Fn(&mut Input)| {
        let mut input = full.clone();
        change(&mut input);
        input
    };
    let same = |slip: &dyn Fn(&mut Input), want: &dyn Fn(&mut Input), says: &str| {
        let (answer, sheet) = shown(&slipped(slip));
        let (wanted, plain) = shown(&slipped(want));
        assert_eq!(answer, wanted, "{says}");
        assert_eq!((&sheet.figures, &sheet.parts), (&plain.figures, &plain.parts), "{says}");
        let told = check(&sheet, "uncounted");
        let note = Voice::default().say(told.note.as_ref().unwrap());
        assert_eq!(note, [says, ": all here is without."].concat());
        assert_eq!((told.verdict, told.value), (Verdict::Ask, Amount::Count(1)));
        assert_ne!(sheet.verdict(), Verdict::Within);
    };
    let adrift = |input: &mut Input| {
        (input.cables[3].from, input.cables[3].to) = ("K8".to_owned(), "K9".to_owned());
    };
    same(&adrift, &|input| drop(input.cables.remove(3)), "1 cable without an end");
    let low = |input: &mut Input| input.high = Length::inches(60, 1);
    let over = |input: &mut Input| (low(input), input.boxes[1].high = inches(61)).1;
    let unknown = |input: &mut Input| (low(input), input.boxes[1].high = None).1;
    same(&over, &unknown, "1 height over the ceiling");
    // A measured length that can't be read is not taken from the boxes' places: it was measured.
    let unread = |input: &mut Input| {
        let says = say!(words::NOTHING);
        input.cables[3].length = Typed::Unread { given: "18 f..".to_owned(), says };
    };
    let lengthless = |input: &mut Input| {
        let at = input.boxes.iter().position(|it| it.label == "K3").unwrap();
        input.cables[3].length = Typed::Empty;
        // By places nothing can be said of it, and all else of K3's other cable is as it was.
        input.cables[2].length = inches(WAYS[2].0).into();
        input.boxes[at].x = None;
    };
    let measured = |input: &mut Input| {
        input.cables[2].length = inches(WAYS[2].0).into();
        unread(input);
        let at = input.boxes.iter().position(|it| it.label == "K3").unwrap();
        input.boxes[at].x = None;
    };
    same(&measured, &lengthless, "1 length that can't be read");
    // Past the room's wall as without a place, and named.
    let room = |input: &mut Input| (input.longest, input.widest) = (inches(240), inches(144));
    let far = |input: &mut Input| (room(input), input.boxes[3].x = inches(241)).1;
    let nowhere = |input: &mut Input| (room(input), input.boxes[3].x = None).1;
    same(&far, &nowhere, "K3 placed past the room's walls");
    let far = |input: &mut Input| (room(input), input.boxes[3].y = inches(145)).1;
    let nowhere = |input: &mut Input| (room(input), input.boxes[3].y = None).1;
    same(&far, &nowhere, "K3 placed past the room's walls");
    // One that nothing names yet, by another's name.
    let another = |input: &mut Input| {
        input.boxes.push(PlacedBox { label: " k1".to_owned(), ..PlacedBox::blank() });
    };
    same(&another, &|_| {}, "1 box without a label of its own");
}

/// An end that names no box is no coil: it is told as it was typed wherever its cable is, and its cable
/// has no length, however long it was measured. Its other box holds it all the same.
#[test]
fn an_end_that_names_no_box_is_told_as_typed_and_has_no_length() {
    let voice = Voice::default();
    for (from, to, told) in [
        ("K3", "K9", "K3 → “K9”: no such box"),
        ("k9 ", "K3", "K3 → “k9”: no such box"),
        (" ", "K3", "K3 → no box named"),
    ] {
        for length in [None, Some(164)] {
            let mut input = tollgate_row();
            let full = shown(&input).0;
            let run = &mut input.cables[3];
            (run.from, run.to) = (from.to_owned(), to.to_owned());
            run.length = length.and_then(inches).into();
            run.holes = "P2".to_owned();
            let (answer, sheet) = shown(&input);
            let laid = &answer.cables[3];
            assert_eq!((laid.from, laid.to, laid.lost), (3, None, true), "{told}");
            assert_eq!((laid.way, laid.cut, laid.staples), (None, None, 0), "{told}");
            assert_eq!(answer.boxes[3], full.boxes[3], "it takes room where it ends");
            let cells = scheduled(&sheet, &[told, ": counter, right"].concat());
            assert_eq!(cells, ["2, 20 A", "12-2", "not said", "P2"]);
            let rows = |key: &str| {
                let part = sheet.parts.iter().find(|part| part.key == key).unwrap();
                let row = |row: &crate::sheet::PartRow| {
                    [voice.say(&row.name), voice.say(&row.value)].join(" = ")
                };
                part.rows.iter().map(row).collect::<Vec<_>>()
            };
            let (_, end) = told.split_once(" → ").unwrap();
            let far = format!("{end} = {end} ← K3 | 2 | counter, right | 12-2");
            assert!(rows("labels").iter().any(|row| row.starts_with(&far)), "{:?}", rows("labels"));
            let in_hole = rows("holes").iter().any(|row| row.contains(&[told, " (2)"].concat()));
            assert!(in_hole, "what goes through a hole goes through it still");
            let unbought = ["12-2 cable with ground, ", told, " = no length"].concat();
            assert!(rows("unbought").contains(&unbought), "{:?}", rows("unbought"));
            assert!(!sheet.working.iter().any(|step| step.key == "cut-4"));
            let note = voice.say(check(&sheet, "lengths").note.as_ref().unwrap());
            assert!(note.starts_with(&[told, ". Name both their boxes"].concat()), "{note}");
            assert_eq!(check(&sheet, "uncounted").verdict, Verdict::Ask);
            assert_ne!(sheet.verdict(), Verdict::Within);
            let cuts = |answer: &Answer| answer.buys.iter().map(|buy| buy.cut).collect::<Vec<_>>();
            let less = Length::inches(to_cut(WAYS[3].0, WAYS[3].1), 1);
            assert_eq!(cuts(&answer)[1], cuts(&full)[1].minus(less), "no roll counts it");
        }
    }
}

/// What was found dead is told beside the end as it was typed, and not as a coil.
#[test]
fn a_dead_test_of_a_lost_end_names_what_was_typed() {
    let mut input = tollgate_row();
    input.cables[3].to = "K9".to_owned();
    input.cables[3].proof.dead = Day::new(2026, 11, 24);
    let (_, sheet) = shown(&input);
    let part = sheet.parts.iter().find(|part| part.key == SCREEN_ONLY).unwrap();
    assert_eq!(Voice::default().say(&part.rows[0].name), "K3 → “K9”: no such box");
}

/// The farthest load behind a cable of no length loses nobody knows what: then nothing is told of its
/// circuit, and the cable is named. A cable of no length that carries nothing keeps nothing back.
#[test]
fn no_loss_is_told_of_a_circuit_with_a_cable_of_no_length() {
    let voice = Voice::default();
    let said = |input: &Input, key: &str| {
        let (_, sheet) = shown(input);
        let part = sheet.parts.iter().find(|part| part.key == "circuits").unwrap();
        let row = part.rows.iter().find(|row| voice.say(&row.name).starts_with(key)).unwrap();
        voice.say(&row.value)
    };
    let full = tollgate_row();
    // D2 stands at the far end, behind D1: 1 A through 232 in that nobody can tell any more.
    let mut input = full.clone();
    input.boxes[8].x = None;
    let (answer, sheet) = shown(&input);
    let two = &answer.circuits[1];
    assert_eq!((&two.worst, &*two.unknown), (&None, &[5][..]));
    let asks = check(&sheet, "loss-2");
    assert_eq!((asks.value, asks.verdict), (Amount::Count(1), Verdict::Ask));
    let note = voice.say(asks.note.as_ref().unwrap());
    assert!(note.starts_with("D2 → D1: of no length"), "{note}");
    let row = said(&input, "Circuit 2");
    assert!(!row.contains(", loses "), "{row}");
    let ends = "feeds 18 A | without 1 of no length | what it loses isn't known: D2 → D1";
    assert!(row.ends_with(ends), "{row}");
    let figure = sheet.figures.iter().find(|figure| figure.key == "loss-unknown").unwrap();
    assert_eq!(figure.amount, Amount::Count(1));
    assert_eq!(voice.say(&figure.value()), "2: D2 → D1");
    let drop = sheet.figures.iter().find(|figure| figure.key == "drop").unwrap();
    assert!(!voice.say(&drop.name).ends_with('2'), "that of another circuit");
    assert!(!sheet.next.as_ref().is_some_and(|next| voice.say(next).contains("loses")));
    // No load behind it: what the others lose is all there is.
    input.cables[5].load = None;
    let (answer, sheet) = shown(&input);
    let two = &answer.circuits[1];
    assert!(two.worst.is_some() && two.unknown.is_empty());
    assert!(!sheet.checks.iter().any(|it| it.key == "loss-2"));
    assert!(said(&input, "Circuit 2").ends_with(" | without 1 of no length"));
    assert!(!said(&full, "Circuit 2").contains("without"));
    // Past an end that names no box may be any load, and what nothing feeds draws through some cable.
    let mut input = full.clone();
    input.cables[4].to = "D11".to_owned();
    let (answer, _) = shown(&input);
    assert_eq!((&answer.circuits[1].worst, &*answer.circuits[1].unknown), (&None, &[4, 5][..]));
}

/// Cables without a length are in no roll: the plan names each, with its kind.
#[test]
fn what_to_buy_names_the_cables_that_it_is_without() {
    let said = |input: &Input| {
        let (_, sheet) = shown(input);
        let part = sheet.parts.into_iter().find(|part| part.key == crate::sheet::UNBOUGHT);
        let row = |row: &crate::sheet::PartRow| Voice::default().say(&row.name);
        part.map(|part| part.rows.iter().map(row).collect::<Vec<_>>()).unwrap_or_default()
    };
    let mut input = tollgate_row();
    assert_eq!(said(&input), [""; 0]);
    input.boxes[8].x = None;
    input.cables[11].length = Typed::Empty;
    let two = ["12-2 cable with ground, D2 → D1", "Thermostat cable, D2 → coiled: hall"];
    assert_eq!(said(&input), two);
}

/// All lengths by places hang on the ceiling: the sheet says which it was, where any does.
#[test]
fn the_ceiling_that_lengths_go_by_is_a_figure() {
    let mut input = tollgate_row();
    let told = |input: &Input| {
        let (_, sheet) = shown(input);
        ["ceiling", "above"].map(|key| sheet.figure(key).map(|it| it.amount))
    };
    input.high = Length::inches(110, 1);
    let length = |inches| Some(Amount::Length(Length::inches(inches, 1)));
    assert_eq!(told(&input), [length(110), length(6)]);
    for run in &mut input.cables {
        run.length = inches(240).into();
    }
    assert_eq!(told(&input), [None, None]);
}

/// A box that isn't in the drawing says so where the others have their place, and is to settle.
#[test]
fn a_box_without_a_place_says_so_where_others_have_one() {
    let voice = Voice::default();
    let places = |sheet: &Sheet| {
        let part = sheet.parts.iter().find(|part| part.key == "places").unwrap();
        part.rows.iter().map(|row| voice.say(&row.value)).collect::<Vec<_>>()
    };
    let mut input = tollgate_row();
    assert!(!shown(&input).1.checks.iter().any(|it| it.key == crate::sheet::UNPLACED));
    input.longest = inches(239);
    input.boxes[8].high = None;
    let (_, sheet) = shown(&input);
    let all = places(&sheet);
    assert_eq!(all[6], "16 in off the floor | place not given");
    assert_eq!(all[7], "place not given");
    let asks = check(&sheet, crate::sheet::UNPLACED);
    assert_eq!((asks.value, asks.verdict), (Amount::Count(2), Verdict::Ask));
    let note = voice.say(asks.note.as_ref().unwrap());
    assert!(note.starts_with("D1, D2. The drawing is without them"), "{note}");
    // A plan of typed lengths has no drawing, and no place to miss.
    for of in &mut input.boxes {
        of.x = None;
    }
    let (_, sheet) = shown(&input);
    assert!(!sheet.checks.iter().any(|it| it.key == crate::sheet::UNPLACED));
    assert_eq!(places(&sheet)[0], "3 ft 8 in off the floor");
}

/// NEC 725.136 and 800.133 are about signals in a box with power, and about nothing else that is told
/// under the answer.
#[test]
fn what_is_told_under_the_answer_has_the_source_of_its_own_check() {
    let voice = Voice::default();
    let told = |input: &Input| {
        let (_, sheet) = shown(input);
        let decisive = sheet.decisive().unwrap().source.key;
        let next = sheet.next.as_ref().map(|next| voice.say(next)).unwrap();
        (next, sheet.said_by().map(|it| it.key), decisive)
    };
    let mut input = tollgate_row();
    let (next, by, _) = told(&input);
    assert!(next.starts_with("D1 is over by"), "{next}");
    assert_eq!(by, Some(crate::rules::electrical::box_fill::FILL.key));
    input.boxes[7].marked = Some(Volume::hundredths(1800));
    let apart = crate::rules::electrical::low_voltage::APART.key;
    let (next, by, decisive) = told(&input);
    assert!(next.starts_with("Circuit 2 loses"), "{next}");
    assert_eq!((by, decisive), (None, apart));
    input.cables.push(Run::blank());
    let (next, by, decisive) = told(&input);
    assert!(next.starts_with("Not counted yet: 1 cable without an end"), "{next}");
    assert_eq!((by, decisive), (Some(PLAN.key), apart));
}

/// On the wall is in the room; past it is told at its field with the room's side, and not looked at where
/// nobody said how long the room is.
#[test]
fn a_box_past_its_rooms_wall_is_told_at_its_field() {
    let told = |[long, wide]: [Option<i64>; 2], [x, y]: [i64; 2]| {
        let mut input = tollgate_row();
        (input.longest, input.widest) = (long.and_then(inches), wide.and_then(inches));
        (input.boxes[6].x, input.boxes[6].y) = (inches(x), inches(y));
        let said = |it: crate::sheet::Fault| (it.path, it.given, Voice::default().say(&it.says));
        RoughIn::left_out(&input).into_iter().map(said).collect::<Vec<_>>()
    };
    let room = [Some(240), Some(144)];
    assert_eq!(told(room, [240, 144]), []);
    let both = told(room, [241, 145]);
    let paths: Vec<&str> = both.iter().map(|it| &*it.0).collect();
    assert_eq!(paths, ["boxes.6.x", "boxes.6.y"]);
    assert_eq!(both[0].1, "20 ft 1 in");
    let says =
        "The room is 20 ft that way. Is one of the two a slip, or is the box in another room?";
    assert_eq!(both[0].2, says);
    assert!(both[1].2.starts_with("The room is 12 ft that way."));
    assert_eq!(told([None, Some(144)], [9000, 144]), []);
    assert_eq!(told([None; 2], [9000, 9000]), []);
}

/// The far wall went out by 6 in, from 12 ft: the two switches on it are told, and the panel, which is on
/// the left wall too, isn't.
#[test]
fn a_box_that_a_wall_moved_away_from_is_told() {
    let voice = Voice::default();
    let told = |change: &dyn Fn(&mut Input)| {
        let mut input = tollgate_row();
        (input.longest, input.widest) = (inches(240), inches(144));
        change(&mut input);
        let (_, sheet) = shown(&input);
        let check = sheet.checks.into_iter().find(|check| check.key == "walls")?;
        assert_eq!((check.verdict, check.source.key), (Verdict::Ask, "boxes-on-walls"));
        Some((check.value, voice.say(check.note.as_ref().unwrap())))
    };
    assert_eq!(told(&|_| ()), None);
    let says = "K5 is 6 in off the far wall (From the back wall: 12 ft), and 1 more box like it. \
        Did a wall move, or are they on others?";
    let moved = told(&|input| input.widest = inches(150));
    assert_eq!(moved, Some((Amount::Count(2), says.to_owned())));
    // K1 alone, off each wall: where it is typed is told with it.
    for (place, says) in [
        ([6, 60], "K1 is 6 in off the left wall (From the left wall: 6 in)."),
        ([234, 60], "K1 is 6 in off the right wall (From the left wall: 19 ft 6 in)."),
        ([48, 3], "K1 is 3 in off the back wall (From the back wall: 3 in)."),
        ([48, 120], "K1 is 2 ft off the far wall (From the back wall: 10 ft)."),
    ] {
        let one = told(&|input| {
            (input.boxes[1].x, input.boxes[1].y) = (inches(place[0]), inches(place[1]));
        });
        let says = [says, " Did that wall move, or is the box on another?"].concat();
        assert_eq!(one, Some((Amount::Count(1), says)));
    }
    // A wall within the room; one that is 2 in off for its board; overhead; a side that nobody said; no place.
    let island =
        |input: &mut Input| (input.boxes[1].x, input.boxes[1].y) = (inches(60), inches(60));
    assert_eq!(told(&island), None);
    assert_eq!(told(&|input| input.boxes[1].y = inches(2)), None);
    assert_eq!(told(&|input| (input.boxes[6].x, input.boxes[6].y) = (inches(6), inches(60))), None);
    assert_eq!(told(&|input| (input.longest, input.widest) = (None, inches(150))), None);
    assert_eq!(told(&|input| (input.longest, input.widest) = (inches(250), None)), None);
    assert_eq!(told(&|input| (input.boxes[1].x, input.boxes[1].y) = (None, inches(6))), None);
    // Past the wall it has no place, and that is told of it already.
    let past = |input: &mut Input| (input.boxes[1].x, input.boxes[1].y) = (inches(250), inches(6));
    assert_eq!(told(&past), None);
}

fn of(root: &Node, path: &str) -> Rename {
    Rename::of(Input::ROWS, root, path)
}

fn put_all(root: &mut Node, puts: Vec<crate::sheet::Put>) {
    puts.into_iter().for_each(|(path, node)| root.put(&path, node));
}

/// However a name is typed, letter by letter and past another box's name, the ends that named it
/// follow, those of the other box stay, and all of it can be taken back.
#[test]
fn a_renamed_box_takes_the_ends_along_that_named_it() {
    let before = Input::sample().write_parts();
    let mut root = before.clone();
    let rename = of(&root, "boxes.1.label");
    assert_eq!(rename.count(), 2, "K1 ends one cable and starts another");
    for typed in ["K", "", "K2", "K2b"] {
        put_all(&mut root, rename.to(typed));
    }
    let leaf = |root: &Node, path: &str| root.at(path).and_then(Node::leaf).unwrap();
    for (path, text) in [
        ("boxes.1.label", "K2b"),
        ("cables.0.to", "K2b"),
        ("cables.1.from", "K2b"),
        ("cables.1.to", "K2"),
        ("cables.2.to", ""),
    ] {
        assert_eq!(leaf(&root, path), text, "{path}");
    }
    put_all(&mut root, rename.to(" "));
    assert_eq!(leaf(&root, "cables.0.to"), "K1", "a name is never emptied out of an end");
    put_all(&mut root, rename.before());
    assert_eq!(root, before);
    // Of two boxes of one name nobody can say which is meant; a circuit is no cable's own.
    root.put("boxes.2.label", Node::text(" k1"));
    assert_eq!(of(&root, "boxes.1.label").count(), 0);
    assert_eq!(of(&root, "cables.0.circuit").count(), 0);
}

/// A name that another box has moves no cable there: the ends wait under the old one for a good name.
#[test]
fn a_name_that_another_box_has_is_followed_by_nothing() {
    let mut root = Input::sample().write_parts();
    let rename = of(&root, "boxes.1.label");
    assert!(rename.is_open(" k2") && rename.is_open("") && !rename.is_open("K1"));
    put_all(&mut root, rename.to("k2"));
    let end = |root: &Node, path: &str| root.at(path).and_then(Node::leaf).unwrap();
    assert_eq!((&*end(&root, "cables.0.to"), &*end(&root, "cables.1.from")), ("K1", "K1"));
    put_all(&mut root, rename.to("K33"));
    assert_eq!((&*end(&root, "cables.0.to"), &*end(&root, "cables.1.from")), ("K33", "K33"));
    assert_eq!(end(&root, "cables.1.to"), "K2");
}

#[test]
fn a_renamed_hole_is_renamed_in_a_line_of_several() {
    let mut input = tollgate_row();
    input.holes.push(Hole { label: "P2".to_owned(), ..Hole::blank() });
    input.cables[0].holes = "p2;P20, P1".to_owned();
    let mut root = input.write_parts();
    let rename = of(&root, "holes.0.label");
    assert_eq!(rename.count(), 3);
    put_all(&mut root, rename.to("Q"));
    let line = |at: &str| root.at(&["cables.", at, ".holes"].concat()).and_then(Node::leaf);
    assert_eq!(line("0").as_deref(), Some("Q;P20, P1"));
    assert_eq!(line("6").as_deref(), Some("P1 Q"));
}

/// A label that cables would read as two, or that is too long, moves no cable: its line waits under the
/// old one for a good one, and while other fields are come to.
#[test]
fn a_label_that_is_refused_is_followed_by_nothing() {
    let mut input = tollgate_row();
    input.holes = ["P2", "P1"].map(|it| Hole { label: it.to_owned(), ..Hole::blank() }).into();
    input.cables[0].holes = "P1, P2".to_owned();
    let mut root = input.write_parts();
    let mut rename = of(&root, "holes.0.label");
    let line = |root: &Node| root.at("cables.0.holes").and_then(Node::leaf).unwrap();
    for refused in ["top, left", "top; left", ",", "thirteen more"] {
        assert!(rename.is_open(refused), "{refused}");
        put_all(&mut root, rename.to("top"));
        put_all(&mut root, rename.to(refused));
        assert_eq!(line(&root), "P1, P2", "{refused}");
    }
    // One cable is written anew before the name comes right, and another hole has taken a name.
    root.put("cables.0.holes", Node::text("P9"));
    root.put("holes.1.label", Node::text("mine"));
    rename.go_on(&root, "thirteen more");
    assert!(rename.is_open("mine") && !rename.is_open("P2"));
    put_all(&mut root, rename.to("top left"));
    assert_eq!(line(&root), "P9");
    let other = root.at("cables.6.holes").and_then(Node::leaf).unwrap();
    assert!(other.contains("top left"), "{other}");
    // A box is named alone: a comma is a letter as any other.
    assert!(!of(&root, "boxes.1.label").is_open("K1, left"));
    // At its field.
    input.holes[0].label = "top; left".to_owned();
    let told = RoughIn::left_out(&input);
    assert_eq!(told.iter().map(|it| &*it.path).collect::<Vec<_>>(), ["holes.0.label"]);
    let says = "A comma parts two names: write top left.";
    assert_eq!(Voice::default().say(&told[0].says), says);
}

#[test]
fn ends_are_offered_the_boxes_there_are_and_a_few_of_many() {
    let mut input = Input::sample();
    let row = |key: &str| Run::ROWS.iter().find(|row| row.key == key).unwrap();
    let offered = |input: &Input, key: &str| {
        names(Input::ROWS, &input.write_parts(), row(key), &["cables.0.", key].concat())
    };
    assert_eq!(offered(&input, "from"), ["PANEL", "K1", "K2"]);
    assert_eq!(offered(&input, "circuit"), ["1"], "its own is no choice");
    input.cables[1].holes = "P1, p2 P1".to_owned();
    assert_eq!(offered(&input, "holes"), ["P1", "p2"]);
    assert_eq!(offered(&input, "feeds"), [""; 0]);
    input.boxes =
        (1..=300).map(|at| placed(&format!("B{at}"), What::Other, [0, 0], None, 0)).collect();
    let all = offered(&input, "to");
    assert_eq!(all.len(), 300);
    let (first, more) = narrowed(all.clone(), "b30", 12);
    assert_eq!((first, more), (vec!["B30".to_owned(), "B300".to_owned()], 0));
    let (some, more) = narrowed(all.clone(), "29", 12);
    assert_eq!((some.len(), more, some[0].as_str()), (12, 1, "B29"));
    assert_eq!(narrowed(all, "", 12).1, 288);
    assert_eq!(narrowed(vec!["A".to_owned()], "B", 12).0, ["A"], "a few are all offered");
    assert_eq!(toggled("P1; P2", "p1", &[]), "P2");
    assert_eq!(toggled("P1", "P2", &[]), "P1, P2");
}

#[test]
fn a_box_that_goes_leaves_its_cables_hanging_by_their_numbers() {
    let root = Input::sample().write_parts();
    let hanging = |at| {
        let all = hanging(Input::ROWS, &root, "boxes", at);
        all.into_iter().map(|(_, number)| number).collect::<Vec<_>>()
    };
    assert_eq!((hanging(0), hanging(1), hanging(2)), (vec![1, 3], vec![1, 2], vec![2]));
}

#[test]
fn nothing_was_tested_dead_on_a_day_to_come() {
    let mut input = Input::sample();
    let day = |text| Some(Day::read(text).unwrap());
    input.cables[1].proof.dead = day("2026-11-25");
    let faults =
        |input: &Input, today| ahead(Input::ROWS, &input.write_parts(), day(today).unwrap());
    assert!(faults(&input, "2026-11-25").is_empty());
    let told = faults(&input, "2026-11-24");
    assert_eq!((told.len(), told[0].path.as_str()), (1, "cables.1.proof.dead"));
    assert_eq!(
        Voice::default().say(&told[0].says),
        "“2026-11-25” is yet to come: today is 2026-11-24. Write the day on which it was done."
    );
    input.cables[2].proof.live = day("2027-01-01");
    assert_eq!(faults(&input, "2026-11-25")[0].path, "cables.2.proof.live");
}

/// Common practice: each of its circuits has to be off before a box is opened. At a panel all start.
#[test]
fn a_box_of_several_circuits_tells_them() {
    let mut input = tollgate_row();
    let told = |input: &Input| {
        let (_, sheet) = shown(input);
        let voice = Voice::default();
        let checks = sheet.checks.iter().filter(|it| it.key.starts_with("circuits-"));
        let told: Vec<_> = checks
            .map(|it| (it.value, voice.phrase(it.word()), voice.say(it.note.as_ref().unwrap())))
            .collect();
        told
    };
    assert_eq!(told(&input), []);
    input.cables.push(run("K4", "K2", Cable::Nm12x2, "1", 0));
    let says = "K4 holds circuits 1 and 2: it is dead when all of them are.";
    let mind = || "mind it".to_owned();
    assert_eq!(told(&input), [(Amount::Count(2), mind(), says.to_owned())]);
    input.cables.push(run("K4", "K2", Cable::Nm12x2, "1", 0));
    assert_eq!(told(&input).len(), 1, "twice the same circuit is one breaker");
    input.cables.push(run("K4", "K6", Cable::Nm14x2, "3", 0));
    let says = "K4 holds circuits 1, 2 and 3: it is dead when all of them are.";
    assert_eq!(told(&input), [(Amount::Count(3), mind(), says.to_owned())]);
}

/// What nobody typed is not for the local authority, and nothing over isn't all while it is open.
#[test]
fn what_was_not_given_says_so() {
    let (mut input, voice) = (tollgate_row(), Voice::default());
    input.boxes[7].marked = Some(Volume::hundredths(1800));
    let (_, sheet) = shown(&input);
    // Circuit 4 has a breaker that nobody read, and a signal cable ends in D2 with power.
    assert_eq!(voice.say(&sheet.headline.value()), "none over, 2 to settle");
    let mut small = input.clone();
    small.boxes[7].marked = Some(Volume::hundredths(100));
    assert_eq!(voice.say(&shown(&small).1.headline.value()), "1 over, 2 to settle");
    input.boxes[3].marked = None;
    (input.boxes[4].x, input.cables[10].circuit) = (None, String::new());
    let (_, sheet) = shown(&input);
    // And K4 without a place, and what circuit 2 loses.
    assert_eq!(voice.say(&sheet.headline.value()), "none over, 6 to settle");
    assert_eq!(sheet.headline.amount, Amount::Count(0));
    let said = |key: &str| {
        let check = check(&sheet, key);
        let note = voice.say(check.note.as_ref().unwrap());
        (voice.say(&check.told()), voice.phrase(check.word()), note)
    };
    let (told, word, note) = said("fill-K3");
    assert_eq!((&*told, &*word), ("15.75 in³", "not given"));
    assert_eq!(note, "Its volume isn't said: read its stamp and put it in.");
    let (told, word, note) = said("lengths");
    assert_eq!((&*told, &*word), ("2", "not given"));
    assert!(note.starts_with("K3 → K4, K4 → D1. Type their way"), "{note}");
    let (_, word, note) = said("named");
    assert_eq!(word, "not given");
    assert!(note.starts_with("PANEL → coiled: attic over K6. "), "{note}");
    assert_eq!(
        sheet.decisive().unwrap().key,
        "apart-D2",
        "what is broken, before what is to be minded"
    );
    // A plan that is broken is for who works to settle.
    input.cables[1].to = "PANEL".to_owned();
    let (_, sheet) = shown(&input);
    for key in ["loop-1", "reached-K2"] {
        assert_eq!(voice.phrase(check(&sheet, key).word()), "settle it first", "{key}");
    }
}

/// NEC 240.4(D): 14 AWG behind 20 A is over once, of its circuit, however many holes it goes through
/// where nothing takes away from what it carries.
#[test]
fn a_thin_wire_is_over_once_and_not_in_each_hole() {
    let mut input = tollgate_row();
    input.boxes[7].marked = Some(Volume::hundredths(1800));
    input.cables.truncate(2);
    input.cables[1].cable = Cable::Nm14x2;
    for run in &mut input.cables {
        run.holes = "P1 P2 P3".to_owned();
    }
    let (_, sheet) = shown(&input);
    assert_eq!(sheet.headline.amount, Amount::Count(1));
    assert_eq!(check(&sheet, "breaker-1").verdict, Verdict::Over);
    assert!(!sheet.checks.iter().any(|it| it.key.starts_with("carries")));
    // Three through a sealed hole, 6 conductors, 80 %: 25 × 0.8 = 20 A, held to 15 by its own column.
    input.cables.push(Run { holes: "P1".to_owned(), ..run("K1", "K3", Cable::Nm12x2, "1", 0) });
    let (answer, sheet) = shown(&input);
    assert_eq!(answer.holes[0].carrying, 6);
    assert_eq!(sheet.headline.amount, Amount::Count(1));
    let carries = check(&sheet, "carries-P1");
    assert_eq!((carries.verdict, carries.source.key), (Verdict::Within, "nec-334.80"));
}

/// Source: NEC 314.16(B)(5): to 2017 all grounds count one; from 2020 one, and a quarter for each past
/// four: 5 × 2.25 ÷ 4 = 2.8125 in³.
#[test]
fn the_working_tells_how_grounds_count() {
    let mut input = tollgate_row();
    input.boxes.iter_mut().for_each(|of| of.marked = None);
    input.boxes[2].marked = Some(Volume::hundredths(6000));
    let told = |input: &Input, edition| {
        let answer = solve(input, edition);
        let sheet = RoughIn::sheet(input, &answer, Basis::default());
        let step = sheet.working.iter().find(|step| step.key == "grounds").unwrap();
        (Voice::default().say(&step.name), step.expr.value().and_then(Value::amount))
    };
    let volume =
        |thousandths: i64| Some(Amount::Volume(Volume::hundredths(thousandths).share(1, 100)));
    let one = volume(22_500);
    assert_eq!(told(&input, E2023), ("K2, 1 ground: up to four count one".to_owned(), one));
    for _ in 0..4 {
        input.cables.push(run("K2", "K1", Cable::Nm12x2, "1", 0));
    }
    let past = "K2, 5 grounds: one, and a quarter for each past four";
    assert_eq!(told(&input, E2023), (past.to_owned(), volume(28_125)));
    let all = "K2, 5 grounds: all count one";
    assert_eq!(told(&input, Electrical::E2017), (all.to_owned(), one));
}

#[test]
fn what_hangs_loose_asks_by_name() {
    let mut input = tollgate_row();
    input.boxes.push(placed("X1", What::Junction, [10, 10], None, 2150));
    input.cables.push(run("D2", "D2", Cable::Nm14x2, "9", 0));
    input.cables.push(run("K3", "", Cable::Data, "", 0));
    // From K2 back to the panel: a loop of circuit 1.
    input.cables.push(run("K2", "PANEL", Cable::Nm12x2, "1", 0));
    let (answer, sheet) = shown(&input);
    for key in ["reached-X1", "ends-D2", "apart-K3", "apart-D2", "loop-1", "fed-9", "lengths"] {
        assert_eq!(check(&sheet, key).verdict, Verdict::Ask, "{key}");
    }
    let note = check(&sheet, "loop-1").note.as_ref().unwrap();
    let said = Voice::default().say(note);
    assert!(said.contains("PANEL – K1 – K2 – PANEL") || said.contains("PANEL – K2 – K1 – PANEL"));
    assert_eq!(answer.circuits[0].worst, None, "what a loop loses isn't worked");
    assert_eq!(check(&sheet, "lengths").value, Amount::Count(1));
    // Both ends of one cable are two cables in that box.
    assert_eq!(answer.boxes[8].contents.cables(), 3);
}

/// NEC 240.4(D): a 14 AWG tail on a circuit of 20 A, which nobody has to name.
#[test]
fn a_thin_tail_on_a_thick_circuit_is_over() {
    let mut input = tollgate_row();
    input.cables[0].breaker = None;
    input.cables[1].cable = Cable::Nm14x2;
    let (_, sheet) = shown(&input);
    assert_eq!(check(&sheet, "breaker-1").verdict, Verdict::Over);
    let name = Voice::default().say(&check(&sheet, "breaker-1").name);
    assert_eq!(name, "Circuit 1, breaker as assumed, on its thinnest wire");
    // Circuit 4 is one thick cable, and nobody read its breaker.
    let assumed = check(&sheet, "breaker-4");
    assert_eq!(assumed.verdict, Verdict::Ask);
    let said = Voice::default().say(assumed.note.as_ref().unwrap());
    assert_eq!(said, "20 A is assumed: read its breaker and put it in.");
    assert_eq!(check(&sheet, "breaker-3").verdict, Verdict::Within);
    input.cables[0].breaker = Some(Measure::whole(&unit::AMPERE, 15));
    assert_eq!(check(&shown(&input).1, "breaker-1").verdict, Verdict::Within);
    input.cables[1].breaker = Some(Measure::whole(&unit::AMPERE, 20));
    let (_, sheet) = shown(&input);
    assert_eq!(check(&sheet, "breaker-1").verdict, Verdict::Over, "the largest counts");
    assert_eq!(check(&sheet, "breakers-1").verdict, Verdict::Ask);
    input.cables[1].load = Some(Measure::whole(&unit::AMPERE, 24));
    let (_, sheet) = shown(&input);
    assert_eq!(check(&sheet, "load-1").verdict, Verdict::Over);
    assert_eq!(sheet.headline.amount, Amount::Count(2), "box D1, and circuit 1 once");
}

/// Who was there when it was dead stands on this screen alone, and changes nothing else.
#[test]
fn a_dead_test_is_a_note_on_the_screen_and_nothing_more() {
    let mut input = tollgate_row();
    let (answer, plain) = shown(&input);
    let proof = Proof {
        dead: Day::new(2026, 11, 24),
        dead_time: "14:10".to_owned(),
        dead_by: "R.".to_owned(),
        ..Proof::blank()
    };
    input.cables[2].proof = proof.clone();
    let (same, sheet) = shown(&input);
    assert_eq!(same, answer);
    assert_eq!(sheet.parts[0].key, SCREEN_ONLY);
    let said = |sheet: &Sheet| Voice::default().say(&sheet.parts[0].rows[0].value);
    assert_eq!(
        said(&sheet),
        "Tested dead 2026-11-24 14:10 by R.: prove again before you touch it."
    );
    let rest = Sheet { parts: sheet.parts[1..].to_vec(), ..sheet.clone() };
    assert_eq!(rest, plain, "no list, label or check says it");
    let live = Proof { live: Day::new(2026, 11, 25), ..proof };
    input.cables[2].proof = live;
    assert!(said(&shown(&input).1).ends_with("power restored 2026-11-25: it is live."));
    // It goes into no address.
    let sent = without_evidence(Input::ROWS, &input.write_parts());
    let (back, _) = Reader::form::<Input>(&sent, Units::Customary).unwrap();
    assert_eq!(back, tollgate_row());
}

#[test]
fn kinds_stand_in_the_order_of_sheathed_cable() {
    for (at, kind) in Cable::ALL.iter().enumerate() {
        let key = Sheathed::ALL.get(at).map(|it| it.key());
        assert_eq!(kind.power().map(|it| it.key()), key);
        assert!(key.is_none_or(|key| key == kind.key()));
    }
}

#[test]
fn working_and_the_tightest_box_agree() {
    for edition in [Electrical::E2017, Electrical::E2020, E2023] {
        let input = tollgate_row();
        let answer = solve(&input, edition);
        for state in &answer.boxes {
            let expr = state.contents.expr(edition).value().and_then(Value::amount);
            assert_eq!(expr, Some(Amount::Volume(state.fill)));
        }
    }
}

proptest! {
    /// On a side, or farther in than any habit reaches, a box is told of nowhere; between, wherever it is,
    /// and from whichever corner the room is measured.
    #[test]
    fn a_box_is_off_the_walls_or_not_from_whichever_corner(
        long in 24_i64..400, wide in 24_i64..400, x in 0_i64..400, y in 0_i64..400,
    ) {
        prop_assume!(x <= long && y <= wide);
        let is_told = |x: i64, y: i64| {
            let boxes = vec![placed("B1", What::Receptacle, [x, y], Some(16), 1800)];
            let (longest, widest) = (inches(long), inches(wide));
            let (_, sheet) = shown(&Input { boxes, longest, widest, ..Input::blank() });
            sheet.checks.iter().any(|check| check.key == "walls")
        };
        let on_or_near = |most: i64| {
            (0..=most).any(|off| [x, y].contains(&off) || x + off == long || y + off == wide)
        };
        let here = is_told(x, y);
        prop_assert_eq!(here, on_or_near(24) && !on_or_near(2));
        prop_assert_eq!(here, is_told(long - x, y));
        prop_assert_eq!(here, is_told(x, wide - y));
    }

    #[test]
    fn labels_are_found_as_by_the_librarys_sort(
        names in prop::collection::vec("[ab]{0,3}", 0..40),
    ) {
        let known: Vec<String> = names.iter().map(|name| known_as(name)).collect();
        let mut sorted: Vec<usize> = (0..names.len()).collect();
        sorted.sort_by(|a, b| known[*a].cmp(&known[*b]));
        prop_assert_eq!(ordered(names.len(), &|a, b| known[a].cmp(&known[b])), sorted.clone());
        let index = Index::new(known.clone());
        for name in &names {
            let found = index.find(&format!(" {name} ")).unwrap();
            prop_assert_eq!(&known[found], &known_as(name));
        }
        prop_assert_eq!(index.find("c"), None);
        let twice = sorted.windows(2).filter(|pair| known[pair[0]] == known[pair[1]]).count();
        prop_assert_eq!(index.groups().iter().map(|(_, same)| same.len() - 1).sum::<usize>(), twice);
        let groups: Vec<usize> = index.groups().iter().flat_map(|it| it.1.to_vec()).collect();
        prop_assert_eq!(groups, sorted);
    }

    /// Rolls hold all pieces, none of them is there for nothing, and no less length could.
    #[test]
    fn rolls_hold_every_piece_whole(
        feet in prop::collection::vec(1_i64..120, 1..24), which in 1_usize..16,
    ) {
        let sold: Vec<i64> = [250, 100, 50, 25].into_iter().enumerate()
            .filter(|(at, _)| which >> at & 1 == 1).map(|(_, feet)| feet).collect();
        let mut feet = feet;
        feet.sort_by_key(|it| -it);
        let pieces: Vec<Length> = feet.iter().map(|it| Length::inches(it * 12, 1)).collect();
        let cut = pieces.iter().copied().fold(Length::ZERO, Length::plus);
        let found = rolls(&pieces, cut, &sold);
        if feet[0] > sold[0] {
            prop_assert!(found.is_empty());
            return Ok(());
        }
        let bought = found.iter().fold(0, |sum, (long, count)| sum + long.nanometres() * count);
        prop_assert!(bought >= cut.nanometres());
        // Longest piece first into the first roll with room: all go in.
        let mut left: Vec<i64> = found.iter()
            .flat_map(|(long, count)| vec![long.nanometres(); *count as usize]).collect();
        for piece in &pieces {
            left.sort_unstable();
            let room = left.iter_mut().find(|left| **left >= piece.nanometres());
            prop_assert!(room.is_some(), "{:?}", found);
            *room.unwrap() -= piece.nanometres();
        }
        // A whole shortest roll less would be less than is cut, or was tried and didn't hold them.
        let step = Length::inches(12 * sold[sold.len() - 1], 1).nanometres();
        prop_assert!(bought % step == 0 || sold[0] % sold[sold.len() - 1] != 0);
    }
}

/// Six boxes side by side, three inches apart: some words find no clear place and are left out, and
/// those that are there lie on no box and on no other word.
#[test]
fn no_word_of_the_drawing_lies_on_a_box() {
    let mut input = crowd(6);
    input.cables.clear();
    let (_, sheet) = shown(&input);
    let drawing = sheet.drawing.unwrap();
    let (mut squares, mut words) = (Vec::new(), Vec::new());
    for ink in &drawing.ink {
        match ink {
            Ink::Path { points, closed: true, .. } => squares.push((points[0], points[2])),
            Ink::Label { at, text, .. } => words.push((*at, Voice::default().say(text))),
            _ => {}
        }
    }
    assert_eq!(squares.len(), 6);
    assert!((2..=6).contains(&words.len()), "{words:?}");
    let px = |count: i64| drawing.width.times(count).part(288);
    for (at, word) in &words {
        let half = px(word.chars().count() as i64 * 4);
        for (low, high) in &squares {
            let clear = at.x.plus(half) <= low.x
                || high.x <= at.x.minus(half)
                || at.y.plus(px(7)) <= low.y
                || high.y <= at.y.minus(px(7));
            assert!(clear, "{word} on a box");
        }
    }
}

fn crowd(count: i64) -> Input {
    let boxes = (0..count).map(|at| PlacedBox {
        label: format!("R{at}"),
        x: Some(Length::inches(at * 3, 1)),
        y: Some(Length::ZERO),
        high: Some(Length::inches(16, 1)),
        ..PlacedBox::blank()
    });
    let far = PlacedBox { label: "FAR".to_owned(), ..boxes.clone().next().unwrap() };
    let boxes = boxes.take(count as usize - 1);
    let far = PlacedBox { x: Some(Length::inches(120, 1)), ..far };
    Input { boxes: boxes.chain([far]).collect(), ..Input::blank() }
}
