//! What editions do to an answer: which are listed as disagreeing, and what an edition says whose
//! text could not be verified.

use ledgerboard_core::catalog::{self, Worked};
use ledgerboard_core::edition::{Basis, Electrical};
use ledgerboard_core::measure::Units;
use ledgerboard_core::sheet::Verdict;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::Voice;
use ledgerboard_tests::from_rows::fitting;
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};

const UNVERIFIED: Electrical = Electrical::E2026;

fn box_fill(json: &str, electrical: Option<Electrical>) -> Worked {
    let node = Node::from_json(json).unwrap();
    let entry = catalog::find("box-fill").unwrap();
    entry.work(&node, Units::Customary, Basis { electrical }).unwrap()
}

fn flips(worked: &Worked) -> Vec<(Electrical, Verdict)> {
    worked.flips.iter().map(|flip| (flip.edition, flip.verdict)).collect()
}

/// Source: NEC 314.16(B): three conductors of 14 AWG at 2.00 in³ are 6.0; the same in every
/// edition that was read.
#[test]
fn over_in_every_verified_edition_is_over_under_an_unverified_one_too() {
    let worked = box_fill(r#"{"marked":"5.9","wires":[{"count":3}]}"#, Some(UNVERIFIED));
    assert_eq!(worked.sheet.verdict(), Verdict::Over);
    let note = worked.sheet.checks[0].note.as_ref().map(|note| Voice::default().say(note));
    assert!(note.unwrap().ends_with("could not be verified."));
    assert_eq!(worked.flips, []);
}

#[test]
fn an_unverified_edition_asks_where_all_verified_ones_say_within_and_that_is_no_disagreement() {
    let worked = box_fill(r#"{"marked":"6","wires":[{"count":3}]}"#, Some(UNVERIFIED));
    assert_eq!(worked.sheet.verdict(), Verdict::Ask);
    assert_eq!(worked.flips, []);
}

/// Source: NEC 2017 and 2020 314.16(B)(5): five grounds of 14 AWG count 2.00 or 2.50 in³.
#[test]
fn editions_are_listed_where_they_really_differ() {
    use Electrical::{E2017, E2020, E2023};
    use Verdict::{Ask, Over, Within};
    let five = r#"{"marked":"2.25","wires":[{"how":"ground","count":5}]}"#;
    for (set, verdict, want) in [
        (None, Over, vec![(E2017, Within)]),
        (Some(E2017), Within, vec![(E2020, Over), (E2023, Over)]),
        (Some(E2023), Over, vec![(E2017, Within)]),
        (Some(UNVERIFIED), Ask, vec![(E2017, Within), (E2020, Over), (E2023, Over)]),
    ] {
        let worked = box_fill(five, set);
        assert_eq!((worked.sheet.verdict(), flips(&worked)), (verdict, want), "{set:?}");
    }
}

/// For every calculator: an unverified edition never says within, is over check by check exactly
/// where all verified ones are, and lists no edition where these agree with it or among themselves
/// on "within".
#[test]
fn an_unverified_edition_is_over_exactly_where_all_verified_ones_are() {
    for entry in catalog::ALL.iter().filter(|entry| entry.electrical) {
        let mut runner = TestRunner::new(Config::with_cases(ledgerboard_tests::cases(entry, 300)));
        runner
            .run(&fitting(entry.rows), |input| {
                let under = |edition| {
                    let basis = Basis { electrical: Some(edition) };
                    entry.work(&input, Units::Customary, basis).ok()
                };
                let Some(shown) = under(UNVERIFIED) else { return Ok(()) };
                let verified: Vec<_> = Electrical::VERIFIED.into_iter().filter_map(under).collect();
                prop_assert_eq!(verified.len(), Electrical::VERIFIED.len());
                for check in &shown.sheet.checks {
                    prop_assert!(check.verdict != Verdict::Within && check.note.is_some());
                    let all_over = verified.iter().all(|other| {
                        let same = other.sheet.checks.iter().find(|same| same.key == check.key);
                        same.is_some_and(|same| same.verdict == Verdict::Over)
                    });
                    prop_assert_eq!(check.verdict == Verdict::Over, all_over, "{}", check.key);
                }
                let verdicts: Vec<_> = verified.iter().map(|it| it.sheet.verdict()).collect();
                if verdicts.iter().all(|verdict| *verdict == Verdict::Within) {
                    prop_assert_eq!(&shown.flips, &[]);
                }
                Ok(())
            })
            .unwrap();
    }
}

/// A clause that names a year would contradict the edition line of any other year: what changed
/// with an edition is said in words.
#[test]
fn no_clause_names_an_edition_that_the_answer_is_not_worked_under() {
    let json = r#"{"marked":"50","wires":[{"how":"ground","count":5}],"blocks":[{}],
        "cables":[{}],"devices":[{}],"clamps":"inside","supports":[{}],"adds":[{"volume":"2"}]}"#;
    for edition in Electrical::ALL {
        let worked = box_fill(json, Some(edition));
        let clauses: Vec<_> =
            worked.sheet.sources().iter().map(|source| source.clause.en).collect();
        assert!(clauses.contains(&"NEC 314.16(B)(5)") && clauses.contains(&"NEC 314.16(B)(6)"));
        for clause in clauses {
            assert!(!clause.contains("NEC 20"), "{edition:?}: {clause}");
        }
    }
}
