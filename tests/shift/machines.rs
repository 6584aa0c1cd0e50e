//! What machines ask for: lanes, surroundings, batteries, recovery tanks, people beside them.

use crate::{after, assert_figure, assert_printed, codes, in_unit, near, of, write};
use brimline::answer::Answer;
use brimline::form::action::{Line, Shelf};
use brimline::form::shift::{efficiency, work};
use brimline::form::{Action, Field, What, names};
use brimline::number::Marks;
use brimline::trade::alone::{Around, Asks, Misfit, misfit};
use brimline::trade::recovery::{dumped_share, fill_for};
use brimline::trade::shift::Act;
use brimline::units::{Length, VolumeFraction};

/// The area that a remark names.
fn named(answer: &Answer, code: &str) -> String {
    let remark = answer.remarks.iter().find(|remark| remark.code == code);
    let Some(brimline::answer::Fact::Text(text)) =
        remark.and_then(|remark| remark.facts.iter().find(|(name, _)| *name == "area")).map(|(_, fact)| fact)
    else {
        return String::new();
    };
    text.clone()
}

#[test]
fn a_lane_is_held_against_both_ends() {
    let feet = |feet: f64| of::<Length>(feet, "ft");
    let asks = Asks { least: Some(feet(3.0)), most: Some(feet(30.0)), around: true };
    let there = |lane: f64| misfit(asks, Some(feet(lane)), Around::There);
    assert_eq!([2.9, 3.0, 30.0, 30.1].map(there), [Some(Misfit::Narrow), None, None, Some(Misfit::Wide)]);
    // 3 ft typed as 91.44 cm is the same width.
    assert_eq!(misfit(asks, Some(of(91.44, "cm")), Around::There), None);
    assert_eq!(misfit(asks, Some(feet(5.0)), Around::Lacking), Some(Misfit::Lacking));
    assert_eq!(misfit(asks, Some(feet(5.0)), Around::Unknown), Some(Misfit::Unknown));
    assert_eq!(misfit(asks, None, Around::There), Some(Misfit::Unknown), "nobody measured");
    assert_eq!(misfit(Asks::default(), None, Around::Unknown), None, "it asks for nothing");
}

/// The self-driving machine of the demo works lanes of 3 to 30 ft: the sports hall is wider. Where it works
/// on its own a person is needed for nothing but its fills.
#[test]
fn areas_that_do_not_suit_are_named_and_cost_a_person() {
    let machine = Action::Pick(Shelf::Machine, "self-driving".into());
    let shift = work(&after([machine.clone()]), Marks::POINT);
    let answer = &shift.outcome.answer;
    assert_eq!(named(answer, "remark-alone-wide"), "Sports hall");
    let [round] = &shift.rounds[..] else { panic!("one machine") };
    let by_hand = shift.rows[2].run();
    let trips = round.plan.time_of(|act| matches!(act, Act::Refill(_)));
    assert!(near(round.labour() / (by_hand + trips), 1.0));

    let lane = write(Field::AreaLane(2), "25");
    let lacking = after([machine.clone(), lane.clone()]);
    assert_eq!(named(&work(&lacking, Marks::POINT).outcome.answer, "remark-alone-lacking"), "Sports hall");
    let fits = after([machine.clone(), lane, Action::AreaAround(2, Around::There)]);
    let fits = work(&fits, Marks::POINT);
    assert!(codes(&fits.outcome.answer).iter().all(|code| !code.starts_with("remark-alone")));
    assert!(fits.rounds[0].labour() < round.labour());

    let unknown = after([machine, Action::AreaAround(0, Around::Unknown), write(Field::AreaLane(1), "")]);
    let answer = work(&unknown, Marks::POINT).outcome.answer;
    assert_eq!(named(&answer, "remark-alone-unknown"), "Reading room, Entrance hall");

    let walked = after([]);
    let answer = work(&walked, Marks::POINT).outcome.answer;
    assert!(codes(&answer).iter().all(|code| !code.starts_with("remark-alone")), "somebody walks with it");
}

/// Laid down L, picked up p L, used again u L: spent (1 − u) L, dumped (p − u) L, left on the floor (1 − p) L.
#[test]
fn what_is_spent_is_dumped_or_stays_on_the_floor() {
    for (pick_up, reuse) in [(0.9, 0.0), (0.9, 0.75), (0.95, 0.5), (0.6, 0.6)] {
        let dumped = dumped_share(VolumeFraction::new(pick_up), VolumeFraction::new(reuse));
        let stays = (1.0 - pick_up) / (1.0 - reuse);
        assert!(near(dumped + stays, 1.0), "{pick_up} {reuse}");
    }
    // A tenth stays free for foam: 0.9 × 8 gal / 0.9 = 8 gal.
    let gallons = |gallons: f64| of::<brimline::units::Volume>(gallons, "gal_us");
    assert_printed(in_unit(fill_for(gallons(10.0), gallons(8.0), 0.9), "gal_us"), "8.0000");
}

/// The demo's shift takes 11.127273 gal (3.272727 + 1.309091 + 4.909091 + 1.636364): with a recovery tank of
/// 5 gal a fill is 5 gal, three of them.
#[test]
fn a_small_recovery_tank_makes_smaller_fills() {
    let shift = work(&after([write(Field::Recovery, "5")]), Marks::POINT);
    let fills = &shift.rounds[0].plan.fills;
    let sizes: Vec<f64> = fills.iter().map(|fill| in_unit(fill.solution, "gal_us")).collect();
    assert_eq!(sizes.len(), 3);
    for (size, printed) in sizes.iter().zip(["5.0000", "5.0000", "1.1273"]) {
        assert_printed(*size, printed);
    }
    let answer = &shift.outcome.answer;
    assert!(codes(answer).contains(&"remark-recovery"));
    assert!(answer.steps.iter().any(|step| step.formula.code == "formula-recovery"));
    // 90 % of all that was spent came back.
    assert_figure(answer, names::SHIFT_WASTE, "gal_us", "10.0145");
}

/// At the floor 134.2657 min (19 200 ft² at 143 ft² a minute): a charge of one hour is used up twice. Each
/// time 8 h of charging stand in the plan, and a way of 4 min there and back.
#[test]
fn a_battery_that_gives_out_is_charged() {
    let ways = (0..4).map(|area| write(Field::AreaWay(area), "4"));
    let typed = after([write(Field::Battery, "1"), write(Field::Charge, "8")].into_iter().chain(ways));
    let shift = work(&typed, Marks::POINT);
    let answer = &shift.outcome.answer;
    assert_figure(answer, names::SHIFT_RUN_TIME, "min", "134.2657");
    assert_figure(answer, names::SHIFT_CHARGES, "", "2.0");
    // Out, back, two charges and one refill with their ways: 2 × 4 + 3 × 8 + 960 + 10.
    assert_figure(answer, names::SHIFT_TOTAL_TIME, "min", "1136.2657");
    // Nobody waits for the charge.
    assert_figure(answer, names::SHIFT_LABOUR, "min", "176.2657");
    assert!(codes(answer).contains(&"remark-battery"));
    let cord = work(&after([write(Field::Battery, "")]), Marks::POINT);
    assert_eq!(cord.outcome.answer.get(names::SHIFT_CHARGES), None);
}

#[test]
fn an_area_is_waited_for_and_one_that_is_late_is_named() {
    let typed = after([write(Field::AreaOpens(0), "1"), write(Field::AreaCloses(3), "2")]);
    let shift = work(&typed, Marks::POINT);
    let plan = &shift.rounds[0].plan;
    assert_eq!(plan.events[0].act, Act::Wait);
    assert_printed(in_unit(plan.events[0].lasts, "min"), "60.0000");
    assert_eq!(named(&shift.outcome.answer, "remark-late"), "Changing rooms");
    // 134.2657 at the floor, a refill of 10: the hour of waiting is nobody's work.
    assert_figure(&shift.outcome.answer, names::SHIFT_LABOUR, "min", "144.2657");
    assert_figure(&shift.outcome.answer, names::SHIFT_TOTAL_TIME, "min", "204.2657");
}

#[test]
fn what_is_wrong_with_another_machine_is_told_at_the_area() {
    let lame = after([
        Action::Pick(Shelf::Machine, "ride-on".into()),
        write(Field::Speed, ""),
        Action::Pick(Shelf::Machine, "walk-behind".into()),
        Action::AreaMachine(2, "ride-on".into()),
    ]);
    let outcome = work(&lame, Marks::POINT).outcome;
    assert_eq!(outcome.at("area-3-machine"), Some(&What::MachineUnsound));
    assert_eq!(outcome.at("machine-speed"), None, "the field there is another machine's");
    assert_eq!(outcome.answer.get(names::SHIFT_FILLS), None);

    let gone = after([Action::AreaMachine(2, "gone".into())]);
    assert_eq!(work(&gone, Marks::POINT).outcome.at("area-3-machine"), Some(&What::NoMachine));

    let label = after([
        Action::Pick(Shelf::Product, "vinegar".into()),
        Action::Text(Line::Label, "a splash".into()),
        Action::Pick(Shelf::Product, "neutral".into()),
        Action::AreaProduct(1, "vinegar".into()),
    ]);
    let outcome = work(&label, Marks::POINT).outcome;
    assert_eq!(outcome.at("area-2-product"), Some(&What::ProductUnsound));
    assert_eq!(outcome.at("product-label"), None, "the label there is another product's");
}

/// A machine that sweeps takes the debris along: nobody mops.
#[test]
fn debris_is_mopped_unless_the_machine_sweeps() {
    let loose = [Action::AreaLoose(0, true), write(Field::DryMop, "12000")];
    let answer = work(&after(loose.clone()), Marks::POINT).outcome.answer;
    assert_eq!(named(&answer, "remark-dry-mop"), "Reading room");
    // 6000 ft² at 12 000 ft²/h.
    assert_figure(&answer, names::SHIFT_TOTAL_TIME, "min", "174.2657");
    let sweeps = work(&after(loose.into_iter().chain([Action::Sweeps(true)])), Marks::POINT).outcome.answer;
    assert!(!codes(&sweeps).contains(&"remark-dry-mop"));
    assert_figure(&sweeps, names::SHIFT_TOTAL_TIME, "min", "144.2657");
}

/// 15 in at 2 mph pass 13 200 ft²/h: 8580 ft² in an hour is 65 %; 13 200 in half of it cannot be.
#[test]
fn a_site_measures_its_own_efficiency() {
    let timed = |area: &str, minutes: &str| {
        let typed = after([write(Field::TimedArea, area), write(Field::TimedTime, minutes)]);
        efficiency(&typed, Marks::POINT)
    };
    assert_printed(timed("8580", "60").measured.expect("a share").percent(), "65.000");
    let fast = timed("13200", "30");
    assert_eq!(fast.outcome.at("efficiency-time"), Some(&What::Efficiency));
    assert_eq!(fast.measured, None);
    assert!(timed("8580", "").measured.is_none() && timed("8580", "").outcome.troubles.is_empty());
    assert!(matches!(timed("8580", "soon").outcome.at("efficiency-time"), Some(What::Number(_))));
}

/// The changing rooms with another product: a change of 20 min each time, seven times a week. A month has
/// 365.2425 / 7 / 12 = 4.348125 weeks: 30.436875 changes, 608.7375 min; the refill of 10 min that the change
/// spares (9.490909 gal and 1.636364 gal are a fill each) was in the shift before, as often.
#[test]
fn a_month_counts_the_changes_of_its_shifts() {
    let month = |actions: Vec<Action>| {
        let answer = work(&after(actions), Marks::POINT).outcome.answer;
        answer.get(names::MONTH_LABOUR).expect("a month").si / 60.0
    };
    let change = vec![Action::AreaProduct(3, "vinegar".into())];
    let often = 365.2425 / 7.0 / 12.0 * 7.0;
    let more = month(change) - month(Vec::new());
    assert!((more - often * (20.0 - 10.0)).abs() < 1e-6, "{more}");
    // A way of 5 min out to the first area, five times a week; back from the last one is its own.
    let way = month(vec![write(Field::AreaWay(0), "5")]) - month(Vec::new());
    assert!((way - 365.2425 / 7.0 / 12.0 * 5.0 * 5.0).abs() < 1e-6, "{way}");
}

/// A quarter of the water above the valve leaves half of the flow; the mean of a tank is three quarters of
/// the first: √(3 in / 12 in) = 1/2, (1 + 1/2) / 2 = 3/4. Three quarters of the solution, in the same time.
#[test]
fn a_tank_that_gravity_drains_is_counted_at_its_mean() {
    let heads = [write(Field::HeadFull, "12"), write(Field::HeadLow, "3")];
    let (pumped, drained) = (work(&after([]), Marks::POINT), work(&after(heads), Marks::POINT));
    let share = drained.rows[0].solution() / pumped.rows[0].solution();
    assert!(near(share, 0.75), "{share}");
    assert_eq!(drained.rows[0].setting, pumped.rows[0].setting, "the setting is Flow's");
    assert!(near(drained.rows[0].run() / pumped.rows[0].run(), 1.0));
    assert!(codes(&drained.outcome.answer).contains(&"remark-shift-fades"));
}

/// A battery that is charged in no time would be no limit.
#[test]
fn a_battery_asks_how_long_its_charge_takes() {
    let outcome = work(&after([write(Field::Battery, "1"), write(Field::Charge, "")]), Marks::POINT).outcome;
    assert!(matches!(outcome.at("machine-charge"), Some(What::Number(_))));
    assert_eq!(outcome.answer.get(names::SHIFT_TOTAL_TIME), None);
}

/// Each product has fills of its own: 9.49 gal and 1.64 gal are one fill each, and the workings say so.
#[test]
fn the_workings_count_the_fills_of_each_product() {
    let answer = work(&after([Action::AreaProduct(3, "vinegar".into())]), Marks::POINT).outcome.answer;
    let fills = |step: &&brimline::answer::Step| step.formula.code == "formula-fills";
    for step in answer.steps.iter().filter(fills) {
        let si = |symbol| step.given.iter().find(|(name, _)| *name == symbol).expect(symbol).1.si;
        assert_printed(step.result.si, &format!("{}", (si("S") / si("T") - 1e-9).ceil()));
    }
    assert_eq!(answer.steps.iter().filter(fills).count(), 2);
    let total = answer.steps.iter().find(|step| step.formula.code == "formula-shift-total").expect("a sum");
    assert!(near(total.given.iter().map(|(_, value)| value.si).sum(), total.result.si));
}
