//! Drawn inputs whose places are put where they fit: in the room that was drawn, and high on its
//! walls. Bounds of a row alone know no room.

use crate::from_rows::fitting;
use ledgerboard_core::catalog::Entry;
use ledgerboard_core::measure::Length;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::Amount;
use proptest::prelude::*;

/// What is done to a drawn input of one calculator.
type Place = fn(&mut Node);

const PLACED: &[(&str, Place)] = &[
    ("register-spots", register_spots),
    ("boards", boards),
    ("behind-the-board", behind_the_board),
    ("off-tonight", off_tonight),
    ("outlets", outlets),
    ("set-out", set_out),
    ("between-edges", between_edges),
    ("rough-in", rough_in),
    ("trade-days", trade_days),
];

/// Inputs in which every field is within its bounds and, where a calculator has places in a room,
/// seven in eight have them within it.
pub fn fitting_of(entry: &Entry) -> BoxedStrategy<Node> {
    let drawn = fitting(entry.rows);
    let Some((_, place)) = PLACED.iter().find(|(id, _)| *id == entry.id) else { return drawn };
    let place = *place;
    (drawn, prop::bool::weighted(0.875))
        .prop_map(move |(mut input, is_placed)| {
            if is_placed {
                place(&mut input);
            }
            input
        })
        .boxed()
}

fn length(input: &Node, path: &str) -> Option<Length> {
    match Amount::from_exact(&input.at(path)?.leaf()?) {
        Some(Amount::Length(length)) => Some(length),
        _ => None,
    }
}

/// As far into `whole` as it was drawn into `most`.
fn scale(input: &mut Node, path: &str, whole: Length, most: Length) {
    let Some(at) = length(input, path) else { return };
    let share = at.nanometres() as f64 / most.nanometres() as f64;
    let at = Length::from_nanometres((share * whole.nanometres() as f64) as i64).min(whole);
    input.put(path, Node::Text(at.exact()));
}

/// Days that are there, steps of one word each, of which some wait for the one before them.
fn trade_days(input: &mut Node) {
    let is_given = |input: &Node, path: &str| {
        input.at(path).and_then(Node::leaf).is_some_and(|text| !text.is_empty())
    };
    for (list, key) in [("off", "day"), ("steps", "name")] {
        for at in 0..input.items(list).len() {
            let path = format!("{list}.{at}.{key}");
            if key == "name" {
                input.put(&path, Node::Text(format!("S{at}")));
                let after = format!("{list}.{at}.after");
                let wait =
                    if at > 0 && is_given(input, &after) { &format!("S{}", at - 1) } else { "" };
                input.put(&after, Node::text(wait));
                // Any day of three hundred years is past all that is reckoned.
                input.put(&format!("{list}.{at}.from"), Node::text(""));
            } else {
                if !is_given(input, &path) {
                    input.put(&path, Node::text("2027-01-18"));
                }
                input.put(&format!("{list}.{at}.through"), Node::text(""));
            }
        }
    }
    if !is_given(input, "start") {
        input.put("start", Node::text("2027-01-04"));
    }
}

/// A room of 60 ft at the most, over framing 12 in apart or more, and a length that gets in;
/// openings lie in their wall.
fn boards(input: &mut Node) {
    let of = |feet: i64| Length::inches(12 * feet, 1);
    for path in ["long", "wide", "wall"] {
        scale(input, path, of(56), of(200));
        if let Some(at) = length(input, path) {
            input.put(path, Node::Text(at.plus(of(4)).exact()));
        }
    }
    outline(input);
    if length(input, "spacing").is_some_and(|at| at < of(1)) {
        input.put("spacing", Node::text("16 in"));
    }
    input.put("stock.l12", Node::text("yes"));
    input.put("longest", Node::text(""));
    input.put("members", Node::List(Vec::new()));
    let (Some(wall), Some(high)) = (length(input, "wall"), length(input, "high")) else { return };
    let Some(Node::List(openings)) = input.at("openings") else { return };
    for at in 0..openings.len() {
        for (key, whole, most) in [
            ("from", wall.part(2), of(200)),
            ("wide", wall.part(2), of(20)),
            ("sill", high.part(2), of(20)),
            ("high", high.part(2), of(20)),
        ] {
            scale(input, &format!("openings.{at}.{key}"), whole, most);
        }
    }
}

/// Openings in the right half of the wall, things in the left one, and what hangs within it.
fn behind_the_board(input: &mut Node) {
    let of = |feet: i64| Length::inches(12 * feet, 1);
    let (Some(wall), Some(high)) = (length(input, "wall"), length(input, "high")) else { return };
    for (list, keys) in [
        ("openings", ["from", "wide", "sill", "high"]),
        ("things", ["left", "wide", "low", "tall"]),
    ] {
        for at in 0..input.items(list).len() {
            let path = |key: &str| format!("{list}.{at}.{key}");
            let widest = of(if list == "things" { 200 } else { 20 });
            scale(input, &path(keys[0]), wall.part(4), of(200));
            scale(input, &path(keys[1]), wall.part(4), widest);
            scale(input, &path(keys[2]), high.part(2), of(20));
            scale(input, &path(keys[3]), high.part(2), of(20));
            if let Some(from) = length(input, &path("from")) {
                input.put(&path("from"), Node::Text(from.plus(wall.part(2)).exact()));
            }
        }
    }
    scale(input, "at_left", wall.part(2), of(200));
    scale(input, "across", wall.part(2), of(200));
    scale(input, "at_low", high, of(20));
}

/// Drawn texts are hardly ever times of day: they become some by their length, on the days of one night.
fn off_tonight(input: &mut Node) {
    const TIMES: [&str; 6] = ["13:00", "8 pm", "9:30", "22:15", "", "12:05 am"];
    let time = |input: &mut Node, path: &str| {
        let drawn = input.at(path).and_then(Node::leaf).unwrap_or_default();
        input.put(path, Node::text(TIMES[drawn.len() % TIMES.len()]));
    };
    for key in ["night", "morning"] {
        time(input, key);
    }
    for at in 0..input.items("off").len() {
        for key in ["off_time", "back_time"] {
            time(input, &format!("off.{at}.{key}"));
        }
        let day = |day: &str| Node::text(day);
        input.put(&format!("off.{at}.off_day"), day("2027-01-04"));
        input.put(&format!("off.{at}.back_day"), day(if at % 2 == 0 { "" } else { "2027-01-05" }));
    }
}

/// A walk of drawn walls closes next to never: it becomes two lengths. Parts of a shape take half
/// of it at the most.
fn outline(input: &mut Node) {
    let of = |feet: i64| Length::inches(12 * feet, 1);
    if input.at("shape").and_then(Node::leaf).as_deref() == Some("walk") {
        input.put("shape", Node::text("rectangle"));
    }
    let (Some(long), Some(wide)) = (length(input, "long"), length(input, "wide")) else { return };
    for (path, whole) in [
        ("notch_long", long),
        ("notch_wide", wide),
        ("leg_wide", long),
        ("leg_long", wide),
        ("gap_long", long),
        ("gap_deep", wide),
        ("leg_off", long),
        ("gap_off", long),
    ] {
        scale(input, path, whole.part(2), of(200));
    }
}

/// What is in a wall lies in it, in a room of four walls or more.
fn outlets(input: &mut Node) {
    let of = |feet: i64| Length::inches(12 * feet, 1);
    outline(input);
    if input.at("shape").and_then(Node::leaf).as_deref() == Some("u") {
        input.put("shape", Node::text("rectangle"));
    }
    for side in ["long", "wide"] {
        scale(input, side, of(40), of(200));
        if let Some(at) = length(input, side) {
            input.put(side, Node::Text(at.plus(of(10)).exact()));
        }
    }
    for part in ["notch_long", "notch_wide", "leg_wide", "leg_long", "leg_off"] {
        input.put(part, Node::text(if part == "leg_off" { "" } else { "4 ft" }));
    }
    // Every wall of these is 3 ft or more.
    for (list, key, most) in [("breaks", "from", of(200)), ("have", "at", of(200))] {
        let Some(Node::List(items)) = input.at(list) else { continue };
        for at in 0..items.len() {
            scale(input, &format!("{list}.{at}.{key}"), of(1), most);
            scale(input, &format!("{list}.{at}.wide"), of(2), of(25));
            input.put(&format!("{list}.{at}.wall"), Node::Text((at % 4 + 1).to_string()));
        }
    }
}

/// Each box stands over a floor that is there.
fn set_out(input: &mut Node) {
    let count = |list: &str, input: &Node| input.items(list).len();
    if count("floors", input) == 0 || count("boxes", input) == 0 {
        let sample = ledgerboard_core::catalog::find("set-out").map(Entry::sample);
        let Some(sample) = sample else { return };
        for list in ["floors", "boxes"] {
            if let Some(items) = sample.at(list).filter(|_| count(list, input) == 0) {
                input.put(list, items.clone());
            }
        }
    }
    let floors = count("floors", input);
    for at in 0..count("boxes", input) {
        input.put(&format!("boxes.{at}.floor"), Node::Text((at % floors + 1).to_string()));
    }
}

/// The box lies between its edges.
fn between_edges(input: &mut Node) {
    let of = |feet: i64| Length::inches(12 * feet, 1);
    scale(input, "gap", of(18), of(20));
    if let Some(gap) = length(input, "gap") {
        input.put("gap", Node::Text(gap.plus(of(2)).exact()));
        // Its middle a foot or more from either edge.
        if let Some(at) = length(input, "at") {
            scale(input, "at", gap, of(20));
            let at = length(input, "at").unwrap_or(at);
            input.put("at", Node::Text(at.plus(of(1)).exact()));
        }
    }
}

/// A register on a wall hangs on the one behind it.
fn register_spots(input: &mut Node) {
    let of = |feet: i64| Length::inches(12 * feet, 1);
    outline(input);
    let (Some(long), Some(wide)) = (length(input, "long"), length(input, "wide")) else { return };
    let Some(Node::List(spots)) = input.at("spots") else { return };
    let count = spots.len();
    let others = ["back", "alarm", "window", "flue", "thermostat"].map(str::to_owned);
    let spots = (0..count).map(|at| format!("spots.{at}"));
    for path in spots.clone().chain(others) {
        scale(input, &format!("{path}.x"), long, of(200));
        scale(input, &format!("{path}.y"), wide, of(200));
    }
    for path in spots {
        let leaf = |key: &str| input.at(&format!("{path}.{key}")).and_then(Node::leaf);
        if leaf("place").as_deref() == Some("high-wall") {
            let (key, at) = match leaf("aim").as_deref() {
                Some("right") => ("x", Length::ZERO),
                Some("left") => ("x", long),
                Some("up") => ("y", wide),
                _ => ("y", Length::ZERO),
            };
            input.put(&format!("{path}.{key}"), Node::Text(at.exact()));
        }
    }
}

/// Each box and hole has a label of its own, and each end of a cable names a box; where there is no
/// box there is no cable. Which one it names, and what else it goes through, comes of what was drawn.
fn rough_in(input: &mut Node) {
    let leaf = |input: &Node, path: &str| input.at(path).and_then(Node::leaf).unwrap_or_default();
    let [boxes, cables, holes] = ["boxes", "cables", "holes"].map(|list| input.items(list).len());
    for (list, count, letter) in [("boxes", boxes, 'B'), ("holes", holes, 'H')] {
        for at in 0..count {
            // A label keeps a small letter, spaces and signs of what was drawn.
            let drawn: String =
                leaf(input, &format!("{list}.{at}.label")).chars().take(3).collect();
            let label = format!(" {letter}{at}{}", drawn.replace([',', ';', ' '], ""));
            input.put(&format!("{list}.{at}.label"), Node::Text(label));
        }
    }
    // No box stands above the ceiling.
    if let Some(ceiling) = length(input, "high") {
        for at in 0..boxes {
            scale(input, &format!("boxes.{at}.high"), ceiling, Length::inches(360, 1));
        }
    }
    if boxes == 0 {
        input.put("cables", Node::List(Vec::new()));
        return;
    }
    for at in 0..cables {
        for (key, off) in [("from", 0), ("to", 1)] {
            let path = format!("cables.{at}.{key}");
            let drawn = leaf(input, &path);
            let place = (drawn.chars().count() + at + off) % boxes;
            // As typed on a phone: without its spaces, in small letters.
            let label = leaf(input, &format!("boxes.{place}.label")).trim().to_ascii_lowercase();
            let is_coiled = key == "to" && drawn.chars().count() % 5 == 4;
            input.put(&path, Node::Text(if is_coiled { String::new() } else { label }));
        }
        if holes > 0 && leaf(input, &format!("cables.{at}.holes")).len() % 2 == 1 {
            let label = leaf(input, &format!("holes.{}.label", at % holes));
            input.put(&format!("cables.{at}.holes"), Node::Text(format!("{label}, P{at}")));
        }
    }
}
