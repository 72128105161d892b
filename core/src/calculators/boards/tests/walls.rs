//! Walls, their openings and their studs.

use super::*;

/// By hand, 16 ft wall, upright, studs 16 in apart: seams at 4, 8 and 12 ft. A window from 9 ft, 3 ft
/// wide, has its right side at 12 ft; an inch further on it stands on the same stud, 6 in further it
/// doesn't. A hole as high as the wall has no corner. Source: ASTM C840, from memory.
#[test]
fn a_seam_on_an_openings_side_is_asked_about() {
    let opening = |from, sill, high| Opening {
        from: Some(inches(from)),
        wide: inches(36),
        sill: inches(sill),
        high: inches(high),
    };
    let sides = |opening: Opening, run| {
        let input = Input {
            of: Surface::Wall,
            run,
            wall: Some(inches(192)),
            openings: vec![opening],
            ..Input::sample()
        };
        let sheet = Boards::sheet(&input, &worked(&input), Basis::default());
        sheet.checks.into_iter().find(|it| it.key == "sides")
    };
    let on = sides(opening(108, 32, 48), Way::Square).unwrap();
    assert_eq!((on.verdict, on.value), (Verdict::Ask, 1.into()));
    let said = crate::words::Voice::default().say(on.note.as_ref().unwrap());
    assert!(said.contains("12 ft"), "{said}");
    let verdict = |from, sill, high| sides(opening(from, sill, high), Way::Square).unwrap().verdict;
    assert_eq!(verdict(109, 32, 48), Verdict::Ask);
    assert_eq!(verdict(114, 32, 48), Verdict::Within);
    // A door from 12 ft has its left side there; what takes the whole height has no corner.
    assert_eq!(verdict(144, 0, 80), Verdict::Ask);
    assert_eq!(verdict(144, 0, 97), Verdict::Within);
    assert!(sides(opening(108, 32, 48), Way::Along).is_none());
}

/// Added openings start with no place: each is asked for its own, and none lies over another before
/// that.
#[test]
fn an_opening_begins_without_its_place() {
    use crate::fields::{Reader, is_missing};
    use crate::measure::Units;
    let openings = vec![Opening::blank(); 2];
    let wall = Input { of: Surface::Wall, wall: Some(inches(168)), openings, ..Input::sample() };
    let faults = Reader::form::<Input>(&wall.write_parts(), Units::Customary).unwrap_err();
    let paths: Vec<&str> = faults.iter().map(|it| &*it.path).collect();
    assert_eq!(paths, ["openings.0.from", "openings.1.from"]);
    assert!(faults.iter().all(is_missing));
}

/// By hand: a wall of 16 ft by 8 ft 1 with a door from 2 ft to 4 ft 10-1/2 and a window from 9 ft. No
/// number or length stands on a line of either, or in one, and each of the two whole pieces of the
/// upper row shows its own length beside its number.
#[test]
fn numbers_and_lengths_keep_clear_of_openings() {
    use crate::sheet::{Ink, PAGE_PX};
    use crate::words::Voice;
    let opening = |from, wide, sill, high| Opening {
        from: Some(inches(from)),
        wide,
        sill: inches(sill),
        high,
    };
    let input = Input {
        of: Surface::Wall,
        wall: Some(inches(192)),
        openings: vec![
            opening(24, Length::inches(69, 2), 0, Length::inches(165, 2)),
            opening(108, inches(36), 32, inches(48)),
        ],
        ..Input::sample()
    };
    let answer = worked(&input);
    let drawing = Boards::sheet(&input, &answer, Basis::default()).drawing.unwrap();
    let px =
        |at: Length| at.nanometres() as f64 * PAGE_PX as f64 / drawing.width.nanometres() as f64;
    let mut holes: Vec<[f64; 4]> = Vec::new();
    for ink in &drawing.ink {
        if let Ink::Path { points, means: Some(text), .. } = ink
            && text.phrase == &w::MEANS_HOLE
        {
            let [x, y] = [
                points.iter().map(|it| px(it.x)).collect(),
                points.iter().map(|it| px(it.y)).collect(),
            ]
            .map(|all: Vec<f64>| {
                all.into_iter().fold([f64::MAX, f64::MIN], |[a, b], at| [a.min(at), b.max(at)])
            });
            holes.push([x[0], y[0], x[1], y[1]]);
        }
    }
    assert_eq!(holes.len(), 2);
    let boxes = drawing.label_boxes(PAGE_PX as f64, Voice::default());
    for label in &boxes {
        let [left, top, right, bottom] = label.edges;
        let apart =
            |it: &[f64; 4]| right <= it[0] || it[2] <= left || bottom <= it[1] || it[3] <= top;
        assert!(holes.iter().all(apart), "{label:?} {holes:?}");
    }
    let plan = answer.plan(input.want);
    for board in 1..=plan.count() {
        assert!(boxes.iter().any(|it| it.text == board.to_string()), "{board} {boxes:?}");
    }
    let upper = plan.pieces.iter().filter(|it| it.run.row == 0).count();
    assert_eq!(upper, 2);
    assert!(boxes.iter().filter(|it| it.text == "8 ft").count() >= upper, "{boxes:?}");
}

/// Every end joint stands in the table of rows, and on the drawing where there is room.
#[test]
fn end_joints_stand_from_the_wall() {
    use crate::sheet::Ink;
    use crate::words::Voice;
    let input = ceiling(240, 96, 16, &[12]);
    let answer = worked(&input);
    let sheet = Boards::sheet(&input, &answer, Basis::default());
    let part = sheet.parts.iter().find(|part| part.key == "rows").unwrap();
    let rows = &part.table.as_ref().unwrap().rows;
    let said: Vec<String> =
        rows.iter().map(|row| Voice::default().say(row.cells.last().unwrap())).collect();
    let mut joints = said.clone();
    joints.sort_unstable();
    assert_eq!(joints, ["12 ft", "8 ft"]);
    let labels: Vec<String> = sheet
        .drawing
        .unwrap()
        .ink
        .iter()
        .filter_map(|ink| match ink {
            Ink::Label { text, .. } => Some(Voice::default().say(text)),
            _ => None,
        })
        .collect();
    assert!(said.iter().all(|at| labels.contains(at)), "{labels:?}");
}

/// By hand: a wall 14 ft 7 in by 8 ft has two ends of 8 ft and 116.666… sq ft, which is taken over as
/// 116.7 and not in square inches; a ceiling's corners go all the way round.
#[test]
fn all_that_compound_asks_for_is_told_of_a_wall_too() {
    let wall = Input { of: Surface::Wall, wall: Some(inches(175)), ..Input::sample() };
    let figure = |input: &Input, key: &str| {
        let sheet = Boards::sheet(input, &worked(input), Basis::default());
        sheet.figures.iter().find(|it| it.key == key).unwrap().amount.exact()
    };
    assert_eq!(figure(&wall, "corners"), inches(2 * 96).exact());
    assert_eq!(figure(&wall, "surface"), "116.7 ft2");
    assert_eq!(figure(&Input::sample(), "corners"), inches(56 * 12).exact());
}

/// By hand, 16 ft by 8 ft 1 with 1 in left at the floor and a door from 2 ft to 4 ft 10-1/2, 6 ft 8
/// high: upright, seams at 4, 8 and 12 ft of 96 in each, and the door takes 79 in of the first; level,
/// the seam 4 ft down is 192 in, and the door's 34-1/2 are out of it. A window whose edge lies on a
/// seam takes nothing.
#[test]
fn joints_are_not_counted_in_openings() {
    let opening = |from: i64, wide, sill, high| Opening {
        from: Some(inches(from)),
        wide,
        sill: inches(sill),
        high: inches(high),
    };
    let door = opening(24, Length::inches(69, 2), 0, 80);
    let wall = Input {
        of: Surface::Wall,
        run: Way::Square,
        wall: Some(inches(192)),
        openings: vec![door.clone()],
        stock: only(&[8]),
        ..Input::sample()
    };
    let seams = |input: &Input| worked(input).seams();
    assert_eq!(seams(&wall), inches(3 * 96 - 79));
    let level = Input { run: Way::Along, ..wall.clone() };
    assert_eq!(seams(&level), Length::inches(2 * 192 - 69, 2));
    let beside = Input { openings: vec![opening(48, inches(36), 32, 48)], ..wall };
    assert_eq!(seams(&beside), inches(3 * 96));
    // An end joint over a door is as long as the board over it.
    let answer = worked(&level);
    let run = answer.ground.runs.iter().find(|run| run.row == 0).unwrap();
    assert_eq!(answer.ground.joint(run, inches(32)), inches(17));
    assert_eq!(answer.ground.joint(run, inches(96)), inches(48));
}

/// Source: ASTM C840, ends and edges on framing. By hand, 16 ft wall: studs 16 in apart from the corner
/// have one at 48, 96 and 144; from 8 in they stand at 40 and 56, at 88 and 104; 19.2 in apart at
/// 38.4 and 57.6, at 96, at 134.4 and 153.6. A quarter inch off center is enough wood.
#[test]
fn edges_of_upright_boards_fall_on_studs_or_it_says_where_not() {
    use crate::sheet::Verdict;
    let wall =
        Input { of: Surface::Wall, run: Way::Square, wall: Some(inches(192)), ..Input::sample() };
    let off = |input: &Input| {
        let answer = worked(input);
        let sheet = Boards::sheet(input, &answer, Basis::default());
        let voice = crate::words::Voice::default();
        let said = voice.say(&sheet.next.unwrap());
        assert_eq!(answer.ground.loose.is_empty(), said.contains("Proven"), "{said}");
        let over = sheet.checks[0].verdict == Verdict::Over;
        assert_eq!((&*sheet.checks[0].key, over), ("edges", !answer.ground.loose.is_empty()));
        let all = answer.ground.loose.iter().map(|at| voice.say(&crate::say!(w::PIECE_LONG, *at)));
        assert!(all.into_iter().all(|at| said.contains(&at)), "{said}");
        answer.ground.loose
    };
    assert_eq!(off(&wall), []);
    let at = |first, spacing| Input { first, spacing, ..wall.clone() };
    assert_eq!(off(&at(inches(8), inches(16))), [48, 96, 144].map(inches));
    assert_eq!(off(&at(Length::ZERO, Length::inches(96, 5))), [48, 144].map(inches));
    assert_eq!(off(&at(Length::inches(1, 4), inches(16))), []);
    assert_eq!(off(&at(Length::inches(5, 16), inches(16))).len(), 3);
    let members = [16, 48, 90, 144].map(|at| Member { at: Some(inches(at)) }).to_vec();
    assert_eq!(off(&Input { members, ..wall.clone() }), [inches(96)]);
    // Ends that meet between studs ask for backing.
    let high = Input { high: inches(150), stock: only(&[8]), ..wall };
    let sheet = Boards::sheet(&high, &worked(&high), Basis::default());
    assert_eq!((&*sheet.checks[1].key, sheet.checks[1].verdict), ("backing", Verdict::Ask));
    let level = Input { run: Way::Along, ..high };
    assert!(Boards::sheet(&level, &worked(&level), Basis::default()).checks.is_empty());
}

/// A wall of 14 ft with a door that takes the whole lower row, and a window that doesn't.
#[test]
fn a_door_breaks_the_row_that_it_takes() {
    let opening = |from, wide, sill, high| Opening {
        from: Some(inches(from)),
        wide: inches(wide),
        sill: inches(sill),
        high: inches(high),
    };
    let input = Input {
        of: Surface::Wall,
        wall: Some(inches(168)),
        openings: vec![opening(40, 34, 0, 82), opening(110, 36, 32, 48)],
        ..Input::sample()
    };
    let answer = worked(&input);
    let lower: Vec<_> = answer.ground.runs.iter().filter(|run| run.row == 1).collect();
    assert_eq!(lower.len(), 2, "left and right of the door");
    assert_eq!(lower[0].along, [Length::ZERO, inches(40)]);
    assert_eq!(lower[1].along, [inches(74), inches(168)]);
    let past = Input { openings: vec![opening(150, 34, 0, 82)], ..input.clone() };
    assert_eq!(solve(&past).unwrap_err()[0].path, "openings.0.wide");
    // Both as they are put in, at the wall's end, lie over each other; edge to edge they don't.
    let over = vec![opening(0, 34, 0, 82), opening(0, 36, 32, 48)];
    let over = solve(&Input { openings: over, ..input.clone() }).unwrap_err();
    assert_eq!((over.len(), &*over[0].path), (1, "openings.1.from"));
    let beside = vec![opening(0, 34, 0, 82), opening(34, 36, 32, 48)];
    worked(&Input { openings: beside, ..input });
}
