//! Plastic on the floor and on the walls, and which way a roll goes farther.

use super::input::{Input, Spread};
use super::words as w;
use crate::measure::{Area, Length};
use crate::rules::finish::sheeting::{SHEETING, widths};
use crate::rules::hazards::lead::PLASTIC_PAST;
use crate::say;
use crate::sheet::{Expr, Fault, Faults, Material, Source, Steps};
use crate::words::{Amount, Phrase};

/// One way to lay it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Laid {
    /// Widths side by side.
    pub widths: i64,
    /// Each.
    pub each: Length,
    /// In all.
    pub roll: Length,
}

/// What is covered, and how.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Plastic {
    /// With what turns up.
    pub area: Area,
    /// Along the first side, and along the other: the same where there is one way only.
    pub ways: [Laid; 2],
}

impl Plastic {
    /// The one that takes less of a roll.
    pub fn best(&self) -> Laid {
        self.ways[usize::from(self.goes_across())]
    }

    /// Whether the roll goes farther along the other side.
    fn goes_across(&self) -> bool {
        self.ways[1].roll < self.ways[0].roll
    }

    /// What the roll for the floor is called, with the side that it is laid along.
    pub fn name(&self) -> &'static Phrase {
        if self.goes_across() { &w::ALONG_OTHER } else { &w::ALONG_FIRST }
    }
}

/// A lap is less than the roll is wide.
///
/// # Errors
/// It isn't.
pub fn lap_fits(roll: Length, lap: Length) -> Result<(), Faults> {
    if lap < roll {
        return Ok(());
    }
    let (path, given) = ("lap".to_owned(), lap.exact());
    Err(vec![Fault { path, label: &w::LAP, given, says: say!(w::TOO_FAR_OVER, roll) }])
}

/// Plastic of a floor to buy, by the roll: of rolls of another width, another thing. Whoever asks for
/// the same floor asks under the same key, so that a list shows both shares side by side.
pub fn floor_material(roll: Length, long: Length) -> Material {
    material("plastic floor 6 mil ", &w::M_FLOOR, roll, long)
}

/// The same of walls.
pub(super) fn wall_material(roll: Length, long: Length) -> Material {
    material("plastic wall 6 mil ", &w::M_WALLS, roll, long)
}

fn material(key: &str, name: &'static Phrase, roll: Length, long: Length) -> Material {
    Material { key: [key, &roll.exact()].concat(), name: say!(*name, roll), amount: long.into() }
}

/// Of a roll laid `along` a side, `across` it.
fn laid(
    input: &Input,
    along: Length,
    across: Length,
    [count_key, roll_key]: [&str; 2],
    name: &'static Phrase,
    steps: &mut Steps,
) -> Laid {
    let source = Some(&SHEETING);
    let widths = widths(across, input.roll, input.lap);
    let widths = match steps.amount(count_key, &w::WIDTHS, source, widths) {
        Some(Amount::Count(count)) => count,
        _ => 0,
    };
    let roll = Expr::count(widths).times(Expr::length(along));
    let roll = steps.length(roll_key, name, source, roll).unwrap_or_default();
    Laid { widths, each: along, roll }
}

/// Plastic under all of a floor or round a patch.
pub fn floor(input: &Input, steps: &mut Steps) -> Plastic {
    let (past, source): (Length, &Source) = match input.spread {
        Spread::Room => (input.turn_up, &SHEETING),
        Spread::Patch => (PLASTIC_PAST.value, PLASTIC_PAST.source),
    };
    let both = |side: Length| side.plus(past).plus(past);
    let (long, wide) = (both(input.long), both(input.wide));
    let side = |side| Expr::Sum(vec![Expr::length(side), Expr::count(2).times(Expr::length(past))]);
    let area = side(input.long).times(side(input.wide));
    let area = match steps.amount("plastic", &w::FLOOR, Some(source), area) {
        Some(Amount::Area(area)) => area,
        _ => Area::ZERO,
    };
    let ways = [
        laid(input, long, wide, ["widths-long", "roll-long"], &w::ALONG_FIRST, steps),
        laid(input, wide, long, ["widths-wide", "roll-wide"], &w::ALONG_OTHER, steps),
    ];
    Plastic { area, ways }
}

pub(super) fn walls(input: &Input, steps: &mut Steps) -> Option<Plastic> {
    if !input.walls || input.spread == Spread::Patch {
        return None;
    }
    let round = input.long.plus(input.wide).times(2);
    let area = Expr::length(round).times(Expr::length(input.height));
    let Some(Amount::Area(area)) =
        steps.amount("wall-plastic", &w::WALL_PLASTIC, Some(&SHEETING), area)
    else {
        return None;
    };
    let way = laid(
        input,
        round.plus(input.lap),
        input.height,
        ["wall-widths", "wall-roll"],
        &w::WALL_ROLL,
        steps,
    );
    Some(Plastic { area, ways: [way; 2] })
}
