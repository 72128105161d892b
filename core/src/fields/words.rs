//! What is said of an input that can't be taken.

use crate::words;

words! {
    NEEDED = "Needed: {0}. Write it like {1}.", es "Hace falta: {0}. Escríbalo como {1}.";
    CANT_READ = "Can't read “{0}”. Write it like {1}.", es "No se puede leer «{0}». Escríbalo como {1}.";
    NOT_WHOLE = "“{0}” isn't a whole number. Write it like {1}.", es "«{0}» no es un número entero. Escríbalo como {1}.";
    COMMA = "The comma in “{0}” could mean tenths or thousands. Use a point for tenths and no mark for thousands. Write it like {1}.", es "La coma de «{0}» puede ser de decimales o de miles. Use punto para decimales y nada para miles. Escríbalo como {1}.";
    TOO_MANY_DIGITS = "“{0}” has more digits than can be held. Write it like {1}.", es "«{0}» tiene más dígitos de los que caben. Escríbalo como {1}.";
    NOT_ITS_UNIT = "The unit in “{0}” doesn't fit here. Write it like {1}.", es "La unidad de «{0}» no va aquí. Escríbalo como {1}.";
    NO_ZERO_UNDER = "“{0}” divides by zero. Write it like {1}.", es "«{0}» divide entre cero. Escríbalo como {1}.";
    AT_LEAST = "At least {0}.", es "Al menos {0}.";
    IN_FEET = "“{0}” is {1} here, and at least {2} is needed. For feet write {3}.", es "«{0}» es {1} aquí, y hace falta al menos {2}. Para pies escriba {3}.";
    AT_MOST = "At most {0}: {1}", es "Máximo {0}: {1}";
    SHARE = "“{0}” could mean {0} % or {1}. Write which, with its sign.", es "«{0}» puede ser {0} % o {1}. Escriba cuál, con su signo.";
    TWO_SUMS = "“{0}” could mean thousands or cents. Write {1} or {2}.", es "«{0}» puede ser de miles o de centavos. Escriba {1} o {2}.";
    TWO_DAYS = "“{0}” is one day to some and another to others. Write it like {1}.", es "«{0}» es un día para unos y otro para otros. Escríbalo como {1}.";
    AHEAD = "“{0}” is yet to come: today is {1}. Write the day on which it was done.", es "«{0}» todavía no llega: hoy es {1}. Escriba el día en que se hizo.";
    ONE_LINE = "One line is needed here, without breaks.", es "Aquí va una sola línea, sin saltos.";
    TOO_LONG = "{0} characters, and no more than {1} are kept. Shorten it.", es "{0} caracteres, y no se guardan más de {1}. Acórtelo.";
    NOT_ONE_OF = "“{0}” is none of the choices: {1}.", es "«{0}» no es ninguna de las opciones: {1}.";
    NOT_YES_OR_NO = "“{0}” is neither yes nor no.", es "«{0}» no es ni sí ni no.";
    NOT_A_LIST = "A list is needed here.", es "Aquí hace falta una lista.";
    NOT_A_GROUP = "Named parts are needed here.", es "Aquí hacen falta partes con nombre.";
    TOO_MANY = "{0} items, and no more than {1} are taken.", es "{0} partidas, y no se toman más de {1}.";
    UNKNOWN = "There is no field of this name.", es "No hay ningún dato con este nombre.";
    A_DAY = "2026-11-25 or 25 Nov 2026", es "2026-11-25 o 25 Nov 2026";
    A_LENGTH = "9' 4 1/2\", 112.5 or 2860 mm", es "9' 4 1/2\", 112.5 o 2860 mm";
    A_SHORT_LENGTH = "1 1/2, 1.5 or 38 mm", es "1 1/2, 1.5 o 38 mm";
    A_THIN_LENGTH = "1/32, 0.05 or 1 mm", es "1/32, 0.05 o 1 mm";
    AN_AREA = "160, 160 sq ft or 14.9 m2", es "160, 160 sq ft o 14.9 m2";
    A_VOLUME = "20.3 or 333 cm3", es "20.3 o 333 cm3";
    A_ROOM = "1344, 1344 cu ft or 38 m3", es "1344, 1344 cu ft o 38 m3";
    WHOLE_LABEL = "the whole question", es "la pregunta completa";
    UNKNOWN_LABEL = "a field this version knows", es "un dato que esta versión conozca";
}
