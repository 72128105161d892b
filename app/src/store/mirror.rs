//! The browser's database, where every job is held in two slots that are written in turn. A write
//! counts when the browser says that the whole of it is done, so it outlives a phone that dies in
//! the next moment; local storage forgets its last half minute then.
//!
//! Own few lines over the browser's calls, because what is asked of it is small: a name and a text.
//! Whether a job was written elsewhere in between is asked and answered in the same transaction as
//! the write, so that no two tabs can pass each other.

use super::aside::{self, aside_name};
use super::{GONE, JOB, RESTORED, Trouble, Written, why};
use js_sys::{Array, Object, Reflect};
use ledgerboard_core::job::{next_slot, revision_of};
use leptos::prelude::{set_timeout, window};
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use std::time::Duration;
use wasm_bindgen::prelude::*;

const NAME: &str = "ledgerboard";
const STORE: &str = "records";
/// Behind a job's name: its two slots.
pub(super) const SLOTS: [&str; 2] = [".a", ".b"];
/// Some phones never answer. Longer than any that does.
const PATIENCE: Duration = Duration::from_secs(3);

#[wasm_bindgen]
extern "C" {
    /// Whatever the database is made of.
    #[derive(Clone)]
    type Thing;

    #[wasm_bindgen(method, catch)]
    fn open(this: &Thing, name: &str, version: &JsValue) -> Result<Thing, JsValue>;
    #[wasm_bindgen(method, catch, js_name = createObjectStore)]
    fn create_store(this: &Thing, name: &str) -> Result<Thing, JsValue>;
    #[wasm_bindgen(method, catch)]
    fn transaction(this: &Thing, store: &str, mode: &str, how: &Object) -> Result<Thing, JsValue>;
    #[wasm_bindgen(method, catch, js_name = objectStore)]
    fn store(this: &Thing, name: &str) -> Result<Thing, JsValue>;
    #[wasm_bindgen(method, catch)]
    fn get(this: &Thing, key: &str) -> Result<Thing, JsValue>;
    #[wasm_bindgen(method, catch)]
    fn put(this: &Thing, value: &JsValue, key: &str) -> Result<Thing, JsValue>;
    #[wasm_bindgen(method, catch)]
    fn delete(this: &Thing, key: &str) -> Result<Thing, JsValue>;
    #[wasm_bindgen(method, catch, js_name = getAllKeys)]
    fn all_keys(this: &Thing) -> Result<Thing, JsValue>;
    #[wasm_bindgen(method)]
    fn close(this: &Thing);
    #[wasm_bindgen(method, getter)]
    fn result(this: &Thing) -> JsValue;
    #[wasm_bindgen(method, getter)]
    fn error(this: &Thing) -> JsValue;
}

thread_local! {
    static DATABASE: RefCell<Option<Thing>> = const { RefCell::new(None) };
}

/// What is done with a database, or with what stands in its way.
type Done<T> = Later<Result<T, Trouble>>;

/// What became of a job's write.
pub(super) enum Answer {
    /// The whole of it is done.
    Kept,
    /// Nothing was written: this was there, as late or later, and is not ours.
    Other(String),
    /// Nothing was written.
    Failed(Trouble),
}

/// A job's slots as they were found.
pub(super) type Slots = [Option<String>; 2];

/// What is done later, once. Boxed everywhere here: the code around it is then there once.
type Later<T> = Box<dyn FnOnce(T)>;

/// Calls `act` the next time that this happens, and never again.
fn on(thing: &Thing, event: &str, act: Later<JsValue>) {
    let _ = Reflect::set(thing, &event.into(), &Closure::once_into_js(act));
}

/// Whether a database has our store, and the version that it would get with it.
fn has_store(database: &Thing) -> Result<(), f64> {
    let stores = Reflect::get(database, &"objectStoreNames".into()).unwrap_or_default();
    if Array::from(&stores).includes(&STORE.into(), 0) {
        return Ok(());
    }
    let version = Reflect::get(database, &"version".into()).ok().and_then(|it| it.as_f64());
    Err(version.unwrap_or(1.0) + 1.0)
}

/// Opens the database as it is, or as a later version where somebody made an empty one.
fn open_as(version: &JsValue, done: Done<Thing>) {
    let factory = Reflect::get(&window(), &"indexedDB".into()).ok().filter(JsValue::is_object);
    let Some(factory) = factory else { return done(Err(Trouble::Blocked)) };
    let request = match factory.unchecked_into::<Thing>().open(NAME, version) {
        Ok(request) => request,
        Err(error) => return done(Err(why(&error))),
    };
    let done = Rc::new(Cell::new(Some(done)));
    let answer = move |outcome: Result<Thing, Trouble>| {
        if let Some(done) = done.take() {
            done(outcome);
        }
    };
    let [opened, failed, silent] = [answer.clone(), answer.clone(), answer];
    let asked = request.clone();
    on(
        &request,
        "onupgradeneeded",
        Box::new(move |_| {
            // Fails where it is there, and is right to.
            let _ = asked.result().unchecked_into::<Thing>().create_store(STORE);
        }),
    );
    let asked = request.clone();
    on(
        &request,
        "onsuccess",
        Box::new(move |_| {
            let database: Thing = asked.result().unchecked_into();
            if let Err(next) = has_store(&database) {
                database.close();
                return open_as(&next.into(), Box::new(opened));
            }
            // A newer page, or the browser itself, may ask for it; the next write opens it again.
            for event in ["onversionchange", "onclose"] {
                let held = database.clone();
                let forget = move |_| {
                    held.close();
                    DATABASE.set(None);
                };
                on(&database, event, Box::new(forget));
            }
            DATABASE.set(Some(database.clone()));
            opened(Ok(database));
        }),
    );
    let asked = request.clone();
    on(&request, "onerror", Box::new(move |_| failed(Err(why(&asked.error())))));
    set_timeout(move || silent(Err(Trouble::Blocked)), PATIENCE);
}

/// Begins a transaction: `act` is given its store at once, `done` hears when all of it is done, or
/// nothing. A connection that has died is opened again.
fn within(writes: bool, act: Later<Thing>, done: Done<()>) {
    let held = DATABASE.with_borrow(Clone::clone);
    let begun = held.and_then(|database| begin(&database, writes).ok());
    if let Some(begun) = begun {
        return run(&begun, act, done);
    }
    let opened = move |database: Result<Thing, Trouble>| match database
        .and_then(|it| begin(&it, writes).map_err(|error| why(&error)))
    {
        Ok(begun) => run(&begun, act, done),
        Err(trouble) => done(Err(trouble)),
    };
    open_as(&JsValue::UNDEFINED, Box::new(opened));
}

/// A transaction and its store.
type Begun = (Thing, Thing);

fn begin(database: &Thing, writes: bool) -> Result<Begun, JsValue> {
    let how = Object::new();
    // Done means on the disk, and not only on its way there.
    let _ = Reflect::set(&how, &"durability".into(), &"strict".into());
    let mode = if writes { "readwrite" } else { "readonly" };
    let transaction = database.transaction(STORE, mode, &how)?;
    let store = transaction.store(STORE)?;
    Ok((transaction, store))
}

fn run((transaction, store): &Begun, act: Later<Thing>, done: Done<()>) {
    act(store.clone());
    let done = Rc::new(Cell::new(Some(done)));
    for event in ["oncomplete", "onabort"] {
        let (done, ended) = (Rc::clone(&done), transaction.clone());
        let end = move |_| {
            let outcome = if event == "oncomplete" { Ok(()) } else { Err(why(&ended.error())) };
            if let Some(done) = done.take() {
                done(outcome);
            }
        };
        on(transaction, event, Box::new(end));
    }
}

/// Calls `act` with what a store answers.
fn ask(request: Result<Thing, JsValue>, act: Later<JsValue>) {
    if let Ok(request) = request {
        let asked = request.clone();
        on(&request, "onsuccess", Box::new(move |_| act(asked.result())));
    }
}

/// A record's text. What is there and isn't text is no record of ours.
fn text(value: &JsValue) -> Option<String> {
    (!value.is_undefined()).then(|| value.as_string().unwrap_or_default())
}

/// Reads everything: each job's slots, in the order of their names, then `done`.
///
/// `one` is given a job's id and its slots, `other` the name and text of any other record.
pub(super) fn read_all(one: fn(&str, Slots), other: fn(&str, String), done: Done<()>) {
    let each = move |store: Thing, keys: JsValue| {
        let mut last = String::new();
        for key in Array::from(&keys).iter().filter_map(|key| key.as_string()) {
            let slot = SLOTS.iter().find_map(|slot| key.strip_suffix(slot));
            let Some(id) = slot.and_then(|name| name.strip_prefix(JOB)) else {
                // Asked for where it is needed.
                if key.starts_with(RESTORED) {
                    continue;
                }
                let record = store.get(&key);
                ask(record, Box::new(move |it| other(&key, text(&it).unwrap_or_default())));
                continue;
            };
            // Both slots of a job stand side by side, whichever of them are there.
            if id != last {
                last = id.to_owned();
                let id = last.clone();
                slots(&store, &last, Box::new(move |values| one(&id, values.map(|it| text(&it)))));
            }
        }
    };
    let act = move |store: Thing| ask(store.all_keys(), Box::new(move |keys| each(store, keys)));
    within(false, Box::new(act), done);
}

/// Asks for both slots of a job.
fn slots(store: &Thing, id: &str, act: Later<[JsValue; 2]>) {
    let first = Rc::new(Cell::new(JsValue::UNDEFINED));
    let held = Rc::clone(&first);
    let slot = |at: usize| store.get(&[JOB, id, SLOTS[at]].concat());
    ask(slot(0), Box::new(move |value| held.set(value)));
    // Answers come in the order in which they were asked for.
    ask(slot(1), Box::new(move |value| act([first.take(), value])));
}

/// Reads one job's slots. None where it is not there, or can't be read now.
pub(super) fn read(id: &str, done: Later<Option<Slots>>) {
    let id = id.to_owned();
    let found = Rc::new(Cell::new(None));
    let put = Rc::clone(&found);
    let act = move |store: Thing| {
        slots(&store, &id, Box::new(move |values| put.set(Some(values.map(|it| text(&it))))));
    };
    let end = move |_| done(found.take().filter(|slots| slots.iter().any(Option::is_some)));
    within(false, Box::new(act), Box::new(end));
}

/// Reads any other record. None where it is not there, or can't be read now.
pub(super) fn read_one(name: &'static str, done: Later<Option<String>>) {
    let found = Rc::new(Cell::new(None));
    let put = Rc::clone(&found);
    let act = move |store: Thing| ask(store.get(name), Box::new(move |it| put.set(text(&it))));
    within(false, Box::new(act), Box::new(move |_| done(found.take())));
}

/// Writes a job into the slot whose turn it is, unless another writing of it is there that is as
/// late. Bytes that can't be read are copied aside before anything takes their place.
pub(super) fn write(id: &str, revision: u64, record_text: &str, done: Later<Answer>) {
    let (id, record_text) = (id.to_owned(), record_text.to_owned());
    let answer = Rc::new(Cell::new(Answer::Failed(Trouble::Blocked)));
    let found = Rc::clone(&answer);
    let act = move |store: Thing| {
        let to = store.clone();
        let (name, gone) = ([JOB, &id].concat(), [GONE, &id].concat());
        let put = move |values: [JsValue; 2]| {
            let texts = values.each_ref().map(text);
            let heads = texts.each_ref().map(|it| revision_of(it.as_deref()));
            let turn = next_slot(heads);
            let later = 1 - turn;
            if heads[later] >= revision {
                let there = texts[later].as_deref().unwrap_or_default();
                let is_ours = there == record_text;
                found.set(if is_ours { Answer::Kept } else { Answer::Other(there.to_owned()) });
                return;
            }
            let slot = [&name, SLOTS[turn]].concat();
            let bad =
                texts[turn].as_deref().filter(|it| heads[turn] == 0 && !aside::has(&slot, it));
            if bad.is_some() && to.put(&values[turn], &aside_name(&slot)).is_err() {
                return;
            }
            if to.put(&record_text.into(), &slot).is_ok() {
                let _ = to.delete(&gone);
                found.set(Answer::Kept);
            }
        };
        slots(&store, &id, Box::new(put));
    };
    let end = move |ended: Written| match ended {
        Ok(()) => done(answer.replace(Answer::Kept)),
        Err(trouble) => done(Answer::Failed(trouble)),
    };
    within(true, Box::new(act), Box::new(end));
}

/// Removes a job's slots and leaves a trace with its last revision, so that a copy that local
/// storage still has, or has again, doesn't bring it back.
pub(super) fn remove(id: &str, revision: u64, done: Done<()>) {
    let id = id.to_owned();
    let act = move |store: Thing| {
        for slot in SLOTS {
            let _ = store.delete(&[JOB, &id, slot].concat());
        }
        let _ = store.put(&revision.to_string().into(), &[GONE, &id].concat());
    };
    within(true, Box::new(act), done);
}

/// Writes any other record.
pub(super) fn put(name: &str, text: &str, done: Done<()>) {
    let (name, text) = (name.to_owned(), JsValue::from(text));
    let act = move |store: Thing| {
        let _ = store.put(&text, &name);
    };
    within(true, Box::new(act), done);
}
