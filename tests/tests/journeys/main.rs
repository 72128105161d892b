//! Browser journeys: what a person does on the built site, in a real Chromium.
//!
//! One file a journey or a family of them. The vocabulary is in `harness`; no journey speaks to
//! the browser but through it. Rules of the trade are not checked here: core has its own tests.

mod air;
mod backup;
mod boards;
mod box_fill;
mod cables;
mod daylight;
mod days;
mod drilling;
mod faults;
mod finish;
mod first_visit;
mod handover;
mod harness;
mod harness_checks;
mod holds;
mod jobs;
mod left_at_once;
mod printed;
mod raising;
mod requests;
mod rescue;
mod retired;
mod rooms;
mod rough_in;
mod sample;
mod security;
mod server_checks;
mod set_out;
mod shipped_arithmetic;
mod strip;
mod updates;
mod whole_pages;
mod words;
