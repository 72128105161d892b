//! The room's questions at the batch door: each floor against a general geometry library (`geo`,
//! from the registry), from corners that are made here and not by the core.

use geo::{Area as _, Coord, LineString, Polygon};
use ledgerboard_core::catalog::answer_line;
use ledgerboard_core::measure::{Area, Length, Units};
use serde_json::Value;

/// In nanometres; nothing where it is left empty.
#[expect(clippy::cast_precision_loss, reason = "compared to a part in 10^12")]
fn length(of: &Value, key: &str, units: Units) -> Option<f64> {
    let length = Length::read(of[key].as_str()?, units).expect("a length that reads");
    Some(length.nanometres() as f64)
}

/// The corners of a question that was answered.
fn corners(input: &Value, units: Units) -> Vec<(f64, f64)> {
    let at = |key| length(input, key, units).unwrap_or_default();
    let (a, b) = (at("long"), at("wide"));
    let off = |key, part: f64| length(input, key, units).unwrap_or((a - part) / 2.0);
    match input["shape"].as_str().unwrap_or("rectangle") {
        "rectangle" => vec![(0.0, 0.0), (a, 0.0), (a, b), (0.0, b)],
        "l" => {
            let (c, d) = (at("notch_long"), at("notch_wide"));
            vec![(0.0, 0.0), (a, 0.0), (a, b - d), (a - c, b - d), (a - c, b), (0.0, b)]
        }
        "t" => {
            let (c, d) = (at("leg_wide"), at("leg_long"));
            let (left, bar) = (off("leg_off", c), b - d);
            #[rustfmt::skip]
            let around = vec![
                (0.0, 0.0), (a, 0.0), (a, bar), (left + c, bar), (left + c, b), (left, b),
                (left, bar), (0.0, bar),
            ];
            around
        }
        "u" => {
            let (c, d) = (at("gap_long"), at("gap_deep"));
            let (left, top) = (off("gap_off", c), b - d);
            #[rustfmt::skip]
            let around = vec![
                (0.0, 0.0), (a, 0.0), (a, b), (left + c, b), (left + c, top), (left, top),
                (left, b), (0.0, b),
            ];
            around
        }
        _ => walked(input["walls"].as_array().expect("walls"), units),
    }
}

/// Walks with a quarter turn at each corner; the one blank wall a direction closes it.
fn walked(walls: &[Value], units: Units) -> Vec<(f64, f64)> {
    let mut way = (1.0, 0.0);
    let mut steps = Vec::new();
    for wall in walls {
        steps.push((way, length(wall, "length", units)));
        way = if wall["end"] == "outside" { (way.1, -way.0) } else { (-way.1, way.0) };
    }
    let known = |axis: fn((f64, f64)) -> f64| -> f64 {
        steps.iter().map(|(way, length)| axis(*way) * length.unwrap_or(0.0)).sum()
    };
    let (x, y) = (known(|way| way.0), known(|way| way.1));
    let mut place = (0.0, 0.0);
    let mut around = Vec::new();
    for (way, length) in &steps {
        around.push(place);
        let length = length.unwrap_or(-(x * way.0 + y * way.1));
        place = (place.0 + way.0 * length, place.1 + way.1 * length);
    }
    around
}

#[test]
#[expect(clippy::cast_precision_loss, reason = "compared to a part in 10^12")]
fn each_floor_is_what_a_geometry_library_makes_of_its_corners() {
    let (mut answered, mut refused) = (0, 0);
    for line in include_str!("../vectors/room.jsonl").lines() {
        let question: Value = serde_json::from_str(line).unwrap();
        let answer: Value = serde_json::from_str(&answer_line(line)).unwrap();
        let Some(exact) = answer["sheet"]["answer"]["exact"].as_str() else {
            assert_eq!(answer["refused"], "input", "{line}");
            assert!(!answer["faults"].as_array().unwrap().is_empty(), "{line}");
            refused += 1;
            continue;
        };
        answered += 1;
        let units = question["units"].as_str().and_then(Units::from_key).unwrap_or_default();
        let around = corners(&question["input"], units);
        let places = around.into_iter().map(|(x, y)| Coord { x, y });
        let want = Polygon::new(LineString::from_iter(places), Vec::new()).unsigned_area();
        let floor = Area::read(exact, Units::Customary).expect("exact text");
        let got = floor.square_nanometres() as f64;
        assert!((got / want - 1.0).abs() < 1e-12, "{line}: {got} and not {want}");
    }
    assert_eq!((answered, refused), (52, 15));
}
