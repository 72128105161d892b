//! Laws of a plan of boxes and cables: each box as box fill has it, lengths that follow a move
//! exactly, currents as a dense solve of the network has them, and nothing that hangs on order or
//! on names.

use ledgerboard_core::calculators::Calculator;
use ledgerboard_core::calculators::box_fill;
use ledgerboard_core::calculators::rough_in::{
    Answer, Cable, Input, Mount, PlacedBox, RoughIn, Run, Volts, What, solve,
};
use ledgerboard_core::edition::{Basis, Electrical};
use ledgerboard_core::fields::{Form, Typed};
use ledgerboard_core::measure::unit::AMPERE;
use ledgerboard_core::measure::{Length, Measure, Volume};
use ledgerboard_core::rules::electrical::enclosure::Enclosure;
use ledgerboard_core::rules::electrical::metal_boxes::TABLE;
use ledgerboard_core::rules::electrical::voltage_drop::{of_cable, resistance};
use ledgerboard_core::sheet::{Check, Sheet, Verdict};
use proptest::prelude::*;

const WHATS: [What; 6] =
    [What::Receptacle, What::Switch, What::Light, What::Junction, What::Alarm, What::Other];

fn inches(count: i64) -> Option<Length> {
    Some(Length::inches(count, 4))
}

prop_compose! {
    fn a_box()(
        what in prop::sample::select(&WHATS[..]), ceiling in any::<bool>(),
        high in 0_i64..400, x in 0_i64..960, y in 0_i64..960, volume in 1000_i64..4000,
        metal in prop::option::weighted(0.4, 0..TABLE.len()), devices in 0_i64..4, clamps in any::<bool>(),
    ) -> PlacedBox {
        PlacedBox {
            what,
            mount: if ceiling { Mount::Ceiling } else { Mount::Wall },
            high: inches(high),
            x: inches(x),
            y: inches(y),
            enclosure: metal.map_or(Enclosure::Marked, Enclosure::Metal),
            marked: Some(Volume::hundredths(volume)),
            devices,
            clamps,
            ..PlacedBox::blank()
        }
    }
}

/// A cable as it is drawn: where it comes from, whether it is written the other way round, its kind,
/// its load in tenths of an ampere, its way if typed, its holes, and whether it is of 240 V.
type Drawn = (prop::sample::Index, bool, Cable, i64, Option<i64>, &'static str, bool);

/// A tree: box 0 is the panel, and cable n joins box n + 1 to one before it, written down either way
/// round, with its load in box n + 1. Some cables more are coiled, or close loops where `loops`.
fn a_plan(loops: bool) -> impl Strategy<Value = Input> {
    let run = || {
        (
            any::<prop::sample::Index>(),
            any::<bool>(),
            prop::sample::select(Cable::ALL),
            0_i64..200,
            prop::option::weighted(0.2, 1_i64..4000),
            prop::sample::select(vec!["", "P1", "p2", "P1 P2", "P3;P1"]),
            any::<bool>(),
        )
    };
    let boxes = prop::collection::vec(a_box(), 1..9);
    let more = prop::collection::vec((any::<prop::sample::Index>(), run()), 0..4);
    (boxes, prop::collection::vec(run(), 9), more, 60_i64..480, 0_i64..48).prop_map(
        move |(mut boxes, runs, more, high, above)| {
            for (at, it) in boxes.iter_mut().enumerate() {
                it.label = format!("B{at}");
                it.high = it.high.min(Some(Length::inches(high, 2)));
            }
            boxes[0].what = What::Panel;
            boxes[0].label = "PANEL".to_owned();
            let label = |at: usize| boxes[at].label.clone();
            let of = |from: usize, to: Option<usize>, drawn: &Drawn| {
                let (_, back, cable, tenths, length, holes, high) = drawn;
                let ends = (label(from), to.map(label).unwrap_or_default());
                let (from, to) = if *back && to.is_some() { (ends.1, ends.0) } else { ends };
                Run {
                    from,
                    to,
                    cable: *cable,
                    circuit: "7".to_owned(),
                    load: Some(Measure::hundredths(&AMPERE, tenths * 10)),
                    length: length.and_then(inches).into(),
                    holes: (*holes).to_owned(),
                    volts: if *high { Volts::V240 } else { Volts::V120 },
                    ..Run::blank()
                }
            };
            let mut cables = Vec::new();
            for (to, run) in (1..boxes.len()).zip(&runs) {
                cables.push(of(run.0.index(to), Some(to), run));
            }
            for (from, run) in &more {
                let to = loops.then(|| run.0.index(boxes.len()));
                cables.push(of(from.index(boxes.len()), to, run));
            }
            let [high, above] = [high, above].map(|at| Length::inches(at, 2));
            Input { boxes, cables, high, above, bit: inches(4), ..Input::blank() }
        },
    )
}

fn sheet(input: &Input, edition: Electrical) -> (Answer, Sheet) {
    let basis = Basis { electrical: Some(edition) };
    let answer = solve(input, edition);
    let sheet = RoughIn::sheet(input, &answer, basis);
    (answer, sheet)
}

/// The same contents as box fill takes them.
fn in_box_fill(input: &Input, at: usize) -> box_fill::Input {
    let of = &input.boxes[at];
    let mut cables = Vec::new();
    for run in &input.cables {
        let ends = [&run.from, &run.to].into_iter().filter(|label| **label == of.label).count();
        if let (Some(cable), 1..) = (run.cable.power(), ends) {
            cables.push(box_fill::Cable { cable, count: ends as i64, ..box_fill::Cable::blank() });
        }
    }
    let devices = match of.gangs() {
        0 => Vec::new(),
        gangs => vec![box_fill::Device { count: gangs, ..box_fill::Device::blank() }],
    };
    let clamps = if of.clamps { box_fill::Clamps::Inside } else { box_fill::Clamps::Outside };
    let ganged = of.enclosure.metal().is_some_and(|metal| metal.family.gangs());
    box_fill::Input {
        enclosure: of.enclosure,
        marked: of.marked.unwrap(),
        gangs: if ganged { of.gangs().max(1) } else { 1 },
        cables,
        devices,
        clamps,
        ..box_fill::Input::blank()
    }
}

type Told = (String, i128, i128, Verdict);

fn told(checks: &[Check], rename: &dyn Fn(&str) -> String) -> Vec<Told> {
    let mut all: Vec<Told> = checks
        .iter()
        .map(|it| (rename(&it.key), it.value.raw(), it.limit.raw(), it.verdict))
        .collect();
    all.sort();
    all
}

fn same(one: &Sheet, other: &Sheet, rename: &dyn Fn(&str) -> String) {
    assert_eq!(one.headline.amount, other.headline.amount);
    let figures = |sheet: &Sheet| -> Vec<_> {
        sheet.figures.iter().map(|figure| (figure.key, figure.amount)).collect()
    };
    assert_eq!(figures(one), figures(other));
    assert_eq!(one.materials, other.materials);
    assert_eq!(told(&one.checks, rename), told(&other.checks, &str::to_owned));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn each_box_is_filled_as_box_fill_has_it(
        input in a_plan(true), edition in prop::sample::select(&Electrical::ALL[..]),
    ) {
        let answer = solve(&input, edition);
        for at in 1..input.boxes.len() {
            let oracle = box_fill::solve(&in_box_fill(&input, at), edition).unwrap();
            prop_assert_eq!(answer.boxes[at].fill, oracle.sides[0].fill);
            prop_assert_eq!(answer.boxes[at].volume, Some(oracle.sides[0].volume));
        }
    }

    /// Out along one wall: each of its cables by place is longer or shorter by |d| or less, by
    /// exactly |d| where both ends were on one side of it; all else stays.
    #[test]
    fn a_move_changes_the_cables_of_that_box_and_no_other(
        input in a_plan(false), which in any::<prop::sample::Index>(), by in -200_i64..200,
    ) {
        let at = which.index(input.boxes.len());
        let mut moved = input.clone();
        let place = moved.boxes[at].x.unwrap();
        moved.boxes[at].x = Some(place.plus(Length::inches(by, 4)));
        let (before, after) = (solve(&input, Electrical::E2023), solve(&moved, Electrical::E2023));
        prop_assert_eq!(&before.boxes, &after.boxes);
        let x = |input: &Input, at: usize| input.boxes[at].x.unwrap().nanometres();
        for (number, (old, new)) in before.cables.iter().zip(&after.cables).enumerate() {
            let other = match old.to {
                Some(to) if input.cables[number].length == Typed::Empty => {
                    if old.from == at { Some(to) } else if to == at { Some(old.from) } else { None }
                }
                _ => None,
            };
            let Some(other) = other.filter(|other| *other != at) else {
                prop_assert_eq!((old.way, old.cut, old.staples), (new.way, new.cut, new.staples));
                continue;
            };
            let far = |input: &Input| (x(input, at) - x(input, other)).abs();
            let grew = new.way.unwrap().nanometres() - old.way.unwrap().nanometres();
            prop_assert_eq!(grew, far(&moved) - far(&input));
            prop_assert!(grew.abs() <= Length::inches(by.abs(), 4).nanometres());
        }
    }

    #[test]
    fn neither_order_nor_names_change_a_figure(
        input in a_plan(true), turn in 0_usize..12, edition in prop::sample::select(&Electrical::ALL[..]),
    ) {
        let (_, as_is) = sheet(&input, edition);
        let mut turned = input.clone();
        let (boxes, cables) = (turned.boxes.len(), turned.cables.len());
        turned.boxes.rotate_left(turn % boxes);
        turned.boxes.reverse();
        if cables > 0 {
            turned.cables.rotate_left(turn % cables);
            turned.cables.reverse();
        }
        same(&as_is, &sheet(&turned, edition).1, &str::to_owned);
        // B1 becomes Z9, and so on: another order by name too.
        let renamed = |label: &str| match label.strip_prefix('B').and_then(|it| it.parse::<u8>().ok()) {
            Some(number) => format!("Z{}", 9 - number),
            None => label.to_owned(),
        };
        let mut named = input.clone();
        named.boxes.iter_mut().for_each(|it| it.label = renamed(&it.label));
        for run in &mut named.cables {
            (run.from, run.to) = (renamed(&run.from), renamed(&run.to));
        }
        same(&as_is, &sheet(&named, edition).1, &|key| match key.rsplit_once('-') {
            Some((kind, label)) => format!("{kind}-{}", renamed(label)),
            None => key.to_owned(),
        });
    }

    /// By nodes, dense: each box's voltage from the conductances between boxes, the panel held at
    /// nothing, loads drawn out of their boxes. No tree, no order, no path is known to it.
    #[test]
    fn what_is_lost_is_what_a_dense_solve_of_the_network_says(input in a_plan(false)) {
        // One circuit, all of power, each way known.
        let mut input = input;
        for run in &mut input.cables {
            if run.cable.power().is_none() {
                run.cable = Cable::Nm12x2;
            }
            run.volts = Volts::V120;
        }
        input.cables.retain(|run| !run.to.is_empty());
        let answer = solve(&input, Electrical::E2023);
        let count = input.boxes.len();
        let mut matrix = vec![vec![0.0_f64; count + 1]; count];
        for (number, (run, laid)) in input.cables.iter().zip(&answer.cables).enumerate() {
            let size = run.cable.power().unwrap().conductors().0;
            let ohms = resistance(size, of_cable(size)).unwrap().number() / 1000.0;
            // What is given at both ends is wire too. No length at all joins two boxes as if they were
            // one: a nanometre of it does the same.
            let feet = laid.laid.unwrap().nanometres().max(1) as f64 / 304_800_000.0;
            let siemens = 1.0 / (2.0 * feet * ohms);
            let (a, b) = (laid.from, laid.to.unwrap());
            for (one, other) in [(a, b), (b, a)] {
                matrix[one][one] += siemens;
                matrix[one][other] -= siemens;
            }
            matrix[number + 1][count] += run.load.unwrap().number();
        }
        matrix[0] = vec![0.0; count + 1];
        matrix[0][0] = 1.0;
        let volts = eliminated(matrix);
        let most = volts.iter().copied().fold(0.0, f64::max);
        let ours = answer.circuits.first().and_then(|it| it.worst.as_ref());
        let ours = ours.map_or(0.0, |worst| worst.volts.number());
        prop_assert!((ours - most).abs() <= 1e-6 * (1.0 + most), "{} and {}", ours, most);
        prop_assert!(answer.circuits.iter().all(|it| it.looped.is_empty() && it.unfed == 0));
    }

    /// Whatever hangs loose has a check of its own that asks by its name.
    #[test]
    fn nothing_hangs_loose_unnoticed(input in a_plan(true), cut in any::<prop::sample::Index>()) {
        let mut input = input;
        if !input.cables.is_empty() {
            input.cables.remove(cut.index(input.cables.len()));
        }
        let (answer, sheet) = sheet(&input, Electrical::E2023);
        let asks = |key: &str| sheet.checks.iter().any(|it| it.key == key && it.verdict == Verdict::Ask);
        for of in &input.boxes {
            let ends = input.cables.iter().filter(|run| run.from == of.label || run.to == of.label);
            prop_assert_eq!(asks(&format!("reached-{}", of.label)), ends.count() == 0);
            let both = input.cables.iter().any(|run| run.from == of.label && run.to == of.label);
            prop_assert_eq!(asks(&format!("ends-{}", of.label)), both);
        }
        let no_way = input.cables.iter().any(|run| run.to.is_empty() && run.length == Typed::Empty);
        prop_assert_eq!(asks("lengths"), no_way);
        // By joining boxes, not by a walk: more cables than it takes to join them is a loop.
        let mut group: Vec<usize> = (0..input.boxes.len()).collect();
        let mut loops = false;
        let power = |at: &usize| input.cables[*at].cable.power().is_some();
        for at in (0..input.cables.len()).filter(power) {
            let laid = &answer.cables[at];
            let Some(to) = laid.to.filter(|to| *to != laid.from) else { continue };
            let (one, other) = (group[laid.from], group[to]);
            loops |= one == other;
            group.iter_mut().filter(|it| **it == other).for_each(|it| *it = one);
        }
        prop_assert_eq!(asks("loop-7"), loops);
        if let Some(circuit) = answer.circuits.first().filter(|_| !loops) {
            let away = (0..input.cables.len()).filter(power).filter(|at| {
                let laid = &answer.cables[*at];
                group[laid.from] != group[0] || (laid.to == Some(laid.from) && laid.from != 0)
            });
            prop_assert_eq!(circuit.unfed, away.count() as i64);
        }
    }

    /// The way back from a loop is one: each box of it is joined to the next by a cable.
    #[test]
    fn a_loop_is_named_by_boxes_that_are_joined(input in a_plan(true)) {
        let answer = solve(&input, Electrical::E2023);
        for circuit in &answer.circuits {
            let at = |node: usize| if node < input.boxes.len() { node } else { 0 };
            let ring = &circuit.looped;
            for (place, node) in ring.iter().enumerate() {
                let (one, other) = (at(*node), at(ring[(place + 1) % ring.len()]));
                let joined = answer.cables.iter().any(|laid| {
                    (laid.from, laid.to) == (one, Some(other)) || (laid.from, laid.to) == (other, Some(one))
                });
                prop_assert!(joined, "{:?}", ring);
            }
        }
    }
}

/// Gauss and Jordan, with the largest pivot.
fn eliminated(mut rows: Vec<Vec<f64>>) -> Vec<f64> {
    let count = rows.len();
    for at in 0..count {
        let pivot =
            (at..count).max_by(|a, b| rows[*a][at].abs().total_cmp(&rows[*b][at].abs())).unwrap();
        rows.swap(at, pivot);
        let head = rows[at].clone();
        for (other, row) in rows.iter_mut().enumerate() {
            let by = row[at] / head[at];
            if other != at && by != 0.0 {
                row.iter_mut().zip(&head).for_each(|(it, head)| *it -= by * head);
            }
        }
    }
    (0..count).map(|at| rows[at][count] / rows[at][at]).collect()
}
