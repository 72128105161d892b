//! Words that a person reads, apart from the sums.
//!
//! A [`Phrase`] holds one wording in each language; a [`Text`] is a phrase with its values, and
//! [`Voice::say`] is the one place where the two meet. Nothing else builds text for people.

use crate::measure::{Area, Day, Length, Measure, Rounding, Shown, Units, Volume};

/// One wording, with `{0}` where a value goes and `{0?one|many}` where it counts something.
#[derive(Debug, PartialEq, Eq)]
pub struct Phrase {
    /// English.
    pub en: &'static str,
    /// Spanish; where it is empty English is said.
    pub es: &'static str,
}

/// Declares phrases: `NAME = "English", es "Spanish";`. One without its Spanish doesn't build.
#[macro_export]
macro_rules! words {
    ($($(#[$doc:meta])* $name:ident = $en:literal, es $es:literal;)*) => {
        $(
            $(#[$doc])*
            pub(crate) static $name: $crate::words::Phrase =
                $crate::words::Phrase { en: $en, es: $es };
        )*
    };
}

/// A language that the page can be shown in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Language {
    /// English.
    #[default]
    English,
    /// Spanish.
    Spanish,
    /// Brackets round every phrase: any text outside them did not come through here.
    Pseudo,
}

/// A quantity on its way to a person.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Amount {
    /// A length.
    Length(Length),
    /// An area.
    Area(Area),
    /// A box's volume, or a part of it.
    Volume(Volume),
    /// A room's volume: the same measure, told in cubic feet.
    Room(Volume),
    /// A count.
    Count(i64),
    /// A day of the calendar.
    Day(Day),
    /// Any other physical quantity, with its unit.
    Measure(Measure),
}

impl Amount {
    /// As a person reads it.
    pub fn show(self, units: Units, rounding: Rounding) -> Shown {
        match self {
            Self::Length(length) => length.show(units, rounding),
            Self::Area(area) => area.show(units, rounding),
            Self::Volume(volume) => volume.show(units, rounding),
            Self::Room(volume) => volume.show_as_room(units, rounding),
            Self::Measure(measure) => measure.show(units, rounding),
            Self::Count(count) => {
                let sign = if count < 0 { "−" } else { "" };
                let figure = [sign, &count.unsigned_abs().to_string()].concat();
                Shown { figure, unit: "", rounded: false }
            }
            Self::Day(day) => Shown { figure: day.exact(), unit: "", rounded: false },
        }
    }

    /// Whether the two are quantities of one kind.
    pub fn is_like(self, other: Self) -> bool {
        match (self, other) {
            (Self::Measure(one), Self::Measure(other)) => one.unit() == other.unit(),
            _ => std::mem::discriminant(&self) == std::mem::discriminant(&other),
        }
    }

    /// As a person reads it where that is this very amount, else its exact text: what a tap puts in
    /// says what it is, 19.2 in and not 19-3/16.
    pub fn show_exactly(self, units: Units) -> Shown {
        let shown = self.show(units, Rounding::Nearest);
        if shown.rounded {
            return Shown { figure: self.exact(), unit: "", rounded: false };
        }
        shown
    }

    /// The text that reads back as exactly this amount.
    pub fn exact(self) -> String {
        match self {
            Self::Length(length) => length.exact(),
            Self::Area(area) => area.exact(),
            Self::Volume(volume) => volume.exact(),
            Self::Room(volume) => volume.exact_as_room(),
            Self::Count(count) => count.to_string(),
            Self::Day(day) => day.exact(),
            Self::Measure(measure) => measure.exact(),
        }
    }

    /// Its size in the smallest units that its kind is held in.
    pub fn raw(self) -> i128 {
        match self {
            Self::Length(length) => length.nanometres().into(),
            Self::Area(area) => area.square_nanometres(),
            Self::Volume(volume) | Self::Room(volume) => volume.units().into(),
            Self::Count(count) => count.into(),
            Self::Day(day) => day.number().into(),
            Self::Measure(measure) => measure.millionths().into(),
        }
    }

    /// One of the same kind, of another size; past the end of the scale its end.
    pub fn of_same(self, raw: i128) -> Self {
        let narrow = || raw.clamp(i64::MIN.into(), i64::MAX.into()) as i64;
        match self {
            Self::Length(_) => Self::Length(Length::from_nanometres(narrow())),
            Self::Area(_) => Self::Area(Area::from_square_nanometres(raw)),
            Self::Volume(_) => Self::Volume(Volume::from_units(narrow())),
            Self::Room(_) => Self::Room(Volume::from_units(narrow())),
            Self::Count(_) => Self::Count(narrow()),
            Self::Day(day) => Self::Day(Day::of_number(narrow()).unwrap_or(day)),
            Self::Measure(measure) => Self::Measure(measure.of_same(narrow())),
        }
    }

    /// Reads [`Amount::exact`]. Its unit says which kind it is of; bare digits are a count.
    pub fn from_exact(text: &str) -> Option<Self> {
        if let Ok(count) = text.parse() {
            return Some(Self::Count(count));
        }
        if Day::is_plain(text) {
            return Day::read(text).ok().map(Self::Day);
        }
        if let Some(measure) = Measure::from_exact(text) {
            return Some(Self::Measure(measure));
        }
        let units = Units::Customary;
        if let Ok(area) = Area::read(text, units) {
            return Some(Self::Area(area));
        }
        if let Ok(volume) = Volume::read(text, units) {
            let room = text.ends_with(" ft3") || text.ends_with(" m3");
            return Some(if room { Self::Room(volume) } else { Self::Volume(volume) });
        }
        Length::read(text, units).ok().map(Self::Length)
    }
}

macro_rules! amounts {
    ($($quantity:ty, $amount:ident;)*) => {
        $(
            impl From<$quantity> for Amount {
                fn from(quantity: $quantity) -> Self {
                    Self::$amount(quantity)
                }
            }
            impl From<$quantity> for Arg {
                fn from(quantity: $quantity) -> Self {
                    Self::Amount(Amount::$amount(quantity), Rounding::Nearest)
                }
            }
        )*
    };
}
amounts! {
    Length, Length;
    Area, Area;
    Volume, Volume;
    i64, Count;
    Day, Day;
    Measure, Measure;
}

/// What can stand in a phrase's `{0}`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Arg {
    /// A quantity, rounded as given.
    Amount(Amount, Rounding),
    /// A quantity without its unit, where the unit stands elsewhere.
    Bare(Amount),
    /// Another text.
    Text(Text),
    /// A person's own words, or a symbol that is the same in every language.
    Raw(String),
}

impl From<Amount> for Arg {
    fn from(amount: Amount) -> Self {
        Self::Amount(amount, Rounding::Nearest)
    }
}
impl From<Text> for Arg {
    fn from(text: Text) -> Self {
        Self::Text(text)
    }
}
impl From<&'static Phrase> for Arg {
    fn from(phrase: &'static Phrase) -> Self {
        Self::Text(phrase.into())
    }
}
impl From<&str> for Arg {
    fn from(raw: &str) -> Self {
        Self::Raw(raw.to_owned())
    }
}
impl From<String> for Arg {
    fn from(raw: String) -> Self {
        Self::Raw(raw)
    }
}

/// A phrase and what goes into it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Text {
    /// The wording.
    pub phrase: &'static Phrase,
    /// What stands for `{0}`, `{1}` and so on.
    pub args: Vec<Arg>,
}

impl Text {
    /// Whether it says the same as another, or something of it.
    pub(crate) fn says_as(&self, other: &Self) -> bool {
        let is_within = |one: &Self, of: &Self| {
            of.args.iter().any(|arg| matches!(arg, Arg::Text(text) if text == one))
        };
        let has_one = |arg: &Arg| matches!(arg, Arg::Text(text) if is_within(text, other));
        self == other || is_within(other, self) || self.args.iter().any(has_one)
    }
}

impl From<&'static Phrase> for Text {
    fn from(phrase: &'static Phrase) -> Self {
        Self { phrase, args: Vec::new() }
    }
}

/// A [`Text`]: `say!(PHRASE)` or `say!(PHRASE, value, value)`.
#[macro_export]
macro_rules! say {
    ($phrase:expr $(, $arg:expr)* $(,)?) => {
        $crate::words::Text { phrase: &$phrase, args: vec![$($crate::words::Arg::from($arg)),*] }
    };
}

/// Who is spoken to: language and units.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Voice {
    /// The language.
    pub language: Language,
    /// The units that figures are shown in.
    pub units: Units,
}

impl Voice {
    /// A phrase without values.
    pub fn phrase(self, phrase: &'static Phrase) -> String {
        self.say(&Text::from(phrase))
    }

    /// The one interpolator: a text in this language and these units.
    pub fn say(self, text: &Text) -> String {
        let wording = match self.language {
            Language::Spanish if !text.phrase.es.is_empty() => text.phrase.es,
            _ => text.phrase.en,
        };
        let mut said = String::with_capacity(wording.len() + 16);
        if self.language == Language::Pseudo {
            said.push('⟦');
        }
        let mut rest = wording;
        while let Some((before, after)) = rest.split_once('{') {
            said.push_str(before);
            let Some((slot, after)) = after.split_once('}') else { break };
            rest = after;
            let (index, forms) = slot.split_once('?').map_or((slot, None), |(i, f)| (i, Some(f)));
            let Some(arg) = index.parse::<u8>().ok().and_then(|i| text.args.get(usize::from(i)))
            else {
                continue;
            };
            match forms.and_then(|forms| forms.split_once('|')) {
                Some((one, many)) => said.push_str(if is_one(arg) { one } else { many }),
                None => self.fill(&mut said, arg),
            }
        }
        said.push_str(rest);
        if self.language == Language::Pseudo {
            said.push('⟧');
        }
        said
    }

    fn fill(self, said: &mut String, arg: &Arg) {
        match arg {
            Arg::Amount(amount, rounding) => {
                said.push_str(&amount.show(self.units, *rounding).text());
            }
            Arg::Bare(amount) => {
                said.push_str(&amount.show(self.units, Rounding::Nearest).figure);
            }
            Arg::Text(text) => said.push_str(&self.say(text)),
            Arg::Raw(raw) => said.push_str(raw),
        }
    }
}

fn is_one(arg: &Arg) -> bool {
    matches!(arg, Arg::Amount(Amount::Count(1), _))
}

#[cfg(test)]
mod tests {
    use super::*;

    words! {
        LEFT = "{0} {0?cable|cables} left in {1}", es "";
        PLAIN = "Box", es "Caja";
    }

    #[test]
    fn values_and_plurals_are_filled_in() {
        let voice = Voice::default();
        assert_eq!(voice.say(&say!(LEFT, 1, Volume::hundredths(2030))), "1 cable left in 20.3 in³");
        assert_eq!(voice.say(&say!(LEFT, 2, "a box")), "2 cables left in a box");
        assert_eq!(voice.say(&say!(LEFT)), "  left in ", "a missing value leaves a gap");
    }

    /// By hand: 96/5 in is 19.2, between 19-3/16 and 19-1/4.
    #[test]
    fn what_a_tap_puts_in_is_shown_as_it_is() {
        let shown = |over, under| {
            Amount::Length(Length::inches(over, under)).show_exactly(Units::Customary).text()
        };
        assert_eq!(shown(96, 5), "19.2 in");
        assert_eq!(shown(33, 2), "16-1/2 in");
    }

    #[test]
    fn exact_text_says_which_kind_it_is_of() {
        let foot = Length::inches(12, 1);
        let floor = Area::square_feet(168);
        for amount in [
            Amount::Count(3),
            Amount::Length(foot),
            Amount::Length(Length::from_nanometres(7)),
            Amount::Area(floor),
            Amount::Area(Area::from_square_nanometres(7)),
            Amount::Volume(Volume::hundredths(2030)),
            Amount::Volume(Volume::from_units(7)),
            Amount::Room(Volume::over(floor, foot.times(8))),
            Amount::Room(Volume::from_units(7)),
            Amount::Measure(Measure::whole(&crate::measure::unit::PSF, 30)),
            Amount::Measure(Measure::new(&crate::measure::unit::PERCENT, -7)),
            Amount::Measure(Measure::new(&crate::measure::unit::FAHRENHEIT, -40_000_001)),
        ] {
            assert_eq!(Amount::from_exact(&amount.exact()), Some(amount));
        }
        assert_eq!(Amount::from_exact("a number"), None);
    }

    #[test]
    fn spanish_is_said_where_it_is_written_and_pseudo_brackets_all() {
        let spanish = Voice { language: Language::Spanish, ..Voice::default() };
        assert_eq!(spanish.phrase(&PLAIN), "Caja");
        assert_eq!(spanish.say(&say!(LEFT, 1, &PLAIN)), "1 cable left in Caja");
        let pseudo = Voice { language: Language::Pseudo, ..Voice::default() };
        assert_eq!(pseudo.phrase(&PLAIN), "⟦Box⟧");
    }
}
