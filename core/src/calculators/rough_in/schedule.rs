//! The plan's lists: boxes, cable schedule, labels to write, circuits, holes, rolls, and what was
//! tested dead.

use super::circuits::Circuit;
use super::graph::{Answer, Laid};
use super::holes::long_labels;
use super::input::{Cable, Input, Mount, PlacedBox, Proof, Run, State, What};
use super::rolls::whole_inch;
use super::sheet::{fill_order, name_of, named};
use super::shown as s;
use crate::fields::each_name;
use crate::measure::time_of_day::told;
use crate::measure::{Day, Length};
use crate::rules::compare::is_at_most;
use crate::rules::electrical::voltage_drop::OF_BRANCH;
use crate::say;
use crate::sheet::{Part, PartRow, SCREEN_ONLY, Table, TableRow, UNBOUGHT};
use crate::words::{Amount, Arg, Phrase, Text};

/// All of them that have a row.
pub(super) fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let mut all = Vec::new();
    let mut part = |key, title, note, rows| Part::add(&mut all, key, title, note, rows);
    part(SCREEN_ONLY, &s::TESTED, Some(&s::TESTED_NOTE), tested(input, answer));
    part("boxes", &s::BOXES, None, boxes(input, answer));
    part("places", &s::PLACES, None, places(input));
    part("holes", &s::HOLES, None, holes(input, answer));
    part("labels", &s::LABELS, Some(&s::LABELS_NOTE), labels(input, answer));
    part("circuits", &s::CIRCUITS, None, circuits(input, answer));
    part("rolls", &s::BUYS, Some(&s::BUYS_NOTE), rolls(answer));
    part(UNBOUGHT, &s::UNBOUGHT, Some(&s::UNBOUGHT_NOTE), unbought(input, answer));
    if !input.cables.is_empty() {
        let at = all.iter().position(|part| part.key == "holes" || part.key == "labels");
        all.insert(at.unwrap_or(all.len()), schedule(input, answer));
    }
    all
}

fn row(name: Text, value: Text) -> PartRow {
    PartRow { name, value, puts: Vec::new() }
}

/// What a person typed, or what is said where nothing was.
fn typed(text: &str, none: &'static Phrase) -> Arg {
    match text.trim() {
        "" => none.into(),
        text => text.into(),
    }
}

/// For an owner: what a box is for, and where it goes. Where some have a place, those without say so.
fn places(input: &Input) -> Vec<PartRow> {
    let mut rows = Vec::new();
    let some_placed = input.boxes.iter().any(is_placed);
    for (at, of) in input.boxes.iter().enumerate().filter(|(_, of)| of.what != What::Panel) {
        let place = match told_place(of) {
            Some(high) if some_placed && !is_placed(of) => Some(say!(s::AND, high, &s::NO_PLACE)),
            None if some_placed => Some((&s::NO_PLACE).into()),
            told => told,
        };
        if let Some(place) = place {
            rows.push(row(called(input, at), place));
        }
    }
    rows
}

fn is_placed(of: &PlacedBox) -> bool {
    of.x.is_some() && of.y.is_some()
}

/// Boxes without a place, where others have one; panels aren't an owner's.
pub(super) fn unplaced(input: &Input) -> Vec<usize> {
    if !input.boxes.iter().any(is_placed) {
        return Vec::new();
    }
    let is_one = |of: &PlacedBox| of.what != What::Panel && !is_placed(of);
    (0..input.boxes.len()).filter(|at| is_one(&input.boxes[*at])).collect()
}

/// A box by its label, its kind and what it serves.
fn called(input: &Input, at: usize) -> Text {
    let of = &input.boxes[at];
    match of.serves.trim() {
        "" => say!(s::BOX_ROW, name_of(input, at), of.what.label()),
        serves => say!(s::BOX_SERVES, name_of(input, at), of.what.label(), serves),
    }
}

/// How high a box stands and where, as far as that is said.
fn told_place(of: &PlacedBox) -> Option<Text> {
    let high = match (of.mount, of.high) {
        (Mount::Ceiling, _) => Some(of.mount.label().into()),
        (Mount::Wall, high) => high.map(|high| say!(s::OFF_FLOOR, high)),
    };
    let place = of.x.zip(of.y).map(|(x, y)| say!(s::PLACE, x, y));
    match (high, place) {
        (Some(high), Some(place)) => Some(say!(s::AND, high, place)),
        (one, other) => one.or(other),
    }
}

fn boxes(input: &Input, answer: &Answer) -> Vec<PartRow> {
    let mut rows = Vec::new();
    for at in fill_order(answer) {
        let (of, state) = (&input.boxes[at], &answer.boxes[at]);
        let name = called(input, at);
        let cables = state.contents.cables();
        let bare = |volume| Arg::Bare(Amount::Volume(volume));
        let value = match state.volume {
            Some(volume) => {
                let word = if super::sheet::is_over(state) { &s::IS_OVER } else { &s::WITHIN };
                Text {
                    phrase: &s::FILL_ROW,
                    args: vec![bare(state.fill), bare(volume), cables.into(), word.into()],
                }
            }
            None if of.what == What::Panel => say!(s::PANEL_ROW, cables),
            None => say!(s::NO_VOLUME, state.fill, cables),
        };
        let value = match of.enclosure.metal() {
            Some(metal) => say!(s::AND, metal.name, value),
            None => value,
        };
        rows.push(row(name, value));
    }
    rows
}

/// From where to where.
pub(super) fn ends(input: &Input, run: &Run, laid: &Laid) -> Text {
    let from = name_of(input, laid.from);
    match (laid.to, run.coiled.trim()) {
        (Some(to), _) => say!(s::TO, from, name_of(input, to)),
        _ if laid.lost => say!(s::TO, from, lost(run)),
        (None, "") => say!(s::TO_COIL, from),
        (None, coiled) => say!(s::TO_COIL_AT, from, coiled),
    }
}

/// An end that names no box, as it was typed.
fn lost(run: &Run) -> Text {
    match run.to.trim() {
        "" => (&s::NO_BOX).into(),
        typed => say!(s::NO_SUCH_BOX, typed),
    }
}

/// What an electrician runs a finger down: `cut to` has a column of its own.
fn schedule(input: &Input, answer: &Answer) -> Part {
    let mut rows = Vec::new();
    let long = long_labels(input);
    let between = if long.is_empty() { " " } else { ", " };
    for (run, laid) in input.cables.iter().zip(&answer.cables) {
        let mut name = ends(input, run, laid);
        if !run.feeds.trim().is_empty() {
            name = say!(s::RUN_FEEDS, name, run.feeds.trim());
        }
        if run.state != State::Planned {
            name = say!(s::THESE, name, run.state.label());
        }
        let breaker = laid.circuit.map(|at| answer.circuits[at].breaker);
        let circuit = match breaker {
            Some(breaker) => say!(s::THESE, circuit(run).trim(), breaker),
            None => (&s::NONE).into(),
        };
        let holes = each_name(&run.holes, &long).join(between);
        let cells = vec![
            circuit,
            run.cable.label().into(),
            laid.cut.map_or((&s::NOT_SAID).into(), |cut| say!(s::AT, whole_inch(cut))),
            say!(s::AT, typed(&holes, &s::NONE)),
        ];
        rows.push(TableRow { name, cells });
    }
    let heads = [&s::RUN_HEAD, &s::CIRCUIT_HEAD, &s::KIND_HEAD, &s::CUT_HEAD, &s::HOLES_HEAD];
    Part {
        key: "schedule",
        title: (&s::SCHEDULE).into(),
        note: Some((&s::SCHEDULE_NOTE).into()),
        rows: Vec::new(),
        table: Some(Table { heads: heads.map(Text::from).into(), rows }),
    }
}

/// The circuits that end in each box, each once, in the order of their names.
pub(super) fn circuits_by_box(answer: &Answer) -> Vec<Vec<&str>> {
    let mut all = vec![Vec::new(); answer.boxes.len()];
    for circuit in &answer.circuits {
        for at in &circuit.cables {
            let laid = &answer.cables[*at];
            for end in [Some(laid.from), laid.to].into_iter().flatten() {
                let here: &mut Vec<&str> = &mut all[end];
                if here.last() != Some(&circuit.name.as_str()) {
                    here.push(&circuit.name);
                }
            }
        }
    }
    all
}

/// A signal has none.
fn circuit(run: &Run) -> &str {
    if run.cable.power().is_some() { &run.circuit } else { "" }
}

/// One at each end that is in a box, and one at a coil.
fn labels(input: &Input, answer: &Answer) -> Vec<PartRow> {
    let mut rows = Vec::new();
    for (run, laid) in input.cables.iter().zip(&answer.cables) {
        let coiled = || match run.coiled.trim() {
            _ if laid.lost => lost(run).into(),
            "" => Arg::from(&s::COILED),
            at => say!(s::COILED_AT, at).into(),
        };
        let named = |at: usize| Arg::from(name_of(input, at));
        let to = laid.to.map_or_else(coiled, named);
        for is_first in [true, false] {
            let (here, arrow, there) = match is_first {
                true => (named(laid.from), "→", to.clone()),
                false => (to.clone(), "←", named(laid.from)),
            };
            let mut args = vec![
                here.clone(),
                arrow.into(),
                there,
                typed(circuit(run), &s::NONE),
                typed(&run.feeds, &s::NONE),
                run.cable.label().into(),
            ];
            let mut phrase = &s::LABEL;
            if let Some(role) = role(input, run, laid, is_first) {
                phrase = &s::LABEL_ROLE;
                args.push(role.into());
            }
            rows.push(row(Text { phrase: &s::AT, args: vec![here] }, Text { phrase, args }));
        }
    }
    rows
}

/// What a cable is to the box at one of its ends, where the kinds of both leave no doubt: a feed
/// that a switch or a light may stand before is none.
fn role(input: &Input, run: &Run, laid: &Laid, is_first: bool) -> Option<&'static Phrase> {
    let forth = laid.forth?;
    let what = |at: usize| input.boxes[at].what;
    let (from, to) = (Some(what(laid.from)), laid.to.map(what));
    let (near, far) = if forth { (from?, to) } else { (to?, from) };
    match (near, far) {
        (What::Switch, Some(What::Switch)) if run.cable.power()?.conductors().1 == 3 => {
            Some(&s::TRAVELERS)
        }
        (What::Switch, Some(What::Light)) => Some(&s::SWITCH_LEG),
        (What::Receptacle | What::Alarm, Some(What::Light)) => None,
        (What::Panel | What::Receptacle | What::Alarm, _) => {
            Some(if forth == is_first { &s::FEED_OUT } else { &s::FEED_IN })
        }
        _ => None,
    }
}

/// The box at the far end of the cable that loses most.
pub(super) fn far_end(input: &Input, answer: &Answer, circuit: &Circuit) -> Text {
    let last = circuit.worst.as_ref().and_then(|worst| worst.path.last());
    let Some((cable, _)) = last else { return (&s::NONE).into() };
    let laid = &answer.cables[*cable];
    match if laid.forth == Some(false) { Some(laid.from) } else { laid.to } {
        Some(at) => say!(s::AT, name_of(input, at)),
        None => ends(input, &input.cables[*cable], laid),
    }
}

fn circuits(input: &Input, answer: &Answer) -> Vec<PartRow> {
    let mut rows = Vec::new();
    for circuit in &answer.circuits {
        let name = say!(s::CIRCUIT, circuit.name.as_str(), circuit.breaker);
        let mut args: Vec<Arg> = vec![(circuit.cables.len() as i64).into(), circuit.length.into()];
        let mut phrase = &s::CIRCUIT_ROW;
        if circuit.load.millionths() > 0 {
            phrase = &s::CIRCUIT_LOAD;
            args.push(circuit.load.into());
            if let Some(worst) = &circuit.worst {
                phrase = &s::CIRCUIT_DROP;
                args.push(worst.volts.into());
                args.push(worst.share.into());
                args.push(far_end(input, answer, circuit).into());
            }
        }
        let mut value = Text { phrase, args };
        // Advice is no rule: it is said, and nothing is over for it.
        let share = circuit.worst.as_ref().map(|worst| worst.share);
        if share.is_some_and(|share| !is_at_most(share, OF_BRANCH)) {
            value = say!(s::ADVICE_DROP, value);
        }
        let without = circuit.cables.iter().filter(|at| answer.cables[**at].way.is_none()).count();
        if without > 0 {
            value = say!(s::CIRCUIT_WITHOUT, value, without as i64);
        }
        if let Some(told) = named(input, answer, &circuit.unknown) {
            value = say!(s::CIRCUIT_UNKNOWN, value, told);
        }
        rows.push(row(name, value));
    }
    rows
}

/// For who bores and who pulls: how wide, which cables, how much of it they take.
fn holes(input: &Input, answer: &Answer) -> Vec<PartRow> {
    let mut rows = Vec::new();
    for hole in &answer.holes {
        let mut value = match hole.bit {
            Some(bit) => say!(s::HOLE_BIT, bit),
            None => (&s::NO_BIT).into(),
        };
        let mut through: Option<Text> = None;
        for at in &hole.cables {
            let one = ends(input, &input.cables[*at], &answer.cables[*at]);
            // Two cables may go the same way.
            let one = match answer.cables[*at].circuit {
                Some(circuit) => {
                    say!(s::OF_CIRCUIT, one, answer.circuits[circuit].name.as_str())
                }
                None => one,
            };
            through = Some(match through {
                Some(before) => say!(s::THESE, before, one),
                None => one,
            });
        }
        let taken = hole.taken.map(|taken| match hole.unread {
            0 => say!(s::HOLE_TAKEN, taken),
            unread => say!(s::HOLE_UNREAD, taken, unread),
        });
        let less = hole.together.map(|share| say!(s::HOLE_LESS, share));
        for more in [through, taken, less].into_iter().flatten() {
            value = say!(s::AND, value, more);
        }
        rows.push(row(say!(s::HOLE, hole.label.as_str()), value));
    }
    rows
}

fn rolls(answer: &Answer) -> Vec<PartRow> {
    let mut rows = Vec::new();
    for buy in &answer.buys {
        let mut told: Option<Text> = None;
        for (long, count) in &buy.rolls {
            let one = say!(s::ROLL, *count, *long);
            told = Some(match told {
                Some(before) => say!(s::JOIN, before, one),
                None => one,
            });
        }
        let value = match told {
            Some(rolls) => say!(s::BUY_ROLLS, buy.cut, rolls, buy.left()),
            None => say!(s::BUY_ROW, buy.cut),
        };
        rows.push(row(buy.kind.label().into(), value));
    }
    rows
}

/// Cables that no length is known of: no roll holds them.
fn unbought(input: &Input, answer: &Answer) -> Vec<PartRow> {
    let mut rows = Vec::new();
    for (run, laid) in input.cables.iter().zip(&answer.cables) {
        if laid.cut.is_none() {
            let name = say!(s::OF_KIND, material(run.cable), ends(input, run, laid));
            rows.push(row(name, (&s::NO_LENGTH).into()));
        }
    }
    rows
}

/// What to ask for in a shop.
pub(super) fn material(kind: Cable) -> Text {
    let phrase = if kind.power().is_some() { &s::M_CABLE } else { &s::M_SIGNAL };
    Text { phrase, args: vec![kind.label().into()] }
}

/// A day, its time where it can be read, and who was there; else as typed.
fn when(day: Option<Day>, time: &str, by: &str) -> Option<Text> {
    let mut at = day?.exact();
    if !time.trim().is_empty() {
        at = [at, told(time)].join(" ");
    }
    Some(match by.trim() {
        "" => say!(s::AT, at),
        by => say!(s::WHEN_BY, at, by),
    })
}

fn tested(input: &Input, answer: &Answer) -> Vec<PartRow> {
    let mut rows = Vec::new();
    for (run, laid) in input.cables.iter().zip(&answer.cables) {
        let Proof { dead, dead_time, dead_by, live, live_time, live_by } = &run.proof;
        let dead = when(*dead, dead_time, dead_by);
        let value = match (dead, when(*live, live_time, live_by)) {
            (None, None) => continue,
            (Some(dead), None) => say!(s::DEAD_ROW, dead),
            (Some(dead), Some(live)) => say!(s::LIVE_ROW, dead, live),
            (None, Some(live)) => say!(s::LIVE_ONLY, live),
        };
        let to: Arg = match run.to.trim() {
            _ if laid.lost => lost(run).into(),
            "" => (&s::COILED).into(),
            to => to.into(),
        };
        rows.push(row(say!(s::TO, run.from.trim(), to), value));
    }
    rows
}

/// Of several lengths all that are known.
pub(super) fn in_all(answer: &Answer) -> Length {
    answer.buys.iter().fold(Length::ZERO, |sum, buy| sum.plus(buy.cut))
}
