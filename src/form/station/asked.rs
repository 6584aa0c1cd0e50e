//! What is asked for the jobs at the fill station beside a plain fill.

use crate::site::Entry;
use serde::{Deserialize, Serialize};

macro_rules! choices {
    ($($(#[$doc:meta])* $name:ident { $($(#[$of:meta])* $one:ident = $code:literal),* $(,)? })*) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
        pub enum $name { $($(#[$of])* #[serde(rename = $code)] $one),* }

        impl $name {
            /// All, in the order shown.
            pub const ALL: &[Self] = &[$(Self::$one),*];

            /// The stable name in files and word keys.
            pub fn code(self) -> &'static str {
                match self { $(Self::$one => $code),* }
            }

            /// The one from its stable name.
            pub fn from_code(code: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|one| one.code() == code)
            }
        }
    )*};
}

choices! {
    /// What is to be done at the fill station.
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

    /// How strong what is left in the tank is.
    Rest {
        /// As the last fill should have made it.
        #[default]
        AsFilled = "as-filled",
        /// As it was read.
        AsRead = "as-read",
        /// Nobody knows.
        Unknown = "unknown",
    }

    /// What went wrong.
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

    /// How the strength is read.
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
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
#[allow(missing_docs, reason = "each is the field of the same name in `form::field`")]
pub struct Station {
    pub job: Job,
    pub rest: Rest,
    pub mishap: Mishap,
    pub method: Method,
    /// The id of the product that was put in by mistake.
    pub other: String,
    /// The ppm of a strip's blocks, as its chart prints them.
    pub blocks: String,
    pub left: Entry,
    pub put_in: Entry,
    pub strip: Entry,
    pub drops: Entry,
    pub per_drop: Entry,
    pub brix: Entry,
    pub per_brix: Entry,
    pub conductivity: Entry,
    pub conductivity_water: Entry,
    pub conductivity_known: Entry,
    pub known_strength: Entry,
    pub drawn: Entry,
    pub caught: Entry,
}

impl Default for Station {
    fn default() -> Self {
        let blank = |unit| Entry::new("", unit);
        Self {
            job: Job::default(),
            rest: Rest::default(),
            mishap: Mishap::default(),
            method: Method::default(),
            other: String::new(),
            blocks: "0 50 100 200 400".to_owned(),
            left: Entry::new("25", "percent"),
            put_in: blank("floz_us"),
            strip: blank("mg_per_l"),
            drops: blank("one"),
            per_drop: blank("mg_per_l"),
            brix: blank("one"),
            per_brix: blank("percent"),
            conductivity: blank("one"),
            conductivity_water: blank("one"),
            conductivity_known: blank("one"),
            known_strength: blank("percent"),
            drawn: blank("floz_us"),
            caught: blank("gal_us"),
        }
    }
}
