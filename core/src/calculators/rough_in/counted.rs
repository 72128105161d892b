//! Rows that nothing counts yet, because nobody can say which box, cable or hole they are: a new
//! one just added. The rest is worked without them, says how many there are, and is never within.

use super::graph::fault;
use super::input::Input;
use super::words as w;
use crate::sheet::Faults;
use crate::words::Phrase;

/// A plan without what isn't counted, and where the rest of it stood.
pub(super) struct Counted {
    pub(super) input: Input,
    boxes: Vec<usize>,
    cables: Vec<usize>,
    holes: Vec<usize>,
}

/// The rows of a list that count, by their places.
fn kept<T>(items: &[T], counts: fn(&T) -> bool) -> Vec<usize> {
    let mut all = Vec::new();
    for (at, item) in items.iter().enumerate() {
        if counts(item) {
            all.push(at);
        }
    }
    all
}

/// What of a plan counts; none where all of it does. A cable with one end said counts: it takes room
/// in that box.
pub(super) fn counted(input: &Input) -> Option<Counted> {
    let boxes = kept(&input.boxes, |it| !it.label.trim().is_empty());
    let cables = kept(&input.cables, |it| !it.from.trim().is_empty() || !it.to.trim().is_empty());
    let holes = kept(&input.holes, |it| !it.label.trim().is_empty());
    let all = [input.boxes.len(), input.cables.len(), input.holes.len()];
    if [boxes.len(), cables.len(), holes.len()] == all {
        return None;
    }
    let mut less = input.clone();
    less.boxes.retain(|it| !it.label.trim().is_empty());
    less.cables.retain(|it| !it.from.trim().is_empty() || !it.to.trim().is_empty());
    less.holes.retain(|it| !it.label.trim().is_empty());
    Some(Counted { input: less, boxes, cables, holes })
}

/// How many rows of a plan aren't counted: boxes, cables, holes.
pub(super) fn uncounted(input: &Input) -> [i64; 3] {
    counted(input).map_or([0; 3], |it| {
        let all = [input.boxes.len(), input.cables.len(), input.holes.len()];
        let counted = [it.boxes.len(), it.cables.len(), it.holes.len()];
        [0, 1, 2].map(|at| (all[at] - counted[at]) as i64)
    })
}

/// Each row that isn't counted, at the field that keeps it out.
pub(super) fn left_out(input: &Input) -> Faults {
    let mut faults = Faults::new();
    let Some(counted) = counted(input) else { return faults };
    let mut tell =
        |list, key, label: &'static Phrase, all, kept: &[usize], says: &'static Phrase| {
            for at in (0..all).filter(|at| !kept.contains(at)) {
                faults.push(fault(list, at, key, label, "", says.into()));
            }
        };
    tell("boxes", "label", &w::LABEL, input.boxes.len(), &counted.boxes, &w::UNLABELED);
    tell("cables", "from", &w::FROM, input.cables.len(), &counted.cables, &w::NO_END);
    tell("holes", "label", &w::LABEL, input.holes.len(), &counted.holes, &w::UNLABELED);
    faults
}

impl Counted {
    /// A fault of what counts, at the place where its row stands.
    pub(super) fn placed(&self, faults: Faults) -> Faults {
        let mut all = Faults::new();
        for mut each in faults {
            let mut parts = each.path.splitn(3, '.');
            if let (Some(list), Some(at), Some(key)) = (parts.next(), parts.next(), parts.next()) {
                let places = match list {
                    "boxes" => &self.boxes,
                    "cables" => &self.cables,
                    _ => &self.holes,
                };
                if let Some(at) = at.parse::<usize>().ok().and_then(|at| places.get(at)) {
                    each.path = [list, &at.to_string(), key].join(".");
                }
            }
            all.push(each);
        }
        all
    }
}
