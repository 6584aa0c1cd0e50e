//! The table of measures: which hazard statements call for what.

use super::{Kind, Measure, Ppe};
use crate::chemistry::ghs::Route;
use crate::source::Source;

/// Which precautions go with which hazard class.
const MATRIX: Source = Source::unverified(
    "UN GHS, ST/SG/AC.10/30, Annex 3, section 3 (matrix of precautionary statements); from memory",
);
/// Clothing and boots against splashes while pouring concentrate.
const CUSTOM: Source = Source::COMMON_PRACTICE;

const CORROSIVE: &[&str] = &["H314"];
const EYE_BURN: &[&str] = &["H314", "H318"];
const TOXIC_SKIN: &[&str] = &["H310", "H311"];
const HARM_SKIN: &[&str] = &["H312", "H313", "H315", "H316", "H317"];
const TOXIC_AIR: &[&str] = &["H330", "H331", "H334"];
const HARM_AIR: &[&str] = &["H332", "H333", "H335", "H336"];
const LATER: &[&str] = &["H340", "H341", "H350", "H351", "H360", "H361", "H362"];
const ORGANS: &[&str] = &["H370", "H371", "H372", "H373"];
const BURNS: &[&str] = &[
    "H206", "H207", "H208", "H220", "H221", "H222", "H223", "H224", "H225", "H226", "H227", "H228", "H229",
    "H230", "H231", "H232", "H241", "H242", "H250", "H251", "H252", "H260", "H261", "H282", "H283",
];
const EXPLODES: &[&str] =
    &["H200", "H201", "H202", "H203", "H204", "H205", "H209", "H210", "H211", "H240", "H241"];
const OXIDISES: &[&str] = &["H270", "H271", "H272"];
const PRESSURE: &[&str] = &["H229", "H280", "H281", "H282", "H283", "H284"];
const COLD: &[&str] = &["H281"];
const AQUATIC: &[&str] = &["H400", "H401", "H402", "H410", "H411", "H412", "H413"];

/// No statement calls for it: only missing information does.
const NOTHING: &[&str] = &[];

const fn rule(
    kind: Kind,
    key: &'static str,
    rests_on: &'static str,
    when: &'static [&'static str],
) -> Measure {
    Measure { kind, key, rests_on, when, cautious: false, urgent: false, source: MATRIX }
}

impl Measure {
    /// Also given when hazard information is missing.
    const fn or_unknown(mut self) -> Self {
        self.cautious = true;
        self
    }

    /// Replaces the milder first aid of the same route.
    const fn urgent(mut self) -> Self {
        self.urgent = true;
        self
    }

    /// Rests on what the trade does rather than on the standard's matrix.
    const fn custom(mut self) -> Self {
        self.source = CUSTOM;
        self
    }
}

const fn wear(ppe: Ppe, rests_on: &'static str, when: &'static [&'static str]) -> Measure {
    rule(Kind::Wear(ppe), ppe.key(), rests_on, when)
}

/// What precautionary statements ask to wear, by their wording (UN GHS, Annex 3, section 2; from memory).
pub(super) static BY_PRECAUTION: &[(&str, Ppe)] = &[
    ("P280", Ppe::Gloves),
    ("P280", Ppe::Goggles),
    ("P281", Ppe::Gloves),
    ("P281", Ppe::Goggles),
    ("P282", Ppe::Gloves),
    ("P282", Ppe::FaceShield),
    ("P283", Ppe::Apron),
    ("P271", Ppe::Ventilation),
    ("P284", Ppe::Respirator),
    ("P285", Ppe::Respirator),
];

/// The table. Rows with the same key are shown once.
#[rustfmt::skip]
pub(super) static ALL: &[Measure] = &[
    wear(Ppe::Gloves, "P280", CORROSIVE).or_unknown(),
    wear(Ppe::Gloves, "P280", TOXIC_SKIN),
    wear(Ppe::Gloves, "P280", HARM_SKIN),
    wear(Ppe::Gloves, "P280", LATER),
    wear(Ppe::Gloves, "P280", BURNS),
    wear(Ppe::Gloves, "P280", OXIDISES),
    wear(Ppe::Gloves, "P282", COLD),
    wear(Ppe::Goggles, "P280", &["H314", "H318", "H319", "H320"]).or_unknown(),
    wear(Ppe::Goggles, "P280", LATER),
    wear(Ppe::Goggles, "P280", BURNS),
    wear(Ppe::Goggles, "P280", OXIDISES),
    wear(Ppe::Goggles, "P280", EXPLODES),
    wear(Ppe::Goggles, "P282", COLD),
    wear(Ppe::FaceShield, "P280", EYE_BURN).or_unknown(),
    wear(Ppe::FaceShield, "P280", EXPLODES),
    wear(Ppe::Apron, "P280", CORROSIVE).or_unknown(),
    wear(Ppe::Apron, "P280", TOXIC_SKIN),
    wear(Ppe::Apron, "P280", &["H312"]),
    wear(Ppe::Apron, "P280", LATER),
    wear(Ppe::Apron, "P283", &["H271"]),
    wear(Ppe::Boots, "P280", CORROSIVE).or_unknown().custom(),
    wear(Ppe::Boots, "P280", TOXIC_SKIN).custom(),
    wear(Ppe::Ventilation, "P271", TOXIC_AIR).or_unknown(),
    wear(Ppe::Ventilation, "P271", HARM_AIR),
    wear(Ppe::Ventilation, "P260", CORROSIVE),
    wear(Ppe::Ventilation, "P260", ORGANS),
    wear(Ppe::Ventilation, "P403+P233", BURNS).custom(),
    wear(Ppe::Respirator, "P284", TOXIC_AIR),

    rule(Kind::Handle, "handle-read-first", "P103", NOTHING).or_unknown(),
    rule(Kind::Handle, "handle-no-mist", "P260", CORROSIVE).or_unknown(),
    rule(Kind::Handle, "handle-no-mist", "P260", ORGANS),
    rule(Kind::Handle, "handle-no-mist", "P260", TOXIC_AIR),
    rule(Kind::Handle, "handle-no-mist", "P261", HARM_AIR),
    rule(Kind::Handle, "handle-no-mist", "P261", &["H317"]),
    rule(Kind::Handle, "handle-off-skin", "P262", TOXIC_SKIN).or_unknown(),
    rule(Kind::Handle, "handle-off-skin", "P262", CORROSIVE),
    rule(Kind::Handle, "handle-wash", "P264", &["H300", "H301", "H302", "H310", "H311", "H314", "H315", "H318", "H319", "H320"]).or_unknown(),
    rule(Kind::Handle, "handle-no-eating", "P270", &["H300", "H301", "H302", "H310", "H362", "H370", "H371", "H372"]).or_unknown(),
    rule(Kind::Handle, "handle-no-flame", "P210", BURNS).or_unknown(),
    rule(Kind::Handle, "handle-no-flame", "P210", EXPLODES),
    rule(Kind::Handle, "handle-no-flame", "P210", OXIDISES),
    rule(Kind::Handle, "handle-work-clothes", "P272", &["H317"]),
    rule(Kind::Handle, "handle-instructions", "P201", LATER),
    rule(Kind::Handle, "handle-instructions", "P201", EXPLODES),
    rule(Kind::Handle, "handle-not-to-drain", "P273", AQUATIC).or_unknown(),

    rule(Kind::FirstAid(Route::Eye), "first-aid-eye-urgent", "P305+P351+P338", EYE_BURN).urgent().or_unknown(),
    rule(Kind::FirstAid(Route::Eye), "first-aid-eye-urgent", "P336+P315", COLD).urgent(),
    rule(Kind::FirstAid(Route::Eye), "first-aid-eye", "P305+P351+P338", &["H319", "H320"]),
    rule(Kind::FirstAid(Route::Skin), "first-aid-skin-urgent", "P303+P361+P353", CORROSIVE).urgent().or_unknown(),
    rule(Kind::FirstAid(Route::Skin), "first-aid-skin-urgent", "P302+P352", TOXIC_SKIN).urgent(),
    rule(Kind::FirstAid(Route::Skin), "first-aid-skin", "P302+P352", HARM_SKIN),
    rule(Kind::FirstAid(Route::Breathe), "first-aid-breathe-urgent", "P304+P340", TOXIC_AIR).urgent().or_unknown(),
    rule(Kind::FirstAid(Route::Breathe), "first-aid-breathe-urgent", "P304+P340", CORROSIVE).urgent(),
    rule(Kind::FirstAid(Route::Breathe), "first-aid-breathe", "P304+P340", HARM_AIR),
    rule(Kind::FirstAid(Route::Swallow), "first-aid-swallow-urgent", "P301+P330+P331", CORROSIVE).urgent().or_unknown(),
    rule(Kind::FirstAid(Route::Swallow), "first-aid-swallow-urgent", "P301+P310", &["H300", "H301", "H304", "H305"]).urgent(),
    rule(Kind::FirstAid(Route::Swallow), "first-aid-swallow", "P301+P312", &["H302", "H303"]),
    rule(Kind::FirstAid(Route::Exposed), "first-aid-exposed-urgent", "P308+P311", &["H370", "H371"]).urgent().or_unknown(),
    rule(Kind::FirstAid(Route::Exposed), "first-aid-exposed", "P308+P313", LATER),
    rule(Kind::FirstAid(Route::Exposed), "first-aid-exposed", "P314", &["H372", "H373"]),

    rule(Kind::Spill, "spill-keep-away", "P280", CORROSIVE).or_unknown(),
    rule(Kind::Spill, "spill-keep-away", "P280", TOXIC_SKIN),
    rule(Kind::Spill, "spill-keep-away", "P284", TOXIC_AIR),
    rule(Kind::Spill, "spill-no-flame", "P381", BURNS).or_unknown(),
    rule(Kind::Spill, "spill-absorb", "P390", &["H290", "H314"]).or_unknown(),
    rule(Kind::Spill, "spill-collect", "P391", &["H400", "H410", "H411"]).or_unknown(),

    rule(Kind::Store, "store-locked", "P405", &["H300", "H301", "H304", "H310", "H311", "H314", "H330", "H331", "H370", "H371"]).or_unknown(),
    rule(Kind::Store, "store-locked", "P405", LATER),
    rule(Kind::Store, "store-closed-aired", "P403+P233", TOXIC_AIR).or_unknown(),
    rule(Kind::Store, "store-closed-aired", "P403+P233", HARM_AIR),
    rule(Kind::Store, "store-cool", "P403+P235", BURNS),
    rule(Kind::Store, "store-no-sun", "P410+P403", PRESSURE),
    rule(Kind::Store, "store-away-from-fuel", "P220", OXIDISES).or_unknown(),
    rule(Kind::Store, "store-original", "P234", &["H290", "H240", "H241", "H242"]).or_unknown(),
    rule(Kind::Store, "store-resistant", "P406", &["H290"]),

    rule(Kind::Dispose, "dispose-by-rules", "P501", &[
        "H225", "H226", "H271", "H272", "H300", "H301", "H302", "H304", "H310", "H311", "H312", "H314", "H317",
        "H330", "H331", "H332", "H334", "H335", "H336", "H340", "H341", "H350", "H351", "H360", "H361",
        "H370", "H371", "H372", "H373", "H400", "H410", "H411", "H412", "H413", "H420",
    ]).or_unknown(),
    rule(Kind::Dispose, "dispose-by-rules", "P501", EXPLODES),
];
