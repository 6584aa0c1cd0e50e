//! How long a film of water stays wet: from the air of the room to a range of times.
//!
//! It is an estimate by a correlation for open water, and a range: a film at the temperature of the air
//! dries fastest, one cooled to the wet bulb slowest. A wet-floor sign stays until the floor is dry to
//! the eye and the touch, whatever is computed here.

use crate::source::Source;
use crate::trade::label::Window;
use crate::units::{ApplicationRate, Duration, Quantity, Speed, Temperature, VolumeFraction};

/// The air of a room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Air {
    /// t, K: 0 to 45 °C.
    pub temperature: Temperature,
    /// Relative humidity, 0 to 1.
    pub humidity: VolumeFraction,
    /// V, along the floor, m/s, 0 or above: 0.15 in a room at rest, more before a fan.
    pub speed: Speed,
}

/// Where the evaporation comes from: the inch-pound form; the SI form is 0.5 % higher by its rounding.
pub const SOURCE: Source = Source::published("ASHRAE Transactions 104, part 1A (1998), abstract 4146");

/// Normal pressure, Pa.
const PRESSURE: f64 = 101_325.0;

/// Degrees Celsius, in which the correlations are written.
fn celsius(temperature: Temperature) -> f64 {
    temperature.si() - 273.15
}

/// The pressure of water vapour over water, Pa.
///
/// `ln p = C₈/T + C₉ + C₁₀ T + C₁₁ T² + C₁₂ T³ + C₁₃ ln T`
///
/// * `temperature`: T, K, 273.15 to 473.15.
///
/// Within 0.05 % of IAPWS-95 from 15 to 30 °C. Source: Hyland and Wexler (1983), as in ASHRAE
/// Fundamentals, from memory, unverified; held against published property libraries in the tests.
///
/// ```
/// use brimline::chemistry::drying::saturation;
/// use brimline::units::Temperature;
/// assert!((saturation(Temperature::new(293.15)) - 2338.8).abs() < 0.05);
/// ```
pub fn saturation(temperature: Temperature) -> f64 {
    let t = temperature.si();
    let polynomial = 1.391_499_3 + t * (-4.864_023_9e-2 + t * (4.176_476_8e-5 - t * 1.445_209_3e-8));
    (-5.800_220_6e3 / t + polynomial + 6.545_967_3 * t.ln()).exp()
}

/// The heat that a kilogram of water takes with it, kJ/kg.
///
/// `Y = 2500.9 − 2.3676 t`
///
/// * `temperature`: t, from 0 to 45 °C, given in K.
///
/// A straight line through IAPWS-97 from 15 to 30 °C, within 0.04 kJ/kg. Source: as [`saturation`].
///
/// ```
/// use brimline::chemistry::drying::latent_heat;
/// use brimline::units::Temperature;
/// assert!((latent_heat(Temperature::new(293.15)) - 2453.55).abs() < 0.04);
/// ```
pub fn latent_heat(temperature: Temperature) -> f64 {
    2_500.9 - 2.367_6 * celsius(temperature)
}

/// The temperature to which a wet surface is cooled by the air over it, K.
///
/// `W = ((2501 − 2.326 t*) W* − 1.006 (t − t*)) / (2501 + 1.86 t − 4.186 t*)`, solved for t*
///
/// * `air`: its speed plays no part.
///
/// Within 0.01 K of the psychrometric chart's equations. Source: ASHRAE Fundamentals, chapter
/// Psychrometrics, from memory, unverified; held against a psychrometric library's values in the tests.
///
/// ```
/// use brimline::chemistry::drying::{Air, wet_bulb};
/// use brimline::units::{Quantity, Speed, Temperature, VolumeFraction};
/// let air = Air { temperature: Temperature::new(293.15), humidity: VolumeFraction::new(0.5), speed: Speed::new(0.15) };
/// assert!((wet_bulb(air).si() - 273.15 - 13.7834).abs() < 0.005);
/// ```
pub fn wet_bulb(air: Air) -> Temperature {
    let ratio = |pressure: f64| 0.621_945 * pressure / (PRESSURE - pressure);
    let t = celsius(air.temperature);
    let holds = ratio(air.humidity.si() * saturation(air.temperature));
    let (mut low, mut high) = (t - 40.0, t);
    for _ in 0..50 {
        let bulb = f64::midpoint(low, high);
        let saturated = ratio(saturation(Temperature::new(bulb + 273.15)));
        let given =
            ((2_501.0 - 2.326 * bulb) * saturated - 1.006 * (t - bulb)) / (2_501.0 + 1.86 * t - 4.186 * bulb);
        if given > holds { high = bulb } else { low = bulb }
    }
    Temperature::new(f64::midpoint(low, high) + 273.15)
}

/// Water that evaporates from a film at `film`, kg/(m² s).
///
/// `E = (p_w − p_a)(0.089 + 0.0782 V) / Y`, in kPa, m/s and kJ/kg
///
/// * `air`: `p_a` from its temperature and humidity; V.
/// * `film`: the water's own temperature, which gives `p_w` and Y, K.
///
/// Nothing where the air would wet the film. A correlation for open water; for a thin film on a floor it is
/// an estimate. Source: [`SOURCE`], constants of the SI form from memory, unverified.
///
/// ```
/// use brimline::chemistry::drying::{Air, evaporation};
/// use brimline::units::{Speed, Temperature, VolumeFraction};
/// let air = Air { temperature: Temperature::new(293.15), humidity: VolumeFraction::new(0.5), speed: Speed::new(0.15) };
/// let grams_a_minute = evaporation(air, air.temperature) * 60_000.0;
/// assert!((grams_a_minute - 2.88057).abs() < 0.001);
/// ```
pub fn evaporation(air: Air, film: Temperature) -> f64 {
    let (water, vapour) = (saturation(film), air.humidity.si() * saturation(air.temperature));
    (water - vapour).max(0.0) / 1_000.0 * (0.089 + 0.078_2 * air.speed.si()) / latent_heat(film)
}

/// How long a film stays wet: at least, with the film as warm as the air; at most, cooled to the wet bulb.
///
/// `t = m × ρ / E`
///
/// * `film`: m, what stays on the floor, m³/m², 0 or above; ρ is taken as 998 kg/m³.
/// * `air`: the room's.
///
/// Returns s; infinite where the air takes up nothing. What the floor drinks, a mop and people's shoes
/// are not in it. Source: [`evaporation`].
///
/// ```
/// use brimline::chemistry::drying::{Air, drying_time};
/// use brimline::units::{ApplicationRate, Quantity, Speed, Temperature, VolumeFraction};
/// let air = Air { temperature: Temperature::new(293.15), humidity: VolumeFraction::new(0.5), speed: Speed::new(0.15) };
/// let time = drying_time(ApplicationRate::new(20e-6), air);
/// assert!((time.low.si() / 60.0 - 6.93).abs() < 0.02 && (time.high.si() / 60.0 - 20.04).abs() < 0.05);
/// ```
pub fn drying_time(film: ApplicationRate, air: Air) -> Window<Duration> {
    let water = film.si() * 998.0;
    let time = |rate: f64| Duration::new(if rate > 0.0 { water / rate } else { f64::INFINITY });
    Window { low: time(evaporation(air, air.temperature)), high: time(evaporation(air, wet_bulb(air))) }
}
