//! All products of a site with each other, what was in the tank before, residue, the shake test.

use brimline::answer::Weight;
use brimline::chemistry::family::Family;
use brimline::chemistry::floor::{FloorVerdict, Reason};
use brimline::chemistry::foam::{Foam, shaken};
use brimline::chemistry::ghs::mixture::{Endpoint, Verdict};
use brimline::chemistry::pairs::{Meeting, Severity};
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::cautions::{self, UsePh, ground, mixing, remarks, residue, shake};
use brimline::form::{Action, Field, Typed, What, fill, names, shift};
use brimline::number::Marks;
use brimline::trade::residue::{left_at_most, left_by_one};
use brimline::units::{ApplicationRate, ArealMass, Length, MassConcentration, VolumeFraction};
use proptest::prelude::*;

fn after(actions: impl IntoIterator<Item = Action>) -> Typed {
    actions.into_iter().fold(Typed::default(), reduce)
}

fn pick(id: &str) -> Action {
    Action::Pick(Shelf::Product, id.into())
}

/// CDC, MMWR 40(36):619, 1991: bleach and an acid cleaner, chlorine.
#[test]
fn bleach_and_vinegar_on_one_site_are_found() {
    let typed = after([pick("neutral"), Action::Family(Family::HypochloriteBleach, true)]);
    let matrix = mixing::matrix(&typed);
    let Meeting::Never(pairs) = &matrix[0][2] else { panic!("{:?}", matrix[0][2]) };
    assert_eq!(pairs[0].severity, Severity::Gas);
    assert_eq!(matrix[0][2], matrix[2][0], "it does not matter which was there first");
    assert!(mixing::pairs_on_site(&typed).iter().any(|pair| pair.severity == Severity::Gas));
    let worst = mixing::pairs_on_site(&typed)[0].severity;
    assert_eq!(worst, Severity::Gas, "the most serious first");
}

#[test]
fn what_was_in_the_tank_before_stands_in_the_way() {
    let bleach = |id: &str| vec![pick(id), Action::Family(Family::HypochloriteBleach, true)];
    let typed =
        after(bleach("neutral").into_iter().chain([pick("vinegar"), Action::Before("neutral".into())]));
    let never = remarks(&typed, Marks::POINT).into_iter().find(|one| one.code == "remark-before-never");
    assert_eq!(never.expect("bleach was in it").weight, Weight::Stop);
    assert!(fill::work(&typed, Marks::POINT).outcome.answer.stopped());
    let read = reduce(typed.clone(), Action::StopRead);
    assert!(!fill::work(&read, Marks::POINT).outcome.answer.stopped());
    let again = reduce(read, Action::Before("hand-soap".into()));
    assert!(!again.ask.stop_read, "another product was in it: that was not read");

    let codes =
        |typed: &Typed| -> Vec<&str> { remarks(typed, Marks::POINT).iter().map(|one| one.code).collect() };
    assert!(codes(&after([Action::Before("degreaser".into())])).contains(&"remark-before-other"));
    assert!(
        !codes(&after([Action::Before("neutral".into())]))
            .iter()
            .any(|code| code.starts_with("remark-before"))
    );
    let unknown = after([Action::Add(Shelf::Product), Action::Before("neutral".into())]);
    assert!(codes(&unknown).contains(&"remark-before-unknown"), "nothing is known of a new product");
}

/// A shift that changes from one to the other says so, though a change is a dump and a rinse.
#[test]
fn a_change_between_two_that_may_never_meet_is_named() {
    let typed = after([
        pick("neutral"),
        Action::Family(Family::HypochloriteBleach, true),
        Action::AreaProduct(3, "vinegar".into()),
    ]);
    let answer = shift::work(&typed, Marks::POINT).outcome.answer;
    assert_eq!(answer.remarks.iter().filter(|one| one.code == "remark-before-never").count(), 1);
}

/// Worked by hand: setting 1 of the walk-behind lays down 0.545455 gal/1000 ft² = 22.2250 mL/m²; a tenth
/// stays, 2.22250 mL/m². At 1 to 64 with 12 % w/v (120 g/L) of solids in the concentrate: 2.22250 × 120 / 65
/// = 4.10308 mg/m², in 30 cleanings 123.092 mg/m². 1 gal/1000 ft² = 40.7458333 mL/m² (pint).
#[test]
fn residue_by_hand() {
    let answer = residue::work(&after([Action::Write(Field::Solids, "12".into())]), Marks::POINT).answer;
    let milligrams = |name| answer.get(name).expect(name).si * 1e6;
    assert!((milligrams(names::RESIDUE_ONE) - 4.103_08).abs() < 1e-5, "{}", milligrams(names::RESIDUE_ONE));
    assert!((milligrams(names::RESIDUE_SUM) - 123.092).abs() < 1e-3);
    let unknown = residue::work(&Typed::default(), Marks::POINT);
    assert!(unknown.answer.figures.is_empty() && unknown.troubles.is_empty(), "nothing known, nothing told");
}

/// "Half full, ten shakes, height and fall after one minute": common practice, no source.
#[test]
fn a_shake_test_points_to_a_class() {
    let class = |first: &str, later: &str| {
        let heights = [(Field::FoamFirst, first), (Field::FoamLater, later)];
        let typed = after(heights.map(|(field, text)| Action::Write(field, text.into())));
        shake::work(&typed, Marks::POINT)
    };
    assert_eq!(class("0.3", "0").class, Some(Foam::NonFoaming));
    assert_eq!(class("1", "0.2").class, Some(Foam::Low));
    assert_eq!(class("1", "0.9").class, Some(Foam::Foaming));
    // Little foam that falls slowly is no low foam.
    assert_eq!(class("0.5", "0.25").class, Some(Foam::Foaming));
    assert_eq!(class("0.9", "0.3").class, Some(Foam::Low));
    assert_eq!(class("1", "").class, None);
    assert_eq!(class("1", "2").outcome.at("foam-later"), Some(&What::FoamGrows));
}

proptest! {
    /// More foam, or foam that stays longer, never points to a milder class.
    #[test]
    fn more_foam_is_never_milder(first in 0.0..0.3_f64, share in 0.0..1.0_f64, more in 0.0..0.2_f64) {
        let order = |foam: Foam| Foam::ALL.iter().position(|one| *one == foam);
        let later = first * share;
        let stays = shaken(Length::new(first), Length::new(first.min(later + more)));
        prop_assert!(order(stays) >= order(shaken(Length::new(first), Length::new(later))));
    }

    #[test]
    fn residue_is_proportional(film in 1e-7..1e-3_f64, strength in 1e-5..1.0_f64, solids in 0.1..500.0_f64, n in 1.0..1e4_f64) {
        let one = left_by_one(ApplicationRate::new(film), VolumeFraction::new(strength), MassConcentration::new(solids));
        let double = left_by_one(ApplicationRate::new(2.0 * film), VolumeFraction::new(strength), MassConcentration::new(solids));
        prop_assert!((double / one - 2.0).abs() < 1e-12);
        prop_assert!((left_at_most(one, n) / one / n - 1.0).abs() < 1e-12);
        prop_assert_eq!(left_at_most(ArealMass::ZERO, n), ArealMass::ZERO);
    }
}

/// Vinegar of the demo, 5 % acetic acid (CAS 64-19-7), 6 fl oz to 10 gal of tap water with 100 mg/L alkalinity
/// at pH 7.5: by scipy's root of the charge balance, and PHREEQC, 4.761 (ideal) and 4.741 (Davies) for 5 % w/v.
/// By mass, as the sheet has it, the vinegar is 0.6 % lighter in acid: the band is within 0.01 of that.
#[test]
fn vinegar_on_marble_does_not_fit_by_its_estimated_ph() {
    let typed = after([pick("vinegar"), Action::Pick(Shelf::Floor, "marble".into())]);
    let found = cautions::ph::work(&typed, Marks::POINT);
    let band = found.band.expect("acetic acid is known");
    assert!((band.low - 4.741).abs() < 0.02 && (band.high - 4.741).abs() < 0.04, "{band:?}");
    let marble = typed.floor().expect("a floor");
    let product = typed.product().expect("a product");
    let verdict = UsePh::of(&typed, Marks::POINT).verdict(product, ground(&typed.site, marble, Marks::POINT));
    let FloorVerdict::DoesNotFit { reasons } = verdict else { panic!("{verdict:?}") };
    assert!(reasons.iter().any(|reason| matches!(reason, Reason::TooAcid(_) | Reason::Family(_))));
}

#[test]
fn a_printed_ph_stands_first_and_an_unknown_part_leaves_none() {
    let typed = after([pick("vinegar"), Action::Text(Line::Ph, "6.9".into())]);
    let printed = UsePh::of(&typed, Marks::POINT).range.expect("it is printed");
    assert!((printed.low - 6.9).abs() < 1e-12 && (printed.high - 6.9).abs() < 1e-12);
    let unknown = after([
        pick("vinegar"),
        Action::AddPart,
        Action::Text(Line::PartName(1), "A secret".into()),
        Action::Write(Field::PartHigh(1), "10".into()),
    ]);
    let found = cautions::ph::work(&unknown, Marks::POINT);
    assert_eq!((found.band, found.unknown.as_slice()), (None, &["A secret".to_owned()][..]));
    assert_eq!(UsePh::of(&unknown, Marks::POINT).range, None, "never a reassuring number");
    let wrong = after([pick("vinegar"), Action::Text(Line::PartCas(0), "64-19-8".into())]);
    assert_eq!(cautions::ph::work(&wrong, Marks::POINT).outcome.at("part-1-cas"), Some(&What::Cas));
}

/// Caustic soda and metasilicate at 1 to 25: strongly alkaline, whatever the ends of the ranges.
#[test]
fn a_degreaser_is_alkaline_at_its_dilution() {
    let found = cautions::ph::work(&after([pick("degreaser")]), Marks::POINT);
    let band = found.band.expect("both parts are known");
    assert!(band.low > 11.5 && band.high < 13.5 && band.low < band.high, "{band:?}");
    assert!(
        found.curve.windows(2).all(|pair| pair[0].low <= pair[1].low + 1e-9),
        "more of it, more alkaline"
    );
}

/// The degreaser of the demo: caustic soda 2 to 5 % and metasilicate at 1 to 25, pH above 11.5. Extreme pH:
/// CLP, Annex I, 3.2.3.1.2 and Hazardous Products Regulations (Canada), 8.2.5: category 1.
#[test]
fn a_use_solution_is_screened_and_never_cleared_by_what_is_missing() {
    let verdict = |typed: &Typed, endpoint| {
        cautions::screening::work(typed, Marks::POINT)
            .expect("parts")
            .of(endpoint)
            .expect("a finding")
            .verdict()
    };
    let degreaser = after([pick("degreaser")]);
    assert!(matches!(verdict(&degreaser, Endpoint::Skin), Verdict::Class(class) if class.category == 1));
    // Nobody said what the rest is: it may hold an acid or a lye, and is never "not classified".
    let unread = Action::Signal(brimline::chemistry::ghs::SignalWord::Unknown);
    let vinegar = after([pick("vinegar"), unread, Action::Listed(false)]);
    assert!(!matches!(verdict(&vinegar, Endpoint::Skin), Verdict::NotClassified));
    let listed =
        after([pick("vinegar"), Action::Listed(true), Action::Text(Line::PartCodes(0), String::new())]);
    assert!(!matches!(verdict(&listed, Endpoint::Eye), Verdict::Class(class) if class.category > 2));
    assert!(cautions::screening::work(&after([pick("neutral")]), Marks::POINT).is_none());
}

/// An estimate refuses a floor, and clears one only where the sheet lists all that matters.
#[test]
fn an_estimate_clears_a_floor_only_where_all_is_listed() {
    let on_terrazzo = |listed: bool, water: u16| {
        let typed = after([
            pick("vinegar"),
            Action::Family(Family::Acid, false),
            Action::Family(Family::Neutral, true),
            Action::Write(Field::PartLow(0), "0.9".into()),
            Action::Text(Line::Label, format!("1:{water}")),
            Action::Write(Field::Alkalinity, "400".into()),
            Action::Listed(listed),
            Action::Pick(Shelf::Floor, "terrazzo".into()),
        ]);
        let floor = ground(&typed.site, typed.floor().expect("a floor"), Marks::POINT);
        let ph = UsePh::of(&typed, Marks::POINT);
        (ph.range.expect("a band"), ph.verdict(typed.product().expect("a product"), floor))
    };
    let (band, listed) = on_terrazzo(true, 2000);
    assert!(band.low > 7.3 && band.high < 7.5, "hard water takes so little acid up: {band:?}");
    assert_eq!(listed, FloorVerdict::Fits);
    assert!(matches!(on_terrazzo(false, 2000).1, FloorVerdict::Unknown { .. }));
    // Within 0.3 of the edge, pH 7, an estimate clears nothing.
    let (band, near) = on_terrazzo(true, 400);
    assert!(band.low > 7.0 && band.low < 7.3, "{band:?}");
    assert!(matches!(near, FloorVerdict::Unknown { .. }));
}
