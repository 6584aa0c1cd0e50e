//! A link that carries a fill, opened.

use crate::form::Typed;
use crate::form::site::carried::{self, Carried};
use crate::page::keep::keys::{self, Pinned};
use crate::site::passing::link::{LinkMistake, unpack};
use crate::site::passing::stamp::unstamp;

/// What was carried, where this device takes it.
///
/// # Errors
/// The word key of why it does not.
pub fn open_link(link: &str) -> Result<Typed, &'static str> {
    let pin = match keys::pinned() {
        Pinned::No => None,
        Pinned::To(pin) => Some(pin),
        Pinned::Unreadable => return Err("pin-unreadable"),
    };
    let payload = unstamp(link.trim(), pin.as_ref()).map_err(|why| why.code())?;
    match unpack::<Carried>(payload) {
        Ok(carried) if carried.schema > crate::form::typed::SCHEMA => Err("link-later"),
        Ok(carried) => Ok(carried::open(carried)),
        Err(LinkMistake::Content(_)) => Err("link-content"),
        Err(mistake) => Err(mistake.code()),
    }
}
