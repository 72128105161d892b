//! Published triggers by edition, the short wire on and to either side of its limit, then laws.

use super::*;
use crate::sheet::Verdict;
use Electrical::{E2017, E2020, E2023, E2026};
use proptest::prelude::*;

fn keys(input: &Input, edition: Electrical) -> Vec<&'static str> {
    solve(input, edition).lines.iter().map(|line| line.key).collect()
}

fn of(what: What, room: Room) -> Input {
    Input { what, room, wire: None, found: Found::Grounded, ..Input::sample() }
}

/// Source: NEC 210.12(D) of 2017 and 2020, (E) of 2023: no more than 6 ft without an outlet.
#[test]
fn just_six_feet_are_exempt() {
    for edition in Electrical::VERIFIED {
        for (sixteenths, outlet, want) in [
            (Some(1152), false, false),
            (Some(1153), false, true),
            (Some(16), true, true),
            (None, false, true),
        ] {
            let wire = sixteenths.map(|it| Length::inches(it, 16));
            for what in [What::Extend, What::Move, What::Switch, What::Light, What::Fan] {
                let input = Input { wire, outlet, ..of(what, Room::Bedroom) };
                assert_eq!(keys(&input, edition).contains(&"arc-fault"), want, "{sixteenths:?}");
                assert_eq!(solve(&input, edition).is_exempt, !want);
            }
        }
        let bath = Input { wire: Some(Length::inches(720, 1)), ..of(What::Extend, Room::Bath) };
        assert!(!keys(&bath, edition).contains(&"arc-fault"));
        assert!(!solve(&bath, edition).is_exempt, "none to be exempt from");
    }
}

/// Source: NEC 406.4(D) and 406.12; 210.8(A) by edition.
#[test]
fn a_receptacle_that_is_replaced_in_a_kitchen_meets_todays_rules() {
    let input = of(What::Replace, Room::Kitchen);
    let common = ["arc-fault", "shutters", "replaced", "alarms", "local"];
    assert_eq!(keys(&input, E2017), common);
    assert_eq!(keys(&input, E2020), common);
    let want = ["arc-fault", "ground-fault", "shutters", "replaced", "alarms", "local"];
    assert_eq!(keys(&input, E2023), want);
    assert_eq!(keys(&input, E2026), want, "the newest that was read stands in");
    let differing = solve(&input, E2017).differing;
    assert_eq!(differing.len(), 1);
    assert_eq!((differing[0].0.key, &differing[0].1[..]), ("ground-fault", &[E2023][..]));
    let counter = Input { beside: Beside::Counter, ..input };
    assert_eq!(keys(&counter, E2017), want);
    assert_eq!(solve(&counter, E2017).differing, []);
}

/// Source: NEC 314.27(C) of 2017 and later, 404.2(C).
#[test]
fn lights_fans_and_switches_bring_their_own() {
    let light = of(What::Light, Room::Bedroom);
    assert!(!keys(&light, E2017).contains(&"fan-ready"));
    assert!(keys(&light, E2020).contains(&"fan-ready"));
    assert!(keys(&Input { spare: true, ..light }, E2017).contains(&"fan-ready"));
    assert!(!keys(&of(What::Light, Room::Hall), E2023).contains(&"fan-ready"));
    for edition in Electrical::VERIFIED {
        assert!(keys(&of(What::Fan, Room::Living), edition).contains(&"fan-box"));
        assert!(keys(&of(What::Switch, Room::Bath), edition).contains(&"neutral"));
        assert!(!keys(&of(What::Switch, Room::Garage), edition).contains(&"neutral"));
        assert!(!keys(&of(What::Extend, Room::Living), edition).contains(&"neutral"));
    }
}

#[test]
fn old_wiring_stops_and_what_nobody_looked_at_is_asked() {
    for (found, want) in [
        (Found::Grounded, &[][..]),
        (Found::NoGround, &["no-ground"]),
        (Found::NotSaid, &["no-ground"]),
        (Found::Aluminum, &["stop"]),
        (Found::Knobs, &["stop", "no-ground"]),
        (Found::Brittle, &["stop"]),
    ] {
        let input = Input { found, ..of(What::Alarms, Room::Attic) };
        assert_eq!(keys(&input, E2023), [want, &["alarms", "local"]].concat());
        let sheet = sheet::sheet(&input, &solve(&input, E2023));
        let says = crate::words::Voice::default().say(&sheet.next.unwrap());
        assert_eq!(says.starts_with("Stop"), found.stops());
    }
    let service = Input { service: true, ..of(What::Alarms, Room::Attic) };
    assert_eq!(keys(&service, E2023)[0], "service");
}

prop_compose! {
    fn any_change()(
        what in prop::sample::select(What::ALL),
        room in prop::sample::select(Room::ALL),
        beside in prop::sample::select(Beside::ALL),
        found in prop::sample::select(Found::ALL),
        wire in prop::option::of(0_i64..2_000),
        outlet in any::<bool>(), spare in any::<bool>(), service in any::<bool>(),
    ) -> Input {
        let wire = wire.map(|it| Length::inches(it, 16));
        Input { what, room, beside, found, wire, outlet, spare, service }
    }
}

proptest! {
    #[test]
    fn every_line_asks_and_none_is_a_verdict(input in any_change()) {
        for edition in Electrical::ALL {
            let sheet = sheet::sheet(&input, &solve(&input, edition));
            prop_assert!(!sheet.checks.is_empty());
            prop_assert!(sheet.checks.iter().all(|it| it.verdict == Verdict::Ask && it.note.is_some()));
        }
    }

    #[test]
    fn a_later_edition_or_a_longer_wire_never_brings_less(input in any_change(), more in 0_i64..400) {
        let lists = Electrical::VERIFIED.map(|edition| keys(&input, edition));
        for pair in lists.windows(2) {
            prop_assert!(pair[0].iter().all(|key| pair[1].contains(key)));
        }
        let wire = input.wire.map(|it| it.plus(Length::inches(more, 16)));
        let longer = keys(&Input { wire, ..input }, E2023);
        prop_assert!(lists[2].iter().all(|key| longer.contains(key)));
    }
}
