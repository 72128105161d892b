//! Numbers as SVG wants them, from whole hundredths: a float's formatter alone would cost more
//! than all drawings together.

/// Hundredths as a decimal: 1250 is `12.5`.
pub(crate) fn hundredths(count: i64) -> String {
    let sign = if count < 0 { "-" } else { "" };
    let (whole, part) = (count.unsigned_abs() / 100, count.unsigned_abs() % 100);
    let mut text = [sign, &whole.to_string()].concat();
    if part > 0 {
        text.push('.');
        text.push(char::from(b'0' + (part / 10) as u8));
        if part % 10 > 0 {
            text.push(char::from(b'0' + (part % 10) as u8));
        }
    }
    text
}

/// `of / all` as a percentage: 1 of 8 is `12.5%`. Nothing of nothing is nothing.
pub(crate) fn percent(of: i64, all: i64) -> String {
    let mut text = hundredths(scaled(of, 10_000, all));
    text.push('%');
    text
}

/// `value × by ÷ all`, rounded to the nearest; nothing where `all` is nothing.
pub(crate) fn scaled(value: i64, by: i64, all: i64) -> i64 {
    if all <= 0 {
        return 0;
    }
    let (value, by, all) = (i128::from(value), i128::from(by), i128::from(all));
    i64::try_from((2 * value * by + all).div_euclid(2 * all)).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hundredths_read_as_decimals() {
        for (count, want) in
            [(0, "0"), (5, "0.05"), (50, "0.5"), (100, "1"), (1250, "12.5"), (-1205, "-12.05")]
        {
            assert_eq!(hundredths(count), want);
            assert_eq!(want.parse::<f64>().map(|read| (read * 100.0).round() as i64), Ok(count));
        }
    }

    #[test]
    fn a_share_is_rounded_and_never_divides_by_nothing() {
        assert_eq!(percent(1, 8), "12.5%");
        assert_eq!(percent(1, 3), "33.33%");
        assert_eq!(percent(2, 3), "66.67%");
        assert_eq!(percent(1, 0), "0%");
        assert_eq!(scaled(i64::MAX, 10_000, i64::MAX), 10_000);
    }
}
