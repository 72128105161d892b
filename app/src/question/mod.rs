//! The open question: one draft, its units and editions, and the one worked answer that all of
//! the screen reads. What is typed changes the draft here; nothing here draws, and nothing here
//! knows a storage key.

mod comparing;
mod keeping;
mod links;
mod looking;
mod opening;
mod page;

pub(crate) use links::{Linked, Source, as_typed, linked, source_name, together};
pub(crate) use opening::{Opening, open};
pub(crate) use page::question_page;

use crate::desk::Desk;
use crate::signal::{Memo, RwSignal};
use crate::store::{Draft, Links, MarkPlace};
use crate::{clock, elements, speech, words as w};
use ledgerboard_core::calculators::Progress;
use ledgerboard_core::catalog::{Entry, Link, Worked};
use ledgerboard_core::edition::Basis;
use ledgerboard_core::fields::{self, Rename, is_asked, row_at, without_evidence, without_item};
use ledgerboard_core::measure::Units;
use ledgerboard_core::say;
use ledgerboard_core::sheet::{Fault, Faults, Put};
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::{Phrase, Voice};
use std::ops::Deref;

/// The parts of a draft, to be put back.
fn parts(draft: &Node) -> Vec<Put> {
    match draft {
        Node::Tree(parts) => parts.clone(),
        _ => Vec::new(),
    }
}

/// The place of an undo of evidence that was taken out.
pub(crate) const EVIDENCE: &str = "!";
/// The place of an undo of starting over.
pub(crate) const START: &str = "*";

/// The place of an undo of having taken what the sample put there for one's own.
pub(crate) const OWN: &str = "=";

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

/// What one tap of Undo puts back, and the row that offers it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Undo {
    /// The path of a list, the key of a heading, or [`START`].
    pub(crate) place: String,
    /// What stood there: paths and their trees.
    before: Vec<Put>,
    /// Where the question came from.
    origin: Origin,
    /// The mark that it stood for.
    mark: Option<MarkPlace>,
    /// What it took from other marks.
    links: Links,
    /// What was still the sample's.
    sampled: Vec<String>,
    /// What was done, where that is more than its place says by itself.
    pub(crate) says: String,
}

/// A name that is being typed, and what takes all of it back.
struct Renaming {
    rename: Rename,
    /// What was typed last.
    now: String,
    undo: Undo,
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
    /// What goes in is no longer what the mark was saved with.
    pub(crate) changed: Memo<bool>,
    /// The quantities of its job that its inputs could take.
    sources: Memo<Vec<Source>>,
    /// How each of its links stands, by the path of its input.
    linked: Memo<Vec<(String, Linked)>>,
    /// It came by an address with evidence, which was not taken.
    pub(crate) left_out: bool,
    /// The path of the link that was cut last, and what it led to, until something is linked.
    pub(crate) cut: RwSignal<Option<(String, String)>>,
    /// The last change that a tap can take back.
    pub(crate) undo: RwSignal<Option<Undo>>,
    /// What one tap took all of, and the fields that it has nothing for.
    left: RwSignal<Option<(String, Vec<&'static Phrase>)>>,
    /// The path of the field whose names are offered.
    pub(crate) naming: RwSignal<String>,
    /// The name that is being typed.
    renaming: RwSignal<Option<Renaming>>,
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
        let Opening { entry, input, units, basis, origin, mark, links, sampled, left_out } =
            opening;
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
        let changed = Memo::new(move |_| {
            let saved = mark.with(|place| place.as_ref().and_then(|place| desk.saved_input(place)));
            let Some(saved) = saved else { return false };
            seen.follow();
            let units = units.get_untracked();
            draft.with_untracked(|draft| entry.canonical(draft, units)) != Ok(saved)
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
            changed,
            sources: Memo::new(move |_| links::sources(desk, mark)),
            linked: Memo::new(move |_| links::all_linked(desk, links)),
            left_out,
            cut: RwSignal::new(None),
            undo: RwSignal::new(None),
            left: RwSignal::new(None),
            naming: RwSignal::new(String::new()),
            renaming: RwSignal::new(None),
            worked,
            found,
            is_long,
            comparing,
            rested,
            stands: elements::flag(move || worked.with(Result::is_ok)),
            faulty,
        })))
    }

    /// The voice that figures are read out in.
    pub(crate) fn voice(self) -> Voice {
        speech::voice(self.units.get())
    }

    /// How far the answer has come.
    pub(crate) fn progress(self) -> Progress {
        let whole = |worked: &Result<Worked, Faults>| match worked {
            Ok(worked) => worked.progress,
            Err(_) => Progress::Whole,
        };
        self.worked.with(whole)
    }

    /// Stops looking for a better answer, or goes on.
    pub(crate) fn stop(self, stopped: bool) {
        looking::stop(stopped, self.found);
    }

    /// Reads the answer for what is large, which is drawn anew when typing pauses. While a fault
    /// stands it never shows an old figure.
    pub(crate) fn at_rest<T>(self, read: impl FnOnce(&Result<Worked, Faults>) -> T) -> T {
        if !self.is_long.get() {
            return self.worked.with(read);
        }
        self.rested.track();
        self.stands.get();
        self.worked.with_untracked(read)
    }

    /// The text of one leaf.
    pub(crate) fn text(self, path: &str) -> Memo<String> {
        let path = path.to_owned();
        elements::text(move || {
            self.draft.with(|draft| draft.at(&path).and_then(Node::leaf).unwrap_or_default())
        })
    }

    /// What is wrong at one path; empty where nothing is.
    pub(crate) fn fault(self, path: &str) -> Memo<String> {
        let path = path.to_owned();
        elements::text(move || {
            let voice = self.voice();
            self.with_faults(|faults| {
                let fault = faults.iter().find(|fault| fault.path == path);
                fault.map(|fault| voice.say(&fault.says)).unwrap_or_default()
            })
        })
    }

    /// Reads the faults: those that keep the answer, else those that it leaves out a check for.
    pub(crate) fn with_faults<T>(self, read: impl FnOnce(&[Fault]) -> T) -> T {
        self.worked.with(|worked| match worked {
            Ok(worked) => read(&worked.left_out),
            Err(faults) => read(faults),
        })
    }

    /// Types one leaf.
    pub(crate) fn put(self, path: &str, value: Node) {
        self.undo.set(None);
        self.left.set(None);
        let about = row_at(self.entry.rows, path).is_some_and(|row| row.identifies);
        let evidence = about.then(|| self.draft.with_untracked(|draft| self.evidence(draft)));
        if let Some(true) = evidence {
            // What was found out was about something else: a report is never carried over.
            let before = self.draft.with_untracked(parts);
            self.offer_undo(EVIDENCE, before);
            self.draft.update(|draft| *draft = without_evidence(self.entry.rows, draft));
        }
        self.draft.update(|draft| draft.put(path, value));
        self.is_own(path);
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

    /// Removes an item of a list.
    pub(crate) fn put_without(self, list: &str, gone: usize, left: Vec<Node>) {
        let sampled = self.sampled.with_untracked(|paths| without_item(paths, list, gone));
        self.put_all(list, &[(list.to_owned(), Node::List(left))]);
        self.sampled.set(sampled);
    }

    /// A name's field is come to: what is typed next is a change of what stands there now, or goes on
    /// with one that came to no good name.
    pub(crate) fn begin_name(self, path: &str) {
        let goes_on = self.renaming.with_untracked(|it| {
            it.as_ref().is_some_and(|it| it.rename.path() == path && it.rename.is_open(&it.now))
        });
        if !goes_on {
            self.renaming.set(None);
        }
    }

    /// Types a name. What named it follows, in the same edit, and an undo in its row takes back all
    /// that was typed since the field was come to.
    pub(crate) fn put_name(self, path: &str, typed: String) {
        let rows = self.entry.rows;
        let here = self.draft.with_untracked(|draft| draft.at(path).and_then(Node::leaf));
        let here = here.unwrap_or_default();
        let goes_on = self.renaming.with_untracked(|it| {
            it.as_ref().is_some_and(|it| it.rename.path() == path && it.now == here)
        });
        if !goes_on {
            let rename = self.draft.with_untracked(|draft| Rename::of(rows, draft, path));
            let says = speech::say(&say!(w::RENAMED, rename.count() as i64));
            let undo = Undo { says, ..self.undo_to(path, rename.before()) };
            self.renaming.set(Some(Renaming { rename, now: here, undo }));
        }
        let mut undo = None;
        let mut puts = Vec::new();
        self.renaming.update(|it| {
            if let Some(it) = it {
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

    /// Whether any evidence stands in a draft.
    fn evidence(self, draft: &Node) -> bool {
        let (rest, blank) =
            (without_evidence(self.entry.rows, draft).leaves(), self.entry.sample().leaves());
        let told = |leaf: &(String, Option<String>)| !rest.contains(leaf) && !blank.contains(leaf);
        draft.leaves().iter().any(told)
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

    fn offer_undo(self, place: &str, before: Vec<Put>) {
        self.undo.set(Some(self.undo_to(place, before)));
    }

    fn undo_to(self, place: &str, before: Vec<Put>) -> Undo {
        let (origin, mark) = (self.origin.get_untracked(), self.mark.get_untracked());
        let (links, sampled) = (self.links.get_untracked(), self.sampled.get_untracked());
        Undo { place: place.to_owned(), before, origin, mark, links, sampled, says: String::new() }
    }

    /// Puts the sample in the place of all that was typed. Saving it makes a mark of its own.
    pub(crate) fn start_over(self) {
        let (sample, units) = (self.entry.sample(), self.units.get_untracked());
        let before = self.draft.with_untracked(parts);
        self.offer_undo(START, before);
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
            self.origin.set(undo.origin);
            self.mark.set(undo.mark);
            self.links.set(undo.links);
            self.sampled.set(undo.sampled);
            self.undo.set(None);
        }
    }

    /// Changes the units without changing what was meant.
    pub(crate) fn change_units(self, units: Units) {
        let before = self.units.get_untracked();
        if before == units {
            return;
        }
        let rows = self.entry.rows;
        let meant = self.draft.with_untracked(|draft| fields::restate(rows, draft, before));
        self.draft.set(fields::plain(rows, &meant, units));
        self.units.set(units);
    }

    /// The whole question as an address.
    pub(crate) fn link(self) -> Link {
        let (basis, units) = (self.basis.get_untracked(), self.units.get_untracked());
        Link::new(self.entry.id, self.draft.get_untracked(), basis, units)
    }

    /// The whole question as a draft.
    fn as_draft(self) -> Draft {
        Draft {
            input: self.draft.get_untracked(),
            units: self.units.get_untracked(),
            basis: self.basis.get_untracked(),
            mark: self.mark.get_untracked(),
            links: self.links.get_untracked(),
            sampled: Some(self.sampled.get_untracked()),
        }
    }
}
