//! The ways of breaking one run of boards over its framing.

use super::Rows;

/// Counts of pieces that are told apart: the fewest, one more, two more, and all beyond.
pub(super) const LEVELS: usize = 4;

/// A place where a piece may end, and what reaches on from there.
#[derive(Clone, Debug)]
struct Stop {
    at: i64,
    /// Its bit among all framing; none at the two ends of the run.
    bit: u64,
    /// Where a piece from here may end, with the number of its length.
    on: Vec<(usize, usize)>,
}

/// All ways of breaking a run, as a graph from its one end to its other.
#[derive(Clone, Debug)]
pub(super) struct Ways {
    stops: Vec<Stop>,
    /// Pieces at least.
    pub(super) fewest: usize,
    /// By pieces left and stop: in how many ways the end is reached.
    counts: Vec<Vec<u64>>,
}

/// One way: where its joints stand, and the numbers of its pieces' lengths in their order.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Way {
    pub(super) joints: u64,
    pub(super) pieces: Vec<usize>,
    /// The stops between them.
    between: Vec<usize>,
}

impl Ways {
    /// None where the run can't be broken by the rules. Lengths that are new are put at the end of
    /// `lengths`, each with its board's width: pieces of two widths are never of one length.
    pub(super) fn new(
        rows: &Rows,
        (from, to): (i64, i64),
        width: usize,
        lengths: &mut Vec<(i64, usize)>,
    ) -> Option<Self> {
        let least = rows.least.min(to - from);
        let mut stops = vec![Stop { at: from, bit: 0, on: Vec::new() }];
        for (number, &at) in rows.stops.iter().enumerate() {
            if from < at && at < to {
                stops.push(Stop { at, bit: 1 << number, on: Vec::new() });
            }
        }
        stops.push(Stop { at: to, bit: 0, on: Vec::new() });
        for at in 0..stops.len() {
            let mut on = Vec::new();
            for (next, stop) in stops.iter().enumerate().skip(at + 1) {
                let length = stop.at - stops[at].at;
                if length < least || length > rows.stock {
                    continue;
                }
                let length = (length, width);
                let number = lengths.iter().position(|it| *it == length).unwrap_or(lengths.len());
                if number == lengths.len() {
                    lengths.push(length);
                }
                on.push((next, number));
            }
            stops[at].on = on;
        }
        let mut ways = Self { stops, fewest: 0, counts: Vec::new() };
        ways.count();
        ways.fewest = ways.counts.iter().position(|counts| counts[0] > 0)?;
        Some(ways)
    }

    fn count(&mut self) {
        let end = self.stops.len() - 1;
        let mut counts = vec![0_u64; end + 1];
        counts[end] = 1;
        let mut found = None;
        for pieces in 0..=end {
            if counts[0] > 0 && found.is_none() {
                found = Some(pieces);
            }
            self.counts.push(counts.clone());
            if found.is_some_and(|fewest| pieces + 1 == fewest + LEVELS) {
                break;
            }
            let mut next = vec![0_u64; end + 1];
            for (sum, stop) in next.iter_mut().zip(&self.stops) {
                for (on, _) in &stop.on {
                    *sum = sum.saturating_add(counts[*on]);
                }
            }
            counts = next;
        }
    }

    /// Whether there is a way with so many pieces.
    pub(super) fn can(&self, pieces: usize) -> bool {
        self.counts.get(pieces).is_some_and(|counts| counts[0] > 0)
    }

    /// One way out of all those with so many pieces, by numbers drawn below what is given.
    pub(super) fn draw(&self, pieces: usize, way: &mut Way, draw: &mut dyn FnMut(u64) -> u64) {
        way.joints = 0;
        way.pieces.clear();
        way.between.clear();
        let mut at = 0;
        for left in (0..pieces).rev() {
            let counts = &self.counts[left];
            let all: u64 =
                self.stops[at].on.iter().fold(0, |sum, (on, _)| sum.saturating_add(counts[*on]));
            let mut number = draw(all.max(1));
            for &(on, length) in &self.stops[at].on {
                if number < counts[on] {
                    way.pieces.push(length);
                    way.joints |= self.stops[on].bit;
                    at = on;
                    break;
                }
                number -= counts[on];
            }
            if left > 0 {
                way.between.push(at);
            }
        }
    }

    /// Moves one joint of a way.
    pub(super) fn shift(&self, way: &mut Way, draw: &mut dyn FnMut(u64) -> u64) {
        if way.between.is_empty() {
            return;
        }
        let joint = draw(way.between.len() as u64) as usize;
        let from = if joint == 0 { 0 } else { way.between[joint - 1] };
        let to = way.between.get(joint + 1).copied().unwrap_or(self.stops.len() - 1);
        let was = way.between[joint];
        let mut seen = 0;
        let mut chosen = None;
        for &(mid, first) in &self.stops[from].on {
            if mid == was {
                continue;
            }
            let Some((_, second)) = self.stops[mid].on.iter().find(|it| it.0 == to) else {
                continue;
            };
            seen += 1;
            if draw(seen) == 0 {
                chosen = Some((mid, first, *second));
            }
        }
        if let Some((mid, first, second)) = chosen {
            way.joints = way.joints & !self.stops[was].bit | self.stops[mid].bit;
            way.between[joint] = mid;
            way.pieces[joint] = first;
            way.pieces[joint + 1] = second;
        }
    }

    /// Where the joints of each way with the fewest pieces stand; `None` where there are too many
    /// to list.
    pub(super) fn all_of_fewest(&self) -> Option<Vec<u64>> {
        const MOST: u64 = 4000;
        if self.counts[self.fewest][0] > MOST {
            return None;
        }
        let mut all = vec![(0_usize, 0_u64)];
        for left in (0..self.fewest).rev() {
            let mut next = Vec::new();
            for (at, joints) in all {
                for &(on, _) in &self.stops[at].on {
                    if self.counts[left][on] > 0 {
                        next.push((on, joints | self.stops[on].bit));
                    }
                }
            }
            all = next;
        }
        Some(all.into_iter().map(|(_, joints)| joints).collect())
    }

    fn piece(&self, from: usize, to: usize) -> Option<usize> {
        self.stops[from].on.iter().find(|it| it.0 == to).map(|it| it.1)
    }

    /// Takes one joint out; false where the piece that it makes is too long.
    pub(super) fn merge(&self, way: &mut Way, draw: &mut dyn FnMut(u64) -> u64) -> bool {
        if way.between.is_empty() {
            return false;
        }
        let joint = draw(way.between.len() as u64) as usize;
        let from = if joint == 0 { 0 } else { way.between[joint - 1] };
        let to = way.between.get(joint + 1).copied().unwrap_or(self.stops.len() - 1);
        let Some(length) = self.piece(from, to) else { return false };
        way.joints &= !self.stops[way.between.remove(joint)].bit;
        way.pieces.remove(joint);
        way.pieces[joint] = length;
        true
    }

    /// Puts one joint in; false where the piece can't be cut.
    pub(super) fn split(&self, way: &mut Way, draw: &mut dyn FnMut(u64) -> u64) -> bool {
        let piece = draw(way.pieces.len() as u64) as usize;
        let from = if piece == 0 { 0 } else { way.between[piece - 1] };
        let to = way.between.get(piece).copied().unwrap_or(self.stops.len() - 1);
        let (mut seen, mut chosen) = (0, None);
        for &(mid, first) in &self.stops[from].on {
            let Some(second) = self.piece(mid, to) else { continue };
            seen += 1;
            if draw(seen) == 0 {
                chosen = Some((mid, first, second));
            }
        }
        let Some((mid, first, second)) = chosen else { return false };
        way.joints |= self.stops[mid].bit;
        way.between.insert(piece, mid);
        way.pieces[piece] = first;
        way.pieces.insert(piece + 1, second);
        true
    }

    /// What a run weighs at least by its count of pieces over the fewest, the last for all beyond;
    /// `None` where there is no such way.
    pub(super) fn least(&self, weights: &[f64]) -> Vec<Option<(f64, Vec<usize>)>> {
        let end = self.stops.len() - 1;
        let mut now: Vec<Option<(f64, usize, usize)>> = vec![None; end + 1];
        now[end] = Some((0.0, end, 0));
        let mut steps = Vec::new();
        let mut all: Vec<Option<(f64, Vec<usize>)>> = Vec::new();
        for pieces in 0..=end {
            if pieces > 0 {
                let mut next: Vec<Option<(f64, usize, usize)>> = vec![None; end + 1];
                for (at, stop) in self.stops.iter().enumerate() {
                    for &(on, length) in &stop.on {
                        let Some((rest, ..)) = now[on] else { continue };
                        let sum = rest + weights[length];
                        if next[at].is_none_or(|(least, ..)| sum < least) {
                            next[at] = Some((sum, on, length));
                        }
                    }
                }
                now = next;
            }
            steps.push(now.clone());
            if pieces < self.fewest {
                continue;
            }
            let mut found = None;
            if let Some((sum, ..)) = now[0] {
                let (mut at, mut way) = (0, Vec::new());
                for step in steps[1..].iter().rev() {
                    if let Some((_, on, length)) = step[at] {
                        way.push(length);
                        at = on;
                    }
                }
                found = Some((sum, way));
            }
            match (all.len() < LEVELS, found) {
                (true, found) => all.push(found),
                (false, Some((sum, way))) => {
                    if let Some(last) = all.last_mut()
                        && last.as_ref().is_none_or(|(least, _)| sum < *least)
                    {
                        *last = Some((sum, way));
                    }
                }
                (false, None) => break,
            }
        }
        all
    }
}
