//! A backup: one plain JSON file with any number of jobs in it, for a person to keep elsewhere.
//!
//! ```text
//! {
//! "kind":"ledgerboard-backup",        what this is, always so
//! "schema":1,                         of the file; each job has its own, in its record
//! "by":"Ledgerboard 0.1.0",           what wrote it
//! "made":{"at":1791298800,"zone":-300},  seconds since 1970-01-01 00:00 UTC, minutes east of it
//! "device":"k3v09x2a",                which device wrote it, as it counts in the marks' clocks
//! "about":"…",                        what it is, for whoever opens it
//! "jobs":[
//! {"record":"ledgerboard 2 0 k3v09x2a 1791298800 512 1a2b3c4d","job":{…}},
//! …
//! ]
//! }
//! ```
//! `record` is the first line of the job's record and `job` its JSON, as [`record`] has them: the
//! line holds a checksum over both, so that a job that was changed is told from a whole one, and
//! the others are read all the same. Blanks and line breaks between parts don't matter, but with
//! each job on its own line one that is no JSON any more spoils no other.
//!
//! Reading takes nothing for granted: a file may be cut, damaged, newer, or made to do harm. It is
//! refused with the reason, or read, and nothing is changed before a [`Plan`] is carried out.
//! What opens a hold is never in a file: it is worked from the evidence each time.

mod lines;
mod plan;
mod problem;
mod scan;
mod undo;

pub use plan::{Beside, Change, Plan, Planned, Step, carry_out, plan};
pub use problem::BackupProblem;
pub use undo::{Back, Restored, Stays};

use self::lines::Item;
use super::mark::Mark;
use super::record::{self, Head, RecordProblem};
use super::site::Job;
use super::stamp::Moment;
use super::words as w;
use super::{DEMO_ID, site};
use crate::say;
use crate::wire::{Node, Parts};
use crate::words::{Text, Voice};

const KIND: &str = "ledgerboard-backup";

/// Of the file's own shape. Goes up with every change to it.
pub const SCHEMA: u32 = 1;

/// A hundred jobs of two hundred numbers come to a half of it.
pub const MOST_BYTES: usize = 32 * 1_024 * 1_024;

/// Jobs in one file, marks and traces in one job, links and parts of the input of one mark: past
/// anything that a crew has, and low enough that what is worked from them takes no time.
const MOST_JOBS: usize = 1_000;
const MOST_MARKS: usize = 2_000;
const MOST_TRACES: usize = 20_000;
const MOST_TIES: usize = 100;
const MOST_LEAVES: usize = 1_000;

/// What wrote a backup, and when.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Written {
    /// The program, with its version.
    pub by: String,
    /// When.
    pub made: Moment,
    /// The device's name, as it counts in clocks.
    pub device: String,
}

/// A job of a backup that can't be read. The others can.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Damaged {
    /// Its name as far as that can be read, else its place among the jobs, from 1.
    pub name: String,
    /// Why it can't be read.
    pub problem: RecordProblem,
}

impl Damaged {
    /// As a person reads it. A record in a store says the same otherwise: there it is to be kept.
    pub fn says(&self) -> Text {
        match &self.problem {
            RecordProblem::Newer(_) => say!(w::BACKUP_JOB_NEWER),
            RecordProblem::Foreign => say!(w::BACKUP_JOB_FOREIGN),
            RecordProblem::Torn { .. } | RecordProblem::Damaged => say!(w::BACKUP_JOB_DAMAGED),
            RecordProblem::Shape(details) => say!(w::BACKUP_JOB_SHAPE, details.as_str()),
        }
    }
}

/// A backup that was read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Backup {
    /// What wrote it.
    pub written: Written,
    /// Its whole jobs.
    pub jobs: Vec<Job>,
    /// Those that can't be read.
    pub damaged: Vec<Damaged>,
    /// The last whole job of a file that stops in the middle, by its name. What came after it is
    /// not in the file.
    pub cut_after: Option<String>,
}

/// Writes a backup of these jobs. An invented one is left out.
pub fn write<'a>(jobs: impl IntoIterator<Item = &'a Job>, written: &Written) -> String {
    let Written { by, made, device } = written;
    let mut top = Node::EMPTY;
    top.put("kind", Node::text(KIND));
    top.put("schema", Node::Whole(SCHEMA.into()));
    top.put("by", Node::text(by));
    top.put("made", made.stored());
    top.put("device", Node::text(device));
    top.put("about", Node::Text(Voice::default().phrase(&w::BACKUP_ABOUT)));
    let mut out = String::from("{\n");
    if let Node::Tree(parts) = top {
        for (key, part) in parts {
            let part = serde_json::to_string(&part).unwrap_or_default();
            out.extend(["\"", &key, "\":", &part, ",\n"]);
        }
    }
    out.push_str("\"jobs\":[");
    // A record's revision counts the writings of one store. A backup is no store.
    let head = Head::new(0, device, made.at);
    let own = jobs.into_iter().filter(|job| !is_invented(job));
    for (at, job) in own.enumerate() {
        let text = record::write(job, &head);
        // The line is digits, plain letters and blanks: nothing in it needs escaping.
        let (line, json) = text.split_once('\n').unwrap_or_default();
        let comma = if at == 0 { "\n" } else { ",\n" };
        out.extend([comma, "{\"record\":\"", line, "\",\"job\":", json, "}"]);
    }
    out.push_str("\n]\n}\n");
    out
}

/// Refuses a file by its size, before it is read into memory.
///
/// # Errors
/// [`BackupProblem::TooLarge`].
pub fn fits(bytes: u64) -> Result<(), BackupProblem> {
    let most = u64::try_from(MOST_BYTES).unwrap_or(u64::MAX);
    if bytes <= most { Ok(()) } else { Err(BackupProblem::TooLarge(bytes)) }
}

/// Reads a backup. Nothing is changed by it. Text around it, as a message may have, is passed by; of
/// one that stops in the middle the jobs before that are read.
///
/// Takes time and memory by the size of `text`, whatever is in it: at most some sixteen times it.
///
/// # Errors
/// The [`BackupProblem`]. A job that can't be read is no error: it is among [`Backup::damaged`].
pub fn read(text: &str) -> Result<Backup, BackupProblem> {
    fits(u64::try_from(text.len()).unwrap_or(u64::MAX))?;
    // Some editors put this sign before the first letter.
    let text = from_start(text.trim_start_matches('\u{feff}').trim_start());
    let (head, items, is_cut) = match whole(text) {
        Err(problem @ (BackupProblem::Broken(_) | BackupProblem::CutShort)) => {
            lines::apart(text).ok_or(problem)?
        }
        whole => whole.map(|(head, items)| (head, items, false))?,
    };
    let written = head_of(head)?;
    if items.len() > MOST_JOBS {
        return Err(BackupProblem::TooFull);
    }
    let (jobs, damaged) = (Vec::new(), Vec::new());
    let mut backup = Backup { written, jobs, damaged, cut_after: None };
    for (item, at) in items.into_iter().zip(1_usize..) {
        let name = item.as_ref().map(|item| name(item, at)).unwrap_or_default();
        let damaged = |problem| Damaged { name: name.clone(), problem };
        match item.and_then(|item| read_job(item).map_err(damaged)) {
            Ok(job) if backup.jobs.iter().any(|other| other.id == job.id) => {
                return Err(BackupProblem::Twice(name));
            }
            Ok(job) => backup.jobs.push(job),
            Err(damaged) => backup.damaged.push(damaged),
        }
    }
    if is_cut {
        let last = backup.jobs.last().ok_or(BackupProblem::CutShort)?;
        backup.cut_after = Some(Voice::default().say(&last.heading()));
    }
    Ok(backup)
}

/// From the bracket before the first thing that a backup says, where other text stands before it.
/// Looked for byte by byte: the library's search is more code than this is worth.
fn from_start(text: &str) -> &str {
    const FIRST: &[u8] = b"\"kind\"";
    if text.starts_with('{') {
        return text;
    }
    let at = text.as_bytes().windows(FIRST.len()).position(|part| part == FIRST);
    let before = at.and_then(|at| text.as_bytes().get(..at)).unwrap_or_default();
    let from = before.iter().rposition(|byte| *byte == b'{');
    from.and_then(|from| text.get(from..)).unwrap_or(text)
}

/// The file as JSON: its head, and its jobs unread.
fn whole(text: &str) -> Result<(Node, Vec<Item>), BackupProblem> {
    let text = scan::check(text)?;
    let mut top = Node::from_json(text).map_err(BackupProblem::Broken)?;
    let mut items = Vec::new();
    if let Node::Tree(parts) = &mut top
        && let Some((_, jobs)) = parts.iter_mut().find(|(key, _)| key == "jobs")
        && let Node::List(jobs) = jobs
    {
        items = std::mem::take(jobs);
    }
    Ok((top, items.into_iter().map(Ok).collect()))
}

fn head_of(head: Node) -> Result<Written, BackupProblem> {
    if head.get("kind") != Some(&Node::text(KIND)) {
        return Err(BackupProblem::Foreign);
    }
    match head.get("schema") {
        Some(Node::Whole(schema)) if *schema > SCHEMA.into() => return Err(BackupProblem::Newer),
        Some(Node::Whole(schema)) if *schema == i64::from(SCHEMA) => {}
        _ => return Err(BackupProblem::Shape("schema is a number that is not known".to_owned())),
    }
    if !matches!(head.get("jobs"), Some(Node::List(_))) {
        return Err(BackupProblem::Shape("jobs is not a list".to_owned()));
    }
    let read = Parts::read(head, |parts| {
        for known in ["kind", "schema", "about", "jobs"] {
            parts.node(known);
        }
        let by = parts.text("by");
        let made = parts.tree("made", Moment::restore);
        Written { by, made, device: parts.text("device") }
    });
    read.map_err(BackupProblem::Shape)
}

/// What to call a job that may not be readable.
fn name(item: &Node, at: usize) -> String {
    let name = match item.at("job.name") {
        Some(Node::Text(name)) if !name.trim().is_empty() => name.trim(),
        _ => return at.to_string(),
    };
    short(name)
}

fn short(name: &str) -> String {
    name.chars().take(super::LONGEST_NAME).collect()
}

fn read_job(item: Node) -> Result<Job, RecordProblem> {
    let (line, job) = Parts::read(item, |parts| (parts.text("record"), parts.node("job")))
        .map_err(RecordProblem::Shape)?;
    let json = serde_json::to_string(&job).unwrap_or_default();
    drop(job);
    let (_, job) = record::read(&[&line, "\n", &json].concat())?;
    if is_invented(&job) {
        return Err(RecordProblem::Foreign);
    }
    match fault(&job) {
        None => Ok(job),
        Some(fault) => Err(RecordProblem::Shape(fault.to_owned())),
    }
}

fn is_invented(job: &Job) -> bool {
    job.invented || job.id == DEMO_ID
}

/// What the one door would never have let into a job.
fn fault(job: &Job) -> Option<&'static str> {
    if job.marks.len() > MOST_MARKS || job.gone.len() > MOST_TRACES {
        return Some("more numbers than one job can have");
    }
    if site::check(&job.name, &job.place).is_err() || job.marks.iter().any(|it| it.check().is_err())
    {
        return Some("a name, title or note is too long");
    }
    let is_full = |mark: &Mark| mark.ties.len() > MOST_TIES || parts_of(&mark.input) > MOST_LEAVES;
    job.marks.iter().any(is_full).then_some("a number with more in it than any form has")
}

fn parts_of(node: &Node) -> usize {
    match node {
        Node::List(items) => 1 + items.iter().map(parts_of).sum::<usize>(),
        Node::Tree(parts) => 1 + parts.iter().map(|(_, part)| parts_of(part)).sum::<usize>(),
        _ => 1,
    }
}

/// How many marks were worked out after a moment, in seconds since 1970: what a backup made then
/// lacks.
pub fn marks_since(jobs: &[Job], at: i64) -> usize {
    let marks = jobs.iter().flat_map(|job| &job.marks);
    marks.filter(|mark| mark.at.at > at).count()
}

/// Numbers and days without a backup that are too much to lose with a phone.
const MANY: usize = 10;
const LONG: i64 = 14 * 86_400;

/// How many marks no backup has, once they are many or one of them is two weeks old. Times are in
/// seconds since 1970, `last` that of the last backup.
pub fn overdue(jobs: &[Job], last: Option<i64>, now: i64) -> Option<usize> {
    let last = last.unwrap_or(i64::MIN);
    let since = marks_since(jobs, last);
    let times = jobs.iter().flat_map(|job| &job.marks).map(|mark| mark.at.at);
    let is_old = times.filter(|at| *at > last).any(|at| now.saturating_sub(at) >= LONG);
    (since >= MANY || is_old).then_some(since)
}

#[cfg(test)]
mod tests;
