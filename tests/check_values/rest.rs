//! Air and drying, the acute toxicity estimate, bleach.

use crate::air::{EVAPORATION, SATURATION, WET_BULBS};
use crate::bleach::RECIPES;
use crate::report::{Report, Within};
use brimline::chemistry::drying::{Air, drying_time, evaporation, latent_heat, saturation, wet_bulb};
use brimline::chemistry::ghs::mixture::estimate;
use brimline::trade::actives::{CHLORINE_IN_HYPOCHLORITE, Chlorine, available_chlorine, in_solution};
use brimline::units::{ApplicationRate, MassConcentration, Quantity, Speed, Temperature, VolumeFraction};

fn kelvin(celsius: f64) -> Temperature {
    Temperature::new(celsius + 273.15)
}

fn room(celsius: f64, humidity: f64, speed: f64) -> Air {
    Air { temperature: kelvin(celsius), humidity: VolumeFraction::new(humidity), speed: Speed::new(speed) }
}

pub fn air(out: &mut Report) {
    out.part("Air, evaporation and drying, 101 325 Pa");
    for &(t, psychrolib, coolprop, heat) in SATURATION {
        let pressure = saturation(kelvin(t));
        out.number(
            &format!("saturation at {t} °C, Pa"),
            pressure,
            psychrolib,
            Within::Of(0.006),
            "PsychroLib 2",
        );
        out.number(
            &format!("saturation at {t} °C, Pa"),
            pressure,
            coolprop,
            Within::Part(5e-4),
            "CoolProp, IAPWS-95",
        );
        let ours = latent_heat(kelvin(t));
        out.number(&format!("latent heat at {t} °C, kJ/kg"), ours, heat, Within::Of(0.04), "iapws, IAPWS-97");
    }
    for &(t, bulbs) in WET_BULBS {
        for (humidity, bulb) in [0.3, 0.5, 0.7].into_iter().zip(bulbs) {
            let ours = wet_bulb(room(t, humidity, 0.0)).si() - 273.15;
            let what = format!("wet bulb at {t} °C, {humidity}, °C");
            out.number(&what, ours, bulb, Within::Of(0.005), "PsychroLib 2");
        }
    }
    let source = "ASHRAE Transactions 104 (1998), worked with PsychroLib";
    for &(t, humidity, warm, cool, dry) in EVAPORATION {
        for (index, speed) in [0.0, 0.15, 0.5, 1.0].into_iter().enumerate() {
            let here = room(t, humidity, speed);
            let grams = |film| evaporation(here, film) * 60_000.0;
            let what = |film: &str| format!("{film} at {t} °C, {humidity}, {speed} m/s, g/(m² min)");
            out.number(&what("warm film"), grams(here.temperature), warm[index], Within::Part(1e-3), source);
            out.number(&what("cooled film"), grams(wet_bulb(here)), cool[index], Within::Part(3e-3), source);
        }
        let time = drying_time(ApplicationRate::new(20e-6), room(t, humidity, 0.15));
        // Here a litre weighs 998 g, there 20 g are 20 g.
        let minutes = |seconds: f64| seconds / 60.0 / 0.998;
        let what = |film: &str| format!("20 g/m² of {film} film at {t} °C, {humidity}, min");
        out.number(&what("warm"), minutes(time.low.si()), dry.0, Within::Part(1e-3), source);
        out.number(&what("cooled"), minutes(time.high.si()), dry.1, Within::Part(3e-3), source);
    }
}

/// As printed, within half of the last digit.
pub fn toxicity(out: &mut Report) {
    out.part("Acute toxicity estimate of mixtures");
    let source = "UN GHS Sub-Committee 2008, draft guidance";
    let mut row = |what: &str, parts: &[(f64, f64)], unknown: f64, published: f64, half: f64| {
        let ours = estimate(parts, unknown).unwrap_or(f64::NAN);
        out.number(what, ours, published, Within::Of(half), source);
    };
    row("3-1a, oral, mg/kg", &[(0.16, 1600.0), (0.04, 200.0), (0.80, 3450.0)], 0.0, 1_880.0, 5.0);
    row("3-1d, oral, mg/kg", &[(0.26, 2737.0), (0.23, 4500.0), (0.40, 400.0)], 0.0, 873.0, 0.5);
    row("3-1d, breathed in, 11 % unknown, mg/L", &[(0.26, 11.0), (0.23, 19.0), (0.40, 4.0)], 0.11, 6.6, 0.05);
}

pub fn bleach(out: &mut Report) {
    out.part("Available chlorine of bleach recipes, ppm");
    for (source, percent, concentrate, total, printed) in RECIPES {
        let strength = VolumeFraction::new(concentrate / total);
        let bleach = MassConcentration::new(percent * 10.0);
        let counted = available_chlorine(in_solution(strength, bleach), Chlorine::AsHypochlorite);
        let decimals = printed.split_once('.').map_or(0, |(_, tail)| tail.len());
        let half = Within::Of(0.5 * 10_f64.powi(-i32::try_from(decimals).expect("few digits")));
        let what = format!("{percent} %, 1 in {:.4}", total / concentrate);
        out.number(&what, counted.si() * 1e3, printed.parse().expect("a number"), half, source);
    }
    let source = "standard atomic masses; chemicals 1.5.2";
    out.number("Cl₂ / NaOCl", CHLORINE_IN_HYPOCHLORITE, 0.952_498, Within::Of(5e-7), source);
    let strict = available_chlorine(MassConcentration::new(52.5), Chlorine::AsChlorine);
    out.number("5.25 % NaOCl as available Cl₂, %", strict.si() / 10.0, 5.000_61, Within::Of(5e-6), source);
}
