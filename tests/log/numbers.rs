//! Numbers that are the same on every device, and one text for each.

use brimline::site::log::{Si, When};
use brimline::site::passing::canonical;
use proptest::prelude::*;
use serde_json::{Value, json};

/// RFC 8785, appendix B: bits and the text of the number, from memory, unverified; `tests/reference/log.py` holds
/// whole records against another implementation.
#[test]
fn numbers_are_written_as_rfc_8785_does() {
    let table: [(u64, &str); 17] = [
        (0x0000_0000_0000_0000, "0"),
        (0x8000_0000_0000_0000, "0"),
        (0x0000_0000_0000_0001, "5e-324"),
        (0x7fef_ffff_ffff_ffff, "1.7976931348623157e+308"),
        (0xffef_ffff_ffff_ffff, "-1.7976931348623157e+308"),
        (0x4340_0000_0000_0000, "9007199254740992"),
        (0x44b5_2d02_c7e1_4af5, "9.999999999999997e+22"),
        (0x44b5_2d02_c7e1_4af6, "1e+23"),
        (0x444b_1ae4_d6e2_ef4e, "999999999999999700000"),
        (0x444b_1ae4_d6e2_ef50, "1e+21"),
        (0x3eb0_c6f7_a0b5_ed8c, "9.999999999999997e-7"),
        (0x3eb0_c6f7_a0b5_ed8d, "0.000001"),
        (0x41b3_de43_5555_5555, "333333333.3333333"),
        (0xbecb_f647_612f_3696, "-0.0000033333333333333333"),
        (0x4314_3ff3_c1cb_0959, "1424953923781206.2"),
        (0x3ff0_0000_0000_0000, "1"),
        (0x3fe0_0000_0000_0000, "0.5"),
    ];
    for (bits, text) in table {
        assert_eq!(canonical(&json!(f64::from_bits(bits))), text);
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 4_096, failure_persistence: None, ..ProptestConfig::default() })]

    /// The text reads as the same number, by the standard library, which rounds right.
    #[test]
    fn a_number_comes_back(value in any::<f64>().prop_filter("finite", |value| value.is_finite())) {
        let read: f64 = canonical(&json!(value)).parse().expect("a number");
        prop_assert!(read.total_cmp(&value).is_eq() || value == 0.0 && read == 0.0, "{value} {read}");
    }

    /// Amounts come back through JSON bit for bit, twice rounded is once rounded, and twelve digits stay.
    #[test]
    fn an_amount_comes_back(value in 0.0..1.0_f64, power in -24..15_i32) {
        let given = value * 10_f64.powi(power);
        let Some(amount) = Si::new(given) else { return Ok(()) };
        let si = amount.value().expect("known");
        prop_assert_eq!(Si::new(si), Some(amount));
        prop_assert!((si - given).abs() <= 5.1e-12 * given + 0.51e-20, "{} {}", given, si);
        let text = canonical(&json!(si));
        let back: Value = serde_json::from_str(&text).expect("JSON");
        prop_assert_eq!(serde_json::from_value::<Si>(back).expect("an amount"), amount);
        // The standard library reads it as the same value, and so does any other reader that rounds right.
        prop_assert_eq!(text.parse::<f64>().expect("a number").to_bits(), si.to_bits());
    }
}

#[test]
fn what_is_no_amount_is_refused() {
    for value in [f64::NAN, f64::INFINITY, -1e-9, 1e15] {
        assert_eq!(Si::new(value), None, "{value}");
    }
    for text in ["-1", "1e15", "\"1\"", "true", "[]"] {
        assert!(serde_json::from_str::<Si>(text).is_err(), "{text}");
    }
    assert_eq!(serde_json::from_str::<Si>("null").expect("unknown"), Si::UNKNOWN);
    assert_eq!(Si::new(-0.0).expect("zero").value().map(f64::to_bits), Some(0));
}

/// ISO 8601-1:2019, 5.4.2.1: an extended date and time of day with its shift from UTC.
#[test]
fn times_are_read_strictly() {
    let instant = |text: &str| When::read(text).map(When::instant);
    assert_eq!(instant("1970-01-01T00:00:00Z"), Some(0));
    assert_eq!(instant("1969-12-31T19:00-05:00"), Some(0));
    // POSIX.1-2017, 4.16: 10⁹ seconds since the Epoch.
    assert_eq!(instant("2001-09-09T01:46:40Z"), Some(1_000_000_000));
    assert_eq!(instant("2001-09-09T07:31:40+05:45"), Some(1_000_000_000));
    let not = [
        "",
        "2026-03-07",
        "2026-03-07T18:30",
        "2026-03-07T18:30:00",
        "2026-3-7T18:30:00Z",
        "2026-02-29T18:30:00Z",
        "2026-03-07 18:30:00Z",
        "2026-03-07T24:00:00Z",
        "2026-03-07T18:60:00Z",
        "2026-03-07T18:30:60Z",
        "2026-03-07T18:30:00.5Z",
        "2026-03-07T18:30:00z",
        "2026-03-07T18:30:00-00:00",
        "2026-03-07T18:30:00+15:00",
        "2026-03-07T18:30:00+5:00",
        "2026-03-07T18:30:00+0500",
        "2026-03-07T1830Z",
        "2026-03-07T18:30:00Z ",
        " 2026-03-07T18:30Z",
        "2026-03-07T18:3½Z",
        "2026-03-07T18:30:+1Z",
        "2026-03-07T18½30:00Z",
        "½026-03-07T18:30Z",
    ];
    for text in not {
        assert_eq!(When::read(text), None, "{text}");
    }
}
