//! All that a person reads of a change.

use crate::words;

words! {
    NAME = "Change order at your own rates", es "Orden de cambio con sus propios precios";
    ABOUT = "What a change adds to the price or takes off it, on a page to sign", es "Lo que un cambio sube o baja del precio, en una hoja para firmar";
    NOTHING = "", es "";
    NUMBER = "Change number", es "Número de cambio";
    ISSUED = "Issue date", es "Fecha de emisión";
    WHAT = "What changes", es "Qué cambia";
    WHY = "Why", es "Por qué";
    OWNER_ASKED = "The owner asked", es "Lo pidió el dueño";
    FOUND = "Found behind the finish", es "Se halló detrás del acabado";
    CODE = "The code or the inspector", es "El código o el inspector";
    ERROR = "Our own error", es "Error nuestro";
    LABOR = "Labor", es "Mano de obra";
    LABOR_LINE = "Worker", es "Trabajador";
    HOURS = "Hours", es "Horas";
    HOURS_HINT = "3.5 or 3:30.", es "3.5 o 3:30.";
    RATE = "Your rate", es "Su tarifa";
    OWN = "Your own; none is looked up.", es "La suya; no se busca ninguna.";
    MATERIALS = "Materials", es "Materiales";
    MATERIAL = "Material", es "Material";
    COUNT = "How many", es "Cuántos";
    PRICE = "Your price, each", es "Su precio, cada uno";
    CREDITS = "Work left out", es "Trabajo que se quita";
    CREDIT = "Left out", es "Se quita";
    CREDIT_WORTH = "Taken off", es "Se descuenta";
    MARKUP = "Your markup", es "Su porcentaje";
    MARKUP_ON = "Markup on", es "Porcentaje sobre";
    ON_MATERIALS = "Materials alone", es "Solo materiales";
    ON_ALL = "Labor and materials", es "Mano de obra y materiales";
    TAX = "Sales tax on materials", es "Impuesto sobre materiales";
    TAX_HINT = "Your own; on what they cost before markup.", es "El suyo; sobre el costo sin porcentaje.";
    DAYS = "Days added", es "Días que agrega";
    BEFORE = "Contract price so far", es "Precio del contrato hasta hoy";
    PAID = "To be paid", es "Se paga";
    PAID_HINT = "With which payment.", es "Con qué pago.";
    TOO_MUCH = "look at the figure.", es "revise la cifra.";

    ADDED = "Added to the price", es "Sube el precio";
    TAKEN_OFF = "Change of the price, a credit", es "Cambio del precio, a favor del dueño";
    CHARGED = "Charged, before credits", es "Se cobra, antes de descuentos";
    MARKED_UP = "Markup", es "Porcentaje";
    TAXED = "Tax", es "Impuesto";
    AFTER = "Contract price with this", es "Precio del contrato con esto";
    LINES = "Each line", es "Cada línea";
    LINES_NOTE = "Each line, the markup and the tax are rounded to the cent, halves up.", es "Cada línea, el porcentaje y el impuesto se redondean al centavo, las mitades hacia arriba.";
    LINE = "{0}: {1} × {2}", es "{0}: {1} × {2}";
    WORKER_AT = "Worker {0}", es "Trabajador {0}";
    MATERIAL_AT = "Material {0}", es "Material {0}";
    CREDIT_AT = "Left out {0}", es "Se quita {0}";
    VALUE = "{0}", es "{0}";
    SHARES = "What it is made of", es "De qué se compone";
    AMOUNT = "Amount", es "Importe";
    SHARE = "Of what is charged", es "De lo que se cobra";
    TO_SIGN = "To sign before that work begins", es "Para firmar antes de ese trabajo";
    SIGN_OWNER = "Owner", es "Dueño";
    SIGN_CREW = "Contractor", es "Contratista";
    /// Long on paper; a narrow screen may break it.
    SIGNED = "____________\u{200b}____________ day ____\u{200b}______", es "____________\u{200b}____________ día ____\u{200b}______";
    NEXT = "Both sign before that work begins.", es "Firman los dos antes de ese trabajo.";

    OLD = "Found old material? Stop: it is tested before it is cut or scraped.", es "¿Halló material viejo? Pare: se analiza antes de cortarlo o rasparlo.";
}
