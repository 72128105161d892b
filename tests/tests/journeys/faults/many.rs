//! A phone with years of jobs on it.

use std::time::{Duration, Instant};

use ledgerboard_core::catalog::find;
use ledgerboard_core::edition::Basis;
use ledgerboard_core::job::record::{self, Head};
use ledgerboard_core::job::{Edit, Job, Mark, Stamp, apply};
use ledgerboard_core::measure::Units;

use super::{is_saved, name_it, quoted};
use crate::harness::{Device, Page, Server, journey, saying};

/// More than twice what local storage has room for.
const JOBS: u64 = 40;
const MARKS: u64 = 200;

fn stamp(step: u64) -> Stamp {
    let at = 1_791_295_200 + i64::try_from(step).unwrap_or(0);
    Stamp { at, zone: -300, device: "phone".to_owned(), random: step }
}

/// An invented job of so many numbers of four calculators.
fn job() -> Job {
    let mut job = Job::new("House", "Invented", &stamp(0)).expect("a short name");
    let entries = ["box-fill", "cable-securing", "room", "hold"].map(|id| find(id).expect("ours"));
    for step in 1..=MARKS {
        let entry = entries[usize::try_from(step % 4).unwrap_or(0)];
        let stamp = stamp(step);
        let mark =
            Mark::new(entry, &entry.sample(), Units::Customary, Basis::default(), None, &stamp);
        let mark = Mark { title: format!("Number {step}"), ..mark.expect("a sample works") };
        apply(&mut job, Edit::Keep(mark), &stamp).expect("there is room for it");
    }
    job
}

/// Such jobs, each under its own name, as the database holds them.
fn records(jobs: u64) -> Vec<(String, String)> {
    let job = job();
    let record = |number| {
        let name = format!("House {number}");
        let own = Job::new(&name, "Invented", &stamp(1_000 + number)).expect("a short name");
        let id = own.id.clone();
        let job = Job { id: own.id, name: own.name, ..job.clone() };
        (format!("ledgerboard.job.{id}.a"), record::write(&job, &Head::new(1, "phone", 0)))
    };
    (0..jobs).map(record).collect()
}

/// Puts them there, beside the program's back.
async fn put(page: &Page, records: &[(String, String)]) {
    page.set_patience(Duration::from_secs(60));
    page.goto("#/settings").await;
    for some in records.chunks(10) {
        let some: Vec<String> = some
            .iter()
            .map(|(name, text)| format!("store.put({}, {});", quoted(text), quoted(name)))
            .collect();
        page.evaluate::<()>(&format!(
            "new Promise((done, failed) => {{ const request = indexedDB.open('ledgerboard'); \
             request.onsuccess = () => {{ \
             const writing = request.result.transaction('records', 'readwrite'); \
             const store = writing.objectStore('records'); {} \
             writing.oncomplete = () => {{ request.result.close(); done(); }}; \
             writing.onabort = () => failed(writing.error); }}; }})",
            some.concat()
        ))
        .await;
    }
}

#[tokio::test]
async fn forty_jobs_of_two_hundred_numbers() {
    let records = records(JOBS);
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        put(page, &records).await;
        page.goto("#/jobs").await;
        page.reload().await;
        page.until("document.querySelectorAll('.doors a').length === 40").await;
        // What local storage has no room for says so, and comes back when it is looked at.
        page.until("[...document.querySelectorAll('.doors a')].some((it) => it.textContent.includes('one copy until you open it'))").await;
        let away: String = page
            .evaluate(
                "[...document.querySelectorAll('.doors a')].find((it) => \
                 it.textContent.includes('one copy until you open it')).getAttribute('href')",
            )
            .await;
        page.tap(format!("[href='{away}']").as_str()).await;
        page.until("document.querySelectorAll('.mark-title').length === 200").await;
        page.sees(".ready").await;
        page.sees(saying("Saved on this phone, with a second copy.")).await;
        page.screenshot("two-hundred-numbers").await;
        // Done with: below the others, and all of it there.
        page.tap(saying("Put this job away")).await;
        page.sees(saying("Take this job out again")).await;
        page.goto("#/jobs").await;
        page.tap(saying("Put away: 1")).await;
        page.tap(format!(".away [href='{away}']").as_str()).await;
        page.until("document.querySelectorAll('.mark-title').length === 200").await;
        page.tap(saying("Take this job out again")).await;
        // Any number by a few letters of it.
        page.goto("#/jobs").await;
        page.misses(saying("Put away: 1")).await;
        page.enter("#find", "number 17 house 32").await;
        page.until("document.querySelectorAll('.find .mark-line').length === 14").await;
        page.screenshot("a-number-is-found").await;
        // Who opens one and comes back finds the words and the place as they were left.
        page.evaluate::<()>("void document.querySelector('.find li:nth-child(9)').scrollIntoView({ block: 'center', behavior: 'instant' })").await;
        let place: f64 = page.evaluate("scrollY").await;
        assert!(place > 300.0, "scrolled to {place}");
        page.tap(".find li:nth-child(9) .mark-line").await;
        page.sees(".answer .figure").await;
        page.back().await;
        page.until("document.querySelectorAll('.find .mark-line').length === 14").await;
        page.until(&format!("Math.abs(scrollY - {place}) < 100")).await;
        // From the calculator by way of the first page, too.
        page.tap(".find li:nth-child(9) .mark-line").await;
        page.sees(".answer .figure").await;
        page.tap(saying("All calculators")).await;
        page.tap(saying("All jobs")).await;
        page.until("document.querySelector('#find').value === 'number 17 house 32'").await;
        // It outlives a reload too, and finds the same by then.
        page.reload().await;
        page.until("document.querySelector('#find')?.value === 'number 17 house 32'").await;
        page.sees(".find .mark-line").await;
        page.until("document.querySelectorAll('.find .mark-line').length === 14").await;
        page.tap(".find button").await;
        page.has_focus("#find").await;
        page.misses(".find .mark-line").await;
        page.enter("#find", "number 17 house 32").await;
        page.tap(".find li:first-child .mark-line").await;
        page.sees(".answer .figure").await;
        // What is done with it now is saved twice, beside all the others.
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        name_it(page, "One more").await;
        is_saved(page, "Saved, with a second copy").await;
        let held: usize = page
            .evaluate("Object.entries(localStorage).reduce((sum, [name, text]) => sum + name.length + text.length, 0)")
            .await;
        assert!(held <= 3_700_000, "local storage holds {held} characters");
        page.goto("#/jobs").await;
        page.reload().await;
        page.until("document.querySelectorAll('.doors a').length >= 40").await;
        page.tap(saying("House 32")).await;
        page.until("document.querySelectorAll('.mark-title').length >= 200").await;
    })
    .await;
}

/// `cargo test -p ledgerboard-tests --features browser --test journeys -- --ignored --nocapture
/// how_long` prints how long a phone four times slower takes, from the tap to the frame after.
#[tokio::test]
#[ignore = "a benchmark: it prints times and checks none"]
async fn how_long_a_hundred_jobs_take() {
    let records = records(100);
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        for count in [25, 50, 100] {
            put(page, &records[count / 2 * usize::from(count > 25)..count]).await;
            page.goto("#/jobs").await;
            page.reload().await;
            let all = format!("document.querySelectorAll('.doors a').length === {count}");
            page.until(&all).await;
            page.until("Object.keys(localStorage).includes('ledgerboard.list')").await;
            page.slower(4).await;
            let start = Instant::now();
            page.reload().await;
            page.until(&all).await;
            println!(
                "{count} jobs of {MARKS} numbers: listed {:.0?} after a reload",
                start.elapsed()
            );
            // All is read in the background by then.
            tokio::time::sleep(Duration::from_secs(8)).await;
            let job: String = page
                .evaluate("document.querySelectorAll('.doors a')[7].getAttribute('href')")
                .await;
            for (what, place, there) in [
                ("first page", "#/", "document.querySelectorAll('.doors a').length > 30"),
                ("list", "#/jobs", &*all),
                ("job", &*job, "document.querySelectorAll('.mark-title').length >= 8"),
                ("list", "#/jobs", &*all),
                ("job again", &*job, "document.querySelectorAll('.mark-title').length >= 8"),
            ] {
                let took: f64 = page
                    .evaluate(&format!(
                        "new Promise((done) => {{ const start = performance.now(); \
                         const look = () => {there} && location.hash === '{place}' \
                         ? done(performance.now() - start) : requestAnimationFrame(look); \
                         location.hash = '{place}'; requestAnimationFrame(look); }})"
                    ))
                    .await;
                println!("    {what}: {took:.0} ms");
                tokio::time::sleep(Duration::from_secs(3)).await;
            }
            page.slower(1).await;
        }
    })
    .await;
}
