//! A vault: the ceiling slopes up from today's height at its low walls.

use super::words as w;
use super::{Input, Ridge, Shape, fault};
use crate::measure::{Area, Length, Measure, Rounding, Volume, divide, unit};
use crate::rules::residential::ceiling_height::{COUNTED_FROM, LIVED_IN};
use crate::rules::solids::slanted;
use crate::say;
use crate::sheet::Faults;

/// A vault's parts, worked as `rules::solids` says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Vault {
    /// From a low wall to the one across: both low, or one low and one high.
    pub across: Length,
    /// Along the ridge or the high wall.
    pub along: Length,
    /// Slopes: two or one.
    pub slopes: i64,
    /// The run of one slope.
    pub run: Length,
    /// From the low walls' top to the highest, to the nearest nanometre.
    pub rise: Length,
    /// Along the slope, from low to high, to the nearest nanometre.
    pub slant: Length,
    /// Of all slopes.
    pub ceiling: Area,
    /// Both walls that close it at its ends: triangles.
    pub ends: Area,
    /// Of one slope, the wall under its high side.
    pub high_wall: Area,
    /// Air over today's ceiling.
    pub air: Volume,
    /// From a low wall to where it is 5 ft high.
    pub strip_5: Length,
    /// From a low wall to where it is 7 ft high.
    pub strip_7: Length,
    /// Floor under 5 ft and more.
    pub counted: Area,
    /// Floor under 7 ft and more.
    pub full: Area,
}

/// Millionths of a rise in 12, of a slope of one in one.
const EVEN: i64 = 12_000_000;

impl Vault {
    /// How much of the floor that counts is under 7 ft and more; none where none counts.
    pub fn share(&self) -> Option<Measure> {
        let (full, counted) = (self.full.square_nanometres(), self.counted.square_nanometres());
        // Areas of a room times a hundred million are well within 128 bits.
        let millionths = (counted > 0)
            .then(|| divide(full * 100 * 1_000_000, counted, Rounding::Nearest))
            .and_then(|millionths| i64::try_from(millionths).ok())?;
        Some(Measure::new(&unit::PERCENT, millionths))
    }
}

pub(super) fn vault(input: &Input, low: Length) -> Result<Vault, Faults> {
    let Some(pitch) = input.pitch.map(Measure::millionths) else {
        return Err(fault("pitch", &w::PITCH, "", say!(w::NEEDED)));
    };
    let asked = |length: Option<Length>| length.unwrap_or_default();
    let (long, wide) = (asked(input.long), asked(input.wide));
    let (across, along) = match input.ridge {
        Ridge::Long => (wide, long),
        Ridge::Wide => (long, wide),
    };
    let slopes = if input.shape == Shape::Gable { 2 } else { 1 };
    let run = across.part(slopes);
    let rise = ratio(across, pitch, EVEN * slopes);
    let slant = slanted(run, rise);
    // From a low wall to where the ceiling is so high, no farther than the slope goes.
    let strip = |high: Length| {
        let short = high.minus(low).max(Length::ZERO);
        ratio(short, EVEN, pitch).min(run)
    };
    let (strip_5, strip_7) = (strip(COUNTED_FROM), strip(LIVED_IN.value));
    let beyond = |strip: Length| Area::of(across.minus(strip.times(slopes)), along);
    let ends = Area::of(across, rise);
    Ok(Vault {
        across,
        along,
        slopes,
        run,
        rise,
        slant,
        ceiling: Area::of(along, slant).times(slopes),
        ends,
        high_wall: if slopes == 1 { Area::of(along, rise) } else { Area::ZERO },
        air: Volume::part_over(ends, along, 2),
        strip_5,
        strip_7,
        counted: beyond(strip_5),
        full: beyond(strip_7),
    })
}

/// `length × over ÷ under`, to the nearest nanometre.
fn ratio(length: Length, over: i64, under: i64) -> Length {
    let product = i128::from(length.nanometres()) * i128::from(over);
    let nearest = divide(product, under.max(1).into(), Rounding::Nearest);
    Length::from_nanometres(i64::try_from(nearest).unwrap_or(i64::MAX))
}
