//! Runs worked by hand from the rules, limits on and to either side, then laws.

use super::*;
use crate::fields::Form;
use crate::measure::unit::AMPERE;
use crate::measure::{Rounding, Units};
use crate::rules::electrical::bundling::{Lie, Warmth};
use crate::rules::electrical::cable_sizes::Sheathed;
use crate::rules::electrical::guard_strips::Entrance;
use crate::rules::electrical::voltage_drop::Heat;
use crate::sheet::{Check, Verdict};
use Verdict::{Ask, Over, Within};
use proptest::prelude::*;

const YEAR: Electrical = Electrical::E2023;

fn inches(inches: i64) -> Option<Length> {
    Some(Length::inches(inches, 1))
}

fn solved(input: &Input) -> Answer {
    solve(input, YEAR).unwrap()
}

fn checks(input: &Input) -> Vec<Check> {
    sheet::sheet(input, &solved(input)).checks
}

fn says(input: &Input, key: &str) -> Option<Verdict> {
    checks(input).iter().find(|check| check.key == key).map(|check| check.verdict)
}

fn next(input: &Input) -> Option<String> {
    let next = sheet::sheet(input, &solved(input)).next?;
    Some(crate::words::Voice::default().say(&next))
}

fn shown(input: &Input, key: &str) -> String {
    let sheet = sheet::sheet(input, &solved(input));
    let figure = sheet.figures.iter().chain([&sheet.headline]).find(|it| it.key == key);
    figure.unwrap().amount.show(Units::Customary, Rounding::Nearest).text()
}

fn parts(legs: &[(Way, i64)]) -> Input {
    let leg = |(way, length): &(Way, i64)| Leg { way: *way, length: inches(*length) };
    Input {
        known: Known::Parts,
        legs: legs.iter().map(leg).collect(),
        plates: 0,
        load: Load::blank(),
        ..Input::sample()
    }
}

/// By hand: from 48 in up to 96, 144 across, down to 16: 48 + 144 + 80 + 4 × 1-1/2 = 278 in; a tenth
/// is 27.8, up to 27-13/16; with 12 in at either box 329-13/16 in = 27 ft 5-13/16. Holes: 144 ÷ 16 =
/// 9. Staples (NEC 334.30): 48 in up takes 1 + ⌈24 ÷ 54⌉ = 2, 80 in down 1 + ⌈56 ÷ 54⌉ = 3.
/// 14 AWG, both ends counted: 2 × (278 + 24) ÷ 12 × 12 × 3.07 ÷ 1000 = 1.85428 V of 120 = 1.55 %.
#[test]
fn the_sample_is_worked_as_by_hand() {
    let input = Input::sample();
    for (key, want) in [
        ("way", "23 ft 2 in"),
        ("cut", "27 ft 5-13/16 in"),
        ("roll", "50 ft"),
        ("holes", "9"),
        ("staples", "5"),
        ("drop", "≈ 1.9 V"),
        ("share", "≈ 1.5 %"),
        ("carries", "15 A"),
        ("radius", "≈ 1-7/8 in"),
    ] {
        assert_eq!(shown(&input, key), want, "{key}");
    }
    assert_eq!(solved(&input).drop.unwrap().volts.millionths(), 1_854_280);
    assert!(checks(&input).iter().all(|check| check.verdict == Within));
}

/// By hand, NEC chapter 9 Table 8: 12-2, 60 ft one way, 16 A, 120 V: 3.7056 V, 3.088 %: over what
/// is advised, and never said to be over a limit. At 3 %: 3.6 ÷ (2 × 16 × 1.93) × 1000 = 58.29 ft.
#[test]
fn sixty_feet_of_12_2_at_16_amperes_lose_a_little_over_3_percent() {
    let mut input = parts(&[(Way::Along, 600)]);
    input.cable = Sheathed::Nm12x2;
    input.load.amperes = Some(Measure::whole(&AMPERE, 16));
    // Past both boxes 10 in, of the 600 in.
    input.legs[0].length = inches(580);
    (input.from_more, input.to_more) = (inches(10), inches(10));
    input.load.before = inches(120);
    let drop = solved(&input).drop.unwrap();
    assert_eq!(drop.volts.millionths(), 3_705_600);
    assert_eq!(drop.share.millionths(), 3_088_000);
    assert_eq!(drop.farthest.nanometres() / 304_800, 58_290);
    let advised = |input: &Input| {
        assert_eq!((says(input, "drop"), says(input, "drop-all")), (None, None), "no verdict");
        next(input).is_some_and(|says| says.contains("that is advised: no limit"))
    };
    assert!(advised(&input));
    // At that distance nothing is said; an inch more brings the advice.
    input.load.before = Some(drop.farthest.minus(Length::inches(600, 1)));
    assert!(!advised(&input));
    input.load.before = input.load.before.map(|it| it.plus(Length::inches(1, 1)));
    assert!(advised(&input));
    // Twice the voltage is half the share; hot or cold moves it a little.
    input.load.volts = Volts::V240;
    assert!(!advised(&input));
    input.load.feeder = Some(Measure::hundredths(&PERCENT, 350));
    assert!(advised(&input));
    input.load.feeder = Some(Measure::hundredths(&PERCENT, 349));
    assert!(!advised(&input));
}

/// Source: NEC 334.30 and 314.17: 100 in box to box takes 3 staples; 24 in one, a sixteenth more two.
#[test]
fn staples_are_those_of_a_run_between_boxes() {
    let of = |legs: &[(Way, i64)]| solved(&parts(legs)).staples;
    assert_eq!(of(&[(Way::Along, 100)]), 3);
    assert_eq!(of(&[(Way::Up, 40), (Way::Along, 60)]), 3, "a corner is no end");
    assert_eq!(of(&[(Way::Along, 24)]), 1);
    assert_eq!(of(&[(Way::Along, 25)]), 2);
    // Through holes from box to box: once at each.
    assert_eq!(of(&[(Way::Through, 100)]), 2);
    assert_eq!(of(&[(Way::Up, 20), (Way::Through, 200), (Way::Down, 20)]), 2);
}

/// Source: NEC 334.80 and its tables: four 12-2 through one foamed hole carry 20 A, five 15 A.
#[test]
fn what_it_carries_among_others_is_as_published() {
    let mut input = Input { cable: Sheathed::Nm12x2, ..Input::sample() };
    for (lie, cables, warmth, hundredths, verdict) in [
        (Lie::InHole, 4, Warmth::Room, 2000, Within),
        (Lie::InHole, 5, Warmth::Room, 1500, Over),
        (Lie::InInsulation, 2, Warmth::Room, 2000, Within),
        (Lie::InInsulation, 3, Warmth::To50, 1968, Ask),
        (Lie::Bundled, 2, Warmth::To40, 2000, Within),
        (Lie::Apart, 1, Warmth::To70, 1740, Ask),
    ] {
        input.near = Near { lie, cables, warmth, ..Near::blank() };
        assert_eq!(solved(&input).here.millionths() / 10_000, hundredths, "{lie:?} {cables}");
        assert_eq!(says(&input, "carries"), Some(verdict), "{lie:?} {cables}");
    }
    // 240.4(D): 12 AWG never behind more than 20 A.
    for (breaker, want) in [(20, Within), (21, Over), (25, Over)] {
        input.near = Near { breaker: Some(amperes(breaker)), ..Near::blank() };
        assert_eq!(says(&input, "breaker"), Some(want));
    }
}

/// Source: NEC 210.20(A), read in a breaker maker's bulletin: 125 % of what is on for three hours or
/// more, and all of the rest, so that 15 A let 12 A stay on, and 20 A 16.
#[test]
fn a_load_is_held_to_its_breaker_and_to_four_fifths_of_it_where_it_may_last_hours() {
    let mut input = Input::sample();
    for (cable, hundredths, load, hours) in [
        (Sheathed::Nm14x2, 1200, Within, None),
        (Sheathed::Nm14x2, 1201, Within, Some(Ask)),
        (Sheathed::Nm14x2, 1500, Within, Some(Ask)),
        (Sheathed::Nm14x2, 1501, Over, None),
        (Sheathed::Nm14x2, 4000, Over, None),
        (Sheathed::Nm12x2, 1600, Within, None),
        (Sheathed::Nm12x2, 1601, Within, Some(Ask)),
        (Sheathed::Nm12x2, 2001, Over, None),
    ] {
        input.cable = cable;
        input.load.amperes = Some(Measure::hundredths(&AMPERE, hundredths));
        assert_eq!(says(&input, "load"), Some(load), "{cable:?} {hundredths}");
        assert_eq!(says(&input, "load-hours"), hours, "{cable:?} {hundredths}");
        let refused = next(&input).is_some_and(|says| says.contains("more than its breaker"));
        assert_eq!(refused, load == Over, "{cable:?} {hundredths}");
    }
    // Its own breaker, where one is given.
    input = Input::sample();
    input.near.breaker = Some(amperes(10));
    assert_eq!(says(&input, "load"), Some(Over));
    input.near.breaker = None;
    input.load.amperes = Some(amperes(14));
    let checks = checks(&input);
    let check = checks.iter().find(|check| check.key == "load-hours").unwrap();
    let note = crate::words::Voice::default().say(check.note.as_ref().unwrap());
    assert!(note.contains("three hours or more, at most 12 A"), "{note}");
    assert_eq!(check.asks, crate::sheet::Asks::First, "no authority decides it");
    for none in [None, Some(amperes(0))] {
        input.load.amperes = none;
        assert_eq!(says(&input, "load"), None);
    }
}

/// By hand: 7/8 in a 2×4 leaves 1-5/16; 1 in just 1-1/4; 1-1/16 takes steel (NEC 300.4(A)). Two
/// 12-3 flat on its face leave 1.226 in (300.4(D)). 1-1/2 in below a deck is enough (300.4(E)).
#[test]
fn wood_and_air_round_it_meet_their_limits_to_the_sixteenth() {
    let mut input = Input::sample();
    for (sixteenths, want) in [(14, Within), (16, Within), (17, Over)] {
        input.bit = Length::inches(sixteenths, 16);
        assert_eq!(says(&input, "clear"), Some(want), "{sixteenths}");
    }
    input.covered = true;
    assert_eq!(says(&input, "clear"), None);
    let sheet = sheet::sheet(&input, &solved(&input));
    let steel = sheet.materials.iter().find(|it| it.key == "steel-plate/cable").unwrap();
    assert_eq!(steel.amount, crate::words::Amount::Count(9 + 4));
    for (cable, want) in [(Sheathed::Nm12x3, Over), (Sheathed::Nm12x2, Within)] {
        input.cable = cable;
        input.near.flat = 2;
        assert_eq!(says(&input, "beside"), Some(want));
        input.near.flat = 1;
        assert_eq!(says(&input, "beside"), None);
    }
    for (sixteenths, want) in [(23, Over), (24, Within), (25, Within)] {
        input.attic.deck = Some(Length::inches(sixteenths, 16));
        assert_eq!(says(&input, "deck"), Some(want));
    }
}

/// Source: NEC 320.23: near a hatch what is within 6 ft of it, at stairs all of it, two strips each.
#[test]
fn guard_strips_are_bought_for_both_sides() {
    let mut input = Input::sample();
    let strips = |input: &Input| {
        let sheet = sheet::sheet(input, &solved(input));
        sheet.materials.into_iter().find(|it| it.key == "guard-strip").map(|it| it.amount)
    };
    assert_eq!(strips(&input), None);
    input.attic = Attic { crossing: inches(120), near: inches(40), ..Attic::blank() };
    for (entrance, want, verdict) in [
        (Entrance::Hatch, 80, None),
        (Entrance::PullDown, 240, Some(Ask)),
        (Entrance::Stairs, 240, None),
    ] {
        input.attic.entrance = entrance;
        assert_eq!(strips(&input), inches(want).map(Into::into));
        assert_eq!(says(&input, "guarded"), verdict);
    }
}

/// NEC 300.14: 6 in, or 3 in past an opening, whichever is more.
#[test]
fn an_end_cut_too_short_for_its_box_is_short() {
    let mut input = Input::sample();
    for (emerges, more, want) in
        [(0, 6, Within), (0, 5, Over), (4, 7, Within), (4, 6, Over), (12, 12, Over)]
    {
        input.emerges = inches(emerges);
        input.to_more = inches(more);
        assert_eq!(says(&input, "free-to"), Some(want), "{emerges}, {more}");
    }
    input.to = Ending::Panel;
    assert_eq!(says(&input, "free-to"), None);
    input.to_more = None;
    assert_eq!(solved(&input).more[1], Length::inches(72, 1));
}

#[test]
fn a_box_above_where_it_crosses_is_reached_upwards() {
    let mut input = Input { known: Known::Under, below: inches(10), ..Input::sample() };
    let legs = |input: &Input| {
        let legs = solved(input).legs;
        legs.iter().map(|leg| (leg.0, leg.1.nanometres() / 25_400_000)).collect::<Vec<_>>()
    };
    assert_eq!(legs(&input), [(Way::Down, 58), (Way::Through, 144), (Way::Up, 26)]);
    input.known = Known::Over;
    input.to_high = None;
    assert_eq!(legs(&input), [(Way::Up, 48), (Way::Through, 144)]);
}

/// The level is measured as the boxes are, so that a box above it is asked about, and one at it is not.
#[test]
fn a_box_above_where_its_cable_goes_over_is_asked_about() {
    let mut input = Input::sample();
    for (level, from, to, verdicts) in [
        (96, Some(48), Some(16), (None, None)),
        (96, Some(48), Some(192), (None, Some(Ask))),
        (96, Some(97), Some(96), (Some(Ask), None)),
        (36, Some(48), Some(16), (Some(Ask), None)),
        (0, Some(48), Some(16), (Some(Ask), Some(Ask))),
        (0, None, None, (None, None)),
    ] {
        (input.level, input.from_high, input.to_high) =
            (inches(level), from.and_then(inches), to.and_then(inches));
        let says = |input: &Input| (says(input, "from-high"), says(input, "to-high"));
        assert_eq!(says(&input), verdicts, "{level} {from:?} {to:?}");
        // Below the floor every box is above it, and part by part nothing says how high a box is.
        for known in [Known::Under, Known::Parts] {
            let legs = parts(&[(Way::Along, 90)]).legs;
            let other = Input { known, legs, ..input.clone() };
            assert_eq!(says(&other), (None, None));
        }
    }
}

#[test]
fn what_can_not_be_is_refused_at_its_field() {
    let path = |input: &Input| solve(input, YEAR).unwrap_err()[0].path.clone();
    assert_eq!(path(&parts(&[])), "legs");
    let flat =
        Input { from_high: None, to_high: None, across: inches(0), plates: 0, ..Input::sample() };
    assert_eq!(path(&flat), "across");
    let mut solid = Input { cable: Sheathed::Nm6x2, ..Input::sample() };
    assert!(solve(&solid, YEAR).is_ok());
    solid.load.made = Made::Solid;
    assert_eq!(path(&solid), "load.made");
}

#[test]
fn an_edition_that_was_not_read_asks() {
    let input = Input::sample();
    let sheet = sheet::sheet(&input, &solve(&input, Electrical::E2026).unwrap());
    assert!(sheet.checks.iter().all(|check| check.verdict == Ask));
}

prop_compose! {
    fn any_run()(
        legs in prop::collection::vec((prop::sample::select(Way::ALL), 1_i64..900), 1..8),
        cable in prop::sample::select(Sheathed::ALL),
        amperes in 1_i64..60,
        heat in prop::sample::select(Heat::ALL),
        plates in 0_i64..12,
        lie in prop::sample::select(Lie::ALL),
        cables in 1_i64..24,
    ) -> Input {
        let mut input = Input { cable, plates, ..parts(&legs) };
        input.load.amperes = Some(super::amperes(amperes));
        input.load.heat = heat;
        input.near = Near { lie, cables, ..Near::blank() };
        input
    }
}

proptest! {
    #[test]
    fn a_longer_way_never_loses_less_nor_takes_less(input in any_run(), more in 1_i64..300) {
        let mut longer = input.clone();
        longer.legs.push(Leg { way: Way::Along, length: inches(more) });
        let (short, long) = (solved(&input), solved(&longer));
        prop_assert!(long.cut > short.cut && long.staples >= short.staples);
        prop_assert!(long.drop.unwrap().volts >= short.drop.unwrap().volts);
        prop_assert!(short.cut >= short.way.plus(short.more[0]).plus(short.more[1]));
        prop_assert!(short.roll.is_none_or(|roll| roll >= short.cut));
    }

    #[test]
    fn one_more_beside_it_never_carries_more(input in any_run()) {
        let mut more = input.clone();
        more.near.cables += 1;
        let (few, many) = (solved(&input), solved(&more));
        prop_assert!(many.here <= few.here && few.here <= few.carries.at_60);
    }

    #[test]
    fn working_comes_to_what_is_shown(input in any_run()) {
        let sheet = sheet::sheet(&input, &solved(&input));
        for figure in sheet.figures.iter().chain([&sheet.headline]) {
            let step = sheet.working.iter().find(|step| step.key == figure.key);
            let amount = step.and_then(|step| step.expr.value()).and_then(crate::sheet::Value::amount);
            prop_assert!(amount.is_none_or(|amount| amount == figure.amount), "{}", figure.key);
        }
    }
}
