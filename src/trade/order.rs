//! In which order areas are cleaned: the fewest product changes first, then the earliest end.
//!
//! Each change of concentrate between two areas is a dump and a rinse. Up to [`EXACT`] areas the best
//! order is found for certain; beyond that a good one, with the least number of changes that any order
//! could have beside it.

mod exact;
mod large;

use crate::coded::coded;
use crate::units::Duration;

/// Up to so many areas the order is the best there is.
pub const EXACT: usize = 10;

coded! {
    /// Where an area must stand.
    #[derive(Default)]
    Place {
        /// Wherever it fits.
        #[default]
        Free = "free",
        /// Before all others.
        First = "first",
        /// After all others.
        Last = "last",
    }
}

/// One area, as far as its place in the shift goes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stop {
    /// Which product it takes; equal numbers are one product.
    pub product: usize,
    /// How long it takes, with its refills, s, 0 or above.
    pub time: Duration,
    /// Where it must stand.
    pub place: Place,
    /// Not begun before this time of the shift, s.
    pub opens: Duration,
    /// Done by this time of the shift, s; infinite where it need not be.
    pub closes: Duration,
}

impl Stop {
    /// An area without a place or a time of its own.
    pub fn free(product: usize, time: Duration) -> Self {
        Self {
            product,
            time,
            place: Place::Free,
            opens: Duration::ZERO,
            closes: Duration::new(f64::INFINITY),
        }
    }
}

/// An order.
#[derive(Clone, Debug, PartialEq)]
pub struct Order {
    /// The index of each area, in turn.
    pub stops: Vec<usize>,
    /// Product changes on the way, each a dump and a rinse.
    pub changes: usize,
    /// When the last area is done, s.
    pub ends: Duration,
    /// No order has fewer changes than this.
    pub least: usize,
    /// Whether it is known to be the best.
    pub exact: bool,
}

/// Why there is no order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OrderMistake {
    /// Two areas must come first.
    TwoFirst,
    /// Two areas must come last.
    TwoLast,
    /// This area cannot be done by the time it must be, even if it comes as early as it may.
    Late(usize),
    /// Some areas cannot all be done in their times.
    NoTime,
}

/// Orders areas.
///
/// An order is better with fewer changes, and of two with equally many the one that ends earlier. An
/// area that opens later is waited for.
///
/// * `stops`: the areas; their number is not limited.
/// * `change`: the time of one dump and rinse, s, 0 or above.
///
/// Travel between areas is not in it: a site has no map here. Exact up to [`EXACT`] areas by dynamic
/// programming over the sets of areas done (Held and Karp, J. SIAM 10:196 (1962), from memory,
/// unverified), with all pairs of changes and time kept that no other pair beats; beyond that products are
/// kept together and, up to 200 areas, the order improved by moving areas while that helps.
///
/// # Errors
/// [`OrderMistake`]. For more than [`EXACT`] areas `NoTime` means that none was found.
///
/// ```
/// use brimline::trade::order::{Stop, order};
/// use brimline::units::Duration;
/// let hour = Duration::new(3_600.0);
/// let stops = [Stop::free(0, hour), Stop::free(1, hour), Stop::free(0, hour)];
/// let order = order(&stops, Duration::new(600.0)).unwrap();
/// assert_eq!((order.changes, order.least, order.ends), (1, 1, Duration::new(3.0 * 3_600.0 + 600.0)));
/// ```
pub fn order(stops: &[Stop], change: Duration) -> Result<Order, OrderMistake> {
    let fixed = |place: Place| stops.iter().filter(move |stop| stop.place == place).count();
    if fixed(Place::First) > 1 {
        return Err(OrderMistake::TwoFirst);
    }
    if fixed(Place::Last) > 1 {
        return Err(OrderMistake::TwoLast);
    }
    if let Some(late) = stops.iter().position(|stop| stop.opens + stop.time > stop.closes) {
        return Err(OrderMistake::Late(late));
    }
    let least = least_changes(stops);
    let found =
        if stops.len() <= EXACT { exact::best(stops, change) } else { large::good(stops, change, least) };
    let (stops_in_turn, walked) = found.ok_or(OrderMistake::NoTime)?;
    let exact = stops.len() <= EXACT;
    Ok(Order { stops: stops_in_turn, changes: walked.changes, ends: walked.ends, least, exact })
}

/// What an order comes to: its changes, and when its last area is done; none where an area would be done too
/// late or out of its place.
///
/// * `turns`: the index of each area, in turn.
/// * `change`: as for [`order`].
///
/// ```
/// use brimline::trade::order::{Stop, comes_to};
/// use brimline::units::Duration;
/// let hour = Duration::new(3_600.0);
/// let stops = [Stop::free(0, hour), Stop::free(1, hour)];
/// let ends = Duration::new(7_200.0 + 600.0);
/// assert_eq!(comes_to(&stops, &[0, 1], Duration::new(600.0)), Some((1, ends)));
/// ```
pub fn comes_to(stops: &[Stop], turns: &[usize], change: Duration) -> Option<(usize, Duration)> {
    let last = turns.len().checked_sub(1);
    let stands = |(turn, index): (usize, &usize)| match stops[*index].place {
        Place::Free => true,
        Place::First => turn == 0,
        Place::Last => Some(turn) == last,
    };
    let walked = walk(stops, turns, change)?;
    turns.iter().enumerate().all(stands).then_some((walked.changes, walked.ends))
}

/// Changes that no order can avoid: one less than there are products; one more where the first and the
/// last share one and others lie between.
fn least_changes(stops: &[Stop]) -> usize {
    let mut products: Vec<usize> = Vec::new();
    for stop in stops {
        if !products.contains(&stop.product) {
            products.push(stop.product);
        }
    }
    let at = |place: Place| stops.iter().find(|stop| stop.place == place).map(|stop| stop.product);
    let both_ends = at(Place::First).is_some() && at(Place::First) == at(Place::Last);
    products.len().saturating_sub(1) + usize::from(both_ends && products.len() > 1)
}

/// What an order comes to.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Walked {
    changes: usize,
    ends: Duration,
    last: Option<usize>,
}

impl Walked {
    const START: Self = Self { changes: 0, ends: Duration::ZERO, last: None };

    /// With one more area; `None` where it would be done too late.
    fn then(self, stops: &[Stop], next: usize, change: Duration) -> Option<Self> {
        let stop = &stops[next];
        let changes = self.last.is_some_and(|last| stops[last].product != stop.product);
        let begins = if changes { self.ends + change } else { self.ends };
        let ends = begins.max(stop.opens) + stop.time;
        (ends <= stop.closes * (1.0 + 1e-12)).then_some(Self {
            changes: self.changes + usize::from(changes),
            ends,
            last: Some(next),
        })
    }

    /// Whether it is the better of two.
    fn beats(self, other: Self) -> bool {
        self.changes < other.changes || self.changes == other.changes && self.ends < other.ends
    }
}

/// Walks a whole order; `None` where an area would be done too late.
fn walk(stops: &[Stop], turns: &[usize], change: Duration) -> Option<Walked> {
    turns.iter().try_fold(Walked::START, |walked, next| walked.then(stops, *next, change))
}
