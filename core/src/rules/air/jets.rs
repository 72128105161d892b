//! How far a register throws, how its air falls or rises, and how much room air it takes along.

use crate::measure::unit::{FACTOR, FPM, NET_IN2, PERCENT};
use crate::measure::{Length, Measure};
use crate::rules::compare::Limit;
use crate::sheet::{Expr, Value};
use crate::words::Amount;
use crate::{choice, words};

words! {
    THROW_SAYS = "Fully turbulent jet: throw = K × cfm ÷ (end velocity × √area), area in sq ft as the table names it; at 50 fpm 30 % less. K is for examples: the maker's own throw figures go first.", es "Chorro turbulento por completo: alcance = K × cfm ÷ (velocidad final × √área), área en sq ft como la nombra la tabla; a 50 fpm 30 % menos. K es para ejemplos: va primero el alcance del fabricante.";
    THROW_SEEN = "read in a text conversion of the 2021 SI chapter, equation 5, Table 1 and Example 1. Good to a fifth or so", es "leído en una conversión a texto del capítulo SI de 2021, ecuación 5, Tabla 1 y Ejemplo 1. Con error de un quinto más o menos";
    SURFACE_SAYS = "A jet along a ceiling throws √2 times as far as the same jet free of it; free is 0.707 of attached.", es "Un chorro a lo largo de un techo alcanza √2 veces lo que el mismo chorro libre de él; libre es 0.707 de pegado.";
    SURFACE_SEEN = "read in the same chapter, equation 12", es "leído en el mismo capítulo, ecuación 12";
    ATTACHED_SAYS = "A jet holds to a ceiling where the register's top is within 1 ft of it and no beam, light or soffit crosses.", es "Un chorro se pega al techo donde el tope de la rejilla está a 1 ft o menos de él y no lo cruza viga, luz ni soffit.";
    ATTACHED_SEEN = "the 1 ft is from memory, the rest common practice", es "el 1 ft es de memoria, lo demás costumbre del oficio";
    DROP_SAYS = "A free level jet that differs by ΔT from a room at T (°R) has left its axis by y = c × 32.2 × ΔT × x³ ÷ (K × T × V² × √area) at x ft, V in ft/s; c from 0.24 to 0.42.", es "Un chorro libre a nivel que difiere ΔT de un cuarto a T (°R) se ha apartado de su eje y = c × 32.2 × ΔT × x³ ÷ (K × T × V² × √área) a x ft, V en ft/s; c de 0.24 a 0.42.";
    DROP_SEEN = "0.24 is worked out by integrating a parcel along the axis; 0.42 is from memory of tests on horizontal jets. Take the band", es "0.24 se calcula integrando una porción de aire a lo largo del eje; 0.42 es de memoria de pruebas con chorros horizontales. Tome el rango";
    LEAVES_SAYS = "A cold jet leaves a ceiling about 1.2 × √K × (T ÷ ΔT)^½ × cfm^¼ × pressure^⅜ ft out, pressure in wc.", es "Un chorro frío deja el techo a cerca de 1.2 × √K × (T ÷ ΔT)^½ × cfm^¼ × presión^⅜ ft, presión en wc.";
    LEAVES_SEEN = "from memory, for slots and round diffusers; a factor printed for SI gives hundreds of metres and is not used", es "de memoria, para ranuras y difusores redondos; un factor impreso para SI da cientos de metros y no se usa";
    CARRIED_SAYS = "Room air carried along: 2 × leaving velocity ÷ velocity there; along a slot √2 instead of 2.", es "Aire del cuarto arrastrado: 2 × velocidad de salida ÷ velocidad ahí; a lo largo de una ranura √2 en vez de 2.";
    CARRIED_SEEN = "read in the same chapter, equations 7 to 10; a root lost in the conversion is restored", es "leído en el mismo capítulo, ecuaciones 7 a 10; se restauró una raíz perdida en la conversión";
    UP_SAYS = "Blown up or down, throw to 75 fpm changes about 1 % for each °F of difference; above 150 fpm it hardly does.", es "Soplado hacia arriba o abajo, el alcance a 75 fpm cambia cerca de 1 % por cada °F de diferencia; arriba de 150 fpm casi no cambia.";
    UP_SEEN = "read in ASHRAE Journal, April 1999", es "leído en ASHRAE Journal, abril de 1999";
    HALF_WALL_SAYS = "Cool air from a floor or low register has to reach the upper half of the wall.", es "El aire frío de una rejilla de piso o baja tiene que llegar a la mitad de arriba de la pared.";
    HALF_WALL_SEEN = "from memory of tests on cooling by warm-air registers", es "de memoria de pruebas de enfriamiento por rejillas de aire caliente";

    HIGH_WALL = "High on a wall, grille", es "Alta en pared, rejilla";
    BAR_LOW = "High on a wall, bars under 4 in high", es "Alta en pared, barras de menos de 4 in de alto";
    BAR_HIGH = "High on a wall, bars 4 in and higher", es "Alta en pared, barras de 4 in de alto o más";
    LOW_WALL = "Low on a wall, blows up it", es "Baja en pared, sopla hacia arriba";
    BASEBOARD = "Baseboard, blows up", es "Zoclo, sopla hacia arriba";
    FLOOR = "Floor, blows up", es "Piso, sopla hacia arriba";
    ROUND = "Ceiling, all round", es "Techo, en redondo";
    FOUR_WAY = "Ceiling, four ways", es "Techo, cuatro lados";
    SLOT = "Ceiling slot", es "Ranura de techo";
    STRAIGHT = "Straight", es "Derechas";
    WIDE = "Spread wide", es "Bien abiertas";
    FREE = "Nothing: free in the room", es "Nada: libre en el cuarto";
    ATTACHED = "The ceiling, within 1 ft of it", es "El techo, a 1 ft o menos de él";
}

source!(
    THROW,
    "jet-throw",
    "ASHRAE Fundamentals 2021, ch. 20, throw and Table 1" es "ASHRAE Fundamentals 2021, cap. 20, alcance y Tabla 1",
    THROW_SAYS,
    THROW_SEEN,
    Read
);
source!(
    SURFACE,
    "jet-surface",
    "ASHRAE Fundamentals 2021, ch. 20, jets along surfaces" es "ASHRAE Fundamentals 2021, cap. 20, chorros junto a superficies",
    SURFACE_SAYS,
    SURFACE_SEEN,
    Read
);
source!(HOLDS, "jet-attached", "Jets along ceilings, habit" es "Chorros a lo largo de techos, costumbre", ATTACHED_SAYS, ATTACHED_SEEN, Memory);
source!(DROP, "jet-drop", "Archimedes number of a horizontal jet" es "Número de Arquímedes de un chorro horizontal", DROP_SAYS, DROP_SEEN, Memory);
source!(
    LEAVES,
    "jet-leaves-ceiling",
    "ASHRAE Fundamentals, ch. 20, separation" es "ASHRAE Fundamentals, cap. 20, separación",
    LEAVES_SAYS,
    LEAVES_SEEN,
    Memory
);
source!(
    CARRIED,
    "jet-entrainment",
    "ASHRAE Fundamentals 2021, ch. 20, entrainment" es "ASHRAE Fundamentals 2021, cap. 20, arrastre de aire",
    CARRIED_SAYS,
    CARRIED_SEEN,
    Read
);
source!(UPWARD, "jet-upward", "ASHRAE Journal, April 1999, large spaces" es "ASHRAE Journal, abril de 1999, espacios grandes", UP_SAYS, UP_SEEN, Read);
source!(
    HALF_WALL,
    "jet-half-wall",
    "Floor registers when cooling, habit" es "Rejillas de piso al enfriar, costumbre",
    HALF_WALL_SAYS,
    HALF_WALL_SEEN,
    Memory
);

choice! {
    /// What the air comes out of.
    pub enum Outlet {
        /// A register or grille under the ceiling.
        HighWall = "high-wall", HIGH_WALL;
        /// A linear bar grille of a low core.
        BarLow = "bar-low", BAR_LOW;
        /// A linear bar grille of a higher core.
        BarHigh = "bar-high", BAR_HIGH;
        /// Over the base, up the wall.
        LowWall = "low-wall", LOW_WALL;
        /// In the base.
        Baseboard = "baseboard", BASEBOARD;
        /// In the floor.
        Floor = "floor", FLOOR;
        /// A round or square diffuser.
        Round = "ceiling-round", ROUND;
        /// A square one with four ways.
        FourWay = "ceiling-four-way", FOUR_WAY;
        /// Long and narrow.
        Slot = "slot", SLOT;
    }
}

choice! {
    /// How its vanes stand.
    pub enum Vanes {
        /// No spread.
        Straight = "straight", STRAIGHT;
        /// Wide.
        Wide = "wide", WIDE;
    }
}

choice! {
    /// What the jet runs along.
    pub enum Surface {
        /// Nothing.
        Free = "free", FREE;
        /// The ceiling.
        Attached = "attached", ATTACHED;
    }
}

/// Which way an outlet blows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Blows {
    /// Level, from a wall. Its published K is that of a free jet.
    Across,
    /// Up.
    Up,
    /// Level, from the ceiling. Its published K is that of a jet along it.
    Along,
}

/// K in tenths with straight vanes and with wide ones, how much of the core is the area that K
/// goes with, in percent, and which way it blows. A slot's second K is that of a free jet.
#[rustfmt::skip]
const TABLE: [([i64; 2], i64, Blows); 9] = [
    ([57, 42], 80, Blows::Across),
    ([44, 44], 50, Blows::Across),
    ([50, 50], 50, Blows::Across),
    ([45, 30], 50, Blows::Up),
    ([40, 20], 100, Blows::Up),
    ([47, 16], 50, Blows::Up),
    ([11, 11], 100, Blows::Along),
    ([38, 38], 100, Blows::Along),
    ([55, 39], 50, Blows::Along),
];

impl Outlet {
    /// Which way it blows.
    pub const fn blows(self) -> Blows {
        TABLE[self as usize].2
    }

    /// Whether its area is that of its neck.
    pub const fn has_neck(self) -> bool {
        matches!(self, Self::Round | Self::FourWay)
    }

    /// How much of its core is open, as the table has it.
    pub const fn open(self) -> Measure {
        Measure::whole(&PERCENT, TABLE[self as usize].1)
    }

    /// Its K as the table has it, and whether that is to be taken times √2 (`1`), over it (`-1`) or
    /// as it stands for a jet that runs along `surface`.
    pub const fn k(self, vanes: Vanes, surface: Surface) -> (Measure, i8) {
        let (k, _, blows) = TABLE[self as usize];
        let (second, root) = match (self, blows, surface) {
            (Self::Slot, _, surface) => (matches!(surface, Surface::Free), 0),
            (_, Blows::Across, Surface::Attached) => (matches!(vanes, Vanes::Wide), 1),
            (_, Blows::Along, Surface::Free) => (false, -1),
            _ => (matches!(vanes, Vanes::Wide), 0),
        };
        (Measure::hundredths(&FACTOR, k[second as usize] * 10), root)
    }
}

/// Times √2, over it, or as it stands.
pub fn rooted(k: Expr, root: i8) -> Expr {
    let two = Expr::Root(2, Box::new(Expr::count(2)));
    match root {
        1 => k.times(two),
        -1 => k.over(two),
        _ => k,
    }
}

/// What an expression comes to in a unit; nothing where it has no value.
pub fn measured(of: Expr) -> Option<Measure> {
    match of.value().and_then(Value::amount) {
        Some(Amount::Measure(measure)) => Some(measure),
        _ => None,
    }
}

/// Past this velocity a jet dies, and its throw is told 30 % short of the formula.
pub const LAST: Measure = Measure::whole(&FPM, 50);
/// What is left of the formula's throw there.
pub const DYING: Measure = Measure::whole(&PERCENT, 70);
/// The velocities that throws are told to.
pub const ENDS: [Measure; 3] = [LAST, Measure::whole(&FPM, 100), Measure::whole(&FPM, 150)];

/// The throw as it is written out: `K × cfm ÷ (end × √area)`, and 70 % of it at 50 fpm.
pub fn throw(k: Measure, cfm: Measure, area: Measure, end: Measure) -> Expr {
    let root = Expr::Root(2, Box::new(Expr::measure(area)));
    let formula = Expr::measure(k).times(Expr::measure(cfm)).over(Expr::measure(end).times(root));
    if end == LAST { formula.times(Expr::measure(DYING)) } else { formula }
}

/// How far it throws; none where it leaves no faster than the velocity that is asked for.
pub fn thrown(k: Measure, cfm: Measure, area: Measure, end: Measure) -> Option<Length> {
    let leaves = measured(velocity(cfm, area))?;
    match throw(k, cfm, area, end).value()?.amount()? {
        Amount::Length(length) if leaves > end => Some(length),
        _ => None,
    }
}

/// How fast it leaves.
pub fn velocity(cfm: Measure, area: Measure) -> Expr {
    Expr::measure(cfm).over(Expr::measure(area)).told_in(&FPM)
}

/// A jet that is colder or warmer than the room, in feet, feet a second and degrees.
#[derive(Clone, Copy, Debug)]
pub struct Jet {
    /// K, area form.
    pub k: f64,
    /// cfm.
    pub cfm: f64,
    /// In square feet.
    pub area: f64,
    /// Supply against room, without its sign.
    pub difference: f64,
    /// The room, in °F.
    pub room: f64,
}

/// The least and the most of the drop's coefficient.
pub const BAND: [f64; 2] = [0.24, 0.42];

impl Jet {
    /// From measures of their own units; the area in square inches.
    pub fn new([k, cfm, area, difference, room]: [Measure; 5]) -> Self {
        debug_assert_eq!(area.unit(), &NET_IN2);
        Self {
            k: k.number(),
            cfm: cfm.number(),
            area: area.number() / 144.0,
            difference: libm::fabs(difference.number()),
            room: room.number(),
        }
    }

    /// `y ÷ x³` for a coefficient of 1, both in feet.
    fn bend(&self) -> f64 {
        let velocity = self.cfm / self.area / 60.0;
        32.17 * self.difference
            / (self.k * (self.room + 459.67) * velocity * velocity * libm::sqrt(self.area))
    }

    /// How far it has left its axis `x` feet out, in feet.
    pub fn bent(&self, x: f64, coefficient: f64) -> f64 {
        coefficient * self.bend() * x * x * x
    }

    /// How far out it has left its axis by `y` feet, in feet; without end where it never does.
    pub fn reaches(&self, y: f64, coefficient: f64) -> f64 {
        libm::cbrt(y / (coefficient * self.bend()))
    }

    /// How far out it leaves a ceiling, cold, in feet, at a pressure in inches of water.
    pub fn leaves(&self, pressure: f64) -> f64 {
        let warmth = libm::sqrt(self.k * (self.room + 459.67) / self.difference);
        1.2 * warmth * libm::pow(self.cfm, 0.25) * libm::pow(pressure, 0.375)
    }
}

/// How far below a ceiling a register's top may be and still blow along it.
pub const NEAR: Limit<Length> = Limit { value: Length::inches(12, 1), source: &HOLDS };
/// How much of the way up a wall cool air has to get.
pub const UPPER_HALF: Limit<Measure> =
    Limit { value: Measure::whole(&PERCENT, 50), source: &HALF_WALL };
/// Half the angle that a jet spreads by, in degrees. Source: [`THROW`]'s chapter, mean 22° in all.
pub const HALF_SPREAD: f64 = 11.0;
/// What people's heads are in. Source: HPAC Engineering, 24 Sep 2021: floor to 6 ft.
pub const OCCUPIED: Length = Length::inches(72, 1);

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::unit::CFM;

    fn feet(outlet: Outlet, vanes: Vanes, cfm: i64, area: i64, end: i64) -> f64 {
        let (k, root) = outlet.k(vanes, Surface::Free);
        let k = measured(rooted(Expr::measure(k), root).told_in(&FACTOR)).unwrap();
        let area = Measure::hundredths(&NET_IN2, area);
        let end = Measure::hundredths(&FPM, end);
        let cfm = Measure::hundredths(&CFM, cfm);
        let length = thrown(k, cfm, area, end).unwrap();
        length.nanometres() as f64 / 304_800_000.0
    }

    /// Worked by hand from the chapter's equation 5 and its Table 1: a 12 × 6 sidewall grille with
    /// 57.6 sq in open at 150 cfm; the same spread; a 4 × 10 floor register with 20 sq in open at
    /// 80 cfm; a 6 × 10 sidewall register with 48 sq in open at four flows.
    #[test]
    fn throws_are_those_worked_by_hand() {
        use Outlet::{Floor, HighWall};
        use Vanes::{Straight, Wide};
        #[rustfmt::skip]
        const CASES: [(Outlet, Vanes, i64, i64, [f64; 3]); 4] = [
            (HighWall, Straight, 150, 5760, [9.01, 13.52, 18.93]),
            (HighWall, Wide,     150, 5760, [6.64,  9.96, 13.95]),
            (Floor,    Wide,      80, 2000, [2.29,  3.43,  4.81]),
            (Floor,    Straight,  80, 2000, [6.73, 10.09, 14.12]),
        ];
        for (outlet, vanes, cfm, area, want) in CASES {
            for (end, want) in [150, 100, 50].into_iter().zip(want) {
                let got = feet(outlet, vanes, cfm * 100, area, end * 100);
                assert!((got - want).abs() < 0.006, "{outlet:?} {vanes:?} to {end}: {got}");
            }
        }
        for (cfm, want) in [(60, 8.29), (80, 11.06), (100, 13.82), (120, 16.59)] {
            let got = feet(HighWall, Straight, cfm * 100, 4800, 5000);
            assert!((got - want).abs() < 0.006, "{cfm} cfm: {got}");
        }
        // Just three quarters of 13 ft.
        assert!((feet(HighWall, Straight, 7050, 4800, 5000) - 9.75).abs() < 0.01);
    }

    /// Worked by hand: a 6-in neck at 100 cfm, all round, along the ceiling.
    #[test]
    fn a_round_diffuser_throws_along_the_ceiling() {
        let (k, root) = Outlet::Round.k(Vanes::Straight, Surface::Attached);
        assert_eq!(root, 0);
        let area = Measure::new(&NET_IN2, 28_274_334);
        for (end, want) in ENDS.into_iter().zip([3.48, 2.48, 1.65]) {
            let got = thrown(k, Measure::whole(&CFM, 100), area, end).unwrap();
            let got = got.nanometres() as f64 / 304_800_000.0;
            assert!((got - want).abs() < 0.006, "{end:?}: {got}");
        }
    }

    /// Source: ASHRAE Fundamentals 2021 (SI), ch. 20, Example 1: a 280 × 430 mm core 80 % open
    /// throws 0.3 m³/s to 0.75, 0.5 and 0.25 m/s in 7, 11 and 22 m, 15 m once cut by 30 %. In feet
    /// and to a decimal by hand: 24.10, 36.15, 72.3.
    #[test]
    fn the_handbooks_example_comes_out() {
        let (cfm, area) = (63_566, 14_930);
        for (end, want) in [(14_764, 24.10), (9_843, 36.15), (4_921, 72.3)] {
            let got = feet(Outlet::HighWall, Vanes::Straight, cfm, area, end);
            assert!((got / want - 1.0).abs() < 0.002, "{end}: {got}");
        }
        let cut = 72.3 * DYING.number() / 100.0 * 0.3048;
        assert!((cut - 15.0).abs() < 0.6, "{cut} m");
    }

    /// Source: ASHRAE Fundamentals 2021, ch. 20, Table 1, generic values, as named there.
    #[test]
    fn k_is_that_of_the_table_and_a_surface_is_worth_a_root_of_two() {
        use Surface::{Attached, Free};
        use Vanes::{Straight, Wide};
        #[rustfmt::skip]
        let table = [
            (Outlet::HighWall,  Straight, Free,     570), (Outlet::HighWall,  Wide, Free, 420),
            (Outlet::BarLow,    Straight, Free,     440), (Outlet::BarHigh,   Straight, Free, 500),
            (Outlet::LowWall,   Straight, Free,     450), (Outlet::LowWall,   Wide, Free, 300),
            (Outlet::Baseboard, Straight, Free,     400), (Outlet::Baseboard, Wide, Free, 200),
            (Outlet::Floor,     Straight, Free,     470), (Outlet::Floor,     Wide, Free, 160),
            (Outlet::Round,     Straight, Attached, 110), (Outlet::FourWay,   Straight, Attached, 380),
            (Outlet::Slot,      Straight, Attached, 550), (Outlet::Slot,      Straight, Free, 390),
        ];
        for (outlet, vanes, surface, want) in table {
            let k = outlet.k(vanes, surface);
            assert_eq!(k, (Measure::hundredths(&FACTOR, want), 0), "{outlet:?} {vanes:?}");
        }
        for outlet in Outlet::ALL {
            let of = |surface| {
                let (k, root) = outlet.k(Straight, surface);
                measured(rooted(Expr::measure(k), root).told_in(&FACTOR)).unwrap().number()
            };
            let share = of(Free) / of(Attached);
            // The slot's two are published apart, and are 0.709.
            let want =
                if outlet.blows() == Blows::Up { 1.0 } else { std::f64::consts::FRAC_1_SQRT_2 };
            assert!((share - want).abs() < 0.0021, "{outlet:?}: {share}");
        }
    }

    /// Worked by hand: the first grille above, 20 °F cold into 75 °F, 9 ft out; and a slot of K 5.5
    /// at 100 cfm and 0.04 in wc.
    #[test]
    fn cold_air_drops_and_leaves_the_ceiling_where_hand_work_says() {
        let jet = Jet { k: 5.7, cfm: 150.0, area: 0.4, difference: 20.0, room: 75.0 };
        for (coefficient, want) in BAND.into_iter().zip([1.5, 2.6]) {
            assert!((jet.bent(9.0, coefficient) - want).abs() < 0.05);
            let back = jet.reaches(jet.bent(9.0, coefficient), coefficient);
            assert!((back - 9.0).abs() < 1e-9);
        }
        let slot = Jet { k: 5.5, cfm: 100.0, ..jet };
        assert!((slot.leaves(0.04) - 13.8).abs() < 0.05, "{}", slot.leaves(0.04));
    }
}
