//! What differs between two copies of one mark: each input by its field's name, with what stands in
//! either.

use super::mark::Mark;
use super::words as w;
use crate::catalog::{self, Entry};
use crate::fields::{Kind, Row, heard};
use crate::measure::{Rounding, Units};
use crate::say;
use crate::wire::Node;
use crate::words::{Amount, Text};

/// One thing that says something else in the other copy.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Differs {
    /// The field's name, with what it stands under: `Cables 2, Count`.
    pub name: Text,
    /// What stands here.
    pub here: Text,
    /// What stands in the other.
    pub there: Text,
}

/// What differs between the mark that is here and the other copy of it: inputs in the order of their
/// form, then what a person wrote about it. A list of another length is told by its count. Inputs
/// that this version can't read by their names are left out. `units` are those that the texts will be
/// said in.
pub fn differences(here: &Mark, there: &Mark, units: Units) -> Vec<Differs> {
    let mut all = Vec::new();
    let is_read = |mark: &Mark, version| mark.version == version;
    let entry = catalog::find(&here.calculator).filter(|entry| {
        there.calculator == entry.id && [here, there].iter().all(|it| is_read(it, entry.version))
    });
    if let Some(entry) = entry {
        let look = Look { typed: None, root: &there.input, adds: false, units };
        look.level(entry.rows, [&here.input, &there.input], None, &mut all);
    }
    for (name, here, there) in [
        (&w::A_TITLE, &here.title, &there.title),
        (&w::A_SPOT, &here.spot, &there.spot),
        (&w::A_NOTE, &here.note, &there.note),
    ] {
        if here != there {
            all.push(Differs { name: name.into(), here: typed(here), there: typed(there) });
        }
    }
    all
}

/// What an input that is being typed says otherwise than one that is saved: `here` is the saved one,
/// `there` the other. Half typed it is held against the saved one field by field. `typed_in` are the
/// units of its bare numbers, `units` those that the texts will be said in.
pub fn typed_differences(
    entry: &Entry,
    saved: &Node,
    typed: &Node,
    typed_in: Units,
    units: Units,
) -> Vec<Differs> {
    let mut all = Vec::new();
    let whole = entry.canonical(typed, typed_in);
    let (typed, typed_in) = match &whole {
        Ok(whole) => (whole, None),
        Err(_) => (typed, Some(typed_in)),
    };
    Look { typed: typed_in, root: typed, adds: true, units }.level(
        entry.rows,
        [saved, typed],
        None,
        &mut all,
    );
    all
}

/// So many are told by name in one line.
const TOLD: usize = 2;

/// What the other copy says, in one line: the first fields by name, and how many more there are. None
/// where nothing differs.
pub fn told_shortly(all: &[Differs]) -> Option<Text> {
    let named = all.iter().take(TOLD);
    let named = named.map(|it| say!(w::FIELD_SAYS, it.name.clone(), it.there.clone()));
    let says = named.reduce(|before, one| say!(w::AND_ALSO, before, one))?;
    Some(match all.len().saturating_sub(TOLD) {
        0 => says,
        more => say!(w::AND_OTHERS, says, more as i64),
    })
}

/// How two inputs are held against each other.
#[derive(Clone, Copy)]
struct Look<'a> {
    /// The units of the other's bare numbers, where it is as it was typed.
    typed: Option<Units>,
    /// All of the other.
    root: &'a Node,
    /// What an item of a longer list says is told too.
    adds: bool,
    /// Those that the texts will be said in.
    units: Units,
}

impl Look<'_> {
    /// The rows of one level, under what they stand in.
    fn level(
        self,
        rows: &'static [Row],
        sides: [&Node; 2],
        within: Option<&Text>,
        all: &mut Vec<Differs>,
    ) {
        let nothing = Node::EMPTY;
        for row in rows {
            let [here, there] = sides.map(|side| side.get(row.key).unwrap_or(&nothing));
            // What was typed may leave out what is not asked, or have anything there.
            let is_asked = || row.when.holds(rows, sides[1], self.root);
            if self.typed.is_some() && (sides[1].get(row.key).is_none() || !is_asked()) {
                continue;
            }
            let name = match within {
                Some(within) => say!(w::PART_OF, within.clone(), row.label),
                None => row.label.into(),
            };
            match row.kind {
                Kind::Group(rows) => self.level(rows, [here, there], Some(&name), all),
                Kind::List(item) => {
                    let (ours, theirs) = (here.items(""), there.items(""));
                    if ours.len() != theirs.len() {
                        let [here, there] =
                            [ours, theirs].map(|items| say!(w::AMOUNT, items.len() as i64));
                        all.push(Differs { name, here, there });
                        if !self.adds {
                            continue;
                        }
                    }
                    // An item that is only there is held against nothing, in what is asked of it.
                    let typed = Some(self.typed.unwrap_or(Units::Customary));
                    for (new, at) in theirs.iter().zip(1_i64..).skip(ours.len()) {
                        let name = say!(w::NUMBERED, item.name, at);
                        let look = Self { typed, ..self };
                        look.level(item.rows, [&nothing, new], Some(&name), all);
                    }
                    for ((ours, theirs), at) in ours.iter().zip(theirs).zip(1_i64..) {
                        let name = say!(w::NUMBERED, item.name, at);
                        self.level(item.rows, [ours, theirs], Some(&name), all);
                    }
                }
                _ => {
                    let [ours, theirs] = [here, there].map(|it| it.leaf().unwrap_or_default());
                    if ours != theirs && !self.means(row, &theirs, &ours) {
                        let there =
                            said(row, &theirs, self.typed.unwrap_or(Units::Customary), self.units);
                        let here = said(row, &ours, Units::Customary, self.units);
                        all.push(Differs { name, here, there });
                    }
                }
            }
        }
    }

    /// Whether what was typed means what is saved.
    fn means(self, row: &Row, typed: &str, saved: &str) -> bool {
        self.typed.is_some_and(|units| {
            typed.trim() == saved.trim()
                || heard(row, typed, units)
                    .is_ok_and(|it| it.is_some() && heard(row, saved, Units::Customary) == Ok(it))
        })
    }
}

/// A leaf as a person reads it, and so that two that differ read otherwise. A kept input has its units
/// written out; a typed one's bare numbers are `in_units`.
fn said(row: &'static Row, leaf: &str, in_units: Units, units: Units) -> Text {
    match row.kind {
        Kind::Choice(picks) => {
            let pick = picks.iter().find(|pick| pick.key == leaf);
            pick.map_or_else(|| typed(leaf), |pick| pick.label.into())
        }
        Kind::Flag => (if leaf == "yes" { &w::YES } else { &w::NO }).into(),
        // Rounded, two amounts that differ may read the same.
        _ => match heard(row, leaf, in_units) {
            Ok(Some(amount)) if !amount.show(units, Rounding::Nearest).rounded => {
                say!(w::AMOUNT, amount)
            }
            // As it stands in its field.
            Ok(Some(amount @ Amount::Area(area))) => match area.figure(units) {
                Some(figure) => {
                    let unit = amount.show(units, Rounding::Nearest).unit;
                    say!(w::AS_TYPED, [&*figure, " ", unit].concat())
                }
                None => typed(leaf),
            },
            _ => typed(leaf),
        },
    }
}

fn typed(words: &str) -> Text {
    match words.trim() {
        "" => (&w::EMPTY).into(),
        words => say!(w::AS_TYPED, words),
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples::{mark, stamp};
    use super::*;
    use crate::catalog::ALL;
    use crate::edition::Basis;
    use crate::fields::row_at;
    use crate::words::Voice;

    fn of(calculator: &str, puts: &[(&str, Node)]) -> Mark {
        let entry = catalog::find(calculator).unwrap();
        let mut input = entry.sample();
        for (path, value) in puts {
            input.put(path, value.clone());
        }
        Mark::new(entry, &input, Units::Customary, Basis::default(), None, &stamp(1)).unwrap()
    }

    fn told(here: &Mark, there: &Mark) -> Vec<String> {
        let voice = Voice::default();
        let one =
            |it: &Differs| [&it.name, &it.here, &it.there].map(|text| voice.say(text)).join(" | ");
        differences(here, there, voice.units).iter().map(one).collect()
    }

    #[test]
    fn a_field_is_told_by_its_name_with_both_values() {
        let run = |text: &str| of("cable-securing", &[("run", Node::text(text))]);
        let label = row_at(catalog::find("cable-securing").unwrap().rows, "run").unwrap().label;
        assert_eq!(told(&run("30 ft"), &run("60 ft")), [[label.en, " | 30 ft | 60 ft"].concat()],);
        assert_eq!(told(&run("30 ft"), &run("360 in")), [""; 0], "the same length");
        // 19.2 in and 19-3/16 in both round to 19-3/16.
        let close = told(&run("19.2 in"), &run("19-3/16 in"));
        let (name, values) = close[0].split_once(" | ").unwrap();
        assert_eq!((close.len(), name), (1, label.en));
        let (here, there) = values.split_once(" | ").unwrap();
        assert_ne!(here, there);
    }

    /// By hand: 36258 in² are 251 ft² and 114 in², and 114/144 is 19/24.
    #[test]
    fn an_area_of_no_round_number_is_told_as_it_stands_in_its_field() {
        let area = |text: &str| of("paint", &[("area", Node::text(text))]);
        let says = told(&area("150"), &area("36258 in2"));
        assert!(says.len() == 1 && says[0].ends_with(" | 150 sq ft | 251-19/24 sq ft"), "{says:?}");
        // Both round to 251.8.
        let says = told(&area("36258 in2"), &area("36259 in2"));
        assert!(says[0].ends_with(" | 251-19/24 sq ft | 251-115/144 sq ft"), "{says:?}");
    }

    #[test]
    fn a_list_is_told_by_its_count_where_that_differs_and_else_item_by_item() {
        let sample = of("box-fill", &[]);
        let cables = sample.input.items("cables").to_vec();
        let more = [&*cables, &cables[..1]].concat();
        let more = of("box-fill", &[("cables", Node::List(more))]);
        let count = cables.len();
        let says = told(&sample, &more);
        assert_eq!(says.len(), 1);
        assert!(says[0].ends_with(&format!(" | {count} | {}", count + 1)), "{says:?}");
        let other = of("box-fill", &[("cables.0.count", Node::text("3"))]);
        let says = told(&sample, &other);
        assert_eq!(says.len(), 1, "{says:?}");
        assert!(says[0].contains(" 1, ") && says[0].ends_with(" | 3"), "{says:?}");
    }

    #[test]
    fn what_a_person_wrote_is_told_and_nothing_stands_for_nothing() {
        let here = mark(1);
        let there = Mark { note: " ".into(), title: "Shelf".into(), ..here.clone() };
        let says = told(&here, &there);
        assert_eq!(says[0], "The title | Shelf over the bench | Shelf");
        assert!(says[1].starts_with("The note | ") && says[1].ends_with(" | empty"), "{says:?}");
        assert_eq!(told(&here, &here), [""; 0]);
    }

    #[test]
    fn a_choice_and_a_tick_are_told_as_they_are_read() {
        let mut found = (false, false);
        for entry in ALL {
            for row in entry.rows {
                let (here, there, want) = match row.kind {
                    Kind::Choice(picks) if picks.len() > 1 => {
                        found.0 = true;
                        (picks[0].key, picks[1].key, [picks[0].label.en, picks[1].label.en])
                    }
                    Kind::Flag => {
                        found.1 = true;
                        ("yes", "no", ["yes", "no"])
                    }
                    _ => continue,
                };
                let with = |leaf: &str| {
                    let mut input = Node::EMPTY;
                    input.put(row.key, Node::text(leaf));
                    let (calculator, version) = (entry.id.to_owned(), entry.version);
                    Mark { calculator, version, input, ..mark(1) }
                };
                let says = told(&with(here), &with(there));
                assert_eq!(says, [[row.label.en, want[0], want[1]].join(" | ")], "{}", entry.id);
            }
        }
        assert_eq!(found, (true, true));
    }

    #[test]
    fn an_edit_is_told_by_two_fields_and_how_many_more() {
        let entry = catalog::find("cable-securing").unwrap();
        let label = row_at(entry.rows, "run").unwrap().label.en;
        let saved = entry.canonical(&entry.sample(), Units::Customary).unwrap();
        let voice = Voice::default();
        let of = |edit: &Node| {
            typed_differences(entry, &saved, edit, Units::Customary, Units::Customary)
        };
        assert_eq!(of(&entry.sample()), []);
        assert_eq!(told_shortly(&[]), None);
        let mut edit = entry.sample();
        edit.put("run", Node::text("261 in"));
        let one = of(&edit).pop().unwrap();
        for (count, more) in [(1, ""), (2, ""), (3, "; and 1 more"), (9, "; and 7 more")] {
            let says = voice.say(&told_shortly(&vec![one.clone(); count]).unwrap());
            let named = vec![format!("{label}: 21 ft 9 in"); count.min(2)].join("; ");
            assert_eq!(says, [&*named, more].concat());
        }
    }

    #[test]
    fn an_edit_that_adds_an_item_tells_what_that_says() {
        let entry = catalog::find("box-fill").unwrap();
        let saved = entry.canonical(&entry.sample(), Units::Customary).unwrap();
        let cables = saved.items("cables");
        let says = |count: &str| {
            let mut edit = saved.clone();
            edit.put("cables", Node::List([cables, &cables[..1]].concat()));
            edit.put(&format!("cables.{}.count", cables.len()), Node::text(count));
            let units = Units::Customary;
            let all = typed_differences(entry, &saved, &edit, units, units);
            all.iter().map(|it| Voice::default().say(&it.there)).collect::<Vec<_>>()
        };
        assert_eq!(says("3")[0], (cables.len() + 1).to_string());
        assert_ne!(says("3"), says("4"));
        assert!(says("7").contains(&"7".to_owned()));
    }

    #[test]
    fn what_is_half_typed_is_told_as_it_was_typed_and_nothing_else_is() {
        // Every calculator whose sample can be saved, with one quantity that nobody can read.
        let (mut count, mut others) = (0, Vec::new());
        for entry in ALL {
            let Ok(saved) = entry.canonical(&entry.sample(), Units::Customary) else { continue };
            let quantity = entry.rows.iter().find(|row| {
                let leaf = saved.get(row.key).and_then(Node::leaf);
                leaf.is_some_and(|it| matches!(heard(row, &it, Units::Customary), Ok(Some(_))))
            });
            let Some(row) = quantity else { continue };
            for units in [Units::Customary, Units::Metric] {
                let mut edit = crate::fields::plain(entry.rows, &saved, units);
                edit.put(row.key, Node::text("9 1/"));
                if entry.canonical(&edit, units).is_ok() {
                    continue;
                }
                count += 1;
                let all = typed_differences(entry, &saved, &edit, units, units);
                let says = told_shortly(&all).map(|text| Voice::default().say(&text));
                if says != Some([row.label.en, ": 9 1/"].concat()) {
                    others.push((entry.id, units, says));
                }
            }
        }
        assert!(count > 40 && others.is_empty(), "{count} {others:#?}");
    }

    #[test]
    fn what_another_version_has_put_in_is_not_guessed_at() {
        let here = of("cable-securing", &[]);
        let mut there = of("cable-securing", &[("run", Node::text("60 ft"))]);
        there.version += 1;
        assert_eq!(told(&here, &there), [""; 0]);
    }
}
