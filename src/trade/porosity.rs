//! How much of the solution a floor drinks, and what it should get.

use super::label::Window;
use crate::coded::coded;
use crate::source::Source;
use crate::units::{ApplicationRate, Duration, Quantity, unit};

coded! {
    /// Porosity class of a floor, from a film that lies on top to a surface that drinks.
    #[derive(Default)]
    Porosity {
        /// Sealed, finished or impervious: vinyl with finish, glazed tile, coated wood.
        #[default]
        Sealed = "sealed",
        /// Hardly any: polished terrazzo, vitreous tile, sealed concrete.
        Low = "low",
        /// Some: quarry tile, textured tile with open grout, honed stone.
        Medium = "medium",
        /// Much: bare concrete, unsealed stone.
        High = "high",
    }
}

impl Porosity {
    /// The class that a drop of water points to: how long until it has vanished into the floor.
    ///
    /// Within 10 s much, within a minute some, within five minutes hardly any; a drop that stays longer lies
    /// on top. A guide and no test: dust, wax and the drop's size change it. Source: common practice.
    ///
    /// ```
    /// use brimline::trade::porosity::Porosity;
    /// use brimline::units::Duration;
    /// assert_eq!(Porosity::by_drop(Duration::new(5.0)), Porosity::High);
    /// assert_eq!(Porosity::by_drop(Duration::new(600.0)), Porosity::Sealed);
    /// ```
    pub fn by_drop(time: Duration) -> Self {
        match time.si() {
            ..=10.0 => Self::High,
            ..=60.0 => Self::Medium,
            ..=300.0 => Self::Low,
            _ => Self::Sealed,
        }
    }

    /// Where the default targets come from.
    pub const SOURCE: Source = Source::COMMON_PRACTICE;

    /// The default target in US gallons per 1000 ft²: a start that a site replaces by its own.
    ///
    /// The whole range, 0.3 to 2.0, is common practice; no publication sets it.
    pub fn usual_target(self) -> (f64, f64) {
        match self {
            Self::Sealed => (0.3, 0.6),
            Self::Low => (0.5, 0.9),
            Self::Medium => (0.8, 1.3),
            Self::High => (1.2, 2.0),
        }
    }

    /// The default target as a window, m³/m².
    ///
    /// ```
    /// use brimline::trade::porosity::Porosity;
    /// assert!(Porosity::High.target().low > Porosity::Sealed.target().high);
    /// ```
    pub fn target(self) -> Window<ApplicationRate> {
        let (low, high) = self.usual_target();
        let rate = |gallons: f64| {
            unit("gal_us_per_1000ft2")
                .and_then(|unit| ApplicationRate::of(gallons, unit))
                .unwrap_or(ApplicationRate::ZERO)
        };
        Window { low: rate(low), high: rate(high) }
    }
}
