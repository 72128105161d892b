//! Parts that follow what they read: text, whole regions, and lists whose items stay.

use super::element::{El, Piece};
use crate::signal::Memo;
use crate::speech;
use leptos::prelude::*;
use std::cell::Cell;
use web_sys::Node;

/// Gives a text anew.
pub(super) type Say = dyn Fn() -> String;

/// Runs now, and again whenever something that it read has changed, for as long as the present
/// owner lives. What it makes is disposed of before it runs again.
pub(super) fn follow(run: Box<dyn Fn()>) {
    let effect = RenderEffect::new(move |_: Option<()>| run());
    StoredValue::new_local(effect);
}

/// Runs now, and again whenever something that it read has changed.
pub(crate) fn keep_up(run: impl Fn() + 'static) {
    follow(Box::new(run));
}

/// Runs `act` when something that `read` reads changes, not at once.
pub(crate) fn on_change(read: impl Fn() + 'static, act: impl Fn() + 'static) {
    let first = Cell::new(true);
    follow(Box::new(move || {
        read();
        if !first.replace(false) {
            untrack(&act);
        }
    }));
}

/// Text that follows what it reads.
pub(crate) fn live_text(text: impl Fn() -> String + 'static) -> Piece {
    says(Box::new(text))
}

fn says(text: Box<Say>) -> Piece {
    let node: Node = document().create_text_node("").into();
    let place = node.clone();
    follow(Box::new(move || place.set_text_content(Some(&speech::set_fractions(&text())))));
    Piece::of(node)
}

/// A region that is built anew whenever something that it read has changed.
pub(crate) fn live<P: Into<Piece>>(build: impl Fn() -> P + 'static) -> Piece {
    region(Box::new(move || build().into()))
}

/// A region that is there while something holds, and built anew only when it comes back.
pub(crate) fn when<P: Into<Piece>>(
    holds: impl Fn() -> bool + Send + Sync + 'static,
    build: impl Fn() -> P + 'static,
) -> Piece {
    let holds = flag(holds);
    region(Box::new(move || if holds.get() { untrack(|| build().into()) } else { Piece::NONE }))
}

/// A text that is worked out once for all that read it.
pub(crate) fn text(read: impl Fn() -> String + Send + Sync + 'static) -> Memo<String> {
    Memo::new(move |_| read())
}

/// A yes or no that is worked out once for all that read it.
pub(crate) fn flag(holds: impl Fn() -> bool + Send + Sync + 'static) -> Memo<bool> {
    Memo::new(move |_| holds())
}

/// Two empty texts mark where a region starts and ends.
fn marks() -> (Node, Node, Piece) {
    let mark = || -> Node { document().create_text_node("").into() };
    let (start, end) = (mark(), mark());
    let both = Piece::all([Piece::of(start.clone()), Piece::of(end.clone())]);
    (start, end, both)
}

fn region(build: Box<dyn Fn() -> Piece>) -> Piece {
    let (start, end, piece) = marks();
    follow(Box::new(move || {
        let Some(parent) = end.parent_node() else { return };
        while let Some(old) = start.next_sibling().filter(|old| *old != end) {
            let _ = parent.remove_child(&old);
        }
        if let Some(new) = build().into_node() {
            let _ = parent.insert_before(&new, Some(&end));
        }
    }));
    piece
}

/// Gives the keys of a list.
type Keys = dyn Fn() -> Vec<String>;
/// Builds the item of a key at a place.
type Build = dyn Fn(&str, usize) -> El;

/// An item that is there: its key, its owner and its element.
struct Item {
    key: String,
    owner: Owner,
    node: Node,
}

/// A list of elements by key: one that stays is left alone, with all that is open or focused in
/// it. `build` is given the key and the place.
pub(crate) fn each(
    keys: impl Fn() -> Vec<String> + 'static,
    build: impl Fn(&str, usize) -> El + 'static,
) -> Piece {
    list(Box::new(keys), Box::new(build))
}

fn list(keys: Box<Keys>, build: Box<Build>) -> Piece {
    let (_, end, piece) = marks();
    let outer = Owner::current().unwrap_or_default();
    let there = std::cell::RefCell::new(Vec::<Item>::new());
    follow(Box::new(move || {
        let keys = keys();
        let Some(parent) = end.parent_node() else { return };
        let mut before = std::mem::take(&mut *there.borrow_mut());
        let mut now: Vec<Item> = Vec::with_capacity(keys.len());
        for (at, key) in keys.into_iter().enumerate() {
            let item = match before.iter().position(|item| item.key == key) {
                Some(old) => before.remove(old),
                None => {
                    let owner = outer.child();
                    let node = untrack(|| owner.with(|| build(&key, at).node().clone().into()));
                    Item { key, owner, node }
                }
            };
            now.push(item);
        }
        for item in before {
            item.owner.cleanup();
            let _ = parent.remove_child(&item.node);
        }
        let mut next = end.clone();
        for item in now.iter().rev() {
            // Moving a node would take the focus from it.
            if item.node.next_sibling().as_ref() != Some(&next) {
                let _ = parent.insert_before(&item.node, Some(&next));
            }
            next = item.node.clone();
        }
        *there.borrow_mut() = now;
    }));
    piece
}
