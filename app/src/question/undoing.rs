//! What one tap takes back.

use super::{Origin, Question};
use crate::store::{Links, MarkPlace};
use crate::{speech, words as w};
use ledgerboard_core::fields::{self, evidence_in, is_evidence};
use ledgerboard_core::measure::Units;
use ledgerboard_core::sheet::Put;
use ledgerboard_core::wire::Node;

/// The place of an undo of starting over.
pub(crate) const START: &str = "*";

/// The place of an undo of having taken what the sample put there for one's own.
pub(crate) const OWN: &str = "=";

/// What one tap of Undo puts back, and the row that offers it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Undo {
    /// The path of a field or a list, the key of a heading, or [`START`].
    pub(crate) place: String,
    /// What stood there: paths and their trees.
    before: Vec<Put>,
    /// Where the question came from.
    origin: Origin,
    /// The mark that it stood for.
    mark: Option<MarkPlace>,
    /// What that was worked from when it was last opened or saved here.
    saved: Option<Node>,
    /// What it took from other marks.
    links: Links,
    /// What was still the sample's.
    sampled: Vec<String>,
    /// What was done, where that is more than its place says by itself.
    pub(crate) says: String,
    /// It puts back evidence that was taken out, and what that was about, and nothing else: it stays
    /// until evidence is put in anew.
    is_of_evidence: bool,
}

/// The parts of a draft, to be put back.
pub(super) fn parts(draft: &Node) -> Vec<Put> {
    match draft {
        Node::Tree(parts) => parts.clone(),
        _ => Vec::new(),
    }
}

impl Question {
    pub(super) fn offer_undo(self, place: &str, before: Vec<Put>) {
        self.undo.set(Some(self.undo_to(place, before)));
    }

    pub(super) fn undo_to(self, place: &str, before: Vec<Put>) -> Undo {
        let (origin, mark) = (self.origin.get_untracked(), self.mark.get_untracked());
        let (links, sampled) = (self.links.get_untracked(), self.sampled.get_untracked());
        let (saved, says) = (self.saved.get_untracked(), String::new());
        Undo {
            place: place.to_owned(),
            before,
            origin,
            mark,
            saved,
            links,
            sampled,
            says,
            is_of_evidence: false,
        }
    }

    /// Offers to put evidence back that goes, and with it what that is about, at whose path it stands.
    pub(super) fn offer_evidence_back(self, about: &str) {
        let before = self.draft.with_untracked(|draft| {
            let mut before = evidence_in(self.entry.rows, draft);
            before.extend(draft.at(about).map(|node| (about.to_owned(), node.clone())));
            before
        });
        let says = speech::phrase(&w::EVIDENCE_OUT);
        let undo = self.undo_to(about, before);
        self.undo.set(Some(Undo { says, is_of_evidence: true, ..undo }));
    }

    /// What is typed at a path ends an undo, but for one of evidence while none is put in anew.
    pub(super) fn end_undo(self, path: &str) {
        let stays = !is_evidence(self.entry.rows, path)
            && self.undo.with_untracked(|it| it.as_ref().is_some_and(|it| it.is_of_evidence));
        if !stays {
            self.undo.set(None);
        }
    }

    /// What would be put back, in other units.
    pub(super) fn restate_undo(self, from: Units, to: Units) {
        let (rows, now) = (self.entry.rows, self.draft.get_untracked());
        self.undo.update(|undo| {
            if let Some(undo) = undo {
                let mut then = now;
                undo.before.iter().for_each(|(path, node)| then.put(path, node.clone()));
                let then = fields::plain(rows, &fields::restate(rows, &then, from), to);
                for (path, node) in &mut undo.before {
                    if let Some(restated) = then.at(path) {
                        *node = restated.clone();
                    }
                }
            }
        });
    }

    /// Puts the sample in the place of all that was typed. Saving it makes a mark of its own. An edit
    /// of a saved number waits.
    pub(crate) fn start_over(self) {
        let (sample, units) = (self.entry.sample(), self.units.get_untracked());
        let before = self.draft.with_untracked(parts);
        self.offer_undo(START, before);
        self.let_wait_if_edited();
        self.left.set(None);
        self.draft.set(fields::plain(self.entry.rows, &sample, units));
        self.sampled.set(self.entry.of_sample(&sample, Units::Customary));
        self.origin.set(Origin::Sample);
        self.mark.set(None);
        self.links.set(Links::default());
    }

    /// Takes the last tap back.
    pub(crate) fn take_back(self) {
        if let Some(undo) = self.undo.get_untracked() {
            self.draft.update(|draft| {
                for (path, value) in undo.before {
                    draft.put(&path, value);
                }
            });
            self.undo.set(None);
            // Much else may have been done since.
            if undo.is_of_evidence {
                self.origin.set(Origin::Own);
                return;
            }
            self.origin.set(undo.origin);
            self.mark.set(undo.mark);
            self.saved.set(undo.saved);
            self.links.set(undo.links);
            self.sampled.set(undo.sampled);
            if undo.place == START {
                self.wait_no_more();
            }
        }
    }
}
