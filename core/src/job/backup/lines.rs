//! A file in which something is damaged, read line by line: each job stands on a line of its own,
//! so that one spoilt line leaves the others whole.

use super::super::record::RecordProblem;
use super::{BackupProblem, Damaged, scan};
use crate::wire::Node;

/// A job that can be looked into, or what is wrong with its line.
pub(super) type Item = Result<Node, Damaged>;

/// The head as a tree without jobs, what each line holds, and whether the file stops in the middle.
/// Of one that does, a last line that isn't whole is left out. None for a file that isn't laid out
/// as ours are.
pub(super) fn apart(text: &str) -> Option<(Node, Vec<Item>, bool)> {
    let mut lines = text.lines();
    let mut head = String::new();
    for line in lines.by_ref().take_while(|line| *line != "\"jobs\":[") {
        head.push_str(line);
    }
    head.push_str("\"jobs\":[]}");
    let head = Node::from_json(&head).ok()?;
    let mut items: Vec<Item> = Vec::new();
    for line in lines {
        if line == "]" {
            return Some((head, items, false));
        }
        items.push(item(line, items.len() + 1));
    }
    // The bracket that is lost of a line may be all that is: the job's own checksum tells.
    let last = text.lines().next_back().unwrap_or_default();
    if items.last().is_some_and(Result::is_err) {
        let number = items.len();
        items.pop();
        items.extend(Some(item(&[last, "}"].concat(), number)).filter(Result::is_ok));
    }
    Some((head, items, true))
}

fn item(line: &str, at: usize) -> Item {
    let line = line.trim_end().trim_end_matches(',');
    let whole = scan::check(line).and_then(|it| Node::from_json(it).map_err(BackupProblem::Broken));
    whole.map_err(|problem| {
        let details = match problem {
            BackupProblem::Broken(details) => details,
            _ => "brackets or quotes that don't fit".to_owned(),
        };
        Damaged { name: name(line, at), problem: RecordProblem::Shape(details) }
    })
}

/// What stands where a name should. It may be cut at a sign that was escaped: it only has to be
/// known again. Looked for byte by byte: the library's search is more code than this is worth.
fn name(line: &str, at: usize) -> String {
    const KEY: &[u8] = b"\"name\":\"";
    let from = line.as_bytes().windows(KEY.len()).position(|part| part == KEY);
    let rest = from.and_then(|from| line.get(from + KEY.len()..)).unwrap_or_default();
    match rest.split('"').next().unwrap_or_default() {
        name if !name.trim().is_empty() => super::short(name),
        _ => at.to_string(),
    }
}
