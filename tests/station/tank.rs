//! Laws of topping up and of rescuing.

use crate::{near, within};
use brimline::limits;
use brimline::trade::rescue::{
    Meeting, Remedy, Rescue, TOLERANCE, WrongProduct, forgotten, rescue, wrong_product,
};
use brimline::trade::top_up::{Content, TopUp, Unfit, Wanted, Work, bounds, fresh, top_up};
use brimline::units::{Quantity, Volume, VolumeFraction};
use proptest::prelude::*;

/// Strengths from 1 in 100,000 to one half.
fn strength() -> impl Strategy<Value = VolumeFraction> {
    within::<VolumeFraction>(&limits::STRENGTH).prop_map(|r| r * 0.5)
}

/// A strength that was found: water, neat, or anything between.
fn found() -> impl Strategy<Value = VolumeFraction> {
    prop_oneof![
        1 => Just(VolumeFraction::ZERO),
        1 => Just(VolumeFraction::new(1.0)),
        8 => within::<VolumeFraction>(&limits::READ_STRENGTH),
    ]
}

/// A tank, something left in it, and a wanted level.
fn tank() -> impl Strategy<Value = (Volume, Volume, Volume)> {
    (within::<Volume>(&limits::TANK), 0.0..=1.0_f64, 0.01..=1.0_f64)
        .prop_map(|(tank, left, level)| (tank, tank * left, tank * level))
}

/// Nothing is taken that was not there, nothing flows over, nothing is negative.
fn can_be_done(work: Work, before: Content, tank: Volume) -> bool {
    let crumb = Volume::ZERO - tank * 1e-12;
    work.drain >= crumb
        && work.water >= crumb
        && work.concentrate >= crumb
        && work.drain <= before.volume * (1.0 + 1e-9)
        && work.on(before).volume <= tank * (1.0 + 1e-9)
}

proptest! {
    #[test]
    fn a_top_up_returns_exactly_the_target(
        (tank, left, level) in tank(), was in found(), strength in strength(),
    ) {
        let before = Content { volume: left, strength: was };
        let way = top_up(before, Wanted { level, strength, tank }).unwrap();
        let after = way.work().on(before);
        prop_assert!(can_be_done(way.work(), before, tank), "{:?}", way);
        prop_assert!(near(after.volume.si(), level.si()), "{:?}", way);
        prop_assert!(near(after.strength.si(), strength.si()), "{:?} makes {:?}", way, after);
        match way {
            TopUp::Add(work) => prop_assert_eq!(work.drain, Volume::ZERO),
            TopUp::DrainStrong(work) => prop_assert_eq!(work.concentrate, Volume::ZERO),
            TopUp::DrainWeak(work) => prop_assert_eq!(work.water, Volume::ZERO),
        }
    }

    /// Use, top up, use, top up: the strength never drifts.
    #[test]
    fn any_use_between_top_ups_changes_nothing(
        tank in within::<Volume>(&limits::TANK), strength in strength(),
        uses in proptest::collection::vec(0.0..=1.0_f64, 1..12),
    ) {
        let wanted = Wanted { level: tank, strength, tank };
        let mut content = Content { volume: Volume::ZERO, strength: VolumeFraction::ZERO };
        let mut concentrate = Volume::ZERO;
        for used in uses {
            let left = Content { volume: content.volume * (1.0 - used), ..content };
            let work = top_up(left, wanted).unwrap().work();
            prop_assert!(work.drain.si() <= tank.si() * 1e-9, "what is right is not drained");
            prop_assert!((work.concentrate - strength * (tank - left.volume)).si().abs() <= tank.si() * 1e-9);
            content = work.on(left);
            concentrate += work.concentrate;
            prop_assert!(near(content.strength.si(), strength.si()));
        }
    }

    #[test]
    fn splitting_a_fill_in_two_changes_nothing(
        tank in within::<Volume>(&limits::TANK), strength in strength(), part in 0.01..=1.0_f64,
    ) {
        let empty = Content { volume: Volume::ZERO, strength: VolumeFraction::ZERO };
        let to = |level| Wanted { level, strength, tank };
        let once = top_up(empty, to(tank)).unwrap().work();
        let first = top_up(empty, to(tank * part)).unwrap().work();
        let second = top_up(first.on(empty), to(tank)).unwrap().work();
        prop_assert!(near((first.concentrate + second.concentrate).si(), once.concentrate.si()));
        prop_assert!(near((first.water + second.water).si(), once.water.si()));
        let (a, b) = (once.on(empty), second.on(first.on(empty)));
        prop_assert!(near(a.strength.si(), b.strength.si()) && near(a.volume.si(), b.volume.si()));
    }

    /// No less could have been drained: one thousandth less leaves water or concentrate negative.
    #[test]
    fn no_more_is_drained_than_must_be((tank, left, level) in tank(), was in found(), strength in strength()) {
        let wanted = Wanted { level, strength, tank };
        let drain = top_up(Content { volume: left, strength: was }, wanted).unwrap().work().drain;
        if drain.si() <= tank.si() * 1e-6 {
            return Ok(());
        }
        let kept = left - drain * 0.999;
        let concentrate = strength * level - was * kept;
        let water = level - kept - concentrate;
        prop_assert!(concentrate < Volume::ZERO || water < Volume::ZERO);
    }

    #[test]
    fn a_rest_of_unknown_strength_is_bounded(
        (tank, left, level) in tank(), label in strength(), strength in strength(), share in 0.0..=1.0_f64,
    ) {
        let wanted = Wanted { level, strength, tank };
        let plan = fresh(left, label, wanted).unwrap();
        let before = Content { volume: left, strength: label * share };
        let after = plan.work.on(before);
        prop_assert!(near(after.volume.si(), level.si()) && near(after.strength.si(), strength.si()));
        prop_assert_eq!(plan.work.drain, left);
        // Any rest up to the label's strength ends within the bounds.
        let bounds = bounds(left, label, wanted);
        prop_assert_eq!(bounds, plan.by_label);
        let end = level.max(left);
        let kept = Work { drain: Volume::ZERO, water: strength.water() * (end - left), concentrate: strength * (end - left) };
        let mixed = kept.on(before).strength.si();
        prop_assert!(mixed >= bounds.strength.low.si() * (1.0 - 1e-9));
        prop_assert!(mixed <= bounds.strength.high.si() * (1.0 + 1e-9));
        prop_assert!(plan.at_worst.strength.high >= bounds.strength.high);
        if let TopUp::Add(work) = top_up(before, wanted).unwrap() {
            prop_assert!(work.concentrate.si() >= bounds.concentrate.low.si() * (1.0 - 1e-9) - level.si() * 1e-12);
            prop_assert!(work.concentrate.si() <= bounds.concentrate.high.si() * (1.0 + 1e-9));
        }
    }

    #[test]
    fn a_rescue_makes_the_target((tank, volume, _) in tank(), read in found(), target in strength()) {
        prop_assume!(volume > Volume::ZERO);
        let before = Content { volume, strength: read };
        let way = rescue(before, target, tank, TOLERANCE);
        let after = way.work().on(before);
        prop_assert!(can_be_done(way.work(), before, tank), "{:?}", way);
        let off = (read / target - 1.0).abs();
        if way == Rescue::Right {
            prop_assert!(off <= TOLERANCE && near(after.strength.si(), read.si()) && near(after.volume.si(), volume.si()));
        } else {
            prop_assert!(off > TOLERANCE);
            prop_assert!(near(after.strength.si(), target.si()), "{:?} makes {:?}", way, after);
            prop_assert_eq!(matches!(way, Rescue::Weak(_)), read < target);
            prop_assert_eq!(rescue(after, target, tank, TOLERANCE), Rescue::Right);
            if way.work().drain > Volume::ZERO {
                prop_assert!(near(after.volume.si(), tank.si()), "no more is drained than makes the room");
            }
        }
    }

    /// The dose that nobody remembers, added once more.
    #[test]
    fn a_forgotten_dose_is_bounded(volume in within::<Volume>(&limits::TANK), dose in strength()) {
        let plan = forgotten(dose, true);
        let add = Work { drain: Volume::ZERO, water: Volume::ZERO, concentrate: volume * (dose / dose.water()) };
        let after = |strength| add.on(Content { volume, strength }).strength.si();
        prop_assert!(near(after(plan.now.low), plan.if_dosed.low.si()));
        prop_assert!(near(after(plan.now.high), plan.if_dosed.high.si()));
        prop_assert_eq!((plan.act, forgotten(dose, false).act), (Remedy::ReadFirst, Remedy::DrainAndRinse));
    }
}

#[test]
fn what_does_not_fit_is_told() {
    let v = Volume::new;
    let left = |volume| Content { volume: v(volume), strength: VolumeFraction::ZERO };
    let wanted = |level| Wanted { level: v(level), strength: VolumeFraction::new(0.01), tank: v(50.0) };
    assert_eq!(top_up(left(10.0), wanted(51.0)), Err(Unfit::Level));
    assert_eq!(top_up(left(51.0), wanted(50.0)), Err(Unfit::Residue));
    assert!(fresh(v(51.0), VolumeFraction::ZERO, wanted(50.0)).is_err());
    assert!(top_up(left(50.0), wanted(50.0)).is_ok());
}

/// A mixture of two products is never kept, whatever its strength.
#[test]
fn the_wrong_product_is_never_kept() {
    use WrongProduct::{DrainAndRinse, KeepAway};
    for (meeting, act) in [
        (Meeting::NotListed, DrainAndRinse),
        (Meeting::Spoils, DrainAndRinse),
        (Meeting::Harms, KeepAway),
        (Meeting::Unknown, KeepAway),
    ] {
        assert_eq!(wrong_product(meeting), act, "{meeting:?}");
    }
}
