//! What a sheet that is handed over says around its numbers.

use crate::words;

words! {
    ELECTRICIAN = "Electrician", es "Electricista";
    MECHANICAL = "HVAC sub", es "Contratista de clima";
    INSPECTOR = "Inspector", es "Inspector";
    OWNER = "Owner", es "Dueño";
    FOR_ELECTRICIAN = "Boxes, cables and holes as they are prepared. Prove every conductor dead before you touch it.", es "Cajas, cables y agujeros como quedaron preparados. Compruebe que cada conductor esté sin corriente antes de tocarlo.";
    FOR_MECHANICAL = "Ducts, registers and the way back for the air, as measured and worked out on site.", es "Ductos, rejillas y retorno del aire, según lo medido y calculado en la obra.";
    FOR_INSPECTOR = "What was worked out, against which published limit. It is no inspection, and nothing here has passed one.", es "Lo que se calculó, y frente a qué límite publicado. No es una inspección, y nada de esto ha pasado una.";
    FOR_OWNER = "Where things will be, what is off, who comes when, what a change costs. Say of each whether you agree, want it changed, or have a question.", es "Dónde quedarán las cosas, qué se apaga, quién viene cuándo, cuánto cuesta un cambio. Diga de cada una si está de acuerdo, si quiere un cambio o si tiene una pregunta.";
    AGREE = "Agree", es "De acuerdo";
    CHANGE = "Change it", es "Cambiar";
    ASK = "Ask me", es "Pregunta";
    /// A check, its value and its limit.
    TOLD = "{0}: {1}", es "{0}: {1}";
    /// An answer of before, with its verdict.
    WAS = "was {0}, {1}", es "era {0}, {1}";
}
