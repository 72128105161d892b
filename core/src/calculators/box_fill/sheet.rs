//! The answer as it is shown.

use super::choices::{AddKind, CableGround};
use super::fill::{Share, Side};
use super::input::{Device, Input};
use super::section;
use super::shown as s;
use super::{Answer, Room, Wall};
use crate::measure::{Length, Volume};
use crate::rules::compare::{Limit, ask, at_least, at_most, unverified};
use crate::rules::electrical::{box_fill as rule, conductor_volume, free_conductor};
use crate::rules::hazards::asbestos::PRESUMED;
use crate::rules::hazards::lead::TARGET;
use crate::say;
use crate::sheet::{
    Caution, Check, Confidence, Expr, Figure, Material, Part, PartRow, Sheet, Source, Step,
};
use crate::words::{Amount, Phrase, Text};

/// Where proving dead is published.
static DEAD: Source = Source {
    key: "nfpa-70e-120.5",
    clause: Phrase { en: "NFPA 70E 120.5, OSHA 29 CFR 1910.333(b)(2)", es: "" },
    says: &s::DEAD_SAYS,
    seen: &s::DEAD_SEEN,
    confidence: Confidence::Read,
};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let side = &answer.sides[answer.tightest];
    let checks = checks(answer);
    let over = side.fill > side.volume;
    let next = over.then(|| {
        let by = Volume::ZERO.minus(side.spare());
        match answer.mends.first() {
            Some(mend) => say!(s::NEXT_OVER, by, mend.name.clone()),
            None => say!(s::NEXT_TAKE_OUT, by),
        }
    });
    let mut cautions = cautions(Some(input));
    if answer.mends.iter().any(|mend| mend.wall != Wall::Kept) {
        let old = Caution::all(&[(&s::OLD_WALL, Some(&PRESUMED)), (TARGET.says, Some(&TARGET))]);
        cautions.splice(1..1, old);
    }
    Sheet {
        headline: figure("fill", fill_name(answer, answer.tightest), side.fill),
        lead: Some(answer.tightest),
        next,
        figures: figures(answer, side),
        checks,
        working: working(input, answer),
        parts: parts(answer),
        materials: materials(input, answer),
        cautions,
        drawing: Some(section::drawing(answer, side)),
    }
}

fn fill_name(answer: &Answer, at: usize) -> Text {
    if answer.sides.len() == 1 { (&s::FILL).into() } else { say!(s::FILL_SIDE, at as i64 + 1) }
}

fn figure(key: &'static str, name: Text, amount: impl Into<Amount>) -> Figure {
    Figure::new(key, name, amount.into())
}

fn figures(answer: &Answer, side: &Side) -> Vec<Figure> {
    let volume = if answer.sides.len() == 1 {
        (&s::VOLUME).into()
    } else {
        say!(s::VOLUME_SIDE, answer.tightest as i64 + 1)
    };
    vec![
        figure("volume", volume, side.volume),
        figure("spare", (&s::SPARE).into(), side.spare()),
        figure("free", (&s::FREE_NEEDED).into(), answer.fit.free_needed),
    ]
}

fn checks(answer: &Answer) -> Vec<Check> {
    let known = answer.edition.is_verified();
    let settled = |check: Check| if known { check } else { unverified(check) };
    let mut checks = Vec::new();
    for (at, side) in answer.sides.iter().enumerate() {
        let key = if answer.sides.len() == 1 {
            "fill".to_owned()
        } else {
            ["fill", &(at + 1).to_string()].join("-")
        };
        let limit = Limit { value: side.volume, source: &rule::FILL };
        let check = at_most(&key, fill_name(answer, at), side.fill, limit);
        let check = settled(Check { note: side.assumed.clone(), ..check });
        let canopy = side.asks && side.fill <= side.volume;
        checks.push(if canopy { ask(check, &s::CANOPY_ASK) } else { check });
    }
    let fit = &answer.fit;
    if let Some((depth, limit)) = fit.depth {
        checks.push(settled(at_least("depth", (&s::DEPTH).into(), depth, limit)));
    }
    if let Some(left) = fit.free_left {
        let limit = Limit { value: fit.free_needed, source: &free_conductor::FREE_CONDUCTOR };
        checks.push(settled(at_least("free", (&s::FREE).into(), left, limit)));
    }
    if let Some((behind, limit)) = fit.setback {
        let behind_surface = behind.max(Length::ZERO);
        let mut check = at_most("setback", (&s::SETBACK).into(), behind_surface, limit);
        if behind < Length::ZERO {
            check.note = Some((&s::STANDS_PROUD).into());
        }
        checks.push(settled(check));
    }
    checks
}

/// A share as the equation that it is.
fn share_expr(share: &Share) -> Expr {
    let each = || Expr::volume(share.each);
    let counted = Expr::count(share.count).times(each());
    if share.quarters == 0 {
        return counted;
    }
    let quarters = Expr::count(share.quarters).times(each()).over(Expr::count(4));
    Expr::Sum(vec![counted, quarters])
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut steps = Vec::new();
    let mut step =
        |key: String, name: Text, expr, source| steps.push(Step { key, name, expr, source });
    let body = match input.enclosure.metal() {
        Some(metal) if metal.family.gangs() && input.gangs > 1 => {
            (Expr::count(input.gangs).times(Expr::volume(metal.volume)), &rule::GANGED)
        }
        Some(metal) => (Expr::volume(metal.volume), metal.source),
        None => (Expr::volume(input.marked), &rule::MARKED),
    };
    step("body".to_owned(), (&s::STEP_VOLUME).into(), body.0, Some(body.1));
    let alone = answer.sides.len() == 1;
    let gangs: i64 = answer.sides.iter().map(|side| side.gangs).sum();
    for (at, side) in answer.sides.iter().enumerate() {
        let key = |name: &str| {
            if alone { name.to_owned() } else { [name, &(at + 1).to_string()].join("-") }
        };
        let mut total = vec![Expr::volume(answer.body)];
        total.extend(input.adds.iter().map(|add| match add.kind {
            AddKind::Marked => Expr::volume(add.volume),
            AddKind::Extension => Expr::volume(add.ring.metal().volume),
        }));
        let mut whole = Expr::Sum(total);
        if answer.barriers > Volume::ZERO {
            whole = whole.less(Expr::volume(answer.barriers));
        }
        if !alone {
            whole = whole.times(Expr::count(side.gangs)).over(Expr::count(gangs));
        }
        if !alone || !input.adds.is_empty() {
            let source = if alone { &rule::FILL } else { &rule::BARRIERS };
            step(key("total"), (&s::STEP_TOTAL).into(), whole, Some(source));
        }
        for (number, share) in side.shares.iter().enumerate() {
            let key = [key("share"), (number + 1).to_string()].join("-");
            step(key, share.name.clone(), share_expr(share), Some(share.source));
        }
        let shares = side.shares.iter().filter(|share| share.volume > Volume::ZERO);
        let mut parts: Vec<Expr> = shares.map(|share| Expr::volume(share.volume)).collect();
        if parts.is_empty() {
            parts.push(Expr::volume(Volume::ZERO));
        }
        step(
            key("fill"),
            fill_name(answer, at),
            Expr::Sum(parts),
            Some(&conductor_volume::ALLOWANCE),
        );
        let spare = Expr::volume(side.volume).less(Expr::volume(side.fill));
        step(key("spare"), (&s::STEP_SPARE).into(), spare, None);
    }
    fit_steps(input, answer, &mut step);
    steps
}

fn fit_steps(
    input: &Input,
    answer: &Answer,
    step: &mut impl FnMut(String, Text, Expr, Option<&'static Source>),
) {
    let least = Expr::length(free_conductor::FROM_SHEATH);
    let free = match answer.fit.emerges {
        None => least,
        Some(emerges) => {
            let past = [emerges, free_conductor::PAST_OPENING].map(Expr::length);
            Expr::Most(vec![least, Expr::Sum(past.to_vec())])
        }
    };
    step("free".to_owned(), (&s::STEP_FREE).into(), free, Some(&free_conductor::FREE_CONDUCTOR));
    if let (Some((_, limit)), Some(build), Some(proud)) =
        (answer.fit.setback, input.finish.build, input.finish.proud)
    {
        let behind = Expr::length(build).less(Expr::length(proud));
        step("setback".to_owned(), (&s::STEP_SETBACK).into(), behind, Some(limit.source));
    }
}

fn parts(answer: &Answer) -> Vec<Part> {
    let mut parts = Vec::new();
    if !answer.mends.is_empty() {
        let rows = answer.mends.iter().map(|mend| PartRow {
            name: mend.name.clone(),
            value: say!(s::SUITS_HOLD, mend.fill, mend.volume),
            puts: mend.puts.clone(),
        });
        parts.push(Part::plain("mends", &s::MENDS, Some(&s::MENDS_NOTE), rows.collect()));
    }
    let alone = answer.sides.len() == 1;
    for (at, (side, room)) in answer.sides.iter().zip(&answer.room).enumerate() {
        let title = |one: &'static Phrase, of: &'static Phrase| match alone {
            true => one.into(),
            false => Text { phrase: of, args: vec![(at as i64 + 1).into()] },
        };
        let shares = side.shares.iter().map(|share| plain(share.name.clone(), share.volume));
        parts.push(Part::new(
            "shares",
            title(&s::SHARES, &s::SHARES_SIDE),
            side.assumed.clone(),
            shares.collect(),
        ));
        parts.push(Part::new(
            "room",
            title(&s::ROOM, &s::ROOM_SIDE),
            Some((&s::ROOM_NOTE).into()),
            room_rows(room),
        ));
    }
    let suits = answer.suits.iter().map(|suits| {
        let name = match suits.metal {
            None => say!(s::SUITS_MARKED),
            Some(metal) if suits.gangs > 1 => say!(s::SUITS_GANGS, metal.name, suits.gangs),
            Some(metal) => metal.name.into(),
        };
        let value = match suits.metal {
            None => say!(s::SUITS_OR_MORE, suits.with.marked),
            Some(_) => say!(s::SUITS_HOLD, suits.fill, suits.volume),
        };
        PartRow { name, value, puts: suits.puts.clone() }
    });
    parts.push(Part::plain("suits", &s::SUITS, Some(&s::SUITS_NOTE), suits.collect()));
    parts
}

fn plain(name: Text, volume: Volume) -> PartRow {
    PartRow { name, value: say!(s::ROOM_COUNT, volume), puts: Vec::new() }
}

fn room_rows(room: &Room) -> Vec<PartRow> {
    let read = |name, value| PartRow { name, value, puts: Vec::new() };
    let mut rows: Vec<PartRow> = Vec::new();
    for (kind, count) in &room.cables {
        let value = if *count == 0 { say!(s::ROOM_NONE) } else { say!(s::ROOM_COUNT, *count) };
        rows.push(read(say!(s::ROOM_CABLES, kind.label()), value));
    }
    let device = if room.device { &s::ROOM_YES } else { &s::ROOM_NONE };
    rows.push(read((&s::ROOM_DEVICE).into(), device.into()));
    rows
}

/// What to have on hand; for a box that is over what the first mend takes beyond what is there,
/// never the box that fails.
fn materials(input: &Input, answer: &Answer) -> Vec<Material> {
    let mut all = boxes(input);
    if answer.sides.iter().any(|side| side.fill > side.volume) {
        let there = all;
        all = answer.mends.first().map(|mend| boxes(&mend.mended)).unwrap_or_default();
        for old in there {
            if let Some(at) = all.iter().position(|new| new.key == old.key) {
                match (all[at].amount, old.amount) {
                    (Amount::Count(new), Amount::Count(old)) if new > old => {
                        all[at].amount = Amount::Count(new - old);
                    }
                    _ => drop(all.remove(at)),
                }
            }
        }
    }
    for Device { kind, count, .. } in &input.devices {
        all.push(Material {
            key: ["device", kind.key()].join("/"),
            name: kind.label().into(),
            amount: Amount::Count(*count),
        });
    }
    all
}

/// The box, its rings and covers.
fn boxes(input: &Input) -> Vec<Material> {
    let mut all = Vec::new();
    let mut add = |key: String, name: Text, count: i64| {
        all.push(Material { key, name, amount: Amount::Count(count) });
    };
    match input.enclosure.metal() {
        None => {
            let key = ["box-marked", &input.marked.exact(), &input.gangs.to_string()].join("/");
            add(key, say!(s::BOX_MARKED, input.marked, input.gangs), 1);
        }
        Some(metal) => {
            let count = if metal.family.gangs() { input.gangs } else { 1 };
            add(metal.key.to_owned(), say!(s::BOX_METAL, metal.name), count);
        }
    }
    for each in &input.adds {
        match each.kind {
            AddKind::Marked => {
                let key = ["ring-marked", &each.volume.exact()].join("/");
                add(key, say!(s::RING_MARKED, each.volume), 1);
            }
            AddKind::Extension => {
                let metal = each.ring.metal();
                add(["ring", metal.key].join("/"), say!(s::RING_EXTENSION, metal.name), 1);
            }
        }
    }
    all
}

pub(super) fn cautions(input: Option<&Input>) -> Vec<Caution> {
    let mut all = Caution::all(&[
        (&s::DEAD, Some(&DEAD)),
        (&s::OLD_WIRING, None),
        (&s::TWO_CIRCUITS, None),
        (&s::LICENSED, None),
        (&s::NOT_ALL, None),
    ]);
    let grounded = |it: &Input| it.cables.iter().all(|cable| cable.ground == CableGround::Same);
    if input.is_some_and(grounded) {
        all.remove(1);
    }
    all
}
