//! JSON from elsewhere: read whole or not at all, and every field once.

use super::{Place, Reason, Refusal};
use crate::document::MOST_BYTES;
use serde::de::{Deserialize, Deserializer, Error as _, MapAccess, SeqAccess, Visitor};
use serde_json::error::Category;
use serde_json::{Map, Value};
use std::fmt;

/// Reads JSON as RFC 8259 and RFC 7493 (I-JSON) say: UTF-8, and no field twice in one object. A byte order mark
/// before it, which some editors write, is passed over.
pub(in crate::site) fn parse(bytes: &[u8]) -> Result<Value, Refusal> {
    size(bytes.len())?;
    let text = std::str::from_utf8(bytes)
        .map_err(|error| Refusal { place: Place::Bytes(error.valid_up_to()), reason: Reason::NotText })?;
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    match serde_json::from_str::<Once>(text) {
        Ok(Once(value)) => Ok(value),
        Err(error) => Err(refusal(&error)),
    }
}

/// That a file of so many bytes is not too large to be opened.
pub(super) fn size(bytes: usize) -> Result<(), Refusal> {
    if bytes > MOST_BYTES {
        return Err(Refusal { place: Place::Bytes(bytes), reason: Reason::TooLarge(MOST_BYTES) });
    }
    Ok(())
}

fn refusal(error: &serde_json::Error) -> Refusal {
    let reason = match error.classify() {
        Category::Eof => Reason::CutOff,
        // The only thing that the visitor below finds wrong by itself.
        Category::Data => Reason::FieldTwice,
        // serde_json stops at 128 levels and says so in its words only.
        Category::Syntax if error.to_string().starts_with("recursion limit") => Reason::TooDeep,
        Category::Syntax | Category::Io => Reason::NotJson,
    };
    Refusal { place: Place::Line { line: error.line(), column: error.column() }, reason }
}

/// A value in which no object has a field twice: of two, `serde_json` would keep the last and other readers the
/// first, and one signature would stand under two sites.
struct Once(Value);

impl<'de> Deserialize<'de> for Once {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(Reader).map(Self)
    }
}

struct Reader;

impl<'de> Visitor<'de> for Reader {
    type Value = Value;

    fn expecting(&self, out: &mut fmt::Formatter) -> fmt::Result {
        out.write_str("JSON")
    }

    fn visit_unit<E>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }

    fn visit_bool<E>(self, flag: bool) -> Result<Value, E> {
        Ok(Value::Bool(flag))
    }

    fn visit_u64<E>(self, number: u64) -> Result<Value, E> {
        Ok(number.into())
    }

    fn visit_i64<E>(self, number: i64) -> Result<Value, E> {
        Ok(number.into())
    }

    fn visit_f64<E>(self, number: f64) -> Result<Value, E> {
        Ok(number.into())
    }

    fn visit_str<E>(self, text: &str) -> Result<Value, E> {
        Ok(Value::String(text.to_owned()))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut seq: A) -> Result<Value, A::Error> {
        let mut list = Vec::new();
        while let Some(Once(value)) = seq.next_element()? {
            list.push(value);
        }
        Ok(Value::Array(list))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Value, A::Error> {
        let mut object = Map::new();
        while let Some(key) = map.next_key::<String>()? {
            let Once(value) = map.next_value()?;
            if object.insert(key, value).is_some() {
                return Err(A::Error::custom("a field twice"));
            }
        }
        Ok(Value::Object(object))
    }
}
