//! A hold that is open for a piece of work, so that what stands behind one is under the laws too.

use ledgerboard_core::calculators::hold::Opened;
use ledgerboard_core::catalog;
use ledgerboard_core::edition::Basis;
use ledgerboard_core::measure::Units;
use ledgerboard_core::rules::hazards::{Disturbs, Material};
use ledgerboard_core::wire::Node;

/// Whole evidence of an invented surface, for this work: none detected, and no lead. None for
/// material that nobody has named, and for what no result opens.
pub fn evidence_for(work: &Disturbs) -> Option<Node> {
    if matches!(work.material, Material::NotSaid | Material::Vermiculite) {
        return None;
    }
    let mut input = catalog::find("hold")?.sample();
    let area = work.area.map_or("1000 ft2".to_owned(), |area| area.exact());
    for (path, leaf) in [
        ("place", "Invented"),
        ("material", work.material.key()),
        ("deed", work.deed.key()),
        ("area", &area),
        ("pipe", "20 ft"),
        ("built", "1962"),
        ("report.result", "none-detected"),
        ("report.samples", "7"),
        ("report.lab", "Tamarack Lab"),
        ("report.number", "26-1184"),
        ("report.accreditation", "T-17"),
        ("report.dated", "2026-11-03"),
        ("report.sampled", "Three corners"),
        ("paint.result", "no-lead"),
        ("paint.tester", "R. Vale"),
        ("paint.tested", "2026-11-02"),
        ("office.asks", "nothing-stricter"),
        ("office.says", "County desk, Nov 4"),
    ] {
        input.put(path, Node::text(leaf));
    }
    Some(input)
}

/// The same, opened.
pub fn open_for(work: &Disturbs) -> Option<Opened> {
    catalog::find("hold")?.opened(&evidence_for(work)?, Units::Customary, Basis::default())
}
