//! Which column of a file is what: guessed from its headers, and corrected by hand.

use super::{COLUMNS, Column, Kind, Row, Table, marks, spelling};
use crate::number::Marks;
use crate::units::{Dimension, System, Unit, unit};

/// How a file is read.
#[derive(Clone, Debug, PartialEq)]
pub struct Mapping {
    /// Whether its first row names the columns.
    pub headed: bool,
    /// Where each of [`COLUMNS`] comes from.
    pub sources: Vec<Source>,
    /// The marks of its numbers, where somebody said which; else they are found in them.
    pub marks: Option<Marks>,
    /// What a quantity is in where the file does not say.
    system: System,
}

/// Where a column comes from.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Source {
    /// The column of the file, from 0; none where it has no such column.
    pub from: Option<usize>,
    /// The unit of its numbers; none where it holds none.
    pub unit: Option<&'static Unit>,
    /// Whether the file itself names that unit.
    pub named: bool,
}

/// The ways in which a header can tell its column, the surest first.
const WAYS: [fn(&Header, &Column, &str) -> bool; 5] = [
    |header, column, word| header.stem == word && header.unit.is_some_and(|unit| measures(column, unit)),
    |header, _, word| header.stem == word,
    |header, _, word| begins(&header.stem, word),
    // "Sq ft" says nothing but its unit: only a size is in one of these.
    |header, column, _| {
        column.code == "size" && header.unit.is_some_and(|unit| unit.dimension == Dimension::Area)
    },
    |header, _, word| format!(" {} ", header.stem).contains(&format!(" {word} ")),
];

/// So many of them take the whole header.
const EXACT: usize = 2;

/// What a header says.
struct Header {
    stem: String,
    unit: Option<&'static Unit>,
}

fn measures(column: &Column, with: &Unit) -> bool {
    column.units().first().and_then(|code| unit(code)).is_some_and(|own| own.dimension == with.dimension)
}

fn begins(text: &str, word: &str) -> bool {
    text.strip_prefix(word).is_some_and(|rest| rest.starts_with(' '))
}

impl Header {
    fn of(text: &str) -> Self {
        let of_units = COLUMNS.iter().filter_map(|column| column.units().first().and_then(|code| unit(code)));
        let found = of_units
            .map(|like| spelling::header(text, like))
            .reduce(|found, other| if found.1.is_some() { found } else { other });
        let (stem, unit) = found.unwrap_or_default();
        Self { stem, unit }
    }
}

impl Mapping {
    /// Guesses from the headers. Where none is known for sure and one is a number, these are no headers.
    ///
    /// ```
    /// use brimline::site::area_list::{Mapping, Table};
    /// use brimline::units::System;
    /// let table = Table::open("Room,Sq ft,Floor type\nHall,120,Foyer marble\n".as_bytes()).unwrap();
    /// let mapping = Mapping::guess(&table, System::Metric);
    /// assert_eq!(mapping.source("name").from, Some(0));
    /// assert_eq!(mapping.source("size").unit.map(|unit| unit.code), Some("ft2"));
    /// assert_eq!(mapping.source("floor").from, Some(2));
    /// ```
    pub fn guess(table: &Table, system: System) -> Self {
        let mut out =
            Self { headed: true, sources: vec![Source::default(); COLUMNS.len()], marks: None, system };
        let headers: Vec<Header> = out.titles(table).iter().map(|title| Header::of(title)).collect();
        let mut froms: Vec<Option<usize>> = vec![None; COLUMNS.len()];
        let mut sure = false;
        for (surest, way) in WAYS.iter().enumerate() {
            for (index, column) in COLUMNS.iter().enumerate() {
                let words = std::iter::once(&column.header).chain(column.also);
                let found = words.filter(|_| froms[index].is_none()).find_map(|word| {
                    let fits = |(at, header): &(usize, &Header)| {
                        !froms.contains(&Some(*at)) && way(header, column, word)
                    };
                    headers.iter().enumerate().find(fits).map(|(at, _)| at)
                });
                sure |= found.is_some() && surest < EXACT;
                froms[index] = froms[index].or(found);
            }
        }
        let first = table.rows.get(out.heading(table));
        let number = |cell: &String| marks::read(cell.trim(), Some(Marks::POINT)).is_ok();
        if !sure && first.is_some_and(|row| row.cells.iter().any(number)) {
            // "Reading room, 6000" is an area and no header.
            out.headed = false;
            froms.fill(None);
        }
        for (index, from) in froms.into_iter().enumerate() {
            out.choose(table, index, from);
        }
        out
    }

    /// Takes a column of the file, or none, for one of ours, with the unit that the file names for it.
    pub fn choose(&mut self, table: &Table, column: usize, from: Option<usize>) {
        let (Some(source), Some(own)) = (self.sources.get(column), COLUMNS.get(column)) else { return };
        let title = from.filter(|_| self.headed).and_then(|at| self.titles(table).get(at).cloned());
        let usual = own.usual(self.system);
        let named = usual.zip(title).and_then(|(like, title)| spelling::header(&title, like).1);
        // A unit that was chosen by hand stays where the file names none.
        let unit = named.or(source.unit.filter(|_| !source.named)).or(usual);
        self.sources[column] = Source { from, unit, named: named.is_some() };
    }

    /// Says whether the first row names the columns; the units follow.
    pub fn head(&mut self, table: &Table, headed: bool) {
        self.headed = headed;
        for index in 0..COLUMNS.len() {
            let from = self.sources.get(index).and_then(|source| source.from);
            self.choose(table, index, from);
        }
    }

    /// Where the column of this code comes from.
    pub fn source(&self, code: &str) -> Source {
        COLUMNS
            .iter()
            .position(|column| column.code == code)
            .and_then(|index| self.sources.get(index).copied())
            .unwrap_or_default()
    }

    /// The row that names the columns: the first with two cells or more, since a title may stand above it.
    fn heading(&self, table: &Table) -> usize {
        table.rows.iter().position(|row| row.filled() > 1).filter(|_| self.headed).unwrap_or(0)
    }

    /// The line that names the columns, or would.
    pub fn line(&self, table: &Table) -> usize {
        table.rows.get(self.heading(table)).map_or(1, |row| row.line)
    }

    /// What the file calls its columns; empty where it does not.
    pub fn titles(&self, table: &Table) -> Vec<String> {
        let row = table.rows.get(self.heading(table)).filter(|_| self.headed);
        (0..table.width).map(|at| row.map_or("", |row| row.cell(at)).to_owned()).collect()
    }

    /// The rows that are areas.
    pub fn body<'a>(&self, table: &'a Table) -> &'a [Row] {
        let from = if self.headed { self.heading(table) + 1 } else { 0 };
        table.rows.get(from..).unwrap_or_default()
    }

    /// The marks of the file's numbers: as somebody said, or as its quantities show.
    pub(super) fn marks_of(&self, table: &Table) -> Option<Marks> {
        let quantities: Vec<(usize, &Unit)> = COLUMNS
            .iter()
            .zip(&self.sources)
            .filter(|(column, _)| matches!(column.kind, Kind::Quantity { .. }))
            .filter_map(|(_, source)| source.from.zip(source.unit))
            .collect();
        let cells = self.body(table).iter().flat_map(|row| {
            quantities.iter().map(|(from, unit)| spelling::cell(row.cell(*from), unit).0.trim())
        });
        self.marks.or_else(|| marks::told(cells))
    }
}
