//! How work stands with the hold that it is put behind, if any.

use crate::calculators::hold::{Miss, Opened};
use crate::measure::Day;
use crate::rules::hazards::Disturbs;
use crate::say;
use crate::sheet::Standing;
use crate::words;
use crate::words::{Phrase, Text};

words! {
    NO_HOLD = "Old material is cut here. It may hold asbestos, and its paint lead: it is held until what is known of it stands on record.", es "Aquí se corta material viejo. Puede tener asbesto, y su pintura plomo: queda detenido hasta que conste lo que se sabe de él.";
    OTHER_MATERIAL = "The open hold is for another material: {0}.", es "El alto abierto es para otro material: {0}.";
    OTHER_DEED = "The open hold was not asked about this kind of work: {0}.", es "Al alto abierto no se le preguntó por esta clase de trabajo: {0}.";
    OTHER_AREA = "The open hold is for a smaller area: {0}.", es "El alto abierto es para un área más chica: {0}.";
    OTHER_PAINT = "Lead isn't settled for this. The open hold is for minor paint work only, and this may break more of it: {0}. On its page, have the paint tested, or say that a firm certified for lead does it.", es "Lo del plomo no está resuelto para esto. El alto abierto es solo para trabajo menor en pintura, y esto puede romper más: {0}. En su página, haga analizar la pintura, o diga que lo hace una empresa certificada en plomo.";
    AHEAD = "Its evidence is dated {0}, which is yet to come: look at the dates.", es "Su prueba tiene fecha {0}, que todavía no llega: revise las fechas.";
}

fn says(miss: Miss) -> &'static Phrase {
    match miss {
        Miss::Material => &OTHER_MATERIAL,
        Miss::Deed => &OTHER_DEED,
        Miss::Area => &OTHER_AREA,
        Miss::Paint => &OTHER_PAINT,
    }
}

/// Why evidence of a day that is yet to come opens nothing.
pub(super) fn ahead(day: Day) -> Text {
    say!(AHEAD, day.exact())
}

/// The standing of work that says `own` of itself and does `disturbs` to an old surface.
pub(super) fn of(own: Standing, disturbs: Option<&Disturbs>, hold: Option<&Opened>) -> Standing {
    match (disturbs, hold) {
        (None, _) => own,
        (Some(_), None) => Standing::Held(vec![say!(NO_HOLD)]),
        (Some(work), Some(hold)) => match hold.misses(work) {
            None => Standing::Opened(hold.says()),
            Some(miss) => Standing::Held(vec![say!(*says(miss), hold.says())]),
        },
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Entry, entry};
    use crate::calculators::{Calculator, Trade, hold};
    use crate::edition::Basis;
    use crate::fields::{Form, Kind, row};
    use crate::measure::{Day, Units};
    use crate::rules::hazards::{Deed, Disturbs, Material};
    use crate::sheet::{Faults, Figure, Sheet, Standing, Verdict};
    use crate::wire::Node;
    use crate::words::{Amount, Phrase};
    use crate::{form, words};

    words! { MADE_UP = "Made up", es "Inventado"; }

    form! {
        /// A made-up question.
        struct Ask {
            /// Old or new.
            old: bool, row(&MADE_UP, &MADE_UP, Kind::Flag);
        }
    }

    /// A made-up calculator that tears out old texture.
    #[derive(Debug)]
    struct TearsOut;

    impl Calculator for TearsOut {
        const ID: &'static str = "tears-out";
        const VERSION: u16 = 1;
        const TRADE: Trade = Trade::First;
        const NAME: &'static Phrase = &MADE_UP;
        const ABOUT: &'static Phrase = &MADE_UP;
        const ELECTRICAL: bool = true;
        type Input = Ask;
        type Answer = ();

        fn sample() -> Ask {
            Ask::blank()
        }
        fn solve(_: &Ask, _: Basis) -> Result<(), Faults> {
            Ok(())
        }
        fn sheet(_: &Ask, (): &(), _: Basis) -> Sheet {
            Sheet {
                headline: Figure {
                    key: "made-up",
                    name: (&MADE_UP).into(),
                    amount: Amount::Count(1),
                    rounding: crate::measure::Rounding::Nearest,
                    said: None,
                },
                lead: None,
                next: None,
                figures: Vec::new(),
                checks: Vec::new(),
                working: Vec::new(),
                parts: Vec::new(),
                materials: Vec::new(),
                cautions: Vec::new(),
                drawing: None,
            }
        }
        fn disturbs(input: &Ask) -> Option<Disturbs> {
            input.old.then_some(Disturbs {
                material: Material::Texture,
                deed: Deed::TearOut,
                area: None,
                painted: None,
            })
        }
    }

    static TEARS_OUT: Entry = entry::<TearsOut>();

    fn evidence(deed: &str) -> Node {
        let input = [
            ("place", "Den ceiling"),
            ("material", "texture"),
            ("deed", deed),
            ("area", "200 sq ft"),
            ("built", "1990"),
            ("report.result", "none-detected"),
            ("report.samples", "3"),
            ("report.lab", "Tamarack Lab"),
            ("report.number", "26-1184"),
            ("report.accreditation", "T-17"),
            ("report.dated", "2026-11-03"),
            ("report.sampled", "Den"),
            ("office.asks", "nothing-stricter"),
            ("office.says", "County desk"),
        ];
        let mut node = Node::EMPTY;
        input.iter().for_each(|(path, leaf)| node.put(path, Node::text(leaf)));
        node
    }

    fn hold(deed: &str) -> Option<hold::Opened> {
        super::super::find("hold")?.opened(&evidence(deed), Units::Customary, Basis::default())
    }

    /// An open hold's sheet says one reason once its report turns out to be of tomorrow.
    #[test]
    fn a_hold_whose_evidence_lies_ahead_says_so_and_nothing_of_being_open() {
        let hold = super::super::find("hold").unwrap();
        let work = |day| {
            let worked = hold.work(&evidence("strip"), Units::Customary, Basis::default()).unwrap();
            worked.as_of(Day::new(2026, 11, day))
        };
        let (open, ahead) = (work(3), work(2));
        assert!(!open.standing.is_held() && ahead.standing.is_held());
        let says = super::ahead(Day::new(2026, 11, 3).unwrap());
        assert_eq!(ahead.standing, Standing::Held(vec![says.clone()]));
        let count = |worked: &super::super::Worked| worked.sheet.headline.amount;
        assert_eq!((count(&open), count(&ahead)), (Amount::Count(0), Amount::Count(1)));
        let next = ahead.sheet.next.unwrap();
        assert_eq!(next.args, [crate::words::Arg::from(says.clone())]);
        assert_eq!(ahead.sheet.parts[0].rows[0].name, says);
        // To keep off stands there again, once.
        let cautions = ahead.sheet.cautions;
        for must in hold::Hold::cautions(None) {
            assert_eq!(cautions.iter().filter(|it| **it == must).count(), 1);
        }
        assert!(open.sheet.cautions.iter().all(|it| cautions.contains(it)));
    }

    #[test]
    fn old_material_is_held_until_its_own_hold_is_open() {
        let mut old = Node::EMPTY;
        old.put("old", Node::Flag(true));
        let work = |node: &Node, hold| {
            TEARS_OUT.work_behind(node, Units::Customary, Basis::default(), hold).unwrap()
        };
        let new = work(&Node::EMPTY, None);
        assert_eq!((new.verdict(), &new.standing), (Verdict::Within, &Standing::NotNeeded));
        let (torn, sanded) = (hold("tear-out").unwrap(), hold("sand").unwrap());
        assert!(hold("nothing").is_none() && hold("not-said").is_none());
        let opened = work(&old, Some(&torn));
        assert_eq!(opened.verdict(), Verdict::Within);
        assert!(matches!(opened.standing, Standing::Opened(_)));
        for shut in [None, Some(&sanded)] {
            let held = work(&old, shut);
            assert!(held.standing.is_held());
            assert_eq!(held.verdict(), Verdict::Over);
        }
        assert!(TEARS_OUT.opened(&old, Units::Customary, Basis::default()).is_none());
        assert!(TEARS_OUT.disturbs(&old, Units::Customary).is_some());
        let plain = TEARS_OUT.work(&old, Units::Customary, Basis::default()).unwrap();
        assert!(plain.standing.is_held(), "the plain door opens nothing");
    }
}
