//! The answer as it is shown.

use super::Calculator;
use super::words as w;
use super::{Answer, Depth, Input, Season, deep, season, weight};
use crate::measure::Measure;
use crate::rules::compare::{ask, at_least, at_most};
use crate::rules::residential::blown::BLOWN;
use crate::rules::residential::heat::{AIR, THROUGH};
use crate::say;
use crate::sheet::{Check, Expr, Figure, Material, Part, PartRow, Sheet, Source, Step, Verdict};
use crate::words::{Amount, Arg, Phrase, Text};

/// The keys and names of a season's figures: wall, air, ceiling, all, air from the register, and
/// what is saved where all comes to less.
type Names = [(&'static str, &'static Phrase); 6];

const HEATING: Names = [
    ("heat-wall", &w::HEAT_WALL),
    ("heat-air", &w::HEAT_AIR),
    ("heat-ceiling", &w::HEAT_CEILING),
    ("heat", &w::HEAT),
    ("heat-cfm", &w::HEAT_CFM),
    ("heat-less", &w::HEAT_LESS),
];
const COOLING: Names = [
    ("cool-wall", &w::COOL_WALL),
    ("cool-air", &w::COOL_AIR),
    ("cool-ceiling", &w::COOL_CEILING),
    ("cool", &w::COOL),
    ("cool-cfm", &w::COOL_CFM),
    ("cool-less", &w::COOL_LESS),
];

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let ((key, name), total) = whole(HEATING, &answer.heating);
    Sheet {
        headline: Figure::plain(key, name, total.into()),
        lead: None,
        next: None,
        figures: figures(answer),
        checks: checks(input, answer),
        working: working(input, answer),
        parts: parts(input),
        materials: materials(input, answer),
        cautions: super::AddedHeat::cautions(None),
        drawing: None,
    }
}

/// What all comes to, more or less, by its name and without a sign.
fn whole(names: Names, it: &Season) -> ((&'static str, &'static Phrase), Measure) {
    let less = it.total.millionths() < 0;
    if less { (names[5], it.total.of_same(-it.total.millionths())) } else { (names[3], it.total) }
}

fn figures(answer: &Answer) -> Vec<Figure> {
    let mut all = Vec::new();
    let mut add = |key, name, amount: Option<Amount>| {
        all.extend(amount.map(|amount| Figure::plain(key, name, amount)));
    };
    for (names, season) in [(HEATING, Some(answer.heating)), (COOLING, answer.cooling)] {
        let Some(season) = season else { continue };
        let (all, total) = whole(names, &season);
        let Season { wall, air, ceiling, cfm, .. } = season;
        // The headline has its own place.
        let total = (names[3] != HEATING[3]).then_some(total);
        for ((key, name), measure) in [
            (names[0], Some(wall)),
            (names[1], Some(air)),
            (names[2], ceiling),
            (all, total),
            (names[4], cfm),
        ] {
            add(key, name, measure.map(Amount::Measure));
        }
    }
    if let Some(depth) = answer.depth {
        add("depth", &w::DEPTH, Some(depth.deep.into()));
        add("weight", &w::WEIGHT, Some(depth.weight.into()));
    }
    all
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all = Vec::new();
    if let (true, Some(r), Some([first, second, _])) =
        (input.ceiling.count, input.ceiling.r, input.ceiling.zone.ceilings())
    {
        let most = if first.value > second.value { first } else { second };
        let check = at_least("ceiling-r", (&w::CHECK_R).into(), r, most);
        all.push(if check.verdict == Verdict::Over { ask(check, &w::ASK_R) } else { check });
    }
    if let Some(depth) = answer.depth {
        let bears = input.blown.board.bears();
        all.push(at_most("sag", (&w::CHECK_SAG).into(), depth.weight, bears));
    }
    all
}

/// The steps as they come together: one way in, so that the page carries it once.
struct Steps(Vec<Step>);

impl Steps {
    fn add(
        &mut self,
        (key, name): (&str, &'static Phrase),
        source: Option<&'static Source>,
        expr: Option<Expr>,
    ) {
        let (key, name) = (key.to_owned(), name.into());
        self.0.extend(expr.map(|expr| Step { key, name, expr, source }));
    }

    fn season(&mut self, input: &Input, names: Names, it: &Season, supply: Option<Measure>) {
        let degrees = it.degrees;
        self.add(names[0], Some(&THROUGH), season::wall(input, degrees));
        self.add(names[1], Some(&AIR), Some(season::air(input, degrees)));
        self.add(names[2], Some(&THROUGH), season::ceiling(input, degrees));
        match season::saved(it) {
            Some(saved) => self.add(names[5], None, Some(saved)),
            None => self.add(names[3], None, Some(season::total(it.wall, it.air, it.ceiling))),
        }
        let cfm = it.cfm.and(supply).map(|supply| season::cfm(it.total, supply));
        self.add(names[4], Some(&AIR), cfm);
    }
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut all = Steps(Vec::new());
    all.season(input, HEATING, &answer.heating, input.supply_heat);
    if let Some(cooling) = &answer.cooling {
        all.season(input, COOLING, cooling, input.supply_cool);
    }
    if let (Some(Depth { per_inch, density, deep: depth, .. }), Some(r)) =
        (answer.depth, input.blown.r)
    {
        all.add(("depth", &w::DEPTH), Some(&BLOWN), Some(deep(r, per_inch)));
        all.add(("weight", &w::WEIGHT), Some(&BLOWN), Some(weight(depth, density)));
    }
    all.0
}

fn parts(input: &Input) -> Vec<Part> {
    let zone = input.ceiling.zone;
    let (Some(ceilings), Some(walls)) = (zone.ceilings(), zone.walls()) else {
        return Vec::new();
    };
    if !input.ceiling.count {
        return Vec::new();
    }
    let mut rows = Vec::new();
    let mut read = |phrase, year: &str, value| {
        let name = Text { phrase, args: vec![Arg::from(year)] };
        rows.push(PartRow { name, value, puts: Vec::new() });
    };
    let [first, second, third] = ceilings.map(|limit| limit.value);
    read(&w::CEILING_IN, "2018", say!(w::JUST, first));
    read(&w::CEILING_IN, "2021", say!(w::JUST, second));
    read(&w::CEILING_IN, "2024", say!(w::FROM_MEMORY, third));
    read(&w::WALL_IN, "2018", say!(w::JUST, walls[0]));
    read(&w::WALL_IN, "2021", say!(w::JUST, walls[1]));
    let (title, note) = ((&w::BY_EDITION).into(), Some((&w::BY_EDITION_NOTE).into()));
    vec![Part::new("by-edition", title, note, rows)]
}

fn materials(input: &Input, answer: &Answer) -> Vec<Material> {
    let mut all = Vec::new();
    if let (Some(depth), true, Some(area)) = (answer.depth, input.ceiling.count, input.ceiling.area)
    {
        let key = ["blown ", input.blown.kind.key(), " ", &depth.deep.exact()].concat();
        let name = say!(w::M_FILL, depth.deep);
        all.push(Material { key, name, amount: area.into() });
    }
    all
}
