//! What one site has that is not as in another.

use super::order::moved;
use super::records::{self, fields, id, name, records as list_of};
use crate::site::Site;
use serde_json::Value;
use std::collections::BTreeMap;

/// One difference, small enough to be taken or left by itself.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// The list of the record, as `products`; empty for what the site says of itself.
    pub list: String,
    /// The id of the record; empty for the site itself.
    pub id: String,
    /// What people call the record, in the newer site if that has it; empty for the site itself.
    pub name: String,
    /// What is different.
    pub what: What,
}

/// What is different about a record.
#[derive(Clone, Debug, PartialEq)]
pub enum What {
    /// The older site does not have it.
    Added {
        /// Its place in the list of the newer site, from 1.
        to: usize,
    },
    /// The newer site does not have it.
    Removed,
    /// It stands at another place among those that both have.
    Moved {
        /// Its place in the list of the older site, from 1.
        from: usize,
        /// Its place in the list of the newer site, from 1.
        to: usize,
    },
    /// One of its fields says something else.
    Field {
        /// The name of the field, as `tank`.
        field: String,
        /// What it says in the older site.
        before: Value,
        /// What it says in the newer site.
        after: Value,
    },
}

impl Change {
    /// The stable code.
    pub const fn code(&self) -> &'static str {
        match self.what {
            What::Added { .. } => "change-added",
            What::Removed => "change-removed",
            What::Moved { .. } => "change-moved",
            What::Field { .. } => "change-field",
        }
    }
}

/// A value as a line of text: a number with its unit code as `15 gal_us`, the parts of an object one behind the
/// other, the entries of a list with commas. For people; two values may read the same.
///
/// ```
/// use brimline::site::passing::readable;
/// use serde_json::json;
/// assert_eq!(readable(&json!({"text": "15", "unit": "gal_us"})), "15 gal_us");
/// assert_eq!(readable(&json!([{"text": "1", "unit": "l"}, {"text": "", "unit": "l"}])), "1 l, l");
/// ```
pub fn readable(value: &Value) -> String {
    let join = |parts: Vec<String>, by: &str| {
        parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(by)
    };
    match value {
        Value::Null => String::new(),
        Value::String(text) => text.clone(),
        Value::Array(list) => join(list.iter().map(readable).collect(), ", "),
        Value::Object(object) => join(object.values().map(readable).collect(), " "),
        leaf => leaf.to_string(),
    }
}

/// Every difference between two sites: the site's own fields first, then list by list as they are declared:
/// what was removed, then record by record of the newer list.
///
/// ```
/// use brimline::site::{demo, passing::compare};
/// let (old, mut new) = (demo(), demo());
/// new.machines[0].tank.text = "15".into();
/// new.areas.swap(0, 1);
/// let codes: Vec<_> = compare(&old, &new).iter().map(|change| change.code()).collect();
/// assert_eq!(codes, ["change-field", "change-moved"]);
/// ```
pub fn compare(old: &Site, new: &Site) -> Vec<Change> {
    changes(&records::value(old), &records::value(new))
}

pub(super) fn changes(old: &Value, new: &Value) -> Vec<Change> {
    let is_list = |field: &&str| new.get(*field).is_some_and(Value::is_array);
    let of_itself =
        Change { list: String::new(), id: String::new(), name: String::new(), what: What::Removed };
    let mut all: Vec<Change> = fields()
        .filter(|field| !is_list(field))
        .filter_map(|field| differs(&of_itself, field, old, new))
        .collect();
    for list in fields().filter(is_list) {
        of_list(list, list_of(old, list), list_of(new, list), &mut all);
    }
    all
}

fn differs(of: &Change, field: &str, old: &Value, new: &Value) -> Option<Change> {
    let [before, after] = [old, new].map(|site| site.get(field).cloned().unwrap_or_default());
    (before != after)
        .then(|| Change { what: What::Field { field: field.to_owned(), before, after }, ..of.clone() })
}

fn of_list(list: &str, old: &[Value], new: &[Value], all: &mut Vec<Change>) {
    let change = |record: &Value, what| Change {
        list: list.to_owned(),
        id: id(record).to_owned(),
        name: name(record).to_owned(),
        what,
    };
    let places = |records: &[Value]| -> BTreeMap<String, usize> {
        records.iter().enumerate().map(|(index, record)| (id(record).to_owned(), index)).collect()
    };
    let (older, newer) = (places(old), places(new));
    all.extend(old.iter().filter(|one| !newer.contains_key(id(one))).map(|one| change(one, What::Removed)));
    let froms: Vec<usize> = new.iter().filter_map(|record| older.get(id(record)).copied()).collect();
    let moved = moved(&froms);
    for (index, record) in new.iter().enumerate() {
        let to = index + 1;
        let Some(from) = older.get(id(record)).copied() else {
            all.push(change(record, What::Added { to }));
            continue;
        };
        if moved.contains(&from) {
            all.push(change(record, What::Moved { from: from + 1, to }));
        }
        let of = change(record, What::Removed);
        let keys = record.as_object().into_iter().flat_map(|object| object.keys());
        all.extend(keys.filter_map(|field| differs(&of, field, &old[from], record)));
    }
}
