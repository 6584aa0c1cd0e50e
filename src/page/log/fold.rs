//! Makes the fills as they stand: of all records, or of what came to those that are held.

use super::clock::Slices;
use super::database::{ABOUT, META, Mode, RECORDS, Transaction, after, key, range, read};
use super::held::{Stage, change};
use super::meta::{self, About, End, Ends, Gap, LOST};
use super::{Trouble, tab};
use crate::site::log::{Attended, Current, Folding, Id, Kind, Log, Record, View, When};
use js_sys::Array;
use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;
use wasm_bindgen::{JsCast, JsValue};

/// Records that are read in one transaction.
const PAGE: u32 = 500;

/// What all records say.
pub struct Rebuilt {
    /// Every fill as it stands.
    pub view: View,
    /// The ends of the chains.
    pub ends: Ends,
    /// Records that are not there, and those after them are.
    pub gaps: Vec<Gap>,
}

/// The next lines of the database after a place, and the place after them: none where they are the last.
///
/// * `from`: undefined at the beginning.
pub async fn page(from: &JsValue) -> Result<(Array, Option<JsValue>), Trouble> {
    let whole = tab::database().await?.begin(&[RECORDS], Mode::Read)?;
    let records = whole.store(RECORDS)?;
    let keys = records.keys(from, Some(PAGE)).await?;
    let lines = records.all(from, Some(PAGE)).await?;
    whole.done().await?;
    let goes_on = keys.length() == PAGE;
    Ok((lines, if goes_on { Some(after(&keys.get(PAGE - 1))?) } else { None }))
}

/// Reads every record in slices, in the order of devices and numbers, and gives each to `take`. Lines that do not
/// read are left out; holding the chain finds them.
pub async fn each(mut take: impl FnMut(Record), mut progress: impl FnMut(usize)) -> Result<(), Trouble> {
    let (mut slices, mut next, mut done) = (Slices::begin(), Some(JsValue::UNDEFINED), 0);
    while let Some(from) = next {
        let (lines, then) = page(&from).await?;
        next = then;
        for line in lines.iter() {
            if let Ok(record) = read(&line) {
                take(record);
            }
            done += 1;
            if slices.breathe().await {
                progress(done);
            }
        }
    }
    Ok(())
}

/// Folds all records, and makes anew what is derived from them: which name which, and what is missing.
pub async fn rebuild(known: &Ends) -> Result<Rebuilt, Trouble> {
    let of = known.values().map(|end| usize::try_from(end.number).unwrap_or_default()).sum();
    let mut anew = Anew::default();
    each(|record| anew.take(record), |done| change(|held| held.stage = Stage::Opening { done, of })).await?;
    anew.flush();
    let Anew { folding, mut ends, mut gaps, about, .. } = anew;
    for (device, end) in known {
        let there = ends.get(device).map_or(0, |end| end.number);
        if there < end.number {
            // The chain goes on from where it was.
            gaps.push(Gap { device: device.clone(), from: there + 1, to: end.number });
            ends.insert(device.clone(), end.clone());
        } else if let Some(read) = ends.get_mut(device) {
            read.back.clone_from(&end.back);
        }
    }
    let whole = tab::database().await?.begin(&[META, ABOUT], Mode::Derive)?;
    let (meta, abouts) = (whole.store(META)?, whole.store(ABOUT)?);
    abouts.clear()?;
    for (record, about) in &about {
        if let Some(of) = Id::read(&record.of) {
            abouts.put_document(&about_key(&of, record), about)?;
        }
    }
    for (device, end) in &ends {
        // One that grew meanwhile is later than what was read.
        if meta::end(&meta, device).await?.is_none_or(|is| is.number <= end.number) {
            meta::put_end(&meta, device, end)?;
        }
    }
    meta.put_document(&LOST.into(), &gaps)?;
    whole.done().await?;
    Ok(Rebuilt { view: folding.view(), ends, gaps })
}

#[derive(Default)]
struct Anew {
    folding: Folding,
    group: Vec<Record>,
    ends: Ends,
    gaps: Vec<Gap>,
    about: Vec<(Record, About)>,
}

impl Anew {
    fn take(&mut self, record: Record) {
        let same = |one: &Record| one.number == record.number && one.device == record.device;
        if !self.group.first().is_some_and(same) {
            self.flush();
        }
        self.group.push(record);
    }

    /// Folds in the records of one device and number.
    fn flush(&mut self) {
        let mut group = std::mem::take(&mut self.group);
        if group.len() > 1 {
            group = Log::of(group).records().to_vec();
        }
        let Some(record) = group.first() else { return };
        self.folding.take(&group);
        let latest = self.folding.latest(&record.device).unwrap_or_default();
        let end = self.ends.entry(record.device.clone()).or_default();
        if record.number > end.number + 1 {
            self.gaps.push(Gap {
                device: record.device.clone(),
                from: end.number + 1,
                to: record.number - 1,
            });
        }
        let own = record.own.clone();
        *end = End { number: record.number, own, latest, back: Vec::new() };
        self.about.extend(group.iter().filter(|one| one.kind != Kind::Fill).map(|one| {
            let named = Record { of: one.of.clone(), number: one.number, ..Record::default() };
            (Record { device: one.device.clone(), own: one.own.clone(), ..named }, about(one, latest))
        }));
    }
}

/// What a record does to the one that it names.
pub fn about(record: &Record, latest: i64) -> About {
    About { kind: record.kind, latest, erased: record.erased.clone() }
}

/// The key of what names a record.
pub fn about_key(of: &Id, record: &Record) -> JsValue {
    let key: Array = key(&of.device, of.number, None).unchecked_into();
    key.push(&record.device.as_str().into());
    key.push(&(record.number as f64).into());
    key.push(&record.own.as_str().into());
    key.into()
}

/// What names a record: which, and what it does, by devices and numbers.
pub async fn naming(whole: &Transaction, of: &Id) -> Result<Vec<(Id, About)>, Trouble> {
    let keys = range(&key(&of.device, of.number, None), true, &key(&of.device, of.number + 1, None))?;
    let store = whole.store(ABOUT)?;
    let found = store.keys(&keys, None).await?;
    let values = store.all(&keys, None).await?;
    let id = |key: JsValue| {
        let key: Array = key.unchecked_into();
        Some(Id::new(key.get(2).as_string()?, number(&key.get(3))?))
    };
    let about = |value: JsValue| serde_json::from_str(&value.as_string()?).ok();
    Ok(found.iter().zip(values.iter()).filter_map(|(key, value)| Some((id(key)?, about(value)?))).collect())
}

/// A whole number that JavaScript has exactly.
pub fn number(value: &JsValue) -> Option<u64> {
    let number = value.as_f64().filter(|number| (0.0..9_007_199_254_740_992.0).contains(number))?;
    format!("{number:.0}").parse().ok()
}

/// Folds records that came into what is held: each is in the database already. Those that are in it stay as they are.
pub async fn absorb(records: &[Record]) -> Result<(), Trouble> {
    // By id: what was corrected takes the place of what was first written.
    let mut fills = BTreeMap::new();
    let mut lessons: Vec<Attended> = records.iter().filter_map(Attended::of).collect();
    let (mut again, mut astray) = (BTreeSet::new(), Vec::new());
    for record in records {
        match record.kind {
            Kind::Fill => fills.extend(Current::of(record, false).map(|fill| (record.id(), fill))),
            _ => again.extend(Id::read(&record.of).map(|of| (of, record.id()))),
        }
    }
    if !again.is_empty() {
        let whole = tab::database().await?.begin(&[RECORDS, ABOUT], Mode::Read)?;
        for (mut of, by) in again {
            let mut named = Log::of(whole.records(&of).await?);
            // An erasure may name a correction.
            if let Some(correction) = named.records().first().filter(|one| one.kind == Kind::Correction) {
                let Some(fill) = Id::read(&correction.of) else { continue };
                (named, of) = (Log::of(whole.records(&fill).await?), fill);
            }
            match named.records() {
                [fill, rest @ ..] if fill.kind == Kind::Fill => {
                    let fill = folded(&whole, &of, fill, !rest.is_empty(), &mut astray).await?;
                    fills.extend(fill.map(|fill| (of, fill)));
                }
                [lesson, ..] if lesson.kind == Kind::Lesson => lessons.extend(Attended::of(lesson)),
                [] => astray.push(by),
                _ => {}
            }
        }
    }
    if !(fills.is_empty() && lessons.is_empty() && astray.is_empty()) {
        let fills = fills.into_values().collect();
        change(|held| {
            let view = Rc::make_mut(&mut held.view);
            put(view, fills, astray);
            for one in lessons {
                put_lesson(view, one);
            }
        });
    }
    Ok(())
}

/// A fill as it stands in the database now; none where the record is no fill.
pub async fn standing(whole: &Transaction, of: &Id) -> Result<Option<Current>, Trouble> {
    let named = Log::of(whole.records(of).await?);
    match named.records() {
        [fill, rest @ ..] => folded(whole, of, fill, !rest.is_empty(), &mut Vec::new()).await,
        [] => Ok(None),
    }
}

/// A fill as it stands, out of the database.
async fn folded(
    whole: &Transaction,
    of: &Id,
    fill: &Record,
    contested: bool,
    astray: &mut Vec<Id>,
) -> Result<Option<Current>, Trouble> {
    let Some(mut current) = Current::of(fill, contested) else { return Ok(None) };
    let mut corrections = naming(whole, of).await?;
    corrections.retain(|(_, about)| about.kind == Kind::Correction);
    corrections.dedup_by(|(one, _), (other, _)| one == other);
    corrections.sort_by_key(|(_, about)| about.latest);
    for (id, _) in corrections {
        let said = Log::of(whole.records(&id).await?);
        if !said.records().first().is_some_and(|correction| current.correct(correction)) {
            astray.push(id);
        }
    }
    Ok(Some(current))
}

/// Puts fills, each once, where they stand by their time.
fn put(view: &mut View, fills: Vec<Current>, astray: Vec<Id>) {
    let mut new = Vec::new();
    for fill in fills {
        if let Ok(place) = view.fills.binary_search_by(|one| one.by_time(&fill)) {
            view.fills[place] = fill;
            continue;
        }
        // One that was corrected may have stood at another time.
        if !fill.corrections.is_empty() {
            view.fills.retain(|one| one.id != fill.id);
        }
        new.push(fill);
    }
    let last = |view: &View, one: &Current| view.fills.last().is_none_or(|last| last.by_time(one).is_lt());
    match new.as_slice() {
        [] => {}
        [one] if last(view, one) => view.fills.append(&mut new),
        _ => {
            view.fills.append(&mut new);
            view.fills.sort_by(Current::by_time);
        }
    }
    for id in astray {
        if !view.astray.contains(&id) {
            view.astray.push(id);
        }
    }
}

/// Puts what was shown in practice in its place.
fn put_lesson(view: &mut View, lesson: Attended) {
    match view.lessons.binary_search_by(|one| one.id.cmp(&lesson.id)) {
        Ok(place) => view.lessons[place] = lesson,
        Err(place) => view.lessons.insert(place, lesson),
    }
}

/// The practice sessions of these records.
pub async fn lessons(ids: &[String]) -> Result<Vec<Attended>, Trouble> {
    if ids.is_empty() {
        return Ok(Vec::new());
    }
    let whole = tab::database().await?.begin(&[RECORDS], Mode::Read)?;
    let mut found = Vec::new();
    for id in ids.iter().filter_map(|id| Id::read(id)) {
        found.extend(Log::of(whole.records(&id).await?).records().first().and_then(Attended::of));
    }
    Ok(found)
}

/// Whether a time lies before the latest that its chain gives.
pub fn is_back(when: &str, end: &End) -> bool {
    When::read(when).is_some_and(|when| end.number > 0 && when.instant() < end.latest)
}
