//! A new finish: how much of it, how much strip solution, when each coat goes on, when a machine may come.

use crate::units::{ApplicationRate, Area, Coverage, Duration, Volume, VolumeFraction};

/// Finish for all coats.
///
/// `V = n × A / c`
///
/// * `coats`: n, a whole number, 1 or more.
/// * `area`: A, m², above 0.
/// * `coverage`: c, what a volume covers in one coat, m²/m³, above 0.
///
/// Returns V, m³; what stays in the mop and in the bucket is not in it. Source: definition of the coverage.
///
/// ```
/// use brimline::trade::finish::finish_volume;
/// use brimline::units::{Area, Coverage, Quantity, unit};
/// // Four coats on 6,000 ft² at 2,000 ft²/gal: 12 gal.
/// let area = Area::of(6_000.0, unit("ft2").unwrap()).unwrap();
/// let coverage = Coverage::of(2_000.0, unit("ft2_per_gal_us").unwrap()).unwrap();
/// let gallons = finish_volume(4.0, area, coverage).value_in(unit("gal_us").unwrap()).unwrap();
/// assert!((gallons - 12.0).abs() < 1e-12);
/// ```
pub fn finish_volume(coats: f64, area: Area, coverage: Coverage) -> Volume {
    area / coverage * coats
}

/// Strip solution, or water of one rinse, laid on a floor.
///
/// `S = a × A`
///
/// * `rate`: a, m³/m², above 0.
/// * `area`: A, m², above 0.
///
/// Returns S, m³. Source: definition of the application rate.
///
/// ```
/// use brimline::trade::finish::laid_on;
/// use brimline::units::{ApplicationRate, Area, Volume};
/// assert_eq!(laid_on(ApplicationRate::new(0.000_5), Area::new(200.0)), Volume::new(0.1));
/// ```
pub fn laid_on(rate: ApplicationRate, area: Area) -> Volume {
    rate * area
}

/// Tanks or buckets of a solution: how many full ones, and what is left for the last.
///
/// `N = ⌊S / T⌋` and `S − N × T`
///
/// * `solution`: S, m³, above 0.
/// * `tank`: T, m³, above 0.
///
/// Returns N and the rest, m³; a rest of a billionth of a tank is none. Source: definition.
///
/// ```
/// use brimline::trade::finish::tanks;
/// use brimline::units::Volume;
/// let (full, last) = tanks(Volume::new(0.25), Volume::new(0.1));
/// assert!(full == 2.0 && (last / Volume::new(0.05) - 1.0).abs() < 1e-9);
/// ```
pub fn tanks(solution: Volume, tank: Volume) -> (f64, Volume) {
    let full = (solution / tank + 1e-9).floor();
    let rest = solution - tank * full;
    (full, if rest > tank * 1e-9 { rest } else { Volume::ZERO })
}

/// Water in one wet coat, which must leave it before the next.
///
/// `m = (1 − s) / c`
///
/// * `solids`: s, what stays when it dries, as a share of its volume, 0 to 1.
/// * `coverage`: c, m²/m³, above 0.
///
/// Returns m, m³/m². A finish gives its solids by mass: as it is hardly denser than water, its share of the
/// volume is taken as the same. Source: definition (volume balance).
///
/// ```
/// use brimline::trade::finish::coat_water;
/// use brimline::units::{ApplicationRate, Coverage, VolumeFraction};
/// // A litre on 50 m² lies 20 µm thick; with 20 % solids 16 µm of that are water.
/// let water = coat_water(VolumeFraction::new(0.2), Coverage::new(50_000.0));
/// assert!((water / ApplicationRate::new(16e-6) - 1.0).abs() < 1e-12);
/// ```
pub fn coat_water(solids: VolumeFraction, coverage: Coverage) -> ApplicationRate {
    let wet = Volume::new(1.0) / (coverage * Volume::new(1.0));
    wet * (solids.water() / VolumeFraction::new(1.0))
}

/// When a coat may go on, counted from the first.
///
/// `t = (k − 1) × d`
///
/// * `coat`: k, 1 for the first.
/// * `dry`: d, how long a coat dries, s, 0 or above.
///
/// Returns t, s; how long it takes to lay a coat down is not in it. Source: definition. No time makes a coat
/// dry: it is when it is dry to the touch.
///
/// ```
/// use brimline::trade::finish::coat_start;
/// use brimline::units::Duration;
/// assert_eq!(coat_start(3.0, Duration::new(2_400.0)), Duration::new(4_800.0));
/// ```
pub fn coat_start(coat: f64, dry: Duration) -> Duration {
    dry * (coat - 1.0)
}

/// When a machine may first scrub it wet, counted from the first coat.
///
/// `t = n × d + u`
///
/// * `coats`: n, 1 or more.
/// * `dry`: d, how long a coat dries, s, 0 or above.
/// * `cure`: u, the wait that its label asks after the last coat is dry, s, 0 or above.
///
/// Returns t, s. Source: definition.
///
/// ```
/// use brimline::trade::finish::first_scrub;
/// use brimline::units::Duration;
/// let minutes = |minutes| Duration::new(minutes * 60.0);
/// assert_eq!(first_scrub(4.0, minutes(40.0), minutes(72.0 * 60.0)), minutes(4_480.0));
/// ```
pub fn first_scrub(coats: f64, dry: Duration, cure: Duration) -> Duration {
    dry * coats + cure
}
