//! CAS numbers: the names of substances that a safety data sheet gives beside its words.

/// Whether a text is a CAS number: two to seven digits, two digits, and the check digit that belongs to
/// them, with hyphens between.
///
/// `Σ i × dᵢ mod 10`, the digits before the last counted from the right
///
/// * `number`: as typed; spaces around it do not matter, and a dash counts as a hyphen.
///
/// Whether a substance bears the number is not checked. Source: CAS, check digit verification of CAS
/// Registry Numbers, from memory, unverified; every number of the substance table keeps it.
///
/// ```
/// use brimline::chemistry::cas;
/// assert!(cas::check("7732-18-5") && cas::check(" 64–19–7 "));
/// assert!(!cas::check("7732-18-6") && !cas::check("7732185"));
/// ```
pub fn check(number: &str) -> bool {
    tidy(number).is_some()
}

/// The number as a table writes it; none when it is no CAS number, as [`check`] decides.
///
/// ```
/// use brimline::chemistry::cas;
/// assert_eq!(cas::tidy(" 64–19–7 ").as_deref(), Some("64-19-7"));
/// assert_eq!(cas::tidy("proprietary"), None);
/// ```
pub fn tidy(number: &str) -> Option<String> {
    // Sheets that went through a word processor carry its dashes.
    let number: String = number
        .trim()
        .chars()
        .map(|one| if matches!(one, '‐' | '‑' | '–' | '−') { '-' } else { one })
        .collect();
    let parts: Vec<&str> = number.split('-').collect();
    let [first, second, last] = parts[..] else { return None };
    let lengths = (2..=7).contains(&first.len()) && second.len() == 2 && last.len() == 1;
    if !lengths || !parts.iter().all(|part| part.bytes().all(|one| one.is_ascii_digit())) {
        return None;
    }
    let digit = |one: u8| u32::from(one - b'0');
    let sum: u32 =
        first.bytes().chain(second.bytes()).rev().zip(1..).map(|(one, place)| place * digit(one)).sum();
    (sum % 10 == digit(last.as_bytes()[0])).then_some(number)
}
