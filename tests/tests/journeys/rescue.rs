//! The page that hands out records without the program: whatever stops the program, what a person
//! saved can be had.

use std::time::Duration;

use ledgerboard_core::job::backup;
use serde_json::Value;

use crate::harness::{Device, Journey, Page, Scheme, Server, journey, saying};

/// Records as they may stand in a browser's stores after bad days. All invented.
const SEED: &str = r#"new Promise((done, failed) => {
    const line = 'ledgerboard 2 7 phone_a 1791298800 22 0123abcd';
    const job = `${line}\n{"name":"3 Plumbline Court"}`;
    localStorage['ledgerboard.job.one'] = job;
    localStorage['ledgerboard.settings'] = '{"units":"customary"}';
    localStorage['ledgerboard.draft.box-fill'] = '{"input":{"marked":"20.2';
    localStorage['ledgerboard.aside.1791298800.job.two'] = '<img src=x onerror="window.hit = 1">';
    localStorage['neighbour.key'] = 'of another page on this host';
    const request = indexedDB.open('ledgerboard', 3);
    request.onerror = () => failed(request.error);
    request.onupgradeneeded = () => {
        for (const store of ['records', 'of a later version']) request.result.createObjectStore(store);
    };
    request.onsuccess = () => {
        const writing = request.result.transaction(['records', 'of a later version'], 'readwrite');
        const records = writing.objectStore('records');
        records.put(job, 'ledgerboard.job.one.a');
        records.put(`${job} torn`, 'ledgerboard.job.one.b');
        records.put(new Uint8Array([1, 2, 255]), '<b>bytes</b>');
        writing.objectStore('of a later version').put({ left: 'right' }, 9);
        writing.oncomplete = () => { request.result.close(); done(true); };
        writing.onabort = () => failed(writing.error);
    };
})"#;

/// All that both stores hold, to be compared before and after.
const ALL: &str = "(async () => JSON.stringify([{ ...localStorage }, \
    await indexedDB.databases(), await new Promise((done) => { \
        const request = indexedDB.open('ledgerboard'); \
        request.onsuccess = () => { \
            const reading = request.result.transaction('records').objectStore('records').getAll(); \
            reading.onsuccess = () => { request.result.close(); done(reading.result); }; \
        }; })]))()";

const LIST: &str = "#records li";

async fn seeded(page: &Page) {
    page.goto("rescue.html").await;
    page.until(SEED).await;
    page.tap(saying("Look again")).await;
    page.sees(saying("In database ledgerboard, records")).await;
}

#[tokio::test]
async fn it_lists_every_record_and_hands_each_out() {
    journey(Server::start("/sub/"), Device::Phone, async |Journey { page, .. }| {
        seeded(page).await;
        let before: String = page.evaluate(ALL).await;
        page.reads(
            "#said",
            "4 records in local storage. 1 record in database ledgerboard, of a later version. \
             3 records in database ledgerboard, records.",
        )
        .await;
        let lines = page.all_texts(LIST).await;
        assert_eq!(lines.len(), 8, "{lines:#?}");
        let line = |part: &str| {
            let found: Vec<&String> = lines.iter().filter(|line| line.contains(part)).collect();
            assert_eq!(found.len(), 1, "{part}: {lines:#?}");
            found[0].clone()
        };
        let slot = line("ledgerboard.job.one.a");
        for part in
            ["3 Plumbline Court", "Job, copy a", "75 bytes", "2026-10-", "phone_a 1791298800"]
        {
            assert!(slot.contains(part), "{part}: {slot}");
        }
        assert!(line("ledgerboard.job.one.b").contains("copy b"));
        assert!(line("draft.box-fill").contains("no time noted"));
        assert!(line("aside.1791298800").contains("<img src=x"));
        assert!(line("<b>bytes</b>").contains("AQL/"));
        line("{\"left\":\"right\"}");
        page.screenshot("rescue").await;

        let label = "Save as a file: 3 Plumbline Court, ledgerboard.job.one.b";
        let (name, text) = page.saves(saying(label)).await;
        assert_eq!(name, "ledgerboard.job.one.b.txt");
        assert!(text.starts_with("ledgerboard 2 7 phone_a ") && text.ends_with(" torn"), "{text}");

        let (name, all) = page.saves(saying("Save all as one file")).await;
        assert!(name.starts_with("ledgerboard-records-") && name.ends_with(".json"), "{name}");
        let all: Value = serde_json::from_str(&all).expect("the file is JSON");
        let records = all["records"].as_array().expect("a list of records");
        assert_eq!(records.len(), 8);
        let bytes = records.iter().find(|record| record["key"] == "<b>bytes</b>");
        assert_eq!(
            bytes.map(|it| (&it["as"], &it["text"])),
            Some((&"base64".into(), &"AQL/".into()))
        );

        page.tap(saying("Show as text: Settings, ledgerboard.settings")).await;
        page.has_focus("#shown-name").await;
        page.reads("#shown-text", "{\"units\":\"customary\"}").await;
        page.tap(saying("Copy the text")).await;
        page.reads("#copied", "Copied. Paste it where you keep it.").await;
        page.tap(saying("Close")).await;
        page.has_focus(saying("Show as text: Settings, ledgerboard.settings")).await;
        page.tap(saying("Show all as text")).await;
        page.until("JSON.parse(document.querySelector('#shown-text').value).records.length === 8")
            .await;

        assert_eq!(page.evaluate::<String>(ALL).await, before, "nothing was changed");
        page.until(
            "window.hit === undefined && !document.querySelector('#records img, #records b')",
        )
        .await;
    })
    .await;
}

#[tokio::test]
async fn its_backup_is_restored_on_another_phone() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, browser, .. }| {
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den “switch” {3}").await;
        page.until("document.querySelector('.saved')?.textContent.startsWith('Saved, with a second copy')").await;
        // The older copy is torn, and an invented job is nobody's.
        page.evaluate::<()>(
            "void (() => { const name = Object.keys(localStorage).find((it) => it.startsWith('ledgerboard.job.')); \
             localStorage[`${name}.b`] = `${localStorage[name]} torn`; })()",
        )
        .await;
        page.goto("rescue.html").await;
        let (name, text) = page.saves(saying("Save the jobs as a backup")).await;
        assert!(name.starts_with("ledgerboard-backup-20") && name.ends_with(".json"), "{name}");
        let read = backup::read(&text).expect("the program reads it");
        assert_eq!((read.jobs.len(), read.damaged.len()), (1, 0), "{text}");
        assert_eq!(read.jobs[0].marks[0].title, "Den “switch” {3}");
        browser.close().await;

        let folder = tempfile::tempdir().expect("a temporary folder");
        let file = folder.path().join(&name);
        std::fs::write(&file, text).expect("it can be written");
        let mut other = browser.another();
        let there = other.open().await;
        there.goto("#/jobs").await;
        there.choose_file("#restore", &file).await;
        there.tap(saying("Restore")).await;
        there.sees(saying("Restored.")).await;
        there.tap(".doors a").await;
        there.reads(".mark-title", "Den “switch” {3}").await;
        there.assert_quiet().await;
        other.close().await;
        *page = browser.open().await;
    })
    .await;
}

#[tokio::test]
async fn it_makes_nothing_where_there_is_nothing() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("rescue.html").await;
        let words = page.text("#said").await;
        page.until("document.querySelector('#said').textContent.includes('holds nothing')").await;
        assert!(!words.is_empty());
        page.misses(saying("Save all as one file")).await;
        page.misses(saying("Save the jobs as a backup")).await;
        // A browser that can't list its databases has to be asked for ours by name.
        let _: Option<bool> = page
            .evaluate("Object.defineProperty(indexedDB, 'databases', { value: undefined }), null")
            .await;
        page.tap(saying("Look again")).await;
        page.until("document.querySelector('#said').textContent.includes('holds nothing')").await;
        let made: Vec<Value> =
            page.evaluate("IDBFactory.prototype.databases.call(indexedDB)").await;
        assert!(made.is_empty(), "{made:?}");
    })
    .await;
}

#[tokio::test]
async fn a_store_that_can_not_be_read_is_told_and_the_other_is_listed() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        seeded(page).await;
        let _: Option<bool> = page
            .evaluate(
                "Object.defineProperty(window, 'localStorage', { configurable: true, \
                 get() { throw new DOMException('Access is denied', 'SecurityError'); } }), null",
            )
            .await;
        page.tap(saying("Look again")).await;
        page.sees(saying("In database ledgerboard, records")).await;
        page.misses(saying("In local storage")).await;
        let said = page.text("#said").await;
        assert!(said.starts_with("What is in local storage can’t be read: Access is denied."));

        page.reload().await;
        let _: Option<bool> = page
            .evaluate(
                "IDBFactory.prototype.open = () => { throw new DOMException('No', 'Denied'); }, null",
            )
            .await;
        page.tap(saying("Look again")).await;
        page.sees(saying("In local storage")).await;
        page.misses(saying("In database ledgerboard, records")).await;
        let said = page.text("#said").await;
        assert!(said.contains("What is in database ledgerboard can’t be read: No."), "{said}");
    })
    .await;
}

#[tokio::test]
async fn it_is_one_tap_from_where_the_program_can_not_start() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, site, .. }| {
        for rule in ["app.wasm answer 500", "app.wasm rewrite", "app.js answer 404"] {
            site.misbehave(rule);
            page.goto("").await;
            page.sees(saying("Ledgerboard has stopped")).await;
            page.misses(saying("Trade numbers worked out on site, with the working shown.")).await;
            assert_eq!(page.smallest_targets(48).await, [""; 0]);
            page.axe().await;
            page.screenshot("stopped").await;
            page.tap(saying("Get your records out")).await;
            page.reads("h1", "Get your records out").await;
            // Why, is in the browser's log.
            page.forgive("boot-").await;
            forgive_all(page).await;
            // As on another day: nothing of the last try is left.
            page.until("navigator.serviceWorker.getRegistrations().then((all) => Promise.all(all.map((it) => it.unregister()))).then(() => true)").await;
        }
    })
    .await;
}

/// Drops what else the browser said of a program that could not start: how much, differs.
async fn forgive_all(page: &Page) {
    for part in ["app-", "boot-", "sw.js"] {
        if page.console().await.iter().any(|line| line.contains(part)) {
            page.forgive(part).await;
        }
    }
}

/// Not even the script that would say so.
#[tokio::test]
async fn it_comes_into_view_by_itself_where_nothing_starts_at_all() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, site, .. }| {
        site.misbehave("boot.js answer 500");
        page.goto("").await;
        page.sees(saying("Trade numbers worked out on site, with the working shown.")).await;
        page.misses(saying("Get your records out")).await;
        page.set_patience(Duration::from_secs(20));
        page.sees(saying("Get your records out")).await;
        assert_eq!(page.overflow().await, [""; 0]);
        page.tap(saying("Get your records out")).await;
        page.reads("h1", "Get your records out").await;
        page.forgive("boot-").await;
        page.forgive("preload").await;
    })
    .await;
}

#[tokio::test]
async fn it_is_in_view_when_the_program_stops_half_way() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/box-fill").await;
        page.enter("[data-path=marked]", "20.25").await;
        page.until("location.hash.includes('20.25')").await;
        let _: Option<bool> =
            page.evaluate("window.dispatchEvent(new Event('ledgerboard:panic')), null").await;
        page.sees(saying("Ledgerboard has stopped")).await;
        page.until("scrollY === 0 && document.querySelector('#fault h1').getBoundingClientRect().top < 100").await;
        page.axe().await;
        page.screenshot("stopped-half-way").await;
        // No figure stands that may be half worked, and nothing that would do nothing.
        page.misses(".answer").await;
        page.misses(saying("Save to job")).await;
        // What was typed can be read, and not be typed into: nobody would keep it.
        page.reads("[data-path=marked]", "20.25").await;
        page.until("document.querySelector('#app').inert").await;
        page.tap(saying("Get your records out")).await;
        page.until("document.querySelectorAll('#records li').length").await;
        page.back().await;
        page.reads("[data-path=marked]", "20.25").await;
    })
    .await;
}

#[tokio::test]
async fn it_opens_from_the_settings_without_signal() {
    journey(Server::start("/sub/"), Device::Phone, async |Journey { page, site, .. }| {
        page.goto("").await;
        page.until("navigator.serviceWorker.controller").await;
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den switch").await;
        page.until(
            "Object.keys(localStorage).some((key) => localStorage[key].includes('Den switch'))",
        )
        .await;
        site.kill();
        page.goto("#/settings").await;
        page.tap(saying("Get your records out")).await;
        page.reads("h1", "Get your records out").await;
        // First each job once, in its last whole copy; the copies under a fold.
        let rows = page.all_texts("#jobs li").await;
        assert_eq!(rows.len(), 1, "{rows:#?}");
        assert!(rows[0].contains("1 saved number · 20"), "{rows:#?}");
        let (_, one) = page.saves("#jobs li button:first-of-type").await;
        assert!(backup::read(&one).is_ok_and(|read| read.jobs.len() == 1), "{one}");
        page.misses(LIST).await;
        page.tap("#copies").await;
        let lines = page.all_texts(LIST).await;
        assert!(lines.iter().any(|line| line.contains("ledgerboard.job.")), "{lines:#?}");
        assert!(lines.iter().any(|line| line.contains("ledgerboard.draft.")), "{lines:#?}");
        let (_, all) = page.saves(saying("Save all as one file")).await;
        assert!(all.contains("Den switch"));
        page.tap(saying("Back to Ledgerboard")).await;
        page.reads("h1", "What are you working out?").await;
    })
    .await;
}

async fn is_whole(page: &Page) {
    assert_eq!(page.overflow().await, [""; 0]);
    assert_eq!(page.smallest_targets(48).await, [""; 0]);
    // The bars of a text that scrolls lie over it, so that its contrast can't be told there.
    let undecided = page.axe().await.into_iter().filter(|line| !line.contains("#shown-text"));
    assert_eq!(undecided.collect::<Vec<_>>(), [""; 0]);
}

async fn whole_on(device: Device) {
    journey(Server::start("/"), device, async |Journey { page, .. }| {
        seeded(page).await;
        page.tap(saying("Show all as text")).await;
        page.sees("#shown-text").await;
        is_whole(page).await;
        page.scheme(Scheme::Dark).await;
        is_whole(page).await;
        page.screenshot("rescue-dark").await;
        page.text_percent(200).await;
        is_whole(page).await;
    })
    .await;
}

#[tokio::test]
async fn it_is_whole_on_a_phone() {
    whole_on(Device::Phone).await;
}

#[tokio::test]
async fn it_is_whole_on_a_small_phone() {
    whole_on(Device::SmallPhone).await;
}

#[tokio::test]
async fn it_is_whole_at_a_desk() {
    whole_on(Device::Desk).await;
}
