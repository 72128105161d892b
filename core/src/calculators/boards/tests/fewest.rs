//! The fewest boards and joints, and what is proven of them.

use super::*;

/// Derived from the rules by hand, and the same by two integer-program solvers: see
/// `tests/references/make_board_counts.py`.
#[test]
fn worked_rooms_come_out() {
    /// Room and spacing in inches, stock in feet, what is wanted, boards and joints.
    type Case = ([i64; 3], i64, Want, (i64, usize));
    #[rustfmt::skip]
    let cases: &[Case] = &[
        ([192, 144, 16], 8, Want::Boards, (6, 4)),
        ([192, 144, 16], 12, Want::Boards, (4, 3)),
        ([192, 144, 16], 16, Want::Boards, (3, 0)),
        ([240, 168, 16], 12, Want::Boards, (6, 5)),
        ([240, 168, 16], 12, Want::Joints, (7, 4)),
        ([240, 168, 16], 12, Want::Near, (7, 4)),
        ([216, 144, 24], 8, Want::Boards, (7, 6)),
        ([208, 192, 16], 12, Want::Boards, (6, 4)),
        ([264, 144, 16], 14, Want::Boards, (5, 4)),
        ([264, 144, 16], 14, Want::Joints, (6, 3)),
        ([180, 156, 24], 12, Want::Boards, (5, 4)),
        ([180, 156, 24], 16, Want::Boards, (4, 0)),
    ];
    for ([long, wide, spacing], feet, want, expected) in cases {
        let input = ceiling(*long, *wide, *spacing, &[*feet]);
        let answer = worked(&input);
        let plan = answer.plan(*want);
        assert_eq!((plan.count(), plan.joints), *expected, "{long} {wide} {feet} {want:?}");
        assert!(plan.bound as i64 == plan.count() && plan.fewest_joints);
    }
}

/// The tape of the same rooms: seams, ends and corners. Derived: 32 ft of seams and 56 of corners,
/// 16, 12 and 0 of ends.
#[test]
fn joints_have_their_lengths() {
    for (feet, ends) in [(8, 16), (12, 12), (16, 0)] {
        let answer = worked(&ceiling(192, 144, 16, &[feet]));
        assert_eq!(answer.seams(), inches(32 * 12));
        assert_eq!(answer.ground.perimeter, inches(56 * 12));
        assert_eq!(answer.plan(Want::Boards).ends(&answer.ground), inches(ends * 12));
        assert_eq!(answer.ground.area(), Area::of(inches(192), inches(144)));
    }
    // A board of 12 ft over framing 16 in apart has 10 members, 5 screws on each; 4 ft has 4.
    let answer = worked(&ceiling(192, 144, 16, &[12]));
    assert_eq!(answer.plan(Want::Boards).screws(&answer.ground, inches(12), false), 3 * (50 + 20));
}

#[test]
fn plans_are_the_best_of_their_kind() {
    let answer = worked(&Input::sample());
    let [near, boards, joints, light, bought] =
        [0, 1, 2, 3, 4].map(|at| answer.plans.get(at).unwrap());
    for plan in &answer.plans {
        assert!(boards.count() <= plan.count() && joints.joints <= plan.joints);
        assert!(light.stock <= plan.stock && bought.bought() <= plan.bought());
    }
    assert!(near.count() <= boards.count() + 1);
    assert_eq!(light.stock, inches(96));
}

/// By hand: 15 x 13 ft over 24 in are 52 ft 6 in of board, which 12 and 16 ft make no nearer than
/// 56: two rows of 16 ft, 144 + 36 in from two of 12, and from the rest of the second the strip in
/// lanes of 72 and 108. Of one length alone the least is 256 sq ft.
#[test]
fn the_least_board_bought_may_be_of_several_lengths() {
    let answer = worked(&ceiling(180, 156, 24, &[12, 16]));
    let plan = answer.plan(Want::Bought);
    let size = |long| Size { long: inches(long), wide: inches(48) };
    assert_eq!(plan.bought(), Area::square_feet(224));
    assert_eq!([plan.of(size(192)), plan.of(size(144))], [2, 2]);
    assert_eq!((plan.count(), plan.joints), (4, 2));
    assert_eq!(answer.least_bought, Area::square_feet(224));
    // What area settles is proven: 8 by 16 ft are four boards of 8.
    let answer = worked(&ceiling(96, 192, 24, &[8, 12]));
    assert_eq!(answer.plan(Want::Bought).bought(), answer.least_bought);
    assert!(answer.by_length[0].1);
}

/// Common practice: of layouts as good, none in the middle. By hand: 20 ft of 12 ft boards over 16
/// in: two rows of 144 + 96 and 96 + 144 have both joints at two fifths, outside no third, where
/// 128 + 112 has one nearer to the middle.
#[test]
fn joints_keep_out_of_the_middle_and_off_corners() {
    let answer = worked(&ceiling(240, 96, 16, &[12]));
    let plan = answer.plan(Want::Joints);
    let mut joints: Vec<Length> = Vec::new();
    for piece in plan.pieces.iter().filter(|piece| piece.along[1] < inches(240)) {
        joints.push(piece.along[1]);
    }
    joints.sort_unstable();
    assert_eq!(joints, [inches(96), inches(144)]);
    // A door's corners at 40 and 74 in, over framing 16 in apart: not at 48, 64 or 80.
    let wall = Input {
        of: Surface::Wall,
        wall: Some(inches(168)),
        openings: vec![Opening {
            from: Some(inches(40)),
            wide: inches(34),
            sill: Length::ZERO,
            high: inches(82),
        }],
        stock: only(&[12]),
        ..Input::sample()
    };
    let answer = worked(&wall);
    for piece in answer.plan(Want::Boards).pieces.iter().filter(|it| it.run.row == 0) {
        let at = piece.along[1];
        let off = |edge: i64| at.minus(inches(edge)).max(inches(edge).minus(at));
        assert!(at == inches(168) || off(40).min(off(74)) >= inches(12), "{at:?}");
    }
}

/// Stopped, a plan keeps the rules and says that it isn't proven; its bound is no more than what the
/// whole search ends with. Gone on with, it ends with what solve says.
#[test]
fn a_search_that_is_stopped_says_so_and_can_go_on() {
    use crate::calculators::Going;
    use crate::words::Voice;
    let input = ceiling(295, 209, 16, &[8, 10, 12]);
    let mut looking = Looking::new(&input).unwrap();
    for _ in 0..3 {
        assert!(!looking.step());
    }
    assert_eq!(looking.progress(), Progress::Going);
    looking.stop(true);
    let stopped = looking.answer().unwrap();
    assert_eq!((looking.progress(), stopped.progress), (Progress::Stopped, Progress::Stopped));
    let whole = solve(&input).unwrap();
    for part in &stopped.plans {
        check(&input, &stopped, part);
        assert!(part.bound as i64 <= part.count());
    }
    let said = |answer: &Answer| {
        Voice::default().say(&Boards::sheet(&input, answer, Basis::default()).next.unwrap())
    };
    assert!(said(&stopped).starts_with("Stopped: "), "{}", said(&stopped));
    assert!(said(&stopped).contains("not proven") && said(&whole).starts_with("Proven"));
    while !looking.step() {}
    // Stopped at its end it is whole all the same.
    looking.stop(true);
    assert_eq!(looking.answer().unwrap(), whole);
}

/// Common practice, and the source of layouts: away from the middle. By hand: 20 by 14 ft over 24 in of
/// boards up to 14 ft are three rows and one of 2 ft, each with a joint at least. 14 and 6 ft, then 6
/// and 14, stand outside of the middle third, 6 ft 8 in to 13 ft 4: four boards of 14 ft and the four
/// pieces of 6 ft from two of 12. What buys 2 ft less puts joints in the middle, and says how many.
#[test]
fn joints_stay_out_of_the_middle_where_boards_and_joints_are_as_few() {
    let input = ceiling(240, 168, 24, &[8, 10, 12, 14]);
    let answer = worked(&input);
    let [plan, bought] = [input.want, Want::Bought].map(|want| answer.plan(want));
    let counts = |it: &Plan| (it.count(), it.joints, it.in_middle(&answer.ground));
    assert_eq!(counts(plan), (6, 4, 0));
    for piece in plan.jointed() {
        assert!([inches(72), inches(168)].contains(&piece.along[1]));
    }
    assert_eq!(plan.bought(), Area::square_feet(4 * (4 * 14 + 2 * 12)));
    assert!(bought.bought() < plan.bought() && counts(bought).2 > 0);
    let sheet = |want| Boards::sheet(&Input { want, ..input.clone() }, &answer, Basis::default());
    let said = |sheet: &Sheet| crate::words::Voice::default().say(&sheet.figures[0].name);
    assert_eq!(said(&sheet(input.want)), "End joints");
    let middle = counts(bought).2;
    let told = sheet(Want::Bought);
    assert_eq!(said(&told), format!("End joints, {middle} of them in the middle third"));
    let ways = part_says(&told, "ways");
    assert!(ways[0][1].contains("; 4 end joints; "), "{ways:?}");
    assert!(
        ways[4][1].contains(&format!(" end joints, {middle} in the middle third; ")),
        "{ways:?}"
    );
}

/// What is stopped says what is proven by then, and the table of lengths the same: where no layout has
/// fewer boards that isn't left open, and where only more joints could do it says that.
#[test]
fn what_is_proven_when_stopped_is_said() {
    use crate::calculators::Going;
    let input = ceiling(295, 209, 16, &[8, 10, 12, 14]);
    let mut looking = Looking::new(&input).unwrap();
    let mut seen = [false; 2];
    while !looking.step() {
        looking.stop(true);
        let answer = looking.answer().unwrap();
        let sheet = Boards::sheet(&input, &answer, Basis::default());
        let said = crate::words::Voice::default().say(sheet.next.as_ref().unwrap());
        let plan = answer.plan(input.want);
        let met = plan.bound as i64 == plan.count();
        assert_eq!(said.starts_with("Stopped: other ways") || said.contains("is the fewest"), met);
        assert!(
            said.starts_with("Stopped: ") && said.contains(" or fewer, not proven") != met,
            "{said}"
        );
        let lengths = part_says(&sheet, "lengths");
        for ((plan, fewest), row) in answer.by_length.iter().zip(&lengths) {
            assert_eq!(row[1].contains("proven fewest"), *fewest, "{row:?}");
            let open = !fewest && plan.bound == plan.boards.len();
            assert_eq!(row[1].contains("perhaps fewer with more joints"), open, "{row:?}");
        }
        seen[usize::from(met)] = true;
    }
    assert_eq!(seen, [true; 2]);
    // No layout has fewer boards, and its joints are open: said of each.
    let mut answer = solve(&Input::sample()).unwrap();
    answer.progress = Progress::Stopped;
    for plan in answer.plans.iter_mut().chain(answer.by_length.iter_mut().map(|it| &mut it.0)) {
        plan.fewest_joints = false;
    }
    let sheet = Boards::sheet(&Input::sample(), &answer, Basis::default());
    let said = crate::words::Voice::default().say(sheet.next.as_ref().unwrap());
    let starts = "Stopped: 4 is the fewest with 12 ft boards; its 3 end joints are not proven.";
    assert!(said.starts_with(starts), "{said}");
    let lengths = part_says(&sheet, "lengths");
    assert_eq!(lengths[2], ["Boards of 12 ft", "4, proven fewest; 3 end joints, perhaps fewer"]);
}

/// A spare one is bought and not laid; the mix is told, the longest first.
#[test]
fn spare_boards_are_bought() {
    let input = Input { spare: 2, ..ceiling(192, 144, 16, &[12]) };
    let sheet = Boards::sheet(&input, &worked(&input), Basis::default());
    assert_eq!(sheet.materials[0].amount, 6.into());
    assert_eq!(sheet.headline.amount, 4.into());
    let said = crate::words::Voice::default().say(&sheet.headline.name);
    assert_eq!(said, "Boards, 4 of 12 ft");
}

#[test]
fn a_way_in_bounds_the_boards() {
    let input = Input { longest: Some(inches(130)), ..Input::sample() };
    assert!(worked(&input).plans.iter().all(|plan| plan.stock <= inches(120)));
    let none = Input { longest: Some(inches(90)), ..Input::sample() };
    assert_eq!(solve(&none).unwrap_err()[0].path, "longest");
    let none = Input { stock: only(&[]), ..Input::sample() };
    assert_eq!(solve(&none).unwrap_err()[0].path, "stock");
    let wide = Input {
        members: vec![Member { at: Some(inches(20)) }],
        stock: only(&[8]),
        ..Input::sample()
    };
    assert_eq!(solve(&wide).unwrap_err()[0].path, "spacing");
}
