//! The federal limits at the hold itself, on and to either side, then what opens it.

use super::*;
use crate::fields::{Form, Reader, evidence_in, without_evidence};
use crate::measure::{Area, Day, Length, Volume};
use crate::rules::hazards::{Deed, Disturbs, Material};
use crate::sheet::Verdict;
use crate::wire::Node;
use crate::words::Voice;

/// An invented ceiling in an invented house, with all that opens it.
fn whole() -> Input {
    Input {
        place: "Den ceiling".to_owned(),
        material: Material::Texture,
        deed: Deed::Strip,
        area: Some(Area::square_feet(200)),
        built: Some(1962),
        report: Report {
            result: Asbestos::NoneDetected,
            samples: Some(3),
            lab: "Tamarack Lab".to_owned(),
            number: "26-1184".to_owned(),
            accreditation: "T-17".to_owned(),
            dated: Day::new(2026, 11, 3),
            sampled: "Den, three corners".to_owned(),
        },
        paint: Paint {
            painted: Some(Area::square_feet(200)),
            window: Window::No,
            result: Lead::NoLead,
            tester: "R. Vale".to_owned(),
            tested: Day::new(2026, 11, 2),
            ..Paint::blank()
        },
        building: Building { dwellings: Some(1), project: false },
        office: Office {
            asks: Local::NothingStricter,
            says: "County desk, Nov 4: nothing more".to_owned(),
            ..Office::blank()
        },
        ..Input::blank()
    }
}

fn square_inches(count: i64) -> Area {
    Area::of(Length::inches(count, 1), Length::inches(1, 1))
}

fn opens(input: &Input) -> bool {
    let answer = solve(input);
    let sheet = sheet::sheet(input, &answer);
    assert_eq!(answer.opened.is_some(), answer.reasons().next().is_none());
    assert_eq!(answer.opened.is_some(), sheet.verdict() == Verdict::Within);
    answer.opened.is_some()
}

fn held_by(input: &Input) -> Vec<String> {
    solve(input).reasons().map(|reason| Voice::default().say(&reason.says)).collect()
}

#[test]
fn blank_is_a_hold_and_a_whole_set_of_evidence_opens_it() {
    assert!(!opens(&Input::sample()));
    assert_eq!(Input::sample(), Input::blank());
    assert_eq!(held_by(&Input::sample()).len(), 9);
    assert!(opens(&whole()));
}

/// An area of nothing was not measured: all the rest is there, and it says what a blank one says.
#[test]
fn an_area_of_nothing_holds_as_a_blank_one_does() {
    let voice = Voice::default();
    let told = |area| {
        let input = Input { area, ..whole() };
        assert!(!opens(&input), "{area:?}");
        let sheet = sheet::sheet(&input, &solve(&input));
        let figures =
            sheet.figures.iter().map(|it| (it.key, voice.phrase(it.name.phrase), it.amount));
        (held_by(&input), solve(&input).notice, figures.collect::<Vec<_>>())
    };
    assert_eq!(told(Some(Area::ZERO)), told(None));
    assert_eq!(told(None).0, ["Measure it: the area says how many samples it takes."]);
    assert!(opens(&Input { area: Some(square_inches(1)), ..whole() }));
    // Nor is a pipe of no length.
    let wrap = |pipe| Input { material: Material::Wrap, pipe, ..whole() };
    assert_eq!(held_by(&wrap(Some(Length::ZERO))), held_by(&wrap(None)));
    assert!(!opens(&wrap(Some(Length::ZERO))) && opens(&wrap(Some(Length::inches(1, 1)))));
    let loose = |loose| Input { material: Material::Vermiculite, loose, ..whole() };
    let notice = |it| solve(&loose(it)).notice;
    assert_eq!(notice(Some(Volume::ZERO)), notice(None));
}

/// What is taken out where the material is changed goes back with it, all or none: for the other
/// material it stays shut, and what else was typed meanwhile stays.
#[test]
fn evidence_goes_back_with_the_material_that_it_is_about() {
    let mut draft = whole().write_parts();
    let mut before = evidence_in(Input::ROWS, &draft);
    let paths: Vec<&str> = before.iter().map(|(path, _)| &**path).collect();
    let paint = ["paint.result", "paint.tester", "paint.tested", "paint.who"];
    assert_eq!(paths, [&["report"], &paint[..], &["office"]].concat());
    before.push(("material".to_owned(), draft.at("material").unwrap().clone()));
    let read = |draft: &Node| Reader::form::<Input>(draft, <_>::default()).unwrap().0;
    draft = without_evidence(Input::ROWS, &draft);
    assert_eq!(evidence_in(Input::ROWS, &draft), []);
    for other in ["plaster", "texture"] {
        draft.put("material", Node::text(other));
        assert!(!opens(&read(&draft)), "{other}");
        assert_eq!(held_by(&read(&draft)).len(), 4, "{other}");
    }
    draft.put("paint.painted", Node::text("3 sq ft"));
    draft.put("material", Node::text("plaster"));
    before.into_iter().for_each(|(path, node)| draft.put(&path, node));
    let mut paint = whole().paint;
    paint.painted = Some(Area::square_feet(3));
    assert_eq!(read(&draft), Input { paint, ..whole() });
    assert!(opens(&read(&draft)));
}

/// Source: 40 CFR 763.86(a): 3 samples up to 1000 sq ft, 5 up to 5000, 7 above.
#[test]
fn the_area_says_how_many_samples_open_it() {
    for (inches, needed) in [
        (1000 * 144 - 1, 3),
        (1000 * 144, 3),
        (1000 * 144 + 1, 5),
        (5000 * 144, 5),
        (5000 * 144 + 1, 7),
    ] {
        for (taken, want) in [(needed - 1, false), (needed, true), (needed + 1, true)] {
            let mut input = Input { area: Some(square_inches(inches)), ..whole() };
            input.report.samples = Some(taken);
            assert_eq!(opens(&input), want, "{taken} of {needed}");
        }
    }
}

/// Source: 40 CFR 61 subpart M: more than 1 percent is asbestos-containing; 29 CFR 1926.1101 is
/// from memory on lower amounts.
#[test]
fn a_trace_asks_and_more_than_one_percent_shuts() {
    let verdict = |result| {
        let mut input = whole();
        input.report.result = result;
        assert_eq!(opens(&input), result == Asbestos::NoneDetected);
        sheet::sheet(&input, &solve(&input)).verdict()
    };
    assert_eq!(verdict(Asbestos::NoneDetected), Verdict::Within);
    assert_eq!(verdict(Asbestos::Trace), Verdict::Ask);
    assert_eq!(verdict(Asbestos::Over), Verdict::Over);
    assert_eq!(verdict(Asbestos::NoneYet), Verdict::Over);
    let mut over = whole();
    over.report.result = Asbestos::Over;
    assert_eq!(
        held_by(&over),
        ["Over 1 %: leave it alone, and get a price from an abatement contractor."]
    );
}

/// Of a trace in a house whose paint is open too, the sentence is of worker rules: 29 CFR 1926.1101.
/// With none but the paint open it is 40 CFR 745.
#[test]
fn what_a_hold_tells_first_has_the_source_of_its_own_gate() {
    let mut input = whole();
    input.paint = Paint::blank();
    let by = |input: &Input| {
        let sheet = sheet::sheet(input, &solve(input));
        let says = crate::words::Voice::default().say(sheet.next.as_ref().unwrap());
        (says, sheet.said_by().map(|it| it.clause.en))
    };
    let (_, paint) = by(&input);
    assert!(paint.is_some_and(|it| it.starts_with("40 CFR 745")), "{paint:?}");
    input.report.result = Asbestos::Trace;
    for result in [Paint::blank(), whole().paint] {
        input.paint = result;
        let (says, by) = by(&input);
        assert!(says.starts_with("Held. A trace is not none"), "{says}");
        assert!(by.is_some_and(|it| it.starts_with("29 CFR 1926.1101")), "{by:?}");
    }
}

/// Source: 29 CFR 1926.1101(b): no later than 1980. That a later year proves nothing is common
/// practice.
#[test]
fn no_year_does_without_a_report() {
    for year in [1979, 1980, 1981, 2005] {
        let mut input = Input { built: Some(year), ..whole() };
        assert_eq!(solve(&input).presumed.is_some(), year <= 1980);
        assert!(opens(&input));
        input.report = Report::blank();
        assert!(!opens(&input), "{year}");
        let later = Input { put_up: Some(2005), ..input };
        assert!(!opens(&later));
        assert_eq!(solve(&later).presumed.is_some(), year <= 1980, "the building's year counts");
    }
}

/// Common practice of federal advice, from memory.
#[test]
fn vermiculite_stays_shut_whatever_the_report_says() {
    let input = Input { material: Material::Vermiculite, ..whole() };
    assert!(!opens(&input));
    let answer = solve(&input);
    assert!(!answer.samples_help && answer.reasons().count() == 1);
}

/// Source: 40 CFR 745 as 73 FR 21692 (2008) has it: before 1978.
#[test]
fn paint_is_asked_about_in_a_house_of_before_1978() {
    for (year, asked) in [(Some(1976), true), (Some(1977), true), (Some(1978), false)] {
        let input = Input { built: year, paint: Paint::blank(), ..whole() };
        assert_eq!(opens(&input), !asked, "{year:?}");
    }
}

/// Source: 40 CFR 745.83: 6 sq ft a room inside, 20 outside, no window, nothing painted torn out.
#[test]
fn minor_work_needs_no_lead_test() {
    let painted = |inches, outside, window| Paint {
        painted: Some(square_inches(inches)),
        outside,
        window,
        ..Paint::blank()
    };
    for (inches, outside, want) in [
        (6 * 144 - 1, false, true),
        (6 * 144, false, true),
        (6 * 144 + 1, false, false),
        (20 * 144, true, true),
        (20 * 144 + 1, true, false),
    ] {
        let paint = painted(inches, outside, Window::No);
        let input = Input { paint: paint.clone(), ..whole() };
        assert_eq!(opens(&input), want, "{inches}");
        let found = Input { paint: Paint { result: Lead::Found, ..paint.clone() }, ..whole() };
        assert_eq!(opens(&found), want, "a found lead leaves minor work minor");
        let certified = Input { paint: Paint { who: Who::Certified, ..paint.clone() }, ..whole() };
        assert!(opens(&certified));
        let out = Input { deed: Deed::TearOut, ..input };
        assert!(!opens(&out), "tearing out is never minor");
        for window in [Window::Yes, Window::NotSaid] {
            let input = Input { paint: Paint { window, ..paint.clone() }, ..whole() };
            assert!(!opens(&input), "a window is never minor, and a blank is no no");
        }
    }
}

/// Source: 40 CFR 61.145: at least 160 sq ft or 260 ft; 61.141: four or fewer dwellings are left
/// out, unless part of a larger project; a regional guide on a building of five.
#[test]
fn notice_is_due_from_its_size_and_number_of_dwellings_on() {
    let notice = |inches, dwellings, project| {
        let building = Building { dwellings, project };
        solve(&Input { area: Some(square_inches(inches)), building, ..whole() }).notice
    };
    assert_eq!(notice(160 * 144 - 1, Some(5), false), Notice::Below);
    assert_eq!(notice(160 * 144, Some(5), false), Notice::Due);
    assert_eq!(notice(160 * 144, Some(4), false), Notice::LeftOut);
    assert_eq!(notice(160 * 144, Some(4), true), Notice::Due);
    assert_eq!(notice(160 * 144, None, false), Notice::DwellingsUnknown);
    assert_eq!(solve(&Input::blank()).notice, Notice::SizeUnknown);
    let loose = |loose| {
        let input = Input { area: Some(square_inches(1)), loose, ..whole() };
        let building = Building { dwellings: Some(5), project: false };
        solve(&Input { material: Material::Vermiculite, building, ..input }).notice
    };
    assert_eq!(loose(None), Notice::Loose);
    // 35 cu ft, on and to either side.
    for (off, want) in [(-1, Notice::Below), (0, Notice::Due), (1, Notice::Due)] {
        let volume = Volume::hundredths(35 * 172_800).plus(Volume::from_units(off));
        assert_eq!(loose(Some(volume)), want, "{off}");
    }
    // 260 ft of pipe, on and to either side.
    for (sixteenths, want) in [(-1, Notice::Below), (0, Notice::Due), (1, Notice::Due)] {
        let pipe = Some(Length::inches(260 * 12 * 16 + sixteenths, 16));
        let building = Building { dwellings: Some(5), project: false };
        let input = Input { area: Some(square_inches(1)), pipe, building, ..whole() };
        assert_eq!(solve(&Input { material: Material::Wrap, ..input }).notice, want);
    }
}

/// Source: 40 CFR 763.86(a), each homogeneous area by itself: 940 sq ft of one date and 120 of
/// another take 3 and 3, not the 5 of 1060.
#[test]
fn samples_of_two_dates_are_not_counted_as_one_area() {
    let samples = |feet| solve(&Input { area: Some(Area::square_feet(feet)), ..whole() }).samples;
    assert_eq!(samples(940).value + samples(120).value, 6);
    assert_eq!(samples(1060).value, 5);
}

/// Source: 40 CFR 61.141 and 61.145: who is left out of the notice reads on the same line that
/// worker rules and the state's reach all the same.
#[test]
fn left_out_of_the_notice_is_never_told_alone() {
    let building = Building { dwellings: Some(4), project: false };
    let input = Input { area: Some(Area::square_feet(160)), building, ..whole() };
    let answer = solve(&input);
    assert_eq!(answer.notice, Notice::LeftOut);
    let sheet = sheet::sheet(&input, &answer);
    let bid = sheet.parts.iter().find(|part| part.key == "bid").unwrap();
    let said: Vec<_> = bid.rows.iter().map(|row| Voice::default().say(&row.value)).collect();
    assert!(said.contains(
        &"left out for its few dwellings; worker rules and the state's are not".to_owned()
    ));
    let cautions: Vec<_> = sheet.cautions.iter().map(|it| Voice::default().say(&it.text)).collect();
    assert!(cautions.iter().any(|it| it.ends_with("is not exempt from worker rules.")));
}

/// A limit that an office names is told as reached from itself on, and opens nothing by itself.
#[test]
fn a_local_limit_is_reached_from_itself_on() {
    let with = |inches, met| {
        let office = Office {
            asks: Local::Stricter,
            limit: Some(Area::square_feet(50)),
            met,
            ..whole().office
        };
        Input { area: Some(square_inches(inches)), office, ..whole() }
    };
    for (inches, want) in [(50 * 144 - 1, false), (50 * 144, true), (50 * 144 + 1, true)] {
        assert_eq!(solve(&with(inches, true)).local, Some(want), "{inches}");
        assert!(!opens(&with(inches, false)) && opens(&with(inches, true)));
    }
}

/// From memory of 40 CFR 745.82: who isn't paid isn't bound, and nothing opens by that.
#[test]
fn an_owner_is_held_as_a_crew_is() {
    for who in [Who::NotSaid, Who::Owner, Who::Crew] {
        let paint = Paint { who, painted: Some(Area::square_feet(7)), ..Paint::blank() };
        assert!(!opens(&Input { paint, ..whole() }), "{who:?}");
    }
}

/// What stands in for a plan has what a bid needs, and opens nothing.
#[test]
fn in_the_place_of_a_plan_stand_area_samples_cost_and_a_price_to_get() {
    let area = Some(Area::square_feet(1001));
    let (material, deed) = (Material::Texture, Deed::Strip);
    let work = Disturbs { material, deed, area, painted: None };
    let prices = Prices { sample: Some(45), abatement: None };
    let sheet = instead(&work, crate::calculators::Withheld { prices, part: None });
    let told = |key| sheet.figures.iter().find(|it| it.key == key).map(|it| it.amount.raw());
    assert_eq!((sheet.headline.key, told("samples"), told("lab")), ("area", Some(5), Some(225)));
    let rows: Vec<_> = sheet.parts.iter().flat_map(|part| &part.rows).collect();
    assert!(rows.iter().any(|row| row.value.phrase == &super::words::PRICE_GET));
    assert!(sheet.materials.is_empty() && sheet.drawing.is_none() && sheet.next.is_none());
}

#[test]
fn a_stricter_rule_holds_until_it_is_met() {
    let mut input = whole();
    input.office.asks = Local::Stricter;
    assert!(!opens(&input));
    input.office.met = true;
    assert!(opens(&input));
    input.office.says = "-".to_owned();
    assert!(!opens(&input), "a dash says nothing");
}

#[test]
fn an_open_hold_covers_its_own_work_and_no_other() {
    let opened = solve(&whole()).opened.unwrap();
    let work = Disturbs {
        material: Material::Texture,
        deed: Deed::Strip,
        area: Some(Area::square_feet(200)),
        painted: None,
    };
    let covers = |opened: &Opened, work: &Disturbs| opened.misses(work).is_none();
    assert!(covers(&opened, &work) && covers(&opened, &Disturbs { area: None, ..work }));
    for (miss, other) in [
        (Miss::Material, Disturbs { material: Material::Plaster, ..work }),
        (Miss::Material, Disturbs { material: Material::NotSaid, ..work }),
        (Miss::Deed, Disturbs { deed: Deed::Sand, ..work }),
        (Miss::Deed, Disturbs { deed: Deed::NotSaid, ..work }),
        (Miss::Area, Disturbs { area: Some(square_inches(200 * 144 + 1)), ..work }),
    ] {
        assert_eq!(opened.misses(&other), Some(miss), "{other:?}");
    }
    let minor = Paint { painted: Some(Area::square_feet(2)), window: Window::No, ..Paint::blank() };
    let opened = solve(&Input { paint: minor, ..whole() }).opened.unwrap();
    let painted = |inches| Disturbs { painted: Some(square_inches(inches)), ..work };
    assert!(covers(&opened, &painted(288)));
    assert_eq!(opened.misses(&painted(289)), Some(Miss::Paint), "more than was asked about");
    assert_eq!(opened.misses(&work), Some(Miss::Paint), "unknown paint is not minor");
}

/// Source: 40 CFR 745.83 and 745.103: in a house of before 1978, what breaks more paint than the
/// hold has on record isn't minor by it; a hold that says none opens bare texture alone.
#[test]
fn painted_texture_is_held_behind_a_hold_that_says_no_paint() {
    let area = Area::square_feet(192);
    let disturbs =
        |deed, painted| Disturbs { material: Material::Texture, deed, area: Some(area), painted };
    for built in [Some(1950), Some(1977), Some(1978)] {
        let paint = Paint { painted: Some(Area::ZERO), window: Window::No, ..Paint::blank() };
        let opened = solve(&Input { built, paint, ..whole() }).opened.unwrap();
        for (painted, want) in
            [(Some(Area::ZERO), None), (Some(area), Some(Miss::Paint)), (None, Some(Miss::Paint))]
        {
            let want = want.filter(|_| built != Some(1978));
            let misses = |painted| opened.misses(&disturbs(Deed::Strip, painted));
            assert_eq!(misses(painted), want, "{built:?} {painted:?}");
            assert_ne!(opened.misses(&disturbs(Deed::TearOut, painted)), None);
        }
    }
}

/// Common practice: who tears out also cuts, and boarding over drives screws.
#[test]
fn tearing_out_takes_in_cutting_and_covering_only() {
    for (deed, takes_in) in [
        (Deed::TearOut, &[Deed::TearOut, Deed::Cut, Deed::Cover][..]),
        (Deed::Cut, &[Deed::Cut, Deed::Cover][..]),
        (Deed::Cover, &[Deed::Cover][..]),
        (Deed::Sand, &[Deed::Sand][..]),
        (Deed::Strip, &[Deed::Strip][..]),
        (Deed::NotSaid, &[][..]),
    ] {
        for other in Deed::ALL {
            assert_eq!(deed.takes_in(*other), takes_in.contains(other), "{deed:?} {other:?}");
        }
    }
}

#[test]
fn a_held_answer_still_says_what_a_bid_needs() {
    let prices = Prices { sample: Some(45), abatement: Some(3_800) };
    let input = Input { area: Some(Area::square_feet(1_200)), prices, ..Input::blank() };
    let answer = solve(&input);
    let sheet = sheet::sheet(&input, &answer);
    assert_eq!((answer.samples.value, answer.lab_cost), (5, Some(225)));
    let keys: Vec<_> = sheet.figures.iter().map(|figure| figure.key).collect();
    assert_eq!(keys, ["samples", "area", "lab", "abatement"]);
    assert!(answer.opened.is_none());
}

#[test]
fn nothing_is_ever_called_harmless() {
    let files = [
        include_str!("words.rs"),
        include_str!("../../rules/hazards/mod.rs"),
        include_str!("../../rules/hazards/asbestos.rs"),
        include_str!("../../rules/hazards/lead.rs"),
        include_str!("../../rules/hazards/local.rs"),
        include_str!("../../rules/hazards/silica.rs"),
    ];
    let said = |line: &&str| line.starts_with("    ") && line.contains("\", es \"");
    let lines: Vec<&str> = files.iter().flat_map(|file| file.lines()).filter(said).collect();
    assert!(lines.len() > 180);
    for line in lines {
        let line = line.to_ascii_lowercase();
        let (english, spanish) = line.split_once("\", es \"").unwrap_or((&line, ""));
        for word in ["safe", "legal", "clear", "harmless", "allowed"] {
            assert!(!english.contains(word), "{line}");
        }
        // "Advice on the law" is "consejo legal": that it is none may be said.
        let spanish = spanish.replace("no es consejo legal", "");
        for word in ["segur", "legal", "inofensiv", "sin peligro", "sin riesgo", "permitid"] {
            assert!(!spanish.contains(word), "{line}");
        }
    }
}

#[test]
fn evidence_is_not_older_than_what_it_is_about() {
    let of = |dated: Option<Day>, tested: Option<Day>, put_up: Option<i64>| {
        let mut input = whole();
        input.put_up = put_up;
        (input.report.dated, input.paint.tested) = (dated, tested);
        input
    };
    let fits = whole();
    let (dated, tested) = (fits.report.dated, fits.paint.tested);
    let of_1962 = |month| Day::new(1962, month, 1);
    for (input, want) in [
        (of(dated, tested, None), true),
        (of(Day::new(1961, 12, 31), tested, None), false),
        (of(of_1962(1), tested, None), true),
        (of(of_1962(1), tested, Some(1963)), false),
        (of(dated, Day::new(1961, 12, 31), None), false),
    ] {
        assert_eq!(opens(&input), want, "{input:?}");
    }
    assert_eq!(Some(solve(&fits).opened.unwrap().latest()), dated.max(tested));
}

/// One sentence for a year that nobody knows, in a blank hold and in what a held plan shows.
#[test]
fn no_year_known_is_presumed_and_says_so_alike() {
    let said = |sheet: &crate::sheet::Sheet| {
        let bid = sheet.parts.iter().find(|part| part.key == "bid").unwrap();
        Voice::default().say(&bid.rows[0].value)
    };
    let blank = sheet::sheet(&Input::blank(), &solve(&Input::blank()));
    let held = |material| {
        let work = Disturbs { material, deed: Deed::Strip, area: None, painted: None };
        instead(&work, super::super::Withheld { prices: Prices::blank(), part: None })
    };
    let expected = "yes, while no later year is known: 29 CFR 1926.1101(b)";
    assert_eq!([said(&blank), said(&held(Material::Texture))], [expected, expected]);
    assert!(said(&held(Material::Vermiculite)).starts_with("yes: "));
}

/// A made-up number opens a hold like a true one: it says that it is a record and no check.
#[test]
fn a_report_has_a_number_and_is_no_check_of_it() {
    let mut input = whole();
    let says = |input: &Input| {
        let sheet = sheet::sheet(input, &solve(input));
        sheet.cautions.iter().any(|it| it.text.phrase == &words::RECORD)
    };
    assert!(opens(&input) && says(&input) && !says(&Input::blank()));
    input.report.number = String::new();
    assert_eq!(held_by(&input), ["Write down the report's number."]);
}

/// Who has to look a report up reads its laboratory and number, and whose word the rest is; what nobody
/// wrote down is no row.
#[test]
fn what_is_on_record_is_told_line_by_line() {
    let told = |input: &Input| {
        let sheet = sheet::sheet(input, &solve(input));
        let voice = Voice::default();
        let part = sheet.parts.into_iter().find(|it| it.key == "evidence");
        let rows = part.into_iter().flat_map(|it| it.rows);
        let say = |text| voice.say(&text);
        rows.map(|row| [say(row.name), say(row.value)].join(": ")).collect::<Vec<_>>()
    };
    let mut input = whole();
    assert_eq!(
        told(&input),
        [
            "Asbestos report: None detected; Tamarack Lab; 26-1184; T-17; 2026-11-03; Den, three corners",
            "Lead in the paint: No lead; R. Vale; 2026-11-02",
            "State and local rule: Asked: nothing stricter; County desk, Nov 4: nothing more",
        ]
    );
    input.report.lab = " ".to_owned();
    input.report.result = Asbestos::Trace;
    input.paint.result = Lead::NoneYet;
    input.office.asks = Local::NotAsked;
    let trace = "Asbestos report: Trace, up to 1 %; 26-1184; T-17; 2026-11-03; Den, three corners";
    assert_eq!(told(&input), [trace]);
    assert_eq!(told(&Input::blank()), [""; 0]);
}
