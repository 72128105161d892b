//! What heat goes through a wall and with the air.

use crate::measure::{Measure, unit};
use crate::sheet::Expr;
use crate::words;

words! {
    THROUGH_SAYS = "Heat through a surface is its area times the difference of temperatures, over its R or times its U.", es "El calor por una superficie es su área por la diferencia de temperaturas, entre su R o por su U.";
    THROUGH_SEEN = "worked out from what R and U are", es "calculado de lo que son R y U";
    AIR_SAYS = "A cubic foot of air at sea level takes 0.018 Btu a degree: 1.08 Btu/h for each cfm and degree.", es "Un pie cúbico de aire al nivel del mar toma 0.018 Btu por grado: 1.08 Btu/h por cada cfm y grado.";
    AIR_SEEN = "read in a building-science answer page. Leaks go with the shell, not with the room: the air's part is an upper hint, and moisture isn't in it", es "leído en una página de respuestas de ciencia de la construcción. Las fugas van con la casa entera, no con el cuarto: la parte del aire es una idea por lo alto, y la humedad no está incluida";
}

source!(
    /// What heat through a surface is worked by.
    THROUGH, "heat-through", "Heat through a surface, U A dT" es "Calor a través de una superficie, U A dT", THROUGH_SAYS, THROUGH_SEEN, Derived
);

source!(
    /// Where the heat of air is told.
    AIR, "heat-of-air", "Sensible heat of air, 0.018 V n dT" es "Calor sensible del aire, 0.018 V n dT", AIR_SAYS, AIR_SEEN, Read
);

/// What a cubic foot of air takes to warm by a degree. Source: [`AIR`].
pub const OF_AIR: Measure = Measure::new(&unit::WARMING, 18_000);
/// The same, told as what 1 cfm carries in an hour at 1 °F: 60 minutes of it, 1.08.
pub const CARRIES: Measure = Measure::new(&unit::AIR_HEAT, 60 * OF_AIR.millionths());

/// Btu/h through so much of a surface. Source: [`THROUGH`].
pub fn through(u: Measure, area: Expr, difference: Measure) -> Expr {
    Expr::measure(u).times(area).times(Expr::measure(difference)).told_in(&unit::BTUH)
}

/// Btu/h with so much air that changes so often; `carries` is [`OF_AIR`], less where air is thin.
pub fn with_air(changes: Measure, volume: Expr, carries: Measure, difference: Measure) -> Expr {
    let air = Expr::measure(carries).times(volume).times(Expr::measure(changes));
    air.times(Expr::measure(difference)).told_in(&unit::BTUH)
}

/// The cfm that so much heat asks for, at a difference of supply against room.
pub fn air_for(heat: Measure, carries: Measure, difference: Measure) -> Expr {
    let each = Expr::measure(carries).times(Expr::measure(difference));
    Expr::measure(heat).over(each).told_in(&unit::CFM)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: 60 × 0.075 lb/cu ft × 0.24 Btu/lb·°F.
    #[test]
    fn one_number_is_told_in_two_units() {
        assert_eq!(CARRIES, Measure::hundredths(&unit::AIR_HEAT, 108));
        let told = Expr::measure(OF_AIR).told_in(&unit::AIR_HEAT).value();
        assert_eq!(told.and_then(crate::sheet::Value::amount), Some(CARRIES.into()));
    }
}
