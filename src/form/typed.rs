//! Everything that was typed, in one value that is kept on the device and saved with an answer.

use super::cautions::container::Holds;
use super::site::SiteAsk;
use super::station::Station;
use crate::coded::coded;
use crate::document::{Part, compared, document, fields, kept};
use crate::site::{
    Area, Entry, Finish, Floor, Machine, Measure, Product, Record, Site, Standard, Standing, Trial, demo,
};
use crate::trade::governing::Aim;
use crate::trade::label;
use crate::units::System;

/// The version of [`Typed`] as it is written now.
pub const SCHEMA: u32 = 5;

coded! {
    /// How the tank is filled.
    #[derive(Default)]
    Filling {
        /// Water and concentrate together reach the mark.
        #[default]
        MadeUp = "made_up",
        /// The volume is water; the concentrate comes on top.
        OnTop = "on_top",
    }
}

document! {
    /// The question asked now.
    Ask {
        /// The id of the machine.
        machine: String,
        /// The id of the product.
        product: String,
        /// The id of the floor.
        floor: String,
        /// The id of the measure.
        measure: String,
        /// How full, as a share of the tank or as a volume.
        level: Entry,
        /// What that volume is.
        filling: Filling,
        /// Where in the label's range.
        aim: Aim,
        /// Whether what stands in the way of the amount was read, for this machine, product and floor.
        stop_read: bool,
        /// The time of one drain, rinse and refill.
        refill: Entry,
        /// The time of one dump, rinse and fill for another product: 20 min is common practice, no source.
        change: Entry = Entry::new("20", "min"),
        /// The air of the room that dries.
        air: Entry = Entry::new("68", "deg_f"),
        /// Its relative humidity.
        humidity: Entry = Entry::new("50", "percent"),
        /// How fast it moves along the floor: still air is common practice at 30 ft/min, no source.
        draught: Entry = Entry::new("30", "ft_per_min"),
        /// The drop test of schema 2, which belonged to no floor; [`Typed::up_to_date`] gives it to one.
        drop: Entry = Entry::new("", "s"),
        /// What an hour of labour costs; may be empty.
        wage: Entry = Entry::new("", "money_per_h"),
        /// What water costs, with its sewage; may be empty.
        water_price: Entry = Entry::new("", "money_per_1000gal_us"),
        /// Floor area that a person dry-mops a time: 10,000 ft²/h is common practice, no source.
        dry_mop: Entry = Entry::new("10000", "ft2_per_h"),
        /// How far a day's use may differ, as one standard deviation: 30 % is common practice, no source.
        spread: Entry = Entry::new("30", "percent"),
        /// An area that was cleaned to see how long it takes; may be empty.
        timed_area: Entry = Entry::new("", "ft2"),
        /// How long it took.
        timed: Entry = Entry::new("", "min"),
        /// The id of a product to compare with; empty for none.
        other_product: String,
        /// A flow setting to compare with, on every floor; may be empty.
        other_setting: Entry = Entry::new("", "one"),
        /// The id of the product that was in the tank before; empty for none.
        before: String,
        /// How often the floor is cleaned until somebody rinses it.
        cleanings: Entry = Entry::new("30", "one"),
        /// Foam in the shake test at once.
        foam_first: Entry = Entry::new("", "in"),
        /// Foam after one minute.
        foam_later: Entry = Entry::new("", "in"),
        /// The tap water's alkalinity: 100 ppm as calcium carbonate is common practice, no source.
        alkalinity: Entry = Entry::new("100", "mg_per_l"),
        /// The tap water's pH: 7.5 is common practice, no source.
        tap_ph: Entry = Entry::new("7.5", "one"),
        /// What the container holds that a label is made for.
        holds: Holds,
        /// What else is asked at the fill station.
        station: Station,
        /// What is asked on Site.
        site: SiteAsk,
        /// The day it is asked on, year-month-day, as the page tells it; empty where nobody told it.
        today: String,
        /// Whether it is asked on a device that is set to its standards.
        held: bool,
    }
}

/// Everything that was typed.
#[derive(Clone, Debug)]
pub struct Typed {
    /// [`SCHEMA`] when it was written.
    pub schema: u32,
    /// The units that figures are shown in, and that a bare "gal" means.
    pub system: System,
    /// The site.
    pub site: Site,
    /// The question.
    pub ask: Ask,
}

impl Default for Typed {
    fn default() -> Self {
        let site = demo();
        let first = |ids: Option<&str>| ids.unwrap_or_default().to_owned();
        let ask = Ask {
            machine: first(site.machines.first().map(Record::id)),
            product: first(site.products.first().map(Record::id)),
            floor: first(site.floors.first().map(Record::id)),
            measure: first(site.measures.first().map(Record::id)),
            level: Entry::new("100", "percent"),
            refill: Entry::new("10", "min"),
            // Prices of the invented site.
            wage: Entry::new("18", "money_per_h"),
            water_price: Entry::new("12", "money_per_1000gal_us"),
            ..Ask::default()
        };
        Self { schema: SCHEMA, system: System::default(), site, ask }
    }
}

/// A file without one of them holds something else.
impl Part for Typed {
    fn blank() -> Self {
        Self { schema: 0, system: System::default(), site: Site::default(), ask: Ask::default() }
    }

    fields!(schema, system, site, ask);

    fn is_strict(&self) -> bool {
        true
    }
}

compared!(Typed);
kept!(Typed);

/// Where the record with this id stands, or the first one in use: a question always has one where the site has
/// any.
fn place<T: Record>(all: &[T], id: &str) -> usize {
    let with_id = all.iter().position(|record| record.id() == id);
    with_id.or_else(|| all.iter().position(|record| !record.retired())).unwrap_or(0)
}

fn pick<'a, T: Record>(all: &'a [T], id: &str) -> Option<&'a T> {
    all.get(place(all, id))
}

fn pick_mut<'a, T: Record>(all: &'a mut [T], id: &str) -> Option<&'a mut T> {
    all.get_mut(place(all, id))
}

impl Typed {
    /// The same question and site, without the areas: to ask about one record after the other.
    pub(super) fn without_areas(&self) -> Self {
        let Site { name, emergency, currency, machines, products, floors, measures, .. } = &self.site;
        let site = Site {
            name: name.clone(),
            emergency: emergency.clone(),
            currency: currency.clone(),
            machines: machines.clone(),
            products: products.clone(),
            floors: floors.clone(),
            measures: measures.clone(),
            finishes: self.site.finishes.clone(),
            standards: self.site.standards.clone(),
            ..Site::default()
        };
        Self { schema: self.schema, system: self.system, site, ask: self.ask.clone() }
    }

    /// What an earlier version wrote, as this one writes it: nothing that was typed is lost.
    #[must_use]
    pub fn up_to_date(mut self) -> Self {
        let drop = std::mem::replace(&mut self.ask.drop, Ask::default().drop);
        if let Some(floor) = self.floor_mut().filter(|floor| floor.drop.text.is_empty())
            && !drop.text.is_empty()
        {
            floor.drop = drop;
        }
        self.schema = SCHEMA;
        self
    }

    /// The machine asked about.
    pub fn machine(&self) -> Option<&Machine> {
        pick(&self.site.machines, &self.ask.machine)
    }

    /// The product asked about.
    pub fn product(&self) -> Option<&Product> {
        pick(&self.site.products, &self.ask.product)
    }

    /// The floor asked about.
    pub fn floor(&self) -> Option<&Floor> {
        pick(&self.site.floors, &self.ask.floor)
    }

    /// The measure asked about.
    pub fn measure(&self) -> Option<&Measure> {
        pick(&self.site.measures, &self.ask.measure)
    }

    /// The area asked about on Site.
    pub fn area(&self) -> Option<&Area> {
        pick(&self.site.areas, &self.ask.site.area)
    }

    /// The finish asked about on Site.
    pub fn finish(&self) -> Option<&Finish> {
        pick(&self.site.finishes, &self.ask.site.finish)
    }

    /// The trial asked about on Site.
    pub fn trial(&self) -> Option<&Trial> {
        pick(&self.site.trials, &self.ask.site.trial)
    }

    /// The standard asked about on Site.
    pub fn standard(&self) -> Option<&Standard> {
        pick(&self.site.standards, &self.ask.site.standard)
    }

    /// The standard in force for a floor on the day of the question: of those that were published and whose first
    /// day has come, the latest.
    pub fn in_force(&self, floor: &str) -> Option<&Standard> {
        self.in_force_on(floor, &self.ask.today)
    }

    /// The same on another day.
    pub fn in_force_on(&self, floor: &str, day: &str) -> Option<&Standard> {
        let holds =
            |one: &&Standard| one.floor == floor && one.standing == Standing::InForce && one.has_begun(day);
        self.site.standards.iter().filter(holds).max_by_key(|one| one.rank())
    }

    /// The standard in force for the floor and the product asked about, whatever the machine.
    pub fn standard_here(&self) -> Option<&Standard> {
        let (product, floor) = (self.product()?, self.floor()?);
        self.in_force(&floor.id).filter(|one| one.product == product.id)
    }

    /// Why the standard in force for the floor and the product asked about is not for the machine asked about; none
    /// where it is, or where there is no such standard.
    pub fn left_out(&self) -> Option<(&Standard, &str)> {
        let standard = self.standard_here()?;
        Some((standard, standard.left_out(&self.machine()?.id)?))
    }

    /// The standard that governs the question: in force for its floor and product, and for its machine.
    pub fn governing(&self) -> Option<&Standard> {
        self.standard_here().filter(|_| self.left_out().is_none())
    }

    /// Whether nothing but standards is gone by, and the one in force gives one number: there is no range to choose in.
    pub fn is_fixed(&self) -> bool {
        let one = |standard: &Standard| {
            label::read(&standard.dilution, standard.system).is_ok_and(|label| !label.rule.is_range())
        };
        self.ask.held && self.standard_here().is_some_and(one)
    }

    /// What the site's own rule asks of the product asked about on the floor asked about, written as labels are:
    /// the standard that governs, else what stands beside the product; and the units that it means. Empty for
    /// nothing.
    pub fn own_rule(&self) -> (&str, System) {
        match (self.governing(), self.product().zip(self.floor())) {
            (Some(standard), _) => (&standard.dilution, standard.system),
            (None, Some((product, _))) => (&product.standard, self.system),
            (None, None) => ("", self.system),
        }
    }

    /// The floor of an area; none where that was removed, since another floor may need another setting.
    pub fn floor_of(&self, area: &Area) -> Option<&Floor> {
        self.site.floors.iter().find(|floor| floor.id == area.floor)
    }

    /// The product of an area: its own, or the one asked about; none where its own was removed.
    pub fn product_of(&self, area: &Area) -> Option<&Product> {
        if area.product.is_empty() {
            return self.product();
        }
        self.site.products.iter().find(|product| product.id == area.product)
    }

    /// The machine of an area: its own, or the one asked about; none where its own was removed.
    pub fn machine_of(&self, area: &Area) -> Option<&Machine> {
        if area.machine.is_empty() {
            return self.machine();
        }
        self.site.machines.iter().find(|machine| machine.id == area.machine)
    }

    /// The machine asked about, to change.
    pub fn machine_mut(&mut self) -> Option<&mut Machine> {
        pick_mut(&mut self.site.machines, &self.ask.machine)
    }

    /// The product asked about, to change.
    pub fn product_mut(&mut self) -> Option<&mut Product> {
        pick_mut(&mut self.site.products, &self.ask.product)
    }

    /// The floor asked about, to change.
    pub fn floor_mut(&mut self) -> Option<&mut Floor> {
        pick_mut(&mut self.site.floors, &self.ask.floor)
    }

    /// The finish asked about, to change.
    pub fn finish_mut(&mut self) -> Option<&mut Finish> {
        pick_mut(&mut self.site.finishes, &self.ask.site.finish)
    }

    /// The trial asked about, to change.
    pub fn trial_mut(&mut self) -> Option<&mut Trial> {
        pick_mut(&mut self.site.trials, &self.ask.site.trial)
    }

    /// The standard asked about, to change while it is a draft: what was published stays as it was.
    pub fn draft_mut(&mut self) -> Option<&mut Standard> {
        pick_mut(&mut self.site.standards, &self.ask.site.standard)
            .filter(|standard| standard.standing == Standing::Draft)
    }

    /// The measure asked about, to change.
    pub fn measure_mut(&mut self) -> Option<&mut Measure> {
        pick_mut(&mut self.site.measures, &self.ask.measure)
    }
}
