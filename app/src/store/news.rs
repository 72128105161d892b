//! What the stores have to tell the page: they answer when they are done, not when they are asked.

use ledgerboard_core::job::Job;
use std::cell::RefCell;
use std::rc::Rc;

/// Something that the page shows is otherwise now.
pub(crate) enum News {
    /// How safe a job is, or what keeps one from being saved.
    Changed,
    /// A job as the stores have it, or as it came out of two copies.
    Job(Box<Job>),
    /// A job was removed elsewhere.
    Gone(String),
    /// Something was set aside, or a job is shut.
    Aside,
}

type Hear = Rc<dyn Fn(News)>;

thread_local! {
    static HEAR: RefCell<Option<Hear>> = const { RefCell::new(None) };
}

/// Who hears the news from here on.
pub(crate) fn listen(hear: impl Fn(News) + 'static) {
    HEAR.set(Some(Rc::new(hear)));
}

pub(super) fn tell(news: News) {
    if let Some(hear) = HEAR.with_borrow(Clone::clone) {
        hear(news);
    }
}

pub(super) fn changed() {
    tell(News::Changed);
}

pub(super) fn aside() {
    tell(News::Aside);
}
