//! CRC-32, as ITU-T V.42, section 8.1.1.6.2 and RFC 1952 (gzip) have it.

/// The checksum of bytes. A link is a few hundred of them: a table would be larger than what it saves.
pub(super) fn crc32(bytes: &[u8]) -> u32 {
    let shift = |crc: u32, _| (crc >> 1) ^ (0xedb8_8320 & 0_u32.wrapping_sub(crc & 1));
    !bytes.iter().fold(!0, |crc, byte| (0..8).fold(crc ^ u32::from(*byte), shift))
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::crc32;

    /// The check value of CRC-32/ISO-HDLC: Koopman and others, the catalogue of CRCs, from memory; the library
    /// `crc32fast` agrees.
    #[test]
    fn it_is_the_one_of_gzip() {
        assert_eq!(crc32(b"123456789"), 0xcbf4_3926);
        for text in ["", "a", "Alder County library", "\u{1f9fc}"] {
            assert_eq!(crc32(text.as_bytes()), crc32fast::hash(text.as_bytes()));
        }
    }
}
