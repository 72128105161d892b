//! Rows as a tree for scripts: names, units, limits, choices.

use super::row::{Kind, Row, Span, When};
use crate::wire::Node;
use crate::words::{Amount, Phrase, Voice};

/// The rows as a list of named parts.
pub fn describe(rows: &[Row], voice: Voice) -> Node {
    Node::List(rows.iter().map(|row| one(row, voice)).collect())
}

fn one(row: &Row, voice: Voice) -> Node {
    let mut parts = vec![
        entry("key", Node::text(row.key)),
        entry("label", Node::Text(voice.phrase(row.label))),
    ];
    if !row.hint.en.is_empty() {
        parts.push(entry("hint", Node::Text(voice.phrase(row.hint))));
    }
    match row.kind {
        Kind::Length(span) => quantity(&mut parts, "length", span, Amount::Length, voice),
        Kind::Area(span) => quantity(&mut parts, "area", span, Amount::Area, voice),
        Kind::Volume(span) => quantity(&mut parts, "volume", span, Amount::Volume, voice),
        Kind::Room(span) => quantity(&mut parts, "room volume", span, Amount::Room, voice),
        Kind::Measure(span) => {
            quantity(&mut parts, "measure", span, Amount::Measure, voice);
            parts.push(entry("unit", Node::text(span.least.unit().key)));
        }
        Kind::Count { least, most, why } => {
            parts.push(entry("kind", Node::text("count")));
            parts.push(entry("least", Node::Whole(least)));
            parts.push(entry("most", Node::Whole(most)));
            because(&mut parts, why, voice);
        }
        Kind::Number(span) => {
            parts.push(entry("kind", Node::text("number")));
            parts.push(entry("least", Node::Whole(span.least)));
            parts.push(entry("most", Node::Whole(span.most)));
            if span.optional {
                parts.push(entry("optional", Node::Flag(true)));
            }
            because(&mut parts, span.why, voice);
        }
        Kind::Text(most) => {
            parts.push(entry("kind", Node::text("text")));
            parts.push(entry("most", Node::Whole(i64::try_from(most).unwrap_or(i64::MAX))));
        }
        Kind::Day => parts.push(entry("kind", Node::text("day"))),
        Kind::Choice(picks) => {
            parts.push(entry("kind", Node::text("choice")));
            let picks = picks.iter().map(|pick| {
                Node::Tree(vec![
                    entry("key", Node::text(pick.key)),
                    entry("label", Node::Text(voice.phrase(pick.label))),
                ])
            });
            parts.push(entry("choices", Node::List(picks.collect())));
        }
        Kind::Flag => parts.push(entry("kind", Node::text("yes or no"))),
        Kind::Group(rows) => {
            parts.push(entry("kind", Node::text("group")));
            parts.push(entry("fields", describe(rows, voice)));
        }
        Kind::List(item) => {
            parts.push(entry("kind", Node::text("list")));
            parts.push(entry("most", Node::Whole(item.most as i64)));
            parts.push(entry("fields", describe(item.rows, voice)));
        }
    }
    if row.aside {
        parts.push(entry("aside", Node::Flag(true)));
    }
    if !row.names.is_empty() {
        let names = row.names.iter().map(|path| Node::text(path));
        parts.push(entry("names", Node::List(names.collect())));
    }
    if row.past {
        parts.push(entry("past", Node::Flag(true)));
    }
    if row.evidence {
        parts.push(entry("evidence", Node::Flag(true)));
    }
    asked(&mut parts, row.when);
    Node::Tree(parts)
}

fn entry(key: &str, node: Node) -> (String, Node) {
    (key.to_owned(), node)
}

fn because(parts: &mut Vec<(String, Node)>, why: &'static Phrase, voice: Voice) {
    parts.push(entry("why", Node::Text(voice.phrase(why))));
}

fn quantity<T: Copy>(
    parts: &mut Vec<(String, Node)>,
    kind: &str,
    span: Span<T>,
    amount: fn(T) -> Amount,
    voice: Voice,
) {
    parts.push(entry("kind", Node::text(kind)));
    parts.push(entry("least", Node::Text(amount(span.least).exact())));
    parts.push(entry("most", Node::Text(amount(span.most).exact())));
    if span.optional {
        parts.push(entry("optional", Node::Flag(true)));
    }
    because(parts, span.why, voice);
}

fn asked(parts: &mut Vec<(String, Node)>, when: When) {
    if !matches!(when, When::Always) {
        parts.push(entry("when", condition(when)));
    }
}

fn condition(when: When) -> Node {
    let list = |of: &[&str]| Node::List(of.iter().map(|key| Node::text(key)).collect());
    let (how, key, of) = match when {
        When::Always => return Node::EMPTY,
        When::All(of) => return Node::List(of.iter().map(|when| condition(*when)).collect()),
        When::Is(key, of) => ("is", key, Some(list(of))),
        When::IsNot(key, of) => ("is not", key, Some(list(of))),
        When::Yes(key) => ("is yes", key, None),
        When::Any(key) => ("has items", key, None),
    };
    let mut asked = vec![entry("field", Node::text(key)), entry("must", Node::text(how))];
    if let Some(of) = of {
        asked.push(entry("of", of));
    }
    Node::Tree(asked)
}
