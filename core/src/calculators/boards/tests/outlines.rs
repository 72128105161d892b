//! Rooms that are no rectangle, and what of a board is cut off.

use super::*;

/// By hand: a window from 110 in, 36 wide, 32 to 80 up a wall of 97 less 1 in at the floor: from the
/// ceiling 17 to 65 in down. It takes 31 in of the upper row and 17 of the lower.
#[test]
fn a_cut_out_is_told_from_its_own_boards_edges() {
    use crate::words::Voice;
    let window =
        Opening { from: Some(inches(110)), wide: inches(36), sill: inches(32), high: inches(48) };
    let input = Input {
        of: Surface::Wall,
        wall: Some(inches(168)),
        openings: vec![window],
        stock: only(&[14]),
        ..Input::sample()
    };
    let sheet = Boards::sheet(&input, &worked(&input), Basis::default());
    let part = sheet.parts.iter().find(|part| part.key == "cut-outs").unwrap();
    let said = |text| Voice::default().say(text);
    let cells: Vec<Vec<String>> = part
        .table
        .iter()
        .flat_map(|table| &table.rows)
        .map(|row| row.cells.iter().map(said).collect())
        .collect();
    assert_eq!(
        cells,
        [
            ["9 ft 2 in to 12 ft 2 in", "17 in to 4 ft"],
            ["9 ft 2 in to 12 ft 2 in", "0 in to 17 in"],
        ]
    );
    // The same beside the drawing's line.
    let drawn = sheet.drawing.unwrap();
    let dimension = |ink: &crate::sheet::Ink| matches!(ink, crate::sheet::Ink::Dimension { from, to } if to.x.minus(from.x) == inches(110));
    assert!(drawn.ink.iter().any(dimension));
    // No opening, no table.
    let sheet = Boards::sheet(&Input::sample(), &worked(&Input::sample()), Basis::default());
    assert!(sheet.parts.iter().all(|part| part.key != "cut-outs"));
}

fn ell(run: Way) -> Input {
    Input {
        shape: Shape::Ell,
        notch_long: Some(inches(96)),
        notch_wide: Some(inches(72)),
        run,
        ..ceiling(240, 192, 16, &[8, 10, 12, 14])
    }
}

/// By hand: 20 by 16 ft less 8 by 6 has its inside corner at 12 ft along and 10 ft across. Row 3 lies
/// from 8 to 12 ft, so that a piece in it that starts at the wall and ends past 12 ft is 4 ft wide up
/// to there and 2 ft wide beyond: its lower right corner comes off, from 12 ft on and 2 ft down. A
/// piece that starts past 12 ft is 2 ft wide, ripped off one edge.
#[test]
fn what_hangs_past_an_inside_corner_is_told_as_cut_off() {
    use crate::words::Voice;
    let input = ell(Way::Along);
    let answer = worked(&input);
    let sheet = Boards::sheet(&input, &answer, Basis::default());
    let plan = answer.plan(input.want);
    let third: Vec<&Piece> = plan.pieces.iter().filter(|it| it.run.row == 2).collect();
    let piece = third.iter().find(|it| it.along[1] > inches(144)).unwrap();
    assert!(piece.along[0] < inches(144), "{third:?}");
    let show = |at: Length| Voice::default().say(&crate::say!(w::PIECE_LONG, at));
    let [from, to] = [inches(144), piece.along[1]].map(|at| show(at.minus(piece.along[0])));
    let name = format!("{}, row 3: lower right corner", piece.board + 1);
    assert_eq!(
        part_says(&sheet, "cut-outs"),
        [[name, format!("{from} to {to}"), "2 ft to 4 ft".into()]]
    );
    let long = show(piece.along[1].minus(inches(144)));
    let cuts = part_says(&sheet, "cuts");
    let ends = format!("; lower right corner cut off, {long} by 2 ft");
    assert!(cuts.iter().any(|row| row[1].ends_with(&ends)), "{cuts:?}");
    let drawing = sheet.drawing.as_ref().unwrap();
    let twin: Vec<String> = drawing.twin.iter().map(|text| Voice::default().say(text)).collect();
    let less = "Less, lower right corner: from 12 ft to 20 ft along, from 10 ft to 16 ft across.";
    assert!(twin.iter().any(|it| it == less), "{twin:?}");
    let off = format!(
        "Board {}, row 3: lower right corner, cut off from 12 ft to {} along, from 10 ft to 12 ft across.",
        piece.board + 1,
        show(piece.along[1]),
    );
    assert!(twin.contains(&off), "{twin:?}");
    let means = |ink: &crate::sheet::Ink| matches!(ink, crate::sheet::Ink::Path { means: Some(text), .. } if text.phrase == &w::MEANS_OFF);
    assert_eq!(drawing.ink.iter().filter(|ink| means(ink)).count(), 1);
    // What is ripped says so: here all that hangs in row 3 past the corner.
    for piece in plan.pieces.iter().filter(|it| it.run.row == 2 && it.along[0] >= inches(144)) {
        let own = format!("Board {}, ", piece.board + 1);
        let told = |row: &Vec<String>| {
            row[0].starts_with(&own)
                && row[0].ends_with("row 3")
                && row[1].ends_with(
                    "2 ft wide, from 13 ft 4 in; ripped off one edge, its factory edge to the seam",
                )
        };
        assert!(cuts.iter().any(told), "{cuts:?}");
    }
    // A ceiling is drawn from above: the board's back. The other way round the drawing turns over.
    let note = |input: &Input| {
        let sheet = Boards::sheet(input, &worked(input), Basis::default());
        sheet.parts.iter().find(|part| part.key == "cut-outs").and_then(|it| it.note.clone())
    };
    assert_eq!(note(&input), Some((&w::CUT_OUTS_BACK).into()));
    assert!(places::shows_face(&ell(Way::Square)));
}

/// By hand: a T of 20 by 12 ft, bar 6 ft deep and a leg 8 ft wide 6 ft in, less both corners beside
/// the leg; a U of 20 by 12 with a gap of 8 by 3 ft 6 ft in, less a part of its lower edge; a walk round
/// the L's own walls as the L. In a row of 4 ft the T's second one hangs 2 ft past the bar on both
/// sides of the leg.
#[test]
fn tees_us_and_walks_tell_what_comes_off_too() {
    let say = |text: &crate::words::Text| crate::words::Voice::default().say(text);
    let less = |input: &Input| -> Vec<String> {
        let answer = worked(input);
        let sheet = Boards::sheet(input, &answer, Basis::default());
        let plan = answer.plan(input.want);
        // What is cut off and what hangs come to all that the pieces are.
        let area =
            |[along, across]: Part| Area::of(along[1].minus(along[0]), across[1].minus(across[0]));
        let sum = |all: Vec<Part>| all.into_iter().fold(Area::ZERO, |sum, it| sum.plus(area(it)));
        let whole = |it: &Piece| [it.along, answer.ground.across(&it.run, it.along)];
        let all = sum(plan.pieces.iter().map(whole).collect());
        let off = |it: &Piece| places::cut_off(&answer, it).into_iter().map(|it| it.1);
        let off: Vec<Part> = plan.pieces.iter().flat_map(off).collect();
        assert!(!off.is_empty() && all == sum(off.clone()).plus(answer.ground.area()));
        assert_eq!(part_says(&sheet, "cut-outs").len(), off.len());
        let twin = &sheet.drawing.unwrap().twin;
        twin.iter().map(say).filter(|it| it.starts_with("Less")).collect()
    };
    let some = |count: i64| Some(inches(count));
    let tee = Input {
        shape: Shape::Tee,
        leg_wide: some(96),
        leg_long: some(72),
        leg_off: some(72),
        ..ceiling(240, 144, 16, &[12])
    };
    assert_eq!(
        less(&tee),
        [
            "Less, lower left corner: from 0 in to 6 ft along, from 6 ft to 12 ft across.",
            "Less, lower right corner: from 14 ft to 20 ft along, from 6 ft to 12 ft across.",
        ]
    );
    let u = Input {
        shape: Shape::U,
        gap_long: some(96),
        gap_deep: some(42),
        gap_off: some(72),
        ..tee.clone()
    };
    assert_eq!(
        less(&u),
        ["Less, part of its lower edge: from 6 ft to 14 ft along, from 8 ft 6 in to 12 ft across."]
    );
    let wall = |length, end| crate::calculators::room::Walked {
        end,
        length: some(length),
        outside: false,
    };
    use crate::calculators::room::End::{Inside, Outside};
    let walk = Input {
        shape: Shape::Walk,
        walls: vec![
            wall(240, Inside),
            wall(120, Inside),
            wall(96, Outside),
            wall(72, Inside),
            wall(144, Inside),
            wall(192, Inside),
        ],
        ..ceiling(240, 192, 16, &[8, 10, 12, 14])
    };
    assert_eq!(less(&walk), less(&ell(Way::Along)));
}

/// By hand: 16 by 12 ft of 12 ft boards are three whole ones and one cut into three of 4 ft: all four
/// are used to the inch. Of 14 ft boards the same pieces leave 2 ft. Three of 16 ft hang from wall to
/// wall. A whole one between two joints has framing to give.
#[test]
fn boards_with_nothing_to_trim_are_told_by_the_answer() {
    let said = |input: &Input| {
        let sheet = Boards::sheet(input, &worked(input), Basis::default());
        crate::words::Voice::default().say(&sheet.next.unwrap())
    };
    let tight = "used to the inch, with nothing to trim";
    let four = ceiling(192, 144, 16, &[12]);
    let ends =
        "Boards 1 to 4 are used to the inch, with nothing to trim: take a spare, measure first.";
    assert!(said(&four).starts_with("Proven") && said(&four).ends_with(ends), "{}", said(&four));
    let spare = said(&Input { spare: 1, ..four });
    assert!(spare.contains(tight) && !spare.contains("take a spare"), "{spare}");
    assert!(said(&ceiling(192, 144, 16, &[16])).contains("Boards 1 to 3 are"));
    assert!(!said(&ceiling(190, 142, 16, &[16])).contains(tight));
    // Upright, 8 ft boards on a wall of 8 ft 1 have the gap at the floor; without one they have nothing.
    let up = |gap| Input {
        of: Surface::Wall,
        run: Way::Square,
        wall: Some(inches(192)),
        high: inches(96).plus(gap),
        gap,
        ..Input::sample()
    };
    assert!(!said(&up(inches(1))).contains(tight));
    assert!(said(&up(Length::ZERO)).contains("Boards 1 to 4 are"));
    // 30 ft in one row of 12 ft boards: whole in the middle, 9 ft at each end; or two whole ones.
    let run = Run {
        row: 0,
        along: [Length::ZERO, inches(360)],
        across: [Length::ZERO, inches(48)],
        board: inches(48),
    };
    let piece = |from, to, board| Piece { run, along: [inches(from), inches(to)], board, lane: 0 };
    let boards = vec![Size { long: inches(144), wide: inches(48) }; 3];
    let plan = |pieces| Plan {
        stock: inches(144),
        boards: boards.clone(),
        joints: 2,
        bound: 3,
        shy: 0,
        fewest_joints: true,
        pieces,
    };
    let middle = plan(vec![piece(0, 108, 0), piece(108, 252, 1), piece(252, 360, 2)]);
    assert!(middle.tight(None).is_empty());
    let first = plan(vec![piece(0, 144, 0), piece(144, 288, 1), piece(288, 360, 2)]);
    assert_eq!(first.tight(None), [0]);
}

/// A room with a notch: rows beside it are shorter, one that the notch cuts into hangs over it.
#[test]
fn an_l_is_laid_in_runs_of_its_own_lengths() {
    let input = Input {
        shape: Shape::Ell,
        notch_long: Some(inches(96)),
        notch_wide: Some(inches(60)),
        ..Input::sample()
    };
    let answer = worked(&input);
    let long = |row: usize| {
        let run = answer.ground.runs.iter().find(|run| run.row == row).unwrap();
        run.along[1].minus(run.along[0])
    };
    assert_eq!(answer.ground.runs.len(), 3);
    assert_eq!([0, 1, 2].map(long).iter().filter(|it| **it == inches(96)).count(), 1);
    assert_eq!(
        answer.ground.area(),
        Area::of(inches(192), inches(144)).minus(Area::of(inches(96), inches(60)))
    );
    let turned = worked(&Input { run: Way::Square, ..input });
    assert_eq!(turned.ground.area(), answer.ground.area());
}

/// By hand: the notch leaves 2 ft of row 3 beside it, so that its piece is ripped to 2 ft and its
/// joint is no longer.
#[test]
fn what_lies_beside_a_notch_is_cut_to_the_room() {
    let input = Input {
        shape: Shape::Ell,
        notch_long: Some(inches(96)),
        notch_wide: Some(inches(72)),
        ..ceiling(240, 192, 24, &[12, 16])
    };
    let answer = worked(&input);
    let plan = answer.plan(input.want);
    for piece in plan.pieces.iter().filter(|it| it.run.row == 2 && it.along[0] >= inches(144)) {
        let [top, bottom] = answer.ground.across(&piece.run, piece.along);
        assert_eq!(bottom.minus(top), inches(24));
    }
    let run = answer.ground.runs.iter().find(|run| run.row == 2).unwrap();
    assert_eq!(answer.ground.joint(run, inches(144)), inches(24));
    assert_eq!(answer.ground.joint(run, inches(120)), inches(48));
}
