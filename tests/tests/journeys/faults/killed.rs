//! A phone that dies: all of the browser's processes end at once, and what it held back is gone.

use std::time::Duration;

use super::{is_saved, open_job, save};
use crate::harness::{Device, Page, Server, journey, saying};

#[tokio::test]
async fn killed_a_third_of_a_second_after_a_save() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        journey.page.goto("#/box-fill").await;
        journey.page.tap(saying("Save to job")).await;
        is_saved(&journey.page, "Saved, with a second copy").await;
        tokio::time::sleep(Duration::from_millis(300)).await;
        journey.browser.kill().await;
        journey.page = journey.browser.open().await;
        let page = &journey.page;
        page.goto("#/").await;
        open_job(page).await;
        page.reads(".mark .value", "14.0 in³").await;
        page.reads(".held", "Saved on this phone, with a second copy.").await;
    })
    .await;
}

/// Opens what can be changed of the only number, the note too.
async fn open_details(page: &Page) {
    open_job(page).await;
    page.tap(".mark summary").await;
    page.sees(".details summary").await;
    if page.evaluate("!document.querySelector('.details details').open").await {
        page.tap(".details summary").await;
    }
}

#[tokio::test]
async fn killed_with_the_write_in_flight() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        save(&journey.page, "Den switch").await;
        let mut notes = Vec::new();
        // Typing pauses for a quarter of a second before it is written: the kill comes around then.
        for (round, wait) in (1..).zip([200, 245, 255, 300]) {
            let spot = format!("Room {round}");
            open_details(&journey.page).await;
            journey.page.enter("#mark-spot", &spot).await;
            let written =
                format!("Object.values({{...localStorage}}).some((it) => it.includes('{spot}'))");
            journey.page.until(&written).await;
            journey.page.reads(".held", "Saved on this phone, with a second copy.").await;
            open_details(&journey.page).await;
            let noted = format!("Round {round}: {}", "words ".repeat(30));
            journey.page.enter("#mark-note", &noted).await;
            tokio::time::sleep(Duration::from_millis(wait)).await;
            journey.browser.kill().await;
            journey.page = journey.browser.open().await;
            journey.page.goto("#/").await;
            open_job(&journey.page).await;
            journey.page.reads(".mark-title", "Den switch").await;
            // What was shown as saved is there; what was in flight is whole, or as it was before.
            journey.page.sees(saying(&spot)).await;
            let note: String = journey
                .page
                .evaluate("document.querySelector('.mark > p[data-own]')?.textContent ?? ''")
                .await;
            notes.push(noted);
            assert!(note.is_empty() || notes.iter().any(|it| it.starts_with(&note)), "{note}");
            journey.page.misses(saying("Set aside")).await;
        }
    })
    .await;
}

#[tokio::test]
async fn a_removed_job_stays_removed_when_killed() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        save(&journey.page, "Den switch").await;
        // Local storage has it on the disk; that it is removed is only in the database.
        journey.browser.close().await;
        journey.page = journey.browser.open().await;
        journey.page.goto("#/").await;
        open_job(&journey.page).await;
        journey.page.tap(saying("Remove this job")).await;
        journey.page.tap(saying("Remove")).await;
        journey.page.until("!Object.keys(localStorage).some((it) => it.includes('.job.'))").await;
        journey.browser.kill().await;
        journey.page = journey.browser.open().await;
        journey.page.goto("#/jobs").await;
        journey.page.misses(".doors a").await;
        tokio::time::sleep(Duration::from_millis(300)).await;
        journey.page.misses(".doors a").await;
    })
    .await;
}

#[tokio::test]
async fn the_clock_set_back() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        save(&journey.page, "first").await;
        let page = &journey.page;
        page.before_all("const now = Date.now; Date.now = () => now() - 3e11;").await;
        page.reload().await;
        open_job(page).await;
        page.tap(".mark summary").await;
        page.enter("#mark-title", "second").await;
        page.reads(".mark-title", "second").await;
        page.until("(await 0, document.querySelector('.held').textContent === 'Saved on this phone, with a second copy.')").await;
        journey.browser.kill().await;
        journey.page = journey.browser.open().await;
        journey.page.goto("#/").await;
        open_job(&journey.page).await;
        journey.page.reads(".mark-title", "second").await;
    })
    .await;
}

#[tokio::test]
async fn a_private_window() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        journey.browser.close().await;
        journey.browser.be_private();
        journey.page = journey.browser.open().await;
        save(&journey.page, "Den switch").await;
        open_job(&journey.page).await;
        journey.page.goto("#/jobs").await;
        journey.page.sees(saying("This browser may clear saved numbers when the phone runs out of room, and a private window forgets all when it is closed. Put this page on the home screen, and back up what must not be lost.")).await;
        journey.page.screenshot("private-window").await;
        // As long as nothing is promised, and not only where a number was just saved.
        journey.page.reload().await;
        journey.page.sees(saying("This browser may clear saved numbers when the phone runs out of room, and a private window forgets all when it is closed. Put this page on the home screen, and back up what must not be lost.")).await;
        journey.browser.close().await;
        journey.page = journey.browser.open().await;
        journey.page.goto("#/jobs").await;
        journey.page.misses(".doors a").await;
        journey.page.sees(saying("Make this job")).await;
    })
    .await;
}
