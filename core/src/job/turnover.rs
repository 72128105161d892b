//! What is handed over: to the electrician, the mechanical sub, the inspector and the owner. Each
//! gets the numbers that are theirs, with what is over or to ask, and what has changed since their
//! last sheet.

use super::edit::Edit;
use super::jot::Jot;
use super::mark::{Kept, Mark, is_same, word_of};
use super::site::Job;
use super::stamp::Moment;
use super::survey::{Survey, TieState};
use super::turnover_words as w;
use crate::calculators::trade_days::TradeDays;
use crate::calculators::{Calculator, Trade};
use crate::catalog::{self, Entry, Worked};
use crate::say;
use crate::sheet::{Check, Drawing, FOREMOST, Figure, Part, Sheet, Source, Verdict};
use crate::words::{Amount, Phrase, Text};

/// Who is handed a sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Who {
    /// Boxes, cables and holes.
    Electrician,
    /// Ducts, registers and the way back.
    Mechanical,
    /// All that a rule speaks to.
    Inspector,
    /// Where things will be, in plain words.
    Owner,
}

impl Who {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Electrician, Self::Mechanical, Self::Inspector, Self::Owner];

    /// As a person reads it.
    pub fn name(self) -> &'static Phrase {
        match self {
            Self::Electrician => &w::ELECTRICIAN,
            Self::Mechanical => &w::MECHANICAL,
            Self::Inspector => &w::INSPECTOR,
            Self::Owner => &w::OWNER,
        }
    }

    /// What the sheet is, above it.
    pub fn about(self) -> &'static Phrase {
        match self {
            Self::Electrician => &w::FOR_ELECTRICIAN,
            Self::Mechanical => &w::FOR_MECHANICAL,
            Self::Inspector => &w::FOR_INSPECTOR,
            Self::Owner => &w::FOR_OWNER,
        }
    }

    /// Its name in addresses and in what a job keeps.
    pub fn key(self) -> &'static str {
        match self {
            Self::Electrician => "electrician",
            Self::Mechanical => "mechanical",
            Self::Inspector => "inspector",
            Self::Owner => "owner",
        }
    }

    /// Reads [`Who::key`].
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|who| who.key() == key)
    }

    /// Whether a calculator's number is theirs, as it is worked today.
    pub(super) fn is_for(self, entry: &Entry, worked: Option<&Worked>) -> bool {
        // A hole in a plate is the electrician's where the electrical code speaks to it.
        let is_electrical = |worked: &Worked| {
            worked.sheet.checks.iter().any(|check| check.source.key.starts_with("nec-"))
        };
        match self {
            _ if entry.id == TradeDays::ID && self != Self::Inspector => true,
            Self::Electrician => entry.trade == Trade::RoughIn || worked.is_some_and(is_electrical),
            Self::Mechanical => entry.trade == Trade::Air,
            // A room has no rule to hold to but its height, which the ceiling's number tells; what
            // nothing is held against is no inspector's.
            Self::Inspector => {
                !matches!(entry.trade, Trade::Room | Trade::Job)
                    && worked.is_none_or(|worked| !worked.sheet.checks.is_empty())
            }
            // How far air blows is no place: its own sheet tells where it comes from.
            Self::Owner if entry.trade == Trade::Job => true,
            Self::Owner => {
                entry.tells_places
                    && (entry.trade != Trade::Air
                        || worked.is_some_and(|it| tells_places(&it.sheet)))
            }
        }
    }
}

/// What an owner says of a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Word {
    /// So be it.
    Agree,
    /// Another way, please.
    Change,
    /// Not before a question is answered.
    Ask,
}

impl Word {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Agree, Self::Change, Self::Ask];

    /// As a person reads it.
    pub fn name(self) -> &'static Phrase {
        match self {
            Self::Agree => &w::AGREE,
            Self::Change => &w::CHANGE,
            Self::Ask => &w::ASK,
        }
    }

    /// As a job keeps it.
    pub fn key(self) -> &'static str {
        match self {
            Self::Agree => "agree",
            Self::Change => "change",
            Self::Ask => "ask",
        }
    }
}

/// What an owner said, of which answer, and when.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Said {
    /// The word.
    pub word: Word,
    /// The answer that it was said of, in exact text.
    pub of: String,
    /// When.
    pub at: Moment,
}

impl Said {
    /// Whether it leaves something to settle: a change, a question, or that it was said of another
    /// answer than this one, in exact text.
    pub fn is_open(&self, answer: &str) -> bool {
        self.word != Word::Agree || self.of != answer
    }
}

/// How a number stands to the last sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Since {
    /// There was no sheet yet, or it says the same.
    Same,
    /// It was not on the last one.
    New,
    /// It said this, in exact text, with this verdict.
    Was(String, &'static Phrase),
}

/// One number on a sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Handed {
    /// The mark's id.
    pub mark: String,
    /// Its title.
    pub title: String,
    /// What worked it out.
    pub by: &'static Phrase,
    /// A person's note on it.
    pub note: String,
    /// The answer.
    pub headline: Figure,
    /// The verdict of its rules.
    pub verdict: Verdict,
    /// The word for that.
    pub word: &'static Phrase,
    /// Whether old material comes first.
    pub is_held: bool,
    /// Whether a number that it took has changed since.
    pub is_moved: bool,
    /// The other figures.
    pub figures: Vec<Figure>,
    /// Its checks: all for the inspector, those that are over or ask for a trade, none for the owner.
    pub checks: Vec<Check>,
    /// What else is theirs: schedules, labels, questions.
    pub parts: Vec<Part>,
    /// Its drawing.
    pub drawing: Option<Drawing>,
    /// How it stands to their last sheet.
    pub since: Since,
    /// What the owner said of it.
    pub said: Option<Said>,
    /// How many of its fields are still those of the calculator's sample.
    pub sampled: usize,
}

impl Handed {
    /// What the owner has still to be asked of it, or wants otherwise.
    pub fn owner_wants(&self) -> Option<&Said> {
        self.said.as_ref().filter(|said| said.is_open(&self.headline.amount.exact()))
    }
}

/// The numbers of one room or spot.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Place {
    /// The room or spot; empty where none is given.
    pub name: String,
    /// Its numbers, the newest first.
    pub numbers: Vec<Handed>,
}

/// A sheet to hand over.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Turnover {
    /// To whom.
    pub who: Who,
    /// When the last one was handed over.
    pub last: Option<Moment>,
    /// By room.
    pub places: Vec<Place>,
    /// Titles that were on the last sheet and are no longer here.
    pub gone: Vec<String>,
    /// Marks that can't be worked today, by title.
    pub left_out: Vec<String>,
    /// What it all stands on, once each.
    pub sources: Vec<&'static Source>,
}

impl Turnover {
    /// All numbers on it.
    pub fn numbers(&self) -> impl Iterator<Item = &Handed> {
        self.places.iter().flat_map(|place| &place.numbers)
    }

    /// Whether something is other than on the last sheet.
    pub fn has_changed(&self) -> bool {
        self.last.is_some()
            && (!self.gone.is_empty() || self.numbers().any(|it| it.since != Since::Same))
    }
}

/// Under what name a job keeps that a sheet was handed over, and what a number said then.
fn given(who: Who, mark: &str) -> String {
    ["given ", who.key(), " ", mark].concat()
}

/// Under what name a job keeps what the owner said of a mark.
fn said_of(mark: &str) -> String {
    ["owner ", mark].concat()
}

/// The edit that keeps what the owner says of a mark as it is now; none takes it back.
pub fn say_of(mark: &str, word: Option<Word>, answer: &str) -> Edit {
    let says = word.map(|word| [word.key(), " ", answer].concat()).unwrap_or_default();
    Edit::Jot { key: said_of(mark), says }
}

/// What the owner said of a mark.
pub fn said(job: &Job, mark: &str) -> Option<Said> {
    let jot = job.jot(&said_of(mark))?;
    let (word, of) = jot.says.split_once(' ')?;
    let word = Word::ALL.into_iter().find(|it| it.key() == word)?;
    Some(Said { word, of: of.to_owned(), at: jot.at })
}

/// The edit that notes what a mark said on a sheet: answer, verdict, title.
pub(super) fn note_of(who: Who, mark: &str, says: [&str; 3]) -> Edit {
    Edit::Jot { key: given(who, mark), says: says.join("\t") }
}

/// What a number said on the last sheet: its answer, its verdict, its title.
fn was(says: &str) -> Option<(&str, &str, &str)> {
    let (answer, rest) = says.split_once('\t')?;
    let (verdict, title) = rest.split_once('\t')?;
    Some((answer, verdict, title))
}

/// The parts of a worked answer that go along to a trade, by their keys.
const GO_ALONG: [&str; 11] = [
    "handed", "ask", FOREMOST, "spots", "run", "boxes", "places", "circuits", "schedule", "holes",
    "labels",
];
/// Those that go along to an inspector: what stands where, not what to ask a trade.
const INSPECTED: [&str; 7] =
    [FOREMOST, "spots", "boxes", "places", "circuits", "schedule", "holes"];
/// The parts that tell an owner where things will be, in plain words.
const PLACES: [&str; 4] = [FOREMOST, "spots", "places", "order"];
/// The parts that an owner agrees to or signs: what is off, when who comes, what a change costs.
const AGREED: [&str; 4] = [FOREMOST, "days", "lines", "to-sign"];

fn shows_places(sheet: &Sheet) -> bool {
    sheet.parts.iter().any(|part| part.key != FOREMOST && PLACES.contains(&part.key))
}

fn tells_places(sheet: &Sheet) -> bool {
    sheet.parts.iter().any(|part| PLACES.contains(&part.key))
}

/// What was noted of marks on the last sheet that are no longer in the job.
fn gone(job: &Job, who: Who) -> Vec<&Jot> {
    let prefix = given(who, "");
    let is_gone = |jot: &&Jot| {
        let mark = jot.key.strip_prefix(&prefix).filter(|mark| !mark.is_empty());
        !jot.says.is_empty() && mark.is_some_and(|mark| job.mark(mark).is_none())
    };
    job.jots.iter().filter(is_gone).collect()
}

/// Makes a sheet.
pub fn turnover(job: &Job, survey: &Survey<'_>, who: Who) -> Turnover {
    let last = job.written(&given(who, "")).map(|jot| jot.at);
    let mut all = Turnover {
        who,
        last,
        places: Vec::new(),
        gone: Vec::new(),
        left_out: Vec::new(),
        sources: Vec::new(),
    };
    for spot in job.newest_first_by_spot() {
        let mut numbers = Vec::new();
        for mark in spot.marks {
            let worked = survey.worked(&mark.id).and_then(|worked| worked.as_ref().ok());
            let entry = catalog::find(&mark.calculator);
            let Some(entry) = entry.filter(|entry| who.is_for(entry, worked)) else { continue };
            match handed(job, survey, mark, entry, who) {
                Some(number) => numbers.push(number),
                None => all.left_out.push(mark.title.clone()),
            }
        }
        if !numbers.is_empty() {
            all.places.push(Place { name: spot.name.to_owned(), numbers });
        }
    }
    // The same questions come with every register: asked once, they are read.
    let mut asked: Vec<Part> = Vec::new();
    for number in all.places.iter_mut().flat_map(|place| &mut place.numbers) {
        number.parts.retain(|part| !asked.contains(part));
        asked.extend(number.parts.iter().filter(|part| part.key == "ask").cloned());
    }
    let titles = gone(job, who).into_iter().filter_map(|jot| was(&jot.says));
    all.gone = titles.map(|(_, _, title)| title.to_owned()).collect();
    let mut sources: Vec<&'static Source> = Vec::new();
    for check in all.numbers().flat_map(|number| &number.checks) {
        if !sources.iter().any(|known| known.key == check.source.key) {
            sources.push(check.source);
        }
    }
    all.sources = sources;
    all
}

fn handed(job: &Job, survey: &Survey<'_>, mark: &Mark, entry: &Entry, who: Who) -> Option<Handed> {
    let Some(Ok(worked)) = survey.worked(&mark.id) else { return None };
    let sheet = &worked.sheet;
    let is_held = worked.standing.is_held();
    // An owner agrees to a place, not to what a box holds: that is settled with the trade.
    let is_shown = |verdict| match who {
        Who::Inspector => true,
        Who::Owner => false,
        Who::Electrician | Who::Mechanical => verdict != Verdict::Within,
    };
    let checks = sheet.checks.iter().filter(|it| is_shown(it.verdict));
    let along: &[&str] = match who {
        Who::Owner if entry.trade == Trade::Job => &AGREED,
        _ if entry.trade == Trade::Job => &["days"],
        Who::Owner => &PLACES,
        Who::Inspector => &INSPECTED,
        Who::Electrician | Who::Mechanical => &GO_ALONG,
    };
    let parts = sheet.parts.iter().filter(|part| along.contains(&part.key));
    let now = Kept::of(worked);
    let there = job.jot(&given(who, &mark.id)).map(|jot| jot.says.as_str());
    let is_first = job.jotted(&given(who, "")).is_empty();
    let since = match there.and_then(was) {
        Some((answer, verdict, _)) if answer == now.answer && is_same(verdict, &now.verdict) => {
            Since::Same
        }
        Some((answer, verdict, _)) => Since::Was(answer.to_owned(), word_of(verdict)),
        None if is_first => Since::Same,
        None => Since::New,
    };
    let word = sheet.decisive().map_or(sheet.verdict().words(), Check::word);
    Some(Handed {
        mark: mark.id.clone(),
        title: mark.title.clone(),
        by: entry.name,
        note: mark.note.clone(),
        headline: sheet.headline.clone(),
        verdict: sheet.verdict(),
        word,
        is_held,
        is_moved: mark.ties.iter().any(|tie| survey.standing(tie) != TieState::Fresh),
        // An inspector reads what is held against a limit: its check has both.
        figures: match who {
            Who::Owner | Who::Inspector => Vec::new(),
            Who::Electrician | Who::Mechanical => sheet.figures.clone(),
        },
        checks: checks.cloned().collect(),
        parts: parts.cloned().collect(),
        // To an owner a drawing shows where in a room a thing is, or the room itself.
        drawing: (who != Who::Owner || shows_places(sheet) || entry.trade == Trade::Framing)
            .then(|| sheet.drawing.clone())
            .flatten(),
        since,
        said: said(job, &mark.id),
        sampled: job.still_sample(&mark.id).len(),
    })
}

/// The edit that notes a sheet as handed over, so that the next one tells what changed.
pub fn hand_over(job: &Job, sheet: &Turnover) -> Edit {
    let says = sheet.numbers().count().max(1).to_string();
    let mut edits = vec![Edit::Jot { key: given(sheet.who, ""), says }];
    for number in sheet.numbers() {
        let verdict = if number.is_held { "held" } else { number.verdict.key() };
        let answer = number.headline.amount.exact();
        edits.push(note_of(sheet.who, &number.mark, [&answer, verdict, &number.title]));
    }
    let gone = gone(job, sheet.who).into_iter();
    edits.extend(gone.map(|jot| Edit::Jot { key: jot.key.clone(), says: String::new() }));
    Edit::Several(edits)
}

/// A check with its value and its limit: `Box fill: 28.0 in³, at most 28.0 in³`.
pub fn told(check: &Check) -> Text {
    say!(w::TOLD, check.name.clone(), check.told())
}

/// How an answer of before is told: `was 15 ft 8 in, within`.
pub fn told_before(answer: &str, verdict: &'static Phrase) -> Text {
    match Amount::from_exact(answer) {
        Some(amount) => say!(w::WAS, amount, verdict),
        None => say!(w::WAS, answer, verdict),
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples::stamp;
    use super::super::{apply, demo};
    use super::*;
    use crate::measure::Units;
    use crate::wire::Node;
    use crate::words::Voice;

    fn job() -> Job {
        let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
        for (entry, step) in catalog::ALL.iter().zip(1..) {
            let (units, basis) = (Units::Customary, <_>::default());
            let mark = Mark::new(entry, &entry.sample(), units, basis, None, &stamp(step)).unwrap();
            let mark = Mark { title: entry.id.into(), spot: "Den".into(), ..mark };
            apply(&mut job, Edit::Keep(mark), &stamp(step)).unwrap();
        }
        job
    }

    fn made(job: &Job, who: Who) -> Turnover {
        turnover(job, &Survey::of(job), who)
    }

    fn changed(job: &mut Job, title: &str, path: &str, value: &str) {
        let mark = job.marks.iter().find(|mark| mark.title == title).unwrap().clone();
        let entry = catalog::find(&mark.calculator).unwrap();
        let mut input = mark.input.clone();
        input.put(path, Node::text(value));
        let now =
            Mark::new(entry, &input, Units::Customary, <_>::default(), None, &stamp(90)).unwrap();
        let now = Mark { id: mark.id, title: mark.title, spot: mark.spot, ..now };
        apply(job, Edit::Change(now), &stamp(91)).unwrap();
    }

    #[test]
    fn each_gets_what_is_theirs() {
        let job = job();
        let titles = |who| -> Vec<String> {
            made(&job, who).numbers().map(|number| number.title.clone()).collect()
        };
        let (cables, air) = (titles(Who::Electrician), titles(Who::Mechanical));
        assert!(cables.contains(&"box-fill".into()) && cables.contains(&"drilling".into()));
        assert!(air.contains(&"register-throw".into()) && !air.contains(&"box-fill".into()));
        let all = titles(Who::Inspector);
        // Of a trade's numbers the inspector gets those that something is held against.
        let survey = Survey::of(&job);
        for mark in
            job.marks.iter().filter(|it| cables.contains(&it.title) || air.contains(&it.title))
        {
            let Some(Ok(worked)) = survey.worked(&mark.id) else { panic!("{}", mark.title) };
            assert_eq!(
                all.contains(&mark.title),
                !worked.sheet.checks.is_empty(),
                "{}",
                mark.title
            );
        }
        assert!(!all.contains(&"room".into()));
        assert!(titles(Who::Owner).contains(&"register-spots".into()));
    }

    #[test]
    fn the_next_sheet_tells_what_changed() {
        let mut job = job();
        let first = made(&job, Who::Electrician);
        assert!(!first.has_changed() && first.last.is_none());
        let edit = hand_over(&job, &first);
        apply(&mut job, edit, &stamp(60)).unwrap();
        let same = made(&job, Who::Electrician);
        assert_eq!(same.last, Some(stamp(60).moment()));
        assert!(!same.has_changed());
        let before = first.numbers().find(|it| it.title == "cable-securing").unwrap();
        changed(&mut job, "cable-securing", "run", "40 ft");
        let gone = job.marks.iter().find(|mark| mark.title == "hole-cables").unwrap().id.clone();
        apply(&mut job, Edit::Remove(gone), &stamp(92)).unwrap();
        let next = made(&job, Who::Electrician);
        let since = |title: &str| {
            next.numbers().find(|it| it.title == title).map(|it| it.since.clone()).unwrap()
        };
        let answer = before.headline.amount.exact();
        assert_eq!(since("cable-securing"), Since::Was(answer, Verdict::Within.words()));
        assert_eq!(since("box-fill"), Since::Same);
        assert_eq!(next.gone, ["hole-cables"]);
        assert!(next.has_changed());
        // Another's sheet knows nothing of this one.
        assert!(!made(&job, Who::Inspector).has_changed());
        let edit = hand_over(&job, &next);
        apply(&mut job, edit, &stamp(93)).unwrap();
        let then = made(&job, Who::Electrician);
        assert!(!then.has_changed() && then.gone.is_empty());
    }

    #[test]
    fn what_an_owner_said_was_said_of_an_answer() {
        let mut job = job();
        let number = |job: &Job| {
            let sheet = made(job, Who::Owner);
            sheet.numbers().find(|it| it.title == "register-spots").unwrap().clone()
        };
        let here = number(&job);
        let answer = here.headline.amount.exact();
        apply(&mut job, say_of(&here.mark, Some(Word::Agree), &answer), &stamp(60)).unwrap();
        let said = number(&job).said.unwrap();
        assert_eq!((said.word, said.of, said.at), (Word::Agree, answer, stamp(60).moment()));
        apply(&mut job, say_of(&here.mark, None, ""), &stamp(61)).unwrap();
        assert_eq!(number(&job).said, None);
    }

    #[test]
    fn the_inspector_reads_every_check_with_its_source() {
        let job = job();
        let sheet = made(&job, Who::Inspector);
        let survey = Survey::of(&job);
        for number in sheet.numbers() {
            let Some(Ok(worked)) = survey.worked(&number.mark) else { panic!("worked above") };
            assert_eq!(number.checks, worked.sheet.checks);
            for check in &number.checks {
                assert!(sheet.sources.iter().any(|source| source.key == check.source.key));
            }
        }
    }

    #[test]
    fn the_demo_has_a_sheet_for_each() {
        let demo = demo(Voice::default());
        for who in [Who::Electrician, Who::Inspector] {
            assert!(made(&demo, who).numbers().count() > 0, "{who:?}");
        }
    }

    #[test]
    fn every_reader_has_a_name_in_addresses() {
        for who in Who::ALL {
            assert_eq!(Who::from_key(who.key()), Some(who));
        }
        assert_eq!(Who::from_key("nobody"), None);
    }
}
