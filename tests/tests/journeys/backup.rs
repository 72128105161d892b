//! Jobs leave the phone in a file and come back from it: on another phone, merged, undone; and a
//! file that is no backup changes nothing.

use std::fs::{self, File};
use std::path::{Path, PathBuf};

use ledgerboard_core::catalog::find;
use ledgerboard_core::edition::Basis;
use ledgerboard_core::fields::row_at;
use ledgerboard_core::job::backup::{self, Written};
use ledgerboard_core::job::{Edit, Job, Mark, PUT_AWAY, Stamp, apply};
use ledgerboard_core::measure::Units;
use ledgerboard_core::wire::Node;
use tempfile::TempDir;

use crate::harness::{Device, Journey, Page, Server, field, journey, saying};

fn folder() -> TempDir {
    tempfile::tempdir().expect("a temporary folder")
}

/// A file with this in it.
fn file(folder: &TempDir, name: &str, text: &str) -> PathBuf {
    let path = folder.path().join(name);
    fs::write(&path, text).expect("it can be written");
    path
}

async fn save_a_box(page: &Page, title: &str) {
    page.goto("#/box-fill").await;
    page.tap(saying("Save to job")).await;
    page.enter("#mark-title", title).await;
    page.until(&format!("JSON.stringify({{...localStorage}}).includes('{title}')")).await;
    page.tap(saying("Done")).await;
}

async fn retitle(page: &Page, job: &str, title: &str) {
    page.goto("#/jobs").await;
    page.tap(saying(job)).await;
    page.tap(".mark summary").await;
    page.enter("#mark-title", title).await;
    page.reads(".mark-title", title).await;
}

async fn back_up(page: &Page, to: &Path) -> PathBuf {
    page.goto("#/jobs").await;
    page.keep_downloads(to).await;
    page.tap(saying("Back up all jobs")).await;
    let file = page.downloaded(to).await;
    page.tap(saying("It is there")).await;
    // It takes the focus, a moment later: what comes next must not lose its own to it.
    page.has_focus(saying("Noted. Keep it somewhere else than on this phone, too.")).await;
    file
}

async fn stored(page: &Page) -> String {
    page.evaluate("JSON.stringify({...localStorage})").await
}

/// Waits until the database has the last restore, and what is told of it.
async fn way_back_is_kept(page: &Page) {
    page.evaluate::<()>(
        "(async () => { for (;;) { \
         const text = await new Promise((done) => { const request = indexedDB.open('ledgerboard'); \
         request.onsuccess = () => { const reading = request.result.transaction('records'); \
         const [way, head] = ['ledgerboard.restored', 'ledgerboard.restored.head'] \
         .map((key) => reading.objectStore('records').get(key)); \
         reading.oncomplete = () => { request.result.close(); done(head.result && way.result); }; }; }); \
         if (text?.includes('(other version)')) return; \
         await new Promise((again) => setTimeout(again, 50)); } })()",
    )
    .await;
}

#[tokio::test]
async fn a_backup_made_in_one_browser_is_restored_in_another_merged_and_undone() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, browser, .. }| {
        page.goto("#/jobs").await;
        page.misses(saying("Back up all jobs")).await;
        page.enter("#job-name", "Plum Street 4").await;
        page.tap(saying("Make this job")).await;
        save_a_box(page, "Den switch").await;
        page.goto("#/jobs").await;
        let nowhere = "No backup of all jobs has been made on this phone yet: 1 saved number.";
        page.sees(saying(nowhere)).await;
        page.screenshot("backups").await;
        let first = folder();
        let made = back_up(page, first.path()).await;
        page.misses(saying(nowhere)).await;
        page.reload().await;
        let last = page.all_texts("section:has(#backups) .quiet").await;
        assert!(last[0].ends_with("; nothing saved since."), "{last:?}");
        let name = made.file_name().unwrap().to_string_lossy().into_owned();
        assert!(name.starts_with("ledgerboard-backup-20") && name.ends_with(".json"), "{name}");
        let text = fs::read_to_string(&made).unwrap();
        assert!(text.starts_with("{\n\"kind\":\"ledgerboard-backup\",\n\"schema\":1,"), "{text}");
        assert!(!text.contains("Thistledown"), "the invented job never goes in");
        browser.close().await;

        let mut other = browser.another();
        let there = other.open().await;
        there.goto("#/jobs").await;
        let before = stored(&there).await;
        there.choose_file("#restore", &made).await;
        there.sees(saying("What this file would change")).await;
        there.sees(saying("A new job with 1 number.")).await;
        assert_eq!(stored(&there).await, before, "shown first, and nothing changed");
        there.screenshot("restore-planned").await;
        there.tap(saying("Restore")).await;
        there.sees(saying("Restored.")).await;
        there.sees(saying("Plum Street 4")).await;
        // The file holds all that is on this phone: it is a backup of it.
        let last = there.all_texts("section:has(#backups) .quiet").await;
        assert!(last[0].ends_with("; nothing saved since."), "{last:?}");
        there.tap(saying("Undo")).await;
        there.sees(saying("Taken back.")).await;
        there.misses(saying("Plum Street 4")).await;
        // As if it had never been read, as soon as the phone has written that.
        there
            .until(
                "!Object.keys(localStorage).some((it) => localStorage[it].includes('Plum Street'))",
            )
            .await;
        there.choose_file("#restore", &made).await;
        there.tap(saying("Restore")).await;
        there.sees(saying("Restored.")).await;
        there.choose_file("#restore", &made).await;
        there.sees(saying("Nothing to restore")).await;
        there.sees(saying("1 number here already.")).await;
        there.reload().await;
        there.tap(saying("Plum Street 4")).await;
        there.reads(".mark-title", "Den switch").await;
        there.tap(".mark .mark-line").await;
        there.reads(".answer .figure", "14.0 in³").await;
        retitle(&there, "Plum Street 4", "Den switch, north").await;
        let second = folder();
        let changed = back_up(&there, second.path()).await;
        there.assert_quiet().await;
        other.close().await;

        // What only the other phone changed is taken; what both changed is kept twice.
        *page = browser.open().await;
        page.goto("#/jobs").await;
        page.choose_file("#restore", &changed).await;
        page.sees(saying("1 number replaced by a newer one.")).await;
        page.sees(saying("Den switch, north")).await;
        page.tap(saying("Leave it")).await;
        page.misses(saying("Leave it")).await;
        retitle(page, "Plum Street 4", "Den switch, south").await;
        page.goto("#/jobs").await;
        page.choose_file("#restore", &changed).await;
        page.sees(saying("1 number changed here and in the file: both are kept.")).await;
        let differs = "The title: here Den switch, south · file Den switch, north";
        page.sees(saying(differs)).await;
        let stays = page.all_texts("#restore ~ *, [role=status] .quiet").await;
        let stays = stays.iter().any(|it| it.contains("stays in use"));
        assert!(stays, "which of the two others take from");
        page.tap(saying("Restore")).await;
        page.sees(saying("Restored.")).await;
        page.until("JSON.stringify({...localStorage}).includes('(other version)')").await;
        // A phone forgets pages: the way back outlives this one, and goes both ways.
        way_back_is_kept(page).await;
        page.reload().await;
        page.tap(saying("Undo")).await;
        page.sees(saying("Taken back.")).await;
        page.until("!JSON.stringify({...localStorage}).includes('(other version)')").await;
        page.tap(saying("Undo")).await;
        page.sees(saying("Restored.")).await;
        page.until("JSON.stringify({...localStorage}).includes('(other version)')").await;
        page.tap(saying("Undo")).await;
        page.sees(saying("Taken back.")).await;
        page.tap(saying("Plum Street 4")).await;
        page.reads(".mark-title", "Den switch, south").await;
        page.goto("#/jobs").await;
        page.choose_file("#restore", &changed).await;
        page.tap(saying("Restore")).await;
        page.sees(saying("Restored.")).await;
        page.reload().await;
        page.tap(saying("Plum Street 4")).await;
        let mut titles = page.all_texts(".mark-title").await;
        titles.sort();
        let both = ["Den switch, north", "Den switch, south"];
        let bare = titles.iter().map(|title| title.replace(" (other version)", ""));
        assert_eq!(bare.collect::<Vec<_>>(), both);
        assert_eq!(titles.iter().filter(|title| title.ends_with("(other version)")).count(), 1);
        page.screenshot("both-kept").await;

        // Side by side they differ by their titles alone; one tap puts the other in its place.
        let same = page.all_texts(".mark .now").await;
        let same = same.iter().filter(|it| it.ends_with("Only the title differs.")).count();
        assert_eq!(same, 1);
        page.axe().await;
        page.tap(saying("Use this one")).await;
        page.sees(saying("It is in use now.")).await;
        assert_eq!(page.all_texts(".mark-title").await.len(), 1);
        page.tap(saying("Undo")).await;
        page.sees(saying("Use this one")).await;
        page.tap(saying("Remove this one")).await;
        page.sees(saying("Undo")).await;
        assert_eq!(page.all_texts(".mark-title").await.len(), 1);
    })
    .await;
}

#[tokio::test]
async fn a_hostile_file_is_refused_with_the_reason_and_changes_nothing() {
    journey(Server::start("/"), Device::SmallPhone, async |Journey { page, .. }| {
        save_a_box(page, "Den switch").await;
        page.goto("#/jobs").await;
        let made = folder();
        let whole = fs::read_to_string(back_up(page, made.path()).await).unwrap();
        page.until("localStorage['ledgerboard.settings'].includes('backup')").await;
        let before = stored(page).await;
        let folder = folder();
        let deep = ["{\"a\":", &"[".repeat(100_000), &"]".repeat(100_000), "}"].concat();
        let half: String = whole.chars().take(whole.chars().count() / 2).collect();
        let large = folder.path().join("large.json");
        // Two hundred megabytes that take no room.
        File::create(&large).unwrap().set_len(200 * 1_048_576).unwrap();
        let newer = whole.replace("\"schema\":1", "\"schema\":9");
        let twice = {
            let job = whole.lines().find(|line| line.starts_with("{\"record\"")).unwrap();
            whole.replace(job, &[job, ",\n", job].concat())
        };
        let cases = [
            (large, "This file is 200 MB; a backup is never more than 32 MB."),
            (file(&folder, "photo.txt", "not a backup"), "This file is no backup from here."),
            (file(&folder, "page.json", "{<script>"), "This file stops in the middle"),
            (file(&folder, "half.json", &half), "This file stops in the middle: the end"),
            (file(&folder, "deep.json", &deep), "This file holds things that no backup holds"),
            (file(&folder, "newer.json", &newer), "This backup was made by a newer version."),
            (file(&folder, "twice.json", &twice), "The job “Loose notes"),
            (file(&folder, "none.json", ""), "There is nothing in this file."),
        ];
        for (file, reason) in cases {
            page.choose_file("#restore", &file).await;
            let starts = format!(
                "document.querySelector('section:has(#backups) .fault')?.textContent.startsWith('{reason}')"
            );
            page.until(&starts).await;
            page.sees(saying("Nothing was changed.")).await;
            page.misses(saying("Restore")).await;
        }
        let now: String = stored(page).await;
        assert_eq!(now, before);
        assert_eq!(page.overflow().await, Vec::<String>::new());
    })
    .await;
}

#[tokio::test]
async fn one_damaged_job_is_named_and_script_stays_text() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        let stamp =
            |step: u64| Stamp { at: 1_791_295_200, zone: 0, device: "tablet".into(), random: step };
        let script = "<img src=x onerror=\"document.title='taken'\">";
        let jobs = [("Mill Bank 9", 1), (script, 2)]
            .map(|(name, step)| Job::new(name, "Invented", &stamp(step)).unwrap());
        let written =
            Written { by: "Ledgerboard".into(), made: stamp(0).moment(), device: "tablet".into() };
        let text = backup::write(&jobs, &written).replacen("Invented", "Inwented", 1);
        let folder = folder();
        page.goto("#/jobs").await;
        page.choose_file("#restore", &file(&folder, "backup.json", &text)).await;
        let why = "Left out: it was damaged or changed after it was backed up. An older backup may have it whole.";
        page.sees(saying(why)).await;
        page.sees(saying("Mill Bank 9")).await;
        page.sees(saying(script)).await;
        page.screenshot("restore-damaged").await;
        page.axe().await;
        page.tap(saying("Restore")).await;
        page.sees(saying("Restored, but for what can’t be read.")).await;
        page.reads(".doors a > span:first-child", script).await;
        let title: String = page.evaluate("document.title").await;
        assert_eq!(title, "Jobs · Ledgerboard");
    })
    .await;
}

#[tokio::test]
async fn the_phones_own_sheet_takes_the_file_where_there_is_one() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        save_a_box(page, "Den switch").await;
        page.goto("#/jobs").await;
        // A phone's sheet, as far as a page can see it.
        let _: bool = page
            .evaluate(
                "(navigator.canShare = (data) => data.files?.length === 1, \
                 navigator.share = async (data) => { window.handed = await data.files[0].text(); }, true)",
            )
            .await;
        page.tap(saying("Back up all jobs")).await;
        page.sees(saying("Handed on. Keep it somewhere else than on this phone.")).await;
        page.until("window.handed.includes('Den switch')").await;
        let _: bool = page
            .evaluate("(navigator.share = () => Promise.reject(new DOMException('', 'AbortError')), true)")
            .await;
        page.tap(saying("Back up all jobs")).await;
        page.sees(saying("Closed without handing it on: no backup was made.")).await;
        page.tap(saying("As text")).await;
        let text: String = page.evaluate("document.querySelector('textarea[readonly]').value").await;
        assert!(backup::read(&text).is_ok_and(|backup| backup.jobs.len() == 1), "{text}");
    })
    .await;
}

#[tokio::test]
async fn a_backup_is_restored_by_keyboard_and_every_target_is_a_thumb_wide() {
    journey(Server::start("/"), Device::Desk, async |Journey { page, .. }| {
        save_a_box(page, "Den switch").await;
        page.goto("#/jobs").await;
        let folder = folder();
        let made = back_up(page, folder.path()).await;
        page.sees("#restore").await;
        let _: bool = page.evaluate("(document.querySelector('#restore').focus(), true)").await;
        page.has_focus("#restore").await;
        page.choose_file("#restore", &made).await;
        page.sees(saying("Nothing to restore")).await;
        page.has_focus(saying("Nothing to restore")).await;
        assert_eq!(page.smallest_targets(48).await, Vec::<String>::new());
        page.axe().await;
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.sees(saying("Back up this job")).await;
        page.axe().await;
    })
    .await;
}

/// A browser that was given a file may have refused it: nobody but a person knows.
#[tokio::test]
async fn a_download_counts_when_a_person_has_seen_it() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/jobs").await;
        page.enter("#job-name", "12 Alder St").await;
        page.tap(saying("Make this job")).await;
        save_a_box(page, "Den switch").await;
        page.goto("#/jobs").await;
        let nowhere = "No backup of all jobs has been made on this phone yet: 1 saved number.";
        let (name, _) = page.saves(saying("Back up all jobs")).await;
        page.sees(saying(&format!("Handed to the browser as {name}. Look in your downloads.")))
            .await;
        page.sees(saying(nowhere)).await;
        page.tap(saying("It is there")).await;
        page.misses(saying(nowhere)).await;
        page.tap(saying("12 Alder St")).await;
        let (name, _) = page.saves(saying("Back up this job")).await;
        assert!(
            name.starts_with("ledgerboard-12-Alder-St-20") && name.ends_with(".json"),
            "{name}"
        );
        page.misses(saying("It is there")).await;
        assert_eq!(page.smallest_targets(48).await, Vec::<String>::new());
    })
    .await;
}

/// What the file has and the phone has otherwise is shown with both values, and comes back beside it.
#[tokio::test]
async fn what_stays_out_of_a_restore_is_listed_and_comes_back_as_copies() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        page.goto("#/jobs").await;
        page.enter("#job-name", "12 Alder St").await;
        page.tap(saying("Make this job")).await;
        save_a_box(page, "Den switch").await;
        page.tap(saying("Save new")).await;
        page.enter("#mark-title", "Hall switch").await;
        page.until("JSON.stringify({...localStorage}).includes('Hall switch')").await;
        let folder = folder();
        let made = back_up(page, folder.path()).await;
        page.goto("#/jobs").await;
        page.tap(saying("12 Alder St")).await;
        page.tap(saying("Den switch")).await;
        page.tap(saying("Add 14-3")).await;
        page.tap(saying("Save over")).await;
        page.until("document.querySelector('.saved')?.textContent.includes('. With a second copy')").await;
        let now: String = page.evaluate("document.querySelector('.answer .figure').innerText").await;
        page.goto("#/jobs").await;
        page.tap(saying("12 Alder St")).await;
        page.sees(saying("Hall switch")).await;
        page.evaluate::<()>("void document.querySelectorAll('.mark details').forEach((it) => { it.open = it.closest('.mark').textContent.includes('Hall switch'); })").await;
        page.tap(saying("Remove")).await;
        page.sees(saying("Undo")).await;
        page.goto("#/jobs").await;
        page.choose_file("#restore", &made).await;
        page.sees(saying("Nothing to restore")).await;
        page.sees(saying("2 numbers changed or removed here since: what the file has stays out.")).await;
        let now = now.split_whitespace().collect::<Vec<_>>().join(" ");
        page.sees(saying(&format!("Den switch: here {now} · file 14.0 in³"))).await;
        page.sees(saying("Hall switch: removed here · file 14.0 in³")).await;
        page.misses(saying("Restore")).await;
        page.screenshot("left-out").await;
        page.axe().await;
        page.tap(saying("Bring those back as copies")).await;
        page.sees(saying("Restored.")).await;
        page.choose_file("#restore", &made).await;
        page.sees(saying("Nothing to restore")).await;
        page.misses(saying("Bring those back as copies")).await;
        page.reload().await;
        page.tap(saying("12 Alder St")).await;
        let mut titles = page.all_texts(".mark-title").await;
        titles.sort();
        let want = ["Den switch", "Den switch (from the backup)", "Hall switch (from the backup)"];
        assert_eq!(titles, want);
    })
    .await;
}

/// As text: out by a tap, through a message that adds to it or cuts it, and in again.
#[tokio::test]
async fn a_backup_comes_and_goes_as_text() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        save_a_box(page, "Den switch").await;
        page.goto("#/jobs").await;
        page.enter("#job-name", "Plum Street 4").await;
        page.tap(saying("Make this job")).await;
        page.sees("#marks").await;
        page.goto("#/jobs").await;
        page.tap(saying("As text")).await;
        let _: bool = page.evaluate("(navigator.clipboard.writeText = async (text) => { window.copied = text; }, true)").await;
        page.tap(saying("Copy the text")).await;
        page.sees(saying("Copied. Paste it where you keep it.")).await;
        let text: String = page.evaluate("window.copied").await;
        assert!(backup::read(&text).is_ok_and(|backup| backup.jobs.len() == 2), "{text}");
        for job in [0, 1] {
            let _ = job;
            page.goto("#/jobs").await;
            page.tap("main .doors li:first-child a").await;
            page.tap(saying("Remove this job")).await;
            page.sees(saying("Back up first")).await;
            page.tap(saying("Remove")).await;
            page.sees(saying("Undo")).await;
        }
        page.goto("#/jobs").await;
        page.tap(saying("Or paste a backup’s text")).await;
        let paste = async |text: &str| {
            let text = serde_json::Value::from(text);
            let _: bool = page.evaluate(&format!("(document.querySelector('#paste').value = {text}, true)")).await;
            page.tap(saying("Look at it")).await;
        };
        paste("Fwd: nothing of ours").await;
        page.sees(saying("Nothing was changed.")).await;
        let cut = &text[..text.rfind("{\"record\"").unwrap() + 100];
        paste(cut).await;
        page.until("[...document.querySelectorAll('.now')].some((it) => it.textContent.startsWith('The file stops in the middle: what came after ') && it.textContent.endsWith(' is missing.'))").await;
        page.screenshot("cut-backup").await;
        paste(&format!("Fwd: our jobs\n\n{text}\n-- \nSent from the van")).await;
        page.tap(saying("Restore")).await;
        page.sees(saying("Restored.")).await;
        page.until("document.querySelectorAll('main .doors a').length === 2").await;
    })
    .await;
}

/// Who looks at a file sees which inputs differ; who restores it may go on, come back and undo it,
/// and nothing that was typed meanwhile goes with that.
#[tokio::test]
async fn a_restore_says_which_inputs_differ_and_is_undone_after_leaving_the_page() {
    journey(Server::start("/"), Device::SmallPhone, async |Journey { page, .. }| {
        let folder = folder();
        let at = |step: u64| Stamp {
            at: 1_791_295_200 + i64::try_from(step).unwrap(),
            zone: 0,
            device: "tablet".into(),
            random: step,
        };
        let mark = |calculator: &str, title: &str, puts: &[(&str, &str)], step: u64| {
            let entry = find(calculator).unwrap();
            let mut input = entry.sample();
            for (path, value) in puts {
                input.put(path, Node::text(value));
            }
            let (units, basis) = (Units::Customary, Basis::default());
            let mark = Mark::new(entry, &input, units, basis, None, &at(step)).unwrap();
            Mark { id: at(1).id(), title: title.to_owned(), ..mark }
        };
        let written =
            Written { by: "Ledgerboard".into(), made: at(9).moment(), device: "tablet".into() };
        let mut job = Job::new("Plum Street 4", "", &at(0)).unwrap();
        let before = mark("cable-securing", "Den feed", &[("run", "30 ft")], 1);
        apply(&mut job, Edit::Keep(before), &at(1)).unwrap();
        let first = file(&folder, "first.json", &backup::write([&job], &written));
        let longer = mark("cable-securing", "Den feed", &[("run", "60 ft")], 2);
        apply(&mut job, Edit::Change(longer), &at(2)).unwrap();
        let put_away = Edit::Jot { key: PUT_AWAY.into(), says: "yes".into() };
        apply(&mut job, put_away, &at(3)).unwrap();
        let second = file(&folder, "second.json", &backup::write([&job], &written));

        page.goto("#/jobs").await;
        page.choose_file("#restore", &second).await;
        page.sees(saying("Put away, as in the file.")).await;
        page.tap(saying("Leave it")).await;
        page.choose_file("#restore", &first).await;
        page.sees(saying("A new job with 1 number.")).await;
        page.misses(saying("Put away, as in the file.")).await;
        page.tap(saying("Restore")).await;
        page.sees(saying("Restored.")).await;
        page.choose_file("#restore", &second).await;
        page.sees(saying("1 number replaced by a newer one.")).await;
        page.sees(".differs").await;
        let label = row_at(find("cable-securing").unwrap().rows, "run").unwrap().label.en;
        let differs = page.all_texts(".differs li").await;
        assert_eq!(differs, [format!("{label}: here 30 ft · file 60 ft")]);
        page.sees(saying("Put away, as in the file.")).await;
        page.screenshot("what-differs").await;
        assert_eq!(page.overflow().await, Vec::<String>::new());
        page.axe().await;
        page.tap(saying("Restore")).await;
        page.sees(saying("Restored.")).await;

        // On to other work, and back.
        save_a_box(page, "Hall switch").await;
        page.tap(saying("All calculators")).await;
        page.tap(saying("All jobs")).await;
        page.until("/^Restored .+\\d\\.$/.test(document.querySelector('.undo span')?.innerText)")
            .await;
        page.tap(saying("Undo")).await;
        page.sees(saying("Taken back.")).await;
        page.tap(saying("Plum Street 4")).await;
        page.tap(saying("Den feed")).await;
        page.reads(".answer .figure", "8").await;

        // What was typed since stays, and what it is is said; what can be undone is the undoing.
        page.tap(saying("All calculators")).await;
        page.tap(saying("All jobs")).await;
        let undone =
            "document.querySelector('.undo span')?.innerText.startsWith('Restore taken back ')";
        page.until(undone).await;
        page.choose_file("#restore", &second).await;
        page.tap(saying("Restore")).await;
        page.sees(saying("Restored.")).await;
        page.tap(saying("Put away: 1")).await;
        page.tap(saying("Plum Street 4")).await;
        page.tap(saying("Den feed")).await;
        page.enter(field("run"), "45 ft").await;
        page.tap(saying("Save over")).await;
        page.tap(saying("All calculators")).await;
        page.tap(saying("All jobs")).await;
        page.sees(saying("Changed since in Plum Street 4, so all of it stays: Den feed.")).await;
        page.misses(saying("Undo")).await;
        page.screenshot("changed-since-a-restore").await;
        assert_eq!(page.overflow().await, Vec::<String>::new());

        // Another page reads the way back only when it is asked for, and says the same of it then.
        page.reload().await;
        page.tap(saying("Undo")).await;
        page.sees(saying("Changed since in Plum Street 4, so all of it stays: Den feed.")).await;
        page.misses(saying("Undo")).await;
    })
    .await;
}
