//! Silica and dust: what the air may hold. Nothing here works out what it does hold.

use super::Deed;
use crate::rules::compare::Limit;
use crate::sheet::Source;
use crate::words;

words! {
    SILICA_SAYS = "Silica in the air: 50 micrograms a cubic meter at most over 8 hours. The rule reaches work that may pass 25.", es "Sílice en el aire: 50 microgramos por metro cúbico como máximo en 8 horas. La regla alcanza al trabajo que puede pasar de 25.";
    SILICA_SEEN = "read in a trade law summary and answers on 29 CFR 1926.1153", es "leído en un resumen de leyes del oficio y en respuestas sobre 29 CFR 1926.1153";
    TASKS_SAYS = "The silica rule's table of 18 tasks with their controls has no drywall sanding: measure, or use data.", es "La tabla de la regla de sílice, con 18 tareas y sus controles, no tiene el lijado de tablaroca: mida, o use datos.";
    TASKS_SEEN = "the number is read in a tile trade magazine; what is not in it is from memory", es "el número se leyó en una revista del oficio de losetas; lo que no está en ella es de memoria";
    SANDING_SAYS = "Sanding joint compound reached ten times the limit for dust; a sander with a vacuum cut that by 80 to 97 percent.", es "Lijar pasta llegó a diez veces el límite de polvo; una lijadora con aspiradora lo bajó de 80 a 97 por ciento.";
    SANDING_SEEN = "read in NIOSH's engineering controls database and NIOSH 99-113", es "leído en la base de datos de controles de ingeniería de NIOSH y en NIOSH 99-113";
}

source!(
    /// The limits.
    SILICA, "cfr-29-1926.1153", "29 CFR 1926.1153", SILICA_SAYS, SILICA_SEEN, Read
);
source!(
    /// What the table of tasks leaves out.
    TASKS, "cfr-29-1926.1153-table-1", "29 CFR 1926.1153, table 1" es "29 CFR 1926.1153, tabla 1", TASKS_SAYS, TASKS_SEEN, Memory
);
source!(
    /// What sanding was measured at.
    SANDING, "niosh-99-113", "NIOSH 99-113", SANDING_SAYS, SANDING_SEEN, Read
);

/// The most in the air over 8 hours, in micrograms a cubic meter.
pub const MOST: Limit<i64> = Limit { value: 50, source: &SILICA };
/// From here on the rule reaches, in micrograms a cubic meter over 8 hours.
pub const ACTION: Limit<i64> = Limit { value: 25, source: &SILICA };

/// What a deed calls for, as far as dust goes.
pub fn behind(deed: Deed) -> Option<&'static Source> {
    match deed {
        Deed::Sand => Some(&SANDING),
        Deed::Cut | Deed::Strip | Deed::TearOut => Some(&SILICA),
        Deed::NotSaid | Deed::Cover => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::compare::{is_at_least, is_at_most};

    /// Source: 29 CFR 1926.1153(c) and (b): 50 and 25 micrograms a cubic meter.
    #[test]
    fn the_limits_of_silica_include_their_own_value() {
        for (value, within, reached) in
            [(24, true, false), (25, true, true), (50, true, true), (51, false, true)]
        {
            assert_eq!(is_at_most(value, MOST), within, "{value}");
            assert_eq!(is_at_least(value, ACTION), reached, "{value}");
        }
    }
}
