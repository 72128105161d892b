//! Which inputs of a mark still said what a calculator's sample put there when it was saved. Noted
//! beside the mark, so that it is still told a week later.

use super::edit::Edit;
use super::mark::Mark;
use super::refusal::LONGEST_JOT;
use super::site::Job;
use super::words as w;
use crate::catalog;
use crate::fields::is_asked;
use crate::measure::Units;
use crate::say;
use crate::words::Text;

/// Says that all of it is a person's own, though it is the sample word for word.
const OWN: &str = "-";

/// The name that it is noted under.
fn key(mark: &str) -> String {
    ["sample ", mark].concat()
}

impl Job {
    /// The inputs of a mark, by path, that are asked as it stands and are still the sample's: what its
    /// form doesn't show, nobody is told to measure.
    pub fn still_sample(&self, mark: &Mark) -> Vec<String> {
        let mut paths = self.noted_sample(&mark.id);
        if let Some(entry) = catalog::find(&mark.calculator) {
            paths.retain(|path| is_asked(entry.rows, &mark.input, path));
        }
        paths
    }

    /// All inputs of a mark that were the sample's when it was saved, those too that aren't asked: a
    /// choice may yet ask for them.
    pub fn noted_sample(&self, mark: &str) -> Vec<String> {
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

    /// Whether anything of a mark is still a calculator's sample.
    fn has_sample(&self, mark: &Mark) -> bool {
        !self.invented && (self.is_sample(mark) || !self.still_sample(mark).is_empty())
    }

    /// The marks from which this one takes values, by itself or through others, and which have fields
    /// that are still the sample's: the nearest first, each once.
    pub fn sampled_sources(&self, mark: &Mark) -> Vec<&Mark> {
        // A circle that two devices made ends at what was seen before.
        let mut seen: Vec<&str> = vec![&mark.id];
        let mut sources: Vec<&Mark> = Vec::new();
        let mut at = 0;
        let mut next = Some(mark);
        while let Some(mark) = next {
            for tie in &mark.ties {
                if !seen.contains(&&*tie.mark)
                    && let Some(source) = self.mark(&tie.mark)
                {
                    seen.push(&source.id);
                    sources.push(source);
                }
            }
            next = sources.get(at).copied();
            at += 1;
        }
        sources.retain(|source| self.has_sample(source));
        sources
    }

    /// Their titles.
    pub fn takes_sample(&self, mark: &Mark) -> Vec<String> {
        self.sampled_sources(mark).into_iter().map(|source| source.title.clone()).collect()
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

/// So many sources are told by name in one line.
const NAMED: usize = 2;

/// What a number with such sources says of them, by their titles; none where there are none.
pub fn told_sources(titles: &[String]) -> Option<Text> {
    let named: Vec<&str> = titles.iter().take(NAMED).map(String::as_str).collect();
    match titles.len().saturating_sub(NAMED) {
        _ if named.is_empty() => None,
        0 => Some(say!(w::TAKES_SAMPLE, named.join(", "))),
        more => Some(say!(w::TAKES_SAMPLE_MORE, named.join(", "), more as i64)),
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples::{job, mark, stamp};
    use super::super::{Job, Mark, Tie, apply, hand_over};
    use super::told_sources;
    use crate::catalog;
    use crate::fields::Kind;
    use crate::measure::Units;
    use crate::wire::Node;
    use proptest::collection::vec;
    use proptest::prelude::*;

    #[test]
    fn what_is_still_the_samples_is_told_of_a_saved_mark_until_it_isnt() {
        let (mut job, id) = (job(), mark(1).id);
        assert!(job.noted_sample(&id).is_empty());
        assert_eq!(job.note_sample(&id, &[], false), None, "nothing to say");
        let paths = ["stud", "boxes.0.height"].map(str::to_owned);
        let note = job.note_sample(&id, &paths, false).unwrap();
        let undo = apply(&mut job, note, &stamp(10)).unwrap();
        assert_eq!(job.noted_sample(&id), paths);
        assert_eq!(job.note_sample(&id, &paths, false), None, "it says so already");
        let own = job.note_sample(&id, &[], true).unwrap();
        apply(&mut job, own, &stamp(11)).unwrap();
        assert!(job.is_said_own(&id) && job.noted_sample(&id).is_empty());
        apply(&mut job, undo, &stamp(12)).unwrap();
        assert!(!job.is_said_own(&id) && job.noted_sample(&id).is_empty());
        // More than can be noted is noted as far as it goes.
        let many: Vec<String> = (0..500).map(|at| format!("boxes.{at}.height")).collect();
        let note = job.note_sample(&id, &many, false).unwrap();
        apply(&mut job, note, &stamp(13)).unwrap();
        assert!(many.starts_with(&job.noted_sample(&id)));
        assert!(job.noted_sample(&id).len() > 30);
    }

    /// A law of all calculators: what isn't asked as a mark stands never counts as the sample's. An input
    /// that isn't asked is read as its blank, so that neither emptying it nor writing nonsense into it
    /// changes anything that is read.
    #[test]
    fn what_a_form_does_not_show_is_never_counted_as_the_samples() {
        let (mut counted, mut hidden) = (0, 0);
        for entry in catalog::ALL {
            let mut inputs = vec![entry.sample()];
            for row in entry.rows {
                let says: Vec<&str> = match row.kind {
                    Kind::Choice(picks) => picks.iter().map(|pick| pick.key).collect(),
                    Kind::Flag => vec!["yes", "no"],
                    _ => Vec::new(),
                };
                for says in says {
                    let mut input = entry.sample();
                    input.put(row.key, Node::text(says));
                    inputs.push(input);
                }
            }
            for input in inputs {
                let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
                let noted = entry.of_sample(&input, Units::Customary);
                let mark = Mark { calculator: entry.id.to_owned(), input, ..mark(1) };
                if let Some(note) = job.note_sample(&mark.id, &noted, false) {
                    apply(&mut job, note, &stamp(1)).unwrap();
                }
                let told = job.still_sample(&mark);
                let read = entry.canonical(&mark.input, Units::Customary);
                for path in job.noted_sample(&mark.id) {
                    let is_read = ["", "?"].iter().any(|says| {
                        let mut other = mark.input.clone();
                        other.put(&path, Node::text(says));
                        entry.canonical(&other, Units::Customary) != read
                    });
                    assert_eq!(told.contains(&path), is_read, "{}: {path}", entry.id);
                    *if is_read { &mut counted } else { &mut hidden } += 1;
                }
            }
        }
        assert!(counted > 100 && hidden > 10, "{counted}, {hidden}");
    }

    #[test]
    fn a_wall_has_no_sides_of_a_ceiling_from_the_sample() {
        let boards = catalog::find("boards").unwrap();
        let mut input = boards.sample();
        let paths = boards.of_sample(&input, Units::Customary);
        assert_eq!(paths, ["long", "wide", "high"]);
        let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
        let made = |input: &Node| Mark {
            calculator: boards.id.to_owned(),
            input: input.clone(),
            ..mark(1)
        };
        let note = job.note_sample(&mark(1).id, &paths, false).unwrap();
        apply(&mut job, note, &stamp(1)).unwrap();
        assert_eq!(job.still_sample(&made(&input)), ["long", "wide"]);
        input.put("of", Node::text("wall"));
        input.put("wall", Node::text("14 ft"));
        assert_eq!(job.still_sample(&made(&input)), ["high"]);
        assert_eq!(job.noted_sample(&mark(1).id), paths, "a ceiling asks for them again");
    }

    /// A usual value is nobody's house: not a ceiling of 8 ft, nor whom to call.
    #[test]
    fn what_is_known_of_the_house_alone_counts_where_a_usual_value_stands() {
        for (id, paths) in [
            ("room-air", &["load", "floor", "height"][..]),
            ("rough-in", &["high"]),
            ("stripping", &["height"]),
            ("drying", &["temperature", "humidity", "thick"]),
            ("off-tonight", &["off.0.off_time", "off.0.back_time", "off.0.who"]),
        ] {
            let entry = catalog::find(id).expect("ours");
            let told = entry.of_sample(&entry.sample(), Units::Customary);
            for path in paths {
                assert!(told.iter().any(|it| it == path), "{id}: {path} in {told:?}");
            }
        }
        // What is a habit of the trade stands as it is.
        let entry = catalog::find("rough-in").expect("ours");
        let told = entry.of_sample(&entry.sample(), Units::Customary);
        assert!(!told.iter().any(|it| it == "above" || it == "loss"), "{told:?}");
    }

    #[test]
    fn it_goes_with_a_mark_to_another_job() {
        let (mut from, id) = (job(), mark(1).id);
        let mut to = Job::new("4 Plumbline Court", "", &stamp(20)).unwrap();
        let note = from.note_sample(&id, &["span".to_owned()], false).unwrap();
        apply(&mut from, note, &stamp(21)).unwrap();
        hand_over(&mut from, &mut to, &id, &stamp(22)).unwrap();
        assert_eq!(to.noted_sample(&id), ["span"]);
    }

    fn tie(to: u64) -> Tie {
        let (path, mark) = (["x", &to.to_string()].concat(), stamp(to).id());
        Tie { path, mark, key: "rest".into(), seen: String::new() }
    }

    /// Marks of these steps, each with ties to others and with a field of the sample or none.
    fn web(marks: u64, ties: &[(u64, u64)], sampled: &[u64]) -> Job {
        let mut job = Job::new("Invented", "", &stamp(90)).unwrap();
        for step in 0..marks {
            let of_it = ties.iter().filter(|(user, _)| *user == step);
            let ties = of_it.map(|(_, source)| tie(*source)).collect();
            let title = step.to_string();
            job.marks.push(Mark { title, ties, behind: None, ..mark(step) });
        }
        job.marks.sort_by(|one, other| one.id.cmp(&other.id));
        for step in sampled {
            let note = job.note_sample(&stamp(*step).id(), &["span".to_owned()], false);
            if let Some(note) = note {
                apply(&mut job, note, &stamp(91)).unwrap();
            }
        }
        job
    }

    fn told(job: &Job, step: u64) -> Vec<String> {
        job.takes_sample(job.mark(&stamp(step).id()).unwrap())
    }

    #[test]
    fn what_takes_from_a_number_with_fields_of_the_sample_says_from_which_the_nearest_first() {
        let ties = [(0, 1), (1, 2), (0, 3), (3, 2), (4, 0), (5, 9)];
        let mut job = web(6, &ties, &[2, 3]);
        let all: Vec<_> = (0..6).map(|step| told(&job, step)).collect();
        let want: [&[&str]; 6] = [&["3", "2"], &["2"], &[], &["2"], &["3", "2"], &[]];
        assert_eq!(all, want);
        let says = |titles: &[String]| {
            told_sources(titles).map(|text| crate::words::Voice::default().say(&text))
        };
        assert_eq!(says(&all[2]), None);
        assert_eq!(says(&all[1]).unwrap(), "on figures of 2, with fields from the sample");
        let more = ["a", "b", "c"].map(str::to_owned);
        assert_eq!(
            says(&more).unwrap(),
            "on figures of a, b and 1 more, with fields from the sample"
        );
        job.invented = true;
        assert!((0..6).all(|step| told(&job, step).is_empty()), "invented all through");
    }

    proptest! {
        /// Whatever the web of links, a circle too: the sources are those that a walk step by step
        /// reaches, and one more link never takes one away.
        #[test]
        fn sources_are_all_that_can_be_reached(
            ties in vec((0_u64..6, 0_u64..6), 0..14),
            sampled in vec(0_u64..6, 0..6),
            more in (0_u64..6, 0_u64..6),
        ) {
            let job = web(6, &ties, &sampled);
            let longer = web(6, &[&*ties, &[more]].concat(), &sampled);
            for step in 0..6 {
                let mut reached = [false; 6];
                let mut grows = true;
                while grows {
                    grows = false;
                    for (user, source) in &ties {
                        let is_from = *user == step || reached[*user as usize];
                        grows |= is_from && !reached[*source as usize];
                        reached[*source as usize] |= is_from;
                    }
                }
                let is_one = |at: &u64| *at != step && reached[*at as usize] && sampled.contains(at);
                let want: Vec<String> = (0..6).filter(is_one).map(|at| at.to_string()).collect();
                let mut found = told(&job, step);
                let then = told(&longer, step);
                prop_assert!(found.iter().all(|it| then.contains(it)));
                found.sort();
                prop_assert_eq!(found, want);
            }
        }
    }
}
