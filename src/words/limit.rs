//! The limits of what can be typed, told in the unit that it is typed in.

use super::{Argument, Words};
use crate::form::Field;
use crate::limits::Limit;
use crate::number::floor_log10;
use crate::units::{Unit, unit};

/// Which end of a limit is told.
#[derive(Clone, Copy)]
pub(super) enum End {
    /// The least that is accepted.
    Least,
    /// The most.
    Most,
}

impl Words {
    /// The least and the greatest number that a field takes, in the unit beside it. None where that measures something
    /// else than the limit, as a share by mass beside one by volume: in between stands a density.
    pub fn limits(&self, field: Field, code: &str) -> Option<String> {
        if unit(code).is_some_and(|unit| unit.dimension != field.limit().dimension) {
            return None;
        }
        let bound = |end: End| Argument::text(self.bound(field.limit(), end, Some(field), code));
        Some(self.tell("field-limit", &[("low", bound(End::Least)), ("high", bound(End::Most))]))
    }

    /// A limit in the unit that the user typed in, where it measures the same.
    pub(super) fn bound(&self, limit: &Limit, end: End, field: Option<Field>, code: &str) -> String {
        let fits = |unit: &&Unit| unit.dimension == limit.dimension;
        let own = unit(code).filter(fits);
        let usual = || field.and_then(|field| field.units().iter().filter_map(|code| unit(code)).find(fits));
        let si = match end {
            End::Least => limit.low,
            End::Most => limit.high,
        };
        match own.or_else(usual) {
            Some(unit) => self.in_unit(unit.to_si(short(unit.from_si(si), end)), unit),
            None => self.number(si),
        }
    }
}

/// A limit that is a round number in one unit is none in another: 10 mL/min are 0.002 641 7 gal/min. What has more than
/// three digits is told with two, the least rounded up and the most down, so that what is told is always accepted.
fn short(number: f64, end: End) -> f64 {
    if number == 0.0 || !number.is_finite() {
        return number;
    }
    // The place of the second digit.
    let place = 10_f64.powi(floor_log10(number.abs()) - 1);
    let (two, three) = (number / place, number / place * 10.0);
    // What a conversion may round away is no digit.
    if (three - three.round()).abs() < 1e-9 * three.abs() {
        return number;
    }
    place
        * match end {
            End::Least => two.ceil(),
            End::Most => two.floor(),
        }
}
