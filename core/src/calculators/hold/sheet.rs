//! The hold as it is shown: its reasons, its gates, and what a bid needs meanwhile.

use super::Calculator;
use super::input::{Asbestos, Input, Lead, Local, Who};
use super::words as w;
use super::{Answer, Gate, Notice, Settled, solve};
use crate::calculators::Withheld;
use crate::fields::Form;
use crate::measure::{Day, Rounding};
use crate::rules::compare::{ask, at_least};
use crate::rules::hazards::asbestos::{
    self, AFTER, CONTENT_PERCENT, NOTICE_AREA, NOTICE_DAYS, NOTICE_LOOSE, NOTICE_PIPE, SAMPLES,
    VERMICULITE,
};
use crate::rules::hazards::lead::{ADDS_UP_DAYS, FIRM, OWNER, WORK, most_minor};
use crate::rules::hazards::local::UNSAID;
use crate::rules::hazards::silica::{self, ACTION, MOST, SANDING, TASKS};
use crate::rules::hazards::{Deed, Disturbs, HOUSE, Material};
use crate::say;
use crate::sheet::{Caution, Check, Expr, Figure, Part, PartRow, Sheet, Source, Step};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let count = answer.reasons().count();
    let next = match answer.reasons().next() {
        Some(reason) => say!(w::NEXT_HELD, reason.says.clone()),
        None => say!(w::NEXT_OPENED),
    };
    Sheet {
        headline: figure(
            "reasons",
            &w::HOLDS,
            Amount::Count(i64::try_from(count).unwrap_or(i64::MAX)),
        ),
        lead: None,
        next: Some(next),
        figures: figures(input, answer),
        checks: answer.gates.iter().map(check).collect(),
        working: working(input, answer),
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions: cautions(input, answer),
        drawing: None,
    }
}

/// The sheet of a hold that would be open, were its evidence not of a day that is yet to come:
/// that is its one reason, and it says to keep off again.
pub fn ahead(mut sheet: Sheet, says: Text) -> Sheet {
    sheet.headline.amount = Amount::Count(1);
    sheet.next = Some(say!(w::NEXT_HELD, says.clone()));
    let value = say!(w::REASON_BEHIND, &UNSAID.clause);
    let rows = vec![PartRow { name: says, value, puts: Vec::new() }];
    sheet.parts.insert(0, Part::plain("reasons", &w::REASONS, None, rows));
    let told = sheet.cautions;
    sheet.cautions = super::Hold::cautions(None);
    let kept: Vec<_> = told.into_iter().filter(|it| !sheet.cautions.contains(it)).collect();
    sheet.cautions.extend(kept);
    sheet
}

/// What stands in the place of a plan that is held: how much there is, samples, what they cost, the
/// notice and a price to get. Nothing of how the work is done.
pub fn instead(work: &Disturbs, withheld: Withheld) -> Sheet {
    let input = Input {
        material: work.material,
        deed: work.deed,
        area: work.area,
        prices: withheld.prices,
        ..Input::blank()
    };
    let answer = solve(&input);
    let area = work.area.unwrap_or_default();
    let mut figures = figures(&input, &answer);
    figures.retain(|figure| figure.key != "area");
    let mut parts = parts(&input, &answer);
    parts.retain(|part| part.key == "bid");
    parts.extend(withheld.part);
    let held = sheet(&input, &answer);
    let mut cautions = held.cautions;
    // How it is worked on belongs to what is open.
    cautions.retain(|caution| {
        let how = [&WORK, MOST.source, &SANDING, &TASKS];
        caution.text.phrase != &HOUSE && caution.source.is_none_or(|it| !how.contains(&it))
    });
    // All of the material may be more than is worked on.
    let mut working = held.working;
    let least = || (&w::FIGURE_SAMPLES_LEAST).into();
    for figure in &mut figures {
        if figure.key == "samples" {
            figure.name = least();
        }
    }
    for step in &mut working {
        if step.key == "samples" {
            step.name = least();
        }
    }
    Sheet {
        headline: figure("area", &w::FIGURE_AREA, area.into()),
        figures,
        next: None,
        checks: Vec::new(),
        parts,
        cautions,
        working,
        materials: Vec::new(),
        lead: None,
        drawing: None,
    }
}

fn figure(key: &'static str, name: &'static Phrase, amount: Amount) -> Figure {
    Figure { rounding: Rounding::Up, ..Figure::plain(key, name, amount) }
}

fn samples_name(input: &Input) -> &'static Phrase {
    if input.measured().is_some() { &w::FIGURE_SAMPLES } else { &w::FIGURE_SAMPLES_LEAST }
}

fn figures(input: &Input, answer: &Answer) -> Vec<Figure> {
    let count = Amount::Count(answer.samples.value);
    let helps = answer.samples_help;
    let abatement = input.prices.abatement.map(Amount::Count);
    let mut figures = Vec::new();
    for (key, name, amount) in [
        ("samples", samples_name(input), helps.then_some(count)),
        ("area", &w::FIGURE_AREA, input.measured().map(Amount::Area)),
        ("lab", &w::FIGURE_COST, answer.lab_cost.filter(|_| helps).map(Amount::Count)),
        ("abatement", &w::FIGURE_ABATEMENT, abatement),
    ] {
        if let Some(amount) = amount {
            figures.push(figure(key, name, amount));
        }
    }
    figures
}

fn check(gate: &Gate) -> Check {
    let check = at_least(gate.key, gate.name.into(), gate.given, gate.needed);
    match (gate.asks, gate.reasons.first()) {
        (Some(why), _) => ask(check, why),
        (None, Some(reason)) => Check { note: Some(reason.says.clone()), ..check },
        (None, None) => check,
    }
}

fn working(input: &Input, answer: &Answer) -> Vec<Step> {
    let step = |key: &str, name: &'static Phrase, expr| Step {
        key: key.to_owned(),
        name: name.into(),
        expr,
        source: Some(&SAMPLES),
    };
    let count = Expr::count(answer.samples.value);
    let mut steps = Vec::new();
    if answer.samples_help {
        steps.push(step("samples", samples_name(input), count.clone()));
        if let Some(each) = input.prices.sample {
            steps.push(step("lab", &w::STEP_COST, count.times(Expr::count(each))));
        }
    }
    steps
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let read = |name: Text, value: Text| PartRow { name, value, puts: Vec::new() };
    let reasons: Vec<_> = answer
        .reasons()
        .map(|reason| read(reason.says.clone(), say!(w::REASON_BEHIND, &reason.source.clause)))
        .collect();
    let presumed = match answer.presumed {
        Some(source) if source == &VERMICULITE || input.built.is_some() => {
            say!(w::PRESUMED_YES, &source.clause)
        }
        Some(source) => say!(w::PRESUMED_NO_YEAR, &source.clause),
        None => say!(w::PRESUMED_NO),
    };
    let notice = match answer.notice {
        Notice::SizeUnknown => say!(w::NOTICE_UNKNOWN),
        Notice::Loose => say!(w::NOTICE_LOOSE, Amount::Room(NOTICE_LOOSE.value)),
        Notice::Below => {
            say!(
                w::NOTICE_BELOW,
                NOTICE_AREA.value,
                NOTICE_PIPE.value,
                Amount::Room(NOTICE_LOOSE.value)
            )
        }
        Notice::DwellingsUnknown => say!(w::NOTICE_DWELLINGS),
        Notice::LeftOut => say!(w::NOTICE_LEFT_OUT),
        Notice::Due => say!(w::NOTICE_DUE, NOTICE_DAYS.value),
    };
    let price = match input.prices.abatement {
        Some(price) => say!(w::PRICE_GIVEN, price),
        None => say!(w::PRICE_GET),
    };
    let mut bid = vec![
        read((&w::ROW_PRESUMED).into(), presumed),
        read((&w::ROW_NOTICE).into(), notice),
        read((&w::ROW_PRICE).into(), price),
    ];
    if let Some(reached) = answer.local {
        let says = if reached { &w::LOCAL_REACHED } else { &w::LOCAL_BELOW };
        bid.push(read((&w::ROW_LOCAL).into(), says.into()));
    }
    if answer.samples_help {
        let lab = match answer.lab_cost {
            Some(cost) => say!(w::LAB_COST, cost, answer.samples.value),
            None => say!(w::LAB_EACH),
        };
        bid.push(read((&w::ROW_LAB).into(), lab));
    }
    let mut parts = Vec::new();
    Part::add(&mut parts, "reasons", &w::REASONS, None, reasons);
    Part::add(&mut parts, "evidence", &w::EVIDENCE, Some(&w::EVIDENCE_NOTE), evidence(input));
    parts.push(Part::new(
        "bid",
        (&w::BID).into(),
        Some(say!(w::BID_NOTE, CONTENT_PERCENT.value)),
        bid,
    ));
    parts
}

/// What was written down of reports, tests and answers, a line each, for who has to look them up; nothing
/// that was not.
fn evidence(input: &Input) -> Vec<PartRow> {
    let Input { report, paint, office, .. } = input;
    let day = |day: Option<Day>| day.map(|day| day.exact()).unwrap_or_default();
    let told = [
        (
            (report.result != Asbestos::NoneYet).then(|| (&w::REPORT, report.result.label())),
            vec![
                report.lab.clone(),
                report.number.clone(),
                report.accreditation.clone(),
                day(report.dated),
                report.sampled.clone(),
            ],
        ),
        (
            (paint.result != Lead::NoneYet).then(|| (&w::LEAD, paint.result.label())),
            vec![paint.tester.clone(), day(paint.tested)],
        ),
        (
            (office.asks != Local::NotAsked).then(|| (&w::OFFICE, office.asks.label())),
            vec![office.says.clone()],
        ),
    ];
    let row = |(told, lines): (Option<(&'static Phrase, &'static Phrase)>, Vec<String>)| {
        let (name, label) = told?;
        let written = lines.iter().map(|line| line.trim()).filter(|line| !line.is_empty());
        let value = written.fold(Text::from(label), |said, line| say!(w::EVIDENCE_ROW, said, line));
        Some(PartRow { name: name.into(), value, puts: Vec::new() })
    };
    told.into_iter().filter_map(row).collect()
}

/// What a source says, said once: as the caution that it is.
fn published(source: &'static Source) -> Caution {
    Caution { text: source.says.into(), source: Some(source) }
}

fn cautions(input: &Input, answer: &Answer) -> Vec<Caution> {
    let plain = |phrase: &'static Phrase| Caution { text: phrase.into(), source: None };
    let mut all = super::Hold::cautions(None);
    if answer.opened.is_some() {
        // It says no more to keep off, nor who may take samples.
        all.remove(3);
        all.remove(0);
    }
    if matches!(input.material, Material::Texture | Material::Board | Material::Plaster) {
        all.push(plain(&w::SYSTEM));
    }
    if [input.built, input.put_up].into_iter().flatten().any(asbestos::is_later) {
        all.push(published(&AFTER));
    }
    if input.report.result == Asbestos::NoneDetected {
        all.push(plain(&w::MEANS));
    }
    if input.report.result != Asbestos::NoneYet {
        all.push(plain(&w::RECORD));
    }
    if input.deed == Deed::Cover {
        all.push(plain(&w::COVERING));
    }
    match answer.settled {
        Some(Settled::Certified) => all.push(published(&FIRM)),
        Some(Settled::Minor) => {
            let limit = most_minor(input.paint.outside);
            let text = say!(w::LEAD_ADDS, ADDS_UP_DAYS.value, limit.value);
            all.push(Caution { text, source: Some(limit.source) });
        }
        Some(Settled::NoLead) | None => {}
    }
    if input.paint.who == Who::Owner {
        all.push(published(&OWNER));
    }
    if answer.settled != Some(Settled::NoLead) || input.paint.result == Lead::Found {
        all.push(published(&WORK));
    }
    if let Some(source) = silica::behind(input.deed) {
        let text = say!(w::DUST, MOST.value, ACTION.value);
        all.push(Caution { text, source: Some(MOST.source) });
        if source == &SANDING {
            all.extend([published(&SANDING), published(&TASKS)]);
        }
    }
    all.extend([plain(&HOUSE), plain(&w::NO_ADVICE)]);
    all
}
