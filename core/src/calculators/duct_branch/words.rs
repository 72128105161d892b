//! All that a person reads of a branch before it is worked out.

use crate::words;

words! {
    NAME = "A branch, made longer or moved", es "Un ramal, alargado o movido";
    ABOUT = "How much air a branch still gives, and what gives it back", es "Cuánto aire da todavía un ramal, y qué se lo devuelve";
    NOTHING = "", es "";
    NOW = "The branch now", es "El ramal ahora";
    FIT = "Fitting", es "Pieza";
    FITTINGS = "Fittings on it now", es "Piezas que tiene ahora";
    FITTINGS_HINT = "None where the length above is the effective length.", es "Ninguna si el largo de arriba es el largo efectivo.";
    ANGLE = "Turns by", es "Da vuelta";
    C = "Its C", es "Su C";
    C_HINT = "Velocity pressures that it loses.", es "Presiones de velocidad que pierde.";
    FEET = "Its equivalent length", es "Su largo equivalente";
    COUNT = "How many", es "Cuántas";
    ADD_ELBOW = "Smooth elbow", es "Codo liso";
    ADD_PIECED = "Elbow in pieces", es "Codo de gajos";
    ADD_BOOT = "Boot", es "Bota";
    ADD_TEE = "Take-off, tee", es "Derivación, te";
    ADD_PLENUM = "Take-off, plenum", es "Derivación, plenum";
    FLOW = "Air now", es "Aire ahora";
    FLOW_HINT = "Measured at the register with a hood, or a guess: then say between what, below.", es "Medido en la rejilla con campana, o al tanteo: entonces diga abajo entre cuánto.";
    FLOW_LEAST = "If a guess: no less than", es "Si es al tanteo: no menos de";
    FLOW_LEAST_HINT = "Blank where it was measured.", es "Vacío si se midió.";
    FLOW_MOST = "And no more than", es "Y no más de";
    SYSTEM = "All the system's air", es "Todo el aire del sistema";
    SYSTEM_HINT = "Blank leaves out what happens where the blower holds its air.", es "Vacío no cuenta lo que pasa si el soplador mantiene su aire.";
    OTHERS = "Other branches", es "Otros ramales";
    OTHERS_HINT = "Taken as one lump that loses as this one does.", es "Se toman en un solo bulto que pierde como este.";
    ADDED = "Straight duct added", es "Ducto recto agregado";
    ADDED_HINT = "Of the same kind and size. −4 ft where it gets shorter.", es "Del mismo tipo y medida. −4 ft si queda más corto.";
    ADDED_FITTINGS = "Fittings added", es "Piezas agregadas";
    PIECE = "Piece of another kind", es "Pedazo de otro tipo";
    PIECE_NONE = "None", es "Ninguno";
    PIECE_FLEX = "Flexible", es "Flexible";
    PIECE_ROUND = "Round metal", es "Redondo de lámina";
    PIECE_DIAMETER = "Its diameter, inside", es "Su diámetro, por dentro";
    PIECE_LENGTH = "Its length as it lies", es "Su largo como está puesto";
    PIECE_SLACK = "Shorter than pulled tight by", es "Más corto que bien estirado, por";
    PIECE_TIGHT = "Or its length pulled tight", es "O su largo bien estirado";
    PIECE_TIGHT_HINT = "One of the two; both blank for pulled tight.", es "Uno de los dos; los dos vacíos si va bien estirado.";
    NEW_DIAMETER = "Whole run anew, diameter", es "Tramo completo nuevo, diámetro";
    CUT_SLACK = "Cut the run's slack out", es "Cortar lo flojo del tramo";
    CUT_SLACK_HINT = "Of a flexible run.", es "De un tramo flexible.";
    WRAP = "Old tape or wrap on it", es "Cinta o envoltura vieja encima";
    WRAP_HINT = "Gray or white cloth, paper or plaster on joints and boots.", es "Tela gris o blanca, papel o yeso en juntas y botas.";
    WRAP_UNKNOWN = "Not looked yet", es "Todavía no se ve";
    WRAP_YES = "Yes", es "Sí";
    WRAP_NO = "No: bare metal or new duct", es "No: lámina sola o ducto nuevo";
    WHY_CFM = "that is more than a house moves through it.", es "eso es más de lo que una casa mueve por ahí.";
    WHY_C = "that is as good as shut.", es "eso es como si estuviera cerrado.";
    WHY_COUNT = "count again, or put in the effective length.", es "cuente otra vez, o ponga el largo efectivo.";
    WHY_ADDED = "no branch in a house is that long.", es "ningún ramal de casa es tan largo.";

    TOO_FAST = "Air would run at {0} there. Check size and cfm.", es "Ahí el aire correría a {0}. Revise medida y cfm.";
    NOT_LESS = "It has to be no more than the air now, {0}.", es "No puede ser más que el aire de ahora, {0}.";
    NOT_MORE = "It has to be no less than the air now, {0}.", es "No puede ser menos que el aire de ahora, {0}.";
    SYSTEM_SMALL = "It has to be more than this branch gets, {0}.", es "Tiene que ser más de lo que recibe este ramal, {0}.";
    NOTHING_LEFT = "That leaves nothing of {0}. Take less out.", es "Con eso no queda nada de {0}. Quite menos.";
    ONE_OF_TWO = "Give the slack or the length pulled tight, not both.", es "Dé lo flojo o el largo bien estirado, no los dos.";
    TIGHT_SHORT = "It can't lie longer, {0}, than it is pulled tight.", es "No puede estar puesto más largo, {0}, que bien estirado.";
    TOO_SLACK = "That is {0} shorter than pulled tight, past 60 %: check both lengths.", es "Eso es {0} más corto que bien estirado, más del 60 %: revise los dos largos.";
}
