//! How much throw a room takes: the habit in houses, and the index of comfort when cooling.

use super::jets::{Blows, Outlet};
use crate::measure::Measure;
use crate::measure::unit::PERCENT;
use crate::rules::compare::Limit;
use crate::sheet::Source;
use crate::{choice, words};

words! {
    HABIT_SAYS = "In houses, throw to 50 fpm is 75 to 100 % of the way to the facing wall, or to half-way where registers face each other; up to 120 % passes.", es "En casas, el alcance a 50 fpm es de 75 a 100 % de la distancia a la pared de enfrente, o a la mitad donde hay rejillas frente a frente; se acepta hasta 120 %.";
    HABIT_SEEN = "common practice; makers also say not past the wall", es "costumbre del oficio; los fabricantes también dicen que no pase de la pared";
    INDEX_SAYS = "Cooling, ceilings about 9 ft: the share of a room that feels no draught is best where throw is 100 to 190 % of the way for high wall grilles, 70 to 130 % for round ceiling ones, at 20 Btu/h a sq ft.", es "Enfriando, techos de cerca de 9 ft: la parte de un cuarto que no siente corriente es mejor donde el alcance es de 100 a 190 % de la distancia en rejillas de pared alta, 70 a 130 % en las redondas de techo, a 20 Btu/h por sq ft.";
    INDEX_SEEN = "the table is from memory of tests published by ASHRAE; that it goes by throw over way was read in HPAC Engineering, 2021. Houses mostly sit at 20 or under", es "la tabla es de memoria, de pruebas publicadas por ASHRAE; que va por alcance entre distancia se leyó en HPAC Engineering, 2021. Las casas casi siempre están en 20 o menos";
    L20 = "20 Btu/h a sq ft: most houses", es "20 Btu/h por sq ft: casi toda casa";
    L40 = "40", es "40";
    L60 = "60", es "60";
    L80 = "80: all glass", es "80: todo vidrio";
}

source!(
    /// The habit of the trade.
    HABIT, "throw-habit", "Throw against the way in front of it, habit in houses" es "Alcance frente a la distancia, costumbre en casas", HABIT_SAYS, HABIT_SEEN, CommonPractice
);
source!(
    /// The index's table.
    INDEX, "throw-index", "ASHRAE, air diffusion performance index, selection table" es "ASHRAE, índice de difusión de aire, tabla de selección", INDEX_SAYS, INDEX_SEEN, Memory
);

choice! {
    /// How much heat a room takes in, when it is cooled.
    pub enum Load {
        /// A house.
        L20 = "20", L20;
        /// Twice that.
        L40 = "40", L40;
        /// Three times.
        L60 = "60", L60;
        /// A greenhouse.
        L80 = "80", L80;
    }
}

/// Least and most of throw over way.
pub type Range = [Limit<Measure>; 2];

const fn range([least, most]: [i64; 2], source: &'static Source) -> Range {
    [
        Limit { value: Measure::whole(&PERCENT, least), source },
        Limit { value: Measure::whole(&PERCENT, most), source },
    ]
}

/// The habit: 75 to 120 %.
pub const COMMON: Range = range([75, 120], &HABIT);

/// By load from 20 to 80: high wall grilles, round ceiling ones, slots, which go by 100 fpm.
const TABLE: [[[i64; 2]; 4]; 3] = [
    [[100, 190], [120, 230], [150, 220], [180, 180]],
    [[70, 130], [50, 150], [70, 120], [70, 130]],
    [[30, 150], [30, 110], [30, 80], [30, 70]],
];

/// What the index asks of an outlet, and whether it goes by the throw to 100 fpm. None for what
/// blows up, whose way is another.
pub const fn index(outlet: Outlet, load: Load) -> Option<(Range, bool)> {
    let row = match (outlet.blows(), outlet) {
        (Blows::Up, _) => return None,
        (_, Outlet::Slot) => 2,
        (Blows::Across, _) => 0,
        _ => 1,
    };
    Some((range(TABLE[row][load as usize], &INDEX), row == 2))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Values from memory of the published table, at its best throw and its ranges: the best lies
    /// within the range of its own row.
    #[test]
    fn the_best_throw_of_each_row_is_in_its_range() {
        for (outlet, best) in [
            (Outlet::HighWall, [150, 160, 180, 180]),
            (Outlet::Round, [80, 80, 80, 80]),
            (Outlet::Slot, [30, 30, 30, 30]),
        ] {
            for (load, best) in Load::ALL.iter().zip(best) {
                let ([least, most], by_100) = index(outlet, *load).unwrap();
                let best = Measure::whole(&PERCENT, best);
                assert!(least.value <= best && best <= most.value, "{outlet:?} {load:?}");
                assert_eq!(by_100, outlet == Outlet::Slot);
            }
        }
        assert_eq!(index(Outlet::Floor, Load::L20), None);
    }
}
