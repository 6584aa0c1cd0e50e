//! What a product is made of, its printed pH and its label: the worse of all counts.

use brimline::chemistry::cas::check;
use brimline::chemistry::family::{Family, known_parts};
use brimline::chemistry::floor::FloorVerdict;
use brimline::chemistry::ghs::SignalWord;
use brimline::chemistry::ghs::mixture::{Endpoint, Kind, Verdict};
use brimline::chemistry::pairs::{Meeting, Severity, meet, never_with};
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::cautions::container::{Holds, label};
use brimline::form::cautions::leaving::{Leaving, leaving};
use brimline::form::cautions::worse::{beyond_label, panel_by_parts};
use brimline::form::cautions::{
    self, UsePh, ground, mixing, remarks, remarks_by_estimate, residue, screening,
};
use brimline::form::{Action, Field, Typed};
use brimline::number::Marks;

const POINT: Marks = Marks::POINT;

fn after(actions: impl IntoIterator<Item = Action>) -> Typed {
    actions.into_iter().fold(Typed::default(), reduce)
}

/// The neutral cleaner of the demo with a part.
fn neutral_with(cas: &str, percent: &str, codes: &str) -> Vec<Action> {
    vec![
        Action::Pick(Shelf::Product, "neutral".into()),
        Action::AddPart,
        Action::Text(Line::PartName(0), "A part".into()),
        Action::Text(Line::PartCas(0), cas.into()),
        Action::Write(Field::PartHigh(0), percent.into()),
        Action::Text(Line::PartCodes(0), codes.into()),
    ]
}

fn on(floor: &str) -> Action {
    Action::Pick(Shelf::Floor, floor.into())
}

fn codes(typed: &Typed) -> Vec<&'static str> {
    remarks(typed, POINT).iter().map(|one| one.code).collect()
}

/// CAS, Check Digit Verification of CAS Registry Numbers; where both tables have a number, acids are acids.
#[test]
fn numbers_of_the_table_are_numbers() {
    for (family, number) in known_parts() {
        let cas = check(number).unwrap_or_else(|| panic!("{number}"));
        match Kind::of(cas) {
            Kind::Acid => assert!(family.is_a(Family::Acid) || family == Family::Oxidiser, "{number}"),
            Kind::Base => assert!(family.is_a(Family::Alkali) || family == Family::Ammonia, "{number}"),
            Kind::Additive => assert!(matches!(family, Family::Alcohol | Family::Solvent), "{number}"),
            _ => (),
        }
        assert_eq!(known_parts().filter(|(_, other)| *other == number).count(), 1, "{number} stands once");
    }
}

/// Bleach and acid make chlorine: CDC, MMWR 40(36):619, 1991.
#[test]
fn hypochlorite_among_the_parts_is_bleach_everywhere() {
    let mut actions = neutral_with("7681-52-9", "3", "H314");
    actions.push(Action::Before("vinegar".into()));
    let typed = after(actions);
    let said = codes(&typed);
    assert!(said.contains(&"remark-before-never") && said.contains(&"remark-not-neutral"), "{said:?}");
    let products = &typed.site.products;
    let at = |id: &str| products.iter().position(|one| one.id == id).expect("a product");
    let Meeting::Never(pairs) = &mixing::matrix(&typed)[at("neutral")][at("vinegar")] else {
        panic!("never")
    };
    assert_eq!(pairs[0].severity, Severity::Gas);
    assert!(
        cautions::panel(&products[at("neutral")]).never.iter().any(|pair| pair.severity == Severity::Gas)
    );
    assert!(products[at("neutral")].disinfects());
}

/// GSA, cleaning terrazzo: no acids, no alkalis. What strips finish: common practice, no source.
#[test]
fn a_part_refuses_a_floor_that_its_family_harms() {
    for (cas, floor) in [
        ("77-92-9", "terrazzo"),
        ("497-19-8", "terrazzo"),
        ("1310-73-2", "vinyl"),
        ("5989-27-5", "vinyl"),
        ("111-76-2", "vinyl"),
        ("67-63-0", "vinyl"),
    ] {
        let mut actions = neutral_with(cas, "5", "");
        actions.push(on(floor));
        assert!(codes(&after(actions)).contains(&"remark-floor-does-not-fit"), "{cas} on {floor}");
    }
    // A part that is found clears nothing of which no family was ticked.
    let mut actions = neutral_with("7722-84-1", "5", "");
    actions.extend([Action::Family(Family::Neutral, false), on("vinyl")]);
    assert!(codes(&after(actions)).contains(&"remark-floor-unknown"));
}

/// 3 % caustic soda at 1 to 64 has a pH above 12; its label prints 7.
#[test]
fn a_printed_ph_that_the_parts_deny_does_not_clear() {
    let mut actions = neutral_with("1310-73-2", "3", "H314");
    actions.extend([Action::Write(Field::PartLow(0), "3".into()), Action::Listed(true), on("linoleum")]);
    let typed = after(actions);
    let ph = UsePh::of(&typed, POINT);
    assert!(ph.printed && ph.against.expect("both count").low > 11.0, "{ph:?}");
    let floor = ground(&typed.site, typed.floor().expect("a floor"), POINT);
    let verdict = ph.verdict(typed.product().expect("a product"), floor);
    let FloorVerdict::DoesNotFit { reasons } = verdict else { panic!("{verdict:?}") };
    assert!(reasons.iter().any(|one| one.key() == "floor-reason-too-alkaline"));
    assert!(remarks_by_estimate(&typed, POINT).iter().any(|one| one.code == "remark-ph-differs"));
    // The extreme pH of the estimate classifies: CLP, Annex I, 3.2.3.1.2.
    let skin = screening::work(&typed, POINT).expect("parts");
    assert!(
        matches!(skin.of(Endpoint::Skin).expect("skin").verdict(), Verdict::Class(class) if class.category == 1)
    );
}

/// Corrosive from 5 % on: Hazardous Products Regulations (Canada), 8.2.11(2)(a).
#[test]
fn no_label_is_blank_where_the_parts_are_not() {
    let typed = after(neutral_with("1310-73-2", "10", "H314"));
    assert!(beyond_label(&typed, POINT).iter().any(|one| one.code == "H314"));
    assert_eq!(panel_by_parts(&typed, POINT).expect("a product").elements.signal, SignalWord::Danger);
    for holds in Holds::ALL {
        let typed = reduce(typed.clone(), Action::Holds(*holds));
        let label = label(&typed, POINT).expect("a product");
        assert_eq!(label.elements.signal, SignalWord::Danger);
        assert!(label.elements.statements.iter().any(|one| one.code == "H314") && label.worse);
    }
}

#[test]
fn a_label_that_its_parts_deny_or_that_hides_one_clears_nothing() {
    let rules = |typed: &Typed| -> Vec<&'static str> {
        let found = screening::work(typed, POINT).expect("parts");
        found.findings.iter().map(|one| one.rule.code).collect()
    };
    let verdict = |typed: &Typed, endpoint| {
        screening::work(typed, POINT).expect("parts").of(endpoint).expect("a finding").verdict()
    };
    // Nobody knows what it does.
    let nameless = after(neutral_with("", "90", ""));
    assert!(!rules(&nameless).contains(&"mixture-label"));
    assert_eq!(verdict(&nameless, Endpoint::Skin), Verdict::Unknown);
    // Its own codes are over the limits: of skin, and of water life.
    let mut denied = neutral_with("141-43-5", "60", "H314 H410");
    denied.push(Action::Text(Line::Label, "1:128".into()));
    let denied = after(denied);
    for endpoint in [Endpoint::Skin, Endpoint::WaterAcute, Endpoint::WaterChronic] {
        assert!(!matches!(verdict(&denied, endpoint), Verdict::NotClassified), "{endpoint:?}");
    }
}

/// What was in the tank is told of one machine.
#[test]
fn what_was_in_the_tank_is_forgotten_with_the_machine() {
    let unknown = after([Action::Before(mixing::NOT_KNOWN.into())]);
    assert!(codes(&unknown).contains(&"remark-before-not-known"));
    let rinsed = reduce(unknown.clone(), Action::Before(mixing::RINSED.into()));
    assert!(!codes(&rinsed).iter().any(|code| code.starts_with("remark-before")));
    let other = unknown.site.machines.iter().find(|one| one.id != unknown.ask.machine).expect("another");
    let changed = reduce(unknown.clone(), Action::Pick(Shelf::Machine, other.id.clone()));
    assert_eq!(changed.ask.before, "");
    let kept = reduce(unknown.clone(), Action::Replace(Box::new(unknown.clone())));
    assert_eq!(kept.ask.before, mixing::NOT_KNOWN);
}

/// The band at the crossing is at the edge of the window: pH 7 for marble (common practice, no source).
#[test]
fn the_dilution_at_which_the_estimate_leaves_the_window() {
    let vinegar = after([Action::Pick(Shelf::Product, "vinegar".into()), on("marble")]);
    let window = ground(&vinegar.site, vinegar.floor().expect("a floor"), POINT).window().expect("a window");
    let Some(Leaving::From { may, surely: Some(surely), acid }) = leaving(&vinegar, window, POINT) else {
        panic!("it leaves")
    };
    assert!(acid && may <= surely);
    // Fill at that dilution gives a band with its end at the edge.
    let at = |parts: f64| {
        let label = Action::Text(Line::Label, format!("1:{parts:.3}"));
        cautions::ph::work(&reduce(vinegar.clone(), label), POINT).band.expect("a band")
    };
    assert!((at(may.parts_of_water()).low - window.low).abs() < 0.02);
    assert!((at(surely.parts_of_water()).high - window.low).abs() < 0.02);
    let degreaser = after([Action::Pick(Shelf::Product, "degreaser".into()), on("marble")]);
    assert!(matches!(leaving(&degreaser, window, POINT), Some(Leaving::From { acid: false, .. })));
    assert_eq!(leaving(&Typed::default(), window, POINT), None);
}

/// "1 oz/gal" may count by the gallon of water or of solution: until one reading is chosen there is no strength.
#[test]
fn no_label_and_no_residue_without_a_strength() {
    let unread =
        after([Action::Text(Line::Label, "as you like".into()), Action::Write(Field::Solids, "10".into())]);
    assert!(!label(&unread, POINT).expect("a product").strength);
    assert_eq!(residue::missing(&unread, POINT), "residue-no-strength");
    let concentrate = reduce(unread, Action::Holds(Holds::Concentrate));
    assert!(label(&concentrate, POINT).expect("a product").strength);
    assert_eq!(residue::missing(&Typed::default(), POINT), "residue-unknown");
    let heavy = after([Action::Write(Field::Solids, "110".into())]);
    assert!(
        residue::work(&heavy, POINT).answer.remarks.iter().any(|one| one.code == "remark-residue-solids")
    );
}

/// 40 CFR 265, Appendix V, groups 1-A and 1-B, parts no strong from weak; from memory.
#[test]
fn acid_meets_strong_alkali_and_strong_acid_meets_alkali() {
    for (a, b) in [
        (Family::Acid, Family::StrongAlkali),
        (Family::StrongAcid, Family::Alkali),
        (Family::StrongAcid, Family::StrongAlkali),
    ] {
        let Meeting::Never(pairs) = meet(&[a], &[b]) else { panic!("{a:?} {b:?}") };
        assert!(pairs.iter().all(|pair| pair.severity == Severity::Harms));
    }
    assert_eq!(meet(&[Family::Acid], &[Family::Alkali]), Meeting::NoPairListed);
    // Each side is told once.
    assert_eq!(
        never_with(&[Family::StrongAlkali])
            .iter()
            .filter(|pair| pair.other_than(&[Family::StrongAlkali]) == Family::StrongAcid)
            .count(),
        1
    );
}
