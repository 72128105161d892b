//! The figures of a job that a question could take, those that fit a field best first.

use super::Question;
use super::links::home;
use crate::desk::Desk;
use crate::signal::RwSignal;
use crate::store::MarkPlace;
use crate::{speech, words as w, works};
use ledgerboard_core::catalog::find;
use ledgerboard_core::fields::{Goes, Row};
use ledgerboard_core::job::{Fit, Mark};
use ledgerboard_core::say;
use ledgerboard_core::sheet::Figure;
use ledgerboard_core::words::Amount;

/// A figure of the job that an input could take.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Source {
    /// Its mark, by id.
    pub(crate) mark: String,
    /// What it says today.
    pub(crate) figure: Figure,
    /// Room, title and figure, as a person reads it.
    pub(crate) name: String,
    /// Room and title.
    pub(super) title: String,
    /// Its calculator, or nothing where it is a room's.
    pub(super) of: &'static str,
    /// The room that its mark is about; see [`Mark::about`].
    about: String,
}

impl Source {
    /// Which of the figures that a row names it is; none where it is none of them.
    pub(super) fn goes(&self, row: &Row) -> Option<Goes> {
        row.goes(self.figure.key, self.of)
    }
}

/// Room, title and figure of a mark, as a person reads it.
pub(crate) fn source_name(mark: &Mark, figure: Option<&Figure>) -> String {
    let (spot, title) = (mark.spot.trim(), mark.title.trim());
    let said = match (spot, title) {
        ("", one) | (one, "") => one.to_owned(),
        (spot, title) if spot == title => spot.to_owned(),
        (spot, title) => [spot, title].join(", "),
    };
    match figure {
        Some(figure) => speech::say(&say!(w::PAIR, said, figure.name.clone())),
        None => said,
    }
}

/// The quantities of a question's job that its inputs could take: the job is worked once for all
/// of its fields.
pub(super) fn sources(desk: Desk, mark: RwSignal<Option<MarkPlace>>) -> Vec<Source> {
    let Some(job) = home(desk, mark) else { return Vec::new() };
    if !works::known_or_begun(desk, &job) {
        return Vec::new();
    }
    let own = mark.get().map(|place| place.mark).unwrap_or_default();
    let survey = works::survey(&job);
    let offers = survey.all_offers(&own).into_iter();
    offers
        .map(|offer| {
            let of = source_of(offer.mark);
            Source {
                mark: offer.mark.id.clone(),
                name: source_name(offer.mark, Some(&offer.figure)),
                title: source_name(offer.mark, None),
                of,
                about: offer.mark.about(),
                figure: offer.figure,
            }
        })
        .collect()
}

/// The calculator of a mark; nothing where it is a room's.
fn source_of(mark: &Mark) -> &'static str {
    find(&mark.calculator).map_or("", |it| if it.is_room { "" } else { it.id })
}

impl Question {
    /// Whether its job has a figure of the same kind as `like`.
    pub(crate) fn has_sources(self, like: Amount) -> bool {
        self.sources.with(|all| all.iter().any(|source| source.figure.amount.is_like(like)))
    }

    /// The figures of its job that are of the same kind as `like`, those that fit a row best first.
    pub(crate) fn sources(self, row: &Row, like: Amount) -> Vec<Source> {
        let rooms = self.about();
        self.sources.with(|all| {
            let mut fits: Vec<Fit> = Vec::new();
            let mut sorted = Vec::new();
            for source in all.iter().filter(|source| source.figure.amount.is_like(like)) {
                let is_here = rooms.contains(&source.about);
                let fit = Fit::of(row, &source.figure, source.of, is_here);
                let place = fits.partition_point(|other| *other <= fit);
                fits.insert(place, fit);
                sorted.insert(place, source.clone());
            }
            sorted
        })
    }

    /// The rooms that it is about: its mark's, and those that it already takes something of.
    fn about(self) -> Vec<String> {
        let Some(job) = self.home() else { return Vec::new() };
        let own = self.mark.with(|place| place.as_ref().map(|place| place.mark.clone()));
        let mut ids = self.links.with(|links| match links.job == job.id {
            true => links.ties.iter().map(|tie| tie.mark.clone()).collect(),
            false => Vec::new(),
        });
        ids.extend(own);
        let marks = ids.iter().filter_map(|id| job.mark(id));
        let rooms = marks.map(Mark::about);
        rooms.filter(|room| !room.is_empty()).collect()
    }
}
