//! What the phone keeps: jobs, drafts and settings, each a small record of its own. The only
//! place that knows a storage key.
//!
//! Nothing is written before everything has been read. A record that can't be read is left as it
//! is, byte for byte, and its name is never written over. Nothing counts as saved unless it reads
//! back as it was written.

mod draft;
mod local;
mod settings;

pub(crate) use draft::{Draft, Links, MarkPlace};
pub(crate) use settings::Settings;

use crate::{clock, words as w};
use ledgerboard_core::job::record::{self, Head, RecordProblem};
use ledgerboard_core::job::{DEMO_ID, Job};
use ledgerboard_core::say;
use ledgerboard_core::words::Text;
use std::cell::RefCell;
use std::sync::atomic::{AtomicBool, Ordering};

const JOB: &str = "ledgerboard.job.";
const DRAFT: &str = "ledgerboard.draft.";
const SETTINGS: &str = "ledgerboard.settings";

/// A record that is left as it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct SetAside {
    /// Its job's id, as its name has it.
    pub(crate) job: String,
    /// Why it can't be read.
    pub(crate) problem: RecordProblem,
}

/// Everything that was found when the page started.
pub(crate) struct Loaded {
    pub(crate) settings: Settings,
    /// Nothing of ours was here before.
    pub(crate) is_first_visit: bool,
    pub(crate) jobs: Vec<Job>,
    pub(crate) aside: Vec<SetAside>,
    /// Why nothing is kept, where nothing is.
    pub(crate) trouble: Option<Trouble>,
}

/// Why something was not saved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Trouble {
    /// The browser gives no storage at all.
    Blocked,
    /// There is no room for it.
    Full,
    /// It read back otherwise than it was written.
    Differs,
    /// The program has stopped, or has not read everything yet.
    NotReady,
    /// A record of this name can't be read, and is not written over.
    SetAside,
    /// Another tab has written it since it was read here.
    OtherTab,
}

impl Trouble {
    /// As a person reads it.
    pub(crate) fn says(self) -> Text {
        match self {
            Self::Blocked => say!(w::KEEPS_NOTHING),
            Self::Full => say!(w::STORE_FULL),
            Self::Differs => say!(w::WRITE_DIFFERED),
            Self::NotReady => say!(w::STOPPED),
            Self::SetAside => say!(w::NEVER_LOADED),
            Self::OtherTab => say!(w::OTHER_TAB),
        }
    }
}

/// What became of a write.
pub(crate) type Written = Result<(), Trouble>;

/// Set once by the panic hook: half-changed memory may not write.
static STOPPED: AtomicBool = AtomicBool::new(false);
static READ_ALL: AtomicBool = AtomicBool::new(false);

thread_local! {
    /// The revision of each job as it was last read or written here; none for one set aside.
    static REVISIONS: RefCell<Vec<(String, Option<u64>)>> = const { RefCell::new(Vec::new()) };
}

fn revision(job: &str) -> Option<Option<u64>> {
    REVISIONS.with_borrow(|all| all.iter().find(|(id, _)| id == job).map(|(_, known)| *known))
}

fn note_revision(job: &str, known: Option<Option<u64>>) {
    REVISIONS.with_borrow_mut(|all| {
        all.retain(|(id, _)| id != job);
        all.extend(known.map(|known| (job.to_owned(), known)));
    });
}

/// Nothing is written from here on.
pub(crate) fn stop() {
    STOPPED.store(true, Ordering::Relaxed);
}

fn may_write() -> Written {
    let ready = READ_ALL.load(Ordering::Relaxed) && !STOPPED.load(Ordering::Relaxed);
    if ready { local::probe() } else { Err(Trouble::NotReady) }
}

/// Reads everything. Where there is no storage, the page starts empty and says so.
pub(crate) fn load_all() -> Loaded {
    let mut loaded = Loaded {
        settings: Settings::fresh(),
        is_first_visit: true,
        jobs: Vec::new(),
        aside: Vec::new(),
        trouble: local::probe().err(),
    };
    if loaded.trouble == Some(Trouble::Blocked) {
        READ_ALL.store(true, Ordering::Relaxed);
        return loaded;
    }
    for (name, text) in local::all(JOB) {
        match read_job(&name, &text) {
            Ok(job) => loaded.jobs.push(job),
            Err(aside) => loaded.aside.push(aside),
        }
    }
    if let Some(settings) = local::node(SETTINGS).and_then(|node| Settings::read(&node)) {
        loaded.settings = settings;
        loaded.is_first_visit = false;
    }
    READ_ALL.store(true, Ordering::Relaxed);
    loaded
}

fn read_job(name: &str, text: &str) -> Result<Job, SetAside> {
    let job = name.strip_prefix(JOB).unwrap_or(name).to_owned();
    let aside = |problem| {
        note_revision(&job, Some(None));
        SetAside { job: job.clone(), problem }
    };
    match record::read(text) {
        // Under another's name it would be written over by that other.
        Ok((_, read)) if read.id != job || job == DEMO_ID => Err(aside(RecordProblem::Foreign)),
        Ok((head, read)) => {
            note_revision(&job, Some(Some(head.revision)));
            Ok(read)
        }
        Err(problem) => Err(aside(problem)),
    }
}

/// The name of a job's record.
pub(crate) fn job_key(id: &str) -> String {
    [JOB, id].concat()
}

/// Reads one job again, after another tab has written it. None: it is gone, or can't be read.
pub(crate) fn reload_job(key: &str) -> Option<(String, Option<Job>)> {
    let id = key.strip_prefix(JOB)?.to_owned();
    let job = local::text(key).and_then(|text| read_job(key, &text).ok());
    if job.is_none() {
        note_revision(&id, None);
    }
    Some((id, job))
}

/// Writes one job, whole or not at all.
///
/// # Errors
/// Why it was not saved.
pub(crate) fn save_job(job: &Job, writer: &str) -> Written {
    may_write()?;
    let known = revision(&job.id);
    if known == Some(None) {
        return Err(Trouble::SetAside);
    }
    let known = known.flatten().unwrap_or(0);
    let name = job_key(&job.id);
    let there = local::text(&name).and_then(|text| record::open(&text).ok().map(|(head, _)| head));
    if there.is_some_and(|there| there.revision > known) {
        return Err(Trouble::OtherTab);
    }
    let head = Head::new(known + 1, writer, clock::now().at);
    local::write(&name, &record::write(job, &head))?;
    note_revision(&job.id, Some(Some(head.revision)));
    Ok(())
}

/// Removes one job that the person has removed. Never one that could not be read.
///
/// # Errors
/// Why it stays.
pub(crate) fn remove_job(id: &str) -> Written {
    may_write()?;
    if revision(id) == Some(None) {
        return Err(Trouble::SetAside);
    }
    local::remove(&job_key(id));
    note_revision(id, None);
    Ok(())
}

/// What was typed last in a calculator.
pub(crate) fn draft(calculator: &str) -> Option<Draft> {
    Draft::read(&local::node(&[DRAFT, calculator].concat())?)
}

/// Keeps what is being typed.
///
/// # Errors
/// Why it was not saved.
pub(crate) fn save_draft(calculator: &str, draft: &Draft) -> Written {
    may_write()?;
    local::write_node(&[DRAFT, calculator].concat(), &draft.write())
}

/// Keeps the settings.
///
/// # Errors
/// Why they were not saved.
pub(crate) fn save_settings(settings: &Settings) -> Written {
    may_write()?;
    local::write_node(SETTINGS, &settings.write())
}
