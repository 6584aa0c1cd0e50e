//! From the cells of a file to areas.

use super::cell::Reader;
use super::{COLUMNS, Column, Kind, MOST_CHARACTERS, Mapping, Row, Source, Table, guard};
use crate::error::Mistake;
use crate::number::{Marks, NumberMistake};
use crate::site::{Area, Site, unknown};

/// What was read.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Imported {
    /// Every row, in the order of the file; none is left out.
    pub areas: Vec<Area>,
    /// What is to be mended, in the order of the file.
    pub flaws: Vec<Flaw>,
}

/// What is wrong with a cell.
#[derive(Clone, Debug, PartialEq)]
pub struct Flaw {
    /// The line of the file that its row begins in, from 1.
    pub line: usize,
    /// The column.
    pub column: &'static Column,
    /// What the cell says.
    pub text: String,
    /// The code of the unit of a quantity; else empty.
    pub unit: &'static str,
    /// What is wrong with that.
    pub what: Wrong,
}

/// What is wrong with it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Wrong {
    /// It is no number, has two readings, or does not fit. It was kept.
    Number(Mistake),
    /// The site has none of this name. The area asks for one.
    Unknown,
    /// It is empty, and the area asks for one.
    Missing,
    /// It is none of the words that the column has; what stands here was taken.
    Choice(&'static str),
    /// It is longer than what is kept of it.
    Long,
    /// It runs over several lines, as behind a quotation mark that is closed too late.
    Lines,
    /// A quotation mark is opened in this row and closed nowhere.
    Quote,
}

impl Imported {
    /// The first number with two readings: as it stands, with its mark as the decimal mark, and with its mark
    /// between thousands.
    pub fn two_readings(&self) -> Option<(&str, f64, f64)> {
        self.flaws.iter().find_map(|flaw| match flaw.what {
            Wrong::Number(Mistake::Number(NumberMistake::TwoReadings { decimal, grouped })) => {
                Some((flaw.text.as_str(), decimal, grouped))
            }
            _ => None,
        })
    }
}

/// Makes areas of the rows of a file.
///
/// * `table`, `mapping`: the file, and which of its columns is what.
/// * `known`: whose floors, products and machines the names mean, whatever their case.
/// * `page`: the marks of the page's numbers, in which numbers come in: `120,5` becomes `120.5`.
///
/// What cannot be read is kept as it stands and told: a number shows as a mistake at its field, a name that the
/// site does not have as something to choose ([`unknown`]). A number with two readings gets a question
/// mark, so that it counts as none until somebody mended it.
///
/// ```
/// use brimline::number::Marks;
/// use brimline::site::{area_list::{Mapping, Table, import}, demo};
/// use brimline::units::System;
/// let table = Table::open("room;size (m²);floor\nHall;120,5;Foyer marble\nBar;big;Moon\n".as_bytes()).unwrap();
/// let read = import(&table, &Mapping::guess(&table, System::Us), &demo(), Marks::POINT);
/// assert_eq!((read.areas[0].size.text.as_str(), read.areas[0].size.unit.as_str()), ("120.5", "m2"));
/// assert_eq!(read.areas[1].size.text, "big");
/// let flaws: Vec<(usize, &str)> = read.flaws.iter().map(|flaw| (flaw.line, flaw.column.code)).collect();
/// assert_eq!(flaws, [(3, "size"), (3, "floor")]);
/// ```
pub fn import(table: &Table, mapping: &Mapping, known: &Site, page: Marks) -> Imported {
    let file = mapping.marks_of(table);
    let mut out = Imported::default();
    let ids = known.areas.iter().filter_map(|area| area.id.strip_prefix('n')?.parse::<u32>().ok());
    let ids = u64::from(ids.max().unwrap_or(0)) + 1..;
    for (row, id) in mapping.body(table).iter().zip(ids) {
        let mut area = Area { id: format!("n{id}"), included: true, ..Area::default() };
        for (column, source) in COLUMNS.iter().zip(&mapping.sources) {
            let Some(at) = source.from else { continue };
            let (text, shape) = whole(row, at);
            let mut flaw = |text: &str, what| {
                let unit = source.unit.map_or("", |unit| unit.code);
                out.flaws.push(Flaw { line: row.line, column, text: text.to_owned(), unit, what });
            };
            if let Some(what) = shape {
                flaw(&text, what);
            }
            let filled = fill(&mut area, column, *source, &text, known, (file, page));
            if let Some((text, what)) = filled {
                flaw(&text, what);
            }
        }
        if let (true, Some(column)) = (row.open_quote, COLUMNS.first()) {
            out.flaws.push(Flaw {
                line: row.line,
                column,
                text: String::new(),
                unit: "",
                what: Wrong::Quote,
            });
        }
        out.areas.push(area);
    }
    out
}

/// The text of a cell on one line and as long as it is kept, and what was wrong with that.
fn whole(row: &Row, at: usize) -> (String, Option<Wrong>) {
    let text = guard::undefused(row.cell(at));
    if text.contains(['\r', '\n']) {
        let words: Vec<&str> = text.split_whitespace().collect();
        return (words.join(" ").chars().take(MOST_CHARACTERS).collect(), Some(Wrong::Lines));
    }
    let kept: String = text.chars().take(MOST_CHARACTERS).collect();
    let shape = (kept.len() < text.len()).then_some(Wrong::Long);
    (kept, shape)
}

/// Puts a cell into its place, and says what is wrong with it, with what it says.
fn fill(
    area: &mut Area,
    column: &'static Column,
    source: Source,
    text: &str,
    known: &Site,
    (file, page): (Option<Marks>, Marks),
) -> Option<(String, Wrong)> {
    match &column.kind {
        Kind::Text { set, .. } => {
            set(area, text.to_owned());
            None
        }
        Kind::Quantity { units, set, check, .. } => {
            let reader = Reader { unit: source.unit?, offered: units, file, page };
            let (entry, read) = reader.read(text);
            let read = read.and_then(|()| check(&entry, page));
            set(area, entry);
            read.err().map(|mistake| (text.to_owned(), Wrong::Number(mistake)))
        }
        Kind::Record { known: records, set, needed, .. } => {
            if text.is_empty() {
                return needed.then(|| (String::new(), Wrong::Missing));
            }
            let records = records(known);
            match resolved(&records, text) {
                Some(id) => set(area, id.to_owned()),
                None => set(area, unknown::id(text)),
            }
            resolved(&records, text).is_none().then(|| (text.to_owned(), Wrong::Unknown))
        }
        Kind::Choice { words, get, set } => {
            let word = meant(words, text);
            if let Some(word) = word {
                set(area, word);
            }
            (word.is_none() && !text.is_empty()).then(|| (text.to_owned(), Wrong::Choice(get(area))))
        }
    }
}

/// The id of the record that a text names: by its name, else by its id.
pub(super) fn resolved<'a>(records: &[(&'a str, &str)], text: &str) -> Option<&'a str> {
    let same =
        |name: &str| !name.trim().is_empty() && name.trim().to_lowercase() == text.trim().to_lowercase();
    let by_name = records.iter().find(|(_, name)| same(name));
    by_name.or_else(|| records.iter().find(|(id, _)| *id == text)).map(|(id, _)| *id)
}

/// The word that a text means; yes and no are written in many ways.
fn meant(words: &[&'static str], text: &str) -> Option<&'static str> {
    let text = text.to_lowercase();
    let text = match text.as_str() {
        "y" | "true" | "1" | "x" => "yes",
        "n" | "false" | "0" => "no",
        other => other,
    };
    words.iter().copied().find(|word| *word == text)
}
