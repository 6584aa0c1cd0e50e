//! What a site knows, record by record.

use super::{Entry, Finish, Standard, Trial};
use crate::chemistry::family::Family;
use crate::chemistry::floor::Surface;
use crate::chemistry::floor::thirst::{Joints, Texture};
use crate::chemistry::foam::Foam;
use crate::chemistry::ghs::SignalWord;
use crate::chemistry::ghs::mixture::Reserve;
use crate::coded::coded;
use crate::document::shaped as document;
use crate::trade::alone::Around;
use crate::trade::order::Place;
use crate::trade::porosity::Porosity;
use crate::trade::soil::Soil;

document! {
    /// A catch test of a flow setting.
    Catch {
        /// The number of the setting.
        setting: Entry = Entry::new("", "one"),
        /// How long was collected.
        time: Entry = Entry::new("60", "s"),
        /// What was collected.
        caught: Entry = Entry::new("", "floz_us"),
    }
}

document! {
    /// A floor-scrubbing machine.
    Machine {
        /// Never changes, whatever the name.
        id: String,
        /// What people call it.
        name: String,
        /// The solution tank.
        tank: Entry = Entry::new("", "gal_us"),
        /// The least concentrate its maker allows for a full tank; may be empty.
        least: Entry = Entry::new("", "floz_us"),
        /// The most concentrate its maker allows for a full tank; may be empty.
        most: Entry = Entry::new("", "floz_us"),
        /// Whether a vacuum picks the solution up, and can suck in foam.
        vacuum: bool,
        /// The share of its solution that it filters and uses again; empty for none.
        reuse: Entry = Entry::new("", "percent"),
        /// Cleaning path.
        path: Entry = Entry::new("", "in"),
        /// The width that two passes share.
        overlap: Entry = Entry::new("", "in"),
        /// Travel speed.
        speed: Entry = Entry::new("", "mph"),
        /// Time at work in the time spent.
        efficiency: Entry = Entry::new("", "percent"),
        /// The flow of setting 1, 2, 3 …
        settings: Vec<Entry>,
        /// Catch tests of its settings.
        tests: Vec<Catch>,
        /// The share of its solution that it picks up again; 90 % is common practice, no source.
        pick_up: Entry = Entry::new("90", "percent"),
        /// Water above the valve with a full tank; empty where a pump feeds it.
        head_full: Entry = Entry::new("", "in"),
        /// Water above the valve with an empty tank.
        head_low: Entry = Entry::new("", "in"),
        /// Parts of water to 1 of each ratio that it can meter from its own bottle; empty for none.
        ratios: String,
        /// That bottle.
        bottle: Entry = Entry::new("", "l"),
        /// The recovery tank; empty where it is not looked at.
        recovery: Entry = Entry::new("", "gal_us"),
        /// How long it runs on one charge; empty where it has a cord.
        battery: Entry = Entry::new("", "h"),
        /// How long a charge takes: overnight, at least eight hours, is common practice, no source.
        charge: Entry = Entry::new("8", "h"),
        /// Whether it works without anyone beside it.
        unattended: bool,
        /// The least lane width that it can work so; may be empty.
        lane_least: Entry = Entry::new("", "ft"),
        /// The greatest; may be empty.
        lane_most: Entry = Entry::new("", "ft"),
        /// What it needs around it for that, in the user's words; may be empty.
        needs: String,
        /// Whether it sweeps loose debris up before it scrubs.
        sweeps: bool,
        /// Whether it is out of use.
        retired: bool,
    }
}

document! {
    /// What a product is made of, one part of it: as section 3 of its safety data sheet lists it.
    Ingredient {
        /// Its name.
        name: String,
        /// Its CAS number, as typed.
        cas: String,
        /// The least of it in the product.
        low: Entry = Entry::new("", "percent_ww"),
        /// The most; empty where the sheet gives one number.
        high: Entry = Entry::new("", "percent_ww"),
        /// H codes of the substance itself.
        codes: String,
        /// Its acute toxicity estimate by mouth, mass for each body mass; may be empty.
        oral: Entry = Entry::new("", "mg_per_kg"),
        /// By skin.
        dermal: Entry = Entry::new("", "mg_per_kg"),
        /// Its M factor for acute harm in water; may be empty.
        m_acute: Entry = Entry::new("", "one"),
        /// For long-lasting harm.
        m_chronic: Entry = Entry::new("", "one"),
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
        /// The pH that its sheet gives for the product as it is sold, as typed; may be empty.
        ph_neat: String,
        /// What its sheet says of the acid or alkali reserve.
        reserve: Reserve,
        /// Active substance in the concentrate, where a reading needs it; may be empty.
        active: Entry = Entry::new("", "percent_wv"),
        /// The concentrate's density, where the active substance is given by mass; may be empty.
        density: Entry = Entry::new("", "g_per_ml"),
        /// The least active substance by law, code or order; may be empty.
        minimum: Entry = Entry::new("", "mg_per_l"),
        /// How long its label wants the floor wet; may be empty.
        contact: Entry = Entry::new("", "min"),
        /// What the site's own standard asks, written as labels are; may be empty.
        standard: String,
        /// What it is bought in; may be empty.
        container: Entry = Entry::new("", "gal_us"),
        /// What one of these costs; may be empty.
        price: Entry = Entry::new("", "money"),
        /// How long it takes from ordering to delivery; may be empty.
        lead: Entry = Entry::new("", "d"),
        /// What is dissolved in it and stays when it dries; may be empty.
        solids: Entry = Entry::new("", "percent_wv"),
        /// What it is made of, as far as its safety data sheet says; may be empty.
        parts: Vec<Ingredient>,
        /// Whether somebody has seen that its sheet lists every part with a hazard.
        listed: bool,
        /// What its safety data sheet adds: first aid, spill, storage, disposal, in the user's words.
        notes: String,
        /// Whether it is out of use.
        retired: bool,
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
        /// The water that its tile takes up, percent of the tile's mass; may be empty.
        absorption: Entry = Entry::new("", "percent"),
        /// Its texture.
        texture: Texture,
        /// Its joints.
        joints: Joints,
        /// How long a drop of water stays on it; may be empty.
        drop: Entry = Entry::new("", "s"),
        /// How porous it is.
        porosity: Porosity,
        /// The least solution it should get.
        target_low: Entry = Entry::new("", "gal_us_per_1000ft2"),
        /// The most solution it should get.
        target_high: Entry = Entry::new("", "gal_us_per_1000ft2"),
        /// The id of the finish on it; empty for none.
        finish: String,
        /// Whether it is out of use.
        retired: bool,
    }
}

impl Floor {
    /// Whether its target is the usual one of its class, and not one of the site's own.
    pub fn has_usual_target(&self) -> bool {
        let (low, high) = self.porosity.usual_target();
        let is =
            |entry: &Entry, usual: f64| entry.unit == "gal_us_per_1000ft2" && entry.text == usual.to_string();
        is(&self.target_low, low) && is(&self.target_high, high)
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
        /// A chamber on the bottle that is squeezed full and poured out.
        Chamber = "chamber",
        /// A scoop, counted in level scoops.
        Scoop = "scoop",
        /// A scale.
        Scale = "scale",
        /// Packets or tablets, whole ones.
        Packet = "packet",
        /// The machine itself, from a bottle of its own.
        Metering = "metering",
        /// A unit on the wall that draws the concentrate into the water.
        Wall = "wall",
    }
}

impl Dispenser {
    /// Whether it draws the concentrate itself, so that nobody measures any out.
    pub fn draws(self) -> bool {
        matches!(self, Self::Metering | Self::Wall)
    }

    /// Whether it is counted in steps of a volume, any number of them.
    pub fn steps(self) -> bool {
        !matches!(self, Self::Packet | Self::Scale | Self::Metering | Self::Wall)
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
        /// One graduation, stroke, cap, squeeze or scoop, or what a packet holds.
        step: Entry = Entry::new("", "floz_us"),
        /// What one packet or tablet weighs, or the smallest division of a scale.
        weight: Entry = Entry::new("", "g"),
        /// All that a wall unit delivers a time.
        total: Entry = Entry::new("", "l_per_min"),
        /// What each of its metering tips draws, 1, 2, 3 …
        tips: Vec<Entry> = vec![Entry::new("", "ml_per_min"); 3],
        /// Whether it is out of use.
        retired: bool,
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
        size: Entry = Entry::new("", "ft2"),
        /// The id of its floor.
        floor: String,
        /// Whether it is cleaned this shift.
        included: bool,
        /// The id of its product; empty for the one that is asked about.
        product: String,
        /// Where it must stand in the shift.
        place: Place,
        /// Not begun before this time of the shift; may be empty.
        opens: Entry = Entry::new("", "h"),
        /// Done by this time of the shift; may be empty.
        closes: Entry = Entry::new("", "h"),
        /// The id of its machine; empty for the one that is asked about.
        machine: String,
        /// How dirty it is.
        soil: Soil,
        /// Whether loose debris lies about.
        loose: bool,
        /// How wide its lanes, or the open floor, are; may be empty.
        lane: Entry = Entry::new("", "ft"),
        /// Whether what a machine needs around it is there.
        around: Around,
        /// How often it is cleaned; may be empty.
        frequency: Entry = Entry::new("", "per_week"),
        /// The way to it from the fill station; may be empty.
        way: Entry = Entry::new("", "min"),
        /// Whether it is out of use.
        retired: bool,
    }
}

document! {
    /// All that a site knows.
    Site {
        /// What people call it.
        name: String,
        /// Whom to call for first aid, in the user's words; may be empty.
        emergency: String,
        /// What its money is called, as it stands before an amount.
        currency: String = "$".to_owned(),
        /// Where other devices open the page, as codes and links say it; empty for where it was opened.
        address: String,
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
        /// Finishes.
        finishes: Vec<Finish>,
        /// Trials of products on floors.
        trials: Vec<Trial>,
        /// Standards, in force or not.
        standards: Vec<Standard>,
    }
}

impl Area {
    /// Whether it is cleaned this shift.
    pub fn cleaned(&self) -> bool {
        self.included && !self.retired
    }
}

/// What all records share.
pub trait Record {
    /// The name that never changes.
    fn id(&self) -> &str;
    /// What people call it.
    fn name(&self) -> &str;
    /// Whether it is out of use.
    fn retired(&self) -> bool;
}

macro_rules! records {
    ($($record:ident),*) => {$(
        impl Record for $record {
            fn id(&self) -> &str { &self.id }
            fn name(&self) -> &str { &self.name }
            fn retired(&self) -> bool { self.retired }
        }
    )*};
}

records!(Machine, Product, Floor, Finish, Measure, Area);
