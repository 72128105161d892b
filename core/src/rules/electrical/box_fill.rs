//! 314.16: what counts against a box's volume, and how much.

use super::cable_sizes::Sheathed;
use super::conductor_volume::Awg;
use super::equipment_ground::of_circuit;
use crate::edition::Electrical;
use crate::measure::Volume;
use crate::sheet::{Confidence, Expr, Source};
use crate::words;

words! {
    FILL_SAYS = "What is in a box must not take more than its volume; volumes of box, rings and covers that are marked or of a listed size add up.";
    FILL_SEEN = "read in a lighting maker's extract of the article and in IRC 2018 E3905.12";
    COUNT_SAYS = "Conductors from outside count one each, at their own size; looped ones of twice the free length count two; those that never leave the box count none.";
    COUNT_SEEN = "read in trade magazines' worked calculations of the article";
    CLAMPS_SAYS = "All clamps inside a box count together as one of the largest conductor in it.";
    SUPPORTS_SAYS = "Each type of support fitting counts as one of the largest conductor in the box.";
    DEVICES_SAYS = "Each yoke counts two of the largest conductor connected to it, times the gangs it needs.";
    DEVICES_SEEN = "read in trade magazines' calculations; wide devices in an electricians' thread with its worked dryer box";
    GROUNDS17_SAYS = "Up to the 2017 edition, all grounds count together as one of the largest; a set of isolated grounds counts once more.";
    GROUNDS17_SEEN = "read in a contractors' association magazine; the isolated set is from memory";
    GROUNDS20_SAYS = "From the 2020 edition, up to four grounds count as one of the largest; each further one adds a quarter.";
    GROUNDS20_SEEN = "read in code forum threads that quote the 2020 text";
    BLOCKS_SAYS = "From 2023, a terminal block counts one of the largest conductor ended on it.";
    BLOCKS_SEEN = "read in a continuing-education page on the 2023 change";
    CANOPY_SAYS = "Up to four light fixture (luminaire) wires smaller than 14 AWG and the ground that come from a canopy may be left out.";
    CANOPY_SEEN = "read in a lighting maker's extract of the article";
    BARRIER_SAYS = "A barrier shares the volume out to its sides; unmarked it takes 0.5 in³ of metal, 1.0 in³ otherwise.";
    BARRIER_SEEN = "read in IRC 2018 E3905.12; that the volume is shared out by gangs is our reading";
    GANGED_SAYS = "Volumes of boxes that are ganged add up.";
    GANGED_SEEN = "from memory";
    MARKED_SAYS = "Boxes up to 100 in³ that the table doesn't list go by their marked volume, never by outside measure.";
    MARKED_SEEN = "read in trade magazines; the clause's number is from memory";
}

const fn source(
    key: &'static str,
    clause: &'static str,
    says: &'static crate::words::Phrase,
    seen: &'static crate::words::Phrase,
    confidence: Confidence,
) -> Source {
    Source { key, clause, says, seen, confidence }
}

use Confidence::{Derived, Memory, Read};

/// The rule as a whole.
pub static FILL: Source = source("nec-314.16", "NEC 314.16", &FILL_SAYS, &FILL_SEEN, Read);
/// Conductors.
pub static CONDUCTORS: Source =
    source("nec-314.16(B)(1)", "NEC 314.16(B)(1)", &COUNT_SAYS, &COUNT_SEEN, Read);
/// Clamps.
pub static CLAMPS: Source =
    source("nec-314.16(B)(2)", "NEC 314.16(B)(2)", &CLAMPS_SAYS, &COUNT_SEEN, Read);
/// Support fittings.
pub static SUPPORTS: Source =
    source("nec-314.16(B)(3)", "NEC 314.16(B)(3)", &SUPPORTS_SAYS, &COUNT_SEEN, Read);
/// Devices.
pub static DEVICES: Source =
    source("nec-314.16(B)(4)", "NEC 314.16(B)(4)", &DEVICES_SAYS, &DEVICES_SEEN, Read);
/// Grounds up to the 2017 edition.
pub static GROUNDS_2017: Source =
    source("nec-314.16(B)(5)-2017", "NEC 314.16(B)(5)", &GROUNDS17_SAYS, &GROUNDS17_SEEN, Read);
/// Grounds from the 2020 edition.
pub static GROUNDS_2020: Source =
    source("nec-314.16(B)(5)-2020", "NEC 314.16(B)(5)", &GROUNDS20_SAYS, &GROUNDS20_SEEN, Read);
/// Terminal blocks.
pub static BLOCKS: Source =
    source("nec-314.16(B)(6)", "NEC 314.16(B)(6)", &BLOCKS_SAYS, &BLOCKS_SEEN, Read);
/// Wires from a canopy.
pub static CANOPY: Source =
    source("nec-314.16(B)(1)-x", "NEC 314.16(B)(1) Exception", &CANOPY_SAYS, &CANOPY_SEEN, Read);
/// Barriers.
pub static BARRIERS: Source =
    source("nec-314.16(A)-barrier", "NEC 314.16(A)", &BARRIER_SAYS, &BARRIER_SEEN, Derived);
/// Ganged boxes.
pub static GANGED: Source =
    source("nec-314.16(A)-ganged", "NEC 314.16(A)", &GANGED_SAYS, &GANGED_SEEN, Memory);
/// Marked boxes.
pub static MARKED: Source =
    source("nec-314.16(A)(2)", "NEC 314.16(A)(2)", &MARKED_SAYS, &MARKED_SEEN, Read);

/// The largest volume that a marked box may have and still be under this rule.
pub const LARGEST_BOX: Volume = Volume::hundredths(10_000);
/// What an unmarked barrier of metal takes. Source: IRC 2018 E3905.12.1.
pub const METAL_BARRIER: Volume = Volume::hundredths(50);
/// What any other unmarked barrier takes. Source: IRC 2018 E3905.12.1.
pub const OTHER_BARRIER: Volume = Volume::hundredths(100);
/// The most small light fixture wires that may be left out.
pub const CANOPY_WIRES: i64 = 4;
/// Light fixture wires below this size are small.
pub const SMALL_BELOW: Awg = Awg::Awg14;
/// Conductors that a yoke counts, for each gang.
pub const PER_YOKE: i64 = 2;

/// How grounds count.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Grounds {
    /// All together one, and a set of isolated ones once more.
    OneForAll,
    /// The first `free` together one, each further one a quarter more; isolated ones join them.
    QuarterPast {
        /// How many count as one.
        free: i64,
        /// What part of an allowance each further one adds: one over this.
        part: i64,
    },
}

impl Grounds {
    /// Quarters of an allowance that so many grounds count past the first one.
    pub fn quarters(self, grounds: i64) -> i64 {
        match self {
            Self::OneForAll => 0,
            Self::QuarterPast { free, part } => (grounds - free).max(0) * 4 / part,
        }
    }
}

/// What a box holds, as far as whole cables, clamps and devices go. Devices count by the largest
/// wire there.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Contents {
    /// Gangs that its devices need.
    gangs: i64,
    /// A clamp is inside.
    clamps: bool,
    cables: i64,
    conductors: Volume,
    largest: Option<Awg>,
    ground: Option<Awg>,
}

impl Contents {
    /// Before its first cable.
    pub fn of(gangs: i64, clamps: bool) -> Self {
        Self { gangs, clamps, ..Self::default() }
    }

    /// One more cable comes in, with a ground as it is made today.
    pub fn add(&mut self, cable: Sheathed) {
        let (size, count) = cable.conductors();
        let thicker = |known: Option<Awg>, size: Awg| match known {
            Some(known) if known.thickness() >= size.thickness() => Some(known),
            _ => Some(size),
        };
        self.cables += 1;
        self.conductors = self.conductors.plus(one(Some(size)).times(count));
        self.largest = thicker(self.largest, size);
        self.ground = thicker(self.ground, of_circuit(size));
    }

    /// Cables that come in.
    pub const fn cables(&self) -> i64 {
        self.cables
    }

    /// Allowances of the largest wire that clamps and devices count.
    fn of_largest(&self) -> i64 {
        PER_YOKE * self.gangs + i64::from(self.clamps)
    }

    /// What it takes of the box. 2026: by the newest verified text.
    ///
    /// Source: NEC 314.16(B).
    pub fn fill(&self, edition: Electrical) -> Volume {
        let quarters =
            4 + edition.or_newest(grounds).map_or(0, |(how, _)| how.quarters(self.cables));
        let fittings = one(self.largest).times(self.of_largest());
        self.conductors.plus(fittings).plus(one(self.ground).times(quarters).share(1, 4))
    }

    /// The same as the working shows it.
    pub fn expr(&self, edition: Electrical) -> Expr {
        let quarters =
            4 + edition.or_newest(grounds).map_or(0, |(how, _)| how.quarters(self.cables));
        let of = |count, size| Expr::count(count).times(Expr::volume(one(size)));
        Expr::Sum(vec![
            Expr::volume(self.conductors),
            of(self.of_largest(), self.largest),
            of(quarters, self.ground).over(Expr::count(4)),
        ])
    }
}

/// A size's allowance; nothing of none.
fn one(size: Option<Awg>) -> Volume {
    size.and_then(Awg::allowance).unwrap_or(Volume::ZERO)
}

/// How an edition counts grounds. 2026: no change was found, but it could not be verified.
pub const fn grounds(edition: Electrical) -> Option<(Grounds, &'static Source)> {
    match edition {
        Electrical::E2017 => Some((Grounds::OneForAll, &GROUNDS_2017)),
        Electrical::E2020 | Electrical::E2023 => {
            Some((Grounds::QuarterPast { free: 4, part: 4 }, &GROUNDS_2020))
        }
        Electrical::E2026 => None,
    }
}

/// How many conductors a terminal block counts. 2026: not verified.
pub const fn terminal_block(edition: Electrical) -> Option<i64> {
    match edition {
        Electrical::E2017 | Electrical::E2020 => Some(0),
        Electrical::E2023 => Some(1),
        Electrical::E2026 => None,
    }
}
