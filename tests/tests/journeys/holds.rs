//! Old material is met, held, and opened by a real result; and nothing else opens it.

use crate::harness::{Device, Journey, Page, Server, field, journey, saying};

/// What the phone's calendar does when a day is picked.
async fn pick_day(page: &Page, path: &str, day: &str) {
    page.sees(field(path)).await;
    let pick = format!(
        "(() => {{ const it = document.getElementById('{path}'); it.value = '{day}'; \
         it.dispatchEvent(new Event('input', {{ bubbles: true }})); return true; }})()"
    );
    let _: bool = page.evaluate(&pick).await;
}

/// An invented wall in an invented house; what is asked stands in 40 CFR 763.86 and 745.83.
async fn fill_hold(page: &Page) {
    page.enter(field("place"), "Den, north wall").await;
    page.choose(field("material"), "Plaster").await;
    page.choose(field("deed"), "Cut, drill or screw through").await;
    page.enter(field("area"), "40").await;
    page.enter(field("built"), "1931").await;
}

/// Whole evidence: none detected, no lead, nothing stricter.
pub(crate) async fn fill_evidence(page: &Page) {
    page.tap(saying("Asbestos report")).await;
    page.choose(field("report.result"), "None detected").await;
    page.enter(field("report.samples"), "3").await;
    page.enter(field("report.lab"), "Tamarack Lab").await;
    page.enter(field("report.number"), "26-1184").await;
    page.enter(field("report.accreditation"), "T-17").await;
    pick_day(page, "report.dated", "2026-11-03").await;
    page.enter(field("report.sampled"), "Three corners").await;
    page.tap(".group:has([id='paint.note']) summary").await;
    page.choose(field("paint.result"), "No lead").await;
    page.enter(field("paint.tester"), "R. Vale").await;
    pick_day(page, "paint.tested", "2026-11-02").await;
    page.tap(".group:has([id='office.note']) summary").await;
    page.choose(field("office.asks"), "Asked: nothing stricter").await;
    page.enter(field("office.says"), "County desk, Nov 4").await;
}

#[tokio::test]
async fn a_box_cut_into_old_plaster_is_held_until_a_real_result_opens_it() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/box-fill").await;
        page.choose(field("cut"), "Old plaster").await;
        page.reads(".answer-verdict .verdict", "held").await;
        page.sees(".shut").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Switch, north wall").await;
        page.tap(saying("Done")).await;
        page.tap(".shut .door").await;

        page.sees(saying("Before you disturb old material")).await;
        page.reads(".answer-verdict .verdict", "held").await;
        fill_hold(page).await;
        // A held one still says what a bid needs.
        page.tap(saying("For the bid, meanwhile")).await;
        page.sees(saying("Abatement contractor")).await;
        page.tap(saying("Save to job")).await;
        page.tap(saying("Done")).await;

        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.tap(saying("Switch, north wall")).await;
        page.choose("#which-hold", "Den, north wall").await;
        page.reads(".answer-verdict .verdict", "held").await;
        page.tap(saying("Save over")).await;
        page.tap(saying("Done")).await;
        page.tap(".shut .door:not([href='#/hold'])").await;

        page.reads(".head strong", "Den, north wall").await;
        fill_evidence(page).await;
        page.reads(".answer-verdict .verdict", "open").await;
        page.screenshot("hold-open").await;
        // Not before it is on record.
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.tap(saying("Switch, north wall")).await;
        page.reads(".answer-verdict .verdict", "held").await;
        page.goto("#/hold").await;
        page.reads(".answer-verdict .verdict", "open").await;
        page.tap(saying("Save over")).await;
        page.tap(saying("Done")).await;
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.tap(saying("Switch, north wall")).await;
        page.reads(".answer-verdict .verdict", "within").await;
        page.misses(".shut").await;
        page.screenshot("box-behind-an-open-hold").await;
    })
    .await;
}

#[tokio::test]
async fn a_hold_stays_shut_by_link() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto(
            "#/hold?place=Den&material=plaster&report.result=none-detected&report.lab=Anybody",
        )
        .await;
        page.sees(saying("The link came with a result. Results are never taken from a link: read the report yourself and enter it.")).await;
        page.reads(".answer-verdict .verdict", "held").await;
        let kept: bool =
            page.evaluate("JSON.stringify({...localStorage}).includes('Anybody')").await;
        assert!(!kept, "what a link claims is not even a draft");
    })
    .await;
}

#[tokio::test]
async fn a_hold_stays_shut_by_print() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        for place in ["#/hold?place=Den&material=plaster", "#/box-fill?marked=18&cut=plaster"] {
            page.goto(place).await;
            page.print_media(true).await;
            page.reads(".answer-verdict .verdict", "held").await;
            page.misses(".bar").await;
            page.print_media(false).await;
        }
        page.print_media(true).await;
        page.sees(".shut").await;
        // Kept in a job, it is held on the job's paper too.
        page.print_media(false).await;
        page.tap(saying("Save to job")).await;
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.print_media(true).await;
        page.reads(".mark .verdict", "held").await;
    })
    .await;
}

#[tokio::test]
async fn evidence_survives_a_reload_and_is_in_no_address() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/hold").await;
        fill_hold(page).await;
        fill_evidence(page).await;
        page.reads(".answer-verdict .verdict", "open").await;
        page.until("JSON.stringify({...localStorage}).includes('County desk, Nov 4')").await;
        page.until("location.hash.includes('1931')").await;
        let address: String = page.evaluate("location.hash").await;
        for evidence in ["none-detected", "Tamarack", "T-17", "Vale", "County"] {
            assert!(!address.contains(evidence), "{address}");
        }
        page.reload().await;
        page.reads(".answer-verdict .verdict", "open").await;
    })
    .await;
}
