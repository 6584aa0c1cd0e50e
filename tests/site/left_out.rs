//! Machines that a standard is not for: no proof, no chart and no device gives them a dose by it.
//!
//! Figures by hand: 10 US gal at 1 to 64 take 1280 fl oz / 65 = 19.69 fl oz, by definition of the gallon (NIST SP 811).

use super::{after, draft, published};
use brimline::answer::Weight;
use brimline::form::action::{Line, Shelf};
use brimline::form::site::carried::{carry, open};
use brimline::form::site::chart::{Why, chart};
use brimline::form::site::in_force::held_to_standards;
use brimline::form::site::proof::prove;
use brimline::form::site::references::referrers;
use brimline::form::site::{Act, changed_since, may_go};
use brimline::form::station::{Act as Do, Done, Method, Mishap, others, reading, rescue, top_up};
use brimline::form::{Action, Field, Typed, fill, names};
use brimline::number::Marks;
use proptest::prelude::*;

const LEFT_OUT: &str = "remark-standard-leaves-out";
const WHY: &str = "It leaves streaks at the doors";

/// A draft for vinyl that is not for this machine.
fn leaving(machine: &str, why: &str) -> Typed {
    after(
        draft("vinyl", "neutral", "1:64"),
        [Act::LeaveOut(machine.into(), true).action(), Action::Text(Line::LeftOut(0), why.into())],
    )
}

fn blocks(typed: &Typed) -> Vec<&'static str> {
    let proof = prove(typed, typed.standard().expect("a draft"), "2026-02-01", Marks::POINT);
    proof.findings.iter().filter(|one| one.blocks).map(|one| one.remark.code).collect()
}

/// The remark that leaves the machine out, and whether anything stands where the amount would stand.
fn told(typed: &Typed) -> (Option<Weight>, bool) {
    let answer = fill::work(typed, Marks::POINT).outcome.answer;
    (answer.remarks.iter().find(|one| one.code == LEFT_OUT).map(|one| one.weight), answer.stopped())
}

#[test]
fn the_proof_passes_over_a_machine_that_is_left_out() {
    // The machine that takes 6 fl oz at the most clashes with 19.69 fl oz: the only clash there is.
    let clashes = |typed: &Typed| {
        let proof = prove(typed, typed.standard().expect("a draft"), "2026-02-01", Marks::POINT);
        proof.findings.iter().any(|one| one.remark.code == "remark-clash-machine")
    };
    let typed = leaving("self-driving", WHY);
    assert!(clashes(&draft("vinyl", "neutral", "1:64")) && !clashes(&typed));
    let proof = prove(&typed, typed.standard().expect("a draft"), "2026-02-01", Marks::POINT);
    assert_eq!(
        proof.machines.iter().map(|one| one.id.as_str()).collect::<Vec<_>>(),
        ["walk-behind", "ride-on"]
    );
    // A change of that machine is none of what the standard was checked with.
    let typed = after(typed, [Act::Publish { date: "2026-02-01".into(), proved: proof.proved }.action()]);
    let other = after(
        typed,
        [Action::Pick(Shelf::Machine, "self-driving".into()), Action::Write(Field::Tank, "28".into())],
    );
    assert!(!changed_since(&other, other.standard().expect("the standard")));
}

#[test]
fn a_machine_is_left_out_with_a_reason_only() {
    for why in ["", "  ", "x", "ok"] {
        assert!(blocks(&leaving("self-driving", why)).contains(&"finding-left-out-why"), "{why:?}");
    }
    assert!(!blocks(&leaving("self-driving", WHY)).contains(&"finding-left-out-why"));
    let back = after(leaving("self-driving", ""), [Act::LeaveOut("self-driving".into(), false).action()]);
    assert_eq!(back.site.standards, draft("vinyl", "neutral", "1:64").site.standards);
    let none = ["walk-behind", "self-driving", "ride-on"].map(|id| Act::LeaveOut(id.into(), true).action());
    assert!(blocks(&after(draft("vinyl", "neutral", "1:64"), none)).contains(&"finding-no-machine"));
}

#[test]
fn the_chart_says_why_in_the_place_of_every_dose() {
    let typed = leaving("walk-behind", WHY);
    let chart = chart(&typed, typed.standard().expect("a draft"), "jug", Marks::POINT).expect("a chart");
    assert_eq!(chart.rows[0].barred(), Some(&Why::LeftOut(WHY.into())));
    assert!(chart.rows[0].cells.iter().all(|cell| cell.dose.is_err()) && chart.rows[0].setting.is_err());
    assert!(chart.rows[2].barred().is_none());
}

#[test]
fn fill_warns_and_a_device_set_to_its_standards_gives_no_amount() {
    let mut typed = published(leaving("walk-behind", WHY), "2026-02-01");
    typed.ask.machine = "walk-behind".into();
    typed.ask.floor = "vinyl".into();
    typed.ask.product = "neutral".into();
    assert_eq!(told(&typed), (Some(Weight::Warn), false));
    // It does not govern there: neither its dilution nor its name stands beside the amount.
    assert!(typed.governing().is_none() && typed.standard_here().is_some());
    let held = held_to_standards(&typed, Marks::POINT);
    assert_eq!(told(&held), (Some(Weight::Stop), true));
    let read = held_to_standards(&after(typed.clone(), [Action::StopRead]), Marks::POINT);
    assert_eq!(told(&read), (Some(Weight::Stop), true), "reading makes no amount");
    let other = after(typed, [Action::Pick(Shelf::Machine, "ride-on".into())]);
    assert_eq!(told(&held_to_standards(&other, Marks::POINT)), (None, false));
    // An answer that was saved there and is opened elsewhere is held by nothing.
    assert!(!after(other, [Action::Replace(Box::new(held))]).ask.held);
}

/// Every job of the fill station says it, and where nothing but standards is gone by there is one thing to do, whatever
/// was typed.
#[test]
fn every_job_says_it_and_a_device_set_to_its_standards_gives_no_step() {
    let typed = published(leaving("walk-behind", WHY), "2026-02-01");
    let pick = |shelf: Shelf, id: &str| Action::Pick(shelf, id.to_owned());
    let write = |field: Field, text: &str| Action::Write(field, text.to_owned());
    let typed = after(
        typed,
        [
            pick(Shelf::Machine, "walk-behind"),
            pick(Shelf::Floor, "vinyl"),
            pick(Shelf::Product, "neutral"),
            Action::Method(Method::Refractometer),
            write(Field::Left, "50"),
            write(Field::PutIn, "40"),
            write(Field::Brix, "2"),
            write(Field::PerBrix, "0.5"),
        ],
    );
    let weight = |done: &Done| {
        done.outcome.answer.remarks.iter().find(|one| one.code == LEFT_OUT).map(|one| one.weight)
    };
    let jobs =
        |typed: &Typed| [top_up::work, rescue::work, reading::work].map(|work| work(typed, Marks::POINT));
    for done in jobs(&typed) {
        assert_eq!(weight(&done), Some(Weight::Warn));
        assert!(!done.acts.contains(&Do::OtherMachine));
    }
    let held = held_to_standards(&typed, Marks::POINT);
    let [top, right, read] = jobs(&held);
    for done in [&top, &right] {
        assert_eq!((weight(done), done.acts.as_slice()), (Some(Weight::Stop), &[Do::OtherMachine][..]));
    }
    assert_eq!(
        others(&held).iter().map(|one| one.id.as_str()).collect::<Vec<_>>(),
        ["self-driving", "ride-on"]
    );
    // It may be read, and what was read asks for nothing to be put right: 2 degrees of half a per cent make one.
    assert!((read.outcome.answer.get(names::STATION_STRENGTH).expect("a strength").si - 0.01).abs() < 1e-15);
    assert_eq!((weight(&read), read.acts.as_slice()), (Some(Weight::Warn), &[Do::OtherMachine][..]));
    assert!(read.outcome.answer.remarks.iter().all(|one| !one.code.starts_with("remark-reading-")));
    // Nothing that is missing or mistyped hides it.
    let typed = after(typed, [write(Field::Left, "lots"), write(Field::Brix, "")]);
    for done in jobs(&held_to_standards(&typed, Marks::POINT)) {
        assert!(weight(&done).is_some() && done.acts == [Do::OtherMachine]);
    }
    // Two products in one tank come first: drained and rinsed where they may meet, kept away from where nobody knows.
    let mixed = [Action::Mishap(Mishap::WrongProduct), Action::Other("vinegar".into())];
    let mut held = held_to_standards(&after(typed, mixed), Marks::POINT);
    let done = rescue::work(&held, Marks::POINT);
    assert_eq!(weight(&done), Some(Weight::Warn));
    assert_eq!(done.acts, [Do::DrainAll, Do::Rinse, Do::OtherMachine]);
    held.site.products.iter_mut().for_each(|one| one.families.clear());
    let done = rescue::work(&held, Marks::POINT);
    assert_eq!((weight(&done), done.acts.as_slice()), (Some(Weight::Warn), &[Do::KeepAway][..]));
}

#[test]
fn what_a_code_would_carry_keeps_the_machine_left_out() {
    let typed = published(leaving("walk-behind", WHY), "2026-02-01");
    let standard = typed.standard().expect("the standard");
    let there = open(carry(&typed, standard, "walk-behind", "jug", 100));
    assert_eq!(told(&held_to_standards(&there, Marks::POINT)), (Some(Weight::Stop), true));
    assert!(open(carry(&typed, standard, "ride-on", "jug", 100)).site.standards[0].leaves_out.is_empty());
}

#[test]
fn a_machine_that_is_left_out_is_referred_to() {
    let typed = leaving("self-driving", WHY);
    assert!(
        referrers(&typed.site, Shelf::Machine, "self-driving").iter().any(|one| one.shelf == Shelf::Standard)
    );
    assert!(!may_go(&typed, Shelf::Machine, "self-driving"));
}

#[test]
fn the_shift_says_where_a_standard_leaves_its_machine_out() {
    let mut typed = published(leaving("walk-behind", WHY), "2026-02-01");
    for area in &mut typed.site.areas {
        (area.machine, area.product, area.floor) = ("walk-behind".into(), "neutral".into(), "vinyl".into());
    }
    let codes = |typed: &Typed| {
        let remarks = brimline::form::shift::work(typed, Marks::POINT).outcome.answer.remarks;
        remarks.iter().map(|one| one.code).collect::<Vec<_>>()
    };
    assert!(codes(&typed).contains(&"remark-shift-left-out"));
    for area in &mut typed.site.areas {
        area.machine = "ride-on".into();
    }
    assert!(!codes(&typed).contains(&"remark-shift-left-out"));
}

proptest! {
    /// Whatever is asked on a device that is set to its standards, a machine that the standard leaves out has nothing
    /// but the reason where its amount would stand.
    #[test]
    fn a_machine_that_is_left_out_never_gets_a_dose(
        machine in 0..3_usize, out in prop::sample::subsequence(vec![0_usize, 1, 2], 0..=2),
        measure in 0..16_usize, level in 1..=100_u32, read: bool, dilution in 40..100_u32,
    ) {
        let ids = ["walk-behind", "self-driving", "ride-on"];
        let label = |typed: &mut Typed| {
            typed.site.products.iter_mut().filter(|one| one.id == "neutral").for_each(|one| one.label = "1:32 to 1:128".into());
        };
        let mut typed = draft("vinyl", "neutral", &format!("1:{dilution}"));
        label(&mut typed);
        let acts = out.iter().map(|index| Act::LeaveOut(ids[*index].into(), true).action());
        let mut typed = published(after(typed, acts), "2026-02-01");
        let measures = typed.site.measures.len();
        typed.ask.measure.clone_from(&typed.site.measures[measure % measures].id);
        ids[machine].clone_into(&mut typed.ask.machine);
        typed.ask.level = brimline::site::Entry::new(level.to_string(), "percent");
        typed.ask.stop_read = read;
        let held = held_to_standards(&typed, Marks::POINT);
        let answer = fill::work(&held, Marks::POINT).outcome.answer;
        if out.contains(&machine) {
            prop_assert!(answer.stopped() || answer.get(names::FILL_TOTAL).is_none());
        } else {
            prop_assert!(answer.remarks.iter().all(|one| one.code != LEFT_OUT));
        }
        let chart = chart(&typed, typed.standard().expect("the standard"), &held.ask.measure, Marks::POINT).expect("a chart");
        prop_assert_eq!(matches!(chart.rows[machine].barred(), Some(Why::LeftOut(_))), out.contains(&machine));
    }
}
