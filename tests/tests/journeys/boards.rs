//! A ceiling is boarded by touch: how many, how each is cut, and how it goes on being looked for
//! while somebody types.

use crate::harness::{Device, Journey, Page, Server, field, journey, saying};

/// Where the answer stands.
const ANSWER: &str = ".answer .figure";

/// What stands first under the answer when the search has ended.
const PROVEN: &str = "Proven: with 14 ft boards no layout has fewer for so few end joints, nor fewer end joints for so few boards.";

/// By hand, and by two integer-program solvers: 12 by 16 ft over framing 16 in apart takes 4 boards
/// of 12 ft, 6 of 8 ft.
#[tokio::test]
async fn a_ceiling_is_boarded_and_its_joints_are_taped() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        opened(page).await;
        page.sees(".picture .drawing").await;
        page.choose(field("want"), "Lightest to lift").await;
        page.reads(ANSWER, "6").await;
        page.choose(field("want"), "Fewest boards").await;
        page.reads(ANSWER, "4").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den").await;
        page.tap(saying("Done")).await;
        page.screenshot("boards-of-a-ceiling").await;

        page.goto("#/joint-compound").await;
        page.tap(saying("Take all of Den")).await;
        // Said once, for all that came from it; what is all taken isn't offered again.
        let told = page.all_texts(".fields .from").await;
        assert_eq!(told.len(), 1, "{told:?}");
        for of in ["Tapered joints", "End joints", "Screws"] {
            assert!(told[0].contains(of) && told[0].ends_with(": from Den"), "{told:?}");
        }
        page.misses(saying("Take all of Den")).await;
        page.has_focus(".fields .from a").await;
        page.screenshot("compound-from-boards").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Compound").await;
        page.tap(saying("Done")).await;
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.sees(saying("Used by Compound")).await;
        let told = page.all_texts(".mark .quiet").await;
        assert_eq!(told.iter().filter(|it| it.ends_with(": from Den")).count(), 1, "{told:?}");

        // Other boards: each of them moved, and one tap takes them all.
        page.tap(saying("Den")).await;
        page.enter(field("long"), "24'").await;
        page.until("!document.querySelector('.answer .figure')?.innerText.startsWith('4')").await;
        page.tap(saying("Save over")).await;
        page.tap(saying("Done")).await;
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.sees(saying("Take all")).await;
        let moved = page.all_texts(".mark .now").await;
        let moved = moved.iter().filter(|it| it.contains(": It said ")).count();
        assert!(moved > 1, "each is told by its field's name");
        page.screenshot("boards-moved").await;
        page.tap(saying("Take all")).await;
        page.misses(saying("Take all")).await;
        page.tap(saying("Undo")).await;
        page.tap(saying("Take all")).await;
        page.misses(saying("Take all")).await;
        page.tap(saying("Compound")).await;
        page.sees(".fields .from").await;
        page.misses(saying("Take all of Den")).await;
        // What is typed over is no longer from there; the others still are, and it is offered again.
        page.enter(field("tapered"), "10 ft").await;
        page.sees(saying("Take all of Den")).await;
        let told = page.text(".fields .from").await;
        assert!(told.contains("End joints") && !told.contains("Tapered joints"), "{told}");
    })
    .await;
}

/// A room of 25 by 17 ft has an answer at once; it is looked at further between the keys.
#[tokio::test]
async fn a_large_room_is_answered_at_once_and_looked_at_further() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        opened(page).await;
        page.enter(field("long"), "24' 7").await;
        page.enter(field("wide"), "17' 5").await;
        page.sees(ANSWER).await;
        page.reads(ANSWER, "9").await;
        page.until(&begins(".answer-rest .next", PROVEN)).await;
        page.screenshot("boards-of-a-large-room").await;
    })
    .await;
}

/// Whether what stands at a selector begins with some words.
fn begins(selector: &str, words: &str) -> String {
    format!("document.querySelector('{selector}')?.textContent.startsWith('{words}') === true")
}

/// A ceiling of 33 by 29 ft is looked at for seconds: stopped, it says what isn't proven, keeps that
/// through a save, which is worked to the end, and goes on from there.
#[tokio::test]
async fn a_search_is_stopped_and_gone_on_with() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        opened(page).await;
        page.enter(field("long"), "33' 1").await;
        page.enter(field("wide"), "28' 11").await;
        page.tap(saying("Stop")).await;
        page.sees(saying("Look further")).await;
        page.until(&begins(".answer-rest .next", "Stopped: ")).await;
        page.screenshot("boards-stopped").await;
        page.tap(saying("Save to job")).await;
        page.until(&begins(".bar-says .now", "Saved is what the whole search comes to: ")).await;
        page.tap(saying("Done")).await;
        page.tap(saying("Look further")).await;
        page.sees(saying("Stop")).await;
    })
    .await;
}

/// Opens it, and waits until its search is done: what it ends with is longer than what it begins
/// with, and moves the fields below.
async fn opened(page: &Page) {
    page.goto("#/boards").await;
    page.reads(ANSWER, "4").await;
    page.until("document.querySelector('.looking') && !document.querySelector('.looking button')")
        .await;
}

/// Both widths in one ceiling of 15 by 13 ft: two rows of 54 in and one of 48, and no strip.
#[tokio::test]
async fn boards_of_both_widths_are_told_apart() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        opened(page).await;
        page.enter(field("long"), "15'").await;
        page.enter(field("wide"), "13'").await;
        page.tap(saying("Both")).await;
        page.tap(saying("Rows and their end joints")).await;
        page.sees("table.columns th[scope='col']").await;
        page.sees("table.columns th[scope='row']").await;
        page.screenshot("boards-of-both-widths").await;
    })
    .await;
}

/// A room says which way its joists run. A ceiling that takes it all knows whether boards cross them, and
/// is held to what the way allows that they are laid.
#[tokio::test]
async fn a_rooms_joists_say_whether_boards_cross_them() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        let says = |text: &str| {
            format!("document.querySelector('main')?.textContent.includes('{text}')")
        };
        page.goto(
            "#/room?shape=rectangle&long=16%20ft&wide=12%20ft&height=8%20ft            &framing.runs=along&framing.spacing=24",
        )
        .await;
        page.reads(ANSWER, "192 sq ft").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den").await;
        page.tap(saying("Done")).await;

        opened(page).await;
        page.until(&says("Framing behind the boards, apart")).await;
        page.tap(saying("Take the room: Den")).await;
        page.until("(document.getElementById('joists_along')?.value ?? '') !== ''").await;
        page.until("document.getElementById('joists_square')?.value === ''").await;
        page.until(&says("Framing that the boards run along, apart")).await;
        page.sees(".answer-verdict .verdict.over").await;
        page.screenshot("boards-along-joists").await;
        page.choose(field("run"), "Square to wall 1, or upright").await;
        page.until(&says("Framing that the boards cross, apart")).await;
        page.misses(".answer-verdict .verdict.over").await;
        // They run one way: the other is refused at its field.
        page.enter(field("joists_square"), "16").await;
        page.until(
            "document.getElementById('joists_square.note')?.textContent.includes('run one way')",
        )
        .await;
    })
    .await;
}

/// An L is taken as an L: its shape, its sides and its notch. A room of no such shape leaves the shape to
/// who stands in it, and none of the sample's sides for the room's.
#[tokio::test]
async fn a_room_is_taken_with_its_shape_or_asks_for_it() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        let value = |key: &str, says: &str| {
            format!("(document.getElementById('{key}')?.value ?? '') {says}")
        };
        page.goto(
            "#/room?shape=l&long=20%20ft&wide=14%20ft&notch_long=6%20ft&notch_wide=5%20ft&height=8%20ft",
        )
        .await;
        page.reads(ANSWER, "250 sq ft").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den").await;
        page.tap(saying("Done")).await;

        opened(page).await;
        page.tap(saying("Take the room: Den")).await;
        page.until(&value("shape", "=== 'l'")).await;
        for key in ["long", "wide", "notch_long", "notch_wide"] {
            page.until(&value(key, "!== ''")).await;
        }
        page.until("document.querySelector('.fields .from')?.textContent.includes('Notch, across')")
            .await;
        page.misses(saying("Take the room: Den")).await;
        page.screenshot("boards-of-an-l").await;
        // Called a rectangle it isn't that room: it is offered again.
        page.choose(field("shape"), "Rectangle").await;
        page.tap(saying("Take the room: Den")).await;
        page.until(&value("shape", "=== 'l'")).await;

        // Six walls that were walked.
        page.goto(
            "#/room?shape=walk&height=8%20ft&walls.0.length=20%20ft&walls.1.length=9%20ft\
             &walls.2.length=6%20ft&walls.2.end=outside&walls.3.length=5%20ft&walls.4.length=14%20ft\
             &walls.5.length=14%20ft",
        )
        .await;
        page.reads(ANSWER, "250 sq ft").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Loft").await;
        page.tap(saying("Done")).await;
        page.goto("#/boards").await;
        page.tap(saying("Start over")).await;
        page.until(&value("shape", "=== 'rectangle'")).await;
        page.tap(saying("Take the room: Loft")).await;
        page.sees(saying("The room is not a rectangle: set the shape first.")).await;
        page.until(&value("long", "=== ''")).await;
        page.until(&value("wide", "=== ''")).await;
        page.sees(saying("Take the room: Loft")).await;
        page.screenshot("boards-shape-first").await;
    })
    .await;
}

/// `cargo test -p ledgerboard-tests --features browser --test journeys -- --ignored --nocapture
/// how_long` prints how long the page takes to lay each room of `board-counts.csv` to the end.
#[tokio::test]
#[ignore = "a benchmark: it prints times and checks none"]
async fn how_long_every_room_takes_in_the_browser() {
    let inches = |tenths: &str| format!("{} in", tenths.parse::<f64>().expect("a number") / 10.0);
    let mut lines = Vec::new();
    for row in include_str!("../../vectors/board-counts.csv").lines().skip(1) {
        let parts: Vec<&str> = row.split(',').collect();
        let mut stock = serde_json::Map::new();
        for feet in [8, 9, 10, 12, 14, 16] {
            let has = if parts[5] == (feet * 120).to_string() { "yes" } else { "no" };
            stock.insert(format!("l{feet}"), has.into());
        }
        let input = serde_json::json!({
            "long": inches(parts[1]), "wide": inches(parts[2]), "spacing": inches(parts[3]),
            "first": inches(parts[4]), "least": "24 in", "board": &parts[6][..2], "stock": stock,
        });
        lines.push(serde_json::json!({ "calculator": "boards", "input": input }).to_string());
    }
    journey(Server::start("/"), Device::Desk, async |Journey { page, .. }| {
        opened(page).await;
        let list = serde_json::to_string(&lines).expect("text is JSON");
        let ask = format!(
            "import(document.querySelector('link[rel=modulepreload]').href).then((program) => \
             {list}.map((line) => {{ const start = performance.now(); program.answer_line(line); \
             return performance.now() - start; }}))"
        );
        let mut times: Vec<f64> = page.evaluate(&ask).await;
        times.sort_by(f64::total_cmp);
        let (median, worst) = (times.get(times.len() / 2), times.last());
        println!("{} rooms in the browser: median {median:?} ms, worst {worst:?} ms", times.len());
    })
    .await;
}
