//! No word reaches the screen but through the one interpolator: in the proofreading language every
//! phrase stands in brackets, and any text outside of them was written past it.

use crate::harness::{Device, Journey, Server, journey, saying};

/// Text that stands in no brackets and isn't a person's own, a number or a sign.
const OUTSIDE: &str = r"(() => {
    const found = [];
    const inside = (text) => {
        // Phrases stand in phrases: take the innermost away until none is left.
        let bare = text;
        for (let before = ''; before !== bare;) {
            before = bare;
            bare = bare.replace(/⟦[^⟦⟧]*⟧/g, '');
        }
        return !/\p{L}{2,}/u.test(bare);
    };
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
        const text = walk.currentNode, element = text.parentElement;
        if (element.closest('[data-own], script, #shell, #fault, noscript, template')) continue;
        if (!inside(text.data)) found.push(text.data.trim());
    }
    for (const element of document.querySelectorAll('[aria-label], [title], [placeholder], [alt], [aria-description], [aria-valuetext]')) {
        if (element.closest('[data-own]')) continue;
        for (const name of ['aria-label', 'title', 'placeholder', 'alt', 'aria-description', 'aria-valuetext']) {
            const text = element.getAttribute(name);
            if (text && !inside(text)) found.push(`${name}=${text}`);
        }
    }
    return found;
})()";

#[tokio::test]
async fn every_word_on_every_page_comes_from_the_phrases() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/settings").await;
        page.sees(saying("Metric")).await;
        page.tap(saying("Metric")).await;
        page.until("localStorage['ledgerboard.settings']").await;
        let _: Option<bool> = page
            .evaluate("localStorage['ledgerboard.settings'] = JSON.stringify({...JSON.parse(localStorage['ledgerboard.settings']), language: 'pseudo', units: 'customary'}), null")
            .await;
        page.reload().await;
        page.sees(saying("⟦Settings⟧")).await;
        for place in [
            "#/",
            "#/jobs",
            "#/job/demo",
            "#/job/demo/buy",
            "#/job/demo/ready",
            "#/job/demo/owner",
            "#/settings",
            "#/nowhere",
            "#/box-fill?a.%=1",
            "#/cable-securing",
            "#/box-fill",
            "#/box-fill?enclosure=dev-3x2x2&clamps=inside&cables.0.cable=14-2&cables.0.count=2&devices.0.kind=range&wires.0.how=canopy&wires.0.count=5&barriers.0.after=1&gangs=2&adds.0.kind=extension",
            "#/box-fill?marked=wide&cables.0.count=x&barriers.0.after=9",
        ] {
            page.goto(place).await;
            page.sees("h1").await;
            let _: Option<bool> =
                page.evaluate("document.querySelectorAll('details').forEach((it) => it.open = true)").await;
            let found: Vec<String> = page.evaluate(OUTSIDE).await;
            assert!(found.is_empty(), "{place}: {found:#?}");
            let all: usize = page.evaluate("document.body.textContent.split('⟦').length").await;
            assert!(all > 5, "{place}: the brackets are there");
        }
    })
    .await;
}

/// The whole page in Spanish at 320 px: it says what it says there, nothing is cut off, and what was
/// typed is still there.
#[tokio::test]
async fn the_page_speaks_spanish_when_it_is_asked_to() {
    journey(Server::start("/"), Device::SmallPhone, async |Journey { page, .. }| {
        page.goto("#/cable-securing").await;
        page.enter(crate::harness::field("run"), "30 ft").await;
        page.goto("#/settings").await;
        page.tap(saying("Español")).await;
        page.until("document.documentElement.lang === 'es'").await;
        page.until("document.querySelector('h1')?.innerText === 'Ajustes'").await;
        page.goto("#/cable-securing").await;
        page.reads(".answer .figure", "8").await;
        for place in [
            "#/",
            "#/jobs",
            "#/job/demo",
            "#/job/demo/buy",
            "#/job/demo/ready",
            "#/box-fill",
            "#/raising",
            "#/boards",
            "#/hold",
            "#/rough-in",
            "#/register-spots",
        ] {
            page.goto(place).await;
            page.sees("h1").await;
            let wide = page.overflow().await;
            assert!(wide.is_empty(), "{place} sticks out: {wide:?}");
        }
        page.screenshot("spanish").await;
    })
    .await;
}
