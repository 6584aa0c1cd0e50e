//! Passing on from one key to the next, as often as it was done.

use super::file::Envelope;
use super::key::{SIGNATURE, encode};
use super::{Pin, PublicKey, Reason, Refusal, Secret, Why};
use serde_json::{Value, json};

/// The version of the file: the first held one statement alone.
const SCHEMA: u32 = 2;

/// What the field `brimline` of the file says.
const KIND: &str = "handover";

/// What stands before the two keys when they are signed, see [`super::sign()`].
const PURPOSE: &[u8] = b"brimline handover 1\0";

/// The most steps of a chain: nobody replaces a key every day.
pub const MOST_STEPS: usize = 200;

/// The fields of a statement.
const FIELDS: &[&str] = &["from", "to", "signature"];

/// The statement of one key that from now on another one signs: a device that believes the old one follows it,
/// without anyone going round. Whoever has the old secret can make one, so that it is no remedy for a stolen
/// key: then every device is pinned anew by hand.
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

    /// Whether the old key says so.
    fn holds(&self) -> bool {
        self.from.signed(&message(&self.from, &self.to), &self.signature)
    }

    fn value(&self) -> Value {
        let Self { from, to, signature } = self;
        json!({"from": from.text(), "to": to.text(), "signature": encode(signature)})
    }

    fn of(file: &mut Envelope) -> Result<Self, Refusal> {
        Ok(Self { from: file.key("from")?, to: file.key("to")?, signature: file.signature("signature")? })
    }
}

/// Statements one behind the other, the oldest first, each by the key that the one before passed on to. A device that
/// knows any of the keys takes the rest of the way in one step.
///
/// ```
/// use brimline::site::passing::{Chain, Handover, Pin, Secret};
/// let [oldest, newer, newest] = [7, 8, 9].map(|n| Secret::new([n; 32]));
/// let chain = Chain::of(Handover::new(&oldest, &newer.public()));
/// let file = chain.then(Handover::new(&newer, &newest.public())).write();
/// let followed = Chain::read(file).unwrap().follow(&Pin::to(oldest.public())).unwrap();
/// assert_eq!((followed.pin, followed.steps.len()), (Pin::to(newest.public()), 2));
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Chain {
    steps: Vec<Handover>,
}

/// Where a chain led a device.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Followed {
    /// What it is pinned to from now on.
    pub pin: Pin,
    /// The steps that it took; none where it was there already.
    pub steps: Vec<Handover>,
}

impl Chain {
    /// One statement.
    pub fn of(step: Handover) -> Self {
        Self { steps: vec![step] }
    }

    /// The chain with one more statement. One of another key than the newest begins a chain of its own, and of a chain
    /// that is full the oldest is left out.
    #[must_use]
    pub fn then(mut self, next: Handover) -> Self {
        if self.newest() != Some(next.from) {
            return Self::of(next);
        }
        if self.steps.len() >= MOST_STEPS {
            self.steps.remove(0);
        }
        self.steps.push(next);
        self
    }

    /// The key that it leads to.
    pub fn newest(&self) -> Option<PublicKey> {
        self.steps.last().map(|step| step.to)
    }

    /// As the text of a file.
    pub fn write(&self) -> String {
        let steps: Vec<Value> = self.steps.iter().map(Handover::value).collect();
        json!({"brimline": KIND, "schema": SCHEMA, "steps": steps}).to_string()
    }

    /// Reads the text of a file. That its signatures hold is for [`Chain::follow`].
    ///
    /// # Errors
    /// The first [`Refusal`].
    pub fn read(file: impl AsRef<[u8]>) -> Result<Self, Refusal> {
        let may = ["steps", "from", "to", "signature"];
        let mut file = Envelope::open(file.as_ref(), KIND, SCHEMA, &may)?;
        if file.schema < SCHEMA {
            file.only(FIELDS)?;
            return Handover::of(&mut file).map(Self::of);
        }
        file.only(&["steps"])?;
        let steps = file.list("steps")?;
        if steps.is_empty() {
            return Err(Refusal::at("steps", Reason::Missing));
        }
        if steps.len() > MOST_STEPS {
            return Err(Refusal::at("steps", Reason::LongList(steps.len())));
        }
        let step = |(index, value)| {
            let mut part = Envelope::part(value, format!("steps[{index}]"), SCHEMA)?;
            part.only(FIELDS)?;
            Handover::of(&mut part)
        };
        Ok(Self { steps: steps.into_iter().enumerate().map(step).collect::<Result<_, _>>()? })
    }

    /// That every step is said by its own key and begins where the one before ended, and that no key comes twice: which
    /// way a device is led must not depend on where it looks first.
    ///
    /// # Errors
    /// [`Why::Broken`] or [`Why::Altered`], of the first step that is wrong.
    fn check(&self) -> Result<(), Why> {
        let mut met: Vec<PublicKey> = self.steps.first().map(|step| step.from).into_iter().collect();
        for (index, step) in self.steps.iter().enumerate() {
            if met.last() != Some(&step.from) || met.contains(&step.to) {
                return Err(Why::Broken { step: index + 1 });
            }
            if !step.holds() {
                return Err(Why::Altered);
            }
            met.push(step.to);
        }
        Ok(())
    }

    /// What a device is pinned to from now on: the newest key, with the edition that it has. The whole chain must hold,
    /// and also what lies before the key that the device knows.
    ///
    /// # Errors
    /// [`Why`] it stays with its key.
    pub fn follow(&self, pin: &Pin) -> Result<Followed, Why> {
        self.check()?;
        let (Some(first), Some(newest)) = (self.steps.first(), self.newest()) else {
            return Err(Why::Broken { step: 1 });
        };
        if newest == pin.key {
            return Ok(Followed { pin: *pin, steps: Vec::new() });
        }
        match self.steps.iter().position(|step| step.from == pin.key) {
            Some(at) => Ok(Followed { pin: Pin { key: newest, ..*pin }, steps: self.steps[at..].to_vec() }),
            None => Err(Why::OtherKey { by: first.from, pinned: pin.key }),
        }
    }
}
