//! What to wear, how to give first aid, and how to handle, clean up, store and dispose of a product,
//! from its hazard statements.
//!
//! Each measure rests on a precautionary statement. The label's own P statements, the safety data
//! sheet and local codes govern; this is what to do until they were read, and a reminder after.

mod cause;
mod rules;

use super::ghs::{Hazard, Knowledge, Precaution, Route};
use crate::source::Source;
pub use cause::Cause;

/// Something to wear, or air to provide, when handling a product.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Ppe {
    /// Gloves that resist the product.
    Gloves,
    /// Splash goggles, closed all round.
    Goggles,
    /// A face shield, over goggles.
    FaceShield,
    /// An apron or other clothing that sheds the product.
    Apron,
    /// Boots that shed the product.
    Boots,
    /// Fresh air: open doors, a fan, an extractor.
    Ventilation,
    /// A respirator, chosen and fitted by someone qualified.
    Respirator,
}

impl Ppe {
    /// All of them, in the order they are shown.
    pub const ALL: [Self; 7] = [
        Self::Gloves,
        Self::Goggles,
        Self::FaceShield,
        Self::Apron,
        Self::Boots,
        Self::Ventilation,
        Self::Respirator,
    ];

    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Gloves => "ppe-gloves",
            Self::Goggles => "ppe-goggles",
            Self::FaceShield => "ppe-face-shield",
            Self::Apron => "ppe-apron",
            Self::Boots => "ppe-boots",
            Self::Ventilation => "ppe-ventilation",
            Self::Respirator => "ppe-respirator",
        }
    }
}

/// What a measure is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Kind {
    /// Something to wear or air to provide.
    Wear(Ppe),
    /// How to work with it.
    Handle,
    /// What to do when it has reached a person.
    FirstAid(Route),
    /// What to do with a spill.
    Spill,
    /// Where to keep it.
    Store,
    /// How to get rid of it.
    Dispose,
}

/// One measure and the reason for it.
#[derive(Debug, PartialEq, Eq)]
pub struct Measure {
    /// What it is for.
    pub kind: Kind,
    /// The word key of what to do.
    pub key: &'static str,
    /// The precautionary statement it rests on.
    pub rests_on: &'static str,
    /// The single H codes that call for it.
    when: &'static [&'static str],
    /// Whether it is also given when hazard information is missing.
    pub cautious: bool,
    /// First aid only: replaces the milder measure of the same route.
    pub urgent: bool,
    /// Where the rule comes from.
    pub source: Source,
}

/// The measures a product calls for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Advice {
    /// In the order they are shown.
    pub measures: Vec<&'static Measure>,
    /// True when hazard information was missing and the cautious set was added.
    pub cautious: bool,
}

impl Advice {
    /// With what the label's own precautionary statements ask to wear. P280 stands for gloves, clothing and eye
    /// or face protection alike, and its code does not say which: gloves and goggles are counted.
    ///
    /// ```
    /// use brimline::chemistry::advice::{Ppe, advise};
    /// use brimline::chemistry::ghs::{Knowledge, codes};
    /// let read = codes::read("H319 P280");
    /// let advice = advise(&read.hazards, Knowledge::Full).with_precautions(&read.precautions);
    /// assert!(advice.ppe().eq([Ppe::Gloves, Ppe::Goggles]));
    /// ```
    #[must_use]
    pub fn with_precautions(mut self, precautions: &[&'static Precaution]) -> Self {
        let stands = |code: &str| precautions.iter().any(|one| one.code.split('+').any(|part| part == code));
        for (_, ppe) in rules::BY_PRECAUTION.iter().filter(|(code, _)| stands(code)) {
            if let Some(measure) = rules::ALL.iter().find(|measure| measure.kind == Kind::Wear(*ppe)) {
                put(&mut self.measures, measure);
            }
        }
        self
    }

    /// What to wear and what air to provide.
    pub fn ppe(&self) -> impl Iterator<Item = Ppe> {
        self.measures.iter().filter_map(|measure| match measure.kind {
            Kind::Wear(ppe) => Some(ppe),
            _ => None,
        })
    }

    /// The measures of one kind; for first aid see [`Advice::first_aid`].
    pub fn of(&self, kind: Kind) -> impl Iterator<Item = &'static Measure> {
        self.measures.iter().copied().filter(move |measure| measure.kind == kind)
    }

    /// First aid, route by route.
    pub fn first_aid(&self) -> impl Iterator<Item = &'static Measure> {
        self.measures.iter().copied().filter(|measure| matches!(measure.kind, Kind::FirstAid(_)))
    }
}

/// What these hazards call for; with partial knowledge the cautious set is added to it.
///
/// ```
/// use brimline::chemistry::advice::{Ppe, advise};
/// use brimline::chemistry::ghs::{Knowledge, codes};
/// let eye_damage = advise(&codes::read("H318").hazards, Knowledge::Full);
/// assert!(eye_damage.ppe().eq([Ppe::Goggles, Ppe::FaceShield]));
/// let nothing_known = advise(&[], Knowledge::Partial);
/// assert!(nothing_known.cautious && nothing_known.ppe().any(|ppe| ppe == Ppe::Gloves));
/// ```
pub fn advise(hazards: &[&'static Hazard], knowledge: Knowledge) -> Advice {
    let cautious = knowledge == Knowledge::Partial;
    let called_for = |measure: &Measure| {
        (cautious && measure.cautious)
            || hazards.iter().any(|hazard| hazard.parts().any(|part| measure.when.contains(&part)))
    };
    let mut measures: Vec<&'static Measure> =
        rules::ALL.iter().filter(|measure| called_for(measure)).collect();
    let urgent: Vec<Kind> =
        measures.iter().filter(|measure| measure.urgent).map(|measure| measure.kind).collect();
    measures.retain(|measure| {
        measure.urgent || !matches!(measure.kind, Kind::FirstAid(_)) || !urgent.contains(&measure.kind)
    });
    // Put in place one by one: a handful, for which a general sort would be two kilobytes of the page.
    let mut placed: Vec<&'static Measure> = Vec::new();
    for measure in measures {
        put(&mut placed, measure);
    }
    Advice { measures: placed, cautious }
}

/// Each key once, in the order shown.
fn put(placed: &mut Vec<&'static Measure>, measure: &'static Measure) {
    if placed.iter().all(|one| one.key != measure.key) {
        placed.insert(placed.partition_point(|one| one.kind <= measure.kind), measure);
    }
}

/// The word keys of measures.
pub fn word_keys() -> impl Iterator<Item = String> {
    rules::ALL.iter().map(|measure| measure.key.to_owned())
}
