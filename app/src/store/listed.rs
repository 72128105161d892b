//! A line for each job, kept apart: it is shown while the jobs themselves are still being read. It
//! is made anew from them and never taken for them.

use super::{LIST, local};
use ledgerboard_core::job::Job;
use ledgerboard_core::wire::Node;

/// What a list says of one job.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Listed {
    pub(crate) id: String,
    /// As it was typed; may be empty.
    pub(crate) name: String,
    /// How many numbers it has.
    pub(crate) count: i64,
    /// When it was worked on last, in seconds since 1970.
    pub(crate) last: i64,
    pub(crate) is_put_away: bool,
}

impl Listed {
    /// Of a job that has been read.
    pub(crate) fn of(job: &Job) -> Self {
        Self {
            id: job.id.clone(),
            name: job.name.clone(),
            count: i64::try_from(job.marks.len()).unwrap_or(i64::MAX),
            last: job.last_worked(),
            is_put_away: job.is_put_away(),
        }
    }

    fn read(node: &Node) -> Option<Self> {
        let text = |key: &str| node.get(key).and_then(Node::leaf);
        Some(Self {
            id: text("id")?,
            name: text("name")?,
            count: text("count")?.parse().ok()?,
            last: text("last")?.parse().ok()?,
            is_put_away: text("away").is_some(),
        })
    }

    fn write(&self) -> Node {
        let mut node = Node::EMPTY;
        node.put("id", Node::text(&self.id));
        node.put("name", Node::text(&self.name));
        node.put("count", Node::text(&self.count.to_string()));
        node.put("last", Node::text(&self.last.to_string()));
        if self.is_put_away {
            node.put("away", Node::text("yes"));
        }
        node
    }
}

/// The jobs worked on last come first. Put in place one by one: a sort from the library is more
/// code than a list is worth.
pub(crate) fn newest_first(all: Vec<Listed>) -> Vec<Listed> {
    let mut order: Vec<Listed> = Vec::with_capacity(all.len());
    for one in all {
        let place = order.partition_point(|other| other.last >= one.last);
        order.insert(place, one);
    }
    order
}

/// The lines of the last time. One that can't be read is nothing lost.
pub(super) fn read() -> Vec<Listed> {
    let node = local::text(LIST).and_then(|text| Node::from_json(&text).ok());
    let lines = node.as_ref().map(|node| node.items("jobs")).unwrap_or_default();
    lines.iter().filter_map(Listed::read).collect()
}

/// Keeps the lines for the next time; where there is no room, the next start waits a little longer.
pub(super) fn write(lines: &[Listed]) {
    if lines.is_empty() {
        return local::remove(LIST);
    }
    let mut node = Node::EMPTY;
    node.put("jobs", Node::List(lines.iter().map(Listed::write).collect()));
    let _ = local::write_node(LIST, &node);
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(id: &str, last: i64) -> Listed {
        let (id, name) = (id.to_owned(), format!("House \"{id}\""));
        Listed { id, name, count: 200, last, is_put_away: last % 2 == 1 }
    }

    #[test]
    fn a_line_is_read_as_it_was_written() {
        for line in [line("a", 1_791_295_200), line("b", -1)] {
            let text = serde_json::to_string(&line.write()).unwrap();
            assert_eq!(Listed::read(&Node::from_json(&text).unwrap()), Some(line));
        }
        assert_eq!(Listed::read(&Node::EMPTY), None);
    }

    #[test]
    fn the_job_worked_on_last_comes_first() {
        let order = newest_first(vec![line("a", 2), line("b", 3), line("c", 2), line("d", 9)]);
        let ids: String = order.iter().map(|line| line.id.as_str()).collect();
        assert_eq!(ids, "dbac");
    }
}
