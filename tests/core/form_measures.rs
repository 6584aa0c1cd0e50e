//! Fill with every kind of measure, label and rule, from what was typed to the figures. Worked by hand;
//! the units are exact by NIST SP 811, Appendix B: 1 gal = 128 fl oz = 231 in³, 1 oz = 28.349523125 g.

use brimline::answer::Answer;
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::{Action, Field, Typed, What, fill, names};
use brimline::number::Marks;
use brimline::site::Dispenser;
use brimline::trade::governing::{Aim, Governs};
use brimline::units::unit;

fn after(actions: impl IntoIterator<Item = Action>) -> Typed {
    actions.into_iter().fold(Typed::default(), reduce)
}

fn answer(actions: impl IntoIterator<Item = Action>) -> Answer {
    let fill = fill::work(&after(actions), Marks::POINT);
    assert_eq!(fill.outcome.troubles, []);
    fill.outcome.answer
}

fn label(text: &str) -> Action {
    Action::Text(Line::Label, text.into())
}

fn write(field: Field, text: &str) -> Action {
    Action::Write(field, text.into())
}

fn measure(id: &str) -> Action {
    Action::Pick(Shelf::Measure, id.into())
}

fn product(id: &str) -> Action {
    Action::Pick(Shelf::Product, id.into())
}

/// A figure in a unit, `one` for plain numbers, as printed.
#[track_caller]
fn prints(answer: &Answer, name: &str, code: &str, printed: &str) {
    let value = answer.get(name).unwrap_or_else(|| panic!("no {name}"));
    let shown = unit(code).map_or(value.si, |unit| unit.from_si(value.si));
    let decimals = printed.split_once('.').map_or(0, |(_, tail)| tail.len());
    assert_eq!(format!("{shown:.decimals$}"), printed, "{name}");
}

fn says(answer: &Answer, code: &str) -> bool {
    answer.remarks.iter().any(|remark| remark.code == code)
}

#[track_caller]
fn trouble(actions: impl IntoIterator<Item = Action>, name: &str, what: &What) {
    let fill = fill::work(&after(actions), Marks::POINT);
    assert_eq!(fill.outcome.at(name), Some(what), "{:?}", fill.outcome.troubles);
}

/// 30 g/L in 75 L: 2250 g. A scoop of 100 mL at 0.9 g/mL holds 90 g: 25 of them.
#[test]
fn a_powder_by_weight_and_by_scoop() {
    let tank = [write(Field::Tank, "75"), Action::Unit(Field::Tank, "l".into()), label("30 g/L")];
    let weighed =
        answer(tank.clone().into_iter().chain([measure("scale"), write(Field::MeasureWeight, "10")]));
    prints(&weighed, names::FILL_MASS, "g", "2250.0");
    prints(&weighed, names::FILL_COUNT, "one", "225");
    prints(&weighed, names::FILL_WATER, "l", "75.0");
    let scoop = [
        measure("scoop"),
        write(Field::MeasureStep, "100"),
        Action::Unit(Field::MeasureStep, "ml".into()),
        write(Field::Density, "0.9"),
    ];
    let scooped = answer(tank.clone().into_iter().chain(scoop.clone()));
    prints(&scooped, names::FILL_COUNT, "one", "25");
    prints(&scooped, names::FILL_MASS_ROUNDED, "g", "2250.0");
    let blank = tank.clone().into_iter().chain(scoop).chain([write(Field::Density, "")]);
    trouble(blank, "product-density", &What::Number(brimline::error::Mistake::Missing));
    trouble(tank.into_iter().chain([measure("pump")]), "measure", &What::PowderMeasure);
}

/// 1/2 to 1 oz by weight for a gallon, 10 gal: 5 to 10 oz, 141.75 to 283.50 g.
#[test]
fn a_powder_in_ounces_by_weight() {
    let answer = answer([product("powder"), measure("scale")]);
    prints(&answer, names::FILL_MASS, "oz", "5.00");
    prints(&answer, names::FILL_MASS_ROUNDED, "g", "142");
    prints(&answer, names::POWDER_LOW, "g", "141.75");
    prints(&answer, names::POWDER_HIGH, "g", "283.50");
}

/// A tablet for 2 gal: 5 in 10 gal; in 9 gal 4 1/2 would be right, so that 4 go into 8 gal.
#[test]
fn tablets_are_whole_and_the_water_follows() {
    let full = answer([product("tablets")]);
    prints(&full, names::FILL_COUNT, "one", "5");
    prints(&full, names::FILL_TOTAL, "gal_us", "10.00");
    let less = answer([product("tablets"), write(Field::Level, "90")]);
    prints(&less, names::FILL_COUNT, "one", "4");
    prints(&less, names::FILL_TOTAL, "gal_us", "8.00");
    assert!(says(&less, "remark-packets-level"));
    trouble([product("tablets"), label("1 tablet per 12 gal")], "fill-level", &What::PacketTooBig);
}

/// Packets of 2 fl oz at 1 to 64: 19.69 fl oz are 9.85 packets in 10 gal. Ten make 1 to 63, which the
/// label's own rounding allows; at a half, 4.92 are 5. At 1 to 50 in 3 gal, 3.76: 4 make 3.19 gal.
#[test]
fn packets_of_a_liquid() {
    let full = answer([measure("packet")]);
    prints(&full, names::FILL_COUNT, "one", "10");
    prints(&full, names::FILL_ROUNDED_RATIO, "one", "63.00");
    let half = answer([measure("packet"), write(Field::Level, "50")]);
    prints(&half, names::FILL_COUNT, "one", "5");
    let other = answer([measure("packet"), label("1:50"), write(Field::Level, "30")]);
    prints(&other, names::FILL_COUNT, "one", "4");
    prints(&other, names::FILL_TOTAL, "gal_us", "3.19");
    prints(&other, names::FILL_ROUNDED_RATIO, "one", "50.00");
}

/// 19.692 fl oz are 582.376 mL; at 1.02 g/mL they weigh 594.0 g.
#[test]
fn a_liquid_is_weighed() {
    let answer = answer([measure("scale"), write(Field::Density, "1.02")]);
    prints(&answer, names::FILL_MASS, "g", "594.0");
    prints(&answer, names::FILL_MASS_ROUNDED, "g", "594");
    trouble([measure("scale")], "product-density", &What::Number(brimline::error::Mistake::Missing));
}

/// Of 1 to 64, 128 and 256 the range 1:100 to 1:140 takes 128. A bottle of 1 gal then lasts 128/30 =
/// 4.3 fills of 30 gal, and 129 / 0.25 = 516 min at 0.25 gal/min. Nothing is near 1 to 20.
#[test]
fn a_machine_meters_from_its_own_bottle() {
    let ride_on = [Action::Pick(Shelf::Machine, "ride-on".into()), measure("own")];
    let within = answer(ride_on.clone().into_iter().chain([label("1:100 to 1:140")]));
    prints(&within, names::FILL_ROUNDED_RATIO, "one", "128");
    prints(&within, names::FILL_BOTTLE_FILLS, "one", "4.3");
    prints(&within, names::FILL_BOTTLE_TIME, "min", "516");
    let outside = answer(ride_on.clone().into_iter().chain([label("1:20")]));
    prints(&outside, names::FILL_ROUNDED_RATIO, "one", "64");
    assert!(says(&outside, "remark-setting-outside"));
    let none = ride_on.into_iter().chain([Action::Text(Line::Ratios, "few".into())]);
    trouble(none, "machine-ratios", &What::Ratios);
}

/// 12 L/min in all. 45, 95 and 185 mL/min of it make 1 to 265.7, 125.3 and 63.9.
#[test]
fn a_wall_unit_takes_the_nearest_tip() {
    let strong = answer([measure("wall")]);
    prints(&strong, names::FILL_SETTING, "one", "3");
    prints(&strong, names::FILL_ROUNDED_RATIO, "one", "63.9");
    let weak = answer([measure("wall"), label("1:256")]);
    prints(&weak, names::FILL_SETTING, "one", "1");
    prints(&weak, names::FILL_ROUNDED_RATIO, "one", "265.7");
    // A tip that was not tried yet is left out and keeps its number.
    let blank = answer([measure("wall"), write(Field::Tip(0), "")]);
    prints(&blank, names::FILL_SETTING, "one", "3");
    trouble([measure("wall"), write(Field::Tip(1), "13000")], "measure-tip-2", &{
        use brimline::limits::{OutOfRange, TIP};
        What::Number(brimline::error::Mistake::Range(OutOfRange::Above(&TIP)))
    });
    let low = [measure("wall"), write(Field::MeasureTotal, "0.1")];
    trouble(low, "measure-tip-3", &What::AboveTotal);
}

/// 17 % w/v is 170 g/L. 660 ppm are 0.66 / 170 of it: 4.969 fl oz in 10 gal. At 1 to 256 the
/// 4.98 fl oz are 5 marks: 170,000 × 5 / 1280 = 664.1 ppm.
#[test]
fn a_label_in_ppm_and_the_ppm_of_a_label() {
    let asked = answer([product("quat"), label("660 ppm"), write(Field::Minimum, "")]);
    prints(&asked, names::FILL_DOSE, "floz_us", "4.969");
    let made = answer([product("quat"), write(Field::Minimum, "")]);
    prints(&made, names::FILL_ACTIVE, "mg_per_l", "664.1");
    prints(&made, names::FILL_CONTACT, "min", "10");
    trouble(
        [product("quat"), label("660 ppm"), write(Field::Active, "")],
        "product-active",
        &What::Number(brimline::error::Mistake::Missing),
    );
    trouble(
        [product("quat"), label("6000 ppm"), write(Field::Active, "0.5")],
        "product-label",
        &What::TooWeak,
    );
}

/// 1000 ppm of 5.25 % w/v ask for 24.4 fl oz: 25 marks, since a disinfectant is not rounded down. They make
/// 52,500 × 25 / 1280 = 1025.4 ppm of sodium hypochlorite, and 70.906 / 74.442 of that of free chlorine.
#[test]
fn available_chlorine_is_told_for_bleach() {
    use brimline::chemistry::family::Family;
    let bleach =
        [Action::Family(Family::HypochloriteBleach, true), label("1000 ppm"), write(Field::Active, "5.25")];
    let answer = answer(bleach);
    prints(&answer, names::FILL_ACTIVE, "mg_per_l", "1025.4");
    prints(&answer, names::FILL_CHLORINE, "mg_per_l", "976.7");
    assert!(says(&answer, "remark-contact-unknown"));
}

/// 1 to 128 to 1 to 256 allow 4.981 to 9.922 fl oz; 700 ppm of 170 g/L are 5.271.
#[test]
fn a_minimum_by_law_narrows_the_label() {
    let range = [product("quat"), label("1:128 to 1:256"), write(Field::Minimum, "700")];
    let fill = fill::work(&after(range.clone()), Marks::POINT);
    assert_eq!(fill.governs, Some(Governs::Minimum));
    prints(&fill.outcome.answer, names::FILL_DOSE, "floz_us", "5.271");
    assert!(says(&fill.outcome.answer, "remark-minimum-narrows"));
    // The label allows no more than 661 ppm: it is not overruled, and the minimum is told.
    let missed = answer([product("quat"), write(Field::Minimum, "700")]);
    prints(&missed, names::FILL_DOSE, "floz_us", "4.981");
    assert!(says(&missed, "remark-minimum-missed"));
    // More than one rule: the machine takes less, and the minimum that it misses is told as well.
    let machine = range
        .into_iter()
        .chain([Action::Pick(Shelf::Machine, "self-driving".into()), write(Field::Most, "4")]);
    let machine = answer(machine);
    prints(&machine, names::FILL_DOSE, "floz_us", "4.000");
    assert!(says(&machine, "remark-clash-machine") && says(&machine, "remark-minimum-missed"));
}

/// 700 ppm of 170 g/L ask for 5.271 fl oz. With 1 fl oz marks the law takes 6, which the label of 1 to 128 to
/// 1 to 256 allows; the site's own 1 to 240 to 1 to 300 is no reason to go below it.
#[test]
fn rounding_never_goes_below_a_minimum_that_can_be_kept() {
    let rules = [
        product("quat"),
        label("1:128 to 1:256"),
        write(Field::Minimum, "700"),
        Action::Text(Line::Standard, "1:240 to 1:300".into()),
    ];
    let answer = answer(rules.clone());
    prints(&answer, names::FILL_ROUNDED, "floz_us", "6.000");
    prints(&answer, names::FILL_ACTIVE, "mg_per_l", "796.9");
    assert!(says(&answer, "remark-rounded-outside") && !says(&answer, "remark-rounded-below-minimum"));
    for level in fill::levels::levels(&after(rules.clone()), Marks::POINT) {
        let dose = level.dose.si;
        assert!(level.rounded.is_none_or(|rounded| rounded.si >= dose * (1.0 - 1e-9)), "{:?}", level.entry);
    }
    // And so when a tank is topped up.
    let left = rules
        .into_iter()
        .chain([write(Field::Left, "60"), Action::Foam(brimline::chemistry::foam::Foam::Low)]);
    let done = brimline::form::station::top_up::work(&after(left), Marks::POINT);
    let strength = done.outcome.answer.get(names::STATION_STRENGTH).expect("a strength").si;
    assert!(strength * 170.0 >= 0.7 * (1.0 - 1e-9), "{strength}");
}

/// 5 fl oz to a gallon of water, 10 gal in all: 1280 × 5/133 = 48.120 fl oz; the label's range is 4 to 8.
#[test]
fn the_sites_standard_narrows_the_label_and_never_overrules_it() {
    let fill = fill::work(&after([product("degreaser")]), Marks::POINT);
    assert_eq!(fill.governs, Some(Governs::Standard));
    prints(&fill.outcome.answer, names::FILL_DOSE, "floz_us", "48.120");
    let high = answer([product("degreaser"), Action::Aim(Aim::High)]);
    prints(&high, names::FILL_DOSE, "floz_us", "48.120");
    let outside = answer([product("degreaser"), Action::Text(Line::Standard, "10 oz/gal".into())]);
    prints(&outside, names::FILL_DOSE, "floz_us", "38.788"); // 1280 × 4/132
    assert!(says(&outside, "remark-standard-outside"));
    let mistyped = [product("degreaser"), Action::Text(Line::Standard, "some".into())];
    let fill = fill::work(&after(mistyped), Marks::POINT);
    assert!(matches!(fill.outcome.at("product-standard"), Some(What::Label(_))));
}

/// 20 fl oz in 10 gal, 5 % each way for jug and mark, evenly: 2.8868 % each; "1 to 64" read as parts of
/// the total is a 64th stronger: 0.9021 %. Together √(2 × 2.8868² + 0.9021²) = 4.1811 %: 0.836 fl oz. The
/// extremes are 19 in 1344 and 21 in 1216 fl oz, a 64th more each way: 1 to 70.86 and 1 to 56.01.
#[test]
fn a_dose_says_how_sure_it_is() {
    let answer = answer([]);
    prints(&answer, names::SURE_ERROR, "floz_us", "0.836");
    prints(&answer, names::SURE_WEAKEST, "one", "70.86");
    prints(&answer, names::SURE_STRONGEST, "one", "56.01");
    let (chance, drawn) = (answer.get(names::SURE_INSIDE), answer.get(names::SURE_DRAWN));
    let (chance, drawn) = (chance.expect("a chance").si, drawn.expect("trial fills").si);
    // Within 5 % of 1/65: Φ((1.05 × 64/65 − 1) / 0.041811) − Φ((0.95 × 64/65 − 1) / 0.041811), by the
    // normal distribution of Python's statistics library.
    assert!((chance - 0.729_764).abs() < 1e-4, "{chance}");
    assert!((chance - drawn).abs() < 0.02, "{chance} and {drawn}");
    let exact = fill::work(
        &after([write(Field::SureMeasure, "0"), write(Field::SureTank, ""), write(Field::SureLabel, "0")]),
        Marks::POINT,
    );
    assert_eq!(exact.outcome.answer.get(names::SURE_ERROR).map(|value| value.si), Some(0.0));
}

/// Which of the three matters most: half a graduation of a coarse jug, a mark that may be a fifth off, a
/// label at 1 to 4 read either way.
#[test]
fn the_main_cause_is_named() {
    for (actions, cause) in [
        (vec![write(Field::SureMeasure, "2"), Action::Unit(Field::SureMeasure, "floz_us".into())], "measure"),
        (vec![write(Field::SureTank, "20")], "water"),
        (vec![label("1:4"), write(Field::SureMeasure, "1"), write(Field::SureTank, "1")], "label"),
    ] {
        assert!(says(&answer(actions), &format!("sure-cause-{cause}")), "{cause}");
    }
}

/// Every kind of measure with every demo product: an answer, or a mistake that says where.
#[test]
fn every_measure_takes_every_product_or_says_why() {
    for product in &Typed::default().site.products {
        for measure in &Typed::default().site.measures {
            let typed = after([
                Action::Pick(Shelf::Product, product.id.clone()),
                Action::Pick(Shelf::Measure, measure.id.clone()),
            ]);
            let fill = fill::work(&typed, Marks::POINT);
            let told = !fill.outcome.troubles.is_empty() || fill.outcome.answer.stopped();
            let answered = fill.outcome.answer.get(names::FILL_TOTAL).is_some();
            assert!(answered || told, "{} with {}", product.id, measure.id);
            let counts = fill.outcome.answer.get(names::FILL_COUNT).is_some();
            let drawn = fill.dispenser.draws();
            assert!(
                counts || drawn || told || says(&fill.outcome.answer, "remark-measure-coarse"),
                "{} with {}: {:?}",
                product.id,
                measure.id,
                fill.dispenser
            );
            assert_eq!(fill.dispenser, measure.dispenser);
            assert!(Dispenser::ALL.contains(&measure.dispenser));
        }
    }
}
