use super::super::samples::stamp;
use super::super::{apply, demo};
use super::*;
use crate::measure::{Length, Units};
use crate::sheet::{Ink, Line, UNPLACED};
use crate::wire::Node;
use crate::words::Voice;

fn job() -> Job {
    let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
    for (entry, step) in catalog::ALL.iter().zip(1..) {
        let (units, basis) = (Units::Customary, <_>::default());
        let mark = Mark::new(entry, &entry.sample(), units, basis, None, &stamp(step)).unwrap();
        let mark = Mark { title: entry.id.into(), spot: "Den".into(), ..mark };
        apply(&mut job, Edit::Keep(mark), &stamp(step)).unwrap();
    }
    job
}

fn made(job: &Job, who: Who) -> Turnover {
    turnover(job, &Survey::of(job), who)
}

fn changed(job: &mut Job, title: &str, path: &str, value: &str) {
    let mark = job.marks.iter().find(|mark| mark.title == title).unwrap().clone();
    let entry = catalog::find(&mark.calculator).unwrap();
    let mut input = mark.input.clone();
    input.put(path, Node::text(value));
    let now = Mark::new(entry, &input, Units::Customary, <_>::default(), None, &stamp(90)).unwrap();
    let now = Mark { id: mark.id, title: mark.title, spot: mark.spot, ..now };
    apply(job, Edit::Change(now), &stamp(91)).unwrap();
}

#[test]
fn each_gets_what_is_theirs() {
    let job = job();
    let titles = |who| -> Vec<String> {
        made(&job, who).numbers().map(|number| number.title.clone()).collect()
    };
    let (cables, air) = (titles(Who::Electrician), titles(Who::Mechanical));
    assert!(cables.contains(&"box-fill".into()) && cables.contains(&"drilling".into()));
    assert!(air.contains(&"register-throw".into()) && !air.contains(&"box-fill".into()));
    let all = titles(Who::Inspector);
    // Of a trade's numbers the inspector gets those that something is held against.
    let survey = Survey::of(&job);
    for mark in job.marks.iter().filter(|it| cables.contains(&it.title) || air.contains(&it.title))
    {
        let Some(Ok(worked)) = survey.worked(&mark.id) else { panic!("{}", mark.title) };
        assert_eq!(all.contains(&mark.title), !worked.sheet.checks.is_empty(), "{}", mark.title);
    }
    assert!(!all.contains(&"room".into()));
    assert!(titles(Who::Owner).contains(&"register-spots".into()));
}

#[test]
fn the_next_sheet_tells_what_changed() {
    let mut job = job();
    let first = made(&job, Who::Electrician);
    assert!(!first.has_changed() && first.last.is_none());
    let edit = hand_over(&job, &first);
    apply(&mut job, edit, &stamp(60)).unwrap();
    let same = made(&job, Who::Electrician);
    assert_eq!(same.last, Some(stamp(60).moment()));
    assert!(!same.has_changed());
    let before = first.numbers().find(|it| it.title == "cable-securing").unwrap();
    changed(&mut job, "cable-securing", "run", "40 ft");
    let gone = job.marks.iter().find(|mark| mark.title == "hole-cables").unwrap().id.clone();
    apply(&mut job, Edit::Remove(gone), &stamp(92)).unwrap();
    let next = made(&job, Who::Electrician);
    let since = |title: &str| {
        next.numbers().find(|it| it.title == title).map(|it| it.since.clone()).unwrap()
    };
    let answer = before.headline.amount.exact();
    assert_eq!(since("cable-securing"), Since::Was(answer, Verdict::Within.words()));
    assert_eq!(since("box-fill"), Since::Same);
    assert_eq!(next.gone, ["hole-cables"]);
    assert!(next.has_changed());
    // Another's sheet knows nothing of this one.
    assert!(!made(&job, Who::Inspector).has_changed());
    let edit = hand_over(&job, &next);
    apply(&mut job, edit, &stamp(93)).unwrap();
    let then = made(&job, Who::Electrician);
    assert!(!then.has_changed() && then.gone.is_empty());
}

#[test]
fn what_an_owner_said_was_said_of_an_answer() {
    let mut job = job();
    let number = |job: &Job| {
        let sheet = made(job, Who::Owner);
        sheet.numbers().find(|it| it.title == "register-spots").unwrap().clone()
    };
    let here = number(&job);
    apply(&mut job, say_of(&here.mark, Some(Word::Agree), &here.seen), &stamp(60)).unwrap();
    let said = number(&job).said.unwrap();
    assert_eq!(here.seen.answer, here.headline.amount.exact());
    let want = (Word::Agree, here.seen.clone(), stamp(60).moment());
    assert_eq!((said.word, said.of, said.at), want);
    apply(&mut job, say_of(&here.mark, None, &here.seen), &stamp(61)).unwrap();
    assert_eq!(number(&job).said, None);
}

#[test]
fn the_inspector_reads_every_check_with_its_source() {
    let job = job();
    let sheet = made(&job, Who::Inspector);
    let survey = Survey::of(&job);
    for number in sheet.numbers() {
        let Some(Ok(worked)) = survey.worked(&number.mark) else { panic!("worked above") };
        assert_eq!(number.checks, worked.sheet.checks);
        for check in &number.checks {
            assert!(sheet.sources.iter().any(|source| source.key == check.source.key));
        }
    }
}

#[test]
fn the_demo_has_a_sheet_for_each() {
    let demo = demo(Voice::default());
    for who in [Who::Electrician, Who::Inspector] {
        assert!(made(&demo, who).numbers().count() > 0, "{who:?}");
    }
}

#[test]
fn every_reader_has_a_name_in_addresses() {
    for who in Who::ALL {
        assert_eq!(Who::from_key(who.key()), Some(who));
    }
    assert_eq!(Who::from_key("nobody"), None);
}

/// A place that each of them tells, and another one. None of them moves the answer.
const MOVED: [(&str, &str, &str); 4] = [
    ("rough-in", "boxes.1.x", "11 ft"),
    ("set-out", "boxes.2.height", "18 in"),
    ("outlets", "first", "12 in"),
    ("register-spots", "spots.1.x", "5 ft"),
];

fn number(job: &Job, who: Who, title: &str) -> Handed {
    made(job, who).numbers().find(|it| it.title == title).unwrap().clone()
}

fn agreed(job: &mut Job, title: &str) {
    let Handed { mark, seen, .. } = number(job, Who::Owner, title);
    apply(job, say_of(&mark, Some(Word::Agree), &seen), &stamp(60)).unwrap();
    assert_eq!(number(job, Who::Owner, title).owner_wants(), None, "{title}");
}

#[test]
fn a_moved_box_asks_the_owner_again_though_the_answer_is_the_same() {
    for (title, path, value) in MOVED {
        let mut job = job();
        agreed(&mut job, title);
        let before = number(&job, Who::Owner, title);
        changed(&mut job, title, path, value);
        let after = number(&job, Who::Owner, title);
        assert_eq!(after.headline.amount, before.headline.amount, "{title}");
        let said = after.owner_wants().unwrap_or_else(|| panic!("{title}: {:?}", after.parts));
        assert!(!said.is_of(&after.seen) && said.is_of(&before.seen), "{title}");
        // A trade's sheet says so too, and so does Ready.
        let trade = if title == "register-spots" { Who::Mechanical } else { Who::Electrician };
        assert!(number(&job, trade, title).owner_wants().is_some(), "{title}");
        let ready = super::super::ready::ready(&job, &Survey::of(&job));
        assert_eq!(ready.iter().map(|it| it.owner.len()).sum::<usize>(), 1, "{title}");
        changed(&mut job, title, path, &before_of(title, path));
        assert_eq!(number(&job, Who::Owner, title).owner_wants(), None, "{title}: moved back");
    }
}

fn before_of(title: &str, path: &str) -> String {
    let entry = catalog::find(title).unwrap();
    let sample = entry.canonical(&entry.sample(), Units::Customary).unwrap();
    sample.at(path).and_then(Node::leaf).unwrap()
}

/// A box's volume, a breaker: settled with the trade. Units are how it is told, not what.
#[test]
fn what_the_owner_is_not_shown_asks_him_nothing_again() {
    let mut job = job();
    agreed(&mut job, "rough-in");
    let before = number(&job, Who::Owner, "rough-in");
    changed(&mut job, "rough-in", "boxes.1.clamps", "yes");
    changed(&mut job, "rough-in", "boxes.1.enclosure", "marked");
    changed(&mut job, "rough-in", "boxes.1.marked", "5 in3");
    let after = number(&job, Who::Owner, "rough-in");
    assert_ne!(after.headline.amount, before.headline.amount, "a box is over");
    assert_eq!(after.owner_wants(), None);
    apply(&mut job, Edit::Units(Units::Metric), &stamp(95)).unwrap();
    assert_eq!(number(&job, Who::Owner, "rough-in").owner_wants(), None);
}

/// The same length, put in in other units, is the same place; another language says it otherwise.
#[test]
fn a_print_is_of_quantities_and_not_of_how_they_are_told() {
    let mut job = job();
    changed(&mut job, "rough-in", "boxes.1.x", "10 ft");
    let before = number(&job, Who::Owner, "rough-in").seen;
    changed(&mut job, "rough-in", "boxes.1.x", "3.048 m");
    assert_eq!(number(&job, Who::Owner, "rough-in").seen, before);
    // Nearer than a sixteenth, which is all that inches show.
    changed(&mut job, "rough-in", "boxes.1.x", "3.049 m");
    assert_ne!(number(&job, Who::Owner, "rough-in").seen, before);
}

#[test]
fn a_moved_box_is_told_on_the_next_sheet_of_whoever_reads_of_it() {
    for (title, path, value) in MOVED {
        let trade = if title == "register-spots" { Who::Mechanical } else { Who::Electrician };
        for who in [trade, Who::Owner] {
            let mut job = job();
            let edit = hand_over(&job, &made(&job, who));
            apply(&mut job, edit, &stamp(60)).unwrap();
            assert!(!made(&job, who).has_changed(), "{title}, {who:?}");
            changed(&mut job, title, path, value);
            let sheet = made(&job, who);
            let other = sheet.numbers().filter(|it| it.since != Since::Same);
            let other: Vec<_> = other.map(|it| (&*it.title, &it.since)).collect();
            assert_eq!(other, [(title, &Since::Under)], "{who:?}");
        }
    }
}

#[test]
fn what_was_kept_before_there_were_prints_still_reads() {
    let mut job = job();
    let here = number(&job, Who::Owner, "rough-in");
    let answer = here.headline.amount.exact();
    let keep = |job: &mut Job, key: String, says: &str| {
        apply(job, Edit::Jot { key, says: says.to_owned() }, &stamp(60)).unwrap();
    };
    keep(&mut job, said_of(&here.mark), &["agree ", &answer].concat());
    keep(&mut job, given(Who::Electrician, ""), "1");
    let plan = number(&job, Who::Electrician, "rough-in");
    let says = [&answer, "\t", plan.verdict.key(), "\trough-in"].concat();
    keep(&mut job, given(Who::Electrician, &here.mark), &says);
    keep(&mut job, given(Who::Electrician, "x"), "3\twithin\tA title of then");
    for value in ["7 ft", "11 ft"] {
        changed(&mut job, "rough-in", "boxes.1.x", value);
        let now = number(&job, Who::Electrician, "rough-in");
        assert_eq!((&now.since, now.owner_wants()), (&Since::Same, None), "by the answer alone");
    }
    assert_eq!(made(&job, Who::Electrician).gone, ["A title of then"]);
    keep(&mut job, said_of(&here.mark), "agree 31 ft");
    assert!(number(&job, Who::Owner, "rough-in").owner_wants().is_some());
}

#[test]
fn a_title_stays_a_title_beside_its_print() {
    let mut job = job();
    let edit = hand_over(&job, &made(&job, Who::Electrician));
    apply(&mut job, edit, &stamp(60)).unwrap();
    let id = number(&job, Who::Electrician, "rough-in").mark;
    apply(&mut job, Edit::Remove(id), &stamp(61)).unwrap();
    assert_eq!(made(&job, Who::Electrician).gone, ["rough-in"]);
}

/// By hand: the strip no longer waits for the laboratory.
#[test]
fn the_owner_is_told_what_is_to_settle_of_what_he_agrees_to_and_no_box_fill() {
    let mut job = job();
    changed(&mut job, "trade-days", "steps.1.after", "");
    // A box past the room's wall has no place: that is the owner's to settle as well.
    changed(&mut job, "rough-in", "longest", "15 ft");
    let plan = number(&job, Who::Owner, "rough-in");
    let keys: Vec<&str> = plan.checks.iter().map(|it| it.key.as_str()).collect();
    assert_eq!(keys, [UNPLACED]);
    let sheet = made(&job, Who::Owner);
    let days = number(&job, Who::Owner, "trade-days");
    assert!(!days.checks.is_empty() && days.checks.iter().all(|it| it.verdict != Verdict::Within));
    let survey = Survey::of(&job);
    for number in sheet.numbers() {
        let mark = job.mark(&number.mark).unwrap();
        let Some(Ok(worked)) = survey.worked(&mark.id) else { panic!("worked above") };
        let open = worked.sheet.checks.iter().filter(|it| it.verdict != Verdict::Within).cloned();
        let is_of_job = catalog::find(&mark.calculator).unwrap().trade == Trade::Job;
        let want: Vec<Check> = open.filter(|it| is_of_job || it.key == UNPLACED).collect();
        assert_eq!(number.checks, want, "{}", number.title);
    }
    assert!(sheet.sources.is_empty(), "each check says beside it where it is from");
    let note = job.note_sample(&days.mark, &["start".into(), "steps.0.days".into()], false);
    apply(&mut job, note.unwrap(), &stamp(96)).unwrap();
    assert_eq!(number(&job, Who::Owner, "trade-days").sampled, 2);
}

/// A count of reasons to hold is within nothing.
#[test]
fn a_hold_that_is_not_shut_is_open_on_the_inspectors_sheet() {
    let demo = demo(Voice::default());
    let mut words = Vec::new();
    for number in made(&demo, Who::Inspector).numbers() {
        let mark = demo.mark(&number.mark).unwrap();
        if catalog::find(&mark.calculator).unwrap().is_hold {
            let word = number.word.en;
            assert_eq!(word == "held", number.is_held, "{}", number.title);
            words.push(word);
        } else {
            assert_ne!(number.word.en, "open", "{}", number.title);
        }
    }
    words.sort_unstable();
    words.dedup();
    assert_eq!(words, ["held", "open"]);
    // And where it was so on the sheet before.
    let mut job = demo;
    job.invented = false;
    let edit = hand_over(&job, &made(&job, Who::Inspector));
    apply(&mut job, edit, &stamp(60)).unwrap();
    let was = Was::read("0\twithin\tx").unwrap();
    let hold = job.marks.iter().find(|it| it.calculator == "hold").unwrap();
    let Since::Was(_, word) = was.since(Who::Inspector, hold, &Kept::default(), "") else {
        panic!("it says something else now");
    };
    assert_eq!(word.en, "open");
}

#[test]
fn a_day_of_before_is_told_as_the_calculator_tells_it() {
    let says = told_before("2027-01-26", Verdict::Within.words());
    assert_eq!(Voice::default().say(&says), "was Tue Jan\u{a0}26,\u{a0}2027, within");
}

/// A typed ceiling stays when the room's is to be another one: who pulls cable to it is told, and another
/// version of a number, which nobody chose yet, is no work of its own.
#[test]
fn a_trade_is_told_what_is_unlike_the_room_and_which_version_is_in_use() {
    let mut job = job();
    let of = |job: &Job, title: &str| {
        made(job, Who::Electrician).numbers().find(|it| it.title == title).cloned()
    };
    changed(&mut job, "room", "height_to_be", "9 ft 2 in");
    changed(&mut job, "rough-in", "high", "9 ft 2 in");
    assert_eq!(of(&job, "rough-in").unwrap().unlike, []);
    changed(&mut job, "rough-in", "high", "8 ft 6 in");
    assert_eq!(of(&job, "rough-in").unwrap().unlike.len(), 1);

    let used = job.marks.iter().find(|it| it.title == "rough-in").unwrap().clone();
    let title = super::super::merge::other_title(&used.title);
    let other = Mark { id: "other".into(), title: title.clone(), ..used };
    assert!(!of(&job, "rough-in").unwrap().has_versions);
    apply(&mut job, Edit::Keep(other), &stamp(95)).unwrap();
    assert!(of(&job, "rough-in").unwrap().has_versions);
    assert_eq!(of(&job, &title), None);
}

/// By hand: three rows of 16 ft are 48 ft, or four boards of 12 ft. Without those a joist at 13 ft 4 in
/// takes a row's joint: three boards of 14 ft, and the three ends of 32 in are one of 8 ft. Their lengths
/// stand in what the answer is called, their joints in the drawing.
#[test]
fn boards_of_other_lengths_are_told_though_their_count_is_the_same() {
    let mut job = job();
    let edit = hand_over(&job, &made(&job, Who::Inspector));
    apply(&mut job, edit, &stamp(60)).unwrap();
    let before = number(&job, Who::Inspector, "boards");
    assert_eq!(before.since, Since::Same);
    changed(&mut job, "boards", "stock.l12", "no");
    let after = number(&job, Who::Inspector, "boards");
    assert_eq!([before.headline.amount, after.headline.amount], [Amount::Count(4); 2]);
    assert_ne!(after.headline.name, before.headline.name);
    assert_eq!(after.since, Since::Under);
    changed(&mut job, "boards", "stock.l12", "yes");
    assert_eq!(number(&job, Who::Inspector, "boards").since, Since::Same);
}

/// Whatever a reader's sheet has of a number, another of it is another print: its words, what they are
/// called, why a check asks, the crew's note, what is drawn.
#[test]
fn all_that_a_sheet_shows_is_in_its_print() {
    let job = job();
    let survey = Survey::of(&job);
    for who in Who::ALL {
        for mark in &job.marks {
            let Some(Ok(worked)) = survey.worked(&mark.id) else { continue };
            let entry = catalog::find(&mark.calculator).unwrap();
            if !who.is_for(entry, Some(worked)) {
                continue;
            }
            let print = |sheet: &Sheet, note: &str| who.shown(entry, sheet).print(note);
            let sheet = &worked.sheet;
            let here = print(sheet, "");
            let other = |change: &dyn Fn(&mut Sheet)| {
                let mut sheet = sheet.clone();
                change(&mut sheet);
                print(&sheet, "") != here
            };
            let shown = who.shown(entry, sheet);
            let text = || Text::from(&w::AGREE);
            let title = &mark.title;
            let has_answer = shown.headline.is_some();
            assert_eq!(other(&|it| it.headline.name = text()), has_answer, "{title}, {who:?}");
            assert_eq!(
                other(&|it| it.headline.said = Some(text())),
                has_answer,
                "{title}, {who:?}"
            );
            if !shown.figures.is_empty() {
                assert!(other(&|it| it.figures[0].name = text()), "{title}, {who:?}");
            }
            let asks = sheet.checks.iter().position(|it| shown.checks.contains(&it));
            if let Some(at) = asks.filter(|at| sheet.checks[*at].verdict != Verdict::Within) {
                assert!(other(&|it| it.checks[at].note = Some(text())), "{title}, {who:?}");
            }
            let part = sheet.parts.iter().position(|it| shown.parts.contains(&it));
            if let Some(at) = part {
                assert!(other(&|it| it.parts[at].title = text()), "{title}, {who:?}");
            }
            // An owner reads places where a list has them; what else is drawn is the trade's.
            let is_told =
                sheet.parts.iter().any(|it| ["foremost", "spots", "places"].contains(&it.key));
            let is_drawn = shown.drawing.is_some() && (who != Who::Owner || !is_told);
            let moved = |it: &mut Sheet| {
                let inks = it.drawing.iter_mut().flat_map(|drawing| &mut drawing.ink);
                let mut paths = inks.filter_map(|ink| match ink {
                    Ink::Path { line, points, .. } if *line != Line::Leader => Some(points),
                    _ => None,
                });
                if let Some(points) = paths.next() {
                    points[0].x = points[0].x.plus(Length::inches(1, 1));
                }
            };
            if is_drawn || (who == Who::Owner && is_told) {
                assert_eq!(other(&moved), is_drawn, "{title}, {who:?}");
            }
            let is_overleaf =
                who != Who::Owner || shown.drawing.is_some() || !shown.parts.is_empty();
            assert_eq!(print(sheet, "By the window") != here, is_overleaf, "{title}, {who:?}");
        }
    }
}

/// Where only answers, checks and places went into a print: nothing is told as changed that may not be.
#[test]
fn a_print_of_before_is_compared_by_what_went_into_it() {
    for who in Who::ALL {
        let mut job = job();
        let Edit::Several(edits) = hand_over(&job, &made(&job, who)) else { panic!("one edit") };
        let before = |edit: Edit| match edit {
            Edit::Jot { key, says } => {
                let (rest, print) = with_print(&says);
                let last = print.and_then(|print| print.rsplit('\t').next());
                let says = last.map_or(says.clone(), |last| [rest, last].join("\t"));
                Edit::Jot { key, says }
            }
            other => other,
        };
        let edits = edits.into_iter().map(before).collect();
        apply(&mut job, Edit::Several(edits), &stamp(60)).unwrap();
        assert!(!made(&job, who).has_changed(), "{who:?}");
        for (title, path, value) in MOVED {
            let has_it = made(&job, who).numbers().any(|it| it.title == title);
            changed(&mut job, title, path, value);
            if has_it && who != Who::Inspector {
                assert_eq!(number(&job, who, title).since, Since::Under, "{title}, {who:?}");
            }
        }
    }
    let now = "0123abcd\t89efcdab";
    assert!(is_same_print(now, now) && is_same_print("89efcdab", now));
    assert!(!is_same_print("0123abcd", now) && !is_same_print("0123abcd\t89efcdaa", now));
    for (says, want) in [
        ("3\twithin\tA title", ("3\twithin\tA title", None)),
        ("A title\t89efcdab", ("A title", Some("89efcdab"))),
        ("A title\t0123abcd\t89efcdab", ("A title", Some(now))),
        ("0123abcd\t0123abcd\t89efcdab", ("0123abcd", Some(now))),
        ("89efcdab", ("89efcdab", None)),
    ] {
        assert_eq!(with_print(says), want);
    }
}
