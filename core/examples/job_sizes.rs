//! Prints how much a kept number takes in a phone's store: a job of every calculator's sample in
//! turn, and twice and four times of it.

use ledgerboard_core::catalog;
use ledgerboard_core::edition::Basis;
use ledgerboard_core::job::record::{self, Head};
use ledgerboard_core::job::{Edit, Job, Mark, Stamp, apply};
use ledgerboard_core::measure::Units;

fn stamp(at: usize) -> Stamp {
    let step = i64::try_from(at).unwrap_or(0);
    Stamp { at: 1_790_000_000 + step, zone: 0, device: "phone".to_owned(), random: at as u64 }
}

fn stored(marks: usize, of: impl Fn(usize) -> usize) -> usize {
    let mut job = Job::new("Quoin House", "12 Plumb Row", &stamp(0)).expect("a short name");
    for at in 0..marks {
        let (entry, stamp) = (&catalog::ALL[of(at)], stamp(at + 1));
        let mark =
            Mark::new(entry, &entry.sample(), Units::Customary, Basis::default(), None, &stamp);
        let mark = mark.expect("a sample works");
        apply(&mut job, Edit::Keep(mark), &stamp).expect("a new mark");
    }
    record::write(&job, &Head::new(1, "phone", 0)).len()
}

fn main() {
    let count = catalog::ALL.len();
    let empty = stored(0, |_| 0);
    for times in [1, 2, 4] {
        let marks = times * count;
        let bytes = stored(marks, |at| at % count) - empty;
        println!("{marks:>4} numbers kept: {bytes:>7} bytes, {:>5} each", bytes / marks);
    }
    let mut each: Vec<(usize, &str)> =
        (0..count).map(|at| (stored(1, |_| at) - empty, catalog::ALL[at].id)).collect();
    each.sort_by(|one, other| other.cmp(one));
    let most: Vec<String> =
        each.iter().take(5).map(|(bytes, id)| format!("{id} {bytes}")).collect();
    println!("     the largest: {}", most.join(", "));
}
