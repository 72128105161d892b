//! Which rooms of a dwelling the clauses on protection name.

use crate::{choice, words};

words! {
    BEDROOM = "Bedroom";
    LIVING = "Living, dining, den, closet";
    HALL = "Hall or stairs";
    KITCHEN = "Kitchen";
    LAUNDRY = "Laundry";
    BATH = "Bathroom";
    FINISHED = "Finished basement";
    UNFINISHED = "Unfinished basement";
    GARAGE = "Garage";
    ATTIC = "Attic";
    CRAWL = "Crawl space";
    OUTDOORS = "Outdoors";
    NOWHERE = "Neither";
    COUNTER = "Serving a kitchen counter";
    SINK = "Within 6 ft of a sink";
    TUB = "Within 6 ft of a tub or shower";
}

choice! {
    /// Where work is done.
    pub enum Room {
        /// To sleep.
        Bedroom = "bedroom", BEDROOM;
        /// To live and eat, and closets.
        Living = "living", LIVING;
        /// To pass.
        Hall = "hall", HALL;
        /// To cook.
        Kitchen = "kitchen", KITCHEN;
        /// To wash clothes.
        Laundry = "laundry", LAUNDRY;
        /// With a basin.
        Bath = "bath", BATH;
        /// Below, lived in.
        Finished = "finished-basement", FINISHED;
        /// Below, not lived in.
        Unfinished = "basement", UNFINISHED;
        /// For cars.
        Garage = "garage", GARAGE;
        /// Under the roof.
        Attic = "attic", ATTIC;
        /// Under the floor.
        Crawl = "crawl", CRAWL;
        /// In the weather.
        Outdoors = "outdoors", OUTDOORS;
    }
}

choice! {
    /// What a receptacle is near.
    pub enum Beside {
        /// Nothing wet.
        Nothing = "nothing", NOWHERE;
        /// It serves a kitchen counter.
        Counter = "counter", COUNTER;
        /// A sink.
        Sink = "sink", SINK;
        /// A tub or a shower.
        Tub = "tub", TUB;
    }
}

impl Room {
    /// Where people live, sleep, eat or cook: no bathroom, closet or hall.
    pub const fn is_habitable(self) -> bool {
        matches!(self, Self::Bedroom | Self::Living | Self::Kitchen | Self::Finished)
    }
}
