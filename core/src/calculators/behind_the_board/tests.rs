//! A wall by hand, limits on and to either side, and every sixteenth of it against a look at each.

use super::*;
use crate::calculators::boards::{Member, Opening};
use crate::fields::Form;
use crate::sheet::{Asks, Check, Ink, Surface, Verdict};
use crate::words::Voice;
use proptest::prelude::*;

fn sixteenths(count: i64) -> Length {
    Length::inches(count, 16)
}

fn inches(count: i64) -> Option<Length> {
    Some(Length::inches(count, 1))
}

/// In sixteenths: from the left, from the floor, wide, high.
fn thing(what: What, [left, low, wide, tall]: [i64; 4]) -> Thing {
    let [left, low, wide, tall] = [left, low, wide, tall].map(sixteenths);
    Thing { what, left: Some(left), low: Some(low), wide, tall, ..Thing::blank() }
}

fn wall(things: Vec<Thing>) -> Input {
    Input { wall: inches(144), things, ..Input::blank() }
}

fn hung(input: Input, low: i64, left: i64, across: i64) -> Input {
    let [low, left, across] = [low, left, across].map(sixteenths);
    Input { hang: true, at_low: Some(low), at_left: Some(left), across, ..input }
}

fn check_under(input: &Input, edition: Electrical, key: &str) -> Option<Check> {
    let answer = solve(input, edition).unwrap();
    let sheet = BehindTheBoard::sheet(input, &answer, Basis::default());
    sheet.checks.into_iter().find(|check| check.key == key)
}

fn check(input: &Input, key: &str) -> Option<Check> {
    check_under(input, Electrical::E2023, key)
}

fn verdict(input: &Input, key: &str) -> Option<Verdict> {
    check(input, key).map(|check| check.verdict)
}

fn told(input: &Input) -> Vec<(String, String)> {
    let faults = solve(input, Electrical::E2023).unwrap_err();
    faults.iter().map(|it| (it.path.clone(), Voice::default().say(&it.says))).collect()
}

/// By hand: 12 ft at 16 in on center from 16 in has 16 to 128, and one at each end; a door from 40 to
/// 74-1/2 one at each side. Centers that were measured stand alone.
#[test]
fn studs_are_on_the_spacing_at_the_ends_and_beside_openings() {
    let mut input = wall(Vec::new());
    let quarters = |input: &Input| -> Vec<i64> {
        let all = solve(input, Electrical::E2023).unwrap().studs;
        all.iter().map(|it| it.nanometres() / Length::inches(1, 4).nanometres()).collect()
    };
    assert_eq!(quarters(&input), [3, 64, 128, 192, 256, 320, 384, 448, 512, 573]);
    let door = Opening { from: inches(40), wide: sixteenths(552), ..Opening::blank() };
    input.openings.push(door);
    assert_eq!(quarters(&input), [3, 64, 128, 157, 192, 256, 301, 320, 384, 448, 512, 573]);
    input.studs = [47, 20].map(|at| Member { at: inches(at) }).to_vec();
    assert_eq!(quarters(&input), [80, 188]);
}

/// Source: NEC 300.4(A) and (D), 1-1/4 in; IRC P2603.2.1, 1-1/4 in, as `rules` have them.
#[test]
fn a_run_nearer_than_published_takes_a_plate() {
    use Verdict::{Over, Within};
    for what in [What::Cable, What::Pipe] {
        for size in [[160, 640, 512, 0], [160, 640, 0, 512]] {
            let with = |deep: Option<i64>, plated| {
                wall(vec![Thing { deep: deep.map(sixteenths), plated, ..thing(what, size) }])
            };
            for (deep, want) in [(19, Over), (20, Within), (21, Within), (0, Over)] {
                assert_eq!(verdict(&with(Some(deep), false), "deep-1"), Some(want), "{deep}");
            }
            assert_eq!(verdict(&with(Some(0), true), "deep-1"), None, "under steel");
            let asks = check(&with(None, false), "deep-1").unwrap();
            let told = Voice::default().say(&asks.told());
            assert_eq!((asks.asks, asks.has_scale()), (Asks::Unmeasured, false));
            assert_eq!(told, "at least 1-1/4 in", "what nobody measured is not nothing");
            assert_eq!(verdict(&with(None, true), "deep-1"), None);
        }
    }
    let keys = |size| {
        let deep = Some(sixteenths(16));
        let input = wall(vec![Thing { deep, ..thing(What::Cable, size) }]);
        check(&input, "deep-1").unwrap().source.key
    };
    assert_eq!(keys([160, 640, 512, 0]), "nec-300.4(A)", "level, through studs");
    assert_eq!(keys([160, 640, 0, 512]), "nec-300.4(D)", "upright, along one");
    let cable = Thing { deep: Some(sixteenths(24)), ..thing(What::Cable, [160, 640, 512, 0]) };
    let unread = check_under(&wall(vec![cable]), Electrical::E2026, "deep-1").unwrap();
    assert_eq!(unread.verdict, Verdict::Ask, "the text of 2026 was not read");
}

/// Common practice, by hand: the stud at 32 in runs from 31-1/4 to 32-3/4, the one at 64 from 63-1/4
/// to 64-3/4; backing needs half of each.
#[test]
fn backing_lies_on_a_stud_at_both_ends() {
    for (left, right, off) in [
        (500, 1036, [false, false]),
        (512, 1024, [false, false]),
        (499, 1024, [true, false]),
        (513, 1024, [true, false]),
        (524, 1012, [true, true]),
        (512, 1023, [false, true]),
        (512, 1037, [false, true]),
        (530, 1000, [true, true]),
    ] {
        let input = wall(vec![thing(What::Backing, [left, 640, right - left, 88])]);
        let ends = [
            ("left-1", "Its left end lies on no stud."),
            ("right-1", "Its right end lies on no stud."),
        ];
        for ((key, why), is_off) in ends.into_iter().zip(off) {
            let found = check(&input, key).map(|check| {
                assert_eq!((check.verdict, check.asks), (Verdict::Ask, Asks::First));
                Voice::default().say(&check.note.unwrap())
            });
            assert_eq!(found.as_deref(), is_off.then_some(why), "{left} {right}");
        }
    }
}

#[test]
fn what_lies_outside_or_in_an_opening_is_told_at_its_row() {
    let window = Opening {
        from: inches(40),
        wide: Length::inches(36, 1),
        sill: Length::inches(32, 1),
        high: Length::inches(48, 1),
    };
    let with = |it| Input { openings: vec![window.clone()], ..wall(vec![it]) };
    for (size, path) in [
        ([144 * 16 - 36, 640, 37, 60], "things.0.wide"),
        ([144 * 16 + 1, 640, 0, 60], "things.0.left"),
        ([160, 96 * 16 - 60, 36, 61], "things.0.tall"),
        ([160, 96 * 16 + 1, 36, 0], "things.0.low"),
        ([641, 513, 0, 0], "things.0.left"),
        ([600, 600, 41, 0], "things.0.left"),
        ([1215, 600, 400, 16], "things.0.left"),
    ] {
        let found = told(&with(thing(What::Box, size)));
        assert_eq!(found.len(), 1, "{found:?}");
        assert_eq!(found[0].0, path, "{size:?}");
    }
    // At the field that it is about, by its name; where several lie outside, the wall is the slip.
    let named = |input: &Input| {
        let faults = solve(input, Electrical::E2023).unwrap_err();
        faults.into_iter().map(|it| (it.path, it.label.en)).collect::<Vec<_>>()
    };
    let high = hung(wall(Vec::new()), 108 * 16, 160, 0);
    assert_eq!(named(&high), [("at_low".to_owned(), "Its screws, from the floor")]);
    let short = Input { wall: inches(12), ..Input::sample() };
    assert_eq!(named(&short), [("wall".to_owned(), "Wall from the room, end to end")]);
    assert_eq!(told(&short)[0].1, "What is noted in it reaches to 8 ft.");
    // On an edge it is neither.
    for size in [
        [640, 600, 0, 0],
        [600, 600, 40, 60],
        [1216, 600, 36, 60],
        [700, 512, 36, 0],
        [700, 1280, 36, 60],
    ] {
        assert!(solve(&with(thing(What::Box, size)), Electrical::E2023).is_ok(), "{size:?}");
    }
    let in_it = told(&with(thing(What::Cable, [160, 640, 1600, 0])));
    assert_eq!(in_it, [("things.0.left".to_owned(), "It lies in opening 1.".to_owned())]);
    let past = told(&hung(wall(Vec::new()), 640, 2000, 400));
    assert_eq!(
        past,
        [("across".to_owned(), "It ends outside the wall: 19 in is left.".to_owned())]
    );
}

/// By hand: blocking lies between studs, against the sides of both.
#[test]
fn blocking_stands_against_a_stud_at_both_ends() {
    for (left, right, off) in [
        (524, 1012, [false, false]),
        (500, 1036, [false, false]),
        (525, 1012, [true, false]),
        (524, 1011, [false, true]),
    ] {
        let input = wall(vec![thing(What::Blocking, [left, 640, right - left, 24])]);
        let found = ["left-1", "right-1"].map(|key| check(&input, key).is_some());
        assert_eq!(found, off, "{left} {right}");
    }
}

/// By hand: a screw at 80 in, into backing from 74 to 94 in, which lies on no stud of 24 in spacing.
#[test]
fn backing_whose_end_hangs_free_holds_no_screw() {
    let backing = |left: i64, wide: i64| thing(What::Backing, [left * 16, 736, wide * 16, 88]);
    let at = |thing| {
        let spacing = Length::inches(24, 1);
        let input = Input { spacing, first: spacing, ..hung(wall(vec![thing]), 768, 1280, 0) };
        let along = solve(&input, Electrical::E2023).unwrap().along;
        (along[0].meets, verdict(&input, "hold"))
    };
    assert_eq!(at(backing(74, 20)), (Meets::Loose(0), Some(Verdict::Ask)));
    assert_eq!(at(backing(72, 20)), (Meets::Loose(0), Some(Verdict::Ask)), "one end is not two");
    assert_eq!(at(backing(72, 24)), (Meets::Wood(0), Some(Verdict::Within)));
    // A screw keeps off the edges of what it holds in.
    let edge = |low: i64| {
        let mut thing = backing(72, 24);
        thing.low = Some(sixteenths(low));
        at(thing).0
    };
    for (low, want) in [
        (764, Meets::Wood(0)),
        (765, Meets::Nothing),
        (768 - 84, Meets::Wood(0)),
        (768 - 85, Meets::Nothing),
    ] {
        assert_eq!(edge(low), want, "{low}");
    }
}

/// By hand: a cable upright at 40 in is kept off from 38 to 42; a screw goes into the inch of a stud that
/// is a quarter off its edges: from 31-1/2 to 32-1/2, and from 47-1/2 on.
#[test]
fn what_a_screw_meets_along_a_shelf() {
    let input = hung(wall(vec![thing(What::Cable, [640, 0, 0, 1536])]), 960, 496, 400);
    let along = solve(&input, Electrical::E2023).unwrap().along;
    let got: Vec<_> = along.iter().map(|it| (it.from, it.to, it.meets)).collect();
    let stud = |at| Meets::Stud(Length::inches(at, 1));
    let want = [
        (496, 504, Meets::Nothing),
        (504, 520, stud(32)),
        (520, 608, Meets::Nothing),
        (608, 672, Meets::KeepOff(0)),
        (672, 760, Meets::Nothing),
        (760, 776, stud(48)),
        (776, 896, Meets::Nothing),
    ];
    assert_eq!(got, want.map(|(from, to, meets)| (sixteenths(from), sixteenths(to), meets)));
    assert_eq!(check(&input, "hold").map(|check| check.value), Some(2_i64.into()));
    let none = hung(wall(Vec::new()), 960, 600, 0);
    assert_eq!(verdict(&none, "hold"), Some(Verdict::Ask));
    // A stud that nobody found is no answer yet.
    let by_spacing = hung(wall(Vec::new()), 960, 512, 0);
    assert_eq!(verdict(&by_spacing, "hold"), Some(Verdict::Ask));
    let found = |left| Input {
        studs: vec![Member { at: inches(32) }],
        ..hung(wall(Vec::new()), 960, left, 0)
    };
    for (left, want) in
        [(503, Verdict::Ask), (504, Verdict::Within), (520, Verdict::Within), (521, Verdict::Ask)]
    {
        assert_eq!(verdict(&found(left), "hold"), Some(want), "{left}");
    }
}

/// By hand: a door from 40 to 74-1/2 in, its head at 80, with studs at its sides at 39-1/4 and 75-1/4 and
/// those of the spacing over it at 48 and 64. Its head itself is still its opening.
#[test]
fn over_a_door_a_screw_meets_what_stands_over_its_head() {
    let at = |y| {
        let mut input = hung(wall(Vec::new()), y, 576, 672);
        let size = |tenths: i64| Length::inches(tenths, 10);
        let (from, wide, high) = (Some(size(400)), size(345), size(800));
        input.openings.push(Opening { from, wide, high, ..Opening::blank() });
        let answer = solve(&input, Electrical::E2023).unwrap();
        let along: Vec<_> = answer.along.iter().map(|it| (it.to, it.meets)).collect();
        (input, answer, along)
    };
    let quarter = |at| Length::inches(at, 4);
    let stud = |at| Meets::Stud(quarter(at));
    let (input, answer, over) = at(1408);
    let want = [
        (155, Meets::Nothing),
        (159, stud(157)),
        (160, Meets::Nothing),
        (190, Meets::Over(0)),
        (194, stud(192)),
        (254, Meets::Over(0)),
        (258, stud(256)),
        (298, Meets::Over(0)),
        (299, Meets::Nothing),
        (303, stud(301)),
        (312, Meets::Nothing),
    ];
    assert_eq!(over, want.map(|(to, meets)| (quarter(to), meets)));
    let (_, _, head) = at(1280);
    let meets = [(quarter(159), stud(157)), (quarter(160), Meets::Nothing)];
    assert_eq!(head[1..3], meets);
    assert_eq!(head[3], (quarter(298), Meets::Opening(0)));
    // A stud that nobody measured is no place to trust.
    let told = |input: &Input| {
        let sheet = BehindTheBoard::sheet(input, &answer, Basis::default());
        Voice::default().say(&sheet.parts[0].rows[1].value)
    };
    assert_eq!(told(&input), "a stud by the spacing, center at 3 ft 3-1/4 in: find it first");
    let studs = answer.studs.iter().map(|it| Member { at: Some(*it) }).collect();
    assert_eq!(told(&Input { studs, ..input }), "stud, center at 3 ft 3-1/4 in");
}

/// By hand: a cable 1-1/2 in behind the face, and 1/2 of board before it: a screw of 1-3/4 ends 1/4
/// short of it. Common practice: 1/4 in, and 2 in beside.
#[test]
fn a_screw_that_could_reach_a_cable_is_over() {
    let cable = Thing { deep: Some(sixteenths(24)), ..thing(What::Cable, [640, 0, 0, 1536]) };
    let with = |left, screw: Option<i64>| {
        let screw = screw.map(sixteenths);
        Input { screw, ..hung(wall(vec![cable.clone()]), 960, left, 0) }
    };
    for (left, screw, want) in [
        (640, 28, Some(Verdict::Within)),
        (640, 29, Some(Verdict::Over)),
        (608, 29, Some(Verdict::Over)),
        (672, 29, Some(Verdict::Over)),
        (607, 29, None),
        (673, 29, None),
        (640, 4, Some(Verdict::Within)),
    ] {
        assert_eq!(verdict(&with(left, Some(screw)), "tip-1"), want, "{left} {screw}");
    }
    assert_eq!(verdict(&with(640, None), "tip-1"), Some(Verdict::Ask), "no screw given");
    assert_eq!(verdict(&with(607, None), "tip-1"), None);
}

#[test]
fn each_thing_is_drawn_by_its_number_and_listed_from_the_left() {
    let things = vec![
        thing(What::Backing, [1036, 736, 512, 88]),
        thing(What::Box, [524, 226, 36, 60]),
        thing(What::Cable, [542, 286, 0, 1250]),
    ];
    let input = wall(things);
    let answer = solve(&input, Electrical::E2023).unwrap();
    assert_eq!(answer.order, [1, 2, 0]);
    let sheet = BehindTheBoard::sheet(&input, &answer, Basis::default());
    let drawing = sheet.drawing.as_ref().unwrap();
    let said = |text: &Text| Voice::default().say(text);
    let labels: Vec<String> = drawing
        .ink
        .iter()
        .filter_map(|ink| match ink {
            Ink::Label { text, .. } => Some(said(text)),
            _ => None,
        })
        .collect();
    assert_eq!(labels, ["2", "3", "1"]);
    let hatched =
        drawing.ink.iter().filter(|ink| matches!(ink, Ink::Path { surface: Surface::Hatched, .. }));
    assert_eq!(hatched.count(), 1, "backing");
    let rows = &sheet.parts[0].table.as_ref().unwrap().rows;
    let row = [&rows[0].name].into_iter().chain(&rows[0].cells).map(said).collect::<Vec<_>>();
    assert_eq!(
        row,
        ["2. Box", "2 ft 8-3/4 in to 2 ft 11 in", "14-1/8 in to 17-7/8 in", "not noted"]
    );
}

fn placed() -> impl Strategy<Value = Thing> {
    let what = prop::sample::select(What::ALL);
    (what, 0_i64..1536, 0_i64..768, 0_i64..768, 0_i64..768)
        .prop_map(|(what, left, low, wide, tall)| thing(what, [left, low, wide, tall]))
}

fn windows() -> impl Strategy<Value = Vec<Opening>> {
    let window = (0_i64..1152, 16_i64..576, 0_i64..640, 16_i64..640).prop_map(|it| Opening {
        from: Some(sixteenths(it.0)),
        wide: sixteenths(it.1),
        sill: sixteenths(it.2),
        high: sixteenths(it.3),
    });
    prop::collection::vec(window, 0..3)
}

/// What lies at a place, by a look at each thing, in sixteenths: the edges of what is there belong to
/// it, so that a look keeps between them.
fn look(input: &Input, x: i64, y: i64) -> Meets {
    let of = |length: Length| length.nanometres() / sixteenths(1).nanometres();
    let over = |from: Length, long: Length, off: i64, at: i64| {
        of(from) - off <= at && at <= of(from) + of(long) + off
    };
    let studs = || (256..2304).step_by(256).chain([12, 2292]);
    // Whether both ends lie on a stud: backing on half of it, blocking against its side.
    let lies = |it: &Thing| {
        let bears = if it.what == What::Backing { 0 } else { 12 };
        let (left, right) = (of(it.left.unwrap()), of(it.left.unwrap()) + of(it.wide));
        studs().any(|stud| (stud - 12..=stud + bears).contains(&left))
            && studs().any(|stud| (stud - bears..=stud + 12).contains(&right))
    };
    let wood = |lie: bool| {
        let is = |it: &Thing| {
            let here =
                over(it.left.unwrap(), it.wide, -4, x) && over(it.low.unwrap(), it.tall, -4, y);
            it.what.holds() && here && lies(it) == lie
        };
        input.things.iter().position(is)
    };
    let mut found = Meets::Nothing;
    for (at, it) in input.openings.iter().enumerate().rev() {
        if over(it.from.unwrap(), it.wide, 0, x) && y > of(it.sill) + of(it.high) {
            found = Meets::Over(at);
        }
    }
    found = wood(false).map_or(found, Meets::Loose);
    for stud in studs() {
        if (x - stud).abs() <= 8 {
            found = Meets::Stud(sixteenths(stud));
        }
    }
    found = wood(true).map_or(found, Meets::Wood);
    for is_off in [false, true] {
        if is_off {
            for (at, it) in input.openings.iter().enumerate().rev() {
                if over(it.from.unwrap(), it.wide, 0, x) && over(it.sill, it.high, 0, y) {
                    found = Meets::Opening(at);
                }
            }
        }
        for (at, it) in input.things.iter().enumerate().rev() {
            let here =
                over(it.left.unwrap(), it.wide, 32, x) && over(it.low.unwrap(), it.tall, 32, y);
            if here && is_off && !it.what.holds() {
                found = Meets::KeepOff(at);
            }
        }
    }
    found
}

proptest! {
    #[test]
    fn every_sixteenth_meets_what_a_look_at_each_thing_finds(
        things in prop::collection::vec(placed(), 0..6),
        openings in windows(), low in 0_i64..=1536, left in 0_i64..1152, across in 0_i64..=1152,
    ) {
        // Openings bring studs of their own: here they are measured.
        let centers = (256..2304).step_by(256).chain([12, 2292]);
        let studs = centers.map(|at| Member { at: Some(sixteenths(at)) }).collect();
        let input = hung(Input { openings, studs, ..wall(things) }, low, left, across);
        let studs = super::studs(&input);
        let y = sixteenths(low);
        let ends = [left, left + across].map(sixteenths);
        let along = stretches(&input, &studs, y, ends);
        prop_assert_eq!((along[0].from, along[along.len() - 1].to), (ends[0], ends[1]));
        for pair in along.windows(2) {
            prop_assert_eq!(pair[0].to, pair[1].from);
            prop_assert!(pair[0].meets != pair[1].meets && pair[0].from < pair[0].to);
        }
        for x in left..=left + across {
            let place = sixteenths(x);
            prop_assert_eq!(meets(&input, &studs, place, y), look(&input, x, low));
            for it in &along {
                if it.from < place && place < it.to {
                    // On an edge inside a stretch both sides meet the same.
                    let near = Length::from_nanometres(1);
                    let sides = [place.minus(near), place.plus(near)];
                    for side in sides {
                        prop_assert_eq!(meets(&input, &studs, side, y), it.meets);
                    }
                }
            }
        }
    }

    /// A thing more to keep off never opens a place, and what is answered lies in the wall.
    #[test]
    fn more_in_a_wall_leaves_less_to_screw_into(
        things in prop::collection::vec(placed(), 0..6), cable in placed(), low in 0_i64..=1536,
    ) {
        let cable = Thing { what: What::Cable, ..cable };
        let long = |things: Vec<Thing>| {
            let input = hung(wall(things), low, 0, 2304);
            let answer = solve(&input, Electrical::E2023).unwrap();
            let held = answer.along.iter().filter(|it| it.meets.holds());
            (held.fold(Length::ZERO, |sum, it| sum.plus(it.to.minus(it.from))), answer)
        };
        let (before, answer) = long(things.clone());
        let lefts: Vec<_> = answer.order.iter().map(|at| things[*at].left).collect();
        prop_assert!(lefts.is_sorted());
        let (after, answer) = long([things, vec![cable]].concat());
        prop_assert!(after <= before);
        for at in &answer.reach {
            prop_assert!(answer.along.iter().any(|it| matches!(it.meets, Meets::KeepOff(_))), "{}", at);
        }
    }
}

/// A run is as long as it runs: as a point it would leave all of its way to screws.
#[test]
fn a_run_without_a_length_is_asked_for_it() {
    for what in [What::Cable, What::Pipe, What::Duct, What::Vent, What::Other, What::Backing] {
        let found = told(&wall(vec![thing(what, [160, 640, 0, 0])]));
        assert_eq!(found.len(), 1, "{what:?}");
        assert_eq!(found[0].0, "things.0.wide");
        for size in [[160, 640, 16, 0], [160, 640, 0, 16]] {
            assert!(solve(&wall(vec![thing(what, size)]), Electrical::E2023).is_ok(), "{what:?}");
        }
    }
    assert!(solve(&wall(vec![thing(What::Box, [160, 640, 0, 0])]), Electrical::E2023).is_ok());
}
