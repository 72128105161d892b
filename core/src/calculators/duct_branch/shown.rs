//! All that a person reads of a branch once it is worked out.

use crate::words;

words! {
    FLOW_AFTER = "Air after, at the same pressure", es "Aire después, a la misma presión";
    FLOW_HELD = "Air after, with the system's air the same", es "Aire después, con el mismo aire del sistema";
    FLOW_NOW = "Air now", es "Aire ahora";
    OTHER_EACH = "Each other branch then", es "Cada otro ramal, entonces";
    LOST = "Air lost, at the same pressure", es "Aire perdido, a la misma presión";
    GAINED = "Air gained, at the same pressure", es "Aire ganado, a la misma presión";
    SHARE = "Air kept, at the same pressure", es "Aire que queda, a la misma presión";
    LOSS = "Pressure it loses now", es "Presión que pierde ahora";
    LOSS_AFTER = "Pressure the same air would take", es "Presión que tomaría el mismo aire";
    LOSS_HELD = "Pressure after, with the system's air the same", es "Presión después, con el mismo aire del sistema";
    RATE = "Friction rate now", es "Tasa de fricción ahora";
    RATE_AFTER = "Friction rate of the run after", es "Tasa de fricción del tramo, después";
    VELOCITY = "Velocity now", es "Velocidad ahora";
    VELOCITY_AFTER = "Velocity after", es "Velocidad después";
    PIECE_VELOCITY = "Velocity in the new piece", es "Velocidad en el pedazo nuevo";
    SIZE_BACK = "Round size of the run that keeps its air", es "Medida redonda del tramo que conserva su aire";
    TRADE_SIZE = "Next whole inch", es "Siguiente pulgada entera";
    TIGHT = "Air after, slack cut out", es "Aire después, cortado lo flojo";
    SLACK_COST = "Air that the slack costs", es "Aire que cuesta lo flojo";
    RUN_SLACK = "Slack of the run", es "Lo flojo del tramo";
    PIECE_SLACK = "Slack of the piece", es "Lo flojo del pedazo";

    NEXT = "Which of the two: a blower of fixed speed comes near the same pressure, one that keeps its air near the other, and works harder for it.", es "Cuál de los dos: un soplador de velocidad fija se acerca a la misma presión; uno que mantiene su aire se acerca al otro, y trabaja más para eso.";
    NEXT_ALONE = "At the same pressure is the largest change there can be. Say all the system's air to see the smallest.", es "A la misma presión es el cambio más grande que puede haber. Ponga todo el aire del sistema para ver el más chico.";
    NEXT_NONE = "Nothing is changed yet: say what is added.", es "Todavía no cambia nada: diga qué se agrega.";

    STEP_VELOCITY = "{0}: velocity", es "{0}: velocidad";
    STEP_FACTOR = "{0}: friction factor at Re {1}", es "{0}: factor de fricción a Re {1}";
    STEP_LOSS = "{0}: loss", es "{0}: pérdida";
    STEP_CLOSES = "All after: loss, as now", es "Todo después: pérdida, como ahora";
    STEP_HELD = "At {0}, with the system's air the same: loss, as of each other", es "A {0}, con el mismo aire del sistema: pérdida, como la de cada otro";
    STEP_CORRECTION = "{0}: times so much for its slack", es "{0}: factor por lo flojo";
    RUN_NOW = "Now", es "Ahora";
    RUN_AFTER = "Run after", es "Tramo después";
    PIECE = "New piece", es "Pedazo nuevo";

    AMOUNT = "{0}", es "{0}";
    HOW_PART = "How the air runs", es "Cómo corre el aire";
    HOW = "Re {0}, {1}", es "Re {0}, {1}";
    GUESS_PART = "If the air now is a guess", es "Si el aire de ahora es al tanteo";
    GUESS_ROW = "{0} now", es "{0} ahora";
    GUESS = "{0} after, at the same pressure", es "{0} después, a la misma presión";
    FITTINGS_PART = "What each fitting costs", es "Lo que cuesta cada pieza";
    FITTING = "{0} × {1}", es "{0} × {1}";
    COST_C = "C {0}, as {1} of this duct", es "C {0}, como {1} de este ducto";
    COST_FEET = "{0} of this duct", es "{0} de este ducto";
    SIZE_PART = "What gives the air back", es "Lo que devuelve el aire";
    SIZE_RUN = "The whole run, round", es "El tramo completo, redondo";
    SIZE_VALUE = "{0}: take {1}", es "{0}: tome {1}";
    SIZE_NONE = "No size up to 24 in: the new piece alone loses too much", es "Ninguna medida hasta 24 in: el pedazo nuevo solo ya pierde demasiado";
    SIZE_SLACK = "Its slack cut out", es "Cortado lo flojo";

    DOWN = "Shut the air handler down and lock it out before you open a duct.", es "Apague la manejadora y póngale candado antes de abrir un ducto.";
    WRAP = "Old duct tape, wrap and boots can hold asbestos, old register paint lead. Leave them whole until they are tested.", es "La cinta, la envoltura y las botas viejas de ductos pueden tener asbesto, y la pintura de rejillas viejas plomo. Déjelas enteras hasta que se analicen.";
    BALANCE = "Final balance, and whether the blower's own limit (often 0.5 in wc) still holds, is the HVAC sub's. Sizing a system starts from a room-by-room load.", es "El balance final, y si se cumple todavía el límite del soplador (muchas veces 0.5 in wc), es del contratista de clima. Dimensionar un sistema empieza con una carga cuarto por cuarto.";
    STUB = "Where a run is given up, take it off at the trunk and cap it there: a capped stub still leaks. Seal joints with listed tape or mastic.", es "Si se abandona un tramo, quítelo en la troncal y tápelo ahí: un pedazo tapado en la punta sigue con fugas. Selle las juntas con cinta listada o mastique.";

    DRAWING = "The branch now and after, lengths to scale", es "El ramal ahora y después, largos a escala";
    LABEL = "{0} {1}, {2}", es "{0} {1}, {2}";
    AFTER = "After", es "Después";
    DUCT = "The run", es "El tramo";
    ADDED = "What is added to the run", es "Lo que se le agrega al tramo";
    TWIN_NOW = "Now {0} of duct gives {1}.", es "Ahora {0} de ducto dan {1}.";
    TWIN_AFTER = "After, {0} of duct gives {1} at the same pressure; {2} of it is new.", es "Después, {0} de ducto dan {1} a la misma presión; {2} de eso es nuevo.";
}
