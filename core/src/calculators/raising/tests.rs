//! Ceilings worked by hand, each limit on and to either side, what is refused, then laws.

use super::walls::studs;
use super::*;
use crate::fields::{Form, Reader};
use crate::measure::{Measure, Rounding, Units, unit};
use crate::rules::framing::precut;
use crate::sheet::{Value, Verdict};
use crate::wire::Node;
use crate::words::{Amount, Voice};
use proptest::prelude::*;

fn inches(sixteenths: i64) -> Option<Length> {
    Some(Length::inches(sixteenths, 16))
}

fn feet(count: i64) -> Option<Length> {
    Some(Length::inches(count * 12, 1))
}

/// The sample once somebody has looked in the attic.
fn known() -> Input {
    Input { overhead: Overhead::Sticks, ..Input::sample() }
}

/// The same with some leaves changed.
fn with(leaves: &[(&str, &str)]) -> Input {
    let mut node = known().write_parts();
    for (path, leaf) in leaves {
        node.put(path, Node::text(leaf));
    }
    let read = Reader::form::<Input>(&node, Units::Customary);
    read.unwrap_or_else(|faults| panic!("{leaves:?}: {faults:?}")).0
}

fn sheet(input: &Input) -> Sheet {
    Raising::sheet(input, &solve(input).unwrap(), Basis::default())
}

/// What a figure is shown as.
fn shown(sheet: &Sheet, key: &str) -> String {
    let figure = [&sheet.headline].into_iter().chain(&sheet.figures).find(|it| it.key == key);
    let figure = figure.unwrap_or_else(|| panic!("no figure {key}"));
    figure.amount.show(Units::Customary, figure.rounding).text()
}

fn all_shown(input: &Input, want: &[(&str, &str)]) {
    let sheet = sheet(input);
    for (key, want) in want {
        assert_eq!(shown(&sheet, key), *want, "{key}");
    }
}

fn verdict(input: &Input, key: &str) -> Verdict {
    let sheet = sheet(input);
    let check = sheet.checks.iter().find(|check| check.key == key);
    check.unwrap_or_else(|| panic!("no check {key}")).verdict
}

fn refused(leaves: &[(&str, &str)]) -> (String, String) {
    let faults = solve(&with(leaves)).unwrap_err();
    assert_eq!(faults.len(), 1);
    (faults[0].path.clone(), Voice::default().say(&faults[0].says))
}

/// By hand from the definitions: 92-5/8 + 4-1/2 = 97-1/8; less 5/8 and 3/4 is 95-3/4. 105 + 1-3/8 =
/// 106-3/8, 9-1/4 more; less 4-1/2 is 101-7/8, cut from 104-5/8 with 2-3/4 to spare; a short wall
/// on three plates 9-1/4 - 4-1/2 = 4-3/4. 52 ft by 9-1/4 in is 40.1 sq ft; 168 sq ft by as much
/// 129.5 cu ft. Studs at 16 in: 11.5 and 10 along 14 and 12 ft, 2 × (12 + 10) = 44 with the ends.
#[test]
fn the_sample_is_worked_as_by_hand() {
    let full = known();
    all_shown(
        &full,
        &[
            ("framing-now", "8 ft 1-1/8 in"),
            ("height-now", "7 ft 11-3/4 in"),
            ("height-to-be", "8 ft 9 in"),
            ("framing-to-be", "8 ft 10-3/8 in"),
            ("raise", "9-1/4 in"),
            ("stud", "8 ft 5-7/8 in"),
            ("sold", "8 ft 8-5/8 in"),
            ("cut-off", "2-3/4 in"),
            ("perimeter", "52 ft"),
            ("studs", "44"),
            ("infill", "≈ 40.1 sq ft"),
            ("ceiling-board", "168 sq ft"),
            ("air-added", "≈ 130 cu ft"),
        ],
    );
    let stacked = with(&[("wall.how", "stacked")]);
    let short = sheet(&stacked);
    assert_eq!(short.headline.key, "cripple");
    assert_eq!(shown(&short, "cripple"), "4-3/4 in");
    assert_eq!(shown(&short, "stud"), "8 ft 5-7/8 in");
    assert_eq!(verdict(&stacked, "joint"), Verdict::Ask);
    let by_raise = with(&[("to.by", "raise"), ("to.raise", "9 1/4")]);
    assert_eq!(shown(&sheet(&by_raise), "stud"), "8 ft 5-7/8 in");
}

/// Precut lengths read in two trade magazines; the heights are added up from three plates of
/// 1-1/2 in and a board, with no floor finish.
#[test]
fn each_precut_frames_its_heights() {
    #[rustfmt::skip]
    const CASES: &[(&str, &str, &str, &str)] = &[
        // stud, framing, under 1/2 in board, under 5/8
        ("92 5/8",  "97-1/8",  "96-5/8",  "96-1/2"),
        ("104 5/8", "109-1/8", "108-5/8", "108-1/2"),
        ("116 5/8", "121-1/8", "120-5/8", "120-1/2"),
    ];
    for (stud, framing, half, five_eighths) in CASES {
        for (board, height) in [("1/2", half), ("5/8", five_eighths)] {
            let leaves =
                [("stud", *stud), ("board", board), ("floor_finish", "0"), ("to.by", "raise")];
            let mut leaves = leaves.to_vec();
            leaves.push(("to.raise", "12"));
            let answer = solve(&with(&leaves)).unwrap();
            let read = |text: &str| Length::read(text, Units::Customary).unwrap();
            assert_eq!(answer.framing, read(framing), "{stud}");
            assert_eq!(answer.now, read(height), "{stud}, {board}");
        }
    }
    let sixteenth = Length::inches(1, 16);
    for (at, sold) in precut::LENGTHS.into_iter().enumerate() {
        assert_eq!(precut::nearest(sold), Some(sold));
        assert_eq!(precut::nearest(sold.minus(sixteenth)), Some(sold));
        assert_eq!(precut::nearest(sold.plus(sixteenth)), precut::LENGTHS.get(at + 1).copied());
    }
}

/// Older stock: two plates of 2 in over and one under, by the same sum.
#[test]
fn an_old_wall_is_added_up_by_its_own_plates() {
    let old = with(&[("stud", "96"), ("old_plate", "2"), ("to.height", "9'")]);
    assert_eq!(shown(&sheet(&old), "framing-now"), "8 ft 6 in");
    let framing = with(&[("known", "framing"), ("framing", "102"), ("to.height", "9'")]);
    assert_eq!(solve(&old).unwrap().now, solve(&framing).unwrap().now);
}

/// By hand: 2 × (14 + 18) = 64 ft by 1 ft; 252 sq ft by 1 ft.
#[test]
fn a_foot_more_all_round_a_room_of_14_by_18() {
    let input = with(&[("long", "18'"), ("wide", "14'"), ("to.by", "raise"), ("to.raise", "12")]);
    all_shown(&input, &[("infill", "64 sq ft"), ("air-added", "252 cu ft")]);
    let ell = with(&[
        ("floor", "191 sq ft"),
        ("perimeter", "60'"),
        ("to.by", "raise"),
        ("to.raise", "12"),
    ]);
    assert_eq!(refused(&[("floor", "191 sq ft")]).0, "floor");
    let ell = Input { long: feet(16), wide: feet(14), ..ell };
    all_shown(
        &ell,
        &[("infill", "60 sq ft"), ("air-added", "191 cu ft"), ("ceiling-board", "191 sq ft")],
    );
}

/// By hand: an opening of 12 × 10 up 9 in to 10 × 8: (120 + 4 × 99 + 80) ÷ 6 × 0.75 = 74.5; a
/// slant of 12 and 9 in is 15; (12 + 10 + 10 + 8) × 1.25 = 50; 104 + 50 + 80 = 234.
#[test]
fn a_tray_is_worked_as_by_hand() {
    let leaves = [
        ("shape", "tray"),
        ("long", "16'"),
        ("wide", "14'"),
        ("border", "2'"),
        ("lean", "1'"),
        ("to.by", "raise"),
        ("to.raise", "9"),
    ];
    let input = with(&leaves);
    all_shown(
        &input,
        &[
            ("tray-long", "12 ft"),
            ("tray-wide", "10 ft"),
            ("lid-long", "10 ft"),
            ("lid-wide", "8 ft"),
            ("slant", "15 in"),
            ("opening", "120 sq ft"),
            ("tray-sides", "50 sq ft"),
            ("lid", "80 sq ft"),
            ("ceiling-board", "234 sq ft"),
        ],
    );
    let answer = solve(&input).unwrap();
    assert_eq!(answer.air.exact_as_room(), "74.5 ft3");
    assert_eq!(answer.taken_down(), Area::square_feet(224), "the border is boarded anew");
    let kept = solve(&Input { keeps: true, ..input.clone() }).unwrap();
    assert_eq!(kept.taken_down(), Area::square_feet(120));
    assert_eq!(kept.board, Area::square_feet(130));
    // Plumb: l × w × h, and the room plus 2 (l + w) h of board.
    let plumb = Input { lean: None, ..input };
    let answer = solve(&plumb).unwrap();
    assert_eq!(answer.air.exact_as_room(), "90 ft3");
    assert_eq!(answer.board, Area::square_feet(224 + 33));
}

/// By hand: 20 across by 15, 4 in 12: a rise of 10 × 4 ÷ 12 = 3.333 ft; 20 × 3.333 × 15 ÷ 2 = 500;
/// 2 × 15 × √(100 + 11.11) = 316.2; 20 × 3.333 = 66.7.
#[test]
fn a_gable_vault_is_worked_as_by_hand() {
    let input = with(&[
        ("shape", "gable"),
        ("long", "20'"),
        ("wide", "15'"),
        ("ridge", "wide"),
        ("pitch", "4"),
    ]);
    all_shown(
        &input,
        &[
            ("rise", "3 ft 4 in"),
            ("air-added", "500 cu ft"),
            ("ceiling-board", "≈ 316.2 sq ft"),
            ("ends", "≈ 66.7 sq ft"),
        ],
    );
    assert_eq!(verdict(&input, "joint"), Verdict::Ask);
    // One slope over the same room: 20 × 4 ÷ 12 = 6 ft 8 in; 20 × 6.667 × 15 ÷ 2 = 1000;
    // 15 × √(400 + 44.44) = 316.2; ends 133.3, high wall 100.
    let shed = Input { shape: Shape::Shed, ..input };
    all_shown(
        &shed,
        &[
            ("rise", "6 ft 8 in"),
            ("air-added", "1000 cu ft"),
            ("ceiling-board", "≈ 316.2 sq ft"),
            ("ends", "≈ 133.3 sq ft"),
            ("high-wall", "100 sq ft"),
        ],
    );
}

/// A slope over a room of 12 by 14 ft from 54 in at its low wall, 6 in 12.
fn attic(leaves: &[(&str, &str)]) -> Input {
    let base = [
        ("shape", "shed"),
        ("known", "framing"),
        ("framing", "54"),
        ("board", "0"),
        ("floor_finish", "0"),
        ("pitch", "6"),
    ];
    with(&[&base[..], leaves].concat())
}

/// Source: IRC 2021 R305.1 and R304 as broken down in a building forum; the strips by hand:
/// (60 - 54) ÷ 6 = 1 ft, (84 - 54) ÷ 6 = 5 ft; 11 × 14 = 154 and 7 × 14 = 98 sq ft, 63.6 %.
#[test]
fn a_slope_is_read_both_ways() {
    let input = attic(&[]);
    all_shown(
        &input,
        &[
            ("strip-5", "12 in"),
            ("strip-7", "5 ft"),
            ("counted", "154 sq ft"),
            ("full", "98 sq ft"),
            ("full-share", "≈ 63.6 %"),
        ],
    );
    for key in ["sloped-floor", "sloped-required", "sloped-counted"] {
        assert_eq!(verdict(&input, key), Verdict::Within, "{key}");
    }
    // Low wall 42: strips 3 and 7 ft; 9 × 14 = 126, 5 × 14 = 70: over half of both.
    // Low wall 30: strips 5 and 9 ft; 98 and 42: 42 is more than 35, less than 49.
    let lower = attic(&[("framing", "36"), ("board", "6/8"), ("floor_finish", "5 1/4")]);
    all_shown(&lower, &[("counted", "98 sq ft"), ("full", "42 sq ft")]);
    assert_eq!(verdict(&lower, "sloped-required"), Verdict::Within);
    assert_eq!(verdict(&lower, "sloped-counted"), Verdict::Ask);
}

/// Source: the same, in a room of 10 by 14 ft at 8 in 12. The last 2.5 ft of it are 35 sq ft: 7 ft
/// high 7.5 ft in, from a low wall of 84 - 8 × 7.5 = 24 in. Half of what counts is 7 ft high where
/// 10 - (84 - low) ÷ 8 is half of 10 - (60 - low) ÷ 8: at 28 in, 3 of 6 ft.
#[test]
fn half_of_the_required_floor_is_a_limit_from_both_sides() {
    let room = |low: i64| {
        let input = attic(&[("pitch", "8"), ("long", "14'"), ("wide", "10'"), ("board", "3")]);
        Input { framing: inches(low + 3 * 16), ..input }
    };
    for (low, want) in
        [(24 * 16, Verdict::Within), (24 * 16 + 1, Verdict::Within), (24 * 16 - 1, Verdict::Over)]
    {
        let input = room(low);
        assert_eq!(verdict(&input, "sloped-required"), want, "{low}");
        // 5 ft high 4.5 ft in: 77 sq ft count, and half of that is more than 35.
        assert_ne!(verdict(&input, "sloped-counted"), Verdict::Within);
    }
    let half = |low: i64| verdict(&room(low), "sloped-counted");
    assert_eq!(half(28 * 16), Verdict::Within);
    assert_eq!(half(28 * 16 - 1), Verdict::Ask);
}

/// Source: IRC 2021 R305.1, as above, for both kinds of room.
#[test]
fn a_ceiling_is_on_under_and_over_its_least() {
    let at = |room: &str, sixteenths: i64| {
        let mut input =
            with(&[("room", room), ("known", "framing"), ("framing", "60"), ("to.by", "height")]);
        input.to.height = inches(sixteenths);
        verdict(&input, "height")
    };
    for (room, least) in [("lived-in", 84 * 16), ("bath", 80 * 16)] {
        assert_eq!(at(room, least), Verdict::Within);
        assert_eq!(at(room, least + 1), Verdict::Within);
        assert_eq!(at(room, least - 1), Verdict::Over);
    }
    let tray =
        with(&[("shape", "tray"), ("border", "2'"), ("known", "framing"), ("framing", "85")]);
    assert_eq!(verdict(&tray, "height"), Verdict::Ask, "an old border may stay");
}

/// Source: IRC Table R602.3(5), read in part; the partition's 14 ft from memory.
#[test]
fn a_stud_is_on_under_and_over_its_height() {
    let at = |carries: &str, stud: i64| {
        let mut input = with(&[("wall.carries", carries)]);
        input.to.height = inches(stud + 72 - 10 - 12);
        assert_eq!(
            solve(&input).map(|it| match it.made {
                Made::Flat(walls) => Some(walls.stud),
                _ => None,
            }),
            Ok(inches(stud))
        );
        verdict(&input, "stud-height")
    };
    for (carries, most) in [("unknown", 1920), ("bearing", 1920), ("nothing", 2688)] {
        assert_eq!(at(carries, most), Verdict::Within, "{carries}");
        assert_eq!(at(carries, most - 1), Verdict::Within, "{carries}");
        assert_eq!(at(carries, most + 1), Verdict::Ask, "{carries}");
    }
}

/// Sources beside each limit in `rules`: fan makers, beams (from memory), doors (common practice).
#[test]
fn what_hangs_in_the_way_is_on_under_and_over_its_limit() {
    use Verdict::{Ask, Over, Within};
    #[rustfmt::skip]
    let cases = [
        // 8 ft 9 in less 21 in is 7 ft
        ("fan",  21 * 16, Within), ("fan",  21 * 16 - 1, Within), ("fan",  21 * 16 + 1, Ask),
        ("beam", 84 * 16, Within), ("beam", 84 * 16 - 1, Ask),    ("beam", 76 * 16, Ask),
        ("beam", 76 * 16 - 1, Over),
        ("door", 1320, Within),    ("door", 1319, Ask),           ("door", 1321, Within),
    ];
    for (key, sixteenths, want) in cases {
        let path = ["clear.", key].concat();
        let text = inches(sixteenths).map(Length::exact).unwrap_or_default();
        assert_eq!(verdict(&with(&[(&path, &text)]), key), want, "{key} {sixteenths}");
    }
}

/// Source: IRC R302.11, bays of 10 ft at the most.
#[test]
fn stud_bays_are_closed_at_the_old_line_and_every_ten_feet() {
    let blocks = |stud: i64| {
        let input =
            Input { to: Goal { height: inches(stud + 50), ..Goal::blank() }, ..Input::sample() };
        match solve(&input).unwrap().made {
            Made::Flat(walls) => walls.blocks,
            _ => 0,
        }
    };
    assert_eq!([1600, 1920, 1921, 3840, 3841].map(blocks), [1, 1, 1, 1, 2]);
    let named = |input: &Input| {
        sheet(input).materials.into_iter().map(|it| (it.key, it.amount)).collect::<Vec<_>>()
    };
    let tray = named(&with(&[("shape", "tray"), ("border", "2'")]));
    // 2 × (10 + 8) ft of opening.
    assert!(tray.contains(&("fireblock".into(), Amount::Length(Length::inches(432, 1)))));
    let stacked = named(&with(&[("wall.how", "stacked")]));
    assert!(stacked.iter().all(|(key, _)| key != "fireblock"));
    assert!(stacked.contains(&("plate".into(), Amount::Length(Length::inches(156 * 12, 1)))));
}

/// Trusses are never within, nor is what nobody has looked at.
#[test]
fn what_is_overhead_is_never_within() {
    for (overhead, want) in [
        ("trusses", Verdict::Over),
        ("unknown", Verdict::Ask),
        ("sticks", Verdict::Ask),
        ("story", Verdict::Ask),
    ] {
        for shape in ["flat", "tray", "gable", "shed"] {
            let input =
                with(&[("overhead", overhead), ("shape", shape), ("border", "1'"), ("pitch", "4")]);
            assert_eq!(verdict(&input, "overhead"), want, "{overhead}, {shape}");
        }
    }
    let trusses = sheet(&with(&[("overhead", "trusses")]));
    assert!(Voice::default().say(&trusses.next.unwrap()).starts_with("Stop: trusses."));
    assert_eq!(trusses.materials, [], "nothing to buy yet");
}

/// By hand: 144 in at 16 are 9 gaps, 10 studs; an inch more takes one more.
#[test]
fn studs_are_counted_with_both_ends() {
    let at = |wall| studs(Length::inches(wall, 1), Length::inches(16, 1));
    assert_eq!([16, 144, 145, 160, 161].map(at), [2, 10, 11, 11, 12]);
}

/// By hand: 8 ft 9 in from the ceiling down: 105 - 48 = 57, - 96 = 9; 105 - 54 = 51.
#[test]
fn seams_land_where_the_sheets_end() {
    let said = |height: &str| {
        let sheet = sheet(&with(&[("to.height", height)]));
        let part = sheet.parts.into_iter().find(|part| part.key == "sheets").unwrap();
        part.rows.into_iter().map(|row| Voice::default().say(&row.value)).collect::<Vec<_>>()
    };
    assert_eq!(
        said("8' 9"),
        ["3 rows; seams 4 ft 9 in, 9 in over the floor", "2 rows; seams 4 ft 3 in over the floor"]
    );
    assert_eq!(said("8'")[0], "2 rows; seams 4 ft over the floor");
    assert_eq!(said("9'")[1], "2 rows; seams 4 ft 6 in over the floor");
    assert!(said("9' 1/16")[1].starts_with("3 rows; seams 4 ft 6-1/16 in, 1/16 in over"));
}

#[test]
fn what_can_not_be_is_refused_at_its_field() {
    let (path, says) = refused(&[("to.height", "7' 11 3/4")]);
    assert_eq!(path, "to.height");
    assert_eq!(says, "The ceiling is at 7 ft 11-3/4 in now: this is no higher.");
    let thin = [("board", "2"), ("new_board", "1/2"), ("to.by", "raise"), ("to.raise", "1 1/2")];
    let (path, says) = refused(&thin);
    assert_eq!(path, "to.raise");
    assert!(says.starts_with("The thinner board alone gives 1-1/2 in."), "{says}");
    let (path, says) =
        refused(&[("wall.how", "stacked"), ("to.by", "raise"), ("to.raise", "4 1/2")]);
    assert_eq!(path, "wall.added");
    assert!(says.starts_with("The plates alone take 4-1/2 in, and the joists go up 4-1/2"));
    let (path, says) = refused(&[("shape", "tray"), ("border", "5'"), ("lean", "1'")]);
    assert_eq!(path, "border");
    assert!(says.starts_with("Border and sides take 12 ft of each side"), "{says}");
    // A group that is left out is asked for.
    let read = |json: &str| {
        let node = Node::from_json(json).unwrap();
        solve(&Reader::form::<Input>(&node, Units::Customary).unwrap().0).unwrap_err()
    };
    let base = r#""stud":"92 5/8","board":"1/2","new_board":"1/2","floor_finish":"0","long":"14'","wide":"12'""#;
    assert_eq!(read(&["{", base, "}"].concat())[0].path, "to.height");
}

/// It is held whatever comes down, until nothing old does.
#[test]
fn what_comes_down_is_disturbed() {
    for old in OldCeiling::ALL {
        let input = Input { old: *old, ..Input::sample() };
        let disturbs = Raising::disturbs(&input);
        assert_eq!(disturbs.is_none(), *old == OldCeiling::Bare, "{}", old.key());
        if let Some(disturbs) = disturbs {
            assert_eq!(disturbs.deed, Deed::TearOut);
            assert_eq!(disturbs.area, Some(Area::square_feet(168)));
            assert_eq!(disturbs.painted, disturbs.area);
        }
    }
    for (keeps, want) in [("no", 168), ("yes", 80)] {
        let tray = with(&[("shape", "tray"), ("border", "2'"), ("keeps", keeps)]);
        assert_eq!(Raising::disturbs(&tray).unwrap().area, Some(Area::square_feet(want)));
    }
}

const NANOMETRE: Length = Length::from_nanometres(1);

/// Any ceiling that fits, of every shape.
fn any() -> impl Strategy<Value = Input> {
    let wall = (0..How::ALL.len(), 1_i64..=4, 64_i64..768);
    let room = (192_i64..9_600, 192_i64..9_600);
    let heights = (640_i64..2_000, 2_i64..=4, 0_i64..32, 0_i64..32, 0_i64..32);
    let shape = (0..Shape::ALL.len(), 16_i64..400, 0_i64..400, 4_i64..384, 1_i64..1_600);
    (wall, room, heights, shape).prop_map(
        |((how, added, spacing), (long, wide), (stud, plates, old, new, floor), shape)| {
            let (at, border, lean, pitch, raise) = shape;
            Input {
                shape: Shape::ALL[at],
                stud: inches(stud),
                plates,
                board: inches(old),
                new_board: inches(new),
                floor_finish: inches(floor),
                to: Goal { by: By::Raise, height: None, raise: inches(raise) },
                long: inches(long),
                wide: inches(wide),
                border: inches(border),
                lean: inches(lean),
                pitch: Some(Measure::new(&unit::PITCH, pitch * 62_500)),
                wall: Wall {
                    how: How::ALL[how],
                    added,
                    carries: Carries::Unknown,
                    spacing: inches(spacing),
                },
                ..known()
            }
        },
    )
}

proptest! {
    #[test]
    fn raising_takes_nothing_away(input in any()) {
        let Ok(answer) = solve(&input) else { return Ok(()) };
        prop_assert!(answer.highest > answer.now);
        prop_assert!(answer.air > Volume::ZERO);
        // A slope is no shorter than what is under it, but for the nanometre it is rounded to.
        let nanometres = Area::of(input.long.unwrap().plus(input.wide.unwrap()), NANOMETRE);
        prop_assert!(answer.board.plus(nanometres.times(2)) >= answer.floor);
        prop_assert!(answer.upright > Area::ZERO);
    }

    #[test]
    fn higher_takes_no_less_of_anything(input in any(), more in 1_i64..160) {
        let mut higher = input.clone();
        higher.to.raise = Some(input.to.raise.unwrap().plus(Length::inches(more, 16)));
        let (Ok(low), Ok(high)) = (solve(&input), solve(&higher)) else { return Ok(()) };
        prop_assert!(high.highest >= low.highest && high.air >= low.air);
        prop_assert!(high.board >= low.board && high.upright >= low.upright);
        if let (Made::Flat(low), Made::Flat(high)) = (&low.made, &high.made) {
            prop_assert!(high.stud > low.stud && high.sold >= low.sold);
            prop_assert_eq!(high.stud.minus(low.stud), Length::inches(more, 16));
        }
    }

    #[test]
    fn a_stud_with_its_plates_board_and_floor_is_the_height_that_was_wanted(input in any()) {
        let Ok(answer) = solve(&input) else { return Ok(()) };
        if let Made::Flat(walls) = answer.made {
            let stands = walls.stud.plus(Length::inches(3, 2).times(input.plates));
            let finish = input.new_board.unwrap().plus(input.floor_finish.unwrap());
            prop_assert_eq!(stands.minus(finish), answer.highest);
            prop_assert!(walls.sold >= walls.stud);
            if let Some(cripple) = walls.cripple {
                prop_assert!(cripple > Length::ZERO);
                let stacked = cripple.plus(Length::inches(3, 2).times(input.wall.added));
                prop_assert_eq!(answer.framing.plus(stacked), walls.framing);
            }
        }
    }

    /// Nothing in the working is another number than the figure beside it.
    #[test]
    fn working_comes_to_what_is_shown(input in any(), at in 0..Overhead::ALL.len()) {
        let input = Input { overhead: Overhead::ALL[at], ..input };
        let Ok(answer) = solve(&input) else { return Ok(()) };
        let sheet = sheet::sheet(&input, &answer);
        for step in &sheet.working {
            let figure =
                [&sheet.headline].into_iter().chain(&sheet.figures).find(|it| it.key == step.key);
            let Some(figure) = figure else { continue };
            let amount = step.expr.value().and_then(Value::amount).unwrap();
            let text = |amount: Amount| amount.show(Units::Customary, Rounding::Nearest).text();
            prop_assert!(amount.is_like(figure.amount), "{}", step.key);
            prop_assert_eq!(text(amount), text(figure.amount), "{}", &step.key);
        }
    }
}
