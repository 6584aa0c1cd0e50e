//! What a plan uses over months: how often, how many containers, and when to order.

use crate::source::Source;
use crate::units::{ApplicationRate, AreaPrice, Duration, Quantity, Volume, VolumeFraction, VolumePrice};

/// A day, s.
pub const DAY: Duration = Duration::new(86_400.0);
/// A mean Gregorian year, s: 365.2425 days, since 97 years in 400 are leap years.
pub const YEAR: Duration = Duration::new(365.2425 * 86_400.0);
/// A mean month, s: a twelfth of it.
pub const MONTH: Duration = Duration::new(365.2425 * 86_400.0 / 12.0);

/// Containers for a volume: whole ones.
///
/// `k = ceil(V / B)`
///
/// * `volume`: V, m³, 0 or above.
/// * `container`: B, m³, above 0.
///
/// Source: definition.
///
/// ```
/// use brimline::trade::stock::containers;
/// use brimline::units::Volume;
/// assert_eq!(containers(Volume::new(10.0), Volume::new(4.0)), 3.0);
/// assert_eq!(containers(Volume::new(8.0), Volume::new(4.0)), 2.0);
/// ```
pub fn containers(volume: Volume, container: Volume) -> f64 {
    // Eight of four are two, also where they come from a sum of ounces.
    (volume / container * (1.0 - 1e-12)).ceil()
}

/// What the concentrate on a floor costs.
///
/// `k = p × r × a`
///
/// * `price`: p, of a volume of concentrate, one/m³, 0 or above.
/// * `strength`: r, 0 to 1.
/// * `rate`: a, solution laid down, m³/m², 0 or above.
///
/// Returns k, one/m². Source: definition.
///
/// ```
/// use brimline::trade::stock::cost_each;
/// use brimline::units::{ApplicationRate, Quantity, VolumeFraction, VolumePrice};
/// // 20 a litre, 1 %, 10 mL/m²: 0.002 a square metre.
/// let each = cost_each(VolumePrice::new(20_000.0), VolumeFraction::new(0.01), ApplicationRate::new(1e-5));
/// assert!((each.si() - 0.002).abs() < 1e-15);
/// ```
pub fn cost_each(price: VolumePrice, strength: VolumeFraction, rate: ApplicationRate) -> AreaPrice {
    AreaPrice::from_si(price.si() * strength.si() * rate.si())
}

/// How a product is used and how long it takes to come.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Supply {
    /// d, what a mean day uses, m³, 0 or above.
    pub daily: Volume,
    /// s, one standard deviation of a day's use, m³, 0 or above.
    pub spread: Volume,
    /// L, from ordering to delivery, s, 0 or above.
    pub lead: Duration,
    /// z, standard deviations of safety, 0 or above.
    pub safety: f64,
}

/// z for running out in 5 of 100 deliveries: Φ(1.645) = 0.95.
pub const USUAL_SAFETY: f64 = 1.644_854;

/// Where the reorder point comes from.
pub const REORDER: Source =
    Source::published("W. J. Stevenson, Operations Management, 14th ed. (2021), ch. 12, formula 12-13");

/// The safety stock: what is kept for days that use more than the mean.
///
/// `B = z × s × √L`, L in days
///
/// * `supply`: days that use more or less independently of each other; a lead time that is known.
///
/// Returns B, m³. Where the lead time itself varies, more is needed, which is not in it. Source: [`REORDER`].
///
/// ```
/// use brimline::trade::stock::{DAY, Supply, safety_stock};
/// use brimline::units::Volume;
/// let supply = Supply { daily: Volume::new(2.0), spread: Volume::new(0.5), lead: DAY * 9.0, safety: 2.0 };
/// assert_eq!(safety_stock(supply), Volume::new(2.0 * 0.5 * 3.0));
/// ```
pub fn safety_stock(supply: Supply) -> Volume {
    supply.spread * (supply.safety * (supply.lead / DAY).max(0.0).sqrt())
}

/// The stock at which to order.
///
/// `R = d × L + B`, L in days
///
/// * `supply`: as for [`safety_stock`], which is B.
///
/// Returns R, m³: the use until delivery, and the safety stock. Source: [`REORDER`].
///
/// ```
/// use brimline::trade::stock::{DAY, Supply, reorder_at};
/// use brimline::units::Volume;
/// let supply = Supply { daily: Volume::new(2.0), spread: Volume::new(0.5), lead: DAY * 9.0, safety: 2.0 };
/// assert_eq!(reorder_at(supply), Volume::new(2.0 * 9.0 + 2.0 * 0.5 * 3.0));
/// ```
pub fn reorder_at(supply: Supply) -> Volume {
    supply.daily * (supply.lead / DAY).max(0.0) + safety_stock(supply)
}

/// What a mean day uses.
///
/// `d = V / 365.2425`
///
/// * `yearly`: V, m³, 0 or above.
///
/// Source: definition of the mean Gregorian year.
///
/// ```
/// use brimline::trade::stock::daily;
/// use brimline::units::Volume;
/// assert_eq!(daily(Volume::new(365.2425)), Volume::new(1.0));
/// ```
pub fn daily(yearly: Volume) -> Volume {
    yearly / (YEAR.si() / DAY.si())
}
