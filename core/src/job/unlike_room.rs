//! What a mark says otherwise than the room that it is in: it was typed and not taken from there, so
//! that it stays as it is when the room changes.

use super::fold::fold;
use super::mark::Mark;
use super::site::Job;
use super::survey::Survey;
use super::tie::Tie;
use super::words as w;
use crate::catalog::{self, Entry};
use crate::fields::{Row, heard, is_asked};
use crate::measure::Units;
use crate::say;
use crate::sheet::Figure;
use crate::wire::Node;
use crate::words::{Amount, Phrase, Text};

/// A field that is a room's figure by name, with a value that is none of that room's.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unlike {
    /// The field, by key.
    pub key: &'static str,
    /// Its name.
    pub label: &'static Phrase,
    /// What it says.
    pub here: Amount,
    /// The room's title.
    pub room: String,
    /// What the figure is called there.
    pub figure: Text,
    /// What the room says.
    pub there: Amount,
}

impl Unlike {
    /// Beside the field.
    pub fn says_here(&self) -> Text {
        say!(w::UNLIKE_HERE, &*self.room, self.figure.clone(), self.there)
    }

    /// As a person reads it.
    pub fn says(&self) -> Text {
        say!(w::UNLIKE_ROOM, self.label, self.here, &*self.room, self.figure.clone(), self.there)
    }
}

/// A room of a job.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Room {
    /// Its spot, to be compared.
    spot: String,
    mark: String,
    title: String,
    figures: Vec<Figure>,
}

/// A job's rooms with their figures, looked up once for all of its marks.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Rooms(Vec<Room>);

impl Rooms {
    /// Those that can be worked and have a name.
    pub fn of(job: &Job, survey: &Survey<'_>) -> Self {
        let mut all = Vec::new();
        for mark in &job.marks {
            let is_room = catalog::find(&mark.calculator).is_some_and(|entry| entry.is_room);
            let spot = fold(job.spot_of(mark));
            if is_room
                && !spot.is_empty()
                && let Some(Ok(worked)) = survey.worked(&mark.id)
            {
                let headline = std::iter::once(&worked.sheet.headline);
                all.push(Room {
                    spot,
                    mark: mark.id.clone(),
                    title: mark.title.clone(),
                    figures: headline.chain(&worked.sheet.figures).cloned().collect(),
                });
            }
        }
        Self(all)
    }

    /// Those that a mark is in.
    #[must_use]
    pub fn around(self, job: &Job, mark: &Mark) -> Self {
        let spot = fold(job.spot_of(mark));
        Self(self.0.into_iter().filter(|room| room.spot == spot).collect())
    }

    /// What a mark says otherwise than every room of its spot, in the form's order.
    pub fn unlike(&self, job: &Job, mark: &Mark) -> Vec<Unlike> {
        let entry = catalog::find(&mark.calculator).filter(|entry| entry.version == mark.version);
        let Some(entry) = entry else { return Vec::new() };
        let spot = fold(job.spot_of(mark));
        let rooms: Vec<_> = self.0.iter().filter(|room| room.spot == spot).collect();
        unlike(entry, &mark.input, &mark.ties, &rooms)
    }

    /// The same of an input that is not saved yet, and is in all of these rooms.
    pub fn unlike_here(&self, entry: &Entry, input: &Node, ties: &[Tie]) -> Vec<Unlike> {
        unlike(entry, input, ties, &self.0.iter().collect::<Vec<_>>())
    }
}

/// The fields that are asked and say otherwise than all rooms: typed, or taken from what is there now
/// where it is to be another one.
fn unlike(entry: &Entry, input: &Node, ties: &[Tie], rooms: &[&Room]) -> Vec<Unlike> {
    let mut all = Vec::new();
    if entry.is_room || rooms.is_empty() {
        return all;
    }
    for row in entry.rows.iter().filter(|row| !row.room.is_empty() && row.of.is_empty()) {
        let mut best = rooms.iter().filter_map(|room| Some((*room, best_of(row, &room.figures)?)));
        let Some((room, figure)) = best.next() else { continue };
        let tie = ties.iter().find(|tie| tie.path == row.key);
        // Whatever else a person took is theirs to take; it is told where that moves.
        let is_old = |tie: &Tie| tie.mark == room.mark && tie.key != figure.key;
        if tie.is_some_and(|tie| !is_old(tie) || row.goes(&tie.key, "").is_none())
            || !is_asked(entry.rows, input, row.key)
        {
            continue;
        }
        let typed = input.get(row.key).and_then(|it| it.leaf()).unwrap_or_default();
        let Ok(Some(here)) = heard(row, &typed, Units::Customary) else { continue };
        let says_so = |it: &Figure| it.amount.is_like(here) && it.amount.exact() == here.exact();
        // The long side may be typed as the wide one.
        let is_another = |it: &Figure| {
            let mut others = entry.rows.iter().filter(|other| other.key != row.key);
            row.rather.is_empty() && others.any(|other| other.is_figure(it.key, ""))
        };
        let of_rooms = rooms.iter().flat_map(|room| &room.figures);
        if says_so(figure)
            || best.any(|(_, it)| says_so(it))
            || of_rooms.filter(|it| is_another(it)).any(says_so)
        {
            continue;
        }
        all.push(Unlike {
            key: row.key,
            label: row.label,
            here,
            room: room.title.clone(),
            figure: figure.name.clone(),
            there: figure.amount,
        });
    }
    all
}

/// The figure that goes before all others that a row names.
fn best_of<'f>(row: &Row, figures: &'f [Figure]) -> Option<&'f Figure> {
    let named = figures.iter().filter_map(|it| Some((row.goes(it.key, "")?, it)));
    named.min_by_key(|(goes, _)| *goes).map(|(_, it)| it)
}

#[cfg(test)]
mod tests {
    use super::super::samples::stamp;
    use super::super::{Edit, apply};
    use super::*;
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
        let all = job.marks.iter().flat_map(|mark| rooms.unlike(&job, mark));
        all.map(|it| Voice::default().say(&it.says())).collect()
    }

    /// The sample room's ceiling is 8 ft and is to be 9 ft 2 in here.
    fn den() -> Mark {
        made("room", 1, "Den", &[("height", "8 ft"), ("height_to_be", "9 ft 2 in")])
    }

    #[test]
    fn a_ceiling_typed_by_hand_is_told_when_the_room_has_another() {
        let plan = |says: &str, spot: &str| made("rough-in", 2, spot, &[("high", says)]);
        // The plan is of the ceiling that is to be: the old one is told as much as any other.
        for says in ["8 ft 6 in", "8 ft"] {
            let want = format!(
                "Finished ceiling: {says} here. Ceiling height to be in room: 9 ft 2 in, not taken \
                 from there"
            );
            assert_eq!(told(&[den(), plan(says, " den ")]), [want]);
        }
        // As it is to be it is the room's; and of another room nothing is known.
        for (says, spot) in [("110 in", "Den"), ("8 ft 6 in", "Hall"), ("7 ft", "")] {
            assert_eq!(told(&[den(), plan(says, spot)]), [""; 0], "{says} {spot}");
        }
        // A room that stays as it is has one height.
        let stays = made("room", 1, "Den", &[("height", "8 ft"), ("height_to_be", "")]);
        assert_eq!(told(&[stays.clone(), plan("8 ft", "Den")]), [""; 0]);
        assert_eq!(told(&[stays, plan("9 ft", "Den")]).len(), 1);
    }

    /// What is stripped is what is there now, whatever it is to be; its sides may be the other way
    /// round.
    #[test]
    fn what_is_about_the_old_ceiling_is_held_against_the_old_one() {
        let strip = |long: &str, wide: &str, height: &str| {
            made("stripping", 2, "Den", &[("long", long), ("wide", wide), ("height", height)])
        };
        let sides = [("long", "20 ft"), ("wide", "13 ft"), ("height", "8 ft")];
        let room = made("room", 1, "Den", &[&sides[..], &[("height_to_be", "9 ft 2 in")]].concat());
        for (long, wide, height, count) in [
            ("20 ft", "13 ft", "8 ft", 0),
            ("13 ft", "20 ft", "8 ft", 0),
            ("20 ft", "13 ft", "9 ft 2 in", 1),
            ("20 ft 6 in", "13 ft", "8 ft", 1),
        ] {
            let told = told(&[room.clone(), strip(long, wide, height)]);
            assert_eq!(told.len(), count, "{told:?}");
        }
    }

    #[test]
    fn what_is_taken_is_told_as_moved_and_not_here() {
        let mut plan = made("rough-in", 2, "Den", &[("high", "8 ft 6 in")]);
        let room = den();
        let (path, mark) = ("high".into(), room.id.clone());
        let key = "ceiling-height-to-be".into();
        plan.ties.push(Tie { path, mark, key, seen: "8 ft 6 in".into() });
        assert_eq!(told(&[room.clone(), plan.clone()]), [""; 0]);
        // Taken from what is there now, it would stay as it is for good.
        plan.ties[0].key = "ceiling-height".into();
        assert_eq!(told(&[room, plan]).len(), 1);
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
