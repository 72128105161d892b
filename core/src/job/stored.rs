//! A job as the tree that its record holds, and read back. Each field stands here twice, once in
//! each direction, in the order of the bytes; `core/shape.lock` and the frozen records hold both
//! to what is in people's phones.
//!
//! The JSON around the tree is [`super::record`]'s.

use super::clock::Clock;
use super::jot::Jot;
use super::mark::{Kept, Mark};
use super::site::{Gone, Job};
use super::stamp::Moment;
use super::tie::Tie;
use crate::catalog;
use crate::edition::{Basis, Electrical};
use crate::measure::Units;
use crate::wire::{Node, Parts};

impl Job {
    pub(super) fn stored(&self) -> Node {
        let mut node = Node::EMPTY;
        node.put("id", Node::text(&self.id));
        node.put("name", Node::text(&self.name));
        node.put("place", Node::text(&self.place));
        node.put("basis", self.basis.write());
        node.put("units", Node::text(self.units.key()));
        node.put("made", self.made.stored());
        node.put("clock", self.clock.stored());
        node.put("marks", Node::List(self.marks.iter().map(Mark::stored).collect()));
        node.put("gone", Node::List(self.gone.iter().map(Gone::stored).collect()));
        node.put("jots", Node::List(self.jots.iter().map(Jot::stored).collect()));
        node.put("invented", Node::Flag(self.invented));
        node
    }

    pub(super) fn restore(parts: &mut Parts<'_>) -> Self {
        Self {
            id: parts.text("id"),
            name: parts.text("name"),
            place: parts.text("place"),
            basis: parts.tree("basis", Basis::read),
            units: parts.word("units", Units::from_key).unwrap_or_default(),
            made: parts.tree("made", Moment::restore),
            clock: parts.tree("clock", Clock::restore),
            marks: parts.trees("marks", Mark::restore),
            gone: parts.trees("gone", Gone::restore),
            jots: parts.trees("jots", Jot::restore),
            invented: parts.flag("invented"),
        }
    }
}

impl Gone {
    fn stored(&self) -> Node {
        let mut node = Node::EMPTY;
        node.put("id", Node::text(&self.id));
        node.put("clock", self.clock.stored());
        node.put("at", self.at.stored());
        node
    }

    fn restore(parts: &mut Parts<'_>) -> Self {
        Self {
            id: parts.text("id"),
            clock: parts.tree("clock", Clock::restore),
            at: parts.tree("at", Moment::restore),
        }
    }
}

impl Jot {
    fn stored(&self) -> Node {
        let mut node = Node::EMPTY;
        node.put("key", Node::text(&self.key));
        node.put("says", Node::text(&self.says));
        node.put("at", self.at.stored());
        node.put("clock", self.clock.stored());
        node
    }

    fn restore(parts: &mut Parts<'_>) -> Self {
        Self {
            key: parts.text("key"),
            says: parts.text("says"),
            at: parts.tree("at", Moment::restore),
            clock: parts.tree("clock", Clock::restore),
        }
    }
}

impl Mark {
    pub(super) fn stored(&self) -> Node {
        let mut node = Node::EMPTY;
        node.put("id", Node::text(&self.id));
        node.put("calculator", Node::text(&self.calculator));
        node.put("version", Node::Whole(self.version.into()));
        node.put("basis", self.basis.write());
        node.put("input", self.input.clone());
        node.put("ties", Node::List(self.ties.iter().map(Tie::stored).collect()));
        if let Some(hold) = &self.behind {
            node.put("behind", Node::text(hold));
        }
        node.put("kept", self.kept.stored());
        node.put("title", Node::text(&self.title));
        node.put("spot", Node::text(&self.spot));
        node.put("note", Node::text(&self.note));
        node.put("at", self.at.stored());
        node.put("clock", self.clock.stored());
        node
    }

    /// One whose calculator has a later version by now is read by that one's shape, if it fits.
    pub(super) fn restore(parts: &mut Parts<'_>) -> Self {
        let mut mark = Self {
            id: parts.text("id"),
            calculator: parts.text("calculator"),
            version: parts.whole("version"),
            basis: parts.tree("basis", Basis::read),
            input: parts.node("input"),
            ties: parts.trees("ties", Tie::restore),
            behind: parts.has("behind").then(|| parts.text("behind")),
            kept: parts.tree("kept", Kept::restore),
            title: parts.text("title"),
            spot: parts.text("spot"),
            note: parts.text("note"),
            at: parts.tree("at", Moment::restore),
            clock: parts.tree("clock", Clock::restore),
        };
        if let Some(entry) = catalog::find(&mark.calculator)
            && let Some(input) = entry.stepped(&mark.input, mark.version)
        {
            (mark.input, mark.version) = (input, entry.version);
        }
        mark
    }
}

impl Tie {
    /// As it is kept, in a mark and in a draft.
    pub fn stored(&self) -> Node {
        let mut node = Node::EMPTY;
        node.put("path", Node::text(&self.path));
        node.put("mark", Node::text(&self.mark));
        node.put("key", Node::text(&self.key));
        node.put("seen", Node::text(&self.seen));
        node
    }

    /// Reads [`Tie::stored`].
    pub fn restore(parts: &mut Parts<'_>) -> Self {
        Self {
            path: parts.text("path"),
            mark: parts.text("mark"),
            key: parts.text("key"),
            seen: parts.text("seen"),
        }
    }
}

impl Kept {
    fn stored(&self) -> Node {
        let mut node = Node::EMPTY;
        node.put("figure", Node::text(&self.figure));
        node.put("answer", Node::text(&self.answer));
        node.put("verdict", Node::text(&self.verdict));
        if let Some(edition) = self.edition {
            node.put("edition", Node::text(edition.key()));
        }
        node.put("figures", pairs(&self.figures));
        node.put("checks", pairs(&self.checks));
        node
    }

    fn restore(parts: &mut Parts<'_>) -> Self {
        let edition = parts.has("edition");
        Self {
            figure: parts.text("figure"),
            answer: parts.text("answer"),
            verdict: parts.text("verdict"),
            edition: if edition { parts.word("edition", Electrical::from_key) } else { None },
            figures: parts.pairs("figures"),
            checks: parts.pairs("checks"),
        }
    }
}

fn pairs(all: &[(String, String)]) -> Node {
    let pair =
        |(one, other): &(String, String)| Node::List(vec![Node::text(one), Node::text(other)]);
    Node::List(all.iter().map(pair).collect())
}

impl Moment {
    pub(super) fn stored(self) -> Node {
        let mut node = Node::EMPTY;
        node.put("at", Node::Whole(self.at));
        node.put("zone", Node::Whole(self.zone.into()));
        node
    }

    pub(super) fn restore(parts: &mut Parts<'_>) -> Self {
        Self { at: parts.whole("at"), zone: parts.whole("zone") }
    }
}
