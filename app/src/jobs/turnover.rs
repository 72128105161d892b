//! A sheet to hand over: on the screen to be looked through, on paper as it is handed.

use super::no_such_job;
use super::owner::{owner_says, word};
use crate::clock;
use crate::desk::Desk;
use crate::drawing::{drawn, held, verdict};
use crate::elements::{El, el, flag, live};
use crate::sheet_view::table;
use crate::signal::Memo;
use crate::{route, speech, words as w, works};
use ledgerboard_core::job::turnover::{
    Handed, Place, Said, Since, Turnover, Who, Word, hand_over, say_of, told, told_before, turnover,
};
use ledgerboard_core::job::{Job, told_sources};
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
    let is_empty = sheet.places.is_empty();
    let open = up_to(to_settle(&sheet, voice), MOST_OPEN);
    let changed = up_to(changes(&sheet, voice), MOST_CHANGES);
    // A number that waits says so beside its answer, which takes a line more.
    let waits = sheet.numbers().filter(|number| number.is_moved).count();
    let taken = open.len() + changed.len() + waits;
    let since = sheet.last.map(|last| say!(w::SHEET_CHANGES, last.text()));
    // An owner says of each what he thinks of it: where nothing else is his to settle, that is all.
    let is_asked = who != Who::Owner || !open.is_empty();
    let open = is_asked.then(|| listed((&w::SHEET_OPEN).into(), open));
    let first = el("div").class("first").with(head(&job, who));
    let first = if is_empty {
        first.with(el("p").class("quiet").say(&w::SHEET_EMPTY))
    } else {
        let since = since.map(|since| listed(since, changed));
        first.with(open).with(since).with(in_short(desk, id, &sheet, voice, (is_own, taken)))
    };
    let places = sheet.places.iter().filter_map(|it| place(it, voice, who)).collect::<Vec<_>>();
    let sources = sheet.sources.iter().map(|source| {
        let says = say!(w::PAIR, &source.clause, source.says);
        el("li").text(&speech::say(&says))
    });
    let sources = (!sheet.sources.is_empty()).then(|| {
        el("section")
            .class("behind")
            .with(el("h2").say(&w::SOURCES))
            .with(el("ul").class("lines").with_all(sources.collect::<Vec<_>>()))
    });
    // Where there is room for them they stand with what is to settle, and not on a page of their own.
    let fits = taken + sheet.numbers().count() + 2 * sheet.sources.len() <= MOST_LINES;
    let (here, overleaf) = if fits { (sources, None) } else { (None, sources) };
    let ways = (!is_empty).then(|| ways(desk, id, sheet.clone(), is_own));
    el("main")
        .class(if who == Who::Owner { "sheet two" } else { "sheet" })
        .with(el("p").class("way-back").with(home))
        .with(first.with(here).with(signed(who)))
        .with(el("div").class("rest").with_all(places))
        .with(overleaf)
        .with(ways)
}

/// How many lines the first page has room for: of what is to settle, of what changed, in all.
const MOST_OPEN: usize = 14;
const MOST_CHANGES: usize = 8;
const MOST_LINES: usize = 36;

/// What is over, held or to be asked, one line each.
fn to_settle(sheet: &Turnover, voice: Voice) -> Vec<El> {
    let mut lines: Vec<El> = Vec::new();
    let mut line = |number: &Handed, says: Option<Text>, mark: El| {
        let what = el("span").own_text(&number.title);
        let what = match says {
            Some(says) => what.text(" · ").text(&voice.say(&says)),
            None => what,
        };
        lines.push(el("li").class("row").with(what).text(" ").with(mark));
    };
    let now = |says: &Text| el("span").class("now").text(&voice.say(says));
    for number in sheet.numbers() {
        // An owner reads his own word beside its boxes.
        if let Some(said) = number.owner_wants().filter(|_| sheet.who != Who::Owner) {
            line(number, None, now(&owner_says(said, &number.seen)));
        }
        if number.sampled > 0 {
            line(number, None, now(&say!(w::STILL_SAMPLE, number.sampled as i64)));
        }
        if let Some(says) = told_sources(&number.takes_sample) {
            line(number, None, now(&says));
        }
        for unlike in &number.unlike {
            line(number, None, now(&unlike.says()));
        }
        if number.has_versions {
            line(number, None, now(&(&w::TWO_VERSIONS).into()));
        }
    }
    for wanted in [Verdict::Over, Verdict::Ask] {
        for number in sheet.numbers() {
            if number.is_moved && wanted == Verdict::Over {
                line(number, None, el("span").class("now").say(&w::READY_MOVED));
            }
            if number.is_held {
                // What holds it is on its own lines overleaf.
                if wanted == Verdict::Over {
                    line(number, Some((&w::HELD_WHY).into()), held());
                }
                continue;
            }
            for check in number.checks.iter().filter(|check| check.verdict == wanted) {
                line(number, Some(told(check)), verdict(wanted, check.word()));
            }
        }
    }
    lines
}

/// The first of them, and how many more there are.
fn up_to(mut lines: Vec<El>, most: usize) -> Vec<El> {
    let more = lines.len().saturating_sub(most);
    if more > 0 {
        lines.truncate(most);
        lines.push(el("li").class("quiet").text(&speech::say(&say!(w::SHEET_MORE, more as i64))));
    }
    lines
}

/// Lines under a heading; “Nothing.” where there are none.
fn listed(heading: Text, lines: Vec<El>) -> El {
    let none = lines.is_empty().then(|| el("p").class("quiet").say(&w::SHEET_NO_CHANGE));
    el("section")
        .class("changes")
        .with(el("h2").text(&speech::say(&heading)))
        .with(none)
        .with(some("rows", lines))
}

/// Every number in one line, many of them beside each other on paper; an owner says there what he
/// thinks of it.
fn in_short(
    desk: Desk,
    id: StoredValue<String>,
    sheet: &Turnover,
    voice: Voice,
    (is_own, taken): (bool, usize),
) -> El {
    let is_owner = sheet.who == Who::Owner;
    let is_two = sheet.numbers().count() > LONG;
    let lines = sheet.numbers().map(|number| {
        let title = el("span").own_text(&number.title);
        let line = el("p").class("row").with(title).text(" ");
        let moved = number.is_moved.then(|| el("span").class("now").say(&w::READY_MOVED));
        if is_owner {
            // Where a table tells the places, the answer's own figure is about something else.
            let value = say!(w::PAIR, number.headline.name.clone(), number.headline.value());
            let value = number.parts.is_empty().then(|| el("span").text(&voice.say(&value)));
            let line = line.with(value).with(number.is_held.then(held)).with(moved);
            return el("li").with(line).with(owner(desk, id, number, voice, is_own));
        }
        let mark = if number.is_held { held() } else { verdict(number.verdict, number.word) };
        let value = number.headline.value();
        // Beside each other there is no room for what the figure is called.
        let value = if is_two { value } else { say!(w::PAIR, number.headline.name.clone(), value) };
        let value = el("span").class("value").text(&voice.say(&value));
        let line = line.with(el("span").with(value).text(" ").with(mark));
        el("li").with(line).with(moved.map(|moved| el("p").with(moved)))
    });
    let (class, most) = match (is_owner, is_two) {
        (true, _) => ("in-short", usize::MAX),
        (_, true) => ("in-short two", 2 * MOST_LINES.saturating_sub(taken)),
        _ => ("in-short", MOST_LINES.saturating_sub(taken)),
    };
    el("section")
        .class(class)
        .with(el("h2").say(&w::SHEET_IN_SHORT))
        .with(el("ul").class("rows").with_all(up_to(lines.collect(), most)))
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

/// What is other than on the last sheet: what says something else, what is gone, what is new.
fn changes(sheet: &Turnover, voice: Voice) -> Vec<El> {
    let mut lines: Vec<El> = Vec::new();
    let mut new: Vec<&str> = Vec::new();
    if sheet.last.is_none() {
        return lines;
    }
    let word = |it: &Handed| if it.is_held { Standing::held() } else { it.word };
    for number in sheet.numbers() {
        let says = match &number.since {
            Since::Same => continue,
            Since::New => {
                new.push(&number.title);
                continue;
            }
            _ if sheet.who == Who::Owner => {
                say!(w::SHEET_OTHER, &*number.title)
            }
            Since::Under => {
                say!(w::SHEET_UNDER, &*number.title, number.headline.value(), word(number))
            }
            Since::Was(answer, verdict) => {
                let before = told_before(answer, verdict);
                say!(w::SHEET_NOW, &*number.title, before, number.headline.value(), word(number))
            }
        };
        lines.push(el("li").text(&voice.say(&says)));
    }
    for title in &sheet.gone {
        lines.push(el("li").own_text(&speech::say(&say!(w::SHEET_GONE, &**title))));
    }
    if !new.is_empty() {
        let new = new.join(" · ");
        lines.push(el("li").own_text(&speech::say(&say!(w::SHEET_NEW, &*new))));
    }
    lines
}

fn place(place: &Place, voice: Voice, who: Who) -> Option<El> {
    let name = match &*place.name {
        "" => el("h2").class("quiet").say(&w::NO_SPOT),
        name => el("h2").own_text(name),
    };
    // What an owner has read on the first page, all of it, isn't told again.
    let has_more = |it: &&Handed| who != Who::Owner || it.drawing.is_some() || !it.parts.is_empty();
    let numbers = place.numbers.iter().filter(has_more).map(|it| number(it, voice, who));
    let numbers = numbers.collect::<Vec<_>>();
    let section = el("section").class("place-of").with(name);
    (!numbers.is_empty()).then(|| section.with_all(numbers))
}

/// A list of more rows than that may go on overleaf; any other stays whole.
const LONG: usize = 14;

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
    let drawing = it.drawing.as_ref().map(|drawing| {
        let scale = on_paper(drawing.width.nanometres(), who);
        let scale = el("p").class("on-paper scale bar-2in").text(&speech::say(&scale));
        drawn(drawing, &it.mark, voice).with(scale)
    });
    let note = (!it.note.is_empty()).then(|| el("p").own_text(&it.note));
    let is_long = it.parts.iter().map(lines_of).sum::<usize>() > LONG;
    el("article")
        .class(if is_long { "handed long" } else { "handed" })
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
        .with(some("rows", figures.collect()))
        .with(some("checks", checks.collect()))
        .with_all(parts.collect::<Vec<_>>())
}

/// A list, where there is something in it.
fn some(class: &str, lines: Vec<El>) -> Option<El> {
    (!lines.is_empty()).then(|| el("ul").class(class).with_all(lines))
}

/// The scale of a drawing as wide as the style sheet prints it: 2.75 in, an owner's 2.05 in.
fn on_paper(wide: i64, who: Who) -> Text {
    let printed = if who == Who::Owner { 52_070_000 } else { 69_850_000 };
    let times = |of: i64, by: i64| (of + by / 2) / by.max(1);
    if wide < printed {
        say!(w::SCALE_UP, times(printed, wide))
    } else {
        say!(w::SCALE_DOWN, times(wide, printed))
    }
}

fn check(check: &Check, voice: Voice) -> El {
    let note = check.note.as_ref().filter(|_| check.verdict != Verdict::Within);
    let note = note.map(|note| el("span").text(&voice.say(note)).text(" "));
    let source = el("span").class("quiet").text(&voice.phrase(&check.source.clause));
    el("li")
        .class("row")
        .with(el("span").text(&voice.say(&told(check))).text(". ").with(note).with(source))
        .text(" ")
        .with(verdict(check.verdict, check.word()))
}

/// How many lines of a part there are, in its list or in its table.
fn lines_of(part: &Part) -> usize {
    part.rows.len() + part.table.as_ref().map_or(0, |it| it.rows.len())
}

fn part(part: &Part, voice: Voice) -> El {
    let rows = part.rows.iter().map(|row| {
        let value = el("span").class("value").text(&voice.say(&row.value));
        el("li").class("row").with(el("span").text(&voice.say(&row.name))).text(" ").with(value)
    });
    let div = if lines_of(part) > LONG { el("div").class("long") } else { el("div") };
    div.with(el("h4").text(&voice.say(&part.title)))
        .with(part.note.as_ref().map(|note| el("p").text(&voice.say(note))))
        .with(some("rows", rows.collect()))
        .with(part.table.as_ref().map(|it| table(it, voice)))
}

/// What the owner says of a number: three taps on the screen, three boxes on paper.
fn owner(desk: Desk, id: StoredValue<String>, number: &Handed, voice: Voice, is_own: bool) -> El {
    let mark = number.mark.clone();
    let of = mark.clone();
    let then = number.said.clone();
    let said = Memo::new(move |_| {
        if !is_own {
            return then.clone();
        }
        desk.jobs.with(|jobs| {
            let job = id.with_value(|id| jobs.iter().find(|job| job.id == *id))?;
            ledgerboard_core::job::turnover::said(job, &of)
        })
    });
    let choices = Word::ALL.map(|word| {
        let name = ["owner ", &mark].concat();
        let seen = number.seen.clone();
        // What was said of something else is not said of this: it is to be said again.
        let is_said = move |said: &Said| said.word == word && said.is_of(&seen);
        let chosen = flag(move || said.read().as_ref().is_some_and(&is_said));
        let (mark, seen) = (mark.clone(), number.seen.clone());
        let input = el("input").attr("type", "radio").attr("name", &name);
        let input = input.prop_live("checked", move || chosen.get());
        let input = input.on("change", move |_| {
            let edit = say_of(&mark, Some(word), &seen);
            id.with_value(|id| drop(desk.edit(id, edit)));
        });
        let input = if is_own { input } else { input.attr("disabled", "") };
        el("label").class("segment").with(input).with(el("span").say(word.name()))
    });
    let now = number.seen.clone();
    let note = live(move || {
        let said = said.get()?;
        let text = word(&said, &now, said.at.text().into());
        Some(el("p").class(if said.is_of(&now) { "quiet" } else { "now" }).text(&voice.say(&text)))
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
