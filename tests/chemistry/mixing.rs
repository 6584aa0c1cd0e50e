//! Products that must never meet, and foam.

use brimline::chemistry::family::Family;
use brimline::chemistry::foam::{self, Foam, FoamVerdict};
use brimline::chemistry::pairs::{Meeting, Severity, clashes, meet, never_with};
use brimline::source::Standing;

#[test]
fn pairs_as_published() {
    use Family::{
        Acid, Alcohol, Ammonia, HypochloriteBleach, Peroxide, Quat, Soap, StrongAcid, StrongAlkali,
    };
    let published = [
        // CDC, MMWR 40(36):619, 1991: phosphoric acid cleaner and bleach in mop buckets, chlorine, at least 14 ill.
        (HypochloriteBleach, Acid, Severity::Gas),
        (HypochloriteBleach, StrongAcid, Severity::Gas),
        // OSHA 3511 / NIOSH 2012-125.
        (HypochloriteBleach, Ammonia, Severity::Gas),
        // NFPA, 13 April 2020: chloroform; peracetic acid.
        (HypochloriteBleach, Alcohol, Severity::Harms),
        (Peroxide, Acid, Severity::Harms),
        // 40 CFR 265, Appendix V, groups 1-A and 1-B: heat, violent reaction.
        (StrongAcid, StrongAlkali, Severity::Harms),
        // University of Iowa, Environmental Health and Safety, 8.2.9: loss of activity.
        (Quat, Soap, Severity::Spoils),
    ];
    for (a, b, severity) in published {
        for (left, right) in [(a, b), (b, a)] {
            let found = clashes(&[left], &[right]);
            assert!(
                found
                    .iter()
                    .any(|pair| pair.severity == severity && pair.source.standing == Standing::Published),
                "{left:?} + {right:?}"
            );
        }
    }
    assert!(!clashes(&[HypochloriteBleach], &[Peroxide]).is_empty());
    assert!(clashes(&[Acid], &[Family::Alkali]).is_empty(), "weak with weak is not a listed pair");
    assert_eq!(never_with(&[HypochloriteBleach]).len(), 4);
    assert!(never_with(&[Family::Neutral]).is_empty());
}

#[test]
fn a_product_nothing_is_known_of_is_kept_apart() {
    for &family in Family::ALL {
        assert_eq!(meet(&[family], &[]), Meeting::Unknown);
        assert_eq!(meet(&[], &[family]), Meeting::Unknown);
    }
    assert_eq!(meet(&[], &[]), Meeting::Unknown);
    assert_eq!(meet(&[Family::Neutral], &[Family::Acid]), Meeting::NoPairListed);
    assert!(matches!(meet(&[Family::Quat], &[Family::Soap]), Meeting::Never(_)));
}

#[test]
fn foam_of_unknown_behaviour_counts_as_foaming_until_tested() {
    assert_eq!(foam::verdict(Foam::Unknown, true), FoamVerdict::TestFirst);
    assert_eq!(foam::verdict(Foam::Foaming, true), FoamVerdict::Refuse);
    assert_eq!(foam::verdict(Foam::Low, true), FoamVerdict::Fits);
    assert_eq!(foam::verdict(Foam::NonFoaming, true), FoamVerdict::Fits);
    assert_eq!(foam::verdict(Foam::Foaming, false), FoamVerdict::Fits);
}
