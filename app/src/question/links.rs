//! What a question takes from other marks of its job: taken by a tap, cut by typing over.

use super::Question;
use super::sources::{Source, source_name};
use crate::desk::Desk;
use crate::elements::on_change;
use crate::signal::RwSignal;
use crate::speech;
use crate::store::{Links, MarkPlace};
use crate::{words as w, works};
use ledgerboard_core::calculators::hold::Opened;
use ledgerboard_core::fields::{bare, heard, row_at};
use ledgerboard_core::job::{Job, Rooms, Survey, Tie, TieState, opened_by};
use ledgerboard_core::measure::Units;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::Amount;
use leptos::prelude::*;

/// How the link of one input stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Linked {
    /// Where the value comes from: room, title and figure.
    pub(crate) name: String,
    /// The same without the figure.
    pub(crate) title: String,
    /// What was taken, and whether it still holds.
    pub(crate) seen: String,
    /// How it stands.
    pub(crate) standing: TieState,
    /// The mark that it comes from, by id.
    pub(crate) mark: String,
    /// The job of that mark.
    pub(crate) job: String,
}

impl Linked {
    /// Whether its source says what was taken.
    pub(super) fn is_still_so(&self) -> bool {
        matches!(self.standing, TieState::Fresh | TieState::Behind)
    }
}

/// An amount as a person would type it in these units: exactly, whichever way is shorter.
pub(crate) fn as_typed(amount: Amount, units: Units) -> String {
    bare(amount, units).unwrap_or_else(|| amount.exact())
}

/// How a link of a job stands, with the name of what it leads to.
pub(crate) fn linked(job: &Job, survey: &Survey<'_>, tie: &Tie) -> Linked {
    let figure = survey.figure(&tie.mark, &tie.key);
    let name = |figure| match job.mark(&tie.mark) {
        Some(mark) => source_name(mark, figure),
        None => speech::phrase(&w::SOURCE_GONE),
    };
    Linked {
        name: name(figure),
        title: name(None),
        seen: tie.seen.clone(),
        standing: survey.standing(tie),
        mark: tie.mark.clone(),
        job: job.id.clone(),
    }
}

/// What opens the hold that a question stands behind, worked from what is on record now.
///
/// Only while the question belongs to that hold's job: another house has holds of its own.
pub(super) fn hold(
    desk: Desk,
    mark: RwSignal<Option<MarkPlace>>,
    links: RwSignal<Links>,
) -> Option<Opened> {
    links.with(|links| {
        let hold = links.behind.as_deref()?;
        if home(desk, mark)?.id != links.job {
            return None;
        }
        desk.jobs.with(|jobs| opened_by(jobs.iter().find(|job| job.id == links.job)?, hold))
    })
}

/// How each link of a question stands, by the path of its input; worked once as well.
pub(super) fn all_linked(desk: Desk, links: RwSignal<Links>) -> Vec<(String, Linked)> {
    links.with(|links| {
        if links.ties.is_empty() {
            return Vec::new();
        }
        let Some(job) = desk.job(&links.job) else { return Vec::new() };
        let survey = works::survey(&job);
        let one = |tie: &Tie| (tie.path.clone(), linked(&job, &survey, tie));
        links.ties.iter().map(one).collect()
    })
}

/// The rooms that its mark is in.
pub(super) fn rooms(desk: Desk, mark: RwSignal<Option<MarkPlace>>) -> Rooms {
    let Some(place) = mark.get() else { return Rooms::default() };
    let Some(job) = desk.job(&place.job) else { return Rooms::default() };
    let Some(own) = job.mark(&place.mark) else { return Rooms::default() };
    if !works::known_or_begun(desk, &job) {
        return Rooms::default();
    }
    Rooms::of(&job, &works::survey(&job)).around(&job, own)
}

/// The job that a question belongs to: its mark's, else the one that numbers go to now.
pub(super) fn home(desk: Desk, mark: RwSignal<Option<MarkPlace>>) -> Option<Job> {
    let of = |id: String| desk.job(&id);
    let place = mark.get().map(|place| place.job);
    let present = || desk.present();
    place.and_then(of).or_else(present).or_else(|| desk.todays_loose_notes().and_then(of))
}

/// What was taken from another job's marks stands by itself now.
pub(super) fn leave_other_job(question: Question) {
    let home = question.home().map(|job| job.id);
    let elsewhere =
        question.links.with(|links| !links.job.is_empty() && home.as_ref() != Some(&links.job));
    if elsewhere {
        question.links.set(Links::default());
    }
}

/// Cuts what was typed over, for as long as the question is open.
pub(super) fn follow(question: Question) {
    let read = move || {
        question.draft.track();
        question.links.track();
    };
    on_change(read, move || {
        let Links { job, ties, behind } = question.links.get_untracked();
        let (held, cut): (Vec<Tie>, Vec<Tie>) =
            ties.into_iter().partition(|tie| question.holds(tie));
        if let Some(tie) = cut.first() {
            let home = question.desk.job(&job);
            let name = home.as_ref().and_then(|job| job.mark(&tie.mark));
            let name = name.map(|mark| source_name(mark, None)).unwrap_or_default();
            question.cut.set(Some((tie.path.clone(), name)));
            question.links.set(Links { job, ties: held, behind });
        }
    });
}

impl Question {
    /// Whether an input still says what was taken, however it is written.
    fn holds(self, tie: &Tie) -> bool {
        let units = self.units.get_untracked();
        self.draft.with_untracked(|draft| {
            let leaf = draft.at(&tie.path).and_then(Node::leaf).unwrap_or_default();
            let row = row_at(self.entry.rows, &tie.path);
            let amount = row.and_then(|row| heard(row, &leaf, units).ok().flatten());
            amount.map_or(leaf == tie.seen, |amount| amount.exact() == tie.seen)
        })
    }

    /// The job that the question belongs to: its mark's, else the one that numbers go to now.
    pub(crate) fn home(self) -> Option<Job> {
        home(self.desk, self.mark)
    }

    /// Whether an input is asked as things stand: one in a list or a group wherever that stands.
    pub(super) fn is_asked(self, path: &str) -> bool {
        let rows = self.entry.rows;
        let row = rows.iter().find(|row| row.key == path);
        self.draft.with(|draft| row.is_none_or(|row| row.when.holds(rows, draft, draft)))
    }

    /// How the link of an input stands; none where it has none.
    pub(crate) fn linked(self, path: &str) -> Option<Linked> {
        self.linked.with(|all| all.iter().find(|(at, _)| at == path).map(|(_, it)| it.clone()))
    }

    /// Takes a figure's value into an input, and remembers where it came from.
    pub(crate) fn tie(self, path: &str, source: &Source) {
        let Some(job) = untrack(|| self.home()) else { return };
        self.write_tie(&job.id, path, &source.mark, source.figure.key, source.figure.amount);
    }

    /// Takes what a link's source says by now.
    pub(crate) fn take_now(self, path: &str, linked: &Linked) {
        let key = self.links.with_untracked(|links| {
            links.ties.iter().find(|tie| tie.path == path).map(|tie| tie.key.clone())
        });
        if let (Some(key), TieState::Moved(amount)) = (key, &linked.standing) {
            self.write_tie(&linked.job, path, &linked.mark, &key, *amount);
        }
    }

    fn write_tie(self, job: &str, path: &str, mark: &str, key: &str, amount: Amount) {
        let seen = amount.exact();
        let text = as_typed(amount, self.units.get_untracked());
        self.end_undo(path);
        self.cut.set(None);
        self.left.set(None);
        self.draft.update(|draft| draft.put(path, Node::Text(text)));
        self.is_own(path);
        self.links.update(|links| {
            if links.job != job {
                *links = Links::of(job, Vec::new(), None);
            }
            links.ties.retain(|tie| tie.path != path);
            let (path, mark, key) = (path.to_owned(), mark.to_owned(), key.to_owned());
            links.ties.push(Tie { path, mark, key, seen });
        });
    }

    /// What opens the hold that it stands behind.
    pub(crate) fn hold(self) -> Option<Opened> {
        hold(self.desk, self.mark, self.links)
    }

    /// Puts it behind a hold of its job, or behind none.
    pub(crate) fn stand_behind(self, hold: Option<String>) {
        let Some(job) = untrack(|| self.home()) else { return };
        self.links.update(|links| {
            if links.job != job.id {
                *links = Links::of(&job.id, Vec::new(), None);
            }
            links.behind = hold;
        });
    }

    /// Keeps the value and forgets where it came from.
    pub(crate) fn untie(self, path: &str) {
        self.links.update(|links| links.ties.retain(|tie| tie.path != path));
    }
}
