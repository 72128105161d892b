//! Two tabs that work on the same job.

use super::{in_mirror, is_saved, job_id, open_job, save};
use crate::harness::{Device, Page, Server, journey, saying};

/// A tab that hears nothing of the other one: it learns of it only when it writes.
const DEAF: &str =
    "addEventListener('storage', (event) => event.stopImmediatePropagation(), true);";

async fn rename(page: &Page, title: &str) {
    page.tap(".mark summary").await;
    page.enter("#mark-title", title).await;
    page.until(&format!(
        "[...document.querySelectorAll('.mark-title')].some((it) => it.textContent === '{title}')"
    ))
    .await;
    page.reads(".held", "Saved on this phone, with a second copy.").await;
}

async fn titles(page: &Page) -> Vec<String> {
    let mut titles = page.all_texts(".mark-title").await;
    titles.sort();
    titles
}

#[tokio::test]
async fn two_tabs_edit_one_job() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        save(&journey.page, "first").await;
        let other = journey.browser.new_tab().await;
        other.before_all(DEAF).await;
        other.goto("#/box-fill").await;
        other.sees("h1").await;
        journey.page.tap(saying("Done")).await;
        journey.page.tap(saying("Save new")).await;
        is_saved(&journey.page, "Saved, with a second copy").await;
        other.tap(saying("Save to job")).await;
        is_saved(&other, "Saved, with a second copy").await;
        open_job(&other).await;
        other.until("document.querySelectorAll('.mark-title').length === 3").await;
        // The first tab hears of it by itself.
        open_job(&journey.page).await;
        journey.page.until("document.querySelectorAll('.mark-title').length === 3").await;
        journey.page.reload().await;
        journey.page.until("document.querySelectorAll('.mark-title').length === 3").await;
    })
    .await;
}

#[tokio::test]
async fn two_tabs_edit_one_mark() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        save(&journey.page, "first").await;
        let other = journey.browser.new_tab().await;
        other.before_all(DEAF).await;
        other.goto("#/").await;
        open_job(&other).await;
        open_job(&journey.page).await;
        rename(&journey.page, "by one").await;
        rename(&other, "by the other").await;
        other.until("document.querySelectorAll('.mark-title').length === 2").await;
        assert_eq!(titles(&other).await, ["by one, from the other tab", "by the other"]);
        journey.page.until("document.querySelectorAll('.mark-title').length === 2").await;
        journey.page.reload().await;
        journey.page.until("document.querySelectorAll('.mark-title').length === 2").await;
        assert_eq!(titles(&journey.page).await, ["by one, from the other tab", "by the other"]);
        journey.page.screenshot("two-tabs-one-mark").await;
    })
    .await;
}

/// The database alone decides, in the transaction that writes.
#[tokio::test]
async fn two_tabs_edit_one_mark_with_local_storage_blocked() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        let no_local = "Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('refused', 'SecurityError'); } });";
        journey.page.before_all(no_local).await;
        journey.page.goto("#/box-fill").await;
        journey.page.tap(saying("Save to job")).await;
        is_saved(&journey.page, "Saved, one copy").await;
        let other = journey.browser.new_tab().await;
        other.before_all(no_local).await;
        other.goto("#/").await;
        open_job(&other).await;
        open_job(&journey.page).await;
        for (page, title) in [(&journey.page, "by one"), (&other, "by the other")] {
            page.tap(".mark summary").await;
            page.enter("#mark-title", title).await;
            page.until(&format!("[...document.querySelectorAll('.mark-title')].some((it) => it.textContent === '{title}')")).await;
            page.reads(".held", "Saved on this phone, one copy.").await;
        }
        other.until("document.querySelectorAll('.mark-title').length === 2").await;
        assert_eq!(titles(&other).await, ["by one, from the other tab", "by the other"]);
    })
    .await;
}

/// Title here, note there: one mark, with both.
#[tokio::test]
async fn two_tabs_edit_two_parts_of_one_mark() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        save(&journey.page, "first").await;
        let other = journey.browser.new_tab().await;
        other.before_all(DEAF).await;
        other.goto("#/").await;
        open_job(&other).await;
        other.tap(".mark summary").await;
        other.sees("#mark-spot").await;
        open_job(&journey.page).await;
        rename(&journey.page, "by one").await;
        other.enter("#mark-spot", "Den").await;
        other.reads(".held", "Saved on this phone, with a second copy.").await;
        other.reads(".mark-title", "by one").await;
        let id = job_id(&other).await;
        let mut found = String::new();
        for slot in ["a", "b"] {
            found += &in_mirror(&other, &format!("ledgerboard.job.{id}.{slot}"))
                .await
                .unwrap_or_default();
        }
        assert!(found.contains("\"title\":\"by one\",\"spot\":\"Den\""), "{found}");
    })
    .await;
}

/// Saved over in one tab, and then in the other, which still shows the number of before.
#[tokio::test]
async fn two_tabs_save_over_one_mark() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        save(&journey.page, "first").await;
        open_job(&journey.page).await;
        let other = journey.browser.new_tab().await;
        other.goto("#/").await;
        open_job(&other).await;
        for page in [&journey.page, &other] {
            page.tap("a.mark-line").await;
            page.sees(saying("Save over")).await;
        }
        for (page, more) in [(&journey.page, "Add 14-3"), (&other, "Add 12-2")] {
            page.tap(saying(more)).await;
            page.tap(saying("Save over")).await;
            page.until(
                "document.querySelector('.saved')?.textContent.includes('. With a second copy')",
            )
            .await;
        }
        open_job(&other).await;
        other.until("document.querySelectorAll('.mark-title').length === 2").await;
        assert_eq!(titles(&other).await, ["first", "first, from the other tab"]);
        let values = other.all_texts(".mark .value").await;
        assert_ne!(values[0], values[1]);
    })
    .await;
}

#[tokio::test]
async fn a_job_removed_in_one_tab_goes_from_the_other() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        save(&journey.page, "first").await;
        let other = journey.browser.new_tab().await;
        other.goto("#/").await;
        open_job(&other).await;
        open_job(&journey.page).await;
        // A number of it stands open in the other tab too.
        let third = journey.browser.new_tab().await;
        third.goto("#/").await;
        open_job(&third).await;
        third.tap("a.mark-line").await;
        third.sees(saying("Save over")).await;
        journey.page.tap(saying("Remove this job")).await;
        journey.page.tap(saying("Remove")).await;
        journey.page.sees(saying("Undo")).await;
        other.reads("h1", "This job is not on this phone").await;
        third
            .sees(saying(
                "The job that this was for is no longer here. Save puts it in Loose notes.",
            ))
            .await;
        third.sees(saying("Save to job")).await;
        journey.page.tap(saying("Undo")).await;
        journey.page.reads(".mark-title", "first").await;
        other.reads(".mark-title", "first").await;
        third.sees(saying("Save over")).await;
    })
    .await;
}

/// Saved all the same, it is a new number of the same job, and that was said before.
#[tokio::test]
async fn a_number_removed_in_one_tab_is_told_in_the_other() {
    journey(Server::start("/"), Device::Phone, async |journey| {
        save(&journey.page, "first").await;
        let other = journey.browser.new_tab().await;
        other.goto("#/").await;
        open_job(&other).await;
        other.tap("a.mark-line").await;
        other.sees(saying("Save over")).await;
        open_job(&journey.page).await;
        journey.page.tap(".mark summary").await;
        journey.page.tap(saying("Remove")).await;
        journey.page.sees(saying("Undo")).await;
        other
            .sees(saying("This number was removed in another tab. Save keeps it as a new one."))
            .await;
        other.tap(saying("Save to job")).await;
        is_saved(&other, "Saved, with a second copy").await;
        journey.page.until("document.querySelectorAll('a.mark-line').length === 1").await;
    })
    .await;
}
