//! The jobs at the fill station beside a plain fill, from what was typed to what to do. Worked by
//! hand; the volumes are exact by NIST SP 811, Appendix B: 1 gal = 128 fl oz.

use brimline::answer::{Remark, Weight};
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::station::{Act, Done, Job, Method, Mishap, Rest, reading, rescue, top_up};
use brimline::form::{Action, Field, Typed, What, fill, names};
use brimline::number::Marks;
use brimline::trade::label::LabelMistake;
use brimline::trade::reading::ReadingMistake;
use proptest::prelude::*;

const FLUID_OUNCE: f64 = 29.573_529_562_5e-6;
const GALLON: f64 = 128.0 * FLUID_OUNCE;

fn after(actions: impl IntoIterator<Item = Action>) -> Typed {
    actions.into_iter().fold(Typed::default(), reduce)
}

fn write(field: Field, text: &str) -> Action {
    Action::Write(field, text.into())
}

/// A figure of an answer in fluid ounces.
#[track_caller]
fn ounces(done: &Done, name: &str) -> f64 {
    done.outcome.answer.get(name).unwrap_or_else(|| panic!("no {name}: {:?}", done.outcome.troubles)).si
        / FLUID_OUNCE
}

#[track_caller]
fn near(got: f64, expected: f64) {
    assert!((got / expected - 1.0).abs() < 1e-9, "{got} is not {expected}");
}

fn codes(done: &Done) -> Vec<&'static str> {
    done.outcome.answer.remarks.iter().map(|remark| remark.code).collect()
}

fn troubles(done: &Done) -> Vec<(&str, &What)> {
    done.outcome.troubles.iter().map(|trouble| (trouble.name.as_str(), &trouble.what)).collect()
}

/// 10 gal tank, 1 to 64, a quarter left as it was filled. Full: 1280 fl oz, a 65th is 19.692; the rest
/// holds 4.923, so 14.769 are missing, and 960 − 14.769 of water.
#[test]
fn a_quarter_is_topped_up() {
    let done = top_up::work(&after([]), Marks::POINT);
    near(ounces(&done, names::STATION_CONCENTRATE), 1280.0 / 65.0 * 0.75);
    near(ounces(&done, names::STATION_WATER), 960.0 - 1280.0 / 65.0 * 0.75);
    // 15 marks of the jug.
    near(ounces(&done, names::STATION_ROUNDED), 15.0);
    assert!(matches!(done.acts[..], [Act::Water(_), Act::Concentrate(_, Some(_))]));
    assert!(codes(&done).contains(&"remark-rest-as-filled"));
}

/// Nobody knows how strong 2.5 gal are: all out, rinse, a fresh dose of 19.692 fl oz.
#[test]
fn an_unknown_rest_is_drained() {
    let done = top_up::work(&after([Action::Rest(Rest::Unknown)]), Marks::POINT);
    near(ounces(&done, names::STATION_CONCENTRATE), 1280.0 / 65.0);
    assert!(matches!(done.acts[..], [Act::DrainAll, Act::Rinse, Act::Water(_), Act::Concentrate(..)]));
    assert!(codes(&done).contains(&"remark-rest-unknown"));
}

/// Half a tank read at 5 °Brix × 1 %: 5 %, 32 fl oz in 640. At 1 to 64 the full tank takes 19.692 fl oz,
/// so only 393.8 of it may stay and 246.2 go first; then water alone.
#[test]
fn a_strong_rest_is_drained_in_part() {
    let done = top_up::work(
        &after([
            write(Field::Left, "50"),
            Action::Rest(Rest::AsRead),
            Action::Method(Method::Refractometer),
            write(Field::Brix, "5"),
            write(Field::PerBrix, "1"),
        ]),
        Marks::POINT,
    );
    near(ounces(&done, names::STATION_DRAIN), 640.0 - 1280.0 / 65.0 / 0.05);
    near(ounces(&done, names::STATION_WATER), 1280.0 - 1280.0 / 65.0 / 0.05);
    assert!(matches!(done.acts[..], [Act::Drain(_), Act::Water(_)]));
    assert!(codes(&done).contains(&"remark-drain-strong"));
}

fn put_in(left: &str, ounces: &str) -> Typed {
    after([write(Field::Left, left), write(Field::PutIn, ounces)])
}

/// 40 fl oz went into half a tank, 640 fl oz: 1 in 16. At 1 to 64 that is enough for 2600 fl oz, which
/// does not fit 1280: half of it goes, 315.08 stay with 19.69 in them, and water fills up.
#[test]
fn too_much_is_thinned() {
    let done = rescue::work(&put_in("50", "40"), Marks::POINT);
    near(ounces(&done, names::STATION_DRAIN), 640.0 - 1280.0 / 65.0 * 16.0);
    near(ounces(&done, names::STATION_WATER), 1280.0 - 1280.0 / 65.0 * 16.0);
    assert!(codes(&done).contains(&"remark-drain-first"));
    // 12 fl oz in half a tank: enough for 780 fl oz, so 140 of water.
    let done = rescue::work(&put_in("50", "12"), Marks::POINT);
    near(ounces(&done, names::STATION_WATER), 140.0);
    assert!(matches!(done.acts[..], [Act::Water(_)]));
}

/// 5 fl oz went into half a tank: 635 of water take 635 / 64 = 9.922, so 4.922 more.
#[test]
fn too_little_is_dosed_up() {
    let done = rescue::work(&put_in("50", "5"), Marks::POINT);
    near(ounces(&done, names::STATION_CONCENTRATE), 635.0 / 64.0 - 5.0);
    assert!(matches!(done.acts[..], [Act::Concentrate(..)]));
    // 9.85 fl oz are a 65th of 640: it is right.
    let done = rescue::work(&put_in("50", "9.85"), Marks::POINT);
    assert_eq!(done.acts, [Act::Nothing]);
}

#[test]
fn a_forgotten_dose_is_read_or_drained() {
    let forgotten = [Action::Mishap(Mishap::Forgotten), write(Field::Left, "100")];
    let done = rescue::work(&after(forgotten.clone()), Marks::POINT);
    assert!(matches!(done.acts[..], [Act::DrainAll, Act::Rinse, Act::Water(_), Act::Concentrate(..)]));
    assert!(done.outcome.troubles.is_empty(), "a reading that is not typed yet is no mistake");
    let read = [Action::Method(Method::Catch), write(Field::Drawn, "1"), write(Field::Caught, "1")];
    let done = rescue::work(&after(forgotten.into_iter().chain(read)), Marks::POINT);
    assert_eq!(done.acts, [Act::Read]);
}

/// Bleach into acid: CDC, MMWR 40(36):619, 1991: chlorine. Nobody drains that at once.
#[test]
fn the_pairs_are_asked_before_a_wrong_product_is_drained() {
    let wrong = |product: &str, other: &str| {
        rescue::work(
            &after([
                Action::Mishap(Mishap::WrongProduct),
                Action::Pick(Shelf::Product, product.into()),
                Action::Other(other.into()),
            ]),
            Marks::POINT,
        )
    };
    assert_eq!(wrong("neutral", "vinegar").acts, [Act::DrainAll, Act::Rinse]);
    // Quat and soap: University of Iowa, Environmental Health and Safety, 8.2.9: one spoils the other.
    let spoiled = wrong("quat", "hand-soap");
    assert_eq!(spoiled.acts, [Act::DrainAll, Act::Rinse]);
    assert!(codes(&spoiled).contains(&"remark-meeting"));
    let mut typed =
        after([Action::Mishap(Mishap::WrongProduct), Action::Pick(Shelf::Product, "vinegar".into())]);
    typed.site.products[0].families = vec![brimline::chemistry::family::Family::HypochloriteBleach];
    typed.ask.station.other = "neutral".into();
    assert_eq!(rescue::work(&typed, Marks::POINT).acts, [Act::KeepAway]);
    typed.site.products[0].families.clear();
    assert_eq!(rescue::work(&typed, Marks::POINT).acts, [Act::KeepAway], "unknown is the worse case");
    assert_eq!(troubles(&wrong("neutral", "nothing")), [("station-other", &What::NoOther)]);
}

/// A strip at 200 of 0, 100, 200, 400 ppm with 10 % w/v active: 0.2 %, and 0.1 to 0.4 % by a block.
#[test]
fn a_strip_is_read_with_its_block() {
    let strip = [
        Action::Text(Line::Label, "0.2 %".into()),
        write(Field::Active, "10"),
        Action::Text(Line::Blocks, "0 100 200 400".into()),
    ];
    let read = |shown: &str| {
        reading::work(&after(strip.iter().cloned().chain([write(Field::Strip, shown)])), Marks::POINT)
    };
    let done = read("200");
    let get = |name: &str| done.outcome.answer.get(name).unwrap().si;
    near(get(names::STATION_STRENGTH), 0.002);
    near(get(names::STATION_STRENGTH_LOW), 0.001);
    near(get(names::STATION_STRENGTH_HIGH), 0.004);
    assert!(
        codes(&done).contains(&"remark-reading-undecided"),
        "a block is wider than the label's one number"
    );
    assert_eq!(troubles(&read("500")), [("reading-blocks", &What::Reading(ReadingMistake::NoSuchBlock))]);
}

/// 10 % by mass at 1.1 g/mL is 110 g/L; without the density nothing can be said.
#[test]
fn active_by_mass_needs_the_density() {
    let by_mass = |density: &str| {
        reading::work(
            &after([
                Action::Unit(Field::Active, "percent_ww".into()),
                write(Field::Active, "10"),
                write(Field::Density, density),
                Action::Method(Method::Drops),
                write(Field::Drops, "8"),
                write(Field::PerDrop, "25"),
            ]),
            Marks::POINT,
        )
    };
    near(by_mass("1.1").outcome.answer.get(names::STATION_STRENGTH).unwrap().si, 0.2 / 110.0);
    let missing = by_mass("");
    assert_eq!(missing.outcome.at("product-density").map(|_| ()), Some(()));
    assert!(missing.outcome.answer.get(names::STATION_STRENGTH).is_none());
}

#[test]
fn mistakes_stand_at_their_fields() {
    let cases = [
        (top_up::work(&after([write(Field::Left, "120")]), Marks::POINT), "station-left"),
        (top_up::work(&after([write(Field::Left, "-1")]), Marks::POINT), "station-left"),
        (rescue::work(&put_in("0", "4"), Marks::POINT), "station-left"),
        (rescue::work(&put_in("50", ""), Marks::POINT), "station-put-in"),
        (rescue::work(&put_in("1", "100"), Marks::POINT), "station-put-in"),
    ];
    for (done, name) in cases {
        assert_eq!(troubles(&done).first().map(|(at, _)| *at), Some(name));
        assert!(done.acts.is_empty(), "{name}: nothing is to be done before that is mended");
    }
    let done = top_up::work(&after([Action::Text(Line::Label, "2:5".into())]), Marks::POINT);
    assert!(matches!(troubles(&done)[..], [("product-label", What::Label(LabelMistake::Ambiguous { .. }))]));
}

/// Foam stands before every job, not only before a fill.
#[test]
fn foam_stops_every_job() {
    let soap = Action::Pick(Shelf::Product, "hand-soap".into());
    for done in [
        top_up::work(&after([soap.clone()]), Marks::POINT),
        rescue::work(&after([soap, write(Field::PutIn, "1")]), Marks::POINT),
    ] {
        assert!(done.outcome.answer.remarks.iter().any(|remark| remark.weight == Weight::Stop));
    }
}

/// What Fill warns of at the same strength, the other jobs warn of in the same figures. The self-driving machine takes
/// 6 fl oz at the most; its 10 gal at 1 to 64 ask for 19.69. A label of 1 to 64 keeps the rules of a ride-on.
#[test]
fn a_machine_that_weakens_the_label_is_told_by_every_job() {
    let machine = |id: &str| Action::Pick(Shelf::Machine, id.into());
    let of = |done: &[Remark]| -> Vec<Remark> {
        done.iter().filter(|one| one.code.starts_with("remark-clash-")).cloned().collect()
    };
    let tried = |id: &str, level: &str| {
        let typed = after([
            machine(id),
            Action::Method(Method::Refractometer),
            write(Field::Level, level),
            write(Field::Left, "25"),
            write(Field::PutIn, "0.5"),
            write(Field::Brix, "1"),
            write(Field::PerBrix, "0.5"),
        ]);
        let filled = fill::work(&typed, Marks::POINT).outcome.answer.remarks;
        let top = top_up::work(&typed, Marks::POINT).outcome.answer.remarks;
        let right = rescue::work(&typed, Marks::POINT).outcome.answer.remarks;
        let read = reading::work(&typed, Marks::POINT).outcome.answer.remarks;
        (of(&filled), of(&top), of(&right), of(&read))
    };
    let (filled, top, right, read) = tried("self-driving", "100");
    assert_eq!(filled.iter().map(|one| one.code).collect::<Vec<_>>(), ["remark-clash-machine"]);
    assert_eq!((&top, &read), (&filled, &filled));
    assert_eq!(right.iter().map(|one| one.code).collect::<Vec<_>>(), ["remark-clash-machine"]);
    let (filled, top, _, _) = tried("self-driving", "50");
    assert_eq!((top.len(), &top), (1, &filled));
    assert_eq!(tried("ride-on", "100"), (vec![], vec![], vec![], vec![]));
}

/// A disinfectant that is topped up must stay wet as long as one that is filled.
#[test]
fn a_top_up_tells_the_contact_time_as_fill_does() {
    let typed = after([Action::Pick(Shelf::Product, "quat".into())]);
    let of = |remarks: Vec<Remark>| {
        remarks.into_iter().filter(|one| one.code.starts_with("remark-contact")).collect::<Vec<_>>()
    };
    let filled = of(fill::work(&typed, Marks::POINT).outcome.answer.remarks);
    assert_eq!(filled.len(), 1);
    assert_eq!(of(top_up::work(&typed, Marks::POINT).outcome.answer.remarks), filled);
}

proptest! {
    /// Whatever is left of a right fill, a top-up ends at the level with the strength of the label.
    #[test]
    fn a_top_up_ends_at_the_label(left in 0_u32..100, level in 1_u32..=100, parts in 1_u32..400) {
        let typed = after([
            Action::Job(Job::TopUp),
            Action::Text(Line::Label, format!("1:{parts}")),
            write(Field::Left, &left.to_string()),
            write(Field::Level, &level.to_string()),
        ]);
        let done = top_up::work(&typed, Marks::POINT);
        let get = |name: &str| done.outcome.answer.get(name).map_or(0.0, |value| value.si);
        let strength = 1.0 / (1.0 + f64::from(parts));
        let before = f64::from(left) / 100.0 * 10.0 * GALLON;
        let kept = before - get(names::STATION_DRAIN);
        let volume = kept + get(names::STATION_WATER) + get(names::STATION_CONCENTRATE);
        let concentrate = kept * strength + get(names::STATION_CONCENTRATE);
        prop_assert!((volume / (f64::from(level) / 100.0 * 10.0 * GALLON) - 1.0).abs() < 1e-6);
        prop_assert!((concentrate / volume / strength - 1.0).abs() < 1e-6);
    }
}
