//! 334.23, which sends to 320.23: cable where people crawl.

use crate::edition::Electrical;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::{choice, words};

words! {
    SAYS = "In an attic, cable across the top of joists, or across rafters and studs within 7 ft above them, lies between guard strips no lower than itself. With no permanent stairs or ladder: only within 6 ft of the edge of the hatch. Along the side of framing: none, but 1-1/4 in from its edge.", es "En un ático, el cable atravesado sobre las viguetas, o atravesado en pares y montantes hasta 7 ft arriba de ellas, va entre tiras de protección no más bajas que él. Sin escalera fija: solo a 6 ft o menos de la orilla del acceso. Por el costado de la estructura: ninguna, pero a 1-1/4 in de su orilla.";
    SEEN = "read in forum pages that quote 320.23; some inspectors take pull-down stairs as permanent", es "leído en páginas de foros que citan 320.23; algunos inspectores toman la escalera plegable como fija";
    HATCH = "A hatch", es "Un acceso";
    PULL_DOWN = "Pull-down stairs", es "Escalera plegable";
    STAIRS = "Permanent stairs or ladder", es "Escalera fija";
}

source!(
    /// Where it is published.
    GUARD_STRIPS, "nec-320.23", "NEC 334.23, 320.23", SAYS, SEEN, Read
);

choice! {
    /// How people get up.
    pub enum Entrance {
        /// An opening.
        Hatch = "hatch", HATCH;
        /// Which local readings differ about.
        PullDown = "pull-down", PULL_DOWN;
        /// Made to stay.
        Stairs = "stairs", STAIRS;
    }
}

/// How far from a hatch's nearest edge cable across framing is guarded. 2026: not verified.
pub const fn from_hatch(edition: Electrical) -> Option<Limit<Length>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: Length::inches(72, 1), source: &GUARD_STRIPS }),
    }
}

/// How high above the joists cable across rafters and studs is guarded. 2026: not verified.
pub const fn above_joists(edition: Electrical) -> Option<Limit<Length>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: Length::inches(84, 1), source: &GUARD_STRIPS }),
    }
}

/// How much of a cable across framing is guarded: `across` in all, `near` of it as near as
/// [`from_hatch`] to a hatch. At pull-down stairs all of it, as the stricter reading has it.
pub fn guarded(entrance: Entrance, across: Length, near: Length) -> Length {
    match entrance {
        Entrance::Hatch => near.min(across),
        Entrance::PullDown | Entrance::Stairs => across,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: NEC 320.23(A), as it is quoted: 6 ft of a hatch, 7 ft above joists.
    #[test]
    fn strips_stand_where_people_crawl() {
        for edition in Electrical::VERIFIED {
            assert_eq!(from_hatch(edition).unwrap().value, Length::inches(6 * 12, 1));
            assert_eq!(above_joists(edition).unwrap().value, Length::inches(7 * 12, 1));
        }
        assert_eq!(from_hatch(Electrical::E2026), None);
        assert_eq!(above_joists(Electrical::E2026), None);
        let [across, near] = [240, 90].map(|inches| Length::inches(inches, 1));
        assert_eq!(guarded(Entrance::Hatch, across, near), near);
        assert_eq!(guarded(Entrance::Hatch, near, across), near, "never more than there is");
        assert_eq!(guarded(Entrance::PullDown, across, near), across);
        assert_eq!(guarded(Entrance::Stairs, across, near), across);
    }
}
