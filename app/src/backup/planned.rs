//! What restoring a file would change, in words.

use crate::elements::{El, Piece, el};
use crate::{speech, words as w};
use ledgerboard_core::edition::Electrical;
use ledgerboard_core::job::backup::{Change, Damaged, Plan, Planned};
use ledgerboard_core::job::{Fate, Merged, Terms, TermsFate};
use ledgerboard_core::say;
use ledgerboard_core::words::{Phrase, Text};

/// Every job of the file, and what would become of it.
pub(super) fn planned(plan: &Plan) -> Piece {
    let jobs = plan.jobs.iter().map(job);
    let damaged = plan.damaged.iter().map(damaged);
    el("ul").class("lines").with_all(jobs.chain(damaged)).into()
}

/// Titles that are named with what becomes of them; the rest are counted.
const MOST_TITLES: usize = 6;

fn line(name: &str, says: impl IntoIterator<Item = El>) -> El {
    el("li").with(el("strong").own_text(name)).with_all(says)
}

fn quiet(text: &Text) -> El {
    el("p").class("quiet").text(&speech::say(text))
}

fn job(planned: &Planned) -> El {
    let says = match &planned.change {
        Change::New => vec![quiet(&say!(w::RESTORES_NEW, count(planned.job.marks.len())))],
        Change::Merged(merged) => merges(merged),
    };
    line(&speech::say(&planned.job.heading()), says)
}

fn merges(merged: &Merged) -> Vec<El> {
    const FATES: [(Fate, &Phrase); 6] = [
        (Fate::New, &w::FATE_NEW),
        (Fate::Replaced, &w::FATE_REPLACED),
        (Fate::Both, &w::FATE_BOTH),
        (Fate::Removed, &w::FATE_REMOVED),
        (Fate::StaysGone, &w::FATE_STAYS_GONE),
        (Fate::Here, &w::FATE_HERE),
    ];
    let mut says: Vec<El> = Vec::new();
    for (fate, phrase) in FATES {
        let marks = merged.count(fate);
        if marks == 0 {
            continue;
        }
        says.push(quiet(&Text { phrase, args: vec![count(marks).into()] }));
        if fate != Fate::Here {
            let titled = merged.marks.iter().filter(|mark| mark.fate == fate);
            let titles: Vec<&str> = titled.take(MOST_TITLES).map(|mark| &*mark.title).collect();
            says.push(el("p").own_text(&titles.join(", ")));
        }
    }
    match &merged.terms {
        TermsFate::Here => {}
        TermsFate::Replaced(terms) => says.push(quiet(&say!(w::TERMS_REPLACED, told(terms)))),
        TermsFate::Told(terms) => says.push(quiet(&say!(w::TERMS_TOLD, told(terms)))),
    }
    if let Some(way) = &merged.circle {
        says.push(quiet(&say!(w::RESTORES_CIRCLE, way.join(" ← "))));
    }
    if says.is_empty() {
        says.push(quiet(&say!(w::RESTORES_NOTHING)));
    }
    says
}

/// The file's own name, place and edition, as far as it has them.
fn told(terms: &Terms) -> String {
    let edition = terms.basis.electrical.map(Electrical::key).unwrap_or_default();
    let all = [&*terms.name, &*terms.place, edition];
    all.into_iter().filter(|part| !part.trim().is_empty()).collect::<Vec<_>>().join(" · ")
}

fn damaged(damaged: &Damaged) -> El {
    line(&damaged.name, [quiet(&damaged.says())])
}

fn count(of: usize) -> i64 {
    i64::try_from(of).unwrap_or(i64::MAX)
}
