//! Which ingredients add up, and which burn or irritate for themselves in small amounts.

use super::rules::{FAMILIES, HPR_NAMED};
use crate::chemistry::cas::{self, Cas};
use crate::source::Source;

/// What an ingredient is, as far as adding up goes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Kind {
    /// Not known: counted as one that does not add up, the worse case.
    #[default]
    Unknown,
    /// None of the others, as solvents are: it adds up with its like.
    Additive,
    /// An acid.
    Acid,
    /// A base: caustic, an amine, ammonia.
    Base,
    /// An inorganic salt.
    Salt,
    /// An aldehyde.
    Aldehyde,
    /// A phenol.
    Phenol,
    /// A surfactant, quaternary ammonium among them.
    Surfactant,
}

impl Kind {
    /// Whether it may burn or irritate below the limits for sums. Source: [`Kind::SOURCE`].
    pub const fn counts_alone(self) -> bool {
        !matches!(self, Self::Additive)
    }

    /// Whether a solution of it may have an extreme pH.
    pub const fn may_shift_ph(self) -> bool {
        matches!(self, Self::Unknown | Self::Acid | Self::Base | Self::Salt)
    }

    /// The families that do not add up.
    pub const SOURCE: Source = HPR_NAMED;

    /// Which number belongs to which family.
    pub const TABLE_SOURCE: Source = FAMILIES;

    /// The kind of a substance that cleaning products are made of; unknown where the table lacks it.
    ///
    /// ```
    /// use brimline::chemistry::{cas::check, ghs::mixture::Kind};
    /// assert_eq!(Kind::of(check("1310-73-2").unwrap()), Kind::Base);
    /// assert_eq!(Kind::of(check("107-07-3").unwrap()), Kind::Unknown);
    /// ```
    pub fn of(cas: Cas) -> Self {
        TABLE.iter().find(|(number, ..)| cas::check(number) == Some(cas)).map_or(Self::Unknown, |row| row.2)
    }
}

/// Water: it has no hazard of its own.
pub const WATER: &str = "7732-18-5";

/// Number, name and kind.
pub static TABLE: &[(&str, &str, Kind)] = &[
    ("1310-73-2", "sodium hydroxide", Kind::Base),
    ("1310-58-3", "potassium hydroxide", Kind::Base),
    ("1336-21-6", "ammonium hydroxide", Kind::Base),
    ("7664-41-7", "ammonia", Kind::Base),
    ("141-43-5", "ethanolamine", Kind::Base),
    ("111-42-2", "diethanolamine", Kind::Base),
    ("102-71-6", "triethanolamine", Kind::Base),
    ("6834-92-0", "sodium metasilicate", Kind::Base),
    ("1344-09-8", "sodium silicates", Kind::Salt),
    ("497-19-8", "sodium carbonate", Kind::Salt),
    ("584-08-7", "potassium carbonate", Kind::Salt),
    ("144-55-8", "sodium bicarbonate", Kind::Salt),
    ("7601-54-9", "trisodium phosphate", Kind::Salt),
    ("7722-88-5", "tetrasodium pyrophosphate", Kind::Salt),
    ("7320-34-5", "tetrapotassium pyrophosphate", Kind::Salt),
    ("7758-29-4", "sodium tripolyphosphate", Kind::Salt),
    ("7681-52-9", "sodium hypochlorite", Kind::Salt),
    ("15630-89-4", "sodium percarbonate", Kind::Salt),
    ("7647-14-5", "sodium chloride", Kind::Salt),
    ("64-19-7", "acetic acid", Kind::Acid),
    ("77-92-9", "citric acid", Kind::Acid),
    ("5949-29-1", "citric acid monohydrate", Kind::Acid),
    ("7664-38-2", "phosphoric acid", Kind::Acid),
    ("7647-01-0", "hydrochloric acid", Kind::Acid),
    ("7664-93-9", "sulfuric acid", Kind::Acid),
    ("7697-37-2", "nitric acid", Kind::Acid),
    ("5329-14-6", "sulfamic acid", Kind::Acid),
    ("50-21-5", "lactic acid", Kind::Acid),
    ("79-33-4", "L-lactic acid", Kind::Acid),
    ("79-14-1", "glycolic acid", Kind::Acid),
    ("64-18-6", "formic acid", Kind::Acid),
    ("144-62-7", "oxalic acid", Kind::Acid),
    ("75-75-2", "methanesulfonic acid", Kind::Acid),
    ("79-21-0", "peracetic acid", Kind::Acid),
    ("111-30-8", "glutaraldehyde", Kind::Aldehyde),
    ("50-00-0", "formaldehyde", Kind::Aldehyde),
    ("108-95-2", "phenol", Kind::Phenol),
    ("90-43-7", "2-phenylphenol", Kind::Phenol),
    ("7173-51-5", "didecyldimethylammonium chloride", Kind::Surfactant),
    ("68424-85-1", "benzyl-C12-16-alkyldimethylammonium chloride", Kind::Surfactant),
    ("68391-01-5", "benzyl-C12-18-alkyldimethylammonium chloride", Kind::Surfactant),
    ("8001-54-5", "benzalkonium chloride", Kind::Surfactant),
    ("151-21-3", "sodium dodecyl sulfate", Kind::Surfactant),
    ("68891-38-3", "sodium laureth sulfate", Kind::Surfactant),
    ("68411-30-3", "sodium alkylbenzenesulfonate", Kind::Surfactant),
    ("68439-46-3", "ethoxylated C9-11 alcohols", Kind::Surfactant),
    ("68131-39-5", "ethoxylated C12-15 alcohols", Kind::Surfactant),
    ("68515-73-1", "decyl glucoside", Kind::Surfactant),
    ("1643-20-5", "lauramine oxide", Kind::Surfactant),
    ("64-17-5", "ethanol", Kind::Additive),
    ("67-63-0", "isopropanol", Kind::Additive),
    ("111-76-2", "2-butoxyethanol", Kind::Additive),
    ("112-34-5", "diethylene glycol monobutyl ether", Kind::Additive),
    ("34590-94-8", "dipropylene glycol methyl ether", Kind::Additive),
    ("107-98-2", "propylene glycol methyl ether", Kind::Additive),
    ("57-55-6", "propylene glycol", Kind::Additive),
    ("107-21-1", "ethylene glycol", Kind::Additive),
    ("56-81-5", "glycerol", Kind::Additive),
    ("100-51-6", "benzyl alcohol", Kind::Additive),
    ("5989-27-5", "d-limonene", Kind::Additive),
];
