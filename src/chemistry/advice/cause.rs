//! Which statements of a label call for something to wear.

use super::rules;
use super::{Kind, Ppe};
use crate::chemistry::ghs::{Hazard, Precaution};
use crate::source::Source;

/// A statement that calls for something to wear, and where it is written that it does.
#[derive(Clone, Debug, PartialEq)]
pub struct Cause {
    /// The code as printed.
    pub code: &'static str,
    /// The word key of its text.
    pub key: String,
    /// Where it comes from.
    pub source: Source,
}

impl Ppe {
    /// The statements that call for it, in the order in which the label bears them. None where only missing
    /// information asks for it.
    ///
    /// ```
    /// use brimline::chemistry::advice::Ppe;
    /// use brimline::chemistry::ghs::codes;
    /// let read = codes::read("H314 H335 P280");
    /// let causes = Ppe::Gloves.causes(&read.hazards, &read.precautions);
    /// assert!(causes.iter().map(|one| one.code).eq(["H314", "P280"]));
    /// assert!(Ppe::Respirator.causes(&read.hazards, &read.precautions).is_empty());
    /// ```
    pub fn causes(self, hazards: &[&'static Hazard], precautions: &[&'static Precaution]) -> Vec<Cause> {
        let by_hazard = hazards.iter().filter_map(|hazard| {
            let calls = |rule: &&super::Measure| {
                rule.kind == Kind::Wear(self) && hazard.parts().any(|part| rule.when.contains(&part))
            };
            let rule = rules::ALL.iter().find(calls)?;
            Some(Cause { code: hazard.code, key: hazard.key(), source: rule.source })
        });
        let by_precaution = precautions.iter().filter_map(|one| {
            let calls =
                |(code, ppe): &&(&str, Self)| *ppe == self && one.code.split('+').any(|part| part == *code);
            rules::BY_PRECAUTION.iter().find(calls)?;
            Some(Cause { code: one.code, key: one.key(), source: Precaution::SOURCE })
        });
        by_hazard.chain(by_precaution).collect()
    }
}
