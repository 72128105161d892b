//! A calculator's page: answer, fields, drawing, and all that stands behind the answer, in that
//! order on a phone, to the eye and to a reader alike.

use super::waiting;
use super::wholes::Whole;
use super::{Opening, Origin, Question, START, keeping, links, source_name};
use crate::desk::{Desk, OnPage};
use crate::elements::{El, Piece, el, focus_soon, keep_up, live, on_change, text, when};
use crate::sheet_view::undo_line;
use crate::signal::Memo;
use crate::wide::follow_width;
use crate::{fields, keep, route, sheet_view, speech, words as w};
use ledgerboard_core::words::Text;
use leptos::prelude::on_cleanup;

/// The page of one open question. `address` tells whether the address should hold the question
/// from the start; a mark's own address is left standing until something is changed.
pub(crate) fn question_page(desk: Desk, opening: Opening, address: bool) -> El {
    let question = Question::new(desk, opening);
    links::follow(question);
    keeping::follow(desk, question, address);
    desk.remember(question.entry.id);
    keep_up(move || {
        let mark = question.mark.get();
        desk.on_page.set(Some(OnPage { calculator: question.entry, mark }));
    });
    on_cleanup(move || {
        desk.on_page.set(None);
    });
    let present = text(move || desk.settings.with(|all| all.job.clone()).unwrap_or_default());
    let follow_job = move || {
        // Another job brings its own editions and units.
        if let Some(job) = desk.present() {
            question.basis.set(job.basis);
            question.change_units(job.units);
        }
        links::leave_other_job(question);
    };
    on_change(move || present.track(), follow_job);
    let head = el("div")
        .class("head")
        .with(el("h1").attr("tabindex", "-1").say(question.entry.name))
        .with(live(move || stands_for(desk, question)))
        .with(question.left_out.then(|| el("p").class("now").say(&w::NO_EVIDENCE)));
    let side = el("div").class("side").with(waiting::notices(question));
    let side = side.with(sheet_view::answer(question));
    let form = el("section")
        .class("fields")
        .attr("aria-labelledby", "fields")
        .with(
            el("div").class("row").with(el("h2").id("fields").say(&w::FIELDS)).with(over(question)),
        )
        .with(started_over(question))
        .with(rooms(question))
        .with(el("div").attr("role", "status").with(live(move || {
            let one = |it: Text| el("p").class("quiet").text(&speech::say(&it));
            Piece::all(question.left().into_iter().map(one))
        })))
        .with(fields::rows(question, question.entry.rows, ""))
        .with(sheet_view::settings(question));
    let drawn = el("div").class("drawn").with(sheet_view::drawing(question));
    let page = el("main")
        .class("question")
        .with(head)
        .with(side.clone())
        .with(form.clone())
        .with(drawn.clone())
        .with(el("div").class("behind").with(sheet_view::headings(question)))
        .with(keep::bar(desk, question));
    // Where there is room, the fields come first, and answer and drawing stand beside them; on a
    // phone the answer comes first and the drawing last. Either way what is read in order is seen
    // in that order.
    follow_width(move |is_wide| {
        let (side, form, drawn) = (side.node(), form.node(), drawn.node());
        let _ = if is_wide {
            form.after_with_node_1(side).and_then(|()| side.append_child(drawn).map(drop))
        } else {
            form.before_with_node_1(side).and_then(|()| form.after_with_node_1(drawn))
        };
    });
    page
}

/// The mark that the question stands for, and the job that holds it.
fn stands_for(desk: Desk, question: Question) -> Option<El> {
    let place = question.mark.get()?;
    let job = desk.job(&place.job)?;
    let mark = job.mark(&place.mark)?;
    let said = source_name(mark, None);
    let heading = speech::say(&job.heading());
    Some(
        el("p")
            .class("place")
            .with(el("strong").own_text(&said))
            .with(question.changed.get().then(|| el("span").say(&w::NOT_SAVED)))
            .text(" ")
            .with(el("a").attr("href", &route::job(&job.id)).own_text(&heading)),
    )
}

/// One tap takes all that is asked of a room of the job, or of another number, for as long as some
/// of it isn't taken. What several inputs come from is said once.
fn rooms(question: Question) -> Piece {
    let wholes = Memo::new(move |_| question.wholes());
    let left = Memo::new(move |_| {
        let is_left = |it: &&Whole| question.leaves_some_of(it);
        wholes.with(|all| all.iter().filter(is_left).cloned().collect::<Vec<_>>())
    });
    let takes = live(move || {
        let one = |Whole { mark, name, is_room, .. }: Whole| {
            let phrase = if is_room { &w::TAKE_ROOM } else { &w::TAKE_WHOLE };
            let says = speech::say(&Text { phrase, args: vec![name.into()] });
            let take = el("button").attr("type", "button").class("quiet").own_text(&says);
            take.tap(move || {
                question.take_room(&mark);
                focus_soon(&["[data-source='", &mark, "'] a"].concat());
            })
        };
        Piece::all(left.get().into_iter().map(one))
    });
    Piece::all([takes, fields::told_together(question)])
}

/// Puts the sample back.
fn over(question: Question) -> Piece {
    when(
        move || question.origin.get() != Origin::Sample,
        move || {
            el("button")
                .attr("type", "button")
                .class("quiet")
                .say(&w::START_OVER)
                .tap(move || question.start_over())
        },
    )
}

fn started_over(question: Question) -> Piece {
    let here = move || question.undo.with(|it| it.as_ref().is_some_and(|it| it.place == START));
    when(here, move || undo_line(question, &w::STARTED_OVER))
}
