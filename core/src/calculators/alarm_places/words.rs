//! All that a person reads of where smoke alarms may sit.

use crate::words;

words! {
    NAME = "Where smoke alarms may sit", es "Dónde poner alarmas de humo";
    ABOUT = "How many a house needs, and one place against bath, register, fan, cooking and ceiling", es "Cuántas pide una casa, y un lugar contra baño, rejilla, ventilador, cocina y techo";
    NOTHING = "", es "";

    BEDROOMS = "Bedrooms", es "Recámaras";
    AREAS = "Sleeping areas, each with a way out of its own", es "Áreas de dormir, cada una con su propia salida";
    AREAS_HINT = "Bedrooms off one hall are one area.", es "Las recámaras de un mismo pasillo son un área.";
    LEVELS = "Levels with no bedroom, basement too", es "Niveles sin recámara, también el sótano";
    HAVE = "Alarms in those places now", es "Alarmas en esos lugares ahora";
    SENSING = "This alarm is", es "Esta alarma es";
    SILENCE = "It has a silencing button", es "Tiene botón para silenciarla";
    MOUNT = "It sits", es "Va";
    CEILING = "On a flat ceiling", es "En techo plano";
    WALL = "On a wall", es "En una pared";
    SLOPE = "On a slope", es "En una pendiente";
    BATH = "To the bathroom's door", es "A la puerta del baño";
    BATH_HINT = "A bathroom with a tub or shower. Measured level.", es "Un baño con tina o regadera. Medido a nivel.";
    REGISTER = "To the supply register's edge", es "A la orilla de la rejilla de salida";
    FAN = "To the tips of the fan's blades", es "A las puntas de las aspas del ventilador";
    COOKING = "To the range or oven", es "A la estufa u horno";
    COOKING_HINT = "Along the way that air goes, round walls.", es "Por el camino del aire, rodeando paredes.";
    BEDROOM = "To the farthest bedroom's door", es "A la puerta de la recámara más lejana";
    BEDROOM_HINT = "Outside a sleeping area: on the way there.", es "Fuera de un área de dormir: en el camino hacia ahí.";
    TOP = "Its top below the ceiling", es "Su parte de arriba bajo el techo";
    PEAK = "To the peak, level", es "A la cumbrera, a nivel";
    BELOW = "Below the peak", es "Abajo de la cumbrera";
    WHY = "no house of a family takes that.", es "ninguna casa de una familia da para eso.";

    NEEDED = "Smoke alarms needed, at least", es "Alarmas de humo, al menos";
    IN_BEDROOMS = "In bedrooms", es "En recámaras";
    OUTSIDE = "Outside sleeping areas", es "Fuera de áreas de dormir";
    ON_LEVELS = "On other levels", es "En otros niveles";
    NEXT = "Moving a register, a fan or a door can make a good place bad: measure again when one moves.", es "Mover una rejilla, un ventilador o una puerta puede hacer malo un buen lugar: mida otra vez cuando uno se mueva.";
    CHECK_HAVE = "Alarms there", es "Alarmas ahí";
    CHECK_BATH = "From the bathroom's door", es "De la puerta del baño";
    CHECK_REGISTER = "From the supply register", es "De la rejilla de salida";
    CHECK_FAN = "From the fan's blades", es "De las aspas del ventilador";
    CHECK_COOKING = "From cooking, NFPA 72", es "De la estufa, NFPA 72";
    CHECK_HOME = "From cooking, residential code", es "De la estufa, código residencial";
    CHECK_BEDROOM = "From the bedroom's door", es "De la puerta de recámara";
    CHECK_TOP = "Its top below the ceiling", es "Su parte de arriba bajo el techo";
    CHECK_CORNER = "Off the corner with the ceiling", es "Lejos de la esquina con el techo";
    CHECK_PEAK = "From the peak", es "De la cumbrera";
    CHECK_BELOW = "Below the peak", es "Abajo de la cumbrera";
    CORNER_ASK = "Newer rules dropped it; the alarm's own sheet may still ask for it.", es "Las reglas más nuevas lo quitaron; la hoja de la alarma todavía lo puede pedir.";
    MEMORY = "From memory: check it in the book, and in the alarm's own sheet.", es "De memoria: revíselo en el libro, y en la hoja de la propia alarma.";

    DEAD = "Dead, and proved dead, before a wired alarm is taken down or moved.", es "Sin corriente, y comprobado sin corriente, antes de bajar o mover una alarma cableada.";
    SHEET = "The alarm's own sheet, local rules and who inspects go first. Wired ones are a licensed electrician's work where the law says so.", es "La hoja de la propia alarma, las reglas locales y quien inspecciona van primero. Las cableadas son trabajo de un electricista con licencia donde la ley lo dice.";

    DRAWING = "How far it is from each, and the least or most, to scale", es "Qué tan lejos está de cada uno, y el mínimo o máximo, a escala";
    MEANS_FAR = "As measured", es "Lo medido";
    MEANS_LIMIT = "The limit", es "El límite";
    LABEL = "{0}", es "{0}";
    TWIN = "{0}: {1}, the limit {2}.", es "{0}: {1}, el límite {2}.";
}
