//! Which rule governs the dose: the label, a minimum by law, the site's standard, or the machine.

use super::label::Window;
use crate::coded::coded;
use crate::units::{Quantity, Volume};

coded! {
    /// Where in a label's range to aim.
    #[derive(Default)]
    Aim {
        /// The least that the label allows: light soil.
        #[default]
        Low = "low",
        /// Half way.
        Middle = "middle",
        /// The most that the label allows: heavy soil.
        High = "high",
    }
}

impl Aim {
    /// Where it lies in a range.
    ///
    /// `low`, `low + (high − low) / 2` or `high`
    ///
    /// ```
    /// use brimline::trade::governing::Aim;
    /// use brimline::trade::label::Window;
    /// use brimline::units::Volume;
    /// let window = Window { low: Volume::new(2.0), high: Volume::new(4.0) };
    /// assert_eq!(Aim::Middle.within(window), Volume::new(3.0));
    /// ```
    pub fn within<Q: Quantity>(self, window: Window<Q>) -> Q {
        match self {
            Self::Low => window.low,
            Self::Middle => Q::from_si(window.low.si() + (window.high.si() - window.low.si()) * 0.5),
            Self::High => window.high,
        }
    }
}

coded! {
    /// A rule that sets an amount, or narrows it.
    Governs {
        /// The product label.
        Label = "label",
        /// A law, a code or an order that sets a least amount.
        Minimum = "minimum",
        /// The site's own written standard.
        Standard = "standard",
        /// The machine's own window.
        Machine = "machine",
    }
}

/// What one rule beside the label allows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bound {
    /// The rule.
    pub by: Governs,
    /// What it allows for this fill, m³; a least of nothing and an infinite greatest are open ends.
    pub window: Window<Volume>,
}

impl Bound {
    /// Whether the rule allows a dose.
    pub fn allows(&self, dose: Volume) -> bool {
        !above(dose, self.window.high) && !above(self.window.low, dose)
    }

    /// Whether the rule has an amount in common with a window, m³.
    pub fn meets(&self, other: Window<Volume>) -> bool {
        !above(self.window.low, other.high) && !above(other.low, self.window.high)
    }
}

/// The amount, the window it must stay in, and which rule set them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Governed {
    /// Concentrate to aim for, m³.
    pub dose: Volume,
    /// What the governing rules allow, m³.
    pub window: Window<Volume>,
    /// The rule that decided.
    pub governs: Governs,
    /// The machine has no amount in common with the other rules.
    pub clash: bool,
}

/// Holds a label's window for this fill against the other rules.
///
/// A rule that overlaps with those before it narrows them, and the dose is the aim within the label,
/// moved into what is left. A minimum or a standard that has nothing in common with the label is passed
/// over: neither may overrule it, and [`Bound::allows`] tells. Where the machine has nothing in common
/// with the rest, the smaller amount governs, and `clash` says so: less concentrate foams, marks and
/// burns less, and the other number must be shown beside it.
///
/// * `label`: what the label asks for this fill, m³.
/// * `bounds`: the other rules, in the order of their weight, the machine last.
/// * `aim`: where in the label's range.
///
/// Source: common practice (the tighter rule wins).
///
/// ```
/// use brimline::trade::governing::{Aim, Bound, Governs, govern};
/// use brimline::trade::label::Window;
/// use brimline::units::Volume;
/// let ounces = |low, high| Window { low: Volume::new(low), high: Volume::new(high) };
/// let machine = Bound { by: Governs::Machine, window: ounces(3.0, 6.0) };
/// let clash = govern(ounces(20.0, 20.0), &[machine], Aim::Low);
/// assert!(clash.clash && clash.governs == Governs::Machine && clash.dose == Volume::new(6.0));
/// let standard = Bound { by: Governs::Standard, window: ounces(12.0, 12.0) };
/// let narrowed = govern(ounces(10.0, 20.0), &[standard], Aim::Low);
/// assert!(narrowed.governs == Governs::Standard && narrowed.dose == Volume::new(12.0));
/// ```
pub fn govern(label: Window<Volume>, bounds: &[Bound], aim: Aim) -> Governed {
    let aimed = aim.within(label);
    let (mut window, mut low_by, mut high_by) = (label, Governs::Label, Governs::Label);
    for &Bound { by, window: other } in bounds {
        let (below, over) = (above(window.low, other.high), above(other.low, window.high));
        if below && by == Governs::Machine {
            return Governed { dose: other.high, window: other, governs: by, clash: true };
        } else if over && by == Governs::Machine {
            return Governed { dose: window.high, window, governs: high_by, clash: true };
        } else if !below && !over {
            if above(window.high, other.high) {
                (window.high, high_by) = (other.high, by);
            }
            if above(other.low, window.low) {
                (window.low, low_by) = (other.low.min(window.high), by);
            }
        }
    }
    let dose = aimed.max(window.low).min(window.high);
    let governs = if above(dose, aimed) {
        low_by
    } else if above(aimed, dose) {
        high_by
    } else {
        Governs::Label
    };
    Governed { dose, window, governs, clash: false }
}

/// Whether `a` is more than `b` by more than rounding: 20 fl oz from a ratio and 20 fl oz as typed
/// are one amount.
fn above(a: Volume, b: Volume) -> bool {
    a > b * (1.0 + 1e-9)
}
