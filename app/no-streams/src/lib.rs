//! Stands in for the `wasm-streams` package, of which it has just what `server_fn` asks for.
//!
//! Leptos always brings `server_fn`, and that one `wasm-streams`. The page calls no server, but
//! three classes that `wasm-streams` exports to scripts can't be left out by a linker, with all
//! that they call: 16 KB of the page, and 5 KB of it packed. Cargo.toml puts this package in its
//! place. If `server_fn` ever asks for more, this doesn't compile; `xtask/src/bindgen.rs` refuses
//! a page that exports a class.

use std::convert::Infallible;
use std::pin::Pin;
use std::task::{Context, Poll};

use futures_core::Stream;
use wasm_bindgen::JsValue;

/// A body that arrives bit by bit. There is none, ever.
#[derive(Debug)]
pub struct ReadableStream(Infallible);

const NO_SERVER: &str = "the page calls no server";

impl ReadableStream {
    /// Of a request.
    ///
    /// # Panics
    /// Always: nothing is sent to a server.
    pub fn from_stream(_: impl Stream<Item = Result<JsValue, JsValue>> + 'static) -> Self {
        panic!("{NO_SERVER}")
    }

    /// Of a response.
    ///
    /// # Panics
    /// Always: no server is asked.
    pub fn from_raw(_: web_sys::ReadableStream) -> Self {
        panic!("{NO_SERVER}")
    }

    /// As the browser has it.
    pub fn into_raw(self) -> web_sys::ReadableStream {
        match self.0 {}
    }

    /// Its parts.
    pub fn into_stream(self) -> Self {
        self
    }
}

impl Stream for ReadableStream {
    type Item = Result<JsValue, JsValue>;

    fn poll_next(self: Pin<&mut Self>, _: &mut Context<'_>) -> Poll<Option<Self::Item>> {
        match self.0 {}
    }
}
