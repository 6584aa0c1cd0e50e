//! The chemical families a product can belong to, as far as a rule here depends on them.

mod parts;

pub use parts::{COUNTS_FROM, SOURCE as PARTS_SOURCE, known_parts, of_part};

use crate::coded::coded;

coded! {
    /// A family of products that behave alike with other products and on floors.
    ///
    /// A product may belong to several: a chlorinated degreaser is a bleach and a strong alkali. None
    /// listed means nothing is known, never that nothing is wrong; a plain cleaner is `Neutral`.
    Family {
        /// A cleaner the label calls neutral.
        Neutral = "neutral",
        /// Soap and other anionic surfactants.
        Soap = "soap",
        /// Alkaline builders: carbonates, phosphates, silicates.
        Alkali = "alkali",
        /// Caustic strippers and heavy degreasers.
        StrongAlkali = "strong_alkali",
        /// Ammonia and ammoniated cleaners.
        Ammonia = "ammonia",
        /// Acids as in vinegar, descalers and rust removers.
        Acid = "acid",
        /// Acids strong or concentrated enough to burn.
        StrongAcid = "strong_acid",
        /// Bleach: sodium hypochlorite and other releasers of chlorine.
        HypochloriteBleach = "hypochlorite_bleach",
        /// Hydrogen peroxide and cleaners built on it.
        Peroxide = "peroxide",
        /// Other oxidizers, such as percarbonate or peracetic acid.
        Oxidiser = "oxidiser",
        /// Quaternary ammonium disinfectants.
        Quat = "quat",
        /// Ethanol, isopropanol and their like.
        Alcohol = "alcohol",
        /// Petroleum, citrus and glycol ether solvents, solvent wax.
        Solvent = "solvent",
    }
}

impl Family {
    /// Whether a rule about `other` also holds for this family: a strong acid is an acid.
    ///
    /// ```
    /// use brimline::chemistry::family::Family;
    /// assert!(Family::StrongAcid.is_a(Family::Acid));
    /// assert!(!Family::Acid.is_a(Family::StrongAcid));
    /// ```
    pub const fn is_a(self, other: Self) -> bool {
        self as u8 == other as u8
            || matches!((self, other), (Self::StrongAcid, Self::Acid) | (Self::StrongAlkali, Self::Alkali))
    }

    /// Whether labels of this family promise to disinfect: less than they ask would not.
    pub const fn disinfects(self) -> bool {
        matches!(self, Self::HypochloriteBleach | Self::Quat | Self::Peroxide | Self::Oxidiser)
    }

    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::HypochloriteBleach => "family-hypochlorite-bleach",
            Self::Acid => "family-acid",
            Self::StrongAcid => "family-strong-acid",
            Self::Alkali => "family-alkali",
            Self::StrongAlkali => "family-strong-alkali",
            Self::Ammonia => "family-ammonia",
            Self::Alcohol => "family-alcohol",
            Self::Peroxide => "family-peroxide",
            Self::Oxidiser => "family-oxidiser",
            Self::Quat => "family-quat",
            Self::Soap => "family-soap",
            Self::Solvent => "family-solvent",
            Self::Neutral => "family-neutral",
        }
    }
}

/// The word keys of families.
pub fn word_keys() -> impl Iterator<Item = String> {
    Family::ALL.iter().map(|family| family.key().to_owned())
}
