//! What else would fit, which boxes would hold it, and what mends a box that is over. Each is
//! tried by working the box again, never by a formula of its own.

use super::choices::{AddKind, CutInto};
use super::enclosure::{Enclosure, Ring, Volumes, volumes};
use super::fill::{Side, sides, tightest};
use super::fit::is_deep_enough;
use super::input::{Add, Cable, Device, Input, STAMPS};
use super::shown as s;
use crate::edition::Electrical;
use crate::fields::{Field, Form};
use crate::measure::{Rounding, Volume, divide};
use crate::rules::electrical::box_fill::LARGEST_BOX;
use crate::rules::electrical::cable_sizes::Sheathed;
use crate::rules::electrical::metal_boxes::{Family, Metal, TABLE};
use crate::say;
use crate::sheet::Put;
use crate::wire::Node;
use crate::words::Text;

/// What a side would still take, each line alone.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Room {
    /// More cables of each kind.
    pub cables: Vec<(Sheathed, i64)>,
    /// One more device, one gang wide, on the largest wire there.
    pub device: bool,
}

/// A box that would hold it all, with room to spare or none.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Suits {
    /// The box; none for any box with this volume marked.
    pub metal: Option<&'static Metal>,
    /// How many ganged.
    pub gangs: i64,
    /// What would be in it, on its tightest side.
    pub fill: Volume,
    /// What it holds there.
    pub volume: Volume,
    /// The inputs that make it so.
    pub puts: Vec<Put>,
    /// The same contents in that box.
    pub with: Input,
}

/// A change that makes a box fit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mend {
    /// What to do.
    pub name: Text,
    /// What would be in it, on its tightest side.
    pub fill: Volume,
    /// What it would hold there.
    pub volume: Volume,
    /// The inputs that make it so.
    pub puts: Vec<Put>,
    /// What of the wall it touches.
    pub wall: Wall,
    /// The box so mended.
    pub mended: Input,
}

/// What a change of a box does to a wall that is finished.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wall {
    /// The box stays; what is added goes on its front.
    Kept,
    /// Another box goes into the same opening.
    Touched,
    /// The opening gets wider.
    Opened,
}

/// The most cables of one kind that are tried.
const MOST_TRIED: i64 = 20;
/// The largest volume that a single plaster ring or raised cover is marked with, as a guess of
/// what is on the shelf. Common practice.
const LARGEST_RING: Volume = Volume::hundredths(750);

/// The tightest side of an input, if all its sides hold what is in them.
fn holds(input: &Input, edition: Electrical) -> Option<(Volume, Volume)> {
    let volumes = volumes(input).ok()?;
    let sides = sides(input, edition, &volumes).ok()?;
    let all = sides.iter().all(|side| side.fill <= side.volume);
    let side = sides.get(tightest(&sides))?;
    (all && is_deep_enough(input)).then_some((side.fill, side.volume))
}

pub(super) fn room(input: &Input, edition: Electrical, now: &[Side]) -> Vec<Room> {
    let kinds = [
        Sheathed::Nm14x2,
        Sheathed::Nm14x3,
        Sheathed::Nm12x2,
        Sheathed::Nm12x3,
        Sheathed::Nm10x2,
        Sheathed::Nm10x3,
    ];
    let each = (1..).zip(now).map(|(number, _)| {
        let fits = |changed: &Input| {
            let volumes = volumes(changed).ok()?;
            let sides = sides(changed, edition, &volumes).ok()?;
            let side = sides.get(usize::try_from(number - 1).ok()?)?;
            (side.fill <= side.volume).then_some(())
        };
        let more = |cable, count| {
            let mut changed = input.clone();
            changed.cables.push(Cable { cable, count, side: number, ..Cable::blank() });
            fits(&changed).is_some()
        };
        let most = |cable| (1..=MOST_TRIED).take_while(|count| more(cable, *count)).count() as i64;
        let mut changed = input.clone();
        changed.devices.push(Device { side: number, ..Device::blank() });
        Room {
            cables: kinds.into_iter().map(|kind| (kind, most(kind))).collect(),
            device: fits(&changed).is_some(),
        }
    });
    each.collect()
}

/// The smallest boxes that hold it all without rings: any marked one, then rows of the table.
pub(super) fn suits(input: &Input, edition: Electrical, now: &Volumes) -> Vec<Suits> {
    let bare = Input { adds: Vec::new(), ..input.clone() };
    let mut all = Vec::new();
    if let Some(needed) = least_marked(&bare, edition, now) {
        let changed = Input { enclosure: Enclosure::Marked, marked: needed, ..bare.clone() };
        if let Some((fill, volume)) = holds(&changed, edition) {
            let puts = marked_puts(needed);
            let gangs = input.gangs;
            all.push(Suits { metal: None, gangs, fill, volume, puts, with: changed });
        }
    }
    let rows: Vec<Suits> = candidates(&bare)
        .filter_map(|(at, metal)| {
            let changed = Input { enclosure: Enclosure::Metal(at), ..bare.clone() };
            let (fill, volume) = holds(&changed, edition)?;
            let gangs = if metal.family.gangs() { input.gangs } else { 1 };
            let puts = vec![
                ("enclosure".to_owned(), changed.enclosure.write()),
                ("adds".to_owned(), Node::List(Vec::new())),
            ];
            Some(Suits { metal: Some(metal), gangs, fill, volume, puts, with: changed })
        })
        .collect();
    let start = all.len();
    for suits in rows {
        let key = |suits: &Suits| (suits.volume, suits.metal.map(|metal| metal.key));
        let place = all[start..].partition_point(|other| key(other) <= key(&suits));
        all.insert(start + place, suits);
    }
    all.truncate(start + 4);
    all
}

/// Rows of the table that could stand in for the box: for masonry and cast ones only their like.
fn candidates(input: &Input) -> impl Iterator<Item = (usize, &'static Metal)> {
    let family = input.enclosure.metal().map(|metal| metal.family);
    let special =
        |family: Family| matches!(family, Family::Masonry | Family::Cast | Family::CastMany);
    let gangs = input.gangs;
    TABLE.iter().enumerate().filter(move |(_, metal)| {
        let like = if special(metal.family) { Some(metal.family) == family } else { true };
        let wide = metal.family.gangs() || metal.family.devices() >= gangs;
        like && wide && family.is_none_or(|family| !special(family) || family == metal.family)
    })
}

/// The least volume to look for on a box, to the tenth that boxes are marked in: the fullest
/// side's fill, scaled up by gangs, and what barriers take.
fn least_marked(input: &Input, edition: Electrical, now: &Volumes) -> Option<Volume> {
    let sides = sides(input, edition, now).ok()?;
    let all: i64 = now.sides.iter().sum();
    let needed = sides.iter().map(|side| up(side.fill, all, side.gangs)).max()?;
    let needed = tenth_up(needed.plus(now.barriers)).max(Volume::hundredths(100));
    (needed <= LARGEST_BOX).then_some(needed)
}

fn up(volume: Volume, over: i64, under: i64) -> Volume {
    let part = i128::from(volume.units()) * i128::from(over);
    let units = divide(part, i128::from(under.max(1)), Rounding::Up);
    Volume::from_units(i64::try_from(units).unwrap_or(i64::MAX))
}

fn tenth_up(volume: Volume) -> Volume {
    let tenth = Volume::hundredths(10).units();
    let tenths = divide(i128::from(volume.units()), i128::from(tenth), Rounding::Up);
    Volume::from_units(i64::try_from(tenths).unwrap_or(0).saturating_mul(tenth))
}

fn marked_puts(volume: Volume) -> Vec<Put> {
    vec![
        ("enclosure".to_owned(), Enclosure::Marked.write()),
        ("marked".to_owned(), volume.write()),
        ("adds".to_owned(), Node::List(Vec::new())),
    ]
}

/// What makes an over-full box fit, by least work: a marked ring, an extension, a cut-in box, a
/// deeper box, more gangs, another box. Each is worked through and fits.
pub(super) fn mends(input: &Input, edition: Electrical) -> Vec<Mend> {
    let mut mends = Vec::new();
    mends.extend(ring(input, edition));
    mends.extend(extension(input, edition));
    let same_opening = cut_in(input, edition);
    let wider = if same_opening.is_none() { wider_cut_in(input, edition) } else { None };
    // A cut-in box is the least work in a finished wall; in open framing nothing has to clamp to
    // one, and it comes last.
    if input.cut == CutInto::Open {
        mends.extend(deeper(input, edition));
        mends.extend(next_gang(input, edition));
        mends.extend(same_opening);
        mends.extend(wider);
    } else {
        mends.extend(same_opening);
        mends.extend(deeper(input, edition));
        mends.extend(wider);
        mends.extend(next_gang(input, edition));
    }
    if mends.is_empty() {
        mends.extend(another(input, edition));
    }
    mends
}

fn tried(
    mended: Input,
    edition: Electrical,
    name: Text,
    puts: Vec<Put>,
    wall: Wall,
) -> Option<Mend> {
    let (fill, volume) = holds(&mended, edition)?;
    let name = if wall == Wall::Opened { say!(s::MEND_OPENS, name) } else { name };
    Some(Mend { name, fill, volume, puts, wall, mended })
}

/// The least and the most that cut-in boxes of one, two and three gangs are marked with, as a
/// guess of what is on the shelf. Common practice.
const CUT_IN: [(Volume, Volume); 3] = [
    (Volume::hundredths(1800), Volume::hundredths(2250)),
    (Volume::hundredths(2500), Volume::hundredths(3400)),
    (Volume::hundredths(4400), Volume::hundredths(5400)),
];

/// For an old device box in a finished wall: a marked box that clamps to the board from the front.
fn cut_in(input: &Input, edition: Electrical) -> Option<Mend> {
    cut_in_of(input, edition, input.gangs, Wall::Touched)
}

/// The same, of more gangs, where no other holds it.
fn wider_cut_in(input: &Input, edition: Electrical) -> Option<Mend> {
    (input.gangs + 1..=3).find_map(|gangs| cut_in_of(input, edition, gangs, Wall::Opened))
}

fn cut_in_of(input: &Input, edition: Electrical, gangs: i64, wall: Wall) -> Option<Mend> {
    let family = input.enclosure.metal()?.family;
    matches!(family, Family::Device | Family::Handy).then_some(())?;
    let (smallest, most) = *CUT_IN.get(usize::try_from(gangs - 1).ok()?)?;
    let adds = Vec::new();
    let bare = Input { enclosure: Enclosure::Marked, marked: most, gangs, adds, ..input.clone() };
    let least = least_marked(&bare, edition, &volumes(&bare).ok()?)?.max(smallest);
    STAMPS.iter().copied().filter(|stamp| (least..=most).contains(stamp)).find_map(|marked| {
        let changed = Input { marked, ..bare.clone() };
        let mut puts = marked_puts(marked);
        let name = if gangs == input.gangs {
            say!(s::MEND_CUT_IN, marked)
        } else {
            puts.push(("gangs".to_owned(), Node::Whole(gangs)));
            say!(s::MEND_CUT_IN_WIDER, gangs, marked)
        };
        tried(changed, edition, name, puts, wall)
    })
}

fn with_add(input: &Input, add: Add) -> (Input, Vec<Put>) {
    let path = ["adds", &input.adds.len().to_string()].join(".");
    let puts = vec![(path, add.write_parts())];
    let mut changed = input.clone();
    changed.adds.push(add);
    (changed, puts)
}

/// Rings and raised covers go on square and octagon boxes; what a marked box takes is its maker's
/// to say. Common practice.
fn ring(input: &Input, edition: Electrical) -> Option<Mend> {
    if input.enclosure.metal().is_some_and(|metal| !metal.family.extends()) {
        return None;
    }
    let volumes = volumes(input).ok()?;
    let all: i64 = volumes.sides.iter().sum();
    let sides = sides(input, edition, &volumes).ok()?;
    let short =
        sides.iter().map(|side| up(Volume::ZERO.minus(side.spare()), all, side.gangs)).max()?;
    let volume = tenth_up(short);
    if volume > LARGEST_RING {
        return None;
    }
    let (changed, puts) = with_add(input, Add { volume, ..Add::blank() });
    tried(changed, edition, say!(s::MEND_RING, volume), puts, Wall::Kept)
}

fn extension(input: &Input, edition: Electrical) -> Option<Mend> {
    let family = input.enclosure.metal()?.family;
    family.extends().then_some(())?;
    by_volume(family).find_map(|(at, metal)| {
        let add = Add { kind: AddKind::Extension, ring: Ring::of(at)?, ..Add::blank() };
        let (changed, puts) = with_add(input, add);
        tried(changed, edition, say!(s::MEND_EXTENSION, metal.name), puts, Wall::Kept)
    })
}

fn by_volume(family: Family) -> impl Iterator<Item = (usize, &'static Metal)> {
    let mut rows: Vec<(usize, &'static Metal)> = Vec::new();
    for (at, metal) in TABLE.iter().enumerate().filter(|(_, metal)| metal.family == family) {
        let place = rows.partition_point(|(_, other)| other.volume <= metal.volume);
        rows.insert(place, (at, metal));
    }
    rows.into_iter()
}

fn deeper(input: &Input, edition: Electrical) -> Option<Mend> {
    let Some(metal) = input.enclosure.metal() else {
        return larger_mark(input, edition);
    };
    by_volume(metal.family).filter(|(_, row)| row.volume > metal.volume).find_map(|(at, row)| {
        let enclosure = Enclosure::Metal(at);
        let changed = Input { enclosure, ..input.clone() };
        let puts = vec![("enclosure".to_owned(), enclosure.write())];
        tried(changed, edition, say!(s::MEND_BOX, row.name), puts, Wall::Touched)
    })
}

/// The smallest common stamp that holds it, else the least that would.
fn larger_mark(input: &Input, edition: Electrical) -> Option<Mend> {
    let volumes = volumes(input).ok()?;
    let least = least_marked(input, edition, &volumes)?;
    let stamps = STAMPS.iter().copied().filter(|stamp| *stamp > input.marked);
    stamps.chain([least]).find_map(|marked| {
        let changed = Input { marked, ..input.clone() };
        let puts = vec![("marked".to_owned(), marked.write())];
        tried(changed, edition, say!(s::MEND_MARKED, marked), puts, Wall::Touched)
    })
}

fn next_gang(input: &Input, edition: Electrical) -> Option<Mend> {
    input.enclosure.metal().filter(|metal| metal.family.gangs())?;
    (input.gangs + 1..=6).find_map(|gangs| {
        let changed = Input { gangs, ..input.clone() };
        let puts = vec![("gangs".to_owned(), Node::Whole(gangs))];
        tried(changed, edition, say!(s::MEND_GANG, gangs), puts, Wall::Opened)
    })
}

fn another(input: &Input, edition: Electrical) -> Option<Mend> {
    let now = volumes(input).ok()?;
    let suits = suits(input, edition, &now).into_iter().next()?;
    let name = match suits.metal {
        Some(metal) => say!(s::MEND_OTHER, metal.name),
        None => say!(s::MEND_MARKED, suits.with.marked),
    };
    tried(suits.with, edition, name, suits.puts, Wall::Opened)
}
