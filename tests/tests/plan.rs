//! The plan of a room against a general geometry library (`geo`, from the registry), and against
//! the identities that hold for any polygon of square corners.

use geo::{Area as _, BoundingRect as _, Coord, Intersects as _, LineString, Polygon};
use ledgerboard_core::measure::{Area, Length};
use ledgerboard_core::plan::{Axis, Corner, Plan, Spot, Wall};
use ledgerboard_tests::rooms::{Column, columns, corners, mirrored, walls};
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};

/// The same rooms in every run: their seed is fixed, and none is left out.
fn each_room(rooms: u32, check: impl Fn(Vec<Column>, [usize; 2]) -> Result<(), TestCaseError>) {
    let seed = TestRng::from_seed(RngAlgorithm::ChaCha, &[7; 32]);
    let mut runner = TestRunner::new_with_rng(Config::with_cases(rooms), seed);
    let rooms = (columns(), prop::array::uniform2(any::<prop::sample::Index>()));
    runner.run(&rooms, |(room, picks)| check(room, picks.map(|pick| pick.index(64)))).unwrap();
}

/// In sixty-fourths of an inch, which the floating numbers of the library hold exactly.
#[expect(clippy::cast_precision_loss, reason = "below 2^53")]
fn polygon(corners: &[(i64, i64)]) -> Polygon {
    let places = corners.iter().map(|&(x, y)| Coord { x: x as f64, y: y as f64 });
    Polygon::new(LineString::from_iter(places), Vec::new())
}

#[expect(clippy::cast_precision_loss, reason = "below 2^53")]
fn square_sixty_fourths(area: Area) -> f64 {
    let one = Length::inches(1, 64);
    let one = Area::of(one, one).square_nanometres();
    assert_eq!(area.square_nanometres() % one, 0);
    (area.square_nanometres() / one) as f64
}

/// Source: `geo`'s area (shoelace formula over floating numbers), bounding rectangle and
/// point-in-polygon test.
#[test]
fn five_hundred_rooms_have_the_area_the_bounds_and_the_inside_that_a_geometry_library_finds() {
    each_room(500, |room, [start, pick]| {
        let around = corners(&room);
        let start = start % around.len();
        // The plan starts at (0, 0) with wall 1 to the right: only starts of level walls that
        // run that way keep the library's axes.
        let level = (0..around.len()).map(|at| (start + at) % around.len());
        let right = |at: &usize| around[(at + 1) % around.len()].0 > around[*at].0;
        let start = level.into_iter().find(right).expect("a wall that runs right");
        let plan = Plan::close(&walls(&around, start)).expect("a room by its making");
        let (x0, y0) = around[start];
        let moved: Vec<_> = around.iter().map(|(x, y)| (x - x0, y - y0)).collect();
        let polygon = polygon(&moved);
        prop_assert_eq!(square_sixty_fourths(plan.area()), polygon.unsigned_area());

        let bounds = polygon.bounding_rect().expect("not empty");
        let (low, high) = plan.bounds();
        let sixty_fourths = |length: Length| length.nanometres() as f64 / 396_875.0;
        prop_assert_eq!((sixty_fourths(low.x), sixty_fourths(low.y)), bounds.min().x_y());
        prop_assert_eq!((sixty_fourths(high.x), sixty_fourths(high.y)), bounds.max().x_y());

        // Corners, and places a step off them, where rules for edges tell.
        let (x, y) = moved[pick % moved.len()];
        for (dx, dy) in [(0, 0), (1, 1), (-1, 1), (1, -1), (-1, -1), (0, 1), (1, 0)] {
            let (x, y) = (x + dx, y + dy);
            let spot = Spot::new(Length::inches(x, 64), Length::inches(y, 64));
            let want = polygon.intersects(&Coord { x: x as f64, y: y as f64 });
            prop_assert_eq!(plan.contains(spot), want, "{} {}", x, y);
        }
        Ok(())
    });
}

/// Elementary: a simple polygon's exterior angles sum to one full turn; its area does not depend
/// on where the walk starts, nor on which way it is turned or mirrored; its rectangles make it up.
#[test]
fn a_room_is_the_same_whatever_way_it_is_walked() {
    each_room(500, |room, [start, other]| {
        let around = corners(&room);
        let at = |start: usize| Plan::close(&walls(&around, start % around.len())).unwrap();
        let plan = at(start);
        prop_assert_eq!(plan.corners(Corner::Inside), plan.corners(Corner::Outside) + 4);
        let mirrored = mirrored(&around);
        let mirror = Plan::close(&walls(&mirrored, other % mirrored.len())).unwrap();
        for same in [at(other), mirror] {
            prop_assert_eq!(same.area(), plan.area());
            prop_assert_eq!(same.perimeter(), plan.perimeter());
        }
        for axis in [Axis::Along, Axis::Across] {
            let rectangles = plan.rectangles(axis);
            let sum = rectangles.iter().map(|part| {
                let (long, wide) = part.sizes();
                Area::of(long, wide)
            });
            prop_assert_eq!(sum.fold(Area::ZERO, Area::plus), plan.area());
            for part in rectangles {
                prop_assert!(plan.contains(part.low) && plan.contains(part.high));
            }
        }
        Ok(())
    });
}

/// Any wall left blank, and any two in different directions, come back as they were.
#[test]
fn a_blank_wall_is_worked_out_as_it_was() {
    each_room(300, |room, [first, second]| {
        let around = corners(&room);
        let full = walls(&around, 0);
        let (first, second) = (first % full.len(), second % full.len());
        let mut blank = full.clone();
        for at in [first, second] {
            if at == first || first % 2 != second % 2 {
                blank[at] = Wall { length: None, ..blank[at] };
            }
        }
        let (full, worked) = (Plan::close(&full).unwrap(), Plan::close(&blank).unwrap());
        for (side, was) in worked.sides().iter().zip(full.sides()) {
            prop_assert_eq!((side.from, side.to, side.length), (was.from, was.to, was.length));
        }
        Ok(())
    });
}
