//! Dark, light and full sun: set by a person, kept, and as easy to read as the style sheet promises.

use crate::harness::{Device, Journey, Server, journey, saying};

/// What each meaning's color comes to against the ground, as W3C WCAG 2.2 defines contrast:
/// (L1 + 0.05) / (L2 + 0.05), of relative luminances in sRGB.
const CONTRASTS: &str = "(() => { \
    const canvas = document.createElement('canvas'); canvas.width = canvas.height = 1; \
    const draw = canvas.getContext('2d', { willReadFrequently: true }); \
    const probe = document.body.appendChild(document.createElement('i')); \
    const luminance = (name) => { \
        probe.style.color = `var(${name})`; \
        draw.fillStyle = getComputedStyle(probe).color; draw.fillRect(0, 0, 1, 1); \
        const parts = [...draw.getImageData(0, 0, 1, 1).data].slice(0, 3).map((part) => { \
            const share = part / 255; \
            return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4; }); \
        return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2]; }; \
    const against = (name, ground) => { \
        const [more, less] = [luminance(name), luminance(ground)].sort((a, b) => b - a); \
        return (more + 0.05) / (less + 0.05); }; \
    const all = ['--figure', '--quiet', '--touch', '--over', '--ask', '--edge'].map((name) => \
        Math.min(against(name, '--ground'), against(name, '--sheet'))); \
    probe.remove(); return all; })()";

#[tokio::test]
async fn the_page_is_dark_light_or_for_full_sun_as_a_person_sets_it() {
    journey(Server::start("/"), Device::SmallPhone, async |Journey { page, .. }| {
        page.goto("#/settings").await;
        let ground = "getComputedStyle(document.documentElement).getPropertyValue('--ground')";
        // Figures 7:1 everywhere, all words 4.5:1, edges 3:1; in full sun 7:1, all of it.
        for (name, least) in [
            ("Light", [7.0, 4.5, 4.5, 4.5, 4.5, 3.0]),
            ("Dark", [7.0, 4.5, 4.5, 4.5, 4.5, 3.0]),
            ("Full sun", [7.0; 6]),
        ] {
            page.tap(saying(name)).await;
            let found: Vec<f64> = page.evaluate(CONTRASTS).await;
            let holds = found.iter().zip(least).all(|(found, least)| *found >= least);
            assert!(holds, "{name}: {found:?} of {least:?}");
            page.axe().await;
            page.screenshot(&format!("daylight-{}", name.to_lowercase().replace(' ', "-"))).await;
        }
        page.until("localStorage['ledgerboard.settings'].includes('sun')").await;
        page.reload().await;
        page.sees(saying("Full sun")).await;
        assert_eq!(page.evaluate::<String>(ground).await, "#fff", "kept");
        page.goto("#/box-fill").await;
        page.screenshot("answer-in-full-sun").await;
        assert_eq!(page.overflow().await, Vec::<String>::new());
        page.goto("#/settings").await;
        page.tap(saying("As the phone")).await;
        let is_light = "getComputedStyle(document.documentElement).colorScheme";
        assert_eq!(page.evaluate::<String>(is_light).await, "light dark");
    })
    .await;
}
