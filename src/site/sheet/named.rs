//! Which product a sheet is of: the name in its first section, or above the first heading.

use super::lines::Line;
use super::scan::squeezed;

/// The labels that a name stands behind, letters only (z reads as s); the longest come first where one begins like
/// another.
const LABELS: &[&str] = &[
    "productnameusedonthelabel",
    "productidentifierusedonthelabel",
    "productidentifierusedonlabel",
    "productidentification",
    "productidentifier",
    "productname",
    "ghsproductidentifier",
    "nameoftheproduct",
    "nameofproduct",
    "commercialproductname",
    "commercialname",
    "tradename",
];

/// How a line that holds no name begins, where a label stood alone above it: another label, torn from its own column.
#[rustfmt::skip]
const NO_NAMES: &[&str] = &[
    "other", "recommended", "relevant", "use", "identified", "synonym", "supplier", "manufacturer", "company",
    "details", "emergency", "productcode", "productform", "productnumber", "producttype", "notapplicable",
    "notavailable",
];

/// The most characters of a name.
const LONGEST: usize = 80;

/// The name, as it is printed; none where no label stands before one.
pub(super) fn find(lines: &[Line]) -> Option<String> {
    let own: Vec<&Line> = lines.iter().filter(|line| line.belongs_to(1)).collect();
    own.iter().enumerate().filter(|(_, line)| !line.heading).find_map(|(at, line)| {
        let rest = behind_label(&line.text)?;
        if !squeezed(rest, 1).is_empty() {
            return name(rest);
        }
        let below = own.get(at + 1).filter(|below| !below.heading && !below.text.contains(':'))?;
        name(&below.text)
    })
}

/// What stands behind a label that a line opens with: nothing, or what a colon or a cell parts from it.
fn behind_label(line: &str) -> Option<&str> {
    // "1.1", "•" and the like.
    let line = line.trim_start_matches(|one: char| !one.is_alphabetic());
    let end = [":", "\t", "=", "  "].iter().filter_map(|mark| line.find(mark)).min().unwrap_or(line.len());
    let (label, rest) = line.split_at(end);
    let letters = squeezed(label, LONGEST);
    LABELS.contains(&letters.as_str()).then_some(rest)
}

/// The name that a text opens with: up to the next cell, or the next sentence where the line ends are lost.
fn name(text: &str) -> Option<String> {
    let text = text.trim_start_matches(|one: char| one.is_whitespace() || matches!(one, ':' | '=' | '-'));
    let end = ["\t", "  ", ". ", ";"].iter().filter_map(|mark| text.find(mark)).min().unwrap_or(text.len());
    let text = text[..end].trim_end_matches(|one: char| one.is_whitespace() || one == '.');
    let letters = squeezed(text, LONGEST);
    let is_none = letters.is_empty() || NO_NAMES.iter().any(|other| letters.starts_with(other));
    let cut = text.char_indices().nth(LONGEST).map(|(at, _)| format!("{} …", text[..at].trim_end()));
    (!is_none).then(|| cut.unwrap_or_else(|| text.to_owned()))
}

/// Whether two names are the same but for case, spaces and signs.
pub(super) fn is_same(one: &str, other: &str) -> bool {
    let bare = |name: &str| -> String {
        name.chars().filter(|one| one.is_alphanumeric()).flat_map(char::to_lowercase).collect()
    };
    bare(one) == bare(other)
}
