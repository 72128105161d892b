//! The wall from the room: the line, the finished floor under each box, the seam, and each box with
//! how far it is from the line.

use super::sheet::sided;
use super::words as w;
use super::{Answer, Input, floor_name, name};
use crate::measure::Length;
use crate::say;
use crate::sheet::{Anchor, Clear, Drawing, Ink, Line, PAGE_PX, Point};

/// Left for words, and what the wall takes, in pixels.
const SIDE: i64 = 36;
const TOP: i64 = 24;
const TALL: i64 = 230;

pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let none = Length::ZERO;
    let (mut top, mut low, mut far) = (none, none, none);
    for mark in &answer.marks {
        top = top.min(mark.bottom.minus(input.tall));
        low = low.max(mark.floor).max(mark.bottom);
    }
    low = low.max(answer.line());
    if let Some(seam) = input.seam {
        (top, low) = (top.min(answer.line().minus(seam)), low.max(answer.line().minus(seam)));
    }
    for wanted in &input.boxes {
        far = far.max(wanted.along.unwrap_or_default());
    }
    let unit = low.minus(top).part(TALL).max(far.part(PAGE_PX - 2 * SIDE));
    let unit = unit.plus(Length::from_nanometres(1));
    let high = low.minus(top).nanometres() / unit.nanometres() + 1;
    let mut page = Clear::new(unit, high + 2 * TOP);
    let (left, right) = (page.px(4), page.px(PAGE_PX - 4));
    let y = |page: &Clear, down: Length| page.px(TOP).plus(down).minus(top);
    let level = |page: &mut Clear, line, down, means| {
        let y = y(page, down);
        page.path(line, &[Point::new(left, y), Point::new(right, y)], false, means);
    };
    level(&mut page, Line::Seen, none, &w::MEANS_LINE);
    level(&mut page, Line::Hidden, answer.line(), &w::MEANS_FLOOR);
    let label = |page: &Clear, down: Length, text| {
        let at = Point::new(right, y(page, down).minus(page.px(9)));
        Ink::Label { at, anchor: Anchor::End, text }
    };
    let words = label(&page, none, (&w::LABEL_LINE).into());
    page.put(words);
    if let Some(seam) = input.seam {
        let down = answer.line().minus(seam);
        level(&mut page, Line::Leader, down, &w::MEANS_SEAM);
        let words = label(&page, down, (&w::LABEL_SEAM).into());
        page.put(words);
    }
    let mut twin = Vec::new();
    let count = input.boxes.len() as i64;
    for (at, (wanted, mark)) in input.boxes.iter().zip(&answer.marks).enumerate() {
        let slot = page.px((PAGE_PX - 2 * SIDE) * (2 * at as i64 + 1) / (2 * count));
        let x = page.px(SIDE).plus(wanted.along.unwrap_or(slot));
        let (half, bottom) = (input.wide.part(2), y(&page, mark.bottom));
        let corner = Point::new(x.minus(half), bottom.minus(input.tall));
        page.rectangle(Line::Cut, corner, Point::new(x.plus(half), bottom), &w::MEANS_BOX);
        let floor = y(&page, mark.floor);
        let ends = [x.minus(page.px(16)), x.plus(page.px(16))].map(|x| Point::new(x, floor));
        page.path(Line::Cut, &ends, false, &w::MEANS_FLOOR);
        let (from, to) = (Point::new(x, y(&page, none)), Point::new(x, y(&page, mark.down)));
        if from != to {
            page.put(Ink::Dimension { from, to });
        }
        let at_side = x.plus(half).plus(page.px(4));
        let beside = Point::new(at_side, bottom.minus(input.tall.part(2)));
        let text = say!(w::ONE, at as i64 + 1);
        page.put(Ink::Label { at: beside, anchor: Anchor::Start, text });
        twin.push(say!(w::TWIN_BOX, name(at, wanted), sided(mark.down)));
    }
    for (at, floor) in answer.floors.iter().enumerate() {
        twin.push(say!(w::TWIN_FLOOR, floor_name(input, at), *floor));
    }
    page.done(&w::DRAWING, twin)
}
