//! What a screening makes of what is missing, wrong or contradictory.

use super::mixtures::{assert_category, diluted, mild, of, part};
use brimline::chemistry::cas::check;
use brimline::chemistry::ghs::mixture::{
    Class, Doubt, Endpoint, Ingredient, Kind, Mixture, Rest, Verdict, WATER, concentrate_share, screen,
};
use brimline::chemistry::ghs::{Hazard, Knowledge, SignalWord, codes};
use brimline::units::{MassFraction, VolumeFraction};

/// What is missing is treated as the worse case, never as none.
#[test]
fn nothing_missing_reassures() {
    let label = codes::read("H314").hazards;
    // Nothing known at all.
    let nothing = screen(&Mixture { share: MassFraction::new(0.1), ..Mixture::default() });
    assert!(nothing.findings.iter().all(|one| one.verdict() == Verdict::Unknown), "{nothing:?}");
    assert_eq!((nothing.knowledge, nothing.label.signal), (Knowledge::Partial, SignalWord::Unknown));
    // The label of the concentrate alone: the use solution keeps its class, as far as 2.3(3) goes.
    let labelled = Mixture {
        label: label.clone(),
        label_read: true,
        share: MassFraction::new(0.5),
        ..Mixture::default()
    };
    let kept = screen(&labelled);
    let skin = of(&kept, Endpoint::Skin);
    assert_eq!((skin.verdict(), skin.rule.code), (Verdict::Unknown, "mixture-diluted"));
    assert_eq!(skin.treated_as, Some(Class { endpoint: Endpoint::Skin, category: 1 }));
    assert_eq!(kept.label.signal, SignalWord::Danger);
    // What a label that was read in full does not bear, a dilution of it does not either.
    let swallowed = of(&kept, Endpoint::Swallowed);
    assert_eq!((swallowed.verdict(), swallowed.rule.code), (Verdict::NotClassified, "mixture-label"));
    // Ingredients that do not explain the label: something is missing in the list.
    let lame = Mixture {
        label: label.clone(),
        label_read: true,
        ..mild(diluted(vec![part(0.5, "H315", Kind::Base)], 9.0))
    };
    let found = screen(&lame);
    assert_eq!(of(&found, Endpoint::Skin).doubts, [Doubt::NotExplained]);
    assert_eq!(of(&found, Endpoint::Skin).treated_as, Some(Class { endpoint: Endpoint::Skin, category: 1 }));
    // The other way round: the ingredients are worse than the label. Both are told, the worse one counts.
    let mildly = Mixture {
        label: codes::read("H319").hazards,
        label_read: true,
        ..mild(diluted(vec![part(20.0, "H314", Kind::Base)], 1.0))
    };
    let found = screen(&mildly);
    assert_eq!(of(&found, Endpoint::Eye).doubts, [Doubt::LabelSaysLess]);
    assert_eq!(
        of(&found, Endpoint::Eye).verdict(),
        Verdict::Class(Class { endpoint: Endpoint::Eye, category: 1 })
    );
}

/// A composition that nobody can mean counts as the worst that it may mean.
#[test]
fn wrong_shares_are_the_worse_case() {
    let wrong = |low: f64, high: f64| Ingredient {
        low: MassFraction::new(low),
        high: MassFraction::new(high),
        ..part(0.0, "H314", Kind::Additive)
    };
    for (low, high) in
        [(f64::NAN, f64::NAN), (-1.0, 2.0), (0.01, f64::NAN), (0.01, 5.0), (0.5, 0.01), (0.01, 0.5)]
    {
        let mixture = mild(diluted(vec![wrong(low, high)], 3.0));
        assert_category(&mixture, Endpoint::Skin, Some(1));
    }
    // No dilution is known: as the concentrate.
    for share in [f64::NAN, -0.1, 1.1, f64::INFINITY] {
        let mixture = Mixture {
            share: MassFraction::new(share),
            ..mild(diluted(vec![part(5.0, "H314", Kind::Additive)], 9.0))
        };
        assert_category(&mixture, Endpoint::Skin, Some(1));
    }
    assert_eq!(concentrate_share(VolumeFraction::new(f64::NAN), Some(WATER)), MassFraction::new(1.0));
}

/// Water and what the rest is.
#[test]
fn what_is_left_over_is_unknown_unless_somebody_says_so() {
    let base = mild(diluted(vec![part(20.0, "H314", Kind::Base)], 20.0));
    let with = |rest, ingredients: Vec<Ingredient>| Mixture { rest, ingredients, ..base.clone() };
    let skin = |mixture: &Mixture| of(&screen(mixture), Endpoint::Skin).verdict();
    let lye = || part(20.0, "H314", Kind::Base);
    let water =
        |percent| Ingredient { hazards: None, cas: check("7732-18-5"), ..part(percent, "", Kind::Unknown) };
    assert_eq!(skin(&with(Rest::Harmless, vec![lye()])), Verdict::NotClassified);
    assert_eq!(skin(&with(Rest::Unknown, vec![lye()])), Verdict::Unknown);
    assert_eq!(skin(&with(Rest::Unknown, vec![lye(), water(80.0)])), Verdict::NotClassified);
    // 20 % left over are 0.95 % of the use solution, too little to count; 22 % are 1.05 %.
    assert_eq!(skin(&with(Rest::Unknown, vec![lye(), water(60.0)])), Verdict::NotClassified);
    assert_eq!(skin(&with(Rest::Unknown, vec![lye(), water(58.0)])), Verdict::Unknown);
}

/// What is not judged stays as the concentrate's label has it.
#[test]
fn other_hazards_stay_with_the_concentrate() {
    let mut mixture =
        mild(diluted(vec![part(20.0, "H314 H351", Kind::Base), part(1.0, "H317", Kind::Additive)], 99.0));
    mixture.label = codes::read("H314 H290 H317").hazards;
    mixture.label_read = true;
    let found = screen(&mixture);
    let codes = |list: &[&'static Hazard]| list.iter().map(|one| one.code).collect::<Vec<_>>();
    assert_eq!(codes(&found.kept), ["H290", "H317"]);
    assert_eq!(codes(&found.not_covered), ["H351"]);
    assert_eq!(codes(&found.label.statements), ["H317", "H290"]);
    assert_eq!((found.knowledge, found.label.signal), (Knowledge::Full, SignalWord::Warning));
}
