//! A device that is set to its standards, and the passcode that sets it free.
//!
//! The passcode is kept as PBKDF2 makes it, never in clear. That keeps a careless hand out of the records; it
//! does not keep anybody out who can clear the browser’s own storage.

use super::texts;
use crate::document::document;
use base64ct::{Base64UrlUnpadded, Encoding};
use js_sys::{Array, Object, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{CryptoKey, Pbkdf2Params};

/// The name that it is kept under.
pub const KEY: &str = "brimline.lock";
/// Rounds of PBKDF2 with HMAC-SHA-256: OWASP, Password Storage Cheat Sheet, from memory.
const ROUNDS: u32 = 600_000;
/// Of the salt, and of what is made.
const BYTES: u32 = 32;

document! {
    /// What is kept of a passcode.
    Lock {
        /// Random bytes, base64url.
        salt: String,
        /// How many rounds were made.
        rounds: u32,
        /// What they made, base64url.
        made: String,
    }
}

/// The browser could not do it, or keeps nothing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unable;

impl From<JsValue> for Unable {
    fn from(_: JsValue) -> Self {
        Self
    }
}

/// The lock of this device, where it is set.
pub fn held() -> Option<Lock> {
    let text = texts::get(KEY)?;
    // One that does not read holds all the same: no passcode opens it, and clearing the storage does.
    Some(serde_json::from_str(&text).unwrap_or_default())
}

/// Sets the device to its standards.
///
/// # Errors
/// Where the browser has no cryptography or keeps nothing.
pub async fn set(passcode: &str) -> Result<(), Unable> {
    let mut salt = [0_u8; BYTES as usize];
    gloo::utils::window().crypto()?.get_random_values_with_u8_array(&mut salt)?;
    let made = derived(passcode, &salt, ROUNDS).await?;
    let lock = Lock {
        salt: Base64UrlUnpadded::encode_string(&salt),
        rounds: ROUNDS,
        made: Base64UrlUnpadded::encode_string(&made),
    };
    let text = serde_json::to_string(&lock).map_err(|_| Unable)?;
    texts::put(KEY, &text).then_some(()).ok_or(Unable)
}

/// Sets the device free where the passcode is right; tells whether it was.
///
/// # Errors
/// Where the browser has no cryptography.
pub async fn open(lock: &Lock, passcode: &str) -> Result<bool, Unable> {
    let salt = Base64UrlUnpadded::decode_vec(&lock.salt).map_err(|_| Unable)?;
    let right =
        Base64UrlUnpadded::encode_string(&derived(passcode, &salt, lock.rounds.max(1)).await?) == lock.made;
    if right && !texts::remove(KEY) {
        return Err(Unable);
    }
    Ok(right)
}

async fn derived(passcode: &str, salt: &[u8], rounds: u32) -> Result<Vec<u8>, Unable> {
    let subtle = gloo::utils::window().crypto()?.subtle();
    let usages = Array::of1(&"deriveBits".into());
    let raw: Object = Uint8Array::from(passcode.as_bytes()).into();
    let key = JsFuture::from(subtle.import_key_with_str("raw", &raw, "PBKDF2", false, &usages)?).await?;
    let salt: Object = Uint8Array::from(salt).into();
    let how = Pbkdf2Params::new("PBKDF2", &"SHA-256".into(), rounds, &salt);
    let bits = subtle.derive_bits_with_object(&how, key.unchecked_ref::<CryptoKey>(), 8 * BYTES)?;
    Ok(Uint8Array::new(&JsFuture::from(bits).await?).to_vec())
}
