//! Fewest boards by weights: no way of cutting gets more than one board's weight out of a board.
//!
//! Any weights prove a bound: what all runs weigh at least, over what a board can hold at most.
//! The weights that prove most are the prices of the linear program of cutting stock (Gilmore and
//! Gomory, "A linear programming approach to the cutting-stock problem", Operations Research 9
//! (1961), from memory). They are looked for step by step; the bound is then worked again
//! with whole weights small enough that floats add them exactly, so that no rounding can prove what
//! isn't so.

use super::ways::{LEVELS, Ways};

/// Sums of lengths that one board's cutting is looked at by; beyond, lengths are rounded down.
const MOST_SUMS: usize = 3000;
/// A board weighs so much, in whole numbers.
const WHOLE: f64 = 1_000_000_000.0;
/// Parts of a board where they are rounded, or more if the shortest length needs them.
const PARTS: i64 = 1024;

/// All that can be left of a board, and what can be cut from that.
#[derive(Clone, Debug)]
pub(super) struct Cutting {
    /// By what is left, rising: the number of a length, and what is then left.
    on: Vec<Vec<(usize, usize)>>,
}

impl Cutting {
    /// Of boards of one width: `lengths` has those alone, with their numbers.
    pub(super) fn new(stock: i64, lengths: &[(usize, i64)]) -> Self {
        Self::of(stock, lengths).unwrap_or_else(|| {
            // A length of no part could be cut without end: a board too fine for it proves nothing.
            let shortest = lengths.iter().map(|it| it.1).min().unwrap_or(1);
            let parts = PARTS.max((stock + shortest - 1) / shortest);
            let part = |it: &(usize, i64)| (it.0, it.1 * parts / stock);
            let rounded: Vec<(usize, i64)> = lengths.iter().map(part).collect();
            let is_fine = parts >= MOST_SUMS as i64;
            let of = if is_fine { None } else { Self::of(parts, &rounded) };
            of.unwrap_or(Self { on: Vec::new() })
        })
    }

    fn of(stock: i64, lengths: &[(usize, i64)]) -> Option<Self> {
        // Kept in order from the start; the longest that is left is looked at first.
        let mut all = vec![stock];
        let mut at = 1_usize;
        while let Some(next) = at.checked_sub(1) {
            let left = all[next];
            at = next;
            for (_, length) in lengths {
                let next = left - length;
                if next >= 0
                    && let Err(place) = all.binary_search(&next)
                {
                    all.insert(place, next);
                    at += 1;
                }
            }
            if all.len() > MOST_SUMS {
                return None;
            }
        }
        let mut on = Vec::new();
        for left in &all {
            let mut cuts = Vec::new();
            for (number, length) in lengths {
                if let Ok(next) = all.binary_search(&(left - length)) {
                    cuts.push((*number, next));
                }
            }
            on.push(cuts);
        }
        Some(Self { on })
    }

    /// Ways of cutting one piece more.
    pub(super) fn cuts(&self) -> usize {
        self.on.iter().map(Vec::len).sum()
    }

    /// How many sums are looked at.
    #[cfg(test)]
    pub(super) fn sums(&self) -> usize {
        self.on.len()
    }

    /// The most that can be got out of a board, and by which lengths.
    pub(super) fn most(&self, weights: &[f64]) -> (f64, Vec<usize>) {
        let mut most: Vec<(f64, Option<(usize, usize)>)> = Vec::with_capacity(self.on.len());
        for cuts in &self.on {
            let mut best = (0.0, None);
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
        (most.last().map_or(0.0, |it| it.0), way)
    }
}

/// Runs that are the same but for where they stand.
#[derive(Clone, Debug)]
pub(super) struct Same<'a> {
    pub(super) ways: &'a Ways,
    /// Which width their boards are.
    pub(super) width: usize,
    /// Of a board's full width, and of those that come two from a board.
    pub(super) runs: [usize; 2],
}

/// The least that all runs weigh, of one width or of all, by how many pieces over the fewest they may
/// have, from none to `over` or to all that can be; twice over: a thin run counts half. Beside it, how
/// often each length is in the last.
fn least(
    same: &[Same<'_>],
    width: Option<usize>,
    weights: &[f64],
    over: usize,
    counts: &mut Vec<f64>,
) -> Vec<Option<f64>> {
    // Each run is one step; steps are told apart by run and pieces over.
    let mut steps: Vec<(usize, bool)> = Vec::new();
    let all: Vec<_> = same.iter().map(|it| it.ways.least(weights)).collect();
    let here = |it: &Same<'_>| width.is_none_or(|width| it.width == width);
    for (number, it) in same.iter().enumerate().filter(|(_, it)| here(it)) {
        steps.extend((0..it.runs[0]).map(|_| (number, false)));
        steps.extend((0..it.runs[1]).map(|_| (number, true)));
    }
    let over = over.min(steps.len() * (LEVELS - 1));
    let mut now: Vec<Option<f64>> = vec![Some(0.0); over + 1];
    let mut chosen: Vec<Vec<usize>> = Vec::new();
    for &(number, thin) in &steps {
        let mut next: Vec<Option<f64>> = vec![None; over + 1];
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
    now
}

/// Looking for weights that prove that more than so many boards are needed.
#[derive(Clone, Debug)]
pub(super) struct Prices {
    weights: Vec<f64>,
    pub(super) best: Vec<f64>,
    /// The share of boards that the best prove.
    pub(super) proves: f64,
    way: Vec<f64>,
    /// Of each length, which width its boards are.
    widths: Vec<usize>,
}

impl Prices {
    pub(super) fn new(stock: i64, lengths: &[i64], widths: &[usize]) -> Self {
        let widths = widths.to_vec();
        let weights: Vec<f64> = lengths.iter().map(|it| *it as f64 / stock as f64).collect();
        Self { best: weights.clone(), way: vec![0.0; weights.len()], weights, proves: 0.0, widths }
    }

    /// One step up, toward so many boards. `cuttings` has one of each width.
    pub(super) fn step(&mut self, same: &[Same<'_>], cuttings: &[Cutting], over: usize, goal: f64) {
        let mut boards = Vec::new();
        for (width, cutting) in cuttings.iter().enumerate() {
            let (most, board) = cutting.most(&self.weights);
            // A width that no row has proves nothing and hides nothing.
            if !self.widths.contains(&width) {
                boards.push(board);
                continue;
            }
            if most <= 0.0 {
                return;
            }
            for (weight, own) in self.weights.iter_mut().zip(&self.widths) {
                if *own == width {
                    *weight /= most;
                }
            }
            boards.push(board);
        }
        let mut rise = Vec::new();
        let all = least(same, None, &self.weights, over, &mut rise);
        let Some(Some(twice)) = all.last().copied() else { return };
        let proves = twice / 2.0;
        if proves > self.proves {
            self.proves = proves;
            self.best.clone_from(&self.weights);
        }
        // What each width's boards prove of it.
        let mut shares = vec![proves; boards.len()];
        if let [first, rest @ ..] = &mut *shares {
            for (at, share) in rest.iter_mut().enumerate() {
                let own = |it: &(&f64, &f64, usize)| it.2 == at + 1;
                let all = rise.iter().zip(&self.weights).zip(&self.widths);
                let all = all.map(|((rise, weight), width)| (rise, weight, *width));
                *share = all.filter(own).map(|(rise, weight, _)| rise * weight).sum();
                *first -= *share;
            }
        }
        for (board, share) in boards.iter().zip(&shares) {
            for length in board {
                rise[*length] -= share;
            }
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

    /// Boards that are needed at least, proven in whole numbers: of each width by itself, and what may
    /// be over goes where it is worth most.
    pub(super) fn bound(&self, same: &[Same<'_>], cuttings: &[Cutting], over: usize) -> usize {
        // Sums stay far below 2^53.
        let whole: Vec<f64> = self.best.iter().map(|it| (it * WHOLE).floor()).collect();
        // By how many pieces are over in the widths so far.
        let runs: usize = same.iter().map(|it| it.runs[0] + it.runs[1]).sum();
        let mut all = vec![0_usize; over.min(runs * (LEVELS - 1)) + 1];
        for (width, cutting) in cuttings.iter().enumerate() {
            let (most, _) = cutting.most(&whole);
            let of = |twice: &Option<f64>| match twice {
                Some(twice) if most > 0.0 => {
                    let (twice, most) = (*twice as i64, 2 * most as i64);
                    ((twice + most - 1) / most) as usize
                }
                _ => 0,
            };
            let own: Vec<usize> =
                least(same, Some(width), &whole, over, &mut Vec::new()).iter().map(of).collect();
            let last = own.len() - 1;
            let with = |at: usize| (0..=at).map(|here| own[here.min(last)] + all[at - here]).min();
            all = (0..all.len()).map(|at| with(at).unwrap_or(0)).collect();
        }
        all.last().copied().unwrap_or(0)
    }
}
