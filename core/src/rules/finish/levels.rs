//! Levels of finish: what each asks for at joints, corners, screws and over the whole surface.

use crate::words::Phrase;
use crate::{choice, words};

words! {
    SAYS = "Level 0 asks for no tape or compound; 1 for tape set; 2 for a thin coat over it and one on screws and beads; 3 for tape and one coat, two on screws and beads; 4 for tape and two coats, one in corners, three on screws and beads; 5 for level 4 and a thin skim over all of it.", es "Nivel 0 no pide cinta ni pasta; 1, cinta pegada; 2, una mano delgada encima y una en tornillos y esquineros; 3, cinta y una mano, dos en tornillos y esquineros; 4, cinta y dos manos, una en esquinas, tres en tornillos y esquineros; 5, nivel 4 y una capa delgada en todo.";
    SEEN = "read in pages of board and paint makers and a contractor that restate it; one of them prints two coats for corners at level 4", es "leído en páginas de fabricantes de tablaroca y de pintura y de un contratista que lo repiten; una de ellas pone dos manos en esquinas en el nivel 4";
    L0 = "Level 0", es "Nivel 0";
    L1 = "Level 1", es "Nivel 1";
    L2 = "Level 2", es "Nivel 2";
    L3 = "Level 3", es "Nivel 3";
    L4 = "Level 4", es "Nivel 4";
    L5 = "Level 5", es "Nivel 5";
    DO_0 = "Nothing yet: temporary, or not decided.", es "Nada todavía: temporal, o sin decidir.";
    DO_1 = "Tape set in joints and corners; ridges may stay. Above ceilings, in attics.", es "Cinta pegada en juntas y esquinas; pueden quedar rebordes. Arriba de los techos, en áticos.";
    DO_2 = "Tape wiped, a thin coat over it, one on screws and beads; tool marks may stay. Under tile.", es "Cinta limpiada, una mano delgada encima, una en tornillos y esquineros; pueden quedar marcas de herramienta. Bajo loseta.";
    DO_3 = "Tape and one more coat, two on screws and beads, no tool marks. Under heavy texture.", es "Cinta y una mano más, dos en tornillos y esquineros, sin marcas de herramienta. Bajo textura gruesa.";
    DO_4 = "Tape and two more coats, one more in corners, three on screws and beads, smooth. Primer, then flat paint.", es "Cinta y dos manos más, una más en esquinas, tres en tornillos y esquineros, liso. Sellador, luego pintura mate.";
    DO_5 = "Level 4, then a thin skim over all of it. For gloss, or light along the surface.", es "Nivel 4, luego una capa delgada en todo. Para pintura brillante, o luz rasante.";
}

source!(
    /// Where the levels are published.
    LEVELS, "finish-levels", "GA-214, ASTM C840, levels of finish" es "GA-214, ASTM C840, niveles de acabado", SAYS, SEEN, Read
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
