//! Fewest boards by weights: no way of cutting gets more than one board's weight out of a board.
//!
//! Any weights prove a bound: what all runs weigh at least, over what a board can hold at most.
//! The weights that prove most are the prices of the linear program of cutting stock (Gilmore and
//! Gomory, "A linear programming approach to the cutting-stock problem", Operations Research 9
//! (1961), from memory). They are looked for in floats, step by step; the bound is then worked
//! again in whole numbers, so that no rounding can prove what isn't so.

use super::ways::{LEVELS, Ways};

/// Sums of lengths that one board's cutting is looked at by; beyond, lengths are rounded down.
const MOST_SUMS: usize = 3000;
/// Parts of a board where they are rounded.
const PARTS: i64 = 1024;

/// All that can be left of a board, and what can be cut from that.
#[derive(Clone, Debug)]
pub(super) struct Cutting {
    /// By what is left, rising: the number of a length, and what is then left.
    on: Vec<Vec<(usize, usize)>>,
}

impl Cutting {
    pub(super) fn new(stock: i64, lengths: &[i64]) -> Self {
        Self::of(stock, lengths).unwrap_or_else(|| {
            let parts: Vec<i64> = lengths.iter().map(|it| it * PARTS / stock).collect();
            Self::of(PARTS, &parts).unwrap_or(Self { on: Vec::new() })
        })
    }

    fn of(stock: i64, lengths: &[i64]) -> Option<Self> {
        let mut all = vec![stock];
        let mut at = 0;
        while let Some(&left) = all.get(at) {
            at += 1;
            for length in lengths {
                let next = left - length;
                if next >= 0 && !all.contains(&next) {
                    all.push(next);
                }
            }
            if all.len() > MOST_SUMS {
                return None;
            }
        }
        all.sort_unstable();
        let mut on = Vec::new();
        for left in &all {
            let mut cuts = Vec::new();
            for (number, length) in lengths.iter().enumerate() {
                if let Ok(next) = all.binary_search(&(left - length)) {
                    cuts.push((number, next));
                }
            }
            on.push(cuts);
        }
        Some(Self { on })
    }

    /// How many sums are looked at.
    #[cfg(test)]
    pub(super) fn sums(&self) -> usize {
        self.on.len()
    }

    /// The most that can be got out of a board, and by which lengths.
    fn most<W: super::ways::Weigh>(&self, weights: &[W]) -> (W, Vec<usize>) {
        let mut most: Vec<(W, Option<(usize, usize)>)> = Vec::with_capacity(self.on.len());
        for cuts in &self.on {
            let mut best = (W::default(), None);
            for &(length, next) in cuts {
                let sum = most[next].0 + weights[length];
                if sum > best.0 {
                    best = (sum, Some((length, next)));
                }
            }
            most.push(best);
        }
        let mut way = Vec::new();
        let mut at = most.len().checked_sub(1);
        while let Some((length, next)) = at.and_then(|at| most[at].1) {
            way.push(length);
            at = Some(next);
        }
        (most.last().map_or(W::default(), |it| it.0), way)
    }
}

/// Runs that are the same but for where they stand.
#[derive(Clone, Debug)]
pub(super) struct Same<'a> {
    pub(super) ways: &'a Ways,
    /// Of a board's full width, and of those that come two from a board.
    pub(super) runs: [usize; 2],
}

/// The least that all runs weigh with no more than so many pieces over the fewest, twice over: a
/// thin run counts half. Beside it, how often each length is in it.
fn least<W: super::ways::Weigh>(
    same: &[Same<'_>],
    weights: &[W],
    over: usize,
    counts: &mut Vec<f64>,
) -> Option<W> {
    // Each run is one step; steps are told apart by run and pieces over.
    let mut steps: Vec<(usize, bool)> = Vec::new();
    let all: Vec<_> = same.iter().map(|it| it.ways.least(weights)).collect();
    for (number, it) in same.iter().enumerate() {
        steps.extend((0..it.runs[0]).map(|_| (number, false)));
        steps.extend((0..it.runs[1]).map(|_| (number, true)));
    }
    let over = over.min(steps.len() * (LEVELS - 1));
    let mut now: Vec<Option<W>> = vec![Some(W::default()); over + 1];
    let mut chosen: Vec<Vec<usize>> = Vec::new();
    for &(number, thin) in &steps {
        let mut next: Vec<Option<W>> = vec![None; over + 1];
        let mut how = vec![0; over + 1];
        for at in 0..=over {
            for (more, least) in all[number].iter().enumerate().take(at + 1) {
                let (Some(rest), Some((weighs, _))) = (now[at - more], least) else { continue };
                let sum = if thin { rest + *weighs } else { rest + *weighs + *weighs };
                if next[at].is_none_or(|it| sum < it) {
                    next[at] = Some(sum);
                    how[at] = more;
                }
            }
        }
        now = next;
        chosen.push(how);
    }
    counts.clear();
    counts.resize(weights.len(), 0.0);
    let mut at = over;
    for (&(number, thin), how) in steps.iter().zip(&chosen).rev() {
        if let Some((_, way)) = all[number].get(how[at]).and_then(Option::as_ref) {
            for length in way {
                counts[*length] += if thin { 0.5 } else { 1.0 };
            }
        }
        at -= how[at];
    }
    now[over]
}

/// Looking for weights that prove that more than so many boards are needed.
#[derive(Clone, Debug)]
pub(super) struct Prices {
    weights: Vec<f64>,
    pub(super) best: Vec<f64>,
    /// The share of boards that the best prove.
    pub(super) proves: f64,
    way: Vec<f64>,
}

impl Prices {
    pub(super) fn new(stock: i64, lengths: &[i64]) -> Self {
        let weights: Vec<f64> = lengths.iter().map(|it| *it as f64 / stock as f64).collect();
        Self { best: weights.clone(), way: vec![0.0; weights.len()], weights, proves: 0.0 }
    }

    /// One step up, toward so many boards.
    pub(super) fn step(&mut self, same: &[Same<'_>], cutting: &Cutting, over: usize, goal: f64) {
        let (most, board) = cutting.most(&self.weights);
        if most <= 0.0 {
            return;
        }
        for weight in &mut self.weights {
            *weight /= most;
        }
        let mut rise = Vec::new();
        let Some(twice) = least(same, &self.weights, over, &mut rise) else { return };
        let proves = twice / 2.0;
        if proves > self.proves {
            self.proves = proves;
            self.best.clone_from(&self.weights);
        }
        for length in board {
            rise[length] -= proves;
        }
        // The way of the last step is kept in part, so that steps don't swing.
        let (mut all, mut turn) = (0.0, 0.0);
        for (rise, way) in rise.iter().zip(&self.way) {
            turn += rise * way;
            all += way * way;
        }
        let keep = if turn < 0.0 && all > 0.0 { -1.5 * turn / all } else { 0.0 };
        let mut length = 0.0;
        for (way, rise) in self.way.iter_mut().zip(&rise) {
            *way = rise + keep * *way;
            length += *way * *way;
        }
        if length <= 0.0 {
            return;
        }
        let step = (goal - proves).max(0.02) / length;
        for (weight, way) in self.weights.iter_mut().zip(&self.way) {
            *weight = (*weight + step * way).max(0.0);
        }
    }

    /// Boards that are needed at least, proven in whole numbers.
    pub(super) fn bound(&self, same: &[Same<'_>], cutting: &Cutting, over: usize) -> usize {
        let whole: Vec<i64> = self.best.iter().map(|it| (it * 1_000_000_000.0) as i64).collect();
        let (most, _) = cutting.most(&whole);
        match least(same, &whole, over, &mut Vec::new()) {
            Some(twice) if most > 0 => ((twice + 2 * most - 1) / (2 * most)) as usize,
            _ => 0,
        }
    }
}
