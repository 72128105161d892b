//! The plan as it is shown once it is open.

use super::amounts::{Drivers, drivers};
use super::plastic::wall_material;
use super::words as w;
use super::{Amounts, Answer, Input, Laid, Painted, Plastic, floor_material};
use crate::rules::compare::{Limit, at_least, at_most, is_at_most, settle};
use crate::rules::finish::texture::{AT_ONCE, BENCH, HEAT, HIGH, PAINTED, SOAK};
use crate::rules::hazards::HOUSE;
use crate::say;
use crate::sheet::{Caution, Check, Figure, Material, Part, PartRow, Sheet};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let next = match input.painted {
        Painted::No if input.patch.is_some() => &w::NEXT_WEIGHED,
        Painted::No => &w::NEXT,
        Painted::NotSaid => &w::ASK_WATER,
        Painted::Yes => PAINTED.says,
    };
    Sheet {
        headline: Figure::new("wet", wet(answer), answer.ends[1].wet.into()),
        lead: None,
        next: Some(next.into()),
        figures: figures(answer),
        checks: checks(input),
        working: answer.working.0.clone(),
        parts: parts(input, answer),
        materials: materials(input, answer),
        cautions: cautions(input),
        drawing: None,
    }
}

/// What the answer is called: with its range, where it has one.
fn wet(answer: &Answer) -> Text {
    let [low, _, high] = [0, 1, 2].map(|end| answer.ends[end].wet);
    if low == high { (&w::WET).into() } else { say!(w::WET_RANGE, low, high) }
}

fn materials(input: &Input, answer: &Answer) -> Vec<Material> {
    let mut all = vec![floor_material(input.roll, answer.floor.best().roll)];
    all.extend(answer.walls.map(|walls| wall_material(input.roll, walls.best().roll)));
    all.push(Material {
        key: "bags heavy".to_owned(),
        name: (&w::M_BAGS).into(),
        // What nobody weighed may be the heavy kind.
        amount: answer.ends[if input.patch.is_some() { 1 } else { 2 }].bags.into(),
    });
    all
}

fn figures(answer: &Answer) -> Vec<Figure> {
    let Amounts { volume, dry, water, fills, heaped, bags, hours, crew, .. } = answer.ends[1];
    let mut all = Vec::new();
    let mut add = |key, name, amount: Amount| all.push(Figure::plain(key, name, amount));
    add("bags", &w::BAGS, bags.into());
    add("water", &w::SPRAYED, water.into());
    add("fills", &w::FILLS, fills.into());
    add("crew", &w::CREW, crew.into());
    add("hours", &w::HOURS, hours.into());
    add("area", &w::STRIPPED, answer.area.into());
    add("volume", &w::VOLUME, Amount::Room(volume));
    add("dry", &w::DRY, dry.into());
    add("heaped", &w::HEAPED, Amount::Room(heaped));
    add("plastic", &w::FLOOR, answer.floor.area.into());
    add("roll", &w::ROLL_ALL, answer.roll.into());
    add("floor-roll", answer.floor.name(), answer.floor.best().roll.into());
    if let Some(Plastic { area, ways: [way, _] }) = answer.walls {
        add("wall-plastic", &w::WALL_PLASTIC, area.into());
        add("wall-roll", &w::WALL_ROLL, way.roll.into());
    }
    all
}

fn checks(input: &Input) -> Vec<Check> {
    let needed = Limit { value: 1, source: &PAINTED };
    let takes = i64::from(input.painted == Painted::No);
    let water = at_least("takes-water", (&w::CHECK_WATER).into(), takes, needed);
    let water = match input.painted {
        Painted::No => water,
        Painted::NotSaid => settle(water, &w::ASK_WATER),
        Painted::Yes => settle(water, PAINTED.says),
    };
    let high = at_most("high", (&w::CHECK_HIGH).into(), input.height, BENCH);
    let high = if is_at_most(input.height, BENCH) { high } else { settle(high, HIGH.says) };
    vec![water, high]
}

/// What a row is called, and where its value comes from.
type Row<T> = (&'static Phrase, fn(&T) -> Amount);

/// Three ends, or the one where they are the same.
fn three([low, likely, high]: [Amount; 3]) -> Text {
    if low == high { say!(w::ONE, likely) } else { say!(w::THREE, low, likely, high) }
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let row = |name: &'static Phrase, value| PartRow { name: name.into(), value, puts: Vec::new() };
    let ends = |of: fn(&Amounts) -> Amount| three([0, 1, 2].map(|end| of(&answer.ends[end])));
    let ranges: [Row<Amounts>; 6] = [
        (&w::DRY, |it| it.dry.into()),
        (&w::SPRAYED, |it| it.water.into()),
        (&w::WET, |it| it.wet.into()),
        (&w::BAGS, |it| it.bags.into()),
        (&w::HOURS, |it| it.hours.into()),
        (&w::CREW, |it| it.crew.into()),
    ];
    let drive: [Row<Drivers>; 5] = [
        (&w::THICK, |it| it.thick.into()),
        (&w::DENSITY, |it| it.density.into()),
        (&w::WATER, |it| it.water.into()),
        (&w::PASSES, |it| it.passes.into()),
        (&w::BULKING, |it| it.bulking.into()),
    ];
    let by = [0, 1, 2].map(|end| drivers(input, end));
    let laid = |Laid { widths, each, roll }: Laid| say!(w::LAID, widths, each, roll);
    let mut all = Vec::new();
    let mut add = |key, title, note, rows| Part::add(&mut all, key, title, note, rows);
    let rows = ranges.into_iter().map(|(name, of)| row(name, ends(of))).collect();
    add("ranges", &w::RANGES, Some(&w::RANGES_NOTE), rows);
    let mut rows = Vec::new();
    for (name, of) in drive {
        rows.push(row(name, three([0, 1, 2].map(|end| of(&by[end])))));
    }
    rows.push(row(&w::SOAKS, (&SOAK).into()));
    rows.push(row(&w::WETTED, three(AT_ONCE.map(Amount::from))));
    add("drivers", &w::DRIVERS, None, rows);
    let [first, other] = answer.floor.ways;
    let mut rows = vec![row(&w::ALONG_FIRST, laid(first)), row(&w::ALONG_OTHER, laid(other))];
    if let Some(walls) = answer.walls {
        rows.push(row(&w::WALL_ROLL, laid(walls.ways[0])));
    }
    add("ways", &w::WAYS, None, rows);
    all
}

fn cautions(input: &Input) -> Vec<Caution> {
    let mut all = Caution::all(&[
        (&w::POWER, None),
        (&HOUSE, None),
        (&w::SEAL, None),
        (&w::MASK, None),
        (&w::OTHER, None),
        (&w::SAG, None),
        (HEAT.says, Some(&HEAT)),
        (HIGH.says, Some(&HIGH)),
    ]);
    // Above a bench, it asks.
    if !is_at_most(input.height, BENCH) {
        all.pop();
    }
    all
}
