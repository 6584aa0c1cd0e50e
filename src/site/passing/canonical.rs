//! One text for one value, for signatures.

use serde_json::Value;

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
        Value::Number(value) if value.is_f64() => out.push_str(&number(value.as_f64().unwrap_or_default())),
        // serde_json escapes as RFC 8785, section 3.2.2.2 asks: two-letter escapes, else \u00xx in lower case.
        leaf => out.push_str(&leaf.to_string()),
    }
}

/// A number as ECMAScript writes it (ECMA-262, `Number::toString`; RFC 8785, section 3.2.2.3): the shortest digits
/// that come back, without an exponent from 10⁻⁶ to below 10²¹.
fn number(value: f64) -> String {
    let shortest = format!("{:e}", value.abs());
    let (mantissa, exponent) = shortest.split_once('e').unwrap_or((&shortest, "0"));
    let digits = mantissa.replace('.', "");
    let exponent: i32 = exponent.parse().unwrap_or_default();
    // Zeros that stand before the digits or behind them.
    let zeros = |count: i32| "0".repeat(usize::try_from(count).unwrap_or_default());
    let whole = usize::try_from(exponent + 1).unwrap_or_default();
    let body = match exponent {
        _ if value == 0.0 => return "0".to_owned(),
        -6..0 => format!("0.{}{digits}", zeros(-exponent - 1)),
        0..=20 if digits.len() <= whole => digits.clone() + &"0".repeat(whole - digits.len()),
        0..=20 => format!("{}.{}", &digits[..whole], &digits[whole..]),
        _ => format!("{mantissa}e{}{}", if exponent < 0 { '-' } else { '+' }, exponent.abs()),
    };
    if value < 0.0 { format!("-{body}") } else { body }
}
