//! Which figures of a job fit a field: what fits better is offered first.

use super::fold::fold;
use super::mark::Mark;
use super::site::own_spot;
use crate::fields::Row;
use crate::sheet::Figure;

/// How a figure fits a row, the best first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fit {
    /// The very figure that the row names.
    Named,
    /// One of the same key or name.
    Alike,
    /// One of the room that the question is about.
    Here,
    /// Another of its kind.
    Kind,
    /// One out of the row's bounds.
    Refused,
}

impl Fit {
    /// How a figure of another mark fits. `of` is the mark's calculator, empty where it is a room's;
    /// `is_here` says that the mark is about the same room.
    pub fn of(row: &Row, figure: &Figure, of: &str, is_here: bool) -> Self {
        if row.is_figure(figure.key, of) {
            return Self::Named;
        }
        if !row.kind.holds(figure.amount) {
            return Self::Refused;
        }
        let is_same_key = figure.key == row.key || figure.key == row.room;
        if is_same_key || fold(figure.name.phrase.en) == fold(row.label.en) {
            return Self::Alike;
        }
        if is_here { Self::Here } else { Self::Kind }
    }
}

impl Mark {
    /// The room that it is about, to be compared with another's: its spot, or the title of a room
    /// without one. Empty where nobody said.
    pub fn about(&self) -> String {
        fold(own_spot(self))
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples::mark;
    use super::*;
    use crate::catalog;
    use crate::edition::Basis;
    use crate::measure::{Length, Units};
    use crate::wire::Node;
    use crate::words::{Amount, Phrase};

    static OTHER: Phrase = Phrase { en: "Another", es: "" };

    /// The figures of a room as the sample has it, in their own order.
    fn of_room() -> Vec<Figure> {
        let room = catalog::find("room").unwrap();
        let mut input = room.sample();
        input.put("height_to_be", Node::text("9 ft"));
        let sheet = room.work(&input, Units::Customary, Basis::default()).unwrap().sheet;
        [vec![sheet.headline], sheet.figures].concat()
    }

    fn length(key: &'static str, inches: i64) -> Figure {
        Figure::plain(key, &OTHER, Amount::Length(Length::inches(inches, 1)))
    }

    fn row(calculator: &str, key: &str) -> &'static Row {
        let rows = catalog::find(calculator).unwrap().rows;
        crate::fields::row_at(rows, key).unwrap()
    }

    #[test]
    fn a_rooms_length_is_offered_before_all_its_walls() {
        for (key, want) in [
            ("long", "longest"),
            ("wide", "widest"),
            ("floor", "floor-area"),
            ("to.height", "ceiling-height-to-be"),
        ] {
            let row = row("raising", key);
            let like = row.takes().unwrap();
            let like = of_room().into_iter().filter(|it| it.amount.is_like(like));
            let best = like.min_by_key(|it| Fit::of(row, it, "", false)).unwrap();
            assert_eq!(best.key, want, "{key}");
        }
    }

    #[test]
    fn what_fits_better_goes_first() {
        // The old framing: from 3 ft to 25 ft.
        let row = row("raising", "framing");
        let fit = |figure: &Figure, is_here| Fit::of(row, figure, "boards", is_here);
        let (key, other) = (length("framing", 100), length("other", 100));
        assert_eq!(fit(&key, false), Fit::Alike);
        assert_eq!((fit(&other, true), fit(&other, false)), (Fit::Here, Fit::Kind));
        assert_eq!(fit(&length("framing", 35), true), Fit::Refused);
        assert_eq!(fit(&length("other", 36), false), Fit::Kind);
        assert_eq!(fit(&length("other", 301), true), Fit::Refused);
        let named = Figure { name: row.label.into(), ..other };
        assert_eq!(fit(&named, false), Fit::Alike);
        // Of a room, which another calculator isn't.
        let long = self::row("raising", "long");
        assert_eq!(Fit::of(long, &length("longest", 144), "", false), Fit::Named);
        assert_eq!(Fit::of(long, &length("longest", 144), "boards", false), Fit::Alike);
    }

    /// A plan that many a room doesn't hold takes no room's sides along with the rest, but is offered them before
    /// its walls.
    #[test]
    fn a_plans_sides_are_offered_a_rooms_own_first() {
        for key in ["longest", "widest"] {
            let row = row("rough-in", key);
            let fit = |key| Fit::of(row, &length(key, 144), "", false);
            assert_eq!((fit(key), fit("wall-1")), (Fit::Alike, Fit::Kind));
        }
    }

    #[test]
    fn a_room_is_told_by_its_spot_or_its_title() {
        let of = |calculator: &str, title: &str, spot: &str| Mark {
            calculator: calculator.to_owned(),
            title: title.to_owned(),
            spot: spot.to_owned(),
            ..mark(1)
        };
        assert_eq!(of("boards", "Boards", " Den ").about(), of("room", "DEN", "").about());
        assert_eq!(of("boards", "Boards", "").about(), "");
    }
}
