//! Marks by hand, limits on and to either side, then laws.

use super::*;
use crate::fields::Form;
use crate::sheet::{FOREMOST, Verdict};
use proptest::prelude::*;

fn sixteenths(count: i64) -> Length {
    Length::inches(count, 16)
}

fn floor(down: i64) -> Floor {
    Floor { down: Some(sixteenths(down)), ..Floor::blank() }
}

fn wanted(height: i64, floor: i64) -> Wanted {
    Wanted { height: Some(sixteenths(height)), floor, ..Wanted::blank() }
}

fn two_floors(from: Datum) -> Input {
    Input {
        floors: vec![floor(48 * 16), floor(48 * 16 + 12)],
        boxes: vec![wanted(16 * 16, 1), wanted(16 * 16, 2), wanted(52 * 16, 1)],
        from,
        seam: None,
        ..Input::sample()
    }
}

fn verdict(input: &Input, key: &str) -> Option<Verdict> {
    let answer = solve(input).unwrap();
    let sheet = SetOut::sheet(input, &answer, Basis::default());
    sheet.checks.iter().find(|check| check.key == key).map(|check| check.verdict)
}

/// By hand, after the habit of marking down from one line: a line 48 in over the high floor and
/// 48-3/4 over the low one. Off the highest floor both boxes are 32 in down; off their own the
/// second is 32-3/4.
#[test]
fn one_line_or_each_its_own_floor() {
    let downs = |from| {
        let answer = solve(&two_floors(from)).unwrap();
        answer.marks.iter().map(|mark| mark.down).collect::<Vec<_>>()
    };
    assert_eq!(downs(Datum::Highest), [32 * 16, 32 * 16, -64].map(sixteenths));
    assert_eq!(downs(Datum::Own), [32 * 16, 32 * 16 + 12, -64].map(sixteenths));
    let answer = solve(&two_floors(Datum::Highest)).unwrap();
    assert_eq!(answer.marks[1].height(), sixteenths(16 * 16 + 12));
    assert_eq!((answer.out, answer.highest, answer.lowest), (sixteenths(12), 0, 1));
}

/// By hand: 1/4 board, 1/4 bed and 5/16 tile are 13/16, so that the lower slab ends up the higher.
#[test]
fn what_is_to_come_is_under_the_finished_floor() {
    let mut input = two_floors(Datum::Highest);
    let eighth = sixteenths(4);
    input.floors[1] = Floor { backer: eighth, bed: eighth, cover: sixteenths(5), ..floor(780) };
    let answer = solve(&input).unwrap();
    assert_eq!(answer.floors, [768, 767].map(sixteenths));
    assert_eq!((answer.highest, answer.out), (1, sixteenths(1)));
    assert_eq!(answer.marks[0].down, sixteenths(767 - 256));
}

/// Common practice: say which floor a height counts from past 1/4 in.
#[test]
fn floors_a_quarter_apart_are_as_good_as_one() {
    for (low, want) in [(771, Verdict::Within), (772, Verdict::Within), (773, Verdict::Ask)] {
        let mut input = two_floors(Datum::Own);
        input.floors[1] = floor(low);
        assert_eq!(verdict(&input, "level"), Some(want), "{low}");
    }
}

/// Source: ADA Standards (2010) 308: 15 to 48 in; the parts are 3/4 in off the middle.
#[test]
fn reach_is_of_the_outer_parts() {
    use Verdict::{Over, Within};
    for (height, low, high) in [
        (15 * 16 + 11, Over, Within),
        (15 * 16 + 12, Within, Within),
        (47 * 16 + 4, Within, Within),
        (47 * 16 + 5, Within, Over),
    ] {
        let mut input = two_floors(Datum::Own);
        input.boxes = vec![wanted(height, 2)];
        assert_eq!(verdict(&input, "low"), None);
        input.hand = true;
        assert_eq!(verdict(&input, "low"), Some(low), "{height}");
        assert_eq!(verdict(&input, "high"), Some(high), "{height}");
    }
}

/// Common practice, by hand: a box 3-3/4 tall clears a seam at 48 in with its middle at 46-1/8 or
/// 49-7/8, and a splash to 40 in with its bottom at 41.
#[test]
fn boxes_keep_off_seam_splash_and_casing() {
    use Verdict::{Ask, Within};
    for (height, want) in [(738, Within), (739, Ask), (797, Ask), (798, Within)] {
        let mut input = two_floors(Datum::Highest);
        (input.seam, input.boxes) = (Some(sixteenths(768)), vec![wanted(height, 1)]);
        assert_eq!(verdict(&input, "seam"), Some(want), "{height}");
    }
    for (bottom, want) in [(655, Ask), (656, Within), (657, Within)] {
        let mut input = two_floors(Datum::Highest);
        input.counter = Some(sixteenths(576));
        input.boxes = vec![Wanted { kind: BoxKind::Counter, to: To::Bottom, ..wanted(bottom, 1) }];
        assert_eq!(verdict(&input, "splash"), Some(want), "{bottom}");
    }
    // 2-1/4 casing, 1 in, and half of 2-1/4: 4-3/8 from the stud's edge to the box's middle.
    for (along, want) in [(389, Ask), (390, Within), (250, Within), (251, Ask)] {
        let mut input = two_floors(Datum::Highest);
        input.door = Some(sixteenths(320));
        input.boxes = vec![Wanted { along: Some(sixteenths(along)), ..wanted(256, 1) }];
        assert_eq!(verdict(&input, "door"), Some(want), "{along}");
    }
}

/// Source: NEC 314.20, 1/4 in in gypsum: flush with 1/2 board, then 1/4 tile is on it, a skim of
/// 1/16 more is over, and in wood anything is.
#[test]
fn the_finish_to_come_uses_up_the_setback() {
    let mut input = two_floors(Datum::Highest);
    assert_eq!(verdict(&input, "back"), Some(Verdict::Within));
    input.tile = sixteenths(4);
    assert_eq!(verdict(&input, "back"), Some(Verdict::Within));
    input.skim = sixteenths(1);
    assert_eq!(verdict(&input, "back"), Some(Verdict::Over));
    input = two_floors(Datum::Highest);
    input.proud = sixteenths(9);
    assert_eq!(verdict(&input, "back"), Some(Verdict::Ask));
}

/// By hand: 1/8 in at 30 ft is 1/12 in at 20 ft.
#[test]
fn an_instrument_is_off_by_its_share() {
    let reach = Some(Length::inches(240, 1));
    let input = Input { reach, ..Input::sample() };
    let want = Length::inches(1, 12).plus(Length::from_nanometres(1));
    let off = solve(&input).unwrap().tolerance.unwrap();
    assert!(off <= want && off >= Length::inches(1, 12), "{off:?}");
}

#[test]
fn a_box_over_no_floor_is_told_at_its_field() {
    let mut input = two_floors(Datum::Own);
    input.boxes[1].floor = 3;
    let told = |input: &Input| {
        let faults = solve(input).unwrap_err();
        let say = |it: &Fault| crate::words::Voice::default().say(&it.says);
        faults.iter().map(|it| (it.path.clone(), say(it))).collect::<Vec<_>>()
    };
    let says = "There is no floor 3: 2 floors are given.".to_owned();
    assert_eq!(told(&input), [("boxes.1.floor".to_owned(), says)]);
    // Of two floors one goes: its box stands over none, and is never worked off the one that is left.
    input = two_floors(Datum::Own);
    input.floors.remove(0);
    let says = "There is no floor 2: 1 floor is given.".to_owned();
    assert_eq!(told(&input), [("boxes.1.floor".to_owned(), says)]);
    input.boxes[1].floor = 1;
    assert!(solve(&input).is_ok());
    for floor in [0, -1, i64::MAX] {
        input.boxes[0].floor = floor;
        assert_eq!(told(&input)[0].0, "boxes.0.floor");
    }
    assert_eq!(solve(&Input::blank()).unwrap_err().len(), 2);
}

/// Nothing that a person didn't put in sets a mark: the sample has one floor.
#[test]
fn the_samples_one_floor_is_every_boxs_floor() {
    assert_eq!(Input::sample().floors.len(), 1);
    assert_eq!(verdict(&Input::sample(), "level"), None);
    let answer = solve(&Input::sample()).unwrap();
    let marks = &SetOut::sheet(&Input::sample(), &answer, Basis::default()).parts[0];
    assert_eq!((marks.key, marks.rows.len()), (FOREMOST, 3), "each box has its mark");
}

proptest! {
    #[test]
    fn marks_and_heights_come_to_the_floor_again(
        downs in prop::collection::vec(0_i64..3_840, 1..6),
        height in 0_i64..3_840, more in 1_i64..100, own: bool,
    ) {
        let from = if own { Datum::Own } else { Datum::Highest };
        let count = downs.len() as i64;
        let at = |height| {
            let boxes = (1..=count).map(|floor| wanted(height, floor)).collect();
            let floors = downs.iter().map(|down| floor(*down)).collect();
            solve(&Input { floors, boxes, from, ..Input::sample() }).unwrap()
        };
        let (low, high) = (at(height), at(height + more));
        for (mark, higher) in low.marks.iter().zip(&high.marks) {
            prop_assert_eq!(mark.down.plus(mark.height()), mark.floor);
            // A taller box is marked as much farther up.
            prop_assert_eq!(mark.down.minus(higher.down), sixteenths(more));
            prop_assert!(mark.height() >= sixteenths(height));
            prop_assert!(mark.height() <= sixteenths(height).plus(low.out));
        }
        if !own {
            prop_assert!(low.marks.iter().all(|mark| mark.down == low.marks[0].down));
        }
    }
}
