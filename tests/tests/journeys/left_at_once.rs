//! What was typed a moment before the page is left is there again, whatever its address says.

use crate::harness::{Device, Journey, Page, Server, field, journey, saying};

/// Types a length and leaves in the same moment, sooner than any write that waits for a pause.
async fn type_and(page: &Page, length: &str, leave: &str) {
    let typed = format!(
        "(() => {{ const field = document.getElementById('long'); field.value = \"{length}\"; \
         field.dispatchEvent(new Event('input', {{ bubbles: true }})); {leave}; }})()"
    );
    page.evaluate::<()>(&typed).await;
}

/// Where the answer stands.
const ANSWER: &str = ".answer .figure";

/// By hand: 16 ft by the sample's 12 ft, and 15 and 18 ft by it.
#[tokio::test]
async fn what_was_typed_as_the_page_was_reloaded_or_left_is_there_again() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/room").await;
        page.enter(field("long"), "16'").await;
        page.reads(ANSWER, "192 sq ft").await;
        page.until("location.hash.includes('long=16')").await;
        let first: String = page.evaluate("location.hash").await;
        type_and(page, "15'", "location.reload()").await;
        page.reads(ANSWER, "180 sq ft").await;
        page.reads(field("long"), "15'").await;
        page.until("location.hash.includes('long=15')").await;

        // By a link of the page itself, and back.
        type_and(page, "18'", "location.hash = '#/settings'").await;
        page.sees(saying("Settings")).await;
        page.misses(ANSWER).await;
        page.back().await;
        page.reads(ANSWER, "216 sq ft").await;
        page.until("location.hash.includes('long=18')").await;

        // An address that somebody opens says what it says.
        page.goto("#/settings").await;
        page.goto(&first).await;
        page.reads(ANSWER, "192 sq ft").await;
    })
    .await;
}
