//! The throws as jets to scale, one under the other, and the end of the way.

use super::words as w;
use super::{Answer, Input, to_inch};
use crate::measure::Length;
use crate::rules::air::jets::ENDS;
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};

/// The page of a phone 320 px wide, in pixels, and what of it the longest jet takes.
const PAGE: i64 = 288;
const LEFT: i64 = 10;
const LONG: i64 = 264;
/// From one jet to the next.
const STEP: i64 = 44;

pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let way = input.way.unwrap_or_default();
    let unit = answer.throw().max(way).part(LONG).plus(Length::from_nanometres(1));
    let px = |count: i64| unit.times(count);
    let left = px(LEFT);
    let (mut ink, mut twin) = (Vec::new(), Vec::new());
    let mut top = 8;
    let reached = ENDS.into_iter().zip(answer.throws);
    for (end, throw) in reached.filter_map(|(end, throws)| Some((end, throws[1]?))) {
        let says = say!(w::JET, end);
        let words = say!(w::TWIN, end, to_inch(throw));
        // A spread of 22° would run out of the page: a sixth of its length at the most, 9 px.
        let half = throw.part(6).min(px(9));
        let (middle, far) = (px(top + 24), left.plus(throw));
        let corners = [
            Point::new(left, middle),
            Point::new(far, middle.minus(half)),
            Point::new(far, middle.plus(half)),
        ];
        ink.push(Ink::Path {
            line: Line::Seen,
            points: corners.to_vec(),
            closed: true,
            surface: Surface::Tone(0),
            means: Some(says),
        });
        let at = Point::new(left, px(top));
        ink.push(Ink::Label { at, anchor: Anchor::Start, text: words.clone() });
        twin.push(words);
        if input.way.is_some() {
            let x = left.plus(way);
            ink.push(Ink::Path {
                line: Line::Cut,
                points: vec![Point::new(x, px(top + 11)), Point::new(x, px(top + 37))],
                closed: false,
                surface: Surface::Open,
                means: Some((&w::WALL).into()),
            });
        }
        top += STEP;
    }
    if input.way.is_some() {
        // So that the widest of its texts keeps inside.
        let anchor = if way < px(100) {
            Anchor::Start
        } else if way < px(190) {
            Anchor::Middle
        } else {
            Anchor::End
        };
        let at = Point::new(left.plus(way), px(top + 4));
        ink.push(Ink::Label { at, anchor, text: say!(w::LABEL_WAY, way) });
        twin.push(say!(w::TWIN_WAY, way));
    }
    Drawing { title: (&w::DRAWING).into(), width: px(PAGE), height: px(top + 20), ink, twin }
}
