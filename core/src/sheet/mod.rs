//! The one shape in which every answer is shown: figures, checks with their margin, working,
//! materials, cautions, sources and a drawing.
//!
//! No rule and no calculator is known here, and nothing is compared with a limit here: a check
//! arrives with its verdict, from `rules`.

pub mod calendar;
mod check;
mod clear;
mod drawing;
mod standing;
mod steps;
mod working;

pub use check::{Asks, Check, Sense, Verdict};
pub use clear::{Clear, PAGE_PX};
pub use drawing::{
    Anchor, DIMENSION_PX, Drawing, Ink, LABEL_PX, LabelBox, Line, Point, Surface, distance,
};
pub use standing::Standing;
pub use steps::Steps;
pub use working::{Expr, Step, Value};

use crate::measure::Rounding;
use crate::wire::Node;
use crate::words;
use crate::words::{Amount, Arg, Phrase, Text};

/// How sure a published value is, as a person is told it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Confidence {
    /// Read in the source named.
    Read,
    /// Written down from memory; to be checked against the book.
    Memory,
    /// Worked out from values that were read.
    Derived,
    /// What crews do. No publication stands behind it.
    CommonPractice,
}

words! {
    READ = "read in a published copy", es "leído en una copia publicada";
    MEMORY = "from memory: check it in the book", es "de memoria: revíselo en el libro";
    DERIVED = "worked out from published values", es "calculado de valores publicados";
    COMMON_PRACTICE = "common practice, not a rule", es "costumbre del oficio, no regla";
    VALUE = "{0}", es "{0}";
}

impl Confidence {
    /// As a person reads it.
    pub fn words(self) -> &'static Phrase {
        match self {
            Self::Read => &READ,
            Self::Memory => &MEMORY,
            Self::Derived => &DERIVED,
            Self::CommonPractice => &COMMON_PRACTICE,
        }
    }
}

/// Where a number is published.
#[derive(Debug, PartialEq, Eq)]
pub struct Source {
    /// Stable name, for tests and scripts.
    pub key: &'static str,
    /// The clause or table: `NEC 314.16(B)(1)`, the same in every language where it is the name of what
    /// is published. Without the year of an edition: a text may hold in several, and the answer says
    /// which one it is worked under.
    pub clause: Phrase,
    /// What it says, in our words.
    pub says: &'static Phrase,
    /// What was read, so that a person can judge it.
    pub seen: &'static Phrase,
    /// How sure we are.
    pub confidence: Confidence,
}

/// A figure with its name.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Figure {
    /// Stable name, for marks, tests and scripts.
    pub key: &'static str,
    /// What it is.
    pub name: Text,
    /// The value.
    pub amount: Amount,
    /// How it is rounded when shown: to the nearest, as everywhere. See [`Rounding`].
    pub rounding: Rounding,
    /// Read in the value's place, of one that only numbers what has a name.
    pub said: Option<Text>,
}

impl Figure {
    /// One that is rounded to the nearest when shown, as nearly all are. Not generic: the page
    /// carries it once.
    #[inline(never)]
    pub fn new(key: &'static str, name: Text, amount: Amount) -> Self {
        Self { key, name, amount, rounding: Rounding::Nearest, said: None }
    }

    /// As a person reads its value.
    pub fn value(&self) -> Text {
        let amount =
            || Text { phrase: &VALUE, args: vec![Arg::Amount(self.amount, self.rounding)] };
        self.said.clone().unwrap_or_else(amount)
    }

    /// The same, by a phrase that takes no values.
    pub fn plain(key: &'static str, name: &'static Phrase, amount: Amount) -> Self {
        Self::new(key, name.into(), amount)
    }
}

/// A change to the inputs that one tap makes: where, and what to put there.
pub type Put = (String, Node);

/// One line of a [`Part`].
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PartRow {
    /// What it is.
    pub name: Text,
    /// The figure or word beside it.
    pub value: Text,
    /// What a tap would put into the inputs; none for a row that is only read.
    pub puts: Vec<Put>,
}

/// The key of a part that is for the screen at hand alone: what it says may be untrue by the time
/// that a paper is read.
pub const SCREEN_ONLY: &str = "screen-only";

/// The key of a part that belongs with the answer: it is what a person came for, and the page shows
/// it under the headline.
pub const FOREMOST: &str = "foremost";

/// The key of a part that names what isn't among the materials, because nobody can say how much of it:
/// the list to buy names each of its rows, with why.
pub const UNBOUGHT: &str = "unbought";

/// The key of a check on places that were not given: an owner settles those too.
pub const UNPLACED: &str = "unplaced";

/// A heading of its own with rows under it: each item's share, what else fits, mends.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Part {
    /// Stable name.
    pub key: &'static str,
    /// The heading.
    pub title: Text,
    /// Said above the rows.
    pub note: Option<Text>,
    /// The rows, in the order that matters.
    pub rows: Vec<PartRow>,
    /// In their place, what is read by row and column.
    pub table: Option<Table>,
}

impl Part {
    /// One of rows. Not generic, nor inlined: the page carries it once.
    #[inline(never)]
    pub fn new(key: &'static str, title: Text, note: Option<Text>, rows: Vec<PartRow>) -> Self {
        Self { key, title, note, rows, table: None }
    }

    /// The same, by phrases that take no values.
    #[inline(never)]
    pub fn plain(
        key: &'static str,
        title: &'static Phrase,
        note: Option<&'static Phrase>,
        rows: Vec<PartRow>,
    ) -> Self {
        Self::new(key, title.into(), note.map(Text::from), rows)
    }

    /// Puts the same behind others where there is a row in it.
    #[inline(never)]
    pub fn add(
        all: &mut Vec<Self>,
        key: &'static str,
        title: &'static Phrase,
        note: Option<&'static Phrase>,
        rows: Vec<PartRow>,
    ) {
        if !rows.is_empty() {
            all.push(Self::plain(key, title, note, rows));
        }
    }
}

/// Rows and columns, few enough for a narrow phone.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Table {
    /// What heads each column, the one of the rows' names first.
    pub heads: Vec<Text>,
    /// The rows.
    pub rows: Vec<TableRow>,
}

/// One row of a [`Table`].
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TableRow {
    /// What heads it.
    pub name: Text,
    /// A cell for each column but the first.
    pub cells: Vec<Text>,
}

/// Something to have on hand, exact: rounding to what a shop sells happens once, on a job's list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Material {
    /// Stable name, by which a job adds up.
    pub key: String,
    /// What to ask for.
    pub name: Text,
    /// How much.
    pub amount: Amount,
}

/// One thing that can hurt somebody, and what to do about it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Caution {
    /// The words.
    pub text: Text,
    /// Where it is published, if it is.
    pub source: Option<&'static Source>,
}

impl Caution {
    /// Words with their source, or none. Not inlined: the page carries it once.
    #[inline(never)]
    pub fn all(told: &[(&'static Phrase, Option<&'static Source>)]) -> Vec<Self> {
        told.iter().map(|(text, source)| Self { text: (*text).into(), source: *source }).collect()
    }
}

/// What a calculator shows.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sheet {
    /// The answer.
    pub headline: Figure,
    /// Which check the answer belongs to, by its place in `checks`.
    pub lead: Option<usize>,
    /// Said under the answer when there is one thing to do next.
    pub next: Option<Text>,
    /// Other figures.
    pub figures: Vec<Figure>,
    /// Rules with their margins.
    pub checks: Vec<Check>,
    /// Each step as an equation with its numbers in.
    pub working: Vec<Step>,
    /// What else there is to know.
    pub parts: Vec<Part>,
    /// What to have on hand.
    pub materials: Vec<Material>,
    /// The one that matters first.
    pub cautions: Vec<Caution>,
    /// The drawing to scale.
    pub drawing: Option<Drawing>,
}

impl Sheet {
    /// The worst verdict of all checks; within where there are none.
    pub fn verdict(&self) -> Verdict {
        self.checks.iter().map(|check| check.verdict).max().unwrap_or(Verdict::Within)
    }

    /// A figure by its key, the answer first.
    pub fn figure(&self, key: &str) -> Option<&Figure> {
        std::iter::once(&self.headline).chain(&self.figures).find(|figure| figure.key == key)
    }

    /// The check that the answer belongs to.
    pub fn lead(&self) -> Option<&Check> {
        self.lead.and_then(|at| self.checks.get(at))
    }

    /// The check that decides the verdict: the one that the answer belongs to where it is as bad
    /// as any, else the first of the worst. None where there are no checks.
    pub fn decisive(&self) -> Option<&Check> {
        let worst = self.verdict();
        let lead = self.lead().filter(|lead| lead.verdict == worst);
        lead.or_else(|| self.checks.iter().find(|check| check.verdict == worst))
    }

    /// Where the sentence under the answer is from: what is to be done next or, without that, what the
    /// deciding check says. An answer that belongs to a check speaks of it; any other sentence is of the
    /// check that says the same, and of none where none does.
    pub fn said_by(&self) -> Option<&'static Source> {
        let decisive = self.decisive()?;
        let next = self.next.as_ref().filter(|_| self.lead.is_none());
        let Some(next) = next else { return Some(decisive.source) };
        let says = |check: &&Check| check.note.as_ref().is_some_and(|note| next.says_as(note));
        std::iter::once(decisive).chain(&self.checks).find(says).map(|check| check.source)
    }

    /// Every source that the sheet stands on, once each, in the order met.
    pub fn sources(&self) -> Vec<&'static Source> {
        let checks = self.checks.iter().map(|check| check.source);
        let steps = self.working.iter().filter_map(|step| step.source);
        let cautions = self.cautions.iter().filter_map(|caution| caution.source);
        let mut all: Vec<&'static Source> = Vec::new();
        for source in checks.chain(steps).chain(cautions) {
            if !all.iter().any(|known| known.key == source.key) {
                all.push(source);
            }
        }
        all
    }
}

/// Why an input was refused: where, what was given, and what would do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// The field's path, such as `cables.0.count`.
    pub path: String,
    /// The field's label, to say what is needed.
    pub label: &'static Phrase,
    /// What was given, untouched.
    pub given: String,
    /// What is wrong and what would do.
    pub says: Text,
}

/// One fault or more; never none.
pub type Faults = Vec<Fault>;
