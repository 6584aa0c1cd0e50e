//! Lyes, and salts with a metal or with ammonium.

use super::{Brings, Makeup, Substance, just};
use crate::chemistry::acid_base::Weak;
use crate::chemistry::acid_base::weak::{
    ACETIC, AMMONIUM, BORIC, CARBONIC, CITRIC, EDTA, FORMIC, GLUCONIC, HYPOCHLOROUS, LACTIC, NTA, PEROXIDE,
    PHOSPHORIC, PYROPHOSPHORIC, SILICIC, SULFURIC,
};
use crate::source::Source;

const BLEACH_LIMIT: Source = Source::published(
    "British Pharmacopoeia, Strong Sodium Hypochlorite Solution: up to 1.8 % alkali, as NaOH, beside 8 % available chlorine or more",
);
const WATER_GLASS: Source =
    Source::unverified("from memory: water glasses hold 1.6 to 3.9 moles of SiO₂ for each of Na₂O or K₂O");

static ONE_HYPOCHLORITE: [(&Weak, f64); 1] = [(&HYPOCHLOROUS, 1.0)];
static MUCH_SILICA: [(&Weak, f64); 1] = [(&SILICIC, SILICA[0])];
static LITTLE_SILICA: [(&Weak, f64); 1] = [(&SILICIC, SILICA[1])];

/// Bleach holds caustic soda that no sheet needs to list: nothing, up to what the limit allows,
/// (1.8 / 39.997) / (8 / 70.906) = 0.40 mol for each of hypochlorite.
const fn bleach(caustic: f64) -> Makeup {
    Makeup { molar_mass: 74.442, plus: 1.0 + caustic, minus: 0.0, weak: &ONE_HYPOCHLORITE }
}

/// One mole of the alkali's oxide, with the silica that may come with it, 60.084 g/mol.
const fn glass(oxide: f64) -> Brings {
    const fn one(oxide: f64, silica: f64, weak: &'static [(&'static Weak, f64)]) -> Makeup {
        Makeup { molar_mass: oxide + 60.084 * silica, plus: 2.0, minus: 0.0, weak }
    }
    Brings::Between(one(oxide, SILICA[0], &MUCH_SILICA), one(oxide, SILICA[1], &LITTLE_SILICA))
}

/// Moles of silica for each of the oxide: the most acid glass, and the most alkaline.
const SILICA: [f64; 2] = [3.9, 1.6];

/// The rows.
#[rustfmt::skip]
pub(super) static ALL: &[Substance] = &[
    just("1310-73-2", "sodium hydroxide", 39.997, 1.0, 0.0, &[]),
    just("1310-58-3", "potassium hydroxide", 56.106, 1.0, 0.0, &[]),
    just("497-19-8", "sodium carbonate", 105.988, 2.0, 0.0, &[(&CARBONIC, 1.0)]),
    just("584-08-7", "potassium carbonate", 138.206, 2.0, 0.0, &[(&CARBONIC, 1.0)]),
    just("144-55-8", "sodium hydrogencarbonate", 84.007, 1.0, 0.0, &[(&CARBONIC, 1.0)]),
    just("298-14-6", "potassium hydrogencarbonate", 100.115, 1.0, 0.0, &[(&CARBONIC, 1.0)]),
    just("533-96-0", "sodium sesquicarbonate", 189.995, 3.0, 0.0, &[(&CARBONIC, 2.0)]),
    just("15630-89-4", "sodium percarbonate", 314.021, 4.0, 0.0, &[(&CARBONIC, 2.0), (&PEROXIDE, 3.0)]),
    just("6834-92-0", "sodium metasilicate", 122.063, 2.0, 0.0, &[(&SILICIC, 1.0)]),
    just("10213-79-3", "sodium metasilicate pentahydrate", 212.140, 2.0, 0.0, &[(&SILICIC, 1.0)]),
    just("13517-24-3", "sodium metasilicate nonahydrate", 284.201, 2.0, 0.0, &[(&SILICIC, 1.0)]),
    Substance { cas: "1344-09-8", name: "sodium silicate, water glass", brings: glass(61.979), source: WATER_GLASS },
    Substance { cas: "1312-76-1", name: "potassium silicate, water glass", brings: glass(94.196), source: WATER_GLASS },
    just("7601-54-9", "trisodium phosphate", 163.941, 3.0, 0.0, &[(&PHOSPHORIC, 1.0)]),
    just("10101-89-0", "trisodium phosphate dodecahydrate", 380.124, 3.0, 0.0, &[(&PHOSPHORIC, 1.0)]),
    just("7558-79-4", "disodium phosphate", 141.959, 2.0, 0.0, &[(&PHOSPHORIC, 1.0)]),
    just("7558-80-7", "monosodium phosphate", 119.977, 1.0, 0.0, &[(&PHOSPHORIC, 1.0)]),
    just("7778-53-2", "tripotassium phosphate", 212.266, 3.0, 0.0, &[(&PHOSPHORIC, 1.0)]),
    just("7758-11-4", "dipotassium phosphate", 174.176, 2.0, 0.0, &[(&PHOSPHORIC, 1.0)]),
    just("7778-77-0", "monopotassium phosphate", 136.086, 1.0, 0.0, &[(&PHOSPHORIC, 1.0)]),
    just("7722-88-5", "tetrasodium pyrophosphate", 265.902, 4.0, 0.0, &[(&PYROPHOSPHORIC, 1.0)]),
    just("7320-34-5", "tetrapotassium pyrophosphate", 330.336, 4.0, 0.0, &[(&PYROPHOSPHORIC, 1.0)]),
    just("1330-43-4", "sodium tetraborate", 201.219, 2.0, 0.0, &[(&BORIC, 4.0)]),
    just("1303-96-4", "borax", 381.372, 2.0, 0.0, &[(&BORIC, 4.0)]),
    Substance { cas: "7681-52-9", name: "sodium hypochlorite", brings: Brings::Between(bleach(0.0), bleach(0.4)), source: BLEACH_LIMIT },
    just("7681-38-1", "sodium hydrogensulfate", 120.060, 1.0, 0.0, &[(&SULFURIC, 1.0)]),
    just("7757-82-6", "sodium sulfate", 142.042, 2.0, 0.0, &[(&SULFURIC, 1.0)]),
    just("7647-14-5", "sodium chloride", 58.443, 1.0, 1.0, &[]),
    just("7447-40-7", "potassium chloride", 74.551, 1.0, 1.0, &[]),
    just("7631-99-4", "sodium nitrate", 84.995, 1.0, 1.0, &[]),
    just("12125-02-9", "ammonium chloride", 53.492, 0.0, 1.0, &[(&AMMONIUM, 1.0)]),
    just("127-09-3", "sodium acetate", 82.034, 1.0, 0.0, &[(&ACETIC, 1.0)]),
    just("141-53-7", "sodium formate", 68.007, 1.0, 0.0, &[(&FORMIC, 1.0)]),
    just("72-17-3", "sodium lactate", 112.060, 1.0, 0.0, &[(&LACTIC, 1.0)]),
    just("527-07-1", "sodium gluconate", 218.137, 1.0, 0.0, &[(&GLUCONIC, 1.0)]),
    just("299-27-4", "potassium gluconate", 234.246, 1.0, 0.0, &[(&GLUCONIC, 1.0)]),
    just("68-04-2", "trisodium citrate", 258.069, 3.0, 0.0, &[(&CITRIC, 1.0)]),
    just("6132-04-3", "trisodium citrate dihydrate", 294.100, 3.0, 0.0, &[(&CITRIC, 1.0)]),
    just("866-84-2", "tripotassium citrate", 306.395, 3.0, 0.0, &[(&CITRIC, 1.0)]),
    just("64-02-8", "tetrasodium EDTA", 380.170, 4.0, 0.0, &[(&EDTA, 1.0)]),
    just("150-38-9", "trisodium EDTA", 358.190, 3.0, 0.0, &[(&EDTA, 1.0)]),
    just("139-33-3", "disodium EDTA", 336.207, 2.0, 0.0, &[(&EDTA, 1.0)]),
    just("6381-92-6", "disodium EDTA dihydrate", 372.237, 2.0, 0.0, &[(&EDTA, 1.0)]),
    just("5064-31-3", "trisodium NTA", 257.084, 3.0, 0.0, &[(&NTA, 1.0)]),
];
