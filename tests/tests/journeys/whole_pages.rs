//! Every page, on every device, light and dark, at 200 % text: nothing an accessibility checker
//! finds, nothing that sticks out, no target too small for a glove.

use crate::harness::{Device, Journey, Page, Scheme, Server, journey, saying};
use ledgerboard_core::catalog;

/// A question on its limit, one over it, one with a fault, lists and groups in use.
const QUESTIONS: [&str; 4] = [
    "#/box-fill?marked=28&gangs=2&cables.0.cable=14-2&cables.0.count=3&cables.1.cable=14-3&devices.0.count=2",
    "#/box-fill?enclosure=dev-3x2x2&clamps=inside&cables.0.cable=14-2&cables.0.count=2&devices.0.kind=receptacle&finish.proud=1%2F2&finish.build=13%2F16",
    "#/box-fill?marked=wide&cables.0.cable=14-2&wires.0.how=looped&barriers.0.after=9",
    "#/cable-securing",
];

/// Pages about no one question.
const PAGES: [&str; 9] = [
    "#/",
    "#/jobs",
    "#/job/demo",
    "#/job/demo/buy",
    "#/job/demo/ready",
    "#/job/demo/inspector",
    "#/settings",
    "#/nowhere",
    "#/box-fill?a.%=1",
];

async fn is_whole(page: &Page, place: &str) {
    // What lies half under a bar comes out by scrolling: the bars lie flat while it looks.
    let flat = |how: &str| {
        let bars = "document.querySelectorAll('.bar, .answer')";
        format!("{bars}.forEach((it) => it.style.position = '{how}'), null")
    };
    let _: Option<bool> = page.evaluate(&flat("static")).await;
    // What it leaves undecided is text over drawings and signs without letters: looked at by eye.
    page.axe().await;
    let _: Option<bool> = page.evaluate(&flat("")).await;
    let wide = page.overflow().await;
    assert!(wide.is_empty(), "{place} sticks out: {wide:?}");
    let small = page.smallest_targets(48).await;
    assert!(small.is_empty(), "{place}: too small: {small:?}");
}

async fn all_whole(device: Device) {
    journey(Server::start("/"), device, async |Journey { page, .. }| {
        for place in QUESTIONS {
            page.goto(place).await;
            page.sees("h1").await;
            page.scheme(Scheme::Light).await;
            page.text_percent(100).await;
            // Everything open, since a folded part can't be looked at.
            let _: Option<bool> = page
                .evaluate(
                    "document.querySelectorAll('main details').forEach((it) => it.open = true)",
                )
                .await;
            is_whole(page, place).await;
            page.scheme(Scheme::Dark).await;
            is_whole(page, place).await;
            page.text_percent(200).await;
            is_whole(page, place).await;
        }
        page.text_percent(100).await;
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        page.sees("#mark-title").await;
        is_whole(page, "after saving").await;
        for place in PAGES {
            page.goto(place).await;
            page.sees("h1").await;
            is_whole(page, place).await;
        }
    })
    .await;
}

#[tokio::test]
async fn on_a_phone() {
    all_whole(Device::Phone).await;
}

#[tokio::test]
async fn on_a_small_phone() {
    all_whole(Device::SmallPhone).await;
}

#[tokio::test]
async fn at_a_desk() {
    all_whole(Device::Desk).await;
}

/// Every page there is, opened whole, in both languages: on the narrowest phone with letters twice as
/// large a line holds ten of them.
#[tokio::test]
async fn nothing_sticks_out_of_any_page_in_large_letters() {
    journey(Server::start("/"), Device::SmallPhone, async |Journey { page, .. }| {
        page.goto("#/raising").await;
        page.tap(saying("Save to job")).await;
        page.sees("#mark-title").await;
        let mut places: Vec<String> = PAGES.map(str::to_owned).to_vec();
        places.extend(catalog::ALL.iter().map(|entry| format!("#/{}", entry.id)));
        page.goto("#/jobs").await;
        page.sees(".doors a").await;
        let job: String = page.evaluate("document.querySelector('.doors a').hash").await;
        page.goto(&job).await;
        page.sees(".mark-line").await;
        places.push(page.evaluate("document.querySelector('.mark-line').hash").await);
        places
            .extend(["", "/buy", "/ready", "/inspector", "/owner"].map(|of| format!("{job}{of}")));
        page.text_percent(200).await;
        for (language, settings) in [("English", "Settings"), ("Español", "Ajustes")] {
            page.goto("#/settings").await;
            page.tap(saying(language)).await;
            page.until(&format!("document.querySelector('h1')?.innerText === '{settings}'")).await;
            for place in &places {
                let _: Option<bool> =
                    page.evaluate("document.querySelector('main').id = 'before', null").await;
                page.goto(place).await;
                page.until("document.querySelector('main:not(#before) h1')").await;
                let _: Option<bool> = page
                    .evaluate(
                        "document.querySelectorAll('main details').forEach((it) => it.open = true)",
                    )
                    .await;
                let wide = page.overflow().await;
                assert!(wide.is_empty(), "{place}, {language}: {wide:?}");
            }
        }
    })
    .await;
}
