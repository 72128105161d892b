//! Air in ducts and through openings, out of registers and into rooms: friction, fittings, what a
//! shut door does, jets, mixing, sound, and what a room asks for.
//!
//! Physics is worked in `f64` in the trade's units: inches of diameter, feet of length, cfm, fpm,
//! inches of water. Sizing a system stays with a load calculation and whoever designs it.

pub mod blower;
pub mod clearances;
pub mod comfort_index;
pub mod doors;
pub mod fittings;
pub mod flex;
pub mod flow_guess;
pub mod friction;
pub mod grilles;
pub mod jets;
pub mod noise;
pub mod placing;
pub mod rectangular;
pub mod register_sizes;
pub mod room_heat;
pub mod run;
pub mod standard_air;
pub mod velocity;
pub mod working;

#[cfg(test)]
mod tests;
