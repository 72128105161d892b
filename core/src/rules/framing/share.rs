//! Limits that are a part of a member's width or depth.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::sheet::Source;

/// So much of a width, as a fraction.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Share {
    /// Over.
    pub over: i64,
    /// Under; one or more.
    pub under: i64,
    /// Where it is published.
    pub source: &'static Source,
}

impl Share {
    /// Of this width. Down to the nanometre, so that whatever is held compares exactly.
    pub fn of(self, width: Length) -> Limit<Length> {
        Limit { value: width.times(self.over).part(self.under), source: self.source }
    }
}
