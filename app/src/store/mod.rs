//! What the phone keeps: jobs, drafts and settings, each a small record of its own. The only
//! place that knows a storage key.
//!
//! Local storage holds what is being typed, the settings, and the working copies of jobs, so that
//! the page opens at once. The browser's database holds every job in two slots. Nothing is written
//! before everything has been read. What can't be read is copied aside before anything takes its
//! place, and never dropped. Nothing counts as saved unless a store has it whole.

mod against;
mod aside;
mod book;
mod draft;
mod listed;
mod local;
mod meeting;
mod mirror;
mod news;
mod note;
mod settings;
mod starting;
mod stay;
mod waiting;
mod working;
mod writing;

pub(crate) use against::Against;
pub(crate) use aside::{Aside, all as set_aside, of_job};
pub(crate) use book::{Held, held, shut};
pub(crate) use draft::{Draft, Links, MarkPlace};
pub(crate) use listed::{Listed, newest_first};
pub(crate) use meeting::other_tab;
pub(crate) use news::{News, listen};
pub(crate) use note::{left, opened, opening, stopped_at};
pub(crate) use settings::Settings;
use settings::leaf;
pub(crate) use stay::stays;
use waiting::look;
pub(crate) use waiting::{Unsaved, edits_of, let_wait, move_edits, unsaved, wait_no_more, waiting};
pub(crate) use writing::{once_held, remove, save, try_again, try_soon};

use crate::words as w;
use js_sys::Reflect;
use ledgerboard_core::catalog;
use ledgerboard_core::job::Job;
use ledgerboard_core::job::record::RecordProblem;
use ledgerboard_core::say;
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::Text;
use std::cell::{Cell, RefCell};
use wasm_bindgen::JsValue;

/// All names of ours start so.
const ALL: &str = "ledgerboard.";
const JOB: &str = "ledgerboard.job.";
const DRAFT: &str = "ledgerboard.draft.";
/// In a draft, the address that says what stood there before it.
const BEHIND: &str = "address";
/// Before the name of a calculator: edits that wait there.
const WAITING: &str = "ledgerboard.waiting.";
const SETTINGS: &str = "ledgerboard.settings";
const LIST: &str = "ledgerboard.list";
/// What can't be read: when it was set aside, then the name it had.
const ASIDE: &str = "ledgerboard.aside.";
/// In the database alone: the last restore, with the way back.
const RESTORED: &str = "ledgerboard.restored";
/// In the database alone: what is told of that before anybody asks for the way back.
const RESTORED_HEAD: &str = "ledgerboard.restored.head";
/// In the database alone: the last revision of a job that was removed.
const GONE: &str = "ledgerboard.gone.";

/// Why a job is not opened, nor written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Why {
    /// None of its copies can be read, or a newer program wrote it.
    Record(RecordProblem),
    /// The page stopped while it opened it.
    Stopped,
}

impl Why {
    /// As a person reads it.
    pub(crate) fn says(&self) -> Text {
        match self {
            Self::Record(problem) => problem.says(),
            Self::Stopped => say!(w::STOPPED_AT_JOB),
        }
    }
}

/// What local storage had when the page started. The rest comes as [`News`].
pub(crate) struct Loaded {
    pub(crate) settings: Settings,
    /// Nothing of ours was here before.
    pub(crate) is_first_visit: bool,
    /// Those that are asked for first.
    pub(crate) jobs: Vec<Job>,
    /// What there was the last time, to be listed till all is read.
    pub(crate) listed: Vec<Listed>,
}

/// Why something was not saved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Trouble {
    /// The browser gives no storage.
    Blocked,
    /// It keeps jobs, and nothing else.
    OnlyJobs,
    /// There is no room for it.
    Full,
    /// What is being typed finds no room.
    TypedFull,
    /// It read back otherwise than it was written.
    Differs,
    /// The program has stopped.
    Stopped,
    /// A record of this name can't be read, and is not written over.
    SetAside,
}

impl Trouble {
    /// As a person reads it.
    pub(crate) fn says(self) -> Text {
        match self {
            Self::Blocked => say!(w::KEEPS_NOTHING),
            Self::OnlyJobs => say!(w::KEEPS_ONLY_JOBS),
            Self::Full => say!(w::STORE_FULL, working::room_left()),
            Self::TypedFull => say!(w::TYPED_FULL, working::room_left()),
            Self::Differs => say!(w::WRITE_DIFFERED),
            Self::Stopped => say!(w::STOPPED),
            Self::SetAside => say!(w::NEVER_LOADED),
        }
    }
}

/// What became of a write.
pub(crate) type Written = Result<(), Trouble>;

thread_local! {
    /// Set once by the panic hook: half-changed memory may not write.
    static STOPPED: Cell<bool> = const { Cell::new(false) };
    /// What keeps the mirror from taking anything.
    static MIRROR: Cell<Option<Trouble>> = const { Cell::new(None) };
    /// What is being typed and was not kept, in its order: why, its name and its text.
    static TYPED: RefCell<Vec<(Trouble, String, Node)>> = const { RefCell::new(Vec::new()) };
}

/// What an error of the browser's stores means.
fn why(error: &JsValue) -> Trouble {
    let name = Reflect::get(error, &"name".into()).ok().and_then(|name| name.as_string());
    match name.as_deref() {
        Some("QuotaExceededError") => Trouble::Full,
        _ => Trouble::Blocked,
    }
}

fn mirror_is(found: Written) {
    MIRROR.set(found.err());
}

/// Whether the second store answers.
pub(crate) fn mirror_works() -> bool {
    MIRROR.get().is_none()
}

/// Nothing is written from here on.
pub(crate) fn stop() {
    STOPPED.set(true);
}

fn may_write() -> Written {
    if STOPPED.get() { Err(Trouble::Stopped) } else { Ok(()) }
}

/// What keeps things from being saved now.
pub(crate) fn trouble() -> Option<Trouble> {
    let (local, mirror) = (local::probe().err(), MIRROR.get());
    if local == Some(Trouble::Blocked) && mirror == Some(Trouble::Blocked) {
        return Some(Trouble::Blocked);
    }
    let typed = TYPED.with_borrow(|typed| typed.first().map(|(trouble, ..)| *trouble));
    let typed = typed.map(|trouble| match trouble {
        Trouble::Full => Trouble::TypedFull,
        Trouble::Blocked => Trouble::OnlyJobs,
        other => other,
    });
    book::trouble().or(typed).or(local.map(|_| Trouble::OnlyJobs))
}

/// Whether everything has been read, so that what is not there is nowhere.
pub(crate) fn has_read() -> bool {
    book::READY.get()
}

/// Whether a change is on the page only, and would be lost with it.
pub(crate) fn only_on_page() -> bool {
    let typed = matches!(trouble(), Some(Trouble::TypedFull));
    may_write().is_ok() && (typed || book::trouble().is_some())
}

/// Reads what local storage has of the job on the page, `wanted`, and of those that numbers are
/// saved to, so that the page opens at once.
pub(crate) fn load(wanted: Option<&str>) -> Loaded {
    note::read();
    stay::look();
    for (name, text) in local::all(ASIDE) {
        aside::found(&name, text);
    }
    let settings = local::read(SETTINGS, Settings::read);
    let is_first_visit = settings.is_none();
    let settings = settings.unwrap_or_else(Settings::fresh);
    book::written_by(&settings.device);
    let loose = settings.loose.as_ref().map(|(_, id)| id.as_str());
    let mut ids: Vec<&str> = Vec::new();
    for id in [wanted, settings.job.as_deref(), loose].into_iter().flatten() {
        if !ids.contains(&id) {
            ids.push(id);
        }
    }
    let jobs = ids.into_iter().filter_map(starting::read_local).collect();
    Loaded { is_first_visit, jobs, listed: listed::read(), settings }
}

/// Keeps a line for each job, for the next start.
pub(crate) fn keep_list(lines: &[Listed]) {
    if may_write().is_ok() && has_read() {
        listed::write(lines);
    }
}

/// Keeps what was restored last, in the place of what was before it, and then its head.
pub(crate) fn keep_restored(head: String, text: &str) {
    if may_write().is_ok() {
        // Where it finds no room the page still has it.
        let then = move |put: Result<_, _>| {
            if put.is_ok() {
                mirror::put(RESTORED_HEAD, &head, Box::new(drop));
            }
        };
        mirror::put(RESTORED, text, Box::new(then));
    }
}

/// The head of what was restored last: short, however much that was.
pub(crate) fn kept_restored_head(done: Box<dyn FnOnce(Option<String>)>) {
    mirror::read_one(RESTORED_HEAD, done);
}

/// What was restored last, as it was kept.
pub(crate) fn kept_restored(done: Box<dyn FnOnce(Option<String>)>) {
    mirror::read_one(RESTORED, done);
}

/// A job is wanted on the page before all has been read.
pub(crate) fn want(id: &str) {
    if !has_read() {
        starting::want(id);
    }
}

/// Puts the working copy of a job that is looked at back where it is at hand.
pub(crate) fn touch(id: &str) {
    working::come_back(id);
}

/// Reads the mirror. Until that is done, no job is written.
pub(crate) fn read_mirror() {
    starting::read_mirror();
}

/// The name under which the opening of a job is noted.
pub(crate) fn job_name(id: &str) -> String {
    book::name(id)
}

/// Opens all the same what stopped the page before.
pub(crate) fn dare(name: &str) {
    note::dare(name);
    if let Some(id) = name.strip_prefix(JOB) {
        starting::dare(id);
    }
}

/// The name of a calculator's draft.
pub(crate) fn draft_name(calculator: &str) -> String {
    [DRAFT, calculator].concat()
}

/// What was typed last in a calculator.
pub(crate) fn draft(calculator: &str) -> Option<Draft> {
    local::read(&draft_name(calculator), Draft::read)
}

/// What was typed last in a calculator, where it was typed so short before its page was left that the
/// address of a page, `address`, is still what stood there before.
pub(crate) fn draft_behind(calculator: &str, address: &str) -> Option<Draft> {
    let behind = look(&draft_name(calculator), |node| leaf(node, BEHIND));
    draft(calculator).filter(|_| behind.as_deref() == Some(address))
}

/// From now on that address says what it says.
pub(crate) fn no_longer_behind(calculator: &str, address: &str) {
    if let Some(draft) = draft_behind(calculator, address) {
        save_draft(calculator, &draft);
    }
}

/// Makes what was typed last in a calculator the start of another number: it stands for none that
/// is saved, and takes from no other job. Where it is an edit of one that is saved, that waits.
pub(crate) fn detach_draft(calculator: &str, job: &str) {
    if let Some(mut draft) = draft(calculator) {
        if catalog::find(calculator).is_some_and(|entry| draft.is_edit(entry)) {
            let_wait(calculator, draft.clone());
        }
        draft.saved = None;
        draft.mark = None;
        if draft.links.job != job {
            draft.links = Links::default();
        }
        save_draft(calculator, &draft);
    }
}

/// Sets what was typed in a calculator aside, so that it opens with its sample.
pub(crate) fn drop_draft(calculator: &str) {
    let name = draft_name(calculator);
    if let Some(text) = local::text(&name) {
        aside::keep(&name, &text);
        if !aside::is_locked(&name) {
            local::remove(&name);
        }
    }
    note::dare(&name);
}

/// Forgets what was typed last in a calculator.
pub(crate) fn forget_draft(calculator: &str) {
    if may_write().is_ok() {
        let name = draft_name(calculator);
        TYPED.with_borrow_mut(|typed| typed.retain(|(_, it, _)| *it != name));
        local::remove(&name);
    }
}

/// Writes what is being typed, or the settings. What finds no place is written once there is some.
fn write_typed(name: String, node: Node) {
    TYPED.with_borrow_mut(|typed| {
        typed.retain(|(_, it, _)| *it != name);
        typed.push((Trouble::Stopped, name, node));
    });
    type_again();
}

/// There may be room again.
fn type_again() {
    let mut left: Vec<(Trouble, String, Node)> = Vec::new();
    for (_, name, node) in TYPED.take() {
        // A draft is not written over before what waits of it is kept.
        let waits = left.iter().find(|(_, it, _)| it.starts_with(WAITING));
        let written = match waits {
            Some((trouble, ..)) if name.starts_with(DRAFT) => Err(*trouble),
            _ => may_write().and_then(|()| local::write_node(&name, &node)),
        };
        if let Err(trouble) = written {
            left.push((trouble, name, node));
        }
    }
    TYPED.set(left);
}

/// Keeps what is being typed.
pub(crate) fn save_draft(calculator: &str, draft: &Draft) {
    write_typed(draft_name(calculator), draft.write());
}

/// Keeps what is being typed while an address that is left says what stood there before.
pub(crate) fn save_draft_behind(calculator: &str, draft: &Draft, address: &str) {
    let mut node = draft.write();
    node.put(BEHIND, Node::text(address));
    write_typed(draft_name(calculator), node);
}

/// Keeps the settings.
pub(crate) fn save_settings(settings: &Settings) {
    write_typed(SETTINGS.to_owned(), settings.write());
}
