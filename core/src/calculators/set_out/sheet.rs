//! The marks as they are shown, and what the boxes keep clear of.

use super::drawing::drawing;
use super::words as w;
use super::{Answer, BoxKind, Calculator, Datum, Input, Mark, SetOut, Wanted, floor_name, name};
use crate::measure::Length;
use crate::rules::compare::{Limit, ask, at_least, at_most};
use crate::rules::electrical::box_heights::{FOR_PLATE, LASER, LEVEL, OFF_SEAM, SET_OUT};
use crate::rules::electrical::box_setback::most;
use crate::rules::residential::reach::{HIGHEST, LOWEST, PARTS, TO_PART};
use crate::say;
use crate::sheet::{Asks, Check, Expr, FOREMOST, Figure, Part, PartRow, Sheet, Step, Verdict};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let (wanted, mark) = (&input.boxes[0], &answer.marks[0]);
    let is_up = mark.down < Length::ZERO;
    let title = if is_up { &w::FROM_LINE_UP } else { &w::FROM_LINE_DOWN };
    let title = Text { phrase: title, args: vec![name(0, wanted).into()] };
    let mut figures = vec![
        Figure::plain("line", &w::LINE_OVER, answer.line().into()),
        Figure::plain("out", &w::OUT, answer.out.into()),
    ];
    for (key, title, at) in
        [("highest", &w::HIGH_FLOOR, answer.highest), ("lowest", &w::LOW_FLOOR, answer.lowest)]
    {
        let figure = Figure::plain(key, title, Amount::Count(at as i64 + 1));
        figures.push(Figure { said: Some(floor_name(input, at)), ..figure });
    }
    if let Some(tolerance) = answer.tolerance {
        figures.push(Figure::plain("tolerance", &w::WITHIN, tolerance.into()));
    }
    figures.push(Figure::plain("projection", &w::PROJECTION, input.projection().into()));
    let next = match input.from {
        Datum::Highest => say!(w::NEXT_HIGH, floor_name(input, answer.highest)),
        Datum::Own => say!(w::NEXT_OWN),
    };
    Sheet {
        headline: Figure::new("mark", title, size(mark.down).into()),
        lead: None,
        next: Some(next),
        figures,
        checks: checks(input, answer),
        working: working(input, answer),
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions: SetOut::cautions(None),
        drawing: Some(drawing(input, answer)),
    }
}

/// Without its side.
fn size(length: Length) -> Length {
    length.max(Length::ZERO.minus(length))
}

/// With its side in words.
pub(super) fn sided(down: Length) -> Text {
    match down.cmp(&Length::ZERO) {
        std::cmp::Ordering::Less => say!(w::IS_UP, size(down)),
        std::cmp::Ordering::Equal => say!(w::ON_LINE),
        std::cmp::Ordering::Greater => say!(w::IS_DOWN, down),
    }
}

/// The box that has the least of something.
type Least<'a> = &'a dyn Fn(&Wanted, &Mark) -> Option<Length>;

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all = Vec::new();
    // One floor is apart from nothing.
    if answer.floors.len() > 1 {
        let level = at_most("level", (&w::CHECK_LEVEL).into(), answer.out, LEVEL);
        let say = if input.from == Datum::Own { &w::SAY_OWN } else { &w::SAY_HIGH };
        all.push(if level.verdict == Verdict::Over { ask(level, say) } else { level });
    }
    let least = |of: Least<'_>| {
        let mut worst: Option<(usize, Length)> = None;
        for (at, (wanted, mark)) in input.boxes.iter().zip(&answer.marks).enumerate() {
            match of(wanted, mark) {
                Some(value) if worst.is_none_or(|(_, least)| value < least) => {
                    worst = Some((at, value));
                }
                _ => {}
            }
        }
        worst
    };
    let named = |phrase, at: usize| Text { phrase, args: vec![name(at, &input.boxes[at]).into()] };
    // What crews do is no rule: it asks.
    let mut habit = |key, title, why: &'static Phrase, limit: Limit<Length>, of: Least<'_>| {
        if let Some((at, value)) = least(of) {
            let check = at_least(key, named(title, at), value, limit);
            let check = if check.verdict == Verdict::Over { ask(check, why) } else { check };
            all.push(Check { asks: Asks::Minded, ..check });
        }
    };
    let line = answer.line();
    if let Some(seam) = input.seam {
        habit("seam", &w::CHECK_SEAM, &w::ASK_SEAM, OFF_SEAM, &|_, mark| {
            let bottom = mark.bottom_over(line);
            Some(bottom.minus(seam).max(seam.minus(bottom.plus(input.tall))))
        });
    }
    if let Some(counter) = input.counter {
        habit("splash", &w::CHECK_SPLASH, &w::ASK_SPLASH, FOR_PLATE, &|wanted, mark| {
            let over = mark.bottom_over(line).minus(counter).minus(input.splash);
            (wanted.kind == BoxKind::Counter).then_some(over)
        });
    }
    if let Some(door) = input.door {
        habit("door", &w::CHECK_DOOR, &w::ASK_DOOR, FOR_PLATE, &|wanted, _| {
            let off = size(wanted.along?.minus(door));
            Some(off.minus(input.wide.part(2)).minus(input.casing))
        });
    }
    if input.hand {
        // What a hand works is the receptacle and the switch, from the floor under it.
        let middle = |wanted: &Wanted, mark: &Mark| {
            let middle = mark.bottom_over(mark.floor).plus(input.tall.part(2));
            (wanted.kind != BoxKind::Alarm).then_some(middle)
        };
        if let Some((at, value)) = least(&|wanted, mark| Some(middle(wanted, mark)?.minus(TO_PART)))
        {
            all.push(at_least("low", named(&w::CHECK_LOW, at), value, LOWEST));
        }
        let none = Length::ZERO;
        if let Some((at, value)) =
            least(&|wanted, mark| Some(none.minus(middle(wanted, mark)?).minus(TO_PART)))
        {
            let value = none.minus(value);
            all.push(at_most("high", named(&w::CHECK_HIGH, at), value, HIGHEST));
        }
    }
    let back = input.projection().minus(input.proud);
    let check = at_most("back", (&w::CHECK_BACK).into(), back, most(input.surface));
    all.push(if back < Length::ZERO { ask(check, &w::PROUD_OF) } else { check });
    all
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut all = Vec::new();
    let mut step = |key: String, name, expr, source| all.push(Step { key, name, expr, source });
    for (at, floor) in input.floors.iter().enumerate() {
        let down = Expr::length(floor.down.unwrap_or_default());
        let parts = [floor.backer, floor.bed, floor.cover].map(Expr::length).to_vec();
        let key = ["floor-", &(at + 1).to_string()].concat();
        let name = say!(w::STEP_FLOOR, floor_name(input, at));
        step(key, name, down.less(Expr::Sum(parts)), Some(&SET_OUT));
    }
    let all_floors = answer.floors.iter().map(|floor| Expr::length(*floor)).collect();
    step("line".to_owned(), (&w::STEP_HIGH).into(), Expr::Least(all_floors), Some(&SET_OUT));
    for (at, (wanted, mark)) in input.boxes.iter().zip(&answer.marks).enumerate() {
        let datum = if input.from == Datum::Own { mark.floor } else { answer.line() };
        let (datum, height) =
            (Expr::length(datum), Expr::length(wanted.height.unwrap_or_default()));
        let (title, expr) = if mark.down < Length::ZERO {
            (&w::FROM_LINE_UP, height.less(datum))
        } else {
            (&w::FROM_LINE_DOWN, datum.less(height))
        };
        let key = ["mark-", &(at + 1).to_string()].concat();
        step(
            key,
            Text { phrase: title, args: vec![name(at, wanted).into()] },
            expr,
            Some(&SET_OUT),
        );
    }
    if let Some(reach) = input.reach {
        let off = Expr::length(input.off).times(Expr::length(reach)).over(Expr::length(input.over));
        step("tolerance".to_owned(), (&w::WITHIN).into(), off, Some(&LASER));
    }
    let reached = input.boxes.iter().zip(&answer.marks);
    let reached = reached.filter(|(wanted, _)| input.hand && wanted.kind != BoxKind::Alarm);
    if let Some(lowest) = reached.map(|(_, mark)| mark.bottom_over(mark.floor)).min() {
        let lower = [lowest, input.tall.part(2)].map(Expr::length).to_vec();
        let lower = Expr::Sum(lower).less(Expr::length(TO_PART));
        step("part".to_owned(), (&w::STEP_PART).into(), lower, Some(&PARTS));
    }
    let finish = [input.board, input.tile, input.skim].map(Expr::length).to_vec();
    step("projection".to_owned(), (&w::PROJECTION).into(), Expr::Sum(finish), None);
    all
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let row = |name, value| PartRow { name, value, puts: Vec::new() };
    let mut marks = Vec::new();
    for (at, (wanted, mark)) in input.boxes.iter().zip(&answer.marks).enumerate() {
        let mut value = say!(w::MARK, sided(mark.down), mark.height(), mark.today.minus(mark.down));
        if let (Some(counter), Some(course), BoxKind::Counter) =
            (input.counter, input.course, wanted.kind)
        {
            let bottom = mark.bottom_over(answer.line()).minus(counter);
            value.phrase = &w::COURSES;
            for edge in [bottom, bottom.plus(input.tall)] {
                let over = edge.nanometres().rem_euclid(course.nanometres().max(1));
                value.args.push(Length::from_nanometres(over).into());
            }
        }
        marks.push(row(name(at, wanted), value));
    }
    let mut spots = Vec::new();
    for (at, (floor, finished)) in input.floors.iter().zip(&answer.floors).enumerate() {
        let value = say!(w::SPOT, floor.down.unwrap_or_default(), *finished);
        spots.push(row(floor_name(input, at), value));
    }
    vec![
        Part::plain(FOREMOST, &w::MARKS, Some(&w::MARKS_NOTE), marks),
        Part::plain("floors", &w::SPOTS, None, spots),
    ]
}
