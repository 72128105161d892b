//! Stores that the browser refuses, and stores that are full.

use super::{in_mirror, is_saved, job_id, name_it, open_job, save};
use crate::harness::{Device, Page, Server, journey, saying};

const NO_LOCAL: &str = "Object.defineProperty(window, 'localStorage', \
    { get() { throw new DOMException('refused', 'SecurityError'); } });";
const NO_DATABASE: &str =
    "IDBFactory.prototype.open = () => { throw new DOMException('refused', 'SecurityError'); };";
/// What Chromium does on a full disk: the transaction ends with this error. Its own setting for a
/// small disk is not kept by its driver.
const NO_ROOM: &str = "((full) => { \
    const puts = IDBObjectStore.prototype; \
    window.put ??= puts.put; \
    puts.put = full ? function (...all) { \
        const request = window.put.apply(this, all); this.transaction.abort(); return request; \
    } : window.put; \
    window.why ??= Object.getOwnPropertyDescriptor(IDBTransaction.prototype, 'error'); \
    Object.defineProperty(IDBTransaction.prototype, 'error', full ? { configurable: true, \
        get: () => new DOMException('full', 'QuotaExceededError') } : window.why); })";
const NOTHING: &str = "This browser keeps nothing: private mode, or storage is turned off. Work goes on; all is gone when you close the page. Back up what you need.";

#[tokio::test]
async fn both_stores_blocked() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        page.before_all(&format!("{NO_LOCAL} {NO_DATABASE}")).await;
        page.goto("#/box-fill").await;
        page.reads(".trouble", NOTHING).await;
        page.tap(saying("Add 14-3")).await;
        page.tap(saying("Save to job")).await;
        page.reads(".saved > span", NOTHING).await;
        page.sees(saying("Save again")).await;
        page.misses(saying("Done")).await;
        page.enter("#mark-title", "Den switch").await;
        page.screenshot("both-stores-blocked").await;
        asks_before_it_goes(page, true).await;
        // What was typed and saved stays on the page for as long as it is open.
        open_job(page).await;
        page.reads(".mark-title", "Den switch").await;
        page.reads(".held", NOTHING).await;
    })
    .await;
}

#[tokio::test]
async fn local_storage_blocked_and_the_database_not() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        page.before_all(NO_LOCAL).await;
        page.goto("#/box-fill").await;
        page.sees(saying("This browser keeps your jobs, once, but not what you are typing nor your settings: part of its storage is turned off. Save each number before you close the page.")).await;
        page.tap(saying("Save to job")).await;
        is_saved(page, "Saved, one copy, in").await;
        page.screenshot("local-storage-blocked").await;
        page.reload().await;
        open_job(page).await;
        page.reads(".mark .value", "14.0 in³").await;
        page.reads(".held", "Saved on this phone, one copy.").await;
    })
    .await;
}

#[tokio::test]
async fn the_database_blocked_and_local_storage_not() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        let script = page.before_all(NO_DATABASE).await;
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        is_saved(page, "Saved, one copy, in").await;
        assert!(page.text(".saved > span").await.contains("there is no other copy"));
        page.reload().await;
        open_job(page).await;
        page.reads(".mark .value", "14.0 in³").await;
        // Once it answers again, the job is copied there without being touched.
        page.no_longer(script).await;
        page.reload().await;
        open_job(page).await;
        page.reads(".held", "Saved on this phone, with a second copy.").await;
    })
    .await;
}

/// A store that never answers is no reason to wait: the number is saved, once.
#[tokio::test]
async fn a_database_that_never_answers() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        page.before_all("IDBFactory.prototype.open = () => ({});").await;
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        is_saved(page, "Saved, one copy, in").await;
        page.reload().await;
        open_job(page).await;
        page.reads(".mark .value", "14.0 in³").await;
    })
    .await;
}

#[tokio::test]
async fn storage_full() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        save(page, "Den switch").await;
        // Other pages of the host took all there was, to the last letter; the disk is full too.
        page.evaluate::<()>("void (() => { let size = 4_000_000, at = 0; while (size >= 1) { try { localStorage.setItem(`other.${at++}`, 'x'.repeat(size)); } catch { size = Math.floor(size / 2); } } })()").await;
        page.evaluate::<()>(&format!("void {NO_ROOM}(true)")).await;
        page.goto("#/box-fill").await;
        page.tap(saying("Add 14-3")).await;
        page.tap(saying("Save to job")).await;
        page.until("document.querySelector('.saved')?.textContent.startsWith('The phone’s room for this page is full: about 0 KB of 5,120 KB are left. The last change is on this page only, not saved.')").await;
        page.misses(saying("Done")).await;
        asks_before_it_goes(page, true).await;
        let (_, backup) = page.saves(".saved .fault, .saved div button").await;
        assert!(backup.contains("Den switch") && backup.matches("\"title\"").count() == 2);
        page.tap(saying("Save again")).await;
        page.until("document.querySelector('.saved.fault')").await;
        page.sees(".trouble p").await;
        page.screenshot("storage-full").await;
        // What is on the page only can be taken away as a file at once.
        let (_, backup) = page.saves(".trouble button:first-child").await;
        assert!(backup.contains("Den switch") && backup.matches("\"title\"").count() == 2);
        // It is not saved, and the page does not lose it.
        page.goto("#/jobs").await;
        page.sees(saying("2 numbers, the last change not saved")).await;
        open_job(page).await;
        assert_eq!(page.all_texts(".mark-title").await.len(), 2);
        let name = format!("ledgerboard.job.{}", job_id(page).await);
        for slot in ["a", "b"] {
            let slot = in_mirror(page, &format!("{name}.{slot}")).await.unwrap_or_default();
            assert_eq!(slot.matches("\"title\"").count().min(2), 1, "whole, and of before");
        }
        // Room again: it is written by itself.
        page.evaluate::<()>("void Object.keys(localStorage).filter((name) => name.startsWith('other.')).forEach((name) => localStorage.removeItem(name))").await;
        page.evaluate::<()>(&format!("void {NO_ROOM}(false)")).await;
        page.set_patience(std::time::Duration::from_secs(15));
        page.reads(".held", "Saved on this phone, with a second copy.").await;
        page.misses(".trouble p").await;
        asks_before_it_goes(page, false).await;
        page.reload().await;
        page.sees(".mark-title").await;
        assert_eq!(page.all_texts(".mark-title").await.len(), 2);
    })
    .await;
}

/// Only the database is full, and local storage takes nothing else: no figure would be true.
#[tokio::test]
async fn what_is_full_is_told_only_where_it_is() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        page.before_all("Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };").await;
        page.goto("#/box-fill").await;
        page.evaluate::<()>(&format!("void {NO_ROOM}(true)")).await;
        page.tap(saying("Save to job")).await;
        page.until("document.querySelector('.saved')?.textContent.startsWith('The phone’s room for this page is full. The last change')").await;
        // Back on the page there may be room: it is looked at once.
        page.evaluate::<()>(&format!("void {NO_ROOM}(false)")).await;
        page.evaluate::<()>("void dispatchEvent(new Event('visibilitychange'))").await;
        page.set_patience(std::time::Duration::from_secs(5));
        is_saved(page, "Saved, one copy, in").await;
        page.sees(saying("Done")).await;
    })
    .await;
}

/// Whether the page asks before it is closed or loaded again.
async fn asks_before_it_goes(page: &Page, want: bool) {
    let asks: bool =
        page.evaluate("!dispatchEvent(new Event('beforeunload', { cancelable: true }))").await;
    assert_eq!(asks, want);
}

/// Local storage holds the jobs worked on last; the database holds all of them.
#[tokio::test]
async fn more_jobs_than_local_storage_holds() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        save(page, "Den switch").await;
        page.evaluate::<()>("void (() => { let size = 4_000_000, at = 0; while (size >= 1000) { try { localStorage.setItem(`other.${at++}`, 'x'.repeat(size)); } catch { size = Math.floor(size / 2); } } })()").await;
        page.goto("#/jobs").await;
        page.enter("#job-name", "Plum Street 4").await;
        page.tap(saying("Make this job")).await;
        page.sees("#marks").await;
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        name_it(page, "Hall switch").await;
        page.until("document.querySelector('.saved')?.textContent.startsWith('Saved, ')").await;
        let working: Vec<bool> = page
            .evaluate("Object.keys(localStorage).filter((it) => it.startsWith('ledgerboard.job.')).map((it) => localStorage[it].includes('Hall switch'))")
            .await;
        assert_eq!(working, [true], "the older job made room for the later one");
        page.reload().await;
        page.goto("#/jobs").await;
        page.until("document.querySelectorAll('.doors a').length === 2").await;
    })
    .await;
}
