//! Gypsum board as it is sold.

use crate::measure::Length;
use crate::words;

words! {
    SHEETS_SAYS = "Sheets are 48 or 54 in wide, 8 to 16 ft long.", es "Las hojas son de 48 o 54 in de ancho y 8 a 16 ft de largo.";
    SHEETS_SEEN = "read in a builders' guide to gypsum board", es "leído en una guía de tablaroca para constructores";
}

source!(
    /// Where the widths are named.
    SHEETS, "board-sheets", "Gypsum board sheet sizes" es "Medidas de hojas de tablaroca", SHEETS_SAYS, SHEETS_SEEN, Read
);

/// From narrow to wide. Source: [`SHEETS`].
pub const WIDTHS: [Length; 2] = [Length::inches(48, 1), Length::inches(54, 1)];
