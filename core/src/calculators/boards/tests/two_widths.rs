//! Boards of 54 and of 48 in together.

use super::*;

fn both(long: i64, wide: i64, spacing: i64, feet: &[i64]) -> Input {
    Input { board: Wide::Both, ..ceiling(long, wide, spacing, feet) }
}

/// How wide the rows are, in inches, and their boards.
fn rows_of(answer: &Answer) -> Vec<[i64; 2]> {
    let inch = |it: Length| it.nanometres() / inches(1).nanometres();
    answer.ground.bands.iter().map(|it| [inch(it.high), inch(it.board)]).collect()
}

/// By hand: 15 by 13 ft over 24 in are 54 + 54 + 48 in, three boards of 16 ft with no end joint and no
/// strip, where 48 in alone takes a fourth for the strip. 13 ft 2 in across is 54 + 54 + 50 of 54: a
/// board for each, and no strip of 2 in. 13 ft square the same rows. Of 12 ft boards each row of
/// 15 ft is two pieces, and what is left of one width hangs in no row of the other.
#[test]
fn two_widths_in_one_ceiling_leave_no_strip() {
    let input = both(180, 156, 24, &[16]);
    let answer = worked(&input);
    assert_eq!(rows_of(&answer), [[54, 54], [54, 54], [48, 48]]);
    let plan = answer.plan(Want::Boards);
    assert_eq!((plan.count(), plan.joints, plan.bound, plan.fewest_joints), (3, 0, 3, true));
    let size = |wide| Size { long: inches(192), wide: inches(wide) };
    assert_eq!([plan.of(size(54)), plan.of(size(48))], [2, 1]);
    assert_eq!(plan.bought(), Area::of(inches(156), inches(192)));
    let sheet = Boards::sheet(&input, &answer, Basis::default());
    let keys: Vec<&str> = sheet.materials.iter().map(|it| &*it.key).collect();
    let one = |wide: &str| format!("board {} {wide} 16 ft", input.panel.key());
    assert_eq!(keys, [one("4 ft"), one("4 ft 6 in"), "drywall-screw".to_owned()]);
    let said = crate::words::Voice::default().say(&sheet.headline.name);
    assert_eq!(said, "Boards, 2 of 54 in by 16 ft, 1 of 48 in by 16 ft");
    let rows = |wide| rows_of(&worked(&both(156, wide, 16, &[12, 14])));
    assert_eq!(rows(158), [[54, 54], [54, 54], [50, 54]]);
    assert_eq!(rows(156), [[54, 54], [54, 54], [48, 48]]);
    assert_eq!(rows(144), [[48, 48]; 3]);
    // Where rows of one width do, it is that width's plan, proven as it is.
    let plain = worked(&both(192, 144, 16, &[12]));
    let plan = plain.plan(Want::Boards);
    assert_eq!((plan.count(), plan.joints, plan.bound, plan.fewest_joints), (4, 3, 4, true));
    let short = worked(&both(180, 156, 24, &[12]));
    let plan = short.plan(Want::Boards);
    // Two rows of 54 in are 30 ft of 12 ft boards, the third is 15 ft: three boards and two.
    assert_eq!((plan.count(), plan.bound), (5, 5));
}

/// Every choice of rows of 54 and 48 in with a last one ripped from either, listed one row at a time:
/// none takes less across, and of those that take as much none has a wider narrowest row.
#[test]
fn no_other_choice_of_rows_takes_less_board() {
    fn all(left: i64, taken: i64, least: i64, best: &mut (i64, i64)) {
        for board in [48, 54] {
            if left > board {
                all(left - board, taken + 2 * board, least.min(board), best);
            } else {
                let takes = taken + if 2 * left <= board { board } else { 2 * board };
                *best = (*best).min((takes, -least.min(left)));
            }
        }
    }
    for deep in 1..=430 {
        let mut best = (i64::MAX, 0);
        all(deep, 0, i64::MAX, &mut best);
        let rows = bands(inches(deep), Wide::Both.widths());
        let inch = |it: Length| it.nanometres() / inches(1).nanometres();
        let takes = |it: &Band| inch(it.board) * if it.is_thin() { 1 } else { 2 };
        assert_eq!(rows.iter().map(|it| inch(it.high)).sum::<i64>(), deep);
        let least = rows.iter().map(|it| inch(it.high)).min().unwrap();
        assert_eq!((rows.iter().map(takes).sum(), -least), best, "{deep}");
        for (width, single) in [(48, Wide::W48), (54, Wide::W54)] {
            let rows = bands(inches(deep), single.widths());
            assert_eq!(rows.len() as i64, (deep + width - 1) / width, "{deep} of {width}");
        }
    }
}

/// By hand, 13 ft square of 14 ft boards: both widths take 54 + 54 + 48, three boards. Of 48 in alone
/// three rows and one of 12 in, 3 x 13 + 6-1/2 ft of 14: four at least; of 54 in alone 2 x 13 and a
/// third row of 48 in, 39 ft: three.
#[test]
fn of_both_widths_the_fewest_is_of_these_rows_only() {
    let input = both(156, 156, 16, &[12, 14]);
    let sheet = Boards::sheet(&input, &worked(&input), Basis::default());
    let note = sheet.parts.iter().find(|part| part.key == "ways").unwrap().note.as_ref();
    let said = crate::words::Voice::default().say(note.unwrap());
    assert!(
        said.contains("these rows only: 48 in boards alone take 4 at least, 54 in alone 3;"),
        "{said}"
    );
    let plain = Input { board: Wide::W48, ..input };
    let sheet = Boards::sheet(&plain, &worked(&plain), Basis::default());
    assert_eq!(sheet.parts[0].note, Some((&w::OTHER_NOTE).into()));
}
