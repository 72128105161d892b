//! Kept numbers found by a few letters of what was written about them.

use super::fold::fold;
use super::mark::Mark;
use super::site::Job;
use super::slip::is_slip_of;
use super::survey::opened;
use crate::catalog;
use crate::sheet::Verdict;
use crate::words::Phrase;

/// A kept number that was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Found<'a> {
    /// Its job.
    pub job: &'a Job,
    /// The mark.
    pub mark: &'a Mark,
}

impl Found<'_> {
    /// Whether its word is known only once it is worked again: of what was over, too little is short.
    pub fn may_be_short(&self) -> bool {
        self.mark.kept.verdict == Verdict::Over.key()
    }

    /// The word for how it stood, as its own line has it. What may be short is worked for it.
    pub fn word(&self) -> &'static Phrase {
        let Self { job, mark } = *self;
        let (kept, calculator) = (&mark.kept, &mark.calculator);
        if self.may_be_short()
            && let Ok(worked) = mark.work_behind(job.basis, opened(job, mark).as_ref())
        {
            return kept.word_beside(calculator, &worked);
        }
        kept.word(calculator)
    }
}

/// How well a mark fits what was typed: what is compared first stands first.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Rank {
    /// Every word is there as it was typed.
    is_exact: bool,
    /// Its title is all that was typed, begins with it, or holds it.
    title: u8,
    /// So many of the words stand whole in its title.
    in_title: usize,
    /// So many stand whole in its job's name or place.
    in_job: usize,
    /// When it was kept.
    at: i64,
}

/// The marks that have every word of `typed` somewhere in their title, spot, note or answer, in
/// their calculator's name, in either language, or in the name or place of their job, a word of five
/// letters or more also with one slip in it. Those where nothing is taken for a slip go first; then those whose title is
/// the text, begins with it or holds it; then those with more of the words whole in their title, or
/// in their job's name; then the newest. Capitals make no difference. Nothing typed finds nothing.
/// Gives at most `most`, and how many there are.
pub fn find<'a>(jobs: &'a [Job], typed: &str, most: usize) -> (Vec<Found<'a>>, usize) {
    let typed = fold(typed);
    let words: Vec<&str> = typed.split_whitespace().collect();
    let text = words.join(" ");
    let mut found: Vec<Found<'a>> = Vec::new();
    let mut ranks: Vec<Rank> = Vec::new();
    let mut count = 0;
    if words.is_empty() {
        return (found, count);
    }
    // A crew of two languages has one list.
    let named = |name: &Phrase| fold(&[name.en, " ", name.es].concat());
    let calculators: Vec<(&str, String)> =
        catalog::ALL.iter().map(|it| (it.id, named(it.name))).collect();
    for job in jobs {
        let of_job = fold(&[&*job.name, " ", &*job.place].concat());
        // What the job's own name has, none of its marks needs to have.
        let left: Vec<&str> = words.iter().copied().filter(|word| !of_job.contains(word)).collect();
        let in_job = whole(&of_job, &words);
        for mark in &job.marks {
            let Some(is_exact) = fits(mark, &left, &of_job, &calculators) else { continue };
            count += 1;
            let name = fold(&mark.title);
            let title = match name.trim() {
                name if name == text => 3,
                name if name.starts_with(&text) => 2,
                name => name.contains(&text).into(),
            };
            let in_title = whole(&name, &words);
            let rank = Rank { is_exact, title, in_title, in_job, at: mark.at.at };
            let place = ranks.partition_point(|other| *other >= rank);
            if place < most {
                ranks.insert(place, rank);
                ranks.truncate(most);
                found.insert(place, Found { job, mark });
                found.truncate(most);
            }
        }
    }
    (found, count)
}

/// How many words of a text are among those that are looked for.
fn whole(text: &str, words: &[&str]) -> usize {
    text.split_whitespace().filter(|word| words.contains(word)).count()
}

/// Whether a mark has each of the words, and then whether it has all of them as they were typed.
fn fits(mark: &Mark, left: &[&str], of_job: &str, calculators: &[(&str, String)]) -> Option<bool> {
    if left.is_empty() {
        return Some(true);
    }
    let texts = [&*mark.title, &*mark.spot, &*mark.note, &*mark.kept.answer];
    let own = fold(&texts.join(" "));
    let name = calculators.iter().find(|(id, _)| *id == mark.calculator);
    let name = name.map_or("", |(_, name)| &**name);
    let mut is_exact = true;
    for word in left {
        if own.contains(word) || name.contains(word) {
            continue;
        }
        let has = |text: &str| text.split_whitespace().any(|it| is_slip_of(word, it));
        if !has(&own) && !has(name) && !has(of_job) {
            return None;
        }
        is_exact = false;
    }
    Some(is_exact)
}

#[cfg(test)]
mod tests {
    use super::super::edit::{Edit, apply};
    use super::super::samples::{mark, stamp};
    use super::*;
    use crate::words::Voice;
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
            let (found, count) = find(&jobs, typed, 9);
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
        let (found, _) = find(&jobs, "hall l", 9);
        assert_eq!(found.len(), 2);
        let (found, count) = find(&jobs, "quoin d", 1);
        assert_eq!((found[0].job.name.as_str(), count), ("Quoin House", 2));
        let (found, count) = find(&jobs, "plumb", 1);
        assert_eq!((found[0].mark.title.as_str(), count), ("Long wall", 2));
    }

    /// Titles of a job's marks, in the order in which they are found.
    fn found_of(jobs: &[Job], typed: &str) -> Vec<String> {
        let (found, _) = find(jobs, typed, 9);
        found.iter().map(|it| it.mark.title.clone()).collect()
    }

    fn job_with(name: &str, titles: &[&str], at: u64) -> Job {
        let mut job = Job::new(name, "", &stamp(at)).unwrap();
        for (title, step) in titles.iter().zip(1..) {
            let mark = Mark {
                title: (*title).to_owned(),
                spot: String::new(),
                note: String::new(),
                ..mark(at + step)
            };
            apply(&mut job, Edit::Keep(mark), &stamp(at + step)).unwrap();
        }
        job
    }

    #[test]
    fn a_title_goes_before_the_name_of_a_job() {
        let jobs = [
            job_with("Den", &["Wall 2, number 17", "Number 17", "Number 17 again", "17"], 100),
            job_with("Number 17", &["Lath", "17 by number"], 200),
        ];
        let all = found_of(&jobs, "number 17");
        assert_eq!(
            all,
            ["Number 17", "Number 17 again", "Wall 2, number 17", "17 by number", "Lath"]
        );
        // What stands whole goes before what is the beginning of a longer one, however old it is.
        let jobs = [job_with("Den", &["Number 1 den", "Number 17 den"], 100)];
        assert_eq!(found_of(&jobs, " number  1 "), ["Number 1 den", "Number 17 den"]);
    }

    /// Marks of one job, each found by one thing that was written about it.
    #[test]
    fn a_number_is_found_by_its_room_its_note_and_its_calculators_name_in_either_language() {
        let entry = catalog::ALL.iter().find(|it| fold(it.name.en) != fold(it.name.es)).unwrap();
        let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
        let bare = |title: &str, step: u64| Mark {
            title: title.into(),
            spot: String::new(),
            note: String::new(),
            ..mark(step)
        };
        let of_entry =
            |title: &str, step| Mark { calculator: entry.id.into(), ..bare(title, step) };
        for mark in [
            bare("By the title, scullery", 1),
            Mark { spot: "Scullery".into(), ..bare("A", 2) },
            Mark { note: "Next to the scullery door".into(), ..bare("B", 3) },
            bare("C", 4),
            of_entry("D", 5),
            bare(entry.name.es, 6),
        ] {
            let step = stamp(job.marks.len() as u64 + 10);
            apply(&mut job, Edit::Keep(mark), &step).unwrap();
        }
        let jobs = [job];
        // The title first, then the newest.
        assert_eq!(found_of(&jobs, "SCULLERY"), ["By the title, scullery", "B", "A"]);
        assert_eq!(found_of(&jobs, "next scullery"), ["B"]);
        assert_eq!(found_of(&jobs, entry.name.es), [entry.name.es, "D"]);
        assert_eq!(found_of(&jobs, entry.name.en), ["D"]);
    }

    /// Every number of the invented job that is over says in the search what its line says.
    #[test]
    fn what_is_too_little_is_short() {
        let demo = super::super::demo(Voice::default());
        let survey = super::super::Survey::of(&demo);
        let mut said = Vec::new();
        for mark in &demo.marks {
            let found = Found { job: &demo, mark };
            let worked = survey.worked(&mark.id).unwrap().as_ref().unwrap();
            assert_eq!(found.word(), mark.kept.word_beside(&mark.calculator, worked));
            if found.may_be_short() {
                said.push(found.word().en);
            }
        }
        assert!(said.contains(&"short") && said.contains(&"over"), "{said:?}");
        let mut gone = demo.marks.iter().find(|it| it.kept.verdict == "over").unwrap().clone();
        gone.version += 1;
        let stays = Found { job: &demo, mark: &gone }.word();
        assert_eq!(stays.en, "over", "what can't be worked");
    }

    #[test]
    fn a_word_with_a_slip_is_found_after_those_without() {
        let jobs =
            [job_with("Kitchen", &["Soffit", "Kichen"], 100), job_with("Den", &["Kitchen"], 10)];
        assert_eq!(found_of(&jobs, "kichen"), ["Kichen", "Soffit", "Kitchen"]);
        assert_eq!(found_of(&jobs, "kithcen soffit"), ["Soffit"]);
        // Two slips, or one in a short word, find nothing.
        assert_eq!(found_of(&jobs, "kihtcne"), [""; 0]);
        assert_eq!(found_of(&jobs, "dem"), [""; 0]);
    }

    proptest! {
        /// One more letter never finds more, but for words that are long enough for a slip.
        #[test]
        fn more_letters_find_no_more(typed in "([a-z]{1,4} ){0,2}[a-z]{0,3}", more in "[a-z]") {
            let jobs = jobs();
            let count = |typed: &str| find(&jobs, typed, 1).1;
            let longer = [&typed, &*more].concat();
            prop_assert!(typed.trim().is_empty() || typed.ends_with(' ') || count(&longer) <= count(&typed));
        }

        /// A slip finds at least what the word as it was meant finds in titles.
        #[test]
        fn a_slip_finds_what_was_meant(title in "[a-z]{6,9}", at in 0_usize..6) {
            let jobs = [job_with("Den", &[&title], 100)];
            let mut typed = title.clone();
            typed.remove(at);
            prop_assert_eq!(found_of(&jobs, &typed), [title]);
        }
    }
}
