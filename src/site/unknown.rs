//! Names of records that the site does not have.
//!
//! An area that names a floor, product or machine that the site lacks must ask for one, and its name must not
//! be lost. So the area holds the name behind a mark that no id begins with: it is no record's id, and
//! what was asked for can still be told.

/// What no id begins with.
const MARK: char = '?';

/// What an area holds in the place of an id.
///
/// ```
/// use brimline::site::unknown;
/// assert_eq!(unknown::name(&unknown::id("Moon")), Some("Moon"));
/// assert_eq!(unknown::name("vinyl"), None);
/// ```
pub fn id(name: &str) -> String {
    format!("{MARK}{name}")
}

/// The name of a record that the site does not have; none for an id.
pub fn name(id: &str) -> Option<&str> {
    id.strip_prefix(MARK)
}
