//! Kept numbers found by a few letters of what was written about them.

use super::fold::fold;
use super::mark::Mark;
use super::site::Job;
use crate::catalog;
use crate::words::Voice;

/// A kept number that was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Found<'a> {
    /// Its job.
    pub job: &'a Job,
    /// The mark.
    pub mark: &'a Mark,
}

/// The marks that have every word of `typed` somewhere in their title, spot, note or answer, in
/// their calculator's name or in the name or place of their job; first those with more of the words
/// whole in their title or their job's name, then the newest. Capitals make no difference. Nothing
/// typed finds nothing. Gives at most `most`, and how many there are.
pub fn find<'a>(
    jobs: &'a [Job],
    typed: &str,
    most: usize,
    voice: Voice,
) -> (Vec<Found<'a>>, usize) {
    let typed = fold(typed);
    let words: Vec<&str> = typed.split_whitespace().collect();
    let mut found: Vec<Found<'a>> = Vec::new();
    let mut ranks: Vec<(usize, i64)> = Vec::new();
    let mut count = 0;
    if words.is_empty() {
        return (found, count);
    }
    let calculators: Vec<(&str, String)> =
        catalog::ALL.iter().map(|it| (it.id, fold(&voice.phrase(it.name)))).collect();
    for job in jobs {
        let of_job = fold(&[&*job.name, " ", &*job.place].concat());
        // What the job's own name has, none of its marks needs to have.
        let left: Vec<&str> = words.iter().copied().filter(|word| !of_job.contains(word)).collect();
        for mark in &job.marks {
            let mut own = String::new();
            let has = |word: &&str| {
                if own.is_empty() {
                    let texts = [&*mark.title, &*mark.spot, &*mark.note, &*mark.kept.answer];
                    own = fold(&texts.join(" "));
                }
                own.contains(word)
                    || calculators
                        .iter()
                        .any(|(id, name)| *id == mark.calculator && name.contains(word))
            };
            if left.iter().all(has) {
                count += 1;
                let title = fold(&mark.title);
                let whole = [&title, &of_job].map(|text| {
                    text.split_whitespace().filter(|word| words.contains(word)).count()
                });
                let whole = whole[0] + whole[1];
                let rank = (whole, mark.at.at);
                let place = ranks.partition_point(|other| *other >= rank);
                if place < most {
                    ranks.insert(place, rank);
                    ranks.truncate(most);
                    found.insert(place, Found { job, mark });
                    found.truncate(most);
                }
            }
        }
    }
    (found, count)
}

#[cfg(test)]
mod tests {
    use super::super::edit::{Edit, apply};
    use super::super::samples::{mark, stamp};
    use super::*;
    use proptest::prelude::*;

    fn jobs() -> Vec<Job> {
        let named = [("Quoin House", "12 Plumb Row"), ("Ándor's shed", "Mill Lane")];
        let jobs = named.iter().zip(1_u64..).map(|((name, place), at)| {
            let mut job = Job::new(name, place, &stamp(100 * at)).unwrap();
            for ((title, spot), step) in
                [("Box by the door", "Hall"), ("Long wall", "Den")].iter().zip(1..)
            {
                let (title, spot) = ((*title).to_owned(), (*spot).to_owned());
                let mark = Mark { title, spot, note: String::new(), ..mark(100 * at + step) };
                apply(&mut job, Edit::Keep(mark), &stamp(100 * at + step)).unwrap();
            }
            job
        });
        jobs.collect()
    }

    #[test]
    fn every_word_is_somewhere_and_the_newest_comes_first() {
        let jobs = jobs();
        let titles = |typed: &str| {
            let (found, count) = find(&jobs, typed, 9, Voice::default());
            assert_eq!(found.len(), count);
            let named = |it: &Found<'_>| format!("{}/{}", it.job.place, it.mark.title);
            found.iter().map(named).collect::<Vec<_>>()
        };
        let (old, new) = ("12 Plumb Row/Box by the door", "Mill Lane/Box by the door");
        assert_eq!(titles("BOX"), [new, old]);
        assert_eq!(titles("door quoin"), [old]);
        assert_eq!(titles("hall ándor"), [new]);
        assert_eq!(titles("  4-1/2 mill den "), ["Mill Lane/Long wall"]);
        assert_eq!(titles("den door"), [""; 0]);
        assert_eq!(titles(" "), [""; 0]);
        // A word that stands whole goes before one that is a part, whatever is newer.
        let (found, _) = find(&jobs, "hall l", 9, Voice::default());
        assert_eq!(found.len(), 2);
        let (found, count) = find(&jobs, "quoin d", 1, Voice::default());
        assert_eq!((found[0].job.name.as_str(), count), ("Quoin House", 2));
        let (found, count) = find(&jobs, "plumb", 1, Voice::default());
        assert_eq!((found[0].mark.title.as_str(), count), ("Long wall", 2));
    }

    proptest! {
        /// One more letter never finds more.
        #[test]
        fn more_letters_find_no_more(typed in "[a-z ]{0,6}", more in "[a-z]") {
            let jobs = jobs();
            let count = |typed: &str| find(&jobs, typed, 1, Voice::default()).1;
            let longer = [&typed, &*more].concat();
            prop_assert!(typed.trim().is_empty() || typed.ends_with(' ') || count(&longer) <= count(&typed));
        }
    }
}
