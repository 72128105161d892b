//! What was bought: ticked, told as it stood then, and kept in sight when no number asks for it any
//! more.

use super::{About, Got, Line, in_field, read_price, said_of, times};
use crate::job::edit::Edit;
use crate::job::jot::Jot;
use crate::job::site::Job;
use crate::job::words as w;
use crate::measure::Measure;
use crate::say;
use crate::words::{Amount, Phrase, Text, Voice};

/// What was bought, and no number of the job asks for any more: its length changed, its mark went, or
/// none of it counts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Bought {
    /// The material's key.
    pub key: String,
    /// What, and how much of it, as it was told when it was ticked; its key, where it was ticked
    /// before that was kept.
    pub says: Text,
    /// How much, and when.
    pub got: Got,
    /// What that costs, where a price of it is kept.
    pub cost: Option<Measure>,
}

/// What stands over all of it.
pub fn bought_before() -> &'static Phrase {
    &w::BOUGHT_BEFORE
}

/// Between how much was bought and what it is called.
const THEN: char = '\t';

impl Line {
    /// The edit that ticks it: all of it is there. What it is called is kept beside, in the words of
    /// the day, for when no number of the job can tell it any more.
    pub fn ticked(&self, voice: Voice) -> Edit {
        let (got, how_much) = (self.buys.exact(), self.says());
        let told = voice.say(&say!(w::WHAT_AND_HOW_MUCH, self.name.clone(), how_much));
        let told = [&*got, &*told].join(&*THEN.to_string());
        let jot = |about, says| Edit::Jot { key: said_of(about, &self.key), says };
        Edit::Several(vec![jot(About::Told, told), jot(About::Got, got)])
    }
}

impl Bought {
    /// The edit that ticks it again.
    pub fn ticked(&self) -> Edit {
        Edit::Jot { key: said_of(About::Got, &self.key), says: self.got.amount.exact() }
    }
}

/// What was bought and is on no line that counts.
pub(super) fn bought(job: &Job, lines: &[Line]) -> Vec<Bought> {
    let prefix = said_of(About::Got, "");
    let of = |jot: &Jot| {
        let key = jot.key.strip_prefix(&prefix)?;
        let amount = Amount::from_exact(&jot.says).filter(|amount| amount.raw() > 0)?;
        let got = Got { amount, at: jot.at };
        let is_on = |line: &Line| line.key == key && line.is_counted() && line.got == Some(got);
        if lines.iter().any(is_on) {
            return None;
        }
        // Told of another tick, it would tell another amount.
        let told = job.jotted(&said_of(About::Told, key)).split_once(THEN);
        let says = match told.filter(|(of, _)| *of == jot.says) {
            Some((_, told)) => say!(w::AS_TYPED, told),
            None => say!(w::WHAT_AND_HOW_MUCH, key, amount),
        };
        let price = read_price(in_field(job, About::Price, key)).ok();
        let cost = price.map(|price| times(price, amount));
        Some(Bought { key: key.to_owned(), says, got, cost })
    };
    job.jots.iter().filter_map(of).collect()
}
