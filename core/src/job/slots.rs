//! Which of several copies of a job holds, where each store keeps one or two of them.
//!
//! The highest revision that is whole wins, whatever any clock says. What can't be read is told,
//! copy by copy, so that its bytes can be set aside before anything takes their place.

use super::DEMO_ID;
use super::record::{self, Head, RecordProblem};
use super::site::Job;

/// What the copies of one job come to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Judged {
    /// The place of the copy that holds, and what it says.
    pub latest: Option<(usize, Head, Job)>,
    /// The revision and schema of a whole copy that came from a newer program and is past every
    /// other. Nothing of this job may be written then.
    pub newer: Option<Head>,
    /// The places of the copies that can't be read, and why.
    pub bad: Vec<(usize, RecordProblem)>,
}

/// Reads the copies of the job of this id, none where there is none. Of two that are the same
/// revision the first holds.
pub fn judge(id: &str, copies: &[Option<&str>]) -> Judged {
    let mut judged = Judged::default();
    let mut whole: Vec<(usize, Head)> = Vec::new();
    for (at, text) in copies.iter().enumerate() {
        match text.map(record::open) {
            None => {}
            Some(Err(problem)) => judged.bad.push((at, problem)),
            Some(Ok((head, _))) => {
                let place = whole.partition_point(|(_, other)| other.revision >= head.revision);
                whole.insert(place, (at, head));
            }
        }
    }
    // Only what may win is read to its end: the rest are older, and whole.
    for (at, head) in whole {
        if head.schema > record::SCHEMA {
            judged.newer = Some(head);
            break;
        }
        match record::read(copies[at].unwrap_or_default()) {
            // Under another's name it would be written over by that other.
            Ok((_, job)) if job.id != id || id == DEMO_ID => {
                judged.bad.push((at, RecordProblem::Foreign));
            }
            Ok((head, job)) => {
                judged.latest = Some((at, head, job));
                break;
            }
            Err(problem) => judged.bad.push((at, problem)),
        }
    }
    judged
}

/// Whether a copy that can't be read says that it is a later writing than the one that holds: what
/// was saved last is missing then, if it says so rightly.
pub fn may_be_later(copy: &str, holds: &Head) -> bool {
    record::claimed_revision(copy).is_some_and(|revision| revision > holds.revision)
}

/// The revision of a copy that is whole; 0 where there is none, or none that can be read.
pub fn revision_of(copy: Option<&str>) -> u64 {
    copy.and_then(|text| record::open(text).ok()).map_or(0, |(head, _)| head.revision)
}

/// Which of two slots is written next, 0 or 1, by their revisions: never the one that holds the
/// later whole copy.
pub fn next_slot(revisions: [u64; 2]) -> usize {
    usize::from(revisions[0] > revisions[1])
}

#[cfg(test)]
mod tests {
    use super::super::samples;
    use super::*;
    use proptest::prelude::*;

    fn copy(revision: u64) -> String {
        record::write(&samples::job(), &Head::new(revision, "phone", 0))
    }

    fn newer(revision: u64) -> String {
        let of_today = copy(revision);
        let (_, json) = of_today.split_once('\n').unwrap();
        let head = Head { schema: record::SCHEMA + 1, ..Head::new(revision, "phone", 0) };
        record::seal(&head, json)
    }

    #[test]
    fn the_highest_whole_revision_holds() {
        let id = samples::job().id;
        let (three, four) = (copy(3), copy(4));
        let torn = &four[..four.len() - 9];
        let flipped = four.replace("Workshop", "Worksnop");
        let whose = |copies: &[Option<&str>]| {
            judge(&id, copies).latest.map(|(at, head, _)| (at, head.revision))
        };
        assert_eq!(whose(&[Some(&three), Some(&four), None]), Some((1, 4)));
        assert_eq!(whose(&[Some(&four), None, Some(&four)]), Some((0, 4)), "the first of two");
        for bad in [torn, &flipped, "{}", ""] {
            let judged = judge(&id, &[Some(bad), Some(&three), None]);
            assert_eq!(judged.latest.map(|(at, ..)| at), Some(1), "{bad:.20}");
            assert_eq!(judged.bad.len(), 1);
            assert_eq!(judged.bad[0].0, 0);
        }
        assert_eq!(judge(&id, &[None, None]), Judged::default());
        assert_eq!(judge("other", &[Some(&three)]).bad, [(0, RecordProblem::Foreign)]);
    }

    #[test]
    fn a_bad_copy_may_be_later_than_the_one_that_holds() {
        let (three, four) = (copy(3), copy(4));
        let torn = &four[..four.len() - 9];
        let flipped = four.replace("Workshop", "Worksnop");
        let later = |copy: &str, holds: u64| may_be_later(copy, &Head::new(holds, "phone", 0));
        assert!(later(torn, 3) && later(&flipped, 3));
        assert!(!later(torn, 4) && !later(&three, 3));
        for nothing in ["", "{}", "ledgerboard", "ledgerboard 2", "ledgerboard x 9", "other 2 9"] {
            assert!(!later(nothing, 0), "{nothing}");
        }
    }

    #[test]
    fn a_newer_program_s_copy_shuts_the_job_only_while_it_is_past_the_others() {
        let id = samples::job().id;
        let (three, four) = (copy(3), copy(4));
        let shut = judge(&id, &[Some(&three), Some(&newer(4))]);
        assert_eq!((shut.latest, shut.newer.map(|head| head.revision)), (None, Some(4)));
        let open = judge(&id, &[Some(&four), Some(&newer(3))]);
        assert_eq!((open.latest.map(|(at, ..)| at), open.newer), (Some(0), None));
    }

    #[test]
    fn slots_are_written_in_turn_and_the_bad_one_first() {
        let next = |slots: [Option<&str>; 2]| next_slot(slots.map(revision_of));
        let (three, four) = (copy(3), copy(4));
        assert_eq!(next([None, None]), 0);
        assert_eq!(next([Some(&three), None]), 1);
        assert_eq!(next([Some(&three), Some(&four)]), 0);
        assert_eq!(next([Some(&four), Some("torn")]), 1);
        assert_eq!(next([Some("torn"), Some(&four)]), 0);
    }

    proptest! {
        /// Any one byte of the later copy changed: the earlier one holds, and the loss is told.
        #[test]
        fn no_changed_byte_wins(at: prop::sample::Index, to in 1_u8..128) {
            let (three, four) = (copy(3), copy(4));
            let mut bytes = four.clone().into_bytes();
            let at = at.index(bytes.len());
            prop_assume!(bytes[at].is_ascii() && bytes[at] != to);
            bytes[at] = to;
            let bad = String::from_utf8(bytes).unwrap();
            let judged = judge(&samples::job().id, &[Some(&bad), Some(&three)]);
            prop_assert_eq!(judged.latest.map(|(at, ..)| at), Some(1));
            prop_assert_eq!(judged.bad.len(), 1);
        }
    }
}
