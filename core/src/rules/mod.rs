//! Published limits and tables, each beside its source, and the one door through which a value
//! is compared with a limit.
//!
//! A clause is a function of the edition that gives `None` where its text could not be verified.

pub mod compare;
pub mod electrical;
pub mod framing;
pub mod hazards;
pub mod old_finish;
pub mod residential;
pub mod solids;
pub mod square;
