//! Each figure as an equation with its numbers in.

use super::sheet::WALL_KEYS;
use super::shown as s;
use super::{Answer, Input, Tall};
use crate::measure::{Area, Length};
use crate::plan::{Axis, Plan, Side};
use crate::rules::square::DIAGONALS;
use crate::say;
use crate::sheet::{Expr, Step};
use crate::words::Phrase;

/// The steps as they come together: one way in, so that the page carries it once.
struct Steps(Vec<Step>);

impl Steps {
    fn add(&mut self, key: &str, name: &'static Phrase, expr: Expr) {
        self.0.push(Step { key: key.to_owned(), name: name.into(), expr, source: None });
    }
}

pub(super) fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let plan = &answer.plan;
    let mut all = Steps(Vec::new());
    for ((at, side), key) in plan.sides().iter().enumerate().zip(WALL_KEYS) {
        if side.worked_out {
            let (name, expr) = (say!(s::WALL, at as i64 + 1), worked_out(plan, side));
            all.0.push(Step { key: key.to_owned(), name, expr, source: None });
        }
    }
    let lengths = plan.sides().iter().map(|side| Expr::length(side.length));
    all.add("perimeter", &s::PERIMETER, Expr::Sum(lengths.collect()));
    let parts = plan.rectangles(Axis::Along).into_iter().map(|part| {
        let (long, wide) = part.sizes();
        Expr::length(long).times(Expr::length(wide))
    });
    all.add("floor-area", &s::FLOOR, Expr::Sum(parts.collect()));
    let open = input.openings.iter().map(|it| {
        let (wide, high) = (it.width.unwrap_or_default(), it.height.unwrap_or_default());
        Expr::count(it.count).times(Expr::length(wide)).times(Expr::length(high))
    });
    let open: Vec<Expr> = open.collect();
    let is_open = !open.is_empty();
    if is_open {
        all.add("openings", &s::OPENINGS, Expr::Sum(open));
    }
    let mut tall = |tall: &Tall, keys: [&str; 3], names: [&'static Phrase; 3]| {
        let walls = Expr::length(answer.perimeter).times(Expr::length(tall.height));
        all.add(keys[0], names[0], walls);
        if is_open {
            let less = Expr::area(tall.walls).less(Expr::area(answer.openings));
            let net = Expr::Most(vec![Expr::area(Area::ZERO), less]);
            all.add(keys[1], names[1], net);
        }
        let air = Expr::area(answer.floor).times(Expr::length(tall.height));
        all.add(keys[2], names[2], air);
    };
    tall(
        &answer.now,
        ["wall-area", "wall-area-net", "volume"],
        [&s::WALL_AREA, &s::NET, &s::VOLUME],
    );
    if let Some(to_be) = answer.to_be {
        tall(
            &to_be,
            ["wall-area-to-be", "wall-area-net-to-be", "volume-to-be"],
            [&s::WALL_AREA_TO_BE, &s::NET_TO_BE, &s::VOLUME_TO_BE],
        );
        let (now, to_be) = (answer.now.height, to_be.height);
        let (name, most, least) =
            if to_be < now { (&s::CHANGE_DOWN, now, to_be) } else { (&s::CHANGE_UP, to_be, now) };
        all.add("ceiling-change", name, Expr::length(most).less(Expr::length(least)));
    }
    if let (Some(_), Some(first), Some(second), Some(long)) =
        (answer.square, input.diagonal_1, input.diagonal_2, input.long)
    {
        let of = |length: Length| Expr::length(length).times(Expr::length(length));
        let more = of(first.max(second)).less(of(first.min(second)));
        let shift = more.over(Expr::count(4).times(Expr::length(long)));
        let (key, name) = ("far-wall-shift".to_owned(), (&s::SHIFT).into());
        all.0.push(Step { key, name, expr: shift, source: Some(&DIAGONALS) });
    }
    all.0
}

/// What is missing in its direction: the walls that run the other way, less those that run its.
fn worked_out(plan: &Plan, blank: &Side) -> Expr {
    let others = |heading: bool| {
        let same = plan.sides().iter().filter(|side| {
            side.heading.axis() == blank.heading.axis()
                && (side.heading == blank.heading) == heading
                && *side != blank
        });
        same.map(|side| Expr::length(side.length)).collect::<Vec<_>>()
    };
    let (against, with) = (others(false), others(true));
    if with.is_empty() {
        return Expr::Sum(against);
    }
    Expr::Sum(against).less(Expr::Sum(with))
}
