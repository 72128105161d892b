//! Where a register throws to, found out by touch with an air that nobody has measured.

use crate::harness::{Device, Journey, Server, field, journey, saying};

/// Where the answer stands.
const ANSWER: &str = ".answer .figure";

/// Worked by hand: a 10 × 6 register with 48 sq in open throws 80 cfm 15.64 ft along the ceiling, as
/// it is taken to; 100 cfm 19.55 ft, and free 0.707 of that, 13.82 ft.
#[tokio::test]
async fn where_a_register_throws_is_found_by_touch() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("").await;
        page.tap(saying("What a register throws")).await;
        page.reads(ANSWER, "15 ft 8 in").await;
        page.sees(saying("≈ 120.3 % of the way; 75 % to 120 % passes. With 60 cfm to 100 cfm it is 11 ft 9 in to 19 ft 7 in. Measure the air to narrow it. The maker's own throw figures beat this.")).await;
        page.reads(".answer-verdict .verdict", "ask locally").await;
        page.choose(field("know"), "Measured, or from the plan").await;
        page.enter(field("cfm"), "100").await;
        page.reads(ANSWER, "19 ft 7 in").await;
        page.choose(field("along"), "Nothing: free in the room").await;
        page.reads(ANSWER, "13 ft 10 in").await;
        page.misses(".answer-verdict .verdict.ask").await;
        page.sees(".picture .drawing").await;
        page.screenshot("register-throw").await;
    })
    .await;
}

#[tokio::test]
async fn air_that_throws_nothing_says_so_at_its_field() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/register-throw").await;
        page.reads(ANSWER, "15 ft 8 in").await;
        page.enter(field("cfm"), "10").await;
        page.reads(ANSWER, "look at: Air").await;
        let says = page.text("[id='cfm.note']").await;
        assert!(says.starts_with("This air leaves at 30 fpm, no faster than the 50 fpm"), "{says}");
    })
    .await;
}

/// Worked by hand: with the smoke alarm 2 ft from the middle of its 6-in neck the ceiling register
/// is out, and the one on the wall, whose jet passes it, is first.
#[tokio::test]
async fn places_stand_in_order_with_the_reason() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/register-spots?long=12ft&wide=10ft&high=8ft&gap=6&neck=6&season=cooling&cool=20&cfm=70&guess=no&alarm.there=yes&alarm.x=6ft&alarm.y=7ft&spots.0.place=ceiling&spots.0.x=6ft&spots.0.y=5ft&spots.0.name=today&spots.1.place=high-wall&spots.1.x=0&spots.1.y=5ft&spots.1.aim=right").await;
        page.reads(ANSWER, "Place 2").await;
        page.sees(saying("Place 1, today: throws 2 ft 5 in, nearest wall 5 ft off; it is within 36 in of the smoke alarm; its air meets the smoke alarm; its throw fits neither rule. Place 2 (best): throws 13 ft 8 in, blows at a wall 12 ft off; nothing here speaks against it. An order to talk about, no verdict: the HVAC sub decides.")).await;
        page.tap(saying("The places, with the reason")).await;
        page.sees(saying("2 of 2: it is within 36 in of the smoke alarm; its air meets the smoke alarm; its throw fits neither rule")).await;
        page.screenshot("register-spots").await;
    })
    .await;
}

/// A caution doesn't wait for a field: opened with one empty, the page says what can kill.
#[tokio::test]
async fn what_can_hurt_is_said_while_a_needed_field_waits() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/register-spots?shape=rectangle&long=&wide=12ft").await;
        page.reads(ANSWER, "needs: Along wall 1").await;
        let says = page.text(".caution").await;
        assert!(says.contains("Carbon monoxide kills"), "{says}");
        page.tap(saying("Cautions")).await;
        page.sees(saying("Shut the air handler down and lock it out before you open ducts. Attics: mind falls and heat.")).await;
    })
    .await;
}

/// An open flue is chosen, and its distance is still to come: what can kill leads at once.
#[tokio::test]
async fn an_open_flue_leads_before_its_distance_is_put_in() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/return-path?flow=60&door=30in&gap=1in&flame=no").await;
        page.sees(saying(
            "Carpet and pad close the gap: count what is left over the finished floor.",
        ))
        .await;
        page.goto("#/return-path?flow=60&door=30in&gap=1in&flame=yes&flame_off=").await;
        page.reads(ANSWER, "needs: From it to the return opening").await;
        let says = page.text(".caution").await;
        assert!(says.contains("Carbon monoxide kills"), "{says}");
    })
    .await;
}

/// A room saved to the job gives floor, height and air by one tap, and that is said once.
#[tokio::test]
async fn a_whole_room_is_taken_by_one_tap() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/room?shape=rectangle&long=20ft&wide=10ft&height=9ft").await;
        page.reads(ANSWER, "200 sq ft").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den").await;
        page.tap(saying("Done")).await;
        page.goto("#/room-air").await;
        page.tap(saying("Take the room: Den")).await;
        let floor: String = page.evaluate("document.getElementById('floor').value").await;
        assert!(floor.contains("200"), "{floor}");
        let air: String = page.evaluate("document.getElementById('volume').value").await;
        assert!(air.contains("1800"), "{air}");
        let told = page.all_texts(".fields .from").await;
        assert_eq!(told.len(), 1, "said once: {told:?}");
        for of in ["Floor area", "Ceiling height", "Air in the room"] {
            assert!(told[0].contains(of) && told[0].ends_with(": from Den"), "{told:?}");
        }
        page.misses(saying("Take the room: Den")).await;
    })
    .await;
}
