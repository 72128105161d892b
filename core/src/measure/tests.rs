//! How the trade writes quantities, then the laws that hold for all of them.

use super::*;
use proptest::prelude::*;

const IN: i64 = 25_400_000;

/// Common practice of site notes; the values are arithmetic.
#[test]
fn lengths_are_read_as_people_write_them() {
    #[rustfmt::skip]
    const CASES: &[(&str, i64)] = &[
        // text               sixty-fourths of an inch
        ("9' 4 1/2\"",        (112 * 64) + 32),
        ("9'-4 1/2\"",        (112 * 64) + 32),
        ("9'4½\"",            (112 * 64) + 32),
        ("9'3\"",             111 * 64),
        ("9'2",               110 * 64),
        ("9ft3in",            111 * 64),
        ("9-4-1/2",           (112 * 64) + 32),
        ("9ft 4.5in",         (112 * 64) + 32),
        ("9 ft 4-1/2 in",     (112 * 64) + 32),
        ("9 feet 4 1/2",      (112 * 64) + 32),
        ("112 1/2",           (112 * 64) + 32),
        ("112-1/2",           (112 * 64) + 32),
        ("112.5\"",           (112 * 64) + 32),
        ("1/2",               32),
        (".5",                32),
        ("½ in",              32),
        ("9'",                108 * 64),
        ("9-4",               112 * 64),
        ("9 4",               112 * 64),
        ("9 4 1/2",           (112 * 64) + 32),
        ("9 4-1/2",           (112 * 64) + 32),
        ("9 4½",              (112 * 64) + 32),
        ("9 4.5 in",          (112 * 64) + 32),
        ("15 6",              186 * 64),
        ("15  06\"",          186 * 64),
        ("1 0",               12 * 64),
        ("99 11",             1_199 * 64),
        ("48 3/4",            (48 * 64) + 48),
        ("3 yd",              108 * 64),
        ("0",                 0),
        ("-1/4 in",           -16),
    ];
    for &(text, want) in CASES {
        let got = Length::read(text, Units::Customary).map(Length::nanometres);
        assert_eq!(got, Ok(want * IN / 64), "{text}");
    }
}

#[test]
fn metric_lengths_are_whole_nanometres() {
    for (text, units, millimetres) in [
        ("2.86 m", Units::Customary, 2860),
        ("2860mm", Units::Customary, 2860),
        ("286 cm", Units::Customary, 2860),
        ("2860", Units::Metric, 2860),
    ] {
        let got = Length::read(text, units).map(Length::nanometres);
        assert_eq!(got, Ok(millimetres * 1_000_000), "{text}");
    }
}

#[test]
fn what_is_not_a_length_says_why() {
    for (text, want) in [
        ("", Problem::Empty),
        ("   ", Problem::Empty),
        ("wide", Problem::NotANumber),
        ("4 1/0", Problem::ZeroDenominator),
        ("4 stone", Problem::UnknownUnit),
        ("9 ft2", Problem::UnknownUnit),
        ("9 in3", Problem::UnknownUnit),
        ("4 in 3", Problem::NotANumber),
        ("1/2-4", Problem::NotANumber),
        ("15 12", Problem::NotANumber),
        ("0 6", Problem::NotANumber),
        ("100 6", Problem::NotANumber),
        ("1 250", Problem::NotANumber),
        ("1.5 6", Problem::NotANumber),
        ("1/2 6", Problem::NotANumber),
        ("15 6 7", Problem::NotANumber),
        ("15 6 ft", Problem::UnknownUnit),
        ("4..5", Problem::NotANumber),
        ("99999999999999999999", Problem::TooLarge),
        ("63361 in", Problem::TooLarge),
    ] {
        assert_eq!(Length::read(text, Units::Customary), Err(want), "{text}");
    }
}

#[test]
fn volumes_are_read_with_and_without_their_unit() {
    for (text, hundredths) in [
        ("20.3", 2030),
        ("20.3 in3", 2030),
        ("20.3 in³", 2030),
        ("20.3 cu in", 2030),
        ("20.3 cu. in.", 2030),
        ("30 1/2 in3", 3050),
    ] {
        let got = Volume::read(text, Units::Customary);
        assert_eq!(got, Ok(Volume::hundredths(hundredths)), "{text}");
    }
    assert_eq!(Volume::read("333 cm3", Units::Customary), Volume::read("333", Units::Metric));
    assert_eq!(Volume::read("18 mm", Units::Customary), Err(Problem::UnknownUnit));
}

/// Source: NIST SP 811 (2008), appendix B.8: 1 in³ is 1.638 706 4 E-05 m³, exactly.
#[test]
fn a_cubic_inch_is_16_387064_cubic_centimetres() {
    let inch = Volume::hundredths(100);
    assert_eq!(Volume::read("16.387064 cm3", Units::Customary), Ok(inch));
}

#[test]
fn shown_text_rounds_the_way_it_is_told_and_says_so() {
    let over = Length::inches(1, 128);
    assert_eq!(over.show(Units::Customary, Rounding::Down).text(), "≈ 0 in");
    assert_eq!(over.show(Units::Customary, Rounding::Up).text(), "≈ 1/64 in");
    assert_eq!(
        Length::inches(225, 2).show(Units::Customary, Rounding::Nearest).text(),
        "9 ft 4-1/2 in"
    );
    assert_eq!(Length::inches(5, 4).show(Units::Customary, Rounding::Nearest).text(), "1-1/4 in");
    assert_eq!(Length::inches(1, 1).show(Units::Metric, Rounding::Nearest).text(), "25.4 mm");
    assert_eq!(
        Volume::hundredths(2800).show(Units::Customary, Rounding::Nearest).text(),
        "28.0 in³"
    );
    assert_eq!(
        Volume::from_units(1_638_706_400 / 16 * 90)
            .show(Units::Customary, Rounding::Nearest)
            .text(),
        "5.625 in³"
    );
}

#[test]
fn areas_are_read_with_and_without_their_unit() {
    let floor = Area::of(Length::inches(192, 1), Length::inches(120, 1));
    for text in
        ["160", "160 sq ft", "160 sqft", "160 ft2", "160 ft²", "160 sq. ft.", "160SF", "23040 in2"]
    {
        assert_eq!(Area::read(text, Units::Customary), Ok(floor), "{text}");
    }
    let dozen = Area::of(Length::inches(3, 1), Length::inches(4, 1));
    assert_eq!(Area::read("12 sq in", Units::Metric), Ok(dozen));
    assert_eq!(Area::read("14.9 m2", Units::Customary), Area::read("14.9", Units::Metric));
    assert_eq!(
        Area::read("1 1/2 sq yd", Units::Metric),
        Ok(Area::square_feet(13).plus(dozen.times(6)))
    );
    for (text, want) in [
        ("", Problem::Empty),
        ("160 ft", Problem::UnknownUnit),
        ("160 sq ft 3", Problem::NotANumber),
        ("9999999999999 m2", Problem::TooLarge),
        ("99999999999999999999999999999", Problem::TooLarge),
    ] {
        assert_eq!(Area::read(text, Units::Customary), Err(want), "{text}");
    }
}

/// Source: NIST SP 811 (2008), appendix B.8: 1 ft² is 9.290 304 E-02 m², exactly, and 1 ft³ is
/// 2.831 685 E-02 m³.
#[test]
fn square_and_cubic_feet_are_as_published() {
    let foot = Length::inches(12, 1);
    assert_eq!(Area::read("0.09290304 m2", Units::Customary), Ok(Area::of(foot, foot)));
    let cube = Volume::over(Area::square_feet(1), foot);
    assert_eq!(cube, Volume::hundredths(172_800));
    assert_eq!(cube.times(1000).show_as_room(Units::Metric, Rounding::Nearest).text(), "≈ 28.3 m³");
    // By hand: a cubic foot is 28.316846592 L. A bag of scrapings is told in liters, a room is not.
    let metric = |volume: Volume| volume.show_as_room(Units::Metric, Rounding::Nearest).text();
    let liters = |text| Volume::read(text, Units::Metric).unwrap();
    assert_eq!([cube, cube.times(2)].map(metric), ["≈ 28 L", "≈ 57 L"]);
    assert_eq!(
        ["4,25 L", "999 L", "1 m3"].map(|it| metric(liters(it))),
        ["≈ 4.3 L", "999 L", "1 m³"]
    );
    assert_eq!(metric(Volume::ZERO), "0 m³");
    // A cubic yard is 764.554857984 L.
    let yards = |millionths| Measure::new(&unit::CUBIC_YARD, millionths);
    let told = |it: Measure| it.show(Units::Metric, Rounding::Nearest).text();
    assert_eq!(
        [10_000, 1_000, 2_000_000].map(|it| told(yards(it))),
        ["≈ 7.6 L", "≈ 0.8 L", "≈ 1.53 m³"]
    );
    let half = liters("14.158423296 L");
    assert_eq!(half.show_as_room(Units::Customary, Rounding::Nearest).text(), "0.5 cu ft");
    assert_eq!(cube.times(8).show_as_room(Units::Customary, Rounding::Nearest).text(), "8 cu ft");
    assert_eq!(Volume::read("1344 cu ft", Units::Metric), Ok(cube.times(1344)));
}

#[test]
fn areas_are_shown_to_the_tenth_of_a_square_foot() {
    let floor = Area::of(Length::inches(149, 1), Length::inches(169, 1));
    assert_eq!(floor.show(Units::Customary, Rounding::Nearest).text(), "≈ 174.9 sq ft");
    assert_eq!(floor.show(Units::Metric, Rounding::Nearest).text(), "≈ 16.25 m²");
    assert_eq!(Area::square_feet(168).show(Units::Customary, Rounding::Up).text(), "168 sq ft");
}

/// A figure is one that a person can read, and says exactly the area. By hand: 36258 in² are 251 ft² and
/// 114 in², and 114/144 is 19/24; a square inch is 0.00064516 m², NIST SP 811 (2008), B.8.
#[test]
fn an_area_that_is_no_round_number_has_a_figure_to_read() {
    let figure = |text: &str, units| Area::read(text, Units::Customary).unwrap().figure(units);
    for (text, feet, metres) in [
        ("36258 in2", "251-19/24", "23.39221128"),
        ("36261 in2", "251.8125", "23.39414676"),
        ("36252 in2", "251.75", "23.38834032"),
        ("36240 in2", "251-2/3", "23.3805984"),
        ("48 in2", "1/3", "0.03096768"),
        ("1 in2", "1/144", "0.00064516"),
        ("168", "168", "15.60771072"),
        ("0", "0", "0"),
    ] {
        assert_eq!(figure(text, Units::Customary).as_deref(), Some(feet), "{text}");
        assert_eq!(figure(text, Units::Metric).as_deref(), Some(metres), "{text}");
    }
    assert_eq!(figure("36258.25 in2", Units::Customary), None, "no whole square inches");
    assert_eq!(figure("-36258 in2", Units::Customary), None);
}

/// 333 cm³ are 20.32092… in³: NIST SP 811 (2008), B.8.
#[test]
fn a_volume_is_shown_as_a_person_would_write_it() {
    let show = |volume: Volume, units| volume.show(units, Rounding::Nearest).text();
    let typed = Volume::read("333 cm3", Units::Customary).unwrap();
    assert_eq!(show(typed, Units::Customary), "≈ 20.32 in³");
    assert_eq!(show(typed, Units::Metric), "333.0 cm³");
    assert_eq!(show(Volume::hundredths(2200), Units::Metric), "≈ 360.5 cm³");
    // Nine sixteenths of 1 in³, as a fifth ground of 12 AWG adds.
    let ninth = Volume::from_units(1_638_706_400 / 16 * 9);
    assert_eq!(show(ninth, Units::Customary), "0.5625 in³");
}

/// Source: NIST SP 811 (2008), B.8: 40 ft are 12 192 mm.
#[test]
fn a_long_length_is_told_in_metres_and_reads_back() {
    let show = |length: Length| length.show(Units::Metric, Rounding::Nearest);
    let forty = show(Length::inches(480, 1));
    assert_eq!((&*forty.figure, forty.text()), ("12.192 m", "12.192 m".to_owned()));
    assert_eq!(Length::read(&forty.figure, Units::Metric), Ok(Length::inches(480, 1)));
    assert_eq!(show(Length::from_nanometres(9_999_900_000)).text(), "9999.9 mm");
    assert_eq!(show(Length::from_nanometres(-10_000_000_000)).text(), "−10 m");
}

/// 32 °F is 0 °C, by definition, whatever a rounded offset leaves.
#[test]
fn freezing_is_nothing_in_celsius() {
    let shown = Measure::whole(&unit::FAHRENHEIT, 32).show(Units::Metric, Rounding::Nearest);
    assert_eq!(shown.text().trim_start_matches("≈ "), "0 °C");
}

/// A coat of 1/32 in that reads 1/16 would be twice as thick: under 1/8 in sixty-fourths are told,
/// from there on sixteenths.
#[test]
fn what_is_thin_is_told_to_the_sixty_fourth() {
    for (over, under, want) in [
        (1, 64, "1/64 in"),
        (1, 32, "1/32 in"),
        (-3, 64, "−3/64 in"),
        (1, 16, "1/16 in"),
        (1, 10, "≈ 3/32 in"),
        (7, 64, "7/64 in"),
        (31, 256, "≈ 1/8 in"),
        (1, 8, "1/8 in"),
        (9, 64, "≈ 1/8 in"),
        (33, 32, "≈ 1-1/16 in"),
    ] {
        let shown = Length::inches(over, under).show(Units::Customary, Rounding::Nearest);
        assert_eq!(shown.text(), want, "{over}/{under}");
    }
}

#[test]
fn what_is_not_nothing_is_never_shown_as_nothing() {
    let length = |nanometres, units| {
        Length::from_nanometres(nanometres).show(units, Rounding::Nearest).text()
    };
    assert_eq!(length(0, Units::Customary), "0 in");
    assert_eq!(length(IN / 200, Units::Customary), "0.005 in");
    assert_eq!(length(-IN / 10_000 * 3, Units::Customary), "−0.0003 in");
    assert_eq!(length(-10_000, Units::Metric), "−0.01 mm");
    assert_eq!(length(1, Units::Customary), "≈ 0.00000004 in");
    let least = Volume::from_units(-1).show(Units::Metric, Rounding::Nearest);
    assert_eq!(least.text(), "−0.00000001 cm³");
    assert_eq!(Volume::ZERO.show(Units::Metric, Rounding::Nearest).text(), "0.0 cm³");
}

proptest! {
    #[test]
    fn exact_text_of_an_area_gives_it_back(wide in -63_360 * IN..=63_360 * IN, high in 0..=63_360 * IN) {
        let area = Area::of(Length::from_nanometres(wide), Length::from_nanometres(high));
        for units in [Units::Customary, Units::Metric] {
            prop_assert_eq!(Area::read(&area.exact(), units), Ok(area));
        }
    }

    #[test]
    fn the_figure_of_an_area_gives_it_back(wide in 0..=4 * 63_360_i64, high in 0..=4 * 63_360_i64) {
        // Quarters of an inch.
        let side = |quarters: i64| Length::inches(quarters, 4);
        let area = Area::of(side(wide), side(high));
        for units in [Units::Customary, Units::Metric] {
            if let Some(figure) = area.figure(units) {
                prop_assert_eq!(Area::read(&figure, units), Ok(area), "{}", figure);
            }
        }
        let whole = Area::of(Length::inches(wide, 1), Length::inches(high, 1));
        prop_assert!(whole.figure(Units::Customary).is_some() || whole > Area::MAX);
    }

    #[test]
    fn exact_text_of_a_room_gives_it_back(units in any::<i32>(), scale in 1_i64..=1_000_000_000) {
        let volume = Volume::from_units(i64::from(units) * scale);
        prop_assert_eq!(Volume::read(&volume.exact_as_room(), Units::Customary), Ok(volume));
    }

    #[test]
    fn an_area_falls_apart_into_its_parts(a in 0..=1000 * IN, b in 0..=1000 * IN, high in 0..=1000 * IN) {
        let [a, b, high] = [a, b, high].map(Length::from_nanometres);
        prop_assert_eq!(Area::of(a.plus(b), high), Area::of(a, high).plus(Area::of(b, high)));
    }

    #[test]
    fn any_text_is_read_or_refused(text in ".{0,40}") {
        let _ = Length::read(&text, Units::Customary);
        let _ = Volume::read(&text, Units::Metric);
        let _ = Area::read(&text, Units::Metric);
    }

    #[test]
    fn text_of_digits_and_marks_is_read_or_refused(text in "[-0-9 ./'\"½sqftinm²³]{0,16}") {
        let _ = Length::read(&text, Units::Customary);
        let _ = Volume::read(&text, Units::Customary);
        let _ = Area::read(&text, Units::Customary);
    }

    /// A space between two numbers is read as feet and inches alone, and never in millimetres; what is
    /// one number, or has a mark of feet, says what it said.
    #[test]
    fn a_space_is_feet_and_inches_or_nothing(feet in 0..200_i64, inches in 0..30_i64, eighths in 0..8_i64) {
        let both = format!("{feet} {inches}");
        let read = |text: &str, units| Length::read(text, units).map(Length::nanometres);
        let means = (1..100).contains(&feet) && inches < 12;
        let all = 12 * feet + inches;
        let want = if means { Ok(all * IN) } else { Err(Problem::NotANumber) };
        prop_assert_eq!(read(&both, Units::Customary), want);
        prop_assert_eq!(read(&both, Units::Metric), Err(Problem::NotANumber));
        prop_assert_eq!(read(&format!("{feet}' {inches}"), Units::Customary), Ok(all * IN));
        let eighth = |whole: i64| Ok(whole * IN + eighths * IN / 8);
        prop_assert_eq!(read(&format!("{feet} {eighths}/8"), Units::Customary), eighth(feet));
        if means {
            prop_assert_eq!(read(&format!("{both} {eighths}/8"), Units::Customary), eighth(all));
        }
    }

    #[test]
    fn exact_text_of_a_length_gives_it_back(nanometres in -63_360 * IN..=63_360 * IN) {
        let length = Length::from_nanometres(nanometres);
        prop_assert_eq!(Length::read(&length.exact(), Units::Customary), Ok(length));
        prop_assert_eq!(Length::read(&length.exact(), Units::Metric), Ok(length));
    }

    #[test]
    fn sixteenths_are_shown_exactly_and_read_back(count in -1_000_000_i64..=1_000_000) {
        let length = Length::inches(count, 16);
        let shown = length.show(Units::Customary, Rounding::Nearest);
        prop_assert!(!shown.rounded);
        prop_assert_eq!(Length::read(&shown.text(), Units::Customary), Ok(length));
    }

    #[test]
    fn millimetres_are_shown_exactly_and_read_back(tenths in -10_000_000_i64..=10_000_000) {
        let length = Length::from_nanometres(tenths * 100_000);
        let shown = length.show(Units::Metric, Rounding::Nearest);
        prop_assert!(!shown.rounded);
        prop_assert_eq!(Length::read(&shown.text(), Units::Metric), Ok(length));
    }

    #[test]
    fn exact_text_of_a_volume_gives_it_back(units in any::<i32>(), scale in 1_i64..=100_000) {
        let volume = Volume::from_units(i64::from(units) * scale);
        prop_assert_eq!(Volume::read(&volume.exact(), Units::Customary), Ok(volume));
    }

    #[test]
    fn sixteenths_of_a_cubic_inch_are_shown_exactly(count in 0_i64..=1_000_000) {
        let volume = Volume::from_units(1_638_706_400 / 16 * count);
        let shown = volume.show(Units::Customary, Rounding::Down);
        prop_assert!(!shown.rounded);
        prop_assert_eq!(Volume::read(&shown.text(), Units::Customary), Ok(volume));
    }

    #[test]
    fn rounding_down_never_shows_more_and_up_never_less(nanometres in 0..=100 * IN) {
        let length = Length::from_nanometres(nanometres);
        for (rounding, more) in [(Rounding::Down, false), (Rounding::Up, true)] {
            let text = length.show(Units::Customary, rounding);
            let back = Length::read(text.text().trim_start_matches("≈ "), Units::Customary).unwrap();
            let kept = if more { back >= length } else { back <= length };
            prop_assert!(kept);
        }
    }
}

/// Source: conversion factors of NIST SP 811 (2008), B.8; 350 °F for 177 °C is in its B.8 text's
/// convention `t/°C = (t/°F − 32)/1.8`.
#[test]
fn measures_read_and_show_in_both_units() {
    use unit::{
        BTUH, CFM, FAHRENHEIT, MONEY_AN_HOUR, MONEY_PERCENT, MONEY_SPENT, PERCENT, PITCH, PSF,
        R_VALUE,
    };
    use unit::{FPM, IN_WC, IN_WC_PER_100_FT, NET_IN2, PASCAL};
    let say = |measure: Measure, units| measure.show(units, Rounding::Nearest).text();
    for (text, unit, units, exact, customary, metric) in [
        ("30", &PSF, Units::Customary, "30 psf", "30 psf", "≈ 1.44 kPa"),
        ("1.5 kPa", &PSF, Units::Customary, "31.328151 psf", "≈ 31.3 psf", "≈ 1.5 kPa"),
        ("1,5", &PSF, Units::Metric, "31.328151 psf", "≈ 31.3 psf", "≈ 1.5 kPa"),
        ("68 °F", &FAHRENHEIT, Units::Metric, "68 °F", "68 °F", "≈ 20 °C"),
        ("-40 F", &FAHRENHEIT, Units::Customary, "-40 °F", "−40 °F", "≈ −40 °C"),
        ("20 C", &FAHRENHEIT, Units::Customary, "68 °F", "68 °F", "≈ 20 °C"),
        ("12.5%", &PERCENT, Units::Customary, "12.5 %", "12.5 %", "12.5 %"),
        ("6 in 12", &PITCH, Units::Customary, "6 /12", "6 in 12", "6 in 12"),
        ("4/12", &PITCH, Units::Customary, "4 /12", "4 in 12", "4 in 12"),
        ("4 1/2", &PITCH, Units::Customary, "4.5 /12", "4.5 in 12", "4.5 in 12"),
        ("1/2", &PITCH, Units::Customary, "0.5 /12", "0.5 in 12", "0.5 in 12"),
        ("6:12", &PITCH, Units::Customary, "6 /12", "6 in 12", "6 in 12"),
        ("$40", &MONEY_SPENT, Units::Customary, "40 $", "$40.00", "$40.00"),
        ("-$40", &MONEY_SPENT, Units::Customary, "-40 $", "−$40.00", "−$40.00"),
        ("$52.50/hr", &MONEY_AN_HOUR, Units::Customary, "52.5 $/h", "$52.50/h", "$52.50/h"),
        ("$52.50 an hour", &MONEY_AN_HOUR, Units::Metric, "52.5 $/h", "$52.50/h", "$52.50/h"),
        ("18,450", &MONEY_SPENT, Units::Metric, "18450 $", "$18,450.00", "$18,450.00"),
        (
            "$1,250,000",
            &MONEY_SPENT,
            Units::Customary,
            "1250000 $",
            "$1,250,000.00",
            "$1,250,000.00",
        ),
        ("0.045", &MONEY_SPENT, Units::Customary, "0.045 $", "≈ $0.05", "≈ $0.05"),
        ("1.255 $", &MONEY_SPENT, Units::Customary, "1.255 $", "≈ $1.26", "≈ $1.26"),
        ("3,45", &MONEY_SPENT, Units::Customary, "3.45 $", "$3.45", "$3.45"),
        ("$18,939.84", &MONEY_SPENT, Units::Customary, "18939.84 $", "$18,939.84", "$18,939.84"),
        ("50 $/h", &MONEY_AN_HOUR, Units::Customary, "50 $/h", "$50.00/h", "$50.00/h"),
        ("7.25%", &MONEY_PERCENT, Units::Customary, "7.25 pct", "7.25 %", "7.25 %"),
        ("12000 btuh", &BTUH, Units::Customary, "12000 btu/h", "12000 Btu/h", "≈ 3517 W"),
        ("100 cfm", &CFM, Units::Customary, "100 cfm", "100 cfm", "≈ 47 L/s"),
        ("700 ft/min", &FPM, Units::Customary, "700 fpm", "700 fpm", "≈ 3.56 m/s"),
        ("0.1 in. w.c.", &IN_WC, Units::Customary, "0.1 inwc", "0.1 in wc", "≈ 24.91 Pa"),
        ("25 Pa", &IN_WC, Units::Metric, "0.100366 inwc", "≈ 0.1004 in wc", "≈ 25 Pa"),
        (
            "0.08",
            &IN_WC_PER_100_FT,
            Units::Customary,
            "0.08 inwc/100ft",
            "0.08 in wc/100 ft",
            "≈ 0.6538 Pa/m",
        ),
        ("3", &PASCAL, Units::Metric, "3 Pa", "3 Pa", "3 Pa"),
        ("54 sq in", &NET_IN2, Units::Customary, "54 net-in2", "54 sq in", "≈ 348.4 cm²"),
        ("38 R", &R_VALUE, Units::Customary, "38 r", "38 R", "≈ 6.69 m²K/W"),
    ] {
        let read = Measure::read(text, unit, units).unwrap();
        assert_eq!(read.exact(), exact, "{text}");
        assert_eq!(Measure::from_exact(exact), Some(read), "{text}");
        assert_eq!(say(read, Units::Customary), customary, "{text}");
        assert_eq!(say(read, Units::Metric), metric, "{text}");
    }
    for (text, unit) in [
        ("30 kg", &PSF),
        ("$40 $", &MONEY_SPENT),
        ("$1,50", &PSF),
        ("18.450", &MONEY_SPENT),
        ("7:60", &unit::HOUR),
        ("7:5", &unit::HOUR),
        (":15", &unit::HOUR),
        ("7:15:00", &unit::HOUR),
        ("7:15", &MONEY_SPENT),
        ("$1.250", &MONEY_SPENT),
        (" 100.125 ", &MONEY_AN_HOUR),
        ("1,5000", &MONEY_SPENT),
        ("1500,000,00", &MONEY_SPENT),
        ("$1,50,000.00", &MONEY_SPENT),
        ("$,500.00", &MONEY_SPENT),
        ("1,500.00 psf", &PSF),
        ("$40 usd", &MONEY_SPENT),
        ("$40 an hour", &MONEY_SPENT),
        ("$$40", &MONEY_AN_HOUR),
        ("30 psf x", &PSF),
        ("$30 psf", &PSF),
        ("", &PSF),
    ] {
        assert!(Measure::read(text, unit, Units::Customary).is_err(), "{text}");
    }
}

#[test]
fn no_two_units_have_one_key_and_none_reads_as_a_length_area_or_volume() {
    for (at, unit) in unit::ALL.iter().enumerate() {
        assert!(!unit::ALL[at + 1..].iter().any(|other| other.key == unit.key), "{}", unit.key);
        let text = Measure::whole(unit, 3).exact();
        assert!(Length::read(&text, Units::Customary).is_err(), "{text}");
        assert!(Area::read(&text, Units::Customary).is_err(), "{text}");
        assert!(Volume::read(&text, Units::Customary).is_err(), "{text}");
    }
}

#[test]
fn a_half_is_rounded_the_same_on_both_sides_of_nothing() {
    for (value, want) in
        [(0, 0), (1, 0), (2, 1), (3, 1), (5, 1), (6, 2), (-1, 0), (-2, -1), (-6, -2)]
    {
        assert_eq!(divide(value, 4, Rounding::Nearest), want, "{value} quarters");
    }
    let half = Length::from_nanometres(984_250_000);
    for (length, want) in [(half, "984.3"), (Length::ZERO.minus(half), "−984.3")] {
        assert_eq!(length.show(Units::Metric, Rounding::Nearest).figure, want);
    }
}

#[test]
fn an_area_that_is_something_never_shows_as_nothing() {
    let little = Area::of(Length::inches(1, 16), Length::inches(1, 16));
    let shown = little.show(Units::Customary, Rounding::Nearest);
    assert_eq!((shown.figure.as_str(), shown.rounded), ("0.00003", true));
    assert_eq!(Area::ZERO.show(Units::Customary, Rounding::Nearest).figure, "0");
}

#[test]
fn money_is_written_as_on_a_till() {
    for (figure, want) in [
        ("−12.5", "−$12.50"),
        ("12", "$12.00"),
        ("12.345", "$12.345"),
        ("0.05", "$0.05"),
        ("999", "$999.00"),
        ("18939.84", "$18,939.84"),
        ("−1234567", "−$1,234,567.00"),
    ] {
        let shown = Shown { figure: figure.to_owned(), unit: "$", rounded: false };
        assert_eq!(shown.text(), want);
    }
}

#[test]
fn what_is_typed_in_such_a_unit_is_shown_with_every_decimal() {
    use unit::typed;
    for (own, text, want) in [
        (&typed::HOUR, "7.25", "7.25 h"),
        (&typed::HOUR, "7 1/3", "7.333333 h"),
        (&typed::HOUR, "7:15", "7.25 h"),
        (&typed::HOUR, " 0:20 ", "0.333333 h"),
        (&typed::NUMBER, "2.125", "2.125"),
        (&typed::MONEY_SPENT, "12.345 $", "$12.345"),
        (&typed::MONEY_AN_HOUR, "61.35", "$61.35/h"),
        (&typed::MONEY_PERCENT, "8.8755", "8.8755 %"),
    ] {
        let read = Measure::read(text, own, Units::Customary).unwrap();
        assert_eq!(read.show(Units::Customary, Rounding::Nearest).text(), want);
        assert_eq!(Measure::from_exact(&read.exact()), Some(read), "of the same key");
    }
}
