//! Which inputs of a mark still said what a calculator's sample put there when it was saved. Noted
//! beside the mark, so that it is still told a week later.

use super::edit::Edit;
use super::mark::Mark;
use super::refusal::LONGEST_JOT;
use super::site::Job;
use crate::catalog;
use crate::measure::Units;

/// Says that all of it is a person's own, though it is the sample word for word.
const OWN: &str = "-";

/// The name that it is noted under.
fn key(mark: &str) -> String {
    ["sample ", mark].concat()
}

impl Job {
    /// The inputs of a mark, by path, that are still the sample's.
    pub fn still_sample(&self, mark: &str) -> Vec<String> {
        let paths = self.jotted(&key(mark)).split(' ');
        paths.filter(|path| !path.is_empty() && *path != OWN).map(str::to_owned).collect()
    }

    /// Whether a person said that a mark is their own, though it is the sample word for word.
    pub fn is_said_own(&self, mark: &str) -> bool {
        self.jotted(&key(mark)) == OWN
    }

    /// Whether all of a mark is a calculator's sample, as nobody's job is: nobody touched it, nor said
    /// that it is theirs.
    pub fn is_sample(&self, mark: &Mark) -> bool {
        let is_all = || {
            catalog::find(&mark.calculator).is_some_and(|entry| {
                entry.canonical(&entry.sample(), Units::Customary).as_ref() == Ok(&mark.input)
            })
        };
        !self.invented && !self.is_said_own(&mark.id) && is_all()
    }

    /// Notes it; none where the same is noted already.
    pub fn note_sample(&self, mark: &str, paths: &[String], is_sample: bool) -> Option<Edit> {
        let mut says = String::new();
        for path in paths {
            if says.len() + 1 + path.len() > LONGEST_JOT {
                break;
            }
            if !says.is_empty() {
                says.push(' ');
            }
            says.push_str(path);
        }
        if paths.is_empty() && is_sample {
            says.push_str(OWN);
        }
        let key = key(mark);
        (self.jotted(&key) != says).then_some(Edit::Jot { key, says })
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples::{job, mark, stamp};
    use super::super::{Job, apply, hand_over};

    #[test]
    fn what_is_still_the_samples_is_told_of_a_saved_mark_until_it_isnt() {
        let (mut job, id) = (job(), mark(1).id);
        assert!(job.still_sample(&id).is_empty());
        assert_eq!(job.note_sample(&id, &[], false), None, "nothing to say");
        let paths = ["stud", "boxes.0.height"].map(str::to_owned);
        let note = job.note_sample(&id, &paths, false).unwrap();
        let undo = apply(&mut job, note, &stamp(10)).unwrap();
        assert_eq!(job.still_sample(&id), paths);
        assert_eq!(job.note_sample(&id, &paths, false), None, "it says so already");
        let own = job.note_sample(&id, &[], true).unwrap();
        apply(&mut job, own, &stamp(11)).unwrap();
        assert!(job.is_said_own(&id) && job.still_sample(&id).is_empty());
        apply(&mut job, undo, &stamp(12)).unwrap();
        assert!(!job.is_said_own(&id) && job.still_sample(&id).is_empty());
        // More than can be noted is noted as far as it goes.
        let many: Vec<String> = (0..500).map(|at| format!("boxes.{at}.height")).collect();
        let note = job.note_sample(&id, &many, false).unwrap();
        apply(&mut job, note, &stamp(13)).unwrap();
        assert!(many.starts_with(&job.still_sample(&id)));
        assert!(job.still_sample(&id).len() > 30);
    }

    #[test]
    fn it_goes_with_a_mark_to_another_job() {
        let (mut from, id) = (job(), mark(1).id);
        let mut to = Job::new("4 Plumbline Court", "", &stamp(20)).unwrap();
        let note = from.note_sample(&id, &["span".to_owned()], false).unwrap();
        apply(&mut from, note, &stamp(21)).unwrap();
        hand_over(&mut from, &mut to, &id, &stamp(22)).unwrap();
        assert_eq!(to.still_sample(&id), ["span"]);
    }
}
