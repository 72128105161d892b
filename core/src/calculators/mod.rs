//! The calculators: one folder each, an `Input`, one pure `solve`, an `Answer` and its sheet.
//!
//! A calculator may call another's public `solve`, never its insides; which one calls which
//! stands in the list that `cargo xtask test` reads.

pub mod added_heat;
pub mod alarm_places;
pub mod bath_hall_outlets;
pub mod behind_the_board;
pub mod between_edges;
pub mod board_weight;
pub mod boards;
pub mod box_fill;
pub mod cable_run;
pub mod cable_securing;
pub mod change_order;
pub mod circuit_touch;
pub mod drilling;
pub mod drying;
pub mod duct_branch;
pub mod duct_tree;
pub mod floor_cover;
pub mod hold;
pub mod hole_cables;
pub mod joint_compound;
pub mod joist_spans;
pub mod kitchen_outlets;
pub mod loads;
pub mod off_tonight;
pub mod outlets;
pub mod paint;
pub mod raised_register;
pub mod raising;
pub mod register_spots;
pub mod register_throw;
pub mod rerouted_cable;
pub mod return_path;
pub mod room;
pub mod room_air;
pub mod rough_in;
pub mod set_out;
pub mod skim_coat;
pub mod strip;
pub mod switch_boxes;
pub mod taken_down;
pub mod three_ways;
pub mod trade_days;
pub mod under_a_gable;

use crate::edition::Basis;
use crate::fields::Form;
use crate::rules::hazards::Disturbs;
use crate::sheet::{Caution, Faults, Part, Sheet, Standing};
use crate::wire::Node;
use crate::words;
use crate::words::Phrase;
use hold::Opened;

/// Which trade a calculator speaks to: the headings of the list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trade {
    /// What has to be known before anybody touches anything.
    First,
    /// The room itself, measured before anything in it is moved.
    Room,
    /// Taking down, and stripping what is overhead.
    Strip,
    /// Studs, plates, joists and what stands on them.
    Framing,
    /// Boxes and cables, made ready for the electrician.
    RoughIn,
    /// Ducts, registers and the way air gets back.
    Air,
    /// Board, compound and paint.
    Finish,
    /// The job as a whole: its days, and what is changed in it.
    Job,
}

words! {
    FIRST = "First of all", es "Antes que nada";
    ROOM = "The room", es "El cuarto";
    STRIP = "Taking down and stripping", es "Quitar y raspar";
    FRAMING = "Framing and the ceiling", es "La estructura y el techo";
    ROUGH_IN = "Boxes and cables", es "Cajas y cables";
    AIR = "Air", es "Aire";
    FINISH = "Boards, mud and paint", es "Tablaroca, pasta y pintura";
    JOB = "Days and changes", es "Días y cambios";
}

impl Trade {
    /// All of them, in the order of a job.
    pub const ALL: &'static [Self] = &[
        Self::First,
        Self::Room,
        Self::Strip,
        Self::Framing,
        Self::RoughIn,
        Self::Air,
        Self::Finish,
        Self::Job,
    ];

    /// For a page's own names.
    pub fn key(self) -> &'static str {
        match self {
            Self::First => "first",
            Self::Room => "room",
            Self::Strip => "strip",
            Self::Framing => "framing",
            Self::RoughIn => "rough-in",
            Self::Air => "air",
            Self::Finish => "finish",
            Self::Job => "job",
        }
    }

    /// As a person reads it.
    pub fn name(self) -> &'static Phrase {
        match self {
            Self::First => &FIRST,
            Self::Room => &ROOM,
            Self::Strip => &STRIP,
            Self::Framing => &FRAMING,
            Self::RoughIn => &ROUGH_IN,
            Self::Air => &AIR,
            Self::Finish => &FINISH,
            Self::Job => &JOB,
        }
    }
}

/// How far work in steps has come.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Progress {
    /// To its end.
    #[default]
    Whole,
    /// It goes on.
    Going,
    /// It was stopped on the way, and can go on.
    Stopped,
}

/// Work that may take longer than a keystroke, gone on with step by step. However it is cut into
/// steps, it ends with what [`Calculator::solve`] says.
pub trait Going<Answer> {
    /// Goes on for some milliseconds; true when it is done.
    fn step(&mut self) -> bool;
    /// How far it has come.
    fn progress(&self) -> Progress;
    /// Whether it is stopped where it is: its answer then says so. The next step goes on.
    fn stop(&mut self, stopped: bool);
    /// What it has so far.
    ///
    /// # Errors
    /// Nothing yet, or nothing at all.
    fn answer(&self) -> Result<Answer, Faults>;
}

/// How such work begins.
pub type Begin<Input, Answer> = fn(&Input) -> Result<Box<dyn Going<Answer>>, Faults>;

/// What is told while a plan is held, beside the area and its samples.
#[derive(Debug)]
pub struct Withheld {
    /// Prices that the user was given.
    pub prices: hold::Prices,
    /// What else there is to know, and nothing of the plan.
    pub part: Option<Part>,
}

/// From an input of one version to one of the next.
pub type Step = fn(Node) -> Node;

/// The step to a version that has new fields and no other change: they stand at their blanks.
pub fn with_blanks(input: Node) -> Node {
    input
}

/// One calculator.
pub trait Calculator {
    /// Its name in links, marks and the batch door. Never changes.
    const ID: &'static str;
    /// Of its input's shape. Goes up with every change that an old input doesn't fit.
    const VERSION: u16;
    /// From each version to the one after it, the first from 1 to 2: what an old input says, by the new
    /// shape's names. A field that a step leaves out stands at its blank. No method, so that the page
    /// ships it once.
    const STEPS: &'static [Step] = &[];
    /// Whom it speaks to.
    const TRADE: Trade;
    /// Its name on screen.
    const NAME: &'static Phrase;
    /// What it answers, in one line.
    const ABOUT: &'static Phrase;
    /// Whether the edition of the electrical code can change the answer.
    const ELECTRICAL: bool;
    /// Whether it is a room, whose figures other work takes.
    const IS_ROOM: bool = false;
    /// Whether it tells where something will be that an owner sees: a ceiling, a box, a register.
    const TELLS_PLACES: bool = false;
    /// The keys of figures that a person's own work may take more or less of than is reckoned: hours,
    /// compound, bags.
    const PACED: &'static [&'static str] = &[];
    /// What an answer opens: for the hold alone. No method, so that the page ships it once.
    const OPENS: Option<fn(Self::Answer) -> Option<Opened>> = None;
    /// Begins what may take longer than a keystroke; its errors are those of
    /// [`Calculator::solve`]. No method, so that the page ships it for those alone that do.
    const BEGIN: Option<Begin<Self::Input, Self::Answer>> = None;
    /// What is put in.
    type Input: Form;
    /// What comes out, geometry included.
    type Answer;

    /// What the screen opens with.
    fn sample() -> Self::Input;
    /// Works it out. The electrical edition is set whenever [`Calculator::ELECTRICAL`] is.
    ///
    /// # Errors
    /// What the fields can't see one by one: fields that don't fit each other, or a question
    /// that another rule answers.
    fn solve(input: &Self::Input, basis: Basis) -> Result<Self::Answer, Faults>;
    /// The answer as it is shown.
    fn sheet(input: &Self::Input, answer: &Self::Answer, basis: Basis) -> Sheet;

    /// What can hurt somebody, the worst first: of an input, and before there is one that can be
    /// read all that may. Its sheet may say more, by its answer.
    fn cautions(_: Option<&Self::Input>) -> Vec<Caution> {
        Vec::new()
    }
    /// What the answer is worked without, each at its field: parts of an input that nobody can count
    /// yet. Its sheet says so in a check that asks, so that it never looks better for it.
    fn left_out(_: &Self::Input) -> Faults {
        Vec::new()
    }
    /// What the work does to an old surface. It is then held until a hold that covers it is open.
    fn disturbs(_: &Self::Input) -> Option<Disturbs> {
        None
    }
    /// Whether the plan stays out of sight while it is held: what a bid needs then takes the sheet's
    /// place. See [`hold::instead`].
    fn withholds(_: &Self::Input) -> Option<Withheld> {
        None
    }
    /// How the answer itself stands: for the hold alone, which is its own.
    fn standing(_: &Self::Answer) -> Standing {
        Standing::NotNeeded
    }
}
