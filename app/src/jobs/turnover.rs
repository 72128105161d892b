//! A sheet to hand over: on the screen to be looked through, on paper as it is handed.

use super::no_such_job;
use crate::clock;
use crate::desk::Desk;
use crate::drawing::{drawn, held, spare, verdict};
use crate::elements::{El, Piece, el, flag, live};
use crate::signal::Memo;
use crate::{route, speech, words as w, works};
use ledgerboard_core::job::Job;
use ledgerboard_core::job::turnover::{
    Handed, Place, Said, Since, Turnover, Who, Word, hand_over, say_of, told_before, turnover,
};
use ledgerboard_core::say;
use ledgerboard_core::sheet::{Check, Part, Standing, Verdict};
use ledgerboard_core::words::{Text, Voice};
use leptos::prelude::*;

/// The page of a sheet.
pub(crate) fn turnover_page(desk: Desk, id: String, who: Who) -> El {
    let Some(job) = desk.job(&id) else { return no_such_job() };
    let sheet = turnover(&job, &works::survey(&job), who);
    let voice = speech::voice(job.units);
    let is_own = !job.invented;
    let home = el("a").class("door").attr("href", &route::job(&id));
    let home = home.own_text(&speech::say(&job.heading()));
    let id = StoredValue::new(id);
    let places = sheet.places.iter().map(|it| place(desk, id, it, voice, (who, is_own)));
    let places = places.collect::<Vec<_>>();
    let is_empty = places.is_empty();
    let sources = sheet.sources.iter().map(|source| {
        let says = say!(w::PAIR, source.clause, source.says);
        el("li").text(&speech::say(&says))
    });
    let sources = (!sheet.sources.is_empty()).then(|| {
        el("section")
            .class("behind")
            .with(el("h2").say(&w::SOURCES))
            .with(el("ul").class("lines").with_all(sources.collect::<Vec<_>>()))
    });
    let ways = (!is_empty).then(|| ways(desk, id, sheet.clone(), is_own));
    el("main")
        .class("sheet")
        .with(el("p").class("way-back").with(home))
        .with(head(&job, who))
        .with(changes(&sheet, voice))
        .with(if is_empty {
            el("p").class("quiet").say(&w::SHEET_EMPTY).into()
        } else {
            Piece::NONE
        })
        .with_all(places)
        .with(sources)
        .with(signed(who))
        .with(ways)
}

/// Whose sheet, of which job, under which edition, on which day.
fn head(job: &Job, who: Who) -> El {
    let title = say!(w::SHEET_FOR, who.name());
    let edition = match job.basis.electrical {
        Some(edition) => say!(w::SHEET_EDITION, edition.key()),
        None => say!(w::SHEET_NO_EDITION),
    };
    let about = [&*job.name, &*job.place].into_iter().filter(|it| !it.trim().is_empty());
    let about = about.collect::<Vec<_>>().join(" · ");
    let invented = job.invented.then(|| el("p").class("caution").say(&w::INVENTED));
    el("header")
        .class("sheet-head")
        .with(el("h1").attr("tabindex", "-1").text(&speech::say(&title)))
        .with(el("p").own_text(&about))
        .with(el("p").text(&speech::say(&say!(w::SHEET_DAY, clock::now().text(), edition))))
        .with(invented)
        .with(el("p").say(who.about()))
}

/// What is other than on the last sheet.
fn changes(sheet: &Turnover, voice: Voice) -> Piece {
    let Some(last) = sheet.last else { return Piece::NONE };
    let mut lines: Vec<El> = Vec::new();
    for number in sheet.numbers() {
        let says = match &number.since {
            Since::Same => continue,
            Since::New => say!(w::SHEET_NEW, &*number.title, number.headline.value()),
            Since::Was(answer, verdict) => {
                let before = told_before(answer, verdict);
                let word = if number.is_held { Standing::held() } else { number.word };
                say!(w::SHEET_NOW, &*number.title, before, number.headline.value(), word)
            }
        };
        lines.push(el("li").text(&voice.say(&says)));
    }
    for title in &sheet.gone {
        lines.push(el("li").own_text(&speech::say(&say!(w::SHEET_GONE, &**title))));
    }
    let heading = el("h2").text(&speech::say(&say!(w::SHEET_CHANGES, last.text())));
    let none = lines.is_empty().then(|| el("p").class("quiet").say(&w::SHEET_NO_CHANGE));
    let lines = el("ul").class("lines").with_all(lines);
    el("section").class("changes").with(heading).with(none).with(lines).into()
}

fn place(
    desk: Desk,
    id: StoredValue<String>,
    place: &Place,
    voice: Voice,
    (who, is_own): (Who, bool),
) -> El {
    let name = match &*place.name {
        "" => el("h2").class("quiet").say(&w::NO_SPOT),
        name => el("h2").own_text(name),
    };
    let numbers = place.numbers.iter().map(|it| {
        let said = (who == Who::Owner).then(|| owner(desk, id, it, voice, is_own));
        number(it, voice, who).with(said)
    });
    el("section").class("place-of").with(name).with_all(numbers.collect::<Vec<_>>())
}

fn number(it: &Handed, voice: Voice, who: Who) -> El {
    let say = |text: &Text| voice.say(text);
    let value = say!(w::PAIR, it.headline.name.clone(), it.headline.value());
    let mark = match () {
        () if it.is_held => Some(held()),
        () if who == Who::Owner => None,
        () => Some(verdict(it.verdict, it.word)),
    };
    // Where a table tells the places, the answer's own figure is about something else.
    let is_table = who == Who::Owner && !it.parts.is_empty();
    let moved = it.is_moved.then(|| el("p").class("now").say(&w::READY_MOVED));
    let figures = it.figures.iter().map(|figure| {
        let name = el("span").text(&say(&figure.name));
        let value = el("span").class("value").text(&say(&figure.value()));
        el("li").class("row").with(name).text(" ").with(value)
    });
    let checks = it.checks.iter().map(|it| check(it, voice));
    let parts = it.parts.iter().map(|it| part(it, voice));
    let drawing = it.drawing.as_ref().map(|drawing| drawn(drawing, &it.mark, voice));
    let note = (!it.note.is_empty()).then(|| el("p").own_text(&it.note));
    el("article")
        .class("handed")
        .with(el("h3").own_text(&it.title))
        .with(
            el("p")
                .class("row")
                .with((!is_table).then(|| el("span").text(&say(&value))))
                .text(" ")
                .with(mark),
        )
        .with(moved)
        .with(note)
        .with(drawing)
        .with(el("ul").class("rows").with_all(figures.collect::<Vec<_>>()))
        .with(el("ul").class("checks").with_all(checks.collect::<Vec<_>>()))
        .with_all(parts.collect::<Vec<_>>())
}

fn check(check: &Check, voice: Voice) -> El {
    let says = match &check.note {
        Some(note) if check.verdict != Verdict::Within => note.clone(),
        _ => spare(check),
    };
    let name = say!(w::PAIR, check.name.clone(), says);
    let source = el("span").class("quiet").text(&voice.say(&say!(w::FIGURE, check.source.clause)));
    el("li")
        .class("row")
        .with(el("span").text(&voice.say(&name)).text(" ").with(source))
        .text(" ")
        .with(verdict(check.verdict, check.word()))
}

fn part(part: &Part, voice: Voice) -> El {
    let rows = part.rows.iter().map(|row| {
        let value = el("span").class("value").text(&voice.say(&row.value));
        el("li").class("row").with(el("span").text(&voice.say(&row.name))).text(" ").with(value)
    });
    el("div")
        .with(el("h4").text(&voice.say(&part.title)))
        .with(part.note.as_ref().map(|note| el("p").text(&voice.say(note))))
        .with(el("ul").class("rows").with_all(rows.collect::<Vec<_>>()))
}

/// What the owner says of a number: three taps on the screen, three boxes on paper.
fn owner(desk: Desk, id: StoredValue<String>, number: &Handed, voice: Voice, is_own: bool) -> El {
    let mark = number.mark.clone();
    let answer = number.headline.amount.exact();
    let of = mark.clone();
    let said = Memo::new(move |_| {
        desk.jobs.with(|jobs| {
            let job = id.with_value(|id| jobs.iter().find(|job| job.id == *id))?;
            ledgerboard_core::job::turnover::said(job, &of)
        })
    });
    let choices = Word::ALL.map(|word| {
        let name = ["owner ", &mark].concat();
        let chosen = flag(move || said.read().as_ref().is_some_and(|said| said.word == word));
        let (mark, answer) = (mark.clone(), answer.clone());
        let input = el("input").attr("type", "radio").attr("name", &name);
        let input = input.prop_live("checked", move || chosen.get());
        let input = input.on("change", move |_| {
            let edit = say_of(&mark, Some(word), &answer);
            id.with_value(|id| drop(desk.edit(id, edit)));
        });
        let input = if is_own { input } else { input.attr("disabled", "") };
        el("label").class("segment").with(input).with(el("span").say(word.name()))
    });
    let now = number.headline.amount.exact();
    let note = live(move || {
        let Said { word, of, at } = said.get()?;
        let text = if of == now {
            say!(w::OWNER_SAID, word.name(), at.text())
        } else {
            say!(w::OWNER_SAID_OF, word.name(), super::shown(&of), at.text())
        };
        Some(el("p").class(if of == now { "quiet" } else { "now" }).text(&voice.say(&text)))
    });
    el("div")
        .class("owner")
        .with(
            el("div")
                .class("segments")
                .attr("role", "radiogroup")
                .named(&number.title)
                .with_all(choices),
        )
        .with(note)
}

/// Lines to write on, on paper.
fn signed(who: Who) -> El {
    let line = |phrase| el("p").class("write").say(phrase);
    let name = if who == Who::Owner { &w::SIGN_OWNER } else { &w::SIGN_TAKEN };
    el("section")
        .class("signed")
        .with(line(&w::SIGN_NOTES))
        .with(line(name))
        .with(line(&w::SIGN_DAY))
        .with(el("p").class("bar-2in").say(&w::SCALE_BAR))
}

/// Paper, and the note that it was handed over.
fn ways(desk: Desk, id: StoredValue<String>, sheet: Turnover, is_own: bool) -> El {
    let button = |phrase| el("button").attr("type", "button").say(phrase);
    let paper = button(&w::PRINT).class("main").tap(|| {
        let _ = window().print();
    });
    let said = el("p").attr("role", "status");
    let place = said.clone();
    let given = is_own.then(|| {
        button(&w::HANDED_OVER).tap(move || {
            let Some(job) = id.with_value(|id| untrack(|| desk.job(id))) else { return };
            if id.with_value(|id| desk.edit(id, hand_over(&job, &sheet))).is_ok() {
                let says = say!(w::HANDED_OVER_ON, clock::now().text());
                place.node().set_text_content(Some(&speech::say(&says)));
            }
        })
    });
    el("div").class("hand").with(el("div").class("buttons").with(paper).with(given)).with(said)
}
