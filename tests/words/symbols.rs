//! Units, formulas and limits in every language.

use brimline::desk::languages;
use brimline::form::{Field, What};
use brimline::limits::{self, OutOfRange};
use brimline::number::{Marks, read};
use brimline::site::Entry;
use brimline::trade::formula;
use brimline::units::{Kind, Quantity, System, UNITS, Unit, VolumePrice, unit};
use brimline::words::{LANGUAGES, Words};
use std::path::Path;

fn all() -> impl Iterator<Item = (&'static str, Words)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let others = languages::others().map(move |language| {
        let file = languages::words(root, language).expect("its files");
        (language.code, Words::of(language, &file).expect("it reads").or(Words::english()))
    });
    others.chain([("en", Words::english())])
}

fn in_language(code: &str) -> Words {
    all().find(|(one, _)| *one == code).expect(code).1
}

/// The words of a formula: what has more than one small letter.
fn words_of(equation: &str) -> impl Iterator<Item = &str> {
    equation.split(|c: char| !c.is_ascii_lowercase()).filter(|word| word.len() > 1)
}

#[test]
fn english_units_read_as_the_table_has_them() {
    let (english, first) = (Words::english(), Words::of_fill());
    for unit in UNITS {
        assert_eq!(english.symbol(unit), unit.symbol, "{}", unit.code);
        assert_eq!(first.symbol(unit), unit.symbol, "{} while the rest is on its way", unit.code);
    }
    assert_eq!(english.symbol_of("firkin"), "");
}

/// No unit that a reader meets has an English word: what is left are symbols (SI brochure, 9th edition; NIST SP 811),
/// and the names of kitchen and imperial measures as they stand on the vessels.
#[test]
fn units_have_no_english_words_in_another_language() {
    for (language, words) in all().filter(|(language, _)| *language != "en") {
        for unit in UNITS {
            let symbol = words.symbol(unit);
            let english = |part: &str| matches!(part, "per" | "a" | "day" | "week" | "month" | "year");
            assert!(
                !symbol.split(' ').any(english) || language == "es" && symbol.starts_with("a la "),
                "{symbol}"
            );
            assert_eq!(unit.is_worded(), unit.symbol.split(' ').any(english), "{}", unit.code);
            assert_eq!(symbol == unit.symbol, !unit.is_worded(), "{language} {symbol}");
            // One symbol for each unit of a list.
            let same = |other: &&Unit| other.dimension == unit.dimension && words.symbol(other) == symbol;
            assert_eq!(UNITS.iter().filter(same).count(), 1, "{language} {symbol}");
        }
    }
}

#[test]
fn figures_and_what_was_typed_have_the_unit_of_the_language() {
    let price = brimline::answer::Value::new(
        VolumePrice::of(1.5, unit("money_per_gal_us").expect("it")).expect("a price"),
        Kind::VolumePrice,
    );
    for (code, shown, often) in [
        ("en", "1.50 per gal", "5 a week"),
        ("es", "1.50 por gal", "5 a la semana"),
        ("fr", "1,50 par gal", "5 par semaine"),
        ("ht", "1.50 pa gal", "5 pa semèn"),
        ("pl", "1,50 za gal", "5 na tydzień"),
        ("pt", "1,50 por gal", "5 por semana"),
    ] {
        let words = in_language(code);
        let plain = |text: String| text.replace('\u{202f}', " ");
        assert_eq!(plain(words.value(price, System::Us)), shown);
        assert_eq!(plain(words.entry(&Entry::new("5", "per_week"))), often);
    }
    assert_eq!(LANGUAGES.len(), 6, "a new language needs its row");
}

/// The decimal marks of Unicode CLDR 48 (`main/<tag>.xml`, `symbols/decimal`) for fr, pl and pt, for es those of es-419;
/// CLDR has none for ht. Three decimals that have two readings get a fourth one, as all numbers do.
#[test]
fn equations_have_the_numbers_and_words_of_the_language() {
    for (code, recovery, limit, govern, labour) in [
        ("en", "0.9 × R / d", "x̄ + 3 × MR̄ / 1.128", "min(label, machine)", "E − alone"),
        ("es", "0.9 × R / d", "x̄ + 3 × MR̄ / 1.1280", "min(etiqueta, máquina)", "E − sola"),
        ("fr", "0,9 × R / d", "x̄ + 3 × MR̄ / 1,1280", "min(étiquette, machine)", "E − seule"),
        ("ht", "0.9 × R / d", "x̄ + 3 × MR̄ / 1.1280", "min(etikèt, machin)", "E − poukont"),
        ("pl", "0,9 × R / d", "x̄ + 3 × MR̄ / 1,1280", "min(etykieta, maszyna)", "E − sama"),
        ("pt", "0,9 × R / d", "x̄ + 3 × MR̄ / 1,1280", "min(rótulo, máquina)", "E − sozinha"),
    ] {
        let words = in_language(code);
        assert_eq!(words.equation(formula::RECOVERY.equation), recovery);
        assert_eq!(words.equation(formula::CONTROL_UPPER.equation), limit);
        assert_eq!(words.equation(formula::GOVERN.equation), govern);
        assert_eq!(words.equation(formula::LABOUR.equation), labour);
    }
}

#[test]
fn no_equation_loses_a_letter_a_sign_or_a_number() {
    for (language, words) in all() {
        for formula in formula::ALL {
            let (told, equation) = (words.equation(formula.equation), formula.equation);
            if language == "en" {
                assert_eq!(told, equation);
            }
            for word in words_of(equation).filter(|word| *word != "min") {
                assert!(words.find(&format!("symbol-{word}")).is_some(), "{language}: {word} in {equation}");
            }
            let own =
                |text: &str, c: fn(char) -> bool| text.chars().filter(|one| c(*one)).collect::<String>();
            let sign = |c: char| !(c.is_alphanumeric() || matches!(c, '.' | ','));
            let list = |text: &str| text.matches(", ").count();
            assert_eq!(own(&told, sign), own(equation, sign), "{language}");
            assert_eq!(list(&told), list(equation), "{language}");
            let numbers = |text: &str, marks: Marks| -> Vec<f64> {
                let digit = |c: char| c.is_ascii_digit() || c == marks.decimal;
                text.split(|c| !digit(c)).filter_map(|one| read(one, marks).ok()).collect()
            };
            assert_eq!(numbers(&told, words.marks()), numbers(equation, Marks::POINT), "{language} {told}");
            assert_eq!(words.equation(formula.result), formula.result, "a result is a letter");
        }
    }
}

/// What a hint tells is accepted when it is typed: in every unit, the least and the most.
#[test]
fn a_limit_that_is_told_can_be_typed() {
    let words = Words::english();
    for &limit in limits::ALL {
        for unit in UNITS.iter().filter(|unit| unit.dimension == limit.dimension) {
            for (out, end) in [(OutOfRange::Below(limit), limit.low), (OutOfRange::Above(limit), limit.high)]
            {
                let number = told(&words, out, unit);
                let value = unit.to_si(read(&number, Marks::POINT).expect("a number"));
                assert!(
                    limit.check_si(value).is_ok() || is_dust(end, unit),
                    "{} {number} {}",
                    limit.name,
                    unit.code
                );
                // Two digits: a tenth of it at most.
                let span = unit.from_si(end).abs();
                let off = (unit.from_si(value) - unit.from_si(end)).abs();
                assert!(off <= span * 0.1 || is_dust(end, unit), "{} {number} {}", limit.name, unit.code);
                let digits = number.trim_start_matches(['−', '0', '.']).replace(['.', ','], "");
                assert!(digits.trim_end_matches('0').len() <= 3, "{} {number} {}", limit.name, unit.code);
            }
        }
    }
}

/// Whether a limit is smaller in a unit than twelve decimals show: nobody types such a number.
fn is_dust(end: f64, unit: &Unit) -> bool {
    end != 0.0 && unit.from_si(end).abs() < 1e-10
}

/// The number in "… fits is 0.5 L. You typed …".
fn told(words: &Words, out: OutOfRange, unit: &Unit) -> String {
    let what = What::Number(out.into());
    let text = words.trouble(&what, "", None, ("", unit.code));
    let number = text.split(" fits is ").nth(1).expect("a bound").split(". You").next().expect("it");
    number.strip_suffix(unit.symbol).expect("its unit").trim().to_owned()
}

/// 10 mL/min are 0.002 641 7 gal/min and 2000 L are 528.34 gal (231 in³, NIST SP 811).
#[test]
fn limits_are_told_with_few_digits_and_never_wider_than_they_are() {
    let words = Words::english();
    for (field, code, expected) in [
        (Field::Tank, "l", "0.5 L to 2,000 L."),
        (Field::Tank, "gal_us", "0.14 gal to 520 gal."),
        (Field::Speed, "km_per_h", "0.18 km/h to 18 km/h."),
    ] {
        let told = words.limits(field, code).map(|told| told.replace('\u{202f}', " "));
        assert_eq!(told.as_deref(), Some(expected));
    }
    // By volume and by mass are two things (a density of 1.2 makes 12 % w/v of 10 % w/w): no limit of the one is told in
    // the other.
    assert_eq!(words.limits(Field::Active, "percent_ww"), None);
    assert!(words.limits(Field::Active, "percent_wv").is_some_and(|told| told.contains("% w/v")));
    assert_eq!(told(&words, OutOfRange::Below(&limits::FLOW), unit("gal_us_per_min").expect("it")), "0.0027");
    assert_eq!(told(&words, OutOfRange::Above(&limits::LEAD), unit("d").expect("it")), "365");
}
