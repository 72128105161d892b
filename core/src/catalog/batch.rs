//! The batch door: one JSON question a line in, one JSON answer a line out. The page's file
//! exports the same function, so that tests can compare the two byte for byte.

use super::{Entry, Worked, find};
use crate::edition::Basis;
use crate::fields;
use crate::measure::Units;
use crate::sheet::{Check, Fault, Figure, Part, Sheet, Standing, Step};
use crate::wire::{Node, Parts};
use crate::words::{Text, Voice};

struct Question {
    calculator: String,
    input: Node,
    editions: Basis,
    units: Units,
}

impl Question {
    fn read(line: &str) -> Result<Self, String> {
        Parts::read(Node::from_json(line)?, |parts| Self {
            calculator: parts.text("calculator"),
            input: parts.node("input"),
            editions: if parts.has("editions") {
                parts.tree("editions", Basis::read)
            } else {
                Basis::default()
            },
            units: if parts.has("units") {
                parts.word("units", Units::from_key).unwrap_or_default()
            } else {
                Units::default()
            },
        })
    }
}

/// Answers one line. Never fails: what can't be answered says what is wrong and where.
pub fn answer_line(line: &str) -> String {
    let node = match Question::read(line) {
        Err(problem) => refuse("json", &problem, Vec::new()),
        Ok(question) => match find(&question.calculator) {
            None => {
                refuse("calculator", "no calculator has this id; --list shows them", Vec::new())
            }
            Some(entry) => answer(entry, &question),
        },
    };
    write(&node)
}

fn answer(entry: &Entry, question: &Question) -> Node {
    let voice = Voice { units: question.units, ..Voice::default() };
    match entry.work(&question.input, question.units, question.editions) {
        Ok(worked) => {
            let mut parts = vec![
                part("calculator", Node::text(entry.id)),
                part("version", Node::Whole(i64::from(entry.version))),
                part("sheet", sheet(&worked, voice)),
            ];
            if !worked.left_out.is_empty() {
                parts.push(part("left_out", Node::List(listed(&worked.left_out, voice))));
            }
            Node::Tree(parts)
        }
        Err(faults) => refuse("input", "some fields can't be taken", listed(&faults, voice)),
    }
}

fn listed(faults: &[Fault], voice: Voice) -> Vec<Node> {
    let one = |fault: &Fault| {
        tree(&[("field", &fault.path), ("given", &fault.given), ("says", &voice.say(&fault.says))])
    };
    faults.iter().map(one).collect()
}

/// The calculators, one JSON object a line.
pub fn list() -> String {
    let voice = Voice::default();
    let line = |entry: &Entry| {
        write(&Node::Tree(vec![
            part("calculator", Node::text(entry.id)),
            part("version", Node::Whole(i64::from(entry.version))),
            part("name", Node::Text(voice.phrase(entry.name))),
            part("answers", Node::Text(voice.phrase(entry.about))),
        ]))
    };
    super::ALL.iter().map(line).collect::<Vec<_>>().join("\n")
}

/// A calculator's fields with units and limits, and a worked sample.
pub fn describe(entry: &Entry) -> String {
    let sample = entry.sample();
    let worked = entry.work(&sample, Units::Customary, Basis::default());
    let mut parts = vec![
        part("calculator", Node::text(entry.id)),
        part("version", Node::Whole(i64::from(entry.version))),
        part("fields", fields::describe(entry.rows, Voice::default())),
        part("sample", sample),
    ];
    if let Ok(worked) = worked {
        parts.push(part("sheet", sheet(&worked, Voice::default())));
    }
    write(&Node::Tree(parts))
}

fn refuse(what: &str, says: &str, faults: Vec<Node>) -> Node {
    let mut parts = vec![("refused", what), ("says", says)]
        .into_iter()
        .map(|(key, text)| part(key, Node::text(text)))
        .collect::<Vec<_>>();
    if !faults.is_empty() {
        parts.push(part("faults", Node::List(faults)));
    }
    Node::Tree(parts)
}

fn write(node: &Node) -> String {
    serde_json::to_string(node).unwrap_or_default()
}

fn part(key: &str, node: Node) -> (String, Node) {
    (key.to_owned(), node)
}

fn tree(parts: &[(&str, &str)]) -> Node {
    Node::Tree(parts.iter().map(|(key, text)| part(key, Node::text(text))).collect())
}

fn sheet(worked: &Worked, voice: Voice) -> Node {
    let Sheet { headline, figures, checks, working, parts, materials, cautions, drawing, .. } =
        &worked.sheet;
    let say = |text: &Text| Node::Text(voice.say(text));
    let mut out = vec![
        part("answer", figure(headline, voice)),
        part("verdict", Node::text(worked.verdict().key())),
    ];
    let standing = match &worked.standing {
        Standing::NotNeeded => None,
        Standing::Held(why) => Some(("held", why.iter().map(say).collect())),
        Standing::Opened(by) => Some(("opened", vec![say(by)])),
    };
    if let Some((is, why)) = standing {
        let parts = vec![part("is", Node::text(is)), part("why", Node::List(why))];
        out.push(part("standing", Node::Tree(parts)));
    }
    if let Some(edition) = worked.edition {
        out.push(part("edition", Node::text(edition.key())));
    }
    if let Some(next) = &worked.sheet.next {
        out.push(part("next", say(next)));
    }
    let flips = worked.flips.iter().map(|flip| {
        tree(&[
            ("edition", flip.edition.key()),
            ("verdict", flip.verdict.key()),
            ("answer", &flip.answer.exact()),
        ])
    });
    let sources = worked.sheet.sources().into_iter().map(|source| {
        tree(&[
            ("key", source.key),
            ("clause", source.clause.en),
            ("says", &voice.phrase(source.says)),
            ("seen", &voice.phrase(source.seen)),
            ("sure", &voice.phrase(source.confidence.words())),
        ])
    });
    let materials = materials.iter().map(|material| {
        tree(&[
            ("key", &material.key),
            ("name", &voice.say(&material.name)),
            ("amount", &material.amount.exact()),
        ])
    });
    let lists = [
        ("flips", flips.collect::<Vec<_>>()),
        ("figures", figures.iter().map(|each| figure(each, voice)).collect()),
        ("checks", checks.iter().map(|each| check(each, voice)).collect()),
        ("working", working.iter().map(|each| step(each, voice)).collect()),
        ("more", parts.iter().map(|each| more(each, voice)).collect()),
        ("materials", materials.collect()),
        ("cautions", cautions.iter().map(|caution| say(&caution.text)).collect()),
        ("drawing", drawing.iter().flat_map(|drawing| drawing.twin.iter().map(say)).collect()),
        ("sources", sources.collect()),
    ];
    out.extend(lists.into_iter().map(|(key, list)| part(key, Node::List(list))));
    Node::Tree(out)
}

fn figure(figure: &Figure, voice: Voice) -> Node {
    tree(&[
        ("key", figure.key),
        ("name", &voice.say(&figure.name)),
        ("exact", &figure.amount.exact()),
        ("shown", &voice.say(&figure.value())),
    ])
}

fn check(check: &Check, voice: Voice) -> Node {
    let margin = check.margin().show(voice.units, check.margin_rounding()).text();
    let mut out = vec![
        ("key", check.key.clone()),
        ("name", voice.say(&check.name)),
        ("value", check.value.exact()),
        ("limit", check.limit.exact()),
        ("margin", margin),
        ("verdict", check.verdict.key().to_owned()),
        ("source", check.source.key.to_owned()),
    ];
    if let Some(note) = &check.note {
        out.push(("note", voice.say(note)));
    }
    Node::Tree(out.into_iter().map(|(key, text)| part(key, Node::Text(text))).collect())
}

fn step(step: &Step, voice: Voice) -> Node {
    tree(&[
        ("key", &step.key),
        ("name", &voice.say(&step.name)),
        ("equation", &step.equation(voice)),
    ])
}

fn more(more: &Part, voice: Voice) -> Node {
    let rows = more
        .rows
        .iter()
        .map(|row| tree(&[("name", &voice.say(&row.name)), ("value", &voice.say(&row.value))]));
    let mut rows: Vec<Node> = rows.collect();
    let said = |all: &[Text]| Node::List(all.iter().map(|it| Node::Text(voice.say(it))).collect());
    let mut out = vec![part("key", Node::text(more.key))];
    if let Some(table) = &more.table {
        out.push(part("columns", said(&table.heads)));
        for row in &table.rows {
            let name = part("name", Node::Text(voice.say(&row.name)));
            rows.push(Node::Tree(vec![name, part("cells", said(&row.cells))]));
        }
    }
    out.push(part("rows", Node::List(rows)));
    out.push(part("title", Node::Text(voice.say(&more.title))));
    if let Some(note) = &more.note {
        out.push(part("note", Node::Text(voice.say(note))));
    }
    Node::Tree(out)
}

#[cfg(test)]
mod tests {
    use crate::catalog;
    use crate::edition::Basis;
    use crate::measure::Units;
    use crate::words::{Language, Text, Voice};

    /// A publication's own title stays as it is; the clause in it is named in the page's language.
    #[test]
    fn what_a_number_stands_on_is_named_in_spanish_too() {
        const ENGLISH: [&str; 12] = [
            "and", "at", "chapter", "for", "in", "notes", "on", "once", "table", "the", "ties",
            "where",
        ];
        let voice = Voice { language: Language::Spanish, ..Voice::default() };
        let mut seen = 0;
        for entry in catalog::ALL {
            let worked = entry.work(&entry.sample(), Units::Customary, Basis::default()).unwrap();
            for source in worked.sheet.sources() {
                let name = voice.say(&Text::from(&source.clause)).to_lowercase();
                let mut words = name.split(|letter: char| !letter.is_alphabetic());
                assert!(!words.any(|word| ENGLISH.contains(&word)), "{}: {name}", entry.id);
                seen += 1;
            }
        }
        assert!(seen > 100, "{seen}");
    }
}
