//! What is asked for the jobs at the fill station beside a plain fill.

use crate::coded::coded;
use crate::document::{Part, Seen, kept};
use crate::form::Field;
use crate::site::Entry;

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

impl Method {
    /// Whether it counts the active substance, and so asks how much of it the concentrate holds.
    pub fn counts_active(self) -> bool {
        matches!(self, Self::Strip | Self::Drops)
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

/// The fields of a [`Station`] before its number fields.
const CHOICES: [&str; 6] = ["job", "rest", "mishap", "method", "other", "blocks"];

/// All of them, by their keys in files.
const NAMES: &[&str] = &{
    let mut names = [""; CHOICES.len() + Field::STATION.len()];
    let mut place = 0;
    while place < names.len() {
        names[place] =
            if place < CHOICES.len() { CHOICES[place] } else { Field::STATION[place - CHOICES.len()].1 };
        place += 1;
    }
    names
};

/// One object: choices and texts as strings, and each number field under its key.
impl Part for Station {
    fn blank() -> Self {
        Self::default()
    }

    fn seen(&self) -> Seen<'_> {
        Seen::Fields(NAMES)
    }

    fn item(&self, place: usize) -> Option<&dyn Part> {
        let choices: [&dyn Part; _] =
            [&self.job, &self.rest, &self.mishap, &self.method, &self.other, &self.blocks];
        choices.get(place).copied().or_else(|| self.entries.item(place - CHOICES.len()))
    }

    fn item_mut(&mut self, place: usize) -> Option<&mut dyn Part> {
        if place >= CHOICES.len() {
            return self.entries.item_mut(place - CHOICES.len());
        }
        let choices: [&mut dyn Part; CHOICES.len()] = [
            &mut self.job,
            &mut self.rest,
            &mut self.mishap,
            &mut self.method,
            &mut self.other,
            &mut self.blocks,
        ];
        choices.into_iter().nth(place)
    }

    fn clear(&mut self) {
        *self = Self::default();
    }
}

kept!(Station);
