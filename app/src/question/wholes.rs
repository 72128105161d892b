//! All of a room, or of another number, that a question asks for: taken by one tap.

use super::Question;
use super::sources::Source;
use super::together::together;
use crate::words as w;
use ledgerboard_core::fields::{Decided, decided, left_alone};
use ledgerboard_core::say;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::{Phrase, Text};

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
    /// The choices that its figures decide.
    decided: Vec<Decided>,
}

/// What the last tap that took all of a number left to a person.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Left {
    /// Room and title of what it took.
    name: String,
    /// The fields that it has nothing for.
    labels: Vec<&'static Phrase>,
    /// Its shape is none that its figures could set.
    shape_first: bool,
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
                let has = |key: &str| figures.iter().any(|(_, it)| it.figure.key == key);
                let decided = decided(self.entry.rows, source.of, &has);
                if !figures.is_empty() && figures.len() + decided.len() > 1 {
                    let (mark, name) = (source.mark.clone(), source.title.clone());
                    let is_room = source.of.is_empty();
                    all.push(Whole { mark, name, is_room, figures, decided });
                }
            }
        });
        all
    }

    /// Whether an input that is asked still says something else than its figure of that whole, or
    /// wasn't taken from it; or a choice isn't the one that its figures decide.
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
        let rows = self.entry.rows;
        let differs = |it: &Decided| self.draft.with(|draft| it.differs(rows, draft));
        whole.decided.iter().any(differs)
            || whole.figures.iter().any(|(path, it)| self.is_asked(path) && !is_taken(path, it))
    }

    /// The fields that are a room's own figures, or another's, each with that figure.
    fn of_room(self, sources: &[Source], mark: &str) -> Vec<(&'static str, Source)> {
        let mut all = Vec::new();
        for row in self.entry.rows {
            let of_it = sources.iter().filter(|it| it.mark == mark);
            let named = of_it.filter_map(|it| it.goes(row).map(|goes| (goes, it)));
            if let Some((_, source)) = named.min_by_key(|(goes, _)| *goes) {
                all.push((row.key, source.clone()));
            }
        }
        all
    }

    /// Takes all of a room that this question asks for, and the choices that its figures decide. Where
    /// they decide none, the sample's values of what it has nothing for go: they would stand as its own.
    pub(crate) fn take_room(self, mark: &str) {
        let all = self.sources.with_untracked(|sources| self.of_room(sources, mark));
        let Some(of) = all.first().map(|(_, source)| source.of) else { return };
        for (path, source) in &all {
            self.tie(path, source);
        }
        let has = |key: &str| all.iter().any(|(_, source)| source.figure.key == key);
        let rows = self.entry.rows;
        let decided = decided(rows, of, &has);
        for it in &decided {
            if let Some(pick) = it.pick {
                self.draft.update(|draft| draft.put(it.key, Node::text(pick)));
                self.is_own(it.key);
            }
        }
        let (mut left, shape_first) = self.draft.with_untracked(|draft| {
            let is_to_be_set = |it: &Decided| it.is_to_be_set(rows, draft);
            (left_alone(rows, draft, of, &has), decided.iter().any(is_to_be_set))
        });
        if shape_first {
            let sampled = self.sampled();
            let is_sample = |key: &str| sampled.iter().any(|path| path == key);
            for row in left.iter().filter(|row| is_sample(row.key)) {
                self.draft.update(|draft| draft.put(row.key, Node::text("")));
                self.is_own(row.key);
            }
            left.retain(|row| !is_sample(row.key));
        }
        let labels: Vec<_> = left.iter().map(|row| row.label).collect();
        let name = all.first().map(|(_, source)| source.title.clone()).unwrap_or_default();
        let is_any = shape_first || !labels.is_empty();
        self.left.set(is_any.then_some(Left { name, labels, shape_first }));
    }

    /// What the last tap that took all of a room, or of another number, left to a person.
    pub(crate) fn left(self) -> Vec<Text> {
        self.left.with(|left| {
            let Some(left) = left else { return Vec::new() };
            let alone = together(left.labels.iter().copied());
            let alone = alone.map(|labels| say!(w::LEFT_ALONE, &*left.name, labels));
            left.shape_first.then(|| say!(w::SHAPE_FIRST)).into_iter().chain(alone).collect()
        })
    }
}
