//! What stands before each part of the work: every check of every mark with its verdict, and what
//! the trade looks for then. It says what is over, what is to ask and what nobody has looked at; it
//! never says that anything has passed.

use super::mark::{Mark, Stale};
use super::ready_words as w;
use super::site::Job;
use super::stamp::Moment;
use super::survey::{Survey, TieState};
use super::turnover::{Said, Seen, said};
use super::unlike_room::{Rooms, Unlike};
use crate::calculators::rough_in::RoughIn;
use crate::calculators::{Calculator, Trade};
use crate::catalog::{self, Entry};
use crate::rules::electrical::{box_setback, cable_securing, free_conductor, nail_protection};
use crate::rules::finish::{drying, levels};
use crate::rules::framing::{engineer, fireblock};
use crate::rules::hazards::{asbestos, lead};
use crate::rules::residential::smoke_alarms;
use crate::sheet::{Check, Source, Verdict};
use crate::words::Phrase;

/// A part of the work, before which something has to be so.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Phase {
    /// Before anything is stripped or taken down.
    Strip,
    /// Before boxes and cables.
    RoughIn,
    /// Before board covers it all.
    Cover,
    /// Before primer and paint.
    Paint,
}

/// Something to look at before a part of the work, that no calculator tells.
#[derive(Debug)]
pub struct Point {
    /// Its name in what a job keeps.
    pub key: &'static str,
    /// What to look for.
    pub says: &'static Phrase,
    /// Where that is published; common practice where it isn't.
    pub source: Option<&'static Source>,
}

const fn point(key: &'static str, says: &'static Phrase, source: &'static Source) -> Point {
    Point { key, says, source: Some(source) }
}

const fn habit(key: &'static str, says: &'static Phrase) -> Point {
    Point { key, says, source: None }
}

static STRIP: [Point; 6] = [
    point("report", &w::REPORT, &asbestos::CONTENT),
    point("lead", &w::LEAD, &lead::TARGET),
    habit("dead", &w::DEAD),
    point("alarms", &w::ALARMS, &smoke_alarms::ALARMS_OUT),
    habit("closed", &w::CLOSED),
    habit("way", &w::WAY),
];
static ROUGH_IN: [Point; 5] = [
    point("structure", &w::STRUCTURE, &engineer::ENGINEER),
    point("fireblock", &w::FIREBLOCK, &fireblock::FIREBLOCK),
    habit("line", &w::LINE),
    habit("backing", &w::BACKING),
    habit("owner", &w::OWNER),
];
static COVER: [Point; 9] = [
    habit("seen", &w::SEEN),
    point("plates", &w::PLATES, &nail_protection::CABLES),
    point("held", &w::HELD, &cable_securing::SPACING),
    point("ends", &w::ENDS, &free_conductor::FREE_CONDUCTOR),
    point("fronts", &w::FRONTS, &box_setback::SETBACK),
    point("blocked", &w::BLOCKED, &fireblock::FIREBLOCK),
    point("sealed", &w::SEALED, &fireblock::AIR_BARRIER),
    habit("buried", &w::BURIED),
    habit("photos", &w::PHOTOS),
];
static PAINT: [Point; 5] = [
    point("level", &w::LEVEL, &levels::LEVELS),
    point("dry", &w::DRY, &drying::TABLE_SOURCE),
    habit("light", &w::LIGHT),
    habit("dust", &w::DUST),
    point("back", &w::BACK, &smoke_alarms::SMOKE_ALARMS),
];

impl Phase {
    /// All of them, in the order of a job.
    pub const ALL: [Self; 4] = [Self::Strip, Self::RoughIn, Self::Cover, Self::Paint];

    /// As a person reads it.
    pub fn name(self) -> &'static Phrase {
        match self {
            Self::Strip => &w::BEFORE_STRIP,
            Self::RoughIn => &w::BEFORE_ROUGH_IN,
            Self::Cover => &w::BEFORE_COVER,
            Self::Paint => &w::BEFORE_PAINT,
        }
    }

    /// Its name in what a job keeps.
    pub fn key(self) -> &'static str {
        match self {
            Self::Strip => "strip",
            Self::RoughIn => "rough-in",
            Self::Cover => "cover",
            Self::Paint => "paint",
        }
    }

    /// What the trade looks for then.
    pub fn points(self) -> &'static [Point] {
        match self {
            Self::Strip => &STRIP,
            Self::RoughIn => &ROUGH_IN,
            Self::Cover => &COVER,
            Self::Paint => &PAINT,
        }
    }

    /// Before what a calculator's numbers have to be settled. Where things go is settled before
    /// anybody sets them.
    pub fn of(entry: &Entry) -> Self {
        match entry.trade {
            // A plan of boxes and cables has cables, holes and circuits, which board covers.
            _ if entry.id == RoughIn::ID => Self::Cover,
            Trade::RoughIn | Trade::Air if entry.tells_places => Self::RoughIn,
            Trade::First | Trade::Room | Trade::Strip | Trade::Job => Self::Strip,
            Trade::Framing => Self::RoughIn,
            Trade::RoughIn | Trade::Air => Self::Cover,
            Trade::Finish => Self::Paint,
        }
    }
}

/// Why a mark stands in the way, apart from its checks.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Snag {
    /// Old material comes first.
    Held,
    /// A number that it took says something else now, or is gone.
    Moved,
    /// It can't be worked today.
    Stale(Stale),
}

/// A mark with what is over or to be asked about it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Found {
    /// The mark's id.
    pub mark: String,
    /// Its title.
    pub title: String,
    /// Its room or spot.
    pub spot: String,
    /// What stands in the way apart from checks: that it is held comes first.
    pub snags: Vec<Snag>,
    /// Its checks that are over, then those that ask.
    pub checks: Vec<Check>,
    /// How many of its fields are still the sample's.
    pub sampled: usize,
    /// Titles of those that it takes values from, by itself or through others, with such fields.
    pub takes_sample: Vec<String>,
    /// What it says otherwise than its room, without having taken it from there.
    pub unlike: Vec<Unlike>,
}

impl Found {
    fn is_held(&self) -> bool {
        self.snags.contains(&Snag::Held)
    }

    fn waits(&self) -> bool {
        self.snags.contains(&Snag::Moved)
    }
}

/// How many checks are within, by whether that says something of this job today.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Within {
    /// It does.
    pub counted: usize,
    /// Of samples that nobody touched.
    pub sampled: usize,
    /// Of numbers with some field still from the sample.
    pub partly: usize,
    /// Of numbers that take a value from such a one, by themselves or through others.
    pub taken: usize,
    /// Of numbers that wait for one that changed.
    pub old: usize,
    /// Of what is held.
    pub held: usize,
}

impl Within {
    /// Where a number's checks belong: a number that says nothing of this job says nothing of it
    /// when it waits either.
    fn of(&mut self, found: &Found, is_sample: bool) -> &mut usize {
        match () {
            () if is_sample => &mut self.sampled,
            () if found.is_held() => &mut self.held,
            () if found.waits() => &mut self.old,
            () if found.sampled > 0 => &mut self.partly,
            () if !found.takes_sample.is_empty() => &mut self.taken,
            () => &mut self.counted,
        }
    }
}

/// What the owner said of a mark, where that leaves something to settle. It is no check.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The mark's id.
    pub mark: String,
    /// Its title.
    pub title: String,
    /// Its room or spot.
    pub spot: String,
    /// What was said.
    pub said: Said,
    /// What he sees of the number now.
    pub now: Seen,
}

/// Whether somebody has looked at a point, and when.
#[derive(Clone, Debug)]
pub struct Looked {
    /// What to look for.
    pub point: &'static Point,
    /// When it was ticked.
    pub at: Option<Moment>,
    /// The title of the number of this part of the work that was saved last, where that was after it.
    pub changed: Option<String>,
}

impl Looked {
    /// Nobody has looked, or not since a number changed.
    pub fn is_open(&self) -> bool {
        self.at.is_none() || self.changed.is_some()
    }
}

/// How a part of the work stands.
#[derive(Clone, Debug)]
pub struct Ready {
    /// Which.
    pub phase: Phase,
    /// What is over, held, moved or can't be worked.
    pub over: Vec<Found>,
    /// What is to be asked.
    pub ask: Vec<Found>,
    /// Before the strip: what is held further down, without its checks, which count there. Old
    /// material comes first, whatever the number is about.
    pub later: Vec<Found>,
    /// What the owner's word leaves to settle.
    pub owner: Vec<Answer>,
    /// What else has fields that are still the sample's, takes values from what has, or says otherwise
    /// than its room: nothing of it is over or asks.
    pub doubtful: Vec<Found>,
    /// How many checks are within.
    pub within: Within,
    /// How many marks count here.
    pub marks: usize,
    /// What the trade looks for.
    pub points: Vec<Looked>,
}

impl Ready {
    fn found(&self) -> impl Iterator<Item = &Found> {
        self.over.iter().chain(&self.ask)
    }

    fn checks(&self, verdict: Verdict) -> usize {
        let checks = self.found().flat_map(|found| &found.checks);
        checks.filter(|check| check.verdict == verdict).count()
    }

    /// How many checks are over, and marks that are held or can't be worked.
    pub fn overs(&self) -> usize {
        let snags = self.found().filter(|it| it.snags.iter().any(|snag| *snag != Snag::Moved));
        // What holds a hold is in its checks already.
        let bare = snags.filter(|it| it.checks.iter().all(|it| it.verdict != Verdict::Over));
        self.checks(Verdict::Over) + bare.count()
    }

    /// How many marks wait for a number that changed, and for nothing else.
    pub fn waits(&self) -> usize {
        self.found().filter(|found| found.snags == [Snag::Moved]).count()
    }

    /// How many marks say otherwise than their room.
    pub fn unlike(&self) -> usize {
        self.found().chain(&self.doubtful).filter(|found| !found.unlike.is_empty()).count()
    }

    /// How many checks ask.
    pub fn asks(&self) -> usize {
        self.checks(Verdict::Ask)
    }

    /// Whether there is anything of the job to tell of it.
    pub fn is_told(&self) -> bool {
        self.marks > 0 || !self.later.is_empty()
    }

    /// How many points nobody has looked at, as things stand.
    pub fn open(&self) -> usize {
        self.points.iter().filter(|looked| looked.is_open()).count()
    }
}

/// The name under which a job keeps that somebody has looked at a point.
pub fn looked_at(phase: Phase, point: &Point) -> String {
    ["looked ", phase.key(), " ", point.key].concat()
}

/// How each part of a job's work stands.
pub fn ready(job: &Job, survey: &Survey<'_>) -> [Ready; 4] {
    let rooms = Rooms::of(job, survey);
    let mut all = Phase::ALL.map(|phase| of_phase(job, survey, &rooms, phase));
    let [strip, rest @ ..] = &mut all;
    for found in rest.iter().flat_map(|it| &it.over) {
        if found.is_held() {
            strip.later.push(Found { checks: Vec::new(), ..found.clone() });
        }
    }
    all
}

fn of_phase(job: &Job, survey: &Survey<'_>, rooms: &Rooms, phase: Phase) -> Ready {
    let here = |mark: &&Mark| catalog::find(&mark.calculator).map(Phase::of) == Some(phase);
    let newest = job.marks.iter().filter(here).max_by_key(|mark| mark.at.at);
    let points = phase.points().iter().map(|point| {
        let at = job.written(&looked_at(phase, point)).map(|jot| jot.at);
        let changed = newest.filter(|mark| at.is_some_and(|at| mark.at.at > at.at));
        Looked { point, at, changed: changed.map(|mark| mark.title.clone()) }
    });
    let points = points.collect();
    let (over, ask, owner, later, doubtful) = (vec![], vec![], vec![], vec![], vec![]);
    let (within, marks) = (Within::default(), 0);
    let mut ready = Ready { phase, over, ask, later, owner, doubtful, within, marks, points };
    for mark in &job.marks {
        let entry = catalog::find(&mark.calculator);
        if entry.map(Phase::of) != Some(phase) {
            continue;
        }
        ready.marks += 1;
        ready.owner.extend(owners_answer(mark, job, survey));
        let moved = mark.ties.iter().any(|tie| survey.standing(tie) != TieState::Fresh);
        let mut found = Found {
            mark: mark.id.clone(),
            title: mark.title.clone(),
            spot: job.spot_of(mark).to_owned(),
            snags: Vec::new(),
            checks: Vec::new(),
            sampled: if job.invented { 0 } else { job.still_sample(mark).len() },
            takes_sample: job.takes_sample(mark),
            unlike: rooms.unlike(job, mark),
        };
        let mut within = 0;
        match survey.worked(&mark.id) {
            Some(Ok(worked)) => {
                if worked.standing.is_held() {
                    found.snags.push(Snag::Held);
                }
                for wanted in [Verdict::Over, Verdict::Ask] {
                    let those = worked.sheet.checks.iter().filter(|it| it.verdict == wanted);
                    found.checks.extend(those.cloned());
                }
                within = worked.sheet.checks.len() - found.checks.len();
            }
            Some(Err(stale)) => found.snags.push(Snag::Stale(stale.clone())),
            None => {}
        }
        if moved {
            found.snags.push(Snag::Moved);
        }
        *ready.within.of(&found, job.is_sample(mark)) += within;
        let is_over = found.checks.iter().any(|check| check.verdict == Verdict::Over);
        if is_over || !found.snags.is_empty() {
            ready.over.push(found);
        } else if !found.checks.is_empty() {
            ready.ask.push(found);
        } else if found.sampled > 0 || !found.takes_sample.is_empty() || !found.unlike.is_empty() {
            ready.doubtful.push(found);
        }
    }
    ready
}

/// What the owner said of a mark, where that leaves something to settle.
fn owners_answer(mark: &Mark, job: &Job, survey: &Survey<'_>) -> Option<Answer> {
    let said = said(job, &mark.id)?;
    let worked = survey.worked(&mark.id).and_then(|worked| worked.as_ref().ok());
    let now = Seen::of(mark, worked);
    let (id, title, spot) = (mark.id.clone(), mark.title.clone(), job.spot_of(mark).to_owned());
    said.is_open(&now).then_some(Answer { mark: id, title, spot, said, now })
}

#[cfg(test)]
mod tests {
    use super::super::samples::stamp;
    use super::super::turnover::{Word, say_of};
    use super::super::{Edit, apply};
    use super::*;
    use crate::measure::Units;
    use proptest::collection::vec;
    use proptest::prelude::*;

    /// Every calculator's sample, in a job of its own.
    fn job() -> Job {
        let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
        for (entry, step) in catalog::ALL.iter().zip(1..) {
            let (units, basis) = (Units::Customary, <_>::default());
            let mark = Mark::new(entry, &entry.sample(), units, basis, None, &stamp(step)).unwrap();
            let mark = Mark { title: entry.id.into(), ..mark };
            apply(&mut job, Edit::Keep(mark), &stamp(step)).unwrap();
        }
        job
    }

    #[test]
    fn every_check_of_every_mark_is_counted_once() {
        let job = job();
        let survey = Survey::of(&job);
        let all = ready(&job, &survey);
        let checks = |found: &Vec<Found>| found.iter().map(|it| it.checks.len()).sum::<usize>();
        let within = |it: &Ready| {
            let Within { counted, sampled, partly, taken, old, held } = it.within;
            counted + sampled + partly + taken + old + held
        };
        let told: usize =
            all.iter().map(|it| within(it) + checks(&it.over) + checks(&it.ask)).sum();
        let there = |mark: &Mark| match survey.worked(&mark.id) {
            Some(Ok(worked)) => worked.sheet.checks.len(),
            _ => 0,
        };
        assert_eq!(told, job.marks.iter().map(there).sum::<usize>());
        assert_eq!(all.iter().map(|it| it.marks).sum::<usize>(), job.marks.len());
        let hold = all[0].over.iter().find(|it| it.title == "hold").unwrap();
        assert_eq!(hold.snags, [Snag::Held], "a blank hold stands in the way");
        let counted: usize = all.iter().map(|it| within(it) + it.overs() + it.asks()).sum();
        let held = all.iter().flat_map(|it| &it.over);
        let held = held.filter(|it| it.checks.iter().all(|it| it.verdict != Verdict::Over));
        assert_eq!(counted, told + held.count());
    }

    /// By hand: each mark is a sample, until a person says that one is theirs or changes it.
    #[test]
    fn a_sample_as_it_came_is_within_nothing() {
        let mut job = job();
        let counts = |job: &Job| {
            ready(job, &Survey::of(job))
                .map(|it| (it.within.counted, it.within.sampled, it.overs(), it.asks()))
        };
        let before = counts(&job);
        assert!(before.iter().all(|it| it.0 == 0) && before[2].1 > 0, "{before:?}");
        let id = job.marks.iter().find(|it| it.title == "box-fill").unwrap().id.clone();
        let checks = match Survey::of(&job).worked(&id) {
            Some(Ok(worked)) => worked.sheet.checks.len(),
            _ => 0,
        };
        assert!(checks > 0);
        let own = job.note_sample(&id, &[], true).unwrap();
        apply(&mut job, own, &stamp(80)).unwrap();
        let after = counts(&job);
        assert_eq!(after[2], (checks, before[2].1 - checks, before[2].2, before[2].3));
        job.invented = true;
        assert!(counts(&job).iter().all(|it| it.1 == 0), "an invented job is invented all through");
    }

    /// What was looked at before a number of its part of the work changed is to be looked at again.
    #[test]
    fn a_look_is_of_the_numbers_of_its_day() {
        let mut job = job();
        let of = |job: &Job| ready(job, &Survey::of(job))[1].clone();
        let tick = |job: &mut Job, step: u64| {
            let key = looked_at(Phase::RoughIn, &ROUGH_IN[0]);
            apply(job, Edit::Jot { key, says: "yes".into() }, &stamp(step)).unwrap();
        };
        let open = of(&job).open();
        tick(&mut job, 100);
        assert_eq!((of(&job).open(), of(&job).points[0].changed.clone()), (open - 1, None));
        let raise = job.marks.iter().find(|it| it.title == "raising").unwrap().clone();
        apply(&mut job, Edit::Change(Mark { at: stamp(110).moment(), ..raise }), &stamp(110))
            .unwrap();
        let after = of(&job);
        assert_eq!((after.open(), after.points[0].changed.as_deref()), (open, Some("raising")));
        tick(&mut job, 120);
        assert_eq!(of(&job).open(), open - 1);
        // Of another part of the work nothing has changed.
        let paint = job.marks.iter().find(|it| it.title == "paint").unwrap().clone();
        apply(&mut job, Edit::Change(Mark { at: stamp(130).moment(), ..paint }), &stamp(130))
            .unwrap();
        assert_eq!(of(&job).open(), open - 1);
    }

    /// One job of which parts are taken: whatever is held, the strip says so, once, and counts no
    /// check of it twice.
    fn the_strip_tells_what_is_held(job: &Job) {
        let survey = Survey::of(job);
        let all = ready(job, &survey);
        let [strip, rest @ ..] = &all;
        let is_held = |mark: &Mark| {
            survey
                .worked(&mark.id)
                .is_some_and(|it| it.as_ref().is_ok_and(|worked| worked.standing.is_held()))
        };
        let mut held: Vec<&str> =
            job.marks.iter().filter(|it| is_held(it)).map(|it| &*it.id).collect();
        let own = strip.over.iter().filter(|it| it.is_held());
        let mut told: Vec<&str> = own.chain(&strip.later).map(|it| &*it.mark).collect();
        held.sort_unstable();
        told.sort_unstable();
        assert_eq!(told, held);
        assert!(strip.later.iter().all(|it| it.checks.is_empty()));
        assert!(strip.is_told() || held.is_empty());
        assert!(rest.iter().all(|it| it.later.is_empty()));
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(24))]

        #[test]
        fn whatever_is_held_the_strip_says_so(gone in vec(any::<bool>(), catalog::ALL.len())) {
            let mut job = job();
            let mut gone = gone.into_iter();
            job.marks.retain(|_| gone.next() == Some(false));
            the_strip_tells_what_is_held(&job);
        }
    }

    #[test]
    fn a_raised_ceiling_that_is_held_keeps_the_strip_from_looking_clear() {
        let mut job = job();
        job.marks.retain(|mark| mark.title == "raising");
        let all = ready(&job, &Survey::of(&job));
        assert_eq!((all[0].marks, all[0].overs(), all[0].is_told()), (0, 0, true));
        assert_eq!(all[0].later[0].title, "raising");
        assert_eq!(all[1].over[0].snags, [Snag::Held]);
        the_strip_tells_what_is_held(&job);
    }

    /// Its cables and holes are looked at until board covers them.
    #[test]
    fn a_plan_of_boxes_and_cables_is_settled_before_cover() {
        let job = job();
        let all = ready(&job, &Survey::of(&job));
        let is_there = |ready: &Ready| ready.found().any(|it| it.title == RoughIn::ID);
        assert_eq!(all.map(|it| is_there(&it)), [false, false, true, false]);
    }

    #[test]
    fn the_owners_word_is_to_settle_in_its_phase_and_counts_as_no_check() {
        let mut job = job();
        let counts = |all: &[Ready; 4]| all.each_ref().map(|it| (it.overs(), it.asks(), it.within));
        let before = ready(&job, &Survey::of(&job));
        assert!(before.iter().all(|it| it.owner.is_empty()));
        let id = |title: &str| job.marks.iter().find(|it| it.title == title).unwrap().id.clone();
        let (spots, boxes, paint) = (id("register-spots"), id("switch-boxes"), id("paint"));
        let seen = |id: &str| Seen::of(job.mark(id).unwrap(), None);
        let other = Seen { answer: "of another answer".into(), print: None };
        let says = [
            say_of(&spots, Some(Word::Change), &seen(&spots)),
            say_of(&boxes, Some(Word::Agree), &seen(&boxes)),
            say_of(&paint, Some(Word::Agree), &other),
        ];
        for (edit, step) in says.into_iter().zip(70..) {
            apply(&mut job, edit, &stamp(step)).unwrap();
        }
        let after = ready(&job, &Survey::of(&job));
        assert_eq!(counts(&after), counts(&before), "an owner's word is no check");
        let told =
            after.each_ref().map(|it| it.owner.iter().map(|it| &*it.mark).collect::<Vec<_>>());
        let phase = |title: &str| {
            let of = Phase::of(catalog::find(title).unwrap());
            Phase::ALL.iter().position(|it| *it == of).unwrap()
        };
        for (at, told) in told.iter().enumerate() {
            let mut want = Vec::new();
            want.extend((at == phase("register-spots")).then_some(&*spots));
            want.extend((at == phase("paint")).then_some(&*paint));
            assert_eq!(*told, want, "{:?}", Phase::ALL[at]);
        }
        let spot = &after[phase("register-spots")].owner[0];
        assert_eq!((spot.said.word, &spot.now), (Word::Change, &spot.now));
        assert!(spot.said.is_of(&spot.now));
        apply(&mut job, say_of(&spots, None, &spot.now), &stamp(75)).unwrap();
        let then = ready(&job, &Survey::of(&job));
        assert!(then[phase("register-spots")].owner.is_empty(), "taken back");
    }

    #[test]
    fn a_point_is_open_until_somebody_has_looked() {
        let mut job = job();
        let point = &COVER[1];
        let key = looked_at(Phase::Cover, point);
        let open = |job: &Job| ready(job, &Survey::of(job))[2].open();
        assert_eq!(open(&job), COVER.len());
        let edit = |says: &str| Edit::Jot { key: key.clone(), says: says.into() };
        apply(&mut job, edit("yes"), &stamp(70)).unwrap();
        assert_eq!(open(&job), COVER.len() - 1);
        apply(&mut job, edit(""), &stamp(71)).unwrap();
        assert_eq!(open(&job), COVER.len());
    }

    /// What is held may wait as well: it says both, and counts once.
    #[test]
    fn what_moved_stands_in_the_way_of_what_is_held_too() {
        let mut job = job();
        let before = ready(&job, &Survey::of(&job)).map(|it| it.overs());
        for mark in &mut job.marks {
            if mark.title != "paint" && mark.title != "raising" {
                continue;
            }
            mark.ties.push(super::super::Tie {
                path: "area".into(),
                mark: "gone".into(),
                key: "x".into(),
                seen: "192 sq ft".into(),
            });
        }
        let all = ready(&job, &Survey::of(&job));
        let snags = |found: &[Found], title: &str| {
            found.iter().find(|it| it.title == title).unwrap().snags.clone()
        };
        assert_eq!(snags(&all[3].over, "paint"), [Snag::Moved]);
        let both = [Snag::Held, Snag::Moved];
        assert_eq!(snags(&all[1].over, "raising"), both);
        assert_eq!(snags(&all[0].later, "raising"), both);
        assert_eq!(all.each_ref().map(Ready::overs), before, "what waits is counted apart");
        assert_eq!(all.map(|it| it.waits()), [0, 0, 0, 1], "what is held and waits is held");
    }

    /// A number that waits says nothing of today, though each of its checks is within.
    #[test]
    fn checks_on_figures_that_changed_are_counted_apart() {
        let mut job = job();
        let own = |job: &mut Job, title: &str| {
            let id = job.marks.iter().find(|it| it.title == title).unwrap().id.clone();
            let note = job.note_sample(&id, &[], true).unwrap();
            apply(job, note, &stamp(80)).unwrap();
        };
        own(&mut job, "box-fill");
        own(&mut job, "raising");
        let all = |job: &Job| ready(job, &Survey::of(job)).map(|it| it.within);
        let before = all(&job);
        assert!(before[2].counted > 0 && before[2].old == 0);
        assert_eq!((before[1].counted, before[1].old), (0, 0), "what is held is within nothing");
        for mark in &mut job.marks {
            if mark.title == "box-fill" || mark.title == "raising" {
                mark.ties.push(super::super::Tie {
                    path: "x".into(),
                    mark: "gone".into(),
                    key: "x".into(),
                    seen: "1".into(),
                });
            }
        }
        let after = all(&job);
        assert_eq!((after[2].counted, after[2].old), (0, before[2].counted));
        assert_eq!(after[1], before[1], "what is held and waits is held");
    }

    #[test]
    fn checks_of_a_number_with_a_field_from_the_sample_are_counted_apart_and_it_is_named() {
        let mut job = job();
        let id = job.marks.iter().find(|it| it.title == "set-out").unwrap().id.clone();
        let mark = job.mark(&id).unwrap();
        let mut input = mark.input.clone();
        input.put("boxes.1.height", crate::wire::Node::text("50 in"));
        let entry = catalog::find("set-out").unwrap();
        let units = Units::Customary;
        let own = Mark::new(entry, &input, units, <_>::default(), None, &stamp(80)).unwrap();
        let own = Mark { id: id.clone(), title: mark.title.clone(), ..own };
        apply(&mut job, Edit::Change(own), &stamp(81)).unwrap();
        let of = |job: &Job| ready(job, &Survey::of(job)).into_iter().nth(1).unwrap();
        let whole = of(&job).within;
        assert!(whole.counted > 0 && whole.partly == 0, "{whole:?}");
        let paths = ["floors.0.reading", "off"].map(str::to_owned);
        let note = job.note_sample(&id, &paths, false).unwrap();
        apply(&mut job, note, &stamp(82)).unwrap();
        let partly = of(&job);
        assert_eq!((partly.within.counted, partly.within.partly), (0, whole.counted));
        let named = partly.over.iter().chain(&partly.ask).chain(&partly.doubtful);
        let named: Vec<_> = named.filter(|it| it.sampled > 0).collect();
        assert_eq!(named.len(), 1);
        // What its form doesn't ask, as this mark stands, isn't counted.
        assert_eq!((&*named[0].title, named[0].sampled), ("set-out", 1));
        let note = job.note_sample(&id, &[], true).unwrap();
        apply(&mut job, note, &stamp(83)).unwrap();
        assert_eq!(of(&job).within, whole, "said to be their own");
    }

    #[test]
    fn checks_on_figures_of_a_number_with_a_field_from_the_sample_are_counted_apart() {
        let entry = catalog::find("cable-securing").unwrap();
        let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
        let ids = [1, 2, 3].map(|step| stamp(step).id());
        // Each takes its length from the gap of the one before.
        for (at, step) in [1, 2, 3].into_iter().enumerate() {
            let mut input = entry.sample();
            input.put("run", crate::wire::Node::text(["29 ft", "31 ft", "37 ft"][at]));
            let tie = at.checked_sub(1).map(|before| {
                let (mark, key) = (ids[before].clone(), "gap".to_owned());
                let seen = Survey::of(&job).figure(&mark, &key).unwrap().amount.exact();
                super::super::Tie { path: "run".into(), mark, key, seen }
            });
            if let Some(tie) = &tie {
                input.put("run", crate::wire::Node::text(&tie.seen));
            }
            let (units, basis) = (Units::Customary, <_>::default());
            let mark = Mark::new(entry, &input, units, basis, None, &stamp(step)).unwrap();
            let (title, ties) = (step.to_string(), tie.into_iter().collect());
            apply(&mut job, Edit::Keep(Mark { title, ties, ..mark }), &stamp(step)).unwrap();
        }
        let of = |job: &Job| ready(job, &Survey::of(job)).into_iter().nth(2).unwrap();
        let before = of(&job);
        assert!(before.over.is_empty() && before.doubtful.is_empty(), "{before:?}");
        let each = before.within.counted / 3;
        assert!(each > 0 && before.within == Within { counted: 3 * each, ..<_>::default() });
        let note = job.note_sample(&ids[0], &["spacing".to_owned()], false).unwrap();
        apply(&mut job, note, &stamp(10)).unwrap();
        let after = of(&job);
        let want = Within { partly: each, taken: 2 * each, ..<_>::default() };
        assert_eq!(after.within, want);
        let told =
            |found: &Found| (found.title.clone(), found.sampled, found.takes_sample.join(","));
        let told: Vec<_> = after.ask.iter().chain(&after.doubtful).map(told).collect();
        let line =
            |title: &str, sampled, takes: &str| (title.to_owned(), sampled, takes.to_owned());
        assert_eq!(told, [line("1", 1, ""), line("2", 0, "1"), line("3", 0, "1")]);
        // With a field of its own from the sample it is counted there.
        let note = job.note_sample(&ids[1], &["spacing".to_owned()], false).unwrap();
        apply(&mut job, note, &stamp(11)).unwrap();
        let want = Within { partly: 2 * each, taken: each, ..<_>::default() };
        assert_eq!(of(&job).within, want);
    }

    #[test]
    fn every_point_has_its_own_name() {
        for phase in Phase::ALL {
            let keys: Vec<String> =
                phase.points().iter().map(|point| looked_at(phase, point)).collect();
            assert!(keys.iter().enumerate().all(|(at, key)| !keys[..at].contains(key)));
        }
    }
}
