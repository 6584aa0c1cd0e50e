//! Leaving out what is as in a blank document, and putting it back.

use crate::shape::Shape;
use serde_json::Value;

/// A value without the fields that are as in a blank one of its shape, at any depth. What the shape does not
/// know stays.
///
/// ```
/// use brimline::shape::Shaped;
/// use brimline::site::{Entry, Machine, passing::{restore, strip}};
/// let machine = Machine { tank: Entry::new("10", "gal_us"), ..Machine::default() };
/// let whole = serde_json::to_value(&machine).unwrap();
/// let short = strip(&whole, Machine::SHAPE);
/// assert_eq!(short, serde_json::json!({"tank": {"text": "10"}}));
/// assert_eq!(restore(&short, Machine::SHAPE), whole);
/// ```
pub fn strip(value: &Value, shape: &Shape) -> Value {
    strip_from(value, &shape.blank(), shape)
}

/// The same, where the blank one is at hand.
pub(in crate::site) fn strip_from(value: &Value, blank: &Value, shape: &Shape) -> Value {
    match (shape, value) {
        (Shape::Object { fields, .. }, Value::Object(object)) => {
            let shape_of =
                |key: &String| fields.iter().find(|(field, _)| field == key).map(|(_, shape)| *shape);
            let is_blank = |key: &String, value| shape_of(key).is_some() && blank.get(key) == Some(value);
            let kept = object.iter().filter(|(key, value)| !is_blank(key, *value));
            let short = kept.map(|(key, value)| match (shape_of(key), blank.get(key)) {
                (Some(shape), Some(blank)) => (key.clone(), strip_from(value, blank, shape)),
                _ => (key.clone(), value.clone()),
            });
            Value::Object(short.collect())
        }
        (Shape::List(shape), Value::Array(list)) => {
            let blank = shape.blank();
            list.iter().map(|value| strip_from(value, &blank, shape)).collect()
        }
        _ => value.clone(),
    }
}

/// A value with the fields that [`strip`] left out, as in a blank one of its shape.
pub fn restore(value: &Value, shape: &Shape) -> Value {
    restore_from(value, &shape.blank(), shape)
}

fn restore_from(value: &Value, blank: &Value, shape: &Shape) -> Value {
    match (shape, value) {
        (Shape::Object { fields, .. }, Value::Object(object)) => {
            let mut whole = object.clone();
            for (field, shape) in *fields {
                let Some(blank) = blank.get(*field) else { continue };
                let value =
                    object.get(*field).map_or_else(|| blank.clone(), |own| restore_from(own, blank, shape));
                whole.insert((*field).to_owned(), value);
            }
            Value::Object(whole)
        }
        (Shape::List(shape), Value::Array(list)) => {
            let blank = shape.blank();
            list.iter().map(|value| restore_from(value, &blank, shape)).collect()
        }
        _ => value.clone(),
    }
}
