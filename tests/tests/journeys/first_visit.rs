//! The first visit: the page as a whole, on every device, and without signal afterwards.

use crate::harness::{Device, Journey, Page, Scheme, Server, journey, saying};

async fn is_whole(page: &Page) {
    page.sees(saying("Ledgerboard")).await;
    assert_eq!(page.overflow().await, [""; 0]);
    assert_eq!(page.smallest_targets(48).await, [""; 0]);
    // Both what it holds against the page and what it leaves undecided.
    assert_eq!(page.axe().await, [""; 0]);
}

async fn opens_whole(device: Device) {
    journey(Server::start("/"), device, async |Journey { page, .. }| {
        page.goto("").await;
        is_whole(page).await;
        page.scheme(Scheme::Dark).await;
        is_whole(page).await;
        page.text_percent(200).await;
        is_whole(page).await;
    })
    .await;
}

#[tokio::test]
async fn it_opens_whole_on_a_phone() {
    opens_whole(Device::Phone).await;
}

#[tokio::test]
async fn it_opens_whole_on_a_small_phone() {
    opens_whole(Device::SmallPhone).await;
}

#[tokio::test]
async fn it_opens_whole_on_a_desk() {
    opens_whole(Device::Desk).await;
}

#[tokio::test]
async fn it_starts_again_without_signal() {
    let server = Server::start("/sub/");
    journey(server, Device::Phone, async |journey| {
        journey.page.goto("").await;
        journey.page.sees(saying("Ledgerboard")).await;
        journey.page.until("navigator.serviceWorker.ready").await;
        assert_eq!(journey.page.installability().await, [""; 0]);

        journey.site.kill();
        journey.page.reload().await;
        journey.page.sees(saying("Ledgerboard")).await;
        journey.browser.kill().await;
        journey.page = journey.browser.open().await;
        journey.page.goto("#/box-fill").await;
        journey.page.reads("h1", "Box fill").await;
    })
    .await;
}

#[tokio::test]
async fn a_calculator_is_found_by_what_the_crew_calls_it() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("").await;
        page.enter("#find-calculator", "mud").await;
        page.reads(
            "#calculators ~ .doors li:first-child span:first-child",
            "Compound, tape and screws",
        )
        .await;
        page.reads("#calculators ~ [role='status']", "3 calculators with that word").await;
        is_whole(page).await;
        // A slip of the thumb, and nothing at all.
        page.enter("#find-calculator", "driling").await;
        page.reads(
            "#calculators ~ .doors li:first-child span:first-child",
            "Drilling and notching",
        )
        .await;
        page.enter("#find-calculator", "zzz").await;
        page.sees(saying(
            "No calculator has that word. Try another word for it, or fewer letters.",
        ))
        .await;
        is_whole(page).await;
        // All of them are back without a word; a search is a way in at the keyboard as well.
        page.enter("#find-calculator", "").await;
        page.sees(saying("Rough-in plan")).await;
        page.enter("#find-calculator", "grapas").await;
        page.press("Enter").await;
        page.reads("h1", "Securing a cable").await;
        page.back().await;
        page.sees("#find-calculator").await;
    })
    .await;
}
