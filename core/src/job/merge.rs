//! Two copies of one job, from two devices or from one and a backup of it, made into one.
//!
//! By mark and by what each device has done ([`Clock`](super::Clock)):
//!
//! | here | there | what becomes of it |
//! | --- | --- | --- |
//! | a mark | changed since | replaced |
//! | a mark | older, or the same | stays |
//! | a mark | changed by itself | both: one under another id, with a title that says so |
//! | a mark | removed since | removed |
//! | a mark | removed, not knowing of a change here | stays |
//! | removed | a mark that was known then | stays removed |
//! | removed | a mark changed without word of that | comes back |
//!
//! Links and holds go by id, so that they lead to the mark that keeps it. The job's name, place,
//! editions and units are one thing with one clock: changed on both sides, ours stand and theirs
//! are told. Of words under a name that both sides wrote the later ones hold.
//!
//! Nothing is written here: what is to be done is an [`Edit`] for the one door.

use super::clock::{Clock, Order};
use super::edit::Edit;
use super::jot::Jot;
use super::known::{Known, Terms};
use super::mark::Mark;
use super::refusal::LONGEST_TITLE;
use super::site::{Gone, Job};
use super::words as w;
use crate::words::{Phrase, Text, Voice};

/// What becomes of a mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fate {
    /// It was not here.
    New,
    /// It takes the place of an older one.
    Replaced,
    /// Changed on both sides: both are kept, one beside the other.
    Both,
    /// Removed there since.
    Removed,
    /// Removed here since, and stays so.
    StaysGone,
    /// Here already, as it is there or newer.
    Here,
}

/// A mark by its title, and what becomes of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MarkFate {
    /// Its id, as it is there.
    pub id: String,
    /// Its title, as it is there or, of a removed one, was here.
    pub title: String,
    /// What becomes of it.
    pub fate: Fate,
}

/// What becomes of the job's name, place, editions and units.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TermsFate {
    /// They stay as they are.
    Here,
    /// Theirs, changed since, are taken.
    Replaced(Terms),
    /// Changed on both sides: ours stand, and these are theirs.
    Told(Terms),
}

/// What a merge comes to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Merged {
    /// What is to be done to our copy; none where it knows everything that theirs does.
    pub edit: Option<Edit>,
    /// What becomes of the job's own terms.
    pub terms: TermsFate,
    /// What becomes of each mark that is there, or was removed there.
    pub marks: Vec<MarkFate>,
    /// How many words under a name are other ones now: ticks, prices, what an owner said.
    pub jots: usize,
    /// Titles along a circle of links that neither side had alone, first and last the same.
    pub circle: Option<Vec<String>>,
}

impl Merged {
    /// How many marks have this fate.
    pub fn count(&self, fate: Fate) -> usize {
        self.marks.iter().filter(|mark| mark.fate == fate).count()
    }

    /// Whether anything changes that a person can see. What one side learns of what the other knows
    /// can't be seen.
    pub fn changes(&self) -> bool {
        let stays = |mark: &MarkFate| matches!(mark.fate, Fate::Here | Fate::StaysGone);
        let terms = matches!(self.terms, TermsFate::Replaced(_));
        self.edit.is_some() && (terms || self.jots > 0 || !self.marks.iter().all(stays))
    }
}

/// What is to be done to `ours` so that it knows all that `theirs` does. Both are copies of one
/// job; its id, its making and whether it is invented stay ours.
///
/// - Merged twice, nothing is left to do the second time.
/// - Merged the other way round, the same marks come out. Of two that were changed on both sides
///   the one that was worked out last keeps the id.
/// - Nothing is lost that the other side did not know of when it changed or removed it.
pub fn merge(ours: &Job, theirs: &Job) -> Merged {
    let mut work = Work {
        ours,
        result: ours.clone(),
        edits: Vec::new(),
        marks: Vec::with_capacity(theirs.marks.len()),
        jots: 0,
        second: Vec::new(),
    };
    let terms = work.terms(Terms::of(theirs));
    for mark in &theirs.marks {
        work.mark(mark);
    }
    for gone in &theirs.gone {
        work.gone(gone);
    }
    for jot in &theirs.jots {
        work.jot(jot);
    }
    // Last, so that what theirs knows of a second one's id comes first.
    for copy in std::mem::take(&mut work.second) {
        work.beside(copy);
    }
    let circle = circle(&work.result).filter(|_| circle(ours).is_none());
    let edit = (!work.edits.is_empty()).then_some(Edit::Several(work.edits));
    Merged { edit, terms, marks: work.marks, jots: work.jots, circle }
}

struct Work<'a> {
    ours: &'a Job,
    /// What it will come to.
    result: Job,
    edits: Vec<Edit>,
    marks: Vec<MarkFate>,
    jots: usize,
    /// Those of theirs that were changed on both sides.
    second: Vec<Mark>,
}

impl Work<'_> {
    fn learn(&mut self, known: Known) {
        let over = known.here(&self.result).clock().cloned();
        self.edits.push(Edit::Learn { known: known.clone(), over });
        known.put(&mut self.result);
    }

    fn tell(&mut self, mark: &Mark, fate: Fate) {
        self.marks.push(MarkFate { id: mark.id.clone(), title: mark.title.clone(), fate });
    }

    fn terms(&mut self, theirs: Terms) -> TermsFate {
        let ours = Terms::of(self.ours);
        let told = |theirs: Terms, ours: &Terms| {
            if theirs.agree(ours) { TermsFate::Here } else { TermsFate::Told(theirs) }
        };
        match ours.clock.versus(&theirs.clock) {
            Order::After => TermsFate::Here,
            // The same clock over two readings: one device's later change was lost with its
            // battery. Neither side knows of the other's.
            Order::Same => told(theirs, &ours),
            Order::Before => {
                self.learn(Known::Terms(theirs.clone()));
                if theirs.agree(&ours) { TermsFate::Here } else { TermsFate::Replaced(theirs) }
            }
            Order::Aside => {
                let clock = joined(&ours.clock, &theirs.clock);
                self.learn(Known::Terms(Terms { clock, ..ours.clone() }));
                told(theirs, &ours)
            }
        }
    }

    fn mark(&mut self, theirs: &Mark) {
        let fate = match Known::of(self.ours, &theirs.id) {
            Known::Mark(ours) => self.both_here(*ours, theirs),
            Known::Gone(gone) => match gone.clock.versus(&theirs.clock) {
                Order::After => Fate::StaysGone,
                // One that has the clock of a removal was changed by a device that lost its memory
                // of that: it knew nothing of it either.
                Order::Same | Order::Before | Order::Aside => {
                    let clock = joined(&gone.clock, &theirs.clock);
                    self.learn(mark(Mark { clock, ..theirs.clone() }));
                    Fate::New
                }
            },
            Known::Nothing(_) | Known::Terms(_) | Known::Jot(_) => {
                self.learn(mark(theirs.clone()));
                Fate::New
            }
        };
        self.tell(theirs, fate);
    }

    fn both_here(&mut self, ours: Mark, theirs: &Mark) -> Fate {
        let is_same = same(&ours, theirs);
        match ours.clock.versus(&theirs.clock) {
            Order::After => return Fate::Here,
            Order::Same if is_same => return Fate::Here,
            Order::Before => {
                self.learn(mark(theirs.clone()));
                return if is_same { Fate::Here } else { Fate::Replaced };
            }
            Order::Same | Order::Aside => {}
        }
        let clock = joined(&ours.clock, &theirs.clock);
        // The same one on every device, whichever side is its own.
        let ours_stays = is_same || rank(&ours) > rank(theirs);
        let copy = beside(if ours_stays { theirs } else { &ours });
        let stays = if ours_stays { &ours } else { theirs };
        let stays = Mark { clock, ..stays.clone() };
        if stays != ours {
            self.learn(mark(stays));
        }
        if is_same {
            return Fate::Here;
        }
        if !matches!(Known::of(self.ours, &copy.id), Known::Nothing(_)) {
            return if ours_stays { Fate::Here } else { Fate::Replaced };
        }
        self.second.push(copy);
        Fate::Both
    }

    fn gone(&mut self, theirs: &Gone) {
        match Known::of(self.ours, &theirs.id) {
            Known::Mark(ours) => match ours.clock.versus(&theirs.clock) {
                Order::Before => {
                    self.learn(Known::Gone(theirs.clone()));
                    self.tell(&ours, Fate::Removed);
                }
                // Changed here without word of the removal: it stays, and is past it from now on.
                Order::Aside => {
                    let clock = joined(&ours.clock, &theirs.clock);
                    self.learn(mark(Mark { clock, ..*ours }));
                }
                Order::Same | Order::After => {}
            },
            Known::Gone(ours) => {
                let when = |gone: &Gone| (gone.at.at, gone.at.zone);
                let both = match ours.clock.versus(&theirs.clock) {
                    Order::After => return,
                    Order::Before => theirs.clone(),
                    Order::Same | Order::Aside => {
                        let at = if when(&ours) < when(theirs) { theirs.at } else { ours.at };
                        let clock = joined(&ours.clock, &theirs.clock);
                        Gone { id: ours.id.clone(), clock, at }
                    }
                };
                if both != ours {
                    self.learn(Known::Gone(both));
                }
            }
            Known::Nothing(_) | Known::Terms(_) | Known::Jot(_) => {
                self.learn(Known::Gone(theirs.clone()))
            }
        }
    }

    /// The later of two, whoever asks: a tick or a price is not worth a second line.
    fn jot(&mut self, theirs: &Jot) {
        let ours = self.ours.jot(&theirs.key);
        let joined = ours.map_or_else(|| theirs.clone(), |ours| ours.joined(theirs));
        if ours == Some(&joined) {
            return;
        }
        self.jots += usize::from(ours.map_or("", |ours| &ours.says) != joined.says);
        self.learn(Known::Jot(joined));
    }

    fn beside(&mut self, copy: Mark) {
        if matches!(Known::of(&self.result, &copy.id), Known::Nothing(_)) {
            self.learn(mark(copy));
        }
    }
}

fn mark(mark: Mark) -> Known {
    Known::Mark(Box::new(mark))
}

fn joined(one: &Clock, other: &Clock) -> Clock {
    let mut clock = one.clone();
    clock.join(other);
    clock
}

/// Whether two marks are the same in everything but clocks.
fn same(one: &Mark, other: &Mark) -> bool {
    one.id == other.id && Mark { clock: other.clock.clone(), ..one.clone() } == *other
}

/// A mark of a backup as a new one beside what is here, for one that stays out of a merge. As with
/// [`beside`], making it again makes no other.
pub(super) fn from_backup(mark: &Mark) -> Mark {
    Mark { clock: Clock::default(), ..another(mark, &w::FROM_BACKUP) }
}

/// What a mark says, clock apart.
fn content(mark: &Mark) -> String {
    let bare = Mark { clock: Clock::default(), ..mark.clone() };
    serde_json::to_string(&bare.stored()).unwrap_or_default()
}

/// Of two that were changed on both sides the higher one keeps the id: the one that was worked out
/// last.
pub(super) fn rank(mark: &Mark) -> (i64, String) {
    (mark.at.at, content(mark))
}

/// A mark as the second one of two that were changed on both sides.
///
/// Its id follows from what it is, so that every device that meets the two makes the same one, and
/// meeting them again makes no other. For the same reason its title is the same in every language.
pub(super) fn beside(mark: &Mark) -> Mark {
    Mark { id: id_of(&content(mark)), ..another(mark, &w::OTHER_VERSION_OF) }
}

/// The title of the second one of two that were titled so.
pub(super) fn other_title(title: &str) -> String {
    within(title, &w::OTHER_VERSION_OF)
}

/// Whether a title is one of those. Asked of every number for every line of a job: nothing is written
/// out for it.
pub(super) fn is_other_title(title: &str) -> bool {
    w::OTHER_VERSION_OF.en.strip_prefix("{0}").is_some_and(|words| title.ends_with(words))
}

/// A title within words that say where it comes from, cut where both together are too long.
fn within(title: &str, words: &'static Phrase) -> String {
    let says = |title: &str| {
        Voice::default().say(&Text { phrase: words, args: vec![title.to_owned().into()] })
    };
    let room = LONGEST_TITLE.saturating_sub(says("").chars().count());
    says(&title.chars().take(room).collect::<String>())
}

/// Under another title, which says where it comes from, and an id that follows from both.
fn another(mark: &Mark, titled: &'static Phrase) -> Mark {
    let other = Mark { title: within(&mark.title, titled), ..mark.clone() };
    Mark { id: id_of(&content(&other)), ..other }
}

/// Twelve characters that follow from a text: the FNV-1a hash of 64 bits, in digits and letters.
///
/// # Source
/// IETF draft-eastlake-fnv-21 (2024), "The FNV Non-Cryptographic Hash Algorithm"; offset and prime
/// from memory.
fn id_of(text: &str) -> String {
    let hash = text.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    });
    let digit = |place: u32| char::from_digit((hash / 36_u64.pow(place) % 36) as u32, 36);
    (0..12).rev().filter_map(digit).collect()
}

/// The titles along a circle of what marks draw on; none where there is none. Each link is
/// followed once, without recursion, however long the chain.
fn circle(job: &Job) -> Option<Vec<String>> {
    let next = |at: usize| -> Vec<usize> {
        job.marks[at].draws_on().filter_map(|id| job.place_of(id).ok()).collect()
    };
    let mut done = vec![false; job.marks.len()];
    let mut on_way = vec![false; job.marks.len()];
    for start in 0..job.marks.len() {
        if done[start] {
            continue;
        }
        let mut way: Vec<(usize, Vec<usize>)> = vec![(start, next(start))];
        on_way[start] = true;
        while let Some((at, left)) = way.last_mut() {
            let Some(to) = left.pop() else {
                (done[*at], on_way[*at]) = (true, false);
                way.pop();
                continue;
            };
            if on_way[to] {
                let from = way.iter().position(|(at, _)| *at == to).unwrap_or(0);
                let titles = way.iter().skip(from).map(|(at, _)| *at).chain([to]);
                return Some(titles.map(|at| job.marks[at].title.clone()).collect());
            }
            if !done[to] {
                on_way[to] = true;
                way.push((to, next(to)));
            }
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: test vectors of draft-eastlake-fnv-21, FNV-1a of 64 bits, from memory: the empty
    /// text gives the offset, "a" gives af63dc4c8601ec8c. Their last digits in base 36.
    #[test]
    fn an_id_follows_from_what_it_is_of() {
        for (text, hash) in [("", 0xcbf2_9ce4_8422_2325_u64), ("a", 0xaf63_dc4c_8601_ec8c)] {
            let mut rest = hash;
            let mut want = String::new();
            for _ in 0..12 {
                want.insert(0, char::from_digit((rest % 36) as u32, 36).unwrap());
                rest /= 36;
            }
            assert_eq!(id_of(text), want, "{text}");
        }
    }
}
