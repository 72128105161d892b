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

const PLACED: &[(&str, Place)] = &[("register-spots", register_spots)];

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

/// A walk of drawn walls closes next to never: it becomes two lengths. Parts of a shape take half
/// of it at the most; a register on a wall hangs on the one behind it.
fn register_spots(input: &mut Node) {
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
