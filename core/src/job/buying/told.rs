//! What to buy, on its way elsewhere: a text to send, and a table for a spreadsheet.

use super::{Buying, Line, bought_before, left_out, reason, warnings};
use crate::job::site::Job;
use crate::job::words as w;
use crate::measure::Measure;
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

const COLUMNS: usize = 16;
static HEAD: [&Phrase; COLUMNS] = [
    &w::CSV_TRADE,
    &w::CSV_WHAT,
    &w::CSV_BUY,
    &w::CSV_PACK,
    &w::CSV_PRICE,
    &w::CSV_COST,
    &w::CSV_NEED,
    &w::CSV_SPARE,
    &w::CSV_GOT,
    &w::CSV_STILL,
    &w::CSV_PAID,
    &w::CSV_FROM,
    &w::CSV_SPOT,
    &w::CSV_ASKS,
    &w::CSV_COUNTS,
    &w::CSV_WHY,
];
/// Places in it.
const TRADE: usize = 0;
const WHAT: usize = 1;
const GOT: usize = 8;
const STILL: usize = 9;
const PAID: usize = 10;
const FROM: usize = 11;
const SPOT: usize = 12;
const WHY: usize = 15;

/// A table as RFC 4180 has it: a head, then a line for each mark's share of each thing. The totals
/// stand on the first line of a thing and are empty on the others, so that a column adds up. Then what
/// is needed too, with nothing in those columns: nobody can say how much of it yet. Then what was bought
/// and is not asked for any more. Last, where a price is known, a line for each of the two sums, under the
/// column that it adds up, in the words of the page.
pub fn csv(job: &Job, buying: &Buying, voice: Voice) -> String {
    let mut text = String::new();
    row(&mut text, HEAD.map(|phrase| voice.phrase(phrase)));
    for line in &buying.lines {
        for (at, share) in line.shares.iter().enumerate() {
            let mut why: Vec<String> = Vec::new();
            if let Some(reason) = reason(job, share) {
                why.push(voice.say(&reason));
            }
            if share.waits {
                why.push(voice.phrase(&w::SHARE_WAITS));
            }
            let [buy, pack, price, cost, need, spare, got, still, paid] =
                if at == 0 { totals(line) } else { Default::default() };
            let (trade, what) = (voice.phrase(line.trade.name()), voice.say(&line.name));
            let (from, spot) = (plain(&share.title), plain(&share.spot));
            let (asks, counted) = (share.asks.exact(), share.counted.exact());
            let why = why.join("; ");
            row(
                &mut text,
                [
                    trade, what, buy, pack, price, cost, need, spare, got, still, paid, from, spot,
                    asks, counted, why,
                ],
            );
        }
    }
    for unknown in &buying.unknown {
        let mut cells: [String; COLUMNS] = Default::default();
        cells[TRADE] = voice.phrase(unknown.trade.name());
        cells[WHAT] = plain(&voice.say(&unknown.name));
        cells[FROM] = plain(&unknown.title);
        cells[SPOT] = plain(&unknown.spot);
        cells[WHY] = voice.say(&say!(w::CSV_UNKNOWN, unknown.why.clone()));
        row(&mut text, cells);
    }
    for bought in &buying.bought {
        let mut cells: [String; COLUMNS] = Default::default();
        cells[WHAT] = plain(&voice.say(&bought.says));
        cells[GOT] = bought.got.amount.exact();
        cells[PAID] = money(bought.cost);
        cells[WHY] = voice.phrase(bought_before());
        row(&mut text, cells);
    }
    for (at, (name, sum)) in [STILL, PAID].into_iter().zip(buying.named_sums()) {
        if let Some(says) = sum.says(name) {
            let mut cells: [String; COLUMNS] = Default::default();
            cells[WHAT] = voice.phrase(name);
            cells[at] = money(sum.cost);
            cells[WHY] = voice.say(&says);
            row(&mut text, cells);
        }
    }
    text
}

/// What stands once for a thing: numbers in exact text, which reads back.
fn totals(line: &Line) -> [String; 9] {
    let [still, paid] = line.to_pay_and_paid();
    [
        line.buys.exact(),
        line.pack.as_ref().map(|pack| pack.holds.exact()).unwrap_or_default(),
        money(line.price),
        money(line.cost),
        line.needs.exact(),
        line.spare.exact(),
        line.got.map(|got| got.amount.exact()).unwrap_or_default(),
        money(still),
        money(paid),
    ]
}

fn money(sum: Option<Measure>) -> String {
    sum.map(|sum| sum.exact()).unwrap_or_default()
}

/// A person's words, so that no spreadsheet takes them for a formula.
fn plain(text: &str) -> String {
    match text.bytes().next() {
        Some(b'=' | b'+' | b'-' | b'@' | b'\t' | b'\r') => ["'", text].concat(),
        _ => text.to_owned(),
    }
}

fn row(text: &mut String, cells: [String; COLUMNS]) {
    for (at, cell) in cells.into_iter().enumerate() {
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
