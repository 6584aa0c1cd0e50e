//! SHA-256, written as hexadecimal and as the web's integrity text.

use base64ct::{Base64, Encoding};
use sha2::{Digest, Sha256};
use std::fmt::Write;

/// A running digest over named pieces; each piece's length is part of it, so that no two
/// different lists of pieces read the same.
#[derive(Default)]
pub struct Pieces(Sha256);

impl Pieces {
    /// Adds a named piece.
    pub fn add(&mut self, name: &str, bytes: &[u8]) {
        for part in [name.as_bytes(), bytes] {
            self.0.update((part.len() as u64).to_le_bytes());
            self.0.update(part);
        }
    }

    /// The digest in hexadecimal.
    pub fn hex(self) -> String {
        written(&self.0.finalize())
    }
}

/// The digest of some bytes in hexadecimal, as `sha256sum` tells it.
pub fn hex(bytes: &[u8]) -> String {
    written(&Sha256::digest(bytes))
}

fn written(digest: &[u8]) -> String {
    digest.iter().fold(String::new(), |mut text, byte| {
        // Writing to a String cannot fail.
        let _ = write!(text, "{byte:02x}");
        text
    })
}

/// The integrity text of a file, as `integrity="…"` and `fetch` take it.
pub fn integrity(bytes: &[u8]) -> String {
    format!("sha256-{}", Base64::encode_string(&Sha256::digest(bytes)))
}

#[cfg(test)]
mod tests {
    use super::{Pieces, hex, integrity};

    /// W3C Subresource Integrity, the digest of `alert('Hello, world.');`, here in SHA-256.
    #[test]
    fn integrity_names_its_algorithm() {
        assert_eq!(
            integrity(b"alert('Hello, world.');"),
            "sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng="
        );
    }

    /// FIPS 180-4's example “abc”, as NIST's CAVP publishes it.
    #[test]
    fn hexadecimal_as_published() {
        assert_eq!(hex(b"abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    #[test]
    fn pieces_are_told_apart_by_where_they_end() {
        let digest = |pieces: &[(&str, &str)]| {
            let mut all = Pieces::default();
            for (name, text) in pieces {
                all.add(name, text.as_bytes());
            }
            all.hex()
        };
        assert_ne!(digest(&[("ab", "c")]), digest(&[("a", "bc")]));
        assert_ne!(digest(&[("a", "b"), ("c", "d")]), digest(&[("a", "bcd")]));
    }
}
