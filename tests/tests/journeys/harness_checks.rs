//! The harness shown failing: a word that can't fail proves nothing.
//!
//! Each check puts one fault into a page of its own and asks whether the harness finds it, and
//! beside it a page without the fault on which it must stay silent. Nothing here is about the site.

use std::time::Duration;

use serde_json::{Value, json};

use crate::harness::{
    Bench, Device, Journey, Page, Scheme, evidence_folder, field, journey, refused, saying,
};

fn hurry(page: &Page) {
    page.set_patience(Duration::from_millis(200));
}

#[tokio::test]
async fn a_covered_element_refuses_a_tap() {
    let body = "<button style='width:200px;height:60px'>Keep</button>\
        <div id=veil style='position:fixed;inset:0;background:#ddd'></div>";
    journey(Bench::page(body).await, Device::Phone, async |Journey { page, .. }| {
        page.goto("").await;
        hurry(page);
        let words = refused(page.tap(saying("Keep"))).await;
        assert!(words.contains("<div#veil> covers <button>"), "{words}");
        assert!(words.contains("harness_checks.rs:"), "the place in the journey: {words}");
        page.evaluate::<()>("void document.querySelector('#veil').remove()").await;
        page.tap(saying("Keep")).await;
    })
    .await;
}

#[tokio::test]
async fn a_tap_needs_one_enabled_element() {
    let body = "<button>Same</button><button>Same</button><button disabled>Off</button>\
        <label>Wire <input data-path=wire></label><p hidden>Hidden</p>";
    journey(Bench::page(body).await, Device::Phone, async |Journey { page, .. }| {
        page.goto("").await;
        hurry(page);
        assert!(refused(page.tap(saying("Same"))).await.contains("2 are shown"));
        assert!(refused(page.tap("button[disabled]")).await.contains("is disabled"));
        assert!(refused(page.sees("p")).await.contains("nothing of the kind"));
        assert!(refused(page.misses("label")).await.contains("still shown: <label>"));
        assert!(refused(page.reads("label", "Wires")).await.contains("it reads `Wire`"));
        for never in ["false", "new Promise(() => {})"] {
            assert!(refused(page.until(never)).await.contains("does not hold"));
        }
        page.misses("p").await;
        page.tap(saying("Wire")).await;
        page.has_focus(field("wire")).await;
        assert!(refused(page.has_focus("button[disabled]")).await.contains("<input"));
    })
    .await;
}

const LONG: &str = "<p style='height:3000px'>Far below</p><button>Keep</button><p id=seen></p>\
    <script>document.querySelector('button').addEventListener('click',\
    (event) => { seen.textContent += `${event.pointerType} ${event.isTrusted}` })</script>";

#[tokio::test]
async fn a_tap_on_a_phone_is_a_touch() {
    journey(Bench::page(LONG).await, Device::Phone, async |Journey { page, .. }| {
        page.goto("").await;
        page.tap(saying("Keep")).await;
        page.reads("#seen", "touch true").await;
    })
    .await;
}

#[tokio::test]
async fn a_tap_on_the_desk_is_a_mouse() {
    journey(Bench::page(LONG).await, Device::Desk, async |Journey { page, .. }| {
        page.goto("").await;
        page.tap(saying("Keep")).await;
        page.reads("#seen", "mouse true").await;
    })
    .await;
}

const FORM: &str = "<label>Feet <input data-path=span.feet value=12></label>\
    <label>Inches <input data-path=span.inches></label><button>Keep</button><p id=keys></p>\
    <script>addEventListener('keydown', (event) => { keys.textContent += event.key + ' ' })</script>";

#[tokio::test]
async fn a_phone_hands_over_text_without_keys() {
    journey(Bench::page(FORM).await, Device::Phone, async |Journey { page, .. }| {
        page.goto("").await;
        page.enter(field("span.feet"), "9 1/2").await;
        page.reads(field("span.feet"), "9 1/2").await;
        assert_eq!(page.text("#keys").await, "");
        page.enter(field("span.feet"), "").await;
        page.reads(field("span.feet"), "").await;
    })
    .await;
}

#[tokio::test]
async fn a_desk_sends_keys() {
    journey(Bench::page(FORM).await, Device::Desk, async |Journey { page, .. }| {
        page.goto("").await;
        page.press("Tab").await;
        page.has_focus(field("span.feet")).await;
        page.press("Control+a").await;
        page.type_keys("9 a").await;
        page.press("Shift+Home").await;
        page.press("ArrowRight").await;
        page.press("Backspace").await;
        page.press("Tab").await;
        page.press("Shift+Tab").await;
        page.reads(field("span.feet"), "9 ").await;
        let keys = "Tab a 9 a Home ArrowRight Backspace Tab Tab";
        page.reads("#keys", keys).await;
        assert!(refused(page.press("Anykey")).await.contains("no key is called Anykey"));
        assert_eq!(page.all_texts("label").await, ["Feet", "Inches"]);
        let path = page.attribute(saying("Feet"), "data-path").await;
        assert_eq!(path.as_deref(), Some("span.feet"));
        assert_eq!(page.attribute(saying("Feet"), "list").await, None);
    })
    .await;
}

#[tokio::test]
async fn every_kind_of_complaint_is_heard() {
    let policy = "default-src 'none'; script-src 'unsafe-inline'; connect-src 'self'";
    let pages = [
        ("console", "<script>console.error('first trouble')</script>", "first trouble"),
        ("warning", "<script>console.warn('second trouble')</script>", "second trouble"),
        ("thrown", "<script>throw new Error('third trouble')</script>", "third trouble"),
        (
            "rejected",
            "<script>Promise.reject(new Error('fourth trouble'))</script>",
            "fourth trouble",
        ),
        ("policy", "<p style='color:red'>refused</p>", "Content Security Policy"),
        ("load", "<script>fetch('nowhere')</script>", "404"),
    ];
    let served = pages.map(|(path, body, _)| (path, body));
    let bench = Bench::pages(&served, Some(policy)).await;
    journey(bench, Device::Phone, async |Journey { page, .. }| {
        for (path, _, complaint) in pages {
            page.assert_quiet().await;
            page.goto(path).await;
            // The browser tells of a failed load when its answer is there, a moment later.
            while page.console().await.is_empty() {}
            let words = refused(page.assert_quiet()).await;
            assert!(words.contains(complaint), "{path}: {words}");
            page.forgive(complaint).await;
            assert_eq!(page.console().await, [""; 0]);
        }
        hurry(page);
        assert!(refused(page.forgive("anything")).await.contains("no such complaint"));
    })
    .await;
}

#[tokio::test]
async fn a_journey_with_a_complaint_fails_and_leaves_evidence() {
    let body = "<p>Words on the page</p><script>console.error('quiet trouble')</script>";
    let walk = journey(Bench::page(body).await, Device::Phone, async |Journey { page, .. }| {
        page.goto("").await;
    });
    assert!(refused(walk).await.contains("quiet trouble"));
    let name = "harness_checks.a_journey_with_a_complaint_fails_and_leaves_evidence";
    let text = std::fs::read_to_string(evidence_folder().join(format!("{name}.txt")));
    let text = text.expect("the page's text is saved");
    for part in ["Words on the page", "quiet trouble", "go to http://127.0.0.1:"] {
        assert!(text.contains(part), "{part}: {text}");
    }
    let picture = std::fs::read(evidence_folder().join(format!("{name}.png")));
    assert_eq!(size_of(&picture.expect("a picture is saved")), (780, 1688));
}

/// Width and height from a PNG's first chunk.
fn size_of(png: &[u8]) -> (u32, u32) {
    let number =
        |at: usize| u32::from_be_bytes(png[at..at + 4].try_into().expect("four bytes of a PNG"));
    (number(16), number(20))
}

#[tokio::test]
async fn axe_finds_what_is_not_usable_by_all() {
    let good = "<label>Width <input></label>";
    let bad = "<input id=bare><p style='color:#999;background:#fff'>Pale words</p>\
        <a href=x style='display:inline-block;width:9px;height:9px;overflow:hidden'>a</a>\
        <a href=y style='display:inline-block;width:9px;height:9px;overflow:hidden'>b</a>";
    // The site's policy: no script from the page, which must not keep axe out.
    let policy = "default-src 'none'; script-src 'self'; style-src 'unsafe-inline'";
    let bench = Bench::pages(&[("good", good), ("bad", bad)], Some(policy)).await;
    journey(bench, Device::Phone, async |Journey { page, .. }| {
        page.goto("good").await;
        assert_eq!(page.axe().await, [""; 0]);
        page.goto("bad").await;
        let words = refused(page.axe()).await;
        for broken in ["label: #bare", "color-contrast: p", "target-size: a"] {
            assert!(words.contains(broken), "{broken}: {words}");
        }
    })
    .await;
}

#[tokio::test]
async fn overflow_names_what_sticks_out() {
    let good = "<div style='overflow-x:auto'><p style='width:900px'>Its own row</p></div>";
    let bad = "<section><div id=wide style='width:321px;margin-left:-8px'>Wide</div></section>";
    let cut = "<style>body{overflow-x:hidden}</style><p id=cut style='width:400px'>Cut off</p>";
    let word = "<p style='width:100px;white-space:nowrap'>A line that never breaks, on and on</p>";
    let pages = [("good", good), ("bad", bad), ("cut", cut), ("word", word)];
    journey(
        Bench::pages(&pages, None).await,
        Device::SmallPhone,
        async |Journey { page, .. }| {
            page.goto("good").await;
            assert_eq!(page.overflow().await, [""; 0]);
            page.goto("bad").await;
            assert_eq!(page.overflow().await, ["<div#wide> \"Wide\" from 0.0 to 321.0 of 320"]);
            page.goto("cut").await;
            assert_eq!(page.overflow().await, ["<p#cut> \"Cut off\" from 8.0 to 408.0 of 320"]);
            page.goto("word").await;
            page.text_percent(200).await;
            let sideways = page.overflow().await;
            assert!(sideways.len() == 1 && sideways[0].contains("(text?)"), "{sideways:?}");
        },
    )
    .await;
}

#[tokio::test]
async fn small_targets_are_listed() {
    let body = "<style>button:not([hidden]),a,label{display:inline-block;padding:0;border:0;margin:20px}\
        .wide::before{content:'';position:absolute;inset:-14px}</style>\
        <button style='width:48px;height:48px'>Big</button>\
        <button style='width:90px;height:47px'>Low</button>\
        <button class=wide style='position:relative;width:20px;height:20px'>x</button>\
        <p>Running text with <a href=x data-inline>a link</a> and <a href=y>another</a>.</p>\
        <label style='width:48px;height:48px'><input type=checkbox></label>\
        <button hidden>No</button><div tabindex=-1>Not a target</div>";
    journey(Bench::page(body).await, Device::Phone, async |Journey { page, .. }| {
        page.goto("").await;
        let small = page.smallest_targets(48).await;
        assert_eq!(small.len(), 2, "{small:?}");
        assert!(small[0].starts_with("<a> \"another\""), "{small:?}");
        assert_eq!(small[1], "<button> \"Low\" 90.0 x 47.0");
    })
    .await;
}

const LOOK: &str = "({ width: innerWidth, pixels: devicePixelRatio, fingers: navigator.maxTouchPoints,\
    coarse: matchMedia('(pointer: coarse)').matches, hovers: matchMedia('(hover: hover)').matches,\
    dark: matchMedia('(prefers-color-scheme: dark)').matches })";

#[tokio::test]
async fn a_phone_looks_like_one() {
    let body =
        "<p id=rem style='font-size:1rem'>Grows</p><p id=px style='font-size:16px'>Stays</p>";
    journey(
        Bench::page(body).await,
        Device::SmallPhone,
        async |Journey { page, browser, .. }| {
            page.goto("").await;
            let mut look = json!({ "width": 320, "pixels": 2, "fingers": 5, "coarse": true,
            "hovers": false, "dark": false });
            assert_eq!(page.evaluate::<Value>(LOOK).await, look);

            page.scheme(Scheme::Dark).await;
            look["dark"] = json!(true);
            assert_eq!(page.evaluate::<Value>(LOOK).await, look);
            page.scheme(Scheme::Light).await;
            look["dark"] = json!(false);
            assert_eq!(page.evaluate::<Value>(LOOK).await, look);

            page.text_percent(200).await;
            let size = |id: &str| format!("getComputedStyle({id}).fontSize");
            assert_eq!(page.evaluate::<String>(&size("rem")).await, "32px");
            assert_eq!(page.evaluate::<String>(&size("px")).await, "16px");

            // A second tab is on the same device, and sees the same store.
            page.evaluate::<()>("localStorage.setItem('mark', 'kept')").await;
            let second = browser.new_tab().await;
            second.goto("").await;
            assert_eq!(second.evaluate::<Value>(LOOK).await, look);
            assert_eq!(second.evaluate::<String>("localStorage.getItem('mark')").await, "kept");
            page.tap("#rem").await;
            page.until("document.visibilityState === 'visible'").await;
        },
    )
    .await;
}

#[tokio::test]
async fn a_desk_looks_like_one() {
    journey(Bench::page("<p>Desk</p>").await, Device::Desk, async |Journey { page, .. }| {
        page.goto("").await;
        let look = json!({ "width": 1280, "pixels": 1, "fingers": 0, "coarse": false,
            "hovers": true, "dark": false });
        assert_eq!(page.evaluate::<Value>(LOOK).await, look);
        page.goto("#/place").await;
        page.back().await;
        page.until("location.hash === ''").await;
        page.reload().await;
        page.reads("p", "Desk").await;
        let picture = page.screenshot("harness_checks.desk").await;
        let picture = std::fs::read(picture).expect("the picture is where it is said to be");
        assert_eq!(size_of(&picture), (1280, 800));
        let why_not = page.installability().await;
        assert!(why_not.contains(&"no-manifest".to_owned()), "{why_not:?}");
    })
    .await;
}

// Chromium holds new local storage back for some seconds: closed in time it writes, killed it
// can't. So this shows that a kill reaches every process, and that the profile lives on.
#[tokio::test]
async fn a_kill_loses_what_a_close_keeps() {
    let write = |mark: &str| format!("localStorage.setItem('mark', '{mark}')");
    let read = "localStorage.getItem('mark')";
    journey(Bench::page("").await, Device::Phone, async |journey| {
        journey.page.goto("").await;
        journey.page.evaluate::<()>(&write("closed")).await;
        journey.browser.close().await;
        journey.page = journey.browser.open().await;
        journey.page.goto("").await;
        assert_eq!(journey.page.evaluate::<String>(read).await, "closed");
        journey.page.evaluate::<()>(&write("killed")).await;
        journey.browser.kill().await;
        journey.page = journey.browser.open().await;
        journey.page.goto("").await;
        assert_eq!(journey.page.evaluate::<String>(read).await, "closed");
    })
    .await;
}
