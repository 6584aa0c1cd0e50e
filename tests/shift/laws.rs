//! What holds for every plan, whatever the areas and the machine.

use crate::near;
use brimline::trade::shift::{Act, Battery, Means, Plan, Task, plan};
use brimline::units::{ApplicationRate, Area, Duration, Productivity, Quantity, Volume, VolumeFraction};
use proptest::prelude::*;

fn any_task() -> impl Strategy<Value = Task> {
    let work = (1.0..5_000.0_f64, 1e-5..1e-3_f64, 0.05..3.0_f64, 0usize..3);
    let around = (prop_oneof![Just(0.0), 0.0..30_000.0_f64], prop_oneof![Just(0.0), 0.0..600.0_f64]);
    (work, around, prop_oneof![Just(0.0), 0.0..900.0_f64]).prop_map(
        |((size, spent, pace, product), (opens, way), mopping)| {
            let (spent, pace) = (ApplicationRate::new(spent), Productivity::new(pace));
            let strength = VolumeFraction::new(0.01 * (product + 1) as f64);
            let (opens, way, mopping) = (Duration::new(opens), Duration::new(way), Duration::new(mopping));
            Task { product, opens, way, mopping, ..Task::plain(Area::new(size), spent, pace, strength) }
        },
    )
}

fn any_means() -> impl Strategy<Value = Means> {
    let battery = proptest::option::of((300.0..20_000.0_f64, 0.0..40_000.0_f64));
    (0.005..0.3_f64, 0.0..1_800.0_f64, 0.0..3_600.0_f64, battery).prop_map(
        |(tank, refill, change, battery)| {
            let battery = battery.map(|(lasts, charge)| Battery {
                lasts: Duration::new(lasts),
                charge: Duration::new(charge),
            });
            let (refill, change) = (Duration::new(refill), Duration::new(change));
            Means { tank: Volume::new(tank), refill, change, battery }
        },
    )
}

/// The time of everything of one sort.
fn time(plan: &Plan, of: impl Fn(Act) -> bool) -> f64 {
    plan.time_of(of).si()
}

proptest! {
    #[test]
    fn events_follow_each_other_without_a_gap(tasks in proptest::collection::vec(any_task(), 1..8), means in any_means()) {
        let Some(plan) = plan(&tasks, means) else { return Ok(()) };
        let mut clock = 0.0;
        for event in &plan.events {
            prop_assert!(near(event.from.si(), clock), "{:?} at {}", event, clock);
            prop_assert!(event.lasts > Duration::ZERO);
            clock = (event.from + event.lasts).si();
        }
        prop_assert!(near(clock, plan.total.si()));
        prop_assert!(plan.levels.windows(2).all(|pair| pair[0].at <= pair[1].at * (1.0 + 1e-12)));
        prop_assert!(plan.levels.iter().all(|level| level.solution <= means.tank && level.solution >= Volume::ZERO));
    }

    #[test]
    fn every_area_is_cleaned_once_and_whole(tasks in proptest::collection::vec(any_task(), 1..8), means in any_means()) {
        let Some(plan) = plan(&tasks, means) else { return Ok(()) };
        for (index, task) in tasks.iter().enumerate() {
            let run = task.size / task.productivity;
            let cleaned: f64 = plan.events.iter().filter(|event| event.act == Act::Clean && event.task == index).map(|event| event.lasts.si()).sum();
            prop_assert!((cleaned / run.si() - 1.0).abs() < 1e-6, "{} of {:?}", cleaned, run);
            let begins = plan.events.iter().find(|event| event.act == Act::Clean && event.task == index).unwrap();
            prop_assert!(begins.from.si() >= (task.opens + task.mopping).si() * (1.0 - 1e-9), "it opens first");
            prop_assert!(plan.done[index] >= begins.from);
        }
        prop_assert!(near(time(&plan, |act| act == Act::Mop), tasks.iter().map(|task| task.mopping.si()).sum::<f64>()) || tasks.iter().all(|task| task.mopping == Duration::ZERO));
    }

    /// What is filled is what is spent, product by product; a change stands between two products and nowhere
    /// else; a refill never does.
    #[test]
    fn fills_are_of_the_product_that_is_used(tasks in proptest::collection::vec(any_task(), 1..8), means in any_means()) {
        let Some(plan) = plan(&tasks, means) else { return Ok(()) };
        for product in 0..3 {
            let need: f64 = tasks.iter().filter(|task| task.product == product).map(|task| (task.spent * task.size).si()).sum();
            let filled: f64 = plan.fills.iter().filter(|fill| tasks[fill.task].product == product).map(|fill| fill.solution.si()).sum();
            prop_assert!(near(need, filled), "{} of {}", filled, need);
        }
        let changes = tasks.windows(2).filter(|pair| pair[0].product != pair[1].product).count();
        prop_assert_eq!(plan.count_of(|act| matches!(act, Act::Change(_))), if means.change > Duration::ZERO { changes } else { 0 });
        for event in &plan.events {
            if let Act::Refill(fill) | Act::Change(fill) = event.act {
                prop_assert_eq!(plan.fills[fill].task, event.task);
                prop_assert!(near((event.from + event.lasts).si(), plan.fills[fill].at.si()));
                let before = tasks[plan.fills[fill - 1].task..=event.task].windows(2).any(|pair| pair[0].product != pair[1].product);
                prop_assert_eq!(matches!(event.act, Act::Change(_)), before);
            }
        }
        for fill in &plan.fills {
            prop_assert!(fill.solution <= means.tank);
            prop_assert!(near(fill.concentrate.si(), (tasks[fill.task].strength * fill.solution).si()));
        }
    }

    /// Between two charges the machine cleans no longer than a charge lasts, and it is charged no sooner than
    /// it must.
    #[test]
    fn a_battery_is_used_up_before_it_is_charged(tasks in proptest::collection::vec(any_task(), 1..8), means in any_means()) {
        let (Some(battery), Some(plan)) = (means.battery, plan(&tasks, means)) else { return Ok(()) };
        prop_assume!(battery.charge > Duration::ZERO);
        let mut used = 0.0;
        for event in &plan.events {
            match event.act {
                Act::Clean => used += event.lasts.si(),
                Act::Charge => {
                    prop_assert!((used / battery.lasts.si() - 1.0).abs() < 1e-6, "{} of {:?}", used, battery.lasts);
                    used = 0.0;
                }
                _ => {}
            }
            prop_assert!(used <= battery.lasts.si() * (1.0 + 1e-6));
        }
    }

    /// The fastest machine in the world still ends when the last area that opens late is done.
    #[test]
    fn more_of_anything_never_ends_sooner(tasks in proptest::collection::vec(any_task(), 1..6), means in any_means()) {
        let Some(one) = plan(&tasks, means) else { return Ok(()) };
        let slower = Means { refill: means.refill * 2.0 + Duration::new(1.0), change: means.change * 2.0, ..means };
        if let Some(other) = plan(&tasks, slower) {
            prop_assert!(other.total.si() >= one.total.si() * (1.0 - 1e-9));
        }
    }
}
