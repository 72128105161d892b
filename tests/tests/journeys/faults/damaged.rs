//! Bytes that are not what was written, in one store or both.

use ledgerboard_core::job::Moment;
use ledgerboard_core::job::backup::{self, Written};
use ledgerboard_core::job::record;

use super::{
    MIRROR, in_local, in_mirror, is_saved, job_id, name_it, open_job, put, put_local, quoted, save,
};
use crate::harness::{Device, Page, Server, journey, saying};

/// What a fault makes of a record's text.
type Damage = fn(&str) -> String;

fn torn(text: &str) -> String {
    text[..text.len() / 2].to_owned()
}

fn cut_to_nothing(_: &str) -> String {
    String::new()
}

fn flipped(text: &str) -> String {
    // One bit: `t` is 0x74, `u` is 0x75.
    text.replacen("Den switch", "Den swiuch", 1)
}

fn foreign(_: &str) -> String {
    "{\"theme\":\"dark\"}".to_owned()
}

/// The job is whole, the bad bytes are listed once, and they are what they were.
async fn is_whole_and_lists(page: &Page, bad: &[String]) {
    page.reload().await;
    open_job(page).await;
    page.reads(".mark-title", "Den switch").await;
    page.reads(".held", "Saved on this phone, with a second copy.").await;
    // Again: what is set aside is set aside once.
    page.reload().await;
    page.goto("#/jobs").await;
    page.sees(saying("Set aside")).await;
    page.sees(saying("One copy of this job could not be read. The job itself is whole: it came from another copy. Nothing to do; the bad copy is kept here.")).await;
    let mut kept: Vec<String> = page
        .evaluate(&format!(
            "{MIRROR}.then((all) => Object.entries({{...all, ...localStorage}}) \
             .filter(([name]) => name.startsWith('ledgerboard.aside.')).map(([, text]) => text))"
        ))
        .await;
    let mut bad = bad.to_vec();
    kept.sort();
    bad.sort();
    assert_eq!(kept, bad);
}

async fn a_working_copy_is(damage: Damage) {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        save(page, "Den switch").await;
        let name = format!("ledgerboard.job.{}", job_id(page).await);
        let good = in_local(page, &name).await.expect("a working copy");
        let bad = damage(&good);
        put_local(page, &name, &bad).await;
        is_whole_and_lists(page, &[bad]).await;
        assert_eq!(in_local(page, &name).await, Some(good), "it is made good");
    })
    .await;
}

async fn slots_are(damage: Damage, both: bool) {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        save(page, "Den switch").await;
        let id = job_id(page).await;
        let slots = ["a", "b"].map(|slot| format!("ledgerboard.job.{id}.{slot}"));
        let mut bad = Vec::new();
        for slot in &slots {
            let text = in_mirror(page, slot).await.expect("both slots are written");
            if both || text.contains("Den switch") {
                // Not the same bytes twice.
                let text = damage(&text) + if both { slot } else { "" };
                put(page, slot, &text).await;
                bad.push(text);
            }
        }
        is_whole_and_lists(page, &bad).await;
        // Nothing has to be typed for the mirror to be whole again.
        let good: usize = page
            .evaluate(&format!("{MIRROR}.then((all) => Object.entries(all).filter(([name, text]) => name.startsWith('ledgerboard.job.') && text.includes('Den switch') && text.startsWith('ledgerboard ')).length)"))
            .await;
        assert!(good >= 1);
    })
    .await;
}

#[tokio::test]
async fn a_torn_working_copy() {
    a_working_copy_is(torn).await;
}

#[tokio::test]
async fn a_working_copy_cut_to_nothing() {
    a_working_copy_is(cut_to_nothing).await;
}

#[tokio::test]
async fn a_working_copy_with_one_bit_flipped() {
    a_working_copy_is(flipped).await;
}

#[tokio::test]
async fn a_foreign_working_copy() {
    a_working_copy_is(foreign).await;
}

#[tokio::test]
async fn a_torn_slot() {
    slots_are(torn, false).await;
}

#[tokio::test]
async fn a_slot_with_one_bit_flipped() {
    slots_are(flipped, false).await;
}

#[tokio::test]
async fn a_foreign_slot() {
    slots_are(foreign, false).await;
}

#[tokio::test]
async fn both_slots_of_one_store_bad() {
    slots_are(torn, true).await;
}

#[tokio::test]
async fn one_store_cleared() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        save(page, "Den switch").await;
        page.evaluate::<()>("localStorage.clear()").await;
        page.reload().await;
        open_job(page).await;
        page.reads(".mark-title", "Den switch").await;
        page.reads(".held", "Saved on this phone, with a second copy.").await;

        page.evaluate::<()>(
            "new Promise((done, failed) => { const gone = indexedDB.deleteDatabase('ledgerboard'); \
             gone.onsuccess = () => done(); gone.onerror = () => failed(gone.error); })",
        )
        .await;
        page.reload().await;
        open_job(page).await;
        page.reads(".mark-title", "Den switch").await;
        page.reads(".held", "Saved on this phone, with a second copy.").await;
        let name = format!("ledgerboard.job.{}.a", job_id(page).await);
        assert!(in_mirror(page, &name).await.expect("it is mirrored").contains("Den switch"));
    })
    .await;
}

/// Where the copies of the last writing are bad and one of before is not, that one holds, and the
/// page says what that means.
#[tokio::test]
async fn an_older_copy_takes_the_place_of_a_later_one() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        save(page, "Den switch").await;
        page.tap(saying("Done")).await;
        page.tap(saying("Save new")).await;
        is_saved(page, "Saved, with a second copy").await;
        let id = job_id(page).await;
        let name = format!("ledgerboard.job.{id}");
        let last = in_local(page, &name).await.expect("a working copy");
        let slots = [format!("{name}.a"), format!("{name}.b")];
        page.goto("#/settings").await;
        let spoil = |text: &str| text.replacen("14.0", "14.1", 1).replacen("\"at\":1", "\"at\":2", 1);
        put_local(page, &name, &spoil(&last)).await;
        for slot in &slots {
            let text = in_mirror(page, slot).await.expect("both slots are written");
            if text == last {
                put(page, slot, &spoil(&text)).await;
            }
        }
        page.reload().await;
        open_job(page).await;
        assert_eq!(page.all_texts(".mark-title").await.len(), 1, "what was saved last is missing");
        let told = "[...document.querySelectorAll('p')].some((it) => it.textContent.startsWith('An older copy took its place, saved ') && it.textContent.includes(': what was saved after that may be missing.'))";
        page.until(told).await;
        page.screenshot("older-copy").await;
        // And at the next start, when both stores have the older one whole.
        page.reload().await;
        page.until(told).await;
        page.tap(saying("See what was set aside")).await;
        page.sees(saying("Set aside")).await;
        let reasons = page.all_texts(".aside li p").await;
        assert_eq!(reasons.len(), 2);
        for reason in &reasons {
            assert!(reason.starts_with("An older copy took its place, saved "), "{reason}");
        }
        let kept: Vec<String> = page
            .evaluate("Object.keys(localStorage).filter((name) => name.startsWith('ledgerboard.aside.'))")
            .await;
        assert!(kept.iter().all(|name| name.contains(".later.") && name.contains(&id)), "{kept:?}");
    })
    .await;
}

/// All copies bad: the bytes stay, the reason is told, they come out as a file, and work goes on.
#[tokio::test]
async fn every_copy_of_a_job_bad() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        save(page, "Den switch").await;
        let id = job_id(page).await;
        let name = format!("ledgerboard.job.{id}");
        let text = in_local(page, &name).await.expect("a working copy");
        let half = torn(&text);
        put_local(page, &name, &half).await;
        for slot in ["a", "b"] {
            put(page, &format!("{name}.{slot}"), &format!("{half} {slot}")).await;
        }
        page.reload().await;
        page.goto("#/jobs").await;
        page.sees(saying("Set aside")).await;
        page.misses(".doors a").await;
        let reasons = page.all_texts(".aside li p").await;
        assert_eq!(reasons.len(), 3);
        for reason in &reasons {
            assert!(reason.starts_with("This job was cut off while it was written."), "{reason}");
        }
        page.screenshot("set-aside").await;
        page.goto(&format!("#/job/{id}")).await;
        page.reads("h1", "This job is not on this phone").await;
        page.tap(saying("See what was set aside")).await;
        page.sees(saying("Set aside")).await;
        assert_eq!(page.smallest_targets(48).await, [""; 0]);
        assert_eq!(page.axe().await, [""; 0]);
        page.evaluate::<()>(
            "void (window.saved = [], window.made = URL.createObjectURL, \
             URL.createObjectURL = (blob) => { window.blob = blob; return window.made.call(URL, blob); }, \
             HTMLAnchorElement.prototype.click = function () { \
             window.blob.text().then((text) => window.saved.push([this.download, text])); })",
        )
        .await;
        page.evaluate::<()>("void document.querySelector('.aside li button').click()").await;
        page.until("window.saved.length").await;
        let (file, content): (String, String) = page.evaluate("window.saved[0]").await;
        assert!(file.starts_with("ledgerboard.aside.") && file.ends_with(".txt"), "{file}");
        assert!(content.starts_with(&half), "{content}");
        assert_eq!(in_local(page, &name).await, Some(half), "nothing took its place");

        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        name_it(page, "Another").await;
        is_saved(page, "Saved, with a second copy").await;
        page.reload().await;
        page.goto("#/jobs").await;
        assert_eq!(page.all_texts(".aside li p").await.len(), 3, "listed as long as they are there");

        // A backup brings the job back, and what could not be read stays set aside.
        let folder = tempfile::tempdir().expect("a temporary folder");
        let file = folder.path().join("backup.json");
        std::fs::write(&file, backup_of(&text)).expect("it can be written");
        page.choose_file("#restore", &file).await;
        page.tap(saying("Restore")).await;
        page.sees(saying("Restored.")).await;
        page.misses(".trouble p").await;
        let whole = quoted(text.split_once('\n').expect("a line and JSON").1);
        page.until(&format!("localStorage['{name}'].endsWith({whole})")).await;
        page.reload().await;
        page.goto("#/jobs").await;
        page.until("document.querySelectorAll('.doors a').length === 2").await;
        assert_eq!(page.all_texts(".aside li p").await.len(), 3, "what was set aside stays");
        page.goto(&format!("#/job/{id}")).await;
        page.reads(".held", "Saved on this phone, with a second copy.").await;
    })
    .await;
}

/// A backup of the one job of a record.
fn backup_of(record: &str) -> String {
    let (_, job) = record::read(record).expect("a whole record");
    let made = Moment { at: 1_791_298_800, zone: 0 };
    let written = Written { by: "Ledgerboard".to_owned(), made, device: "phone".to_owned() };
    backup::write([&job], &written)
}

#[tokio::test]
async fn a_newer_schema_is_left_alone_and_asks_to_update() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        save(page, "Den switch").await;
        let name = format!("ledgerboard.job.{}", job_id(page).await);
        let text = in_local(page, &name).await.expect("a working copy");
        let newer = of_a_newer_program(&text);
        put_local(page, &name, &newer).await;
        page.reload().await;
        page.goto("#/jobs").await;
        page.sees(saying("This job was written by a newer version. Update this one to open it; until then it is left as it is.")).await;
        page.misses(".doors a").await;
        page.screenshot("newer-schema").await;
        // The day's loose notes are shut: another job takes today's numbers.
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        name_it(page, "Another").await;
        is_saved(page, "Saved, with a second copy").await;
        page.reload().await;
        page.sees("h1").await;
        assert_eq!(in_local(page, &name).await, Some(newer));
        for slot in ["a", "b"] {
            let slot = in_mirror(page, &format!("{name}.{slot}")).await.expect("both slots stay");
            assert!(!slot.contains("Another"));
        }
    })
    .await;
}

/// The same record under the next schema and a later revision, whole.
fn of_a_newer_program(text: &str) -> String {
    let (line, json) = text.split_once('\n').expect("an envelope");
    let parts: Vec<&str> = line.split(' ').collect();
    let number = |at: usize| parts[at].parse::<u64>().expect("a number");
    let (schema, revision) = (number(1) + 1, number(2) + 1);
    let line = format!("{} {schema} {revision} {}", parts[0], parts[3..6].join(" "));
    format!("{line} {:08x}\n{json}", crc32(format!("{line}\n{json}").as_bytes()))
}

/// Bit by bit.
///
/// # Source
/// ISO/IEC 15948 (PNG), annex D.
fn crc32(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(u32::MAX, |sum, byte| {
        (0..8).fold(sum ^ u32::from(*byte), |sum, _| sum >> 1 ^ (0xEDB8_8320 * (sum & 1)))
    })
}

#[tokio::test]
async fn a_draft_and_settings_that_can_not_be_read() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        page.goto("#/box-fill").await;
        page.tap(saying("Add 14-3")).await;
        page.until("localStorage['ledgerboard.draft.box-fill']?.includes('14-3')").await;
        page.goto("#/jobs").await;
        put_local(page, "ledgerboard.draft.box-fill", "{\"half").await;
        put_local(page, "ledgerboard.settings", "[]").await;
        page.reload().await;
        page.goto("#/box-fill").await;
        page.tap(saying("Add 14-3")).await;
        page.until("localStorage['ledgerboard.draft.box-fill']?.includes('14-3')").await;
        page.goto("#/jobs").await;
        let reasons = page.all_texts(".aside li p").await;
        assert_eq!(reasons, ["This could not be read, so the page started it anew. What was there is kept here."; 2]);
        let mut kept: Vec<String> = page
            .evaluate("Object.entries(localStorage).filter(([name]) => name.startsWith('ledgerboard.aside.')).map(([, text]) => text)")
            .await;
        kept.sort();
        assert_eq!(kept, ["[]", "{\"half"]);
    })
    .await;
}
