//! What a label can mean, said in every language; what is written into the label stays a label.
//! The conventions are the trade's, as in `core/labels.rs`; the words of the languages are our own.

use brimline::trade::label::{Basis, Joint, Rule, apart, read};
use brimline::units::System::{self, Imperial, Metric, Us};
use brimline::words::{LANGUAGES, Language, Words};

/// Each language with its words over the English ones, as the page has them.
fn all() -> Vec<(&'static Language, Words)> {
    let words = |language: &'static Language| {
        let file = ["fill", "rest"].map(|part| {
            let path = format!("{}/src/words/{}/{part}.ftl", env!("CARGO_MANIFEST_DIR"), language.code);
            std::fs::read_to_string(path).expect("its words")
        });
        (language, Words::of(language, &file.join("\n")).expect("they read").or(Words::english()))
    };
    LANGUAGES.iter().map(words).collect()
}

/// The texts that are offered for a label.
fn offered(text: &str, system: System) -> Vec<String> {
    read(text, system).map_or_else(|mistake| mistake.readings().to_vec(), |label| label.others)
}

/// Labels with more than one meaning: ratios, ranges, amounts of unknown gallons, an amount for no
/// volume, powder, packets, and a number with two readings.
const LABELS: &[(&str, System)] = &[
    ("1:64", Us),
    ("1 in 64", Metric),
    ("2:5", Us),
    ("1 per 64", Us),
    ("2:5 to 2:9", Us),
    ("1:32-64", Us),
    ("1-64", Metric),
    ("4-8", Us),
    ("2 oz/gal", Us),
    ("2 oz/gal", Metric),
    ("2 oz/gal", Imperial),
    ("2 oz makes 1 gal", Us),
    ("4 to 8 oz/gal", Us),
    ("8 to 4 oz/gal", Us),
    ("15 mL/L", Metric),
    ("2.5 oz/gal", Us),
    ("5 mL per 10 L", Metric),
    ("2 oz", Us),
    ("2 oz per tank", Metric),
    ("4 to 2 %", Us),
    ("300 to 200 ppm", Us),
    ("2 packets/gal", Metric),
    ("1 packet", Us),
    ("2 oz wt/gal", Metric),
    ("1,200 mL/L", Metric),
];

#[test]
fn each_meaning_has_words_of_its_own_in_every_language() {
    for (language, words) in all() {
        for (text, system) in LABELS {
            let texts = offered(text, *system);
            assert!(!texts.is_empty(), "{text} offers something");
            let said: Vec<String> = texts.iter().map(|one| words.meant(one)).collect();
            for (at, one) in said.iter().enumerate() {
                assert!(!said[..at].contains(one), "{} {text}: {said:?}", language.name);
                // A placeholder or a key that is shown would be a message that does not fit.
                assert!(!one.contains(['{', '$', '\u{fffd}']) && !one.contains("meant-"), "{one}");
                for unit in ["US fl oz", "imp fl oz", "US gal", "imp gal", "mL", "ppm", "%"] {
                    assert_eq!(one.matches(unit).count(), texts[at].matches(unit).count(), "{one}");
                }
                let english = [" per ", " in ", " to ", "water", "made up", "tank", "packet"];
                let left = english.iter().find(|word| language.code != "en" && one.contains(*word));
                let own = left.is_some_and(|word| *word == "tank" && language.code == "ht");
                assert!(left.is_none() || own, "{} {one}", language.name);
            }
        }
    }
}

#[test]
fn english_says_it_as_the_label_writes_it() {
    let (_, words) = all().swap_remove(0);
    for (text, system) in LABELS {
        for one in offered(text, *system) {
            assert_eq!(words.meant(&one).replace(',', ""), one, "{text}");
        }
    }
}

/// The sentence is made of what goes into the label: that must be read as the sentence says.
#[test]
fn what_is_written_reads_back_as_it_was_said() {
    use Joint::{MadeUp, OfTotal, Per, PerTank, PerWater, PlusWater, Range};
    let mut seen = Vec::new();
    for (text, system) in LABELS {
        for one in offered(text, *system) {
            let label = read(&one, *system).expect("it is read without a question");
            let Some((mut joint, low, mut high)) = apart(&one) else { continue };
            if joint == Joint::Range {
                assert!(label.rule.is_range(), "{one}");
                let inner = apart(high).map(|(inner, _, side)| (inner, side));
                (joint, high) = inner.unwrap_or((joint, high));
            }
            seen.push(joint);
            let expected = match joint {
                Joint::Range => &[Basis::Percent, Basis::Active] as &[Basis],
                Joint::PlusWater => &[Basis::PlusWater],
                Joint::OfTotal => &[Basis::OfTotal],
                Joint::Per => &[Basis::PerWater, Basis::Powder, Basis::Packets],
                Joint::PerWater => &[Basis::PerWater],
                Joint::MadeUp => &[Basis::MadeUp],
                Joint::PerTank => &[Basis::PerTank],
            };
            assert!(expected.contains(&label.basis), "{one}: {joint:?} and {:?}", label.basis);
            if let (Rule::Strength(window), Ok(part), Ok(other)) =
                (label.rule, low.parse(), high.parse::<f64>())
            {
                let (part, whole): (f64, _) =
                    (part, if joint == Joint::OfTotal { other } else { part + other });
                assert!((window.low.percent() / 100.0 - part / whole).abs() < 1e-12, "{one}");
            }
        }
    }
    for joint in [Range, PlusWater, OfTotal, Per, PerWater, MadeUp, PerTank] {
        assert!(seen.contains(&joint), "{joint:?} was tried");
    }
}

#[test]
fn the_words_and_numbers_are_the_languages_own() {
    let (made_up, water) = ("4.5 to 8 US fl oz per US gal made up", "4.5 to 8 imp fl oz per imp gal water");
    for (code, solution, of_water, parts, total, packets) in [
        (
            "es",
            "4.5 a 8 US fl oz por US gal de solución terminada",
            "4.5 a 8 imp fl oz por imp gal de agua",
            "5 + 2 de agua",
            "1 en 64 de solución terminada",
            "2 sobres por 3 L",
        ),
        (
            "fr",
            "4,5 à 8 US fl oz par US gal de solution finie",
            "4,5 à 8 imp fl oz par imp gal d’eau",
            "5 + 2 d’eau",
            "1 dans 64 de solution finie",
            "2 sachets par 3 L",
        ),
        (
            "ht",
            "4.5 rive 8 US fl oz pou US gal solisyon fini",
            "4.5 rive 8 imp fl oz pou imp gal dlo",
            "5 + 2 dlo",
            "1 nan 64 solisyon fini",
            "2 sachè pou 3 L",
        ),
        (
            "pl",
            "4,5 do 8 US fl oz na US gal gotowego roztworu",
            "4,5 do 8 imp fl oz na imp gal wody",
            "5 + 2 wody",
            "1 w 64 gotowego roztworu",
            "2 sasz. na 3 L",
        ),
        (
            "pt",
            "4,5 a 8 US fl oz por US gal de solução pronta",
            "4,5 a 8 imp fl oz por imp gal de água",
            "5 + 2 de água",
            "1 em 64 de solução pronta",
            "2 sachês por 3 L",
        ),
    ] {
        let (_, words) = all().into_iter().find(|(language, _)| language.code == code).expect(code);
        for (text, said) in [
            (made_up, solution),
            (water, of_water),
            ("5+2", parts),
            ("1 in 64", total),
            ("2 packets per 3 L", packets),
        ] {
            assert_eq!(words.meant(text), said, "{code}");
        }
    }
}

/// Where two statements disagree, the label's own words are told. What they look like must not change what they say.
#[test]
fn the_labels_own_words_stay() {
    let french = all().into_iter().find(|(language, _)| language.code == "fr").expect("French").1;
    for own in [
        "1 to 64",
        "1 to 64 total",
        "64:1",
        "64+1",
        "1 + 64",
        "3 oz in 10 gal",
        "1.500,5 mL/L",
        "1,200.5 mL/L",
    ] {
        assert_eq!(french.meant(own), own);
    }
    // For ten gallons, whatever the tank holds.
    assert_eq!(french.meant("3 oz per 10 gal tank"), "3 oz par 10 gal tank");
}
