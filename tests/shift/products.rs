//! A shift with several products, from what was typed. Worked by hand; units exact by NIST SP 811,
//! Appendix B: 1 gal = 128 fl oz.

use crate::{after, write};
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::shift::{Better, Turns, best_order, work};
use brimline::form::{Action, Field, Typed, What, names};
use brimline::number::Marks;
use brimline::trade::order::{OrderMistake, Place};

const FLUID_OUNCE: f64 = 29.573_529_562_5e-6;

/// The best order of what was typed.
fn ordered(typed: &Typed) -> Option<Result<Turns, OrderMistake>> {
    best_order(typed, &work(typed, Marks::POINT), Marks::POINT)
}

/// Two areas of 13,200 ft² on the vinyl, an hour each at full efficiency: 13,200 ft² an hour by 2 mph × 15 in.
/// Setting 1 lays down 0.12 gal/min, 7.2 gal an area.
fn two_areas() -> Vec<Action> {
    vec![
        Action::Remove(Shelf::Area, 4),
        Action::Remove(Shelf::Area, 3),
        Action::Remove(Shelf::Area, 2),
        write(Field::AreaSize(0), "13200"),
        write(Field::AreaSize(1), "13200"),
        Action::AreaFloor(1, "vinyl".into()),
        write(Field::Efficiency, "100"),
        write(Field::Change, "30"),
    ]
}

/// One product: 14.4 gal, a fill of 10 and one of 4.4, a refill of 10 min between. At 1 to 64 the concentrate
/// is 14.4 × 128 / 65 = 28.36 fl oz. Two products: each area one fill of 7.2 gal, a change of 30 min between;
/// 7.2 × 128 / 65 and, at 1 to 32, 7.2 × 128 / 33.
#[test]
fn a_change_of_product_is_a_dump_and_a_fill_of_its_own() {
    let one = work(&after(two_areas()), Marks::POINT);
    let figure = |shift: &brimline::form::shift::Shift, name| shift.outcome.answer.get(name).expect(name).si;
    assert!((figure(&one, names::SHIFT_CONCENTRATE) / FLUID_OUNCE - 14.4 * 128.0 / 65.0).abs() < 1e-6);
    assert!((figure(&one, names::SHIFT_TOTAL_TIME) - 130.0 * 60.0).abs() < 1e-6);
    assert_eq!(one.outcome.answer.get(names::SHIFT_CHANGES), None);

    let second = [
        Action::Pick(Shelf::Product, "degreaser".into()),
        Action::Text(Line::Label, "1:32".into()),
        Action::Text(Line::Standard, String::new()),
        Action::Pick(Shelf::Product, "neutral".into()),
        Action::AreaProduct(1, "degreaser".into()),
    ];
    let two = work(&after(two_areas().into_iter().chain(second)), Marks::POINT);
    assert_eq!(two.outcome.troubles, []);
    let by_hand = 7.2 * 128.0 / 65.0 + 7.2 * 128.0 / 33.0;
    assert!((figure(&two, names::SHIFT_CONCENTRATE) / FLUID_OUNCE - by_hand).abs() < 1e-6);
    assert!((figure(&two, names::SHIFT_TOTAL_TIME) - 150.0 * 60.0).abs() < 1e-6);
    assert!((figure(&two, names::SHIFT_CHANGES) - 1.0).abs() < f64::EPSILON);
    let [round] = &two.rounds[..] else { panic!("one machine") };
    assert_eq!(round.plan.fills.iter().map(|fill| fill.task).collect::<Vec<_>>(), [0, 1]);
    // Strong alkali strips the finish of this floor: said of the area that takes it, and of no other.
    let codes: Vec<&str> = two.outcome.answer.remarks.iter().map(|remark| remark.code).collect();
    assert_eq!(codes.iter().filter(|code| **code == "remark-shift-floor").count(), 1);
}

#[test]
fn a_product_that_was_removed_is_asked_for() {
    let typed = after(two_areas().into_iter().chain([Action::AreaProduct(0, "gone".into())]));
    assert_eq!(work(&typed, Marks::POINT).outcome.at("area-1-product"), Some(&What::NoProduct));
    assert!(ordered(&typed).is_none());
}

/// Five areas, the second and the fourth with another product: one change instead of four, and the first one
/// stays first.
#[test]
fn areas_are_ordered_and_none_is_lost() {
    let mixed = after([
        Action::AreaProduct(1, "tablets-free".into()),
        Action::AreaProduct(1, "vinegar".into()),
        Action::AreaProduct(3, "vinegar".into()),
        Action::AreaFloor(3, "wood".into()),
        Action::AreaPlace(2, Place::First),
        Action::StopRead,
    ]);
    let Turns { areas: turns, order, better } = ordered(&mixed).expect("a shift").expect("an order");
    assert_eq!(better, Better::Keeps, "the third is to come first");
    assert_eq!((order.changes, order.least, order.exact), (1, 1, true));
    assert_eq!(turns[0], 2, "first is first");
    assert_eq!(turns[4], 4, "the area that is not cleaned stays behind");
    let before: Vec<String> = mixed.site.areas.iter().map(|area| area.name.clone()).collect();
    let taken = reduce(mixed.clone(), Action::Order(turns));
    let mut after_names: Vec<String> = taken.site.areas.iter().map(|area| area.name.clone()).collect();
    let again = ordered(&taken).expect("a shift").expect("an order");
    assert_eq!(
        (again.areas.as_slice(), again.better),
        (&[0, 1, 2, 3, 4][..], Better::Not),
        "an order that was taken is the best"
    );
    let mut expected = before;
    expected.sort();
    after_names.sort();
    assert_eq!(after_names, expected);
    for wrong in [vec![0, 0, 1, 2, 3], vec![0, 1], vec![7, 8, 9, 10, 11]] {
        assert_eq!(reduce(mixed.clone(), Action::Order(wrong)), mixed, "no area is lost");
    }
}

#[test]
fn times_that_cannot_be_kept_are_said() {
    let late = after(two_areas().into_iter().chain([write(Field::AreaCloses(1), "0.5")]));
    let order = ordered(&late).expect("a shift");
    assert_eq!(order.map(|turns| turns.areas), Err(OrderMistake::Late(1)));
    let first = after(two_areas().into_iter().chain([write(Field::AreaCloses(1), "1.5")]));
    let turns = ordered(&first).expect("a shift").expect("an order");
    assert_eq!((turns.areas.as_slice(), turns.better), (&[1, 0][..], Better::Keeps));
}

#[test]
fn a_time_that_is_none_is_said_at_its_field() {
    let typed = after(
        two_areas()
            .into_iter()
            .chain([write(Field::AreaCloses(1), "-1"), write(Field::AreaOpens(0), "noon")]),
    );
    let outcome = work(&typed, Marks::POINT).outcome;
    assert!(matches!(outcome.at("area-2-closes"), Some(What::Number(_))));
    assert!(matches!(outcome.at("area-1-opens"), Some(What::Number(_))));
    assert!(outcome.answer.get(names::SHIFT_FILLS).is_some(), "the shift itself stands");
}

/// 700 ppm of 170 g/L are 0.4118 %: no fill of the shift rounds below it.
#[test]
fn a_shift_rounds_no_fill_below_a_minimum_by_law() {
    let quat = [
        Action::Pick(Shelf::Product, "quat".into()),
        Action::Text(Line::Label, "1:128 to 1:256".into()),
        write(Field::Minimum, "700"),
    ];
    let shift = work(&after(quat), Marks::POINT);
    let [round] = &shift.rounds[..] else { panic!("one machine") };
    assert!(round.rounded.iter().any(Option::is_some));
    for (fill, rounded) in round.plan.fills.iter().zip(&round.rounded) {
        let least = 0.7 / 170.0;
        assert!(rounded.is_none_or(|rounded| rounded.dose / fill.solution >= least * (1.0 - 1e-9)));
    }
}
