//! Turn one unit into another.

use super::super::picture::{Picture, Scales};
use super::super::road::{Led, Road, Way};
use super::super::round::Round;
use super::super::{Draw, Level, Ready, Topic};
use super::{Amount, Exercise, Key, Said, factor};
use crate::source::Source;
use crate::units::{Kind, System, Unit, unit};

/// From, to, what the number is a multiple of, and what kind of amount it is.
type Row = (&'static str, &'static str, Round, Kind);

const HALF: Round = Round::new(5, -1);
const ONE: Round = Round::new(1, 0);
const FIVE: Round = Round::new(5, 0);
const FIFTY: Round = Round::new(50, 0);
const HUNDRED: Round = Round::new(100, 0);

/// Within one system.
const FIRST: &[Row] = &[
    ("gal_us", "floz_us", HALF, Kind::Dose),
    ("floz_us", "gal_us", Round::new(16, 0), Kind::Fill),
    ("lb", "oz", HALF, Kind::Mass),
    ("gal_imp", "floz_imp", HALF, Kind::Dose),
    ("floz_imp", "gal_imp", Round::new(20, 0), Kind::Fill),
    ("l", "ml", HALF, Kind::Dose),
    ("ml", "l", FIFTY, Kind::Fill),
    ("kg", "g", HALF, Kind::Mass),
    ("ml", "cl", FIVE, Kind::Dose),
];

/// From one system to the other.
const SECOND: &[Row] = &[
    ("floz_us", "ml", ONE, Kind::Dose),
    ("ml", "floz_us", Round::new(30, 0), Kind::Dose),
    ("gal_us", "l", ONE, Kind::Fill),
    ("l", "gal_us", FIVE, Kind::Fill),
    ("floz_imp", "ml", ONE, Kind::Dose),
    ("gal_imp", "l", ONE, Kind::Fill),
    ("oz", "g", HALF, Kind::Mass),
    ("in", "cm", ONE, Kind::Width),
];

/// Imperial against US measures, areas, flows and rates.
const THIRD: &[Row] = &[
    ("gal_imp", "gal_us", ONE, Kind::Fill),
    ("gal_us", "gal_imp", ONE, Kind::Fill),
    ("gal_imp", "l", ONE, Kind::Fill),
    ("l", "gal_imp", FIVE, Kind::Fill),
    ("floz_imp", "ml", ONE, Kind::Dose),
    ("gal_us", "ml", HALF, Kind::Dose),
    ("ft2", "m2", HUNDRED, Kind::Area),
    ("m2", "ft2", FIFTY, Kind::Area),
    ("gal_us_per_min", "l_per_min", Round::new(1, -1), Kind::Flow),
    ("gal_us_per_1000ft2", "ml_per_m2", Round::new(1, -1), Kind::Rate),
    ("g", "oz", FIVE, Kind::Mass),
];

/// Multiples go up to this.
const MOST: u32 = 24;

/// Round numbers that people take for a unit in another one. Common practice, no source.
const ROUND: [(&str, &str, f64); 9] = [
    ("floz_us", "ml", 30.0),
    ("floz_imp", "ml", 30.0),
    ("floz_imp", "ml", 28.0),
    ("gal_us", "l", 4.0),
    ("gal_us", "ml", 4_000.0),
    ("gal_imp", "l", 4.5),
    ("oz", "g", 28.0),
    ("oz", "g", 30.0),
    ("in", "cm", 2.5),
];

pub(super) fn once(level: Level, ready: &Ready, draw: &mut Draw) -> Option<Exercise> {
    let rows = match level {
        Level::First => FIRST,
        Level::Second => SECOND,
        Level::Third => THIRD,
    };
    let (from, to, step, kind) = *draw.pick(rows)?;
    let (from, to) = (unit(from)?, unit(to)?);
    // The first two levels stay with the gallon of the house.
    let strange = if ready.system == System::Imperial { System::Us } else { System::Imperial };
    let volumes = [from, to].iter().any(|one| one.code.starts_with("gal") || one.code.starts_with("floz"));
    if level != Level::Third && volumes && [from, to].iter().any(|one| one.system == Some(strange)) {
        return None;
    }
    let entry = step.times(1 + draw.below(MOST)).entry(from.code);
    let (number, _) = entry.value(crate::number::Marks::POINT).ok()?;
    let si = from.to_si(number);
    let key = Key::Amount(Amount::digits(kind, to.code, si));
    let asked = vec![Said::new("practice-ask-units").entry("amount", &entry).text("unit", to.symbol)];
    let mut exercise = Exercise::new(Topic::Units, level, ready, asked, key);
    exercise.amounts(roads(from, to, number));
    exercise.roads.push(Road::new(Way::AsGiven, Led::In(from.code)));
    let (said, source) = unit_told(from, to);
    exercise.because(said, source);
    exercise.picture = Some(Picture::Scales(Scales { si, from: from.code, to: to.code }));
    Some(exercise)
}

/// Where the other gallon, the other ounce, the other direction and a slipped mark lead.
fn roads(from: &Unit, to: &Unit, number: f64) -> Vec<(Way, f64)> {
    let right = from.to_si(number);
    let mut out = Vec::new();
    for one in [from, to] {
        let (way, other) = match one.code {
            "gal_imp" => (Way::UsForImperial, "gal_us"),
            "floz_imp" => (Way::UsForImperial, "floz_us"),
            "gal_us" => (Way::ImperialForUs, "gal_imp"),
            "floz_us" => (Way::ImperialForUs, "floz_imp"),
            _ => continue,
        };
        let by = factor(other) / one.exact.value();
        out.push((way, if one == from { right * by } else { right / by }));
    }
    for (large, small, times) in ROUND {
        // In the unit that is asked for.
        let told = match (from.code, to.code) {
            (one, other) if (one, other) == (large, small) => number * times,
            (one, other) if (other, one) == (large, small) => number / times,
            _ => continue,
        };
        out.push((Way::RoundFactor, to.to_si(told)));
    }
    if from.code.starts_with("floz") && to.code == "ml" {
        // An ounce of weight is 28.35 g: as many mL of water.
        out.push((Way::WeightForVolume, number * factor("oz") / factor("g") * factor("ml")));
    }
    out.push((Way::UpsideDown, number * to.exact.value() / from.exact.value() * to.exact.value()));
    out.push((Way::DecimalSlip, right * 10.0));
    out.push((Way::DecimalSlip, right / 10.0));
    out
}

/// What one of the larger unit is in the smaller one, and where the customary one of them is defined.
fn unit_told(from: &Unit, to: &Unit) -> (Said, Source) {
    let (one, other) = (from.to_si(1.0), to.to_si(1.0));
    // The larger of the two is told in the smaller, so that the number is above 1.
    let (large, small, times) = if one >= other { (from, to, one / other) } else { (to, from, other / one) };
    let number = crate::number::plain(times, 6, '.');
    let source = if large.system == Some(System::Metric) { small.source() } else { large.source() };
    let said = Said::new("practice-because-units")
        .entry("one", &crate::site::Entry::new("1", large.code))
        .entry("many", &crate::site::Entry::new(number, small.code));
    (said, source)
}
