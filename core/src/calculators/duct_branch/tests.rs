//! Worked cases, then laws.

use super::*;
use crate::fields::Form;
use crate::measure::Units;
use crate::sheet::Value;
use crate::words::{Amount, Voice};
use proptest::prelude::*;

fn feet(feet: i64) -> Option<Length> {
    Some(Length::inches(feet * 12, 1))
}

/// 6-in metal of 100 effective ft with 100 cfm.
fn branch() -> Input {
    Input {
        now: Run::round(DuctKind::Round, Length::inches(6, 1), Length::inches(1200, 1), None),
        flow: Some(Measure::whole(&CFM, 100)),
        wrap: OldWrap::No,
        ..Input::blank()
    }
}

fn with_piece(kind: Piece, size: i64, long: i64, slack: i64) -> Input {
    Input {
        piece: kind,
        piece_diameter: Some(Length::inches(size, 1)),
        piece_length: feet(long),
        piece_slack: (kind == Piece::Flex).then(|| Measure::whole(&PERCENT, slack)),
        ..branch()
    }
}

/// Source: Colebrook by the `fluids` 1.3 library (PyPI), the slack by ASHRAE Fundamentals 2021, ch.
/// 21, solved for the flow outside this program.
#[test]
fn a_longer_branch_at_held_pressure() {
    let answer = solve(&branch()).unwrap();
    assert!((answer.loss - 0.0831).abs() < 1e-4, "{}", answer.loss);
    let longer = |added| Input { added: feet(added), ..branch() };
    for (input, want) in [
        (longer(10), 94.9),
        (longer(22), 89.5),
        (longer(40), 82.9),
        (with_piece(Piece::Flex, 6, 12, 0), 92.0),
        (with_piece(Piece::Flex, 6, 12, 4), 85.2),
        (with_piece(Piece::Flex, 6, 12, 15), 72.1),
        (with_piece(Piece::Flex, 6, 12, 30), 61.1),
        (with_piece(Piece::Round, 7, 22, 0), 94.6),
    ] {
        let got = solve(&input).unwrap().after;
        assert!((got - want).abs() < 0.11, "{got} and not {want}");
    }
}

/// The same piece, told by how long it is pulled tight: 12 ft of 15 % are 14 ft 1.41 in.
#[test]
fn slack_by_length_is_slack_by_share() {
    let tight = Length::from_nanometres(Length::inches(144, 1).nanometres() * 100 / 85);
    let by_length =
        Input { piece_slack: None, piece_tight: Some(tight), ..with_piece(Piece::Flex, 6, 12, 15) };
    let by_share = with_piece(Piece::Flex, 6, 12, 15);
    let (a, b) = (solve(&by_length).unwrap().after, solve(&by_share).unwrap().after);
    assert!((a / b - 1.0).abs() < 1e-6, "{a} and {b}");
}

/// Source: by hand, from the friction table at 0.08 and 0.10 in wc per 100 ft: 122 ft that lose
/// 0.0831 lose 0.0681 a hundred, which 100 cfm does in a duct between 6 and 7 in.
#[test]
fn the_size_that_gives_the_air_back() {
    let longer = Input { added: feet(22), ..branch() };
    let Some(Size::Inches(size)) = solve(&longer).unwrap().size else { panic!("a size") };
    assert!(size > 6.0 && size < 7.0, "{size}");
    let sized = Input { new_diameter: Some(crate::rules::air::working::inches(size)), ..longer };
    let again = solve(&sized).unwrap();
    assert!((again.after - 100.0).abs() < 1e-4, "{}", again.after);
    let slack = with_piece(Piece::Flex, 4, 40, 30);
    assert_eq!(solve(&slack).unwrap().size, Some(Size::None), "no run makes up for that");
    assert_eq!(solve(&branch()).unwrap().size, None);
}

/// Source: three like branches of 300 cfm, one of them changed, solved with the `fluids` 1.3 library
/// (PyPI) by `tests/references/make_duct_cases.py`: 40 ft added to the one of 100 ft.
#[test]
fn where_the_systems_air_is_held_the_others_take_it() {
    let input =
        Input { added: feet(40), system: Some(Measure::whole(&CFM, 300)), others: 2, ..branch() };
    let answer = solve(&input).unwrap();
    let held = answer.held.unwrap();
    assert!((held.flow - 87.953).abs() < 0.01, "{}", held.flow);
    assert!((held.flow + 2.0 * held.other - 300.0).abs() < 1e-9);
    assert!(held.flow > answer.after && held.flow < 100.0);
    assert!((held.loss / answer.now.loss(held.other).drop - 1.0).abs() < 1e-9, "one pressure");
}

#[test]
fn what_does_not_fit_is_said_at_its_field() {
    let cfm = |cfm| Some(Measure::whole(&CFM, cfm));
    for (input, path) in [
        (Input { flow: cfm(1000), ..branch() }, "flow"),
        (Input { flow_least: cfm(120), ..branch() }, "flow_least"),
        (Input { flow_most: cfm(80), ..branch() }, "flow_most"),
        (Input { flow_most: cfm(1000), ..branch() }, "flow_most"),
        (Input { system: cfm(100), ..branch() }, "system"),
        (Input { added: feet(-100), ..branch() }, "added"),
        (Input { piece_tight: feet(14), ..with_piece(Piece::Flex, 6, 12, 4) }, "piece_tight"),
        (
            Input { piece_tight: feet(11), piece_slack: None, ..with_piece(Piece::Flex, 6, 12, 4) },
            "piece_tight",
        ),
        (
            Input { piece_tight: feet(40), piece_slack: None, ..with_piece(Piece::Flex, 6, 12, 4) },
            "piece_tight",
        ),
    ] {
        let faults = solve(&input).unwrap_err();
        assert_eq!(faults[0].path, path);
        assert!(!Voice::default().say(&faults[0].says).is_empty());
    }
}

#[test]
fn old_wrap_that_nobody_looked_at_is_held() {
    for (wrap, held) in [(OldWrap::Unknown, true), (OldWrap::Yes, true), (OldWrap::No, false)] {
        assert_eq!(DuctBranch::disturbs(&Input { wrap, ..branch() }).is_some(), held);
    }
}

/// Every velocity and loss that the working prints, against the answer.
#[test]
fn the_working_comes_to_the_answer() {
    let input = Input { system: Some(Measure::whole(&CFM, 900)), ..Input::sample() };
    let answer = solve(&input).unwrap();
    let sheet = DuctBranch::sheet(&input, &answer, Basis::default());
    let value = |key: &str| {
        let step = sheet.working.iter().find(|step| step.key == key).unwrap();
        match step.expr.value().and_then(Value::amount) {
            Some(Amount::Measure(measure)) => measure.number(),
            other => panic!("{key}: {other:?}"),
        }
    };
    let piece = answer.piece.unwrap();
    for (key, want) in [
        ("now-loss", answer.loss),
        ("after-loss", answer.loss),
        ("run-loss", answer.run.loss(answer.after).drop),
        ("piece-loss", piece.loss(answer.after).drop),
        ("held-loss", answer.held.unwrap().loss),
        ("now-velocity", answer.now.velocity(answer.flow)),
    ] {
        assert!((value(key) / want - 1.0).abs() < 1e-3, "{key}: {} and {want}", value(key));
    }
    for step in &sheet.working {
        for units in [Units::Customary, Units::Metric] {
            assert!(!step.equation(Voice { units, ..Voice::default() }).is_empty());
        }
    }
}

proptest! {
    #[test]
    fn more_duct_or_slack_gives_less_and_both_ends_bracket_the_truth(
        size in 4_i64..10, long in 5_i64..150, cfm in 20_i64..200, added in 1_i64..60,
        slack in 0_i64..30, system in 300_i64..2000,
    ) {
        let input = Input {
            now: Run::round(DuctKind::Flex, Length::inches(size, 1), Length::inches(long * 12, 1), Some(Measure::whole(&PERCENT, slack))),
            flow: Some(Measure::whole(&CFM, cfm)),
            system: Some(Measure::whole(&CFM, system)),
            added: feet(added),
            ..Input::blank()
        };
        let Ok(answer) = solve(&input) else { return Ok(()) };
        let held = answer.held.unwrap();
        prop_assert!(answer.after < answer.flow);
        prop_assert!(held.flow > answer.after && held.flow < answer.flow);
        prop_assert!((held.flow + held.other * 5.0 - system as f64).abs() < 1e-9);
        prop_assert!((answer.run.loss(answer.after).drop / answer.loss - 1.0).abs() < 1e-12);
        let longer = solve(&Input { added: feet(added + 1), ..input.clone() }).unwrap();
        prop_assert!(longer.after < answer.after);
        let pulled = solve(&Input { cut_slack: true, ..input.clone() }).unwrap();
        prop_assert!(pulled.after >= answer.after);
        prop_assert_eq!(answer.tight.is_some(), slack > 0);
        if let Some(tight) = answer.tight {
            prop_assert!((tight - pulled.after).abs() < 1e-9);
        }
    }
}
