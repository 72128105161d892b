//! Faults, each made to happen in a real browser: a dead battery, a full phone, a store that
//! refuses, damaged bytes, a second tab. After each, nothing that was shown as saved is missing,
//! nothing typed is gone, and the page says what happened.
//!
//! The steps that the journeys share are here; each family has a file.

mod damaged;
mod killed;
mod many;
mod refused;
mod stuck;
mod tabs;

use crate::harness::{Page, saying};

/// All records of the database, by name.
const MIRROR: &str = "new Promise((done, failed) => { \
    const request = indexedDB.open('ledgerboard'); \
    request.onerror = () => failed(request.error); \
    request.onupgradeneeded = () => request.transaction.abort(); \
    request.onsuccess = () => { \
        const database = request.result, reading = database.transaction('records'); \
        const store = reading.objectStore('records'); \
        const names = store.getAllKeys(), texts = store.getAll(); \
        reading.oncomplete = () => { \
            database.close(); \
            done(Object.fromEntries(names.result.map((name, at) => [name, texts.result[at]]))); \
        }; \
    }; })";

/// Saves a number to the day's loose notes, calls it so, and waits until both stores have it.
async fn save(page: &Page, title: &str) {
    page.goto("#/box-fill").await;
    page.tap(saying("Save to job")).await;
    name_it(page, title).await;
    is_saved(page, "Saved, with a second copy").await;
}

/// Names the number that was just saved, and waits until that is written somewhere.
async fn name_it(page: &Page, title: &str) {
    page.enter("#mark-title", title).await;
    page.until(&format!("(localStorage.length && Object.values(localStorage).some((it) => it.includes('{title}'))) || (await {MIRROR}.then((all) => Object.values(all).some((it) => it.includes('{title}'))))")).await;
}

/// Waits until the line under a saved number starts so.
async fn is_saved(page: &Page, words: &str) {
    page.until(&format!("document.querySelector('.saved')?.textContent.startsWith('{words}')"))
        .await;
}

/// Opens the page of the only job, and gives the titles of its numbers.
async fn open_job(page: &Page) {
    page.goto("#/jobs").await;
    page.tap(".doors a").await;
    page.sees(".mark-title").await;
}

/// The id of the only job, by what the stores hold.
async fn job_id(page: &Page) -> String {
    page.evaluate(&format!(
        "(async () => {{ const names = [...Object.keys(localStorage), ...Object.keys(await {MIRROR})]; \
         return names.find((name) => name.startsWith('ledgerboard.job.')).split('.')[2]; }})()"
    ))
    .await
}

/// Writes a record of the database past the page.
async fn put(page: &Page, name: &str, text: &str) {
    let (name, text) = (quoted(name), quoted(text));
    page.evaluate::<()>(&format!(
        "new Promise((done, failed) => {{ const request = indexedDB.open('ledgerboard'); \
         request.onsuccess = () => {{ const writing = request.result.transaction('records', 'readwrite'); \
         writing.objectStore('records').put({text}, {name}); \
         writing.oncomplete = () => {{ request.result.close(); done(); }}; \
         writing.onabort = () => failed(writing.error); }}; }})"
    ))
    .await;
}

/// A record of the database.
async fn in_mirror(page: &Page, name: &str) -> Option<String> {
    page.evaluate(&format!("{MIRROR}.then((all) => all[{}] ?? null)", quoted(name))).await
}

/// A record of local storage.
async fn in_local(page: &Page, name: &str) -> Option<String> {
    page.evaluate(&format!("localStorage.getItem({})", quoted(name))).await
}

/// Writes a record of local storage past the page.
async fn put_local(page: &Page, name: &str, text: &str) {
    page.evaluate::<()>(&format!("localStorage.setItem({}, {})", quoted(name), quoted(text))).await;
}

/// A text as a script writes it.
fn quoted(text: &str) -> String {
    serde_json::Value::from(text).to_string()
}
