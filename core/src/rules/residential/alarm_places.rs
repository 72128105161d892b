//! R314.3 and NFPA 72: where smoke alarms are needed, and what they keep away from. A supply register
//! is `air::clearances`' own; peaks and what work under permit brings are `smoke_alarms`'.

use super::smoke_alarms::SMOKE_ALARMS;
use crate::choice;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    PHOTO = "Photoelectric", es "Fotoeléctrica";
    ION = "Ionization", es "De ionización";
    UNKNOWN = "Not known", es "No se sabe";
    NEEDED_SAYS = "A smoke alarm in each bedroom, outside each sleeping area within 21 ft of a bedroom's door on the way there, and on each level, the basement too.", es "Una alarma de humo en cada recámara, fuera de cada área de dormir a 21 ft o menos de la puerta de una recámara en el camino hacia ahí, y en cada nivel, también el sótano.";
    NEEDED_SEEN = "read in alarm makers' guides that quote NFPA 72", es "leído en guías de fabricantes de alarmas que citan NFPA 72";
    AWAY_SAYS = "36 in or more from the door of a bathroom with a tub or shower, and from the tips of a ceiling fan's blades.", es "A 36 in o más de la puerta de un baño con tina o regadera, y de las puntas de las aspas de un ventilador de techo.";
    AWAY_SEEN = "read in a state fire safety division's page; the bathroom door in a model building code too", es "leído en la página de la división de seguridad contra incendios de un estado; la puerta del baño, también en un código modelo de construcción";
    NEAR_SAYS = "Within 20 ft of a cooking appliance an alarm is photoelectric or can be silenced.", es "A 20 ft o menos de un aparato de cocina una alarma es fotoeléctrica o se puede silenciar.";
    NEAR_SEEN = "read in a state fire safety division's page", es "leído en la página de la división de seguridad contra incendios de un estado";
    NONE_SAYS = "Within 10 ft of a cooking appliance there is none, unless it is listed for it.", es "A 10 ft o menos de un aparato de cocina no hay ninguna, a menos que esté listada para eso.";
    NONE_SEEN = "written down from memory", es "escrito de memoria";
    IRC_SAYS = "From a cooking appliance: ionization 20 ft, with a silencing button 10 ft, photoelectric 6 ft, unless that keeps out an alarm that is needed.", es "Desde un aparato de cocina: ionización 20 ft, con botón para silenciarla 10 ft, fotoeléctrica 6 ft, a menos que eso deje fuera una alarma que hace falta.";
    IRC_SEEN = "read in a building code on a legal-code site, a code trainer's article and a home inspector's page", es "leído en un código de construcción en un sitio de códigos legales, un artículo de un instructor de código y la página de un inspector de casas";
    WALL_SAYS = "On a wall an alarm's top is within 12 in of the ceiling. Older rules and makers' sheets keep it 4 in below, too.", es "En una pared, la parte de arriba de una alarma queda a 12 in o menos del techo. Las reglas más viejas y las hojas de fabricantes la piden además 4 in abajo.";
    WALL_SEEN = "4 in read in an advice page on dead air; 12 in written down from memory", es "las 4 in, leídas en una página de consejos sobre aire muerto; las 12 in, escritas de memoria";
}

source!(
    /// Where they are needed.
    NEEDED, "nfpa-72-where", "NFPA 72, required locations; IRC R314.3" es "NFPA 72, lugares obligatorios; IRC R314.3", NEEDED_SAYS, NEEDED_SEEN, Read
);
source!(
    /// Baths and fans.
    AWAY, "nfpa-72-away", "NFPA 72; IRC R314.3", AWAY_SAYS, AWAY_SEEN, Read
);
source!(
    /// Cooking, to 20 ft.
    NEAR, "nfpa-72-cooking", "NFPA 72, cooking appliances, 20 ft" es "NFPA 72, aparatos de cocina, 20 ft", NEAR_SAYS, NEAR_SEEN, Read
);
source!(
    /// Cooking, to 10 ft.
    NONE, "nfpa-72-cooking-10", "NFPA 72, cooking appliances, 10 ft" es "NFPA 72, aparatos de cocina, 10 ft", NONE_SAYS, NONE_SEEN, Memory
);
source!(
    /// Cooking, by the residential code.
    COOKING, "irc-r314.3.3", "IRC R314.3.3", IRC_SAYS, IRC_SEEN, Read
);
source!(
    /// On a wall.
    WALL, "nfpa-72-wall", "NFPA 72, on a wall" es "NFPA 72, en una pared", WALL_SAYS, WALL_SEEN, Memory
);

choice! {
    /// How it senses smoke.
    pub enum Sensing {
        /// By light; slower to take steam and cooking for smoke.
        Photo = "photoelectric", PHOTO;
        /// By charged air.
        Ion = "ionization", ION;
        /// Taken as the stricter.
        Unknown = "unknown", UNKNOWN;
    }
}

/// From the door of a bathroom.
pub const FROM_BATH: Limit<Length> = Limit { value: Length::inches(36, 1), source: &AWAY };
/// From the tips of a fan's blades.
pub const FROM_FAN: Limit<Length> = Limit { value: Length::inches(36, 1), source: &AWAY };
/// From a bedroom's door to the alarm outside it, on the way there.
pub const FROM_BEDROOM: Limit<Length> = Limit { value: Length::inches(252, 1), source: &NEEDED };
/// Its top below the ceiling, on a wall.
pub const BELOW_CEILING: Limit<Length> = Limit { value: Length::inches(12, 1), source: &WALL };
/// And in older rules not nearer than this.
pub const DEAD_AIR: Limit<Length> = Limit { value: Length::inches(4, 1), source: &WALL };
/// From a peak, level.
pub const FROM_PEAK: Limit<Length> = Limit { value: Length::inches(36, 1), source: &SMOKE_ALARMS };
/// Below a peak.
pub const BELOW_PEAK: Limit<Length> = Limit { value: Length::inches(4, 1), source: &SMOKE_ALARMS };

const fn feet(count: i64, source: &'static crate::sheet::Source) -> Limit<Length> {
    Limit { value: Length::inches(12 * count, 1), source }
}

/// From a cooking appliance, by NFPA 72.
pub const fn cooking(sensing: Sensing, is_silenced: bool) -> Limit<Length> {
    match (sensing, is_silenced) {
        (Sensing::Photo, _) | (_, true) => feet(10, &NONE),
        _ => feet(20, &NEAR),
    }
}

/// From a cooking appliance, by the residential code.
pub const fn cooking_at_home(sensing: Sensing, is_silenced: bool) -> Limit<Length> {
    match (sensing, is_silenced) {
        (Sensing::Photo, _) => feet(6, &COOKING),
        (_, true) => feet(10, &COOKING),
        _ => feet(20, &COOKING),
    }
}
