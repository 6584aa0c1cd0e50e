//! What work costs, and what to keep in stock for it.

use super::Amounts;
use crate::answer::Value;
use crate::form::{Field, Outcome, Typed, names};
use crate::number::Marks;
use crate::trade::formula;
use crate::trade::stock::{Supply, USUAL_SAFETY, containers, daily, reorder_at, safety_stock};
use crate::units::{Area, AreaPrice, Duration, Kind, Money, Volume, VolumeFraction, VolumePrice, Wage};

/// What work costs, each part as far as its price is known.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Cost {
    /// Concentrate.
    pub concentrate: Option<Money>,
    /// Water, in and out.
    pub water: Option<Money>,
    /// Labour.
    pub labour: Option<Money>,
}

impl Cost {
    /// All parts that are known; none where none is.
    pub fn sum(self) -> Option<Money> {
        let known: Vec<Money> = [self.concentrate, self.water, self.labour].into_iter().flatten().collect();
        (!known.is_empty()).then(|| known.into_iter().sum())
    }
}

impl Cost {
    /// A part of it as a share of the whole.
    pub fn share(self, part: Money) -> Option<VolumeFraction> {
        let sum = self.sum().filter(|sum| *sum > Money::ZERO)?;
        Some(VolumeFraction::new(part / sum))
    }
}

/// What to keep of one product.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stock {
    /// Its place in the site's list.
    pub product: usize,
    /// What a mean month uses.
    pub monthly: Volume,
    /// Whole containers that a year uses, where the container is known.
    pub yearly: Option<f64>,
    /// What to keep for days that use more, where the time of delivery is known.
    pub safety: Option<Volume>,
    /// The stock at which to order.
    pub reorder: Option<Volume>,
    /// The same in whole containers.
    pub reorder_containers: Option<f64>,
}

/// How one product is bought.
#[derive(Clone, Copy, Debug, Default)]
struct Bought {
    container: Option<Volume>,
    price: Option<Money>,
    lead: Option<Duration>,
}

impl Bought {
    fn each(self) -> Option<VolumePrice> {
        Some(self.price? / self.container?)
    }
}

/// What everything is bought at.
#[derive(Clone, Debug)]
pub(super) struct Prices {
    products: Vec<Bought>,
    pub water: Option<VolumePrice>,
    pub wage: Option<Wage>,
    spread: VolumeFraction,
}

impl Prices {
    /// Reads them; mistakes are noted at their fields, those of the product asked about.
    pub(super) fn read(out: &mut Outcome, bare: &Typed, marks: Marks) -> Self {
        let asked = bare.product().map(|product| product.id.clone());
        let mut own = bare.clone();
        let mut products = Vec::new();
        for product in &bare.site.products {
            own.ask.product.clone_from(&product.id);
            let mut aside = Outcome::default();
            let out = if asked.as_ref() == Some(&product.id) { &mut *out } else { &mut aside };
            products.push(Bought {
                container: out.may(&own, Field::Container, marks).flatten(),
                price: out.may(&own, Field::Price, marks).flatten(),
                lead: out.may(&own, Field::Lead, marks).flatten(),
            });
        }
        Self {
            products,
            water: out.may(bare, Field::WaterPrice, marks).flatten(),
            wage: out.may(bare, Field::Wage, marks).flatten(),
            spread: out.may(bare, Field::Spread, marks).flatten().unwrap_or(VolumeFraction::ZERO),
        }
    }

    /// Whether the price of a product is known.
    pub(super) fn knows(&self, product: usize) -> bool {
        self.products[product].each().is_some()
    }

    /// What work costs: `K = Σ C × k + W × w + L × l`.
    pub(super) fn cost(&self, amounts: &Amounts) -> Cost {
        let priced = |(bought, volume): (&Bought, &Volume)| bought.each().map(|each| each * *volume);
        let used =
            self.products.iter().zip(&amounts.concentrate).filter(|(_, volume)| **volume > Volume::ZERO);
        let known: Vec<Money> = used.filter_map(priced).collect();
        Cost {
            concentrate: (!known.is_empty()).then(|| known.into_iter().sum()),
            water: self.water.map(|price| price * amounts.water()),
            labour: self.wage.map(|wage| wage * amounts.labour),
        }
    }

    /// What to keep of each product that a year uses.
    pub(super) fn stocks(&self, year: &Amounts) -> Vec<Stock> {
        let used = year.concentrate.iter().enumerate().filter(|(_, yearly)| **yearly > Volume::ZERO);
        let stock = |(product, yearly): (usize, &Volume)| {
            let Bought { container, lead, .. } = self.products[product];
            let daily = daily(*yearly);
            let spread = self.spread * daily;
            let supply = lead.map(|lead| Supply { daily, spread, lead, safety: USUAL_SAFETY });
            let reorder = supply.map(reorder_at);
            Stock {
                product,
                monthly: *yearly / 12.0,
                yearly: container.map(|container| containers(*yearly, container)),
                safety: supply.map(safety_stock),
                reorder,
                reorder_containers: reorder.zip(container).map(|(reorder, one)| containers(reorder, one)),
            }
        };
        used.map(stock).collect()
    }
}

fn money(money: Money) -> Value {
    Value::new(money, Kind::Money)
}

/// The figures of what a shift costs.
pub(super) fn figures(out: &mut Outcome, amounts: &Amounts, cost: Cost) {
    let Some(sum) = cost.sum() else { return };
    let answer = &mut out.answer;
    let mut given = Vec::new();
    for (name, symbol, part) in [
        (names::COST_CONCENTRATE, "Σ C × k", cost.concentrate),
        (names::COST_WATER, "W × w", cost.water),
        (names::COST_LABOUR, "L × l", cost.labour),
    ] {
        if let Some(part) = part {
            answer.figure(name, money(part));
            given.push((symbol, money(part)));
        }
    }
    answer.figure(names::COST_TOTAL, money(sum));
    answer.step(&formula::COST, &given, money(sum));
    let each: AreaPrice = sum / amounts.area;
    let each = Value::new(each, Kind::AreaPrice);
    let area: Area = amounts.area;
    answer.figure(names::COST_EACH, each);
    answer.step(&formula::COST_EACH, &[("K", money(sum)), ("Σ A", Value::new(area, Kind::Area))], each);
}

/// What a mean month and a mean year cost.
pub(super) fn year_figures(out: &mut Outcome, cost: Cost) {
    if let Some(sum) = cost.sum() {
        out.answer.figure(names::MONTH_COST, money(sum / 12.0));
        out.answer.figure(names::YEAR_COST, money(sum));
    }
}
