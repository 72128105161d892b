//! The search: for each number of end joints from the fewest on, the fewest boards.
//!
//! Rows are chosen one after the other from all ways of breaking them, those that weigh least
//! first; when all are chosen, their pieces are packed. It ends by a count of nodes, never by
//! time, so that one question has one answer.

use super::bound::{Weight, weights};
use super::pack::{Cuts, Piece, pack};
use super::{Cut, Layout, Rows, Strip};

/// Ways of breaking a row that are looked at for each count of pieces.
const MOST_WAYS: usize = 2000;
/// Counts of pieces of a row that are tried: the fewest, and so many less one more.
const LEVELS: usize = 3;
/// Work in one search: a way of breaking a row looked at.
const WORK: u32 = 1_000_000;
/// The share of it that one count of joints may take.
const SHARE: u32 = 200_000;
/// What placing a piece counts.
const PLACING: u32 = 64;
/// Pieces that one exact packing may place.
const PACKING: u32 = 200;

/// Fewest boards for a count of joints.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Found {
    /// The layout.
    pub layout: Layout,
    /// No layout with as few joints has fewer boards than this.
    pub bound: usize,
}

/// A way of breaking a row.
#[derive(Clone, Debug)]
struct Way {
    /// Joints, a bit for each stop.
    joints: u64,
    /// What its pieces weigh, by each weight.
    weighs: Vec<i64>,
}

/// All ways with one count of pieces.
#[derive(Debug)]
struct Level {
    ways: Vec<Way>,
    /// All of them are here.
    whole: bool,
}

struct Search<'a> {
    rows: &'a Rows,
    /// Pieces in a row at least.
    fewest: usize,
    levels: Vec<Level>,
    /// What a board weighs, twice over: a strip's pieces count half.
    board: Vec<i64>,
    /// By weight, rows still to come and pieces over the fewest: the least they weigh.
    rest: Vec<Vec<Vec<i64>>>,
    chosen: Vec<(usize, usize)>,
    nodes: u32,
    share: u32,
    /// Two rows that touch can both have the fewest pieces.
    apart: bool,
    /// Everything was looked at so far.
    whole: bool,
    best: Option<(usize, Vec<u64>, Cuts)>,
    goal: usize,
    failed: Vec<(usize, Vec<i64>)>,
}

/// The front: the fewest joints first, each with the fewest boards found; then fewer boards for
/// more joints, to the fewest boards. Empty where no layout keeps the rules.
pub fn search(rows: &Rows) -> Vec<Found> {
    let mut front: Vec<Found> = Vec::new();
    let Some(mut search) = Search::new(rows) else { return front };
    let count = rows.count();
    let most = search.levels.len() - 1;
    // One more piece in every second row always gets round a shared joint where it can be.
    let lowest = search.bound(usize::MAX);
    search.apart = search.two_apart();
    let first = if search.apart { 0 } else { count / 2 };
    for over in first..=(most * count) {
        let bound = search.bound(over);
        let at_most = front.last().map_or(usize::MAX, |found| found.layout.boards - 1);
        if bound > at_most {
            continue;
        }
        let (found, whole) = search.least_boards(over, bound, at_most);
        if let Some(layout) = found {
            let bound = if whole { layout.boards } else { bound };
            front.push(Found { layout, bound });
        }
        let enough = front.last().is_some_and(|found| found.layout.boards <= lowest);
        if enough || (over >= count + 2 && !front.is_empty()) {
            break;
        }
    }
    front
}

impl<'a> Search<'a> {
    fn new(rows: &'a Rows) -> Option<Self> {
        let Rows { long, stock, least, ref stops, .. } = *rows;
        let mut ends = vec![0];
        ends.extend(stops);
        ends.push(long);
        let mut lengths: Vec<i64> = Vec::new();
        for (at, from) in ends.iter().enumerate() {
            for to in ends.iter().skip(at + 1) {
                let length = to - from;
                if length >= least.min(long) && length <= stock && !lengths.contains(&length) {
                    lengths.push(length);
                }
            }
        }
        let (fewest, leasts) = leasts_of(rows, &ends, &Weight::Length)?;
        let most = leasts.len() - 1;
        let mut search = Search {
            rows,
            fewest,
            levels: Vec::new(),
            board: Vec::new(),
            rest: Vec::new(),
            chosen: Vec::new(),
            nodes: WORK,
            share: 0,
            apart: true,
            whole: true,
            best: None,
            goal: 0,
            failed: Vec::new(),
        };
        // Of all weights those that say most for some count of pieces.
        let mut kept: Vec<Weight> = Vec::new();
        let mut said: Vec<i64> = vec![-1; most * rows.count() + 1];
        let mut known = Vec::new();
        for weight in weights(&lengths, stock) {
            let (_, leasts) = leasts_of(rows, &ends, &weight)?;
            let board = 2 * weight.board(stock);
            let rest = search.rests(&leasts);
            let mut better = false;
            for (said, rest) in said.iter_mut().zip(&rest[rows.count()]) {
                let says = rest.saturating_mul(1000) / board;
                if says > *said {
                    *said = says;
                    better = true;
                }
            }
            if better {
                known.push((weight, board, rest));
            }
        }
        for (weight, board, rest) in known {
            let says = rest[rows.count()].iter().zip(&said);
            let tells = says.clone().any(|(rest, said)| rest.saturating_mul(1000) / board == *said);
            if tells || weight == Weight::Length {
                kept.push(weight);
                search.board.push(board);
                search.rest.push(rest);
            }
        }
        for more in 0..=most {
            search.levels.push(level(rows, &ends, fewest + more, &kept));
        }
        Some(search)
    }

    /// Whether two rows that touch can both have the fewest pieces.
    fn two_apart(&self) -> bool {
        let Some(Level { ways, whole }) = self.levels.first() else { return false };
        !whole || ways.iter().any(|one| ways.iter().any(|other| one.joints & other.joints == 0))
    }

    /// What the last row counts: one where two come from a board, else two.
    fn factor(&self, row: usize) -> i64 {
        let strip = self.rows.strip == Strip::Paired && row + 1 == self.rows.count();
        if strip { 1 } else { 2 }
    }

    /// By rows still to come and pieces over the fewest, the least that they weigh.
    fn rests(&self, leasts: &[i64]) -> Vec<Vec<i64>> {
        let count = self.rows.count();
        let most = (leasts.len() - 1) * count;
        let mut all = vec![vec![0_i64; most + 1]];
        for left in 1..=count {
            let factor = self.factor(count - left);
            let before = &all[left - 1];
            let mut now = vec![i64::MAX; most + 1];
            for (over, now) in now.iter_mut().enumerate() {
                for (more, least) in leasts.iter().enumerate().take(over + 1) {
                    *now = (*now)
                        .min(before[over - more].saturating_add(factor.saturating_mul(*least)));
                }
            }
            all.push(now);
        }
        all
    }

    /// Fewest boards by weight, with no more than so many pieces over the fewest.
    fn bound(&self, over: usize) -> usize {
        let count = self.rows.count();
        let mut most = 0;
        for (board, rest) in self.board.iter().zip(&self.rest) {
            let over = over.min(rest[count].len() - 1);
            most = most.max((rest[count][over] + board - 1) / board);
        }
        most as usize
    }

    /// The fewest boards found with so many pieces over the fewest, and whether no fewer will do.
    fn least_boards(&mut self, over: usize, goal: usize, most: usize) -> (Option<Layout>, bool) {
        self.best = None;
        self.goal = goal;
        let kept = self.nodes.saturating_sub(SHARE);
        self.nodes -= kept;
        self.failed.clear();
        let mut most = most.min(self.rows.count() * (self.fewest + self.levels.len()));
        let mut share = 1;
        loop {
            self.whole = true;
            self.share = share;
            self.choose(over, &mut most, &vec![0; self.board.len()]);
            let done = self.best.as_ref().is_some_and(|(boards, ..)| *boards <= goal);
            if done || self.whole || self.nodes == 0 {
                let whole = done || self.whole;
                self.nodes += kept;
                let best = self.best.take();
                return (best.map(|best| self.layout(best)), whole);
            }
            share += share / 2 + 1;
        }
    }

    /// Chooses the next row; looks for no more than `most` boards and lowers it when it finds them.
    fn choose(&mut self, over: usize, most: &mut usize, weighs: &[i64]) {
        let (row, count) = (self.chosen.len(), self.rows.count());
        if row == count {
            self.try_packing(most);
            return;
        }
        let before = row.checked_sub(1).map_or(0, |last| self.joints(last));
        let factor = self.factor(row);
        let twice = row.checked_sub(2).map(|at| self.chosen[at]);
        let levels = self.levels.len();
        let mut left = self.share;
        let after = count - row - 1;
        // What is over goes evenly to the rows, nearest share first.
        let even = over.div_ceil(after + 1);
        let mut order: Vec<usize> = (0..levels.min(over + 1)).collect();
        order.sort_by_key(|more| more.abs_diff(even));
        for more in order {
            // Where rows of the fewest pieces can't touch, every second one takes one more.
            let needed = if self.apart { 0 } else { (after + usize::from(more == 0)) / 2 };
            if over - more < needed {
                continue;
            }
            let ways = self.levels[more].ways.len();
            // The row before the last comes first: rows that take turns are the usual answer.
            let again = twice.filter(|(level, _)| *level == more).map(|(_, way)| way);
            self.whole &= self.levels[more].whole;
            for way in again.into_iter().chain((0..ways).filter(|way| Some(*way) != again)) {
                if self.nodes == 0 || left == 0 {
                    self.whole = false;
                    return;
                }
                let it = &self.levels[more].ways[way];
                self.nodes = self.nodes.saturating_sub(1);
                if it.joints & before != 0 {
                    continue;
                }
                self.nodes = self.nodes.saturating_sub(4);
                let sums: Vec<i64> =
                    weighs.iter().zip(&it.weighs).map(|(sum, more)| sum + factor * more).collect();
                let mut fits = true;
                for (weight, sum) in sums.iter().enumerate() {
                    let all = sum + self.rest[weight][after][over - more];
                    fits &= all <= self.board[weight].saturating_mul(*most as i64);
                }
                if !fits {
                    continue;
                }
                left -= 1;
                self.chosen.push((more, way));
                self.choose(over - more, most, &sums);
                self.chosen.pop();
                if self.best.as_ref().is_some_and(|(boards, ..)| *boards <= self.goal) {
                    return;
                }
            }
        }
    }

    fn joints(&self, row: usize) -> u64 {
        let (level, way) = self.chosen[row];
        self.levels[level].ways[way].joints
    }

    /// The pieces of the chosen rows with their places, longest first.
    fn pieces(&self, joints: &[u64]) -> Vec<(Piece, Cut)> {
        let Rows { long, ref stops, .. } = *self.rows;
        let mut all = Vec::new();
        for (row, joints) in joints.iter().enumerate() {
            let thin = self.factor(row) == 1;
            let mut from = 0;
            let ends = stops.iter().enumerate().filter(|(at, _)| joints >> at & 1 == 1);
            for to in ends.map(|(_, stop)| *stop).chain([long]) {
                let cut = Cut { row, from, to, board: 0, lane: 0 };
                all.push((Piece { length: to - from, thin }, cut));
                from = to;
            }
        }
        all.sort_by_key(|(piece, cut)| (piece.thin, -piece.length, cut.row, cut.from));
        all
    }

    fn try_packing(&mut self, most: &mut usize) {
        let joints: Vec<u64> = (0..self.chosen.len()).map(|row| self.joints(row)).collect();
        let all = self.pieces(&joints);
        let pieces: Vec<Piece> = all.iter().map(|(piece, _)| *piece).collect();
        let mut lengths: Vec<i64> =
            pieces.iter().map(|it| if it.thin { -it.length } else { it.length }).collect();
        lengths.sort_unstable();
        self.nodes = self.nodes.saturating_sub(64 + self.failed.len() as u32);
        if self.failed.iter().any(|(least, known)| *least <= *most && *known == lengths) {
            return;
        }
        loop {
            let most_nodes = (self.nodes / PLACING).min(PACKING);
            let mut nodes = most_nodes;
            let packed = pack(&pieces, self.rows.stock, *most, &mut nodes);
            self.nodes = self.nodes.saturating_sub((most_nodes - nodes) * PLACING);
            match packed {
                Ok(cuts) => {
                    let boards = 1 + cuts.iter().map(|(board, _)| *board).max().unwrap_or(0);
                    self.best = Some((boards, joints.clone(), cuts));
                    if boards <= self.goal {
                        return;
                    }
                    *most = boards - 1;
                }
                Err(whole) => {
                    self.whole &= whole;
                    self.failed.push((*most, lengths));
                    return;
                }
            }
        }
    }

    fn layout(&self, (boards, joints, cuts): (usize, Vec<u64>, Cuts)) -> Layout {
        let mut all: Vec<Cut> = Vec::new();
        for ((_, cut), (board, lane)) in self.pieces(&joints).into_iter().zip(cuts) {
            all.push(Cut { board, lane, ..cut });
        }
        all.sort_by_key(|cut| (cut.row, cut.from));
        Layout { boards, joints: all.len() - self.rows.count(), cuts: all }
    }
}

/// Pieces in a row at least, and for that count and the next ones what a row weighs at least.
/// None where a row can't be broken by the rules.
fn leasts_of(rows: &Rows, ends: &[i64], weight: &Weight) -> Option<(usize, Vec<i64>)> {
    let least = rows.least.min(rows.long);
    let mut at: Vec<i64> = vec![i64::MAX; ends.len()];
    at[0] = 0;
    let (mut all, mut fewest) = (Vec::new(), 0);
    for pieces in 1..=ends.len() {
        let mut next = vec![i64::MAX; ends.len()];
        for (from, before) in at.iter().enumerate().filter(|(_, before)| **before != i64::MAX) {
            for (to, next) in next.iter_mut().enumerate().skip(from + 1) {
                let length = ends[to] - ends[from];
                if length > rows.stock {
                    break;
                }
                if length >= least {
                    *next = (*next).min(before + weight.of(length, rows.stock));
                }
            }
        }
        at = next;
        match at.last() {
            Some(&i64::MAX) if all.is_empty() => {}
            Some(&i64::MAX) | None => break,
            Some(&weighs) => {
                if all.is_empty() {
                    fewest = pieces;
                }
                all.push(weighs);
            }
        }
        if all.len() == LEVELS {
            break;
        }
    }
    (!all.is_empty()).then_some((fewest, all))
}

/// All ways of breaking a row into so many pieces.
fn level(rows: &Rows, ends: &[i64], pieces: usize, weights: &[Weight]) -> Level {
    let mut level = Level { ways: Vec::new(), whole: true };
    let mut stack = vec![0_usize];
    extend(rows, ends, pieces, &mut stack, &mut |stack: &[usize]| {
        level.whole = level.ways.len() < MOST_WAYS;
        if !level.whole {
            return false;
        }
        let mut joints = 0;
        let mut weighs = vec![0; weights.len()];
        for pair in stack.windows(2) {
            if pair[1] + 1 < ends.len() {
                joints |= 1 << (pair[1] - 1);
            }
            for (sum, weight) in weighs.iter_mut().zip(weights) {
                *sum += weight.of(ends[pair[1]] - ends[pair[0]], rows.stock);
            }
        }
        level.ways.push(Way { joints, weighs });
        true
    });
    // Those that go best into boards first.
    level.ways.sort_by_cached_key(|way| {
        let most = way.weighs.iter().zip(weights).map(|(sum, weight)| {
            i128::from(*sum) * 1_000_000 / i128::from(weight.board(rows.stock))
        });
        most.max()
    });
    level
}

/// Takes each way that goes on from a stack of ends, until one is refused.
fn extend(
    rows: &Rows,
    ends: &[i64],
    pieces: usize,
    stack: &mut Vec<usize>,
    take: &mut dyn FnMut(&[usize]) -> bool,
) -> bool {
    let at = stack.last().copied().unwrap_or(0);
    let (last, from) = (ends.len() - 1, ends[at]);
    let (least, more) = (rows.least.min(rows.long), pieces as i64 - 1);
    for next in at + 1..=last {
        let length = ends[next] - from;
        if length > rows.stock {
            break;
        }
        // Too far still, or too near, for the pieces that are left.
        let left = rows.long - ends[next];
        if length < least || left > rows.stock * more || left < least * more {
            continue;
        }
        stack.push(next);
        let go_on = match (next == last, more) {
            (true, 0) => take(stack),
            (false, 1..) => extend(rows, ends, pieces - 1, stack, take),
            _ => true,
        };
        stack.pop();
        if !go_on {
            return false;
        }
    }
    true
}
