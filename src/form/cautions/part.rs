//! What is doubtful in one line of a product's parts.

use crate::chemistry::cas::{self, Cas};
use crate::chemistry::ghs::mixture::KINDS;
use crate::site::Ingredient;

/// What is doubtful.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doubt {
    /// It has a name and no CAS number: nothing that goes by numbers knows it.
    NoCas,
    /// Name and number are those of two substances; the one that bears the number.
    OtherName(&'static str),
}

/// What is doubtful about a part, if anything. A name is held against its number only where both are listed here.
///
/// ```
/// use brimline::form::cautions::part::{Doubt, doubt};
/// use brimline::site::Ingredient;
/// let part = |name: &str, cas: &str| Ingredient { name: name.into(), cas: cas.into(), ..Ingredient::default() };
/// assert_eq!(doubt(&part("Citric acid", "")), Some(Doubt::NoCas));
/// assert_eq!(doubt(&part("Citric acid", "1310-73-2")), Some(Doubt::OtherName("sodium hydroxide")));
/// assert_eq!(doubt(&part("Citric acid", "77-92-9")), None);
/// assert_eq!(doubt(&part("My own blend", "77-92-9")), None);
/// ```
pub fn doubt(part: &Ingredient) -> Option<Doubt> {
    let name = part.name.trim();
    if part.cas.trim().is_empty() {
        return (!name.is_empty()).then_some(Doubt::NoCas);
    }
    let number = cas::check(&part.cas)?;
    let is = |row: &str, number: Cas| cas::check(row) == Some(number);
    let (_, bears, _) = KINDS.iter().find(|row| is(row.0, number))?;
    let named: Vec<_> = KINDS.iter().filter(|row| row.1.eq_ignore_ascii_case(name)).collect();
    let other = !named.is_empty() && !named.iter().any(|row| is(row.0, number));
    other.then_some(Doubt::OtherName(bears))
}
