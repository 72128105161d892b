//! Links between the marks of a job: which input takes its value from which figure, and whether
//! that figure still says what it said.
//!
//! An input holds a literal; the link beside it says where the literal came from. Nothing is ever
//! written through a link by itself: a figure that moved is shown beside the value that was
//! taken, to be taken or kept.

use super::mark::Mark;
use crate::wire::Node;

/// One input that takes its value from another mark of the same job.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tie {
    /// The input, by its path in the mark's tree.
    pub path: String,
    /// The mark that it comes from, by id.
    pub mark: String,
    /// The key of that mark's figure.
    pub key: String,
    /// The figure's exact text when it was taken; the literal that the input holds.
    pub seen: String,
}

impl Tie {
    /// Whether the input still holds what was taken. Typing over it cuts the link.
    pub fn holds(&self, input: &Node) -> bool {
        input.at(&self.path).and_then(Node::leaf).as_deref() == Some(&*self.seen)
    }
}

impl Mark {
    /// The link of one input.
    pub fn tie(&self, path: &str) -> Option<&Tie> {
        self.ties.iter().find(|tie| tie.path == path)
    }

    /// The marks that this one draws on: its links' sources and its hold.
    pub(super) fn draws_on(&self) -> impl Iterator<Item = &str> {
        self.ties.iter().map(|tie| &*tie.mark).chain(self.behind.as_deref())
    }

    /// Cuts every link whose input no longer holds what was taken, and puts the rest in order,
    /// one a path.
    pub(super) fn tidy_ties(&mut self) {
        let mut ties: Vec<Tie> = Vec::with_capacity(self.ties.len());
        for tie in std::mem::take(&mut self.ties) {
            if !tie.holds(&self.input) {
                continue;
            }
            // Put in place one by one: a library's sort is more code than a few links are worth.
            let at = ties.partition_point(|other| other.path < tie.path);
            match ties.get_mut(at) {
                Some(same) if same.path == tie.path => *same = tie,
                _ => ties.insert(at, tie),
            }
        }
        self.ties = ties;
    }
}

/// The way from a mark back to itself along what it draws on, by ids, first and last the same;
/// none where there is none. `changed` stands for the mark of its id.
pub(super) fn circle(marks: &[Mark], changed: &Mark) -> Option<Vec<String>> {
    // Depth first, each mark once: a way back that passes a mark which was left without finding
    // one can't exist.
    fn walk<'a>(
        of: &dyn Fn(&str) -> Option<&'a Mark>,
        at: &'a Mark,
        goal: &str,
        seen: &mut Vec<&'a str>,
        way: &mut Vec<String>,
    ) -> bool {
        for next in at.draws_on() {
            if next == goal {
                way.push(goal.to_owned());
                return true;
            }
            if seen.contains(&next) {
                continue;
            }
            let Some(mark) = of(next) else { continue };
            seen.push(next);
            way.push(next.to_owned());
            if walk(of, mark, goal, seen, way) {
                return true;
            }
            way.pop();
        }
        false
    }
    let of = |id: &str| marks.iter().find(|mark| mark.id == id);
    let mut way = vec![changed.id.clone()];
    walk(&of, changed, &changed.id, &mut Vec::new(), &mut way).then_some(way)
}
