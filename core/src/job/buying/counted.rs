//! What of a mark's material counts: what another number of the job asks for already is bought once.

use super::{About, COUNTED, Counts, LEFT_OUT, said_of, whole_one};
use crate::job::fold::fold;
use crate::job::mark::Mark;
use crate::job::site::Job;
use crate::job::survey::Survey;
use crate::job::tie::Tie;
use crate::job::version::in_use;
use crate::sheet::Material;
use crate::words::Amount;

/// Bare area of a ceiling's board.
const BARE_CEILING: &str = "ceiling-board";
/// How the keys of planned boards start.
const PLANNED: &str = "board ";
/// What a cable's way asks for all along it, and the input that has that way: who took it from a
/// number that asks for the same takes it over whole.
const ALONG: (&str, &str) = ("staple", "run");

/// What of a mark's material counts, and why.
pub(super) fn counted(
    job: &Job,
    survey: &Survey<'_>,
    plans: &mut [Plan<'_>],
    mark: &Mark,
    material: &Material,
) -> (Amount, Counts) {
    let Material { key, amount, .. } = material;
    let nothing = amount.of_same(0);
    match job.jotted(&said_of(About::Share(&mark.id), key)) {
        LEFT_OUT => return (nothing, Counts::LeftOut),
        COUNTED => return (*amount, Counts::Whole),
        _ if job.is_sample(mark) => return (nothing, Counts::Sample),
        _ if in_use(job, mark).is_some() => return (nothing, Counts::OtherVersion),
        _ => {}
    }
    let (taken, from) = match taken_over(job, survey, mark, material) {
        Some((taken, from)) => (taken, vec![from]),
        None if key == BARE_CEILING => planned(job, plans, mark, *amount),
        None => (0, Vec::new()),
    };
    if from.is_empty() {
        return (*amount, Counts::Whole);
    }
    (amount.of_same((amount.raw() - taken).max(0)), Counts::Beyond(from))
}

/// Whether a mark's share of a material is bought for itself, as far as a person says.
fn is_bought(job: &Job, mark: &Mark, key: &str) -> bool {
    match job.jotted(&said_of(About::Share(&mark.id), key)) {
        LEFT_OUT => false,
        COUNTED => true,
        _ => !job.is_sample(mark) && in_use(job, mark).is_none(),
    }
}

/// What a mark took over from another mark's figure is there already, if that figure is what the
/// other one asks for; as much of it as was taken, whatever the figure says by now. The same of all
/// that goes along a way, if the way is the other one's.
fn taken_over(
    job: &Job,
    survey: &Survey<'_>,
    mark: &Mark,
    Material { key, amount, .. }: &Material,
) -> Option<(i128, String)> {
    mark.ties.iter().find_map(|tie| {
        let source = job.mark(&tie.mark).filter(|source| is_bought(job, source, key))?;
        let worked = survey.worked(&source.id)?.as_ref().ok()?;
        let asks = worked.sheet.materials.iter().find(|it| it.key == *key)?.amount;
        let seen = Amount::from_exact(&tie.seen)?;
        if (&**key, &*tie.path) == ALONG {
            return matches!(seen, Amount::Length(_)).then(|| (amount.raw(), source.id.clone()));
        }
        let says = survey.figure(&source.id, &tie.key)?.amount;
        (says == asks && seen.is_like(*amount)).then(|| (seen.raw(), source.id.clone()))
    })
}

/// A plan of a ceiling's boards.
pub(super) struct Plan<'a> {
    mark: &'a Mark,
    /// What it covers.
    covers: Amount,
    /// How much of that no bare area has taken yet: none is taken twice.
    left: i128,
}

/// The plans of ceilings whose boards are bought.
pub(super) fn plans<'a>(job: &'a Job, survey: &Survey<'_>) -> Vec<Plan<'a>> {
    let of = |mark: &'a Mark| {
        let sheet = &survey.worked(&mark.id)?.as_ref().ok()?.sheet;
        let mut boards = sheet.materials.iter().filter(|it| it.key.starts_with(PLANNED)).peekable();
        boards.peek()?;
        let covers = survey.figure(&mark.id, "surface")?.amount;
        let is_ceiling = mark.input.get("of")?.leaf()? == "ceiling";
        (is_ceiling && boards.all(|it| is_bought(job, mark, &it.key))).then(|| Plan {
            mark,
            covers,
            left: covers.raw(),
        })
    };
    job.marks.iter().filter_map(of).collect()
}

/// How much of a ceiling's bare board is in plans of its boards, and in which. What is left under a
/// whole unit is how two numbers round, and nothing to buy.
fn planned(job: &Job, plans: &mut [Plan<'_>], mark: &Mark, asks: Amount) -> (i128, Vec<String>) {
    let mut rest = asks.raw();
    let mut from = Vec::new();
    for plan in plans.iter_mut().filter(|plan| plan.left > 0) {
        let is_same_size = (plan.covers.raw() - asks.raw()).abs() < whole_one(asks);
        if rest > 0 && is_same_place(job, mark, plan.mark, is_same_size) {
            let takes = rest.min(plan.left);
            (rest, plan.left) = (rest - takes, plan.left - takes);
            from.push(plan.mark.id.clone());
        }
    }
    (if rest < whole_one(asks) { asks.raw() } else { asks.raw() - rest }, from)
}

/// Whether two marks are of one place: linked to each other or to the same number, or said to be in
/// the same room. Where a room isn't said, sizes tell.
fn is_same_place(job: &Job, one: &Mark, other: &Mark, is_same_size: bool) -> bool {
    let spots = [one, other].map(|mark| fold(job.spot_of(mark)));
    if spots.iter().all(|spot| !spot.is_empty()) {
        return spots[0] == spots[1];
    }
    let is_linked =
        |tie: &Tie| tie.mark == other.id || other.ties.iter().any(|it| it.mark == tie.mark);
    is_same_size
        || one.ties.iter().any(is_linked)
        || other.ties.iter().any(|tie| tie.mark == one.id)
}
