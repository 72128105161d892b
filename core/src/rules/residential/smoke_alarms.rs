//! R314: smoke alarms where permitted work is done.

use crate::rules::compare::Limit;
use crate::words;

words! {
    SMOKE_ALARMS_SAYS = "Work under permit inside a dwelling brings its smoke alarms up to today's rule. On a peaked ceiling: within 36 in of the peak, not in its top 4 in.", es "El trabajo con permiso dentro de una vivienda pone sus alarmas de humo al día con la regla de hoy. En un techo de dos aguas: a 36 in o menos de la cumbre, no en sus 4 in de arriba.";
    SMOKE_ALARMS_SEEN = "written down from memory", es "escrito de memoria";
}

source!(
    /// Where it is published.
    SMOKE_ALARMS, "irc-r314", "IRC R314, smoke alarms; NFPA 72" es "IRC R314, alarmas de humo; NFPA 72", SMOKE_ALARMS_SAYS, SMOKE_ALARMS_SEEN, Memory
);

words! {
    OUT_SAYS = "An alarm that is off, bagged or covered warns nobody: back and tested, or another in its place, before anyone sleeps there. Monitored ones: call who monitors them first. Local rules may ask for a watch.", es "Una alarma apagada, embolsada o tapada no avisa a nadie: de vuelta y probada, u otra en su lugar, antes de que alguien duerma ahí. Las que tienen monitoreo: llame primero a quien las monitorea. Las reglas locales pueden pedir una guardia.";
    OUT_SEEN = "common practice", es "costumbre del oficio";
    CO_SAYS = "Work under permit in a dwelling with fuel burned in it, or a garage at it, brings carbon monoxide alarms near where people sleep.", es "El trabajo con permiso en una vivienda donde se quema combustible, o con cochera pegada, pone alarmas de monóxido de carbono cerca de donde se duerme.";
    CO_SEEN = "written down from memory", es "escrito de memoria";
}

source!(
    /// While they are down.
    ALARMS_OUT, "practice-alarms-out", "Common practice" es "Costumbre del oficio", OUT_SAYS, OUT_SEEN, CommonPractice
);
source!(
    /// Carbon monoxide.
    CO_ALARMS, "irc-r315", "IRC R315, carbon monoxide alarms" es "IRC R315, alarmas de monóxido de carbono", CO_SAYS, CO_SEEN, Memory
);

/// How many may be out. Source: [`ALARMS_OUT`].
pub const NONE_OUT: Limit<i64> = Limit { value: 0, source: &ALARMS_OUT };
