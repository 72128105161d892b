//! A job: a house where numbers are kept.

use super::clock::Clock;
use super::fold::fold;
use super::jot::{Jot, nameable};
use super::mark::Mark;
use super::refusal::{LONGEST_NAME, LONGEST_PLACE, Refusal, fits, usable};
use super::stamp::{Moment, Stamp};
use super::words as w;
use crate::catalog;
use crate::edition::Basis;
use crate::measure::Units;
use crate::say;
use crate::words::{Arg, Text};

/// Under this name stands that a job is done with: it is listed below the others, and is the first
/// to make room in a store that is small.
pub const PUT_AWAY: &str = "put away";

/// A job and its marks. Changed through [`super::apply`] alone.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Job {
    /// Its name in addresses and stores.
    pub id: String,
    /// What a person calls it; may be empty.
    pub name: String,
    /// Where it is.
    pub place: String,
    /// The editions it is under.
    pub basis: Basis,
    /// The units its figures are shown in.
    pub units: Units,
    /// When it was made.
    pub made: Moment,
    /// How often each device has changed name, place, editions or units.
    pub clock: Clock,
    /// By id, so that the same marks are the same bytes whatever order they came in.
    pub marks: Vec<Mark>,
    /// What was removed, by id: an older copy that still has it must not bring it back.
    pub gone: Vec<Gone>,
    /// What was written down under a name, by name: what is bought, at what price, what an owner
    /// said.
    pub jots: Vec<Jot>,
    /// A demonstration: never in a backup, never among a person's own.
    pub invented: bool,
}

/// What is left of a removed mark.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Gone {
    /// The mark's id.
    pub id: String,
    /// Past the mark's last clock.
    pub clock: Clock,
    /// When it was removed.
    pub at: Moment,
}

/// What a mark says of where it is by itself: what was written, and of a room its title too.
pub(super) fn own_spot(mark: &Mark) -> &str {
    match mark.spot.trim() {
        "" if is_room(mark) => mark.title.trim(),
        spot => spot,
    }
}

fn is_room(mark: &Mark) -> bool {
    catalog::find(&mark.calculator).is_some_and(|entry| entry.is_room)
}

/// The marks of one room or spot.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Spot<'a> {
    /// As it was written last; empty for marks without a spot.
    pub name: &'a str,
    /// The newest first.
    pub marks: Vec<&'a Mark>,
}

/// A job's name as a person reads it.
pub fn heading_of(name: &str) -> Text {
    match name.trim() {
        "" => say!(w::NO_NAME),
        name => say!(w::AS_TYPED, Arg::from(name)),
    }
}

impl Job {
    /// A job without marks, editions not set, in feet and inches.
    ///
    /// # Errors
    /// [`Refusal::TooLong`].
    pub fn new(name: &str, place: &str, stamp: &Stamp) -> Result<Self, Refusal> {
        check(name, place)?;
        Ok(Self { name: name.to_owned(), place: place.to_owned(), ..Self::unnamed(stamp) })
    }

    pub(super) fn unnamed(stamp: &Stamp) -> Self {
        Self {
            id: stamp.id(),
            name: String::new(),
            place: String::new(),
            basis: Basis::default(),
            units: Units::default(),
            made: stamp.moment(),
            clock: Clock::default(),
            marks: Vec::new(),
            gone: Vec::new(),
            jots: Vec::new(),
            invented: false,
        }
    }

    /// Its name as a person reads it.
    pub fn heading(&self) -> Text {
        heading_of(&self.name)
    }

    /// When it was worked on last: its newest mark's time, or when it was made.
    pub fn last_worked(&self) -> i64 {
        self.marks.iter().map(|mark| mark.at.at).fold(self.made.at, i64::max)
    }

    /// Whether it is done with and put away. See [`PUT_AWAY`].
    pub fn is_put_away(&self) -> bool {
        !self.jotted(PUT_AWAY).is_empty()
    }

    /// The mark of this id.
    pub fn mark(&self, id: &str) -> Option<&Mark> {
        self.place_of(id).ok().and_then(|at| self.marks.get(at))
    }

    /// The room or spot of a mark: its own, else that of the room that it took figures from; empty
    /// where there is none, or where it took them from rooms in several spots.
    pub fn spot_of<'a>(&'a self, mark: &'a Mark) -> &'a str {
        let mut found = own_spot(mark);
        if !found.is_empty() {
            return found;
        }
        for tie in &mark.ties {
            let Some(room) = self.mark(&tie.mark).filter(|it| is_room(it)) else { continue };
            let spot = own_spot(room);
            if !found.is_empty() && fold(found) != fold(spot) {
                return "";
            }
            found = spot;
        }
        found
    }

    /// The marks by spot: the spot with the newest mark first, in it the newest first. Case and
    /// blanks around a spot's name don't make it another spot.
    pub fn newest_first_by_spot(&self) -> Vec<Spot<'_>> {
        // Put in place one by one: the library's sort is more code than a job's marks are worth.
        let mut marks: Vec<&Mark> = Vec::with_capacity(self.marks.len());
        for mark in &self.marks {
            let age = (mark.at.at, &mark.id);
            let place = marks.partition_point(|newer| (newer.at.at, &newer.id) > age);
            marks.insert(place, mark);
        }
        let mut keys: Vec<String> = Vec::new();
        let mut spots: Vec<Spot<'_>> = Vec::new();
        for mark in marks {
            let name = self.spot_of(mark);
            let key = fold(name);
            let place = keys.iter().position(|known| *known == key).unwrap_or_else(|| {
                keys.push(key);
                spots.push(Spot { name, marks: Vec::new() });
                spots.len() - 1
            });
            spots[place].marks.push(mark);
        }
        spots
    }

    /// Where a mark of this id stands, or would.
    pub(super) fn place_of(&self, id: &str) -> Result<usize, usize> {
        self.marks.binary_search_by(|mark| mark.id.as_str().cmp(id))
    }

    /// Where the trace of a removed mark of this id stands, or would.
    pub(super) fn trace_of(&self, id: &str) -> Result<usize, usize> {
        self.gone.binary_search_by(|gone| gone.id.as_str().cmp(id))
    }

    /// Whether ids are usable, in order, once each, and none is both here and gone: what the door
    /// relies on and a record read from a store has to show.
    pub(super) fn in_order(&self) -> bool {
        let rising = |ids: &[&str]| ids.windows(2).all(|pair| pair[0] < pair[1]);
        let here: Vec<&str> = self.marks.iter().map(|mark| mark.id.as_str()).collect();
        let gone: Vec<&str> = self.gone.iter().map(|gone| gone.id.as_str()).collect();
        let jots: Vec<&str> = self.jots.iter().map(|jot| jot.key.as_str()).collect();
        usable(&self.id)
            && rising(&jots)
            && jots.iter().all(|key| nameable(key))
            && here.iter().chain(&gone).all(|id| usable(id))
            && rising(&here)
            && rising(&gone)
            && here.iter().all(|id| self.trace_of(id).is_err())
    }
}

/// Refuses what no job can be called.
pub(super) fn check(name: &str, place: &str) -> Result<(), Refusal> {
    fits(&w::A_NAME, name, LONGEST_NAME)?;
    fits(&w::A_PLACE, place, LONGEST_PLACE)
}

#[cfg(test)]
mod tests {
    use super::super::samples::{mark, stamp};
    use super::super::tie::Tie;
    use super::*;
    use crate::words::Voice;

    #[test]
    fn a_number_that_took_a_rooms_figures_stands_in_that_room() {
        let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
        let ids = ["den", "hall", "paint"].map(str::to_owned);
        for (id, calculator) in ids.iter().zip(["room", "room", "paint"]) {
            let mark = mark(1);
            job.marks.push(Mark { id: id.clone(), calculator: calculator.into(), ..mark });
        }
        let tie = |mark: &str| Tie {
            path: "area".into(),
            mark: mark.into(),
            key: "ceiling".into(),
            seen: "168 sq ft".into(),
        };
        let spot = |job: &Job| job.spot_of(job.mark("paint").unwrap()).to_owned();
        for mark in &mut job.marks {
            (mark.spot, mark.ties) = (String::new(), Vec::new());
        }
        assert_eq!(spot(&job), "", "it took nothing");
        (job.marks[0].title, job.marks[1].title) = ("Den".into(), "Hall".into());
        job.marks[2].ties = vec![tie("den")];
        assert_eq!(spot(&job), "Den");
        let spots = job.newest_first_by_spot();
        let names: Vec<_> = spots.iter().map(|it| (it.name, it.marks.len())).collect();
        assert_eq!(names.len(), 2);
        assert!(names.contains(&("Den", 2)) && names.contains(&("Hall", 1)), "{names:?}");
        job.marks[2].ties.push(tie("hall"));
        assert_eq!(spot(&job), "", "of two rooms it is in neither");
        job.marks[1].spot = " den".into();
        assert_eq!(fold(&spot(&job)), "den", "two that are measured in one spot");
        job.marks[2].spot = "Attic".into();
        assert_eq!(spot(&job), "Attic", "what was written holds");
        job.marks[2].ties = vec![tie("gone"), tie("paint")];
        job.marks[2].spot.clear();
        assert_eq!(spot(&job), "", "no room");
    }

    #[test]
    fn a_job_without_a_name_says_so() {
        for (name, want) in [(" ", "Job without a name"), (" Quoin 4 ", "Quoin 4")] {
            let job = Job::new(name, "", &stamp(0)).unwrap();
            assert_eq!(Voice::default().say(&job.heading()), want);
            assert_eq!(job.name, name, "kept as typed");
        }
    }
}
