//! Clauses of the residential code, as far as raising a ceiling needs them.

pub mod alarm_places;
pub mod attic;
pub mod blown;
pub mod ceiling_height;
pub mod fan_blades;
pub mod fireblocking;
pub mod heat;
pub mod insulation;
pub mod reach;
pub mod smoke_alarms;
pub mod while_off;
