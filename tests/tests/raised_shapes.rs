//! Trays and vaults beside two other ways to work them: surfaces as triangles in space, each half
//! the cross product of its sides, and volumes and floors as thin slices added up.

use ledgerboard_core::calculators::raising::{
    Answer, By, Goal, Input, Made, OldCeiling, Ridge, Shape, solve,
};
use ledgerboard_core::fields::Form;
use ledgerboard_core::measure::{Area, Length, Measure, Volume, unit};
use proptest::prelude::*;

type Spot = [f64; 3];

#[expect(clippy::cast_precision_loss, reason = "compared to a millionth")]
fn inches(length: Length) -> f64 {
    length.nanometres() as f64 / 25.4e6
}

#[expect(clippy::cast_precision_loss, reason = "compared to a millionth")]
fn square_inches(area: Area) -> f64 {
    area.square_nanometres() as f64 / (25.4e6 * 25.4e6)
}

#[expect(clippy::cast_precision_loss, reason = "compared to a millionth")]
fn cubic_inches(volume: Volume) -> f64 {
    volume.units() as f64 / 1_638_706_400.0
}

fn triangle([a, b, c]: [Spot; 3]) -> f64 {
    let side = |to: Spot| [to[0] - a[0], to[1] - a[1], to[2] - a[2]];
    let (u, v) = (side(b), side(c));
    let cross = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    (cross[0] * cross[0] + cross[1] * cross[1] + cross[2] * cross[2]).sqrt() / 2.0
}

/// A plane figure of four corners, in order.
fn quad([a, b, c, d]: [Spot; 4]) -> f64 {
    triangle([a, b, c]) + triangle([a, c, d])
}

/// The corners of a level rectangle set in from a room, so high.
fn ring([long, wide]: [f64; 2], set_in: f64, high: f64) -> [Spot; 4] {
    let (x, y) = (long - set_in, wide - set_in);
    [[set_in, set_in, high], [x, set_in, high], [x, y, high], [set_in, y, high]]
}

/// The middle of each of so many slices.
fn slices(count: u32, whole: f64) -> impl Iterator<Item = (f64, f64)> {
    let thick = whole / f64::from(count);
    (0..count).map(move |at| ((f64::from(at) + 0.5) * thick, thick))
}

fn near(ours: f64, theirs: f64, within: f64) -> bool {
    (ours - theirs).abs() <= within * theirs.abs().max(1.0)
}

fn length(sixteenths: i64) -> Option<Length> {
    Some(Length::inches(sixteenths, 16))
}

fn input(shape: Shape, (long, wide): (i64, i64)) -> Input {
    Input {
        shape,
        long: length(long),
        wide: length(wide),
        old: OldCeiling::Bare,
        ..Input::sample()
    }
}

fn worked(input: &Input) -> (Answer, [f64; 2]) {
    let answer = solve(input).unwrap();
    (answer, [input.long, input.wide].map(|side| inches(side.unwrap())))
}

proptest! {
    #[test]
    fn a_tray_is_its_triangles_and_its_slices(
        room in (640_i64..6_400, 640_i64..6_400),
        border in 16_i64..160,
        lean in prop::option::of(0_i64..150),
        high in 1_i64..800,
    ) {
        let input = Input {
            border: length(border),
            lean: lean.and_then(length),
            to: Goal { by: By::Raise, raise: length(high), ..Goal::blank() },
            ..input(Shape::Tray, room)
        };
        let (answer, room) = worked(&input);
        let Made::Tray(tray) = &answer.made else { panic!("a tray") };
        let [border, high] = [border, high].map(|it| inches(length(it).unwrap()));
        let lean = inches(input.lean.unwrap_or_default());
        let (wall, low, top) =
            (ring(room, 0.0, 0.0), ring(room, border, 0.0), ring(room, border + lean, high));
        let around = |from: [Spot; 4], to: [Spot; 4]| -> f64 {
            (0..4).map(|at| quad([from[at], from[(at + 1) % 4], to[(at + 1) % 4], to[at]])).sum()
        };
        prop_assert!(near(square_inches(tray.sides), around(low, top), 1e-6));
        prop_assert!(near(square_inches(tray.opening), quad(low), 1e-6));
        let board = around(wall, low) + around(low, top) + quad(top);
        prop_assert!(near(square_inches(answer.board), board, 1e-6));
        let air: f64 = slices(4_000, high)
            .map(|(z, thick)| quad(ring(room, border + lean * z / high, z)) * thick)
            .sum();
        prop_assert!(near(cubic_inches(answer.air), air, 1e-5));
    }

    #[test]
    fn a_vault_is_its_triangles_and_its_slices(
        room in (640_i64..6_400, 640_i64..6_400),
        two in any::<bool>(),
        turned in any::<bool>(),
        pitch in 4_i64..384,
        framing in 576_i64..2_000,
    ) {
        let shape = if two { Shape::Gable } else { Shape::Shed };
        let input = Input {
            pitch: Some(Measure::new(&unit::PITCH, pitch * 62_500)),
            ridge: if turned { Ridge::Wide } else { Ridge::Long },
            known: ledgerboard_core::calculators::raising::Known::Framing,
            framing: length(framing),
            ..input(shape, room)
        };
        let (answer, [long, wide]) = worked(&input);
        let Made::Vault(vault) = &answer.made else { panic!("a vault") };
        let (across, along) = if turned { (long, wide) } else { (wide, long) };
        let slope = inches(length(pitch).unwrap()) / 12.0;
        // How high the ceiling is over the low wall, so far from it.
        let over = |x: f64| slope * if two { x.min(across - x) } else { x };
        let peak = if two { across / 2.0 } else { across };
        let line = |x: f64| [[x, 0.0, over(x)], [x, along, over(x)]];
        let plane = |from: f64, to: f64| {
            let ([a, d], [b, c]) = (line(from), line(to));
            quad([a, b, c, d])
        };
        let planes = plane(0.0, peak) + if two { plane(peak, across) } else { 0.0 };
        prop_assert!(near(square_inches(vault.ceiling), planes, 1e-6));
        let end = triangle([[0.0, 0.0, 0.0], [across, 0.0, 0.0], [peak, 0.0, over(peak)]]);
        // One slope ends in a right triangle at its high wall.
        prop_assert!(near(square_inches(vault.ends), 2.0 * end, 1e-6));
        let high_wall = if two { 0.0 } else { along * over(across) };
        prop_assert!(near(square_inches(answer.upright), 2.0 * end + high_wall, 1e-6));
        let air: f64 = slices(4_000, across).map(|(x, thick)| over(x) * along * thick).sum();
        prop_assert!(near(cubic_inches(answer.air), air, 1e-5));
        // Floor under so much height: whole slices, so to a slice or two.
        let low = inches(answer.now);
        let count = 8_000;
        let under = |high: f64| -> f64 {
            let slices = slices(count, across).filter(|(x, _)| low + over(*x) >= high);
            slices.map(|(_, thick)| thick * along).sum()
        };
        let slice = across / f64::from(count) * along;
        for (ours, theirs) in [(vault.counted, under(60.0)), (vault.full, under(84.0))] {
            prop_assert!((square_inches(ours) - theirs).abs() <= 2.0 * slice);
        }
    }
}
