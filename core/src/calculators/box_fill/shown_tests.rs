//! What is said of an answer, beyond its figures.

use super::tests::input;
use super::*;
use crate::fields::Form;
use crate::wire::Node;
use crate::words::{Amount, Text, Voice};

use Electrical::E2023;

/// An old 3 × 2 × 2-1/2 box, 12.5 in³, with 14.0 in it.
const OLD_BOX: &str = r#"{"cut":"plaster","enclosure":"dev-3x2x2-1/2","cables":[{"cable":"14-2","count":2}],"devices":[{}]}"#;

/// Source: NEC 314.16(B)(4): a yoke counts by the largest conductor connected to it, so that by the
/// largest in the box it never counts too little.
#[test]
fn a_device_in_mixed_sizes_says_by_which_it_is_counted() {
    let told = |devices: &str| {
        let json = format!(
            r#"{{"marked":"32","gangs":2,"cables":[{{"cable":"12-2"}},{{"cable":"14-2"}}],"devices":{devices}}}"#
        );
        let input = input(&json);
        let answer = solve(&input, E2023).unwrap();
        let sheet = sheet::sheet(&input, &answer);
        let shares = sheet.parts.iter().find(|part| part.key == "shares").unwrap();
        let say = |text: &Text| Voice::default().say(text);
        assert_eq!(shares.note, sheet.checks[0].note);
        let row = shares.rows.iter().find(|row| say(&row.name).contains("Switch")).unwrap();
        (say(&row.name), shares.note.as_ref().map(say))
    };
    let (name, note) = told(r#"[{"kind":"switch"}]"#);
    assert_eq!(name, "1 × Switch, counted as 12 AWG, the largest here");
    assert_eq!(note.unwrap(), "Switch counted as 12 AWG, the largest here; say what is on it.");
    let (_, note) = told(r#"[{"kind":"switch"},{"kind":"gfci"}]"#);
    assert_eq!(note.unwrap(), "Devices counted as 12 AWG, the largest here; say what is on each.");
    let (name, note) = told(r#"[{"kind":"switch","size":"14"}]"#);
    assert_eq!((&*name, note), ("1 × Switch on 14 AWG", None));
}

#[test]
fn the_wire_on_a_device_is_asked_at_once_where_sizes_are_mixed() {
    let row = Device::ROWS.iter().find(|row| row.key == "size").unwrap();
    for (json, want) in [
        (r#"{"cables":[{"cable":"12-2"},{"cable":"14-2"}]}"#, true),
        (r#"{"cables":[{"cable":"12-2"},{"cable":"12-3"}]}"#, false),
        (r#"{"cables":[{"cable":"14-2"}],"wires":[{"size":"12","how":"ended"}]}"#, true),
        (r#"{"cables":[{"cable":"14-2"}],"wires":[{"size":"12","how":"ground"}]}"#, true),
        (r#"{"cables":[{"cable":"14-2"}],"wires":[{"size":"18","how":"canopy"}]}"#, false),
        (r#"{"cables":[{"cable":"half typed"}]}"#, false),
        ("{}", false),
    ] {
        assert_eq!(row.is_foremost(&Node::from_json(json).unwrap()), want, "{json}");
    }
}

fn sheet_of(json: &str) -> Sheet {
    let input = input(json);
    sheet::sheet(&input, &solve(&input, E2023).unwrap())
}

fn bought(sheet: &Sheet) -> Vec<(&str, Amount)> {
    sheet.materials.iter().map(|it| (it.key.as_str(), it.amount)).collect()
}

/// Source: NEC Tables 314.16(A) and (B); what cut-in boxes are marked with is common practice.
#[test]
fn an_old_device_box_is_mended_by_a_cut_in_one_first_and_by_opening_the_wall_last() {
    let sheet = sheet_of(OLD_BOX);
    let next = Voice::default().say(sheet.next.as_ref().unwrap());
    assert_eq!(
        next,
        "Over by 1.5 in³. Least work that fits it: a cut-in (old-work) box marked 18.0 in³ or more."
    );
    let answer = solve(&input(OLD_BOX), E2023).unwrap();
    let walls: Vec<_> = answer.mends.iter().map(|mend| mend.wall).collect();
    assert_eq!(walls, [Wall::Touched, Wall::Touched, Wall::Opened]);
    for mend in answer.mends.iter().filter(|mend| mend.wall == Wall::Opened) {
        let name = Voice::default().say(&mend.name);
        assert!(name.ends_with("(in an old wall: test before you cut)"), "{name}");
    }
}

#[test]
fn in_open_framing_a_cut_in_box_comes_last() {
    let open = OLD_BOX.replace("plaster", "open");
    let names: Vec<String> = solve(&input(&open), E2023)
        .unwrap()
        .mends
        .iter()
        .map(|mend| Voice::default().say(&mend.name))
        .collect();
    assert!(names[0].starts_with("a deeper box"), "{names:?}");
    assert!(names.last().unwrap().starts_with("a cut-in"), "{names:?}");
}

#[test]
fn a_wider_cut_in_box_is_named_where_none_of_the_same_gangs_holds_it() {
    // 24.0 in³ is more than a one-gang cut-in box is marked with.
    let json = r#"{"cut":"plaster","enclosure":"dev-3x2x2-1/2","wires":[{"count":8},{"size":"14","count":4}]}"#;
    let answer = solve(&input(json), E2023).unwrap();
    let first = Voice::default().say(&answer.mends[0].name);
    assert!(
        first.starts_with("a cut-in (old-work) box, 2-gang, marked 28.0 in³ or more"),
        "{first}"
    );
    assert_eq!((answer.mends[0].wall, answer.mends[0].mended.gangs), (Wall::Opened, 2));
}

/// Source of the caution: 29 CFR 1926.1101 and 40 CFR 745.
#[test]
fn a_mend_that_cuts_a_wall_carries_its_caution_and_a_ring_does_not() {
    let warns = |json: &str| {
        let sheet = sheet_of(json);
        sheet.cautions.iter().any(|it| it.source.is_some_and(|it| it.key == "cfr-29-1926.1101(b)"))
    };
    assert!(warns(OLD_BOX));
    // 30.3 in³ with 32.0 in it, the deepest of its kind: only a ring and an extension are named.
    assert!(!warns(r#"{"enclosure":"sq-4x2-1/8","wires":[{"count":16}]}"#));
    assert!(!warns(r#"{"marked":"18"}"#), "a box that fits has no mend");
}

#[test]
fn what_is_to_be_bought_is_for_the_mend_and_never_the_box_that_fails() {
    let one = Amount::Count(1);
    assert_eq!(
        bought(&sheet_of(OLD_BOX)),
        [("box-marked/18.0 in3/1", one), ("device/switch", one)]
    );
    // 30.3 in³ with 32.0 in it: a ring marked 1.7 goes on the box that is there.
    let square = sheet_of(r#"{"enclosure":"sq-4x2-1/8","wires":[{"count":16}]}"#);
    assert_eq!(bought(&square), [("ring-marked/1.7 in3", one)]);
    let fits = sheet_of(r#"{"enclosure":"sq-4x2-1/8","wires":[{"count":15}]}"#);
    assert_eq!(bought(&fits), [("sq-4x2-1/8", one)]);
    // A second ring of a kind that is there already is still to be bought, and one only.
    let again = r#"{"enclosure":"sq-4x2-1/8","adds":[{"volume":"1.6"}],"wires":[{"count":16},{"size":"18"}]}"#;
    let again = sheet_of(again);
    assert_eq!(bought(&again), [("ring-marked/1.6 in3", one)]);
}

/// Source: NEC 314.16(A): with a barrier each side holds its share only, so that the mark to look
/// for is that of the whole box.
#[test]
fn the_mark_to_look_for_is_of_the_whole_box_though_a_barrier_splits_it() {
    let json = r#"{"marked":"20","gangs":2,"barriers":[{"after":1}],"cables":[{"cable":"12-3","count":2,"side":1}],"devices":[{"side":1}]}"#;
    let answer = solve(&input(json), E2023).unwrap();
    let marked = answer.suits.iter().find(|suits| suits.metal.is_none()).unwrap();
    let sheet = sheet_of(json);
    let suits = sheet.parts.iter().find(|part| part.key == "suits").unwrap();
    let value = Voice::default().say(&suits.rows[0].value);
    assert!(marked.with.marked > marked.volume.times(2), "both sides and the barrier");
    assert!(value.starts_with(&marked.with.marked.exact().replace(" in3", "")), "{value}");
}
