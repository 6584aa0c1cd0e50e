//! Numbers as text, with the digits that can be measured.

use super::{Marks, NumberMistake, decimal as decimal_of};

/// Writes a value with `significant` digits, never rounding whole units away, with twelve decimals
/// at most and without trailing zeros. Where three decimals would have two readings a fourth one, 0, stands behind
/// them: what is written reads back the same.
///
/// ```
/// use brimline::number::{Marks, write};
/// assert_eq!(write(39.384_615, 3, Marks::POINT), "39.4");
/// assert_eq!(write(27_456.2, 3, Marks::POINT), "27,456");
/// assert_eq!(write(0.5, 3, Marks::COMMA), "0,5");
/// assert_eq!(write(1.125, 4, Marks { decimal: ',', group: '\u{202f}' }), "1,1250");
/// ```
pub fn write(value: f64, significant: i32, marks: Marks) -> String {
    written(value, significant, marks, false)
}

/// Writes a value as [`write()`] does, with all of its digits: zeros at the end say how exact it is.
///
/// ```
/// use brimline::number::{Marks, write_full};
/// assert_eq!(write_full(1.099_9, 3, Marks::POINT), "1.10");
/// assert_eq!(write_full(9.999, 3, Marks::COMMA), "10,0");
/// assert_eq!(write_full(27_456.2, 3, Marks::POINT), "27,456");
/// ```
pub fn write_full(value: f64, significant: i32, marks: Marks) -> String {
    written(value, significant, marks, true)
}

fn written(value: f64, significant: i32, marks: Marks, full: bool) -> String {
    if !value.is_finite() {
        return "–".to_owned();
    }
    let magnitude = if value == 0.0 { 0 } else { floor_log10(value.abs()) };
    let places = usize::try_from((significant - 1 - magnitude).clamp(0, 12)).unwrap_or(0);
    let plain = format!("{:.places$}", value.abs());
    let (whole, tail) = plain.split_once('.').unwrap_or((&plain, ""));
    let short = tail.trim_end_matches('0');
    // 9.999 rounds up to 10.00, which has a digit more than was asked for.
    let digits = plain.trim_start_matches(['0', '.']).bytes().filter(u8::is_ascii_digit).count();
    let excess = digits.saturating_sub(usize::try_from(significant).unwrap_or(0));
    let tail = if full { &tail[..short.len().max(tail.len().saturating_sub(excess))] } else { short };
    let below = value < 0.0 && plain.bytes().any(|byte| (b'1'..=b'9').contains(&byte));
    let mut out = if below { "−".to_owned() } else { String::new() };
    out += &grouped(whole, marks);
    if !tail.is_empty() {
        out.push(marks.decimal);
        out.push_str(tail);
        // More than three digits before the mark, or a leading zero, leave one reading.
        if tail.len() == 3
            && (1..=3).contains(&whole.len())
            && whole != "0"
            && marks.groups(marks.decimal).is_none()
        {
            out.push('0');
        }
    }
    out
}

/// Writes an amount of money: with two decimals, whole units never rounded away.
///
/// ```
/// use brimline::number::{Marks, write_money};
/// assert_eq!(write_money(1234.5, Marks::POINT), "1,234.50");
/// assert_eq!(write_money(0.004, Marks::COMMA), "0,00");
/// ```
pub fn write_money(value: f64, marks: Marks) -> String {
    if !value.is_finite() {
        return "–".to_owned();
    }
    let plain = format!("{:.2}", value.abs());
    let (whole, cents) = plain.split_once('.').unwrap_or((&plain, "00"));
    let sign = if value < 0.0 && plain != "0.00" { "−" } else { "" };
    format!("{sign}{}{}{cents}", grouped(whole, marks), marks.decimal)
}

/// Digits in groups of three.
fn grouped(digits: &str, marks: Marks) -> String {
    let mut out = String::with_capacity(digits.len() + 6);
    for (index, digit) in digits.chars().enumerate() {
        if index > 0 && (digits.len() - index).is_multiple_of(3) {
            out.push(marks.group);
        }
        out.push(digit);
    }
    out
}

/// Writes a value for another program: at most `significant` digits, whole units never rounded away, nothing
/// between thousands. Where three decimals could be taken for thousands a fourth one, 0, stands behind them.
///
/// ```
/// use brimline::number::plain;
/// assert_eq!(plain(557.418_24, 12, ','), "557,41824");
/// assert_eq!(plain(27_456.0, 12, '.'), "27456");
/// assert_eq!(plain(1.125, 12, '.'), "1.1250");
/// ```
pub fn plain(value: f64, significant: i32, decimal: char) -> String {
    let magnitude = if value == 0.0 { 0 } else { floor_log10(value.abs()) };
    let places = usize::try_from((significant - 1 - magnitude).clamp(0, 20)).unwrap_or(0);
    let mut out = format!("{value:.places$}");
    if out.contains('.') {
        out.truncate(out.trim_end_matches('0').trim_end_matches('.').len());
    }
    if matches!(decimal_of(&out, None), Err(NumberMistake::TwoReadings { .. })) {
        out.push('0');
    }
    out.replace('.', decimal.encode_utf8(&mut [0; 4]))
}

/// The place of the first digit of a number above 0: 0 for ones, 1 for tens, −1 for tenths.
#[allow(clippy::cast_possible_truncation, reason = "the logarithm of a finite f64 lies within ±324")]
pub(crate) fn floor_log10(value: f64) -> i32 {
    value.log10().floor() as i32
}
