//! A site as one file.

use super::key::{PublicKey, SIGNATURE, decode, encode};
use super::{Json, Reason, Refusal, check, records, references, strict};
use crate::shape::Shaped;
use crate::site::Site;
use serde_json::{Map, Value, json};

/// The version of the file as it is written now.
pub const SCHEMA: u32 = 2;

/// What the field `brimline` of the file says.
const KIND: &str = "site";

/// The first version of the file whose signatures count editions.
pub(super) const COUNTS: u32 = 2;

/// A signature beside a site.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Signed {
    pub(super) by: PublicKey,
    /// 0 in a file of the first version, which had none.
    pub(super) edition: u32,
    pub(super) signature: [u8; SIGNATURE],
}

/// A file that was read. Whether its signature holds is another question: [`super::verify()`].
#[derive(Clone, Debug, PartialEq)]
pub struct Opened {
    /// The site.
    pub site: Site,
    /// The version that the file states.
    pub schema: u32,
    /// The site as the file has it, with what this version passes over: a signature stands under all of it.
    pub(super) raw: Value,
    pub(super) signed: Option<Signed>,
}

/// The site as the text of a file: `{"brimline":"site","schema":2,"site":{…}}`.
///
/// # Errors
/// What [`read`] would refuse: nothing leaves that would not be opened elsewhere.
///
/// ```
/// use brimline::site::{demo, passing::{read, write}};
/// let file = write(&demo()).unwrap();
/// assert_eq!(read(&file).unwrap().site, demo());
/// ```
pub fn write(site: &Site) -> Result<String, Refusal> {
    file(&checked(site)?, None)
}

/// A site as JSON, when [`read`] takes it.
pub(super) fn checked(site: &Site) -> Result<Value, Refusal> {
    let value = records::value(site);
    hold(&value)?;
    Ok(value)
}

/// The text of a file.
pub(super) fn file(site: &Value, signed: Option<&Signed>) -> Result<String, Refusal> {
    let mut file = json!({"brimline": KIND, "schema": SCHEMA, "site": site});
    if let Some(Signed { by, edition, signature }) = signed {
        file["signed"] = json!({"by": by.text(), "edition": edition, "signature": encode(signature)});
    }
    let text = file.to_string();
    strict::size(text.len()).map(|()| text)
}

/// Reads the text of a file.
///
/// A field of the site that is missing is left blank, since an earlier version knew fewer, and one that nobody
/// knows is passed over. Everything else that is not as it should be is refused. Texts are texts: whatever a
/// name says comes back as it stands and is never interpreted.
///
/// # Errors
/// The first [`Refusal`], with its place.
///
/// ```
/// use brimline::site::passing::read;
/// assert_eq!(read("{}").unwrap_err().code(), "passing-other-kind");
/// ```
pub fn read(file: impl AsRef<[u8]>) -> Result<Opened, Refusal> {
    let mut file = Envelope::open(file.as_ref(), KIND, SCHEMA, &["site", "signed"])?;
    let raw = file.take("site")?;
    hold(&raw)?;
    let signed = match file.fields.remove("signed") {
        Some(part) => Some(signed(Envelope::part(part, "signed".to_owned(), file.schema)?)?),
        None => None,
    };
    let site = records::site(&raw).map_err(|words| Refusal::at("site", Reason::Unreadable(words)))?;
    Ok(Opened { site, schema: file.schema, raw, signed })
}

fn signed(mut part: Envelope) -> Result<Signed, Refusal> {
    let counts = part.schema >= COUNTS;
    part.only(if counts { &["by", "edition", "signature"] } else { &["by", "signature"] })?;
    let edition = if counts { part.edition("edition")? } else { 0 };
    Ok(Signed { by: part.key("by")?, edition, signature: part.signature("signature")? })
}

/// Holds the JSON of a site to everything that a site must be.
pub(super) fn hold(site: &Value) -> Result<(), Refusal> {
    check::check(site, Site::SHAPE, "site", check::Unknown::PassedOver)?;
    references::check(site)
}

fn wrong(path: impl Into<String>, expected: Json, found: &Value) -> Refusal {
    Refusal::at(path, Reason::Type { expected, found: Json::of(found) })
}

/// The fields around what a file carries. Unlike the site's own, none may be unknown: a signature behind a
/// misspelt name would be none.
pub(in crate::site) struct Envelope {
    fields: Map<String, Value>,
    path: String,
    pub(in crate::site) schema: u32,
}

impl Envelope {
    /// Opens a file of this kind, up to this schema, that may have these fields.
    pub(in crate::site) fn open(file: &[u8], kind: &str, known: u32, may: &[&str]) -> Result<Self, Refusal> {
        let other = || Refusal::at("brimline", Reason::OtherKind);
        let Value::Object(mut fields) = strict::parse(file)? else { return Err(other()) };
        if fields.remove("brimline") != Some(Value::from(kind)) {
            return Err(other());
        }
        let schema = match fields.remove("schema") {
            Some(Value::Number(number)) => number,
            Some(found) => return Err(wrong("schema", Json::Number, &found)),
            None => return Err(Refusal::at("schema", Reason::Missing)),
        };
        let schema = match schema.as_u64() {
            Some(schema) if schema > u64::from(known) => {
                return Err(Refusal::at("schema", Reason::Later { schema, known }));
            }
            // A version has no fraction, and none came before the first.
            Some(0) | None => return Err(other()),
            Some(schema) => u32::try_from(schema).unwrap_or(known),
        };
        let envelope = Self { fields, path: String::new(), schema };
        envelope.only(may)?;
        Ok(envelope)
    }

    /// A part of a file, whose fields are told behind `path`.
    pub(super) fn part(value: Value, path: String, schema: u32) -> Result<Self, Refusal> {
        match value {
            Value::Object(fields) => Ok(Self { fields, path: format!("{path}."), schema }),
            other => Err(wrong(path, Json::Object, &other)),
        }
    }

    /// Refuses every field but these.
    pub(super) fn only(&self, may: &[&str]) -> Result<(), Refusal> {
        match self.fields.keys().find(|key| !may.contains(&key.as_str())) {
            Some(key) => Err(Refusal::at(format!("{}{key}", self.path), Reason::UnknownField)),
            None => Ok(()),
        }
    }

    /// Takes a field out that must be there.
    pub(in crate::site) fn take(&mut self, field: &str) -> Result<Value, Refusal> {
        let path = || format!("{}{field}", self.path);
        self.fields.remove(field).ok_or_else(|| Refusal::at(path(), Reason::Missing))
    }

    fn text(&mut self, field: &str) -> Result<String, Refusal> {
        match self.take(field)? {
            Value::String(text) => Ok(text),
            other => Err(wrong(format!("{}{field}", self.path), Json::Text, &other)),
        }
    }

    /// Takes a list out.
    pub(super) fn list(&mut self, field: &str) -> Result<Vec<Value>, Refusal> {
        match self.take(field)? {
            Value::Array(list) => Ok(list),
            other => Err(wrong(format!("{}{field}", self.path), Json::List, &other)),
        }
    }

    /// Takes the number of an edition out.
    fn edition(&mut self, field: &str) -> Result<u32, Refusal> {
        let number = match self.take(field)? {
            Value::Number(number) => number,
            other => return Err(wrong(format!("{}{field}", self.path), Json::Number, &other)),
        };
        let edition =
            number.as_u64().and_then(|number| u32::try_from(number).ok()).filter(|number| *number > 0);
        edition.ok_or_else(|| Refusal::at(format!("{}{field}", self.path), Reason::NotAnEdition))
    }

    /// Takes a public key out.
    pub(super) fn key(&mut self, field: &str) -> Result<PublicKey, Refusal> {
        let text = self.text(field)?;
        PublicKey::read(&text).ok_or_else(|| Refusal::at(format!("{}{field}", self.path), Reason::NotAKey))
    }

    /// Takes a signature out.
    pub(super) fn signature(&mut self, field: &str) -> Result<[u8; SIGNATURE], Refusal> {
        let text = self.text(field)?;
        decode(&text).ok_or_else(|| Refusal::at(format!("{}{field}", self.path), Reason::NotASignature))
    }
}
