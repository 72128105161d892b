//! One amount prints one way on one sheet, in both units, wherever it stands; and a check's value
//! and limit never read the wrong way round.

use std::collections::BTreeMap;

use ledgerboard_core::catalog::{self, Worked};
use ledgerboard_core::edition::Basis;
use ledgerboard_core::measure::{Rounding, Units};
use ledgerboard_core::sheet::{Ink, Value, Verdict};
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::{Amount, Arg, Text, Voice};
use ledgerboard_tests::open_hold::open_for;
use ledgerboard_tests::placed::fitting_of;
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};

/// Amounts by their size alone, as "over by 4" and "−4 to spare" are one amount.
#[derive(Default)]
struct Prints(BTreeMap<(u8, u128), Vec<String>>);

impl Prints {
    fn add(&mut self, amount: Amount, figure: String) {
        let key = match amount {
            Amount::Length(length) => (0, length.nanometres().unsigned_abs().into()),
            Amount::Volume(volume) => (1, volume.units().unsigned_abs().into()),
            Amount::Area(area) => (2, area.square_nanometres().unsigned_abs()),
            Amount::Room(volume) => (3, volume.units().unsigned_abs().into()),
            // Of one unit, told apart from other units by its key.
            Amount::Measure(measure) => {
                let unit = measure.unit().key.bytes().map(u128::from);
                let unit = unit.fold(0, |sum, byte| sum * 256 + byte) << 64;
                (4, unit + u128::from(measure.millionths().unsigned_abs()))
            }
            Amount::Count(_) | Amount::Day(_) => return,
        };
        let figures = self.0.entry(key).or_default();
        let figure = figure.replace(['−', '≈', ' '], "");
        if !figures.contains(&figure) {
            figures.push(figure);
        }
    }

    fn shown(&mut self, amount: Amount, rounding: Rounding, units: Units) {
        self.add(amount, amount.show(units, rounding).figure);
    }

    fn text(&mut self, text: &Text, units: Units) {
        for arg in &text.args {
            match arg {
                Arg::Amount(amount, rounding) => self.shown(*amount, *rounding, units),
                // Printed as its phrase prints it: bare figures of both kinds are said the same way.
                Arg::Bare(amount) => {
                    let said = Voice { units, ..Voice::default() }
                        .say(&Text { phrase: &BARE, args: vec![Arg::Bare(*amount)] });
                    self.add(*amount, said);
                }
                Arg::Text(text) => self.text(text, units),
                Arg::Raw(_) => {}
            }
        }
    }
}

static BARE: ledgerboard_core::words::Phrase =
    ledgerboard_core::words::Phrase { en: "{0}", es: "" };

fn prints(worked: &Worked, units: Units) -> Prints {
    let mut prints = Prints::default();
    let sheet = &worked.sheet;
    for figure in std::iter::once(&sheet.headline).chain(&sheet.figures) {
        prints.shown(figure.amount, figure.rounding, units);
    }
    for check in &sheet.checks {
        prints.shown(check.value, check.value_rounding(), units);
        // A length's limit that is passed is shown to its own side: only where that is exact does
        // it read like other figures.
        let limit = check.limit.show(units, check.limit_rounding());
        if check.limit_rounding() == Rounding::Nearest || !limit.rounded {
            prints.add(check.limit, limit.figure);
        }
        prints.shown(check.margin(), check.margin_rounding(), units);
    }
    for step in &sheet.working {
        let equation = step.equation(Voice { units, ..Voice::default() });
        let (Some((_, result)), Some(amount)) =
            (equation.rsplit_once(" = "), step.expr.value().and_then(Value::amount))
        else {
            continue;
        };
        // With its unit, as it is told: behind it, but money before it and with its cents.
        let shown = amount.show(units, Rounding::Nearest);
        let bare = if result == shown.text() { &*shown.figure } else { result };
        prints.add(amount, bare.trim_end_matches(shown.unit).to_owned());
    }
    let rows = sheet.parts.iter().flat_map(|part| &part.rows);
    let texts = rows.flat_map(|row| [&row.name, &row.value]).chain(&sheet.next);
    let labels =
        sheet.drawing.iter().flat_map(|drawing| &drawing.ink).filter_map(|ink| match ink {
            Ink::Label { text, .. } => Some(text),
            _ => None,
        });
    let twin = sheet.drawing.iter().flat_map(|drawing| &drawing.twin);
    let materials = sheet.materials.iter().map(|material| &material.name);
    texts.chain(labels).chain(twin).chain(materials).for_each(|text| prints.text(text, units));
    prints
}

fn check_prints(worked: &Worked) {
    for units in [Units::Customary, Units::Metric] {
        for (amount, figures) in prints(worked, units).0 {
            assert_eq!(figures.len(), 1, "{amount:?} prints as {figures:?}");
        }
    }
}

/// Source: NEC 314.16(B): eleven conductors of 14 AWG are 22.0 in³, which is 360.515… cm³ (NIST SP
/// 811 (2008), B.8): 4.0 in³ over a box of 18.0 are 65.548… cm³.
#[test]
fn a_full_box_in_metric_prints_each_of_its_figures_one_way() {
    let input = Node::from_json(r#"{"marked":"18 in3","wires":[{"count":11}]}"#).unwrap();
    let entry = catalog::find("box-fill").unwrap();
    let worked = entry.work(&input, Units::Metric, Basis::default()).unwrap();
    check_prints(&worked);
    let voice = Voice { units: Units::Metric, ..Voice::default() };
    let headline = worked.sheet.headline.amount.show(voice.units, worked.sheet.headline.rounding);
    assert_eq!(headline.text(), "≈ 360.5 cm³");
    let next = voice.say(worked.sheet.next.as_ref().unwrap());
    assert!(next.starts_with("Over by ≈ 65.5 cm³."), "{next}");
}

#[test]
fn one_amount_prints_one_way_on_every_sheet() {
    for entry in catalog::ALL {
        let mut runner = TestRunner::new(Config::with_cases(ledgerboard_tests::cases(entry, 400)));
        runner
            .run(&fitting_of(entry), |input| {
                let worked = entry.work(&input, Units::Customary, Basis::default());
                let Ok(worked) = worked else { return Ok(()) };
                check_prints(&worked);
                // The plan too, once it is open.
                let hold = entry.disturbs(&input, Units::Customary);
                let hold = hold.and_then(|work| open_for(&work));
                let units = Units::Customary;
                let worked = entry.work_behind(&input, units, Basis::default(), hold.as_ref());
                let worked = worked.unwrap();
                check_prints(&worked);
                for check in &worked.sheet.checks {
                    let margin = check.margin().raw();
                    for units in [Units::Customary, Units::Metric] {
                        let value = check.value.show(units, check.value_rounding());
                        let limit = check.limit.show(units, check.limit_rounding());
                        let shown = check.margin().show(units, check.margin_rounding());
                        // On its limit it reads like it, and off it its margin says which side.
                        prop_assert!(margin != 0 || value == limit);
                        let minus = shown.figure.starts_with('−');
                        prop_assert_eq!(minus, margin < 0);
                        prop_assert!(check.verdict != Verdict::Over || minus);
                    }
                }
                Ok(())
            })
            .unwrap();
    }
}
