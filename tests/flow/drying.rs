//! Air, evaporation and drying, against property libraries. Values: `PsychroLib` 2 (wet bulb, saturation
//! pressure), `CoolProp` (IAPWS-95) and iapws (IAPWS-97), all at 101 325 Pa.

use brimline::chemistry::drying::{Air, drying_time, evaporation, latent_heat, saturation, wet_bulb};
use brimline::units::{ApplicationRate, Quantity, Speed, Temperature, VolumeFraction};
use proptest::prelude::*;

fn kelvin(celsius: f64) -> Temperature {
    Temperature::new(celsius + 273.15)
}

fn air(celsius: f64, humidity: f64, speed: f64) -> Air {
    Air { temperature: kelvin(celsius), humidity: VolumeFraction::new(humidity), speed: Speed::new(speed) }
}

#[test]
fn saturation_and_latent_heat_agree_with_property_libraries() {
    // °C, PsychroLib Pa, CoolProp Pa, IAPWS-97 kJ/kg.
    for (t, psychrolib, coolprop, heat) in [
        (15.0, 1_705.45, 1_705.79, 2_465.38),
        (20.0, 2_338.80, 2_339.32, 2_453.55),
        (25.0, 3_169.22, 3_169.93, 2_441.71),
        (30.0, 4_246.03, 4_246.97, 2_429.84),
    ] {
        let pressure = saturation(kelvin(t));
        assert!((pressure - psychrolib).abs() < 0.006, "{t}: {pressure}");
        assert!((pressure / coolprop - 1.0).abs() < 5e-4, "{t}: {pressure}");
        assert!((latent_heat(kelvin(t)) - heat).abs() < 0.04, "{t}");
    }
}

#[test]
fn the_wet_bulb_agrees_with_psychrolib() {
    for (t, bulbs) in [
        (15.0, [7.2420, 9.6724, 11.9214]),
        (20.0, [10.8531, 13.7834, 16.4406]),
        (25.0, [14.4215, 17.8894, 20.9656]),
        (30.0, [17.9716, 22.0052, 25.5034]),
    ] {
        for (humidity, bulb) in [0.3, 0.5, 0.7].into_iter().zip(bulbs) {
            let got = wet_bulb(air(t, humidity, 0.0)).si() - 273.15;
            assert!((got - bulb).abs() < 0.005, "{t} °C, {humidity}: {got} is not {bulb}");
        }
    }
}

/// g/(m² min) with the film at the air's temperature and at the wet bulb, at 0, 0.15, 0.5 and 1 m/s, and
/// minutes to dry 20 g/m² at 0.15 m/s: the same correlation worked with `PsychroLib` and `CoolProp`.
#[test]
fn evaporation_agrees_with_the_correlation_worked_elsewhere() {
    for (t, humidity, warm, cool, dry) in [
        (
            15.0,
            0.5,
            [1.84700, 2.09043, 2.65843, 3.46986],
            [0.751_173, 0.850_176, 1.08118, 1.41119],
            (9.56743, 23.5245),
        ),
        (
            20.0,
            0.3,
            [3.56318, 4.03280, 5.12858, 6.69398],
            [1.29085, 1.46099, 1.85796, 2.42507],
            (4.95933, 13.6894),
        ),
        (
            20.0,
            0.5,
            [2.54513, 2.88057, 3.66327, 4.78142],
            [0.880_372, 0.996_403, 1.26714, 1.65391],
            (6.94306, 20.0722),
        ),
        (
            20.0,
            0.7,
            [1.52708, 1.72834, 2.19796, 2.86885],
            [0.505_610, 0.572_248, 0.727_738, 0.949_865],
            (11.5718, 34.9499),
        ),
        (
            25.0,
            0.5,
            [3.46553, 3.92228, 4.98803, 6.51053],
            [1.01079, 1.14401, 1.45485, 1.89892],
            (5.09907, 17.4824),
        ),
        (
            30.0,
            0.5,
            [4.66570, 5.28063, 6.71546, 8.76523],
            [1.13957, 1.28977, 1.64022, 2.14086],
            (3.78743, 15.5067),
        ),
    ] {
        for (index, speed) in [0.0, 0.15, 0.5, 1.0].into_iter().enumerate() {
            let room = air(t, humidity, speed);
            let grams = |film| evaporation(room, film) * 60_000.0;
            assert!((grams(room.temperature) / warm[index] - 1.0).abs() < 1e-3, "{t} {humidity} {speed}");
            // The wet bulb is known to some thousandths of a degree, a difference of pressures to a thousandth.
            assert!((grams(wet_bulb(room)) / cool[index] - 1.0).abs() < 3e-3, "{t} {humidity} {speed}");
        }
        let time = drying_time(ApplicationRate::new(20e-6), air(t, humidity, 0.15));
        // Here a litre weighs 998 g, there 20 g are 20 g.
        let minutes = |seconds: f64| seconds / 60.0 / 0.998;
        assert!(
            (minutes(time.low.si()) / dry.0 - 1.0).abs() < 1e-3
                && (minutes(time.high.si()) / dry.1 - 1.0).abs() < 3e-3
        );
    }
}

proptest! {
    /// Warmer, drier and windier dries faster; twice the film takes twice as long; the range is in order.
    #[test]
    fn drying_follows_the_air(t in 1.0..40.0_f64, humidity in 0.0..0.95_f64, speed in 0.0..3.0_f64, film in 1e-6..1e-3_f64) {
        let film = ApplicationRate::new(film);
        let time = drying_time(film, air(t, humidity, speed));
        prop_assert!(time.low <= time.high * (1.0 + 1e-9) && time.low.si() > 0.0);
        prop_assert!(drying_time(film, air(t, humidity, speed + 0.1)).low < time.low);
        prop_assert!(drying_time(film, air(t, humidity + 0.04, speed)).low > time.low);
        prop_assert!(drying_time(film, air(t + 1.0, humidity, speed)).low < time.low);
        prop_assert!((drying_time(film * 2.0, air(t, humidity, speed)).low / time.low - 2.0).abs() < 1e-12);
        prop_assert!(wet_bulb(air(t, humidity, speed)) <= kelvin(t));
    }

    /// Air that is full of water dries nothing.
    #[test]
    fn wet_air_dries_nothing(t in 1.0..40.0_f64) {
        let room = air(t, 1.0, 1.0);
        prop_assert!(drying_time(ApplicationRate::new(1e-5), room).low.si().is_infinite());
        prop_assert!((wet_bulb(room).si() - room.temperature.si()).abs() < 1e-6);
    }
}
