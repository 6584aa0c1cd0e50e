//! A strength inside a label's range, written so that it reads back as one number of one meaning.

use crate::trade::governing::Aim;
use crate::trade::label::{self, Basis, Label, Rule, Window};
use crate::units::{Quantity, System, Volume, VolumeFraction, unit};

/// So many digits at the ends of a range: a ten-thousandth of a percent of the dose.
const ENDS: f64 = 6.0;
/// So many in the middle, where nothing is left: closer than anybody measures, and easier to read.
const MIDDLE: f64 = 4.0;

/// "1:n", or a percentage where there is less water than concentrate.
///
/// The ends of a range are rounded inwards: what is written never leaves it.
///
/// ```
/// use brimline::form::site::finish::dilution::plus_water;
/// use brimline::trade::governing::Aim;
/// use brimline::units::VolumeFraction;
/// assert_eq!(plus_water(VolumeFraction::from_parts_of_water(64.0), Aim::Low), "1:64");
/// assert_eq!(plus_water(VolumeFraction::new(0.75), Aim::Low), "75 %");
/// ```
pub fn plus_water(strength: VolumeFraction, aim: Aim) -> String {
    let parts = strength.parts_of_water();
    if parts >= 1.0 {
        // Less water is stronger.
        return format!("1:{}", number(parts, aim == Aim::High, aim == Aim::Low));
    }
    format!("{} %", number(strength.percent(), aim == Aim::Low, aim == Aim::High))
}

/// An amount for a full tank.
///
/// ```
/// use brimline::form::site::finish::dilution::per_tank;
/// use brimline::trade::governing::Aim;
/// use brimline::units::Volume;
/// assert_eq!(per_tank(Volume::new(0.000_09), Aim::Low), "90 mL per tank");
/// ```
pub fn per_tank(amount: Volume, aim: Aim) -> String {
    let ml = unit("ml").map_or(amount.si() * 1e6, |unit| unit.from_si(amount.si()));
    format!("{} mL per tank", number(ml, aim == Aim::Low, aim == Aim::High))
}

/// A place in a range of strengths as the label of its product puts it, an amount in each volume of water or of
/// solution, and the strength that it reads back as; none where the label is written in another way.
///
/// The ends are rounded inwards; the middle, which has room on both sides, is the roundest number within a hundredth of
/// it.
///
/// ```
/// use brimline::form::site::finish::dilution::like_label;
/// use brimline::trade::governing::Aim;
/// use brimline::trade::label::Window;
/// use brimline::units::{System, VolumeFraction};
/// let ratio = |parts| VolumeFraction::from_parts_of_water(parts);
/// // 1 and 3 oz in 128 oz of water; half way between the shares is 1 to 64.25.
/// let range = Window { low: ratio(128.0), high: ratio(128.0 / 3.0) };
/// let (text, strength) = like_label("1-3 oz/gal", System::Us, range, Aim::Middle).unwrap();
/// assert_eq!(text, "2 oz/gal");
/// assert!((strength.parts_of_water() - 64.0).abs() < 1e-9);
/// assert_eq!(like_label("1:64", System::Us, range, Aim::Middle), None);
/// ```
pub fn like_label(
    label: &str,
    system: System,
    range: Window<VolumeFraction>,
    aim: Aim,
) -> Option<(String, VolumeFraction)> {
    let read = |text: &str| match label::read(text, system).ok()? {
        Label { basis, rule: Rule::Strength(window), .. } if window.is_point() => Some((basis, window.low)),
        _ => None,
    };
    let words = |text: &'_ str| -> usize { text.find(char::is_alphabetic).unwrap_or(text.len()) };
    let unit = &label[words(label)..];
    // "2 to 4 oz/gal": what stands between two numbers is no unit.
    let unit = unit.strip_prefix("to ").map_or(unit, |rest| &rest[words(rest)..]).trim();
    let (basis, one) = read(&format!("1 {unit}"))?;
    let share = |strength: VolumeFraction| match basis {
        Basis::PerWater => Some(1.0 / strength.parts_of_water()),
        Basis::MadeUp => Some(strength.si()),
        _ => None,
    };
    let wanted = aim.within(range);
    let amount = share(wanted)? / share(one)?;
    let written = |number: String| {
        let text = format!("{number} {unit}");
        let strength = read(&text)?.1;
        // The number that a label was written with comes back but for its last bit.
        let inside =
            strength.si() >= range.low.si() * (1.0 - 1e-9) && strength.si() <= range.high.si() * (1.0 + 1e-9);
        let near = (strength.si() / wanted.si() - 1.0).abs() < 0.01;
        (inside && near).then_some((text, strength))
    };
    match aim {
        Aim::Middle => [1.0, 2.0, 3.0, MIDDLE]
            .into_iter()
            .find_map(|digits| written(rounded(amount, digits, f64::round))),
        _ => written(number(amount, aim == Aim::Low, aim == Aim::High)),
    }
}

/// Parts of water to 1 of a dilution that is written in another way; none where it is a ratio as it stands, a range,
/// or stronger than its water.
///
/// ```
/// use brimline::form::site::finish::dilution::parts;
/// use brimline::units::System;
/// assert!((parts("2 oz/gal", System::Us).unwrap() - 64.0).abs() < 1e-9);
/// assert_eq!(parts("1:64", System::Us), None);
/// ```
pub fn parts(dilution: &str, system: System) -> Option<f64> {
    match label::read(dilution, system).ok()? {
        Label { basis: Basis::PlusWater | Basis::OfTotal, .. } => None,
        Label { rule: Rule::Strength(window), .. } if window.is_point() => {
            Some(window.low.parts_of_water()).filter(|parts| *parts >= 1.0)
        }
        _ => None,
    }
}

/// An end up or down, the middle to the nearest.
fn number(value: f64, up: bool, down: bool) -> String {
    let way = match (up, down) {
        (true, _) => f64::ceil,
        (_, true) => f64::floor,
        _ => f64::round,
    };
    rounded(value, if up || down { ENDS } else { MIDDLE }, way)
}

/// So many digits, rounded in a way.
fn rounded(value: f64, digits: f64, way: fn(f64) -> f64) -> String {
    let scale = 10_f64.powf(digits - 1.0 - value.log10().floor());
    let scaled = value * scale;
    let near = (scaled - scaled.round()).abs() < 1e-9 * scaled;
    let mut text = ((if near { scaled.round() } else { way(scaled) }) / scale).to_string();
    // Three digits behind a mark could be thousands: a label refuses them.
    if text.split_once('.').is_some_and(|(_, tail)| tail.len() == 3) {
        text.push('0');
    }
    text
}
