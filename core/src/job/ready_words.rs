//! What the trade looks for before each part of the work.

use crate::words;

words! {
    BEFORE_STRIP = "Before the strip", es "Antes de demoler";
    BEFORE_ROUGH_IN = "Before the rough-in", es "Antes de la instalación en bruto";
    BEFORE_COVER = "Before cover", es "Antes de tapar";
    BEFORE_PAINT = "Before paint", es "Antes de pintar";

    REPORT = "The laboratory's report for this very surface is on site.", es "El reporte del laboratorio de esta misma superficie está en la obra.";
    LEAD = "In a house built before 1978: who is certified is here, the pamphlet was handed over, the room is closed off.", es "En una casa de antes de 1978: está quien tiene la certificación, se entregó el folleto y el cuarto está cerrado.";
    DEAD = "Everything overhead is off, locked, and tested dead with a meter proved before and after.", es "Todo lo de arriba está apagado, con candado, y probado sin corriente con un probador verificado antes y después.";
    ALARMS = "Smoke and carbon monoxide alarms are listed before they come down; a monitored one is called in first.", es "Las alarmas de humo y de monóxido están anotadas antes de bajarlas; si hay monitoreo, se avisa primero.";
    CLOSED = "Air handler off, supplies and returns sealed, one way in, people and pets out.", es "Clima apagado, salidas y retornos sellados, una sola entrada, sin gente ni mascotas.";
    WAY = "Floor covered, a clear way to the truck, ladders and planks checked.", es "Piso cubierto, paso libre hasta el camión, escaleras y tablones revisados.";

    STRUCTURE = "What the engineer or the inspector asked of the framing is done and seen.", es "Lo que pidió el ingeniero o el inspector sobre la estructura está hecho y visto.";
    FIREBLOCK = "Fireblocks stand at the new ceiling line and around what goes through plates.", es "Hay cortafuego en la nueva línea del techo y alrededor de lo que pasa por las soleras.";
    LINE = "One level line is on every wall, and the floor's highest point is written on it.", es "Hay una sola línea de nivel en todas las paredes, con el punto más alto del piso anotado.";
    BACKING = "Backing is in for cabinets, rails, fans and the edges of board.", es "Hay refuerzos para gabinetes, barandales, ventiladores y orillas de tablaroca.";
    OWNER = "The owner has seen where boxes and registers will be.", es "El dueño ya vio dónde irán las cajas y las rejillas.";

    SEEN = "The rough inspection's card is signed, or nothing gets covered.", es "La tarjeta de inspección está firmada; si no, no se tapa nada.";
    PLATES = "Steel over every hole or notch that a screw may reach.", es "Placa de acero en cada agujero o muesca que un tornillo pueda alcanzar.";
    HELD = "Cables held near each box and along the way, flat ones on their flat.", es "Cables sujetos cerca de cada caja y en el camino, los planos sobre su cara plana.";
    ENDS = "Enough free conductor in each box, sheath in by a quarter inch, grounds made up.", es "Suficiente conductor libre en cada caja, forro un cuarto de pulgada adentro, tierras unidas.";
    FRONTS = "Box fronts stand where the finished face will be, tile and overlay counted.", es "El frente de las cajas queda donde irá el acabado, contando loseta y sobrecapa.";
    BLOCKED = "Holes through plates are filled with approved fireblock.", es "Los agujeros de las soleras están rellenos con cortafuego aprobado.";
    SEALED = "Ducts, boots and the ceiling's air barrier are sealed.", es "Ductos, botas y la barrera de aire del techo están sellados.";
    BURIED = "No box, splice or cleanout gets buried.", es "Ninguna caja, empalme o registro queda enterrado.";
    PHOTOS = "Every wall is photographed with a tape in the picture.", es "Cada pared está fotografiada con la cinta en la foto.";

    LEVEL = "The level of finish that was agreed is there, in its own light.", es "El nivel de acabado acordado está logrado, visto con su propia luz.";
    DRY = "Compound is dry through, by its clock and by its color.", es "La pasta está seca hasta el fondo, por su reloj y por su color.";
    LIGHT = "A lamp held flat to the surface shows no ridge that anybody minds.", es "Una lámpara al ras no muestra bordos que molesten.";
    DUST = "Dust is off the surface and out of the room.", es "No queda polvo en la superficie ni en el cuarto.";
    BACK = "Alarms are back up and tested.", es "Las alarmas están de vuelta y probadas.";
}
