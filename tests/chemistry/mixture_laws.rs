//! Laws of the class of a use solution, over any composition.

use brimline::chemistry::cas::check;
use brimline::chemistry::floor::PhRange;
use brimline::chemistry::ghs::mixture::{
    Doubt, Endpoint, Finding, Ingredient, Kind, Mixture, Rest, Verdict, screen,
};
use brimline::chemistry::ghs::{Hazard, Knowledge, SignalWord, codes, hazard};
use brimline::units::{MassFraction, Quantity};
use proptest::prelude::*;

const KINDS: [Kind; 5] = [Kind::Unknown, Kind::Additive, Kind::Acid, Kind::Base, Kind::Surfactant];

fn statements() -> impl Strategy<Value = Vec<&'static Hazard>> {
    let often: Vec<&'static Hazard> =
        codes::read("H314 H315 H318 H319 H302 H301 H300 H312 H400 H410 H411 H412 H290 H317").hazards;
    let any: Vec<&'static Hazard> = hazard::all().collect();
    let one = prop_oneof![4 => proptest::sample::select(often), 1 => proptest::sample::select(any)];
    proptest::collection::vec(one, 0..4)
}

fn share() -> impl Strategy<Value = f64> {
    prop_oneof![0.0..=1.0, 0.0..0.1, proptest::sample::select(vec![0.0, 0.01, 0.03, 0.05, 0.1, 0.25, 1.0])]
}

fn ingredient() -> impl Strategy<Value = Ingredient> {
    let toxicity = proptest::option::of((0.1..6000.0).prop_map(|ate: f64| MassFraction::new(ate * 1e-6)));
    let water = proptest::bool::weighted(0.1);
    let hazards = proptest::option::weighted(0.8, statements());
    let kind = proptest::sample::select(KINDS.to_vec());
    let m = proptest::option::of(proptest::sample::select(vec![1.0, 10.0, 100.0]));
    (share(), share(), hazards, kind, toxicity, water, m).prop_map(|(a, b, hazards, kind, oral, water, m)| {
        Ingredient {
            name: String::new(),
            cas: if water { check("7732-18-5") } else { None },
            low: MassFraction::new(a.min(b)),
            high: MassFraction::new(a.max(b)),
            hazards: hazards.filter(|_| !water),
            kind,
            oral: oral.filter(|_| !water),
            dermal: oral.filter(|_| !water),
            m_acute: m,
            m_chronic: m,
        }
    })
}

fn ph() -> impl Strategy<Value = Option<PhRange>> {
    proptest::option::of((0.0..14.0, 0.0..3.0).prop_map(|(low, width)| PhRange { low, high: low + width }))
}

fn mixture() -> impl Strategy<Value = Mixture> {
    let rest = proptest::sample::select(vec![Rest::Unknown, Rest::Harmless]);
    let parts = proptest::collection::vec(ingredient(), 0..5);
    (parts, rest, share(), statements(), any::<[bool; 2]>(), ph(), ph()).prop_map(
        |(ingredients, rest, share, label, [label_read, covers_water], ph, ph_of_concentrate)| Mixture {
            ingredients,
            rest,
            share: MassFraction::new(share),
            label,
            label_read,
            covers_water,
            ph,
            ph_of_concentrate,
            reserve_is_small: false,
        },
    )
}

/// How bad, from the best verdict on: an open question is worse than none.
fn rank(finding: &Finding) -> u8 {
    match finding.verdict() {
        Verdict::NotClassified => 0,
        Verdict::Unknown => 1,
        Verdict::Class(class) | Verdict::AtLeast(class) => 10 - class.category,
    }
}

fn each<'a>(a: &'a Mixture, b: &'a Mixture) -> impl Iterator<Item = (Finding, Finding)> {
    screen(a).findings.into_iter().zip(screen(b).findings)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    /// More water never makes a class worse, nor what it is to be treated as, and never brings a class up
    /// where there certainly was none.
    #[test]
    fn diluting_never_makes_it_worse(mixture in mixture(), further in 0.0..=1.0_f64) {
        let thinner = Mixture { share: MassFraction::new(mixture.share.si() * further), ..mixture.clone() };
        for (before, after) in each(&mixture, &thinner) {
            prop_assert!(after.known <= before.known, "{:?} then {:?}", before, after);
            prop_assert!(after.treated_as <= before.treated_as, "{:?} then {:?}", before, after);
            prop_assert!(rank(&before) > 0 || rank(&after) == 0, "{:?} then {:?}", before, after);
        }
    }

    /// More of an ingredient with hazards never makes it milder, the rest being as it was.
    #[test]
    fn more_of_a_hazard_never_makes_it_milder(mixture in mixture(), which in 0..4_usize, more in 0.0..0.5_f64) {
        let mut worse = mixture.clone();
        let Some(one) = worse.ingredients.get_mut(which) else { return Ok(()) };
        if one.hazards.as_ref().is_some_and(Vec::is_empty) {
            return Ok(());
        }
        one.high = MassFraction::new((one.high.si() + more).min(1.0));
        for (before, after) in each(&mixture, &worse) {
            prop_assert!(after.known >= before.known, "{:?} then {:?}", before, after);
            // What explains the label answers a question that was open.
            let open = before.doubts.contains(&Doubt::NotExplained);
            prop_assert!(open || rank(&after) >= rank(&before), "{:?} then {:?}", before, after);
        }
    }

    /// An ingredient more never makes it milder where the rest was harmless.
    #[test]
    fn another_ingredient_never_makes_it_milder(mixture in mixture(), more in ingredient()) {
        let before = Mixture { rest: Rest::Harmless, ..mixture };
        let mut after = before.clone();
        after.ingredients.push(more);
        for (before, after) in each(&before, &after) {
            prop_assert!(after.known >= before.known, "{:?} then {:?}", before, after);
        }
    }

    /// The order in which a sheet lists its ingredients does not matter.
    #[test]
    fn order_does_not_matter(mixture in mixture()) {
        let mut back = mixture.clone();
        back.ingredients.reverse();
        let same = |a: &Finding, b: &Finding| {
            (a.known, a.treated_as, a.rule, &a.doubts) == (b.known, b.treated_as, b.rule, &b.doubts)
        };
        for (forth, back) in each(&mixture, &back) {
            prop_assert!(same(&forth, &back), "{:?} and {:?}", forth, back);
        }
        prop_assert_eq!(screen(&mixture).label, screen(&back).label);
    }

    /// Knowing less never clears anything: not the hazards of an ingredient, the pH, the rest, the M factor,
    /// or whether the label was read.
    #[test]
    fn knowing_less_never_reassures(mixture in mixture(), which in 0..4_usize, less in 0..6_u8) {
        let mut dimmer = mixture.clone();
        let one = dimmer.ingredients.get_mut(which);
        let phs = [mixture.ph, mixture.ph_of_concentrate];
        let mild = phs.iter().flatten().all(|ph| ph.low > 2.0 && ph.high < 11.5);
        match (less, one) {
            // Less than 1 % of the use solution does not count by any rule.
            (0, Some(one)) if one.high.si() * mixture.share.si() >= 0.01 => {
                (one.hazards, one.oral, one.dermal) = (None, None, None);
            }
            (1, Some(one)) => (one.m_acute, one.m_chronic) = (None, None),
            (2, Some(one)) => one.kind = Kind::Unknown,
            // An extreme pH of what has nothing in it to make it so is a contradiction, not knowledge.
            (3, _) if mild => (dimmer.ph, dimmer.ph_of_concentrate) = (None, None),
            (4, _) => dimmer.rest = Rest::Unknown,
            _ => (dimmer.label_read, dimmer.covers_water) = (false, false),
        }
        let (before, after) = (screen(&mixture), screen(&dimmer));
        // A label that says less than its ingredients is a contradiction too; so is one that says more than
        // ingredients that surely add up, which nobody sees who does not know that they do.
        let contradicts = |one: &Finding| {
            one.doubts.contains(&Doubt::LabelSaysLess) || (less == 2 && one.doubts.contains(&Doubt::NotExplained))
        };
        for (before, after) in before.findings.iter().zip(&after.findings) {
            let cleared = before.verdict() != Verdict::NotClassified && after.verdict() == Verdict::NotClassified;
            prop_assert!(!cleared || contradicts(before), "{:?} then {:?}", before, after);
        }
    }

    /// What is found fits together: nothing uncertain is cleared, the label bears what was found, and with
    /// partial knowledge its signal word is never less than unknown.
    #[test]
    fn findings_fit_together(mixture in mixture()) {
        let found = screen(&mixture);
        prop_assert_eq!(found.findings.len(), Endpoint::ALL.len());
        for one in &found.findings {
            prop_assert!(one.treated_as >= one.known);
            prop_assert!(one.verdict() != Verdict::NotClassified || one.treated_as.is_none());
        }
        if found.knowledge == Knowledge::Partial {
            prop_assert!(found.label.signal >= SignalWord::Unknown);
        }
        let skin = found.of(Endpoint::Skin).and_then(|one| one.treated_as);
        let burns = found.label.statements.iter().any(|one| one.code == "H314");
        prop_assert_eq!(burns, skin.is_some_and(|class| class.category == 1));
    }
}
