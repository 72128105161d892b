//! What a supply register keeps away from.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    ALARM_SAYS = "A smoke alarm is not within 36 in of a supply register along a horizontal path, nor in its direct stream.", es "Una alarma de humo no va a menos de 36 in de una rejilla de salida por un camino horizontal, ni en su chorro directo.";
    ALARM_SEEN = "read in a forum's quotation of the 2007-era text; 29.8.3.4 in 2010 to 2016 and 29.11.3.4 from 2019 are from memory. System detectors: 36 in from returns too", es "leído en la cita de un foro del texto de la época de 2007; 29.8.3.4 en 2010 a 2016 y 29.11.3.4 desde 2019 son de memoria. Detectores de sistema: 36 in también de los retornos";
    GLASS_SAYS = "A supply does best under or beside the glass it serves; off corners, drapes, beds and doors; 3 ft or more from a return; not at a thermostat, hood or fireplace.", es "Una salida de aire trabaja mejor abajo o al lado del vidrio que atiende; lejos de esquinas, cortinas, camas y puertas; a 3 ft o más de un retorno; no hacia un termostato, campana o chimenea de leña.";
    GLASS_SEEN = "common practice", es "costumbre del oficio";
    HEAT_SAYS = "Heating does best from the floor at an outside wall, blowing up before the glass, where cold air falls; from high on an inside wall it is fair in mild winters, from a ceiling fair to poor, and only where it still blows 150 fpm to within 4 to 5 ft of the floor. No one outlet is best for both seasons.", es "La calefacción trabaja mejor desde el piso en una pared exterior, soplando hacia arriba frente al vidrio, donde baja el aire frío; desde lo alto de una pared interior es regular en inviernos suaves, desde un techo regular o mala, y solo donde todavía sopla 150 fpm hasta 4 a 5 ft del piso. Ninguna salida es la mejor en las dos temporadas.";
    HEAT_SEEN = "outlets in groups, and those at outside walls, read in a trade magazine's excerpt of the 7th edition; how good each is and the 150 fpm, from memory", es "salidas en grupos, y las de paredes exteriores, leídas en el extracto de la 7.ª edición en una revista del oficio; qué tan buena es cada una y los 150 fpm, de memoria";
}

source!(
    /// Where the smoke alarm's distance is published.
    ALARM, "nfpa-72-supply", "NFPA 72, household smoke alarms, supply registers" es "NFPA 72, alarmas de humo en viviendas, rejillas de suministro", ALARM_SAYS, ALARM_SEEN, Read
);
source!(
    /// What crews do.
    GLASS, "register-placing", "Placing supply registers, habit" es "Dónde van las rejillas de salida, costumbre", GLASS_SAYS, GLASS_SEEN, CommonPractice
);
source!(
    /// Which outlet heats well.
    HEAT, "outlets-heating", "SMACNA, residential comfort system installation, outlets" es "SMACNA, instalación de clima residencial, salidas de aire", HEAT_SAYS, HEAT_SEEN, Memory
);

/// Nothing is measured of it: it asks.
pub const HEATS: Limit<i64> = Limit { value: 0, source: &HEAT };
/// The least to a smoke alarm, along a horizontal path.
pub const FROM_ALARM: Limit<Length> = Limit { value: Length::inches(36, 1), source: &ALARM };
/// The least to a return, or the air goes straight back.
pub const FROM_RETURN: Limit<Length> = Limit { value: Length::inches(36, 1), source: &GLASS };
/// This near, a register warms or cools the glass.
pub const NEAR_GLASS: Limit<Length> = Limit { value: Length::inches(36, 1), source: &GLASS };
