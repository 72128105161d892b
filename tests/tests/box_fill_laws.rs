//! Laws of box fill: putting more into a box never makes it emptier.

use ledgerboard_core::calculators::box_fill::{Answer, Input, solve};
use ledgerboard_core::edition::Electrical;
use ledgerboard_core::fields::{Form, Kind, Reader, Row};
use ledgerboard_core::measure::{Units, Volume};
use ledgerboard_core::wire::Node;
use ledgerboard_tests::from_rows::fitting;
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};

fn work(node: &Node, edition: Electrical) -> Option<Answer> {
    solve(&read(node)?, edition).ok()
}

fn read(node: &Node) -> Option<Input> {
    Reader::form(node, Units::Customary).ok().map(|(input, _)| input)
}

fn fill(answer: &Answer) -> Volume {
    answer.sides.iter().fold(Volume::ZERO, |sum, side| sum.plus(side.fill))
}

/// The lists of what goes into a box.
const CONTENTS: [&str; 5] = ["cables", "devices", "wires", "supports", "blocks"];

fn items(list: &str) -> &'static [Row] {
    let row = Input::ROWS.iter().find(|row| row.key == list).expect("a list of this name");
    let Kind::List(item) = row.kind else { panic!("{list} is a list") };
    item.rows
}

#[test]
fn adding_anything_never_lowers_the_fill() {
    for list in CONTENTS {
        let mut runner = TestRunner::new(Config::with_cases(600));
        let cases = (
            fitting(Input::ROWS),
            fitting(items(list)),
            prop::sample::select(Electrical::ALL.to_vec()),
        );
        let compared = std::cell::Cell::new(0);
        runner
            .run(&cases, |(before, item, edition)| {
                let mut after = before.clone();
                let count = before.items(list).len();
                after.put(&format!("{list}.{count}"), item);
                if let (Some(before), Some(after)) = (work(&before, edition), work(&after, edition))
                {
                    compared.set(compared.get() + 1);
                    prop_assert!(fill(&after) >= fill(&before));
                }
                Ok(())
            })
            .unwrap();
        assert!(compared.get() > 60, "{list}: only {} pairs could be compared", compared.get());
    }
}

#[test]
fn a_larger_box_never_turns_within_into_over() {
    let mut runner = TestRunner::new(Config::with_cases(400));
    let cases = (fitting(Input::ROWS), 1_i64..=30_000);
    runner
        .run(&cases, |(mut node, more)| {
            node.put("enclosure", Node::text("marked"));
            let Some(before) = work(&node, Electrical::E2023) else { return Ok(()) };
            let larger = before.body.plus(Volume::hundredths(more)).min(Volume::hundredths(10_000));
            node.put("marked", Node::Text(larger.exact()));
            let Some(after) = work(&node, Electrical::E2023) else { return Ok(()) };
            for (before, after) in before.sides.iter().zip(&after.sides) {
                prop_assert!(after.fill == before.fill && after.spare() >= before.spare());
            }
            Ok(())
        })
        .unwrap();
}

#[test]
fn every_mend_and_every_box_that_is_named_holds_it() {
    let mut runner = TestRunner::new(Config::with_cases(300));
    runner
        .run(&fitting(Input::ROWS), |node| {
            let Some(answer) = work(&node, Electrical::E2020) else { return Ok(()) };
            let input = read(&node).unwrap();
            let named = answer.mends.iter().map(|mend| (&mend.puts, mend.fill, mend.volume));
            let suits = answer.suits.iter().map(|suits| (&suits.puts, suits.fill, suits.volume));
            for (puts, fill, volume) in named.chain(suits) {
                let mut changed = input.write_parts();
                puts.iter().for_each(|(path, value)| changed.put(path, value.clone()));
                let after = work(&changed, Electrical::E2020).expect("what is offered works");
                prop_assert!(after.sides.iter().all(|side| side.fill <= side.volume));
                let side = &after.sides[after.tightest];
                prop_assert_eq!((side.fill, side.volume), (fill, volume));
            }
            Ok(())
        })
        .unwrap();
}
