//! What a calculator opens with: a link's question, a mark's, the last one typed, or the sample.

use super::Origin;
use crate::desk::Desk;
use crate::route;
use crate::store::{self, Against, Draft, Links, MarkPlace};
use ledgerboard_core::catalog::{Entry, Link};
use ledgerboard_core::edition::Basis;
use ledgerboard_core::fields::{plain, without_evidence};
use ledgerboard_core::job::{Job, Mark};
use ledgerboard_core::measure::Units;
use ledgerboard_core::wire::Node;
use leptos::prelude::set_timeout;
use std::time::Duration;

/// So long after a reload its address is that of what it brought back.
const SETTLED: Duration = Duration::from_secs(2);

/// A question about to be opened.
pub(crate) struct Opening {
    /// Which calculator.
    pub(crate) entry: &'static Entry,
    /// Its inputs, as they will stand in the fields.
    pub(crate) input: Node,
    /// What bare numbers are in.
    pub(crate) units: Units,
    /// The editions it is asked under.
    pub(crate) basis: Basis,
    /// Where it comes from.
    pub(crate) origin: Origin,
    /// The mark it comes from.
    pub(crate) mark: Option<MarkPlace>,
    /// What it takes from other marks.
    pub(crate) links: Links,
    /// The inputs, by path, that nobody has typed or chosen since the sample stood there.
    pub(crate) sampled: Vec<String>,
    /// It came by an address with evidence, which is not taken from one.
    pub(crate) left_out: bool,
    /// What its mark was worked from when it was last opened or saved here.
    pub(crate) saved: Option<Node>,
    /// It is what was typed last: writing it anew loses nothing.
    pub(crate) is_draft: bool,
}

/// What a calculator opens with when only its name is given: what was typed last, else its sample
/// under the present job's editions and units. What says the same as a saved number is a start for
/// another one, and so is what nobody edited since: that says what is saved by now. An edit that was
/// not saved still stands for its number.
pub(crate) fn open(desk: Desk, entry: &'static Entry) -> Opening {
    let Some(draft) = store::draft(entry.id) else { return sample(desk, entry) };
    let place = draft.mark.clone();
    let saved = desk.jobs.with_untracked(|jobs| {
        let place = place.as_ref()?;
        let job = jobs.iter().find(|job| job.id == place.job)?;
        let mark = job.mark(&place.mark)?;
        let against = draft.against(entry, Some(&mark.input));
        let is_known = (&*mark.calculator, mark.version) == (entry.id, entry.version);
        let follows = against == Against::Behind && is_known;
        Some((against, follows.then(|| Opening::of_mark(entry, job, mark))))
    });
    match saved {
        Some((Against::Same, _)) => Opening::of_draft(entry, Draft { mark: None, ..draft }),
        Some((Against::Behind, Some(opening))) => {
            // A reload asks for these values by its address, and finds all that belongs to them.
            store::save_draft(entry.id, &opening.as_draft());
            Opening { mark: None, origin: Origin::Left, is_draft: true, ..opening }
        }
        _ => Opening::of_draft(entry, draft),
    }
}

fn sample(desk: Desk, entry: &'static Entry) -> Opening {
    let units = desk.settings.with_untracked(|settings| settings.units);
    let (units, basis) =
        desk.present().map_or((units, Basis::default()), |job| (job.units, job.basis));
    let input = plain(entry.rows, &entry.sample(), units);
    Opening {
        entry,
        sampled: entry.of_sample(&input, units),
        input,
        units,
        basis,
        origin: Origin::Sample,
        mark: None,
        links: Links::default(),
        left_out: false,
        saved: None,
        is_draft: false,
    }
}

impl Opening {
    /// What was typed before.
    pub(super) fn of_draft(entry: &'static Entry, draft: Draft) -> Self {
        let Draft { input, units, basis, mark, links, sampled, saved } = draft;
        let from = if mark.is_some() { Origin::Own } else { Origin::Left };
        let input = filled(entry, &input, units);
        // An older version didn't note it: what says the same as the sample is taken for it.
        let sampled = sampled.unwrap_or_else(|| match &mark {
            Some(_) => Vec::new(),
            None => entry.of_sample(&input, units),
        });
        let origin = origin(entry, &input, units, &sampled, from);
        Self {
            entry,
            input,
            units,
            basis,
            origin,
            mark,
            links,
            sampled,
            left_out: false,
            saved,
            is_draft: true,
        }
    }

    /// The same as a draft.
    fn as_draft(&self) -> Draft {
        Draft {
            input: self.input.clone(),
            units: self.units,
            basis: self.basis,
            mark: self.mark.clone(),
            links: self.links.clone(),
            sampled: Some(self.sampled.clone()),
            saved: self.saved.clone(),
        }
    }

    /// A link's question. Where it is word for word what was typed last, but for evidence, which
    /// no link carries, it is that draft with all that belongs to it: a reload loses nothing. So it is
    /// where the page was left before the address said what was typed last.
    pub(crate) fn of_link(entry: &'static Entry, link: Link, draft: Option<Draft>) -> Self {
        let address = route::question(&link);
        let Link { input, basis, units, left_out, .. } = link;
        let same = store::draft_behind(entry.id, &address);
        if same.is_some() {
            // The page may be built twice as it starts.
            set_timeout(move || store::no_longer_behind(entry.id, &address), SETTLED);
        }
        let same = same.or(draft.filter(|draft| {
            let shown = without_evidence(entry.rows, &draft.input);
            draft.units == units && draft.basis == basis && shown.leaves() == input.leaves()
        }));
        let from = if same.is_some() { Origin::Own } else { Origin::Link };
        let (input, units, basis) = match &same {
            Some(draft) => (draft.input.clone(), draft.units, draft.basis),
            None => (input, units, basis),
        };
        let input = filled(entry, &input, units);
        // An address carries values and never links: those are of one job on one phone. Nor does it
        // tell who typed them: what says the same as the sample is taken for it.
        let is_draft = same.is_some();
        let (mark, links, sampled, saved) = same.map_or_else(Default::default, |draft| {
            (draft.mark, draft.links, draft.sampled, draft.saved)
        });
        let sampled = sampled.unwrap_or_else(|| entry.of_sample(&input, units));
        let origin = origin(entry, &input, units, &sampled, from);
        Self { entry, input, units, basis, origin, mark, links, sampled, left_out, saved, is_draft }
    }

    /// A kept mark's question. The invented job's evidence stays there: saved from here, it would
    /// open a hold of a person's own.
    pub(crate) fn of_mark(entry: &'static Entry, job: &Job, mark: &Mark) -> Self {
        // One that was saved as the sample word for word, before that was noted, is still that.
        let is_sample = !job.invented && !job.is_said_own(&mark.id) && mark.input == entry.sample();
        let bare = job.invented.then(|| without_evidence(entry.rows, &mark.input));
        let input = bare.as_ref().unwrap_or(&mark.input);
        Self {
            entry,
            input: plain(entry.rows, &filled(entry, input, job.units), job.units),
            units: job.units,
            basis: mark.basis,
            origin: Origin::Own,
            mark: Some(MarkPlace { job: job.id.clone(), mark: mark.id.clone() }),
            links: Links::of(&job.id, mark.ties.clone(), mark.behind.clone()),
            sampled: match is_sample {
                true => entry.of_sample(&mark.input, Units::Customary),
                false => job.noted_sample(&mark.id),
            },
            left_out: false,
            saved: Some(input.clone()),
            is_draft: false,
        }
    }
}

/// Where a question comes from: the sample is the sample, whichever way it came, until some of it is
/// a person's own.
pub(super) fn origin(
    entry: &'static Entry,
    input: &Node,
    units: Units,
    sampled: &[String],
    from: Origin,
) -> Origin {
    let is_sample = entry.canonical(input, units).is_ok_and(|all| all == entry.sample())
        && sampled.len() == entry.of_sample(input, units).len();
    if is_sample { Origin::Sample } else { from }
}

/// The same tree with every field that it leaves out at its blank, so that no field stands empty
/// while something is counted for it.
fn filled(entry: &'static Entry, input: &Node, units: Units) -> Node {
    match entry.canonical(input, units) {
        Ok(whole) => completed(input, &whole),
        Err(_) => input.clone(),
    }
}

fn completed(typed: &Node, whole: &Node) -> Node {
    match (typed, whole) {
        (Node::Tree(parts), Node::Tree(all)) => Node::Tree(
            all.iter()
                .map(|(key, part)| {
                    let given = parts.iter().find(|(name, _)| name == key);
                    (key.clone(), given.map_or_else(|| part.clone(), |(_, it)| completed(it, part)))
                })
                .collect(),
        ),
        (Node::List(items), Node::List(all)) => {
            Node::List(items.iter().zip(all).map(|(item, each)| completed(item, each)).collect())
        }
        _ => typed.clone(),
    }
}
