//! Jobs and their marks: made, filled, moved, taken away and brought back.

use crate::harness::{Device, Journey, Page, Server, field, journey, saying};

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
        // A number of a job with a name stays there, unless it is said otherwise.
        page.tap(".mark-line").await;
        page.choose(".switch", "New job …").await;
        page.sees(saying("Move “Den switch” here, out of Plum Street 4")).await;
        page.misses("#along:checked").await;
        page.enter("#job-name", "Cedar Lane 9").await;
        page.tap(saying("Make this job")).await;
        page.reads("h1", "Box fill").await;
        page.goto("#/jobs").await;
        page.tap(saying("Plum Street 4")).await;
        page.reads(".mark-title", "Den switch").await;
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

/// Opens a number of the job that was made first.
async fn open_number(page: &Page, title: &str) {
    page.goto("#/jobs").await;
    page.tap("main .doors a").await;
    page.sees(".mark-line").await;
    let line = format!(
        "[...document.querySelectorAll('a.mark-line')].find((it) => it.querySelector('.mark-title').textContent === '{title}').hash"
    );
    let address: String = page.evaluate(&line).await;
    page.goto(&address).await;
    page.reads(".head strong", title).await;
}

/// Waits until what is typed in a calculator is written down.
async fn is_kept(page: &Page, calculator: &str, text: &str) {
    page.until(&format!("localStorage['ledgerboard.draft.{calculator}']?.includes('{text}')"))
        .await;
}

/// A number that took its values from a room follows it by a tap on the job's page. Its calculator then
/// opens with that, not with what stood there when it was saved: nobody edited that since.
#[tokio::test]
async fn a_draft_that_nobody_edited_follows_what_is_saved() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/room").await;
        page.enter(field("long"), "16'").await;
        page.enter(field("wide"), "14'").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den").await;
        page.tap(saying("Done")).await;
        page.goto("#/raising").await;
        page.tap(saying("Take the room: Den")).await;
        page.reads(field("wide"), "14 ft").await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den raise").await;
        page.tap(saying("Done")).await;
        is_kept(page, "raising", "\"mark\":").await;
        open_number(page, "Den").await;
        page.enter(field("wide"), "12'").await;
        page.tap(saying("Save over")).await;
        page.tap(saying("Done")).await;
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.tap(saying("Take all")).await;
        page.misses(saying("Take all")).await;

        // As a start for another: it stands for none, and saving it over is not offered.
        page.goto("#/raising").await;
        page.reads(field("wide"), "12 ft").await;
        page.misses(saying("Not saved.")).await;
        page.misses(saying("Save over")).await;
        // What it takes from the room is still known, and by its address alone as well.
        page.sees(".link[data-source]").await;
        page.reload().await;
        page.reads(field("wide"), "12 ft").await;
        page.reads(".head strong", "Den raise").await;
        page.sees(".link[data-source]").await;
        page.misses(saying("Not saved.")).await;
    })
    .await;
}

/// Edited here, and saved over from elsewhere: it is said before one takes the place of the other.
#[tokio::test]
async fn an_edit_over_a_number_that_has_changed_since_says_so() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, browser, .. }| {
        a_job_with_a_switch(page).await;
        page.tap(saying("Add 14-3")).await;
        page.reads(".answer .figure", "20.0 in³").await;
        is_kept(page, "box-fill", "14-3").await;
        // The same number, changed in another tab.
        let other = browser.new_tab().await;
        other.goto("#/jobs").await;
        open_number(&other, "Kitchen switch").await;
        other.sees(saying("An edit of Kitchen switch waits, not saved.")).await;
        other.tap(saying("One more: Cable 1: How many")).await;
        other.tap(saying("Save over")).await;
        other.tap(saying("Done")).await;
        let says = "What is saved changed since: Cable 1, How many: 3.";
        page.sees(saying(says)).await;
        page.reads(".answer .figure", "20.0 in³").await;
        page.until("[...document.querySelectorAll('.bar-buttons .main')].map((it) => it.textContent).join() === 'Save new'").await;
        page.screenshot("saved-changed-since").await;
        assert_eq!(page.smallest_targets(48).await, Vec::<String>::new());
        page.tap(saying("Go on with the edit")).await;
        page.misses(saying(says)).await;
        page.reads(".answer .figure", "20.0 in³").await;
        page.reads(".head .place", "Kitchen switch Not saved. 12 Alder St").await;
    })
    .await;
}

/// What was typed over a saved number and not saved waits, whichever is opened next, until it is gone on
/// with or dropped.
#[tokio::test]
async fn an_edit_of_a_saved_number_waits_for_a_word() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        const WAITS: &str = "An edit of Kitchen switch waits, not saved.";
        a_job_with_a_switch(page).await;
        page.tap(saying("Save new")).await;
        page.enter("#mark-title", "Hall switch").await;
        page.tap(saying("Done")).await;
        open_number(page, "Kitchen switch").await;
        page.misses(saying(WAITS)).await;
        page.tap(saying("Add 14-3")).await;
        page.reads(".answer .figure", "20.0 in³").await;
        is_kept(page, "box-fill", "14-3").await;

        // Opened again it says what is saved, and that an edit waits.
        open_number(page, "Kitchen switch").await;
        page.reads(".answer .figure", "14.0 in³").await;
        page.sees(saying(WAITS)).await;
        page.screenshot("an-edit-waits").await;
        assert_eq!(page.smallest_targets(48).await, Vec::<String>::new());
        page.tap(saying("Go on with the edit")).await;
        page.reads(".answer .figure", "20.0 in³").await;
        page.reads(".head .place", "Kitchen switch Not saved. 12 Alder St").await;
        page.misses(saying(WAITS)).await;

        // Another number of the calculator is typed over: the edit waits there too, and after a restart.
        open_number(page, "Hall switch").await;
        page.sees(saying(WAITS)).await;
        page.tap(saying("Add 12-2")).await;
        is_kept(page, "box-fill", "12-2").await;
        page.sees(saying(WAITS)).await;
        open_number(page, "Kitchen switch").await;
        page.reload().await;
        page.reads(".answer .figure", "14.0 in³").await;
        page.sees(saying(WAITS)).await;
        page.misses(saying("An edit of Hall switch waits, not saved.")).await;
        page.tap(saying("and 1 more")).await;
        page.sees(saying("An edit of Hall switch waits, not saved.")).await;
        // Either by what it says; that of the number at hand goes first.
        let told = page.all_texts(".waits .quiet").await;
        assert_eq!(told.len(), 2);
        assert!(told[0].contains("14-3") && told[1].contains("12-2"), "{told:?}");
        // Told at their numbers, and at the job.
        page.goto("#/jobs").await;
        page.reads("main .doors a .quiet", "2 saved numbers, 2 edits wait").await;
        page.tap("main .doors a").await;
        page.until("[...document.querySelectorAll('.mark .now a')].map((it) => it.textContent).join() === 'An edit of it waits, not saved,An edit of it waits, not saved'").await;
        assert_eq!(page.smallest_targets(48).await, Vec::<String>::new());
        open_number(page, "Kitchen switch").await;
        page.tap(".waits:first-child button:last-child").await;
        page.misses(saying(WAITS)).await;
        page.sees(saying("The edit is dropped.")).await;
        page.tap(saying("Undo")).await;
        page.sees(saying(WAITS)).await;
        page.goto("#/box-fill").await;
        page.reads(".head strong", "Hall switch").await;
        page.sees(saying(WAITS)).await;
        page.tap(saying("Go on with the edit")).await;
        page.reads(".head strong", "Kitchen switch").await;
        page.reads(".answer .figure", "20.0 in³").await;
        // What stood here was an edit as well: it waits now.
        page.sees(saying("An edit of Hall switch waits, not saved.")).await;
        page.tap(saying("Save over")).await;
        page.tap(saying("Done")).await;
        page.tap(saying("Drop the edit")).await;
        // Saved and dropped: nothing waits.
        page.goto("#/jobs").await;
        page.reads("main .doors a .quiet", "2 saved numbers").await;
        page.tap("main .doors a").await;
        page.sees(".mark-line").await;
        page.misses(saying("An edit of it waits, not saved")).await;
        open_number(page, "Hall switch").await;
        page.reads(".answer .figure", "14.0 in³").await;
        page.misses(saying("Go on with the edit")).await;
    })
    .await;
}

/// An edit that waits and one that was typed last go where their number goes, and come back with it.
#[tokio::test]
async fn an_edit_goes_with_its_number_to_another_job() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        const WAITS: &str = "An edit of it waits, not saved";
        a_job_with_a_switch(page).await;
        for cable in ["14-3", "12-2"] {
            open_number(page, "Kitchen switch").await;
            page.tap(saying(&format!("Add {cable}"))).await;
            is_kept(page, "box-fill", cable).await;
        }
        page.goto("#/jobs").await;
        page.enter("#job-name", "Mill Bank 9").await;
        page.tap(saying("Make this job")).await;
        page.sees(saying("Numbers are saved to this job now.")).await;
        let counted = |job: &str, says: &str| {
            format!("[...document.querySelectorAll('main .doors a')].some((it) => it.textContent.includes('{job}') && it.textContent.includes('{says}'))")
        };
        page.goto("#/jobs").await;
        page.until(&counted("12 Alder St", "1 saved number, 2 edits wait")).await;
        page.tap(saying("12 Alder St")).await;
        page.sees(saying(WAITS)).await;
        page.tap(".mark summary").await;
        page.choose("[aria-label='Move to another job …']", "Mill Bank 9").await;
        page.misses(".mark-title").await;
        page.tap(".undo button").await;
        page.reads(".mark-title", "Kitchen switch").await;
        page.sees(saying(WAITS)).await;

        if page.evaluate("!document.querySelector('.mark details').open").await {
            page.tap(".mark summary").await;
        }
        page.choose("[aria-label='Move to another job …']", "Mill Bank 9").await;
        page.misses(".mark-title").await;
        page.goto("#/jobs").await;
        page.until(&counted("Mill Bank 9", "1 saved number, 2 edits wait")).await;
        page.tap(saying("Mill Bank 9")).await;
        page.tap(saying(WAITS)).await;
        page.reads(".head strong", "Kitchen switch").await;
        page.tap(saying("and 1 more")).await;
        let told = page.all_texts(".waits .quiet").await;
        assert!(told.len() == 2 && told[0].contains("12-2") && told[1].contains("14-3"), "{told:?}");
        page.tap(".waits:first-child button:first-child").await;
        page.reads(".head .place", "Kitchen switch Not saved. Mill Bank 9").await;
        page.tap(saying("Save over")).await;
        page.tap(saying("Done")).await;
        page.goto("#/jobs").await;
        page.until(&counted("Mill Bank 9", "1 saved number, 1 edit waits")).await;
    })
    .await;
}

/// Starting over is a way out like any other; taken back, nothing waits twice.
#[tokio::test]
async fn an_edit_waits_where_its_calculator_starts_over() {
    journey(Server::start("/"), Device::SmallPhone, async |Journey { page, .. }| {
        const WAITS: &str = "An edit of Kitchen switch waits, not saved.";
        a_job_with_a_switch(page).await;
        for edit in ["3", "4", "5"] {
            page.enter(field("cables.0.count"), edit).await;
            page.tap(saying("Start over")).await;
            page.sees(saying(&format!("Cable 1, How many: {edit}"))).await;
            page.tap(saying("Undo")).await;
            page.misses(saying(&format!("Cable 1, How many: {edit}"))).await;
            page.tap(saying("Start over")).await;
            open_number(page, "Kitchen switch").await;
            page.sees(saying(WAITS)).await;
        }
        // The latest stands before the answer, by what it says; the others are folded.
        let told = "[...document.querySelectorAll('.waits .quiet')].find((it) => it.checkVisibility())";
        page.until(&format!("{told}.textContent === 'Cable 1, How many: 5'")).await;
        page.sees(saying("and 2 more")).await;
        page.screenshot("three-edits-wait").await;
        assert_eq!(page.smallest_targets(48).await, Vec::<String>::new());
        assert_eq!(page.overflow().await, Vec::<String>::new());
        // Gone on with it is not offered again, though what is saved has changed since.
        page.tap(saying("One more: Cable 1: How many")).await;
        page.tap(saying("Save over")).await;
        page.tap(saying("Done")).await;
        page.tap(".waits:first-child button:first-child").await;
        page.reads(field("cables.0.count"), "5").await;
        page.sees(saying("Open what is saved")).await;
        let offers = "[...document.querySelectorAll('.waits button')].filter((it) => it.textContent === 'Go on with the edit').length";
        page.until(&format!("{offers} === 1")).await;
    })
    .await;
}

/// Twice under one title it would count twice in what to buy.
#[tokio::test]
async fn the_same_number_is_saved_again_after_a_question() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/box-fill").await;
        page.tap(saying("Add 14-3")).await;
        page.tap(saying("Save to job")).await;
        page.enter("#mark-title", "Den switch").await;
        page.tap(saying("Done")).await;
        is_kept(page, "box-fill", "\"mark\":").await;
        page.goto("#/").await;
        page.tap(saying("Box fill")).await;
        page.reads(".sample", "As you left it").await;
        page.tap(saying("Save to job")).await;
        page.sees(saying("The same as Den switch, saved already.")).await;
        page.screenshot("saved-already").await;
        page.tap(saying("Leave it")).await;
        page.misses(saying("The same as Den switch, saved already.")).await;
        page.misses("#mark-title").await;
        page.tap(saying("Save to job")).await;
        page.tap(saying("Save it all the same")).await;
        page.sees("#mark-title").await;
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.until("document.querySelectorAll('.mark-title').length === 2").await;
    })
    .await;
}
