//! Times the layout of boards over the rooms of `tests/vectors/board-counts.csv` or another file
//! of that form: `cargo run --release -p ledgerboard-core --example lay_boards -- FILE`.

use ledgerboard_core::layout::{Found, Rows, Run, Search};
use std::time::Instant;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let file = std::env::args().nth(1).unwrap_or("tests/vectors/board-counts.csv".to_owned());
    let (mut times, mut slices) = (Vec::new(), Vec::new());
    let (mut proven, mut fewest) = ([0; 2], 0);
    for line in std::fs::read_to_string(file)?.lines() {
        let parts: Result<Vec<i64>, _> = line.split(',').take(7).map(str::parse).collect();
        let Ok([_, long, wide, space, first, stock, width]) = parts.as_deref() else { continue };
        let full = usize::try_from(wide / width)?;
        let run = |row, thin| Run { row, from: 0, to: *long, thin, width: 0 };
        let mut runs: Vec<Run> = (0..full).map(|row| run(row, false)).collect();
        if wide % width > 0 {
            runs.push(run(full, 2 * (wide % width) <= *width));
        }
        let mut stops = Vec::new();
        let mut at = if *first > 0 { *first } else { *space };
        while at < *long {
            stops.push(at);
            at += space;
        }
        let start = Instant::now();
        let rows = Rows { runs, stops, stock: *stock, least: 240, ..Rows::default() };
        let Some(mut search) = Search::new(&rows) else { continue };
        loop {
            let slice = Instant::now();
            let done = search.step(500);
            slices.push(slice.elapsed());
            if done {
                break;
            }
        }
        times.push(start.elapsed());
        let is_proven = |found: &Found| found.bound == found.layout.boards && found.fewest_joints;
        let found = search.found();
        fewest += usize::from(found.last().map(|it| it.layout.boards) == Some(search.lowest()));
        for (count, found) in proven.iter_mut().zip([found.last(), found.first()]) {
            *count += usize::from(found.is_some_and(is_proven));
        }
    }
    times.sort();
    let [boards, joints] = proven;
    println!("{} rooms, fewest boards proven in {fewest}", times.len());
    println!("with their fewest joints in {boards}, fewest joints with their boards in {joints}");
    println!("median {:?}, worst {:?}", times.get(times.len() / 2), times.last());
    println!("longest slice {:?}", slices.iter().max());
    Ok(())
}
