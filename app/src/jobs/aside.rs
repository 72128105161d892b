//! What was set aside: listed with the reason, to be saved as a file by a tap. And what the browser
//! says of how long it keeps anything.

use crate::desk::Desk;
use crate::elements::{El, Piece, el, live};
use crate::store::{self, Aside, Why};
use crate::{clock, route, speech, words as w};
use js_sys::Array;
use ledgerboard_core::job::Moment;
use ledgerboard_core::say;
use ledgerboard_core::words::Phrase;
use ledgerboard_core::words::Text;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

/// The page that needs no program: it lists every record, and deletes none.
const RESCUE: &str = "rescue.html";

/// The way to it, in the words of where it stands.
pub(crate) fn rescue(says: &'static Phrase) -> El {
    el("a").class("door").attr("href", RESCUE).say(says)
}

/// Jobs that are shut, then the bytes that were set aside.
pub(super) fn aside(desk: Desk) -> Piece {
    live(move || {
        desk.aside.track();
        desk.jobs.track();
        let (shut, kept) = (store::shut(), store::set_aside());
        if shut.is_empty() && kept.is_empty() {
            return Piece::NONE;
        }
        // A job all of whose copies are listed below is not listed twice.
        let is_below = |id: &str| kept.iter().any(|aside| aside.job() == Some(id));
        let shut = shut.iter().filter(|(id, why)| *why == Why::Stopped || !is_below(id));
        let shut = shut.map(|(id, why)| shut_line(id, why));
        let kept = kept.iter().map(|aside| line(aside, &reason(desk, aside)));
        el("section")
            .class("aside")
            .attr("aria-labelledby", "aside")
            .with(el("h2").id("aside").say(&w::SET_ASIDE))
            .with(el("ul").class("lines").with_all(shut).with_all(kept))
            .with(el("p").with(rescue(&w::TO_RESCUE)))
            .into()
    })
}

fn reason(desk: Desk, aside: &Aside) -> Text {
    match aside.job() {
        Some(id) if untrack(|| desk.job(id)).is_some() => match aside.older_one_saved_at() {
            Some(at) => say!(w::OLDER_TOOK_PLACE, Moment { at, ..clock::now() }.text()),
            None => say!(w::COPY_ASIDE),
        },
        Some(_) => aside.problem().map_or_else(|| say!(w::OTHER_ASIDE), |it| it.says()),
        None => say!(w::OTHER_ASIDE),
    }
}

/// What the page of a job says of its copies that were set aside.
pub(super) fn of_job(desk: Desk, id: StoredValue<String>) -> Piece {
    live(move || {
        desk.aside.track();
        let id = id.get_value();
        let mut kept = store::set_aside();
        kept.retain(|aside| aside.job() == Some(&id));
        let is_here = untrack(|| desk.job(&id)).is_some();
        let older = kept.iter().find(|it| is_here && it.older_one_saved_at().is_some());
        let is_shut = store::shut().iter().any(|(shut, _)| *shut == id);
        if older.is_none() && (is_here || kept.is_empty() && !is_shut) {
            return Piece::NONE;
        }
        let says = older.map(|it| el("p").class("now").text(&speech::say(&reason(desk, it))));
        let to = el("a").class("door").attr("href", route::JOBS).say(&w::SET_ASIDE_IN_JOBS);
        Piece::all([says, Some(el("p").with(to))])
    })
}

fn shut_line(id: &str, why: &Why) -> El {
    let aside =
        store::of_job(id).unwrap_or_else(|| Aside { name: id.to_owned(), text: String::new() });
    let line = line(&aside, &why.says());
    if *why != Why::Stopped {
        return line;
    }
    let noted = store::job_name(id);
    let dare = el("button").attr("type", "button").say(&w::OPEN_ALL_THE_SAME);
    line.with(dare.tap(move || store::dare(&noted)))
}

/// The name of a job, as far as it can be made out of bytes that can't be read.
fn likely_name(aside: &Aside) -> String {
    let (_, rest) = aside.text.split_once("\"name\":\"").unwrap_or_default();
    let name = rest.split('"').next().unwrap_or_default();
    match name {
        "" if aside.job().is_some() => speech::phrase(&w::A_JOB),
        "" => aside.name.clone(),
        name => name.to_owned(),
    }
}

fn line(aside: &Aside, why: &Text) -> El {
    let line = el("li")
        .with(el("span").own_text(&likely_name(aside)))
        .text(" ")
        .with(el("p").text(&speech::say(why)));
    if aside.text.is_empty() {
        return line;
    }
    let aside = aside.clone();
    let save = el("button").attr("type", "button").say(&w::SAVE_AS_FILE);
    line.with(save.tap(move || {
        let _ = download(&[&aside.name, ".txt"].concat(), &aside.text);
    }))
}

/// Hands a text to the browser as a file.
fn download(name: &str, text: &str) -> Option<()> {
    let blob = web_sys::Blob::new_with_str_sequence(&Array::of1(&text.into())).ok()?;
    let address = web_sys::Url::create_object_url_with_blob(&blob).ok()?;
    let link = el("a").attr("href", &address).attr("download", name);
    link.node().dyn_ref::<web_sys::HtmlElement>()?.click();
    // Not at once: some browsers fetch it only after the tap is over.
    set_timeout(
        move || {
            let _ = web_sys::Url::revoke_object_url(&address);
        },
        std::time::Duration::from_secs(60),
    );
    Some(())
}

/// Said for as long as the browser refuses to promise anything.
pub(super) fn stays(desk: Desk) -> Piece {
    live(move || {
        desk.track_stores();
        let may_clear = store::stays() == Some(false) && !desk.jobs.read().is_empty();
        may_clear.then(|| el("p").class("quiet").say(&w::MAY_CLEAR))
    })
}
