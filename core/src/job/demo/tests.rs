use super::super::buying::buying;
use super::super::mark::Kept;
use super::super::survey::{Survey, opened};
use super::super::turnover::{Since, turnover};
use super::super::unlike_room::Rooms;
use super::*;
use crate::sheet::Verdict;
use crate::words::Language;

fn found<'a>(job: &'a Job, title: &'static Phrase) -> &'a Mark {
    let title = Voice::default().phrase(title);
    job.marks.iter().find(|mark| mark.title == title).unwrap()
}

#[test]
fn every_mark_is_there_in_the_order_of_the_work_and_works_out_as_kept() {
    for language in [Language::English, Language::Spanish, Language::Pseudo] {
        let voice = Voice { language, ..Voice::default() };
        let job = demo(voice);
        assert!(job.invented && job.id == DEMO_ID);
        assert_eq!(job, demo(voice), "a constant");
        let titles: Vec<&str> = job.marks.iter().map(|mark| &*mark.title).collect();
        let told: Vec<String> = TOLD.iter().map(|told| voice.phrase(told.title)).collect();
        assert_eq!(titles, told, "{language:?}");
        for mark in &job.marks {
            let hold = opened(&job, mark);
            let worked = mark.work_behind(job.basis, hold.as_ref()).unwrap();
            assert_eq!(Kept::of(&worked), mark.kept, "{}", mark.title);
        }
    }
}

#[test]
fn every_link_is_fresh_and_no_sample_is_left_as_it_was() {
    let job = demo(Voice::default());
    assert!(job.name.contains("invented"), "{}", job.name);
    let survey = Survey::of(&job);
    for mark in &job.marks {
        // In a circle nothing is fresh.
        assert!(survey.is_fresh(&mark.id), "{}", mark.title);
        let entry = catalog::find(&mark.calculator).unwrap();
        let sample = entry.canonical(&entry.sample(), Units::Customary).unwrap();
        assert_ne!(mark.input, sample, "{}", mark.title);
    }
    for (mark, told) in job.marks.iter().zip(TOLD) {
        for (path, ..) in told.takes {
            assert!(mark.tie(path).is_some(), "{}: {path}", mark.title);
        }
        // What its form says to be the room's is the room's here.
        let entry = catalog::find(&mark.calculator).unwrap();
        for key in ["long", "wide", "area"] {
            let is_asked = entry.rows.iter().any(|row| row.key == key && !row.room.is_empty());
            assert!(!is_asked || mark.tie(key).is_some(), "{}: {key}", mark.title);
        }
    }
    let tied = job.marks.iter().filter(|mark| !mark.ties.is_empty()).count();
    assert!(tied * 2 > job.marks.len(), "{tied} of {}", job.marks.len());
}

/// The fills are added up by hand above each question.
#[test]
fn some_are_over_some_ask_and_one_is_held() {
    let job = demo(Voice::default());
    let kept = |title| {
        let kept = &found(&job, title).kept;
        (&*kept.answer, &*kept.verdict)
    };
    assert_eq!(kept(&w::DEMO_JUNCTION), ("30.375 in3", "over"));
    assert_eq!(kept(&w::DEMO_PAIR), ("28.0 in3", "within"));
    assert_eq!(kept(&w::DEMO_SWITCH), ("14.0 in3", "within"));
    // 9 ft less 7 ft 10 in.
    assert_eq!(kept(&w::DEMO_RAISE), ("14 in", "ask"));
    let count = |verdict| job.marks.iter().filter(|mark| mark.kept.verdict == verdict).count();
    assert_eq!((count("held"), count("over"), count("ask")), (1, 4, 1));
    assert!(found(&job, &w::DEMO_KITCHEN_CEILING).kept.is_held());
}

#[test]
fn one_has_nothing_to_spare_and_one_turns_on_the_edition() {
    let job = demo(Voice::default());
    let worked = |title| found(&job, title).work(job.basis).unwrap();
    let hall = worked(&w::DEMO_PAIR);
    let lead = hall.sheet.lead().unwrap();
    assert_eq!(lead.value, lead.limit);
    assert_eq!(hall.flips, []);
    let kitchen = worked(&w::DEMO_JUNCTION);
    let flips: Vec<_> = kitchen.flips.iter().map(|flip| (flip.edition, flip.verdict)).collect();
    assert_eq!(flips, [(Electrical::E2017, Verdict::Within)]);
}

#[test]
fn each_reader_gets_a_sheet_with_what_changed() {
    let job = demo(Voice::default());
    let survey = Survey::of(&job);
    for who in Who::ALL {
        let sheet = turnover(&job, &survey, who);
        assert!(sheet.numbers().count() > 2, "{who:?}");
        assert_eq!(sheet.left_out, [""; 0], "{who:?}");
        assert!(sheet.last.is_some(), "{who:?}");
        assert!(sheet.numbers().any(|number| number.since == Since::New), "{who:?}");
        assert!(sheet.numbers().any(|number| number.since == Since::Same), "{who:?}");
    }
    let sheet = turnover(&job, &survey, Who::Electrician);
    let pair = sheet.numbers().find(|it| it.mark == found(&job, &w::DEMO_PAIR).id).unwrap();
    assert_eq!(pair.since, Since::Was("24.0 in3".into(), Verdict::Within.words()));
    assert_eq!(sheet.gone.len(), 1);
    let owner = turnover(&job, &survey, Who::Owner);
    assert!(owner.numbers().any(|number| number.said.is_some()));
}

/// Paint: 168 and 48 sq ft, two coats at 400 sq ft a gallon, are 1.08 gal; primer at 250 is 0.864
/// gal. Staples: the plan's 46, the 14-3's 4 and the old cable's 4 are 54. Screws: the compound
/// takes over the boards' 180 and asks for no more.
#[test]
fn what_to_buy_adds_up_by_hand() {
    let job = demo(Voice::default());
    let all = buying(&job, &Survey::of(&job));
    let needs = |key: &str| all.lines.iter().find(|line| line.key == key).unwrap().needs.exact();
    assert_eq!(needs("finish"), "1.08 gal");
    assert_eq!(needs("primer"), "0.864 gal");
    assert_eq!(needs("staple"), "54");
    assert_eq!(needs("drywall-screw"), "180");
    assert_eq!(all.missing, [""; 0]);
}

/// What it takes of its room is what that is to be: nothing in it says otherwise.
#[test]
fn nothing_in_it_is_unlike_its_room() {
    let job = demo(Voice::default());
    let survey = Survey::of(&job);
    let rooms = Rooms::of(&job, &survey);
    let unlike = job.marks.iter().flat_map(|mark| rooms.unlike(&job, mark));
    let told: Vec<String> = unlike.map(|it| Voice::default().say(&it.says())).collect();
    assert_eq!(told, [""; 0]);
}
