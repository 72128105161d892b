//! What is typed or tapped into an open question.

use super::undoing::OWN;
use super::{Origin, Question};
use ledgerboard_core::fields::{self, row_at, without_evidence, without_item};
use ledgerboard_core::measure::Units;
use ledgerboard_core::sheet::Put;
use ledgerboard_core::wire::Node;

impl Question {
    /// Types one leaf.
    pub(crate) fn put(self, path: &str, value: Node) {
        self.end_undo(path);
        self.left.set(None);
        let about = row_at(self.entry.rows, path).is_some_and(|row| row.identifies);
        let evidence = about.then(|| self.draft.with_untracked(|draft| self.evidence(draft)));
        if let Some(true) = evidence {
            // What was found out was about something else: a report is never carried over.
            self.offer_evidence_back(path);
            self.draft.update(|draft| *draft = without_evidence(self.entry.rows, draft));
        }
        self.draft.update(|draft| draft.put(path, value));
        self.is_own(path);
    }

    /// Makes one tap's changes; Undo is offered at `place`.
    pub(crate) fn put_all(self, place: &str, puts: &[Put]) {
        let mut before: Vec<Put> = Vec::new();
        self.draft.update(|draft| {
            for (path, value) in puts {
                let top = path.split('.').next().unwrap_or_default();
                if let (Some(node), false) =
                    (draft.get(top), before.iter().any(|(known, _)| known == top))
                {
                    before.push((top.to_owned(), node.clone()));
                }
                draft.put(path, value.clone());
            }
            // As it would have been typed: no unit where the bare figure says the same.
            let said = fields::plain(self.entry.rows, draft, self.units.get_untracked());
            for (path, _) in puts {
                if let Some(value) = said.at(path) {
                    draft.put(path, value.clone());
                }
            }
        });
        self.offer_undo(place, before);
        self.origin.set(Origin::Own);
        puts.iter().for_each(|(path, _)| self.is_own(path));
    }

    /// Removes an item of a list.
    pub(crate) fn put_without(self, list: &str, gone: usize, left: Vec<Node>) {
        let sampled = self.sampled.with_untracked(|paths| without_item(paths, list, gone));
        self.put_all(list, &[(list.to_owned(), Node::List(left))]);
        self.sampled.set(sampled);
    }

    /// An input was typed or chosen, if it is for the same value again.
    pub(crate) fn is_own(self, path: &str) {
        self.origin.set(Origin::Own);
        if self.sampled.with_untracked(|paths| paths.iter().any(|it| it == path)) {
            self.sampled.update(|paths| paths.retain(|it| it != path));
        }
    }

    /// The inputs that are still the sample's, those too that aren't asked as things stand.
    pub(crate) fn sampled(self) -> Vec<String> {
        self.sampled.get_untracked()
    }

    /// All that the sample put there is a person's own.
    pub(crate) fn all_own(self) {
        self.offer_undo(OWN, Vec::new());
        self.sampled.set(Vec::new());
        self.origin.set(Origin::Own);
    }

    /// Whether any evidence stands in a draft.
    pub(super) fn evidence(self, draft: &Node) -> bool {
        let (rest, blank) =
            (without_evidence(self.entry.rows, draft).leaves(), self.entry.sample().leaves());
        let told = |leaf: &(String, Option<String>)| !rest.contains(leaf) && !blank.contains(leaf);
        draft.leaves().iter().any(told)
    }

    /// Changes the units without changing what was meant.
    pub(crate) fn change_units(self, units: Units) {
        let before = self.units.get_untracked();
        if before == units {
            return;
        }
        let rows = self.entry.rows;
        self.restate_undo(before, units);
        let meant = self.draft.with_untracked(|draft| fields::restate(rows, draft, before));
        self.draft.set(fields::plain(rows, &meant, units));
        self.units.set(units);
    }
}
