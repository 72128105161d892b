//! All that a person reads of a run.

use crate::words;

words! {
    NAME = "Securing a cable", es "Sujetar un cable";
    ABOUT = "How many staples a run takes, and how far apart", es "Cuántas grapas lleva un tramo, y a qué distancia";
    NOTHING = "", es "";
    RUN = "Run, box to box", es "Tramo, de caja a caja";
    RUN_HINT = "Along the cable, up and over included.", es "Por el cable, con subidas y vueltas.";
    SPACING = "Staples apart", es "Separación de grapas";
    SPACING_HINT = "The farthest you want them. The rule's most is 54 in.", es "La mayor que usted quiere. El máximo de la regla es 54 in.";
    FROM = "Starts in", es "Empieza en";
    TO = "Ends in", es "Termina en";
    WHY_RUN = "a longer run is fed from elsewhere.", es "un tramo más largo se alimenta de otro lado.";
    WHY_SPACING = "nothing holds a cable that far apart.", es "tan separadas no sujetan ningún cable.";

    STAPLES = "Staples", es "Grapas";
    GAP = "Evenly apart", es "Repartidas, cada";
    FIRST = "First, from the box", es "La primera, desde la caja";
    LAST = "Last, from the box", es "La última, desde la caja";
    CHECK_GAP = "Staples apart", es "Separación de grapas";
    CHECK_FIRST = "First staple", es "Primera grapa";
    CHECK_LAST = "Last staple", es "Última grapa";
    BETWEEN = "Between first and last", es "Entre la primera y la última";
    STAPLE = "Cable staple, for the cable at hand", es "Grapa de cable, para el cable que se usa";

    FLAT = "Staple flat cable flat, never on edge, and stop when it is snug: a crushed sheath can start a fire.", es "Engrape el cable plano acostado, nunca de canto, y pare cuando quede justo: un forro aplastado puede iniciar un fuego.";
    SLACK = "Newer editions also limit the cable between box and first staple to 18 in, slack included. From memory: ask.", es "Las ediciones más nuevas también limitan el cable entre la caja y la primera grapa a 18 in, con la holgura incluida. De memoria: pregunte.";
    DEAD = "Dead, and proved dead, before you touch old cable on the same framing.", es "Sin corriente, y comprobado sin corriente, antes de tocar cable viejo en la misma estructura.";
    LICENSED = "Running cable is a licensed electrician's work where the law says so.", es "Tender cable es trabajo de un electricista con licencia donde la ley lo dice.";

    DRAWING = "The run, with its staples, to scale", es "El tramo, con sus grapas, a escala";
    LABEL_FIRST = "first {0}", es "primera {0}";
    LABEL_LAST = "last {0}", es "última {0}";
    LABEL_GAP = "{0} apart", es "cada {0}";
    TWIN = "{0} {0?staple|staples} along {1}: the first {2} from its box, the last {3} from its box.", es "{0} {0?grapa|grapas} a lo largo de {1}: la primera a {2} de su caja, la última a {3} de su caja.";
    TWIN_GAP = "Between them evenly {0} apart.", es "Entre ellas, repartidas cada {0}.";
    CABLE = "The cable", es "El cable";
    AT = "A staple", es "Una grapa";
}
