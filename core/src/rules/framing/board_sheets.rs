//! Gypsum board as it is sold.

use crate::measure::Length;
use crate::words;

words! {
    SHEETS_SAYS = "Sheets are 48 or 54 in wide, 8 to 16 ft long.";
    SHEETS_SEEN = "read in a builders' guide to gypsum board";
}

source!(
    /// Where the widths are named.
    SHEETS, "board-sheets", "Gypsum board sheet sizes", SHEETS_SAYS, SHEETS_SEEN, Read
);

/// From narrow to wide. Source: [`SHEETS`].
pub const WIDTHS: [Length; 2] = [Length::inches(48, 1), Length::inches(54, 1)];
