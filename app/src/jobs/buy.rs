//! What to buy for a job: a line a thing, ticked off when it is there, with a person's own spare,
//! package and price.

use super::details::{below, text_field};
use super::no_such_job;
use crate::backup::{CSV, Handed, hand_on, named};
use crate::clock;
use crate::desk::Desk;
use crate::elements::{El, Piece, each, el, flag, live, when};
use crate::keep::{Shared, send};
use crate::later::later;
use crate::signal::{Memo, RwSignal};
use crate::{route, speech, words as w, works};
use ledgerboard_core::job::buying::{
    About, Bought, Buying, COUNTED, LEFT_OUT, Line, Share, bought_before, buying, csv, in_field,
    is_unread, left_out, list, read_like, read_price, reason, said_of, typed_in, uncounted,
    warnings,
};
use ledgerboard_core::job::{Edit, Job, LONGEST_JOT};
use ledgerboard_core::measure::Measure;
use ledgerboard_core::measure::Units;
use ledgerboard_core::measure::unit::PERCENT;
use ledgerboard_core::say;
use ledgerboard_core::words::{Phrase, Text, Voice};
use leptos::prelude::*;

/// What the lines of the page share.
#[derive(Clone, Copy)]
struct Page {
    desk: Desk,
    id: StoredValue<String>,
    all: Memo<Option<Buying>>,
    /// What was unticked here under what was bought: it stays in sight, so that a tap on it by mistake
    /// is taken back by another.
    unticked: RwSignal<Vec<Bought>>,
    /// Nothing is noted on the invented job.
    is_own: bool,
}

impl Page {
    fn job(self) -> Option<Job> {
        self.id.with_value(|id| untrack(|| self.desk.job(id)))
    }

    fn voice(self) -> Voice {
        speech::voice(self.job().map(|job| job.units).unwrap_or_default())
    }

    fn note(self, about: About<'_>, key: &str, says: String) {
        self.edit(Edit::Jot { key: said_of(about, key), says });
    }

    fn edit(self, edit: Edit) {
        self.id.with_value(|id| drop(self.desk.edit(id, edit)));
    }

    /// What was bought and nothing asks for any more, and what of that was unticked here.
    fn bought(self) -> Vec<Bought> {
        self.all.with(|all| {
            let Some(all) = all else { return Vec::new() };
            let is_told = |key: &str| {
                all.bought.iter().any(|it| it.key == key)
                    || all.lines.iter().any(|it| it.key == key && it.got.is_some())
            };
            let mut bought = self.unticked.get();
            bought.retain(|it| !is_told(&it.key));
            bought.extend(all.bought.iter().cloned());
            // As they stood before.
            bought.sort_by(|one, other| one.key.cmp(&other.key));
            bought
        })
    }

    fn line<T>(self, key: &str, read: impl FnOnce(&Line) -> T) -> Option<T> {
        self.all.with(|all| all.as_ref()?.lines.iter().find(|line| keyed(line) == key).map(read))
    }
}

/// What tells two lines apart: their material, and whether it is told by length, weight or number.
fn keyed(line: &Line) -> String {
    let unit = line.needs.of_same(0).exact();
    [&*line.key, "|", &*unit].concat()
}

/// The page of what to buy.
pub(crate) fn buying_page(desk: Desk, id: String) -> El {
    let Some(job) = desk.job(&id) else { return no_such_job() };
    let home = route::job(&id);
    let id = StoredValue::new(id);
    let all = Memo::new(move |_| {
        let job = id.with_value(|id| desk.job(id))?;
        Some(buying(&job, &works::survey(&job)))
    });
    let page = Page { desk, id, all, unticked: RwSignal::new(Vec::new()), is_own: !job.invented };
    let is_empty = flag(move || {
        all.with(|all| {
            all.as_ref().is_none_or(|all| all.lines.is_empty() && all.unknown.is_empty())
        }) && page.bought().is_empty()
    });
    let back = el("a").class("door").attr("href", &home).own_text(&speech::say(&job.heading()));
    let day = el("p").class("on-paper").text(&speech::say(&clock::now().text()));
    el("main").with(heading(&w::TO_BUY)).with(el("p").with(back)).with(day).with(live(move || {
        if is_empty.get() {
            return el("p").class("quiet").say(&w::NOTHING_TO_BUY).into();
        }
        untrack(|| inside(page))
    }))
}

fn heading(phrase: &'static Phrase) -> El {
    el("h1").attr("tabindex", "-1").say(phrase)
}

fn inside(page: Page) -> Piece {
    // What nothing is counted of stands apart, and is bought by nobody.
    let keys = move |counted: bool| {
        page.all.with(|all| {
            let lines = all.iter().flat_map(|all| &all.lines);
            lines.filter(|line| line.is_counted() == counted).map(keyed).collect::<Vec<_>>()
        })
    };
    // A trade's name stands over its first line.
    let first = move |key: &str| {
        page.all.with(|all| {
            let lines = all.as_ref()?.lines.iter().filter(|line| line.is_counted());
            let lines: Vec<&Line> = lines.collect();
            let at = lines.iter().position(|line| keyed(line) == key)?;
            let trade = lines[at].trade;
            (at == 0 || lines[at - 1].trade != trade).then(|| trade.name())
        })
    };
    let lines = each(
        move || keys(true),
        move |key, _| {
            let name = key.to_owned();
            let trade = live(move || first(&name).map(|trade| el("h2").say(trade)));
            el("li").class("buy").with(trade).with(one(page, key.to_owned()))
        },
    );
    let left = flag(move || !keys(false).is_empty());
    let uncounted = when(
        move || left.get(),
        move || {
            let names = move || {
                let names = page.all.with(|all| Some(uncounted(all.as_ref()?, page.voice())));
                speech::say(&say!(w::NOT_COUNTED, names.unwrap_or_default()))
            };
            let lines = each(
                move || keys(false),
                move |key, _| el("li").class("buy").with(one(page, key.to_owned())),
            );
            // Paper names them above.
            el("details")
                .class("folded screen-only")
                .with(el("summary").text_live(names))
                .with(el("ul").class("buys").with(lines))
        },
    );
    let spare = page
        .is_own
        .then(|| field(page, About::Spare, "", "spare-of-all", &w::SPARE_OF_ALL, percent));
    let missing = live(move || {
        let count = page.all.with(|all| all.as_ref().map_or(0, |all| all.missing.len())) as i64;
        (count > 0).then(|| el("p").class("now").text(&speech::say(&say!(w::BUY_MISSING, count))))
    });
    let held = live(move || {
        let titles =
            page.all.with(|all| all.as_ref().map_or(String::new(), |all| all.held.join(", ")));
        (!titles.is_empty())
            .then(|| el("p").class("now").text(&speech::say(&say!(w::BUY_HELD, titles))))
    });
    let warned = live(move || {
        let voice = page.voice();
        let line = |class: &str, says: Text| el("p").class(class).own_text(&voice.say(&says));
        page.all.with(|all| {
            let all = all.as_ref()?;
            let said = warnings(all).into_iter().map(|says| line("now", says));
            // On the screen it is a list of its own.
            let job = page.job()?;
            let left = left_out(&job, all, voice).map(|says| line("now on-paper", says));
            Some(Piece::all(said.chain(left)))
        })
    });
    Piece::all([
        missing,
        warned,
        held,
        spare.into(),
        el("ul").class("buys").with(lines).into(),
        uncounted,
        bought(page),
        total(page),
        hand(page).into(),
        el("p").class("quiet").say(&w::BUY_HOW).into(),
    ])
}

/// What is wrong with a percentage; none where nothing is.
fn percent(text: &str) -> Option<Text> {
    let is_one = Measure::read(text, &PERCENT, Units::Customary)
        .is_ok_and(|read| (0..=100_000_000).contains(&read.millionths()));
    (!is_one).then(|| (&w::NOT_A_PERCENT).into())
}

/// What was bought and no number asks for any more; unticked it stays until the page is left.
fn bought(page: Page) -> Piece {
    let keys = move || page.bought().into_iter().map(|bought| bought.key).collect::<Vec<_>>();
    let is_any = flag(move || !keys().is_empty());
    let inside = move || {
        let lines = each(keys, move |key, _| {
            let key = key.to_owned();
            let id = ["bought ", &*key].concat();
            let of = key.clone();
            let has = flag(move || {
                page.all.with(|all| all.iter().flat_map(|all| &all.bought).any(|it| it.key == of))
            });
            let this = move || page.bought().into_iter().find(|bought| bought.key == key);
            let of_this = this.clone();
            let says = move || of_this().map(|it| page.voice().say(&it.says)).unwrap_or_default();
            let tick = page.is_own.then(|| {
                let tick = el("input").attr("type", "checkbox").id(&id);
                tick.prop_live("checked", move || has.get()).on("change", move |event| {
                    let Some(bought) = untrack(&this) else { return };
                    if event_target_checked(&event) {
                        return page.edit(bought.ticked());
                    }
                    // First, so that its line never goes.
                    page.unticked.update(|all| {
                        all.retain(|it| it.key != bought.key);
                        all.push(bought.clone());
                    });
                    page.note(About::Got, &bought.key, String::new());
                })
            });
            let label = el("label").attr("for", &id).with(el("span").text_live(says).own());
            el("li")
                .class("buy")
                .class_when("screen-only", move || !has.get())
                .with(el("div").class("buy-line").with(tick).with(label))
        });
        let has_none =
            flag(move || page.all.with(|all| all.iter().all(|all| all.bought.is_empty())));
        let title = el("h2").class_when("screen-only", move || has_none.get());
        Piece::all([
            Piece::from(title.say(bought_before())),
            el("ul").class("buys bought").with(lines).into(),
        ])
    };
    when(move || is_any.get(), inside)
}

/// What is still to pay and what was paid, as far as prices are known.
fn total(page: Page) -> Piece {
    live(move || {
        page.all.with(|all| {
            let voice = page.voice();
            let line = |sum| el("p").class("total").text(&voice.say(&sum));
            Some(Piece::all(all.as_ref()?.sums().into_iter().map(line)))
        })
    })
}

/// One thing: its tick, its name, how much of it; folded under it where that comes from and what a
/// person says of it.
fn one(page: Page, key: String) -> Piece {
    let material = page.line(&key, |line| line.key.clone()).unwrap_or_default();
    let id = ["got ", &*material].concat();
    let told = |read: fn(&Line) -> Text| {
        let key = key.clone();
        move || page.line(&key, |line| page.voice().say(&read(line))).unwrap_or_default()
    };
    let got = key.clone();
    let is_got = flag(move || page.line(&got, Line::is_got).unwrap_or_default());
    let (here, buys) = (material.clone(), key.clone());
    let tick = page.is_own.then(|| {
        let tick = el("input").attr("type", "checkbox").id(&id);
        tick.prop_live("checked", move || is_got.get()).on("change", move |event| {
            let all = untrack(|| page.line(&buys, |line| line.ticked(page.voice())));
            match all.filter(|_| event_target_checked(&event)) {
                Some(ticked) => page.edit(ticked),
                None => page.note(About::Got, &here, String::new()),
            }
        })
    });
    let label = el("label")
        .attr("for", &id)
        .with(el("span").class("what").text_live(told(|line| line.name.clone())))
        .text(" ")
        .with(el("span").class("value").text_live(told(Line::says)));
    let ticked = el("div").class("buy-line").class_when("got", move || is_got.get());
    let more = {
        let key = key.clone();
        live(move || {
            let more = page.line(&key, |line| line.more().map(|more| (more, line.got)))??;
            let (more, got) = (more.0, more.1?);
            let text = say!(w::BUY_MORE, more, got.at.text());
            Some(el("p").class("now").text(&page.voice().say(&text)))
        })
    };
    let comes_to = {
        let key = key.clone();
        live(move || {
            let text = page.line(&key, Line::comes_to)??;
            Some(el("p").class("quiet").text(&page.voice().say(&text)))
        })
    };
    Piece::all([
        ticked.with(tick).with(label).into(),
        comes_to,
        more,
        folded(page, key.clone(), material, told(need)).into(),
    ])
}

/// How much is needed, before it is rounded to what a shop sells; where it is what is bought, what
/// else is under it.
fn need(line: &Line) -> Text {
    match line.spare.millionths() {
        _ if line.is_as_needed() => (&w::BUY_FROM).into(),
        0 => say!(w::BUY_NEEDS, line.needs),
        _ => say!(w::BUY_NEEDS_SPARE, line.needs, line.spare, line.in_all),
    }
}

fn folded(page: Page, key: String, material: String, need: impl Fn() -> String + 'static) -> El {
    // What can't be read is in sight.
    let own = [About::Pack, About::Price, About::Spare];
    let is_unread = page.job().is_some_and(|job| {
        page.is_own && own.into_iter().any(|about| is_unread(&job, about, &material))
    });
    let open = RwSignal::new(is_unread);
    // On paper there is nothing to open.
    let of = key.clone();
    let bare = flag(move || page.line(&of, Line::is_as_needed).unwrap_or_default());
    let summary = el("summary").class_when("screen-only", move || bare.get()).text_live(need);
    let details = el("details").with(summary);
    let details = if is_unread { details.attr("open", "") } else { details };
    let node = details.node().clone();
    let inside = move || {
        let shares = {
            let (key, material) = (key.clone(), material.clone());
            live(move || {
                let shares = page.line(&key, |line| line.shares.clone()).unwrap_or_default();
                let job = page.job()?;
                let shares = shares.iter().map(|it| share(page, &job, &material, it));
                Some(el("ul").class("shares").with_all(shares))
            })
        };
        let like = untrack(|| page.line(&key, |line| line.needs));
        let own = page.is_own.then(|| {
            let id = |about: &str| [about, " ", &*material].concat();
            let any = move |text: &str| {
                let read = like.and_then(|like| read_like(text, like));
                let is_any = read.is_some_and(|read| read.raw() > 0);
                (!is_any).then(|| (&w::NOT_A_PACK).into())
            };
            let money = |text: &str| read_price(text).err();
            Piece::all([
                field(page, About::Pack, &material, &id("pack"), &w::BUY_PACK, any),
                field(page, About::Price, &material, &id("price"), &w::BUY_PRICE, money),
                field(page, About::Spare, &material, &id("spare"), &w::BUY_SPARE, percent),
            ])
        });
        Piece::all([shares, own.unwrap_or(Piece::NONE)])
    };
    details
        .with(when(move || open.get(), inside))
        .on("toggle", move |_| open.set(node.has_attribute("open")))
}

/// What one mark asks for, and the tap that leaves it out or counts it.
fn share(page: Page, job: &Job, material: &str, share: &Share) -> El {
    let title = el("a").attr("href", &route::mark(&job.id, &share.mark)).own_text(&share.title);
    let voice = page.voice();
    let counts = share.counted == share.asks;
    let text = match reason(job, share) {
        Some(why) => say!(w::SHARE_WHY, share.asks, why),
        None => say!(w::FIGURE, share.asks),
    };
    let held = share.is_held.then(crate::drawing::held);
    let waits = share.waits.then(|| el("span").class("now").text(" ").say(&w::READY_MOVED));
    let (mark, material) = (share.mark.clone(), material.to_owned());
    let says = match (counts, job.jotted(&said_of(About::Share(&mark), &material))) {
        (_, said) if !said.is_empty() => "",
        (true, _) => LEFT_OUT,
        (false, _) => COUNTED,
    };
    let phrase = if counts { &w::SHARE_OUT } else { &w::SHARE_IN };
    let tap = move || page.note(About::Share(&mark), &material, says.to_owned());
    let button = page.is_own.then(|| {
        let button = el("button").attr("type", "button").class("quiet");
        button.say(phrase).tap(tap)
    });
    el("li")
        .class("row")
        .with(el("span").with(title).text(" ").own_text(&share.spot))
        .with(el("span").class("value").own_text(&voice.say(&text)).with(held).with(waits))
        .with(button)
}

/// A field of a person's own; what can't be read is said under it, and kept without counting.
fn field(
    page: Page,
    about: About<'static>,
    key: &str,
    id: &str,
    label: &'static Phrase,
    wrong: impl Fn(&str) -> Option<Text> + Copy + Send + Sync + 'static,
) -> El {
    let key = StoredValue::new(key.to_owned());
    let said = page.job().map(|job| key.with_value(|key| in_field(&job, about, key).to_owned()));
    let said = said.unwrap_or_default();
    let wrong = move |typed: &str| Some(typed.trim()).filter(|it| !it.is_empty()).and_then(wrong);
    // What could not be read at the last visit says so at this one.
    let fault = RwSignal::new(wrong(&said));
    let text = RwSignal::new(said);
    let soon = later(move |_| {
        let (Some(typed), Some(key)) = (text.try_get_untracked(), key.try_get_value()) else {
            return;
        };
        let wrong = wrong(&typed);
        if let Some(job) = page.job() {
            page.edit(typed_in(&job, about, &key, typed.trim(), wrong.is_none()));
        }
        fault.set(wrong);
    });
    let input = text_field(id, LONGEST_JOT, "input")
        .attr("inputmode", "decimal")
        .flag_live("aria-invalid", move || fault.with(Option::is_some))
        .attr("aria-describedby", &[id, "-fault"].concat())
        .value_live(move || text.get())
        .on("input", move |event| {
            text.set(event_target_value(&event));
            soon();
        });
    let says = move || fault.with(|it| it.as_ref().map(speech::say)).unwrap_or_default();
    let fault = el("p").class("fault").attr("aria-live", "polite").text_live(says);
    let fault = fault.id(&[id, "-fault"].concat());
    // What nobody has said is nothing to read on paper.
    below(id, label, input)
        .class_when("screen-only", move || text.with(|text| text.trim().is_empty()))
        .with(fault)
}

/// The ways out: a text to send, a table, paper.
fn hand(page: Page) -> El {
    let said = RwSignal::new(String::new());
    let shown = RwSignal::new(String::new());
    let told = move |phrase: &'static Phrase| said.set(speech::phrase(phrase));
    let with = move |make: fn(&Job, &Buying, Voice) -> String| {
        let job = page.job()?;
        let all = untrack(|| page.all.with(Clone::clone))?;
        Some((make(&job, &all, page.voice()), job))
    };
    let button = |phrase| el("button").attr("type", "button").say(phrase);
    let text = button(&w::SEND_TEXT).class("main").tap(move || {
        let Some((text, job)) = with(list) else { return };
        send(&speech::say(&job.heading()), text, move |shared| match shared {
            Shared::Copied => told(&w::TEXT_COPIED),
            Shared::Shown(text) => shown.set(text),
        });
    });
    let table = button(&w::SAVE_TABLE).tap(move || {
        let Some((text, job)) = with(csv) else { return };
        hand_on(&named(&job, ".csv"), CSV, &text, move |handed| match handed {
            Handed::Shared => told(&w::TABLE_SHARED),
            Handed::Downloaded => told(&w::TABLE_SAVED),
            Handed::NotShared => said.set(String::new()),
            Handed::Refused => told(&w::NO_FILE),
        });
    });
    let paper = button(&w::PRINT).tap(|| {
        let _ = window().print();
    });
    let by_hand = live(move || {
        let text = shown.get();
        (!text.is_empty()).then(|| {
            let area = el("textarea").attr("readonly", "").attr("rows", "8").own();
            area.named(&speech::phrase(&w::SEND_TEXT)).text(&text)
        })
    });
    el("div")
        .class("hand")
        .with(el("div").class("buttons").with(text).with(table).with(paper))
        .with(el("p").attr("role", "status").text_live(move || said.get()))
        .with(by_hand)
}
