//! Rooms at random: stairs on both sides of a line through the room, which gives rectangles, L, T,
//! U, crosses and combs, none of which crosses itself.

use ledgerboard_core::measure::Length;
use ledgerboard_core::plan::{Corner, Wall};
use proptest::collection::vec;
use proptest::prelude::*;

/// A column of floor: its width, and how far it reaches up and down from the line, in
/// sixty-fourths of an inch; all above nothing.
pub type Column = (i64, i64, i64);

/// Columns side by side, left to right.
pub fn columns() -> impl Strategy<Value = Vec<Column>> {
    // Few different reaches, so that neighbours are often level with each other.
    let reach = prop_oneof![1_i64..4, 1_i64..20_000];
    vec((1_i64..20_000, reach.clone(), reach), 1..9)
}

/// The corners of such a room in sixty-fourths of an inch, clockwise, the line at y = 0 and y down.
/// It starts at the upper left; no three are in a row.
pub fn corners(columns: &[Column]) -> Vec<(i64, i64)> {
    let mut around = Vec::new();
    let mut x = 0;
    for (wide, up, _) in columns {
        around.extend([(x, -up), (x + wide, -up)]);
        x += wide;
    }
    for (wide, _, down) in columns.iter().rev() {
        around.extend([(x, *down), (x - wide, *down)]);
        x -= wide;
    }
    let mut kept: Vec<(i64, i64)> = Vec::new();
    for (at, corner) in around.iter().enumerate() {
        let before = kept.last().copied().unwrap_or(around[around.len() - 1]);
        let after = around[(at + 1) % around.len()];
        let straight = (before.0 == corner.0 && corner.0 == after.0)
            || (before.1 == corner.1 && corner.1 == after.1);
        if *corner != before && !straight {
            kept.push(*corner);
        }
    }
    kept
}

/// The same corners as walls, walked from the corner at `start`.
pub fn walls(corners: &[(i64, i64)], start: usize) -> Vec<Wall> {
    let count = corners.len();
    let at = |place: usize| corners[(start + place) % count];
    (0..count)
        .map(|place| {
            let (from, to, next) = (at(place), at(place + 1), at(place + 2));
            let (way, on) = ((to.0 - from.0, to.1 - from.1), (next.0 - to.0, next.1 - to.1));
            let turn = way.0 * on.1 - way.1 * on.0;
            Wall {
                length: Some(Length::inches(way.0.abs() + way.1.abs(), 64)),
                end: if turn > 0 { Corner::Inside } else { Corner::Outside },
            }
        })
        .collect()
}

/// The corners of the same room seen in a mirror, clockwise again.
pub fn mirrored(corners: &[(i64, i64)]) -> Vec<(i64, i64)> {
    corners.iter().rev().map(|(x, y)| (-x, *y)).collect()
}
