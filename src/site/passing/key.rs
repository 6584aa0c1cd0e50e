//! Keys: who signs, and whom a device believes.

use base64ct::{Base64UrlUnpadded, Encoding};
use ed25519_dalek::{Signature, Signer, SigningKey, VerifyingKey};
use sha2::{Digest, Sha256};
use std::fmt::{self, Write};

/// The length of a signature, bytes (RFC 8032, section 5.1.6).
pub(super) const SIGNATURE: usize = 64;

/// The secret half of a key: who holds it, signs. It is wiped from memory when it is dropped, and `Debug`
/// shows the fingerprint of the other half only.
#[derive(Clone)]
pub struct Secret(SigningKey);

impl Secret {
    /// A new key of 32 bytes from the system's source of randomness, which is the caller's to ask.
    ///
    /// ```
    /// use brimline::site::passing::Secret;
    /// let secret = Secret::new([7; 32]);
    /// assert_eq!(format!("{secret:?}"), format!("Secret({})", secret.public().fingerprint()));
    /// ```
    pub fn new(random: [u8; 32]) -> Self {
        Self(SigningKey::from_bytes(&random))
    }

    /// The half that anyone may see.
    pub fn public(&self) -> PublicKey {
        PublicKey(self.0.verifying_key().to_bytes())
    }

    /// The 32 bytes that it was made of.
    pub(super) fn bytes(&self) -> &[u8; 32] {
        self.0.as_bytes()
    }

    /// The Ed25519 signature (RFC 8032, section 5.1.6) of bytes as they stand. [`super::sign()`] and
    /// [`super::Handover`] put before them what they are for, so that one cannot pass as the other.
    pub fn signature(&self, message: &[u8]) -> [u8; SIGNATURE] {
        self.0.sign(message).to_bytes()
    }
}

impl fmt::Debug for Secret {
    fn fmt(&self, out: &mut fmt::Formatter) -> fmt::Result {
        write!(out, "Secret({})", self.public().fingerprint())
    }
}

/// The public half of a key: tells whether a signature is that of its secret half.
#[derive(Clone, Copy, PartialEq, Eq)]
pub struct PublicKey([u8; 32]);

impl PublicKey {
    /// The key of 32 bytes; none where they are no point of the curve, or one of the few points under which a
    /// signature says nothing.
    pub fn of(bytes: &[u8; 32]) -> Option<Self> {
        VerifyingKey::from_bytes(bytes).ok().filter(|key| !key.is_weak()).map(|_| Self(*bytes))
    }

    /// The 32 bytes of the key.
    pub fn bytes(&self) -> [u8; 32] {
        self.0
    }

    /// The key as files hold it: 43 characters, base64url (RFC 4648, section 5) without padding.
    ///
    /// ```
    /// use brimline::site::passing::{PublicKey, Secret};
    /// let key = Secret::new([7; 32]).public();
    /// assert_eq!(PublicKey::read(&key.text()), Some(key));
    /// assert_eq!(PublicKey::read("nonsense"), None);
    /// ```
    pub fn text(&self) -> String {
        Base64UrlUnpadded::encode_string(&self.bytes())
    }

    /// The key that a file holds.
    pub fn read(text: &str) -> Option<Self> {
        Self::of(&decode(text)?)
    }

    /// Whether a signature is that of this key's secret half under these bytes: RFC 8032, section 5.1.7,
    /// without the cofactor and without the points and scalars that would let one signature be written in
    /// two ways.
    pub fn signed(&self, message: &[u8], signature: &[u8; SIGNATURE]) -> bool {
        VerifyingKey::from_bytes(&self.0)
            .is_ok_and(|key| key.verify_strict(message, &Signature::from_bytes(signature)).is_ok())
    }

    /// What two people compare aloud: the first 20 hexadecimal digits of the key's SHA-256, in groups of four.
    ///
    /// Digits and six letters are the same in every language and font. 20 of them are 80 bits: to find another
    /// key with the same ones takes about 2⁸⁰ tries, more than anyone can pay for, and five groups of four are
    /// still read out in a breath. (Two keys of one's own with the same fingerprint take 2⁴⁰, and gain nothing.)
    ///
    /// ```
    /// use brimline::site::passing::Secret;
    /// let fingerprint = Secret::new([7; 32]).public().fingerprint();
    /// assert_eq!((fingerprint.len(), fingerprint.split(' ').count()), (24, 5));
    /// ```
    pub fn fingerprint(&self) -> String {
        let digest = Sha256::digest(self.bytes());
        grouped(&digest[..10])
    }
}

impl fmt::Debug for PublicKey {
    fn fmt(&self, out: &mut fmt::Formatter) -> fmt::Result {
        write!(out, "PublicKey({})", self.fingerprint())
    }
}

/// Bytes in hexadecimal, two a group.
pub(super) fn grouped(bytes: &[u8]) -> String {
    let mut text = String::new();
    for (index, byte) in bytes.iter().enumerate() {
        if index > 0 && index % 2 == 0 {
            text.push(' ');
        }
        let _ = write!(text, "{byte:02x}");
    }
    text
}

/// Base64url of so many bytes, as files hold keys and signatures.
pub(super) fn encode(bytes: &[u8]) -> String {
    Base64UrlUnpadded::encode_string(bytes)
}

/// The bytes that a file holds; none where they are more or fewer, or written in another way.
pub(super) fn decode<const N: usize>(text: &str) -> Option<[u8; N]> {
    Base64UrlUnpadded::decode_vec(text).ok()?.try_into().ok()
}
