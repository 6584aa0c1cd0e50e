//! How acid or alkaline a use solution is: from what a safety data sheet lists, the dilution and the
//! tap water to a band of pH. An estimate: a pH that the maker prints stands first, as long as both agree.
//!
//! At 25 °C the charges in a solution sum to nothing, and this decides its pH:
//!
//! ```text
//! [H⁺] − [OH⁻] + strong ions + Σ cᵢ × qᵢ(pH) = 0
//! ```
//!
//! * strong ions: sodium, potassium, chloride and their like, which never take or give a proton;
//! * cᵢ: all of a weak acid or base, mol/L, in whatever form; qᵢ: the mean charge of its forms, from
//!   its pKa ([`weak`]);
//! * `[H⁺][OH⁻] = 10⁻¹⁴`, in activities; pH is the activity of H⁺ ([`Activity`]).
//!
//! Every term falls as pH rises, so that there is one root, and [`Solution::balance`] finds it.
//!
//! # What a range of ingredients makes
//!
//! More of one ingredient moves pH toward that ingredient's own pH, where it brings no charge, and
//! never past it. pH is therefore monotone in each ingredient, whatever the others are, and the lowest
//! and the highest pH of all mixtures within the ranges lie where each ingredient is at one end of its
//! range. Which end can depend on the others (baking soda raises the pH of an acid and lowers that of
//! a lye), so that [`estimate`](fn@estimate) starts at a corner, looks at the charge that each
//! ingredient brings at the pH found, takes its better end, and solves again until none changes: each
//! round moves pH further out and an ingredient changes ends at most once. With activities a salt shifts
//! pH by its ions alone, and a mixture in between can lie some hundredths outside every corner; the band
//! is widened to hold those too, by solving with the least and the greatest ionic strength.
//!
//! # What is not in it
//!
//! Other temperatures; carbon dioxide that is lost or taken up; ions that pair up, with hardness or
//! each other; what falls out; silicate that forms chains; heat. mol/L counts as mol/kg of water.

pub mod activity;
pub mod curve;
pub mod estimate;
pub mod solution;
pub mod substance;
pub mod water;
pub mod weak;

pub use activity::Activity;
pub use curve::{Point, curve};
pub use estimate::{Assumption, Estimate, Ingredient, Part, Product, estimate};
pub use solution::{Balance, Solution};
pub use substance::{Makeup, Substance};
pub use water::Water;
pub use weak::Weak;

use crate::source::Source;

/// The charge balance and its two activity models.
pub const SOURCE: Source = Source::published(
    "Parkhurst and Appelo, Description of Input and Examples for PHREEQC Version 3, USGS Techniques and Methods 6-A43 (2013)",
);

/// −log of the ion product of water at 25 °C. IAPWS R11-07 gives 13.994; the constants of the weak acids
/// are no better known.
pub const PKW: f64 = 14.0;
