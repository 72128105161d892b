use super::super::edit::{Edit, apply};
use super::super::mark::Mark;
use super::super::samples;
use super::*;
use crate::words::Voice;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use serde_json::Value;

fn head() -> Head {
    Head::new(7, "phone_a-1", 1_791_298_800)
}

fn sample() -> String {
    write(&samples::job(), &head())
}

/// The JSON in a whole envelope.
fn sealed(json: &Value) -> String {
    seal(&head(), &json.to_string())
}

fn json(text: &str) -> Value {
    serde_json::from_str(open(text).unwrap().1).unwrap()
}

#[test]
fn a_record_is_one_line_then_readable_json() {
    let text = sample();
    let (line, json) = text.split_once('\n').unwrap();
    let start = "ledgerboard 3 7 phone_a-1 1791298800 ";
    assert!(line.starts_with(start), "{line}");
    assert_eq!(
        line.strip_prefix(start).unwrap().split_once(' ').unwrap().0,
        json.len().to_string()
    );
    assert!(!json.contains('\n'));
    assert_eq!(read(&text), Ok((head(), samples::job())));
    assert_eq!(open(&text).unwrap(), (head(), json));
}

#[test]
fn a_writer_can_not_break_the_line() {
    for (writer, want) in [("", "-"), ("a b\nc", "a-b-c"), ("é_9", "-_9")] {
        assert_eq!(Head::new(0, writer, 0).writer, want);
        let head = Head { writer: writer.into(), ..head() };
        assert_eq!(read(&write(&samples::job(), &head)).unwrap().0.writer, want);
    }
}

#[test]
fn what_is_wrong_is_told_apart() {
    let text = sample();
    let newer = seal(&Head { schema: SCHEMA + 1, ..head() }, r#"{"later":true}"#);
    let zero = seal(&Head { schema: 0, ..head() }, "{}");
    let cut = &text[..text.len() - 1];
    let longer = text.clone() + " ";
    let swapped = text.replacen("Workshop", "Workshoq", 1);
    let plus = text.replacen("ledgerboard 3", "ledgerboard +3", 1);
    let found = text.split_once('\n').unwrap().1.len();
    #[rustfmt::skip]
    let cases: [(&str, &str, RecordProblem); 13] = [
        ("empty",         "",                          RecordProblem::Foreign),
        ("another's",     "{\"id\":1}",                RecordProblem::Foreign),
        ("a longer name", "ledgerboards 1 1 a 1 0 0",  RecordProblem::Foreign),
        ("line cut",      "ledgerboard 1 1 a",         RecordProblem::Damaged),
        ("no number",     "ledgerboard 1 x a 1 0 0",   RecordProblem::Damaged),
        ("no sum",        "ledgerboard 1 1 a 1 0",     RecordProblem::Damaged),
        ("cut",           cut,     RecordProblem::Torn { written: found, found: found - 1 }),
        ("more behind",   &longer, RecordProblem::Torn { written: found, found: found + 1 }),
        ("a letter",      &swapped,                    RecordProblem::Damaged),
        ("a plus sign",   &plus,                       RecordProblem::Damaged),
        ("newer",         &newer,                      RecordProblem::Newer(SCHEMA + 1)),
        ("never was",     &zero,   RecordProblem::Shape("no schema has this number".into())),
        ("newer, broken", &newer.replacen("true", "trua", 1), RecordProblem::Damaged),
    ];
    for (case, text, want) in cases {
        assert_eq!(read(text), Err(want.clone()), "{case}");
        assert!(Voice::default().say(&want.says()).ends_with(['.', 'r']), "{case}");
    }
}

#[test]
fn a_record_of_the_first_schema_opens_without_links_and_is_refused_with_them() {
    let job = samples::job();
    let bare = |mark: &Mark| Mark { ties: Vec::new(), behind: None, ..mark.clone() };
    let marks = job.marks.iter().map(bare).collect();
    let bare = Job { marks, jots: Vec::new(), ..job.clone() };
    let text = write(&bare, &head());
    let (_, now) = open(&text).unwrap();
    let first = |json: &str| read(&seal(&Head { schema: 1, ..head() }, json));
    let now = &now.replacen(r#""jots":[],"#, "", 1);
    let old = now.replacen(r#""ties":[],"#, "", 1);
    assert_eq!(first(&old), Ok((Head { schema: 1, ..head() }, bare)));
    let behind = old.replacen(r#""kept":"#, r#""behind":"elsewhere","kept":"#, 1);
    for too_early in [now, &behind] {
        assert!(matches!(first(too_early), Err(RecordProblem::Shape(_))), "{too_early}");
    }
    assert!(matches!(read(&seal(&head(), &old)), Err(RecordProblem::Shape(_))), "now it has links");
}

#[test]
fn a_record_of_the_second_schema_opens_without_words_and_is_refused_with_them() {
    let bare = Job { jots: Vec::new(), ..samples::job() };
    let text = write(&bare, &head());
    let (_, now) = open(&text).unwrap();
    let second = |json: &str| read(&seal(&Head { schema: 2, ..head() }, json));
    let old = now.replacen(r#""jots":[],"#, "", 1);
    assert_eq!(second(&old), Ok((Head { schema: 2, ..head() }, bare)));
    assert!(matches!(second(now), Err(RecordProblem::Shape(_))), "too early");
    assert!(matches!(read(&seal(&head(), &old)), Err(RecordProblem::Shape(_))), "too late");
}

/// Every other ASCII byte in every place of a short record; every place of a long one with each
/// bit flipped; every place left out, doubled or cut at.
#[test]
fn no_byte_of_a_record_changes_unseen() {
    let short = write(&Job::new("Invented", "", &samples::stamp(0)).unwrap(), &head());
    let try_all = |text: &str, others: &dyn Fn(u8) -> Vec<u8>| {
        let mut tried = 0;
        for at in 0..text.len() {
            for byte in others(text.as_bytes()[at]) {
                let mut bytes = text.as_bytes().to_vec();
                bytes[at] = byte;
                if let Ok(changed) = String::from_utf8(bytes) {
                    assert!(read(&changed).is_err(), "{byte} at {at}");
                    tried += 1;
                }
            }
        }
        tried
    };
    assert!(try_all(&short, &|was| (0..128).filter(|byte| *byte != was).collect()) > 20_000);
    let text = sample();
    let flips = |was: u8| (0..8).map(|bit| was ^ (1 << bit)).collect();
    assert!(try_all(&text, &flips) > 6 * text.len());
    for at in (0..text.len()).filter(|at| text.is_char_boundary(*at)) {
        let after = text[at..].chars().next().unwrap();
        let rest = &text[at + after.len_utf8()..];
        assert!(read(&text[..at]).is_err(), "cut at {at}");
        assert!(read(&[&text[..at], rest].concat()).is_err(), "left out at {at}");
        let doubled = after.to_string().repeat(2);
        assert!(read(&[&text[..at], &doubled, rest].concat()).is_err(), "doubled at {at}");
    }
}

/// Every named part of the JSON, by its path.
fn objects(value: &mut Value, path: String, visit: &mut dyn FnMut(&str, &mut Value)) {
    if value.is_object() {
        visit(&path, value);
    }
    match value {
        Value::Object(parts) => {
            for (key, part) in parts {
                objects(part, [&path, ".", key].concat(), visit);
            }
        }
        Value::Array(items) => {
            for item in items {
                objects(item, path.clone() + "[]", visit);
            }
        }
        _ => {}
    }
}

/// A field that this schema doesn't know would be lost at the next write. A mark's input is
/// opaque: there it is kept.
#[test]
fn a_field_that_is_not_known_is_refused_or_kept() {
    let whole = json(&sample());
    let mut paths = Vec::new();
    objects(&mut whole.clone(), String::new(), &mut |path, _| paths.push(path.to_owned()));
    for want in ["", ".made", ".marks[]", ".marks[].kept", ".marks[].at", ".gone[]", ".gone[].at"] {
        assert!(paths.iter().any(|path| path == want), "{want} is in the sample");
    }
    for target in paths {
        let mut extended = whole.clone();
        objects(&mut extended, String::new(), &mut |path, object| {
            if path == target {
                object["zz"] = Value::from(1);
            }
        });
        let read = read(&sealed(&extended));
        if target.ends_with("clock") || target.ends_with(".input") {
            let again = json(&write(&read.unwrap().1, &head()));
            assert_eq!(again, extended, "{target}");
        } else {
            assert!(matches!(read, Err(RecordProblem::Shape(_))), "{target}");
        }
    }
}

#[test]
fn ids_that_the_door_would_not_have_made_are_refused() {
    let mut job = samples::job();
    apply(&mut job, Edit::Keep(samples::mark(3)), &samples::stamp(8)).unwrap();
    let good = json(&write(&job, &head()));
    assert!(read(&sealed(&good)).is_ok());
    let change = |how: &dyn Fn(&mut Value)| {
        let mut bad = good.clone();
        how(&mut bad);
        read(&sealed(&bad))
    };
    type Case<'a> = (&'a str, &'a dyn Fn(&mut Value));
    let cases: [Case<'_>; 5] = [
        ("twice", &|bad| bad["marks"][1]["id"] = bad["marks"][0]["id"].clone()),
        ("out of order", &|bad| bad["marks"].as_array_mut().unwrap().reverse()),
        ("here and gone", &|bad| bad["gone"][0]["id"] = bad["marks"][0]["id"].clone()),
        ("no id for an address", &|bad| bad["marks"][0]["id"] = "../x".into()),
        ("the job without an id", &|bad| bad["id"] = "".into()),
    ];
    for (case, how) in cases {
        assert!(matches!(change(how), Err(RecordProblem::Shape(_))), "{case}");
    }
}

/// One change to a record's JSON that a slip, another version or a person could have made.
fn mutate(value: &mut Value, path: &[u8], how: u8, text: &str) {
    let count = match value {
        Value::Object(parts) => parts.len(),
        Value::Array(items) => items.len(),
        _ => 0,
    };
    if let [step, rest @ ..] = path
        && count > 0
    {
        let at = usize::from(*step) % count;
        let part = match value {
            Value::Object(parts) => parts.iter_mut().nth(at).map(|(_, part)| part),
            Value::Array(items) => items.get_mut(at),
            _ => None,
        };
        return mutate(part.unwrap(), rest, how, text);
    }
    match (how, value) {
        (0, here) => *here = Value::Null,
        (1, here) => *here = Value::from(-1),
        (2, here) => *here = Value::from(0.5),
        (3, Value::Object(parts)) => drop(parts.insert(text.to_owned(), Value::from(text))),
        (4, Value::Object(parts)) => {
            let first = parts.keys().next().cloned();
            drop(first.and_then(|key| parts.remove(&key)));
        }
        (5, Value::Array(items)) => items.extend(items.first().cloned()),
        (6, Value::Array(items)) => items.clear(),
        (_, Value::Number(number)) => {
            *number = number.as_i64().map_or(0, |was| was.saturating_add(1)).into();
        }
        (_, Value::Bool(flag)) => *flag = !*flag,
        (_, here) => *here = Value::from(text),
    }
}

/// Without parts that are null: nothing is lost with them.
fn without_nulls(mut value: Value) -> Value {
    objects(&mut value, String::new(), &mut |_, object| {
        object.as_object_mut().unwrap().retain(|_, part| !part.is_null());
    });
    value
}

/// What passes as a job must be written again as it was: nothing added, dropped or repaired.
/// The share of accepted ones shows that the changes are not all nonsense.
#[test]
fn a_changed_record_is_refused_or_kept_whole() {
    const TRIES: u32 = 3_000;
    let whole = json(&sample());
    let strategy = (vec(0_u8..12, 0..6), 0_u8..16, "[a-z0-9é ]{0,12}");
    let mut runner = TestRunner::deterministic();
    let mut accepted = 0;
    for _ in 0..TRIES {
        let (path, how, text) = strategy.new_tree(&mut runner).unwrap().current();
        let mut changed = whole.clone();
        mutate(&mut changed, &path, how, &text);
        match read(&sealed(&changed)) {
            Ok((_, job)) => {
                accepted += 1;
                let again = json(&write(&job, &head()));
                assert_eq!(again, without_nulls(changed), "{path:?} {how} {text}");
            }
            Err(problem) => assert!(matches!(problem, RecordProblem::Shape(_)), "{problem:?}"),
        }
    }
    assert!(accepted * 5 >= TRIES, "only {accepted} of {TRIES} were accepted");
    assert!(accepted * 10 <= TRIES * 9, "{accepted} of {TRIES} were accepted");
}

proptest! {
    #[test]
    fn any_text_is_read_or_refused(text in any::<String>()) {
        prop_assert!(read(&text).is_err());
    }

    #[test]
    fn any_line_is_read_or_refused(parts in vec("[0-9a-z+-]{0,12}| |ledgerboard", 0..9)) {
        prop_assert!(read(&parts.join(" ")).is_err());
        let text = ["ledgerboard ", &parts.join(" "), "\n{}"].concat();
        prop_assert!(read(&text).is_err());
    }
}
