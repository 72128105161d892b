//! What restoring a file would change, in words.

use crate::elements::{El, Piece, el};
use crate::{speech, words as w};
use ledgerboard_core::job::backup::{Change, Damaged, Plan, Planned};
use ledgerboard_core::job::{Fate, Merged, TermsFate};
use ledgerboard_core::say;
use ledgerboard_core::words::{Phrase, Text};

/// Every job of the file, and what would become of it.
pub(super) fn planned(plan: &Plan) -> Piece {
    let jobs = plan.jobs.iter().map(job);
    let damaged = plan.damaged.iter().map(damaged);
    el("ul").class("lines").with_all(jobs.chain(damaged)).into()
}

fn line(name: &str, says: &[Text]) -> El {
    let says: Vec<String> = says.iter().map(speech::say).collect();
    let says = says.into_iter().map(|text| el("p").class("quiet").text(&text));
    el("li").with(el("strong").own_text(name)).with_all(says)
}

fn job(planned: &Planned) -> El {
    let says = match &planned.change {
        Change::New => vec![say!(w::RESTORES_NEW, count(planned.job.marks.len()))],
        Change::Merged(merged) => merges(merged),
    };
    line(&speech::say(&planned.job.heading()), &says)
}

fn merges(merged: &Merged) -> Vec<Text> {
    const FATES: [(Fate, &Phrase); 6] = [
        (Fate::New, &w::FATE_NEW),
        (Fate::Replaced, &w::FATE_REPLACED),
        (Fate::Both, &w::FATE_BOTH),
        (Fate::Removed, &w::FATE_REMOVED),
        (Fate::StaysGone, &w::FATE_STAYS_GONE),
        (Fate::Here, &w::FATE_HERE),
    ];
    let told = FATES.iter().map(|(fate, phrase)| (merged.count(*fate), *phrase));
    let told = told.filter(|(count, _)| *count > 0);
    let mut says: Vec<Text> =
        told.map(|(marks, phrase)| Text { phrase, args: vec![count(marks).into()] }).collect();
    match &merged.terms {
        TermsFate::Here => {}
        TermsFate::Replaced(terms) => says.push(say!(w::TERMS_REPLACED, terms.name.as_str())),
        TermsFate::Told(terms) => {
            says.push(say!(w::TERMS_TOLD, terms.name.as_str(), terms.place.as_str()))
        }
    }
    if let Some(way) = &merged.circle {
        says.push(say!(w::RESTORES_CIRCLE, way.join(" ← ")));
    }
    if says.is_empty() {
        says.push(say!(w::RESTORES_NOTHING));
    }
    says
}

fn damaged(damaged: &Damaged) -> El {
    line(&damaged.name, &[say!(w::RESTORES_DAMAGED), damaged.problem.says()])
}

fn count(of: usize) -> i64 {
    i64::try_from(of).unwrap_or(i64::MAX)
}
