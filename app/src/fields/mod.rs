//! The form, drawn from a calculator's rows. It keeps what was typed, word for word; reading it
//! is the core's business. No row of any one calculator is known here.

mod choice;
mod count;
mod line;
mod link;
mod list;
mod long;
mod names;
mod quantity;
mod ruler;

pub(crate) use link::told_together;

use crate::elements::{self, El, Piece, el, keep_up, when};
use crate::question::Question;
use crate::sheet_view::undo_beside;
use crate::{speech, words as w};
use ledgerboard_core::fields::{Kind, Row, When};
use ledgerboard_core::wire::Node;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;

/// Where a field's parts find each other, and what it is called.
#[derive(Clone)]
pub(crate) struct Place {
    /// Its path in the draft; also its id.
    path: String,
    /// What a person calls it.
    label: String,
    /// How to find it out; may be empty.
    hint: String,
}

impl Place {
    fn new(row: &Row, parent: &str) -> Self {
        Self {
            path: join(parent, row.key),
            label: speech::phrase(row.label),
            hint: if row.hint.en.is_empty() { String::new() } else { speech::phrase(row.hint) },
        }
    }

    /// The id of its hint and fault, for `aria-describedby`.
    fn note(&self) -> String {
        [&self.path, ".note"].concat()
    }

    /// The id of the cells that set it without a keyboard.
    fn ruled(&self) -> String {
        [&self.path, ".ruled"].concat()
    }

    /// The id of its label.
    fn name(&self) -> String {
        [&self.path, ".name"].concat()
    }
}

fn join(parent: &str, key: &str) -> String {
    if parent.is_empty() { key.to_owned() } else { [parent, ".", key].concat() }
}

/// All rows of one level. `parent` is the path of the tree that they belong to.
pub(crate) fn rows(question: Question, rows: &'static [Row], parent: &str) -> Piece {
    Piece::all(rows.iter().map(|row| one(question, rows, row, parent)))
}

/// One row, there while it is asked.
fn one(question: Question, rows: &'static [Row], row: &'static Row, parent: &str) -> Piece {
    if matches!(row.when, When::Always) {
        return control(question, row, parent);
    }
    let asked = asked(question, rows, row, parent);
    let parent = parent.to_owned();
    when(asked, move || control(question, row, &parent))
}

/// Whether a row is asked as things stand.
fn asked(
    question: Question,
    rows: &'static [Row],
    row: &'static Row,
    parent: &str,
) -> impl Fn() -> bool + Send + Sync + use<> {
    let parent = parent.to_owned();
    move || {
        question
            .draft
            .with(|root| row.when.holds(rows, root.at(&parent).unwrap_or(&Node::EMPTY), root))
    }
}

fn control(question: Question, row: &'static Row, parent: &str) -> Piece {
    let place = Place::new(row, parent);
    match row.kind {
        Kind::Length(_) | Kind::Area(_) | Kind::Volume(_) | Kind::Room(_) | Kind::Measure(_) => {
            quantity::quantity(question, row, &place)
        }
        Kind::Count { least, most, .. } => {
            let stepper = count::stepper(question, &place, &place.label, least, most);
            labelled(question, &place, "", stepper).into()
        }
        Kind::Number(span) => line::number(question, row, &place, span),
        Kind::Text(_) => line::text(question, row, &place),
        Kind::Day => line::day(question, &place).into(),
        Kind::Choice(picks) => {
            let undo = row.identifies.then(|| undone_beside(question, &place));
            Piece::all(
                [Some(choice::choice(question, picks, &place).into()), undo].into_iter().flatten(),
            )
        }
        Kind::Flag => flag(question, &place).into(),
        Kind::Group(rows) => {
            let group = group(question, rows, &place);
            // What was found at the time may be untrue by the time that a paper is read.
            let group = if row.evidence { group.class("group screen-only") } else { group };
            group.into()
        }
        Kind::List(item) => list::list(question, item, &place).into(),
    }
}

/// A label, its control, and below them the hint, or the fault in its place.
fn labelled(question: Question, place: &Place, extra: &str, control: El) -> El {
    let fault = question.fault(&place.path);
    el("div")
        .class(&["field ", extra].concat())
        .class_when("faulty", move || !fault.read().is_empty())
        .with(titled(question, place, el("label").attr("for", &place.path)))
        .with(control)
        .with(note(question, place))
}

/// What a field is called, and whether what stands in it is the sample's.
fn titled(question: Question, place: &Place, name: El) -> El {
    let name = name.class("label").id(&place.name()).text(&place.label);
    let path = vec![place.path.clone()];
    el("span").class("titled").with(name).with(still_sample(question, &place.path, path))
}

/// Says that what stands at one of these paths is the sample's. Its room stays when it goes: nothing
/// moves under a thumb.
fn still_sample(question: Question, at: &str, paths: Vec<String>) -> Piece {
    let id = sample_note(at);
    let is = move || question.from_sample.with(|all| all.iter().any(|path| paths.contains(path)));
    let is = elements::flag(is);
    let was = Memo::new(move |before: Option<&bool>| before == Some(&true) || is.get());
    let says = move || if is.get() { speech::phrase(&w::OF_SAMPLE) } else { String::new() };
    when(move || was.get(), move || el("span").class("of-sample").id(&id).text_live(says))
}

/// The id of what says that a field is the sample's.
fn sample_note(path: &str) -> String {
    [path, ".sample"].concat()
}

/// The hint, or the fault in its place, said as soon as it stands.
fn note(question: Question, place: &Place) -> El {
    let fault = question.fault(&place.path);
    let hint = place.hint.clone();
    el("p")
        .class("note")
        .class_when("fault", move || !fault.read().is_empty())
        .id(&place.note())
        .attr("aria-live", "polite")
        .text_live(move || {
            let fault = fault.get();
            if fault.is_empty() { hint.clone() } else { fault }
        })
}

/// What every input has: its id and path, its note, and whether it is at fault.
fn input(question: Question, place: &Place, tag: &str) -> El {
    let fault = question.fault(&place.path);
    el(tag)
        .id(&place.path)
        .attr("data-path", &place.path)
        .attr("aria-describedby", &[&place.note(), " ", &sample_note(&place.path)].concat())
        .flag_live("aria-invalid", move || !fault.read().is_empty())
}

/// An input for text, which stays as it was typed.
fn text_input(question: Question, place: &Place) -> El {
    let text = question.text(&place.path);
    let path = place.path.clone();
    input(question, place, "input")
        .attr("type", "text")
        .attr("autocomplete", "off")
        .value_live(move || text.get())
        .on("input", move |event| question.put(&path, Node::Text(event_target_value(&event))))
}

/// The field of a name, or of what names something: what named it follows, and what there is to
/// name is offered while it is filled in.
fn name_input(question: Question, row: &'static Row, place: &Place) -> El {
    let text = question.text(&place.path);
    let (path, here) = (place.path.clone(), place.path.clone());
    let names_something = !row.names.is_empty();
    input(question, place, "input")
        .attr("type", "text")
        .attr("autocomplete", "off")
        .value_live(move || text.get())
        .on("focus", move |_| {
            question.begin_name(&here);
            if names_something {
                question.naming.set(here.clone());
            }
        })
        .on("input", move |event| question.put_name(&path, event_target_value(&event)))
}

/// The undo of what a field took along, in its row: a name what named it, a material its evidence.
fn undone_beside(question: Question, place: &Place) -> Piece {
    let path = place.path.clone();
    let here =
        move || question.undo.with(|undo| undo.as_ref().is_some_and(|undo| undo.place == path));
    when(here, move || undo_beside(question))
}

thread_local! {
    /// The figure's field that was in last.
    static LAST: std::cell::RefCell<String> = const { std::cell::RefCell::new(String::new()) };
}

/// A figure's field: what is typed next takes the place of what stands there; another tap puts the
/// cursor in it. Not where a person comes back to the page with half a figure typed: the browser
/// then gives the same field its focus again.
fn figure_input(question: Question, place: &Place) -> El {
    let path = place.path.clone();
    text_input(question, place).on("focus", move |event| {
        let field = event.target().and_then(|it| it.dyn_into::<HtmlInputElement>().ok());
        let came = LAST.replace(path.clone()) != path;
        if let Some(field) = field.filter(|_| came) {
            field.select();
        }
    })
}

fn flag(question: Question, place: &Place) -> El {
    let text = question.text(&place.path);
    let path = place.path.clone();
    let tick = input(question, place, "input")
        .attr("type", "checkbox")
        .prop_live("checked", move || text.read().as_str() == "yes")
        .on("change", move |event| question.put(&path, Node::Flag(event_target_checked(&event))));
    labelled(question, place, "", el("span").class("tick").with(tick).with(el("span").say(&w::YES)))
}

/// Rows under a heading of their own, folded while nothing is in them; a fault inside opens it.
fn group(question: Question, inside: &'static [Row], place: &Place) -> El {
    let here = place.path.clone();
    let filled = move || {
        question.draft.with(|draft| {
            let typed = |row: &Row| {
                let leaf = draft.at(&here).and_then(|here| here.get(row.key)?.leaf());
                let typed =
                    row.kind.optional().is_some() || matches!(row.kind, Kind::Text(_) | Kind::Day);
                typed && leaf.is_some_and(|leaf| !leaf.is_empty())
            };
            inside.iter().any(typed)
        })
    };
    let summary = el("summary").with(el("span").class("label").text(&place.label));
    let within = [&place.path, "."].concat();
    folding(question, filled, move |path| path.starts_with(&within))
        .class("group")
        .with(summary)
        .with(note(question, place))
        .with(rows(question, inside, &place.path))
}

/// A heading that opens and closes. It opens by itself when it becomes `filled`, and when a fault
/// stands at a path that is `inside`.
fn folding(
    question: Question,
    filled: impl Fn() -> bool + Send + Sync + 'static,
    inside: impl Fn(&str) -> bool + Send + Sync + 'static,
) -> El {
    let details = el("details");
    let opens = elements::flag(move || {
        filled() || question.with_faults(|faults| faults.iter().any(|fault| inside(&fault.path)))
    });
    let opened = details.clone();
    keep_up(move || {
        if opens.get() {
            let _ = opened.clone().attr("open", "");
        }
    });
    details
}
