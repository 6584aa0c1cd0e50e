//! The class of a use solution against published figures and examples.

use brimline::chemistry::cas::check;
use brimline::chemistry::floor::PhRange;
use brimline::chemistry::ghs::mixture::{
    Class, Doubt, Endpoint, Finding, Ingredient, KINDS, Kind, Mixture, Reached, Rest, Screening, Verdict,
    WATER, concentrate_share, estimate, rules, screen,
};
use brimline::chemistry::ghs::{Pictogram, SignalWord, codes};
use brimline::source::Standing;
use brimline::units::{MassFraction, Quantity, VolumeFraction};

const MG_PER_KG: f64 = 1e-6;

/// An ingredient of which there is so much percent, with its statements.
pub fn part(percent: f64, hazards: &str, kind: Kind) -> Ingredient {
    let share = MassFraction::new(percent / 100.0);
    Ingredient {
        low: share,
        high: share,
        hazards: Some(codes::read(hazards).hazards),
        kind,
        ..Ingredient::default()
    }
}

/// 1 part of concentrate as heavy as water to so many parts of water, nothing else in it.
pub fn diluted(ingredients: Vec<Ingredient>, water: f64) -> Mixture {
    let share = concentrate_share(VolumeFraction::new(1.0 / (1.0 + water)), Some(WATER));
    Mixture { ingredients, rest: Rest::Harmless, share, ..Mixture::default() }
}

#[track_caller]
pub fn of(screening: &Screening, endpoint: Endpoint) -> &Finding {
    screening.of(endpoint).expect("a finding")
}

#[track_caller]
pub fn assert_category(mixture: &Mixture, endpoint: Endpoint, category: Option<u8>) {
    let found = screen(mixture);
    let verdict = of(&found, endpoint).verdict();
    let wanted =
        category.map_or(Verdict::NotClassified, |category| Verdict::Class(Class { endpoint, category }));
    assert_eq!(verdict, wanted, "{:?}", of(&found, endpoint));
}

/// With a pH that decides nothing.
pub fn mild(mixture: Mixture) -> Mixture {
    Mixture { ph: Some(PhRange { low: 7.0, high: 10.0 }), ..mixture }
}

/// Derived from Hazardous Products Regulations (Canada), SOR/2015-17, 8.2.11 and 8.3.11: a concentrate with
/// 20 % of a corrosive ingredient that adds up.
#[test]
fn a_fifth_of_something_corrosive_by_dilution() {
    for (water, skin, eye) in [
        (3.0, Some(1), Some(1)),  // 5 %
        (4.0, Some(2), Some(1)),  // 4 %
        (6.0, Some(2), Some(2)),  // 2.857 %
        (19.0, Some(2), Some(2)), // 1.0 %
        (20.0, None, None),       // 0.952 %, without evidence
    ] {
        let mixture = mild(diluted(vec![part(20.0, "H314", Kind::Additive)], water));
        assert_category(&mixture, Endpoint::Skin, skin);
        assert_category(&mixture, Endpoint::Eye, eye);
    }
    // The same as an acid, a base, a surfactant, or of a kind that nobody knows: from 1 % on it burns.
    for kind in
        [Kind::Acid, Kind::Base, Kind::Surfactant, Kind::Salt, Kind::Aldehyde, Kind::Phenol, Kind::Unknown]
    {
        for (water, category) in [(19.0, Some(1)), (20.0, None)] {
            let mixture = mild(diluted(vec![part(20.0, "H314", kind)], water));
            assert_category(&mixture, Endpoint::Skin, category);
            assert_category(&mixture, Endpoint::Eye, category);
        }
    }
}

/// The same regulations, each limit at its edge.
#[test]
fn limits_at_their_edge() {
    use Endpoint::{Eye, Skin};
    let additive = |hazards: &[(f64, &str)]| {
        mild(diluted(
            hazards.iter().map(|(percent, code)| part(*percent, code, Kind::Additive)).collect(),
            0.0,
        ))
    };
    let alone = |percent, code| mild(diluted(vec![part(percent, code, Kind::Surfactant)], 0.0));
    for (mixture, endpoint, category) in [
        (additive(&[(9.9, "H315")]), Skin, None),
        (additive(&[(10.0, "H315")]), Skin, Some(2)),
        (additive(&[(4.0, "H315"), (6.0, "H315")]), Skin, Some(2)),
        (additive(&[(2.0, "H314")]), Skin, Some(2)),
        (additive(&[(4.9, "H314")]), Skin, Some(2)),
        (additive(&[(2.5, "H314"), (2.5, "H314")]), Skin, Some(1)),
        // Below 1 % each: they do not count without evidence.
        (additive(&[(0.9, "H314"), (0.9, "H314"), (0.9, "H314")]), Skin, None),
        (additive(&[(9.0, "H315"), (0.9, "H314")]), Skin, None),
        (additive(&[(2.9, "H318")]), Eye, Some(2)),
        (additive(&[(3.0, "H318")]), Eye, Some(1)),
        (additive(&[(1.5, "H318"), (1.5, "H314")]), Eye, Some(1)),
        (additive(&[(0.9, "H318")]), Eye, None),
        (additive(&[(9.9, "H319")]), Eye, None),
        (additive(&[(10.0, "H319")]), Eye, Some(2)),
        (additive(&[(3.0, "H318")]), Skin, None),
        (alone(1.0, "H318"), Eye, Some(1)),
        (alone(0.99, "H318"), Eye, None),
        (alone(3.0, "H319"), Eye, Some(2)),
        (alone(2.9, "H319"), Eye, None),
        (alone(3.0, "H315"), Skin, Some(2)),
        (alone(2.9, "H315"), Skin, None),
        // H320, milder eye irritation of some countries, counts as eye irritation.
        (additive(&[(10.0, "H315+H320")]), Eye, Some(2)),
    ] {
        assert_category(&mixture, endpoint, category);
    }
}

/// UN GHS Sub-Committee of Experts, 2008, draft guidance 3-1a and 3-1d, worked examples as printed.
#[test]
fn worked_examples_of_the_acute_toxicity_estimate() {
    // 3-1a: 16 % of 1600, 4 % of which only 200 to 2000 is known, 80 % of 3450 mg/kg: 1,880 mg/kg, category 4.
    let toxic = |percent: f64, ate: f64| Ingredient {
        oral: Some(MassFraction::new(ate * MG_PER_KG)),
        ..part(percent, "", Kind::Additive)
    };
    let example = |parts: &[(f64, f64)], published: f64| {
        let mixture = diluted(parts.iter().map(|(percent, ate)| toxic(*percent, *ate)).collect(), 0.0);
        assert_category(&mixture, Endpoint::Swallowed, Some(4));
        let found = screen(&mixture);
        let Reached::Estimate(ate) = of(&found, Endpoint::Swallowed).reached else { panic!("an estimate") };
        // As many digits as are printed: three.
        let unit = 10_f64.powf(published.log10().floor() - 2.0);
        assert!((ate.si() / MG_PER_KG - published).abs() <= unit / 2.0, "{ate:?}");
        assert_eq!(of(&found, Endpoint::Swallowed).rule.code, "mixture-estimate");
    };
    example(&[(16.0, 1600.0), (4.0, 200.0), (80.0, 3450.0)], 1_880.0);
    // 3-1d, by mouth: 26 % of 2737, 23 % of 4500, 40 % of 400: 873 mg/kg, category 4.
    example(&[(26.0, 2737.0), (23.0, 4500.0), (40.0, 400.0)], 873.0);
    // 3-1d, breathed in, 11 % unknown: 26 % of 11, 23 % of 19, 40 % of 4 mg/L: 6.6 mg/L.
    let breathed = estimate(&[(0.26, 11.0), (0.23, 19.0), (0.40, 4.0)], 0.11).expect("toxic");
    assert!((breathed - 6.6).abs() <= 0.05, "{breathed}");
    // Exactly a tenth is not more than a tenth.
    assert_eq!(estimate(&[(0.5, 10.0)], 0.10), Some(20.0));
    assert_eq!(estimate(&[(0.5, 10.0)], 0.12), Some(0.88 / 0.05));
    assert_eq!(estimate(&[], 0.5), None);
}

/// Hazardous Products Regulations (Canada), SOR/2015-17, 8.1.1(3), tables 1 and 2, and 8.1.7.
#[test]
fn categories_of_acute_toxicity() {
    let of_ate = |endpoint, ate: f64| {
        let ate = Some(MassFraction::new(ate * MG_PER_KG));
        let mut one = part(100.0, "", Kind::Additive);
        if endpoint == Endpoint::Swallowed {
            one.oral = ate;
        } else {
            one.dermal = ate;
        }
        diluted(vec![one], 0.0)
    };
    for (endpoint, limits) in [
        (Endpoint::Swallowed, [5.0, 50.0, 300.0, 2000.0]),
        (Endpoint::ThroughSkin, [50.0, 200.0, 1000.0, 2000.0]),
    ] {
        for (category, limit) in (1..).zip(limits) {
            assert_category(&of_ate(endpoint, limit), endpoint, Some(category));
            let next = (category < 4).then_some(category + 1);
            assert_category(&of_ate(endpoint, limit * 1.001), endpoint, next);
        }
    }
    // The estimate that stands for a category: 25 % of what is harmful when swallowed, 500 mg/kg, is 2000.
    for (percent, category) in [(25.0, Some(4)), (24.9, None)] {
        assert_category(
            &diluted(vec![part(percent, "H302", Kind::Additive)], 0.0),
            Endpoint::Swallowed,
            category,
        );
    }
    // H300 stands for categories 1 and 2: 0.5 mg/kg, so that 0.025 % is harmful.
    for (percent, category) in [(0.025, Some(4)), (0.024, None), (0.2, Some(3))] {
        assert_category(
            &diluted(vec![part(percent, "H300", Kind::Additive)], 0.0),
            Endpoint::Swallowed,
            category,
        );
    }
    // A number that is milder than the statement beside it does not count: 500 again, not 5000.
    let contradicts = Ingredient {
        oral: Some(MassFraction::new(5_000.0 * MG_PER_KG)),
        ..part(25.0, "H302", Kind::Additive)
    };
    assert_category(&diluted(vec![contradicts], 0.0), Endpoint::Swallowed, Some(4));
}

/// More than a tenth unknown: the formula speaks of the rest, and the class is the least that it may be.
#[test]
fn unknown_toxicity_is_told() {
    let unknown = Ingredient { hazards: None, ..part(40.0, "", Kind::Additive) };
    let mixture = diluted(vec![part(20.0, "H302", Kind::Additive), unknown], 0.0);
    let found = screen(&mixture);
    let swallowed = of(&found, Endpoint::Swallowed);
    // 60 % / (20 % / 500): 1500 mg/kg, where all of it would be 2500.
    let Reached::Estimate(ate) = swallowed.reached else { panic!("an estimate") };
    assert!((ate.si() / MG_PER_KG - 1500.0).abs() < 1e-6);
    assert_eq!(swallowed.verdict(), Verdict::AtLeast(Class { endpoint: Endpoint::Swallowed, category: 4 }));
    assert_eq!(
        (swallowed.rule.code, &swallowed.doubts[..]),
        ("mixture-estimate-unknown", &[Doubt::UnknownPart][..])
    );
    assert_eq!(of(&found, Endpoint::ThroughSkin).verdict(), Verdict::Unknown);
    assert!((found.unknown.si() - 0.4).abs() < 1e-12);
}

/// CLP, Annex I, 3.2.3.1.2, and the regulations above, 8.2.5 and 8.3.5.
#[test]
fn an_extreme_ph_burns() {
    let at = |low, high| Mixture {
        ph: Some(PhRange { low, high }),
        ..diluted(vec![part(1.0, "", Kind::Base)], 99.0)
    };
    for (low, high, category) in [
        (2.0, 2.0, Some(1)),
        (2.1, 2.1, None),
        (11.4, 11.4, None),
        (11.5, 11.5, Some(1)),
        (9.0, 12.0, Some(1)),
        (1.5, 3.0, Some(1)),
    ] {
        for endpoint in [Endpoint::Skin, Endpoint::Eye] {
            assert_category(&at(low, high), endpoint, category);
        }
    }
    let found = screen(&at(9.0, 12.0));
    assert_eq!(of(&found, Endpoint::Skin).reached, Reached::Ph(12.0));
    assert_eq!(
        (found.label.signal, &found.label.pictograms[..]),
        (SignalWord::Danger, &[Pictogram::Ghs05][..])
    );
    assert_eq!(found.label.statements.iter().map(|one| one.code).collect::<Vec<_>>(), ["H314"]);
    // With data on its reserve it need not.
    let assessed = Mixture { reserve_is_small: true, ..at(12.0, 12.0) };
    assert_category(&assessed, Endpoint::Skin, None);
}

/// A pH that nobody knows is not a mild one, unless nothing in the solution can make it extreme.
#[test]
fn an_unknown_ph_is_unknown() {
    let lye = |ph_of_concentrate| Mixture {
        ph_of_concentrate,
        ..diluted(vec![part(20.0, "H314", Kind::Base)], 255.0)
    };
    let skin = |mixture: &Mixture| of(&screen(mixture), Endpoint::Skin).clone();
    assert_eq!((skin(&lye(None)).verdict(), skin(&lye(None)).doubts), (Verdict::Unknown, vec![Doubt::Ph]));
    assert_eq!(skin(&lye(Some(PhRange { low: 13.0, high: 13.5 }))).verdict(), Verdict::Unknown);
    assert_eq!(skin(&lye(Some(PhRange { low: 9.0, high: 10.0 }))).verdict(), Verdict::NotClassified);
    // A pH that makes no sense is no pH.
    assert_eq!(skin(&lye(Some(PhRange { low: 10.0, high: 9.0 }))).verdict(), Verdict::Unknown);
    assert_eq!(skin(&lye(Some(PhRange { low: f64::NAN, high: 9.0 }))).verdict(), Verdict::Unknown);
    for kind in [Kind::Surfactant, Kind::Additive] {
        let mixture = diluted(vec![part(20.0, "H314", kind)], 255.0);
        assert_eq!(skin(&mixture).verdict(), Verdict::NotClassified, "{kind:?}");
    }
}

/// ADR 2019, 2.2.9.1.10.4.6.2.2 and 2.2.9.1.10.4.6.3.3; category 3 after CLP, Annex I, Table 4.1.2, from memory.
#[test]
fn harm_to_water_adds_up() {
    let toxic = |percent, code, m: Option<f64>| {
        mild(diluted(
            vec![Ingredient { m_acute: m, m_chronic: m, ..part(percent, code, Kind::Surfactant) }],
            0.0,
        ))
    };
    let one = Some(1.0);
    for (mixture, endpoint, category) in [
        (toxic(25.0, "H400", one), Endpoint::WaterAcute, Some(1)),
        (toxic(24.9, "H400", one), Endpoint::WaterAcute, None),
        (toxic(2.5, "H400", Some(10.0)), Endpoint::WaterAcute, Some(1)),
        (toxic(25.0, "H410", one), Endpoint::WaterChronic, Some(1)),
        (toxic(2.5, "H410", one), Endpoint::WaterChronic, Some(2)),
        (toxic(0.25, "H410", one), Endpoint::WaterChronic, Some(3)),
        (toxic(0.24, "H410", one), Endpoint::WaterChronic, None),
        (toxic(0.25, "H410", Some(10.0)), Endpoint::WaterChronic, Some(2)),
        (toxic(25.0, "H411", one), Endpoint::WaterChronic, Some(2)),
        (toxic(25.0, "H412", one), Endpoint::WaterChronic, Some(3)),
        (toxic(25.0, "H413", one), Endpoint::WaterChronic, Some(4)),
        // 1 % and less of it does not count, nor does less than 0.1 % of category 1.
        (toxic(0.99, "H411", one), Endpoint::WaterChronic, None),
        (toxic(0.09, "H410", one), Endpoint::WaterChronic, None),
    ] {
        assert_category(&mixture, endpoint, category);
    }
    // Without its M factor nobody knows how much more it is.
    let found = screen(&toxic(0.09, "H410", None));
    assert_eq!(of(&found, Endpoint::WaterChronic).verdict(), Verdict::Unknown);
    // A sheet that never speaks of water says nothing about it.
    let silent = screen(&mild(diluted(vec![part(5.0, "H318", Kind::Surfactant)], 9.0)));
    assert_eq!(of(&silent, Endpoint::WaterAcute).verdict(), Verdict::Unknown);
    assert_eq!(of(&silent, Endpoint::WaterAcute).doubts, [Doubt::Water]);
}

#[test]
fn tables_of_the_mixture_rules_hold_together() {
    let mut seen = Vec::new();
    for (number, name, kind) in KINDS {
        let cas = check(number).unwrap_or_else(|| panic!("{name}: {number} has another check digit"));
        assert!(!seen.contains(&cas), "{number} stands twice");
        seen.push(cas);
        assert_eq!((cas.to_string().as_str(), Kind::of(cas)), (*number, *kind));
    }
    let mut codes: Vec<&str> = rules().map(|rule| rule.code).collect();
    codes.sort_unstable();
    assert!(codes.windows(2).all(|two| two[0] != two[1]), "{codes:?}");
    assert!(rules().all(|rule| !rule.source.cite.is_empty()));
    // Only the two rows for categories 3 and 4 in water are from memory.
    let memory: Vec<&str> =
        rules().filter(|rule| rule.source.standing != Standing::Published).map(|rule| rule.code).collect();
    assert_eq!(memory, ["mixture-water-chronic-3", "mixture-water-chronic-4"]);
}
