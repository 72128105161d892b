//! "May I drill this plate?", by touch.

use crate::harness::{Device, Journey, Server, field, journey, saying};

/// Where the answer stands.
const ANSWER: &str = ".answer .figure";
/// Its limit and what is to spare.
const LIMIT: &str = ".answer .limit";
const VERDICT: &str = ".answer-verdict .verdict";
const NEXT: &str = ".answer-rest .next";

/// Too little wood is short wherever it is told: at its number, in the bar and in the search, which finds
/// it by its calculator's Spanish name too. Source: NEC 300.4(A)(1), 1-1/4 in of wood.
#[tokio::test]
async fn a_saved_number_that_is_short_is_short_in_the_bar_and_in_the_search() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/drilling").await;
        page.enter(field("bit"), "1 1/4").await;
        page.reads(VERDICT, "short").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den plate").await;
        page.enter("#mark-spot", "Scullery").await;
        page.tap(saying("Done")).await;
        page.enter(field("bit"), "7/8").await;
        page.reads(VERDICT, "within").await;
        page.until("/Saved: .*, short\\. Now: .*, within\\./.test(document.body.innerText)").await;
        page.screenshot("saved-short").await;

        page.goto("#/jobs").await;
        for typed in ["den", "scullery", "drilling", "muescas"] {
            page.enter("#find", typed).await;
            page.reads(".find .mark-title", "Den plate").await;
            page.reads(".find .verdict", "short").await;
        }
        page.enter("#find", "Attic").await;
        page.misses(".find .mark-title").await;
    })
    .await;
}

/// Source: IRC R602.6.1: more than half of a bearing plate cut for a pipe takes a steel tie, 6 in
/// past the opening on both sides; NEC 300.4(A)(1): 1-1/4 in of wood needs no steel plate.
#[tokio::test]
async fn a_plate_is_drilled_or_not_by_touch() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("").await;
        page.tap(saying("Drilling and notching")).await;
        page.reads(ANSWER, "7⁄8 in").await;
        page.reads(LIMIT, "of 1 3⁄4 in").await;
        page.reads(VERDICT, "within").await;
        page.sees(".picture .drawing").await;
        page.screenshot("drilling-sample").await;

        // A larger bit leaves too little wood before the cable.
        page.enter(field("bit"), "1 1/4").await;
        page.reads(VERDICT, "short").await;
        page.reads(NEXT, "The structure takes it. Put steel on both faces.").await;
        page.tap(saying("One more: Steel plates you put on")).await;
        page.tap(saying("One more: Steel plates you put on")).await;
        page.reads(VERDICT, "within").await;

        // More than half for a cable is asked about, whatever steel is on.
        page.enter(field("bit"), "2 1/2").await;
        page.reads(VERDICT, "ask locally").await;

        // A drain takes more than half of the plate.
        page.choose(field("passes"), "Pipe, plastic or copper").await;
        page.enter(field("bit"), "2 1/2").await;
        page.reads(VERDICT, "over").await;
        page.reads(NEXT, "Tie it: steel 14 1⁄2 in long or longer, 8 nails each side.").await;
        page.tap(saying("What may I drill?")).await;
        page.tap("[aria-label^='Use: Shortest tie']").await;
        page.reads(VERDICT, "within").await;
        page.screenshot("drilling-tied").await;

        // In 2x6 it takes neither.
        page.choose(field("size"), "2x6").await;
        page.reads(LIMIT, "of 2 3⁄4 in").await;
        page.enter(field("bit"), "5 1/2").await;
        page.reads(VERDICT, "over").await;
        page.reads(
            NEXT,
            "Nothing is sure to be left across the plate. A tie alone is no remedy: use wider framing, go round, or ask.",
        )
        .await;
    })
    .await;
}

#[tokio::test]
async fn an_i_joist_gets_no_numbers() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/drilling").await;
        page.choose(field("member"), "I-joist").await;
        page.reads(ANSWER, "1").await;
        page.reads(VERDICT, "short").await;
        page.reads(NEXT, "Get the paper first. This page gives no numbers for it.").await;
        page.misses(field("bit")).await;
        page.misses(".picture .drawing").await;
        page.screenshot("drilling-i-joist").await;
    })
    .await;
}

/// Source: NEC 334.80: more than two cables in a sealed hole are adjusted.
#[tokio::test]
async fn cables_in_a_sealed_hole_say_when_another_hole_is_due() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/hole-cables").await;
        page.reads(VERDICT, "within").await;
        page.goto("#/hole-cables?bit=1%201%2F2&hole=sealed&cables.0.cable=12-2&cables.0.count=5")
            .await;
        page.reads(VERDICT, "short").await;
        page.reads(NEXT, "Two cables to a sealed hole need no adjustment. Drill another.").await;
        page.screenshot("cables-in-a-hole").await;
    })
    .await;
}
