//! What a plan uses over months: containers, when to order, and what it costs.

use crate::units::{Area, Duration, Volume};

/// How often something is done, told as how many days lie between.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Every(pub f64);

/// The length of a mean month, days: a mean Gregorian year of 365.2425 days over 12.
pub const MONTH: f64 = 365.2425 / 12.0;

impl Every {
    /// How often in so many days: `n = days / every`.
    ///
    /// ```
    /// use brimline::trade::stock::{Every, MONTH};
    /// assert_eq!(Every(7.0).times_in(28.0), 4.0);
    /// assert!((Every(1.0).times_in(MONTH) - 30.436_875).abs() < 1e-12);
    /// ```
    pub fn times_in(self, days: f64) -> f64 {
        days / self.0
    }
}

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

/// How a product is used and how long it takes to come.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Supply {
    /// d, what a day uses, m³, 0 or above.
    pub daily: Volume,
    /// s, one standard deviation of a day's use, m³, 0 or above.
    pub spread: Volume,
    /// L, days from ordering to delivery, 0 or above.
    pub lead: f64,
    /// z, standard deviations of safety, 0 or above: 1.645 runs out in 5 of 100 deliveries.
    pub safety: f64,
}

/// z for running out in 5 of 100 deliveries: Φ(1.645) = 0.95.
pub const USUAL_SAFETY: f64 = 1.644_854;

/// The stock at which to order.
///
/// `R = d × L + z × s × √L`
///
/// * `supply`: days that use more or less independently of each other; a lead time that is known.
///
/// Returns R, m³: the use until delivery, and the safety stock. Where the lead time itself varies, more is
/// needed, which is not in it. Source: the usual reorder point with normal demand, from memory,
/// unverified; the normal quantile is held against Python's statistics library in the tests.
///
/// ```
/// use brimline::trade::stock::{Supply, reorder_at};
/// use brimline::units::Volume;
/// let supply = Supply { daily: Volume::new(2.0), spread: Volume::new(0.5), lead: 9.0, safety: 2.0 };
/// assert_eq!(reorder_at(supply), Volume::new(2.0 * 9.0 + 2.0 * 0.5 * 3.0));
/// ```
pub fn reorder_at(supply: Supply) -> Volume {
    supply.daily * supply.lead + supply.spread * (supply.safety * supply.lead.max(0.0).sqrt())
}

/// What a shift costs, each part in the site's money.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Cost {
    /// Concentrate.
    pub concentrate: f64,
    /// Water, in and out.
    pub water: f64,
    /// Labour.
    pub labour: f64,
}

/// What each of them is bought at.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Prices {
    /// A cubic metre of concentrate.
    pub concentrate: f64,
    /// A cubic metre of water, with its sewage.
    pub water: f64,
    /// A second of labour.
    pub labour: f64,
}

impl Cost {
    /// What a shift costs.
    ///
    /// `K = C × k_C + W × k_W + t × k_t`, part by part
    ///
    /// * `prices`: k, 0 or above each.
    /// * `concentrate`, `water`: m³, 0 or above.
    /// * `labour`: s, 0 or above: the time that a person is there, not the machine's.
    ///
    /// Source: definition.
    ///
    /// ```
    /// use brimline::trade::stock::{Cost, Prices};
    /// use brimline::units::{Duration, Volume};
    /// let prices = Prices { concentrate: 2.0, water: 3.0, labour: 0.5 };
    /// let cost = Cost::of(prices, Volume::new(10.0), Volume::new(100.0), Duration::new(60.0));
    /// assert_eq!(cost.sum(), 20.0 + 300.0 + 30.0);
    /// ```
    pub fn of(prices: Prices, concentrate: Volume, water: Volume, labour: Duration) -> Self {
        Self {
            concentrate: concentrate / Volume::new(1.0) * prices.concentrate,
            water: water / Volume::new(1.0) * prices.water,
            labour: labour / Duration::new(1.0) * prices.labour,
        }
    }

    /// All of it.
    pub fn sum(self) -> f64 {
        self.concentrate + self.water + self.labour
    }

    /// A part of it for each such area: 100 m² or 1000 ft².
    ///
    /// * `cleaned`: what the cost was for, m², above 0.
    /// * `each`: m², above 0.
    ///
    /// ```
    /// use brimline::trade::stock::Cost;
    /// use brimline::units::Area;
    /// let cost = Cost { concentrate: 1.0, water: 2.0, labour: 7.0 };
    /// assert_eq!(cost.for_each(Area::new(500.0), Area::new(100.0)), 2.0);
    /// ```
    pub fn for_each(self, cleaned: Area, each: Area) -> f64 {
        self.sum() * (each / cleaned)
    }
}
