//! What a sheet shows of a number, and a print of it by which a later sheet knows what changed.

use super::{Who, told};
use crate::calculators::Trade;
use crate::catalog::Entry;
use crate::job::crc::crc32;
use crate::sheet::{Check, Drawing, FOREMOST, Figure, Ink, Part, Sheet, UNPLACED, Verdict};
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
    /// Where nothing else tells how far from what a place is.
    drawing: Option<&'a Drawing>,
}

impl Shown<'_> {
    /// Another one when any of it is another: from exact quantities and one language, whatever the
    /// page is set to. Eight letters.
    pub(super) fn print(&self) -> String {
        let mut all = String::new();
        let mut line = |of: &str, texts: &[&Text]| {
            all.push_str(of);
            for text in texts {
                all.push('\t');
                spell(text, &mut all);
            }
            all.push('\n');
        };
        for figure in self.headline.into_iter().chain(self.figures) {
            line(figure.key, &[&figure.value()]);
        }
        for check in &self.checks {
            line(check.verdict.key(), &[&told(check)]);
        }
        for part in &self.parts {
            for row in &part.rows {
                line(part.key, &[&row.name, &row.value]);
            }
            for row in part.table.iter().flat_map(|table| &table.rows) {
                line(part.key, &[&row.name]);
                for cell in &row.cells {
                    line("", &[cell]);
                }
            }
        }
        if let Some(drawing) = self.drawing {
            for text in &drawing.twin {
                line("", &[text]);
            }
            for ink in &drawing.ink {
                if let Ink::Path { points, closed: true, .. } = ink {
                    for at in points {
                        line(&[at.x.exact(), at.y.exact()].join(" "), &[]);
                    }
                }
            }
        }
        format!("{:08x}", crc32(&[all.as_bytes()]))
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
        Shown {
            // Where a table tells an owner the places, the answer is about something else.
            headline: Some(&sheet.headline).filter(|_| self != Self::Owner || parts.is_empty()),
            // An inspector reads what is held against a limit: its check has both.
            figures: match self {
                Self::Owner | Self::Inspector => &[],
                Self::Electrician | Self::Mechanical => &sheet.figures,
            },
            checks: sheet.checks.iter().filter(is_shown).collect(),
            parts,
            drawing: sheet.drawing.as_ref().filter(|_| entry.tells_places && !is_measured),
        }
    }
}
