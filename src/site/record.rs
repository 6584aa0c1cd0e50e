//! What a site knows, record by record.

use super::Entry;
use crate::chemistry::family::Family;
use crate::chemistry::floor::Surface;
use crate::chemistry::foam::Foam;
use crate::chemistry::ghs::SignalWord;
use crate::coded::coded;
use crate::document::document;
use crate::trade::porosity::Porosity;

document! {
    /// A floor-scrubbing machine.
    Machine {
        /// Never changes, whatever the name.
        id: String,
        /// What people call it.
        name: String,
        /// The solution tank.
        tank: Entry,
        /// The least concentrate its maker allows for a full tank; may be empty.
        least: Entry,
        /// The most concentrate its maker allows for a full tank; may be empty.
        most: Entry,
        /// Whether a vacuum picks the solution up, and can suck in foam.
        vacuum: bool,
        /// The share of its solution that it filters and uses again; empty for none.
        reuse: Entry,
        /// Cleaning path.
        path: Entry,
        /// The width that two passes share.
        overlap: Entry,
        /// Travel speed.
        speed: Entry,
        /// Time at work in the time spent.
        efficiency: Entry,
        /// The flow of setting 1, 2, 3 …
        settings: Vec<Entry>,
    }
}

document! {
    /// A cleaning product, from its label and its safety data sheet. A blank one knows nothing: the
    /// cautious values throughout.
    Product {
        /// Never changes, whatever the name.
        id: String,
        /// What people call it.
        name: String,
        /// The dilution, as the label writes it.
        label: String,
        /// How it foams.
        foam: Foam = Foam::Unknown,
        /// What it is chemically, as far as mixing and floors go.
        families: Vec<Family>,
        /// The signal word on the label; unknown until somebody has looked.
        signal: SignalWord = SignalWord::Unknown,
        /// H and P codes, as typed or pasted.
        codes: String,
        /// The pH that its maker prints for the use solution, as typed; may be empty.
        ph: String,
        /// Active substance in the concentrate, where a reading needs it; may be empty.
        active: Entry = Entry::new("", "percent_wv"),
        /// The concentrate's density, where the active substance is given by mass; may be empty.
        density: Entry = Entry::new("", "g_per_ml"),
        /// What its safety data sheet adds: first aid, spill, storage, disposal, in the user's words.
        notes: String,
    }
}

document! {
    /// A floor and its surface.
    Floor {
        /// Never changes, whatever the name.
        id: String,
        /// What people call it.
        name: String,
        /// What it is made of or coated with.
        surface: Surface = Surface::Unknown,
        /// How porous it is.
        porosity: Porosity,
        /// The least solution it should get.
        target_low: Entry,
        /// The most solution it should get.
        target_high: Entry,
    }
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

document! {
    /// What concentrate is measured with.
    Measure {
        /// Never changes, whatever the name.
        id: String,
        /// What people call it.
        name: String,
        /// How it is counted.
        dispenser: Dispenser,
        /// One graduation, stroke or cap.
        step: Entry,
    }
}

document! {
    /// A part of the building that is cleaned in one go.
    Area {
        /// Never changes, whatever the name.
        id: String,
        /// What people call it.
        name: String,
        /// Its size.
        size: Entry,
        /// The id of its floor.
        floor: String,
        /// Whether it is cleaned this shift.
        included: bool,
    }
}

document! {
    /// All that a site knows.
    Site {
        /// What people call it.
        name: String,
        /// Machines.
        machines: Vec<Machine>,
        /// Products.
        products: Vec<Product>,
        /// Floors.
        floors: Vec<Floor>,
        /// Measures.
        measures: Vec<Measure>,
        /// Areas, in the order in which they are cleaned.
        areas: Vec<Area>,
    }
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
