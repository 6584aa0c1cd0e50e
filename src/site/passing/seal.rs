//! Whose site a file holds.

use super::file::{COUNTS, Signed, checked, file};
use super::{Opened, PublicKey, Refusal, SCHEMA, Secret, canonical};
use crate::site::Site;
use serde_json::Value;

/// What stands before everything that is signed as a site, so that no other statement of the same key can pass
/// as one, nor this as another.
const PURPOSE: &[u8] = b"brimline site 1\0";

/// What the signature stands under: the purpose, the schema and, from its second version on, the edition as four bytes
/// each, and the site's canonical text.
fn message(schema: u32, edition: u32, site: &Value) -> Vec<u8> {
    let edition = if schema >= COUNTS { edition.to_be_bytes().to_vec() } else { Vec::new() };
    [PURPOSE, &schema.to_be_bytes(), &edition, canonical(site).as_bytes()].concat()
}

/// The number of the edition that comes after two others: of what was signed or taken here, and of what came from
/// elsewhere. A merge of both is newer than either.
///
/// ```
/// use brimline::site::passing::next_edition;
/// assert_eq!((next_edition(0, 0), next_edition(7, 4), next_edition(7, 12)), (1, 8, 13));
/// ```
pub const fn next_edition(ours: u32, theirs: u32) -> u32 {
    let higher = if ours > theirs { ours } else { theirs };
    higher.saturating_add(1)
}

/// The site as the text of a file, signed as an edition, from 1: a device that is pinned to the key takes none that is
/// older than what it has.
///
/// # Errors
/// As [`super::write()`].
///
/// ```
/// use brimline::site::{demo, passing::{Secret, Standing, read, sign, verify}};
/// let secret = Secret::new([7; 32]);
/// let file = sign(&demo(), &secret, 3).unwrap();
/// assert_eq!(verify(&read(&file).unwrap()), Standing::Signed { by: secret.public(), edition: 3 });
/// let changed = read(file.replace("Ride-on", "Ride-in")).unwrap();
/// assert_eq!(verify(&changed), Standing::Altered);
/// ```
pub fn sign(site: &Site, secret: &Secret, edition: u32) -> Result<String, Refusal> {
    let value = checked(site)?;
    let edition = edition.max(1);
    let signature = secret.signature(&message(SCHEMA, edition, &value));
    file(&value, Some(&Signed { by: secret.public(), edition, signature }))
}

/// How a file stands to its signature.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// Signed with the secret half of this key, and not changed since.
    Signed {
        /// The key.
        by: PublicKey,
        /// The edition; 0 for one from before they were counted.
        edition: u32,
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
        Some(Signed { by, edition, signature })
            if by.signed(&message(opened.schema, *edition, &opened.raw), signature) =>
        {
            Standing::Signed { by: *by, edition: *edition }
        }
        Some(_) => Standing::Altered,
    }
}

/// The key that a device believes, and no other, and how far it has come with it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pin {
    /// The key.
    pub key: PublicKey,
    /// The highest edition that the device took; 0 for none.
    pub edition: u32,
}

impl Pin {
    /// Believes a key, and has taken nothing of it yet.
    pub const fn to(key: PublicKey) -> Self {
        Self { key, edition: 0 }
    }

    /// The same after an edition was taken: the number only counts up.
    #[must_use]
    pub fn took(self, edition: u32) -> Self {
        Self { edition: self.edition.max(edition), ..self }
    }

    /// The same after a file was opened that [`admit`] let in. Where it is the same as the device's own site nobody takes
    /// it, and so its edition counts at once: an older one does not come after it.
    ///
    /// ```
    /// use brimline::site::{demo, passing::{Pin, Secret, Why, admit, read, sign, verify}};
    /// let ours = Secret::new([7; 32]);
    /// let edition = |number| read(sign(&demo(), &ours, number).unwrap()).unwrap();
    /// let pin = Pin::to(ours.public()).took(3);
    /// assert_eq!(pin.saw(verify(&edition(9)), false), pin); // it waits to be taken
    /// let pin = pin.saw(verify(&edition(9)), true);
    /// assert_eq!(admit(edition(8), Some(&pin)), Err(Why::Older { edition: 8, taken: 9 }));
    /// ```
    #[must_use]
    pub fn saw(self, standing: Standing, same: bool) -> Self {
        match standing {
            Standing::Signed { by, edition } if same && by == self.key => self.took(edition),
            _ => self,
        }
    }

    /// As a device keeps it.
    ///
    /// ```
    /// use brimline::site::passing::{Pin, Secret};
    /// let pin = Pin::to(Secret::new([7; 32]).public()).took(12);
    /// assert_eq!(Pin::read(&pin.text()), Some(pin));
    /// assert_eq!(Pin::read(&pin.key.text()), Some(Pin::to(pin.key)));
    /// ```
    pub fn text(&self) -> String {
        format!("{} {}", self.key.text(), self.edition)
    }

    /// What a device keeps; a key alone was kept before editions were counted.
    pub fn read(text: &str) -> Option<Self> {
        let (key, edition) = text.split_once(' ').unwrap_or((text, "0"));
        Some(Self { key: PublicKey::read(key)?, edition: edition.parse().ok()? })
    }
}

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
    /// It is an older edition than the device has.
    Older {
        /// Its edition; 0 for one from before they were counted.
        edition: u32,
        /// The highest that the device took.
        taken: u32,
    },
    /// A key of a chain of handovers does not follow from the one before it.
    Broken {
        /// Which step, from 1.
        step: usize,
    },
}

impl Why {
    /// The stable code.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Unsigned => "passing-not-admitted-unsigned",
            Self::Altered => "passing-not-admitted-altered",
            Self::OtherKey { .. } => "passing-not-admitted-other-key",
            Self::Older { .. } => "passing-not-admitted-older",
            Self::Broken { .. } => "passing-not-admitted-broken",
        }
    }
}

/// The site of a file, if a device that is pinned so may take it: the edition that it has already once more, or a later
/// one. One that is not pinned takes what nobody signed and what anybody signed, but nothing that was altered.
///
/// # Errors
/// [`Why`] not.
///
/// ```
/// use brimline::site::{demo, passing::{Pin, Secret, Why, admit, read, sign, write}};
/// let ours = Secret::new([7; 32]);
/// let pin = Pin::to(ours.public()).took(4);
/// let edition = |number| read(sign(&demo(), &ours, number).unwrap()).unwrap();
/// assert_eq!(admit(edition(5), Some(&pin)), Ok(demo()));
/// assert_eq!(admit(edition(3), Some(&pin)), Err(Why::Older { edition: 3, taken: 4 }));
/// assert_eq!(admit(read(write(&demo()).unwrap()).unwrap(), Some(&pin)), Err(Why::Unsigned));
/// ```
pub fn admit(opened: Opened, pin: Option<&Pin>) -> Result<Site, Why> {
    match (verify(&opened), pin) {
        (Standing::Altered, _) => Err(Why::Altered),
        (Standing::Unsigned, Some(_)) => Err(Why::Unsigned),
        (Standing::Signed { by, .. }, Some(pin)) if by != pin.key => {
            Err(Why::OtherKey { by, pinned: pin.key })
        }
        (Standing::Signed { edition, .. }, Some(pin)) if edition < pin.edition => {
            Err(Why::Older { edition, taken: pin.edition })
        }
        (Standing::Signed { .. } | Standing::Unsigned, _) => Ok(opened.site),
    }
}
