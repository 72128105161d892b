//! What the page asks of the network: its own files once, and after that nothing but whether
//! there is a newer worker.

use std::time::Duration;

use crate::harness::{Device, Journey, Server, journey, saying};

#[tokio::test]
async fn after_the_first_visit_only_the_worker_is_looked_for() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, site, .. }| {
        page.goto("").await;
        page.until("navigator.serviceWorker.ready").await;
        page.until("navigator.serviceWorker.controller").await;
        let before = site.requests().len();
        page.reload().await;
        page.tap(saying("Box fill")).await;
        page.tap(saying("Add 14-3")).await;
        page.tap(saying("Save to job")).await;
        page.goto("#/jobs").await;
        page.sees("h1").await;
        // Chromium waits about two seconds after a load before it looks for a newer worker.
        tokio::time::sleep(Duration::from_secs(4)).await;
        let after: Vec<String> =
            site.requests()[before..].iter().map(|request| request.path.clone()).collect();
        assert!(after.iter().all(|path| path.ends_with("/sw.js")), "{after:?}");
        assert!(!after.is_empty(), "the look for a newer worker is made");
        let elsewhere: Vec<String> = page
            .evaluate(
                "performance.getEntriesByType('resource').map((it) => it.name) \
                 .filter((name) => !name.startsWith(location.origin))",
            )
            .await;
        assert!(elsewhere.is_empty(), "{elsewhere:?}");
    })
    .await;
}
