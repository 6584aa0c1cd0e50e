//! Whose a link is: a signature behind its payload, for devices that are pinned to a key.

use super::key::{decode, encode};
use super::{Pin, Secret, Why};

/// What a signature of a link stands under, before the payload: no other text that is signed begins so.
const PURPOSE: &str = "brimline link 1\0";

/// Between the payload and its signature; base64url has no such character.
const MARK: char = '.';

/// A payload with the signature of whoever made it, `payload.signature`. A device that is pinned knows the key, so that
/// it need not stand there: 87 characters more, and not 130.
///
/// ```
/// use brimline::site::passing::{Pin, Secret, Why, stamp::{stamp, unstamp}};
/// let secret = Secret::new([7; 32]);
/// let link = stamp("AQAA", &secret);
/// assert_eq!(unstamp(&link, Some(&Pin::to(secret.public()))), Ok("AQAA"));
/// assert_eq!(unstamp(&link, None), Ok("AQAA"));
/// assert_eq!(unstamp("AQAA", Some(&Pin::to(secret.public()))), Err(Why::Unsigned));
/// ```
pub fn stamp(payload: &str, secret: &Secret) -> String {
    let signature = secret.signature(&message(payload));
    format!("{payload}{MARK}{}", encode(&signature))
}

/// The payload of a link, where a device may take it.
///
/// # Errors
/// On a pinned device [`Why::Unsigned`] without a signature, and [`Why::Altered`] where it is not that of the pinned
/// key under this payload: whether the link or the key is another one cannot be told.
pub fn unstamp<'a>(link: &'a str, pin: Option<&Pin>) -> Result<&'a str, Why> {
    let (payload, signature) = match link.split_once(MARK) {
        Some((payload, signature)) => (payload, Some(signature)),
        None => (link, None),
    };
    match (pin, signature) {
        (None, _) => Ok(payload),
        (Some(_), None) => Err(Why::Unsigned),
        (Some(Pin { key, .. }), Some(signature)) => match decode(signature) {
            Some(signature) if key.signed(&message(payload), &signature) => Ok(payload),
            _ => Err(Why::Altered),
        },
    }
}

fn message(payload: &str) -> Vec<u8> {
    [PURPOSE.as_bytes(), payload.as_bytes()].concat()
}
