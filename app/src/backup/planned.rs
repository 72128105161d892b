//! What restoring a file would change, in words.

use crate::elements::{El, Piece, el};
use crate::jobs::shown;
use crate::{speech, words as w};
use ledgerboard_core::edition::Electrical;
use ledgerboard_core::job::backup::{Beside, Change, Damaged, Plan, Planned};
use ledgerboard_core::job::{Fate, Mark, Merged, Terms, TermsFate};
use ledgerboard_core::say;
use ledgerboard_core::words::{Phrase, Text};

/// Every job of the file, and what would become of it.
pub(super) fn planned(plan: &Plan) -> Piece {
    let jobs = plan.jobs.iter().map(job);
    let damaged = plan.damaged.iter().map(damaged);
    let cut = plan.cut_after.as_ref().map(|last| {
        let says = say!(w::CUT_AFTER, last.as_str());
        el("p").class("now").text(&speech::say(&says))
    });
    Piece::all([cut, Some(el("ul").class("lines").with_all(jobs.chain(damaged)))])
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
        Change::Merged(merged) => merges(planned, merged),
    };
    line(&speech::say(&planned.job.heading()), says)
}

fn merges(planned: &Planned, merged: &Merged) -> Vec<El> {
    const FATES: [(Fate, &Phrase); 5] = [
        (Fate::New, &w::FATE_NEW),
        (Fate::Replaced, &w::FATE_REPLACED),
        (Fate::Both, &w::FATE_BOTH),
        (Fate::Removed, &w::FATE_REMOVED),
        (Fate::Here, &w::FATE_HERE),
    ];
    let voice = speech::voice(planned.job.units);
    let own = |text: &Text| el("p").own_text(&voice.say(text));
    let counted = |phrase, marks: usize| quiet(&Text { phrase, args: vec![count(marks).into()] });
    let out = &planned.left_out;
    let later = out.iter().filter(|it| it.here.is_some()).count();
    let mut says: Vec<El> = Vec::new();
    for (fate, phrase) in FATES {
        let is_here = fate == Fate::Here;
        let marks = merged.count(fate).saturating_sub(if is_here { later } else { 0 });
        if marks == 0 {
            continue;
        }
        says.push(counted(phrase, marks));
        if fate == Fate::Replaced {
            says.extend(planned.replaced.iter().map(|it| own(&beside(it, true))));
        } else if !is_here {
            let titled = merged.marks.iter().filter(|mark| mark.fate == fate);
            let titles: Vec<&str> = titled.take(MOST_TITLES).map(|mark| &*mark.title).collect();
            says.push(el("p").own_text(&titles.join(", ")));
        }
    }
    if !out.is_empty() {
        says.push(counted(&w::FATE_STAYS_GONE, out.len()));
        says.extend(out.iter().map(|it| own(&beside(it, false))));
    }
    if merged.jots > 0 {
        says.push(counted(&w::FATE_JOTS, merged.jots));
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

/// A number with its values: as it would become, or as it stays.
fn beside(both: &Beside, becomes: bool) -> Text {
    let value = |mark: &Mark| shown(&mark.kept.answer);
    let (title, file) = (both.file.title.trim(), value(&both.file));
    match &both.here {
        // Only what was written about it is another.
        Some(here) if becomes && value(here) == file => say!(w::FIGURE, title),
        Some(here) if becomes => say!(w::REPLACES, title, value(here), file),
        Some(here) => say!(w::LEFT_OUT_LATER, title, file, value(here)),
        None => say!(w::LEFT_OUT_GONE, title, file),
    }
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
