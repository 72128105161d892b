//! What several inputs of a question take from one number, told once and not at each field.

use super::Question;
use super::links::Linked;
use crate::words as w;
use ledgerboard_core::fields::row_at;
use ledgerboard_core::job::TieState;
use ledgerboard_core::say;
use ledgerboard_core::words::{Phrase, Text};

/// Names of fields in one line; none of none.
pub(crate) fn together(labels: impl IntoIterator<Item = &'static Phrase>) -> Option<Text> {
    labels.into_iter().fold(None, |all: Option<Text>, label| {
        Some(match all {
            Some(others) => say!(w::AND, others, label),
            None => say!(w::FIGURE, label),
        })
    })
}

impl Question {
    /// The numbers that several inputs come from and still agree with: one link of each, and the
    /// names of those inputs. They are told once, and not at each field.
    pub(crate) fn told_together(self) -> Vec<(Linked, Text)> {
        let mut all: Vec<(Linked, Vec<&'static Phrase>)> = Vec::new();
        self.linked.with(|linked| {
            for (path, link) in linked {
                if !link.is_still_so() || !self.is_asked(path) {
                    continue;
                }
                let label = row_at(self.entry.rows, path).map(|row| row.label);
                match all.iter_mut().find(|(it, _)| it.mark == link.mark) {
                    Some((it, labels)) => {
                        labels.extend(label);
                        if link.standing == TieState::Behind {
                            it.standing = TieState::Behind;
                        }
                    }
                    None => all.push((link.clone(), label.into_iter().collect())),
                }
            }
        });
        let several = all.into_iter().filter(|(_, labels)| labels.len() > 1);
        several.filter_map(|(link, labels)| Some((link, together(labels)?))).collect()
    }

    /// Whether the link of an input is one of those.
    pub(crate) fn is_told_together(self, path: &str) -> bool {
        self.linked.with(|linked| {
            let own = linked.iter().find(|(at, link)| at == path && link.is_still_so());
            own.is_some_and(|(_, own)| {
                let same = |at: &str, link: &Linked| {
                    link.mark == own.mark && link.is_still_so() && self.is_asked(at)
                };
                linked.iter().filter(|(at, link)| same(at, link)).count() > 1
            })
        })
    }
}
