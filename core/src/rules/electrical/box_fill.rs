//! 314.16: what counts against a box's volume, and how much.

use super::cable_sizes::Sheathed;
use super::conductor_volume::Awg;
use super::equipment_ground::of_circuit;
use crate::edition::Electrical;
use crate::measure::Volume;
use crate::sheet::{Confidence, Expr, Source};
use crate::words;
use crate::words::Phrase;

words! {
    FILL_SAYS = "What is in a box must not take more than its volume; volumes of box, rings and covers that are marked or of a listed size add up.", es "Lo que hay en una caja no debe ocupar más que su volumen; se suman los volúmenes de caja, aros y tapas que están marcados o son de medida listada.";
    FILL_SEEN = "read in a lighting maker's extract of the article and in IRC 2018 E3905.12", es "leído en un extracto del artículo de un fabricante de lámparas y en IRC 2018 E3905.12";
    COUNT_SAYS = "Conductors from outside count one each, at their own size; looped ones of twice the free length count two; those that never leave the box count none.", es "Los conductores de afuera cuentan uno cada uno, a su propio tamaño; los que dan vuelta con el doble del largo libre cuentan dos; los que nunca salen de la caja no cuentan.";
    COUNT_SEEN = "read in trade magazines' worked calculations of the article", es "leído en cálculos resueltos del artículo en revistas del oficio";
    CLAMPS_SAYS = "All clamps inside a box count together as one of the largest conductor in it.", es "Todas las abrazaderas dentro de una caja cuentan juntas como uno del conductor más grueso en ella.";
    SUPPORTS_SAYS = "Each type of support fitting counts as one of the largest conductor in the box.", es "Cada tipo de pieza de soporte cuenta como uno del conductor más grueso de la caja.";
    DEVICES_SAYS = "Each yoke counts two of the largest conductor connected to it, times the gangs it needs.", es "Cada yugo cuenta dos del conductor más grueso conectado a él, por los gangs que necesita.";
    DEVICES_SEEN = "read in trade magazines' calculations; wide devices in an electricians' thread with its worked dryer box", es "leído en cálculos de revistas del oficio; los dispositivos anchos, en un hilo de electricistas con su caja de secadora resuelta";
    GROUNDS17_SAYS = "Up to the 2017 edition, all grounds count together as one of the largest; a set of isolated grounds counts once more.", es "Hasta la edición 2017, todas las tierras cuentan juntas como una de la más gruesa; un juego de tierras aisladas cuenta una vez más.";
    GROUNDS17_SEEN = "read in a contractors' association magazine; the isolated set is from memory", es "leído en la revista de una asociación de contratistas; el juego aislado es de memoria";
    GROUNDS20_SAYS = "From the 2020 edition, up to four grounds count as one of the largest; each further one adds a quarter.", es "Desde la edición 2020, hasta cuatro tierras cuentan como una de la más gruesa; cada una más suma un cuarto.";
    GROUNDS20_SEEN = "read in code forum threads that quote the 2020 text", es "leído en hilos de foros de código que citan el texto de 2020";
    BLOCKS_SAYS = "From 2023, a terminal block counts one of the largest conductor ended on it.", es "Desde 2023, un bloque de terminales cuenta uno del conductor más grueso que termina en él.";
    BLOCKS_SEEN = "read in a continuing-education page on the 2023 change", es "leído en una página de educación continua sobre el cambio de 2023";
    CANOPY_SAYS = "Up to four light fixture (luminaire) wires smaller than 14 AWG and the ground that come from a canopy may be left out.", es "Se pueden dejar sin contar hasta cuatro alambres de lámpara (luminaria) más delgados que 14 AWG y la tierra que vienen de una campana.";
    CANOPY_SEEN = "read in a lighting maker's extract of the article", es "leído en un extracto del artículo de un fabricante de lámparas";
    BARRIER_SAYS = "A barrier shares the volume out to its sides; unmarked it takes 0.5 in³ of metal, 1.0 in³ otherwise.", es "Una división reparte el volumen entre sus lados; sin marca ocupa 0.5 in³ si es de metal, 1.0 in³ si no.";
    BARRIER_SEEN = "read in IRC 2018 E3905.12; that the volume is shared out by gangs is our reading", es "leído en IRC 2018 E3905.12; que el volumen se reparte por gangs es lectura nuestra";
    GANGED_SAYS = "Volumes of boxes that are ganged add up.", es "Los volúmenes de cajas unidas se suman.";
    GANGED_SEEN = "from memory", es "de memoria";
    MARKED_SAYS = "Boxes up to 100 in³ that the table doesn't list go by their marked volume, never by outside measure.", es "Las cajas de hasta 100 in³ que no están en la tabla van por su volumen marcado, nunca por la medida de afuera.";
    MARKED_SEEN = "read in trade magazines; the clause's number is from memory", es "leído en revistas del oficio; el número de la cláusula es de memoria";
}

const fn source(
    key: &'static str,
    clause: &'static str,
    says: &'static crate::words::Phrase,
    seen: &'static crate::words::Phrase,
    confidence: Confidence,
) -> Source {
    Source { key, clause: Phrase { en: clause, es: "" }, says, seen, confidence }
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
pub static CANOPY: Source = Source {
    clause: Phrase { en: "NEC 314.16(B)(1) Exception", es: "NEC 314.16(B)(1), excepción" },
    ..source("nec-314.16(B)(1)-x", "", &CANOPY_SAYS, &CANOPY_SEEN, Read)
};
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
        let of = |count, size| Expr::count(count).times(Expr::volume(one(size)));
        Expr::Sum(vec![
            Expr::volume(self.conductors),
            of(self.of_largest(), self.largest),
            self.of_grounds(edition),
        ])
    }

    /// What its grounds take, as the working shows it: one, or one and a quarter for each past four.
    pub fn of_grounds(&self, edition: Electrical) -> Expr {
        let past = edition.or_newest(grounds).map_or(0, |(how, _)| how.quarters(self.cables));
        let of = |count| Expr::count(count).times(Expr::volume(one(self.ground)));
        if past == 0 { of(1) } else { of(4 + past).over(Expr::count(4)) }
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
