//! Published limits on and to either side, then laws.

use super::*;
use crate::rules::compare::at_most;
use crate::rules::electrical::cable_securing::spacing;
use crate::sheet::Verdict;
use proptest::prelude::*;

fn staples(run: Length, spacing: Length, from: End, to: End) -> Answer {
    solve(&Input { run, spacing, from, to }, Electrical::E2023)
}

/// Source: NEC 334.30 (54 in apart, 12 in from a box) and 314.17 (8 in at a one-gang nonmetallic
/// box without clamps). The counts are derived from them by hand.
#[test]
fn a_run_takes_as_many_staples_as_the_rule_asks() {
    use End::{Clamped, Single};
    #[rustfmt::skip]
    const CASES: &[(i64, End, End, i64)] = &[
        // sixteenths of an inch, ends, staples
        (100 * 16,          Clamped, Clamped, 3),
        (24 * 16,           Clamped, Clamped, 1),
        (24 * 16 + 1,       Clamped, Clamped, 2),
        (78 * 16,           Clamped, Clamped, 2),
        (78 * 16 + 1,       Clamped, Clamped, 3),
        (74 * 16,           Clamped, Single,  2),
        (74 * 16 + 1,       Clamped, Single,  3),
        (70 * 16,           Single,  Single,  2),
        (70 * 16 + 1,       Single,  Single,  3),
        (16,                Clamped, Clamped, 1),
    ];
    for &(sixteenths, from, to, want) in CASES {
        let answer = staples(Length::inches(sixteenths, 16), Length::inches(54, 1), from, to);
        assert_eq!(answer.staples, want, "{sixteenths} sixteenths");
    }
}

proptest! {
    #[test]
    fn a_longer_run_never_takes_fewer_and_the_gap_never_passes_the_spacing(
        run in 16_i64..96_000, more in 0_i64..1_600, spacing_in in 16_i64..1_920,
    ) {
        let apart = Length::inches(spacing_in, 16);
        let at = |run| staples(Length::inches(run, 16), apart, End::Clamped, End::Single);
        let (short, long) = (at(run), at(run + more));
        prop_assert!(long.staples >= short.staples);
        prop_assert!(short.gap <= apart);
        if apart <= Length::inches(54, 1) {
            let limit = spacing(Electrical::E2023).unwrap();
            let name = (&w::CHECK_GAP).into();
            prop_assert_eq!(at_most("apart", name, short.gap, limit).verdict, Verdict::Within);
        }
    }
}
