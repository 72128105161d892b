//! Who and when: the only way that time, chance and a device's name come into a job.

use super::words as w;
use crate::measure::Day;
use crate::say;
use crate::words::Text;

/// One act on one device. Made by the page; everything here is pure.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stamp {
    /// Seconds since 1970-01-01 00:00 UTC.
    pub at: i64,
    /// Minutes east of UTC.
    pub zone: i32,
    /// The device's own name, as it counts in clocks.
    pub device: String,
    /// Fresh for every stamp.
    pub random: u64,
}

impl Stamp {
    /// When.
    pub fn moment(&self) -> Moment {
        Moment { at: self.at, zone: self.zone }
    }

    /// A new id: six characters of the time and six of chance, digits and small letters.
    ///
    /// Two stamps of one second share an id once in 36⁶ (two thousand million) times; the door
    /// refuses the second one then.
    pub fn id(&self) -> String {
        let mut id = String::with_capacity(12);
        base36(&mut id, self.at.rem_euclid(SIX_DIGITS.cast_signed()).cast_unsigned());
        base36(&mut id, self.random % SIX_DIGITS);
        id
    }
}

/// How many numbers six digits of base 36 can tell apart.
const SIX_DIGITS: u64 = 36_u64.pow(6);

/// Six digits of `value`, the highest first.
fn base36(out: &mut String, value: u64) {
    for place in (0..6).rev() {
        let digit = value / 36_u64.pow(place) % 36;
        out.extend(char::from_digit(u32::try_from(digit).unwrap_or(0), 36));
    }
}

/// A point in time, and the zone of whoever noted it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Moment {
    /// Seconds since 1970-01-01 00:00 UTC.
    pub at: i64,
    /// Minutes east of UTC.
    pub zone: i32,
}

/// Date and time as a calendar on the wall has them (Gregorian, also before 1582).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Civil {
    /// Year; 0 is the year before 1.
    pub year: i64,
    /// 1 to 12.
    pub month: u8,
    /// 1 to 31.
    pub day: u8,
    /// 0 is Monday.
    pub weekday: u8,
    /// 0 to 23.
    pub hour: u8,
    /// 0 to 59.
    pub minute: u8,
}

impl Moment {
    /// Date and time in the moment's own zone.
    ///
    /// - Formula: days since 0000-03-01, cut into 400-year eras of 146 097 days.
    /// - Rounding: down to the minute.
    ///
    /// # Source
    /// Howard Hinnant, "chrono-Compatible Low-Level Date Algorithms" (2021), `civil_from_days`.
    pub fn civil(self) -> Civil {
        let local = self.at.saturating_add(i64::from(self.zone) * 60);
        let (days, second) = (local.div_euclid(86_400), local.rem_euclid(86_400));
        let shifted = days + 719_468;
        let (era, of_era) = (shifted.div_euclid(146_097), shifted.rem_euclid(146_097));
        let year_of_era = (of_era - of_era / 1_460 + of_era / 36_524 - of_era / 146_096) / 365;
        let of_year = of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
        let from_march = (5 * of_year + 2) / 153;
        let month = if from_march < 10 { from_march + 3 } else { from_march - 9 };
        Civil {
            year: year_of_era + era * 400 + i64::from(month <= 2),
            month: small(month),
            day: small(of_year - (153 * from_march + 2) / 5 + 1),
            weekday: small((days + 3).rem_euclid(7)),
            hour: small(second / 3_600),
            minute: small(second / 60 % 60),
        }
    }

    /// The day in the moment's own zone; none of a clock that is centuries off.
    pub fn day(self) -> Option<Day> {
        let Civil { year, month, day, .. } = self.civil();
        Day::new(u16::try_from(year).ok()?, month, day)
    }

    /// As a person reads it: `Tue 2026-11-24 14:10`.
    pub fn text(self) -> Text {
        let civil = self.civil();
        let mut digits = self.date();
        for (sign, value) in [(' ', civil.hour), (':', civil.minute)] {
            digits.push(sign);
            two(&mut digits, value);
        }
        say!(w::WHEN, w::WEEKDAYS[usize::from(civil.weekday % 7)], digits)
    }

    /// The date alone, the same in every language: `2026-11-24`.
    pub fn date(self) -> String {
        let civil = self.civil();
        let mut out = String::with_capacity(16);
        if civil.year < 0 {
            out.push('-');
        }
        let year = civil.year.unsigned_abs().to_string();
        out.extend(std::iter::repeat_n('0', 4_usize.saturating_sub(year.len())));
        out.push_str(&year);
        for value in [civil.month, civil.day] {
            out.push('-');
            two(&mut out, value);
        }
        out
    }
}

/// Every caller's value is below 100.
fn small(value: i64) -> u8 {
    u8::try_from(value).unwrap_or(0)
}

fn two(out: &mut String, value: u8) {
    out.push(char::from(b'0' + value / 10 % 10));
    out.push(char::from(b'0' + value % 10));
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Language, Voice};
    use jiff::Timestamp;
    use jiff::tz::Offset;
    use proptest::prelude::*;

    fn stamp(at: i64, random: u64) -> Stamp {
        Stamp { at, zone: 0, device: "d".into(), random }
    }

    /// Source: the weekdays and leap days of the Gregorian calendar; 2000 was a leap year, 1900
    /// was not. The first and last seconds are `i64`'s own.
    #[test]
    fn a_moment_reads_as_the_calendar_on_the_wall() {
        #[rustfmt::skip]
        const CASES: &[(i64, i32, &str)] = &[
            (0,                    0, "Thu 1970-01-01 00:00"),
            (-1,                   0, "Wed 1969-12-31 23:59"),
            (951_782_400,          0, "Tue 2000-02-29 00:00"),
            (-2_203_891_200,       0, "Thu 1900-03-01 00:00"),
            (1_795_554_600,     -300, "Tue 2026-11-24 16:10"),
            (1_795_554_600,        0, "Tue 2026-11-24 21:10"),
            (1_795_554_600,      330, "Wed 2026-11-25 02:40"),
            (-62_167_219_200,      0, "Sat 0000-01-01 00:00"),
            (-62_198_755_200,      0, "Fri -0001-01-01 00:00"),
        ];
        for &(at, zone, want) in CASES {
            let said = Voice::default().say(&Moment { at, zone }.text());
            assert_eq!(said, want, "{at} {zone}");
        }
        for at in [i64::MIN, i64::MAX] {
            for zone in [i32::MIN, 0, i32::MAX] {
                assert!(Moment { at, zone }.date().len() > 10, "{at} {zone}");
            }
        }
    }

    #[test]
    fn the_weekday_is_in_the_persons_language() {
        let spanish = Voice { language: Language::Spanish, ..Voice::default() };
        assert_eq!(spanish.say(&Moment { at: 0, zone: 0 }.text()), "jue 1970-01-01 00:00");
    }

    #[test]
    fn an_id_is_twelve_plain_characters_in_order_of_time() {
        assert_eq!(stamp(35, 36).id(), "00000z000010");
        assert_eq!(stamp(SIX_DIGITS.cast_signed(), SIX_DIGITS + 1).id(), "000000000001");
        assert!(stamp(1_795_554_600, u64::MAX).id() < stamp(1_795_554_601, 0).id());
    }

    proptest! {
        /// Against the `jiff` crate, over all the years it knows but the outermost ones.
        #[test]
        fn the_calendar_is_the_one_of_a_date_library(
            at in -377_000_000_000_i64..253_000_000_000, zone in -1_439_i32..1_440,
        ) {
            let offset = Offset::from_seconds(zone * 60).unwrap();
            let theirs = offset.to_datetime(Timestamp::from_second(at).unwrap());
            let ours = Moment { at, zone }.civil();
            let day = theirs.date();
            prop_assert_eq!(ours.year, i64::from(day.year()));
            prop_assert_eq!(i8::try_from(ours.month), Ok(day.month()));
            prop_assert_eq!(i8::try_from(ours.day), Ok(day.day()));
            prop_assert_eq!(
                i8::try_from(ours.weekday), Ok(day.weekday().to_monday_zero_offset())
            );
            prop_assert_eq!(i8::try_from(ours.hour), Ok(theirs.hour()));
            prop_assert_eq!(i8::try_from(ours.minute), Ok(theirs.minute()));
        }

        #[test]
        fn any_stamp_makes_a_usable_id(at: i64, random: u64) {
            let id = stamp(at, random).id();
            prop_assert_eq!(id.len(), 12);
            prop_assert!(super::super::refusal::usable(&id));
        }
    }
}
