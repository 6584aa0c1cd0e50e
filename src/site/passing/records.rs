//! A site as JSON, in which lists of records are found without knowing what they hold.

use crate::shape::Shaped;
use crate::site::Site;
use serde_json::Value;

/// A site as JSON. By way of text, since writing documents to values as well would double the code for it.
pub(super) fn value(site: &Site) -> Value {
    serde_json::to_string(site).and_then(|text| serde_json::from_str(&text)).unwrap_or_default()
}

/// The site that JSON says. Only for values that were held to the shape, or made of such: what it does not take
/// is its own words.
pub(super) fn site(value: &Value) -> Result<Site, String> {
    serde_json::from_str(&value.to_string()).map_err(|error| error.to_string())
}

/// The names of a site's fields, in the order in which they are declared.
pub(super) fn fields() -> impl Iterator<Item = &'static str> {
    let fields = match Site::SHAPE {
        crate::shape::Shape::Object { fields, .. } => *fields,
        _ => &[],
    };
    fields.iter().map(|(field, _)| *field)
}

/// A list of records; empty where the site has none of this name.
pub(super) fn records<'a>(site: &'a Value, list: &str) -> &'a [Value] {
    site.get(list).and_then(Value::as_array).map_or(&[], Vec::as_slice)
}

/// The id of a record; empty where it has none.
pub(super) fn id(record: &Value) -> &str {
    record.get("id").and_then(Value::as_str).unwrap_or_default()
}

/// What people call a record; empty where it has no name.
pub(super) fn name(record: &Value) -> &str {
    record.get("name").and_then(Value::as_str).unwrap_or_default()
}

/// The record with this id.
pub(super) fn find<'a>(all: &'a [Value], wanted: &str) -> Option<&'a Value> {
    all.iter().find(|record| id(record) == wanted)
}
