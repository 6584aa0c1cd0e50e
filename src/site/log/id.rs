//! Which record of which device.

use std::fmt;
use std::sync::Arc;

/// A device and the place of the record in its chain, from 1: no two records that were ever made share it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Id {
    /// The device, as [`Id::is_device`] has it.
    pub device: Arc<str>,
    /// From 1, without gaps.
    pub number: u64,
}

impl Id {
    /// The record of a device with a number.
    pub fn new(device: impl Into<Arc<str>>, number: u64) -> Self {
        Self { device: device.into(), number }
    }

    /// Whether a text can be the id of a device: 1 to 40 letters and digits of ASCII, hyphens and underscores.
    pub fn is_device(text: &str) -> bool {
        let plain = |byte: u8| byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b'_');
        (1..=40).contains(&text.len()) && text.bytes().all(plain)
    }

    /// Reads `device/number`, as records name each other.
    ///
    /// ```
    /// use brimline::site::log::Id;
    /// let id = Id::read("station-1/12").unwrap();
    /// assert_eq!((&*id.device, id.number, id.to_string().as_str()), ("station-1", 12, "station-1/12"));
    /// assert_eq!(Id::read("station-1/012"), None);
    /// ```
    pub fn read(text: &str) -> Option<Self> {
        let (device, number) = text.split_once('/')?;
        let id = Self::new(device, number.parse().ok()?);
        (Self::is_device(device) && is_number(id.number) && id.to_string() == text).then_some(id)
    }
}

/// Whether it can be the number of a record: from 1 to 2⁵³ − 1, which every reader of JSON has exactly (RFC 7493).
pub(super) fn is_number(number: u64) -> bool {
    (1..1 << 53).contains(&number)
}

impl fmt::Display for Id {
    fn fmt(&self, out: &mut fmt::Formatter) -> fmt::Result {
        write!(out, "{}/{}", self.device, self.number)
    }
}
