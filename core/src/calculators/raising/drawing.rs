//! The room cut across, to scale: the old ceiling dashed, the new one cut. A height that finds no
//! room beside the picture stands below it in words.

use super::shown as s;
use super::{Answer, Input, Made, is_stopped};
use crate::measure::{Length, Rounding, Units};
use crate::say;
use crate::sheet::{Anchor, Drawing, Ink, Line, Point, Surface};
use crate::words::{Phrase, Text};

/// The page of a phone 320 px wide, in pixels.
const PAGE: i64 = 288;
/// To either side of the room, for its heights.
const MARGIN: i64 = 30;
/// Over the room, for two lines of words.
const OVER: i64 = 44;
/// The room is drawn no higher than this, so that it stays on one screen.
const HIGHEST: i64 = 180;
/// Under it, for its width and two lines of words.
const UNDER: i64 = 74;
/// A character's width in tenths of a pixel, cautiously.
const CHARACTER: i64 = 74;

/// The page as it fills: x from the left wall, y up from the floor.
struct Page {
    unit: Length,
    left: Length,
    floor: Length,
    across: Length,
    ink: Vec<Ink>,
}

pub(super) fn drawing(input: &Input, answer: &Answer) -> Drawing {
    let across = match &answer.made {
        Made::Vault(vault) => vault.across,
        _ => input.wide.unwrap_or_default(),
    };
    let high = answer.highest;
    let unit = across.part(PAGE - 2 * MARGIN).max(high.part(HIGHEST));
    // A pixel up, so that the room keeps inside what `part` rounds down.
    let unit = unit.plus(Length::from_nanometres(1));
    let mut page = Page {
        unit,
        left: unit.times(PAGE).minus(across).part(2),
        floor: unit.times(OVER).plus(high),
        across,
        ink: Vec::new(),
    };
    let now = answer.now;
    // The old plates stand by a board's thickness over the old ceiling.
    let profile = page.profile(answer, now.plus(input.board.unwrap_or_default()));
    page.path(Line::Cut, &[(Length::ZERO, Length::ZERO), (across, Length::ZERO)], &s::D_FLOOR);
    let ends = [profile.first(), profile.last()];
    for (x, top) in ends.into_iter().flatten().copied() {
        page.path(Line::Cut, &[(x, Length::ZERO), (x, top)], &s::D_WALL);
    }
    page.path(Line::Hidden, &[(Length::ZERO, now), (across, now)], &s::D_OLD);
    page.path(Line::Cut, &profile, &s::D_NEW);
    page.words(input, answer);
    Drawing {
        title: (&s::DRAWING).into(),
        width: unit.times(PAGE),
        height: page.floor.plus(unit.times(UNDER)),
        ink: page.ink,
        twin: twin(input, answer, across),
    }
}

impl Page {
    fn px(&self, count: i64) -> Length {
        self.unit.times(count)
    }

    fn at(&self, (x, y): (Length, Length)) -> Point {
        Point::new(self.left.plus(x), self.floor.minus(y))
    }

    fn path(&mut self, line: Line, places: &[(Length, Length)], means: &'static Phrase) {
        let points = places.iter().map(|place| self.at(*place)).collect();
        let (closed, surface) = (false, Surface::Open);
        self.ink.push(Ink::Path { line, points, closed, surface, means: Some(means.into()) });
    }

    /// The new ceiling from wall to wall.
    fn profile(&mut self, answer: &Answer, plates: Length) -> Vec<(Length, Length)> {
        let (now, high, across) = (answer.now, answer.highest, self.across);
        match &answer.made {
            Made::Flat(walls) => {
                if walls.cripple.is_some() {
                    // The old plates on both walls.
                    let tick = self.px(5);
                    for x in [Length::ZERO, across] {
                        let ends = [(x.minus(tick), plates), (x.plus(tick), plates)];
                        self.path(Line::Cut, &ends, &s::D_JOINT);
                    }
                }
                vec![(Length::ZERO, high), (across, high)]
            }
            Made::Tray(tray) => {
                // Cut across the width.
                let border = across.minus(tray.mouth[1]).part(2);
                let lid = border.plus(tray.lean);
                vec![
                    (Length::ZERO, now),
                    (border, now),
                    (lid, high),
                    (across.minus(lid), high),
                    (across.minus(border), now),
                    (across, now),
                ]
            }
            Made::Vault(vault) if vault.slopes == 2 => {
                vec![(Length::ZERO, now), (across.part(2), high), (across, now)]
            }
            Made::Vault(_) => vec![(Length::ZERO, now), (across, high)],
        }
    }

    fn label(&mut self, x: i64, y: Length, anchor: Anchor, text: Text) {
        self.ink.push(Ink::Label { at: Point::new(self.px(x), y), anchor, text });
    }

    /// A height on its line if its figure is shorter than that, else in words under the picture.
    fn height(&mut self, x: Length, high: Length, words: &'static Phrase, under: i64) {
        let texts = [Units::Customary, Units::Metric]
            .map(|units| high.show(units, Rounding::Nearest).text().chars().count());
        let long = texts[0].max(texts[1]) as i64 * CHARACTER;
        if self.unit.times(long) <= high.times(10) {
            let (from, to) = (self.at((x, Length::ZERO)), self.at((x, high)));
            self.ink.push(Ink::Dimension { from, to });
        } else {
            let y = self.floor.plus(self.px(under));
            let text = Text { phrase: words, args: vec![high.into()] };
            self.label(PAGE / 2, y, Anchor::Middle, text);
        }
    }

    fn words(&mut self, input: &Input, answer: &Answer) {
        let middle = PAGE / 2;
        self.label(middle, self.px(9), Anchor::Middle, say!(s::UP, answer.higher));
        if let (Made::Flat(walls), false) = (&answer.made, is_stopped(input)) {
            let cut = match walls.cripple {
                Some(cripple) => say!(s::L_CRIPPLE, cripple),
                None => say!(s::L_STUD, walls.stud),
            };
            self.label(middle, self.px(27), Anchor::Middle, cut);
        }
        let (off, across) = (self.px(8), self.across);
        let left = Length::ZERO.minus(off);
        self.height(left, answer.now, &s::L_NOW, 48);
        // Its figure stands left of its line: clear of the wall.
        let right = across.plus(self.px(24));
        self.height(right, answer.highest, &s::L_TO_BE, 64);
        let under = self.px(-30);
        let (from, to) = (self.at((Length::ZERO, under)), self.at((across, under)));
        self.ink.push(Ink::Dimension { from, to });
    }
}

fn twin(input: &Input, answer: &Answer, across: Length) -> Vec<Text> {
    let (now, high) = (answer.now, answer.highest);
    match &answer.made {
        Made::Flat(walls) => {
            let stud = match walls.cripple {
                Some(cripple) => say!(s::TWIN_CRIPPLE, cripple),
                None => say!(s::TWIN_STUD, walls.stud),
            };
            let mut said = vec![say!(s::TWIN_FLAT, now, high, answer.higher, across)];
            if !is_stopped(input) {
                said.push(stud);
            }
            said
        }
        Made::Tray(tray) => {
            let border = input.border.unwrap_or_default();
            vec![say!(s::TWIN_TRAY, border, now, tray.high, high, tray.lean)]
        }
        Made::Vault(vault) if vault.slopes == 2 => vec![say!(s::TWIN_GABLE, now, high, across)],
        Made::Vault(_) => vec![say!(s::TWIN_SHED, now, high, across)],
    }
}
