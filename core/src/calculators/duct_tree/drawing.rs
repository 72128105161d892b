//! Each branch's whole way from the air handler, one below the other, lengths to scale.

use super::sheet::{branch, own};
use super::shown as s;
use super::{Answer, Input};
use crate::measure::Length;
use crate::measure::unit::CFM;
use crate::rules::air::working::near;
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};
use crate::words::Phrase;

/// Pixels from one way to the next.
const STEP: i64 = 40;

/// On a page 288 px wide, the longest way 252 of them.
pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let long = |at: &usize| input.pieces[answer.ducts[*at].at].length.unwrap_or_default();
    let whole = |way: &Vec<usize>| way.iter().map(long).fold(Length::ZERO, Length::plus);
    let longest = answer.ways.iter().map(whole).fold(Length::ZERO, Length::max);
    let unit = longest.part(252).max(Length::from_nanometres(1));
    let px = |count: i64| unit.times(count);
    let (mut ink, mut twin) = (Vec::new(), Vec::new());
    for (row, way) in answer.ways.iter().enumerate() {
        let top = row as i64 * STEP;
        let mut block =
            |left: Length, far: Length, half: i64, line, surface, means: &'static Phrase| {
                let (high, low) = (px(top + 26 - half), px(top + 26 + half));
                let corners = [(left, high), (far, high), (far, low), (left, low)];
                ink.push(Ink::Path {
                    line,
                    points: corners.map(|(x, y)| Point::new(x, y)).to_vec(),
                    closed: true,
                    surface,
                    means: Some(means.into()),
                });
            };
        let mut x = px(12);
        for (at, duct) in way.iter().enumerate() {
            let far = x.plus(long(duct));
            if at + 1 < way.len() {
                block(x, far, 6, Line::Cut, Surface::Tone(0), &s::TRUNK_INK);
            } else {
                block(x, far, 4, Line::Seen, Surface::Open, &s::BRANCH_INK);
            }
            x = far;
        }
        if own(answer, row).open < 1.0 {
            block(x, x.plus(px(10)), 7, Line::Cut, Surface::Hatched, &s::BLOCKED_INK);
        }
        let flow = near(&CFM, answer.flows.ends[row]);
        let name = branch(input, answer, row);
        let text = say!(s::LABEL, name.clone(), flow);
        ink.push(Ink::Label {
            at: Point::new(Length::ZERO, px(top + 10)),
            anchor: Anchor::Start,
            text,
        });
        twin.push(say!(s::TWIN, name, whole(way), flow));
    }
    let height = px(answer.ways.len() as i64 * STEP);
    Drawing { title: (&s::DRAWING).into(), width: px(288), height, ink, twin }
}
