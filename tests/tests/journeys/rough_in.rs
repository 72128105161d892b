//! A plan's numbers follow one edit, and what is over is told by the box's name.

use crate::harness::{Device, Journey, Page, Server, field, journey, saying};

/// Where the answer stands.
const ANSWER: &str = ".answer .figure";

/// By hand: two 12-2 and a device take 9.0 + 4.5 + 2.25 = 15.75 in³ of K1, and a box that holds less
/// is over. K2 is named by the cable that ends in it.
#[tokio::test]
async fn a_plan_follows_an_edit_and_names_what_is_over() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/rough-in").await;
        // The sample's data cable has no length yet.
        page.reads(ANSWER, "none over, 1 to settle").await;
        page.reads(".answer-verdict .verdict.ask", "not given").await;
        page.sees(".picture .drawing").await;
        page.enter(field("high"), "9' 2\"").await;
        page.reads(ANSWER, "none over, 1 to settle").await;
        page.screenshot("rough-in-plan").await;
    })
    .await;
}

/// The chips of a field's names.
fn chip(path: &str, name: &str) -> String {
    format!("[data-names='{path}'] .chip:nth-child({name})")
}

/// A field that holds this.
fn held(path: &str, text: &str) -> String {
    format!("document.getElementById('{path}')?.value === '{text}'")
}

/// A new cable takes nothing away and is named as not counted; both its ends are two taps. A renamed
/// box takes them along, letter by letter, and one tap takes that back; a removed one says
/// what hangs, and the rest stands.
#[tokio::test]
async fn ends_are_picked_follow_a_rename_and_hang_when_their_box_goes() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/rough-in").await;
        page.reads(ANSWER, "none over, 1 to settle").await;
        page.tap(saying("Add 12-2")).await;
        page.reads(ANSWER, "none over, 2 to settle").await;
        page.sees(saying("Not counted yet: 1 cable without an end.")).await;
        page.tap(&*chip("cables.3.from", "3")).await;
        page.tap(&*chip("cables.3.to", "2")).await;
        page.until(&held("cables.3.from", "K2")).await;
        page.until(&held("cables.3.to", "K1")).await;
        page.misses(saying("Not counted yet: 1 cable without an end.")).await;
        page.screenshot("rough-in-ends").await;
        page.enter(field("boxes.1.label"), "N7").await;
        page.until(&held("cables.0.to", "N7")).await;
        page.until(&held("cables.1.from", "N7")).await;
        page.until(&held("cables.3.to", "N7")).await;
        page.sees(saying("Renamed in 3 places that named it, too.")).await;
        page.tap(saying("Undo")).await;
        page.until(&held("cables.3.to", "K1")).await;
        page.until(&held("boxes.1.label", "K1")).await;
        page.tap(saying("Remove Box 3")).await;
        page.sees(saying("Removed. Still named by Cable 2, Cable 4.")).await;
        // The rest stands, and says what it is without: what its circuit loses, too.
        page.reads(ANSWER, "none over, 4 to settle").await;
        page.sees(saying("Not counted yet: 2 ends that name no box.")).await;
        page.screenshot("rough-in-hanging").await;
    })
    .await;
}

/// All editions have been worked and held against each other.
const COMPARED: &str = "[...document.querySelectorAll('.edition')].some(\
    (it) => it.textContent.includes('strictest'))";

/// Puts a plan of so many boxes and cables in the place of what was typed: circuits of ten boxes
/// each, one after another, and what cables are left coiled. All of it is invented.
async fn long_plan(page: &Page, boxes: u32, cables: u32) {
    page.goto("#/rough-in").await;
    page.enter(field("high"), "97").await;
    page.until("localStorage.getItem('ledgerboard.draft.rough-in')?.includes('\"97\"')").await;
    page.goto("#/settings").await;
    let script = include_str!("long_plan.js");
    let _: bool = page.evaluate(&format!("({script})({boxes}, {cables})")).await;
    page.goto("#/rough-in").await;
    page.until(COMPARED).await;
}

/// A key says its own line and no other; what is folded is built when it is opened, and what is
/// large follows when typing pauses, under all editions.
#[tokio::test]
async fn a_long_plan_follows_a_key_line_by_line() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        long_plan(page, 60, 80).await;
        let summary =
            |at: u32| format!("document.querySelectorAll('#cables .in-words > summary')[{at}]");
        page.until(&format!("{}.textContent.includes('B21')", summary(20))).await;
        page.until("document.querySelectorAll('.behind .columns tbody tr').length === 0").await;
        let other = format!("(window.other = {}.firstChild) !== null", summary(30));
        page.until(&other).await;
        let open = format!("({}.parentNode.open = true)", summary(20));
        let _: bool = page.evaluate(&open).await;
        page.sees("[id='cables.20.from']").await;
        let all =
            "document.querySelectorAll('#cables [open] details').forEach(it => it.open = true)";
        let _: () = page.evaluate(all).await;
        page.enter(field("cables.20.feeds"), "freezer").await;
        page.until(&format!("{}.textContent.includes('freezer')", summary(20))).await;
        page.until(&format!("{}.firstChild === window.other", summary(30))).await;
        page.tap(saying("Cable schedule")).await;
        page.until("document.querySelectorAll('.behind .columns tbody tr').length === 80").await;
        let fed = "document.querySelector('.behind .columns').textContent.includes('freezer')";
        page.until(fed).await;
        // What is wrong in a line opens it, and nothing old is shown meanwhile.
        page.enter(field("cables.20.load"), "x").await;
        page.until("document.querySelectorAll('.behind .columns tbody tr').length === 0").await;
        page.enter(field("cables.20.load"), "2").await;
        page.until("document.querySelectorAll('.behind .columns tbody tr').length === 80").await;
        page.until(COMPARED).await;
    })
    .await;
}

/// Prints what a key costs in a plan of 300 boxes and 500 cables: until the page has done its work,
/// and until it is painted.
#[tokio::test]
#[ignore = "prints times, for DEVELOPERS.md"]
async fn how_long_a_key_takes_in_a_long_plan() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        long_plan(page, 300, 500).await;
        for (list, at) in [("cables", 200), ("boxes", 100)] {
            let open =
                format!("(document.querySelectorAll('#{list} .in-words')[{at}].open = true)");
            let _: bool = page.evaluate(&open).await;
            page.until(&format!("document.querySelector(\"[id^='{list}.{at}.']\") !== null")).await;
        }
        for times in [1, 4] {
            page.slower(times).await;
            for (path, texts) in [
                ("high", "97 98 99 100 101 102 103"),
                ("cables.200.load", "1.1 1.2 1.3 1.4 1.5 1.6 1.7"),
                ("cables.200.feeds", "a ab abc abcd abcde abcdef abcdefg"),
                ("boxes.100.x", "12 13 14 15 16 17 18"),
            ] {
                let script = include_str!("key_times.js");
                let ask = format!("({script})('{path}', '{texts}'.split(' '))");
                let said: String = page.evaluate(&ask).await;
                println!("{times} times slower, {path}: {said}");
            }
        }
    })
    .await;
}
