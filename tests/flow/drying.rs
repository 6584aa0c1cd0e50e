//! Air, evaporation and drying, against property libraries. Values: `PsychroLib` 2 (wet bulb, saturation
//! pressure), `CoolProp` (IAPWS-95) and iapws (IAPWS-97), all at 101 325 Pa.

use crate::air::{EVAPORATION, SATURATION, WET_BULBS};
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
    for &(t, psychrolib, coolprop, heat) in SATURATION {
        let pressure = saturation(kelvin(t));
        assert!((pressure - psychrolib).abs() < 0.006, "{t}: {pressure}");
        assert!((pressure / coolprop - 1.0).abs() < 5e-4, "{t}: {pressure}");
        assert!((latent_heat(kelvin(t)) - heat).abs() < 0.04, "{t}");
    }
}

#[test]
fn the_wet_bulb_agrees_with_psychrolib() {
    for &(t, bulbs) in WET_BULBS {
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
    for &(t, humidity, warm, cool, dry) in EVAPORATION {
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
