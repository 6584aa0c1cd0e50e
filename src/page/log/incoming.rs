//! A file from elsewhere: what it would bring.

use super::clock::Slices;
use super::database::{ABOUT, Mode, RECORDS, key, range};
use super::held::{Busy, Doing, change};
use super::meta::About;
use super::{Trouble, tab};
use crate::site::log::{
    Broken, Conflict, Head, Id, Kind, LineFlaw, Lines, Log, Part, Record, Verifier, line,
};
use crate::site::passing::Refusal;
use js_sys::Array;
use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;
use wasm_bindgen::{JsCast, JsValue};

/// What a file would bring. Nothing of it is taken yet.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Incoming {
    /// Records in the file.
    pub records: usize,
    /// Those that are new here.
    pub added: usize,
    /// Texts of ours that the file says were erased: taking it blanks them.
    pub erased: Vec<(Id, Part)>,
    /// Records that say different things under one device and number, here and in the file.
    pub conflicts: Vec<Conflict>,
    /// Records of which one side has a copy that is not what was hashed: the one that is stands.
    pub altered: Vec<Id>,
    /// The first record at which the file by itself does not hold.
    pub broken: Option<Broken>,
    /// Lines that are not taken.
    pub flaws: Vec<LineFlaw>,
    /// How many more there are.
    pub more: usize,
    /// Where each chain of the file ends.
    pub heads: Vec<Head>,
    pub(super) fresh: Rc<Vec<Fresh>>,
}

/// A record to put into the database.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Fresh {
    /// Its device and number.
    pub id: Id,
    /// Its hash.
    pub own: String,
    /// Its line.
    pub line: String,
    /// What it names and does there, where it names another one.
    pub about: Option<(Id, About)>,
}

/// Why a file is not compared.
#[derive(Clone, Debug, PartialEq)]
pub enum NotCompared {
    /// It is no log that can be read.
    Refused(Refusal),
    /// Our own could not be read.
    Trouble(Trouble),
}

impl Incoming {
    /// Whether taking it would change anything.
    pub fn brings(&self) -> bool {
        !self.fresh.is_empty()
    }
}

impl From<Trouble> for NotCompared {
    fn from(trouble: Trouble) -> Self {
        Self::Trouble(trouble)
    }
}

/// Reads a file and holds it to the log, in slices: [`Held::busy`](super::Held::busy) tells how far it is.
///
/// # Errors
/// What is wrong with the file as a whole, or why ours cannot be read.
pub async fn compare(file: Vec<u8>) -> Result<Incoming, NotCompared> {
    let compared = compared(&file).await;
    change(|held| held.busy = None);
    compared
}

async fn compared(file: &[u8]) -> Result<Incoming, NotCompared> {
    let mut lines = Lines::of(file).map_err(NotCompared::Refused)?;
    let mut verifier = Verifier::to(&lines.heads);
    let mut incoming = Incoming::default();
    // By device and number, whatever the order of the file; the bytes of each stay where they are.
    let mut theirs: BTreeMap<(String, u64), Vec<Their>> = BTreeMap::new();
    let mut erasing: BTreeMap<Id, Vec<Part>> = BTreeMap::new();
    let mut slices = Slices::begin();
    while let Some(read) = lines.next() {
        let Some((record, bytes)) = read else { continue };
        verifier.next(&record);
        incoming.records += 1;
        if let Some(of) = Id::read(&record.of).filter(|_| record.kind == Kind::Erasure) {
            erasing.entry(of).or_default().extend(&record.erased);
        }
        let about = (record.kind != Kind::Fill).then(|| super::fold::about(&record, 0));
        let their = Their { own: record.own, of: record.of, bytes, about };
        theirs.entry((record.device, record.number)).or_default().push(their);
        if slices.breathe().await {
            let (done, of) = (lines.at(), file.len());
            change(|held| held.busy = Some(Busy { doing: Doing::Reading, done, of }));
        }
    }
    incoming.broken = verifier.finish().err();
    (incoming.flaws, incoming.more, incoming.heads) = (lines.flaws, lines.more, lines.heads);
    let mut fresh = Vec::new();
    let all: Vec<_> = theirs.into_iter().collect();
    let (mut done, of) = (0, all.len());
    for page in pages(&all) {
        let ours = ours(page).await?;
        for ((device, number), theirs) in page {
            let id = Id::new(device.as_str(), *number);
            held_to(&mut incoming, &mut fresh, &id, ours.get(number).map_or(&[], Vec::as_slice), theirs)?;
            if slices.breathe().await {
                change(|held| held.busy = Some(Busy { doing: Doing::Comparing, done, of }));
            }
            done += 1;
        }
    }
    blank(&mut incoming, &mut fresh, &erasing).await?;
    incoming.fresh = Rc::new(fresh);
    Ok(incoming)
}

/// A record of the file.
struct Their<'a> {
    own: String,
    of: String,
    bytes: &'a [u8],
    about: Option<About>,
}

type Page<'a, 'b> = &'a [((String, u64), Vec<Their<'b>>)];

/// Runs of one device's records.
fn pages<'a, 'b>(all: Page<'a, 'b>) -> impl Iterator<Item = Page<'a, 'b>> {
    all.chunk_by(|((one, _), _), ((other, _), _)| one == other).flat_map(|chain| chain.chunks(500))
}

/// Our lines of the same records, by their numbers.
async fn ours(page: Page<'_, '_>) -> Result<BTreeMap<u64, Vec<String>>, Trouble> {
    let (Some(((device, first), _)), Some(((_, last), _))) = (page.first(), page.last()) else {
        return Ok(BTreeMap::new());
    };
    let whole = tab::database().await?.begin(&[RECORDS], Mode::Read)?;
    let keys = range(&key(device, *first, None), true, &key(device, last + 1, None))?;
    let records = whole.store(RECORDS)?;
    let (found, lines) = (records.keys(&keys, None).await?, records.all(&keys, None).await?);
    let mut ours: BTreeMap<u64, Vec<String>> = BTreeMap::new();
    for (key, line) in found.iter().zip(lines.iter()) {
        let number = super::fold::number(&key.unchecked_into::<Array>().get(1));
        if let (Some(number), Some(line)) = (number, line.as_string()) {
            ours.entry(number).or_default().push(line);
        }
    }
    Ok(ours)
}

/// What the file says under one device and number, beside what we have there.
fn held_to(
    incoming: &mut Incoming,
    fresh: &mut Vec<Fresh>,
    id: &Id,
    ours: &[String],
    theirs: &[Their],
) -> Result<(), Trouble> {
    let known = |their: &Their| ours.iter().any(|our| our.as_bytes() == their.bytes);
    if theirs.iter().all(known) {
        return Ok(());
    }
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    if let ([], [their]) = (ours, theirs) {
        incoming.added += 1;
        let line = text(their.bytes);
        fresh.push(their.fresh(id, line));
        return Ok(());
    }
    let read = |line: &str| serde_json::from_str::<Record>(line).map_err(|_| Trouble::Unreadable);
    // One of ours that does not read any more gives way to theirs.
    let before: Vec<Record> = ours.iter().filter_map(|line| read(line).ok()).collect();
    let both = theirs.iter().map(|their| read(&text(their.bytes))).collect::<Result<Vec<_>, _>>()?;
    let merged = Log::of(before.iter().cloned().chain(both));
    // Of copies with one hash the first is what was hashed, where any is; the others have no place of their own.
    let mut owns = BTreeSet::new();
    let (stand, altered): (Vec<_>, Vec<_>) = merged.records().iter().partition(|one| owns.insert(&one.own));
    let had: BTreeSet<&String> = before.iter().map(|one| &one.own).collect();
    incoming.added += stand.len().saturating_sub(had.len());
    if !altered.is_empty() {
        incoming.altered.push(id.clone());
    }
    if stand.len() > 1 {
        incoming
            .conflicts
            .push(Conflict { id: id.clone(), records: stand.iter().copied().cloned().collect() });
    }
    for record in stand {
        // Blanked texts stay blanked; those that theirs still has come back only where nobody erased them.
        if !before.contains(record) {
            let about = (record.kind != Kind::Fill).then(|| super::fold::about(record, 0));
            let their = Their { own: record.own.clone(), of: record.of.clone(), bytes: &[], about };
            fresh.push(their.fresh(id, line(record)));
        }
    }
    Ok(())
}

impl Their<'_> {
    fn fresh(&self, id: &Id, line: String) -> Fresh {
        let about = Id::read(&self.of).zip(self.about.clone());
        Fresh { id: id.clone(), own: self.own.clone(), line, about }
    }
}

/// What either side erased is blank on both: in what is new, and in what we have.
async fn blank(
    incoming: &mut Incoming,
    fresh: &mut Vec<Fresh>,
    theirs: &BTreeMap<Id, Vec<Part>>,
) -> Result<(), Trouble> {
    let whole = tab::database().await?.begin(&[RECORDS, ABOUT], Mode::Read)?;
    let mut erased = theirs.clone();
    let store = whole.store(ABOUT)?;
    let keys = store.keys(&JsValue::UNDEFINED, None).await?;
    for (key, value) in keys.iter().zip(store.all(&JsValue::UNDEFINED, None).await?.iter()) {
        let key: Array = key.unchecked_into();
        let about = value.as_string().and_then(|text| serde_json::from_str::<About>(&text).ok());
        let number = super::fold::number(&key.get(1));
        if let (Some(device), Some(number), Some(about)) = (key.get(0).as_string(), number, about)
            && about.kind == Kind::Erasure
        {
            erased.entry(Id::new(device, number)).or_default().extend(about.erased);
        }
    }
    let read = |line: &str| serde_json::from_str::<Record>(line).map_err(|_| Trouble::Unreadable);
    for one in fresh.iter_mut() {
        if let Some(parts) = erased.get(&one.id) {
            let mut record = read(&one.line)?;
            record.blank(parts);
            one.line = line(&record);
        }
    }
    // What is as ours once it is blanked brings nothing.
    let mut new = Vec::new();
    for one in std::mem::take(fresh) {
        let is_ours = erased.contains_key(&one.id)
            && whole.records(&one.id).await?.iter().any(|our| line(our) == one.line);
        if !is_ours {
            new.push(one);
        }
    }
    *fresh = new;
    for (id, parts) in theirs {
        for mut record in whole.records(id).await? {
            let has = |part: &Part| !record.words.get(*part).text.is_empty() && parts.contains(part);
            let gone: Vec<Part> = Part::ALL.iter().copied().filter(has).collect();
            if gone.is_empty() || fresh.iter().any(|one| one.id == *id && one.own == record.own) {
                continue;
            }
            incoming.erased.extend(gone.iter().map(|part| (id.clone(), *part)));
            record.blank(&gone);
            let about = Id::read(&record.of).map(|of| (of, super::fold::about(&record, 0)));
            let (own, line) = (record.own.clone(), line(&record));
            fresh.push(Fresh { id: id.clone(), own, line, about });
        }
    }
    Ok(())
}
