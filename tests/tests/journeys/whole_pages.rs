//! Every page, on every device, light and dark, at 200 % text: nothing an accessibility checker
//! finds, nothing that sticks out, no target too small for a glove.

use crate::harness::{Device, Journey, Page, Scheme, Server, journey, saying};

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
