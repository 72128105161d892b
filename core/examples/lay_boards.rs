//! Times the layout of boards over the rooms of `tests/vectors/board-counts.csv` or another file
//! of that form: `cargo run --release -p ledgerboard-core --example lay_boards -- FILE`.

use ledgerboard_core::layout::{Rows, Strip, search};
use std::time::Instant;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let file = std::env::args().nth(1).unwrap_or("tests/vectors/board-counts.csv".to_owned());
    let mut times = Vec::new();
    let mut proven = 0;
    for line in std::fs::read_to_string(file)?.lines() {
        let parts: Result<Vec<i64>, _> = line.split(',').take(7).map(str::parse).collect();
        let Ok([_, long, wide, space, first, stock, width]) = parts.as_deref() else { continue };
        let strip = match wide % width {
            0 => Strip::None,
            rest if 2 * rest <= *width => Strip::Paired,
            _ => Strip::Single,
        };
        let mut stops = Vec::new();
        let mut at = *first;
        while at < *long {
            if at > 0 {
                stops.push(at);
            }
            at += space;
        }
        let full = usize::try_from(wide / width)?;
        let rows = Rows { long: *long, full, strip, stops, stock: *stock, least: 240 };
        let start = Instant::now();
        let front = search(&rows);
        times.push(start.elapsed());
        let whole = front.iter().all(|found| found.bound == found.layout.boards);
        proven += usize::from(whole && !front.is_empty());
    }
    times.sort();
    let (median, worst) = (times.get(times.len() / 2), times.last());
    println!("{} rooms, every count proven in {proven}", times.len());
    println!("median {median:?}, worst {worst:?}");
    Ok(())
}
