//! All that a person reads of the heat that a raised ceiling adds.

use crate::words;

words! {
    NAME = "Heat of a raised ceiling", es "Calor de un techo subido";
    ABOUT = "What more heat and air the room asks for, and how deep to insulate", es "Cuánto más calor y aire pide el cuarto, y cuánto aislante poner";
    NOTHING = "", es "";

    WALL = "Raised wall", es "Pared subida";
    WALL_HINT = "Only what is new: take it whole from the raised ceiling.", es "Solo lo nuevo: tómelo entero del techo subido.";
    WHY_AREA = "larger than that, work it in parts.", es "si es más grande, calcúlelo por partes.";
    BEHIND = "Behind it", es "Detrás de ella";
    OUTSIDE = "Outside", es "Afuera";
    ATTIC = "An attic", es "Un ático";
    HEATED = "A heated room", es "Un cuarto con calefacción";
    INSIDE = "Of it, beside heated rooms", es "De ella, junto a cuartos con calefacción";
    INSIDE_HINT = "Partitions take nothing: it comes off. Empty: none.", es "Las divisiones no piden nada: se resta. Vacío: nada.";
    HOLDS = "What the wall holds back", es "Lo que la pared retiene";
    HOLDS_HINT = "What is behind it, and its R or U.", es "Lo que hay detrás, y su R o U.";
    BY = "Told by its", es "Se dice por su";
    BY_R = "R", es "R";
    BY_U = "U, of the whole wall", es "U, de la pared completa";
    R = "Its R", es "Su R";
    R_HINT = "Studs let more through: the whole wall has less than its insulation.", es "Los montantes dejan pasar más: la pared completa tiene menos que su aislante.";
    WHY_R = "no wall or ceiling has that.", es "ninguna pared ni techo tiene eso.";
    U = "Its U", es "Su U";
    WHY_U = "a single window has less.", es "una ventana sencilla tiene menos.";
    AIR = "Air added", es "Aire de más";
    AIR_HINT = "Take it from the raised ceiling.", es "Tómelo del techo subido.";
    CHANGES = "Air changes an hour", es "Cambios de aire por hora";
    CHANGES_HINT = "Of the house; half is common, a drafty one has more.", es "De la casa; medio es lo común, una con corrientes tiene más.";
    WHY_CHANGES = "no house is that drafty.", es "ninguna casa tiene tantas corrientes.";
    HEATING = "Inside over outside, in winter", es "Adentro más que afuera, en invierno";
    HEATING_HINT = "The design difference: ask who sized the furnace.", es "La diferencia de diseño: pregunte a quien dimensionó el calefactor (furnace).";
    COOLING = "Outside over inside, in summer", es "Afuera más que adentro, en verano";
    COOLING_HINT = "Empty: summer is left out.", es "Vacío: no se cuenta el verano.";
    WHY_DEGREES = "no climate asks for that.", es "ningún clima pide eso.";
    SUPPLY_HEAT = "Register over room, heating", es "Rejilla más que el cuarto, calor";
    SUPPLY_HEAT_HINT = "How much warmer its air is. Empty: no air is told.", es "Cuánto más caliente sale su aire. Vacío: no se dice el aire.";
    SUPPLY_COOL = "Register under room, cooling", es "Rejilla menos que el cuarto, frío";
    SUPPLY_COOL_HINT = "Often about 20 °F.", es "Muchas veces cerca de 20 °F.";

    CEILING = "The ceiling itself", es "El techo mismo";
    CEILING_HINT = "Insulation that changes, or an area that does.", es "Aislante que cambia, o área que cambia.";
    COUNT = "Count it too", es "Contarlo también";
    OLD_AREA = "Area now", es "Área actual";
    OLD_R = "R now", es "R actual";
    OLD_R_HINT = "Bare board under an attic is about R 2.", es "Tablaroca sola bajo un ático es cerca de R 2.";
    NEW_AREA = "Area to be", es "Área nueva";
    NEW_R = "R to be", es "R nueva";
    ZONE = "Climate zone", es "Zona climática";
    ZONE_HINT = "From the building department.", es "De la oficina de construcción.";

    FILL = "Blown insulation", es "Aislante soplado";
    FILL_HINT = "How deep, and whether the board bears it.", es "Cuánto de grueso, y si la tablaroca lo aguanta.";
    KIND = "What", es "Cuál";
    WANTED = "R wanted", es "R que se quiere";
    PER_INCH = "R an inch", es "R por pulgada";
    PER_INCH_HINT = "From the bag. Empty: the low end of its kind.", es "De la bolsa. Vacío: lo más bajo de su tipo.";
    WHY_PER_INCH = "nothing blown has that.", es "nada soplado tiene eso.";
    DENSITY = "Weight, settled", es "Peso, asentado";
    DENSITY_HINT = "From the bag. Empty: the high end of its kind.", es "De la bolsa. Vacío: lo más alto de su tipo.";
    WHY_DENSITY = "nothing blown is that heavy.", es "nada soplado pesa tanto.";
    BOARD = "Ceiling board", es "Tablaroca del techo";

    HEAT = "More heat, in winter", es "Más calor, en invierno";
    HEAT_LESS = "Less heat, in winter", es "Menos calor, en invierno";
    HEAT_WALL = "Through the wall, in winter", es "Por la pared, en invierno";
    HEAT_AIR = "With the air, in winter", es "Con el aire, en invierno";
    HEAT_CEILING = "Through the ceiling, more or less, in winter", es "Por el techo, más o menos, en invierno";
    HEAT_CFM = "Warm air for it", es "Aire caliente para eso";
    COOL = "More heat, in summer", es "Más calor, en verano";
    COOL_LESS = "Less heat, in summer", es "Menos calor, en verano";
    COOL_WALL = "Through the wall, in summer", es "Por la pared, en verano";
    COOL_AIR = "With the air, in summer", es "Con el aire, en verano";
    COOL_CEILING = "Through the ceiling, more or less, in summer", es "Por el techo, más o menos, en verano";
    COOL_CFM = "Cool air for it", es "Aire frío para eso";
    DEPTH = "Insulation, deep", es "Aislante, grueso";
    WEIGHT = "Its weight on the board", es "Su peso sobre la tablaroca";

    CHECK_R = "Ceiling R to be", es "R nueva del techo";
    CHECK_SAG = "Insulation on the board", es "Aislante sobre la tablaroca";
    ASK_R = "New ceilings need more under some edition: see below. An old one is filled as deep as its cavity, and more where local code asks.", es "Los techos nuevos necesitan más según alguna edición: vea abajo. Uno viejo se llena hasta donde da su hueco, y más donde lo pide el código local.";

    BY_EDITION = "Asked of a new house here", es "Lo que se pide aquí a una casa nueva";
    BY_EDITION_NOTE = "Which edition your town holds to, and what it asks of an old house, the building department says.", es "Qué edición sigue su ciudad, y qué pide de una casa vieja, lo dice la oficina de construcción.";
    CEILING_IN = "Ceiling, IRC {0}", es "Techo, IRC {0}";
    WALL_IN = "Wood wall, IRC {0}", es "Pared de madera, IRC {0}";
    FROM_MEMORY = "{0}, from memory: ask", es "{0}, de memoria: pregunte";
    JUST = "{0}", es "{0}";

    MORE_INSIDE = "It has to be no more than the raised wall: {0}.", es "No puede ser más que la pared subida: {0}.";
    NEEDED = "Needed, unless a heated room is behind the wall.", es "Hace falta, salvo que detrás de la pared haya un cuarto con calefacción.";

    M_FILL = "Blown insulation, {0} deep, settled", es "Aislante soplado, {0} de grueso, asentado";

    DEFER = "This sizes nothing. Furnace, ducts and registers go by a load calculation of the whole house, by somebody who does them.", es "Esto no dimensiona nada. Calefactor, ductos y rejillas van por un cálculo de carga de toda la casa, hecho por quien se dedica a eso.";
    SUN = "Sun on a wall, a hot attic and moisture are not in it: in summer it is the least.", es "El sol en la pared, el ático caliente y la humedad no se cuentan: en verano es lo mínimo.";
    TEST = "Old loose fill may be vermiculite with asbestos: leave it until it is tested.", es "El aislante suelto viejo puede ser vermiculita con asbesto: déjelo hasta que se analice.";
    CLEAR = "Keep insulation off lights and flues that aren't made for it, and keep 1 in of air under the roof.", es "Mantenga el aislante lejos de luces y chimeneas que no estén hechas para eso, y deje 1 in de aire bajo el tejado.";
    LOCAL = "Local code and the building department decide.", es "Deciden el código local y la oficina de construcción.";
}
