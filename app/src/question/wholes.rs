//! All of a room, or of another number, that a question asks for: taken by one tap.

use super::Question;
use super::sources::Source;
use super::together::together;
use crate::words as w;
use ledgerboard_core::fields::left_alone;
use ledgerboard_core::say;
use ledgerboard_core::words::Text;

/// A number of the job of which one tap takes several figures.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Whole {
    /// Its mark, by id.
    pub(crate) mark: String,
    /// Room and title.
    pub(crate) name: String,
    /// Whether it is a room.
    pub(crate) is_room: bool,
    /// The inputs that take them, each with its figure.
    figures: Vec<(&'static str, Source)>,
}

impl Question {
    /// The job's rooms, and others, that this question could take more than one figure of.
    pub(crate) fn wholes(self) -> Vec<Whole> {
        let mut all: Vec<Whole> = Vec::new();
        self.sources.with(|sources| {
            for source in sources {
                if all.iter().any(|it| it.mark == source.mark) {
                    continue;
                }
                let figures = self.of_room(sources, &source.mark);
                if figures.len() > 1 {
                    let (mark, name) = (source.mark.clone(), source.title.clone());
                    all.push(Whole { mark, name, is_room: source.of.is_empty(), figures });
                }
            }
        });
        all
    }

    /// Whether an input that is asked still says something else than its figure of that whole, or
    /// wasn't taken from it.
    pub(crate) fn leaves_some_of(self, whole: &Whole) -> bool {
        let is_taken = |path: &str, source: &Source| {
            self.links.with(|links| {
                links.ties.iter().any(|tie| {
                    let is_it = (&*tie.path, &*tie.mark, &*tie.key)
                        == (path, &*source.mark, source.figure.key);
                    is_it && tie.seen == source.figure.amount.exact()
                })
            })
        };
        whole.figures.iter().any(|(path, source)| self.is_asked(path) && !is_taken(path, source))
    }

    /// The fields that are a room's own figures, or another's, each with that figure.
    fn of_room(self, sources: &[Source], mark: &str) -> Vec<(&'static str, Source)> {
        let mut all = Vec::new();
        for row in self.entry.rows {
            let here = |it: &&Source| it.mark == mark && it.is_named(row);
            if let Some(source) = sources.iter().find(here) {
                all.push((row.key, source.clone()));
            }
        }
        all
    }

    /// Takes all of a room that this question asks for.
    pub(crate) fn take_room(self, mark: &str) {
        let all = self.sources.with_untracked(|sources| self.of_room(sources, mark));
        let Some(of) = all.first().map(|(_, source)| source.of) else { return };
        for (path, source) in &all {
            self.tie(path, source);
        }
        let has = |key: &str| all.iter().any(|(_, source)| source.figure.key == key);
        let rows = self.entry.rows;
        let left = self.draft.with_untracked(|draft| left_alone(rows, draft, of, &has));
        let name = all.first().map(|(_, source)| source.title.clone()).unwrap_or_default();
        self.left.set((!left.is_empty()).then_some((name, left)));
    }

    /// What the last tap that took all of a room, or of another number, left as it was.
    pub(crate) fn left(self) -> Option<Text> {
        self.left.with(|left| {
            let (name, rows) = left.as_ref()?;
            Some(say!(w::LEFT_ALONE, &**name, together(rows.iter().copied())?))
        })
    }
}
