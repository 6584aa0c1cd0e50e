//! How long what stands on the shelf lasts.

use super::{Told, count};
use crate::answer::{Fact, Remark, Value, Weight};
use crate::error::Mistake;
use crate::form::log::Draft;
use crate::form::{Field, Typed};
use crate::limits;
use crate::number::Marks;
use crate::site::Product;
use crate::site::log::Current;
use crate::site::log::questions::{By, Supply, SupplyMistake, supply, usage};
use crate::trade::calendar::Date;
use crate::trade::formula;
use crate::trade::stock::DAY;
use crate::units::{Duration, Kind, Plain, Quantity, Volume};

/// How long the stock of one product lasts.
#[derive(Clone, Debug, PartialEq)]
pub struct Lasting {
    /// The id of the product.
    pub id: String,
    /// Its name.
    pub name: String,
    /// What is left by the log, m³; none where nobody counted, or the container is not known.
    pub left: Option<Volume>,
    /// How long that lasts, or why nobody can say; none where it is not known what is left.
    pub supply: Option<Result<Supply, SupplyMistake>>,
    /// What is wrong with the count.
    pub mistake: Option<Mistake>,
    /// Whether the day of the count is none, or still to come.
    pub no_day: bool,
    /// Whether the product's container is not known.
    pub no_container: bool,
    /// The time from ordering to delivery, where it is known.
    pub lead: Option<Duration>,
}

impl Lasting {
    /// Whether it runs out before an order of today comes.
    pub fn is_late(&self) -> bool {
        let lasts = self.supply.and_then(Result::ok).map(|supply| supply.lasts);
        lasts.zip(self.lead).is_some_and(|(lasts, lead)| lasts <= lead)
    }
}

/// How long all stocks last.
#[derive(Clone, Debug, Default)]
pub struct Shelf {
    /// The answer.
    pub told: Told,
    /// By product, those of the log and those that were counted.
    pub rows: Vec<Lasting>,
}

/// How long what was counted on the shelf lasts.
///
/// `S = n × c − ΣV` since the day of the count, that day included: what was poured before the count that day is
/// taken off as well, since nobody knows. The mean use is [`supply`]'s.
pub fn shelf<'a>(
    fills: impl IntoIterator<Item = &'a Current> + Clone,
    typed: &Typed,
    draft: &Draft,
    today: Date,
    marks: Marks,
) -> Shelf {
    let all: Vec<&Current> = fills.into_iter().collect();
    let uses = usage(all.iter().copied(), By::Product);
    let is_asked = |product: &&Product| {
        uses.iter().any(|one| one.key == product.id) || !draft.counted(&product.id).containers.text.is_empty()
    };
    let rows: Vec<Lasting> = typed
        .site
        .products
        .iter()
        .filter(is_asked)
        .map(|product| lasting(&all, product, draft, today, marks))
        .collect();
    let unknown = uses.iter().map(|one| one.unknown).sum();
    let mut told = Told { fills: all.len(), uncounted: unknown, ..Told::default() };
    let known = rows.iter().filter_map(|row| Some((row, row.supply?.ok()?)));
    let soonest = known.min_by(|a, b| a.1.lasts.si().total_cmp(&b.1.lasts.si()));
    let Some((row, supply)) = soonest else {
        told.answer.remark(Remark::new("remark-log-stock-none", Weight::Assumed));
        return Shelf { told, rows };
    };
    let days = Value::plain((supply.lasts / DAY).floor().max(0.0), Kind::Count);
    told.answer.remark(
        Remark::new("remark-log-stock", Weight::Assumed)
            .with("product", Fact::Text(row.name.clone()))
            .value("days", days)
            .value("daily", Value::new(supply.daily, Kind::Dose))
            .value("of", count(usize::try_from(supply.days).unwrap_or_default())),
    );
    for late in rows.iter().filter(|row| row.is_late()) {
        let late = Fact::Text(late.name.clone());
        told.answer.remark(Remark::new("remark-log-stock-late", Weight::Warn).with("product", late));
    }
    if let Some(left) = row.left {
        let given = [("S", Value::new(left, Kind::Fill)), ("d", Value::new(supply.daily, Kind::Dose))];
        told.answer.step(&formula::LOG_SUPPLY, &given, days);
    }
    Shelf { told, rows }
}

fn lasting(all: &[&Current], product: &Product, draft: &Draft, today: Date, marks: Marks) -> Lasting {
    let counted = draft.counted(&product.id);
    let container = product.container.read::<Volume>(Field::Container.limit(), marks).ok();
    let lead = product.lead.read::<Duration>(Field::Lead.limit(), marks).ok();
    let (number, mistake) = match counted.containers.read_optional::<Plain>(&limits::SHELF, marks) {
        Ok(number) => (number, None),
        Err(mistake) => (None, Some(mistake)),
    };
    let day = Date::read(counted.day.trim()).filter(|day| *day <= today);
    let no_day = number.is_some() && day.is_none();
    let own = || all.iter().copied().filter(|one| *one.fill.product.id == *product.id);
    let left = number.zip(day).zip(container).map(|((number, day), container)| {
        let since = usage(own().filter(|one| one.when.date >= day), By::Product);
        let used = since.first().map_or(Volume::ZERO, |one| one.used);
        (container * number.si() - used).max(Volume::ZERO)
    });
    Lasting {
        id: product.id.clone(),
        name: product.name.clone(),
        left,
        supply: left.map(|left| supply(own(), left, today)),
        mistake,
        no_day,
        no_container: container.is_none(),
        lead,
    }
}
