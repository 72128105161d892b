//! The browser's local storage, asked first whether it is there at all: the library that reads
//! and writes it panics where storage is blocked.

use super::{Trouble, Written};
use gloo_storage::{LocalStorage, Storage};
use ledgerboard_core::wire::Node;
use leptos::prelude::window;

/// Whether anything can be kept.
///
/// # Errors
/// [`Trouble::Blocked`].
pub(super) fn probe() -> Written {
    match window().local_storage() {
        Ok(Some(_)) => Ok(()),
        _ => Err(Trouble::Blocked),
    }
}

/// Every record whose name starts so. Names of other pages on the same host are passed by.
pub(super) fn all(prefix: &str) -> Vec<(String, String)> {
    if probe().is_err() {
        return Vec::new();
    }
    let storage = LocalStorage::raw();
    let count = storage.length().unwrap_or(0);
    let names = (0..count).filter_map(|at| storage.key(at).ok().flatten());
    let ours = names.filter(|name| name.starts_with(prefix));
    ours.filter_map(|name| text(&name).map(|text| (name, text))).collect()
}

/// One record, as it was written.
pub(super) fn text(name: &str) -> Option<String> {
    probe().ok()?;
    LocalStorage::raw().get_item(name).ok().flatten()
}

/// One record that is a tree.
pub(super) fn node(name: &str) -> Option<Node> {
    probe().ok()?;
    text(name).and_then(|text| Node::from_json(&text).ok())
}

/// Writes one record and reads it back.
///
/// # Errors
/// [`Trouble::Full`] where the browser refuses it, [`Trouble::Differs`] where it comes back
/// changed.
pub(super) fn write(name: &str, text: &str) -> Written {
    probe()?;
    LocalStorage::raw().set_item(name, text).map_err(|_| Trouble::Full)?;
    if self::text(name).as_deref() == Some(text) { Ok(()) } else { Err(Trouble::Differs) }
}

/// Writes a tree and reads it back.
///
/// # Errors
/// As [`fn@write`].
pub(super) fn write_node(name: &str, node: &Node) -> Written {
    probe()?;
    LocalStorage::set(name, node).map_err(|_| Trouble::Full)?;
    if self::node(name).as_ref() == Some(node) { Ok(()) } else { Err(Trouble::Differs) }
}

/// Removes one record.
pub(super) fn remove(name: &str) {
    if probe().is_ok() {
        LocalStorage::delete(name);
    }
}
