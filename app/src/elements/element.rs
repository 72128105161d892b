//! One element, and pieces of several.

use super::live::{Say, follow, live_text};
use crate::speech;
use js_sys::Reflect;
use ledgerboard_core::words::Phrase;
use leptos::prelude::{document, request_animation_frame};
use wasm_bindgen::prelude::*;
use web_sys::{Element, Event, HtmlElement, Node};

const SVG: &str = "http://www.w3.org/2000/svg";

/// An element that is being built, or a hold on one that has been.
#[derive(Clone)]
pub(crate) struct El(Element);

/// Something to put into an element: nothing, one node, or several.
pub(crate) struct Piece(Option<Node>);

/// An element of HTML. `tag` is one of ours, so that it is always a name.
pub(crate) fn el(tag: &str) -> El {
    El(document().create_element(tag).unwrap_throw())
}

/// Gives the focus to what this selector finds, once what has changed is on the page.
pub(crate) fn focus_soon(selector: &str) {
    let selector = selector.to_owned();
    request_animation_frame(move || {
        let found = document().query_selector(&selector).ok().flatten();
        if let Some(found) = found.and_then(|it| it.dyn_into::<HtmlElement>().ok()) {
            let _ = found.focus();
        }
    });
}

/// Brings into view what this selector finds, once what has changed is on the page.
pub(crate) fn show_soon(selector: &str) {
    let selector = selector.to_owned();
    request_animation_frame(move || {
        if let Ok(Some(found)) = document().query_selector(&selector) {
            let how = web_sys::ScrollIntoViewOptions::new();
            how.set_block(web_sys::ScrollLogicalPosition::Nearest);
            found.scroll_into_view_with_scroll_into_view_options(&how);
        }
    });
}

/// An element of a drawing.
pub(crate) fn svg(tag: &str) -> El {
    El(document().create_element_ns(Some(SVG), tag).unwrap_throw())
}

impl El {
    /// The browser's own element.
    pub(crate) fn node(&self) -> &Element {
        &self.0
    }

    /// Sets an attribute.
    pub(crate) fn attr(self, name: &str, value: &str) -> Self {
        let _ = self.0.set_attribute(name, value);
        self
    }

    /// Sets the classes.
    pub(crate) fn class(self, names: &str) -> Self {
        self.attr("class", names)
    }

    /// Sets the id.
    pub(crate) fn id(self, id: &str) -> Self {
        self.attr("id", id)
    }

    /// Names it for those who can't see it.
    pub(crate) fn named(self, name: &str) -> Self {
        self.attr("aria-label", name)
    }

    /// Marks what is inside as a person's own words, not ours.
    pub(crate) fn own(self) -> Self {
        self.attr("data-own", "")
    }

    /// An attribute that follows what it reads.
    pub(crate) fn attr_live(
        self,
        name: &'static str,
        value: impl Fn() -> String + 'static,
    ) -> Self {
        self.attr_says(name, Box::new(value))
    }

    fn attr_says(self, name: &'static str, value: Box<Say>) -> Self {
        let element = self.0.clone();
        follow(Box::new(move || {
            let _ = element.set_attribute(name, &value());
        }));
        self
    }

    /// An attribute that says `true` or `false`.
    pub(crate) fn flag_live(self, name: &'static str, value: impl Fn() -> bool + 'static) -> Self {
        self.attr_live(name, move || if value() { "true" } else { "false" }.to_owned())
    }

    /// A class that is there while something holds.
    pub(crate) fn class_when(self, name: &'static str, holds: impl Fn() -> bool + 'static) -> Self {
        self.class_says(name, Box::new(holds))
    }

    fn class_says(self, name: &'static str, holds: Box<dyn Fn() -> bool>) -> Self {
        let classes = self.0.class_list();
        follow(Box::new(move || {
            let _ = classes.toggle_with_force(name, holds());
        }));
        self
    }

    /// What stands in a field. Left alone where it stands there already, so that the cursor stays.
    pub(crate) fn value_live(self, value: impl Fn() -> String + 'static) -> Self {
        self.property("value", Box::new(move || JsValue::from(value())))
    }

    /// A property that is on or off: `checked`, `selected`, `open`.
    pub(crate) fn prop_live(self, name: &'static str, holds: impl Fn() -> bool + 'static) -> Self {
        self.property(name, Box::new(move || JsValue::from(holds())))
    }

    fn property(self, name: &'static str, value: Box<dyn Fn() -> JsValue>) -> Self {
        let element = self.0.clone();
        let name = JsValue::from(name);
        follow(Box::new(move || {
            let value = value();
            if Reflect::get(&element, &name).ok().as_ref() != Some(&value) {
                let _ = Reflect::set(&element, &name, &value);
            }
        }));
        self
    }

    /// Hears an event for as long as the element is there.
    pub(crate) fn on(self, event: &str, hear: impl FnMut(Event) + 'static) -> Self {
        self.hears(event, Box::new(hear))
    }

    fn hears(self, event: &str, hear: Box<dyn FnMut(Event)>) -> Self {
        // The browser's collector frees it with the element.
        let hear = Closure::wrap(hear).into_js_value();
        let _ = self.0.add_event_listener_with_callback(event, hear.unchecked_ref());
        self
    }

    /// A tap.
    pub(crate) fn tap(self, mut act: impl FnMut() + 'static) -> Self {
        self.on("click", move |_| act())
    }

    /// Takes the focus once it is in the page, which stays where it is.
    pub(crate) fn focus_in_place(self) {
        request_animation_frame(move || {
            if let Some(element) = self.0.dyn_ref::<HtmlElement>() {
                let still = web_sys::FocusOptions::new();
                still.set_prevent_scroll(true);
                let _ = element.focus_with_options(&still);
            }
        });
    }

    /// Adds something at the end.
    pub(crate) fn with(self, piece: impl Into<Piece>) -> Self {
        self.append(piece.into())
    }

    fn append(self, piece: Piece) -> Self {
        if let Some(node) = piece.0 {
            let _ = self.0.append_child(&node);
        }
        self
    }

    /// Adds several at the end.
    pub(crate) fn with_all<P: Into<Piece>>(self, pieces: impl IntoIterator<Item = P>) -> Self {
        pieces.into_iter().fold(self, |this, piece| this.with(piece))
    }

    /// Adds text that a [`Voice`](ledgerboard_core::words::Voice) has said.
    pub(crate) fn text(self, text: &str) -> Self {
        self.typed(&speech::set_fractions(text))
    }

    /// Adds text as a person typed it.
    fn typed(self, text: &str) -> Self {
        let text = document().create_text_node(text);
        self.append(Piece(Some(text.into())))
    }

    /// Adds a person's own words, untouched and marked as such.
    pub(crate) fn own_text(self, text: &str) -> Self {
        self.own().typed(text)
    }

    /// Adds a phrase.
    pub(crate) fn say(self, phrase: &'static Phrase) -> Self {
        self.text(&speech::phrase(phrase))
    }

    /// Adds text that follows what it reads.
    pub(crate) fn text_live(self, text: impl Fn() -> String + 'static) -> Self {
        self.append(live_text(text))
    }
}

impl Piece {
    /// Nothing.
    pub(crate) const NONE: Self = Self(None);

    /// Several, one after another.
    pub(crate) fn all<P: Into<Self>>(pieces: impl IntoIterator<Item = P>) -> Self {
        let all = document().create_document_fragment();
        for piece in pieces {
            if let Self(Some(node)) = piece.into() {
                let _ = all.append_child(&node);
            }
        }
        Self(Some(all.into()))
    }

    pub(super) fn of(node: Node) -> Self {
        Self(Some(node))
    }

    pub(crate) fn into_node(self) -> Option<Node> {
        self.0
    }
}

impl From<El> for Piece {
    fn from(element: El) -> Self {
        Self(Some(element.0.into()))
    }
}

impl<P: Into<Piece>> From<Option<P>> for Piece {
    fn from(piece: Option<P>) -> Self {
        piece.map_or(Self::NONE, Into::into)
    }
}
