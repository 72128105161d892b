//! Calculators found by a few letters of what a crew calls their subject.

use super::fold::plain;
use super::slip::is_slip_of;
use crate::catalog::{self, Entry};
use crate::fields::{Kind, Row};
use crate::words::Phrase;

/// What crews call it beside its name, in either language: common practice.
const ALSO: &[(&str, &str)] = &[
    (
        "hold",
        "asbestos lead silica lab sample test popcorn asbesto plomo sílice laboratorio muestra prueba",
    ),
    (
        "room",
        "dimensions area square footage height volume measure medidas área altura volumen medir",
    ),
    (
        "taken-down",
        "remove reinstall fixture fan door trim quitar reponer lámpara ventilador puerta moldura",
    ),
    ("off-tonight", "power water gas shutoff outage occupants luz agua corte habitantes"),
    ("stripping", "scrape popcorn acoustic removal bags quitar palomitas acústico bolsas"),
    ("floor-cover", "plastic poly sheeting dust protection plástico polvo protección"),
    ("three-ways", "popcorn demo overlay cover compare palomitas demolición cubrir comparar"),
    ("raising", "vault tray lift stud framing bóveda charola levantar montante estructura"),
    ("under-a-gable", "vault cathedral rafter tie collar thrust bóveda par tirante empuje"),
    (
        "drilling",
        "bore hole notch plate stud joist nail steel barrenar hoyo muesca solera montante vigueta clavo",
    ),
    ("joist-spans", "span lumber framing sag claro madera estructura pandeo"),
    (
        "loads",
        "beam header post shoring weight dead live viga dintel poste puntal peso muerta viva",
    ),
    ("added-heat", "insulation btu attic heating aislante ático calefacción"),
    ("circuit-touch", "afci gfci arc fault ground code upgrade arco falla tierra código"),
    (
        "set-out",
        "laser level layout switch outlet elevation mark láser nivel trazo apagador altura marca",
    ),
    (
        "between-edges",
        "center shim spacer casing can light centrar calza separador moldura lámpara",
    ),
    ("outlets", "outlet plug spacing 6 12 foot wall enchufe toma espaciado pared"),
    ("kitchen-outlets", "outlet plug countertop peninsula gfci enchufe toma península cocina"),
    (
        "bath-hall-outlets",
        "outlet plug vanity sink washer gfci enchufe toma tocador lavabo lavadora",
    ),
    ("alarm-places", "detector carbon monoxide co fire bedroom monóxido incendio recámara"),
    ("rough-in", "wiring circuit home run schedule wire roll alambrado circuito lista rollo"),
    (
        "box-fill",
        "cubic inches conductor wire gang junction device pulgadas cúbicas alambre conexión dispositivo",
    ),
    ("cable-run", "nm wire length voltage drop ampacity alambre largo caída tensión ampacidad"),
    ("cable-securing", "nm wire staple strap support alambre grapa soporte"),
    ("hole-cables", "nm wire bit bundle derate foam fire block alambre broca juntar espuma sellar"),
    (
        "rerouted-cable",
        "nm wire splice junction attic extend alambre empalme conexión ático extender",
    ),
    ("switch-boxes", "traveler wiring light viajero alambrado luz"),
    ("register-throw", "vent diffuser grille supply fpm noise difusor salida suministro ruido"),
    ("register-spots", "vent diffuser grille supply layout move difusor salida suministro mover"),
    ("raised-register", "vent diffuser grille supply tall difusor salida suministro alto"),
    ("room-air", "cfm hvac supply btu airflow suministro"),
    ("duct-branch", "duct flex friction pressure size ducto flexible fricción presión tamaño"),
    ("duct-tree", "duct trunk balance damper ducto troncal compuerta"),
    ("return-path", "transfer grille undercut jumper pressure transferencia rejilla presión"),
    (
        "behind-the-board",
        "map backing nailer stud photo elevation hang mapa refuerzo montante colgar",
    ),
    ("boards", "drywall gypsum sheet layout butt joint cut list yeso panel hoja junta lista"),
    ("board-weight", "drywall gypsum carry lift pounds yeso panel cargar libras kilos"),
    ("joint-compound", "mud drywall taping finish level bucket yeso encintar acabado nivel cubeta"),
    ("skim-coat", "mud plaster smooth level 5 finish yeso alisar nivel acabado"),
    ("drying", "mud dry time humidity dehumidifier fan tiempo humedad deshumidificador ventilador"),
    ("paint", "coat coverage gallon mano rendimiento galón"),
    (
        "trade-days",
        "schedule calendar critical path inspection sub programa calendario ruta crítica inspección",
    ),
    ("change-order", "price bid extra cost labor markup precio cotización costo mano obra"),
];

/// How many of the words were found where, from what counts most against a calculator to what
/// counts least: with a slip in it, in a field, in what it says of itself, in what crews call it.
type Rank = [usize; 4];

const SLIP: usize = 0;
const FIELD: usize = 1;

/// The calculators that have every word of `typed` in their name, in what crews call it, in what they
/// say of themselves, or in the name of a field, in English or in Spanish. A word that begins with
/// what was typed does, one without its last s does, and but for fields one that is a slip away from
/// five letters or more. Capitals and accents make no difference. Those whose names have the words
/// go first, in the order of a job where two are alike. Nothing typed finds nothing.
pub fn find_calculators(typed: &str) -> Vec<&'static Entry> {
    let typed = plain(typed);
    let words: Vec<&str> = split(&typed).collect();
    if words.is_empty() {
        return Vec::new();
    }
    let mut found = Vec::new();
    let mut ranks: Vec<Rank> = Vec::new();
    for entry in catalog::ALL {
        let Some(rank) = rank(entry, &words) else { continue };
        let place = ranks.partition_point(|other| *other <= rank);
        ranks.insert(place, rank);
        found.insert(place, entry);
    }
    found
}

/// Where the words stand; none where one stands nowhere.
fn rank(entry: &Entry, words: &[&str]) -> Option<Rank> {
    let also = ALSO.iter().find(|(id, _)| *id == entry.id).map_or("", |(_, also)| also);
    // The last is the name: a word there counts against nothing.
    let texts = [both(entry.about), plain(also), both(entry.name)];
    // Read only where a word stands nowhere else.
    let mut fields = None;
    let mut rank = Rank::default();
    for word in words {
        let one = word.strip_suffix('s').unwrap_or(word);
        let begins = |text: &String| split(text).any(|it| it.starts_with(word) || it == one);
        let has = |text: &String| split(text).any(|it| is_slip_of(word, it));
        let place = match texts.iter().rposition(begins) {
            Some(at) => FIELD + 1 + at,
            None if begins(fields.get_or_insert_with(|| labels(entry.rows))) => FIELD,
            None if texts.iter().any(has) => SLIP,
            None => return None,
        };
        if let Some(count) = rank.get_mut(place) {
            *count += 1;
        }
    }
    Some(rank)
}

fn both(phrase: &Phrase) -> String {
    plain(&[phrase.en, " ", phrase.es].concat())
}

fn labels(rows: &[Row]) -> String {
    let mut all = String::new();
    for row in rows {
        all.push_str(&both(row.label));
        all.push(' ');
        match row.kind {
            Kind::Group(rows) => all.push_str(&labels(rows)),
            Kind::List(item) => all.push_str(&labels(item.rows)),
            _ => {}
        }
    }
    all
}

fn split(text: &str) -> impl Iterator<Item = &str> {
    // The library's table of letters is larger than all of this.
    let is_letter = |letter: char| letter.is_ascii_alphanumeric() || !letter.is_ascii();
    text.split(move |letter| !is_letter(letter)).filter(|word| !word.is_empty())
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn first(typed: &str) -> &'static str {
        find_calculators(typed).first().map_or("", |entry| entry.id)
    }

    fn ids(typed: &str) -> Vec<&'static str> {
        find_calculators(typed).iter().map(|entry| entry.id).collect()
    }

    #[test]
    fn each_calculator_has_other_names_once_and_none_that_its_own_words_have() {
        let also: Vec<&str> = ALSO.iter().map(|(id, _)| *id).collect();
        assert_eq!(also.len(), catalog::ALL.len());
        for entry in catalog::ALL {
            let (_, words) = ALSO.iter().find(|(id, _)| *id == entry.id).expect(entry.id);
            let name = both(entry.name);
            for word in split(&plain(words)) {
                assert!(!split(&name).any(|it| it == word), "{}: {word}", entry.id);
            }
        }
    }

    #[test]
    fn it_is_found_by_its_name_before_all_others() {
        for entry in catalog::ALL {
            for name in [entry.name.en, entry.name.es] {
                assert_eq!(first(name), entry.id, "{name}");
            }
        }
    }

    #[test]
    fn what_a_crew_calls_it_finds_it() {
        for (typed, id) in [
            ("mud", "joint-compound"),
            ("popcorn", "hold"),
            ("staple", "cable-securing"),
            ("vent noise", "register-throw"),
            ("traveler", "switch-boxes"),
            ("DRYWALL", "boards"),
            ("box f", "box-fill"),
            ("notch", "drilling"),
            ("driling", "drilling"),
            ("grapas", "cable-securing"),
            ("tablaroca cortes", "boards"),
            ("pagina", ""),
            ("zzz", ""),
            ("  ", ""),
        ] {
            assert_eq!(first(typed), id, "{typed}: {:?}", ids(typed));
        }
        // Without its accents, as it is typed in haste.
        assert_eq!(ids("vigueta extension"), ids("vigueta extensión"));
        assert!(ids("bano").contains(&"bath-hall-outlets"));
        // A field's name, where nothing above has the word.
        assert!(ids("clamps").contains(&"box-fill"));
    }

    proptest! {
        /// One more word never finds another.
        #[test]
        fn more_words_find_no_more(typed in "[a-z]{1,5}( [a-z]{1,5})?", more in "[a-z0-9]{1,5}") {
            let few = ids(&[&typed, " ", &*more].concat());
            let all = ids(&typed);
            prop_assert!(few.iter().all(|id| all.contains(id)));
        }

        #[test]
        fn any_text_is_taken(typed: String) {
            prop_assert!(find_calculators(&typed).len() <= catalog::ALL.len());
        }
    }
}
