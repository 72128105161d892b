//! Jobs and the numbers kept in them.
//!
//! A number that is kept is a [`Mark`]; it belongs to a [`Job`]. One door changes a job:
//! [`apply`], which gives back the edit that undoes it. A job is stored as one record, the same
//! bytes in every store ([`record`]).
//!
//! Nothing here is a clock, a store or a screen: who and when comes in as a [`Stamp`]. A mark's
//! input is opaque here; only the calculator that made it reads it.

pub mod backup;
pub mod buying;
mod calculators_found;
mod clock;
mod crc;
mod demo;
mod differs;
mod edit;
mod finding;
mod fitting;
mod fold;
mod jot;
mod known;
mod mark;
mod meet;
mod merge;
pub mod pace;
pub mod ready;
mod ready_words;
pub mod record;
mod refusal;
mod sampled;
mod site;
mod slip;
mod slots;
mod stamp;
mod stored;
mod survey;
mod tie;
pub mod turnover;
mod turnover_words;
mod unlike_room;
mod version;
mod words;
mod works;

pub use calculators_found::find_calculators;
pub use clock::{Clock, Order};
pub use demo::{DEMO_ID, demo};
pub use differs::{Differs, differences, told_shortly, typed_differences};
pub use edit::{Edit, apply, hand_over};
pub use finding::{Found, find};
pub use fitting::Fit;
pub use jot::Jot;
pub use known::{Known, Terms};
pub use mark::{Kept, Mark, Stale};
pub use meet::{meet, meet_marks};
pub use merge::{Fate, MarkFate, Merged, TermsFate, merge};
pub use refusal::{
    LONGEST_JOT, LONGEST_NAME, LONGEST_NOTE, LONGEST_PLACE, LONGEST_SPOT, LONGEST_TITLE, Refusal,
};
pub use sampled::told_sources;
pub use site::{Gone, Job, PUT_AWAY, Spot, heading_of};
pub use slots::{Judged, judge, may_be_later, next_slot, revision_of};
pub use stamp::{Civil, Moment, Stamp};
pub use survey::{NotTaken, Offer, Survey, TieState, opened, opened_by};
pub use tie::Tie;
pub use unlike_room::{Rooms, Unlike};
pub use version::{in_use, others, use_other};
pub use works::Works;

#[cfg(test)]
mod laws;
#[cfg(test)]
mod merge_laws;
#[cfg(test)]
mod samples;
#[cfg(test)]
mod shape_lock;
#[cfg(test)]
mod tie_laws;
