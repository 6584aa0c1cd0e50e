//! Every product of the site on every floor: fits, fits only at this dilution, does not fit, not known.

use brimline::chemistry::family::Family;
use brimline::chemistry::floor::Reason;
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::cautions::floors::{Fit, PhOf, Stronger, all};
use brimline::form::{Action, Field, Typed};
use brimline::number::Marks;
use brimline::trade::governing::Aim;
use proptest::prelude::*;

fn after(actions: impl IntoIterator<Item = Action>) -> Typed {
    actions.into_iter().fold(Typed::default(), reduce)
}

fn pick(id: &str) -> Action {
    Action::Pick(Shelf::Product, id.into())
}

/// What the table says of a product on a floor.
fn said(typed: &Typed, product: &str, floor: &str) -> (PhOf, Fit) {
    let products = &typed.site.products;
    let at = products.iter().position(|one| one.id == product).expect("a product");
    let floor = typed.site.floors.iter().find(|one| one.id == floor).expect("a floor");
    let ph = all(typed, Marks::POINT)[at];
    (ph, ph.fit(&products[at], brimline::form::cautions::ground(&typed.site, floor, Marks::POINT)))
}

/// Vinegar, 5 % acetic acid, 6 fl oz to 10 gal of tap water of 100 mg/L alkalinity at pH 7.5: 4.741 by PHREEQC
/// with Davies activities, for 5 % w/v; by mass the band lies within 0.04 of it. Marble bears 7 to 10 (common
/// practice, no source) and no acid at all (Marble Institute of America, seen second-hand).
#[test]
fn vinegar_on_calcareous_stone_does_not_fit_by_its_computed_ph() {
    let (ph, fit) = said(&Typed::default(), "vinegar", "marble");
    let band = ph.used.range.expect("acetic acid is known");
    assert!(!ph.used.printed);
    assert!((band.low - 4.741).abs() < 0.02 && (band.high - 4.741).abs() < 0.04, "{band:?}");
    let Fit::DoesNotFit { reasons } = fit else { panic!("{fit:?}") };
    assert!(matches!(reasons[..], [Reason::Family(_), Reason::TooAcid(_)]), "{reasons:?}");
    // Where nobody has said that it is an acid, its part does.
    let unsaid = after([pick("vinegar"), Action::Family(Family::Acid, false)]);
    let (_, fit) = said(&unsaid, "vinegar", "marble");
    let Fit::DoesNotFit { reasons } = fit else { panic!("{fit:?}") };
    assert!(matches!(reasons[..], [Reason::Family(_), Reason::TooAcid(_)]), "{reasons:?}");
    // By the pH alone, of too little acid to call it one.
    let (_, fit) = said(&mild("1:20", Aim::Low), "vinegar", "marble");
    assert!(matches!(fit, Fit::DoesNotFit { ref reasons } if matches!(reasons[..], [Reason::TooAcid(_)])));
}

/// A little of a weak acid in hard water: its use solution is neutral, its concentrate of 0.15 mol/L has a pH of
/// 2.79 (root of `h² = Ka (c − h)` with Davies activities, pKa 4.756).
fn mild(label: &str, aim: Aim) -> Typed {
    after([
        pick("vinegar"),
        Action::Family(Family::Acid, false),
        Action::Family(Family::Neutral, true),
        Action::Write(Field::PartLow(0), "0.9".into()),
        Action::Text(Line::Label, label.into()),
        Action::Aim(aim),
        Action::Write(Field::Alkalinity, "400".into()),
    ])
}

#[test]
fn a_product_may_fit_only_at_its_dilution() {
    let (ph, fit) = said(&mild("1:2000", Aim::Low), "vinegar", "terrazzo");
    let neat = ph.neat.range.expect("it is known");
    assert!((neat.low - 2.79).abs() < 0.02 && (neat.high - 2.79).abs() < 0.02, "{neat:?}");
    let Fit::OnlyDiluted { stronger, reasons } = &fit else { panic!("{fit:?}") };
    assert_eq!(*stronger, Stronger::Concentrate);
    assert!(matches!(reasons[..], [Reason::TooAcid(_)]));
    assert_eq!(fit.stronger(), Some("floor-concentrate"));

    // Of a range the strong end is the first that harms.
    let (ph, fit) = said(&mild("1:20 to 1:2000", Aim::Low), "vinegar", "terrazzo");
    assert!(ph.used.range.expect("a band").low > 7.0);
    assert!(ph.strong_end.expect("a stronger end").range.expect("a band").high < 6.7);
    assert!(
        matches!(fit, Fit::OnlyDiluted { stronger: Stronger::LabelEnd, ref reasons } if reasons.len() == 1)
    );
    // At that end it does not fit at all.
    let (ph, fit) = said(&mild("1:20 to 1:2000", Aim::High), "vinegar", "terrazzo");
    assert_eq!(ph.strong_end, None);
    assert!(matches!(fit, Fit::DoesNotFit { .. }));
}

/// The site's standard decides the dilution; what the machine allows does not.
#[test]
fn the_standard_decides_and_the_machine_does_not() {
    let typed = after([
        pick("vinegar"),
        Action::Text(Line::Label, "1:20 to 1:2000".into()),
        Action::Text(Line::Standard, "1:100".into()),
    ]);
    let strength = |typed: &Typed| said(typed, "vinegar", "terrazzo").0.strength.expect("a dilution");
    assert!((strength(&typed).parts_of_water() - 100.0).abs() < 1e-6);
    let bounded = reduce(typed.clone(), Action::Write(Field::Most, "1".into()));
    assert!((strength(&bounded).parts_of_water() - 100.0).abs() < 1e-6);
    // What is asked about now keeps to its machine.
    let used = PhOf::in_machine(&bounded, Marks::POINT).strength.expect("a dilution");
    assert!(used < strength(&bounded));
}

#[test]
fn what_is_not_known_never_reassures() {
    let typed = Typed::default();
    // Neither parts nor a printed pH.
    assert!(matches!(said(&typed, "quat", "vinyl").1, Fit::Unknown { .. }));
    // A printed pH of the use solution says nothing of the concentrate.
    let (ph, fit) = said(&typed, "neutral", "vinyl");
    assert!(ph.used.printed);
    assert!(
        matches!(fit, Fit::OnlyDiluted { stronger: Stronger::Concentrate, ref reasons } if reasons.is_empty())
    );
    assert_eq!(fit.stronger(), Some("floor-concentrate-unknown"));
    // An estimate from a list that nobody called whole clears nothing.
    let unlisted = reduce(mild("1:2000", Aim::Low), Action::Listed(false));
    assert!(matches!(said(&unlisted, "vinegar", "terrazzo").1, Fit::Unknown { .. }));
    // A label that does not work out leaves no estimate.
    let unread = reduce(mild("as you like", Aim::Low), Action::Listed(true));
    assert_eq!(said(&unread, "vinegar", "terrazzo").0.used.range, None);
    assert!(matches!(said(&unread, "vinegar", "terrazzo").1, Fit::Unknown { .. }));
    // A floor that nobody described.
    let bare = reduce(mild("1:2000", Aim::Low), Action::Add(Shelf::Floor));
    let new = bare.ask.floor.clone();
    assert!(matches!(said(&bare, "vinegar", &new).1, Fit::Unknown { .. }));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// Taking away what is known never makes a verdict milder, whatever the dilution.
    #[test]
    fn less_known_is_never_milder(water in 1.0..4000.0_f64, floor in 0..6_usize) {
        let rank = |fit: &Fit| match fit {
            Fit::Fits => 0,
            Fit::OnlyDiluted { .. } => 1,
            Fit::Unknown { .. } | Fit::DoesNotFit { .. } => 2,
        };
        let typed = mild(&format!("1:{water:.0}"), Aim::Low);
        let id = typed.site.floors[floor].id.clone();
        let full = said(&typed, "vinegar", &id).1;
        let without = [
            Action::Listed(false),
            Action::Text(Line::PartCas(0), String::new()),
            Action::Family(Family::Neutral, false),
        ];
        for less in without {
            let fit = said(&reduce(typed.clone(), less), "vinegar", &id).1;
            prop_assert!(rank(&fit) >= rank(&full), "{full:?}, then {fit:?}");
        }
    }
}
