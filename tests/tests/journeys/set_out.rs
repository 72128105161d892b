//! Boxes are set out off one line, and receptacles around a room, by touch.

use crate::harness::{Device, Journey, Server, field, journey, saying};

/// Where the answer stands.
const ANSWER: &str = ".answer .figure";
const VERDICT: &str = ".answer-verdict .verdict";

/// By hand: a line 48 in over one floor and 48-3/4 over the other. 16 in over the higher is 32 in
/// down, 48 in is on the line and 52 in is 4 in up.
#[tokio::test]
async fn boxes_are_set_out_over_two_floors() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/set-out").await;
        page.reads(ANSWER, "2 ft 8 in").await;
        page.reads(VERDICT, "mind it").await;
        page.sees(".picture .drawing").await;
        page.tap(saying("Add As it is")).await;
        page.enter(field("floors.1.down"), "48 3/4").await;
        page.choose(field("from"), "Each box's own finished floor").await;
        page.tap(saying("Checks")).await;
        page.sees(saying("Write it on the wall: heights are over each box's own floor.")).await;
        page.choose(field("boxes.0.kind"), "Switch").await;
        page.enter(field("boxes.0.height"), "48").await;
        page.reads(ANSWER, "0 in").await;
        page.enter(field("boxes.0.height"), "52").await;
        page.reads(ANSWER, "4 in").await;
        page.sees(saying("1. Switch, up from the line")).await;
        page.tap(saying("Add Over a counter")).await;
        page.sees(field("boxes.3.height")).await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den, heights").await;
        page.tap(saying("Done")).await;
        page.screenshot("set-out").await;
    })
    .await;
}

/// On a phone two numbers with a space are the quickest; the field says at once how they are taken.
#[tokio::test]
async fn two_numbers_with_a_space_are_feet_and_inches() {
    journey(Server::start("/"), Device::SmallPhone, async |Journey { page, .. }| {
        let echo = |says: &str| {
            format!(
                "document.getElementById('floors.0.down').nextElementSibling.textContent === '{says}'"
            )
        };
        page.goto("#/set-out").await;
        page.enter(field("floors.0.down"), "4 2").await;
        page.until(&echo("= 4 ft 2 in")).await;
        page.reads(field("floors.0.down"), "4 2").await;
        page.reads(ANSWER, "2 ft 10 in").await;
        page.screenshot("feet-and-inches-with-a-space").await;
        page.enter(field("floors.0.down"), "48 3/4").await;
        page.reads(ANSWER, "2 ft 8 3⁄4 in").await;
        page.enter(field("floors.0.down"), "4 12").await;
        page.reads("[id='floors.0.down.note']", "Can't read “4 12”. Write it like 9' 4 1⁄2\", 112.5 or 2860 mm.")
            .await;
    })
    .await;
}

/// What boxes are set by stands between the headline and the fields: four lines, the others a tap
/// away, and none of them wider than the narrowest phone.
#[tokio::test]
async fn marks_stand_under_the_headline_and_fold_past_four() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/set-out").await;
        page.until("document.querySelectorAll('.answer-rest .foremost li').length === 3").await;
        let before = "document.querySelector('.foremost').compareDocumentPosition(\
            document.querySelector('section.fields')) === Node.DOCUMENT_POSITION_FOLLOWING";
        page.until(before).await;
        for _ in 3..12 {
            page.tap(saying("Add Over a counter")).await;
        }
        page.until("document.querySelectorAll('.foremost > .rows > li').length === 4").await;
        page.sees(saying("8 more, 12 in all")).await;
        page.screenshot("set-out-marks").await;
        page.tap(saying("8 more, 12 in all")).await;
        page.enter(field("floors.0.down"), "50").await;
        page.until("document.querySelector('.foremost .more').open").await;
        page.until("document.querySelectorAll('.foremost .more li').length === 8").await;
        assert_eq!(page.overflow().await, Vec::<String>::new());
    })
    .await;
}

/// By hand: an L of 16 by 12 ft less 6 by 5 with two doors has 25 ft 10 in and 24 ft 10 in of wall
/// between them: three each. With one receptacle that is there, five are missing.
#[tokio::test]
async fn receptacles_go_round_an_l_with_two_doors() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/outlets").await;
        page.choose(field("shape"), "L").await;
        page.enter(field("long"), "16'").await;
        page.enter(field("wide"), "12'").await;
        page.enter(field("notch_long"), "6'").await;
        page.enter(field("notch_wide"), "5'").await;
        page.choose(field("breaks.0.wall"), "Wall 1").await;
        page.enter(field("breaks.0.from"), "20").await;
        page.tap(saying("Add Doorway")).await;
        page.choose(field("breaks.1.wall"), "Wall 4").await;
        page.enter(field("breaks.1.from"), "14").await;
        page.reads(ANSWER, "6").await;
        page.reads(VERDICT, "within").await;
        page.sees(".picture .drawing").await;
        page.screenshot("outlets-l").await;
        page.tap(saying("Receptacles that are there")).await;
        page.tap(saying("Add Receptacle")).await;
        page.choose(field("have.0.wall"), "Wall 1").await;
        page.enter(field("have.0.at"), "100").await;
        page.reads(ANSWER, "6").await;
        page.reads(VERDICT, "over").await;
        page.screenshot("outlets-l-missing").await;
    })
    .await;
}

/// By hand: counters of 48 and 48-1/4 in take one and two, an island none from 2023 on; three
/// bedrooms, their hall and a basement take five alarms.
#[tokio::test]
async fn counters_and_alarms_are_counted() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/kitchen-outlets").await;
        page.sees(".picture .drawing").await;
        page.enter(field("runs.0.long"), "48").await;
        page.enter(field("runs.1.long"), "48 1/4").await;
        page.sees(saying("Even along each space: half a share from its ends, then a share apart. More is easier to live with. An island needs none now, but provision for one later: a cable or a raceway left for it. Ask how.")).await;
        page.reads(ANSWER, "3").await;
        page.screenshot("kitchen-outlets").await;
        page.goto("#/alarm-places").await;
        page.reads(ANSWER, "5").await;
        page.enter(field("register"), "35").await;
        page.reads(VERDICT, "short").await;
        page.screenshot("alarm-places").await;
    })
    .await;
}
