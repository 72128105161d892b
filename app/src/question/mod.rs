//! The open question: one draft, its units and editions, and the one worked answer that all of
//! the screen reads. What is typed changes the draft here; nothing here draws, and nothing here
//! knows a storage key.

mod comparing;
mod keeping;
mod links;
mod looking;
mod opening;
mod page;
mod reading;
mod renaming;
mod sources;
mod together;
mod typing;
mod undoing;
mod waiting;
mod wholes;

pub(crate) use links::{Linked, as_typed, linked};
pub(crate) use opening::{Opening, open};
pub(crate) use page::question_page;
pub(crate) use sources::{Source, source_name};
pub(crate) use together::together;
pub(crate) use undoing::{OWN, START, Undo};

use crate::desk::Desk;
use crate::signal::{Memo, RwSignal};
use crate::store::{Against, Draft, Links, MarkPlace};
use crate::{clock, elements};
use ledgerboard_core::catalog::{Entry, Link, Worked};
use ledgerboard_core::edition::Basis;
use ledgerboard_core::fields::{self, is_asked};
use ledgerboard_core::job::{Rooms, Unlike};
use ledgerboard_core::measure::Units;
use ledgerboard_core::sheet::Faults;
use ledgerboard_core::wire::Node;
use std::ops::Deref;

/// Where a question comes from, until something in it is changed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Origin {
    /// The calculator's sample.
    Sample,
    /// As it was left the last time.
    Left,
    /// From an address.
    Link,
    /// From a mark, or typed here.
    Own,
}

/// A hold on the state of one open calculator, small enough that every tap can have its own.
///
/// The few hundred bytes behind it are never given back: a page is opened by hand, and its
/// signals, which hold what is large, go with the page.
#[derive(Clone, Copy)]
pub(crate) struct Question(&'static Open);

impl Deref for Question {
    type Target = Open;

    fn deref(&self) -> &Open {
        self.0
    }
}

/// The state of one open calculator. It belongs to the page that made it.
pub(crate) struct Open {
    /// What the whole page shares.
    pub(crate) desk: Desk,
    /// Which calculator.
    pub(crate) entry: &'static Entry,
    /// What was typed, leaf by leaf.
    pub(crate) draft: RwSignal<Node>,
    /// What bare numbers are in, and what figures are shown in.
    pub(crate) units: RwSignal<Units>,
    /// The editions it is asked under.
    pub(crate) basis: RwSignal<Basis>,
    /// Where it comes from, until something is changed.
    pub(crate) origin: RwSignal<Origin>,
    /// The mark it was opened from or saved to.
    pub(crate) mark: RwSignal<Option<MarkPlace>>,
    /// What it takes from other marks.
    pub(crate) links: RwSignal<Links>,
    /// The inputs, by path, that nobody has typed or chosen since the sample stood there.
    sampled: RwSignal<Vec<String>>,
    /// Those of them that are asked as things stand.
    pub(crate) from_sample: Memo<Vec<String>>,
    /// What the mark was worked from when it was last opened or saved here.
    pub(crate) saved: RwSignal<Option<Node>>,
    /// How what goes in compares with that, and with what the mark says now.
    pub(crate) against: Memo<Against>,
    /// What goes in is no longer what the mark was saved with.
    pub(crate) changed: Memo<bool>,
    /// The quantities of its job that its inputs could take.
    sources: Memo<Vec<sources::Source>>,
    /// How each of its links stands, by the path of its input.
    linked: Memo<Vec<(String, Linked)>>,
    /// What it says otherwise than the rooms that its mark is in.
    pub(crate) unlike: Memo<Vec<Unlike>>,
    /// It came by an address with evidence, which was not taken.
    pub(crate) left_out: bool,
    /// The path of the link that was cut last, and what it led to, until something is linked.
    pub(crate) cut: RwSignal<Option<(String, String)>>,
    /// The last change that a tap can take back.
    pub(crate) undo: RwSignal<Option<Undo>>,
    /// What the last tap that took all of a number left to a person.
    left: RwSignal<Option<wholes::Left>>,
    /// What was typed last in this calculator is this question.
    is_draft: RwSignal<bool>,
    /// Edits that wait in this calculator.
    waiting: RwSignal<Vec<Draft>>,
    /// The edit that was dropped last.
    dropped: RwSignal<Option<Draft>>,
    /// What the mark said by the time that an edit was gone on with.
    gone_on: RwSignal<Option<Node>>,
    /// The path of the field whose names are offered.
    pub(crate) naming: RwSignal<String>,
    /// The name that is being typed, and others that came to no good one yet.
    renaming: RwSignal<Vec<renaming::Renaming>>,
    /// The answer, or what keeps it.
    pub(crate) worked: Memo<Result<Worked, Faults>>,
    /// Told when more is found of an answer that is looked for.
    found: RwSignal<u64>,
    /// So many items that what is large waits until typing pauses.
    pub(crate) is_long: Memo<bool>,
    /// Other editions have not been looked at yet.
    pub(crate) comparing: Memo<bool>,
    /// Told when typing has paused in a long question.
    rested: RwSignal<u64>,
    /// There is an answer.
    stands: Memo<bool>,
    /// Where something is wrong.
    pub(crate) faulty: Memo<Vec<String>>,
}

impl Question {
    /// Opens a question in the present owner.
    pub(crate) fn new(desk: Desk, opening: Opening) -> Self {
        let Opening { entry, input, units, basis, origin, mark, links, sampled, .. } = opening;
        let Opening { left_out, saved, is_draft, .. } = opening;
        let (draft, units) = (RwSignal::new(input), RwSignal::new(units));
        let (basis, links) = (RwSignal::new(basis), RwSignal::new(links));
        let mark = RwSignal::new(mark);
        let sampled = RwSignal::new(sampled);
        let from_sample = Memo::new(move |_| {
            sampled.with(|paths| match paths.is_empty() {
                true => Vec::new(),
                false => draft.with(|draft| {
                    let asked = |path: &&String| is_asked(entry.rows, draft, path);
                    paths.iter().filter(asked).cloned().collect()
                }),
            })
        });
        let found = RwSignal::new(0);
        let version = Memo::new(move |before: Option<&u64>| {
            draft.track();
            units.track();
            basis.track();
            before.map_or(1, |before| before + 1)
        });
        let rested = RwSignal::new(0);
        let is_long = elements::flag(move || draft.with(comparing::is_long));
        let seen = comparing::seen(version, is_long);
        let asked = comparing::Asked { entry, draft, units, version, rested };
        let worked = Memo::new(move |before: Option<&Result<Worked, Faults>>| {
            seen.follow();
            let hold = links::hold(desk, mark, links);
            let shown = before.and_then(|it| it.as_ref().ok()?.edition);
            let hold = hold.as_ref();
            let (now, basis) = (units.get_untracked(), basis.get_untracked());
            let sought =
                draft.with_untracked(|draft| looking::worked(entry, draft, now, hold, found));
            let worked = sought.unwrap_or_else(|| asked.worked(basis, hold, shown));
            let Some(today) = clock::now().day() else { return worked.map(|it| it.as_of(None)) };
            let mut ahead = draft.with_untracked(|draft| fields::ahead(entry.rows, draft, today));
            if ahead.is_empty() {
                return worked.map(|it| it.as_of(Some(today)));
            }
            // Of two faults of one field the reader's goes first.
            let mut faults = worked.err().unwrap_or_default();
            faults.append(&mut ahead);
            Err(faults)
        });
        let then = RwSignal::new(saved);
        let against = Memo::new(move |_| {
            let saved = mark.with(|place| place.as_ref().and_then(|place| desk.saved_input(place)));
            let Some(saved) = saved else { return Against::Nothing };
            seen.follow();
            let units = units.get_untracked();
            let now = draft.with_untracked(|draft| entry.canonical(draft, units)).ok();
            then.with(|then| Against::of(now.as_ref(), then.as_ref(), Some(&saved)))
        });
        let changed = elements::flag(move || against.get().differs());
        let rooms = Memo::new(move |_| links::rooms(desk, mark));
        let unlike = Memo::new(move |_| {
            rooms.with(|rooms| match *rooms == Rooms::default() {
                true => Vec::new(),
                false => {
                    seen.follow();
                    let units = units.get_untracked();
                    let whole = draft.with_untracked(|draft| entry.canonical(draft, units));
                    let of =
                        |it: &Node| links.with(|links| rooms.unlike_here(entry, it, &links.ties));
                    whole.as_ref().map(of).unwrap_or_default()
                }
            })
        });
        let comparing = elements::flag(move || {
            let waits = entry.electrical && is_long.get() && rested.get() != version.get();
            waits && worked.with(Result::is_ok)
        });
        let faulty = Memo::new(move |_| {
            let paths = |faults: &Faults| faults.iter().map(|fault| fault.path.clone()).collect();
            worked.with(|worked| match worked {
                Ok(worked) => paths(&worked.left_out),
                Err(faults) => paths(faults),
            })
        });
        Self(Box::leak(Box::new(Open {
            desk,
            entry,
            draft,
            units,
            basis,
            origin: RwSignal::new(origin),
            mark,
            links,
            sampled,
            from_sample,
            saved: then,
            against,
            changed,
            sources: Memo::new(move |_| sources::sources(desk, mark)),
            linked: Memo::new(move |_| links::all_linked(desk, links)),
            unlike,
            left_out,
            cut: RwSignal::new(None),
            undo: RwSignal::new(None),
            left: RwSignal::new(None),
            is_draft: RwSignal::new(is_draft),
            waiting: RwSignal::new(waiting::all(entry, is_draft)),
            dropped: RwSignal::new(None),
            gone_on: RwSignal::new(None),
            naming: RwSignal::new(String::new()),
            renaming: RwSignal::new(Vec::new()),
            worked,
            found,
            is_long,
            comparing,
            rested,
            stands: elements::flag(move || worked.with(Result::is_ok)),
            faulty,
        })))
    }

    /// The whole question as an address.
    pub(crate) fn link(self) -> Link {
        let (basis, units) = (self.basis.get_untracked(), self.units.get_untracked());
        Link::new(self.entry.id, self.draft.get_untracked(), basis, units)
    }

    /// The whole question as a draft.
    fn as_draft(self) -> Draft {
        let mark = self.mark.get_untracked();
        Draft {
            saved: self.saved.get_untracked().filter(|_| mark.is_some()),
            input: self.draft.get_untracked(),
            units: self.units.get_untracked(),
            basis: self.basis.get_untracked(),
            mark,
            links: self.links.get_untracked(),
            sampled: Some(self.sampled.get_untracked()),
        }
    }
}
