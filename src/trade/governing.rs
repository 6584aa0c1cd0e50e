//! Which rule governs the dose: the label or the machine.

use super::label::Window;
use crate::coded::coded;
use crate::units::Volume;

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

/// Which rule decides the amount.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Governs {
    /// The product label.
    Label,
    /// The machine's own window.
    Machine,
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
    /// The two rules have no amount in common.
    pub clash: bool,
}

/// Holds a label's window for this fill against the machine's.
///
/// Where they overlap the dose is the aim within the label, moved into the overlap. Where they have
/// nothing in common the rule with the smaller amount governs, and `clash` says so: less concentrate
/// foams, marks and burns less, and the other number must be shown beside it.
///
/// * `label`: what the label asks for this fill, m³.
/// * `machine`: what the machine takes for this fill, m³, if it has a window.
/// * `aim`: where in the label's range.
///
/// Source: common practice (the tighter rule wins).
///
/// ```
/// use brimline::trade::governing::{Aim, Governs, govern};
/// use brimline::trade::label::Window;
/// use brimline::units::Volume;
/// let ounces = |low, high| Window { low: Volume::new(low), high: Volume::new(high) };
/// let clash = govern(ounces(20.0, 20.0), Some(ounces(3.0, 6.0)), Aim::Low);
/// assert!(clash.clash && clash.governs == Governs::Machine && clash.dose == Volume::new(6.0));
/// ```
pub fn govern(label: Window<Volume>, machine: Option<Window<Volume>>, aim: Aim) -> Governed {
    let aimed = match aim {
        Aim::Low => label.low,
        Aim::Middle => label.low + (label.high - label.low) * 0.5,
        Aim::High => label.high,
    };
    let Some(machine) = machine else {
        return Governed { dose: aimed, window: label, governs: Governs::Label, clash: false };
    };
    if above(label.low, machine.high) {
        Governed { dose: machine.high, window: machine, governs: Governs::Machine, clash: true }
    } else if above(machine.low, label.high) {
        Governed { dose: label.high, window: label, governs: Governs::Label, clash: true }
    } else {
        let high = label.high.min(machine.high);
        let window = Window { low: label.low.max(machine.low).min(high), high };
        let dose = aimed.max(window.low).min(window.high);
        let moved = above(dose, aimed) || above(aimed, dose);
        Governed {
            dose,
            window,
            governs: if moved { Governs::Machine } else { Governs::Label },
            clash: false,
        }
    }
}

/// Whether `a` is more than `b` by more than rounding: 20 fl oz from a ratio and 20 fl oz as typed
/// are one amount.
fn above(a: Volume, b: Volume) -> bool {
    a > b * (1.0 + 1e-9)
}
