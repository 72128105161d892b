//! The margin rule: how near a value is to its limit, at one glance. A hairline from nothing to
//! a little past the limit, small ticks at round values, a tall one at the limit with its figure,
//! and a pointer at the value.

use super::numbers::percent;
use crate::elements::{El, svg};
use crate::{speech, words as w};
use ledgerboard_core::measure::{Area, Length, Rounding, Units, Volume};
use ledgerboard_core::say;
use ledgerboard_core::sheet::{Check, Sense, Verdict};
use ledgerboard_core::words::{Amount, Arg, Text};

/// No more ticks than this, so that they can be counted.
const MOST_TICKS: i64 = 10;

/// How much a check leaves, in words.
pub(crate) fn spare(check: &Check) -> Text {
    let margin = check.margin();
    // The core rounds a margin down; one below zero is turned round to be read out, so up.
    match (raw(margin).signum(), check.sense) {
        (0, _) => say!(w::NOTHING_TO_SPARE),
        (1, _) => {
            Text { phrase: &w::TO_SPARE, args: vec![Arg::Amount(margin, check.margin_rounding())] }
        }
        (_, sense) => Text {
            phrase: match (sense, margin) {
                (Sense::AtMost, _) => &w::TOO_MUCH,
                (Sense::AtLeast, Amount::Count(_)) => &w::MISSING,
                (Sense::AtLeast, _) => &w::TOO_LITTLE,
            },
            args: vec![Arg::Amount(turned(margin), Rounding::Up)],
        },
    }
}

fn turned(amount: Amount) -> Amount {
    amount.of_same(amount.raw().saturating_neg())
}

/// An amount in its own smallest units; an area in square micrometres, which fit.
fn raw(amount: Amount) -> i64 {
    let raw =
        if matches!(amount, Amount::Area(_)) { amount.raw() / 1_000_000 } else { amount.raw() };
    raw.clamp(i64::MIN.into(), i64::MAX.into()) as i64
}

/// The round values between nothing and `end`.
fn step(amount: Amount, units: Units, end: i64) -> i64 {
    let decimal = |one: i64| {
        let mut step = one;
        let mut turn = [2, 5, 10].into_iter().cycle();
        let mut decade = one;
        while end / step > MOST_TICKS {
            let by = turn.next().unwrap_or(10);
            step = decade.saturating_mul(by);
            if by == 10 {
                decade = step;
            }
        }
        step
    };
    match (amount, units) {
        (Amount::Count(_) | Amount::Day(_), _) => decimal(1),
        (Amount::Area(_), Units::Customary) => decimal(raw(Amount::Area(Area::square_feet(1)))),
        (Amount::Area(_), Units::Metric) => decimal(1_000_000_000_000),
        (Amount::Room(_), Units::Customary) => decimal(Volume::hundredths(172_800).units()),
        (Amount::Room(_), Units::Metric) => decimal(100_000_000_000_000),
        (Amount::Volume(_), Units::Customary) => decimal(Volume::hundredths(10).units()),
        (Amount::Volume(_), Units::Metric) => decimal(100_000_000),
        (Amount::Measure(_), _) => decimal(10_000),
        (Amount::Length(_), Units::Metric) => decimal(1_000_000),
        (Amount::Length(_), Units::Customary) => {
            let inches =
                [(1, 16), (1, 8), (1, 4), (1, 2), (1, 1), (2, 1), (6, 1), (12, 1), (24, 1)];
            let mut all = inches.into_iter().map(|(over, under)| Length::inches(over, under));
            let fits = |length: &Length| end / length.nanometres() <= MOST_TICKS;
            all.find(fits)
                .map_or_else(|| decimal(Length::inches(60, 1).nanometres()), Length::nanometres)
        }
    }
}

/// The rule of one check.
pub(crate) fn margin_rule(check: &Check, units: Units) -> El {
    let voice = speech::voice(units);
    let (value, limit) = (raw(check.value).max(0), raw(check.limit).max(0));
    // A little past the limit, or past the value where that is further.
    let end = (limit.saturating_add(limit / 7)).max(value.saturating_add(value / 20)).max(1);
    let step = step(check.limit, units, end).max(1);
    let line = |class: &str, from: &str, to: &str, top: &str, bottom: &str| {
        let line = svg("line").class(class).attr("x1", from).attr("x2", to);
        line.attr("y1", top).attr("y2", bottom)
    };
    let ticks = (0..=end / step).map(|at| {
        let x = percent(at * step, end);
        line("small", &x, &x, "22", "27")
    });
    let (at, tall) = (percent(value, end), percent(limit, end));
    // Near an edge the figure stands to the inner side of its tick.
    let anchor = match limit.saturating_mul(4) / end {
        3.. => "end",
        0 => "start",
        _ => "middle",
    };
    let figure = svg("text").attr("x", &tall).attr("y", "11").attr("text-anchor", anchor);
    let pointer = svg("path").class("pointer").attr("d", "M0 1L-6 12H6Z");
    let over = check.verdict == Verdict::Over;
    let limit_text = || Arg::Amount(check.limit, check.limit_rounding());
    let said = {
        let value = Arg::Amount(check.value, check.value_rounding());
        let args = vec![value, limit_text(), check.word().into(), spare(check).into()];
        voice.say(&Text { phrase: &w::RULE_NAME, args })
    };
    svg("svg")
        .class(&["margin-rule ", check.verdict.key()].concat())
        .attr("role", "img")
        .named(&said)
        .with(line("base", "0", "100%", "27", "27"))
        .with_all(ticks)
        .with(over.then(|| line("past", &tall, &at, "27", "27")))
        .with(line("tall", &tall, &tall, "14", "33"))
        .with(figure.text(&voice.say(&Text { phrase: &w::FIGURE, args: vec![limit_text()] })))
        .with(svg("svg").attr("x", &at).attr("y", "27").attr("overflow", "visible").with(pointer))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ticks_stand_at_round_values_and_can_be_counted() {
        let inch = Length::inches(1, 1).nanometres();
        let cubic = Volume::hundredths(100).units();
        for (amount, units, end, want) in [
            (Amount::Count(0), Units::Customary, 7, 1),
            (Amount::Count(0), Units::Customary, 48, 5),
            (Amount::Volume(Volume::ZERO), Units::Customary, 20 * cubic, 2 * cubic),
            (Amount::Volume(Volume::ZERO), Units::Customary, 32 * cubic, 5 * cubic),
            (Amount::Length(Length::ZERO), Units::Customary, 2 * inch, inch / 4),
            (Amount::Length(Length::ZERO), Units::Customary, 100 * inch, 12 * inch),
            (Amount::Length(Length::ZERO), Units::Metric, 70_000_000, 10_000_000),
        ] {
            assert_eq!(step(amount, units, end), want, "{amount:?} to {end}");
        }
    }
}
