//! A scraped ceiling is skimmed by touch, and its water and its hours follow.

use crate::harness::{Device, Journey, Server, field, journey, saying};

/// Where the answer stands.
const ANSWER: &str = ".answer .figure";

/// By hand: 12 by 16 ft, two coats of 1/32 in and 10 percent lost are 8.23 gal, 7.48 with nothing
/// lost. Old texture holds it. 70 °F and 50 percent take 16.6 h, 60 °F and 70 take 37.8.
#[tokio::test]
async fn a_scraped_ceiling_is_skimmed_and_dries() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/skim-coat").await;
        page.reads(ANSWER, "≈ 8.23 gal").await;
        page.sees(".picture .drawing").await;
        page.reads(".answer-verdict .verdict", "held").await;
        page.choose(field("old"), "New, this crew's own").await;
        page.enter(field("waste"), "0").await;
        page.reads(ANSWER, "≈ 7.48 gal").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den").await;
        page.tap(saying("Done")).await;
        page.screenshot("skimmed-ceiling").await;

        page.goto("#/drying").await;
        page.reads(ANSWER, "≈ 16.6 h").await;
        page.tap("[aria-label^='Take from the job: Compound put on']").await;
        page.tap(saying("Den: One coat, wet, on the surface")).await;
        page.enter(field("temperature"), "60").await;
        page.enter(field("humidity"), "70").await;
        page.reads(ANSWER, "≈ 37.8 h").await;
        page.enter(field("humidity"), "0.7").await;
        page.sees(saying("“0.7” could mean 0.7 % or 70 %. Write which, with its sign.")).await;
        page.enter(field("humidity"), "70").await;
        page.reads(ANSWER, "≈ 37.8 h").await;
        page.choose(field("way"), "A fan blows out").await;
        page.reads(".answer-verdict .verdict.ask", "settle it first").await;
        page.choose(field("flue"), "There is one").await;
        page.reads(".answer-verdict .verdict.over", "over").await;
        page.screenshot("drying-beside-a-flue").await;
    })
    .await;
}

/// By hand: 3.06 gal by joints with boards of 8 ft, nothing lost; 1.8 by area.
#[tokio::test]
async fn compound_by_joints_stands_beside_the_published_rule() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/joint-compound").await;
        page.enter(field("ends"), "16'").await;
        page.enter(field("screws"), "210").await;
        page.enter(field("waste"), "0").await;
        page.reads(ANSWER, "≈ 3.06 gal").await;
        page.tap(saying("Its area")).await;
        page.reads(ANSWER, "≈ 1.8 gal").await;
        page.sees(field("ends")).await;
        page.misses(field("feather")).await;
        page.screenshot("compound-by-area").await;
    })
    .await;
}
