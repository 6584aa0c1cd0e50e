//! What a person corrects before taking it: read as the sheet itself is read, or told that it is not understood.

use super::layouts::{english, names, sheet};
use brimline::number::Marks;
use brimline::site::Product;
use brimline::site::sheet::{Disagreement, Doubt, Finding, Of, Piece, What, take};
use proptest::prelude::*;

fn texts(finding: &Finding, marks: Marks) -> Vec<String> {
    finding.pieces(marks).into_iter().map(|(_, text)| text).collect()
}

/// The first finding of a text, corrected.
fn corrected(text: &str, to: &[&str]) -> Result<Finding, Piece> {
    let to: Vec<String> = to.iter().map(|text| (*text).to_owned()).collect();
    english(text).findings[0].corrected(&to, Marks::POINT)
}

const PART: &str = "3. Composition\nSodium hydroxide 1310-73-2 5 - 10 % H314";
const PH: &str = "9. Physical and chemical properties\npH: 1.8";

/// What is shown to be corrected reads back as what was found, in either decimal mark.
#[test]
fn what_is_shown_reads_back() {
    for name in names() {
        for finding in english(&sheet(&name)).findings {
            for marks in [Marks::POINT, Marks::COMMA] {
                assert_eq!(finding.corrected(&texts(&finding, marks), marks), Ok(finding.clone()), "{name}");
                // Another space is another text, and read again.
                let spaced: Vec<String> =
                    texts(&finding, marks).iter().map(|text| format!(" {text} ")).collect();
                let again = finding.corrected(&spaced, marks);
                if matches!(finding.what, What::UnknownCode(_)) {
                    assert_eq!(again, Err(Piece::Code));
                    continue;
                }
                let again = again.unwrap_or_else(|piece| panic!("{name}: {piece:?} of {finding:?}"));
                assert_eq!(again.what, finding.what, "{name}");
                assert_eq!((again.line, again.section), (finding.line, finding.section), "{name}");
            }
        }
    }
}

#[test]
fn a_corrected_value_goes_through_the_same_checks() {
    // A digit of the CAS number turned: the check digit tells.
    let wrong = corrected(PART, &["Sodium hydroxide", "1310-73-3", "5 - 10 %", "H314"]).expect("it is read");
    assert_eq!(wrong.doubts, [Doubt::CheckDigit]);
    let right = corrected(PART, &["Lye", "1310 - 73 - 2", "2,5", "H290, H314"]).expect("it is read");
    let What::Part(part) = &right.what else { panic!("a part") };
    assert_eq!((part.name.as_str(), part.cas.as_str()), ("Lye", "1310-73-2"));
    assert_eq!(part.share.map(|share| (share.low, share.high)), Some((2.5, 2.5)));
    assert_eq!(part.hazards.iter().map(|one| one.code).collect::<Vec<_>>(), ["H290", "H314"]);
    assert!(right.doubts.is_empty(), "{:?}", right.doubts);
    let doubts = |to: &[&str]| corrected(PART, to).expect("it is read").doubts;
    assert_eq!(doubts(&["Lye", "", "10 - 5", ""]), [Doubt::NoCas, Doubt::Backwards]);
    assert_eq!(doubts(&["", "1310-73-2", "120 %", ""]), [Doubt::NoName, Doubt::MoreThanWhole]);
    assert_eq!(doubts(&["Lye", "1310-73-2", "", ""]), [Doubt::NoShare]);

    let ph = corrected(PH, &["11.8 (use solution)"]).expect("a pH");
    assert!(matches!(ph.what, What::Ph { span, of: Of::UseSolution } if span.is_one()));
    assert!(ph.doubts.is_empty());
    assert_eq!(corrected(PH, &["18 (use solution)"]).expect("a number").doubts, [Doubt::Unlikely]);
    let density = "9. Physical and chemical properties\nDensity: 1.09 g/mL";
    assert_eq!(corrected(density, &["9.0 g/mL"]).expect("a number").doubts, [Doubt::Unlikely]);
    assert_eq!(corrected(density, &["1.1"]).expect("a number").doubts, [Doubt::NoUnit]);
    let signal = corrected("2. Hazards identification\nSignal word: Warning", &["Danger"]).expect("a word");
    assert_eq!(take(&Product::default(), &[signal], Marks::POINT).signal.code(), "danger");
}

#[test]
fn what_is_not_understood_is_named() {
    let cases: &[(&str, &[&str], Piece)] = &[
        (PART, &["", "", "5 %", ""], Piece::Name),
        (PART, &["12", "1310-73-2", "5 %", ""], Piece::Name),
        (PART, &["Lye", "1310732", "5 %", ""], Piece::Cas),
        (PART, &["Lye", "1310-73-2 or so", "5 %", ""], Piece::Cas),
        (PART, &["Lye", "1310-73-2", "some", ""], Piece::Share),
        (PART, &["Lye", "1310-73-2", "5 % or 6", ""], Piece::Share),
        (PART, &["Lye", "1310-73-2", "5 %", "H999"], Piece::Codes),
        (PART, &["Lye", "1310-73-2", "5 %", "P280"], Piece::Codes),
        (PART, &["Lye", "1310-73-2", "5 %", "burns"], Piece::Codes),
        (PH, &["high"], Piece::Ph),
        (PH, &["not applicable"], Piece::Ph),
        (PH, &[""], Piece::Ph),
        (PH, &["7; 8"], Piece::Ph),
        ("9. Physical and chemical properties\nDensity: 1.09 g/mL", &["heavy"], Piece::Density),
        ("14. Transport information\nUN1719", &["17190"], Piece::Un),
        ("14. Transport information\nUN1719", &["one"], Piece::Un),
        ("2. Hazards identification\nSignal word: Warning", &["Caution"], Piece::Signal),
        ("2. Hazards identification\nH314", &["H3145"], Piece::Code),
        ("2. Hazards identification\nH314", &["H314 H318"], Piece::Code),
        ("8. Exposure controls/personal protection\nHand protection: gloves", &["-"], Piece::Worn),
    ];
    for (text, to, piece) in cases {
        assert_eq!(corrected(text, to), Err(*piece), "{text} corrected to {to:?}");
    }
    for piece in Piece::ALL {
        assert!(piece.key().ends_with(piece.name()) && piece.mistake().ends_with(piece.name()));
    }
}

/// A correction counts for what disagrees, and one that is not understood changes nothing.
#[test]
fn disagreements_are_looked_for_again() {
    let sheet = english(
        "2. Hazards identification\nSignal word: Warning\nH314 Causes severe skin burns and eye damage",
    );
    assert_eq!(sheet.clashes.len(), 1);
    let with = |text: &str| sheet.corrected(&[(0, vec![text.to_owned()])].into(), Marks::POINT);
    assert!(with("danger").clashes.is_empty());
    let wrong = with("careful");
    assert_eq!((wrong.findings, wrong.mistakes[&0]), (sheet.findings.clone(), Piece::Signal));
    assert_eq!(wrong.clashes[0].what, Disagreement::SignalAndStatements);
    // A place that is none is passed over.
    assert!(sheet.corrected(&[(99, vec!["H290".to_owned()])].into(), Marks::POINT).mistakes.is_empty());
}

/// What is carried into the notes is what was corrected, not the line.
#[test]
fn notes_take_the_correction() {
    let un = corrected("14. Transport information\nUN number: UN1719", &["UN 1760"]).expect("a number");
    assert_eq!(take(&Product::default(), &[un], Marks::POINT).notes, "UN1760");
    let worn =
        corrected("8. Exposure controls/personal protection\nHand protection: gloves", &["Gloves of butyl"])
            .expect("words");
    assert_eq!(take(&Product::default(), &[worn], Marks::POINT).notes, "Gloves of butyl");
}

proptest! {
    /// Any text ends in a finding or in the value that is not understood.
    #[test]
    fn any_correction_ends(text in ".{0,60}", near in "[0-9 .,%<>≥-]{0,12}[a-zA-Z() ]{0,12}") {
        for one in [PART, PH, "14. Transport information\nUN1719", "2. Hazards identification\nH314", "9. Physical and chemical properties\nDensity: 1.1 g/mL"] {
            for text in [&text, &near] {
                let to = vec![text.clone(); 4];
                if let Ok(finding) = english(one).findings[0].corrected(&to, Marks::POINT) {
                    let shown = texts(&finding, Marks::POINT);
                    let again = finding.corrected(&shown, Marks::POINT);
                    prop_assert_eq!(again, Ok(finding));
                }
            }
        }
    }
}
