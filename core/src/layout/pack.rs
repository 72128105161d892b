//! Pieces into boards of their width, longest first, each where the least is left.

use super::climb::Ground;

/// What is cut from a board: across its width, then what is left in two lanes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
struct Used {
    width: usize,
    whole: i64,
    lanes: [i64; 2],
}

/// What a full board costs.
pub(super) const BOARD: i64 = 1 << 26;

/// A piece in its board: its length's number, its board, and 0 for the whole width or the lane.
pub(super) type Place = (usize, usize, usize);

/// How often each length is needed: across a board's width, and in one lane of two.
#[derive(Clone, Debug, Default)]
pub(super) struct Needs {
    pub(super) whole: Vec<usize>,
    pub(super) thin: Vec<usize>,
}

/// Packing, again and again.
#[derive(Clone, Debug, Default)]
pub(super) struct Packing {
    boards: Vec<Used>,
    /// Those into which something may still go.
    open: Vec<usize>,
    shortest: i64,
    pub(super) places: Vec<Place>,
    /// What goes into lanes comes last, else in its turn.
    pub(super) lanes_last: bool,
}

impl Packing {
    pub(super) fn new(lanes_last: bool) -> Self {
        Self { lanes_last, ..Self::default() }
    }

    /// How well boards are used: less is better, and what is left in one place is better than the
    /// same spread over all. With `sizes` each board is as short as its content allows, and a piece
    /// goes where that grows least.
    pub(super) fn pack(&mut self, ground: &Ground, sizes: &[i64], needs: &Needs) -> i64 {
        let Ground { stock, lengths, order, counts, .. } = ground;
        let stock = *stock;
        self.boards.clear();
        self.places.clear();
        self.open.clear();
        self.shortest = order.last().map_or(0, |last| lengths[*last]);
        for &number in order {
            for _ in 0..needs.whole[number] {
                self.place(ground, sizes, number, 0..1);
            }
            if !self.lanes_last {
                self.thin(ground, sizes, number, needs);
            }
        }
        if self.lanes_last {
            for &number in order {
                self.thin(ground, sizes, number, needs);
            }
        }
        let mut cost = 0;
        for board in &self.boards {
            let long = if sizes.is_empty() { stock } else { shortest(sizes, board.used(), stock) };
            let left = 2 * (long - board.whole) - board.lanes[0] - board.lanes[1];
            let part = left * BOARD / (2 * stock);
            let one = long * BOARD / stock - part * part / BOARD;
            // Boards are counted alike; what is bought of the wider counts more.
            cost += if sizes.is_empty() { one } else { one * counts[board.width] / counts[0] };
        }
        cost
    }

    /// Boards it takes.
    pub(super) fn count(&self) -> i64 {
        self.boards.len() as i64
    }

    /// All of them end to end, each of the shortest size for what is cut from it, times what its width
    /// counts.
    pub(super) fn bought(&self, ground: &Ground) -> i64 {
        let one = |board: &Used| {
            shortest(&ground.sizes, board.used(), ground.stock) * ground.counts[board.width]
        };
        self.boards.iter().map(one).sum()
    }

    fn thin(&mut self, ground: &Ground, sizes: &[i64], number: usize, needs: &Needs) {
        for _ in 0..needs.thin[number] {
            self.place(ground, sizes, number, 1..3);
        }
    }

    fn place(
        &mut self,
        ground: &Ground,
        sizes: &[i64],
        number: usize,
        slots: std::ops::Range<usize>,
    ) {
        let (stock, length, width) = (ground.stock, ground.lengths[number], ground.widths[number]);
        // What it grows by, and what is then left.
        let mut best: Option<([i64; 2], usize, usize)> = None;
        for (at, board) in self.open.iter().enumerate() {
            let board = &self.boards[*board];
            if board.width != width {
                continue;
            }
            for slot in slots.clone() {
                let left = board.left(stock, slot) - length;
                if left < 0 {
                    continue;
                }
                let grows = if sizes.is_empty() {
                    0
                } else {
                    let next = board.with(slot, length).used();
                    shortest(sizes, next, stock) - shortest(sizes, board.used(), stock)
                };
                if best.is_none_or(|(other, ..)| [grows, left] < other) {
                    best = Some(([grows, left], at, slot));
                }
            }
        }
        // A new one may be cheaper than one that grows.
        let new = if sizes.is_empty() { stock } else { shortest(sizes, length, stock) };
        let best = best.filter(|([grows, _], ..)| *grows <= new);
        let (_, at, slot) = best.unwrap_or(([0; 2], self.open.len(), slots.start));
        if at == self.open.len() {
            self.open.push(self.boards.len());
            self.boards.push(Used { width, ..Used::default() });
        }
        let of = self.open[at];
        let board = &mut self.boards[of];
        *board = board.with(slot, length);
        if board.left(stock, 1).max(board.left(stock, 2)) < self.shortest {
            self.open.remove(at);
        }
        self.places.push((number, of, slot));
    }
}

/// The shortest size that holds so much.
fn shortest(sizes: &[i64], used: i64, stock: i64) -> i64 {
    sizes.iter().copied().find(|size| *size >= used).unwrap_or(stock)
}

impl Used {
    /// Along the board.
    fn used(&self) -> i64 {
        self.whole + self.lanes[0].max(self.lanes[1])
    }

    /// With a piece more.
    fn with(mut self, slot: usize, length: i64) -> Self {
        match slot {
            0 => self.whole += length,
            _ => self.lanes[slot - 1] += length,
        }
        self
    }

    /// What is left across the width, or in a lane.
    fn left(&self, stock: i64, slot: usize) -> i64 {
        let lanes = match slot {
            0 => self.lanes[0].max(self.lanes[1]),
            _ => self.lanes[slot - 1],
        };
        stock - self.whole - lanes
    }
}
