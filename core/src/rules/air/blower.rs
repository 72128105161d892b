//! How much pressure a house's blower is made for.

use crate::measure::Measure;
use crate::measure::unit::IN_WC;
use crate::rules::compare::{Limit, ask, at_most};
use crate::sheet::{Check, Confidence, Source, Verdict};
use crate::words;
use crate::words::Text;

words! {
    SAYS = "What the ducts, coil and filter take together stays within the blower's nameplate, often 0.5 in wc.";
    SEEN = "common practice; the nameplate says what holds";
    ASK = "These ducts alone take more than many blowers are made for. Check sizes; ask the HVAC sub.";
}

/// Where the habit stands.
pub static NAMEPLATE: Source = Source {
    key: "blower-nameplate",
    clause: "Equipment nameplate, external static pressure",
    says: &SAYS,
    seen: &SEEN,
    confidence: Confidence::CommonPractice,
};

const OFTEN: Limit<Measure> = Limit { value: Measure::hundredths(&IN_WC, 50), source: &NAMEPLATE };

/// A habit only asks.
pub fn check(key: &str, name: Text, pressure: Measure) -> Check {
    let check = at_most(key, name, pressure, OFTEN);
    if check.verdict == Verdict::Over { ask(check, &ASK) } else { check }
}
