//! The list of areas as a table for spreadsheets: written with units in the header, read as people keep it.

use super::{Area, Entry, Site};
use crate::number::{self, Marks};
use crate::units::{Dimension, UNITS, Unit, unit};
use csv::{ReaderBuilder, WriterBuilder};

/// What was read.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Imported {
    /// Every row, in the order of the file; none is left out.
    pub areas: Vec<Area>,
    /// What is to be mended, by the line of the file, from 1.
    pub flaws: Vec<(u64, Flaw)>,
}

/// What is wrong with a file or one of its lines.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Flaw {
    /// No column is called name, area or room.
    NoName,
    /// No column is called size.
    NoSize,
    /// The size is no number; it was kept as it stands.
    Size,
    /// The site has no floor of this name.
    Floor,
    /// The site has no product of this name.
    Product,
    /// The line could not be read as text.
    Line,
}

impl Flaw {
    /// The word key.
    pub fn key(self) -> &'static str {
        match self {
            Self::NoName => "csv-no-name",
            Self::NoSize => "csv-no-size",
            Self::Size => "csv-size",
            Self::Floor => "csv-floor",
            Self::Product => "csv-product",
            Self::Line => "csv-line",
        }
    }
}

/// The areas as CSV, RFC 4180: name, size in `unit`, floor, product, whether it is cleaned.
///
/// Sizes that are numbers are told in the one unit of the header; others stand as they were typed. A text that
/// a spreadsheet would take for a formula gets an apostrophe before it, which [`import`] takes away.
///
/// ```
/// use brimline::number::Marks;
/// use brimline::site::{area_list::export, demo};
/// use brimline::units::unit;
/// let text = export(&demo(), unit("ft2").unwrap(), Marks::POINT);
/// assert!(text.starts_with("name,size (ft²),floor,product,clean\nReading room,6000,"));
/// ```
pub fn export(known: &Site, size: &Unit, marks: Marks) -> String {
    let semicolon = marks.decimal == ',';
    let mut table =
        WriterBuilder::new().delimiter(if semicolon { b';' } else { b',' }).from_writer(Vec::new());
    let plain = Marks { group: '\u{0}', ..marks };
    let write = |si: f64| number::write(size.from_si(si), 9, plain).replace('\u{0}', "");
    // Writing into memory does not fail.
    let _ = table.write_record(["name", &format!("size ({})", size.symbol), "floor", "product", "clean"]);
    for area in &known.areas {
        let own = unit(&area.size.unit).filter(|own| own.dimension == size.dimension);
        let read = number::read(&area.size.text, marks).ok().zip(own);
        let told = read.map_or_else(|| area.size.text.clone(), |(value, own)| write(own.to_si(value)));
        let named = |name: Option<&String>| name.map(|name| defused(name)).unwrap_or_default();
        let floor = known.floors.iter().find(|floor| floor.id == area.floor).map(|floor| &floor.name);
        let product = known.products.iter().find(|one| one.id == area.product).map(|one| &one.name);
        let clean = if area.included { "yes" } else { "no" };
        let row = [defused(&area.name), defused(&told), named(floor), named(product), clean.to_owned()];
        let _ = table.write_record(row);
    }
    table.into_inner().ok().and_then(|bytes| String::from_utf8(bytes).ok()).unwrap_or_default()
}

/// A text that no spreadsheet computes.
fn defused(text: &str) -> String {
    if text.starts_with(['=', '+', '-', '@', '\t', '\r']) { format!("'{text}") } else { text.to_owned() }
}

/// Reads a table of areas.
///
/// * `text`: comma, semicolon or tab between cells, whichever the first line has most of; quoted cells may
///   hold any of them. The first line names the columns: name, area or room; size, with its unit in brackets;
///   floor; product; clean.
/// * `known`: whose floors and products the names mean, whatever their case.
/// * `usual`: the code of the unit where the header names none.
///
/// What cannot be read is kept as it stands and told: the size shows as a mistake at its field, an area
/// whose floor is not known asks for one. Source: RFC 4180, of which spreadsheets vary the separator.
///
/// ```
/// use brimline::site::{area_list::{Flaw, import}, demo};
/// let list = "room;size (m²);floor\nHall;120,5;Foyer marble\nBar;big;Moon\n";
/// let read = import(list, &demo(), "ft2");
/// assert_eq!((read.areas.len(), read.areas[0].size.text.as_str(), read.areas[0].size.unit.as_str()), (2, "120,5", "m2"));
/// assert_eq!(read.flaws, [(3, Flaw::Size), (3, Flaw::Floor)]);
/// ```
pub fn import(text: &str, known: &Site, usual: &str) -> Imported {
    let text = text.trim_start_matches('\u{feff}');
    let first = text.lines().next().unwrap_or_default();
    let most =
        [b';', b'\t', b','].into_iter().max_by_key(|mark| first.bytes().filter(|byte| byte == mark).count());
    let delimiter = most.filter(|mark| first.as_bytes().contains(mark)).unwrap_or(b',');
    let mut table = ReaderBuilder::new().delimiter(delimiter).flexible(true).from_reader(text.as_bytes());
    let header: Vec<String> = table
        .headers()
        .map(|row| row.iter().map(|cell| cell.trim().to_lowercase()).collect())
        .unwrap_or_default();
    let column =
        |names: &[&str]| header.iter().position(|cell| names.iter().any(|name| cell.starts_with(name)));
    let mut out = Imported::default();
    let (Some(name), size) = (column(&["name", "area", "room"]), column(&["size"])) else {
        out.flaws.push((1, Flaw::NoName));
        return out;
    };
    let Some(size) = size else {
        out.flaws.push((1, Flaw::NoSize));
        return out;
    };
    let unit = area_unit(&header[size]).map_or(usual, |unit| unit.code);
    let (floor, product, clean) = (column(&["floor"]), column(&["product"]), column(&["clean", "included"]));
    for (index, row) in table.records().enumerate() {
        let Ok(row) = row else {
            out.flaws.push((index as u64 + 2, Flaw::Line));
            continue;
        };
        let line = row.position().map_or(index as u64 + 2, csv::Position::line);
        let cell = |column: Option<usize>| {
            let text = column.and_then(|column| row.get(column)).unwrap_or_default().trim();
            text.strip_prefix('\'').filter(|rest| rest.starts_with(['=', '+', '-', '@'])).unwrap_or(text)
        };
        if row.iter().all(|cell| cell.trim().is_empty()) {
            continue;
        }
        let text = cell(Some(size));
        if number::read(text, Marks::POINT).is_err() && number::read(text, Marks::COMMA).is_err() {
            out.flaws.push((line, Flaw::Size));
        }
        let same = |name: &str, text: &str| name.trim().to_lowercase() == text.to_lowercase();
        let named = known.floors.iter().find(|one| same(&one.name, cell(floor)) || one.id == cell(floor));
        if named.is_none() {
            out.flaws.push((line, Flaw::Floor));
        }
        let own = known.products.iter().find(|one| same(&one.name, cell(product)) || one.id == cell(product));
        if own.is_none() && !cell(product).is_empty() {
            out.flaws.push((line, Flaw::Product));
        }
        let skipped = ["no", "0", "false", "n"].contains(&cell(clean).to_lowercase().as_str());
        out.areas.push(Area {
            id: format!("n{}", out.areas.len() + 1),
            name: cell(Some(name)).to_owned(),
            size: Entry::new(text, unit),
            floor: named.map(|floor| floor.id.clone()).unwrap_or_default(),
            product: own.map(|product| product.id.clone()).unwrap_or_default(),
            included: !skipped,
            ..Area::default()
        });
    }
    out
}

/// The unit that a header names: "size (m²)", "size ft2".
fn area_unit(header: &str) -> Option<&'static Unit> {
    let rest = header.trim_start_matches("size").trim().trim_matches(['(', ')', '[', ']', ',', ' ']);
    let plain = rest.replace('²', "2").replace("sq ", "").replace("sq.", "");
    UNITS.iter().filter(|unit| unit.dimension == Dimension::Area).find(|unit| {
        unit.code == plain || unit.symbol == rest || unit.code.trim_end_matches('2') == plain.trim()
    })
}
