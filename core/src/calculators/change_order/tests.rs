//! Sums by hand and by another decimal library, then laws.

use super::*;
use crate::fields::{Form, is_missing};
use crate::measure::unit::typed::{HOUR, MONEY_AN_HOUR, MONEY_PERCENT, NUMBER};
use crate::measure::{Day, Rounding, Units};
use crate::words::{Text, Voice};
use proptest::prelude::*;
use rust_decimal::{Decimal, RoundingStrategy};

fn say(text: &Text) -> String {
    Voice::default().say(text)
}

fn dollars(cents: i64) -> Measure {
    Measure::hundredths(&MONEY_SPENT, cents)
}

fn shown(input: &Input) -> (Answer, Sheet) {
    let answer = solve(input).unwrap();
    let sheet = sheet::sheet(input, &answer);
    (answer, sheet)
}

/// By hand: 3.5 h × $52.50 = $183.75; 2.5 h × $31.75 = $79.375, to the cent $79.38; 2 × $43.95 = $87.90;
/// 2 × $3.45 = $6.90; 15 % of $94.80 = $14.22; 7.25 % of $94.80 = $6.873, to the cent $6.87;
/// $263.13 + $94.80 + $14.22 + $6.87 = $379.02, less $90 is $289.02.
#[test]
fn the_sample_comes_to_what_a_pencil_says() {
    let (answer, sheet) = shown(&Input::sample());
    assert_eq!(answer.labor, [dollars(18_375), dollars(7_938)]);
    assert_eq!(answer.materials, [dollars(8_790), dollars(690)]);
    assert_eq!(answer.parts, [26_313, 9_480, 1_422, 687, 9_000].map(dollars));
    assert_eq!((answer.charged, answer.total), (dollars(37_902), dollars(28_902)));
    assert_eq!(say(&sheet.headline.value()), "$289.02");
    assert_eq!(say(&sheet.headline.name), "Added to the price");
    let lines: Vec<_> = sheet.parts[0].rows.iter().map(|row| say(&row.value)).collect();
    let want = ["$183.75", "$79.38", "$87.90", "$6.90", "$14.22", "$6.87", "−$90.00"];
    assert_eq!(lines, want);
    let names: Vec<_> = sheet.parts[0].rows[4..].iter().map(|row| say(&row.name)).collect();
    assert_eq!(names, ["Markup", "Tax", "Invented hall light"]);
    assert_eq!(say(&sheet.parts[0].rows[1].name), "Invented helper: 2.5 h × $31.75/h");
    let shares: Vec<_> =
        sheet.parts[1].table.as_ref().unwrap().rows.iter().map(|row| say(&row.cells[1])).collect();
    assert_eq!(shares, ["≈ 69.4 %", "≈ 25 %", "≈ 3.8 %", "≈ 1.8 %", "", ""]);
    let all = Input { on: Base::All, ..Input::sample() };
    assert_eq!(solve(&all).unwrap().parts[2], dollars(5_369), "15 % of $357.93 is $53.6895");
}

#[test]
fn the_page_to_sign_says_what_why_how_much_and_when() {
    let mut input = Input::sample();
    input.before = Some(dollars(1_850_000));
    input.paid = "with the last payment".into();
    input.why = Why::Found;
    let (_, sheet) = shown(&input);
    let sign = sheet.parts.iter().find(|part| part.key == "to-sign").unwrap();
    let rows: Vec<_> = sign.rows.iter().map(|row| (say(&row.name), say(&row.value))).collect();
    let said = |name: &str| &rows.iter().find(|(it, _)| it == name).unwrap().1;
    assert_eq!(said("What changes"), &input.what);
    assert_eq!(said("Why"), "Found behind the finish");
    assert_eq!(said("Added to the price"), "$289.02");
    assert_eq!(said("Contract price with this"), "$18,789.02");
    assert_eq!(said("Days added"), "1");
    assert_eq!(said("To be paid"), "with the last payment");
    let lines = rows.iter().filter(|(_, value)| value.contains("____ day ____"));
    let lines: Vec<_> = lines.map(|(name, _)| name.as_str()).collect();
    assert_eq!(lines, ["Owner", "Contractor"]);
    assert!(!rows.iter().any(|(name, _)| name == "Change number" || name == "Issue date"));
    input.number = " 3 ".into();
    input.issued = Day::new(2027, 1, 4);
    let (_, sheet) = shown(&input);
    let sign = sheet.parts.last().unwrap();
    assert_eq!(sign.key, "to-sign", "what is signed stands last");
    let first =
        sign.rows[..2].iter().map(|row| (say(&row.name), say(&row.value).replace('\u{a0}', " ")));
    let first: Vec<_> = first.collect();
    let want = [("Change number", "3"), ("Issue date", "Mon Jan 4, 2027")];
    assert_eq!(first, want.map(|(name, value)| (name.to_owned(), value.to_owned())));
    // Nothing on it says that a law is met.
    let all = format!("{sheet:?}").to_lowercase();
    assert!(!all.contains("valid") && !all.contains("binding"), "{all}");
}

#[test]
fn more_left_out_than_done_is_a_credit() {
    let mut input = Input::sample();
    input.credits[0].worth = Some(dollars(40_000));
    let (answer, sheet) = shown(&input);
    assert_eq!(answer.total, dollars(-2_098));
    assert_eq!(say(&sheet.headline.value()), "−$20.98");
    assert_eq!(say(&sheet.headline.name), "Change of the price, a credit");
    let bare = Input { what: "Days alone".into(), ..Input::blank() };
    let (answer, sheet) = shown(&bare);
    assert_eq!((answer.total, answer.charged), (dollars(0), dollars(0)));
    assert_eq!(say(&sheet.headline.value()), "$0.00");
    let fault = &solve(&Input { what: " ".into(), ..bare }).unwrap_err()[0];
    assert!(is_missing(fault) && fault.path == "what");
}

/// Rates and prices are the person's own: a new line has none, and waits for it.
#[test]
fn a_new_line_waits_for_its_own_rate() {
    use crate::fields::Reader;
    let mut input = Input { what: "Lights".into(), ..Input::blank() };
    input.labor.push(Labor::blank());
    input.materials.push(Bought::blank());
    let faults = Reader::form::<Input>(&input.write_parts(), Units::Customary).unwrap_err();
    let paths: Vec<_> = faults.iter().map(|it| it.path.as_str()).collect();
    let want = ["labor.0.hours", "labor.0.rate", "materials.0.count", "materials.0.price"];
    assert_eq!(paths, want);
    assert!(faults.iter().all(is_missing));
}

/// By hand: 7.25 h × $61.35 are $444.7875, and 2.5 × $12.345 are $30.8625.
#[test]
fn every_line_is_told_as_typed_and_comes_to_the_amount_beside_it() {
    use crate::fields::Reader;
    use crate::wire::Node;
    let tree = |all: &[(&str, &str)]| {
        Node::Tree(all.iter().map(|(key, it)| ((*key).to_owned(), Node::text(it))).collect())
    };
    let mut typed = Input { what: "Lights".into(), ..Input::blank() }.write_parts();
    let mut put = |key: &str, all: Vec<Node>| typed.put(key, Node::List(all));
    put("labor", vec![tree(&[("who", " "), ("hours", "7.25"), ("rate", "61.35")])]);
    let tin = tree(&[("what", "Tin"), ("count", "1 1/2"), ("price", "$1,250.00")]);
    put("materials", vec![tree(&[("what", ""), ("count", "2.5"), ("price", "12.345 $")]), tin]);
    put("credits", vec![tree(&[("what", ""), ("worth", "90")])]);
    let (input, aside) = Reader::form::<Input>(&typed, Units::Customary).unwrap();
    assert!(aside.is_empty());
    let (answer, sheet) = shown(&input);
    let lines: Vec<_> =
        sheet.parts[0].rows.iter().map(|row| (say(&row.name), say(&row.value))).collect();
    let want = [
        ("Worker 1: 7.25 h × $61.35/h", "$444.79"),
        ("Material 1: 2.5 × $12.345", "$30.86"),
        ("Tin: 1.5 × $1,250.00", "$1,875.00"),
        ("Left out 1", "−$90.00"),
    ];
    assert_eq!(lines, want.map(|(name, value)| (name.to_owned(), value.to_owned())));
    let written = |at: usize| answer.working.0[at].expr.written(Voice::default());
    assert_eq!(written(0), "⌊7.25 h × $61.35/h⌉");
    assert_eq!(written(1), "⌊2.5 × $12.345⌉ + ⌊1.5 × $1,250.00⌉");
    let parts = format!("{:?}", sheet.parts);
    assert!(!parts.contains(['⌊', '⌉']), "the sign of rounding stays in the working");
    let spanish = Voice { language: crate::words::Language::Spanish, ..Voice::default() };
    assert_eq!(spanish.say(&sheet.parts[0].rows[0].name), "Trabajador 1: 7.25 h × $61.35/h");
}

#[test]
fn hours_are_read_as_a_clock_tells_them_too() {
    use crate::fields::Reader;
    use crate::wire::Node;
    let mut input = Input::sample().write_parts();
    let mut hours = |typed: &str| {
        input.put("labor.0.hours", Node::text(typed));
        let read = Reader::form::<Input>(&input, Units::Customary);
        read.map(|(input, _)| input.labor[0].hours.unwrap().millionths())
    };
    assert_eq!(hours("3:30"), Ok(3_500_000));
    assert_eq!(hours("3.5"), Ok(3_500_000));
    let fault = &hours("3:75").unwrap_err()[0];
    assert_eq!(say(&fault.says), "Can't read “3:75”. Write it like 3.5 h.");
}

/// In millionths of a unit.
fn decimal(measure: Measure) -> Decimal {
    Decimal::new(measure.millionths(), 6)
}

fn to_cent(of: Decimal) -> Decimal {
    of.round_dp_with_strategy(2, RoundingStrategy::MidpointAwayFromZero)
}

/// Source: the `rust_decimal` crate, an independent implementation of decimal arithmetic.
fn by_decimals(input: &Input) -> [Decimal; 6] {
    let some = |it: Option<Measure>| decimal(it.unwrap());
    let labor: Decimal = input.labor.iter().map(|it| to_cent(some(it.hours) * some(it.rate))).sum();
    let bought = input.materials.iter().map(|it| to_cent(some(it.count) * some(it.price)));
    let bought: Decimal = bought.sum();
    let credits: Decimal = input.credits.iter().map(|it| to_cent(some(it.worth))).sum();
    let percent = |of: Measure, base: Decimal| to_cent(decimal(of) * base / Decimal::ONE_HUNDRED);
    let base = if input.on == Base::All { labor + bought } else { bought };
    let (markup, tax) = (percent(input.markup, base), percent(input.tax, bought));
    [labor, bought, markup, tax, credits, labor + bought + markup + tax - credits]
}

/// To the millionth, or on a half of a cent.
fn amount(unit: &'static Unit, most: i64) -> impl Strategy<Value = Option<Measure>> {
    let most = most * 1_000_000;
    let drawn = prop_oneof![0..=most, (0..=most / 5_000).prop_map(|it| it * 5_000)];
    drawn.prop_map(move |millionths| Some(Measure::new(unit, millionths)))
}

fn changes() -> impl Strategy<Value = Input> {
    let labor = (amount(&HOUR, 10_000), amount(&MONEY_AN_HOUR, 10_000));
    let bought =
        (amount(&NUMBER, 10_000), amount(&crate::measure::unit::typed::MONEY_SPENT, 100_000));
    let lists = (
        prop::collection::vec(labor, 0..20),
        prop::collection::vec(bought, 0..40),
        prop::collection::vec(amount(&crate::measure::unit::typed::MONEY_SPENT, 1_000_000), 0..20),
    );
    let shares = (amount(&MONEY_PERCENT, 200), amount(&MONEY_PERCENT, 30), any::<bool>());
    (lists, shares).prop_map(|((labor, bought, credits), (markup, tax, all))| Input {
        what: "Invented".into(),
        labor: labor
            .into_iter()
            .map(|(hours, rate)| Labor { hours, rate, ..Labor::blank() })
            .collect(),
        materials: bought
            .into_iter()
            .map(|(count, price)| Bought { count, price, ..Bought::blank() })
            .collect(),
        credits: credits.into_iter().map(|worth| LeftOut { worth, ..LeftOut::blank() }).collect(),
        markup: markup.unwrap(),
        tax: tax.unwrap(),
        on: if all { Base::All } else { Base::Materials },
        ..Input::blank()
    })
}

proptest! {
    #[test]
    fn every_sum_is_that_of_another_decimal_library_to_the_cent(input in changes()) {
        let (answer, sheet) = shown(&input);
        let [labor, materials, markup, tax, credits] = answer.parts;
        let ours = [labor, materials, markup, tax, credits, answer.total].map(decimal);
        prop_assert_eq!(ours, by_decimals(&input));
        // What is printed adds up to what is printed.
        for (lines, sum) in [
            (&answer.labor, labor), (&answer.materials, materials), (&answer.credits, credits),
        ] {
            let cents = |it: &Measure| {
                assert_eq!(it.millionths() % 10_000, 0, "a part of a cent");
                it.millionths()
            };
            prop_assert_eq!(lines.iter().map(cents).sum::<i64>(), sum.millionths());
        }
        for row in &sheet.parts[0].rows {
            prop_assert!(!say(&row.name).contains('≈'), "{}", say(&row.name));
        }
        for (it, comes) in input.labor.iter().zip(&answer.labor) {
            let told = |of: Option<Measure>| {
                let figure = of.unwrap().show(Units::Customary, Rounding::Nearest).figure;
                figure.parse::<Decimal>().unwrap()
            };
            prop_assert_eq!(to_cent(told(it.hours) * told(it.rate)), decimal(*comes));
        }
        let added = [markup, tax].iter().filter(|it| it.millionths() != 0).count();
        let lines = input.labor.len() + input.materials.len() + input.credits.len() + added;
        prop_assert_eq!(sheet.parts[0].rows.len(), lines);
        for step in &answer.working.0 {
            prop_assert!(step.expr.value().is_some(), "{}", step.key);
        }
        prop_assert_eq!(answer.working.0.last().unwrap().key.as_str(), "total");
    }

    #[test]
    fn the_lines_that_an_owner_reads_add_up_to_the_price_that_is_signed(input in changes()) {
        let (_, sheet) = shown(&input);
        let rows = |key| &sheet.parts.iter().find(|part| part.key == key).unwrap().rows;
        let read = |value: &Text| {
            let said = say(value).replace('−', "-").replace(['$', ','], "");
            said.parse::<Decimal>().unwrap()
        };
        let price = [&w::ADDED, &w::TAKEN_OFF].map(Text::from);
        let signed = rows("to-sign").iter().find(|row| price.contains(&row.name)).unwrap();
        let sum: Decimal = rows("lines").iter().map(|row| read(&row.value)).sum();
        prop_assert_eq!(sum, read(&signed.value));
    }

    #[test]
    fn more_hours_never_cost_less_and_a_credit_never_adds(input in changes(), more in 0_i64..100_000_000) {
        let before = solve(&input).unwrap().total;
        if !input.labor.is_empty() {
            let mut longer = input.clone();
            let hours = longer.labor[0].hours.unwrap();
            longer.labor[0].hours = Some(hours.of_same(hours.millionths() + more));
            prop_assert!(solve(&longer).unwrap().total >= before);
        }
        let mut less = input.clone();
        less.credits.push(LeftOut { worth: Some(Measure::new(&MONEY_SPENT, more)), ..LeftOut::blank() });
        prop_assert!(solve(&less).unwrap().total <= before);
        let mut reversed = input.clone();
        reversed.labor.reverse();
        reversed.materials.reverse();
        reversed.credits.reverse();
        prop_assert_eq!(solve(&reversed).unwrap().total, before);
    }
}
