//! Pictures: the margin rule, the marks of the three verdicts, and the one renderer of a
//! calculator's drawing. Nothing is worked out here but where ink lands on the screen.

mod ink;
mod margin_rule;
mod numbers;
mod picture;
mod verdict_mark;

pub(crate) use margin_rule::{margin_rule, spare};
pub(crate) use numbers::percent;
pub(crate) use picture::{drawn, picture, sketch};
pub(crate) use verdict_mark::{held, verdict};
