//! The answer as it is shown.

use super::amounts::{joints, tape_by_area};
use super::words as w;
use super::{Answer, By, Input};
use crate::measure::Length;
use crate::rules::finish::compound::{Feather, Package, RULE, TAPERED, pail_for};
use crate::rules::finish::levels::{LEVELS, Level};
use crate::say;
use crate::sheet::{Caution, Figure, Material, Part, PartRow, Sheet, Source};
use crate::wire::Node;
use crate::words::{Amount, Arg, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let flat = input.level.flat();
    Sheet {
        headline: Figure::new("wet", headline(input), answer.wet.into()),
        lead: None,
        next: (flat > 0).then(|| say!(w::NEXT, input.level.key(), Amount::Count(flat))),
        figures: figures(input, answer),
        checks: Vec::new(),
        working: answer.working.0.clone(),
        parts: parts(input, answer),
        materials: materials(input, answer),
        cautions: cautions(Some(input)),
        drawing: None,
    }
}

/// What the answer goes by stands in its name.
fn headline(input: &Input) -> Text {
    match (input.by, input.area) {
        (By::Area, Some(area)) => say!(w::WET_BY_AREA, area),
        _ => (&w::WET).into(),
    }
}

fn figures(input: &Input, answer: &Answer) -> Vec<Figure> {
    let mut all = Vec::new();
    let mut add = |key, name: Text, amount: Option<Amount>| {
        all.extend(amount.map(|amount| Figure::new(key, name, amount)));
    };
    let [low, high] = answer.range;
    add("low", (&w::LOW).into(), Some(low.into()));
    add("high", (&w::HIGH).into(), Some(high.into()));
    if let (By::Joints, Some([low, likely, high])) = (input.by, answer.by_area) {
        add("rule-low", (&w::RULE_LOW).into(), Some(low.into()));
        add("rule", (&w::RULE).into(), Some(likely.into()));
        add("rule-high", (&w::RULE_HIGH).into(), Some(high.into()));
    }
    let (weight, package) = match input.kind.package() {
        Package::Pail(_) => (&w::WEIGHT, say!(w::PAILS, pail_for(answer.wet))),
        Package::Bag(bag, _) => (&w::POWDER, say!(w::BAGS, bag)),
    };
    add("weight", weight.into(), Some(answer.weight.into()));
    add("packages", package, Some(answer.packages.into()));
    let most = match input.kind.package() {
        Package::Pail(_) => say!(w::PAILS_MOST, pail_for(answer.range[1])),
        Package::Bag(bag, _) => say!(w::BAGS_MOST, bag),
    };
    add("packages-high", most, Some(answer.packages_at_most.into()));
    add("water", (&w::WATER).into(), answer.water.map(Amount::Measure));
    let tape = (answer.tape > Length::ZERO).then_some(answer.tape.into());
    add("tape", (&w::TAPE).into(), tape);
    let some = |count: i64| (count > 0).then_some(Amount::Count(count));
    add("screws", (&w::ALL_SCREWS).into(), some(answer.screws));
    add("new-screws", (&w::NEW_SCREWS).into(), some(answer.new_screws));
    all
}

fn row(name: &'static Phrase, value: Text) -> PartRow {
    PartRow { name: name.into(), value, puts: Vec::new() }
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let mut both = Vec::new();
    for (name, range) in [(&w::WHY_JOINTS, answer.by_joints), (&w::WHY_RULE, answer.by_area)] {
        both.extend(range.map(|[low, likely, high]| row(name, say!(w::SPREAD, likely, low, high))));
    }
    if let Some(area) = input.area {
        both.push(row(&w::TAPE_RULE, say!(w::JUST, tape_by_area(area))));
        both.push(row(&w::TAPE_JOINTS, say!(w::JUST, joints(input))));
    }
    let mut all = vec![Part::plain("two-ways", &w::WHY, Some(&w::WHY_NOTE), both)];
    if input.by == By::Joints {
        let [least, _, most] = input.kind.shrinks();
        let rows = vec![
            row(&w::DRIVER_TAPER, say!(w::DRIVER_TAPER_SAYS, TAPERED[0], TAPERED[2])),
            row(
                &w::DRIVER_FEATHER,
                say!(w::DRIVER_TAPER_SAYS, Feather::W18.takes(), Feather::W36.takes()),
            ),
            row(&w::DRIVER_SHRINK, say!(w::DRIVER_SHRINK_SAYS, least, most)),
        ];
        all.push(Part::plain("drivers", &w::DRIVERS, None, rows));
    }
    let mut rows = Vec::new();
    for level in Level::ALL {
        let puts = vec![("level".to_owned(), Node::text(level.key()))];
        let puts = if *level == input.level { Vec::new() } else { puts };
        rows.push(PartRow { name: level.label().into(), value: level.asks().into(), puts });
    }
    all.push(Part::plain("levels", &w::LEVELS, None, rows));
    all
}

fn materials(input: &Input, answer: &Answer) -> Vec<Material> {
    let mut all = Vec::new();
    let mut add = |key: String, name: Text, amount: Amount| {
        if amount.raw() > 0 {
            all.push(Material { key, name, amount });
        }
    };
    let name = Text { phrase: &w::M_COMPOUND, args: vec![Arg::from(input.kind.label())] };
    let amount = match input.kind.package() {
        Package::Pail(_) => answer.wet,
        Package::Bag(..) => answer.weight,
    };
    add(["compound ", input.kind.key()].concat(), name, amount.into());
    add("joint-tape".to_owned(), (&w::M_TAPE).into(), answer.tape.into());
    if input.by == By::Joints {
        add("corner-bead".to_owned(), (&w::M_BEAD).into(), input.beads.into());
    }
    let screws = answer.screws.saturating_add(answer.new_screws);
    add("drywall-screw".to_owned(), (&w::M_SCREW).into(), Amount::Count(screws));
    all
}

pub(super) fn cautions(input: Option<&Input>) -> Vec<Caution> {
    let mut all = Vec::new();
    let mut add = |phrase: &'static Phrase, source: Option<&'static Source>| {
        all.push(Caution { text: phrase.into(), source });
    };
    let finishes = input.is_none_or(|it| it.mends || it.level.flat() > 0);
    if finishes {
        add(&w::DUST, None);
    }
    if input.is_none_or(|it| matches!(it.kind.package(), Package::Bag(..))) {
        add(&w::POWDER_DUST, None);
    }
    if input.is_none_or(|it| it.mends) {
        add(&w::ELECTRIC, None);
    }
    if finishes {
        add(&w::GAPS, None);
    }
    add(&w::CONTRACT, Some(&LEVELS));
    if input.is_some_and(|it| it.area.is_some()) {
        add(RULE.says, Some(&RULE));
    }
    if input.is_some_and(|it| it.by == By::Area) {
        add(&w::TAPE_SHORT, None);
    }
    all
}
