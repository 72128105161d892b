//! The kept numbers of a job, by room. A job of hundreds stands on the page at once, as it was
//! kept: its lines are drawn a few at a time, and told in the same way what they say today, once
//! that is worked.

use super::done::{Done, done_line, off_list};
use super::mark_line::mark_line;
use super::ready::ready_lines;
use super::today::Today;
use crate::desk::Desk;
use crate::elements::{Piece, each, el, flag, live, on_change};
use crate::signal::{Memo, RwSignal};
use crate::{words as w, works};
use ledgerboard_core::job::{Job, Mark};
use std::sync::Arc;

/// Lines drawn at a time: as many as a phone shows.
const FIRST: usize = 8;

/// What the lines of one list share.
#[derive(Clone)]
pub(super) struct Lines {
    pub(super) desk: Desk,
    pub(super) job: Arc<Job>,
    pub(super) done: RwSignal<Vec<Done>>,
    pub(super) opened: RwSignal<Option<Mark>>,
    /// How many are drawn, of those in the order of the page.
    drawn: RwSignal<usize>,
    /// How many of them say what they come to today.
    told: RwSignal<usize>,
    /// In the order of the job's marks.
    today: RwSignal<Option<Arc<Vec<Today>>>>,
}

impl Lines {
    /// Reads what a mark says today, once that is known.
    pub(super) fn today<T>(&self, mark: &Mark, read: impl FnOnce(&Today) -> T) -> Option<T> {
        let at = self.job.marks.iter().position(|it| it.id == mark.id)?;
        self.today.with_untracked(|today| today.as_ref()?.get(at).map(read))
    }

    fn count(&self) -> usize {
        self.job.marks.len()
    }

    /// Takes down what all say today.
    fn look(&self) {
        let today = Today::of_all(&self.job, &works::survey(&self.job));
        self.today.set(Some(Arc::new(today)));
    }

    /// Brings a count to its end, a few lines at a time: they are drawn when each part is over.
    fn in_parts(&self, reached: RwSignal<usize>) {
        let count = self.count();
        works::in_slices(move || {
            if reached.is_disposed() {
                return false;
            }
            let at = reached.get_untracked() + FIRST;
            reached.set(at);
            at < count
        });
    }
}

/// Marks by room, the newest first; one that was just taken away keeps its place. Only at the
/// `first` time a few at a time: a list that is drawn anew stays as long as it was, and its page
/// where it was.
pub(super) fn marks(
    desk: Desk,
    job: &Arc<Job>,
    done: RwSignal<Vec<Done>>,
    opened: RwSignal<Option<Mark>>,
    first: bool,
) -> Piece {
    let taken: Arc<[Done]> = done.with_untracked(|done| off_list(done, job)).into();
    let mut with_taken = Arc::clone(job);
    if !taken.is_empty() {
        Arc::make_mut(&mut with_taken).marks.extend(taken.iter().map(|it| it.mark.clone()));
    }
    if with_taken.marks.is_empty() {
        return el("p").class("quiet").say(&w::NO_MARKS).into();
    }
    let lines = Lines {
        desk,
        job: Arc::clone(job),
        done,
        opened,
        drawn: RwSignal::new(if first { FIRST } else { usize::MAX }),
        told: RwSignal::new(0),
        today: RwSignal::new(None),
    };
    if works::are_known(job) {
        lines.look();
        lines.told.set(usize::MAX);
    } else {
        works::begin(desk, &job.id);
        let known = lines.clone();
        on_change(
            move || desk.worked.track(),
            move || {
                known.look();
                known.in_parts(known.told);
            },
        );
    }
    let mut place = 0;
    let spots = with_taken.newest_first_by_spot();
    let spots: Vec<Piece> = spots
        .iter()
        .map(|spot| {
            let from = place;
            place += spot.marks.len();
            let name = match spot.name {
                "" => el("h3").class("quiet").say(&w::NO_SPOT),
                name => el("h3").own_text(name),
            };
            let ids = spot.marks.iter().map(|mark| mark.id.clone()).collect();
            Piece::all([name, el("ul").with(items(&lines, ids, from, Arc::clone(&taken)))])
        })
        .collect();
    if first && lines.count() > FIRST {
        lines.in_parts(lines.drawn);
    }
    Piece::all([ready(&lines)].into_iter().chain(spots))
}

/// What stands before each part of the work, once all is known.
fn ready(lines: &Lines) -> Piece {
    let lines = lines.clone();
    let is_known = {
        let today = lines.today;
        flag(move || today.with(Option::is_some))
    };
    live(move || {
        if is_known.get() {
            return ready_lines(&lines.job, &works::survey(&lines.job));
        }
        el("p").class("quiet").attr("role", "status").say(&w::LOOKING_AT_NUMBERS).into()
    })
}

/// The items of one spot, as far as they are drawn; `from` stand before them.
fn items(lines: &Lines, marks: Vec<String>, from: usize, taken: Arc<[Done]>) -> Piece {
    let (lines, drawn, count) = (lines.clone(), lines.drawn, marks.len());
    let reached = Memo::new(move |_| drawn.get().saturating_sub(from).min(count));
    let keys = move || marks.iter().take(reached.get()).cloned().collect();
    each(keys, move |id, at| {
        if let Some(taken) = taken.iter().find(|taken| taken.mark.id == id) {
            return done_line(lines.desk, &lines.job.id, taken.clone(), lines.done);
        }
        let (told, place) = (lines.told, from + at);
        let is_told = flag(move || told.get() > place);
        let mark = lines.job.mark(id).map(|mark| mark_line(&lines, mark, is_told));
        el("li").class("mark").attr("data-mark", id).with(mark)
    })
}
