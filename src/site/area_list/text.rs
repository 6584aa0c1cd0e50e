//! The bytes of a file as text.

/// What stands for the bytes 0x80 to 0x9F in windows-1252, in which spreadsheets save where they do not save
/// UTF-8. Source: WHATWG Encoding Standard, index windows-1252; the rest are their own code points.
const WINDOWS_1252: [char; 32] = [
    '€', '\u{81}', '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', '\u{8d}', 'Ž', '\u{8f}', '\u{90}',
    '‘', '’', '“', '”', '•', '–', '—', '˜', '™', 'š', '›', 'œ', '\u{9d}', 'ž', 'Ÿ',
];

/// UTF-8 and UTF-16 by their marks or by their shape, otherwise windows-1252, which fits any bytes.
pub(super) fn decoded(bytes: &[u8]) -> String {
    let sixteen = |rest: &[u8], of: fn([u8; 2]) -> u16| {
        let units: Vec<u16> = rest.as_chunks().0.iter().map(|pair| of(*pair)).collect();
        String::from_utf16_lossy(&units)
    };
    match bytes {
        [0xff, 0xfe, rest @ ..] => sixteen(rest, u16::from_le_bytes),
        [0xfe, 0xff, rest @ ..] => sixteen(rest, u16::from_be_bytes),
        [0xef, 0xbb, 0xbf, rest @ ..] => String::from_utf8_lossy(rest).into_owned(),
        _ => String::from_utf8(bytes.to_vec())
            .unwrap_or_else(|_| bytes.iter().map(|byte| windows(*byte)).collect()),
    }
}

fn windows(byte: u8) -> char {
    let index = usize::from(byte).checked_sub(0x80);
    index.and_then(|index| WINDOWS_1252.get(index)).copied().unwrap_or(char::from(byte))
}
