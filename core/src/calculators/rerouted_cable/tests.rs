//! Cables added up by hand, each side of what is just enough, what is refused, then laws.

use super::*;
use crate::measure::{Measure, Units, unit};
use crate::sheet::{Value, Verdict};
use crate::words::{Amount, Voice};
use proptest::prelude::*;

const YEAR: Electrical = Electrical::E2023;

fn inches(sixteenths: i64) -> Option<Length> {
    Some(Length::inches(sixteenths, 16))
}

fn leg(way: Way, inches: i64) -> Leg {
    Leg { way, length: Some(Length::inches(inches, 1)) }
}

fn percent(count: i64) -> Measure {
    Measure::whole(&unit::PERCENT, count)
}

fn verdicts(input: &Input, edition: Electrical) -> Vec<(String, Verdict)> {
    let sheet = sheet::sheet(input, &solve(input, edition).unwrap());
    sheet.checks.into_iter().map(|check| (check.key, check.verdict)).collect()
}

fn shown(input: &Input, key: &str) -> String {
    let sheet = sheet::sheet(input, &solve(input, YEAR).unwrap());
    let figure = sheet.figures.iter().chain([&sheet.headline]).find(|it| it.key == key);
    figure.unwrap().amount.show(Units::Customary, Rounding::Nearest).text()
}

/// By hand: 54 + 84 + 14 = 152 in; a tenth is 15.2, up to 15-1/4, with 6 in of free wire (NEC 300.14)
/// 173-1/4 of 168: 5-1/4 short; a new piece of 5-1/4 + 2 × 6 = 17-1/4, up to 18. Staples, NEC 334.30: 1 + ⌈(152 - 24) ÷ 54⌉ = 4.
#[test]
fn the_sample_is_worked_as_by_hand() {
    let input = Input::sample();
    for (key, want) in [
        ("have", "14 ft"),
        ("run", "12 ft 8 in"),
        ("allowance", "15-1/4 in"),
        ("free", "6 in"),
        ("need", "14 ft 5-1/4 in"),
        ("short", "5-1/4 in"),
        ("splice-boxes", "1"),
        ("piece", "18 in"),
        ("staples", "4"),
    ] {
        assert_eq!(shown(&input, key), want, "{key}");
    }
    let want = [("reach".to_owned(), Verdict::Over), ("closed-in".to_owned(), Verdict::Ask)];
    assert_eq!(verdicts(&input, YEAR), want);
}

/// By hand: a way of 144 in with no allowance and 6 in of free wire needs 150; with the sheath's
/// end 4 in deep in the box 7 in (NEC 300.14: 3 in past the opening), 151.
#[test]
fn just_enough_is_enough_and_a_sixteenth_less_is_short() {
    let at = |there, emerges| Input {
        there: inches(there),
        emerges,
        new: vec![leg(Way::Up, 60), leg(Way::Across, 84)],
        raise: None,
        allowance: percent(0),
        splice: Place::Attic,
        ..Input::sample()
    };
    for (emerges, enough) in [(None, 150 * 16), (inches(3 * 16), 2400), (inches(4 * 16), 2416)] {
        for (there, want) in
            [(enough, Verdict::Within), (enough + 1, Verdict::Within), (enough - 1, Verdict::Over)]
        {
            let input = at(there, emerges);
            assert_eq!(verdicts(&input, YEAR)[0].1, want, "{there}, {emerges:?}");
            assert_eq!(solve(&input, YEAR).unwrap().splice.is_some(), want == Verdict::Over);
        }
        let asks = verdicts(&at(enough, emerges), Electrical::E2026);
        assert_eq!(asks[0].1, Verdict::Ask, "2026 was not read");
    }
}

/// By hand: 3 ft short, two cables, the box 2 ft back: 36 + 12 + 24 = 72 in each, 12 ft in all.
#[test]
fn a_short_cable_takes_a_box_in_reach_and_a_piece() {
    let input = Input {
        known: Known::Way,
        there: None,
        old: vec![leg(Way::Up, 54), leg(Way::Across, 84), leg(Way::Through, 6)],
        slack: inches(6 * 16),
        left: inches(6 * 16),
        new: Vec::new(),
        raise: inches(42 * 16),
        allowance: percent(0),
        cables: 2,
        splice: Place::Attic,
        back: inches(24 * 16),
        ..Input::sample()
    };
    for (key, want) in [
        ("have", "13 ft"),
        ("run", "15 ft 6 in"),
        ("need", "16 ft"),
        ("short", "3 ft"),
        ("splice-boxes", "2"),
        ("piece", "6 ft"),
        ("buy", "12 ft"),
    ] {
        assert_eq!(shown(&input, key), want, "{key}");
    }
    for (place, want) in [
        (Place::Attic, Verdict::Within),
        (Place::Cover, Verdict::Within),
        (Place::NotSaid, Verdict::Ask),
        (Place::Closed, Verdict::Over),
    ] {
        let input = Input { splice: place, ..input.clone() };
        assert_eq!(verdicts(&input, YEAR)[1].1, want, "{}", place.key());
    }
    let materials = sheet::sheet(&input, &solve(&input, YEAR).unwrap()).materials;
    let want = Amount::Length(Length::inches(144, 1));
    assert!(materials.iter().any(|it| it.key == "cable-as-old" && it.amount == want));
}

#[test]
fn what_can_not_be_is_refused_at_its_field() {
    let refused = |input: Input| {
        let faults = solve(&input, YEAR).unwrap_err();
        (faults[0].path.clone(), Voice::default().say(&faults[0].says))
    };
    let no_way = Input { known: Known::Way, ..Input::sample() };
    assert_eq!(refused(no_way), ("old".into(), "Say its way part by part.".into()));
    let no_new = Input { new: Vec::new(), ..Input::sample() };
    assert_eq!(refused(no_new).0, "new");
    let (path, says) = refused(Input { back: inches(163 * 16), ..Input::sample() });
    assert_eq!(path, "back");
    assert_eq!(says, "There are only 14 ft of old cable: the box can't be that far back.");
    assert!(solve(&Input { back: inches(162 * 16), ..Input::sample() }, YEAR).is_ok());
}

prop_compose! {
    fn any()(
        there in 0_i64..4_000,
        legs in prop::collection::vec(1_i64..900, 1..6),
        raise in prop::option::of(0_i64..800),
        share in 0_i64..=50_000_000,
        emerges in prop::option::of(0_i64..=192),
        cables in 1_i64..=8,
    ) -> Input {
        Input {
            there: inches(there),
            new: legs.into_iter().map(|it| Leg { way: Way::Across, length: inches(it) }).collect(),
            raise: raise.and_then(inches),
            allowance: Measure::new(&unit::PERCENT, share),
            emerges: emerges.and_then(inches),
            cables,
            ..Input::sample()
        }
    }
}

proptest! {
    #[test]
    fn a_higher_ceiling_never_needs_less(input in any(), more in 0_i64..400) {
        let mut higher = input.clone();
        higher.raise = Some(input.raise.unwrap_or_default().plus(Length::inches(more, 16)));
        let (Ok(low), Ok(high)) = (solve(&input, YEAR), solve(&higher, YEAR)) else {
            return Ok(());
        };
        prop_assert!(high.need >= low.need && high.secured.staples >= low.secured.staples);
        let piece = |answer: &Answer| answer.splice.map_or(Length::ZERO, |splice| splice.all);
        prop_assert!(piece(&high) >= piece(&low));
    }

    /// What is left of the old cable, and the new piece, are the way with free wires at four ends.
    #[test]
    fn old_and_new_together_are_the_way_and_its_free_wires(input in any()) {
        let Ok(answer) = solve(&input, YEAR) else { return Ok(()) };
        if let Some(splice) = answer.splice {
            let whole = answer.have.plus(splice.piece);
            let taken = answer.need.plus(answer.free.times(2));
            // The piece is bought by the inch, and up.
            prop_assert!(whole >= taken && whole < taken.plus(Length::inches(1, 1)));
        }
    }

    #[test]
    fn working_comes_to_what_is_shown(input in any()) {
        let Ok(answer) = solve(&input, YEAR) else { return Ok(()) };
        let sheet = sheet::sheet(&input, &answer);
        for step in &sheet.working {
            let figure = sheet.figures.iter().find(|it| it.key == step.key);
            let Some(figure) = figure else { continue };
            let amount = step.expr.value().and_then(Value::amount);
            prop_assert_eq!(amount, Some(figure.amount), "{}", &step.key);
        }
    }
}
