//! What a part of a document is made of, asked and told piece by piece, so that one reader, one writer and one
//! comparison serve all documents and choices: of code that is generic over them the page had one for each.

use serde::de::{
    Deserialize, DeserializeSeed, Deserializer, Error, IgnoredAny, MapAccess, SeqAccess, Unexpected, Visitor,
};
use serde::ser::{Serialize, SerializeMap, SerializeSeq, Serializer};
use serde_json::value::RawValue;
use std::fmt;

/// What a part is, or says.
#[derive(Debug, PartialEq)]
pub enum Seen<'a> {
    /// Text, or the code of a choice.
    Text(&'a str),
    /// One character.
    Letter(char),
    /// Yes or no.
    Flag(bool),
    /// A whole number.
    Number(u64),
    /// Any number.
    Fraction(f64),
    /// Nothing, where something may be unknown.
    Unknown,
    /// So many items.
    List(usize),
    /// An item under each of these names.
    Fields(&'static [&'static str]),
    /// JSON of any shape, as its text.
    Json(String),
}

/// A part of a document.
///
/// ```
/// use brimline::document::{Part, Seen};
/// use brimline::site::Entry;
/// let mut entry = Entry::new("10", "gal_us");
/// assert_eq!(entry.seen(), Seen::Fields(&["text", "unit"]));
/// assert_eq!(entry.item(1).unwrap().seen(), Seen::Text("gal_us"));
/// assert!(entry.item_mut(0).unwrap().take(Seen::Text("12")));
/// assert!(!entry.item_mut(0).unwrap().take(Seen::Flag(true)));
/// assert_eq!(entry, Entry::new("12", "gal_us"));
/// ```
pub trait Part {
    /// A blank one.
    fn blank() -> Self
    where
        Self: Sized;

    /// What it is.
    fn seen(&self) -> Seen<'_>;

    /// Takes a value over; whether it can.
    fn take(&mut self, _value: Seen) -> bool {
        false
    }

    /// The item at a place, of what has items.
    fn item(&self, _place: usize) -> Option<&dyn Part> {
        None
    }

    /// The same, to change.
    fn item_mut(&mut self, _place: usize) -> Option<&mut dyn Part> {
        None
    }

    /// Makes it blank; a list, empty.
    fn clear(&mut self) {}

    /// A blank item more, of what is a list.
    fn add(&mut self) -> Option<&mut dyn Part> {
        None
    }

    /// Whether each of its fields must be given, and none stays blank.
    fn is_strict(&self) -> bool {
        false
    }
}

/// Whether two parts of one kind say the same.
pub fn same(one: &dyn Part, other: &dyn Part) -> bool {
    let items = match (one.seen(), other.seen()) {
        (Seen::Fields(names), Seen::Fields(_)) => names.len(),
        (Seen::List(here), Seen::List(there)) if here == there => here,
        (here, there) => return here == there,
    };
    (0..items).all(|place| match (one.item(place), other.item(place)) {
        (Some(one), Some(other)) => same(one, other),
        _ => false,
    })
}

/// Writes a part.
///
/// # Errors
/// Those of the writer.
pub fn write<S: Serializer>(part: &dyn Part, serializer: S) -> Result<S::Ok, S::Error> {
    Written(part).serialize(serializer)
}

/// Reads a part into a blank one.
///
/// # Errors
/// What the reader does not understand, and where.
pub fn read<'de, D: Deserializer<'de>>(part: &mut dyn Part, deserializer: D) -> Result<(), D::Error> {
    Reader(part).deserialize(deserializer)
}

struct Written<'a>(&'a dyn Part);

impl Serialize for Written<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self.0.seen() {
            Seen::Text(text) => serializer.serialize_str(text),
            Seen::Letter(letter) => serializer.serialize_char(letter),
            Seen::Flag(flag) => serializer.serialize_bool(flag),
            Seen::Number(number) => serializer.serialize_u64(number),
            Seen::Fraction(number) => serializer.serialize_f64(number),
            Seen::Unknown => serializer.serialize_unit(),
            Seen::List(length) => {
                let mut list = serializer.serialize_seq(Some(length))?;
                for item in (0..length).filter_map(|place| self.0.item(place)) {
                    list.serialize_element(&Self(item))?;
                }
                list.end()
            }
            Seen::Fields(names) => {
                let mut map = serializer.serialize_map(Some(names.len()))?;
                for (place, name) in names.iter().enumerate() {
                    if let Some(item) = self.0.item(place) {
                        map.serialize_entry(name, &Self(item))?;
                    }
                }
                map.end()
            }
            Seen::Json(text) => {
                RawValue::from_string(text).map_err(serde::ser::Error::custom)?.serialize(serializer)
            }
        }
    }
}

struct Reader<'a>(&'a mut dyn Part);

impl Reader<'_> {
    fn take<E: Error>(self, value: Seen, found: Unexpected) -> Result<(), E> {
        if self.0.take(value) { Ok(()) } else { Err(E::invalid_value(found, &self)) }
    }
}

impl<'de> DeserializeSeed<'de> for Reader<'_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        if let Seen::Json(_) = self.0.seen() {
            let raw = Box::<RawValue>::deserialize(deserializer)?;
            return self.take(Seen::Json(raw.get().to_owned()), Unexpected::Other("JSON"));
        }
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Reader<'_> {
    type Value = ();

    fn expecting(&self, out: &mut fmt::Formatter) -> fmt::Result {
        out.write_str(match self.0.seen() {
            Seen::Text(_) => "a text or one of the codes that stand here",
            Seen::Letter(_) => "one character",
            Seen::Flag(_) => "true or false",
            Seen::Number(_) => "a whole number",
            Seen::Fraction(_) | Seen::Unknown => "a number or null",
            Seen::List(_) => "a list",
            Seen::Fields(_) => "fields by name",
            Seen::Json(_) => "JSON of another shape",
        })
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<(), E> {
        self.take(Seen::Text(text), Unexpected::Str(text))
    }

    fn visit_bool<E: Error>(self, flag: bool) -> Result<(), E> {
        self.take(Seen::Flag(flag), Unexpected::Bool(flag))
    }

    fn visit_u64<E: Error>(self, number: u64) -> Result<(), E> {
        self.take(Seen::Number(number), Unexpected::Unsigned(number))
    }

    fn visit_f64<E: Error>(self, number: f64) -> Result<(), E> {
        self.take(Seen::Fraction(number), Unexpected::Float(number))
    }

    fn visit_unit<E: Error>(self) -> Result<(), E> {
        self.take(Seen::Unknown, Unexpected::Unit)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<(), A::Error> {
        let Seen::List(_) = self.0.seen() else { return Err(A::Error::invalid_type(Unexpected::Seq, &self)) };
        self.0.clear();
        while list.next_element_seed(Item(self.0))?.is_some() {}
        Ok(())
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<(), A::Error> {
        let Seen::Fields(names) = self.0.seen() else {
            return Err(A::Error::invalid_type(Unexpected::Map, &self));
        };
        self.0.clear();
        let mut given = vec![false; names.len()];
        while let Some(key) = map.next_key::<String>()? {
            let place = names.iter().position(|name| *name == key);
            match place.and_then(|place| Some((place, self.0.item_mut(place)?))) {
                Some((place, item)) => {
                    given[place] = true;
                    map.next_value_seed(Reader(item))?;
                }
                None => drop(map.next_value::<IgnoredAny>()?),
            }
        }
        match names.iter().zip(given).find(|(_, given)| self.0.is_strict() && !given) {
            Some((name, _)) => Err(A::Error::missing_field(name)),
            None => Ok(()),
        }
    }
}

/// An item of a list, which is added when there is one to read.
struct Item<'a>(&'a mut dyn Part);

impl<'de> DeserializeSeed<'de> for Item<'_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        match self.0.add() {
            Some(item) => Reader(item).deserialize(deserializer),
            None => Ok(()),
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::form::Typed;
    use crate::site::log::{Record, Si};
    use crate::site::{Entry, Machine, Measure};
    use serde::Serialize;
    use serde::de::DeserializeOwned;
    use serde_json::{from_str, from_value, json, to_string, to_value};
    use std::fmt::Debug;

    fn refused<T: DeserializeOwned + Debug>(text: &str) -> String {
        from_str::<T>(text).expect_err(text).to_string()
    }

    #[test]
    fn a_field_that_is_given_starts_blank_and_not_as_its_document_has_it() {
        assert_eq!(Machine::default().tank, Entry::new("", "gal_us"));
        let read = |text: &str| from_str::<Machine>(text).expect(text).tank;
        assert_eq!(read("{}"), Entry::new("", "gal_us"));
        assert_eq!(read(r#"{"tank":{"text":"3"},"new":[{}]}"#), Entry::new("3", ""));
        assert_eq!(read(r#"{"tank":{"text":"3"},"tank":{"unit":"l"}}"#), Entry::new("", "l"));
    }

    #[test]
    fn a_list_that_is_given_takes_the_place_of_the_usual_one() {
        let tips = |text: &str| from_str::<Measure>(text).expect(text).tips.len();
        assert_eq!((tips("{}"), tips(r#"{"tips":[]}"#), tips(r#"{"tips":[{},{}]}"#)), (3, 0, 2));
    }

    #[test]
    fn what_does_not_belong_is_told_with_its_place() {
        for (text, told) in [
            (r#"{"tank":[]}"#, "invalid type: sequence, expected fields by name"),
            (r#"{"vacuum":"no"}"#, "invalid value: string \"no\", expected true or false"),
            (r#"{"settings":{}}"#, "invalid type: map, expected a list"),
            (r#"{"name":null}"#, "expected a text"),
            (r#"{"name":-1}"#, "expected a text"),
        ] {
            let mistake = refused::<Machine>(text);
            assert!(mistake.contains(told) && mistake.contains("line 1 column"), "{text}: {mistake}");
        }
        assert!(refused::<Measure>(r#"{"dispenser":"spoon"}"#).contains("string \"spoon\""));
        assert!(refused::<Typed>(r#"{"schema":1,"system":"us","ask":{}}"#).contains("missing field `site`"));
        assert!(refused::<Typed>(r#"{"schema":4294967296}"#).contains("expected a whole number"));
    }

    #[test]
    fn text_and_values_say_the_same() {
        fn held<T: Serialize + DeserializeOwned + Debug + PartialEq>(one: &T) {
            let (text, value) = (to_string(one).expect("JSON"), to_value(one).expect("JSON"));
            assert_eq!(from_str::<serde_json::Value>(&text).expect("JSON"), value);
            assert_eq!(&from_str::<T>(&text).expect("the same"), one);
            assert_eq!(&from_value::<T>(value).expect("the same"), one);
        }
        held(&Typed::default());
        let mut record = Record { number: u64::MAX, ..Record::default() };
        record.fill.water.si = Si::new(0.1).expect("an amount");
        record.changes.insert("water".to_owned(), json!({"si": 2, "text": "\u{e9}"}));
        held(&record);
        let other = Record { number: 1, ..record.clone() };
        assert_ne!(record, other);
    }
}
