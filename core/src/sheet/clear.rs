//! Ink whose words keep clear of each other and inside, on the page of a narrow phone. What finds no
//! clear place is left to the words beside the drawing.

use super::{Drawing, Ink, Line, Point, READ, Surface};
use crate::measure::{Length, Units};
use crate::words::{Phrase, Voice};

/// The page of a phone 320 px wide, less its margins.
pub const PAGE_PX: i64 = 288;

/// A page as it fills.
#[derive(Debug)]
pub struct Clear {
    /// One pixel.
    pub unit: Length,
    high: i64,
    taken: Vec<[f64; 4]>,
    /// What has been drawn, back to front.
    pub ink: Vec<Ink>,
}

impl Clear {
    /// An empty page, `high` pixels high.
    pub fn new(unit: Length, high: i64) -> Self {
        Self {
            unit: unit.max(Length::from_nanometres(1)),
            high,
            taken: Vec::new(),
            ink: Vec::new(),
        }
    }

    /// So many pixels.
    pub fn px(&self, count: i64) -> Length {
        self.unit.times(count)
    }

    /// A label or a dimension, if its words are clear in either units; whether they are.
    pub fn put(&mut self, ink: Ink) -> bool {
        let mut one = Drawing {
            title: (&READ).into(),
            width: self.px(PAGE_PX),
            height: Length::ZERO,
            ink: vec![ink],
            twin: Vec::new(),
        };
        let (wide, high) = (PAGE_PX as f64, self.high as f64);
        for units in [Units::Customary, Units::Metric] {
            let voice = Voice { units, ..Voice::default() };
            for label in one.label_boxes(wide, voice) {
                let [left, top, right, bottom] = label.edges;
                let apart = |it: &[f64; 4]| {
                    right <= it[0] || it[2] <= left || bottom <= it[1] || it[3] <= top
                };
                let inside = left >= 0.0 && top >= 0.0 && right <= wide && bottom <= high;
                if !inside || !self.taken.iter().all(apart) {
                    return false;
                }
            }
        }
        for units in [Units::Customary, Units::Metric] {
            let voice = Voice { units, ..Voice::default() };
            for label in one.label_boxes(wide, voice) {
                self.taken.push(label.edges);
            }
        }
        self.ink.append(&mut one.ink);
        true
    }

    /// A line through two places or more, or an outline.
    pub fn path(&mut self, line: Line, points: &[Point], closed: bool, means: &'static Phrase) {
        let (points, surface) = (points.to_vec(), Surface::Open);
        self.ink.push(Ink::Path { line, points, closed, surface, means: Some(means.into()) });
    }

    /// An outlined rectangle between two of its corners.
    pub fn rectangle(&mut self, line: Line, from: Point, to: Point, means: &'static Phrase) {
        let corners = [from, Point::new(to.x, from.y), to, Point::new(from.x, to.y)];
        self.path(line, &corners, true, means);
    }

    /// The drawing.
    pub fn done(self, title: &'static Phrase, twin: Vec<crate::words::Text>) -> Drawing {
        let (width, height) = (self.px(PAGE_PX), self.px(self.high));
        Drawing { title: title.into(), width, height, ink: self.ink, twin }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sheet::Anchor;

    #[test]
    fn a_label_over_another_or_off_the_page_is_left_out() {
        let mut page = Clear::new(Length::inches(1, 1), 100);
        let at = |x, y| Ink::Label {
            at: Point::new(Length::inches(x, 1), Length::inches(y, 1)),
            anchor: Anchor::Start,
            text: (&READ).into(),
        };
        assert!(page.put(at(4, 20)));
        assert!(!page.put(at(4, 26)));
        assert!(page.put(at(4, 40)));
        assert!(!page.put(at(280, 60)));
        assert!(!page.put(at(4, 98)));
        assert_eq!(page.ink.len(), 2);
    }
}
