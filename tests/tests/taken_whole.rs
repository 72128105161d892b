//! What one tap takes from another number of the job.

use ledgerboard_core::catalog::{self, Entry};
use ledgerboard_core::edition::Basis;
use ledgerboard_core::fields::{Kind, Row, left_alone};
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

/// A wall boarded with no end joint and no bead has no figure that isn't there; of the rows that ask for
/// one, those are told that a source has nothing for, while they are asked.
#[test]
fn what_a_source_has_nothing_for_is_told() {
    let entry = catalog::find("joint-compound").unwrap();
    let source = catalog::find("boards").unwrap();
    let has = figures(source);
    let draft = entry.sample();
    let left = |has: &dyn Fn(&str) -> bool| left_alone(entry.rows, &draft, source.id, has);
    assert!(left(&|key| has.contains(&key)).is_empty());
    let labels = left(&|key| has.contains(&key) && key != "ends" && key != "screws");
    let labels: Vec<_> = labels.iter().map(|row| row.label).collect();
    let says =
        |key: &str| entry.rows.iter().find(|row| row.key == key || row.room == key).unwrap().label;
    assert_eq!(labels, [says("ends"), says("screws")]);
    // A room is another source.
    assert!(left_alone(entry.rows, &draft, "room-of-no-name", &|_| false).is_empty());
}
