//! What to wear, what must never meet and what foams, written down a second time with their sources.

use brimline::chemistry::family::Family;
use std::collections::BTreeSet;

const CAUTIOUS: &[&str] =
    &["ppe-gloves", "ppe-goggles", "ppe-face-shield", "ppe-apron", "ppe-boots", "ppe-ventilation"];

/// What each statement calls for. UN GHS (ST/SG/AC.10/30), annex 3, section 3: P280 for H314 names gloves,
/// clothing, eye and face protection, for H318 eye and face, for H319 eyes, for H315 and H317 gloves; P271 for
/// H335 outdoors or well aired; P260 for H314 no mist. From memory. Boots: common practice, no source.
const CALLS_FOR: &[(&str, &[&str])] = &[
    ("H314", CAUTIOUS),
    ("H318", &["ppe-goggles", "ppe-face-shield"]),
    ("H319", &["ppe-goggles"]),
    ("H315", &["ppe-gloves"]),
    ("H317", &["ppe-gloves"]),
    ("H335", &["ppe-ventilation"]),
    ("H226", &["ppe-gloves", "ppe-goggles", "ppe-ventilation"]),
    ("H290", &[]),
    ("H302", &[]),
    ("H410", &[]),
    ("P280", &["ppe-gloves", "ppe-goggles"]),
];

/// Whether a code calls for something to wear.
pub fn calls_for(code: &str, piece: &str) -> bool {
    CALLS_FOR.iter().any(|(one, wear)| *one == code && wear.contains(&piece))
}

/// What a label calls for; the cautious set is added where it was not read in full.
pub fn wear(codes: &str, signal: &str) -> BTreeSet<&'static str> {
    let of = |code: &str| CALLS_FOR.iter().find(|(one, _)| *one == code).map(|(_, wear)| *wear);
    let mut out: BTreeSet<&str> = codes.split_whitespace().filter_map(of).flatten().copied().collect();
    let hazards = codes.split_whitespace().any(|code| code.starts_with('H'));
    if signal == "ghs-signal-unknown" || (signal != "ghs-signal-none" && !hazards) {
        out.extend(CAUTIOUS);
    }
    out
}

/// Which two must never meet: bleach with acid and ammonia (CDC, MMWR 40(36), 1991; OSHA 3511), with alcohol
/// (NFPA, 2020) and peroxide (from memory), peroxide with acid (NFPA, 2020), acid with alkali where one is strong
/// (40 CFR 265, appendix V, group 1), oxidizers with what burns (group 6; from memory), soap with quats (University
/// of Iowa, 8.2.9).
pub fn never(one: Family, other: Family) -> bool {
    use Family::{
        Acid, Alcohol, Alkali, Ammonia, HypochloriteBleach, Oxidiser, Peroxide, Quat, Soap, Solvent,
        StrongAcid, StrongAlkali,
    };
    let one_way = |a: Family, b: Family| {
        matches!(
            (a, b),
            (HypochloriteBleach, Acid | StrongAcid | Ammonia | Alcohol | Peroxide)
                | (Peroxide, Acid | StrongAcid)
                | (Acid | StrongAcid, StrongAlkali)
                | (StrongAcid, Alkali)
                | (Oxidiser, Solvent | Alcohol)
                | (Quat, Soap)
        )
    };
    one_way(one, other) || one_way(other, one)
}
