//! A tray: a level border stays at today's height, and within it the ceiling goes up.

use super::words as w;
use super::{Input, fault};
use crate::measure::{Area, Length, Volume};
use crate::rules::solids::slanted;
use crate::say;
use crate::sheet::Faults;

/// A tray's parts, worked as `rules::solids` says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Tray {
    /// Its opening in the old ceiling, length and width.
    pub mouth: [Length; 2],
    /// Its top, length and width.
    pub lid: [Length; 2],
    /// How high it is.
    pub high: Length,
    /// How far its sides lean in.
    pub lean: Length,
    /// Along a side, from the border to the top.
    pub slant: Length,
    /// Of the opening.
    pub opening: Area,
    /// Of the top.
    pub top: Area,
    /// Of all four sides: trapezoids, or rectangles where they are plumb.
    pub sides: Area,
    /// Air in it: a prismoid.
    pub air: Volume,
    /// The border's old board stays.
    pub keeps: bool,
}

pub(super) fn tray(input: &Input, high: Length) -> Result<Tray, Faults> {
    let asked = |length: Option<Length>| length.unwrap_or_default();
    let room = [input.long, input.wide].map(asked);
    let Some(border) = input.border else {
        return Err(fault("border", &w::BORDER, "", say!(w::NEEDED)));
    };
    let lean = asked(input.lean);
    let taken = border.plus(lean).times(2);
    let least = room[0].min(room[1]);
    if taken >= least {
        return Err(fault("border", &w::BORDER, &border.exact(), say!(w::NO_TRAY, taken, least)));
    }
    let in_by = |by: Length| room.map(|side| side.minus(by.times(2)));
    let (mouth, lid, middle) =
        (in_by(border), in_by(border.plus(lean)), in_by(border.plus(lean.part(2))));
    let slant = slanted(lean, high);
    let around = mouth[0].plus(mouth[1]).plus(lid[0]).plus(lid[1]);
    let of = |[long, wide]: [Length; 2]| Area::of(long, wide);
    let sixfold = of(mouth).plus(of(middle).times(4)).plus(of(lid));
    Ok(Tray {
        mouth,
        lid,
        high,
        lean,
        slant,
        opening: of(mouth),
        top: of(lid),
        sides: Area::of(around, slant),
        air: Volume::part_over(sixfold, high, 6),
        keeps: input.keeps,
    })
}
