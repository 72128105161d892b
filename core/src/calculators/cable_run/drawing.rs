//! Its way from the side, to scale: the cable, its boxes, and its parts in words below.

use super::words as w;
use super::{Answer, Way};
use crate::measure::Length;
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};
use crate::words::Phrase;

pub(super) fn drawing(answer: &Answer) -> Drawing {
    let mut corners = vec![(Length::ZERO, Length::ZERO)];
    let (mut x, mut y, mut top, mut bottom) =
        (Length::ZERO, Length::ZERO, Length::ZERO, Length::ZERO);
    for (way, length) in &answer.legs {
        match way {
            Way::Up => y = y.minus(*length),
            Way::Down => y = y.plus(*length),
            Way::Along | Way::Through => x = x.plus(*length),
        }
        (top, bottom) = (top.min(y), bottom.max(y));
        corners.push((x, y));
    }
    // A pixel of the page's 288.
    let unit = x.part(240).max(bottom.minus(top).part(150)).max(Length::from_nanometres(1));
    let px = |count: i64| unit.times(count);
    let place = |(x, y): (Length, Length)| Point::new(px(24).plus(x), px(16).plus(y.minus(top)));
    let points: Vec<_> = corners.into_iter().map(place).collect();
    let mut ink = Vec::new();
    let mut path = |line, points, closed, means: &'static Phrase| {
        let means = Some(means.into());
        ink.push(Ink::Path { line, points, closed, surface: Surface::Open, means });
    };
    for at in [points.first(), points.last()].into_iter().flatten() {
        let square = [(-6, -6), (6, -6), (6, 6), (-6, 6)];
        let around = square.map(|(x, y)| Point::new(at.x.plus(px(x)), at.y.plus(px(y))));
        path(Line::Cut, around.to_vec(), true, &w::BOX);
    }
    path(Line::Seen, points, false, &w::LINE);
    let under = px(40).plus(bottom.minus(top));
    let mut twin = vec![say!(w::TWIN, answer.way, answer.cut)];
    for (at, (way, length)) in answer.legs.iter().enumerate() {
        let phrase = match way {
            Way::Up => &w::L_UP,
            Way::Along => &w::L_ALONG,
            Way::Through => &w::L_THROUGH,
            Way::Down => &w::L_DOWN,
        };
        let says = say!(*phrase, *length);
        twin.push(says.clone());
        let at = Point::new(px(12), under.plus(px(16 * at as i64)));
        ink.push(Ink::Label { at, anchor: Anchor::Start, text: says });
    }
    let height = under.plus(px(16 * answer.legs.len() as i64));
    Drawing { title: (&w::DRAWING).into(), width: px(288), height, ink, twin }
}
