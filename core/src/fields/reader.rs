//! Reads a tree by its rows, and says what is wrong where.

use super::form::{Field, Form};
use super::row::{Kind, Pick, Row, Span};
use super::words as w;
use crate::measure::{Length, Problem, Reading, Units, Volume};
use crate::say;
use crate::sheet::{Fault, Faults};
use crate::wire::Node;
use crate::words::{Amount, Arg, Phrase, Text};

/// Walks a tree, noting every fault with its path.
#[derive(Debug)]
pub struct Reader<'a> {
    root: &'a Node,
    units: Units,
    path: Vec<String>,
    labels: Vec<&'static Phrase>,
    faults: Faults,
}

impl<'a> Reader<'a> {
    /// Reads a whole form. Bare numbers are in `units`.
    ///
    /// # Errors
    /// Every fault found, at least one.
    pub fn form<T: Form>(root: &'a Node, units: Units) -> Result<T, Faults> {
        let mut reader =
            Self { root, units, path: Vec::new(), labels: Vec::new(), faults: Vec::new() };
        let read = reader.tree(Some(root)).and_then(|tree| T::read_parts(tree, &mut reader));
        match read {
            Some(form) if reader.faults.is_empty() => Ok(form),
            _ => Err(reader.faults),
        }
    }

    /// Reads one part; a missing one that may be, or one that isn't asked, is its blank.
    pub fn part<T: Field>(
        &mut self,
        rows: &'static [Row],
        key: &'static str,
        here: &Node,
        blank: impl Fn() -> T,
    ) -> Option<T> {
        let row = rows.iter().find(|row| row.key == key)?;
        if !row.when.holds(rows, here, self.root) {
            return Some(blank());
        }
        let from = here.get(key);
        let needed = match row.kind {
            Kind::Length(span) => !span.optional,
            Kind::Volume(span) => !span.optional,
            _ => false,
        };
        if from.is_none() && !needed {
            return Some(blank());
        }
        self.within(key, row.label, |reader| T::read(from, row, reader))
    }

    fn within<T>(
        &mut self,
        key: &str,
        label: &'static Phrase,
        read: impl FnOnce(&mut Self) -> Option<T>,
    ) -> Option<T> {
        self.path.push(key.to_owned());
        self.labels.push(label);
        let value = read(self);
        self.labels.pop();
        self.path.pop();
        value
    }

    /// Notes a fault at the present place.
    pub fn fault(&mut self, given: String, says: Text) {
        let label = self.labels.last().copied().unwrap_or(&w::COUNT_LABEL);
        self.faults.push(Fault { path: self.path.join("."), label, given, says });
    }

    /// Notes every name in `here` that no row has.
    pub fn unknown(&mut self, rows: &'static [Row], here: &Node) {
        let Node::Tree(parts) = here else { return };
        for (key, part) in parts {
            if !rows.iter().any(|row| row.key == key) {
                self.path.push(key.clone());
                self.fault(part.leaf().unwrap_or_default(), say!(w::UNKNOWN));
                self.path.pop();
            }
        }
    }

    /// The node as named parts.
    pub fn tree<'n>(&mut self, from: Option<&'n Node>) -> Option<&'n Node> {
        match from {
            Some(node @ Node::Tree(_)) => Some(node),
            other => {
                self.fault(other.and_then(Node::leaf).unwrap_or_default(), say!(w::NOT_A_GROUP));
                None
            }
        }
    }

    /// Reads a choice as its place in `picks`.
    pub fn pick(
        &mut self,
        from: Option<&Node>,
        _: &'static Row,
        picks: &'static [Pick],
    ) -> Option<usize> {
        let given = from.and_then(Node::leaf).unwrap_or_default();
        let at = picks.iter().position(|pick| pick.key == given);
        if at.is_none() {
            let keys: Vec<_> = picks.iter().map(|pick| pick.key).collect();
            self.fault(given.clone(), say!(w::NOT_ONE_OF, given, keys.join(", ")));
        }
        at
    }

    fn quantity<T: Measured>(&mut self, from: Option<&Node>, row: &'static Row) -> Option<T> {
        let given = from.and_then(Node::leaf).unwrap_or_default();
        match hear::<T>(row, &given, self.units) {
            Ok(value) => Some(value),
            Err(says) => {
                self.fault(given, says);
                None
            }
        }
    }
}

/// A quantity that a row can hold: how it is read, and its row's bounds.
trait Measured: Copy + Ord + 'static {
    fn read(text: &str, units: Units) -> Reading<Self>;
    fn amount(self) -> Amount;
    fn span(kind: Kind) -> Option<Span<Self>>;
    const EXAMPLE: &'static Phrase;
}

macro_rules! measured {
    ($quantity:ident, $example:expr) => {
        impl Measured for $quantity {
            fn read(text: &str, units: Units) -> Reading<Self> {
                Self::read(text, units)
            }
            fn amount(self) -> Amount {
                Amount::$quantity(self)
            }
            fn span(kind: Kind) -> Option<Span<Self>> {
                match kind {
                    Kind::$quantity(span) => Some(span),
                    _ => None,
                }
            }
            const EXAMPLE: &'static Phrase = &$example;
        }

        impl Field for $quantity {
            fn read(
                from: Option<&Node>,
                row: &'static Row,
                reader: &mut Reader<'_>,
            ) -> Option<Self> {
                reader.quantity(from, row)
            }
            fn write(&self) -> Node {
                Node::Text(self.exact())
            }
        }

        impl Field for Option<$quantity> {
            fn read(
                from: Option<&Node>,
                row: &'static Row,
                reader: &mut Reader<'_>,
            ) -> Option<Self> {
                match from.and_then(Node::leaf) {
                    Some(text) if !text.trim().is_empty() => reader.quantity(from, row).map(Some),
                    _ => Some(None),
                }
            }
            fn write(&self) -> Node {
                Node::Text(self.map($quantity::exact).unwrap_or_default())
            }
        }
    };
}
measured!(Length, w::A_LENGTH);
measured!(Volume, w::A_VOLUME);

fn hear<T: Measured>(row: &Row, given: &str, units: Units) -> Result<T, Text> {
    let value =
        T::read(given, units).map_err(|problem| complain(problem, row, given, T::EXAMPLE))?;
    match T::span(row.kind) {
        Some(span) if !(span.least..=span.most).contains(&value) => {
            Err(say!(w::OUTSIDE, given.trim(), span.least.amount(), span.most.amount(), span.why))
        }
        _ => Ok(value),
    }
}

fn complain(problem: Problem, row: &Row, given: &str, example: &'static Phrase) -> Text {
    let phrase = match problem {
        Problem::Empty => return say!(w::NEEDED, row.label, example),
        Problem::NotANumber => &w::CANT_READ,
        Problem::UnknownUnit => &w::NOT_ITS_UNIT,
        Problem::ZeroDenominator => &w::NO_ZERO_UNDER,
        Problem::TooLarge => &w::TOO_LARGE,
    };
    Text { phrase, args: vec![Arg::from(given.trim()), Arg::from(example)] }
}

/// What a field's text is understood as, or what is wrong with it: the screen shows it beside
/// what was typed. `None` where an optional field is empty or the row is no quantity.
///
/// # Errors
/// The words for the fault.
pub fn heard(row: &Row, given: &str, units: Units) -> Result<Option<Amount>, Text> {
    let optional = match row.kind {
        Kind::Length(span) => span.optional,
        Kind::Volume(span) => span.optional,
        _ => return Ok(None),
    };
    if optional && given.trim().is_empty() {
        return Ok(None);
    }
    match row.kind {
        Kind::Length(_) => hear::<Length>(row, given, units).map(|length| Some(length.amount())),
        _ => hear::<Volume>(row, given, units).map(|volume| Some(volume.amount())),
    }
}

/// The same tree with its unit written to every quantity that can be read, so that a change of
/// units doesn't change what was meant. What can't be read stays as typed.
pub fn restate(rows: &[Row], from: &Node, units: Units) -> Node {
    let Node::Tree(parts) = from else { return from.clone() };
    let restated = parts.iter().map(|(key, part)| {
        let kind = rows.iter().find(|row| row.key == key).map(|row| row.kind);
        let text = part.leaf().unwrap_or_default();
        let part = match kind {
            Some(Kind::Length(_)) => Length::read(&text, units).ok().map(|l| Node::Text(l.exact())),
            Some(Kind::Volume(_)) => Volume::read(&text, units).ok().map(|v| Node::Text(v.exact())),
            Some(Kind::Group(rows)) => Some(restate(rows, part, units)),
            Some(Kind::List(item)) => match part {
                Node::List(items) => Some(Node::List(
                    items.iter().map(|each| restate(item.rows, each, units)).collect(),
                )),
                _ => None,
            },
            _ => None,
        }
        .unwrap_or_else(|| part.clone());
        (key.clone(), part)
    });
    Node::Tree(restated.collect())
}

impl Field for i64 {
    fn read(from: Option<&Node>, row: &'static Row, reader: &mut Reader<'_>) -> Option<Self> {
        let given = from.and_then(Node::leaf).unwrap_or_default();
        let text = given.trim();
        let says = match text.parse::<Self>() {
            _ if text.is_empty() => say!(w::NEEDED, row.label, &w::A_WHOLE_NUMBER),
            Ok(count) => match row.kind {
                Kind::Count { least, most, why } if !(least..=most).contains(&count) => {
                    say!(w::OUTSIDE, text, least, most, why)
                }
                _ => return Some(count),
            },
            Err(_) => say!(w::CANT_READ, text, &w::A_WHOLE_NUMBER),
        };
        reader.fault(given, says);
        None
    }
    fn write(&self) -> Node {
        Node::Whole(*self)
    }
}

impl Field for bool {
    fn read(from: Option<&Node>, _: &'static Row, reader: &mut Reader<'_>) -> Option<Self> {
        match from.and_then(Node::leaf).as_deref() {
            Some("yes") => Some(true),
            Some("no") => Some(false),
            given => {
                let given = given.unwrap_or_default().to_owned();
                reader.fault(given.clone(), say!(w::NOT_YES_OR_NO, given));
                None
            }
        }
    }
    fn write(&self) -> Node {
        Node::Flag(*self)
    }
}

impl<T: Form> Field for Vec<T> {
    fn read(from: Option<&Node>, row: &'static Row, reader: &mut Reader<'_>) -> Option<Self> {
        let (Some(Node::List(items)), Kind::List(item)) = (from, row.kind) else {
            reader.fault(from.and_then(Node::leaf).unwrap_or_default(), say!(w::NOT_A_LIST));
            return None;
        };
        if items.len() > item.most {
            let (count, most) = (items.len() as i64, item.most as i64);
            reader.fault(count.to_string(), say!(w::TOO_MANY, count, most));
            return None;
        }
        let mut read = Vec::with_capacity(items.len());
        for (at, each) in items.iter().enumerate() {
            read.push(reader.within(&at.to_string(), item.name, |reader| {
                let tree = reader.tree(Some(each))?;
                T::read_parts(tree, reader)
            }));
        }
        read.into_iter().collect()
    }
    fn write(&self) -> Node {
        Node::List(self.iter().map(Form::write_parts).collect())
    }
}
