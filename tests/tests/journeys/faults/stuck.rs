//! A record that stops the program does so once.

use super::{job_id, open_job, save};
use crate::harness::{Device, Server, journey, saying};

/// Stands in for a fault of the program that one record brings out: whatever shows this text traps.
const POISON: &str = "{ const make = Document.prototype.createTextNode; \
    Document.prototype.createTextNode = function (text) { \
        if (String(text).includes('Poison')) throw new WebAssembly.RuntimeError('unreachable'); \
        return make.call(this, text); \
    }; }";

#[tokio::test]
async fn a_record_that_stops_the_page_stops_it_once() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        save(page, "Poison").await;
        open_job(page).await;
        let script = page.before_all(POISON).await;
        page.reload().await;
        page.sees(saying("Ledgerboard has stopped")).await;
        page.sees(saying("Get your records out")).await;
        page.screenshot("stopped").await;
        page.forgive("unreachable").await;

        page.tap(saying("Reload")).await;
        page.reads("h1", "The page stopped here the last time").await;
        page.sees(saying("Rescue page")).await;
        page.screenshot("stopped-here").await;
        // All else works, and the job is listed with the reason.
        page.goto("#/box-fill").await;
        page.reads(".answer .figure", "14.0 in³").await;
        page.goto("#/jobs").await;
        page.sees(saying(
            "The page stopped while it opened this job, so it stays shut. Save it as a file first.",
        ))
        .await;
        page.sees(saying("Save as a file")).await;
        assert_eq!(page.smallest_targets(48).await, [""; 0]);

        // It stays so at every start, until somebody opens it all the same.
        page.reload().await;
        page.sees(saying("Open it all the same")).await;
        // With the fault gone, the job is there as it was.
        page.no_longer(script).await;
        page.reload().await;
        page.tap(saying("Open it all the same")).await;
        page.misses(saying("Set aside")).await;
        open_job(page).await;
        page.reads(".mark-title", "Poison").await;
        page.reads(".held", "Saved on this phone, with a second copy.").await;
    })
    .await;
}

/// Two tabs of one browser start together: what the other is just opening has stopped nothing.
#[tokio::test]
async fn what_another_tab_is_opening_is_not_shut() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        save(page, "Den switch").await;
        open_job(page).await;
        let job = format!("ledgerboard.job.{}", job_id(page).await);
        let note = "ledgerboard.opening.another";
        let noted = async |ago: u32| {
            page.evaluate::<()>(&format!(
                "localStorage.setItem('{note}', `${{Math.floor(Date.now() / 1000) - {ago}}} {job}`)"
            ))
            .await;
            page.reload().await;
        };
        noted(2).await;
        page.reads(".mark-title", "Den switch").await;
        page.until(&format!("localStorage.getItem('{note}')")).await;
        // One that nobody took away: that tab has stopped.
        noted(60).await;
        page.reads("h1", "The page stopped here the last time").await;
        page.until(&format!("localStorage.getItem('{note}') === null")).await;
        page.tap(saying("Open it all the same")).await;
        page.reads(".mark-title", "Den switch").await;
        page.until("!Object.keys(localStorage).some((it) => it.startsWith('ledgerboard.opening'))")
            .await;
    })
    .await;
}

#[tokio::test]
async fn opened_all_the_same_it_stays_shut_again() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let page = &journey.page;
        save(page, "Poison").await;
        open_job(page).await;
        page.before_all(POISON).await;
        page.reload().await;
        page.sees(saying("Ledgerboard has stopped")).await;
        page.forgive("unreachable").await;
        page.tap(saying("Reload")).await;
        page.tap(saying("Open it all the same")).await;
        page.sees(saying("Ledgerboard has stopped")).await;
        page.forgive("unreachable").await;
        page.tap(saying("Reload")).await;
        page.reads("h1", "The page stopped here the last time").await;
    })
    .await;
}
