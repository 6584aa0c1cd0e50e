//! Trial patches: what to mix, worked by hand, and what the records say and do not say.

use crate::{after, assert_printed, codes, pick, write};
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::site::Act;
use brimline::form::site::finish::candidates::Suits;
use brimline::form::site::finish::trial::{DATE, FLOOR, Mix, PRODUCT, Tried, work};
use brimline::form::{Action, Field, Typed, What, names};
use brimline::number::Marks;
use brimline::site::{Film, Standing};
use brimline::trade::governing::Aim;
use brimline::units::{Quantity, unit};

/// The trial of the demo without its records: the daily cleaner, 1 to 3 oz/gal, on the vinyl.
fn blank() -> Typed {
    after([pick(Shelf::Trial, "t1"), Act::Add(Shelf::Trial).action(), of("daily")])
}

fn of(product: &str) -> Action {
    Act::TrialProduct(product.into()).action()
}

fn film(patch: usize, film: Film) -> Action {
    Act::Film(patch, film).action()
}

fn tried(actions: impl IntoIterator<Item = Action>) -> Tried {
    work(&actions.into_iter().fold(blank(), reduce), Marks::POINT)
}

fn ml(mix: &Mix) -> f64 {
    mix.amount.si * 1e6
}

/// A litre at 1 oz/gal, 1/129: 7.752 mL, 8 with a small cylinder, which makes 1 to 124. At 3 oz/gal, 3/131: 22.90 mL,
/// 23. Half way between the shares are 15.326 mL; the roundest number within a hundredth of it, written as the label
/// writes it, is 2 oz/gal, 2/130: 15.385 mL, 15.
#[test]
fn small_batches_by_hand() {
    let found = tried([]);
    assert_eq!(found.outcome.troubles, []);
    let [low, middle, high] = &found.mixes[..] else { panic!("{:?}", found.mixes) };
    for (mix, exact, rounded) in [(low, "7.752", "8.0"), (middle, "15.385", "15.0"), (high, "22.901", "23.0")]
    {
        assert_printed(ml(mix), exact);
        assert_printed(mix.rounded.expect("enough").si * 1e6, rounded);
    }
    assert_printed(low.makes.expect("a ratio").si, "124.000");
    assert_printed(low.water.expect("a liquid").si * 1e6, "992.0");
    assert_eq!((low.dilution.as_str(), low.aim), ("1 oz/gal", Aim::Low));
    assert!(found.mixes.iter().all(|mix| mix.candidate.suits == Suits::Fits));
    // A gallon takes 1 oz × 128/129.
    let gallon = tried([Action::Unit(Field::Batch, "gal_us".into()), write(Field::Batch, "1")]);
    let ounces = unit("floz_us").expect("a unit").from_si(gallon.mixes[0].amount.si);
    assert_printed(ounces, "0.99225");
}

#[test]
fn a_batch_too_small_to_measure_is_told_with_one_that_would_do() {
    // 100 mL at 1/129 are 0.775 mL; ten millilitres need 1.29 L.
    let small = tried([Action::Unit(Field::Batch, "ml".into()), write(Field::Batch, "100")]);
    assert!(small.mixes[0].rounded.is_none() && small.mixes[2].rounded.is_some());
    let remark =
        small.outcome.answer.remarks.iter().find(|one| one.code == "remark-trial-small").expect("a warning");
    let (_, fact) = remark.facts.iter().find(|(name, _)| *name == "batch").expect("a batch");
    let brimline::answer::Fact::Value(batch) = fact else { panic!("{fact:?}") };
    assert_printed(batch.si * 1e3, "1.290");
    // 160 mL at 1/129 are 1.24 mL, measured as 1.0: a fifth off.
    let coarse = tried([Action::Unit(Field::Batch, "ml".into()), write(Field::Batch, "160")]);
    assert!(codes(&coarse.outcome.answer).contains(&"remark-trial-coarse"));
    assert!(
        !codes(&tried([]).outcome.answer)
            .iter()
            .any(|code| ["remark-trial-coarse", "remark-trial-small"].contains(code))
    );
}

#[test]
fn one_strength_is_one_patch_and_a_powder_is_weighed() {
    let one = tried([of("neutral")]);
    assert_eq!((one.mixes.len(), one.mixes[0].dilution.as_str()), (1, "1:64"));
    assert!(codes(&one.outcome.answer).contains(&"remark-trial-one"));
    // 1/2 to 1 oz wt/gal: 3.74 to 7.49 g/L (pint: 1 oz/gal = 7.48915 g/L).
    let powder = tried([of("powder")]);
    let grams: Vec<f64> = powder.mixes.iter().map(|mix| mix.amount.si * 1e3).collect();
    assert_printed(grams[0], "3.7446");
    assert_printed(grams[2], "7.4892");
    assert_printed(powder.mixes[2].rounded.expect("a scale").si * 1e3, "7.5");
    let tablets = tried([of("tablets")]);
    assert_eq!(tablets.outcome.at(PRODUCT), Some(&What::NoLiquid));
    // 6 fl oz for 10 gal: 4.6875 mL for a litre.
    let vinegar = tried([of("vinegar")]);
    assert_printed(ml(&vinegar.mixes[0]), "4.6875");
    assert_eq!(vinegar.mixes[0].dilution, "6 oz per tank");
}

#[test]
fn what_is_wrong_is_told_at_its_field() {
    assert_eq!(tried([of("moon")]).outcome.at(PRODUCT), Some(&What::NoRecord));
    assert_eq!(tried([Act::TrialFloor("moon".into()).action()]).outcome.at(FLOOR), Some(&What::NoRecord));
    assert_eq!(
        tried([Action::Text(Line::TrialDate, "yesterday".into())]).outcome.at(DATE),
        Some(&What::Date)
    );
    assert!(matches!(tried([write(Field::Batch, "?")]).outcome.at("trial-batch"), Some(What::Number(_))));
    let gloss = tried([write(Field::PatchGloss(1), "shiny")]);
    assert!(matches!(gloss.outcome.at("patch-2-gloss"), Some(What::Number(_))));
    assert_eq!(gloss.mixes.len(), 3, "the mixes stand all the same");
    let mut none = blank();
    none.site.trials.clear();
    assert!(work(&none, Marks::POINT).mixes.is_empty());
}

#[test]
fn the_weakest_without_a_film_is_suggested() {
    let nothing = tried([]);
    assert_eq!(nothing.suggested, None);
    assert!(codes(&nothing.outcome.answer).contains(&"remark-trial-not-seen"));
    let seen = tried([film(0, Film::Slight), film(1, Film::None), film(2, Film::None)]);
    assert_eq!(seen.suggested, Some(1));
    assert_eq!(seen.outcome.answer.get(names::TRIAL_SUGGESTED).map(|value| value.si), Some(2.0));
    assert!(!codes(&seen.outcome.answer).contains(&"remark-trial-weaker"));
    let skipped = tried([film(2, Film::None)]);
    assert_eq!(skipped.suggested, Some(2));
    assert!(codes(&skipped.outcome.answer).contains(&"remark-trial-weaker"));
    let everywhere = tried([film(0, Film::Plain), film(1, Film::Plain), film(2, Film::Slight)]);
    assert_eq!(everywhere.suggested, None);
    assert!(codes(&everywhere.outcome.answer).contains(&"remark-trial-none"));
    let partly = tried([film(0, Film::Plain)]);
    assert!(partly.suggested.is_none() && codes(&partly.outcome.answer).contains(&"remark-trial-none-yet"));
}

/// ANSI A326.3 asks 0.42 of floors that are walked on wet, seen second-hand.
#[test]
fn a_slippery_patch_is_told_and_not_suggested() {
    let all = [film(0, Film::None), film(1, Film::None), film(2, Film::None)];
    let slippery = tried(all.iter().cloned().chain([write(Field::PatchSlip(0), "0.3")]));
    assert_eq!(slippery.suggested, Some(1));
    assert!(codes(&slippery.outcome.answer).contains(&"remark-trial-slippery"));
    let grips = tried(all.into_iter().chain([write(Field::PatchSlip(0), "0.42")]));
    assert_eq!(grips.suggested, Some(0));
}

#[test]
fn gloss_is_told_and_not_judged() {
    let none = tried([]);
    assert!(!codes(&none.outcome.answer).iter().any(|code| code.starts_with("remark-trial-gloss")));
    let one = tried([write(Field::PatchGloss(0), "70")]);
    assert!(codes(&one.outcome.answer).contains(&"remark-trial-gloss-one"));
    let two = tried([write(Field::PatchGloss(0), "71"), write(Field::PatchGloss(2), "62")]);
    let remark =
        two.outcome.answer.remarks.iter().find(|one| one.code == "remark-trial-gloss").expect("a remark");
    let told = brimline::words::Words::english().remark(remark, brimline::units::System::Us);
    assert!(
        told.starts_with("The gloss of the patches reads from 62 to 71, 9 apart.")
            && told.contains("not judged"),
        "{told}"
    );
}

#[test]
fn what_harms_the_floor_is_never_suggested() {
    let harmful = tried([of("degreaser"), film(0, Film::None), film(1, Film::None), film(2, Film::None)]);
    assert!(harmful.mixes.iter().all(|mix| mix.candidate.suits == Suits::DoesNotFit));
    assert_eq!(harmful.suggested, None);
}

#[test]
fn a_chosen_patch_begins_a_draft_with_a_dilution_that_reads() {
    let typed = blank();
    let mixes = work(&typed, Marks::POINT).mixes;
    for mix in &mixes {
        let draft =
            Act::Draft { floor: "vinyl".into(), product: "daily".into(), dilution: mix.dilution.clone() };
        let after = reduce(typed.clone(), draft.action());
        let standard = after.standard().expect("a draft");
        assert_eq!((standard.standing, &standard.dilution), (Standing::Draft, &mix.dilution));
        let total = brimline::form::site::asked::asked(&after, standard, "walk-behind", "cup-ml", 100);
        let fill = brimline::form::fill::work(&total, Marks::POINT).outcome;
        assert_eq!(fill.troubles, []);
        let share = fill.answer.get(names::FILL_STRENGTH).expect("a strength").si;
        let aimed = mix.candidate.strength.expect("a share").si();
        assert!((share / aimed - 1.0).abs() < 1e-9, "{}", mix.dilution);
    }
}
