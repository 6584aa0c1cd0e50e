//! Which flow setting a floor needs.

use super::label::Window;
use crate::units::{ApplicationRate, Flow, Length, Speed};

/// How a setting meets a floor's target.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fit {
    /// Less than the floor needs.
    Short,
    /// Within the target.
    Meets,
    /// More than the floor should get.
    TooWet,
}

/// How `rate` meets `target`.
pub fn fit(rate: ApplicationRate, target: Window<ApplicationRate>) -> Fit {
    let slack = 1e-9;
    if rate / target.low < 1.0 - slack {
        Fit::Short
    } else if rate / target.high > 1.0 + slack {
        Fit::TooWet
    } else {
        Fit::Meets
    }
}

/// The setting to use, and what to change where none serves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Choice {
    /// Index of the setting, from 0.
    pub index: usize,
    /// How it meets the target.
    pub fit: Fit,
    /// Where it does not meet it: the speed at which it would.
    pub speed: Option<Speed>,
}

/// Chooses the lowest setting that reaches the target at this speed.
///
/// The lowest setting whose rate is at least `target.low` is taken. Where none reaches it, the one
/// with the greatest flow is, with the slower speed that would do. Where the taken one is above
/// `target.high`, the faster speed is given.
///
/// * `flows`: the flow of each setting, m³/s, in the order of their numbers.
/// * `target`: what the floor should get, m³/m².
/// * `speed`, `width`: travel speed, m/s, and path less overlap, m.
///
/// Returns `None` when there is no setting. Source: definition of the application rate; the rule
/// "lowest that reaches" is common practice.
///
/// ```
/// use brimline::trade::label::Window;
/// use brimline::trade::setting::{Fit, choose};
/// use brimline::units::{ApplicationRate, Flow, Length, Speed};
/// let flows = [Flow::new(1.0), Flow::new(2.0), Flow::new(4.0)];
/// let target = Window { low: ApplicationRate::new(1.5), high: ApplicationRate::new(3.0) };
/// let choice = choose(&flows, target, Speed::new(1.0), Length::new(1.0)).unwrap();
/// assert_eq!((choice.index, choice.fit), (1, Fit::Meets));
/// ```
pub fn choose(
    flows: &[Flow],
    target: Window<ApplicationRate>,
    speed: Speed,
    width: Length,
) -> Option<Choice> {
    let rate = |flow: Flow| flow / (speed * width);
    let reaching = flows.iter().position(|flow| fit(rate(*flow), target) != Fit::Short);
    let index = reaching.or_else(|| {
        let greatest =
            |a: &usize, b: &usize| flows[*a].partial_cmp(&flows[*b]).unwrap_or(std::cmp::Ordering::Equal);
        (0..flows.len()).max_by(greatest)
    })?;
    let fit = fit(rate(flows[index]), target);
    let wanted = match fit {
        Fit::Short => Some(target.low),
        Fit::Meets => None,
        Fit::TooWet => Some(target.high),
    };
    let speed = wanted.map(|wanted| super::coverage::speed_for(flows[index], wanted, width));
    Some(Choice { index, fit, speed })
}
