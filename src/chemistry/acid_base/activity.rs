//! How ions hinder each other: activity coefficients.

use crate::source::Source;

/// Which activity coefficients count.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Activity {
    /// None: every activity is a concentration. Right where hardly anything is dissolved; at an ionic
    /// strength of 0.1 mol/L buffers come out up to 0.33 too high, alkaline builders 0.17.
    Ideal,
    /// The equation of Davies.
    Davies,
}

/// The equation of Davies and what stands for molecules without a charge.
pub const SOURCE: Source = Source::published(
    "Parkhurst and Appelo, USGS Techniques and Methods 6-A43 (2013), SOLUTION_SPECIES: Davies where no ion size is given, 0.1 I for uncharged species",
);

/// A of the equation of Davies at 25 °C, (kg/mol)^½: what PHREEQC 3 works out from the density and the
/// dielectric constant of water. Textbooks round it to 0.509 or 0.51.
pub const DEBYE_HUCKEL_A: f64 = 0.5100;

/// The greatest ionic strength at which [`Activity::Davies`] is used, mol/L: above it the coefficients
/// stay as they are there, and an estimate says so. From memory, unverified; common practice gives 0.5.
pub const DAVIES_REACH: f64 = 0.5;

/// Where the coefficients of Davies are smallest, mol/L: `√I (1 + √I)² = 1 / 0.6`.
pub(super) const DAVIES_TURN: f64 = 0.395;

impl Activity {
    /// −log γ of an ion of charge 1; that of charge z is z² of it.
    ///
    /// `A (√I / (1 + √I) − 0.3 I)`
    ///
    /// * `ionic_strength`: I, mol/L, 0 or above; counted up to [`DAVIES_REACH`].
    ///
    /// Source: [`SOURCE`].
    ///
    /// ```
    /// use brimline::chemistry::acid_base::Activity;
    /// assert!((Activity::Davies.of_ion(0.1) - 0.1072).abs() < 5e-5);
    /// assert_eq!(Activity::Ideal.of_ion(0.1), 0.0);
    /// ```
    pub fn of_ion(self, ionic_strength: f64) -> f64 {
        let strength = ionic_strength.min(DAVIES_REACH);
        let root = strength.sqrt();
        match self {
            Self::Ideal => 0.0,
            Self::Davies => DEBYE_HUCKEL_A * (root / (1.0 + root) - 0.3 * strength),
        }
    }

    /// log γ of a molecule without a charge: `0.1 I`, as for [`Self::of_ion`].
    pub fn of_molecule(self, ionic_strength: f64) -> f64 {
        match self {
            Self::Ideal => 0.0,
            Self::Davies => 0.1 * ionic_strength.min(DAVIES_REACH),
        }
    }
}
