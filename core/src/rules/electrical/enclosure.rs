//! Which box it is: one that goes by its mark, or a row of the metal box table.

use super::metal_boxes::{METAL, Metal, TABLE};
use crate::fields::{Field, Pick, Reader, Row};
use crate::wire::Node;
use crate::words;

words! {
    /// Any box that goes by the volume marked in it.
    MARKED_BOX = "Marked box (plastic, cut-in, other)", es "Caja marcada (plástico, old-work, otra)";
}

/// A marked box, or a row of the metal box table.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Enclosure {
    /// Its volume is marked in it.
    #[default]
    Marked,
    /// This row of the table.
    Metal(usize),
}

impl Enclosure {
    /// As a row offers them.
    pub const PICKS: [Pick; TABLE.len() + 1] = {
        let mut picks = [Pick { key: "marked", label: &MARKED_BOX }; TABLE.len() + 1];
        let mut at = 0;
        while at < METAL.len() {
            picks[at + 1] = Pick { key: METAL[at].key, label: METAL[at].name };
            at += 1;
        }
        picks
    };

    /// The table's row, for a metal box.
    pub fn metal(self) -> Option<&'static Metal> {
        match self {
            Self::Marked => None,
            Self::Metal(at) => TABLE.get(at),
        }
    }
}

impl Field for Enclosure {
    fn take(&mut self, from: Option<&Node>, _: &'static Row, reader: &mut Reader<'_>) -> bool {
        let at = reader.pick(from, &Self::PICKS);
        if let Some(at) = at {
            *self = at.checked_sub(1).map_or(Self::Marked, Self::Metal);
        }
        at.is_some()
    }
    fn write(&self) -> Node {
        Node::text(self.metal().map_or("marked", |metal| metal.key))
    }
}
