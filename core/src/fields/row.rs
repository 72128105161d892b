//! What a field row holds.

use crate::measure::{Area, Length, Measure, Volume};
use crate::wire::Node;
use crate::words::{Amount, Phrase};

/// Which of several figures that a row names goes before the others, the first first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Goes {
    /// As it is to be.
    Rather,
    /// As it is named.
    AsNamed,
}

/// One input: its name, what it may be, and when it is asked.
#[derive(Clone, Copy, Debug)]
pub struct Row {
    /// Name in the tree.
    pub key: &'static str,
    /// What a person calls it.
    pub label: &'static Phrase,
    /// How to find it out, or how to write it.
    pub hint: &'static Phrase,
    /// What it holds.
    pub kind: Kind,
    /// When it is asked.
    pub when: When,
    /// It feeds a check of its own and never the answer: what can't be read in it leaves out that
    /// check, not the whole.
    pub aside: bool,
    /// When it matters so much to the answer that it is shown at once and not folded away: of the
    /// whole form.
    pub foremost: Option<fn(&Node) -> bool>,
    /// It says what the evidence is about: changed, the evidence is about something else.
    pub identifies: bool,
    /// It says what somebody found out, and opens what is held: it stays in its record. An address
    /// never carries it.
    pub evidence: bool,
    /// The key of the room's figure that is the same thing: one tap takes a whole room. Else empty.
    pub room: &'static str,
    /// The calculator that has that figure where it isn't a room's; else empty.
    pub of: &'static str,
    /// Another figure of that source that is there in this one's place; else empty.
    pub or: &'static str,
    /// The key that a source gives this figure under where it isn't under the first; else empty.
    pub also: &'static str,
    /// The figure that goes before it where the source has it: as it is to be.
    pub rather: &'static str,
    /// Of a choice: the pick that each such figure goes with. A source's own figures choose it.
    pub by: &'static [(&'static str, &'static str)],
    /// Of a text: where what it may name stands, `boxes.label` for the labels of the list of boxes.
    /// A person chooses from these, and may still type what isn't there.
    pub names: &'static [&'static str],
    /// Such a text may hold several names.
    pub several: bool,
    /// Of a day: it can't be yet to come.
    pub past: bool,
    /// Known of the house at hand alone.
    pub measured: bool,
}

/// A row with its words; the form gives it its key.
pub const fn row(label: &'static Phrase, hint: &'static Phrase, kind: Kind) -> Row {
    Row {
        key: "",
        label,
        hint,
        kind,
        when: When::Always,
        aside: false,
        foremost: None,
        identifies: false,
        evidence: false,
        room: "",
        of: "",
        or: "",
        also: "",
        rather: "",
        by: &[],
        names: &[],
        several: false,
        past: false,
        measured: false,
    }
}

impl Row {
    /// Asked only then.
    pub const fn when(self, when: When) -> Self {
        Self { when, ..self }
    }

    /// The same as this figure of a room.
    pub const fn of_room(self, key: &'static str) -> Self {
        Self { room: key, ..self }
    }

    /// The same as this figure of another calculator: one tap takes all such of a mark.
    pub const fn of_mark(self, calculator: &'static str, key: &'static str) -> Self {
        Self { room: key, of: calculator, ..self }
    }

    /// Where its source has that figure, it has none of this row's: not to be told as missing.
    pub const fn or(self, key: &'static str) -> Self {
        Self { or: key, ..self }
    }

    /// The same figure where a source gives it under this key: an L's sides go by another name than
    /// a rectangle's, so that nothing takes them for one.
    pub const fn also(self, key: &'static str) -> Self {
        Self { also: key, ..self }
    }

    /// The same figure as it is to be, under this key, where a source has that: it goes before what is
    /// there now.
    pub const fn rather(self, key: &'static str) -> Self {
        Self { rather: key, ..self }
    }

    /// A choice that a room's figures decide: it is the pick whose figure the room has. The first pair
    /// is the pick that a question starts with.
    pub const fn by_figures(self, by: &'static [(&'static str, &'static str)]) -> Self {
        assert!(matches!(self.kind, Kind::Choice(_)), "only a choice has picks");
        Self { by, ..self }
    }

    /// Whether it is this very figure of a calculator, of a room where `of` is empty.
    pub fn is_figure(&self, key: &str, of: &str) -> bool {
        self.goes(key, of).is_some()
    }

    /// Which of such figures goes before the others, the least first; none for another figure.
    pub fn goes(&self, key: &str, of: &str) -> Option<Goes> {
        match () {
            () if self.room.is_empty() || self.of != of || key.is_empty() => None,
            () if self.rather == key => Some(Goes::Rather),
            () if self.room == key || self.also == key => Some(Goes::AsNamed),
            () => None,
        }
    }

    /// Nothing, of what a figure that it takes is; none where it takes none. A whole number does
    /// where it names its figure: any count would be offered for a year.
    pub fn takes(&self) -> Option<Amount> {
        let counts = matches!(self.kind, Kind::Number(_)) && !self.room.is_empty();
        self.kind.zero().or(counts.then_some(Amount::Count(0)))
    }

    /// Shown at once where `matters` of the whole form, though rows like it are folded away.
    pub const fn foremost(self, matters: fn(&Node) -> bool) -> Self {
        Self { foremost: Some(matters), ..self }
    }

    /// Whether it is to be shown at once as things stand in the whole form.
    pub fn is_foremost(&self, root: &Node) -> bool {
        self.foremost.is_some_and(|matters| matters(root))
    }

    /// Feeds a check of its own only. Never for a value whose absence could make the answer look
    /// better than it is; and only for a quantity that may be left empty, since a fault in it is
    /// worked as if it were.
    pub const fn aside(self) -> Self {
        let optional = match self.kind {
            Kind::Length(span) => span.optional,
            Kind::Volume(span) | Kind::Room(span) => span.optional,
            Kind::Measure(span) => span.optional,
            _ => false,
        };
        assert!(optional, "only a quantity that may be left empty can stand aside");
        Self { aside: true, ..self }
    }

    /// What the evidence in the same form is about.
    pub const fn identifies(self) -> Self {
        Self { identifies: true, ..self }
    }

    /// A text that names what stands in lists of the same question.
    pub const fn names(self, names: &'static [&'static str]) -> Self {
        assert!(matches!(self.kind, Kind::Text(_)), "only a text names something");
        Self { names, ..self }
    }

    /// A text that names several such, with commas or spaces between.
    pub const fn names_several(self, names: &'static [&'static str]) -> Self {
        Self { several: true, ..self.names(names) }
    }

    /// A day on which something was found out or done: none that is yet to come.
    pub const fn past(self) -> Self {
        assert!(matches!(self.kind, Kind::Day), "only a day can be past");
        Self { past: true, ..self }
    }

    /// Known of the house at hand alone, and a text that is acted on: until a person types it, a
    /// usual value that stands there is the sample's.
    pub const fn measured(self) -> Self {
        Self { measured: true, ..self }
    }

    /// Whether what stands there is of the house at hand alone, as all is that a room or another number
    /// knows.
    pub fn is_of_the_house(&self) -> bool {
        self.measured || !self.room.is_empty()
    }

    /// Kept out of addresses, with all that is under it.
    pub const fn evidence(self) -> Self {
        Self { evidence: true, ..self }
    }
}

/// The row of a path such as `finish.proud` or `cables.0.count`.
pub fn row_at(rows: &'static [Row], path: &str) -> Option<&'static Row> {
    let (key, rest) = path.split_once('.').unwrap_or((path, ""));
    let row = rows.iter().find(|row| row.key == key)?;
    match (row.kind, rest) {
        (_, "") => Some(row),
        (Kind::Group(rows), rest) => row_at(rows, rest),
        (Kind::List(item), rest) => match rest.split_once('.') {
            Some((at, rest)) if at.parse::<usize>().is_ok() => row_at(item.rows, rest),
            _ => None,
        },
        _ => None,
    }
}

/// The kinds of row.
#[derive(Clone, Copy, Debug)]
pub enum Kind {
    /// A length.
    Length(Span<Length>),
    /// An area.
    Area(Span<Area>),
    /// A volume.
    Volume(Span<Volume>),
    /// A room's volume, in cubic feet.
    Room(Span<Volume>),
    /// Any other quantity, in the unit of its bounds.
    Measure(Span<Measure>),
    /// A whole number.
    Count {
        /// The fewest.
        least: i64,
        /// The most.
        most: i64,
        /// Why no more.
        why: &'static Phrase,
    },
    /// A whole number that is typed, not stepped to, and may be one that nobody knows yet: a year,
    /// a price.
    Number(Span<i64>),
    /// A line kept as it was typed, of no more than so many characters; it may stay empty.
    Text(usize),
    /// A calendar day; it may stay empty.
    Day,
    /// One of a few.
    Choice(&'static [Pick]),
    /// Yes or no.
    Flag,
    /// Rows of their own under one heading.
    Group(&'static [Row]),
    /// Any number of items, each with rows of its own.
    List(&'static Item),
}

impl Kind {
    /// Whether it is a quantity or a number, and if so whether it may be left empty.
    pub fn optional(self) -> Option<bool> {
        match self {
            Self::Number(span) => Some(span.optional),
            _ => self.quantity(),
        }
    }

    /// Whether it is a quantity, with a unit, and if so whether it may be left empty.
    pub(super) fn quantity(self) -> Option<bool> {
        match self {
            Self::Length(span) => Some(span.optional),
            Self::Area(span) => Some(span.optional),
            Self::Volume(span) | Self::Room(span) => Some(span.optional),
            Self::Measure(span) => Some(span.optional),
            _ => None,
        }
    }

    /// Nothing, of the quantity that it holds; none where it holds none.
    pub fn zero(self) -> Option<Amount> {
        match self {
            Self::Length(span) => Some(Amount::Length(span.least)),
            Self::Area(span) => Some(Amount::Area(span.least)),
            Self::Volume(span) => Some(Amount::Volume(span.least)),
            Self::Room(span) => Some(Amount::Room(span.least)),
            Self::Measure(span) => Some(Amount::Measure(span.least)),
            _ => None,
        }
        .map(|least| least.of_same(0))
    }

    /// Whether an amount is one of it, and within its bounds.
    pub fn holds(self, amount: Amount) -> bool {
        match (self, amount) {
            (Self::Length(span), Amount::Length(it)) => span.holds(it),
            (Self::Area(span), Amount::Area(it)) => span.holds(it),
            (Self::Volume(span), Amount::Volume(it)) | (Self::Room(span), Amount::Room(it)) => {
                span.holds(it)
            }
            (Self::Measure(span), Amount::Measure(it)) => span.holds(it),
            (Self::Number(span), Amount::Count(it)) => span.holds(it),
            _ => false,
        }
    }

    /// Values of it that are offered for one tap.
    pub fn common(self) -> Vec<Amount> {
        match self {
            Self::Length(span) => span.common.iter().copied().map(Amount::Length).collect(),
            Self::Area(span) => span.common.iter().copied().map(Amount::Area).collect(),
            Self::Volume(span) => span.common.iter().copied().map(Amount::Volume).collect(),
            Self::Room(span) => span.common.iter().copied().map(Amount::Room).collect(),
            Self::Measure(span) => span.common.iter().copied().map(Amount::Measure).collect(),
            _ => Vec::new(),
        }
    }
}

/// The bounds of a quantity.
#[derive(Clone, Copy, Debug)]
pub struct Span<T: 'static> {
    /// The least.
    pub least: T,
    /// The most.
    pub most: T,
    /// Why no more.
    pub why: &'static Phrase,
    /// Values offered for one tap.
    pub common: &'static [T],
    /// It may be left empty.
    pub optional: bool,
}

/// One of the choices.
#[derive(Clone, Copy, Debug)]
pub struct Pick {
    /// As written in the tree.
    pub key: &'static str,
    /// As a person reads it.
    pub label: &'static Phrase,
}

/// What a list holds.
#[derive(Debug)]
pub struct Item {
    /// One item's name.
    pub name: &'static Phrase,
    /// An item's rows.
    pub rows: &'static [Row],
    /// No more than this.
    pub most: usize,
    /// A new item, every field at its blank.
    pub blank: fn() -> Node,
    /// Items that one tap adds; tapped again, the count of an equal item goes up.
    pub presets: &'static [Preset],
}

/// An item that one tap adds.
#[derive(Debug)]
pub struct Preset {
    /// What the button says.
    pub label: &'static Phrase,
    /// The leaves it sets; the rest start as the form's blanks.
    pub sets: &'static [(&'static str, &'static str)],
}

impl Item {
    /// A new item with a preset's leaves set.
    pub fn fresh(&self, preset: &Preset) -> Node {
        let mut item = (self.blank)();
        for (path, leaf) in preset.sets {
            item.put(path, Node::text(leaf));
        }
        item
    }
}

/// When a row is asked.
#[derive(Clone, Copy, Debug)]
pub enum When {
    /// Always.
    Always,
    /// When the choice beside it is one of these.
    Is(&'static str, &'static [&'static str]),
    /// When the choice beside it is none of these.
    IsNot(&'static str, &'static [&'static str]),
    /// When the flag beside it is set.
    Yes(&'static str),
    /// When the list of this name at the top of the form has an item.
    Any(&'static str),
    /// When all of these hold.
    All(&'static [When]),
}

impl<T: PartialOrd> Span<T> {
    fn holds(&self, it: T) -> bool {
        self.least <= it && it <= self.most
    }
}

impl When {
    /// Whether a row with this condition is asked. `rows` and `here` are the row's own level.
    pub fn holds(self, rows: &[Row], here: &Node, root: &Node) -> bool {
        match self {
            Self::Always => true,
            Self::Is(key, of) => of.contains(&chosen(rows, here, key).as_str()),
            Self::IsNot(key, of) => !of.contains(&chosen(rows, here, key).as_str()),
            Self::Yes(key) => here.get(key).and_then(Node::leaf).as_deref() == Some("yes"),
            Self::Any(key) => !root.items(key).is_empty(),
            Self::All(of) => of.iter().all(|when| when.holds(rows, here, root)),
        }
    }
}

/// The key of a choice; where none is given, its first pick.
pub(super) fn chosen(rows: &[Row], here: &Node, key: &str) -> String {
    if let Some(given) = here.get(key).and_then(Node::leaf) {
        return given;
    }
    let row = rows.iter().find(|row| row.key == key);
    match row.map(|row| row.kind) {
        Some(Kind::Choice(picks)) => picks.first().map_or("", |pick| pick.key).to_owned(),
        _ => String::new(),
    }
}
