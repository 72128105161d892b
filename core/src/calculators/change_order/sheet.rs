//! A change as it is shown, and the lines to sign on.

use super::words as w;
use super::{Answer, Calculator, ChangeOrder, Input, name};
use crate::measure::unit::PERCENT;
use crate::measure::{Measure, Rounding, divide};
use crate::say;
use crate::sheet::{Figure, Part, PartRow, Sheet, Table, TableRow, calendar};
use crate::words::{Phrase, Text};

fn row(name: Text, value: Text) -> PartRow {
    PartRow { name, value, puts: Vec::new() }
}

/// What a person calls a line, or its place where it has no name.
fn named(name: &str, place: &'static Phrase, at: usize) -> Text {
    match name.trim() {
        "" => say!(*place, at as i64 + 1),
        name => say!(w::VALUE, name),
    }
}

/// Of what is charged, in percent.
fn share(of: Measure, whole: Measure) -> Measure {
    let (of, whole) = (i128::from(of.millionths()), i128::from(whole.millionths()).max(1));
    let millionths = divide(of * 100_000_000, whole, Rounding::Nearest);
    Measure::new(&PERCENT, i64::try_from(millionths).unwrap_or(i64::MAX))
}

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let [labor, materials, markup, tax, credits] = answer.parts;
    let mut lines = Vec::new();
    let mut line = |name: Text, of: [Option<Measure>; 2], comes: Option<&Measure>| {
        if let ([Some(count), Some(each)], Some(comes)) = (of, comes) {
            lines.push(row(say!(w::LINE, name, count, each), say!(w::VALUE, *comes)));
        }
    };
    for (at, it) in input.labor.iter().enumerate() {
        line(named(&it.who, &w::WORKER_AT, at), [it.hours, it.rate], answer.labor.get(at));
    }
    for (at, it) in input.materials.iter().enumerate() {
        line(named(&it.what, &w::MATERIAL_AT, at), [it.count, it.price], answer.materials.get(at));
    }
    // So that what is read before it is signed adds up to the price.
    for (name, of) in [(&w::MARKED_UP, markup), (&w::TAXED, tax)] {
        if of.millionths() != 0 {
            lines.push(row(name.into(), say!(w::VALUE, of)));
        }
    }
    let less = |of: Measure| of.of_same(-of.millionths());
    for (at, comes) in answer.credits.iter().enumerate() {
        let name = named(&input.credits[at].what, &w::CREDIT_AT, at);
        lines.push(row(name, say!(w::VALUE, less(*comes))));
    }
    let total = name(answer.charged, credits);
    let mut rows = Vec::new();
    for (name, of, is_charge) in [
        (&w::LABOR, labor, true),
        (&w::MATERIALS, materials, true),
        (&w::MARKED_UP, markup, true),
        (&w::TAXED, tax, true),
        (&w::CREDITS, less(credits), false),
        (total, answer.total, false),
    ] {
        let of_all = if is_charge && answer.charged.millionths() > 0 {
            say!(w::VALUE, share(of, answer.charged))
        } else {
            say!(w::NOTHING)
        };
        rows.push(TableRow { name: name.into(), cells: vec![say!(w::VALUE, of), of_all] });
    }
    let heads = [&w::SHARES, &w::AMOUNT, &w::SHARE].map(Text::from).into();
    let mut shares = Part::plain("shares", &w::SHARES, None, Vec::new());
    shares.table = Some(Table { heads, rows });
    let mut sign = Vec::new();
    if !input.number.trim().is_empty() {
        sign.push(row((&w::NUMBER).into(), say!(w::VALUE, input.number.trim())));
    }
    sign.extend(input.issued.map(|day| row((&w::ISSUED).into(), calendar::told(day))));
    sign.extend([
        row((&w::WHAT).into(), say!(w::VALUE, input.what.as_str())),
        row((&w::WHY).into(), input.why.label().into()),
        row(total.into(), say!(w::VALUE, answer.total)),
    ]);
    sign.extend(input.before.map(|before| row((&w::BEFORE).into(), say!(w::VALUE, before))));
    sign.extend(answer.after.map(|after| row((&w::AFTER).into(), say!(w::VALUE, after))));
    sign.push(row((&w::DAYS).into(), say!(w::VALUE, input.days)));
    if !input.paid.is_empty() {
        sign.push(row((&w::PAID).into(), say!(w::VALUE, input.paid.as_str())));
    }
    for who in [&w::SIGN_OWNER, &w::SIGN_CREW] {
        sign.push(row(who.into(), (&w::SIGNED).into()));
    }
    let figure = |key, name, of: Measure| Figure::plain(key, name, of.into());
    let mut figures = vec![
        figure("charged", &w::CHARGED, answer.charged),
        figure("credits", &w::CREDITS, credits),
        Figure::plain("days", &w::DAYS, input.days.into()),
    ];
    figures.extend(answer.after.map(|after| figure("after", &w::AFTER, after)));
    let mut each = Part::plain("lines", &w::LINES, None, lines);
    each.note = Some((&w::LINES_NOTE).into());
    Sheet {
        headline: figure("total", total, answer.total),
        lead: None,
        next: Some((&w::NEXT).into()),
        figures,
        checks: Vec::new(),
        working: answer.working.0.clone(),
        parts: vec![each, shares, Part::plain("to-sign", &w::TO_SIGN, None, sign)],
        materials: Vec::new(),
        cautions: ChangeOrder::cautions(None),
        drawing: None,
    }
}
