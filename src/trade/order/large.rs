//! A good order of many areas.

use super::{Place, Stop, Walked, walk};
use crate::units::Duration;

/// Up to so many areas single ones are moved: each move walks the whole order again.
const MOVED: usize = 200;

/// A good order; `None` where none was found that keeps all times.
pub(super) fn good(stops: &[Stop], change: Duration, least: usize) -> Option<(Vec<usize>, Walked)> {
    let starts = [by_product(stops), by_time(stops)];
    let mut best: Option<(Vec<usize>, Walked)> = None;
    for turns in starts {
        let Some(walked) = walk(stops, &turns, change) else { continue };
        if best.as_ref().is_none_or(|(_, other)| walked.beats(*other)) {
            best = Some((turns, walked));
        }
    }
    let (mut turns, mut walked) = best?;
    // Few areas have a time to keep: where products already stand together there is nothing to move.
    let mut rounds = if stops.len() <= MOVED { 4 } else { 0 };
    while walked.changes > least && rounds > 0 && improve(stops, &mut turns, &mut walked, change) {
        rounds -= 1;
    }
    Some((turns, walked))
}

/// All of one product together: the first area's product first, the last one's last, between them the
/// product whose earliest time runs out soonest; within a product by the same rule.
fn by_product(stops: &[Stop]) -> Vec<usize> {
    let product_of = |place: Place| stops.iter().find(|stop| stop.place == place).map(|stop| stop.product);
    let (first, last) = (product_of(Place::First), product_of(Place::Last));
    let highest = stops.iter().map(|stop| stop.product).max().unwrap_or(0);
    let mut soonest = vec![f64::INFINITY; highest + 1];
    for stop in stops {
        soonest[stop.product] = soonest[stop.product].min(closing(stop));
    }
    let key = |index: &usize| {
        let stop = &stops[*index];
        let group = match stop.place {
            Place::First => 0,
            Place::Last => 4,
            Place::Free if Some(stop.product) == first => 1,
            Place::Free if Some(stop.product) == last => 3,
            Place::Free => 2,
        };
        (group, soonest[stop.product], stop.product, closing(stop))
    };
    sorted(stops.len(), |a, b| {
        let (a, b) = (key(a), key(b));
        a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)).then(a.2.cmp(&b.2)).then(a.3.total_cmp(&b.3))
    })
}

/// By the time that runs out soonest, whatever the product: where windows are tight.
fn by_time(stops: &[Stop]) -> Vec<usize> {
    let place = |index: &usize| match stops[*index].place {
        Place::First => 0,
        Place::Free => 1,
        Place::Last => 2,
    };
    sorted(stops.len(), |a, b| {
        let (one, other) = (&stops[*a], &stops[*b]);
        place(a)
            .cmp(&place(b))
            .then(closing(one).total_cmp(&closing(other)))
            .then(one.opens.partial_cmp(&other.opens).unwrap_or(std::cmp::Ordering::Equal))
            .then(one.product.cmp(&other.product))
    })
}

fn sorted(count: usize, by: impl Fn(&usize, &usize) -> std::cmp::Ordering) -> Vec<usize> {
    let mut turns: Vec<usize> = (0..count).collect();
    turns.sort_by(by);
    turns
}

fn closing(stop: &Stop) -> f64 {
    use crate::units::Quantity;
    stop.closes.si()
}

/// Moves single areas beside one of their own product while that helps; tells whether anything moved.
fn improve(stops: &[Stop], turns: &mut Vec<usize>, walked: &mut Walked, change: Duration) -> bool {
    let mut moved = false;
    for index in 0..stops.len() {
        if stops[index].place != Place::Free {
            continue;
        }
        let Some(from) = turns.iter().position(|turn| *turn == index) else { continue };
        let alone = |at: Option<&usize>| at.is_none_or(|other| stops[*other].product != stops[index].product);
        let before = from.checked_sub(1).and_then(|before| turns.get(before));
        if !(alone(before) && alone(turns.get(from + 1))) {
            continue;
        }
        for to in 0..turns.len() {
            if stops[turns[to]].product != stops[index].product || to == from {
                continue;
            }
            let mut next = turns.clone();
            next.remove(from);
            next.insert(to, index);
            let held = next.first().zip(next.last()).is_some_and(|(first, last)| {
                let keeps = |place: Place, at: usize| {
                    stops.iter().all(|stop| stop.place != place) || stops[at].place == place
                };
                keeps(Place::First, *first) && keeps(Place::Last, *last)
            });
            let better = walk(stops, &next, change).filter(|other| held && other.beats(*walked));
            if let Some(better) = better {
                (*turns, *walked, moved) = (next, better, true);
                break;
            }
        }
    }
    moved
}
