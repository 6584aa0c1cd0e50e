//! What the author of a standard let pass stands in no way on Fill; what blocks does, whatever is written.

use super::{after, draft};
use brimline::answer::{Remark, Weight};
use brimline::form::action::{Line, Shelf};
use brimline::form::site::Act;
use brimline::form::site::proof::{BLOCKS, prove};
use brimline::form::{Action, Field, Typed, fill};
use brimline::number::Marks;
use brimline::site::{LeftOut, Override, Standard, Standing};
use brimline::words::Words;
use proptest::prelude::*;

const WHY: &str = "The maker of the machine confirmed it";
/// The machine that takes 6 fl oz at the most clashes with the 19.69 fl oz of 1 to 64 in 10 US gal.
const CLASH: &str = "remark-clash-machine";

fn remarks(typed: &Typed) -> Vec<Remark> {
    fill::work(typed, Marks::POINT).outcome.answer.remarks
}

fn weight(typed: &Typed, code: &str) -> Option<Weight> {
    remarks(typed).iter().find(|one| one.code == code).map(|one| one.weight)
}

/// A standard in force for vinyl with this reason to let the clash pass, asked about in the machine that clashes.
fn passed(reason: &str) -> Typed {
    let typed = draft("vinyl", "neutral", "1:64");
    let typed = after(typed, [Action::Text(Line::Override(CLASH), reason.into())]);
    let proved = prove(&typed, typed.standard().expect("a draft"), "2026-02-01", Marks::POINT).proved;
    let picks = [(Shelf::Machine, "self-driving"), (Shelf::Floor, "vinyl"), (Shelf::Product, "neutral")];
    let typed = after(typed, [Act::Publish { date: "2026-02-01".into(), proved }.action()]);
    after(typed, picks.map(|(shelf, id)| Action::Pick(shelf, id.into())))
}

#[test]
fn what_was_let_pass_is_one_line_with_who_and_why() {
    let typed = passed(WHY);
    assert_eq!(weight(&typed, CLASH), Some(Weight::Assumed));
    let all = remarks(&typed);
    let remark = all.iter().find(|one| one.code == CLASH).expect("the clash");
    let words = Words::of_fill();
    let line = words.remark(remark, typed.system);
    let title = words.remark_title(remark).expect("its heading");
    assert_eq!(line, format!("{title} – let pass by K. M., version 1: {WHY}"));
}

#[test]
fn nothing_passes_without_a_reason_a_standard_or_its_records() {
    assert_eq!(weight(&passed("x"), CLASH), Some(Weight::Warn));
    let typed = passed(WHY);
    // On another floor, with another product or before its day the standard does not govern.
    let other = after(typed.clone(), [Action::Pick(Shelf::Floor, "tile".into())]);
    assert_eq!(weight(&other, CLASH), Some(Weight::Warn));
    let before = after(typed.clone(), [Action::Today("2026-01-04".into())]);
    assert_eq!(weight(&before, CLASH), Some(Weight::Warn));
    // Its author knew the records as they were.
    let changed = after(typed, [Action::Write(Field::Most, "5".into())]);
    assert_eq!(weight(&changed, CLASH), Some(Weight::Warn));
}

#[test]
fn the_proof_still_finds_what_was_let_pass() {
    let typed = passed(WHY);
    let proof = prove(&typed, typed.standard().expect("the standard"), "2026-02-01", Marks::POINT);
    assert!(proof.findings.iter().any(|one| one.remark.code == CLASH && one.reason.as_deref() == Some(WHY)));
}

proptest! {
    /// A file may name anything as let pass: what blocks a standard stays as it is, and so does what of this fill alone
    /// stands in the way.
    #[test]
    fn an_override_never_lifts_a_block(machine in 0..3_usize, product in 0..64_usize, floor in 0..64_usize, before in 0..64_usize, read: bool) {
        let mut typed = Typed::default();
        let site = &typed.site;
        let product = site.products[product % site.products.len()].clone();
        let floor = site.floors[floor % site.floors.len()].id.clone();
        let before = site.products.get(before % (site.products.len() + 1)).map(|one| one.id.clone()).unwrap_or_default();
        typed.ask.machine.clone_from(&site.machines[machine].id);
        (typed.ask.floor, typed.ask.product, typed.ask.before, typed.ask.stop_read) = (floor.clone(), product.id.clone(), before, read);
        let plain = Standard {
            id: "s".into(), floor, product: product.id, dilution: product.label, standing: Standing::InForce, version: 1, author: "K. M.".into(),
            ..Standard::default()
        };
        let with = |overrides: Vec<Override>| {
            let mut typed = typed.clone();
            typed.site.standards = vec![Standard { overrides, ..plain.clone() }];
            remarks(&typed)
        };
        let was = with(Vec::new());
        let all = was.iter().map(|one| one.code).chain(BLOCKS);
        let now = with(all.map(|code| Override { finding: code.into(), reason: WHY.into() }).collect());
        prop_assert_eq!(was.len(), now.len(), "nothing is lost");
        for (was, now) in was.iter().zip(&now) {
            let stays = BLOCKS.contains(&was.code) || was.weight == Weight::Stop;
            prop_assert!(!stays || was == now, "{}", was.code);
            prop_assert_eq!(was.code, now.code);
        }
    }
}

#[test]
fn a_standard_that_leaves_the_machine_out_lets_nothing_pass() {
    let mut typed = passed(WHY);
    typed.site.standards[0].leaves_out =
        vec![LeftOut { machine: "self-driving".into(), reason: "It foams there".into() }];
    assert_eq!(weight(&typed, CLASH), Some(Weight::Warn));
    assert!(remarks(&typed).iter().all(|one| one.facts.iter().all(|(name, _)| *name != "let-pass")));
}

/// The wall chart prints its reason beside a warning on the same terms as Fill.
#[test]
fn the_chart_has_the_reason_on_the_terms_of_fill() {
    let reason = |typed: &Typed, code| {
        fill::let_pass(typed, typed.site.standards.first().expect("the standard"), code).map(str::to_owned)
    };
    let typed = passed(&format!(" {WHY} "));
    assert_eq!(reason(&typed, CLASH).as_deref(), Some(WHY));
    assert_eq!(reason(&typed, "remark-floor-soft"), None);
    assert_eq!(reason(&passed("x"), CLASH), None);
    let mut blocked = typed.clone();
    blocked.site.standards[0].overrides[0].finding = BLOCKS[0].into();
    assert_eq!(reason(&blocked, BLOCKS[0]), None);
    let changed = after(typed, [Action::Write(Field::Most, "5".into())]);
    assert_eq!(reason(&changed, CLASH), None);
}
