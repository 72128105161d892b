//! Days by hand, paths by other means, then laws.

use super::*;
use crate::fields::{Form, Reader, Rename, is_missing, known_as, long_names, toggled};
use crate::measure::Day;
use crate::sheet::{Step as Line, Verdict};
use crate::wire::Node;
use crate::words::{Amount, Language, Text, Voice};
use jiff::civil::Date;
use proptest::prelude::*;

fn day(year: u16, month: u8, day: u8) -> Day {
    Day::new(year, month, day).unwrap()
}

fn step(name: &str, days: i64, after: &str) -> Step {
    Step { name: name.into(), days, after: after.into(), ..Step::blank() }
}

/// A day of another year than the first says which: from Thursday, 2026-12-31, over New Year's Day.
#[test]
fn a_day_of_another_year_says_its_year() {
    let input = Input { start: Some(day(2026, 12, 31)), ..plan(vec![step("A", 2, "")]) };
    let sheet = TradeDays::sheet(&input, &solve(&input).unwrap(), <_>::default());
    assert_eq!(say(&sheet.headline.value()), "Fri Jan 1, 2027");
    let spanish = Voice { language: Language::Spanish, ..Voice::default() };
    assert_eq!(spanish.say(&sheet.headline.value()), "vie 1\u{a0}ene\u{a0}2027");
    let told = Voice::default().say(&sheet.headline.value());
    assert_eq!(told, "Fri Jan\u{a0}1,\u{a0}2027", "a day breaks behind its weekday alone");
}

/// From Monday, 2027-01-04.
fn plan(steps: Vec<Step>) -> Input {
    Input { start: Some(day(2027, 1, 4)), steps, ..Input::blank() }
}

/// With plain blanks, for it to be read here.
fn say(text: &Text) -> String {
    Voice::default().say(text).replace('\u{a0}', " ")
}

/// By hand, on a calendar of January 2027 whose third Monday is off.
#[test]
fn the_sample_is_what_a_calendar_on_the_wall_says() {
    let input = Input::sample();
    let answer = solve(&input).unwrap();
    #[rustfmt::skip]
    let want = [
        // begins, done, call, slack
        ("LAB",         (1, 4),  (1, 6),  None,          0),
        ("STRIP",       (1, 7),  (1, 8),  None,          0),
        ("FRAME",       (1, 11), (1, 13), None,          0),
        ("WIRES",       (1, 14), (1, 15), Some((1, 7)),  0),
        ("DUCTS",       (1, 14), (1, 14), Some((1, 7)),  1),
        ("ROUGH-CHECK", (1, 19), (1, 19), Some((1, 14)), 0),
        ("BOARD",       (1, 20), (1, 21), None,          0),
        ("TAPE",        (1, 22), (1, 26), None,          0),
        ("DRY",         (1, 27), (1, 28), None,          0),
        ("PAINT",       (1, 29), (2, 1),  None,          0),
    ];
    let of = |(month, at)| day(2027, month, at);
    for (at, (name, begins, done, call, slack)) in want.into_iter().enumerate() {
        let it = &answer.steps[at];
        assert_eq!(input.steps[at].name, name);
        assert_eq!((it.begins, it.done), (of(begins), of(done)), "{name}");
        assert_eq!((it.call, it.slack), (call.map(of), slack), "{name}");
    }
    assert_eq!(answer.last, day(2027, 2, 1));
    assert_eq!(answer.chain, [0, 1, 2, 3, 5, 6, 7, 8, 9], "all but the ducts");
    assert_eq!(answer.steps[5].because, Because::After(3, true), "a weekend and a day off");
    assert_eq!(answer.steps[6].because, Because::After(5, false));
    assert_eq!((answer.steps[4].moves.len(), answer.steps[4].last), (0, answer.last));
    assert_eq!(answer.steps[3].moves, [5, 6, 7, 8, 9]);
    // From Wednesday, 2027-01-20: board, tape to Wednesday, dry over Thursday and Friday, paint from
    // Monday to Tuesday.
    assert_eq!(answer.steps[3].last, day(2027, 2, 2));
}

#[test]
fn the_sheet_tells_the_chain_the_days_and_whom_to_call_first() {
    let sheet =
        TradeDays::sheet(&Input::sample(), &solve(&Input::sample()).unwrap(), <_>::default());
    assert_eq!(say(&sheet.headline.value()), "Mon Feb 1");
    assert_eq!(sheet.headline.amount, Amount::Day(day(2027, 2, 1)));
    assert_eq!(sheet.figure("days").unwrap().amount, Amount::Count(29));
    let Line { expr, .. } = &sheet.working[0];
    assert_eq!(expr.value().and_then(|it| it.amount()), Some(Amount::Count(29)), "day by day");
    assert_eq!(say(sheet.next.as_ref().unwrap()), "First call: DUCTS, WIRES, by Thu Jan 7.");
    let chain = &sheet.parts[0].rows;
    assert_eq!(say(&chain[0].value), "Mon Jan 4 to Wed Jan 6: the first day");
    assert_eq!(say(&chain[4].value), "Tue Jan 19: after WIRES and days off");
    let table = sheet.parts[1].table.as_ref().unwrap();
    assert_eq!((table.rows.len(), table.heads.len()), (10, 5));
    let ducts: Vec<_> = table.rows[3].cells.iter().map(say).collect();
    assert_eq!(say(&table.rows[3].name), "DUCTS");
    assert_eq!(ducts, ["Thu Jan 14", "Thu Jan 14", "Thu Jan 7", "1 work day"]);
    assert_eq!(say(&sheet.parts[2].rows[3].value), "moves no other; last day Mon Feb 1");
    assert_eq!(
        say(&sheet.parts[2].rows[9].value),
        "moves no other; last day Tue Feb 2",
        "the last step itself"
    );
    assert_eq!(sheet.verdict(), Verdict::Within, "no rule is held against it");
}

/// By hand: Friday's day of work goes on over a weekend only where it may.
#[test]
fn days_off_are_passed_over_by_work_and_not_by_drying() {
    let after = |through, saturdays| {
        let steps = vec![step("A", 4, ""), Step { through, ..step("B", 3, "A") }];
        let input = Input { saturdays, ..plan(steps) };
        let answer = solve(&input).unwrap();
        (answer.steps[1].begins.exact(), answer.last.exact())
    };
    let friday = "2027-01-08".to_owned();
    assert_eq!(after(false, false), (friday.clone(), "2027-01-12".into()));
    assert_eq!(after(false, true), (friday.clone(), "2027-01-11".into()));
    assert_eq!(after(true, false), (friday, "2027-01-10".into()));
    let late = Step { from: Some(day(2027, 1, 9)), ..step("C", 1, "") };
    let answer = solve(&plan(vec![late])).unwrap();
    assert_eq!((answer.last, answer.steps[0].because), (day(2027, 1, 11), Because::Own));
    // Dried on Sunday, and the crew comes on Monday: the chain passes through it, and it may slip none.
    let steps = vec![step("A", 4, ""), Step { through: true, ..step("B", 2, "A") }];
    let steps = [steps, vec![step("C", 1, "B")]].concat();
    let answer = solve(&plan(steps)).unwrap();
    assert_eq!((answer.steps[1].slack, answer.chain), (1, vec![0, 1, 2]), "Sunday is left");
}

fn of(who: Who, name: &str, days: i64, after: &str) -> Step {
    Step { who, ..step(name, days, after) }
}

/// By hand: Friday's wires are inspected on Monday, though Saturday is worked; the board goes on from
/// Tuesday. The inspector's float is in weekdays, the crew's in days of work, the air's in days.
#[test]
fn an_inspector_comes_monday_to_friday_whatever_the_crew_works() {
    use Who::{Crew, Electrician, Inspector, Other};
    let steps = vec![
        of(Electrician, "WIRES", 5, ""),
        Step { through: true, ..of(Inspector, "CHECK", 1, "WIRES") },
        of(Crew, "BOARD", 1, "CHECK"),
        Step { through: true, ..of(Other, "DRY", 1, "WIRES") },
        of(Electrician, "PLATES", 1, "WIRES"),
        of(Inspector, "LAST", 1, "PLATES, DRY, WIRES"),
    ];
    let input = Input { saturdays: true, sundays: true, ..plan(steps) };
    let answer = solve(&input).unwrap();
    let begins = |at: usize| answer.steps[at].begins;
    assert_eq!(begins(1), day(2027, 1, 11), "Monday");
    assert_eq!((begins(2), begins(4)), (day(2027, 1, 12), day(2027, 1, 9)));
    let sheet = TradeDays::sheet(&input, &answer, <_>::default());
    let rows = &sheet.parts[1].table.as_ref().unwrap().rows;
    let float = |name: &str| {
        let row = rows.iter().find(|row| say(&row.name) == name).unwrap();
        say(&row.cells[3])
    };
    assert_eq!((float("LAST"), float("PLATES")), ("1 weekday".into(), "2 work days".into()));
    assert_eq!(float("DRY"), "2 days");
}

/// What asks of a plan, with its value.
fn asks(steps: Vec<Step>) -> Vec<(String, String)> {
    let input = plan(steps);
    let sheet = TradeDays::sheet(&input, &solve(&input).unwrap(), <_>::default());
    for check in &sheet.checks {
        assert_eq!(check.verdict, Verdict::Ask);
        assert_eq!(check.source.key, "irc-r109.1.2");
    }
    let told = |it: &crate::sheet::Check| {
        [say(&it.name), say(&it.told()), say(it.note.as_ref().unwrap())].join(" | ")
    };
    sheet.checks.iter().map(|it| (it.key.clone(), told(it))).collect()
}

#[test]
fn an_inspection_that_the_plan_goes_past_is_named() {
    use Who::{Crew, Electrician, Inspector, Other};
    let wires = || vec![of(Electrician, "WIRES", 1, "")];
    let and = |more: Vec<Step>| asks([wires(), more].concat());
    let pair = |key: &str, told: &str| (key.to_owned(), told.to_owned());
    let unasked = || {
        let told = "Steps that wait for CHECK | 0, at least 1 | \
            Nothing waits for CHECK: what does it inspect?";
        pair("unasked CHECK", told)
    };
    let check = || of(Inspector, "CHECK", 1, "WIRES");
    let told = "BOARD before CHECK is done, days | 1 | \
        BOARD doesn't wait for CHECK. Does it cover what is inspected? \
        If not, mark it: covers nothing.";
    let early = pair("early BOARD CHECK", told);
    assert_eq!(and(vec![check(), of(Crew, "BOARD", 2, "WIRES")]), [unasked(), early.clone()]);
    // Something else waits for it, and the board still doesn't.
    let more = vec![check(), of(Crew, "BOARD", 2, "WIRES"), of(Crew, "TAPE", 1, "CHECK, BOARD")];
    assert_eq!(and(more), [early]);
    // The board waits for it, through another step.
    let more = vec![check(), of(Crew, "INSULATE", 1, "CHECK")];
    let board = of(Crew, "BOARD", 2, "WIRES, INSULATE");
    assert_eq!(and([more, vec![board]].concat()), []);
    // What the inspection waits for is before it, and another trade covers nothing.
    let more = vec![
        of(Crew, "BOXES", 1, "WIRES"),
        of(Inspector, "CHECK", 1, "WIRES, BOXES"),
        of(Electrician, "PANEL", 1, "WIRES"),
        of(Crew, "BOARD", 1, "CHECK"),
    ];
    assert_eq!(and(more), []);
    // Begun after the inspection, for its own day.
    let late = Step { from: Some(day(2027, 1, 20)), ..of(Crew, "BOARD", 2, "WIRES") };
    assert_eq!(and(vec![check(), late]), [unasked()]);
    // Two inspections end the job, and there is no work beside them.
    let more = vec![check(), of(Inspector, "LAST", 1, "WIRES")];
    assert_eq!(and(more), []);
    // Work beside the last inspection, that waits for nothing: the worse the slip, the more it asks.
    let more = vec![check(), of(Crew, "BOARD", 1, "")];
    let told = told.replacen("| 1 |", "| 2 |", 1);
    assert_eq!(and(more), [unasked(), pair("early BOARD CHECK", &told)]);
    // What both wait for may be far back, and another than the crew may hang the board.
    for who in [Crew, Other] {
        let steps = vec![
            of(Crew, "FRAME", 1, ""),
            of(Electrician, "WIRES", 1, "FRAME"),
            of(Inspector, "CHECK", 1, "WIRES"),
            of(who, "BOARD", 1, "FRAME"),
            of(Crew, "TAPE", 1, "BOARD, CHECK"),
        ];
        assert_eq!(asks(steps.clone()), [pair("early BOARD CHECK", &told)]);
        // A delivery covers nothing.
        let mut dries = steps;
        dries[3] = Step { through: true, ..of(Other, "BOARD", 1, "FRAME") };
        assert_eq!(asks(dries), []);
    }
    assert_eq!(asks(Input::sample().steps), [], "the sample's inspection is waited for");
}

/// Stripping beside an inspection uncovers, and isn't asked about once that is said; what it was called
/// says nothing. It is still asked about before a laboratory's result, and an electrician never was.
#[test]
fn what_covers_nothing_is_not_asked_about_beside_an_inspection() {
    use Who::{Crew, Electrician, Inspector, Lab, Other};
    let plan_of = |who, covers_nothing| {
        let strip = Step { covers_nothing, ..of(who, "STRIP", 2, "") };
        vec![
            of(Electrician, "WIRES", 1, ""),
            of(Inspector, "ROUGH-CHECK", 1, "WIRES"),
            strip,
            of(Crew, "BOARD", 1, "ROUGH-CHECK, STRIP"),
        ]
    };
    for who in [Crew, Other] {
        let keys: Vec<_> = asks(plan_of(who, false)).into_iter().map(|it| it.0).collect();
        assert_eq!(keys, ["early STRIP ROUGH-CHECK"], "{who:?}");
        assert_eq!(asks(plan_of(who, true)), [], "{who:?}");
    }
    let mut sampled = plan_of(Crew, true);
    sampled[1].who = Lab;
    let answer = solve(&plan(sampled)).unwrap();
    assert_eq!(answer.early.len(), 1);
    // Only who may cover something is asked, and an old plan says of nobody that it covers nothing.
    let row = Step::ROWS.iter().find(|row| row.key == "covers_nothing").unwrap();
    let asked = |who: Who| {
        let here = of(who, "A", 1, "").write_parts();
        row.when.holds(Step::ROWS, &here, &here)
    };
    assert_eq!(
        Who::ALL.iter().copied().filter(|who| asked(*who)).collect::<Vec<_>>(),
        [Crew, Other]
    );
    assert!(!Step::blank().covers_nothing);
}

/// Names of several words are found between commas and, as before they could be, between spaces.
#[test]
fn a_step_may_have_a_name_of_several_words() {
    let waits = |after: &str| {
        let steps = vec![
            step("rough check", 2, ""),
            step("CHECK", 4, ""),
            step("Tape  &  mud", 3, ""),
            step("hang board", 1, after),
        ];
        let answer = solve(&plan(steps));
        answer.map(|answer| answer.steps[3].begins)
    };
    let from = |at: u8| Ok(day(2027, 1, at));
    assert_eq!(waits("rough check"), from(6));
    assert_eq!(waits(" ROUGH   CHECK ;"), from(6));
    assert_eq!(waits("check"), from(8));
    assert_eq!(waits("rough check, check"), from(8), "of two that begin alike the longest");
    assert_eq!(waits("rough check check"), from(8));
    assert_eq!(waits("tape & mud"), from(7));
    assert_eq!(waits("rough check and tape & mud"), from(7));
    assert!(waits("rough").is_err());
    // A step that is renamed to several words takes along what waits for it, spaces or commas between.
    let steps = vec![
        step("A", 1, ""),
        step("B", 1, ""),
        step("C", 1, "A B"),
        step("D", 1, "B; A, c"),
        step("E", 1, "A"),
    ];
    let before = plan(steps);
    let mut root = before.write_parts();
    let rename = Rename::of(Input::ROWS, &root, "steps.0.name");
    for typed in ["ROUGH", "ROUGH ", "ROUGH IN"] {
        for (path, node) in rename.to(typed) {
            root.put(&path, node);
        }
    }
    let line = |at: usize| root.at(&format!("steps.{at}.after")).and_then(Node::leaf).unwrap();
    assert_eq!([line(2), line(3), line(4)], ["ROUGH IN, B", "B; ROUGH IN, c", "ROUGH IN"]);
    let (renamed, _) = Reader::form::<Input>(&root, <_>::default()).unwrap();
    let days =
        |input: &Input| solve(input).unwrap().steps.iter().map(|it| it.begins).collect::<Vec<_>>();
    assert_eq!(days(&renamed), days(&before));
    // It is offered as one name, and a tap takes it out and puts it in as one.
    let row = Step::ROWS.iter().find(|row| row.key == "after").unwrap();
    let long = long_names(Input::ROWS, &root, row);
    assert_eq!(long, ["ROUGH IN"]);
    let without = toggled("ROUGH in B", "Rough in", &long);
    assert_eq!((&*without, &*toggled(&without, "ROUGH IN", &long)), ("B", "B, ROUGH IN"));
    // Renamed back, and the name that goes says which steps still wait for it.
    let back = Rename::of(Input::ROWS, &root, "steps.0.name");
    assert_eq!(back.count(), 3);
    for (path, node) in back.to("A") {
        root.put(&path, node);
    }
    assert_eq!(root.at("steps.3.after").and_then(Node::leaf).as_deref(), Some("B; A, c"));
}

/// A name that is refused is never spread: what waits keeps the old one until there is a good one.
#[test]
fn a_refused_name_of_a_step_breaks_nothing_that_waits_for_it() {
    let before = plan(vec![step("Tape and mud", 3, ""), step("Hang", 1, "tape and mud")]);
    let mut root = before.write_parts();
    let rename = Rename::of(Input::ROWS, &root, "steps.0.name");
    let line = |root: &Node| root.at("steps.1.after").and_then(Node::leaf).unwrap();
    for typed in ["Tape", "Tape,", "Tape, mud", "Tape; mud", "twenty-five letters of tape"] {
        let is_refused = typed != "Tape";
        rename.to(typed).into_iter().for_each(|(path, node)| root.put(&path, node));
        assert_eq!(rename.is_open(typed), is_refused, "{typed}");
        assert_eq!(line(&root), if is_refused { "tape and mud" } else { "Tape" }, "{typed}");
    }
    rename.to("Tape mud").into_iter().for_each(|(path, node)| root.put(&path, node));
    assert_eq!(line(&root), "Tape mud");
    let (renamed, _) = Reader::form::<Input>(&root, <_>::default()).unwrap();
    let begins = |input: &Input| solve(input).unwrap().steps[1].begins;
    assert_eq!(begins(&renamed), begins(&before));
}

#[test]
fn the_first_call_is_told_with_all_who_are_due_and_where_it_is_before_the_first_day() {
    let next = |call: [i64; 3]| {
        let steps = call.into_iter().zip(["A", "B", "C"]);
        let steps = steps.map(|(call, name)| Step { call, ..step(name, 1, "") }).collect();
        let input = plan(steps);
        let sheet = TradeDays::sheet(&input, &solve(&input).unwrap(), <_>::default());
        sheet.next.as_ref().map(say)
    };
    let told = "First call: A, C, by Thu Dec 31, 2026, before the first day for work.";
    assert_eq!(next([2, 1, 2]).unwrap(), told);
    assert_eq!(next([0; 3]), None);
}

#[test]
fn names_may_stand_with_and_between_them() {
    let waits = |after: &str| {
        let steps = vec![step("A", 1, ""), step("B", 2, ""), step("C", 1, after)];
        solve(&plan(steps)).map(|answer| answer.steps[2].begins)
    };
    let after_both = Ok(day(2027, 1, 6));
    for after in ["A, B", "A and B", "a AND b", "A & B", "A&B", "A y B", "A; B", "A B"] {
        assert_eq!(waits(after), after_both, "{after}");
    }
    assert!(waits("A or B").is_err());
    assert!(waits("A&D").is_err());
    // A step may be called so itself.
    let steps = vec![step("Y", 3, ""), step("A&B", 4, ""), step("C", 1, "y"), step("D", 1, "A&B")];
    let answer = solve(&plan(steps)).unwrap();
    assert_eq!(
        (answer.steps[2].begins, answer.steps[3].begins),
        (day(2027, 1, 7), day(2027, 1, 8))
    );
}

#[test]
fn what_hurts_is_said_of_every_plan() {
    let first = &TradeDays::cautions(None)[0];
    let says = "Strip nothing before the laboratory's report, cover nothing before the inspection.";
    assert_eq!(say(&first.text), says);
}

fn faults(input: &Input) -> Vec<(String, String)> {
    let faults = solve(input).unwrap_err();
    faults.iter().map(|fault| (fault.path.clone(), say(&fault.says))).collect()
}

#[test]
fn what_does_not_fit_is_refused_at_its_row() {
    let one = |steps: Vec<Step>| faults(&plan(steps));
    let fault = |path: &str, says: &str| vec![(path.to_owned(), says.to_owned())];
    assert_eq!(
        one(vec![step("A", 1, "C"), step("B", 1, "A"), step("c", 1, "b"), step("D", 1, "C")]),
        fault("steps.0.after", "It waits for itself: A → c → B → A.")
    );
    assert_eq!(
        one(vec![step("D", 1, "B"), step("A", 1, ""), step("B", 1, "A, B")]),
        fault("steps.2.after", "It waits for itself: B → B.")
    );
    assert_eq!(one(vec![step("A", 1, "A2")]), fault("steps.0.after", "No step is called “A2”."));
    assert_eq!(
        one(vec![step("TAPE", 1, ""), step("tape ", 1, "")]),
        fault("steps.1.name", "Another step is called “tape ”.")
    );
    assert_eq!(
        one(vec![step("rough in, check", 1, "")]),
        fault("steps.0.name", "A comma parts two names: write rough in check.")
    );
    assert_eq!(
        one(vec![step("rough check", 1, ""), step("B", 1, "ruogh check"), step("C", 1, "B, rogh")]),
        [
            fault("steps.1.after", "No step is called “ruogh check”."),
            fault("steps.2.after", "No step is called “rogh”."),
        ]
        .concat()
    );
    assert_eq!(
        one(vec![step("rough check", 1, ""), step("Rough  Check", 1, "")]),
        fault("steps.1.name", "Another step is called “Rough  Check”.")
    );
    assert_eq!(one(Vec::new()), fault("steps", "Add a step."));
    let never = Off { day: Some(day(2027, 1, 1)), through: Some(day(2199, 1, 1)) };
    let input = Input { off: vec![never], ..plan(vec![step("A", 1, "")]) };
    assert_eq!(faults(&input)[0].0, "steps.0.days");
    let back = Off { day: Some(day(2027, 1, 5)), through: Some(day(2027, 1, 4)) };
    let input = Input { off: vec![back], ..plan(vec![step("A", 1, "")]) };
    assert_eq!(faults(&input), fault("off.0.through", "It ends before it begins, 2027-01-05."));
    let before = Off { day: Some(day(2020, 1, 1)), through: Some(day(2027, 1, 3)) };
    let call = Step { call: 1, ..step("A", 1, "") };
    assert_eq!(faults(&Input { off: vec![before], ..plan(vec![call]) })[0].0, "steps.0.call");
    let end = Input { start: Some(day(2199, 12, 31)), ..plan(vec![step("A", 9, "")]) };
    assert_eq!(faults(&end)[0].0, "steps.0.days");
    let empty = Input { off: vec![Off::blank()], steps: vec![Step::blank()], ..Input::blank() };
    let missing = solve(&empty).unwrap_err();
    let paths: Vec<_> = missing.iter().map(|it| it.path.as_str()).collect();
    assert_eq!(paths, ["off.0.day", "start", "steps.0.name"]);
    assert!(missing.iter().all(is_missing));
}

/// Plans without circles: each step waits for some of those before it.
fn plans(every_day: bool) -> impl Strategy<Value = Input> {
    let off = prop::collection::vec((0_i64..60, 0_i64..9), 0..4);
    let one = (1_i64..7, any::<bool>(), any::<u16>(), prop::option::weighted(0.2, 0_i64..30));
    let who = prop::sample::select(vec![Who::Crew, Who::Inspector, Who::Hvac]);
    let one = (one, prop_oneof![Just(0_i64), 1_i64..15], who);
    let steps = prop::collection::vec(one, 1..9);
    (any::<[bool; 2]>(), 0_i64..40_000, off, steps).prop_map(
        move |([saturdays, sundays], start, off, drawn)| {
            let first = day(2027, 1, 4).number() + start;
            let at = |after: i64| Day::of_number(first + after);
            let mut steps = Vec::new();
            for (place, ((days, through, waits, from), call, who)) in drawn.into_iter().enumerate()
            {
                let names = (0..place).filter(|it| waits >> it & 1 == 1).map(|it| format!("S{it}"));
                let after = names.collect::<Vec<_>>().join(", ");
                let it = step(&format!("s{place}"), days, &after);
                let from = from.and_then(at).filter(|_| !every_day);
                let who = if every_day { Who::Crew } else { who };
                steps.push(Step { through: through || every_day, call, from, who, ..it });
            }
            let off =
                off.into_iter().map(|(from, long)| Off { day: at(from), through: at(from + long) });
            let off = off.filter(|_| !every_day).collect();
            Input { start: at(0), saturdays, sundays, off, steps }
        },
    )
}

fn date(day: Day) -> Date {
    day.exact().parse().unwrap()
}

/// Whether a day counts for a step, asked day by day of another calendar.
fn counts(input: &Input, through: bool, [saturdays, sundays]: [bool; 2], at: Date) -> bool {
    let is_off = input.off.iter().any(|off| {
        let from = date(off.day.unwrap());
        (from..=off.through.map_or(from, date)).contains(&at)
    });
    let of_week = match at.weekday() {
        jiff::civil::Weekday::Saturday => saturdays,
        jiff::civil::Weekday::Sunday => sundays,
        _ => true,
    };
    through || (of_week && !is_off)
}

fn is_worked(input: &Input, step: &Step, at: Date) -> bool {
    if step.who == Who::Inspector {
        return counts(input, false, [false; 2], at);
    }
    counts(input, step.through, [input.saturdays, input.sundays], at)
}

/// First and last day of a step that can begin on a day, walked day by day.
fn walk(input: &Input, step: &Step, from: Date) -> [Date; 2] {
    let mut at = step.from.map_or(from, |own| from.max(date(own)));
    let (mut begins, mut left) = (None, step.days);
    loop {
        if is_worked(input, step, at) {
            let begins = *begins.get_or_insert(at);
            left -= 1;
            if left == 0 {
                return [begins, at];
            }
        }
        at = at.tomorrow().unwrap();
    }
}

/// The last of all days on which a step begins and is done, over every path that leads to it: nothing is
/// kept from one path to the next.
fn over_all_paths(input: &Input, at: usize) -> [Date; 2] {
    let step = &input.steps[at];
    let mut latest = walk(input, step, date(input.start.unwrap()));
    for name in step.after.split(", ").filter(|name| !name.is_empty()) {
        let wait = input.steps.iter().position(|it| known_as(&it.name) == name).unwrap();
        let [_, done] = over_all_paths(input, wait);
        let [begins, ends] = walk(input, step, done.tomorrow().unwrap());
        latest = [latest[0].max(begins), latest[1].max(ends)];
    }
    latest
}

proptest! {
    #[test]
    fn every_step_is_as_early_as_the_longest_of_all_paths_to_it(input in plans(false)) {
        let answer = solve(&input).unwrap();
        for (at, it) in answer.steps.iter().enumerate() {
            prop_assert_eq!([date(it.begins), date(it.done)], over_all_paths(&input, at));
            // The last day from which so many days that an office is open come before it begins.
            let mut office = date(it.begins);
            for _ in 0..input.steps[at].call {
                office = office.yesterday().unwrap();
                while !counts(&input, false, [false; 2], office) {
                    office = office.yesterday().unwrap();
                }
            }
            let call = (input.steps[at].call > 0).then_some(office);
            prop_assert_eq!(it.call.map(date), call);
        }
        let last = answer.steps.iter().map(|it| it.done).max();
        prop_assert_eq!(Some(answer.last), last);
    }

    /// Source: Bellman and Ford's shortest path of the `petgraph` crate, over days below nothing: the
    /// longest path where every day counts.
    #[test]
    fn the_last_day_is_the_longest_path_of_a_graph_library(input in plans(true)) {
        use petgraph::graph::DiGraph;
        let mut graph = DiGraph::<(), f64>::new();
        let [source, sink] = [(); 2].map(|()| graph.add_node(()));
        let nodes: Vec<_> = input.steps.iter().map(|_| graph.add_node(())).collect();
        for (at, step) in input.steps.iter().enumerate() {
            graph.add_edge(source, nodes[at], 0.0);
            graph.add_edge(nodes[at], sink, -(step.days as f64));
            for (wait, other) in input.steps.iter().enumerate() {
                if step.after.split(", ").any(|name| name == known_as(&other.name)) {
                    graph.add_edge(nodes[wait], nodes[at], -(other.days as f64));
                }
            }
        }
        let paths = petgraph::algo::bellman_ford(&graph, source).unwrap();
        let answer = solve(&input).unwrap();
        let first = answer.first.number();
        prop_assert_eq!((answer.last.number() - first + 1) as f64, -paths.distances[sink.index()]);
        for (node, it) in nodes.iter().zip(&answer.steps) {
            prop_assert_eq!((it.begins.number() - first) as f64, -paths.distances[node.index()]);
        }
    }

    #[test]
    fn a_step_may_slip_as_far_as_is_said_and_no_day_more(input in plans(false)) {
        let answer = solve(&input).unwrap();
        for (at, it) in answer.steps.iter().enumerate() {
            // Its own days behind the one on which it begins.
            let mut late = vec![it.begins];
            let mut next = date(it.begins);
            while (late.len() as i64) < it.slack + 2 {
                next = next.tomorrow().unwrap();
                if is_worked(&input, &input.steps[at], next) {
                    late.push(Day::read(&next.to_string()).unwrap());
                }
            }
            for (more, moves) in [(it.slack, false), (it.slack + 1, true)] {
                let mut begun = input.clone();
                begun.steps[at].from = Some(late[more as usize]);
                let mut longer = input.clone();
                longer.steps[at].days += more;
                for slipped in [begun, longer] {
                    let last = solve(&slipped).unwrap().last;
                    prop_assert_eq!(last > answer.last, moves, "step {} by {}", at, more);
                    prop_assert!(last >= answer.last);
                }
            }
            let mut longer = input.clone();
            longer.steps[at].days += 1;
            let longer = solve(&longer).unwrap();
            prop_assert_eq!(it.last, longer.last);
            for (other, moved) in longer.steps.iter().enumerate() {
                prop_assert!(moved.begins >= answer.steps[other].begins, "longer, and earlier");
                prop_assert!(moved.done >= answer.steps[other].done);
                let said = it.moves.contains(&other);
                prop_assert_eq!(said, moved.begins != answer.steps[other].begins);
            }
        }
    }

    #[test]
    fn the_chain_is_one_from_the_first_reason_to_the_last_day(input in plans(false)) {
        let answer = solve(&input).unwrap();
        let steps = &answer.steps;
        let end = &steps[*answer.chain.last().unwrap()];
        prop_assert_eq!((end.done, end.slack), (answer.last, 0));
        prop_assert!(!matches!(steps[answer.chain[0]].because, Because::After(..)));
        for pair in answer.chain.windows(2) {
            let gap = steps[pair[1]].begins.number() - steps[pair[0]].done.number();
            prop_assert_eq!(steps[pair[1]].because, Because::After(pair[0], gap > 1));
            prop_assert!(gap > 0);
            // None of its own days was left between.
            let mut between = date(steps[pair[0]].done).tomorrow().unwrap();
            while between < date(steps[pair[1]].begins) {
                prop_assert!(!is_worked(&input, &input.steps[pair[1]], between));
                between = between.tomorrow().unwrap();
            }
        }
    }

    #[test]
    fn the_order_of_rows_changes_nothing(input in plans(false), by in 0_usize..8, flip: bool) {
        let mut other = input.clone();
        let count = other.steps.len();
        other.steps.rotate_left(by % count);
        if flip {
            other.steps.reverse();
        }
        let by_name = |input: &Input| {
            let answer = solve(input).unwrap();
            let name = |at: &usize| input.steps[*at].name.clone();
            let of = |all: &[usize]| all.iter().map(name).collect::<Vec<_>>();
            let told: Vec<_> = answer.order.iter().map(|at| {
                let it = &answer.steps[*at];
                let because = match it.because {
                    Because::After(wait, gap) => format!("{} {gap}", name(&wait)),
                    other => format!("{other:?}"),
                };
                (name(at), it.begins, it.done, it.call, it.slack, because, of(&it.moves), it.last)
            }).collect();
            (told, of(&answer.chain), answer.last)
        };
        prop_assert_eq!(by_name(&input), by_name(&other));
    }
}

/// What strips before the laboratory's result is asked about, whatever waits for what; so is a result
/// that nothing waits for.
#[test]
fn work_before_a_result_is_asked_about() {
    let mut input = Input::sample();
    let asked = |input: &Input| {
        let sheet = TradeDays::sheet(input, &solve(input).unwrap(), <_>::default());
        let all = sheet.checks.iter().map(|check| (check.key.clone(), check.verdict));
        all.collect::<Vec<_>>()
    };
    assert_eq!(asked(&input), []);
    input.steps[1].after = String::new();
    let keys = ["unasked LAB", "early STRIP LAB", "early FRAME LAB"]
        .map(|key| (key.to_owned(), Verdict::Ask));
    assert_eq!(asked(&input), keys);
    // Begun the day after, it doesn't come before it, but nothing keeps it there.
    input.steps[1].from = Day::new(2027, 1, 7);
    assert_eq!(asked(&input), keys[..1]);
}
