//! How much air comes out, where nobody has measured it: each way with the spread that it leaves.

use crate::measure::Measure;
use crate::measure::unit::CFM;
use crate::{choice, words};

words! {
    SAYS = "A guess is off by a quarter; a bag filled and timed by 15 %; a face reading by 10 % with the maker's area factor and by 15 % without. A ton of cooling moves 350 to 450 cfm, 400 nominal.", es "Un cálculo al tanteo falla un cuarto; una bolsa llenada y cronometrada, 15 %; una lectura en la cara, 10 % con el factor de área del fabricante y 15 % sin él. Una tonelada de enfriamiento mueve 350 a 450 cfm, 400 nominales.";
    SEEN = "common practice; 400 a ton, 325 in wet climates and 450 in dry ones were read in HVACR Business, 2019", es "costumbre del oficio; 400 por tonelada, 325 en climas húmedos y 450 en secos se leyeron en HVACR Business, 2019";
    DUCT_SAYS = "What a duct carries: flexible, 4 % slack, at 0.08 in wc per 100 ft; pulled tight at 0.08; round metal at 0.10.", es "Lo que lleva un ducto: flexible, 4 % flojo, a 0.08 in wc por 100 ft; bien estirado a 0.08; redondo de lámina a 0.10.";
    DUCT_SEEN = "worked out with Colebrook's equation and the handbook's slack correction by a public library of fluid mechanics", es "calculado con la ecuación de Colebrook y la corrección del manual por lo flojo, con una biblioteca pública de software de mecánica de fluidos";
    D4 = "4 in", es "4 in";
    D5 = "5 in", es "5 in";
    D6 = "6 in", es "6 in";
    D7 = "7 in", es "7 in";
    D8 = "8 in", es "8 in";
    D9 = "9 in", es "9 in";
    D10 = "10 in", es "10 in";
    D12 = "12 in", es "12 in";
}

source!(
    /// Where the spreads stand.
    GUESSES, "air-guesses", "Estimating a register's air, habit" es "Aire de una rejilla al tanteo, costumbre", SAYS, SEEN, CommonPractice
);
source!(
    /// Where a duct's air stands.
    DUCTS, "air-by-duct", "ASHRAE Fundamentals 2021, ch. 21, friction and flexible duct" es "ASHRAE Fundamentals 2021, cap. 21, fricción y ducto flexible", DUCT_SAYS, DUCT_SEEN, Derived
);

/// Least and most of a guess, in thousandths of it.
pub type Spread = [i64; 2];
/// Of what was measured or is given.
pub const KNOWN: Spread = [1000, 1000];
/// Of a guess.
pub const GUESS: Spread = [750, 1250];
/// Of a bag.
pub const BAG: Spread = [850, 1150];
/// Of a face reading with the maker's area factor.
pub const READING: Spread = [900, 1100];
/// Of a face reading with a guessed factor, 0.55 to 0.75 of the face round 0.65.
pub const ROUGH_READING: Spread = [850, 1150];
/// Of tons.
pub const TONS: Spread = [875, 1125];
/// A ton's air.
pub const A_TON: Measure = Measure::whole(&CFM, 400);

choice! {
    /// A round duct by its diameter.
    pub enum Duct {
        /// The commonest branch.
        D6 = "6", D6;
        /// 4 in.
        D4 = "4", D4;
        /// 5 in.
        D5 = "5", D5;
        /// 7 in.
        D7 = "7", D7;
        /// 8 in.
        D8 = "8", D8;
        /// 9 in.
        D9 = "9", D9;
        /// 10 in.
        D10 = "10", D10;
        /// 12 in.
        D12 = "12", D12;
    }
}

/// In tenths of a cfm, in the order of [`Duct`].
const CARRIES: [[i64; 3]; 8] = [
    [566, 834, 1108],
    [175, 280, 371],
    [334, 511, 678],
    [887, 1261, 1677],
    [1310, 1803, 2399],
    [1849, 2471, 3288],
    [2518, 3273, 4358],
    [4297, 5319, 7088],
];

impl Duct {
    /// The least that it may carry, the middle, the most.
    pub fn carries(self) -> [Measure; 3] {
        CARRIES[self as usize].map(|tenths| Measure::hundredths(&CFM, tenths * 10))
    }
}
