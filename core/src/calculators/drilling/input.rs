//! What is put in: the member, the hole or notch, and what goes through.

use super::choices::{
    Cover, Cut, IN_WALLS, JOISTS, Member, PAPER, PLATES, Passes, Place, Remedy, TOP_PLATES, Wall,
};
use super::words as w;
use crate::fields::{Form, Item, Kind, Preset, Span, When, row};
use crate::form;
use crate::measure::Length;
use crate::rules::framing::lumber::Nominal;
use crate::words::Phrase;

const fn span(least: Length, most: i64, why: &'static Phrase, optional: bool) -> Span<Length> {
    Span { least, most: Length::inches(most, 1), why, common: &[], optional }
}

/// The smallest bit, width or cut that is taken.
const LEAST: Length = Length::inches(1, 16);
/// Bits of everyday rough-in. Common practice.
const BITS: &[Length] = &[
    Length::inches(3, 4),
    Length::inches(7, 8),
    Length::inches(1, 1),
    Length::inches(11, 8),
    Length::inches(17, 8),
    Length::inches(41, 16),
];
const BIT: Kind = Kind::Length(Span { common: BITS, ..span(LEAST, 24, &w::WHY_WIDTH, false) });
const CENTER: Kind = Kind::Length(span(Length::ZERO, 24, &w::WHY_WIDTH, true));
const NEAR: Kind = Kind::Length(span(Length::ZERO, 96, &w::WHY_FAR, true));

const SAWN: When = When::IsNot("member", PAPER);
const TOP: When = When::Is("member", TOP_PLATES);
const HOLE: When = When::Is("cut", &["hole"]);
const NOTCH: When = When::Is("cut", &["notch"]);
const JOIST_NOTCH: When = When::All(&[When::Is("member", JOISTS), NOTCH]);

form! {
    /// Another hole in the same plate.
    pub struct Other {
        /// Its bit.
        bit: Option<Length>, row(&w::BIT, &w::NOTHING, BIT);
        /// Its centre, from the same face; in the middle if blank.
        center: Option<Length>, row(&w::CENTER, &w::CENTER_HINT, CENTER);
        /// Along the plate from the first hole's centre to its own.
        along: Option<Length>, row(&w::OTHER_ALONG, &w::OTHER_ALONG_HINT,
            Kind::Length(span(Length::inches(-96, 1), 96, &w::WHY_FAR, false))).foremost(|_| true);
    }
}

static OTHERS: Item = Item {
    name: &w::OTHER,
    rows: Other::ROWS,
    most: 6,
    blank: || Other::blank().write_parts(),
    presets: &[Preset { label: &w::OTHER, sets: &[] }],
};

form! {
    /// A cut in a member.
    pub struct Input {
        /// What is cut.
        member: Member, row(&w::MEMBER, &w::MEMBER_HINT, Kind::Choice(Member::PICKS));
        /// Its size.
        size: Nominal, row(&w::SIZE, &w::SIZE_HINT, Kind::Choice(Nominal::PICKS)).when(SAWN);
        /// Its width or depth, where it was measured.
        width: Option<Length>, row(&w::WIDTH, &w::WIDTH_HINT,
            Kind::Length(span(Length::inches(1, 1), 24, &w::WHY_WIDTH, false)))
            .when(When::All(&[SAWN, When::Is("size", &["measured"])]));
        /// What the wall does.
        wall: Wall, row(&w::WALL, &w::WALL_HINT, Kind::Choice(Wall::PICKS))
            .when(When::Is("member", IN_WALLS));
        /// Doubled studs bored next to each other, this one included.
        in_a_row: i64 = 1, row(&w::IN_A_ROW, &w::IN_A_ROW_HINT,
            Kind::Count { least: 1, most: 20, why: &w::WHY_ROW })
            .when(When::Is("member", &["stud-double"]));
        /// A hole or a notch.
        cut: Cut, row(&w::CUT, &w::NOTHING, Kind::Choice(Cut::PICKS)).when(SAWN);
        /// The bit's diameter.
        bit: Option<Length>, row(&w::BIT, &w::BIT_HINT, BIT).when(When::All(&[SAWN, HOLE]));
        /// Its centre from one face; in the middle if blank.
        center: Option<Length>, row(&w::CENTER, &w::CENTER_HINT, CENTER)
            .when(When::All(&[SAWN, HOLE]));
        /// How deep the notch is.
        depth: Option<Length>, row(&w::DEPTH, &w::NOTHING,
            Kind::Length(span(LEAST, 24, &w::WHY_WIDTH, false)))
            .when(When::All(&[SAWN, NOTCH]));
        /// How long the notch is, along the member.
        long: Option<Length>, row(&w::LONG, &w::NOTHING,
            Kind::Length(span(LEAST, 48, &w::WHY_FAR, false)))
            .when(When::All(&[SAWN, NOTCH]));
        /// Where along the span the notch is.
        place: Place, row(&w::PLACE, &w::NOTHING, Kind::Choice(Place::PICKS)).when(JOIST_NOTCH);
        /// It is 4 in thick by name, or thicker.
        thick: bool, row(&w::THICK, &w::NOTHING, Kind::Flag).when(When::All(&[
            When::Is("member", JOISTS), NOTCH, When::Is("place", &["not-said", "outer"]),
        ]));
        /// What goes through.
        passes: Passes, row(&w::PASSES, &w::NOTHING, Kind::Choice(Passes::PICKS)).when(SAWN);
        /// Steel plates that will go on.
        plates: i64 = 0, row(&w::STEEL, &w::STEEL_HINT,
            Kind::Count { least: 0, most: 2, why: &w::WHY_STEEL })
            .when(When::All(&[SAWN, When::Is("passes", &["cable", "pipe"])]));
        /// What holds a cut plate together.
        remedy: Remedy, row(&w::REMEDY, &w::NOTHING, Kind::Choice(Remedy::PICKS)).when(TOP);
        /// The tie's length.
        tie: Option<Length>, row(&w::TIE_LONG, &w::NOTHING,
            Kind::Length(span(LEAST, 96, &w::WHY_FAR, false)))
            .when(When::All(&[TOP, When::Is("remedy", &["tie"])]));
        /// What covers the framing.
        cover: Cover, row(&w::COVER, &w::COVER_HINT, Kind::Choice(Cover::PICKS));
        /// Other holes in the same plate.
        holes: Vec<Other>, row(&w::OTHERS, &w::OTHERS_HINT, Kind::List(&OTHERS))
            .when(When::All(&[When::Is("member", PLATES), HOLE]));
        /// Wood left between this cut and the nearest hole along the member.
        to_hole: Option<Length>, row(&w::TO_HOLE, &w::TO_HOLE_HINT, NEAR)
            .when(When::IsNot("member", NO_HOLES_NEAR));
        /// Wood left between this cut and the nearest notch along the member.
        to_notch: Option<Length>, row(&w::TO_NOTCH, &w::NOTHING, NEAR)
            .when(When::IsNot("member", NO_HOLES_NEAR));
        /// How far a bit may end up off its mark.
        wander: Option<Length>, row(&w::WANDER, &w::WANDER_HINT,
            Kind::Length(span(Length::ZERO, 2, &w::WHY_WANDER, true)))
            .when(When::All(&[SAWN, HOLE]));
        /// From bearing to bearing.
        span: Option<Length>, row(&w::SPAN, &w::SPAN_HINT,
            Kind::Length(span(Length::inches(1, 1), 480, &w::WHY_SPAN, true))).when(JOIST_NOTCH);
    }
    sample {
        bit: Some(Length::inches(7, 8)),
        cover: Cover::Bare,
    }
}

/// Members whose rule knows no distance to the next cut along them.
const NO_HOLES_NEAR: &[&str] = &[
    "top-plate-double",
    "top-plate-single",
    "sole-plate",
    "header",
    "truss",
    "i-joist",
    "laminated",
];
