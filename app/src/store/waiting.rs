//! Edits of saved numbers that gave way to another question before they were saved. They wait until
//! a person goes on with them, or drops them.

use super::{Draft, TYPED, WAITING, local, write_typed};
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
    // What found no room yet is later than what is kept.
    let typed = TYPED.with_borrow(|typed| {
        typed.iter().find(|(_, it, _)| *it == name).and_then(|(.., node)| read(node))
    });
    typed.or_else(|| local::read(&name, read)).unwrap_or_default()
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

#[cfg(test)]
mod tests {
    use super::*;

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
