//! Which flow setting a floor needs.

use super::label::Window;
use crate::units::{ApplicationRate, Flow, Length, Quantity, Speed};

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

/// Several passes with one setting, each laid on what the one before left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Passes {
    /// Index of the setting, from 0.
    pub index: usize,
    /// How many passes, 2 or more.
    pub count: f64,
    /// What they lay down in all.
    pub total: ApplicationRate,
    /// Whether that meets the target, or is more than the floor should get.
    pub fit: Fit,
}

/// More passes than this are another machine's job. Common practice, no source.
const MOST_PASSES: f64 = 5.0;

/// The passes that reach the target with settings of which one pass does not.
///
/// `n = ceil(a₀ / a)`, and `n × a` must not be more than the floor should get.
///
/// * `rates`: a, what one pass with each setting lays down, m³/m², above 0.
/// * `first`: the index of the setting that is looked at first, the wettest as a rule.
/// * `target`: from a₀, the least that the floor should get, to the most, m³/m².
///
/// Where the first setting's passes overshoot, the setting with the fewest passes that fit is taken, and of
/// those the driest. Where none fits, the first setting's passes are given as too wet, so that nobody tries
/// them. `None` where more than five passes would be needed, or where one pass with the first is enough and
/// nothing else fits. Source: definition of the application rate.
///
/// ```
/// use brimline::trade::label::Window;
/// use brimline::trade::setting::{Fit, passes};
/// use brimline::units::ApplicationRate;
/// let target = Window { low: ApplicationRate::new(1.2), high: ApplicationRate::new(2.0) };
/// let rates = [ApplicationRate::new(0.3), ApplicationRate::new(0.7)];
/// let found = passes(&rates, 1, target).unwrap();
/// assert_eq!((found.index, found.count, found.fit), (1, 2.0, Fit::Meets)); // 2 × 0.7 = 1.4
/// ```
pub fn passes(rates: &[ApplicationRate], first: usize, target: Window<ApplicationRate>) -> Option<Passes> {
    let of = |index: usize| {
        let rate = *rates.get(index)?;
        // The same slack as of a fit: two halves of the least are two passes, not three.
        let count = (target.low / rate - 1e-9).ceil();
        let total = rate * count;
        (2.0..=MOST_PASSES).contains(&count).then(|| Passes { index, count, total, fit: fit(total, target) })
    };
    let fits = |passes: &Passes| passes.fit == Fit::Meets;
    let driest =
        |a: &Passes, b: &Passes| a.count.total_cmp(&b.count).then(a.total.si().total_cmp(&b.total.si()));
    of(first)
        .filter(fits)
        .or_else(|| (0..rates.len()).filter_map(of).filter(fits).min_by(driest))
        .or_else(|| of(first))
}

/// The wettest of the settings that lay down too little, where one that lays down enough is too wet: it may
/// serve at a lower speed.
///
/// * `flows`: of each setting, m³/s.
/// * `chosen`: the index of the one that is too wet.
///
/// `None` where no setting gives less.
///
/// ```
/// use brimline::trade::setting::next_lower;
/// use brimline::units::Flow;
/// let flows = [Flow::new(1.0), Flow::new(2.0), Flow::new(4.0)];
/// assert_eq!((next_lower(&flows, 2), next_lower(&flows, 0)), (Some(1), None));
/// ```
pub fn next_lower(flows: &[Flow], chosen: usize) -> Option<usize> {
    let limit = *flows.get(chosen)?;
    (0..flows.len())
        .filter(|index| flows[*index] < limit)
        .max_by(|a, b| flows[*a].si().total_cmp(&flows[*b].si()))
}
