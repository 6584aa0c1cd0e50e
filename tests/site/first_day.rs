//! A standard holds from its first day on, and the earlier one until the day before.

use super::{after, draft, published};
use brimline::form::action::{Line, StandardLine};
use brimline::form::site::Act;
use brimline::form::site::in_force::{Phase, held_to_standards, phase};
use brimline::form::site::proof::prove;
use brimline::form::{Action, Typed, fill};
use brimline::number::Marks;
use brimline::site::Standing;
use brimline::trade::calendar::Date;
use proptest::prelude::*;

/// The same question on another day.
fn on(typed: &Typed, day: &str) -> Typed {
    after(typed.clone(), [Action::Today(day.into())])
}

/// The next version with this dilution and first day, published on a day.
fn next(typed: Typed, dilution: &str, first: &str, date: &str) -> Typed {
    let line = |line, text: &str| Action::Text(Line::Rule(line), text.into());
    let written = [
        Act::Revise.action(),
        line(StandardLine::Dilution, dilution),
        line(StandardLine::Effective, first),
        line(StandardLine::Reason, "More soil in winter"),
    ];
    published(after(typed, written), date)
}

fn phases(typed: &Typed, day: &str) -> Vec<Phase> {
    let there = on(typed, day);
    there.site.standards.iter().map(|one| phase(&there, one)).collect()
}

/// The dilution that governs on vinyl.
fn governs(typed: &Typed, day: &str) -> String {
    on(typed, day).in_force("vinyl").map(|one| one.dilution.clone()).unwrap_or_default()
}

/// 1:64 from 5 January, 1:80 from 1 March, both published in January.
fn two() -> Typed {
    next(published(draft("vinyl", "neutral", "1:64"), "2026-01-06"), "1:80", "2026-3-1", "2026-01-20")
}

#[test]
fn a_later_first_day_waits_and_the_earlier_standard_stays() {
    let typed = two();
    assert_eq!(typed.site.standards[1].effective, "2026-03-01", "written out, as ISO 8601 does");
    assert_eq!(phases(&typed, "2026-02-28"), [Phase::InForce, Phase::Waits]);
    assert_eq!(phases(&typed, "2026-03-01"), [Phase::Replaced, Phase::InForce]);
    assert_eq!([governs(&typed, "2026-02-28"), governs(&typed, "2026-03-01")], ["1:64", "1:80"]);
    // The first one has a day of its own.
    assert_eq!(governs(&typed, "2026-01-04"), "");
    assert!(held_to_standards(&on(&typed, "2026-01-04"), Marks::POINT).site.floors.is_empty());
    for (day, dilution) in [("2026-02-28", "1:64"), ("2026-03-01", "1:80")] {
        let held = held_to_standards(&on(&typed, day), Marks::POINT);
        assert_eq!(held.site.standards.len(), 1);
        assert_eq!(held.own_rule().0, dilution, "a device on {day}");
    }
}

#[test]
fn what_is_published_with_a_day_that_has_come_holds_at_once() {
    let typed = next(two(), "1:100", "2026-02-01", "2026-02-10");
    // It takes the place of the one in force, and of the one that would have begun after it.
    let standing: Vec<Standing> = typed.site.standards.iter().map(|one| one.standing).collect();
    assert_eq!(standing, [Standing::Replaced, Standing::Replaced, Standing::InForce]);
    assert_eq!([governs(&typed, "2026-02-10"), governs(&typed, "2026-04-01")], ["1:100", "1:100"]);
    assert_eq!(typed.site.standards[2].replaces, typed.site.standards[1].id);
    assert_eq!(typed.site.standards.iter().map(|one| one.version).collect::<Vec<_>>(), [1, 2, 3]);
}

#[test]
fn whoever_publishes_is_told_what_would_never_begin() {
    let revised = |first: &str| {
        let line = Action::Text(Line::Rule(StandardLine::Effective), first.into());
        let typed = after(two(), [Act::Revise.action(), line]);
        let proof = prove(&typed, typed.standard().expect("a draft"), "2026-02-10", Marks::POINT);
        proof.findings.iter().any(|one| one.remark.code == "finding-never" && !one.blocks)
    };
    assert!(revised("2026-02-15") && revised("2026-03-01"));
    assert!(!revised("2026-03-02"));
}

#[test]
fn another_day_asks_again_whether_a_warning_was_read() {
    let typed = on(&two(), "2026-02-28");
    let read = after(typed, [Action::StopRead]);
    assert!(on(&read, "2026-02-28").ask.stop_read);
    assert!(!on(&read, "2026-03-01").ask.stop_read);
}

#[test]
fn a_saved_answer_goes_by_the_day_that_it_was_asked_on() {
    use brimline::form::saved::{View, recompute, save};
    for day in ["2026-02-28", "2026-03-01"] {
        let mut typed = on(&two(), day);
        (typed.ask.floor, typed.ask.product) = ("vinyl".into(), "neutral".into());
        assert!(recompute(&save(View::Fill, &typed, Marks::POINT)).is_ok());
    }
}

proptest! {
    /// Whatever is published in whatever order: on no day a standard governs before its first day, at most one is in
    /// force a floor, and it is the one that Fill names.
    #[test]
    fn before_its_day_a_standard_never_governs(
        steps in prop::collection::vec((0..40_i64, 0..40_i64), 1..6), day in 0..50_i64,
    ) {
        // Days from 2026-01-01 on.
        let text = |day: i64| Date::from_days(20_454 + day).expect("a day").to_string();
        let mut typed = Typed::default();
        for (count, (first, date)) in steps.iter().enumerate() {
            let dilution = format!("1:{}", 64 + count);
            let begun = Act::Draft { floor: "vinyl".into(), product: "neutral".into(), dilution }.action();
            let line = Action::Text(Line::Rule(StandardLine::Effective), text(*first));
            typed = published(after(typed, [begun, line]), &text(*date));
        }
        let today = text(day);
        let mut there = on(&typed, &today);
        (there.ask.floor, there.ask.product) = ("vinyl".into(), "neutral".into());
        let current: Vec<_> = there.site.standards.iter().filter(|one| phase(&there, one) == Phase::InForce).collect();
        prop_assert!(current.len() <= 1);
        for one in &there.site.standards {
            let waits = one.first_day().expect("a day") > Date::read(&today).expect("a day");
            prop_assert!(!waits || matches!(phase(&there, one), Phase::Waits | Phase::Replaced));
            prop_assert!(!waits || there.governing().is_none_or(|now| now.id != one.id));
        }
        let named = fill::work(&there, Marks::POINT).outcome.answer.remarks;
        prop_assert_eq!(named.iter().any(|one| one.code == "remark-standard-in-force"), !current.is_empty());
        let held = held_to_standards(&there, Marks::POINT);
        prop_assert_eq!(held.site.floors.len(), current.len());
    }
}
