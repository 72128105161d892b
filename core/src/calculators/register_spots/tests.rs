//! Four invented rooms worked by hand, then laws.

use super::*;
use crate::calculators::room::{End, Shape, Walked};
use crate::fields::Form;
use crate::fields::Reader;
use crate::measure::Units;
use crate::measure::unit::CFM;
use crate::rules::air::register_sizes::Size;
use crate::sheet::Verdict;
use crate::words::Voice;
use proptest::prelude::*;

fn feet(feet: i64) -> Length {
    Length::inches(12 * feet, 1)
}

fn spot(name: &str, place: Place, x: i64, y: i64, aim: Aim) -> Spot {
    Spot { name: name.to_owned(), place, x: Some(feet(x)), y: Some(feet(y)), aim }
}

fn at(x: i64, y: i64) -> At {
    At { there: true, x: Some(feet(x)), y: Some(feet(y)) }
}

fn room(long: i64, wide: i64, cfm: i64, spots: &[Spot]) -> Input {
    Input {
        long: Some(feet(long)),
        wide: Some(feet(wide)),
        season: Season::Cooling,
        cfm: Measure::whole(&CFM, cfm),
        guess: false,
        spots: spots.to_vec(),
        ..Input::blank()
    }
}

fn close(got: Length, want: f64) {
    let got = got.nanometres() as f64 / 304_800_000.0;
    assert!((got - want).abs() < 0.01, "{got}, not {want}");
}

/// How much of its way each throw is, in percent.
fn fits(answer: &Answer) -> Vec<f64> {
    let of = |spot: &Worked| share(spot.throw.throw(), spot.way).map_or(0.0, Measure::number);
    answer.spots.iter().map(of).collect()
}

fn fit(answer: &Answer, want: &[f64]) {
    for (got, want) in fits(answer).into_iter().zip(want) {
        assert!((got - want).abs() < 0.1, "{got} %, not {want} %");
    }
}

use Against::{Alarm, Ask, Glass, Return, Stream, Thermostat, Throw};

/// By hand: along the ceiling 80 cfm throw 11.06 × √2 = 15.64 ft from a 10 × 6 register, 2.79 ft
/// from a 6-in neck. Over 14 ft that is 1.12 and fits both rules, over 12 ft 1.30 and fits one, over
/// the 6 ft from the middle to the nearest wall 0.46 and fits none.
#[test]
fn a_den_where_todays_place_is_the_best() {
    let answer = solve(&room(
        14,
        12,
        80,
        &[
            spot("today", Place::HighWall, 0, 6, Aim::Right),
            spot("long wall", Place::HighWall, 7, 0, Aim::Down),
            spot("middle", Place::Round, 7, 6, Aim::Right),
        ],
    ));
    let answer = answer.unwrap();
    close(answer.spots[0].throw.throw(), 15.64);
    close(answer.spots[2].throw.throw(), 2.79);
    fit(&answer, &[111.7, 130.3, 46.4]);
    let against: Vec<_> = answer.spots.iter().map(|spot| &*spot.against).collect();
    assert_eq!(against, [&[][..], &[Ask], &[Throw]]);
    assert_eq!(answer.order, [0, 1, 2]);
    assert_eq!(answer.spots[0].sweeps.map(Measure::number), Some(100.0));
}

/// By hand: the alarm is 2 ft from the middle of the 6-in neck in the ceiling. From the register on
/// wall 4 it is √(6² + 2²) = 6.32 ft, less 5 in to its edge; and where the jet is 6 ft out it has spread 5 in + 6 × 0.194 = 1.58 ft to a side: it
/// passes. 70 cfm throw 13.68 ft, 1.14 of 12 ft.
#[test]
fn a_bedroom_whose_register_blows_at_its_alarm() {
    let input = Input {
        alarm: at(6, 7),
        ..room(
            12,
            10,
            70,
            &[
                spot("today", Place::Round, 6, 5, Aim::Right),
                spot("inside wall", Place::HighWall, 0, 5, Aim::Right),
            ],
        )
    };
    let answer = solve(&input).unwrap();
    assert_eq!(answer.spots[0].to_alarm, Some(Length::inches(21, 1)));
    close(answer.spots[1].to_alarm.unwrap(), 6.325 - 5.0 / 12.0);
    close(answer.spots[1].throw.throw(), 13.68);
    assert_eq!(answer.spots[0].against, [Alarm, Stream, Throw]);
    assert_eq!((answer.spots[1].against.len(), &*answer.order), (0, &[1, 0][..]));
    let sheet = RegisterSpots::sheet(&input, &answer, Basis::default());
    let keys: Vec<_> = sheet.checks.iter().map(|check| (&*check.key, check.verdict)).collect();
    let within = ["alarm", "face", "way", "index", "sound"].map(|key| (key, Verdict::Within));
    assert_eq!(keys, within);
    // On its limit of 36 in from its edge, and an inch less; out of the stream to the side.
    let alarm = |inches: i64| At {
        there: true,
        x: Some(Length::ZERO),
        y: Some(Length::inches(60 + inches, 1)),
    };
    let of = |inches| solve(&Input { alarm: alarm(inches), ..input.clone() }).unwrap();
    assert_eq!(of(41).spots[1].against, []);
    assert_eq!(of(40).spots[1].against, [Alarm]);
}

/// By hand: 100 cfm throw 19.55 ft along the ceiling, past the return 14 ft out on the jet's axis.
/// From wall 1 the return is 6 ft off the axis at 6 ft out, and 19.55 ft are 1.63 of 12: too much for
/// the habit, right for the index.
#[test]
fn a_room_whose_return_takes_the_air_straight_back() {
    let answer = solve(&Input {
        back: at(14, 6),
        ..room(
            16,
            12,
            100,
            &[
                spot("today", Place::HighWall, 0, 6, Aim::Right),
                spot("", Place::HighWall, 8, 0, Aim::Down),
            ],
        )
    });
    let answer = answer.unwrap();
    close(answer.spots[0].throw.throw(), 19.55);
    fit(&answer, &[122.2, 162.9]);
    assert_eq!(answer.spots[0].against, [Return, Ask]);
    assert_eq!(answer.spots[1].against, [Ask]);
    assert_eq!(answer.order, [1, 0]);
}

/// By hand: a straight 10 × 4 floor register with 20 sq in open throws 80 cfm 14.12 ft up, 1.49 of
/// 9-1/2 ft. High on the wall across, free of the raised ceiling, with 32 sq in open, 13.54 ft are
/// 1.04 of 13. Nothing speaks against either but the flue and
/// their speed, 576 and 443 fpm, so the first stays; the return is 5 ft from the heater.
#[test]
fn a_raised_room_where_two_are_as_good_and_the_return_is_too_near_a_flue() {
    let input = Input {
        high: Length::inches(114, 1),
        gap: Length::inches(20, 1),
        size: Size::S10x4,
        window: at(9, 13),
        back: at(12, 1),
        flue: at(17, 1),
        ..room(
            18,
            13,
            80,
            &[
                spot("today", Place::Floor, 9, 12, Aim::Right),
                spot("across", Place::HighWall, 9, 0, Aim::Down),
            ],
        )
    };
    let answer = solve(&input).unwrap();
    close(answer.spots[0].throw.throw(), 14.12);
    close(answer.spots[1].throw.throw(), 13.54);
    fit(&answer, &[148.6, 104.1]);
    assert!(
        answer.spots.iter().all(|spot| spot.against == [Against::Flue, Against::Fast]),
        "{answer:?}"
    );
    assert_eq!((answer.order.as_slice(), answer.return_to_flue), (&[0, 1][..], Some(feet(5))));
    let sheet = RegisterSpots::sheet(&input, &answer, Basis::default());
    assert_eq!((&*sheet.checks[0].key, sheet.checks[0].verdict), ("flue", Verdict::Over));
    let says = |text: &Text| Voice::default().say(text);
    let next = says(sheet.next.as_ref().unwrap());
    assert!(next.starts_with("Carbon monoxide kills: the return is 5 ft from"), "{next}");
    assert!(says(&sheet.cautions[0].text).contains("worst-case depressurization"));
    let asked = sheet.parts.iter().find(|part| part.key == "ask").unwrap();
    assert_eq!(says(&asked.rows[0].name), "Open flue");
    // √(7² + 7²) = 9.90 ft: over, and by whole inches.
    let near = Input { back: at(1, 1), flue: at(8, 8), ..input.clone() };
    let near = RegisterSpots::sheet(&near, &solve(&near).unwrap(), Basis::default());
    assert_eq!(near.checks[0].value, crate::words::Amount::Length(Length::inches(118, 1)));
    assert_eq!(near.checks[0].verdict, Verdict::Over);
    let far = Input { back: at(1, 1), flue: at(11, 1), ..input.clone() };
    let far = RegisterSpots::sheet(&far, &solve(&far).unwrap(), Basis::default());
    assert_eq!(far.checks[0].verdict, Verdict::Within);
    assert!(!says(far.next.as_ref().unwrap()).contains("kills"));
    assert!(answer.spots[1].throw.bend.is_some() && answer.spots[0].sweeps.is_none());
    // Free of the ceiling, its cold air comes down on people, and the sub is told.
    let across = sheet.parts.iter().find(|part| part.key == "place-2").unwrap();
    let heads = across.rows.iter().find(|row| says(&row.name) == "Cold air on people").unwrap();
    assert!(says(&heads.value).contains("head height, 6 ft"), "{:?}", says(&heads.value));
}

/// A register that nobody has looked at throws the same here and where it is worked by itself.
#[test]
fn a_place_throws_what_the_register_throws_by_itself() {
    for place in Place::ALL {
        let answer = solve(&room(14, 12, 90, &[spot("", *place, 0, 6, Aim::Right)])).unwrap();
        let alone = register_throw::solve(&register_throw::Input {
            outlet: place.outlet(),
            know: register_throw::Know::Measured,
            cfm: Measure::whole(&CFM, 90),
            ..register_throw::Input::blank()
        });
        assert_eq!(answer.spots[0].throw.throws, alone.unwrap().throws, "{place:?}");
    }
}

#[test]
fn glass_left_alone_and_a_thermostat_in_the_stream_are_told() {
    let answer = solve(&Input {
        thermostat: at(14, 6),
        window: at(7, 12),
        ..room(14, 12, 80, &[spot("", Place::HighWall, 0, 6, Aim::Right)])
    });
    assert_eq!(answer.unwrap().spots[0].against, [Thermostat, Glass]);
}

#[test]
fn what_stands_outside_the_room_or_hangs_on_no_wall_is_a_fault_at_its_field() {
    let path = |input: &Input| solve(input).unwrap_err()[0].path.clone();
    let low = room(14, 12, 80, &[spot("", Place::Round, 7, 13, Aim::Up)]);
    assert_eq!(path(&low), "spots.0.y");
    let fine = room(14, 12, 80, &[spot("", Place::Round, 7, 6, Aim::Up)]);
    assert!(solve(&fine).is_ok());
    for (input, want) in [
        (Input { back: at(15, 6), ..fine.clone() }, "back.x"),
        (Input { alarm: at(7, 13), ..fine.clone() }, "alarm.y"),
        (Input { window: at(15, 6), ..fine.clone() }, "window.x"),
        (Input { flue: at(15, 6), ..fine.clone() }, "flue.x"),
        (Input { thermostat: at(7, 13), ..fine.clone() }, "thermostat.y"),
        (Input { spots: Vec::new(), ..fine.clone() }, "spots"),
        (room(14, 12, 9, &[spot("", Place::HighWall, 0, 6, Aim::Right)]), "cfm"),
    ] {
        assert_eq!(path(&input), want);
    }
    let high = |x: i64| {
        let spot =
            Spot { x: Some(Length::inches(x, 1)), ..spot("", Place::HighWall, 0, 6, Aim::Right) };
        solve(&room(14, 12, 80, &[spot])).map_err(|faults| faults[0].path.clone())
    };
    assert!(high(0).is_ok() && high(6).is_ok());
    assert_eq!(high(7).unwrap_err(), "spots.0.x");
}

/// An L of 16 by 14 ft without the 6 by 6 ft at the lower right: from wall 6, 11 ft down, it is
/// 10 ft to the wall that points into the room, and 4 ft down 16 ft to wall 2.
fn ell(spots: &[Spot]) -> Input {
    let notch = Some(feet(6));
    Input { shape: Shape::Ell, notch_long: notch, notch_wide: notch, ..room(16, 14, 80, spots) }
}

#[test]
fn a_jet_ends_at_the_wall_that_it_meets_in_an_l() {
    let ways = |spots: &[Spot]| {
        let answer = solve(&ell(spots)).unwrap();
        answer.spots.iter().map(|spot| (spot.way, spot.along)).collect::<Vec<_>>()
    };
    let wall = |x, y, aim| spot("", Place::HighWall, x, y, aim);
    let seen = ways(&[
        wall(0, 11, Aim::Right),
        wall(0, 4, Aim::Right),
        wall(13, 0, Aim::Down),
        wall(10, 12, Aim::Left),
    ]);
    let of = |way, along| (feet(way), feet(along));
    assert_eq!(seen, [of(10, 10), of(16, 16), of(8, 8), of(10, 10)]);
    // All round it is 2 ft to the nearest wall, and √(1² + 1²) ft to the corner that points in.
    let round =
        ways(&[spot("", Place::Round, 2, 11, Aim::Up), spot("", Place::Round, 9, 7, Aim::Up)]);
    assert_eq!(round[0], of(2, 10));
    close(round[1].0, std::f64::consts::SQRT_2);
    // The answer says so: 15.64 ft at a wall 10 ft off.
    let input = ell(&[wall(0, 11, Aim::Right)]);
    let answer = solve(&input).unwrap();
    let sheet = RegisterSpots::sheet(&input, &answer, Basis::default());
    let next = Voice::default().say(sheet.next.as_ref().unwrap());
    assert!(next.contains("throws 15 ft 8 in, blows at a wall 10 ft off"), "{next}");
}

/// From 12-1/2 ft along wall 1, 10 by 13 ft is 2-1/2 ft off the axis of a jet that has spread
/// 5 in + 13 × 0.194 = 2.94 ft: it meets the thermostat there, unless a wall stands between.
#[test]
fn a_jet_meets_nothing_behind_a_wall() {
    let spots =
        [Spot { x: Some(Length::inches(150, 1)), ..spot("", Place::HighWall, 0, 0, Aim::Down) }];
    let with = |input: Input| {
        solve(&Input { thermostat: at(10, 13), ..input }).unwrap().spots[0].against.clone()
    };
    assert!(with(room(16, 14, 80, &spots)).contains(&Thermostat));
    assert!(!with(ell(&spots)).contains(&Thermostat));
}

#[test]
fn what_stands_in_the_notch_or_blows_at_its_own_wall_is_a_fault_at_its_field() {
    let fault = |input: &Input| {
        let fault = solve(input).unwrap_err().remove(0);
        (fault.path, Voice::default().say(&fault.says))
    };
    let (path, says) = fault(&ell(&[spot("", Place::Round, 12, 10, Aim::Up)]));
    assert_eq!(path, "spots.0.x");
    assert!(says.contains("the part that the room doesn't have"), "{says}");
    let fine = || [spot("", Place::Round, 8, 4, Aim::Up)];
    assert_eq!(fault(&Input { back: at(12, 10), ..ell(&fine()) }).0, "back.x");
    // On the walls that point in it is in the room.
    assert!(solve(&ell(&[spot("", Place::Round, 10, 8, Aim::Up)])).is_ok());
    let (path, says) = fault(&ell(&[
        spot("", Place::HighWall, 0, 4, Aim::Right),
        spot("", Place::HighWall, 10, 12, Aim::Right),
    ]));
    assert_eq!(path, "spots.1.aim");
    assert!(says.contains("the wall that it blows at"), "{says}");
    // A walk that makes no room is the room's own fault.
    let open = Input { shape: Shape::Ell, ..room(16, 14, 80, &fine()) };
    let notch = Some(feet(16));
    assert_eq!(fault(&Input { notch_long: notch, notch_wide: notch, ..open }).0, "notch_long");
}

/// Common practice, and what the groups of outlets are for: the floor under the glass heats best.
#[test]
fn heating_from_above_asks_and_what_leaves_the_glass_says_so() {
    let input = |season, today| Input {
        season,
        window: at(7, 12),
        ..room(
            14,
            12,
            80,
            &[
                spot("today", today, 7, 11, Aim::Up),
                spot("inside", Place::HighWall, 7, 0, Aim::Down),
            ],
        )
    };
    let against = |season| {
        let answer = solve(&input(season, Place::Floor)).unwrap();
        answer.spots.iter().map(|it| it.against.contains(&Against::Heat)).collect::<Vec<_>>()
    };
    assert_eq!(against(Season::Cooling), [false, false]);
    assert_eq!(against(Season::Heating), [false, true]);
    assert_eq!(against(Season::Both), [false, true]);
    let first = |input: &Input| solve(input).unwrap().order[0];
    assert_eq!(first(&input(Season::Both, Place::Floor)), 0);
    // Where an alarm keeps it off the floor, the check says what is lost.
    let weak = Input { alarm: at(7, 11), ..input(Season::Both, Place::Floor) };
    let note = |input: &Input| {
        let answer = solve(input).unwrap();
        let sheet = RegisterSpots::sheet(input, &answer, Basis::default());
        let check = sheet.checks.iter().find(|check| check.key == "heating").unwrap();
        assert_eq!(check.verdict, Verdict::Ask);
        Voice::default().say(check.note.as_ref().unwrap())
    };
    assert!(note(&weak).contains("falls off the glass"));
    let round = Input { alarm: at(7, 11), ..input(Season::Both, Place::Round) };
    assert!(!note(&round).contains("glass"));
}

#[test]
fn the_best_place_is_the_answer_by_its_name_and_each_says_what_judges_it() {
    let input = Input {
        alarm: at(7, 6),
        ..room(
            14,
            12,
            80,
            &[
                spot("middle", Place::Round, 7, 6, Aim::Up),
                spot("long wall", Place::HighWall, 7, 0, Aim::Down),
            ],
        )
    };
    let answer = solve(&input).unwrap();
    let sheet = RegisterSpots::sheet(&input, &answer, Basis::default());
    let say = |text: &Text| Voice::default().say(text);
    assert_eq!(say(&sheet.headline.value()), "Place 2, long wall");
    assert_eq!(sheet.headline.amount, crate::words::Amount::Count(2));
    // In the person's order, the winner marked.
    let next = say(sheet.next.as_ref().unwrap());
    let [one, two] =
        ["Place 1, middle: throws", "Place 2, long wall (best): throws"].map(|it| next.find(it));
    assert!(one.is_some() && one < two, "{next}");
    let ranks = sheet.parts[0].rows.iter().map(|row| say(&row.value)).collect::<Vec<_>>();
    assert!(ranks[0].starts_with("2 of 2: ") && ranks[1].starts_with("1 of 2: "), "{ranks:?}");
    // 15.64 of 12 ft: too far by the habit, right by the index.
    let place = sheet.parts.iter().find(|part| part.key == "place-2").unwrap();
    let row = |says: &str| {
        let row = place.rows.iter().find(|row| say(&row.name).contains(says)).unwrap();
        say(&row.value)
    };
    assert_eq!(row("habit in houses"), "≈ 130.3 %, at most 120 %: ask locally");
    assert_eq!(row("comfort index"), "≈ 130.3 %, at most 190 %: within");
}

proptest! {
    /// A rectangle walked wall by wall is the same room.
    #[test]
    fn shape_alone_changes_nothing(x in 0_i64..14, y in 0_i64..12, aim in 0..4_usize) {
        let spots = [spot("", Place::Slot, x, y, Aim::ALL[aim])];
        let plain = room(14, 12, 200, &spots);
        let wall = |feet_long| Walked {
            end: End::Inside, length: Some(feet(feet_long)), outside: false,
        };
        let walked = Input {
            shape: Shape::Walk, long: None, wide: None,
            walls: [14, 12, 14, 12].map(wall).to_vec(), ..plain.clone()
        };
        let of = |input: &Input| solve(input).map(|answer| answer.spots[0].clone());
        prop_assert_eq!(of(&plain), of(&walked));
    }

    /// By its own rules: no worse one stands before a better, and the first of two as good stays.
    #[test]
    fn the_order_is_by_what_speaks_against(
        places in prop::collection::vec((0..4_usize, 0..4_usize, 0_i64..14, 0_i64..12), 1..=4),
        others in prop::array::uniform5(prop::option::of((0_i64..14, 0_i64..12))),
        cfm in 70_i64..400, guess in any::<bool>(),
    ) {
        let spots: Vec<_> = places.iter().map(|&(place, aim, x, y)| {
            let place = Place::ALL[place];
            spot("", place, x, if place == Place::HighWall { 0 } else { y }, Aim::ALL[aim])
        }).collect();
        let [back, alarm, window, thermostat, flue] =
            others.map(|other| other.map_or(At::blank(), |(x, y)| at(x, y)));
        let input = Input {
            back, alarm, window, thermostat, flue, guess, ..room(14, 12, cfm, &spots)
        };
        let Ok(answer) = solve(&input) else { return Ok(()) };
        let mut seen = answer.order.clone();
        seen.sort_unstable();
        prop_assert_eq!(seen, (0..spots.len()).collect::<Vec<_>>());
        for pair in answer.order.windows(2) {
            let [one, other] = [pair[0], pair[1]].map(|at| &answer.spots[at].against);
            // Worst first, so that the lists compare as they stand; none is better than any.
            let padded = |list: &[Against]| {
                Against::ALL.map(|against| !list.contains(&against))
            };
            prop_assert!(padded(one) >= padded(other), "{:?} before {:?}", one, other);
            prop_assert!(padded(one) != padded(other) || pair[0] < pair[1]);
        }
        let sheet = RegisterSpots::sheet(&input, &answer, Basis::default());
        let is_over = sheet.verdict() == Verdict::Over;
        prop_assert!(!is_over || !answer.first().1.against.is_empty());
        for spot in &answer.spots {
            prop_assert!(spot.sweeps.is_none_or(|share| share.number() <= 100.0 && share.number() >= 0.0));
            let on = spot.against.contains(&Alarm);
            prop_assert_eq!(on, spot.to_alarm.is_some_and(|to| to < feet(3)));
            prop_assert_eq!(spot.against.contains(&Stream), spot.meets_alarm);
        }
    }
}

/// A flue that is there but nowhere is asked for, and so is a place just put in: the safety of
/// neither is worked from a corner that nobody meant.
#[test]
fn a_place_that_nobody_put_in_is_asked_for() {
    let paths = |input: &Input| {
        let read = Reader::form::<Input>(&input.write_parts(), Units::Customary);
        read.unwrap_err().into_iter().map(|fault| fault.path).collect::<Vec<_>>()
    };
    let there = At { there: true, ..At::blank() };
    let flue = Input { flue: there.clone(), ..Input::sample() };
    assert_eq!(paths(&flue), ["flue.x", "flue.y"]);
    let all = Input {
        back: there.clone(),
        alarm: there.clone(),
        window: there.clone(),
        thermostat: At { x: Some(Length::ZERO), ..there },
        ..Input::sample()
    };
    let asked = ["back.x", "back.y", "alarm.x", "alarm.y", "window.x", "window.y", "thermostat.y"];
    assert_eq!(paths(&all), asked);
    let mut spots = Input::sample().spots;
    spots.push(Spot { place: Place::Round, ..Spot::blank() });
    assert_eq!(paths(&Input { spots, ..Input::sample() }), ["spots.3.x", "spots.3.y"]);
    let none = Input { flue: At::blank(), ..Input::sample() };
    assert!(Reader::form::<Input>(&none.write_parts(), Units::Customary).is_ok());
}
