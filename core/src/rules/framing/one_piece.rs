//! Studs in one piece from floor to roof.

use crate::rules::compare::Limit;
use crate::words;

words! {
    ONE_PIECE_SAYS = "Studs of an outside wall run in one piece from the floor to a ceiling or roof that holds them sideways, or the wall is designed. A short wall on old plates bends at the joint; gable walls under a vault run to the slope.", es "Los montantes de una pared exterior van de una pieza del piso a un techo o tejado que los sujete de lado, o la pared se diseña. Una pared corta sobre soleras viejas se dobla en la junta; las paredes de hastial bajo un techo catedral llegan hasta la pendiente.";
    ONE_PIECE_SEEN = "read in a plan sheet that quotes the section and a code chapter's handout on vaulted gable walls", es "leído en una hoja de planos que cita la sección y en el folleto de un capítulo de código sobre paredes de hastial con techo catedral";
}

source!(
    /// Where it is published.
    ONE_PIECE, "irc-r602.3", "IRC R602.3, studs in one piece" es "IRC R602.3, montantes de una pieza", ONE_PIECE_SAYS, ONE_PIECE_SEEN, Read
);

/// Joints between the floor and what holds the wall above.
pub const JOINTS: Limit<i64> = Limit { value: 0, source: &ONE_PIECE };
