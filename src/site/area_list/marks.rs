//! Which decimal mark a file uses, and its numbers in the marks of the page.

use crate::number::{self, Marks, NumberMistake};

/// The marks of numbers that cannot be read in two ways; none where nothing decides, or where they disagree.
///
/// `120,5` has a decimal comma whoever wrote it, `1.200.000` a point between thousands; `1.200` says nothing.
pub(super) fn told<'a>(numbers: impl Iterator<Item = &'a str>) -> Option<Marks> {
    let mut found = None;
    for number in numbers {
        let Some(marks) = certain(number) else { continue };
        if found.is_some_and(|other| other != marks) {
            return None;
        }
        found = Some(marks);
    }
    found
}

/// The marks that one number shows.
fn certain(text: &str) -> Option<Marks> {
    read(text, None).ok()?;
    // "12." says nothing.
    let at = text.rfind(['.', ',']).filter(|at| at + 1 < text.len())?;
    let last = char::from(text.as_bytes()[at]);
    // Twice the same: between thousands.
    let between_thousands = text[..at].contains(last);
    Some(if (last == '.') == between_thousands { Marks::COMMA } else { Marks::POINT })
}

/// Reads a number of a file; without `marks` nothing decides what has two readings.
pub(super) fn read(text: &str, marks: Option<Marks>) -> Result<f64, NumberMistake> {
    if let Some(marks) = marks {
        return number::read(text, marks);
    }
    let (point, comma) = (number::read(text, Marks::POINT)?, number::read(text, Marks::COMMA)?);
    if point.total_cmp(&comma).is_eq() {
        return Ok(point);
    }
    // One reading has the thousands, and is the greater.
    Err(NumberMistake::TwoReadings {
        decimal: if point.abs() < comma.abs() { point } else { comma },
        grouped: if point.abs() < comma.abs() { comma } else { point },
    })
}

/// A number of the value `value` as it is written with the marks of the page. One that has them already stays
/// as it was typed; no digit changes, and a last one, 0, comes where the page would have to ask else.
pub(super) fn rewritten(text: &str, value: f64, page: Marks) -> String {
    let Some(at) = text.rfind(['.', ',']) else { return text.to_owned() };
    let is =
        |text: &str, marks: Marks| number::read(text, marks).is_ok_and(|read| read.total_cmp(&value).is_eq());
    let digits = |text: &str| text.replace(['.', ',', ' ', '\u{a0}', '\u{202f}', '\u{2009}'], "");
    let (whole, tail) = (digits(&text[..at]), digits(&text[at + 1..]));
    let decimal = is(&format!("{whole}.{tail}"), Marks::POINT);
    let here = if decimal { page.decimal } else { page.group };
    if text[at..].starts_with(here) && is(text, page) {
        return text.to_owned();
    }
    let written = if decimal { format!("{whole}{}{tail}", page.decimal) } else { format!("{whole}{tail}") };
    let longer = written.clone() + "0";
    [written, longer].into_iter().find(|text| is(text, page)).unwrap_or_else(|| text.to_owned())
}
