//! Numbers as people write them, and back.

use brimline::error::Mistake;
use brimline::number::NumberMistake::{Empty, NotANumber, TwoReadings};
use brimline::number::{Marks, decimal, read, vulgar, write, write_full};
use proptest::prelude::*;

#[test]
fn what_people_type() {
    for (text, point, comma) in [
        ("12", 12.0, 12.0),
        (" 12 ", 12.0, 12.0),
        ("+12", 12.0, 12.0),
        ("+ 12", 12.0, 12.0),
        ("1.5", 1.5, 1.5),
        ("1,5", 1.5, 1.5),
        ("1,50", 1.5, 1.5),
        ("5.", 5.0, 5.0),
        ("5,", 5.0, 5.0),
        (".5", 0.5, 0.5),
        (",5", 0.5, 0.5),
        ("0,500", 0.5, 0.5),
        ("12,500", 12_500.0, 12.5),
        ("12.500", 12.5, 12_500.0),
        ("1,234.5", 1_234.5, 1_234.5),
        ("1.234,5", 1_234.5, 1_234.5),
        ("1,234,567", 1_234_567.0, 1_234_567.0),
        ("12 500", 12_500.0, 12_500.0),
        ("12\u{202f}500,5", 12_500.5, 12_500.5),
        ("12\u{a0}500.25", 12_500.25, 12_500.25),
        ("½", 0.5, 0.5),
        ("1½", 1.5, 1.5),
        ("1 ½", 1.5, 1.5),
        ("1 1/2", 1.5, 1.5),
        ("3/4", 0.75, 0.75),
        ("3⁄4", 0.75, 0.75),
        ("-3", -3.0, -3.0),
        ("−½", -0.5, -0.5),
        ("1e9", f64::NAN, f64::NAN),
    ] {
        for (marks, expected) in [(Marks::POINT, point), (Marks::COMMA, comma)] {
            if expected.is_nan() {
                assert_eq!(read(text, marks), Err(NotANumber), "{text:?}");
            } else {
                assert_eq!(read(text, marks), Ok(expected), "{text:?} with {marks:?}");
            }
        }
    }
}

/// A space that parts two numbers must not make one larger number of them.
#[test]
fn what_is_no_number() {
    for text in ["", "  ", "\u{a0}", "+", "-"] {
        assert_eq!(read(text, Marks::POINT), Err(Empty), "{text:?}");
    }
    for text in [
        "ten", "1 5", "10 20", "1234 567", "12 50", "1 000 00", "1..5", "1.2.3", "1,2,3", "5..", "1/0",
        "1/2/3", "--5", "1 1 1/2", "1.5½", "1/1.5", "NaN", "inf", "1e3", "0x10", "٣", "1\n000", "<b>5</b>",
        "5 gal", "5,.",
    ] {
        assert_eq!(read(text, Marks::POINT), Err(NotANumber), "{text:?}");
        assert_eq!(read(text, Marks::COMMA), Err(NotANumber), "{text:?}");
    }
}

#[test]
fn without_a_language_a_lone_group_has_two_readings() {
    for (text, decimal_reading, grouped) in
        [("1,000", 1.0, 1_000.0), ("1.000", 1.0, 1_000.0), ("12,345", 12.345, 12_345.0)]
    {
        assert_eq!(decimal(text, None), Err(TwoReadings { decimal: decimal_reading, grouped }), "{text:?}");
    }
    for (text, value) in
        [("0,125", 0.125), ("1,5", 1.5), ("1.0000", 1.0), ("1,000,000", 1e6), ("1,000.5", 1_000.5)]
    {
        assert_eq!(decimal(text, None), Ok(value), "{text:?}");
    }
    assert_eq!(decimal("", None), Err(NotANumber));
}

#[test]
fn digits_that_can_be_measured() {
    for (value, point, comma) in [
        (0.0, "0", "0"),
        (39.384_615, "39.4", "39,4"),
        (9.996, "10", "10"),
        (0.000_123_456, "0.000123", "0,000123"),
        (999.5, "1,000", "1.000"),
        (27_456.2, "27,456", "27.456"),
        (1_234_567.0, "1,234,567", "1.234.567"),
        (-1.25, "−1.25", "−1,25"),
        (-0.0, "0", "0"),
        (f64::INFINITY, "–", "–"),
        (f64::NAN, "–", "–"),
    ] {
        assert_eq!(write(value, 3, Marks::POINT), point);
        assert_eq!(write(value, 3, Marks::COMMA), comma);
    }
    assert_eq!(vulgar('⅔'), Some(2.0 / 3.0));
    assert_eq!(vulgar('2'), None);
}

/// A space between thousands, as CLDR 48 has it for fr (U+202F); readers of these marks write 1.200 or 1,200.
const SPACED: [Marks; 2] =
    [Marks { decimal: ',', group: '\u{202f}' }, Marks { decimal: '.', group: '\u{202f}' }];

#[test]
fn where_a_space_stands_between_thousands_a_mark_before_three_digits_is_asked_for() {
    for marks in SPACED {
        for (text, decimal, grouped) in [
            ("1.200", 1.2, 1_200.0),
            ("1,200", 1.2, 1_200.0),
            ("-12,345", -12.345, -12_345.0),
            ("999.000", 999.0, 999_000.0),
        ] {
            assert_eq!(read(text, marks), Err(TwoReadings { decimal, grouped }), "{text:?}");
        }
        // These have one reading, whoever wrote them.
        for (text, value) in [
            ("1,2", 1.2),
            ("1.2", 1.2),
            ("1,2000", 1.2),
            ("1200", 1_200.0),
            ("1 200", 1_200.0),
            ("0,125", 0.125),
            (".125", 0.125),
            ("1 200,500", 1_200.5),
            ("1200,500", 1_200.5),
            ("1,234,567", 1_234_567.0),
            ("1.234.567", 1_234_567.0),
            ("1,234.5", 1_234.5),
            ("1.234,5", 1_234.5),
            ("1,234.500", 1_234.5),
        ] {
            assert_eq!(read(text, marks), Ok(value), "{text:?} with {marks:?}");
        }
    }
    // Written with both, as a French and an American reader know them.
    assert_eq!(
        [1.2, 1_200.0, 1.125, 27_456.25].map(|value| write(value, 8, SPACED[0])),
        ["1,2", "1\u{202f}200", "1,1250", "27\u{202f}456,25"]
    );
}

fn any_marks() -> impl Strategy<Value = Marks> {
    prop_oneof![Just(Marks::POINT), Just(Marks::COMMA), Just(SPACED[0]), Just(SPACED[1])]
}

proptest! {
    /// What is written is read back, within the digits that were written.
    #[test]
    fn written_then_read(
        mantissa in 1.0..10.0_f64, exponent in -6..9_i32, negative: bool, significant in 1..10_i32, marks in any_marks(),
    ) {
        let value = mantissa * 10_f64.powi(exponent) * if negative { -1.0 } else { 1.0 };
        let text = write(value, significant, marks);
        let back = read(&text, marks);
        prop_assert!(back.is_ok(), "{} from {}", text, value);
        let decimals = (significant - 1 - exponent).min(12);
        let allowed = 0.5 * 10_f64.powi(-decimals);
        prop_assert!((back.unwrap() - value).abs() <= allowed * (1.0 + 1e-9), "{} from {}", text, value);
    }

    #[test]
    fn written_again_it_is_the_same(value in 1e-6..1e9_f64, significant in 1..10_i32, marks in any_marks()) {
        let once = write(value, significant, marks);
        let twice = write(read(&once, marks).unwrap(), significant, marks);
        prop_assert_eq!(once, twice);
    }

    #[test]
    fn reading_any_text_ends(text in "\\PC*", marks in any_marks()) {
        let finite = read(&text, marks).map_or(true, f64::is_finite);
        prop_assert!(finite);
        let _ = decimal(&text, None);
    }

    #[test]
    fn reading_numberlike_text_ends(text in "[0-9.,/ ½⅔⁄+−\u{a0}-]{0,30}", marks in any_marks()) {
        if let Ok(value) = read(&text, marks) {
            prop_assert!(value.is_finite());
            prop_assert!(text.contains(|c: char| c.is_ascii_digit() || vulgar(c).is_some()));
        }
    }
}

proptest! {
    /// Up to 15 digits a decimal reads as the standard library reads it, to the last bit.
    #[test]
    fn decimals_are_the_nearest_number(whole in 0_u64..100_000_000, tail in "[0-9]{1,7}") {
        let text = format!("{whole}.{tail}");
        let expected: f64 = text.parse().expect("a decimal");
        // Three digits behind a point could be thousands, which is another test's business.
        prop_assume!(tail.len() != 3 && whole > 0);
        prop_assert_eq!(decimal(&text, None), Ok(expected));
    }
}

/// Where the page has to ask, a reading that makes no sense is none: ten times beyond the limit of its field.
#[test]
fn of_two_readings_the_one_that_makes_sense_counts() {
    use brimline::limits::{AREA, DENSITY, TANK};
    use brimline::site::Entry;
    use brimline::units::{Area, Density, Quantity, Volume};
    for marks in SPACED {
        let density = Entry::new("1.006", "g_per_ml").read::<Density>(&DENSITY, marks).expect("one reading");
        assert!((density.si() - 1_006.0).abs() < 1e-9);
        // English refuses it as a thousand, and a site must say the same wherever it is passed.
        assert!(matches!(
            Entry::new("1,006", "g_per_ml").read::<Density>(&DENSITY, marks),
            Err(Mistake::Number(TwoReadings { .. }))
        ));
        // A tank of 1,200 gal is more than any, but a person may mean it; 1.2 gal must not be made of it.
        assert!(matches!(
            Entry::new("1.200", "gal_us").read::<Volume>(&TANK, marks),
            Err(Mistake::Number(TwoReadings { .. }))
        ));
        assert!(matches!(
            Entry::new("1,200", "ft2").read::<Area>(&AREA, marks),
            Err(Mistake::Number(TwoReadings { .. }))
        ));
    }
}

/// An imperial gallon is 4.546 09 L (Weights and Measures Act 1985, schedule 1), so that 5 L are 1.099 85 of them; a
/// US gallon is 231 in³ and an inch 25.4 mm (NIST SP 811, appendix B), so that 12 L are 3.170 06. Rounded to three
/// digits by hand.
#[test]
fn zeros_that_say_how_exact_a_number_is() {
    let french = Marks { decimal: ',', group: '\u{202f}' };
    for (value, digits, point, comma) in [
        (5.0 / 4.546_09, 3, "1.10", "1,10"),
        (12.0 / 3.785_411_784, 3, "3.17", "3,17"),
        (11.846, 3, "11.8", "11,8"),
        (24.0, 3, "24.0", "24,0"),
        (9.999, 3, "10.0", "10,0"),
        (99.96, 3, "100", "100"),
        (0.099_96, 3, "0.100", "0,100"),
        (0.000_5, 3, "0.000500", "0,000500"),
        (999.6, 3, "1,000", "1\u{202f}000"),
        (-1.1, 3, "−1.10", "−1,10"),
        // Three decimals would have two readings there.
        (1.1, 4, "1.100", "1,1000"),
    ] {
        assert_eq!(write_full(value, digits, Marks::POINT), point);
        assert_eq!(write_full(value, digits, french), comma);
    }
    assert_eq!(write_full(f64::NAN, 3, Marks::POINT), "–");
}
