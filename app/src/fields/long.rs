//! The lines of a long list, watched together: a key in one of hundreds of items says that one
//! anew and leaves the others alone.

use crate::elements::{El, keep_up};
use crate::question::Question;
use crate::speech;
use ledgerboard_core::wire::Node;
use leptos::prelude::StoredValue;
use std::cell::RefCell;
use std::rc::Rc;
use web_sys::Element;

/// Says an item, as it is and beside the others.
type Says = dyn Fn(&Node, &Node) -> String;

/// An item in words.
struct Line {
    at: usize,
    /// As it was said last.
    item: Node,
    /// Gives its words, of the whole and of itself.
    says: Box<Says>,
    summary: El,
    details: El,
    /// A fault stands in it.
    is_faulty: bool,
}

impl Line {
    fn say(&mut self, root: &Node, item: &Node) {
        let text = speech::set_fractions(&(self.says)(root, item));
        self.summary.node().set_text_content(Some(&text));
        self.item = item.clone();
    }
}

/// The lines of a list that stand in words.
#[derive(Clone)]
pub(super) struct Long {
    question: Question,
    list: Rc<str>,
    lines: Rc<RefCell<Vec<Line>>>,
}

/// Which lists of a draft have anything in them: a row may be asked only then.
fn lists(root: &Node) -> Vec<bool> {
    let Node::Tree(parts) = root else { return Vec::new() };
    parts.iter().map(|(_, part)| matches!(part, Node::List(items) if !items.is_empty())).collect()
}

impl Long {
    /// Follows a list for as long as the present owner lives.
    pub(super) fn follow(question: Question, list: String) -> Self {
        let this = Self { question, list: list.into(), lines: Rc::default() };
        let (words, faults) = (this.clone(), this.clone());
        let asked = RefCell::new(Vec::new());
        keep_up(move || {
            question.draft.with(|root| {
                let now = lists(root);
                let all = asked.replace(now.clone()) != now;
                let items = root.items(&words.list);
                for line in words.lines.borrow_mut().iter_mut() {
                    if let Some(item) = items.get(line.at).filter(|it| all || **it != line.item) {
                        line.say(root, item);
                    }
                }
            });
        });
        keep_up(move || {
            question.faulty.with(|paths| {
                let places: Vec<usize> = paths.iter().filter_map(|it| faults.place(it)).collect();
                for line in faults.lines.borrow_mut().iter_mut() {
                    line.mind(places.contains(&line.at));
                }
            });
        });
        this
    }

    /// Which of the items a fault stands in.
    fn place(&self, path: &str) -> Option<usize> {
        let (at, _) = path.strip_prefix(&*self.list)?.strip_prefix('.')?.split_once('.')?;
        at.parse().ok()
    }

    /// Says a line, and again when its item changes; opens it when a fault comes to stand in it.
    pub(super) fn watch(
        &self,
        at: usize,
        says: impl Fn(&Node, &Node) -> String + 'static,
        summary: &El,
        details: &El,
    ) {
        let (summary, details) = (summary.clone(), details.clone());
        let (item, says) = (Node::EMPTY, Box::new(says));
        let mut line = Line { at, item, says, summary, details, is_faulty: false };
        let node = line.details.node().clone();
        self.question.draft.with_untracked(|root| {
            if let Some(item) = root.items(&self.list).get(at) {
                line.say(root, item);
            }
        });
        let is_here = |path: &String| self.place(path) == Some(at);
        line.mind(self.question.faulty.with_untracked(|paths| paths.iter().any(is_here)));
        self.lines.borrow_mut().push(line);
        StoredValue::new_local(Watched { lines: self.lines.clone(), node });
    }
}

/// Takes its line out when the item that it stands for is drawn no more.
struct Watched {
    lines: Rc<RefCell<Vec<Line>>>,
    node: Element,
}

impl Drop for Watched {
    fn drop(&mut self) {
        self.lines.borrow_mut().retain(|line| *line.details.node() != self.node);
    }
}

impl Line {
    fn mind(&mut self, is_faulty: bool) {
        if is_faulty && !self.is_faulty {
            let _ = self.details.clone().attr("open", "");
        }
        self.is_faulty = is_faulty;
    }
}
