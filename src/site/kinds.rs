//! What a product is chemically: as somebody ticked it, and as its parts tell.

use super::{Ingredient, Product};
use crate::chemistry::cas;
use crate::chemistry::family::{Family, of_part};
use crate::limits::PART;
use crate::number::Marks;
use crate::units::{MassFraction, Quantity};

impl Product {
    /// Its families, which every rule goes by: those that were ticked, then those that its parts bring in. Where
    /// none was ticked the product stays one that is not known, whatever its parts add.
    ///
    /// ```
    /// use brimline::chemistry::family::Family;
    /// use brimline::site::{Ingredient, Product};
    /// let bleach = Ingredient { cas: "7681-52-9".into(), ..Ingredient::default() };
    /// let product = Product { families: vec![Family::Neutral], parts: vec![bleach], ..Product::default() };
    /// assert_eq!(product.kinds(), [Family::Neutral, Family::HypochloriteBleach]);
    /// ```
    pub fn kinds(&self) -> Vec<Family> {
        let mut kinds = self.families.clone();
        kinds.extend(self.found_kinds());
        kinds
    }

    /// The families that its parts bring in and nobody ticked, each once.
    pub fn found_kinds(&self) -> Vec<Family> {
        let mut found: Vec<Family> = Vec::new();
        for family in self.parts.iter().filter_map(kind) {
            // A strong acid that is ticked is an acid.
            let known = self.families.iter().chain(&found).any(|one| one.is_a(family));
            if !known {
                found.push(family);
            }
        }
        found
    }

    /// Whether it is ticked as neutral and a part says otherwise. A surfactant, an alcohol or a solvent does not.
    pub fn is_no_neutral(&self) -> bool {
        use Family::{Acid, Alkali, Ammonia, HypochloriteBleach, Neutral, Oxidiser, Peroxide};
        let sharp = [Acid, Alkali, Ammonia, HypochloriteBleach, Oxidiser, Peroxide];
        let against = |one: &Family| sharp.iter().any(|other| one.is_a(*other));
        self.families.contains(&Neutral) && self.found_kinds().iter().any(against)
    }

    /// Whether its label promises to disinfect: less than it asks would not.
    pub fn disinfects(&self) -> bool {
        self.kinds().iter().any(|family| family.disinfects())
    }
}

fn kind(part: &Ingredient) -> Option<Family> {
    of_part(cas::check(&part.cas)?, most(part))
}

/// The most of a part: of two readings of its number the greater one; all of it where it is not known.
fn most(part: &Ingredient) -> f64 {
    let read = |marks: Marks| {
        let end = |entry: &super::Entry| entry.read_optional::<MassFraction>(&PART, marks);
        match (end(&part.low), end(&part.high)) {
            (Ok(low), Ok(high)) => {
                low.into_iter().chain(high).map(Quantity::si).reduce(f64::max).unwrap_or(1.0)
            }
            _ => 1.0,
        }
    };
    let sides = [Marks::POINT, Marks::COMMA].map(read);
    // What only one of the marks can read, that one reads.
    match sides.map(|share| share < 1.0) {
        [true, false] => sides[0],
        [false, true] => sides[1],
        _ => sides[0].max(sides[1]),
    }
}
