//! A textured ceiling goes from hold to plan to comparison by touch; while it is held, no plan is
//! on the page or on paper.

use crate::harness::{Device, Journey, Page, Server, field, journey, saying};
use crate::holds::fill_evidence;

/// Where the answer stands.
const ANSWER: &str = ".answer .figure";
/// How it stands.
const STANDS: &str = ".answer-verdict .verdict";

/// A mark of the one job.
async fn open_mark(page: &Page, title: &str) {
    page.goto("#/jobs").await;
    page.tap("main .doors a").await;
    page.tap(saying(title)).await;
}

async fn save_as(page: &Page, title: &str) {
    page.tap(saying("Save to job")).await;
    page.enter("#mark-title", title).await;
    page.tap(saying("Done")).await;
}

async fn save_over(page: &Page) {
    page.tap(saying("Save over")).await;
    page.tap(saying("Done")).await;
}

/// The area and nothing of the plan.
async fn shows_no_plan(page: &Page) {
    page.reads(STANDS, "held").await;
    page.reads(ANSWER, "192 sq ft").await;
    for part_of_it in ["Sprayer fills", "Which way the roll goes", "Side by side", "Pans to empty"]
    {
        page.misses(saying(part_of_it)).await;
    }
}

/// By hand: 192 sq ft, 1/8 in at 15 lb and 4.8 gal of water are 70 lb wet; 28 ft of a 10 ft roll.
/// Board that is torn out with 30 lb of texture is 337.2 lb. 40 CFR 763.86 asks for 3 samples.
#[tokio::test]
async fn a_ceiling_goes_from_its_hold_to_a_plan_and_to_a_comparison() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/stripping").await;
        page.enter(field("height"), "9'").await;
        shows_no_plan(page).await;
        page.sees(".shut").await;
        page.tap(saying("For the bid, meanwhile")).await;
        page.sees(saying("get a price for abatement")).await;
        page.screenshot("strip-held").await;
        save_as(page, "Den, scraped").await;
        page.tap(".shut .door").await;

        // Its hold already knows what it is and what is done to it.
        page.sees(saying("Before you disturb old material")).await;
        page.enter(field("place"), "Den ceiling").await;
        page.enter(field("area"), "192").await;
        page.enter(field("built"), "1962").await;
        page.reads(STANDS, "held").await;
        page.tap(saying("Save to job")).await;
        page.tap(saying("Done")).await;

        open_mark(page, "Den, scraped").await;
        page.choose("#which-hold", "Den ceiling").await;
        shows_no_plan(page).await;
        save_over(page).await;
        page.tap(".shut .door:not([href='#/hold'])").await;
        page.reads(".head strong", "Den ceiling").await;
        fill_evidence(page).await;
        page.reads(STANDS, "open").await;
        save_over(page).await;

        open_mark(page, "Den, scraped").await;
        page.reads(STANDS, "within").await;
        page.reads(ANSWER, "≈ 70 lb").await;
        page.tap(saying("Which way the roll goes")).await;
        page.sees(saying("2 × 14 ft = 28 ft")).await;
        page.screenshot("strip-open").await;

        // What opens scraping opens no comparison.
        page.goto("#/three-ways").await;
        page.enter(field("height"), "9'").await;
        shows_no_plan(page).await;
        page.tap(saying("What each is held by")).await;
        save_as(page, "Den, three ways").await;
        open_mark(page, "Den, three ways").await;
        page.choose("#which-hold", "Den ceiling").await;
        shows_no_plan(page).await;
        save_over(page).await;

        open_mark(page, "Den ceiling").await;
        page.choose(field("deed"), "Tear out").await;
        page.reads(STANDS, "open").await;
        save_over(page).await;
        open_mark(page, "Den, three ways").await;
        page.reads(".answer-verdict .verdict.ask", "settle it first").await;
        page.tap(saying("Side by side")).await;
        page.sees(saying("≈ 70 lb · 0 lb · 337.2 lb")).await;
        page.screenshot("three-ways-open").await;
        // And the plan is shut again.
        open_mark(page, "Den, scraped").await;
        shows_no_plan(page).await;
    })
    .await;
}

#[tokio::test]
async fn a_plan_stays_shut_on_the_page_and_on_paper() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        for place in ["#/stripping", "#/three-ways", "#/floor-cover"] {
            page.goto(place).await;
            shows_no_plan(page).await;
            page.print_media(true).await;
            shows_no_plan(page).await;
            page.print_media(false).await;
        }
        // A trace asks the authority and opens nothing.
        page.goto("#/hold?place=Den&material=texture&deed=strip&area=192&built=1962").await;
        page.tap(saying("Asbestos report")).await;
        page.choose(field("report.result"), "Trace, up to 1 %").await;
        page.reads(STANDS, "held").await;
        page.screenshot("strip-trace").await;
    })
    .await;
}

/// What is taken down, and an alarm that asks until it is back.
#[tokio::test]
async fn an_alarm_that_is_down_asks_on_the_page_and_in_the_job() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/taken-down").await;
        page.reads(".answer-verdict .verdict.ask", "settle it first").await;
        page.enter(field("items.0.place"), "Upper hall").await;
        page.tap(saying("Back in this order")).await;
        save_as(page, "Den, taken down").await;
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.reads(".mark .verdict", "settle it first").await;
        page.screenshot("alarms-out").await;
    })
    .await;
}
