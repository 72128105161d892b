//! The browser's database, where every job is held in two slots that are written in turn. A write
//! counts when the browser says that the whole of it is done, so it outlives a phone that dies in
//! the next moment; local storage forgets its last half minute then.
//!
//! Own few lines over the browser's calls, because what is asked of it is small: a name and a text.
//! Whether a job was written elsewhere in between is asked and answered in the same transaction as
//! the write, so that no two tabs can pass each other.

use super::aside::{self, aside_name};
use super::{GONE, JOB, Trouble, why};
use js_sys::{Array, Object, Reflect};
use ledgerboard_core::job::{next_slot, record};
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
type Done<T> = Box<dyn FnOnce(Result<T, Trouble>)>;

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

/// Calls `act` the next time that this happens, and never again.
fn on(thing: &Thing, event: &str, act: impl FnOnce() + 'static) {
    let act = Closure::once_into_js(move |_: JsValue| act());
    let _ = Reflect::set(thing, &event.into(), &act);
}

fn open_anew(done: Done<Thing>) {
    open_as(&JsValue::UNDEFINED, done);
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
    on(&request, "onupgradeneeded", move || {
        // Fails where it is there, and is right to.
        let _ = asked.result().unchecked_into::<Thing>().create_store(STORE);
    });
    let asked = request.clone();
    on(&request, "onsuccess", move || {
        let database: Thing = asked.result().unchecked_into();
        if let Err(next) = has_store(&database) {
            database.close();
            return open_as(&next.into(), Box::new(opened));
        }
        let forget = |event| {
            let held = database.clone();
            on(&database, event, move || {
                held.close();
                DATABASE.set(None);
            });
        };
        // A newer page, or the browser itself, may ask for it; the next write opens it again.
        forget("onversionchange");
        forget("onclose");
        DATABASE.set(Some(database.clone()));
        opened(Ok(database));
    });
    let asked = request.clone();
    on(&request, "onerror", move || failed(Err(why(&asked.error()))));
    set_timeout(move || silent(Err(Trouble::Blocked)), PATIENCE);
}

/// Opens a transaction and gives it with its store. A connection that has died is opened again.
fn within(writes: bool, act: impl FnOnce(Result<(Thing, Thing), Trouble>) + 'static) {
    let begin = move |database: &Thing| {
        let how = Object::new();
        // Done means on the disk, and not only on its way there.
        let _ = Reflect::set(&how, &"durability".into(), &"strict".into());
        let transaction =
            database.transaction(STORE, if writes { "readwrite" } else { "readonly" }, &how)?;
        let store = transaction.store(STORE)?;
        Ok::<_, JsValue>((transaction, store))
    };
    if let Some(database) = DATABASE.with_borrow(Clone::clone) {
        if let Ok(both) = begin(&database) {
            return act(Ok(both));
        }
        DATABASE.set(None);
    }
    open_anew(Box::new(move |database| {
        act(database.and_then(|database| begin(&database).map_err(|error| why(&error))));
    }));
}

/// Calls `act` with what a store answers.
fn ask(request: Result<Thing, JsValue>, act: impl FnOnce(JsValue) + 'static) {
    if let Ok(request) = request {
        let asked = request.clone();
        on(&request, "onsuccess", move || act(asked.result()));
    }
}

/// Calls `done` when all of a transaction is done, or none of it.
fn at_end(transaction: &Thing, done: impl FnOnce(Result<(), Trouble>) + 'static) {
    let done = Rc::new(Cell::new(Some(done)));
    let (good, failed) = (Rc::clone(&done), transaction.clone());
    on(transaction, "oncomplete", move || {
        if let Some(done) = good.take() {
            done(Ok(()));
        }
    });
    on(transaction, "onabort", move || {
        if let Some(done) = done.take() {
            done(Err(why(&failed.error())));
        }
    });
}

/// A record's text. What is there and isn't text is no record of ours.
fn text(value: &JsValue) -> Option<String> {
    (!value.is_undefined()).then(|| value.as_string().unwrap_or_default())
}

/// Reads everything: each job's slots, in the order of their names, then `done`.
///
/// `one` is given a job's id and its slots, `other` the name and text of any other record.
pub(super) fn read_all(
    one: impl Fn(&str, Slots) + 'static,
    other: impl Fn(&str, String) + 'static,
    done: impl FnOnce(Result<(), Trouble>) + 'static,
) {
    within(false, move |begun| {
        let (transaction, store) = match begun {
            Ok(both) => both,
            Err(trouble) => return done(Err(trouble)),
        };
        let (one, other) = (Rc::new(one), Rc::new(other));
        let from = store.clone();
        ask(store.all_keys(), move |keys| {
            let mut last = String::new();
            for key in Array::from(&keys).iter().filter_map(|key| key.as_string()) {
                let slot = SLOTS.iter().find_map(|slot| key.strip_suffix(slot));
                let Some(id) = slot.and_then(|name| name.strip_prefix(JOB)) else {
                    let (name, other) = (key.clone(), Rc::clone(&other));
                    ask(from.get(&key), move |value| {
                        other(&name, text(&value).unwrap_or_default())
                    });
                    continue;
                };
                // Both slots of a job stand side by side, whichever of them are there.
                if id != last {
                    last = id.to_owned();
                    let one = Rc::clone(&one);
                    slots(&from, id, move |id, values| one(id, values.map(|it| text(&it))));
                }
            }
        });
        at_end(&transaction, done);
    });
}

/// Asks for both slots of a job.
fn slots(store: &Thing, id: &str, act: impl FnOnce(&str, [JsValue; 2]) + 'static) {
    let name = [JOB, id].concat();
    let id = id.to_owned();
    let first = Rc::new(RefCell::new(JsValue::UNDEFINED));
    let held = Rc::clone(&first);
    ask(store.get(&[&name, SLOTS[0]].concat()), move |value| *held.borrow_mut() = value);
    // Answers come in the order in which they were asked for.
    ask(store.get(&[&name, SLOTS[1]].concat()), move |value| act(&id, [first.take(), value]));
}

/// Reads one job's slots. None where it is not there, or can't be read now.
pub(super) fn read(id: &str, done: impl FnOnce(Option<Slots>) + 'static) {
    let id = id.to_owned();
    within(false, move |begun| match begun {
        Ok((_, store)) => slots(&store, &id, |_, values| {
            let found = values.map(|it| text(&it));
            done(found.iter().any(Option::is_some).then_some(found));
        }),
        Err(_) => done(None),
    });
}

/// Writes a job into the slot whose turn it is, unless another writing of it is there that is as
/// late. Bytes that can't be read are copied aside before anything takes their place.
pub(super) fn write(
    id: &str,
    revision: u64,
    record_text: &str,
    done: impl FnOnce(Answer) + 'static,
) {
    let (id, record_text) = (id.to_owned(), record_text.to_owned());
    within(true, move |begun| {
        let (transaction, store) = match begun {
            Ok(both) => both,
            Err(trouble) => return done(Answer::Failed(trouble)),
        };
        let (other, is_there) = (Rc::new(RefCell::new(None)), Rc::new(Cell::new(false)));
        let (found, put) = (Rc::clone(&other), Rc::clone(&is_there));
        let to = store.clone();
        slots(&store, &id, move |id, values| {
            let texts = values.each_ref().map(text);
            let heads = texts.each_ref().map(|it| {
                it.as_deref()
                    .and_then(|it| record::open(it).ok())
                    .map_or(0, |(head, _)| head.revision)
            });
            let later = usize::from(heads[1] > heads[0]);
            let there = texts[later].as_deref().unwrap_or_default();
            if heads[later] >= revision {
                if there != record_text {
                    *found.borrow_mut() = Some(there.to_owned());
                }
                return put.set(true);
            }
            let turn = next_slot(texts.each_ref().map(Option::as_deref));
            let name = [JOB, id, SLOTS[turn]].concat();
            let bytes =
                texts[turn].as_deref().filter(|it| heads[turn] == 0 && !aside::has(&name, it));
            if bytes.is_some() && to.put(&values[turn], &aside_name(&name)).is_err() {
                return;
            }
            put.set(to.put(&record_text.into(), &name).is_ok());
            let _ = to.delete(&[GONE, id].concat());
        });
        at_end(&transaction, move |ended| {
            done(match (ended, other.take()) {
                (Err(trouble), _) => Answer::Failed(trouble),
                (Ok(()), Some(other)) => Answer::Other(other),
                (Ok(()), None) if is_there.get() => Answer::Kept,
                (Ok(()), None) => Answer::Failed(Trouble::Blocked),
            });
        });
    });
}

/// Removes a job's slots and leaves a trace with its last revision, so that a copy that local
/// storage still has, or has again, doesn't bring it back.
pub(super) fn remove(id: &str, revision: u64, done: impl FnOnce() + 'static) {
    let id = id.to_owned();
    within(true, move |begun| {
        let Ok((transaction, store)) = begun else { return done() };
        for slot in SLOTS {
            let _ = store.delete(&[JOB, &id, slot].concat());
        }
        let _ = store.put(&revision.to_string().into(), &[GONE, &id].concat());
        at_end(&transaction, |_| done());
    });
}

/// Writes any other record.
pub(super) fn put(name: &str, text: &str, done: impl FnOnce(Result<(), Trouble>) + 'static) {
    let (name, text) = (name.to_owned(), JsValue::from(text));
    within(true, move |begun| match begun {
        Ok((transaction, store)) => {
            let _ = store.put(&text, &name);
            at_end(&transaction, done);
        }
        Err(trouble) => done(Err(trouble)),
    });
}
