//! How far apart the framing over a ceiling may stand, and which way it runs.

use super::*;

/// How boards along wall 1 lie to the joists.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Lie {
    Across,
    Along,
    NotSaid,
}

/// Source: the maker's sheet that board weights name: 1/4 in hangs on no framing alone. One function
/// says so here and by the weight.
#[test]
fn thin_board_is_banned_on_framing_alone() {
    use crate::sheet::Verdict;
    let input = Input { panel: Panel::Quarter, ..Input::sample() };
    let sheet = Boards::sheet(&input, &worked(&input), Basis::default());
    assert_eq!((sheet.verdict(), &*sheet.checks[0].key), (Verdict::Over, "alone"));
    let over = Input { over: true, ..input };
    assert!(Boards::sheet(&over, &worked(&over), Basis::default()).checks.is_empty());
    // On walls nothing falls on a neck.
    let falls = |of| {
        let input = Input { of, ..Input::sample() };
        Boards::cautions(Some(&input)).iter().any(|it| it.text.phrase == &w::LIFT)
    };
    assert!(falls(Surface::Ceiling) && !falls(Surface::Wall));
}

/// The widest gap counts, to the walls too: 81 in are left at the end.
#[test]
fn measured_framing_is_held_to_its_widest_gap() {
    let members = [15, 47, 80, 111].map(|at| Member { at: Some(inches(at)) }).to_vec();
    let input = Input { members, ..Input::sample() };
    let sheet = Boards::sheet(&input, &worked(&input), Basis::default());
    assert_eq!(sheet.verdict(), crate::sheet::Verdict::Over);
    assert_eq!(sheet.checks[0].value, inches(81).into());
}

fn verdicts(input: &Input) -> Vec<(String, Verdict)> {
    let sheet = Boards::sheet(input, &worked(input), Basis::default());
    sheet.checks.into_iter().map(|check| (check.key, check.verdict)).collect()
}

fn over_joists(panel: Panel, apart: Length, lie: Lie) -> Input {
    let room = Input { panel, ..ceiling(192, 144, 16, &[16]) };
    match lie {
        Lie::Across => Input { joists_square: Some(apart), ..room },
        Lie::Along => Input { joists_along: Some(apart), ..room },
        Lie::NotSaid => Input { spacing: apart, ..room },
    }
}

/// Source: IRC Table R702.3.5, across from a maker's sheet, either direction from memory.
#[test]
fn a_ceiling_holds_to_the_spacing_of_its_joists_by_the_way_that_boards_lie() {
    use Lie::{Across, Along, NotSaid};
    use Panel::{FiveEighths, Half, HalfLight, HalfStiff, Quarter, ThreeEighths};
    use Verdict::{Ask, Over, Within};
    #[rustfmt::skip]
    let cases = [
        // board,       apart, boards lie, verdict, key
        (Half,          16, Across,  Within, "spacing"),
        (Half,          24, Across,  Within, "spacing"),
        (Half,          25, Across,  Over,   "spacing"),
        (Half,          16, Along,   Within, "spacing"),
        (Half,          17, Along,   Over,   "spacing"),
        (HalfLight,     24, Along,   Over,   "spacing"),
        (HalfStiff,     24, Along,   Over,   "spacing"),
        (FiveEighths,   24, Across,  Within, "spacing"),
        (FiveEighths,   16, Along,   Within, "spacing"),
        (FiveEighths,   24, Along,   Over,   "spacing"),
        (ThreeEighths,  16, Across,  Within, "spacing"),
        (ThreeEighths,  17, Across,  Over,   "spacing"),
        (ThreeEighths,  12, Along,   Over,   "alone"),
        (Quarter,       12, Across,  Over,   "alone"),
        (Quarter,       12, Along,   Over,   "alone"),
        // Nobody said which way joists run: what both allow, what one does, what none does.
        (Half,          16, NotSaid, Within, "spacing"),
        (Half,          17, NotSaid, Ask,    "spacing"),
        (Half,          24, NotSaid, Ask,    "spacing"),
        (Half,          25, NotSaid, Over,   "spacing"),
        (ThreeEighths,  16, NotSaid, Ask,    "spacing"),
        (ThreeEighths,  17, NotSaid, Over,   "spacing"),
        (Quarter,       12, NotSaid, Over,   "alone"),
    ];
    for (panel, apart, lie, verdict, key) in cases {
        let input = over_joists(panel, inches(apart), lie);
        assert_eq!(verdicts(&input)[0], (key.to_owned(), verdict), "{panel:?} {apart} {lie:?}");
        // The same where boards run the other way, over joists turned with them.
        let turned = Input {
            run: Way::Square,
            joists_along: input.joists_square,
            joists_square: input.joists_along,
            ..input
        };
        assert_eq!(verdicts(&turned)[0], (key.to_owned(), verdict), "{panel:?} {apart} {lie:?}");
    }
    // Over board that is there it needs no more than what it has a figure for.
    for (panel, lie) in [(Quarter, Across), (Quarter, Along), (ThreeEighths, Along)] {
        let input = Input { over: true, ..over_joists(panel, inches(16), lie) };
        assert!(verdicts(&input).iter().all(|(key, _)| key != "alone" && key != "spacing"));
    }
    let input = Input { over: true, ..over_joists(ThreeEighths, inches(16), NotSaid) };
    assert_eq!(verdicts(&input), [("spacing".to_owned(), Within)]);
    // What asks says both limits.
    let note = |panel| {
        let input = over_joists(panel, inches(if panel == Half { 24 } else { 16 }), NotSaid);
        let sheet = Boards::sheet(&input, &worked(&input), Basis::default());
        let check = &sheet.checks[0];
        let note = crate::words::Voice::default().say(check.note.as_ref().unwrap());
        (note, check.source.key)
    };
    let says = "Boards may cross framing up to 2 ft apart, and run along it up to 16 in: say which way it runs.";
    assert_eq!(note(Half), (says.to_owned(), "irc-R702.3.5-along"));
    let says =
        "Boards may cross framing up to 16 in apart, and run along none: say which way it runs.";
    assert_eq!(note(ThreeEighths), (says.to_owned(), "irc-R702.3.5"));
}

/// Turning it is no way out for board that may not hang across framing either.
#[test]
fn what_is_said_of_thin_board_along_joists_is_a_way_out() {
    let note = |panel| {
        let input = over_joists(panel, inches(12), Lie::Along);
        let sheet = Boards::sheet(&input, &worked(&input), Basis::default());
        crate::words::Voice::default().say(sheet.checks[0].note.as_ref().unwrap())
    };
    assert_eq!(note(Panel::Quarter), "Take 1/2 in board or thicker.");
    let says = "Lay it across the framing, or take 1/2 in board or thicker.";
    assert_eq!(note(Panel::ThreeEighths), says);
    // What is offered is within, where it is said.
    for panel in [Panel::Half, Panel::FiveEighths] {
        assert_eq!(panel.hung_along(false, inches(12)).verdict, Verdict::Within);
    }
    assert_eq!(Panel::ThreeEighths.hung(false, inches(12)).verdict, Verdict::Within);
    assert_eq!(Panel::Quarter.hung(false, inches(12)).verdict, Verdict::Over);
}

/// Source: IRC Table R702.3.5: 1/2 in board up to 24 in across framing; along it 16, from memory.
#[test]
fn board_along_joists_too_far_apart_is_told_to_be_turned_where_that_helps() {
    let note = |at: i64| {
        let check = Panel::Half.hung_along(false, inches(at));
        check.note.map(|note| crate::words::Voice::default().say(&note))
    };
    let says = "Farther apart than 16 in, boards go across the framing, where it may stand up to \
                2 ft apart: turn them, or add framing or backing.";
    assert_eq!(note(24).as_deref(), Some(says));
    assert_eq!(Panel::Half.hung(false, inches(24)).verdict, Verdict::Within);
    // Close enough there is nothing to turn for; at 25 in turning is no way out.
    assert_eq!([note(16), note(25)], [None, None]);
}

/// Source: ASTM C840, edges on framing. By hand, rows of 48 in over 12 ft: seams at 48 and 96 in. Joists 16 or
/// 24 in apart from the wall stand behind both, joists 19.2 in apart, at 38.4, 57.6 and 96, behind the
/// second alone, and joists 16 in apart whose first is 8 in off the wall behind none.
#[test]
fn edges_of_boards_along_joists_fall_on_joists_or_it_says_where_not() {
    let told = |apart: Length, first: i64| {
        let input = Input { first: inches(first), ..over_joists(Panel::Half, apart, Lie::Along) };
        let answer = worked(&input);
        let sheet = Boards::sheet(&input, &answer, Basis::default());
        let check = sheet.checks.iter().find(|it| it.key == "edges").unwrap();
        let said = crate::words::Voice::default();
        let note = check.note.as_ref().map(|note| said.say(note));
        assert_eq!(note.is_some(), check.verdict == Verdict::Over);
        if let Some(note) = &note {
            assert!(said.say(&sheet.next.unwrap()).starts_with(note), "it stands under the answer");
        }
        (answer.ground.loose, note)
    };
    assert_eq!(told(inches(16), 0), (vec![], None));
    assert_eq!(told(inches(24), 0), (vec![], None));
    let off = |at: &str| {
        Some(format!("No joist behind the edge at {at}: trim the first row, or put backing there."))
    };
    assert_eq!(told(Length::inches(96, 5), 0), (vec![inches(48)], off("4 ft")));
    assert_eq!(told(inches(16), 8), (vec![inches(48), inches(96)], off("4 ft, 8 ft")));
    // Measured joists stand in the place of both figures; the widest gap among them counts, to the walls too.
    let member = |at| Member { at: Some(inches(at)) };
    let input = Input {
        members: [96, 14, 30, 48, 63, 80, 112, 128].map(member).to_vec(),
        ..over_joists(Panel::Half, inches(12), Lie::Along)
    };
    assert_eq!(worked(&input).ground.loose, []);
    assert_eq!(verdicts(&input)[0].1, Verdict::Over, "18 in from the first to the second");
    // Boards that cross joists have no edge to put on one.
    let across = over_joists(Panel::Half, inches(24), Lie::Across);
    assert_eq!(verdicts(&across), [("spacing".to_owned(), Verdict::Within)]);
}

/// What boards cross is where they may end; along joists their ends meet on backing, which is asked for.
#[test]
fn ends_meet_on_joists_that_are_crossed_and_on_backing_along_them() {
    let feet = [12];
    let across = Input { joists_square: Some(inches(24)), ..ceiling(192, 144, 16, &feet) };
    let plain = ceiling(192, 144, 24, &feet);
    assert_eq!(worked(&across).plans, worked(&plain).plans);
    let along = Input { joists_along: Some(inches(24)), ..ceiling(192, 144, 16, &feet) };
    assert_eq!(worked(&along).plans, worked(&ceiling(192, 144, 16, &feet)).plans);
    let keys: Vec<_> = verdicts(&along).into_iter().map(|it| it.0).collect();
    assert_eq!(keys, ["spacing", "edges", "backing"]);
    // Nothing meets where each board reaches from wall to wall.
    let whole = over_joists(Panel::Half, inches(16), Lie::Along);
    let keys: Vec<_> = verdicts(&whole).into_iter().map(|it| it.0).collect();
    assert_eq!(keys, ["spacing", "edges"]);
    // By hand: 12 ft along joists 16 in apart, on both edges and two joists between, 13 screws each.
    let one = Input { joists_along: Some(inches(16)), ..ceiling(144, 48, 16, &feet) };
    let answer = worked(&one);
    let sheet = Boards::sheet(&one, &answer, Basis::default());
    let screws = sheet.figures.iter().find(|it| it.key == "screws").unwrap();
    assert_eq!(screws.amount, crate::words::Amount::Count(4 * 13));
    // Joists run one way; a wall has none; too many are told where they were typed.
    let both = Input { joists_along: Some(inches(24)), ..across.clone() };
    let fault = &solve(&both).unwrap_err()[0];
    assert_eq!((&*fault.path, &*fault.given), ("joists_square", "2 ft"));
    let many = Input { joists_square: Some(inches(1)), ..ceiling(192, 144, 16, &feet) };
    assert_eq!(solve(&many).unwrap_err()[0].path, "joists_square");
    let wall = Input { of: Surface::Wall, wall: Some(inches(168)), ..Input::sample() };
    let joists = Input { joists_along: Some(inches(30)), ..wall.clone() };
    assert_eq!((worked(&wall), verdicts(&wall)), (worked(&joists), verdicts(&joists)));
}

proptest! {
    /// Along joists never does where across them doesn't; farther apart is never better; not said is never
    /// milder than the milder way, nor stricter than the stricter.
    #[test]
    fn which_way_boards_lie_changes_verdicts_one_way_only(
        panel in prop::sample::select(Panel::ALL.to_vec()),
        textured: bool,
        apart in 8_i64..400,
        more in 0_i64..100,
    ) {
        let eighths = |count| Length::inches(count, 8);
        let of = |at: Length| {
            [panel.hung(textured, at), panel.hung_along(textured, at), panel.hung_either_way(textured, at)]
                .map(|check| check.verdict)
        };
        let [across, along, either] = of(eighths(apart));
        prop_assert!(across <= along && across <= either && either <= along);
        let far = of(eighths(apart + more));
        for (near, far) in [across, along, either].into_iter().zip(far) {
            prop_assert!(near <= far);
        }
    }
}
