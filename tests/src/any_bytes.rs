//! Everything that takes text from outside, with texts that it takes, and what chance, wear and
//! malice make of them. Plain loops with a generator of their own: a hundred thousand of these are
//! wanted in seconds, and which one failed is known by its number.

use ledgerboard_core::catalog::{self, Link};
use ledgerboard_core::edition::Basis;
use ledgerboard_core::job::backup::{self, Written};
use ledgerboard_core::job::record::{self, Head};
use ledgerboard_core::job::{Edit, Job, Mark, Stamp, apply};
use ledgerboard_core::measure::{Area, Day, Length, Measure, Unit, Units, Volume, unit};

/// A sequence that looks like chance and is the same every time.
///
/// # Source
/// Sebastiano Vigna, `splitmix64.c` (2015, public domain), from memory.
pub struct Chance(u64);

impl Chance {
    /// The sequence of this number.
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// The next number.
    pub fn draw(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// A number below `most`, which is not zero.
    pub fn below(&mut self, most: usize) -> usize {
        usize::try_from(self.draw() % (most as u64)).unwrap_or(0)
    }

    fn pick<'a, T>(&mut self, all: &'a [T]) -> &'a T {
        &all[self.below(all.len())]
    }
}

/// Something that reads text.
#[derive(Clone, Copy)]
pub struct Reader {
    /// What it reads.
    pub name: &'static str,
    /// Texts that it takes.
    pub seeds: fn() -> Vec<String>,
    /// Reads a text, and says whether it was taken.
    pub read: fn(&str) -> bool,
    /// Makes a text whole again in what only a program writes: lengths and sums.
    pub seal: fn(String) -> String,
    /// What a slip may change a sign to; where all of them are taken somewhere.
    pub signs: &'static str,
}

/// All readers.
pub const READERS: [Reader; 9] = [
    Reader {
        name: "lengths",
        seeds: lengths,
        read: length,
        seal: as_is,
        signs: "0123456789 '\"/-.",
    },
    Reader { name: "areas", seeds: areas, read: area, seal: as_is, signs: "0123456789 ." },
    Reader { name: "volumes", seeds: volumes, read: volume, seal: as_is, signs: "0123456789 ." },
    Reader {
        name: "measures",
        seeds: measures,
        read: measure,
        seal: as_is,
        signs: "0123456789 .-",
    },
    Reader { name: "days", seeds: days, read: day, seal: as_is, signs: "0123456789" },
    Reader { name: "links", seeds: links, read: link, seal: as_is, signs: "0123456789abc%.&" },
    Reader { name: "records", seeds: records, read: record, seal: sealed, signs: "0123456789abc " },
    Reader {
        name: "backups",
        seeds: backups,
        read: backup,
        seal: resealed,
        signs: "0123456789abc ",
    },
    Reader { name: "batch lines", seeds: lines, read: line, seal: as_is, signs: "0123456789" },
];

impl Reader {
    /// A text for it: taken, worn, or made up.
    pub fn text(&self, seeds: &[String], chance: &mut Chance) -> String {
        let seed = chance.pick(seeds).clone();
        match chance.below(8) {
            0 => noise(chance, seed.len()),
            1 | 2 => String::from_utf8_lossy(&worn(seed.into_bytes(), seeds, chance)).into_owned(),
            _ => (self.seal)(slipped(seed, self.signs, chance)),
        }
    }
}

/// Any signs at all.
fn noise(chance: &mut Chance, most: usize) -> String {
    let length = chance.below(most + 8);
    let bytes: Vec<u8> = (0..length).map(|_| chance.draw().to_le_bytes()[0]).collect();
    String::from_utf8_lossy(&bytes).into_owned()
}

/// A digit or letter or two changed to another, as by a thumb.
fn slipped(text: String, signs: &str, chance: &mut Chance) -> String {
    let mut bytes = text.into_bytes();
    for _ in 0..chance.below(3) {
        if bytes.is_empty() {
            break;
        }
        let at = chance.below(bytes.len());
        if bytes[at].is_ascii_alphanumeric() {
            bytes[at] = *chance.pick(signs.as_bytes());
        }
    }
    String::from_utf8_lossy(&bytes).into_owned()
}

/// Cut, doubled, flipped, mixed with another, and with signs that mean something put in.
fn worn(mut bytes: Vec<u8>, seeds: &[String], chance: &mut Chance) -> Vec<u8> {
    const MEANT: [&str; 18] = [
        "{",
        "}",
        "[",
        "]",
        "\"",
        "\\",
        "\\u0000",
        ",",
        ":",
        "9e999",
        "-0",
        "null",
        "½",
        "%",
        "&",
        "18446744073709551616",
        "\u{feff}",
        "</script>",
    ];
    for _ in 0..=chance.below(4) {
        let at = chance.below(bytes.len() + 1);
        let to = at + chance.below(bytes.len() - at + 1);
        match chance.below(6) {
            0 => bytes.truncate(at),
            1 => drop(bytes.drain(at..to)),
            2 => {
                let part = bytes[at..to].to_vec();
                bytes.splice(at..at, part);
            }
            3 if at < bytes.len() => bytes[at] ^= 1 << chance.below(8),
            4 => {
                let other = chance.pick(seeds).as_bytes();
                let from = chance.below(other.len() + 1);
                bytes.truncate(at);
                bytes.extend_from_slice(&other[from..]);
            }
            _ => drop(bytes.splice(at..at, chance.pick(&MEANT).bytes())),
        }
        bytes.truncate(65_536);
    }
    bytes
}

fn owned(texts: &[&str]) -> Vec<String> {
    texts.iter().map(|text| (*text).to_owned()).collect()
}

fn as_is(text: String) -> String {
    text
}

fn lengths() -> Vec<String> {
    owned(&[
        "9' 4 1/2\"",
        "9-4-1/2",
        "9ft3in",
        "9 ft 4-1/2 in",
        "112 1/2",
        "½ in",
        "3 yd",
        "-1/4 in",
        "2860 mm",
        "2,86 m",
        "28.6 cm",
        "18.0",
    ])
}

fn areas() -> Vec<String> {
    owned(&["168 sq ft", "12.5 m2", "40", "144 sq in", "2 sq yd", "1,5 m²", "12 ft2"])
}

fn volumes() -> Vec<String> {
    owned(&["20.3 in3", "18 cu in", "300 cm3", "12 ft3", "2,5 m3", "14.0", "1 1/2 in³"])
}

fn measures() -> Vec<String> {
    owned(&["30 psf", "-10 °F", "1.5 kPa", "4 1/2", "12,5 %", "$40", "6 in 12", "38 R", "200 cfm"])
}

fn days() -> Vec<String> {
    owned(&["2026-11-25", "25 Nov 2026", "November 25, 2026", "11/25/2026", "1931-02-28"])
}

fn links() -> Vec<String> {
    let link = |entry: &catalog::Entry| {
        Link::new(entry.id, entry.sample(), Basis::default(), Units::Metric).write()
    };
    catalog::ALL.iter().map(link).collect()
}

fn stamp(step: u64) -> Stamp {
    let at = 1_791_295_200 + i64::try_from(step).unwrap_or(0);
    Stamp { at, zone: -300, device: "phone".to_owned(), random: step }
}

/// An invented job with a mark of one calculator after another, and one that was removed.
pub fn job(step: u64) -> Job {
    let mut job = Job::new("3 Plumbline Court", "Invented", &stamp(step)).expect("a short name");
    let entry = &catalog::ALL[usize::try_from(step).unwrap_or(0) % catalog::ALL.len()];
    let mark = |step: u64| {
        let stamp = stamp(step);
        let sample = entry.sample();
        let mark = Mark::new(entry, &sample, Units::Customary, Basis::default(), None, &stamp);
        let title = "Shelf over the bench".to_owned();
        Mark { title, spot: "Workshop".to_owned(), ..mark.expect("a sample works") }
    };
    let (stays, goes) = (mark(step * 100 + 1), mark(step * 100 + 2));
    let id = goes.id.clone();
    for edit in [Edit::Keep(stays), Edit::Keep(goes), Edit::Remove(id)] {
        apply(&mut job, edit, &stamp(step)).expect("what is there can be removed");
    }
    job
}

fn records() -> Vec<String> {
    (0..4).map(|step| record::write(&job(step), &Head::new(step, "phone", 0))).collect()
}

fn backups() -> Vec<String> {
    let written = Written {
        by: "Ledgerboard".to_owned(),
        made: stamp(0).moment(),
        device: "phone".to_owned(),
    };
    let jobs: Vec<Job> = (0..3).map(job).collect();
    [0..1, 1..2, 0..2, 1..3].map(|range| backup::write(&jobs[range], &written)).into()
}

fn lines() -> Vec<String> {
    let files = [include_str!("../vectors/box-fill.jsonl"), include_str!("../vectors/hold.jsonl")];
    // Some of them are questions that have no answer.
    let lines = files.iter().flat_map(|file| file.lines());
    lines.filter(|text| line(text)).map(str::to_owned).collect()
}

fn both_units<T>(read: impl Fn(Units) -> Result<T, ledgerboard_core::measure::Problem>) -> bool {
    let [one, other] = [Units::Customary, Units::Metric].map(|units| read(units).is_ok());
    one || other
}

fn length(text: &str) -> bool {
    both_units(|units| Length::read(text, units))
}

fn area(text: &str) -> bool {
    both_units(|units| Area::read(text, units))
}

fn volume(text: &str) -> bool {
    both_units(|units| Volume::read(text, units))
}

/// Taken where it is in any unit.
fn measure(text: &str) -> bool {
    let read = |unit: &&'static Unit| both_units(|units| Measure::read(text, unit, units));
    unit::ALL.iter().filter(|unit| read(unit)).count() > 0
}

fn day(text: &str) -> bool {
    Day::read(text).is_ok()
}

/// Read as the page does: an address, then the question in it.
fn link(text: &str) -> bool {
    let Ok(link) = Link::read(text) else { return false };
    if let Some(entry) = catalog::find(&link.calculator) {
        let _ = entry.canonical(&link.input, link.units);
    }
    true
}

fn record(text: &str) -> bool {
    record::read(text).is_ok()
}

/// Taken where at least one of its jobs is: a backup with a damaged one restores the others.
fn backup(text: &str) -> bool {
    backup::read(text).is_ok_and(|backup| !backup.jobs.is_empty())
}

fn line(text: &str) -> bool {
    catalog::answer_line(text).contains("\"sheet\"")
}

/// A record with its length and sum put right.
fn sealed(text: String) -> String {
    let (line, json) = text.split_once('\n').unwrap_or((&text, ""));
    [&line_for(line, json), "\n", json].concat()
}

/// The first line of a record as it should be for this JSON.
fn line_for(line: &str, json: &str) -> String {
    let mut parts: Vec<String> = line.split(' ').take(5).map(str::to_owned).collect();
    parts.push(json.len().to_string());
    let line = parts.join(" ");
    let sum = crc32fast::hash([&line, "\n", json].concat().as_bytes());
    format!("{line} {sum:08x}")
}

/// A backup with each job's length and sum put right.
fn resealed(text: String) -> String {
    let job = |line: &str| -> Option<String> {
        let (record, json) = line.strip_prefix("{\"record\":\"")?.split_once("\",\"job\":")?;
        let (json, end) = match json.strip_suffix("},") {
            Some(json) => (json, "},"),
            None => (json.strip_suffix('}')?, "}"),
        };
        let record = line_for(record, json);
        Some(["{\"record\":\"", &record, "\",\"job\":", json, end].concat())
    };
    let lines = text.split('\n').map(|line| job(line).unwrap_or_else(|| line.to_owned()));
    lines.collect::<Vec<_>>().join("\n")
}
