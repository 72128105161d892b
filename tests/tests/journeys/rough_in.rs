//! A plan's numbers follow one edit, and what is over is told by the box's name.

use crate::harness::{Device, Journey, Server, field, journey};

/// Where the answer stands.
const ANSWER: &str = ".answer .figure";

/// By hand: two 12-2 and a device take 9.0 + 4.5 + 2.25 = 15.75 in³ of K1, and a box that holds less
/// is over. K2 is named by the cable that ends in it.
#[tokio::test]
async fn a_plan_follows_an_edit_and_names_what_is_over() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/rough-in").await;
        page.reads(ANSWER, "0").await;
        page.sees(".picture .drawing").await;
        page.enter(field("high"), "9' 2\"").await;
        page.reads(ANSWER, "0").await;
        page.screenshot("rough-in-plan").await;
    })
    .await;
}
