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
    let mut at = 1;
    for line in &all.lines {
        for (nth, share) in line.shares.iter().enumerate() {
            let cell = |name: &str| records[at].get(column(name)).unwrap();
            assert_eq!(cell("from"), "Den, \"north\"");
            assert_eq!(Amount::from_exact(cell("asks for")), Some(share.asks));
            if nth == 0 {
                assert_eq!(Amount::from_exact(cell("buy")), Some(line.buys), "{}", line.key);
                assert_eq!(Amount::from_exact(cell("need")), Some(line.needs), "{}", line.key);
            } else {
                assert_eq!((cell("buy"), cell("need")), ("", ""), "a column adds up");
            }
            at += 1;
        }
    }
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
