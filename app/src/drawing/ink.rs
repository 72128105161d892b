//! Ink to SVG: real lengths to pixels, line weights, hatch, dimensions and labels. Words keep
//! their size whatever the scale.

use super::numbers::{hundredths, scaled};
use crate::elements::{El, Piece, svg};
use crate::{speech, words as w};
use ledgerboard_core::measure::Length;
use ledgerboard_core::say;
use ledgerboard_core::sheet::{Anchor, DIMENSION_PX, Drawing, Ink, Line, Point, Surface, distance};
use ledgerboard_core::words::Voice;

/// Real lengths to hundredths of a pixel.
#[derive(Clone, Copy)]
struct Scale {
    wide: i64,
    real: i64,
}

impl Scale {
    fn px(self, length: Length) -> i64 {
        scaled(length.nanometres(), self.wide * 100, self.real)
    }
}

/// A drawing as it stands `wide` pixels wide. `hatch` names its hatch apart from other drawings'.
pub(super) fn picture(drawing: &Drawing, wide: i64, voice: Voice, hatch: &str) -> El {
    let scale = Scale { wide, real: drawing.width.nanometres().max(1) };
    let high = hundredths(scale.px(drawing.height));
    let wide = wide.to_string();
    let fill = ["url(#", hatch, ")"].concat();
    let stripe = svg("line").class("hatching").attr("x1", "0").attr("x2", "0").attr("y2", "6");
    let pattern = svg("pattern")
        .id(hatch)
        .attr("width", "6")
        .attr("height", "6")
        .attr("patternUnits", "userSpaceOnUse")
        .attr("patternTransform", "rotate(45)")
        .with(stripe);
    svg("svg")
        .class("drawing")
        .attr("role", "img")
        .attr("viewBox", &["0 0 ", &wide, " ", &high].concat())
        .attr("width", &wide)
        .attr("height", &high)
        .with(svg("title").text(&voice.say(&drawing.title)))
        .with(svg("defs").with(pattern))
        .with_all(drawing.ink.iter().map(|ink| piece(ink, scale, voice, &fill)))
}

fn piece(ink: &Ink, scale: Scale, voice: Voice, hatch: &str) -> Piece {
    match ink {
        Ink::Path { line, points, closed, surface, means } => {
            let class = match surface {
                Surface::Open => "open",
                Surface::Blank => "blank",
                Surface::Tone(tone) if tone % 2 == 0 => "tone",
                Surface::Tone(_) => "tone other",
                Surface::Hatched => "hatched",
            };
            let path =
                stroke(&[weight(*line), " ", class].concat(), &outline(points, *closed, scale));
            let path = match surface {
                Surface::Open => path.attr("fill", "none"),
                Surface::Hatched => path.attr("fill", hatch),
                Surface::Tone(_) | Surface::Blank => path,
            };
            path.with(means.as_ref().map(|means| svg("title").text(&voice.say(means)))).into()
        }
        Ink::Dimension { from, to } => dimension(*from, *to, scale, voice),
        Ink::Label { at, anchor, text } => {
            let anchor = match anchor {
                Anchor::Start => "start",
                Anchor::Middle => "middle",
                Anchor::End => "end",
            };
            label(scale.px(at.x), scale.px(at.y), anchor, &voice.say(text)).into()
        }
    }
}

fn weight(line: Line) -> &'static str {
    match line {
        Line::Cut => "cut",
        Line::Seen => "seen",
        Line::Hidden => "hidden-line",
        Line::Leader => "leader",
    }
}

/// A line whose weight stays whatever the scale.
fn stroke(class: &str, path: &str) -> El {
    svg("path").class(class).attr("d", path).attr("vector-effect", "non-scaling-stroke")
}

fn outline(points: &[Point], closed: bool, scale: Scale) -> String {
    let mut path = String::new();
    for (at, point) in points.iter().enumerate() {
        go(&mut path, if at == 0 { "M" } else { "L" }, scale.px(point.x), scale.px(point.y));
    }
    if closed {
        path.push('Z');
    }
    path
}

fn go(path: &mut String, how: &str, x: i64, y: i64) {
    path.push_str(&[how, &hundredths(x), " ", &hundredths(y)].concat());
}

fn label(x: i64, y: i64, anchor: &str, text: &str) -> El {
    svg("text")
        .attr("x", &hundredths(x))
        .attr("y", &hundredths(y))
        .attr("text-anchor", anchor)
        .attr("dominant-baseline", "central")
        .text(text)
}

/// A line with a slanted tick at each end; the figure above it, or along a plumb one, turned to
/// read from the right.
fn dimension(from: Point, to: Point, scale: Scale, voice: Voice) -> Piece {
    const TICK: i64 = 400;
    /// How far the middle of the figure stands off the line, as core lays drawings out.
    const OFF: i64 = DIMENSION_PX as i64 * 100;
    let (x1, y1) = (scale.px(from.x), scale.px(from.y));
    let (x2, y2) = (scale.px(to.x), scale.px(to.y));
    let text = speech::voice(voice.units).say(&say!(w::FIGURE, distance(from, to)));
    let mut path = String::new();
    go(&mut path, "M", x1, y1);
    go(&mut path, "L", x2, y2);
    for (x, y) in [(x1, y1), (x2, y2)] {
        go(&mut path, "M", x - TICK, y + TICK);
        go(&mut path, "L", x + TICK, y - TICK);
    }
    let (x, y) = ((x1 + x2) / 2, (y1 + y2) / 2);
    let figure = if from.x == to.x {
        let turn = ["rotate(-90 ", &hundredths(x - OFF), " ", &hundredths(y), ")"].concat();
        label(x - OFF, y, "middle", &text).attr("transform", &turn)
    } else {
        label(x, y - OFF, "middle", &text)
    };
    Piece::all([stroke("dimension", &path).attr("fill", "none"), figure])
}
