//! The branch before and after, one above the other.

use super::shown as s;
use super::{Answer, Input};
use crate::measure::Length;
use crate::measure::unit::CFM;
use crate::rules::air::working::near;
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};
use crate::words::Phrase;

/// On a page 288 px wide, the longer of the two 264 of them.
pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let run = input.now.length.unwrap_or_default();
    let added = input.added.unwrap_or_default();
    let piece = answer.piece.and(input.piece_length).unwrap_or_default();
    // What is taken out isn't there after.
    let kept = run.plus(added.min(Length::ZERO));
    let new = added.max(Length::ZERO);
    let after = kept.plus(new).plus(piece);
    let unit = run.max(after).part(264).max(Length::from_nanometres(1));
    let px = |count: i64| unit.times(count);
    let mut ink = Vec::new();
    let mut bar = |top: i64, parts: &[(Length, Line, &'static Phrase)]| {
        let mut x = px(12);
        for (long, line, means) in parts {
            let far = x.plus(*long);
            if far > x {
                let corners = [(x, top), (far, top), (far, top + 12), (x, top + 12)];
                ink.push(Ink::Path {
                    line: *line,
                    points: corners.map(|(x, y)| Point::new(x, px(y))).to_vec(),
                    closed: true,
                    surface: if *line == Line::Cut { Surface::Tone(0) } else { Surface::Open },
                    means: Some((*means).into()),
                });
            }
            x = far;
        }
    };
    bar(22, &[(run, Line::Seen, &s::DUCT)]);
    let parts =
        [(kept, Line::Seen, &s::DUCT), (new, Line::Cut, &s::ADDED), (piece, Line::Cut, &s::PIECE)];
    bar(66, &parts);
    let (flow, less) = (near(&CFM, answer.flow), near(&CFM, answer.after));
    for (y, name, long, flow) in [(10, &s::RUN_NOW, run, flow), (54, &s::AFTER, after, less)] {
        let text = say!(s::LABEL, name, long, flow);
        ink.push(Ink::Label { at: Point::new(Length::ZERO, px(y)), anchor: Anchor::Start, text });
    }
    let twin =
        vec![say!(s::TWIN_NOW, run, flow), say!(s::TWIN_AFTER, after, less, new.plus(piece))];
    Drawing { title: (&s::DRAWING).into(), width: px(288), height: px(88), ink, twin }
}
