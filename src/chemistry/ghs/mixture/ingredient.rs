//! What is known of one ingredient.

use super::class::{Class, Endpoint};
use super::kind::{Kind, WATER};
use crate::chemistry::cas::{self, Cas};
use crate::chemistry::ghs::Hazard;
use crate::units::{MassFraction, Quantity};

/// One ingredient of the concentrate, as section 3 of its safety data sheet lists it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ingredient {
    /// Its name.
    pub name: String,
    /// Its number, where the sheet gives one.
    pub cas: Option<Cas>,
    /// The least of it in the concentrate, mass in mass, 0 to 1.
    pub low: MassFraction,
    /// The most of it.
    pub high: MassFraction,
    /// Its own hazard statements: none where they are not known, an empty list where it has none.
    pub hazards: Option<Vec<&'static Hazard>>,
    /// Whether it adds up.
    pub kind: Kind,
    /// Its acute toxicity estimate by mouth, mass for each body mass, above 0.
    pub oral: Option<MassFraction>,
    /// By skin.
    pub dermal: Option<MassFraction>,
    /// Its M factor for acute harm in water, 1 or above; not known where none is given.
    pub m_acute: Option<f64>,
    /// For long-lasting harm.
    pub m_chronic: Option<f64>,
}

impl Ingredient {
    /// The least and the most of it, 0 to 1. A wrong number never makes it less: what is not one counts as
    /// anything, and the greater of two is the most.
    pub(super) fn range(&self) -> (f64, f64) {
        let sound = |share: f64| (0.0..=1.0).contains(&share);
        let (low, high) = (self.low.si(), self.high.si());
        match (sound(low), sound(high)) {
            (true, true) => (low.min(high), low.max(high)),
            (true, false) => (low, 1.0),
            (false, true) => (0.0, high),
            (false, false) => (0.0, 1.0),
        }
    }

    /// Its hazards, where they are known. Water has none.
    pub(super) fn known(&self) -> Option<&[&'static Hazard]> {
        let water = || self.cas.is_some() && self.cas == cas::check(WATER);
        self.hazards.as_deref().or_else(|| water().then_some(&[]))
    }

    /// Its category for an endpoint.
    pub(super) fn category(&self, endpoint: Endpoint) -> Option<u8> {
        Class::among(self.known()?, endpoint).map(|class| class.category)
    }

    /// The M factor for an endpoint, where it is one.
    pub(super) fn multiplier(&self, endpoint: Endpoint) -> Option<f64> {
        let given = if endpoint == Endpoint::WaterAcute { self.m_acute } else { self.m_chronic };
        given.filter(|m| *m >= 1.0 && m.is_finite())
    }

    /// Whether it can bring a solution to an extreme pH: it burns or irritates, and is not of a kind that
    /// cannot; or nobody knows.
    pub(super) fn may_shift_ph(&self) -> bool {
        let harms = |endpoint| self.category(endpoint).is_some();
        self.kind.may_shift_ph() && (self.known().is_none() || harms(Endpoint::Skin) || harms(Endpoint::Eye))
    }
}
