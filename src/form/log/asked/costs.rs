//! What was spent.

use super::{Told, count};
use crate::answer::{Fact, Remark, Value, Weight};
use crate::form::{Field, Typed, names};
use crate::number::Marks;
use crate::site::Product;
use crate::site::log::Current;
use crate::site::log::questions::{By, Prices, cost, usage};
use crate::trade::formula;
use crate::units::{Kind, Money, Volume, VolumePrice};

/// What one product cost.
#[derive(Clone, Debug, PartialEq)]
pub struct CostRow {
    /// Its name.
    pub name: String,
    /// What was used, m³.
    pub used: Volume,
    /// What it is bought at; none where the site does not say.
    pub price: Option<VolumePrice>,
    /// What it cost.
    pub cost: Option<Money>,
    /// Fills whose amount nobody knows.
    pub unknown: usize,
}

/// What fills cost.
#[derive(Clone, Debug, Default)]
pub struct Costs {
    /// The answer.
    pub told: Told,
    /// By product.
    pub rows: Vec<CostRow>,
}

/// What a product is bought at: the price of a container over what it holds.
pub(super) fn price(product: &Product, marks: Marks) -> Option<VolumePrice> {
    let container: Volume = product.container.read(Field::Container.limit(), marks).ok()?;
    let price: Money = product.price.read(Field::Price.limit(), marks).ok()?;
    Some(price / container)
}

/// What fills cost, at the prices that the site has now.
///
/// Formula and source: [`cost`].
pub fn costs<'a>(fills: impl IntoIterator<Item = &'a Current> + Clone, typed: &Typed, marks: Marks) -> Costs {
    let products: Vec<(String, VolumePrice)> = typed
        .site
        .products
        .iter()
        .filter_map(|product| Some((product.id.clone(), price(product, marks)?)))
        .collect();
    let water = typed.ask.water_price.read(Field::WaterPrice.limit(), marks).ok();
    let prices = Prices { products, water };
    let sum = cost(fills.clone(), &prices);
    let rows: Vec<CostRow> = usage(fills.clone(), By::Product)
        .into_iter()
        .map(|of| {
            let price = prices.products.iter().find(|(id, _)| *id == of.key).map(|(_, price)| *price);
            let cost = price.map(|price| price * of.used);
            CostRow { name: of.name, used: of.used, price, cost, unknown: of.unknown }
        })
        .collect();
    let all = fills.into_iter().count();
    let mut told = Told { fills: all, uncounted: all - sum.fills, ..Told::default() };
    let answer = &mut told.answer;
    let money = |money: Money| Value::new(money, Kind::Money);
    if sum.fills == 0 {
        answer.remark(Remark::new("remark-log-cost-none", Weight::Assumed));
        return Costs { told, rows };
    }
    answer.figure(names::LOG_COST, money(sum.total));
    answer.figure(names::LOG_COST_CONCENTRATE, money(sum.concentrate));
    // Where no water was written down, or it has no price, nobody knows what it cost.
    if sum.water > Money::ZERO {
        answer.figure(names::LOG_COST_WATER, money(sum.water));
    }
    // Money is shown with the site's sign, which a remark does not know: the sentence stands with the figures.
    let said = Remark::new("remark-log-cost", Weight::Assumed).value("fills", count(sum.fills));
    answer.remark(said.value("assumed", count(sum.assumed)));
    let unpriced: Vec<&str> =
        rows.iter().filter(|row| row.price.is_none()).map(|row| row.name.as_str()).collect();
    if !unpriced.is_empty() {
        let names = Fact::Text(unpriced.join(", "));
        answer.remark(Remark::new("remark-log-unpriced", Weight::Assumed).with("products", names));
    }
    if prices.water.is_none() {
        answer.remark(Remark::new("remark-log-water-free", Weight::Assumed));
    }
    let parts = [("k₁", money(sum.concentrate)), ("k₂", money(sum.water))];
    answer.step(&formula::LOG_COST, &parts, money(sum.total));
    Costs { told, rows }
}
