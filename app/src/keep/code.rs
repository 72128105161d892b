//! A question as a code that another phone's camera reads off the screen: no signal, no account.
//! Black on white in every light, with the margin that the standard asks for.

use super::share::address;
use crate::elements::{El, Piece, el, svg, when};
use crate::question::Question;
use crate::signal::RwSignal;
use crate::words as w;
use qrcodegen::{QrCode, QrCodeEcc};
use wasm_bindgen::JsCast;
use web_sys::HtmlDialogElement;

/// Empty modules around a code, as ISO/IEC 18004 asks for.
const MARGIN: i32 = 4;

/// The button that shows it, and the dialog that it is shown in.
pub(super) fn code(question: Question) -> Piece {
    let is_open = RwSignal::new(false);
    let dialog = el("dialog").class("large code").attr("aria-labelledby", "code-title");
    let node = dialog.node().clone().dyn_into::<HtmlDialogElement>().ok();
    let closing = node.clone();
    let dialog = dialog
        .with(el("h2").id("code-title").say(&w::CODE_TITLE))
        .with(when(move || is_open.get(), move || shown(&address(question))))
        .with(el("button").attr("type", "button").say(&w::CLOSE))
        .on("close", move |_| is_open.set(false))
        .tap(move || {
            if let Some(dialog) = &closing {
                dialog.close();
            }
        });
    let button = el("button").attr("type", "button").say(&w::CODE).tap(move || {
        is_open.set(true);
        if let Some(dialog) = &node {
            let _ = dialog.show_modal();
        }
    });
    Piece::all([button, dialog])
}

fn shown(text: &str) -> Piece {
    match QrCode::encode_text(text, QrCodeEcc::Low) {
        Ok(code) => Piece::all([drawn(&code), el("p").say(&w::CODE_SAYS)]),
        // Past 2953 bytes no code holds it.
        Err(_) => el("p").class("fault").say(&w::CODE_TOO_LONG).into(),
    }
}

/// Its dark modules as one path: a stroke a run.
fn drawn(code: &QrCode) -> El {
    let size = code.size();
    let mut path = String::new();
    for row in 0..size {
        let mut at = 0;
        while at < size {
            let from = at;
            while at < size && code.get_module(at, row) {
                at += 1;
            }
            if at > from {
                for (letter, number) in [
                    ("M", from + MARGIN),
                    (" ", row + MARGIN),
                    ("h", at - from),
                    ("v", 1),
                    ("h", from - at),
                ] {
                    path.push_str(letter);
                    path.push_str(&number.to_string());
                }
                path.push('z');
            }
            at += 1;
        }
    }
    let all = (size + 2 * MARGIN).to_string();
    let paper = svg("rect").attr("width", &all).attr("height", &all).attr("fill", "#fff");
    svg("svg")
        .class("qr")
        .attr("role", "img")
        .attr("viewBox", &["0 0 ", &all, " ", &all].concat())
        .attr("shape-rendering", "crispEdges")
        .with(svg("title").say(&w::CODE_TITLE))
        .with(paper)
        .with(svg("path").attr("d", &path).attr("fill", "#000"))
}
