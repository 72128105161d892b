//! What a question takes from other marks of its job: taken by a tap, cut by typing over.

use super::Question;
use crate::desk::Desk;
use crate::elements::on_change;
use crate::signal::RwSignal;
use crate::speech;
use crate::store::{Links, MarkPlace};
use crate::{words as w, works};
use ledgerboard_core::calculators::hold::Opened;
use ledgerboard_core::catalog::find;
use ledgerboard_core::fields::{Row, bare, heard, left_alone, row_at};
use ledgerboard_core::job::{Fit, Job, Mark, Survey, Tie, TieState, opened_by};
use ledgerboard_core::measure::Units;
use ledgerboard_core::say;
use ledgerboard_core::sheet::Figure;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::{Amount, Phrase, Text};
use leptos::prelude::*;

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
    title: String,
    /// Its calculator, or nothing where it is a room's.
    of: &'static str,
    /// The room that its mark is about; see [`Mark::about`].
    about: String,
}

impl Source {
    /// Whether a row is this very figure.
    fn is_named(&self, row: &Row) -> bool {
        row.is_figure(self.figure.key, self.of)
    }
}

/// A number of the job of which one tap takes several figures.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Whole {
    /// Its mark, by id.
    pub(crate) mark: String,
    /// Room and title.
    pub(crate) name: String,
    /// Whether it is a room.
    pub(crate) is_room: bool,
    /// The inputs that take them, each with its figure.
    figures: Vec<(&'static str, Source)>,
}

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
    fn is_still_so(&self) -> bool {
        matches!(self.standing, TieState::Fresh | TieState::Behind)
    }
}

/// An amount as a person would type it in these units: exactly, whichever way is shorter.
pub(crate) fn as_typed(amount: Amount, units: Units) -> String {
    bare(amount, units).unwrap_or_else(|| amount.exact())
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

/// Names of fields in one line; none of none.
pub(crate) fn together(labels: impl IntoIterator<Item = &'static Phrase>) -> Option<Text> {
    labels.into_iter().fold(None, |all: Option<Text>, label| {
        Some(match all {
            Some(others) => say!(w::AND, others, label),
            None => say!(w::FIGURE, label),
        })
    })
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

/// The quantities of a question's job that its inputs could take: the job is worked once for all
/// of its fields.
pub(super) fn sources(desk: Desk, mark: RwSignal<Option<MarkPlace>>) -> Vec<Source> {
    let Some(job) = home(desk, mark) else { return Vec::new() };
    if !works::are_known(&job) {
        desk.worked.track();
        works::begin(desk, &job.id);
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
                about: offer.mark.about(of.is_empty()),
                figure: offer.figure,
            }
        })
        .collect()
}

/// The calculator of a mark; nothing where it is a room's.
fn source_of(mark: &Mark) -> &'static str {
    find(&mark.calculator).map_or("", |it| if it.is_room { "" } else { it.id })
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

/// The job that a question belongs to: its mark's, else the one that numbers go to now.
fn home(desk: Desk, mark: RwSignal<Option<MarkPlace>>) -> Option<Job> {
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
        let rooms = marks.map(|mark| mark.about(source_of(mark).is_empty()));
        rooms.filter(|room| !room.is_empty()).collect()
    }

    /// The job's rooms, and others, that this question could take more than one figure of.
    pub(crate) fn wholes(self) -> Vec<Whole> {
        let mut all: Vec<Whole> = Vec::new();
        self.sources.with(|sources| {
            for source in sources {
                if all.iter().any(|it| it.mark == source.mark) {
                    continue;
                }
                let figures = self.of_room(sources, &source.mark);
                if figures.len() > 1 {
                    let (mark, name) = (source.mark.clone(), source.title.clone());
                    all.push(Whole { mark, name, is_room: source.of.is_empty(), figures });
                }
            }
        });
        all
    }

    /// Whether an input that is asked still says something else than its figure of that whole, or
    /// wasn't taken from it.
    pub(crate) fn leaves_some_of(self, whole: &Whole) -> bool {
        let is_taken = |path: &str, source: &Source| {
            self.links.with(|links| {
                links.ties.iter().any(|tie| {
                    let is_it = (&*tie.path, &*tie.mark, &*tie.key)
                        == (path, &*source.mark, source.figure.key);
                    is_it && tie.seen == source.figure.amount.exact()
                })
            })
        };
        whole.figures.iter().any(|(path, source)| self.is_asked(path) && !is_taken(path, source))
    }

    /// Whether an input is asked as things stand: one in a list or a group wherever that stands.
    fn is_asked(self, path: &str) -> bool {
        let rows = self.entry.rows;
        let row = rows.iter().find(|row| row.key == path);
        self.draft.with(|draft| row.is_none_or(|row| row.when.holds(rows, draft, draft)))
    }

    /// The numbers that several inputs come from and still agree with: one link of each, and the
    /// names of those inputs. They are told once, and not at each field.
    pub(crate) fn told_together(self) -> Vec<(Linked, Text)> {
        let mut all: Vec<(Linked, Vec<&'static Phrase>)> = Vec::new();
        self.linked.with(|linked| {
            for (path, link) in linked {
                if !link.is_still_so() || !self.is_asked(path) {
                    continue;
                }
                let label = row_at(self.entry.rows, path).map(|row| row.label);
                match all.iter_mut().find(|(it, _)| it.mark == link.mark) {
                    Some((it, labels)) => {
                        labels.extend(label);
                        if link.standing == TieState::Behind {
                            it.standing = TieState::Behind;
                        }
                    }
                    None => all.push((link.clone(), label.into_iter().collect())),
                }
            }
        });
        let several = all.into_iter().filter(|(_, labels)| labels.len() > 1);
        several.filter_map(|(link, labels)| Some((link, together(labels)?))).collect()
    }

    /// Whether the link of an input is one of those.
    pub(crate) fn is_told_together(self, path: &str) -> bool {
        self.linked.with(|linked| {
            let own = linked.iter().find(|(at, link)| at == path && link.is_still_so());
            own.is_some_and(|(_, own)| {
                let same = |at: &str, link: &Linked| {
                    link.mark == own.mark && link.is_still_so() && self.is_asked(at)
                };
                linked.iter().filter(|(at, link)| same(at, link)).count() > 1
            })
        })
    }

    /// The fields that are a room's own figures, or another's, each with that figure.
    fn of_room(self, sources: &[Source], mark: &str) -> Vec<(&'static str, Source)> {
        let mut all = Vec::new();
        for row in self.entry.rows {
            let here = |it: &&Source| it.mark == mark && it.is_named(row);
            if let Some(source) = sources.iter().find(here) {
                all.push((row.key, source.clone()));
            }
        }
        all
    }

    /// Takes all of a room that this question asks for.
    pub(crate) fn take_room(self, mark: &str) {
        let all = self.sources.with_untracked(|sources| self.of_room(sources, mark));
        let Some(of) = all.first().map(|(_, source)| source.of) else { return };
        for (path, source) in &all {
            self.tie(path, source);
        }
        let has = |key: &str| all.iter().any(|(_, source)| source.figure.key == key);
        let rows = self.entry.rows;
        let left = self.draft.with_untracked(|draft| left_alone(rows, draft, of, &has));
        let name = all.first().map(|(_, source)| source.title.clone()).unwrap_or_default();
        self.left.set((!left.is_empty()).then_some((name, left)));
    }

    /// What the last tap that took all of a room, or of another number, left as it was.
    pub(crate) fn left(self) -> Option<Text> {
        self.left.with(|left| {
            let (name, rows) = left.as_ref()?;
            Some(say!(w::LEFT_ALONE, &**name, together(rows.iter().copied())?))
        })
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
        self.undo.set(None);
        self.cut.set(None);
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
