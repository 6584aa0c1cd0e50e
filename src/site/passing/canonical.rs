//! One text for one value, for signatures.

use serde_json::Value;

/// The bytes that a signature stands under: JSON without spaces, the fields of every object in the order of
/// their names' UTF-16 units, strings escaped no further than they must be, in UTF-8.
///
/// That is RFC 8785 (JSON Canonicalization Scheme) but for numbers with a fraction or an exponent, which it
/// writes as ECMAScript does and this as `serde_json` does. A site holds texts and no number.
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
        // serde_json escapes as RFC 8785, section 3.2.2.2 asks: two-letter escapes, else \u00xx in lower case.
        leaf => out.push_str(&leaf.to_string()),
    }
}
