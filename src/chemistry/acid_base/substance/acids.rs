//! Acids, and bases without a metal.

use super::{Brings, Makeup, Substance, just};
use crate::chemistry::acid_base::Weak;
use crate::chemistry::acid_base::weak::{
    ACETIC, AMINE_OXIDE, AMMONIUM, BORIC, CITRIC, DIETHANOLAMMONIUM, EDTA, ETHANOLAMMONIUM, FORMIC, GLUCONIC,
    GLYCOLIC, LACTIC, NTA, OXALIC, PEROXIDE, PHOSPHORIC, SULFAMIC, SULFURIC, TARTARIC, TRIETHANOLAMMONIUM,
};
use crate::source::Source;

const AMMONIA_WATER: Source = Source::unverified(
    "from memory: sheets count ammonia water as NH₃ or as NH₄OH, and do not always say which",
);

static ONE_AMMONIUM: [(&Weak, f64); 1] = [(&AMMONIUM, 1.0)];

const fn ammonia(molar_mass: f64) -> Makeup {
    Makeup { molar_mass, plus: 0.0, minus: 0.0, weak: &ONE_AMMONIUM }
}

/// The rows. A base without a metal brings no strong ions: it takes its protons from the water.
#[rustfmt::skip]
pub(super) static ALL: &[Substance] = &[
    just("64-19-7", "acetic acid", 60.052, 0.0, 0.0, &[(&ACETIC, 1.0)]),
    just("77-92-9", "citric acid", 192.124, 0.0, 0.0, &[(&CITRIC, 1.0)]),
    just("5949-29-1", "citric acid monohydrate", 210.139, 0.0, 0.0, &[(&CITRIC, 1.0)]),
    just("64-18-6", "formic acid", 46.025, 0.0, 0.0, &[(&FORMIC, 1.0)]),
    just("50-21-5", "lactic acid", 90.078, 0.0, 0.0, &[(&LACTIC, 1.0)]),
    just("79-33-4", "L-lactic acid", 90.078, 0.0, 0.0, &[(&LACTIC, 1.0)]),
    just("79-14-1", "glycolic acid", 76.051, 0.0, 0.0, &[(&GLYCOLIC, 1.0)]),
    just("526-95-4", "gluconic acid", 196.155, 0.0, 0.0, &[(&GLUCONIC, 1.0)]),
    just("87-69-4", "tartaric acid", 150.087, 0.0, 0.0, &[(&TARTARIC, 1.0)]),
    just("144-62-7", "oxalic acid", 90.035, 0.0, 0.0, &[(&OXALIC, 1.0)]),
    just("6153-56-6", "oxalic acid dihydrate", 126.065, 0.0, 0.0, &[(&OXALIC, 1.0)]),
    just("5329-14-6", "sulfamic acid", 97.094, 0.0, 0.0, &[(&SULFAMIC, 1.0)]),
    just("7664-38-2", "phosphoric acid", 97.995, 0.0, 0.0, &[(&PHOSPHORIC, 1.0)]),
    just("10043-35-3", "boric acid", 61.833, 0.0, 0.0, &[(&BORIC, 1.0)]),
    just("7722-84-1", "hydrogen peroxide", 34.015, 0.0, 0.0, &[(&PEROXIDE, 1.0)]),
    just("7647-01-0", "hydrochloric acid", 36.461, 0.0, 1.0, &[]),
    just("7697-37-2", "nitric acid", 63.013, 0.0, 1.0, &[]),
    just("75-75-2", "methanesulfonic acid", 96.106, 0.0, 1.0, &[]),
    just("27176-87-0", "dodecylbenzenesulfonic acid", 326.494, 0.0, 1.0, &[]),
    just("506-89-8", "urea hydrochloride", 96.516, 0.0, 1.0, &[]),
    just("7664-93-9", "sulfuric acid", 98.078, 0.0, 0.0, &[(&SULFURIC, 1.0)]),
    just("60-00-4", "EDTA", 292.243, 0.0, 0.0, &[(&EDTA, 1.0)]),
    just("139-13-9", "NTA", 191.139, 0.0, 0.0, &[(&NTA, 1.0)]),

    just("7664-41-7", "ammonia", 17.031, 0.0, 0.0, &[(&AMMONIUM, 1.0)]),
    Substance { cas: "1336-21-6", name: "ammonia water", brings: Brings::Between(ammonia(35.046), ammonia(17.031)), source: AMMONIA_WATER },
    just("141-43-5", "ethanolamine", 61.083, 0.0, 0.0, &[(&ETHANOLAMMONIUM, 1.0)]),
    just("111-42-2", "diethanolamine", 105.136, 0.0, 0.0, &[(&DIETHANOLAMMONIUM, 1.0)]),
    just("102-71-6", "triethanolamine", 149.188, 0.0, 0.0, &[(&TRIETHANOLAMMONIUM, 1.0)]),
    just("1643-20-5", "dodecyldimethylamine oxide", 229.402, 0.0, 0.0, &[(&AMINE_OXIDE, 1.0)]),
];
