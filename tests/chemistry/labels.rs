//! Label elements, codes in pasted text, and the advice that rests on them.

use brimline::chemistry::advice::{Kind, Ppe, advise};
use brimline::chemistry::ghs::{
    Knowledge, Pictogram, Route, SignalWord, codes, elements, hazard, precaution,
};
use brimline::source::Standing;

#[track_caller]
fn assert_row(code: &str, signal: SignalWord, pictograms: &[Pictogram]) {
    let row = hazard::find(code).unwrap_or_else(|| panic!("{code} is missing"));
    assert_eq!((row.signal, row.pictograms), (signal, pictograms), "{code}");
    assert_eq!(row.source().standing, Standing::Published, "{code}");
}

/// Signal word and statement as printed; the picture codes go with the classes.
#[test]
fn label_elements_as_published() {
    // Regulation (EC) No 1272/2008 (CLP), Annex I, Table 3.3.5: eye damage 1, irritation 2.
    assert_row("H318", SignalWord::Danger, &[Pictogram::Ghs05]);
    assert_row("H319", SignalWord::Warning, &[Pictogram::Ghs07]);
    // The same, Table 2.13.2: oxidizing liquids 1, 2, 3 are Danger, Danger, Warning; H272 serves 2 and 3.
    assert_row("H271", SignalWord::Danger, &[Pictogram::Ghs03]);
    assert_row("H272", SignalWord::Danger, &[Pictogram::Ghs03]);
    assert!(hazard::find("H272").unwrap().varies);
    // The same, Table 3.1.3: acute toxicity 4, swallowed.
    assert_row("H302", SignalWord::Warning, &[Pictogram::Ghs07]);
    // INRS, table of CLP label elements: aquatic acute 1, chronic 1, 2, 3.
    assert_row("H400", SignalWord::Warning, &[Pictogram::Ghs09]);
    assert_row("H410", SignalWord::Warning, &[Pictogram::Ghs09]);
    assert_row("H411", SignalWord::None, &[Pictogram::Ghs09]);
    assert_row("H412", SignalWord::None, &[]);
}

#[track_caller]
fn assert_label(text: &str, signal: SignalWord, pictograms: &[Pictogram], statements: &[&str]) {
    let label = elements(&codes::read(text).hazards, Knowledge::Full);
    assert_eq!((label.signal, label.pictograms.as_slice()), (signal, pictograms), "{text}");
    assert_eq!(label.statements.iter().map(|one| one.code).collect::<Vec<_>>(), statements, "{text}");
}

/// CLP Article 26(1)(b) to (d), after UN GHS 1.4.10.5.3.1; H318 beside H314: CLP Table 3.3.5, note (a).
#[test]
fn some_elements_give_way_to_others() {
    use Pictogram::{Ghs05, Ghs06, Ghs07, Ghs08};
    use SignalWord::{Danger, Warning};
    assert_label("H302", Warning, &[Ghs07], &["H302"]);
    assert_label("H319 H314", Danger, &[Ghs05], &["H314", "H319"]);
    assert_label("H315 H318", Danger, &[Ghs05], &["H318", "H315"]);
    assert_label("H318 H335", Danger, &[Ghs05, Ghs07], &["H318", "H335"]);
    assert_label("H301 H315", Danger, &[Ghs06], &["H301", "H315"]);
    assert_label("H334 H317 H319", Danger, &[Ghs08], &["H334", "H317", "H319"]);
    assert_label("H334 H336", Danger, &[Ghs07, Ghs08], &["H334", "H336"]);
    assert_label("H351 H317", Warning, &[Ghs07, Ghs08], &["H351", "H317"]);
    assert_label("H318 H314", Danger, &[Ghs05], &["H314"]);
    // Corrosive to metals alone says nothing about skin: the mark for irritation stays.
    assert_label("H290 H315", Warning, &[Ghs05, Ghs07], &["H315", "H290"]);
    assert_label("H400 H410", Warning, &[Pictogram::Ghs09], &["H410"]);
}

#[track_caller]
fn assert_read(text: &str, known: &[&str], unknown: &[&str]) {
    let read = codes::read(text);
    let found: Vec<_> =
        read.hazards.iter().map(|one| one.code).chain(read.precautions.iter().map(|one| one.code)).collect();
    assert_eq!(found, known, "{text}");
    assert_eq!(read.unknown, unknown, "{text}");
}

#[test]
fn codes_are_found_in_pasted_text() {
    assert_read("H314, P305 + P351+P338; h290", &["H314", "H290", "P305+P351+P338"], &[]);
    assert_read("P301/330/331 H302/312", &["H302+H312", "P301+P330+P331"], &[]);
    assert_read("H302 + H332\nP305 +\nP351 + P338", &["H302+H332", "P305+P351+P338"], &[]);
    assert_read("H314Causes severe burnsH318Causes", &["H314", "H318"], &[]);
    assert_read("H314H318", &["H314", "H318"], &[]);
    assert_read("H 314; P 280", &["H314", "P280"], &[]);
    assert_read("Н314 (Cyrillic)", &["H314"], &[]);
    assert_read("H360FD H350i", &["H360", "H350"], &[]);
    assert_read("H314B", &["H314"], &["H314B"]);
    assert_read("EUH031 H314", &["H314"], &["EUH031"]);
    assert_read("H999 P280+P999", &["P280"], &["H999", "P999"]);
    assert_read("P301+P330+P331+P310", &["P301+P330+P331", "P310"], &[]);
    assert_read("P370+P380+P375[+P378]", &["P370+P380+P375+P378"], &[]);
    assert_read("pH 7, pH 120, H2O, UN1791, 1-888-314-2800", &[], &[]);
    assert_read("H302 / 1234 kg", &["H302"], &[]);
    assert_read("", &[], &[]);
}

#[test]
fn codes_alone_never_claim_that_nothing_is_wrong() {
    assert_eq!(codes::read("").knowledge(), Knowledge::Partial);
    assert_eq!(codes::read("P280").knowledge(), Knowledge::Partial);
    assert_eq!(codes::read("H315 H999").knowledge(), Knowledge::Partial);
    assert_eq!(codes::read("H315").knowledge(), Knowledge::Full);
}

#[test]
fn corrosive_concentrate_asks_for_the_full_set() {
    let advice = advise(&codes::read("H314 H290").hazards, Knowledge::Full);
    assert!(advice.ppe().eq([
        Ppe::Gloves,
        Ppe::Goggles,
        Ppe::FaceShield,
        Ppe::Apron,
        Ppe::Boots,
        Ppe::Ventilation
    ]));
    let routes: Vec<_> = advice.first_aid().map(|one| (one.kind, one.urgent)).collect();
    let urgent = |route| (Kind::FirstAid(route), true);
    assert_eq!(routes, [Route::Eye, Route::Skin, Route::Breathe, Route::Swallow].map(urgent));
    assert!(advice.of(Kind::Store).any(|one| one.key == "store-resistant" && one.rests_on == "P406"));
}

#[test]
fn a_product_that_is_not_classified_asks_for_nothing_more() {
    let advice = advise(&[], Knowledge::Full);
    assert!(advice.measures.is_empty() && !advice.cautious);
    assert_eq!(elements(&[], Knowledge::Full).signal, SignalWord::None);
}

/// A combination ends where the tables end, however long the chain is that a paste holds.
#[test]
fn combinations_of_the_tables_are_read_whole() {
    for row in precaution::ALL {
        assert_read(row.code, &[row.code], &[]);
    }
    let chain = vec!["P305"; 20_000].join("+");
    assert_read(&chain, &["P305"], &[]);
}

/// Wording of the statements: UN GHS, Annex 3, section 2, from memory. What a label asks to wear is never taken
/// away by what its hazards alone would ask for.
#[test]
fn precautions_add_to_what_is_worn() {
    let worn = |text: &str| {
        let read = codes::read(text);
        let advice = advise(&read.hazards, Knowledge::Full).with_precautions(&read.precautions);
        advice.ppe().collect::<Vec<_>>()
    };
    assert_eq!(worn("H302"), []);
    assert_eq!(worn("H302 P280"), [Ppe::Gloves, Ppe::Goggles]);
    assert_eq!(worn("P284"), [Ppe::Respirator]);
    assert_eq!(worn("P271"), [Ppe::Ventilation]);
    for text in ["H314", "H314 P280", "H318 P280 P284", "H271 P283"] {
        let bare = advise(&codes::read(text).hazards, Knowledge::Full);
        assert!(bare.ppe().all(|one| worn(text).contains(&one)), "{text}");
    }
}
