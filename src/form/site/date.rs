//! Days as people type them into a standard.

/// A day of the Gregorian calendar, written year-month-day as ISO 8601 has it: its text where it is one.
///
/// ```
/// use brimline::form::site::date::day;
/// assert_eq!(day(" 2024-02-29 "), Some("2024-02-29"));
/// assert_eq!(day("2023-02-29"), None);
/// assert_eq!(day("29.2.2024"), None);
/// ```
pub fn day(text: &str) -> Option<&str> {
    let text = text.trim();
    let bytes = text.as_bytes();
    let shaped = bytes.len() == 10
        && bytes.iter().enumerate().all(|(at, byte)| match at {
            4 | 7 => *byte == b'-',
            _ => byte.is_ascii_digit(),
        });
    let part = |from: usize, to: usize| text.get(from..to)?.parse::<u32>().ok();
    let (year, month, day) = (shaped.then(|| part(0, 4)).flatten()?, part(5, 7)?, part(8, 10)?);
    let leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
    let days = match month {
        1 | 3 | 5 | 7 | 8 | 10 | 12 => 31,
        4 | 6 | 9 | 11 => 30,
        2 if leap => 29,
        2 => 28,
        _ => 0,
    };
    (1..=days).contains(&day).then_some(text)
}
