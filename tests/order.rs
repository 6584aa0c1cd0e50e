//! The order of areas, against all orders tried one by one, and against laws.

#![cfg(not(target_arch = "wasm32"))]

use brimline::trade::order::{EXACT, Order, OrderMistake, Place, Stop, order};
use brimline::units::{Duration, Quantity};
use proptest::prelude::*;

fn minutes(minutes: u32) -> Duration {
    Duration::new(f64::from(minutes) * 60.0)
}

/// Changes and end of an order, told anew: `None` where an area is late or out of its place.
fn tried(stops: &[Stop], turns: &[usize], change: Duration) -> Option<(usize, f64)> {
    let (mut changes, mut now) = (0, 0.0_f64);
    for (turn, &index) in turns.iter().enumerate() {
        let stop = &stops[index];
        let out_of_place = match stop.place {
            Place::Free => false,
            Place::First => turn != 0,
            Place::Last => turn + 1 != turns.len(),
        };
        if out_of_place {
            return None;
        }
        if turn > 0 && stops[turns[turn - 1]].product != stop.product {
            changes += 1;
            now += change.si();
        }
        now = now.max(stop.opens.si()) + stop.time.si();
        if now > stop.closes.si() {
            return None;
        }
    }
    Some((changes, now))
}

/// The best of all orders: every permutation, by swapping.
fn brute_force(stops: &[Stop], change: Duration) -> Option<(usize, f64)> {
    fn every(turns: &mut Vec<usize>, from: usize, see: &mut dyn FnMut(&[usize])) {
        if from == turns.len() {
            see(turns);
        }
        for other in from..turns.len() {
            turns.swap(from, other);
            every(turns, from + 1, see);
            turns.swap(from, other);
        }
    }
    let mut best: Option<(usize, f64)> = None;
    every(&mut (0..stops.len()).collect(), 0, &mut |turns| {
        if let Some(found) = tried(stops, turns, change) {
            best = Some(best.map_or(found, |best| if found < best { found } else { best }));
        }
    });
    best
}

fn any_stop() -> impl Strategy<Value = Stop> {
    (
        0..4_usize,
        1..90_u32,
        prop_oneof![4 => Just(0_u32), 1 => 0..240_u32],
        prop_oneof![3 => Just(None), 1 => (60..480_u32).prop_map(Some)],
    )
        .prop_map(|(product, time, opens, closes)| Stop {
            opens: minutes(opens),
            closes: closes.map_or(Duration::new(f64::INFINITY), |closes| minutes(opens + time + closes)),
            ..Stop::free(product, minutes(time))
        })
}

/// Areas of which at most one must come first and one last.
fn any_stops(count: std::ops::Range<usize>) -> impl Strategy<Value = Vec<Stop>> {
    (proptest::collection::vec(any_stop(), count), any::<(bool, bool)>(), any::<(usize, usize)>()).prop_map(
        |(mut stops, (first, last), (at_first, at_last))| {
            let count = stops.len();
            if first && count > 0 {
                stops[at_first % count].place = Place::First;
            }
            if last && count > 1 && stops[at_last % count].place == Place::Free {
                stops[at_last % count].place = Place::Last;
            }
            stops
        },
    )
}

/// Each area once, and what the order says of itself.
fn sound(stops: &[Stop], found: &Order, change: Duration) -> Result<(), TestCaseError> {
    let mut all = found.stops.clone();
    all.sort_unstable();
    prop_assert_eq!(all, (0..stops.len()).collect::<Vec<_>>());
    let told = tried(stops, &found.stops, change);
    prop_assert_eq!(told.map(|(changes, _)| changes), Some(found.changes));
    prop_assert!(told.is_some_and(|(_, ends)| (ends - found.ends.si()).abs() <= 1e-6 * ends.max(1.0)));
    prop_assert!(found.changes >= found.least, "fewer changes than are possible");
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, ..ProptestConfig::default() })]

    #[test]
    fn up_to_eight_areas_are_ordered_as_brute_force_orders_them(stops in any_stops(0..8), change in 0..40_u32) {
        let change = minutes(change);
        match (order(&stops, change), brute_force(&stops, change)) {
            (Ok(found), Some((changes, ends))) => {
                prop_assert_eq!(found.changes, changes);
                prop_assert!((found.ends.si() - ends).abs() <= 1e-9 * ends.max(1.0), "{} and {}", found.ends.si(), ends);
                prop_assert!(found.exact);
                sound(&stops, &found, change)?;
            }
            (Err(OrderMistake::NoTime | OrderMistake::Late(_)), None) => {}
            (found, best) => prop_assert!(false, "{:?} where brute force finds {:?}", found, best),
        }
    }

    /// Without times to keep a large set is ordered with as few changes as can be.
    #[test]
    fn many_areas_without_times_need_no_more_changes_than_products(
        products in proptest::collection::vec(0..9_usize, EXACT + 1..120), change in 0..40_u32,
    ) {
        let stops: Vec<Stop> = products.iter().map(|product| Stop::free(*product, minutes(20))).collect();
        let change = minutes(change);
        let found = order(&stops, change).expect("an order");
        prop_assert_eq!(found.changes, found.least);
        sound(&stops, &found, change)?;
    }

    #[test]
    fn many_areas_keep_their_places_and_times(stops in any_stops(EXACT + 1..40), change in 0..40_u32) {
        let change = minutes(change);
        if let Ok(found) = order(&stops, change) {
            prop_assert!(!found.exact);
            sound(&stops, &found, change)?;
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 12, ..ProptestConfig::default() })]

    /// 40,320 orders a case.
    #[test]
    fn eight_areas_too(stops in any_stops(8..9), change in 0..40_u32) {
        let change = minutes(change);
        let best = brute_force(&stops, change);
        let found = order(&stops, change).ok().map(|found| found.changes);
        prop_assert_eq!(found, best.map(|(changes, _)| changes));
    }
}

/// Two areas of the neutral cleaner, one of the disinfectant between opening times: the change is made
/// once, although the disinfectant's area opens first.
#[test]
fn a_time_window_is_waited_for_rather_than_dumped_for() {
    let late = Stop { opens: minutes(60), ..Stop::free(0, minutes(30)) };
    let found = order(&[Stop::free(0, minutes(30)), Stop::free(1, minutes(30)), late], minutes(15))
        .expect("an order");
    assert_eq!((found.changes, found.stops), (1, vec![1, 0, 2]));
    // 30 + 15 + 30 minutes, then the last from 75 to 105.
    assert_eq!(found.ends, minutes(105));
}

#[test]
fn what_cannot_be_is_said() {
    let stop = Stop::free(0, minutes(30));
    let first = Stop { place: Place::First, ..stop };
    let last = Stop { place: Place::Last, ..stop };
    assert_eq!(order(&[first, first], minutes(5)), Err(OrderMistake::TwoFirst));
    assert_eq!(order(&[last, stop, last], minutes(5)), Err(OrderMistake::TwoLast));
    let late = Stop { closes: minutes(20), ..stop };
    assert_eq!(order(&[stop, late], minutes(5)), Err(OrderMistake::Late(1)));
    let soon = Stop { closes: minutes(40), ..stop };
    assert_eq!(order(&[soon, soon], minutes(5)), Err(OrderMistake::NoTime));
    assert_eq!(order(&[], minutes(5)).map(|order| order.stops), Ok(vec![]));
    // The first and the last share a product that lies between: one change more cannot be avoided.
    let other = Stop::free(1, minutes(30));
    assert_eq!(
        order(&[first, other, last], minutes(5)).map(|order| (order.changes, order.least)),
        Ok((2, 2))
    );
}
