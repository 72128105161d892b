//! 406.4(D) and 406.12: receptacles that are replaced, and shutters in all of them.

use crate::words;

words! {
    REPLACED_SAYS = "A receptacle that is replaced meets today's rules at its place: ground-fault, arc-fault, shutters, weather. With no ground in its box: again without one, or behind ground-fault protection and marked so.", es "Un contacto que se cambia cumple las reglas de hoy en su lugar: falla a tierra, falla de arco, obturadores, intemperie. Sin tierra en su caja: otra vez uno sin tierra, o detrás de protección de falla a tierra y marcado así.";
    REPLACED_SEEN = "that it applies read in continuing-education pages; its parts from memory", es "que se aplica, leído en páginas de educación continua; sus partes, de memoria";
    SHUTTERS_SAYS = "All 15 and 20 A receptacles in a dwelling have shutters (tamper-resistant), but for those over 5-1/2 ft up and for fixed appliances.", es "Todos los contactos de 15 y 20 A en una vivienda llevan obturadores (tamper-resistant), menos los que están a más de 5-1/2 ft de alto y los de aparatos fijos.";
    SHUTTERS_SEEN = "written down from memory", es "escrito de memoria";
}

source!(
    /// Where replacements are published.
    REPLACED, "nec-406.4(D)", "NEC 406.4(D)", REPLACED_SAYS, REPLACED_SEEN, Memory
);

source!(
    /// Where shutters are published.
    SHUTTERS, "nec-406.12", "NEC 406.12", SHUTTERS_SAYS, SHUTTERS_SEEN, Memory
);
