//! Ledgerboard's core: what a remodeling crew works out on site, as pure functions.
//!
//! What is typed is read into a calculator's `Input`, one pure `solve` turns it into an
//! `Answer`, and every answer is shown as one [`sheet::Sheet`]. No web, no clock, no I/O, no
//! panic on any input.
//!
//! Imports run one way: `measure` → `plan` → `words` → `wire` → `edition` → `sheet` →
//! `fields` → `rules` → `calculators` → `catalog` → `job`.

pub mod calculators;
pub mod catalog;
pub mod edition;
pub mod fields;
pub mod job;
pub mod layout;
pub mod measure;
pub mod plan;
pub mod rules;
pub mod sheet;
pub mod wire;
pub mod words;
