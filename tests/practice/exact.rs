//! Exact fractions and the units that exercises use, apart from the core's table.
//!
//! Source: NIST SP 811 (2008), appendix B: US gallon 231 in³, inch 25.4 mm, avoirdupois ounce 28.349 523 125 g;
//! the Weights and Measures Act 1985 (UK), schedule 1: gallon 4.546 09 L, 160 fluid ounces each.

use brimline::practice::{Exercise, Fact, Said};
use brimline::site::Entry;
use num_bigint::BigInt;
pub use num_rational::BigRational as Q;
use num_traits::{One, ToPrimitive, Zero};

/// A fraction.
pub fn q(above: i64, below: i64) -> Q {
    Q::new(BigInt::from(above), BigInt::from(below))
}

/// What a text says: `12`, `0.25`, `1/2`, `1 1/2`.
pub fn number(text: &str) -> Q {
    if let Some((whole, part)) = text.trim().split_once(' ') {
        return number(whole) + number(part);
    }
    if let Some((above, below)) = text.split_once('/') {
        return number(above) / number(below);
    }
    let (whole, tail) = text.split_once('.').unwrap_or((text, ""));
    let digits: BigInt = format!("{whole}{tail}").parse().unwrap_or_else(|_| panic!("{text:?} is a number"));
    Q::new(digits, BigInt::from(10).pow(u32::try_from(tail.len()).expect("few decimals")))
}

/// One of a unit in SI units.
pub fn size(code: &str) -> Q {
    let inch = q(254, 10_000);
    let foot = &inch * q(12, 1);
    let square = &foot * &foot;
    let us = q(231, 1) * &inch * &inch * &inch;
    let imperial = q(454_609, 100_000_000);
    let litre = q(1, 1_000);
    let ounce = q(28_349_523_125, 1_000_000_000_000);
    match code {
        "one" | "m2" | "kg" | "m" | "m_per_s" => Q::one(),
        "ml" | "ml_per_m2" => q(1, 1_000_000),
        "cl" => q(1, 100_000),
        "l" => litre,
        "floz_us" => us / q(128, 1),
        "gal_us" => us,
        "floz_imp" => imperial / q(160, 1),
        "gal_imp" => imperial,
        "oz" => ounce,
        "lb" => ounce * q(16, 1),
        "g" | "mm" => q(1, 1_000),
        "cm" | "percent" => q(1, 100),
        "in" => inch,
        "ft2" => square,
        "gal_us_per_min" => us / q(60, 1),
        "l_per_min" => litre / q(60, 1),
        "gal_imp_per_min" => imperial / q(60, 1),
        "gal_us_per_1000ft2" => us / (square * q(1_000, 1)),
        "gal_imp_per_1000ft2" => imperial / (square * q(1_000, 1)),
        "mph" => foot * q(5_280, 3_600),
        "km_per_h" => q(1_000, 3_600),
        other => panic!("no size of {other}"),
    }
}

/// What was typed, in SI units.
pub fn entry(entry: &Entry) -> Q {
    number(&entry.text) * size(&entry.unit)
}

/// The sentence with this key.
pub fn said<'a>(exercise: &'a Exercise, key: &str) -> Option<&'a Said> {
    exercise.asked.iter().find(|said| said.key == key)
}

/// A number in a sentence, in SI units.
pub fn fact(said: &Said, name: &str) -> Q {
    entry(typed(said, name))
}

/// A number in a sentence, as typed.
pub fn typed<'a>(said: &'a Said, name: &str) -> &'a Entry {
    match said.facts.iter().find(|(one, _)| *one == name) {
        Some((_, Fact::Entry(entry))) => entry,
        other => panic!("no number {name} in {}: {other:?}", said.key),
    }
}

/// A name in a sentence.
pub fn text<'a>(said: &'a Said, name: &str) -> &'a str {
    match said.facts.iter().find(|(one, _)| *one == name) {
        Some((_, Fact::Text(text) | Fact::Key(text))) => text,
        other => panic!("no text {name} in {}: {other:?}", said.key),
    }
}

/// Whether a computed value is the exact one, but for the rounding of `f64`.
pub fn is(computed: f64, exact: &Q) -> bool {
    let exact = exact.to_f64().expect("a finite fraction");
    (computed - exact).abs() <= exact.abs() * 1e-9
}

/// The least whole number that is not less.
pub fn ceiling(value: &Q) -> Q {
    value.ceil()
}

/// Above nothing.
pub fn positive(value: &Q) -> bool {
    *value > Q::zero()
}
