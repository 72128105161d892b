//! The fewest receptacles that leave no point of a wall space farther off than it may be, and of
//! those the most even ones.

use crate::measure::Length;

/// What it takes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Cover {
    /// Where, from the space's start, in order.
    pub(super) spots: Vec<Length>,
    /// What no place comes near enough to: from, to.
    pub(super) bare: Vec<[Length; 2]>,
}

/// Where a box may have its middle: from, to, in order and apart; one place where both are the same.
pub(super) type Allowed<'a> = &'a [[Length; 2]];

/// Covers a space `long`, together with those that it has, in order, each reaching so far both ways.
///
/// Along the space each next one is first put as far on as it may be: no other way needs fewer. Then
/// each is moved to the place nearest to even that still leaves the rest enough: between the farthest
/// on, and the farthest back found the same way from the end.
pub(super) fn cover(long: Length, allowed: Allowed<'_>, have: &[Length], reach: Length) -> Cover {
    let mut out = Cover::default();
    let mut next = 0;
    let mut done = Length::ZERO;
    loop {
        while let Some(at) = have.get(next).filter(|at| at.minus(reach) <= done) {
            done = done.max(at.plus(reach));
            next += 1;
        }
        if done >= long {
            return out;
        }
        let end = have.get(next).map_or(long, |at| at.minus(reach)).min(long);
        done = stretch(done, end, allowed, reach, &mut out);
    }
}

/// Covers from `from` to `end`; gives how far it is covered then, or left bare.
fn stretch(
    from: Length,
    end: Length,
    allowed: Allowed<'_>,
    reach: Length,
    out: &mut Cover,
) -> Length {
    let (mut start, mut done) = (from, from);
    let mut latest: Vec<Length> = Vec::new();
    while done < end {
        match at_most(allowed, done.plus(reach)).filter(|at| at.plus(reach) > done) {
            Some(at) => {
                latest.push(at);
                done = at.plus(reach);
            }
            None => {
                even(start, done, &latest, allowed, reach, out);
                let after = at_least(allowed, done.plus(reach)).map(|at| at.minus(reach));
                let to = after.map_or(end, |after| after.min(end));
                out.bare.push([done, to]);
                (start, done) = (to, to);
                latest.clear();
            }
        }
    }
    even(start, end.min(done), &latest, allowed, reach, out);
    done
}

/// Puts as many as `latest` has, evenly over the stretch as far as they may be.
fn even(
    from: Length,
    end: Length,
    latest: &[Length],
    allowed: Allowed<'_>,
    reach: Length,
    out: &mut Cover,
) {
    let count = latest.len();
    let mut earliest = latest.to_vec();
    let mut least = end.minus(reach);
    for at in earliest.iter_mut().rev() {
        *at = at_least(allowed, least).unwrap_or(*at).min(*at);
        least = at.minus(reach.times(2));
    }
    let mut before: Option<Length> = None;
    for at in 0..count {
        let wanted = from.plus(end.minus(from).times(2 * at as i64 + 1).part(2 * count as i64));
        let (mut low, mut high) = (earliest[at], latest[at]);
        if let Some(before) = before {
            (low, high) = (low.max(before), high.min(before.plus(reach.times(2))));
        }
        let spot = nearest(allowed, wanted, low, high).unwrap_or(high);
        out.spots.push(spot);
        before = Some(spot);
    }
}

/// The last place that is no farther on.
fn at_most(allowed: Allowed<'_>, most: Length) -> Option<Length> {
    allowed.iter().rev().find(|it| it[0] <= most).map(|it| it[1].min(most))
}

/// The first that is no nearer.
fn at_least(allowed: Allowed<'_>, least: Length) -> Option<Length> {
    allowed.iter().find(|it| it[1] >= least).map(|it| it[0].max(least))
}

fn nearest(allowed: Allowed<'_>, wanted: Length, low: Length, high: Length) -> Option<Length> {
    let off = |at: Length| at.minus(wanted).max(wanted.minus(at));
    let mut best: Option<Length> = None;
    for [from, to] in allowed {
        let (from, to) = ((*from).max(low), (*to).min(high));
        if from <= to {
            let at = wanted.max(from).min(to);
            if best.is_none_or(|best| off(at) < off(best)) {
                best = Some(at);
            }
        }
    }
    best
}
