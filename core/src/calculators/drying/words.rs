//! All that a person reads of how compound dries.

use crate::words;

words! {
    NAME = "Drying of compound", es "Secado de la pasta";
    ABOUT = "Hours to dry and what is left of them, whether to open the window, water to carry off", es "Horas para secar y cuánto falta, si conviene abrir la ventana, agua por sacar";
    NOTHING = "", es "";

    MUD = "Compound", es "Pasta";
    MUD_HINT = "Setting compound hardens by its label's minutes, in any air; it is painted only when dry.", es "La pasta de fraguado rápido endurece según los minutos de su etiqueta, con cualquier aire; se pinta solo ya seca.";
    DRYING = "Drying-type", es "De secado al aire";
    SET_20 = "Setting, labeled 20", es "Fraguado rápido, etiqueta 20";
    SET_45 = "Setting, labeled 45", es "Fraguado rápido, etiqueta 45";
    SET_90 = "Setting, labeled 90", es "Fraguado rápido, etiqueta 90";
    SET_210 = "Setting, labeled 210", es "Fraguado rápido, etiqueta 210";
    AGAIN_AFTER = "Coat it again, once hard, after about", es "Otra mano, ya dura, después de unos";
    WORKS_LEAST = "Works, at least", es "Se trabaja, al menos";
    WORKS_MOST = "Works, at most", es "Se trabaja, como máximo";
    TEMPERATURE = "Temperature", es "Temperatura";
    HUMIDITY = "Relative humidity", es "Humedad relativa";
    HUMIDITY_HINT = "Where it dries: wet mud makes a shut room wetter than the house.", es "Donde se seca: la pasta mojada deja un cuarto cerrado más húmedo que la casa.";
    WHY_WARM = "past what the table and the formula hold for.", es "se sale de lo que valen la tabla y la fórmula.";
    WHY_WET = "above that it will not dry.", es "arriba de eso no se seca.";
    WHY_ALL = "air holds no more.", es "al aire no le cabe más.";
    THICK = "Coat, wet", es "Mano, mojada";
    THICK_HINT = "The thickest part. 1/16 in is taken for the table's.", es "La parte más gruesa. Se toma 1/16 in como la de la tabla.";
    WHY_THICK = "fill that with setting compound.", es "rellene eso con pasta de fraguado rápido.";
    SPELLS = "Since it went on", es "Desde que se puso";
    SPELLS_HINT = "Warm and cool spells, one by one; from now on as above. None: it is fresh.", es "Ratos calientes y fríos, uno por uno; de ahora en adelante, como arriba. Ninguno: está fresca.";
    SPELL = "Spell", es "Rato";
    HOURS = "Hours", es "Horas";
    WHY_HOURS = "that is a season.", es "eso es una temporada.";
    OUTDOORS = "Compare with outdoors", es "Comparar con afuera";
    OUT_TEMPERATURE = "Outdoors", es "Afuera";
    OUT_HUMIDITY = "Humidity outdoors", es "Humedad afuera";
    GALLONS = "Compound put on, this coat", es "Pasta puesta, esta mano";
    GALLONS_HINT = "Ready-mixed: one coat of the skim, without what the pail keeps. Blank: no water told.", es "Lista para usar: una mano del skim, sin lo que queda en la cubeta. Vacío: no se dice el agua.";
    WHY_GALLONS = "that is a house; work it in parts.", es "eso es una casa; hágalo por partes.";
    ROOM = "Air in the room", es "Aire en el cuarto";
    ROOM_HINT = "From the room. Blank: no air changes told.", es "Del cuarto. Vacío: no se dicen cambios de aire.";
    WHY_ROOM = "that is no room.", es "eso no es un cuarto.";
    WAY = "The water gets out", es "El agua sale por";
    SHUT = "Shut room, dehumidifier or heat", es "Cuarto cerrado, deshumidificador o calor";
    WINDOWS = "Open windows", es "Ventanas abiertas";
    FAN = "A fan blows out", es "Un ventilador saca aire";
    FLUE = "Appliance with an open flue on the same air", es "Aparato con chimenea abierta en el mismo aire";
    FLUE_HINT = "Water heater, furnace, stove or fireplace that draws its air from the house.", es "Calentador de agua, calefacción, estufa o chimenea de leña que toma su aire de la casa.";
    NOT_SAID = "Not said", es "No se dijo";
    NO_FLUE = "None, looked for", es "Ninguno, ya se buscó";
    A_FLUE = "There is one", es "Sí hay uno";

    TO_DRY = "Hours to dry, from wet", es "Horas para secar, desde mojada";
    TO_DRY_AT = "Hours to dry {0}, {1} and {2}", es "Horas para secar {0}, {1} y {2}";
    AT_LEAST = "At least", es "Al menos";
    AT_MOST = "At most", es "Como máximo";
    IN_TABLE = "In the table, for 1/16 in", es "En la tabla, para 1/16 in";
    DONE = "Dried so far", es "Secado hasta ahora";
    LEFT = "Hours left, as it is now", es "Horas que faltan, como está ahora";
    DEW = "Dew point of the room", es "Punto de rocío del cuarto";
    OUT_DEW = "Dew point outdoors", es "Punto de rocío afuera";
    LET_IN = "Outdoor air, let in and warmed", es "Aire de afuera, metido y calentado";
    WITH_OUT = "Hours to dry in that air", es "Horas para secar con ese aire";
    WATER = "Water to dry out", es "Agua por secar";
    PINTS = "As pints", es "En pintas";
    A_DAY = "For a dehumidifier to take, this coat", es "Para el deshumidificador, esta mano";
    AIR = "Outdoor air that carries it", es "Aire de afuera que se la lleva";
    CHANGES = "Air changes for it", es "Cambios de aire para eso";
    HEAT = "Heat to warm that air", es "Calor para calentar ese aire";

    SATURATED = "Vapor, saturated", es "Vapor, saturado";
    SPELL_DONE = "Spell {0}, of all", es "Rato {0}, del total";
    SPELL_NUMBER = "Spell {0}", es "Rato {0}";
    SPELL_TAKES = "{0} of {1}", es "{0} de {1}";
    SPELL_NONE = "too wet, nothing dries", es "muy húmedo, nada se seca";
    RATE = "Water an hour", es "Agua por hora";
    INSIDE_HOLDS = "Vapor in the room's air", es "Vapor en el aire del cuarto";
    OUTSIDE_HOLDS = "Vapor in outdoor air, warmed", es "Vapor en el aire de afuera, calentado";

    CHECK_WARM = "Temperature", es "Temperatura";
    WARM_IT = "Warm it: makers ask for 50 °F, or 55, from 48 h before until it is dry.", es "Caliéntelo: los fabricantes piden 50 °F, o 55, desde 48 h antes hasta que seque.";
    CHECK_FLUE = "Open flues where a fan pulls", es "Chimeneas abiertas donde jala un ventilador";
    ASK_FLUE = "Look first: a fan can pull flue gas, with carbon monoxide, into the house.", es "Revise primero: un ventilador puede jalar gas de chimenea, con monóxido de carbono, hacia la casa.";
    STOP_FLUE = "Stop: the fan can pull flue gas, with carbon monoxide, into the house.", es "Pare: el ventilador puede jalar gas de chimenea, con monóxido de carbono, hacia la casa.";

    TABLE = "The table, hours under tape", es "La tabla, horas bajo cinta";
    TABLE_NOTE = "Nearest to the room: the row of {0}. From memory.", es "Lo más cercano al cuarto: el renglón de {0}. De memoria.";
    HEAD_HUMIDITY = "Humidity", es "Humedad";
    JUST = "{0}", es "{0}";
    SO_FAR = "Spells so far", es "Ratos hasta ahora";
    CLOCKS = "Setting compound, by its clock", es "Pasta de fraguado rápido, por su reloj";
    CLOCKS_NOTE = "Humidity hardly matters, but it wants 45 °F. Coat it again once hard; paint it only when dry, by the hours above.", es "La humedad casi no importa, pero pide 45 °F. Otra mano cuando ya está dura; pintura solo cuando está seca, según las horas de arriba.";
    CLOCK = "Labeled {0}", es "Etiqueta {0}";
    CLOCK_VALUE = "works {0} to {1} min, coated again after about {2}", es "se trabaja {0} a {1} min, otra mano después de unos {2}";

    NEXT_FRESH = "Don't judge it by the eye alone: the thick places dry last.", es "No lo juzgue solo a ojo: las partes gruesas se secan al último.";
    NEXT_LEFT = "{0} dried, {1} to go as it is now.", es "{0} seco, faltan {1} como está ahora.";
    NEXT_DRY = "By the reckoning it is dry. Look at the thick places before the next coat.", es "Según el cálculo está seco. Revise las partes gruesas antes de la otra mano.";
    NEXT_BOTH = "{0} {1}", es "{0} {1}";
    NEXT_OPEN = "Open the window: outdoor air, warmed, is drier.", es "Abra la ventana: el aire de afuera, calentado, es más seco.";
    NEXT_HEAT = "Heat the room first; a window makes it colder.", es "Primero caliente el cuarto; una ventana lo enfría.";
    NEXT_SAME = "The window makes no odds here: leave it shut, and take a dehumidifier or heat.", es "La ventana aquí da igual: déjela cerrada, y use deshumidificador o calor.";
    NEXT_KEEP = "Keep the window shut: outdoor air brings as much water or more.", es "Deje cerrada la ventana: el aire de afuera trae la misma agua o más.";

    FREEZING = "When it freezes outdoors: keep that draft off wet compound, and the room warm while a window is open.", es "Si afuera hiela: que esa corriente no le dé a la pasta mojada, y mantenga el cuarto caliente mientras la ventana está abierta.";
    HEATER = "No fuel heater without a vent: it adds water, and carbon monoxide that kills. No grill, no generator inside.", es "Ningún calentador de combustible sin salida de gases: mete agua, y monóxido de carbono que mata. Nada de asador ni generador adentro.";
    DETECTOR = "A carbon monoxide alarm that works, on any job with heat, in a house where people sleep.", es "Una alarma de monóxido de carbono que funcione, en todo trabajo con calor, en una casa donde duerme gente.";
    SLOW = "Warm it slowly and evenly: a hot blast cracks joints and dries the skin only.", es "Caliente despacio y parejo: un chorro caliente agrieta las juntas y seca solo la cáscara.";
    RATED = "A dehumidifier's rating is for warm, damp air; in a cool or dry room it takes far less.", es "La capacidad de un deshumidificador es para aire tibio y húmedo; en un cuarto frío o seco saca mucho menos.";
}
