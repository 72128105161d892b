//! What no federal rule settles: the state's, the county's and the city's own.

use crate::words;

words! {
    STRICTER_SAYS = "A state, a county or a city may set lower limits, ask for a permit, or let only certified contractors do the work. Many do.", es "Un estado, un condado o una ciudad puede poner límites más bajos, pedir un permiso, o dejar que solo contratistas certificados hagan el trabajo. Muchos lo hacen.";
    STRICTER_SEEN = "read in a city code that starts at 50 sq ft, a state rule that starts at 25 and a county agency that lets only certified contractors be hired", es "leído en un código de ciudad que empieza en 50 sq ft, una regla estatal que empieza en 25 y una agencia de condado que solo deja contratar a contratistas certificados";
    UNSAID_SAYS = "What isn't said isn't known: nothing opens on a blank.", es "Lo que no se dice no se sabe: nada se abre con un dato en blanco.";
    UNSAID_SEEN = "common practice", es "costumbre del oficio";
}

source!(
    /// That they are stricter.
    STRICTER, "state-and-local", "State and local rules" es "Reglas estatales y locales", STRICTER_SAYS, STRICTER_SEEN, Read
);
source!(
    /// Why a blank holds.
    UNSAID, "practice-unsaid", "Common practice" es "Costumbre del oficio", UNSAID_SAYS, UNSAID_SEEN, CommonPractice
);
