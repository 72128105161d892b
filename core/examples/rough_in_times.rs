//! Prints how long a plan of 300 boxes and 500 cables takes here, read, solved and shown, and half
//! and a quarter of it.

use ledgerboard_core::calculators::rough_in::{Cable, Hole, Input, PlacedBox, Run, What, solve};
use ledgerboard_core::catalog;
use ledgerboard_core::edition::{Basis, Electrical};
use ledgerboard_core::fields::{Form, Reader};
use ledgerboard_core::measure::unit::AMPERE;
use ledgerboard_core::measure::{Length, Measure, Units, Volume};
use std::hint::black_box;
use std::time::Instant;

fn time(what: &str, times: u32, work: &mut dyn FnMut()) {
    let mut best = f64::MAX;
    for _ in 0..times {
        let start = Instant::now();
        work();
        best = best.min(start.elapsed().as_secs_f64() * 1e3);
    }
    println!("{what}: {best:.2} ms");
}

/// Circuits of ten boxes each, one after another, and every third cable on to a coiled end.
fn plan(boxes: i64, cables: i64) -> Input {
    let label = |at: i64| if at == 0 { "PANEL".to_owned() } else { format!("B{at}") };
    let at = |inches: i64| Some(Length::inches(inches, 1));
    let places = (0..boxes).map(|number| PlacedBox {
        label: label(number),
        what: if number == 0 { What::Panel } else { What::Receptacle },
        high: at(16 + number % 3 * 14),
        x: at(number * 37 % 480),
        y: at(number * 91 % 360),
        marked: Some(Volume::hundredths(2250)),
        ..PlacedBox::blank()
    });
    let run = |number: i64| {
        let to = number % (boxes - 1) + 1;
        let from = if to % 10 == 1 { 0 } else { to - 1 };
        let is_coiled = number >= boxes - 1;
        Run {
            from: label(if is_coiled { to } else { from }),
            to: if is_coiled { String::new() } else { label(to) },
            cable: if to % 20 < 10 { Cable::Nm12x2 } else { Cable::Nm14x2 },
            circuit: format!("{}", (to - 1) / 10 + 1),
            load: (!is_coiled).then_some(Measure::whole(&AMPERE, 1)),
            length: is_coiled.then_some(Length::inches(100, 1)).into(),
            holes: format!("H{}, H{}", to / 4, to / 4 + 1),
            ..Run::blank()
        }
    };
    let holes = (0..50).map(|number| Hole { label: format!("H{number}"), ..Hole::blank() });
    Input {
        boxes: places.collect(),
        cables: (0..cables).map(run).collect(),
        holes: holes.collect(),
        bit: Some(Length::inches(1, 1)),
        ..Input::blank()
    }
}

fn main() {
    let entry = catalog::find("rough-in").unwrap();
    for (boxes, cables) in [(75, 125), (150, 250), (300, 500)] {
        let node = plan(boxes, cables).write_parts();
        println!("{boxes} boxes, {cables} cables");
        time("  read", 40, &mut || {
            black_box(Reader::form::<Input>(black_box(&node), Units::Customary)).ok();
        });
        let input = plan(boxes, cables);
        time("  solved", 40, &mut || {
            black_box(solve(black_box(&input), Electrical::E2023));
        });
        let basis = Basis { electrical: Some(Electrical::E2023) };
        let worked = entry.work(&node, Units::Customary, basis).unwrap();
        println!("  {} checks", worked.sheet.checks.len());
        time("  all editions read, solved and shown", 10, &mut || {
            black_box(entry.work(black_box(&node), Units::Customary, basis)).ok();
        });
    }
}
