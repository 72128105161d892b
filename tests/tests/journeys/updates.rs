//! From one version to the next: it waits, offers, and takes nothing from whoever is typing; and
//! whatever happens to it on its way, the version that is there goes on.

use crate::harness::{Device, Journey, Page, Server, journey, saying};

const WAITS: &str = "A new version is on the phone.";
const FAILED: &str = "The update could not be fetched. The version you have still works.";
const NO_ANSWER: &str = "No answer from where this page comes from. The version you have still works. Look again when you have signal.";
/// The field that is typed into.
const MARKED: &str = "[data-path=marked]";

/// Opens the site and waits until it is kept.
async fn keep(page: &Page) {
    page.goto("").await;
    page.until("navigator.serviceWorker.ready").await;
    page.until("navigator.serviceWorker.controller").await;
}

async fn version(page: &Page) -> String {
    page.evaluate("document.querySelector('meta[name=ledgerboard-version]').content").await
}

async fn caches(page: &Page) -> Vec<String> {
    page.evaluate("caches.keys()").await
}

/// Goes to the settings and taps the look for an update.
async fn look(page: &Page) {
    page.goto("#/settings").await;
    page.tap(saying("Look for an update")).await;
}

async fn waits_offers_and_loses_no_keystroke(base: &str) {
    journey(Server::start(base), Device::Phone, async |Journey { page, site, browser }| {
        keep(page).await;
        let first = version(page).await;
        page.goto("#/box-fill").await;
        page.enter(MARKED, "20").await;
        site.publish("two");

        // Another tab starts, as it does when a link is opened, and that one finds it.
        let other = browser.new_tab().await;
        other.goto("").await;
        other.sees(saying(WAITS)).await;
        assert_eq!(version(&other).await, first, "it waits");
        page.sees(saying(WAITS)).await;
        page.has_focus(MARKED).await;
        page.type_keys(".2").await;
        page.reads(MARKED, "20.2").await;
        // A plain reload stays on the version that is there.
        other.reload().await;
        other.sees(saying(WAITS)).await;
        assert_eq!(version(&other).await, first, "it still waits");

        // The last key and the tap that takes the version, with nothing between them.
        page.sees(MARKED).await;
        page.type_keys("5").await;
        page.tap(saying("Take it")).await;
        page.until(&format!(
            "document.querySelector('meta[name=ledgerboard-version]').content !== '{first}'"
        ))
        .await;
        page.reads(MARKED, "20.25").await;
        assert_eq!(caches(page).await.len(), 1, "the old version is gone");

        // The tab that did not ask is told, and not reloaded.
        other
            .sees(saying("Another tab took the new version. Reload this one when you are ready."))
            .await;
        assert_eq!(version(&other).await, first);
        other.tap(saying("Reload")).await;
        other
            .until(&format!(
                "document.querySelector('meta[name=ledgerboard-version]').content !== '{first}'"
            ))
            .await;

        // And the new one needs no signal either.
        site.kill();
        page.reload().await;
        page.reads(MARKED, "20.25").await;
        site.restart();
    })
    .await;
}

#[tokio::test]
async fn a_new_version_waits_offers_and_loses_no_keystroke() {
    waits_offers_and_loses_no_keystroke("/").await;
}

#[tokio::test]
async fn a_new_version_under_a_folder_does_the_same() {
    waits_offers_and_loses_no_keystroke("/sub/").await;
}

#[tokio::test]
async fn a_tab_that_is_typed_in_while_another_takes_the_version_goes_on() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, site, browser }| {
        keep(page).await;
        page.goto("#/box-fill").await;
        page.enter(MARKED, "2").await;
        site.publish("two");
        let other = browser.new_tab().await;
        other.goto("").await;
        other.tap(saying("Take it")).await;
        other.misses(saying(WAITS)).await;
        page.sees(saying("Another tab took the new version. Reload this one when you are ready."))
            .await;
        page.has_focus(MARKED).await;
        page.type_keys("0.25").await;
        page.reads(MARKED, "20.25").await;
        page.tap(saying("Save to job")).await;
        page.sees("#mark-title").await;
        page.tap(saying("Reload")).await;
        page.reads(MARKED, "20.25").await;
        page.goto("#/jobs").await;
        page.sees(".doors a").await;
    })
    .await;
}

/// Publishes a version through a bad host, then through a good one.
async fn fails_then_arrives(rules: &str) {
    journey(Server::start("/"), Device::Phone, async |Journey { page, site, .. }| {
        keep(page).await;
        let first = version(page).await;
        let kept = caches(page).await;
        site.publish("two");
        site.misbehave(rules);
        look(page).await;
        page.sees(saying(FAILED)).await;
        page.misses(saying("Looking …")).await;
        assert_eq!(caches(page).await, kept, "nothing of the failed one stays");
        page.reload().await;
        page.sees(saying("Settings")).await;
        // That load looked by itself, and failed again.
        page.sees(saying(FAILED)).await;
        assert_eq!(version(page).await, first);
        page.screenshot("update-failed").await;
        // The old one goes on without any host.
        site.kill();
        page.reload().await;
        page.goto("#/box-fill").await;
        page.reads("h1", "Box fill").await;
        site.restart();

        site.misbehave("");
        look(page).await;
        page.tap(saying("Take it")).await;
        page.until(&format!(
            "document.querySelector('meta[name=ledgerboard-version]').content !== '{first}'"
        ))
        .await;
        page.goto("#/box-fill").await;
        page.reads("h1", "Box fill").await;
        assert_eq!(caches(page).await.len(), 1);
    })
    .await;
}

#[tokio::test]
async fn an_update_that_is_cut_half_way_leaves_the_old_version() {
    fails_then_arrives("app.wasm cut").await;
}

#[tokio::test]
async fn an_update_with_a_missing_file_leaves_the_old_version() {
    fails_then_arrives("app.wasm answer 404").await;
}

#[tokio::test]
async fn an_update_whose_host_fails_leaves_the_old_version() {
    fails_then_arrives("app.wasm answer 500").await;
}

/// The name says that it may be kept for ever, so the browser keeps the wrong bytes too.
#[tokio::test]
async fn an_update_with_wrong_bytes_leaves_the_old_version() {
    fails_then_arrives("app.wasm rewrite").await;
}

#[tokio::test]
async fn an_update_whose_page_is_rewritten_leaves_the_old_version() {
    fails_then_arrives("index.html rewrite").await;
}

#[tokio::test]
async fn a_worker_that_cannot_be_fetched_leaves_the_old_version() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, site, .. }| {
        keep(page).await;
        let first = version(page).await;
        for rule in
            ["sw.js answer 404", "sw.js answer 500", "sw.js cut", "* catch-all\nsw.js answer 404"]
        {
            site.publish("two");
            site.misbehave(rule);
            look(page).await;
            page.sees(saying(NO_ANSWER)).await;
            page.forgive("sw.js").await;
            page.reload().await;
            page.reads("h1", "Settings").await;
            assert_eq!(version(page).await, first, "{rule}");
        }
        site.misbehave("");
        look(page).await;
        page.sees(saying(WAITS)).await;
        // The last reload looked by itself; whether the browser noted that before it ended, varies.
        if !page.console().await.is_empty() {
            page.forgive("sw.js").await;
        }
    })
    .await;
}

#[tokio::test]
async fn a_look_for_an_update_says_what_came_of_it() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, site, .. }| {
        keep(page).await;
        let whole = version(page).await;
        page.goto("#/settings").await;
        let words = format!(
            "Version {}. Phones that show the same letters run the same version.",
            &whole[..8]
        );
        page.sees(saying(&words)).await;
        page.tap(saying("Look for an update")).await;
        page.sees(saying("This is the newest version.")).await;
        page.screenshot("settings-newest").await;

        site.kill();
        page.tap(saying("Look for an update")).await;
        page.sees(saying(NO_ANSWER)).await;
        page.forgive("sw.js").await;
        site.restart();

        site.publish("two");
        page.tap(saying("Look for an update")).await;
        page.sees(saying(WAITS)).await;
        page.misses(saying("Looking …")).await;
        page.tap(saying("Close")).await;
        page.misses(saying(WAITS)).await;
        // Asked again, it is said again.
        page.tap(saying("Look for an update")).await;
        page.sees(saying(WAITS)).await;
        page.screenshot("settings-waits").await;
    })
    .await;
}

/// A host that sets another's caching rules for the worker must not hold an update back.
#[tokio::test]
async fn a_worker_sent_as_good_for_a_day_is_asked_for_all_the_same() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, site, .. }| {
        site.misbehave("sw.js set Cache-Control: max-age=86400");
        keep(page).await;
        site.publish("two");
        look(page).await;
        page.sees(saying(WAITS)).await;
    })
    .await;
}

#[tokio::test]
async fn a_first_visit_that_breaks_off_says_so_and_is_made_good() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, site, .. }| {
        site.misbehave("rescue.html answer 500");
        page.goto("").await;
        page.sees(saying("Not kept for work without signal yet: the fetch was cut short. It tries again by itself.")).await;
        assert!(caches(page).await.is_empty());
        site.misbehave("");
        page.reload().await;
        page.sees(saying("Works without signal now.")).await;
    })
    .await;
}
