//! The search: for each number of end joints from the fewest on, the fewest boards.
//!
//! A bound says how few boards so many joints need at least; climbs look for a layout that meets
//! it. What meets it is proven. The search goes on by steps and ends by their count, never by
//! time, so that one question has one answer; between steps it can be asked what it has.

use super::bound::{Cutting, Prices, Same};
use super::climb::{Best, Climb, Ground, Settle, Spot};
use super::ways::{LEVELS, Ways};
use super::{Layout, Rows};

/// Tries of one climb.
const TRIES: u32 = 20_000;
/// Tries for a first layout of one number of joints.
const ROUGH: u32 = 300;
/// Climbs for one number of joints.
const STARTS: u64 = 6;
/// Steps to better weights, and after how many the bound is worked again.
const STEPS: u32 = 200;
const LOOK: u32 = 10;
/// Ways of cutting that a step to better weights may look at for what one try costs.
const CUTS_A_TRY: usize = 150;
/// Tries in all, for runs that come to no more than [`FULL`] stock boards of 12 ft; past that a
/// few, so that a large surface still has an answer at once.
const TOTAL: u32 = 700_000;
const TOTAL_LARGE: u32 = 8_000;
/// A room of 30 by 40 ft: ten rows of 40 ft.
const FULL: i64 = 400 * 12 * 25_400_000;
/// Tries for each layout to have its joints where they are wanted more.
pub(super) const SETTLE: u32 = 1_000;
/// Numbers of joints for which the bound isn't met before the search ends.
const MISSES: u32 = 4;

/// Fewest boards for a count of joints.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Found {
    /// The layout.
    pub layout: Layout,
    /// As many boards and joints, where joints in better places buy more board: the one that buys
    /// less.
    pub thrifty: Option<Layout>,
    /// No layout with as few joints has fewer boards than this.
    pub bound: usize,
    /// No layout of as few boards has fewer joints.
    pub fewest_joints: bool,
}

#[derive(Clone, Debug)]
enum Stage {
    /// Toward a bound.
    Price {
        prices: Prices,
        step: u32,
    },
    /// Toward a layout that meets it.
    Climb {
        climb: Climb,
        start: u64,
    },
    /// Toward the last layout with one joint less.
    Less {
        climb: Climb,
        start: u64,
    },
    /// Toward joints where they are wanted more, of one layout after another.
    Settle {
        settle: Settle,
        at: usize,
    },
    Done,
}

/// A search under way.
#[derive(Clone, Debug)]
pub struct Search {
    rows: Rows,
    ground: Ground,
    cuttings: Vec<Cutting>,
    stage: Stage,
    /// Pieces over the fewest that are looked at now; `None` at the start, for any number.
    over: Option<usize>,
    /// So many are needed at least, to keep joints out of line.
    needed: usize,
    /// No layout at all has fewer boards.
    lowest: usize,
    /// No layout with what is over now has fewer.
    bound: usize,
    /// What was proven: with no more than so many pieces over, no fewer boards than this.
    bounds: Vec<(usize, usize)>,
    best: Option<Best>,
    last: Option<Best>,
    misses: u32,
    /// Tries that are left in all, and what a step to better weights counts.
    left: u32,
    step: u32,
    rough: Vec<Found>,
    front: Vec<Found>,
    /// The layouts of the front.
    bests: Vec<Best>,
}

impl Search {
    /// None where there is no run, or one can't be broken by the rules.
    pub fn new(rows: &Rows) -> Option<Self> {
        let ground = Ground::of(rows, false)?;
        let mut cuttings = Vec::new();
        for width in 0..ground.counts.len() {
            let of = ground.lengths.iter().copied().enumerate();
            let own: Vec<_> = of.filter(|it| ground.widths[it.0] == width).collect();
            cuttings.push(Cutting::new(rows.stock, &own));
        }
        let cuts: usize = cuttings.iter().map(Cutting::cuts).sum();
        let all: i64 = rows.runs.iter().map(|run| run.to - run.from).sum();
        let prices = Prices::new(rows.stock, &ground.lengths, &ground.widths);
        let mut search = Self {
            step: 1 + (cuts / CUTS_A_TRY) as u32,
            left: if all <= FULL { TOTAL } else { TOTAL_LARGE },
            cuttings,
            rows: rows.clone(),
            needed: needed(&ground),
            ground,
            stage: Stage::Price { prices, step: 0 },
            over: None,
            lowest: by_area(rows),
            bound: 0,
            bounds: Vec::new(),
            best: None,
            last: None,
            misses: 0,
            rough: Vec::new(),
            front: Vec::new(),
            bests: Vec::new(),
        };
        search.any();
        Some(search)
    }

    /// What was found so far: the fewest joints first, each with the fewest boards; then fewer
    /// boards for more joints. At first, one that keeps the rules and no more.
    pub fn found(&self) -> &[Found] {
        if self.front.is_empty() { &self.rough } else { &self.front }
    }

    /// Any layout that keeps the rules, so that there is something to show at once.
    fn any(&mut self) {
        let last = self.needed + self.ground.spots.len();
        let climbs = (self.needed..=last).map(|over| Climb::new(&self.ground, over, 0));
        for mut climb in climbs {
            while climb.best.is_none() && climb.steps < ROUGH {
                climb.step(&self.ground);
            }
            if let Some(best) = climb.best {
                let layout = self.layout(&best);
                let (boards, joints) = (layout.boards, layout.joints);
                if boards <= self.lowest && joints <= self.lowest_joints() {
                    let found = Found { layout, thrifty: None, bound: boards, fewest_joints: true };
                    self.push(found, best);
                    self.settle(0);
                } else {
                    let bound = self.lowest;
                    let fewest_joints = false;
                    self.rough.push(Found { layout, thrifty: None, bound, fewest_joints });
                }
                return;
            }
        }
    }

    fn push(&mut self, found: Found, best: Best) {
        self.front.push(found);
        self.bests.push(best);
    }

    /// Goes through what was found from there on.
    fn settle(&mut self, from: usize) {
        self.stage = Stage::Done;
        for (at, best) in self.bests.iter().enumerate().skip(from) {
            if let Some(settle) = Settle::new(&self.ground, best) {
                self.stage = Stage::Settle { settle, at };
                return;
            }
        }
    }

    fn settling(&mut self) {
        let Stage::Settle { settle, at } = &mut self.stage else { return };
        if settle.steps() < SETTLE {
            settle.step(&self.ground);
            return;
        }
        let at = *at;
        let layout = self.ground.layout(&self.rows, &settle.best);
        let thrifty = settle.thrifty().map(|it| self.ground.layout(&self.rows, it));
        (self.front[at].layout, self.front[at].thrifty) = (layout, thrifty);
        self.settle(at + 1);
    }

    /// No layout has fewer boards.
    pub fn lowest(&self) -> usize {
        self.lowest
    }

    /// No layout has fewer joints.
    pub fn lowest_joints(&self) -> usize {
        let fewest = |it: &Spot| self.ground.ways[it.ways].fewest - 1;
        self.ground.spots.iter().map(fewest).sum::<usize>() + self.needed
    }

    /// Goes on for so many tries; true when it is done.
    pub fn step(&mut self, tries: u32) -> bool {
        let mut left = tries;
        while left > 0 {
            let mut cost = 1;
            match self.stage {
                Stage::Done => return true,
                Stage::Price { .. } => {
                    self.price();
                    cost = self.step;
                }
                Stage::Climb { .. } => self.climb(),
                Stage::Less { .. } => self.less(),
                Stage::Settle { .. } => self.settling(),
            }
            left = left.saturating_sub(cost);
            self.left = self.left.saturating_sub(cost);
            // One layout is looked for to the end, whatever it takes.
            let ends = self.left == 0 && !self.front.is_empty();
            if ends && !matches!(self.stage, Stage::Settle { .. } | Stage::Done) {
                self.settle(0);
            }
        }
        matches!(self.stage, Stage::Done)
    }

    /// Fewer boards than this are no use.
    fn most(&self) -> usize {
        self.front.last().map_or(usize::MAX, |it| it.layout.boards - 1)
    }

    fn same(ground: &Ground) -> Vec<Same<'_>> {
        let mut all: Vec<Same<'_>> =
            ground.ways.iter().map(|ways| Same { ways, width: 0, runs: [0, 0] }).collect();
        for spot in &ground.spots {
            all[spot.ways].width = spot.width;
            all[spot.ways].runs[usize::from(spot.thin)] += 1;
        }
        all
    }

    fn price(&mut self) {
        let Stage::Price { prices, step } = &mut self.stage else { return };
        let over = self.over.unwrap_or(usize::MAX);
        let same = Self::same(&self.ground);
        let goal = prices.proves.ceil() + 0.2;
        prices.step(&same, &self.cuttings, over, goal);
        *step += 1;
        let done = *step == STEPS;
        if *step % LOOK != 0 {
            return;
        }
        let bound = prices.bound(&same, &self.cuttings, over).max(self.lowest);
        if self.over.is_none() {
            self.lowest = bound;
            if done {
                self.next(self.needed);
            }
            return;
        }
        self.bound = self.bound.max(bound);
        // Nothing that is any use can be found.
        let no_use = self.bound > self.most();
        if no_use || done {
            self.bounds.push((over, self.bound));
        }
        if no_use {
            self.next(over + 1);
        } else if done {
            self.stage = Stage::Climb { climb: Climb::new(&self.ground, over, 0), start: 0 };
        }
    }

    fn next(&mut self, over: usize) {
        let last = self.ground.spots.len() * (LEVELS - 1);
        if self.most() < self.lowest || over > last || self.misses > MISSES {
            self.stage = Stage::Done;
            self.begin_less(0);
            return;
        }
        self.over = Some(over);
        self.bound = 0;
        self.best = None;
        let prices = Prices::new(self.rows.stock, &self.ground.lengths, &self.ground.widths);
        self.stage = Stage::Price { prices, step: 0 };
    }

    fn climb(&mut self) {
        let Stage::Climb { climb, start } = &mut self.stage else { return };
        let over = self.over.unwrap_or(0);
        let met = |best: &Option<Best>| best.as_ref().is_some_and(|best| best.boards <= self.bound);
        if !met(&climb.best) && climb.steps < TRIES {
            climb.step(&self.ground);
            return;
        }
        let boards = |best: &Option<Best>| best.as_ref().map_or(usize::MAX, |best| best.boards);
        if boards(&climb.best) < boards(&self.best) {
            self.best = climb.best.take();
        }
        *start += 1;
        if !met(&self.best) && *start < STARTS {
            *climb = Climb::new(&self.ground, over, *start);
            return;
        }
        let met = met(&self.best);
        if let Some(best) = self.best.take().filter(|best| best.boards <= self.most()) {
            let layout = self.layout(&best);
            self.last = Some(best.clone());
            let bound = if met { layout.boards } else { self.bound };
            let fewest_joints = self.proves_joints(&layout);
            self.push(Found { layout, thrifty: None, bound, fewest_joints }, best);
            self.misses = 0;
        }
        self.misses += u32::from(!met);
        // Further on in longer steps: what is found there is then tried with fewer joints.
        self.next(over + 1 + self.misses as usize / 2);
    }

    /// The fewest boards may do with fewer joints than were found in passing.
    fn begin_less(&mut self, start: u64) {
        let open = self.front.last().is_some_and(|it| !it.fewest_joints);
        let climb = self.last.as_ref().and_then(|last| Climb::less(&self.ground, last, start));
        match climb {
            Some(climb) if open && start < 3 * STARTS => self.stage = Stage::Less { climb, start },
            _ => self.settle(0),
        }
    }

    fn less(&mut self) {
        let Stage::Less { climb, start } = &mut self.stage else { return };
        let boards = self.last.as_ref().map_or(0, |last| last.boards);
        match climb.best.take_if(|best| best.boards <= boards) {
            None if climb.steps < TRIES => climb.step(&self.ground),
            None => {
                let next = *start + 1;
                self.begin_less(next);
            }
            Some(best) => {
                let layout = self.layout(&best);
                self.last = Some(best.clone());
                // Those that it beats go.
                while self.front.last().is_some_and(|it| it.layout.joints >= layout.joints) {
                    self.front.pop();
                    self.bests.pop();
                }
                let bound = self.lowest;
                let fewest_joints = self.proves_joints(&layout);
                self.push(Found { layout, thrifty: None, bound, fewest_joints }, best);
                self.begin_less(0);
            }
        }
    }

    /// Whether with fewer joints there are more boards.
    fn proves_joints(&self, layout: &Layout) -> bool {
        let over = layout.joints + self.needed - self.lowest_joints();
        let proven = |&(known, bound): &(usize, usize)| known + 1 >= over && bound > layout.boards;
        over == self.needed || self.bounds.iter().any(proven)
    }

    fn layout(&self, best: &Best) -> Layout {
        self.ground.layout(&self.rows, best)
    }
}

/// All runs of one width end to end, twice over: what is thin comes two from one board.
pub(super) fn twice(rows: &Rows, width: usize) -> i64 {
    let own = rows.runs.iter().filter(|run| run.width == width);
    own.map(|run| (run.to - run.from) * if run.thin { 1 } else { 2 }).sum()
}

/// Boards that hold as much as there is of each width.
pub fn by_area(rows: &Rows) -> usize {
    let each = 2 * rows.stock;
    let one = |width| ((twice(rows, width) + each - 1) / each) as usize;
    (0..rows.widths.len().max(1)).map(one).sum()
}

/// Pieces over the fewest that are needed at least: of two runs that touch, where all ways with
/// the fewest pieces of both have a joint in line, one takes a piece more.
pub(super) fn needed(ground: &Ground) -> usize {
    let fewest: Vec<_> = ground.ways.iter().map(Ways::all_of_fewest).collect();
    let mut taken = vec![false; ground.spots.len()];
    let mut needed = 0;
    for (run, spot) in ground.spots.iter().enumerate() {
        for &other in spot.beside.iter().filter(|other| **other > run) {
            let (Some(one), Some(two)) = (&fewest[spot.ways], &fewest[ground.spots[other].ways])
            else {
                continue;
            };
            let apart = one.iter().any(|one| two.iter().any(|two| one & two == 0));
            if !apart && !taken[run] && !taken[other] {
                (taken[run], taken[other]) = (true, true);
                needed += 1;
            }
        }
    }
    needed
}

/// The whole search. Empty where no layout keeps the rules.
pub fn search(rows: &Rows) -> Vec<Found> {
    let Some(mut search) = Search::new(rows) else { return Vec::new() };
    while !search.step(u32::MAX) {}
    search.front
}
