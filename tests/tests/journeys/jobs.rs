//! Jobs and their marks: made, filled, moved, taken away and brought back.

use crate::harness::{Device, Journey, Page, Server, journey, saying};

#[tokio::test]
async fn the_invented_job_is_marked_and_gone_in_one_tap() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("").await;
        page.tap(saying("See an invented job")).await;
        page.sees(saying("Invented: nobody’s house and nobody’s numbers.")).await;
        page.screenshot("invented-job").await;
        page.tap(saying("Two switches at the stairs")).await;
        page.reads(".answer .figure", "28.0 in³").await;
        page.screenshot("portrait").await;
        page.goto("#/").await;
        page.tap(saying("Hide it")).await;
        page.misses(saying("See an invented job")).await;
        page.reload().await;
        page.sees(saying("Box fill")).await;
        page.misses(saying("See an invented job")).await;
        let kept: bool = page
            .evaluate(
                "Object.keys(localStorage).some((key) => localStorage[key].includes('nvented'))",
            )
            .await;
        assert!(!kept, "the invented job is never stored");
    })
    .await;
}

#[tokio::test]
async fn a_mark_is_copied_moved_removed_and_brought_back() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        for (name, place) in [("Plum Street 4", "Side door"), ("Mill Bank 9", "")] {
            page.goto("#/jobs").await;
            page.enter("#job-name", name).await;
            page.enter("#job-place", place).await;
            page.tap(saying("Make this job")).await;
            page.sees(saying(name)).await;
        }
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den switch").await;
        page.enter("#mark-spot", "Den").await;
        page.tap(".details summary").await;
        page.enter("#mark-note", "<b>left</b> of the door").await;
        page.tap(saying("Done")).await;

        page.goto("#/jobs").await;
        page.tap(saying("Mill Bank 9")).await;
        page.reads(".mark-title", "Den switch").await;
        page.sees(saying("<b>left</b> of the door")).await;
        page.screenshot("job").await;
        page.tap(".mark summary").await;
        page.tap(saying("Copy")).await;
        page.sees(saying("Den switch, again")).await;
        page.until("document.activeElement.textContent.includes('Den switch, again')").await;
        // Away with the copy, and with the first one too, which comes back.
        let again: String = page
            .evaluate("[...document.querySelectorAll('.mark')].find((it) => it.textContent.includes('again')).parentElement.children[0].textContent.includes('again') ? 'first' : 'last'")
            .await;
        let copy = format!(".mark:{again}-child");
        if page.evaluate(&format!("!document.querySelector('{copy} details').open")).await {
            page.tap(&*format!("{copy} summary")).await;
        }
        page.evaluate::<Option<bool>>("document.querySelectorAll('.mark details').forEach((it) => { if (!it.closest('.mark').textContent.includes('again')) it.open = false; })").await;
        page.tap(saying("Remove")).await;
        page.misses(saying("Den switch, again")).await;
        page.reads(".mark-title", "Den switch").await;

        if page.evaluate("!document.querySelector('.mark details').open").await {
            page.tap(".mark summary").await;
        }
        page.tap(saying("Remove")).await;
        page.misses(".mark-title").await;
        // Each in its place, with an Undo of its own.
        let other = if again == "first" { "last" } else { "first" };
        page.tap(&*format!("li.undo:{other}-child button")).await;
        page.reads(".mark-title", "Den switch").await;
        page.until("document.activeElement.matches('.mark-line')").await;

        page.tap(".mark summary").await;
        page.choose("[aria-label='Move to another job …']", "Plum Street 4").await;
        page.misses(".mark-title").await;
        page.goto("#/jobs").await;
        page.tap(saying("Plum Street 4")).await;
        page.reads(".mark-title", "Den switch").await;
        page.reload().await;
        page.reads(".mark-title", "Den switch").await;
    })
    .await;
}

/// The job whose page was opened last is the one that numbers go to, whichever way it was come to; one
/// that was put away isn't.
#[tokio::test]
async fn the_job_that_is_opened_is_the_one_at_hand() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        for name in ["Plum Street 4", "Mill Bank 9"] {
            page.goto("#/jobs").await;
            page.enter("#job-name", name).await;
            page.tap(saying("Make this job")).await;
            page.sees(saying("Numbers are saved to this job now.")).await;
        }
        let at_hand = |name: &str| {
            format!("document.querySelector('.switch').selectedOptions[0].textContent === '{name}'")
        };
        page.until(&at_hand("Mill Bank 9")).await;
        page.goto("#/jobs").await;
        let first: String = page
            .evaluate("[...document.querySelectorAll('.doors a')].find((it) => it.textContent.includes('Plum')).hash")
            .await;
        page.goto(&first).await;
        page.until(&at_hand("Plum Street 4")).await;
        page.goto("#/cable-securing").await;
        page.tap(saying("Save to job")).await;
        page.sees("#mark-title").await;
        page.goto(&first).await;
        page.sees(".mark-title").await;
        page.tap("#put-away").await;
        page.until(&at_hand("Loose notes")).await;
        page.reload().await;
        page.sees(".mark-title").await;
        page.until(&at_hand("Loose notes")).await;
    })
    .await;
}

/// Source: NEC 2017 and 2020 314.16(B)(5): five grounds count one allowance, or one and a quarter.
#[tokio::test]
async fn another_edition_shows_then_and_now_and_keeps_the_answer_of_its_day() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/jobs").await;
        page.enter("#job-name", "Plum Street 4").await;
        page.tap(saying("Make this job")).await;
        page.choose("#edition", "NEC 2017").await;
        page.goto("#/box-fill?marked=32&gangs=2&cables.0.cable=14-2&cables.0.count=4&cables.1.cable=14-3&devices.0.count=2&~nec=2017").await;
        page.reads(".answer .figure", "32.0 in³").await;
        page.tap(saying("Save to job")).await;
        page.sees("#mark-title").await;
        page.goto("#/jobs").await;
        page.tap(saying("Plum Street 4")).await;
        page.reads(".mark .value", "32.0 in³").await;
        page.misses(".mark .now").await;
        page.choose("#edition", "NEC 2020").await;
        page.reads(".mark .value", "32.0 in³").await;
        page.reads(".mark .now", "Then: 32.0 in³, within. Now: 32.5 in³, over.").await;
        page.screenshot("then-and-now").await;
    })
    .await;
}

#[tokio::test]
async fn a_job_made_from_a_calculator_takes_the_saved_number_along_and_leads_back() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den switch").await;
        page.until("Object.keys(localStorage).some((key) => localStorage[key].includes('Den switch'))").await;
        page.choose(".switch", "New job …").await;
        page.sees(saying("Back to Box fill")).await;
        page.enter("#job-name", "Plum Street 4").await;
        page.tap(saying("Make this job")).await;
        page.reads(".head strong", "Den switch").await;
        page.reads(".head a", "Plum Street 4").await;
        page.reads(".answer .figure", "14.0 in³").await;
        page.goto("#/jobs").await;
        page.tap(saying("Plum Street 4")).await;
        page.reads(".mark-title", "Den switch").await;
        // Loose notes are offered once, whether or not there are some.
        let loose: usize = page.evaluate("[...document.querySelectorAll('.switch option')].filter((it) => it.textContent.includes('Loose')).length").await;
        assert_eq!(loose, 1);
    })
    .await;
}

#[tokio::test]
async fn what_is_written_about_a_number_is_not_taken_from_under_the_thumb() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        page.tap(saying("Done")).await;
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.tap(".actions > summary").await;
        page.enter("#mark-title", "Den").await;
        page.until("Object.keys(localStorage).some((key) => localStorage[key].includes('\"title\":\"Den\"'))").await;
        // Written, and still being written.
        page.has_focus("#mark-title").await;
        page.type_keys(" switch").await;
        page.reads("#mark-title", "Den switch").await;
        page.tap(".actions > summary").await;
        page.reads(".mark-title", "Den switch").await;
    })
    .await;
}

/// An invented job with one number in it, which is open.
async fn a_job_with_a_switch(page: &Page) {
    page.goto("#/jobs").await;
    page.enter("#job-name", "12 Alder St").await;
    page.tap(saying("Make this job")).await;
    page.goto("#/box-fill").await;
    page.tap(saying("Save to job")).await;
    page.enter("#mark-title", "Kitchen switch").await;
    page.tap(saying("Done")).await;
}

/// From a job's page another number begins, whatever was typed over a saved one before.
#[tokio::test]
async fn another_number_for_a_job_stands_for_none_that_is_saved() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        a_job_with_a_switch(page).await;
        // Typed over and not saved, it says so under its name.
        page.tap(saying("Add 14-3")).await;
        page.reads(".head .place", "Kitchen switch Not saved. 12 Alder St").await;
        let sizes: Vec<f64> = page.evaluate("[...document.querySelectorAll('.bar-buttons .main')].map((it) => it.getBoundingClientRect().height)").await;
        assert_eq!(sizes.len(), 2, "over, or as new: neither is the lesser");
        page.until("localStorage['ledgerboard.draft.box-fill'].includes('14-3')").await;
        page.goto("#/jobs").await;
        page.tap(saying("12 Alder St")).await;
        page.tap(saying("Boxes and cables")).await;
        page.tap(saying("Box fill")).await;
        page.sees(saying("Save to job")).await;
        page.misses(saying("Save over")).await;
        page.misses(".head .place").await;
        page.tap(saying("Save to job")).await;
        page.sees("#mark-title").await;
        page.goto("#/jobs").await;
        page.tap(saying("12 Alder St")).await;
        page.until("document.querySelectorAll('.mark-title').length === 2").await;
    })
    .await;
}

/// A new number beside the one that is open is one of the same job, whichever the switch shows.
#[tokio::test]
async fn a_new_number_goes_to_the_job_of_the_one_that_is_open() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        a_job_with_a_switch(page).await;
        page.choose(".switch", "Loose notes").await;
        page.goto("#/jobs").await;
        page.tap(saying("12 Alder St")).await;
        page.tap(saying("Kitchen switch")).await;
        page.tap(saying("Save new")).await;
        page.until("document.querySelector('.saved')?.textContent.startsWith('Saved, with a second copy, in 12 Alder St')").await;
        page.tap(saying("Undo")).await;
        page.sees(saying("Taken back: nothing is saved. What you typed stands here.")).await;
    })
    .await;
}

/// How much goes with a job is said before it goes.
#[tokio::test]
async fn a_job_is_removed_after_a_question() {
    journey(Server::start("/"), Device::SmallPhone, async |Journey { page, .. }| {
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        page.sees("#mark-title").await;
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.tap(saying("Remove this job")).await;
        page.sees(saying("Remove this job, with 1 saved number?")).await;
        page.has_focus(saying("Remove this job, with 1 saved number?")).await;
        page.screenshot("remove-job").await;
        assert_eq!(page.smallest_targets(48).await, Vec::<String>::new());
        assert_eq!(page.overflow().await, Vec::<String>::new());
        let (_, file) = page.saves(saying("Back up first")).await;
        assert!(file.contains("\"marks\":[{"), "{file}");
        page.tap(saying("Leave it")).await;
        page.sees(".mark-title").await;
        page.tap(saying("Remove this job")).await;
        page.tap(saying("Remove")).await;
        page.tap(saying("Undo")).await;
        page.sees(".mark-title").await;
    })
    .await;
}

/// One quiet line, once much would be lost with the phone.
#[tokio::test]
async fn the_first_page_tells_of_ten_numbers_without_a_backup() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/box-fill").await;
        page.tap(saying("Save to job")).await;
        for number in 1..10 {
            page.tap(saying("Done")).await;
            if number == 9 {
                page.goto("#/").await;
                page.sees(saying("All jobs")).await;
                page.misses(saying("Back up")).await;
                page.goto("#/box-fill").await;
            }
            page.tap(saying(if number == 9 { "Save to job" } else { "Save new" })).await;
        }
        page.sees("#mark-title").await;
        page.goto("#/").await;
        page.sees(saying("10 saved numbers in no backup of this phone.")).await;
        page.tap(saying("Back up")).await;
        page.reads("h1", "Jobs").await;
    })
    .await;
}
