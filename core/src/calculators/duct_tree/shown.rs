//! All that a person reads of branches once they are worked out.

use crate::words;

words! {
    UNNAMED = "Branch {0}", es "Ramal {0}";
    NAMED = "{0} {1}", es "{0} {1}";
    PLAIN_TRUNK = "Trunk {0}", es "Troncal {0}";
    FLOW = "{0}, air", es "{0}, aire";
    OPEN_FLOW = "{0}, air, all open", es "{0}, aire, todo abierto";
    PRESSURE = "Pressure at the start", es "Presión al principio";
    OPEN_PRESSURE = "Pressure, all open", es "Presión, todo abierto";
    TOTAL = "Air in all", es "Aire en total";
    OPEN_TOTAL = "Air in all, all open", es "Aire en total, todo abierto";

    CHECK_VELOCITY = "{0}, velocity", es "{0}, velocidad";

    NEXT_TOTAL = "{0} loses {1}; the others get it, and the blower works against {2}. A blower of fixed speed comes near the other end, below.", es "{0} pierde {1}; los otros lo reciben, y el soplador trabaja contra {2}. Un soplador de velocidad fija se acerca al otro extremo, abajo.";
    NEXT_PRESSURE = "{0} loses {1}; the others keep theirs or gain a little.", es "{0} pierde {1}; los otros conservan el suyo o ganan poco.";
    NEXT_ALONE = "{0} gets the least. Say how much of a boot is open to see who gets its air.", es "{0} recibe lo menos. Diga cuánto de una bota está abierto para ver quién recibe su aire.";
    BLIND = "Trunk {0} ends blind: nothing leaves it, so it is left out.", es "La troncal {0} no lleva a nada: nada sale de ella, así que no se cuenta.";

    STEP_BLOCKED = "{0}: what its opening costs, in velocity pressures", es "{0}: lo que cuesta su abertura, en presiones de velocidad";
    STEP_LOSS = "{0}: loss at {1}", es "{0}: pérdida a {1}";
    STEP_WAY = "Way to {0}: all it loses", es "Camino a {0}: todo lo que pierde";
    STEP_TOTAL = "All branches", es "Todos los ramales";
    STEP_LEFT = "Check: how far off the pressures still are", es "Revisión: cuánto difieren todavía las presiones";

    PART = "Who gets what", es "Cuánto recibe cada uno";
    ROW = "{0}, Re {1}, {2}", es "{0}, Re {1}, {2}";
    ROW_OPEN = "{0}; all open {1}; Re {2}, {3}", es "{0}; todo abierto {1}; Re {2}, {3}";
    OTHER_PRESSURE = "If the pressure stays instead", es "Si en cambio se mantiene la presión";
    OTHER_TOTAL = "If the system's air stays instead", es "Si en cambio se mantiene el aire del sistema";
    OTHER_FLOW = "{0}, air, at the other end", es "{0}, aire, en el otro extremo";
    AMOUNT = "{0}", es "{0}";
    AGAIN_PART = "Look again", es "Revise otra vez";
    AGAIN = "{0}.", es "{0}.";

    DOWN = "Shut the air handler down and lock it out before you open a duct.", es "Apague la manejadora y póngale candado antes de abrir un ducto.";
    OLD = "Old tape, wrap and boots can hold asbestos, old registers lead paint. Leave them whole until they are tested.", es "La cinta, la envoltura y las botas viejas pueden tener asbesto, las rejillas viejas pintura con plomo. Déjelas enteras hasta que se analicen.";
    DAMPER = "Never shut registers to steer air for long: pressure, noise and leaks rise, and a coil can freeze. Balance with dampers at the take-offs that stay within reach.", es "Nunca cierre rejillas por mucho tiempo para dirigir el aire: suben la presión, el ruido y las fugas, y se puede congelar el serpentín. Balancee con compuertas en las derivaciones que queden al alcance.";
    LICENSED = "Final balance is the HVAC sub's. This takes duct as tight and all rooms at one pressure.", es "El balance final es del contratista de clima. Esto toma los ductos sin fugas y todos los cuartos a una presión.";

    DRAWING = "Each way from the air handler, lengths to scale", es "Cada camino desde la manejadora, largos a escala";
    LABEL = "{0}: {1}", es "{0}: {1}";
    TRUNK_INK = "Trunk", es "Troncal";
    BRANCH_INK = "Branch", es "Ramal";
    BLOCKED_INK = "Its boot or grille is partly shut", es "Su bota o rejilla está cerrada en parte";
    TWIN = "{0}: {1} of duct from the air handler, {2}.", es "{0}: {1} de ducto desde la manejadora, {2}.";
}
