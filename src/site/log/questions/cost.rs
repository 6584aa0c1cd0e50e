//! What was spent.

use super::usage::{used, volume};
use crate::site::log::Current;
use crate::units::{Money, VolumePrice};
use std::collections::{BTreeSet, HashMap};

/// What concentrate and water are bought at.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Prices {
    /// The id of a product and its price.
    pub products: Vec<(String, VolumePrice)>,
    /// The price of water, where it is counted.
    pub water: Option<VolumePrice>,
}

/// What fills cost.
#[derive(Clone, Debug, PartialEq)]
pub struct Cost {
    /// Concentrate of the products that have a price.
    pub concentrate: Money,
    /// Water as planned.
    pub water: Money,
    /// Both.
    pub total: Money,
    /// Fills that have all that a cost needs.
    pub fills: usize,
    /// Fills whose amount nobody measured: they cost what was planned.
    pub assumed: usize,
    /// Fills of which neither amount is known; no sum has them.
    pub unknown: usize,
    /// Products without a price, by id; no sum has them.
    pub unpriced: Vec<String>,
}

/// What fills cost.
///
/// `k = Σ (p × V) + p(water) × Σ V(water)`, V as measured, else as planned
///
/// Source: definition.
///
/// ```
/// use brimline::site::log::{Amount, Fill, Log, Named, Stamp, Words, current};
/// use brimline::site::log::questions::{Filter, Prices, cost};
/// use brimline::units::{Quantity, VolumePrice};
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// let mut log = Log::default();
/// let measured = Amount::new(0.000_5, "500 mL");
/// log.fill(&stamp, Fill { product: Named::new("p1", "Neutral"), measured, ..Fill::default() }, Words::default()).unwrap();
/// // 8 a litre.
/// let prices = Prices { products: vec![("p1".into(), VolumePrice::new(8_000.0))], water: None };
/// assert_eq!(cost(Filter::default().of(&current(&log).fills), &prices).total.si(), 4.0);
/// ```
pub fn cost<'a>(fills: impl IntoIterator<Item = &'a Current>, prices: &Prices) -> Cost {
    let of: HashMap<&str, VolumePrice> =
        prices.products.iter().map(|(id, price)| (id.as_str(), *price)).collect();
    let mut unpriced = BTreeSet::new();
    let mut sum = Cost {
        concentrate: Money::ZERO,
        water: Money::ZERO,
        total: Money::ZERO,
        fills: 0,
        assumed: 0,
        unknown: 0,
        unpriced: Vec::new(),
    };
    for one in fills {
        if let Some((price, water)) = prices.water.zip(volume(one.fill.water.si)) {
            sum.water += price * water;
        }
        let price = of.get(&*one.fill.product.id);
        if price.is_none() {
            unpriced.insert(&*one.fill.product.id);
        }
        match (price, used(one)) {
            (Some(price), Some((volume, was_measured))) => {
                sum.concentrate += *price * volume;
                sum.fills += 1;
                sum.assumed += usize::from(!was_measured);
            }
            (_, None) => sum.unknown += 1,
            (None, Some(_)) => {}
        }
    }
    sum.total = sum.concentrate + sum.water;
    sum.unpriced = unpriced.into_iter().map(str::to_owned).collect();
    sum
}
