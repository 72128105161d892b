//! A cable, what touching its circuit sets off, and the switches of a light, by touch.

use crate::harness::{Device, Journey, Server, field, journey, saying};

/// Where the answer stands.
const ANSWER: &str = ".answer .figure";
const VERDICT: &str = ".answer-verdict .verdict";
const NEXT: &str = ".answer-rest .next";

/// By hand: 48 in up, 144 across, 80 down and four plates of 1-1/2 are 278 in; a tenth is 27-13/16,
/// and 12 in at either box make 27 ft 5-13/16. With 120 across 25 ft 3-7/16. NEC 300.4(A): 1 in in a
/// 2×4 leaves just enough wood, a sixteenth more doesn't.
#[tokio::test]
async fn a_cable_is_cut_and_kept_clear() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/cable-run").await;
        page.reads(ANSWER, "27 ft 5 13⁄16 in").await;
        page.reads(VERDICT, "within").await;
        page.sees(".picture .drawing").await;
        page.screenshot("cable-run").await;
        page.enter(field("across"), "10 ft").await;
        page.reads(ANSWER, "25 ft 3 7⁄16 in").await;
        page.enter(field("bit"), "1 1/16").await;
        page.reads(VERDICT, "short").await;
        page.reads(NEXT, "Put steel over each hole, or take a smaller bit.").await;
        page.enter(field("bit"), "1").await;
        page.reads(VERDICT, "within").await;
        page.choose(field("known"), "Part by part").await;
        page.misses(field("across")).await;
        page.tap(saying("Save to job")).await;
    })
    .await;
}

/// Source: NEC 210.12: 6 ft of added wire is exempt, a sixteenth more isn't.
#[tokio::test]
async fn a_changed_circuit_brings_its_list() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/circuit-touch").await;
        page.reads(ANSWER, "4").await;
        page.reads(VERDICT, "ask locally").await;
        page.enter(field("wire"), "6 ft").await;
        page.reads(ANSWER, "3").await;
        page.enter(field("wire"), "6 ft 1/16 in").await;
        page.reads(ANSWER, "4").await;
        page.choose(field("found"), "Knob-and-tube").await;
        page.reads(ANSWER, "6").await;
        page.reads(NEXT, "Stop here. Leave it as it is, dead, and call the electrician.").await;
        page.screenshot("circuit-touch").await;
    })
    .await;
}

/// By hand, NEC 314.16(B): 8 + 1 + 2 conductors of 14 AWG are 22.0 in³ where feed and light meet, and
/// 5 + 1 + 2 are 16.0 where the light hangs on the other end.
#[tokio::test]
async fn a_light_has_its_switches_box_by_box() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/switch-boxes").await;
        page.reads(ANSWER, "22.0 in³").await;
        page.reads(VERDICT, "within").await;
        page.sees(".picture .drawing").await;
        page.enter(field("volume"), "20.3").await;
        page.reads(VERDICT, "over").await;
        page.choose(field("leaves"), "The last switch's box").await;
        page.reads(ANSWER, "16.0 in³").await;
        page.reads(VERDICT, "within").await;
        page.screenshot("switch-boxes").await;
        page.choose(field("feed"), "The light").await;
        page.reads(ANSWER, "20.0 in³").await;
        page.misses(field("leaves")).await;
    })
    .await;
}
