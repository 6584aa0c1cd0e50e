//! Control charts for single readings: whether a value is more than the usual scatter from the others.

use crate::coded::coded;
use crate::source::Source;
use std::cmp::Ordering;

/// A constant of the chart and where it comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Constant {
    /// Its symbol.
    pub symbol: &'static str,
    /// Its value.
    pub value: f64,
    /// Where it comes from.
    pub source: Source,
}

/// Where the chart and its constants come from. Seen second-hand: in tables that cite it.
pub const SOURCE: Source = Source::unverified(
    "NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, individuals control charts",
);

/// Where the rule of eight comes from. Seen second-hand, in several lists of the rules.
pub const RUN_SOURCE: Source = Source::unverified(
    "NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2, Western Electric Company rules for out of control",
);

/// d₂ of two: the mean range of two values is so many standard deviations. To more digits 2/√π.
pub const D2: Constant = Constant { symbol: "d₂", value: 1.128, source: SOURCE };

/// D₄ of two: three standard deviations above the mean range of two values lies at so many mean ranges.
pub const D4: Constant = Constant { symbol: "D₄", value: 3.267, source: SOURCE };

/// 3/d₂, printed as 2.66: the limits lie so many mean ranges from the centre.
pub const E2: Constant = Constant { symbol: "E₂", value: 3.0 / D2.value, source: SOURCE };

/// All constants.
pub const CONSTANTS: [Constant; 3] = [D2, D4, E2];

/// So many values on one side of the centre are no chance.
pub const RUN: usize = 8;

/// The lines of a chart.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// The mean of the values.
    pub centre: f64,
    /// The lower limit of a value. It may lie below what the value can be.
    pub lower: f64,
    /// The upper limit.
    pub upper: f64,
    /// The mean of the moving ranges.
    pub range: f64,
    /// The upper limit of a range; the lower one is 0.
    pub range_upper: f64,
}

coded! {
    /// What makes a point stand out.
    Rule {
        /// A value beyond its limits.
        Beyond = "control-beyond",
        /// A range beyond its limit: a jump from the value before.
        Jump = "control-jump",
        /// The last of eight values or more on one side of the centre.
        Run = "control-run",
    }
}

impl Rule {
    /// Where it comes from.
    pub const fn source(self) -> Source {
        match self {
            Self::Beyond | Self::Jump => SOURCE,
            Self::Run => RUN_SOURCE,
        }
    }
}

/// A point that stands out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Signal {
    /// The place of the value, from 0.
    pub at: usize,
    /// Why.
    pub rule: Rule,
}

/// Why there is no chart.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ControlMistake {
    /// Fewer than two values.
    TooFew,
    /// A value is not a number, or too great to be reckoned with.
    NoNumber,
}

impl ControlMistake {
    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::TooFew => "control-too-few",
            Self::NoNumber => "control-no-number",
        }
    }
}

/// The moving ranges: how far each value lies from the one before it.
///
/// `MR = |x(i) − x(i−1)|`, one fewer than the values
///
/// ```
/// assert_eq!(brimline::trade::control::ranges(&[1.0, 4.0, 2.0]), [3.0, 2.0]);
/// ```
pub fn ranges(values: &[f64]) -> Vec<f64> {
    values.windows(2).map(|pair| (pair[1] - pair[0]).abs()).collect()
}

/// The lines of a chart for single values and their moving ranges.
///
/// `x̄ ± 3 × MR̄ / d₂`, `D₄ × MR̄`
///
/// * `values`: in the order in which they came, in any unit; the limits have it as well.
///
/// They assume that values are independent and about normal. From few values they are an estimate of limits.
/// Source: [`SOURCE`].
///
/// # Errors
/// [`ControlMistake`].
///
/// ```
/// use brimline::trade::control::limits;
/// let rates = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
/// let limits = limits(&rates).unwrap();
/// assert!((limits.upper - 55.8041).abs() < 5e-5 && (limits.lower - 45.8159).abs() < 5e-5);
/// ```
pub fn limits(values: &[f64]) -> Result<Limits, ControlMistake> {
    if values.len() < 2 {
        return Err(ControlMistake::TooFew);
    }
    let mean = |values: &[f64]| values.iter().sum::<f64>() / values.len() as f64;
    let (centre, range) = (mean(values), mean(&ranges(values)));
    if !(centre.is_finite() && range.is_finite()) {
        return Err(ControlMistake::NoNumber);
    }
    let reach = E2.value * range;
    Ok(Limits { centre, lower: centre - reach, upper: centre + reach, range, range_upper: D4.value * range })
}

/// The points that stand out, by place.
///
/// * `values`: in the order in which they came, those that the limits were made of or later ones.
/// * `runs`: whether eight on one side of the centre count. With that rule more points stand out by chance alone.
///
/// A value on the centre ends a run. Sources: [`Rule::source`].
///
/// ```
/// use brimline::trade::control::{Rule, Signal, limits, signals};
/// let limits = limits(&[10.0, 11.0, 10.0, 11.0]).unwrap();
/// assert_eq!(signals(&[10.5, 14.0], &limits, false), [Signal { at: 1, rule: Rule::Beyond }, Signal { at: 1, rule: Rule::Jump }]);
/// ```
pub fn signals(values: &[f64], limits: &Limits, runs: bool) -> Vec<Signal> {
    // What lies on a limit but for rounding lies within.
    let slack = 1e-12 * (limits.centre.abs() + limits.range);
    let mut found = Vec::new();
    let (mut side, mut length) = (Ordering::Equal, 0);
    for (at, value) in values.iter().enumerate() {
        let mut signal = |is, rule| {
            if is {
                found.push(Signal { at, rule });
            }
        };
        signal(*value > limits.upper + slack || *value < limits.lower - slack, Rule::Beyond);
        let before = at.checked_sub(1).and_then(|before| values.get(before));
        let jump = before.map_or(0.0, |before| (value - before).abs());
        signal(jump > limits.range_upper + slack, Rule::Jump);
        let off = value - limits.centre;
        let now = if off.abs() <= slack { Ordering::Equal } else { off.total_cmp(&0.0) };
        let is_off = now != Ordering::Equal;
        length = if is_off && now == side { length + 1 } else { usize::from(is_off) };
        side = now;
        signal(runs && length >= RUN, Rule::Run);
    }
    found
}
