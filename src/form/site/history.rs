//! What a standard replaced.

use crate::site::{Site, Standard};

/// The standards whose place this one took, the latest first.
///
/// ```
/// use brimline::form::site::history::replaced;
/// use brimline::site::{Site, Standard};
/// let one = |id: &str, replaces: &str| Standard { id: id.into(), replaces: replaces.into(), ..Standard::default() };
/// let site = Site { standards: vec![one("a", ""), one("b", "a"), one("c", "b")], ..Site::default() };
/// let ids: Vec<&str> = replaced(&site, &site.standards[2]).iter().map(|one| one.id.as_str()).collect();
/// assert_eq!(ids, ["b", "a"]);
/// ```
pub fn replaced<'a>(site: &'a Site, standard: &Standard) -> Vec<&'a Standard> {
    let mut out: Vec<&Standard> = Vec::new();
    let mut next = standard.replaces.as_str();
    // A file that somebody wrote may lead in a circle.
    while let Some(one) = site.standards.iter().find(|one| one.id == next && one.id != standard.id)
        && out.iter().all(|known| known.id != one.id)
    {
        out.push(one);
        next = &one.replaces;
    }
    out
}
