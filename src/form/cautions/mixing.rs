//! What meets what: every product of the site with every other, and what was in the tank before.

use crate::answer::{Fact, Remark, Weight};
use crate::chemistry::pairs::{self, Meeting, Pair};
use crate::form::Typed;
use crate::site::Product;

/// What is known of two products meeting, by what was ticked and by what they are made of. Parts that are found
/// bring two apart and never together: a product of which nothing was ticked stays one that is not known.
///
/// ```
/// use brimline::chemistry::{family::Family, pairs::Meeting};
/// use brimline::form::cautions::mixing::meet;
/// use brimline::site::{Ingredient, Product};
/// let with = |cas: &str| Product { parts: vec![Ingredient { cas: cas.into(), ..Ingredient::default() }], ..Product::default() };
/// assert!(matches!(meet(&with("7681-52-9"), &with("64-19-7")), Meeting::Never(_)));
/// assert_eq!(meet(&with("7681-52-9"), &with("1310-73-2")), Meeting::Unknown);
/// ```
pub fn meet(one: &Product, other: &Product) -> Meeting {
    match pairs::meet(&one.kinds(), &other.kinds()) {
        Meeting::NoPairListed if one.families.is_empty() || other.families.is_empty() => Meeting::Unknown,
        known => known,
    }
}

/// What is known of each product of the site meeting each other one: a row a product, in the order of the
/// site's list.
///
/// ```
/// use brimline::chemistry::pairs::Meeting;
/// use brimline::form::{Typed, cautions::mixing::matrix};
/// let matrix = matrix(&Typed::default());
/// assert_eq!(matrix.len(), matrix[0].len());
/// assert_eq!(matrix[0][1], matrix[1][0]);
/// ```
pub fn matrix(typed: &Typed) -> Vec<Vec<Meeting>> {
    let products = &typed.site.products;
    let row = |one: &Product| products.iter().map(|other| meet(one, other)).collect();
    products.iter().map(row).collect()
}

/// The pairs that any two products of the site bring together, each once, the most serious first.
pub fn pairs_on_site(typed: &Typed) -> Vec<&'static Pair> {
    let mut found: Vec<&'static Pair> = Vec::new();
    let matrix = matrix(typed);
    for (index, row) in matrix.iter().enumerate() {
        for meeting in &row[index + 1..] {
            if let Meeting::Never(pairs) = meeting {
                found.extend(pairs);
            }
        }
    }
    pairs::ALL.iter().filter(|pair| found.contains(pair)).collect()
}

/// What to say where one product follows another in the same tank: residue counts as meeting.
pub fn after(before: &Product, next: &Product, stop: Weight) -> Remark {
    let (code, weight, first) = match meet(before, next) {
        Meeting::Never(pairs) => ("remark-before-never", stop, pairs.first().map(|pair| pair.happens)),
        Meeting::Unknown => ("remark-before-unknown", Weight::Warn, None),
        Meeting::NoPairListed => ("remark-before-other", Weight::Warn, None),
    };
    let remark = Remark::new(code, weight)
        .with("before", Fact::Text(before.name.clone()))
        .with("product", Fact::Text(next.name.clone()));
    match first {
        Some(happens) => remark.with("happens", Fact::Key(happens.to_owned())),
        None => remark,
    }
}

/// What stands for a product in the answer to what was in the tank before: it is drained and rinsed. Blank is not
/// said, as older files have it.
pub const RINSED: &str = "-";

/// The same for one of which nobody knows.
pub const NOT_KNOWN: &str = "?";

/// What was in the tank before, where it is another product than the one asked about, or nobody knows.
pub(super) fn before(typed: &Typed, stop: Weight) -> Option<Remark> {
    if typed.ask.before == NOT_KNOWN {
        return Some(Remark::new("remark-before-not-known", Weight::Warn));
    }
    let before = typed.site.products.iter().find(|product| product.id == typed.ask.before)?;
    let next = typed.product().filter(|product| product.id != before.id)?;
    Some(after(before, next, stop))
}

/// Whether it is ticked as a kind that must never meet another one that is ticked or found among its parts. Two
/// parts of one product have met already, at its maker's.
pub fn clashes_with_itself(product: &Product) -> bool {
    !pairs::clashes(&product.families, &product.kinds()).is_empty()
}
