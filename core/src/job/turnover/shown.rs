//! What a sheet shows of a number, and a print of it by which a later sheet knows what changed.

use super::{Who, shows_places, told};
use crate::calculators::Trade;
use crate::catalog::Entry;
use crate::job::crc::crc32;
use crate::sheet::{
    Check, Drawing, FOREMOST, Figure, Ink, Line, Part, Point, Sheet, Surface, UNPLACED, Verdict,
};
use crate::words::{Arg, Text};

/// The parts of a worked answer that go along to a trade, by their keys.
const GO_ALONG: [&str; 11] = [
    "handed", "ask", FOREMOST, "spots", "run", "boxes", "places", "circuits", "schedule", "holes",
    "labels",
];
/// Those that go along to an inspector: what stands where and which report it rests on, not what to
/// ask a trade.
const INSPECTED: [&str; 8] =
    [FOREMOST, "evidence", "spots", "boxes", "places", "circuits", "schedule", "holes"];
/// The parts that tell an owner where things will be, in plain words.
pub(super) const PLACES: [&str; 4] = [FOREMOST, "spots", "places", "order"];
/// Those that tell how far from what a place is; without one only the drawing does.
const MEASURED: [&str; 3] = [FOREMOST, "spots", "places"];
/// The parts that an owner agrees to or signs: what is off and what to know then, when who comes, what
/// a change costs.
const AGREED: [&str; 5] = [FOREMOST, "know", "days", "lines", "to-sign"];

/// What a reader's sheet shows of a number under its title.
pub(super) struct Shown<'a> {
    /// The answer, where it isn't told apart.
    pub(super) headline: Option<&'a Figure>,
    pub(super) figures: &'a [Figure],
    pub(super) checks: Vec<&'a Check>,
    pub(super) parts: Vec<&'a Part>,
    /// To an owner a drawing shows where in a room a thing is, or the room itself.
    pub(super) drawing: Option<&'a Drawing>,
    /// Where nothing else tells how far from what a place is.
    places: Option<&'a Drawing>,
    /// What is compared of it. An owner agrees to places: where a list tells them, what else is drawn, as
    /// the ways of cables and which box is over, is settled with the trade.
    compared: Option<&'a Drawing>,
    /// To an owner nothing stands overleaf of what the first page has told whole.
    has_note: bool,
}

/// What a print is made of, a line at a time.
struct Lines(String);

impl Lines {
    fn add(&mut self, of: &str, texts: &[&Text]) {
        self.0.push_str(of);
        for text in texts {
            self.0.push('\t');
            spell(text, &mut self.0);
        }
        self.0.push('\n');
    }

    fn points(&mut self, points: &[Point]) {
        for at in points {
            self.add(&[at.x.exact(), at.y.exact()].join(" "), &[]);
        }
    }

    /// Eight letters.
    fn print(self) -> String {
        format!("{:08x}", crc32(&[self.0.as_bytes()]))
    }
}

/// Whether two prints are of the same; one that was kept when only answers, checks and places went into
/// it says nothing of the rest.
pub(super) fn is_same_print(then: &str, now: &str) -> bool {
    then == now || now.rsplit('\t').next() == Some(then)
}

impl Shown<'_> {
    /// Another one when any of it is another: from exact quantities and one language, whatever the
    /// page is set to. Twice eight letters: of how it looks and is called, and of what it says, which is
    /// all that was kept at first.
    pub(super) fn print(&self, note: &str) -> String {
        [self.look(note), self.says()].join("\t")
    }

    fn says(&self) -> String {
        let mut all = Lines(String::new());
        for figure in self.headline.into_iter().chain(self.figures) {
            all.add(figure.key, &[&figure.value()]);
        }
        for check in &self.checks {
            all.add(check.verdict.key(), &[&told(check)]);
        }
        for part in &self.parts {
            for row in &part.rows {
                all.add(part.key, &[&row.name, &row.value]);
            }
            for row in part.table.iter().flat_map(|table| &table.rows) {
                all.add(part.key, &[&row.name]);
                for cell in &row.cells {
                    all.add("", &[cell]);
                }
            }
        }
        if let Some(drawing) = self.places {
            for text in &drawing.twin {
                all.add("", &[text]);
            }
            for ink in &drawing.ink {
                if let Ink::Path { points, closed: true, .. } = ink {
                    all.points(points);
                }
            }
        }
        all.print()
    }

    /// What stands beside that: names with their quantities, why a check asks, the crew's note, the
    /// drawing.
    fn look(&self, note: &str) -> String {
        let mut all = Lines(String::new());
        if self.has_note {
            all.add(note, &[]);
        }
        for figure in self.headline.into_iter().chain(self.figures) {
            all.add(figure.key, &[&figure.name]);
        }
        for check in self.checks.iter().filter(|check| check.verdict != Verdict::Within) {
            all.add(check.word().en, &[]);
            all.add("", &check.note.iter().collect::<Vec<_>>());
        }
        for part in &self.parts {
            all.add(part.key, &[&part.title]);
            all.add("", &part.note.iter().collect::<Vec<_>>());
        }
        if let Some(drawing) = self.compared {
            for text in &drawing.twin {
                all.add("", &[text]);
            }
            // Words and dimensions in it say what these show.
            for ink in &drawing.ink {
                if let Ink::Path { line, points, surface, .. } = ink
                    && *line != Line::Leader
                {
                    all.add(if *surface == Surface::Hatched { "hatched" } else { "" }, &[]);
                    all.points(points);
                }
            }
        }
        all.print()
    }
}

/// A text with its quantities exact.
fn spell(text: &Text, all: &mut String) {
    all.push_str(text.phrase.en);
    for arg in &text.args {
        all.push('\t');
        match arg {
            Arg::Amount(amount, _) | Arg::Bare(amount) => all.push_str(&amount.exact()),
            Arg::Text(text) => spell(text, all),
            Arg::Raw(raw) => all.push_str(raw),
        }
    }
}

impl Who {
    /// What their sheet shows of a calculator's number.
    pub(super) fn shown<'a>(self, entry: &Entry, sheet: &'a Sheet) -> Shown<'a> {
        let is_of_job = entry.trade == Trade::Job;
        let along: &[&str] = match self {
            Self::Owner if is_of_job => &AGREED,
            _ if is_of_job => &["days"],
            Self::Owner => &PLACES,
            Self::Inspector => &INSPECTED,
            Self::Electrician | Self::Mechanical => &GO_ALONG,
        };
        let parts: Vec<&Part> =
            sheet.parts.iter().filter(|part| along.contains(&part.key)).collect();
        let is_measured = sheet.parts.iter().any(|part| MEASURED.contains(&part.key));
        let is_shown = |check: &&Check| match self {
            Self::Inspector => true,
            // An owner agrees to a place, not to what a box holds: that is settled with the trade.
            Self::Owner if !is_of_job => check.key == UNPLACED && check.verdict != Verdict::Within,
            _ => check.verdict != Verdict::Within,
        };
        let is_owner = self == Self::Owner;
        let is_drawn = !is_owner || shows_places(sheet) || entry.trade == Trade::Framing;
        let drawing = sheet.drawing.as_ref().filter(|_| is_drawn);
        Shown {
            has_note: !is_owner || drawing.is_some() || !parts.is_empty(),
            // Where a table tells an owner the places, the answer is about something else.
            headline: Some(&sheet.headline).filter(|_| self != Self::Owner || parts.is_empty()),
            // An inspector reads what is held against a limit: its check has both.
            figures: match self {
                Self::Owner | Self::Inspector => &[],
                Self::Electrician | Self::Mechanical => &sheet.figures,
            },
            checks: sheet.checks.iter().filter(is_shown).collect(),
            parts,
            drawing,
            compared: drawing.filter(|_| !is_owner || !is_measured),
            places: sheet.drawing.as_ref().filter(|_| entry.tells_places && !is_measured),
        }
    }
}
