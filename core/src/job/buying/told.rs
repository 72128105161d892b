//! What to buy, on its way elsewhere: a text to send, and a table for a spreadsheet.

use super::{Buying, Line, bought_before, left_out, reason, warnings};
use crate::job::site::Job;
use crate::job::words as w;
use crate::say;
use crate::words::{Phrase, Text, Voice};

/// A text to send to a shop or a helper: a line a thing under its trade, what is there already left
/// out; then what was bought and is not asked for any more, and what it all comes to.
pub fn list(job: &Job, buying: &Buying, voice: Voice) -> String {
    let mut text = voice.say(&say!(w::TO_BUY_FOR, job.heading()));
    let mut trade = None;
    for line in buying.lines.iter().filter(|line| line.is_counted() && !line.is_got()) {
        if trade != Some(line.trade) {
            trade = Some(line.trade);
            text.push_str("\n\n");
            text.push_str(&voice.say(&Text::from(line.trade.name())));
        }
        let (how_much, bill) = match line.more() {
            Some(more) => (say!(w::MORE_OF, more), line.bill(more)),
            None => (line.says(), line.bill(line.buys)),
        };
        text.push_str("\n- ");
        text.push_str(&voice.say(&say!(w::WHAT_AND_HOW_MUCH, line.name.clone(), how_much)));
        if let Some(bill) = bill {
            text.push_str(", ");
            text.push_str(&voice.say(&bill));
        }
    }
    if !buying.bought.is_empty() {
        text.push_str("\n\n");
        text.push_str(&voice.phrase(bought_before()));
    }
    for bought in &buying.bought {
        text.push_str("\n- ");
        text.push_str(&voice.say(&bought.says));
    }
    for (at, sum) in buying.sums().iter().enumerate() {
        text.push_str(if at == 0 { "\n\n" } else { "\n" });
        text.push_str(&voice.say(sum));
    }
    for says in warnings(buying).into_iter().chain(left_out(job, buying, voice)) {
        text.push_str("\n\n");
        text.push_str(&voice.say(&says));
    }
    text
}

/// A table as RFC 4180 has it: a head, then a line for each mark's share of each thing. The totals
/// stand on the first line of a thing and are empty on the others, so that a column adds up. Last what
/// was bought and is not asked for any more.
pub fn csv(job: &Job, buying: &Buying, voice: Voice) -> String {
    let head: [&'static Phrase; 14] = [
        &w::CSV_TRADE,
        &w::CSV_WHAT,
        &w::CSV_BUY,
        &w::CSV_PACK,
        &w::CSV_PRICE,
        &w::CSV_COST,
        &w::CSV_NEED,
        &w::CSV_SPARE,
        &w::CSV_GOT,
        &w::CSV_FROM,
        &w::CSV_SPOT,
        &w::CSV_ASKS,
        &w::CSV_COUNTS,
        &w::CSV_WHY,
    ];
    let mut text = String::new();
    row(&mut text, head.into_iter().map(|phrase| voice.say(&phrase.into())));
    for line in &buying.lines {
        for (at, share) in line.shares.iter().enumerate() {
            let total = totals(line);
            let waits = share.waits.then(|| Text::from(&w::SHARE_WAITS));
            let why: Vec<String> =
                reason(job, share).into_iter().chain(waits).map(|why| voice.say(&why)).collect();
            let why = why.join("; ");
            let own = |text: &str| plain(text);
            let cells = [voice.say(&Text::from(line.trade.name())), voice.say(&line.name)]
                .into_iter()
                .chain(total.map(|cell| if at == 0 { cell } else { String::new() }))
                .chain([own(&share.title), own(&share.spot)])
                .chain([share.asks.exact(), share.counted.exact(), why]);
            row(&mut text, cells);
        }
    }
    for bought in &buying.bought {
        let what = plain(&voice.say(&bought.says));
        let (got, why) = (bought.got.amount.exact(), voice.phrase(bought_before()));
        let none = |count| std::iter::repeat_n(String::new(), count);
        let cells = none(1).chain([what]).chain(none(6)).chain([got]).chain(none(4)).chain([why]);
        row(&mut text, cells);
    }
    text
}

/// What stands once for a thing: numbers in exact text, which reads back.
fn totals(line: &Line) -> [String; 7] {
    let money = |it: Option<crate::measure::Measure>| it.map(|it| it.exact()).unwrap_or_default();
    [
        line.buys.exact(),
        line.pack.as_ref().map(|pack| pack.holds.exact()).unwrap_or_default(),
        money(line.price),
        money(line.cost),
        line.needs.exact(),
        line.spare.exact(),
        line.got.map(|got| got.amount.exact()).unwrap_or_default(),
    ]
}

/// A person's words, so that no spreadsheet takes them for a formula.
fn plain(text: &str) -> String {
    match text.bytes().next() {
        Some(b'=' | b'+' | b'-' | b'@' | b'\t' | b'\r') => ["'", text].concat(),
        _ => text.to_owned(),
    }
}

fn row(text: &mut String, cells: impl Iterator<Item = String>) {
    for (at, cell) in cells.enumerate() {
        if at > 0 {
            text.push(',');
        }
        if cell.contains(['"', ',', '\n', '\r']) {
            text.push('"');
            text.push_str(&cell.replace('"', "\"\""));
            text.push('"');
        } else {
            text.push_str(&cell);
        }
    }
    text.push_str("\r\n");
}
