//! Orders by hand, then laws.

use super::*;
use crate::fields::Form;
use crate::measure::Day;
use crate::sheet::Verdict;
use proptest::prelude::*;

fn taken(what: What, off: Option<u8>, back: Option<u8>) -> Taken {
    let day = |day: u8| Day::new(2026, 11, day).unwrap();
    Taken { what, off: off.map(day), back: back.map(day), ..Taken::blank() }
}

fn worked(items: Vec<Taken>) -> (Answer, Sheet) {
    let input = Input { items };
    let answer = solve(&input).unwrap();
    let sheet = sheet::sheet(&input, &answer);
    (answer, sheet)
}

#[test]
fn what_came_down_last_goes_back_first() {
    let (answer, sheet) = worked(vec![
        taken(What::Door, Some(3), None),
        taken(What::Light, Some(5), None),
        taken(What::Fan, Some(5), None),
        taken(What::Register, None, None),
        taken(What::Other, Some(4), Some(6)),
    ]);
    assert_eq!(answer.order, [3, 2, 1, 0]);
    assert_eq!((sheet.headline.key, sheet.headline.amount.raw()), ("down", 4));
    assert_eq!(sheet.verdict(), Verdict::Within);
    assert_eq!(worked(Vec::new()).1.headline.amount.raw(), 0);
}

/// Common practice: an alarm warns nobody until it is back.
#[test]
fn an_alarm_asks_in_the_headline_until_it_is_back_and_tested() {
    for what in [What::Smoke, What::Co, What::Detector] {
        for off in [None, Some(3)] {
            let (answer, sheet) = worked(vec![taken(what, off, None), taken(What::Fan, off, None)]);
            assert_eq!((answer.alarms, sheet.verdict()), (1, Verdict::Ask));
            assert_eq!((sheet.headline.key, sheet.headline.amount.raw()), ("alarms-out", 1));
        }
        let (answer, sheet) = worked(vec![taken(what, Some(3), Some(30))]);
        assert_eq!((answer.alarms, sheet.verdict()), (1, Verdict::Ask), "a day may be a plan");
        assert_eq!((sheet.headline.key, &*answer.order), ("alarms-out", &[0][..]));
        for back in [None, Some(3)] {
            let tested = Taken { tested: true, ..taken(what, Some(3), back) };
            let (answer, sheet) = worked(vec![tested]);
            assert_eq!((answer.alarms, sheet.verdict()), (0, Verdict::Within));
        }
        let covered = Taken { how: How::Covered, ..taken(what, Some(3), None) };
        assert_eq!(worked(vec![covered]).0.alarms, 1, "covered, it warns nobody");
    }
}

#[test]
fn nothing_is_back_before_it_came_down() {
    let items = vec![taken(What::Fan, Some(3), Some(3)), taken(What::Fan, Some(3), Some(2))];
    let faults = solve(&Input { items }).unwrap_err();
    assert_eq!((faults.len(), &*faults[0].path), (1, "items.1.back"));
}

proptest! {
    #[test]
    fn all_that_is_not_back_is_in_the_order_once(
        days in prop::collection::vec((prop::option::of(1_u8..15), prop::option::of(15_u8..30), any::<bool>()), 0..12),
    ) {
        let items: Vec<_> = days.iter()
            .map(|(off, back, tested)| Taken { tested: *tested, ..taken(What::Co, *off, *back) })
            .collect();
        let (answer, _) = worked(items.clone());
        let mut all = answer.order.clone();
        all.sort_unstable();
        let down: Vec<_> = (0..items.len()).filter(|at| !items[*at].tested).collect();
        prop_assert_eq!(all, down);
        for pair in answer.order.windows(2) {
            let [first, then] = [items[pair[0]].off, items[pair[1]].off];
            let fits = match (first, then) {
                (Some(first), Some(then)) => first > then || (first == then && pair[0] > pair[1]),
                (first, then) => first.is_none() && (then.is_some() || pair[0] > pair[1]),
            };
            prop_assert!(fits, "{:?}", answer.order);
        }
    }
}
