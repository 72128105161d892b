//! The browser's local storage, asked first whether it is there at all: the library that reads
//! and writes it panics where storage is blocked.

use super::{Trouble, Written, aside, why};
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

/// The names of all records that start so. Those of other pages on the same host are passed by.
pub(super) fn names(prefix: &str) -> Vec<String> {
    if probe().is_err() {
        return Vec::new();
    }
    let storage = LocalStorage::raw();
    let count = storage.length().unwrap_or(0);
    let names = (0..count).filter_map(|at| storage.key(at).ok().flatten());
    names.filter(|name| name.starts_with(prefix)).collect()
}

/// Every record whose name starts so.
pub(super) fn all(prefix: &str) -> Vec<(String, String)> {
    let names = names(prefix).into_iter();
    names.filter_map(|name| text(&name).map(|text| (name, text))).collect()
}

/// How much is there, other pages' records too.
pub(super) fn used() -> usize {
    all("").iter().map(|(name, text)| name.len() + text.len()).sum()
}

/// One record, as it was written.
pub(super) fn text(name: &str) -> Option<String> {
    probe().ok()?;
    LocalStorage::raw().get_item(name).ok().flatten()
}

/// One record that is a tree, as `read` makes something of it. What can't be read is set aside
/// before anything takes its place.
pub(super) fn read<T>(name: &str, read: impl Fn(&Node) -> Option<T>) -> Option<T> {
    let text = text(name)?;
    let found = Node::from_json(&text).ok().and_then(|node| read(&node));
    if found.is_none() {
        aside::keep(name, &text);
    }
    found
}

/// Writes one record and reads it back.
///
/// # Errors
/// [`Trouble::Full`] or [`Trouble::Blocked`] where the browser refuses it, [`Trouble::Differs`]
/// where it comes back changed, [`Trouble::SetAside`] where its bytes could not be copied.
pub(super) fn write(name: &str, text: &str) -> Written {
    probe()?;
    if aside::is_locked(name) {
        return Err(Trouble::SetAside);
    }
    LocalStorage::raw().set_item(name, text).map_err(|error| why(&error))?;
    if self::text(name).as_deref() == Some(text) { Ok(()) } else { Err(Trouble::Differs) }
}

/// Writes a tree and reads it back.
///
/// # Errors
/// As [`fn@write`].
pub(super) fn write_node(name: &str, node: &Node) -> Written {
    write(name, &serde_json::to_string(node).unwrap_or_default())
}

/// Removes one record.
pub(super) fn remove(name: &str) {
    if probe().is_ok() {
        LocalStorage::delete(name);
    }
}
