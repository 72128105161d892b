//! What restoring a file would change, in words.

use crate::elements::{El, Piece, el};
use crate::jobs::shown;
use crate::{speech, words as w};
use ledgerboard_core::edition::Electrical;
use ledgerboard_core::job::backup::{Beside, Change, Damaged, Plan, Planned};
use ledgerboard_core::job::{Differs, Fate, Mark, Merged, Terms, TermsFate};
use ledgerboard_core::say;
use ledgerboard_core::words::{Phrase, Text, Voice};

/// Every job of the file, and what would become of it.
pub(super) fn planned(plan: &Plan) -> Piece {
    let news = plan.jobs.iter().filter(|planned| planned.is_news()).map(job);
    let mut same = plan.jobs.iter().filter(|planned| !planned.is_news()).peekable();
    // Forty of them would hide the others.
    let same = same.peek().is_some().then(|| {
        let all: Vec<El> = same.map(job).collect();
        let summary = el("summary").text(&speech::say(&say!(w::JOBS_SAME, count(all.len()))));
        let fold = el("details").with(summary).with(el("ul").class("lines").with_all(all));
        if plan.jobs.iter().any(Planned::is_news) { fold } else { fold.attr("open", "") }
    });
    let damaged = plan.damaged.iter().map(damaged);
    let cut = plan.cut_after.as_ref().map(|last| {
        let says = say!(w::CUT_AFTER, last.as_str());
        el("p").class("now").text(&speech::say(&says))
    });
    let lines = el("ul").class("lines").with_all(news.chain(damaged));
    Piece::all([cut, Some(lines), same])
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
    let mut says = match &planned.change {
        Change::New => vec![quiet(&say!(w::RESTORES_NEW, count(planned.job.marks.len())))],
        Change::Merged(merged) => merges(planned, merged),
    };
    says.extend(planned.away.map(|phrase| quiet(&phrase.into())));
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
        let with_both = match fate {
            Fate::Replaced => &*planned.replaced,
            Fate::Both => &*planned.both,
            _ => &[],
        };
        for both in with_both {
            says.push(own(&beside(both, fate)));
            says.extend(differing(both, voice));
            if fate == Fate::Both {
                let phrase = if both.file_stays { &w::FILE_STAYS } else { &w::HERE_STAYS };
                says.push(quiet(&Text { phrase, args: vec![both.other_title().into()] }));
            }
        }
        if with_both.is_empty() && !is_here {
            let titled = merged.marks.iter().filter(|mark| mark.fate == fate);
            let titles: Vec<&str> = titled.take(MOST_TITLES).map(|mark| &*mark.title).collect();
            says.push(el("p").own_text(&titles.join(", ")));
        }
    }
    if !out.is_empty() {
        says.push(counted(&w::FATE_STAYS_GONE, out.len()));
        for both in out {
            says.push(own(&beside(both, Fate::StaysGone)));
            says.extend(differing(both, voice));
        }
    }
    if planned.jots > 0 {
        says.push(counted(&w::FATE_JOTS, planned.jots));
    }
    match &merged.terms {
        TermsFate::Here => {}
        TermsFate::Replaced(terms) => says.push(quiet(&say!(w::TERMS_REPLACED, told(terms)))),
        TermsFate::Told(terms) => says.push(quiet(&say!(w::TERMS_TOLD, told(terms)))),
    }
    if let Some(way) = &merged.circle {
        says.push(quiet(&say!(w::RESTORES_CIRCLE, way.join(" ← "))));
    }
    if says.is_empty() && planned.away.is_none() {
        says.push(quiet(&say!(w::RESTORES_NOTHING)));
    }
    says
}

/// What differs that is named; the rest is counted.
const MOST_DIFFERING: usize = 5;

/// What differs between a number here and in the file, by the names of its fields.
fn differing(both: &Beside, voice: Voice) -> Option<El> {
    let all = both.differences(voice.units);
    if all.is_empty() {
        return None;
    }
    let line = |it: &Differs| {
        let says = say!(w::DIFFERS, it.name.clone(), it.here.clone(), it.there.clone());
        el("li").own_text(&voice.say(&says))
    };
    let more = all.len().saturating_sub(MOST_DIFFERING);
    let more = (more > 0).then(|| el("li").text(&speech::say(&say!(w::AND_MORE, count(more)))));
    let lines = all.iter().take(MOST_DIFFERING).map(line);
    Some(el("ul").class("differs quiet").with_all(lines).with(more))
}

/// A number with its values: as it would become, or as either side has it.
fn beside(both: &Beside, fate: Fate) -> Text {
    let value = |mark: &Mark| shown(&mark.kept.answer);
    let (title, file) = (both.file.title.trim(), value(&both.file));
    match &both.here {
        // The answer is the same; what differs is told below it.
        Some(here) if fate != Fate::StaysGone && value(here) == file => say!(w::FIGURE, title),
        Some(here) if fate == Fate::Replaced => say!(w::REPLACES, title, value(here), file),
        Some(here) => say!(w::LEFT_OUT_LATER, title, value(here), file),
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
