//! A tank that drains by its own weight: the flow fades as the level falls.

use crate::units::{Area, Duration, Flow, Length, Quantity};

/// Standard gravity, m/s². Source: NIST SP 330 (2019), defined value.
pub const GRAVITY: f64 = 9.806_65;

/// The discharge coefficient of a sharp-edged hole, a textbook figure from memory; a catch test makes it
/// needless.
pub const DISCHARGE: f64 = 0.62;

/// What flows out of a hole under a head of water.
///
/// `Q = C × a × √(2 g h)`
///
/// * `coefficient`: C, 0 to 1.
/// * `hole`: a, m², above 0.
/// * `head`: h, from the hole to the water's surface, m, 0 or above.
///
/// Returns Q, m³/s. A hose, a valve or a filter behind the hole takes more. Source: Torricelli's law with
/// a discharge coefficient; held against the `fluids` library in the tests.
///
/// ```
/// use brimline::trade::calibration::{DISCHARGE, orifice_flow};
/// use brimline::units::{Area, Length, Quantity};
/// let hole = Area::new(std::f64::consts::PI * 0.003 * 0.003);
/// let flow = orifice_flow(DISCHARGE, hole, Length::new(0.4));
/// assert!((flow.si() * 60_000.0 - 2.946_05).abs() < 5e-6); // L/min
/// ```
pub fn orifice_flow(coefficient: f64, hole: Area, head: Length) -> Flow {
    Flow::new(coefficient * hole.si() * (2.0 * GRAVITY * head.si()).sqrt())
}

/// The hole that a catch test stands for, C × a in one: [`orifice_flow`] the other way, with C = 1.
///
/// `C × a = Q / √(2 g h)`
///
/// * `flow`: Q, m³/s, as caught.
/// * `head`: h while it was caught, m, above 0.
///
/// ```
/// use brimline::trade::calibration::{orifice_area, orifice_flow};
/// use brimline::units::{Flow, Length, Quantity};
/// let hole = orifice_area(Flow::new(3e-5), Length::new(0.3));
/// assert!((orifice_flow(1.0, hole, Length::new(0.3)).si() - 3e-5).abs() < 1e-18);
/// ```
pub fn orifice_area(flow: Flow, head: Length) -> Area {
    Area::new(flow.si() / (2.0 * GRAVITY * head.si()).sqrt())
}

/// A flow that is known at one head, at another.
///
/// `Q = Q₀ × √(h / h₀)`
///
/// * `flow`: Q₀, m³/s, caught at the head `caught`, m, above 0.
/// * `head`: h, m, 0 or above.
///
/// ```
/// use brimline::trade::calibration::fades;
/// use brimline::units::{Flow, Length};
/// // A quarter of the head: half of the flow.
/// assert_eq!(fades(Flow::new(4.0), Length::new(0.4), Length::new(0.1)), Flow::new(2.0));
/// ```
pub fn fades(flow: Flow, caught: Length, head: Length) -> Flow {
    flow * (head / caught).max(0.0).sqrt()
}

/// A tank with straight walls that drains through a hole.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drain {
    /// A, the water's surface, m², above 0.
    pub surface: Area,
    /// C × a, m², above 0, as [`orifice_area`] gives it.
    pub hole: Area,
}

/// How long it takes from one level to a lower one.
///
/// `t = 2 A (√h₁ − √h₂) / (C a √(2 g))`
///
/// * `drain`: A and C × a.
/// * `from`, `to`: h₁ and h₂, m, 0 or above; h₁ at least h₂.
///
/// Returns t, s; nothing where `to` is not below `from`. That the walls are straight is not checked.
/// Source: [`orifice_flow`] summed over the falling level; held against scipy's solver in the tests.
///
/// ```
/// use brimline::trade::calibration::{DISCHARGE, Drain, drain_time};
/// use brimline::units::{Area, Length, Quantity};
/// let hole = Area::new(DISCHARGE * std::f64::consts::PI * 0.003 * 0.003);
/// let drain = Drain { surface: Area::new(0.2), hole };
/// let time = drain_time(drain, Length::new(0.4), Length::new(0.05));
/// assert!((time.si() - 2106.51).abs() < 0.005);
/// ```
pub fn drain_time(drain: Drain, from: Length, to: Length) -> Duration {
    let fall = (from.si().max(0.0).sqrt() - to.si().max(0.0).sqrt()).max(0.0);
    Duration::new(2.0 * drain.surface.si() * fall / (drain.hole.si() * (2.0 * GRAVITY).sqrt()))
}
