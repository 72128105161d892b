//! Who decides what a house's wiring is worked under.

use crate::words;

words! {
    SAYS = "Whether work takes a permit, which edition holds and who may do it is for the building department. Its own changes come before this list.", es "Si el trabajo lleva permiso, qué edición vale y quién puede hacerlo lo dice la oficina de construcción. Sus propios cambios van antes que esta lista.";
    SEEN = "no publication", es "sin publicación";
}

source!(
    /// Who decides.
    DECIDES, "building-department", "The building department" es "La oficina de construcción", SAYS, SEEN, CommonPractice
);
