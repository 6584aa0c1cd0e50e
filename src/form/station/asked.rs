//! What is asked for the jobs at the fill station beside a plain fill.

use crate::coded::coded;
use crate::form::Field;
use crate::site::Entry;
use serde::de::{Deserialize, Deserializer, IgnoredAny, MapAccess, Visitor};
use serde::ser::{Serialize, SerializeMap, Serializer};
use std::fmt;

coded! {
    /// What is to be done at the fill station.
    #[derive(Default)]
    Job {
        /// Fill an empty tank.
        #[default]
        Fill = "fill",
        /// Add to what is left.
        TopUp = "top-up",
        /// Put a wrong fill right.
        Rescue = "rescue",
        /// Read how strong it is.
        Reading = "reading",
    }
}

coded! {
    /// How strong what is left in the tank is.
    #[derive(Default)]
    Rest {
        /// As the last fill should have made it.
        #[default]
        AsFilled = "as-filled",
        /// As it was read.
        AsRead = "as-read",
        /// Nobody knows.
        Unknown = "unknown",
    }
}

coded! {
    /// What went wrong.
    #[derive(Default)]
    Mishap {
        /// Too much or too little was put in, and it is known how much.
        #[default]
        Amount = "amount",
        /// It was read, and is not what it should be.
        Reading = "reading",
        /// Nobody remembers whether any was put in.
        Forgotten = "forgotten",
        /// Another product was put in.
        WrongProduct = "wrong-product",
    }
}

coded! {
    /// How the strength is read.
    #[derive(Default)]
    Method {
        /// A test strip beside its chart.
        #[default]
        Strip = "strip",
        /// Drops until the colour turns.
        Drops = "drops",
        /// A refractometer.
        Refractometer = "refractometer",
        /// A conductivity meter.
        Conductivity = "conductivity",
        /// Concentrate and whole, caught for the same time.
        Catch = "catch",
    }
}

/// What was typed for them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Station {
    /// What is to be done.
    pub job: Job,
    /// How strong what is left is.
    pub rest: Rest,
    /// What went wrong.
    pub mishap: Mishap,
    /// How the strength is read.
    pub method: Method,
    /// The id of the product that was put in by mistake.
    pub other: String,
    /// The ppm of a strip's blocks, as its chart prints them.
    pub blocks: String,
    /// The number fields, in the order of [`Field::STATION`].
    entries: Vec<Entry>,
}

impl Default for Station {
    fn default() -> Self {
        let blank = |(field, _): &(Field, &str)| {
            let unit = field.units().first().copied().unwrap_or_default();
            let text = match field {
                Field::Left => "25",
                // What jugs and tank marks are good for; common practice, no source.
                Field::SureMeasure | Field::SureTank => "5",
                _ => "",
            };
            Entry::new(text, unit)
        };
        Self {
            job: Job::default(),
            rest: Rest::default(),
            mishap: Mishap::default(),
            method: Method::default(),
            other: String::new(),
            blocks: "0 50 100 200 400".to_owned(),
            entries: Field::STATION.iter().map(blank).collect(),
        }
    }
}

impl Station {
    /// What was typed into a field of the fill station.
    pub fn entry(&self, field: Field) -> Option<&Entry> {
        self.entries.get(Field::STATION.iter().position(|(one, _)| *one == field)?)
    }

    /// The place of its text, to change.
    pub fn entry_mut(&mut self, field: Field) -> Option<&mut Entry> {
        self.entries.get_mut(Field::STATION.iter().position(|(one, _)| *one == field)?)
    }
}

/// One object: choices and texts as strings, and each number field under its key.
impl Serialize for Station {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let texts = [
            ("job", self.job.code()),
            ("rest", self.rest.code()),
            ("mishap", self.mishap.code()),
            ("method", self.method.code()),
            ("other", &self.other),
            ("blocks", &self.blocks),
        ];
        let mut map = serializer.serialize_map(Some(texts.len() + self.entries.len()))?;
        for (key, text) in texts {
            map.serialize_entry(key, text)?;
        }
        for ((_, key), entry) in Field::STATION.iter().zip(&self.entries) {
            map.serialize_entry(key, entry)?;
        }
        map.end()
    }
}

/// What a file does not hold keeps its default: an earlier version knew fewer fields.
impl<'de> Deserialize<'de> for Station {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_map(Reader)
    }
}

struct Reader;

impl<'de> Visitor<'de> for Reader {
    type Value = Station;

    fn expecting(&self, out: &mut fmt::Formatter) -> fmt::Result {
        out.write_str("what is asked at the fill station")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Station, A::Error> {
        let mut station = Station::default();
        while let Some(key) = map.next_key::<String>()? {
            match key.as_str() {
                "job" => station.job = map.next_value()?,
                "rest" => station.rest = map.next_value()?,
                "mishap" => station.mishap = map.next_value()?,
                "method" => station.method = map.next_value()?,
                "other" => station.other = map.next_value()?,
                "blocks" => station.blocks = map.next_value()?,
                key => match Field::STATION.iter().position(|(_, one)| *one == key) {
                    Some(index) => station.entries[index] = map.next_value()?,
                    None => drop(map.next_value::<IgnoredAny>()?),
                },
            }
        }
        Ok(station)
    }
}
