//! Each limit on and to either side, then a law.

use super::*;
use crate::sheet::Verdict;
use Verdict::{Ask, Over, Within};
use proptest::prelude::*;

fn empty() -> Input {
    Input { bath: None, register: None, cooking: None, ..Input::sample() }
}

fn verdict(input: &Input, key: &str) -> Option<Verdict> {
    let sheet = AlarmPlaces::sheet(input, &solve(input), Basis::default());
    sheet.checks.iter().find(|check| check.key == key).map(|check| check.verdict)
}

fn inches(over: i64, under: i64) -> Option<Length> {
    Some(Length::inches(over, under))
}

/// Source: NFPA 72 and IRC R314.3, required locations: three bedrooms off one hall, and a basement.
#[test]
fn bedrooms_their_halls_and_other_levels_take_one_each() {
    let mut input = empty();
    assert_eq!(solve(&input).all(), 5);
    for (have, want) in [(4, Over), (5, Within), (6, Within)] {
        input.have = Some(have);
        assert_eq!(verdict(&input, "have"), Some(want));
    }
}

/// Source: NFPA 72 and IRC R314.3: 36 in from a bath's door, a supply register and a fan's blades.
#[test]
fn an_alarm_keeps_three_feet_off() {
    for (at, want) in [(143, Over), (144, Within), (145, Within)] {
        let at = inches(at, 4);
        let input = Input { bath: at, register: at, fan: at, ..empty() };
        for key in ["bath", "register", "fan"] {
            assert_eq!(verdict(&input, key), Some(want), "{key}");
        }
    }
}

/// Source: IRC R314.3.3: ionization 20 ft, silenced 10 ft, photoelectric 6 ft; NFPA 72: 20 ft unless
/// photoelectric or silenced, and, from memory, none within 10 ft.
#[test]
fn cooking_hangs_on_how_it_senses() {
    use Sensing::{Ion, Photo, Unknown};
    for (sensing, silence, feet, nfpa, irc) in [
        (Ion, false, 20, Within, Within),
        (Ion, true, 10, Within, Within),
        (Photo, false, 10, Within, Within),
        (Photo, true, 6, Ask, Within),
        (Unknown, false, 20, Within, Within),
        (Unknown, true, 10, Within, Within),
    ] {
        let at = |cooking| Input { sensing, silence, cooking, ..empty() };
        let on = at(inches(12 * feet, 1));
        assert_eq!(verdict(&on, "cooking"), Some(nfpa), "{sensing:?} {silence}");
        assert_eq!(verdict(&on, "home"), Some(irc), "{sensing:?} {silence}");
        let near = at(inches(48 * feet - 1, 4));
        assert_ne!(verdict(&near, "cooking"), Some(Within), "{sensing:?} {silence}");
        let home = if sensing == Photo && feet == 10 { Within } else { Over };
        assert_eq!(verdict(&near, "home"), Some(home), "{sensing:?} {silence}");
    }
    let near = Input { sensing: Ion, cooking: inches(959, 4), ..empty() };
    assert_eq!(verdict(&near, "cooking"), Some(Over));
}

/// Source: NFPA 72: 21 ft from a bedroom's door. From memory: 12 in below the ceiling on a wall, and 4;
/// within 36 in of a peak, not in its top 4.
#[test]
fn walls_peaks_and_the_way_to_bed() {
    for (quarters, bedroom) in [(1_007, Within), (1_008, Within), (1_009, Over)] {
        let input = Input { bedroom: inches(quarters, 4), ..empty() };
        assert_eq!(verdict(&input, "bedroom"), Some(bedroom));
    }
    for (top, want) in
        [(15, [Ask, Within]), (16, [Within; 2]), (48, [Within; 2]), (49, [Within, Ask])]
    {
        let mut input = Input { mount: Mount::Wall, top: inches(top, 4), ..empty() };
        assert_eq!(["corner", "top"].map(|key| verdict(&input, key)), want.map(Some), "{top}");
        input.mount = Mount::Ceiling;
        assert_eq!(verdict(&input, "top"), None);
    }
    for (below, peak, want) in [(16, 144, [Within; 2]), (15, 145, [Ask; 2])] {
        let (below, peak) = (inches(below, 4), inches(peak, 4));
        let input = Input { mount: Mount::Slope, below, peak, ..empty() };
        assert_eq!(["below", "peak"].map(|key| verdict(&input, key)), want.map(Some));
    }
}

proptest! {
    #[test]
    fn farther_from_cooking_is_never_worse(far in 0_i64..1_200, more in 0_i64..400, silence: bool, ion: bool) {
        let sensing = if ion { Sensing::Ion } else { Sensing::Photo };
        let at = |far| Input { sensing, silence, cooking: inches(far, 1), ..empty() };
        for key in ["cooking", "home"] {
            prop_assert!(verdict(&at(far + more), key) <= verdict(&at(far), key));
        }
    }
}
