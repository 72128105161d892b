//! A file in which something is damaged, read line by line: each job stands on a line of its own,
//! so that one spoilt line leaves the others whole.

use super::super::record::RecordProblem;
use super::{BackupProblem, Damaged, scan};
use crate::wire::Node;

/// A job that can be looked into, or what is wrong with its line.
pub(super) type Item = Result<Node, Damaged>;

const JOBS: &str = "\"jobs\":[\n";
const END: &str = "\n]\n}";

/// The head as a tree without jobs, and what each line holds. None for a file that isn't laid out
/// as ours are, or doesn't go to its end: half a file is refused.
pub(super) fn apart(text: &str) -> Option<(Node, Vec<Item>)> {
    let (head, jobs) = text.trim().strip_suffix(END)?.split_once(JOBS)?;
    let head = Node::from_json(&[head, "\"jobs\":[]}"].concat()).ok()?;
    Some((head, jobs.lines().zip(1_usize..).map(|(line, at)| item(line, at)).collect()))
}

fn item(line: &str, at: usize) -> Item {
    let line = line.trim_end().trim_end_matches(',');
    let whole =
        scan::check(line).and_then(|()| Node::from_json(line).map_err(BackupProblem::Broken));
    whole.map_err(|problem| {
        let details = match problem {
            BackupProblem::Broken(details) => details,
            _ => "brackets or quotes that don't fit".to_owned(),
        };
        Damaged { name: name(line, at), problem: RecordProblem::Shape(details) }
    })
}

/// What stands where a name should. It may be cut at a sign that was escaped: it only has to be
/// known again.
fn name(line: &str, at: usize) -> String {
    let name = line.split_once("\"name\":\"").and_then(|(_, rest)| rest.split_once('"'));
    match name {
        Some((name, _)) if !name.trim().is_empty() => super::short(name),
        _ => at.to_string(),
    }
}
