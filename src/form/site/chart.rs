//! The wall chart of a fill station: one standard, every machine in use, at the quarters of its tank.

use super::super::action::Shelf;
use super::super::fill::{Fill, unsure};
use super::super::{Field, Trouble, Typed, What, flow, names};
use super::asked::{asked, in_use};
use crate::answer::{Remark, Value, Weight};
use crate::number::Marks;
use crate::site::{Entry, Floor, Machine, Measure, Product, Record, Standard};
use crate::units::{Duration, Kind};

/// How full, percent of the tank: the marks that a tank has.
pub const LEVELS: [u32; 4] = [100, 75, 50, 25];

/// Why a number does not stand where it would stand.
#[derive(Clone, Debug, PartialEq)]
pub enum Why {
    /// What is to be mended; none where the fill does not say.
    Troubles(Vec<Trouble>),
    /// What stands against it.
    Remarks(Vec<Remark>),
    /// The standard is not for this machine, for the reason that its author gives.
    LeftOut(String),
}

/// A dose that can be measured out as it is written.
#[derive(Clone, Debug)]
pub struct Dose {
    /// The stable name of the figure.
    pub name: &'static str,
    /// The amount in whole marks, strokes or caps, or the setting or tip that draws it.
    pub value: Value,
    /// The fill that it was worked out with.
    pub fill: Fill,
}

/// One machine at one level.
#[derive(Clone, Debug)]
pub struct Cell {
    /// How full, percent of the tank.
    pub percent: u32,
    /// What was asked.
    pub asked: Typed,
    /// The dose, or the reason why there is none.
    pub dose: Result<Dose, Why>,
}

/// The flow setting of a machine on the floor.
#[derive(Clone, Debug, PartialEq)]
pub struct Setting {
    /// Its number.
    pub number: Value,
    /// Where it misses what the floor should get.
    pub remarks: Vec<Remark>,
}

/// One machine.
#[derive(Clone, Debug)]
pub struct Row {
    /// The machine.
    pub machine: Machine,
    /// The levels, in the order of [`LEVELS`].
    pub cells: Vec<Cell>,
    /// The flow setting, or the reason why there is none.
    pub setting: Result<Setting, Why>,
    /// Where rules clash in this machine, with both numbers, of a full tank.
    pub clashes: Vec<Remark>,
}

impl Row {
    /// The reason, where one reason keeps every level from having a dose.
    pub fn barred(&self) -> Option<&Why> {
        let first = self.cells.first()?.dose.as_ref().err()?;
        self.cells.iter().all(|cell| cell.dose.as_ref().err() == Some(first)).then_some(first)
    }
}

/// How long the floor must stay wet.
#[derive(Clone, Debug, PartialEq)]
pub enum Contact {
    /// Neither the standard nor the label asks for a time.
    NotAsked,
    /// The product disinfects, and nobody has typed its time in.
    Unknown,
    /// So long: the longer of what the standard and the label ask.
    Least(Value),
    /// A time that does not read.
    Wrong(Trouble),
}

/// All that a chart says; every number is worked out as Fill and Flow do it.
#[derive(Clone, Debug)]
pub struct Chart {
    /// The standard.
    pub standard: Standard,
    /// Its product.
    pub product: Product,
    /// Its floor.
    pub floor: Floor,
    /// The measure on the wall.
    pub measure: Measure,
    /// The machines in use.
    pub rows: Vec<Row>,
    /// How long the floor must stay wet.
    pub contact: Contact,
    /// How often, where that was typed.
    pub frequency: Option<Value>,
    /// What else must be minded, whatever the machine.
    pub warnings: Vec<Remark>,
}

/// Works a chart out.
///
/// # Errors
/// The shelf on which a record of the standard is missing: another one in its place would be another recipe.
///
/// ```
/// use brimline::form::{Typed, site::chart::chart};
/// use brimline::number::Marks;
/// use brimline::site::Standard;
/// let standard = Standard { floor: "vinyl".into(), product: "neutral".into(), dilution: "1:64".into(), ..Standard::default() };
/// let chart = chart(&Typed::default(), &standard, "jug", Marks::POINT).unwrap();
/// let full = chart.rows[0].cells[0].dose.as_ref().unwrap();
/// assert!((full.value.si - 20.0 * 29.573_529_562_5e-6).abs() < 1e-12); // 10 gal / 65 = 19.69, so 20 fl oz
/// ```
pub fn chart(typed: &Typed, standard: &Standard, measure: &str, marks: Marks) -> Result<Chart, Shelf> {
    fn found<T: Record + Clone>(all: &[T], id: &str, shelf: Shelf) -> Result<T, Shelf> {
        all.iter().find(|one| one.id() == id).cloned().ok_or(shelf)
    }
    let site = &typed.site;
    let product = found(&site.products, &standard.product, Shelf::Product)?;
    let floor = found(&site.floors, &standard.floor, Shelf::Floor)?;
    let measure = found(&site.measures, measure, Shelf::Measure)?;
    let mut warnings = Vec::new();
    let rows: Vec<Row> = in_use(&site.machines)
        .map(|machine| row(typed, standard, machine, &measure.id, &mut warnings, marks))
        .collect();
    if rows.is_empty() {
        return Err(Shelf::Machine);
    }
    let contact = contact(standard, &product, marks);
    let frequency = standard.frequency.read(Field::StandardFrequency.limit(), marks).ok();
    let frequency = frequency.map(|often: crate::units::Frequency| Value::new(often, Kind::Frequency));
    Ok(Chart { standard: standard.clone(), product, floor, measure, rows, contact, frequency, warnings })
}

/// What the measure cannot keep: a row with such a number would not be what it says.
const MISSED: [&str; 5] = [
    "remark-rounded-outside",
    "remark-rounded-below-minimum",
    "remark-packets-level",
    "remark-measure-coarse",
    "remark-measure-too-big",
];

/// Where rules clash.
const CLASHES: [&str; 4] =
    ["remark-clash-machine", "remark-clash-label", "remark-standard-outside", "remark-powder-machine"];

/// What the chart says in its own words, or is of one machine.
const TOLD: [&str; 5] = [
    "remark-contact",
    "remark-contact-unknown",
    "remark-hazards-unknown",
    "remark-standard-narrows",
    "remark-bottle-short",
];

fn row(
    typed: &Typed,
    standard: &Standard,
    machine: &Machine,
    measure: &str,
    warnings: &mut Vec<Remark>,
    marks: Marks,
) -> Row {
    let mut clashes: Vec<Remark> = Vec::new();
    if let Some(reason) = standard.left_out(&machine.id) {
        let why = || Why::LeftOut(reason.to_owned());
        let cell = |percent| Cell {
            percent,
            asked: asked(typed, standard, &machine.id, measure, percent),
            dose: Err(why()),
        };
        let cells = LEVELS.map(cell).to_vec();
        return Row { machine: machine.clone(), cells, setting: Err(why()), clashes };
    }
    let cells = LEVELS
        .map(|percent| {
            let asked = asked(typed, standard, &machine.id, measure, percent);
            let fill = unsure(&asked, marks);
            for remark in fill.outcome.answer.of_weight(Weight::Warn) {
                let told = TOLD.contains(&remark.code) || MISSED.contains(&remark.code);
                if CLASHES.contains(&remark.code) {
                    note(&mut clashes, remark);
                } else if !told {
                    note(warnings, remark);
                }
            }
            Cell { percent, asked, dose: dose(fill) }
        })
        .to_vec();
    let setting = setting(&asked(typed, standard, &machine.id, measure, 100), marks);
    Row { machine: machine.clone(), cells, setting, clashes }
}

/// The first of each code: the levels say the same with other numbers, the full tank first.
fn note(all: &mut Vec<Remark>, remark: &Remark) {
    if all.iter().all(|one| one.code != remark.code) {
        all.push(remark.clone());
    }
}

fn dose(fill: Fill) -> Result<Dose, Why> {
    let outcome = &fill.outcome;
    // What may not be used at all comes before what cannot be measured.
    for against in [|one: &Remark| one.weight == Weight::Stop, |one: &Remark| MISSED.contains(&one.code)] {
        let reasons: Vec<Remark> =
            outcome.answer.remarks.iter().filter(|one| against(one)).cloned().collect();
        if !reasons.is_empty() {
            return Err(Why::Remarks(reasons));
        }
    }
    match fill.measured() {
        Some((name, value)) if outcome.troubles.is_empty() => Ok(Dose { name, value, fill }),
        _ => Err(Why::Troubles(fill.outcome.troubles)),
    }
}

fn setting(asked: &Typed, marks: Marks) -> Result<Setting, Why> {
    let outcome = flow::work(asked, marks).outcome;
    if outcome.answer.stopped() {
        return Err(Why::Remarks(outcome.answer.of_weight(Weight::Stop).cloned().collect()));
    }
    let Some(number) = outcome.answer.get(names::FLOW_SETTING) else {
        return Err(Why::Troubles(outcome.troubles));
    };
    let misses = |code: &str| code.starts_with("remark-flow-") && code != "remark-flow-lower";
    let warned = outcome.answer.of_weight(Weight::Warn);
    Ok(Setting { number, remarks: warned.filter(|remark| misses(remark.code)).cloned().collect() })
}

/// How long a standard keeps the floor wet.
pub fn contact(standard: &Standard, product: &Product, marks: Marks) -> Contact {
    let read = |entry: &Entry, field: Field| {
        let wrong = |mistake| Trouble { name: field.name(), what: What::Number(mistake) };
        entry.read_optional::<Duration>(field.limit(), marks).map_err(wrong)
    };
    let own = read(&standard.contact, Field::StandardContact);
    match (own, read(&product.contact, Field::Contact)) {
        (Err(trouble), _) | (_, Err(trouble)) => Contact::Wrong(trouble),
        (Ok(None), Ok(None)) if product.disinfects() => Contact::Unknown,
        (Ok(own), Ok(label)) => match own.into_iter().chain(label).reduce(Duration::max) {
            Some(least) => Contact::Least(Value::new(least, Kind::Time)),
            None => Contact::NotAsked,
        },
    }
}
