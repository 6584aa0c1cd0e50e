//! What lies on a floor: how thick, and what it weighed.

use super::{Input, Laid, Numbers};
use crate::answer::Value;
use crate::form::{Outcome, What, names};
use crate::number::Marks;
use crate::trade::coverage::{application_rate, film_mass, passing};
use crate::trade::formula;
use crate::units::{ApplicationRate, Area, Density, Flow, Kind, Length, Quantity, Speed, System};

/// A sheet of office paper, 80 g/m²: about a tenth of a millimetre. Common practice, no source.
pub const SHEET: Length = Length::new(1e-4);

/// Water at 20 °C, 998 kg/m³ (IAPWS-95). A use solution is little else.
const WATER: Density = Density::new(998.0);

/// The edge of the floor tile that is drawn: 12 in, or 30 cm. Common practice, no source.
///
/// ```
/// use brimline::practice::tile;
/// use brimline::units::{Length, System};
/// assert_eq!(tile(System::Metric), Length::new(0.3));
/// ```
pub const fn tile(system: System) -> Length {
    match system {
        System::Metric => Length::new(0.3),
        System::Us | System::Imperial => Length::new(0.3048),
    }
}

/// What is drawn of a film, in SI units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Film {
    /// How thick it lies, m.
    pub thickness: f64,
    /// The edge of the tile, m.
    pub tile: f64,
    /// What lies on the tile, m³.
    pub on_tile: f64,
    /// What it weighed on each area, kg/m².
    pub weight: f64,
    /// Sheets of paper that are as thick.
    pub sheets: f64,
}

/// Works it out: `a = Q/(v (w − o))` where a setting makes it, `d = a`, `w = a ρ`.
pub(super) fn work(numbers: &Numbers, out: &mut Outcome, system: System, marks: Marks) -> Option<Film> {
    let rate = match numbers.laid {
        Laid::Rate => numbers.read::<ApplicationRate>(out, Input::Rate, marks)?,
        Laid::Setting => by_setting(numbers, out, marks)?,
    };
    let (thickness, mass, tile) = (rate.thickness(), film_mass(rate, WATER), tile(system));
    let on_tile = rate * Area::new(tile.si() * tile.si());
    let sheets = thickness / SHEET;
    let (laid, thick) = (Value::new(rate, Kind::Rate), Value::new(thickness, Kind::Thickness));
    let weighed = Value::new(mass, Kind::FilmMass);
    let answer = &mut out.answer;
    answer.figure(names::NUMBERS_RATE, laid);
    answer.figure(names::NUMBERS_THICKNESS, thick);
    answer.figure(names::NUMBERS_WEIGHT, weighed);
    answer.figure(names::NUMBERS_TILE, Value::new(on_tile, Kind::Dose));
    answer.figure(names::NUMBERS_SHEETS, Value::plain(sheets, Kind::Ratio));
    answer.step(&formula::THICKNESS, &[("m", laid)], thick);
    answer.step(&formula::FILM_MASS, &[("a", laid), ("ρ", Value::new(WATER, Kind::Density))], weighed);
    let (thickness, tile) = (thickness.si(), tile.si());
    Some(Film { thickness, tile, on_tile: on_tile.si(), weight: mass.si(), sheets })
}

fn by_setting(numbers: &Numbers, out: &mut Outcome, marks: Marks) -> Option<ApplicationRate> {
    let flow = numbers.read::<Flow>(out, Input::Flow, marks);
    let speed = numbers.read::<Speed>(out, Input::Speed, marks);
    let path = numbers.read::<Length>(out, Input::Path, marks);
    let overlap = match numbers.overlap.read_optional::<Length>(Input::Overlap.field().limit(), marks) {
        Ok(overlap) => Some(overlap.unwrap_or(Length::ZERO)),
        Err(mistake) => {
            out.trouble(Input::Overlap.name(), What::Number(mistake));
            None
        }
    };
    let (flow, speed, path, overlap) = (flow?, speed?, path?, overlap?);
    if overlap >= path {
        out.trouble(Input::Overlap.name(), What::OverlapTakesPath);
        return None;
    }
    let passed = passing(speed, path, overlap);
    let rate = application_rate(flow, passed);
    let given = [("Q", Value::new(flow, Kind::Flow)), ("P", Value::new(passed, Kind::Productivity))];
    let width = [("v", Value::new(speed, Kind::Speed)), ("w − o", Value::new(path - overlap, Kind::Width))];
    out.answer.step(&formula::PASSING, &width, Value::new(passed, Kind::Productivity));
    out.answer.step(&formula::RATE, &given, Value::new(rate, Kind::Rate));
    Some(rate)
}
