//! What framing sheets never say: loads are for the engineer, and are within nothing; nor is a tie
//! that moves.

use ledgerboard_core::catalog::{self, Worked};
use ledgerboard_core::edition::Basis;
use ledgerboard_core::measure::Units;
use ledgerboard_core::sheet::Verdict;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::Voice;
use ledgerboard_tests::from_rows::fitting;
use proptest::test_runner::{Config, TestRunner};

/// Every answered input of a calculator, and how many were answered.
fn each(id: &str, holds: fn(&Node, &Worked)) -> usize {
    let entry = catalog::find(id).unwrap();
    let answered = std::cell::Cell::new(0);
    let mut runner = TestRunner::new(Config::with_cases(1_000));
    runner
        .run(&fitting(entry.rows), |input| {
            for units in [Units::Customary, Units::Metric] {
                if let Ok(worked) = entry.work(&input, units, Basis::default()) {
                    answered.set(answered.get() + 1);
                    holds(&input, &worked);
                }
            }
            Ok(())
        })
        .unwrap();
    answered.get()
}

#[test]
fn loads_are_never_within_anything() {
    let answered = each("loads", |input, worked| {
        assert_eq!(worked.verdict(), Verdict::Ask, "{input:?}");
        assert!(worked.sheet.checks.iter().all(|check| check.verdict == Verdict::Ask), "{input:?}");
        let next = worked.sheet.next.as_ref().map(|next| Voice::default().say(next));
        assert!(next.is_some_and(|next| next.contains("licensed engineer")));
        assert!(worked.sheet.materials.is_empty(), "loads buy nothing");
    });
    assert!(answered > 500, "{answered}");
}

#[test]
fn a_tie_that_moves_is_never_within() {
    let answered = each("under-a-gable", |input, worked| {
        let up = input.get("up").and_then(Node::leaf).unwrap_or_default();
        if !up.is_empty() && up != "0 in" {
            assert_ne!(worked.verdict(), Verdict::Within, "{input:?}");
        }
        assert!(worked.sheet.next.is_some(), "whose work it is comes first");
    });
    assert!(answered > 300, "{answered}");
}

#[test]
fn lumber_without_a_stamp_is_never_within() {
    let answered = each("joist-spans", |input, worked| {
        if input.get("species").and_then(Node::leaf).as_deref() == Some("unknown") {
            assert!(worked.sheet.checks.iter().all(|check| check.verdict == Verdict::Ask));
        }
    });
    assert!(answered > 500, "{answered}");
}
