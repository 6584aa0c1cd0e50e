//! Every unit that Brimline reads or writes, one row each.

use super::System::{Imperial, Metric, Us};
use super::{Dimension, Exact, System, Unit};
use crate::source::{Source, uncited};

const SP811: Source = Source::published("NIST SP 811 (2008), Appendix B: inch 0.0254 m, US gallon 231 in³");
const UK1995: Source =
    Source::published("UK Units of Measurement Regulations 1995: gallon 4.546 09 L, pint 1/8 gallon");
const POUND_1959: Source =
    Source::published("NIST SP 811 (2008), Appendix B.8: avoirdupois pound 0.453 592 37 kg, 16 ounces");
const GREGORIAN: Source =
    Source::published("ISO 8601-1:2019: the Gregorian calendar; its mean year is 365.2425 days");
const SI: Source = Source::published("BIPM SI Brochure, 9th edition (2019), tables 2, 7 and 8");
const SI_NAMED: Source = Source::published("BIPM SI Brochure, 9th edition (2019), tables 4 and 7");

const ONE: Exact = Exact::new(1, 1);
const MINUTE: Exact = Exact::new(60, 1);
const HOUR: Exact = Exact::new(3_600, 1);
const DAY: Exact = Exact::new(86_400, 1);
const WEEK: Exact = Exact::new(604_800, 1);
/// The mean Gregorian year, 365.2425 days: 97 leap years in 400.
const YEAR: Exact = Exact::new(31_556_952, 1);
const LITRE: Exact = Exact::new(1, 1_000);
const MILLILITRE: Exact = Exact::new(1, 1_000_000);
const INCH: Exact = Exact::new(254, 10_000);
const FOOT: Exact = Exact::new(3_048, 10_000);
const FOOT2: Exact = FOOT.times(FOOT);
const FOOT2_1000: Exact = FOOT2.times(Exact::new(1_000, 1));
const GAL_US: Exact = Exact::new(231, 1).times(INCH).times(INCH).times(INCH);
const GAL_US_1000: Exact = GAL_US.times(Exact::new(1_000, 1));
const GAL_IMP: Exact = Exact::new(454_609, 100_000_000);
const POUND: Exact = Exact::new(45_359_237, 100_000_000);
const OUNCE: Exact = part(POUND, 16);
const GRAM: Exact = Exact::new(1, 1_000);

const fn part(whole: Exact, parts: u64) -> Exact {
    whole.over(Exact::new(parts, 1))
}

const fn row(
    code: &'static str,
    dimension: Dimension,
    exact: Exact,
    symbol: &'static str,
    aliases: &'static [&'static str],
    system: Option<System>,
    source: Source,
) -> (Unit, Source) {
    (Unit { code, dimension, exact, zero: None, symbol, aliases, system }, source)
}

/// A scale of temperature: one degree, and its zero in kelvin.
const fn degree(
    code: &'static str,
    exact: Exact,
    zero: Exact,
    symbol: &'static str,
    system: System,
) -> (Unit, Source) {
    let unit = Unit {
        code,
        dimension: Dimension::Temperature,
        exact,
        zero: Some(zero),
        symbol,
        aliases: &[],
        system: Some(system),
    };
    (unit, SP811)
}

/// The table. Names that both the US and the imperial system use (gallon, ounce) stand in no row:
/// the label reader decides them by what the label or the reader's system says.
#[rustfmt::skip]
pub(super) const CITED: &[(Unit, Source)] = &[
    row("ml", Dimension::Volume, MILLILITRE, "mL", &["ml", "mls", "cc", "milliliter", "milliliters", "millilitre", "millilitres"], Some(Metric), SI),
    row("cl", Dimension::Volume, part(LITRE, 100), "cL", &["cl", "centiliter", "centiliters", "centilitre", "centilitres"], Some(Metric), SI),
    row("l", Dimension::Volume, LITRE, "L", &["l", "lt", "ltr", "liter", "liters", "litre", "litres"], Some(Metric), SI),
    row("floz_us", Dimension::Volume, part(GAL_US, 128), "fl oz", &[], Some(Us), SP811),
    row("tsp_us", Dimension::Volume, part(GAL_US, 768), "tsp", &["tsp", "teaspoon", "teaspoons"], Some(Us), SP811),
    row("tbsp_us", Dimension::Volume, part(GAL_US, 256), "tbsp", &["tbsp", "tablespoon", "tablespoons"], Some(Us), SP811),
    row("cup_us", Dimension::Volume, part(GAL_US, 16), "cup", &["cup", "cups"], Some(Us), SP811),
    row("pt_us", Dimension::Volume, part(GAL_US, 8), "pt", &[], Some(Us), SP811),
    row("qt_us", Dimension::Volume, part(GAL_US, 4), "qt", &[], Some(Us), SP811),
    row("gal_us", Dimension::Volume, GAL_US, "gal", &[], Some(Us), SP811),
    row("floz_imp", Dimension::Volume, part(GAL_IMP, 160), "imp fl oz", &[], Some(Imperial), UK1995),
    row("pt_imp", Dimension::Volume, part(GAL_IMP, 8), "imp pt", &[], Some(Imperial), UK1995),
    row("qt_imp", Dimension::Volume, part(GAL_IMP, 4), "imp qt", &[], Some(Imperial), UK1995),
    row("gal_imp", Dimension::Volume, GAL_IMP, "imp gal", &[], Some(Imperial), UK1995),

    row("l_per_min", Dimension::Flow, LITRE.over(MINUTE), "L/min", &[], Some(Metric), SI),
    row("ml_per_min", Dimension::Flow, MILLILITRE.over(MINUTE), "mL/min", &[], Some(Metric), SI),
    row("gal_us_per_min", Dimension::Flow, GAL_US.over(MINUTE), "gal/min", &[], Some(Us), SP811),
    row("floz_us_per_min", Dimension::Flow, part(GAL_US, 128).over(MINUTE), "fl oz/min", &[], Some(Us), SP811),
    row("gal_imp_per_min", Dimension::Flow, GAL_IMP.over(MINUTE), "imp gal/min", &[], Some(Imperial), UK1995),

    row("m2", Dimension::Area, ONE, "m²", &[], Some(Metric), SI),
    row("ft2", Dimension::Area, FOOT2, "ft²", &[], Some(Us), SP811),

    row("cm", Dimension::Length, Exact::new(1, 100), "cm", &[], Some(Metric), SI),
    row("mm", Dimension::Length, Exact::new(1, 1_000), "mm", &[], Some(Metric), SI),
    row("m", Dimension::Length, ONE, "m", &[], Some(Metric), SI),
    row("um", Dimension::Length, Exact::new(1, 1_000_000), "µm", &[], Some(Metric), SI),
    row("mil", Dimension::Length, part(INCH, 1_000), "mil", &[], Some(Us), SP811),
    row("in", Dimension::Length, INCH, "in", &[], Some(Us), SP811),
    row("ft", Dimension::Length, FOOT, "ft", &[], Some(Us), SP811),

    row("km_per_h", Dimension::Speed, Exact::new(1_000, 1).over(HOUR), "km/h", &[], Some(Metric), SI),
    row("m_per_min", Dimension::Speed, ONE.over(MINUTE), "m/min", &[], Some(Metric), SI),
    row("m_per_s", Dimension::Speed, ONE, "m/s", &[], Some(Metric), SI),
    row("mph", Dimension::Speed, Exact::new(44_704, 100_000), "mph", &[], Some(Us), SP811),
    row("ft_per_min", Dimension::Speed, FOOT.over(MINUTE), "ft/min", &[], Some(Us), SP811),

    row("s", Dimension::Duration, ONE, "s", &[], None, SI),
    row("min", Dimension::Duration, MINUTE, "min", &[], None, SI),
    row("h", Dimension::Duration, HOUR, "h", &[], None, SI),
    row("d", Dimension::Duration, DAY, "d", &[], None, SI),

    row("ml_per_m2", Dimension::ApplicationRate, MILLILITRE, "mL/m²", &[], Some(Metric), SI),
    row("gal_us_per_1000ft2", Dimension::ApplicationRate, GAL_US.over(FOOT2_1000), "gal/1000 ft²", &[], Some(Us), SP811),
    row("gal_imp_per_1000ft2", Dimension::ApplicationRate, GAL_IMP.over(FOOT2_1000), "imp gal/1000 ft²", &[], Some(Imperial), UK1995),

    row("m2_per_l", Dimension::Coverage, ONE.over(LITRE), "m²/L", &[], Some(Metric), SI),
    row("ft2_per_gal_us", Dimension::Coverage, FOOT2.over(GAL_US), "ft²/gal", &[], Some(Us), SP811),
    row("ft2_per_gal_imp", Dimension::Coverage, FOOT2.over(GAL_IMP), "ft²/imp gal", &[], Some(Imperial), UK1995),

    row("m2_per_h", Dimension::Productivity, ONE.over(HOUR), "m²/h", &[], Some(Metric), SI),
    row("ft2_per_h", Dimension::Productivity, FOOT2.over(HOUR), "ft²/h", &[], Some(Us), SP811),

    row("one", Dimension::Plain, ONE, "", &[], None, Source::DEFINITION),

    row("percent", Dimension::VolumeFraction, Exact::new(1, 100), "%", &["%", "percent"], None, SI),

    row("g", Dimension::Mass, GRAM, "g", &["g", "gm", "gram", "grams"], Some(Metric), SI),
    row("kg", Dimension::Mass, ONE, "kg", &["kg", "kilogram", "kilograms"], Some(Metric), SI),
    row("oz", Dimension::Mass, OUNCE, "oz wt", &["oz wt", "oz av", "oz avdp"], Some(Us), POUND_1959),
    row("lb", Dimension::Mass, POUND, "lb", &["lb", "lbs", "pound", "pounds"], Some(Us), POUND_1959),

    row("g_per_ml", Dimension::Density, Exact::new(1_000, 1), "g/mL", &["g/ml", "kg/l", "g/cm3", "g/cm³"], Some(Metric), SI),
    row("lb_per_gal_us", Dimension::Density, POUND.over(GAL_US), "lb/gal", &[], Some(Us), POUND_1959),

    row("g_per_l", Dimension::MassConcentration, ONE, "g/L", &["g/l"], Some(Metric), SI),
    row("mg_per_l", Dimension::MassConcentration, GRAM, "ppm", &["ppm", "mg/l", "ppm w/v"], None, SI),
    row("percent_wv", Dimension::MassConcentration, Exact::new(10, 1), "% w/v", &["% w/v", "g/100 ml"], None, SI),
    row("oz_per_gal_us", Dimension::MassConcentration, OUNCE.over(GAL_US), "oz wt/gal", &[], Some(Us), POUND_1959),
    row("oz_per_gal_imp", Dimension::MassConcentration, OUNCE.over(GAL_IMP), "oz wt/imp gal", &[], Some(Imperial), POUND_1959),

    row("percent_ww", Dimension::MassFraction, Exact::new(1, 100), "% w/w", &["% w/w"], None, SI),
    row("mg_per_kg", Dimension::MassFraction, Exact::new(1, 1_000_000), "mg/kg", &["mg/kg", "ppm w/w"], None, SI),
    row("mg_per_m2", Dimension::ArealMass, Exact::new(1, 1_000_000), "mg/m²", &[], Some(Metric), SI),
    row("g_per_m2", Dimension::ArealMass, GRAM, "g/m²", &[], Some(Metric), SI),
    row("oz_per_ft2", Dimension::ArealMass, OUNCE.over(FOOT2), "oz wt/ft²", &[], Some(Us), POUND_1959),
    row("oz_per_1000ft2", Dimension::ArealMass, OUNCE.over(FOOT2_1000), "oz wt/1000 ft²", &[], Some(Us), POUND_1959),

    row("money", Dimension::Money, ONE, "", &[], None, Source::DEFINITION),
    row("money_per_gal_us", Dimension::VolumePrice, ONE.over(GAL_US), "per gal", &[], Some(Us), SP811),
    row("money_per_l", Dimension::VolumePrice, ONE.over(LITRE), "per L", &[], Some(Metric), SI),
    row("money_per_m3", Dimension::VolumePrice, ONE, "per m³", &[], Some(Metric), SI),
    row("money_per_1000gal_us", Dimension::VolumePrice, ONE.over(GAL_US_1000), "per 1000 gal", &[], Some(Us), SP811),
    row("money_per_gal_imp", Dimension::VolumePrice, ONE.over(GAL_IMP), "per imp gal", &[], Some(Imperial), UK1995),
    row("money_per_h", Dimension::Wage, ONE.over(HOUR), "per h", &[], None, SI),
    row("money_per_1000ft2", Dimension::AreaPrice, ONE.over(FOOT2_1000), "per 1000 ft²", &[], Some(Us), SP811),
    row("money_per_100m2", Dimension::AreaPrice, Exact::new(1, 100), "per 100 m²", &[], Some(Metric), SI),
    row("per_day", Dimension::Frequency, ONE.over(DAY), "a day", &[], None, SI),
    row("per_week", Dimension::Frequency, ONE.over(WEEK), "a week", &[], None, SI),
    row("per_month", Dimension::Frequency, ONE.over(part(YEAR, 12)), "a month", &[], None, GREGORIAN),
    row("per_year", Dimension::Frequency, ONE.over(YEAR), "a year", &[], None, GREGORIAN),

    row("kpa", Dimension::Pressure, Exact::new(1_000, 1), "kPa", &[], None, SI_NAMED),
    row("kj_per_kg", Dimension::SpecificEnergy, Exact::new(1_000, 1), "kJ/kg", &[], None, SI_NAMED),

    degree("deg_c", ONE, Exact::new(27_315, 100), "°C", Metric),
    degree("deg_f", Exact::new(5, 9), Exact::new(45_967, 180), "°F", Us),
];

/// All units.
pub static UNITS: &[Unit] = &uncited::<Unit, { CITED.len() }>(CITED);

/// The unit with this stable code.
///
/// ```
/// use brimline::units::{Quantity, Volume, unit};
/// let gallon = unit("gal_us").unwrap();
/// assert_eq!(Volume::of(1.0, gallon).unwrap().si(), 0.003_785_411_784);
/// assert!(unit("firkin").is_none());
/// ```
pub fn unit(code: &str) -> Option<&'static Unit> {
    UNITS.iter().find(|unit| unit.code == code)
}
