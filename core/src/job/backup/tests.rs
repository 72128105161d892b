use super::super::edit::{Edit, apply};
use super::super::merge::{Fate, TermsFate};
use super::super::samples::{self, mark, stamp};
use super::super::site::Gone;
use super::super::{demo, merge};
use super::*;
use serde_json::{Value, json};

fn written() -> Written {
    Written {
        by: "Ledgerboard 9.9.9".into(),
        made: Moment { at: 1_791_298_800, zone: -300 },
        device: "phone".into(),
    }
}

/// Invented jobs of so many marks each.
fn jobs(sizes: &[u64]) -> Vec<Job> {
    let job = |(at, size): (usize, &u64)| {
        let name = ["Plumb ", &at.to_string()].concat();
        let mut job = Job::new(&name, "Invented", &stamp(100 + at as u64)).unwrap();
        for step in 0..*size {
            apply(&mut job, Edit::Keep(mark(step)), &stamp(0)).unwrap();
        }
        job
    };
    sizes.iter().enumerate().map(job).collect()
}

fn backup(jobs: &[Job]) -> String {
    write(jobs, &written())
}

fn says(problem: &BackupProblem) -> String {
    Voice::default().say(&problem.says())
}

fn restored(text: &str, jobs: &mut Vec<Job>) -> Restored {
    let plan = plan(read(text).unwrap(), jobs);
    carry_out(jobs, plan.into_steps(), &stamp(9)).unwrap()
}

#[test]
fn a_backup_is_plain_json_that_says_what_it_is() {
    let mut all = jobs(&[2]);
    all.push(samples::job());
    let text = backup(&all);
    let json: Value = serde_json::from_str(&text).unwrap();
    assert_eq!((&json["kind"], &json["schema"]), (&json!(KIND), &json!(1)));
    assert_eq!(json["by"], "Ledgerboard 9.9.9");
    assert!(text.starts_with("{\n\"kind\":\"ledgerboard-backup\",\n\"schema\":1,\n"));
    assert!(json["about"].as_str().unwrap().contains("restore from this file"));
    assert_eq!(json["jobs"][1]["job"]["marks"][0]["title"], "Shelf over the bench");
    assert_eq!(text.lines().filter(|line| line.starts_with("{\"record\"")).count(), 2);
    let back = read(&text).unwrap();
    assert_eq!((back.written, back.jobs, back.damaged), (written(), all, Vec::new()));
    assert_eq!(read(&backup(&[])).unwrap().jobs, []);
    // Laid out anew by an editor, and with the sign that some put in front.
    let tree = Node::from_json(&text).unwrap();
    let pretty = ["\u{feff}", &serde_json::to_string_pretty(&tree).unwrap()].concat();
    assert_eq!(read(&pretty).unwrap().jobs.len(), 2);
}

#[test]
fn the_invented_job_never_goes_in_and_never_comes_out() {
    let demo = demo(Voice::default());
    assert!(!backup(std::slice::from_ref(&demo)).contains("record"));
    for job in [Job { invented: false, ..demo.clone() }, Job { id: "other".into(), ..demo }] {
        let text = backup(&[Job { id: "mine".into(), invented: false, ..job.clone() }]);
        let line = record::write(&job, &Head::new(0, "phone", 0));
        let (line, json) = line.split_once('\n').unwrap();
        let item = ["{\"record\":\"", line, "\",\"job\":", json, "}"].concat();
        let own = text.lines().find(|line| line.starts_with("{\"record\"")).unwrap();
        let back = read(&text.replace(own, &item)).unwrap();
        assert_eq!((back.jobs.len(), back.damaged.len()), (0, 1));
    }
}

#[test]
fn what_restoring_would_change_is_told_first_and_can_be_undone() {
    let mut here = jobs(&[3, 1]);
    let mut there = here.clone();
    there.extend(jobs(&[0, 0, 2]).pop());
    let job = &mut there[0];
    let titled = |step: u64, title: &str| Mark { title: title.into(), ..mark(step) };
    for edit in [
        Edit::Keep(mark(7)),
        Edit::Change(titled(0, "Changed there")),
        Edit::Change(titled(1, "Changed there too")),
        Edit::Remove(mark(2).id),
        Edit::Describe { name: "Plumb 0, rear".into(), place: String::new() },
    ] {
        apply(job, edit, &stamp(1)).unwrap();
    }
    apply(&mut here[0], Edit::Change(titled(1, "Changed here")), &stamp(2)).unwrap();
    let text = backup(&there);
    let before = here.clone();
    let planned = plan(read(&text).unwrap(), &here);
    assert_eq!(here, before, "a plan changes nothing");
    let Change::Merged(merged) = &planned.jobs[0].change else { panic!("it is here") };
    let fates = [Fate::New, Fate::Replaced, Fate::Both, Fate::Removed, Fate::Here];
    assert_eq!(fates.map(|fate| merged.count(fate)), [1, 1, 1, 1, 0]);
    assert!(matches!(&merged.terms, TermsFate::Replaced(terms) if terms.name == "Plumb 0, rear"));
    assert!(matches!(&planned.jobs[1].change, Change::Merged(it) if it.edit.is_none()));
    assert_eq!(planned.jobs[2].change, Change::New);
    assert_eq!(planned.clone().into_steps().len(), 2);

    let undo = carry_out(&mut here, planned.into_steps(), &stamp(9)).unwrap();
    assert_eq!((here.len(), here[0].marks.len()), (3, 4));
    assert_eq!(plan(read(&text).unwrap(), &here).into_steps(), [], "once is enough");
    let after = here.clone();
    let steps = undo.back(&here).steps;
    let redo = carry_out(&mut here, steps, &stamp(9)).unwrap();
    assert_eq!(here, before);
    let steps = redo.back(&here).steps;
    let undo = carry_out(&mut here, steps, &stamp(9)).unwrap();
    assert_eq!(here, after);
    // What was saved in an added job since is not thrown away by undoing.
    apply(&mut here[2], Edit::Keep(mark(8)), &stamp(2)).unwrap();
    let steps = undo.back(&here).steps;
    carry_out(&mut here, steps, &stamp(9)).unwrap();
    assert_eq!((here.len(), here[2].marks.len()), (3, 3));
    assert_eq!(here[..2], before[..2]);
}

/// Two jobs here, a file that changes one and adds another, and what undoes it.
fn with_a_way_back() -> (Vec<Job>, Vec<Job>, Restored) {
    let mut here = jobs(&[3, 1]);
    let mut there = here.clone();
    there.extend(jobs(&[0, 0, 2]).pop());
    for edit in [
        Edit::Keep(mark(7)),
        Edit::Change(Mark { title: "Changed there".into(), ..mark(0) }),
        Edit::Jot { key: "got staple".into(), says: "3".into() },
    ] {
        apply(&mut there[0], edit, &stamp(1)).unwrap();
    }
    let before = here.clone();
    let restored = restored(&backup(&there), &mut here);
    (before, here, restored)
}

fn stays(back: &Back) -> Vec<String> {
    let voice = Voice::default();
    let one = |it: &Stays| {
        let changed = it.changed.iter().map(|text| voice.say(text)).collect::<Vec<_>>();
        [voice.say(&it.job), changed.join(", ")].join(": ")
    };
    back.stays.iter().map(one).collect()
}

#[test]
fn a_restore_is_undone_later_with_all_that_came_since_kept() {
    let (before, mut here, restored) = with_a_way_back();
    assert_eq!(restored.jobs().count(), 2);
    // Another number, one that the file said nothing new about, and another job.
    let other = Mark { title: "Mine".into(), ..mark(1) };
    let since = [Edit::Keep(mark(9)), Edit::Change(other.clone())];
    for (edit, step) in since.into_iter().zip([2, 4]) {
        apply(&mut here[0], edit, &stamp(step)).unwrap();
    }
    apply(&mut here[1], Edit::Keep(mark(11)), &stamp(6)).unwrap();
    let back = restored.back(&here);
    assert_eq!(stays(&back), [""; 0]);
    carry_out(&mut here, back.steps, &stamp(9)).unwrap();
    assert_eq!(here.len(), 2);
    let [mine, kept] = [1, 9].map(|step| here[0].mark(&mark(step).id).cloned());
    assert_eq!((mine.unwrap().title, kept.is_some()), (other.title, true));
    assert_eq!(here[0].mark(&mark(0).id), before[0].mark(&mark(0).id), "as before the restore");
    assert_eq!((here[0].mark(&mark(7).id), here[0].jotted("got staple")), (None, ""));
    assert_eq!(here[1].marks.len(), 2);
}

#[test]
fn what_undoes_a_restore_is_kept_as_text_and_read_back_whole() {
    let (_, here, restored) = with_a_way_back();
    let at = Moment { at: 1_791_300_000, zone: -300 };
    let texts = restored.write(&Written { made: at, ..written() });
    let read = |texts: [&str; 2]| Restored::read(texts);
    let (back, made) = read(texts.each_ref().map(String::as_str)).unwrap();
    assert_eq!((&back, made), (&restored, at));
    assert_eq!(back.back(&here), restored.back(&here));
    // A part of it is no way back.
    let [before, after] = &texts;
    let damaged = after.replacen("Shelf", "Shalf", 1);
    for texts in
        [["", after], [before, "{}"], [&before[..before.len() / 2], after], [before, &damaged]]
    {
        assert_eq!(read(texts), None);
    }
}

#[test]
fn of_two_changed_on_both_sides_the_plan_says_which_one_stays_in_use() {
    let base = jobs(&[1]);
    let changed = |title: &str, at: u64, value: &str| {
        let mut job = base.clone();
        let mut mark = Mark { title: title.into(), ..mark(0) };
        (mark.at.at, mark.kept.answer) = (1_791_298_800 + at as i64, value.into());
        apply(&mut job[0], Edit::Change(mark), &stamp(at)).unwrap();
        job
    };
    for (mine, theirs) in [(20, 30), (30, 20)] {
        let (mut here, there) =
            (changed("Mine", mine + 1, "1 ft"), changed("Theirs", theirs, "2 ft"));
        let told = plan(read(&backup(&there)).unwrap(), &here);
        let both = told.jobs[0].both.clone();
        assert_eq!((both.len(), both[0].file_stays), (1, theirs > mine), "the later one");
        carry_out(&mut here, told.into_steps(), &stamp(9)).unwrap();
        let stays = here[0].mark(&mark(0).id).unwrap();
        assert_eq!(stays.title, if both[0].file_stays { "Theirs" } else { "Mine" });
    }
}

#[test]
fn jobs_of_which_there_is_nothing_to_tell_are_told_apart() {
    let here = jobs(&[1, 1, 1]);
    let mut there = here.clone();
    apply(&mut there[1], Edit::Keep(mark(5)), &stamp(1)).unwrap();
    let mut mine = here.clone();
    apply(&mut mine[2], Edit::Remove(mark(0).id), &stamp(2)).unwrap();
    let told = plan(read(&backup(&there)).unwrap(), &mine);
    let news: Vec<bool> = told.jobs.iter().map(Planned::is_news).collect();
    assert_eq!(news, [false, true, true], "one changes, and of one something stays out");
}

#[test]
fn what_was_changed_since_a_restore_keeps_its_job_as_it_is_and_is_named() {
    let (_, whole, restored) = with_a_way_back();
    let titled = |step, title: &str| Edit::Change(Mark { title: title.into(), ..mark(step) });
    let jot = Edit::Jot { key: "got staple".into(), says: "5".into() };
    let second = "Plumb 2: ";
    for (at, edit, want) in [
        (0, titled(0, "Typed since"), "Plumb 0: Typed since"),
        (0, Edit::Remove(mark(7).id), "Plumb 0: Shelf over the bench"),
        (0, jot, "Plumb 0: ticks, prices or answers"),
        (2, Edit::Keep(mark(8)), second),
        (2, Edit::Describe { name: "Plumb 2".into(), place: "Rear".into() }, second),
    ] {
        let mut here = whole.clone();
        apply(&mut here[at], edit, &stamp(3)).unwrap();
        let touched = here[at].clone();
        let back = restored.back(&here);
        assert_eq!((stays(&back), back.steps.len()), (vec![want.to_owned()], 1));
        carry_out(&mut here, back.steps, &stamp(9)).unwrap();
        let left = here.iter().find(|job| job.id == touched.id);
        assert_eq!(left, Some(&touched), "{want}");
    }
    // What was removed since is gone already.
    let mut here = whole.clone();
    here.remove(2);
    let back = restored.back(&here);
    assert_eq!((back.steps.len(), back.stays.len()), (1, 0));
    assert_eq!(restored.back(&[]), Back::default());
}

#[test]
fn copies_that_were_brought_back_are_taken_back_later_unless_they_were_changed() {
    let there = jobs(&[2]);
    let mut here = there.clone();
    apply(&mut here[0], Edit::Remove(mark(1).id), &stamp(2)).unwrap();
    let before = here[0].marks.clone();
    let plan = plan(read(&backup(&there)).unwrap(), &here);
    let restored = carry_out(&mut here, plan.copies(), &stamp(3)).unwrap();
    let copy = here[0].marks.iter().find(|it| it.title.ends_with("(from the backup)"));
    let copy = copy.unwrap().clone();
    let mut other = here.clone();
    apply(&mut other[0], Edit::Remove(copy.id), &stamp(4)).unwrap();
    assert_eq!(stays(&restored.back(&other)), [format!("Plumb 0: {}", copy.title)]);
    let back = restored.back(&here);
    carry_out(&mut here, back.steps, &stamp(9)).unwrap();
    assert_eq!(here[0].marks, before);
}

#[test]
fn a_plan_names_what_differs_where_both_have_the_number() {
    let entry = crate::catalog::find("cable-securing").unwrap();
    let run = |text: &str| {
        let mut input = entry.sample();
        input.put("run", Node::text(text));
        let mark = Mark::new(entry, &input, <_>::default(), <_>::default(), None, &stamp(1));
        Mark { title: "Den feed".into(), ..mark.unwrap() }
    };
    let mut here = jobs(&[0]);
    apply(&mut here[0], Edit::Keep(run("30 ft")), &stamp(1)).unwrap();
    let mut there = here.clone();
    apply(&mut there[0], Edit::Change(run("60 ft")), &stamp(3)).unwrap();
    let told = |here: &[Job], of: fn(&Planned) -> &Vec<Beside>| {
        let plan = plan(read(&backup(&there)).unwrap(), here);
        let [both] = &of(&plan.jobs[0])[..] else { panic!("one number") };
        let voice = Voice::default();
        let texts = |it: &super::super::Differs| [&it.here, &it.there].map(|it| voice.say(it));
        both.differences(voice.units).iter().map(texts).collect::<Vec<_>>()
    };
    let pair = |here: &str| [[here.to_owned(), "60 ft".to_owned()]];
    assert_eq!(told(&here, |it| &it.replaced), pair("30 ft"));
    apply(&mut here[0], Edit::Change(run("45 ft")), &stamp(4)).unwrap();
    assert_eq!(told(&here, |it| &it.both), pair("45 ft"));
}

#[test]
fn a_job_that_is_put_away_in_the_file_says_so() {
    let put = |says: &str| Edit::Jot { key: super::super::PUT_AWAY.into(), says: says.into() };
    let away = |here: &[Job], there: &[Job]| {
        let plan = plan(read(&backup(there)).unwrap(), here);
        assert_eq!(plan.jobs[0].jots, 0, "told by itself, it isn't counted too");
        plan.jobs[0].away.map(|phrase| phrase.en).unwrap_or_default()
    };
    let plain = jobs(&[1]);
    let mut put_away = plain.clone();
    apply(&mut put_away[0], put("yes"), &stamp(1)).unwrap();
    let mut taken_out = put_away.clone();
    apply(&mut taken_out[0], put(""), &stamp(2)).unwrap();
    let too = "Put away, as in the file.";
    for (here, there, want) in [
        (&[][..], &put_away, too),
        (&[][..], &plain, ""),
        (&plain[..], &put_away, too),
        (&put_away[..], &put_away, ""),
        (&taken_out[..], &put_away, "Put away in the file, not here."),
        (&put_away[..], &taken_out, "No longer put away, as in the file."),
        (&put_away[..], &plain, ""),
        (&plain[..], &plain, ""),
    ] {
        assert_eq!(away(here, there), want);
    }
}

#[test]
fn steps_that_no_longer_fit_change_nothing() {
    let all = jobs(&[1, 1]);
    let there = plan(read(&backup(&all)).unwrap(), &[]);
    let mut here = vec![all[1].clone()];
    let refused = carry_out(&mut here, there.into_steps(), &stamp(9));
    assert!(refused.is_err());
    assert_eq!(here, all[1..]);
}

#[test]
fn one_damaged_job_is_named_and_the_others_are_restored() {
    let text = backup(&jobs(&[2, 3, 2]));
    let second = text.lines().position(|line| line.contains("Plumb 1")).unwrap();
    let spoilt = |how: &dyn Fn(&str) -> String| -> String {
        let lines = text.lines().enumerate();
        let lines = lines.map(|(at, line)| if at == second { how(line) } else { line.to_owned() });
        lines.collect::<Vec<_>>().join("\n")
    };
    type Case<'a> = (&'a str, &'a dyn Fn(&str) -> String);
    let cases: [Case<'_>; 7] = [
        ("a letter", &|line| line.replacen("Workshop", "Workshoq", 1)),
        ("a digit of the sum", &|line| line.replacen(" phone 1", " phone 2", 1)),
        ("a bracket", &|line| line.replacen('[', "{", 1)),
        ("a quote", &|line| line.replacen("\"place\"", "\"place", 1)),
        ("a number past all range", &|line| line.replacen("\"at\":", "\"at\":9e999", 1)),
        ("a mark twice", &|line| line.replacen("\"marks\":[", "\"marks\":[{\"id\":\"a\"},", 1)),
        ("cut", &|line| line.chars().take(400).chain([',']).collect()),
    ];
    for (case, how) in cases {
        let mut here = Vec::new();
        let back = read(&spoilt(how)).unwrap_or_else(|problem| panic!("{case}: {problem:?}"));
        assert_eq!(back.damaged.len(), 1, "{case}");
        assert_eq!(back.damaged[0].name, "Plumb 1", "{case}");
        let says = Voice::default().say(&back.damaged[0].says());
        assert!(says.starts_with("Left out: it ") && says.contains("An older backup"), "{says}");
        let plan = plan(back, &here);
        carry_out(&mut here, plan.into_steps(), &stamp(9)).unwrap();
        let names: Vec<&str> = here.iter().map(|job| &*job.name).collect();
        assert_eq!(names, ["Plumb 0", "Plumb 2"], "{case}");
    }
}

#[test]
fn a_job_of_a_later_schema_asks_for_an_update() {
    let [job] = &jobs(&[1])[..] else { panic!("one job") };
    let text = backup(std::slice::from_ref(job));
    let own = text.lines().find(|line| line.starts_with("{\"record\"")).unwrap();
    let later = record::sealed_as(record::SCHEMA + 1, "{\"later\":1}");
    let (line, json) = later.split_once('\n').unwrap();
    let item = ["{\"record\":\"", line, "\",\"job\":", json, "}"].concat();
    let back = read(&text.replace(own, &item)).unwrap();
    let says = Voice::default().say(&back.damaged[0].says());
    assert!(says.starts_with("Left out: it was written by a newer version."), "{says}");
}

#[test]
fn a_hostile_file_is_refused_with_the_reason() {
    let text = backup(&jobs(&[2, 1]));
    let deep = |by: usize| [&"[".repeat(by), "1", &"]".repeat(by)].concat();
    let with = |from: &str, to: &str| text.replacen(from, to, 1);
    let lists = ["{\"kind\":\"ledgerboard-backup\",\"jobs\":[", &"[],".repeat(9_999), "0]}"];
    let job = text.lines().find(|line| line.starts_with("{\"record\"")).unwrap();
    let twice = with(job, &[job, "\n", job].concat());
    #[rustfmt::skip]
    let cases: [(&str, String, &str); 18] = [
        ("empty",          " \n".into(),                           "There is nothing in this file."),
        ("a picture",      "\u{fffd}PNG\r\n".into(),               "This file is no backup from here."),
        ("a page",         "<script>alert(1)</script>".into(),     "This file is no backup from here."),
        ("a list",         "[1,2]".into(),                         "This file is no backup from here."),
        ("other JSON",     "{\"jobs\":[]}".into(),                 "This file is no backup from here."),
        ("not JSON",       "{jobs}".into(),                        "This file can’t be read"),
        ("half of it",     text[..text.len() / 2].into(),          "This file stops in the middle"),
        ("no whole job",   text[..text.find("\n,").unwrap_or(text.len() / 3)].into(), "This file stops in the middle"),
        ("no job",         text[..text.find("{\"record\"").unwrap()].into(), "This file stops in the middle"),
        ("newer",          with("\"schema\":1", "\"schema\":2"),   "This backup was made by a newer version."),
        ("no schema",      with("\"schema\":1", "\"schema\":\"1\""), "This file can’t be read"),
        ("more in it",     with("\"schema\":1", "\"run\":1,\"schema\":1"), "This file can’t be read"),
        ("deep",           with("\"schema\":1", &["\"schema\":", &deep(30)].concat()), "This file holds things that no backup holds"),
        ("very deep",      ["{\"a\":", &deep(900_000), "}"].concat(), "This file holds things that no backup holds"),
        ("many lists",     lists.concat(),                           "This file holds things that no backup holds"),
        ("many jobs",      with("\"jobs\":[", &["\"jobs\":[", &"\"nothing\",".repeat(1_000)].concat()),                 "This file holds things that no backup holds"),
        ("a number",       with("1791298800", "179129880000000000000"), "This file can’t be read"),
        ("the same twice", twice.replace("}}\n{\"rec", "}},\n{\"rec"), "The job “Plumb 0” is in this file twice"),
    ];
    for (case, text, want) in cases {
        let problem = read(&text).expect_err(case);
        assert!(says(&problem).starts_with(want), "{case}: {}", says(&problem));
    }
    let most = MOST_BYTES as u64;
    assert_eq!(fits(most), Ok(()));
    let large = fits(200 * 1_048_576).unwrap_err();
    assert_eq!(
        says(&large),
        "This file is 200 MB; a backup is never more than 32 MB. It is something else, so it was \
         not opened. Pick another one."
    );
    assert!(matches!(read(&" ".repeat(MOST_BYTES + 1)), Err(BackupProblem::TooLarge(_))));
}

#[test]
fn of_a_file_that_stops_in_the_middle_the_whole_jobs_are_read() {
    let all = jobs(&[1, 2, 1]);
    let text = backup(&all);
    let starts: Vec<usize> = text.match_indices("{\"record\"").map(|(at, _)| at).collect();
    let end = text.find("\n]\n}").unwrap();
    // Up to here, so many jobs are whole.
    for (to, whole) in [
        (starts[1] - 1, 1),
        (starts[1] + 9, 1),
        (starts[2] - 4, 1),
        (starts[2] - 3, 2),
        (starts[2] + 300, 2),
        (end - 2, 2),
        // The last bracket of the last job, and then all of it.
        (end - 1, 3),
        (end, 3),
    ] {
        let back = read(&text[..to]).unwrap_or_else(|problem| panic!("{to}: {problem:?}"));
        assert_eq!(back.jobs, all[..whole], "{to}");
        assert_eq!(back.cut_after.as_deref(), Some(&*all[whole - 1].name), "{to}");
        assert_eq!(back.damaged, [], "{to}");
    }
    // Only what closes the file is missing, and no job can be.
    for to in [end + 2, end + 4] {
        let back = read(&text[..to]).unwrap();
        assert_eq!((back.jobs.len(), back.cut_after), (3, None), "{to}");
    }
    assert_eq!(read(&text[..starts[0] + 200]), Err(BackupProblem::CutShort));
    // What came before the cut and is damaged is named as ever.
    let spoilt = text.replacen("Workshop", "Workshoq", 1);
    let back = read(&spoilt[..end - 2]).unwrap();
    assert_eq!((back.jobs.len(), &*back.damaged[0].name), (1, "Plumb 0"));
}

#[test]
fn text_around_a_backup_is_passed_by() {
    let all = jobs(&[1, 1]);
    let text = backup(&all);
    let node = Node::from_json(&text).unwrap();
    let pretty = serde_json::to_string_pretty(&node).unwrap();
    for (before, after) in [
        ("Fwd: our jobs\r\n\r\n", "\n-- \nSent from the van {truck 2}\n"),
        ("see {this}: ", ""),
        ("", "\n\nGreetings\n"),
    ] {
        for text in [&text, &pretty] {
            let back = read(&[before, text, after].concat()).unwrap();
            assert_eq!((back.jobs, back.cut_after), (all.clone(), None), "{before}{after}");
        }
        // One spoilt job among them is named, and the signature is no job.
        let spoilt = text.replacen("\"place\"", "\"place", 1);
        let back = read(&[before, &spoilt, after].concat()).unwrap();
        assert_eq!((back.jobs.len(), back.damaged.len()), (1, 1), "{before}{after}");
        assert_eq!(back.cut_after, None);
    }
    for foreign in ["Fwd: {\"jobs\":[]}", "the \"kind\" of thing", "kind {\"kind\":1}"] {
        assert_eq!(read(foreign), Err(BackupProblem::Foreign), "{foreign}");
    }
}

#[test]
fn what_stays_out_is_told_with_both_values_and_comes_back_as_a_copy() {
    let there = jobs(&[3]);
    let text = backup(&there);
    let mut here = there.clone();
    let answer = |step: u64, answer: &str| {
        let mut mark = mark(step);
        mark.kept.answer = answer.into();
        mark
    };
    let titled = Mark { title: "Called otherwise".into(), ..mark(2) };
    for edit in [Edit::Change(answer(0, "34 in3")), Edit::Remove(mark(1).id), Edit::Change(titled)]
    {
        apply(&mut here[0], edit, &stamp(3)).unwrap();
    }
    let before = here.clone();
    let planned = plan(read(&text).unwrap(), &here);
    assert!(!planned.changes(), "all of it is known here");
    let out: Vec<_> = planned.jobs[0].left_out.iter().collect();
    let says = |mark: &Mark| mark.kept.answer.clone();
    assert_eq!(out.len(), 2, "a title is no value: {out:?}");
    assert_eq!(out[0].here.as_ref().map(says).as_deref(), Some("34 in3"));
    assert_eq!((says(&out[0].file), &out[1].here), (says(&mark(0)), &None));

    let undo = carry_out(&mut here, planned.copies(), &stamp(9)).unwrap();
    assert_eq!(here[0].marks.len(), 4);
    let back = here[0].marks.iter().filter(|it| it.title.ends_with(" (from the backup)"));
    let back: Vec<&Mark> = back.collect();
    assert_eq!(back.len(), 2);
    assert!(back.iter().all(|it| before[0].mark(&it.id).is_none() && it.id != mark(1).id));
    assert_eq!(back.iter().filter(|it| it.kept == mark(0).kept).count(), 2, "the file's values");
    assert_eq!(here[0].mark(&mark(0).id).map(says).as_deref(), Some("34 in3"), "mine stays");
    // Once is enough, and a job that was given the copies is merged like any other.
    let again = plan(read(&text).unwrap(), &here);
    assert_eq!((again.jobs[0].left_out.len(), again.copies()), (0, Vec::new()));
    let steps = undo.back(&here).steps;
    carry_out(&mut here, steps, &stamp(9)).unwrap();
    assert_eq!(here[0].marks, before[0].marks);
    // Taken back, it can be brought back again.
    let again = plan(read(&text).unwrap(), &here);
    assert_eq!(again.jobs[0].left_out.len(), 2);
    carry_out(&mut here, again.copies(), &stamp(9)).unwrap();
    assert_eq!(here[0].marks.len(), 4);
}

#[test]
fn a_number_changed_on_both_sides_is_not_left_out_once_both_are_here() {
    let mut here = jobs(&[1]);
    let mut there = here.clone();
    let answer = |answer: &str| {
        let mut mark = mark(0);
        mark.kept.answer = answer.into();
        mark
    };
    apply(&mut here[0], Edit::Change(answer("34 in3")), &stamp(2)).unwrap();
    apply(&mut there[0], Edit::Change(answer("22 in3")), &stamp(3)).unwrap();
    let text = backup(&there);
    restored(&text, &mut here);
    assert_eq!(here[0].marks.len(), 2);
    let again = plan(read(&text).unwrap(), &here);
    assert!(!again.changes() && again.jobs[0].left_out.is_empty(), "{again:?}");
}

#[test]
fn what_only_clocks_would_learn_is_no_change() {
    let mut here = jobs(&[1]);
    let mut there = here.clone();
    let named = |name: &str| Edit::Describe { name: name.into(), place: String::new() };
    apply(&mut here[0], named("Mine"), &stamp(2)).unwrap();
    apply(&mut there[0], named("Theirs"), &stamp(3)).unwrap();
    let planned = plan(read(&backup(&there)).unwrap(), &here);
    let Change::Merged(merged) = &planned.jobs[0].change else { panic!("it is here") };
    assert!(matches!(&merged.terms, TermsFate::Told(_)) && merged.edit.is_some());
    assert!(!planned.changes());
}

/// Two thousand million names in one tree would be compared with each other.
#[test]
fn a_tree_of_very_many_names_does_not_take_for_ever() {
    let names: String = (0..400_000).map(|name| format!("\"{name:06}\":0,")).collect();
    let text = ["{\"kind\":\"ledgerboard-backup\",", &names, "\"jobs\":[]}"].concat();
    assert!(matches!(read(&text), Err(BackupProblem::Broken(_))));
}

#[test]
fn what_the_door_would_not_let_in_is_damaged() {
    let [plain] = &jobs(&[1])[..] else { panic!("one job") };
    let changed = |how: &dyn Fn(&mut Mark)| {
        let mut job = plain.clone();
        how(&mut job.marks[0]);
        job
    };
    let leaves = |count: usize| Node::List(vec![Node::text("9 ft"); count]);
    let trace =
        |at: u64| Gone { id: format!("{at:06}"), clock: <_>::default(), at: stamp(0).moment() };
    let cases = [
        ("a long title", changed(&|mark| mark.title = "x".repeat(81))),
        ("a long note", changed(&|mark| mark.note = "x".repeat(1_001))),
        ("many links", changed(&|mark| mark.ties = vec![mark.ties[0].clone(); 101])),
        ("a large input", changed(&|mark| mark.input = leaves(1_001))),
        ("a long name", Job { name: "x".repeat(81), ..plain.clone() }),
        ("many traces", Job { gone: (0..20_001).map(trace).collect(), ..plain.clone() }),
    ];
    for (case, job) in cases {
        let back = read(&backup(&[job])).unwrap();
        assert_eq!((back.jobs.len(), back.damaged.len()), (0, 1), "{case}");
    }
}

#[test]
fn script_in_every_text_stays_text() {
    let script = "</script><img src=x onerror=\"alert(1)\">\u{0}\\u003c";
    let mut job = Job::new(script, script, &stamp(1)).unwrap();
    let mut mark = Mark {
        title: script.into(),
        spot: script.into(),
        note: script.into(),
        calculator: script.into(),
        ..mark(1)
    };
    mark.input = Node::text(script);
    (mark.kept.answer, mark.kept.verdict) = (script.into(), script.into());
    apply(&mut job, Edit::Keep(mark), &stamp(1)).unwrap();
    let text = backup(std::slice::from_ref(&job));
    assert_eq!(read(&text).unwrap().jobs, [job]);
}

#[test]
fn a_hundred_jobs_of_two_hundred_numbers_fit() {
    let one = jobs(&[200]);
    let bytes = backup(&one).len();
    assert!(bytes * 100 < MOST_BYTES, "{bytes} bytes");
}

#[test]
fn a_backup_is_overdue_by_numbers_or_by_days() {
    let now = stamp(0).at + 60;
    assert_eq!(overdue(&jobs(&[5, 4]), None, now), None);
    assert_eq!(overdue(&jobs(&[5, 5]), None, now), Some(10));
    assert_eq!(overdue(&jobs(&[5, 5]), Some(stamp(0).at), now), None, "eight are later");
    let two_weeks = stamp(0).at + 14 * 86_400;
    assert_eq!(overdue(&jobs(&[1]), None, two_weeks - 1), None);
    assert_eq!(overdue(&jobs(&[1]), None, two_weeks), Some(1));
    assert_eq!(overdue(&jobs(&[1]), Some(stamp(0).at), two_weeks), None);
    assert_eq!(overdue(&[], None, now), None);
}

#[test]
fn numbers_are_counted_from_the_moment_of_the_last_backup() {
    let all = jobs(&[3, 2]);
    let second = stamp(1).at;
    assert_eq!(marks_since(&all, second), 1);
    assert_eq!(marks_since(&all, 0), 5);
    assert_eq!(merge(&all[0], &all[0]).edit, None);
    assert_eq!(restored(&backup(&all), &mut all.clone()).jobs().count(), 0);
}
