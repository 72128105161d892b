//! Rows of boards over framing: which lengths to hang where, and which stock board each is cut
//! from.
//!
//! - Shape: a rectangle in rows across its framing, one stock length. Every end joint stands on
//!   framing, no two rows that touch share one, no piece is shorter than the least.
//! - An offcut is used in any row of boards as wide. A last row of half a board's width or less may come two from
//!   one length, each keeping a factory edge. A cut takes nothing.
//! - Lengths: whole units of any kind below 2^40.

mod bound;
mod climb;
mod mixed;
mod pack;
mod search;
mod ways;

pub use mixed::Mixed;
pub use search::{Found, Search, by_area, search};

/// Boards end to end from one edge to another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Run {
    /// Its row, from 0: runs of two rows that follow each other touch.
    pub row: usize,
    /// From here.
    pub from: i64,
    /// To here.
    pub to: i64,
    /// Of half a board's width or less: two come from one length.
    pub thin: bool,
    /// Which of [`Rows::widths`] its boards are.
    pub width: usize,
}

/// What is to be laid out.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Rows {
    /// The runs.
    pub runs: Vec<Run>,
    /// Where framing stands, rising; no more than 64.
    pub stops: Vec<i64>,
    /// A stock board's length.
    pub stock: i64,
    /// No piece is shorter, unless its run is.
    pub least: i64,
    /// Lengths that boards are bought in, rising, no longer than the stock: what is cut short may
    /// come from a shorter one. None: the stock alone.
    pub sizes: Vec<i64>,
    /// How wide boards are, in whole units that are as small as can be: what is bought of each counts by
    /// that. None: all the same.
    pub widths: Vec<i64>,
    /// By run and by framing, how little a joint is wanted there; of layouts as good, the one with
    /// least of it is taken. None: all the same.
    pub shy: Vec<Vec<i64>>,
}

/// A piece as it hangs and as it is cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cut {
    /// Its row, from 0.
    pub row: usize,
    /// From here.
    pub from: i64,
    /// To here.
    pub to: i64,
    /// The board that it is cut from, from 0.
    pub board: usize,
    /// 0 across the whole width; 1 or 2 for a lane of what is ripped in two.
    pub lane: usize,
}

impl Cut {
    /// How long.
    pub fn length(&self) -> i64 {
        self.to - self.from
    }
}

/// A whole layout.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Layout {
    /// Boards of stock length.
    pub boards: usize,
    /// End joints.
    pub joints: usize,
    /// How little they are wanted where they are, of [`Rows::shy`].
    pub shy: i64,
    /// The pieces, row by row.
    pub cuts: Vec<Cut>,
}

#[cfg(test)]
mod tests;
