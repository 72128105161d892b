//! What is asked of a change to a contract with an owner.

use crate::words;

words! {
    CA_SAYS = "In California a change says in writing what work it is, what is added to or taken off the price, and what it does to progress payments or the finish day; else it may not be enforced on the owner.", es "En California un cambio dice por escrito qué trabajo es, cuánto sube o baja el precio y qué les hace a los pagos o al día de entrega; si no, puede no valer ante el dueño.";
    CA_SEEN = "read in two online copies of the section as amended in 2005, not on the state's own pages", es "leído en dos copias en línea de la sección con su enmienda de 2005, no en las páginas del estado";
    LOCAL_SAYS = "Many states want it in writing and signed before that work begins. Ask yours what it must hold.", es "Muchos estados lo piden por escrito y firmado antes de empezar ese trabajo. Pregunte qué pide el suyo.";
    LOCAL_SEEN = "from memory of several states' rules", es "de memoria de reglas de varios estados";
}

source!(
    /// Of one state.
    CALIFORNIA_CHANGE, "ca-bpc-7159-6", "California BPC 7159.6" es "California BPC 7159.6", CA_SAYS, CA_SEEN, Read
);
source!(
    /// Of many.
    STATES_CHANGE, "state-change-rules", "State contract rules" es "Reglas estatales de contratos", LOCAL_SAYS, LOCAL_SEEN, Memory
);
