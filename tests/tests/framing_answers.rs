//! What the framing sheets ask for, refuse, and leave unsaid: each by the catalog's own door, as the
//! page works them.

use ledgerboard_core::catalog::{self, Worked};
use ledgerboard_core::edition::Basis;
use ledgerboard_core::fields::Kind;
use ledgerboard_core::measure::{Rounding, Units};
use ledgerboard_core::sheet::{Check, Confidence, Faults, Verdict};
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::{Amount, Voice};

/// A calculator's sample with some leaves changed; "" empties one.
fn work(id: &str, leaves: &[(&str, &str)]) -> Result<Worked, Faults> {
    let entry = catalog::find(id).unwrap();
    let mut input = entry.sample();
    for (path, leaf) in leaves {
        input.put(path, Node::text(leaf));
    }
    entry.work(&input, Units::Customary, Basis::default())
}

fn worked(id: &str, leaves: &[(&str, &str)]) -> Worked {
    work(id, leaves).unwrap_or_else(|faults| panic!("{id} {leaves:?}: {faults:?}"))
}

/// Where it is refused.
fn refused(id: &str, leaves: &[(&str, &str)]) -> Vec<String> {
    match work(id, leaves) {
        Ok(it) => panic!("{id} {leaves:?} is {}", text(it.sheet.headline.amount)),
        Err(faults) => faults.into_iter().map(|fault| fault.path).collect(),
    }
}

fn text(amount: Amount) -> String {
    amount.show(Units::Customary, Rounding::Nearest).text()
}

fn figure(it: &Worked, key: &str) -> Option<String> {
    let mut all = [&it.sheet.headline].into_iter().chain(&it.sheet.figures);
    all.find(|figure| figure.key == key).map(|figure| text(figure.amount))
}

fn check<'a>(it: &'a Worked, key: &str) -> Option<&'a Check> {
    it.sheet.checks.iter().find(|check| check.key == key)
}

fn verdict(it: &Worked, key: &str) -> Option<Verdict> {
    check(it, key).map(|check| check.verdict)
}

fn note(check: Option<&Check>) -> String {
    let note = check.and_then(|check| check.note.as_ref());
    note.map(|note| Voice::default().say(note)).unwrap_or_default()
}

/// By hand: (15 + 20) × 12 ÷ 2 = 210 lb/ft on each side, 840 lb on posts 4 ft apart.
#[test]
fn loads_ask_for_what_is_ticked() {
    let shoring = ("shoring", "yes");
    assert_eq!(refused("loads", &[shoring, ("posts", "4'")]), ["shore_dead", "work"]);
    assert_eq!(
        refused("loads", &[shoring, ("shore_dead", "0"), ("work", "20"), ("posts", "4'")]),
        ["shore_dead"]
    );
    let all = [shoring, ("shore_dead", "15"), ("work", "20"), ("posts", "4'")];
    let it = worked("loads", &all);
    let part = it.sheet.parts.iter().find(|part| part.key == "shoring").unwrap();
    let said: Vec<_> = part.rows.iter().map(|row| Voice::default().say(&row.value)).collect();
    assert_eq!(said, ["210 lb/ft", "840 lb", "210 lb/ft", "840 lb"]);
    let no_span = [&all[..], &[("left", ""), ("right", ""), ("wall", "48")]].concat();
    assert_eq!(refused("loads", &no_span), ["left"], "there is nothing to shore");
    assert_eq!(refused("loads", &[("roof", "yes")]), ["roof_wide", "roof_dead", "roof_live"]);
    assert_eq!(refused("loads", &[("point", "yes")]), ["post.load", "post.at"]);
    assert_eq!(refused("loads", &[("bearing.on", "hf")]), ["bearing.wide", "bearing.long"]);
    assert!(work("loads", &[("left", "")]).is_ok(), "one side alone");
}

/// A number without a unit is inches: nobody means a room of 14 in.
#[test]
fn a_span_or_a_room_of_a_few_inches_is_refused() {
    for (id, path, said) in [
        ("joist-spans", "span", "13"),
        ("loads", "left", "12"),
        ("loads", "right", "12"),
        ("loads", "span", "16"),
        ("raising", "long", "14"),
        ("raising", "wide", "12"),
        ("raising", "perimeter", "30"),
        ("under-a-gable", "up", "2"),
        ("under-a-gable", "span", "24"),
    ] {
        assert_eq!(refused(id, &[(path, said)]), [path], "{id} {path} {said}");
    }
    let tray = [("shape", "tray"), ("border", "2")];
    assert_eq!(refused("raising", &tray), ["border"]);
    let roof = [("roof", "yes"), ("roof_dead", "15"), ("roof_live", "20"), ("roof_wide", "12")];
    assert_eq!(refused("loads", &roof), ["roof_wide"]);
    let stays = worked("under-a-gable", &[("up", "")]);
    assert_eq!(stays.verdict(), Verdict::Within, "ties that stay");
}

/// By hand: 24 ft at 6 in 12 rise 72 in; a third is 24. The deepest common ridge is 11-1/4 in, and
/// (72 - 11-1/4) ÷ 3 = 20-1/4.
#[test]
fn a_third_is_told_from_the_ridge_that_was_measured() {
    let at = |up: &str, ridge: &str| {
        let leaves = [("span", "24'"), ("pitch", "6"), ("up", up), ("ridge", ridge)];
        worked("under-a-gable", &leaves)
    };
    for (up, ridge, want) in [
        ("24", "", Verdict::Ask),
        ("20 1/4", "", Verdict::Within),
        ("20 5/16", "", Verdict::Ask),
        ("24 1/16", "", Verdict::Over),
        ("24", "72", Verdict::Within),
        ("24", "71 15/16", Verdict::Over),
        ("22", "66", Verdict::Within),
        ("22 1/16", "66", Verdict::Over),
    ] {
        assert_eq!(verdict(&at(up, ridge), "third"), Some(want), "{up} under {ridge:?}");
    }
    let drawn = |up: &str, ridge: &str| {
        let twin = at(up, ridge).sheet.drawing.unwrap().twin;
        twin.iter().map(|text| Voice::default().say(text)).collect::<Vec<_>>().concat()
    };
    assert!(drawn("24", "72").contains("They stand in the lower third"));
    assert!(!drawn("24", "").contains("They stand in the lower third"));
    // Where it is not known to be in a third, no row of the code's is taken.
    assert_eq!(figure(&at("24", ""), "rafter-factor"), None);
    assert_eq!(figure(&at("24", "72"), "rafter-factor").as_deref(), Some("0.67"));
    // 18 of 72 is 1/4, of 60-3/4 it is more: the row of 1/3.
    assert_eq!(figure(&at("18", ""), "rafter-factor").as_deref(), Some("0.67"));
    assert_eq!(figure(&at("18", "72"), "rafter-factor").as_deref(), Some("0.76"));
    let past = [("span", "24'"), ("pitch", "6"), ("ridge", "72 1/16")];
    assert_eq!(refused("under-a-gable", &past), ["ridge"]);
}

/// Nothing to cut, count or buy, where nobody may cut.
#[test]
fn under_trusses_or_the_unknown_nothing_is_cut_counted_or_bought() {
    const CUT: [&str; 5] = ["stud", "cripple", "sold", "cut-off", "studs"];
    for overhead in ["trusses", "unknown"] {
        for how in ["full", "stacked"] {
            let it = worked("raising", &[("overhead", overhead), ("wall.how", how)]);
            for key in CUT {
                assert_eq!(figure(&it, key), None, "{overhead} {key}");
                assert!(it.sheet.working.iter().all(|step| step.key != key), "{overhead} {key}");
            }
            assert_eq!(it.sheet.materials, [], "{overhead}");
            assert_eq!(verdict(&it, "stud-height"), None, "{overhead}");
            assert!(it.sheet.parts.iter().all(|part| part.key != "sheets"), "{overhead}");
            let drawn = it.sheet.drawing.map(|it| it.twin).unwrap_or_default();
            let said: Vec<_> = drawn.iter().map(|text| Voice::default().say(text)).collect();
            assert!(!said.concat().contains("tuds"), "{said:?}");
            assert!(it.sheet.next.is_some());
        }
    }
    let sticks = worked("raising", &[("overhead", "sticks")]);
    assert_eq!(sticks.sheet.headline.key, "stud");
    assert_ne!(sticks.sheet.materials, []);
}

#[test]
fn an_engineer_is_no_common_practice() {
    for (id, leaves) in [
        ("under-a-gable", &[][..]),
        ("loads", &[]),
        ("raising", &[]),
        ("raising", &[("overhead", "story")]),
    ] {
        let it = worked(id, leaves);
        for check in &it.sheet.checks {
            assert_ne!(check.source.confidence, Confidence::CommonPractice, "{id} {}", check.key);
        }
    }
}

/// The first choice of a form stands in a mark's title: none of these says what it is of.
#[test]
fn no_choice_of_a_detail_names_loads_or_heat() {
    for id in ["loads", "added-heat"] {
        let rows = catalog::find(id).unwrap().rows;
        let choice = rows.iter().find(|row| matches!(row.kind, Kind::Choice(_)));
        assert!(choice.is_none(), "{id}: {}", choice.map_or("", |row| row.key));
    }
}

/// By hand: 168 × 60 ÷ 40 - 168 × 60 ÷ 10 = -756; less 157.44 and 136.08, 462.48.
#[test]
fn heat_that_is_saved_is_said_to_be_less() {
    let ceiling = [
        ("ceiling.count", "yes"),
        ("ceiling.old_area", "168 sq ft"),
        ("ceiling.area", "168 sq ft"),
        ("ceiling.old_r", "10"),
        ("ceiling.r", "40"),
    ];
    let it = worked("added-heat", &ceiling);
    assert_eq!(Voice::default().say(&it.sheet.headline.name), "Less heat, in winter");
    assert_eq!(text(it.sheet.headline.amount), "≈ 462 Btu/h");
    assert_eq!(figure(&it, "cool-less").as_deref(), Some("≈ 154 Btu/h"));
    let step = it.sheet.working.iter().find(|step| step.key == "heat-less").unwrap();
    let said = step.equation(Voice::default());
    assert_eq!(said, "756 Btu/h − ≈ 157 Btu/h − ≈ 136 Btu/h = ≈ 462 Btu/h");
}

/// By hand: (32 - 12) × 0.082 × 60 = 98.4.
#[test]
fn a_wall_beside_a_heated_room_takes_nothing_of_what_goes_out() {
    let it = worked("added-heat", &[("holds.inside", "12 sq ft")]);
    assert_eq!(figure(&it, "heat-wall").as_deref(), Some("≈ 98 Btu/h"));
    assert_eq!(figure(&it, "heat-air"), figure(&worked("added-heat", &[]), "heat-air"));
    assert_eq!(refused("added-heat", &[("holds.inside", "33 sq ft")]), ["holds.inside"]);
}

#[test]
fn a_vault_says_first_that_its_ties_go() {
    for shape in ["gable", "shed"] {
        let leaves = [("shape", shape), ("pitch", "4"), ("overhead", "sticks")];
        let it = worked("raising", &leaves);
        let first = it.sheet.decisive().unwrap();
        assert_eq!(first.key, "overhead", "{shape}");
        let said = note(Some(first));
        assert!(said.contains("ridge") && said.contains("spread"), "{said}");
    }
}

/// By hand: 104 of border, 50 of sides, 80 of top; 130 without the border.
#[test]
fn a_border_is_boarded_anew_unless_its_board_stays() {
    let tray = [
        ("shape", "tray"),
        ("long", "16'"),
        ("wide", "14'"),
        ("border", "2'"),
        ("lean", "1'"),
        ("to.by", "raise"),
        ("to.raise", "9"),
    ];
    let board = |leaves: &[(&str, &str)]| {
        figure(&worked("raising", &[&tray[..], leaves].concat()), "ceiling-board")
    };
    assert_eq!(board(&[]).as_deref(), Some("234 sq ft"));
    assert_eq!(board(&[("keeps", "yes")]).as_deref(), Some("130 sq ft"));
    let down = |leaves: &[(&str, &str)]| {
        let entry = catalog::find("raising").unwrap();
        let mut input = entry.sample();
        for (path, leaf) in [&tray[..], leaves].concat() {
            input.put(path, Node::text(leaf));
        }
        let area = entry.disturbs(&input, Units::Customary).unwrap().area.unwrap();
        text(Amount::Area(area))
    };
    assert_eq!(down(&[]), "224 sq ft", "what is boarded anew comes down whole");
    assert_eq!(down(&[("keeps", "yes")]), "120 sq ft");
}

#[test]
fn a_short_wall_is_told_of_its_own_joint_only() {
    let stacked =
        |carries: &str| worked("raising", &[("wall.how", "stacked"), ("wall.carries", carries)]);
    let partition = stacked("nothing");
    assert!(!note(check(&partition, "joint")).contains("utside walls take"));
    assert_eq!(verdict(&partition, "joint"), Some(Verdict::Ask));
    let outside = stacked("bearing");
    assert!(note(check(&outside, "joint")).contains("utside walls take"));
    for it in [partition, outside] {
        assert_eq!(verdict(&it, "stud-height"), None, "no such stud is cut");
    }
}

/// By hand: a tenth of 152 in is 15.2, so 15-1/4; 168 - 173-1/4 is 5-1/4 short; 5-1/4 + 12 is
/// 17-1/4, bought as 18.
#[test]
fn what_a_cable_is_short_by_is_one_number_and_is_bought_up() {
    let it = worked("rerouted-cable", &[]);
    let reach = check(&it, "reach").unwrap();
    assert_eq!(text(reach.margin()), "−5-1/4 in");
    assert_eq!(figure(&it, "short").as_deref(), Some("5-1/4 in"));
    assert_eq!(figure(&it, "piece").as_deref(), Some("18 in"));
    assert_eq!(figure(&it, "buy").as_deref(), Some("18 in"));
}

#[test]
fn a_cable_that_is_too_short_to_join_is_refused_at_its_length() {
    assert_eq!(refused("rerouted-cable", &[("there", "0")]), ["there"]);
    assert_eq!(refused("rerouted-cable", &[("there", "4")]), ["there"]);
    assert_eq!(refused("rerouted-cable", &[("back", "14'")]), ["back"]);
}

/// By hand: 24 ft at 2 in 12 rise 2 ft.
#[test]
fn a_low_slope_is_said_before_the_height_of_ties() {
    let low = [("span", "24'"), ("pitch", "2"), ("up", "2'")];
    let faults = work("under-a-gable", &low).unwrap_err();
    let said = Voice::default().say(&faults[0].says);
    assert!(said.starts_with("Under 3 in 12"), "{said}");
    let it = worked("under-a-gable", &[("span", "24'"), ("pitch", "2"), ("up", "10")]);
    assert_eq!(verdict(&it, "third"), Some(Verdict::Over));
    assert_eq!(it.sheet.decisive().unwrap().key, "low-slope");
}

#[test]
fn what_moves_with_a_ceiling_is_read_as_sentences() {
    let it = worked("raising", &[]);
    let part = it.sheet.parts.iter().find(|part| part.key == "moves").unwrap();
    for row in &part.rows {
        assert_eq!(Voice::default().say(&row.value), "", "a figure's place is no paragraph's");
        assert!(Voice::default().say(&row.name).contains(": "));
    }
}

/// A ban has no scale to be near to.
#[test]
fn what_is_banned_has_no_gauge() {
    for (id, key) in [("loads", "sized"), ("raising", "overhead"), ("under-a-gable", "moved")] {
        let it = worked(id, &[]);
        assert!(!check(&it, key).unwrap().has_scale(), "{id}");
    }
    assert!(check(&worked("raising", &[]), "height").unwrap().has_scale());
}
