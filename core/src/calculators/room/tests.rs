//! Rooms worked by hand, what is refused and in which words, then laws.

use super::*;
use crate::fields::{Form, Reader};
use crate::measure::Units;
use crate::sheet::{Ink, LabelBox, Value, Verdict};
use crate::wire::Node;
use crate::words::{Amount, Voice};
use proptest::prelude::*;

fn feet(count: i64) -> Option<Length> {
    inches(count * 12)
}

fn inches(count: i64) -> Option<Length> {
    Some(Length::inches(count, 1))
}

fn rectangle(long: i64, wide: i64) -> Input {
    Input { long: inches(long), wide: inches(wide), ..Input::sample() }
}

fn walk(walls: &[(Option<Length>, End)]) -> Input {
    let wall = |&(length, end): &(Option<Length>, End)| Walked { end, length, outside: false };
    Input { shape: Shape::Walk, walls: walls.iter().map(wall).collect(), ..Input::sample() }
}

fn sheet(input: &Input) -> Sheet {
    Room::sheet(input, &solve(input).unwrap(), Basis::default())
}

/// What a figure is shown as.
fn shown(sheet: &Sheet, key: &str) -> String {
    let figure = [&sheet.headline].into_iter().chain(&sheet.figures).find(|it| it.key == key);
    let figure = figure.unwrap_or_else(|| panic!("no figure {key}"));
    figure.amount.show(Units::Customary, figure.rounding).text()
}

fn refused(input: &Input) -> Vec<(String, String)> {
    let faults = solve(input).unwrap_err();
    let said = |fault: &crate::sheet::Fault| Voice::default().say(&fault.says);
    faults.iter().map(|fault| (fault.path.clone(), said(fault))).collect()
}

/// What else takes a room takes its two sides only where two sides are the room.
#[test]
fn an_l_gives_no_two_sides_that_would_make_a_rectangle_of_it() {
    let has = |input: &Input| {
        let sheet = sheet(input);
        ["longest", "widest"].map(|key| sheet.figures.iter().any(|figure| figure.key == key))
    };
    assert_eq!(has(&rectangle(168, 144)), [true; 2]);
    let notch = inches(48);
    let ell =
        Input { shape: Shape::Ell, notch_long: notch, notch_wide: notch, ..rectangle(168, 144) };
    assert_eq!(has(&ell), [false; 2]);
    // It goes by its own names, with its notch; a rectangle has none of these.
    let of = |input: &Input| {
        let keys = ["outline-long", "outline-wide", "notch-long", "notch-wide"];
        let sheet = sheet(input);
        keys.map(|key| sheet.figures.iter().find(|it| it.key == key).map(|it| it.amount))
    };
    let length = |count| Some(Amount::Length(Length::inches(count, 1)));
    assert_eq!(of(&ell), [length(168), length(144), length(48), length(48)]);
    assert_eq!(of(&rectangle(168, 144)), [None; 4]);
    // A T's leg in the middle, by hand: (14 − 6) ÷ 2 = 4 ft in.
    let tee =
        Input { shape: Shape::Tee, leg_wide: inches(72), leg_long: notch, ..rectangle(168, 144) };
    assert_eq!(shown(&sheet(&tee), "leg-off"), "4 ft");
}

/// 14 × 12 = 168; 2 × (14 + 12) = 52; 52 × 8 = 416; 168 × 8 = 1344, by hand.
#[test]
fn the_sample_is_worked_as_by_hand() {
    let sheet = sheet(&Input::sample());
    for (key, want) in [
        ("floor-area", "168 sq ft"),
        ("ceiling-area", "168 sq ft"),
        ("perimeter", "52 ft"),
        ("wall-1", "14 ft"),
        ("wall-4", "12 ft"),
        ("wall-area", "416 sq ft"),
        ("wall-area-net", "416 sq ft"),
        ("volume", "1344 cu ft"),
        ("inside-corners", "4"),
        ("outside-corners", "0"),
        ("ceiling-height", "8 ft"),
    ] {
        assert_eq!(shown(&sheet, key), want, "{key}");
    }
    assert_eq!((sheet.verdict(), sheet.next), (Verdict::Within, None));
}

/// By hand: openings 32 × 80 and two of 36 × 48 in are 2560 + 3456 = 6016 in², 41.8 sq ft;
/// 416 − 41.78 = 374.2. Raised 14 in: 52 × 9 ft 2 in = 476.67; 168 × 9.1667 = 1540.
#[test]
fn openings_and_a_raised_ceiling_change_what_they_should() {
    let opening = |kind, width, height, count, wall| Opening {
        kind,
        count,
        width: inches(width),
        height: inches(height),
        wall,
    };
    let input = Input {
        height_to_be: inches(110),
        openings: vec![
            opening(OpeningKind::Door, 32, 80, 1, At::W2),
            opening(OpeningKind::Window, 36, 48, 2, At::W1),
        ],
        outside: vec![OutsideWall { wall: At::W1 }, OutsideWall { wall: At::W2 }],
        out_of_level: Some(Length::inches(3, 4)),
        ..Input::sample()
    };
    let sheet = sheet(&input);
    for (key, want) in [
        ("openings", "≈ 41.8 sq ft"),
        ("wall-area-net", "≈ 374.2 sq ft"),
        ("wall-area-to-be", "≈ 476.7 sq ft"),
        ("wall-area-net-to-be", "≈ 434.9 sq ft"),
        ("volume-to-be", "1540 cu ft"),
        ("volume-change", "196 cu ft"),
        ("ceiling-change", "14 in"),
        ("outside-walls", "26 ft"),
        ("height-least", "9 ft 2 in"),
        ("height-most", "9 ft 2-3/4 in"),
    ] {
        assert_eq!(shown(&sheet, key), want, "{key}");
    }
    let drawing = sheet.drawing.unwrap();
    let twin: Vec<_> = drawing.twin.iter().map(|text| Voice::default().say(text)).collect();
    assert!(twin.contains(&"Wall 1 is an outside wall, drawn heavier.".to_owned()), "{twin:?}");
    let gaps = drawing.ink.iter().filter(|ink| {
        matches!(ink, Ink::Path { means: Some(means), .. }
            if [&w::DOOR, &w::WINDOW].contains(&means.phrase))
    });
    assert_eq!(gaps.count(), 3);
}

/// By hand: 14 × 12 less 4 × 5; a bar 14 × 8 and a leg 6 × 4; 14 × 12 less 6 × 4.
#[test]
fn named_shapes_and_the_same_walls_walked_are_one_room() {
    let ell =
        Input { shape: Shape::Ell, notch_long: feet(4), notch_wide: feet(5), ..Input::sample() };
    let tee = Input { shape: Shape::Tee, leg_wide: feet(6), leg_long: feet(4), ..Input::sample() };
    let u = Input { shape: Shape::U, gap_long: feet(6), gap_deep: feet(4), ..Input::sample() };
    for (input, want, corners) in
        [(ell, "148 sq ft", "1"), (tee, "136 sq ft", "2"), (u, "144 sq ft", "2")]
    {
        let named = sheet(&input);
        assert_eq!(shown(&named, "floor-area"), want);
        assert_eq!(shown(&named, "outside-corners"), corners);
        let sides = solve(&input).unwrap().plan;
        let end = |side: &crate::plan::Side| {
            if side.end == crate::plan::Corner::Inside { End::Inside } else { End::Outside }
        };
        let mut walls: Vec<_> =
            sides.sides().iter().map(|side| (Some(side.length), end(side))).collect();
        // One wall in each direction may be left out.
        (walls[2].0, walls[3].0) = (None, None);
        let walked = sheet(&walk(&walls));
        for key in ["floor-area", "perimeter", "wall-3", "wall-4", "volume"] {
            assert_eq!(shown(&walked, key), shown(&named, key), "{key}");
        }
    }
}

/// By hand: 12 by 16 ft has diagonals of 20 ft. Wall 3 shifted 1 in: squares differ by 4 × 192 × 1.
#[test]
fn diagonals_tell_how_far_it_is_out_of_square() {
    let square = |first, second| Input {
        diagonal_1: Some(first),
        diagonal_2: Some(second),
        ..rectangle(192, 144)
    };
    let even = sheet(&square(Length::inches(240, 1), Length::inches(240, 1)));
    assert_eq!(shown(&even, "diagonals-differ"), "0 in");
    assert_eq!(shown(&even, "far-wall-shift"), "0 in");
    assert!(even.next.is_none());
    // 240-13/16 and 239-3/16: (57991 − 57211) ÷ 768 is a little over an inch.
    let shifted = sheet(&square(Length::inches(3853, 16), Length::inches(3827, 16)));
    assert_eq!(shown(&shifted, "diagonals-differ"), "1-5/8 in");
    assert_eq!(shown(&shifted, "far-wall-shift"), "≈ 1 in");
    assert!(shifted.next.is_none(), "{:?}", shifted.next);
    let wrong = sheet(&square(Length::inches(228, 1), Length::inches(240, 1)));
    let says = Voice::default().say(&wrong.next.unwrap());
    assert!(says.starts_with("These diagonals don't go with these walls."), "{says}");
}

#[test]
fn walls_that_make_no_room_say_why_in_feet_and_inches() {
    let inside = |lengths: [i64; 4]| walk(&lengths.map(|length| (inches(length), End::Inside)));
    let at = |path: &str, says: &str| vec![(path.to_owned(), says.to_owned())];
    assert_eq!(
        refused(&inside([168, 144, 165, 144])),
        at(
            "walls",
            "The walls end 3 in short of the start along wall 1: 14 ft out, 13 ft 9 in back."
        )
    );
    assert_eq!(
        refused(&inside([168, 144, 168, 172])),
        at(
            "walls",
            "The walls end 2 ft 4 in past the start across wall 1: 12 ft out, 14 ft 4 in back."
        )
    );
    let both = refused(&inside([168, 144, 165, 145]));
    assert!(both[0].1.contains("short of") && both[0].1.contains("1 in past"), "{both:?}");
    assert_eq!(
        refused(&walk(&[])),
        at("walls", "A room has four walls or more. Add them in the order that you pass them.")
    );
    let ends = [End::Inside, End::Inside, End::Outside, End::Inside, End::Inside, End::Inside];
    let lengths = [inches(168), inches(84), inches(200), inches(60), None, inches(144)];
    let walls: Vec<_> = lengths.into_iter().zip(ends).collect();
    let worked_out = refused(&walk(&walls));
    assert_eq!(worked_out[0].0, "walls.4.length");
    assert!(worked_out[0].1.starts_with("Wall 5 comes to −2 ft 8 in."), "{worked_out:?}");
    let outside: Vec<_> = [feet(9); 4].map(|length| (length, End::Outside)).to_vec();
    assert!(refused(&walk(&outside))[0].1.starts_with("This goes round the outside"));
}

#[test]
fn a_part_that_is_more_than_its_whole_is_named() {
    let ell =
        Input { shape: Shape::Ell, notch_long: feet(14), notch_wide: feet(13), ..Input::sample() };
    let paths: Vec<_> = refused(&ell).into_iter().map(|(path, _)| path).collect();
    assert_eq!(paths, ["notch_long", "notch_wide"]);
    let tee = Input {
        shape: Shape::Tee,
        leg_wide: feet(6),
        leg_long: feet(4),
        leg_off: feet(8),
        ..Input::sample()
    };
    assert_eq!(refused(&tee)[0].0, "leg_off");
}

/// Source: IRC 2018 and 2021 R305.1, 7 ft and 6 ft 8 in: on either limit and a sixteenth under.
#[test]
fn ceilings_are_checked_on_the_limit_and_under_it() {
    let verdicts = |now: i64, to_be: Option<i64>| {
        let sixteenths = |count| Some(Length::inches(count, 16));
        let input = Input {
            height: sixteenths(now),
            height_to_be: to_be.and_then(sixteenths),
            ..Input::sample()
        };
        sheet(&input).checks.iter().map(|check| check.verdict).collect::<Vec<_>>()
    };
    use Verdict::{Ask, Over, Within};
    assert_eq!(verdicts(84 * 16, None), [Within]);
    assert_eq!(verdicts(84 * 16 - 1, None), [Ask]);
    assert_eq!(verdicts(70 * 16, Some(84 * 16)), [Ask, Within]);
    assert_eq!(verdicts(96 * 16, Some(84 * 16 - 1)), [Within, Ask]);
    assert_eq!(verdicts(96 * 16, Some(80 * 16)), [Within, Ask]);
    assert_eq!(verdicts(96 * 16, Some(80 * 16 - 1)), [Within, Over]);
}

#[test]
fn what_does_not_fit_together_is_doubted_and_answered() {
    let door = Opening { width: inches(200), height: inches(99), wall: At::W2, ..Opening::blank() };
    let input = Input {
        openings: vec![Opening { wall: At::W7, ..door.clone() }, door],
        outside: vec![OutsideWall { wall: At::W9 }],
        ..Input::sample()
    };
    let doubts = solve(&input).unwrap().doubts;
    let said: Vec<_> = doubts.iter().map(|text| Voice::default().say(text)).collect();
    assert_eq!(said.len(), 5, "{said:?}");
    assert!(said[0].contains("wall 7") && said[1].contains("wall 9"), "{said:?}");
    assert!(said[2].starts_with("Wall 2 is 12 ft long"), "{said:?}");
    assert_eq!(shown(&sheet(&input), "floor-area"), "168 sq ft");
}

/// The plain rooms that a crew meets, down to a phone's width: every wall has its length and
/// number in the drawing, in both units.
#[test]
fn every_wall_of_a_plain_room_is_labelled() {
    let ell =
        Input { shape: Shape::Ell, notch_long: feet(6), notch_wide: feet(5), ..Input::sample() };
    let tee = Input {
        shape: Shape::Tee,
        long: feet(20),
        wide: feet(18),
        leg_wide: feet(8),
        leg_long: feet(8),
        ..Input::sample()
    };
    for (input, walls) in [(Input::sample(), 4), (rectangle(96, 60), 4), (ell, 6), (tee, 8)] {
        let drawing = sheet(&input).drawing.unwrap();
        let count = |is: fn(&Ink) -> bool| drawing.ink.iter().filter(|ink| is(ink)).count();
        assert_eq!(count(|ink| matches!(ink, Ink::Dimension { .. })), walls);
        assert_eq!(count(|ink| matches!(ink, Ink::Label { .. })), walls);
        for units in [Units::Customary, Units::Metric] {
            let boxes = drawing.label_boxes(288.0, Voice { units, ..Voice::default() });
            let apart = |a: &LabelBox, b: &LabelBox| {
                let ([l, t, r, b1], [l2, t2, r2, b2]) = (a.edges, b.edges);
                r <= l2 || r2 <= l || b1 <= t2 || b2 <= t
            };
            for (at, one) in boxes.iter().enumerate() {
                assert!(boxes[at + 1..].iter().all(|other| apart(one, other)), "{one:?}");
            }
        }
    }
}

#[test]
fn what_is_needed_starts_empty_and_is_asked_for() {
    let mut input = Input::sample().write_parts();
    input.put("shape", Node::text("l"));
    let faults = Reader::form::<Input>(&input, Units::Customary).unwrap_err();
    let paths: Vec<_> = faults.iter().map(|fault| fault.path.as_str()).collect();
    assert_eq!(paths, ["notch_long", "notch_wide"]);
    let says = Voice::default().say(&faults[0].says);
    assert!(says.starts_with("Needed: Notch, along wall 1."), "{says}");
}

proptest! {
    #[test]
    fn every_step_comes_to_the_figure_of_its_name(
        sixteenths in prop::array::uniform5(16_i64..3_840), off in prop::option::of(16_i64..400),
        height in 576_i64..2_400, to_be in prop::option::of(576_i64..2_400), shape in 0_usize..4,
        doors in prop::collection::vec((16_i64..600, 16_i64..1_300, 1_i64..4), 0..4),
    ) {
        let [long, wide, part_long, part_wide, diagonal] =
            sixteenths.map(|count| Some(Length::inches(count, 16)));
        let length = |count| Some(Length::inches(count, 16));
        let input = Input {
            shape: Shape::ALL[shape], long, wide,
            notch_long: part_long, notch_wide: part_wide,
            leg_wide: part_long, leg_long: part_wide, leg_off: off.and_then(length),
            gap_long: part_long, gap_deep: part_wide, gap_off: off.and_then(length),
            height: length(height), height_to_be: to_be.and_then(length),
            diagonal_1: diagonal, diagonal_2: part_long,
            openings: doors.iter().map(|&(width, height, count)| Opening {
                count, width: length(width), height: length(height), ..Opening::blank()
            }).collect(),
            ..Input::sample()
        };
        let Ok(answer) = solve(&input) else { return Ok(()) };
        let sheet = Room::sheet(&input, &answer, Basis::default());
        let figures = || [&sheet.headline].into_iter().chain(&sheet.figures);
        for step in &sheet.working {
            let figure = figures().find(|figure| figure.key == step.key).expect("its figure");
            let comes_to = step.expr.value().and_then(Value::amount);
            prop_assert_eq!(comes_to, Some(figure.amount), "{}", step.key);
        }
        let keys: Vec<_> = figures().map(|figure| figure.key).collect();
        for (at, key) in keys.iter().enumerate() {
            prop_assert!(!keys[at + 1..].contains(key), "{} twice", key);
        }
        prop_assert!(matches!(sheet.headline.amount, Amount::Area(_)));
        prop_assert!(answer.now.net <= answer.now.walls);
    }
}

/// Joists are handed on by the way they run, each under a key of its own, and not at all while nobody
/// said which way that is.
#[test]
fn joists_are_handed_on_by_the_way_they_run() {
    for (runs, key, other) in [
        (Runs::Along, "joists-along", "joists-square"),
        (Runs::Across, "joists-square", "joists-along"),
    ] {
        let framing = Framing { runs, spacing: Spacing::S24, ..Framing::blank() };
        let sheet = sheet(&Input { framing, ..rectangle(192, 144) });
        let apart = Some(Amount::Length(Length::inches(24, 1)));
        let amount = |key| sheet.figure(key).map(|it| it.amount);
        assert_eq!([amount(key), amount("joist-spacing"), amount(other)], [apart, apart, None]);
    }
    let sheet = sheet(&rectangle(192, 144));
    assert!(
        ["joists-along", "joists-square", "joist-spacing"]
            .iter()
            .all(|key| sheet.figure(key).is_none())
    );
}
