//! What a fill station shows, and what can be done there.

use super::{after, draft, published};
use brimline::form::action::{Line, Shelf};
use brimline::form::site::Act;
use brimline::form::site::carried::{carry, open, outdated};
use brimline::form::site::in_force::{held_to_standards, next};
use brimline::form::{Action, Field, Typed, fill, names};
use brimline::number::Marks;
use brimline::site::{Standard, Standing};

fn dose(typed: &Typed) -> f64 {
    fill::work(typed, Marks::POINT).outcome.answer.get(names::FILL_DOSE).expect("a dose").si
}

#[test]
fn the_standard_in_force_narrows_the_fill() {
    let mut typed = draft("vinyl", "neutral", "1:100");
    for product in &mut typed.site.products {
        if product.id == "neutral" {
            product.label = "1:64 to 1:128".into();
        }
    }
    let label = dose(&typed);
    let typed = published(typed, "2026-01-06");
    // 10 US gal = 37.854 117 84 L (NIST SP 811); 1 to 100 is a part in 101.
    assert!((dose(&typed) - 0.037_854_117_84 / 101.0).abs() < 1e-12);
    assert!((dose(&typed) - label).abs() > 1e-6);
    // Another floor has no standard: the label alone holds.
    let tile = after(typed, [Action::Pick(Shelf::Floor, "tile".into())]);
    assert!((dose(&tile) - label).abs() < 1e-12);
}

#[test]
fn another_product_than_the_standard_is_warned_of() {
    let typed = published(draft("vinyl", "neutral", "1:64"), "2026-01-06");
    let codes = |typed: &Typed| {
        let remarks = fill::work(typed, Marks::POINT).outcome.answer.remarks;
        remarks.iter().map(|one| one.code).collect::<Vec<_>>()
    };
    assert!(codes(&typed).contains(&"remark-standard-in-force"));
    let other = after(typed, [Action::Pick(Shelf::Product, "degreaser".into())]);
    assert!(codes(&other).contains(&"remark-standard-other"));
}

#[test]
fn a_device_held_to_standards_shows_nothing_else() {
    let typed = published(draft("vinyl", "neutral", "1:64"), "2026-01-06");
    let typed = after(
        typed,
        [Act::Draft { floor: "tile".into(), product: "quat".into(), dilution: "1:64".into() }.action()],
    );
    let held = held_to_standards(
        &after(
            typed,
            [Action::Pick(Shelf::Floor, "marble".into()), Action::Pick(Shelf::Product, "vinegar".into())],
        ),
        Marks::POINT,
    );
    assert_eq!(held.site.floors.iter().map(|one| one.id.as_str()).collect::<Vec<_>>(), ["vinyl"]);
    assert_eq!(held.site.standards.len(), 1);
    assert_eq!(held.product().map(|one| one.id.as_str()), Some("neutral"));
}

#[test]
fn an_operator_asks_and_changes_no_record() {
    let asking = [
        Action::Pick(Shelf::Machine, "ride-on".into()),
        Action::Write(Field::Level, "50".into()),
        Action::Write(Field::Strip, "200".into()),
        Action::StopRead,
    ];
    assert!(asking.iter().all(Action::is_asking));
    let changing = [
        Action::Pick(Shelf::Product, "vinegar".into()),
        Action::Text(Line::Label, "1:1".into()),
        Action::Write(Field::Tank, "1".into()),
        Action::Write(Field::Minimum, "1".into()),
        Action::Add(Shelf::Machine),
        Action::Remove(Shelf::Machine, 0),
        Action::Replace(Box::default()),
        Act::Revise.action(),
    ];
    assert!(!changing.iter().any(Action::is_asking));
    // Whatever an operator does, the site stays as it was.
    let typed = Typed::default();
    assert_eq!(after(typed.clone(), asking).site, typed.site);
}

#[test]
fn ounces_and_gallons_of_a_standard_do_not_turn_with_the_units_shown() {
    use brimline::units::System;
    let label = |typed: &mut Typed| {
        let degreaser =
            typed.site.products.iter_mut().find(|one| one.id == "degreaser").expect("the degreaser");
        degreaser.label = "1:10 to 1:60".into();
    };
    let mut typed = draft("concrete", "degreaser", "5 oz/gal");
    label(&mut typed);
    let typed = after(
        published(typed, "2026-01-06"),
        [Action::Pick(Shelf::Floor, "concrete".into()), Action::Pick(Shelf::Product, "degreaser".into())],
    );
    // 5 in 128 of water: 5/133 of 10 US gal, by definition (NIST SP 811); 160 fl oz to the imperial gallon would give
    // 5/165.
    let asked = 0.037_854_117_84 * 5.0 / 133.0;
    for system in System::ALL {
        let typed = after(typed.clone(), [Action::System(*system), Action::StopRead]);
        let held = held_to_standards(&typed, Marks::POINT);
        assert!((dose(&typed) - asked).abs() < 1e-9, "{system:?}: {}", dose(&typed));
        assert!((dose(&held) - asked).abs() < 1e-9, "{system:?}, held");
    }
    assert!(!Action::System(System::Metric).is_asking(), "a locked device keeps its units");
}

#[test]
fn a_product_that_is_out_of_use_is_told() {
    let typed = after(Typed::default(), [Act::Retire(Shelf::Product, "neutral".into(), true).action()]);
    let remarks = fill::work(&after(typed, [Action::Pick(Shelf::Product, "neutral".into())]), Marks::POINT)
        .outcome
        .answer
        .remarks;
    assert!(remarks.iter().any(|one| one.code == "remark-product-retired"));
}

#[test]
fn a_measure_without_its_figures_gives_way_on_a_device() {
    use brimline::form::site::in_force::lacking;
    let mut typed = published(draft("vinyl", "neutral", "1:64"), "2026-01-06");
    (typed.ask.machine, typed.ask.measure) = ("walk-behind".into(), "own".into());
    // Nobody typed in which ratios the walk-behind can set.
    let held = held_to_standards(&typed, Marks::POINT);
    assert!(lacking(&held, Marks::POINT).iter().any(|one| one.measure == "own"));
    assert_eq!(held.measure().map(|one| one.id.as_str()), Some("jug"));
    // 10 US gal at 1 to 64, as above.
    assert!((dose(&held) - 0.037_854_117_84 / 65.0).abs() < 1e-12);
    // The ride-on has ratios: the measure that was chosen serves again.
    let ride_on = held_to_standards(
        &after(typed.clone(), [Action::Pick(Shelf::Machine, "ride-on".into())]),
        Marks::POINT,
    );
    assert_eq!(ride_on.measure().map(|one| one.id.as_str()), Some("own"));
    // Where none serves, none is made up.
    typed.site.measures.retain(|one| one.id == "own");
    assert_eq!(held_to_standards(&typed, Marks::POINT).measure().map(|one| one.id.as_str()), Some("own"));
}

#[test]
fn every_measure_that_a_device_offers_reads() {
    use brimline::form::site::in_force::lacking;
    let mut typed = published(draft("vinyl", "neutral", "1:64"), "2026-01-06");
    for machine in typed.site.machines.clone() {
        typed.ask.machine = machine.id;
        for measure in typed.site.measures.clone() {
            typed.ask.measure = measure.id;
            let held = held_to_standards(&typed, Marks::POINT);
            let troubles = fill::work(&held, Marks::POINT).outcome.troubles;
            assert!(troubles.is_empty(), "{}: {troubles:?}", held.ask.measure);
            assert!(lacking(&held, Marks::POINT).iter().all(|one| one.measure != held.ask.measure));
        }
    }
}

/// What the concentrate holds stands in the product's record: on a device nobody can type it, so no reading that counts
/// it is asked there.
#[test]
fn a_reading_that_nobody_can_count_gives_way_on_a_device() {
    use brimline::form::site::in_force::uncounted;
    use brimline::form::station::{Method, reading};
    let typed = published(draft("vinyl", "neutral", "1:64"), "2026-01-06");
    let method = |typed: &Typed, method: Method| {
        let typed = after(typed.clone(), [Action::Method(method)]);
        held_to_standards(&typed, Marks::POINT).ask.station.method
    };
    for counts in [Method::Strip, Method::Drops] {
        assert_eq!(method(&typed, counts), Method::Refractometer);
    }
    assert_eq!(method(&typed, Method::Catch), Method::Catch);
    let missing = |typed: &Typed| {
        let troubles = reading::work(typed, Marks::POINT).outcome.troubles;
        troubles.iter().any(|one| !Field::STATION.iter().any(|(field, _)| field.name() == one.name))
    };
    assert!(missing(&typed) && !missing(&held_to_standards(&typed, Marks::POINT)));
    let pick = Action::Pick(Shelf::Product, "neutral".into());
    let known = after(
        typed,
        [pick, Action::Write(Field::Active, "5".into()), Action::Unit(Field::Active, "percent_wv".into())],
    );
    assert!(uncounted(&known, Marks::POINT).is_none());
    assert_eq!(method(&known, Method::Strip), Method::Strip);
}

#[test]
fn a_standard_with_one_number_leaves_no_range_to_choose_in() {
    let fixed = |dilution: &str| {
        let typed = published(draft("vinyl", "neutral", dilution), "2026-01-06");
        (typed.is_fixed(), held_to_standards(&typed, Marks::POINT).is_fixed())
    };
    assert_eq!(fixed("1:64"), (false, true));
    assert_eq!(fixed("1:64 to 1:128"), (false, false));
}

/// A chart on the wall has its last day where that is known, and none where what follows holds already or is a draft.
#[test]
fn what_waits_takes_the_place_of_what_holds_on_its_first_day() {
    let of = |version: u32, first: &str, standing| Standard {
        id: format!("s{version}"),
        floor: "vinyl".into(),
        version,
        effective: first.into(),
        standing,
        ..Standard::default()
    };
    let mut typed = Typed::default();
    typed.site.standards = vec![
        of(1, "2026-03-01", Standing::InForce),
        of(3, "2027-01-01", Standing::InForce),
        of(2, "2026-12-02", Standing::InForce),
        of(4, "2026-12-01", Standing::Draft),
        Standard { floor: "tile".into(), ..of(5, "2026-12-01", Standing::InForce) },
    ];
    let follows = |typed: &Typed, at: usize| next(typed, &typed.site.standards[at]).map(|one| one.version);
    typed.ask.today = "2026-12-01".into();
    assert_eq!([0, 1, 2, 3].map(|at| follows(&typed, at)), [Some(2), None, Some(3), None]);
    typed.ask.today = "2026-12-02".into();
    assert_eq!([0, 1, 2, 3].map(|at| follows(&typed, at)), [None, None, Some(3), None]);
}

/// A code that hangs on is older than what the device goes by: told for the same floor, or for the same names.
#[test]
fn a_code_is_out_of_date_once_a_later_version_holds() {
    let of = |version: u32, floor: &str, effective: &str| Standard {
        id: format!("s{version}"),
        name: "Hall".into(),
        floor: floor.into(),
        product: "neutral".into(),
        dilution: "1:64".into(),
        version,
        effective: effective.into(),
        standing: Standing::InForce,
        ..Standard::default()
    };
    let there = open(carry(&Typed::default(), &of(2, "vinyl", ""), "walk-behind", "jug", 100));
    let with = |standard: Standard| {
        let mut here = Typed::default();
        here.site.standards.push(standard);
        here
    };
    let late = |here: &Typed| outdated(here, &there, "2026-12-01").map(|one| one.version);
    assert_eq!(late(&with(of(3, "vinyl", "2026-12-01"))), Some(3));
    assert_eq!(late(&with(of(3, "vinyl", "2026-12-02"))), None, "it waits");
    assert_eq!(late(&with(of(2, "vinyl", ""))), None, "the same");
    assert_eq!(late(&with(of(1, "vinyl", ""))), None, "the code is newer");
    assert_eq!(late(&with(of(3, "tile", ""))), None, "another floor");
    assert_eq!(late(&with(Standard { standing: Standing::Draft, ..of(3, "vinyl", "") })), None, "a draft");
    // The same floor under another id.
    let mut renamed = with(of(3, "hall-floor", ""));
    let floor = renamed.site.floors.iter_mut().find(|one| one.id == "vinyl").expect("the floor");
    floor.id = "hall-floor".into();
    assert_eq!(late(&renamed), Some(3));
    renamed.site.standards[0].name = "Entrance".into();
    assert_eq!(late(&renamed), None, "another name");
}
