//! Jobs on the screen: the list, one job's page, a mark's line, and the switch of the present
//! job. What a job is and how it changes is the core's.

mod aside;
mod buy;
mod details;
mod done;
mod find;
mod list;
mod mark_line;
mod marks;
mod owner;
mod page;
mod ready;
mod switch;
mod ties;
mod today;
mod turnover;
mod versions;

pub(crate) use aside::rescue;
pub(crate) use buy::buying_page;
pub(crate) use details::{below, details, text_field};
pub(crate) use list::{door, job_lines, jobs_page};
pub(crate) use mark_line::{is_hold, shown, then_now};
pub(crate) use page::job_page;
pub(crate) use ready::ready_page;
pub(crate) use switch::switch;
pub(crate) use turnover::turnover_page;

use crate::elements::{El, el};
use crate::{route, words as w};

/// In the place of a page about a job that isn't on this phone.
fn no_such_job() -> El {
    let all = el("a").class("door").attr("href", route::JOBS).say(&w::ALL_JOBS);
    let heading = el("h1").attr("tabindex", "-1").say(&w::NO_SUCH_JOB);
    el("main").with(heading).with(el("p").with(all))
}
