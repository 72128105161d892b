//! What becomes of a draft of a saved number: whether anybody edited it, and whether what is saved
//! is still what it was taken from.

use super::Draft;
use ledgerboard_core::catalog::Entry;
use ledgerboard_core::job::DEMO_ID;
use ledgerboard_core::wire::Node;

/// How what stands in the fields compares with the number that it stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Against {
    /// It stands for none, or for one that is not here.
    Nothing,
    /// It says what is saved.
    Same,
    /// Nobody edited it; what is saved changed since.
    Behind,
    /// It was edited; what is saved is what it was taken from.
    Edited,
    /// It was edited, and what is saved changed since.
    Both,
}

impl Against {
    /// `now` is what stands in the fields, none where that can't be read; `then` what the number
    /// said when it was last opened or saved here, none where an older version didn't note it; and
    /// `saved` what it says.
    pub(crate) fn of(now: Option<&Node>, then: Option<&Node>, saved: Option<&Node>) -> Self {
        let Some(saved) = saved else { return Self::Nothing };
        if now == Some(saved) {
            return Self::Same;
        }
        match then {
            None => Self::Edited,
            Some(then) if now == Some(then) => Self::Behind,
            Some(then) if then == saved => Self::Edited,
            Some(_) => Self::Both,
        }
    }

    /// Whether it says something else than is saved.
    pub(crate) fn differs(self) -> bool {
        !matches!(self, Self::Nothing | Self::Same)
    }

    /// Whether somebody's edit would be lost with it.
    pub(crate) fn is_edit(self) -> bool {
        matches!(self, Self::Edited | Self::Both)
    }

    /// Whether what is saved is no longer what it was taken from.
    pub(crate) fn has_moved(self) -> bool {
        matches!(self, Self::Behind | Self::Both)
    }
}

impl Draft {
    /// How it compares with what its number says.
    pub(crate) fn against(&self, entry: &Entry, saved: Option<&Node>) -> Against {
        let now = entry.canonical(&self.input, self.units).ok();
        Against::of(now.as_ref(), self.saved.as_ref(), saved)
    }

    /// Whether it is an edit of a number of a person's own, by what that said when it was taken.
    pub(crate) fn is_edit(&self, entry: &Entry) -> bool {
        let is_own = self.mark.as_ref().is_some_and(|place| place.job != DEMO_ID);
        // One of an older version may be an edit: it is taken for one.
        let is_as_taken = || self.against(entry, self.saved.as_ref()) == Against::Same;
        is_own && !is_as_taken()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::{Links, MarkPlace};
    use ledgerboard_core::catalog;
    use ledgerboard_core::edition::Basis;
    use ledgerboard_core::measure::Units;

    #[test]
    fn a_draft_is_held_against_what_it_was_taken_from_and_what_is_saved() {
        use Against::{Behind, Both, Edited, Nothing, Same};
        let [a, b, c] = ["a", "b", "c"].map(Node::text);
        let (a, b, c) = (Some(&a), Some(&b), Some(&c));
        for (now, then, saved, want) in [
            // Not here, or removed: it stands by itself.
            (a, a, None, Nothing),
            (a, None, None, Nothing),
            (None, a, None, Nothing),
            (a, a, a, Same),
            // What is saved came to the same as the edit.
            (a, b, a, Same),
            (a, None, a, Same),
            (a, a, b, Behind),
            (a, b, b, Edited),
            (a, b, c, Both),
            // Half typed is an edit.
            (None, a, a, Edited),
            (None, a, b, Both),
            // An older version noted nothing: nothing is dropped, and nothing said of since when.
            (a, None, b, Edited),
            (None, None, b, Edited),
        ] {
            let found = Against::of(now, then, saved);
            assert_eq!(found, want, "{now:?} {then:?} {saved:?}");
            // Nobody's edit goes unseen, and what nobody edited is never told as one.
            let is_as_taken = now.is_some() && now == then;
            let is_edit = saved.is_some() && now != saved && !is_as_taken;
            assert_eq!(found.is_edit(), is_edit, "{now:?} {then:?} {saved:?}");
        }
    }

    #[test]
    fn an_edit_is_of_a_number_of_ones_own_and_says_something_else() {
        // Some open with a blank, which can't be saved before it is filled in.
        let mut count = 0;
        for entry in catalog::ALL {
            let Ok(sample) = entry.canonical(&entry.sample(), Units::Customary) else { continue };
            count += 1;
            let other = Node::text("another");
            for (job, saved, want) in [
                (None, Some(&sample), false),
                (None, None, false),
                (Some(DEMO_ID), Some(&other), false),
                (Some("a"), Some(&sample), false),
                (Some("a"), Some(&other), true),
                (Some("a"), None, true),
            ] {
                let place = |job: &str| MarkPlace { job: job.to_owned(), mark: "b".to_owned() };
                let draft = Draft {
                    input: sample.clone(),
                    units: Units::Customary,
                    basis: Basis::default(),
                    mark: job.map(place),
                    links: Links::default(),
                    sampled: None,
                    saved: saved.cloned(),
                };
                assert_eq!(draft.is_edit(entry), want, "{} {job:?}", entry.id);
            }
        }
        assert!(count > catalog::ALL.len() / 2);
    }
}
