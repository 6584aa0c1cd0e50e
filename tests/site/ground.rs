//! A finish narrows what its floor bears: on Fill, on Shift, in every verdict, and never widens it.

use crate::{after, write};
use brimline::answer::Fact;
use brimline::chemistry::family::Family;
use brimline::chemistry::floor::{
    Cover, FloorVerdict, Ground, Missing, PhRange, Reason, Surface, Window, verdict,
};
use brimline::form::action::{Line, reduce};
use brimline::form::cautions::{UsePh, ground, remarks};
use brimline::form::site::Act;
use brimline::form::{Action, Field, Typed, fill, shift};
use brimline::number::Marks;
use brimline::source::Source;
use proptest::prelude::*;

fn on_finish(id: &str) -> Action {
    Act::FloorFinish(id.into()).action()
}

fn ph(text: &str) -> Action {
    Action::Text(Line::Ph, text.into())
}

fn floor_codes(typed: &Typed) -> Vec<&'static str> {
    let codes = remarks(typed, Marks::POINT).into_iter().map(|remark| remark.code);
    codes.filter(|code| code.starts_with("remark-floor-")).collect()
}

/// Finished vinyl bears pH 6 to 9 (common practice), the gloss finish 6.5 to 8.5 by its label: 8.8 lies between.
#[test]
fn a_finish_narrows_its_floor_on_fill_and_on_shift() {
    let bare = after([ph("8.8")]);
    assert_eq!(floor_codes(&bare), [""; 0], "the vinyl alone bears it");
    let finished = reduce(bare, on_finish("gloss"));
    assert_eq!(floor_codes(&finished), ["remark-floor-does-not-fit"]);
    let answer = fill::work(&finished, Marks::POINT).outcome.answer;
    assert!(answer.stopped(), "it stands where the amount would stand");
    let remark = answer.remarks.iter().find(|one| one.code == "remark-floor-does-not-fit").expect("a remark");
    let end = |name: &str| match remark.facts.iter().find(|(fact, _)| *fact == name) {
        Some((_, Fact::Value(value))) => value.si,
        other => panic!("{other:?}"),
    };
    assert_eq!((end("low").to_string(), end("high").to_string()), ("6.5".into(), "8.5".into()));
    let shift = shift::work(&finished, Marks::POINT).outcome.answer;
    assert!(shift.remarks.iter().any(|one| one.code == "remark-shift-floor"));
    let verdict = UsePh::of(&finished, Marks::POINT).verdict(
        finished.product().expect("a product"),
        ground(&finished.site, finished.floor().expect("a floor"), Marks::POINT),
    );
    assert!(matches!(verdict, FloorVerdict::DoesNotFit { .. }));
    assert_eq!(floor_codes(&reduce(finished, on_finish(""))), [""; 0], "and without it it fits again");
}

#[test]
fn a_warning_that_was_read_is_read_again_for_another_finish() {
    let read = after([on_finish("gloss"), Action::StopRead]);
    assert!(read.ask.stop_read);
    assert!(!reduce(read.clone(), on_finish("matte")).ask.stop_read);
    assert!(!reduce(read.clone(), write(Field::FinishPhHigh, "7.5")).ask.stop_read);
    assert!(reduce(read, write(Field::FinishCoats, "5")).ask.stop_read);
}

#[test]
fn a_finish_of_which_nothing_is_known_clears_nothing() {
    let typed = after([on_finish("gloss")]);
    assert_eq!(floor_codes(&typed), [""; 0]);
    for actions in [
        vec![write(Field::FinishPhLow, ""), write(Field::FinishPhHigh, "")],
        vec![write(Field::FinishPhLow, "9"), write(Field::FinishPhHigh, "8")],
        vec![write(Field::FinishPhLow, "seven")],
        vec![write(Field::FinishPhHigh, "15")],
        vec![on_finish("a finish that the site has lost")],
    ] {
        let unknown = actions.clone().into_iter().fold(typed.clone(), reduce);
        assert_eq!(floor_codes(&unknown), ["remark-floor-unknown"], "{actions:?}");
    }
    // One end is enough; the other counts as near neutral.
    let half = reduce(typed, write(Field::FinishPhLow, ""));
    assert_eq!(floor_codes(&half), [""; 0]);
    assert_eq!(floor_codes(&reduce(half, ph("5.9"))), ["remark-floor-does-not-fit"]);
}

/// What strips the finish of vinyl strips it on any floor: common practice.
#[test]
fn what_strips_a_finish_strips_it_everywhere() {
    let tile = |cover| Ground { surface: Surface::ImperviousTile, cover };
    let alkali = [Family::StrongAlkali];
    let seven = Some(PhRange { low: 7.0, high: 7.0 });
    assert_eq!(tile(Cover::Bare).verdict(&alkali, seven), FloorVerdict::Fits);
    let finished = tile(Cover::finish(Some(6.0), Some(9.0))).verdict(&alkali, seven);
    let FloorVerdict::DoesNotFit { reasons } = finished else { panic!("{finished:?}") };
    assert_eq!(reasons.iter().map(Reason::key).collect::<Vec<_>>(), ["floor-reason-alkali-finish"]);
    let FloorVerdict::Unknown { missing } = tile(Cover::Unknown).verdict(&[Family::Neutral], seven) else {
        panic!("it is cleared")
    };
    assert_eq!(missing, [Missing::FinishLimit]);
}

/// Terrazzo bears 7 to 10; a finish that bears 5 to 6 shares nothing with it.
#[test]
fn windows_that_share_nothing_clear_nothing() {
    let ground = Ground { surface: Surface::Terrazzo, cover: Cover::finish(Some(5.0), Some(6.0)) };
    assert_eq!(ground.window(), None);
    for tenth in 0..=140 {
        let at = f64::from(tenth) / 10.0;
        let verdict = ground.verdict(&[Family::Neutral], Some(PhRange { low: at, high: at }));
        assert!(matches!(verdict, FloorVerdict::DoesNotFit { .. }), "pH {at}: {verdict:?}");
    }
}

fn rank(verdict: &FloorVerdict) -> u8 {
    match verdict {
        FloorVerdict::Fits => 0,
        FloorVerdict::Unknown { .. } => 1,
        FloorVerdict::DoesNotFit { .. } => 2,
    }
}

proptest! {
    /// Whatever the finish, it never makes a verdict milder; nor does one that bears less than another.
    #[test]
    fn a_finish_only_narrows(
        surface in proptest::sample::select(Surface::ALL.to_vec()),
        families in proptest::collection::vec(proptest::sample::select(Family::ALL.to_vec()), 0..3),
        low in 0.0..14.0_f64, width in 0.0..14.0_f64, in_low in 0.0..1.0_f64, in_high in 0.0..1.0_f64,
        at in 0.0..14.0_f64, spread in 0.0..3.0_f64, known in any::<bool>(),
    ) {
        let ph = known.then_some(PhRange { low: at, high: at + spread });
        let of = |low: f64, high: f64| Ground {
            surface,
            cover: Cover::Bears(Window { low, high, source: Source::COMMON_PRACTICE }),
        }.verdict(&families, ph);
        let wide = of(low, low + width);
        prop_assert!(rank(&wide) >= rank(&verdict(surface, &families, ph)));
        let half = width / 2.0;
        let narrow = of(low + half * in_low, low + width - half * in_high);
        prop_assert!(rank(&narrow) >= rank(&wide), "{wide:?} became {narrow:?}");
        let unknown = Ground { surface, cover: Cover::Unknown }.verdict(&families, ph);
        prop_assert!(rank(&unknown) >= 1);
        if !known {
            prop_assert!(rank(&wide) >= 1, "an unknown pH is never cleared");
        }
    }
}
