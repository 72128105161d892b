//! The form in which a job is stored: one line of envelope, then JSON, the same bytes in every
//! store and in a backup.
//!
//! ```text
//! ledgerboard <schema> <revision> <writer> <saved_at> <length> <crc32>
//! {"id":…}
//! ```
//! The length is that of the JSON in bytes. The checksum covers the line before it and the
//! JSON, so that no byte of a record can change unseen. This line stays as it is in every later
//! schema: an old reader can always tell a whole record that is too new from a damaged one.
//!
//! Any change to the JSON's shape is a new schema, a new optional field too. So a field that is
//! not known can't be there by right, and it is refused: to leave it out would lose it at the
//! next write.

use super::crc::crc32;
use super::site::Job;
use super::words as w;
use crate::say;
use crate::wire::{Node, Parts};
use crate::words::Text;

/// Of the JSON's shape. Goes up with every change to it.
pub const SCHEMA: u32 = 3;

/// From each schema to the one after it, the first from 1 to 2. A step adds what is new at its
/// blank and changes nothing else; what is not of the old shape it leaves for the reader to refuse.
const STEPS: [fn(Node) -> Node; (SCHEMA - 1) as usize] = [marks_get_links, job_gets_jots];

/// A job's tree of an older schema in the shape of this one.
pub(super) fn stepped(job: Node, schema: u32) -> Node {
    let steps = STEPS.iter().zip(1..).filter(|(_, from)| *from >= schema);
    steps.fold(job, |job, (step, _)| step(job))
}

/// Schema 2: a mark has links.
fn marks_get_links(mut job: Node) -> Node {
    for at in 0..job.items("marks").len() {
        let mark = ["marks.", &at.to_string(), "."].concat();
        let has = |key: &str| job.at(&[mark.as_str(), key].concat()).is_some();
        // A record of the old shape has neither; one that does is refused as it was then.
        let ties = if has("ties") || has("behind") { Node::EMPTY } else { Node::List(Vec::new()) };
        job.put(&[mark.as_str(), "ties"].concat(), ties);
    }
    job
}

/// Schema 3: a job has words under names.
fn job_gets_jots(mut job: Node) -> Node {
    // A record of the old shape has none; one that does is refused as it was then.
    let jots = if job.get("jots").is_some() { Node::EMPTY } else { Node::List(Vec::new()) };
    job.put("jots", jots);
    job
}

const FORMAT: &str = "ledgerboard";

/// Which writing of a job this is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Head {
    /// The schema that it was read as; a record is always written as [`SCHEMA`].
    pub schema: u32,
    /// Goes up with each writing of the job.
    pub revision: u64,
    /// Which device, or which page of it, wrote it: letters, digits, `-` and `_`.
    pub writer: String,
    /// Seconds since 1970-01-01 00:00 UTC.
    pub saved_at: i64,
}

impl Head {
    /// A head for a record that is about to be written. A character of `writer` that has no place
    /// there becomes `-`, since it would break the line.
    pub fn new(revision: u64, writer: &str, saved_at: i64) -> Self {
        let plain = |c: char| if c.is_ascii_alphanumeric() || c == '_' { c } else { '-' };
        let writer: String = writer.chars().map(plain).collect();
        let writer = if writer.is_empty() { "-".to_owned() } else { writer };
        Self { schema: SCHEMA, revision, writer, saved_at }
    }

    /// The line up to its checksum.
    fn line(&self, length: usize) -> String {
        let Self { schema, revision, writer, saved_at } = self;
        [
            FORMAT,
            &schema.to_string(),
            &revision.to_string(),
            writer,
            &saved_at.to_string(),
            &length.to_string(),
        ]
        .join(" ")
    }
}

/// Why a record can't be read. Its bytes are to be left alone and offered for export.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RecordProblem {
    /// Not a record of ours.
    Foreign,
    /// Cut off, or run together with something else.
    Torn {
        /// How many bytes were written.
        written: usize,
        /// How many are there.
        found: usize,
    },
    /// Changed after it was written.
    Damaged,
    /// Whole, and of a schema that came later.
    Newer(u32),
    /// Whole, and not the shape that its schema has.
    Shape(String),
}

impl RecordProblem {
    /// As a person reads it.
    pub fn says(&self) -> Text {
        let count = |of: usize| i64::try_from(of).unwrap_or(i64::MAX);
        match self {
            Self::Foreign => say!(w::FOREIGN),
            Self::Torn { written, found } => say!(w::TORN, count(*written), count(*found)),
            Self::Damaged => say!(w::DAMAGED),
            Self::Newer(_) => say!(w::NEWER),
            Self::Shape(details) => say!(w::SHAPE, details.as_str()),
        }
    }
}

/// A job as it is stored. `head.schema` is taken as [`SCHEMA`].
pub fn write(job: &Job, head: &Head) -> String {
    let head = Head::new(head.revision, &head.writer, head.saved_at);
    // Names are text and no number has a point, so there is nothing here that JSON can't hold.
    let json = serde_json::to_string(&job.stored()).unwrap_or_default();
    seal(&head, &json)
}

pub(super) fn seal(head: &Head, json: &str) -> String {
    let line = head.line(json.len());
    let sum = sum(&line, json);
    [line.as_str(), " ", &sum, "\n", json].concat()
}

/// A whole record of another schema, which only a later version could have written.
#[cfg(test)]
pub(super) fn sealed_as(schema: u32, json: &str) -> String {
    seal(&Head { schema, ..Head::new(0, "phone", 0) }, json)
}

/// Eight hexadecimal digits over the line and the JSON.
fn sum(line: &str, json: &str) -> String {
    let sum = crc32(&[line.as_bytes(), b"\n", json.as_bytes()]);
    (0..8).rev().filter_map(|place| char::from_digit(sum >> (4 * place) & 15, 16)).collect()
}

/// Checks the envelope and leaves the JSON unread: enough to tell which of two copies is whole
/// and later.
///
/// # Errors
/// [`RecordProblem::Foreign`], [`RecordProblem::Torn`] or [`RecordProblem::Damaged`].
pub fn open(text: &str) -> Result<(Head, &str), RecordProblem> {
    let (line, json) = text.split_once('\n').unwrap_or((text, ""));
    let mut parts = line.split(' ');
    if parts.next() != Some(FORMAT) {
        return Err(RecordProblem::Foreign);
    }
    let mut part = || parts.next().ok_or(RecordProblem::Damaged);
    let head = Head {
        schema: number(part()?)?,
        revision: number(part()?)?,
        writer: part()?.to_owned(),
        saved_at: number(part()?)?,
    };
    let written: usize = number(part()?)?;
    let found = json.len();
    if written != found {
        return Err(RecordProblem::Torn { written, found });
    }
    // Sealed again and compared, so that a number written another way (`+1`, `01`) or a sum in
    // capitals doesn't pass for what was written.
    if seal(&head, json) == text { Ok((head, json)) } else { Err(RecordProblem::Damaged) }
}

/// Which writing of a job a damaged record says that it is. Nothing proves it.
pub fn claimed_revision(text: &str) -> Option<u64> {
    let mut parts = text.lines().next()?.split(' ');
    let is_ours = parts.next() == Some(FORMAT) && parts.next()?.parse::<u32>().is_ok();
    parts.next()?.parse().ok().filter(|_| is_ours)
}

fn number<T: std::str::FromStr>(text: &str) -> Result<T, RecordProblem> {
    text.parse().map_err(|_| RecordProblem::Damaged)
}

/// Reads a stored job. Never writes, never repairs: what it gives back is what was kept.
///
/// # Errors
/// The [`RecordProblem`].
pub fn read(text: &str) -> Result<(Head, Job), RecordProblem> {
    let (head, json) = open(text)?;
    if head.schema > SCHEMA {
        return Err(RecordProblem::Newer(head.schema));
    }
    if head.schema == 0 {
        return Err(RecordProblem::Shape("no schema has this number".to_owned()));
    }
    let node = Node::from_json(json).map_err(RecordProblem::Shape)?;
    let node = stepped(node, head.schema);
    let job = Parts::read(node, Job::restore).map_err(RecordProblem::Shape)?;
    if job.in_order() {
        Ok((head, job))
    } else {
        Err(RecordProblem::Shape("ids that can't be used, out of order or twice".to_owned()))
    }
}

#[cfg(test)]
mod tests;
