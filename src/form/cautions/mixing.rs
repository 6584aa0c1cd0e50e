//! What meets what: every product of the site with every other, and what was in the tank before.

use crate::answer::{Fact, Remark, Weight};
use crate::chemistry::pairs::{Meeting, Pair, meet};
use crate::form::Typed;
use crate::site::Product;

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
    let row = |one: &Product| products.iter().map(|other| meet(&one.families, &other.families)).collect();
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
    crate::chemistry::pairs::ALL.iter().filter(|pair| found.contains(pair)).collect()
}

/// What to say where one product follows another in the same tank: residue counts as meeting.
pub fn after(before: &Product, next: &Product, stop: Weight) -> Remark {
    let (code, weight, first) = match meet(&before.families, &next.families) {
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

/// What was in the tank before, where it is another product than the one asked about.
pub(super) fn before(typed: &Typed, stop: Weight) -> Option<Remark> {
    let before = typed.site.products.iter().find(|product| product.id == typed.ask.before)?;
    let next = typed.product().filter(|product| product.id != before.id)?;
    Some(after(before, next, stop))
}
