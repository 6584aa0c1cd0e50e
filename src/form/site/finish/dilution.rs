//! A strength inside a label's range, written so that it reads back as one number of one meaning.

use crate::trade::governing::Aim;
use crate::units::{Quantity, Volume, VolumeFraction, unit};

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

/// An end up or down, the middle to the nearest.
fn number(value: f64, up: bool, down: bool) -> String {
    let digits = if up || down { ENDS } else { MIDDLE };
    let scale = 10_f64.powf(digits - 1.0 - value.log10().floor());
    let scaled = value * scale;
    let whole = match scaled {
        near if (near - near.round()).abs() < 1e-9 * near => near.round(),
        over if up => over.ceil(),
        over if down => over.floor(),
        other => other.round(),
    };
    let mut text = (whole / scale).to_string();
    // Three digits behind a mark could be thousands: a label refuses them.
    if text.split_once('.').is_some_and(|(_, tail)| tail.len() == 3) {
        text.push('0');
    }
    text
}
