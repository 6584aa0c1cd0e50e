//! Passing on from one key to the next.

use super::file::Envelope;
use super::key::{SIGNATURE, encode};
use super::{Pin, PublicKey, Refusal, Secret, Why};
use serde_json::json;

/// The version of the statement.
const SCHEMA: u32 = 1;

/// What the field `brimline` of the file says.
const KIND: &str = "handover";

/// What stands before the two keys when they are signed, see [`super::sign()`].
const PURPOSE: &[u8] = b"brimline handover 1\0";

/// The statement of one key that from now on another one signs: a device that believes the old one follows it,
/// without anyone going round. Whoever has the old secret can make one, so that it is no remedy for a stolen
/// key: then every device is pinned anew by hand.
///
/// ```
/// use brimline::site::passing::{Handover, Pin, Secret};
/// let (old, new) = (Secret::new([7; 32]), Secret::new([8; 32]));
/// let file = Handover::new(&old, &new.public()).write();
/// let pin = Handover::read(file).unwrap().follow(&Pin(old.public()));
/// assert_eq!(pin, Ok(Pin(new.public())));
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Handover {
    /// The key that passes on.
    pub from: PublicKey,
    /// The key that it passes on to.
    pub to: PublicKey,
    signature: [u8; SIGNATURE],
}

fn message(from: &PublicKey, to: &PublicKey) -> Vec<u8> {
    [PURPOSE, &from.bytes(), &to.bytes()].concat()
}

impl Handover {
    /// The statement, signed by the old key.
    pub fn new(old: &Secret, new: &PublicKey) -> Self {
        let from = old.public();
        Self { from, to: *new, signature: old.signature(&message(&from, new)) }
    }

    /// As the text of a file.
    pub fn write(&self) -> String {
        let Self { from, to, signature } = self;
        let (from, to, signature) = (from.text(), to.text(), encode(signature));
        json!({"brimline": KIND, "schema": SCHEMA, "from": from, "to": to, "signature": signature})
            .to_string()
    }

    /// Reads the text of a file.
    ///
    /// # Errors
    /// The first [`Refusal`].
    pub fn read(file: impl AsRef<[u8]>) -> Result<Self, Refusal> {
        let mut file = Envelope::open(file.as_ref(), KIND, SCHEMA, &["from", "to", "signature"])?;
        Ok(Self { from: file.key("from")?, to: file.key("to")?, signature: file.signature("signature")? })
    }

    /// What a device is pinned to from now on.
    ///
    /// # Errors
    /// [`Why`] it stays with its key.
    pub fn follow(&self, pin: &Pin) -> Result<Pin, Why> {
        if !self.from.signed(&message(&self.from, &self.to), &self.signature) {
            return Err(Why::Altered);
        }
        if self.from != pin.0 {
            return Err(Why::OtherKey { by: self.from, pinned: pin.0 });
        }
        Ok(Pin(self.to))
    }
}
