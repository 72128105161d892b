//! The answer as it is shown.

use super::choices::{Cover, Member, Passes, Remedy, Rule};
use super::input::Input;
use super::judge::{STEEL, checks, is_tied};
use super::shown as s;
use super::words as w;
use super::{Answer, Hole, Made, Notch, bare, bore, drawing};
use crate::edition::Basis;
use crate::measure::Length;
use crate::measure::unit::PERCENT;
use crate::rules::compare::is_at_most;
use crate::rules::framing::fireblock::{AIR_BARRIER, FIREBLOCK};
use crate::rules::framing::{joists, top_plates};
use crate::say;
use crate::sheet::{
    Caution, Check, Expr, Figure, Material, Part, PartRow, Put, Sheet, Source, Step, Value, Verdict,
};
use crate::wire::Node;
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer, basis: Basis) -> Sheet {
    let checks = checks(input, answer, basis);
    let headline = match &answer.made {
        Made::OnPaper => Figure::plain("papers", &s::PAPERS, Amount::Count(joists::PAPERS.value)),
        Made::Hole(hole) => Figure::plain("hole", &s::HOLE, hole.bit.into()),
        Made::Notch(notch) => Figure::plain("notch", &s::NOTCH, notch.depth.into()),
    };
    let leads = match &answer.made {
        Made::OnPaper => false,
        // A limit that no hole here keeps to would only mislead.
        Made::Hole(hole) => answer.across.is_some() || !hole.none_passes(),
        Made::Notch(_) => true,
    };
    Sheet {
        headline,
        lead: leads.then_some(0),
        next: next(input, answer, &checks),
        figures: figures(input, answer),
        working: working(input, answer),
        parts: parts(input, answer),
        materials: materials(input, answer),
        cautions: cautions(Some(input)),
        drawing: drawing::drawing(input, answer),
        checks,
    }
}

/// The one thing to do: for the structure first, then the tie, then what is to be asked, then the
/// steel.
pub(super) fn next(input: &Input, answer: &Answer, checks: &[Check]) -> Option<Text> {
    let over = |keys: &[&str]| {
        let bad = |check: &&Check| check.verdict == Verdict::Over && keys.contains(&&*check.key);
        checks.iter().find(bad)
    };
    let hole = match &answer.made {
        Made::OnPaper => return Some(say!(s::NEXT_PAPER)),
        Made::Hole(hole) => Some(hole),
        Made::Notch(_) => None,
    };
    if let Some(hole) = hole.filter(|_| over(&["size", "edge"]).is_some()) {
        return Some(match (hole.bore.largest(hole.center), hole.bore.largest(None)) {
            (Some(here), _) => say!(s::NEXT_HERE, here),
            (None, Some(middle)) => say!(s::NEXT_MOVE, middle),
            (None, None) => say!(s::NEXT_NONE),
        });
    }
    if over(&["size", "length", "section", "in-a-row", "to-hole", "to-notch"]).is_some() {
        return None;
    }
    if let Some(across) = answer.across.as_ref().filter(|_| over(&["tie", "tie-length"]).is_some())
    {
        let severed = across.severed.then(|| say!(s::SEVERED));
        let tie = || say!(s::NEXT_TIE, across.tie.value, top_plates::NAILS_A_SIDE);
        return Some(severed.unwrap_or_else(tie));
    }
    over(STEEL)?;
    let is_joist = input.member.rule() == Rule::Joist;
    let faces = match hole {
        None => &s::OPEN_FACE,
        Some(_) if answer.steel == 2 && is_joist => &s::BOTH_EDGES,
        Some(_) if answer.steel == 2 => &s::BOTH_FACES,
        Some(hole) => match (hole.clear.0 < hole.clear.1, is_joist) {
            (true, true) => &s::TOP_EDGE,
            (true, false) => &s::NEAR_FACE,
            (false, true) => &s::BOTTOM_EDGE,
            (false, false) => &s::FAR_FACE,
        },
    };
    let mut structure = checks.iter().filter(|check| !STEEL.contains(&&*check.key));
    let asks = structure.find(|check| check.verdict != Verdict::Within);
    Some(match asks.map(|check| check.note.clone()) {
        Some(Some(why)) => say!(s::NEXT_ASK, why, faces),
        // Nothing is printed for a sole plate: advice says nothing of the structure.
        None if input.member != Member::Sole => say!(s::NEXT_STEEL, faces),
        _ => say!(s::NEXT_FACES, faces),
    })
}

fn figures(input: &Input, answer: &Answer) -> Vec<Figure> {
    let mut all = Vec::new();
    let mut add = |key, name, length: Option<Length>| {
        all.extend(length.map(|length| Figure::plain(key, name, length.into())));
    };
    match &answer.made {
        Made::OnPaper => {}
        Made::Hole(hole) => {
            add("largest", &s::HERE, hole.bore.largest(hole.center));
            add("largest-centered", &s::CENTERED, hole.bore.largest(None));
            let (near, far) = sides(input);
            add("clear", near, Some(hole.clear.0));
            add("clear-far", far, Some(hole.clear.1));
            add("wander", &w::WANDER, Some(hole.bore.wander));
        }
        Made::Notch(notch) => {
            add("deepest", &s::DEEPEST, bore::sixteenths(notch.cap.value));
            let span = input.span.filter(|_| notch.longest.is_some());
            add("third-from", &s::THIRD_FROM, span.map(|span| span.part(3)));
            add("third-to", &s::THIRD_TO, span.map(|span| span.minus(span.part(3))));
        }
    }
    add("tie-least", &s::TIE_LEAST, tie_least(answer));
    all.extend(
        share(answer)
            .value()
            .and_then(Value::amount)
            .map(|it| Figure::plain("share", &s::SHARE, it)),
    );
    all
}

/// What the wood on both sides of a hole is called.
fn sides(input: &Input) -> (&'static Phrase, &'static Phrase) {
    match input.member.rule() {
        Rule::Joist => (&s::CLEAR_TOP, &s::CLEAR_BOTTOM),
        _ => (&s::CLEAR, &s::CLEAR_FAR),
    }
}

/// How much of the width is gone.
fn share(answer: &Answer) -> Expr {
    let gone = match (&answer.across, &answer.made) {
        (Some(across), _) => across.section,
        (_, Made::Hole(hole)) => hole.bit,
        (_, Made::Notch(notch)) => notch.depth,
        (_, Made::OnPaper) => Length::ZERO,
    };
    Expr::length(gone).over(Expr::length(answer.width)).told_in(&PERCENT)
}

/// The shortest tie, where by either reading one is needed.
fn tie_least(answer: &Answer) -> Option<Length> {
    let across = answer.across.as_ref()?;
    // No tie mends a plate that is cut in two, and none is of a sole plate's matter.
    let tied = across.untied.source == across.tie.source && !across.severed;
    (tied && !is_at_most(across.sum, across.untied)).then_some(across.tie.value)
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let mut all = Vec::new();
    let mut step = |key: &str, name: &'static Phrase, expr, source: Option<&'static Source>| {
        all.push(Step { key: key.to_owned(), name: name.into(), expr, source });
    };
    let length = Expr::length;
    let part = match &answer.made {
        Made::OnPaper => return all,
        Made::Hole(hole) => hole.share,
        Made::Notch(notch) => notch.share,
    };
    let limit = length(answer.width).times(Expr::count(part.over)).over(Expr::count(part.under));
    step("limit", &s::LIMIT, limit, Some(part.source));
    step("share", &s::SHARE, share(answer), None);
    if let Made::Hole(Hole { bit, center, bore, .. }) = &answer.made {
        let half = || length(*bit).over(Expr::count(2));
        let left = |expr: Expr| Expr::Most(vec![expr, length(Length::ZERO)]);
        let (near, far) = sides(input);
        match center {
            None => {
                let both = length(bore.width).less(length(*bit));
                let each = if *bit < bore.width { both } else { left(both) };
                step("clear", &s::CLEAR_EACH, each.over(Expr::count(2)), None);
            }
            Some(center) => {
                let (above, below) = bore.clear(Some(*center), *bit);
                let all = [
                    ("clear", near, above, length(*center)),
                    ("clear-far", far, below, length(bore.width).less(length(*center))),
                ];
                for (key, name, clear, to) in all {
                    let expr = to.less(half());
                    step(key, name, if clear < Length::ZERO { left(expr) } else { expr }, None);
                }
            }
        }
    }
    if let Some(across) = answer.across.as_ref().filter(|_| tie_least(answer).is_some()) {
        let past = Expr::count(2).times(length(top_plates::PAST_OPENING));
        let tie = Expr::Sum(vec![length(across.opening), past]);
        step("tie-least", &s::TIE_LEAST, tie, Some(across.tie.source));
    }
    all
}

/// What may be drilled or cut, each by one tap.
fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let mut rows = Vec::new();
    let mut row = |name: &'static Phrase, value: Text, puts: Vec<Put>| {
        rows.push(PartRow { name: name.into(), value, puts });
    };
    let one = |length: Option<Length>| match length {
        Some(length) => say!(s::IS, length),
        None => say!(s::NONE),
    };
    let put = |key: &str, length: Option<Length>| -> Vec<Put> {
        length.iter().map(|length| (key.to_owned(), Node::Text(length.exact()))).collect()
    };
    let title = match &answer.made {
        Made::OnPaper => return Vec::new(),
        Made::Hole(hole) => {
            let bare = bare(input.passes).map(|bare| hole.bore.with_edge(bare.value));
            for (bore, here, centered) in [
                (Some(hole.bore), &s::HERE, &s::CENTERED),
                (bare, &s::HERE_BARE, &s::CENTERED_BARE),
            ] {
                let Some(bore) = bore else { continue };
                if hole.center.is_some() {
                    let largest = bore.largest(hole.center);
                    row(here, one(largest), put("bit", largest));
                }
                let largest = bore.largest(None);
                let mut puts = put("bit", largest);
                if largest.is_some() {
                    puts.push(("center".to_owned(), Node::text("")));
                }
                row(centered, one(largest), puts);
            }
            let window = match input.member.rule() {
                Rule::Plate if input.member != Member::Sole => &s::WINDOW_PLATE,
                Rule::Joist => &s::WINDOW_TOP,
                _ => &s::WINDOW,
            };
            for (bore, name) in [(Some(hole.bore), window), (bare, &s::WINDOW_BARE)] {
                let Some(bore) = bore else { continue };
                let value = match bore.window(hole.bit).map(bore::on_tape) {
                    Some((from, to)) if from < to => say!(s::FROM_TO, from, to),
                    window => one(window.map(|window| window.0)),
                };
                row(name, value, Vec::new());
            }
            &s::MAY
        }
        Made::Notch(Notch { cap, longest, .. }) => {
            let deepest = bore::sixteenths(cap.value);
            row(&s::DEEPEST, one(deepest), put("depth", deepest));
            if let Some(longest) = longest {
                let longest = bore::sixteenths(longest.value);
                row(&s::LONGEST, one(longest), put("long", longest));
            }
            &s::MAY_CUT
        }
    };
    if answer.steel > 0 {
        let puts = vec![("plates".to_owned(), Node::Whole(answer.steel))];
        row(&s::STEEL_TAKES, say!(s::IS, answer.steel), puts);
    }
    if let Some(tie) = tie_least(answer) {
        let mut puts = put("tie", Some(tie));
        puts.push(("remedy".to_owned(), Node::text(Remedy::Tie.key())));
        row(&s::TIE_LEAST, one(Some(tie)), puts);
    }
    let note = match input.member {
        Member::Sole => &s::SOLE_NOTE,
        Member::PlateDouble | Member::PlateSingle => &s::PLATE_NOTE,
        _ => &s::MAY_NOTE,
    };
    vec![Part::plain("may", title, Some(note), rows)]
}

fn materials(input: &Input, answer: &Answer) -> Vec<Material> {
    let mut all = Vec::new();
    let mut add = |key: &str, name: &'static Phrase, count: i64| {
        if count > 0 {
            let amount = Amount::Count(count);
            all.push(Material { key: key.to_owned(), name: name.into(), amount });
        }
    };
    let (key, name) = match input.passes {
        Passes::Pipe => ("steel-plate/pipe", &s::STEEL_PIPE),
        _ => ("steel-plate/cable", &s::STEEL_CABLE),
    };
    add(key, name, answer.steel);
    if let Some(across) = &answer.across {
        let needed = match input.remedy {
            Remedy::Tie => input.member != Member::Sole,
            Remedy::Sheathed => false,
            Remedy::None => is_tied(input) && !is_at_most(across.section, across.untied),
        };
        let ties = i64::from(needed && !across.severed);
        add("plate-tie", &s::TIE_STEEL, ties);
        add("nail/10d", &s::NAILS, ties * 2 * top_plates::NAILS_A_SIDE);
        add("fireblock-fill", &s::SEALANT, 1 + input.holes.len() as i64);
    }
    all
}

pub(super) fn cautions(input: Option<&Input>) -> Vec<Caution> {
    let mut all = Vec::new();
    let mut say = |text: &'static Phrase, source| {
        all.push(Caution { text: text.into(), source });
    };
    say(&s::BEHIND, None);
    if input.is_none_or(|it| it.member.rule() == Rule::Plate) {
        say(FIREBLOCK.says, Some(&FIREBLOCK));
        say(AIR_BARRIER.says, Some(&AIR_BARRIER));
    }
    if input.is_none_or(|it| matches!(it.member, Member::PlateDouble | Member::PlateSingle)) {
        say(&s::NOT_A_TIE, None);
    }
    say(&s::NO_PROOF, None);
    say(&s::LOCAL, None);
    if input.is_some_and(|it| it.cover == Cover::Bare) {
        all[0].text = say!(s::COUNTED_BARE, all[0].text.clone());
    }
    all
}
