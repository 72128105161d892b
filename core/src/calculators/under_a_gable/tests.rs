//! Gables worked by hand, the code's rows, statics from equilibrium alone, then laws.

use super::*;
use crate::measure::unit::PITCH;
use crate::measure::{Rounding, Units};
use crate::sheet::{Check, Confidence, Value, Verdict};
use crate::words::Voice;
use proptest::prelude::*;

fn inches(sixteenths: i64) -> Length {
    Length::inches(sixteenths, 16)
}

/// 24 ft, 6 in 12, 30 psf, ties 16 in apart and so high, under a ridge with no depth.
fn gable(up: Length) -> Input {
    Input { up: Some(up), ridge: Some(inches(72 * 16)), ..Input::sample() }
}

fn sheet(input: &Input) -> Sheet {
    UnderAGable::sheet(input, &solve(input).unwrap(), Basis::default())
}

fn shown(sheet: &Sheet, key: &str) -> Option<String> {
    let figure = [&sheet.headline].into_iter().chain(&sheet.figures).find(|it| it.key == key);
    figure.map(|figure| figure.amount.show(Units::Customary, Rounding::Nearest).text())
}

fn check<'a>(sheet: &'a Sheet, key: &str) -> &'a Check {
    sheet.checks.iter().find(|check| check.key == key).unwrap_or_else(|| panic!("no {key}"))
}

/// By hand: rise 6 × 12 = 72 in; 30 × 24² ÷ (8 × 6) = 360 lb/ft; × 16 ÷ 12 = 480 lb.
#[test]
fn ties_on_the_plate_push_as_by_hand() {
    let sheet = sheet(&gable(Length::ZERO));
    for (key, want) in [
        ("rise", "6 ft"),
        ("flat-width", "24 ft"),
        ("thrust", "360 lb/ft"),
        ("tie", "480 lb"),
        ("rafter-factor", "1"),
        ("nail-factor", "1"),
    ] {
        assert_eq!(shown(&sheet, key).as_deref(), Some(want), "{key}");
    }
    assert_eq!(sheet.verdict(), Verdict::Within, "nothing moves");
}

/// By hand: 2 of 6 ft is a third; 30 × 24² ÷ (8 × 4) = 540 lb/ft; 720 lb a tie; 24 − 2 × 2 × 12 ÷ 6
/// = 16 ft stay flat. 0.67 is the row of a third in the code's table of rafter spans.
#[test]
fn ties_at_a_third_push_as_by_hand_and_an_engineer_is_asked() {
    let at_third = sheet(&gable(inches(24 * 16)));
    for (key, want) in [
        ("flat-width", "16 ft"),
        ("share", "≈ 33.3 %"),
        ("thrust-now", "360 lb/ft"),
        ("tie-now", "480 lb"),
        ("thrust", "540 lb/ft"),
        ("tie", "720 lb"),
        ("rafter-factor", "0.67"),
        ("nail-factor", "1.5"),
    ] {
        assert_eq!(shown(&at_third, key).as_deref(), Some(want), "{key}");
    }
    assert_eq!(check(&at_third, "third").verdict, Verdict::Within, "on the limit");
    assert_eq!(at_third.verdict(), Verdict::Ask);
    let past = sheet(&gable(inches(24 * 16 + 1)));
    assert_eq!(check(&past, "third").verdict, Verdict::Over);
    assert_eq!(shown(&past, "rafter-factor"), None, "no row past a third");
    assert_eq!(shown(&past, "nail-factor"), None);
    assert!(shown(&past, "thrust").is_some(), "for information");
}

/// By hand: 7 × 1.25 = 8.75, so 9.
#[test]
fn heel_nails_are_rounded_up() {
    let fifth = inches(72 * 16).part(5);
    for (nails, up, want) in
        [(7, fifth, 9), (8, fifth, 10), (7, inches(24 * 16), 11), (4, Length::ZERO, 4)]
    {
        let answer = solve(&Input { nails: Some(nails), ..gable(up) }).unwrap();
        assert_eq!(answer.rows.unwrap().nails, Some(want), "{nails} at {up:?}");
    }
}

/// Source: the IRC's factors for raised ties as a forum quotes its footnote (0.67, 0.76, 0.83, 0.90)
/// and, from memory, 1.00; heel joints 1.5, 1.33, 1.25, 1.2, 1.11, from memory.
#[test]
fn the_codes_rows_are_taken_as_printed_and_between_two_the_harsher() {
    let rise = inches(60 * 16);
    let rows = |up: Length| {
        let span = rule::rafter_span(up, rise).map(|row| row.times.millionths() / 10_000);
        let heel = rule::heel_nails(up, rise).map(|row| row.times.0 * 100 / row.times.1);
        (span, heel)
    };
    let step = Length::from_nanometres(1);
    for (up, on, past) in [
        (rise.part(3), (Some(67), Some(150)), (None, None)),
        (rise.part(4), (Some(76), Some(133)), (Some(67), Some(150))),
        (rise.part(5), (Some(83), Some(125)), (Some(76), Some(133))),
        (rise.part(6), (Some(90), Some(120)), (Some(83), Some(125))),
        (rise.times(2).part(15), (Some(100), Some(120)), (Some(90), Some(120))),
        (rise.part(10), (Some(100), Some(111)), (Some(100), Some(120))),
        (Length::ZERO, (Some(100), Some(100)), (Some(100), Some(111))),
    ] {
        assert_eq!(rows(up), on, "{up:?}");
        assert_eq!(rows(up.plus(step)), past, "past {up:?}");
    }
    let low = rule::rafter_span(Length::ZERO, rise).unwrap();
    assert_eq!(low.source.confidence, Confidence::Memory, "that row was not read");
}

/// From equilibrium alone: half a rafter's frame cut at the ridge, its load in strips. A rafter on
/// its own span bends by w (L/2)² ÷ 8; with the tie at a share of the rise, the wall's reaction
/// bends it about the tie. A span goes with the root of what bends it.
#[test]
fn the_codes_rows_follow_the_bending_at_the_tie() {
    let (span, load) = (24.0, 30.0);
    let at_tie = |share: f64| {
        let tie = share * span / 2.0;
        let strips = 10_000;
        let wide = tie / f64::from(strips);
        let above = (0..strips).map(|at| load * wide * (tie - (f64::from(at) + 0.5) * wide));
        load * span / 2.0 * tie - above.sum::<f64>()
    };
    let alone = load * (span / 2.0) * (span / 2.0) / 8.0;
    let rise = inches(60 * 16);
    for (over, under) in [(1, 3), (1, 4), (1, 5), (1, 6), (2, 15)] {
        let row = rule::rafter_span(rise.times(over).part(under), rise).unwrap();
        let by_statics = (alone / at_tie(over as f64 / under as f64)).sqrt();
        assert!((row.times.number() - by_statics).abs() < 0.006, "{}: {by_statics}", row.share);
    }
}

/// By hand: 15 psf on a slope of 12 in 12 are 15 × 1.41421 = 21.213 on the flat; and 20.
#[test]
fn weight_on_the_slope_is_turned_onto_the_flat() {
    let input = Input {
        given: Given::Apart,
        pitch: Measure::whole(&PITCH, 12),
        dead: Measure::whole(&PSF, 15),
        live: Measure::whole(&PSF, 20),
        ..Input::sample()
    };
    assert_eq!(solve(&input).unwrap().load.millionths(), 41_213_203);
}

/// By hand: 30 × 24 ÷ 2 = 360 on the ridge, ÷ 4 = 180 on each wall: with both walls all 720.
#[test]
fn a_ridge_beam_takes_the_push_and_is_asked_about() {
    let sheet = sheet(&Input { roof: Roof::Beam, ..gable(inches(60 * 16)) });
    assert_eq!(shown(&sheet, "ridge").as_deref(), Some("360 lb/ft"));
    assert_eq!(shown(&sheet, "wall").as_deref(), Some("180 lb/ft"));
    assert_eq!(shown(&sheet, "thrust"), None);
    assert_eq!(sheet.verdict(), Verdict::Ask);
}

#[test]
fn trusses_get_no_numbers_and_a_stop() {
    let sheet = sheet(&Input { roof: Roof::Trusses, ..gable(inches(16 * 16)) });
    assert_eq!(sheet.headline.key, "rise");
    assert!(sheet.figures.is_empty() && sheet.drawing.is_none());
    assert_eq!(sheet.verdict(), Verdict::Over);
    let next = Voice::default().say(sheet.next.as_ref().unwrap());
    assert!(next.starts_with("Nothing of a truss is moved"), "{next}");
}

/// By hand: R-38 at 3.8 an inch is 10 in; a heel of 11 in leaves 10 under 1 in of air, one of 10-15/16
/// does not. What fits asks, since the inch is from memory.
#[test]
fn insulation_is_held_against_what_is_left() {
    let wanted = |heel| Input {
        insulation: Wanted::R,
        r: Some(Measure::whole(&crate::measure::unit::R_VALUE, 38)),
        r_per_inch: Some(Measure::hundredths(&crate::measure::unit::R_PER_INCH, 380)),
        heel: Some(inches(heel)),
        ..Input::sample()
    };
    assert_eq!(check(&sheet(&wanted(11 * 16)), "eave").verdict, Verdict::Ask);
    assert_eq!(check(&sheet(&wanted(11 * 16 - 1)), "eave").verdict, Verdict::Over);
    let thin = sheet(&wanted(8));
    assert_eq!(shown(&thin, "eave").as_deref(), Some("0 in"), "never less than nothing");
}

#[test]
fn ties_as_high_as_the_ridge_are_refused_at_their_field() {
    let faults = solve(&gable(inches(72 * 16))).unwrap_err();
    assert_eq!(faults[0].path, "up");
    let says = Voice::default().say(&faults[0].says);
    assert_eq!(says, "The ridge is 6 ft over the plate. It has to be less.");
}

/// Any gable: every roof, every stop, and what is measured.
/// A quarter of an inch: a tie nearer to the ridge than that is no tie, and its thrust is without end.
const GAP: i64 = 6_350_000;

fn any_gable() -> impl Strategy<Value = Input> {
    let stops = (any::<bool>(), any::<bool>(), any::<bool>(), any::<bool>(), any::<bool>());
    (
        0..4_usize,
        1_152_i64..11_520,
        50_i64..2_400,
        (0_i64..1_000, prop::option::of(0_i64..=1_000)),
        96_i64..1_920,
        1_i64..400,
        prop::option::weighted(0.3, stops),
    )
        .prop_map(|(roof, span, pitch, (up, ridge), spacing, load, stops)| {
            let (cut, across, purlins, unequal, hips) = stops.unwrap_or_default();
            let (span, pitch) = (inches(span), Measure::hundredths(&PITCH, pitch));
            let rise = span.nanometres() as f64 * pitch.number() / 24.0;
            // Thousandths of the rise, so that half of all are above a third.
            let up = Length::from_nanometres((rise * up as f64 / 1_000.0) as i64);
            let most = Length::from_nanometres(rise as i64 - 1_000_000);
            let up = up.min(Length::from_nanometres(rise as i64 - 10_000_000));
            let over =
                |share| most.minus(up).nanometres().saturating_sub(GAP) * share / 1_000 + GAP;
            Input {
                roof: Roof::ALL[roof],
                span,
                pitch,
                up: Some(up),
                ridge: ridge.map(|share| up.plus(Length::from_nanometres(over(share)))),
                spacing: inches(spacing),
                load: Measure::whole(&PSF, load),
                stops: Stops { cut, across, purlins, unequal, hips },
                ..Input::sample()
            }
        })
}

proptest! {
    /// From equilibrium alone: half the frame, cut at the ridge, where only a level force passes.
    /// The wall holds up all the load on it; about the ridge, wall, load and tie come to nothing.
    #[test]
    fn half_the_frame_is_in_balance_about_the_ridge(input in any_gable()) {
        let answer = solve(&input).unwrap();
        let feet = |length: Length| length.nanometres() as f64 / 304_800_000.0;
        let half = feet(input.span) / 2.0;
        let on_half = input.load.number() * half;
        if let Some(tied) = answer.tied {
            for (thrust, up) in [(tied.thrust, input.up()), (tied.thrust_now, Length::ZERO)] {
                let ridge = input.ridge.map_or(half * input.pitch.number() / 12.0, feet);
                let arm = ridge - feet(up);
                let off = on_half * half - on_half * half / 2.0 - thrust.number() * arm;
                // A rise is held to the nanometre, a thrust to a millionth.
                let slack = 1e-6 * arm + thrust.number() * 1e-8;
                prop_assert!(off.abs() < 1e-6 + slack, "{off}");
            }
            // One tie holds its own strip of wall.
            let strip = tied.thrust.number() * feet(input.spacing);
            prop_assert!((strip - tied.tie.number()).abs() < 1e-3_f64.max(strip * 1e-6));
        }
        if let Some(carried) = answer.carried {
            let all = carried.ridge.number() + 2.0 * carried.wall.number();
            prop_assert!((all - 2.0 * on_half).abs() < 1e-4, "both walls and the ridge carry all");
        }
    }

    #[test]
    fn a_higher_tie_or_more_load_never_lessens_the_push(
        input in any_gable(), higher in 0_i64..1_000, more in 0_i64..200,
    ) {
        let height = input.height(solve(&input).unwrap().rise);
        let room = height.minus(input.up()).nanometres() - 10;
        let up = input.up().plus(Length::from_nanometres(room.max(0) / 1_000 * higher));
        let load = input.load.of_same(input.load.millionths() + more * 1_000_000);
        let answer = solve(&input).unwrap();
        for other in [Input { up: Some(up), ..input.clone() }, Input { load, ..input.clone() }] {
            let other = solve(&other).unwrap();
            if let (Some(one), Some(other)) = (answer.tied, other.tied) {
                prop_assert!(other.thrust >= one.thrust && other.tie >= one.tie);
                prop_assert!(one.thrust >= one.thrust_now);
            }
            if let (Some(one), Some(other)) = (answer.carried, other.carried) {
                prop_assert!(other.ridge >= one.ridge && other.wall >= one.wall);
            }
            // A row is never milder for more.
            if let (Some(one), Some(other)) = (answer.rows, other.rows) {
                prop_assert!(other.rafters.times <= one.rafters.times);
                prop_assert!(other.heel_times >= one.heel_times);
            }
            prop_assert!(other.flat <= answer.flat);
        }
    }

    /// The rows' nails never fall short of what statics asks.
    #[test]
    fn a_row_of_nails_is_never_under_the_push_it_stands_for(input in any_gable()) {
        let answer = solve(&input).unwrap();
        if let (Some(rows), Some(tied)) = (answer.rows, answer.tied) {
            let grown = tied.thrust.number() / tied.thrust_now.number();
            prop_assert!(rows.heel_times.number() >= grown * (1.0 - 1e-6), "{grown}");
        }
    }

    #[test]
    fn what_moves_a_tie_or_leaves_the_tables_is_never_within(input in any_gable()) {
        let answer = solve(&input).unwrap();
        let sheet = UnderAGable::sheet(&input, &answer, Basis::default());
        if input.up() > Length::ZERO || answer.outside || input.roof == Roof::Beam {
            prop_assert_ne!(sheet.verdict(), Verdict::Within);
        }
        if answer.outside {
            prop_assert!(sheet.checks.iter().all(|check| check.verdict != Verdict::Within));
            prop_assert!(answer.rows.is_none());
        }
        for step in &sheet.working {
            let figures = [&sheet.headline].into_iter().chain(&sheet.figures);
            if let Some(figure) = figures.into_iter().find(|figure| figure.key == step.key) {
                prop_assert_eq!(step.expr.value().and_then(Value::amount), Some(figure.amount));
            }
        }
    }
}
