//! One small thing in the fragment of an address: a fill, a standard, whatever has a [`Shape`].
//!
//! A browser does not send the fragment to any server. It is base64url without padding of
//!
//! | bytes | what |
//! |---|---|
//! | 1 | [`VERSION`] |
//! | 2 | how many bytes follow the header: tells a link that was cut off from one that was changed |
//! | 4 | CRC-32 of all the rest |
//! | … | the JSON without what is blank, in DEFLATE (RFC 1951) |
//!
//! CRC-32 and not a part of a SHA-256: it is sure to find any change within 32 neighbouring bits, and so every
//! character that was mistyped and every two neighbours that were swapped, where a hash of that length misses
//! one in 2³². Both hold against slips alone. Whoever wants to can make a link that says anything; only a
//! signed file says who made it.

use super::crc::crc32;
use super::{Refusal, blanks, check, strict};
use crate::shape::{Shape, Shaped};
use base64ct::{Base64UrlUnpadded, Encoding};
use miniz_oxide::deflate::compress_to_vec;
use miniz_oxide::inflate::{TINFLStatus, decompress_to_vec_with_limit};
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::Value;

/// The version of the link as it is made now. A blank value is not sent: whoever changes one in a document
/// raises this, or old links would say something new.
pub const VERSION: u8 = 1;

/// The most characters of a link. A QR code has 2,953 at most (ISO/IEC 18004, version 40-L), a message a few
/// thousand.
pub const MOST_CHARACTERS: usize = 16_000;

/// The most bytes that a link may unfold to, whatever it was folded from.
pub const MOST_INFLATED: usize = 200_000;

/// What the places of a link's content begin with.
const ROOT: &str = "link";

/// How many bytes stand before the deflated ones.
const HEADER: usize = 7;

/// How many characters hold all of the header.
const HEADER_CHARACTERS: usize = 12;

/// Why a link does not open, or cannot be made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LinkMistake {
    /// Its end is missing.
    CutOff,
    /// A character that no link has.
    Foreign {
        /// Which one of the link's characters, from 1.
        at: usize,
        /// The character.
        character: char,
    },
    /// It is not as it was made.
    Altered,
    /// It was made by a later version.
    Later(u8),
    /// More than a link may hold; a file has room.
    TooLarge,
    /// It opens, and what it holds is refused.
    Content(Refusal),
}

impl LinkMistake {
    /// The stable code; what is wrong with the content has a code of its own.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::CutOff => "link-cut-off",
            Self::Foreign { .. } => "link-foreign",
            Self::Altered => "link-altered",
            Self::Later(_) => "link-later",
            Self::TooLarge => "link-too-large",
            Self::Content(refusal) => refusal.code(),
        }
    }
}

/// How many characters so many bytes take in base64 without padding.
const fn characters(bytes: usize) -> usize {
    (bytes * 4).div_ceil(3)
}

/// Makes a link's fragment, without the `#`.
///
/// # Errors
/// [`LinkMistake::TooLarge`], and [`LinkMistake::Content`] for what [`unpack`] would refuse.
///
/// ```
/// use brimline::site::{Entry, Machine, passing::link::{pack, unpack}};
/// let machine = Machine { id: "n1".into(), tank: Entry::new("10", "gal_us"), ..Machine::default() };
/// let link = pack(&machine).unwrap();
/// assert!(link.len() < 80, "{} characters", link.len());
/// assert_eq!(unpack(&link), Ok(machine));
/// ```
pub fn pack<T: Serialize + Shaped>(content: &T) -> Result<String, LinkMistake> {
    let json =
        serde_json::to_string(content).and_then(|text| serde_json::from_str(&text)).unwrap_or_default();
    fold(&json, T::SHAPE)
}

/// Reads a link's fragment, without the `#`. Spaces before and after it are passed over.
///
/// # Errors
/// [`LinkMistake`]. A field that this version does not know is refused: to leave something of a recipe out
/// unseen would make it another one.
///
/// ```
/// use brimline::site::{Machine, passing::link::{LinkMistake, pack, unpack}};
/// let link = pack(&Machine::default()).unwrap();
/// assert_eq!(unpack::<Machine>(&link[..link.len() - 1]), Err(LinkMistake::CutOff));
/// assert_eq!(unpack::<Machine>(&format!("{link})")), Err(LinkMistake::Foreign { at: link.len() + 1, character: ')' }));
/// ```
pub fn unpack<T: DeserializeOwned + Shaped>(link: &str) -> Result<T, LinkMistake> {
    let json = unfold(link.trim(), T::SHAPE)?;
    serde_json::from_str(&json.to_string()).map_err(|error| {
        LinkMistake::Content(Refusal::at(ROOT, super::Reason::Unreadable(error.to_string())))
    })
}

fn fold(json: &Value, shape: &Shape) -> Result<String, LinkMistake> {
    check::check(json, shape, ROOT, check::Unknown::Refused).map_err(LinkMistake::Content)?;
    let text = blanks::strip(json, shape).to_string();
    // The highest level: a link is made once and read off a screen.
    let deflated = compress_to_vec(text.as_bytes(), 10);
    let length = u16::try_from(deflated.len()).map_err(|_| LinkMistake::TooLarge)?.to_be_bytes();
    if text.len() > MOST_INFLATED || characters(HEADER + deflated.len()) > MOST_CHARACTERS {
        return Err(LinkMistake::TooLarge);
    }
    let sum = checksum(VERSION, length, &deflated).to_be_bytes();
    Ok(Base64UrlUnpadded::encode_string(&[&[VERSION], &length[..], &sum, &deflated].concat()))
}

fn checksum(version: u8, length: [u8; 2], deflated: &[u8]) -> u32 {
    crc32(&[&[version], &length[..], deflated].concat())
}

fn unfold(link: &str, shape: &Shape) -> Result<Value, LinkMistake> {
    if link.len() > MOST_CHARACTERS {
        return Err(LinkMistake::TooLarge);
    }
    let is_own = |one: char| one.is_ascii_alphanumeric() || matches!(one, '-' | '_');
    if let Some((at, character)) = link.chars().enumerate().find(|(_, one)| !is_own(*one)) {
        return Err(LinkMistake::Foreign { at: at + 1, character });
    }
    let bytes = |text: &str| Base64UrlUnpadded::decode_vec(text).map_err(|_| LinkMistake::Altered);
    let head = bytes(link.get(..HEADER_CHARACTERS).ok_or(LinkMistake::CutOff)?)?;
    let [version, length @ ..] = *head.first_chunk::<3>().ok_or(LinkMistake::CutOff)?;
    // A later version may have another header: nothing else is looked at before.
    match version {
        0 => return Err(LinkMistake::Altered),
        VERSION => {}
        later => return Err(LinkMistake::Later(later)),
    }
    match link.len().cmp(&characters(HEADER + usize::from(u16::from_be_bytes(length)))) {
        std::cmp::Ordering::Less => return Err(LinkMistake::CutOff),
        std::cmp::Ordering::Greater => return Err(LinkMistake::Altered),
        std::cmp::Ordering::Equal => {}
    }
    let all = bytes(link)?;
    let (header, deflated) = all.split_first_chunk::<HEADER>().ok_or(LinkMistake::CutOff)?;
    if checksum(version, length, deflated).to_be_bytes() != header[3..] {
        return Err(LinkMistake::Altered);
    }
    let text = decompress_to_vec_with_limit(deflated, MOST_INFLATED).map_err(|error| match error.status {
        TINFLStatus::HasMoreOutput => LinkMistake::TooLarge,
        _ => LinkMistake::Altered,
    })?;
    let json = strict::parse(&text).map_err(LinkMistake::Content)?;
    // What was left out is as it should be; what was not is held to the shape before it is filled up.
    check::check(&json, shape, ROOT, check::Unknown::Refused).map_err(LinkMistake::Content)?;
    Ok(blanks::restore(&json, shape))
}
