//! Times by hand, published hours on and to either side, then laws.

use super::*;
use crate::fields::Form;
use crate::measure::Day;
use crate::sheet::{Asks, Check, FOREMOST, Verdict};
use crate::words::Voice;
use proptest::prelude::*;

fn line(what: What, off: &str, back: &str) -> Line {
    let [off_time, back_time, who] = [off, back, "Crew, 555-0142"].map(str::to_owned);
    Line { what, off_time, back_time, who, medical: Medical::None, ..Line::blank() }
}

fn say(text: &crate::words::Text) -> String {
    Voice::default().say(text).replace('\u{a0}', " ")
}

fn check(lines: &[Line], key: &str) -> Option<Check> {
    let input = Input { off: lines.to_vec(), ..Input::blank() };
    let answer = solve(&input).unwrap();
    let sheet = OffTonight::sheet(&input, &answer, Basis::default());
    sheet.checks.into_iter().find(|check| check.key == key)
}

fn verdict(lines: &[Line], key: &str) -> Option<Verdict> {
    check(lines, key).map(|check| check.verdict)
}

fn dated(from: u8, off: &str, to: u8, back: &str) -> Line {
    let day = |day| Day::new(2026, 12, day);
    Line { off_day: day(from), back_day: day(to), ..line(What::Circuit, off, back) }
}

/// By hand: ten at night to six is eight hours, whether its days are given or not; one minute past
/// midnight is a minute into the next day, over the end of a year too.
#[test]
fn times_run_across_midnight() {
    let long = |line: &Line| line.span().map(|[from, to]| to - from);
    for (off, back, want) in [
        ("22:00", "6:00", 480),
        ("10 pm", "6 am", 480),
        ("13:00", "16:30", 210),
        ("23:59", "0:00", 1),
        ("0:00", "23:59", 1439),
        ("8:00", "8:00", 1440),
        ("noon", "1630", 270),
    ] {
        assert_eq!(long(&line(What::Circuit, off, back)), Some(want), "{off} {back}");
    }
    assert_eq!(long(&dated(1, "22:00", 2, "6:00")), Some(480));
    assert_eq!(long(&dated(1, "8:00", 3, "8:00")), Some(2880));
    assert_eq!(long(&dated(2, "8:00", 2, "8:01")), Some(1));
    assert_eq!(long(&dated(2, "8:00", 2, "8:00")), None);
    assert_eq!(long(&dated(2, "8:00", 2, "7:59")), None);
    assert_eq!(long(&Line { off_day: None, ..dated(2, "8:00", 2, "9:00") }), None);
    let year = Line { back_day: Day::new(2027, 1, 1), ..dated(31, "23:30", 31, "0:30") };
    assert_eq!(long(&year), Some(60));
    assert_eq!(long(&line(What::Circuit, "lunch", "16:00")), None);
}

/// Source: USDA FSIS, food in a power outage: 4 hours, 48 and 24, kept shut.
#[test]
fn cold_keeps_for_as_long_as_published() {
    let day = |minutes: i64| Day::new(2026, 12, 1 + u8::try_from(minutes / 1440).unwrap());
    let clock = |minutes: i64| format!("{}:{:02}", minutes / 60 % 24, minutes % 60);
    for (cold, key, hours) in [
        (Cold::Fridge, "refrigerator", 4),
        (Cold::Full, "full-freezer", 48),
        (Cold::Half, "half-freezer", 24),
    ] {
        for (more, want) in [(-1, Verdict::Within), (0, Verdict::Within), (1, Verdict::Over)] {
            let from = 21 * 60 + 30;
            let to = from + hours * 60 + more;
            let times = line(What::Circuit, &clock(from), &clock(to));
            let lines = [Line { off_day: day(from), back_day: day(to), cold, ..times }];
            assert_eq!(verdict(&lines, key), Some(want), "{key} {more}");
            let check = check(&lines, key).unwrap();
            let told = [hours * 60 + more, hours * 60].map(|it| it.to_string());
            assert_eq!(say(&check.told()), told.join(", at most "), "nothing is rounded");
            assert_eq!(verdict(&[Line { what: What::Gas, ..lines[0].clone() }], key), None);
        }
    }
}

/// By hand: from eight to noon and on from noon to four is eight hours for what one name keeps cold.
#[test]
fn lines_that_go_on_from_each_other_keep_one_thing_cold() {
    let cold = |named: &str, off: &str, back: &str| Line {
        cold: Cold::Fridge,
        named: named.to_owned(),
        ..line(What::Circuit, off, back)
    };
    let all = |lines: &[Line]| {
        let input = Input { off: lines.to_vec(), ..Input::blank() };
        let sheet = OffTonight::sheet(&input, &solve(&input).unwrap(), Basis::default());
        let checks = sheet.checks.iter().filter(|it| it.key == "refrigerator");
        checks.map(|it| (say(&it.told()), it.verdict)).collect::<Vec<_>>()
    };
    let (long, short) = (
        ("480, at most 240".to_owned(), Verdict::Over),
        ("240, at most 240".to_owned(), Verdict::Within),
    );
    let morning = cold("Kitchen", "8 am", "noon");
    for other in ["Kitchen", " kitchen", ""] {
        let later = cold(other, "noon", "4 pm");
        assert_eq!(all(&[morning.clone(), later.clone()]), std::slice::from_ref(&long), "{other}");
        assert_eq!(all(&[later, morning.clone()]), std::slice::from_ref(&long), "{other}");
    }
    let garage = cold("Garage", "noon", "4 pm");
    assert_eq!(all(&[morning.clone(), garage]), [short.clone(), short.clone()]);
    let breaks = cold("Kitchen", "12:01 pm", "4:01 pm");
    // On for a minute it isn't cold again, nor does anybody know when it is.
    let asked = ("240, at most 240".to_owned(), Verdict::Ask);
    assert_eq!(all(&[morning.clone(), breaks]), [asked.clone(), asked]);
    let brief = ["8 am", "10 am", "2 pm", "4 pm"];
    let brief = [cold("Kitchen", brief[0], brief[1]), cold("Kitchen", brief[2], brief[3])];
    let two = ("120, at most 240".to_owned(), Verdict::Within);
    assert_eq!(all(&brief), [two.clone(), two], "four hours in all");
    // Without days one o'clock is the night's that follows.
    let five = ("330, at most 240".to_owned(), Verdict::Over);
    let late = cold("Kitchen", "10:30 pm", "1 am");
    let small = cold("Kitchen", "1 am", "4 am");
    assert_eq!(all(&[small.clone(), late.clone()]), [five]);
    let day = Day::new(2026, 12, 1);
    let mixed = all(&[Line { off_day: day, ..late }, small]);
    assert!(mixed.iter().all(|it| it.1 == Verdict::Ask), "on which day? {mixed:?}");
    let late = cold("Kitchen", "4 pm", "5 pm");
    let between = cold("Kitchen", "11 am", "4 pm");
    let nine = ("540, at most 240".to_owned(), Verdict::Over);
    assert_eq!(all(&[morning, late, between]), [nine], "whatever their order");
}

/// By hand: four hours by the clock from ten at night are five where clocks go back in between.
#[test]
fn the_night_when_clocks_go_back_is_told_where_it_could_matter() {
    let note = |off: &str, back: &str| {
        let lines = [Line { cold: Cold::Fridge, ..line(What::Circuit, off, back) }];
        check(&lines, "refrigerator").unwrap().note.map(|it| say(&it))
    };
    let told = "By the clock: an hour more on the night when clocks go back.";
    assert_eq!(note("22:00", "2:00").as_deref(), Some(told));
    assert_eq!(note("0:30", "3:31").as_deref(), Some(told));
    assert_eq!(note("0:30", "3:30"), None, "an hour more is within");
    assert_eq!(note("20:00", "0:00"), None);
    assert_eq!(note("2:30 am", "6:00 am"), None);
}

/// What goes with the notice stands beside it, and with it on the owner's sheet.
#[test]
fn gas_alarms_and_whom_to_call_go_with_the_notice() {
    let names = |lines: &[Line]| {
        let input = Input { off: lines.to_vec(), ..Input::blank() };
        let sheet = OffTonight::sheet(&input, &solve(&input).unwrap(), Basis::default());
        let know = sheet.parts.iter().find(|part| part.key == "know").unwrap();
        know.rows.iter().map(|row| say(&row.name)).collect::<Vec<_>>()
    };
    let (gas, alarm) = (line(What::Gas, "9:00", "10:00"), line(What::Alarm, "9:00", "10:00"));
    assert_eq!(names(&[line(What::Room, "9:00", "10:00")]), ["Emergency"]);
    assert_eq!(names(&[alarm, gas]), ["Gas", "Smoke or CO alarm", "Emergency"]);
}

/// Each line that is short is named with what it is short of.
#[test]
fn what_a_line_is_short_of_is_said_of_it() {
    let mut lines = vec![
        line(What::Room, "9:00 am", "10:00 am"),
        line(What::Gas, "9:00", ""),
        Line { named: "Den".to_owned(), ..line(What::Circuit, "9:00", "6 oclock") },
        dated(2, "8:00", 2, "7:59"),
    ];
    lines.push(Line { who: " ".to_owned(), ..lines[0].clone() });
    let check = check(&lines, "missing").unwrap();
    assert_eq!(check.value, 5_i64.into());
    let want = "A room 1: on which day? Gas 2: a time is missing. Den: a time can't be read. \
        Circuit 4: back isn't later than off. A room 5: on which day?";
    assert_eq!(say(&check.note.unwrap()), want);
}

/// By hand: back at lights-out, or off when they get up, nobody slept; a minute more, and an alarm
/// is over.
#[test]
fn an_alarm_is_back_before_anybody_sleeps() {
    for (off, back, want) in [
        ("9:00", "22:00", Verdict::Within),
        ("9:00", "22:01", Verdict::Over),
        ("6:00", "21:00", Verdict::Within),
        ("5:59", "21:00", Verdict::Over),
        ("23:00", "1:00", Verdict::Over),
        ("14:00", "13:00", Verdict::Over),
    ] {
        assert_eq!(verdict(&[line(What::Alarm, off, back)], "alarms"), Some(want), "{off} {back}");
        let other = line(What::ColdWater, off, back);
        let minded = check(&[other], "overnight").map(|check| check.asks);
        assert_eq!(minded, (want == Verdict::Over).then_some(Asks::Minded));
    }
}

/// An alarm is never within before it is known from when to when it is off, and when people sleep.
#[test]
fn an_alarm_of_unknown_times_asks() {
    for (off, back) in [("", ""), ("9:00", ""), ("", "13:00"), (" ", "13:00"), ("9:00", "6 oclock")]
    {
        let lines = [line(What::Alarm, off, back), line(What::Alarm, "9:00", "13:00")];
        let check = check(&lines, "alarms").unwrap();
        assert_eq!((check.verdict, check.asks), (Verdict::Ask, Asks::Missing), "{off} {back}");
        assert_eq!(say(&check.told()), "1");
    }
    let lines = [line(What::Alarm, "", ""), line(What::Alarm, "23:00", "1:00")];
    assert_eq!(verdict(&lines, "alarms"), Some(Verdict::Over));
    let off = vec![line(What::Alarm, "9:00", "13:00")];
    let input = Input { off, night: String::new(), ..Input::blank() };
    let sheet = OffTonight::sheet(&input, &solve(&input).unwrap(), Basis::default());
    for key in ["alarms", "missing"] {
        let check = sheet.checks.iter().find(|check| check.key == key).unwrap();
        assert_eq!((check.verdict, check.asks), (Verdict::Ask, Asks::Missing), "{key}");
    }
}

/// 8:00 may be eight in the evening: that is asked, unless its line is plainly by 24 hours.
#[test]
fn a_time_of_either_half_of_a_day_asks() {
    for (off, back, note) in [
        ("8:00", "11:00", Some("8:00 is read as 8:00 am: write am or pm.")),
        ("8:00", "4:00 pm", Some("8:00 is read as 8:00 am: write am or pm.")),
        ("8 a.m.", "11:59", Some("11:59 is read as 11:59 am: write am or pm.")),
        ("12:30", "1:00", Some("1:00 is read as 1:00 am: write am or pm.")),
        ("08:00", "11:00", None),
        ("8:00", "13:00", None),
        ("0:30", "8:00", None),
        ("8:00 am", "11 A.M.", None),
        ("12:00 pm", "12:30 p.m.", None),
    ] {
        let alarm = [line(What::Alarm, off, back)];
        let missing = check(&alarm, "missing");
        let said = missing.and_then(|check| check.note).map(|it| say(&it));
        assert_eq!(said.as_deref(), note, "{off} {back}");
        if note.is_some() {
            assert_ne!(verdict(&alarm, "alarms"), Some(Verdict::Within), "{off} {back}");
        }
    }
    let cold = Line { cold: Cold::Fridge, ..line(What::Circuit, "8:00", "11:00") };
    assert_eq!(verdict(&[cold], "refrigerator"), Some(Verdict::Ask));
    let off = vec![line(What::Alarm, "9:00", "13:00")];
    let [night, morning] = ["9 pm", "6:00"].map(str::to_owned);
    let input = Input { off, night, morning };
    let sheet = OffTonight::sheet(&input, &solve(&input).unwrap(), Basis::default());
    assert_eq!(sheet.verdict(), Verdict::Ask);
    let note = sheet.checks.iter().find(|check| check.key == "missing").unwrap().note.clone();
    assert_eq!(say(&note.unwrap()), "6:00 is read as 6:00 am: write am or pm.");
}

/// One check for all circuits, which names those that nobody was asked about.
#[test]
fn one_check_tells_of_devices_on_all_circuits() {
    let of = |medical, named: &str| Line {
        medical,
        named: named.to_owned(),
        ..line(What::Circuit, "9:00", "13:00")
    };
    let tell = |lines: &[Line]| {
        let input = Input { off: lines.to_vec(), ..Input::blank() };
        let sheet = OffTonight::sheet(&input, &solve(&input).unwrap(), Basis::default());
        let name = say(&(&w::MEDICAL).into());
        let mut all = sheet.checks.iter().filter(|check| say(&check.name) == name);
        let check = all.next().unwrap();
        assert_eq!(all.count(), 0);
        (check.verdict, say(&check.told()), check.note.as_ref().map(say).unwrap_or_default())
    };
    let (asked, not) = (of(Medical::None, "Kitchen"), of(Medical::NotAsked, "Bath"));
    let unnamed = of(Medical::NotAsked, " ");
    assert_eq!(
        tell(std::slice::from_ref(&asked)),
        (Verdict::Within, "0, at most 0".into(), String::new())
    );
    assert_eq!(
        tell(&[asked, not.clone(), unnamed]),
        (Verdict::Ask, "2".into(), "Not asked yet: Bath, Circuit 3.".into())
    );
    assert_eq!(
        tell(&[not, of(Medical::Needs, "Bedroom")]),
        (Verdict::Over, "1, at most 0".into(), "Not asked yet: Bath.".into())
    );
}

#[test]
fn the_notice_tells_times_by_am_and_pm_with_their_day() {
    use crate::words::Language::{English, Spanish};
    let told = |line: Line, language| {
        let line = Line { who: String::new(), ..line };
        let input = Input { off: vec![line], ..Input::blank() };
        let sheet = OffTonight::sheet(&input, &solve(&input).unwrap(), Basis::default());
        let voice = Voice { language, ..Voice::default() };
        voice.say(&sheet.parts[0].rows[0].value).replace('\u{a0}', " ")
    };
    let late = line(What::Circuit, "22:00", "1:30");
    let dated_late = Line { off_day: Day::new(2026, 12, 1), ..late.clone() };
    for (line, want) in [
        (line(What::Circuit, "8:00", "13:00"), "off 8:00 am, back by 1:00 pm"),
        (line(What::Circuit, "0:05", "12:00"), "off 12:05 am the next day, back by noon"),
        (line(What::Circuit, "noon", "0:00"), "off noon, back by midnight the next day"),
        (late.clone(), "off 10:00 pm, back by 1:30 am the next day"),
        (dated_late, "off 10:00 pm on Tue Dec 1, 2026, back by 1:30 am on Wed Dec 2, 2026"),
        (
            dated(1, "8:00", 3, "17:00"),
            "off 8:00 am on Tue Dec 1, 2026, back by 5:00 pm on Thu Dec 3, 2026",
        ),
        (
            dated(1, "", 3, "17:00"),
            "off Tue Dec 1, 2026, time not given, back by 5:00 pm on Thu Dec 3, 2026",
        ),
        (line(What::Circuit, "", "6 oclock"), "off not given, back by not given"),
    ] {
        assert_eq!(told(line, English), want);
    }
    let want = "se apaga 10:00 pm, regresa antes de 1:30 am del día siguiente";
    assert_eq!(told(late, Spanish), want);
}

#[test]
fn the_headline_names_what_presses() {
    let head = |lines: &[Line]| {
        let input = Input { off: lines.to_vec(), ..Input::blank() };
        let sheet = OffTonight::sheet(&input, &solve(&input).unwrap(), Basis::default());
        assert_eq!(sheet.headline.amount, crate::words::Amount::Count(lines.len() as i64));
        say(&sheet.headline.value())
    };
    let (day, night) = (line(What::Room, "9:00", "13:00"), line(What::Alarm, "22:00", "1:00"));
    let device = Line { medical: Medical::Needs, ..line(What::Circuit, "9:00", "13:00") };
    assert_eq!(head(std::slice::from_ref(&day)), "1");
    assert_eq!(head(&[day.clone(), night.clone()]), "2, 1 overnight");
    assert_eq!(head(&[night, device, day.clone()]), "3, 1 with a medical device");
    assert_eq!(head(&[day, line(What::Gas, "9:00", "")]), "2, 1 without a time");
}

#[test]
fn what_somebody_lives_by_is_over_until_it_is_settled() {
    let of = |medical| [Line { medical, ..line(What::Circuit, "9:00", "10:00") }];
    assert_eq!(verdict(&of(Medical::Needs), "medical"), Some(Verdict::Over));
    assert_eq!(verdict(&of(Medical::None), "medical"), Some(Verdict::Within));
    // Its own power is good for so long, whatever that is.
    let own = check(&of(Medical::OwnPower), "medical").unwrap();
    assert_eq!((own.verdict, own.asks), (Verdict::Ask, Asks::First));
    assert_eq!(
        say(&own.note.unwrap()),
        "Circuit 1: does its own power last 1 h 0 min? Its maker says."
    );
    // Through both of two lines that go on from each other.
    let both = [
        Line { medical: Medical::OwnPower, ..line(What::Circuit, "4 am", "5 am") },
        Line { medical: Medical::OwnPower, ..line(What::Circuit, "10 pm", "4 am") },
    ];
    let note = check(&both, "medical").unwrap().note.map(|it| say(&it));
    assert_eq!(
        note.as_deref(),
        Some("Circuit 1: does its own power last 7 h 0 min? Its maker says.")
    );
    let untimed = [Line { medical: Medical::OwnPower, ..line(What::Circuit, "9:00", "") }];
    assert_eq!(verdict(&untimed, "medical"), Some(Verdict::Ask));
    let asked = check(&of(Medical::NotAsked), "medical").map(|check| (check.verdict, check.asks));
    assert_eq!(asked, Some((Verdict::Ask, Asks::Missing)));
    let way = |kept| [Line { kept, ..line(What::Way, "9:00", "10:00") }];
    assert_eq!(verdict(&way(false), "way"), Some(Verdict::Over));
    assert_eq!(verdict(&way(true), "way"), Some(Verdict::Within));
    assert_eq!(verdict(&[line(What::Gas, "9:00", "10:00")], "gas"), Some(Verdict::Ask));
    let cold = Line { frost: true, ..line(What::Heat, "9:00", "10:00") };
    assert_eq!(verdict(&[cold], "frost"), Some(Verdict::Ask));
    let pump = Line { sump: true, ..line(What::Circuit, "9:00", "10:00") };
    assert_eq!(verdict(&[pump], "sump"), Some(Verdict::Ask));
    let nobody = Line { who: " ".to_owned(), ..line(What::Room, "9:00", "10:00") };
    assert_eq!(check(&[nobody], "missing").map(|check| check.asks), Some(Asks::Missing));
}

#[test]
fn what_cannot_be_worked_is_told_at_its_field() {
    use crate::words::Language::{English, Spanish};
    let off = vec![
        line(What::Alarm, "9:00", "6 oclock"),
        Line { off_day: None, ..dated(2, "9:00", 1, "10:00") },
        Line { off_day: None, ..dated(2, "", 1, "") },
        dated(2, "", 1, ""),
        dated(2, "9:00", 2, "9:00"),
        dated(2, "9:00", 2, ""),
        line(What::Room, "", ""),
    ];
    let input = Input { off, night: "bedtime".to_owned(), ..Input::blank() };
    let answer = solve(&input).unwrap();
    assert_eq!(answer.spans, [None; 7], "none counts as known");
    let faults = left_out(&input);
    let told = |language| {
        let voice = Voice { language, ..Voice::default() };
        faults.iter().map(|it| (&*it.path, voice.say(&it.says))).collect::<Vec<_>>()
    };
    let read = |typed| format!("Can't read “{typed}” as a time. Write it like 14:10 or 2:10 pm.");
    let day = "Put in the day it goes off.".to_owned();
    let early = "Back must be later than off.".to_owned();
    let want = [
        ("night", read("bedtime")),
        ("off.0.back_time", read("6 oclock")),
        ("off.1.off_day", day.clone()),
        ("off.2.off_day", day),
        ("off.3.back_day", early.clone()),
        ("off.4.back_time", early),
    ];
    assert_eq!(told(English), want);
    assert_eq!(told(Spanish)[3].1, "Ponga el día en que se apaga.");
    let short = [line(What::Room, "", ""), line(What::Room, "9:00", "")];
    assert_eq!(check(&short, "missing").map(|check| check.value), Some(2_i64.into()));
    assert_eq!(solve(&Input::blank()).unwrap_err()[0].path, "off");
}

/// The notice tells a plan: in no language does it say that anything is dead or safe to touch.
#[test]
fn the_notice_says_by_plan_and_never_dead() {
    use crate::words::Language::{English, Spanish};
    let mut input = Input::sample();
    let named = "Upstairs bath".to_owned();
    input.off.push(Line { named, ..line(What::ColdWater, "9:00", "12:00") });
    let sheet = OffTonight::sheet(&input, &solve(&input).unwrap(), Basis::default());
    assert_eq!(sheet.parts[0].key, FOREMOST, "it is printed and handed over");
    for language in [English, Spanish] {
        let voice = Voice { language, ..Voice::default() };
        let part = &sheet.parts[0];
        let rows = part.rows.iter().flat_map(|row| [&row.name, &row.value]);
        for text in rows.chain([&part.title]).chain(&part.note).chain(&sheet.next) {
            let said = voice.say(text).to_lowercase();
            for never in ["dead", "safe", "sin corriente", "segur"] {
                assert!(!said.contains(never), "{said}");
            }
        }
        assert!(voice.say(&sheet.parts[0].title).to_lowercase().contains("plan"));
    }
    let names: Vec<_> =
        sheet.parts[0].rows.iter().map(|row| Voice::default().say(&row.name)).collect();
    assert_eq!(names, ["Cold water · Upstairs bath", "Circuit · Kitchen"]);
}

proptest! {
    /// Against a look at every minute.
    #[test]
    fn nights_are_as_a_clock_counts_them(
        from in -3_000_i64..3_000, long in 0_i64..2_000, night in 0_i64..1440, morning in 0_i64..1440,
    ) {
        let clock = |at: i64| format!("{}:{:02}", at / 60, at % 60);
        let input = Input { night: clock(night), morning: clock(morning), ..Input::blank() };
        let sleeps = |minute: i64| {
            let at = minute.rem_euclid(1440);
            if night < morning { night <= at && at < morning } else { night <= at || at < morning }
        };
        let want = (from..from + long).any(sleeps);
        prop_assert_eq!(input.is_overnight([from, from + long]), Some(want));
    }

    /// Whatever is typed and left empty.
    #[test]
    fn an_alarm_without_a_whole_span_is_never_within(
        times in prop::collection::vec(
            prop::array::uniform2("|[0-9]{1,2}:[0-5][0-9]|[0-9]{1,2} ?[ap]m|.{0,6}"), 1..4,
        ),
        days in prop::array::uniform2(prop::option::of(1_u8..4)),
        night in "|22:00|9:00|10 pm",
    ) {
        let of = |[off, back]: &[String; 2]| {
            let [off_day, back_day] = days.map(|day| day.and_then(|day| Day::new(2026, 12, day)));
            Line { off_day, back_day, ..line(What::Alarm, off, back) }
        };
        let input = Input { off: times.iter().map(of).collect(), night, ..Input::blank() };
        let Ok(answer) = solve(&input) else { return Ok(()) };
        let sheet = OffTonight::sheet(&input, &answer, Basis::default());
        let check = sheet.checks.iter().find(|check| check.key == "alarms").unwrap();
        let is_known = input.off.iter().all(|line| line.span().is_some());
        if !is_known || input.night.is_empty() {
            prop_assert_ne!(check.verdict, Verdict::Within);
            prop_assert!(sheet.checks.iter().any(|check| check.key == "missing"));
        }
    }

    #[test]
    fn lines_stand_by_when_they_are_back_and_later_is_never_better(
        times in prop::collection::vec((0_i64..1440, 1_i64..2_000, any::<bool>()), 1..8),
        more in 0_i64..600,
    ) {
        let day = |at: i64| Day::new(2026, 12, 1 + u8::try_from(at / 1440).unwrap());
        let clock = |at: i64| format!("{:02}:{:02}", at / 60 % 24, at % 60);
        let of = |more: i64| {
            let line = |(off, long, timed): &(i64, i64, bool)| {
                let back = off + long + more;
                let until = if *timed { clock(back) } else { String::new() };
                let times = line(What::Alarm, &clock(*off), &until);
                Line { off_day: day(*off), back_day: day(back), ..times }
            };
            Input { off: times.iter().map(line).collect(), ..Input::blank() }
        };
        let (early, late) = (solve(&of(0)).unwrap(), solve(&of(more)).unwrap());
        let back = |at: &usize| early.spans[*at].map_or(i64::MAX, |it| it[1]);
        let backs: Vec<_> = early.order.iter().map(back).collect();
        prop_assert!(backs.is_sorted());
        let mut places = early.order.clone();
        places.sort_unstable();
        prop_assert_eq!(places, (0..times.len()).collect::<Vec<_>>());
        for (early, late) in early.overnight.iter().zip(&late.overnight) {
            prop_assert!(early <= late);
        }
    }
}
