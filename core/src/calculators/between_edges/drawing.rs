//! Studs, packing and box between the edges, from the room.

use super::words as w;
use super::{Answer, Held, Input};
use crate::measure::Length;
use crate::say;
use crate::sheet::{Clear, Drawing, Ink, Line, PAGE_PX, Point};

const SIDE: i64 = 20;
const HIGH: i64 = 120;

pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let gap = input.gap.unwrap_or_default();
    let unit = gap.part(PAGE_PX - 2 * SIDE).plus(Length::from_nanometres(1));
    let mut page = Clear::new(unit, HIGH);
    let x = |page: &Clear, at: Length| page.px(SIDE).plus(at);
    let bar = |page: &mut Clear, line, [from, to]: [Length; 2], [top, low]: [i64; 2], means| {
        // A stud past the page ends at its edge.
        let clip = |page: &Clear, at| x(page, at).max(Length::ZERO).min(page.px(PAGE_PX));
        let (from, to) = (clip(page, from), clip(page, to));
        if from < to {
            let (top, low) = (page.px(top), page.px(low));
            page.rectangle(line, Point::new(from, top), Point::new(to, low), means);
        }
    };
    let mut twin = vec![say!(w::TWIN, input.wide, answer.left, answer.right)];
    let half = input.thick.part(2);
    for stud in &answer.studs {
        let from = stud.minus(half);
        bar(&mut page, Line::Hidden, [from, from.plus(input.thick)], [8, 88], &w::MEANS_STUD);
        if *stud >= Length::ZERO && *stud <= gap {
            twin.push(say!(w::TWIN_STUD, *stud));
        }
    }
    for edge in [Length::ZERO, gap] {
        let x = x(&page, edge);
        let ends = [8, 88].map(|y| Point::new(x, page.px(y)));
        page.path(Line::Cut, &ends, false, &w::MEANS_EDGE);
    }
    if let Held::Beside { stud, on_right, packing, .. } = &answer.held {
        let far = stud.minus(half).plus(input.thick);
        let mut at = if *on_right { far } else { stud.minus(half).minus(packing.made()) };
        for (thick, count) in &packing.pieces {
            for _ in 0..*count {
                bar(&mut page, Line::Seen, [at, at.plus(*thick)], [36, 60], &w::MEANS_PACKING);
                at = at.plus(*thick);
            }
        }
    }
    let ends = [answer.left, answer.left.plus(input.wide)];
    bar(&mut page, Line::Cut, ends, [30, 66], &w::MEANS_BOX);
    for [from, to] in [[Length::ZERO, ends[0]], [ends[1], gap]] {
        let y = page.px(108);
        let (from, to) = (Point::new(x(&page, from), y), Point::new(x(&page, to), y));
        if from.x < to.x {
            page.put(Ink::Dimension { from, to });
        }
    }
    page.done(&w::DRAWING, twin)
}
