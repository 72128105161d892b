//! The days of a job's steps: named in words, and asked about where one goes past an inspection.

use crate::harness::{Device, Journey, Server, field, journey};

/// Where the answer stands.
const ANSWER: &str = ".answer .figure";

/// A field that holds this.
fn held(path: &str, text: &str) -> String {
    format!("document.getElementById('{path}')?.value === '{text}'")
}

/// Whether the page says this anywhere, folded or not.
fn says(text: &str) -> String {
    format!("document.querySelector('main')?.textContent.includes('{text}')")
}

/// A step's name may have words; what waits for it follows while it is typed, and only a comma is refused.
#[tokio::test]
async fn a_step_is_named_in_words_and_what_waits_for_it_follows() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/trade-days").await;
        page.sees(ANSWER).await;
        page.enter(field("steps.5.name"), "Rough check").await;
        page.until(&held("steps.6.after", "Rough check")).await;
        page.sees(ANSWER).await;
        page.until(&says("after Rough check")).await;
        page.enter(field("steps.3.name"), "Pull wires").await;
        page.until(&held("steps.5.after", "Pull wires, DUCTS")).await;
        page.until(&says("after Pull wires")).await;
        page.screenshot("days-in-words").await;
        page.enter(field("steps.5.name"), "Rough, check").await;
        let note = "document.getElementById('steps.5.name.note')?.textContent";
        let told = "A comma parts two names: write Rough check.";
        page.until(&format!("{note}?.includes('{told}')")).await;
    })
    .await;
}

/// Stripping beside an inspection is asked about until its plan says that it covers nothing.
#[tokio::test]
async fn a_step_that_covers_nothing_is_asked_about_no_more() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto(
            "#/trade-days?start=2027-01-04\
            &steps.0.name=WIRES&steps.0.who=electrician\
            &steps.1.name=Rough%20check&steps.1.who=inspector&steps.1.after=WIRES\
            &steps.2.name=Strip%20hall&steps.2.days=2\
            &steps.3.name=BOARD&steps.3.after=Rough%20check%2C%20Strip%20hall",
        )
        .await;
        page.sees(ANSWER).await;
        let asked = says("wait for Rough check. Does it cover what is inspected?");
        page.until(&asked).await;
        page.sees(".answer-verdict .verdict.ask").await;
        page.screenshot("days-beside-an-inspection").await;
        let open = "document.querySelectorAll('#steps details').forEach(it => it.open = true)";
        let _: () = page.evaluate(open).await;
        page.tap(field("steps.2.covers_nothing")).await;
        page.until(&format!("!{asked}")).await;
        page.misses(".answer-verdict .verdict.ask").await;
    })
    .await;
}
