//! The log as a table for people.

use super::{Amount, Current, Named, Scale};
use crate::number::{Marks, plain};
use crate::site::area_list::guard::defused;
use crate::units::{System, Unit, unit};
use csv::{QuoteStyle, WriterBuilder};

/// By this a spreadsheet knows that the file is UTF-8.
const UTF_8: &str = "\u{feff}";

/// Digits of a number.
const DIGITS: i32 = 12;

/// Digits of a number that a person typed.
const FEWER: i32 = 8;

/// What rounding to the twelve digits of a record can do to a number in another unit, relative.
const NOISE: f64 = 5e-12;

/// One column.
#[derive(Debug)]
pub struct Column {
    /// What it is called, without its unit.
    pub header: &'static str,
    /// What stands in it.
    cell: Cell,
}

/// How a cell is written.
#[derive(Debug)]
enum Cell {
    /// A text of the fill.
    Text(fn(&Current) -> String),
    /// A dose, in the unit in which it is poured.
    Dose(fn(&Current) -> &Amount),
    /// What a tank takes.
    Tank(fn(&Current) -> &Amount),
    /// A reading on this scale, in this unit.
    Reading(Scale, &'static str),
}

const fn text(header: &'static str, get: fn(&Current) -> String) -> Column {
    Column { header, cell: Cell::Text(get) }
}

const fn column(header: &'static str, cell: Cell) -> Column {
    Column { header, cell }
}

/// All columns, in order.
pub const COLUMNS: &[Column] = &[
    text("id", |one| one.id.to_string()),
    text("date", |one| one.when.date.to_string()),
    text("when", |one| one.said.to_string()),
    text("written", |one| one.written.to_string()),
    text("device", |one| one.station.to_string()),
    text("who", |one| one.who.to_string()),
    text("machine", |one| one.fill.machine.name.to_string()),
    text("areas", |one| names(&one.fill.areas)),
    text("product", |one| one.fill.product.name.to_string()),
    text("floor", |one| one.fill.floor.name.to_string()),
    text("standard", |one| one.fill.standard.name.to_string()),
    text("version", |one| if one.fill.version == 0 { String::new() } else { one.fill.version.to_string() }),
    column("concentrate planned", Cell::Dose(|one| &one.fill.concentrate)),
    column("concentrate measured", Cell::Dose(|one| &one.fill.measured)),
    text("measured as shown", |one| one.fill.measured.text.to_string()),
    column("water planned", Cell::Tank(|one| &one.fill.water)),
    column("tank level", Cell::Tank(|one| &one.fill.level)),
    column("reading", Cell::Reading(Scale::Active, "mg_per_l")),
    column("reading", Cell::Reading(Scale::Ratio, "percent")),
    text("reading as shown", |one| one.fill.reading.text.to_string()),
    text("deviation", |one| one.fill.deviation.code().to_owned()),
    text("reason", |one| one.reason.to_string()),
    text("drain", |one| one.fill.checklist.drain.code().to_owned()),
    text("rinse", |one| one.fill.checklist.rinse.code().to_owned()),
    text("filters", |one| one.fill.checklist.filters.code().to_owned()),
    text("bag or brush", |one| one.fill.checklist.brush.code().to_owned()),
    text("squeegee", |one| one.fill.checklist.squeegee.code().to_owned()),
    text("notes", |one| one.notes.to_string()),
    text("corrections", |one| one.corrections.iter().map(ToString::to_string).collect::<Vec<_>>().join("; ")),
    text("struck", |one| if one.fill.struck { "yes" } else { "no" }.to_owned()),
];

fn names(all: &[Named]) -> String {
    all.iter().map(|one| &*one.name).collect::<Vec<_>>().join("; ")
}

/// Fills as CSV, RFC 4180, a row each, as they stand after their corrections.
///
/// * `system`: whose units stand in the header.
/// * `marks`: with a decimal comma cells are parted by semicolons.
///
/// What nobody knows is an empty cell. A text that a spreadsheet would take for a formula gets an apostrophe before
/// it (CWE-1236). This table is for reading: the log comes back from [`super::write()`] only.
///
/// ```
/// use brimline::number::Marks;
/// use brimline::site::log::{Amount, Fill, Log, Part, Stamp, Words, csv, current};
/// use brimline::units::System;
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// let mut log = Log::default();
/// let fill = Fill { measured: Amount::new(0.000_6, "600 mL"), ..Fill::default() };
/// log.fill(&stamp, fill, Words::default().with(Part::Notes, "=1+1")).unwrap();
/// let table = csv(&current(&log).fills, System::Metric, Marks::POINT);
/// assert!(table.contains("concentrate measured (mL)") && table.contains(",600,") && table.contains("'=1+1"));
/// ```
pub fn csv(fills: &[Current], system: System, marks: Marks) -> String {
    let units: Vec<Option<&Unit>> = COLUMNS.iter().map(|column| column.unit(system)).collect();
    let separator = if marks.decimal == ',' { b';' } else { b',' };
    let mut table = WriterBuilder::new()
        .delimiter(separator)
        // Texts may hold what another spreadsheet parts cells by.
        .quote_style(QuoteStyle::NonNumeric)
        .from_writer(UTF_8.as_bytes().to_vec());
    let header = COLUMNS.iter().zip(&units).map(|(column, unit)| match unit {
        Some(unit) => format!("{} ({})", column.header, unit.symbol),
        None => column.header.to_owned(),
    });
    // Writing into memory does not fail.
    let _ = table.write_record(header);
    for fill in fills {
        let _ = table.write_record(
            COLUMNS.iter().zip(&units).map(|(column, unit)| column.written(fill, *unit, marks)),
        );
    }
    table.into_inner().ok().and_then(|bytes| String::from_utf8(bytes).ok()).unwrap_or_default()
}

impl Column {
    /// The unit that stands in the header.
    pub fn unit(&self, system: System) -> Option<&'static Unit> {
        let (dose, tank) = match system {
            System::Us => ("floz_us", "gal_us"),
            System::Metric => ("ml", "l"),
            System::Imperial => ("floz_imp", "gal_imp"),
        };
        match self.cell {
            Cell::Text(_) => None,
            Cell::Dose(_) => unit(dose),
            Cell::Tank(_) => unit(tank),
            Cell::Reading(_, code) => unit(code),
        }
    }

    fn written(&self, one: &Current, unit: Option<&Unit>, marks: Marks) -> String {
        let si = match &self.cell {
            Cell::Text(get) => return defused(&get(one)),
            Cell::Dose(get) | Cell::Tank(get) => get(one).si,
            Cell::Reading(scale, _) if one.fill.reading.scale == *scale => one.fill.reading.si,
            Cell::Reading(..) => return String::new(),
        };
        match (si.value(), unit) {
            (Some(si), Some(unit)) => written(unit.from_si(si), marks),
            _ => String::new(),
        }
    }
}

/// A number; where what a record rounded away shows as noise in its last digits, the plain number that it comes from.
fn written(value: f64, marks: Marks) -> String {
    let [short, whole] = [FEWER, DIGITS].map(|digits| plain(value, digits, '.'));
    let is_noise = short.parse::<f64>().is_ok_and(|short| (short - value).abs() <= NOISE * value.abs());
    (if is_noise { short } else { whole }).replace('.', &marks.decimal.to_string())
}
