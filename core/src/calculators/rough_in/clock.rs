//! What is wrong with the times of a dead test. They are notes: what
//! can't be read is told at its field, stays as it was typed, and keeps nothing else from being worked.

use super::counted::fault;
use super::input::{Input, Proof};
use super::words as w;
use crate::measure::time_of_day::{minutes, told};
use crate::say;
use crate::sheet::Faults;

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
}
