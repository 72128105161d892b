//! All that a person reads of the floor under a ceiling that is scraped.

use crate::words;

words! {
    NAME = "The floor under a stripped ceiling", es "El piso bajo un techo que se raspa";
    ABOUT = "Plastic, a pan at the blade or a bare slab: side by side", es "Plástico, una charola en la espátula o losa desnuda: lado a lado";
    NOTHING = "", es "";

    LONG = "One side", es "Un lado";
    WIDE = "The other", es "El otro";
    WHY = "look at it again.", es "revíselo otra vez.";
    WET = "Wet debris", es "Escombro mojado";
    WET_HINT = "From stripping.", es "De raspar el techo.";
    TEXTURE = "The texture is", es "La textura está";
    FLOOR = "The floor is", es "El piso es";
    NOT_SAID = "Not said", es "No se dijo";
    FINISHED = "Finished, it stays", es "Terminado, se queda";
    SLAB = "A bare slab", es "Losa desnuda";
    TURN_UP = "Plastic turned up each wall", es "Plástico subido en cada pared";
    ROLL = "Roll, wide", es "Rollo, ancho";
    LAPS = "Laps", es "Traslapes";
    CARRIED = "A bag weighs at most", es "Una bolsa pesa como máximo";
    CAUGHT = "Caught at the blade", es "Cae en la charola";
    CAUGHT_HINT = "A guess, common practice: half to nine tenths. Weigh one pass.", es "Un cálculo a ojo, costumbre del oficio: de la mitad a nueve décimos. Pese una pasada.";
    PAN = "A full pan", es "Una charola llena";
    CLEAN = "Your rate, cleaning a slab", es "Su ritmo, limpiar una losa";
    PROTECT = "Your rate, laying plastic", es "Su ritmo, poner plástico";
    EMPTY = "Empty takes the usual range.", es "Vacío toma el rango común.";
    PRICES = "Prices you were given", es "Precios que le dieron";
    PRICES_HINT = "In whole dollars; told while it is held.", es "En dólares enteros; se muestran mientras está detenido.";

    PLASTIC = "Floor plastic", es "Plástico de piso";
    BAGS = "Bags to carry", es "Bolsas por cargar";
    FALLS = "Misses the pan", es "Cae fuera de la charola";
    PANS = "Pans to empty", es "Charolas por vaciar";
    LAYING = "One worker's hours, laying plastic", es "Horas de un trabajador, poner plástico";
    CLEANING = "One worker's hours, cleaning a slab", es "Horas de un trabajador, limpiar losa";

    SIDE_BY_SIDE = "Side by side", es "Lado a lado";
    ORDER = "Plastic · pan at the blade, over plastic · bare slab", es "Plástico · charola en la espátula, sobre plástico · losa desnuda";
    ROW_PLASTIC = "Plastic", es "Plástico";
    ROW_FALLS = "On the floor", es "En el piso";
    ROW_LOADS = "Bags", es "Bolsas";
    ROW_PANS = "Pans", es "Charolas";
    ROW_HOURS = "Hours, likely", es "Horas, lo probable";
    THREE = "{0} · {1} · {2}", es "{0} · {1} · {2}";
    NONE = "none", es "nada";
    NOT_HERE = "not here", es "aquí no";
    RANGES = "Low, likely, high", es "Bajo, probable, alto";

    CHECK_SLAB = "Bare slab", es "Losa desnuda";
    ASK_SLAB = "A finished floor takes up what runs down: plastic, or strip the floor first.", es "Un piso terminado absorbe lo que escurre: plástico, o quite primero el piso.";
    NEXT = "Plastic under all of it unless the slab is bare and sealed off.", es "Plástico debajo de todo, a menos que la losa esté desnuda y aislada.";
    SLIP = "Wet plastic is slick: paper or board on top, shoes off at the way out.", es "El plástico mojado resbala: papel o tabla encima, quítese los zapatos al salir.";
    SLURRY = "Shovel it damp, then mop; never dry, no shop vacuum. Keep it out of drains. Slurry dried in a slab is another cleaning.", es "Recójalo húmedo con pala, luego trapee; nunca en seco, sin aspiradora de taller. Que no llegue a los desagües. La lechada seca en una losa es otra limpieza.";
    PAN_ARM = "A full pan overhead tires an arm: empty it early.", es "Una charola llena en alto cansa el brazo: vacíela pronto.";
}
