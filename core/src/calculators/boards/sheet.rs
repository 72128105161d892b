//! The answer as it is shown.

use super::drawing;
use super::input::{Input, Surface, Want, Wide, named};
use super::places;
use super::plans::{Answer, Plan, Size};
use super::strips;
use super::surface::{Ground, is_upright, joists as joists_over, runs_along, under};
use super::words as w;
use crate::calculators::Progress;
use crate::layout::by_area;
use crate::measure::unit::{PERCENT, WEIGHT};
use crate::measure::{Area, Length, Measure, Rounding, divide};
use crate::rules::compare::{Limit, at_most, settle};
use crate::rules::finish::board_weights::BOARDS;
use crate::rules::finish::layout::{JOINTS, OPENINGS, SCREWS, screws_apart};
use crate::say;
use crate::sheet::{Caution, Check, Expr, Figure, Material, Part, PartRow, Sheet, Steps};
use crate::wire::Node;
use crate::words::{Amount, Phrase, Text};

pub(super) fn cautions(input: Option<&Input>) -> Vec<Caution> {
    let mut all = Vec::new();
    let is_wall = input.is_some_and(|it| it.of == Surface::Wall);
    let lift = if is_wall { &w::LEANS } else { &w::LIFT };
    for phrase in [lift, &w::PLATFORM, &w::CUT_OUT, &w::DUST, &w::COVER] {
        all.push(Caution { text: phrase.into(), source: None });
    }
    for source in [&JOINTS, &SCREWS] {
        all.push(Caution { text: source.says.into(), source: Some(source) });
    }
    all
}

/// What one board weighs.
fn weighs(input: &Input, Size { long, wide }: Size, steps: &mut Steps) -> Measure {
    let area = Expr::area(Area::of(wide, long));
    let weight = area.times(Expr::measure(input.panel.weighs()));
    let weight = steps.measure("sheet", &w::STEP_SHEET, Some(&BOARDS), &WEIGHT, weight);
    weight.unwrap_or(Measure::whole(&WEIGHT, 0))
}

/// The longest board, the widest of those.
fn longest(plan: &Plan) -> Size {
    plan.boards.iter().copied().max().unwrap_or(Size { long: plan.stock, wide: Length::ZERO })
}

/// What is bought, width by width.
fn bought(input: &Input, plan: &Plan) -> Expr {
    let mut all = Vec::new();
    for wide in input.board.widths() {
        let own = plan.boards.iter().filter(|it| it.wide == *wide);
        let long = own.fold(Length::ZERO, |sum, it| sum.plus(it.long));
        if long > Length::ZERO {
            all.push(Expr::length(*wide).times(Expr::length(long)));
        }
    }
    if let [one] = &*all { one.clone() } else { Expr::Sum(all) }
}

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let plan = answer.plan(input.want);
    let mut working = Steps::default();
    let area = answer.ground.area();
    working.amount("bought", &w::STEP_BOUGHT, None, bought(input, plan));
    let bought = plan.bought();
    let left = Expr::area(bought.minus(area)).over(Expr::area(bought));
    let left = working.measure("left", &w::STEP_LEFT, None, &PERCENT, left);
    let heaviest = weighs(input, longest(plan), &mut working);
    let is_ceiling = input.of == Surface::Ceiling;
    let along_joists = is_ceiling && runs_along(input);
    let screws = plan.screws(&answer.ground, screws_apart(is_ceiling), along_joists);
    let mut figures = Vec::new();
    figures.push(joints(input, answer, plan));
    let mut add = |key, name, amount| figures.push(Figure::plain(key, name, amount));
    add("longest", &w::LONGEST_BOARD, longest(plan).long.into());
    add("heaviest", &w::HEAVIEST, heaviest.into());
    add("tapered", &w::SEAMS, answer.seams().into());
    add("ends", &w::ENDS, plan.ends(&answer.ground).into());
    let corners = match input.of {
        Surface::Ceiling => (&w::CORNERS, answer.ground.perimeter),
        Surface::Wall => (&w::WALL_CORNERS, input.high.minus(input.gap).times(2)),
    };
    add("corners", corners.0, corners.1.into());
    add("screws", &w::SCREWS, screws.into());
    add("surface", &w::AREA, to_a_tenth(area));
    add("bought", &w::BOUGHT, bought.into());
    if input.spare > 0 {
        add("spare", &w::SPARE, input.spare.into());
    }
    if let Some(left) = left {
        add("left", &w::LEFT, left.into());
    }
    Sheet {
        headline: Figure::new("boards", say!(w::BOARDS, mix(input, plan)), plan.count().into()),
        lead: None,
        next: Some(next(input, answer, plan)),
        figures,
        checks: checks(input, answer, plan),
        working: working.0,
        parts: parts(input, answer, plan),
        materials: materials(input, plan, screws),
        cautions: cautions(Some(input)),
        drawing: Some(drawing::drawing(input, answer, plan)),
    }
}

/// How many, and how many of a ceiling's where they are wanted least.
fn joints(input: &Input, answer: &Answer, plan: &Plan) -> Figure {
    let name = match middle(input, answer, plan) {
        Some(middle) => say!(w::JOINTS_MIDDLE, middle),
        None => (&w::JOINTS).into(),
    };
    Figure::new("joints", name, (plan.joints as i64).into())
}

/// End joints in a ceiling's middle third, if any.
fn middle(input: &Input, answer: &Answer, plan: &Plan) -> Option<i64> {
    let middle = plan.in_middle(&answer.ground);
    (input.of == Surface::Ceiling && middle > 0).then_some(middle)
}

/// Square feet to the tenth, as it reads: what is taken over then says so too, and not its square
/// inches.
fn to_a_tenth(area: Area) -> Amount {
    let tenth = Area::square_feet(1).square_nanometres() / 10;
    let tenths = divide(area.square_nanometres(), tenth, Rounding::Nearest);
    Amount::Area(Area::from_square_nanometres(tenths * tenth))
}

/// How many of each size: "4 of 12 ft, 2 of 8 ft", the longest first.
fn mix(input: &Input, plan: &Plan) -> Text {
    let mut sizes: Vec<Size> = Vec::new();
    for size in &plan.boards {
        if !sizes.contains(size) {
            let place = sizes.iter().position(|it| it < size).unwrap_or(sizes.len());
            sizes.insert(place, *size);
        }
    }
    let mut all: Option<Text> = None;
    for size in sizes {
        let one = say!(w::OF_ONE, plan.of(size), sized(input, size));
        all = Some(match all {
            Some(others) => say!(w::AND_MORE, others, one),
            None => one,
        });
    }
    all.unwrap_or_else(|| (&w::NOTHING).into())
}

/// A board by its length; where both widths are bought, by that too.
fn sized(input: &Input, Size { long, wide }: Size) -> Text {
    if input.board == Wide::Both {
        say!(w::M_SIZE, named(wide), long)
    } else {
        say!(w::PIECE_LONG, long)
    }
}

/// What is proven of both widths is proven of the rows that were chosen.
fn of_rows(input: &Input, says: Text) -> Text {
    if input.board == Wide::Both { say!(w::OF_ROWS, says) } else { says }
}

/// What is proven, and which boards leave nothing to trim.
fn next(input: &Input, answer: &Answer, plan: &Plan) -> Text {
    let proof = proof(input, answer, plan);
    let has_gap = is_upright(input) && input.gap > Length::ZERO;
    let tight = plan.tight(has_gap.then(|| answer.ground.end()));
    if answer.progress == Progress::Going || tight.is_empty() {
        return proof;
    }
    let says = if input.spare > 0 { &w::TIGHT_SPARE } else { &w::TIGHT };
    let (many, all) = (tight.len() as i64, numbers(&tight));
    say!(w::AND_THEN, proof, Text { phrase: says, args: vec![all.into(), many.into()] })
}

/// Places from 0 as numbers from 1, three or more in turn as from one to another: "1 to 3, 5".
fn numbers(places: &[usize]) -> Text {
    let mut spans: Vec<[i64; 2]> = Vec::new();
    for number in places.iter().map(|at| *at as i64 + 1) {
        match spans.last_mut() {
            Some([_, last]) if *last + 1 == number => *last = number,
            _ => spans.push([number; 2]),
        }
    }
    let one = |[from, to]: [i64; 2]| match to - from {
        0 => say!(w::NUMBER, from),
        1 => say!(w::AND_MORE, from, to),
        _ => say!(w::FROM_TO, from, to),
    };
    let both = |all: Text, next: Text| say!(w::AND_MORE, all, next);
    spans.into_iter().map(one).reduce(both).unwrap_or_else(|| (&w::NOTHING).into())
}

fn proof(input: &Input, answer: &Answer, plan: &Plan) -> Text {
    let proven = plan.bound as i64 == plan.count();
    if answer.progress == Progress::Going {
        return say!(w::LOOKING, plan.count());
    }
    if answer.progress == Progress::Stopped {
        return stopped(answer, plan, proven);
    }
    if let Some(places) = loose(input, answer) {
        return say!(*off(input), places);
    }
    if input.want == Want::Bought {
        let least = answer.least_bought;
        let is_least = plan.bought() <= least;
        let says =
            if is_least { say!(w::PROVEN_BOUGHT) } else { say!(w::NOT_PROVEN_BOUGHT, least) };
        return of_rows(input, says);
    }
    let says =
        if proven { shown(plan) } else { say!(w::NOT_PROVEN, plan.stock, plan.bound as i64) };
    of_rows(input, says)
}

/// What is proven of a plan that meets its bound.
fn shown(plan: &Plan) -> Text {
    let says = if plan.fewest_joints { &w::PROVEN_BOTH } else { &w::PROVEN_BOARDS };
    Text { phrase: says, args: vec![plan.stock.into()] }
}

/// What holds of a plan whose search was stopped: with more joints there may be fewer boards, unless
/// no layout has fewer.
fn stopped(answer: &Answer, plan: &Plan, proven: bool) -> Text {
    let (boards, joints) = (plan.count(), plan.joints as i64);
    let same = |of: &Plan| of.stock == plan.stock && of.count() == boards;
    let fewest = answer.by_length.iter().any(|(of, fewest)| *fewest && same(of));
    match (proven, fewest) {
        (true, _) if plan.fewest_joints => say!(w::STOPPED_PROVEN, shown(plan)),
        (_, true) => say!(w::STOPPED_FEWEST, boards, plan.stock, joints),
        (true, false) => say!(w::STOPPED_PROVEN, shown(plan)),
        (false, false) => say!(w::STOPPED, boards, plan.stock, plan.bound as i64),
    }
}

/// Whether it is thin board over what is there, which doesn't hang on framing alone.
fn is_skin(input: &Input) -> bool {
    let along = input.of == Surface::Ceiling && runs_along(input);
    let panel = input.panel;
    let limit = if along { panel.spacing_along(false) } else { panel.spacing(false) };
    input.over && limit.is_none()
}

/// What is said of edges with nothing behind them.
fn off(input: &Input) -> &'static Phrase {
    if input.of == Surface::Ceiling { &w::OFF_JOISTS } else { &w::OFF_STUDS }
}

/// Where edges of boards along their framing lie on none of it: "48 in, 96 in".
fn loose(input: &Input, answer: &Answer) -> Option<Text> {
    places(answer.ground.loose.iter().filter(|_| !is_skin(input)))
}

fn places<'a>(all: impl Iterator<Item = &'a Length>) -> Option<Text> {
    let both = |all: Text, next: Text| say!(w::AND_MORE, all, next);
    all.map(|at| say!(w::PIECE_LONG, *at)).reduce(both)
}

fn checks(input: &Input, answer: &Answer, plan: &Plan) -> Vec<Check> {
    let mut all = Vec::new();
    if !is_skin(input) {
        all = on_framing(input, answer, plan);
    }
    all.extend(strips::check(answer, plan));
    all
}

/// What framing has to hold, and where edges and ends lie on it.
fn on_framing(input: &Input, answer: &Answer, plan: &Plan) -> Vec<Check> {
    let is_ceiling = input.of == Surface::Ceiling;
    let along = runs_along(input);
    let mut all = Vec::new();
    if is_ceiling {
        all.push(hung(input, answer));
    }
    if !along {
        return all;
    }
    let [edges, backing] = match is_ceiling {
        true => [&w::CHECK_JOIST_EDGES, &w::CHECK_JOIST_BACKING],
        false => [&w::CHECK_EDGES, &w::CHECK_BACKING],
    };
    let none = Limit { value: 0, source: &JOINTS };
    let edges = at_most("edges", edges.into(), answer.ground.loose.len() as i64, none);
    let note = loose(input, answer).map(|places| say!(*off(input), places));
    all.push(Check { note, ..edges });
    if !answer.ground.holes.is_empty() {
        let at = answer.ground.at_sides();
        let none = Limit { value: 0, source: &OPENINGS };
        let sides = at_most("sides", (&w::CHECK_SIDES).into(), at.len() as i64, none);
        all.push(match places(at.iter()) {
            Some(at) => {
                Check { note: Some(say!(w::ASK_SIDES, at)), ..settle(sides, &w::CHECK_SIDES) }
            }
            None => sides,
        });
    }
    if plan.joints > 0 {
        // Framing runs the boards' way: nothing lies behind ends that meet.
        let ends = at_most("backing", backing.into(), plan.joints as i64, none);
        all.push(settle(ends, &w::ASK_BACKING));
    }
    all
}

/// How far apart framing stands over a ceiling, by the way that the boards lie to it; uneven framing by
/// its widest gap, to the walls too.
fn hung(input: &Input, answer: &Answer) -> Check {
    let apart = |across: bool, said: Length| match input.members.is_empty() {
        true => said,
        false => answer.ground.widest(across),
    };
    let panel = input.panel;
    match joists_over(input) {
        Some((way, said)) if way == input.run => panel.hung_along(false, apart(true, said)),
        // Over board that is there it hangs on that too.
        None if !(input.over && panel.spacing_along(false).is_none()) => {
            panel.hung_either_way(false, apart(false, input.spacing))
        }
        _ => panel.hung(false, apart(false, under(input).2)),
    }
}

fn parts(input: &Input, answer: &Answer, plan: &Plan) -> Vec<Part> {
    let mut all =
        vec![ways(input, answer), by_length(input, answer), places::rows(input, answer, plan)];
    all.extend(places::cut_outs(input, answer, plan));
    all.push(cuts(input, answer, plan));
    all
}

fn ways(input: &Input, answer: &Answer) -> Part {
    let mut rows = Vec::new();
    for (pick, &want) in Want::PICKS.iter().zip(Want::ALL) {
        let plan = answer.plan(want);
        let weight = weighs(input, longest(plan), &mut Steps::default());
        let ends = match middle(input, answer, plan) {
            Some(middle) => say!(w::ENDS_MIDDLE, plan.joints as i64, middle),
            None => say!(w::ENDS_ALL, plan.joints as i64),
        };
        let value = say!(w::PLAN, plan.count(), longest(plan).long, ends, weight);
        let put = ("want".to_owned(), Node::text(pick.key));
        let puts = if want == input.want { Vec::new() } else { vec![put] };
        rows.push(PartRow { name: pick.label.into(), value, puts });
    }
    let note = Some(match input.board {
        Wide::Both => say!(w::OTHER_BOTH, alone(input, Wide::W48), alone(input, Wide::W54)),
        _ => (&w::OTHER_NOTE).into(),
    });
    Part::new("ways", (&w::OTHER_WAYS).into(), note, rows)
}

/// No fewer boards than this do of one width alone, by what the longest hold.
fn alone(input: &Input, board: Wide) -> i64 {
    let input = Input { board, ..input.clone() };
    let gets_in = |long: &Length| input.longest.is_none_or(|longest| *long <= longest);
    let longest = input.stock.lengths().into_iter().filter(gets_in).max().unwrap_or_default();
    Ground::new(&input).map_or(0, |it| by_area(&it.rows(&input, longest, &[])) as i64)
}

fn by_length(input: &Input, answer: &Answer) -> Part {
    let mut rows = Vec::new();
    for (plan, fewest) in &answer.by_length {
        let (boards, joints) = (plan.count(), plan.joints as i64);
        let says = match (*fewest, plan.fewest_joints) {
            (true, true) => &w::FEWEST,
            (true, false) => &w::FEWEST_BOARDS,
            // With more joints there may be fewer.
            (false, _) if plan.bound == plan.boards.len() => &w::FEWEST_FOR,
            (false, _) => &w::FOUND,
        };
        let value = Text { phrase: says, args: vec![boards.into(), joints.into()] };
        rows.push(PartRow { name: say!(w::OF_LENGTH, plan.stock), value, puts: Vec::new() });
    }
    let note = Some(of_rows(input, (&w::LENGTHS_NOTE).into()));
    Part::new("lengths", (&w::LENGTHS).into(), note, rows)
}

fn cuts(input: &Input, answer: &Answer, plan: &Plan) -> Part {
    let mut rows = Vec::new();
    for (board, size) in plan.boards.iter().enumerate() {
        for piece in plan.pieces.iter().filter(|piece| piece.board == board) {
            let [from, to] = piece.along;
            let [top, bottom] = answer.ground.across(&piece.run, piece.along);
            let wide = bottom.minus(top);
            let (number, row) = (board as i64 + 1, piece.run.row as i64 + 1);
            let length = to.minus(from);
            let mut value = match piece.lane {
                0 if wide < piece.run.board => say!(w::CUT_ONE_STRIP, length, wide, from),
                0 => say!(w::CUT_WHOLE, length, wide, from),
                lane if plan.pieces.iter().any(|it| it.board == board && it.lane == 3 - lane) => {
                    say!(w::CUT_STRIP, length, wide, from)
                }
                _ => say!(w::CUT_ONE_STRIP, length, wide, from),
            };
            for (side, [along, down]) in places::cut_off(answer, piece) {
                let [long, wide] = [along, down].map(|it| it[1].minus(it[0]));
                value = say!(w::CUT_OFF, value, side, long, wide);
            }
            rows.push(PartRow {
                name: say!(w::CUT, number, sized(input, *size), row),
                value,
                puts: Vec::new(),
            });
        }
    }
    Part::plain("cuts", &w::CUTS, Some(&w::CUTS_NOTE), rows)
}

fn materials(input: &Input, plan: &Plan, screws: i64) -> Vec<Material> {
    let mut all = Vec::new();
    for wide in input.board.widths() {
        for long in input.stock.lengths() {
            let size = Size { long, wide: *wide };
            let mut count = plan.of(size);
            if size == longest(plan) {
                count += input.spare;
            }
            if count > 0 {
                let board = say!(w::M_BOARD, input.panel.label());
                all.push(Material {
                    key: ["board", input.panel.key(), &wide.exact(), &long.exact()].join(" "),
                    name: say!(w::M_LONG, board, *wide, long),
                    amount: count.into(),
                });
            }
        }
    }
    all.push(Material {
        key: "drywall-screw".to_owned(),
        name: (&w::M_SCREWS).into(),
        amount: screws.into(),
    });
    all
}
