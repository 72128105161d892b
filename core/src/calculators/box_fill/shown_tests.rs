//! What is said of an answer, beyond its figures.

use super::tests::input;
use super::*;
use crate::fields::Form;
use crate::wire::Node;
use crate::words::{Text, Voice};

use Electrical::E2023;

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
