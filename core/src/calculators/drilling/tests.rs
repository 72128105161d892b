//! Published limits on and to either side, tables worked by hand from them, and every place and
//! bit tried one by one.

use super::judge::checks;
use super::*;
use crate::fields::Form;
use crate::rules::framing::lumber::Nominal;
use crate::sheet::{Check, Verdict};
use crate::words::Amount;
use Verdict::{Ask, Over, Within};
use proptest::prelude::*;

const NM: Length = Length::from_nanometres(1);

fn sixteenths(count: i64) -> Length {
    Length::inches(count, 16)
}

/// A measured member with no wander.
fn member(member: Member, width: Length) -> Input {
    Input {
        member,
        size: Nominal::Measured,
        width: Some(width),
        wander: Some(Length::ZERO),
        bit: Some(sixteenths(12)),
        ..Input::blank()
    }
}

fn bored(input: &Input, bit: Length, center: Option<Length>) -> Input {
    Input { bit: Some(bit), center, ..input.clone() }
}

fn notched(input: &Input, depth: Length, long: Length) -> Input {
    Input { cut: Cut::Notch, depth: Some(depth), long: Some(long), ..input.clone() }
}

fn judged(input: &Input) -> Vec<Check> {
    checks(input, &solve(input).unwrap(), Basis::default())
}

fn says(input: &Input, key: &str) -> Option<Verdict> {
    judged(input).iter().find(|check| check.key == key).map(|check| check.verdict)
}

/// Whether the structure takes it without a tie.
fn passes(input: &Input) -> bool {
    let structure = ["size", "edge", "tie", "in-a-row", "length"];
    judged(input).iter().all(|it| !structure.contains(&&*it.key) || it.verdict == Within)
}

fn hole_of(input: &Input) -> Hole {
    match solve(input).unwrap().made {
        Made::Hole(hole) => hole,
        other => panic!("{other:?}"),
    }
}

fn made_notch(input: &Input) -> Notch {
    match solve(input).unwrap().made {
        Made::Notch(notch) => notch,
        other => panic!("{other:?}"),
    }
}

const SIZES: [(Nominal, i64); 6] = [
    (Nominal::TwoByThree, 40),
    (Nominal::TwoByFour, 56),
    (Nominal::TwoBySix, 88),
    (Nominal::TwoByEight, 116),
    (Nominal::TwoByTen, 148),
    (Nominal::TwoByTwelve, 180),
];

/// Source: IRC R602.6, worked by hand and rounded down to sixteenths: notch bearing, notch where
/// it carries nothing, hole in a single bearing stud, hole up to 60 %, and the largest centered
/// hole that keeps the 1-1/4 in of NEC 300.4(A)(1) on both sides, whatever the structure says.
#[test]
fn the_largest_cuts_in_dressed_studs() {
    #[rustfmt::skip]
    const TABLE: [[i64; 5]; 6] = [
        // sixteenths of an inch
        [10, 16, 16, 20,  0], // 2x3: the 5/8 in edges stop the 60 % hole (24) at 20
        [14, 22, 22, 33, 16],
        [22, 35, 35, 52, 48],
        [29, 46, 46, 69, 76],
        [37, 59, 59, 88, 108],
        [45, 72, 72, 108, 140],
    ];
    for ((size, width), row) in SIZES.iter().zip(TABLE) {
        let stud = Input { size: *size, ..member(Member::Stud, Length::ZERO) };
        let partition = Input { wall: Wall::Partition, ..stud.clone() };
        let double = Input { member: Member::StudDouble, ..stud.clone() };
        let deepest = |input: &Input| {
            let notch = notched(input, sixteenths(1), sixteenths(16));
            bore::sixteenths(made_notch(&notch).cap.value).unwrap()
        };
        let largest = |input: &Input| hole_of(input).bore.largest(None);
        let any = Bore { cap: Length::inches(99, 1), ..hole_of(&stud).bore };
        let bare = any.with_edge(Length::inches(5, 4)).largest(None);
        let got = [
            Some(deepest(&stud)),
            Some(deepest(&partition)),
            largest(&stud),
            largest(&double),
            bare,
        ];
        let want = row.map(|count| (count > 0).then(|| sixteenths(count)));
        assert_eq!(got, want, "{size:?}");
        assert_eq!(largest(&partition), largest(&double));
        assert_eq!(hole_of(&stud).bore.width, sixteenths(*width));
        // The 5/8 in edges alone: the width less 1-1/4 in.
        assert_eq!(any.largest(None), Some(sixteenths(width - 20)));
    }
}

/// The same for full-size stock of 4 and 6 in, as in older houses.
#[test]
fn the_largest_cuts_in_full_size_studs() {
    for (width, notch, single, double) in [(64, 16, 25, 38), (96, 24, 38, 57)] {
        let stud = member(Member::Stud, sixteenths(width));
        let largest =
            |member| hole_of(&Input { member, ..stud.clone() }).bore.largest(None).unwrap();
        let cut = made_notch(&notched(&stud, sixteenths(1), sixteenths(1)));
        assert_eq!(bore::sixteenths(cut.cap.value), Some(sixteenths(notch)));
        assert_eq!(largest(Member::Stud), sixteenths(single));
        assert_eq!(largest(Member::StudDouble), sixteenths(double));
    }
}

/// Source: IRC R502.8.1, worked by hand and rounded down to sixteenths: D/6, D/4 at an end, D/3
/// long, and the largest hole, which is the smaller of D/3 and D less 4 in.
#[test]
fn the_largest_cuts_in_dressed_joists() {
    #[rustfmt::skip]
    const TABLE: [[i64; 4]; 5] = [
        [ 9, 14, 18,  0],
        [14, 22, 29, 24],
        [19, 29, 38, 38],
        [24, 37, 49, 49],
        [30, 45, 60, 60],
    ];
    for ((size, _), row) in SIZES[1..].iter().zip(TABLE) {
        for kind in [Member::Joist, Member::CeilingJoist, Member::Rafter] {
            let joist = Input { size: *size, ..member(kind, Length::ZERO) };
            let cut = |place| {
                let input = Input { place, ..joist.clone() };
                made_notch(&notched(&input, sixteenths(1), sixteenths(1)))
            };
            let got = [
                bore::sixteenths(cut(Place::Outer).cap.value),
                bore::sixteenths(cut(Place::End).cap.value),
                bore::sixteenths(cut(Place::Outer).longest.unwrap().value),
                hole_of(&joist).bore.largest(None),
            ];
            assert_eq!(got, row.map(|count| (count > 0).then(|| sixteenths(count))), "{size:?}");
            assert_eq!(cut(Place::End).longest, None);
            assert_eq!(cut(Place::Middle).cap.value, Length::ZERO);
        }
    }
}

/// Source: IRC R602.6.1, half of the width: 2x4, 2x6, and an older plate of 3-5/8 in.
#[test]
fn the_largest_hole_in_a_plate_without_a_tie() {
    for (width, want) in [(56, 28), (88, 44), (58, 29)] {
        let plate = member(Member::PlateDouble, sixteenths(width));
        assert_eq!(hole_of(&plate).bore.largest(None), Some(sixteenths(want)));
    }
}

/// Every actual width or depth from 1-1/2 to 11-1/4 in by eighths: on each limit it passes, a
/// nanometre and a sixteenth past it doesn't, a sixteenth short of it does.
#[test]
fn every_limit_is_passed_on_it_and_not_past_it() {
    for eighths in 12..=90 {
        let width = Length::inches(eighths, 8);
        for kind in [Member::Stud, Member::StudDouble, Member::Joist, Member::Rafter] {
            for wall in [Wall::Bearing, Wall::Partition] {
                let input = Input { wall, ..member(kind, width) };
                let cap = hole_of(&input).cap.value;
                let size = |bit| says(&bored(&input, bit, None), "size");
                assert_eq!(size(cap), Some(Within));
                assert_eq!(size(cap.minus(sixteenths(1)).max(NM)), Some(Within));
                assert_eq!(size(cap.plus(NM)), Some(Over));
                assert_eq!(size(cap.plus(sixteenths(1))), Some(Over));
                // An edge, from both faces.
                let (bit, edge) = (sixteenths(4), hole_of(&input).edge.value);
                for (off, want) in [(0, Within), (1, Within), (-1, Over)] {
                    let near = edge.plus(sixteenths(2)).plus(sixteenths(off));
                    if near.times(2) > width {
                        continue;
                    }
                    for center in [near, width.minus(near)] {
                        let at = bored(&input, bit, Some(center));
                        assert_eq!(says(&at, "edge"), Some(want), "{kind:?} {eighths}");
                        let past = bored(&input, bit, Some(near.minus(NM)));
                        assert_ne!((off, says(&past, "edge")), (0, Some(Within)));
                    }
                }
                for place in [Place::End, Place::Outer] {
                    let input = Input { place, ..input.clone() };
                    let Notch { cap, longest, .. } =
                        made_notch(&notched(&input, sixteenths(1), sixteenths(1)));
                    let size = |deep| says(&notched(&input, deep, sixteenths(1)), "size");
                    assert_eq!(
                        (size(cap.value), size(cap.value.plus(NM))),
                        (Some(Within), Some(Over))
                    );
                    if let Some(longest) = longest {
                        let long = |long| says(&notched(&input, NM, long), "length");
                        assert_eq!(long(longest.value), Some(Within));
                        assert_eq!(long(longest.value.plus(NM)), Some(Over));
                    }
                }
                let middle = Input { place: Place::Middle, ..input.clone() };
                if kind == Member::Joist {
                    assert_eq!(says(&notched(&middle, NM, NM), "size"), Some(Over));
                }
            }
        }
        // Over half of a plate takes a tie; half doesn't.
        let plate = Input { passes: Passes::Pipe, ..member(Member::PlateSingle, width) };
        for cut in [
            |at: &Input, size| bored(at, size, None),
            |at: &Input, size| notched(at, size, Length::inches(3, 1)),
        ] {
            let tie = |size| says(&cut(&plate, size), "tie");
            let half = width.part(2);
            assert_eq!((tie(half), tie(half.plus(NM))), (Some(Within), Some(Over)));
            assert_eq!(tie(half.plus(sixteenths(1)).min(width.minus(NM))), Some(Over));
        }
        let joist = member(Member::Joist, width);
        for (left, want) in [(32, Within), (31, Over), (33, Within)] {
            let left = Some(sixteenths(left));
            let near = Input { to_hole: left, to_notch: left, ..joist.clone() };
            assert_eq!(says(&near, "to-hole"), Some(want));
            assert_eq!(says(&near, "to-notch"), Some(want));
        }
    }
}

/// Source: NEC 300.4(A)(1) and (2) and IRC P2603.2.1: a hole's edge 1-1/4 in or more from the
/// nearest edge of the wood takes no plate; a notch always does; listed conduits never do.
#[test]
fn what_takes_a_steel_plate() {
    let plate = member(Member::PlateDouble, sixteenths(88));
    for (passes, covered) in [
        (Passes::Cable, true),
        (Passes::Pipe, true),
        (Passes::Conduit, false),
        (Passes::Duct, false),
    ] {
        let plate = Input { passes, ..plate.clone() };
        for (from_face, steel) in [(20, 0), (19, 1), (21, 0)] {
            // A hole of 1 in whose edge is this far from one face.
            let center = sixteenths(from_face + 8);
            for center in [center, sixteenths(88).minus(center)] {
                let at = bored(&plate, sixteenths(16), Some(center));
                let steel = if covered { steel } else { 0 };
                assert_eq!(solve(&at).unwrap().steel, steel);
                let want = covered.then_some(if steel > 0 { Over } else { Within });
                assert_eq!(says(&at, "bare"), want);
                let put_on = Input { plates: 1, ..at };
                assert_eq!(says(&put_on, "steel"), (steel > 0).then_some(Within));
            }
        }
        let cut = notched(&plate, sixteenths(4), sixteenths(16));
        assert_eq!(solve(&cut).unwrap().steel, i64::from(covered));
        assert_eq!(says(&cut, "steel"), covered.then_some(Over));
        assert_eq!(says(&Input { plates: 1, ..cut }, "steel"), covered.then_some(Within));
    }
    // Both faces: one plate is too few.
    let both = bored(&member(Member::Stud, sixteenths(56)), sixteenths(22), None);
    assert_eq!(solve(&both).unwrap().steel, 2);
    assert_eq!(says(&Input { plates: 1, ..both.clone() }, "steel"), Some(Over));
    assert_eq!(says(&Input { plates: 2, ..both }, "steel"), Some(Within));
}

fn shown_share(input: &Input) -> String {
    let sheet = sheet::sheet(input, &solve(input).unwrap(), Basis::default());
    let share = sheet.figures.iter().find(|figure| figure.key == "share").unwrap();
    share.amount.show(crate::measure::Units::Customary, share.rounding).text()
}

/// Source: IRC R602.6: a 1-3/8 in hole is 39.3 % of a 2x4, its edges 1-1/16 in off.
#[test]
fn a_bearing_stud_takes_a_hole_of_1_3_8_and_cable_in_it_takes_steel_on_both_faces() {
    let input = bored(&member(Member::Stud, sixteenths(56)), sixteenths(22), None);
    assert_eq!(hole_of(&input).clear, (sixteenths(17), sixteenths(17)));
    assert_eq!(shown_share(&input), "≈ 39.3 %");
    assert!(passes(&input));
    assert_eq!((says(&input, "bare"), solve(&input).unwrap().steel), (Some(Over), 2));
}

/// Source: IRC R602.6: 2-1/8 in is 60.7 % of a 2x4. Some handouts round the other way.
#[test]
fn a_partition_stud_takes_no_hole_of_2_1_8() {
    let input = Input { wall: Wall::Partition, ..member(Member::Stud, sixteenths(56)) };
    let input = bored(&input, sixteenths(34), None);
    assert_eq!(shown_share(&input), "≈ 60.7 %");
    assert_eq!((says(&input, "size"), says(&input, "edge")), (Some(Over), Some(Within)));
}

/// Source: IRC R602.6: 1-3/8 in is 25 % of a 2x6 and 1-7/16 in 26.1 %.
#[test]
fn an_exterior_2x6_takes_a_notch_of_1_3_8_and_none_of_1_7_16() {
    let stud = member(Member::Stud, sixteenths(88));
    for (depth, share, want) in [(22, "25 %", Within), (23, "≈ 26.1 %", Over)] {
        let input = notched(&stud, sixteenths(depth), sixteenths(24));
        assert_eq!(shown_share(&input), share);
        assert_eq!(says(&input, "size"), Some(want));
    }
}

/// Source: IRC R602.6: 2 in from a face of a 2x6, a 2-3/16 in hole leaves 0.906 and 2.406 in.
#[test]
fn off_center_in_a_2x6_the_near_face_takes_steel() {
    let at = Some(sixteenths(32));
    let input = bored(&member(Member::Stud, sixteenths(88)), sixteenths(35), at);
    assert_eq!(hole_of(&input).clear, (Length::inches(29, 32), Length::inches(77, 32)));
    assert!(passes(&input));
    assert_eq!(solve(&input).unwrap().steel, 1);
}

/// Source: IRC R502.8.1: 3 in is within 3.083 in, and its lower edge 4-1/4 in up.
#[test]
fn a_2x10_takes_a_hole_of_3_in_2_in_from_its_top() {
    let at = Some(sixteenths(56));
    let input = bored(&member(Member::Joist, sixteenths(148)), sixteenths(48), at);
    assert_eq!(hole_of(&input).clear, (Length::inches(2, 1), Length::inches(17, 4)));
    assert!(passes(&input));
    // A bit that wanders may come nearer than 2 in: by no clause, so it is asked about.
    let wanders = Input { wander: None, ..input };
    assert_eq!(says(&wanders, "edge"), Some(Ask));
}

/// Source: IRC R502.8.1: 1-1/4 in is past 7-1/4 ÷ 6 = 1.208 in.
#[test]
fn a_2x8_takes_no_notch_of_1_1_4() {
    let joist = Input { place: Place::Outer, ..member(Member::Joist, sixteenths(116)) };
    let input = notched(&joist, sixteenths(20), sixteenths(32));
    assert_eq!((says(&input, "size"), says(&input, "length")), (Some(Over), Some(Within)));
}

/// Source: IRC R602.6.1: 2-1/2 in is 71.4 % of a 2x4; 2-1/2 + 2 × 6 = 14-1/2 in, 8 + 8 nails.
#[test]
fn a_drain_through_a_2x4_plate_takes_a_tie_of_14_1_2() {
    let plate = Input { passes: Passes::Pipe, ..member(Member::PlateDouble, sixteenths(56)) };
    let input = bored(&plate, sixteenths(40), None);
    assert_eq!(shown_share(&input), "≈ 71.4 %");
    assert_eq!(says(&input, "tie"), Some(Over));
    for (tie, want) in [(231, Over), (232, Within), (233, Within)] {
        let tie = Some(sixteenths(tie));
        let tied = Input { remedy: Remedy::Tie, tie, ..input.clone() };
        assert_eq!((says(&tied, "tie"), says(&tied, "tie-length")), (None, Some(want)));
    }
    let sheet = sheet::sheet(&input, &solve(&input).unwrap(), Basis::default());
    let nails = sheet.materials.iter().find(|material| material.key == "nail/10d");
    assert_eq!(nails.unwrap().amount, Amount::Count(16));
    // The words are for pipes and ducts in bearing and exterior walls; the exception is shown.
    let asks = [
        Input { passes: Passes::Cable, ..input.clone() },
        Input { wall: Wall::Partition, ..input.clone() },
        Input { remedy: Remedy::Sheathed, ..input.clone() },
    ];
    for input in asks {
        assert_eq!(says(&input, "tie"), Some(Ask));
    }
}

/// Source: IRC R602.6.1: 2-1/2 in is 45.5 % of a 2x6, with 1-1/2 in on both sides.
#[test]
fn a_2x6_plate_takes_2_1_2_without_tie_or_steel() {
    let input = bored(&member(Member::PlateDouble, sixteenths(88)), sixteenths(40), None);
    assert_eq!(shown_share(&input), "≈ 45.5 %");
    assert_eq!(hole_of(&input).clear, (sixteenths(24), sixteenths(24)));
    assert!(judged(&input).iter().all(|check| check.verdict == Within));
}

/// What opens: a bit that runs 1/16 in off is on the limit of steel, to the nanometre.
#[test]
fn the_sample_is_within_with_a_sixteenth_to_spare_before_steel() {
    let input = Input::sample();
    let all = judged(&input);
    assert!(all.iter().all(|check| check.verdict == Within));
    let bare = all.iter().find(|check| check.key == "bare").unwrap();
    assert_eq!(bare.margin(), Amount::Length(sixteenths(1)));
    let (hole, answer) = (hole_of(&Input::sample()), solve(&Input::sample()).unwrap());
    assert_eq!((hole.worst(), answer.steel), (sixteenths(20), 0));
}

/// Only the cable's rule is of the electrical code.
#[test]
fn under_an_edition_that_was_not_verified_the_cables_check_alone_asks() {
    let under = |input: &Input, electrical| {
        let all = checks(input, &solve(input).unwrap(), Basis { electrical });
        all.into_iter().map(|check| (check.key, check.verdict)).collect::<Vec<_>>()
    };
    let both = |tie, bare| vec![("tie".to_owned(), tie), ("bare".to_owned(), bare)];
    let cable = Input::sample();
    assert_eq!(under(&cable, Some(Electrical::E2023)), both(Within, Within));
    assert_eq!(under(&cable, Some(Electrical::E2026)), both(Within, Ask));
    let pipe = Input { passes: Passes::Pipe, ..cable };
    assert_eq!(under(&pipe, Some(Electrical::E2026)), both(Within, Within));
}

/// Source: IRC R602.6: past 40 % no more than two doubled studs in a row are bored.
#[test]
fn a_third_doubled_stud_in_a_row_is_bored_to_40_percent_only() {
    let double = member(Member::StudDouble, sixteenths(56));
    for (in_a_row, bit, want) in [(2, 33, true), (3, 33, false), (3, 22, true), (20, 22, true)] {
        let input = Input { in_a_row, ..bored(&double, sixteenths(bit), None) };
        assert_eq!(passes(&input), want, "{in_a_row} bored to {bit}");
        assert_eq!(says(&input, "in-a-row").is_some(), bit == 33);
        let partition = Input { wall: Wall::Partition, ..input };
        assert!(passes(&partition), "where it carries nothing 60 % is for any");
    }
}

/// Source: IRC R602.6: a hole never shares its section with a notch. How far apart holes stand is
/// common practice.
#[test]
fn a_hole_and_a_notch_never_share_a_section_of_a_stud() {
    let stud = bored(&member(Member::Stud, sixteenths(56)), sixteenths(16), None);
    for (left, want) in [(0, Over), (1, Within)] {
        let input = Input { to_notch: Some(sixteenths(left)), ..stud.clone() };
        assert_eq!(says(&input, "section"), Some(want));
        let cut = notched(&stud, sixteenths(8), sixteenths(8));
        let input = Input { to_hole: Some(sixteenths(left)), ..cut };
        assert_eq!(says(&input, "section"), Some(want));
    }
    for (left, want) in [(15, Ask), (16, Within)] {
        let input = Input { to_hole: Some(sixteenths(left)), ..stud.clone() };
        assert_eq!(says(&input, "to-hole"), Some(want));
    }
}

#[test]
fn a_wall_that_nobody_knows_is_asked_about_and_no_more_passes_than_in_a_bearing_one() {
    for wall in [Wall::Unknown, Wall::Braced, Wall::Rated] {
        for kind in [Member::Stud, Member::PlateDouble] {
            let input =
                Input { wall, ..bored(&member(kind, sixteenths(56)), sixteenths(14), None) };
            assert!(!passes(&input));
            assert!(judged(&input).iter().all(|check| check.verdict != Over));
        }
    }
    let stud = Input { wall: Wall::Unknown, ..member(Member::Stud, sixteenths(56)) };
    let size = |bit| says(&bored(&stud, sixteenths(bit), None), "size");
    assert_eq!((size(22), size(23), size(33)), (Some(Ask), Some(Over), Some(Over)));
    let deep = |deep| says(&notched(&stud, sixteenths(deep), NM), "size");
    assert_eq!((deep(14), deep(15), deep(22)), (Some(Ask), Some(Over), Some(Over)));
}

#[test]
fn trusses_i_joists_and_laminated_wood_get_no_numbers_and_no_pass() {
    for kind in [Member::Header, Member::Truss, Member::IJoist, Member::Laminated] {
        let input = Input { member: kind, ..Input::blank() };
        let sheet = sheet::sheet(&input, &solve(&input).unwrap(), Basis::default());
        assert_eq!((sheet.verdict(), sheet.checks.len()), (Over, 1));
        assert_eq!(sheet.headline.amount, Amount::Count(1));
        assert!(sheet.figures.is_empty() && sheet.working.is_empty() && sheet.parts.is_empty());
        assert!(sheet.materials.is_empty() && sheet.drawing.is_none());
    }
}

fn other(bit: i64, center: i64, along: i64) -> Other {
    let [bit, center, along] = [bit, center, along].map(|count| Some(sixteenths(count)));
    Other { bit, center, along }
}

/// By hand, on a plate of 3-1/2 in: two holes of 1 in at 1 and 2-1/2 in take 2 in of one section;
/// apart along the plate they take 1 in of any, and 2 in only if they are added up.
#[test]
fn holes_at_one_section_are_taken_together_and_others_are_told() {
    let plate = Input { passes: Passes::Pipe, ..member(Member::PlateDouble, sixteenths(56)) };
    let plate = bored(&plate, sixteenths(16), Some(sixteenths(16)));
    let with = |holes: Vec<Other>| Input { holes, ..plate.clone() };
    #[rustfmt::skip]
    let cases = [
        // others, gone at a section, all together, opening
        (vec![other(16, 40, 0)],                     32, 32, 16),
        (vec![other(16, 40, 16)],                    32, 32, 32), // they touch
        (vec![other(16, 40, 17)],                    16, 32, 33),
        (vec![other(16, 40, -17)],                   16, 32, 33),
        (vec![other(16, 24, 0)],                     24, 32, 16), // they overlap across
        (vec![other(16, 40, 32), other(12, 20, 32)], 28, 44, 48),
        // The middle one shares a section with each of the others, and they none with each other.
        (vec![other(16, 40, 12), other(16, 16, 24)], 32, 48, 40),
    ];
    for (holes, section, sum, opening) in cases {
        let input = with(holes.clone());
        let across = solve(&input).unwrap().across.unwrap();
        let want = (sixteenths(section), sixteenths(sum), sixteenths(opening));
        assert_eq!((across.section, across.sum, across.opening), want, "{holes:?}");
        let over = |count| if count > 28 { Over } else { Within };
        assert_eq!(says(&input, "tie"), Some(over(section)), "{holes:?}");
        let asks = if sum > 28 { Ask } else { Within };
        assert_eq!(says(&input, "all-holes"), (sum != section).then_some(asks));
    }
    // Where only the sum is past half, a tie settles it.
    let tied =
        Input { remedy: Remedy::Tie, tie: Some(sixteenths(225)), ..with(vec![other(16, 40, 17)]) };
    assert_eq!(says(&tied, "tie-length"), Some(Within));
    assert_eq!(says(&tied, "all-holes"), None);
}

#[test]
fn a_plate_cut_in_two_is_not_mended_by_a_tie() {
    let plate = Input { passes: Passes::Pipe, ..member(Member::PlateDouble, sixteenths(56)) };
    let plate = bored(&plate, sixteenths(28), Some(sixteenths(14)));
    let holes = |bit| vec![other(bit, 56 - bit / 2, 0)];
    let tied = |bit| Input {
        holes: holes(bit),
        remedy: Remedy::Tie,
        tie: Some(sixteenths(800)),
        ..plate.clone()
    };
    assert!(!solve(&tied(26)).unwrap().across.unwrap().severed);
    assert_eq!(says(&tied(26), "tie-length"), Some(Within));
    assert!(solve(&tied(28)).unwrap().across.unwrap().severed);
    assert_eq!(says(&tied(28), "tie"), Some(Over));
}

#[test]
fn a_cut_as_wide_as_the_wood_is_told_at_its_field() {
    let [stud, plate] =
        [Member::Stud, Member::PlateDouble].map(|kind| member(kind, sixteenths(56)));
    let paths = |input: &Input| -> Vec<String> {
        solve(input).unwrap_err().into_iter().map(|fault| fault.path).collect()
    };
    assert!(solve(&bored(&stud, sixteenths(56).minus(NM), None)).is_ok());
    assert_eq!(paths(&bored(&stud, sixteenths(56), None)), ["bit"]);
    assert_eq!(paths(&bored(&stud, sixteenths(8), Some(sixteenths(56)))), ["center"]);
    assert_eq!(paths(&notched(&stud, sixteenths(57), NM)), ["depth"]);
    // A plate is severed, and answered.
    for cut in [bored(&plate, sixteenths(58), None), notched(&plate, sixteenths(56), NM)] {
        assert!(solve(&cut).unwrap().across.unwrap().severed);
        assert_eq!(says(&cut, "tie"), Some(Over));
    }
    let holes = vec![other(8, 8, 0), other(56, 56, 0)];
    assert_eq!(paths(&Input { holes, ..plate }), ["holes.1.center"]);
}

#[test]
fn only_what_is_old_is_disturbed() {
    for (cover, held) in [
        (Cover::NotSaid, true),
        (Cover::Bare, false),
        (Cover::New, false),
        (Cover::Plaster, true),
        (Cover::Board, true),
        (Cover::Texture, true),
        (Cover::Other, true),
    ] {
        let input = Input { cover, ..Input::sample() };
        let disturbs = Drilling::disturbs(&input);
        assert_eq!(disturbs.is_some(), held);
        assert!(disturbs.is_none_or(|work| work.deed == Deed::Cut && work.painted.is_some()));
    }
}

/// Each member in each width, with and without wander.
fn every_member() -> Vec<Input> {
    let odd = Length::inches(225, 64);
    let widths = SIZES.map(|(_, width)| sixteenths(width)).into_iter().chain([odd]);
    let mut all = Vec::new();
    for width in widths {
        for kind in [Member::PlateSingle, Member::Stud, Member::StudDouble, Member::Joist] {
            let input = member(kind, width);
            all.push(Input { wander: None, ..input.clone() });
            all.push(input);
        }
    }
    all
}

/// The window of centers against every 64th of an inch, for the structure and before steel; and
/// for a bit of an odd number of 64ths, whose half is no whole number of nanometres.
#[test]
fn the_window_of_centers_is_what_trying_every_64th_finds() {
    for input in every_member() {
        let width = solve(&input).unwrap().width;
        let last = width.nanometres() / Length::inches(1, 64).nanometres();
        for bit in [16, 47, 56, 64, 88, 133, 224, 400].map(|count| Length::inches(count, 64)) {
            if bit >= width {
                continue;
            }
            let bore = hole_of(&input).bore;
            let bare = bore.with_edge(Length::inches(5, 4));
            let (window, bare_window) = (bore.window(bit), bare.window(bit));
            let inside = |window: Option<(Length, Length)>, center| {
                window.is_some_and(|(low, high)| low <= center && center <= high)
            };
            for center in (1..last).map(|count| Length::inches(count, 64)) {
                let at = bored(&input, bit, Some(center));
                let (fits, bared) = (passes(&at), says(&at, "bare") == Some(Within));
                let what = (input.member, width, bit, center);
                assert_eq!(inside(window, center), fits, "{what:?}");
                assert_eq!(inside(bare_window, center), fits && bared, "{what:?}");
            }
            let middle = passes(&bored(&input, bit, None));
            assert_eq!(window.is_some(), middle, "{:?} {width:?} {bit:?}", input.member);
        }
    }
}

/// The largest bit against every sixteenth, at several places.
#[test]
fn the_largest_bit_is_what_trying_every_sixteenth_finds() {
    for input in every_member() {
        let width = solve(&input).unwrap().width;
        let sixteenth = sixteenths(1).nanometres();
        let most = (width.nanometres() - 1) / sixteenth;
        let places = [None, Some(4), Some(3), Some(2)];
        for center in places.map(|part| part.map(|part| width.part(part))) {
            let (mut largest, mut bare) = (None, None);
            for bit in (1..=most).map(sixteenths) {
                let at = bored(&input, bit, center);
                if passes(&at) {
                    largest = Some(bit);
                    if says(&at, "bare") == Some(Within) {
                        bare = Some(bit);
                    }
                }
            }
            let bore = hole_of(&input).bore;
            assert_eq!(bore.largest(center), largest, "{:?} {width:?}", input.member);
            let with_steel = bore.with_edge(Length::inches(5, 4));
            assert_eq!(with_steel.largest(center), bare, "{:?} {width:?}", input.member);
        }
    }
}

#[test]
fn a_window_is_marked_inwards_on_a_tape() {
    let at = |count| Length::inches(count, 64);
    assert_eq!(bore::on_tape((at(9), at(31))), (at(12), at(28)));
    assert_eq!(bore::on_tape((at(8), at(28))), (at(8), at(28)));
    assert_eq!(bore::on_tape((at(9), at(11))), (at(9), at(11)), "no sixteenth is between");
}

prop_compose! {
    fn any_member()(
        kind in prop::sample::select(
            Member::ALL.iter().copied().filter(|it| it.rule() != Rule::Paper).collect::<Vec<_>>(),
        ),
        wall in prop::sample::select(Wall::ALL),
        width in 25_400_000_i64..400_000_000,
        wander in 0_i64..20_000_000,
    ) -> Input {
        let wander = Some(Length::from_nanometres(wander));
        Input { wall, wander, ..member(kind, Length::from_nanometres(width)) }
    }
}

/// Of the checks about the hole itself.
fn worst(input: &Input) -> Option<Verdict> {
    let steps = solve(input).is_ok().then(|| judged(input))?;
    steps.iter().map(|check| check.verdict).max()
}

proptest! {
    #[test]
    fn a_larger_hole_never_passes_where_a_smaller_one_fails(
        input in any_member(),
        bit in 1_587_500_i64..400_000_000,
        more in 0_i64..50_000_000,
        center in prop::option::of(0_i64..400_000_000),
    ) {
        let at = |bit| {
            bored(&input, Length::from_nanometres(bit), center.map(Length::from_nanometres))
        };
        if let (Some(small), Some(large)) = (worst(&at(bit)), worst(&at(bit + more))) {
            prop_assert!(small <= large);
        }
    }

    #[test]
    fn toward_the_middle_no_edge_gets_worse(
        input in any_member(),
        bit in 1_587_500_i64..100_000_000,
        far in 0_i64..400_000_000,
        nearer in 0_i64..400_000_000,
    ) {
        let width = input.width.unwrap().nanometres();
        let (far, nearer) = (far % (width / 2), nearer % (width / 2));
        let (far, nearer) = (far.min(nearer), far.max(nearer));
        let at = |center| bored(&input, Length::from_nanometres(bit), Some(Length::from_nanometres(center)));
        if solve(&at(far)).is_ok() {
            let least = |center| hole_of(&at(center)).least_clear();
            prop_assert!(least(far) <= least(nearer));
            prop_assert!(worst(&at(far)) >= worst(&at(nearer)));
            prop_assert!(least(nearer) <= hole_of(&bored(&input, Length::from_nanometres(bit), None)).least_clear());
        }
    }

    #[test]
    fn what_is_called_largest_passes_and_a_sixteenth_more_does_not(
        input in any_member(), center in prop::option::of(0_i64..400_000_000),
    ) {
        let center = center.map(Length::from_nanometres).filter(|at| *at < input.width.unwrap());
        let input = Input { wall: Wall::Partition, passes: Passes::Conduit, ..input };
        if let Some(bit) = hole_of(&bored(&input, NM, center)).bore.largest(center) {
            prop_assert!(passes(&bored(&input, bit, center)));
            let more = bored(&input, bit.plus(sixteenths(1)), center);
            prop_assert!(solve(&more).is_err() || !passes(&more));
        }
    }
}
