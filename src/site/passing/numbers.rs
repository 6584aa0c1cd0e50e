//! Numbers that are none, in what another site brings.

use super::change::{Change, What};
use super::records::{self, find, records as list_of};
use crate::number::Marks;
use crate::shape::{Shape, Shaped};
use crate::site::{Entry, Site};
use serde_json::Value;

/// A place for a number, with a text that is none.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NoNumber {
    /// The list of the record, or the field of it that holds the part in question.
    pub of: String,
    /// The field.
    pub field: String,
    /// What stands there, with its unit where that is none either.
    pub text: String,
}

/// Every place of a change where a number should stand and the newer site has something else. What is left empty is
/// not one of them: a number that nobody knows is left out.
///
/// ```
/// use brimline::number::Marks;
/// use brimline::site::{demo, passing::{compare, no_numbers}};
/// let (old, mut new) = (demo(), demo());
/// new.machines[0].tank.text = "ten".into();
/// let changes = compare(&old, &new);
/// let wrong = no_numbers(&changes[0], &new, Marks::POINT);
/// assert_eq!((wrong[0].field.as_str(), wrong[0].text.as_str()), ("tank", "ten"));
/// ```
pub fn no_numbers(change: &Change, newer: &Site, marks: Marks) -> Vec<NoNumber> {
    let mut found = Vec::new();
    let Some(record) = shape_of(Site::SHAPE, &change.list) else { return found };
    match &change.what {
        What::Field { field, after, .. } => {
            if let Some(shape) = shape_of(record, field) {
                search(shape, after, &change.list, field, marks, &mut found);
            }
        }
        What::Added { .. } => {
            let newer = records::value(newer);
            let brought = find(list_of(&newer, &change.list), &change.id);
            if let Some(brought) = brought {
                search(record, brought, &change.list, &change.list, marks, &mut found);
            }
        }
        What::Removed | What::Moved { .. } => {}
    }
    found
}

/// A place of a site where a number should stand and something else does.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unread {
    /// The list of the record.
    pub list: String,
    /// The id of the record.
    pub id: String,
    /// The place.
    pub number: NoNumber,
}

/// Every number of a site that does not read: whoever takes its file gets no dose from it, and nobody signs it.
///
/// ```
/// use brimline::number::Marks;
/// use brimline::site::{demo, passing::unread};
/// let mut site = demo();
/// assert!(unread(&site, Marks::POINT).is_empty());
/// site.machines[0].tank.text = "1O".into();
/// let wrong = unread(&site, Marks::POINT);
/// assert_eq!((wrong[0].list.as_str(), wrong[0].id.as_str()), ("machines", site.machines[0].id.as_str()));
/// assert_eq!((wrong[0].number.field.as_str(), wrong[0].number.text.as_str()), ("tank", "1O"));
/// ```
pub fn unread(site: &Site, marks: Marks) -> Vec<Unread> {
    let site = records::value(site);
    let mut out = Vec::new();
    for list in records::fields() {
        let Some(shape) = shape_of(Site::SHAPE, list) else { continue };
        for record in list_of(&site, list) {
            let mut found = Vec::new();
            search(shape, record, list, list, marks, &mut found);
            let of = |number| Unread { list: list.to_owned(), id: records::id(record).to_owned(), number };
            out.extend(found.into_iter().map(of));
        }
    }
    out
}

fn shape_of(shape: &'static Shape, field: &str) -> Option<&'static Shape> {
    match shape {
        Shape::List(shape) => shape_of(shape, field),
        Shape::Object { .. } if field.is_empty() => Some(shape),
        Shape::Object { fields, .. } => {
            fields.iter().find(|(name, _)| *name == field).map(|(_, shape)| *shape)
        }
        _ => None,
    }
}

fn search(shape: &Shape, value: &Value, of: &str, field: &str, marks: Marks, out: &mut Vec<NoNumber>) {
    match (shape, value) {
        (Shape::List(shape), Value::Array(all)) => {
            for one in all {
                search(shape, one, of, field, marks, out);
            }
        }
        (Shape::List(shape), one) => search(shape, one, of, field, marks, out),
        (Shape::Object { fields, .. }, Value::Object(parts)) => {
            if let Some(entry) = entry(fields, parts) {
                if !entry.text.trim().is_empty() && entry.value(marks).is_err() {
                    let known = crate::units::unit(&entry.unit).is_some();
                    let text = if known { entry.text } else { format!("{} {}", entry.text, entry.unit) };
                    out.push(NoNumber { of: of.to_owned(), field: field.to_owned(), text });
                }
                return;
            }
            for (part, shape) in *fields {
                if let Some(value) = parts.get(*part) {
                    search(shape, value, field, part, marks, out);
                }
            }
        }
        _ => {}
    }
}

/// A number and its unit, where an object is one.
fn entry(fields: &[(&str, &Shape)], parts: &serde_json::Map<String, Value>) -> Option<Entry> {
    let [("text", _), ("unit", _)] = fields else { return None };
    let part = |part: &str| parts.get(part).and_then(Value::as_str);
    Some(Entry::new(part("text")?, part("unit")?))
}
