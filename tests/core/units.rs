//! The unit table against its definitions, and the laws of conversion.

use crate::assert_printed;
use brimline::source::Standing;
use brimline::units::{Dimension, Exact, Kind, System, UNITS, Unit, unit};
use proptest::prelude::*;
use std::collections::BTreeMap;
use std::process::Command;

#[track_caller]
fn row(code: &str) -> &'static Unit {
    unit(code).unwrap_or_else(|| panic!("{code} is missing"))
}

/// One of `code` is `numerator / denominator` SI units, exactly.
#[track_caller]
fn assert_exact(code: &str, numerator: u64, denominator: u64) {
    let row = row(code);
    assert_eq!(row.exact, Exact::new(numerator, denominator), "{code}");
    assert_ne!(row.source().cite, "", "{code} cites its definition");
    assert_eq!(row.source().standing, Standing::Published, "{code}");
}

/// NIST SP 811 (2008), Appendix B.6 and B.8: foot 0.3048 m, US gallon 231 in³ of 0.0254 m, and its
/// parts: 128 fluid ounces, 16 cups, 8 pints, 4 quarts, 256 tablespoons, 768 teaspoons (B.9 prints the
/// same, rounded); mile 5280 ft.
#[test]
fn us_definitions() {
    let cubic_inch = (254_u64 * 254 * 254, 1_000_000_000_000_u64);
    assert_exact("gal_us", 231 * cubic_inch.0, cubic_inch.1);
    for (code, parts) in
        [("floz_us", 128), ("cup_us", 16), ("pt_us", 8), ("qt_us", 4), ("tbsp_us", 256), ("tsp_us", 768)]
    {
        let gallon = row("gal_us").exact;
        assert_exact(code, gallon.numerator, gallon.denominator * parts);
    }
    assert_exact("in", 254, 10_000);
    assert_exact("ft", 3_048, 10_000);
    assert_exact("ft2", 3_048 * 3_048, 100_000_000);
    assert_exact("mph", 5_280 * 3_048, 3_600 * 10_000);
    assert_exact("ft_per_min", 3_048, 60 * 10_000);
}

/// UK Units of Measurement Regulations 1995: gallon 4.546 09 L, pint 1/8 and fluid ounce 1/160 of it.
#[test]
fn imperial_definitions() {
    for (code, parts) in [("gal_imp", 1), ("qt_imp", 4), ("pt_imp", 8), ("floz_imp", 160)] {
        assert_exact(code, 454_609, 100_000_000 * parts);
    }
}

/// BIPM SI Brochure, 9th edition, table 8: litre 10⁻³ m³, minute 60 s, hour 3600 s.
#[test]
fn metric_definitions() {
    assert_exact("l", 1, 1_000);
    assert_exact("ml", 1, 1_000_000);
    assert_exact("min", 60, 1);
    assert_exact("h", 3_600, 1);
    assert_exact("km_per_h", 1_000, 3_600);
    assert_exact("l_per_min", 1, 60_000);
    assert_exact("percent", 1, 100);
}

/// One of `code` in `other`, to all the digits that are written.
#[track_caller]
fn assert_one_is(code: &str, expected: &str, other: &str) {
    assert_printed(row(other).from_si(row(code).to_si(1.0)), expected);
}

/// Figures that follow from the definitions above, as handbooks print them.
#[test]
fn printed_conversions() {
    assert_one_is("gal_us", "3.785411784", "l");
    assert_one_is("floz_us", "29.5735295625", "ml");
    assert_one_is("cup_us", "236.5882365", "ml");
    assert_one_is("pt_us", "473.176473", "ml");
    assert_one_is("qt_us", "946.352946", "ml");
    assert_one_is("tbsp_us", "14.78676478125", "ml");
    assert_one_is("tsp_us", "4.92892159375", "ml");
    assert_one_is("gal_imp", "4.54609", "l");
    assert_one_is("floz_imp", "28.4130625", "ml");
    assert_one_is("gal_imp", "1.200949926", "gal_us");
    assert_one_is("floz_imp", "0.9607599404", "floz_us");
    assert_one_is("l", "33.8140227018", "floz_us");
    assert_one_is("m2", "10.7639104167", "ft2");
    assert_one_is("mph", "88.0", "ft_per_min");
    assert_one_is("m_per_s", "196.850393701", "ft_per_min");
    assert_one_is("gal_us_per_1000ft2", "40.7458333", "ml_per_m2");
    assert_one_is("ml_per_m2", "0.0245423867", "gal_us_per_1000ft2");
}

/// Fixed points by definition: NIST SP 811, Appendix B.8: K = °C + 273.15 = (°F + 459.67) / 1.8.
#[test]
fn temperatures_have_a_zero_of_their_own() {
    let kelvin = |value: f64, code: &str| unit(code).expect(code).to_si(value);
    for (celsius, fahrenheit, si) in
        [(0.0, 32.0, 273.15), (100.0, 212.0, 373.15), (-40.0, -40.0, 233.15), (20.0, 68.0, 293.15)]
    {
        assert!(
            (kelvin(celsius, "deg_c") - si).abs() < 1e-12 && (kelvin(fahrenheit, "deg_f") - si).abs() < 1e-12
        );
        let back = unit("deg_f").expect("a row").from_si(si);
        assert!((back - fahrenheit).abs() < 1e-10, "{back}");
    }
}

/// pint keeps its own definitions; with fractions for numbers it loses nothing on the way.
#[test]
#[ignore = "needs the Python reference libraries; `cargo run -- test` runs it"]
fn every_row_is_what_pint_says() {
    let python = std::env::var("BRIMLINE_PYTHON").expect("BRIMLINE_PYTHON names a Python with pint");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/reference/units.py");
    let run = Command::new(python).arg(script).output().expect("Python starts");
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
    let pint: BTreeMap<String, (String, String)> = serde_json::from_slice(&run.stdout).expect("JSON");
    for row in UNITS {
        let (numerator, denominator) =
            pint.get(row.code).unwrap_or_else(|| panic!("{} is missing", row.code));
        let exact = (row.exact.numerator.to_string(), row.exact.denominator.to_string());
        assert_eq!((&exact.0, &exact.1), (numerator, denominator), "{}", row.code);
    }
    assert_eq!(pint.len(), UNITS.len(), "a unit left the table and not the script");
}

#[test]
fn rows_are_distinct_and_reachable() {
    let mut codes: Vec<&str> = UNITS.iter().map(|row| row.code).collect();
    let mut aliases: Vec<&str> = UNITS.iter().flat_map(|row| row.aliases).copied().collect();
    for list in [&mut codes, &mut aliases] {
        let all = list.len();
        list.sort_unstable();
        list.dedup();
        assert_eq!(list.len(), all);
    }
    for kind in [Kind::Dose, Kind::Fill, Kind::Flow, Kind::Area, Kind::Width, Kind::Speed, Kind::Rate] {
        for &system in System::ALL {
            let row = kind.unit(system).expect("a quantity has a unit");
            assert_eq!(Some(row.dimension), kind.dimension(), "{kind:?} in {system:?}");
        }
    }
    let same = |a: &Unit, b: &Unit| a.dimension == b.dimension && a.exact == b.exact;
    for (index, row) in UNITS.iter().enumerate() {
        assert!(!UNITS[..index].iter().any(|other| same(row, other)), "{} stands twice", row.code);
    }
    assert!(UNITS.iter().all(|row| row.dimension != Dimension::VolumeFraction || row.code == "percent"));
}

/// Those whose zero is nothing; a temperature has laws of its own.
fn any_row() -> impl Strategy<Value = &'static Unit> {
    proptest::sample::select(UNITS.iter().filter(|row| row.zero.is_none()).collect::<Vec<_>>())
}

proptest! {
    #[test]
    fn there_and_back(row in any_row(), value in 1e-9..1e9_f64) {
        let back = row.from_si(row.to_si(value));
        prop_assert!((back / value - 1.0).abs() < 1e-15, "{} {}", row.code, back);
    }

    #[test]
    fn a_double_is_twice_as_much(row in any_row(), value in -1e9..1e9_f64) {
        let (twice, double) = (row.to_si(2.0 * value), 2.0 * row.to_si(value));
        prop_assert_eq!(twice.to_bits(), double.to_bits());
        prop_assert_eq!(row.to_si(0.0).to_bits(), 0.0_f64.to_bits());
    }
}
