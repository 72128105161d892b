//! Worked cases, then trees that another library solved.

use super::*;
use crate::fields::Form;
use crate::measure::unit::{CFM, IN_WC, PERCENT};
use crate::measure::{Length, Units};
use crate::rules::air::run::DuctKind;
use crate::sheet::Value;
use crate::words::{Amount, Voice};
use serde_json::Value as Json;

fn metal(feet: i64, open: Option<i64>) -> Piece {
    Piece {
        diameter: Some(Length::inches(6, 1)),
        length: Some(Length::inches(feet * 12, 1)),
        open: open.map(|open| Measure::whole(&PERCENT, open)),
        ..Piece::blank()
    }
}

fn held(pieces: Vec<Piece>, cfm: i64) -> Answer {
    let total = Some(Measure::whole(&CFM, cfm));
    solve(&Input { pieces, total, ..Input::blank() }).unwrap()
}

fn close(got: f64, want: f64, by: f64) {
    assert!((got - want).abs() <= by, "{got} and not {want}");
}

/// Source: Colebrook by the `fluids` 1.3 library (PyPI) and a handbook's thin opening, solved
/// outside this program: 6-in metal of 100 effective ft that gives 100 cfm at 0.0831 in wc. With a
/// table of screens in the place of the equation: 99.2, 92.6, 74.5, 47.2, 37.6 cfm.
#[test]
fn a_blocked_boot_at_held_pressure() {
    for (open, want, screens) in
        [(90, 98.0, 99.2), (75, 92.4, 92.6), (50, 72.2, 74.5), (30, 45.0, 47.2), (25, 37.2, 37.6)]
    {
        let pressure = Some(Measure::new(&IN_WC, 83_126));
        let pieces = vec![metal(100, Some(open)), metal(100, None)];
        let input = Input { pieces, pressure, held: Held::Pressure, ..Input::blank() };
        let answer = solve(&input).unwrap();
        close(answer.flows.ends[0], want, 0.11);
        close(answer.flows.ends[0] / screens, 1.0, 0.05);
        close(answer.flows.ends[1], 100.0, 0.01);
        close(answer.all_open.unwrap().ends[0], 100.0, 0.01);
    }
}

/// By hand: shut tight it gets nothing, and the rest is worked as if it weren't there.
#[test]
fn a_boot_that_is_shut_tight_gets_nothing() {
    let shut = held(vec![metal(100, None), metal(100, Some(0)), metal(80, None)], 200);
    let without = held(vec![metal(100, None), metal(80, None)], 200);
    assert_eq!(shut.flows.ends[1], 0.0);
    assert_eq!(
        (shut.flows.ends[0], shut.flows.ends[2]),
        (without.flows.ends[0], without.flows.ends[1])
    );
    assert_eq!((shut.flows.pressure, shut.worst), (without.flows.pressure, 1));
    // A trunk that leads to shut branches alone carries nothing; all shut is refused.
    let trunk = || Piece { what: What::Trunk, ..metal(20, None) };
    let beyond = held(vec![metal(100, None), trunk(), metal(100, Some(0))], 100);
    assert_eq!(beyond.flows.ducts, [100.0, 0.0, 0.0]);
    let all = Input { pieces: vec![metal(100, Some(0)), metal(80, Some(0))], ..Input::sample() };
    assert_eq!(solve(&all).unwrap_err()[0].path, "pieces");
    for pieces in [
        vec![metal(100, Some(0)), metal(80, None)],
        vec![metal(100, None), trunk(), metal(100, Some(0))],
    ] {
        let input = Input { pieces, ..Input::sample() };
        let sheet = DuctTree::sheet(&input, &solve(&input).unwrap(), Basis::default());
        assert!(sheet.working.iter().all(|step| step.expr.value().is_some()));
    }
}

/// Source: the same library: three such branches, 300 cfm in all, one of them blocked.
#[test]
fn a_blocked_boot_where_the_systems_air_is_held() {
    for (open, own, other, pressure) in
        [(75, 94.8, 102.6, 0.0870), (50, 79.3, 110.3, 0.0992), (25, 46.4, 126.8, 0.1277)]
    {
        let answer = held(vec![metal(100, None), metal(100, Some(open)), metal(100, None)], 300);
        close(answer.flows.ends[1], own, 0.11);
        close(answer.flows.ends[0], other, 0.06);
        close(answer.flows.ends[2], other, 0.06);
        close(answer.flows.pressure, pressure, 1.1e-4);
        assert_eq!(answer.worst, 1);
        // At the other end the pressure of before stays, and the others keep their air.
        let other = answer.other_end.unwrap();
        close(other.ends[0], 100.0, 0.01);
        assert!(other.ends[1] < answer.flows.ends[1]);
    }
}

/// Source: the same library: two branches of 80 and 120 ft, 200 cfm in all, then the first of 110.
#[test]
fn two_branches_share_by_what_they_lose() {
    for (feet, first, second, pressure) in [(80, 111.2, 88.8, 0.0805), (110, 102.4, 97.6, 0.0954)] {
        let answer = held(vec![metal(feet, None), metal(120, None)], 200);
        close(answer.flows.ends[0], first, 0.06);
        close(answer.flows.ends[1], second, 0.06);
        close(answer.flows.pressure, pressure, 1.1e-4);
        assert_eq!((answer.all_open, answer.worst), (None, 1));
    }
}

fn piece(of: &Json) -> Piece {
    let number = |key: &str| of[key].as_f64();
    let length = |key: &str, times: f64| {
        number(key).map(|value| crate::rules::air::working::inches(value * times))
    };
    let share = |key: &str| Measure::nearest(&PERCENT, number(key)?);
    fn pick<T: Copy>(all: &[T], key: fn(T) -> &'static str, want: &Json) -> T {
        all.iter().copied().find(|it| Some(key(*it)) == want.as_str()).unwrap_or(all[0])
    }
    Piece {
        what: pick(What::ALL, What::key, &of["what"]),
        name: String::new(),
        from: pick(From::ALL, From::key, &of["from"]),
        kind: pick(DuctKind::ALL, DuctKind::key, &of["kind"]),
        diameter: length("inches", 1.0),
        wide: length("wide", 1.0),
        high: length("high", 1.0),
        length: length("feet", 12.0),
        slack: share("slack"),
        open: share("open"),
    }
}

/// Source: `tests/references/make_duct_trees.py`, which solves trees in SI units with `fluids` 1.3.1
/// and `scipy` 1.17.1 (PyPI).
#[test]
fn trees_that_another_solver_solved() {
    let mut seen = 0;
    for line in include_str!("../../../../tests/references/duct-trees.jsonl").lines() {
        let case: Json = serde_json::from_str(line).unwrap();
        let pieces = case["pieces"].as_array().unwrap().iter().map(piece).collect();
        let (total, pressure) = (case["total"].as_f64(), case["pressure"].as_f64().unwrap());
        let input = Input {
            pieces,
            held: if total.is_some() { Held::Total } else { Held::Pressure },
            total: total.and_then(|it| Measure::nearest(&CFM, it)),
            pressure: Measure::nearest(&IN_WC, pressure),
        };
        let answer = solve(&input).unwrap();
        assert!(answer.flows.left_over <= ENOUGH);
        close(answer.flows.pressure / pressure, 1.0, 0.005);
        for (got, want) in answer.flows.ends.iter().zip(case["flows"].as_array().unwrap()) {
            close(got / want.as_f64().unwrap(), 1.0, 0.005);
        }
        seen += answer.flows.ends.len();
    }
    assert!(seen > 150, "{seen}");
}

#[test]
fn a_walk_is_read_as_it_is_walked() {
    let trunk = |from| Piece { what: What::Trunk, from, ..metal(10, None) };
    let answer = held(
        vec![
            metal(20, None),
            trunk(From::End),
            metal(20, None),
            trunk(From::End),
            metal(20, None),
            trunk(From::Beside),
            metal(20, None),
            trunk(From::Handler),
            metal(20, None),
            trunk(From::End),
        ],
        400,
    );
    let ways: Vec<Vec<usize>> =
        answer.ways.iter().map(|way| way.iter().map(|at| answer.ducts[*at].at).collect()).collect();
    assert_eq!(ways, [vec![0], vec![1, 2], vec![1, 3, 4], vec![1, 5, 6], vec![7, 8]]);
    assert_eq!(answer.blind, [9]);
    close(answer.flows.ends[2], answer.flows.ends[3], 1e-6);
}

#[test]
fn no_branch_and_too_many_are_refused() {
    for count in [0, 9] {
        let pieces = vec![metal(20, None); count];
        let total = Some(Measure::whole(&CFM, 300));
        let faults = solve(&Input { pieces, total, ..Input::blank() }).unwrap_err();
        assert_eq!(faults[0].path, "pieces");
    }
}

#[test]
fn the_working_closes_every_way() {
    let input = Input::sample();
    let answer = solve(&input).unwrap();
    let sheet = DuctTree::sheet(&input, &answer, Basis::default());
    let value = |key: &str| {
        let step = sheet.working.iter().find(|step| step.key == key).unwrap();
        match step.expr.value().and_then(Value::amount) {
            Some(Amount::Measure(measure)) => measure.number(),
            other => panic!("{key}: {other:?}"),
        }
    };
    for way in ["way-2", "way-3"] {
        close(value(way) / answer.flows.pressure, 1.0, 1e-4);
    }
    assert!(!sheet.working.iter().any(|step| step.key == "way-1"), "one duct is a way by itself");
    for (at, placed) in answer.ducts.iter().enumerate() {
        let want = placed.duct.loss(placed.flow).drop;
        close(value(&["loss-", &(at + 1).to_string()].concat()) / want, 1.0, 1e-3);
    }
    close(value("total"), 300.0, 1e-5);
    assert!(value("left-over") <= 1.0);
    let named = Input {
        pieces: vec![Piece { name: "Kitchen {0}".to_owned(), ..metal(20, None) }],
        ..Input::sample()
    };
    let sheet = DuctTree::sheet(&named, &solve(&named).unwrap(), Basis::default());
    let voice = Voice { units: Units::Metric, ..Voice::default() };
    assert_eq!(voice.say(&sheet.headline.name), "1 Kitchen 0, air");
}
