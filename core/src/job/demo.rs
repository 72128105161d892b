//! An invented job to look around in, from the first measure to the paint: house, crew and numbers
//! are made up.
//!
//! A constant: the same questions are worked each time it is opened. Never stored, never in a
//! backup.

use super::edit::{Edit, apply};
use super::mark::Mark;
use super::site::Job;
use super::stamp::Stamp;
use super::survey::opened_by;
use super::tie::Tie;
use super::turnover::{Seen, Who, Word, note_of, say_of};
use super::words as w;
use crate::catalog::{self, Entry, Link};
use crate::edition::{Basis, Electrical};
use crate::measure::Units;
use crate::wire::Node;
use crate::words::{Phrase, Voice};

mod told;
use told::{JOTS, TOLD};

/// The invented job's id. No stamp makes one as short.
pub const DEMO_ID: &str = "demo";

/// One mark of it.
struct Told {
    /// What differs from its calculator's sample, as an address; a list stands for the whole list.
    address: &'static str,
    title: &'static Phrase,
    spot: &'static Phrase,
    note: Option<&'static Phrase>,
    /// What it takes besides the figures that its rows name: its own input, the calculator whose
    /// last mark has the figure, the figure.
    takes: &'static [(&'static str, &'static str, &'static str)],
    /// What no address brings: evidence, made up as all of it.
    record: &'static [(&'static str, &'static str)],
    /// What it said on the sheets of before, and its verdict, where that was something else.
    was: Option<(&'static str, &'static str)>,
    /// Days after the job was made.
    day: i64,
}

/// The sheets of before were handed over after this day.
const HANDED_OVER: i64 = 9;

/// The job, in the language of `voice`. A mark whose question no longer works is left out; the
/// tests see to it that none is.
pub fn demo(voice: Voice) -> Job {
    let basis = Basis { electrical: Some(Electrical::E2020) };
    let mut job = Job {
        id: DEMO_ID.to_owned(),
        name: voice.phrase(&w::DEMO_NAME),
        place: voice.phrase(&w::DEMO_PLACE),
        basis,
        invented: true,
        ..Job::unnamed(&stamp(0, 0))
    };
    for (told, at) in TOLD.iter().zip(1..) {
        let stamp = stamp(told.day, at);
        if let Some(mark) = mark(&job, told, voice, &stamp) {
            put(&mut job, Edit::Keep(mark), &stamp);
        }
    }
    jots(&mut job);
    job
}

fn stamp(day: i64, minute: i64) -> Stamp {
    let at = 1_791_295_200 + 86_400 * day + 60 * minute;
    Stamp { at, zone: -300, device: DEMO_ID.to_owned(), random: minute.unsigned_abs() }
}

/// Refused only if a text were too long, and then it isn't shown.
fn put(job: &mut Job, edit: Edit, stamp: &Stamp) {
    drop(apply(job, edit, stamp));
}

/// The last mark of a calculator; of the same spot, if there is one.
fn last<'a>(job: &'a Job, spot: &str, is_it: &dyn Fn(&Entry) -> bool) -> Option<&'a Mark> {
    let known = |mark: &&Mark| catalog::find(&mark.calculator).is_some_and(is_it);
    let here = job.marks.iter().rev().filter(known);
    here.clone().find(|mark| mark.spot == spot).or_else(|| here.clone().next())
}

fn mark(job: &Job, told: &Told, voice: Voice, stamp: &Stamp) -> Option<Mark> {
    let link = Link::read(told.address).ok()?;
    let entry = catalog::find(&link.calculator)?;
    let spot = voice.phrase(told.spot);
    let mut input = entry.sample();
    for (path, leaf) in link.input.leaves() {
        let top = path.split('.').next().unwrap_or_default();
        match link.input.get(top) {
            Some(list @ Node::List(_)) => input.put(top, list.clone()),
            _ => input.put(&path, Node::text(&leaf.unwrap_or_default())),
        }
    }
    for (path, says) in told.record {
        input.put(path, Node::text(says));
    }
    let mut ties: Vec<Tie> = Vec::new();
    let mut take = |path: &str, source: Option<&Mark>, key: &str| {
        let Some(source) = source.filter(|_| ties.iter().all(|tie| tie.path != path)) else {
            return;
        };
        let kept = &source.kept;
        let figure = kept.figures.iter().find(|(name, _)| name == key).map(|(_, exact)| exact);
        let seen = figure.or((kept.figure == key).then_some(&kept.answer)).cloned();
        let Some(seen) = seen else { return };
        input.put(path, Node::text(&seen));
        ties.push(Tie {
            path: path.to_owned(),
            mark: source.id.clone(),
            key: key.to_owned(),
            seen,
        });
    };
    for (path, of, key) in told.takes {
        take(path, last(job, &spot, &|entry| entry.id == *of), key);
    }
    for row in entry.rows.iter().filter(|row| !row.room.is_empty()) {
        let is_it =
            |entry: &Entry| if row.of.is_empty() { entry.is_room } else { entry.id == row.of };
        let source = last(job, &spot, &is_it);
        // As it is to be, where it is to be another one.
        for key in [row.rather, row.room] {
            take(row.key, source, key);
        }
    }
    let needs = entry.disturbs(&input, Units::Customary).is_some();
    let behind = last(job, &spot, &|entry| entry.is_hold).filter(|_| needs);
    let behind = behind.map(|hold| hold.id.clone());
    let opened = behind.as_deref().and_then(|hold| opened_by(job, hold));
    let mark = Mark::new(entry, &input, link.units, job.basis, opened.as_ref(), stamp).ok()?;
    let note = told.note.map(|note| voice.phrase(note)).unwrap_or_default();
    Some(Mark { title: voice.phrase(told.title), spot, note, ties, behind, ..mark })
}

/// What was noted on it: ticks, prices, an owner's word, and the sheets of before.
fn jots(job: &mut Job) {
    let (until, then) = (stamp(HANDED_OVER, 0), stamp(HANDED_OVER, 2));
    let mut edits: Vec<Edit> = Vec::new();
    for (key, says) in JOTS {
        edits.push(Edit::Jot { key: (*key).to_owned(), says: (*says).to_owned() });
    }
    for (mark, told) in job.marks.iter().zip(TOLD) {
        let Some(entry) = catalog::find(&mark.calculator) else { continue };
        if entry.tells_places && told.day < HANDED_OVER {
            edits.push(say_of(&mark.id, Some(Word::Agree), &Seen::of(mark, None)));
        }
        for who in Who::ALL.into_iter().filter(|_| mark.at.at < until.at) {
            let (answer, verdict) = told.was.unwrap_or((&mark.kept.answer, &mark.kept.verdict));
            if who.is_for(entry, None) {
                edits.push(note_of(who, &mark.id, &[answer, verdict, &mark.title]));
            }
        }
    }
    for who in Who::ALL {
        edits.push(note_of(who, "", &["1", "", ""]));
    }
    put(job, Edit::Several(edits), &then);
}

#[cfg(test)]
mod tests;
