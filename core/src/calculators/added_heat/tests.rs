//! Heat worked by hand, each side of what a ceiling bears, then laws.

use super::*;
use crate::fields::{Form, Reader};
use crate::measure::{Area, Rounding, Units, Volume};
use crate::rules::residential::blown::{Board, Fill};
use crate::rules::residential::insulation::Zone;
use crate::sheet::Verdict;
use crate::wire::Node;
use crate::words::Voice;
use proptest::prelude::*;

fn r(hundredths: i64) -> Option<Measure> {
    Some(Measure::hundredths(&unit::R_VALUE, hundredths))
}

fn btuh(millionths: i64) -> Measure {
    Measure::new(&unit::BTUH, millionths)
}

fn feet(count: i64) -> Option<Area> {
    Some(Area::square_feet(count))
}

fn worked(input: &Input) -> Answer {
    solve(input).unwrap()
}

fn verdict(input: &Input, key: &str) -> Option<Verdict> {
    let checks = sheet::sheet(input, &worked(input)).checks;
    checks.iter().find(|check| check.key == key).map(|check| check.verdict)
}

/// By hand: 32 × 0.082 × 60 = 157.44; 0.018 × 252 × 0.5 × 60 = 136.08; 293.52 in all, which 50 °F of
/// supply make up with 293.52 ÷ (1.08 × 50) = 5.4355… cfm. A third of it at 20 °F: 97.84, and
/// 97.84 ÷ 21.6 = 4.5296… cfm.
#[test]
fn the_sample_is_worked_as_by_hand() {
    let answer = worked(&Input::sample());
    assert_eq!(answer.heating.wall, btuh(157_440_000));
    assert_eq!(answer.heating.air, btuh(136_080_000));
    assert_eq!(answer.heating.total, btuh(293_520_000));
    assert_eq!(answer.heating.cfm, Some(Measure::new(&unit::CFM, 5_435_556)));
    let cooling = answer.cooling.unwrap();
    assert_eq!(cooling.total, btuh(97_840_000));
    assert_eq!(cooling.cfm, Some(Measure::new(&unit::CFM, 4_529_630)));
    let sheet = sheet::sheet(&Input::sample(), &answer);
    let said = |key: &str| {
        let step = sheet.working.iter().find(|step| step.key == key).unwrap();
        step.equation(Voice::default())
    };
    assert_eq!(said("heat-wall"), "0.082 Btu/h·ft²·°F × 32 sq ft × 60 °F = ≈ 157 Btu/h");
    assert_eq!(
        said("heat-air"),
        "0.018 Btu/cu ft·°F × 252 cu ft × 0.5 an hour × 60 °F = ≈ 136 Btu/h"
    );
}

/// By hand: 40 × 60 ÷ 20 = 120. Beside a heated room nothing goes through.
#[test]
fn a_wall_may_be_told_by_its_r_and_a_heated_room_takes_nothing() {
    let input = Input {
        holds: Holds { by: By::R, r: r(2_000), ..Holds::blank() },
        wall: feet(40),
        ..Input::sample()
    };
    assert_eq!(worked(&input).heating.wall, btuh(120_000_000));
    let behind = |behind| Input { holds: Holds { behind, ..input.holds.clone() }, ..input.clone() };
    let attic = behind(Behind::Attic);
    assert_eq!(worked(&attic), worked(&input));
    let heated = behind(Behind::Heated);
    assert_eq!(worked(&heated).heating.wall, btuh(0));
    assert_eq!(worked(&heated).heating.total, btuh(136_080_000));
}

/// By hand: 168 × 60 ÷ 40 - 168 × 60 ÷ 10 = 252 - 1008 = -756: insulation more than makes up for it.
#[test]
fn a_ceiling_that_is_insulated_gives_heat_back() {
    let ceiling = Ceiling {
        count: true,
        old_area: feet(168),
        old_r: r(1_000),
        area: feet(168),
        r: r(4_000),
        zone: Zone::NotSaid,
    };
    let input = Input { ceiling, ..Input::sample() };
    let heating = worked(&input).heating;
    assert_eq!(heating.ceiling, Some(btuh(-756_000_000)));
    assert_eq!(heating.total, btuh(-462_480_000));
    assert_eq!(heating.cfm, None, "less heat asks for no air");
}

#[test]
fn a_wall_without_its_r_is_asked_for_it_unless_it_takes_nothing() {
    let read = |behind: &str| {
        let mut node = Input::sample().write_parts();
        node.put("holds", Node::EMPTY);
        node.put("holds.behind", Node::text(behind));
        Reader::form::<Input>(&node, Units::Customary).and_then(|(input, _)| solve(&input))
    };
    assert_eq!(read("outside").unwrap_err()[0].path, "holds.r");
    assert!(read("heated").is_ok());
}

fn blown(kind: Fill, r_wanted: i64, per_inch: i64, density: i64, board: Board) -> Input {
    let blown = Blown {
        kind,
        r: r(r_wanted),
        per_inch: Some(Measure::hundredths(&unit::R_PER_INCH, per_inch)),
        density: Some(Measure::hundredths(&unit::PCF, density)),
        board,
    };
    Input { blown, ..Input::sample() }
}

/// By hand: 49 ÷ 3.5 = 14 in; 14 ÷ 12 × 1.75 = 2.0417 psf. Limits read in a trade magazine.
#[test]
fn cellulose_of_r_49_needs_more_than_half_inch_board_at_24() {
    for (board, want) in [
        (Board::Half24, Verdict::Over),
        (Board::Half16, Verdict::Within),
        (Board::FiveEighths, Verdict::Within),
    ] {
        let input = blown(Fill::Cellulose, 4_900, 350, 175, board);
        let depth = worked(&input).depth.unwrap();
        assert_eq!(depth.deep, Length::inches(14, 1));
        assert_eq!(depth.weight, Measure::new(&unit::PSF, 2_041_667));
        assert_eq!(verdict(&input, "sag"), Some(want), "{}", board.key());
    }
}

/// By hand: 12 in of 1.3 pcf are 1.3 psf, of 2.2 pcf 2.2; 1/100 pcf to either side.
#[test]
fn what_board_bears_is_a_limit_from_both_sides() {
    for (board, most) in [(Board::Half24, 130), (Board::Half16, 220), (Board::FiveEighths, 220)] {
        for (density, want) in
            [(most, Verdict::Within), (most - 1, Verdict::Within), (most + 1, Verdict::Over)]
        {
            let input = blown(Fill::Glass, 3_600, 300, density, board);
            assert_eq!(verdict(&input, "sag"), Some(want), "{} {density}", board.key());
        }
    }
    // Empty: the low R and the high weight of its kind.
    let mut input = blown(Fill::Cellulose, 3_200, 100, 100, Board::Half16);
    (input.blown.per_inch, input.blown.density) = (None, None);
    let depth = worked(&input).depth.unwrap();
    assert_eq!(depth.deep, Length::inches(10, 1));
    assert_eq!(depth.weight, Measure::new(&unit::PSF, 1_666_667));
}

/// Source: a government table of IRC 2009 to 2021 insulation by climate zone; 2024 from memory.
#[test]
fn each_zone_has_its_ceiling_by_edition() {
    #[rustfmt::skip]
    const CASES: &[(Zone, [i64; 3])] = &[
        (Zone::One,   [30, 30, 30]),
        (Zone::Two,   [38, 49, 38]),
        (Zone::Three, [38, 49, 38]),
        (Zone::Four,  [49, 60, 49]),
        (Zone::Five,  [49, 60, 49]),
        (Zone::Six,   [49, 60, 49]),
        (Zone::Seven, [49, 60, 49]),
    ];
    assert_eq!(Zone::NotSaid.ceilings(), None);
    for (zone, want) in CASES {
        let limits = zone.ceilings().unwrap();
        assert_eq!(limits.map(|limit| limit.value.millionths() / 1_000_000), *want);
        let at = |hundredths: i64| {
            let ceiling = Ceiling {
                count: true,
                old_area: feet(100),
                old_r: r(1_000),
                area: feet(100),
                r: r(hundredths),
                zone: *zone,
            };
            verdict(&Input { ceiling, ..Input::sample() }, "ceiling-r")
        };
        assert_eq!(at(want[1] * 100), Some(Verdict::Within));
        assert_eq!(at(want[1] * 100 + 1), Some(Verdict::Within));
        assert_eq!(at(want[1] * 100 - 1), Some(Verdict::Ask));
    }
}

prop_compose! {
    fn any_heat()(
        wall in 0_i64..1_000, u in 0_i64..200, air in 0_i64..20_000, changes in 0_i64..1_000,
        heating in 0_i64..15_000, supply in prop::option::of(500_i64..15_000),
        ceiling in prop::bool::ANY, areas in (0_i64..2_000, 0_i64..2_000),
        rs in (50_i64..10_000, 50_i64..10_000),
    ) -> Input {
        let degrees = |hundredths| Measure::hundredths(&unit::DEGREES, hundredths);
        Input {
            wall: feet(wall),
            holds: Holds {
                by: By::U,
                u: Some(Measure::hundredths(&unit::U_VALUE, u)),
                ..Holds::blank()
            },
            air: Some(Volume::hundredths(172_800).times(air)),
            changes: Measure::hundredths(&unit::PER_HOUR, changes),
            heating: Some(degrees(heating)),
            supply_heat: supply.map(degrees),
            ceiling: Ceiling {
                count: ceiling,
                old_area: feet(areas.0),
                old_r: r(rs.0),
                area: feet(areas.1),
                r: r(rs.1),
                zone: Zone::Four,
            },
            ..Input::sample()
        }
    }
}

proptest! {
    /// Beside the same sums in floating point.
    #[test]
    #[expect(clippy::cast_precision_loss, reason = "compared to a millionth")]
    fn heat_is_the_sum_of_its_parts(input in any_heat()) {
        let it = worked(&input).heating;
        let square_feet = |area: Option<Area>| {
            area.unwrap().square_nanometres() as f64 / (304.8e6 * 304.8e6)
        };
        let degrees = it.degrees.number();
        let wall = square_feet(input.wall) * input.holds.u.unwrap().number() * degrees;
        let cubic_feet = input.air.unwrap().units() as f64 / (1728.0 * 1_638_706_400.0);
        let air = 1.08 * (cubic_feet * input.changes.number() / 60.0) * degrees;
        let through = |area, r: Option<Measure>| square_feet(area) / r.unwrap().number() * degrees;
        let ceiling = if input.ceiling.count {
            let it = &input.ceiling;
            through(it.area, it.r) - through(it.old_area, it.old_r)
        } else {
            0.0
        };
        let near = |ours: f64, theirs: f64| (ours - theirs).abs() < 1e-5 * (1.0 + theirs.abs());
        prop_assert!(near(it.total.number(), wall + air + ceiling), "{it:?}");
        if let Some(cfm) = it.cfm {
            let supply = input.supply_heat.unwrap().number();
            prop_assert!(near(cfm.number(), it.total.number() / (1.08 * supply)));
        }
    }

    #[test]
    fn more_wall_air_or_cold_never_takes_less(input in any_heat(), more in 0_i64..500) {
        let base = worked(&input).heating;
        prop_assert!(base.wall.millionths() >= 0 && base.air.millionths() >= 0);
        let wall = Area::square_feet(more);
        let larger = Input { wall: input.wall.map(|it| it.plus(wall)), ..input.clone() };
        prop_assert!(worked(&larger).heating.total >= base.total);
        let airy = Volume::hundredths(172_800).times(more);
        let airier = Input { air: input.air.map(|it| it.plus(airy)), ..input };
        prop_assert!(worked(&airier).heating.total >= base.total);
    }

    #[test]
    fn deeper_is_never_lighter(wanted in 50_i64..10_000, more in 0_i64..1_000) {
        let at = |r| worked(&blown(Fill::Mineral, r, 300, 170, Board::Half16)).depth.unwrap();
        let (thin, thick) = (at(wanted), at((wanted + more).min(10_000)));
        prop_assert!(thick.deep >= thin.deep && thick.weight >= thin.weight);
    }

    #[test]
    fn working_comes_to_what_is_shown(input in any_heat()) {
        let answer = worked(&input);
        let sheet = sheet::sheet(&input, &answer);
        for step in &sheet.working {
            let figure = sheet.figures.iter().chain([&sheet.headline]).find(|it| it.key == step.key);
            let amount = step.expr.value().and_then(Value::amount);
            let text = |amount: Amount| amount.show(Units::Customary, Rounding::Nearest).text();
            prop_assert_eq!(amount.map(text), figure.map(|it| text(it.amount)), "{}", &step.key);
        }
    }
}
