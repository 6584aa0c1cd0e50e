//! Laws of the trade's formulas, over values that the limits let through.

use crate::of;
use brimline::limits::{self, Limit};
use brimline::trade::coverage::{application_rate, passing, speed_for};
use brimline::trade::dilution::{made_up_to, on_top_of, scaled_to_level};
use brimline::trade::governing::{Aim, Bound, Governs, govern};
use brimline::trade::label::Window;
use brimline::trade::measure::round_to;
use brimline::trade::porosity::Porosity;
use brimline::trade::setting::{Fit, choose, fit, passes};
use brimline::trade::shift::{MOST_FILLS, Means, Task, plan};
use brimline::units::{
    ApplicationRate, Area, Duration, Flow, Length, Productivity, Quantity, Speed, Volume, VolumeFraction,
};
use proptest::prelude::*;

/// A quantity within its limits, evenly over the orders of magnitude.
fn within<Q: Quantity + std::fmt::Debug>(limit: &'static Limit) -> impl Strategy<Value = Q> {
    let low = limit.low.max(limit.high * 1e-6);
    (low.ln()..=limit.high.ln()).prop_map(|log| Q::from_si(log.exp()))
}

fn window<Q: Quantity + PartialOrd + std::fmt::Debug>(
    limit: &'static Limit,
) -> impl Strategy<Value = Window<Q>> {
    (within(limit), within(limit)).prop_map(|(a, b): (Q, Q)| {
        if a <= b { Window { low: a, high: b } } else { Window { low: b, high: a } }
    })
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}

/// Inside but for rounding.
fn holds(window: Window<Volume>, dose: Volume) -> bool {
    dose >= window.low * (1.0 - 1e-9) && dose <= window.high * (1.0 + 1e-9)
}

fn machine_bound(window: Window<Volume>) -> Bound {
    Bound { by: Governs::Machine, window }
}

fn any_aim() -> impl Strategy<Value = Aim> {
    proptest::sample::select(Aim::ALL.to_vec())
}

proptest! {
    /// The passes that are advised reach the least, one fewer would not, and a sum that fits is not too much;
    /// where none is found, no count from 2 to 5 of any setting fits.
    #[test]
    fn passes_reach_and_do_not_drown(
        rates in proptest::collection::vec(within::<ApplicationRate>(&limits::RATE), 1..6),
        target in window::<ApplicationRate>(&limits::RATE),
    ) {
        let fits = |rate: ApplicationRate, count: f64| fit(rate * count, target) == Fit::Meets;
        let found = passes(&rates, 0, target);
        let any = rates.iter().any(|rate| (2..=5).any(|count| fits(*rate, f64::from(count)) && !(1..count).any(|fewer| fits(*rate, f64::from(fewer)))));
        prop_assert_eq!(found.is_some_and(|one| one.fit == Fit::Meets), any);
        if let Some(one) = found {
            let rate = rates[one.index];
            prop_assert!(near((rate * one.count).si(), one.total.si()));
            prop_assert!(one.fit != Fit::Short && fit(rate * (one.count - 1.0), target) == Fit::Short);
        }
    }

    #[test]
    fn a_dose_makes_its_strength(tank in within::<Volume>(&limits::TANK), r in within::<VolumeFraction>(&limits::STRENGTH)) {
        prop_assume!(r.si() < 0.999);
        let made_up = made_up_to(tank, r);
        prop_assert!(near(made_up.fraction_of(tank).si(), r.si()));
        let on_top = on_top_of(tank, r);
        prop_assert!(near(on_top.fraction_of(tank + on_top).si(), r.si()));
        prop_assert!(on_top > made_up, "the same volume as water takes more");
        prop_assert!(near((r.water() * tank + made_up).si(), tank.si()), "water and concentrate are the whole");
    }

    #[test]
    fn more_takes_more(
        a in within::<Volume>(&limits::TANK), r in within::<VolumeFraction>(&limits::STRENGTH), by in 1.001..9.0_f64,
    ) {
        let (b, r, s) = (a * by, r * 0.1, r * 0.1 * by);
        prop_assert!(made_up_to(a, r) < made_up_to(b, r) && made_up_to(a, r) < made_up_to(a, s));
        prop_assert!(on_top_of(a, r) < on_top_of(b, r) && on_top_of(a, r) < on_top_of(a, s));
        prop_assert!(near(scaled_to_level(made_up_to(b, r), a, b).si(), made_up_to(a, r).si()));
    }

    #[test]
    fn the_tighter_rule_governs(
        label in window::<Volume>(&limits::MACHINE_DOSE),
        machine in proptest::option::of(window::<Volume>(&limits::MACHINE_DOSE)),
        aim in any_aim(),
    ) {
        let governed = govern(label, &machine.map(machine_bound).into_iter().collect::<Vec<_>>(), aim);
        prop_assert!(holds(governed.window, governed.dose));
        prop_assert!(governed.window.low <= governed.window.high);
        let Some(machine) = machine else {
            prop_assert!(!governed.clash && governed.governs == Governs::Label && governed.window == label);
            return Ok(());
        };
        prop_assert!(governed.dose <= machine.high * (1.0 + 1e-9), "never above what the machine takes");
        prop_assert_eq!(governed.clash, label.low > machine.high || label.high < machine.low);
        if governed.clash {
            let smaller = label.high.min(machine.high);
            prop_assert_eq!(governed.dose, smaller, "the smaller amount governs");
        } else {
            prop_assert!(holds(label, governed.dose) && holds(machine, governed.dose));
            if governed.governs == Governs::Label {
                prop_assert_eq!(Some(governed.dose), match aim {
                    Aim::Low => Some(label.low),
                    Aim::Middle => Some(governed.dose),
                    Aim::High => Some(label.high),
                });
            }
        }
    }

    /// A minimum and a standard narrow the label and never overrule it; the machine has the last word.
    #[test]
    fn a_standard_narrows_and_never_overrules(
        label in window::<Volume>(&limits::MACHINE_DOSE),
        standard in window::<Volume>(&limits::MACHINE_DOSE),
        least in within::<Volume>(&limits::MACHINE_DOSE),
        machine in proptest::option::of(window::<Volume>(&limits::MACHINE_DOSE)),
        aim in any_aim(),
    ) {
        let minimum = Bound { by: Governs::Minimum, window: Window { low: least, high: Volume::new(f64::INFINITY) } };
        let standard = Bound { by: Governs::Standard, window: standard };
        let mut bounds = vec![minimum, standard];
        let narrowed = govern(label, &bounds, aim);
        prop_assert!(holds(label, narrowed.dose) && holds(label, narrowed.window.low) && !narrowed.clash);
        if least <= label.high {
            prop_assert!(minimum.allows(narrowed.dose), "a minimum that the label allows is kept");
        }
        for bound in bounds.iter().filter(|bound| bound.by == narrowed.governs) {
            prop_assert!(bound.allows(narrowed.dose), "the rule that governs is kept");
        }
        bounds.extend(machine.map(machine_bound));
        let last = govern(label, &bounds, aim);
        if let Some(machine) = machine {
            prop_assert!(last.dose <= machine.high * (1.0 + 1e-9), "never above what the machine takes");
            prop_assert_eq!(last.clash, machine.high < narrowed.window.low || machine.low > narrowed.window.high);
        }
    }

    /// The same amount from two ways of computing it is no clash.
    #[test]
    fn equal_rules_agree(tank in within::<Volume>(&limits::TANK), parts in 2..500_u32, aim in any_aim()) {
        let r = VolumeFraction::new(1.0 / f64::from(parts));
        let label = made_up_to(tank, r);
        for machine in [tank / f64::from(parts), Volume::new(label.si() * (1.0 - 1e-15)), Volume::new(label.si() * (1.0 + 1e-15))] {
            let point = |dose| Window { low: dose, high: dose };
            let governed = govern(point(label), &[machine_bound(point(machine))], aim);
            prop_assert!(!governed.clash && governed.governs == Governs::Label);
        }
    }

    #[test]
    fn rounding_stays_inside_where_it_can(
        label in window::<Volume>(&limits::MACHINE_DOSE), step in within::<Volume>(&limits::MEASURE), aim in any_aim(),
    ) {
        let governed = govern(label, &[], aim);
        let rounded = round_to(governed.dose, step, governed.window);
        prop_assert!(rounded.count >= 1.0 && rounded.count.fract() == 0.0);
        prop_assert_eq!(rounded.dose, step * rounded.count);
        prop_assert_eq!(rounded.inside, holds(label, rounded.dose));
        let most = (label.high / step * (1.0 - 1e-9)).floor();
        if most >= 1.0 && step * most >= label.low {
            prop_assert!(rounded.inside, "{} of {:?} would be inside {:?}", most, step, label);
        }
        let off = (rounded.dose / step - governed.dose / step).abs();
        prop_assert!(off <= 1.0 + 1e-6, "never further than one step");
    }

    #[test]
    fn the_lowest_setting_that_reaches(
        flows in proptest::collection::vec(within::<Flow>(&limits::FLOW), 1..7),
        target in window::<ApplicationRate>(&limits::RATE),
        speed in within::<Speed>(&limits::SPEED), width in within::<Length>(&limits::PATH),
    ) {
        let choice = choose(&flows, target, speed, width).unwrap();
        let rate = |flow: Flow| application_rate(flow, passing(speed, width, Length::ZERO));
        prop_assert_eq!(choice.fit, fit(rate(flows[choice.index]), target));
        if choice.fit == Fit::Short {
            prop_assert!(flows.iter().all(|flow| fit(rate(*flow), target) == Fit::Short));
            prop_assert!(flows.iter().all(|flow| *flow <= flows[choice.index]));
        } else {
            prop_assert!(flows[..choice.index].iter().all(|flow| fit(rate(*flow), target) == Fit::Short));
        }
        prop_assert_eq!(choice.speed.is_none(), choice.fit == Fit::Meets);
        if let Some(other) = choice.speed {
            prop_assert_eq!(other < speed, choice.fit == Fit::Short, "slower is wetter");
            let at = application_rate(flows[choice.index], passing(other, width, Length::ZERO));
            prop_assert_eq!(fit(at, target), Fit::Meets);
            let bound = if choice.fit == Fit::Short { target.low } else { target.high };
            prop_assert!(near(at.si(), bound.si()), "the least change of speed that serves");
        }
        let back = speed_for(flows[0], rate(flows[0]), width);
        prop_assert!(near(back.si(), speed.si()));
    }
}

fn any_task() -> impl Strategy<Value = Task> {
    (1.0..20_000.0_f64, 1e-6..1e-3_f64, 0.05..3.0_f64).prop_map(|(size, spent, speed)| {
        let (spent, pace) = (ApplicationRate::new(spent), Productivity::new(speed));
        Task::plain(Area::new(size), spent, pace, VolumeFraction::ZERO)
    })
}

proptest! {
    #[test]
    fn a_shift_adds_up(
        tasks in proptest::collection::vec(any_task(), 1..8),
        tank in within::<Volume>(&limits::TANK), strength in within::<VolumeFraction>(&limits::STRENGTH),
        refill in 0.0..3_600.0_f64,
    ) {
        let need: f64 = tasks.iter().map(|task| (task.spent * task.size).si()).sum();
        let tasks: Vec<Task> = tasks.iter().map(|task| Task { strength, ..*task }).collect();
        let means = Means { tank, refill: Duration::new(refill), change: Duration::ZERO, battery: None };
        let Some(plan) = plan(&tasks, means) else {
            prop_assert!(need / tank.si() > MOST_FILLS as f64 - 1.0);
            return Ok(());
        };
        prop_assert!(near(plan.solution().si(), need), "what is filled is what is spent");
        prop_assert!(near(plan.solution().si(), plan.spent.iter().copied().sum::<Volume>().si()));
        prop_assert!(near(plan.concentrate().si(), need * strength.si()));
        prop_assert!(near((plan.water() + plan.concentrate()).si(), need));
        let (last, full) = plan.fills.split_last().unwrap();
        prop_assert!(full.iter().all(|fill| near(fill.solution.si(), tank.si())), "all but the last are full");
        prop_assert!(last.solution <= tank && last.solution > Volume::ZERO);
        prop_assert!(near(last.solution.si() + tank.si() * full.len() as f64, need), "the last is as large as needed");
        prop_assert!(near(plan.total.si(), plan.run_time().si() + refill * full.len() as f64));
        for pair in plan.fills.windows(2) {
            prop_assert!(pair[0].task <= pair[1].task && pair[0].at < pair[1].at);
        }
        let levels = &plan.levels;
        prop_assert!(levels.iter().all(|level| level.solution >= Volume::ZERO && level.solution <= tank));
        prop_assert!(levels.windows(2).all(|pair| pair[0].at <= pair[1].at * (1.0 + 1e-9)));
        let fallen: f64 = levels.windows(2).map(|pair| (pair[0].solution - pair[1].solution).si().max(0.0)).sum();
        prop_assert!((fallen / need - 1.0).abs() < 1e-6, "the tank loses what is spent: {} of {}", fallen, need);
        let end = levels.last().expect("a fill");
        prop_assert!(end.solution == Volume::ZERO && (end.at / plan.total - 1.0).abs() < 1e-6, "it ends empty, at the end");
        for fill in &plan.fills {
            prop_assert!(fill.after <= tasks[fill.task].size * (1.0 + 1e-9));
            prop_assert!(near(fill.concentrate.si(), (strength * fill.solution).si()));
        }
    }
}

/// Remainders far below what a mark can show, left at the end of every area, are neither lost nor filled.
#[test]
fn crumbs_do_not_add_up_to_a_fill() {
    let crumb = 0.9e-9;
    let half = VolumeFraction::new(0.5);
    let task = |solution: f64| {
        Task::plain(Area::new(solution), ApplicationRate::new(1.0), Productivity::new(1.0), half)
    };
    let tasks: Vec<Task> = (0..10).map(|_| task(1.0 - crumb)).collect();
    let none = Duration::ZERO;
    let means = Means { tank: Volume::new(1.0), refill: none, change: none, battery: None };
    let plan = plan(&tasks, means).expect("ten fills");
    assert_eq!(plan.fills.len(), 10);
}

/// Thousands of subtractions must not leave a rest that no fill can serve.
#[test]
fn thousands_of_fills_end() {
    let half = VolumeFraction::new(0.5);
    let task = |size: f64| {
        Task::plain(Area::new(size), ApplicationRate::new(0.000_35), Productivity::new(0.05), half)
    };
    let none = Duration::ZERO;
    let means = Means { tank: of(1.833, "l"), refill: none, change: none, battery: None };
    let plan = plan(&[task(17_503.536), task(19_320.331)], means).expect("fewer than the most");
    // 0.35 L/m² × 36 823.867 m² ÷ 1.833 L = 7031.3
    assert_eq!(plan.fills.len(), 7_032);
}

/// "Porous floors need a higher setting than sealed ones": common practice, no source.
#[test]
fn porous_floors_need_more() {
    let targets = Porosity::ALL.iter().map(|porosity| porosity.target()).collect::<Vec<_>>();
    for pair in targets.windows(2) {
        assert!(pair[0].low < pair[1].low && pair[0].high < pair[1].high);
    }
    assert!(targets[3].low > targets[0].high);
}
