//! Air in ducts and through openings: standard air, friction, flexible duct, fittings, and what a
//! shut door does to a room.
//!
//! Physics is worked in `f64` in the trade's units: inches of diameter, feet of length, cfm, fpm,
//! inches of water. Sizing a system stays with a load calculation and whoever designs it.

pub mod blower;
pub mod doors;
pub mod fittings;
pub mod flex;
pub mod friction;
pub mod grilles;
pub mod placing;
pub mod rectangular;
pub mod run;
pub mod standard_air;
pub mod velocity;
pub mod working;

#[cfg(test)]
mod tests;
