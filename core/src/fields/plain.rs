//! How whole numbers, lines and days are read. None of them has a unit.

use super::form::Field;
use super::reader::{Reader, complain};
use super::row::{Kind, Row};
use super::words as w;
use crate::measure::Day;
use crate::say;
use crate::wire::Node;
use crate::words::Text;
use std::num::IntErrorKind;

fn is_blank(from: Option<&Node>) -> bool {
    from.and_then(Node::leaf).is_none_or(|text| text.trim().is_empty()) && !is_branch(from)
}

fn is_branch(from: Option<&Node>) -> bool {
    matches!(from, Some(Node::List(_) | Node::Tree(_)))
}

fn whole(row: &Row, given: &str) -> Result<i64, Text> {
    let text = given.trim();
    let (least, most, why) = match row.kind {
        Kind::Count { least, most, why } => (least, most, why),
        Kind::Number(span) => (span.least, span.most, span.why),
        _ => (i64::MIN, i64::MAX, row.label),
    };
    // A small count, or a number from the middle of what fits, such as a year.
    let example = if least <= 3 { 3.min(most) } else { least / 2 + most / 2 };
    // A whole number that can't even be held is past any bound, on the side of its sign.
    let count = text.parse::<i64>().or_else(|problem| match problem.kind() {
        IntErrorKind::PosOverflow => Ok(i64::MAX),
        IntErrorKind::NegOverflow => Ok(i64::MIN),
        _ => Err(()),
    });
    match count {
        _ if text.is_empty() => Err(say!(w::NEEDED, row.label, example)),
        Ok(count) if count < least => Err(say!(w::AT_LEAST, least)),
        Ok(count) if count > most => Err(say!(w::AT_MOST, most, why)),
        Ok(count) => Ok(count),
        Err(()) => Err(say!(w::NOT_WHOLE, text, example)),
    }
}

impl Field for i64 {
    fn take(&mut self, from: Option<&Node>, row: &'static Row, reader: &mut Reader<'_>) -> bool {
        let given = from.and_then(Node::leaf).unwrap_or_default();
        match whole(row, &given) {
            Ok(count) => *self = count,
            Err(says) => {
                reader.fault(given, says);
                return false;
            }
        }
        true
    }
    fn write(&self) -> Node {
        Node::Whole(*self)
    }
}

impl Field for Option<i64> {
    fn take(&mut self, from: Option<&Node>, row: &'static Row, reader: &mut Reader<'_>) -> bool {
        *self = None;
        is_blank(from) || {
            let mut count = 0_i64;
            let read = count.take(from, row, reader);
            *self = read.then_some(count);
            read
        }
    }
    fn write(&self) -> Node {
        self.map_or_else(|| Node::text(""), Node::Whole)
    }
}

/// A line, as it was typed.
impl Field for String {
    fn take(&mut self, from: Option<&Node>, row: &'static Row, reader: &mut Reader<'_>) -> bool {
        let given = from.and_then(Node::leaf).unwrap_or_default();
        let long = given.chars().count();
        let says = match row.kind {
            _ if is_branch(from) || given.chars().any(char::is_control) => say!(w::ONE_LINE),
            Kind::Text(most) if long > most => say!(w::TOO_LONG, long as i64, most as i64),
            _ => {
                *self = given;
                return true;
            }
        };
        reader.fault(given, says);
        false
    }
    fn write(&self) -> Node {
        Node::text(self)
    }
}

impl Field for Option<Day> {
    fn take(&mut self, from: Option<&Node>, row: &'static Row, reader: &mut Reader<'_>) -> bool {
        *self = None;
        if is_blank(from) {
            return true;
        }
        let given = from.and_then(Node::leaf).unwrap_or_default();
        match Day::read(&given) {
            Ok(day) => *self = Some(day),
            Err(problem) => {
                let says = complain(problem, row, &given, &w::A_DAY);
                reader.fault(given, says);
                return false;
            }
        }
        true
    }
    fn write(&self) -> Node {
        Node::Text(self.map(Day::exact).unwrap_or_default())
    }
}
