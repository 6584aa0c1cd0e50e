//! A carried fill as letters that an address may hold.

use crate::form::site::carried::Carried;
use serde_json::Value;

const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/// Its JSON without what is blank, in base64url without padding (RFC 4648, section 5).
pub fn payload(carried: &Carried) -> String {
    let text = serde_json::to_string(carried).unwrap_or_default();
    let mut whole: Value = serde_json::from_str(&text).unwrap_or_default();
    strip(&mut whole);
    whole.to_string().as_bytes().chunks(3).flat_map(letters).collect()
}

fn letters(bytes: &[u8]) -> impl Iterator<Item = char> {
    let whole = bytes.iter().chain([&0; 2]).take(3).fold(0, |sum, byte| sum << 8 | usize::from(*byte));
    (0..=bytes.len()).map(move |index| char::from(LETTERS[whole >> (18 - 6 * index) & 63]))
}

/// Drops what reads the same when it is missing: empty texts and lists, and entries without a text.
fn strip(value: &mut Value) {
    match value {
        Value::Object(map) => {
            for (_, inner) in map.iter_mut() {
                strip(inner);
            }
            map.retain(|_, inner| !blank(inner));
        }
        Value::Array(all) => all.iter_mut().for_each(strip),
        _ => {}
    }
}

fn blank(value: &Value) -> bool {
    match value {
        Value::String(text) => text.is_empty(),
        Value::Array(all) => all.is_empty(),
        // What is left of an entry that nobody filled in is its unit alone.
        Value::Object(map) => map.keys().all(|key| key == "unit"),
        _ => false,
    }
}
