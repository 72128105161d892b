//! Each figure as an equation with its numbers in.

use super::shown as s;
use super::{Answer, By, How, Input, Known, Made, Tray, Vault, Walls, is_stopped};
use crate::measure::{Area, Length, Measure, unit};
use crate::rules::framing::lumber::{DRESSED, THICK};
use crate::rules::framing::precut::PRECUT;
use crate::rules::residential::ceiling_height::{COUNTED_FROM, LIVED_IN, SLOPED};
use crate::rules::solids::{SOLIDS, slant};
use crate::sheet::{Expr, Source, Step};
use crate::words::Phrase;

/// The steps as they come together: one way in, so that the page carries it once.
struct Steps(Vec<Step>);

impl Steps {
    fn add(
        &mut self,
        key: &str,
        name: &'static Phrase,
        source: Option<&'static Source>,
        expr: Expr,
    ) {
        self.0.push(Step { key: key.to_owned(), name: name.into(), expr, source });
    }
}

fn some(length: Option<Length>) -> Expr {
    Expr::length(length.unwrap_or_default())
}

pub(super) fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut all = Steps(Vec::new());
    if input.known == Known::Stud {
        let plate = Expr::length(input.old_plate.unwrap_or(THICK));
        let plates = Expr::count(input.plates).times(plate);
        let framing = Expr::Sum(vec![some(input.stud), plates]);
        all.add("framing-now", &s::FRAMING, Some(&DRESSED), framing);
    }
    let now = Expr::length(answer.framing).less(some(input.board)).less(some(input.floor_finish));
    all.add("height-now", &s::NOW, None, now);
    match &answer.made {
        Made::Flat(walls) => flat(input, answer, walls, &mut all),
        Made::Tray(it) => tray(input, answer, it, &mut all),
        Made::Vault(it) => vault(input, answer, it, &mut all),
    }
    all.0
}

/// The height that is wanted, where it isn't said outright.
fn wanted(input: &Input, answer: &Answer, all: &mut Steps) {
    let now = Expr::length(answer.now);
    if input.to.by == By::Raise {
        let height = Expr::Sum(vec![now.clone(), some(input.to.raise)]);
        all.add("height-to-be", &s::TO_BE, None, height);
    }
    let higher = Expr::length(answer.highest).less(now);
    all.add("height-change", &s::HIGHER, None, higher);
}

fn flat(input: &Input, answer: &Answer, walls: &Walls, all: &mut Steps) {
    wanted(input, answer, all);
    let framing =
        vec![Expr::length(answer.highest), some(input.new_board), some(input.floor_finish)];
    all.add("framing-to-be", &s::FRAMING_TO_BE, None, Expr::Sum(framing));
    let raise = Expr::length(walls.framing).less(Expr::length(answer.framing));
    all.add("raise", &s::RAISE, None, raise);
    let less = |from: Length, plates: i64| {
        Expr::length(from).less(Expr::count(plates).times(Expr::length(THICK)))
    };
    let cut = !is_stopped(input);
    match input.wall.how {
        _ if !cut => {}
        How::Full => {
            all.add("stud", &s::STUD, Some(&DRESSED), less(walls.framing, input.plates));
            let source = if walls.precut { Some(&PRECUT) } else { None };
            let off = Expr::length(walls.sold).less(Expr::length(walls.stud));
            all.add("cut-off", &s::CUT_OFF, source, off);
        }
        How::Stacked => {
            all.add("cripple", &s::CRIPPLE, Some(&DRESSED), less(walls.raise, input.wall.added));
        }
    }
    let (long, wide) = (some(input.long), some(input.wide));
    let spacing = || Expr::length(walls.spacing);
    let along =
        |wall: Expr| Expr::Sum(vec![Expr::RoundUp(Box::new(wall.over(spacing()))), Expr::count(1)]);
    let studs = if input.perimeter.is_some() {
        along(Expr::length(walls.perimeter))
    } else {
        let around = Expr::count(2).times(Expr::Sum(vec![long.clone(), wide.clone()]));
        all.add("perimeter", &s::PERIMETER, None, around);
        Expr::count(2).times(Expr::Sum(vec![along(long.clone()), along(wide.clone())]))
    };
    if cut {
        all.add("studs", &s::STUDS, None, studs);
    }
    let infill = Expr::length(walls.perimeter).times(Expr::length(walls.raise));
    all.add("infill", &s::INFILL, None, infill);
    if input.floor.is_none() {
        all.add("ceiling-board", &s::BOARD, None, long.times(wide));
    }
    let air = Expr::area(answer.floor).times(Expr::length(answer.higher));
    all.add("air-added", &s::AIR, None, air);
}

fn tray(input: &Input, answer: &Answer, it: &Tray, all: &mut Steps) {
    wanted(input, answer, all);
    let source = Some(&SOLIDS);
    let border = || some(input.border);
    let two = |side: Expr, by: Expr| side.less(Expr::count(2).times(by));
    for (key, name, side) in
        [("tray-long", &s::TRAY_LONG, input.long), ("tray-wide", &s::TRAY_WIDE, input.wide)]
    {
        all.add(key, name, None, two(some(side), border()));
    }
    let of = |[long, wide]: [Length; 2]| Expr::length(long).times(Expr::length(wide));
    all.add("opening", &s::OPENING, None, of(it.mouth));
    let [mouth, lid] = [it.mouth, it.lid].map(|at| at.map(Expr::length));
    let high = Expr::length(it.high);
    if it.lean > Length::ZERO {
        for (key, name, side) in
            [("lid-long", &s::LID_LONG, &mouth[0]), ("lid-wide", &s::LID_WIDE, &mouth[1])]
        {
            all.add(key, name, None, two(side.clone(), Expr::length(it.lean)));
        }
        all.add("slant", &s::SLANT, source, slant(it.lean, it.high));
    }
    all.add("lid", &s::TOP, None, of(it.lid));
    let around = Expr::Sum([mouth, lid].concat());
    all.add("tray-sides", &s::SIDES, source, around.times(Expr::length(it.slant)));
    let air = if it.lean > Length::ZERO {
        let half = it.lean.part(2).times(2);
        let middle = it.mouth.map(|side| side.minus(half));
        let middle = Expr::count(4).times(of(middle));
        let sixfold = Expr::Sum(vec![of(it.mouth), middle, of(it.lid)]);
        sixfold.times(high).over(Expr::count(6))
    } else {
        Expr::area(it.opening).times(high)
    };
    all.add("air-added", &s::AIR_TRAY, source, air);
    let mut board = vec![Expr::area(it.sides), Expr::area(it.top)];
    if !it.keeps {
        board.insert(0, Expr::area(answer.floor).less(Expr::area(it.opening)));
    }
    all.add("ceiling-board", &s::BOARD, None, Expr::Sum(board));
}

fn vault(input: &Input, answer: &Answer, it: &Vault, all: &mut Steps) {
    let source = Some(&SOLIDS);
    let [across, along, rise, sloping] = [it.across, it.along, it.rise, it.slant].map(Expr::length);
    let pitch = || Expr::measure(input.pitch.unwrap_or(Measure::whole(&unit::PITCH, 0)));
    let half = if it.slopes == 2 { across.clone().over(Expr::count(2)) } else { across.clone() };
    let over_run = half.times(pitch());
    all.add("rise", &s::RISE, None, over_run);
    let highest = Expr::Sum(vec![Expr::length(answer.now), rise.clone()]);
    all.add("height-to-be", &s::HIGHEST, None, highest);
    let higher = Expr::length(answer.highest).less(Expr::length(answer.now));
    all.add("height-change", &s::HIGHER, None, higher);
    all.add("slant", &s::SLOPE, source, slant(it.run, it.rise));
    let each = along.clone().times(sloping);
    let ceiling = if it.slopes == 2 { Expr::count(2).times(each) } else { each };
    all.add("ends", &s::ENDS, source, across.clone().times(rise.clone()));
    if it.slopes == 1 {
        all.add("high-wall", &s::HIGH_WALL, None, along.clone().times(rise.clone()));
        let parts = vec![Expr::area(it.ends), Expr::area(it.high_wall)];
        all.add("infill", &s::UPRIGHT, None, Expr::Sum(parts));
    }
    let air = across.clone().times(rise).times(along.clone()).over(Expr::count(2));
    all.add("air-added", &s::AIR, source, air);
    let strips = [
        ("strip-5", &s::STRIP_5, COUNTED_FROM, it.strip_5, "counted", &s::COUNTED),
        ("strip-7", &s::STRIP_7, LIVED_IN.value, it.strip_7, "full", &s::FULL),
    ];
    for (key, name, high, strip, area_key, area_name) in strips {
        // A strip goes no farther than its slope does: then it is the run itself.
        if strip > Length::ZERO && strip < it.run {
            let short = Expr::length(high).less(Expr::length(answer.now));
            let strip = short.over(pitch());
            all.add(key, name, Some(&SLOPED), strip);
        }
        let low = match (strip, it.slopes) {
            (Length::ZERO, _) => None,
            (strip, 1) => Some(Expr::length(strip)),
            (strip, slopes) => Some(Expr::count(slopes).times(Expr::length(strip))),
        };
        let left = match low {
            None => across.clone(),
            Some(low) => across.clone().less(low),
        };
        all.add(area_key, area_name, Some(&SLOPED), left.times(along.clone()));
    }
    if it.counted > Area::ZERO {
        let share = Expr::area(it.full).over(Expr::area(it.counted)).told_in(&unit::PERCENT);
        all.add("full-share", &s::FULL_SHARE, None, share);
    }
    all.add("ceiling-board", &s::BOARD, source, ceiling);
}
