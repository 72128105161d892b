//! Weights worked from published ones, limits on and to either side, then laws.

use super::*;
use crate::rules::framing::board_sheets::WIDTHS;
use crate::sheet::Verdict;
use proptest::prelude::*;

fn pounds(hundredths: i64) -> Measure {
    Measure::hundredths(&WEIGHT, hundredths)
}

fn of(panel: Panel, feet: i64) -> Input {
    Input { panel, long: Length::inches(12 * feet, 1), ..Input::sample() }
}

fn verdicts(input: &Input) -> Vec<(String, Verdict)> {
    let sheet = BoardWeight::sheet(input, &solve(input), Basis::default());
    sheet.checks.into_iter().map(|check| (check.key, check.verdict)).collect()
}

/// Worked by hand from a maker's weights of a square foot, 1.2, 1.4, 1.6 and 2.2 lb: 4 by 8 ft of
/// 1/2 in is 51.2 lb, 4 by 12 of 5/8 is 105.6. A pail is 4.5 × 13.7 = 61.65 lb, as makers have it
/// to the tenth, from memory.
#[test]
fn a_sheet_and_a_pail_weigh_what_makers_say() {
    for (panel, feet, want) in [
        (Panel::Half, 8, 5120),
        (Panel::FiveEighths, 12, 10_560),
        (Panel::Quarter, 8, 3840),
        (Panel::ThreeEighths, 8, 4480),
    ] {
        assert_eq!(solve(&of(panel, feet)).sheet, pounds(want), "{panel:?}");
    }
    let answer = solve(&Input::sample());
    assert_eq!(answer.pail, pounds(6165));
    assert_eq!(answer.all, pounds(4 * 10_560 + 2 * 6165));
    assert_eq!(answer.each, pounds(5280));
    assert_eq!(Area::of(WIDTHS[0], Length::inches(96, 1)), Area::square_feet(32));
}

/// Source: NIST SP 811 (2008), B.8: what is carried is kilograms, as board makers print it.
#[test]
fn a_sheet_in_metric_is_kilograms_times_square_metres() {
    let voice = crate::words::Voice { units: crate::measure::Units::Metric, ..Default::default() };
    let written = solve(&of(Panel::Half, 8)).working.0[0].equation(voice);
    assert!(written.contains("kg/m²") && written.ends_with("23.2 kg"), "{written}");
}

/// Source: the load constant of NIOSH's lifting equation, 51 lb, from memory: on it is within.
#[test]
fn more_than_one_person_lifts_takes_more_hands() {
    let lift = |panel, feet, people| verdicts(&Input { people, ..of(panel, feet) })[0].1;
    assert_eq!(lift(Panel::FiveEighths, 12, 2), Verdict::Over);
    assert_eq!(lift(Panel::FiveEighths, 12, 3), Verdict::Within);
    assert_eq!(lift(Panel::Half, 8, 1), Verdict::Over, "51.2 lb");
    assert_eq!(lift(Panel::HalfLight, 8, 1), Verdict::Within);
}

/// Source: IRC Table R702.3.5 and its note on water-based texture; makers' limits of insulation,
/// 1.3 lb on 1/2 in board on 24 in, 2.2 on 16 and on 5/8 in.
#[test]
fn a_ceiling_holds_to_spacing_and_insulation() {
    use Verdict::{Over, Within};
    #[rustfmt::skip]
    let cases = [
        // board, framing apart, textured, hundredths of psf, spacing, insulation
        (Panel::Half,         24, false, 130, Within, Some(Within)),
        (Panel::Half,         24, false, 131, Within, Some(Over)),
        (Panel::Half,         25, false,   0, Over,   Some(Within)),
        (Panel::Half,         24, true,    0, Over,   Some(Within)),
        (Panel::Half,         16, true,  220, Within, Some(Within)),
        (Panel::Half,         16, true,  221, Within, Some(Over)),
        (Panel::HalfStiff,    24, true,  130, Within, Some(Within)),
        (Panel::HalfLight,    24, true,    0, Over,   Some(Within)),
        (Panel::FiveEighths,  24, true,  220, Within, Some(Within)),
        (Panel::ThreeEighths, 16, false,   0, Within, None),
        (Panel::ThreeEighths, 17, false,   0, Over,   None),
        (Panel::ThreeEighths, 16, false,  10, Within, Some(Over)),
    ];
    for (panel, apart, textured, psf, spacing, sag) in cases {
        let input = Input {
            hung: true,
            spacing: Length::inches(apart, 1),
            textured,
            insulation: Measure::hundredths(&PSF, psf),
            ..of(panel, 8)
        };
        let got = verdicts(&input);
        let of = |key| got.iter().find(|(check, _)| check == key).map(|(_, verdict)| *verdict);
        assert_eq!((of("spacing"), of("sag")), (Some(spacing), sag), "{panel:?} {apart} {psf}");
    }
    // No scale to be near the end of: it isn't to hang on framing at all.
    for (panel, textured) in [(Panel::Quarter, false), (Panel::ThreeEighths, true)] {
        let input = Input { hung: true, textured, people: 4, ..of(panel, 8) };
        let sheet = BoardWeight::sheet(&input, &solve(&input), Basis::default());
        let check = sheet.decisive().unwrap();
        assert_eq!((&*check.key, check.verdict, check.has_scale()), ("alone", Over, false));
        assert!(!sheet.checks.iter().any(|check| check.key == "spacing"));
    }
    let input =
        Input { hung: true, insulation: Measure::hundredths(&PSF, 130), ..of(Panel::Half, 8) };
    assert_eq!(solve(&input).load, Some(Measure::hundredths(&PSF, 350)), "2.2 and 1.3");
}

proptest! {
    #[test]
    fn more_board_weighs_more_and_more_people_less(
        feet in 1_i64..16, sheets in 0_i64..400, more in 0_i64..100, people in 1_i64..6,
    ) {
        let with = |sheets, people| solve(&Input { sheets, people, ..of(Panel::Half, feet) });
        prop_assert!(with(sheets + more, people).all >= with(sheets, people).all);
        prop_assert!(with(sheets, people + 1).each <= with(sheets, people).each);
    }
}
