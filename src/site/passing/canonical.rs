//! One text for one value, for signatures.

use serde_json::{Number, Value};

/// The bytes that a signature stands under: JSON without spaces, the fields of every object in the order of
/// their names' UTF-16 units, strings escaped no further than they must be, in UTF-8.
///
/// That is RFC 8785 (JSON Canonicalization Scheme).
///
/// ```
/// use brimline::site::passing::canonical;
/// let value = serde_json::from_str(" { \"b\": [true, \"\\u00e9\"], \"a\": 1 } ").unwrap();
/// assert_eq!(canonical(&value), r#"{"a":1,"b":[true,"é"]}"#);
/// ```
pub fn canonical(value: &Value) -> String {
    let mut text = String::new();
    write(value, &mut text);
    text
}

fn write(value: &Value, out: &mut String) {
    let part = |out: &mut String, index: usize| {
        if index > 0 {
            out.push(',');
        }
    };
    match value {
        Value::Array(list) => {
            out.push('[');
            for (index, value) in list.iter().enumerate() {
                part(out, index);
                write(value, out);
            }
            out.push(']');
        }
        Value::Object(object) => {
            let mut fields: Vec<_> = object.iter().collect();
            fields.sort_by(|(a, _), (b, _)| a.encode_utf16().cmp(b.encode_utf16()));
            out.push('{');
            for (index, (key, value)) in fields.into_iter().enumerate() {
                part(out, index);
                out.push_str(&Value::from(key.as_str()).to_string());
                out.push(':');
                write(value, out);
            }
            out.push('}');
        }
        Value::Number(value) if value.is_f64() => out.push_str(&number(value)),
        // serde_json escapes as RFC 8785, section 3.2.2.2 asks: two-letter escapes, else \u00xx in lower case.
        leaf => out.push_str(&leaf.to_string()),
    }
}

/// A number as ECMAScript writes it (ECMA-262, `Number::toString`; RFC 8785, section 3.2.2.3): the shortest digits
/// that come back, without an exponent from 10⁻⁶ to below 10²¹.
fn number(value: &Number) -> String {
    // serde_json finds the digits as ECMAScript does, of two that are equally near the even one, and lays them out
    // in its own way.
    let text = value.to_string();
    let (sign, text) = text.strip_prefix('-').map_or(("", text.as_str()), |text| ("-", text));
    let (mantissa, exponent) = text.split_once('e').unwrap_or((text, "0"));
    let (whole, tail) = mantissa.split_once('.').unwrap_or((mantissa, ""));
    let all = format!("{whole}{tail}");
    let short = all.trim_start_matches('0');
    let digits = short.trim_end_matches('0');
    if digits.is_empty() {
        return "0".to_owned();
    }
    // The value is 0.digits × 10^point; a text has no length that an i32 does not hold.
    let count = |text: &str| i32::try_from(text.len()).unwrap_or_default();
    let point = count(whole) + exponent.parse::<i32>().unwrap_or_default() - (count(&all) - count(short));
    let (before, zeros) =
        (usize::try_from(point).unwrap_or_default(), usize::try_from(-point).unwrap_or_default());
    match point {
        1..=21 if digits.len() <= before => format!("{sign}{digits}{}", "0".repeat(before - digits.len())),
        1..=21 => format!("{sign}{}.{}", &digits[..before], &digits[before..]),
        -5..=0 => format!("{sign}0.{}{digits}", "0".repeat(zeros)),
        _ => {
            let (first, rest) = digits.split_at(1);
            let mark = if rest.is_empty() { "" } else { "." };
            let direction = if point > 0 { '+' } else { '-' };
            format!("{sign}{first}{mark}{rest}e{direction}{}", (point - 1).abs())
        }
    }
}
