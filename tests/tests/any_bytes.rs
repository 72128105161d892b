//! Whatever comes in from outside is read or refused: no panic, no hang. A share of the texts is
//! taken, so that what is tried is not all nonsense.
//!
//! `LEDGERBOARD_CASES=10000000` tries more of each; `LEDGERBOARD_SEED=7` tries others.

use ledgerboard_tests::any_bytes::{Chance, READERS};
use std::panic::catch_unwind;
use std::time::{Duration, Instant};

/// One text takes this long at most, on a machine that does other things too.
const LONGEST: Duration = Duration::from_secs(2);

fn number(variable: &str, usual: u64) -> u64 {
    std::env::var(variable).map_or(usual, |text| text.parse().expect("a whole number"))
}

fn try_all(name: &str) {
    let reader = READERS.into_iter().find(|reader| reader.name == name).expect("it is listed");
    let seeds = (reader.seeds)();
    let refused: Vec<_> = seeds.iter().filter(|seed| !(reader.read)(seed)).collect();
    assert!(refused.is_empty(), "what is taken to begin with is not: {refused:?}");
    let cases = number("LEDGERBOARD_CASES", 100_000);
    let seed = number("LEDGERBOARD_SEED", 1);
    let mut taken = 0;
    for case in 0..cases {
        // From its number alone, so that one case can be looked at by itself.
        let mut chance = Chance::new(seed.wrapping_mul(0x1_0000_0000).wrapping_add(case));
        let text = reader.text(&seeds, &mut chance);
        let start = Instant::now();
        match catch_unwind(|| (reader.read)(&text)) {
            Ok(is_taken) => taken += u64::from(is_taken),
            Err(_) => panic!("{name}, seed {seed}, case {case} panics: {text:?}"),
        }
        assert!(start.elapsed() < LONGEST, "{name}, seed {seed}, case {case} hangs: {text:?}");
    }
    assert!(taken * 5 >= cases, "only {taken} of {cases} {name} were taken");
    assert!(taken * 20 <= cases * 19, "{taken} of {cases} {name} were taken: too tame");
    println!("{name}: {taken} of {cases} taken");
}

macro_rules! readers {
    ($($test:ident: $name:literal;)*) => {
        $(
            #[test]
            fn $test() {
                try_all($name);
            }
        )*

        #[test]
        fn every_reader_is_tried() {
            let tried = [$($name),*];
            assert!(READERS.iter().all(|reader| tried.contains(&reader.name)));
        }
    };
}

readers! {
    any_length_is_read_or_refused: "lengths";
    any_area_is_read_or_refused: "areas";
    any_volume_is_read_or_refused: "volumes";
    any_measure_is_read_or_refused: "measures";
    any_day_is_read_or_refused: "days";
    any_link_is_read_or_refused: "links";
    any_record_is_read_or_refused: "records";
    any_backup_is_read_or_refused: "backups";
    any_batch_line_is_answered: "batch lines";
}
