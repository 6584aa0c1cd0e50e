//! How much was used.

use crate::coded::coded;
use crate::site::log::{Current, Named, Si};
use crate::units::Volume;
use std::collections::{BTreeMap, HashMap};

coded! {
    /// What use is counted by.
    By {
        /// By product.
        Product = "product",
        /// By machine.
        Machine = "machine",
        /// By area.
        Area = "area",
        /// By local month.
        Month = "month",
        /// By who did it.
        Who = "who",
        /// By standard, all its versions together.
        Standard = "standard",
    }
}

/// What was used of one product, by one machine, and so on.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Use {
    /// The id, the month or the initials; empty for fills that name none.
    pub key: String,
    /// What it was called last.
    pub name: String,
    /// How many fills.
    pub fills: usize,
    /// Fills that were for other areas as well. Each area has all of such a fill, since nobody knows its share: by
    /// area, what was used is an upper bound, and the areas' sum is more than the total.
    pub shared: usize,
    /// Concentrate as planned, of the fills that have a plan, m³.
    pub planned: Volume,
    /// Concentrate as measured, of the fills in which it was, m³.
    pub measured: Volume,
    /// Concentrate used: as measured, and as planned where nobody measured, m³.
    pub used: Volume,
    /// Fills in `used` that nobody measured.
    pub assumed: usize,
    /// Fills of which neither is known; no sum has them.
    pub unknown: usize,
    /// Fills that have both.
    pub compared: usize,
    /// Of the fills that have both: as planned, m³.
    pub compared_planned: Volume,
    /// Of the same fills: as measured, m³.
    pub compared_measured: Volume,
    /// Water as planned, m³.
    pub water: Volume,
}

impl Use {
    /// What was measured of what the standard planned, a ratio; none where no fill has both.
    pub fn ratio(&self) -> Option<f64> {
        (self.compared_planned > Volume::ZERO).then(|| self.compared_measured / self.compared_planned)
    }

    /// How far that is from the plan, a share of it: below 0 for less.
    pub fn share(&self) -> Option<f64> {
        self.ratio().map(|ratio| ratio - 1.0)
    }
}

/// A known volume.
pub(super) fn volume(si: Si) -> Option<Volume> {
    si.value().map(Volume::new)
}

/// What a fill used, and whether it was measured.
pub(super) fn used(one: &Current) -> Option<(Volume, bool)> {
    let measured = volume(one.fill.measured.si).map(|volume| (volume, true));
    measured.or_else(|| volume(one.fill.concentrate.si).map(|volume| (volume, false)))
}

/// Use by product, machine, area, month, person or standard, against what was planned.
///
/// Returns them by their keys. Sums are taken in the order of the fills. Source: definition.
///
/// ```
/// use brimline::site::log::{Amount, Fill, Log, Named, Stamp, Words, current};
/// use brimline::site::log::questions::{By, Filter, usage};
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// let mut log = Log::default();
/// let fill = Fill {
///     product: Named::new("p1", "Neutral"),
///     concentrate: Amount::new(0.000_6, "600 mL"),
///     measured: Amount::new(0.000_75, "750 mL"),
///     ..Fill::default()
/// };
/// log.fill(&stamp, fill, Words::default()).unwrap();
/// let uses = usage(Filter::default().of(&current(&log).fills), By::Product);
/// assert_eq!((uses[0].name.as_str(), uses[0].fills), ("Neutral", 1));
/// assert!((uses[0].ratio().unwrap() - 1.25).abs() < 1e-12);
/// ```
pub fn usage<'a>(fills: impl IntoIterator<Item = &'a Current>, by: By) -> Vec<Use> {
    let mut places: HashMap<&'a str, usize> = HashMap::new();
    let mut uses: Vec<Use> = Vec::new();
    let mut add = |key: &'a str, name: &str, one: &Current| {
        let place = *places.entry(key).or_insert_with(|| {
            uses.push(Use { key: key.to_owned(), ..Use::default() });
            uses.len() - 1
        });
        if let Some(sum) = uses.get_mut(place) {
            sum.add(name, one, by == By::Area && one.fill.areas.len() > 1);
        }
    };
    for one in fills {
        let named = |named: &'a Named| (&*named.id, &*named.name);
        let (key, name) = match by {
            By::Product => named(&one.fill.product),
            By::Machine => named(&one.fill.machine),
            By::Standard => named(&one.fill.standard),
            By::Month => (one.said.get(..7).unwrap_or_default(), one.said.get(..7).unwrap_or_default()),
            By::Who => (&*one.who, &*one.who),
            By::Area if one.fill.areas.is_empty() => ("", ""),
            By::Area => {
                // An area that a fill names twice has it once.
                let areas: BTreeMap<&str, &str> = one.fill.areas.iter().map(named).collect();
                for (key, name) in areas {
                    add(key, name, one);
                }
                continue;
            }
        };
        add(key, name, one);
    }
    uses.sort_by(|a, b| a.key.cmp(&b.key));
    uses
}

impl Use {
    fn add(&mut self, name: &str, one: &Current, shared: bool) {
        self.fills += 1;
        self.shared += usize::from(shared);
        if self.name != name {
            name.clone_into(&mut self.name);
        }
        let (planned, measured) = (volume(one.fill.concentrate.si), volume(one.fill.measured.si));
        let none = Volume::ZERO;
        self.planned += planned.unwrap_or(none);
        self.measured += measured.unwrap_or(none);
        self.water += volume(one.fill.water.si).unwrap_or(none);
        match used(one) {
            Some((volume, was_measured)) => {
                self.used += volume;
                self.assumed += usize::from(!was_measured);
            }
            None => self.unknown += 1,
        }
        if let (Some(planned), Some(measured)) = (planned, measured) {
            self.compared += 1;
            self.compared_planned += planned;
            self.compared_measured += measured;
        }
    }
}
