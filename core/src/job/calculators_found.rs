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
        "asbestos lead silica lab sample test popcorn asbesto plomo sílice laboratorio muestra prueba orange peel knockdown lath sanding plafón cielo raso lijar plaster dust vermiculite yeso aplanado polvo vermiculita tirol",
    ),
    (
        "room",
        "dimensions area square footage height volume measure medidas área altura volumen medir feet sqft perimeter perímetro habitación pies L shaped",
    ),
    (
        "taken-down",
        "remove reinstall fixture fan door trim quitar reponer lámpara ventilador puerta moldura baseboard crown abanico plafón foco chandelier sconce candil",
    ),
    ("off-tonight", "power water gas shutoff outage occupants luz agua corte habitantes"),
    (
        "stripping",
        "scrape popcorn acoustic removal bags quitar palomitas acústico bolsas orange peel knockdown cielo raso plafón dust polvo tirol",
    ),
    (
        "floor-cover",
        "plastic poly sheeting dust protection plástico polvo protección perimeter perímetro",
    ),
    (
        "three-ways",
        "popcorn demo overlay cover compare palomitas demolición cubrir comparar lath orange peel knockdown cielo raso plafón tirol",
    ),
    (
        "raising",
        "vault tray lift stud framing bóveda charola levantar montante estructura elevar cielo raso plafón cripple 2x4 2x6 barrote",
    ),
    ("under-a-gable", "vault cathedral rafter tie collar thrust bóveda par tirante empuje 2x6"),
    (
        "drilling",
        "bore hole notch plate stud joist nail steel barrenar hoyo muesca solera montante vigueta clavo taladrar auger 2x4 2x6 barrote",
    ),
    ("joist-spans", "span lumber framing sag claro madera estructura pandeo 2x4 2x6 barrote"),
    (
        "loads",
        "beam header post shoring weight dead live viga dintel poste puntal peso muerta viva",
    ),
    (
        "added-heat",
        "insulation btu attic heating aislante ático calefacción hvac cfm furnace batts",
    ),
    ("circuit-touch", "afci gfci arc fault ground code upgrade arco falla tierra código gfi"),
    (
        "set-out",
        "laser level layout switch outlet elevation mark láser nivel trazo apagador altura marca interruptor tomacorriente",
    ),
    (
        "between-edges",
        "center shim spacer casing can light centrar calza separador moldura lámpara recessed foco sconce",
    ),
    (
        "outlets",
        "outlet plug spacing 6 12 foot wall enchufe toma espaciado pared tomacorriente shaped",
    ),
    (
        "kitchen-outlets",
        "outlet plug countertop peninsula gfci enchufe toma península cocina gfi tomacorriente",
    ),
    (
        "bath-hall-outlets",
        "outlet plug vanity sink washer gfci enchufe toma tocador lavabo lavadora gfi tomacorriente",
    ),
    ("alarm-places", "detector carbon monoxide co fire bedroom monóxido incendio recámara"),
    (
        "rough-in",
        "wiring circuit home run schedule wire roll alambrado circuito lista rollo recessed 12/2 14/2 interruptor tomacorriente foco pastilla",
    ),
    (
        "box-fill",
        "cubic inches conductor wire gang junction device pulgadas cúbicas alambre conexión dispositivo 12/2 14/2 interruptor tomacorriente jbox chalupa",
    ),
    (
        "cable-run",
        "nm wire length voltage drop ampacity alambre largo caída tensión ampacidad 12/2 14/2",
    ),
    ("cable-securing", "nm wire staple strap support alambre grapa soporte 12/2 14/2"),
    (
        "hole-cables",
        "nm wire bit bundle derate foam fire block alambre broca juntar espuma sellar 12/2 14/2 taladrar",
    ),
    (
        "rerouted-cable",
        "nm wire splice junction attic extend alambre empalme conexión ático extender 12/2 14/2",
    ),
    ("switch-boxes", "traveler wiring light viajero alambrado luz interruptor tres foco dimmer"),
    (
        "register-throw",
        "vent diffuser grille supply fpm noise difusor salida suministro ruido hvac cfm acondicionado",
    ),
    (
        "register-spots",
        "vent diffuser grille supply layout move difusor salida suministro mover hvac cfm acondicionado",
    ),
    (
        "raised-register",
        "vent diffuser grille supply tall difusor salida suministro alto hvac cfm acondicionado",
    ),
    ("room-air", "cfm hvac supply btu airflow suministro furnace acondicionado"),
    (
        "duct-branch",
        "duct flex friction pressure size ducto flexible fricción presión tamaño conducto hvac cfm acondicionado",
    ),
    (
        "duct-tree",
        "duct trunk balance damper ducto troncal compuerta conducto hvac cfm plenum acondicionado",
    ),
    (
        "return-path",
        "transfer grille undercut jumper pressure transferencia rejilla presión conducto hvac cfm acondicionado",
    ),
    (
        "behind-the-board",
        "map backing nailer stud photo elevation hang mapa refuerzo montante colgar hanging tabla roca blocking 2x4 2x6 barrote",
    ),
    (
        "boards",
        "drywall gypsum sheet layout butt joint cut list yeso panel hoja junta lista hanging tabla roca cielo raso plafón wallboard shaped",
    ),
    (
        "board-weight",
        "drywall gypsum carry lift pounds yeso panel cargar libras kilos hanging tabla roca wallboard",
    ),
    (
        "joint-compound",
        "mud drywall taping finish level bucket yeso encintar acabado nivel cubeta 5 sanding tabla roca masilla lijar joint wallboard spackling resane resanar",
    ),
    (
        "skim-coat",
        "mud plaster smooth level 5 finish yeso alisar nivel acabado orange peel knockdown sanding masilla lijar joint compound spackling aplanado resane resanar",
    ),
    (
        "drying",
        "mud dry time humidity dehumidifier fan tiempo humedad deshumidificador ventilador masilla abanico joint",
    ),
    ("paint", "coat coverage gallon mano rendimiento galón perimeter perímetro cielo raso plafón"),
    (
        "trade-days",
        "schedule calendar critical path inspection sub programa calendario ruta crítica inspección inspector",
    ),
    (
        "change-order",
        "price bid extra cost labor markup precio cotización costo mano obra estimate quote presupuesto",
    ),
];

/// How many of the words were found where, from what counts most against a calculator to what
/// counts least: with a slip in it, in a field, in what it says of itself, in what crews call it; last,
/// how many are the beginning of a longer one: who types the Spanish for a duct means no conductor.
type Rank = [usize; 5];

const SLIP: usize = 0;
const FIELD: usize = 1;
const ALSO_AT: usize = 3;
const BEGUN: usize = 4;

/// The calculators that have every word of `typed` in their name, in what crews call it, in what they
/// say of themselves, or in the name of a field, in English or in Spanish. A word that begins with
/// what was typed does, one without its last s does, and but for fields one that is a slip away from
/// five letters or more. Capitals and accents make no difference. Those whose names have the words
/// go first, of those that are alike the ones that have them whole, then in the order of a job. Nothing typed finds nothing.
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
        // A name counts against nothing.
        if place <= ALSO_AT {
            rank[place] += 1;
        }
        let is_whole = |text: &String| split(text).any(|it| it == *word || it == one);
        rank[BEGUN] += usize::from(!texts.iter().any(is_whole));
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
        for (typed, all) in [
            ("GFI", &["circuit-touch", "kitchen-outlets", "bath-hall-outlets"][..]),
            ("12/2", &["cable-run", "box-fill", "rough-in", "hole-cables"]),
            ("14/2", &["cable-run", "box-fill", "rough-in", "cable-securing"]),
            ("square feet", &["room"]),
            ("sqft", &["room"]),
            ("perimeter", &["room", "floor-cover"]),
            ("hanging", &["boards", "board-weight"]),
            ("baseboard", &["taken-down"]),
            ("crown", &["taken-down"]),
            ("recessed", &["between-edges", "rough-in"]),
            ("orange peel", &["hold", "stripping", "skim-coat"]),
            ("knockdown", &["hold", "stripping", "skim-coat"]),
            ("lath", &["hold"]),
            ("level 5", &["joint-compound", "skim-coat"]),
            ("tomacorriente", &["outlets", "kitchen-outlets", "bath-hall-outlets", "box-fill"]),
            ("interruptor", &["switch-boxes", "box-fill"]),
            ("cielo raso", &["boards", "raising", "stripping", "hold"]),
            ("plafón", &["boards", "raising", "stripping", "hold"]),
            ("tabla roca", &["boards", "board-weight", "joint-compound", "behind-the-board"]),
            ("tres vías", &["switch-boxes"]),
            ("masilla", &["joint-compound", "skim-coat"]),
            ("taladrar", &["drilling", "hole-cables"]),
            ("lijar", &["hold", "joint-compound", "skim-coat"]),
            ("inspector", &["trade-days"]),
            ("habitación", &["room"]),
            ("abanico", &["taken-down", "drying"]),
            ("foco", &["taken-down", "switch-boxes"]),
            ("elevar", &["raising"]),
            ("conducto", &["duct-branch", "duct-tree", "return-path"]),
            ("wallboard", &["boards", "board-weight", "joint-compound"]),
            ("joint compound", &["joint-compound", "skim-coat", "drying"]),
            ("2x4", &["drilling", "raising", "joist-spans", "behind-the-board"]),
            ("2x6", &["drilling", "raising", "joist-spans", "under-a-gable"]),
            ("l-shaped", &["room", "boards", "outlets"]),
            ("hvac", &["room-air", "duct-branch", "duct-tree", "return-path", "register-throw"]),
            ("cfm", &["room-air", "duct-branch", "duct-tree", "return-path", "register-throw"]),
            ("aire acondicionado", &["room-air", "duct-tree", "register-spots"]),
            ("plaster", &["hold", "skim-coat"]),
            ("yeso", &["hold", "boards", "skim-coat"]),
            ("dust", &["hold", "floor-cover", "stripping"]),
            ("polvo", &["hold", "floor-cover", "stripping"]),
            ("tirol", &["hold", "stripping", "three-ways"]),
            ("barrote", &["drilling", "raising", "behind-the-board"]),
            ("resane", &["joint-compound", "skim-coat"]),
            ("presupuesto", &["change-order"]),
            ("chalupa", &["box-fill"]),
        ] {
            let found = ids(typed);
            for id in all {
                assert!(found.contains(id), "{typed}: {id} is not in {found:?}");
            }
        }
        // What is tested before it is touched comes before what is done to it.
        for typed in ["plaster", "dust", "yeso", "polvo", "vermiculite"] {
            assert_eq!(first(typed), "hold", "{typed}: {:?}", ids(typed));
        }
        assert_eq!(first("joint compound"), "joint-compound");
        assert_eq!(first("wallboard"), "boards");
        assert_eq!(first("L-shaped"), "room");
        // A whole word goes before the beginning of another.
        assert!(first("conducto").starts_with("duct-"), "{:?}", ids("conducto"));
        assert_eq!(first("conductor"), "box-fill");
        assert_eq!(ids("ladder"), [""; 0], "nothing here is about it");
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
