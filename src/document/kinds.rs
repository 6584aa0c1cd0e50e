//! The parts that documents are made of at last: texts, numbers, lists of parts, and JSON of any shape.

use super::part::{Part, Seen};
use serde_json::{Map, Value};
use std::ops::Deref;
use std::sync::Arc;

macro_rules! leaves {
    ($($kind:ty: $seen:ident, $blank:expr, $shown:expr, $taken:expr;)*) => {$(
        impl Part for $kind {
            fn blank() -> Self {
                $blank
            }

            fn seen(&self) -> Seen<'_> {
                Seen::$seen($shown(self))
            }

            fn take(&mut self, value: Seen) -> bool {
                let Seen::$seen(value) = value else { return false };
                match $taken(value) {
                    Some(value) => *self = value,
                    None => return false,
                }
                true
            }
        }
    )*};
}

leaves! {
    String: Text, Self::new(), Self::as_str, |text: &str| Some(text.to_owned());
    Arc<str>: Text, Self::default(), Self::deref, |text: &str| Some(text.into());
    bool: Flag, false, Self::clone, Some;
    u32: Number, 0, |number: &Self| u64::from(*number), |number| Self::try_from(number).ok();
    u64: Number, 0, Self::clone, Some;
    Value: Json, Self::Null, Self::to_string, |text: String| serde_json::from_str(&text).ok();
    Map<String, Value>: Json, Self::new(), |map: &Self| serde_json::to_string(map).unwrap_or_default(),
        |text: String| serde_json::from_str(&text).ok();
}

impl Part for i64 {
    fn blank() -> Self {
        0
    }

    fn seen(&self) -> Seen<'_> {
        u64::try_from(*self).map_or(Seen::Below(*self), Seen::Number)
    }

    fn take(&mut self, value: Seen) -> bool {
        let number = match value {
            Seen::Number(number) => Self::try_from(number).ok(),
            Seen::Below(number) => Some(number),
            _ => None,
        };
        number.is_some_and(|number| {
            *self = number;
            true
        })
    }
}

/// Written as a text of one character.
impl Part for char {
    fn blank() -> Self {
        Self::default()
    }

    fn seen(&self) -> Seen<'_> {
        Seen::Letter(*self)
    }

    fn take(&mut self, value: Seen) -> bool {
        let Seen::Text(text) = value else { return false };
        let mut letters = text.chars();
        let (Some(letter), None) = (letters.next(), letters.next()) else { return false };
        *self = letter;
        true
    }
}

impl<T: Part> Part for Vec<T> {
    fn blank() -> Self {
        Self::new()
    }

    fn seen(&self) -> Seen<'_> {
        Seen::List(self.len())
    }

    fn item(&self, place: usize) -> Option<&dyn Part> {
        self.get(place).map(|item| item as &dyn Part)
    }

    fn item_mut(&mut self, place: usize) -> Option<&mut dyn Part> {
        self.get_mut(place).map(|item| item as &mut dyn Part)
    }

    fn clear(&mut self) {
        Self::clear(self);
    }

    fn add(&mut self) -> Option<&mut dyn Part> {
        self.push(T::blank());
        self.last_mut().map(|item| item as &mut dyn Part)
    }
}
