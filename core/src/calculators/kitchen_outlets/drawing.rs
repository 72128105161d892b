//! Wall counters one under another, with their receptacles.

use super::Answer;
use super::sheet::told;
use super::words as w;
use crate::measure::Length;
use crate::say;
use crate::sheet::{Anchor, Clear, Drawing, Ink, Line, PAGE_PX, Point};

const LEFT: i64 = 24;
const ROW: i64 = 26;

pub(super) fn drawing(answer: &Answer) -> Option<Drawing> {
    let longest = answer.spaces.iter().map(|space| space.long).max()?;
    let unit = longest.part(PAGE_PX - LEFT - 8).plus(Length::from_nanometres(1));
    let mut page = Clear::new(unit, ROW * answer.spaces.len() as i64 + 8);
    let mut twin = Vec::new();
    for (at, space) in answer.spaces.iter().enumerate() {
        let number = at as i64 + 1;
        let [top, middle, low] = [7, 15, 23].map(|y| page.px(ROW * at as i64 + y));
        let left = page.px(LEFT);
        let end = Point::new(left.plus(space.long), low);
        page.rectangle(Line::Seen, Point::new(left, top), end, &w::MEANS_COUNTER);
        let at = Point::new(page.px(LEFT - 6), middle);
        page.put(Ink::Label { at, anchor: Anchor::End, text: say!(w::COUNT, number) });
        for place in 0..space.count {
            let x = left.plus(space.share().times(2 * place + 1).part(2));
            let half = page.px(3);
            let corner = Point::new(x.minus(half), middle.minus(half));
            let far = Point::new(x.plus(half), middle.plus(half));
            page.rectangle(Line::Cut, corner, far, &w::MEANS_PLACE);
        }
        twin.push(say!(w::TWIN, number, space.long, told(space)));
    }
    Some(page.done(&w::DRAWING, twin))
}
