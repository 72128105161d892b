//! Drawings as data: ink in real lengths. One renderer in the page makes pictures and words of
//! them; a drawing computes nothing that its calculator has not.

use crate::measure::{Length, Rounding};
use crate::words::{Text, Voice};

/// A place on the drawing; x to the right, y down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Point {
    /// From the left edge.
    pub x: Length,
    /// From the top edge.
    pub y: Length,
}

impl Point {
    /// A place.
    pub const fn new(x: Length, y: Length) -> Self {
        Self { x, y }
    }
}

/// How a line is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Line {
    /// What the section cuts through.
    Cut,
    /// What is seen behind it.
    Seen,
    /// What is hidden, dashed.
    Hidden,
    /// A leader from a label to its thing.
    Leader,
}

/// How an area is filled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Surface {
    /// Left open.
    Open,
    /// Nothing is there: what lies under it is out of sight.
    Blank,
    /// A quiet tone; neighbours take turns so that their edge shows.
    Tone(u8),
    /// Hatched: what is over a limit. Its reason stands in the same ink.
    Hatched,
}

/// Which end of a label stands at its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    /// Text runs to the right.
    Start,
    /// Text is centred.
    Middle,
    /// Text runs to the left.
    End,
}

/// One piece of ink.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Ink {
    /// A line, or an outline when `closed`.
    Path {
        /// How it is drawn.
        line: Line,
        /// Its corners.
        points: Vec<Point>,
        /// Back to the first corner.
        closed: bool,
        /// What is inside.
        surface: Surface,
        /// What it is, in words; a hatch always says why.
        means: Option<Text>,
    },
    /// A dimension: ticks at both ends, the distance above a level line and along a plumb one.
    Dimension {
        /// From here.
        from: Point,
        /// To here; level with `from` or plumb to it.
        to: Point,
    },
    /// Words.
    Label {
        /// Where.
        at: Point,
        /// Which end.
        anchor: Anchor,
        /// What.
        text: Text,
    },
}

/// A drawing to scale.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Drawing {
    /// What it shows.
    pub title: Text,
    /// How wide, in real lengths, labels included.
    pub width: Length,
    /// How high.
    pub height: Length,
    /// The ink, back to front.
    pub ink: Vec<Ink>,
    /// The same in words, for those who can't see it.
    pub twin: Vec<Text>,
}

impl Drawing {
    /// The same without words and dimensions, for a picture too small for them.
    pub fn sketch(&self) -> Self {
        let drawn = |ink: &&Ink| match ink {
            Ink::Path { line, .. } => *line != Line::Leader,
            Ink::Dimension { .. } | Ink::Label { .. } => false,
        };
        Self { ink: self.ink.iter().filter(drawn).cloned().collect(), ..self.clone() }
    }
}

/// Where a label's text would stand, in pixels.
#[derive(Clone, Debug, PartialEq)]
pub struct LabelBox {
    /// The words.
    pub text: String,
    /// Left, top, right, bottom.
    pub edges: [f64; 4],
}

/// Height of a label's text on screen, in pixels at 100 %.
pub const LABEL_PX: f64 = 13.0;
/// How far the middle of a dimension's figure stands off its line, in pixels: above a level line;
/// left of a plumb one, turned to read from the right, as on any working drawing.
pub const DIMENSION_PX: f64 = 9.0;
/// Width of an average character against the height of the text: a cautious guess for the sans
/// faces of phones, which run from 0.48 to 0.56.
const CHARACTER: f64 = 0.56;

impl Drawing {
    /// Where all words stand when the drawing is `wide` pixels wide: labels and the figures of
    /// dimensions. For the check that they keep clear of each other and inside.
    pub fn label_boxes(&self, wide: f64, voice: Voice) -> Vec<LabelBox> {
        let scale = wide / px(self.width).max(1.0);
        let place = |point: Point| (px(point.x) * scale, px(point.y) * scale);
        let mut all = Vec::new();
        for ink in &self.ink {
            let (text, [left, top, width, height]) = match ink {
                Ink::Path { .. } => continue,
                Ink::Label { at, anchor, text } => {
                    let text = voice.say(text);
                    let (x, y) = place(*at);
                    let width = wide_as(&text);
                    let left = match anchor {
                        Anchor::Start => x,
                        Anchor::Middle => x - width / 2.0,
                        Anchor::End => x - width,
                    };
                    (text, [left, y - LABEL_PX / 2.0, width, LABEL_PX])
                }
                Ink::Dimension { from, to } => {
                    let text = distance(*from, *to).show(voice.units, Rounding::Nearest).text();
                    let middle = Point::new(from.x.plus(to.x).part(2), from.y.plus(to.y).part(2));
                    let (x, y) = place(middle);
                    let long = wide_as(&text);
                    let off = DIMENSION_PX + LABEL_PX / 2.0;
                    let edges = if from.x == to.x {
                        [x - off, y - long / 2.0, LABEL_PX, long]
                    } else {
                        [x - long / 2.0, y - off, long, LABEL_PX]
                    };
                    (text, edges)
                }
            };
            all.push(LabelBox { text, edges: [left, top, left + width, top + height] });
        }
        all
    }
}

/// How wide a text is set, in pixels.
#[expect(clippy::cast_precision_loss, reason = "a label is far shorter than 2^52")]
fn wide_as(text: &str) -> f64 {
    text.chars().count() as f64 * LABEL_PX * CHARACTER
}

/// The distance between two places that are level or plumb.
pub fn distance(from: Point, to: Point) -> Length {
    let (x, y) = (to.x.minus(from.x).nanometres().abs(), to.y.minus(from.y).nanometres().abs());
    Length::from_nanometres(x.max(y))
}

#[expect(clippy::cast_precision_loss, reason = "only where ink lands on a screen")]
fn px(length: Length) -> f64 {
    length.nanometres() as f64
}
