//! A kept number: what was put in, and the answer of its day.

use super::clock::Clock;
use super::refusal::{LONGEST_NOTE, LONGEST_SPOT, LONGEST_TITLE, Refusal, fits, usable};
use super::stamp::{Moment, Stamp};
use super::tie::Tie;
use super::words as w;
use crate::calculators::hold::Opened;
use crate::catalog::{self, Entry, Worked};
use crate::edition::{Basis, Electrical};
use crate::measure::Units;
use crate::say;
use crate::sheet::{Asks, Check, Faults, Standing, Verdict};
use crate::wire::Node;
use crate::words::{Phrase, Text};

/// What is kept as the verdict of what was held.
const HELD: &str = "held";

/// Whether two verdicts that were kept are the same one, whoever is to be asked. What asks and nobody
/// local decides is kept by [`Asks::key`]: to older versions a verdict that they don't know, which asks.
pub(super) fn is_same(one: &str, other: &str) -> bool {
    let plain = |key| if Asks::from_key(key).is_some() { Verdict::Ask.key() } else { key };
    plain(one) == plain(other)
}

/// The word for a verdict that was kept of a calculator's answer: a hold that isn't shut is open.
pub(super) fn word_of(calculator: &str, key: &str) -> &'static Phrase {
    match key {
        HELD => Standing::held(),
        _ if catalog::find(calculator).is_some_and(|entry| entry.is_hold) => Standing::open(),
        _ => match Asks::from_key(key) {
            Some(asks) => asks.words(),
            None => Verdict::from_key(key).unwrap_or(Verdict::Ask).words(),
        },
    }
}

/// The answer as it was on the day, in exact text. It never changes by itself: not when a
/// job's edition changes, not when a calculator is corrected.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Kept {
    /// The key of the figure that is the answer.
    pub figure: String,
    /// Its exact text, with its unit.
    pub answer: String,
    /// [`Verdict::key`] of the whole, [`Asks::key`] where it asks, or `held`.
    pub verdict: String,
    /// The edition that it was shown under, where one matters.
    pub edition: Option<Electrical>,
    /// The other figures: key and exact text.
    pub figures: Vec<(String, String)>,
    /// The checks: key and verdict key.
    pub checks: Vec<(String, String)>,
}

impl Kept {
    /// What is kept of a worked answer.
    pub fn of(worked: &Worked) -> Self {
        let sheet = &worked.sheet;
        Self {
            figure: sheet.headline.key.to_owned(),
            answer: sheet.headline.amount.exact(),
            verdict: match sheet.decisive() {
                _ if worked.standing.is_held() => HELD,
                Some(check) if check.verdict == Verdict::Ask => check.asks.key(),
                _ => sheet.verdict().key(),
            }
            .to_owned(),
            edition: worked.edition,
            figures: sheet
                .figures
                .iter()
                .map(|figure| (figure.key.to_owned(), figure.amount.exact()))
                .collect(),
            checks: sheet
                .checks
                .iter()
                .map(|check| (check.key.clone(), check.verdict.key().to_owned()))
                .collect(),
        }
    }

    /// The verdict of the rules. One that this version doesn't know reads as "ask locally".
    pub fn verdict(&self) -> Verdict {
        Verdict::from_key(&self.verdict).unwrap_or(Verdict::Ask)
    }

    /// Whether it was held.
    pub fn is_held(&self) -> bool {
        self.verdict == HELD
    }

    /// The word for how it stood, of a calculator's answer.
    pub fn word(&self, calculator: &str) -> &'static Phrase {
        word_of(calculator, &self.verdict)
    }

    /// The same, in its check's own word, "short" where too little is over: that is known once the
    /// mark is worked again.
    pub fn word_beside(&self, calculator: &str, now: &Worked) -> &'static Phrase {
        let over = Verdict::Over.key();
        let was_over =
            |check: &&Check| self.checks.iter().any(|it| *it.0 == *check.key && it.1 == over);
        let sheet = &now.sheet;
        let first = || sheet.checks.iter().find(was_over);
        match sheet.lead().filter(was_over).or_else(first) {
            Some(check) if self.verdict == over => {
                Check { verdict: Verdict::Over, ..check.clone() }.word()
            }
            _ => self.word(calculator),
        }
    }

    /// Whether nothing was checked, so that no word says how it stood: a price is within nothing.
    pub fn is_bare(&self) -> bool {
        self.checks.is_empty() && self.verdict == Verdict::Within.key()
    }

    /// Whether a person would call the two the same answer: figure, text and verdict. Which
    /// checks stood beside it, and under which edition, does not matter.
    pub fn agrees(&self, other: &Self) -> bool {
        (&self.figure, &self.answer) == (&other.figure, &other.answer)
            && is_same(&self.verdict, &other.verdict)
    }
}

/// A kept number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mark {
    /// Its name in addresses; unique in its job.
    pub id: String,
    /// The calculator's id.
    pub calculator: String,
    /// The calculator's version, of its input's shape.
    pub version: u16,
    /// The editions that it was worked under.
    pub basis: Basis,
    /// What was put in, every unit written out. Read by its calculator alone.
    pub input: Node,
    /// Which inputs take their value from another mark's figure, by path.
    pub ties: Vec<Tie>,
    /// The hold that it stands behind, by the id of its mark, where one is needed.
    pub behind: Option<String>,
    /// The answer of its day.
    pub kept: Kept,
    /// What a person calls it.
    pub title: String,
    /// The room or spot.
    pub spot: String,
    /// Whatever else is to be remembered.
    pub note: String,
    /// When the answer was worked out.
    pub at: Moment,
    /// How often each device has changed it.
    pub clock: Clock,
}

/// Why a mark can't be worked today. Its kept answer stands, and its bytes are left alone.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Stale {
    /// No calculator has its id.
    NoCalculator,
    /// Its calculator is of another version, and no step leads here.
    OtherVersion,
    /// Its calculator refuses the input.
    Refused(Faults),
}

impl Stale {
    /// As a person reads it.
    pub fn says(&self) -> Text {
        match self {
            Self::NoCalculator => say!(w::NO_CALCULATOR),
            Self::OtherVersion => say!(w::OTHER_VERSION),
            Self::Refused(_) => say!(w::NO_LONGER_FITS),
        }
    }
}

impl Mark {
    /// Works an input and makes a mark of it, without links, title, spot or note.
    ///
    /// # Errors
    /// What could not be read, or does not fit. Nothing is kept that has no answer.
    pub fn new(
        entry: &Entry,
        input: &Node,
        units: Units,
        basis: Basis,
        hold: Option<&Opened>,
        stamp: &Stamp,
    ) -> Result<Self, Faults> {
        let input = entry.canonical(input, units)?;
        let worked = entry.work_behind(&input, Units::Customary, basis, hold)?;
        let worked = worked.as_of(stamp.moment().day());
        Ok(Self {
            id: stamp.id(),
            calculator: entry.id.to_owned(),
            version: entry.version,
            basis,
            input,
            ties: Vec::new(),
            behind: None,
            kept: Kept::of(&worked),
            title: String::new(),
            spot: String::new(),
            note: String::new(),
            at: stamp.moment(),
            clock: Clock::default(),
        })
    }

    /// Works the mark again, under `basis` and with no hold open: the answer of today beside the
    /// kept one. What disturbs old material is held.
    ///
    /// # Errors
    /// Why it can't be; then the kept answer is all there is to show.
    pub fn work(&self, basis: Basis) -> Result<Worked, Stale> {
        self.work_behind(basis, None)
    }

    /// Works the mark again behind a hold.
    ///
    /// # Errors
    /// As [`Mark::work`].
    pub fn work_behind(&self, basis: Basis, hold: Option<&Opened>) -> Result<Worked, Stale> {
        let entry = catalog::find(&self.calculator).ok_or(Stale::NoCalculator)?;
        if entry.version != self.version {
            return Err(Stale::OtherVersion);
        }
        // The units are written out in a kept input, so that the default is never asked for.
        let worked = entry.work_behind(&self.input, Units::Customary, basis, hold);
        Ok(worked.map_err(Stale::Refused)?.as_of(self.at.day()))
    }

    /// The same mark with a new id and a clock of its own. Its answer is as old as it was, and so
    /// is its date: it stands beside the first one until it is worked anew.
    pub fn duplicate(&self, stamp: &Stamp) -> Self {
        Self { id: stamp.id(), clock: Clock::default(), ..self.clone() }
    }

    /// Refuses what no job can hold.
    pub(super) fn check(&self) -> Result<(), Refusal> {
        if !usable(&self.id) {
            return Err(Refusal::BadId(self.id.clone()));
        }
        fits(&w::A_TITLE, &self.title, LONGEST_TITLE)?;
        fits(&w::A_SPOT, &self.spot, LONGEST_SPOT)?;
        fits(&w::A_NOTE, &self.note, LONGEST_NOTE)
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples;
    use super::*;
    use crate::words::Voice;

    fn entry() -> &'static Entry {
        &catalog::ALL[0]
    }

    fn sample() -> Mark {
        let input = entry().sample();
        Mark::new(entry(), &input, Units::Metric, Basis::default(), None, &samples::stamp(4))
            .unwrap()
    }

    #[test]
    fn a_mark_keeps_what_was_worked() {
        let mark = sample();
        let worked = mark.work(Basis::default()).unwrap();
        assert_eq!(mark.kept, Kept::of(&worked));
        assert_eq!(mark.kept.answer, worked.sheet.headline.amount.exact());
        assert_eq!(mark.kept.verdict(), worked.sheet.verdict());
        assert_eq!(mark.kept.edition, worked.edition);
        assert_eq!(mark.kept.checks.len(), worked.sheet.checks.len());
        assert_eq!((mark.id, mark.at), (samples::stamp(4).id(), samples::stamp(4).moment()));
    }

    #[test]
    fn what_has_no_answer_is_not_kept() {
        let nothing = Node::text("nothing");
        let stamp = samples::stamp(0);
        assert!(
            Mark::new(entry(), &nothing, Units::Customary, Basis::default(), None, &stamp).is_err()
        );
    }

    #[test]
    fn a_mark_that_can_not_be_worked_says_why_and_keeps_its_answer() {
        let other = Mark { version: entry().version + 1, ..sample() };
        let refused = Mark { input: Node::EMPTY, ..sample() };
        for (mark, want, says) in [
            (samples::mark(1), "NoCalculator", "This version has no calculator for this number."),
            (other, "OtherVersion", "The calculator has changed since this was kept."),
            (refused, "Refused", "What was put in no longer fits the calculator."),
        ] {
            let stale = mark.work(mark.basis).unwrap_err();
            assert!(format!("{stale:?}").starts_with(want), "{stale:?}");
            assert!(Voice::default().say(&stale.says()).starts_with(says), "{want}");
        }
    }

    #[test]
    fn answers_agree_by_figure_text_and_verdict() {
        let kept = sample().kept;
        let later = Kept { edition: None, checks: Vec::new(), ..kept.clone() };
        assert!(kept.agrees(&later));
        for other in [
            Kept { figure: "x".into(), ..kept.clone() },
            Kept { answer: "x".into(), ..kept.clone() },
            Kept { verdict: "x".into(), ..kept.clone() },
        ] {
            assert!(!kept.agrees(&other));
        }
        assert_eq!(Kept::default().verdict(), Verdict::Ask, "a verdict that isn't known");
        // Kept by a version that asked locally, what is to be settled has not moved.
        let [asks, settles] =
            ["ask", "settle"].map(|key| Kept { verdict: key.into(), ..kept.clone() });
        assert!(asks.agrees(&settles) && !settles.agrees(&kept));
        assert_eq!(settles.verdict(), Verdict::Ask);
        assert_eq!(Voice::default().phrase(settles.word("paint")), "settle it first");
    }

    /// What the check itself says of too little is what the job says of it.
    #[test]
    fn a_kept_answer_that_is_too_short_is_short() {
        let demo = super::super::demo(Voice::default());
        let survey = super::super::Survey::of(&demo);
        let mut said = Vec::new();
        for mark in &demo.marks {
            let Some(Ok(worked)) = survey.worked(&mark.id) else { panic!("{}", mark.title) };
            let word = mark.kept.word_beside(&mark.calculator, worked);
            let is_hold = catalog::find(&mark.calculator).is_some_and(|entry| entry.is_hold);
            match worked.sheet.decisive() {
                _ if mark.kept.is_held() => assert_eq!(word, Standing::held()),
                _ if is_hold => assert_eq!(word.en, "open"),
                Some(check) => assert_eq!(word, check.word(), "{}", mark.title),
                None => assert_eq!(word, Verdict::Within.words()),
            }
            said.push(word.en);
        }
        assert!(said.contains(&"short") && said.contains(&"over"), "{said:?}");
    }
}
