//! The gable in section, to scale: its ties now and raised, the lower third, and what is over it.

use super::words as w;
use super::{Answer, Input, Roof};
use crate::measure::{Length, Rounding, divide};
use crate::rules::compare::is_at_most;
use crate::rules::framing::gable_ties::highest;
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};
use crate::words::Phrase;

/// The page of a phone 320 px wide, in pixels.
const PAGE: i64 = 288;
/// The gable is no wider and no higher.
const WIDEST: i64 = 216;
const HIGHEST: i64 = 260;
/// Half of the longest figure of a height, set plumb: `≈ 19 ft 11-15/16 in`.
const FIGURE: i64 = 72;
/// Under the plates: two dimensions and two lines of words.
const UNDER: i64 = 84;

pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let rise = answer.rise;
    let unit = input.span.part(WIDEST).max(rise.part(HIGHEST)).max(Length::from_nanometres(1));
    let px = |count: i64| unit.times(count);
    // So high that the figure of a low rise keeps on the page.
    let top = px(10).max(px(FIGURE).minus(rise.part(2)));
    let base = top.plus(rise);
    // A little right of the middle, for the height at the left.
    let middle = px(PAGE / 2 + 14);
    let (left, right) = (middle.minus(input.span.part(2)), middle.plus(input.span.part(2)));
    // From the wall in to the rafter at a height over the plate.
    let flat = answer.flat.unwrap_or_default();
    let third = highest(input.height(rise)).value;
    // As far in as the rafter is up.
    let over = i128::from(input.span.nanometres()) * i128::from(third.nanometres());
    let third_in = divide(over, 2 * i128::from(rise.nanometres().max(1)), Rounding::Nearest);
    let third_in = Length::from_nanometres(i64::try_from(third_in).unwrap_or(i64::MAX));
    let up_in = input.span.minus(flat).part(2);

    let mut ink = Vec::new();
    let mut path = |line, points: &[(Length, Length)], surface, means: &'static Phrase| {
        let points = points.iter().map(|(x, y)| Point::new(*x, *y)).collect();
        let closed = surface != Surface::Open;
        ink.push(Ink::Path { line, points, closed, surface, means: Some(means.into()) });
    };
    let third_line =
        [(left.plus(third_in), base.minus(third)), (right.minus(third_in), base.minus(third))];
    let up_line =
        [(left.plus(up_in), base.minus(input.up())), (right.minus(up_in), base.minus(input.up()))];
    let by_ties = input.roof != Roof::Beam;
    let over = by_ties && input.up() > third;
    if by_ties {
        let zone = [(left, base), third_line[0], third_line[1], (right, base)];
        path(Line::Leader, &zone, Surface::Tone(0), &w::LOWER_THIRD);
    }
    if over {
        let zone = [third_line[0], up_line[0], up_line[1], third_line[1]];
        path(Line::Leader, &zone, Surface::Hatched, &w::ABOVE_THIRD);
    }
    let foot = base.plus(px(8));
    for x in [left, right] {
        path(Line::Cut, &[(x, base), (x, foot)], Surface::Open, &w::WALL_LINE);
    }
    let ridge = (middle, top);
    path(Line::Cut, &[(left, base), ridge, (right, base)], Surface::Open, &w::RAFTER_LINE);
    if input.up() > Length::ZERO {
        path(Line::Hidden, &[(left, base), (right, base)], Surface::Open, &w::TIE_BEFORE);
    }
    path(Line::Cut, &up_line, Surface::Open, &w::TIE_AFTER);
    // The height's own line stands left of the gable.
    let aside = px(26);
    path(Line::Leader, &[(aside, top), ridge], Surface::Open, &w::RISE);

    let dimension = |from: (Length, Length), to: (Length, Length)| Ink::Dimension {
        from: Point::new(from.0, from.1),
        to: Point::new(to.0, to.1),
    };
    let (first, second) = (base.plus(px(24)), base.plus(px(44)));
    ink.push(dimension((aside, top), (aside, base)));
    if up_in > Length::ZERO {
        ink.push(dimension((up_line[0].0, first), (up_line[1].0, first)));
    }
    ink.push(dimension((left, second), (right, second)));
    let mut legend = |text: &'static Phrase, y| {
        let at = Point::new(px(PAGE / 2), base.plus(px(y)));
        ink.push(Ink::Label { at, anchor: Anchor::Middle, text: text.into() });
    };
    if up_in > Length::ZERO {
        legend(&w::LEGEND, 58);
    }
    if by_ties {
        legend(if over { &w::LEGEND_OVER } else { &w::LEGEND_THIRD }, 74);
    }
    let mut twin = vec![say!(w::TWIN, input.span, rise)];
    if up_in > Length::ZERO {
        twin.push(say!(w::TWIN_UP, input.up(), flat));
    }
    if by_ties {
        let sure = is_at_most(input.up(), highest(answer.under_ridge));
        let phrase = match (over, sure) {
            (true, _) => &w::TWIN_OVER,
            (false, true) => &w::TWIN_IN,
            (false, false) => &w::TWIN_NEAR,
        };
        twin.push(crate::words::Text { phrase, args: vec![third.into()] });
    }
    Drawing {
        title: (&w::DRAWING).into(),
        width: px(PAGE),
        height: base.plus(px(UNDER)),
        ink,
        twin,
    }
}
