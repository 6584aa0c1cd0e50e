//! The other languages against English: nothing missing, nothing left in English, the same placeholders and numbers.

use brimline::desk::languages;
use brimline::number::{Marks, NumberMistake, plain, read, write, write_money};
use brimline::words::{Argument, LANGUAGES, Language, Plural, Words};
use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use intl_pluralrules::{PluralCategory, PluralRuleType, PluralRules};
use proptest::prelude::*;
use std::collections::BTreeSet;
use std::path::Path;
use std::sync::LazyLock;

/// Languages whose every message is translated. Of the others some parts are, and English is said for the rest.
const COMPLETE: &[&str] = &["es", "fr", "pl", "pt"];

/// What reads in another language as it does in English: a name, a standard, a symbol, a word that both have.
const ALIKE: &[&str] = &[
    "absorption-ansi",
    "absorption-iso",
    "drawing-tank",
    "family-alcohol",
    "language-unchecked-english",
    "name",
    "no",
    "practice-foam-motor",
    "screen-ph",
    "sheet-lack-ph",
    "sheet-ph",
    "sheet-un",
];

/// The same for one language.
const ALIKE_IN: &[(&str, &[&str])] = &[
    (
        "fr",
        &[
            "class-column-date",
            "column-machine",
            "column-solution",
            "csv-column-machine",
            "drawing-windows-dose",
            "floor-surface",
            "ghs-pictogram-ghs05",
            "ghs-signal-danger",
            "log-by-machine",
            "log-column-machine",
            "log-kind-correction",
            "log-machine",
            "log-notes",
            "log-part-notes",
            "log-questions",
            "log-standard-of",
            "machine",
            "paper-date",
            "paper-film",
            "paper-notes",
            "paper-ratio",
            "paper-version",
            "patch-film",
            "practice-paper-date",
            "seek-machine",
            "shelf-machine",
            "standard-dilution",
            "standard-title",
            "stock-table",
            "symbol-charges",
            "symbol-machine",
            "told-standard-version",
            "view-site",
            "window-machine",
        ],
    ),
    ("pl", &["log-by-standard", "log-standard", "seek-standard", "standard", "surface-linoleum"]),
    ("pt", &["drawing-windows-dose"]),
];

fn reads_alike(language: &Language, key: &str) -> bool {
    let own = ALIKE_IN.iter().find(|(code, _)| *code == language.code);
    ALIKE.contains(&key) || own.is_some_and(|(_, keys)| keys.contains(&key))
}

/// What the page fetches for a language.
fn file(language: &Language) -> String {
    languages::words(Path::new(env!("CARGO_MANIFEST_DIR")), language).expect("its files")
}

fn words(language: &'static Language) -> Words {
    Words::of(language, &file(language)).expect("the file reads")
}

fn others() -> impl Iterator<Item = (&'static Language, Words)> {
    languages::others().map(|language| (language, words(language)))
}

/// The text of a message with its placeholders filled by marks that no message has, in each of its plural forms.
fn texts(words: &Words, key: &str) -> BTreeSet<String> {
    let placeholders = words.placeholders(key);
    let with = |number: f64| {
        let filled: Vec<_> =
            placeholders.iter().map(|name| (*name, Argument::number(number, "\u{fffc}"))).collect();
        words.tell(key, &filled)
    };
    [0.0, 1.0, 2.0, 5.0, 1.5].map(with).into()
}

fn placeholders<'a>(words: &'a Words, key: &str) -> BTreeSet<&'a str> {
    words.placeholders(key).into_iter().collect()
}

/// The numbers of a text, codes of statements among them, in the order of their digits.
fn numbers(text: &str) -> Vec<String> {
    let digits = |c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',' | ':'));
    let mut all: Vec<String> = text
        .split(digits)
        .map(|one| one.trim_matches(['.', ',', ':']).to_owned())
        .filter(|one| !one.is_empty())
        .collect();
    all.sort();
    all
}

#[test]
fn a_complete_language_has_every_message_and_no_language_has_others() {
    let english = Words::english();
    let keys: BTreeSet<&str> = english.keys().collect();
    for (language, words) in others() {
        let own: BTreeSet<&str> = words.keys().collect();
        let idle: Vec<_> = own.difference(&keys).collect();
        assert!(idle.is_empty(), "{}: English has no {idle:?}", language.name);
        let missing: Vec<_> = keys.difference(&own).collect();
        println!("{}: {} of {} messages", language.name, own.len(), keys.len());
        assert!(missing.is_empty() || !COMPLETE.contains(&language.code), "{}: {missing:?}", language.name);
    }
}

#[test]
fn the_placeholders_are_those_of_english() {
    let english = Words::english();
    for (language, words) in others() {
        for key in words.keys() {
            assert_eq!(placeholders(&words, key), placeholders(&english, key), "{} {key}", language.name);
        }
    }
}

#[test]
fn the_numbers_are_those_of_english() {
    let english = Words::english();
    for (language, words) in others() {
        let marks = words.marks();
        for key in words.keys().filter(|key| !key.starts_with("number-")) {
            let plain = |text: &String| {
                // A decimal comma and what stands between thousands, as English has them.
                let swapped = text.replace(marks.group, "\0").replace(marks.decimal, ".");
                numbers(&if marks == Marks::POINT { text.clone() } else { swapped.replace('\0', ",") })
            };
            let ours: BTreeSet<_> = texts(&words, key).iter().map(plain).collect();
            let theirs: BTreeSet<_> = texts(&english, key).iter().map(|text| numbers(text)).collect();
            assert_eq!(ours, theirs, "{} {key}", language.name);
        }
    }
}

#[test]
fn nothing_is_left_in_english() {
    let english = Words::english();
    let has_word = |text: &String| text.split(|c: char| !c.is_alphabetic()).any(|word| word.len() > 1);
    for (language, words) in others() {
        let left: Vec<&str> = words
            .keys()
            .filter(|key| !reads_alike(language, key))
            .filter(|key| texts(&words, key) == texts(&english, key))
            .filter(|key| texts(&english, key).iter().any(has_word))
            .collect();
        assert!(left.is_empty(), "{}: {left:?}", language.name);
    }
}

/// The style of the page: no exclamation marks; what it asks it asks plainly.
#[test]
fn nobody_is_shouted_at() {
    for (language, words) in others() {
        for key in words.keys() {
            for text in texts(&words, key) {
                assert!(!text.contains(['!', '¡']), "{} {key}: {text}", language.name);
            }
        }
    }
}

/// The timeline of a shift has room for the first letter of each act.
#[test]
fn acts_begin_with_letters_of_their_own() {
    let acts = ["wait", "mop", "go", "refill", "change", "charge"];
    for (language, words) in others().chain([(Language::english(), Words::english())]) {
        let words = words.or(Words::english());
        let letters: BTreeSet<_> =
            acts.iter().filter_map(|act| words.say(&format!("act-{act}")).chars().next()).collect();
        assert_eq!(letters.len(), acts.len(), "{}: {letters:?}", language.name);
    }
}

#[test]
fn what_nobody_has_checked_says_so_in_itself_and_in_english() {
    for (language, words) in others().filter(|(language, _)| !language.checked) {
        assert_ne!(words.say("language-unchecked"), "language-unchecked", "{}", language.name);
        let english = words.or(Words::english()).say("language-unchecked-english");
        assert!(english.starts_with("No native reader has checked this translation yet."), "{english}");
        assert!(COMPLETE.contains(&language.code) || english.contains("the rest is in English"), "{english}");
    }
}

#[test]
fn what_a_language_lacks_is_said_in_english_with_its_plural() {
    let polish = Language { code: "pl", name: "Polski", plural: Plural::Polish, checked: false };
    let words = Words::of(Box::leak(Box::new(polish)), "yes = tak").expect("it reads").or(Words::english());
    assert_eq!((words.say("yes").as_str(), words.say("no").as_str()), ("tak", "No"));
    assert_eq!(words.tell("count-cap", &[("n", Argument::number(2.0, "2"))]), "2 caps");
    assert_eq!(words.language().code, "pl");
}

/// Every message of every language, as the reference implementation of Fluent reads it.
#[test]
fn every_message_reads_as_the_reference_reads_it() {
    for (language, words) in others() {
        let resource = FluentResource::try_new(file(language)).expect("the reference reader takes the file");
        let mut bundle = FluentBundle::new(vec![language.code.parse().expect("a language tag")]);
        bundle.set_use_isolating(false);
        bundle.add_resource(resource).expect("no key stands twice");
        for key in words.keys() {
            let pattern = bundle.get_message(key).and_then(|message| message.value()).expect(key);
            for number in [0.0, 1.0, 2.0, 5.0, 12.0, 22.0, 1.5] {
                let mut theirs = FluentArgs::new();
                let mut ours = Vec::new();
                for name in words.placeholders(key) {
                    theirs.set(name, FluentValue::from(number));
                    ours.push((name, Argument::number(number, number.to_string())));
                }
                let mut errors = Vec::new();
                let expected = bundle.format_pattern(pattern, Some(&theirs), &mut errors);
                assert!(errors.is_empty(), "{key}: {errors:?}");
                assert_eq!(words.tell(key, &ours), expected, "{} {key} with {number}", language.name);
            }
        }
    }
}

/// The plural rules against the crate `intl_pluralrules` 7 (CLDR 37), up to 999,999: above that later versions of
/// CLDR have "many" for whole millions in Spanish, French and Portuguese, which no message needs.
#[test]
fn plural_rules_are_those_of_cldr() {
    let tried = (0..2_000).map(f64::from).chain([0.5, 1.5, 2.5, 10.25, 999_999.0, 1_012.0, 100_022.0]);
    let tried: Vec<f64> = tried.collect();
    for (code, rule) in [
        ("en", Plural::One),
        ("es", Plural::One),
        ("fr", Plural::ZeroOrOne),
        ("pt", Plural::ZeroOrOne),
        ("pl", Plural::Polish),
    ] {
        let rules = PluralRules::create(
            code.parse::<unic_langid::LanguageIdentifier>().expect("a tag"),
            PluralRuleType::CARDINAL,
        )
        .expect(code);
        for number in &tried {
            let expected = match rules.select(number.to_string()).expect("a number") {
                PluralCategory::ONE => "one",
                PluralCategory::FEW => "few",
                PluralCategory::MANY => "many",
                _ => "other",
            };
            assert_eq!(rule.category(*number), expected, "{code} {number}");
        }
    }
    for language in LANGUAGES {
        println!("{}: {:?}", language.name, language.plural);
    }
}

/// The words of every language, English among them.
fn all() -> impl Iterator<Item = (&'static Language, Words)> {
    others().chain([(Language::english(), Words::of_fill())])
}

/// The decimal marks of Unicode CLDR 48 (`main/<tag>.xml`, `symbols/decimal`) for fr, pl and pt; es as es-419 and es-US
/// have it. CLDR has none for ht. Where CLDR 48 has a point (pt) or a comma (es-419, es-US) between thousands we have
/// the space that it has for fr, and the SI brochure (9th edition, 5.4.4) for all.
#[test]
fn marks_are_those_of_cldr() {
    for (code, decimal) in [("en", '.'), ("es", '.'), ("fr", ','), ("ht", '.'), ("pl", ','), ("pt", ',')] {
        let group = if code == "en" { ',' } else { '\u{202f}' };
        let (_, words) = all().find(|(language, _)| language.code == code).expect(code);
        assert_eq!(words.marks(), Marks { decimal, group }, "{code}");
    }
    assert_eq!(all().count(), 6, "a new language needs its row");
}

#[test]
fn a_number_with_two_readings_is_asked_for_with_both() {
    use brimline::form::What;
    for (language, words) in others() {
        for typed in ["1.200", "1,200", "12.345", "100,001"] {
            let mistake = read(typed, words.marks()).expect_err(language.name);
            let what = What::Number(mistake.into());
            let readings = words.readings(&what);
            let plain = |mark: &str| typed.replace(['.', ','], mark).parse::<f64>().expect("digits");
            let back: Vec<_> = readings.iter().map(|one| read(one, words.marks())).collect();
            assert_eq!(back, [Ok(plain(".")), Ok(plain(""))], "{}: {readings:?}", language.name);
            let told = words.trouble(&what, "?", None, (typed, "l"));
            assert!(readings.iter().all(|one| told.contains(one)) && told.contains(typed), "{told}");
        }
    }
}

/// The marks of every language, by its name.
static MARKS: LazyLock<Vec<(&str, Marks)>> =
    LazyLock::new(|| all().map(|(language, words)| (language.name, words.marks())).collect());

proptest! {
    /// What is shown in a language reads back as the same number there, money too.
    #[test]
    fn what_is_shown_reads_back(mantissa in 1.0..10.0_f64, power in -6..9_i32, digits in 1..13_i32) {
        let value = mantissa * 10_f64.powi(power);
        for &(language, marks) in MARKS.iter() {
            let shown = write(value, digits, marks);
            let back = read(&shown, marks);
            prop_assert_eq!(back, read(&write(value, digits, Marks::POINT), Marks::POINT), "{}: {}", language, shown);
            let money = write_money(value, marks);
            prop_assert_eq!(read(&money, marks), read(&write_money(value, Marks::POINT), Marks::POINT), "{}", money);
            let field = plain(value, digits, marks.decimal);
            prop_assert_eq!(read(&field, marks), read(&plain(value, digits, '.'), Marks::POINT), "{}", field);
        }
    }

    /// What is typed is the same number in every language, or one of them asks: a site passes from hand to hand.
    #[test]
    fn a_number_is_the_same_in_every_language_or_asked_for(typed in "[0-9]{1,4}([., \u{202f}][0-9]{1,4}){0,3}") {
        for &(one, own) in MARKS.iter() {
            for &(other, theirs) in MARKS.iter() {
                match (read(&typed, own), read(&typed, theirs)) {
                    (this, that) if this == that => {}
                    (Err(NumberMistake::TwoReadings { .. }), _) | (_, Err(NumberMistake::TwoReadings { .. })) => {}
                    (this, that) => {
                        prop_assert!(false, "{typed} is {this:?} in {one} and {that:?} in {other}");
                    }
                }
            }
        }
    }

    /// One mark before three digits: but for English nothing is taken for granted.
    #[test]
    fn no_language_but_english_decides_between_tenths_and_thousands(typed in "[1-9][0-9]{0,2}[.,][0-9]{3}") {
        for &(language, marks) in MARKS.iter().filter(|(language, _)| *language != Language::english().name) {
            let asked = matches!(read(&typed, marks), Err(NumberMistake::TwoReadings { .. }));
            prop_assert!(asked, "{typed} in {language}");
        }
    }
}

/// Nothing is loaded when the page starts, or cannot: what it says then stands in its frame, in every language.
#[test]
fn every_language_tells_of_the_start() {
    let frame = include_str!("../../index.html");
    let part = |from: &str, to: &str| {
        let after = frame.split_once(from).expect("it begins").1;
        after.split_once(to).expect("it ends").0
    };
    for (from, to) in [
        ("id=\"boot-wait\"", "id=\"boot-failed\""),
        ("id=\"boot-failed\"", "<noscript>"),
        ("<noscript>", "</body>"),
    ] {
        let told: Vec<&str> = part(from, to)
            .split("lang=\"")
            .skip(1)
            .filter_map(|rest| Some(rest.split_once('"')?.0))
            .collect();
        let all: Vec<&str> = LANGUAGES.iter().map(|language| language.code).collect();
        assert_eq!(told, all, "{from}");
    }
}

/// A colon stands off its word in French (Imprimerie nationale, Lexique des règles typographiques) and in no other of
/// these; what the page puts together has the one of the language.
#[test]
fn a_heading_has_the_colon_of_its_language() {
    for (language, words) in all() {
        let space = if language.code == "fr" { "\u{a0}" } else { "" };
        assert_eq!(words.headed("Acide fort"), format!("Acide fort{space}:"), "{}", language.code);
    }
}

/// Of one record and of several; days in the sentence are written as the language writes them.
#[test]
fn a_file_of_the_log_is_told_in_one_and_many() {
    let words = |n: f64| {
        let count = |n: f64| Argument::number(n, n.to_string());
        let told = [("records", count(n)), ("added", count(n)), ("known", count(0.0))];
        Words::english().tell("log-compared", &told)
    };
    assert_eq!(words(1.0), "1 record in the file: 1 new, 0 known.");
    assert_eq!(words(3.0), "3 records in the file: 3 new, 0 known.");
    for (language, words) in all() {
        let letters =
            words.find("container-source").unwrap_or_else(|| Words::english().say("container-source"));
        assert!(letters.contains("1989") && !letters.contains("1989-"), "{}: {letters}", language.code);
    }
}

/// Spanish says usted from the first line on: the forms of tú are none of it.
#[test]
fn the_start_is_told_in_spanish_with_usted() {
    let frame = include_str!("../../index.html").to_lowercase();
    let spanish: Vec<&str> =
        frame.split("lang=\"es\"").skip(1).filter_map(|rest| rest.split("lang=").next()).collect();
    assert_eq!(spanish.len(), 3);
    for told in spanish {
        let words: BTreeSet<&str> = told.split(|one: char| !one.is_alphabetic()).collect();
        for familiar in ["usa", "abre", "vuelve", "pregunta", "permite", "guardaste"] {
            // "se abre" tells of the file.
            let of_you =
                words.contains(familiar) && !(familiar == "abre" && told.contains("se abre brimline.html"));
            assert!(!of_you, "{familiar}: {told}");
        }
    }
}
