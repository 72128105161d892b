//! How the days of a job follow from each other.

use crate::words;

words! {
    SAYS = "A step begins when the last step that it waits for is done; the longest chain of waits sets the last day. Float: how many days a step may slip before the last day moves.", es "Un paso empieza cuando termina el último que espera; la cadena de esperas más larga fija el último día. Holgura: cuántos días puede atrasarse un paso antes de mover el último día.";
    ROUGH_SAYS = "Pipes, ducts and wires are inspected roughed in, before anything covers them.", es "Tubos, ductos y cables se inspeccionan antes de que algo los cubra.";
    ROUGH_SEEN = "read on a West Virginia city's page of required inspections, without its year; your office's own list holds", es "leído en la página de inspecciones de una ciudad de West Virginia, sin su año; vale la lista de su oficina";
    SEEN = "from memory of Kelley and Walker, Critical-Path Planning and Scheduling, 1959; worked here in days, by a method that tests compare with every path", es "de memoria de Kelley y Walker, Critical-Path Planning and Scheduling, 1959; aquí se calcula en días, y las pruebas lo comparan con cada camino";
}

source!(
    /// The critical path method.
    CRITICAL_PATH, "critical-path", "Critical path method" es "Método de la ruta crítica", SAYS, SEEN, Memory
);
source!(
    /// What is inspected before it is covered.
    ROUGH_INSPECTION, "irc-r109.1.2", "IRC R109.1.2", ROUGH_SAYS, ROUGH_SEEN, Read
);
