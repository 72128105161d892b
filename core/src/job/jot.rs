//! A few words kept about a job under a name: that something is bought, what a person pays for it,
//! what an owner said of a number.

use super::clock::{Clock, Order};
use super::refusal::{LONGEST_JOT, LONGEST_KEY, Refusal, fits};
use super::site::Job;
use super::stamp::{Moment, Stamp};
use super::words as w;

/// Words under a name. Cleared ones stay as a trace with nothing to say, so that an older copy
/// does not bring them back.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Jot {
    /// What they are about, such as `got staple`: printable ASCII.
    pub key: String,
    /// The words; empty when cleared.
    pub says: String,
    /// When they were written.
    pub at: Moment,
    /// How often each device has changed them.
    pub clock: Clock,
}

impl Jot {
    /// What is known of a name that nothing was ever said about.
    pub(super) fn nothing(key: &str) -> Self {
        Self {
            key: key.to_owned(),
            says: String::new(),
            at: Moment { at: 0, zone: 0 },
            clock: Clock::default(),
        }
    }

    pub(super) fn check(&self) -> Result<(), Refusal> {
        if !nameable(&self.key) {
            return Err(Refusal::BadId(self.key.clone()));
        }
        fits(&w::A_JOT, &self.says, LONGEST_JOT)
    }

    /// Of two the one that holds, with what both know: the later one, whichever side is asked.
    pub(super) fn joined(&self, other: &Self) -> Self {
        let rank = |jot: &Self| (jot.at.at, jot.at.zone, jot.says.clone());
        let stays = match self.clock.versus(&other.clock) {
            Order::After => self,
            Order::Before => other,
            Order::Same | Order::Aside if rank(self) >= rank(other) => self,
            Order::Same | Order::Aside => other,
        };
        let mut clock = self.clock.clone();
        clock.join(&other.clock);
        Self { clock, ..stays.clone() }
    }
}

/// Whether a name can be kept.
pub(super) fn nameable(key: &str) -> bool {
    (1..=LONGEST_KEY).contains(&key.len()) && key.bytes().all(|byte| (b' '..=b'~').contains(&byte))
}

impl Job {
    /// What is said under a name; empty where nothing is.
    pub fn jotted(&self, key: &str) -> &str {
        self.jot(key).map_or("", |jot| jot.says.as_str())
    }

    /// The words under a name, with their day.
    pub fn jot(&self, key: &str) -> Option<&Jot> {
        self.jot_at(key).ok().and_then(|at| self.jots.get(at))
    }

    /// The words under a name, with their day, where they were not cleared.
    pub fn written(&self, key: &str) -> Option<&Jot> {
        self.jot(key).filter(|jot| !jot.says.is_empty())
    }

    pub(super) fn jot_at(&self, key: &str) -> Result<usize, usize> {
        self.jots.binary_search_by(|jot| jot.key.as_str().cmp(key))
    }

    /// Puts it in its place; one that nobody ever wrote leaves it.
    pub(super) fn put_jot(&mut self, jot: Jot) {
        let is_nothing = jot.clock == Clock::default();
        match self.jot_at(&jot.key) {
            Ok(at) if is_nothing => drop(self.jots.remove(at)),
            Ok(at) => self.jots[at] = jot,
            Err(at) if !is_nothing => self.jots.insert(at, jot),
            Err(_) => {}
        }
    }
}

/// Says it under a name, and gives back what was said.
pub(super) fn jot(
    job: &mut Job,
    key: String,
    says: String,
    stamp: &Stamp,
) -> Result<String, Refusal> {
    let before = job.jot(&key).cloned().unwrap_or_else(|| Jot::nothing(&key));
    let mut now = Jot { says, at: stamp.moment(), ..before.clone() };
    now.check()?;
    now.clock.bump(&stamp.device);
    job.put_jot(now);
    Ok(before.says)
}

#[cfg(test)]
mod tests {
    use super::super::samples::{job, stamp};
    use super::super::{Edit, apply};
    use super::*;

    fn said(says: &str, step: u64) -> Jot {
        let mut clock = Clock::default();
        clock.bump(&stamp(step).device);
        Jot { key: "got staple".into(), says: says.into(), at: stamp(step).moment(), clock }
    }

    #[test]
    fn what_is_cleared_leaves_a_trace_and_nothing_to_read() {
        let mut job = job();
        let put = |says: &str| Edit::Jot { key: "got plate".into(), says: says.into() };
        let undo = apply(&mut job, put("yes"), &stamp(1)).unwrap();
        assert_eq!(job.jotted("got plate"), "yes");
        assert_eq!(apply(&mut job, undo, &stamp(3)).unwrap(), put("yes"));
        assert_eq!(job.jotted("got plate"), "");
        assert_eq!(job.jot("got plate").unwrap().clock.count(&stamp(1).device), 2);
        assert_eq!(job.jotted("never said"), "");
    }

    #[test]
    fn of_two_the_later_holds_on_both_sides() {
        let (one, other) = (said("12.50", 1), said("13", 4));
        assert_eq!(one.joined(&other), other.joined(&one));
        assert_eq!(one.joined(&other).says, "13");
        let again = Jot { clock: one.joined(&other).clock, ..said("11", 0) };
        assert_eq!(again.joined(&other).says, "11", "it knew of the other");
    }

    #[test]
    fn a_name_is_printable_and_short_and_words_have_an_end() {
        let mut job = job();
        let long = "x".repeat(LONGEST_KEY + 1);
        for key in ["", "é", "a\nb", &long] {
            let edit = Edit::Jot { key: key.into(), says: "yes".into() };
            assert!(matches!(apply(&mut job, edit, &stamp(1)), Err(Refusal::BadId(_))), "{key}");
        }
        let edit = Edit::Jot { key: "price".into(), says: "9".repeat(LONGEST_JOT + 1) };
        assert!(matches!(apply(&mut job, edit, &stamp(1)), Err(Refusal::TooLong { .. })));
    }
}
