//! A calculator opens with a sample; what of it nobody has typed or chosen is told until they have.

use crate::harness::{Device, Journey, Server, field, journey, saying};

const TAG: &str = ".answer .sample";
/// What the answer counts.
const LINE: &str = ".still-sample";

#[tokio::test]
async fn what_is_still_the_samples_is_told_until_it_is_typed_or_said_to_be_ones_own() {
    journey(Server::start("/"), Device::SmallPhone, async |Journey { page, .. }| {
        page.goto("#/room").await;
        page.reads(TAG, "Sample").await;
        page.sees(saying("3 fields from the sample")).await;
        page.reads("[id='long.sample']", "from the sample").await;
        page.screenshot("room-sample").await;
        page.enter(field("long"), "15'").await;
        page.reads(TAG, "2 from the sample").await;
        page.until("!document.getElementById('long.sample')?.innerText").await;
        page.until("Object.keys(localStorage).some((key) => localStorage[key].includes(\"15'\"))")
            .await;

        // A reload knows it; so does a link on another phone, as far as the values tell.
        page.reload().await;
        page.tap(saying("2 fields from the sample")).await;
        page.has_focus(field("wide")).await;
        // The same number again is a person's own.
        page.enter(field("wide"), "12'").await;
        page.sees(saying("1 field from the sample")).await;
        page.until("!document.getElementById('wide.sample')?.innerText").await;
        page.sees("[id='height.sample']").await;

        page.tap(saying("Save to job")).await;
        page.sees(saying("Saved with 1 field still from the sample.")).await;
        page.enter("#mark-title", "Den").await;
        page.screenshot("saved-with-the-samples-height").await;
        page.tap(saying("Done")).await;

        // The number knows it a week later, until somebody says that it is theirs.
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.tap(".mark-line").await;
        page.sees(saying("1 field from the sample")).await;
        page.tap(saying("All mine")).await;
        page.sees(saying("Nothing left from the sample.")).await;
        page.tap(saying("Undo")).await;
        page.sees(saying("1 field from the sample")).await;
        page.tap(saying("All mine")).await;
        page.until("!document.getElementById('height.sample')?.innerText").await;
        page.tap(saying("Save over")).await;
        page.sees(".saved").await;
        page.misses(saying("Saved with 1 field still from the sample.")).await;
        page.tap(saying("Done")).await;
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.tap(".mark-line").await;
        page.reads(field("wide"), "12 ft").await;
        page.misses(LINE).await;

        page.goto("#/room?long=15ft&wide=12ft&height=9ft").await;
        page.reads(TAG, "From a link").await;
        page.sees(saying("1 field from the sample")).await;
        assert_eq!(page.overflow().await, Vec::<String>::new());
    })
    .await;
}

/// What is behind a fold is gone to all the same, and what an item takes with it is no longer told.
#[tokio::test]
async fn the_samples_items_are_told_one_by_one_and_go_with_their_item() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/set-out").await;
        let count =
            "Number(document.querySelector('.still-sample button').textContent.split(' ')[0])";
        page.sees(".still-sample button:first-child").await;
        let before: u32 = page.evaluate(count).await;
        page.tap(saying("Remove Box 1")).await;
        page.until(&format!("{count} < {before}")).await;
        let after: u32 = page.evaluate(count).await;
        page.sees("[id='boxes.0.sample']").await;
        page.tap(saying("Undo")).await;
        page.until(&format!("{count} === {before}")).await;
        page.enter(field("floors.0.down"), "50").await;
        page.until(&format!("{count} === {}", before - 1)).await;
        page.tap(".still-sample button:first-child").await;
        page.until("document.activeElement.checkVisibility() && document.activeElement.id").await;
        assert!(after > 0, "the other items stay the sample's");
    })
    .await;
}
