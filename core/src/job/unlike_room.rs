//! What a mark says otherwise than the room that it is in: it was typed and not taken from there, so
//! that it stays as it is when the room changes.

use super::fold::fold;
use super::mark::Mark;
use super::site::Job;
use super::survey::Survey;
use super::words as w;
use crate::catalog;
use crate::fields::{heard, is_asked};
use crate::measure::Units;
use crate::say;
use crate::sheet::Figure;
use crate::words::{Amount, Phrase, Text};

/// A field that is a room's figure by name, with a value that is none of that room's.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unlike {
    /// The field's name.
    pub label: &'static Phrase,
    /// What it says.
    pub here: Amount,
    /// The room's title.
    pub room: String,
    /// What the room says.
    pub there: Amount,
}

impl Unlike {
    /// As a person reads it.
    pub fn says(&self) -> Text {
        say!(w::UNLIKE_ROOM, self.label, self.here, self.there, &*self.room)
    }
}

/// A job's rooms with their figures, looked up once for all of its marks.
#[derive(Debug)]
pub struct Rooms<'a> {
    job: &'a Job,
    all: Vec<(String, &'a Mark, Vec<Figure>)>,
}

impl<'a> Rooms<'a> {
    /// Those that can be worked and have a name.
    pub fn of(job: &'a Job, survey: &Survey<'_>) -> Self {
        let mut all = Vec::new();
        for mark in &job.marks {
            let is_room = catalog::find(&mark.calculator).is_some_and(|entry| entry.is_room);
            let spot = fold(job.spot_of(mark));
            if is_room
                && !spot.is_empty()
                && let Some(Ok(worked)) = survey.worked(&mark.id)
            {
                let headline = std::iter::once(&worked.sheet.headline);
                all.push((spot, mark, headline.chain(&worked.sheet.figures).cloned().collect()));
            }
        }
        Self { job, all }
    }

    /// The fields of a mark in the form's order: those that are asked, that take nothing, and whose
    /// value no room of the same spot has under any name. A height to be is one that the room has.
    pub fn unlike(&self, mark: &Mark) -> Vec<Unlike> {
        let spot = fold(self.job.spot_of(mark));
        let rooms: Vec<_> = self.all.iter().filter(|(name, ..)| *name == spot).collect();
        let entry = catalog::find(&mark.calculator)
            .filter(|entry| !entry.is_room && entry.version == mark.version);
        let Some(entry) = entry.filter(|_| !rooms.is_empty()) else { return Vec::new() };
        let mut all = Vec::new();
        for row in entry.rows.iter().filter(|row| !row.room.is_empty()) {
            let is_tied = mark.ties.iter().any(|tie| tie.path == row.key);
            if is_tied || !is_asked(entry.rows, &mark.input, row.key) {
                continue;
            }
            let typed = mark.input.get(row.key).and_then(|it| it.leaf()).unwrap_or_default();
            let Ok(Some(here)) = heard(row, &typed, Units::Customary) else { continue };
            let figures =
                || rooms.iter().flat_map(|(_, room, all)| all.iter().map(|it| (*room, it)));
            if figures().any(|(_, it)| it.amount.is_like(here) && it.amount.exact() == here.exact())
            {
                continue;
            }
            if let Some((room, figure)) = figures().find(|(_, it)| row.is_figure(it.key, "")) {
                let (label, room) = (row.label, room.title.clone());
                all.push(Unlike { label, here, room, there: figure.amount });
            }
        }
        all
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples::stamp;
    use super::super::{Edit, Survey, Tie, apply};
    use super::*;
    use crate::wire::Node;
    use crate::words::Voice;

    fn made(of: &str, step: u64, spot: &str, puts: &[(&str, &str)]) -> Mark {
        let entry = catalog::find(of).unwrap();
        let mut input = entry.sample();
        puts.iter().for_each(|(path, says)| input.put(path, Node::text(says)));
        let (units, basis) = (Units::Customary, <_>::default());
        let mark = Mark::new(entry, &input, units, basis, None, &stamp(step)).unwrap();
        Mark { title: of.into(), spot: spot.into(), ..mark }
    }

    fn told(marks: &[Mark]) -> Vec<String> {
        let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
        for (mark, step) in marks.iter().zip(1..) {
            apply(&mut job, Edit::Keep(mark.clone()), &stamp(step)).unwrap();
        }
        let survey = Survey::of(&job);
        let rooms = Rooms::of(&job, &survey);
        let all = job.marks.iter().flat_map(|mark| rooms.unlike(mark));
        all.map(|it| Voice::default().say(&it.says())).collect()
    }

    /// The sample room's ceiling is 8 ft and is to be 9 ft 2 in here.
    fn den() -> Mark {
        made("room", 1, "Den", &[("height", "8 ft"), ("height_to_be", "9 ft 2 in")])
    }

    #[test]
    fn a_ceiling_typed_by_hand_is_told_when_the_room_has_another() {
        let plan = |says: &str, spot: &str| made("rough-in", 2, spot, &[("high", says)]);
        assert_eq!(
            told(&[den(), plan("8 ft 6 in", " den ")]),
            ["Finished ceiling: 8 ft 6 in here and 8 ft in room, not taken from there"],
        );
        // Now or to be, it is one of the room's; and of another room nothing is known.
        for (says, spot) in
            [("8 ft", "Den"), ("110 in", "Den"), ("8 ft 6 in", "Hall"), ("7 ft", "")]
        {
            assert_eq!(told(&[den(), plan(says, spot)]), [""; 0], "{says} {spot}");
        }
    }

    #[test]
    fn what_is_taken_is_told_as_moved_and_not_here() {
        let mut plan = made("rough-in", 2, "Den", &[("high", "8 ft 6 in")]);
        let room = den();
        let (path, mark, key) = ("high".into(), room.id.clone(), "ceiling-height".into());
        plan.ties.push(Tie { path, mark, key, seen: "8 ft 6 in".into() });
        assert_eq!(told(&[room, plan]), [""; 0]);
    }

    #[test]
    fn what_a_form_does_not_ask_is_not_told() {
        let boards = |surface: &str| {
            made("boards", 2, "Den", &[("of", surface), ("wall", "12 ft"), ("high", "10 ft")])
        };
        let is_high = |all: &[String]| all.iter().any(|it| it.contains("10 ft here"));
        assert!(!is_high(&told(&[den(), boards("ceiling")])));
        assert!(is_high(&told(&[den(), boards("wall")])));
    }
}
