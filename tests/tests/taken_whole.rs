//! What one tap takes from another number of the job.

use ledgerboard_core::catalog::{self, Entry};
use ledgerboard_core::edition::Basis;
use ledgerboard_core::fields::{Kind, Row};
use ledgerboard_core::measure::Units;

fn all_rows(rows: &'static [Row], visit: &mut dyn FnMut(&'static Row)) {
    for row in rows {
        visit(row);
        match row.kind {
            Kind::Group(inside) => all_rows(inside, visit),
            Kind::List(item) => all_rows(item.rows, visit),
            _ => {}
        }
    }
}

fn figures(entry: &Entry) -> Vec<&'static str> {
    let worked = entry.work(&entry.sample(), Units::Customary, Basis::default()).unwrap();
    let sheet = worked.sheet;
    let headline = sheet.headline.key;
    sheet.figures.iter().map(|figure| figure.key).chain([headline]).collect()
}

/// A row that says which figure of which calculator it is finds that figure there.
#[test]
fn every_row_that_is_taken_along_finds_its_figure() {
    let mut found = 0;
    for entry in catalog::ALL {
        all_rows(entry.rows, &mut |row| {
            if !row.of.is_empty() {
                let source = catalog::find(row.of).unwrap();
                assert!(figures(source).contains(&row.room), "{}: {}", entry.id, row.key);
                found += 1;
            }
        });
    }
    assert!(found >= 5, "{found}");
}
