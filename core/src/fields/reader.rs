//! Reads a tree by its rows, and says what is wrong where.

use super::form::{Field, Form};
use super::row::{Item, Kind, Pick, Row, Span};
use super::units::may_be_a_share;
use super::words as w;
use crate::measure::{Area, Length, Measure, Problem, Reading, Units, Volume};
use crate::say;
use crate::sheet::{Fault, Faults};
use crate::wire::Node;
use crate::words::{Amount, Arg, Phrase, Text};

/// Whether a fault is that nothing was given.
pub fn is_missing(fault: &Fault) -> bool {
    std::ptr::eq(fault.says.phrase, &w::NEEDED)
}

/// The fault of a row that may be empty by its kind, a day or a line, and is needed all the same.
pub fn missing(path: String, label: &'static Phrase, example: Option<&str>) -> Fault {
    let example = example.map_or((&w::A_DAY).into(), Arg::from);
    Fault { path, label, given: String::new(), says: say!(w::NEEDED, label, example) }
}

/// Walks a tree, noting every fault with its path.
#[derive(Debug)]
pub struct Reader<'a> {
    root: &'a Node,
    units: Units,
    path: Vec<String>,
    labels: Vec<&'static Phrase>,
    faults: Faults,
    left_out: Faults,
}

impl<'a> Reader<'a> {
    /// Reads a whole form. Bare numbers are in `units`. A row that stands aside and can't be read
    /// is left empty, and its fault is given beside the form.
    ///
    /// # Errors
    /// Every fault found, those of rows that stand aside too; at least one is not of such a row.
    pub fn form<T: Form>(root: &'a Node, units: Units) -> Result<(T, Faults), Faults> {
        let mut form = T::blank();
        let left_out = Self::whole(root, units, &mut |reader| form.take_parts(root, reader))?;
        Ok((form, left_out))
    }

    /// What is the same for all forms, so that it is there once.
    fn whole(
        root: &'a Node,
        units: Units,
        read: &mut dyn FnMut(&mut Self) -> bool,
    ) -> Result<Faults, Faults> {
        let (path, labels) = (Vec::new(), Vec::new());
        let (faults, left_out) = (Vec::new(), Vec::new());
        let mut reader = Self { root, units, path, labels, faults, left_out };
        let read = reader.tree(Some(root)).is_some() && read(&mut reader);
        if read && reader.faults.is_empty() {
            return Ok(reader.left_out);
        }
        reader.faults.append(&mut reader.left_out);
        Err(reader.faults)
    }

    /// Reads the items of a list one by one; `false` after noting a fault.
    fn each(
        &mut self,
        from: Option<&Node>,
        row: &'static Row,
        read: &mut dyn FnMut(&Node, &mut Self) -> bool,
    ) -> bool {
        let Some((items, item)) = self.items(from, row) else { return false };
        let mut all = true;
        for (at, each) in items.iter().enumerate() {
            all &= self.within(&at.to_string(), item.name, &mut |reader| {
                reader.tree(Some(each)).is_some_and(|tree| read(tree, reader))
            });
        }
        all
    }

    /// Reads all parts of a form into their slots, which hold their blanks; `false` after noting
    /// a fault, a name that no row has among them.
    pub fn parts(
        &mut self,
        rows: &'static [Row],
        here: &Node,
        slots: &mut [(&'static str, &mut dyn Field)],
    ) -> bool {
        let before = self.faults.len();
        self.unknown(rows, here);
        for (key, slot) in slots {
            if let Some((row, from)) = self.asked(rows, key, here) {
                let noted = self.faults.len();
                self.within(key, row.label, &mut |reader| slot.take(from, row, reader));
                if row.aside {
                    self.left_out.extend(self.faults.drain(noted..));
                }
            }
        }
        self.faults.len() == before
    }

    /// The row of a part that is to be read, and what was given for it.
    fn asked<'n>(
        &self,
        rows: &'static [Row],
        key: &str,
        here: &'n Node,
    ) -> Option<(&'static Row, Option<&'n Node>)> {
        let row = rows.iter().find(|row| row.key == key)?;
        let from = here.get(key);
        let needed = row.kind.optional() == Some(false);
        let read = row.when.holds(rows, here, self.root) && (from.is_some() || needed);
        read.then_some((row, from))
    }

    fn within(
        &mut self,
        key: &str,
        label: &'static Phrase,
        read: &mut dyn FnMut(&mut Self) -> bool,
    ) -> bool {
        self.path.push(key.to_owned());
        self.labels.push(label);
        let read = read(self);
        self.labels.pop();
        self.path.pop();
        read
    }

    /// Notes a fault at the present place.
    pub fn fault(&mut self, given: String, says: Text) {
        let label = self.labels.last().copied().unwrap_or(&w::WHOLE_LABEL);
        self.faults.push(Fault { path: self.path.join("."), label, given, says });
    }

    /// Notes every name in `here` that no row has.
    fn unknown(&mut self, rows: &'static [Row], here: &Node) {
        let Node::Tree(parts) = here else { return };
        for (key, part) in parts {
            if !rows.iter().any(|row| row.key == key) {
                let given = part.leaf().unwrap_or_default();
                self.within(key, &w::UNKNOWN_LABEL, &mut |reader| {
                    reader.fault(given.clone(), say!(w::UNKNOWN));
                    false
                });
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
    pub fn pick(&mut self, from: Option<&Node>, picks: &'static [Pick]) -> Option<usize> {
        let given = from.and_then(Node::leaf).unwrap_or_default();
        let at = picks.iter().position(|pick| pick.key == given);
        if at.is_none() {
            let keys: Vec<_> = picks.iter().map(|pick| pick.key).collect();
            self.fault(given.clone(), say!(w::NOT_ONE_OF, given, keys.join(", ")));
        }
        at
    }

    /// A list's items, if it is one and not too long.
    fn items<'n>(
        &mut self,
        from: Option<&'n Node>,
        row: &'static Row,
    ) -> Option<(&'n [Node], &'static Item)> {
        let (Some(Node::List(items)), Kind::List(item)) = (from, row.kind) else {
            self.fault(from.and_then(Node::leaf).unwrap_or_default(), say!(w::NOT_A_LIST));
            return None;
        };
        if items.len() > item.most {
            let (count, most) = (items.len() as i64, item.most as i64);
            self.fault(count.to_string(), say!(w::TOO_MANY, count, most));
            return None;
        }
        Some((items, item))
    }

    /// What a row of lengths understands, or the words for what is wrong.
    pub(super) fn length(&self, row: &Row, given: &str) -> Result<Length, Text> {
        hear(row, given, self.units)
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
    fn read(text: &str, kind: Kind, units: Units) -> Reading<Self>;
    fn amount(self, kind: Kind) -> Amount;
    fn span(kind: Kind) -> Option<Span<Self>>;
    /// How it may be written, by the kind of its row.
    fn example(kind: Kind) -> Arg;
}

/// The example of a long length is 112-1/2 in; a row that takes less shows a short one.
const LONG: Length = Length::inches(225, 2);
/// The example of a short length is 1-1/2 in; a row that takes less shows a thin one.
const THIN: Length = Length::inches(3, 2);

impl Measured for Length {
    fn read(text: &str, _: Kind, units: Units) -> Reading<Self> {
        Self::read(text, units)
    }
    fn amount(self, _: Kind) -> Amount {
        Amount::Length(self)
    }
    fn span(kind: Kind) -> Option<Span<Self>> {
        if let Kind::Length(span) = kind { Some(span) } else { None }
    }
    fn example(kind: Kind) -> Arg {
        match Self::span(kind) {
            Some(span) if span.most < THIN => (&w::A_THIN_LENGTH).into(),
            Some(span) if span.most < LONG => match span.common.first() {
                Some(common) if span.least > THIN => Amount::Length(*common).into(),
                _ => (&w::A_SHORT_LENGTH).into(),
            },
            _ => (&w::A_LENGTH).into(),
        }
    }
}

impl Measured for Area {
    fn read(text: &str, _: Kind, units: Units) -> Reading<Self> {
        Self::read(text, units)
    }
    fn amount(self, _: Kind) -> Amount {
        Amount::Area(self)
    }
    fn span(kind: Kind) -> Option<Span<Self>> {
        if let Kind::Area(span) = kind { Some(span) } else { None }
    }
    fn example(_: Kind) -> Arg {
        (&w::AN_AREA).into()
    }
}

/// A box's volume in a row of volumes, a room's in a row of those.
impl Measured for Volume {
    fn read(text: &str, kind: Kind, units: Units) -> Reading<Self> {
        match kind {
            Kind::Room(_) => Self::read_as_room(text, units),
            _ => Self::read(text, units),
        }
    }
    fn amount(self, kind: Kind) -> Amount {
        if matches!(kind, Kind::Room(_)) { Amount::Room(self) } else { Amount::Volume(self) }
    }
    fn span(kind: Kind) -> Option<Span<Self>> {
        if let Kind::Volume(span) | Kind::Room(span) = kind { Some(span) } else { None }
    }
    fn example(kind: Kind) -> Arg {
        if matches!(kind, Kind::Room(_)) { &w::A_ROOM } else { &w::A_VOLUME }.into()
    }
}

impl Measured for Measure {
    fn read(text: &str, kind: Kind, units: Units) -> Reading<Self> {
        match kind {
            Kind::Measure(span) => Self::read(text, span.least.unit(), units),
            _ => Err(Problem::NotANumber),
        }
    }
    fn amount(self, _: Kind) -> Amount {
        Amount::Measure(self)
    }
    fn span(kind: Kind) -> Option<Span<Self>> {
        if let Kind::Measure(span) = kind { Some(span) } else { None }
    }
    /// One of its one-tap values, else one that looks like a real one: 1, 2 or 5 and noughts, as many
    /// times the least, or a hundredth of the most, as the most is times it; else the middle.
    fn example(kind: Kind) -> Arg {
        let Some(span) = Self::span(kind) else { return "".into() };
        if let Some(common) = span.common.first() {
            return Amount::Measure(*common).into();
        }
        let (least, most) = (span.least.millionths(), span.most.millionths());
        let low = least.max(most / 100).max(1);
        let between = libm::sqrt(low as f64 * most.max(1) as f64) as i64;
        let mut ten = 1;
        while ten <= between / 10 {
            ten *= 10;
        }
        let round = [5, 2].map(|it| it * ten).into_iter().find(|it| *it <= between).unwrap_or(ten);
        let fits = round >= least && round <= most;
        Amount::Measure(span.least.of_same(if fits { round } else { least / 2 + most / 2 })).into()
    }
}

fn is_empty(given: Option<String>) -> bool {
    given.is_none_or(|text| text.trim().is_empty())
}

macro_rules! measured {
    ($quantity:ident) => {
        impl Field for $quantity {
            fn take(
                &mut self,
                from: Option<&Node>,
                row: &'static Row,
                reader: &mut Reader<'_>,
            ) -> bool {
                // Left empty where it may be, it keeps its blank.
                let given = from.and_then(Node::leaf);
                if row.kind.optional() == Some(true) && is_empty(given) {
                    return true;
                }
                reader.quantity(from, row).map(|value| *self = value).is_some()
            }
            fn write(&self) -> Node {
                Node::Text(self.exact())
            }
        }

        impl Field for Option<$quantity> {
            fn take(
                &mut self,
                from: Option<&Node>,
                row: &'static Row,
                reader: &mut Reader<'_>,
            ) -> bool {
                let given = from.and_then(Node::leaf);
                // One that may not stay empty only starts empty, and is then asked for.
                let optional = row.kind.optional() != Some(false);
                if optional && is_empty(given) {
                    *self = None;
                    return true;
                }
                *self = reader.quantity(from, row);
                self.is_some()
            }
            fn write(&self) -> Node {
                Node::Text(self.map($quantity::exact).unwrap_or_default())
            }
        }
    };
}
measured!(Length);
measured!(Area);
measured!(Volume);
measured!(Measure);

/// Digits with nothing behind them, with a fraction or none.
fn is_bare(given: &str) -> bool {
    given.trim().bytes().all(|sign| sign.is_ascii_digit() || b". /-".contains(&sign))
}

/// A letter or the sign of a percent.
fn is_of_unit(sign: char) -> bool {
    sign == '%' || sign.is_alphabetic()
}

fn hear<T: Measured>(row: &Row, given: &str, units: Units) -> Result<T, Text> {
    let span = T::span(row.kind);
    let low = |span: Span<T>| say!(w::AT_LEAST, span.least.amount(row.kind));
    let high = |span: Span<T>| say!(w::AT_MOST, span.most.amount(row.kind), span.why);
    match (T::read(given, row.kind, units), span) {
        (Ok(value), _) if may_be_a_share(value.amount(row.kind)) && !given.contains(is_of_unit) => {
            let amount = value.amount(row.kind);
            let whole = amount.of_same(amount.raw().saturating_mul(100));
            Err(say!(w::SHARE, given.trim(), whole))
        }
        (Ok(value), Some(span)) if value < span.least => {
            // A bare 14 that would be well in feet: inches were not meant.
            let feet = [given.trim(), " ft"].concat();
            match T::read(&feet, row.kind, units) {
                Ok(meant) if is_bare(given) && units == Units::Customary && meant >= span.least => {
                    let read = value.amount(row.kind);
                    Err(say!(w::IN_FEET, given.trim(), read, span.least.amount(row.kind), feet))
                }
                _ => Err(low(span)),
            }
        }
        (Ok(value), Some(span)) if value > span.most => Err(high(span)),
        (Ok(value), _) => Ok(value),
        // What can't even be held is past any bound, on the side of its sign.
        (Err(Problem::TooLarge), Some(span)) => {
            Err(if given.trim().starts_with(['-', '−']) { low(span) } else { high(span) })
        }
        (Err(problem), _) => Err(complain(problem, row, given, T::example(row.kind))),
    }
}

pub(super) fn complain(problem: Problem, row: &Row, given: &str, example: impl Into<Arg>) -> Text {
    let example = example.into();
    let phrase = match problem {
        Problem::Empty => return say!(w::NEEDED, row.label, example),
        Problem::NotANumber => &w::CANT_READ,
        Problem::Comma => &w::COMMA,
        Problem::UnknownUnit => &w::NOT_ITS_UNIT,
        Problem::ZeroDenominator => &w::NO_ZERO_UNDER,
        Problem::TooLarge | Problem::TooManyDigits => &w::TOO_MANY_DIGITS,
        Problem::TwoMeanings if matches!(row.kind, Kind::Measure(_)) => {
            return two_sums(given.trim());
        }
        Problem::TwoMeanings => &w::TWO_DAYS,
    };
    Text { phrase, args: vec![Arg::from(given.trim()), example] }
}

/// The two sums that money with three digits behind its point may mean, as each is written: the words
/// for [`Problem::TwoMeanings`] of money.
pub fn two_sums(given: &str) -> Text {
    let cents = given.strip_suffix(|last: char| last.is_ascii_digit()).unwrap_or(given);
    say!(w::TWO_SUMS, given, given.replace('.', ""), cents)
}

/// What a field's text is understood as, or what is wrong with it: the screen shows it beside
/// what was typed. `None` where an optional field is empty or the row is no quantity.
///
/// # Errors
/// The words for the fault.
pub fn heard(row: &Row, given: &str, units: Units) -> Result<Option<Amount>, Text> {
    let Some(optional) = row.kind.quantity() else { return Ok(None) };
    if optional && given.trim().is_empty() {
        return Ok(None);
    }
    fn as_amount<T: Measured>(row: &Row, given: &str, units: Units) -> Result<Amount, Text> {
        hear::<T>(row, given, units).map(|value| value.amount(row.kind))
    }
    let hear = match row.kind {
        Kind::Length(_) => as_amount::<Length>,
        Kind::Area(_) => as_amount::<Area>,
        Kind::Measure(_) => as_amount::<Measure>,
        _ => as_amount::<Volume>,
    };
    hear(row, given, units).map(Some)
}

/// The amount that a text means in a row of quantities, whatever the row's bounds; none where it
/// can't be read.
pub(super) fn amount(kind: Kind, text: &str, units: Units) -> Option<Amount> {
    fn read<T: Measured>(kind: Kind, text: &str, units: Units) -> Option<Amount> {
        T::read(text, kind, units).ok().map(|value| value.amount(kind))
    }
    let read = match kind {
        Kind::Length(_) => read::<Length>,
        Kind::Area(_) => read::<Area>,
        Kind::Measure(_) => read::<Measure>,
        _ => read::<Volume>,
    };
    read(kind, text, units)
}

impl Field for bool {
    fn take(&mut self, from: Option<&Node>, _: &'static Row, reader: &mut Reader<'_>) -> bool {
        match from.and_then(Node::leaf).as_deref() {
            Some("yes") => *self = true,
            Some("no") => *self = false,
            given => {
                let given = given.unwrap_or_default().to_owned();
                reader.fault(given.clone(), say!(w::NOT_YES_OR_NO, given));
                return false;
            }
        }
        true
    }
    fn write(&self) -> Node {
        Node::Flag(*self)
    }
}

impl<T: Form> Field for Vec<T> {
    fn take(&mut self, from: Option<&Node>, row: &'static Row, reader: &mut Reader<'_>) -> bool {
        reader.each(from, row, &mut |tree, reader| {
            let mut form = T::blank();
            let read = form.take_parts(tree, reader);
            self.push(form);
            read
        })
    }
    fn write(&self) -> Node {
        let mut items = Vec::new();
        for form in self {
            items.push(form.write_parts());
        }
        Node::List(items)
    }
}
