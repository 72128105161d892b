//! What the HVAC sub is handed of a register, and what only the sub can answer. One place for it:
//! wherever a register is worked, it is handed over alike.

use super::fit::is_speed;
use super::{Answer, Input, at_heads, to_inch};
use crate::rules::air::noise::sound;
use crate::sheet::{Part, PartRow, Sense};
use crate::words::{Amount, Phrase, Text};
use crate::{say, words};

words! {
    HANDED = "For the HVAC sub", es "Para el contratista de clima";
    ONE = "{0}", es "{0}";
    ROW_REGISTER = "Register", es "Rejilla";
    ROW_AIR = "Air", es "Aire";
    ROW_THROW = "Throw to 50 fpm", es "Alcance a 50 fpm";
    JUDGED_MOST = "{0}, at most {1}: {2}", es "{0}, a lo más {1}: {2}";
    JUDGED_LEAST = "{0}, at least {1}: {2}", es "{0}, al menos {1}: {2}";
    ROW_DROP = "Cold drop at its throw to {0}", es "Baja en frío en su alcance a {0}";
    ROW_HEADS = "Cold air on people", es "Aire frío sobre la gente";
    ROW_SOUND = "Sound, at the opening", es "Ruido, en la abertura";
    RANGE = "{0}, from {1} to {2}", es "{0}, de {1} a {2}";
    BAND = "{0} to {1}", es "{0} a {1}";
    RANGE_LOW = "{0}, from none to {1}", es "{0}, de nada a {1}";
    SIZED = "{0}, {1}", es "{0}, {1}";
    NECKED = "{0}, neck {1}", es "{0}, cuello {1}";

    ASK = "Questions for the HVAC sub", es "Preguntas para el contratista de clima";
    ASK_FLUE = "Open flue", es "Chimenea abierta";
    ASK_FLUE_2 = "Does it still draw under worst-case depressurization, every fan on and doors shut? May the return stay where it is?", es "¿Todavía jala con la despresurización del peor caso, todos los extractores prendidos y puertas cerradas? ¿Puede el retorno quedarse donde está?";
    ASK_LOAD = "Load", es "Carga";
    ASK_LOAD_2 = "What does this room lose and take in, by a room-by-room calculation?", es "¿Cuánto pierde y gana este cuarto, según un cálculo cuarto por cuarto?";
    ASK_PRESSURE = "Static pressure", es "Presión estática";
    ASK_PRESSURE_2 = "Does the blower stay within its label with the new branch?", es "¿El soplador queda dentro de su etiqueta con el ramal nuevo?";
    ASK_DUCT = "Duct", es "Ducto";
    ASK_DUCT_2 = "What size, how long, and how is it hung, sealed and insulated?", es "¿De qué medida, qué largo, y cómo se cuelga, se sella y se aísla?";
    ASK_DAMPER = "Balancing damper", es "Compuerta de balanceo";
    ASK_DAMPER_2 = "Back at the take-off, and where is it reached once the board is up?", es "¿Atrás en la derivación, y por dónde se alcanza ya con la tablaroca puesta?";
    ASK_RETURN = "Way back", es "Regreso";
    ASK_RETURN_2 = "How does the air get out with the door shut?", es "¿Por dónde sale el aire con la puerta cerrada?";
}

fn read(name: Text, value: Text) -> PartRow {
    PartRow { name, value, puts: Vec::new() }
}

/// A register with its size, air, throw, drop and sound; `near` is what else there is to measure.
pub fn handed_over(
    key: &'static str,
    title: Option<Text>,
    input: &Input,
    answer: &Answer,
    near: &[(&'static Phrase, Option<Amount>)],
) -> Part {
    let outlet = input.outlet.label();
    let register = if input.outlet.has_neck() {
        say!(NECKED, outlet, input.neck)
    } else {
        say!(SIZED, outlet, input.size.label())
    };
    let [low, middle, high] = answer.air;
    let throws = answer.throws[0].map(|throw| throw.map(to_inch));
    let (air, reach) = match throws {
        _ if !answer.is_range() => (say!(ONE, middle), say!(ONE, answer.told())),
        [Some(least), _, Some(most)] => {
            (say!(RANGE, middle, low, high), say!(RANGE, answer.told(), least, most))
        }
        [_, _, most] => {
            let most = most.unwrap_or_default();
            (say!(RANGE, middle, low, high), say!(RANGE_LOW, answer.told(), most))
        }
    };
    let mut rows = Vec::new();
    rows.push(read((&ROW_REGISTER).into(), register));
    rows.push(read((&ROW_AIR).into(), air));
    rows.push(read((&ROW_THROW).into(), reach));
    for (name, amount) in near {
        if let Some(amount) = amount {
            rows.push(read((*name).into(), say!(ONE, *amount)));
        }
    }
    // Each rule that its throw is judged by: they may disagree.
    for check in answer.checks.iter().filter(|check| !is_speed(check)) {
        let phrase = if check.sense == Sense::AtMost { &JUDGED_MOST } else { &JUDGED_LEAST };
        let args = vec![check.value.into(), check.limit.into(), Text::from(check.word()).into()];
        rows.push(read(check.name.clone(), Text { phrase, args }));
    }
    if let Some(bend) = answer.bend {
        let [least, most] = bend.by;
        rows.push(read(say!(ROW_DROP, bend.end), say!(BAND, least, most)));
    }
    if let Some(says) = at_heads(input, answer) {
        rows.push(read((&ROW_HEADS).into(), says));
    }
    rows.push(read((&ROW_SOUND).into(), sound(answer.speeds()[1])));
    Part::new(key, title.unwrap_or_else(|| (&HANDED).into()), None, rows)
}

/// What only the sub can answer; of an open flue, where there is one.
pub fn questions(open_flue: bool) -> Part {
    let rows = [
        (&ASK_FLUE, &ASK_FLUE_2),
        (&ASK_LOAD, &ASK_LOAD_2),
        (&ASK_PRESSURE, &ASK_PRESSURE_2),
        (&ASK_DUCT, &ASK_DUCT_2),
        (&ASK_DAMPER, &ASK_DAMPER_2),
        (&ASK_RETURN, &ASK_RETURN_2),
    ];
    let rows = &rows[usize::from(!open_flue)..];
    let rows = rows.iter().map(|(name, value)| read((*name).into(), (*value).into())).collect();
    Part::plain("ask", &ASK, None, rows)
}
