//! How long a stock lasts.

use super::usage::used;
use crate::site::log::Current;
use crate::trade::calendar::Date;
use crate::trade::stock::DAY;
use crate::units::{Duration, Volume};

/// So many days before the one that is asked about tell what a day uses: what was used long ago says nothing of
/// tomorrow. Common practice, no source.
pub const RECENT: i64 = 90;

/// How long a stock lasts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Supply {
    /// What a mean day used, m³: from the day of the first fill of the last [`RECENT`] days to the day that was asked
    /// about, both included.
    pub daily: Volume,
    /// How many days that were.
    pub days: i64,
    /// How long the stock lasts at that, s.
    pub lasts: Duration,
    /// Fills that nobody measured: they used what was planned.
    pub assumed: usize,
    /// Fills of which neither amount is known: the use is more, and the stock lasts less.
    pub unknown: usize,
}

/// Why nobody can say how long a stock lasts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SupplyMistake {
    /// No fill of known amount in the last [`RECENT`] days by that day.
    NoUse,
    /// Fills of more than one product are asked about: a stock is of one.
    Products,
}

impl SupplyMistake {
    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::NoUse => "log-no-use",
            Self::Products => "log-products",
        }
    }
}

/// How long a stock of one product lasts at the use so far. An estimate: it takes days to come for the days that
/// were.
///
/// `t = S / d`, `d = ΣV / n`, n days
///
/// * `stock`: S, m³, 0 or above.
/// * `until`: the last day that is counted; later fills are not.
///
/// Source: definition.
///
/// # Errors
/// [`SupplyMistake`].
///
/// ```
/// use brimline::site::log::{Amount, Fill, Log, Stamp, Words, current};
/// use brimline::site::log::questions::{Filter, supply};
/// use brimline::trade::{calendar::Date, stock::DAY};
/// use brimline::units::Volume;
/// let stamp = Stamp { device: "station-1", when: "2026-03-01T18:30:00Z", random: [7; 32] };
/// let mut log = Log::default();
/// log.fill(&stamp, Fill { measured: Amount::new(0.01, "10 L"), ..Fill::default() }, Words::default()).unwrap();
/// let view = current(&log);
/// // 10 L in five days, 20 L left: ten days.
/// let left = supply(Filter::default().of(&view.fills), Volume::new(0.02), Date::new(2026, 3, 5).unwrap()).unwrap();
/// assert!((left.lasts / DAY - 10.0).abs() < 1e-9);
/// ```
pub fn supply<'a>(
    fills: impl IntoIterator<Item = &'a Current>,
    stock: Volume,
    until: Date,
) -> Result<Supply, SupplyMistake> {
    let (mut sum, mut assumed, mut unknown) = (Volume::ZERO, 0, 0);
    let (mut first, mut product): (Option<Date>, Option<&str>) = (None, None);
    let from = until.days() - RECENT;
    let is_recent = |one: &&Current| one.when.date <= until && one.when.date.days() > from;
    for one in fills.into_iter().filter(is_recent) {
        let id = &*one.fill.product.id;
        if *product.get_or_insert(id) != id {
            return Err(SupplyMistake::Products);
        }
        first = Some(first.map_or(one.when.date, |first| first.min(one.when.date)));
        match used(one) {
            Some((volume, was_measured)) => {
                sum += volume;
                assumed += usize::from(!was_measured);
            }
            None => unknown += 1,
        }
    }
    let first = first.filter(|_| sum > Volume::ZERO).ok_or(SupplyMistake::NoUse)?;
    let days = until.days() - first.days() + 1;
    let daily = sum / days as f64;
    Ok(Supply { daily, days, lasts: DAY * (stock / daily), assumed, unknown })
}
