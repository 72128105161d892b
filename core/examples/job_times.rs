//! Prints how long a job of 200 numbers takes here, read, worked and shown, and half and a quarter
//! of it: every calculator's sample in turn.

use ledgerboard_core::catalog;
use ledgerboard_core::edition::Basis;
use ledgerboard_core::job::record::{self, Head};
use ledgerboard_core::job::{Edit, Job, Mark, Stamp, Survey, apply};
use ledgerboard_core::measure::Units;
use std::hint::black_box;
use std::time::Instant;

fn time<T>(what: &str, times: u32, mut work: impl FnMut() -> T) {
    let mut best = f64::MAX;
    for _ in 0..times {
        let start = Instant::now();
        black_box(work());
        best = best.min(start.elapsed().as_secs_f64() * 1e3);
    }
    println!("{what}: {best:.2} ms");
}

fn job(marks: usize) -> Job {
    let stamp = |at: usize| Stamp {
        at: 1_790_000_000 + at as i64,
        zone: 0,
        device: "phone".to_owned(),
        random: at as u64,
    };
    let mut job = Job::new("Quoin House", "12 Plumb Row", &stamp(0)).expect("a short name");
    for at in 0..marks {
        let entry = &catalog::ALL[at % catalog::ALL.len()];
        let stamp = stamp(at + 1);
        let mark =
            Mark::new(entry, &entry.sample(), Units::Customary, Basis::default(), None, &stamp);
        let Ok(mark) = mark else { continue };
        apply(&mut job, Edit::Keep(mark), &stamp).expect("a new mark");
    }
    job
}

fn main() {
    for marks in [50, 100, 200] {
        let job = job(marks);
        let text = record::write(&job, &Head::new(1, "phone", 0));
        println!("{} numbers, {} bytes", job.marks.len(), text.len());
        time("  checked", 20, || record::open(&text).is_ok());
        time("  read", 20, || record::read(&text).is_ok());
        time("  written", 20, || record::write(&job, &Head::new(1, "phone", 0)));
        time("  worked", 3, || Survey::of(&job));
    }
    for entry in catalog::ALL {
        let input = entry.sample();
        let canon = entry.canonical(&input, Units::Customary).expect("a sample");
        time(entry.id, 3, || entry.work(&canon, Units::Customary, Basis::default()).is_ok());
    }
}
