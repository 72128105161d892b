//! What gypsum board weighs to carry, how far apart framing may stand under it, and what one
//! person lifts.

use crate::measure::unit::{PSF, SHEET_WEIGHT, WEIGHT};
use crate::measure::{Length, Measure};
use crate::rules::compare::{Limit, at_most, is_at_most, settle};
use crate::rules::framing::dead_weights::Layer;
use crate::rules::residential::blown::{Board, SAG};
use crate::sheet::Check;
use crate::{choice, say, words};

words! {
    WEIGHT_SAYS = "Board weighs about 1.2 lb a square foot 1/4 in thick, 1.4 at 3/8, 1.6 at 1/2, 2.2 at 5/8; lightweight and sag-resistant 1/2 in 1.25 to 1.4. The label rules.", es "La tablaroca pesa unas 1.2 lb por pie cuadrado de 1/4 in de grueso, 1.4 de 3/8, 1.6 de 1/2, 2.2 de 5/8; la liviana y la resistente al pandeo de 1/2 in, 1.25 a 1.4. Manda la etiqueta.";
    WEIGHT_SEEN = "read in a maker's panel sheet, lightweight in general pages", es "leído en la hoja técnica de un fabricante; la liviana, en páginas generales";
    SPACING_SAYS = "On a ceiling, across framing: 3/8 in board at most 16 in apart, 1/2 and 5/8 at most 24; 1/4 in not on framing alone. Under water-based texture 1/2 in at most 16, else 5/8 or sag-resistant board; 3/8 not at all.", es "En un techo, cruzando la estructura: hoja de 3/8 in cada 16 in como máximo, 1/2 y 5/8 cada 24 como máximo; 1/4 in no va sola en la estructura. Bajo textura a base de agua 1/2 in cada 16 como máximo, si no 5/8 u hoja resistente al pandeo; 3/8 de ningún modo.";
    SPACING_SEEN = "spacing read in a maker's sheet, texture in a code forum that quotes the note to the table", es "la separación leída en la hoja de un fabricante; la textura, en un foro de códigos que cita la nota de la tabla";
    ALONG_SAYS = "On a ceiling, along framing: 1/2 and 5/8 in board at most 16 in apart; thinner board not at all, and none under water-based texture. On walls board goes either way.", es "En un techo, a lo largo de la estructura: hoja de 1/2 y 5/8 in cada 16 in como máximo; más delgada de ningún modo, y ninguna bajo textura a base de agua. En paredes va de las dos maneras.";
    ALONG_SEEN = "from memory: the rows of the table for either direction, and its note on texture; not read here", es "de memoria: los renglones de la tabla para cualquier dirección, y su nota sobre textura; no se leyó aquí";
    LIFT_SAYS = "One person lifts 51 lb at best: close, at knuckle height, seldom. Board is wide and goes overhead, so less is right.", es "Una persona levanta 51 lb en el mejor caso: cerca, a la altura de los nudillos, pocas veces. La hoja es ancha y va arriba de la cabeza, así que lo correcto es menos.";
    LIFT_SEEN = "from memory: the load constant, 23 kg, of the revised lifting equation of NIOSH, 1991, which no law makes a limit", es "de memoria: la constante de carga, 23 kg, de la ecuación revisada de levantamiento de NIOSH, 1991, que ninguna ley pone como límite";
    ALONE_CHECK = "Hung on framing alone", es "Colgada sola en la estructura";
    SPACING_CHECK = "Framing that the boards cross, apart", es "Separación de la estructura que cruzan las hojas";
    ALONG_CHECK = "Framing that the boards run along, apart", es "Separación de la estructura que siguen las hojas";
    EITHER_CHECK = "Framing behind the boards, apart", es "Separación de la estructura detrás de las hojas";
    ALONG_ALONE = "Hung along the framing, on it alone", es "Colgada a lo largo de la estructura, sola en ella";
    ASK_WAY = "Boards may cross framing up to {0} apart, and run along it up to {1}: say which way it runs.", es "Las hojas pueden cruzar estructura cada {0} como máximo, y seguirla cada {1} como máximo: diga cómo corre.";
    ASK_WAY_ONE = "Boards may cross framing up to {0} apart, and run along none: say which way it runs.", es "Las hojas pueden cruzar estructura cada {0} como máximo, y no seguirla: diga cómo corre.";
    TURN = "Farther apart than {0}, boards go across the framing, where it may stand up to {1} apart: turn them, or add framing or backing.", es "Con más de {0} de separación las hojas van cruzando la estructura, que ahí puede estar cada {1} como máximo: gírelas, o agregue estructura o refuerzos.";
    NO_ALONG = "Lay it across the framing, or take 1/2 in board or thicker.", es "Póngala cruzando la estructura, o use hoja de 1/2 in o más gruesa.";
    NO_ALONG_THIN = "Take 1/2 in board or thicker.", es "Use hoja de 1/2 in o más gruesa.";
    NO_CEILING = "Over board that is there it may go; on framing alone take thicker board.", es "Sobre tablaroca que ya está puede ir; sola en la estructura use tablaroca más gruesa.";
    QUARTER = "1/4 in", es "1/4 in";
    THREE_EIGHTHS = "3/8 in", es "3/8 in";
    HALF = "1/2 in", es "1/2 in";
    HALF_LIGHT = "1/2 in, lightweight", es "1/2 in, liviana";
    HALF_STIFF = "1/2 in, sag-resistant", es "1/2 in, resistente al pandeo";
    FIVE_EIGHTHS = "5/8 in", es "5/8 in";
}

source!(
    /// What board weighs.
    BOARDS, "board-weights", "Board makers, weight to carry" es "Fabricantes de tablaroca, peso a cargar", WEIGHT_SAYS, WEIGHT_SEEN, Read
);
source!(
    /// How far apart framing may stand.
    SPACING, "irc-R702.3.5", "IRC Table R702.3.5" es "IRC, Tabla R702.3.5", SPACING_SAYS, SPACING_SEEN, Read
);
source!(
    /// The same where boards run along it.
    ALONG, "irc-R702.3.5-along", "IRC Table R702.3.5, either direction" es "IRC Tabla R702.3.5, cualquier dirección", ALONG_SAYS, ALONG_SEEN, Memory
);
source!(
    /// What one person lifts.
    LIFT, "niosh-lifting", "NIOSH lifting equation, load constant" es "Ecuación de levantamiento de NIOSH, constante de carga", LIFT_SAYS, LIFT_SEEN, Memory
);

choice! {
    /// A kind of board.
    pub enum Panel {
        /// The commonest.
        Half = "1/2", HALF;
        /// Made to be light.
        HalfLight = "1/2-light", HALF_LIGHT;
        /// Made not to sag under wet texture, and light as a rule.
        HalfStiff = "1/2-stiff", HALF_STIFF;
        /// For wide spacing.
        FiveEighths = "5/8", FIVE_EIGHTHS;
        /// For going over what is there.
        ThreeEighths = "3/8", THREE_EIGHTHS;
        /// For going over what is there, and curves.
        Quarter = "1/4", QUARTER;
    }
}

/// Boards that may hang on framing alone, of those that aren't to: none. Source: [`SPACING`].
const ALONE: Limit<i64> = Limit { value: 0, source: &SPACING };
/// The same along framing. Source: [`ALONG`].
const ALONE_ALONG: Limit<i64> = Limit { value: 0, source: &ALONG };
/// What board bears that has no figure. Source: [`SAG`].
pub const NOTHING_ON: Limit<Measure> = Limit { value: Measure::whole(&PSF, 0), source: &SAG };

/// What one person lifts, at best. Source: [`LIFT`].
pub const ONE_LIFTS: Limit<Measure> = Limit { value: Measure::whole(&WEIGHT, 51), source: &LIFT };

impl Panel {
    /// A square foot of it, to carry; the heavy end of a range. Source: [`BOARDS`].
    pub const fn weighs(self) -> Measure {
        Measure::hundredths(
            &SHEET_WEIGHT,
            match self {
                Self::Quarter => 120,
                Self::ThreeEighths | Self::HalfLight | Self::HalfStiff => 140,
                Self::Half => 160,
                Self::FiveEighths => 220,
            },
        )
    }

    /// How thick it is.
    pub const fn thick(self) -> Length {
        Length::inches(
            match self {
                Self::Quarter => 2,
                Self::ThreeEighths => 3,
                Self::Half | Self::HalfLight | Self::HalfStiff => 4,
                Self::FiveEighths => 5,
            },
            8,
        )
    }

    /// What framing is reckoned to hold of it; none of 1/4 in, which isn't in that table.
    pub const fn dead_load(self) -> Option<Measure> {
        Some(match self {
            Self::Half | Self::HalfLight | Self::HalfStiff => Layer::Half.weight(),
            Self::FiveEighths => Layer::FiveEighths.weight(),
            Self::ThreeEighths => Layer::ThreeEighths.weight(),
            Self::Quarter => return None,
        })
    }

    /// The farthest that framing may stand apart on a ceiling; none where it isn't to hang on
    /// framing alone. Source: [`SPACING`].
    pub const fn spacing(self, textured: bool) -> Option<Limit<Length>> {
        let inches = match (self, textured) {
            (Self::Quarter, _) | (Self::ThreeEighths, true) => return None,
            (Self::ThreeEighths, false) | (Self::Half | Self::HalfLight, true) => 16,
            _ => 24,
        };
        Some(Limit { value: Length::inches(inches, 1), source: &SPACING })
    }

    /// On a ceiling, framing so far apart: close enough, or a ban where there is no spacing at which
    /// it would do. Source: [`SPACING`].
    pub fn hung(self, textured: bool, apart: Length) -> Check {
        match self.spacing(textured) {
            Some(limit) => at_most("spacing", (&SPACING_CHECK).into(), apart, limit),
            None => {
                let check = at_most("alone", (&ALONE_CHECK).into(), 1, ALONE);
                Check { note: Some((&NO_CEILING).into()), ..check }
            }
        }
    }

    /// The same where boards run along the framing; none where they aren't to. Source: [`ALONG`].
    pub const fn spacing_along(self, textured: bool) -> Option<Limit<Length>> {
        match self {
            Self::Quarter | Self::ThreeEighths => None,
            _ if textured => None,
            _ => Some(Limit { value: Length::inches(16, 1), source: &ALONG }),
        }
    }

    /// The same as [`Panel::hung`] where boards run along the framing. Source: [`ALONG`].
    pub fn hung_along(self, textured: bool, apart: Length) -> Check {
        match self.spacing_along(textured) {
            Some(limit) => {
                let check = at_most("spacing", (&ALONG_CHECK).into(), apart, limit);
                let turned = self.spacing(textured).filter(|across| is_at_most(apart, *across));
                let turned = turned.filter(|_| !is_at_most(apart, limit));
                let note = turned.map(|across| say!(TURN, limit.value, across.value));
                Check { note, ..check }
            }
            None => {
                let check = at_most("alone", (&ALONG_ALONE).into(), 1, ALONE_ALONG);
                // What may not hang across either is not mended by turning it.
                let turned = self.spacing(textured).is_some();
                let note = if turned { &NO_ALONG } else { &NO_ALONG_THIN };
                Check { note: Some(note.into()), ..check }
            }
        }
    }

    /// The same where nobody said which way the framing runs: what is close enough either way is within,
    /// what is so neither way is over, and between the two it asks. Sources: [`SPACING`], [`ALONG`].
    pub fn hung_either_way(self, textured: bool, apart: Length) -> Check {
        let Some(across) = self.spacing(textured) else { return self.hung(textured, apart) };
        let along = self.spacing_along(textured);
        let check = |limit| at_most("spacing", (&EITHER_CHECK).into(), apart, limit);
        if !is_at_most(apart, across) {
            return check(across);
        }
        match along {
            Some(along) if is_at_most(apart, along) => check(along),
            Some(along) => {
                let note = Some(say!(ASK_WAY, across.value, along.value));
                Check { note, ..settle(check(along), &ASK_WAY) }
            }
            None => {
                let note = Some(say!(ASK_WAY_ONE, across.value));
                Check { note, ..settle(check(across), &ASK_WAY_ONE) }
            }
        }
    }

    /// As it is told what insulation it bears, on framing so far apart; none of thin board.
    pub fn on(self, apart: Length) -> Option<Board> {
        let narrow = Limit { value: Length::inches(16, 1), source: &SAG };
        match self {
            Self::FiveEighths => Some(Board::FiveEighths),
            Self::Half | Self::HalfLight | Self::HalfStiff if is_at_most(apart, narrow) => {
                Some(Board::Half16)
            }
            Self::Half | Self::HalfLight | Self::HalfStiff => Some(Board::Half24),
            Self::ThreeEighths | Self::Quarter => None,
        }
    }
}
