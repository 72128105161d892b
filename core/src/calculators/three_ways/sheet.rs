//! The comparison as it is shown: each topic once for all three, as figures and as a row.

use super::words as w;
use super::{Answer, Input, Way, Worked};
use crate::measure::Length;
use crate::rules::compare::{Limit, ask, at_least, at_most, settle};
use crate::rules::electrical::box_setback::{Surface, most};
use crate::rules::framing::ceiling_joists::SCOPE;
use crate::rules::hazards::local::UNSAID;
use crate::rules::hazards::{Deed, Material};
use crate::rules::residential::ceiling_height::{ANY_ROOM, LIVED_IN};
use crate::say;
use crate::sheet::{Asks, Caution, Check, Figure, Part, PartRow, Sheet, Verdict};
use crate::words::{Amount, Arg, Phrase, Text};

/// The figures' keys, a topic a line.
type Keys = [&'static str; 3];

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let mut figures = Vec::new();
    let mut rows = Vec::new();
    let mut topic = |keys: Keys, name: &'static Phrase, of: fn(&Worked) -> Option<Amount>| {
        let mut args = Vec::new();
        for ((key, way), worked) in keys.into_iter().zip(Way::ALL).zip(&answer.ways) {
            let amount = of(worked);
            args.push(amount.map_or(Arg::from(&w::NONE), Arg::from));
            if let Some(amount) = amount {
                figures.push(Figure::new(key, say!(w::OF, way.label(), name), amount));
            }
        }
        rows.push(row(name.into(), Text { phrase: &w::THREE, args }));
    };
    topic(["strip-lost", "over-lost", "out-lost"], &w::LOST, |it| Some(it.lost.into()));
    topic(["strip-height", "over-height", "out-height"], &w::HIGH, |it| Some(it.height.into()));
    if input.boxes > 0 {
        topic(["strip-box", "over-box", "out-box"], &w::BACK, |it| Some(it.behind.into()));
    }
    topic(["", "over-screws", "out-screws"], &w::SCREW, |it| it.screw.map(Amount::from));
    topic(["strip-load", "over-load", "out-load"], &w::LOAD, |it| Some(it.load.into()));
    topic(["strip-out", "over-out", "out-out"], &w::OUT, |it| Some(it.out[1].into()));
    topic(["strip-in", "over-in", "out-in"], &w::INTO, |it| Some(it.into.into()));
    topic(["strip-loads", "over-loads", "out-loads"], &w::LOADS, |it| Some(it.loads[1].into()));
    topic(["strip-boards", "over-boards", "out-boards"], &w::BOARDS, |it| Some(it.boards.into()));
    topic(["strip-pails", "over-pails", "out-pails"], &w::PAILS, |it| Some(it.pails.into()));
    topic(["strip-days", "over-days", "out-days"], &w::DAYS, |it| Some(it.days.into()));
    topic(["strip-hours", "over-hours", "out-hours"], &w::HOURS, |it| Some(it.hours[1].into()));
    if answer.ways[0].money.is_some() {
        topic(["strip-money", "over-money", "out-money"], &w::MONEY, |it| {
            it.money.map(|it| it[1].into())
        });
    }
    let trim = say!(w::THREE, &w::TRIM_STRIP, &w::TRIM_OVER, &w::TRIM_OUT);
    rows.push(row((&w::TRIM).into(), trim));
    if input.boxes > 0 {
        let needed = answer.ways.each_ref().map(|it| {
            let check = at_most("box", (&w::BACK).into(), it.behind, most(Surface::Noncombustible));
            if check.verdict == Verdict::Within { 0 } else { input.boxes }
        });
        let [strip, over, out] = needed;
        rows.push(row((&w::EXTENDERS).into(), say!(w::THREE, strip, over, out)));
    }
    for (key, name, amount) in [
        ("carried", &w::CARRIED, answer.carried),
        ("torn", &w::TORN, answer.torn),
        ("heap-least", &w::HEAP_LEAST, answer.heap[0]),
        ("heap-most", &w::HEAP_MOST, answer.heap[1]),
    ] {
        figures.push(Figure::plain(key, name, amount.into()));
    }
    let least = (0..3).min_by_key(|at| answer.ways[*at].hours[1].millionths()).unwrap_or(0);
    let fewest = say!(w::FEWEST, Way::ALL[least].label());
    Sheet {
        headline: Figure::new("fewest", fewest, answer.ways[least].hours[1].into()),
        lead: None,
        next: Some((&w::NEXT).into()),
        figures,
        checks: checks(input, answer),
        working: answer.working.0.clone(),
        parts: parts(answer, rows),
        materials: Vec::new(),
        cautions: Caution::all(&[
            (&w::HOLDS_NOTE, None),
            (&w::ABOVE, None),
            (&w::LIFT, None),
            (&w::NEVER_BURY, None),
        ]),
        drawing: None,
    }
}

fn row(name: Text, value: Text) -> PartRow {
    PartRow { name, value, puts: Vec::new() }
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all = Vec::new();
    let keys: [[&str; 2]; 3] =
        [["strip-height", "strip-box"], ["over-height", "over-box"], ["out-height", "out-box"]];
    for (([height, behind], way), worked) in keys.into_iter().zip(Way::ALL).zip(&answer.ways) {
        // What stays as it is was there before.
        if worked.lost == Length::ZERO {
            continue;
        }
        let name = || say!(w::CHECK_HEIGHT, way.label());
        let any = at_least(height, name(), worked.height, ANY_ROOM);
        let lived_in = at_least(height, name(), worked.height, LIVED_IN);
        all.push(match (any.verdict, lived_in.verdict) {
            (Verdict::Over, _) => any,
            (_, Verdict::Over) => ask(lived_in, &w::ASK_LOW),
            _ => lived_in,
        });
        if input.boxes > 0 {
            let limit = most(Surface::Noncombustible);
            let check = at_most(behind, say!(w::CHECK_BOX, way.label()), worked.behind, limit);
            let is_over = check.verdict == Verdict::Over;
            all.push(if is_over { settle(check, &w::ASK_BOX) } else { check });
        }
    }
    // What opened the texture says nothing of the board under it.
    let board = Limit { value: 1, source: &UNSAID };
    let board = at_least("board-hold", (&w::CHECK_BOARD).into(), 0, board);
    all.push(settle(board, &w::ASK_BOARD));
    let limit = Limit { value: input.attic.dead(), source: &SCOPE };
    let check = at_most("joists", (&w::CHECK_JOISTS).into(), answer.carried, limit);
    // What isn't said may be heavier than what is left.
    let unsaid = [input.joists, input.insulation].contains(&None);
    all.push(match (check.verdict, unsaid) {
        (Verdict::Over, _) => settle(check, &w::ASK_JOISTS),
        (_, true) => {
            let note = Some(say!(w::ASK_LEFT, check.margin()));
            Check { verdict: Verdict::Ask, note, asks: Asks::First, ..check }
        }
        _ => check,
    });
    all
}

/// Three ends, or the one where they are the same.
fn three([low, likely, high]: [Amount; 3]) -> Text {
    if low == high { say!(w::ONE, likely) } else { say!(w::THREE, low, likely, high) }
}

fn parts(answer: &Answer, rows: Vec<PartRow>) -> Vec<Part> {
    let mut ranges = Vec::new();
    for (way, worked) in Way::ALL.iter().zip(&answer.ways) {
        let mut add = |name: &'static Phrase, ends: [Amount; 3]| {
            ranges.push(row(say!(w::OF, way.label(), name), three(ends)));
        };
        add(&w::HOURS, worked.hours.map(Amount::from));
        add(&w::OUT, worked.out.map(Amount::from));
        add(&w::LOADS, worked.loads.map(Amount::from));
        if let Some(money) = worked.money {
            add(&w::MONEY, money.map(Amount::from));
        }
    }
    vec![
        Part::plain("ways", &w::SIDE_BY_SIDE, Some(&w::ORDER), rows),
        holds(),
        Part::plain("ranges", &w::RANGES, None, ranges),
    ]
}

/// Which hold each way waits for.
pub(super) fn holds() -> Part {
    let (texture, board) = (Material::Texture.label(), Material::Board.label());
    let out = Deed::TearOut.label();
    let holds = [
        // Its skim coats are sanded.
        say!(
            w::HELD_BY_TWO,
            say!(w::HELD_BY, texture, Deed::Strip.label()),
            texture,
            Deed::Sand.label()
        ),
        say!(w::HELD_BY, texture, Deed::Cover.label()),
        say!(w::HELD_BY_TWO, say!(w::HELD_BY, texture, out), board, out),
    ];
    let holds = Way::ALL.iter().zip(holds).map(|(way, held)| row(way.label().into(), held));
    Part::plain("holds", &w::HOLDS, Some(&w::HOLDS_NOTE), holds.collect())
}
