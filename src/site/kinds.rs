//! What a product is chemically: as somebody ticked it, and as its parts tell.

use super::{Ingredient, Product};
use crate::chemistry::family::{Family, of_part};
use crate::number::Marks;

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
    of_part(&part.cas, most(part))
}

/// The most of a part, by whichever mark its number reads as a share; all of it where it is not known.
fn most(part: &Ingredient) -> f64 {
    let mut most = None::<f64>;
    for entry in [&part.low, &part.high].into_iter().filter(|entry| !entry.text.trim().is_empty()) {
        let mut share = None::<f64>;
        for marks in [Marks::POINT, Marks::COMMA] {
            let Ok((value, unit)) = entry.value(marks) else { continue };
            let read = unit.to_si(value);
            if (0.0..=1.0).contains(&read) {
                share = Some(share.unwrap_or(0.0).max(read));
            }
        }
        let Some(share) = share else { return 1.0 };
        most = Some(most.unwrap_or(0.0).max(share));
    }
    most.unwrap_or(1.0)
}
