//! The search over all lengths that the shop has, step by step, and what it comes to.

use super::input::{Input, Want};
use super::surface::{COUNTS, Ground, Run, under};
use super::words as w;
use crate::calculators::{Going, Progress};
use crate::layout::{Cut, Layout, Mixed, Search};
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
    /// All lengths together, where there are several.
    mixed: Option<Mixed>,
    stopped: bool,
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

/// A board as it is bought.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Size {
    /// Along it.
    pub long: Length,
    /// Across it.
    pub wide: Length,
}

/// A way of boarding it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// The longest board in it.
    pub stock: Length,
    /// By board, how wide it is and the shortest length that the shop has for what is cut from it.
    pub boards: Vec<Size>,
    /// Joints where two ends meet.
    pub joints: usize,
    /// No layout of this stock with as few joints has fewer boards.
    pub bound: usize,
    /// How little its joints are wanted where they are, as the search weighs it.
    pub shy: i64,
    /// With fewer joints, layouts of this stock take more boards.
    pub fewest_joints: bool,
    /// The pieces, row by row.
    pub pieces: Vec<Piece>,
}

impl Plan {
    /// All boards together.
    pub fn bought(&self) -> Area {
        self.boards.iter().fold(Area::ZERO, |sum, it| sum.plus(Area::of(it.wide, it.long)))
    }

    /// How many of one size.
    pub fn of(&self, size: Size) -> i64 {
        self.boards.iter().filter(|it| **it == size).count() as i64
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
    /// No layout of these rows buys less.
    pub least_bought: Area,
    /// How far the search has come.
    pub progress: Progress,
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
        let gets_in = |long: &Length| input.longest.is_none_or(|longest| *long <= longest);
        let lengths: Vec<Length> = lengths.into_iter().filter(gets_in).collect();
        for (at, long) in lengths.iter().enumerate() {
            if let Some(search) = Search::new(&ground.rows(input, *long, &lengths[..=at])) {
                stocks.push(Stock { long: *long, search, done: false });
            }
        }
        let mixed = lengths
            .last()
            .filter(|_| lengths.len() > 1)
            .and_then(|last| Mixed::new(&ground.rows(input, *last, &lengths)));
        let gets_in = !lengths.is_empty();
        match (stocks.is_empty(), gets_in) {
            (true, false) => Err(fault("longest", &w::LONGEST, &w::NONE_GETS_IN)),
            (true, true) => {
                let (path, label, _) = under(input);
                Err(fault(path, label, &w::NONE_REACHES))
            }
            _ => Ok(Self { input: input.clone(), ground, stocks, mixed, stopped: false }),
        }
    }

    fn done(&self) -> bool {
        self.stocks.iter().all(|it| it.done) && self.mixed.as_ref().is_none_or(Mixed::is_done)
    }

    /// No layout of these rows buys less.
    fn least_bought(&self) -> Area {
        let widths = self.input.board.widths();
        let narrowest = widths.first().copied().unwrap_or_default();
        if let Some(mixed) = &self.mixed {
            // Of both, by what each counts.
            let one = if widths.len() > 1 { narrowest.part(COUNTS[0]) } else { narrowest };
            return Area::of(one, Length::from_nanometres(mixed.lowest()));
        }
        let one = |it: &Stock| Area::of(narrowest, it.long.times(it.search.lowest() as i64));
        self.stocks.first().map_or(Area::ZERO, one)
    }

    /// What was found of all lengths together: fewer boards no layout has of the longest, whatever
    /// of it is bought shorter.
    fn of_all(&self) -> Option<Plan> {
        let Stock { long, search, .. } = self.stocks.last()?;
        let layout = self.mixed.as_ref()?.found()?;
        // What is proven of the longest alone holds for it too, with no more joints or boards.
        let mut bound = search.lowest();
        let mut fewest = layout.joints == search.lowest_joints();
        for found in search.found().iter().filter(|it| it.layout.joints >= layout.joints) {
            bound = bound.max(found.bound);
            fewest |= found.fewest_joints && found.layout.boards >= layout.boards;
        }
        Some(self.plan(*long, &layout, bound, fewest))
    }

    fn plan(&self, stock: Length, layout: &Layout, bound: usize, fewest_joints: bool) -> Plan {
        let mut pieces = Vec::new();
        let mut boards = vec![([Length::ZERO; 3], Length::ZERO); layout.boards];
        for cut in &layout.cuts {
            let Cut { row, board, lane, .. } = *cut;
            let along = [cut.from, cut.to].map(Length::from_nanometres);
            let run =
                self.ground.runs.iter().find(|run| {
                    run.row == row && run.along[0] <= along[0] && along[1] <= run.along[1]
                });
            if let Some(run) = run {
                pieces.push(Piece { run: *run, along, board, lane });
                boards[board].1 = run.board;
            }
            let used = &mut boards[board].0[lane];
            *used = used.plus(along[1].minus(along[0]));
        }
        let lengths = self.input.stock.lengths();
        let shortest = |([whole, one, two], wide): ([Length; 3], Length)| {
            let used = whole.plus(one.max(two));
            let long = lengths.iter().copied().find(|long| *long >= used).unwrap_or(stock);
            Size { long, wide }
        };
        Plan {
            stock,
            boards: boards.into_iter().map(shortest).collect(),
            joints: layout.joints,
            bound,
            shy: layout.shy,
            fewest_joints,
            pieces,
        }
    }
}

/// Tries of a look that is over before a key is up.
const SHORT: u32 = 15_000;

/// The plan of the fewest boards that a short look finds, all of one length, and what it covers.
///
/// # Errors
/// As of [`super::solve`]; nothing found in so short a look.
pub fn fewest(input: &Input, long: Length) -> Result<(Plan, Ground), Faults> {
    let mut looking = Looking::of(input, vec![long])?;
    for stock in &mut looking.stocks {
        stock.search.step(SHORT);
    }
    for Stock { search, .. } in &looking.stocks {
        if let Some(found) = search.found().last() {
            let plan = looking.plan(long, &found.layout, found.bound, found.fewest_joints);
            return Ok((plan, looking.ground));
        }
    }
    Err(fault("spacing", &w::SPACING, &w::NONE_FOUND))
}

/// Which of two plans is wanted more: the less of what comes first. Of as many boards and joints, the
/// one whose joints are where they are wanted goes before the one that buys less.
fn rank(want: Want, plan: &Plan) -> [i128; 5] {
    let (boards, joints) = (plan.count().into(), plan.joints as i128);
    let (bought, stock) = (plan.bought().square_nanometres(), plan.stock.nanometres().into());
    let shy = plan.shy.into();
    match want {
        Want::Boards => [boards, joints, shy, bought, stock],
        Want::Near | Want::Joints => [joints, boards, shy, bought, stock],
        Want::Light => [stock, boards, joints, shy, bought],
        Want::Bought => [bought, joints, boards, shy, stock],
    }
}

impl Going<Answer> for Looking {
    fn step(&mut self) -> bool {
        if let Some(stock) = self.stocks.iter_mut().find(|it| !it.done) {
            stock.done = stock.search.step(TRIES);
        } else if let Some(mixed) = &mut self.mixed {
            mixed.step(TRIES);
        }
        self.stopped = false;
        self.done()
    }

    fn progress(&self) -> Progress {
        match self.stopped {
            _ if self.done() => Progress::Whole,
            true => Progress::Stopped,
            false => Progress::Going,
        }
    }

    fn stop(&mut self, stopped: bool) {
        self.stopped = stopped;
    }

    fn answer(&self) -> Result<Answer, Faults> {
        let (mut all, mut by_length): (Vec<Plan>, Vec<(Plan, bool)>) = (Vec::new(), Vec::new());
        for stock in &self.stocks {
            let mut last = None;
            for found in stock.search.found() {
                all.extend(last.take());
                let plan = |it| self.plan(stock.long, it, found.bound, found.fewest_joints);
                all.extend(found.thrifty.as_ref().map(plan));
                last = Some(plan(&found.layout));
            }
            if let Some(plan) = last {
                let fewest = plan.boards.len() == stock.search.lowest();
                by_length.push((plan.clone(), fewest));
                all.push(plan);
            }
        }
        all.extend(self.of_all());
        let fewest = all.iter().map(Plan::count).min().unwrap_or(0);
        let mut plans = Vec::new();
        for &want in Want::ALL {
            let fits = |plan: &&Plan| want != Want::Near || plan.count() <= fewest + 1;
            let best = all.iter().filter(fits).min_by_key(|plan| rank(want, plan));
            plans.extend(best.cloned());
        }
        if plans.is_empty() {
            let says = if self.done() { &w::NONE_FOUND } else { &w::NOTHING_YET };
            let (path, label, _) = under(&self.input);
            return Err(fault(path, label, says));
        }
        let (ground, least_bought) = (self.ground.clone(), self.least_bought());
        let progress = self.progress();
        Ok(Answer { ground, plans, by_length, least_bought, progress })
    }
}

impl Answer {
    /// The plan that is wanted.
    pub fn plan(&self, want: Want) -> &Plan {
        let at = Want::ALL.iter().position(|it| *it == want).unwrap_or(0);
        &self.plans[at]
    }

    /// Factory edges between rows, end to end.
    pub fn seams(&self) -> Length {
        self.ground.tapered()
    }
}

impl Plan {
    /// Pieces that end in a joint.
    pub fn jointed(&self) -> impl Iterator<Item = &Piece> {
        self.pieces.iter().filter(|it| it.along[1] < it.run.along[1])
    }

    /// End joints in the middle third, along the boards.
    pub fn in_middle(&self, ground: &Ground) -> i64 {
        self.jointed().filter(|it| ground.is_middle(it.along[1])).count() as i64
    }

    /// Boards that are used from end to end, from 0: cut to their whole length, or whole against a
    /// wall. One that hangs whole between two joints has framing to give, and one that ends `open` over
    /// a floor has the gap.
    pub fn tight(&self, open: Option<Length>) -> Vec<usize> {
        let tight = |(board, size): (usize, &Size)| {
            let own = || self.pieces.iter().filter(|it| it.board == board);
            let sum = |lane: usize| {
                let cut = own().filter(|it| it.lane == lane);
                cut.fold(Length::ZERO, |sum, it| sum.plus(it.along[1].minus(it.along[0])))
            };
            let is_used = sum(0).plus(sum(1).max(sum(2))) == size.long;
            let at_wall = |it: &Piece| {
                let ends = [it.along[0] == it.run.along[0], it.along[1] == it.run.along[1]];
                ends.contains(&true) && open != Some(it.along[1])
            };
            (is_used && (own().count() > 1 || own().any(at_wall))).then_some(board)
        };
        self.boards.iter().enumerate().filter_map(tight).collect()
    }

    /// End joints, end to end.
    pub fn ends(&self, ground: &Ground) -> Length {
        let mut sum = Length::ZERO;
        for piece in self.jointed() {
            sum = sum.plus(ground.joint(&piece.run, piece.along[1]));
        }
        sum
    }

    /// Screws: on each member under a piece, its two ends with it, one at each edge and no more
    /// than `apart` between. Of pieces that run along joists, on each of these and on both edges.
    pub fn screws(&self, ground: &Ground, apart: Length, along_joists: bool) -> i64 {
        let mut sum = 0;
        for Piece { run, along, .. } in &self.pieces {
            let across = ground.across(run, *along);
            let (members, lies, goes) = match along_joists {
                true => (&ground.behind, across, *along),
                false => (&ground.stops, *along, across),
            };
            let inside = members.iter().filter(|at| **at > lies[0] && **at < lies[1]);
            let goes = goes[1].minus(goes[0]).nanometres();
            let lines = inside.count() as i64 + 2;
            sum +=
                lines * (divide(goes.into(), apart.nanometres().into(), Rounding::Up) as i64 + 1);
        }
        sum
    }
}
