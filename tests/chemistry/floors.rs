//! What floors bear, and tile by its thirst.

use brimline::chemistry::family::Family;
use brimline::chemistry::floor::tile::{self, TileClass};
use brimline::chemistry::floor::{
    FloorVerdict, Missing, PhRange, Reason, Surface, Window, verdict, verdict_within,
};
use brimline::source::{Source, Standing};

/// ASTM C373 / ANSI A137.1, second-hand: impervious ≤ 0.5, vitreous > 0.5 to 3, semi > 3 to 7, non > 7 %.
/// Porcelain ≤ 0.5 %: ISO 13006, as reported in Tile Magazine.
#[test]
fn tile_classes_by_absorption() {
    for (absorption, class) in [
        (0.0, TileClass::Impervious),
        (0.5, TileClass::Impervious),
        (0.51, TileClass::Vitreous),
        (3.0, TileClass::Vitreous),
        (3.01, TileClass::SemiVitreous),
        (7.0, TileClass::SemiVitreous),
        (7.01, TileClass::NonVitreous),
        (25.0, TileClass::NonVitreous),
    ] {
        assert_eq!(TileClass::of(absorption), Some(class), "{absorption} %");
    }
    assert_eq!(TileClass::of(-0.1), None);
    assert_eq!(TileClass::of(f64::NAN), None);
    assert_eq!(tile::PORCELAIN.standing, Standing::Published);
}

const fn ph(low: f64, high: f64) -> PhRange {
    PhRange { low, high }
}

#[track_caller]
fn assert_harmed(surface: Surface, family: Family, reason: &str, standing: Standing) {
    let FloorVerdict::DoesNotFit { reasons } = verdict(surface, &[family], Some(ph(7.5, 7.5))) else {
        panic!("{family:?} is let onto {surface:?}");
    };
    assert!(
        reasons.iter().any(|one| one.key() == reason
            && matches!(one, Reason::Family(harm) if harm.source.standing == standing)),
        "{surface:?} {family:?}: {reasons:?}"
    );
}

#[test]
fn floors_as_published() {
    // GSA terrazzo procedure: no acids, alkalis, carbonates or trisodium phosphate.
    assert_harmed(Surface::Terrazzo, Family::Acid, "floor-reason-acid-terrazzo", Standing::Published);
    assert_harmed(Surface::Terrazzo, Family::Alkali, "floor-reason-alkali-terrazzo", Standing::Published);
    // GSA 0966001P: solvent wax softens rubber.
    assert_harmed(Surface::Rubber, Family::Solvent, "floor-reason-solvent-rubber", Standing::Published);
    // Marble Institute of America care text, second-hand: never vinegar, lemon or acid.
    assert_harmed(Surface::CalcareousStone, Family::Acid, "floor-reason-acid-stone", Standing::Unverified);
    // National Terrazzo and Mosaic Association text, second-hand: pH 7 to 10.
    let window = Surface::Terrazzo.window().unwrap();
    assert_eq!((window.low, window.high, window.source.standing), (7.0, 10.0, Standing::Unverified));
    // Three suppliers, second-hand: 7 to 10, 7 to 9, 7 to 8.5; only what all allow.
    let window = Surface::Rubber.window().unwrap();
    assert_eq!((window.low, window.high), (7.0, 8.5));
}

/// Vinegar made up at 6 fl oz in 10 gal of tap water of alkalinity 100 mg/L has pH 4.76 by charge balance.
#[test]
fn vinegar_never_goes_on_stone_or_terrazzo() {
    for surface in [Surface::CalcareousStone, Surface::Terrazzo] {
        for known in [None, Some(ph(4.76, 4.76)), Some(ph(7.5, 7.5))] {
            for families in [&[Family::Acid][..], &[Family::StrongAcid], &[Family::Neutral, Family::Acid]] {
                assert!(matches!(verdict(surface, families, known), FloorVerdict::DoesNotFit { .. }));
            }
        }
    }
}

#[test]
fn ph_against_the_window() {
    let neutral = [Family::Neutral];
    let on = |range| verdict(Surface::Terrazzo, &neutral, range);
    assert_eq!(on(Some(ph(7.0, 10.0))), FloorVerdict::Fits);
    let does_not = |range, key| match on(range) {
        FloorVerdict::DoesNotFit { reasons } => assert_eq!(reasons[0].key(), key),
        other => panic!("{other:?}"),
    };
    does_not(Some(ph(5.0, 6.9)), "floor-reason-too-acid");
    does_not(Some(ph(10.1, 12.0)), "floor-reason-too-alkaline");
    assert_eq!(on(Some(ph(6.5, 7.5))), FloorVerdict::Unknown { missing: vec![Missing::CloserPh] });
    assert_eq!(on(None), FloorVerdict::Unknown { missing: vec![Missing::Ph] });
    for unsound in [Some(ph(f64::NAN, 7.0)), Some(ph(8.0, 7.0)), Some(ph(7.0, f64::INFINITY))] {
        assert_eq!(on(unsound), FloorVerdict::Unknown { missing: vec![Missing::Ph] });
    }
    let sheet = Window { low: 5.0, high: 9.0, source: Source::COMMON_PRACTICE };
    assert_eq!(
        verdict_within(Surface::Terrazzo, Some(sheet), &neutral, Some(ph(6.5, 7.5))),
        FloorVerdict::Fits
    );
    assert_eq!(
        verdict(Surface::ImperviousTile, &[Family::Alkali], Some(ph(10.5, 11.0))),
        FloorVerdict::Unknown { missing: vec![Missing::FloorLimit] }
    );
}
