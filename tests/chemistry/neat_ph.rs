//! The pH of the concentrate and the acid or alkali reserve: on floors, on the label, in the screening.

use brimline::chemistry::floor::{PhRange, Reason};
use brimline::chemistry::ghs::mixture::{Doubt, Endpoint, Finding, Mixture, Reserve, Rest, Verdict, screen};
use brimline::chemistry::ghs::{Knowledge, SignalWord};
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::cautions::floors::{Fit, all};
use brimline::form::cautions::{by_danger, panel, ph_is_wrong, remarks, screening};
use brimline::form::{Action, Typed};
use brimline::number::Marks;
use brimline::units::MassFraction;

fn after(actions: impl IntoIterator<Item = Action>) -> Typed {
    actions.into_iter().fold(Typed::default(), reduce)
}

fn pick(id: &str) -> Action {
    Action::Pick(Shelf::Product, id.into())
}

fn neat(ph: &str) -> Action {
    Action::Text(Line::PhNeat, ph.into())
}

/// The neutral product of the demo, whose maker prints 7 for its use solution; finished vinyl bears 6 to 9
/// (common practice, no source).
#[test]
fn the_printed_ph_of_the_concentrate_decides_whether_only_the_dilution_fits() {
    let fit = |ph: &str| {
        let typed = after([pick("neutral"), neat(ph)]);
        let floor = typed.site.floors.iter().find(|one| one.id == "vinyl").expect("a floor");
        all(&typed, Marks::POINT)[0]
            .fit(&typed.site.products[0], brimline::form::cautions::ground(&typed.site, floor, Marks::POINT))
    };
    assert_eq!(fit("7.5"), Fit::Fits);
    assert!(
        matches!(fit("10.5"), Fit::OnlyDiluted { ref reasons, .. } if matches!(reasons[..], [Reason::TooAlkaline(_)]))
    );
    for unknown in ["", "about 7", "17"] {
        assert!(
            matches!(fit(unknown), Fit::OnlyDiluted { ref reasons, .. } if reasons.is_empty()),
            "{unknown}"
        );
    }
    assert!(ph_is_wrong("17", Marks::POINT) && !ph_is_wrong(" ", Marks::POINT));
}

/// Extreme pH: Hazardous Products Regulations (Canada), SOR/2015-17, 8.2.5; CLP, Annex I, 3.2.3.1.2.
#[test]
fn an_extreme_ph_that_no_code_explains_never_reassures() {
    let warned = |actions: &[Action]| {
        let typed = after([pick("neutral")].into_iter().chain(actions.iter().cloned()));
        let told = remarks(&typed, Marks::POINT).iter().any(|one| one.code == "remark-extreme-ph");
        let partial = panel(typed.product().expect("a product")).knowledge == Knowledge::Partial;
        assert_eq!(told, partial, "what is told is treated as unknown, too");
        told
    };
    assert!(!warned(&[neat("11.4")]) && !warned(&[neat("2.1")]));
    assert!(warned(&[neat("11.5")]) && warned(&[neat("2")]) && warned(&[neat("13,5")]));
    assert!(warned(&[neat("13"), Action::Reserve(Reserve::Large)]));
    assert!(!warned(&[neat("13"), Action::Reserve(Reserve::Small)]));
    let labelled = [neat("13"), Action::Text(Line::Codes, "H314".into()), Action::Signal(SignalWord::Danger)];
    assert!(!warned(&labelled));
}

fn skin(typed: &Typed) -> Finding {
    screening::work(typed, Marks::POINT).expect("parts").of(Endpoint::Skin).expect("a finding").clone()
}

/// Water brings a mild concentrate only nearer to its own pH; an extreme one may stay extreme.
#[test]
fn the_concentrate_speaks_for_a_use_solution_whose_ph_is_unknown() {
    // A part that no table knows: nothing can be estimated.
    let unknown = [pick("degreaser"), Action::Text(Line::PartCas(0), "107-07-3".into())];
    let doubts = |ph: &str| skin(&after(unknown.iter().cloned().chain([neat(ph)]))).doubts;
    assert!(doubts("").contains(&Doubt::Ph));
    assert!(doubts("13.5").contains(&Doubt::Ph));
    assert!(!doubts("11").contains(&Doubt::Ph));
    // Nothing listed shifts a pH, and yet the concentrate is extreme: something does.
    let mixture = |ph: f64| Mixture {
        rest: Rest::Harmless,
        share: MassFraction::new(0.1),
        ph_of_concentrate: Some(PhRange { low: ph, high: ph }),
        ..Mixture::default()
    };
    let verdict = |ph| screen(&mixture(ph)).of(Endpoint::Skin).expect("a finding").verdict();
    assert_eq!((verdict(7.0), verdict(12.5)), (Verdict::NotClassified, Verdict::Unknown));
}

/// The reserve lifts the extreme pH rule alone: what the ingredients and the label say stays.
#[test]
fn a_small_reserve_lifts_the_ph_rule_and_clears_nothing_else() {
    let with = |reserve| skin(&after([pick("degreaser"), Action::Reserve(reserve)]));
    for counts in [Reserve::Unknown, Reserve::Large] {
        assert_eq!(with(counts).rule.code, "mixture-ph", "{counts:?}");
    }
    let small = with(Reserve::Small);
    assert_ne!(small.rule.code, "mixture-ph");
    assert_ne!(small.verdict(), Verdict::NotClassified);
    assert_eq!(
        small.treated_as.map(|class| class.category),
        Some(1),
        "the label of the concentrate says H314"
    );
    assert_eq!(Typed::default().product().expect("a product").reserve, Reserve::Unknown);
}

/// The order in which harm is told is ours: people before floors before machines. No source.
#[test]
fn the_most_serious_stands_first() {
    let typed = after([
        pick("vinegar"),
        Action::Family(brimline::chemistry::family::Family::Acid, true),
        pick("neutral"),
        Action::Family(brimline::chemistry::family::Family::HypochloriteBleach, true),
        Action::Before("vinegar".into()),
        Action::Pick(Shelf::Floor, "marble".into()),
        neat("13"),
    ]);
    let mut told = remarks(&typed, Marks::POINT);
    let before = told.len();
    by_danger(&mut told);
    let codes: Vec<&str> = told.iter().map(|one| one.code).collect();
    assert_eq!(
        (codes.len(), codes[0], codes[1]),
        (before, "remark-before-never", "remark-extreme-ph"),
        "{codes:?}"
    );
}
