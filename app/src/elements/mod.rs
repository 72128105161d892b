//! Elements with one type, so that the code that builds and updates them is there once.
//!
//! Typed views make a type of every shape of markup, and code of every type: this page came to
//! 976 KB that way (298 KB packed). Signals, memos, owners and the mounting are Leptos's own; what is
//! here puts nodes into the document and lets its effects keep them up to date. No part of the
//! page is known here.

mod element;
mod live;

pub(crate) use element::{El, Piece, el, focus_soon, show_soon, svg};
pub(crate) use live::{each, flag, keep_up, live, live_text, on_change, text, when};
