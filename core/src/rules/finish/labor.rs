//! What one worker finishes in an hour: habits, never a rule.

use crate::measure::Measure;
use crate::measure::unit::SQUARE_FOOT_AN_HOUR;
use crate::words;

words! {
    SAYS = "One worker skims 40 to 90 sq ft an hour a coat, likely 60, and sands 100 to 220 with a vacuum, likely 150. Ceilings 8 to 9 ft high, rooms empty.", es "Un trabajador hace 40 a 90 sq ft de skim por hora por mano, lo probable 60, y lija 100 a 220 con aspiradora, lo probable 150. Techos de 8 a 9 ft de alto, cuartos vacíos.";
    SEEN = "common practice; put your own beside it", es "costumbre del oficio; ponga los suyos al lado";
    STRIP_SAYS = "One worker in an hour, sq ft: protects 60 to 150 of floor, likely 100; scrapes 30 to 80, likely 50, wetting and bagging in it, painted 8 to 25, likely 15; boards over or hangs 25 to 60, likely 40; tears out and carries 25 to 70, likely 40; tapes and finishes 20 to 45, likely 30; scrapes and mops a bare slab 80 to 200, likely 120.", es "Un trabajador en una hora, sq ft: protege 60 a 150 de piso, lo probable 100; raspa 30 a 80, lo probable 50, con mojar y embolsar incluidos, pintada 8 a 25, lo probable 15; pone tablaroca encima o la cuelga 25 a 60, lo probable 40; demuele y saca 25 a 70, lo probable 40; encinta y acaba 20 a 45, lo probable 30; raspa y trapea una losa desnuda 80 a 200, lo probable 120.";
}

source!(
    /// Where the rates come from.
    LABOR, "finishing-labor", "Finishing rates, habit" es "Rendimientos de acabado, costumbre", SAYS, SEEN, CommonPractice
);

source!(
    /// Where the rates of stripping and boarding come from.
    STRIPPING, "stripping-labor", "Stripping and boarding rates, habit" es "Rendimientos de raspado y tablaroca, costumbre", STRIP_SAYS, SEEN, CommonPractice
);

const fn rates(low: i64, likely: i64, high: i64) -> [Measure; 3] {
    [
        Measure::whole(&SQUARE_FOOT_AN_HOUR, low),
        Measure::whole(&SQUARE_FOOT_AN_HOUR, likely),
        Measure::whole(&SQUARE_FOOT_AN_HOUR, high),
    ]
}

/// A skim coat: slow, likely, fast. Source: [`LABOR`].
pub const SKIM: [Measure; 3] = rates(40, 60, 90);
/// Protecting a floor: slow, likely, fast. Source: [`STRIPPING`].
pub const PROTECT: [Measure; 3] = rates(60, 100, 150);
/// Scraping texture that takes water, with wetting and bagging. Source: [`STRIPPING`].
pub const SCRAPE: [Measure; 3] = rates(30, 50, 80);
/// Scraping under paint. Source: [`STRIPPING`].
pub const SCRAPE_PAINTED: [Measure; 3] = rates(8, 15, 25);
/// Boarding over, and hanging on bare framing, each of two. Source: [`STRIPPING`].
pub const HANG: [Measure; 3] = rates(25, 40, 60);
/// Tearing out, bagging and carrying. Source: [`STRIPPING`].
pub const TEAR_OUT: [Measure; 3] = rates(25, 40, 70);
/// Taping and finishing to level 4. Source: [`STRIPPING`].
pub const FINISH: [Measure; 3] = rates(20, 30, 45);
/// Scraping and mopping a bare slab. Source: [`STRIPPING`].
pub const CLEAN_SLAB: [Measure; 3] = rates(80, 120, 200);
/// Sanding with a vacuum: slow, likely, fast. Source: [`LABOR`].
pub const SAND: [Measure; 3] = rates(100, 150, 220);
