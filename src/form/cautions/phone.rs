//! The number in what a site wrote of whom to call.

/// The telephone number in a text, the longest of several, as a `tel:` link takes it: digits, a plus before them where it stands
/// there. Three digits are one, as those of emergency services are.
///
/// ```
/// use brimline::form::cautions::phone::number;
/// assert_eq!(number("Front desk: +1 (555) 010-0199, ask for the nurse").as_deref(), Some("+15550100199"));
/// assert_eq!(number("Room 214, call 555 0100").as_deref(), Some("5550100"));
/// assert_eq!(number("112").as_deref(), Some("112"));
/// assert_eq!(number("the nurse, room 12"), None);
/// ```
pub fn number(text: &str) -> Option<String> {
    let inside = |one: char| one.is_ascii_digit() || matches!(one, '+' | ' ' | '-' | '(' | ')' | '.' | '/');
    let mut best: Option<String> = None;
    for run in text.split(|one| !inside(one)) {
        let digits: String = run.chars().filter(char::is_ascii_digit).collect();
        let plus = if run.trim_start().starts_with('+') { "+" } else { "" };
        let longer = best.as_ref().is_none_or(|best| digits.len() > best.trim_start_matches('+').len());
        if (3..=15).contains(&digits.len()) && longer {
            best = Some(format!("{plus}{digits}"));
        }
    }
    best
}
