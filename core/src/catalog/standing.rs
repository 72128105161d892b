//! How work stands with the hold that it is put behind, if any.

use crate::calculators::hold::Opened;
use crate::rules::hazards::Disturbs;
use crate::say;
use crate::sheet::Standing;
use crate::words;

words! {
    NO_HOLD = "It disturbs old material, and no hold has been opened for that. Work through the hold first.";
    OTHER_HOLD = "The open hold is for something else: {0}. It doesn't reach this work.";
}

/// The standing of work that says `own` of itself and does `disturbs` to an old surface.
pub(super) fn of(own: Standing, disturbs: Option<&Disturbs>, hold: Option<&Opened>) -> Standing {
    match (disturbs, hold) {
        (None, _) => own,
        (Some(_), None) => Standing::Held(vec![say!(NO_HOLD)]),
        (Some(work), Some(hold)) if hold.covers(work) => Standing::Opened(hold.says()),
        (Some(_), Some(hold)) => Standing::Held(vec![say!(OTHER_HOLD, hold.says())]),
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Entry, entry};
    use crate::calculators::{Calculator, Trade, hold};
    use crate::edition::Basis;
    use crate::fields::{Form, Kind, row};
    use crate::measure::Units;
    use crate::rules::hazards::{Deed, Disturbs, Material};
    use crate::sheet::{Faults, Figure, Sheet, Standing, Verdict};
    use crate::wire::Node;
    use crate::words::{Amount, Phrase};
    use crate::{form, words};

    words! { MADE_UP = "Made up"; }

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

    fn hold(deed: &str) -> Option<hold::Opened> {
        let input = [
            ("place", "Den ceiling"),
            ("material", "texture"),
            ("deed", deed),
            ("area", "200 sq ft"),
            ("built", "1990"),
            ("report.result", "none-detected"),
            ("report.samples", "3"),
            ("report.lab", "Tamarack Lab"),
            ("report.accreditation", "T-17"),
            ("report.dated", "2026-11-03"),
            ("report.sampled", "Den"),
            ("office.asks", "nothing-stricter"),
            ("office.says", "County desk"),
        ];
        let mut node = Node::EMPTY;
        input.iter().for_each(|(path, leaf)| node.put(path, Node::text(leaf)));
        super::super::find("hold")?.opened(&node, Units::Customary, Basis::default())
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
