//! The bar under the thumb: save and share. After saving, the same bar says so, takes title,
//! spot and note, and takes the saving back.

use super::code::code;
use super::share::{Shared, share};
use crate::desk::Desk;
use crate::elements::{El, Piece, el, flag, focus_soon, live, live_text, on_change, text};
use crate::jobs;
use crate::question::{Origin, Question, source_name};
use crate::sheet_view::orphaned_undo;
use crate::signal::{Memo, RwSignal};
use crate::store::{self, Held, Links, MarkPlace};
use crate::{backup, speech, words as w};
use ledgerboard_core::calculators::Progress;
use ledgerboard_core::fields::{Kind, Row};
use ledgerboard_core::job::{DEMO_ID, Edit, Job, Kept, LONGEST_TITLE, Mark, Refusal};
use ledgerboard_core::say;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::{Phrase, Text};
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

/// What the bar last did.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Done {
    /// Nothing yet, or something was typed since.
    Nothing,
    /// A number was saved.
    Saved { place: MarkPlace, over: bool, inverse: Box<Edit> },
    /// The job has a number of this name that says the same.
    Twin(String),
    /// It could not be.
    Refused(Text),
    /// A saving was taken back.
    TakenBack {
        /// What was saved before is saved again.
        over: bool,
    },
    /// An address was handed on.
    Shared(Shared),
}

/// The bar of an open question.
pub(crate) fn bar(desk: Desk, question: Question) -> El {
    let done = RwSignal::new(Done::Nothing);
    let read = move || {
        question.draft.track();
        question.basis.track();
    };
    on_change(read, move || done.set(Done::Nothing));
    // The invented job's numbers are nobody's: saving from there makes a number of one's own.
    let own = Memo::new(move |_| {
        let place = question.mark.get()?;
        let known = |job: &Job| job.id == place.job && job.mark(&place.mark).is_some();
        desk.jobs.with(|jobs| jobs.iter().any(known)).then_some(place)
    });
    let saved = flag(move || matches!(*done.read(), Done::Saved { .. }));
    // The mark as this page has shown it: another tab may change it meanwhile.
    let seen = StoredValue::new(untrack(|| {
        let place = question.mark.get()?;
        desk.job(&place.job)?.mark(&place.mark).cloned()
    }));
    // What is gone on with, or opened anew, was shown as it is by now.
    on_change(
        move || question.saved.track(),
        move || {
            seen.set_value(
                question
                    .mark
                    .get_untracked()
                    .and_then(|place| desk.job(&place.job)?.mark(&place.mark).cloned()),
            );
        },
    );
    // Where another tab took it, or its job, a save is told where it goes before it is made.
    let lost =
        text(move || lost(desk, question, seen).map(|it| speech::say(&it)).unwrap_or_default());
    let tap = move |over: Option<MarkPlace>| {
        done.set(save(desk, question, over, seen, false).unwrap_or_else(Done::Refused));
    };
    let buttons = live(move || {
        if saved.get() {
            return Piece::NONE;
        }
        match own.get() {
            Some(place) => {
                let new = button(&w::SAVE_NEW).tap(move || tap(None));
                // What was changed may be another number as well as a better one.
                // (What is read of the comparison is read of its one memo: beside one made of it, a
                // change from an edit to an edit over another number would not be heard.)
                let against = question.against.get();
                let new = if against.differs() { new.class("main") } else { new };
                let over = with_keys(button(&w::SAVE_OVER));
                // Over what nobody here has seen, it is no tap to fall into.
                let over = if against.has_moved() { over } else { over.class("main") };
                Piece::all([over.tap(move || tap(Some(place.clone()))), new])
            }
            None => with_keys(button(&w::SAVE).class("main")).tap(move || tap(None)).into(),
        }
    });
    follow_keys();
    let then_now = text(move || then_now(desk, question).unwrap_or_default());
    let hand_on = move || {
        share(question, move |shared| {
            done.set(Done::Shared(shared));
        });
    };
    let says = live(move || match done.get() {
        Done::Nothing => {
            let text = [lost.get(), then_now.get()].into_iter().find(|it| !it.is_empty());
            let text = text.unwrap_or_default();
            (!text.is_empty()).then(|| el("p").class("now").text(&text)).into()
        }
        done_so => says(desk, question, done, done_so, seen),
    });
    let details = live(move || match &*done.read() {
        Done::Saved { place, .. } => jobs::details(desk, place.clone()),
        _ => None,
    });
    el("section")
        .class("bar")
        .named(&speech::phrase(&w::KEEPING))
        .with(orphaned_undo(question))
        .with(el("div").class("bar-says").attr("role", "status").with(says))
        .with(details)
        .with(
            el("div")
                .class("bar-buttons")
                .with(buttons)
                .with(button(&w::SHARE).tap(hand_on))
                .with(code(question)),
        )
}

fn button(phrase: &'static Phrase) -> El {
    el("button").attr("type", "button").say(phrase)
}

/// The button that Ctrl+S stands for.
fn with_keys(button: El) -> El {
    button
        .attr("aria-keyshortcuts", "Control+S Meta+S")
        .attr("title", &speech::phrase(&w::SAVE_KEYS))
}

/// Ctrl+S, or Cmd+S, does what its button does; the browser doesn't save the page while a question
/// is open. What is typed is told when its field is left, so the button takes the focus first.
fn follow_keys() {
    let hears = window_event_listener(leptos::ev::keydown, |event| {
        let plain = !event.alt_key() && !event.shift_key();
        if plain && event.ctrl_key() != event.meta_key() && event.key().eq_ignore_ascii_case("s") {
            event.prevent_default();
            const BUTTON: &str = "body:not(:has(dialog[open])) .bar-buttons [aria-keyshortcuts]";
            let button = document().query_selector(BUTTON).ok().flatten();
            if let Some(button) = button.and_then(|it| it.dyn_into::<HtmlElement>().ok()) {
                let _ = button.focus();
                button.click();
            }
        }
    });
    on_cleanup(move || hears.remove());
}

/// Saves the question as a mark: over the one at `over`, else as a new one. One that says the same as
/// another of its job is `asked` for: both would count in what to buy.
fn save(
    desk: Desk,
    question: Question,
    over: Option<MarkPlace>,
    seen: StoredValue<Option<Mark>>,
    asked: bool,
) -> Result<Done, Text> {
    let refused = |refusal: Refusal| refusal.says();
    let draft = question.draft.get_untracked();
    let (units, basis) = (question.units.get_untracked(), question.basis.get_untracked());
    let links = question.links.get_untracked();
    let goes_to = match &over {
        Some(place) => place.job.clone(),
        // Beside the number that is open, where its job is here.
        None => match own_job(desk, question) {
            Some(job) => job,
            None => desk.job_to_save_in().map_err(refused)?.id,
        },
    };
    // A hold is one of its own job: elsewhere nothing is open.
    let hold = untrack(|| question.hold()).filter(|_| links.job == goes_to);
    let fresh = Mark::new(question.entry, &draft, units, basis, hold.as_ref(), &desk.stamp())
        .map_err(|_| say!(w::CANT_SAVE_FAULT))?;
    let is_over = over.is_some();
    // Links lead to marks of one job; saved to another, the values stand by themselves.
    let linked = |job: &str, mark: Mark| {
        if links.job == job {
            Mark { ties: links.ties.clone(), behind: links.behind.clone(), ..mark }
        } else {
            mark
        }
    };
    // What nobody measured is noted with it.
    let sampled = question.sampled();
    let is_sample = question.origin.get_untracked() != Origin::Sample
        && question.entry.canonical(&draft, units).is_ok_and(|it| it == question.entry.sample());
    let note =
        |job: &str, mark: &str| untrack(|| desk.job(job))?.note_sample(mark, &sampled, is_sample);
    let (job, inverse, mark) = match over {
        Some(place) => {
            let old =
                untrack(|| desk.job(&place.job)).and_then(|job| job.mark(&place.mark).cloned());
            let old = old.ok_or_else(|| refused(Refusal::NoSuchMark(place.mark.clone())))?;
            // What a person wrote about it stays; what was worked out is new.
            let old = seen.get_value().filter(|seen| seen.id == old.id).unwrap_or(old);
            let title = match old.title == title(question, &draft, true) {
                true => title(question, &draft, false),
                false => old.title.clone(),
            };
            let mark = Mark {
                id: old.id.clone(),
                title,
                spot: old.spot.clone(),
                note: old.note.clone(),
                clock: old.clock.clone(),
                ..fresh
            };
            let mark = linked(&place.job, mark);
            let (made, mark) = desk.change(&place.job, &old, mark).map_err(refused)?;
            let mut inverse = made.inverse;
            if let Some(note) = note(&place.job, &mark.id) {
                let noted = desk.edit(&place.job, note).map_err(refused)?;
                inverse = Edit::Several(vec![noted.inverse, inverse]);
            }
            (place.job, inverse, mark)
        }
        None => {
            // What nobody measured counts for nothing, however often it is there.
            if !asked
                && !question.is_untouched()
                && let Some(twin) =
                    untrack(|| desk.job(&goes_to)).and_then(|job| twin(&job, &fresh).cloned())
            {
                // A sample that a person says is theirs is that number, and no other beside it.
                if note(&goes_to, &twin.id).is_some() {
                    let place = MarkPlace { job: goes_to, mark: twin.id };
                    return save(desk, question, Some(place), seen, asked);
                }
                return Ok(Done::Twin(source_name(&twin, None)));
            }
            // Beside the number that is open it is of the same room, until a person says another.
            let open = question.mark.get_untracked().filter(|place| place.job == goes_to);
            let beside = open.and_then(|place| {
                untrack(|| desk.job(&goes_to))?.mark(&place.mark).map(|mark| mark.spot.clone())
            });
            let spot = beside.unwrap_or_default();
            let mark = Mark { title: title(question, &draft, false), spot, ..fresh };
            let mark = linked(&goes_to, mark);
            let mut edits = vec![Edit::Keep(mark.clone())];
            edits.extend(note(&goes_to, &mark.id));
            let made = desk.edit(&goes_to, Edit::Several(edits)).map_err(refused)?;
            (goes_to, made.inverse, mark)
        }
    };
    seen.set_value(Some(mark.clone()));
    question.saved.set(Some(mark.input.clone()));
    question.links.set(Links::of(&job, mark.ties, mark.behind));
    let place = MarkPlace { job, mark: mark.id };
    question.mark.set(Some(place.clone()));
    Ok(Done::Saved { place, over: is_over, inverse: Box::new(inverse) })
}

/// A number of the job that says the same as this one.
fn twin<'a>(job: &'a Job, fresh: &Mark) -> Option<&'a Mark> {
    let is_it = |mark: &&Mark| {
        (&mark.calculator, mark.version, &mark.input)
            == (&fresh.calculator, fresh.version, &fresh.input)
    };
    job.marks.iter().find(is_it)
}

/// The job of the number that is open, if it is one of the person's own.
fn own_job(desk: Desk, question: Question) -> Option<String> {
    let place = question.mark.get_untracked()?;
    let is_here = desk.jobs.with_untracked(|jobs| jobs.iter().any(|job| job.id == place.job));
    is_here.then_some(place.job)
}

/// Where a save would go that has lost its place to another tab.
fn lost(desk: Desk, question: Question, seen: StoredValue<Option<Mark>>) -> Option<Text> {
    desk.track_stores();
    let is_here = |id: &str| desk.jobs.with(|jobs| jobs.iter().any(|job| job.id == id));
    let to = || match desk.present() {
        Some(job) => say!(w::JOB_GONE, job.heading()),
        None => say!(w::JOB_GONE, &w::NO_JOB),
    };
    match question.mark.get() {
        Some(place) if seen.with_value(Option::is_none) || place.job == DEMO_ID => None,
        Some(place) if !is_here(&place.job) => Some(to()),
        Some(place) => desk.saved_input(&place).is_none().then(|| say!(w::MARK_GONE)),
        None => {
            let job = desk.settings.with(|settings| settings.job.clone())?;
            (store::has_read() && !is_here(&job)).then(to)
        }
    }
}

/// What a person called it, where the form asks for that; else the calculator's name, with the choice
/// that its form begins with. `as_sample` says what it is called while nobody touched the sample.
fn title(question: Question, draft: &Node, as_sample: bool) -> String {
    let entry = question.entry;
    // What is another one each time, as an hour, is no name.
    let is_name = |row: &&Row| matches!(row.kind, Kind::Text(_)) && !row.measured;
    let line = entry.rows.iter().find(is_name);
    let line = line.and_then(|row| draft.get(row.key)?.leaf()).unwrap_or_default();
    let is_sample = question.origin.get_untracked() == Origin::Sample || as_sample;
    let is_sample = is_sample && !entry.is_hold;
    if !line.trim().is_empty() {
        return line.trim().chars().take(LONGEST_TITLE).collect();
    }
    let chosen = |row: &Row| match row.kind {
        Kind::Choice(picks) => {
            let leaf = draft.get(row.key).and_then(Node::leaf)?;
            picks.iter().find(|pick| pick.key == leaf).map(|pick| pick.label)
        }
        _ => None,
    };
    // A form that begins with a choice is told apart by it; one further down says nothing.
    let title = match entry.rows.first().and_then(chosen) {
        Some(label) => say!(w::PAIR, entry.name, label),
        None => say!(w::FIGURE, entry.name),
    };
    // Nobody measured a sample: it says so wherever it is kept.
    speech::say(&if is_sample { say!(w::SAMPLE_OF, title) } else { title })
}

/// What the mark on the page says, where the answer is another one by now.
fn then_now(desk: Desk, question: Question) -> Option<String> {
    let place = question.mark.get()?;
    let job = desk.job(&place.job)?;
    let then = &job.mark(&place.mark)?.kept;
    if let Some(whole) = saved_whole(question, then) {
        return Some(whole);
    }
    let says = question.worked.with(|worked| {
        let worked = worked.as_ref().ok()?;
        Some(jobs::then_now(&w::SAVED_NOW, question.entry.id, then, worked))
    })?;
    match says {
        Some(says) => Some(question.voice().say(&says)),
        None => question.changed.get().then(|| speech::phrase(&w::NOT_SAVED)),
    }
}

/// What is saved of an answer that is still looked for, or was stopped: a mark is worked to the end.
fn saved_whole(question: Question, kept: &Kept) -> Option<String> {
    let is_open = question.progress() != Progress::Whole && !question.changed.get();
    is_open.then(|| question.voice().say(&say!(w::SAVED_WHOLE, jobs::shown(&kept.answer))))
}

/// Takes the focus back to the first button once the bar has been drawn anew.
fn back_to_bar() {
    focus_soon(".bar-buttons button");
}

/// How safe a saved number is, as it is now.
fn saved_so(desk: Desk, job: &str, over: bool) -> Text {
    let Some(heading) = untrack(|| desk.job(job)).map(|job| job.heading()) else {
        return say!(w::NOT_SAVED);
    };
    match (desk.held(job), over) {
        (Held::Soon, _) => say!(w::SAVING, heading),
        (Held::Once | Held::Away, _) if !store::mirror_works() => say!(w::SAVED_ONLY_ONCE, heading),
        (Held::Once | Held::Away, false) => say!(w::SAVED_ONCE, heading),
        (Held::Once | Held::Away, true) => say!(w::SAVED_OVER, heading),
        (Held::Twice, false) => say!(w::SAVED_TWICE, heading),
        (Held::Twice, true) => say!(w::SAVED_OVER_TWICE, heading),
        (Held::Not(trouble), _) => trouble.says(),
    }
}

fn says(
    desk: Desk,
    question: Question,
    done: RwSignal<Done>,
    so: Done,
    seen: StoredValue<Option<Mark>>,
) -> Piece {
    let line = |text: &str| el("p").text(text);
    match so {
        Done::Nothing => Piece::NONE,
        Done::Twin(name) => {
            let same = move || {
                done.set(save(desk, question, None, seen, true).unwrap_or_else(Done::Refused));
            };
            let leave = move || {
                done.set(Done::Nothing);
                back_to_bar();
            };
            let says = el("p")
                .class("undo now")
                .attr("tabindex", "-1")
                .with(el("span").text(&speech::say(&say!(w::SAVED_ALREADY, name))));
            says.clone().focus_in_place();
            says.with(button(&w::SAVE_ALL_THE_SAME).tap(same))
                .with(button(&w::RESTORE_LEAVE).tap(leave))
                .into()
        }
        Done::Refused(text) => line(&speech::say(&text)).class("fault").into(),
        Done::TakenBack { over } => {
            let says = if over { &w::SAVED_AS_BEFORE } else { &w::NO_LONGER_SAVED };
            line(&speech::phrase(says)).into()
        }
        Done::Shared(Shared::Copied) => line(&speech::phrase(&w::LINK_COPIED)).into(),
        Done::Shared(Shared::Shown(address)) => {
            let field = el("input")
                .attr("type", "text")
                .attr("readonly", "")
                .attr("value", &address)
                .own()
                .named(&speech::phrase(&w::LINK));
            Piece::all([line(&speech::phrase(&w::LINK_SHOWN)), field])
        }
        Done::Saved { place, over, inverse } => {
            let job = place.job.clone();
            let said = text(move || speech::say(&saved_so(desk, &job, over)));
            let job = place.job.clone();
            let in_doubt = flag(move || matches!(desk.held(&job), Held::Not(_)));
            let (at, home, at_undo) = (place.clone(), place.job.clone(), place.clone());
            let undo = move || {
                if desk.edit(&home, (*inverse).clone()).is_ok() {
                    match over {
                        true => question.saved.set(untrack(|| desk.saved_input(&at_undo))),
                        false => question.mark.set(None),
                    }
                    done.set(Done::TakenBack { over });
                    back_to_bar();
                }
            };
            let finish = move || {
                done.set(Done::Nothing);
                back_to_bar();
            };
            // The button that was tapped has gone: the focus goes to what it did.
            let whole = live_text(move || {
                let job = desk.job(&at.job);
                let kept = job.as_ref().and_then(|job| job.mark(&at.mark)).map(|mark| &mark.kept);
                let whole = kept.and_then(|kept| saved_whole(question, kept));
                let some = question.from_sample.with(Vec::len) as i64;
                let sampled = (some > 0).then(|| speech::say(&say!(w::SAVED_SAMPLE, some)));
                [whole, sampled].into_iter().flatten().collect::<Vec<_>>().join(" ")
            });
            let whole = el("p").class("now").with(whole);
            let says = el("p")
                .class("saved")
                .class_when("fault", move || in_doubt.get())
                .attr("tabindex", "-1")
                .with(el("span").text_live(move || said.get()));
            says.clone().focus_in_place();
            let says = says.with(live(move || {
                if in_doubt.get() {
                    // The words that come of it take the focus.
                    let again = move || {
                        store::try_again();
                        focus_soon(".saved");
                    };
                    let copy = backup::first(desk, None, &w::BACK_UP);
                    return Piece::all([button(&w::SAVE_AGAIN).tap(again), copy]);
                }
                let undo = button(&w::UNDO).tap(undo.clone());
                Piece::all([undo, button(&w::DONE).tap(finish)])
            }));
            Piece::all([says, whole])
        }
    }
}
