//! Boxes one below the other, and between them a line for each wire.

use super::sheet::named;
use super::words as w;
use super::{Answer, Place, Role, Run};
use crate::measure::Length;
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};
use crate::words::Phrase;

/// From one box to the next, in pixels of the page's 288.
const STEP: i64 = 56;

pub(super) fn drawing(answer: &Answer) -> Drawing {
    // No length is real here: a pixel is as good as an inch.
    let px = |x: i64, y: i64| Point::new(Length::inches(x, 1), Length::inches(y, 1));
    let mut ink = Vec::new();
    let mut path = |line, points, closed, means: &'static Phrase| {
        let means = Some(means.into());
        ink.push(Ink::Path { line, points, closed, surface: Surface::Open, means });
    };
    // The light stands above the switches or below them, where its cable is.
    let mut order: Vec<Place> = answer.switches.iter().map(|it| it.place).collect();
    let last = order.last().copied();
    let is_below = answer.runs.iter().any(|run| Some(run.from) == last && run.to == Place::Light);
    let at = if is_below { order.len() } else { 0 };
    order.insert(at, Place::Light);
    let row = |place: Place| order.iter().position(|it| *it == place).map_or(0, |at| at as i64);
    let top = |place: Place| 12 + STEP * row(place);
    let mut labels = Vec::new();
    for place in &order {
        let y = top(*place);
        let corners = vec![px(64, y), px(96, y), px(96, y + 24), px(64, y + 24)];
        path(Line::Cut, corners, true, &w::BOX);
        let fill = answer.switches.iter().find(|it| it.place == *place).map(|it| it.side.fill);
        labels.push((
            104,
            y + 12,
            match (place, fill) {
                (Place::Switch(at), Some(fill)) => say!(w::L_SWITCH, *at, fill),
                _ => say!(w::L_LIGHT),
            },
        ));
    }
    let goes_on = answer.runs.iter().any(|run| run.to == Place::Onward);
    let mut twin = Vec::new();
    for run in &answer.runs {
        let count = run.wires.len() as i64;
        twin.push(say!(w::TWIN, named(run.from), named(run.to), run.cable.label(), count));
        // The feed, and what goes on from it, lie side by side left of their box.
        let side = match (run.from, run.to) {
            (Place::Feed, at) => Some((at, 4)),
            (at, Place::Onward) => Some((at, 16)),
            _ => None,
        };
        for (at, wire) in run.wires.iter().enumerate() {
            let at = at as i64;
            let points = if let Some((place, down)) = side {
                let y = top(place) + down + 6 * at;
                vec![px(8, y), px(64, y)]
            } else {
                let x = 80 - 3 * (count - 1) + 6 * at;
                let (from, to) = between(run, &top);
                vec![px(x, from), px(x, to)]
            };
            let line = if wire.role == Role::Neutral { Line::Hidden } else { Line::Seen };
            path(line, points, false, &w::WIRE);
        }
        if let Some((place, _)) = side {
            if run.from == Place::Feed {
                let says = if goes_on { say!(w::L_FEED_ON) } else { say!(w::L_FEED) };
                labels.push((8, top(place) + 31, says));
            }
        } else {
            let (from, to) = between(run, &top);
            labels.push((104, (from + to) / 2, say!(w::L_RUN, run.cable.label(), count)));
        }
    }
    for (x, y, text) in labels {
        ink.push(Ink::Label { at: px(x, y), anchor: Anchor::Start, text });
    }
    let height = Length::inches(STEP * order.len() as i64, 1);
    Drawing { title: (&w::DRAWING).into(), width: Length::inches(288, 1), height, ink, twin }
}

/// The gap between the two boxes of a run, one above the other.
fn between(run: &Run, top: &impl Fn(Place) -> i64) -> (i64, i64) {
    let (one, other) = (top(run.from), top(run.to));
    (one.min(other) + 24, one.max(other))
}
