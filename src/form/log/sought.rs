//! Which fills are looked at, and what there is to choose from.

use crate::document::document;
use crate::site::log::{Current, Named, questions::Filter};
use std::collections::{BTreeMap, BTreeSet};

document! {
    /// What a fill must have; what is empty asks for nothing.
    Sought {
        /// The local month, year-month.
        month: String,
        /// The id of the product.
        product: String,
        /// The id of the machine.
        machine: String,
        /// The id of an area.
        area: String,
        /// The id of the standard.
        standard: String,
        /// Initials.
        who: String,
    }
}

impl Sought {
    /// The same as the log asks it.
    pub fn filter(&self) -> Filter {
        let Self { month, product, machine, area, standard, who } = self.clone();
        Filter { product, machine, area, month, who, standard }
    }

    /// The places of the fills that are shown, those written down by mistake among them, the newest first.
    pub fn places(&self, fills: &[Current]) -> Vec<usize> {
        let filter = self.filter();
        let fits = |(place, one)| filter.fits(one).then_some(place);
        fills.iter().enumerate().filter_map(fits).rev().collect()
    }
}

/// What the fills of a log name: id and latest name, or the month, or the initials.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Choices {
    /// Months, the latest first.
    pub months: Vec<(String, String)>,
    /// Products.
    pub products: Vec<(String, String)>,
    /// Machines.
    pub machines: Vec<(String, String)>,
    /// Areas.
    pub areas: Vec<(String, String)>,
    /// Standards.
    pub standards: Vec<(String, String)>,
    /// Initials.
    pub who: Vec<(String, String)>,
}

/// What there is to choose from.
pub fn choices(fills: &[Current]) -> Choices {
    let mut months = BTreeSet::new();
    let mut who = BTreeSet::new();
    let [mut products, mut machines, mut areas, mut standards] = [(); 4].map(|()| BTreeMap::new());
    for one in fills {
        months.insert(one.said.get(..7).unwrap_or_default());
        who.insert(one.who.trim().to_uppercase());
        note(&mut products, &one.fill.product);
        note(&mut machines, &one.fill.machine);
        note(&mut standards, &one.fill.standard);
        for area in &one.fill.areas {
            note(&mut areas, area);
        }
    }
    let same = |text: &str| (text.to_owned(), text.to_owned());
    Choices {
        months: months.into_iter().rev().map(same).collect(),
        products: listed(products),
        machines: listed(machines),
        areas: listed(areas),
        standards: listed(standards),
        who: who.iter().filter(|who| !who.is_empty()).map(|who| same(who)).collect(),
    }
}

fn note<'a>(all: &mut BTreeMap<&'a str, &'a str>, named: &'a Named) {
    if !named.id.is_empty() {
        all.insert(&named.id, &named.name);
    }
}

fn listed(all: BTreeMap<&str, &str>) -> Vec<(String, String)> {
    let name = |id: &str, name: &str| if name.trim().is_empty() { id.to_owned() } else { name.to_owned() };
    let mut all: Vec<_> = all.into_iter().map(|(id, called)| (id.to_owned(), name(id, called))).collect();
    all.sort_by_cached_key(|(_, called)| called.to_lowercase());
    all
}
