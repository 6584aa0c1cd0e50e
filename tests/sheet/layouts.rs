//! Whole sheets: each `tests/sheets/NAME.txt` against `NAME.found`, what a person finds in it.

use brimline::number::{Marks, plain};
use brimline::site::sheet::{Finding, Sheet, Span, Statements, What, read};
use brimline::words::Words;
use std::fmt::Write;
use std::path::Path;

/// Reads with the words of statements in English.
pub fn english(text: &str) -> Sheet {
    let words = Words::english();
    read(text, &Statements::of(|key| words.find(key)))
}

fn span(span: &Span) -> String {
    let number =
        |value: f64| if value.is_finite() { plain(value, 6, Marks::POINT.decimal) } else { "…".to_owned() };
    if span.is_one() { number(span.low) } else { format!("{} to {}", number(span.low), number(span.high)) }
}

/// A finding in one line: number of the line, what it is, what is doubtful.
pub fn told(finding: &Finding) -> String {
    let what = match &finding.what {
        What::Signal(word) => format!("signal {}", word.code()),
        What::NotHazardous => "not hazardous".to_owned(),
        What::Hazard(hazard) => hazard.code.to_owned(),
        What::Precaution(precaution) => precaution.code.to_owned(),
        What::UnknownCode(code) => format!("unknown {code}"),
        What::Part(part) => {
            let share = part.share.as_ref().map_or("-".to_owned(), span);
            let codes: Vec<&str> = part.hazards.iter().map(|one| one.code).collect();
            format!("[{}] [{}] {share} % {}", part.name, part.cas, codes.join(" ")).trim_end().to_owned()
        }
        What::Protection(gear) => format!("{gear:?}: {}", finding.text),
        What::Ph { span: ph, of } => format!("pH {} {of:?}", span(ph)),
        What::NoPh => "no pH".to_owned(),
        What::Density { span: density, unit } => format!("density {} {unit}", span(density)),
        What::Toxicity { of, by, span: dose } => {
            format!("[{}] [{}] {by:?} {} mg/kg", of.name, of.cas, span(dose))
        }
        What::Multiplier { of, factor, harm } => format!("[{}] [{}] M {factor} {harm:?}", of.name, of.cas),
        What::Un(number) => format!("UN{number:04}"),
        What::NotRegulated => "not regulated".to_owned(),
    };
    let mut out = format!("{}: {what}", finding.line);
    if !finding.doubts.is_empty() {
        write!(out, " {:?}", finding.doubts).expect("a string");
    }
    out
}

/// All of a sheet.
fn all(sheet: &Sheet) -> String {
    let mut out: String = sheet.findings.iter().map(|one| told(one) + "\n").collect();
    for clash in &sheet.clashes {
        let lines: Vec<usize> = clash.findings.iter().map(|at| sheet.findings[*at].line).collect();
        writeln!(out, "{:?} in {lines:?}", clash.what).expect("a string");
    }
    out
}

fn file(name: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/sheets").join(name);
    std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// The names of all sheets.
pub fn names() -> Vec<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/sheets");
    let files = std::fs::read_dir(folder).expect("the sheets").map(|entry| entry.expect("an entry").path());
    let mut names: Vec<String> = files
        .filter(|path| path.extension().is_some_and(|ending| ending == "txt"))
        .map(|path| path.file_stem().expect("a name").to_string_lossy().into_owned())
        .collect();
    names.sort();
    names
}

/// The text of a sheet.
pub fn sheet(name: &str) -> String {
    file(&format!("{name}.txt"))
}

#[test]
fn every_sheet_is_read_as_a_person_reads_it() {
    let names = names();
    assert!(names.len() >= 11, "{names:?}");
    for name in names {
        let found = all(&english(&sheet(&name)));
        assert_eq!(found, file(&format!("{name}.found")), "\n{name} says:\n{found}");
    }
}

/// What a finding says of its line is so: number, text and heading.
#[test]
fn findings_carry_their_lines() {
    for name in names() {
        let text = sheet(&name);
        let lines: Vec<&str> = text.lines().collect();
        for finding in english(&text).findings {
            let line = lines[finding.line - 1];
            let first = finding.text.split(" / ").next().expect("a text");
            let squeeze = |text: &str| text.chars().filter(char::is_ascii_alphanumeric).collect::<String>();
            let tidy = squeeze(first);
            // A word that was joined goes on in the next line.
            let next = lines.get(finding.line).copied().unwrap_or_default();
            assert!(squeeze(&format!("{line}{next}")).contains(&tidy), "{name}, {}: {first}", finding.line);
            assert!(finding.text.chars().count() <= 3 * 400, "{name}: {}", finding.text);
        }
    }
}
