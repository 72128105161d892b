//! Rooms by hand, what is refused and why; then anything at all. Random rooms are compared with
//! a geometry library in the tests' own crate.

use super::Corner::{Inside, Outside};
use super::*;
use proptest::prelude::*;

fn inches(count: i64) -> Length {
    Length::inches(count, 1)
}

/// Walls in inches; 0 is blank, below zero ends in an outside corner.
fn close(walls: &[i64]) -> Result<Plan, Problem> {
    let walls = walls.iter().map(|&length| Wall {
        length: (length.abs() < 9_999).then(|| inches(length.abs())),
        end: if length < 0 { Outside } else { Inside },
    });
    Plan::close(&walls.collect::<Vec<_>>())
}

/// A wall without a length, in either kind of corner.
const BLANK: i64 = 9_999;

fn square_inches(plan: &Plan) -> i128 {
    plan.area().square_nanometres() / Area::of(inches(1), inches(1)).square_nanometres()
}

/// Areas are products and sums of the lengths, by hand.
#[test]
fn rooms_by_hand() {
    let feet = |count: i64| inches(count * 12);
    #[rustfmt::skip]
    let cases = [
        // walls, square feet, perimeter in feet, inside and outside corners
        (shape::rectangle(feet(14), feet(12)), 168, 52, 4, 0),
        (shape::ell(feet(14), feet(12), (feet(4), feet(5))), 168 - 20, 52, 5, 1),
        (shape::tee(feet(14), feet(12), (feet(6), feet(4)), feet(3)), 14 * 8 + 6 * 4, 52, 6, 2),
        (shape::u(feet(14), feet(12), (feet(6), feet(4)), feet(5)), 168 - 24, 52 + 8, 6, 2),
    ];
    for (walls, area, around, inside, outside) in cases {
        let plan = Plan::close(&walls).unwrap();
        assert_eq!(plan.area(), Area::square_feet(area));
        assert_eq!(plan.perimeter(), feet(around));
        assert_eq!((plan.corners(Inside), plan.corners(Outside)), (inside, outside));
        assert_eq!(plan.bounds(), (Spot::default(), Spot::new(feet(14), feet(12))));
        let cut = plan.rectangles(Axis::Along);
        let sum = cut.iter().map(|part| Area::of(part.sizes().0, part.sizes().1));
        assert_eq!(sum.fold(Area::ZERO, Area::plus), plan.area());
    }
}

/// A passage 10 wide that winds in on itself: 50 × 10 along the top, 10 × 40 down, 40 × 10 back,
/// 10 × 20 up, 20 × 10 in.
const SPIRAL: [i64; 12] = [50, 50, 50, 30, 30, 10, -20, -10, -30, -30, 40, 10];

#[test]
fn a_spiral_is_a_room_like_any_other() {
    let plan = close(&SPIRAL).unwrap();
    assert_eq!(square_inches(&plan), 500 + 400 + 400 + 200 + 200);
    assert_eq!((plan.corners(Inside), plan.corners(Outside)), (8, 4));
    assert_eq!(
        plan.chords(Axis::Along, inches(25)),
        [(inches(0), inches(30)), (inches(40), inches(50)),]
    );
}

#[test]
fn walls_that_touch_or_cross_are_named() {
    // The inner passage is drawn out until it touches the next, then into it.
    for reach in [40, 45] {
        let mut walls = SPIRAL;
        (walls[4], walls[6]) = (reach, 10 - reach);
        assert_eq!(close(&walls), Err(Problem::Meets { wall: 9, other: 4 }), "{reach}");
    }
}

#[test]
fn one_blank_wall_in_each_direction_is_worked_out() {
    let plan = close(&[168, 84, -48, BLANK, BLANK, 144]).unwrap();
    let worked: Vec<_> = plan.sides().iter().filter(|side| side.worked_out).collect();
    assert_eq!(
        worked.iter().map(|side| side.length).collect::<Vec<_>>(),
        [inches(60), inches(120)]
    );
    assert_eq!(square_inches(&plan), 168 * 144 - 48 * 60);
    assert_eq!(
        close(&[168, BLANK, -48, BLANK, 120, 144]),
        Err(Problem::TwoBlank { wall: 3, other: 1 })
    );
    // The worked-out wall first, and last.
    assert_eq!(square_inches(&close(&[BLANK, 60, 100, 60]).unwrap()), 6000);
    assert_eq!(square_inches(&close(&[100, 60, 100, BLANK]).unwrap()), 6000);
}

#[test]
fn what_makes_no_room_says_why() {
    let way = |out, back| Way { out: inches(out), back: inches(back) };
    #[rustfmt::skip]
    let cases: [(&[i64], Problem); 11] = [
        (&[], Problem::TooFew),
        (&[10, 10, 10], Problem::TooFew),
        (&[10, 0, 10, 10], Problem::NoLength { wall: 1 }),
        (&[-10, -10, -10, -10], Problem::WrongWay),
        (&[10, 10, 10, 10, 10], Problem::Corners { inside: 5, outside: 0 }),
        (&[10, -10, 10, 10], Problem::Corners { inside: 3, outside: 1 }),
        (&[168, 144, 165, 144], Problem::Open { along: way(168, 165), across: way(0, 0) }),
        (&[168, 144, 165, 150], Problem::Open { along: way(168, 165), across: way(144, 150) }),
        (&[168, 144, BLANK, 150], Problem::Open { along: way(0, 0), across: way(144, 150) }),
        (&[168, 84, -200, 60, BLANK, 144], Problem::WorkedOut { wall: 4, length: inches(-32) }),
        (&[168, 84, -168, 60, BLANK, 144], Problem::WorkedOut { wall: 4, length: inches(0) }),
    ];
    for (walls, want) in cases {
        assert_eq!(close(walls), Err(want), "{walls:?}");
    }
    let open = way(168, 165);
    assert_eq!((open.short(), way(165, 168).short()), (inches(3), inches(-3)));
}

#[test]
fn a_place_is_in_the_room_or_on_its_wall_or_not() {
    let plan = Plan::close(&shape::ell(inches(100), inches(80), (inches(40), inches(30)))).unwrap();
    for (x, y, want) in [
        (0, 0, true),
        (50, 40, true),
        (60, 50, true),
        (80, 50, true),
        (80, 51, false),
        (100, 50, true),
        (100, 51, false),
        (60, 80, true),
        (61, 80, false),
        (-1, 0, false),
        (50, 81, false),
    ] {
        assert_eq!(plan.contains(Spot::new(inches(x), inches(y))), want, "{x} {y}");
    }
    assert_eq!(plan.chords(Axis::Along, inches(60)), [(inches(0), inches(60))]);
    assert_eq!(plan.chords(Axis::Across, inches(70)), [(inches(0), inches(50))]);
    assert_eq!(plan.chords(Axis::Across, inches(100)), []);
}

proptest! {
    #[test]
    fn any_walls_make_a_room_or_say_why(
        walls in prop::collection::vec((prop::option::weighted(0.9, -2_i64..12), any::<bool>()), 0..14),
    ) {
        let walls: Vec<_> = walls.iter().map(|&(length, inside)| Wall {
            length: length.map(inches),
            end: if inside { Inside } else { Outside },
        }).collect();
        if let Ok(plan) = Plan::close(&walls) {
            prop_assert!(plan.area() > Area::ZERO);
            prop_assert_eq!(plan.corners(Inside), plan.corners(Outside) + 4);
        }
    }

    #[test]
    fn the_longest_walls_there_are_do_not_overflow(lengths in prop::array::uniform4(any::<i64>())) {
        let walls = lengths.map(|length| Wall {
            length: Some(Length::from_nanometres(length)), end: Inside,
        });
        let _ = Plan::close(&walls).map(|plan| plan.area());
    }
}
