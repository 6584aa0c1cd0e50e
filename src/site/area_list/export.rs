//! From areas to a file.

use super::cell::DIGITS;
use super::import::resolved;
use super::{COLUMNS, Column, Kind, guard};
use crate::number::{self, Marks};
use crate::site::{Area, Entry, Site, unknown};
use crate::units::{System, Unit, unit};
use csv::{QuoteStyle, WriterBuilder};

/// By this a spreadsheet knows that the file is UTF-8, and does not spoil the ² of its header.
const UTF_8: &str = "\u{feff}";

/// The areas as CSV, RFC 4180, with every column of [`COLUMNS`].
///
/// * `known`: the site; floors, products and machines are told by their names.
/// * `system`: whose units stand in the header where the areas do not share one.
/// * `marks`: of the page: with a decimal comma cells are parted by semicolons.
///
/// A quantity is told in the one unit of its header, to 12 digits where it was converted; what is no number
/// stands as it was typed. A text that a spreadsheet would take for a formula gets an apostrophe before it,
/// which [`super::import()`] takes away, and texts with any separator in them are quoted, so that no cell is cut in
/// two by a spreadsheet that expects another.
///
/// ```
/// use brimline::number::Marks;
/// use brimline::site::{area_list::export, demo};
/// use brimline::units::System;
/// let text = export(&demo(), System::Us, Marks::POINT);
/// let first: Vec<&str> = text.lines().take(2).collect();
/// assert!(first[0].starts_with("\u{feff}name,size (ft²),floor,product,machine,clean,place,not before (h),"));
/// assert!(first[1].starts_with("Reading room,6000,"));
/// ```
pub fn export(known: &Site, system: System, marks: Marks) -> String {
    let columns: Vec<(&Column, Option<&Unit>)> =
        COLUMNS.iter().map(|column| (column, unit_of(known, column, system))).collect();
    let header = columns.iter().map(|(column, unit)| match unit {
        Some(unit) => format!("{} ({})", column.header, unit.symbol),
        None => column.header.to_owned(),
    });
    let rows = known.areas.iter().map(|area| {
        columns
            .iter()
            .map(|(column, unit)| guard::defused(&written(known, area, column, *unit, marks)))
            .collect()
    });
    let rows: Vec<Vec<String>> = std::iter::once(header.collect()).chain(rows).collect();
    let separator = if marks.decimal == ',' { ';' } else { ',' };
    let other = |found: char| [',', ';', '\t', '|'].contains(&found) && found != separator;
    let quoted = rows.iter().flatten().any(|cell| cell.contains(other) && cell.contains(char::is_alphabetic));
    let mut table = WriterBuilder::new()
        .delimiter(if separator == ';' { b';' } else { b',' })
        .quote_style(if quoted { QuoteStyle::NonNumeric } else { QuoteStyle::Necessary })
        .from_writer(UTF_8.as_bytes().to_vec());
    for row in rows {
        // Writing into memory does not fail.
        let _ = table.write_record(row);
    }
    table.into_inner().ok().and_then(|bytes| String::from_utf8(bytes).ok()).unwrap_or_default()
}

/// The unit of a column: the one that all its entries share, or the usual one.
fn unit_of(known: &Site, column: &Column, system: System) -> Option<&'static Unit> {
    let Kind::Quantity { units, get, .. } = &column.kind else { return None };
    let mut typed = known.areas.iter().map(get).filter(|entry| !entry.text.trim().is_empty());
    let first = typed.next().map(|entry| entry.unit.as_str()).filter(|code| units.contains(code));
    let shared = first.filter(|code| typed.all(|entry| entry.unit == *code)).and_then(unit);
    shared.or_else(|| column.usual(system))
}

fn written(known: &Site, area: &Area, column: &Column, unit: Option<&Unit>, marks: Marks) -> String {
    match &column.kind {
        Kind::Text { get, .. } => get(area).to_owned(),
        Kind::Quantity { get, .. } => unit.map_or_else(String::new, |unit| number(get(area), unit, marks)),
        Kind::Record { known: records, get, .. } => name(&records(known), get(area)),
        Kind::Choice { get, .. } => get(area).to_owned(),
    }
}

/// A number in the unit of its header; what is none stands as it was typed.
fn number(entry: &Entry, to: &Unit, marks: Marks) -> String {
    match entry.value(marks) {
        Ok((value, own)) if own == to => number::plain(value, DIGITS, marks.decimal),
        Ok((value, own)) if own.dimension == to.dimension => {
            number::plain(to.from_si(own.to_si(value)), DIGITS, marks.decimal)
        }
        _ => entry.text.trim().to_owned(),
    }
}

/// The name of a record; its id where the name would lead to another one.
fn name(records: &[(&str, &str)], id: &str) -> String {
    let own = records.iter().find(|(one, _)| *one == id).map(|(_, name)| name.trim());
    match own {
        Some(name) if resolved(records, name) == Some(id) => name.to_owned(),
        Some(_) => id.to_owned(),
        // A record that was removed has no name any more: its area goes on asking for another.
        None => unknown::name(id).unwrap_or(id).to_owned(),
    }
}
