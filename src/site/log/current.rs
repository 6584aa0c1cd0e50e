//! Every fill as it stands after its corrections.

use super::fill::{self, Fill};
use super::merge::same;
use super::{Attended, Id, Kind, Log, Part, Record, When};
use serde_json::{Map, Value};
use std::cmp::Ordering;
use std::collections::HashMap;
use std::sync::Arc;

/// A fill as it stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Current {
    /// The record of the fill.
    pub id: Id,
    /// When it was done.
    pub when: When,
    /// The same, as it was given.
    pub said: Arc<str>,
    /// When it was written down, as it was given.
    pub written: Arc<str>,
    /// What people called the device then on which it was.
    pub station: Arc<str>,
    /// What it says now.
    pub fill: Fill,
    /// Initials of who did it; empty for nobody named, or erased.
    pub who: Arc<str>,
    /// Why it was done otherwise.
    pub reason: Arc<str>,
    /// Notes.
    pub notes: Arc<str>,
    /// Its corrections, in the order in which they count.
    pub corrections: Vec<Id>,
    /// Those of them that only tick off the end of the shift.
    pub ticks: usize,
    /// Whether another record has the same device and number.
    pub contested: bool,
}

/// All fills as they stand.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct View {
    /// The fills, by time, those written down by mistake among them.
    pub fills: Vec<Current>,
    /// What was shown in practice, in the order of devices and numbers.
    pub lessons: Vec<Attended>,
    /// Corrections that are not counted: the fill that they name is not in the log, or what they say cannot be read.
    pub astray: Vec<Id>,
}

/// Folds a log into its fills as they stand.
///
/// Of two corrections of one field the later one counts: those of one device in the order of its chain, those of
/// several by the time that they give, where no record counts as earlier than one before it in its chain. A clock
/// that is wrong can put one device's corrections before another's; nothing that was written is lost.
///
/// ```
/// use brimline::site::log::{Amount, Fill, Log, Stamp, Words, changed, current};
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// let mut log = Log::default();
/// let id = log.fill(&stamp, Fill::default(), Words::default()).unwrap();
/// let right = Fill { measured: Amount::new(0.0006, "600 mL"), ..Fill::default() };
/// log.correct(&stamp, &id, &changed(&Fill::default(), &right), Words::default()).unwrap();
/// let view = current(&log);
/// assert_eq!(view.fills[0].fill, right);
/// assert_eq!(log.records()[0].fill, Fill::default());
/// ```
pub fn current(log: &Log) -> View {
    let mut folding = Folding::default();
    for group in log.records().chunk_by(same) {
        folding.take(group);
    }
    folding.view()
}

/// [`current()`] of records that come one by one: no log has to be in memory.
#[derive(Clone, Debug, Default)]
pub struct Folding {
    fills: Vec<Current>,
    lessons: Vec<Attended>,
    corrections: Vec<(i64, Record)>,
    latest: HashMap<String, i64>,
}

impl Folding {
    /// Takes the records of one device and number: one, or where there are several all of them, in the order in
    /// which [`Log::of`] puts them. Those of one device come in the order of their numbers.
    pub fn take(&mut self, group: &[Record]) {
        let Some(record) = group.first() else { return };
        let Some(when) = When::read(&record.when) else { return };
        let latest = match self.latest.get_mut(&record.device) {
            Some(latest) => latest,
            None => self.latest.entry(record.device.clone()).or_insert(i64::MIN),
        };
        *latest = when.instant().max(*latest);
        match record.kind {
            Kind::Fill => self.fills.push(first(record, when, group.len() > 1)),
            Kind::Correction => self.corrections.push((*latest, record.clone())),
            Kind::Lesson => self.lessons.extend(Attended::of(record)),
            Kind::Erasure | Kind::Unsaid => {}
        }
    }

    /// The instant that the last correction of a device counts by, none of whose records counts as earlier than
    /// one before it: seconds since 1970.
    pub fn latest(&self, device: &str) -> Option<i64> {
        self.latest.get(device).copied()
    }

    /// The fills as they stand.
    pub fn view(self) -> View {
        let Self { mut fills, mut lessons, mut corrections, .. } = self;
        let places: HashMap<String, usize> =
            if corrections.is_empty() { HashMap::new() } else { places(&fills) };
        // Stable: those of one device at one time stay in the order of its chain.
        corrections.sort_by_key(|(when, _)| *when);
        let mut astray = Vec::new();
        for (_, record) in corrections {
            let fill = places.get(&record.of).and_then(|place| fills.get_mut(*place));
            if !fill.is_some_and(|fill| fill.correct(&record)) {
                astray.push(record.id());
            }
        }
        // Afterwards, since a correction may say that a fill was done at another time.
        fills.sort_by(Current::by_time);
        lessons.sort_by(|one, other| one.id.cmp(&other.id));
        View { fills, lessons, astray }
    }
}

fn places(fills: &[Current]) -> HashMap<String, usize> {
    fills.iter().enumerate().map(|(place, one)| (one.id.to_string(), place)).collect()
}

fn first(record: &Record, when: When, contested: bool) -> Current {
    let written: Arc<str> = record.when.as_str().into();
    let mut one = Current {
        id: record.id(),
        when,
        said: written.clone(),
        written,
        station: record.station.as_str().into(),
        fill: record.fill.clone(),
        who: record.words.who.text.as_str().into(),
        reason: record.words.reason.text.as_str().into(),
        notes: record.words.notes.text.as_str().into(),
        corrections: Vec::new(),
        ticks: 0,
        contested,
    };
    one.set_time();
    one
}

impl Attended {
    /// What a record says of a practice session; none where it is of none.
    pub fn of(record: &Record) -> Option<Self> {
        (record.kind == Kind::Lesson).then(|| Self {
            id: record.id(),
            who: record.words.who.text.as_str().into(),
            lesson: record.lesson.clone(),
        })
    }
}

impl Current {
    /// The order of a view: by time, then by id.
    pub fn by_time(&self, other: &Self) -> Ordering {
        (self.when.instant(), &self.id).cmp(&(other.when.instant(), &other.id))
    }

    /// The fill of a record before its corrections; none where it is no fill.
    ///
    /// * `contested`: whether another record has the same device and number.
    pub fn of(record: &Record, contested: bool) -> Option<Self> {
        let when = When::read(&record.when)?;
        (record.kind == Kind::Fill).then(|| first(record, when, contested))
    }

    /// Puts the values of a correction in; whether they could be read.
    pub fn correct(&mut self, record: &Record) -> bool {
        let mut fields: Map<String, Value> = fill::value(&self.fill);
        fields.extend(record.changes.clone());
        let Ok(fill) = fill::of_value(&fields) else { return false };
        self.fill = fill;
        self.set_time();
        let texts =
            [(&mut self.who, Part::Who), (&mut self.reason, Part::Reason), (&mut self.notes, Part::Notes)];
        let mut only_ticks = record.changes.keys().eq(["checklist"]);
        // One that was erased is no longer what was there before, either.
        for (text, part) in texts.into_iter().filter(|(_, part)| !record.seals.get(*part).is_empty()) {
            *text = record.words.get(part).text.as_str().into();
            only_ticks = false;
        }
        self.ticks += usize::from(only_ticks);
        self.corrections.push(record.id());
        true
    }

    /// Whether it says something else than it first said, the end of the shift aside.
    pub fn is_corrected(&self) -> bool {
        self.corrections.len() > self.ticks
    }

    /// When it was done: as somebody said, else when it was written down.
    fn set_time(&mut self) {
        let said = if self.fill.at.is_empty() { &self.written } else { &self.fill.at };
        if let Some(when) = When::read(said) {
            (self.when, self.said) = (when, said.clone());
        }
    }
}
