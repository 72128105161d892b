//! Each way worked, by the calculators and rules that each part of it has anyway.

use super::Answer;
use super::input::Input;
use super::words as w;
use crate::calculators::{board_weight, boards, drying, joint_compound, skim_coat, strip};
use crate::choice;
use crate::fields::Form;
use crate::measure::unit::{CUBIC_YARD, GALLON, HOUR, MONEY_SPENT, PSF, WEIGHT};
use crate::measure::{Area, Length, Measure, Unit};
use crate::rules::finish::board_weights::{BOARDS, Panel};
use crate::rules::finish::compound::{JOINTS as FILLED, RULE};
use crate::rules::finish::dump::{HEAPED, LOOSE_BOARD};
use crate::rules::finish::labor::{FINISH, HANG, PROTECT, STRIPPING, TEAR_OUT};
use crate::rules::finish::layout::{JOINTS, screws_apart};
use crate::rules::finish::old_surface::OldSurface;
use crate::rules::finish::screws::{INTO_WOOD, sold};
use crate::rules::finish::texture::DENSITY;
use crate::rules::framing::board_sheets::WIDTHS;
use crate::rules::framing::dead_weights::CEILINGS;
use crate::sheet::{Expr, Faults, Steps};
use crate::words::Amount;

choice! {
    /// A way to be rid of it.
    pub enum Way {
        /// Scraped, and skimmed twice.
        Strip = "strip", w::STRIP;
        /// Under new board.
        Over = "over", w::OVER_IT;
        /// Out, and new board on bare framing.
        Out = "out", w::TEAR_OUT;
    }
}

/// One way, worked. Three values are low, likely and high.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Worked {
    /// The ceiling comes down by so much.
    pub lost: Length,
    /// Floor to the new surface.
    pub height: Length,
    /// Boxes, if they are left as they are, behind the new surface.
    pub behind: Length,
    /// The screw that is sold and long enough; none where nothing is screwed, or none is.
    pub screw: Option<Length>,
    /// On a square foot of framing, as it is reckoned.
    pub load: Measure,
    /// Weight out.
    pub out: [Measure; 3],
    /// Weight in.
    pub into: Measure,
    /// To the dump.
    pub loads: [i64; 3],
    /// New ones.
    pub boards: i64,
    /// Of compound.
    pub pails: i64,
    /// Whole days, a coat at a time.
    pub days: i64,
    /// One worker's.
    pub hours: [Measure; 3],
    /// Of the rates that are given.
    pub money: Option<[Measure; 3]>,
}

fn told(expr: Expr, unit: &'static Unit) -> Measure {
    match expr.told_in(unit).value().and_then(crate::sheet::Value::amount) {
        Some(Amount::Measure(measure)) => measure,
        _ => Measure::whole(unit, 0),
    }
}

fn count(amount: Option<Amount>) -> i64 {
    match amount {
        Some(Amount::Count(count)) => count,
        _ => 0,
    }
}

/// Boards as they are laid out, and what compound goes on.
#[derive(Clone, Copy)]
struct Laid {
    boards: i64,
    tapered: Length,
    ends: Length,
    corners: Length,
    screws: i64,
}

/// Boards for a ceiling: of two sides laid out, the same for whatever panel; of another shape, or
/// where no layout is found, by area with what is cut away.
fn laid_out(input: &Input) -> Option<Laid> {
    let ground = boards::Input {
        long: Some(input.long),
        wide: Some(input.wide),
        spacing: input.spacing,
        ..boards::Input::blank()
    };
    if input.area.is_some() {
        return None;
    }
    let (plan, over) = boards::fewest(&ground, input.board).ok()?;
    Some(Laid {
        boards: plan.count(),
        tapered: over.tapered(),
        ends: plan.ends(&over),
        corners: over.perimeter,
        screws: plan.screws(&over, screws_apart(true), false),
    })
}

fn by_count(input: &Input, laid: Option<Laid>, key: &str, steps: &mut Steps) -> i64 {
    if let Some(Laid { boards, .. }) = laid {
        return count(steps.amount(key, &w::LAID_OUT, Some(&JOINTS), Expr::count(boards)));
    }
    let each = Expr::area(Area::of(WIDTHS[0], input.board));
    let all = Expr::Sum(vec![Expr::count(1), Expr::measure(input.waste)]);
    let boards = Expr::RoundUp(Box::new(Expr::area(input.ceiling()).times(all).over(each)));
    count(steps.amount(key, &w::BOARDS, Some(&BOARDS), boards))
}

/// Days for so many coats, each dry before the next.
fn days(input: &Input, coats: i64, thick: Length, key: &str, steps: &mut Steps) -> i64 {
    let air = drying::Input {
        temperature: input.temperature,
        humidity: input.humidity,
        thick,
        ..drying::Input::blank()
    };
    let hours = Expr::measure(drying::solve(&air).hours);
    let each = Expr::RoundUp(Box::new(hours.over(Expr::measure(Measure::whole(&HOUR, 24)))));
    count(steps.amount(key, &w::DAYS, None, Expr::count(coats).times(each)))
}

/// What a board is reckoned at; what isn't in that table, as it is carried.
fn reckoned(panel: Panel) -> Expr {
    Expr::measure(panel.dead_load().unwrap_or(panel.weighs()))
}

/// What both ways with new board share: it, and compound for its joints.
fn boarded(
    input: &Input,
    (panel, laid): (Panel, Option<Laid>),
    key: &str,
    steps: &mut Steps,
) -> Result<(i64, i64, Measure), Faults> {
    let sheets = by_count(input, laid, &[key, "-boards"].concat(), steps);
    let carried = board_weight::solve(&board_weight::Input {
        panel,
        long: input.board,
        sheets,
        ..board_weight::Input::blank()
    });
    let area = Some(input.ceiling());
    let by_area = joint_compound::Input {
        by: joint_compound::By::Area,
        area,
        ..joint_compound::Input::blank()
    };
    // Of boards that are laid out the joints are known: one room has more of them than the rule.
    let by_joints = laid.map(|laid| joint_compound::Input {
        by: joint_compound::By::Joints,
        tapered: laid.tapered,
        ends: laid.ends,
        corners: laid.corners,
        screws: Some(laid.screws),
        ..by_area.clone()
    });
    let compound = joint_compound::solve(by_joints.as_ref().unwrap_or(&by_area))?;
    let ways = [
        ("-compound", &w::BY_JOINTS, &FILLED, compound.by_joints.filter(|_| laid.is_some())),
        ("-compound-rule", &w::BY_AREA, &RULE, compound.by_area),
    ];
    for (end, name, source, gallons) in ways {
        if let Some([_, likely, _]) = gallons {
            let likely = Expr::measure(likely);
            steps.measure(&[key, end].concat(), name, Some(source), &GALLON, likely);
        }
    }
    let into = Expr::Sum(vec![Expr::measure(carried.all), Expr::measure(compound.weight)]);
    let into = steps.measure(&[key, "-in"].concat(), &w::INTO, None, &WEIGHT, into);
    Ok((sheets, compound.packages, into.unwrap_or(carried.all)))
}

/// Works the three ways.
///
/// - Height lost: nothing; board + texture left; new board − old board, never below nothing.
/// - Boards: laid out in a short look, or area and what is cut away ÷ a board.
/// - Compound: of boards that are laid out by their joints, with the area's rule beside it; else by
///   that rule.
/// - Screw: all that is over the wood + 5/8 in, the next that is sold.
/// - Out: scrapings; nothing; old board and dry texture. Loads by weight or by volume, rounded up.
/// - Hours: strip and skim as they have them; else area ÷ rates.
///
/// # Errors
/// What a calculator that is called refuses.
pub(super) fn solve(input: &Input) -> Result<Answer, Faults> {
    let mut steps = Steps::default();
    let area = input.ceiling();
    let scraped = strip::solve(&strip::Input {
        long: input.long,
        wide: input.wide,
        area: input.area,
        height: input.height,
        painted: input.painted,
        thick: Some(input.texture),
        ..strip::Input::blank()
    })?;
    // Nothing is left to wet or to scrape: the floor is covered all the same.
    let is_gone = input.texture == Length::ZERO;
    let skimmed = skim_coat::solve(&skim_coat::Input {
        long: input.long,
        wide: input.wide,
        area: input.area,
        old: OldSurface::Texture,
        ..skim_coat::Input::blank()
    })?;
    let texture =
        |end: usize| Expr::length(input.texture).times(Expr::measure(DENSITY[end])).told_in(&PSF);
    let torn = Expr::area(area).times(Expr::measure(input.old.weighs()));
    let torn = steps.measure("torn", &w::TORN, Some(&BOARDS), &WEIGHT, torn);
    let torn = torn.unwrap_or(Measure::whole(&WEIGHT, 0));
    let heap = [("heap-least", &w::HEAP_LEAST, 0), ("heap-most", &w::HEAP_MOST, 1)].map(
        |(key, name, end): (_, _, usize)| {
            let heap = Expr::measure(torn).over(Expr::measure(HEAPED[end]));
            let heap = steps.measure(key, name, Some(&LOOSE_BOARD), &CUBIC_YARD, heap);
            heap.unwrap_or(Measure::whole(&CUBIC_YARD, 0))
        },
    );
    let carries = Expr::measure(input.carries);
    let bed = Expr::measure(input.bed);
    let loads = |weight: Measure, volume: Expr| {
        let each = [Expr::measure(weight).over(carries.clone()), volume.over(bed.clone())];
        let most = Expr::Most(each.map(|it| Expr::RoundUp(Box::new(it))).into());
        count(most.value().and_then(crate::sheet::Value::amount))
    };
    let rates = |of: &[[Measure; 3]], key: &str, steps: &mut Steps| {
        [2, 1, 0].map(|end: usize| {
            let each =
                of.iter().map(|it| Expr::area(area).over(Expr::measure(it[end])).told_in(&HOUR));
            let all = Expr::Sum(each.collect());
            let mut aside = Steps::default();
            let steps = if end == 1 { &mut *steps } else { &mut aside };
            let hours = steps.measure(key, &w::HOURS, Some(&STRIPPING), &HOUR, all);
            hours.unwrap_or(Measure::whole(&HOUR, 0))
        })
    };
    let load = |key: &str, layers: Expr, steps: &mut Steps| {
        let load = steps.measure(key, &w::LOAD, Some(&CEILINGS), &PSF, layers);
        load.unwrap_or(Measure::whole(&PSF, 0))
    };
    let none = Measure::whole(&WEIGHT, 0);
    let wet = [0, 1, 2].map(|end| if is_gone { none } else { scraped.ends[end].wet });
    let bare_hours = match is_gone {
        true => rates(&[PROTECT], "protect", &mut Steps::default()),
        false => [0, 1, 2].map(|end| scraped.ends[end].hours),
    };

    let mut strip = Worked {
        lost: Length::ZERO,
        height: input.height,
        behind: input.behind,
        screw: None,
        load: load("strip-load", reckoned(input.old), &mut steps),
        out: wet,
        into: skimmed.weight,
        loads: [0, 1, 2]
            .map(|end| loads(wet[end], Expr::Is(Amount::Room(scraped.ends[end].heaped)))),
        boards: 0,
        pails: skimmed.pails,
        days: days(input, 2, Length::inches(1, 32), "strip-days", &mut steps),
        hours: [0, 1, 2].map(|end| {
            let both = [bare_hours[end], skimmed.hours[end]].map(Expr::measure);
            told(Expr::Sum(both.into()), &HOUR)
        }),
        money: None,
    };
    let hours = [bare_hours[1], skimmed.hours[1]].map(Expr::measure);
    steps.measure("strip-hours", &w::HOURS, Some(&STRIPPING), &HOUR, Expr::Sum(hours.into()));

    let mut screw = |key: &str, over: Vec<Length>| {
        let all = over.into_iter().chain([INTO_WOOD]).map(Expr::length).collect();
        let source = Some(&crate::rules::finish::screws::SCREWS);
        steps.length(key, &w::SCREW_NEEDED, source, Expr::Sum(all)).and_then(sold)
    };
    let thick = input.over.thick().plus(input.texture);
    let laid = laid_out(input);
    let screws = [
        screw("over-screw", vec![input.over.thick(), input.old.thick(), input.texture]),
        screw("out-screw", vec![input.new.thick()]),
    ];
    let (sheets, pails, into) = boarded(input, (input.over, laid), "over", &mut steps)?;
    let layers = vec![reckoned(input.old), texture(1), reckoned(input.over)];
    let mut over = Worked {
        lost: thick,
        height: input.height.minus(thick),
        behind: input.behind.plus(thick),
        screw: screws[0],
        load: load("over-load", Expr::Sum(layers), &mut steps),
        out: [none; 3],
        into,
        loads: [0; 3],
        boards: sheets,
        pails,
        days: days(input, 3, Length::inches(1, 16), "over-days", &mut steps),
        hours: rates(&[PROTECT, HANG, FINISH], "over-hours", &mut steps),
        money: None,
    };

    let said = [input.joists, input.insulation].into_iter().flatten();
    let all = [over.load].into_iter().chain(said).map(Expr::measure).collect();
    let carried = steps.measure("carried", &w::CARRIED, Some(&CEILINGS), &PSF, Expr::Sum(all));
    let carried = carried.unwrap_or(over.load);

    let (sheets, pails, into) = boarded(input, (input.new, laid), "out", &mut steps)?;
    let (new, old) = (input.new.thick(), input.old.thick());
    let out_weights = [0, 1, 2].map(|end| {
        told(Expr::Sum(vec![Expr::measure(torn), Expr::measure(scraped.ends[end].dry)]), &WEIGHT)
    });
    let mut out = Worked {
        lost: new.minus(old).max(Length::ZERO),
        height: input.height.plus(old).minus(new),
        behind: input.behind.plus(new).minus(old).max(Length::ZERO),
        screw: screws[1],
        load: load("out-load", reckoned(input.new), &mut steps),
        out: out_weights,
        into,
        loads: [0, 1, 2].map(|end| {
            // Loosely heaped likely, too.
            let board = Expr::measure(heap[end.min(1)]);
            let dust = Expr::Is(Amount::Room(scraped.ends[end].heaped));
            let volume = Expr::Sum(vec![board, dust.told_in(&CUBIC_YARD)]);
            loads(out_weights[end], volume)
        }),
        boards: sheets,
        pails,
        days: days(input, 3, Length::inches(1, 16), "out-days", &mut steps),
        hours: rates(&[PROTECT, TEAR_OUT, HANG, FINISH], "out-hours", &mut steps),
        money: None,
    };
    for (key, way) in
        [("strip-money", &mut strip), ("over-money", &mut over), ("out-money", &mut out)]
    {
        way.money = money(input, way, key, &mut steps);
    }
    Ok(Answer { ways: [strip, over, out], carried, torn, heap, working: steps })
}

/// Of the rates that are given; none where none is.
fn money(input: &Input, way: &Worked, key: &str, steps: &mut Steps) -> Option<[Measure; 3]> {
    let rates = &input.rates;
    let mut ends = [Measure::whole(&MONEY_SPENT, 0); 3];
    for (end, spent) in ends.iter_mut().enumerate() {
        let mut sum = Vec::new();
        for (rate, of) in [
            (rates.hour, Expr::measure(way.hours[end])),
            (rates.board, Expr::count(way.boards)),
            (rates.pail, Expr::count(way.pails)),
            (rates.load, Expr::count(way.loads[end])),
        ] {
            if let Some(rate) = rate {
                sum.push(of.times(Expr::measure(rate)).told_in(&MONEY_SPENT));
            }
        }
        if sum.is_empty() {
            return None;
        }
        let mut aside = Steps::default();
        let steps = if end == 1 { &mut *steps } else { &mut aside };
        *spent = steps.measure(key, &w::MONEY, None, &MONEY_SPENT, Expr::Sum(sum))?;
    }
    Some(ends)
}
