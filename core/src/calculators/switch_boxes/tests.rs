//! Boxes counted by hand from 314.16, currents that add up to nothing in each cable, then laws.

use super::*;
use crate::rules::electrical::cable_sizes::Sheathed;
use crate::sheet::Verdict;
use proptest::prelude::*;

fn of(points: i64, feed: Feed, leaves: Leaves, neutral: Neutral, size: Size) -> Input {
    Input { points, feed, leaves, neutral, size, ..Input::sample() }
}

fn fills(input: &Input) -> Vec<i64> {
    let answer = solve(input, Electrical::E2023).unwrap();
    let hundredth = Volume::hundredths(1).units();
    answer.switches.iter().map(|it| it.side.fill.units() / hundredth).collect()
}

/// By hand, NEC 314.16(B): conductors, all grounds as one, two for the switch; 2.00 in³ at 14 AWG,
/// 2.25 at 12. Feed and light at the first three-way 7 + 1 + 2 = 10; the dead end 3 + 1 + 2 = 6; a
/// four-way between two 3-wire cables 6 + 1 + 2 = 9; a single pole, fed through, 4 + 1 + 2 = 7.
#[test]
fn boxes_are_as_full_as_counted_by_hand() {
    use Neutral::{AsItLies, Each};
    for (size, each) in [(Size::Awg14, 200), (Size::Awg12, 225)] {
        for (points, feed, leaves, neutral, counts) in [
            (1, Feed::Switch, Leaves::First, AsItLies, &[7][..]),
            (2, Feed::Switch, Leaves::First, AsItLies, &[10, 6]),
            (2, Feed::Switch, Leaves::First, Each, &[11, 7]),
            (2, Feed::Switch, Leaves::Last, Each, &[8, 8]),
            (3, Feed::Switch, Leaves::Last, Each, &[8, 9, 8]),
            (3, Feed::Switch, Leaves::First, AsItLies, &[10, 9, 6]),
            (1, Feed::Light, Leaves::First, AsItLies, &[5]),
            (1, Feed::Light, Leaves::First, Each, &[6]),
            (2, Feed::Light, Leaves::First, AsItLies, &[8, 6]),
            (2, Feed::Light, Leaves::First, Each, &[10, 7]),
        ] {
            let input = of(points, feed, leaves, neutral, size);
            let want: Vec<_> = counts.iter().map(|count| count * each).collect();
            assert_eq!(fills(&input), want, "{input:?}");
            let clamped = Input { clamps: true, ..input };
            let want: Vec<_> = counts.iter().map(|count| (count + 1) * each).collect();
            assert_eq!(fills(&clamped), want, "a clamp more");
        }
    }
}

/// By hand: feed in, feed on and light at a single pole are 6 + 1 + 2 = 9, 18.0 in³ at 14 AWG.
#[test]
fn a_feed_that_goes_on_adds_its_cable() {
    let input = of(1, Feed::Switch, Leaves::First, Neutral::Each, Size::Awg14);
    assert_eq!(fills(&Input { onward: true, ..input.clone() }), [1800]);
    let at_light = Input { onward: true, feed: Feed::Light, ..input };
    assert_eq!(fills(&at_light), [1200], "it goes on from the light");
    let light = solve(&at_light, Electrical::E2023).unwrap().light;
    // 2 + 2 + 3 and the grounds.
    assert_eq!(light.side.fill, Volume::hundredths(1600));
}

/// By hand: 20.0 in³ is within 20.0, over 19.9; 18.0 over by 2.
#[test]
fn a_box_is_full_on_its_mark_and_over_past_it() {
    let input = of(2, Feed::Switch, Leaves::First, Neutral::AsItLies, Size::Awg14);
    for (volume, want) in [
        (1990, Verdict::Over),
        (2000, Verdict::Within),
        (2030, Verdict::Within),
        (1800, Verdict::Over),
    ] {
        let input = Input { volume: Volume::hundredths(volume), ..input.clone() };
        let sheet = sheet::sheet(&input, &solve(&input, Electrical::E2020).unwrap());
        assert_eq!(sheet.checks[0].verdict, want, "{volume}");
        let neutral = sheet.checks.iter().find(|check| check.key == "neutral");
        assert_eq!(neutral.map(|check| check.verdict), Some(Verdict::Ask), "none at the far one");
        let new = sheet::sheet(&input, &solve(&input, Electrical::E2026).unwrap());
        assert!(new.checks.iter().all(|check| check.verdict != Verdict::Within));
    }
}

/// NEC 200.7(C): a white that is hot brings supply.
#[test]
fn a_white_wire_is_neutral_or_marked_as_supply() {
    let input = of(2, Feed::Light, Leaves::First, Neutral::Each, Size::Awg14);
    let answer = solve(&input, Electrical::E2023).unwrap();
    let cables: Vec<_> = answer.runs.iter().map(|run| run.cable).collect();
    assert_eq!(cables, [Sheathed::Nm14x2, Sheathed::Nm14x3, Sheathed::Nm14x4]);
    let said = |run: &Run| {
        let wires = run.wires.iter().map(|wire| (wire.colour.en, wire.role, wire.is_marked));
        wires.collect::<Vec<_>>()
    };
    let want = [
        ("white", Role::Neutral, false),
        ("white with a red stripe", Role::Supply, true),
        ("black", Role::Traveler, false),
        ("red", Role::Traveler, false),
    ];
    assert_eq!(said(&answer.runs[2]), want);
    let looped = Input { points: 1, neutral: Neutral::AsItLies, ..input };
    let answer = solve(&looped, Electrical::E2023).unwrap();
    assert_eq!(
        said(&answer.runs[1]),
        [("white", Role::Supply, true), ("black", Role::Switched, false)]
    );
}

prop_compose! {
    fn any_layout()(
        points in 1_i64..=6,
        feed in prop::sample::select(Feed::ALL),
        leaves in prop::sample::select(Leaves::ALL),
        neutral in prop::sample::select(Neutral::ALL),
        size in prop::sample::select(Size::ALL),
        clamps in any::<bool>(), onward in any::<bool>(),
    ) -> Input {
        Input { clamps, onward, ..of(points, feed, leaves, neutral, size) }
    }
}

proptest! {
    /// Physics, and NEC 300.3(B): with the light on, what goes out in a cable comes back in it. Seen
    /// from the feed, supply goes out; a traveler goes out towards a light at the far end, back from
    /// a dead end; what is switched comes back to a light that has the feed, and goes out to any other.
    #[test]
    fn currents_add_up_to_nothing_in_every_cable(input in any_layout()) {
        let is_through = input.feed == Feed::Switch && input.leaves == Leaves::Last;
        for run in &solve(&input, Electrical::E2023).unwrap().runs {
            let has = |role| run.wires.iter().any(|wire| wire.role == role);
            let to_light = run.to == Place::Light;
            let mut sum = 0;
            if has(Role::Supply) { sum += 1; }
            if has(Role::Traveler) { sum += if is_through { 1 } else { -1 }; }
            if has(Role::Switched) { sum += if to_light { 1 } else { -1 }; }
            // A neutral carries where the light's current has no other way back.
            let ends = run.from == Place::Feed || run.to == Place::Onward;
            let carries = is_through || to_light || ends;
            if has(Role::Neutral) && carries { sum -= 1; }
            prop_assert_eq!(sum, 0, "{:?}", run);
        }
    }

    #[test]
    fn only_supply_and_neutral_are_white_and_each_cable_has_its_wires(input in any_layout()) {
        let answer = solve(&input, Electrical::E2023).unwrap();
        for run in &answer.runs {
            prop_assert_eq!(run.wires.len() as i64, run.cable.conductors().1);
            for wire in &run.wires {
                let is_white = wire.colour.en.starts_with("white");
                prop_assert!(!is_white || matches!(wire.role, Role::Neutral | Role::Supply));
                prop_assert_eq!(wire.is_marked, is_white && wire.role == Role::Supply);
            }
        }
        let without = answer.switches.iter().any(|it| !it.has_neutral);
        prop_assert!(input.neutral == Neutral::AsItLies || !without);
    }

    #[test]
    fn one_more_switch_never_empties_the_fullest_box(input in any_layout()) {
        let fullest = |points| fills(&Input { points, ..input.clone() }).into_iter().max();
        prop_assert!(fullest(input.points + 1) >= fullest(input.points));
    }
}
