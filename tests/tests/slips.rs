//! What is said of a slip is true of what was typed, and shows how to write it in that field.

use ledgerboard_core::catalog;
use ledgerboard_core::fields::{Kind, Row, heard};
use ledgerboard_core::measure::{Length, Units, Volume};
use ledgerboard_core::words::{Amount, Voice};

/// All rows of all calculators, those of groups and lists too.
fn all_rows() -> Vec<&'static Row> {
    fn collect(rows: &'static [Row], out: &mut Vec<&'static Row>) {
        for row in rows {
            match row.kind {
                Kind::Group(rows) => collect(rows, out),
                Kind::List(item) => collect(item.rows, out),
                _ => out.push(row),
            }
        }
    }
    let mut out = Vec::new();
    catalog::ALL.iter().for_each(|entry| collect(entry.rows, &mut out));
    out
}

fn says(row: &Row, text: &str) -> String {
    let said = heard(row, text, Units::Customary);
    said.map_or_else(|says| Voice::default().say(&says), |amount| format!("{amount:?}"))
}

fn faults(input: &str) -> Vec<(String, String)> {
    let line = catalog::answer_line(&format!(r#"{{"calculator":"box-fill","input":{input}}}"#));
    let answer: serde_json::Value = serde_json::from_str(&line).unwrap();
    let text = |value: &serde_json::Value| value.as_str().unwrap().to_owned();
    let faults = answer["faults"].as_array().unwrap_or_else(|| panic!("{input}: {line}"));
    faults.iter().map(|fault| (text(&fault["field"]), text(&fault["says"]))).collect()
}

#[test]
fn a_fault_names_the_bound_that_was_passed() {
    let gangs = "At most 6: wider ones are built to order; ask their maker.";
    let volume = "At most 100.0 in³: this rule covers boxes up to 100 in³.";
    #[rustfmt::skip]
    let cases = [
        ("gangs", "0", "At least 1."),
        ("gangs", "-5", "At least 1."),
        ("gangs", "-99999999999999999999", "At least 1."),
        ("gangs", "9", gangs),
        ("gangs", "99999999999999999999", gangs),
        ("gangs", "1e9", "“1e9” isn't a whole number. Write it like 3."),
        ("gangs", "1.5", "“1.5” isn't a whole number. Write it like 3."),
        ("marked", "0", "At least 1.0 in³."),
        ("marked", "-5", "At least 1.0 in³."),
        ("marked", "-9999999999999999", "At least 1.0 in³."),
        ("marked", "101", volume),
        ("marked", "9999999999999999", volume),
        ("marked", "1e9", "Can't read “1e9”. Write it like 20.3 or 333 cm3."),
        ("marked", "18..0", "Can't read “18..0”. Write it like 20.3 or 333 cm3."),
        ("marked", "18 mm", "The unit in “18 mm” doesn't fit here. Write it like 20.3 or 333 cm3."),
        ("marked", "0.12345678901234567890123456789", "“0.12345678901234567890123456789” has more digits than can be held. Write it like 20.3 or 333 cm3."),
        ("free.emerges", "13", "At most 12 in: no box is that deep."),
        ("free.emerges", "deep", "Can't read “deep”. Write it like 1 1/2, 1.5 or 38 mm."),
        ("free.emerges", "2 stone", "The unit in “2 stone” doesn't fit here. Write it like 1 1/2, 1.5 or 38 mm."),
    ];
    for (field, text, want) in cases {
        let mut input = ledgerboard_core::wire::Node::from_json(r#"{"marked":"18"}"#).unwrap();
        input.put(field, ledgerboard_core::wire::Node::text(text));
        let input = serde_json::to_string(&input).unwrap();
        assert_eq!(faults(&input), [(field.to_owned(), want.to_owned())], "{field}: {text}");
    }
}

#[test]
fn every_bound_of_every_quantity_is_named_for_what_is_past_it() {
    let mut seen = 0;
    for row in all_rows() {
        let (least, most, below, above) = match row.kind {
            Kind::Length(span) => {
                let step = Length::from_nanometres(1_000);
                let (below, above) = (span.least.minus(step).exact(), span.most.plus(step).exact());
                (Amount::Length(span.least), Amount::Length(span.most), below, above)
            }
            Kind::Volume(span) => {
                let step = Volume::from_units(1_000);
                let (below, above) = (span.least.minus(step).exact(), span.most.plus(step).exact());
                (Amount::Volume(span.least), Amount::Volume(span.most), below, above)
            }
            Kind::Measure(span) => {
                let (least, most) = (span.least.millionths(), span.most.millionths());
                let below = span.least.of_same(least - 1).exact();
                let above = span.most.of_same(most + 1).exact();
                (Amount::Measure(span.least), Amount::Measure(span.most), below, above)
            }
            _ => continue,
        };
        let shown = |amount: Amount| {
            amount.show(Units::Customary, ledgerboard_core::measure::Rounding::Nearest).text()
        };
        assert_eq!(says(row, &below), ["At least ", &shown(least), "."].concat(), "{}", row.key);
        let most = ["At most ", &shown(most), ": "].concat();
        assert!(says(row, &above).starts_with(&most), "{}: {}", row.key, says(row, &above));
        seen += 1;
    }
    assert!(seen > 10);
}

#[test]
fn every_example_can_be_typed_into_its_own_field() {
    for row in all_rows() {
        if !matches!(row.kind, Kind::Length(_) | Kind::Volume(_) | Kind::Room(_) | Kind::Measure(_))
        {
            continue;
        }
        let said = says(row, "?");
        let (_, examples) = said.split_once("Write it like ").expect("how to write it");
        let examples = examples.trim_end_matches('.');
        for example in examples.split(", ").flat_map(|part| part.split(" or ")) {
            let heard = heard(row, example, Units::Customary);
            assert!(matches!(heard, Ok(Some(_))), "{}: {example}: {heard:?}", row.key);
        }
    }
}

/// A comma with one or two digits behind it is a decimal mark to most of the world and nothing to
/// the rest; with three it may be thousands, and is never read.
#[test]
fn a_comma_is_a_decimal_mark_only_where_it_can_be_nothing_else() {
    for (text, want) in [
        ("20,3", Some("20.3 in3")),
        ("20,25", Some("20.25 in3")),
        (",5 in3", Some("0.5 in3")),
        ("332,5 cm3", Some("332.5 cm3")),
        ("1,250", None),
        ("0,125", None),
        ("1,2500", None),
        ("1,2,3", None),
        ("1,25.5", None),
        ("1,250.5", None),
        ("20,", None),
    ] {
        let read = Volume::read(text, Units::Customary).map(Volume::exact).ok();
        assert_eq!(read.as_deref(), want, "{text}");
    }
    let half = Length::inches(9, 2);
    assert_eq!(Length::read("4,5", Units::Customary), Ok(half));
    assert_eq!(Length::read("9' 4,5\"", Units::Customary), Ok(Length::inches(225, 2)));
    for text in ["4,1/2", "4,125", "9-4,125", "9,5-4"] {
        assert!(Length::read(text, Units::Customary).is_err(), "{text}");
    }
    let said = &faults(r#"{"marked":"1,250"}"#)[0].1;
    assert!(said.starts_with("The comma in “1,250” could mean tenths or thousands."), "{said}");
}

/// Of every measure: one that looks like a value that a person would write, not like 1002 cfm.
#[test]
fn the_example_of_a_measure_is_a_round_one() {
    let mut seen = 0;
    for row in all_rows() {
        let Kind::Measure(span) = row.kind else { continue };
        let said = says(row, "?");
        let (_, example) = said.split_once("Write it like ").expect("how to write it");
        let Ok(Some(Amount::Measure(like))) =
            heard(row, example.trim_end_matches('.'), Units::Customary)
        else {
            panic!("{}: {example}", row.key)
        };
        let digits = like.millionths().to_string();
        let is_round = digits.trim_end_matches('0').len() <= 1;
        let narrow = span.most.millionths() < 2 * span.least.millionths();
        assert!(is_round || narrow || span.common.contains(&like), "{}: {example}", row.key);
        seen += 1;
    }
    assert!(seen > 30, "{seen}");
}
