//! Laws of the label reader, over every form and over any text.

use brimline::trade::label::{Basis, Label, LabelMistake, Rule, read};
use brimline::units::{Quantity, System};
use proptest::prelude::*;

fn any_system() -> impl Strategy<Value = System> {
    proptest::sample::select(System::ALL.to_vec())
}

/// Two amounts, the lesser first.
fn two_amounts() -> impl Strategy<Value = (f64, f64)> {
    (101..10_000_u32, 1..10_000_u32)
        .prop_map(|(least, more)| (f64::from(least) / 100.0, f64::from(least + more) / 100.0))
}

/// An amount with at most two decimals, so that no mark can stand between thousands.
fn amount() -> impl Strategy<Value = f64> {
    (1..20_000_u32).prop_map(|hundredths| f64::from(hundredths) / 100.0)
}

fn written(value: f64, mark: char) -> String {
    value.to_string().replace('.', &mark.to_string())
}

fn bounds(label: &Label) -> (f64, f64) {
    match &label.rule {
        Rule::Strength(window) => (window.low.si(), window.high.si()),
        Rule::PerTank(window) | Rule::Packets(window) => (window.low.si(), window.high.si()),
        Rule::Powder(window) | Rule::Active(window) => (window.low.si(), window.high.si()),
    }
}

fn near(a: f64, b: f64, within: f64) -> bool {
    (a - b).abs() <= within * a.abs().max(b.abs())
}

/// Words and signs that labels are made of.
fn labelish() -> impl Strategy<Value = String> {
    let piece = proptest::sample::select(vec![
        "1", "2", "64", "128", "0", "1,000", "1.125", "0,5", "½", "1/2", "9", ":", "+", "-", "–", "/", "%",
        "(", ")", "to", "in", "per", "oz", "fl oz", "gal", "mL", "L", "cup", "tank", "US", "imp", "water",
        "makes", "total", "part", "oz/gal", "g", ",", ".", "of", "1:64", "qt", "tbsp", "each", "made up",
        "solution", "neat", "as is", ";", ", ", "one", "half", "(US)", "(imp)", "dl", "(s)", "1 per 64",
        "2:5", "2 oz/gal", "1.54 %", "1 in 64", "g", "oz wt", "ppm", "packet", "tablets", "lb", "g/L",
    ]);
    (proptest::collection::vec(piece, 0..9), any::<bool>())
        .prop_map(|(pieces, tight)| pieces.join(if tight { "" } else { " " }))
}

/// What holds for every text: it ends, a label is within the whole, and what is offered can be read.
fn sound(text: &str, system: System) -> Result<(), TestCaseError> {
    match read(text, system) {
        Ok(label) => {
            let (low, high) = bounds(&label);
            prop_assert!(low > 0.0 && low <= high, "{:?}: {} to {}", text, low, high);
            prop_assert!(high <= 1.0 || !matches!(label.rule, Rule::Strength(_)), "{:?}", text);
            prop_assert_eq!(label.basis == Basis::PerTank, matches!(label.rule, Rule::PerTank(_)));
            for other in &label.others {
                let read = read(other, system);
                prop_assert!(read.is_ok(), "{:?} offers {:?}: {:?}", text, other, read);
                let other_label = read.unwrap();
                // Another convention, or the same in the other country's gallons.
                let differs = other_label.basis != label.basis || other_label.rule != label.rule;
                prop_assert!(differs, "{:?} offers {:?}", text, other);
            }
        }
        Err(mistake) => {
            for reading in mistake.readings() {
                prop_assert!(read(reading, system).is_ok(), "{:?} offers {:?}", text, reading);
            }
            let offers = matches!(
                mistake,
                LabelMistake::Ambiguous { .. }
                    | LabelMistake::NoPer { .. }
                    | LabelMistake::TwoRules { .. }
                    | LabelMistake::Backwards { .. }
            );
            prop_assert_eq!(offers, !mistake.readings().is_empty(), "{:?}: {:?}", text, mistake);
            prop_assert!(mistake.code().starts_with("label-"));
        }
    }
    Ok(())
}

/// Every form: how it is written for an amount x, and the strength it means.
type Form = (fn(&str) -> String, fn(f64) -> f64, Basis);
const FORMS: &[Form] = &[
    (|x| format!("1:{x}"), |x| 1.0 / (1.0 + x), Basis::PlusWater),
    (|x| format!("1 to {x}"), |x| 1.0 / (1.0 + x), Basis::PlusWater),
    (|x| format!("1+{x}"), |x| 1.0 / (1.0 + x), Basis::PlusWater),
    (|x| format!("{x}:1"), |x| 1.0 / (1.0 + x), Basis::PlusWater),
    (|x| format!("1 in {x}"), |x| 1.0 / x, Basis::OfTotal),
    (|x| format!("1/{x}"), |x| 1.0 / x, Basis::OfTotal),
    (|x| format!("{x} US fl oz per US gal"), |x| x / (128.0 + x), Basis::PerWater),
    (|x| format!("{x} imp fl oz/imp gal"), |x| x / (160.0 + x), Basis::PerWater),
    (|x| format!("{x} mL/L"), |x| x / (1_000.0 + x), Basis::PerWater),
    (|x| format!("{x} mL per 10 litres"), |x| x / (10_000.0 + x), Basis::PerWater),
    (|x| format!("{x} dl per 10 litres (US)"), |x| x / (100.0 + x), Basis::PerWater),
    (|x| format!("1:{x} solution"), |x| 1.0 / (1.0 + x), Basis::PlusWater),
    (|x| format!("1:{x} total"), |x| 1.0 / x, Basis::OfTotal),
    (|x| format!("{x} mL made up to 1 L"), |x| x / 1_000.0, Basis::MadeUp),
    (|x| format!("{x} % "), |x| x / 100.0, Basis::Percent),
];

proptest! {
    #[test]
    fn every_form_there_and_back(form in 0..FORMS.len(), x in amount(), comma: bool, system in any_system()) {
        let (write, means, basis) = FORMS[form];
        // Ratios start above 1, percentages end at 100.
        let x = match basis {
            Basis::PlusWater | Basis::OfTotal => x + 1.0,
            Basis::Percent => x / 2.0,
            // Less in ten litres is weaker than any label.
            _ => x.max(0.2),
        };
        let x = (x * 100.0).round() / 100.0;
        let text = write(&written(x, if comma { ',' } else { '.' }));
        let strength = means(x);
        match read(&text, system) {
            Ok(label) => {
                prop_assert_eq!(label.basis, basis, "{}", text);
                let (low, high) = bounds(&label);
                prop_assert!(near(low, strength, 1e-12) && near(high, strength, 1e-12), "{}", text);
            }
            Err(mistake) => prop_assert!(false, "{}: {:?}", text, mistake),
        }
    }

    #[test]
    fn a_range_is_its_two_ends((low, high) in two_amounts(), system in any_system()) {
        let range = read(&format!("{low}-{high} mL/L"), system).unwrap();
        let end = |x: f64| bounds(&read(&format!("{x} mL/L"), system).unwrap()).0;
        prop_assert_eq!(bounds(&range), (end(low), end(high)));
        let backwards = read(&format!("{high}-{low} mL/L"), system).unwrap_err();
        prop_assert_eq!(backwards, LabelMistake::Backwards { reading: format!("{low} to {high} mL per L") });
    }

    #[test]
    fn a_range_of_parts_is_its_two_ends((low, high) in two_amounts(), system in any_system()) {
        let end = |text: String| bounds(&read(&text, system).unwrap()).0;
        let plus_water = (end(format!("1:{high}")), end(format!("1:{low}")));
        for text in [format!("1:{low}-{high}"), format!("1:{low} to 1:{high}"), format!("1:{high} to {low}")] {
            prop_assert_eq!(bounds(&read(&text, system).unwrap()), plus_water, "{}", text);
        }
        let of_total = (end(format!("1 in {high}")), end(format!("1 in {low}")));
        for text in [format!("1 in {low} to 1 in {high}"), format!("1/{low} - 1/{high}")] {
            prop_assert_eq!(bounds(&read(&text, system).unwrap()), of_total, "{}", text);
        }
    }

    /// Saying it twice says nothing new, in brackets or after a comma.
    #[test]
    fn twice_is_once(form in 0..FORMS.len(), x in amount(), comma: bool, system in any_system()) {
        let (write, _, basis) = FORMS[form];
        let x = if basis == Basis::Percent { x / 2.0 } else { x + 1.0 };
        let text = write(&((x * 100.0).round() / 100.0).to_string());
        let once = read(&text, system);
        let twice = if comma { format!("{text}, {text}") } else { format!("{text} ({text})") };
        prop_assert_eq!(read(&twice, system), once, "{}", twice);
    }

    /// More parts of water are a weaker label; more ounces are a stronger one.
    #[test]
    fn stronger_words_are_stronger((a, b) in two_amounts()) {
        let strength = |text: String| bounds(&read(&text, System::Us).unwrap()).0;
        let (strong, weak) = (strength(format!("1:{a}")), strength(format!("1:{b}")));
        prop_assert!(strong > weak);
        let (strong, weak) = (strength(format!("1 in {a}")), strength(format!("1 in {b}")));
        prop_assert!(strong > weak);
        let (weak, strong) = (strength(format!("{a} oz/gal")), strength(format!("{b} oz/gal")));
        prop_assert!(strong > weak);
        let (weak, strong) = (strength(format!("{a} oz per tank")), strength(format!("{b} oz per tank")));
        prop_assert!(strong > weak);
    }

    /// The reading that is offered names the same amounts.
    #[test]
    fn an_offer_is_what_was_written(x in amount()) {
        let LabelMistake::NoPer { readings } = read(&format!("{x} oz"), System::Us).unwrap_err() else {
            return Err(TestCaseError::fail("no offer"));
        };
        let meant = read(&format!("{x} oz/gal"), System::Us).unwrap();
        let offered = read(&readings[0], System::Imperial).unwrap();
        prop_assert!(near(bounds(&meant).0, bounds(&offered).0, 1e-5), "{:?}", readings);
        prop_assert!(offered.notes.is_empty(), "a reading takes nothing for granted");
    }

    #[test]
    fn any_text_ends(text in "\\PC*", system in any_system()) {
        sound(&text, system)?;
    }

    #[test]
    fn text_of_label_words_ends(text in labelish(), system in any_system()) {
        sound(&text, system)?;
    }
}
