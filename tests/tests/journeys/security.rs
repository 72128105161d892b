//! What a page may load and run, and what becomes of text that would like to be more than text.

use std::collections::BTreeSet;
use std::fs;

use crate::harness::{Device, Journey, Page, Server, journey, saying};

const PAGES: [&str; 2] = ["", "rescue.html"];
const POLICY: &str = "Content-Security-Policy: ";

/// Everything that a policy has to refuse, tried from inside the page; gives what was refused.
const TRY_ALL: &str = "(async () => {
    const refused = [];
    document.addEventListener('securitypolicyviolation', (event) => refused.push(event.effectiveDirective));
    const add = (tag, more) => document.body.append(Object.assign(document.createElement(tag), more));
    add('script', { textContent: 'window.hit = 1' });
    add('script', { src: 'http://127.0.0.1:9/a.js' });
    add('style', { textContent: 'body { display: none }' });
    add('link', { rel: 'stylesheet', href: 'http://127.0.0.1:9/a.css' });
    add('img', { src: 'http://127.0.0.1:9/a.png', alt: '' });
    add('iframe', { src: 'http://127.0.0.1:9/' });
    add('p', { innerHTML: '<b style=\"color: red\" onclick=\"window.hit = 2\">x</b>' });
    document.body.lastChild.firstChild.click();
    await fetch('http://127.0.0.1:9/').catch(() => {});
    const pause = () => new Promise((done) => setTimeout(done, 300));
    // A busy machine tells late; what is refused twice counts once.
    for (let times = 0; times < 20 && new Set(refused).size < 7; times++) await pause();
    await pause();
    return window.hit === undefined ? refused : ['it ran'];
})()";

async fn refuses_all(page: &Page) {
    for place in PAGES {
        page.goto(place).await;
        page.sees("h1").await;
        let refused: BTreeSet<String> = page.evaluate(TRY_ALL).await;
        let want = [
            "connect-src",
            "frame-src",
            "img-src",
            "script-src-attr",
            "script-src-elem",
            "style-src-attr",
            "style-src-elem",
        ];
        assert_eq!(refused, want.map(str::to_owned).into(), "{place}");
        // Chromium says it in three ways, all with the directive's name or the address.
        for part in ["Content Security Policy", "127.0.0.1:9/"] {
            if page.console().await.iter().any(|line| line.contains(part)) {
                page.forgive(part).await;
            }
        }
    }
}

#[tokio::test]
async fn the_policy_refuses_all_that_is_not_the_sites_own() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        refuses_all(page).await;
    })
    .await;
}

#[tokio::test]
async fn the_pages_own_words_are_enough_where_the_host_sets_no_headers() {
    let server = Server::start("/");
    server.misbehave("* drop Content-Security-Policy");
    journey(server, Device::Phone, async |Journey { page, .. }| {
        page.goto("").await;
        let header = "fetch('./').then((it) => it.headers.get('Content-Security-Policy'))";
        assert_eq!(page.evaluate::<Option<String>>(header).await, None);
        refuses_all(page).await;
    })
    .await;
}

#[tokio::test]
async fn header_and_page_state_the_same_policy_and_the_pages_hold_nothing_inline() {
    journey(Server::start("/sub/"), Device::Phone, async |Journey { page, site, .. }| {
        let headers = fs::read_to_string(site.site().join("headers.txt")).expect("it is there");
        let policy = headers.lines().find_map(|line| line.strip_prefix(POLICY)).expect("a policy");
        assert!(!policy.contains("unsafe-inline") && !policy.contains("://"), "{policy}");
        for (place, file) in [("", "index.html"), ("rescue.html", "rescue.html")] {
            page.goto(place).await;
            let sent: String = page
                .evaluate("fetch('').then((it) => it.headers.get('Content-Security-Policy'))")
                .await;
            assert_eq!(sent, policy, "{place}");
            let stated: String = page
                .evaluate("document.querySelector('meta[http-equiv=Content-Security-Policy]').content")
                .await;
            // A page can't say of itself who may frame it.
            assert_eq!(format!("{stated}; frame-ancestors 'none'"), policy, "{place}");
            let html = fs::read_to_string(site.site().join(file)).expect("it is there");
            let found: Vec<String> = page
                .evaluate(&format!(
                    "[...new DOMParser().parseFromString({}, 'text/html').querySelectorAll('*')] \
                     .filter((it) => it.matches('style, script:not([src])') || \
                     it.getAttributeNames().some((name) => name === 'style' || name.startsWith('on'))) \
                     .map((it) => it.outerHTML)",
                    serde_json::Value::from(html)
                ))
                .await;
            assert!(found.is_empty(), "{place}: {found:?}");
        }
    })
    .await;
}

/// What would run, or change the page, if it were ever taken for markup.
const BAIT: &str = "<img src=x onerror=\"window.hit=1\"><script>window.hit=2</script>";

async fn is_only_text(page: &Page) {
    page.until(
        "window.hit === undefined && !document.querySelector('img, #app script, #app style')",
    )
    .await;
}

#[tokio::test]
async fn what_a_person_writes_stays_text() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/jobs").await;
        page.enter("#job-name", BAIT).await;
        page.enter("#job-place", BAIT).await;
        page.tap(saying("Make this job")).await;
        page.reads("h1", BAIT).await;
        is_only_text(page).await;
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", BAIT).await;
        page.enter("#mark-spot", BAIT).await;
        page.tap(".details summary").await;
        page.enter("#mark-note", BAIT).await;
        page.tap(saying("Done")).await;
        is_only_text(page).await;
        page.goto("#/jobs").await;
        is_only_text(page).await;
        page.tap(".doors a").await;
        page.reads(".mark-title", BAIT).await;
        is_only_text(page).await;
        page.reload().await;
        page.reads(".mark-title", BAIT).await;
        is_only_text(page).await;
        page.goto("rescue.html").await;
        page.until("document.querySelectorAll('#records li').length > 1").await;
        page.until(
            "window.hit === undefined && !document.querySelector('img, main script, main style')",
        )
        .await;
    })
    .await;
}

#[tokio::test]
async fn what_a_link_or_a_store_brings_stays_text() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        let bait: String =
            page.evaluate(&format!("encodeURIComponent({})", serde_json::Value::from(BAIT))).await;
        for place in [
            format!("#/box-fill?marked={bait}&cables.0.cable={bait}&devices.0.count={bait}"),
            format!("#/{bait}"),
            format!("#/box-fill?{bait}={bait}"),
            format!("#/box-fill?marked=20&~nec={bait}"),
            format!("#/job/{bait}"),
            format!("#/mark/{bait}/{bait}"),
            "#/javascript:window.hit=3".to_owned(),
        ] {
            page.goto(&place).await;
            page.sees("h1").await;
            is_only_text(page).await;
        }
        page.goto("#/box-fill?marked=20").await;
        page.sees("h1").await;
        for key in ["settings", "draft.box-fill", "job.bait", "elsewhere"] {
            let bait =
                serde_json::Value::from(format!("{{\"name\":{}}}", serde_json::Value::from(BAIT)));
            let _: Option<bool> =
                page.evaluate(&format!("localStorage['ledgerboard.{key}'] = {bait}, null")).await;
            page.reload().await;
            page.sees("h1").await;
            is_only_text(page).await;
            page.goto("#/jobs").await;
            page.sees("h1").await;
            is_only_text(page).await;
        }
    })
    .await;
}

#[tokio::test]
async fn nothing_is_ever_asked_of_anybody_else() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, site, .. }| {
        for place in [
            "",
            "#/jobs",
            "#/job/demo",
            "#/settings",
            "#/box-fill",
            "#/cable-securing",
            "#/room",
            "#/hold",
            "#/nowhere",
            "rescue.html",
        ] {
            page.goto(place).await;
            page.sees("h1").await;
            let elsewhere: Vec<String> = page
                .evaluate(
                    "performance.getEntriesByType('resource').map((it) => it.name) \
                     .filter((name) => !name.startsWith(location.origin + '/'))",
                )
                .await;
            assert!(elsewhere.is_empty(), "{place}: {elsewhere:?}");
        }
        // The browser can reach nobody else, so that a try would stand in its log.
        page.assert_quiet().await;
        let asked = site.requests();
        let missing: Vec<_> = asked.iter().filter(|request| request.status >= 400).collect();
        assert!(missing.is_empty(), "{missing:?}");
    })
    .await;
}
