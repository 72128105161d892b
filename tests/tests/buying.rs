//! What a job has to buy, read back by the registry's own CSV reader.

use ledgerboard_core::catalog;
use ledgerboard_core::job::buying::{About, buying, csv, said_of};
use ledgerboard_core::job::{Edit, Job, Mark, Stamp, Survey, apply};
use ledgerboard_core::measure::Units;
use ledgerboard_core::words::{Amount, Voice};
use proptest::prelude::*;

fn stamp(step: u64) -> Stamp {
    Stamp { at: 1_791_295_200 + step as i64, zone: 0, device: "p".into(), random: step }
}

/// A job with a mark of every calculator's sample, titled so.
fn job(title: &str, spot: &str) -> Job {
    let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
    for (entry, step) in catalog::ALL.iter().zip(1..) {
        let (units, basis) = (Units::Customary, <_>::default());
        let mark = Mark::new(entry, &entry.sample(), units, basis, None, &stamp(step)).unwrap();
        let mark = Mark { title: title.into(), spot: spot.into(), ..mark };
        apply(&mut job, Edit::Keep(mark), &stamp(step)).unwrap();
    }
    let price = Edit::Jot { key: said_of(About::Price, "staple"), says: "0.05".into() };
    apply(&mut job, price, &stamp(90)).unwrap();
    job
}

fn table(job: &Job) -> (Vec<csv::StringRecord>, String) {
    let all = buying(job, &Survey::of(job));
    let text = csv(job, &all, Voice::default());
    // RFC 4180: every record ends with a carriage return and a line feed.
    assert!(text.ends_with("\r\n"));
    let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(text.as_bytes());
    (reader.records().map(Result::unwrap).collect(), text)
}

/// A cell as any reader of numbers has it, in millionths.
fn millionths(cell: &str) -> i64 {
    let number: f64 = cell.parse().unwrap_or_else(|_| panic!("{cell:?} is no number"));
    assert!(number.is_finite() && number.abs() < 1e9);
    (number * 1e6).round() as i64
}

/// An amount in feet, square feet, cubic inches or feet, or the unit that it is held in, by sizes of
/// the international foot, 0.3048 m. Source: NIST SP 811 (2008), B.8.
fn in_its_unit(amount: Amount) -> (f64, Option<&'static str>) {
    let raw = amount.raw() as f64;
    match amount {
        Amount::Length(_) => (raw / 304.8e6, Some("ft")),
        Amount::Area(_) => (raw / (304.8e6 * 304.8e6), Some("sq ft")),
        Amount::Room(room) => (room.units() as f64 / (304.8_f64.powi(3) * 1e5), Some("cu ft")),
        Amount::Count(_) => (raw, None),
        Amount::Measure(_) => (raw / 1e6, None),
        other => panic!("nothing is bought by {other:?}"),
    }
}

fn is_told(cell: &str, amount: Amount) {
    let (number, _) = in_its_unit(amount);
    assert!((millionths(cell) as f64 - number * 1e6).abs() <= 1.0, "{cell}: {amount:?}");
}

#[test]
fn every_share_is_a_record_and_its_numbers_read_back() {
    let job = job("Den, \"north\"", "Den");
    let all = buying(&job, &Survey::of(&job));
    let (records, _) = table(&job);
    let head = records.first().unwrap();
    let column = |name: &str| head.iter().position(|cell| cell == name).unwrap();
    let shares: usize = all.lines.iter().map(|line| line.shares.len()).sum();
    assert_eq!(records.len(), 1 + shares);
    assert!(shares > 10, "the samples ask for something");
    let (mut at, mut units) = (1, Vec::new());
    for line in &all.lines {
        for (nth, share) in line.shares.iter().enumerate() {
            let cell = |name: &str| records[at].get(column(name)).unwrap();
            assert_eq!(cell("from"), "Den, \"north\"");
            is_told(cell("asks for"), share.asks);
            is_told(cell("counted"), share.counted);
            // One unit a line of numbers, by name where it isn't the number's own.
            let (_, unit) = in_its_unit(share.asks);
            let exact = share.asks.exact();
            let own = exact.split_once(' ').map_or("piece", |(_, key)| key);
            assert_eq!(cell("unit"), unit.unwrap_or(own));
            units.push(cell("unit").to_owned());
            if nth == 0 {
                is_told(cell("buy"), line.buys);
                is_told(cell("need"), line.needs);
                is_told(cell("spare (%)"), line.spare.into());
                match &line.pack {
                    Some(pack) => is_told(cell("one holds"), pack.holds),
                    None => assert_eq!(cell("one holds"), ""),
                }
                let is_packed = line.pack.is_some();
                assert!(!cell("sold by").is_empty());
                assert!(is_packed || cell("sold by") == cell("unit"), "{}", line.key);
            } else {
                let names = ["buy", "need", "sold by", "cost ($)"];
                assert!(names.iter().all(|name| cell(name).is_empty()), "a column adds up");
            }
            at += 1;
        }
    }
    for unit in ["gal", "ft", "piece"] {
        assert!(units.iter().any(|it| it == unit), "{unit}: {units:?}");
    }
}

/// Each column of numbers adds up as a spreadsheet adds it, with nothing in it that is no number.
#[test]
fn each_column_of_numbers_adds_up() {
    let mut job = job("Den", "Den");
    for (mark, step) in job.marks.clone().iter().zip(100..) {
        let note = job.note_sample(&mark.id, &[], true).unwrap();
        apply(&mut job, note, &stamp(step)).unwrap();
    }
    let all = buying(&job, &Survey::of(&job));
    let (records, text) = table(&job);
    let head = records.first().unwrap();
    let sum = |name: &str| -> i64 {
        let at = head.iter().position(|cell| cell == name).unwrap();
        // The sums at the end are of the same column.
        let things = records[1..].iter().filter(|it| !it.get(0).unwrap().is_empty());
        let cells = things.map(|it| it.get(at).unwrap()).filter(|cell| !cell.is_empty());
        cells.map(millionths).sum()
    };
    let numbers = |amounts: &mut dyn Iterator<Item = Amount>| -> f64 {
        amounts.map(|amount| in_its_unit(amount).0 * 1e6).sum()
    };
    let near = |told: i64, want: f64| {
        assert!((told as f64 - want).abs() <= records.len() as f64, "{told} {want}");
    };
    near(sum("buy"), numbers(&mut all.lines.iter().map(|it| it.buys)));
    near(sum("need"), numbers(&mut all.lines.iter().map(|it| it.needs)));
    let shares = || all.lines.iter().flat_map(|it| &it.shares);
    near(sum("asks for"), numbers(&mut shares().map(|it| it.asks)));
    near(sum("counted"), numbers(&mut shares().map(|it| it.counted)));
    assert_eq!(
        sum("cost ($)"),
        all.lines.iter().filter_map(|it| it.cost).map(|it| it.millionths()).sum::<i64>()
    );
    assert!(sum("cost ($)") > 0 && sum("price of one ($)") == 50_000);
    assert!(!text.contains(" $,"), "{text}");
}

/// Of a table, what a column of money comes to: of its things and what was bought before, and as the
/// line of its sum says.
fn added(job: &Job, column: &str, sum: &str) -> (i64, Option<i64>, String) {
    let (records, _) = table(job);
    let head = records.first().unwrap();
    let at = |name: &str| head.iter().position(|cell| cell == name).unwrap();
    let (mut all, mut said, mut why) = (0, None, String::new());
    for record in &records[1..] {
        let cell = record.get(at(column)).unwrap();
        let is_sum =
            record.get(at("trade")) == Some("") && record.get(at("there already")) == Some("");
        if !is_sum {
            all += if cell.is_empty() { 0 } else { millionths(cell) };
        } else if record.get(at("what")) == Some(sum) {
            said = (!cell.is_empty()).then(|| millionths(cell));
            why = record.get(at("why")).unwrap().to_owned();
        } else {
            assert_eq!(cell, "", "under its own column alone");
        }
    }
    (all, said, why)
}

fn is_told_as_on_the_page(job: &Job) {
    let all = buying(job, &Survey::of(job));
    let page: Vec<String> = all.sums().iter().map(|sum| Voice::default().say(sum)).collect();
    let mut told = Vec::new();
    for (column, name, sum) in
        [("still to pay ($)", "Still to buy", all.still()), ("paid ($)", "Bought", all.paid())]
    {
        let (added, said, why) = added(job, column, name);
        assert_eq!(added, sum.cost.map_or(0, |cost| cost.millionths()), "{column}");
        assert_eq!(said, sum.cost.map(|cost| cost.millionths()).filter(|_| !page.is_empty()));
        told.extend(Some(why).filter(|why| !why.is_empty()));
    }
    assert_eq!(told, page);
}

#[test]
fn both_sums_read_back_and_are_those_of_the_page() {
    let mut job = job("Den", "Den");
    is_told_as_on_the_page(&job);
    // Said to be their own, the samples count.
    for (mark, step) in job.marks.clone().iter().zip(100..) {
        let note = job.note_sample(&mark.id, &[], true).unwrap();
        apply(&mut job, note, &stamp(step)).unwrap();
    }
    is_told_as_on_the_page(&job);
    let lines = buying(&job, &Survey::of(&job)).lines;
    let lines: Vec<_> = lines.into_iter().filter(|line| line.is_counted()).collect();
    assert!(lines.len() > 4);
    let mut step = 200;
    let mut say = |job: &mut Job, about, key: &str, says: &str| {
        step += 1;
        let edit = Edit::Jot { key: said_of(about, key), says: says.into() };
        apply(job, edit, &stamp(step)).unwrap();
    };
    for (line, price) in lines.iter().zip(["18.49", "0.125", "3", "7.77"]) {
        say(&mut job, About::Price, &line.key, price);
    }
    is_told_as_on_the_page(&job);
    // All of one is there, and some of another.
    let ticked = lines[0].ticked(Voice::default());
    apply(&mut job, ticked, &stamp(400)).unwrap();
    say(
        &mut job,
        About::Got,
        &lines[3].key,
        &lines[3].buys.of_same(lines[3].buys.raw() / 2).exact(),
    );
    is_told_as_on_the_page(&job);
    let (_, paid, _) = added(&job, "paid ($)", "Bought");
    assert!(paid.is_some_and(|paid| paid > 0));
    // What nothing asks for any more was paid all the same.
    for mark in job.marks.clone() {
        apply(&mut job, Edit::Remove(mark.id), &stamp(401)).unwrap();
    }
    assert!(!buying(&job, &Survey::of(&job)).bought.is_empty());
    is_told_as_on_the_page(&job);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// Whatever a person calls a number: quotes, commas, line ends, signs that a spreadsheet takes
    /// for a formula.
    #[test]
    fn a_title_comes_back_whole_and_is_no_formula(
        title in "[=+\\-@,;\"'\n\r a-z0-9é]{0,20}", spot in "[=\"\n,a-z]{0,12}",
    ) {
        let (records, _) = table(&job(&title, &spot));
        // Blanks are no spot.
        let spot = if spot.trim().is_empty() { String::new() } else { spot };
        let head = records.first().unwrap();
        let column = |name: &str| head.iter().position(|cell| cell == name).unwrap();
        for record in &records[1..] {
            for (name, typed) in [("from", &title), ("room", &spot)] {
                let cell = record.get(column(name)).unwrap();
                prop_assert!(!cell.starts_with(['=', '+', '-', '@', '\t', '\r']));
                prop_assert!(cell == typed || cell.strip_prefix('\'') == Some(typed));
            }
        }
    }
}
