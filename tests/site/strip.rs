//! Strip solution and rinse, worked by hand.

use crate::{after, assert_figure, codes, pick, write};
use brimline::chemistry::rinse::{Rinsed, rinsed};
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::site::Act;
use brimline::form::site::finish::{STRIP_DILUTION, STRIPPER, work};
use brimline::form::{Action, Field, Typed, What, names};
use brimline::number::Marks;
use brimline::trade::finish::{finish_volume, laid_on, tanks};
use brimline::trade::governing::Aim;
use brimline::units::{ApplicationRate, Area, Coverage, Quantity, Volume};
use proptest::prelude::*;

fn stripping() -> Typed {
    after([
        Act::Stripper("stripper".into()).action(),
        write(Field::CoatArea, "2,500"),
        write(Field::StripRate, "10"),
    ])
}

/// 2,500 ft² at 10 gal/1000 ft² take 25 gal. 1:10 is 1 part in 11: 2.273 gal of stripper, 290.9 fl oz. The machine's
/// tank holds 10 gal: two full ones with 128 × 10/11 = 116.36 fl oz, and one of 5 gal with half of that.
#[test]
fn strip_solution_by_hand() {
    let typed = reduce(stripping(), Action::Text(Line::StripDilution, "1:10".into()));
    let answer = work(&typed, Marks::POINT).outcome.answer;
    assert_figure(&answer, names::STRIP_SOLUTION, "gal_us", "25.000");
    assert_figure(&answer, names::STRIP_CONCENTRATE, "floz_us", "290.91");
    assert_figure(&answer, names::STRIP_WATER, "gal_us", "22.727");
    assert_figure(&answer, names::STRIP_TANKS, "", "2");
    assert_figure(&answer, names::STRIP_TANK_DOSE, "floz_us", "116.36");
    assert_figure(&answer, names::STRIP_LAST, "gal_us", "5.000");
    assert_figure(&answer, names::STRIP_LAST_DOSE, "floz_us", "58.18");
    assert_figure(&answer, names::FINISH_RINSE, "gal_us", "25.000");
    assert!(answer.get(names::STRIP_LOW).is_none(), "one number is no range");
}

/// The label of the stripper gives 1:10 to 1:16: 25 gal × 128/17 = 188.2 fl oz to 290.9 fl oz.
#[test]
fn without_a_dilution_of_its_own_the_label_counts() {
    let typed = stripping();
    let answer = work(&typed, Marks::POINT).outcome.answer;
    assert_figure(&answer, names::STRIP_LOW, "floz_us", "188.24");
    assert_figure(&answer, names::STRIP_HIGH, "floz_us", "290.91");
    assert_figure(&answer, names::STRIP_CONCENTRATE, "floz_us", "188.24");
    let high = work(&reduce(typed, Action::Aim(Aim::High)), Marks::POINT).outcome.answer;
    assert_figure(&high, names::STRIP_CONCENTRATE, "floz_us", "290.91");
}

/// "6 oz per tank" in 10 gal: 25 gal are two and a half tanks, 15 fl oz.
#[test]
fn an_amount_for_a_tank_counts_by_the_tank() {
    let typed = reduce(stripping(), Action::Text(Line::StripDilution, "6 oz per tank".into()));
    let answer = work(&typed, Marks::POINT).outcome.answer;
    assert_figure(&answer, names::STRIP_CONCENTRATE, "floz_us", "15.000");
    assert_figure(&answer, names::STRIP_TANK_DOSE, "floz_us", "6.000");
}

#[test]
fn what_cannot_be_read_is_told_at_its_field_and_the_rest_stands() {
    let odd = reduce(stripping(), Action::Text(Line::StripDilution, "2:5".into()));
    let found = work(&odd, Marks::POINT).outcome;
    assert!(matches!(found.at(STRIP_DILUTION), Some(What::Label(_))));
    assert_figure(&found.answer, names::STRIP_SOLUTION, "gal_us", "25.000");
    let powder = reduce(stripping(), Action::Text(Line::StripDilution, "30 g/L".into()));
    assert_eq!(work(&powder, Marks::POINT).outcome.at(STRIP_DILUTION), Some(&What::NoLiquid));
    let gone = reduce(stripping(), Act::Stripper("moon".into()).action());
    assert_eq!(work(&gone, Marks::POINT).outcome.at(STRIPPER), Some(&What::NoRecord));
    let wild = reduce(stripping(), write(Field::StripRate, "many"));
    assert!(matches!(work(&wild, Marks::POINT).outcome.at("strip-rate"), Some(What::Number(_))));
}

#[test]
fn a_stripper_is_held_against_the_floor_under_the_finish() {
    let said = |floor: &str| {
        let typed = reduce(stripping(), pick(Shelf::Floor, floor));
        codes(&work(&typed, Marks::POINT).outcome.answer)
    };
    assert!(said("vinyl").contains(&"remark-strip-floor-ask"), "the finish is to come off");
    assert!(!said("vinyl").contains(&"remark-strip-floor"));
    assert!(said("terrazzo").contains(&"remark-strip-floor"), "alkali harms terrazzo");
    assert!(said("wood").contains(&"remark-strip-floor"), "it strips the seal");
    assert!(said("tile").contains(&"remark-strip-floor-unknown"), "nobody knows its pH");
    let neutral = reduce(stripping(), Act::Stripper("neutral".into()).action());
    assert!(codes(&work(&neutral, Marks::POINT).outcome.answer).contains(&"remark-strip-no-stripper"));
}

/// A film of 20 g/m² dries in 6.94 min at 20 °C, 50 % and 0.15 m/s (`PsychroLib`, `CoolProp`): 20 mL/m² do not last
/// 10 min, 10 gal/1000 ft² do.
#[test]
fn a_thin_film_may_dry_before_it_is_picked_up() {
    let dry = |rate: &str| {
        let typed = [Action::Unit(Field::StripRate, "ml_per_m2".into()), write(Field::StripRate, rate)];
        let typed = typed.into_iter().fold(stripping(), reduce);
        codes(&work(&typed, Marks::POINT).outcome.answer).contains(&"remark-strip-dries")
    };
    assert!(dry("20") && !dry("400"));
}

/// Common practice: within one unit of the tap water, from 6 to 9.
#[test]
fn a_rinse_reads_neutral_by_the_tap_water() {
    let read = |ph: &str| {
        let typed = reduce(Typed::default(), write(Field::RinsePh, ph));
        work(&typed, Marks::POINT).rinsed
    };
    assert_eq!(read(""), Rinsed::Unknown);
    assert_eq!(read("seven"), Rinsed::Unknown, "what is no number is no reading");
    assert_eq!((read("6.5"), read("7.5"), read("8.5")), (Rinsed::Neutral, Rinsed::Neutral, Rinsed::Neutral));
    assert_eq!((read("8.6"), read("6.4")), (Rinsed::Alkaline, Rinsed::Acid));
    assert_eq!(rinsed(Some(9.4), 10.0), Rinsed::Alkaline, "no tap water makes that neutral");
    assert_eq!(rinsed(Some(5.0), 4.5), Rinsed::Acid);
    assert_eq!(rinsed(Some(f64::NAN), 7.5), Rinsed::Unknown);
}

proptest! {
    /// Twice the floor or twice the coats take twice as much; twice the coverage half as much.
    #[test]
    fn amounts_are_in_proportion(coats in 1..20_u8, area in 1.0..1e5_f64, coverage in 1e3..5e5_f64, rate in 1e-5..5e-3_f64, k in 1.0..9.0_f64) {
        let coats = f64::from(coats);
        let (of, c) = (|area: f64| Area::new(area), Coverage::new(coverage));
        let one = finish_volume(coats, of(area), c);
        let near = |a: Volume, b: Volume| (a / b - 1.0).abs() < 1e-12;
        prop_assert!(near(finish_volume(coats, of(area * k), c), one * k));
        prop_assert!(near(finish_volume(coats * k, of(area), c), one * k));
        prop_assert!(near(finish_volume(coats, of(area), Coverage::new(coverage * k)), one / k));
        let rate = ApplicationRate::new(rate);
        prop_assert!(near(laid_on(rate, of(area * k)), laid_on(rate, of(area)) * k));
    }

    /// All tanks together are the solution, and the last is never a full one.
    #[test]
    fn tanks_add_up(solution in 1e-3..50.0_f64, tank in 1e-3..2.0_f64) {
        let (solution, tank) = (Volume::new(solution), Volume::new(tank));
        let (full, last) = tanks(solution, tank);
        prop_assert!(((tank * full + last) / solution - 1.0).abs() < 1e-6);
        prop_assert!(full.fract() == 0.0 && last < tank && last.si() >= 0.0);
    }
}
