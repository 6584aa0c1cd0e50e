//! Whose site a file holds.

use super::file::{Signed, checked, file};
use super::{Opened, PublicKey, Refusal, SCHEMA, Secret, canonical};
use crate::site::Site;
use serde_json::Value;

/// What stands before everything that is signed as a site, so that no other statement of the same key can pass
/// as one, nor this as another.
const PURPOSE: &[u8] = b"brimline site 1\0";

/// What the signature stands under: the purpose, the schema as four bytes, and the site's canonical text.
fn message(schema: u32, site: &Value) -> Vec<u8> {
    [PURPOSE, &schema.to_be_bytes(), canonical(site).as_bytes()].concat()
}

/// The site as the text of a file, signed.
///
/// # Errors
/// As [`super::write()`].
///
/// ```
/// use brimline::site::{demo, passing::{Secret, Standing, read, sign, verify}};
/// let secret = Secret::new([7; 32]);
/// let file = sign(&demo(), &secret).unwrap();
/// assert_eq!(verify(&read(&file).unwrap()), Standing::Signed { by: secret.public() });
/// let changed = read(file.replace("Ride-on", "Ride-in")).unwrap();
/// assert_eq!(verify(&changed), Standing::Altered);
/// ```
pub fn sign(site: &Site, secret: &Secret) -> Result<String, Refusal> {
    let value = checked(site)?;
    let signature = secret.signature(&message(SCHEMA, &value));
    file(&value, Some(&Signed { by: secret.public(), signature }))
}

/// How a file stands to its signature.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// Signed with the secret half of this key, and not changed since.
    Signed {
        /// The key.
        by: PublicKey,
    },
    /// Nobody signed it.
    Unsigned,
    /// It is not what was signed with the key that it names.
    Altered,
}

impl Standing {
    /// The stable code.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Signed { .. } => "passing-signed",
            Self::Unsigned => "passing-unsigned",
            Self::Altered => "passing-altered",
        }
    }
}

/// Whether the signature of a file holds, and whose it is. That the key is the right one is for [`admit`].
pub fn verify(opened: &Opened) -> Standing {
    match &opened.signed {
        None => Standing::Unsigned,
        Some(Signed { by, signature }) if by.signed(&message(opened.schema, &opened.raw), signature) => {
            Standing::Signed { by: *by }
        }
        Some(_) => Standing::Altered,
    }
}

/// The key that a device believes, and no other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pin(pub PublicKey);

/// Why a site or a handover is not admitted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// The device believes one key only, and nobody signed this.
    Unsigned,
    /// It is not what was signed.
    Altered,
    /// It was signed with another key than the device believes.
    OtherKey {
        /// The key that signed it.
        by: PublicKey,
        /// The key that the device believes.
        pinned: PublicKey,
    },
}

impl Why {
    /// The stable code.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Unsigned => "passing-not-admitted-unsigned",
            Self::Altered => "passing-not-admitted-altered",
            Self::OtherKey { .. } => "passing-not-admitted-other-key",
        }
    }
}

/// The site of a file, if a device that is pinned so may take it. One that is not pinned takes what nobody
/// signed and what anybody signed, but nothing that was altered.
///
/// # Errors
/// [`Why`] not.
///
/// ```
/// use brimline::site::{demo, passing::{Pin, Secret, Why, admit, read, sign, write}};
/// let ours = Secret::new([7; 32]);
/// let pin = Pin(ours.public());
/// assert_eq!(admit(read(sign(&demo(), &ours).unwrap()).unwrap(), Some(&pin)), Ok(demo()));
/// assert_eq!(admit(read(write(&demo()).unwrap()).unwrap(), Some(&pin)), Err(Why::Unsigned));
/// ```
pub fn admit(opened: Opened, pin: Option<&Pin>) -> Result<Site, Why> {
    match (verify(&opened), pin) {
        (Standing::Altered, _) => Err(Why::Altered),
        (Standing::Unsigned, Some(_)) => Err(Why::Unsigned),
        (Standing::Signed { by }, Some(Pin(pinned))) if by != *pinned => {
            Err(Why::OtherKey { by, pinned: *pinned })
        }
        (Standing::Signed { .. } | Standing::Unsigned, _) => Ok(opened.site),
    }
}
