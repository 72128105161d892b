//! A phone with years of jobs on it.

use std::time::{Duration, Instant};

use ledgerboard_core::catalog::find;
use ledgerboard_core::edition::Basis;
use ledgerboard_core::job::record::{self, Head};
use ledgerboard_core::job::{Edit, Job, Mark, Stamp, apply};
use ledgerboard_core::measure::Units;

use super::{is_saved, name_it, quoted};
use crate::harness::{Device, Server, journey, saying};

const JOBS: u64 = 100;
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

#[tokio::test]
async fn a_hundred_jobs_of_two_hundred_numbers() {
    let job = job();
    let records: Vec<(String, String)> = (0..JOBS)
        .map(|number| {
            let name = format!("House {number}");
            let own = Job::new(&name, "Invented", &stamp(1_000 + number)).expect("a short name");
            let id = own.id.clone();
            let job = Job { id: own.id, name: own.name, ..job.clone() };
            let head = Head::new(1, "phone", 0);
            (format!("ledgerboard.job.{id}.a"), record::write(&job, &head))
        })
        .collect();
    let size = records[0].1.len();
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
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
        page.goto("#/jobs").await;
        let start = Instant::now();
        page.reload().await;
        page.until("document.querySelectorAll('.doors a').length === 100").await;
        let listed = start.elapsed();
        let start = Instant::now();
        page.tap(saying("House 42")).await;
        page.until("document.querySelectorAll('.mark-title').length === 200").await;
        let opened = start.elapsed();
        page.screenshot("two-hundred-numbers").await;
        // What is done with it now is saved twice, beside all the others.
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        name_it(page, "One more").await;
        is_saved(page, "Saved twice").await;
        let held: usize = page
            .evaluate("Object.entries(localStorage).reduce((sum, [name, text]) => sum + name.length + text.length, 0)")
            .await;
        assert!(held <= 3_700_000, "local storage holds {held} characters");
        page.goto("#/jobs").await;
        page.reload().await;
        page.until("document.querySelectorAll('.doors a').length >= 100").await;
        page.tap(saying("House 42")).await;
        page.until("document.querySelectorAll('.mark-title').length >= 200").await;
        println!(
            "{JOBS} jobs of {MARKS} numbers, {size} bytes each: listed after {listed:.1?}, one \
             opened after {opened:.1?}, {held} characters in local storage"
        );
    })
    .await;
}
