//! The answer as it is shown. Every figure has a key that never changes: other marks link to them.

use super::Calculator;
use super::drawing::drawing;
use super::shown as s;
use super::working::{fitting_sources, reynolds, told, working};
use super::{Answer, Input, Piece, Size};
use crate::measure::unit::{CFM, FPM, IN_WC, IN_WC_PER_100_FT, PERCENT};
use crate::measure::{Length, Rounding};
use crate::rules::air::friction::Regime;
use crate::rules::air::run::{Duct, DuctKind};
use crate::rules::air::working::{inches, near};
use crate::rules::air::{flex, velocity};
use crate::say;
use crate::sheet::{Caution, Check, Figure, Part, PartRow, Sheet};
use crate::words::{Amount, Arg, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let headline = Figure::plain("flow-after", &s::FLOW_AFTER, near(&CFM, answer.after).into());
    let is_changed = answer.piece.is_some() || answer.run != answer.now;
    let next = match (is_changed, answer.held) {
        (false, _) => &s::NEXT_NONE,
        (_, Some(_)) => &s::NEXT,
        (_, None) => &s::NEXT_ALONE,
    };
    Sheet {
        headline,
        lead: None,
        next: Some(next.into()),
        figures: figures(answer),
        checks: checks(input, answer),
        working: working(input, answer),
        parts: parts(input, answer),
        materials: Vec::new(),
        cautions: cautions(input, answer),
        drawing: Some(drawing(input, answer)),
    }
}

fn figures(answer: &Answer) -> Vec<Figure> {
    let mut all = Vec::new();
    let mut add = |key, name, unit, value: f64| {
        all.push(Figure::plain(key, name, near(unit, value).into()));
    };
    let Answer { now, run, flow, loss, after, .. } = answer;
    add("flow-now", &s::FLOW_NOW, &CFM, *flow);
    if let Some(held) = answer.held {
        add("flow-held", &s::FLOW_HELD, &CFM, held.flow);
        add("other-held", &s::OTHER_EACH, &CFM, held.other);
        add("loss-held", &s::LOSS_HELD, &IN_WC, held.loss);
    }
    if after > flow {
        add("flow-gained", &s::GAINED, &CFM, after - flow);
    } else {
        add("flow-lost", &s::LOST, &CFM, flow - after);
    }
    add("flow-kept", &s::SHARE, &PERCENT, 100.0 * after / flow);
    add("loss-now", &s::LOSS, &IN_WC, *loss);
    let same = run.loss(*flow).drop + answer.piece.map_or(0.0, |piece| piece.loss(*flow).drop);
    add("loss-same-flow", &s::LOSS_AFTER, &IN_WC, same);
    add("rate-now", &s::RATE, &IN_WC_PER_100_FT, now.rate(*flow));
    add("rate-after", &s::RATE_AFTER, &IN_WC_PER_100_FT, run.rate(*after));
    add("velocity-now", &s::VELOCITY, &FPM, now.velocity(*flow));
    add("velocity-after", &s::VELOCITY_AFTER, &FPM, run.velocity(*after));
    if let Some(tight) = answer.tight {
        add("flow-tight", &s::TIGHT, &CFM, tight);
        add("slack-costs", &s::SLACK_COST, &CFM, tight - after);
    }
    if let Some(Size::Inches(size)) = answer.size {
        all.push(Figure::plain("size-back", &s::SIZE_BACK, inches(size).into()));
        all.push(Figure::plain("trade-size", &s::TRADE_SIZE, whole(size).into()));
    }
    all
}

/// The next whole inch.
fn whole(size: f64) -> Length {
    Length::inches(libm::ceil(size - 1e-9) as i64, 1)
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    // The faster of the two ends.
    let flow = answer.held.map_or(answer.after, |held| held.flow.max(answer.after));
    let kind = match (input.now.kind, input.new_diameter) {
        (DuctKind::Flex, _) => DuctKind::Flex,
        _ => DuctKind::Round,
    };
    let fast = |key, name: &'static Phrase, kind, duct: &Duct| {
        velocity::check(key, name.into(), kind, near(&FPM, duct.velocity(flow)))
    };
    let mut all = vec![fast("velocity", &s::VELOCITY_AFTER, kind, &answer.run)];
    if let Some(piece) = &answer.piece {
        let flexible = input.piece == Piece::Flex;
        let kind = if flexible { DuctKind::Flex } else { DuctKind::Round };
        all.push(fast("piece-velocity", &s::PIECE_VELOCITY, kind, piece));
        if flexible {
            all.push(flex::check("piece-slack", (&s::PIECE_SLACK).into(), answer.piece_slack));
        }
    }
    if let Some(slack) = input.now.slack.filter(|_| answer.run.correction > 1.0) {
        all.push(flex::check("run-slack", (&s::RUN_SLACK).into(), slack));
    }
    all
}

fn parts(input: &Input, answer: &Answer) -> Vec<Part> {
    let mut all = Vec::new();
    let mut part = |key, title: &'static Phrase, rows: Vec<(Text, Text)>| {
        let row = |(name, value)| PartRow { name, value, puts: Vec::new() };
        Part::add(&mut all, key, title, None, rows.into_iter().map(row).collect());
    };
    let mut back = Vec::new();
    match answer.size {
        Some(Size::Inches(size)) => {
            let value = say!(s::SIZE_VALUE, inches(size), whole(size));
            back.push(((&s::SIZE_RUN).into(), value));
        }
        Some(Size::None) => back.push(((&s::SIZE_RUN).into(), (&s::SIZE_NONE).into())),
        None => {}
    }
    if let Some(tight) = answer.tight {
        back.push(((&s::SIZE_SLACK).into(), said(near(&CFM, tight).into())));
    }
    part("back", &s::SIZE_PART, back);
    let guess = |(now, after): &(f64, f64)| {
        (say!(s::GUESS_ROW, near(&CFM, *now)), say!(s::GUESS, near(&CFM, *after)))
    };
    part("guess", &s::GUESS_PART, answer.guesses.iter().map(guess).collect());
    let how = |name: &'static Phrase, duct: &Duct, flow: f64| {
        let regime = Regime::at(duct.reynolds(flow)).words();
        (name.into(), say!(s::HOW, reynolds(duct, flow), regime))
    };
    let mut runs = vec![
        how(&s::RUN_NOW, &answer.now, answer.flow),
        how(&s::RUN_AFTER, &answer.run, answer.after),
    ];
    runs.extend(answer.piece.map(|piece| how(&s::PIECE, &piece, answer.after)));
    part("how", &s::HOW_PART, runs);
    let fits = input.fittings.iter().chain(&input.added_fittings);
    let fits = fits.map(|fit| {
        let name = say!(s::FITTING, fit.count, fit.kind.label());
        (name, told(fit, &answer.now, answer.flow))
    });
    part("fittings", &s::FITTINGS_PART, fits.collect());
    all
}

/// An amount as a text of its own.
fn said(amount: Amount) -> Text {
    Text { phrase: &s::AMOUNT, args: vec![Arg::Amount(amount, Rounding::Nearest)] }
}

fn cautions(input: &Input, answer: &Answer) -> Vec<Caution> {
    let mut all = super::DuctBranch::cautions(None);
    let mut sources = fitting_sources(input);
    if input.now.kind == DuctKind::Flex || input.piece == Piece::Flex {
        sources.extend([&flex::HANG, &flex::BEND]);
    }
    if answer.run.correction > 1.0 {
        sources.push(&flex::SLACK);
    }
    for source in sources {
        all.push(Caution { text: source.says.into(), source: Some(source) });
    }
    all
}
