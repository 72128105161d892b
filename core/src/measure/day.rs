//! Calendar days. There is no clock here, so nothing is known of today: whether a day lies ahead
//! can't be said.

use super::{Problem, Reading};

/// A day of the calendar in use, written `2026-11-25`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Day {
    year: u16,
    month: u8,
    day: u8,
}

/// The first letters of the months; a longer name has to begin with all three.
const MONTHS: [&str; 12] = [
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
];

impl Day {
    /// Years that are read: a report is of this life or the last.
    pub const YEARS: std::ops::RangeInclusive<u16> = 1900..=2199;

    /// A day, if the calendar has it and its year is one of [`Day::YEARS`].
    pub fn new(year: u16, month: u8, day: u8) -> Option<Self> {
        let leap =
            year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
        let last = match month {
            2 if leap => 29,
            2 => 28,
            4 | 6 | 9 | 11 => 30,
            1..=12 => 31,
            _ => return None,
        };
        let held = Self::YEARS.contains(&year) && (1..=last).contains(&day);
        held.then_some(Self { year, month, day })
    }

    /// Its year.
    pub const fn year(self) -> u16 {
        self.year
    }

    /// Its month, from 1.
    pub const fn month(self) -> u8 {
        self.month
    }

    /// Its place in the month, from 1.
    pub const fn of_month(self) -> u8 {
        self.day
    }

    /// Its place in a count of days in which the next day's is one more. Years begin in March in it, so
    /// that a leap day comes last.
    pub fn number(self) -> i64 {
        let year = i64::from(self.year) - i64::from(self.month < 3);
        let month = (i64::from(self.month) + 9) % 12;
        let before = 365 * year + year / 4 - year / 100 + year / 400;
        before + (153 * month + 2) / 5 + i64::from(self.day)
    }

    /// The day of a [`Day::number`]; none whose year isn't one of [`Day::YEARS`].
    pub fn of_number(number: i64) -> Option<Self> {
        // A day past the last that is read.
        if !(1..1_000_000).contains(&number) {
            return None;
        }
        // So many times 400 years, and what is left of them.
        let (ages, of_age) = ((number - 1) / 146_097, (number - 1) % 146_097);
        let year = (of_age - of_age / 1_460 + of_age / 36_524 - of_age / 146_096) / 365;
        let of_year = of_age - (365 * year + year / 4 - year / 100);
        let month = (5 * of_year + 2) / 153;
        let day = of_year - (153 * month + 2) / 5 + 1;
        let year = ages * 400 + year + i64::from(month > 9);
        let month = (month + 2) % 12 + 1;
        Self::new(year.try_into().ok()?, month.try_into().ok()?, day.try_into().ok()?)
    }

    /// Its place in its week: nothing is Monday, six is Sunday.
    pub fn weekday(self) -> usize {
        // The first of March of the year 2000, whose number is 730,486, was a Wednesday.
        ((self.number() + 1) % 7) as usize
    }

    /// Reads `2026-11-25`, `25 Nov 2026`, `November 25, 2026`, and `11/25/2026` where only one
    /// day can be meant. `3/4/2026` is March to some and April to others: it is not read.
    ///
    /// # Errors
    /// [`Problem::Empty`], [`Problem::NotANumber`], or [`Problem::TwoMeanings`].
    pub fn read(text: &str) -> Reading<Self> {
        let text = text.trim();
        if text.is_empty() {
            return Err(Problem::Empty);
        }
        if Self::is_plain(text) {
            return three(text.split('-')).and_then(|[year, month, day]| made(year, month, day));
        }
        if text.contains('/') {
            let [first, second, year] = three(text.split('/').map(str::trim))?;
            let (us, other) = (made(year, first, second), made(year, second, first));
            return match (us, other) {
                (Ok(one), Ok(two)) if one != two => Err(Problem::TwoMeanings),
                (Ok(day), _) | (_, Ok(day)) => Ok(day),
                _ => Err(Problem::NotANumber),
            };
        }
        let parts = text.split([' ', ',', '.']).filter(|part| !part.is_empty());
        let [first, second, year] = three(parts)?;
        match (month(first), month(second)) {
            (Some(at), None) => made_in(year, at, second),
            (None, Some(at)) => made_in(year, at, first),
            _ => Err(Problem::NotANumber),
        }
    }

    /// Whether a text has the shape of `2026-11-25`, as a phone's own calendar gives it.
    pub fn is_plain(text: &str) -> bool {
        let bytes = text.as_bytes();
        bytes.len() == 10
            && bytes.iter().enumerate().all(|(at, byte)| match at {
                4 | 7 => *byte == b'-',
                _ => byte.is_ascii_digit(),
            })
    }

    /// The text that reads back as exactly this day: `2026-11-25`.
    pub fn exact(self) -> String {
        let two = |part: u8| if part < 10 { "-0" } else { "-" }.to_owned() + &part.to_string();
        [self.year.to_string(), two(self.month), two(self.day)].concat()
    }
}

fn three<'a>(mut parts: impl Iterator<Item = &'a str>) -> Reading<[&'a str; 3]> {
    match (parts.next(), parts.next(), parts.next(), parts.next()) {
        (Some(a), Some(b), Some(c), None) => Ok([a, b, c]),
        _ => Err(Problem::NotANumber),
    }
}

fn made(year: &str, month: &str, day: &str) -> Reading<Day> {
    made_in(year, digits(month, 2)?, day)
}

fn made_in(year: &str, month: u16, day: &str) -> Reading<Day> {
    // Two digits of a year are not a year.
    if year.len() != 4 {
        return Err(Problem::NotANumber);
    }
    let (year, day) = (digits(year, 4)?, digits(day, 2)?);
    let (month, day) = (u8::try_from(month), u8::try_from(day));
    let (Ok(month), Ok(day)) = (month, day) else { return Err(Problem::NotANumber) };
    Day::new(year, month, day).ok_or(Problem::NotANumber)
}

fn digits(text: &str, most: usize) -> Reading<u16> {
    let plain = text.len() <= most && text.bytes().all(|byte| byte.is_ascii_digit());
    if plain { text.parse().map_err(|_| Problem::NotANumber) } else { Err(Problem::NotANumber) }
}

/// The month of an English name, or of its first letters, three or more.
fn month(name: &str) -> Option<u16> {
    let name = name.to_ascii_lowercase();
    let at = MONTHS.iter().position(|month| name.len() >= 3 && month.starts_with(&*name))?;
    u16::try_from(at + 1).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn days_are_read_as_people_write_them() {
        for text in [
            "2026-11-25",
            " 2026-11-25 ",
            "11/25/2026",
            "25/11/2026",
            "25 Nov 2026",
            "25 november 2026",
            "Nov. 25, 2026",
            "November 25 2026",
        ] {
            assert_eq!(Day::read(text), Ok(Day::new(2026, 11, 25).unwrap()), "{text}");
        }
        assert_eq!(Day::read("4/4/2026"), Ok(Day::new(2026, 4, 4).unwrap()));
    }

    #[test]
    fn what_may_mean_two_days_or_none_is_not_read() {
        assert_eq!(Day::read("3/4/2026"), Err(Problem::TwoMeanings));
        assert_eq!(Day::read(" "), Err(Problem::Empty));
        for text in [
            "11/25/26",
            "2026-13-01",
            "2026-02-29",
            "2100-02-29",
            "25 Nov",
            "25 No 2026",
            "Nov Nov 2026",
            "0002-11-25",
            "+1/25/2026",
            "11/25/2026/1",
            "yesterday",
        ] {
            assert_eq!(Day::read(text), Err(Problem::NotANumber), "{text}");
        }
    }

    /// Source: the Gregorian rule, as ISO 8601 states it: each fourth year is a leap year, of
    /// full centuries each fourth.
    #[test]
    fn february_has_its_leap_day() {
        for (year, leap) in
            [(1900, false), (2000, true), (2024, true), (2026, false), (2100, false)]
        {
            assert_eq!(Day::new(year, 2, 29).is_some(), leap, "{year}");
        }
    }

    /// Source: the `jiff` crate's own calendar, an independent implementation of ISO 8601: every day
    /// from 1900 to 2199.
    #[test]
    fn every_day_has_the_number_and_the_weekday_of_another_calendar() {
        let mut other = jiff::civil::date(1900, 1, 1);
        let mut number = Day::new(1900, 1, 1).unwrap().number();
        let mut seen = 0;
        while other.year() < 2200 {
            let of = |part: i8| u8::try_from(part).unwrap();
            let year = u16::try_from(other.year()).unwrap();
            let day = Day::new(year, of(other.month()), of(other.day())).unwrap();
            assert_eq!(day.number(), number, "{other}");
            assert_eq!(Day::of_number(number), Some(day), "{other}");
            assert_eq!(day.weekday(), usize::from(of(other.weekday().to_monday_zero_offset())));
            (number, other, seen) = (number + 1, other.tomorrow().unwrap(), seen + 1);
        }
        assert_eq!(seen, 300 * 365 + 73, "of 300 years 73 are leap years");
        assert_eq!(Day::of_number(number), None, "the year 2200 isn't read");
        for far in [i64::MIN, -1, 0, 1, 999_999, i64::MAX] {
            assert_eq!(Day::of_number(far), None, "{far}");
        }
    }

    proptest! {
        #[test]
        fn a_day_reads_back_from_its_text(year in Day::YEARS, month in 1_u8..=12, day in 1_u8..=31) {
            if let Some(held) = Day::new(year, month, day) {
                prop_assert_eq!(Day::read(&held.exact()), Ok(held));
                prop_assert!(Day::is_plain(&held.exact()));
            }
        }

        #[test]
        fn anything_typed_is_read_or_refused(text in "[-0-9a-zé/., ]{0,14}") {
            let _ = Day::read(&text);
        }
    }
}
