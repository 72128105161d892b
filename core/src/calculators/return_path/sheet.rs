//! The answer as it is shown.

use super::drawing::drawing;
use super::shown as s;
use super::{Answer, Central, Flame, Input, Opening, WayKind, is_florida};
use crate::measure::unit::{CFM, FACTOR, FPM, IN_WC, NET_IN2, PASCAL};
use crate::measure::{Length, Measure, Rounding};
use crate::rules::air::doors::{self, NET_SHARE, ORIFICE, PASSES, Rule};
use crate::rules::air::fittings::BOOTS;
use crate::rules::air::friction::FRICTION;
use crate::rules::air::grilles::{RETURN_NET, RETURNS, TRANSFER};
use crate::rules::air::placing::{FLUE, FROM, FROM_FLAME};
use crate::rules::air::standard_air::PASCALS;
use crate::rules::air::working::{inches, loss, near};
use crate::rules::compare::{Limit, ask, at_least, at_most};
use crate::say;
use crate::sheet::{Caution, Check, Expr, Figure, Part, PartRow, Sheet, Source, Step, Verdict};
use crate::words::{Amount, Arg, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let add = adds(input, answer);
    let next = match (input.flame, &add) {
        (Flame::Yes, _) => Some((&s::NEXT_STOP).into()),
        (Flame::Unknown, _) if answer.low => Some((&s::NEXT_LOOK).into()),
        (_, Some(add)) => {
            let missing = near(&NET_IN2, answer.missing);
            Some(say!(s::NEXT_SHORT, missing, add.face, add.cut))
        }
        (Flame::Unknown, None) => Some((&s::NEXT_LOOK).into()),
        (Flame::No, None) => None,
    };
    let headline = match answer.pressure {
        Some(pressure) => {
            Figure::plain("room-pressure", pressure_name(answer), near(&PASCAL, pressure).into())
        }
        None => Figure::plain("needed-area", &s::NEEDED, near(&NET_IN2, answer.needed).into()),
    };
    Sheet {
        headline,
        lead: Some(0),
        next,
        figures: figures(answer, add.as_ref()),
        checks: checks(input, answer),
        working: working(input, answer),
        parts: parts(input, answer, add.as_ref()),
        materials: Vec::new(),
        cautions: cautions(Some(input)),
        drawing: Some(drawing(input, answer)),
    }
}

fn pressure_name(answer: &Answer) -> &'static Phrase {
    if answer.low { &s::PRESSURE_LOW } else { &s::PRESSURE }
}

/// What would bring the room within: each alone.
struct Adds {
    face: Measure,
    each: Measure,
    jump: Length,
    gap: Length,
    cut: Length,
}

fn adds(input: &Input, answer: &Answer) -> Option<Adds> {
    let missing = answer.missing;
    (missing > 0.0).then(|| {
        let face = missing / (NET_SHARE.number() / 100.0);
        let door = crate::rules::air::run::inches(input.door.unwrap_or_default()).max(1.0);
        let gap = answer.gap.plus(inches(missing / door));
        // A floor higher than the gap is cut for too.
        let there = input.gap.unwrap_or_default().minus(input.floor.unwrap_or_default());
        Adds {
            face: near(&NET_IN2, face),
            each: near(&NET_IN2, face * std::f64::consts::SQRT_2),
            jump: inches(libm::sqrt(missing / std::f64::consts::FRAC_PI_4)),
            gap,
            cut: gap.minus(there),
        }
    })
}

fn figures(answer: &Answer, add: Option<&Adds>) -> Vec<Figure> {
    let mut all = Vec::new();
    let mut show =
        |key, name, unit, value| all.push(Figure::plain(key, name, near(unit, value).into()));
    if let Some(pressure) = answer.pressure {
        show("pressure-wc", &s::PRESSURE_WC, &IN_WC, pressure / PASCALS);
        show("needed-area", &s::NEEDED, &NET_IN2, answer.needed);
    }
    show("air-back", if answer.low { &s::BACK_IN } else { &s::BACK }, &CFM, answer.back);
    show("net-area", &s::TOTAL, &NET_IN2, answer.total);
    show("undercut-area", &s::UNDERCUT, &NET_IN2, answer.undercut);
    show("passes", &s::PASSES, &CFM, answer.passes);
    show("missing-area", &s::MISSING, &NET_IN2, answer.missing);
    if let Some(grille) = &answer.grille {
        if let Some(net) = grille.net {
            show("return-net", &s::RETURN_NET, &NET_IN2, net);
        }
        show("return-face", &s::RETURN_FACE, &NET_IN2, grille.face);
    }
    if let Some(add) = add {
        all.push(Figure::plain("face", &s::FACE, add.face.into()));
        all.push(Figure::plain("jump-duct", &s::JUMP, add.jump.into()));
    }
    all
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all = vec![match answer.pressure {
        Some(pressure) => {
            // The same limit either way.
            let name = if answer.low { &s::CHECK_LOW } else { &s::CHECK };
            let by = near(&PASCAL, libm::fabs(pressure));
            let check = at_most("pressure", name.into(), by, answer.limit);
            Check { note: Some((&s::LEAKS).into()), ..check }
        }
        None => {
            let limit = Limit { value: near(&NET_IN2, answer.needed), source: answer.limit.source };
            at_least("shut", (&s::CHECK_SHUT).into(), near(&NET_IN2, answer.total), limit)
        }
    }];
    if let (Some(own), Some(value)) = (input.own, input.flow) {
        let check = at_most("own", (&s::CHECK_OWN).into(), own, Limit { value, source: &FROM });
        let note = answer.low.then(|| (&s::OWN_MORE).into());
        all.push(Check { note, ..check });
    }
    let mut habit = |key, name: &'static Phrase, fpm, limit| {
        let check = at_most(key, name.into(), fpm, limit);
        let loud = check.verdict == Verdict::Over;
        all.push(if loud { ask(check, &s::LOUD) } else { check });
    };
    // Each way takes its share of the air; the fastest face is heard.
    let mut fastest = 0.0_f64;
    for way in &answer.ways {
        if let Some(face) = way.face {
            fastest = fastest.max(answer.back * way.net / answer.total * 144.0 / face);
        }
    }
    if fastest > 0.0 {
        habit("transfer-speed", &s::CHECK_SPEED, near(&FPM, fastest), TRANSFER);
    }
    if let Some(grille) = &answer.grille {
        habit("return-speed", &s::CHECK_RETURN_SPEED, grille.speed, grille.limit);
    }
    if let (Flame::Yes, Some(off)) = (input.flame, input.flame_off) {
        all.push(at_least("flame", (&s::CHECK_FLAME).into(), off, FROM_FLAME));
    }
    all
}

fn net(area: f64) -> Expr {
    Expr::measure(near(&NET_IN2, area))
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut steps = Vec::new();
    let mut step = |key: &str, name: Text, expr, source: Option<&'static Source>| {
        steps.push(Step { key: key.to_owned(), name, expr, source });
    };
    let gap = match input.floor {
        Some(floor) => Expr::Most(vec![
            Expr::length(Length::ZERO),
            Expr::length(input.gap.unwrap_or_default()).less(Expr::length(floor)),
        ]),
        None => Expr::length(answer.gap),
    };
    let door = Expr::length(input.door.unwrap_or_default());
    step("undercut", (&s::UNDERCUT).into(), door.times(gap).told_in(&NET_IN2), None);
    let mut sum = vec![net(answer.undercut)];
    let factor = Expr::measure(near(&FACTOR, PASSES));
    let one = || factor.clone().times(Expr::measure(Measure::whole(&CFM, 1)));
    let pascal = || Expr::measure(Measure::whole(&PASCAL, 1));
    // Square inches that pass so much air at a pressure.
    let worth = |cfm: f64, pascals: Measure| {
        let root = Expr::Root(2, Box::new(Expr::measure(pascals).over(pascal())));
        let area = Expr::measure(near(&CFM, cfm)).over(one().times(root));
        area.times(Expr::measure(Measure::whole(&NET_IN2, 1))).told_in(&NET_IN2)
    };
    for ((at, way), opening) in input.ways.iter().enumerate().zip(&answer.ways) {
        let number = at as i64 + 1;
        let key = ["way-", &number.to_string()].concat();
        let grilles = way_expr(way.kind, way, opening);
        if let Some(duct) = &opening.duct {
            let key = |what: &str| [&key, what].concat();
            step(&key("-grilles"), say!(s::WAY_GRILLES, number), grilles.unwrap_or(net(0.0)), None);
            let lost = loss(duct, opening.flow);
            step(&key("-duct"), say!(s::WAY_DUCT, number), lost, Some(&FRICTION));
            step(
                &key("-boots"),
                say!(s::WAY_BOOTS, number),
                Expr::measure(near(&FACTOR, duct.c)),
                Some(&BOOTS),
            );
            step(
                &key("-air"),
                say!(s::WAY_AIR, number),
                Expr::measure(near(&CFM, opening.flow)),
                None,
            );
            let expr = worth(opening.flow, near(&PASCAL, answer.at));
            step(&key(""), say!(s::WAY, number), expr, Some(&ORIFICE));
        } else if let Some(expr) = grilles {
            step(&key, say!(s::WAY, number), expr, None);
        }
        sum.push(net(opening.net));
    }
    step("net-area", (&s::TOTAL).into(), Expr::Sum(sum), None);
    let passes = net(answer.total).over(Expr::measure(Measure::whole(&NET_IN2, 1))).times(one());
    step("at-1-pa", (&s::STEP_ONE).into(), passes.told_in(&CFM), Some(&ORIFICE));
    let share = || {
        let at_one = Expr::measure(near(&CFM, PASSES * answer.total));
        Expr::measure(near(&CFM, answer.back)).over(at_one)
    };
    let pressure = share().times(share()).times(pascal());
    let none = Expr::measure(Measure::whole(&PASCAL, 0));
    let pressure = if answer.low { none.less(pressure) } else { pressure };
    if answer.pressure.is_some() && answer.total > 0.0 {
        step("pressure", pressure_name(answer).into(), pressure.told_in(&PASCAL), Some(&ORIFICE));
    }
    let needed = worth(answer.back, answer.limit.value);
    step("needed-area", (&s::NEEDED).into(), needed, Some(answer.limit.source));
    if answer.missing > 0.0 {
        let face = net(answer.missing).over(Expr::measure(NET_SHARE)).told_in(&NET_IN2);
        step("face", (&s::FACE).into(), face, None);
    }
    if let (Some(grille), Some(flow)) = (&answer.grille, input.central_flow) {
        let mut face = Expr::measure(flow).over(Expr::measure(grille.wanted));
        if input.central == Central::Return {
            face = face.over(Expr::measure(RETURN_NET));
        }
        step("return-face", (&s::RETURN_FACE).into(), face.told_in(&NET_IN2), Some(&RETURNS));
    }
    steps
}

/// A way's net area; none where it was said.
fn way_expr(kind: WayKind, way: &super::Way, opening: &Opening) -> Option<Expr> {
    match kind {
        WayKind::Known => None,
        WayKind::Grille => {
            let side = |side: Option<Length>| Expr::length(side.unwrap_or_default());
            let face = side(way.wide).times(side(way.high));
            Some(face.times(Expr::measure(way.open())).told_in(&NET_IN2))
        }
        WayKind::Pair | WayKind::Jump => {
            let flipped = |area: &f64| Expr::count(1).over(net(*area).times(net(*area)));
            let sum = Expr::Sum(opening.parts.iter().map(flipped).collect());
            let root = Expr::Root(2, Box::new(sum));
            Some(Expr::count(1).over(root).told_in(&NET_IN2))
        }
    }
}

fn parts(input: &Input, answer: &Answer, add: Option<&Adds>) -> Vec<Part> {
    let mut all = Vec::new();
    let said = |amount: Amount| Text {
        phrase: &s::AMOUNT,
        args: vec![Arg::Amount(amount, Rounding::Nearest)],
    };
    let mut part = |key, title: &'static Phrase, rows: Vec<(Text, Text)>| {
        let row = |(name, value)| PartRow { name, value, puts: Vec::new() };
        let rows = rows.into_iter().map(row).collect();
        all.push(Part::plain(key, title, None, rows));
    };
    if let Some(add) = add {
        let rows: [(&'static Phrase, Amount); 4] = [
            (&s::ADD_GRILLE, add.face.into()),
            (&s::ADD_PAIR, add.each.into()),
            (&s::ADD_JUMP, add.jump.into()),
            (&s::ADD_GAP, add.gap.into()),
        ];
        let rows = rows.into_iter().map(|(name, amount)| (name.into(), said(amount)));
        part("add", &s::ADD_PART, rows.collect());
    }
    part("compared", &s::COMPARED, compared(input, answer));
    if is_florida(input) {
        let face = near(&NET_IN2, answer.back * doors::FLORIDA_FACE as f64 / 100.0);
        let name = say!(s::FLORIDA_FACE, doors::FLORIDA_UNDERCUT);
        let duct = ((&s::FLORIDA_DUCT).into(), (&s::FLORIDA_TIMES).into());
        part("florida", &s::FLORIDA_PART, vec![(name, said(face.into())), duct]);
    }
    all
}

/// Every rule's own need, the published table, and the older rule, each by its name.
fn compared(input: &Input, answer: &Answer) -> Vec<(Text, Text)> {
    let flow = input.flow.unwrap_or(Measure::whole(&CFM, 0));
    let mut rows = Vec::new();
    for rule in Rule::ALL {
        let needed = doors::area(answer.back, rule.most(flow).value.number());
        rows.push((rule.label().into(), say!(s::NEEDS_NET, near(&NET_IN2, needed))));
    }
    // Its next row up: the table goes by steps.
    let row = doors::TABLE.into_iter().find(|[cfm, _]| *cfm as f64 >= answer.back);
    if let Some([cfm, tenths]) = row {
        let name = say!(s::TABLE_ROW, Measure::whole(&CFM, cfm));
        rows.push((name, say!(s::NEEDS_NET, Measure::hundredths(&NET_IN2, tenths * 10))));
    }
    let old = crate::rules::air::run::inches(answer.gap) * doors::AN_INCH as f64;
    rows.push(((&s::OLD_RULE).into(), say!(s::AMOUNT, near(&CFM, old))));
    rows
}

pub(super) fn cautions(input: Option<&Input>) -> Vec<Caution> {
    let mut all = Vec::new();
    let mut add = |phrase: &'static Phrase, source: Option<&'static Source>| {
        all.push(Caution { text: phrase.into(), source });
    };
    if input.is_none_or(|it| it.flame != Flame::No || it.own > it.flow) {
        add(&FLUE, Some(FROM_FLAME.source));
    }
    add(&s::CARPET, None);
    add(&s::DOWN, None);
    add(&s::OLD, None);
    add(&s::FIRE, None);
    add(FROM.says, Some(&FROM));
    all
}
