//! 300.4: when cable through wood framing, along it or under a roof deck is clear of nails.

use crate::edition::Electrical;
use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "Cable in a bored hole whose edge is less than 1-1/4 in from the nearest edge of the wood, or in a notch, is covered by a steel plate 1/16 in thick or one listed for it. Rigid, intermediate, EMT and PVC conduit take none.", es "El cable en un agujero taladrado cuya orilla queda a menos de 1-1/4 in de la orilla más cercana de la madera, o en una muesca, se cubre con una placa de acero de 1/16 in de grueso o una listada para eso. El conduit rígido, intermedio, EMT y de PVC no la lleva.";
    SEEN = "read in a trade magazine's code answers; that listed plates may be thinner is from memory. The 2026 edition moves it to 300.6 and could not be verified", es "leído en respuestas de código de una revista del oficio; que las placas listadas pueden ser más delgadas es de memoria. La edición 2026 lo pasa a 300.6 y no se pudo verificar";
    ALONG_SAYS = "Cable along framing or furring stays 1-1/4 in from the nearest edge that screws go into, or takes a steel plate or sleeve 1/16 in thick.", es "El cable a lo largo de la estructura o de tiras de enrasado (furring) queda a 1-1/4 in de la orilla más cercana donde entran tornillos, o lleva placa o camisa de acero de 1/16 in de grueso.";
    ALONG_SEEN = "from memory", es "de memoria";
    DECK_SAYS = "Cable under a metal-corrugated roof deck stays 1-1/2 in below its lowest surface. The 2026 edition means any roof deck.", es "El cable bajo una cubierta de tejado de lámina acanalada queda a 1-1/2 in abajo de su superficie más baja. La edición 2026 habla de toda cubierta de tejado.";
    DECK_SEEN = "read in a training institute's page on the 2026 changes", es "leído en la página de un instituto de capacitación sobre los cambios de 2026";
}

source!(
    /// Where it is published.
    CABLES, "nec-300.4(A)", "NEC 300.4(A)", SAYS, SEEN, Read
);

source!(
    /// Where cable along framing is published.
    ALONG, "nec-300.4(D)", "NEC 300.4(D)", ALONG_SAYS, ALONG_SEEN, Memory
);

source!(
    /// Where cable under roof decks is published.
    DECK, "nec-300.4(E)", "NEC 300.4(E)", DECK_SAYS, DECK_SEEN, Read
);

/// The least wood beside a hole that takes no plate. 2026: not verified.
pub const fn clear(edition: Electrical) -> Option<Limit<Length>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: Length::inches(5, 4), source: &CABLES }),
    }
}

/// The least from a cable along framing to its nearest edge. 2026: not verified.
pub const fn along(edition: Electrical) -> Option<Limit<Length>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: Length::inches(5, 4), source: &ALONG }),
    }
}

/// The least below a roof deck that the edition is about. 2026: not verified.
pub const fn below_deck(edition: Electrical) -> Option<Limit<Length>> {
    match edition {
        Electrical::E2026 => None,
        _ => Some(Limit { value: Length::inches(3, 2), source: &DECK }),
    }
}

/// What is left to either edge of wood so deep, beside what lies or is bored in its middle: below
/// nothing where that is wider.
///
/// - Formula: `(deep − taken) ÷ 2`, down to the nanometre.
pub fn beside_centred(deep: Length, taken: Length) -> Length {
    deep.minus(taken).part(2)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::compare::is_at_least;
    use crate::rules::electrical::cable_sizes::Sheathed;

    /// By hand, in a stud 3-1/2 in deep: a hole of 7/8 leaves 1-5/16 and needs no plate; 1 in
    /// leaves just 1-1/4; 1-1/16 leaves 1.21875 and takes one.
    #[test]
    fn a_centred_hole_is_clear_to_an_inch() {
        let left =
            |sixteenths| beside_centred(Length::inches(7, 2), Length::inches(sixteenths, 16));
        for (sixteenths, thirty_seconds, is_clear) in
            [(14, 42, true), (16, 40, true), (17, 39, false)]
        {
            assert_eq!(left(sixteenths), Length::inches(thirty_seconds, 32));
            for edition in Electrical::VERIFIED {
                assert_eq!(is_at_least(left(sixteenths), clear(edition).unwrap()), is_clear);
            }
        }
        assert_eq!(clear(Electrical::E2026), None);
    }

    /// By hand, flat side by side in the middle of a face of 3-1/2 in: (3.5 − Σ widths) ÷ 2.
    #[test]
    fn two_wide_cables_side_by_side_are_too_near_the_edges() {
        use Sheathed::{Nm10x2, Nm12x2, Nm12x3, Nm14x2, Nm14x3};
        for (cables, thousandths, is_clear) in [
            (&[Nm14x2, Nm14x2][..], 1378, true),
            (&[Nm12x2, Nm12x2], 1328, true),
            (&[Nm14x3, Nm14x3], 1272, true),
            (&[Nm10x2, Nm10x2], 1245, false),
            (&[Nm12x3, Nm12x3], 1226, false),
            (&[Nm14x2, Nm14x2, Nm14x2], 1192, false),
        ] {
            let wide = cables.iter().filter_map(|cable| cable.size());
            let wide = wide.fold(Length::ZERO, |sum, size| sum.plus(size.0));
            let left = beside_centred(Length::inches(7, 2), wide);
            assert_eq!(left, Length::inches(thousandths, 1000), "{cables:?}");
            let limit = along(Electrical::E2023).unwrap();
            assert_eq!(is_at_least(left, limit), is_clear, "{cables:?}");
        }
    }

    /// Source: NEC 300.4(D), 1-1/4 in, and 300.4(E), 1-1/2 in.
    #[test]
    fn distances_are_as_published_and_those_of_2026_were_not_read() {
        for edition in Electrical::VERIFIED {
            assert_eq!(along(edition).unwrap().value, Length::inches(20, 16));
            assert_eq!(below_deck(edition).unwrap().value, Length::inches(24, 16));
        }
        assert_eq!((along(Electrical::E2026), below_deck(Electrical::E2026)), (None, None));
    }
}
