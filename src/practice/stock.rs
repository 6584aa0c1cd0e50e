//! What exercises are made of: a site's records, as far as they can be used.

use super::Draw;
use super::exercise::{TRIES_TO_OFFER, make_within};
use super::ready::{Ready, asks_of};
use super::topic::{Lack, Level, Topic};
use crate::document::shaped as document;
use crate::form::cautions::panel;
use crate::limits;
use crate::number::{self, Marks, NumberMistake};
use crate::site::{Entry, Floor, Machine, Measure, Product, Record, Site, Standard, Standing};
use crate::trade::actives::dilution_for;
use crate::trade::label::{self, Rule};
use crate::units::{MassConcentration, System, VolumeFraction};

document! {
    /// The records that exercises are made of, without what no exercise needs. Numbers read the same whatever the
    /// reader's decimal mark.
    Stock {
        /// What the site is called; where it is invented its name says so.
        name: String,
        /// The units that the site works in, and that a bare "oz" or "gal" on a label means.
        system: System,
        /// Machines with a tank.
        machines: Vec<Machine>,
        /// Products.
        products: Vec<Product>,
        /// Floors with what they should get.
        floors: Vec<Floor>,
        /// Measures that are counted in steps of a volume.
        measures: Vec<Measure>,
        /// Standards in force.
        standards: Vec<Standard>,
    }
}

impl Stock {
    /// The records of a site that exercises can be made of.
    ///
    /// * `system`, `marks`: how the site's labels and numbers are read.
    ///
    /// Left out is what is out of use or does not read: an empty tank, a label with two readings, a target whose
    /// least is above its most. The label of a product that must hold a least active substance stays only where
    /// the label keeps to it, since an exercise goes by the label. What cautions go by is never made milder: a
    /// product that lost a reason for doubt counts as one that nobody has looked at.
    ///
    /// ```
    /// use brimline::number::Marks;
    /// use brimline::practice::Stock;
    /// use brimline::site::demo;
    /// use brimline::units::System;
    /// let stock = Stock::of(&demo(), System::Us, Marks::POINT);
    /// assert!(stock.name.ends_with("(invented)"));
    /// assert_eq!((stock.machines.len(), stock.floors.len()), (3, 6));
    /// ```
    pub fn of(site: &Site, system: System, marks: Marks) -> Self {
        let in_use = |one: &dyn Record| !one.retired();
        let products: Vec<Product> =
            site.products.iter().filter(|one| in_use(*one)).map(|one| product(one, system, marks)).collect();
        let standards = site.standards.iter().filter(|one| stands(one, &products)).map(standard).collect();
        Self {
            name: site.name.clone(),
            system,
            machines: site
                .machines
                .iter()
                .filter(|one| in_use(*one))
                .filter_map(|one| machine(one, marks))
                .collect(),
            floors: site
                .floors
                .iter()
                .filter(|one| in_use(*one))
                .filter_map(|one| floor(one, marks))
                .collect(),
            measures: site
                .measures
                .iter()
                .filter(|one| in_use(*one) && one.dispenser.steps())
                .filter_map(|one| measure(one, marks))
                .collect(),
            products,
            standards,
        }
    }

    /// At most so many records of each sort, the first of each list: what a link or a code has room for.
    #[must_use]
    pub fn at_most(&self, count: usize) -> Self {
        let mut out = self.clone();
        out.machines.truncate(count);
        out.products.truncate(count);
        out.floors.truncate(count);
        out.measures.truncate(count);
        out.standards.retain(|one| out.products.iter().any(|product| product.id == one.product));
        out
    }

    /// What it lacks for a topic at a level; none where exercises can be made.
    ///
    /// ```
    /// use brimline::practice::{Lack, Level, Stock, Topic};
    /// let empty = Stock::default();
    /// assert_eq!(empty.lacks(Topic::Dose, Level::First), Some(Lack::Machine));
    /// assert_eq!(empty.lacks(Topic::Units, Level::First), None); // units need no record
    /// ```
    pub fn lacks(&self, topic: Topic, level: Level) -> Option<Lack> {
        lack(&Ready::of(self), topic, level)
    }

    /// The topics that exercises can be made of at a level.
    pub fn offers(&self, level: Level) -> Vec<Topic> {
        let ready = Ready::of(self);
        Topic::ALL.iter().copied().filter(|topic| lack(&ready, *topic, level).is_none()).collect()
    }
}

/// See [`Stock::lacks`].
pub(super) fn lack(ready: &Ready, topic: Topic, level: Level) -> Option<Lack> {
    let need = |there: bool, lack: Lack| (!there).then_some(lack);
    let machine = || need(!ready.machines.is_empty(), Lack::Machine);
    let liquid = || need(!ready.liquids.is_empty(), Lack::Liquid);
    let jug = || need(!ready.jugs.is_empty(), Lack::Measure);
    let settings = || need(ready.machines.iter().any(|one| one.drive.is_some()), Lack::Settings);
    let floor = || need(!ready.grounds.is_empty(), Lack::Floor);
    let found = match topic {
        Topic::Units | Topic::Pairs | Topic::Foam => None,
        Topic::Label => need(!ready.labels.is_empty(), Lack::Label),
        Topic::Dose | Topic::TopUp | Topic::Mistake | Topic::Rescue => machine().or_else(liquid).or_else(jug),
        Topic::Setting => settings().or_else(floor),
        Topic::Shift => machine().or_else(floor).or_else(liquid),
        Topic::Ppe => need(!ready.guarded.is_empty(), Lack::Hazards),
    };
    // Whether the numbers go together is found by trying: always the same seeds, so always the same answer.
    let fits = |seed| make_within(TRIES_TO_OFFER, topic, level, ready, &mut Draw::new(seed)).is_some();
    found.or_else(|| need((0..3).all(fits), Lack::NothingFits))
}

/// The same number in a way that reads alike with any decimal mark; none where the page has to ask which of two it is.
/// A fraction such as 1/2 stays as it is.
fn plain(entry: &Entry, marks: Marks) -> Entry {
    match (number::read(&entry.text, marks), number::read(&entry.text, Marks::POINT)) {
        (Ok(value), other) if other != Ok(value) || number::read(&entry.text, Marks::COMMA) != Ok(value) => {
            Entry::new(number::plain(value, 15, '.'), &entry.unit)
        }
        // No density is a thousand.
        (Err(NumberMistake::TwoReadings { decimal, .. }), _)
            if entry.check(&limits::DENSITY, &[], marks).is_ok() =>
        {
            Entry::new(number::plain(decimal, 15, '.'), &entry.unit)
        }
        (Err(NumberMistake::TwoReadings { .. }), _) => Entry::new("", &entry.unit),
        _ => entry.clone(),
    }
}

fn machine(one: &Machine, marks: Marks) -> Option<Machine> {
    let plain = |entry: &Entry| plain(entry, marks);
    let kept = Machine {
        id: one.id.clone(),
        name: one.name.clone(),
        tank: plain(&one.tank),
        least: plain(&one.least),
        most: plain(&one.most),
        vacuum: one.vacuum,
        reuse: plain(&one.reuse),
        path: plain(&one.path),
        overlap: plain(&one.overlap),
        speed: plain(&one.speed),
        settings: one.settings.iter().map(plain).collect(),
        ..Machine::default()
    };
    super::ready::machine(&kept).map(|_| kept)
}

fn floor(one: &Floor, marks: Marks) -> Option<Floor> {
    let kept = Floor {
        id: one.id.clone(),
        name: one.name.clone(),
        target_low: plain(&one.target_low, marks),
        target_high: plain(&one.target_high, marks),
        ..Floor::default()
    };
    super::ready::ground(&kept).map(|_| kept)
}

fn measure(one: &Measure, marks: Marks) -> Option<Measure> {
    let step = plain(&one.step, marks);
    let kept = Measure {
        id: one.id.clone(),
        name: one.name.clone(),
        dispenser: one.dispenser,
        step,
        ..Measure::default()
    };
    super::ready::jug(&kept).map(|_| kept)
}

fn product(one: &Product, system: System, marks: Marks) -> Product {
    // Of which nothing was ticked, what its parts tell brings two apart and never together.
    let families = if one.families.is_empty() { Vec::new() } else { one.kinds() };
    // Of a disinfectant less than the label asks is never poured: one that is known by its parts alone is not dosed.
    let usable = keeps_minimum(one, system, marks) && !(one.disinfects() && families.is_empty());
    let mut kept = Product {
        id: one.id.clone(),
        name: one.name.clone(),
        label: if usable { one.label.clone() } else { String::new() },
        foam: one.foam,
        families,
        signal: one.signal,
        codes: one.codes.clone(),
        standard: if usable { one.standard.clone() } else { String::new() },
        ..Product::default()
    };
    if usable && !one.minimum.text.trim().is_empty() {
        (kept.minimum, kept.active) = (plain(&one.minimum, marks), plain(&one.active, marks));
    }
    if panel(one).knowledge != panel(&kept).knowledge {
        kept.signal = crate::chemistry::ghs::SignalWord::Unknown;
    }
    kept
}

/// Whether the weakest that a label allows holds the least active substance that must be in it.
fn keeps_minimum(one: &Product, system: System, marks: Marks) -> bool {
    if label::read(&one.label, system).is_err() {
        return false;
    }
    let minimum = match one.minimum.read_optional::<MassConcentration>(&limits::ACTIVE, marks) {
        Ok(None) => return true,
        Ok(Some(minimum)) => minimum,
        Err(_) => return false,
    };
    let Ok(active) = one.active.read::<MassConcentration>(&limits::ACTIVE_NEAT, marks) else { return false };
    let least: Option<VolumeFraction> = dilution_for(minimum, active).ok();
    match (label::read(&one.label, system).map(|label| label.rule), least) {
        (Ok(Rule::Strength(window)), Some(least)) => window.low >= least,
        _ => false,
    }
}

fn stands(one: &Standard, products: &[Product]) -> bool {
    one.standing == Standing::InForce
        && products.iter().any(|product| product.id == one.product)
        && asks_of(&one.dilution, one.system).is_some()
}

fn standard(one: &Standard) -> Standard {
    Standard {
        id: one.id.clone(),
        name: one.name.clone(),
        floor: one.floor.clone(),
        product: one.product.clone(),
        dilution: one.dilution.clone(),
        system: one.system,
        standing: one.standing,
        ..Standard::default()
    }
}
