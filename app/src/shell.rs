//! The frame of every page, and which page stands in it.

use crate::desk::Desk;
use crate::elements::{El, Piece, el, live, on_change};
use crate::home::home;
use crate::question::{Opening, open, question_page};
use crate::route::{self, Route};
use crate::settings_page::settings_page;
use crate::store::Trouble;
use crate::update_bar::{update_bars, version};
use crate::{backup, jobs, speech, store, words as w};
use ledgerboard_core::catalog::{self, Entry, Link, LinkProblem};
use ledgerboard_core::edition::Basis;
use ledgerboard_core::measure::Units;
use ledgerboard_core::say;
use ledgerboard_core::words::Phrase;
use leptos::prelude::*;
use std::time::Duration;
use wasm_bindgen::JsCast;

/// The whole page.
pub(crate) fn shell() -> Piece {
    let desk = Desk::open();
    let _ = window_event_listener_untyped("hashchange", move |_| desk.route.set(Route::current()));
    let _ = window_event_listener_untyped("storage", move |event| {
        let key = event.dyn_ref::<web_sys::StorageEvent>().and_then(web_sys::StorageEvent::key);
        if let Some(key) = key {
            store::other_tab(&key);
        }
    });
    let _ = window_event_listener_untyped("visibilitychange", move |_| {
        if !document().hidden() {
            store::try_again();
        }
    });
    let _ = window_event_listener_untyped("pagehide", |_| store::left());
    let _ = window_event_listener_untyped("beforeunload", |event| {
        if store::only_on_page() {
            event.prevent_default();
            // Older browsers ask only when this is set.
            let _ = js_sys::Reflect::set(&event, &"returnValue".into(), &"1".into());
        }
    });
    open_for_print();
    on_change(
        move || desk.route.track(),
        move || {
            request_animation_frame(move || arrive(desk));
        },
    );
    let back = live(move || match desk.route.get() {
        Route::Home => el("span").class("name").say(&w::NAME),
        _ => el("a").class("back").attr("href", route::HOME).say(&w::TO_HOME),
    });
    let page = live(move || {
        let route = desk.route.get();
        match route.job().map(str::to_owned) {
            Some(id) if is_coming(desk, &id) => untrack(|| coming(&id)),
            _ => untrack(|| guarded(desk, route)),
        }
    });
    let [asks, good_to_know] = update_bars();
    let settings = el("a").attr("href", route::SETTINGS).say(&w::SETTINGS);
    let version = speech::say(&say!(w::VERSION, version()));
    Piece::all([
        el("header").class("top").with(back).with(jobs::switch(desk)).into(),
        asks.into(),
        trouble(desk).into(),
        page,
        el("footer")
            .class("foot")
            .with(good_to_know)
            .with(el("p").say(&w::PRIVACY).text(" ").with(settings))
            .with(el("p").class("quiet").text(&version))
            .into(),
    ])
}

/// Whether a job is still to be read. Who asks is told when that is over.
fn is_coming(desk: Desk, id: &str) -> bool {
    let is_unread = untrack(|| !desk.has(id)) && !store::has_read();
    if is_unread {
        desk.jobs.track();
        desk.track_stores();
    }
    is_unread
}

/// In the place of a page about it.
fn coming(id: &str) -> El {
    let id = id.to_owned();
    // Not while the page is being drawn: it may be there at once.
    set_timeout(move || store::want(&id), Duration::ZERO);
    el("main")
        .with(el("h1").attr("tabindex", "-1").say(&w::OPENING))
        .with(door(route::JOBS, &speech::phrase(&w::ALL_JOBS)))
}

/// From the second page on: a reader hears where it is, and a thumb starts at the top; in what was
/// found, where it was left.
fn arrive(desk: Desk) {
    let heading = document().query_selector("h1").ok().flatten();
    if let Some(heading) = heading.and_then(|it| it.dyn_into::<web_sys::HtmlElement>().ok()) {
        let _ = heading.focus();
    }
    let is_at_jobs = desk.route.with_untracked(|route| *route == Route::Jobs);
    let left_at = desk.sought.with_untracked(|sought| match sought.typed.trim() {
        "" => 0.0,
        _ => sought.place,
    });
    window().scroll_to_with_x_and_y(0.0, if is_at_jobs { left_at } else { 0.0 });
}

/// What keeps things from being saved, until it no longer does.
fn trouble(desk: Desk) -> El {
    el("div").class("trouble").attr("role", "alert").with(live(move || {
        let trouble = desk.trouble.get()?;
        let unsaved = !matches!(trouble, Trouble::OnlyJobs | Trouble::Stopped | Trouble::SetAside);
        let says = el("p").text(&speech::say(&trouble.says()));
        let copy = if unsaved { backup::of_all_jobs(desk) } else { Piece::NONE };
        Some(el("div").with(says).with(copy))
    }))
}

/// Notes what is opened while it is opened: what stopped the page once stays shut.
fn guarded(desk: Desk, route: Route) -> El {
    let noted = match (&route, route.job()) {
        (_, Some(id)) => store::job_name(id),
        (Route::Calculator(id), _) => store::draft_name(id),
        (Route::Question(link), _) => store::draft_name(&link.calculator),
        _ => return page(desk, route),
    };
    if store::stopped_at(&noted) {
        return stopped(desk, route, noted);
    }
    store::opening(&noted);
    let page = page(desk, route);
    // Once it is shown, and all that follows from it has run.
    set_timeout(move || store::opened(&noted), Duration::ZERO);
    page
}

fn stopped(desk: Desk, route: Route, noted: String) -> El {
    let button = |phrase| el("button").attr("type", "button").say(phrase);
    let calculator = match &route {
        Route::Calculator(id) => Some(id.clone()),
        Route::Question(link) => Some(link.calculator.clone()),
        _ => None,
    };
    let fresh = calculator.map(|id| {
        button(&w::SET_IT_ASIDE).tap(move || {
            store::drop_draft(&id);
            route::go(&route::calculator(&id));
            desk.route.update(|_| ());
        })
    });
    let dare = button(&w::OPEN_ALL_THE_SAME).tap(move || {
        store::dare(&noted);
        desk.route.update(|_| ());
    });
    el("main")
        .with(el("h1").attr("tabindex", "-1").say(&w::STOPPED_HERE))
        .with(el("p").say(&w::STOPPED_HERE_SAYS))
        .with(el("p").class("buttons").with(dare).with(fresh))
        .with(el("p").with(jobs::rescue(&w::TO_RESCUE)))
        .with(door(route::HOME, &speech::phrase(&w::TO_HOME)))
}

fn page(desk: Desk, route: Route) -> El {
    let view = match route {
        Route::Home => home(desk),
        Route::Jobs => jobs::jobs_page(desk),
        Route::Settings => settings_page(desk),
        Route::Job(id) => jobs::job_page(desk, id),
        Route::Buying(id) => jobs::buying_page(desk, id),
        Route::Sheet(id, who) => jobs::turnover_page(desk, id, who),
        Route::Ready(id) => jobs::ready_page(desk, id),
        Route::Calculator(id) => match catalog::find(&id) {
            Some(entry) => question_page(desk, open(desk, entry), true),
            None => nowhere(&w::NOWHERE),
        },
        Route::Question(link) => match catalog::find(&link.calculator) {
            Some(entry) => {
                let draft = store::draft(entry.id);
                question_page(desk, Opening::of_link(entry, link, draft), true)
            }
            None => nowhere(&w::NOWHERE),
        },
        Route::Unreadable(id, problem) => unreadable(catalog::find(&id), problem),
        Route::Mark(job, mark) => kept(desk, &job, &mark),
    };
    let heading = move || {
        let heading = document().query_selector("h1").ok().flatten();
        let text = heading.and_then(|it| it.text_content()).unwrap_or_default();
        document().set_title(&speech::say(&say!(w::TITLED, text)));
    };
    request_animation_frame(heading);
    view
}

/// Paper has nothing to tap: what is folded is opened for it, and folded again after.
fn open_for_print() {
    let all = |selector: &str, act: &dyn Fn(&web_sys::Element)| {
        let Ok(found) = document().query_selector_all(selector) else { return };
        for at in 0..found.length() {
            if let Some(it) = found.item(at).and_then(|it| it.dyn_into().ok()) {
                act(&it);
            }
        }
    };
    const FOR_PAPER: &str = "data-for-paper";
    let _ = window_event_listener_untyped("beforeprint", move |_| {
        all(".heading:not([open]), .more:not([open])", &|it| {
            let _ = it.set_attribute("open", "").and_then(|()| it.set_attribute(FOR_PAPER, ""));
            // The browser tells of it only after paper is made; what is built when it is opened has
            // to be there before.
            let _ = web_sys::Event::new("toggle").map(|told| it.dispatch_event(&told));
        });
    });
    let _ = window_event_listener_untyped("afterprint", move |_| {
        all("[data-for-paper]", &|it| {
            let _ = it.remove_attribute("open").and_then(|()| it.remove_attribute(FOR_PAPER));
        });
    });
}

fn kept(desk: Desk, job: &str, mark: &str) -> El {
    let found = desk.job(job).and_then(|job| job.mark(mark).cloned().map(|mark| (job, mark)));
    let Some((job, mark)) = found else { return nowhere(&w::NO_SUCH_MARK) };
    match catalog::find(&mark.calculator).filter(|entry| entry.version == mark.version) {
        Some(entry) => question_page(desk, Opening::of_mark(entry, &job, &mark), false),
        None => nowhere(&w::NOWHERE),
    }
}

fn nowhere(heading: &'static Phrase) -> El {
    el("main")
        .with(el("h1").attr("tabindex", "-1").say(heading))
        .with(el("p").say(&w::NOWHERE_SAYS))
        .with(door(route::HOME, &speech::phrase(&w::TO_HOME)))
}

fn door(address: &str, text: &str) -> El {
    el("p").with(el("a").class("door").attr("href", address).text(text))
}

fn unreadable(entry: Option<&'static Entry>, problem: LinkProblem) -> El {
    let why = match problem {
        LinkProblem::Encoding => &w::BAD_LINK_ENCODING,
        LinkProblem::TooLong => &w::BAD_LINK_LONG,
        LinkProblem::Shape => &w::BAD_LINK_SHAPE,
        LinkProblem::Setting => &w::BAD_LINK_SETTING,
    };
    let sample = entry.map(|entry| {
        let link = Link::new(entry.id, entry.sample(), Basis::default(), Units::Customary);
        door(&route::question(&link), &speech::say(&say!(w::OPEN_SAMPLE, entry.name)))
    });
    el("main")
        .with(el("h1").attr("tabindex", "-1").say(&w::BAD_LINK))
        .with(el("p").say(why))
        .with(sample)
        .with(door(route::HOME, &speech::phrase(&w::TO_HOME)))
}
