//! How wide each row is where boards of two widths are there: the least board across, of all choices.

use crate::measure::Length;

/// A row: how much of it lies on the surface, and how wide its boards are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Band {
    /// Across the boards.
    pub high: Length,
    /// Of its boards.
    pub board: Length,
}

impl Band {
    /// Half a board's width or less: two come from one.
    pub fn is_thin(&self) -> bool {
        self.high.times(2) <= self.board
    }

    /// Twice what it takes across: two thin ones come from one board.
    fn takes_twice(&self) -> Length {
        self.board.times(if self.is_thin() { 1 } else { 2 })
    }
}

/// Rows over a depth: those of full width, the widest first, then what is left.
///
/// - Model: all counts of full rows of each width, and what is left ripped from either.
/// - Least: what is bought across, a row of half a width or less for half a board; then as wide as can
///   be the narrowest row; then the fewest rows.
pub fn bands(deep: Length, widths: &[Length]) -> Vec<Band> {
    let mut best: Option<([Length; 2], Vec<Band>)> = None;
    let (wide, narrow) = match *widths {
        [narrow, wide] => (wide, narrow),
        [one, ..] => (one, one),
        [] => return Vec::new(),
    };
    let mut left = deep;
    let mut all: Vec<Band> = Vec::new();
    loop {
        // Then as many of the narrow as go in, and fewer.
        let mut rest = left;
        let mut rows = all.clone();
        loop {
            for &board in widths.iter().filter(|board| rest <= **board) {
                let mut rows = rows.clone();
                if rest > Length::ZERO {
                    rows.push(Band { high: rest, board });
                }
                let takes = rows.iter().fold(Length::ZERO, |sum, it| sum.plus(it.takes_twice()));
                let least = rows.iter().map(|it| it.high).min().unwrap_or_default();
                let worth = [takes, Length::ZERO.minus(least)];
                let better = |(known, of): &([Length; 2], Vec<Band>)| {
                    (worth, rows.len()) < (*known, of.len())
                };
                if best.as_ref().is_none_or(better) {
                    best = Some((worth, rows));
                }
            }
            if rest < narrow {
                break;
            }
            rest = rest.minus(narrow);
            rows.push(Band { high: narrow, board: narrow });
        }
        if wide == narrow || left < wide {
            break;
        }
        left = left.minus(wide);
        all.push(Band { high: wide, board: wide });
    }
    let mut rows = best.map(|it| it.1).unwrap_or_default();
    // A last one of full width is as good as any other of its width.
    if let Some(last) = rows.pop_if(|last| last.high == last.board) {
        let narrower = rows.iter().position(|it| it.board < last.board);
        rows.insert(narrower.unwrap_or(rows.len()), last);
    }
    rows
}
