//! One line at a time: what is read, and what is not.

use super::layouts::{english, told};
use brimline::site::sheet::Sheet;

/// What is found in lines under the heading of a section, without the numbers of the lines.
fn found(heading: &str, text: &str) -> Vec<String> {
    let sheet: Sheet = english(&format!("{heading}\n{text}"));
    sheet.findings.iter().map(|one| told(one).split_once(": ").expect("a line").1.to_owned()).collect()
}

#[track_caller]
fn assert_found(heading: &str, rows: &[(&str, &[&str])]) {
    for (text, wanted) in rows {
        assert_eq!(found(heading, text), *wanted, "{text:?}");
    }
}

#[test]
fn headings_in_their_usual_spellings() {
    for (section, heading) in [
        (2, "SECTION 2: Hazards identification"),
        (2, "Section 2 - HAZARD(S) IDENTIFICATION"),
        (2, "2. Hazard identification"),
        (2, "2 Hazards Identification"),
        (2, "** 2) HAZARDS IDENTIFICATION **"),
        (2, "HAZARDS IDENTIFICATION"),
        (2, "H A Z A R D S   I D E N T I F I C A T I O N"),
        (2, "SECTION 2"),
        (2, "Sec. 2 Hazards"),
        (3, "SECTION 3 – Composition/information on ingredients"),
        (3, "3. COMPOSITION / INFORMATION ON INGREDIENTS"),
        (3, "3: Composition and Information on Ingredients"),
        (8, "8. Exposure controls / Personal protection"),
        (8, "SECTION 8. EXPOSURE CONTROLS"),
        (9, "9. Physical and chemical properties"),
        (9, "Physical & Chemical Properties"),
        (14, "14. Transport information"),
        (14, "Section 14: Transportation Information"),
        // The words decide: some sheets number them otherwise.
        (3, "2. Composition/information on ingredients"),
    ] {
        assert_eq!(english(heading).sections, [(section, 1)], "{heading}");
    }
    for text in [
        "2.1 Classification of the substance or mixture",
        "9.1. Information on basic physical and chemical properties",
        "See section 8 for personal protection",
        "2 drops of it are enough",
        "Hazards identification was done by the maker, who answers for it",
        "Composition",
        "14 days",
        "3. Composition of the product and of everything that may be made of it is told below in short",
    ] {
        assert_eq!(english(text).sections, [], "{text}");
    }
}

#[test]
fn signal_words() {
    assert_found(
        "SECTION 2: Hazards identification",
        &[
            ("Signal word: Danger", &["signal danger"]),
            ("SIGNAL WORD WARNING", &["signal warning"]),
            ("Signal word (GHS-US) : Danger", &["signal danger"]),
            ("Signal Word(s)\tWarning", &["signal warning"]),
            ("Signalword: none", &["signal none"]),
            ("Signal word: No signal word", &["signal none"]),
            ("Signal word: Not applicable", &["signal none"]),
            ("Signal word: N/A", &["signal none"]),
            ("Signal word\n\nDanger", &["signal danger [SeveralLines]"]),
            ("DANGER!", &["signal danger [Alone]"]),
            ("Danger: causes burns", &[]),
            ("The signal word stands on the label", &[]),
            ("Signal word:", &[]),
            (
                "This product is not classified as hazardous under the rules for workplaces.",
                &["not hazardous"],
            ),
            ("Not a hazardous substance or mixture", &["not hazardous"]),
            ("Not classified", &["not hazardous [Alone]"]),
            ("Not classified as hazardous to the aquatic environment", &[]),
            ("Not classified as hazardous for transport", &[]),
        ],
    );
}

/// What a line break tears is read across it, or told as torn.
#[test]
fn what_a_line_break_tears() {
    assert_found(
        "SECTION 2: Hazards identification",
        &[
            ("H3\n14 Causes burns", &["H314 [SeveralLines]"]),
            ("H290, H\n314", &["H290", "H314 [SeveralLines]"]),
            ("H31\nGoggles", &["unknown H31 [CutOff]"]),
            ("Signal\nword Danger", &["signal danger [SeveralLines]"]),
            ("Signal\nword\nDanger", &["signal danger [SeveralLines]"]),
        ],
    );
    for heading in ["9. Physical", "9. Physical and\nchemical properties", "SECTION 9\nPhysical and chemical"]
    {
        let sheet = english(&format!("{heading}\npH 12.5"));
        assert_eq!(sheet.findings.len(), 1, "{heading}");
        assert!(sheet.sections.iter().all(|(section, _)| *section == 9), "{heading}");
    }
    assert_found(
        "3. Composition",
        &[("pH 12.5 10 %", &[]), ("Phosphoric acid 7664-38-2 10 %", &["[Phosphoric acid] [7664-38-2] 10 %"])],
    );
}

#[test]
fn codes_with_their_combinations() {
    assert_found(
        "SECTION 2: Hazards identification",
        &[
            ("H302+H312 H290", &["H302+H312", "H290"]),
            ("P305 + P351 +\nP338", &["P305+P351+P338 [SeveralLines]"]),
            ("P280, P305\n+ P351 + P338", &["P280", "P305+P351+P338 [SeveralLines]"]),
            ("H3\u{ad}14", &["H314"]),
            ("H314 H314 Causes severe skin burns and eye damage.", &["H314"]),
            ("H999", &["unknown H999"]),
            ("Causes serious eye damage", &["H318 [ByWords]"]),
            ("Causes serious eye irritation.", &["H319 [ByWords]"]),
            ("Harmful if swallowed or if inhaled", &["H302+H332 [ByWords]"]),
            ("May intensify fire; oxidiser", &["H272 [ByWords]"]),
            ("What causes skin irritation is told below", &[]),
        ],
    );
    // Those of another section are not those of the product.
    assert_eq!(found("SECTION 16: Other information", "H350 H314"), [""; 0]);
}

#[test]
fn shares_in_all_their_spellings() {
    for (share, wanted) in [
        ("5 - <10 %", "5 to 10 %"),
        ("5-10%", "5 to 10 %"),
        ("5 – 10 %", "5 to 10 %"),
        ("≥5 - <10 %", "5 to 10 %"),
        (">= 5 - < 10 %", "5 to 10 %"),
        ("≥ 5 < 10 %", "5 to 10 %"),
        (">=5 - <=10%", "5 to 10 %"),
        ("5 to 10 percent", "5 to 10 %"),
        ("5 % - 10 %", "5 to 10 %"),
        ("5 - 10 wt%", "5 to 10 %"),
        ("5 - 10 wt. %", "5 to 10 %"),
        ("5 - 10 % w/w", "5 to 10 %"),
        ("<= 1 %", "0 to 1 %"),
        ("≤ 1%", "0 to 1 %"),
        ("=< 1 %", "0 to 1 %"),
        ("< 0,1 %", "0 to 0.1 %"),
        ("less than 5 %", "0 to 5 %"),
        ("up to 5 %", "0 to 5 %"),
        ("max. 5 %", "0 to 5 %"),
        ("0,5 - 1,5 %", "0.5 to 1.5 %"),
        ("1.000 - 5.000 %", "1 to 5 %"),
        ("> 90 %", "90 to … %"),
        ("at least 90 %", "90 to … %"),
        ("ca. 3 %", "3 %"),
        ("7 ± 1 %", "6 to 8 %"),
        ("12.5%", "12.5 %"),
    ] {
        let wanted = format!("[Sodium hydroxide] [1310-73-2] {wanted}");
        for line in [
            format!("Sodium hydroxide 1310-73-2 {share}"),
            format!("1310-73-2\tSodium hydroxide\t{share}"),
            format!("{share}\tSodium hydroxide\t1310-73-2"),
        ] {
            assert_eq!(found("SECTION 3: Composition", &line), [wanted.as_str()], "{line:?}");
        }
    }
    assert_found(
        "SECTION 3: Composition",
        &[
            ("Sodium hydroxide\t1310-73-2\t1-5", &["[Sodium hydroxide] [1310-73-2] 1 to 5 % [NoPercent]"]),
            ("Sodium hydroxide\t1310-73-2\t5", &["[Sodium hydroxide] [1310-73-2] 5 % [NoPercent]"]),
            ("Name\tCAS\t%\nSodium hydroxide\t1310-73-2\t5", &["[Sodium hydroxide] [1310-73-2] 5 %"]),
            ("Sodium hydroxide 1310-73-2 10-5 %", &["[Sodium hydroxide] [1310-73-2] 5 to 10 % [Backwards]"]),
            ("Sodium hydroxide 1310-73-2 150 %", &["[Sodium hydroxide] [1310-73-2] 150 % [MoreThanWhole]"]),
            ("Sodium hydroxide 1310-73-2 5 % 10 %", &["[Sodium hydroxide] [1310-73-2] 5 % [SeveralNumbers]"]),
            ("Sodium hydroxide 1310-73-2", &["[Sodium hydroxide] [1310-73-2] - % [NoShare]"]),
            ("Water (CAS 7732-18-5) balance", &["[Water] [7732-18-5] - % [NoShare]"]),
            (
                "Nonionic surfactant (trade secret) 1-5 %",
                &["[Nonionic surfactant (trade secret)] [] 1 to 5 % [NoCas]"],
            ),
        ],
    );
}

#[test]
fn names_and_numbers_are_told_apart() {
    assert_found(
        "SECTION 3: Composition",
        &[
            ("2-Butoxyethanol 111-76-2 1-5 %", &["[2-Butoxyethanol] [111-76-2] 1 to 5 %"]),
            (
                "1,2-Benzisothiazol-3(2H)-one 2634-33-5 <0.05 %",
                &["[1,2-Benzisothiazol-3(2H)-one] [2634-33-5] 0 to 0.05 %"],
            ),
            (
                "Alcohols, C9-11, ethoxylated (6 EO) 68439-46-3 1-5 %",
                &["[Alcohols, C9-11, ethoxylated (6 EO)] [68439-46-3] 1 to 5 %"],
            ),
            // EC, index and REACH numbers are no CAS numbers.
            (
                "Acetic acid CAS-No.: 64-19-7 EC-No.: 200-580-7 Index: 607-002-00-6 5 %",
                &["[Acetic acid] [64-19-7] 5 %"],
            ),
            (
                "Acetic acid (CAS number 64-19-7, REACH no 01-2119475328-30-0000) 5 %",
                &["[Acetic acid] [64-19-7] 5 %"],
            ),
            ("EC 200-580-7 only 5 %", &["[only] [] 5 % [NoCas]"]),
            // Torn by an OCR program.
            ("Acetic acid 64 - 19 - 7 5 %", &["[Acetic acid] [64-19-7] 5 %"]),
            ("Acetic acid 64–19‑7 5 %", &["[Acetic acid] [64-19-7] 5 %"]),
            ("Acetic acid 64-19-8 5 %", &["[Acetic acid] [64-19-8] 5 % [CheckDigit]"]),
            (
                "Acetic acid 64-19-7 Skin Corr. 1A, H314: C ≥ 90 %",
                &["[Acetic acid] [64-19-7] - % H314 [NoShare]"],
            ),
            (
                "Acetic acid 64-19-7 5 % Flam. Liq. 3, H226; Skin Corr. 1A, H314",
                &["[Acetic acid] [64-19-7] 5 % H226 H314"],
            ),
            // Rows in lines of their own, whatever comes first.
            ("Acetic acid\n64-19-7\n5 %", &["[Acetic acid] [64-19-7] 5 % [SeveralLines]"]),
            ("64-19-7\nAcetic acid\n5 %", &["[Acetic acid] [64-19-7] 5 % [SeveralLines]"]),
            ("Acetic acid 5 %\n64-19-7", &["[Acetic acid] [64-19-7] 5 % [SeveralLines]"]),
            ("64-19-7\nAcetic acid 5 %", &["[Acetic acid] [64-19-7] 5 % [SeveralLines]"]),
            (
                "Acetic acid\n64-19-7\n5 %\nWater\n7732-18-5\n95 %",
                &["[Acetic acid] [64-19-7] 5 % [SeveralLines]", "[Water] [7732-18-5] 95 % [SeveralLines]"],
            ),
            (
                "Acetic acid\n64-19-7\nWater\n7732-18-5",
                &[
                    "[Acetic acid] [64-19-7] - % [SeveralLines, NoShare]",
                    "[Water] [7732-18-5] - % [SeveralLines, NoShare]",
                ],
            ),
            // As many numbers as shares, or nobody can say which belongs to which.
            (
                "Acetic acid\nWater\n64-19-7\n7732-18-5\n5 %\n95 %",
                &[
                    "[Acetic acid] [64-19-7] 5 % [SeveralLines, Columns]",
                    "[Water] [7732-18-5] 95 % [SeveralLines, Columns]",
                ],
            ),
            ("The exact shares are a trade secret.", &[]),
            ("5 %", &[]),
        ],
    );
    // Under no heading only a number with the right check digit makes an ingredient.
    assert_eq!(english("Acetic acid 64-19-7 5 %\nAcetic acid 64-19-8 5 %\nSomething 5 %").findings.len(), 1);
    // Limits in the air are no ingredients.
    assert_eq!(found("SECTION 8: Exposure controls", "Acetic acid 64-19-7 10 ppm 25 mg/m3"), [""; 0]);
}

#[test]
fn ph_and_of_what() {
    assert_found(
        "SECTION 9: Physical and chemical properties",
        &[
            ("pH (1 % solution): 11.8", &["pH 11.8 Solution [OtherSolution]"]),
            ("pH 10.5-11.5", &["pH 10.5 to 11.5 NotSaid [Range, OfConcentrate]"]),
            ("pH: not applicable", &["no pH"]),
            ("pH\tN/A", &["no pH"]),
            ("pH (concentrate) = 12,5 – 13,5", &["pH 12.5 to 13.5 Concentrate [Range, OfConcentrate]"]),
            ("pH (20 °C): 7.0", &["pH 7 NotSaid [OfConcentrate]"]),
            ("pH at 25C: 7", &["pH 7 NotSaid [OfConcentrate]"]),
            ("pH value: 7.0 ± 0.5", &["pH 6.5 to 7.5 NotSaid [Range, OfConcentrate]"]),
            ("pH: > 12", &["pH 12 to 14 NotSaid [Range, OfConcentrate]"]),
            ("pH <= 2", &["pH 0 to 2 NotSaid [Range, OfConcentrate]"]),
            ("pH: ~ 7", &["pH 7 NotSaid [OfConcentrate]"]),
            ("pH-value (10 g/l, 20 °C) 10,2", &["pH 10.2 Solution [OtherSolution]"]),
            ("pH, 1:10 dilution: 9", &["pH 9 Solution [OtherSolution]"]),
            ("pH of the use solution (1:64): 8.5", &["pH 8.5 UseSolution"]),
            ("PH: 7", &["pH 7 NotSaid [OfConcentrate]"]),
            ("p H : 7", &["pH 7 NotSaid [OfConcentrate]"]),
            ("pH\n7.0", &["pH 7 NotSaid [OfConcentrate, SeveralLines]"]),
            (
                "pH (undiluted): 13, (1 % solution): 11.5",
                &["pH 13 Concentrate [OfConcentrate]", "pH 11.5 Solution [OtherSolution]"],
            ),
            ("pH: 11.8, 1 % solution", &["pH 11.8 Solution [OtherSolution]"]),
            (
                "pH 7 8",
                &[
                    "pH 7 NotSaid [SeveralNumbers, OfConcentrate]",
                    "pH 8 NotSaid [SeveralNumbers, OfConcentrate]",
                ],
            ),
            ("pH: 71", &["pH 71 NotSaid [Unlikely, OfConcentrate]"]),
            ("pH 7.5 Boiling point 100", &["pH 7.5 NotSaid [OfConcentrate]"]),
            ("phosphates: 5", &[]),
            ("Ph.D. 7", &[]),
            ("graph 7", &[]),
            ("pH", &[]),
        ],
    );
}

#[test]
fn densities() {
    assert_found(
        "SECTION 9: Physical and chemical properties",
        &[
            ("Density: 1.05 g/cm3", &["density 1.05 g_per_ml"]),
            ("Density (20 °C): 1,050 g/cm³", &["density 1.05 g_per_ml"]),
            ("Density 1050 kg/m3 at 20 °C", &["density 1.05 g_per_ml"]),
            ("Density: 8.76 lb/gal", &["density 8.76 lb_per_gal_us"]),
            ("Specific gravity: 1.02 - 1.04", &["density 1.02 to 1.04 g_per_ml [Range]"]),
            ("Specific gravity (H2O = 1)\t1.02", &["density 1.02 g_per_ml"]),
            ("Relative density (20/4 °C): 1.02", &["density 1.02 g_per_ml"]),
            ("Relative density at 25 C: 1.02", &["density 1.02 g_per_ml"]),
            ("Relative density\n1.02", &["density 1.02 g_per_ml [SeveralLines]"]),
            ("Density: 1.05", &["density 1.05 g_per_ml [NoUnit]"]),
            ("Density: 10.5 g/mL", &["density 10.5 g_per_ml [Unlikely]"]),
            ("Bulk density 0.9 kg/L", &["density 0.9 g_per_ml"]),
            ("Vapor density (air = 1): 2.1", &[]),
            ("Relative vapour density: 2.1", &[]),
            ("Density: not determined", &[]),
        ],
    );
}

#[test]
fn un_numbers() {
    assert_found(
        "SECTION 14: Transport information",
        &[
            ("UN1719", &["UN1719"]),
            ("UN 1719, Caustic alkali liquid, n.o.s., 8, II", &["UN1719"]),
            ("UN number: 1719", &["UN1719"]),
            ("UN-No. (ADR/IMDG): UN1719", &["UN1719"]),
            ("14.1 UN number or ID number: UN 1719", &["UN1719"]),
            ("UN number\nUN1719", &["UN1719"]),
            ("UN number\n1719", &["UN1719 [SeveralLines]"]),
            ("ADR UN1719 IMDG UN1719 IATA UN1760", &["UN1719", "UN1760"]),
            ("UN number: Not applicable", &["not regulated"]),
            ("This product is not regulated for transport.", &["not regulated"]),
            ("Not dangerous goods", &["not regulated"]),
            ("UN 9999", &["UN9999 [Unlikely]"]),
            ("UN17190", &[]),
            ("UNITED 1719", &[]),
            ("phone 555 1719", &[]),
        ],
    );
    assert_eq!(
        english("UN1719 and UN number 1760").findings.len(),
        1,
        "under no heading only with UN right before"
    );
}

#[test]
fn lines_are_numbered_as_they_were_pasted() {
    for (text, line) in [
        ("a\nb\nUN1719", 3),
        ("a\r\nb\r\nUN1719", 3),
        ("a\rb\rUN1719", 3),
        ("\n\n\nUN1719", 4),
        ("\u{feff}UN1719", 1),
        ("a\u{2028}UN1719", 2),
        ("UN17\u{ad}\n19", 1),
    ] {
        let sheet = english(text);
        assert_eq!(sheet.findings.iter().map(|one| one.line).collect::<Vec<_>>(), [line], "{text:?}");
    }
}

#[test]
fn the_name_of_the_product() {
    for (text, wanted) in [
        ("1. Identification\nProduct name: Made-up Descaler 9\nUse: cleaning", Some("Made-up Descaler 9")),
        (
            "SECTION 1: IDENTIFICATION\n1.1. Product identifier : Made-up Descaler 9",
            Some("Made-up Descaler 9"),
        ),
        ("Product Name\tMade-up Descaler 9\tProduct code\t12-345", Some("Made-up Descaler 9")),
        ("Product name          Made-up Descaler, 1:64", Some("Made-up Descaler, 1:64")),
        ("• TRADE NAME: MADE-UP DESCALER", Some("MADE-UP DESCALER")),
        ("Product identifier used on the label:\nMade-up Descaler 9", Some("Made-up Descaler 9")),
        // The label alone, and another one below it that says it.
        ("1.1. Product identifier\nProduct form : Mixture\nTrade name : Made-up 9", Some("Made-up 9")),
        ("Product identifier\nOther means of identification\nProduct name: Made-up 9", Some("Made-up 9")),
        // Without its line ends.
        ("SECTION 1: IDENTIFICATION Product name: Made-up 9. Use: disinfection, 1:256.", None),
        ("Product name: Made-up 9. Use: disinfection, 1:256.", Some("Made-up 9")),
        // The first one of its own section, and no other.
        ("1. Identification\nProduct name: One\nTrade name: Two", Some("One")),
        ("3. Composition/information on ingredients\nProduct name: Sodium hydroxide", None),
        ("Product name:\n2. Hazards identification", None),
        ("Product name: not available", None),
        ("The product name is printed on the label: see there", None),
        ("", None),
    ] {
        assert_eq!(english(text).named.as_deref(), wanted, "{text:?}");
    }
    let long = english(&format!("Product name: {}", "very long ".repeat(60)));
    assert!(long.named.is_some_and(|name| name.chars().count() <= 82 && name.ends_with('…')));
    let sheet = english("Product name: MADE-UP  Descaler 9");
    assert_eq!(sheet.named.as_deref(), Some("MADE-UP"), "two spaces end a cell");
    let sheet = english("Product name: Made-up Descaler 9");
    assert_eq!(sheet.bears_other_than("made up descaler (9)"), None);
    assert_eq!(sheet.bears_other_than("Made-up Descaler"), Some("Made-up Descaler 9"));
    assert_eq!(english("H314").bears_other_than("Descaler"), None, "no name, no other");
}

#[test]
fn the_names_of_whole_sheets() {
    for (sheet, wanted) in [
        (include_str!("../sheets/degreaser-table.txt"), Some("Alkaline degreaser")),
        (include_str!("../sheets/quat-unbroken.txt"), Some("Quat disinfectant")),
        (include_str!("../sheets/degreaser-columns.txt"), None),
        (include_str!("../sheets/neutral-comma.txt"), None),
    ] {
        assert_eq!(english(sheet).named.as_deref(), wanted);
    }
}
