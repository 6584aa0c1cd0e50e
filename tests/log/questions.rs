//! What the log is asked, against sums that are worked out by hand or the long way.

use super::fills::{dose, litres, log, near};
use super::made::several;
use brimline::site::log::questions::{
    By, DriftMistake, Filter, Prices, SupplyMistake, cost, dosing, drift, missed, supply, tasks, unticked,
    usage,
};
use brimline::site::log::{Amount, Checklist, Fill, Named, Reading, Scale, Task, current};
use brimline::trade::{calendar::Date, stock::DAY};
use brimline::units::{Quantity, Volume, VolumePrice};
use proptest::prelude::*;

#[test]
fn use_against_the_standard() {
    let two = Fill {
        areas: vec![Named::new("a1", "Hall"), Named::new("a2", "Stairs")],
        ..dose("p", 1.0, Some(1.5))
    };
    let one = Fill { areas: vec![Named::new("a1", "Hall")], ..dose("p", 2.0, None) };
    let none = Fill { measured: Amount::default(), concentrate: Amount::default(), ..dose("q", 0.0, None) };
    let struck = Fill { struck: true, ..dose("p", 100.0, Some(100.0)) };
    let fills = log(&[
        ("2026-03-31T23:30:00-05:00", two, "AB"),
        ("2026-04-01T00:30:00-05:00", one, "ab "),
        ("2026-04-02T00:30:00-05:00", none, "CD"),
        ("2026-04-03T00:30:00-05:00", struck, "CD"),
    ]);
    let all = Filter::default();
    let products = usage(all.of(&fills), By::Product);
    assert_eq!(
        products.iter().map(|one| (one.key.as_str(), one.fills)).collect::<Vec<_>>(),
        [("p", 2), ("q", 1)]
    );
    let p = &products[0];
    assert!(near(p.planned.si(), 0.003) && near(p.measured.si(), 0.0015) && near(p.used.si(), 0.0035));
    assert_eq!((p.assumed, p.unknown, p.name.as_str()), (1, 0, "P"));
    assert!(near(p.ratio().expect("one has both"), 1.5));
    assert_eq!((products[1].unknown, products[1].ratio()), (1, None));
    let areas = usage(all.of(&fills), By::Area);
    let of = |key: &str| areas.iter().find(|one| one.key == key).expect("it is there");
    assert_eq!((of("a1").fills, of("a1").shared, of("a2").shared, of("").fills), (2, 1, 1, 1));
    // By the local calendar: in UTC both are of April.
    let months: Vec<_> =
        usage(all.of(&fills), By::Month).into_iter().map(|one| (one.key, one.fills)).collect();
    assert_eq!(months, [("2026-03".to_owned(), 1), ("2026-04".to_owned(), 2)]);
    assert_eq!(Filter { who: "AB".into(), ..Filter::default() }.of(&fills).count(), 2);
    assert_eq!(Filter { area: "a2".into(), ..Filter::default() }.of(&fills).count(), 1);
    assert_eq!(
        Filter { month: "2026-04".into(), product: "p".into(), ..Filter::default() }.of(&fills).count(),
        1
    );
}

#[test]
fn too_much_and_too_little() {
    let at = "2026-03-01T08:00:00Z";
    let doses = [
        (1.0, Some(0.9)),
        (1.0, Some(1.1)),
        (1.0, Some(1.2)),
        (1.0, Some(0.5)),
        (1.0, Some(3.0)),
        (1.0, None),
        (0.0, Some(1.0)),
        (0.0, Some(0.0)),
    ];
    let fills: Vec<_> =
        doses.iter().map(|(planned, measured)| (at, dose("p", *planned, *measured), "")).collect();
    let found = dosing(Filter::default().of(&log(&fills)), 0.1);
    assert_eq!((found.within, found.unknown), (2, 3));
    let ratios = |doses: &[brimline::site::log::questions::Dose]| {
        doses.iter().map(|one| one.ratio).collect::<Vec<_>>()
    };
    assert!(near(ratios(&found.over)[0], 3.0) && near(ratios(&found.over)[1], 1.2));
    assert_eq!(
        (found.over.len(), found.under.len(), found.under[0].id.to_string().as_str()),
        (2, 1, "station-1/4")
    );
}

#[test]
fn what_it_costs() {
    let water = |fill: Fill| Fill { water: litres(10.0), ..fill };
    let fills = log(&[
        ("2026-03-01T08:00:00Z", water(dose("p", 1.0, Some(2.0))), ""),
        ("2026-03-02T08:00:00Z", water(dose("p", 3.0, None)), ""),
        ("2026-03-03T08:00:00Z", dose("q", 1.0, Some(1.0)), ""),
        ("2026-03-04T08:00:00Z", Fill { concentrate: Amount::default(), ..dose("p", 0.0, None) }, ""),
    ]);
    let prices = Prices {
        products: vec![("p".into(), VolumePrice::new(4_000.0))],
        water: Some(VolumePrice::new(5.0)),
    };
    let found = cost(Filter::default().of(&fills), &prices);
    assert!(near(found.concentrate.si(), 5.0 * 4.0) && near(found.water.si(), 0.1));
    assert!(near(found.total.si(), 20.1));
    assert_eq!((found.fills, found.assumed, found.unknown), (2, 1, 1));
    assert_eq!(found.unpriced, ["q"]);
}

#[test]
fn how_long_a_stock_lasts() {
    let day = |day: i64| Date::new(2026, 3, day).expect("a day");
    let fills = log(&[
        ("2026-03-01T08:00:00Z", dose("p", 1.0, Some(2.0)), ""),
        ("2026-03-03T08:00:00Z", dose("p", 3.0, None), ""),
        ("2026-03-09T08:00:00Z", dose("p", 9.0, None), ""),
    ]);
    let filter = Filter::default();
    let left = supply(filter.of(&fills), Volume::new(0.010), day(5)).expect("it is known");
    assert!(near(left.daily.si(), 0.001) && near(left.lasts / DAY, 10.0));
    assert_eq!((left.days, left.assumed, left.unknown), (5, 1, 0));
    assert_eq!(supply(filter.of(&fills[..0]), Volume::new(1.0), day(5)), Err(SupplyMistake::NoUse));
    assert_eq!(supply(filter.of(&fills[2..]), Volume::new(1.0), day(5)), Err(SupplyMistake::NoUse));
    let mixed = log(&[
        ("2026-03-01T08:00:00Z", dose("p", 1.0, None), ""),
        ("2026-03-01T08:00:00Z", dose("q", 1.0, None), ""),
    ]);
    assert_eq!(supply(filter.of(&mixed), Volume::new(1.0), day(5)), Err(SupplyMistake::Products));
}

fn reading(day: i64, si: f64) -> (String, Fill) {
    let reading = Reading { scale: Scale::Active, si: Amount::new(si, "").si, text: "".into() };
    let when = format!("{}T08:00:00Z", Date::from_days(20_500 + day).expect("a day"));
    (when, Fill { reading, ..dose("p", 1.0, None) })
}

/// The line and its error against the data "Anscombe I": F. J. Anscombe, Graphs in Statistical Analysis, The American
/// Statistician 27 (1973), 17–21: slope 0.500, its standard error 0.118, mean 7.50 (7.501), from memory, unverified.
#[test]
fn whether_readings_wander() {
    let x = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
    let y = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68];
    let made: Vec<_> = x.iter().zip(y).map(|(x, y)| reading(*x, y)).collect();
    let made: Vec<_> = made.iter().map(|(when, fill)| (when.as_str(), fill.clone(), "")).collect();
    let fills = log(&made);
    let found = drift(Filter::default().of(&fills), Scale::Active).expect("a line");
    assert!(
        (found.slope - 0.500).abs() < 5e-4 && (found.error.expect("eleven") - 0.118).abs() < 5e-4,
        "{found:?}"
    );
    assert!((found.mean - 7.501).abs() < 5e-4 && found.readings == 11 && found.is_clear());
    assert_eq!(drift(Filter::default().of(&fills), Scale::Ratio), Err(DriftMistake::TooFew));
    assert_eq!(drift(Filter::default().of(&fills[..1]), Scale::Active), Err(DriftMistake::TooFew));
    let two = drift(Filter::default().of(&fills[..2]), Scale::Active).expect("a line");
    assert_eq!((two.error, two.is_clear()), (None, false));
    let other = Fill { product: Named::new("q", "Q"), ..made[0].1.clone() };
    let mixed = log(&[(made[0].0, made[0].1.clone(), ""), (made[1].0, other, "")]);
    assert_eq!(drift(Filter::default().of(&mixed), Scale::Active), Err(DriftMistake::Mixed));
}

#[test]
fn what_was_left_undone() {
    let list = |rinse, squeegee| Fill {
        machine: Named::new("m1", "Scrubber"),
        checklist: Checklist { rinse, squeegee, ..Checklist::default() },
        ..Fill::default()
    };
    let fills = log(&[
        ("2026-03-01T08:00:00Z", list(Task::Done, Task::NotDone), "AB"),
        ("2026-03-02T08:00:00Z", list(Task::NotDone, Task::NotDone), ""),
        ("2026-03-03T08:00:00Z", list(Task::Done, Task::Done), ""),
    ]);
    let found = missed(Filter::default().of(&fills));
    assert_eq!(
        found.iter().map(|one| one.tasks.clone()).collect::<Vec<_>>(),
        [
            vec!["drain", "filters", "brush", "squeegee"],
            vec!["drain", "rinse", "filters", "brush", "squeegee"],
            vec!["drain", "filters", "brush"]
        ]
    );
    assert_eq!((&*found[0].who, &*found[0].when), ("AB", "2026-03-01T08:00:00Z"));
    let counts = tasks(Filter::default().of(&fills));
    assert_eq!((counts[1].task, counts[1].done, counts[1].not_done, counts[1].not_asked), ("rinse", 2, 1, 0));
    assert_eq!((counts[0].task, counts[0].not_asked), ("drain", 3));
    // Ticked off, and filled once more: what is in the tank now was not drained.
    let again = log(&[
        ("2026-03-01T08:00:00Z", list(Task::Done, Task::Done), ""),
        (
            "2026-03-01T08:01:00Z",
            Fill { checklist: Checklist::default(), ..list(Task::Done, Task::Done) },
            "",
        ),
    ]);
    assert_eq!((missed(&again).len(), unticked(&again).len()), (0, 1));
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, failure_persistence: None, ..ProptestConfig::default() })]

    /// Whatever use is counted by, but areas, the parts are the whole; and each part is what its own filter gives.
    #[test]
    fn parts_make_the_whole(log in several()) {
        let fills = current(&log).fills;
        let all = Filter::default();
        let whole: f64 = all.of(&fills).filter_map(|one| one.fill.concentrate.si.value()).sum();
        for by in [By::Product, By::Machine, By::Month, By::Who, By::Standard] {
            let uses = usage(all.of(&fills), by);
            prop_assert!(near(uses.iter().map(|one| one.planned.si()).sum(), whole));
            prop_assert_eq!(uses.iter().map(|one| one.fills).sum::<usize>(), all.of(&fills).count());
        }
        for part in usage(all.of(&fills), By::Area).iter().filter(|part| !part.key.is_empty()) {
            let own = Filter { area: part.key.clone(), ..Filter::default() };
            prop_assert_eq!(own.of(&fills).count(), part.fills);
        }
        let found = dosing(all.of(&fills), 0.1);
        prop_assert_eq!(found.within + found.over.len() + found.under.len() + found.unknown, all.of(&fills).count());
    }
}
