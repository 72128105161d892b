//! The least board bought, of several lengths together.
//!
//! Each board is as short as what is cut from it allows; layouts are changed as when boards are
//! counted, and what counts is all boards end to end, the wider ones for more. No layout buys less than
//! the least sum of lengths that holds all runs of each width: what meets that is proven.

use super::climb::{Best, Climb, Ground, Settle};
use super::search::{SETTLE, needed, twice};
use super::{Layout, Rows};

/// Tries of one climb, climbs for one number of joints, and numbers of joints over the fewest.
const TRIES: u32 = 4_000;
const STARTS: u64 = 2;
const OVER: usize = 4;
/// Past so many runs fewer tries, so that a large surface has an answer soon.
const MANY: usize = 16;

/// A search under way.
#[derive(Clone, Debug)]
pub struct Mixed {
    rows: Rows,
    ground: Ground,
    needed: usize,
    tries: u32,
    climb: Climb,
    /// Climbs that were begun.
    begun: u64,
    settle: Option<Settle>,
    best: Option<Best>,
    lowest: i64,
    done: bool,
}

impl Mixed {
    /// `rows` with the longest length as its stock, and all of them as its sizes. None where there
    /// is no run, or one can't be broken by the rules.
    pub fn new(rows: &Rows) -> Option<Self> {
        let ground = Ground::of(rows, true)?;
        let needed = needed(&ground);
        Some(Self {
            climb: Climb::new(&ground, needed, 0),
            lowest: lowest(rows, &ground.counts),
            tries: if rows.runs.len() > MANY { TRIES / 8 } else { TRIES },
            rows: rows.clone(),
            ground,
            needed,
            begun: 1,
            settle: None,
            best: None,
            done: false,
        })
    }

    /// No layout buys less: all boards end to end, each times what its width counts.
    pub fn lowest(&self) -> i64 {
        self.lowest
    }

    /// The search has ended.
    pub fn is_done(&self) -> bool {
        self.done
    }

    /// Goes on for so many tries; true when it is done.
    pub fn step(&mut self, tries: u32) -> bool {
        for _ in 0..tries {
            match &mut self.settle {
                _ if self.done => break,
                Some(settle) if settle.steps() < SETTLE => settle.step(&self.ground),
                Some(settle) => {
                    self.best = Some(settle.best.clone());
                    self.done = true;
                }
                None => self.climb(),
            }
        }
        self.done
    }

    fn climb(&mut self) {
        let met = |best: &Option<Best>| best.as_ref().is_some_and(|it| it.worth <= self.lowest);
        if self.climb.steps < self.tries && !met(&self.climb.best) {
            self.climb.step(&self.ground);
            return;
        }
        let worth = |best: &Option<Best>| best.as_ref().map_or(i64::MAX, |best| best.worth);
        if worth(&self.climb.best) < worth(&self.best) {
            self.best = self.climb.best.take();
        }
        let over = (self.begun / STARTS) as usize;
        if over < OVER && !met(&self.best) {
            self.climb = Climb::new(&self.ground, self.needed + over, self.begun % STARTS);
            self.begun += 1;
            return;
        }
        self.settle = self.best.as_ref().and_then(|best| Settle::new(&self.ground, best));
        self.done = self.settle.is_none();
    }

    /// What was found.
    pub fn found(&self) -> Option<Layout> {
        self.best.as_ref().map(|best| self.ground.layout(&self.rows, best))
    }
}

/// What has to be bought of each width at least, as it counts.
pub(super) fn lowest(rows: &Rows, counts: &[i64]) -> i64 {
    let one =
        |(width, count): (usize, &i64)| count * least(&rows.sizes, (twice(rows, width) + 1) / 2);
    counts.iter().enumerate().map(one).sum()
}

/// The least sum of sizes that is no less than `needed`; that itself where sizes have too little in
/// common to try all sums.
fn least(sizes: &[i64], needed: i64) -> i64 {
    const MOST: i64 = 10_000;
    let common = sizes.iter().fold(0, |common, size| divisor(common, *size));
    if common == 0 || needed / common > MOST {
        return needed;
    }
    let goal = ((needed + common - 1) / common) as usize;
    let last = sizes.last().map_or(0, |last| (last / common) as usize);
    let mut sums = vec![false; goal + last + 1];
    sums[0] = true;
    for sum in 0..sums.len() {
        if sums[sum] && sum >= goal {
            return sum as i64 * common;
        }
        let reached = sums[sum];
        for size in sizes.iter().filter(|_| reached) {
            if let Some(next) = sums.get_mut(sum + (size / common) as usize) {
                *next = true;
            }
        }
    }
    needed
}

fn divisor(one: i64, other: i64) -> i64 {
    if one == 0 { other } else { divisor(other % one, one) }
}

#[cfg(test)]
mod tests {
    use super::super::Run;
    use super::super::tests::check;
    use super::*;

    /// In tenths of an inch: 15 x 13 ft over 24 in, of 12 and 16 ft. By hand: two rows of a 16 ft
    /// board each, the third of 144 and 36 in from two of 12 ft, and the strip beside the 36 in
    /// lanes of 72 and 108.
    #[test]
    fn a_strip_comes_from_what_a_shorter_board_leaves() {
        let run = |row, thin| Run { row, from: 0, to: 1800, thin, width: 0 };
        let rows = Rows {
            runs: vec![run(0, false), run(1, false), run(2, false), run(3, true)],
            stops: (1..8).map(|at| at * 240).collect(),
            stock: 1920,
            least: 240,
            sizes: vec![1440, 1920],
            ..Rows::default()
        };
        let mut mixed = Mixed::new(&rows).unwrap();
        while !mixed.step(100) {}
        let layout = mixed.found().unwrap();
        check(&rows, &layout);
        assert_eq!((layout.boards, layout.joints), (4, 2));
        assert_eq!(mixed.best.as_ref().map(|best| best.worth), Some(mixed.lowest()));
        assert_eq!(mixed.lowest(), 2 * 1920 + 2 * 1440);
    }

    /// By hand: of 8 and 12 no sum is 4, 6 or 10.
    #[test]
    fn the_least_sum_holds_what_is_needed() {
        assert_eq!([1, 8, 9, 13, 17].map(|needed| least(&[8, 12], needed)), [8, 8, 12, 16, 20]);
        assert_eq!(least(&[], 7), 7);
        assert_eq!(least(&[10_007, 10_009], 400_000_000), 400_000_000);
    }
}
