//! Pieces into boards: best fit first, then a bounded exact search.

/// A piece to be cut: of full width, or one lane of a board ripped in two.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Piece {
    pub(super) length: i64,
    pub(super) thin: bool,
}

/// What is cut from a board: across its width, then what is left in two lanes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
struct Used {
    whole: i64,
    lanes: [i64; 2],
}

impl Used {
    fn left(&self, stock: i64, slot: usize) -> i64 {
        let lanes = match slot {
            0 => self.lanes[0].max(self.lanes[1]),
            _ => self.lanes[slot - 1],
        };
        stock - self.whole - lanes
    }

    fn add(&mut self, slot: usize, length: i64) {
        match slot {
            0 => self.whole += length,
            _ => self.lanes[slot - 1] += length,
        }
    }
}

/// Where each piece is cut: board, and 0 for its whole width or the lane's number.
pub(super) type Cuts = Vec<(usize, usize)>;

/// Packing under way.
struct Packing<'a> {
    pieces: &'a [Piece],
    stock: i64,
    most: usize,
    boards: Vec<Used>,
    cuts: Cuts,
    nodes: u32,
    /// Twice what may go to waste: lanes count half.
    spare: i64,
}

/// Packs pieces, longest first, into no more than `most` boards. `Err(true)` where it can't be
/// done, `Err(false)` where the nodes ran out.
pub(super) fn pack(
    pieces: &[Piece],
    stock: i64,
    most: usize,
    nodes: &mut u32,
) -> Result<Cuts, bool> {
    let twice = |piece: &Piece| if piece.thin { piece.length } else { 2 * piece.length };
    let spare = 2 * stock * most as i64 - pieces.iter().map(twice).sum::<i64>();
    if spare < 0 {
        return Err(true);
    }
    let (boards, cuts) = (Vec::new(), Vec::new());
    // Best fit places each piece once.
    *nodes = nodes.saturating_sub(pieces.len() as u32);
    let mut packing = Packing { pieces, stock, most, boards, cuts, nodes: *nodes, spare };
    let mut done = packing.best_fit();
    if !done {
        packing.boards.clear();
        packing.cuts.clear();
        done = packing.place(0);
    }
    *nodes = packing.nodes;
    if done { Ok(packing.cuts) } else { Err(*nodes > 0) }
}

impl Packing<'_> {
    fn best_fit(&mut self) -> bool {
        for &Piece { length, thin } in self.pieces {
            let slots = if thin { 1..3 } else { 0..1 };
            let mut best: Option<(i64, usize, usize)> = None;
            for (at, board) in self.boards.iter().enumerate() {
                for slot in slots.clone() {
                    let left = board.left(self.stock, slot);
                    if left >= length && best.is_none_or(|(other, ..)| left < other) {
                        best = Some((left, at, slot));
                    }
                }
            }
            let (at, slot) = match best {
                Some((_, at, slot)) => (at, slot),
                None if self.boards.len() == self.most => return false,
                None => {
                    self.boards.push(Used::default());
                    (self.boards.len() - 1, slots.start)
                }
            };
            if let Some(board) = self.boards.get_mut(at) {
                board.add(slot, length);
            }
            self.cuts.push((at, slot));
        }
        true
    }

    /// Places the pieces from this one on.
    fn place(&mut self, at: usize) -> bool {
        let Some(&Piece { length, thin }) = self.pieces.get(at) else { return true };
        if self.nodes == 0 {
            return false;
        }
        self.nodes -= 1;
        // Equal pieces go in order of their boards, equal boards count once.
        let from = match at.checked_sub(1) {
            Some(last) if self.pieces[last] == self.pieces[at] => self.cuts[last].0,
            _ => 0,
        };
        let slots = if thin { 1..3 } else { 0..1 };
        let mut tried: Vec<(Used, usize)> = Vec::new();
        for board in from..(self.boards.len() + 1).min(self.most) {
            if board == self.boards.len() {
                self.boards.push(Used::default());
            }
            let was = self.boards[board];
            for slot in slots.clone() {
                if was.left(self.stock, slot) < length || tried.contains(&(was, slot)) {
                    continue;
                }
                tried.push((was, slot));
                if slot == 1 {
                    // The other lane is the same where both are equal.
                    if was.lanes[0] == was.lanes[1] {
                        tried.push((was, 2));
                    }
                }
                self.boards[board].add(slot, length);
                self.cuts.push((board, slot));
                if !self.wastes_too_much(at + 1) && self.place(at + 1) {
                    return true;
                }
                self.cuts.pop();
                self.boards[board] = was;
            }
            if self.boards.last() == Some(&Used::default()) {
                self.boards.pop();
            }
        }
        false
    }

    /// Whether too much is left where nothing that is still to come fits.
    fn wastes_too_much(&self, next: usize) -> bool {
        let rest = self.pieces.get(next..).unwrap_or_default();
        let least = |thin| rest.iter().filter(|it| it.thin == thin).map(|it| it.length).min();
        let (whole, lane) = (least(false), least(true));
        let fits = |left: i64, least: Option<i64>| least.is_some_and(|least| least <= left);
        let mut lost = 0;
        for board in &self.boards {
            let both = board.left(self.stock, 0);
            if fits(both, whole) {
                continue;
            }
            for slot in 1..3 {
                let left = board.left(self.stock, slot);
                lost += if fits(left, lane) { 0 } else { left };
            }
        }
        lost > self.spare
    }
}
