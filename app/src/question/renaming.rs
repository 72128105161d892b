//! A name that is typed anew: what named it follows, once it is a good one.

use super::undoing::Undo;
use super::{Origin, Question};
use crate::{speech, words as w};
use ledgerboard_core::fields::Rename;
use ledgerboard_core::say;
use ledgerboard_core::wire::Node;

/// A name that is being typed, and what takes all of it back.
pub(super) struct Renaming {
    rename: Rename,
    /// What was typed last.
    now: String,
    undo: Undo,
}

impl Question {
    /// A name's field is come to: what is typed next is a change of what stands there now, or goes on
    /// with one that came to no good name, whatever other fields were come to since.
    pub(crate) fn begin_name(self, path: &str) {
        self.renaming.update(|all| {
            all.retain(|it| it.rename.is_open(&it.now));
            if let Some(it) = all.iter_mut().find(|it| it.rename.path() == path) {
                self.draft.with_untracked(|draft| it.rename.go_on(draft, &it.now));
                it.undo = self.undo_of(&it.rename);
            }
        });
    }

    /// Takes back all that was typed of a name, and what followed it.
    fn undo_of(self, rename: &Rename) -> Undo {
        let says = speech::say(&say!(w::RENAMED, rename.count() as i64));
        let mut undo = self.undo_to(rename.path(), rename.before());
        undo.says = says;
        undo
    }

    /// Types a name. What named it follows, in the same edit, and an undo in its row takes back all
    /// that was typed since the field was come to.
    pub(crate) fn put_name(self, path: &str, typed: String) {
        let rows = self.entry.rows;
        let here = self.draft.with_untracked(|draft| draft.at(path).and_then(Node::leaf));
        let here = here.unwrap_or_default();
        let goes_on = self
            .renaming
            .with_untracked(|all| all.iter().any(|it| it.rename.path() == path && it.now == here));
        if !goes_on {
            let rename = self.draft.with_untracked(|draft| Rename::of(rows, draft, path));
            let undo = self.undo_of(&rename);
            self.renaming.update(|all| {
                all.retain(|it| it.rename.path() != path);
                all.push(Renaming { rename, now: here, undo });
            });
        }
        let mut undo = None;
        let mut puts = Vec::new();
        self.renaming.update(|all| {
            if let Some(it) = all.iter_mut().find(|it| it.rename.path() == path) {
                puts = it.rename.to(&typed);
                let is_followed = it.rename.count() > 0 && !it.rename.is_open(&typed);
                undo = Some(it.undo.clone()).filter(|_| is_followed);
                it.now = typed;
            }
        });
        let Some(undo) = undo else {
            puts.into_iter().for_each(|(path, node)| self.put(&path, node));
            return;
        };
        self.draft.update(|draft| puts.into_iter().for_each(|(path, node)| draft.put(&path, node)));
        self.undo.set(Some(undo));
        self.origin.set(Origin::Own);
    }
}
