//! A long question at each key under one edition alone, once the key is painted; under the others
//! when typing pauses, one after another, and only then compared. What an older input's work says is
//! dropped.

use crate::elements::keep_up;
use crate::signal::{Memo, RwSignal};
use ledgerboard_core::calculators::hold::Opened;
use ledgerboard_core::catalog::{Compared, Entry, Worked};
use ledgerboard_core::edition::{Basis, Electrical};
use ledgerboard_core::measure::Units;
use ledgerboard_core::sheet::Faults;
use ledgerboard_core::wire::Node;
use leptos::prelude::{request_animation_frame, set_timeout};
use std::cell::RefCell;
use std::time::Duration;

/// Items of all lists together from which on a question is long. A room's own boxes and cables are
/// worked under all editions within a frame.
const LONG: usize = 60;
/// Longer than between two keys of a word, shorter than a look up from the keyboard.
const PAUSE: Duration = Duration::from_millis(180);

/// What a comparing belongs to.
#[derive(Clone, Copy)]
pub(super) struct Asked {
    pub(super) entry: &'static Entry,
    pub(super) draft: RwSignal<Node>,
    pub(super) units: RwSignal<Units>,
    /// Counts the inputs.
    pub(super) version: Memo<u64>,
    /// The last input that was looked at in rest.
    pub(super) rested: RwSignal<u64>,
}

thread_local! {
    /// Of the one question that is open, with its version.
    static BEGUN: RefCell<Option<(u64, Compared)>> = const { RefCell::new(None) };
}

/// Whether a question is too long to be compared at each key.
pub(super) fn is_long(draft: &Node) -> bool {
    let Node::Tree(parts) = draft else { return false };
    let mut items = 0;
    for (_, part) in parts {
        if let Node::List(list) = part {
            items += list.len();
        }
    }
    items > LONG
}

/// Which input is worked: the one that stands there, in a long question once it is painted. What is
/// saved or shared is always what stands there.
#[derive(Clone, Copy)]
pub(super) struct Seen {
    version: Memo<u64>,
    is_long: Memo<bool>,
    painted: RwSignal<u64>,
}

/// Follows the inputs for as long as the present owner lives.
pub(super) fn seen(version: Memo<u64>, is_long: Memo<bool>) -> Seen {
    let seen = Seen { version, is_long, painted: RwSignal::new(version.get_untracked()) };
    keep_up(move || {
        version.track();
        if is_long.get() {
            let settle = move || seen.settle();
            request_animation_frame(move || set_timeout(settle, Duration::ZERO));
        }
    });
    seen
}

impl Seen {
    /// Asks to be told of the next input to be worked.
    pub(super) fn follow(self) {
        if self.is_long.get() {
            self.painted.track();
        } else {
            self.version.track();
        }
    }

    /// Has what stands there worked.
    fn settle(self) {
        if self.painted.is_disposed() {
            return;
        }
        let now = self.version.get_untracked();
        if self.painted.get_untracked() != now {
            self.painted.set(now);
        }
    }
}

impl Asked {
    /// What one edition says at once, and all when typing has paused. `shown` is the edition that
    /// stood there last.
    pub(super) fn worked(
        self,
        basis: Basis,
        hold: Option<&Opened>,
        shown: Option<Electrical>,
    ) -> Result<Worked, Faults> {
        let Self { entry, draft, units, version, rested } = self;
        let (units, now) = (units.get_untracked(), version.get_untracked());
        // Where no edition says otherwise, there is nothing to come back for.
        let is_rested = entry.electrical && rested.get() == now;
        draft.with_untracked(|input| {
            let begun = BEGUN.take().filter(|(of, _)| is_rested && *of == now);
            if let Some((_, compared)) = begun {
                return compared.worked(entry, input, units, basis, hold);
            }
            if is_rested || !is_long(input) {
                return entry.work_behind(input, units, basis, hold);
            }
            set_timeout(move || self.go_on(now), PAUSE);
            let edition = basis.electrical.or(shown).unwrap_or(Electrical::NEWEST_VERIFIED);
            if !entry.electrical || !edition.is_verified() {
                return entry.work_behind(input, units, basis, hold);
            }
            let mut compared = Compared::default();
            compared.add(entry, input, units, edition)?;
            let alone = compared.alone(edition, hold);
            BEGUN.set(Some((now, compared)));
            alone.map_or_else(|| entry.work_behind(input, units, basis, hold), Ok)
        })
    }

    /// One edition more, as long as nothing else has been typed.
    fn go_on(self, asked: u64) {
        if self.draft.is_disposed() || self.version.with_untracked(|now| *now != asked) {
            return;
        }
        let more = BEGUN.with_borrow_mut(|begun| {
            let (_, compared) = begun.as_mut().filter(|(of, _)| *of == asked)?;
            let units = self.units.get_untracked();
            self.draft.with_untracked(|input| compared.step(self.entry, input, units).ok())
        });
        if more == Some(true) {
            set_timeout(move || self.go_on(asked), Duration::ZERO);
        } else {
            self.rested.set(asked);
        }
    }
}
