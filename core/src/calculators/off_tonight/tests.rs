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
    ] {
        assert_eq!(long(&line(What::Circuit, off, back)), Some(want), "{off} {back}");
    }
    assert_eq!(long(&dated(1, "22:00", 2, "6:00")), Some(480));
    assert_eq!(long(&dated(1, "8:00", 3, "8:00")), Some(2880));
    assert_eq!(long(&dated(2, "8:00", 2, "8:00")), Some(0));
    assert_eq!(long(&dated(2, "8:00", 2, "7:59")), None);
    assert_eq!(long(&Line { off_day: None, ..dated(2, "8:00", 2, "9:00") }), None);
    let year = Line { back_day: Day::new(2027, 1, 1), ..dated(31, "23:30", 31, "0:30") };
    assert_eq!(long(&year), Some(60));
    assert_eq!(long(&line(What::Circuit, "noon", "16:00")), None);
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
            assert_eq!(verdict(&[Line { what: What::Gas, ..lines[0].clone() }], key), None);
        }
    }
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
    let night = line(What::Alarm, "9:00", "13:00");
    let input = Input { off: vec![night], night: "noon".to_owned(), ..Input::blank() };
    assert_eq!(solve(&input).unwrap().overnight, [true], "a night that can't be read is all day");
    assert_eq!(left_out(&input)[0].path, "night");
}

#[test]
fn what_somebody_lives_by_is_over_until_it_is_settled() {
    let of = |medical| [Line { medical, ..line(What::Circuit, "9:00", "10:00") }];
    assert_eq!(verdict(&of(Medical::Needs), "medical"), Some(Verdict::Over));
    for settled in [Medical::None, Medical::OwnPower] {
        assert_eq!(verdict(&of(settled), "medical"), Some(Verdict::Within));
        assert_eq!(verdict(&of(settled), "asked"), None);
    }
    let asked = check(&of(Medical::NotAsked), "asked").map(|check| (check.verdict, check.asks));
    assert_eq!(asked, Some((Verdict::Ask, Asks::Missing)));
    assert_eq!(verdict(&of(Medical::NotAsked), "medical"), None);
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
fn times_that_cannot_be_read_are_told_and_asked_for() {
    let odd =
        [line(What::Alarm, "9:00", "late"), dated(2, "9:00", 1, "10:00"), line(What::Room, "", "")];
    assert_eq!(check(&odd, "missing").map(|check| check.value), Some(3_i64.into()));
    let faults = left_out(&Input { off: odd.to_vec(), ..Input::blank() });
    let told: Vec<_> =
        faults.iter().map(|it| (&*it.path, Voice::default().say(&it.says))).collect();
    assert_eq!(told, [("off.0.back_time", "14:10, or 2:10 pm.".to_owned())]);
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
        prop_assert_eq!(input.is_overnight([from, from + long]), want);
    }

    #[test]
    fn lines_stand_by_when_they_are_back_and_later_is_never_better(
        times in prop::collection::vec((0_i64..1440, 0_i64..2_000, any::<bool>()), 1..8),
        more in 0_i64..600,
    ) {
        let day = |at: i64| Day::new(2026, 12, 1 + u8::try_from(at / 1440).unwrap());
        let clock = |at: i64| format!("{}:{:02}", at / 60 % 24, at % 60);
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
