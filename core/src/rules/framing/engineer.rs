//! What is a licensed engineer's work, as limits that nobody else may pass.

use crate::measure::Length;
use crate::rules::compare::Limit;
use crate::words;

words! {
    SAYS = "Who may move what holds a house up, cut a truss, or size a beam, post or footing, is set by state law: a licensed engineer.", es "Quién puede mover lo que sostiene una casa, cortar una armadura (truss), o dimensionar una viga, un poste o una zapata, lo fija la ley estatal: un ingeniero con licencia.";
    SEEN = "from memory: each state has such a law, and they differ. The building department tells", es "de memoria: cada estado tiene una ley así, y difieren. La oficina de construcción lo dice";
}

source!(
    /// Whose work it is.
    ENGINEER, "engineers-work", "State licensing law, and the building department" es "Ley estatal de licencias, y la oficina de construcción", SAYS, SEEN, Memory
);

/// How far ties may be moved by anybody else: not at all.
pub const MOVED: Limit<Length> = Limit { value: Length::ZERO, source: &ENGINEER };

/// How many beams, posts and footings are sized by anybody else: none.
pub const SIZED: Limit<i64> = Limit { value: 0, source: &ENGINEER };
