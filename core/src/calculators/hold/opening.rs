//! What opens a hold, and the one function that makes it.

use super::gates::{Settled, gates, is_shut_by_nature, samples, settled};
use super::input::Input;
use super::{Answer, Notice};
use crate::measure::{Area, Day};
use crate::rules::compare::{Limit, is_at_least};
use crate::rules::hazards::asbestos::{is_left_out, is_told, presumed};
use crate::rules::hazards::local::STRICTER;
use crate::rules::hazards::{Deed, Disturbs, Material};

/// A hold that is open: every gate of it has its evidence. Only [`solve`] makes one, from a whole
/// set of evidence; it can't be made, kept, sent or copied elsewhere, so that whoever holds one
/// has just worked it from what is on record.
///
/// ```
/// use ledgerboard_core::calculators::hold::{Input, Opened, solve};
/// let opened: Option<Opened> = solve(&Input::sample()).opened;
/// assert!(opened.is_none());
/// ```
///
/// It has no parts that can be filled in:
///
/// ```compile_fail
/// use ledgerboard_core::calculators::hold::Opened;
/// use ledgerboard_core::measure::{Area, Day};
/// use ledgerboard_core::rules::hazards::{Deed, Material};
/// let opened = Opened {
///     place: String::new(),
///     material: Material::Texture,
///     deed: Deed::Strip,
///     area: Area::ZERO,
///     painted: None,
///     dated: Day::new(2026, 11, 3).unwrap(),
///     latest: Day::new(2026, 11, 3).unwrap(),
/// };
/// ```
///
/// It has no blank, no copy, and can't be read from a record, as a tree can:
///
/// ```
/// fn read<T: Clone + for<'de> serde::Deserialize<'de>>() {}
/// read::<ledgerboard_core::wire::Node>();
/// ```
/// ```compile_fail
/// let opened = <ledgerboard_core::calculators::hold::Opened as Default>::default();
/// ```
/// ```compile_fail
/// use ledgerboard_core::calculators::hold::Opened;
/// fn twice(opened: &Opened) -> Opened { Opened::clone(opened) }
/// ```
/// ```compile_fail
/// fn read<T: for<'de> serde::Deserialize<'de>>() {}
/// read::<ledgerboard_core::calculators::hold::Opened>();
/// ```
#[derive(Debug)]
pub struct Opened {
    place: String,
    material: Material,
    deed: Deed,
    area: Area,
    /// Where only so much painted surface is minor.
    painted: Option<Area>,
    dated: Day,
    latest: Day,
}

/// Why an open hold doesn't reach a piece of work.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Miss {
    /// It is of another material.
    Material,
    /// It does what the hold wasn't asked about.
    Deed,
    /// There is more of it.
    Area,
    /// Only minor paint work is open, and this breaks more, or nobody knows how much.
    Paint,
}

impl Opened {
    /// Which surface, in which room, in the user's words.
    pub fn place(&self) -> &str {
        &self.place
    }

    /// What it is of.
    pub fn material(&self) -> Material {
        self.material
    }

    /// The date of the report that opened it.
    pub fn dated(&self) -> Day {
        self.dated
    }

    /// The latest day of its evidence.
    pub fn latest(&self) -> Day {
        self.latest
    }

    /// What of a piece of work it doesn't reach: another material, something done to it that
    /// wasn't asked about, more of it, or more paint than was asked about where only minor work
    /// is open. None where it opens that work.
    pub fn misses(&self, work: &Disturbs) -> Option<Miss> {
        let known = work.material != Material::NotSaid && work.material == self.material;
        let too_much_paint = match (self.painted, work.painted) {
            (None, _) => false,
            (Some(most), Some(painted)) => painted > most,
            (Some(_), None) => true,
        };
        match () {
            () if !known => Some(Miss::Material),
            () if !self.deed.takes_in(work.deed) => Some(Miss::Deed),
            () if work.area.is_some_and(|area| area > self.area) => Some(Miss::Area),
            () if too_much_paint => Some(Miss::Paint),
            () => None,
        }
    }
}

/// Works a hold: its gates, what a bid needs meanwhile, and what opens it once all gates are
/// open.
///
/// - Shape: one homogeneous area. Another colour, texture or date is another hold.
/// - Sources: 29 CFR 1926.1101, 40 CFR 763.86, 40 CFR 61.141 and 61.145, 40 CFR 745; each limit
///   stands beside its own under `rules::hazards`.
pub fn solve(input: &Input) -> Answer {
    let gates = gates(input);
    let settled = settled(input);
    let samples = samples(input);
    let left_out = is_left_out(input.building.dwellings, input.building.project);
    let loose = input.measured_loose();
    let notice = match (is_told(input.measured(), input.measured_pipe(), loose), left_out) {
        (None, _) => Notice::SizeUnknown,
        (Some(false), _) if input.material == Material::Vermiculite && loose.is_none() => {
            Notice::Loose
        }
        (Some(false), _) => Notice::Below,
        (Some(true), None) => Notice::DwellingsUnknown,
        (Some(true), Some(true)) => Notice::LeftOut,
        (Some(true), Some(false)) => Notice::Due,
    };
    let opened = match (settled, input.measured(), input.report.dated) {
        (Some(settled), Some(area), Some(dated)) if gates.iter().all(super::Gate::is_open) => {
            Some(Opened {
                place: input.place.clone(),
                material: input.material,
                deed: input.deed,
                area,
                painted: input.paint.painted.filter(|_| settled == Settled::Minor),
                dated,
                // A test that settles nothing is no evidence.
                latest: input
                    .paint
                    .tested
                    .filter(|_| settled == Settled::NoLead)
                    .map_or(dated, |tested| tested.max(dated)),
            })
        }
        _ => None,
    };
    Answer {
        gates,
        settled,
        samples,
        samples_help: !is_shut_by_nature(input),
        lab_cost: input.prices.sample.map(|each| each.saturating_mul(samples.value)),
        notice,
        presumed: presumed(input.built, input.material),
        local: input
            .office
            .limit
            .zip(input.measured())
            .map(|(value, area)| is_at_least(area, Limit { value, source: &STRICTER })),
        opened,
    }
}
