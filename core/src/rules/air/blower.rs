//! How much pressure a house's blower is made for. No part of it alone can be held against that:
//! the sheet that works ducts says so, and gives no verdict.

use crate::words;

words! {
    SAYS = "What the ducts, coil and filter take together stays within the blower's nameplate, often 0.5 in wc. Only a measured static pressure tells.", es "Lo que toman juntos ductos, serpentín y filtro queda dentro de la placa del soplador, muchas veces 0.5 in wc. Solo lo dice una presión estática medida.";
    SEEN = "common practice; the nameplate says what holds", es "costumbre del oficio; la placa dice lo que vale";
}

source!(
    /// Where the habit stands.
    NAMEPLATE, "blower-nameplate", "Equipment nameplate, external static pressure" es "Placa del equipo, presión estática externa", SAYS, SEEN, CommonPractice
);
