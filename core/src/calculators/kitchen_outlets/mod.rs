//! Receptacles at kitchen counters, islands and peninsulas, by edition.

mod drawing;
mod sheet;
mod words;

use super::{Calculator, Trade};
use crate::edition::{Basis, Electrical};
use crate::fields::{Form, Item, Kind, Preset, Row, Span, When, row};
use crate::measure::{Length, Rounding, divide};
use crate::rules::electrical::counter_receptacles::{farthest, goes_on, is_counter, on_island};
use crate::sheet::{Caution, Fault, Faults, Sheet};
use crate::words::Phrase;
use crate::{choice, form};
use words as w;

/// The calculator.
#[derive(Debug)]
pub struct KitchenOutlets;

choice! {
    /// What comes after a piece of counter.
    pub enum End {
        /// Nothing that the counter goes on behind.
        Stop = "end", w::STOP;
        /// No counter behind it.
        Cold = "refrigerator", w::COLD;
        /// Along the wall.
        Sink = "sink", w::SINK;
        /// Across a corner.
        Corner = "corner", w::CORNER;
    }
}

choice! {
    /// What stands in the room.
    pub enum IslandKind {
        /// Free all round.
        Island = "island", w::ISLAND;
        /// One end at a wall or a counter.
        Peninsula = "peninsula", w::PENINSULA;
    }
}

const fn length(label: &'static Phrase, hint: &'static Phrase, least: i64) -> Row {
    let (least, most) = (Length::inches(least, 1), Length::inches(600, 1));
    row(label, hint, Kind::Length(Span { least, most, why: &w::WHY, common: &[], optional: false }))
}

form! {
    /// A piece of wall counter.
    pub struct Run {
        /// What it is called.
        name: String, row(&w::CALL, &w::NOTHING, Kind::Text(24));
        /// Along the wall.
        long: Option<Length>, length(&w::LONG, &w::NOTHING, 0).foremost(|_| true);
        /// What comes after it.
        end: End, row(&w::END, &w::NOTHING, Kind::Choice(End::PICKS));
        /// How wide that is.
        across: Option<Length>, length(&w::ACROSS, &w::NOTHING, 1).when(When::Is("end", &["sink", "corner"]));
        /// How deep the counter behind it is.
        behind: Length, length(&w::BEHIND, &w::NOTHING, 0).when(When::Is("end", &["sink", "corner"]));
    }
}

form! {
    /// An island or a peninsula.
    pub struct Island {
        /// Which.
        kind: IslandKind, row(&w::KIND, &w::NOTHING, Kind::Choice(IslandKind::PICKS));
        /// Its longer side.
        long: Option<Length>, length(&w::SIDE, &w::SIDE_HINT, 1).foremost(|_| true);
        /// Its shorter one.
        short: Option<Length>, length(&w::OTHER, &w::NOTHING, 1).foremost(|_| true);
    }
}

static RUNS: Item = Item {
    name: &w::RUN,
    rows: Run::ROWS,
    most: 10,
    blank: || Run::blank().write_parts(),
    presets: &[
        Preset { label: &w::SINK, sets: &[("end", "sink")] },
        Preset { label: &w::CORNER, sets: &[("end", "corner")] },
        Preset { label: &w::COLD, sets: &[("end", "refrigerator")] },
        Preset { label: &w::STOP, sets: &[("end", "end")] },
    ],
};

static ISLANDS: Item = Item {
    name: &w::ISLAND,
    rows: Island::ROWS,
    most: 4,
    blank: || Island::blank().write_parts(),
    presets: &[
        Preset { label: &w::ISLAND, sets: &[("kind", "island")] },
        Preset { label: &w::PENINSULA, sets: &[("kind", "peninsula")] },
    ],
};

form! {
    /// A kitchen's counters.
    pub struct Input {
        /// Along the walls.
        runs: Vec<Run>, row(&w::RUNS, &w::RUNS_HINT, Kind::List(&RUNS));
        /// In the room.
        islands: Vec<Island>, row(&w::ISLANDS, &w::NOTHING, Kind::List(&ISLANDS));
        /// Over the counter.
        above: Option<Length>, row(&w::HEIGHT, &w::HEIGHT_HINT, Kind::Length(Span {
            least: Length::ZERO, most: Length::inches(60, 1), why: &w::WHY, common: &[Length::inches(8, 1)], optional: true,
        })).aside();
        /// There now.
        have: Option<i64>, row(&w::HAVE, &w::NOTHING, Kind::Number(Span { least: 0, most: 60, why: &w::WHY, common: &[], optional: true }));
    }
    sample {
        runs: vec![
            Run { long: Some(Length::inches(60, 1)), end: End::Sink, across: Some(Length::inches(33, 1)), behind: Length::inches(3, 1), ..Run::blank() },
            Run { long: Some(Length::inches(42, 1)), end: End::Cold, ..Run::blank() },
        ],
        islands: vec![Island { long: Some(Length::inches(72, 1)), short: Some(Length::inches(36, 1)), ..Island::blank() }],
    }
}

/// A wall counter that nothing parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Space {
    /// Along the wall.
    pub long: Length,
    /// How many it needs.
    pub count: i64,
}

impl Space {
    /// Apart, evenly; nothing where there are none.
    pub fn share(&self) -> Length {
        if self.count > 0 { self.long.part(self.count) } else { Length::ZERO }
    }
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The edition it was worked under.
    pub edition: Electrical,
    /// Along the walls.
    pub spaces: Vec<Space>,
    /// On each island.
    pub islands: Vec<i64>,
    /// At wall counters.
    pub at_walls: i64,
    /// On islands and peninsulas.
    pub at_islands: i64,
}

impl Island {
    /// How many it needs, under an edition or the newest verified one.
    pub fn needed(&self, edition: Electrical) -> i64 {
        let (one, other) = (self.long.unwrap_or_default(), self.short.unwrap_or_default());
        // Whichever side was put in as the longer one.
        let (long, short) = (one.max(other), one.min(other));
        edition.or_newest(|edition| on_island(edition, long, short)).unwrap_or(0)
    }
}

impl Answer {
    /// All of them.
    pub fn needed(&self) -> i64 {
        self.at_walls + self.at_islands
    }
}

impl Calculator for KitchenOutlets {
    const ID: &'static str = "kitchen-outlets";
    const VERSION: u16 = 1;
    const TRADE: Trade = Trade::RoughIn;
    const NAME: &'static Phrase = &w::NAME;
    const ABOUT: &'static Phrase = &w::ABOUT;
    const ELECTRICAL: bool = true;
    const TELLS_PLACES: bool = true;
    type Input = Input;
    type Answer = Answer;

    fn sample() -> Input {
        Input::sample()
    }

    fn solve(input: &Input, basis: Basis) -> Result<Answer, Faults> {
        solve(input, basis.electrical.unwrap_or(Electrical::NEWEST_VERIFIED))
    }

    fn cautions(_: Option<&Input>) -> Vec<Caution> {
        Caution::all(&[(&w::DEAD, None), (&w::BELOW, None), (&w::GFCI, None), (&w::LICENSED, None)])
    }

    fn sheet(input: &Input, answer: &Answer, _: Basis) -> Sheet {
        sheet::sheet(input, answer)
    }
}

/// Counts a kitchen's counter receptacles under an edition.
///
/// - Wall counters: `⌈long ÷ 48 in⌉` of each space of 12 in or more; a space goes on behind a sink or
///   a range where enough counter lies there.
/// - Islands: by edition.
///
/// # Errors
/// Neither counter nor island.
pub fn solve(input: &Input, edition: Electrical) -> Result<Answer, Faults> {
    if input.runs.is_empty() && input.islands.is_empty() {
        let says = (&w::NO_COUNTER).into();
        let (path, label) = ("runs".to_owned(), &w::RUNS);
        return Err(vec![Fault { path, label, given: String::new(), says }]);
    }
    let apart = edition.or_newest(farthest).map_or(Length::ZERO, |limit| limit.value.times(2));
    let (mut spaces, mut long) = (Vec::new(), Length::ZERO);
    for (at, run) in input.runs.iter().enumerate() {
        long = long.plus(run.long.unwrap_or_default());
        let is_last = at + 1 == input.runs.len();
        let by_wall = matches!(run.end, End::Sink | End::Corner);
        if by_wall && !is_last && goes_on(run.behind, run.end == End::Corner) {
            long = long.plus(run.across.unwrap_or_default());
            continue;
        }
        let count = if is_counter(long) {
            let apart = apart.nanometres().max(1).into();
            divide(long.nanometres().into(), apart, Rounding::Up) as i64
        } else {
            0
        };
        spaces.push(Space { long, count });
        long = Length::ZERO;
    }
    let (mut islands, mut at_islands) = (Vec::new(), 0);
    for island in &input.islands {
        let count = island.needed(edition);
        at_islands += count;
        islands.push(count);
    }
    let at_walls = spaces.iter().map(|space| space.count).sum();
    Ok(Answer { edition, spaces, islands, at_walls, at_islands })
}

#[cfg(test)]
mod tests;
