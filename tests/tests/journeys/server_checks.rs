//! The site's own server shown going and coming back, as a phone's signal does.

use std::fs;

use crate::harness::{Device, Journey, Server, Site, journey, refused};

async fn goes_and_comes_back(base: &str) {
    let server = Server::start(base);
    journey(server, Device::Phone, async |Journey { site, page, .. }| {
        let address = site.address().to_owned();
        assert!(address.ends_with(base), "{address}");
        // Files that no worker or cache of the browser knows, so that only the server can answer.
        for file in ["first.txt", "second.txt", "third.txt"] {
            fs::write(site.site().join(file), file).expect("the copy can be written");
        }
        page.goto("first.txt").await;
        page.reads("body", "first.txt").await;
        assert_eq!(site.count("first.txt", 200), 1);
        // The browser asks for a page's icon when it gets round to it: not after the server is gone.
        page.forgive("favicon.ico").await;

        site.kill();
        let words = refused(page.goto("second.txt")).await;
        assert!(words.contains("ERR_CONNECTION_REFUSED"), "{words}");

        site.restart();
        assert_eq!(site.address(), address);
        page.goto("third.txt").await;
        page.reads("body", "third.txt").await;
        let missing = "fetch('missing.txt').then((answer) => answer.status)";
        assert_eq!(page.evaluate::<u16>(missing).await, 404);
        page.forgive("404").await;
        let asked = ["first.txt", "second.txt", "third.txt"].map(|file| site.count(file, 200));
        assert_eq!(asked, [1, 0, 1]);
        assert_eq!(site.count("missing.txt", 404), 1);
    })
    .await;
}

#[tokio::test]
async fn a_killed_server_comes_back_at_the_same_address() {
    goes_and_comes_back("/").await;
}

#[tokio::test]
async fn a_server_under_a_folder_does_the_same() {
    goes_and_comes_back("/sub/").await;
}
