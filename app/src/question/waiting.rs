//! Edits that were not saved: one over a number that has changed since, and those that gave way to
//! another question. None is lost before a person says so.

use super::{Opening, Origin, Question, source_name};
use crate::elements::{El, Piece, el, focus_soon, live};
use crate::store::{self, Against, Draft};
use crate::{jobs, speech, words as w};
use ledgerboard_core::catalog::Entry;
use ledgerboard_core::job::{told_shortly, typed_differences};
use ledgerboard_core::measure::Units;
use ledgerboard_core::say;
use ledgerboard_core::words::Phrase;
use leptos::prelude::untrack;

/// The edits that wait in a calculator; what was typed last is one where another question opens.
pub(super) fn all(entry: &'static Entry, is_draft: bool) -> Vec<Draft> {
    let mut all = store::waiting(entry.id);
    let last = if is_draft { None } else { store::draft(entry.id) };
    all.extend(last.filter(|last| last.is_edit(entry) && !all.contains(last)));
    all
}

impl Question {
    /// Keeps the draft. An edit of another question that stands in its place waits from then on.
    pub(super) fn keep_draft(self) {
        self.make_way();
        store::save_draft(self.entry.id, &self.as_draft());
    }

    /// The same where the address that is left says what stood here before.
    pub(super) fn keep_draft_behind(self, address: &str) {
        self.make_way();
        store::save_draft_behind(self.entry.id, &self.as_draft(), address);
    }

    fn make_way(self) {
        if !self.is_draft.get_untracked() {
            self.is_draft.set(true);
            let id = self.entry.id;
            if let Some(last) = store::draft(id).filter(|last| self.is_lost_with(last)) {
                store::let_wait(id, last);
            }
        }
    }

    /// Whether an edit of a saved number is in a draft alone.
    fn is_lost_with(self, draft: &Draft) -> bool {
        let place = draft.mark.as_ref();
        let saved = untrack(|| place.and_then(|place| self.desk.saved_input(place)));
        draft.is_edit(self.entry) && draft.against(self.entry, saved.as_ref()) != Against::Same
    }

    /// What stands here waits, if it is an edit of a saved number.
    pub(super) fn let_wait_if_edited(self) {
        let now = self.as_draft();
        if self.is_lost_with(&now) {
            store::let_wait(self.entry.id, now);
            self.look_what_waits();
        }
    }

    /// What waited stands here again.
    pub(super) fn wait_no_more(self) {
        store::wait_no_more(self.entry.id, &self.as_draft());
        self.look_what_waits();
    }

    /// Goes on with the edit, over what is saved by now.
    fn go_on(self) {
        let place = self.mark.get_untracked();
        self.saved.set(untrack(|| place.and_then(|place| self.desk.saved_input(&place))));
        focus_soon("h1");
    }

    /// Opens what is saved; an edit waits.
    fn open_saved(self) {
        let Some(place) = self.mark.get_untracked() else { return };
        let Some(job) = untrack(|| self.desk.job(&place.job)) else { return };
        let Some(mark) = job.mark(&place.mark) else { return };
        if (&*mark.calculator, mark.version) == (self.entry.id, self.entry.version) {
            let now = self.as_draft();
            if untrack(|| self.against.get()).is_edit() {
                store::let_wait(self.entry.id, now);
            }
            self.put_in(Opening::of_mark(self.entry, &job, mark));
        }
    }

    /// Goes on with an edit that waits. What stands here waits in its place, if it was edited.
    fn take_up(self, edit: Draft) {
        let id = self.entry.id;
        self.keep_draft_if_typed(&edit);
        let place = edit.mark.as_ref();
        let told = untrack(|| place.and_then(|place| self.desk.saved_input(place)));
        self.put_in(Opening::of_draft(self.entry, edit.clone()));
        self.gone_on.set(told);
        // Off the list only once it stands in the draft.
        store::wait_no_more(id, &edit);
        self.look_what_waits();
    }

    fn keep_draft_if_typed(self, edit: &Draft) {
        let now = self.as_draft();
        let is_edit = match &now.mark {
            Some(_) => untrack(|| self.against.get()).is_edit(),
            None => !self.is_untouched() && now.input.leaves() != edit.input.leaves(),
        };
        if is_edit {
            store::let_wait(self.entry.id, now);
        }
    }

    /// Puts another question in the place of this one, and keeps it as what was typed last.
    fn put_in(self, opening: Opening) {
        let Opening { input, units, basis, origin, mark, links, sampled, saved, .. } = opening;
        self.undo.set(None);
        self.cut.set(None);
        self.left.set(None);
        self.renaming.set(Vec::new());
        self.gone_on.set(None);
        self.draft.set(input);
        self.units.set(units);
        self.basis.set(basis);
        self.origin.set(origin);
        self.mark.set(mark);
        self.links.set(links);
        self.sampled.set(sampled);
        self.saved.set(saved);
        self.keep_draft();
        self.look_what_waits();
        focus_soon("h1");
    }

    fn look_what_waits(self) {
        self.waiting.set(all(self.entry, self.is_draft.get_untracked()));
        self.desk.look();
    }

    /// Drops an edit that waits, for as long as nobody takes that back.
    fn drop_edit(self, edit: Draft) {
        let id = self.entry.id;
        store::wait_no_more(id, &edit);
        if !self.is_draft.get_untracked() && store::draft(id).as_ref() == Some(&edit) {
            store::forget_draft(id);
        }
        self.look_what_waits();
        self.dropped.set(Some(edit));
        focus_soon(".dropped button");
    }

    fn take_drop_back(self) {
        if let Some(edit) = self.dropped.get_untracked() {
            store::let_wait(self.entry.id, edit);
            self.dropped.set(None);
            self.look_what_waits();
            focus_soon("h1");
        }
    }

    /// Whether it is the sample, all of it still as it stood there.
    pub(crate) fn is_untouched(self) -> bool {
        let (entry, units) = (self.entry, self.units.get_untracked());
        let sampled = self.sampled.get_untracked();
        self.draft.with_untracked(|draft| {
            super::opening::origin(entry, draft, units, &sampled, Origin::Own) == Origin::Sample
        })
    }
}

/// So many that wait are told before the answer; the others are folded away.
const IN_VIEW: usize = 1;

/// What is to be told of edits, beside the answer.
pub(super) fn notices(question: Question) -> Piece {
    let since = live(move || since(question));
    let waiting = live(move || {
        let place = question.mark.get();
        let all = question.waiting.get();
        // Those of the number that stands here go first, the latest before the others.
        let (own, others): (Vec<_>, Vec<_>) =
            all.into_iter().rev().partition(|edit| edit.mark.is_some() && edit.mark == place);
        let rows = own.into_iter().chain(others).filter_map(|edit| one(question, edit));
        let mut rows: Vec<El> = rows.collect();
        let more = rows.split_off(rows.len().min(IN_VIEW));
        let more = (!more.is_empty()).then(|| {
            let says = speech::say(&say!(w::AND_MORE, more.len() as i64));
            el("details").with(el("summary").text(&says)).with_all(more)
        });
        Piece::all(rows.into_iter().map(Piece::from).chain([more.into()]))
    });
    let dropped = live(move || {
        question.dropped.with(Option::is_some).then(|| {
            let undo = button(&w::UNDO).tap(move || question.take_drop_back());
            line(&speech::phrase(&w::EDIT_DROPPED)).class("dropped").with(undo)
        })
    });
    el("div").attr("role", "status").with(since).with(waiting).with(dropped).into()
}

fn button(phrase: &'static Phrase) -> El {
    el("button").attr("type", "button").say(phrase)
}

fn line(says: &str) -> El {
    el("p").class("undo").with(el("span").text(says))
}

/// A notice with what a person may do, on a line of its own.
fn asks(says: El, buttons: impl IntoIterator<Item = El>) -> El {
    let buttons = el("p").class("buttons").with_all(buttons);
    el("div").class("now waits").with(says).with(buttons)
}

/// What is saved is no longer what stands here was taken from.
fn since(question: Question) -> Option<El> {
    let against = question.against.get();
    if !against.has_moved() {
        return None;
    }
    let place = question.mark.get()?;
    let (saved, answer) = question.desk.jobs.with(|jobs| {
        let job = jobs.iter().find(|job| job.id == place.job)?;
        let mark = job.mark(&place.mark)?;
        Some((mark.input.clone(), mark.kept.answer.clone()))
    })?;
    // By what changed there: the answer may be the same as here.
    let says = question.saved.with(|then| {
        let voice = question.voice();
        let differing = typed_differences(
            question.entry,
            then.as_ref()?,
            &saved,
            Units::Customary,
            voice.units,
        );
        told_shortly(&differing)
    });
    let says = say!(w::SAVED_SINCE, says.unwrap_or_else(|| jobs::shown(&answer)));
    let says = el("p").own_text(&question.voice().say(&says));
    // Who goes on with an edit knows that it is one.
    let is_new = question.gone_on.with(|told| told.as_ref() != Some(&saved));
    let go_on =
        (against.is_edit() && is_new).then(|| button(&w::EDIT_GO_ON).tap(move || question.go_on()));
    let open = button(&w::OPEN_SAVED).tap(move || question.open_saved());
    Some(asks(says, go_on.into_iter().chain([open])))
}

/// In which fields an edit says something else than is saved; what is no number's, or of one that is
/// not here, than it was taken from.
fn says_otherwise(question: Question, edit: &Draft) -> Option<El> {
    let (entry, voice) = (question.entry, question.voice());
    let saved = edit.mark.as_ref().and_then(|place| question.desk.saved_input(place));
    let saved = saved.or_else(|| edit.saved.clone()).unwrap_or_else(|| entry.sample());
    let all = typed_differences(entry, &saved, &edit.input, edit.units, voice.units);
    told_shortly(&all).map(|text| el("p").class("quiet").own_text(&voice.say(&text)))
}

/// One edit that waits; none where its number has come to say the same.
fn one(question: Question, edit: Draft) -> Option<El> {
    let says = match &edit.mark {
        None => say!(w::TYPED_WAITS),
        Some(place) => {
            let desk = question.desk;
            let saved = desk.saved_input(place);
            if edit.against(question.entry, saved.as_ref()) == Against::Same {
                return None;
            }
            let home = question.home().map(|home| home.id);
            let name = desk.jobs.with(|jobs| {
                let job = jobs.iter().find(|job| job.id == place.job)?;
                let name = source_name(job.mark(&place.mark)?, None);
                // Two houses may have a number of one name.
                Some(match home.as_ref() == Some(&job.id) {
                    true => say!(w::FIGURE, name),
                    false => say!(w::PAIR, job.heading(), name),
                })
            });
            match name {
                Some(name) => say!(w::EDIT_WAITS, name),
                // Before all is read, nobody knows that it is gone.
                None if desk.has_all() => say!(w::EDIT_WAITS_GONE),
                None => return None,
            }
        }
    };
    let says =
        el("div").with(el("p").text(&speech::say(&says))).with(says_otherwise(question, &edit));
    let taken = edit.clone();
    let go_on = button(&w::EDIT_GO_ON).tap(move || question.take_up(taken.clone()));
    let drop = button(&w::EDIT_DROP).tap(move || question.drop_edit(edit.clone()));
    Some(asks(says, [go_on, drop]))
}
