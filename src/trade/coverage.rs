//! What a machine does to a floor: area a time, solution an area.

use crate::units::{
    ApplicationRate, Area, ArealMass, Density, Duration, Flow, Length, Productivity, Quantity, Speed,
    VolumeFraction,
};

/// Floor area passed a time while the machine runs.
///
/// `P = v × (w − o)`
///
/// * `speed`: v, m/s, above 0.
/// * `path`: w, cleaning path, m, above `overlap`.
/// * `overlap`: o, the width that two passes share, m, 0 or more.
///
/// Returns m²/s. Source: definition.
///
/// ```
/// use brimline::trade::coverage::passing;
/// use brimline::units::{Length, Quantity, Speed, unit};
/// let mph = Speed::of(2.5, unit("mph").unwrap()).unwrap();
/// let path = Length::of(20.0, unit("in").unwrap()).unwrap();
/// let per_hour = passing(mph, path, Length::ZERO).value_in(unit("ft2_per_h").unwrap()).unwrap();
/// assert!((per_hour - 22_000.0).abs() < 1e-6);
/// ```
pub fn passing(speed: Speed, path: Length, overlap: Length) -> Productivity {
    speed * (path - overlap)
}

/// Floor area cleaned a time over a shift, with turning and waiting.
///
/// `P = v × (w − o) × e`
///
/// * `passing`: v × (w − o), m²/s.
/// * `efficiency`: e, time at work in the time spent, above 0 to 1.
///
/// Returns m²/s. Source: definition; values of e are common practice (0.5 to 0.85).
///
/// ```
/// use brimline::trade::coverage::productivity;
/// use brimline::units::{Productivity, VolumeFraction};
/// assert_eq!(productivity(Productivity::new(0.5), VolumeFraction::new(0.8)), Productivity::new(0.4));
/// ```
pub fn productivity(passing: Productivity, efficiency: VolumeFraction) -> Productivity {
    passing * (efficiency / VolumeFraction::new(1.0))
}

/// The efficiency that a site has measured: the time that an area should have taken without a turn or a
/// wait, in the time that it took.
///
/// `e = A / (t × P)`
///
/// * `area`: A, cleaned in that time, m², above 0.
/// * `time`: t, from the first start to the last stop, s, above 0.
/// * `passing`: P = v × (w − o), m²/s, above 0.
///
/// Returns e; above 1 more was cleaned than the machine passes over, so that something was measured wrong.
/// Source: definition, from [`productivity`].
///
/// ```
/// use brimline::trade::coverage::measured_efficiency;
/// use brimline::units::{Area, Duration, Productivity, VolumeFraction};
/// let e = measured_efficiency(Area::new(120.0), Duration::new(300.0), Productivity::new(0.5));
/// assert_eq!(e, VolumeFraction::new(0.8));
/// ```
pub fn measured_efficiency(area: Area, time: Duration, passing: Productivity) -> VolumeFraction {
    VolumeFraction::new((area / time) / passing)
}

/// Solution laid on each area of floor.
///
/// `a = Q / (v × (w − o))`
///
/// * `flow`: Q, m³/s.
/// * `passing`: v × (w − o), m²/s, above 0.
///
/// Returns m³/m². Source: definition.
///
/// ```
/// use brimline::trade::coverage::application_rate;
/// use brimline::units::{Flow, Productivity, Quantity, unit};
/// let flow = Flow::of(0.30, unit("gal_us_per_min").unwrap()).unwrap();
/// let passing = Productivity::of(15_000.0, unit("ft2_per_h").unwrap()).unwrap();
/// let rate = application_rate(flow, passing).value_in(unit("gal_us_per_1000ft2").unwrap()).unwrap();
/// assert!((rate - 1.2).abs() < 1e-12);
/// ```
pub fn application_rate(flow: Flow, passing: Productivity) -> ApplicationRate {
    flow / passing
}

/// What a film weighs on each area.
///
/// `w = a × ρ`
///
/// * `rate`: a, m³/m², 0 or above.
/// * `density`: ρ, of the solution, kg/m³.
///
/// Returns kg/m². Source: definition.
///
/// ```
/// use brimline::trade::coverage::film_mass;
/// use brimline::units::{ApplicationRate, ArealMass, Density};
/// assert_eq!(film_mass(ApplicationRate::new(0.5), Density::new(1_000.0)), ArealMass::new(500.0));
/// ```
pub fn film_mass(rate: ApplicationRate, density: Density) -> ArealMass {
    ArealMass::new(rate.si() * density.si())
}

/// The share of what is laid down that comes out of the tank for good, when a machine filters and
/// uses the rest again.
///
/// `k = 1 − u`
///
/// * `reuse`: u, the share used again, 0 to below 1.
///
/// Returns a plain number. Source: definition (mass balance of the solution).
///
/// ```
/// use brimline::trade::coverage::spent_share;
/// use brimline::units::VolumeFraction;
/// assert_eq!(spent_share(VolumeFraction::new(0.75)), 0.25);
/// ```
pub fn spent_share(reuse: VolumeFraction) -> f64 {
    reuse.water() / VolumeFraction::new(1.0)
}

/// The speed at which a flow lays down a wanted rate.
///
/// `v = Q / (a × (w − o))`
///
/// * `flow`: Q, m³/s, above 0.
/// * `rate`: a, m³/m², above 0.
/// * `width`: w − o, m, above 0.
///
/// Returns m/s. Source: from the application rate.
///
/// ```
/// use brimline::trade::coverage::speed_for;
/// use brimline::units::{ApplicationRate, Flow, Length, Speed};
/// assert_eq!(speed_for(Flow::new(0.02), ApplicationRate::new(0.02), Length::new(0.5)), Speed::new(2.0));
/// ```
pub fn speed_for(flow: Flow, rate: ApplicationRate, width: Length) -> Speed {
    (flow / rate) / width
}
