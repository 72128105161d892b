//! The surface as rows of runs: which boards lie end to end, from where to where, and how high the
//! part of each row is.

use super::bands::{Band, bands};
use super::input::{Input, Run as Way, Surface};
use super::words as w;
use crate::calculators::room;
use crate::layout::{self, Rows};
use crate::measure::{Area, Length};
use crate::plan::{Axis, Plan, Rectangle, Wall, put_in_order, shape};
use crate::say;
use crate::sheet::{Fault, Faults};
use crate::words::Phrase;

/// A rectangle: along the boards, and across them, each from where to where.
pub type Part = [[Length; 2]; 2];

/// A run of boards.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Run {
    /// Its row, from 0.
    pub row: usize,
    /// Along the boards, from here to here.
    pub along: [Length; 2],
    /// Across them.
    pub across: [Length; 2],
    /// How wide its boards are.
    pub board: Length,
}

/// What is boarded. Boards run along `x`; rows follow each other along `y`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ground {
    /// Its outline, with x along the boards.
    pub outline: Vec<[Length; 2]>,
    /// The runs, row by row.
    pub runs: Vec<Run>,
    /// The rows, from the first edge on.
    pub bands: Vec<Band>,
    /// The surface as rectangles.
    pub parts: Vec<Part>,
    /// Where framing stands, rising.
    pub stops: Vec<Length>,
    /// Holes that boards are cut out for.
    pub holes: Vec<Part>,
    /// All edges together: corners, of a ceiling.
    pub perimeter: Length,
    /// Across boards that run along their framing, where that stands, rising; else none.
    pub behind: Vec<Length>,
    /// Across such boards, edges that meet on none of it, rising.
    pub loose: Vec<Length>,
}

/// An end joint is kept so far off an opening's corner where that costs nothing. Common practice.
const CORNER: Length = Length::inches(12, 1);

/// An edge off a stud's center by more than this has too little wood: of a 2x, 1-1/2 in thick, each
/// board keeps 1/2 in, and its screws stay 3/8 in off its edge. Common practice, from memory.
const OFF_CENTER: Length = Length::inches(1, 4);

/// A seam this near to an opening's side stands on the same 2x, 1-1/2 in thick.
const JAMB: Length = Length::inches(3, 2);

/// A joint in the middle third weighs more than any that is only nearer to the middle.
const IN_MIDDLE: i64 = 1_000_000;

/// What boards of both widths count where they are bought: 48 and 54 in, by their common 6.
pub(super) const COUNTS: [i64; 2] = [8, 9];

/// More framing than this no board plan is looked for over.
const MOST_STOPS: usize = 60;

impl Ground {
    pub(super) fn new(input: &Input) -> Result<Self, Faults> {
        if let (Some(_), Some(apart)) = (input.joists_along, input.joists_square) {
            let (path, label) = ("joists_square".to_owned(), &w::JOISTS_SQUARE);
            return Err(vec![Fault { path, label, given: apart.exact(), says: say!(w::ONE_WAY) }]);
        }
        let (plan, holes) = match input.of {
            Surface::Ceiling => (ceiling(input)?, Vec::new()),
            Surface::Wall => wall(input)?,
        };
        let axis = match input.run {
            Way::Along => Axis::Along,
            Way::Square => Axis::Across,
        };
        let turn = |[x, y]: [Length; 2]| if axis == Axis::Along { [x, y] } else { [y, x] };
        let (low, high) = plan.bounds();
        let [left, top] = turn([low.x, low.y]);
        let [right, bottom] = turn([high.x, high.y]);
        let shift = |at: [Length; 2]| {
            let [x, y] = turn(at);
            [x.minus(left), y.minus(top)]
        };
        let outline = plan.sides().iter().map(|side| shift([side.from.x, side.from.y])).collect();
        let mut shifted = Vec::new();
        for [along, across] in holes {
            let [low, high] = [0, 1].map(|end| shift([along[end], across[end]]));
            shifted.push([[low[0], high[0]], [low[1], high[1]]]);
        }
        let holes: Vec<Part> = shifted;
        let mut parts: Vec<Part> = Vec::new();
        for Rectangle { low, high } in plan.rectangles(axis) {
            let [from, to] = [low, high].map(|spot| shift([spot.x, spot.y]));
            parts.push([[from[0], to[0]], [from[1], to[1]]]);
        }
        let (long, deep) = (right.minus(left), bottom.minus(top));
        let stops = stops(input, long)?;
        let mut runs = Vec::new();
        let mut from = Length::ZERO;
        let bands = bands(deep, input.board.widths());
        for (row, Band { high, board }) in bands.iter().enumerate() {
            let to = from.plus(*high);
            runs.extend(runs_of(&parts, &holes, (row, *board), [from, to]));
            from = to;
        }
        let perimeter = plan.perimeter();
        let (behind, loose) = (behind(input, deep), Vec::new());
        let mut ground =
            Self { outline, runs, bands, parts, stops, holes, perimeter, behind, loose };
        if runs_along(input) {
            ground.loose = ground.off_framing();
        }
        Ok(ground)
    }

    /// All seams between rows, end to end.
    pub fn tapered(&self) -> Length {
        self.seams().iter().fold(Length::ZERO, |sum, (_, long)| sum.plus(*long))
    }

    /// Where rows meet, and how long the boards on both sides are there: nothing in an opening.
    fn seams(&self) -> Vec<(Length, Length)> {
        let mut all = Vec::new();
        for run in &self.runs {
            for next in self.runs.iter().filter(|next| next.row == run.row + 1) {
                let from = run.along[0].max(next.along[0]);
                let to = run.along[1].min(next.along[1]);
                let edge = next.across[0];
                let cut = self.cut_out([from, to], |[along, across]| (*across, edge, *along));
                let long = to.minus(from).minus(cut);
                if long > Length::ZERO {
                    all.push((edge, long));
                }
            }
        }
        all
    }

    /// What of a joint from here to there openings take; of each, `of` says what the joint must
    /// stand inside, where it stands, and what it takes of it.
    fn cut_out(
        &self,
        [from, to]: [Length; 2],
        of: impl Fn(&Part) -> ([Length; 2], Length, [Length; 2]),
    ) -> Length {
        let mut sum = Length::ZERO;
        for hole in &self.holes {
            let (span, at, takes) = of(hole);
            if span[0] < at && at < span[1] {
                let both = takes[1].min(to).minus(takes[0].max(from));
                sum = sum.plus(both.max(Length::ZERO));
            }
        }
        sum
    }

    fn off_framing(&self) -> Vec<Length> {
        let on = |edge: Length| {
            let off = |member: &Length| edge.minus(*member).max(member.minus(edge));
            self.behind.iter().any(|member| off(member) <= OFF_CENTER)
        };
        let mut all = Vec::new();
        for (edge, _) in self.seams() {
            if !on(edge) && !all.contains(&edge) {
                put_in_order(&mut all, edge);
            }
        }
        all
    }

    /// What of a row lies in the surface there: from its first edge to its last.
    pub fn across(&self, run: &Run, along: [Length; 2]) -> [Length; 2] {
        let mut all: Option<[Length; 2]> = None;
        for [part, [from, to]] in &self.parts {
            let across = [(*from).max(run.across[0]), (*to).min(run.across[1])];
            if part[0] < along[1] && along[0] < part[1] && across[0] < across[1] {
                let known = all.unwrap_or(across);
                all = Some([known[0].min(across[0]), known[1].max(across[1])]);
            }
        }
        all.unwrap_or(run.across)
    }

    /// What of a rectangle lies outside the surface, from left to right.
    pub(super) fn outside(&self, [along, across]: Part) -> Vec<Part> {
        let mut ends = along.to_vec();
        for at in self.parts.iter().flat_map(|part| part[0]) {
            if along[0] < at && at < along[1] && !ends.contains(&at) {
                put_in_order(&mut ends, at);
            }
        }
        let mut all: Vec<Part> = Vec::new();
        for strip in ends.windows(2) {
            let over = |part: &&Part| part[0][0] <= strip[0] && strip[1] <= part[0][1];
            let mut covered: Vec<_> = self.parts.iter().filter(over).map(|part| part[1]).collect();
            covered.push([across[1]; 2]);
            covered.sort_unstable();
            let mut from = across[0];
            for [top, bottom] in covered {
                let open = [from, top.min(across[1])];
                from = from.max(bottom);
                if open[0] >= open[1] {
                    continue;
                }
                // Strip by strip, what goes on is one.
                match all.iter_mut().find(|it| it[0][1] == strip[0] && it[1] == open) {
                    Some(last) => last[0][1] = strip[1],
                    None => all.push([[strip[0], strip[1]], open]),
                }
            }
        }
        all
    }

    /// How long a joint is that stands there: no longer than the less deep of its two sides.
    pub(super) fn joint(&self, run: &Run, at: Length) -> Length {
        let step = Length::from_nanometres(1);
        let sides = [[at.minus(step), at], [at, at.plus(step)]].map(|it| self.across(run, it));
        let [from, to] = match sides {
            [one, other] if one[1].minus(one[0]) <= other[1].minus(other[0]) => one,
            [_, other] => other,
        };
        let cut = self.cut_out([from, to], |[along, across]| (*along, at, *across));
        to.minus(from).minus(cut).max(Length::ZERO)
    }

    /// How far it reaches along the boards.
    pub(super) fn end(&self) -> Length {
        self.outline.iter().map(|it| it[0]).max().unwrap_or_default()
    }

    /// Inside the middle third, along the boards.
    pub(super) fn is_middle(&self, at: Length) -> bool {
        let third = self.end().part(3);
        third < at && at < self.end().minus(third)
    }

    /// Seams that run on along an opening's side past its corner, rising.
    pub(super) fn at_sides(&self) -> Vec<Length> {
        let end = self.end();
        let mut all = Vec::new();
        for (edge, _) in self.seams() {
            let meets = |[along, sides]: &Part| {
                let goes_on = along[0] > Length::ZERO || along[1] < end;
                goes_on && sides.iter().any(|at| edge.minus(*at).max(at.minus(edge)) < JAMB)
            };
            if self.holes.iter().any(meets) && !all.contains(&edge) {
                put_in_order(&mut all, edge);
            }
        }
        all
    }

    /// The farthest that framing and the two ends stand apart: along the boards, or across them where
    /// they run along it.
    pub(super) fn widest(&self, across: bool) -> Length {
        let far = |at: usize| self.outline.iter().map(|it| it[at]).max().unwrap_or_default();
        let (end, all) = if across { (far(1), &self.behind) } else { (far(0), &self.stops) };
        let (mut last, mut most) = (Length::ZERO, Length::ZERO);
        for at in all.iter().copied().filter(|at| *at <= end).chain([end]) {
            most = most.max(at.minus(last));
            last = at;
        }
        most
    }

    /// What all of it measures: the surface, less what is cut out.
    pub fn area(&self) -> Area {
        let of =
            |[along, across]: &Part| Area::of(along[1].minus(along[0]), across[1].minus(across[0]));
        let all = self.parts.iter().fold(Area::ZERO, |sum, part| sum.plus(of(part)));
        self.holes.iter().fold(all, |sum, hole| sum.minus(of(hole)))
    }

    /// By run and by framing, how little a joint is wanted there, in thousandths: in a ceiling's
    /// middle third at all, then the nearer to its middle; or to an opening's corner, nearer than a
    /// foot.
    fn shy(&self, of: Surface) -> Vec<Vec<i64>> {
        let end = self.end();
        let part = |of: Length, by: Length| match (of.nanometres(), by.nanometres()) {
            (of, by) if of > 0 && by > 0 => (i128::from(of) * 1000 / i128::from(by)) as i64,
            _ => 0,
        };
        let shy = |run: &Run, at: Length| {
            if of == Surface::Ceiling {
                let third = end.part(3);
                let deep = part(at.minus(third).min(end.minus(third).minus(at)), third);
                return if self.is_middle(at) { IN_MIDDLE + deep } else { 0 };
            }
            let mut sum = 0;
            for [along, across] in &self.holes {
                if across[0] < run.across[1] && run.across[0] < across[1] {
                    for edge in along {
                        let off = at.minus(*edge).max(edge.minus(at));
                        sum += part(CORNER.minus(off), CORNER);
                    }
                }
            }
            sum
        };
        let all = |run| self.stops.iter().map(|at| shy(run, *at)).collect();
        self.runs.iter().map(all).collect()
    }

    /// The same for the search.
    pub(super) fn rows(&self, input: &Input, stock: Length, sizes: &[Length]) -> Rows {
        let widths = input.board.widths();
        let run = |it: &Run| {
            let thin = it.across[1].minus(it.across[0]).times(2) <= it.board;
            let [from, to] = it.along.map(Length::nanometres);
            let width = widths.iter().position(|width| *width == it.board).unwrap_or(0);
            layout::Run { row: it.row, from, to, thin, width }
        };
        Rows {
            runs: self.runs.iter().map(run).collect(),
            stops: self.stops.iter().map(|it| it.nanometres()).collect(),
            stock: stock.nanometres(),
            least: input.least.nanometres(),
            sizes: sizes.iter().map(|it| it.nanometres()).collect(),
            widths: if widths.len() > 1 { COUNTS.to_vec() } else { Vec::new() },
            shy: self.shy(input.of),
        }
    }
}

fn ceiling(input: &Input) -> Result<Plan, Faults> {
    Ok(room::solve(&room::of_outline!(input))?.plan)
}

/// A wall from the ceiling down, as boards are hung, and its holes.
fn wall(input: &Input) -> Result<(Plan, Vec<Part>), Faults> {
    let long = input.wall.unwrap_or_default();
    let high = input.high.minus(input.gap);
    let walls: Vec<Wall> = shape::rectangle(long, high);
    let refused = |at: usize, key: &str, given: Length, most: Length| Fault {
        path: format!("openings.{at}.{key}"),
        label: &w::OPENING,
        given: given.exact(),
        says: say!(w::PAST_EDGE, most),
    };
    let mut faults = Faults::new();
    let mut holes = Vec::new();
    for (at, opening) in input.openings.iter().enumerate() {
        let left = opening.from.unwrap_or_default();
        let (right, top) = (left.plus(opening.wide), opening.sill.plus(opening.high));
        if right > long {
            faults.push(refused(at, "wide", opening.wide, long.minus(left)));
        }
        if top > input.high {
            faults.push(refused(at, "high", opening.high, input.high.minus(opening.sill)));
        }
        let low = input.high.minus(opening.sill).min(high);
        let hole: Part = [[left, right], [input.high.minus(top), low]];
        let over = |[along, across]: &Part| {
            let [own, high] = hole;
            along[0] < own[1] && own[0] < along[1] && across[0] < high[1] && high[0] < across[1]
        };
        if let Some(other) = holes.iter().position(over) {
            let path = format!("openings.{at}.from");
            let (label, given) = (&w::FROM_LEFT, left.exact());
            faults.push(Fault { path, label, given, says: say!(w::OVERLAPS, other as i64 + 1) });
        }
        holes.push(hole);
    }
    match Plan::close(&walls) {
        Ok(plan) if faults.is_empty() => Ok((plan, holes)),
        Ok(_) => Err(faults),
        Err(_) => Err(vec![Fault {
            path: "wall".to_owned(),
            label: &w::WALL_LONG,
            given: long.exact(),
            says: (&w::WHY_LONG).into(),
        }]),
    }
}

/// Boards stand on end, and studs behind them run their way.
pub(super) fn is_upright(input: &Input) -> bool {
    input.of == Surface::Wall && input.run == Way::Square
}

/// Which way the joists over a ceiling run, and how far apart, where that is said.
pub(super) fn joists(input: &Input) -> Option<(Way, Length)> {
    let along = input.joists_along.map(|apart| (Way::Along, apart));
    let said = along.or(input.joists_square.map(|apart| (Way::Square, apart)));
    said.filter(|_| input.of == Surface::Ceiling)
}

/// The joists or studs behind the boards run their way.
pub(super) fn runs_along(input: &Input) -> bool {
    is_upright(input) || joists(input).is_some_and(|(way, _)| way == input.run)
}

/// The row that says how far apart the framing stands that boards cross, or the backing where they
/// cross none, with what it says.
pub(super) fn under(input: &Input) -> (&'static str, &'static Phrase, Length) {
    match joists(input) {
        Some((way @ Way::Along, apart)) if way != input.run => {
            ("joists_along", &w::JOISTS_ALONG, apart)
        }
        Some((way @ Way::Square, apart)) if way != input.run => {
            ("joists_square", &w::JOISTS_SQUARE, apart)
        }
        _ => ("spacing", &w::SPACING, input.spacing),
    }
}

/// Centers of the framing that boards run along, across them to the surface's end, rising; none where
/// they cross it.
fn behind(input: &Input, end: Length) -> Vec<Length> {
    let mut all = Vec::new();
    if !runs_along(input) {
        return all;
    }
    for at in input.members.iter().filter_map(|member| member.at) {
        put_in_order(&mut all, at);
    }
    if input.members.is_empty() {
        let apart = joists(input).map_or(input.spacing, |(_, apart)| apart);
        let mut at = input.first;
        while at <= end {
            all.push(at);
            at = at.plus(apart);
        }
    }
    all
}

/// Where framing stands along the boards, ends left out; where they run along it, backing that is put
/// in: behind upright ones as far apart as studs stand.
fn stops(input: &Input, long: Length) -> Result<Vec<Length>, Faults> {
    let mut all: Vec<Length> = Vec::new();
    let along = runs_along(input);
    let (path, label, apart) = under(input);
    if along || input.members.is_empty() {
        let mut at = if along { Length::ZERO } else { input.first };
        while at < long && all.len() <= MOST_STOPS {
            if at > Length::ZERO {
                all.push(at);
            }
            at = at.plus(apart);
        }
    } else {
        for member in &input.members {
            let at = member.at.unwrap_or_default();
            if at > Length::ZERO && at < long && !all.contains(&at) {
                put_in_order(&mut all, at);
            }
        }
    }
    if all.len() <= MOST_STOPS {
        return Ok(all);
    }
    Err(vec![Fault {
        path: path.to_owned(),
        label,
        given: apart.exact(),
        says: say!(w::TOO_MANY, MOST_STOPS as i64),
    }])
}

/// The runs of one row: what hangs together along it. Boards hang over a hole or a notch that
/// takes a part of the row only, and are cut out.
fn runs_of(
    parts: &[Part],
    holes: &[Part],
    (row, board): (usize, Length),
    band: [Length; 2],
) -> Vec<Run> {
    let mut all: Vec<Run> = Vec::new();
    let [top, bottom] = band;
    for [along, [from, to]] in parts {
        let across = [(*from).max(top), (*to).min(bottom)];
        if across[0] >= across[1] {
            continue;
        }
        let mut run = Run { row, along: *along, across, board };
        // It joins what it touches.
        while let Some(at) =
            all.iter().position(|it| it.along[0] < run.along[1] && run.along[0] < it.along[1])
        {
            let other = all.remove(at);
            run.along = [run.along[0].min(other.along[0]), run.along[1].max(other.along[1])];
            run.across = [run.across[0].min(other.across[0]), run.across[1].max(other.across[1])];
        }
        let place = all.iter().position(|it| it.along[0] > run.along[0]).unwrap_or(all.len());
        all.insert(place, run);
    }
    // What takes the whole row breaks the run.
    for [[left, right], [above, below]] in holes {
        let mut next = Vec::new();
        for run in all {
            let apart = *right <= run.along[0] || *left >= run.along[1];
            if apart || *above > run.across[0] || *below < run.across[1] {
                next.push(run);
                continue;
            }
            for along in [[run.along[0], *left], [*right, run.along[1]]] {
                if along[0] < along[1] {
                    next.push(Run { along, ..run });
                }
            }
        }
        all = next;
    }
    all
}
