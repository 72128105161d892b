//! Inputs made from a calculator's rows: the same rows that draw its form and read it.

use ledgerboard_core::fields::{Item, Kind, Row, Span};
use ledgerboard_core::measure::{Area, Day, Length, Measure, Volume};
use ledgerboard_core::wire::Node;
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::string::string_regex;

/// Trees in which every field is within its own bounds. Fields may still not fit each other.
pub fn fitting(rows: &'static [Row]) -> BoxedStrategy<Node> {
    tree(rows, field)
}

/// Trees of the right shape with anything typed into some of the fields.
pub fn wild(rows: &'static [Row]) -> BoxedStrategy<Node> {
    tree(rows, |row| prop_oneof![4 => field(row), 1 => junk(), 1 => Just(Node::text(""))].boxed())
}

/// What may be typed, or come in by a link or a script.
fn junk() -> BoxedStrategy<Node> {
    prop_oneof![
        ".{0,12}".prop_map(Node::Text),
        "[-0-9 ./'\"½ftin³]{0,12}".prop_map(Node::Text),
        any::<i64>().prop_map(Node::Whole),
        any::<bool>().prop_map(Node::Flag),
        Just(Node::EMPTY),
        vec(Just(Node::EMPTY), 0..3).prop_map(Node::List),
    ]
    .boxed()
}

fn tree(
    rows: &'static [Row],
    field: fn(&'static Row) -> BoxedStrategy<Node>,
) -> BoxedStrategy<Node> {
    let mut parts: BoxedStrategy<Vec<(String, Node)>> = Just(Vec::new()).boxed();
    for row in rows {
        let part = match row.kind {
            Kind::Group(rows) => tree(rows, field),
            Kind::List(item) => list(item, field),
            _ => field(row),
        };
        parts = (parts, part)
            .prop_map(|(mut parts, part)| {
                parts.push((row.key.to_owned(), part));
                parts
            })
            .boxed();
    }
    parts.prop_map(Node::Tree).boxed()
}

fn list(
    item: &'static Item,
    field: fn(&'static Row) -> BoxedStrategy<Node>,
) -> BoxedStrategy<Node> {
    // Most real lists are short; an empty one is the commonest of all.
    let most = item.most.min(3);
    prop_oneof![2 => Just(Node::List(Vec::new())), 3 => vec(tree(item.rows, field), 0..=most).prop_map(Node::List)]
        .boxed()
}

fn field(row: &'static Row) -> BoxedStrategy<Node> {
    match row.kind {
        Kind::Length(span) => quantity(span, Length::nanometres, |units| {
            // Sixteenths mostly, as a tape gives; any nanometre else.
            let tape = Length::inches(units / 1_587_500, 16);
            [tape, Length::from_nanometres(units)].map(Length::exact)
        }),
        Kind::Area(span) => quantity(span, square_micrometres, |units| {
            let tape = Area::of(Length::inches(1, 10), Length::inches(1, 1));
            let coarse = tape.times(units / square_micrometres(tape));
            let fine = Area::from_square_nanometres(i128::from(units) * 1_000_000);
            [coarse, fine].map(Area::exact)
        }),
        Kind::Volume(span) => quantity(span, Volume::units, |units| {
            let stamp = Volume::hundredths(units / 163_870_640 * 10);
            [stamp, Volume::from_units(units)].map(Volume::exact)
        }),
        Kind::Room(span) => quantity(span, Volume::units, |units| {
            let foot = Volume::hundredths(172_800);
            [foot.times(units / foot.units()), Volume::from_units(units)].map(Volume::exact_as_room)
        }),
        Kind::Measure(span) => measure(span),
        Kind::Count { least, most, .. } => (least..=most).prop_map(Node::Whole).boxed(),
        Kind::Number(span) => number(span),
        Kind::Text(most) => line(most),
        Kind::Day => day(),
        Kind::Choice(picks) => (0..picks.len()).prop_map(|at| Node::text(picks[at].key)).boxed(),
        Kind::Flag => any::<bool>().prop_map(Node::Flag).boxed(),
        Kind::Group(rows) => tree(rows, field),
        Kind::List(item) => list(item, field),
    }
}

/// Square nanometres are past 64 bits; these are not.
fn square_micrometres(area: Area) -> i64 {
    i64::try_from(area.square_nanometres() / 1_000_000).unwrap_or(i64::MAX)
}

fn quantity<T: Copy + Ord + std::fmt::Debug + 'static>(
    span: Span<T>,
    units: fn(T) -> i64,
    texts: fn(i64) -> [String; 2],
) -> BoxedStrategy<Node> {
    let (least, most) = (units(span.least), units(span.most));
    let value = (least..=most, prop::bool::weighted(0.8)).prop_map(move |(value, coarse)| {
        let [coarse_text, fine_text] = texts(value);
        // The coarse step may fall under the least; then the fine one stands.
        Node::Text(if coarse && value - least > 200_000_000 { coarse_text } else { fine_text })
    });
    if span.optional {
        option::of(value).prop_map(|value| value.unwrap_or(Node::text(""))).boxed()
    } else {
        value.boxed()
    }
}

/// To the tenth mostly; any millionth else.
fn measure(span: Span<Measure>) -> BoxedStrategy<Node> {
    let (least, most) = (span.least.millionths(), span.most.millionths());
    let value = (least..=most, prop::bool::weighted(0.8)).prop_map(move |(value, coarse)| {
        let tenth = value / 100_000 * 100_000;
        let value = if coarse && tenth >= least { tenth } else { value };
        Node::Text(span.least.of_same(value).exact())
    });
    if span.optional {
        option::of(value).prop_map(|value| value.unwrap_or(Node::text(""))).boxed()
    } else {
        value.boxed()
    }
}

fn number(span: Span<i64>) -> BoxedStrategy<Node> {
    let value = (span.least..=span.most).prop_map(Node::Whole);
    if span.optional {
        option::of(value).prop_map(|value| value.unwrap_or(Node::text(""))).boxed()
    } else {
        value.boxed()
    }
}

/// Any line that fits, its ends and quotes included; empty as often as not.
fn line(most: usize) -> BoxedStrategy<Node> {
    let typed = string_regex(&format!("\\PC{{1,{most}}}")).expect("any signs but breaks");
    prop_oneof![Just(Node::text("")), typed.prop_map(Node::Text)].boxed()
}

fn day() -> BoxedStrategy<Node> {
    let day = (Day::YEARS, 1_u8..=12, 1_u8..=28);
    let day = day.prop_filter_map("a day", |(year, month, day)| Day::new(year, month, day));
    prop_oneof![Just(Node::text("")), day.prop_map(|day| Node::Text(day.exact()))].boxed()
}
