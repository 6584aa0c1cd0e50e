//! Machines and wall units that draw the concentrate themselves.

use super::certainty::Measured;
use super::label::Window;
use super::reading::{Doubt, Reading, ReadingMistake, catch};
use crate::units::{Duration, Flow, Quantity, Volume, VolumeFraction};

/// A setting or an orifice that was chosen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chosen {
    /// Its index, from 0.
    pub index: usize,
    /// The strength that it makes.
    pub strength: VolumeFraction,
    /// Whether the label allows that.
    pub inside: bool,
}

/// Chooses among the strengths that a machine can make.
///
/// Of those inside the window the one nearest to the aim, by `|r − a|`; where none is inside, the
/// nearest of all. Of two that are equally near, the weaker.
///
/// * `strengths`: r of each setting, 0 to 1, in the order of their numbers.
/// * `window`: what the label allows.
/// * `aim`: a, the strength to aim for.
///
/// Returns `None` where there is no setting. That a setting makes what it says is not checked: a
/// catch test does. Source: common practice.
///
/// ```
/// use brimline::trade::label::Window;
/// use brimline::trade::metering::nearest;
/// use brimline::units::VolumeFraction;
/// let r = VolumeFraction::new;
/// let settings = [0.005, 0.01, 0.02].map(r);
/// let chosen = nearest(&settings, Window { low: r(0.011), high: r(0.03) }, r(0.012)).unwrap();
/// // 0.01 is nearer, and weaker than the label allows.
/// assert_eq!((chosen.index, chosen.inside), (2, true));
/// ```
pub fn nearest(
    strengths: &[VolumeFraction],
    window: Window<VolumeFraction>,
    aim: VolumeFraction,
) -> Option<Chosen> {
    let slack = 1e-9;
    let mut best: Option<Chosen> = None;
    for (index, &strength) in strengths.iter().enumerate() {
        let inside = strength >= window.low * (1.0 - slack) && strength <= window.high * (1.0 + slack);
        let next = Chosen { index, strength, inside };
        let off = |chosen: Chosen| (chosen.strength - aim).si().abs();
        let better = best.is_none_or(|best| {
            let level = (off(next) - off(best)).abs() <= slack * aim.si();
            (next.inside && !best.inside)
                || (next.inside == best.inside
                    && if level { next.strength < best.strength } else { off(next) < off(best) })
        });
        if better {
            best = Some(next);
        }
    }
    best
}

/// One row of a site's own table: what a metering orifice let through when it was tried.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Orifice {
    /// q, concentrate drawn, m³/s, 0 or above.
    pub drawn: Flow,
    /// Q, concentrate and water together, m³/s, above 0.
    pub total: Flow,
}

impl Orifice {
    /// `r = q / Q`.
    pub fn strength(self) -> VolumeFraction {
        VolumeFraction::new(self.drawn / self.total)
    }
}

/// Chooses a metering orifice from the site's own measured flows, as [`nearest`] does.
///
/// * `table`: each orifice with this concentrate, at the usual water pressure.
/// * `window`, `aim`: what the label allows and the strength to aim for.
///
/// Returns `None` where the table is empty. A thicker concentrate or another pressure draws less,
/// which is not checked: each product needs its own table. Source: common practice.
///
/// ```
/// use brimline::trade::label::Window;
/// use brimline::trade::metering::{Orifice, orifice};
/// use brimline::units::{Flow, VolumeFraction};
/// let row = |drawn| Orifice { drawn: Flow::new(drawn), total: Flow::new(10.0) };
/// let r = VolumeFraction::new(0.02);
/// let chosen = orifice(&[row(0.1), row(0.25)], Window { low: r, high: r }, r).unwrap();
/// assert_eq!((chosen.index, chosen.inside), (1, false));
/// ```
pub fn orifice(table: &[Orifice], window: Window<VolumeFraction>, aim: VolumeFraction) -> Option<Chosen> {
    let strengths: Vec<VolumeFraction> = table.iter().map(|row| row.strength()).collect();
    nearest(&strengths, window, aim)
}

/// How long the machine's own bottle lasts.
///
/// `t = B / (r × Q)`
///
/// * `bottle`: B, concentrate in it, m³, 0 or above.
/// * `strength`: r, the setting, above 0 up to 1.
/// * `flow`: Q, use solution that reaches the floor, m³/s, above 0.
///
/// Returns t, s of solution flowing: turning and transport use none. That the setting makes what it
/// says is not checked. Source: definition.
///
/// ```
/// use brimline::trade::metering::bottle_time;
/// use brimline::units::{Duration, Flow, Volume, VolumeFraction};
/// let time = bottle_time(Volume::new(4.0), VolumeFraction::new(0.0078125), Flow::new(2.0));
/// assert_eq!(time, Duration::new(256.0));
/// ```
pub fn bottle_time(bottle: Volume, strength: VolumeFraction, flow: Flow) -> Duration {
    bottle / (flow * strength.si())
}

/// What a proportioner really makes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Proportion {
    /// The strength, with one standard deviation.
    pub reading: Reading,
    /// n, parts of water to 1 of concentrate.
    pub parts: f64,
    /// One standard deviation of n.
    pub parts_error: f64,
}

/// Works out a catch test at a wall proportioner.
///
/// `m = q / Q`, `n = (1 − m) / m`, `sₙ = sₘ / m²`
///
/// * `drawn`: q, concentrate drawn a time, m³/s, above 0, with one standard deviation.
/// * `total`: Q, all that came out a time, m³/s, at least q, with one standard deviation.
///
/// Returns the true ratio with its error. That the pressure was the usual one is not checked. Source:
/// as [`catch`].
///
/// # Errors
/// [`ReadingMistake::NothingCaught`], [`ReadingMistake::MoreThanWhole`].
///
/// ```
/// use brimline::trade::certainty::Measured;
/// use brimline::trade::metering::proportion;
/// use brimline::units::Flow;
/// let exact = |value| Measured { value: Flow::new(value), error: Flow::ZERO };
/// let found = proportion(exact(1.0), exact(65.0)).unwrap();
/// assert!((found.parts - 64.0).abs() < 1e-12);
/// ```
pub fn proportion(drawn: Measured<Flow>, total: Measured<Flow>) -> Result<Proportion, ReadingMistake> {
    let reading = catch(drawn, total)?;
    let strength = reading.strength.si();
    let deviation = match reading.doubt {
        Doubt::Deviation(error) => error.si(),
        Doubt::Limits(window) => (window.high - window.low).si() / 2.0,
    };
    let parts_error = deviation / (strength * strength);
    Ok(Proportion { reading, parts: reading.strength.parts_of_water(), parts_error })
}
