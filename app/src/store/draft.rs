//! What is being typed in one calculator, as a tree: the same wire form as everywhere.

use super::settings::{leaf, units};
use ledgerboard_core::edition::{Basis, Electrical};
use ledgerboard_core::job::Tie;
use ledgerboard_core::measure::Units;
use ledgerboard_core::wire::{Node, Parts};

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
    /// What it takes from other marks.
    pub(crate) links: Links,
    /// The inputs, by path, that nobody has typed or chosen since the sample stood there; none where
    /// an older version wrote it.
    pub(crate) sampled: Option<Vec<String>>,
    /// What its mark was worked from when it was last opened or saved here; none where an older
    /// version wrote it.
    pub(crate) saved: Option<Node>,
}

/// What a question takes from the marks of a job.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Links {
    /// The job, by id; empty where nothing is taken.
    pub(crate) job: String,
    /// Which inputs take their value from which figures.
    pub(crate) ties: Vec<Tie>,
    /// The hold that it stands behind.
    pub(crate) behind: Option<String>,
}

impl Links {
    /// Of a mark of this job.
    pub(crate) fn of(job: &str, ties: Vec<Tie>, behind: Option<String>) -> Self {
        Self { job: job.to_owned(), ties, behind }
    }

    fn read(node: &Node) -> Self {
        let ties = node.items("ties").iter().cloned();
        Self {
            job: leaf(node, "job").unwrap_or_default(),
            ties: ties.filter_map(|tie| Parts::read(tie, Tie::restore).ok()).collect(),
            behind: leaf(node, "behind"),
        }
    }

    fn write(&self) -> Node {
        let mut node = Node::EMPTY;
        node.put("job", Node::text(&self.job));
        node.put("ties", Node::List(self.ties.iter().map(Tie::stored).collect()));
        if let Some(hold) = &self.behind {
            node.put("behind", Node::text(hold));
        }
        node
    }
}

impl Draft {
    /// As it is once the number at `from` has gone to another job; none where it is of another number.
    pub(super) fn moved(&self, from: &MarkPlace, to: &str) -> Option<Self> {
        if self.mark.as_ref() != Some(from) {
            return None;
        }
        let mut draft = self.clone();
        draft.mark = Some(MarkPlace { job: to.to_owned(), ..from.clone() });
        // What it takes goes with it, as the number's own links do.
        if draft.links.job == from.job {
            draft.links.job = to.to_owned();
        }
        Some(draft)
    }

    pub(super) fn read(node: &Node) -> Option<Self> {
        let mark = leaf(node, "job").zip(leaf(node, "mark"));
        Some(Self {
            input: node.get("input")?.clone(),
            units: units(node)?,
            basis: Basis {
                electrical: leaf(node, "electrical").and_then(|key| Electrical::from_key(&key)),
            },
            mark: mark.map(|(job, mark)| MarkPlace { job, mark }),
            links: node.get("links").map(Links::read).unwrap_or_default(),
            sampled: node
                .get("sampled")
                .map(|_| node.items("sampled").iter().filter_map(Node::leaf).collect()),
            saved: node.get("saved").cloned(),
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
        if !self.links.job.is_empty() {
            node.put("links", self.links.write());
        }
        if let Some(paths) = &self.sampled {
            node.put("sampled", Node::List(paths.iter().map(|path| Node::text(path)).collect()));
        }
        if let Some(saved) = &self.saved {
            node.put("saved", saved.clone());
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
        let tie =
            Tie { path: "half".into(), mark: "c".into(), key: "gap".into(), seen: "9 ft".into() };
        for (units, electrical, mark, links, sampled) in [
            (Units::Customary, None, None, Links::default(), None),
            (Units::Customary, None, None, Links::default(), Some(Vec::new())),
            (
                Units::Metric,
                Some(Electrical::E2026),
                Some(MarkPlace { job: "a".into(), mark: "b".into() }),
                Links::of("a", vec![tie], Some("d".into())),
                Some(vec!["half".into(), "none.0.count".into()]),
            ),
        ] {
            let basis = Basis { electrical };
            let saved = mark.as_ref().map(|_| input.clone());
            let draft = Draft { input: input.clone(), units, basis, mark, links, sampled, saved };
            assert_eq!(Draft::read(&draft.write()), Some(draft));
        }
        assert_eq!(Draft::read(&Node::EMPTY), None);
    }
}
