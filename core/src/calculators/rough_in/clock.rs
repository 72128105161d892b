//! Times of day as a crew writes them, and what is wrong with those of a dead test. They are notes: what
//! can't be read is told at its field, stays as it was typed, and keeps nothing else from being worked.

use super::graph::fault;
use super::input::{Input, Proof};
use super::words as w;
use crate::say;
use crate::sheet::Faults;

/// Minutes past midnight of `14:10`, `9:05`, `2:10 pm` or `2 p.m.`; none of what is no time of day.
pub(super) fn minutes(typed: &str) -> Option<i64> {
    let typed = typed.trim().to_ascii_lowercase().replace('.', "");
    let half = |mark: &str, from: i64| typed.strip_suffix(mark).map(|rest| (rest.trim_end(), from));
    let told = half("am", 0).or_else(|| half("pm", 12));
    let (clock, from) = told.unwrap_or((&typed, 0));
    let (hours, minutes) = match clock.split_once(':') {
        Some((hours, minutes)) if minutes.len() == 2 => (hours, minutes),
        // An hour alone is one where it is said which half of the day is meant.
        None if told.is_some() => (clock, "0"),
        _ => return None,
    };
    let digits = |text: &str, most: i64| {
        let is_read = (1..=2).contains(&text.len()) && text.bytes().all(|it| it.is_ascii_digit());
        text.parse::<i64>().ok().filter(|it| is_read && *it <= most)
    };
    let (hours, minutes) = (digits(hours, 23)?, digits(minutes, 59)?);
    match told {
        Some(_) if !(1..=12).contains(&hours) => None,
        Some(_) => Some((hours % 12 + from) * 60 + minutes),
        None => Some(hours * 60 + minutes),
    }
}

/// `14:10` of what can be read, else as it was typed.
pub(super) fn told(typed: &str) -> String {
    let two = |count: i64| [if count < 10 { "0" } else { "" }, &count.to_string()].concat();
    match minutes(typed) {
        Some(at) => [two(at / 60), two(at % 60)].join(":"),
        None => typed.trim().to_owned(),
    }
}

/// Times that can't be read, and power that came back before it was tested.
pub(super) fn faults(input: &Input) -> Faults {
    let mut faults = Faults::new();
    for (at, run) in input.cables.iter().enumerate() {
        let Proof { dead, dead_time, live, live_time, .. } = &run.proof;
        for (key, typed) in [("proof.dead_time", dead_time), ("proof.live_time", live_time)] {
            if !typed.trim().is_empty() && minutes(typed).is_none() {
                faults.push(fault("cables", at, key, &w::TIME, typed, (&w::NO_TIME).into()));
            }
        }
        let Some((dead, live)) = dead.zip(*live) else { continue };
        let says = |time: &str| {
            let then = [dead.exact(), told(time)].join(" ");
            say!(w::BEFORE_TESTED, then.trim())
        };
        if live < dead {
            let given = live.exact();
            faults.push(fault("cables", at, "proof.live", &w::LIVE_DAY, &given, says("")));
        } else if let (true, Some(tested), Some(back)) =
            (live == dead, minutes(dead_time), minutes(live_time))
            && back < tested
        {
            let says = says(dead_time);
            faults.push(fault("cables", at, "proof.live_time", &w::TIME, live_time, says));
        }
    }
    faults
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::calculators::rough_in::Run;
    use crate::fields::Form;
    use crate::measure::Day;
    use crate::words::Voice;
    use proptest::prelude::*;

    #[test]
    fn a_time_of_day_is_read_as_crews_write_it() {
        for (typed, want) in [
            ("14:10", "14:10"),
            (" 9:05 ", "09:05"),
            ("0:00", "00:00"),
            ("23:59", "23:59"),
            ("2:10 pm", "14:10"),
            ("2 p.m.", "14:00"),
            ("12:30am", "00:30"),
            ("12 PM", "12:00"),
        ] {
            assert!(minutes(typed).is_some(), "{typed}");
            assert_eq!(told(typed), want);
        }
        let odd =
            ["25:70", "quarter", "24:00", "9:60", "9", "9:5", "13 pm", "0 am", "-1:00", "+9:05"];
        for typed in odd {
            assert_eq!((minutes(typed), told(typed)), (None, typed.to_owned()));
        }
    }

    #[test]
    fn power_comes_back_after_a_test_and_odd_times_are_told() {
        let mut input = Input::sample();
        let told = |input: &Input| -> Vec<(String, String)> {
            let say = |it: &crate::sheet::Fault| (it.path.clone(), Voice::default().say(&it.says));
            faults(input).iter().map(say).collect()
        };
        let day = |day| Day::new(2026, 11, day);
        let proof = |dead: u8, dead_time: &str, live: u8, live_time: &str| Proof {
            dead: day(dead),
            dead_time: dead_time.to_owned(),
            live: day(live),
            live_time: live_time.to_owned(),
            ..Proof::blank()
        };
        for good in [
            proof(24, "14:10", 24, "14:10"),
            proof(24, "2:10 pm", 25, "7:00"),
            proof(24, "", 24, "1:00"),
        ] {
            input.cables[1].proof = good;
            assert_eq!(told(&input), []);
        }
        input.cables[1].proof = proof(24, "14:10", 23, "15:00");
        let says = "Before it was tested dead, 2026-11-24. One of the two is wrong.";
        assert_eq!(told(&input), [("cables.1.proof.live".to_owned(), says.to_owned())]);
        input.cables[1].proof = proof(24, "2:10 pm", 24, "14:09");
        let says = "Before it was tested dead, 2026-11-24 14:10. One of the two is wrong.";
        assert_eq!(told(&input), [("cables.1.proof.live_time".to_owned(), says.to_owned())]);
        input.cables[1].proof = proof(24, "quarter", 24, "25:70");
        let paths: Vec<String> = told(&input).into_iter().map(|it| it.0).collect();
        assert_eq!(paths, ["cables.1.proof.dead_time", "cables.1.proof.live_time"]);
        let Run { proof, .. } = &input.cables[1];
        assert_eq!(proof.dead_time, "quarter", "nothing is lost");
    }

    proptest! {
        #[test]
        fn any_text_is_read_or_told_and_every_minute_is_read_back(text in ".{0,8}", at in 0_i64..1440) {
            prop_assert!(minutes(&text).is_none_or(|it| (0..1440).contains(&it)));
            let clock = format!("{}:{:02}", at / 60, at % 60);
            prop_assert_eq!(minutes(&clock), Some(at));
            prop_assert_eq!(minutes(&told(&clock)), Some(at));
        }
    }
}
