//! Weak acids and bases: how tightly they hold each proton, at 25 °C and no ionic strength.

use crate::source::Source;

/// A weak acid, or a weak base seen as the acid that it becomes with all its protons.
#[derive(Debug)]
pub struct Weak {
    /// What a chemist calls it.
    pub name: &'static str,
    /// The charge of the form with all its protons.
    pub charge: i8,
    /// pKa of each proton that it gives, in the order in which they go.
    pub pka: &'static [f64],
    /// Where they come from.
    pub source: Source,
}

/// Rows of one table: the name tells them apart.
impl PartialEq for Weak {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self, other) || self.name == other.name
    }
}

macro_rules! table {
    ($($(#[$doc:meta])* $row:ident: $name:literal, $charge:literal, $pka:expr, $source:expr;)*) => {
        $($(#[$doc])* pub static $row: Weak = Weak { name: $name, charge: $charge, pka: &$pka, source: $source };)*
        /// All rows.
        pub static ALL: &[&Weak] = &[$(&$row),*];
    };
}

const PHREEQC: Source = Source::published("USGS, PHREEQC 3, database phreeqc.dat");
const MINTEQ: Source = Source::published("USGS, PHREEQC 3, database minteq.v4.dat, after NIST 46");
const LIBRETEXTS: Source =
    Source::published("LibreTexts Chemistry, table E1: acid dissociation constants at 25 °C");
const SULFAMIC_KING: Source =
    Source::published("King and King, J. Am. Chem. Soc. 74 (1952) 1212: K = 0.103, between 0.08 and 0.11");
const GLYCOLIC_SALT: Source = Source::published(
    "Kilpatrick and Eanes, J. Am. Chem. Soc. 75 (1953), on glycolic acid in salt solutions: K = 1.45 and 1.51 × 10⁻⁴",
);
const GLUCONIC_TALANTA: Source =
    Source::published("Talanta 45 (1998) 1007: 3.92 ± 0.10; the lactone beside it is left out");
const LACTIC_ECHA: Source =
    Source::unverified("Martin and Tartar, as the ECHA dossier of lactic acid quotes them");
const OXALIC_COPY: Source = Source::unverified("LibreTexts Chemistry, table E1, from a copy of it");
const PYRO_COPY: Source = Source::unverified("LibreTexts Chemistry, table E1; the last two from memory");
const MORRIS: Source = Source::unverified(
    "Morris, J. Phys. Chem. 70 (1966) 3798, from memory; LibreTexts, table E1, gives 7.40",
);
const MEA_NBS: Source = Source::unverified(
    "Bates and Pinching, J. Res. NBS 46 (1951) 349, from memory; a printed table gives 9.49",
);
const DEA_NBS: Source = Source::unverified(
    "Bower, Robinson and Bates, J. Res. NBS 66A (1962), from memory; a printed table gives 9.00",
);
const TEA_NBS: Source = Source::published(
    "Bates and Allen, J. Res. NBS 64A (1960) 343: ΔH° 33,450 J/mol, ΔS° −36.4 J/(mol K), from which 7.76",
);
const OXIDE_MEMORY: Source = Source::unverified("from memory; it rises where the molecules gather");

table! {
    /// Carbonic acid, dissolved carbon dioxide counted in.
    CARBONIC: "carbonic acid", 0, [6.352, 10.329], PHREEQC;
    /// Acetic acid.
    ACETIC: "acetic acid", 0, [4.757], MINTEQ;
    /// Citric acid.
    CITRIC: "citric acid", 0, [3.128, 4.761, 6.396], MINTEQ;
    /// Formic acid.
    FORMIC: "formic acid", 0, [3.745], MINTEQ;
    /// Lactic acid.
    LACTIC: "lactic acid", 0, [3.857], LACTIC_ECHA;
    /// Glycolic acid.
    GLYCOLIC: "glycolic acid", 0, [3.83], GLYCOLIC_SALT;
    /// Gluconic acid.
    GLUCONIC: "gluconic acid", 0, [3.92], GLUCONIC_TALANTA;
    /// Tartaric acid.
    TARTARIC: "tartaric acid", 0, [3.036, 4.366], MINTEQ;
    /// Oxalic acid.
    OXALIC: "oxalic acid", 0, [1.25, 3.81], OXALIC_COPY;
    /// Sulfamic acid.
    SULFAMIC: "sulfamic acid", 0, [0.987], SULFAMIC_KING;
    /// Hydrogen sulfate: sulfuric acid without its first proton, which always goes.
    SULFURIC: "hydrogen sulfate", -1, [1.988], PHREEQC;
    /// Phosphoric acid.
    PHOSPHORIC: "phosphoric acid", 0, [2.168, 7.207, 12.346], PHREEQC;
    /// Pyrophosphoric acid.
    PYROPHOSPHORIC: "pyrophosphoric acid", 0, [0.91, 2.10, 6.70, 9.32], PYRO_COPY;
    /// Silicic acid, single molecules only.
    SILICIC: "silicic acid", 0, [9.83, 13.17], PHREEQC;
    /// Boric acid.
    BORIC: "boric acid", 0, [9.24], PHREEQC;
    /// Hypochlorous acid.
    HYPOCHLOROUS: "hypochlorous acid", 0, [7.53], MORRIS;
    /// Hydrogen peroxide.
    PEROXIDE: "hydrogen peroxide", 0, [11.7], LIBRETEXTS;
    /// Ammonium.
    AMMONIUM: "ammonium", 1, [9.252], PHREEQC;
    /// Ethanolamine with its proton.
    ETHANOLAMMONIUM: "ethanolammonium", 1, [9.498], MEA_NBS;
    /// Diethanolamine with its proton.
    DIETHANOLAMMONIUM: "diethanolammonium", 1, [8.883], DEA_NBS;
    /// Triethanolamine with its proton.
    TRIETHANOLAMMONIUM: "triethanolammonium", 1, [7.76], TEA_NBS;
    /// An amine oxide with its proton.
    AMINE_OXIDE: "hydroxyammonium of an amine oxide", 1, [4.65], OXIDE_MEMORY;
    /// EDTA with five protons.
    EDTA: "ethylenediaminetetraacetic acid", 1, [1.5, 2.16, 3.119, 6.273, 10.948], MINTEQ;
    /// NTA with four protons.
    NTA: "nitrilotriacetic acid", 1, [1.0, 2.0, 2.942, 10.278], MINTEQ;
}
