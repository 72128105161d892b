//! A made-up form, to try every kind of row and every fault.

use super::*;
use crate::measure::{Area, Day, Length, Units, Volume};
use crate::wire::Node;
use crate::words::Voice;
use crate::{choice, form, words};

words! {
    NAME = "Name", es "Nombre";
    WHY = "a made-up bound", es "un límite inventado";
    NONE = "", es "";
    RED = "Red", es "Rojo";
    BLUE = "Blue", es "Azul";
}

choice! {
    /// A made-up choice.
    enum Colour {
        /// One.
        Red = "red", RED;
        /// Other.
        Blue = "blue", BLUE;
    }
}

form! {
    /// A made-up item.
    struct Part {
        /// How many.
        count: i64 = 1, row(&NAME, &NONE, Kind::Count { least: 1, most: 9, why: &WHY });
        /// How long.
        long: Option<Length>, row(&NAME, &NONE, Kind::Length(SPAN));
    }
}

const SPAN: Span<Length> = Span {
    least: Length::ZERO,
    most: Length::inches(12, 1),
    why: &WHY,
    common: &[],
    optional: true,
};

static PARTS: Item = Item {
    name: &NAME,
    rows: Part::ROWS,
    most: 3,
    blank: || Part::blank().write_parts(),
    presets: &[],
};

form! {
    /// A made-up form.
    struct Made {
        /// A colour.
        colour: Colour, row(&NAME, &NONE, Kind::Choice(Colour::PICKS));
        /// Only when blue.
        room: Volume, row(&NAME, &NONE, Kind::Volume(Span {
            least: Volume::ZERO, most: Volume::hundredths(10_000), why: &WHY, common: &[], optional: false,
        })).when(When::Is("colour", &["blue"]));
        /// An area.
        floor: Option<Area>, row(&NAME, &NONE, Kind::Area(Span {
            least: Area::ZERO, most: Area::square_feet(900), why: &WHY, common: &[], optional: true,
        }));
        /// A flag.
        on: bool, row(&NAME, &NONE, Kind::Flag);
        /// For a check of its own.
        deep: Option<Length>, row(&NAME, &NONE, Kind::Length(SPAN)).aside();
        /// A list.
        parts: Vec<Part>, row(&NAME, &NONE, Kind::List(&PARTS));
        /// A number.
        year: Option<i64>, row(&NAME, &NONE, Kind::Number(Span {
            least: 1600, most: 2100, why: &WHY, common: &[], optional: true,
        }));
        /// A line.
        lab: String, row(&NAME, &NONE, Kind::Text(8)).evidence();
        /// A day.
        dated: Option<Day>, row(&NAME, &NONE, Kind::Day).evidence();
    }
    sample { on: true }
}

fn read(json: &str) -> Result<Made, Vec<(String, String)>> {
    let node: Node = serde_json::from_str(json).unwrap();
    Reader::form::<Made>(&node, Units::Customary).map(|(made, _)| made).map_err(|it| listed(&it))
}

fn listed(faults: &[crate::sheet::Fault]) -> Vec<(String, String)> {
    faults.iter().map(|it| (it.path.clone(), Voice::default().say(&it.says))).collect()
}

#[test]
fn what_is_not_asked_need_not_be_given() {
    assert_eq!(read("{}"), Ok(Made::blank()));
    assert_eq!(read(r#"{"room": "as typed, not yet a volume"}"#), Ok(Made::blank()));
    let faults = read(r#"{"colour": "blue"}"#).unwrap_err();
    assert_eq!(faults.len(), 1);
    assert_eq!(faults[0].0, "room");
}

#[test]
fn every_fault_is_found_at_its_path() {
    let faults = read(
        r#"{"colour":"green","on":"maybe","parts":[{"count":"x"},{"count":12,"long":"13"},{"short":1}],"odd":1}"#,
    )
    .unwrap_err();
    let paths: Vec<_> = faults.iter().map(|(path, _)| path.as_str()).collect();
    assert_eq!(
        paths,
        ["odd", "colour", "on", "parts.0.count", "parts.1.count", "parts.1.long", "parts.2.short"]
    );
    assert_eq!(faults[5].1, "At most 12 in: a made-up bound");
}

#[test]
fn a_fault_in_a_row_that_stands_aside_leaves_only_that_row_out() {
    let node: Node = serde_json::from_str(r#"{"on":"yes","deep":"2..5"}"#).unwrap();
    let (made, left_out) = Reader::form::<Made>(&node, Units::Customary).unwrap();
    assert_eq!(made, Made { on: true, ..Made::blank() });
    assert_eq!(listed(&left_out)[0].0, "deep");
    // Beside a fault that refuses the whole, all are told at once.
    let both = read(r#"{"on":"perhaps","deep":"2..5"}"#).unwrap_err();
    assert_eq!(both.iter().map(|(path, _)| &**path).collect::<Vec<_>>(), ["on", "deep"]);
}

#[test]
fn a_written_form_reads_back() {
    let made = Made {
        colour: Colour::Blue,
        room: Volume::hundredths(2030),
        deep: Some(Length::inches(2, 1)),
        floor: Some(Area::square_feet(160)),
        on: true,
        parts: vec![Part { count: 2, long: Some(Length::inches(7, 16)) }, Part::blank()],
        year: Some(1962),
        lab: " Lab 7 ".to_owned(),
        dated: Day::new(2026, 11, 25),
    };
    for units in [Units::Customary, Units::Metric] {
        assert_eq!(
            Reader::form::<Made>(&made.write_parts(), units),
            Ok((made.clone(), Vec::new()))
        );
    }
    assert_eq!(Voice::default().phrase(Colour::Red.label()), "Red");
    assert_eq!(Made::sample(), Made { on: true, ..Made::blank() });
}

#[test]
fn restating_keeps_what_was_meant_and_what_was_typed() {
    let node: Node = serde_json::from_str(
        r#"{"room":"20.3","floor":"160","parts":[{"long":"4","count":"two"}]}"#,
    )
    .unwrap();
    let restated = restate(Made::ROWS, &node, Units::Customary);
    assert_eq!(
        serde_json::to_string(&restated).unwrap(),
        r#"{"room":"20.3 in3","floor":"160 ft2","parts":[{"long":"4 in","count":"two"}]}"#
    );
}

#[test]
fn too_many_items_and_wrong_shapes_are_refused() {
    assert!(read(r#"{"parts":[{},{},{},{}]}"#).is_err());
    assert!(read(r#"{"parts":"none"}"#).is_err());
    assert!(read(r#"{"parts":[3]}"#).is_err());
    assert!(read(r#"{"on":[]}"#).is_err());
}

#[test]
fn numbers_lines_and_days_may_stay_empty_and_are_kept_as_typed() {
    assert_eq!(read(r#"{"year":"","lab":"","dated":" "}"#), Ok(Made::blank()));
    let made = read(r#"{"year":"1962","lab":" a 1","dated":"25 Nov 2026"}"#).unwrap();
    assert_eq!((made.year, made.lab.as_str()), (Some(1962), " a 1"));
    assert_eq!(made.dated.map(Day::exact), Some("2026-11-25".to_owned()));
    for (json, says) in [
        (r#"{"year":"62"}"#, "At least 1600."),
        (r#"{"year":[]}"#, "Needed: Name. Write it like 1850."),
        (r#"{"lab":"123456789"}"#, "9 characters, and no more than 8 are kept. Shorten it."),
        (r#"{"lab":"a\nb"}"#, "One line is needed here, without breaks."),
        (r#"{"lab":{}}"#, "One line is needed here, without breaks."),
        (
            r#"{"dated":"3/4/2026"}"#,
            "“3/4/2026” is one day to some and another to others. Write it like 2026-11-25 or 25 Nov 2026.",
        ),
        (r#"{"dated":"soon"}"#, "Can't read “soon”. Write it like 2026-11-25 or 25 Nov 2026."),
    ] {
        assert_eq!(read(json).unwrap_err()[0].1, says, "{json}");
    }
}

#[test]
fn evidence_is_taken_out_wherever_it_stands() {
    let node: Node = serde_json::from_str(r#"{"year":1962,"lab":"a","odd":1,"dated":[]}"#).unwrap();
    let left = without_evidence(Made::ROWS, &node);
    assert_eq!(serde_json::to_string(&left).unwrap(), r#"{"year":1962,"odd":1}"#);
    assert_eq!(without_evidence(Made::ROWS, &left), left);
    let mut back = left.clone();
    evidence_in(Made::ROWS, &node).into_iter().for_each(|(path, part)| back.put(&path, part));
    let sorted = |node: &Node| {
        let mut leaves = node.leaves();
        leaves.sort();
        leaves
    };
    assert_eq!(sorted(&back), sorted(&node));
    let paths = ["lab", "dated", "dated.day", "year", "parts.0.count", "nothing", ""];
    let told = paths.map(|path| is_evidence(Made::ROWS, path));
    assert_eq!(told, [true, true, true, false, false, false, false]);
}

#[test]
fn a_row_may_wait_for_several_answers_at_once() {
    const BOTH: When = When::All(&[When::Is("colour", &["blue"]), When::Yes("on")]);
    let holds = |json: &str| {
        let node = Node::from_json(json).unwrap();
        BOTH.holds(Made::ROWS, &node, &node)
    };
    assert!(holds(r#"{"colour":"blue","on":"yes"}"#));
    for json in [r#"{"colour":"blue"}"#, r#"{"on":"yes"}"#, r#"{"colour":"red","on":"yes"}"#] {
        assert!(!holds(json), "{json}");
    }
    static ROWS: &[Row] = &[row(&NAME, &NONE, Kind::Flag).when(BOTH)];
    let described = serde_json::to_string(&describe(ROWS, Voice::default())).unwrap();
    assert!(described.contains(
        r#""when":[{"field":"colour","must":"is","of":["blue"]},{"field":"on","must":"is yes"}]"#
    ));
}

#[test]
fn a_bare_number_that_is_well_in_feet_is_asked_about() {
    static ACROSS: Row = row(
        &NAME,
        &NONE,
        Kind::Length(Span {
            least: Length::inches(36, 1),
            most: Length::inches(1200, 1),
            why: &NAME,
            common: &[],
            optional: false,
        }),
    );
    let says = |text, units| heard(&ACROSS, text, units).unwrap_err();
    let said = |text| Voice::default().say(&says(text, Units::Customary));
    assert_eq!(
        said("14"),
        "“14” is 14 in here, and at least 3 ft is needed. For feet write 14 ft."
    );
    assert_eq!(
        said("13 1/2"),
        "“13 1/2” is 13-1/2 in here, and at least 3 ft is needed. For feet write 13 1/2 ft."
    );
    assert_eq!(said("2 6"), "At least 3 ft.", "two numbers are feet and inches already");
    assert_eq!(said("14 in"), "At least 3 ft.", "it was said to be inches");
    assert_eq!(said("2"), "At least 3 ft.", "nor would it do in feet");
    assert_eq!(Voice::default().say(&says("14", Units::Metric)), "At least 3 ft.");
    assert!(heard(&ACROSS, "40", Units::Customary).is_ok(), "40 in is what it may well be");
}

/// Half a percent or half of all: nobody can say which, but whoever writes its sign.
#[test]
fn a_share_where_a_percent_belongs_is_refused_with_both() {
    use crate::measure::{Measure, unit::PERCENT};
    static SHARE: Row = row(
        &NAME,
        &NONE,
        Kind::Measure(Span {
            least: Measure::whole(&PERCENT, 0),
            most: Measure::whole(&PERCENT, 100),
            why: &NAME,
            common: &[],
            optional: false,
        }),
    );
    for text in ["0.5", ".5", "1/2", "½", " 0.5 "] {
        let says = Voice::default().say(&heard(&SHARE, text, Units::Customary).unwrap_err());
        let want =
            format!("“{0}” could mean {0} % or 50 %. Write which, with its sign.", text.trim());
        assert_eq!(says, want);
    }
    for text in ["0.5 %", "0.5 percent", "0", "1", "50"] {
        let amount = heard(&SHARE, text, Units::Customary).unwrap().unwrap();
        let typed = bare(amount, Units::Customary);
        assert_eq!(typed.is_none(), text.starts_with("0.5"), "{text}");
        let again = typed.unwrap_or_else(|| amount.exact());
        assert_eq!(heard(&SHARE, &again, Units::Customary), Ok(Some(amount)));
    }
}

/// What a sample fills and a blank doesn't is known by its path, however it is written; a name is no
/// measure, and what isn't asked is told from what is.
#[test]
fn what_a_draft_still_has_from_a_sample_is_told_by_path() {
    let part = |count, inches| Part { count, long: Some(Length::inches(inches, 1)) };
    let sample = Made {
        colour: Colour::Blue,
        room: Volume::hundredths(2030),
        floor: Some(Area::square_feet(160)),
        parts: vec![part(1, 4), part(2, 5)],
        lab: "Lab 7".to_owned(),
        ..Made::blank()
    };
    let (sample, blank) = (sample.write_parts(), Made::blank().write_parts());
    let told = |draft: &Node, units| of_sample(Made::ROWS, (draft, units), &sample, &blank);
    let all = ["colour", "room", "floor", "parts.0.long", "parts.1.count", "parts.1.long"];
    assert_eq!(told(&sample, Units::Customary), all);
    assert_eq!(told(&plain(Made::ROWS, &sample, Units::Metric), Units::Metric), all);
    let mut draft = sample.clone();
    draft.put("room", Node::text("18"));
    draft.put("floor", Node::text("half ty"));
    draft.put("parts.1.long", Node::text("5\""));
    assert_eq!(
        told(&draft, Units::Customary),
        ["colour", "parts.0.long", "parts.1.count", "parts.1.long"]
    );
    assert_eq!(told(&blank, Units::Customary), Vec::<String>::new());
    assert!(is_asked(Made::ROWS, &draft, "room") && is_asked(Made::ROWS, &draft, "parts.1.long"));
    draft.put("colour", Node::text("red"));
    for path in ["room", "parts.2.long", "parts.x.long", "nothing", ""] {
        assert!(!is_asked(Made::ROWS, &draft, path), "{path}");
    }
}

#[test]
fn an_item_that_goes_takes_its_paths_along() {
    let paths = ["floor", "parts.0.long", "parts.1.count", "parts.2.long", "parts_more.1.long"];
    let paths = paths.map(str::to_owned);
    assert_eq!(
        without_item(&paths, "parts", 1),
        ["floor", "parts.0.long", "parts.1.long", "parts_more.1.long"]
    );
    assert_eq!(without_item(&paths, "floor", 0), paths);
}
