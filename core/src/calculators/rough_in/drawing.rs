//! The plan from above: boxes at their places, cables along both walls between them.

use super::graph::Answer;
use super::input::Input;
use super::sheet::{fill_order, is_over, name_of};
use super::shown as s;
use crate::measure::Length;
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};

/// The page of a phone 320 px wide, in pixels, and what of it the plan takes.
const PAGE: i64 = 288;
const LEFT: i64 = 32;
const LONG: i64 = PAGE - 2 * LEFT;
/// Labels past this many run together.
const MOST_LABELS: usize = 60;

/// None where no box has a place.
pub(super) fn drawing(input: &Input, answer: &Answer) -> Option<Drawing> {
    let place = |at: usize| Some([input.boxes[at].x?, input.boxes[at].y?]);
    let mut placed = fill_order(answer);
    placed.retain(|at| place(*at).is_some());
    let [mut left, mut top] = place(*placed.first()?)?;
    let [mut right, mut end] = [left, top];
    for [x, y] in placed.iter().filter_map(|at| place(*at)) {
        (left, right) = (left.min(x), right.max(x));
        (top, end) = (top.min(y), end.max(y));
    }
    let (long, wide) = (right.minus(left), end.minus(top));
    let unit = long.max(wide).part(LONG).max(Length::inches(1, 16));
    let px = |count: i64| unit.times(count);
    let point =
        |[x, y]: [Length; 2]| Point::new(px(LEFT).plus(x.minus(left)), px(LEFT).plus(y.minus(top)));
    let (mut ink, mut twin) = (Vec::new(), Vec::new());
    for laid in &answer.cables {
        let Some((from, to)) = place(laid.from).zip(laid.to.and_then(place)) else { continue };
        ink.push(Ink::Path {
            line: Line::Seen,
            points: vec![point(from), point([to[0], from[1]]), point(to)],
            closed: false,
            surface: Surface::Open,
            means: Some((&s::A_CABLE).into()),
        });
    }
    for at in &placed {
        let Some([x, y]) = place(*at) else { continue };
        let Point { x: across, y: down } = point([x, y]);
        let off = px(4);
        let (west, east, north, south) =
            (across.minus(off), across.plus(off), down.minus(off), down.plus(off));
        let corners = [(west, north), (east, north), (east, south), (west, south)];
        let over = is_over(&answer.boxes[*at]);
        let (surface, means) =
            if over { (Surface::Hatched, &s::OVER_BOX) } else { (Surface::Tone(0), &s::A_BOX) };
        ink.push(Ink::Path {
            line: Line::Cut,
            points: corners.map(|(x, y)| Point::new(x, y)).to_vec(),
            closed: true,
            surface,
            means: Some(means.into()),
        });
        twin.push(say!(s::TWIN, name_of(input, *at), x, y));
    }
    let height = px(2 * LEFT).plus(wide);
    // No word lies on a box.
    let mut taken: Vec<[Length; 4]> = Vec::new();
    for at in &placed {
        let Some(Point { x, y }) = place(*at).map(point) else { continue };
        let off = px(5);
        taken.push([x.minus(off), y.minus(off), x.plus(off), y.plus(off)]);
    }
    for at in placed.iter().take(MOST_LABELS) {
        let Some(here) = place(*at).map(point) else { continue };
        let label = name_of(input, *at);
        // Half of it, and a pixel: letters of 13 px are 7.28 px wide.
        let half = label.chars().count() as i64 * 4 + 1;
        let aside = half + 6;
        let beside =
            [(aside, 0), (-aside, 0), (aside, 14), (-aside, 14), (aside, -14), (-aside, -14)];
        for (x, y) in [(0, 14), (0, -14)].into_iter().chain(beside) {
            let [x, y] = [here.x.plus(px(x)), here.y.plus(px(y))];
            let edges = [x.minus(px(half)), y.minus(px(8)), x.plus(px(half)), y.plus(px(8))];
            let inside = edges[0] >= Length::ZERO
                && edges[1] >= Length::ZERO
                && edges[2] <= px(PAGE)
                && edges[3] <= height;
            let clear = taken.iter().all(|it| {
                it[2] <= edges[0] || edges[2] <= it[0] || it[3] <= edges[1] || edges[3] <= it[1]
            });
            if inside && clear {
                taken.push(edges);
                let at = Point::new(x, y);
                ink.push(Ink::Label { at, anchor: Anchor::Middle, text: say!(s::AT, label) });
                break;
            }
        }
    }
    let title = (&s::DRAWING).into();
    Some(Drawing { title, width: px(PAGE), height, ink, twin })
}
