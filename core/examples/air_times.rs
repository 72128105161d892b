//! Prints how long the air rules take here: one friction factor with its loss, one flow from a
//! pressure, a branch changed, and eight branches on three trunks.

use ledgerboard_core::calculators::duct_tree::{self, From, What};
use ledgerboard_core::calculators::{Calculator, duct_branch};
use ledgerboard_core::fields::Form;
use ledgerboard_core::measure::unit::{CFM, PERCENT};
use ledgerboard_core::measure::{Length, Measure};
use ledgerboard_core::rules::air::run::{DuctKind, Run, flow_at};
use std::hint::black_box;
use std::time::Instant;

fn time(what: &str, times: u32, work: &mut dyn FnMut()) {
    let start = Instant::now();
    (0..times).for_each(|_| work());
    let each = start.elapsed().as_secs_f64() / f64::from(times) * 1e6;
    println!("{what}: {each:.2} µs");
}

fn main() {
    let run = Run::round(DuctKind::Flex, Length::inches(6, 1), Length::inches(1200, 1), None);
    let duct = run.duct();
    time("a loss", 1_000_000, &mut || {
        black_box(black_box(&duct).loss(black_box(100.0)));
    });
    time("a flow from a pressure", 20_000, &mut || {
        black_box(flow_at(black_box(0.08), 1e6, &|cfm| duct.loss(cfm).drop));
    });
    let branch = duct_branch::DuctBranch::sample();
    time("a changed branch", 5_000, &mut || {
        black_box(duct_branch::solve(black_box(&branch))).ok();
    });
    let piece = |what, size, feet: i64| duct_tree::Piece {
        what,
        diameter: Some(Length::inches(size, 1)),
        length: Some(Length::inches(feet * 12, 1)),
        ..duct_tree::Piece::blank()
    };
    let mut pieces = Vec::new();
    for trunk in 0..3 {
        let from = if trunk == 0 { From::Handler } else { From::End };
        pieces.push(duct_tree::Piece { from, ..piece(What::Trunk, 12 - 2 * trunk, 15) });
        for branch in 0..if trunk == 2 { 2 } else { 3 } {
            pieces.push(piece(What::Branch, 6, 30 + 12 * branch));
        }
    }
    pieces[3].open = Some(Measure::whole(&PERCENT, 40));
    let total = Some(Measure::whole(&CFM, 800));
    let tree = duct_tree::Input { pieces, total, ..duct_tree::Input::blank() };
    let answer = duct_tree::solve(&tree).expect("eight branches");
    println!(
        "eight branches: {} steps, {:e} left over",
        answer.flows.steps, answer.flows.left_over
    );
    time("eight branches, blocked, all open and at the other end", 2_000, &mut || {
        black_box(duct_tree::solve(black_box(&tree))).ok();
    });
}
