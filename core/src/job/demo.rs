//! An invented job to look around in: house, crew and numbers are made up.
//!
//! A constant: the same questions are worked each time it is opened. Never stored, never in a
//! backup.

use super::edit::{Edit, apply};
use super::mark::Mark;
use super::site::Job;
use super::stamp::{Moment, Stamp};
use super::tie::Tie;
use super::words as w;
use crate::catalog::{self, Link};
use crate::edition::{Basis, Electrical};
use crate::wire::Node;
use crate::words::{Phrase, Voice};

/// The invented job's id. No stamp makes one as short.
pub const DEMO_ID: &str = "demo";

/// One mark of it. The question is an address, as any other.
struct Told {
    address: &'static str,
    title: &'static Phrase,
    spot: &'static Phrase,
    note: &'static Phrase,
    /// What it takes from the room: its own input, and the room's figure.
    takes: Option<(&'static str, &'static str)>,
    /// Minutes after the job was made.
    after: i64,
}

const TOLD: &[Told] = &[
    // 14 ft by 12 ft are 168 sq ft.
    Told {
        address: "room?shape=rectangle&long=14 ft&wide=12 ft&height=7 ft 10 in&height_to_be=9 ft\
                  &framing.runs=across",
        title: &w::DEMO_ROOM,
        spot: &w::DEMO_DEN,
        note: &w::DEMO_ROOM_NOTE,
        takes: None,
        after: 3,
    },
    // No result is on record: an address can't bring one.
    Told {
        address: "hold?place=Den ceiling&material=texture&deed=strip&area=168 ft2&built=1962",
        title: &w::DEMO_CEILING,
        spot: &w::DEMO_DEN,
        note: &w::DEMO_CEILING_NOTE,
        takes: Some(("area", "ceiling-area")),
        after: 7,
    },
    // 4 conductors, the grounds and a switch: 7 of 2.00 in³ are 14.0 of 18.0.
    Told {
        address: "box-fill?enclosure=marked&marked=18 in3&cables.0.cable=14-2&cables.0.count=2\
                  &devices.0.kind=switch",
        title: &w::DEMO_SWITCH,
        spot: &w::DEMO_DEN,
        note: &w::DEMO_SWITCH_NOTE,
        takes: None,
        after: 12,
    },
    // 9 conductors, the grounds and two switches: 14 of 2.00 in³ are 28.0 of 28.0.
    Told {
        address: "box-fill?enclosure=marked&marked=28 in3&gangs=2&cables.0.cable=14-2\
                  &cables.0.count=3&cables.1.cable=14-3&devices.0.kind=3-way&devices.0.count=2",
        title: &w::DEMO_PAIR,
        spot: &w::DEMO_HALL,
        note: &w::DEMO_PAIR_NOTE,
        takes: None,
        after: 31,
    },
    // 12 conductors of 2.25 in³ are 27.0; six grounds add 2.25 (2017) or 1-1/2 times that (2020):
    // 29.25 or 30.375 of 30.3.
    Told {
        address: "box-fill?enclosure=sq-4x2-1/8&cables.0.cable=12-2&cables.0.count=6",
        title: &w::DEMO_JUNCTION,
        spot: &w::DEMO_KITCHEN,
        note: &w::DEMO_JUNCTION_NOTE,
        takes: None,
        after: 58,
    },
];

/// The job, in the language of `voice`. A mark whose question no longer works is left out; the
/// tests see to it that none is.
pub fn demo(voice: Voice) -> Job {
    let made = Moment { at: 1_791_295_200, zone: -300 };
    let stamp = |after: i64| Stamp {
        at: made.at + 60 * after,
        zone: made.zone,
        device: DEMO_ID.to_owned(),
        random: after.unsigned_abs(),
    };
    let basis = Basis { electrical: Some(Electrical::E2020) };
    let mut job = Job {
        id: DEMO_ID.to_owned(),
        name: voice.phrase(&w::DEMO_NAME),
        place: voice.phrase(&w::DEMO_PLACE),
        basis,
        invented: true,
        ..Job::unnamed(&stamp(0))
    };
    for told in TOLD {
        let stamp = stamp(told.after);
        if let Some(mut mark) = mark(told, basis, voice, &stamp) {
            if let (Some((path, key)), Some(room)) = (told.takes, job.marks.first()) {
                let seen = mark.input.at(path).and_then(Node::leaf).unwrap_or_default();
                let (path, key) = (path.to_owned(), key.to_owned());
                mark.ties.push(Tie { path, mark: room.id.clone(), key, seen });
            }
            // Refused only if a text were too long, and then it isn't shown.
            let _ = apply(&mut job, Edit::Keep(mark), &stamp);
        }
    }
    job
}

fn mark(told: &Told, basis: Basis, voice: Voice, stamp: &Stamp) -> Option<Mark> {
    let link = Link::read(told.address).ok()?;
    let entry = catalog::find(&link.calculator)?;
    let mark = Mark::new(entry, &link.input, link.units, basis, None, stamp).ok()?;
    Some(Mark {
        title: voice.phrase(told.title),
        spot: voice.phrase(told.spot),
        note: voice.phrase(told.note),
        ..mark
    })
}

#[cfg(test)]
mod tests {
    use super::super::survey::Survey;
    use super::*;
    use crate::sheet::Verdict;
    use crate::words::Language;

    /// The fills are added up by hand above each question.
    #[test]
    fn the_invented_job_tells_its_story() {
        let job = demo(Voice::default());
        assert!(job.invented);
        assert!(job.name.contains("invented"), "{}", job.name);
        let told: Vec<_> = job
            .newest_first_by_spot()
            .into_iter()
            .flat_map(|spot| spot.marks)
            .map(|mark| (&*mark.spot, &*mark.kept.answer, &*mark.kept.verdict))
            .collect();
        assert_eq!(
            told,
            [
                ("Kitchen", "30.375 in3", "over"),
                ("Hall", "28.0 in3", "within"),
                ("Den", "14.0 in3", "within"),
                ("Den", "4", "held"),
                ("Den", "168 ft2", "within"),
            ]
        );
        let survey = Survey::of(&job);
        assert!(job.marks.iter().all(|mark| survey.is_fresh(&mark.id)));
        assert_eq!(job.marks.iter().filter(|mark| !mark.ties.is_empty()).count(), 1);
    }

    #[test]
    fn one_has_nothing_to_spare_and_one_turns_on_the_edition() {
        let job = demo(Voice::default());
        let worked = |spot: &str, electrical| {
            let mark = job.marks.iter().find(|mark| mark.spot == spot).unwrap();
            mark.work(Basis { electrical }).unwrap()
        };
        let hall = worked("Hall", Some(Electrical::E2020));
        let lead = hall.sheet.lead().unwrap();
        assert_eq!(lead.value, lead.limit);
        assert_eq!(hall.flips, []);
        let kitchen = worked("Kitchen", Some(Electrical::E2020));
        let flips: Vec<_> = kitchen.flips.iter().map(|flip| (flip.edition, flip.verdict)).collect();
        assert_eq!(flips, [(Electrical::E2017, Verdict::Within)]);
    }

    #[test]
    fn it_is_a_constant_and_every_mark_works_out_as_kept() {
        for language in [Language::English, Language::Spanish, Language::Pseudo] {
            let voice = Voice { language, ..Voice::default() };
            let job = demo(voice);
            assert_eq!(job, demo(voice));
            assert_eq!(job.marks.len(), TOLD.len(), "{language:?}");
            for mark in &job.marks {
                let worked = mark.work(job.basis).unwrap();
                assert_eq!(super::super::Kept::of(&worked), mark.kept, "{}", mark.title);
            }
        }
    }
}
