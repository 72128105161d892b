//! What to buy, on its way elsewhere: a text to send, and a table for a spreadsheet.

use super::{Buying, Line, bought_before, left_out, reason, warnings, whole_one};
use crate::job::site::Job;
use crate::job::words as w;
use crate::measure::{Measure, Rounding, decimal};
use crate::say;
use crate::words::{Amount, Phrase, Text, Voice};

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

const COLUMNS: usize = 18;
/// What money is in, and what share a spare is, stands in the head; all else has its unit beside it.
static HEAD: [&Phrase; COLUMNS] = [
    &w::CSV_TRADE,
    &w::CSV_WHAT,
    &w::CSV_BUY,
    &w::CSV_GOT,
    &w::CSV_SOLD,
    &w::CSV_PRICE,
    &w::CSV_COST,
    &w::CSV_STILL,
    &w::CSV_PAID,
    &w::CSV_NEED,
    &w::CSV_SPARE,
    &w::CSV_PACK,
    &w::CSV_FROM,
    &w::CSV_SPOT,
    &w::CSV_ASKS,
    &w::CSV_COUNTS,
    &w::CSV_UNIT,
    &w::CSV_WHY,
];
/// Places in it.
const TRADE: usize = 0;
const WHAT: usize = 1;
const GOT: usize = 3;
const SOLD: usize = 4;
const STILL: usize = 7;
const PAID: usize = 8;
const FROM: usize = 12;
const SPOT: usize = 13;
const WHY: usize = 17;

/// A table as RFC 4180 has it: a head, then a line for each mark's share of each thing. What can be
/// counted is a bare number, so that a spreadsheet adds it, in feet, square feet or whatever its
/// material is told in; the unit stands in a column of its own, of what is needed one, and of what is
/// bought another, since that may be packages. The totals
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
            let totals = if at == 0 { totals(line, voice) } else { Default::default() };
            let [buy, got, sold, price, cost, still, paid, need, spare, pack] = totals;
            let (trade, what) = (voice.phrase(line.trade.name()), voice.say(&line.name));
            let (from, spot) = (plain(&share.title), plain(&share.spot));
            let (asks, counted) = (number(share.asks), number(share.counted));
            let (unit, why) = (unit(share.asks, voice), why.join("; "));
            row(
                &mut text,
                [
                    trade, what, buy, got, sold, price, cost, still, paid, need, spare, pack, from,
                    spot, asks, counted, unit, why,
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
        cells[GOT] = number(bought.got.amount);
        // Of what is only counted nobody knows any more whether it was pieces or packages.
        if !matches!(bought.got.amount, Amount::Count(_)) {
            cells[SOLD] = unit(bought.got.amount, voice);
        }
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

/// What stands once for a thing.
fn totals(line: &Line, voice: Voice) -> [String; 10] {
    let [still, paid] = line.to_pay_and_paid();
    let sold = match &line.pack {
        Some(pack) => voice.phrase(pack.called.unwrap_or(&w::CSV_PACKAGE)),
        None => unit(line.buys, voice),
    };
    [
        number(line.buys),
        line.got.map(|got| number(got.amount)).unwrap_or_default(),
        sold,
        money(line.price),
        money(line.cost),
        money(still),
        money(paid),
        number(line.needs),
        number(line.spare.into()),
        line.pack.as_ref().map(|pack| number(pack.holds)).unwrap_or_default(),
    ]
}

fn money(sum: Option<Measure>) -> String {
    sum.map(|sum| number(sum.into())).unwrap_or_default()
}

/// The bare figure, in the unit that a person buys by, to the millionth.
fn number(amount: Amount) -> String {
    decimal::show(amount.raw(), whole_one(amount), 0, 6, Rounding::Nearest).0
}

/// What [`number`] is in.
fn unit(amount: Amount, voice: Voice) -> String {
    match amount {
        Amount::Length(_) => "ft".to_owned(),
        Amount::Area(_) => "sq ft".to_owned(),
        Amount::Volume(_) => "cu in".to_owned(),
        Amount::Room(_) => "cu ft".to_owned(),
        Amount::Count(_) | Amount::Day(_) => voice.phrase(&w::CSV_PIECE),
        Amount::Measure(measure) => measure.unit().sign.to_owned(),
    }
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
