//! The count as it is shown.

use super::drawing::drawing;
use super::words as w;
use super::{Answer, Calculator, Input, IslandKind, KitchenOutlets, Space};
use crate::edition::Electrical;
use crate::measure::Area;
use crate::rules::compare::{Limit, at_least, at_most, unverified};
use crate::rules::electrical::counter_height::most;
use crate::rules::electrical::counter_receptacles::{ISLANDS, WALLS, farthest};
use crate::say;
use crate::sheet::{Check, Expr, Figure, Part, PartRow, Sheet, Step};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let count = |key, name: &'static Phrase, count| Figure::plain(key, name, Amount::Count(count));
    let [is_island, is_peninsula] = kinds(input);
    let later = match answer.edition {
        Electrical::E2017 => None,
        Electrical::E2020 => is_peninsula.then_some(&w::NEXT_2020),
        Electrical::E2023 | Electrical::E2026 if is_island => Some(&w::NEXT_LATER),
        Electrical::E2023 | Electrical::E2026 => is_peninsula.then_some(&w::NEXT_LATER_PENINSULA),
    };
    let next = match later {
        Some(later) => say!(w::BOTH, &w::NEXT_WALLS, later),
        None => (&w::NEXT_WALLS).into(),
    };
    let checks = checks(input, answer);
    Sheet {
        headline: count("needed", &w::NEEDED, answer.needed()),
        lead: input.have.map(|_| 0),
        next: Some(next),
        figures: vec![
            count("walls", &w::AT_WALLS, answer.at_walls),
            count(
                "islands",
                said_of(input, [&w::AT_ISLAND, &w::AT_PENINSULA, &w::AT_ISLANDS]),
                answer.at_islands,
            ),
        ],
        checks,
        working: working(input, answer),
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions: KitchenOutlets::cautions(None),
        drawing: drawing(answer),
    }
}

/// Whether there are islands, and peninsulas.
fn kinds(input: &Input) -> [bool; 2] {
    [IslandKind::Island, IslandKind::Peninsula]
        .map(|kind| input.islands.iter().any(|island| island.kind == kind))
}

/// Words for islands alone, for peninsulas alone, or for both: nobody reads of what isn't there.
fn said_of(input: &Input, [islands, peninsulas, both]: [&'static Phrase; 3]) -> &'static Phrase {
    match kinds(input) {
        [_, false] => islands,
        [false, true] => peninsulas,
        [true, true] => both,
    }
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all = Vec::new();
    let mut add = |check: Check, is_known| {
        all.push(if is_known { check } else { unverified(check) });
    };
    let edition = answer.edition;
    if let Some(have) = input.have {
        let limit = Limit { value: answer.needed(), source: &WALLS };
        let check = at_least("have", (&w::CHECK_HAVE).into(), have, limit);
        add(check, farthest(edition).is_some());
    }
    if let (Some(above), Some(limit)) = (input.above, edition.or_newest(most)) {
        let check = at_most("above", (&w::CHECK_HIGH).into(), above, limit);
        add(check, most(edition).is_some());
    }
    all
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut all = Vec::new();
    let mut step = |key: String, name, expr, source| {
        all.push(Step { key, name, expr, source: Some(source) });
    };
    let numbered = |name: &str, at: usize| [name, &(at + 1).to_string()].concat();
    if let Some(limit) = answer.edition.or_newest(farthest) {
        for (at, space) in answer.spaces.iter().enumerate() {
            if space.count > 0 {
                let apart = Expr::count(2).times(Expr::length(limit.value));
                let expr = Expr::RoundUp(Box::new(Expr::length(space.long).over(apart)));
                step(numbered("space-", at), say!(w::STEP, at as i64 + 1), expr, limit.source);
            }
        }
    }
    for (at, island) in input.islands.iter().enumerate() {
        let sides = (island.long.unwrap_or_default(), island.short.unwrap_or_default());
        let area = Area::of(sides.0, sides.1);
        let past = Expr::area(area).less(Expr::area(Area::square_feet(9)));
        let is_2020 = answer.edition == Electrical::E2020;
        if is_2020 && area > Area::square_feet(9) {
            let shares = past.over(Expr::area(Area::square_feet(18)));
            let expr = Expr::Sum(vec![Expr::count(1), Expr::RoundUp(Box::new(shares))]);
            let name = say!(w::STEP_ISLAND, island.kind.label(), at as i64 + 1);
            step(numbered("island-", at), name, expr, &ISLANDS);
        }
    }
    let sum = [answer.at_walls, answer.at_islands].map(Expr::count).to_vec();
    let source = if answer.spaces.is_empty() { &ISLANDS } else { &WALLS };
    step("needed".to_owned(), (&w::NEEDED).into(), Expr::Sum(sum), source);
    all
}

/// How many, and where.
pub(super) fn told(space: &Space) -> Text {
    match space.count {
        0 => (&w::SHORT).into(),
        1 => say!(w::ONE, space.share().part(2)),
        count => say!(w::EVENLY, count, space.share().part(2), space.share()),
    }
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let row = |name, value| PartRow { name, value, puts: Vec::new() };
    let mut rows = Vec::new();
    for (at, space) in answer.spaces.iter().enumerate() {
        rows.push(row(say!(w::SPACE, at as i64 + 1, space.long), told(space)));
    }
    for (at, (island, count)) in input.islands.iter().zip(&answer.islands).enumerate() {
        let name = say!(w::ISLAND_OF, island.kind.label(), at as i64 + 1);
        rows.push(row(name, say!(w::COUNT, *count)));
    }
    let mut all = vec![Part::plain("spaces", &w::SPACES, None, rows)];
    if !input.islands.is_empty() {
        let mut rows = Vec::new();
        for edition in Electrical::VERIFIED {
            let count = input.islands.iter().map(|island| island.needed(edition)).sum::<i64>();
            rows.push(row(edition.name().into(), say!(w::COUNT, count)));
        }
        let note = said_of(input, [&w::NOTE_ISLAND, ISLANDS.says, ISLANDS.says]);
        let title =
            said_of(input, [&w::BY_EDITION_ISLAND, &w::BY_EDITION_PENINSULA, &w::BY_EDITION]);
        let (title, note) = (title.into(), Some(note.into()));
        all.push(Part::new("editions", title, note, rows));
    }
    all
}
