//! LD50, ATE and M factors beside a listed ingredient.

use super::layouts::{english, told};
use brimline::chemistry::ghs::mixture::{Endpoint, Reached};
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::cautions::screening;
use brimline::form::{Action, Field, Typed};
use brimline::number::Marks;
use brimline::site::sheet::{Finding, Piece, What, take};
use brimline::site::{Entry, Product};
use brimline::units::Quantity;

/// A sheet of our own with two ingredients, and lines of section 11 behind them.
fn findings(lines: &str) -> Vec<Finding> {
    let text = format!(
        "3. Composition/information on ingredients\n2-Butoxyethanol 111-76-2 1 - 5 % H302\nSodium hydroxide 1310-73-2 5 - 10 % H314\n11. Toxicological information\n{lines}"
    );
    english(&text).findings
}

/// What is found beside the two ingredients themselves, without the line's number.
fn found(lines: &str) -> Vec<String> {
    let of_section_11 = findings(lines).into_iter().filter(|one| !matches!(one.what, What::Part(_)));
    of_section_11.map(|one| told(&one).split_once(": ").expect("a line").1.to_owned()).collect()
}

#[test]
fn a_dose_is_read_beside_its_ingredient() {
    const MOUTH: &str = "[2-Butoxyethanol] [111-76-2] Mouth 1746 mg/kg";
    const SKIN: &str = "[2-Butoxyethanol] [111-76-2] Skin 2270 mg/kg";
    for line in [
        "2-Butoxyethanol: LD50 oral 1746 mg/kg",
        "111-76-2 LD50 Oral - Rat - 1746 mg/kg bw",
        "2-butoxyethanol\tOral LD50 (rat): 1746 mg/kg",
        "2-Butoxyethanol ATE (oral): 1746 mg/kg",
        "2-Butoxyethanol: LD 50: 1746 mg/kg (oral, rat)",
        "2-Butoxyethanol LD50 by ingestion 1.746 g/kg; LC50 inhalation, rat 450 ppm",
    ] {
        assert_eq!(
            found(line).first().map(|one| one.starts_with(MOUTH)),
            Some(true),
            "{line}: {:?}",
            found(line)
        );
    }
    let both = found("2-Butoxyethanol LD50 oral 1746 mg/kg; LD50 dermal rabbit 2270 mg/kg");
    assert_eq!(both, [MOUTH, SKIN]);
    // The name above, the doses below it.
    let below = found("2-Butoxyethanol\nAcute oral toxicity: LD50 rat 1746 mg/kg\nLD50 Dermal 2270 mg/kg");
    assert_eq!(below, [MOUTH, SKIN].map(|one| format!("{one} [SeveralLines]")));
}

#[test]
fn what_is_doubtful_about_a_dose_is_told_and_the_worse_case_counts() {
    let one = |line: &str| found(line).join("; ");
    let butyl = "[2-Butoxyethanol] [111-76-2] Mouth";
    assert_eq!(one("2-Butoxyethanol LD50 oral 1,746 mg/kg"), format!("{butyl} 1746 mg/kg [Thousands]"));
    // A point may be a decimal one: the more toxic reading counts until somebody corrects it.
    assert_eq!(one("2-Butoxyethanol LD50 oral 1.746 mg/kg"), format!("{butyl} 1.7460 mg/kg [Thousands]"));
    assert_eq!(one("2-Butoxyethanol LD50 oral 1 746 mg/kg"), format!("{butyl} 746 mg/kg [Thousands]"));
    assert_eq!(
        one("2-Butoxyethanol LD50 oral > 2000 mg/kg"),
        format!("{butyl} 2000 to … mg/kg [LeastCounts]")
    );
    assert_eq!(
        one("2-Butoxyethanol LD50 oral 500 - 2000 mg/kg"),
        format!("{butyl} 500 to 2000 mg/kg [LeastCounts]")
    );
    assert_eq!(one("2-Butoxyethanol LD50 oral < 300 mg/kg"), format!("{butyl} 0 to 300 mg/kg [Unlikely]"));
    assert_eq!(one("2-Butoxyethanol LD50 oral 0.125 mg/kg"), format!("{butyl} 0.125 mg/kg"));
}

#[test]
fn what_is_not_beside_an_ingredient_is_left_out() {
    for lines in [
        "LD50 oral 1746 mg/kg",
        "ATEmix (oral) 1880 mg/kg",
        "2-Butoxyethanol\nProduct: LD50 oral 5000 mg/kg",
        "2-Butoxyethanol\nMonoethanolamine\nLD50 oral 1515 mg/kg",
        "2-Butoxyethanol\n141-43-5 LD50 oral 1515 mg/kg",
        "2-Butoxyethanol and sodium hydroxide: LD50 oral 1746 mg/kg",
        "2-Butoxyethanol NOAEL oral 69 mg/kg",
        "2-Butoxyethanol LC50 inhalation 11 mg/l",
        "2-Butoxyethanol LD50 1746 mg/kg",
        "2-Butoxyethanol is made late, oral report 12 mg/kg",
    ] {
        assert!(found(lines).is_empty(), "{lines}: {:?}", found(lines));
    }
}

#[test]
fn m_factors_are_read_with_their_harm() {
    let quat = |line: &str| {
        let text = format!("3. Composition/information on ingredients\n{line}");
        english(&text)
            .findings
            .iter()
            .skip(1)
            .map(told)
            .map(|one| one.split_once("] ").expect("a name").1.to_owned())
            .collect::<Vec<_>>()
    };
    let row = "Didecyldimethylammonium chloride 7173-51-5 5 - 10 %";
    let acute = "[7173-51-5] M 10 Acute";
    for end in [
        "Aquatic Acute 1, H400 (M=10)",
        "Aquatic Acute 1, H400, M-factor: 10",
        "M-factor (acute) = 10",
        "M factor 10 (acute)",
        "M(acute)=10",
    ] {
        assert_eq!(quat(&format!("{row} {end}")), [acute], "{end}");
    }
    let both = quat(&format!("{row} Aquatic Acute 1, H400 (M=10); Aquatic Chronic 1, H410 (M=1)"));
    assert_eq!(both, [acute, "[7173-51-5] M 1 Chronic"]);
    assert_eq!(quat(&format!("{row} M=10")), ["[7173-51-5] M 10 NotSaid [WhichHarm]"]);
    assert_eq!(quat(&format!("{row} H400 (M=7)")), ["[7173-51-5] M 7 Acute [Unlikely]"]);
    assert!(quat(&format!("{row} 2 M solution")).is_empty());
}

#[test]
fn only_what_is_ticked_fills_the_fields_and_the_worse_of_two_counts() {
    let all = findings(
        "2-Butoxyethanol LD50 oral rat 1746 mg/kg, mouse 1230 mg/kg; dermal LD50 > 2000 mg/kg\nSodium hydroxide: LD50 oral < 300 mg/kg",
    );
    let (parts, doses): (Vec<_>, Vec<_>) = all.into_iter().partition(|one| matches!(one.what, What::Part(_)));
    let unticked = take(&Product::default(), &parts, Marks::POINT);
    assert!(unticked.parts.iter().all(|one| one.oral.text.is_empty() && one.dermal.text.is_empty()));
    let taken = take(&unticked, &doses, Marks::POINT);
    assert_eq!(taken.parts[0].oral, Entry::new("1230", "mg_per_kg"), "the more toxic of two");
    assert_eq!(taken.parts[0].dermal, Entry::new("2000", "mg_per_kg"), "the least of a range");
    assert_eq!(taken.parts[1].oral.text, "", "only an upper end says nothing");
    assert_eq!(taken.notes, "Sodium hydroxide: LD50 oral < 300 mg/kg");
    // Of a part that the product does not list.
    let alone = take(&Product::default(), &doses, Marks::POINT);
    assert!(alone.parts.is_empty() && alone.notes.contains("1746 mg/kg"), "{}", alone.notes);
}

/// By hand: ATE = 100 / Σ (share / ATE) (Hazardous Products Regulations (Canada), SOR/2015-17, 8.1.5). 50 % of
/// 2-butoxyethanol with an LD50 of 1746 mg/kg, undiluted, is 3492 mg/kg: no category. By its statement alone,
/// H302, it counts as 500 mg/kg and the mixture as 1000: category 4.
#[test]
fn a_dose_taken_changes_the_screening() {
    let screened = |oral: &str| {
        let typed = [
            Action::Pick(Shelf::Product, "degreaser".into()),
            Action::DropPart(1),
            Action::Text(Line::PartCas(0), "111-76-2".into()),
            Action::Text(Line::PartCodes(0), "H302".into()),
            Action::Write(Field::PartLow(0), "50".into()),
            Action::Write(Field::PartHigh(0), "50".into()),
            Action::Write(Field::Density, "1".into()),
            Action::Text(Line::Label, "1:1".into()),
            Action::Text(Line::Standard, String::new()),
            Action::Listed(true),
            Action::Write(Field::PartOral(0), oral.into()),
        ]
        .into_iter()
        .fold(Typed::default(), reduce);
        let found = screening::work(&typed, Marks::POINT).expect("parts");
        match found.of(Endpoint::Swallowed).expect("a finding").reached {
            Reached::Estimate(ate) => ate.si() * 1e6,
            other => panic!("{other:?}"),
        }
    };
    // Half of the use solution is concentrate, so a quarter of it is the ingredient.
    assert!((screened("") - 2000.0).abs() < 1.0, "{}", screened(""));
    assert!((screened("1746") - 6984.0).abs() < 2.0, "{}", screened("1746"));
}

#[test]
fn m_factors_fill_their_fields_and_wrong_ones_are_told() {
    let text = "3. Composition/information on ingredients\nDidecyldimethylammonium chloride 7173-51-5 5 - 10 % Aquatic Acute 1, H400 (M=10); Aquatic Chronic 1, H410 (M=1)";
    let product = take(&Product::default(), &english(text).findings, Marks::POINT);
    assert_eq!(
        (product.parts[0].m_acute.text.as_str(), product.parts[0].m_chronic.text.as_str()),
        ("10", "1")
    );
    let typed = [
        Action::Pick(Shelf::Product, "vinegar".into()),
        Action::Write(Field::PartMAcute(0), "0.5".into()),
        Action::Write(Field::PartOral(0), "much".into()),
        Action::Text(Line::PartCas(0), "64-19-8".into()),
    ]
    .into_iter()
    .fold(Typed::default(), reduce);
    let mistakes = screening::mistakes(&typed, Marks::POINT);
    for name in ["part-1-m-acute", "part-1-oral", "part-1-cas"] {
        assert!(mistakes.at(name).is_some(), "{name}");
    }
}

/// A dose is corrected in the marks of the page, with or without its unit.
#[test]
fn a_dose_is_corrected() {
    let dose = findings("2-Butoxyethanol: LD50 oral 1746 mg/kg").pop().expect("a dose");
    let to = |text: &str, marks| dose.corrected(&[text.to_owned()], marks);
    let least = |found: Result<Finding, Piece>| match found.expect("a dose").what {
        What::Toxicity { span, .. } => span.low,
        other => panic!("{other:?}"),
    };
    for (text, marks, milligrams) in [
        ("1200", Marks::POINT, 1200.0),
        ("1,200 mg/kg", Marks::POINT, 1200.0),
        ("1.2 g/kg", Marks::POINT, 1200.0),
        ("1,2 g/kg", Marks::COMMA, 1200.0),
        ("1.200", Marks::COMMA, 1200.0),
        ("0,125", Marks::COMMA, 0.125),
        ("> 2000", Marks::POINT, 2000.0),
    ] {
        assert!((least(to(text, marks)) - milligrams).abs() < 1e-9, "{text}");
    }
    for text in ["", "much", "1200 mg/l/kg or 3 mg/kg", "dermal 5"] {
        assert_eq!(to(text, Marks::POINT), Err(Piece::Toxicity), "{text}");
    }
    let corrected = to("1200", Marks::POINT).expect("a dose");
    assert_eq!(take(&Product::default(), &[corrected], Marks::POINT).notes, "2-Butoxyethanol: by mouth 1200");
}
