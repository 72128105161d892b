//! A drawing on the page: as wide as its place, with its words beneath, and large on tap.

use super::ink;
use crate::elements::{El, Piece, el, live, when};
use crate::question::Question;
use crate::signal::{Memo, RwSignal};
use crate::words as w;
use ledgerboard_core::sheet::Drawing;
use ledgerboard_core::words::Voice;
use wasm_bindgen::prelude::*;
use web_sys::HtmlDialogElement;

/// The narrowest phone's width less its margins; stands until the place has been measured.
const NARROWEST: i64 = 288;

/// No phone is as wide; a drawing shown large is, or twice as wide as the phone.
const LARGE: i64 = 900;

/// The drawing of a question's answer, while there is one.
pub(crate) fn picture(question: Question) -> Piece {
    let drawing = Memo::new(move |_| {
        question.at_rest(|worked| worked.as_ref().ok().and_then(|it| it.sheet.drawing.clone()))
    });
    when(move || drawing.read().is_some(), move || framed(question, drawing))
}

/// A drawing's lines alone, as small as a thumbnail. `id` tells its hatch from others on the page.
pub(crate) fn sketch(drawing: &Drawing, id: &str, voice: Voice) -> El {
    const WIDE: i64 = 160;
    ink::picture(&drawing.sketch(), WIDE, voice, &["hatch-", id].concat()).class("drawing sketch")
}

/// A drawing in its place among others, with its scale's labels. `id` tells its hatch from theirs.
pub(crate) fn drawn(drawing: &Drawing, id: &str, voice: Voice) -> El {
    let hatch = ["hatch-", id].concat();
    el("div").class("paper").with(ink::picture(drawing, NARROWEST, voice, &hatch))
}

fn framed(question: Question, drawing: Memo<Option<Drawing>>) -> El {
    let is_large = RwSignal::new(false);
    let dialog = el("dialog").class("large").attr("aria-labelledby", "drawing");
    let node = dialog.node().clone().dyn_into::<HtmlDialogElement>().ok();
    let closing = node.clone();
    let dialog = dialog
        .with(when(
            move || is_large.get(),
            move || scaled(question, drawing, "hatch-large", LARGE).attr("tabindex", "0"),
        ))
        .with(el("button").attr("type", "button").say(&w::CLOSE))
        .on("close", move |_| is_large.set(false))
        .tap(move || {
            if let Some(dialog) = &closing {
                dialog.close();
            }
        });
    let enlarge = el("button").attr("type", "button").say(&w::DRAWING_LARGE).tap(move || {
        is_large.set(true);
        if let Some(dialog) = &node {
            let _ = dialog.show_modal();
        }
    });
    let twin = el("details")
        .class("twin")
        .with(el("summary").say(&w::IN_WORDS))
        .with(live(move || in_words(question, drawing)));
    el("section")
        .class("picture")
        .attr("aria-labelledby", "drawing")
        .with(el("div").class("row").with(el("h2").id("drawing").say(&w::DRAWING)).with(enlarge))
        .with(scaled(question, drawing, "hatch", 0))
        .with(twin)
        .with(dialog)
}

fn in_words(question: Question, drawing: Memo<Option<Drawing>>) -> El {
    let voice = question.voice();
    drawing.with(|drawing| {
        let twin = drawing.iter().flat_map(|drawing| &drawing.twin);
        el("ul").class("lines").with_all(twin.map(|text| el("li").text(&voice.say(text))))
    })
}

/// The drawing at the width of its place, whatever that becomes; where `least` is more, twice as
/// wide and no wider than that: it is then moved by a thumb.
fn scaled(
    question: Question,
    drawing: Memo<Option<Drawing>>,
    hatch: &'static str,
    least: i64,
) -> El {
    let wide = RwSignal::new(NARROWEST);
    let place = el("div").class("paper").with(live(move || {
        let voice = question.voice();
        drawing.with(|drawing| {
            let wide = wide.get();
            let wide = wide.max(least.min(2 * wide));
            drawing.as_ref().map(|drawing| ink::picture(drawing, wide, voice, hatch))
        })
    }));
    let element = place.node().clone();
    // The observer tells the first width too, as soon as the place is in the page.
    let seen = Closure::<dyn FnMut()>::new(move || {
        let now = i64::from(element.client_width());
        if now > 0 && wide.try_get_untracked().is_some_and(|wide| wide != now) {
            wide.set(now);
        }
    });
    // The browser drops both with the element that is observed.
    let seen = seen.into_js_value();
    if let Ok(observer) = web_sys::ResizeObserver::new(seen.unchecked_ref()) {
        observer.observe(place.node());
    }
    place
}
