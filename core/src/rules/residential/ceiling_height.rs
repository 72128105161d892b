//! R305.1: how high a ceiling has to be over the finished floor.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::sheet::{Confidence, Source};
use crate::words;

words! {
    SAYS = "Rooms to live, sleep or eat in, and halls, are 7 ft high or more; baths, toilet rooms and laundries 6 ft 8 in or more. Heights are between finished surfaces.";
    SEEN = "read in a forum's breakdown of the 2021 section; that 2018 says the same is from memory. Later editions have moved the section: go by its title";
}

/// Where both heights are published.
pub static CEILING_HEIGHT: Source = Source {
    key: "irc-r305.1",
    clause: "IRC 2018, 2021 R305.1, ceiling height",
    says: &SAYS,
    seen: &SEEN,
    confidence: Confidence::Read,
};

/// The least for rooms that people live in, and halls.
pub const LIVED_IN: Limit<Length> = Limit { value: Length::inches(84, 1), source: &CEILING_HEIGHT };

/// The least for any room at all: a bath, a toilet room or a laundry.
pub const ANY_ROOM: Limit<Length> = Limit { value: Length::inches(80, 1), source: &CEILING_HEIGHT };
