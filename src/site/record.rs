//! What a site knows, record by record.

use super::Entry;
use crate::chemistry::family::Family;
use crate::chemistry::floor::Surface;
use crate::chemistry::foam::Foam;
use crate::chemistry::ghs::SignalWord;
use crate::coded::coded;
use crate::trade::porosity::Porosity;
use serde::{Deserialize, Serialize};

/// A floor-scrubbing machine.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Machine {
    /// Never changes, whatever the name.
    pub id: String,
    /// What people call it.
    pub name: String,
    /// The solution tank.
    pub tank: Entry,
    /// The least concentrate its maker allows for a full tank; may be empty.
    pub least: Entry,
    /// The most concentrate its maker allows for a full tank; may be empty.
    pub most: Entry,
    /// Whether a vacuum picks the solution up, and can suck in foam.
    pub vacuum: bool,
    /// The share of its solution that it filters and uses again; empty for none.
    pub reuse: Entry,
    /// Cleaning path.
    pub path: Entry,
    /// The width that two passes share.
    pub overlap: Entry,
    /// Travel speed.
    pub speed: Entry,
    /// Time at work in the time spent.
    pub efficiency: Entry,
    /// The flow of setting 1, 2, 3 …
    pub settings: Vec<Entry>,
}

/// A cleaning product, from its label and its safety data sheet.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Product {
    /// Never changes, whatever the name.
    pub id: String,
    /// What people call it.
    pub name: String,
    /// The dilution, as the label writes it.
    pub label: String,
    /// How it foams.
    pub foam: Foam,
    /// What it is chemically, as far as mixing and floors go.
    pub families: Vec<Family>,
    /// The signal word on the label; unknown until somebody has looked.
    pub signal: SignalWord,
    /// H and P codes, as typed or pasted.
    pub codes: String,
    /// The pH that its maker prints for the use solution, as typed; may be empty.
    pub ph: String,
    /// Active substance in the concentrate, where a reading needs it; may be empty.
    #[serde(default = "blank_active")]
    pub active: Entry,
    /// The concentrate's density, where the active substance is given by mass; may be empty.
    #[serde(default = "blank_density")]
    pub density: Entry,
    /// What its safety data sheet adds: first aid, spill, storage, disposal, in the user's words.
    pub notes: String,
}

fn blank_active() -> Entry {
    Entry::new("", "percent_wv")
}

fn blank_density() -> Entry {
    Entry::new("", "g_per_ml")
}

/// A product of which nothing is known yet: the cautious values throughout.
impl Default for Product {
    fn default() -> Self {
        Self {
            id: String::new(),
            name: String::new(),
            label: String::new(),
            foam: Foam::Unknown,
            families: Vec::new(),
            signal: SignalWord::Unknown,
            codes: String::new(),
            ph: String::new(),
            active: blank_active(),
            density: blank_density(),
            notes: String::new(),
        }
    }
}

/// A floor and its surface.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Floor {
    /// Never changes, whatever the name.
    pub id: String,
    /// What people call it.
    pub name: String,
    /// What it is made of or coated with.
    pub surface: Surface,
    /// How porous it is.
    pub porosity: Porosity,
    /// The least solution it should get.
    pub target_low: Entry,
    /// The most solution it should get.
    pub target_high: Entry,
}

coded! {
    /// How a measure on the wall is counted.
    #[derive(Default)]
    Dispenser {
        /// A jug or cup with graduations.
        #[default]
        Cup = "cup",
        /// A pump, counted in strokes.
        Pump = "pump",
        /// A bottle cap, counted in caps.
        Cap = "cap",
    }
}

/// What concentrate is measured with.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Measure {
    /// Never changes, whatever the name.
    pub id: String,
    /// What people call it.
    pub name: String,
    /// How it is counted.
    pub dispenser: Dispenser,
    /// One graduation, stroke or cap.
    pub step: Entry,
}

/// A part of the building that is cleaned in one go.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Area {
    /// Never changes, whatever the name.
    pub id: String,
    /// What people call it.
    pub name: String,
    /// Its size.
    pub size: Entry,
    /// The id of its floor.
    pub floor: String,
    /// Whether it is cleaned this shift.
    pub included: bool,
}

/// All that a site knows.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Site {
    /// What people call it.
    pub name: String,
    /// Machines.
    pub machines: Vec<Machine>,
    /// Products.
    pub products: Vec<Product>,
    /// Floors.
    pub floors: Vec<Floor>,
    /// Measures.
    pub measures: Vec<Measure>,
    /// Areas, in the order in which they are cleaned.
    pub areas: Vec<Area>,
}

/// What all records share.
pub trait Record {
    /// The name that never changes.
    fn id(&self) -> &str;
    /// What people call it.
    fn name(&self) -> &str;
}

macro_rules! records {
    ($($record:ident),*) => {$(
        impl Record for $record {
            fn id(&self) -> &str { &self.id }
            fn name(&self) -> &str { &self.name }
        }
    )*};
}

records!(Machine, Product, Floor, Measure, Area);
