//! From accepted findings to a changed product.

use super::layouts::{english, names, sheet};
use brimline::number::Marks;
use brimline::site::sheet::{What, take};
use brimline::site::{Entry, Ingredient, Product, demo};

fn percent(text: &str) -> Entry {
    Entry::new(text, "percent_ww")
}

#[test]
fn a_sheet_fills_a_product() {
    let found = english(&sheet("degreaser-table")).findings;
    let product = take(&Product::default(), &found, Marks::POINT);
    assert_eq!(product.signal.code(), "danger");
    assert_eq!(
        product.codes,
        "H314 H318 H290 P260 P264 P280 P301+P330+P331 P303+P361+P353 P305+P351+P338 P310 P405 P501"
    );
    // The pH of the 1 % solution, and that of the concentrate, of whose range the end farther from 7 counts.
    assert_eq!((product.ph.as_str(), product.ph_neat.as_str()), ("11.8", "13.8"));
    assert_eq!(product.density, Entry::new("1.09", "g_per_ml"));
    let rows: Vec<(&str, &str, &Entry, &Entry, &str)> = product
        .parts
        .iter()
        .map(|one| (one.name.as_str(), one.cas.as_str(), &one.low, &one.high, one.codes.as_str()))
        .collect();
    assert_eq!(rows[0], ("Sodium hydroxide", "1310-73-2", &percent("5"), &percent("10"), "H290 H314"));
    assert_eq!(
        rows[3],
        ("Alcohols, C9-11, ethoxylated (6 EO)", "68439-46-3", &percent("0"), &percent("1"), "H302 H318")
    );
    assert_eq!(rows.len(), 5);
    assert_eq!(
        product.notes.lines().collect::<Vec<_>>(),
        [
            "Hand protection: Nitrile gloves, 0.4 mm",
            "Eye protection: Goggles that close all round, face shield where it may splash",
            "Respiratory protection: Not needed with good air",
            "UN number: UN1719",
        ]
    );
}

/// Whatever was typed and was not accepted anew stays.
#[test]
fn typed_text_is_never_lost() {
    let site = demo();
    let mut typed = site.products.iter().find(|one| one.id == "degreaser").expect("the degreaser").clone();
    typed.codes = "H290, my own words".to_owned();
    typed.notes = "Keep it in the cellar.".to_owned();
    typed.parts = vec![
        Ingredient {
            name: "Soda lye".to_owned(),
            cas: " 1310–73–2".to_owned(),
            codes: "H290 (ask)".to_owned(),
            ..Ingredient::default()
        },
        Ingredient { name: "Secret".to_owned(), low: percent("1"), ..Ingredient::default() },
    ];
    let found = english(&sheet("degreaser-table")).findings;
    let accepted: Vec<_> =
        found.into_iter().filter(|one| !matches!(one.what, What::Signal(_) | What::Density { .. })).collect();
    let product = take(&typed, &accepted, Marks::POINT);
    assert!(product.codes.starts_with("H290, my own words H314 "), "{}", product.codes);
    assert!(product.notes.starts_with("Keep it in the cellar.\nHand protection"), "{}", product.notes);
    assert_eq!((product.signal, &product.density), (typed.signal, &typed.density));
    // The same number is the same ingredient; it keeps what the sheet does not say otherwise.
    assert_eq!(
        (product.parts[0].name.as_str(), product.parts[0].codes.as_str()),
        ("Sodium hydroxide", "H290 (ask) H314")
    );
    assert_eq!(product.parts[1], typed.parts[1]);
    assert_eq!(product.parts.len(), 6);
    let untouched = |one: &Product| {
        (one.id.clone(), one.name.clone(), one.label.clone(), one.families.clone(), one.price.clone())
    };
    assert_eq!(untouched(&product), untouched(&typed));
    assert_eq!(take(&typed, &[], Marks::POINT), typed);
}

/// Taking the same twice changes nothing more.
#[test]
fn taking_twice_is_taking_once() {
    for name in names() {
        let found = english(&sheet(&name)).findings;
        for marks in [Marks::POINT, Marks::COMMA] {
            let once = take(&Product::default(), &found, marks);
            assert_eq!(take(&once, &found, marks), once, "{name}");
        }
    }
}

/// Numbers are written so that the page reads them back as they were meant.
#[test]
fn numbers_are_written_in_the_marks_of_the_page() {
    let text = "3. Composition\nA 64-19-7 0.125 - 1.125 %\n9. Physical and chemical properties\nSpecific gravity 1.02 - 1.04\npH of the use solution: 6 - 9.5";
    let found = english(text).findings;
    let product = take(&Product::default(), &found, Marks::COMMA);
    assert_eq!(
        (product.parts[0].low.text.as_str(), product.parts[0].high.text.as_str()),
        ("0,125", "1,1250")
    );
    assert_eq!((product.density.text.as_str(), product.ph.as_str()), ("1,03", "9,5"));
    let acid = english("9. Physical and chemical properties\npH of the use solution: 3.5 - 7").findings;
    assert_eq!(take(&Product::default(), &acid, Marks::POINT).ph, "3.5");
}

/// Two signal words: the more serious one. None only where nothing else was accepted.
#[test]
fn the_more_serious_signal_word_is_taken() {
    let found = english(&sheet("degreaser-contradicts")).findings;
    assert_eq!(take(&Product::default(), &found, Marks::POINT).signal.code(), "danger");
    let found = english("2. Hazards identification\nNot a hazardous substance or mixture").findings;
    assert_eq!(take(&Product::default(), &found, Marks::POINT).signal.code(), "none");
}
