//! Edits of saved numbers that gave way to another question before they were saved. They wait until
//! a person goes on with them, or drops them.

use super::{
    Against, Draft, MarkPlace, TYPED, WAITING, draft_name, local, save_draft, write_typed,
};
use ledgerboard_core::catalog::{self, Entry};
use ledgerboard_core::wire::Node;

fn name(calculator: &str) -> String {
    [WAITING, calculator].concat()
}

/// All or none: what can't be read whole is set aside as it is.
fn read(node: &Node) -> Option<Vec<Draft>> {
    node.get("all")?;
    node.items("all").iter().map(Draft::read).collect()
}

/// What waits in a calculator, the one that came last behind the others.
pub(crate) fn waiting(calculator: &str) -> Vec<Draft> {
    let name = name(calculator);
    not_written(&name, read).or_else(|| local::read(&name, read)).unwrap_or_default()
}

/// What found no room yet is later than what is kept.
fn not_written<T>(name: &str, read: fn(&Node) -> Option<T>) -> Option<T> {
    TYPED.with_borrow(|typed| {
        typed.iter().find(|(_, it, _)| it == name).and_then(|(.., node)| read(node))
    })
}

/// What is there, as far as it can be read. To look at it touches nothing.
pub(super) fn look<T>(name: &str, read: fn(&Node) -> Option<T>) -> Option<T> {
    not_written(name, read).or_else(|| read(&Node::from_json(&local::text(name)?).ok()?))
}

/// An edit of a saved number that is not saved: one that waits, or what was typed last.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Unsaved {
    /// Its calculator.
    calculator: &'static str,
    draft: Draft,
}

/// All of them, of all calculators.
pub(crate) fn unsaved() -> Vec<Unsaved> {
    let mut all = Vec::new();
    for entry in catalog::ALL {
        let waiting = look(&name(entry.id), read).unwrap_or_default();
        add(&mut all, entry, waiting, look(&draft_name(entry.id), Draft::read));
    }
    all
}

/// Of what waits in one calculator and what was typed last in it, the edits, each once.
fn add(all: &mut Vec<Unsaved>, entry: &'static Entry, waiting: Vec<Draft>, last: Option<Draft>) {
    for draft in waiting.into_iter().chain(last) {
        let one = Unsaved { calculator: entry.id, draft };
        if one.draft.is_edit(entry) && !all.contains(&one) {
            all.push(one);
        }
    }
}

/// How many of them are edits of the numbers of one job, or of one of its numbers, that say something
/// else than is saved. `saved` gives what a number says; none where it is not here.
pub(crate) fn edits_of(
    all: &[Unsaved],
    job: &str,
    mark: Option<&str>,
    saved: impl Fn(&MarkPlace) -> Option<Node>,
) -> i64 {
    let mut count = 0;
    for Unsaved { calculator, draft } in all {
        let of = |place: &&MarkPlace| place.job == job && mark.is_none_or(|it| place.mark == it);
        let Some(place) = draft.mark.as_ref().filter(of) else { continue };
        let Some((entry, saved)) = catalog::find(calculator).zip(saved(place)) else { continue };
        count += i64::from(draft.against(entry, Some(&saved)) != Against::Same);
    }
    count
}

fn keep(calculator: &str, all: &[Draft]) {
    let mut node = Node::EMPTY;
    node.put("all", Node::List(all.iter().map(Draft::write).collect()));
    write_typed(name(calculator), node);
}

/// Lets an edit wait.
pub(crate) fn let_wait(calculator: &str, draft: Draft) {
    let mut all = waiting(calculator);
    if !all.contains(&draft) {
        all.push(draft);
        keep(calculator, &all);
    }
}

/// Takes an edit off what waits.
pub(crate) fn wait_no_more(calculator: &str, draft: &Draft) {
    let all = waiting(calculator);
    let left: Vec<Draft> = all.iter().filter(|it| *it != draft).cloned().collect();
    if left.len() < all.len() {
        keep(calculator, &left);
    }
}

/// Edits of a number that goes to another job go with it: those that wait, and what was typed last.
pub(crate) fn move_edits(calculator: &str, from: &MarkPlace, to: &str) {
    if let Some(all) = moved(&waiting(calculator), from, to) {
        keep(calculator, &all);
    }
    let last = look(&draft_name(calculator), Draft::read);
    if let Some(draft) = last.and_then(|draft| draft.moved(from, to)) {
        save_draft(calculator, &draft);
    }
}

/// All of them with those of the number at `from` in another job, each once; none where there are none.
fn moved(all: &[Draft], from: &MarkPlace, to: &str) -> Option<Vec<Draft>> {
    let mut is_any = false;
    let mut left: Vec<Draft> = Vec::with_capacity(all.len());
    for draft in all {
        let moved = draft.moved(from, to);
        is_any |= moved.is_some();
        let draft = moved.unwrap_or_else(|| draft.clone());
        if !left.contains(&draft) {
            left.push(draft);
        }
    }
    is_any.then_some(left)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::Links;
    use ledgerboard_core::edition::Basis;
    use ledgerboard_core::fields::row_at;
    use ledgerboard_core::measure::Units;

    #[test]
    fn a_number_says_that_an_edit_waits_until_that_is_saved_or_dropped_or_the_number_is_gone() {
        // Any whose items have counts.
        let has_counts = |it: &&Entry| row_at(it.rows, "cables.0.count").is_some();
        let entry = catalog::ALL.iter().find(has_counts).unwrap();
        let (units, basis) = (Units::Customary, Basis::default());
        let saved = entry.canonical(&entry.sample(), units).unwrap();
        let with = |count: &str| {
            let mut input = entry.sample();
            input.put("cables.0.count", Node::text(count));
            input
        };
        let draft = |job: &str, mark: &str, input: Node| Draft {
            input,
            units,
            basis,
            mark: Some(MarkPlace { job: job.to_owned(), mark: mark.to_owned() }),
            links: Links::default(),
            sampled: None,
            saved: Some(saved.clone()),
        };
        let of = |waiting: &[Draft], last: Option<Draft>| {
            let mut all = Vec::new();
            add(&mut all, entry, waiting.to_vec(), last);
            all
        };
        let count = |all: &[Unsaved], job: &str, mark: Option<&str>, now: Option<&Node>| {
            edits_of(all, job, mark, |_| now.cloned())
        };
        let (three, four) = (draft("a", "b", with("3")), draft("a", "b", with("4")));
        let other = draft("a", "c", with("3"));
        let all = of(&[three.clone(), other.clone()], Some(four.clone()));
        let here = Some(&saved);
        assert_eq!(count(&all, "a", Some("b"), here), 2);
        assert_eq!(count(&all, "a", Some("c"), here), 1);
        assert_eq!(count(&all, "a", None, here), 3);
        assert_eq!(count(&all, "other", None, here), 0);
        // Removed.
        assert_eq!(count(&all, "a", None, None), 0);
        // Dropped: the one that was typed last stays.
        assert_eq!(count(&of(&[], Some(four.clone())), "a", Some("b"), here), 1);
        // Saved: the number says the same now.
        let now = entry.canonical(&with("4"), units).unwrap();
        assert_eq!(count(&of(&[], Some(four.clone())), "a", Some("b"), Some(&now)), 0);
        // What waits and stands in the draft as well is one.
        assert_eq!(count(&of(std::slice::from_ref(&four), Some(four.clone())), "a", None, here), 1);
        // Nobody edited it; half typed is an edit.
        let last = |input| of(&[], Some(draft("a", "b", input)));
        assert_eq!(count(&last(entry.sample()), "a", None, here), 0);
        assert_eq!(count(&last(entry.sample()), "a", None, Some(&now)), 0);
        assert_eq!(count(&last(with("3 /")), "a", None, here), 1);
    }

    #[test]
    fn edits_go_with_a_number_to_another_job_and_come_back_with_it() {
        let place =
            |job: &str, mark: &str| MarkPlace { job: job.to_owned(), mark: mark.to_owned() };
        let draft = |job: &str, mark: &str, takes_from: &str, says: &str| Draft {
            input: Node::text(says),
            units: Units::Customary,
            basis: Basis::default(),
            mark: Some(place(job, mark)),
            links: Links::of(takes_from, Vec::new(), None),
            sampled: None,
            saved: None,
        };
        let loose = Draft { mark: None, ..draft("a", "b", "", "0") };
        let all = [
            draft("a", "b", "a", "1"),
            draft("a", "b", "", "2"),
            draft("a", "c", "a", "1"),
            draft("d", "b", "d", "3"),
            loose.clone(),
        ];
        let there = moved(&all, &place("a", "b"), "d").unwrap();
        let want = [
            draft("d", "b", "d", "1"),
            draft("d", "b", "", "2"),
            draft("a", "c", "a", "1"),
            draft("d", "b", "d", "3"),
            loose,
        ];
        assert_eq!(there, want);
        // Another of the same name that was there comes along: nothing is lost.
        let back = moved(&there, &place("d", "b"), "a").unwrap();
        assert_eq!(back[..3], all[..3]);
        assert_eq!(back[3], draft("a", "b", "a", "3"));
        assert_eq!(moved(&all, &place("a", "e"), "d"), None);
        // What comes to the same as one that is there is one.
        let twice = [draft("a", "b", "a", "1"), draft("d", "b", "d", "1")];
        assert_eq!(moved(&twice, &place("a", "b"), "d").unwrap().len(), 1);
    }

    #[test]
    fn what_waits_is_read_whole_or_not_at_all() {
        for (text, count) in [
            (r#"{"all":[]}"#, Some(0)),
            (r#"{"all":[{"units":"customary"}]}"#, None),
            (r#"{}"#, None),
            ("[]", None),
        ] {
            let node = Node::from_json(text).unwrap();
            assert_eq!(read(&node).map(|all| all.len()), count, "{text}");
        }
    }
}
