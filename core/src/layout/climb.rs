//! Layouts changed a run at a time, kept when they pack into fewer boards, or nearly so.
//!
//! Late acceptance: a layout is kept when it is no worse than the one so many changes ago (Burke
//! and Bykov, "The late acceptance hill-climbing heuristic", European Journal of Operational
//! Research 258 (2017), from memory).

use super::pack::{BOARD, Needs, Packing, Place};
use super::ways::{Way, Ways};
use super::{Cut, Layout, Rows};

/// Where drawn numbers start. Of five starts that were tried this one met the solvers' counts in
/// all 134 rooms that they proved; the others took a joint more in one or two of them.
const FIRST: u64 = 11;

/// One run's place in the layout.
#[derive(Clone, Debug)]
pub(super) struct Spot {
    /// Which ways it has.
    pub(super) ways: usize,
    pub(super) thin: bool,
    /// Which width its boards are.
    pub(super) width: usize,
    /// The runs that touch it.
    pub(super) beside: Vec<usize>,
}

/// What doesn't change while layouts do.
#[derive(Clone, Debug)]
pub(super) struct Ground {
    pub(super) stock: i64,
    pub(super) lengths: Vec<i64>,
    /// Of each length, which width its boards are.
    pub(super) widths: Vec<usize>,
    /// The lengths' numbers, longest first.
    pub(super) order: Vec<usize>,
    pub(super) ways: Vec<Ways>,
    pub(super) spots: Vec<Spot>,
    /// Sizes that boards are bought in.
    pub(super) sizes: Vec<i64>,
    /// By width, what so much of it counts where it is bought.
    pub(super) counts: Vec<i64>,
    /// What counts is what is bought, and not how many.
    pub(super) mixed: bool,
    /// By run and by framing, how little a joint is wanted there.
    pub(super) shy: Vec<Vec<i64>>,
}

impl Ground {
    /// None where there is no run, or one can't be broken by the rules.
    pub(super) fn of(rows: &Rows, mixed: bool) -> Option<Self> {
        if rows.runs.is_empty() {
            return None;
        }
        let (mut known, mut ways) = (Vec::new(), Vec::new());
        let mut ends: Vec<((i64, i64), usize)> = Vec::new();
        let mut spots = Vec::new();
        for run in &rows.runs {
            let own = ((run.from, run.to), run.width);
            let same = ends.iter().position(|it| *it == own);
            let number = same.unwrap_or(ends.len());
            if number == ends.len() {
                ends.push(own);
                ways.push(Ways::new(rows, own.0, own.1, &mut known)?);
            }
            let mut beside = Vec::new();
            for (other, it) in rows.runs.iter().enumerate() {
                if it.row.abs_diff(run.row) == 1 {
                    beside.push(other);
                }
            }
            spots.push(Spot { ways: number, thin: run.thin, width: run.width, beside });
        }
        let (lengths, widths): (Vec<i64>, Vec<usize>) = known.into_iter().unzip();
        let mut order: Vec<usize> = Vec::new();
        for (number, length) in lengths.iter().enumerate() {
            let shorter = order.iter().position(|it| lengths[*it] < *length);
            order.insert(shorter.unwrap_or(order.len()), number);
        }
        let (sizes, shy) = (rows.sizes.clone(), rows.shy.clone());
        let counts = if rows.widths.is_empty() { vec![1] } else { rows.widths.clone() };
        let stock = rows.stock;
        Some(Self { stock, lengths, widths, order, ways, spots, sizes, counts, mixed, shy })
    }

    /// A layout, piece by piece.
    pub(super) fn layout(&self, rows: &Rows, best: &Best) -> Layout {
        let mut places = best.places.clone();
        let mut cuts = Vec::new();
        for ((way, spot), run) in best.chosen.iter().zip(&self.spots).zip(&rows.runs) {
            let mut from = run.from;
            for &number in &way.pieces {
                let to = from + self.lengths[number];
                let place = places.iter().position(|it| it.0 == number && (it.2 > 0) == spot.thin);
                if let Some((_, board, lane)) = place.map(|at| places.remove(at)) {
                    cuts.push(Cut { row: run.row, from, to, board, lane });
                }
                from = to;
            }
        }
        let (joints, shy) = (cuts.len() - rows.runs.len(), self.shyness(&best.chosen));
        Layout { boards: best.boards, joints, shy, cuts }
    }

    /// How little the joints of a layout are wanted where they are.
    fn shyness(&self, chosen: &[Way]) -> i64 {
        let mut sum = 0;
        for (way, shy) in chosen.iter().zip(&self.shy) {
            for (bit, shy) in shy.iter().enumerate() {
                sum += shy * (way.joints >> bit & 1) as i64;
            }
        }
        sum
    }

    fn ways(&self, run: usize) -> &Ways {
        &self.ways[self.spots[run].ways]
    }
}

/// Numbers that look drawn, the same each time: splitmix64 (Vigna, 2015, public domain), from
/// memory.
#[derive(Clone, Debug)]
pub(super) struct Draws(u64);

impl Draws {
    /// One of 0 to `below` less one.
    pub(super) fn draw(&mut self, below: u64) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ mixed >> 30).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ mixed >> 27).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^= mixed >> 31;
        ((u128::from(mixed) * u128::from(below)) >> 64) as u64
    }

    fn of(&mut self, many: usize) -> usize {
        self.draw(many as u64) as usize
    }
}

/// The best layout of a climb: its boards, each run's way, and where its pieces are cut.
#[derive(Clone, Debug)]
pub(super) struct Best {
    pub(super) boards: usize,
    /// What counts: boards, or what is bought.
    pub(super) worth: i64,
    pub(super) chosen: Vec<Way>,
    pub(super) places: Vec<Place>,
    lanes_last: bool,
}

/// A climb under way.
#[derive(Clone, Debug)]
pub(super) struct Climb {
    draws: Draws,
    chosen: Vec<Way>,
    needs: Needs,
    /// Pieces that may still be added.
    left: usize,
    /// Joints in line.
    clashes: usize,
    now: i64,
    late: Vec<i64>,
    packing: Packing,
    pub(super) steps: u32,
    pub(super) best: Option<Best>,
}

/// Changes of one or two runs.
type Change = Vec<(usize, Way)>;

impl Climb {
    /// Starts with so many pieces over the fewest. `start` tells starts apart.
    pub(super) fn new(ground: &Ground, over: usize, start: u64) -> Self {
        let mut draws = Draws((start + FIRST) << 32 | over as u64);
        let runs = ground.spots.len();
        let late = [100, 100, 50, 200, 300, 30][(start % 6) as usize];
        // What is over goes to every second run first; runs that are alike take turns.
        let mut pieces: Vec<usize> = (0..runs).map(|run| ground.ways(run).fewest).collect();
        let mut left = over;
        for run in (1..runs).step_by(2).chain((0..runs).step_by(2)) {
            if left > 0 && ground.ways(run).can(pieces[run] + 1) {
                pieces[run] += 1;
                left -= 1;
            }
        }
        let mut chosen: Vec<Way> = Vec::new();
        for (run, pieces) in pieces.iter().enumerate() {
            let again = run
                .checked_sub(2)
                .filter(|_| start % 2 == 1)
                .map(|at| (&ground.spots[at], &chosen[at]));
            let way = match again {
                Some((spot, way))
                    if spot.ways == ground.spots[run].ways && way.pieces.len() == *pieces =>
                {
                    way.clone()
                }
                _ => {
                    let mut way = Way::default();
                    ground.ways(run).draw(*pieces, &mut way, &mut |below| draws.draw(below));
                    way
                }
            };
            chosen.push(way);
        }
        Self::of(ground, draws, chosen, left, late, start % 3 == 1)
    }

    /// Starts from a layout, with one joint less. None where no joint can go.
    pub(super) fn less(ground: &Ground, from: &Best, start: u64) -> Option<Self> {
        let mut draws = Draws(start << 32 | 1 << 31);
        let mut chosen = from.chosen.clone();
        let runs = chosen.len();
        for _ in 0..16 * runs {
            let run = draws.of(runs);
            let (ways, way) = (ground.ways(run), &mut chosen[run]);
            let can = way.pieces.len() > ways.fewest && ways.can(way.pieces.len() - 1);
            if can && ways.merge(way, &mut |below| draws.draw(below)) {
                return Some(Self::of(ground, draws, chosen, 0, 100, start % 2 == 1));
            }
        }
        None
    }

    fn of(
        ground: &Ground,
        draws: Draws,
        chosen: Vec<Way>,
        left: usize,
        late: usize,
        lanes_last: bool,
    ) -> Self {
        let none = vec![0; ground.lengths.len()];
        let runs = chosen.len();
        let mut climb = Self {
            draws,
            chosen,
            needs: Needs { whole: none.clone(), thin: none },
            left,
            clashes: 0,
            now: 0,
            late: Vec::new(),
            packing: Packing::new(lanes_last),
            steps: 0,
            best: None,
        };
        for run in 0..runs {
            climb.count(ground, run, true);
            climb.clashes += climb.clashes_of(ground, run);
        }
        climb.clashes /= 2;
        climb.now = climb.weigh(ground);
        climb.late = vec![climb.now; late];
        climb
    }

    fn clashes_of(&self, ground: &Ground, run: usize) -> usize {
        let joints = self.chosen[run].joints;
        let beside = &ground.spots[run].beside;
        beside.iter().filter(|it| self.chosen[**it].joints & joints != 0).count()
    }

    fn count(&mut self, ground: &Ground, run: usize, more: bool) {
        let needs =
            if ground.spots[run].thin { &mut self.needs.thin } else { &mut self.needs.whole };
        for &length in &self.chosen[run].pieces {
            if more {
                needs[length] += 1;
            } else {
                needs[length] -= 1;
            }
        }
    }

    fn pack(&mut self, ground: &Ground) -> i64 {
        let sizes: &[i64] = if ground.mixed { &ground.sizes } else { &[] };
        self.packing.pack(ground, sizes, &self.needs)
    }

    fn bought(&self, ground: &Ground) -> i64 {
        self.packing.bought(ground)
    }

    fn worth(&self, ground: &Ground) -> i64 {
        if ground.mixed { self.bought(ground) } else { self.packing.count() }
    }

    /// What the layout costs, with what joints in line add.
    fn weigh(&mut self, ground: &Ground) -> i64 {
        let cost = self.pack(ground) + self.clashes as i64 * 2 * BOARD;
        if self.clashes == 0 {
            let worth = self.worth(ground);
            if self.best.as_ref().is_none_or(|best| worth < best.worth) {
                self.best = Some(self.as_best(worth));
            }
        }
        cost
    }

    fn as_best(&self, worth: i64) -> Best {
        let packing = &self.packing;
        Best {
            boards: packing.count() as usize,
            worth,
            chosen: self.chosen.clone(),
            places: packing.places.clone(),
            lanes_last: packing.lanes_last,
        }
    }

    /// Puts ways in the place of others, which are left in the change.
    fn swap(&mut self, ground: &Ground, change: &mut Change) {
        for (run, way) in change {
            let pieces = self.chosen[*run].pieces.len();
            self.clashes -= self.clashes_of(ground, *run);
            self.count(ground, *run, false);
            std::mem::swap(&mut self.chosen[*run], way);
            self.count(ground, *run, true);
            self.clashes += self.clashes_of(ground, *run);
            self.left = self.left + pieces - self.chosen[*run].pieces.len();
        }
    }

    /// One try.
    pub(super) fn step(&mut self, ground: &Ground) {
        let at = self.steps as usize % self.late.len();
        self.steps += 1;
        let mut change = self.change(ground);
        if !change.is_empty() {
            // What gives a piece away goes first, so that there is one to take.
            self.swap(ground, &mut change);
            let next = self.weigh(ground);
            if next <= self.now || next <= self.late[at] {
                self.now = next;
            } else {
                change.reverse();
                self.swap(ground, &mut change);
            }
        }
        self.late[at] = self.now;
    }

    fn change(&mut self, ground: &Ground) -> Change {
        let runs = ground.spots.len();
        let run = self.draws.of(runs);
        let ways = ground.ways(run);
        let count = self.chosen[run].pieces.len();
        let mut way = self.chosen[run].clone();
        let kind = self.draws.draw(8);
        let draws = &mut self.draws;
        let mut change = Vec::new();
        match kind {
            // Another way, with a piece more or less where that can be.
            0..=2 => {
                let more = kind == 0 && self.left > 0 && ways.can(count + 1);
                let less = kind == 1 && count > ways.fewest && ways.can(count - 1);
                let count = count + usize::from(more) - usize::from(less);
                ways.draw(count, &mut way, &mut |below| draws.draw(below));
            }
            // A joint of this run goes, one of another comes.
            3 => {
                let to = draws.of(runs);
                let mut other = self.chosen[to].clone();
                let can = to != run
                    && count > ways.fewest
                    && ground.ways(to).can(other.pieces.len() + 1)
                    && ways.can(count - 1)
                    && ways.merge(&mut way, &mut |below| draws.draw(below))
                    && ground.ways(to).split(&mut other, &mut |below| draws.draw(below));
                if !can {
                    return change;
                }
                change.push((run, way));
                change.push((to, other));
                return change;
            }
            // As another run is.
            7 => {
                let from = draws.of(runs);
                let like = ground.spots[from].ways == ground.spots[run].ways;
                if !like || self.chosen[from].pieces.len() > count + self.left {
                    return change;
                }
                way.clone_from(&self.chosen[from]);
            }
            _ => ways.shift(&mut way, &mut |below| draws.draw(below)),
        }
        change.push((run, way));
        change
    }
}

/// The same count of boards and of joints, with the joints where they are wanted more, then with less
/// bought: any change that costs no board, no joint and no place is kept.
#[derive(Clone, Debug)]
pub(super) struct Settle {
    climb: Climb,
    bought: i64,
    shy: i64,
    pub(super) best: Best,
    /// Of all that were met, the one that buys least.
    least: i64,
    thrifty: Best,
}

impl Settle {
    /// None where all joints are as welcome as can be.
    pub(super) fn new(ground: &Ground, best: &Best) -> Option<Self> {
        let shy = ground.shyness(&best.chosen);
        let chosen = best.chosen.clone();
        let climb = Climb::of(ground, Draws(FIRST << 16), chosen, 0, 1, best.lanes_last);
        let (bought, thrifty) = (climb.bought(ground), best.clone());
        let best = best.clone();
        (shy > 0).then_some(Self { bought, climb, shy, best, least: bought, thrifty })
    }

    pub(super) fn steps(&self) -> u32 {
        self.climb.steps
    }

    /// What buys less than the best.
    pub(super) fn thrifty(&self) -> Option<&Best> {
        (self.least < self.bought).then_some(&self.thrifty)
    }

    /// One try.
    pub(super) fn step(&mut self, ground: &Ground) {
        let climb = &mut self.climb;
        climb.steps += 1;
        let mut change = climb.change(ground);
        if change.is_empty() {
            return;
        }
        climb.swap(ground, &mut change);
        let shy = ground.shyness(&climb.chosen);
        let mut keeps = shy <= self.shy && climb.clashes == 0 && climb.left == 0;
        if keeps {
            climb.pack(ground);
            keeps = climb.worth(ground) == self.best.worth;
        }
        if !keeps {
            change.reverse();
            climb.swap(ground, &mut change);
            return;
        }
        let bought = climb.bought(ground);
        if (shy, bought) < (self.shy, self.bought) {
            (self.shy, self.bought) = (shy, bought);
            self.best = climb.as_best(climb.worth(ground));
        }
        if bought < self.least {
            self.least = bought;
            self.thrifty = climb.as_best(climb.worth(ground));
        }
    }
}
