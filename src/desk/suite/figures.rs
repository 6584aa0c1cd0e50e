//! The figures that the parts measure, each with its target, as one table at the end of a run.

use crate::desk::fault::Fault;
use crate::desk::places::Places;
use serde_json::{Value, json};
use std::fs::{self, OpenOptions};
use std::io::Write;
use std::path::PathBuf;

/// The variable by which a test knows where to note a figure: a line of JSON with `what`, `target` and `result`.
pub const FILE: &str = "BRIMLINE_FIGURES";

/// Where figures of a run are noted.
pub fn file(places: &Places) -> PathBuf {
    places.compiled().join("figures.jsonl")
}

/// Forgets those of an earlier run.
///
/// # Errors
/// When the file cannot be written.
pub fn clear(places: &Places) -> Result<(), Fault> {
    let file = file(places);
    fs::create_dir_all(places.compiled())
        .and_then(|()| fs::write(&file, ""))
        .map_err(|error| Fault::file(&file, &error))
}

/// Notes a figure that the suite measures itself.
///
/// # Errors
/// When the file cannot be written.
pub fn note(places: &Places, what: &str, target: &str, result: &str) -> Result<(), Fault> {
    let file = file(places);
    let line = json!({ "what": what, "target": target, "result": result });
    let noted = OpenOptions::new().append(true).create(true).open(&file);
    noted.and_then(|mut noted| writeln!(noted, "{line}")).map_err(|error| Fault::file(&file, &error))
}

/// The variable that asks for the table in the README to be written anew.
const WRITE: &str = "BRIMLINE_WRITE";

/// What stands around that table.
const MARKS: [&str; 2] = ["<!-- figures -->\n", "<!-- /figures -->\n"];

/// What a figure is, its target, its result.
type Row = [String; 3];

/// All of them as a table for the terminal; empty where nothing was noted. With `BRIMLINE_WRITE` set they also take the
/// place of those in the README.
///
/// # Errors
/// When the README cannot be read or written, or has no place for them.
pub fn table(places: &Places) -> Result<String, Fault> {
    let rows = rows(&fs::read_to_string(file(places)).unwrap_or_default());
    if rows.is_empty() {
        return Ok(String::new());
    }
    if std::env::var_os(WRITE).is_some() {
        let file = places.root().join("README.md");
        let text = fs::read_to_string(&file).map_err(|error| Fault::file(&file, &error))?;
        let text =
            published(&text, &rows).ok_or_else(|| Fault::new("README.md has no place for the figures."))?;
        fs::write(&file, text).map_err(|error| Fault::file(&file, &error))?;
    }
    Ok(tabled(rows))
}

fn rows(noted: &str) -> Vec<Row> {
    let row = |line: &str| {
        let read: Value = serde_json::from_str(line).ok()?;
        let text = |key| read.get(key).and_then(Value::as_str).map(str::to_owned);
        Some([text("what")?, text("target")?, text("result")?])
    };
    noted.lines().filter_map(row).collect()
}

/// A text with these rows in the place of those between its marks; none where it has no such place.
fn published(text: &str, rows: &[Row]) -> Option<String> {
    let [open, close] = MARKS;
    let (before, rest) = text.split_once(open)?;
    let (_, after) = rest.split_once(close)?;
    let line = |[what, target, result]: &Row| format!("| {what} | {target} | {result} |\n");
    let lines: String = rows.iter().map(line).collect();
    Some(format!("{before}{open}| figure | target | result |\n|---|---|---|\n{lines}{close}{after}"))
}

fn tabled(measured: Vec<Row>) -> String {
    let mut rows = vec![["figure", "target", "result"].map(str::to_owned)];
    rows.extend(measured);
    let width = |column: usize| rows.iter().map(|row| row[column].chars().count()).max().unwrap_or_default();
    let (first, second) = (width(0), width(1));
    let line = |[what, target, result]: &Row| format!("{what:<first$}  {target:>second$}  {result}\n");
    format!("\n{}", rows.iter().map(line).collect::<String>())
}

#[cfg(test)]
mod tests {
    use super::{published, rows, tabled};

    #[test]
    fn a_figure_a_line_in_columns() {
        let noted = "{\"what\":\"first load\",\"target\":\"300 kB\",\"result\":\"280 kB\"}\nnothing\n";
        let table = "\nfigure      target  result\nfirst load  300 kB  280 kB\n";
        assert_eq!(tabled(rows(noted)), table);
        assert!(rows("\n").is_empty());
    }

    #[test]
    fn figures_take_the_place_of_earlier_ones() {
        let rows = rows("{\"what\":\"first load\",\"target\":\"300 kB\",\"result\":\"280 kB\"}");
        let text = "before\n<!-- figures -->\nold\n<!-- /figures -->\nafter\n";
        let new = published(text, &rows).expect("a place");
        assert!(
            new.starts_with("before\n<!-- figures -->\n| figure |")
                && new.ends_with("<!-- /figures -->\nafter\n")
        );
        assert!(new.contains("| first load | 300 kB | 280 kB |") && !new.contains("old"));
        assert_eq!(published("no place", &rows), None);
    }
}
