//! Which rooms of a dwelling the clauses on protection name.

use crate::{choice, words};

words! {
    BEDROOM = "Bedroom", es "Recámara";
    LIVING = "Living, dining, den, closet", es "Sala, comedor, estudio, clóset";
    HALL = "Hall or stairs", es "Pasillo o escalera";
    KITCHEN = "Kitchen", es "Cocina";
    LAUNDRY = "Laundry", es "Lavandería";
    BATH = "Bathroom", es "Baño";
    FINISHED = "Finished basement", es "Sótano terminado";
    UNFINISHED = "Unfinished basement", es "Sótano sin terminar";
    GARAGE = "Garage", es "Cochera";
    ATTIC = "Attic", es "Ático";
    CRAWL = "Crawl space", es "Bajo el piso (crawl)";
    OUTDOORS = "Outdoors", es "Afuera";
    NOWHERE = "Neither", es "Ninguno de estos";
    COUNTER = "Serving a kitchen counter", es "Para una cubierta de cocina";
    SINK = "Within 6 ft of a sink", es "A 6 ft o menos de lavabo o fregadero";
    TUB = "Within 6 ft of a tub or shower", es "A 6 ft o menos de tina o regadera";
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
