//! Plastic on floor and walls: how far it turns up and laps, and how many widths of a roll it takes.

use crate::measure::Length;
use crate::sheet::Expr;
use crate::words;

words! {
    SAYS = "6 mil plastic, turned up the walls 12 in at least, laps 12 in. Widths of a roll: 1, or (across − lap) ÷ (roll − lap), rounded up. Paper on top against slipping.", es "Plástico de 6 mil, subido en las paredes 12 in al menos, traslapes de 12 in. Anchos de un rollo: 1, o (través − traslape) ÷ (rollo − traslape), redondeado hacia arriba. Papel encima contra resbalones.";
    SEEN = "turn-up read in a how-to page, abatement specifications have 18 in and laps of 12; paper read in EPA's answers; the sum worked out", es "la subida leída en una página de instrucciones; las especificaciones de retiro de asbesto piden 18 in y traslapes de 12; el papel leído en respuestas de la EPA; la cuenta, calculada";
}

source!(
    /// Where it is told.
    SHEETING, "floor-plastic", "Floor plastic, habit" es "Plástico de piso, costumbre", SAYS, SEEN, CommonPractice
);

/// Up each wall. Source: [`SHEETING`].
pub const TURN_UP: Length = Length::inches(12, 1);
/// One width over the next. Source: [`SHEETING`].
pub const LAP: Length = Length::inches(12, 1);

/// Widths of a roll side by side over so far; `lap` is less than `roll`.
pub fn widths(across: Length, roll: Length, lap: Length) -> Expr {
    if across <= roll {
        return Expr::count(1);
    }
    let each = Expr::length(roll).less(Expr::length(lap));
    Expr::RoundUp(Box::new(Expr::length(across).less(Expr::length(lap)).over(each)))
}
