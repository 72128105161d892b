//! A ceiling is raised by touch, from a room that was measured, and what it asks stands in view.

use std::time::Duration;

use crate::harness::{Device, Journey, Server, field, journey, saying};

/// Where the answer stands.
const ANSWER: &str = ".answer .figure";

/// By hand: 92-5/8 + 4-1/2 + 14 = 111-1/8 in of framing; less 4-1/2 it is a stud of 106-5/8. On three
/// plates a short stud is 14 - 4-1/2 = 9-1/2.
#[tokio::test]
async fn a_measured_room_is_raised_by_fourteen_inches() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/room").await;
        page.enter(field("long"), "16'").await;
        page.enter(field("wide"), "14'").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den").await;
        page.tap(saying("Done")).await;

        page.goto("#/raising").await;
        // Nobody has looked in the attic: no stud is told.
        page.reads(ANSWER, "9 1⁄4 in").await;
        page.tap(saying("So much higher")).await;
        page.enter(field("to.raise"), "14").await;
        page.reads(ANSWER, "14 in").await;
        page.tap("[aria-label^='Take from the job: Room, length']").await;
        // The figure that fits is offered first, all four walls later.
        page.until("document.querySelector('.offer .value').textContent === '16 ft'").await;
        page.until("[...document.querySelectorAll('.offer .value')].some((it) => it.textContent === '60 ft')").await;
        page.tap(saying("Take the room: Den")).await;
        page.reads(field("long"), "16 ft").await;
        page.reads(field("wide"), "14 ft").await;
        page.reads(field("floor"), "224").await;
        page.reads(".answer-verdict .verdict.ask", "ask locally").await;
        page.sees(saying("Look in the attic first. Cut nothing until you know what is over it.")).await;
        page.choose(field("overhead"), "Trusses").await;
        page.sees(saying("Stop: trusses. Cutting or moving one can bring the roof down; their designer or an engineer draws it first.")).await;
        page.reads(".answer-verdict .verdict.over", "over").await;
        page.reads(ANSWER, "14 in").await;
        page.choose(field("overhead"), "Rafters and joists, cut on site").await;
        page.reads(ANSWER, "8 ft 10 5⁄8 in").await;
        page.choose(field("wall.how"), "A short wall on the old plates").await;
        page.reads(ANSWER, "9 1⁄2 in").await;
        page.sees(".picture .drawing").await;
        page.screenshot("raised-by-14-in").await;
    })
    .await;
}

/// By hand: 145 in by 169 in are 24505 in², 170 ft² and 25 in² more. Half a label is none: who taps by
/// voice says what stands on a button.
#[tokio::test]
async fn what_is_taken_from_a_room_of_odd_inches_can_be_read_and_says_from_where_it_is() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/room").await;
        page.enter(field("long"), "14' 1").await;
        page.enter(field("wide"), "12' 1").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den").await;
        page.tap(saying("Done")).await;

        page.goto("#/raising").await;
        page.sees(".link button.quiet").await;
        page.until("[...document.querySelectorAll('.link button.quiet')].every((it) => it.ariaLabel.includes(it.textContent))").await;
        page.tap(saying("Take the room: Den")).await;
        page.reads(field("floor"), "170-25/144").await;
        page.sees(saying("≈ 170.2 sq ft")).await;
        page.screenshot("an-area-of-odd-inches").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den raise").await;
        page.tap(saying("Done")).await;
        // The browser has the new address a moment after the page has, and reloads what it has.
        page.until("location.hash.includes('170-25')").await;
        tokio::time::sleep(Duration::from_millis(300)).await;
        page.reload().await;
        page.reads(field("floor"), "170-25/144").await;
        page.misses(saying("Not saved.")).await;

        // The room's height is still the sample's: what stands on the room says so.
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.sees(saying("on figures of Den, with fields from the sample")).await;
        page.tap(saying("Ready?")).await;
        page.sees(saying("on figures of Den, with fields from the sample")).await;
        assert_eq!(page.axe().await, [""; 0]);
        page.screenshot("on-figures-of-a-sample").await;
    })
    .await;
}

/// By hand: 14 ft across at 4 in 12 rise 28 in from 8 ft 1-1/8 in less 5/8 and 3/4: 10 ft 3-3/4 in.
#[tokio::test]
async fn a_vault_is_shown_with_both_readings_of_half_the_floor() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/raising").await;
        page.choose(field("shape"), "Vault, two slopes").await;
        page.reads(ANSWER, "needs: Slope of the ceiling").await;
        page.enter(field("wide"), "14'").await;
        page.enter(field("pitch"), "4").await;
        page.misses(field("to.height")).await;
        page.tap(saying("Checks")).await;
        page.sees(saying("7 ft high, half of the 70 sq ft required")).await;
        page.sees(saying("7 ft high, half of all that counts")).await;
        page.screenshot("vault-4-in-12").await;
    })
    .await;
}
