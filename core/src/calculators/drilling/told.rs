//! What a cut's answer tells a person to do: never more than its checks stand behind.

use super::judge::checks;
use super::*;
use crate::edition::Basis;
use crate::fields::Form;
use crate::rules::framing::lumber::Nominal;
use crate::sheet::{Check, Sheet, Verdict};
use crate::words::Voice;
use Verdict::{Ask, Over, Within};

fn inches(sixteenths: i64) -> Length {
    Length::inches(sixteenths, 16)
}

fn shown(input: &Input) -> Sheet {
    sheet::sheet(input, &solve(input).unwrap(), Basis::default())
}

fn next(input: &Input) -> String {
    shown(input).next.map(|next| Voice::default().say(&next)).unwrap_or_default()
}

/// Every member in every wall, with every hole or notch, thing and neighbor that the checks know.
fn every_cut() -> Vec<Input> {
    let mut all = Vec::new();
    for member in Member::ALL {
        for wall in Wall::ALL {
            for passes in Passes::ALL {
                let is_plate = member.rule() == Rule::Plate;
                let remedies = if is_plate { Remedy::ALL } else { &Remedy::ALL[..1] };
                for remedy in remedies {
                    let start = Input {
                        member: *member,
                        wall: *wall,
                        passes: *passes,
                        remedy: *remedy,
                        tie: Some(inches(232)),
                        ..Input::blank()
                    };
                    for (size, place) in
                        [(Nominal::TwoByFour, 0), (Nominal::TwoBySix, 1), (Nominal::TwoByTen, 2)]
                    {
                        let place = Place::ALL[place % Place::ALL.len()];
                        let start = Input { size, place, ..start.clone() };
                        for cut in [8, 14, 21, 32, 40, 48, 55] {
                            let bored = Input { bit: Some(inches(cut)), ..start.clone() };
                            let notched = Input {
                                cut: Cut::Notch,
                                depth: Some(inches(cut)),
                                long: Some(inches(32)),
                                ..start.clone()
                            };
                            for near in [None, Some(0), Some(2), Some(40)] {
                                let near = near.map(inches);
                                for cut in [&bored, &notched] {
                                    let in_a_row = 3;
                                    all.push(Input { to_hole: near, ..cut.clone() });
                                    all.push(Input { to_notch: near, in_a_row, ..cut.clone() });
                                }
                            }
                            let other = Other {
                                bit: Some(inches(24)),
                                along: Some(inches(40)),
                                ..Other::blank()
                            };
                            all.push(Input { holes: vec![other], ..bored });
                        }
                    }
                }
            }
        }
    }
    all
}

#[test]
fn the_structure_takes_it_only_where_all_of_it_is_within() {
    let (mut said, mut asked) = (0, 0);
    for input in every_cut() {
        let Ok(answer) = solve(&input) else { continue };
        let all = checks(&input, &answer, Basis::default());
        let steel = |it: &&Check| ["bare", "steel"].contains(&&*it.key);
        let worst = all.iter().filter(|it| !steel(it)).map(|it| it.verdict).max();
        let next = sheet::next(&input, &answer, &all);
        let next = next.map(|next| Voice::default().say(&next)).unwrap_or_default();
        if next.contains("The structure takes it") {
            said += 1;
            assert_eq!(worst, Some(Within), "{next} {input:?}");
        }
        if worst == Some(Ask) && all.iter().any(|it| steel(&it) && it.verdict == Over) {
            asked += 1;
            let why = all.iter().find(|it| it.verdict == Ask).and_then(|it| it.note.as_ref());
            let why = Voice::default().say(why.unwrap());
            assert!(next.starts_with(&why), "{next} for {why}: {input:?}");
        }
    }
    assert!(said > 100 && asked > 100, "{said} {asked}");
}

fn bored(member: Member, size: Nominal, bit: i64) -> Input {
    Input { member, size, bit: Some(inches(bit)), ..Input::blank() }
}

fn check(input: &Input, key: &str) -> Option<Check> {
    shown(input).checks.into_iter().find(|check| check.key == key)
}

fn says(input: &Input, key: &str) -> Option<Verdict> {
    check(input, key).map(|check| check.verdict)
}

/// Everything that a person reads of the sheet, a line each.
fn read(input: &Input) -> String {
    let (sheet, voice) = (shown(input), Voice::default());
    let mut all: Vec<String> = Vec::new();
    let amount = |figure: &crate::sheet::Figure| {
        figure.amount.show(crate::measure::Units::Customary, figure.rounding).text()
    };
    for figure in [&sheet.headline].into_iter().chain(&sheet.figures) {
        all.push([voice.say(&figure.name), amount(figure)].join(": "));
    }
    for check in &sheet.checks {
        all.push(voice.say(&check.name));
        all.extend(check.note.as_ref().map(|note| voice.say(note)));
    }
    all.extend(sheet.next.as_ref().map(|next| voice.say(next)));
    for part in &sheet.parts {
        all.extend(part.note.as_ref().map(|note| voice.say(note)));
        all.extend(
            part.rows.iter().map(|row| [&row.name, &row.value].map(|it| voice.say(it)).join(": ")),
        );
    }
    all.extend(sheet.cautions.iter().map(|caution| voice.say(&caution.text)));
    if let Some(drawing) = &sheet.drawing {
        all.extend(drawing.twin.iter().map(|text| voice.say(text)));
        for ink in &drawing.ink {
            if let crate::sheet::Ink::Label { text, .. } = ink {
                all.push(voice.say(text));
            }
        }
    }
    all.join("\n")
}

/// By hand: 71 % of a plate and a hole of 2 in in a stud are past a bearing wall's limits.
#[test]
fn a_wall_that_nobody_knows_is_judged_as_one_that_carries() {
    for (member, bit, key) in
        [(Member::PlateDouble, 40, "tie"), (Member::Stud, 32, "size"), (Member::Stud, 34, "size")]
    {
        let carries = Input { passes: Passes::Pipe, ..bored(member, Nominal::TwoByFour, bit) };
        let unknown = Input { wall: Wall::Unknown, ..carries.clone() };
        assert_eq!(says(&unknown, key), Some(Over), "{member:?}");
        assert_eq!(next(&unknown), next(&carries));
    }
    let notch = |deep| Input {
        wall: Wall::Unknown,
        cut: Cut::Notch,
        depth: Some(inches(deep)),
        long: Some(inches(16)),
        ..bored(Member::Stud, Nominal::TwoByFour, 8)
    };
    assert_eq!((says(&notch(14), "size"), says(&notch(15), "size")), (Some(Ask), Some(Over)));
}

/// Source: IRC R502.8.1: 1-1/4 in is past D/6 of a 2x8, 1.208 in, and 6 in past D/3, 2.417 in.
#[test]
fn a_notch_whose_place_nobody_gave_is_never_within() {
    let notch = |deep, long| Input {
        cut: Cut::Notch,
        depth: Some(inches(deep)),
        long: Some(inches(long)),
        ..bored(Member::Joist, Nominal::TwoByEight, 8)
    };
    assert_eq!(says(&notch(20, 16), "size"), Some(Over));
    assert_eq!(says(&notch(16, 96), "length"), Some(Over));
    assert_eq!(says(&notch(16, 16), "size"), Some(Ask));
}

/// Source: IRC R502.8.1: what is 4 in thick or more is notched on its tension side at its ends only.
#[test]
fn a_thick_joist_is_asked_about_away_from_its_ends() {
    for (place, thick, want) in [
        (Place::Outer, false, Within),
        (Place::Outer, true, Ask),
        (Place::NotSaid, true, Ask),
        (Place::End, true, Within),
        (Place::Middle, true, Over),
    ] {
        let input = Input {
            cut: Cut::Notch,
            depth: Some(inches(16)),
            long: Some(inches(16)),
            place,
            thick,
            ..bored(Member::Joist, Nominal::TwoByEight, 8)
        };
        assert_eq!(says(&input, "size"), Some(want), "{place:?} {thick}");
    }
}

/// Source: IRC R502.8.1: 2 in from top and bottom leave no hole in 3-1/2 in.
#[test]
fn where_no_hole_passes_the_answer_has_no_limit_that_one_would_be_within() {
    for bit in [4, 12, 19, 24] {
        let sheet = shown(&bored(Member::CeilingJoist, Nominal::TwoByFour, bit));
        assert_eq!(sheet.lead, None);
        let name = Voice::default().say(&sheet.decisive().unwrap().name);
        assert!(name.starts_with("None passes"), "{name}");
    }
    let passes = shown(&bored(Member::CeilingJoist, Nominal::TwoBySix, 25));
    assert!(passes.lead.is_some());
}

/// By hand: (3-1/2 − 1-3/8) ÷ 2 = 1-1/16, as a tape shows it; 3-1/2 − 1-1/2 = 2 and 9-1/4 − 5 = 4-1/4.
#[test]
fn the_wood_left_is_what_a_tape_shows_and_what_a_bit_runs_off_is_told_apart() {
    let stud = read(&bored(Member::Stud, Nominal::TwoByFour, 22));
    assert!(stud.contains("1-1/16 in of wood on one side and 1-1/16 in on the other"), "{stud}");
    assert!(stud.contains("Bit off its mark, at most: 1/16 in"), "{stud}");
    let joist = Input { center: Some(inches(56)), ..bored(Member::Joist, Nominal::TwoByTen, 48) };
    let edge = check(&joist, "edge").unwrap();
    assert_eq!((edge.verdict, edge.source.key), (Ask, "bit-off-its-mark"));
    assert!(read(&joist).contains("2 in of wood on one side and 4-1/4 in on the other"));
    // By the code's own words it is over where the mark itself is too near.
    let near = Input { center: Some(inches(55)), ..joist.clone() };
    assert_eq!(
        check(&near, "edge").map(|it| (it.verdict, it.source.key)),
        Some((Over, "irc-r502.8.1"))
    );
    let sure = Input { wander: Some(Length::ZERO), ..joist };
    assert_eq!(says(&sure, "edge"), Some(Within));
    // Before a cable as well: 15/16 in leaves 1-9/32 in.
    let plate = bored(Member::PlateDouble, Nominal::TwoByFour, 15);
    let bare = check(&plate, "bare").unwrap();
    assert_eq!((bare.verdict, bare.source.key), (Ask, "bit-off-its-mark"));
    assert_eq!(says(&bored(Member::PlateDouble, Nominal::TwoByFour, 17), "bare"), Some(Over));
}

#[test]
fn a_joist_is_measured_from_its_top() {
    for member in [Member::Joist, Member::CeilingJoist, Member::Rafter] {
        let at = Input { center: Some(inches(50)), ..bored(member, Nominal::TwoByTen, 24) };
        let read = read(&at);
        for wrong in ["wide", "face", "side measured"] {
            assert!(!read.contains(wrong), "{wrong}: {read}");
        }
        assert!(read.contains("from the top"), "{read}");
    }
}

#[test]
fn a_plate_that_only_takes_a_tie_is_not_said_to_take_no_hole() {
    let plate =
        Input { passes: Passes::Pipe, ..bored(Member::PlateDouble, Nominal::TwoByFour, 40) };
    let read = read(&plate);
    assert!(!read.contains("nowhere"), "{read}");
    assert!(read.contains("more than half"), "{read}");
}

/// Source: IRC R602.6.1 has no rule on edges; 3-7/16 in leave 1/32 in on both sides of a 2x4 plate,
/// less than a bit may run off.
#[test]
fn a_plate_of_which_nothing_is_sure_to_be_left_is_severed_and_not_refused() {
    for bit in [55, 56, 58, 96] {
        let plate =
            Input { passes: Passes::Pipe, ..bored(Member::PlateDouble, Nominal::TwoByFour, bit) };
        let read = read(&plate);
        assert_eq!(says(&plate, "tie"), Some(Over), "{bit}");
        assert!(next(&plate).contains("left across"), "{read}");
        assert!(!read.contains("hortest tie"), "{read}");
        assert!(!read.contains('−') && !read.contains(" -"), "{read}");
    }
    // It breaks out of one face only: common practice, by no clause.
    let out =
        Input { center: Some(inches(8)), ..bored(Member::PlateDouble, Nominal::TwoByFour, 16) };
    let edge = check(&out, "edge").unwrap();
    assert_eq!((edge.verdict, edge.source.key), (Ask, "bit-off-its-mark"));
    assert!(!read(&out).contains('−') && !read(&out).contains(" -"));
}

#[test]
fn what_takes_paper_is_short_of_a_paper() {
    for key in ["truss", "i-joist", "laminated", "header"] {
        let member = *Member::ALL.iter().find(|member| member.key() == key).unwrap();
        let sheet = shown(&Input { member, ..Input::blank() });
        let [paper] = &sheet.checks[..] else { panic!("{key}") };
        assert_eq!(paper.verdict, Over);
        assert_ne!(
            (paper.limit, sheet.headline.amount),
            (crate::words::Amount::Count(0), crate::words::Amount::Count(0))
        );
        assert_ne!(paper.limit, crate::words::Amount::Count(0));
        assert!(sheet.figures.is_empty() && sheet.parts.is_empty() && sheet.drawing.is_none());
        let engineer = paper.source.key == "engineers-work";
        assert_eq!(engineer, key == "header");
    }
}

/// No rule is printed for sole plates: whatever is said of one is advice.
#[test]
fn a_sole_plate_gets_advice_and_no_rule() {
    let sole = *Member::ALL.iter().find(|member| member.key() == "sole-plate").unwrap();
    for (bit, want) in [(28, Within), (29, Ask), (55, Ask), (60, Ask)] {
        let input = Input { passes: Passes::Pipe, ..bored(sole, Nominal::TwoByFour, bit) };
        let tie = check(&input, "tie").unwrap();
        assert_eq!((tie.verdict, tie.source.key), (want, "sole-plates"), "{bit}");
        let sheet = shown(&input);
        assert!(sheet.sources().iter().all(|source| source.key != "irc-r602.6.1"));
        assert!(sheet.materials.iter().all(|material| material.key != "plate-tie"));
        assert!(!read(&input).contains("The structure takes it"));
        let braced = Input { wall: Wall::Braced, ..input };
        assert_ne!(says(&braced, "tie"), Some(Within));
    }
}

#[test]
fn what_covers_it_is_asked_and_the_sample_says_that_it_is_bare() {
    assert!(Drilling::disturbs(&Input::blank()).is_some());
    assert!(Drilling::disturbs(&Input::sample()).is_none());
    let first = |input: &Input| Voice::default().say(&shown(input).cautions[0].text);
    assert!(first(&Input::sample()).contains("bare framing"));
    assert!(!first(&Input::blank()).contains("bare framing"));
}

#[test]
fn no_clause_claims_an_edition_that_was_not_seen() {
    for input in every_cut().iter().step_by(97) {
        let Ok(answer) = solve(input) else { continue };
        for source in sheet::sheet(input, &answer, Basis::default()).sources() {
            assert!(!source.clause.en.contains("20"), "{}", source.clause.en);
        }
    }
}
