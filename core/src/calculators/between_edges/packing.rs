//! Pieces of sheet that come as near to a thickness as they can, and of those the fewest.

use crate::measure::Length;

/// A stack of pieces.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Packing {
    /// Thickness and how many of it, thickest first; none of nothing.
    pub pieces: Vec<(Length, i64)>,
}

impl Packing {
    /// How thick it is.
    pub fn made(&self) -> Length {
        self.pieces.iter().fold(Length::ZERO, |sum, (thick, count)| sum.plus(thick.times(*count)))
    }

    /// How many pieces.
    pub fn count(&self) -> i64 {
        self.pieces.iter().map(|(_, count)| count).sum()
    }
}

/// A stack as it is tried: how many of each, how thick, how many in all.
#[derive(Clone)]
struct Stack {
    counts: Vec<i64>,
    made: Length,
    count: i64,
}

struct Search<'a> {
    wanted: Length,
    sheets: &'a [Length],
    /// How far off, how many, which.
    best: (Length, i64, Vec<i64>),
}

/// As near as whole pieces of `sheets`, each above nothing, come to `wanted`; then the fewest pieces.
pub(super) fn pack(wanted: Length, sheets: &[Length]) -> Packing {
    let none = Stack { counts: vec![0; sheets.len()], made: Length::ZERO, count: 0 };
    let mut search = Search { wanted, sheets, best: (wanted, 0, none.counts.clone()) };
    search.from(0, none);
    let mut pieces = Vec::new();
    for (thick, count) in sheets.iter().zip(search.best.2) {
        if count > 0 {
            pieces.push((*thick, count));
        }
    }
    Packing { pieces }
}

impl Search<'_> {
    /// Tries a stack that is no thicker than wanted, it with one piece more, and all that go on from
    /// it with pieces from `at` on. One past that would be no nearer without its last piece.
    fn from(&mut self, at: usize, mut stack: Stack) {
        self.look(&stack);
        for next in at..self.sheets.len() {
            let thick = self.sheets[next];
            stack.counts[next] += 1;
            let more =
                Stack { made: stack.made.plus(thick), count: stack.count + 1, ..stack.clone() };
            stack.counts[next] -= 1;
            if more.made > self.wanted { self.look(&more) } else { self.from(next, more) }
        }
    }

    fn look(&mut self, stack: &Stack) {
        let off = stack.made.minus(self.wanted);
        let off = off.max(Length::ZERO.minus(off));
        if (off, stack.count) < (self.best.0, self.best.1) {
            self.best = (off, stack.count, stack.counts.clone());
        }
    }
}
