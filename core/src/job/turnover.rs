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
use super::unlike_room::{Rooms, Unlike};
use super::version::{in_use, others};
use crate::calculators::trade_days::TradeDays;
use crate::calculators::{Calculator, Trade};
use crate::catalog::{self, Entry, Worked};
use crate::say;
use crate::sheet::{Check, Drawing, FOREMOST, Figure, Part, Sheet, Source, Verdict, calendar};
use crate::words::{Amount, Phrase, Text};
use shown::{PLACES, is_same_print};

mod shown;

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
    /// What it was said of.
    pub of: Seen,
    /// When.
    pub at: Moment,
}

impl Said {
    /// Whether it was said of what the owner's sheet shows now.
    pub fn is_of(&self, now: &Seen) -> bool {
        match (&self.of.print, &now.print) {
            (Some(then), Some(now)) => is_same_print(then, now),
            // Said before prints were kept, or of what can't be worked: the answer is all there is.
            _ => self.of.answer == now.answer,
        }
    }

    /// Whether it leaves something to settle: a change, a question, or that it was said of something
    /// else than what the owner's sheet shows now.
    pub fn is_open(&self, now: &Seen) -> bool {
        self.word != Word::Agree || !self.is_of(now)
    }
}

/// What an owner sees of a number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Seen {
    /// Its answer, in exact text.
    pub answer: String,
    /// A print of all that his sheet shows of it, where it can be worked.
    pub print: Option<String>,
}

impl Seen {
    /// What is seen of a mark that is worked today, or of its kept answer.
    pub fn of(mark: &Mark, worked: Option<&Worked>) -> Self {
        let entry = catalog::find(&mark.calculator);
        let Some((entry, worked)) = entry.zip(worked) else {
            return Self { answer: mark.kept.answer.clone(), print: None };
        };
        let answer = worked.sheet.headline.amount.exact();
        let print = Who::Owner.shown(entry, &worked.sheet).print(&mark.note);
        Self { answer, print: Some(print) }
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
    /// It said this with this verdict, but its places or what else stood under it was other.
    Under,
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
    /// Its checks: all for the inspector, those that are over or ask for a trade; for the owner too of
    /// what he agrees to, and none of a place.
    pub checks: Vec<Check>,
    /// What else is theirs: schedules, labels, questions.
    pub parts: Vec<Part>,
    /// Its drawing.
    pub drawing: Option<Drawing>,
    /// A print of what is shown of it here.
    print: String,
    /// How it stands to their last sheet.
    pub since: Since,
    /// What the owner said of it.
    pub said: Option<Said>,
    /// What the owner sees of it now.
    pub seen: Seen,
    /// How many of its fields are still those of the calculator's sample.
    pub sampled: usize,
    /// Titles of those that it takes values from, by itself or through others, with such fields.
    pub takes_sample: Vec<String>,
    /// What it says otherwise than its room, without having taken it from there.
    pub unlike: Vec<Unlike>,
    /// Whether another version of it waits for a choice: that one is on no sheet.
    pub has_versions: bool,
}

impl Handed {
    /// What the owner has still to be asked of it, or wants otherwise.
    pub fn owner_wants(&self) -> Option<&Said> {
        self.said.as_ref().filter(|said| said.is_open(&self.seen))
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

/// The edit that keeps what the owner says of a mark as he sees it; none takes it back.
pub fn say_of(mark: &str, word: Option<Word>, of: &Seen) -> Edit {
    let mut says = String::new();
    if let Some(word) = word {
        says = [word.key(), " ", &of.answer].concat();
        if let Some(print) = &of.print {
            says.extend(["\t", print]);
        }
    }
    Edit::Jot { key: said_of(mark), says }
}

/// Splits a print off what stands before it, of one word or, as it is kept now, of two; one that was
/// kept before there were prints has none.
fn with_print(says: &str) -> (&str, Option<&str>) {
    let is_print =
        |it: &str| it.len() == 8 && it.bytes().all(|it| matches!(it, b'0'..=b'9' | b'a'..=b'f'));
    let mut rest = says;
    for _ in 0..2 {
        match rest.rsplit_once('\t') {
            Some((before, print)) if is_print(print) => rest = before,
            _ => break,
        }
    }
    (rest, says.strip_prefix(rest).and_then(|print| print.strip_prefix('\t')))
}

/// What the owner said of a mark.
pub fn said(job: &Job, mark: &str) -> Option<Said> {
    let jot = job.jot(&said_of(mark))?;
    let (word, of) = jot.says.split_once(' ')?;
    let word = Word::ALL.into_iter().find(|it| it.key() == word)?;
    let (answer, print) = with_print(of);
    let of = Seen { answer: answer.to_owned(), print: print.map(str::to_owned) };
    Some(Said { word, of, at: jot.at })
}

/// The edit that notes what a mark said on a sheet: answer, verdict, title, and a print of it all.
pub(super) fn note_of(who: Who, mark: &str, says: &[&str]) -> Edit {
    Edit::Jot { key: given(who, mark), says: says.join("\t") }
}

/// What a number said on the last sheet.
struct Was<'a> {
    answer: &'a str,
    verdict: &'a str,
    title: &'a str,
    print: Option<&'a str>,
}

impl<'a> Was<'a> {
    fn read(says: &'a str) -> Option<Self> {
        let (answer, rest) = says.split_once('\t')?;
        let (verdict, rest) = rest.split_once('\t')?;
        let (title, print) = with_print(rest);
        Some(Self { answer, verdict, title, print })
    }

    /// How a mark stands to it, as it is worked now.
    fn since(&self, who: Who, mark: &Mark, now: &Kept, print: &str) -> Since {
        let is_same_print = self.print.is_none_or(|then| is_same_print(then, print));
        match self.answer == now.answer && is_same(self.verdict, &now.verdict) {
            // To an owner nothing has changed but what he was shown.
            _ if who == Who::Owner && self.print.is_some() && is_same_print => Since::Same,
            true if is_same_print => Since::Same,
            true => Since::Under,
            false => Since::Was(self.answer.to_owned(), word_of(&mark.calculator, self.verdict)),
        }
    }
}

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
    let rooms = Rooms::of(job, survey);
    for spot in job.newest_first_by_spot() {
        let mut numbers = Vec::new();
        for mark in spot.marks.into_iter().filter(|mark| in_use(job, mark).is_none()) {
            let worked = survey.worked(&mark.id).and_then(|worked| worked.as_ref().ok());
            let entry = catalog::find(&mark.calculator);
            let Some(entry) = entry.filter(|entry| who.is_for(entry, worked)) else { continue };
            match handed(job, survey, &rooms, mark, entry, who) {
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
    let were = gone(job, who).into_iter().filter_map(|jot| Was::read(&jot.says));
    all.gone = were.map(|was| was.title.to_owned()).collect();
    let mut sources: Vec<&'static Source> = Vec::new();
    // An owner reads beside each check where it is from, and no list of them.
    let checks = all.numbers().flat_map(|number| &number.checks);
    for check in checks.filter(|_| who != Who::Owner) {
        if !sources.iter().any(|known| known.key == check.source.key) {
            sources.push(check.source);
        }
    }
    all.sources = sources;
    all
}

fn handed(
    job: &Job,
    survey: &Survey<'_>,
    rooms: &Rooms,
    mark: &Mark,
    entry: &Entry,
    who: Who,
) -> Option<Handed> {
    let Some(Ok(worked)) = survey.worked(&mark.id) else { return None };
    let sheet = &worked.sheet;
    let is_held = worked.standing.is_held();
    let shown = who.shown(entry, sheet);
    let print = shown.print(&mark.note);
    let now = Kept::of(worked);
    let there = job.jot(&given(who, &mark.id)).map(|jot| jot.says.as_str());
    let is_first = job.jotted(&given(who, "")).is_empty();
    let since = match there.and_then(Was::read) {
        Some(was) => was.since(who, mark, &now, &print),
        None if is_first => Since::Same,
        None => Since::New,
    };
    let word = match sheet.decisive() {
        // A hold is open or shut, whatever its checks say.
        Some(check) if !entry.is_hold => check.word(),
        _ => now.word(&mark.calculator),
    };
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
        figures: shown.figures.to_vec(),
        checks: shown.checks.into_iter().cloned().collect(),
        parts: shown.parts.into_iter().cloned().collect(),
        drawing: shown.drawing.cloned(),
        print,
        since,
        said: said(job, &mark.id),
        seen: Seen::of(mark, Some(worked)),
        sampled: job.still_sample(mark).len(),
        takes_sample: job.takes_sample(mark),
        unlike: rooms.unlike(job, mark),
        has_versions: others(job, mark).next().is_some(),
    })
}

/// The edit that notes a sheet as handed over, so that the next one tells what changed.
pub fn hand_over(job: &Job, sheet: &Turnover) -> Edit {
    let says = sheet.numbers().count().max(1).to_string();
    let mut edits = vec![Edit::Jot { key: given(sheet.who, ""), says }];
    for number in sheet.numbers() {
        let verdict = if number.is_held { "held" } else { number.verdict.key() };
        let answer = number.headline.amount.exact();
        let says = [&*answer, verdict, &number.title, &number.print];
        edits.push(note_of(sheet.who, &number.mark, &says));
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
        Some(Amount::Day(day)) => say!(w::WAS, calendar::told(day), verdict),
        Some(amount) => say!(w::WAS, amount, verdict),
        None => say!(w::WAS, answer, verdict),
    }
}

#[cfg(test)]
mod tests;
