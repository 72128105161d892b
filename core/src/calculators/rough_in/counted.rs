//! What of a plan can be counted. A row that nobody can tell from another, a hole that no cable can
//! name, an end that names no box, a length that can't be read, a box over the ceiling or past the
//! room's walls are left out by themselves: the rest is worked without them, says how many there are,
//! and is never within.

use super::input::{Input, Mount, PlacedBox};
use super::labels::{Index, known_as};
use super::words as w;
use crate::fields::{BETWEEN_NAMES, Typed, each_name};
use crate::measure::Length;
use crate::say;
use crate::sheet::{Fault, Faults};
use crate::words::{Arg, Phrase, Text};

/// How many of each kind a plan is worked without.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Without {
    /// Boxes with no label of their own.
    pub(super) boxes: i64,
    /// Cables with no end that names a box.
    pub(super) cables: i64,
    /// Other ends that name no box. Their cables count at their far ends.
    pub(super) ends: i64,
    /// Boxes on a wall, higher than the ceiling: they count, their heights don't.
    pub(super) heights: i64,
    /// Labels of boxes past the room's walls: they count, their places don't.
    pub(super) places: Vec<String>,
    /// Lengths of cables that can't be read. Their cables count, without a length.
    pub(super) lengths: i64,
    /// Holes with no label of their own that a cable can name.
    pub(super) holes: i64,
}

/// A plan that can be worked whole, and what it is without.
pub(super) struct Counted {
    pub(super) input: Input,
    pub(super) without: Without,
    /// Of each cable, whether one of its ends names no box. What was typed there stands as its end.
    pub(super) lost: Vec<bool>,
}

/// What is to be known of a plan's names before anything is counted.
struct Names {
    boxes: Index,
    /// Places whose label isn't empty and stands at none before them.
    own_boxes: Vec<bool>,
    own_holes: Vec<bool>,
    /// Places of labels that are there more than once.
    twice: [Vec<usize>; 2],
}

impl Names {
    fn of(input: &Input) -> Self {
        let boxes = index(&mut input.boxes.iter().map(|it| it.label.as_str()));
        let holes = index(&mut input.holes.iter().map(|it| it.label.as_str()));
        let (own_boxes, same_boxes) = own(&boxes, input.boxes.len());
        let (mut own_holes, same_holes) = own(&holes, input.holes.len());
        // Cables name several holes in a line: a label that has a comma is never found in it.
        for (own, hole) in own_holes.iter_mut().zip(&input.holes) {
            *own &= !hole.label.contains(BETWEEN_NAMES);
        }
        Self { boxes, own_boxes, own_holes, twice: [same_boxes, same_holes] }
    }

    fn is_box(&self, typed: &str) -> bool {
        !typed.trim().is_empty() && self.boxes.find(typed).is_some()
    }
}

pub(super) fn index(labels: &mut dyn Iterator<Item = &str>) -> Index {
    Index::new(labels.map(known_as).collect())
}

fn own(index: &Index, count: usize) -> (Vec<bool>, Vec<usize>) {
    let (mut own, mut twice) = (vec![false; count], Vec::new());
    for (name, same) in index.groups() {
        if name.is_empty() {
            continue;
        }
        own[same[0]] = true;
        if same.len() > 1 {
            twice.extend_from_slice(same);
        }
    }
    (own, twice)
}

/// What of a plan counts, and what it is without; none where all of it does.
pub(super) fn counted(input: &Input) -> Option<Counted> {
    let names = Names::of(input);
    let mut without = Without::default();
    for of in &input.boxes {
        without.heights += i64::from(of.mount == Mount::Wall && of.high > Some(input.high));
        if past(input, of) != [None; 2] {
            without.places.push(of.label.trim().to_owned());
        }
    }
    let lost = |own: &[bool]| own.iter().filter(|own| !**own).count() as i64;
    (without.boxes, without.holes) = (lost(&names.own_boxes), lost(&names.own_holes));
    for run in &input.cables {
        let [from, to] = [&run.from, &run.to].map(|typed| names.is_box(typed));
        let is_coiled = run.to.trim().is_empty();
        without.cables += i64::from(!from && !to);
        // Of a cable that isn't counted itself, its length is no more to tell.
        let is_unread = matches!(run.length, Typed::Unread { .. });
        without.lengths += i64::from((from || to) && is_unread);
        without.ends += i64::from(from && !to && !is_coiled) + i64::from(!from && to);
    }
    if without == Without::default() {
        return None;
    }
    let mut less = input.clone();
    keep(&mut less.boxes, &names.own_boxes);
    keep(&mut less.holes, &names.own_holes);
    for of in &mut less.boxes {
        let [x, y] = past(input, of).map(|past| past.is_some());
        of.x = of.x.filter(|_| !x);
        of.y = of.y.filter(|_| !y);
        of.high = of.high.filter(|high| of.mount != Mount::Wall || *high <= input.high);
    }
    let mut lost = Vec::new();
    less.cables.retain_mut(|run| {
        let [from, to] = [&run.from, &run.to].map(|typed| names.is_box(typed));
        if !from && to {
            // It takes room where it ends.
            std::mem::swap(&mut run.from, &mut run.to);
        }
        let is_counted = from || to;
        if is_counted {
            lost.push(!from || (!to && !run.to.trim().is_empty()));
        }
        is_counted
    });
    Some(Counted { input: less, without, lost })
}

fn keep<T>(items: &mut Vec<T>, own: &[bool]) {
    let mut at = own.iter();
    items.retain(|_| at.next() == Some(&true));
}

/// How long the room is where a box is placed past it: from the left, and from the back.
fn past(input: &Input, of: &PlacedBox) -> [Option<Length>; 2] {
    let past = |at: Option<Length>, wall: Option<Length>| wall.filter(|wall| at > Some(*wall));
    [past(of.x, input.longest), past(of.y, input.widest)]
}

/// Each row and each field that isn't counted, with what there is.
pub(super) fn left_out(input: &Input) -> Faults {
    let names = Names::of(input);
    let mut faults = Faults::new();
    for (at, of) in input.boxes.iter().enumerate() {
        faults.extend(of_label("boxes", at, &of.label, &names.twice[0]));
    }
    for (at, of) in input.boxes.iter().enumerate() {
        if let Some(high) = of.high.filter(|high| of.mount == Mount::Wall && *high > input.high) {
            let says = say!(w::TOO_HIGH, input.high);
            faults.push(fault("boxes", at, "high", &w::BOX_HIGH, &high.exact(), says));
        }
        let places = [("x", &w::X, of.x), ("y", &w::Y, of.y)];
        for ((key, label, place), room) in places.into_iter().zip(past(input, of)) {
            if let Some((place, room)) = place.zip(room) {
                let says = say!(w::PAST_WALL, room);
                faults.push(fault("boxes", at, key, label, &place.exact(), says));
            }
        }
    }
    for (at, run) in input.cables.iter().enumerate() {
        // What there is, is named only where it is asked for: plans have hundreds of ends.
        let no_such = |typed: &str| say!(w::NO_SUCH, typed.trim(), there(input, &names));
        let is_coiled = run.to.trim().is_empty();
        if !names.is_box(&run.from) {
            let says = match run.from.trim() {
                "" if is_coiled => (&w::NO_END).into(),
                "" => say!(w::NO_FROM, there(input, &names)),
                typed => no_such(typed),
            };
            faults.push(fault("cables", at, "from", &w::FROM, &run.from, says));
        }
        if !is_coiled && !names.is_box(&run.to) {
            faults.push(fault("cables", at, "to", &w::TO, &run.to, no_such(&run.to)));
        }
        if let Typed::Unread { given, says } = &run.length {
            faults.push(fault("cables", at, "length", &w::LENGTH, given, says.clone()));
        }
    }
    for (at, of) in input.holes.iter().enumerate() {
        let told = of_label("holes", at, &of.label, &names.twice[1]);
        let parted = || of.label.contains(BETWEEN_NAMES).then(|| of_comma(at, &of.label));
        faults.extend(told.or_else(parted));
    }
    faults
}

fn of_label(list: &str, at: usize, typed: &str, twice: &[usize]) -> Option<Fault> {
    let says = match typed.trim() {
        "" => (&w::UNLABELED).into(),
        // At each of them: nobody knows which was typed last.
        typed if twice.contains(&at) => say!(w::TWICE, typed),
        _ => return None,
    };
    Some(fault(list, at, "label", &w::LABEL, typed, says))
}

fn of_comma(at: usize, typed: &str) -> Fault {
    let says = say!(w::NO_COMMA, each_name(typed, &[]).join(" "));
    fault("holes", at, "label", &w::LABEL, typed, says)
}

pub(super) fn fault(
    list: &str,
    at: usize,
    key: &str,
    label: &'static Phrase,
    given: &str,
    says: Text,
) -> Fault {
    Fault { path: [list, &at.to_string(), key].join("."), label, given: given.to_owned(), says }
}

/// The labels that there are, for who named one that isn't.
fn there(input: &Input, names: &Names) -> Arg {
    const NAMED: usize = 12;
    let mut named: Vec<&str> = Vec::new();
    for (of, own) in input.boxes.iter().zip(&names.own_boxes) {
        if *own {
            named.push(of.label.trim());
        }
    }
    let more = named.len().saturating_sub(NAMED);
    named.truncate(NAMED);
    match more {
        _ if named.is_empty() => (&w::NO_BOXES).into(),
        0 => named.join(", ").into(),
        more => say!(w::AND_MORE, named.join(", "), more as i64).into(),
    }
}
