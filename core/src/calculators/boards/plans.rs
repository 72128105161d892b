//! The search over all lengths that the shop has, step by step, and what it comes to.

use super::input::{Input, Want};
use super::surface::{Ground, Run};
use super::words as w;
use crate::calculators::Going;
use crate::layout::{Cut, Found, Search};
use crate::measure::{Area, Length, Rounding, divide};
use crate::sheet::{Fault, Faults};
use crate::words::Phrase;

/// Tries of one step: some milliseconds in a browser on a phone.
const TRIES: u32 = 500;

/// Boards of one length.
#[derive(Clone, Debug)]
struct Stock {
    long: Length,
    search: Search,
    done: bool,
}

/// The search under way.
#[derive(Clone, Debug)]
pub struct Looking {
    input: Input,
    ground: Ground,
    stocks: Vec<Stock>,
}

/// A piece as it hangs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Piece {
    /// The run that it hangs in.
    pub run: Run,
    /// Along the boards.
    pub along: [Length; 2],
    /// Which board it is cut from, from 0.
    pub board: usize,
    /// 0 across the whole width; 1 or 2 for a strip of what is ripped in two.
    pub lane: usize,
}

/// A way of boarding it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// The longest board in it.
    pub stock: Length,
    /// By board, the shortest length that the shop has for what is cut from it.
    pub boards: Vec<Length>,
    /// Joints where two ends meet.
    pub joints: usize,
    /// No layout of this stock with as few joints has fewer boards.
    pub bound: usize,
    /// With fewer joints, layouts of this stock take more boards.
    pub fewest_joints: bool,
    /// The pieces, row by row.
    pub pieces: Vec<Piece>,
}

impl Plan {
    /// All boards end to end.
    pub fn bought(&self) -> Length {
        self.boards.iter().fold(Length::ZERO, |sum, long| sum.plus(*long))
    }

    /// How many boards.
    pub fn count(&self) -> i64 {
        self.boards.len() as i64
    }
}

/// What comes out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// What is boarded.
    pub ground: Ground,
    /// Plans by what is wanted, each the best of those found, in the order of [`Want::ALL`].
    pub plans: Vec<Plan>,
    /// By stock length: the plan with the fewest boards, and whether no layout takes fewer.
    pub by_length: Vec<(Plan, bool)>,
    /// The search has ended.
    pub done: bool,
}

fn fault(path: &str, label: &'static Phrase, says: &'static Phrase) -> Faults {
    vec![Fault { path: path.to_owned(), label, given: String::new(), says: says.into() }]
}

impl Looking {
    pub(super) fn new(input: &Input) -> Result<Self, Faults> {
        Self::of(input, input.stock.lengths())
    }

    fn of(input: &Input, lengths: Vec<Length>) -> Result<Self, Faults> {
        let ground = Ground::new(input)?;
        if lengths.is_empty() {
            return Err(fault("stock", &w::STOCK, &w::NO_LENGTH));
        }
        let mut stocks = Vec::new();
        let mut gets_in = false;
        for long in lengths {
            if input.longest.is_some_and(|longest| long > longest) {
                continue;
            }
            gets_in = true;
            if let Some(search) = Search::new(&ground.rows(input, long)) {
                stocks.push(Stock { long, search, done: false });
            }
        }
        match (stocks.is_empty(), gets_in) {
            (true, false) => Err(fault("longest", &w::LONGEST, &w::NONE_GETS_IN)),
            (true, true) => Err(fault("spacing", &w::SPACING, &w::NONE_REACHES)),
            _ => Ok(Self { input: input.clone(), ground, stocks }),
        }
    }

    fn done(&self) -> bool {
        self.stocks.iter().all(|it| it.done)
    }

    fn plan(&self, stock: Length, found: &Found) -> Plan {
        let mut pieces = Vec::new();
        let mut boards = vec![[Length::ZERO; 3]; found.layout.boards];
        for cut in &found.layout.cuts {
            let Cut { row, board, lane, .. } = *cut;
            let along = [cut.from, cut.to].map(Length::from_nanometres);
            let run =
                self.ground.runs.iter().find(|run| {
                    run.row == row && run.along[0] <= along[0] && along[1] <= run.along[1]
                });
            if let Some(run) = run {
                pieces.push(Piece { run: *run, along, board, lane });
            }
            let used = &mut boards[board][lane];
            *used = used.plus(along[1].minus(along[0]));
        }
        let lengths = self.input.stock.lengths();
        let shortest = |[whole, one, two]: [Length; 3]| {
            let used = whole.plus(one.max(two));
            lengths.iter().copied().find(|long| *long >= used).unwrap_or(stock)
        };
        Plan {
            stock,
            boards: boards.into_iter().map(shortest).collect(),
            joints: found.layout.joints,
            bound: found.bound,
            fewest_joints: found.fewest_joints,
            pieces,
        }
    }
}

/// Tries of a look that is over before a key is up.
const SHORT: u32 = 60_000;

/// The fewest boards that a short look finds, all of one length, for whoever needs no more than
/// their count; and whether no layout takes fewer.
///
/// # Errors
/// As of [`super::solve`]; nothing found in so short a look.
pub fn fewest(input: &Input, long: Length) -> Result<(i64, bool), Faults> {
    for Stock { mut search, .. } in Looking::of(input, vec![long])?.stocks {
        search.step(SHORT);
        if let Some(found) = search.found().last() {
            let boards = found.layout.boards;
            return Ok((boards as i64, boards == search.lowest()));
        }
    }
    Err(fault("spacing", &w::SPACING, &w::NONE_FOUND))
}

/// Which of two plans is wanted more: the less of what comes first.
fn rank(want: Want, plan: &Plan) -> [i64; 4] {
    let (boards, joints) = (plan.count(), plan.joints as i64);
    let (bought, stock) = (plan.bought().nanometres(), plan.stock.nanometres());
    match want {
        Want::Boards => [boards, joints, bought, stock],
        Want::Near | Want::Joints => [joints, boards, bought, stock],
        Want::Light => [stock, boards, joints, bought],
        Want::Bought => [bought, joints, boards, stock],
    }
}

impl Going<Answer> for Looking {
    fn step(&mut self) -> bool {
        if let Some(stock) = self.stocks.iter_mut().find(|it| !it.done) {
            stock.done = stock.search.step(TRIES);
        }
        self.done()
    }

    fn answer(&self) -> Result<Answer, Faults> {
        let (mut all, mut by_length): (Vec<Plan>, Vec<(Plan, bool)>) = (Vec::new(), Vec::new());
        for stock in &self.stocks {
            let found = stock.search.found();
            all.extend(found.iter().map(|found| self.plan(stock.long, found)));
            if let Some(found) = found.last() {
                let fewest = found.layout.boards == stock.search.lowest();
                by_length.push((self.plan(stock.long, found), fewest));
            }
        }
        let fewest = all.iter().map(Plan::count).min().unwrap_or(0);
        let mut plans = Vec::new();
        for &want in Want::ALL {
            let fits = |plan: &&Plan| want != Want::Near || plan.count() <= fewest + 1;
            let best = all.iter().filter(fits).min_by_key(|plan| rank(want, plan));
            plans.extend(best.cloned());
        }
        if plans.is_empty() {
            let says = if self.done() { &w::NONE_FOUND } else { &w::NOTHING_YET };
            return Err(fault("spacing", &w::SPACING, says));
        }
        Ok(Answer { ground: self.ground.clone(), plans, by_length, done: self.done() })
    }
}

impl Answer {
    /// The plan that is wanted.
    pub fn plan(&self, want: Want) -> &Plan {
        let at = Want::ALL.iter().position(|it| *it == want).unwrap_or(0);
        &self.plans[at]
    }

    /// What all of it measures: the runs, less what is cut out.
    pub fn area(&self) -> Area {
        let corners = self.ground.outline.iter();
        let next = self.ground.outline.iter().cycle().skip(1);
        let mut twice = Area::ZERO;
        for (one, other) in corners.zip(next) {
            twice = twice.plus(Area::of(one[0], other[1])).minus(Area::of(other[0], one[1]));
        }
        let half = Area::from_square_nanometres(twice.square_nanometres().abs() / 2);
        let hole = |sum: Area, [along, across]: &[[Length; 2]; 2]| {
            sum.minus(Area::of(along[1].minus(along[0]), across[1].minus(across[0])))
        };
        self.ground.holes.iter().fold(half, hole)
    }

    /// Factory edges between rows, end to end.
    pub fn seams(&self) -> Length {
        let mut sum = Length::ZERO;
        for run in &self.ground.runs {
            for next in self.ground.runs.iter().filter(|next| next.row == run.row + 1) {
                let from = run.along[0].max(next.along[0]);
                let to = run.along[1].min(next.along[1]);
                sum = sum.plus(to.minus(from).max(Length::ZERO));
            }
        }
        sum
    }
}

impl Plan {
    /// End joints, end to end.
    pub fn ends(&self, ground: &Ground) -> Length {
        let mut sum = Length::ZERO;
        for piece in &self.pieces {
            if piece.along[1] < piece.run.along[1] {
                sum = sum.plus(ground.joint(&piece.run, piece.along[1]));
            }
        }
        sum
    }

    /// Screws: on each member under a piece, its two ends with it, one at each edge and no more
    /// than `apart` between.
    pub fn screws(&self, ground: &Ground, apart: Length) -> i64 {
        let mut sum = 0;
        for Piece { run, along, .. } in &self.pieces {
            let inside = ground.stops.iter().filter(|at| **at > along[0] && **at < along[1]);
            let [top, bottom] = ground.across(run, *along);
            let across = bottom.minus(top).nanometres();
            let lines = inside.count() as i64 + 2;
            sum +=
                lines * (divide(across.into(), apart.nanometres().into(), Rounding::Up) as i64 + 1);
        }
        sum
    }
}
