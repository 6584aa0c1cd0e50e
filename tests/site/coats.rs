//! The coats and the wait after them: by hand, and the drying against the values of property libraries.

use crate::{after, assert_figure, codes, pick, write};
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::site::finish::{FIRST_COAT, FIRST_COAT_AT, Finishing, work};
use brimline::form::{Action, Field, Typed, What, names};
use brimline::number::Marks;
use brimline::trade::finish::{coat_start, first_scrub};
use brimline::units::{Duration, Quantity};
use proptest::prelude::*;

fn told(actions: impl IntoIterator<Item = Action>) -> Finishing {
    work(&actions.into_iter().fold(gloss(), reduce), Marks::POINT)
}

/// The gloss finish of the demo: four coats, 2,000 ft²/gal, 40 min, cured in 72 h.
fn gloss() -> Typed {
    after([pick(Shelf::Finish, "gloss"), write(Field::CoatArea, "6000")])
}

fn first(day: &str, time: &str) -> [Action; 2] {
    [Action::Text(Line::FirstCoat, day.into()), Action::Text(Line::FirstCoatAt, time.into())]
}

/// 4 coats × 6,000 ft² ÷ 2,000 ft²/gal = 12 gal, 3 gal a coat.
#[test]
fn finish_by_hand() {
    let found = told([]);
    assert_eq!(found.outcome.troubles, []);
    assert_figure(&found.outcome.answer, names::FINISH_VOLUME, "gal_us", "12.000");
    assert_figure(&found.outcome.answer, names::FINISH_COAT, "gal_us", "3.000");
    // 4 × 40 min + 72 h = 74 h 40 min.
    assert_figure(&found.outcome.answer, names::FINISH_READY, "min", "4480.0");
    assert!(!found.estimated && found.outcome.answer.get(names::COAT_DRY_FROM).is_none());
    // A litre on 50 m²: a metric label for a metric floor.
    let metric = told([
        Action::Unit(Field::FinishCoverage, "m2_per_l".into()),
        write(Field::FinishCoverage, "50"),
        Action::Unit(Field::CoatArea, "m2".into()),
        write(Field::CoatArea, "500"),
    ]);
    assert_figure(&metric.outcome.answer, names::FINISH_VOLUME, "l", "40.000");
}

/// Saturday 7 March 2026, 18:30: every 40 minutes a coat; the last is dry at 21:10, and 72 hours later is Tuesday,
/// 10 March, 21:10 (Python's datetime).
#[test]
fn coats_by_the_clock_on_the_wall() {
    let found = told(first("2026-03-07", "18:30"));
    let at = |when: &brimline::form::site::finish::When| when.at.expect("a time").to_string();
    let starts: Vec<String> = found.coats.iter().map(|coat| at(&coat.to)).collect();
    assert_eq!(starts, ["2026-03-07 18:30", "2026-03-07 19:10", "2026-03-07 19:50", "2026-03-07 20:30"]);
    let scrub = found.scrub.expect("a cure");
    assert_eq!((at(&scrub).as_str(), scrub.at.expect("a time").date.weekday()), ("2026-03-10 21:10", 2));
    // Over midnight into the leap day.
    let night = told(first("2024-02-28", "23:00"));
    assert_eq!(at(&night.coats[3].to), "2024-02-29 01:00");
    assert!(codes(&night.outcome.answer).contains(&"remark-coat-clock"));
}

#[test]
fn a_day_that_is_none_is_told_and_the_times_stay() {
    for (day, time, at, what) in [
        ("7 March", "18:30", FIRST_COAT, What::Date),
        ("2026-02-29", "18:30", FIRST_COAT, What::Date),
        ("", "18:30", FIRST_COAT, What::Date),
        ("2026-03-07", "", FIRST_COAT_AT, What::Time),
        ("2026-03-07", "6 pm", FIRST_COAT_AT, What::Time),
    ] {
        let found = told(first(day, time));
        assert_eq!(found.outcome.at(at), Some(&what), "{day} {time}");
        assert_eq!(found.coats.len(), 4);
        assert!(found.coats.iter().all(|coat| coat.to.at.is_none()));
    }
    let empty = told(first("", " "));
    assert!(empty.outcome.troubles.is_empty() && empty.coats[1].to.after == Duration::new(2_400.0));
}

/// Without a dry time on the label: 1800 ft²/gal lie 22.637 µm thick, 18 % of it stays, 18.563 mL/m² are water,
/// 18.526 g at 998 g/L. At 20 °C, 50 % and 0.15 m/s evaporate 2.88057 g/(m² min) with the film as warm as the air
/// and 0.996403 at the wet bulb (`PsychroLib` 2.5, `CoolProp` 8): 6.431 and 18.59 min.
#[test]
fn a_coat_dries_as_the_libraries_have_it() {
    let typed = after([
        pick(Shelf::Finish, "matte"),
        Action::Unit(Field::Air, "deg_c".into()),
        write(Field::Air, "20"),
        Action::Unit(Field::Draught, "m_per_s".into()),
        write(Field::Draught, "0.15"),
    ]);
    let found = work(&typed, Marks::POINT);
    let minutes = |name| found.outcome.answer.get(name).expect("an estimate").si / 60.0;
    let (fast, slow) = (minutes(names::COAT_DRY_FROM), minutes(names::COAT_DRY_TO));
    assert!((fast / 6.431 - 1.0).abs() < 1e-3, "{fast} min");
    assert!((slow / 18.593 - 1.0).abs() < 3e-3, "{slow} min");
    assert!(found.estimated && codes(&found.outcome.answer).contains(&"remark-coat-estimate"));
    let third = found.coats[2];
    assert!((third.from.after.si() / 60.0 - 2.0 * fast).abs() < 1e-9);
    assert!((third.to.after.si() / 60.0 - 2.0 * slow).abs() < 1e-9);
    // The first wet scrub counts on the latest.
    let scrub = found.scrub.expect("a cure").after.si() / 60.0;
    assert!((scrub - (3.0 * slow + 48.0 * 60.0)).abs() < 1e-6);
}

#[test]
fn what_is_not_known_is_told_and_counts_as_worse() {
    let matte = after([pick(Shelf::Finish, "matte")]);
    let slow =
        |typed: &Typed| work(typed, Marks::POINT).outcome.answer.get(names::COAT_DRY_TO).expect("a time").si;
    let unknown = reduce(matte.clone(), write(Field::FinishSolids, ""));
    assert!((slow(&unknown) / slow(&matte) - 1.0 / 0.82).abs() < 1e-9, "all of it counts as water");
    assert!(codes(&work(&unknown, Marks::POINT).outcome.answer).contains(&"remark-coat-solids"));
    let fog = work(&reduce(matte, write(Field::Humidity, "100")), Marks::POINT);
    assert!(fog.coats.is_empty() && fog.scrub.is_none());
    assert!(codes(&fog.outcome.answer).contains(&"remark-never-dries"));
    let no_cure = told([write(Field::FinishCure, "")]);
    assert!(no_cure.scrub.is_none() && no_cure.coats.len() == 4);
    assert!(codes(&no_cure.outcome.answer).contains(&"remark-cure-unknown"));
    let half = told([write(Field::FinishCoats, "2.5")]);
    assert_eq!(half.outcome.at("finish-coats"), Some(&What::Whole));
    let swapped = told([write(Field::FinishPhLow, "9"), write(Field::FinishPhHigh, "8")]);
    assert_eq!(swapped.outcome.at("finish-ph-low"), Some(&What::LeastAboveMost));
    assert!(codes(&told([write(Field::FinishCoats, "5")]).outcome.answer).contains(&"remark-coats-many"));
    // A site without a finish says nothing and breaks nothing.
    let mut bare = Typed::default();
    bare.site.finishes.clear();
    assert!(work(&bare, Marks::POINT).coats.is_empty());
}

proptest! {
    /// Coats follow each other, the soonest never behind the latest, and a machine comes after all of them.
    #[test]
    fn the_schedule_runs_forward(
        coats in 1..21_u8, coverage in 500..4_000_u32, solids in 1..90_u8, humidity in 0..95_u8, air in 40..100_u8, cure in 0..200_u16,
    ) {
        let found = told([
            write(Field::FinishDry, ""),
            write(Field::FinishCoats, &coats.to_string()),
            write(Field::FinishCoverage, &coverage.to_string()),
            write(Field::FinishSolids, &solids.to_string()),
            write(Field::Humidity, &humidity.to_string()),
            write(Field::Air, &air.to_string()),
            write(Field::FinishCure, &cure.to_string()),
        ].into_iter().chain(first("2026-03-07", "18:30")));
        prop_assert_eq!(found.coats.len(), usize::from(coats));
        for two in found.coats.windows(2) {
            prop_assert!(two[0].from.after < two[1].from.after && two[0].to.after < two[1].to.after);
            prop_assert!(two[0].to.at <= two[1].to.at);
        }
        prop_assert!(found.coats.iter().all(|coat| coat.from.after <= coat.to.after && coat.from.at <= coat.to.at));
        let scrub = found.scrub.expect("a cure");
        prop_assert!(found.coats.iter().all(|coat| coat.to.after < scrub.after && coat.to.at <= scrub.at));
    }

    /// A longer dry time, a longer cure and one more coat never bring the machine sooner.
    #[test]
    fn waiting_longer_is_never_sooner(coats in 1..20_u8, dry in 60.0..1e5_f64, cure in 0.0..1e6_f64, more in 0.0..1e4_f64) {
        let n = f64::from(coats);
        let at = |n: f64, dry: f64, cure: f64| first_scrub(n, Duration::new(dry), Duration::new(cure));
        prop_assert!(at(n, dry + more, cure) >= at(n, dry, cure) && at(n, dry, cure + more) >= at(n, dry, cure));
        prop_assert!(at(n + 1.0, dry, cure) > at(n, dry, cure));
        prop_assert!(coat_start(n, Duration::new(dry)) < at(n, dry, cure));
    }
}
