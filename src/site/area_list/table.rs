//! The cells of a file, as they stand.

use super::{MOST_AREAS, MOST_CHARACTERS, MOST_COLUMNS, text};
use crate::document::MOST_BYTES;
use csv::{Position, ReaderBuilder, StringRecord};

/// A file, row by row.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Table {
    /// Every row that holds anything.
    pub rows: Vec<Row>,
    /// Cells of the longest row.
    pub width: usize,
}

/// A row of a file.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Row {
    /// The line of the file that it begins in, from 1.
    pub line: usize,
    /// Its cells, as they stand.
    pub cells: Vec<String>,
    /// Whether a quotation mark is opened in it that is closed nowhere.
    pub open_quote: bool,
}

/// Why a file cannot be shown at all.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// More than [`MOST_BYTES`].
    TooBig,
    /// Not a text: a spreadsheet's own kind of file, a picture.
    NotText,
    /// Nothing in it.
    Empty,
    /// More rows than [`MOST_AREAS`] and their header.
    TooManyRows,
    /// More columns than [`MOST_COLUMNS`].
    TooManyColumns,
}

impl Refusal {
    /// The word key.
    pub fn key(self) -> &'static str {
        match self {
            Self::TooBig => "file-too-big",
            Self::NotText => "csv-not-text",
            Self::Empty => "csv-empty",
            Self::TooManyRows => "csv-too-many-rows",
            Self::TooManyColumns => "csv-too-many-columns",
        }
    }
}

/// What separates cells; where a file leaves it open the first of these.
const SEPARATORS: [u8; 4] = *b";\t,|";

/// Lines that the separator is found by.
const LOOKED_AT: usize = 20;

/// A row behind the last one: where it is not read as one, a quotation mark is open.
const END: &str = "\u{1f}\u{1f}";

impl Row {
    /// A cell without the spaces around it; empty where the row has none there.
    pub fn cell(&self, column: usize) -> &str {
        self.cells.get(column).map_or("", |cell| cell.trim())
    }

    /// How many of its cells hold anything.
    pub fn filled(&self) -> usize {
        self.cells.iter().filter(|cell| !cell.trim().is_empty()).count()
    }
}

impl Table {
    /// Reads the cells of a file.
    ///
    /// * `bytes`: UTF-8, UTF-16 with its mark, or windows-1252; semicolon, tab, comma or bar between cells,
    ///   whichever most of the first lines have, or the one that a first line `sep=` names. Quoted cells may
    ///   hold any of them, line breaks too. Where a quotation mark is opened and never closed, that row and all
    ///   behind it are read without quotation marks, so that none is swallowed.
    ///
    /// # Errors
    /// [`Refusal`], where there is nothing to show or too much.
    ///
    /// # Examples
    /// Source: RFC 4180, section 2, of which spreadsheets vary the separator.
    ///
    /// ```
    /// use brimline::site::area_list::{Refusal, Table};
    /// let table = Table::open("room;size\n\n\"Hall; west\";120,5\n".as_bytes()).unwrap();
    /// assert_eq!((table.rows[1].line, table.rows[1].cell(0), table.rows[1].cell(1)), (3, "Hall; west", "120,5"));
    /// assert_eq!(Table::open(b"\n\n"), Err(Refusal::Empty));
    /// ```
    pub fn open(bytes: &[u8]) -> Result<Self, Refusal> {
        if bytes.len() > MOST_BYTES {
            return Err(Refusal::TooBig);
        }
        let text = text::decoded(bytes);
        if text.contains('\0') || text.starts_with("PK\u{3}\u{4}") {
            return Err(Refusal::NotText);
        }
        let (separator, start) = named_separator(&text).unwrap_or_else(|| (separator(&text), 0));
        let mut reading = Reading { text: &text, separator, rows: Vec::new(), line: 1, counted: 0 };
        if let Some(open) = reading.rows(start, true)? {
            reading.rows(open, false)?;
        }
        let rows = reading.rows;
        let width = rows.iter().map(|row| row.cells.len()).max().ok_or(Refusal::Empty)?;
        if width > MOST_COLUMNS { Err(Refusal::TooManyColumns) } else { Ok(Self { rows, width }) }
    }
}

/// The separator that a first line like `sep=;` names, and where the table begins behind it.
fn named_separator(text: &str) -> Option<(u8, usize)> {
    let rest = text.strip_prefix("sep=").or_else(|| text.strip_prefix("SEP="))?;
    let separator = *rest.as_bytes().first().filter(|byte| SEPARATORS.contains(byte))?;
    let line = rest.get(1..)?.lines().next().filter(|line| line.trim().is_empty())?;
    Some((separator, text.len() - rest.len() + 1 + line.len()))
}

/// The separator that most of the first lines have, and the first of them most of.
fn separator(text: &str) -> u8 {
    let lines: Vec<&str> = text.lines().filter(|line| !line.trim().is_empty()).take(LOOKED_AT).collect();
    let count = |line: &str, separator: u8| {
        let mut quoted = false;
        let bare = |byte: &u8| {
            quoted ^= *byte == b'"';
            !quoted && *byte == separator
        };
        line.bytes().filter(bare).count()
    };
    let fit = |separator: u8| {
        let having = lines.iter().filter(|line| count(line, separator) > 0).count();
        (having, lines.first().map_or(0, |line| count(line, separator)))
    };
    // Of equal ones the last counts, and the first is wanted.
    SEPARATORS.into_iter().rev().max_by_key(|one| fit(*one)).unwrap_or(b',')
}

/// A file while it is read.
struct Reading<'a> {
    text: &'a str,
    separator: u8,
    rows: Vec<Row>,
    /// The line at `counted`.
    line: usize,
    /// How far lines were counted.
    counted: usize,
}

impl Reading<'_> {
    /// Reads the rows from `start` on, and gives where the one begins in which a quotation mark stays open.
    fn rows(&mut self, start: usize, quoting: bool) -> Result<Option<usize>, Refusal> {
        let text = format!("{}\n{END}", &self.text[start..]);
        let mut reader = ReaderBuilder::new()
            .delimiter(self.separator)
            .quoting(quoting)
            .flexible(true)
            .has_headers(false)
            .from_reader(text.as_bytes());
        let mut record = StringRecord::new();
        let mut first = true;
        // Text in memory is always read.
        while reader.read_record(&mut record).unwrap_or(false) {
            let from = start + record.position().map_or(0, byte);
            if byte(reader.position()) >= text.len() {
                // What was put behind the last row stands alone, or a quoted cell took it in.
                let alone = record.len() == 1 && &record[0] == END;
                return Ok((!alone).then_some(from));
            }
            if record.len() > MOST_COLUMNS {
                return Err(Refusal::TooManyColumns);
            }
            let line = self.line_of(from);
            let row = Row { line, cells: record.iter().map(kept).collect(), open_quote: first && !quoting };
            first = false;
            if row.filled() > 0 {
                self.rows.push(row);
            }
            if self.rows.len() > MOST_AREAS + 1 {
                return Err(Refusal::TooManyRows);
            }
        }
        Ok(None)
    }

    /// The line in which what begins at `from` or behind the line breaks there begins.
    fn line_of(&mut self, from: usize) -> usize {
        let bytes = self.text.as_bytes();
        let breaks = bytes[from..].iter().take_while(|byte| b"\r\n".contains(byte)).count();
        for at in self.counted..from + breaks {
            let lone = bytes[at] == b'\r' && bytes.get(at + 1) != Some(&b'\n');
            self.line += usize::from(bytes[at] == b'\n' || lone);
        }
        self.counted = from + breaks;
        self.line
    }
}

fn byte(position: &Position) -> usize {
    usize::try_from(position.byte()).unwrap_or(usize::MAX)
}

/// A cell as far as it is kept; the character behind the last one says that there was more.
fn kept(cell: &str) -> String {
    cell.chars().take(MOST_CHARACTERS + 1).collect()
}
