//! Texts that no spreadsheet computes.
//!
//! A cell that begins with one of these characters is taken for a formula, which can send or run something.
//! An apostrophe before it makes it a text. Source: CWE-1236, Improper Neutralization of Formula Elements in
//! a CSV File.

/// What begins a formula, in full width too, as East Asian spreadsheets read it.
const STARTS: [char; 11] = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'];

/// Whether a spreadsheet would compute it, once apostrophes and spaces are gone.
fn computed(text: &str) -> bool {
    text.trim_start_matches([' ', '\'']).starts_with(STARTS)
}

/// The text with an apostrophe before it where it needs one.
pub(in crate::site) fn defused(text: &str) -> String {
    if computed(text) { format!("'{text}") } else { text.to_owned() }
}

/// The text without the apostrophe that [`defused`] put there.
pub(super) fn undefused(text: &str) -> &str {
    text.strip_prefix('\'').filter(|rest| computed(rest)).unwrap_or(text)
}
