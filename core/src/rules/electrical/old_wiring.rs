//! What is found in an old house, and where it ends this crew's work.

use crate::{choice, words};

words! {
    STOP_SAYS = "Aluminum branch wiring, knob-and-tube and insulation that cracks when it is bent are not joined to by anyone but a licensed electrician. Knob-and-tube is not buried in insulation (394.12).", es "Solo un electricista con licencia une algo a ramales de aluminio, a perilla y tubo (knob-and-tube) o a aislante que se agrieta al doblarlo. La perilla y tubo no se entierra en aislante (394.12).";
    STOP_SEEN = "common practice; 394.12 from memory", es "costumbre del oficio; 394.12 de memoria";
    NO_GROUND_SAYS = "A circuit without a ground is not simply extended: a ground is run from the panel, the electrode system or a circuit that has one (250.130(C)).", es "Un circuito sin tierra no se alarga así nada más: se pasa una tierra desde el panel, el sistema de electrodos o un circuito que la tenga (250.130(C)).";
    NO_GROUND_SEEN = "written down from memory", es "escrito de memoria";
    NOT_SAID = "Not looked yet", es "Todavía no se ve";
    GROUNDED = "Cable with a ground", es "Cable con tierra";
    NO_GROUND = "No ground", es "Sin tierra";
    ALUMINUM = "Aluminum", es "Aluminio";
    KNOBS = "Knob-and-tube", es "Perilla y tubo (knob-and-tube)";
    BRITTLE = "Insulation that cracks", es "Aislante que se agrieta";
}

source!(
    /// What is handed over.
    STOP, "old-wiring", "Old wiring; NEC 394.12" es "Cableado viejo; NEC 394.12", STOP_SAYS, STOP_SEEN, CommonPractice
);

source!(
    /// Where circuits without a ground are published.
    UNGROUNDED, "nec-250.130(C)", "NEC 250.130(C)", NO_GROUND_SAYS, NO_GROUND_SEEN, Memory
);

choice! {
    /// What was found.
    pub enum Found {
        /// Nobody looked.
        NotSaid = "not-said", NOT_SAID;
        /// As it is run today.
        Grounded = "grounded", GROUNDED;
        /// Two wires.
        NoGround = "no-ground", NO_GROUND;
        /// Not copper.
        Aluminum = "aluminum", ALUMINUM;
        /// Single wires on porcelain.
        Knobs = "knob-and-tube", KNOBS;
        /// Baked.
        Brittle = "brittle", BRITTLE;
    }
}

impl Found {
    /// Whether it ends this crew's work there.
    pub const fn stops(self) -> bool {
        matches!(self, Self::Aluminum | Self::Knobs | Self::Brittle)
    }

    /// Whether it has no ground, or may have none.
    pub const fn lacks_ground(self) -> bool {
        matches!(self, Self::NoGround | Self::Knobs | Self::NotSaid)
    }
}
