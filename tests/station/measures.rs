//! Laws of whole packets, of settings and orifices, and of rounding to a measure.

use crate::{near, window, within};
use brimline::limits;
use brimline::trade::certainty::Measured;
use brimline::trade::label::Window;
use brimline::trade::measure::round_to;
use brimline::trade::metering::{Orifice, bottle_time, nearest, orifice, proportion};
use brimline::trade::portion::{Makes, whole_units};
use brimline::units::{Duration, Flow, Mass, MassConcentration, Quantity, Volume, VolumeFraction};
use proptest::prelude::*;

fn holds<T: Quantity + PartialOrd>(window: Window<T>, value: T) -> bool {
    let (low, high, value) = (window.low.si(), window.high.si(), value.si());
    value >= low * (1.0 - 1e-9) && value <= high * (1.0 + 1e-9)
}

/// A window and an aim within it.
fn aimed() -> impl Strategy<Value = (VolumeFraction, Window<VolumeFraction>)> {
    (window::<VolumeFraction>(&limits::STRENGTH), 0.0..=1.0_f64)
        .prop_map(|(window, at)| (window.low + (window.high - window.low) * at, window))
}

proptest! {
    #[test]
    fn whole_packets_stay_inside_where_they_can(
        unit in within::<Volume>(&limits::MEASURE), (aim, label) in aimed(), tank in within::<Volume>(&limits::TANK),
    ) {
        let sides = whole_units(Makes::of_liquid(unit, aim, label), tank, tank);
        let makes = |count: f64| (unit * count).fraction_of(tank);
        for whole in sides.below.into_iter().chain([sides.above, sides.best]) {
            prop_assert!(whole.count >= 1.0 && whole.count.fract() == 0.0);
            prop_assert!(near(makes(whole.count).si(), (aim * whole.share).si()), "what it makes at the level");
            prop_assert_eq!(whole.inside, holds(label, makes(whole.count)));
            let exact = (unit * whole.count).fraction_of(whole.level);
            prop_assert!(near(exact.si(), aim.si()), "the level instead makes the aim");
            prop_assert_eq!(whole.fits, whole.level <= tank * (1.0 + 1e-9));
        }
        // Some whole number is inside: then the one to take is.
        let most = (label.high.si() * tank.si() / unit.si() * (1.0 + 1e-9)).floor();
        if most >= 1.0 && holds(label, makes(most)) {
            prop_assert!(sides.best.inside, "{} would be inside", most);
        }
        let step = sides.above.count - sides.below.map_or(0.0, |below| below.count);
        prop_assert!([0.0, 1.0].contains(&step));
    }

    /// A tablet of powder and a packet of liquid are counted alike.
    #[test]
    fn solid_and_liquid_are_counted_alike(
        unit in within::<Volume>(&limits::MEASURE), (aim, label) in aimed(), tank in within::<Volume>(&limits::TANK),
    ) {
        let c = |r: VolumeFraction| MassConcentration::new(r.si() * 1_000.0);
        let grams = Mass::new(unit.si() * 1_000.0);
        let liquid = whole_units(Makes::of_liquid(unit, aim, label), tank, tank);
        let solid = whole_units(Makes::of_solid(grams, c(aim), Window { low: c(label.low), high: c(label.high) }), tank, tank);
        let apart = (liquid.above.count - solid.above.count).abs();
        prop_assert!(apart <= 1.0 + liquid.above.count * 1e-9, "but for rounding at a whole number");
        if apart < 0.5 {
            prop_assert!(near(liquid.above.level.si(), solid.above.level.si()));
        }
    }

    #[test]
    fn rounding_to_a_measure_never_leaves_a_window_that_holds_a_mark(
        step in within::<Volume>(&limits::MEASURE), (aim, label) in aimed(), tank in within::<Volume>(&limits::TANK),
    ) {
        let window = Window { low: label.low * tank, high: label.high * tank };
        let rounded = round_to(aim * tank, step, window);
        let most = (window.high / step * (1.0 + 1e-9)).floor();
        if most >= 1.0 && holds(window, step * most) {
            prop_assert!(rounded.inside, "{} marks would be inside", most);
        }
    }

    #[test]
    fn the_nearest_setting_inside(
        (aim, label) in aimed(), strengths in proptest::collection::vec(within::<VolumeFraction>(&limits::STRENGTH), 1..9),
    ) {
        let chosen = nearest(&strengths, label, aim).unwrap();
        prop_assert_eq!(chosen.strength, strengths[chosen.index]);
        prop_assert_eq!(chosen.inside, holds(label, chosen.strength));
        let inside: Vec<VolumeFraction> = strengths.iter().copied().filter(|r| holds(label, *r)).collect();
        prop_assert_eq!(chosen.inside, !inside.is_empty(), "inside where one is");
        let rivals = if inside.is_empty() { &strengths } else { &inside };
        let off = |r: VolumeFraction| (r - aim).si().abs();
        prop_assert!(rivals.iter().all(|r| off(chosen.strength) <= off(*r) + aim.si() * 1e-8));
        prop_assert!(nearest(&[], label, aim).is_none());
        let total = Flow::new(1e-4);
        let table: Vec<Orifice> = strengths.iter().map(|r| Orifice { drawn: total * r.si(), total }).collect();
        let by_table = orifice(&table, label, aim).unwrap();
        prop_assert!(near(off(by_table.strength) + aim.si(), off(chosen.strength) + aim.si()));
    }

    #[test]
    fn a_bottle_lasts_what_it_holds(
        bottle in within::<Volume>(&limits::BOTTLE), r in within::<VolumeFraction>(&limits::STRENGTH),
        flow in within::<Flow>(&limits::FLOW),
    ) {
        let time: Duration = bottle_time(bottle, r, flow);
        prop_assert!(near((r * (flow * time)).si(), bottle.si()), "what flowed took the bottle");
    }

    #[test]
    fn a_proportion_tells_its_ratio(parts in 1.0..1_000.0_f64, flow in within::<Flow>(&limits::FLOW), error in 0.0..0.1_f64) {
        let with = |value: Flow| Measured { value, error: value * error };
        let found = proportion(with(flow), with(flow * (parts + 1.0))).unwrap();
        prop_assert!(near(found.parts, parts));
        let strength = found.reading.strength.si();
        prop_assert!(near(found.parts_error * strength, error * 2.0_f64.sqrt()) || error < 1e-12);
    }
}

/// Equally near: the weaker.
#[test]
fn of_two_equally_near_the_weaker() {
    let r = VolumeFraction::new;
    let anything = Window { low: r(0.0), high: r(1.0) };
    assert_eq!(nearest(&[r(0.03), r(0.01)], anything, r(0.02)).expect("two").index, 1);
    assert_eq!(nearest(&[r(0.01), r(0.03)], anything, r(0.02)).expect("two").index, 0);
}
