//! The worker that switches itself off: it takes the kept site away and nothing else.

use crate::harness::{Device, Journey, Page, Server, journey, saying};

async fn waits_for_no_worker(page: &Page) {
    page.until("navigator.serviceWorker.getRegistrations().then((all) => !all.length)").await;
}

async fn retires(base: &str) {
    journey(Server::start(base), Device::Phone, async |Journey { page, site, .. }| {
        page.goto("").await;
        page.until("navigator.serviceWorker.controller").await;
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den switch").await;
        page.until(
            "Object.keys(localStorage).some((key) => localStorage[key].includes('Den switch'))",
        )
        .await;
        // Others on the same host, and another copy of the site beside this one.
        page.until(
            "Promise.all(['theirs', `ledgerboard ${location.origin}/beside/ 1`].map((name) => \
             caches.open(name))).then(() => true)",
        )
        .await;
        page.tap(saying("Done")).await;
        page.enter("[data-path=marked]", "20").await;

        site.retire();
        // The page may be broken: nobody is asked.
        let _: Option<bool> =
            page.evaluate("window.dispatchEvent(new Event('pageshow')), null").await;
        waits_for_no_worker(page).await;
        let left: Vec<String> = page.evaluate("caches.keys()").await;
        assert_eq!(left.len(), 2, "{left:?}");
        assert!(left.iter().any(|name| name == "theirs"), "{left:?}");
        assert!(left.iter().any(|name| name.contains("/beside/")), "{left:?}");
        // The open page goes on as it is.
        page.has_focus("[data-path=marked]").await;
        page.type_keys(".25").await;
        page.reads("[data-path=marked]", "20.25").await;

        // The address follows once typing pauses.
        page.until("location.hash.includes('20.25')").await;
        let before = site.requests().len();
        page.reload().await;
        page.reads("[data-path=marked]", "20.25").await;
        let asked = site.requests()[before..].to_vec();
        assert!(asked.iter().any(|request| request.path == base), "from the host now: {asked:?}");
        assert!(!asked.iter().any(|request| request.path.ends_with("sw.js")), "{asked:?}");
        page.goto("#/jobs").await;
        page.tap(".doors a").await;
        page.reads(".mark-title", "Den switch").await;
        page.goto("#/settings").await;
        page.tap(saying("Look for an update")).await;
        page.sees(saying("This browser does not keep the page for work without signal, so a reload always brings the newest version.")).await;
        waits_for_no_worker(page).await;

        // The day after: a good version is kept again.
        site.publish("mended");
        page.reload().await;
        page.until("navigator.serviceWorker.controller").await;
        site.kill();
        page.reload().await;
        page.reads("h1", "Settings").await;
    })
    .await;
}

#[tokio::test]
async fn a_retired_worker_takes_the_kept_site_and_nothing_else() {
    retires("/").await;
}

#[tokio::test]
async fn a_retired_worker_under_a_folder_does_the_same() {
    retires("/sub/").await;
}
