//! What floors bear, and how thirsty they are.

use brimline::chemistry::family::Family;
use brimline::chemistry::floor::thirst::{self, Guide, Joints, Known, Texture, guide};
use brimline::chemistry::floor::tile::{self, IsoGroup, TileClass};
use brimline::chemistry::floor::{
    FloorVerdict, Missing, PhRange, Reason, Surface, Window, verdict, verdict_within,
};
use brimline::source::{Source, Standing};
use brimline::trade::porosity::Porosity;
use brimline::units::{Duration, VolumeFraction};

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

/// ISO 13006:2018: annex A is of group `AIb`, over 0.5 to 3 %, annexes B and C of `AIIa`, over 3 to 6 %. The
/// others as EN 14411:2006, second-hand: `Ia` to 0.5 %, `IIb` over 6 to 10 %, III over 10 %.
#[test]
fn tile_groups_by_absorption() {
    for (absorption, group) in [
        (0.0, IsoGroup::Ia),
        (0.5, IsoGroup::Ia),
        (0.51, IsoGroup::Ib),
        (3.0, IsoGroup::Ib),
        (3.01, IsoGroup::IIa),
        (6.0, IsoGroup::IIa),
        (6.01, IsoGroup::IIb),
        (10.0, IsoGroup::IIb),
        (10.01, IsoGroup::III),
    ] {
        assert_eq!(IsoGroup::of(absorption), Some(group), "{absorption} %");
    }
    assert_eq!(IsoGroup::of(-0.1), None);
    assert_eq!(IsoGroup::of(f64::NAN), None);
    assert_eq!(IsoGroup::IIa.source().standing, Standing::Published);
    assert_eq!(IsoGroup::Ia.source().standing, Standing::Unverified);
    // What is typed as per cent becomes a share: at each limit the drier class stays.
    for limit in [0.5, 3.0, 6.0, 7.0, 10.0] {
        let percent = VolumeFraction::new(limit * 0.01).percent();
        assert_eq!(IsoGroup::of(percent), IsoGroup::of(limit), "{limit} %");
        assert_eq!(TileClass::of(percent), TileClass::of(limit), "{limit} %");
    }
}

const NOTHING: Known = Known {
    surface: Surface::Unknown,
    absorption: None,
    texture: Texture::Unknown,
    joints: Joints::Unknown,
    drop: None,
};

fn points(known: Known) -> (Porosity, Vec<thirst::Reason>) {
    let Guide { class, reasons } = guide(known).expect("a class");
    assert_eq!(reasons.last().map(|(_, class)| *class), Some(class), "the last reason decides");
    (class, reasons.into_iter().map(|(reason, _)| reason).collect())
}

/// "A seal or finish closes the floor", "open grout drinks", "a drop on the floor tells more than a sheet":
/// common practice, no source.
#[test]
fn what_is_known_of_a_floor_points_to_a_class() {
    use Porosity::{High, Low, Medium, Sealed};
    use thirst::Reason;
    let tile = Known { surface: Surface::SemiVitreousTile, ..NOTHING };
    let share = |percent: f64| Some(VolumeFraction::new(percent / 100.0));
    let after = |seconds: f64| Some(Duration::new(seconds));
    assert_eq!(points(tile), (Medium, vec![Reason::Surface]));
    // The data sheet of the very tile counts before what it is called.
    for (percent, class) in [(0.4, Sealed), (2.0, Low), (6.5, Medium), (12.0, High)] {
        let (got, reasons) = points(Known { absorption: share(percent), ..tile });
        assert_eq!((got, reasons.len()), (class, 2), "{percent} %");
        assert_eq!(points(Known { absorption: share(percent), ..NOTHING }).0, class, "of nothing else");
    }
    // A drop on the very floor counts before the data sheet; the joints come on top of it.
    let sheet = Known { absorption: share(12.0), ..tile };
    assert_eq!(points(Known { drop: after(200.0), ..sheet }).0, Low);
    let (class, reasons) = points(Known { drop: after(200.0), joints: Joints::Open, ..sheet });
    assert_eq!(class, Medium);
    assert_eq!(reasons[2..], [Reason::Drop, Reason::Joints]);
    // One class wetter, both together no more than one, and not beyond medium.
    let porcelain = Known { surface: Surface::ImperviousTile, ..NOTHING };
    assert_eq!(points(Known { texture: Texture::Textured, ..porcelain }).0, Low);
    let both = Known { texture: Texture::Textured, joints: Joints::Open, ..porcelain };
    assert_eq!(points(both), (Low, vec![Reason::Surface, Reason::TextureAndJoints]));
    assert_eq!(points(Known { joints: Joints::Open, ..tile }), (Medium, vec![Reason::Surface]));
    for closed in [Joints::Unknown, Joints::None, Joints::Sealed] {
        assert_eq!(points(Known { joints: closed, texture: Texture::Smooth, ..porcelain }).0, Sealed);
    }
}

#[test]
fn a_sealed_floor_stays_sealed_unless_a_drop_says_otherwise() {
    use thirst::Reason;
    for surface in [Surface::FinishedVinyl, Surface::SealedWood, Surface::SealedConcrete] {
        let thirsty = Known {
            surface,
            absorption: Some(VolumeFraction::new(0.2)),
            texture: Texture::Textured,
            joints: Joints::Open,
            drop: None,
        };
        assert_eq!(points(thirsty), (Porosity::Sealed, vec![Reason::Seal]));
        let long = points(Known { drop: Some(Duration::new(900.0)), ..thirsty });
        assert_eq!(long, (Porosity::Sealed, vec![Reason::Seal, Reason::Drop]));
        let gone = points(Known { drop: Some(Duration::new(8.0)), ..thirsty });
        assert_eq!(gone, (Porosity::High, vec![Reason::Seal, Reason::WornSeal]));
    }
    // A glaze closes the tile and not its joints.
    let glazed =
        Known { surface: Surface::GlazedTile, absorption: Some(VolumeFraction::new(0.15)), ..NOTHING };
    assert_eq!(points(glazed), (Porosity::Sealed, vec![Reason::Surface, Reason::Glaze]));
    assert_eq!(points(Known { joints: Joints::Open, ..glazed }).0, Porosity::Low);
    // Nothing known points nowhere, whatever the joints.
    assert_eq!(guide(Known { joints: Joints::Open, texture: Texture::Textured, ..NOTHING }), None);
    assert_eq!(thirst::SOURCE, Source::COMMON_PRACTICE);
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
