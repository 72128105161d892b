//! A plan takes memory by its size. One test alone in its file: what is allocated is counted for
//! the whole program.

use ledgerboard_core::calculators::rough_in::{Answer, Cable, Input, PlacedBox, Run, What, solve};
use ledgerboard_core::edition::Electrical;
use ledgerboard_core::fields::Form;
use ledgerboard_core::measure::unit::AMPERE;
use ledgerboard_core::measure::{Length, Measure};
use peak_alloc::PeakAlloc;

#[global_allocator]
static PEAK: PeakAlloc = PeakAlloc;

/// One circuit, box after box: the longest way that there is. All cables go through one hole.
fn chain(boxes: i64) -> Input {
    let at = |inches: i64| Some(Length::inches(inches, 1));
    let label = |number: i64| format!("B{number}");
    let places = (0..boxes).map(|number| PlacedBox {
        label: label(number),
        what: if number == 0 { What::Panel } else { What::Receptacle },
        high: at(16),
        x: at(number),
        y: at(0),
        ..PlacedBox::blank()
    });
    let runs = (1..boxes).map(|number| Run {
        from: label(number - 1),
        to: label(number),
        cable: Cable::Nm12x2,
        circuit: "1".to_owned(),
        load: Some(Measure::hundredths(&AMPERE, 1)),
        holes: "H1".to_owned(),
        ..Run::blank()
    });
    Input { boxes: places.collect(), cables: runs.collect(), ..Input::blank() }
}

/// What solving held at once, the answer in it.
fn held(input: &Input) -> (usize, Answer) {
    let before = PEAK.current_usage();
    PEAK.reset_peak_usage();
    let answer = solve(input, Electrical::E2023);
    (PEAK.peak_usage().saturating_sub(before), answer)
}

#[test]
fn twice_the_boxes_take_twice_the_memory() {
    let mut last: Option<usize> = None;
    for boxes in [50, 100, 200, 400, 800] {
        let (held, answer) = held(&chain(boxes));
        assert_eq!(answer.circuits[0].worst.as_ref().unwrap().path.len() as i64, boxes - 1);
        println!("{boxes} boxes: {held} bytes");
        if let Some(last) = last {
            // Lists grow by doubling, so that a step may take half as much more.
            assert!(held * 10 <= last * 26, "{boxes} boxes: {held} bytes after {last}");
        }
        last = Some(held);
    }
}
