//! What is being typed in one calculator, as a tree: the same wire form as everywhere.

use super::settings::{leaf, units};
use ledgerboard_core::edition::{Basis, Electrical};
use ledgerboard_core::measure::Units;
use ledgerboard_core::wire::Node;

/// Where a mark is kept.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct MarkPlace {
    /// Its job's id.
    pub(crate) job: String,
    /// Its own.
    pub(crate) mark: String,
}

/// A question as it is being typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Draft {
    pub(crate) input: Node,
    pub(crate) units: Units,
    pub(crate) basis: Basis,
    /// The mark that it was opened from or saved to.
    pub(crate) mark: Option<MarkPlace>,
}

impl Draft {
    pub(super) fn read(node: &Node) -> Option<Self> {
        let mark = leaf(node, "job").zip(leaf(node, "mark"));
        Some(Self {
            input: node.get("input")?.clone(),
            units: units(node)?,
            basis: Basis {
                electrical: leaf(node, "electrical").and_then(|key| Electrical::from_key(&key)),
            },
            mark: mark.map(|(job, mark)| MarkPlace { job, mark }),
        })
    }

    pub(super) fn write(&self) -> Node {
        let mut node = Node::EMPTY;
        node.put("units", Node::text(self.units.key()));
        if let Some(edition) = self.basis.electrical {
            node.put("electrical", Node::text(edition.key()));
        }
        if let Some(MarkPlace { job, mark }) = &self.mark {
            node.put("job", Node::text(job));
            node.put("mark", Node::text(mark));
        }
        node.put("input", self.input.clone());
        node
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_draft_comes_back_word_for_word() {
        let mut input = Node::EMPTY;
        input.put("half", Node::text("9' 4 1/"));
        input.put("none", Node::List(Vec::new()));
        for (units, electrical, mark) in [
            (Units::Customary, None, None),
            (
                Units::Metric,
                Some(Electrical::E2026),
                Some(MarkPlace { job: "a".into(), mark: "b".into() }),
            ),
        ] {
            let draft = Draft { input: input.clone(), units, basis: Basis { electrical }, mark };
            assert_eq!(Draft::read(&draft.write()), Some(draft));
        }
        assert_eq!(Draft::read(&Node::EMPTY), None);
    }
}
