//! A stock as it was read: quantities instead of texts, each beside the text that a person sees.

use super::Stock;
use crate::chemistry::foam::Foam;
use crate::form::cautions::{Panel, panel};
use crate::limits::{self, Limit};
use crate::number::Marks;
use crate::site::{self, Entry, Product};
use crate::trade::actives::dilution_for;
use crate::trade::label::{self, Basis, Label, Rule, Window};
use crate::units::{
    ApplicationRate, Flow, Length, MassConcentration, Quantity, Speed, System, Volume, VolumeFraction,
};

/// A number as it was typed, and what it says.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Written<Q> {
    pub entry: Entry,
    pub value: Q,
}

/// What a liquid's label or a standard asks for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Asks {
    /// A share of the mix.
    Strength(Window<VolumeFraction>),
    /// An amount for a full tank.
    PerTank(Window<Volume>),
}

/// How a machine lays solution down.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Drive {
    pub speed: Written<Speed>,
    pub path: Entry,
    pub overlap: Option<Entry>,
    /// Path less overlap.
    pub width: Length,
    pub flows: Vec<Written<Flow>>,
}

#[derive(Clone, Debug, PartialEq)]
pub(super) struct Machine {
    pub name: String,
    pub vacuum: bool,
    pub tank: Written<Volume>,
    /// The least and the most that its maker allows for a full tank, as typed.
    pub limits: Vec<(&'static str, Entry)>,
    pub window: Option<Window<Volume>>,
    pub reuse: Option<Written<VolumeFraction>>,
    pub drive: Option<Drive>,
}

#[derive(Clone, Debug, PartialEq)]
pub(super) struct Liquid {
    pub name: String,
    pub text: String,
    pub label: Label,
    pub asks: Asks,
    pub foam: Foam,
    /// Whether less than its label asks would fail to disinfect.
    pub disinfects: bool,
    /// The least that a law, a code or an order asks for.
    pub least: Option<VolumeFraction>,
    /// The site's own rule for it.
    pub standard: Option<SiteRule>,
}

/// What a site asks for itself.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct SiteRule {
    pub text: String,
    pub basis: Basis,
    pub asks: Asks,
}

/// Whether a label or a rule leaves it open if its amount is for each volume of water or of the whole mix: "2 oz/gal"
/// does, "2 oz/gal of water" does not.
pub(super) fn is_open(basis: Basis, text: &str) -> bool {
    basis == Basis::PerWater && !text.to_lowercase().contains("water")
}

#[derive(Clone, Debug, PartialEq)]
pub(super) struct Ground {
    pub name: String,
    pub low: Written<ApplicationRate>,
    pub high: Written<ApplicationRate>,
}

#[derive(Clone, Debug, PartialEq)]
pub(super) struct Jug {
    pub name: String,
    pub step: Written<Volume>,
    /// The most steps that a person would count, or read off several fills of a cup.
    pub most: f64,
}

/// A product of which it is known what to wear.
#[derive(Clone, Debug)]
pub(super) struct Guarded {
    pub name: String,
    pub codes: String,
    pub signal: &'static str,
    pub panel: Panel,
}

/// A stock that was read once, from which any number of exercises are made.
#[derive(Clone, Debug)]
pub struct Ready {
    pub(super) system: System,
    pub(super) machines: Vec<Machine>,
    /// Names and labels of everything that has one.
    pub(super) labels: Vec<(String, String, Label)>,
    pub(super) liquids: Vec<Liquid>,
    pub(super) grounds: Vec<Ground>,
    pub(super) jugs: Vec<Jug>,
    pub(super) guarded: Vec<Guarded>,
    /// Products by what they are made of, for pairs.
    pub(super) products: Vec<Product>,
    /// Names of products and how they foam.
    pub(super) foams: Vec<(String, Foam)>,
}

impl Ready {
    /// Reads a stock; what does not read is left out.
    ///
    /// ```
    /// use brimline::practice::{Draw, Level, Ready, Stock, Topic, make};
    /// let ready = Ready::of(&Stock::default());
    /// assert!(make(Topic::Units, Level::First, &ready, &mut Draw::new(7)).is_some());
    /// ```
    pub fn of(stock: &Stock) -> Self {
        let read = |one: &Product| {
            label::read(&one.label, stock.system).ok().map(|read| (one.name.clone(), one.label.clone(), read))
        };
        Self {
            system: stock.system,
            machines: stock.machines.iter().filter_map(machine).collect(),
            labels: stock.products.iter().filter_map(read).collect(),
            liquids: stock.products.iter().filter_map(|one| liquid(one, stock)).collect(),
            grounds: stock.floors.iter().filter_map(ground).collect(),
            jugs: stock.measures.iter().filter_map(jug).collect(),
            guarded: stock.products.iter().map(guarded).collect(),
            products: stock.products.clone(),
            foams: stock.products.iter().map(|one| (one.name.clone(), one.foam)).collect(),
        }
    }
}

fn written<Q: Quantity>(entry: &Entry, limit: &'static Limit) -> Option<Written<Q>> {
    entry.read(limit, Marks::POINT).ok().map(|value| Written { entry: entry.clone(), value })
}

/// What may be empty: the outer none is a mistake.
#[allow(clippy::option_option, reason = "empty and mistyped are two things")]
fn optional<Q: Quantity>(entry: &Entry, limit: &'static Limit) -> Option<Option<Written<Q>>> {
    let found = entry.read_optional(limit, Marks::POINT).ok()?;
    Some(found.map(|value| Written { entry: entry.clone(), value }))
}

/// What a label asks of a liquid that is measured by volume; none of a powder, of packets and of ppm.
pub(super) fn asks_of(text: &str, system: System) -> Option<Asks> {
    match label::read(text, system).ok()?.rule {
        Rule::Strength(window) => Some(Asks::Strength(window)),
        Rule::PerTank(window) => Some(Asks::PerTank(window)),
        Rule::Powder(_) | Rule::Active(_) | Rule::Packets(_) => None,
    }
}

pub(super) fn machine(one: &site::Machine) -> Option<Machine> {
    let tank = written(&one.tank, &limits::TANK)?;
    let least = optional::<Volume>(&one.least, &limits::MACHINE_DOSE)?;
    let most = optional::<Volume>(&one.most, &limits::MACHINE_DOSE)?;
    let low = least.as_ref().map_or(Volume::ZERO, |one| one.value);
    let high = most.as_ref().map_or(Volume::new(f64::INFINITY), |one| one.value);
    let limited = least.is_some() || most.is_some();
    if low > high {
        return None;
    }
    let limits = [("practice-machine-least", least), ("practice-machine-most", most)];
    Some(Machine {
        name: one.name.clone(),
        vacuum: one.vacuum,
        tank,
        limits: limits.into_iter().filter_map(|(key, one)| Some((key, one?.entry))).collect(),
        window: limited.then_some(Window { low, high }),
        reuse: optional::<VolumeFraction>(&one.reuse, &limits::REUSE)?.filter(|one| one.value.si() > 0.0),
        drive: drive(one),
    })
}

fn drive(one: &site::Machine) -> Option<Drive> {
    let path = written::<Length>(&one.path, &limits::PATH)?;
    let overlap = optional::<Length>(&one.overlap, &limits::OVERLAP)?;
    let width = path.value - overlap.as_ref().map_or(Length::ZERO, |one| one.value);
    let flows: Vec<_> = one.settings.iter().filter_map(|one| written(one, &limits::FLOW)).collect();
    let all = flows.len() == one.settings.len() && flows.len() >= 2 && width > Length::ZERO;
    let rising = flows.windows(2).all(|pair: &[Written<Flow>]| pair[0].value < pair[1].value);
    let speed = written(&one.speed, &limits::SPEED)?;
    let overlap = overlap.filter(|one| one.value > Length::ZERO).map(|one| one.entry);
    (all && rising).then_some(Drive { speed, path: path.entry, overlap, width, flows })
}

pub(super) fn ground(one: &site::Floor) -> Option<Ground> {
    let low = written::<ApplicationRate>(&one.target_low, &limits::RATE)?;
    let high = written::<ApplicationRate>(&one.target_high, &limits::RATE)?;
    (low.value <= high.value).then(|| Ground { name: one.name.clone(), low, high })
}

pub(super) fn jug(one: &site::Measure) -> Option<Jug> {
    let most = if one.dispenser == site::Dispenser::Cup { 200.0 } else { 40.0 };
    Some(Jug { name: one.name.clone(), step: written(&one.step, &limits::MEASURE)?, most })
}

fn liquid(one: &Product, stock: &Stock) -> Option<Liquid> {
    let label = label::read(&one.label, stock.system).ok()?;
    let asks = asks_of(&one.label, stock.system)?;
    // Neat product is no mix.
    if matches!(asks, Asks::Strength(window) if window.high.si() > 0.5) || label.basis == Basis::Active {
        return None;
    }
    let in_force = stock.standards.iter().find(|standard| standard.product == one.id);
    let (text, system) =
        in_force.map_or((&one.standard, stock.system), |standard| (&standard.dilution, standard.system));
    let standard = label::read(text, system).ok().zip(asks_of(text, system));
    let standard = standard.map(|(read, asks)| SiteRule { text: text.clone(), basis: read.basis, asks });
    let (disinfects, least) = (one.disinfects(), least(one));
    let (name, text) = (one.name.clone(), one.label.clone());
    Some(Liquid { name, text, label, asks, foam: one.foam, disinfects, least, standard })
}

/// The weakest mix that holds the least active substance which must be in it.
pub(super) fn least(one: &Product) -> Option<VolumeFraction> {
    let minimum: MassConcentration = one.minimum.read(&limits::ACTIVE, Marks::POINT).ok()?;
    let active = one.active.read(&limits::ACTIVE_NEAT, Marks::POINT).ok()?;
    dilution_for(minimum, active).ok()
}

fn guarded(one: &Product) -> Guarded {
    let panel = panel(one);
    Guarded { name: one.name.clone(), codes: one.codes.clone(), signal: one.signal.key(), panel }
}
