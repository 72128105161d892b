//! Which figures of a job fit a field: what fits better is offered first.

use super::fold::fold;
use super::mark::Mark;
use super::site::own_spot;
use crate::fields::{Goes, Row};
use crate::sheet::Figure;

/// How a figure fits a row, the best first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fit {
    /// The very figure that the row names, as it is to be.
    ToBe,
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
        match row.goes(figure.key, of) {
            Some(Goes::Rather) => return Self::ToBe,
            Some(Goes::AsNamed) => return Self::Named,
            None => {}
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
    use crate::fields::{decided, left_alone};
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

    /// An outline as it is put in: the paths of a room's rows, each with what it says.
    type Outline = &'static [(&'static str, &'static str)];

    const SHAPES: [(&str, Outline, &str); 6] = [
        ("rectangle", &[("long", "20 ft"), ("wide", "13 ft")], ""),
        (
            "l",
            &[("long", "20 ft"), ("wide", "14 ft"), ("notch_long", "6 ft"), ("notch_wide", "5 ft")],
            "",
        ),
        (
            "t",
            &[("long", "20 ft"), ("wide", "14 ft"), ("leg_wide", "7 ft"), ("leg_long", "5 ft")],
            "leg_off",
        ),
        (
            "t",
            &[
                ("long", "20 ft"),
                ("wide", "14 ft"),
                ("leg_wide", "7 ft"),
                ("leg_long", "5 ft"),
                ("leg_off", "3 ft"),
            ],
            "",
        ),
        (
            "u",
            &[("long", "20 ft"), ("wide", "14 ft"), ("gap_long", "5 ft"), ("gap_deep", "6 ft")],
            "gap_off",
        ),
        (
            "u",
            &[
                ("long", "20 ft"),
                ("wide", "14 ft"),
                ("gap_long", "5 ft"),
                ("gap_deep", "6 ft"),
                ("gap_off", "4 ft"),
            ],
            "",
        ),
    ];

    /// What one tap makes of a question: each row that is a figure of the room, and the choices that
    /// those decide.
    fn taken(entry: &catalog::Entry, figures: &[Figure]) -> Node {
        let mut input = entry.sample();
        for row in entry.rows {
            if let Some(figure) = figures.iter().find(|it| row.is_figure(it.key, "")) {
                input.put(row.key, Node::Text(figure.amount.exact()));
            }
        }
        let has = |key: &str| figures.iter().any(|it| it.key == key);
        for it in decided(entry.rows, "", &has) {
            input.put(it.key, Node::text(it.pick.expect("a shape of its own")));
        }
        input
    }

    /// Where a question lies in a room, the room's outline comes whole: a rectangle, an L, a T or a U
    /// with all its lengths, a part in the middle where it stands. By hand, with 20 by 14 ft less 6 by
    /// 5 ft: 250 sq ft.
    #[test]
    fn a_room_of_a_named_shape_is_taken_with_its_shape_and_all_its_lengths() {
        let room = catalog::find("room").unwrap();
        let lie_in_one = |entry: &&catalog::Entry| entry.rows.iter().any(|it| !it.by.is_empty());
        let all: Vec<_> = catalog::ALL.iter().filter(lie_in_one).collect();
        assert!(all.len() >= 3);
        for (shape, outline, middle) in SHAPES {
            let mut input = room.sample();
            input.put("shape", Node::text(shape));
            outline.iter().for_each(|(path, says)| input.put(path, Node::text(says)));
            let sheet = room.work(&input, Units::Customary, Basis::default()).unwrap().sheet;
            let floor = sheet.headline.amount;
            if shape == "l" {
                assert_eq!(floor, Amount::Area(crate::measure::Area::square_feet(250)));
            }
            let figures = [vec![sheet.headline], sheet.figures].concat();
            for entry in &all {
                let taken = taken(entry, &figures);
                assert_eq!(taken.get("shape").and_then(Node::leaf).as_deref(), Some(shape));
                for (path, says) in outline {
                    let row = crate::fields::row_at(entry.rows, path).unwrap();
                    let heard = |leaf: &str| crate::fields::heard(row, leaf, Units::Customary);
                    let leaf = taken.get(path).and_then(Node::leaf).unwrap();
                    assert_eq!(heard(&leaf), heard(says), "{}: {shape}, {path}", entry.id);
                }
                // In the middle by where that is: whatever was typed there doesn't stay.
                let off = taken.get(middle).and_then(Node::leaf);
                let want = if shape == "t" { "6 ft 6 in" } else { "7 ft 6 in" };
                assert!(middle.is_empty() || off.as_deref() == Some(want), "{off:?}");
            }
            let boards = catalog::find("boards").unwrap();
            let taken = taken(boards, &figures);
            let sheet = boards.work(&taken, Units::Customary, Basis::default()).unwrap().sheet;
            let surface = sheet.figures.iter().find(|it| it.key == "surface").unwrap();
            assert_eq!(surface.amount, floor, "{shape}");
        }
    }

    /// A room of six walls that was walked has no figure that decides a shape: while a question stands
    /// at a rectangle a person has to say; at a walk nothing is left to take.
    #[test]
    fn a_room_of_another_shape_leaves_the_shape_to_a_person() {
        let boards = catalog::find("boards").unwrap();
        let none = |key: &str| key == "ceiling-height";
        let it = &decided(boards.rows, "", &none)[0];
        assert_eq!((it.key, it.pick), ("shape", None));
        let at = |of: &str, shape: &str| {
            let mut input = boards.sample();
            input.put("of", Node::text(of));
            input.put("shape", Node::text(shape));
            (it.differs(boards.rows, &input), it.is_to_be_set(boards.rows, &input))
        };
        assert_eq!(at("ceiling", "rectangle"), (true, true));
        assert_eq!(at("ceiling", "l"), (true, false));
        assert_eq!(at("ceiling", "walk"), (false, false));
        assert_eq!(at("wall", "rectangle"), (false, false), "a wall asks for no shape");
        let left = left_alone(boards.rows, &boards.sample(), "", &none);
        assert!(["long", "wide"].iter().all(|key| left.iter().any(|row| row.key == *key)));
        // Four walls that were walked are a rectangle; an L that is taken as one is not.
        let is = |figure: &'static str| decided(boards.rows, "", &move |key| key == figure)[0];
        let sample = boards.sample();
        assert!(!is("longest").differs(boards.rows, &sample));
        assert!(is("notch-long").differs(boards.rows, &sample));
        // Another number's figures decide nothing.
        assert!(decided(boards.rows, "boards", &|_| true).is_empty());
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
