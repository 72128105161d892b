//! The count and the place as they are shown.

use super::words as w;
use super::{Answer, Input, Mount};
use crate::measure::Length;
use crate::rules::air::clearances::FROM_ALARM;
use crate::rules::compare::{Limit, ask, at_least, at_most};
use crate::rules::residential::alarm_places::{
    BELOW_CEILING, BELOW_PEAK, DEAD_AIR, FROM_BATH, FROM_BEDROOM, FROM_FAN, FROM_PEAK, NEEDED,
    cooking, cooking_at_home,
};
use crate::rules::residential::fan_blades::FAN_BLADES;
use crate::rules::residential::smoke_alarms::{ALARMS_OUT, CO_ALARMS, SMOKE_ALARMS};
use crate::say;
use crate::sheet::{
    Anchor, Caution, Check, Clear, Confidence, Drawing, Expr, Figure, Ink, Line, PAGE_PX, Point,
    Sheet, Step, Verdict,
};
use crate::words::{Amount, Phrase};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let mut figures = Vec::new();
    for ((key, name), count) in
        [("bedrooms", &w::IN_BEDROOMS), ("outside", &w::OUTSIDE), ("levels", &w::ON_LEVELS)]
            .into_iter()
            .zip(answer.needed)
    {
        figures.push(Figure::plain(key, name, Amount::Count(count)));
    }
    let checks = checks(input, answer);
    let working = vec![Step {
        key: "needed".to_owned(),
        name: (&w::NEEDED).into(),
        expr: Expr::Sum(answer.needed.map(Expr::count).to_vec()),
        source: Some(&NEEDED),
    }];
    Sheet {
        headline: Figure::plain("needed", &w::NEEDED, Amount::Count(answer.all())),
        lead: input.have.map(|_| 0),
        next: Some((&w::NEXT).into()),
        figures,
        drawing: drawing(&checks),
        checks,
        working,
        parts: Vec::new(),
        materials: Vec::new(),
        cautions: cautions(),
    }
}

pub(super) fn cautions() -> Vec<Caution> {
    Caution::all(&[
        (ALARMS_OUT.says, Some(&ALARMS_OUT)),
        (&w::DEAD, None),
        (SMOKE_ALARMS.says, Some(&SMOKE_ALARMS)),
        (CO_ALARMS.says, Some(&CO_ALARMS)),
        (FAN_BLADES.says, Some(&FAN_BLADES)),
        (&w::SHEET, None),
    ])
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let mut all = Vec::new();
    if let Some(have) = input.have {
        let limit = Limit { value: answer.all(), source: &NEEDED };
        all.push(at_least("have", (&w::CHECK_HAVE).into(), have, limit));
    }
    let (sensing, silence) = (input.sensing, input.silence);
    let on = |mount, length: Option<Length>| length.filter(|_| input.mount == mount);
    let (top, peak) = (on(Mount::Wall, input.top), on(Mount::Slope, input.peak));
    let below = on(Mount::Slope, input.below);
    type Measured = (&'static str, &'static Phrase, Option<Length>, Limit<Length>);
    let least: [Measured; 7] = [
        ("bath", &w::CHECK_BATH, input.bath, FROM_BATH),
        ("register", &w::CHECK_REGISTER, input.register, FROM_ALARM),
        ("fan", &w::CHECK_FAN, input.fan, FROM_FAN),
        ("cooking", &w::CHECK_COOKING, input.cooking, cooking(sensing, silence)),
        ("home", &w::CHECK_HOME, input.cooking, cooking_at_home(sensing, silence)),
        ("corner", &w::CHECK_CORNER, top, DEAD_AIR),
        ("below", &w::CHECK_BELOW, below, BELOW_PEAK),
    ];
    let most: [Measured; 3] = [
        ("bedroom", &w::CHECK_BEDROOM, input.bedroom, FROM_BEDROOM),
        ("top", &w::CHECK_TOP, top, BELOW_CEILING),
        ("peak", &w::CHECK_PEAK, peak, FROM_PEAK),
    ];
    for (key, name, value, limit) in least {
        if let Some(value) = value {
            all.push(unsure(at_least(key, name.into(), value, limit)));
        }
    }
    for (key, name, value, limit) in most {
        if let Some(value) = value {
            all.push(unsure(at_most(key, name.into(), value, limit)));
        }
    }
    all
}

/// What is past a limit that nobody could read asks.
fn unsure(check: Check) -> Check {
    match (check.verdict, check.source.confidence) {
        (Verdict::Over, Confidence::Memory) if check.key == "corner" => ask(check, &w::CORNER_ASK),
        (Verdict::Over, Confidence::Memory) => ask(check, &w::MEMORY),
        _ => check,
    }
}

const LEFT: i64 = 8;
const ROW: i64 = 34;

/// Each distance as a bar, with its limit across it.
fn drawing(checks: &[Check]) -> Option<Drawing> {
    let mut bars = Vec::new();
    let mut longest = Length::ZERO;
    for check in checks {
        if let (Amount::Length(value), Amount::Length(limit)) = (check.value, check.limit) {
            longest = longest.max(value).max(limit);
            bars.push((check, value, limit));
        }
    }
    if bars.is_empty() {
        return None;
    }
    let unit = longest.part(PAGE_PX - 2 * LEFT).plus(Length::from_nanometres(1));
    let mut page = Clear::new(unit, ROW * bars.len() as i64 + 8);
    let mut twin = Vec::new();
    for (at, (check, value, limit)) in bars.into_iter().enumerate() {
        let y = |off: i64| unit.times(ROW * at as i64 + off);
        let left = page.px(LEFT);
        let name = say!(w::LABEL, check.name.clone());
        page.put(Ink::Label { at: Point::new(left, y(11)), anchor: Anchor::Start, text: name });
        let ends = [left, left.plus(value)].map(|x| Point::new(x, y(26)));
        page.path(Line::Cut, &ends, false, &w::MEANS_FAR);
        let across = [y(20), y(32)].map(|y| Point::new(left.plus(limit), y));
        page.path(Line::Hidden, &across, false, &w::MEANS_LIMIT);
        twin.push(say!(w::TWIN, check.name.clone(), value, limit));
    }
    Some(page.done(&w::DRAWING, twin))
}
