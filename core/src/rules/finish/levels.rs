//! Levels of finish: what each asks for at joints, corners, screws and over the whole surface.

use crate::words::Phrase;
use crate::{choice, words};

words! {
    SAYS = "Level 0 asks for no tape or compound; 1 for tape set; 2 for a thin coat over it and one on screws and beads; 3 for tape and one coat, two on screws and beads; 4 for tape and two coats, one in corners, three on screws and beads; 5 for level 4 and a thin skim over all of it.";
    SEEN = "read in pages of board and paint makers and a contractor that restate it; one of them prints two coats for corners at level 4";
    L0 = "Level 0";
    L1 = "Level 1";
    L2 = "Level 2";
    L3 = "Level 3";
    L4 = "Level 4";
    L5 = "Level 5";
    DO_0 = "Nothing yet: temporary, or not decided.";
    DO_1 = "Tape set in joints and corners; ridges may stay. Above ceilings, in attics.";
    DO_2 = "Tape wiped, a thin coat over it, one on screws and beads; tool marks may stay. Under tile.";
    DO_3 = "Tape and one more coat, two on screws and beads, no tool marks. Under heavy texture.";
    DO_4 = "Tape and two more coats, one more in corners, three on screws and beads, smooth. Primer, then flat paint.";
    DO_5 = "Level 4, then a thin skim over all of it. For gloss, or light along the surface.";
}

source!(
    /// Where the levels are published.
    LEVELS, "finish-levels", "GA-214, ASTM C840, levels of finish", SAYS, SEEN, Read
);

choice! {
    /// How far a surface is finished.
    pub enum Level {
        /// Nothing.
        Zero = "0", L0;
        /// Tape.
        One = "1", L1;
        /// Under tile.
        Two = "2", L2;
        /// Under heavy texture.
        Three = "3", L3;
        /// Under flat paint.
        Four = "4", L4;
        /// Skimmed all over.
        Five = "5", L5;
    }
}

impl Level {
    /// What it asks for. Source: [`LEVELS`].
    pub fn asks(self) -> &'static Phrase {
        [&DO_0, &DO_1, &DO_2, &DO_3, &DO_4, &DO_5][self as usize]
    }

    /// Coats on flat joints, of the three that level 4 takes. Counted from [`LEVELS`].
    pub const fn flat(self) -> i64 {
        [0, 1, 2, 2, 3, 3][self as usize]
    }

    /// Coats in corners, of two.
    pub const fn corners(self) -> i64 {
        [0, 1, 2, 2, 2, 2][self as usize]
    }

    /// Coats on screws and beads, of three.
    pub const fn screws(self) -> i64 {
        [0, 0, 1, 2, 3, 3][self as usize]
    }
}
