//! Times of day as a crew writes them.

/// Minutes past midnight of `14:10`, `9:05`, `905`, `2:10 pm`, `2 p. m.` or `noon`; none of what is
/// no time of day.
pub fn minutes(typed: &str) -> Option<i64> {
    let mut typed = typed.to_ascii_lowercase();
    typed.retain(|sign| !matches!(sign, '.' | ' ' | '\u{a0}'));
    match typed.as_str() {
        "noon" | "mediodía" | "mediodia" => return Some(720),
        "midnight" | "medianoche" => return Some(0),
        _ => {}
    }
    let half = |mark: &str, from: i64| typed.strip_suffix(mark).map(|rest| (rest, from));
    let told = half("am", 0).or_else(|| half("pm", 12));
    let (clock, from) = told.unwrap_or((&typed, 0));
    let (hours, minutes) = match clock.split_once(':') {
        Some((hours, minutes)) if minutes.len() == 2 => (hours, minutes),
        // Three digits or four are an hour with its minutes.
        None if matches!(clock.len(), 3 | 4) => clock.split_at_checked(clock.len() - 2)?,
        // An hour alone is one where it is said which half of the day is meant.
        None if told.is_some() => (clock, "0"),
        _ => return None,
    };
    let digits = |text: &str, most: i64| {
        let is_read = (1..=2).contains(&text.len()) && text.bytes().all(|it| it.is_ascii_digit());
        text.parse::<i64>().ok().filter(|it| is_read && *it <= most)
    };
    let (hours, minutes) = (digits(hours, 23)?, digits(minutes, 59)?);
    match told {
        Some(_) if !(1..=12).contains(&hours) => None,
        Some(_) => Some((hours % 12 + from) * 60 + minutes),
        None => Some(hours * 60 + minutes),
    }
}

/// At least two digits.
pub fn two(count: i64) -> String {
    [if count < 10 { "0" } else { "" }, &count.to_string()].concat()
}

/// `14:10` of what can be read, else as it was typed.
pub fn told(typed: &str) -> String {
    match minutes(typed) {
        Some(at) => [two(at / 60), two(at % 60)].join(":"),
        None => typed.trim().to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_time_of_day_is_read_as_crews_write_it() {
        for (typed, want) in [
            ("14:10", "14:10"),
            (" 9:05 ", "09:05"),
            ("0:00", "00:00"),
            ("23:59", "23:59"),
            ("2:10 pm", "14:10"),
            ("2 p.m.", "14:00"),
            ("12:30am", "00:30"),
            ("12 PM", "12:00"),
            ("430", "04:30"),
            ("1630", "16:30"),
            ("1015 pm", "22:15"),
            ("2:10 p. m.", "14:10"),
            ("Noon", "12:00"),
            ("midnight", "00:00"),
            ("mediodía", "12:00"),
            ("medianoche", "00:00"),
        ] {
            assert!(minutes(typed).is_some(), "{typed}");
            assert_eq!(told(typed), want);
        }
        let odd = [
            "25:70", "quarter", "24:00", "2470", "12345", "4:3:0", "noonpm", "a30", "9:60", "9",
            "9:5", "13 pm", "0 am", "-1:00", "+9:05",
        ];
        for typed in odd {
            assert_eq!((minutes(typed), told(typed)), (None, typed.to_owned()));
        }
    }

    proptest! {
        #[test]
        fn any_text_is_read_or_told_and_every_minute_is_read_back(text in ".{0,8}", at in 0_i64..1440) {
            prop_assert!(minutes(&text).is_none_or(|it| (0..1440).contains(&it)));
            let clock = format!("{}:{:02}", at / 60, at % 60);
            prop_assert_eq!(minutes(&clock), Some(at));
            prop_assert_eq!(minutes(&told(&clock)), Some(at));
        }
    }
}
