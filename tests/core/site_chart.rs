//! The wall chart, the carried fill and the mixes of a trial, held to figures worked by hand for the demo site.

use crate::{assert_printed, in_unit};
use brimline::answer::Value;
use brimline::form::action::{Shelf, reduce};
use brimline::form::site::Act;
use brimline::form::site::asked::asked;
use brimline::form::site::carried::{Carried, carry, open};
use brimline::form::site::chart::{Chart, Contact, LEVELS, Row, Why, chart};
use brimline::form::site::finish::trial::{Tried, work};
use brimline::form::site::history::replaced;
use brimline::form::{Typed, fill, flow, names};
use brimline::number::Marks;
use brimline::site::passing::link::{pack, unpack};
use brimline::site::{Entry, Machine, Standard, Standing, Trial};
use brimline::trade::governing::Aim;
use brimline::units::{Volume, unit};

/// The demo site with a draft of this product on this floor, and the draft.
fn draft(floor: &str, product: &str, dilution: &str) -> (Typed, Standard) {
    let act = Act::Draft { floor: floor.into(), product: product.into(), dilution: dilution.into() };
    let typed = reduce(Typed::default(), act.action());
    let standard = typed.standard().expect("the draft").clone();
    (typed, standard)
}

fn of(floor: &str, product: &str, dilution: &str, measure: &str) -> Chart {
    let (typed, standard) = draft(floor, product, dilution);
    chart(&typed, &standard, measure, Marks::POINT).expect("a chart")
}

fn value(row: &Row, level: usize, name: &str) -> Value {
    let dose = row.cells[level].dose.as_ref().unwrap_or_else(|why| panic!("{}: {why:?}", row.machine.name));
    dose.fill.outcome.answer.get(name).unwrap_or_else(|| panic!("{name} is missing"))
}

#[track_caller]
fn assert_row(row: &Row, name: &str, code: &str, printed: [&str; 4]) {
    for (level, printed) in printed.into_iter().enumerate() {
        let si = value(row, level, name).si;
        assert_printed(unit(code).map_or(si, |unit| unit.from_si(si)), printed);
    }
}

/// 1 to 64 in 10 gal: 10 × 128 / 65 = 19.6923 fl oz, and 3/4, 1/2, 1/4 of it: 14.7692, 9.8462, 4.9231. In marks
/// of 1 fl oz: 20, 15, 10, 5, which make 1 to (1280 − 20) / 20 = 63 (and 63 at every level). In millilitres
/// 20 × 29.57353 = 591.47, 443.60, 295.74, 147.87. In the ride-on’s 30 gal three times as much: 59.0769, so 59;
/// 44.3077, so 44; 29.5385, so 30; 14.7692, so 15.
#[test]
fn the_doses_of_the_neutral_cleaner() {
    let chart = of("vinyl", "neutral", "1:64", "jug");
    assert_eq!(
        chart.rows.iter().map(|row| row.machine.id.as_str()).collect::<Vec<_>>(),
        ["walk-behind", "self-driving", "ride-on"]
    );
    let small = &chart.rows[0];
    assert_row(small, names::FILL_DOSE, "floz_us", ["19.6923", "14.7692", "9.8462", "4.9231"]);
    assert_row(small, names::FILL_ROUNDED, "floz_us", ["20.0000", "15.0000", "10.0000", "5.0000"]);
    assert_row(small, names::FILL_ROUNDED, "ml", ["591.47", "443.60", "295.74", "147.87"]);
    assert_row(small, names::FILL_ROUNDED_RATIO, "", ["63.0000", "63.0000", "63.0000", "63.0000"]);
    assert_row(&chart.rows[2], names::FILL_DOSE, "floz_us", ["59.0769", "44.3077", "29.5385", "14.7692"]);
    assert_row(&chart.rows[2], names::FILL_ROUNDED, "floz_us", ["59.0000", "44.0000", "30.0000", "15.0000"]);
    assert!(small.clashes.is_empty() && chart.rows[2].clashes.is_empty());
}

/// The machine that uses its solution again takes 3 to 6 fl oz for a full tank: 6, 4.5, 3, 1.5 fl oz instead of
/// 19.69, and the row says so. In whole marks of 1 fl oz within 2.25 to 4.5: 4; within 0.75 to 1.5: 1.
#[test]
fn a_machine_with_a_clash_shows_it() {
    let chart = of("vinyl", "neutral", "1:64", "jug");
    let row = &chart.rows[1];
    assert_row(row, names::FILL_DOSE, "floz_us", ["6.0000", "4.5000", "3.0000", "1.5000"]);
    assert_row(row, names::FILL_ROUNDED, "floz_us", ["6.0000", "4.0000", "3.0000", "1.0000"]);
    assert_eq!(row.clashes.iter().map(|one| one.code).collect::<Vec<_>>(), ["remark-clash-machine"]);
}

/// Caps of 1/2 fl oz: 19.6923 / 0.5 = 39.4, so 39 caps = 19.5 fl oz; 29.5, so 30; 19.7, so 20; 9.8, so 10. Strokes
/// of 30 mL: 582.37 / 30 = 19.4, so 19; 14.6, so 15; 9.7, so 10; 4.9, so 5.
#[test]
fn counted_measures_stand_as_whole_counts() {
    for (measure, counts) in [
        ("cap", ["39.0000", "30.0000", "20.0000", "10.0000"]),
        ("pump", ["19.0000", "15.0000", "10.0000", "5.0000"]),
    ] {
        assert_row(&of("vinyl", "neutral", "1:64", measure).rows[0], names::FILL_COUNT, "", counts);
    }
}

/// The settings of the demo’s machines on vinyl (0.3 to 0.6 gal/1000 ft²): the walk-behind passes over
/// 2 mi/h × 15 in = 10,560 ft/h × 1.25 ft = 13,200 ft²/h = 220 ft²/min, so 0.12 gal/min lay down 0.545: setting 1. The
/// self-driving one over 7,920 × 1.5 = 11,880 ft²/h = 198 ft²/min: 0.08 lay down 0.404: setting 1. The ride-on over
/// 15,840 × 26/12 = 34,320 ft²/h = 572 ft²/min: 0.25 lay down 0.437: setting 1. On bare concrete (1.2 to 2): the
/// walk-behind’s 0.3 lay down 1.36, setting 3; the self-driving’s 0.26 lay down 1.31, setting 4; the ride-on’s 0.9 lay
/// down 1.57, setting 4 (0.6: 1.05).
#[test]
fn the_flow_setting_of_each_machine() {
    for (floor, numbers) in [("vinyl", [1.0, 1.0, 1.0]), ("concrete", [3.0, 4.0, 4.0])] {
        let chart = of(floor, "neutral", "1:64", "jug");
        let found = chart.rows.iter().map(|row| row.setting.as_ref().expect("a setting").number.si);
        assert_eq!(found.collect::<Vec<_>>(), numbers, "{floor}");
    }
}

#[test]
fn a_reason_stands_where_there_is_no_dose() {
    // Nobody has tested the disinfectant’s foam, and all three machines have a vacuum.
    let chart = of("vinyl", "quat", "1:256", "jug");
    for row in &chart.rows {
        let Some(Why::Remarks(remarks)) = row.barred() else { panic!("{}", row.machine.name) };
        assert!(remarks.iter().any(|one| one.code == "remark-foam-test-first"), "{remarks:?}");
    }
    // No ratio can be set on a machine without a bottle of its own; the ride-on has one.
    let chart = of("vinyl", "neutral", "1:64", "own");
    assert!(
        matches!(chart.rows[0].barred(), Some(Why::Troubles(troubles)) if troubles[0].name == fill::RATIOS)
    );
    assert!((chart.rows[2].cells[0].dose.as_ref().expect("a ratio").value.si - 64.0).abs() < 1e-9);
    // A dilution that is none stands against every level.
    let chart = of("vinyl", "neutral", "strong", "jug");
    assert!(
        matches!(chart.rows[0].barred(), Some(Why::Troubles(troubles)) if troubles[0].name == fill::STANDARD)
    );
    // Every cell has a number or a reason, whatever the measure and the product.
    let (typed, _) = draft("vinyl", "neutral", "1:64");
    for product in &typed.site.products {
        for measure in &typed.site.measures {
            for row in of("vinyl", &product.id, &product.label, &measure.id).rows {
                assert_eq!(row.cells.iter().map(|cell| cell.percent).collect::<Vec<_>>(), LEVELS);
                for cell in &row.cells {
                    match &cell.dose {
                        Ok(dose) => assert!(dose.value.si > 0.0),
                        // What draws a liquid does not draw tablets: Fill has nothing to mend there.
                        Err(Why::Troubles(all)) => assert!(
                            !all.is_empty() || chart_draws(&typed, &measure.id),
                            "{} {}",
                            product.id,
                            measure.id
                        ),
                        Err(Why::Remarks(all)) => assert!(!all.is_empty()),
                        Err(Why::LeftOut(reason)) => panic!("no machine is left out: {reason}"),
                    }
                }
            }
        }
    }
}

fn chart_draws(typed: &Typed, measure: &str) -> bool {
    typed.site.measures.iter().any(|one| one.id == measure && one.dispenser.draws())
}

/// Whole marks of 20 fl oz cannot make 4.9 fl oz: a tenth off is too coarse, and the reason stands there.
#[test]
fn a_measure_that_is_too_coarse_gives_no_number() {
    let (mut typed, standard) = draft("vinyl", "neutral", "1:64");
    typed.site.measures[0].step = Entry::new("20", "floz_us");
    let chart = chart(&typed, &standard, "jug", Marks::POINT).expect("a chart");
    let dose = |level: usize| &chart.rows[0].cells[level].dose;
    assert!((dose(0).as_ref().expect("20 of 19.7").value.si - 20.0 * 29.573_529_562_5e-6).abs() < 1e-12);
    assert!(
        matches!(dose(3), Err(Why::Remarks(all)) if all[0].code == "remark-measure-coarse"),
        "{:?}",
        dose(3)
    );
}

#[test]
fn a_record_that_is_gone_is_told_and_no_other_takes_its_place() {
    let (mut typed, standard) = draft("vinyl", "neutral", "1:64");
    let missing = |typed: &Typed, measure: &str| {
        chart(typed, &standard, measure, Marks::POINT).map(|_| ()).unwrap_err()
    };
    assert_eq!(missing(&typed, "no such"), Shelf::Measure);
    typed.site.machines.iter_mut().for_each(|one| one.retired = true);
    assert_eq!(missing(&typed, "jug"), Shelf::Machine);
    typed.site.products.retain(|one| one.id != "neutral");
    assert_eq!(missing(&typed, "jug"), Shelf::Product);
}

/// The longer of the two times holds: what the label asks is not cut short by a standard.
#[test]
fn the_contact_time() {
    let of = |own: &str, product: &str| {
        let (typed, mut standard) = draft("terrazzo", product, "1:256");
        standard.contact = Entry::new(own, "min");
        chart(&typed, &standard, "jug", Marks::POINT).expect("a chart").contact
    };
    let minutes = |contact: Contact| match contact {
        Contact::Least(time) => time.si / 60.0,
        other => panic!("{other:?}"),
    };
    assert_printed(minutes(of("", "quat")), "10");
    assert_printed(minutes(of("5", "quat")), "10");
    assert_printed(minutes(of("15", "quat")), "15");
    assert_eq!(of("", "neutral"), Contact::NotAsked);
    assert!(matches!(of("soon", "quat"), Contact::Wrong(trouble) if trouble.name == "standard-contact"));
}

#[test]
fn a_carried_fill_is_bit_for_bit_the_same() {
    let mut compared = 0;
    for (product, dilution) in [
        ("neutral", "1:64"),
        ("degreaser", "4 to 6 oz/gal"),
        ("vinegar", "5 oz per tank"),
        ("powder", "3/4 oz wt/gal"),
        ("tablets", "1 tablet per 2 gal"),
        ("quat", "1:256"),
    ] {
        for aim in Aim::ALL {
            let (mut typed, standard) = draft("terrazzo", product, dilution);
            typed.ask.aim = *aim;
            for machine in &typed.site.machines {
                for measure in &typed.site.measures {
                    for percent in LEVELS {
                        let here = asked(&typed, &standard, &machine.id, &measure.id, percent);
                        let carried = carry(&typed, &standard, &machine.id, &measure.id, percent);
                        // By way of a file’s text, as it travels.
                        let text = serde_json::to_string(&carried).expect("a document");
                        let there = open(serde_json::from_str::<Carried>(&text).expect("the same document"));
                        assert_eq!(
                            there.site.machines.len()
                                + there.site.products.len()
                                + there.site.standards.len(),
                            3
                        );
                        compared += same(&here, &there);
                    }
                }
            }
        }
    }
    println!("{compared} figures alike");
    assert!(compared > 5_000);
}

/// Figures and remarks of Fill and Flow on both sides, to the last bit; how many.
fn same(here: &Typed, there: &Typed) -> usize {
    let figures = |typed: &Typed| {
        let (fill, flow) = (fill::work(typed, Marks::POINT).outcome, flow::work(typed, Marks::POINT).outcome);
        let all = fill.answer.figures.into_iter().chain(flow.answer.figures);
        let bits: Vec<(&str, u64)> = all.map(|figure| (figure.name, figure.value.si.to_bits())).collect();
        (bits, fill.answer.remarks, fill.troubles)
    };
    let (a, b) = (figures(here), figures(there));
    assert_eq!(a, b);
    a.0.len()
}

/// A code of 68 mm with modules of half a millimetre takes 1,465 bytes at level L, 1,125 at level M (ISO/IEC 18004,
/// table 7, version 27); 100 of them are left for the address of the page.
#[test]
fn every_fill_of_the_demo_site_fits_a_code_and_opens_as_it_was() {
    let mut longest = 0;
    for product in &Typed::default().site.products {
        let (typed, standard) = draft("tile", &product.id, &product.label);
        for machine in &typed.site.machines {
            for measure in &typed.site.measures {
                let carried = carry(&typed, &standard, &machine.id, &measure.id, 100);
                let link = pack(&carried).expect("a link");
                longest = longest.max(link.len());
                assert_eq!(unpack::<Carried>(&link), Ok(carried));
            }
        }
    }
    println!("{longest} characters at most");
    assert!(longest <= 1_365, "{longest}");
}

#[test]
fn what_is_carried_brings_no_reading_of_a_warning() {
    let (mut typed, standard) = draft("terrazzo", "quat", "1:256");
    typed.ask.stop_read = true;
    let there = open(carry(&typed, &standard, "walk-behind", "jug", 100));
    assert!(fill::work(&there, Marks::POINT).outcome.answer.stopped());
    assert!(there.site.areas.is_empty() && there.site.trials.is_empty());
}

/// The degreaser’s label says 4 to 8 fl oz for a gallon of water. 1 L of use solution: 1000 × 4 / 132 = 30.303 mL with
/// 969.697 mL of water; 1000 × 8 / 136 = 58.824 mL with 941.176. The middle of 4/132 and 8/136 is
/// 0.0445633; the roundest number within a hundredth of it is 6 fl oz for a gallon: 1000 × 6 / 134 = 44.776 mL.
/// Neither the site’s 5 oz/gal nor a machine’s 3 to 6 fl oz counts: the label’s range is what is tried.
#[test]
fn the_mixes_of_a_trial() {
    let (mut typed, _) = draft("vinyl", "degreaser", "5 oz/gal");
    for machine in ["walk-behind", "self-driving"] {
        typed.ask.machine = machine.into();
        let mixes = tried(&typed, "degreaser").mixes;
        assert_eq!(mixes.len(), 3);
        for (mix, dose) in mixes.iter().zip(["30.303", "44.776", "58.824"]) {
            assert_printed(in_unit(Volume::new(mix.amount.si), "ml"), dose);
            let (rounded, water) = (mix.rounded.expect("enough").si, mix.water.expect("a liquid").si);
            assert_printed(in_unit(Volume::new(rounded + water), "ml"), "1000.000");
        }
    }
}

/// A trial of a product on the vinyl, as it is asked about.
fn tried(typed: &Typed, product: &str) -> Tried {
    let mut typed = typed.clone();
    let trial = Trial { id: "t9".into(), floor: "vinyl".into(), product: product.into(), ..Trial::default() };
    typed.site.trials = vec![trial];
    work(&typed, Marks::POINT)
}

/// A powder is weighed: 1/2 to 1 oz (avoirdupois) for a gallon is 14.1748 to 28.3495 g for 3.785412 L, so 3.7446 and
/// 7.4892 g for 1 L. By the tank, 6 fl oz for 10 gal are 177.441 mL for 37.85412 L: 4.6875 mL.
#[test]
fn the_mixes_of_a_powder_and_of_a_label_by_the_tank() {
    let typed = Typed::default();
    let dose = |product: &str, patch: usize| tried(&typed, product).mixes[patch].amount.si;
    assert_printed(dose("powder", 0) * 1e3, "3.7446");
    assert_printed(dose("powder", 2) * 1e3, "7.4892");
    assert_printed(dose("vinegar", 0) * 1e6, "4.6875");
    let gone = tried(&typed, "no such");
    assert!(gone.mixes.is_empty() && gone.outcome.at("trial-product").is_some());
}

#[test]
fn what_a_standard_replaced_comes_the_latest_first() {
    let publish = |date: &str| Act::Publish { date: date.into(), proved: String::new() }.action();
    let begun = draft("vinyl", "neutral", "1:64").0;
    let typed =
        [publish("2026-01-01"), Act::Revise.action(), publish("2026-06-01")].into_iter().fold(begun, reduce);
    let standard = typed.standard().expect("the later one");
    assert_eq!((standard.standing, standard.version), (Standing::InForce, 2));
    let before = replaced(&typed.site, standard);
    assert_eq!(before.iter().map(|one| one.published.as_str()).collect::<Vec<_>>(), ["2026-01-01"]);
    // Round in a circle, as no page writes it: it ends.
    let mut circle = typed.site.clone();
    circle.standards[0].replaces = circle.standards[1].id.clone();
    assert_eq!(replaced(&circle, &circle.standards[1]).len(), 1);
}

#[test]
fn a_machine_that_nobody_described_has_a_reason_too() {
    let (mut typed, standard) = draft("vinyl", "neutral", "1:64");
    typed.site.machines = vec![Machine { id: "m".into(), vacuum: true, ..Machine::default() }];
    let chart = chart(&typed, &standard, "jug", Marks::POINT).expect("a chart");
    assert!(matches!(chart.rows[0].barred(), Some(Why::Troubles(all)) if all[0].name == "machine-tank"));
    assert!(matches!(&chart.rows[0].setting, Err(Why::Troubles(all)) if !all.is_empty()));
}
