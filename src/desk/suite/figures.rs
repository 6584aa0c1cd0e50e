//! The figures that the parts measure, each with its target, as one table at the end of a run.

use crate::desk::fault::Fault;
use crate::desk::places::Places;
use serde_json::Value;
use std::fs;
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

/// All of them as a table; empty where nothing was noted.
pub fn table(places: &Places) -> String {
    tabled(&fs::read_to_string(file(places)).unwrap_or_default())
}

fn tabled(noted: &str) -> String {
    let row = |line: &str| {
        let read: Value = serde_json::from_str(line).ok()?;
        let text = |key| read.get(key).and_then(Value::as_str).map(str::to_owned);
        Some([text("what")?, text("target")?, text("result")?])
    };
    let mut rows = vec![["figure", "target", "result"].map(str::to_owned)];
    rows.extend(noted.lines().filter_map(row));
    if rows.len() == 1 {
        return String::new();
    }
    let width = |column: usize| rows.iter().map(|row| row[column].chars().count()).max().unwrap_or_default();
    let (first, second) = (width(0), width(1));
    let line =
        |[what, target, result]: &[String; 3]| format!("{what:<first$}  {target:>second$}  {result}\n");
    format!("\n{}", rows.iter().map(line).collect::<String>())
}

#[cfg(test)]
mod tests {
    use super::tabled;

    #[test]
    fn a_figure_a_line_in_columns() {
        let noted = "{\"what\":\"first load\",\"target\":\"300 kB\",\"result\":\"280 kB\"}\nnothing\n";
        let table = "\nfigure      target  result\nfirst load  300 kB  280 kB\n";
        assert_eq!(tabled(noted), table);
        assert_eq!(tabled("\n"), "");
    }
}
