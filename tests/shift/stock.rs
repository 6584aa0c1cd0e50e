//! Stock and money, against a textbook's worked example, a statistics library and hand-worked cases.

use crate::{after, assert_figure, assert_printed, codes, in_unit, near, write};
use brimline::form::action::Shelf;
use brimline::form::shift::{Shift, compare::compare, work};
use brimline::form::{Action, Field, Typed, What, names};
use brimline::number::Marks;
use brimline::trade::stock::{
    DAY, MONTH, Supply, USUAL_SAFETY, YEAR, containers, daily, reorder_at, safety_stock,
};
use brimline::units::{Quantity, Volume};

/// What stands beside the plan of what was typed.
fn compared(typed: &Typed) -> Option<Shift> {
    compare(typed, &work(typed, Marks::POINT), Marks::POINT)
}

/// W. J. Stevenson, Operations Management, 14th ed. (2021), chapter 12, example 8: 50 tons are used during
/// the lead time, with a standard deviation of 5; at a risk of 3 % z = 1.88, the safety stock is 9.40 and the
/// point of ordering 59.40. A lead time of one day has the same numbers.
#[test]
fn a_textbook_reorder_point() {
    let (daily, spread) = (Volume::new(50.0), Volume::new(5.0));
    let supply = Supply { daily, spread, lead: DAY, safety: 1.88 };
    assert_printed(safety_stock(supply).si(), "9.40");
    assert_printed(reorder_at(supply).si(), "59.40");
    // Four times the lead time, twice the safety: days that differ independently of each other.
    let later = Supply { lead: DAY * 4.0, ..supply };
    assert_printed(safety_stock(later).si(), "18.80");
    assert_printed(reorder_at(later).si(), "218.80");
}

/// Φ(z) = 0.95 at z = 1.6449, standard normal table: NIST/SEMATECH e-Handbook, 1.3.6.7.1, prints 0.95053 at
/// 1.65 and 0.94950 at 1.64.
#[test]
fn the_usual_safety_runs_out_in_five_of_a_hundred() {
    let chance = 0.94950 + (0.95053 - 0.94950) * (USUAL_SAFETY - 1.64) / 0.01;
    assert!((chance - 0.95).abs() < 1e-4, "{chance}");
}

/// The mean Gregorian year of ISO 8601: 146 097 days in 400 years.
#[test]
fn a_year_is_a_mean_one() {
    assert!(near(YEAR / DAY, 146_097.0 / 400.0));
    assert!(near(MONTH / DAY, 146_097.0 / 4_800.0));
    assert!(near(daily(Volume::new(146_097.0)).si(), 400.0));
}

#[test]
fn containers_are_whole() {
    let volume = Volume::new;
    assert_printed(containers(volume(8.0), volume(4.0)), "2");
    assert_printed(containers(volume(8.000_001), volume(4.0)), "3");
    assert_printed(containers(Volume::ZERO, volume(4.0)), "0");
    let thirds = volume(0.1) + volume(0.2);
    assert_printed(containers(thirds, volume(0.1)), "3");
}

/// The demo's four areas with its neutral cleaner, 1 to 64, times a week: 3.272727 gal × 5 + 1.309091 × 7 +
/// 4.909091 × 3 + 1.636364 × 7 (the settings and rates of the hand-worked shift), and the store once a month:
/// 0.3 gal/min lay down 1.363636 gal/1000 ft², 1.636364 gal. In a year (16.363636 + 9.163636 + 14.727273 +
/// 11.454545) × 52.177500 + 19.636364 = 2717.69 gal of solution, a 65th of it neutral cleaner.
#[test]
fn what_to_keep_of_the_neutral_cleaner() {
    let shift = work(&after([]), Marks::POINT);
    let (year, _, stocks) = shift.year.expect("areas say how often");
    let weeks = 365.2425 / 7.0;
    let solution = (16.363_636 + 9.163_636 + 14.727_273 + 11.454_545) * weeks + 19.636_364;
    assert!((in_unit(year.solution, "gal_us") / solution - 1.0).abs() < 1e-6);
    let [stock] = &stocks[..] else { panic!("one product") };
    let neutral = solution / 65.0;
    assert!((in_unit(stock.monthly, "gal_us") / (neutral / 12.0) - 1.0).abs() < 1e-6);
    // 41.8 gal in containers of 5 gal; 7 days to come, days that differ by 30 %.
    assert_printed(stock.yearly.expect("a container"), "9");
    let day = neutral / 365.2425;
    let safety = 1.644_854 * 0.3 * day * 7_f64.sqrt();
    assert!((in_unit(stock.safety.expect("a lead time"), "gal_us") / safety - 1.0).abs() < 1e-6);
    let reorder = in_unit(stock.reorder.expect("a lead time"), "gal_us");
    assert!((reorder / (day * 7.0 + safety) - 1.0).abs() < 1e-6);
    assert_printed(stock.reorder_containers.expect("a container"), "1");
}

#[test]
fn what_has_no_price_is_said_and_the_rest_counted() {
    let bare = after([
        write(Field::Price, ""),
        write(Field::WaterPrice, ""),
        Action::AreaProduct(1, "vinegar".into()),
        Action::AreaProduct(2, "hand-soap".into()),
    ]);
    let answer = work(&bare, Marks::POINT).outcome.answer;
    let said = codes(&answer);
    assert!(said.contains(&"remark-cost-no-price") && said.contains(&"remark-cost-no-water"), "{said:?}");
    assert_eq!(answer.get(names::COST_WATER), None);
    let sum = answer.get(names::COST_CONCENTRATE).expect("vinegar has a price").si
        + answer.get(names::COST_LABOUR).expect("a wage").si;
    assert!(near(answer.get(names::COST_TOTAL).expect("a sum").si, sum));

    let none = after([write(Field::Price, ""), write(Field::WaterPrice, ""), write(Field::Wage, "")]);
    let answer = work(&none, Marks::POINT).outcome.answer;
    assert_eq!(answer.get(names::COST_TOTAL), None);
    assert!(codes(&answer).iter().all(|code| !code.starts_with("remark-cost")), "nobody asked for a cost");
}

/// 1 to 64 beside 1 to 128: 64 + 1 parts against 128 + 1, the same solution, the concentrate as 65 to 129. On
/// setting 2 the walk-behind lays down 0.2 / 0.12 of what it does on setting 1.
#[test]
fn another_product_and_another_setting_side_by_side() {
    let vinyl = [
        Action::Remove(Shelf::Area, 4),
        Action::Remove(Shelf::Area, 3),
        Action::Remove(Shelf::Area, 1),
        Action::Pick(Shelf::Product, "hand-soap".into()),
        Action::Text(brimline::form::action::Line::Label, "1:128".into()),
        Action::Pick(Shelf::Product, "neutral".into()),
    ];
    let typed = after(vinyl.clone());
    assert!(compared(&typed).is_none(), "nothing to compare with");
    let own = work(&typed, Marks::POINT).outcome.answer;
    let other = |action: Action| {
        let typed = after(vinyl.clone().into_iter().chain([action]));
        compared(&typed).expect("a comparison")
    };
    let figure = |answer: &brimline::answer::Answer, name| answer.get(name).expect(name).si;
    let weaker = other(Action::OtherProduct("hand-soap".into())).outcome.answer;
    assert!(near(figure(&weaker, names::SHIFT_SOLUTION), figure(&own, names::SHIFT_SOLUTION)));
    let (less, more) = (figure(&weaker, names::SHIFT_CONCENTRATE), figure(&own, names::SHIFT_CONCENTRATE));
    assert!(near(less / more, 65.0 / 129.0));
    assert!(codes(&weaker).contains(&"remark-foam-refuse"), "what is wrong with it is said");
    let wetter = other(write(Field::OtherSetting, "2"));
    assert!(near(
        figure(&wetter.outcome.answer, names::SHIFT_SOLUTION) / figure(&own, names::SHIFT_SOLUTION),
        0.2 / 0.12
    ));
    assert!(codes(&wetter.outcome.answer).contains(&"remark-forced-too-wet"));
    let missing = after(vinyl.clone().into_iter().chain([write(Field::OtherSetting, "7")]));
    assert!(compared(&missing).is_none(), "there are three settings");
    assert_eq!(work(&missing, Marks::POINT).outcome.at("compare-setting"), Some(&What::NoSetting));
    let half = after(vinyl.into_iter().chain([write(Field::OtherSetting, "1.5")]));
    assert!(compared(&half).is_none());
    assert!(work(&half, Marks::POINT).outcome.at("compare-setting").is_some());
}

#[test]
fn an_area_that_is_not_ticked_counts_in_the_month() {
    let with = work(&after([]), Marks::POINT).outcome.answer;
    let without = work(&after([write(Field::AreaFrequency(4), "")]), Marks::POINT).outcome.answer;
    let area = |answer: &brimline::answer::Answer| answer.get(names::YEAR_AREA).expect("a year").si;
    // 1200 ft², 12 times a year.
    assert!(
        (in_unit(brimline::units::Area::from_si(area(&with) - area(&without)), "ft2") - 14_400.0).abs()
            < 1e-3
    );
    let wrong = work(&after([write(Field::AreaSize(4), "big")]), Marks::POINT);
    assert_eq!(wrong.outcome.troubles, [], "it is not in this shift");
    assert!(codes(&wrong.outcome.answer).contains(&"remark-month-left-out"));
    assert_figure(&wrong.outcome.answer, names::SHIFT_AREA, "ft2", "19200.0");
}
