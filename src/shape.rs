//! What JSON a part of a document is written as: to tell where a file from elsewhere differs from it, and what
//! of it is blank.

use serde_json::{Map, Value};
use std::sync::Arc;

/// What stands at one place of a document.
#[derive(Debug)]
pub enum Shape {
    /// Text, whatever it says.
    Text,
    /// Yes or no.
    Flag,
    /// A number.
    Number,
    /// A number, or `null` where nobody knows it.
    Perhaps,
    /// One of these codes.
    Choice(&'static [&'static str]),
    /// Any number of the same.
    List(&'static Shape),
    /// Fields by name.
    Object {
        /// The name and the shape of each, in the order in which they are declared.
        fields: &'static [(&'static str, &'static Shape)],
        /// The JSON text of a blank one.
        blank: fn() -> String,
    },
    /// Whatever JSON can say.
    Any,
}

/// What has a shape. `document::shaped` and `coded` declare it with the rest.
///
/// ```
/// use brimline::shape::{Shape, Shaped};
/// use brimline::site::{Dispenser, Entry};
/// assert!(matches!(Dispenser::SHAPE, Shape::Choice(codes) if codes.contains(&"cup")));
/// assert_eq!(Entry::SHAPE.blank(), serde_json::json!({"text": "", "unit": ""}));
/// ```
pub trait Shaped {
    /// Its shape.
    const SHAPE: &'static Shape;
}

impl Shape {
    /// A blank one, as it is written; `null` for what has no blank of its own.
    pub fn blank(&self) -> Value {
        match self {
            Self::Text => Value::String(String::new()),
            Self::Flag => Value::Bool(false),
            Self::Number => Value::from(0),
            Self::List(_) => Value::Array(Vec::new()),
            Self::Object { blank, .. } => serde_json::from_str(&blank()).unwrap_or_default(),
            Self::Choice(_) | Self::Perhaps | Self::Any => Value::Null,
        }
    }
}

macro_rules! shapes {
    ($($shape:ident: $($kind:ty),*;)*) => {$($(
        impl Shaped for $kind {
            const SHAPE: &'static Shape = &Shape::$shape;
        }
    )*)*};
}

shapes! {
    Text: String, Arc<str>, char;
    Flag: bool;
    Number: u8, u16, u32, u64, usize, i32, i64, f64;
    Any: Value, Map<String, Value>;
}

impl<T: Shaped> Shaped for Vec<T> {
    const SHAPE: &'static Shape = &Shape::List(T::SHAPE);
}
