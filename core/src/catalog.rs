//! The list of calculators, and how any of them is worked from a tree by its id.
//!
//! Re-solving under the other editions happens here, once for all calculators.

mod batch;
mod compared;
mod link;
mod standing;

pub use batch::{answer_line, describe, list};
pub use compared::Compared;
pub use link::{Link, LinkProblem};

use crate::calculators::hold::{Opened, ahead, instead};
use crate::calculators::{self, Calculator, Going, Progress, Step, Trade};
use crate::edition::{Basis, Electrical};
use crate::fields::{Form, Reader, Row, of_sample, restate};
use crate::measure::{Day, Units};
use crate::rules::hazards::Disturbs;
use crate::sheet::{Caution, Faults, Sheet, Standing, Verdict};
use crate::wire::Node;
use crate::words::{Amount, Phrase, Text};

/// A calculator as the page and the batch door see it.
#[derive(Debug)]
pub struct Entry {
    /// Its name in links, marks and the batch door.
    pub id: &'static str,
    /// Of its input's shape.
    pub version: u16,
    /// Whom it speaks to.
    pub trade: Trade,
    /// Its name on screen.
    pub name: &'static Phrase,
    /// What it answers.
    pub about: &'static Phrase,
    /// Whether the edition of the electrical code can change the answer.
    pub electrical: bool,
    /// Whether it is the hold, behind which other work stands.
    pub is_hold: bool,
    /// Whether it is a room, whose figures other work takes.
    pub is_room: bool,
    /// Whether it tells where something will be that an owner sees.
    pub tells_places: bool,
    /// The keys of figures that a person's own work may take more or less of.
    pub paced: &'static [&'static str],
    /// Its fields.
    pub rows: &'static [Row],
    /// What can hurt somebody, before an input can be read.
    pub cautions: fn() -> Vec<Caution>,
    /// Or the blank question.
    sample: fn(is_blank: bool) -> Node,
    /// From each version to the next.
    steps: &'static [Step],
    canonical: fn(&Node, Units) -> Result<Node, Faults>,
    solve: fn(&Node, Units, Basis) -> Result<Solved, Faults>,
    begin: fn(&Node, Units) -> Option<Box<dyn Looking>>,
    opens: fn(&Node, Units, Basis) -> Option<Opened>,
    disturbs: fn(&Node, Units) -> Option<Disturbs>,
}

/// What one calculator says, before anything outside it is asked.
#[derive(Clone, Debug)]
struct Solved {
    sheet: Sheet,
    /// What was worked as if it were left empty.
    left_out: Faults,
    /// How the answer itself stands.
    own: Standing,
    /// What the work does to an old surface.
    disturbs: Option<Disturbs>,
    /// What takes the sheet's place while it is held.
    instead: Option<Sheet>,
    /// The latest day of what opens it.
    latest: Option<Day>,
}

/// All calculators, in the order of a job.
pub static ALL: &[Entry] = &[
    entry::<calculators::room::Room>(),
    entry::<calculators::hold::Hold>(),
    entry::<calculators::taken_down::TakenDown>(),
    entry::<calculators::off_tonight::OffTonight>(),
    entry::<calculators::strip::Strip>(),
    entry::<calculators::floor_cover::FloorCover>(),
    entry::<calculators::three_ways::ThreeWays>(),
    entry::<calculators::raising::Raising>(),
    entry::<calculators::under_a_gable::UnderAGable>(),
    entry::<calculators::drilling::Drilling>(),
    entry::<calculators::joist_spans::JoistSpans>(),
    entry::<calculators::loads::Loads>(),
    entry::<calculators::added_heat::AddedHeat>(),
    entry::<calculators::circuit_touch::CircuitTouch>(),
    entry::<calculators::set_out::SetOut>(),
    entry::<calculators::between_edges::BetweenEdges>(),
    entry::<calculators::outlets::Outlets>(),
    entry::<calculators::kitchen_outlets::KitchenOutlets>(),
    entry::<calculators::bath_hall_outlets::BathHallOutlets>(),
    entry::<calculators::alarm_places::AlarmPlaces>(),
    entry::<calculators::rough_in::RoughIn>(),
    entry::<calculators::box_fill::BoxFill>(),
    entry::<calculators::cable_run::CableRun>(),
    entry::<calculators::cable_securing::CableSecuring>(),
    entry::<calculators::hole_cables::HoleCables>(),
    entry::<calculators::rerouted_cable::ReroutedCable>(),
    entry::<calculators::switch_boxes::SwitchBoxes>(),
    entry::<calculators::register_throw::RegisterThrow>(),
    entry::<calculators::register_spots::RegisterSpots>(),
    entry::<calculators::raised_register::RaisedRegister>(),
    entry::<calculators::room_air::RoomAir>(),
    entry::<calculators::duct_branch::DuctBranch>(),
    entry::<calculators::duct_tree::DuctTree>(),
    entry::<calculators::return_path::ReturnPath>(),
    entry::<calculators::behind_the_board::BehindTheBoard>(),
    entry::<calculators::boards::Boards>(),
    entry::<calculators::board_weight::BoardWeight>(),
    entry::<calculators::joint_compound::JointCompound>(),
    entry::<calculators::skim_coat::SkimCoat>(),
    entry::<calculators::drying::Drying>(),
    entry::<calculators::paint::Paint>(),
    entry::<calculators::trade_days::TradeDays>(),
    entry::<calculators::change_order::ChangeOrder>(),
];

const fn entry<C: Calculator + 'static>() -> Entry {
    assert!(C::STEPS.len() + 1 == C::VERSION as usize, "a step leads to each version");
    Entry {
        id: C::ID,
        version: C::VERSION,
        trade: C::TRADE,
        name: C::NAME,
        about: C::ABOUT,
        electrical: C::ELECTRICAL,
        is_hold: C::OPENS.is_some(),
        is_room: C::IS_ROOM,
        tells_places: C::TELLS_PLACES,
        paced: C::PACED,
        rows: C::Input::ROWS,
        cautions: || C::cautions(None),
        steps: C::STEPS,
        sample: |is_blank| {
            let input = if is_blank { C::Input::blank() } else { C::sample() };
            written(C::Input::ROWS, &input.write_parts())
        },
        canonical: |node, units| {
            let (input, _) = Reader::form::<C::Input>(node, units)?;
            Ok(written(C::Input::ROWS, &input.write_parts()))
        },
        solve: |node, units, basis| {
            let (input, mut left_out) = Reader::form::<C::Input>(node, units)?;
            match C::solve(&input, basis) {
                Ok(answer) => Ok(shown::<C>(&input, answer, left_out, basis)),
                Err(mut faults) => {
                    faults.append(&mut left_out);
                    Err(faults)
                }
            }
        },
        begin: match C::BEGIN {
            None => |_, _| None,
            Some(_) => |node, units| {
                let (input, left_out) = Reader::form::<C::Input>(node, units).ok()?;
                let going = C::BEGIN.and_then(|begin| begin(&input).ok())?;
                Some(Box::new(Begun::<C> { input, left_out, going }))
            },
        },
        opens: match C::OPENS {
            None => |_, _, _| None,
            Some(_) => |node, units, basis| {
                let (input, left_out) = Reader::form::<C::Input>(node, units).ok()?;
                // What could not be read opens nothing.
                let answer = left_out.is_empty().then(|| C::solve(&input, basis).ok())??;
                C::OPENS.and_then(|opens| opens(answer))
            },
        },
        disturbs: |node, units| C::disturbs(&Reader::form::<C::Input>(node, units).ok()?.0),
    }
}

fn shown<C: Calculator>(
    input: &C::Input,
    answer: C::Answer,
    mut left_out: Faults,
    basis: Basis,
) -> Solved {
    left_out.append(&mut C::left_out(input));
    Solved {
        sheet: C::sheet(input, &answer, basis),
        left_out,
        own: C::standing(&answer),
        disturbs: C::disturbs(input),
        instead: C::disturbs(input)
            .zip(C::withholds(input))
            .map(|(work, withheld)| instead(&work, withheld)),
        latest: C::OPENS.and_then(|opens| opens(answer)).map(|it| it.latest()),
    }
}

/// Work that goes on step by step, as the page sees it. It never hangs on an edition.
pub trait Looking {
    /// Goes on for some milliseconds; true when it is done.
    fn step(&mut self) -> bool;
    /// Stops it where it is, or takes that back.
    fn stop(&mut self, stopped: bool);
    /// What it has so far, behind a hold.
    ///
    /// # Errors
    /// Nothing yet, or nothing at all.
    fn worked(&self, hold: Option<&Opened>) -> Result<Worked, Faults>;
}

struct Begun<C: Calculator> {
    input: C::Input,
    left_out: Faults,
    going: Box<dyn Going<C::Answer>>,
}

impl<C: Calculator> Looking for Begun<C> {
    fn step(&mut self) -> bool {
        self.going.step()
    }

    fn stop(&mut self, stopped: bool) {
        self.going.stop(stopped);
    }

    fn worked(&self, hold: Option<&Opened>) -> Result<Worked, Faults> {
        let answer = self.going.answer()?;
        let solved = shown::<C>(&self.input, answer, self.left_out.clone(), Basis::default());
        let progress = self.going.progress();
        Ok(Worked { progress, ..solved.standing_behind(hold, None, Vec::new()) })
    }
}

/// An input as it is kept: each quantity in the unit of its row, since a volume doesn't know by
/// itself whether it is a room's. A link compares this text with what its figure said.
fn written(rows: &[Row], input: &Node) -> Node {
    restate(rows, input, Units::Customary)
}

/// The hold's own question, as far as a piece of work already says what it is about.
pub fn hold_for(work: &Disturbs) -> Option<Link> {
    let hold = ALL.iter().find(|entry| entry.is_hold)?;
    let mut input = hold.sample();
    input.put("material", Node::text(work.material.key()));
    input.put("deed", Node::text(work.deed.key()));
    Some(Link::new(hold.id, input, Basis::default(), Units::Customary))
}

/// The calculator of this id.
pub fn find(id: &str) -> Option<&'static Entry> {
    ALL.iter().find(|entry| entry.id == id)
}

/// An answer, and what other editions would say.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Worked {
    /// The sheet, under the edition shown.
    pub sheet: Sheet,
    /// The edition shown: the job's, or the strictest of the verified ones where it has none.
    pub edition: Option<Electrical>,
    /// Verified editions whose verdict differs from the one shown. One that asks only for want of
    /// its text, while these agree, differs from none.
    pub flips: Vec<Flip>,
    /// What could not be read in a field that feeds a check of its own: the sheet is worked as if
    /// those fields were empty, so that their checks are left out; and rows that nobody can count
    /// yet, which a check of the sheet tells too. Mostly none.
    pub left_out: Faults,
    /// Whether the work is held.
    pub standing: Standing,
    /// The latest day of the evidence that opens it, of a hold.
    pub latest: Option<Day>,
    /// The plan is held, and out of sight: another sheet stands in its place.
    pub is_withheld: bool,
    /// How far the search for it has come; what is kept is always worked to the end.
    pub progress: Progress,
}

impl Worked {
    /// The same as of a day: evidence that is yet to come opens nothing, nor does any where the
    /// day can't be told.
    pub fn as_of(self, today: Option<Day>) -> Self {
        match self.latest {
            Some(day) if today.is_none_or(|today| day > today) => {
                let says = standing::ahead(day);
                let sheet = ahead(self.sheet, says.clone());
                Self { sheet, standing: Standing::Held(vec![says]), ..self }
            }
            _ => self,
        }
    }

    /// The verdict on the whole: what is held is past a limit, whatever the sheet's own rules say.
    pub fn verdict(&self) -> Verdict {
        let own = self.sheet.verdict();
        match &self.standing {
            Standing::Held(_) if own == Verdict::Within => Verdict::Over,
            _ => own,
        }
    }
}

/// Another edition that says otherwise.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Flip {
    /// Which edition.
    pub edition: Electrical,
    /// Its verdict on the whole.
    pub verdict: Verdict,
    /// Its answer.
    pub answer: Amount,
    /// What the answer is called.
    pub name: Text,
}

impl Entry {
    /// What the screen opens with, complete.
    pub fn sample(&self) -> Node {
        (self.sample)(false)
    }

    /// The inputs, by path, that a draft still has from the sample: see [`of_sample`].
    pub fn of_sample(&self, draft: &Node, units: Units) -> Vec<String> {
        of_sample(self.rows, (draft, units), &self.sample(), &(self.sample)(true))
    }

    /// The input as it was worked and is kept: every field, every unit written out, and what
    /// [`Worked::left_out`] tells of left empty.
    ///
    /// # Errors
    /// What could not be read.
    pub fn canonical(&self, input: &Node, units: Units) -> Result<Node, Faults> {
        (self.canonical)(input, units)
    }

    /// An input of an older version in this one's shape, as it is kept. None of this version or a later
    /// one, and where it doesn't fit.
    pub fn stepped(&self, input: &Node, version: u16) -> Option<Node> {
        let steps = self.steps.get(usize::from(version).checked_sub(1)?..)?;
        if steps.is_empty() {
            return None;
        }
        let input = steps.iter().fold(input.clone(), |input, step| step(input));
        self.canonical(&input, Units::Customary).ok()
    }

    /// What an input opens: of a hold, with its evidence from the record.
    pub fn opened(&self, input: &Node, units: Units, basis: Basis) -> Option<Opened> {
        (self.opens)(input, units, basis)
    }

    /// What an input does to an old surface, if anything; none where it can't be read.
    pub fn disturbs(&self, input: &Node, units: Units) -> Option<Disturbs> {
        (self.disturbs)(input, units)
    }

    /// Begins what may take longer than a keystroke; `None` where working never does, or where it
    /// can't be begun: working then says why.
    pub fn begin(&self, input: &Node, units: Units) -> Option<Box<dyn Looking>> {
        (self.begin)(input, units)
    }

    /// Works an input with no hold open: all that disturbs an old surface is held. Bare numbers
    /// are in `units`.
    ///
    /// # Errors
    /// What could not be read, or does not fit. A fault in a row that stands aside is no error by
    /// itself: see [`Worked::left_out`].
    pub fn work(&self, input: &Node, units: Units, basis: Basis) -> Result<Worked, Faults> {
        self.work_behind(input, units, basis, None)
    }

    /// Works an input behind a hold.
    ///
    /// # Errors
    /// What could not be read, or does not fit.
    pub fn work_behind(
        &self,
        input: &Node,
        units: Units,
        basis: Basis,
        hold: Option<&Opened>,
    ) -> Result<Worked, Faults> {
        if !self.electrical {
            let solved = (self.solve)(input, units, basis)?;
            return Ok(solved.standing_behind(hold, None, Vec::new()));
        }
        let mut all = Compared::default();
        while all.step(self, input, units)? {}
        all.worked(self, input, units, basis, hold)
    }
}

impl Solved {
    /// As it stands behind a hold, if any: the one place where a plan that is held is left out.
    fn standing_behind(
        self,
        hold: Option<&Opened>,
        edition: Option<Electrical>,
        mut flips: Vec<Flip>,
    ) -> Worked {
        let Self { mut sheet, left_out, own, disturbs, instead, latest } = self;
        let standing = standing::of(own, disturbs.as_ref(), hold);
        let instead = instead.filter(|_| standing.is_held());
        let is_withheld = instead.is_some();
        if let Some(instead) = instead {
            // What other editions say is of the plan too.
            (sheet, flips) = (instead, Vec::new());
        }
        Worked {
            sheet,
            edition,
            flips,
            left_out,
            standing,
            latest,
            is_withheld,
            progress: Progress::Whole,
        }
    }
}
